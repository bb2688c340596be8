//! Acts and garments drawn at random from the real catalog, for the tests that state laws.
#![allow(dead_code, reason = "each test file uses some of it")]

use garment_assay::catalog::jeans::JEANS;
use garment_assay::check::Check;
use garment_assay::cost::{Channel, Incoterm};
use garment_assay::fit::{LabelSystem, PersonId, Went};
use garment_assay::garment::{
    Act, Answer, Deal, FitAct, Garment, Given, Guess, Id, LabelSize, Photograph, PhotographAct, PhotographId, PriceBreak,
    Readings, Shown, Taped, TermsAct,
};
use garment_assay::grading::Care;
use garment_assay::lot::{Aql, Finding, Level, Log, LotSize, Severity};
use garment_assay::measure::{Drying, Instrument, PointOfMeasure, Warmth};
use garment_assay::quantity::{Amount, Unit};
use garment_assay::trade::{Currency, Day, Name, PriceKind, Ticket};
use proptest::prelude::*;
use proptest::sample::select;

pub fn id(text: &str) -> Id {
    Id::new(text).expect("a name")
}

pub fn day() -> Day {
    Day::new(2026, 11, 25).expect("a day")
}

pub fn bare(name: &str) -> Garment {
    Garment::new(id(name), &JEANS, day())
}

pub fn check(key: &str) -> &'static Check {
    JEANS.checks.iter().copied().find(|check| check.key == key).unwrap_or_else(|| panic!("no check {key}"))
}

/// CRC-32 (reflected) from its definition, in the eight digits in which pages have it.
pub fn crc(text: &str) -> String {
    let crc = text.bytes().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(byte), |crc, _| if crc & 1 == 1 { crc >> 1 ^ 0xEDB8_8320 } else { crc >> 1 })
    });
    format!("{:08x}", !crc)
}

/// The answer that names this level of this check.
pub fn judged(key: &str, level: &str) -> Act {
    let check = check(key);
    let (_, level) = check.level(level).unwrap_or_else(|| panic!("{key} has no level {level}"));
    Act::Answer(check, Answer::Judged { level: level.key, care: Care::Usual })
}

pub fn text() -> impl Strategy<Value = String> {
    prop_oneof![
        Just(String::new()),
        Just("Blue pair, \"selvedge\"\nrow 2\t\\ end\r\n".to_owned()),
        Just("Größe 32 · 牛仔裤 · \u{1f456}\u{200d}\u{fe0f} · \u{feff}\u{0}\u{7f}\u{2028}".to_owned()),
        prop::collection::vec(any::<char>(), 0..40).prop_map(String::from_iter),
    ]
}

pub fn care() -> impl Strategy<Value = Care> {
    select(vec![Care::Careful, Care::Usual, Care::Unsure])
}

pub fn any_check() -> impl Strategy<Value = &'static Check> {
    let worn = JEANS.second_hand.iter().map(|look| &look.condition.check);
    select(JEANS.checks.iter().copied().chain(worn).collect::<Vec<_>>())
}

/// An answer that could be given to the check.
pub fn answer_to(check: &'static Check) -> BoxedStrategy<Answer> {
    let judged =
        (0..check.levels.len(), care()).prop_map(|(place, care)| Answer::Judged { level: check.levels[place].key, care }).boxed();
    let plain = prop_oneof![6 => judged, 1 => Just(Answer::CannotTell), 1 => Just(Answer::Skipped)].boxed();
    if check.instruments.is_empty() {
        return plain;
    }
    prop_oneof![2 => plain, 3 => select(check.instruments.to_vec()).prop_flat_map(readings_of).prop_map(Answer::Measured)].boxed()
}

/// Anything a number can be, the likely ones oftener.
fn amount() -> impl Strategy<Value = f64> {
    prop_oneof![
        (0_u16..400).prop_map(f64::from),
        (0.0..500.0),
        prop::num::f64::NORMAL | prop::num::f64::ZERO | prop::num::f64::SUBNORMAL | prop::num::f64::NEGATIVE,
    ]
}

/// Readings of the instrument: some make sense, others could only stand in a page.
fn readings_of(instrument: &'static Instrument) -> impl Strategy<Value = Readings> {
    let given = (0..instrument.inputs.len(), amount(), select(Unit::ALL.to_vec())).prop_map(|(place, amount, unit)| Given {
        input: instrument.inputs[place].key,
        amount,
        unit,
    });
    let sensible = prop::collection::vec(0.0..1.0_f64, instrument.inputs.len()).prop_map(|shares| {
        let given = instrument.inputs.iter().zip(shares).map(|(input, share)| {
            let amount = (input.least + share * (input.most - input.least).min(100.0)).round().max(input.least);
            Given { input: input.key, amount, unit: input.unit }
        });
        given.collect::<Vec<_>>()
    });
    let given = prop_oneof![1 => prop::collection::vec(given, 0..6), 2 => sensible];
    given.prop_map(move |given| Readings { instrument, given })
}

/// One to five readings with a tape, of any size, in any unit of length.
pub fn taped() -> impl Strategy<Value = Taped> {
    let lengths: Vec<Unit> = Unit::ALL.into_iter().filter(|unit| unit.is_like(Unit::Millimetre)).collect();
    let reading = (amount(), select(lengths)).prop_map(|(number, unit)| Amount { number, unit });
    (prop::collection::vec(reading, 1..=Taped::MOST), any::<bool>())
        .prop_map(|(readings, round)| Taped::new(readings, round).expect("finite lengths"))
}

pub fn point(key: &str) -> &'static PointOfMeasure {
    JEANS.points.iter().find(|point| point.key == key).unwrap_or_else(|| panic!("no point {key}"))
}

pub fn ticket() -> impl Strategy<Value = Option<Ticket>> {
    let kind = select(vec![PriceKind::Retail, PriceKind::Wholesale]);
    prop::option::of((any::<u64>(), select(Currency::ALL.to_vec()), kind, any::<bool>()))
        .prop_map(|ticket| ticket.map(|(minor, currency, kind, face_down)| Ticket { minor, currency, kind, face_down }))
}

/// A guess with or without a likeliest price and what the tool said; any amounts that fit.
pub fn guess() -> impl Strategy<Value = Option<Guess>> {
    let kind = select(vec![PriceKind::Retail, PriceKind::Wholesale]);
    let amounts = prop::collection::vec(1..=u64::MAX, 6);
    let day = (1..=9999_u16, 1..=12_u8, 1..=28_u8);
    prop::option::weighted(0.8, (amounts, select(Currency::ALL.to_vec()), kind, day, any::<[bool; 2]>())).prop_map(|drawn| {
        let (mut amounts, currency, kind, (year, month, day), [with_best, with_shown]) = drawn?;
        amounts[..3].sort_unstable();
        amounts[3..].sort_unstable();
        let guess = Guess::new(amounts[0], amounts[2], currency, kind, Day::new(year, month, day)?)?;
        let guess = if with_best { guess.with_best(amounts[1])? } else { guess };
        Some(if with_shown { guess.beside(Shown::new(amounts[3], amounts[4], amounts[5])?) } else { guess })
    })
}

pub fn answering() -> impl Strategy<Value = Act> {
    any_check().prop_flat_map(|check| answer_to(check).prop_map(move |answer| Act::Answer(check, answer)))
}

pub fn act() -> impl Strategy<Value = Act> {
    prop_oneof![
        10 => answering(),
        1 => any_check().prop_map(Act::Clear),
        2 => (any_check(), text()).prop_map(|(check, text)| Act::CheckNote(check, text)),
        2 => fit_act().prop_map(Act::Fit),
        2 => (0..JEANS.points.len(), prop::option::weighted(0.8, taped()))
            .prop_map(|(place, taped)| Act::Measure(&JEANS.points[place], taped)),
        1 => text().prop_map(Act::Label),
        1 => text().prop_map(Act::Place),
        1 => text().prop_map(Act::Note),
        1 => ticket().prop_map(Act::Ticket),
        1 => guess().prop_map(Act::Guess),
        1 => any::<bool>().prop_map(Act::Reference),
        1 => any::<bool>().prop_map(Act::SecondHand),
        1 => prop::option::of(select(Channel::ALL.to_vec())).prop_map(Act::Shop),
        1 => prop::option::of(select(Name::ALL.to_vec())).prop_map(Act::Name),
        1 => any::<(Option<u32>, Option<u64>, Option<u32>)>().prop_map(|(wears, target, minimum)| {
            Act::Deal(Deal::default().with_wears(wears).with_target(target).with_minimum(minimum))
        }),
        2 => terms_act().prop_map(Act::Terms),
        1 => prop::option::weighted(0.8, log()).prop_map(Act::Lot),
        2 => photograph_act().prop_map(Act::Photograph),
        1 => text().prop_map(Act::Collection),
        1 => any::<bool>().prop_map(Act::Archived),
    ]
}

fn any_day() -> impl Strategy<Value = Day> {
    (2000_u16..2100, 1_u8..=12, 1_u8..=28).prop_map(|(year, month, day)| Day::new(year, month, day).expect("a day"))
}

/// Anything that can be noted of an offer.
pub fn terms_act() -> impl Strategy<Value = TermsAct> {
    let price = any::<(u16, u32)>().prop_map(|(from, minor)| PriceBreak { from: from.into(), minor: minor.into() });
    prop_oneof![
        text().prop_map(TermsAct::Supplier),
        text().prop_map(TermsAct::Style),
        text().prop_map(TermsAct::Colourways),
        text().prop_map(TermsAct::Sizes),
        prop::option::of(select(Currency::ALL.to_vec())).prop_map(TermsAct::Currency),
        prop::option::of(select(Incoterm::ALL.to_vec())).prop_map(TermsAct::Incoterm),
        prop::collection::vec(price, 0..10).prop_map(TermsAct::Prices),
        any::<Option<u32>>().prop_map(TermsAct::Minimum),
        prop::option::of((any_day(), any_day())).prop_map(TermsAct::Delivery),
        any::<bool>().prop_map(TermsAct::Shortlisted),
    ]
}

/// One of a few photographs, so that two copies of a garment often have the same.
pub fn photograph() -> impl Strategy<Value = Photograph> {
    let about = prop::option::of(any_check());
    (0_u8..8, any_day(), 1..=Photograph::LONGEST_SIDE, text(), about).prop_map(|(bytes, day, side, caption, check)| {
        let one = Photograph::new(PhotographId::of(&[bytes]), day, side, 1200).expect("pixels");
        one.captioned(&caption).for_check(check)
    })
}

/// Anything that can be done to photographs.
pub fn photograph_act() -> impl Strategy<Value = PhotographAct> {
    let id = || (0_u8..8).prop_map(|bytes| PhotographId::of(&[bytes]));
    prop_oneof![
        4 => photograph().prop_map(PhotographAct::Add),
        2 => (id(), text()).prop_map(|(id, caption)| PhotographAct::Caption(id, caption)),
        1 => id().prop_map(PhotographAct::Remove),
        1 => (0_usize..10, photograph()).prop_map(|(place, one)| PhotographAct::PutBack(place, one)),
    ]
}

/// The log of a lot; a few are not whole and are refused.
pub fn log() -> impl Strategy<Value = Log> {
    let finding = (0_u32..60, text(), select(Severity::ALL.to_vec()));
    let finding = finding.prop_map(|(piece, what, severity)| Finding { piece, what, severity });
    let agreed = (2_u32..100_000, select(Level::ALL.to_vec()), select(Aql::ALL.to_vec()), select(Aql::ALL.to_vec()));
    (agreed, 0_u32..300, prop::collection::vec(finding, 0..3)).prop_map(|((pieces, level, major, minor), looked_at, findings)| {
        let lot = LotSize::new(pieces).expect("two or more");
        Log { lot, level, major, minor, looked_at, findings }
    })
}

/// Anything that can be noted in the fitting room, of the family's table where it has one; a few of them are refused.
pub fn fit_act() -> BoxedStrategy<FitAct> {
    let who = prop::option::of("[a-z0-9~-]{1,20}").prop_map(|who| FitAct::Who(who.and_then(|who| PersonId::new(&who)))).boxed();
    let wash = (select(vec![Warmth::Cool, Warmth::Warm, Warmth::Hot]), select(vec![Drying::Line, Drying::Tumble]));
    let mut all = vec![who, prop::option::of(wash).prop_map(FitAct::Wash).boxed()];
    let label = (select(LabelSystem::ALL.to_vec()), text());
    all.push(label.prop_map(|(system, text)| FitAct::Label(LabelSize::new(system, &text))).boxed());
    if let Some(table) = JEANS.fit {
        if !table.cuts.is_empty() {
            all.push(prop::option::of(select(table.cuts.to_vec())).prop_map(FitAct::Cut).boxed());
        }
        if !table.cloths.is_empty() {
            all.push(prop::option::of(select(table.cloths.to_vec())).prop_map(FitAct::Cloth).boxed());
        }
        if !table.allowances.is_empty() {
            let inside = (select(table.allowances.to_vec()), prop::option::of((0.0..20.0_f64, select(Unit::ALL.to_vec()))));
            let inside =
                inside.prop_map(|(one, amount)| FitAct::Allowance(one, amount.map(|(number, unit)| Amount { number, unit })));
            all.push(inside.boxed());
        }
        if !table.moves.is_empty() {
            let moves = (select(table.moves.to_vec()), prop::option::of(select(Went::ALL.to_vec())));
            all.push(moves.prop_map(|(one, went)| FitAct::Move(one, went)).boxed());
        }
        if !table.signs.is_empty() {
            all.push(
                (select(table.signs.to_vec()), any::<Option<bool>>()).prop_map(|(one, seen)| FitAct::Sign(one, seen)).boxed(),
            );
        }
    }
    prop::strategy::Union::new(all).boxed()
}

pub fn garment_named(name: &'static str) -> impl Strategy<Value = Garment> {
    prop::collection::vec(act(), 0..50).prop_map(move |acts| acts.into_iter().fold(bare(name), |garment, act| garment.after(act)))
}
