//! Girths and lengths with a tape: what a point of measure is, and the mean of one to five readings with its spread. Where each family is
//! measured stands in the catalog.

use super::{Choice, Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Unit, rectangular};
use crate::to_say;

/// A place where a garment is measured, and how it lies for that.
#[derive(Debug, PartialEq)]
pub struct PointOfMeasure {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// The trade's name.
    pub name: &'static str,
    /// How the piece lies and where the tape goes.
    pub lay: &'static str,
    /// Whether the flat width is doubled to a girth.
    pub doubled: bool,
    /// Usual tolerance either way of the finished measure (a girth where doubled), in millimetres.
    pub tolerance_mm: f64,
    /// Where the tolerance comes from.
    pub tolerance_from: &'static str,
    /// Where the way of laying comes from.
    pub lay_from: &'static str,
}

crate::language::says!(PointOfMeasure { name, lay, tolerance_from, lay_from });

/// A girth from a flat width.
///
/// # Formula
/// `2 w`: front and back lie on each other. A width with both plies is one reading, so its spread doubles too.
///
/// # Source
/// Common practice; handbook, section 9.1.
pub fn girth_of_flat(width: &Estimate<Length>) -> Estimate<Length> {
    width * 2.0
}

/// How far one reading with a tape lies from the next (1 sigma), in millimetres, when a person lays the piece out again each time.
/// Judgement; nobody measured it.
pub const ONE_READING_MM: f64 = 3.0;
/// How many readings the usual spread counts for, beside those taken. Judgement: about as much as five readings teach.
pub const PRIOR_FREEDOM: f64 = 4.0;

/// The mean of repeat readings, in millimetres, and its standard uncertainty from their scatter alone; none without a finite reading, or
/// where `one_reading`, the spread one expects of a single reading, is not a finite number of 0 or more.
///
/// # Formula
/// `x = sum(x_i) / n`, `u = s_p / sqrt(n)`, and `s_p^2 = ((n - 1) s^2 + f s_0^2) / (n - 1 + f)` with `s` the readings' own standard
/// deviation, `s_0` the expected one and `f` = 4 ([`PRIOR_FREEDOM`]).
///
/// # Where it holds
/// For a handful of readings, where `s` alone says little: two equal ones would claim no spread at all. With one reading `u = s_0`; with
/// very many, `u` nears `s / sqrt(n)`.
///
/// # Source
/// JCGM 100:2008 (GUM), 4.2.3 for the mean and `s / sqrt(n)`, 4.2.4 for a pooled variance in place of `s^2`. The sizes of `s_0` and `f`
/// are judgement.
///
/// # Example
/// ```
/// use garment_assay::measure::mean_of_readings;
/// let (mean, u) = mean_of_readings(&[424.0, 428.0, 426.0], 3.0).unwrap();
/// // s = 2, s_p^2 = (2 * 4 + 4 * 9) / 6 = 22 / 3.
/// assert!((mean - 426.0).abs() < 1e-12 && (u - (22.0_f64 / 9.0).sqrt()).abs() < 1e-12);
/// ```
pub fn mean_of_readings(readings: &[f64], one_reading: f64) -> Option<(f64, f64)> {
    if readings.is_empty()
        || !readings.iter().all(|reading| reading.is_finite())
        || !(one_reading.is_finite() && one_reading >= 0.0)
    {
        return None;
    }
    let count = readings.len() as f64;
    // Divided before they are added, so that huge readings do not overflow.
    let mean = readings.iter().map(|reading| reading / count).sum::<f64>();
    let squares = readings.iter().map(|reading| (reading - mean) * (reading - mean)).sum::<f64>();
    let pooled = (squares + PRIOR_FREEDOM * one_reading * one_reading) / (count - 1.0 + PRIOR_FREEDOM);
    let u = (pooled / count).sqrt();
    (mean.is_finite() && u.is_finite()).then_some((mean, u))
}

/// A length from repeat readings in millimetres and the step of the tape, as two inputs: `reading` and `tape`.
///
/// # Formula
/// [`mean_of_readings`], plus 0 with `u = step / 2 / sqrt(3)`: a tape read to the nearest mark is off by up to half a step. Reading again
/// does not help that one, since the same cloth meets the same mark.
///
/// # Source
/// JCGM 100:2008 (GUM), F.2.2.1 for the step.
pub fn length_of_readings(readings: &[f64], one_reading: f64, tape_step: f64) -> Estimate<Length> {
    let Some((mean, u)) = mean_of_readings(readings, one_reading) else { return Estimate::unknown() };
    let scatter = Estimate::measured_in("reading", mean, u, Unit::Millimetre);
    let tape = Estimate::measured_in("tape", 0.0, rectangular(tape_step / 2.0), Unit::Millimetre);
    match (scatter, tape) {
        (Ok(scatter), Ok(tape)) => scatter + tape,
        _ => Estimate::unknown(),
    }
}

/// A measure of a garment at a point of measure, from one to five readings in millimetres; `round` says that the tape went all the way
/// round, so that nothing is to be doubled.
///
/// # Formula
/// [`length_of_readings`], doubled by [`girth_of_flat`] where the point is a flat width. Where it is, the width stands beside it as `flat`.
/// In centimetres.
///
/// # Errors
/// A [`Fault`] about the reading of [`GIRTH`] that cannot be taken: none at all, no number, or not within 50 mm to 2 m.
///
/// # Uncertainty
/// One reading is good to [`ONE_READING_MM`] (1 sigma); the tape is read to the nearest mark, `step` millimetres apart.
///
/// # Source
/// As [`GIRTH`].
///
/// # Example
/// ```
/// use garment_assay::{catalog::jeans::JEANS, measure::taped};
/// let waist = taped(&JEANS.points[0], &[424.0, 428.0, 426.0], false, 1.0).unwrap();
/// assert!((waist.value - 85.2).abs() < 1e-9 && waist.also("flat").is_some());
/// ```
pub fn taped(point: &PointOfMeasure, readings: &[f64], round: bool, step: f64) -> Result<Outcome, Fault> {
    let asked = &INPUTS[READINGS];
    if readings.len() > asked.len() {
        return Err(Fault::WrongNumberOfReadings { needed: asked.len(), given: readings.len() });
    }
    if readings.is_empty() {
        return Err(Fault::Missing(&asked[0]));
    }
    for (input, reading) in asked.iter().zip(readings) {
        input.taken(Some(*reading))?;
    }
    let read = length_of_readings(readings, ONE_READING_MM, step);
    let outcome = of_readings(point.doubled && !round, &read).ok_or(Fault::NotANumber(&asked[0]))?;
    Ok(with_doubt(outcome, readings, ONE_READING_MM))
}

/// What is said of a girth that was read as a flat width.
pub const DOUBLED: &str = to_say!("A flat width, doubled to a girth.");

/// The outcome of a length read with a tape, doubled where it is a flat width; none when it is unknown.
fn of_readings(doubled: bool, read: &Estimate<Length>) -> Option<Outcome> {
    if doubled {
        let girth = Outcome::of(&girth_of_flat(read), Unit::Centimetre)?;
        Some(girth.with("flat", to_say!("Flat width"), read, Unit::Centimetre).saying(DOUBLED))
    } else {
        Outcome::of(read, Unit::Centimetre)
    }
}

/// Says so where readings lie further apart than chance lets them.
fn with_doubt(outcome: Outcome, readings: &[f64], one_reading: f64) -> Outcome {
    let least = readings.iter().copied().fold(f64::INFINITY, f64::min);
    let most = readings.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    // Five readings of spread s lie within 4 s of each other in 19 cases of 20, closer than that where they are fewer.
    if most - least > 4.0 * one_reading {
        outcome.saying(to_say!("Your readings lie far apart. Lay it out afresh, or see whether one was typed wrongly."))
    } else {
        outcome
    }
}

/// A girth or a length of any garment from one to five readings with a tape.
///
/// # Formula
/// [`length_of_readings`], doubled by [`girth_of_flat`] where what is measured is a flat width and the tape did not go round. Beside a
/// wanted measure also `found - wanted`, and the tolerance.
///
/// # Where it holds
/// Readings of 50 mm to 2 m.
///
/// # Uncertainty
/// As [`length_of_readings`]: one reading is good to 3 mm (1 sigma), the tape is read to the nearest millimetre, unless told otherwise.
///
/// # Source
/// What is doubled is common practice: handbook, section 9.1; JCGM 100:2008 (GUM), 4.2 and F.2.2.1.
pub static GIRTH: Instrument = Instrument {
    key: "girth",
    name: "Girths and lengths",
    says: "A measure of the piece from one to five readings with a tape, flat widths doubled.",
    unit: Unit::Centimetre,
    inputs: &INPUTS,
    steps: &[
        "Close the piece and lay it flat on a table. Smooth it with your palm, without pulling.",
        "Lay the tape straight over what you measure, and read it to the nearest mark.",
        "Pick the piece up, lay it down again and read again. Three readings are better than one.",
    ],
    cautions: &[
        "Ask before you lay out goods that are not yours. Do not pull the cloth to the tape.",
        "New goods can hold pins or bits of needle: smooth with the flat of the hand and feel bands and hems from outside first.",
    ],
    sources: &[&sources::MEASURING_GUIDES, &sources::ISO_8559, &sources::GUM, &sources::COMMON_PRACTICE, &sources::JUDGEMENT],
    formula,
};

/// What one may say is measured. The first nine are places of a pair of jeans, which this instrument once asked for by name: readings kept
/// then hold the place in this list, so they stay where they stood, and are offered no more.
static MEASURED: [Choice; 11] = [
    Choice::retired("waist", "Waist", "Straight across along the top edge of the band. Doubled."),
    Choice::retired("hip", "Hip", "Straight across, 8 cm (3 in) above the crotch. Doubled."),
    Choice::retired("front-rise", "Front rise", "From the crossing of the crotch seams to the top of the band, in front."),
    Choice::retired("back-rise", "Back rise", "From the crossing of the crotch seams to the top of the band, behind."),
    Choice::retired("thigh", "Thigh", "Straight across, 2.5 cm (1 in) below the crotch. Doubled."),
    Choice::retired("knee", "Knee", "Straight across, 35 cm (14 in) below the crotch. Doubled."),
    Choice::retired("hem", "Leg opening", "Along the edge of the hem, from fold to fold. Doubled."),
    Choice::retired("inseam", "Inseam", "Along the inner seam, crotch to hem."),
    Choice::retired("outseam", "Outseam", "Along the outer seam, top of the band to hem."),
    Choice::new(
        "flat-width",
        "A flat width, to be doubled",
        "Front and back lie on each other and the tape goes across both: a chest, a waist, a sleeve. Doubled to a girth.",
    ),
    Choice::new(
        "length",
        "A length, or all the way round",
        "A seam, a back, a sleeve from end to end; or a tape walked round. Kept as read.",
    ),
];

/// Whether what was chosen is a flat width, and the usual tolerance either way in mm where the choice knows one.
///
/// # Source
/// For the nine that are offered no more, as the points of measure of jeans in the catalog say; 10 mm is what the handbook, section 9.1,
/// has for the girths and long lengths of trousers (common practice, no source).
const KNOWN: [(bool, f64); 11] = [
    (true, 10.0),
    (true, 10.0),
    (false, 6.0),
    (false, 6.0),
    (true, 7.0),
    (true, 7.0),
    (true, 5.0),
    (false, 10.0),
    (false, 10.0),
    (true, 10.0),
    (false, 10.0),
];

const LONG: [Unit; 3] = [Unit::Millimetre, Unit::Centimetre, Unit::Inch];
const SMALL: [Unit; 3] = [Unit::Millimetre, Unit::Millimetre, Unit::Inch];
/// What one reading may be, in millimetres.
const TAPE: [f64; 2] = [50.0, 2000.0];

/// Where the readings stand among [`INPUTS`].
const READINGS: std::ops::Range<usize> = 1..6;

static INPUTS: [Input; 11] = [
    Input::choice(
        "point",
        "What you measure",
        "A flat width goes across front and back together. All else is kept as read.",
        &MEASURED,
    ),
    Input::measured("reading", "Reading", "What the tape says. A flat width is typed as read: it is doubled here.", LONG, TAPE),
    Input::measured("again-2", "Second reading", "Laid down again.", LONG, TAPE).never_needed(),
    Input::measured("again-3", "Third reading", "Laid down again.", LONG, TAPE).never_needed(),
    Input::measured("again-4", "Fourth reading", "Laid down again.", LONG, TAPE).never_needed(),
    Input::measured("again-5", "Fifth reading", "Laid down again.", LONG, TAPE).never_needed(),
    Input::yes_no(
        "round",
        "The tape went round",
        "Choose yes if you walked the tape all the way round, so that nothing is to be doubled.",
    ),
    Input::measured(
        "wanted",
        "Measure on the size chart",
        "The finished measure it should have, the whole girth for a girth.",
        LONG,
        [50.0, 2000.0],
    )
    .never_needed(),
    Input::measured(
        "one-reading",
        "How far off one reading may be",
        "Leave it unless you know better: laid down again, a piece reads a few millimetres otherwise.",
        SMALL,
        [0.1, 50.0],
    )
    .usually(ONE_READING_MM),
    Input::measured(
        "tape",
        "Step of the tape",
        "How far apart its marks are: 1 mm, or 1/8 in on many tapes in inches.",
        SMALL,
        [0.1, 20.0],
    )
    .usually(1.0),
    Input::measured(
        "tolerance",
        "Tolerance, either way",
        "How far from the chart it may lie. Usual: 1 cm for girths and long lengths, half of that for hems and cuffs.",
        SMALL,
        [1.0, 50.0],
    )
    .never_needed(),
];

/// Amounts in the order of [`INPUTS`]: a place in a list, five mm of which four may be none, yes or no, mm or none, mm, mm, mm or none.
fn formula(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [
        Some(measured),
        Some(first),
        second,
        third,
        fourth,
        fifth,
        Some(round),
        wanted,
        Some(one_reading),
        Some(tape),
        tolerance,
    ] = *amounts
    else {
        return Err(Fault::WrongNumberOfReadings { needed: INPUTS.len(), given: amounts.len() });
    };
    let (flat, usual) = *KNOWN.get(measured as usize).ok_or(Fault::NotAChoice(&INPUTS[0]))?;
    let readings: Vec<f64> = [Some(first), second, third, fourth, fifth].into_iter().flatten().collect();
    let read = length_of_readings(&readings, one_reading, tape);
    let doubled = flat && round == 0.0;
    let mut outcome = of_readings(doubled, &read).ok_or(Fault::NotANumber(&INPUTS[1]))?;
    if let Some(wanted) = wanted {
        let wanted = Estimate::<Length>::exact_in(wanted, Unit::Millimetre).map_err(|_| Fault::NotANumber(&INPUTS[7]))?;
        let found = if doubled { girth_of_flat(&read) } else { read.clone() };
        let off = &found - &wanted;
        let (by, u) = off.in_unit(Unit::Millimetre).ok_or(Fault::NotANumber(&INPUTS[7]))?;
        let within = tolerance.unwrap_or(usual);
        let tolerance = Estimate::<Length>::exact_in(within, Unit::Millimetre).unwrap_or_else(|_| Estimate::unknown());
        outcome = outcome
            .with("off", to_say!("More than the chart says"), &off, Unit::Centimetre)
            .with("tolerance", to_say!("Tolerance, either way"), &tolerance, Unit::Centimetre)
            .saying(if by.abs() + u <= within {
                to_say!("Within the tolerance.")
            } else if by.abs() - u > within {
                to_say!("Outside the tolerance.")
            } else {
                to_say!("Too near to the edge of the tolerance to tell: read again.")
            });
    }
    Ok(with_doubt(outcome, &readings, one_reading))
}
