//! The gap between the tickets of two garments: that it adds up, in one currency and in two, and that nothing is told where nothing can be.

use garment_assay::catalog::FAMILIES;
use garment_assay::cost::{Channel, EXCHANGE, Market, Range, Rates, SHOP, TAX};
use garment_assay::garment::{Act, Answer, Garment, Id};
use garment_assay::grading::Care;
use garment_assay::rack::{NoGap, TicketGap, ticket_gap};
use garment_assay::trade::{Currency, Day, PriceKind, Ticket};

fn day() -> Day {
    Day::new(2026, 11, 25).expect("a day")
}

fn ticket(minor: u64, currency: Currency) -> Ticket {
    Ticket { minor, currency, kind: PriceKind::Retail, face_down: false }
}

/// A pair of jeans with the first or the last level of every check, as far as so many checks.
fn jeans(name: &str, best: bool, checks: usize, ticket: Ticket) -> Garment {
    let id = Id::new(name).expect("a plain name");
    let start = Garment::new(id, FAMILIES[0], day()).after(Act::Ticket(Some(ticket)));
    FAMILIES[0].checks.iter().take(checks).fold(start, |garment, check| {
        let level = if best { check.levels.last() } else { check.levels.first() }.expect("a check has levels");
        garment.after(Act::Answer(check, Answer::Judged { level: level.key, care: Care::Usual }))
    })
}

fn of(one: &Garment, other: &Garment, rates: &Rates) -> TicketGap {
    ticket_gap(one, other, rates, [None, None]).expect("two tickets of one kind")
}

fn adds_up(found: &TicketGap) {
    let sum: f64 = found.gap.shares.iter().map(|share| share.amount).sum::<f64>() + found.gap.not_explained;
    assert!((sum - (found.second - found.first)).abs() < 1e-9 * found.second.max(found.first), "{sum} {found:?}");
}

#[test]
fn shares_and_what_is_not_explained_sum_to_the_gap() {
    let rates = Rates::of(Market::EuropeanUnion);
    let plain = jeans("a", false, 99, ticket(4000, Currency::Eur));
    let fine = jeans("b", true, 99, ticket(21_500, Currency::Eur));
    let found = of(&plain, &fine, &rates);
    adds_up(&found);
    assert_eq!((found.currency, found.gap.gap), (Currency::Eur, 175.0));
    assert!(found.gap.shares.len() > 5, "{found:?}");
    // The other way round everything has the other sign.
    let back = of(&fine, &plain, &rates);
    adds_up(&back);
    assert!((back.gap.not_explained + found.gap.not_explained).abs() < 1e-9);
}

#[test]
fn where_nothing_is_answered_the_whole_gap_is_not_explained() {
    let rates = Rates::of(Market::EuropeanUnion);
    let found = of(&jeans("a", true, 0, ticket(4000, Currency::Eur)), &jeans("b", true, 0, ticket(9000, Currency::Eur)), &rates);
    assert!(found.gap.shares.is_empty());
    assert!((found.gap.not_explained - 50.0).abs() < 1e-9);
}

#[test]
fn two_currencies_meet_in_that_of_the_market_and_the_tax_inside_one_ticket_is_told_apart() {
    let rates = Rates::of(Market::UnitedStates).with(Market::EuropeanUnion.exchange(), Range::exactly(0.5), day()).with(
        Market::EuropeanUnion.tax(),
        Range::exactly(0.25),
        day(),
    );
    let one = jeans("a", true, 0, ticket(10_000, Currency::Usd));
    let other = jeans("b", true, 0, ticket(10_000, Currency::Eur));
    let found = of(&one, &other, &rates);
    adds_up(&found);
    // 100 EUR at half a euro for a dollar are 200 USD.
    assert_eq!((found.currency, found.first, found.second), (Currency::Usd, 100.0, 200.0));
    let tax = found.gap.shares.iter().find(|share| share.name == TAX).expect("one ticket holds a tax");
    // By hand for a price of one row: log-mean of 100 and 200 times ln 1.25 = 100 / ln 2 * ln 1.25. Two duties shift the rows a little.
    assert!((tax.amount - 100.0 / 2.0_f64.ln() * 1.25_f64.ln()).abs() < 0.01, "{tax:?}");
    assert!(found.gap.shares.iter().all(|share| share.name != EXCHANGE));
}

#[test]
fn a_shop_that_takes_more_is_a_difference_of_its_own() {
    let rates = Rates::of(Market::EuropeanUnion);
    let (one, other) = (jeans("a", true, 5, ticket(4000, Currency::Eur)), jeans("b", true, 5, ticket(9000, Currency::Eur)));
    let found = ticket_gap(&one, &other, &rates, [Some(Channel::ValueChain), Some(Channel::Premium)]).expect("a gap");
    adds_up(&found);
    assert_eq!(found.gap.shares.iter().map(|share| share.name.as_str()).collect::<Vec<_>>(), [SHOP]);
}

#[test]
fn wholesale_prices_owe_nothing_to_shop_or_tax() {
    let rates = Rates::of(Market::UnitedStates);
    let trade = |minor, currency| Ticket { kind: PriceKind::Wholesale, ..ticket(minor, currency) };
    let (one, other) = (jeans("a", false, 99, trade(1500, Currency::Usd)), jeans("b", true, 99, trade(4200, Currency::Eur)));
    let found = ticket_gap(&one, &other, &rates, [Some(Channel::ValueChain), Some(Channel::Luxury)]).expect("a gap");
    adds_up(&found);
    assert!(found.gap.shares.iter().all(|share| share.name != SHOP && share.name != TAX));
}

#[test]
fn a_gap_that_cannot_be_told_says_why() {
    let rates = Rates::of(Market::UnitedStates);
    let euro = jeans("a", true, 3, ticket(4000, Currency::Eur));
    let why = |other: Option<Ticket>| ticket_gap(&euro, &euro.after(Act::Ticket(other)), &rates, [None, None]).err();
    assert_eq!(why(None), Some(NoGap::NoTicket));
    assert_eq!(why(Some(ticket(0, Currency::Eur))), Some(NoGap::NoTicket));
    assert_eq!(why(Some(Ticket { face_down: true, ..ticket(1, Currency::Eur) })), Some(NoGap::FaceDown));
    assert_eq!(why(Some(Ticket { kind: PriceKind::Wholesale, ..ticket(1, Currency::Eur) })), Some(NoGap::TwoKinds));
    assert_eq!(why(Some(ticket(1, Currency::Chf))), Some(NoGap::NoExchange(Currency::Chf)));
    // Two tickets in one currency need no exchange.
    let franc = euro.after(Act::Ticket(Some(ticket(5000, Currency::Chf))));
    adds_up(&of(&franc, &jeans("b", false, 9, ticket(9000, Currency::Chf)), &rates));
}
