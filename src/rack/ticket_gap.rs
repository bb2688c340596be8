//! The gap between the tickets of two garments: brought to one currency, and shared out over what their build-ups differ in.

use super::compare::{Gap, GapShare, gap};
use super::traits::in_units;
use crate::cost::{self, Channel, EXCHANGE, Market, NOT_EXPLAINED, Rates, Row, SHOP, TAX, by_factor};
use crate::garment::{Garment, price};
use crate::trade::{Currency, PriceKind, Ticket};

/// Shares smaller than this part of the dearer ticket are roundings of the reckoning, and no difference.
const NOTHING: f64 = 1e-9;

/// Two tickets and what lies between them.
#[derive(Clone, Debug, PartialEq)]
pub struct TicketGap {
    /// Currency of every amount.
    pub currency: Currency,
    /// The first ticket in that currency.
    pub first: f64,
    /// The second.
    pub second: f64,
    /// What the gap consists of.
    pub gap: Gap,
}

/// Why there is no gap to speak of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoGap {
    /// One of them has no ticket, or one of nothing.
    NoTicket,
    /// One ticket lies face down.
    FaceDown,
    /// One is what a shopper pays, the other what a shop pays.
    TwoKinds,
    /// The rates have no exchange for that currency.
    NoExchange(Currency),
    /// Nobody has written the bill of one of the families.
    NoBill,
}

impl std::fmt::Display for NoGap {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            NoGap::NoTicket => f.write_str("A gap needs two tickets. Note the price on the garment’s details page."),
            NoGap::FaceDown => f.write_str("A ticket lies face down. Guess first, then turn it over."),
            NoGap::TwoKinds => f.write_str(
                "One is a retail ticket and the other a wholesale price. Most of what lies between them is the shop, and not the garment.",
            ),
            NoGap::NoExchange(currency) => {
                write!(f, "The rates have no exchange for {}, so these tickets cannot be set against each other.", currency.code())
            }
            NoGap::NoBill => f.write_str("Nobody has written down yet what goes into a garment of this kind."),
        }
    }
}

/// Units of a currency for one US dollar, by the rates; none where no market has it.
pub fn exchange(currency: Currency, rates: &Rates) -> Option<f64> {
    let usual = rates.acting(Market::of_currency(currency)?.exchange()).range.usual;
    (usual > 0.0).then_some(usual)
}

/// Tickets in one currency: their own where they share it, else that of the market, by the middle of each exchange.
///
/// # Errors
/// [`NoGap::NoExchange`] names the currency for which there is none.
pub fn in_one_currency(tickets: &[&Ticket], rates: &Rates) -> Result<(Currency, Vec<f64>), NoGap> {
    let first = tickets.first().map_or(rates.market().currency(), |ticket| ticket.currency);
    if tickets.iter().all(|ticket| ticket.currency == first) {
        return Ok((first, tickets.iter().map(|ticket| in_units(ticket)).collect()));
    }
    let common = rates.market().currency();
    let rate = |currency: Currency| exchange(currency, rates).ok_or(NoGap::NoExchange(currency));
    let target = rate(common)?;
    let amounts = tickets.iter().map(|ticket| Ok(in_units(ticket) / rate(ticket.currency)? * target));
    Ok((common, amounts.collect::<Result<_, NoGap>>()?))
}

/// The rows of a garment, built up in the market of its own ticket and brought to the common currency, so that they add up to its ticket
/// there. A tax inside one ticket and not in the other is so told apart.
fn rows(
    garment: &Garment,
    ticket: &Ticket,
    rates: &Rates,
    shop: Option<Channel>,
    target: Option<f64>,
) -> Result<Vec<Row<'static>>, NoGap> {
    let market = Market::of_currency(ticket.currency).unwrap_or(rates.market());
    let wholesale = ticket.kind == PriceKind::Wholesale;
    let built = price(garment, &rates.in_market(market), shop.filter(|_| !wholesale)).ok_or(NoGap::NoBill)?;
    let mut rows = built.rows(Some(in_units(ticket)));
    for row in &mut rows {
        for factor in &mut row.factors {
            // One exchange for both is no difference between garments.
            if let (EXCHANGE, Some(target)) = (factor.name, target) {
                factor.amount = target;
            }
        }
        if wholesale {
            // Behind a wholesale price there is no store and no tax yet: what stands for them belongs to what is left over.
            let past: f64 =
                row.factors.iter().filter(|factor| [SHOP, TAX].contains(&factor.name)).map(|factor| factor.amount).product();
            row.factors.retain(|factor| ![SHOP, TAX].contains(&factor.name));
            let rest = row.factors.iter_mut().filter(|factor| factor.name == NOT_EXPLAINED);
            rest.for_each(|factor| factor.amount *= past);
        }
    }
    Ok(rows)
}

/// What the gap between the tickets of two garments consists of, by their answers and the rates; `shops` are their kinds of shop, where known.
/// Shares and what is not explained sum to the gap.
///
/// # Errors
/// [`NoGap`] says what is missing.
///
/// # Source
/// Model, section 5; the shares are those of [`cost::gap`].
pub fn ticket_gap(first: &Garment, second: &Garment, rates: &Rates, shops: [Option<Channel>; 2]) -> Result<TicketGap, NoGap> {
    let seen = |garment: &'_ Garment| {
        let ticket = garment.ticket().filter(|ticket| ticket.minor > 0).ok_or(NoGap::NoTicket)?;
        if ticket.face_down { Err(NoGap::FaceDown) } else { Ok(*ticket) }
    };
    let (one, other) = (seen(first)?, seen(second)?);
    if one.kind != other.kind {
        return Err(NoGap::TwoKinds);
    }
    let (currency, amounts) = in_one_currency(&[&one, &other], rates)?;
    let target = if one.currency == other.currency { None } else { exchange(currency, rates) };
    let before = rows(first, &one, rates, shops[0], target)?;
    let after = rows(second, &other, rates, shops[1], target)?;
    let (from, to) = (amounts[0], amounts[1]);
    let shares = cost::gap(&before, &after);
    let shares = by_factor(&shares).into_iter().filter(|share| share.factor != NOT_EXPLAINED);
    let shares = shares.filter(|share| share.amount.abs() > NOTHING * from.max(to));
    let shares = shares.map(|share| GapShare { name: share.factor.to_owned(), amount: share.amount, spread: share.spread });
    let gap = gap(from, to, shares).ok_or(NoGap::NoTicket)?;
    Ok(TicketGap { currency, first: from, second: to, gap })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::FAMILIES;
    use crate::cost::Range;
    use crate::garment::{Act, Answer, Id};
    use crate::grading::Care;
    use crate::trade::Day;

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
        let found =
            of(&jeans("a", true, 0, ticket(4000, Currency::Eur)), &jeans("b", true, 0, ticket(9000, Currency::Eur)), &rates);
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
}
