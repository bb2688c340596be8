//! Value for quality against scipy and draws of numpy (`vectors/worth.json`, made by `vectors/worth.py`), and what must hold of any rack.

mod drawing;

use drawing::{bare, day, garment_named, id};
use garment_assay::catalog::FAMILIES;
use garment_assay::cost::{Incoterm, Market, Rates};
use garment_assay::garment::{Act, Answer, Appraisal, Appraiser, Garment, NotLanded, PriceBreak, TermsAct, landed_smallest};
use garment_assay::grading::Care;
use garment_assay::rack::{Asked, WhyNoWorth, Worth, among, by_worth, worth};
use garment_assay::trade::{Currency, PriceKind, Ticket};
use proptest::prelude::*;
use serde_json::Value;

fn vectors() -> Value {
    serde_json::from_str(include_str!("vectors/worth.json")).expect("vectors")
}

fn f(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value} is no number"))
}

fn asked(row: &Value) -> Asked {
    Asked::new(f(&row[0]), f(&row[1]), f(&row[2])).expect("a garment")
}

#[track_caller]
fn near(what: &str, one: f64, other: f64, tolerance: f64) {
    assert!((one - other).abs() <= tolerance, "{what}: {one} is not {other}");
}

#[test]
fn counts_and_spread_are_those_of_scipy_and_of_draws() {
    for rack in vectors()["racks"].as_array().expect("racks") {
        let (name, rows) = (rack["name"].as_str().expect("a name"), rack["asked"].as_array().expect("garments"));
        let found = among(&rows.iter().map(asked).collect::<Vec<_>>());
        assert_eq!(found.len(), rows.len());
        for (place, own) in found.iter().enumerate() {
            let (exact, drawn) = (&rack["expected"][place], &rack["drawn"][place]);
            // Each of the others brings the table's 3e-6 at the most.
            let table = 3e-6 * own.others as f64;
            near(name, own.beats, f(&exact["beats"]), table);
            near(name, own.beaten, f(&exact["beaten"]), table);
            // Seven points see a neighbour that is far surer only coarsely: off by 0.0065 at the most here, of a spread of 0.3.
            near(name, own.spread, f(&exact["spread"]), 0.007);
            // 400 000 draws of at most 1 on either side: four standard errors.
            near(name, own.net(), f(&drawn["mean"]), 4.0 / 400_000_f64.sqrt());
            near(name, own.spread, f(&drawn["sd"]), 0.007 + 4.0 / 800_000_f64.sqrt());
        }
    }
}

#[test]
fn where_the_dearer_is_the_better_made_all_are_about_the_same() {
    let clear = |prices: [f64; 4]| {
        let rows = [1.2, 0.4, -0.3, -1.0].into_iter().zip(prices).map(|(quality, price)| Asked::new(quality, 0.2, price));
        let found: Vec<_> = among(&rows.map(|row| row.expect("a garment")).collect::<Vec<_>>()).into_iter().map(Ok).collect();
        by_worth(&found).iter().map(|placed| (placed.which, placed.about_the_same)).collect::<Vec<_>>()
    };
    assert_eq!(clear([30.0, 40.0, 50.0, 60.0]), [(0, false), (1, false), (2, false), (3, false)]);
    assert!(clear([60.0, 50.0, 40.0, 30.0])[1..].iter().all(|(_, same)| *same));
}

fn any_asked() -> impl Strategy<Value = Asked> {
    // Few prices and qualities, so that some are equal.
    let quality = prop_oneof![-3.0..3.0_f64, Just(0.0), Just(0.5)];
    let price = prop_oneof![1.0..1e4_f64, Just(50.0), Just(80.0)];
    (quality, 0.01..1.5_f64, price).prop_map(|(quality, spread, price)| Asked::new(quality, spread, price).expect("a garment"))
}

fn any_found() -> impl Strategy<Value = Result<Worth, WhyNoWorth>> {
    let why = prop_oneof![Just(WhyNoWorth::FewOthers), Just(WhyNoWorth::NoPrice), Just(WhyNoWorth::FaceDown)];
    let worth = (3..40_usize, 0.0..1.0_f64, 0.0..1.0_f64, 0.0..0.5_f64).prop_map(|(others, one, other, spread)| {
        let of = others as f64;
        Worth { others, beats: one * of, beaten: other * (1.0 - one) * of, spread }
    });
    prop_oneof![worth.prop_map(Ok), why.prop_map(Err)]
}

proptest! {
    #[test]
    fn the_order_is_total_and_those_without_a_place_stand_last(found in prop::collection::vec(any_found(), 0..40)) {
        let placed = by_worth(&found);
        let mut places: Vec<usize> = placed.iter().map(|placed| placed.which).collect();
        let known = places.iter().filter(|place| found[**place].is_ok()).count();
        prop_assert!(places[..known].iter().all(|place| found[*place].is_ok()));
        let nets: Vec<f64> = places[..known].iter().filter_map(|place| found[*place].ok()).map(|worth| worth.net()).collect();
        prop_assert!(nets.windows(2).all(|two| two[0] >= two[1]));
        prop_assert!(placed.iter().all(|placed| !placed.about_the_same || found[placed.which].is_ok()));
        prop_assert!(placed.first().is_none_or(|first| !first.about_the_same));
        places.sort_unstable();
        prop_assert_eq!(places, (0..found.len()).collect::<Vec<_>>());
    }

    #[test]
    fn a_cheaper_twin_never_stands_lower(
        mut rack in prop::collection::vec(any_asked(), 1..12),
        (quality, spread, price, less) in (-3.0..3.0_f64, 0.01..1.5_f64, 2.0..1e4_f64, 0.0..1.0_f64),
    ) {
        let twin = |price| Asked::new(quality, spread, price).expect("a garment");
        rack.extend([twin(price), twin(price * (1.0 - 0.5 * less))]);
        let found = among(&rack);
        let (dear, cheap) = (found[rack.len() - 2], found[rack.len() - 1]);
        prop_assert!(cheap.net() >= dear.net() - 1e-9, "{} {}", cheap.net(), dear.net());
        prop_assert!(cheap.beats >= dear.beats - 1e-9 && cheap.beaten <= dear.beaten + 1e-9);
    }

    #[test]
    fn a_better_made_twin_at_the_same_price_never_stands_lower(
        mut rack in prop::collection::vec(any_asked(), 1..12),
        (quality, more, spread, price) in (-3.0..3.0_f64, 0.0..2.0_f64, 0.01..1.5_f64, 2.0..1e4_f64),
    ) {
        rack.extend([quality, quality + more].map(|quality| Asked::new(quality, spread, price).expect("a garment")));
        let found = among(&rack);
        prop_assert!(found[rack.len() - 1].net() >= found[rack.len() - 2].net() - 1e-9);
    }

    #[test]
    fn gains_and_losses_of_a_rack_cancel_and_lie_within_it(rack in prop::collection::vec(any_asked(), 0..20)) {
        let found = among(&rack);
        let sum: f64 = found.iter().map(|worth| worth.beats - worth.beaten).sum();
        prop_assert!(sum.abs() < 1e-9 * (1 + rack.len() * rack.len()) as f64, "{sum}");
        for worth in &found {
            prop_assert!(worth.net().abs() <= 1.0 + 1e-9 && worth.spread.is_finite() && worth.spread >= 0.0);
            prop_assert!(worth.beats >= 0.0 && worth.beaten >= 0.0 && worth.beats + worth.beaten <= worth.others as f64 * 2.0 + 1e-9);
        }
    }

    #[test]
    fn no_record_makes_it_panic(one in garment_named("a"), other in garment_named("b"), third in garment_named("c"), last in garment_named("d")) {
        let appraiser = Appraiser::default();
        let garments = [one, other, third, last];
        let known: Vec<Appraisal> = garments.iter().map(|garment| appraiser.appraise(garment)).collect();
        let pairs: Vec<_> = garments.iter().zip(&known).collect();
        prop_assert_eq!(worth(&pairs, &Rates::of(Market::UnitedStates)).len(), 4);
    }
}

/// A pair of jeans with the first or the last level of so many checks.
fn jeans(name: &str, best: bool, checks: usize) -> Garment {
    FAMILIES[0].checks.iter().take(checks).fold(bare(name), |garment, check| {
        let level = if best { check.levels.last() } else { check.levels.first() }.expect("a check has levels");
        garment.after(Act::Answer(check, Answer::Judged { level: level.key, care: Care::Usual }))
    })
}

fn ticket(minor: u64, currency: Currency, kind: PriceKind, face_down: bool) -> Act {
    Act::Ticket(Some(Ticket { minor, currency, kind, face_down }))
}

fn euros(garment: &Garment, minor: u64) -> Garment {
    garment.after(ticket(minor, Currency::Eur, PriceKind::Retail, false))
}

fn found(garments: &[Garment]) -> Vec<Result<Worth, WhyNoWorth>> {
    let appraiser = Appraiser::default();
    let known: Vec<Appraisal> = garments.iter().map(|garment| appraiser.appraise(garment)).collect();
    worth(&garments.iter().zip(&known).collect::<Vec<_>>(), &Rates::of(Market::EuropeanUnion))
}

fn four() -> Vec<Garment> {
    (0..4).map(|place| euros(&jeans(&format!("g{place}"), place < 2, 20), 4_000 + place * 1_000)).collect()
}

#[test]
fn prices_of_another_sort_or_currency_and_what_is_missing_are_told_apart() {
    let mut rack = four();
    rack.extend([
        jeans("yen", true, 20).after(ticket(9_000, Currency::Jpy, PriceKind::Retail, false)),
        jeans("stand", true, 20).after(ticket(3_000, Currency::Eur, PriceKind::Wholesale, false)),
        jeans("covered", true, 20).after(ticket(3_000, Currency::Eur, PriceKind::Retail, true)),
        euros(&jeans("early", true, 2), 3_000),
        jeans("none", true, 20),
        euros(&Garment::new(id("coat"), FAMILIES[1], day()), 3_000),
    ]);
    let found = found(&rack);
    assert!(found[..4].iter().all(|found| found.is_ok_and(|worth| worth.others == 3)), "{found:?}");
    let why: Vec<WhyNoWorth> = found[4..].iter().filter_map(|found| found.err()).collect();
    assert_eq!(
        why,
        [
            WhyNoWorth::FewOthers,
            WhyNoWorth::FewOthers,
            WhyNoWorth::FaceDown,
            WhyNoWorth::FewAnswers,
            WhyNoWorth::NoPrice,
            WhyNoWorth::FewAnswers,
        ]
    );
    assert_eq!(by_worth(&found)[4..].iter().map(|placed| placed.which).collect::<Vec<_>>(), [4, 5, 7, 9, 6, 8]);
}

#[test]
fn an_offer_is_weighed_by_what_its_smallest_order_lands_at() {
    let offered = |name: &str, best: bool, minor: u64| {
        let acts = [
            TermsAct::Currency(Some(Currency::Eur)),
            TermsAct::Incoterm(Some(Incoterm::DeliveredDutyPaid)),
            TermsAct::Prices(vec![PriceBreak { from: 300, minor }, PriceBreak { from: 1_000, minor: minor / 2 }]),
        ];
        // A retail ticket stands on it too: what a shopper pays is not what the buyer pays.
        acts.into_iter().fold(euros(&jeans(name, best, 20), 1), |garment, act| garment.after(Act::Terms(act)))
    };
    let mut rack = four();
    rack.extend([offered("a", true, 1_400), offered("b", false, 1_500), offered("c", false, 1_600), offered("d", true, 1_300)]);
    let found = found(&rack);
    assert!(found.iter().all(|found| found.is_ok_and(|worth| worth.others == 3)));
    assert_eq!(by_worth(&found[4..])[0].which, 3);
    let landed = |garment: &Garment| landed_smallest(garment, &Rates::of(Market::EuropeanUnion));
    let smallest = landed(&rack[4]).expect("an offer");
    assert_eq!((smallest.pieces, smallest.currency, smallest.targeted), (300, Currency::Eur, false));
    assert!((smallest.view.landed - 14.0).abs() < 1e-9);
    let larger = landed(&rack[4].after(Act::Terms(TermsAct::Minimum(Some(2_000))))).expect("an offer");
    assert!(larger.pieces == 2_000 && (larger.view.landed - 7.0).abs() < 1e-9);
    // Fewer than have a price are taken: the first price stands.
    assert_eq!(landed(&rack[4].after(Act::Terms(TermsAct::Minimum(Some(10))))).map(|found| found.pieces), Ok(300));
    let no_currency = rack[4].after(Act::Terms(TermsAct::Currency(None)));
    assert_eq!(landed(&no_currency), Err(NotLanded::NoCurrency));
    rack[4] = no_currency;
    assert_eq!(self::found(&rack)[4], Err(WhyNoWorth::NotLanded(NotLanded::NoCurrency)));
}

#[test]
fn a_price_says_nothing_of_quality() {
    let before: Vec<(f64, f64)> = four()
        .iter()
        .map(|garment| Appraiser::default().appraise(garment))
        .map(|known| (known.mean(), known.range().0))
        .collect();
    let dearer: Vec<(f64, f64)> = four()
        .iter()
        .map(|garment| euros(garment, 90_000))
        .map(|garment| Appraiser::default().appraise(&garment))
        .map(|known| (known.mean(), known.range().0))
        .collect();
    assert_eq!(before, dearer);
}
