//! From records to what stands behind a ticket: each step against the engines that it joins, which have outside authorities of their own.

mod drawing;

use drawing::{bare, day, garment_named, judged};
use garment_assay::cost::{Channel, Market, Range, Rates};
use garment_assay::garment::{Act, Garment, Guess, price};
use garment_assay::rack::{Name, Stand, Taught, teaches};
use garment_assay::trade::{Currency, PriceKind, Ticket};
use proptest::prelude::*;

fn rates() -> Rates {
    Rates::of(Market::UnitedStates)
}

fn with_ticket(name: &str, minor: u64, currency: Currency) -> Garment {
    bare(name).after(Act::Ticket(Some(Ticket { minor, currency, kind: PriceKind::Retail, face_down: false })))
}

fn none() -> Taught {
    Taught::by([], &rates())
}

#[track_caller]
fn near(one: f64, other: f64) {
    assert!((one - other).abs() <= 1e-9 * other.abs().max(1.0), "{one} is not {other}");
}

#[test]
fn a_garment_with_no_answer_and_no_ticket_has_a_wide_range_and_nothing_left() {
    let behind = none().behind(&bare("a")).expect("a bill");
    let range = behind.range(PriceKind::Retail);
    assert!(range.high > 3.0 * range.low, "{range:?}");
    assert_eq!((behind.left, behind.currency()), (None, Currency::Usd));
}

#[test]
fn the_build_up_reaches_predictions_unchanged_in_dollars() {
    let garment = with_ticket("a", 8_995, Currency::Eur).after(Act::Shop(Some(Channel::Premium)));
    let behind = none().behind(&garment).expect("a bill");
    let plain = price(&garment, &rates().in_market(Market::EuropeanUnion), Some(Channel::Premium)).expect("a bill");
    assert_eq!(behind.build_up, plain);
    near(behind.explained.mu(), plain.ticket().mu - 0.88_f64.ln());
    near(behind.explained.sigma(), plain.ticket().sigma);
    // The premium kind's multiple runs from 4.9 to 8.0: ln(8.0 / 4.9) over twice the normal's ninetieth point, 1.2816.
    near(behind.explained.of_shop(), (8.0_f64 / 4.9).ln() / (2.0 * 1.281_551_565_544_600_4));
    near(behind.left.expect("a ticket").middle, 89.95 / plain.ticket().median());
}

#[test]
fn the_kind_of_shop_and_the_name_narrow_the_range() {
    let width = |garment: &Garment| {
        let range = none().behind(garment).expect("a bill").range(PriceKind::Retail);
        range.high / range.low
    };
    let shop = bare("a").after(Act::Shop(Some(Channel::OwnShopChain)));
    let name = shop.after(Act::Name(Some(Name::StoreLabel)));
    assert!(width(&shop) < width(&bare("a")) && width(&name) < width(&shop));
}

#[test]
fn a_dear_ticket_elsewhere_on_the_rack_moves_the_range_up_and_says_so() {
    let dear = with_ticket("dear", 40_000, Currency::Usd);
    let taught = Taught::by([&dear], &rates());
    let (before, after) = (none().behind(&bare("a")).expect("a bill"), taught.behind(&bare("a")).expect("a bill"));
    assert!(after.likely.middle > before.likely.middle);
    let lesson = after.likely.lessons().first().expect("a lesson");
    assert_eq!((taught.ids()[lesson.reference].as_str(), lesson.by > 0.0), ("dear", true));
}

#[test]
fn no_garment_is_told_by_its_own_ticket() {
    let one = with_ticket("one", 40_000, Currency::Usd);
    assert!(Taught::by([&one], &rates()).behind(&one).is_none());
}

#[test]
fn only_a_retail_ticket_in_view_in_the_currency_of_a_market_teaches() {
    let one = with_ticket("one", 9_000, Currency::Usd);
    let other = |change: fn(&mut Ticket)| {
        let mut ticket = *one.ticket().expect("a ticket");
        change(&mut ticket);
        one.after(Act::Ticket(Some(ticket)))
    };
    assert!(teaches(&one));
    let silent = [
        bare("a"),
        other(|ticket| ticket.face_down = true),
        other(|ticket| ticket.kind = PriceKind::Wholesale),
        other(|ticket| ticket.currency = Currency::Chf),
        other(|ticket| ticket.minor = 0),
        one.after(Act::Reference(false)),
    ];
    for garment in silent {
        assert!(!teaches(&garment) && Taught::by([&garment], &rates()).ids().is_empty(), "{:?}", garment.ticket());
    }
}

#[test]
fn the_same_price_teaches_the_same_in_another_currency_but_for_tax_and_duty() {
    let without_tax = |currency, minor| {
        let garment = with_ticket("one", minor, currency);
        Taught::by([&garment], &rates()).learned().references()[0].log_ticket()
    };
    near(without_tax(Currency::Usd, 10_000), 100.0_f64.ln());
    near(without_tax(Currency::Eur, 8_800), 100.0_f64.ln());
    near(without_tax(Currency::Jpy, 15_000), 100.0_f64.ln());
}

#[test]
fn what_stands_beside_a_guess_is_the_range_in_minor_units() {
    let garment = bare("a").after(Act::Guess(Guess::new(5_000, 9_000, Currency::Jpy, PriceKind::Retail, day())));
    let behind = none().behind(&garment).expect("a bill");
    let Range { low, usual, high } = behind.range(PriceKind::Retail);
    let shown = behind.shown(Currency::Jpy, PriceKind::Retail).expect("a range");
    assert_eq!((shown.low(), shown.middle(), shown.high()), (low.round() as u64, usual.round() as u64, high.round() as u64));
    assert_eq!(behind.shown(Currency::Usd, PriceKind::Retail), None);
}

#[test]
fn an_offer_to_a_shop_is_held_against_the_factory_price() {
    let behind = none().behind(&bare("a")).expect("a bill");
    let (offer, retail) = (behind.range(PriceKind::Wholesale), behind.range(PriceKind::Retail));
    assert_eq!(offer, behind.build_up.totals().factory_price.range());
    assert!(offer.high < retail.low * 2.0 && offer.usual < retail.usual);
}

#[test]
fn a_ticket_far_above_what_is_likely_stands_there() {
    let behind = none().behind(&with_ticket("a", 2_000_000, Currency::Usd)).expect("a bill");
    assert_eq!(behind.left.map(|left| left.stand), Some(Stand::FarAbove));
}

#[test]
fn answers_move_the_build_up_of_a_reference_too() {
    let plain = with_ticket("a", 9_000, Currency::Usd);
    let answered = plain.after(judged("cloth-hand", "firm"));
    let mu = |garment: &Garment| Taught::by([garment], &rates()).learned().references()[0].traits().explained.mu();
    assert!((mu(&plain) - mu(&answered)).abs() > 1e-6);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    #[test]
    fn nothing_that_can_be_recorded_breaks_it(one in garment_named("a"), other in garment_named("b"), market in 0_usize..5) {
        let rates = Rates::of(Market::ALL[market]);
        let taught = Taught::by([&other], &rates);
        if let Some(behind) = taught.behind(&one) {
            for kind in [PriceKind::Retail, PriceKind::Wholesale] {
                let range = behind.range(kind);
                prop_assert!(0.0 < range.low && range.low <= range.usual && range.usual <= range.high && range.high.is_finite());
            }
        }
    }
}
