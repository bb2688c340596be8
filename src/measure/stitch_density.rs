//! Stitches per inch from a count over a length, and the other ways of saying how dense a seam is stitched.

use super::{Fault, Input, InputKind, Instrument, Needed, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, PerLength, Unit, rectangular, triangular};
use crate::to_say;

/// Stitches per inch counted over a length of seam.
///
/// # Formula
/// `S = N / L`, with `N` stitches (thread lengths between needle holes) over the length `L`, said per inch.
///
/// Where needle holes were counted: `N = holes - 1` when the ruler starts on a hole, since 9 holes bound 8 stitches (the fence-post
/// slip). Under a ruler that starts anywhere the holes are as many as the stitches on the average, and nothing is taken off.
///
/// Where the cloth is known to have shrunk since it was sewn, the density as sewn stands beside the value: [`density_as_sewn`]. The value
/// itself is what is there now, which is what wears.
///
/// # Where it holds
/// From 4 stitches up, where the count is off by no more than about a tenth (judgement), and for results of 2 to 40 per inch (handbook,
/// section 1.1). Cloth lies flat and is not stretched.
///
/// # Uncertainty
/// `u(S) = S * sqrt((u_N / N)^2 + (u_L / L)^2)`. A ruler laid down anywhere cuts a stitch at both ends: the count is off by up to one
/// either way, the middle likeliest, `u_N = 1/sqrt(6)`. Started on a needle hole it cuts one at the far end only: off by up to a half,
/// all alike, `u_N = 1/sqrt(12)`. `u_L` is 0.5 mm unless told otherwise (handbook, section 1.3: judgement). A shrinkage is taken to the
/// nearest whole per cent: off by up to a half, all alike (GUM, F.2.2.1).
///
/// # Source
/// Handbook, sections 1.1 to 1.3; the two shapes of error from JCGM 100:2008 (GUM), 4.3.7 and 4.3.9.
pub static STITCH_DENSITY: Instrument = Instrument {
    key: "stitch-density",
    name: "Stitches per inch",
    says: "Counts stitches over a length of seam and gives stitches per inch.",
    unit: Unit::PerInch,
    inputs: &INPUTS,
    steps: &[
        "Lay the seam flat, without pulling.",
        "Lay a ruler along it, its zero on a needle hole.",
        "Count the thread lengths on the face over 8 cm or 3 in.",
    ],
    cautions: &["Count on the face: the loops on the back of a chain stitch are not stitches.", "Never pull at a thread end."],
    sources: &[&sources::COUNTING, &sources::GUM],
    formula,
};

/// Fewest stitches that say something: one stitch more or less is then a quarter. Judgement.
const FEWEST: u16 = 4;
/// Stitches per inch that a sewing machine makes in clothes, lowest and highest. Handbook, section 1.1.
pub(super) const BELIEVED: (f64, f64) = (2.0, 40.0);

static INPUTS: [Input; 6] = [
    Input {
        key: "count",
        name: "Stitches",
        ask: "Lay the seam flat, without pulling. Count the thread lengths on the face, from needle hole to needle hole. At the end of the \
              ruler, half a stitch or more counts as one.",
        kind: InputKind::WholeCount,
        unit: Unit::Count,
        metric: Unit::Count,
        imperial: Unit::Count,
        least: 1.0,
        most: 500.0,
        needed: Needed::Always,
    },
    Input {
        key: "length",
        name: "Length",
        ask: "How much seam you counted over. 8 cm or 3 in tell 7 from 8 stitches per inch; 1 in does not.",
        kind: InputKind::Measured,
        unit: Unit::Millimetre,
        metric: Unit::Millimetre,
        imperial: Unit::Inch,
        least: 10.0,
        most: 500.0,
        needed: Needed::Always,
    },
    Input {
        key: "starts-on-hole",
        name: "Ruler starts on a needle hole",
        ask: "Put the zero of the ruler on a needle hole before you count. It takes a third off what the count may be wrong by.",
        kind: InputKind::YesNo,
        unit: Unit::Count,
        metric: Unit::Count,
        imperial: Unit::Count,
        least: 0.0,
        most: 1.0,
        needed: Needed::Usually(0.0),
    },
    Input {
        key: "counted-holes",
        name: "Holes counted, not stitches",
        ask: "Choose yes if you counted needle holes. With a hole at the zero, one is taken off, since 9 holes bound 8 stitches.",
        kind: InputKind::YesNo,
        unit: Unit::Count,
        metric: Unit::Count,
        imperial: Unit::Count,
        least: 0.0,
        most: 1.0,
        needed: Needed::Usually(0.0),
    },
    Input {
        key: "ruler",
        name: "How far off the ruler may be",
        ask: "Leave it unless you know better: half a millimetre suits a printed ruler.",
        kind: InputKind::Measured,
        unit: Unit::Millimetre,
        metric: Unit::Millimetre,
        imperial: Unit::Millimetre,
        least: 0.05,
        most: 10.0,
        // Handbook, section 1.3. Judgement.
        needed: Needed::Usually(0.5),
    },
    Input::measured(
        "shrunk",
        "Shrunk since sewn",
        "How much the cloth has shrunk along the seam since it was sewn, if you know it from before a wash. It is shown beside the count \
         and changes nothing in it.",
        [Unit::Percent; 3],
        // Raw denim shrinks by up to 10 %: handbook, section 6.2. Twice that leaves room.
        [0.0, 20.0],
    )
    .never_needed(),
];

/// How far off a shrinkage in per cent may be: it is said in whole ones.
const SHRUNK_TO: f64 = 0.5;

/// Amounts in the order of [`INPUTS`]: a count, mm, yes or no, yes or no, mm, per cent or none.
fn formula(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(counted), Some(length), Some(on_hole), Some(holes), Some(ruler), shrunk] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: INPUTS.len(), given: amounts.len() });
    };
    let (on_hole, holes) = (on_hole != 0.0, holes != 0.0);
    let stitches = if holes && on_hole { counted - 1.0 } else { counted };
    if stitches < f64::from(FEWEST) {
        let needed = if holes && on_hole { FEWEST + 1 } else { FEWEST };
        return Err(Fault::TooFew { input: &INPUTS[0], needed });
    }
    let u_count = if on_hole { rectangular(0.5) } else { triangular(1.0) };
    let density = Estimate::<Number>::measured(INPUTS[0].key, stitches, u_count)
        .and_then(|count| Ok(count / Estimate::<Length>::measured_in(INPUTS[1].key, length, ruler, Unit::Millimetre)?))
        .unwrap_or_else(|_| Estimate::unknown());
    // Not reached by amounts within their limits.
    let mut outcome = Outcome::of(&density, Unit::PerInch).ok_or(Fault::NotANumber(&INPUTS[1]))?;
    if !(BELIEVED.0..=BELIEVED.1).contains(&outcome.value) {
        return Err(Fault::Implausible { value: outcome.value, least: BELIEVED.0, most: BELIEVED.1, unit: Unit::PerInch });
    }
    if let Some(shrunk) = shrunk {
        let shrinkage = INPUTS[5].at(shrunk, rectangular(SHRUNK_TO));
        outcome = outcome.with("as-sewn", to_say!("As sewn"), &density_as_sewn(&density, &shrinkage), Unit::PerInch);
    }
    Ok(outcome)
}

/// How long one stitch is at that density.
///
/// # Formula
/// `length = 1 / S`; 8 per inch is 3.175 mm.
///
/// # Source
/// Handbook, section 1.1 (unit definition).
pub fn stitch_length(density: &Estimate<PerLength>) -> Estimate<Length> {
    Estimate::<Number>::exact(1.0) / density
}

/// The density of stitches that long; the number on a sewing machine's dial is a length in millimetres.
///
/// # Formula
/// `S = 1 / length`; 2.5 mm is 10.16 per inch.
///
/// # Source
/// Handbook, section 1.1 (unit definition).
pub fn density_of_stitch_length(length: &Estimate<Length>) -> Estimate<PerLength> {
    Estimate::<Number>::exact(1.0) / length
}

/// The density a seam has after the cloth shrank along it: the stitches are the same, the cloth is shorter.
///
/// # Formula
/// `S_after = S / (1 - s)`, with the shrinkage `s` as a share of the length before, 0 for none. Unknown when nothing would be left
/// (`s` of 1 or more).
///
/// # Source
/// Handbook, section 1.2.
///
/// # Example
/// ```
/// use garment_assay::measure::density_after_shrinking;
/// use garment_assay::quantity::{Estimate, Unit};
/// let sewn = Estimate::exact_in(8.0, Unit::PerInch).unwrap();
/// let washed = density_after_shrinking(&sewn, &Estimate::exact(0.03));
/// assert_eq!(washed.in_unit(Unit::PerInch).map(|(value, _)| format!("{value:.2}")), Some("8.25".into()));
/// ```
pub fn density_after_shrinking(density: &Estimate<PerLength>, shrinkage: &Estimate<Number>) -> Estimate<PerLength> {
    if shrinkage.value() >= 1.0 {
        return Estimate::unknown();
    }
    density / (Estimate::<Number>::exact(1.0) - shrinkage)
}

/// The density with which a seam was sewn, from the one that it has since the cloth shrank along it: [`density_after_shrinking`] backwards.
///
/// # Formula
/// `S_sewn = S (1 - s)`, with the shrinkage `s` as a share of the length before, 0 for none. Unknown when nothing would be left (`s` of 1
/// or more).
///
/// # Source
/// Handbook, section 1.2, solved for the other side.
///
/// # Example
/// ```
/// use garment_assay::measure::density_as_sewn;
/// use garment_assay::quantity::{Estimate, Unit};
/// let found = Estimate::exact_in(8.0, Unit::PerInch).unwrap();
/// let sewn = density_as_sewn(&found, &Estimate::exact(0.03));
/// assert_eq!(sewn.in_unit(Unit::PerInch).map(|(value, _)| format!("{value:.2}")), Some("7.76".into()));
/// ```
pub fn density_as_sewn(density: &Estimate<PerLength>, shrinkage: &Estimate<Number>) -> Estimate<PerLength> {
    if shrinkage.value() >= 1.0 {
        return Estimate::unknown();
    }
    density * (Estimate::<Number>::exact(1.0) - shrinkage)
}

/// The most a count over that length can be wrong by: one stitch more or less. A hard limit, not a standard uncertainty.
///
/// # Formula
/// `1 / L`; half a stitch per inch over 2 inches.
///
/// # Source
/// Handbook, section 1.3.
pub fn one_stitch_more_or_less(length: &Estimate<Length>) -> Estimate<PerLength> {
    Estimate::<Number>::exact(1.0) / length
}

/// How long a stretch of seam has to be counted to tell a density from the nearest edge of a band.
///
/// # Formula
/// The length `L` at which the edge lies two standard uncertainties away: `L = 2 sqrt(u_N^2 + (S u_L)^2) / |S - edge|`, since
/// `u(S) = sqrt(u_N^2 + (S u_L)^2) / L`.
///
/// # Where it holds
/// `u_N` as for [`STITCH_DENSITY`], by whether the ruler starts on a needle hole. None when there is no edge, when the density sits on an
/// edge, or when nothing is known. The length asked for may be longer than any seam; that is the answer, then.
///
/// # Source
/// The formula of [`STITCH_DENSITY`] solved for the length; the rule of two spreads from the handbook, section 1.3.
///
/// # Example
/// ```
/// use garment_assay::measure::length_that_tells;
/// use garment_assay::quantity::{Estimate, Unit};
/// let per_inch = |density| Estimate::exact_in(density, Unit::PerInch).unwrap();
/// let ruler = Estimate::exact_in(0.5, Unit::Millimetre).unwrap();
/// // 8.2 per inch, where a band ends at 8.5 and another at 6.5.
/// let length = length_that_tells(&per_inch(8.2), &[per_inch(6.5), per_inch(8.5)], false, &ruler).unwrap();
/// assert_eq!(length.in_unit(Unit::Millimetre).map(|(mm, _)| mm.round()), Some(74.0));
/// ```
pub fn length_that_tells(
    density: &Estimate<PerLength>,
    edges: &[Estimate<PerLength>],
    on_hole: bool,
    ruler: &Estimate<Length>,
) -> Option<Estimate<Length>> {
    let far = |edge: &Estimate<PerLength>| (density.value() - edge.value()).abs();
    let nearest = edges.iter().map(far).filter(|far| far.is_finite()).min_by(f64::total_cmp)?;
    let u_count = if on_hole { rectangular(0.5) } else { triangular(1.0) };
    let length = 2.0 * u_count.hypot(density.value() * ruler.value()) / nearest;
    Some(Estimate::exact(length)).filter(Estimate::is_known)
}
