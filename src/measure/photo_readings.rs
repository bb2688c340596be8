//! What was read from a photograph, kept as plain readings with what makes them uncertain, so that the estimate is worked out again from them.

use super::stitch_density::{BELIEVED, density_of_stitch_length, stitch_length};
use super::{Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, Unit};

/// What a reading of lengths from a photograph can be off by: standard uncertainties as shares of the reading, 0.01 for one per cent.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PhotoSpread {
    /// Where the marks on ruler or card were set.
    pub scale: f64,
    /// Ruler or card nearer to the phone than the cloth, or further.
    pub height: f64,
    /// The phone held at a slant.
    pub tilt: f64,
    /// Where stitches or yarns begin and end.
    pub counting: f64,
}

impl PhotoSpread {
    /// In per cent, within what the inputs take: nothing is known better than to a hundredth of a per cent.
    fn percent(self) -> [f64; 4] {
        [self.scale, self.height, self.tilt, self.counting].map(|share| (100.0 * share).clamp(LIMITS[0], LIMITS[1]))
    }
}

/// Least and most per cent that a part of the spread may be.
const LIMITS: [f64; 2] = [0.01, 30.0];

/// A part of the spread as an input, with what stands when nothing is given. Each part is its own name in the budget.
const fn part(key: &'static str, name: &'static str, ask: &'static str, usual: f64) -> Input {
    Input::measured(key, name, ask, [Unit::Percent; 3], LIMITS).usually(usual)
}

/// Marks set by finger on graduations. Ruler 0.3 %, card 0.6 %: drawn pictures with a known truth, not real ones.
const SCALE: Input = part("scale", "Scale", "From the picture: how far off the marks on ruler or card may be.", 0.6);
/// The same: 0.7 %.
const HEIGHT: Input = part("height", "Height", "From the picture: ruler or card may lie higher or lower than the cloth.", 0.7);
/// The same: 0.9 to 2 %.
const TILT: Input = part("tilt", "Tilt", "From the picture: the phone may have been held at a slant.", 1.5);
/// The same, for some ten stitches: 1.1 %.
const COUNTING: Input = part("counting", "Counting", "From the picture: where the first begins and the last ends.", 1.1);

/// One, with the four parts of the spread on it, each in per cent.
fn scaled(inputs: &[Input], percent: [f64; 4]) -> Estimate<Number> {
    inputs.iter().zip(percent).fold(Estimate::exact(1.0), |all, (input, percent)| {
        all * Estimate::<Number>::measured(input.key, 1.0, percent / 100.0).unwrap_or_else(|_| Estimate::unknown())
    })
}

/// Stitch density from stitches found in a photograph, kept as readings: a screen fills them in by [`stitch_photo_readings`].
///
/// # Formula
/// `S = 1 / p`, with the mean length `p` of a stitch.
///
/// # Where it holds
/// From 6 stitches up; the reader of photographs refuses fewer.
///
/// # Uncertainty
/// Four parts, each a share of `p`: "scale", "height", "tilt", "counting". They are independent, and the last one holds for the whole
/// stretch, not for one stitch.
///
/// # Source
/// Sum of squares: JCGM 100:2008 (GUM), 5.1. Usual parts: drawn photographs with a known truth.
///
/// # Example
/// ```
/// use garment_assay::measure::{PhotoSpread, STITCH_PHOTO, stitch_photo_readings};
/// let spread = PhotoSpread { scale: 0.003, height: 0.004, tilt: 0.012, counting: 0.0 };
/// let readings = stitch_photo_readings(3.175, 21, spread).map(Some);
/// let outcome = STITCH_PHOTO.estimate(&readings).unwrap();
/// assert_eq!(format!("{:.2} {:.2}", outcome.value, outcome.uncertainty), "8.00 0.10");
/// assert_eq!(outcome.budget[0].0, "tilt");
/// ```
pub static STITCH_PHOTO: Instrument = Instrument {
    key: "stitch-photo",
    name: "Stitches from a photograph",
    says: "Finds the stitches between two marks on a photograph and takes their mean length.",
    unit: Unit::PerInch,
    inputs: &STITCHES,
    steps: &[
        "Lay the seam flat. Lay a ruler or a bank card so that it touches the seam.",
        "Hold the phone straight above and fill the picture.",
        "Mark the seam and the ruler or card, then look whether the stitches shown are the real ones.",
    ],
    cautions: &["Cover the numbers of a bank card.", "A ruler that lies higher than the cloth makes stitches look shorter."],
    sources: &[&sources::PHOTOGRAPHS, &sources::GUM],
    formula: stitches,
};

/// Fewest stitches that say something: the same limit as the reader of photographs has.
const FEWEST_STITCHES: u16 = 6;

static STITCHES: [Input; 6] = [
    Input::measured(
        "stitch",
        "Length of a stitch",
        "From the picture: the mean from needle hole to needle hole.",
        [Unit::Millimetre; 3],
        [0.3, 20.0],
    ),
    Input::count("stitches", "Stitches found", "From the picture: how many stitches the mean is of.", [1.0, 1000.0]),
    SCALE,
    HEIGHT,
    TILT,
    COUNTING,
];

/// The readings of [`STITCH_PHOTO`] in the order of its inputs, from mean length in mm, how many stitches it is of, and its spread.
pub fn stitch_photo_readings(stitch_mm: f64, stitches: u16, spread: PhotoSpread) -> [f64; 6] {
    let [scale, height, tilt, counting] = spread.percent();
    [stitch_mm, f64::from(stitches), scale, height, tilt, counting]
}

fn stitches(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(stitch), Some(count), Some(scale), Some(height), Some(tilt), Some(counting)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: STITCHES.len(), given: amounts.len() });
    };
    if count < f64::from(FEWEST_STITCHES) {
        return Err(Fault::TooFew { input: &STITCHES[1], needed: FEWEST_STITCHES });
    }
    let length = STITCHES[0].exactly::<Length>(stitch) * scaled(&STITCHES[2..], [scale, height, tilt, counting]);
    let density = density_of_stitch_length(&length);
    let outcome = Outcome::of(&density, Unit::PerInch).ok_or(Fault::NotANumber(&STITCHES[0]))?;
    let (least, most) = BELIEVED;
    if !(least..=most).contains(&outcome.value) {
        return Err(Fault::Implausible { value: outcome.value, least, most, unit: Unit::PerInch });
    }
    Ok(outcome.with("stitch", "Length of a stitch", &stitch_length(&density), Unit::Millimetre))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_spread_of_stitches_is_the_root_of_the_sum_of_squares_of_its_parts() {
        let spread = PhotoSpread { scale: 0.003, height: 0.007, tilt: 0.01, counting: 0.005 };
        let outcome = STITCH_PHOTO.estimate(&stitch_photo_readings(2.54, 12, spread).map(Some)).expect("an outcome");
        let share = (0.003_f64.powi(2) + 0.007_f64.powi(2) + 0.01_f64.powi(2) + 0.005_f64.powi(2)).sqrt();
        assert!((outcome.value - 10.0).abs() < 1e-9 && (outcome.uncertainty - 10.0 * share).abs() < 1e-9);
        let order: Vec<&str> = outcome.budget.iter().map(|(name, _)| name.as_ref()).collect();
        assert_eq!(order, ["tilt", "height", "counting", "scale"]);
        assert!((outcome.budget[0].1 - 1e-4 / share.powi(2)).abs() < 1e-9);
        assert!((outcome.also("stitch").expect("a length").value - 2.54).abs() < 1e-9);
    }

    #[test]
    fn few_stitches_odd_lengths_and_no_numbers_are_refused() {
        let reading = |mm, count| STITCH_PHOTO.estimate(&stitch_photo_readings(mm, count, PhotoSpread::default()).map(Some));
        assert!(matches!(reading(2.5, 5), Err(Fault::TooFew { needed: 6, .. })));
        assert!(matches!(reading(0.5, 12), Err(Fault::Implausible { .. })));
        assert!(matches!(reading(f64::NAN, 12), Err(Fault::NotANumber(_))));
        let nothing_known = PhotoSpread { tilt: f64::NAN, ..PhotoSpread::default() };
        let readings = stitch_photo_readings(2.5, 12, nothing_known).map(Some);
        assert_eq!(STITCH_PHOTO.estimate(&readings), Err(Fault::NotANumber(&STITCHES[4])));
    }

    #[test]
    fn a_part_of_nothing_and_a_part_of_everything_are_still_taken() {
        let spread = PhotoSpread { scale: 0.0, height: 9.0, ..PhotoSpread::default() };
        assert!(STITCH_PHOTO.estimate(&stitch_photo_readings(2.5, 12, spread).map(Some)).is_ok());
    }
}
