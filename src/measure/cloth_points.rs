//! Cloth judged by points: each flaw gets one to four by its length, and what counts is how many fall on 100 m².

use super::{Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Area, Estimate, Length, Number, Unit};
use crate::to_say;

/// Points on 100 m² of cloth, by the four-point way.
///
/// # Formula
/// `P / (L W)` with `P = n3 + 2 n6 + 3 n9 + 4 n + 2 h + 4 H`: flaws up to 3, 6 and 9 inches and longer, holes up to an inch and wider; on
/// 100 m², and beside it on 100 yd².
///
/// # Where it holds
/// Along one length of cloth no yard takes more than four points, a flaw that runs on over yards takes four in each: whoever counts sees to
/// that. Some houses give every hole four.
///
/// # Uncertainty
/// What one looker finds and another does not: a tenth of each count, and 0.2 of a flaw at the least (1 sigma). Judgement. Length and width
/// are taken as they are given.
///
/// # Source
/// ASTM D5430, four-point option, by published articles; handbook, section 11.2.
pub static CLOTH_POINTS: Instrument = Instrument {
    key: "cloth-points",
    name: "Points of cloth",
    says: "Counts flaws in a length of cloth and gives points on 100 m².",
    unit: Unit::Count,
    inputs: &ROLL,
    steps: &[
        "Look over the face of the whole length in even light.",
        "Count each flaw once, by its length along or across.",
        "Give no yard more than four points; a flaw that runs on takes four in each yard.",
    ],
    cautions: &["Keep hands and sleeves off a roller that turns."],
    sources: &[&sources::D5430, &sources::JUDGEMENT],
    formula: points,
};

const FLAWS: [f64; 2] = [0.0, 5000.0];
const SHARE_FOUND: f64 = 0.1;
const LEAST_FOUND: f64 = 0.2;
/// Points for one of each kind, in the order of [`ROLL`].
const WORTH: [f64; 6] = [1.0, 2.0, 3.0, 4.0, 2.0, 4.0];
const HUNDRED_SQUARE_METRES: f64 = 100.0;
/// Square metres in 100 square yards, exactly.
const HUNDRED_SQUARE_YARDS: f64 = 83.612_736;

static ROLL: [Input; 8] = [
    Input::count("to-3", "Flaws up to 75 mm", "Up to 3 inches: a point each.", FLAWS).usually(0.0),
    Input::count("to-6", "Flaws over 75 and up to 150 mm", "Up to 6 inches: two points each.", FLAWS).usually(0.0),
    Input::count("to-9", "Flaws over 150 and up to 230 mm", "Up to 9 inches: three points each.", FLAWS).usually(0.0),
    Input::count("over-9", "Flaws over 230 mm", "Over 9 inches: four points each.", FLAWS).usually(0.0),
    Input::count("hole", "Holes up to 25 mm", "Up to an inch: two points each.", FLAWS).usually(0.0),
    Input::count("wide-hole", "Holes over 25 mm", "Over an inch: four points each.", FLAWS).usually(0.0),
    Input::measured(
        "length",
        "Length looked over",
        "Of the cloth that was looked over.",
        [Unit::Metre, Unit::Metre, Unit::Yard],
        [1.0, 10_000.0],
    ),
    Input::measured(
        "width",
        "Width that can be cut",
        "Without the selvedges.",
        [Unit::Centimetre, Unit::Centimetre, Unit::Inch],
        [20.0, 500.0],
    ),
];

/// Amounts in the order of [`ROLL`]: six counts, m, cm.
fn points(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let given: Vec<f64> = amounts.iter().copied().flatten().collect();
    let [.., length, width] = *given.as_slice() else {
        return Err(Fault::WrongNumberOfReadings { needed: ROLL.len(), given: given.len() });
    };
    if given.len() != ROLL.len() {
        return Err(Fault::WrongNumberOfReadings { needed: ROLL.len(), given: given.len() });
    }
    let counted = ROLL.iter().zip(&given).zip(WORTH).map(|((input, count), worth)| -> Estimate<Number> {
        input.at::<Number>(*count, (SHARE_FOUND * count).max(LEAST_FOUND)) * Estimate::exact(worth)
    });
    let found = counted.reduce(|one, other| one + other).ok_or(Fault::NotANumber(&ROLL[0]))?;
    let length: Estimate<Length> = ROLL[6].at(length, 0.0);
    let area: Estimate<Area> = length * ROLL[7].at::<Length>(width, 0.0);
    let on = |square_metres: f64| -> Estimate<Number> { found.clone() * (Estimate::<Area>::exact(square_metres) / area.clone()) };
    let outcome = Outcome::of(&on(HUNDRED_SQUARE_METRES), Unit::Count).ok_or(Fault::NotANumber(&ROLL[6]))?;
    let on_yards = on(HUNDRED_SQUARE_YARDS);
    let says = if on_yards.value() > 28.0 {
        to_say!("Above 28 on 100 yd², at which many buyers send a roll back.")
    } else if on_yards.value() > 20.0 {
        to_say!("Above 20 on 100 yd², which many buyers take as the average of a lot; below 28, their limit for one roll.")
    } else {
        to_say!("Within 20 on 100 yd², which many buyers take as the average of a lot.")
    };
    Ok(outcome.with("per-100-yd2", to_say!("On 100 yd²"), &on_yards, Unit::Count).saying(says))
}
