//! Knitted cloth by hand: how many columns of loops stand to the inch, and how much wider a rib stays after it was stretched.

use super::{Fault, Input, Instrument, Outcome, growth, sources};
use crate::quantity::{Estimate, Length, Number, Unit, triangular};

/// Columns of loops per inch across.
///
/// # Formula
/// `G = N / L`, with `N` columns over the length `L` across the cloth, said per inch.
///
/// # Where it holds
/// On plain knitting that lies flat and is not stretched, from 8 columns up (judgement), for 2 to 40 an inch. It is the cloth as it lies,
/// after washing and steaming: a maker's gauge counts the needles of the machine, and the two need not agree.
///
/// # Uncertainty
/// `u(G) = G sqrt((u_N / N)^2 + (u_L / L)^2)`, as for stitches: a rule laid down anywhere cuts a column at both ends, `u_N = 1/sqrt(6)`.
/// Cloth that gives is read to 1 mm (1 sigma) unless told otherwise: judgement.
///
/// # Source
/// Handbook, section 1.3, for the two shapes of error (it counts stitches); JCGM 100:2008 (GUM), 4.3.9.
pub static KNIT_GAUGE: Instrument = Instrument {
    key: "knit-gauge",
    name: "Loops per inch",
    says: "Counts columns of loops over a length and gives loops per inch.",
    unit: Unit::PerInch,
    inputs: &COUNTED,
    steps: &[
        "Lay the piece flat, without pulling, away from ribs and seams.",
        "Lay a rule straight across the columns, each a row of small v’s one below the other.",
        "Count the columns along 5 cm or 2 in.",
    ],
    cautions: &["Do not hook a loop with the rule or a nail: it can be pulled out of the cloth."],
    sources: &[&sources::COUNTING, &sources::GUM, &sources::JUDGEMENT],
    formula: counted,
};

/// Fewest columns that say something. Judgement.
const FEWEST: u16 = 8;
/// Columns per inch that are believed: chunky hand knitting, and the finest jersey. Judgement.
const BELIEVED: (f64, f64) = (2.0, 40.0);

const SMALL: [Unit; 3] = [Unit::Millimetre, Unit::Millimetre, Unit::Inch];

static COUNTED: [Input; 3] = [
    Input::count("count", "Columns", "Columns of loops along the rule, counted across the cloth.", [1.0, 500.0]),
    Input::measured(
        "length",
        "Length",
        "How far you counted. 5 cm or 2 in suit most cloth, twice that a chunky one.",
        SMALL,
        [10.0, 300.0],
    ),
    Input::measured(
        "ruler",
        "How far off the rule may be",
        "Leave it unless you know better: knitting moves under a rule.",
        SMALL,
        [0.1, 10.0],
    )
    .usually(1.0),
];

/// Amounts in the order of [`COUNTED`]: a count, mm, mm.
fn counted(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(count), Some(length), Some(ruler)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: COUNTED.len(), given: amounts.len() });
    };
    if count < f64::from(FEWEST) {
        return Err(Fault::TooFew { input: &COUNTED[0], needed: FEWEST });
    }
    let gauge = COUNTED[0].at::<Number>(count, triangular(1.0)) / COUNTED[1].at::<Length>(length, ruler);
    let outcome = Outcome::of(&gauge, Unit::PerInch).ok_or(Fault::NotANumber(&COUNTED[1]))?;
    if !(BELIEVED.0..=BELIEVED.1).contains(&outcome.value) {
        return Err(Fault::Implausible { value: outcome.value, least: BELIEVED.0, most: BELIEVED.1, unit: Unit::PerInch });
    }
    Ok(outcome)
}

/// How much wider a rib stays after it was stretched by half three times.
///
/// # Formula
/// [`growth`], `(C - A) / A`, with `A` the width before and `C` the width after a rest, flat.
///
/// # Where it holds
/// For ribs of 40 to 600 mm that were stretched to one and a half times their width. No load cell: indicative only.
///
/// # Uncertainty
/// Both widths are read to 1 mm (1 sigma) unless told otherwise: judgement.
///
/// # Source
/// The quotient as ASTM D3107 has it, see [`growth`]; the three stretches by half are common practice, no source.
pub static RIB_RETURN: Instrument = Instrument {
    key: "rib-return",
    name: "Return of a rib",
    says: "How much wider a cuff or hem stays after three stretches by half.",
    unit: Unit::Percent,
    inputs: &STRETCHED,
    steps: &[
        "Lay the cuff or hem flat and read its width.",
        "Stretch it to one and a half times that, three times, and let go.",
        "Wait ten seconds, lay it flat without smoothing it narrow, and read again.",
    ],
    cautions: &["Ask before you stretch goods that are not yours. Stop where thread cracks."],
    sources: &[&sources::D3107, &sources::COMMON_PRACTICE, &sources::JUDGEMENT],
    formula: returned,
};

static STRETCHED: [Input; 3] = [
    Input::measured("before", "Width before", "Flat, edge to edge, before you stretch it.", SMALL, [40.0, 600.0]),
    Input::measured("after", "Width after", "Flat, edge to edge, ten seconds after the third stretch.", SMALL, [40.0, 900.0]),
    Input::measured("ruler", "How far off each reading may be", "Leave it unless you know better.", SMALL, [0.1, 10.0])
        .usually(1.0),
];

/// Growth believed, in per cent: below zero by a misreading only, above a half not from a stretch by half. Judgement.
const GROWN: (f64, f64) = (-5.0, 50.0);

/// Amounts in the order of [`STRETCHED`]: mm, mm, mm.
fn returned(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(before), Some(after), Some(ruler)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: STRETCHED.len(), given: amounts.len() });
    };
    let width = |place: usize, mm: f64| -> Estimate<Length> { STRETCHED[place].at(mm, ruler) };
    let outcome =
        Outcome::of(&growth(&width(0, before), &width(1, after)), Unit::Percent).ok_or(Fault::NotANumber(&STRETCHED[0]))?;
    if !(GROWN.0..=GROWN.1).contains(&outcome.value) {
        return Err(Fault::Implausible { value: outcome.value, least: GROWN.0, most: GROWN.1, unit: Unit::Percent });
    }
    Ok(outcome)
}
