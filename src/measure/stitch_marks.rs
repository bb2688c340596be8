//! Stitch density without counting: needle holes tapped on the screen's ruler, or a comb of bars laid over them.

use std::fmt;

use super::stitch_density::{BELIEVED, density_of_stitch_length};
use super::{Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Decimal, Estimate, Length, Number, PerLength, Unit, triangular, written};
use crate::say;

/// Why a row of taps or a comb of bars says nothing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MarksFault {
    /// Too few marks; this many are needed.
    TooFew(u16),
    /// A number that is infinite, not a number, or has the wrong sign.
    NotANumber,
    /// The marks do not go one way along the seam, or two lie on one place.
    NotInOrder,
    /// What comes out is no density that a machine sews, in stitches per inch.
    Implausible(f64),
}

impl fmt::Display for MarksFault {
    /// What the person is told, and what to do.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            MarksFault::TooFew(needed) => f.write_str(&say!("{needed} marks or more are needed to say anything.", needed)),
            MarksFault::NotANumber => f.write_str(say!("The marks cannot be read. Begin again.")),
            MarksFault::NotInOrder => {
                f.write_str(say!("The taps do not go one way along the seam. Take the last one back, or begin again."))
            }
            MarksFault::Implausible(density) => f.write_str(&say!(
                "That makes {count} stitches per inch; no machine sews so. Look at the marks again.",
                count = written(*density, 0, Decimal::spoken())
            )),
        }
    }
}

/// What a row of taps gives.
#[derive(Clone, Debug)]
pub struct Taps {
    /// The density with its spread; inputs "taps" and "ruler".
    pub density: Estimate<PerLength>,
    /// The same as amounts of [`STITCH_TAPS`], in the order of its inputs: what a page can keep.
    pub readings: [f64; 4],
    /// The gap (from 0) that looks like two stitches, when one is over one and a half times the middle gap: a hole was probably missed.
    pub missed_after: Option<usize>,
    /// The gap (from 0) under half the middle gap: a hole was probably tapped twice.
    pub doubled_after: Option<usize>,
}

/// Fewest marks that say something: three stitches and a way to see an outlier. Judgement.
const FEWEST: u16 = 4;

/// Density from needle holes tapped one after the other along the seam, at these places in millimetres.
///
/// # Formula
/// The slope `p` of the straight line of least squares through places against their number is the length of a stitch; `S = 1 / p`.
///
/// # Uncertainty
/// `u(p) = u_t * sqrt(12 / (n (n^2 - 1)))` for `n` taps of spread `u_t`, "taps"; and the scale of the screen's ruler, a share `ruler` that
/// stretches all places alike. `u_t` is the larger of what was handed in and what the taps themselves scatter about the line (root of the
/// sum of squares over `n - 2`), so shaky taps are seen.
///
/// # Where it holds
/// Stitches of one length. Missed and doubled holes are pointed out, not mended.
///
/// # Errors
/// See [`MarksFault`].
///
/// # Source
/// Least squares with equal spreads, as in JCGM 100:2008 (GUM), annex H.3; tried on simulated taps.
pub fn density_from_taps(places_mm: &[f64], tap_mm: f64, ruler: f64) -> Result<Taps, MarksFault> {
    if !places_mm.iter().chain([&tap_mm, &ruler]).all(|number| number.is_finite()) || tap_mm < 0.0 || ruler < 0.0 {
        return Err(MarksFault::NotANumber);
    }
    let count = u16::try_from(places_mm.len()).map_err(|_| MarksFault::NotANumber)?;
    if count < FEWEST {
        return Err(MarksFault::TooFew(FEWEST));
    }
    let gaps: Vec<f64> = places_mm.windows(2).map(|pair| pair[1] - pair[0]).collect();
    if !gaps.iter().all(|gap| *gap > 0.0) && !gaps.iter().all(|gap| *gap < 0.0) {
        return Err(MarksFault::NotInOrder);
    }
    let gaps: Vec<f64> = gaps.into_iter().map(f64::abs).collect();
    let n = f64::from(count);
    let mean = places_mm.iter().map(|place| place / n).sum::<f64>();
    // How many stitches each tap is from the middle one, and how far from the mean place.
    let from_middle =
        || (0..count).map(|place| f64::from(place) - (n - 1.0) / 2.0).zip(places_mm.iter().map(|place| place - mean));
    let slope = from_middle().map(|(at, place)| at * place).sum::<f64>() / squares(n);
    let left = from_middle().map(|(at, place)| (place - slope * at).powi(2)).sum::<f64>();
    let readings = [n, slope.abs(), tap_mm.max((left / (n - 2.0)).sqrt()), ruler * 100.0];
    let mut sorted = gaps.clone();
    sorted.sort_by(f64::total_cmp);
    let usual = sorted[sorted.len() / 2];
    Ok(Taps {
        density: believed(density_of_taps(readings))?,
        readings,
        missed_after: gaps.iter().position(|gap| *gap > 1.5 * usual),
        doubled_after: gaps.iter().position(|gap| *gap < 0.5 * usual),
    })
}

/// Sum of the squares of the distances of 1, 2, ... n from their mean.
fn squares(n: f64) -> f64 {
    n * (n * n - 1.0) / 12.0
}

/// From how many taps, the slope in mm, the spread of a tap in mm, and the ruler's in per cent.
fn density_of_taps([taps, stitch_mm, tap_mm, ruler]: [f64; 4]) -> Estimate<PerLength> {
    let stitch = Estimate::<Length>::measured_in("taps", stitch_mm, tap_mm / squares(taps).sqrt(), Unit::Millimetre);
    density_of_stitch_length(&(stitch.unwrap_or_else(|_| Estimate::unknown()) * scale(ruler)))
}

/// The ruler's scale, off by so many per cent.
fn scale(ruler: f64) -> Estimate<Number> {
    Estimate::measured("ruler", 1.0, ruler / 100.0).unwrap_or_else(|_| Estimate::unknown())
}

/// What a row of taps came to, kept as four readings: a screen fills them in from [`density_from_taps`].
///
/// # Formula, uncertainty, source
/// As [`density_from_taps`].
pub static STITCH_TAPS: Instrument = Instrument {
    key: "stitch-taps",
    name: "Stitches by tapping",
    says: "Takes the length of a stitch from needle holes tapped one after the other.",
    unit: Unit::PerInch,
    inputs: &TAPS,
    steps: &[
        "Lay the seam flat along the ruler on the screen.",
        "Tap each needle hole in turn, without leaving one out.",
        "Twenty holes are plenty.",
    ],
    cautions: &["Set the size of the screen’s ruler first: all places share its error."],
    sources: &[&sources::COUNTING, &sources::GUM],
    formula: taps_formula,
};

static TAPS: [Input; 4] = [
    Input::count("taps", "Holes tapped", "How many needle holes were tapped.", [1.0, 1000.0]),
    Input::measured("stitch", "Length of a stitch", "From the taps: their mean distance.", [Unit::Millimetre; 3], [0.3, 20.0]),
    Input::measured(
        "tap-spread",
        "How far off a tap may be",
        "Leave it unless you know better.",
        [Unit::Millimetre; 3],
        [0.01, 10.0],
    )
    // Judgement: a fingertip beside a magnified hole.
    .usually(0.4),
    Input::measured(
        "ruler",
        "How far off the ruler may be",
        "Leave it unless you know better.",
        [Unit::Percent; 3],
        [0.01, 20.0],
    )
    // Judgement: a screen set by a bank card held to it.
    .usually(0.5),
];

fn taps_formula(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(taps), Some(stitch), Some(tap), Some(ruler)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: TAPS.len(), given: amounts.len() });
    };
    if taps < f64::from(FEWEST) {
        return Err(Fault::TooFew { input: &TAPS[0], needed: FEWEST });
    }
    said(density_of_taps([taps, stitch, tap, ruler]), &TAPS[1])
}

/// Density from a comb of bars on the screen's ruler, laid over the seam and stretched until every bar meets a needle hole and every
/// needle hole a bar. Pitch and misfit in millimetres, `ruler` a share.
///
/// # Formula
/// `S = 1 / pitch`.
///
/// # Uncertainty
/// `misfit_mm` is the smallest mismatch that the eye sees, about half the width of a bar. All `n` bars look right while the comb is off by
/// no more than that at any bar: at the far end against the near end by up to twice the misfit; and the better the pitch, the more room
/// there is to shift the comb and have it still look right. So the pitch has a triangular error of half-width `2 * misfit / (n - 1)`:
/// `u = 2 * misfit / (n - 1) / sqrt(6)`, "comb". The ruler's scale, "ruler", is relative and its own.
///
/// # Where it holds
/// Where no hole is left between two bars: a comb of half the density meets every second hole with a bar and looks right too.
///
/// # Errors
/// See [`MarksFault`].
///
/// # Source
/// Worked out here; tried on simulated combs. Triangular limits: JCGM 100:2008 (GUM), 4.3.9.
///
/// # Example
/// ```
/// use garment_assay::measure::density_from_comb;
/// use garment_assay::quantity::Unit;
/// // 25 bars 3.175 mm apart, a misfit of 0.25 mm visible, a ruler good to half a per cent.
/// let density = density_from_comb(3.175, 25, 0.25, 0.005).unwrap();
/// assert_eq!(density.in_unit(Unit::PerInch).map(|(value, u)| format!("{value:.2} {u:.3}")), Some("8.00 0.045".into()));
/// ```
pub fn density_from_comb(pitch_mm: f64, bars: u16, misfit_mm: f64, ruler: f64) -> Result<Estimate<PerLength>, MarksFault> {
    if ![pitch_mm, misfit_mm, ruler].iter().all(|number| number.is_finite() && *number >= 0.0) || pitch_mm == 0.0 {
        return Err(MarksFault::NotANumber);
    }
    if bars < FEWEST {
        return Err(MarksFault::TooFew(FEWEST));
    }
    believed(density_of_comb(pitch_mm, f64::from(bars), misfit_mm, ruler * 100.0))
}

/// Pitch and misfit in mm, the ruler in per cent.
fn density_of_comb(pitch_mm: f64, bars: f64, misfit_mm: f64, ruler: f64) -> Estimate<PerLength> {
    let spread = triangular(2.0 * misfit_mm / (bars - 1.0));
    let pitch = Estimate::<Length>::measured_in("comb", pitch_mm, spread, Unit::Millimetre);
    density_of_stitch_length(&(pitch.unwrap_or_else(|_| Estimate::unknown()) * scale(ruler)))
}

/// Density from a comb of bars laid over the seam.
///
/// # Formula, uncertainty, source
/// As [`density_from_comb`].
pub static STITCH_COMB: Instrument = Instrument {
    key: "stitch-comb",
    name: "Stitches by a comb",
    says: "Takes the density from a comb of bars stretched until every bar meets a needle hole.",
    unit: Unit::PerInch,
    inputs: &COMB,
    steps: &[
        "Lay the seam flat along the comb on the screen, its first bar on a needle hole.",
        "Stretch the comb until the last bar meets a hole too, and every bar between.",
        "See that no hole is left between two bars.",
    ],
    cautions: &["Set the size of the screen’s ruler first: the comb shares its error."],
    sources: &[&sources::COUNTING, &sources::GUM],
    formula: comb_formula,
};

static COMB: [Input; 4] = [
    Input::measured("comb", "Distance of two bars", "What the comb is stretched to.", [Unit::Millimetre; 3], [0.3, 20.0]),
    Input::count("bars", "Bars", "How many bars meet a hole.", [1.0, 1000.0]),
    Input::measured(
        "misfit",
        "Smallest misfit you can see",
        "Leave it unless you know better: about half a bar.",
        [Unit::Millimetre; 3],
        [0.01, 5.0],
    )
    // Judgement.
    .usually(0.25),
    Input::measured(
        "ruler",
        "How far off the ruler may be",
        "Leave it unless you know better.",
        [Unit::Percent; 3],
        [0.01, 20.0],
    )
    // Judgement: a screen set by a bank card held to it.
    .usually(0.5),
];

fn comb_formula(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(pitch), Some(bars), Some(misfit), Some(ruler)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: COMB.len(), given: amounts.len() });
    };
    if bars < f64::from(FEWEST) {
        return Err(Fault::TooFew { input: &COMB[1], needed: FEWEST });
    }
    said(density_of_comb(pitch, bars, misfit, ruler), &COMB[0])
}

/// The density as an outcome, when a sewing machine makes such.
fn said(density: Estimate<PerLength>, at_fault: &'static Input) -> Result<Outcome, Fault> {
    let (least, most) = BELIEVED;
    match believed(density) {
        Ok(density) => Outcome::of(&density, Unit::PerInch).ok_or(Fault::NotANumber(at_fault)),
        Err(MarksFault::Implausible(value)) => Err(Fault::Implausible { value, least, most, unit: Unit::PerInch }),
        Err(_) => Err(Fault::NotANumber(at_fault)),
    }
}

/// The density, when a sewing machine makes such.
fn believed(density: Estimate<PerLength>) -> Result<Estimate<PerLength>, MarksFault> {
    let (value, _) = density.in_unit(Unit::PerInch).ok_or(MarksFault::NotANumber)?;
    if (BELIEVED.0..=BELIEVED.1).contains(&value) { Ok(density) } else { Err(MarksFault::Implausible(value)) }
}
