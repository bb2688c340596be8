//! What was read from a photograph, kept as plain readings with what makes them uncertain, so that the estimate is worked out again from them.

use super::stitch_density::{BELIEVED, density_of_stitch_length, stitch_length};
use super::thread_count::STEEP;
use super::{Fault, Grade, Input, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, PerLength, Unit};
use crate::to_say;

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
    Ok(outcome.with("stitch", to_say!("Length of a stitch"), &stitch_length(&density), Unit::Millimetre))
}

/// Which yarn was marked on the photograph.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MarkedYarn {
    /// One that runs along the cloth.
    End,
    /// One that runs across.
    Pick,
}

/// Thread count from yarns found in a photograph, kept as readings: a screen fills them in by [`thread_count_photo_readings`].
///
/// # Formula
/// The counts as they were found, ends first.
///
/// # Uncertainty
/// Four parts, each a share: "scale", "height", "tilt", "counting", taken as the same for ends and picks. Scale and height truly are; for tilt
/// and counting that makes the spread of both together a little too large, never too small.
///
/// # Source
/// Sum of squares: JCGM 100:2008 (GUM), 5.1. What is counted: handbook, section 4.5.
///
/// # Example
/// ```
/// use garment_assay::measure::{MarkedYarn, PhotoSpread, THREAD_COUNT_PHOTO, thread_count_photo_readings};
/// let spread = PhotoSpread { scale: 0.006, height: 0.008, ..PhotoSpread::default() };
/// let readings = thread_count_photo_readings(26.8, 17.3, MarkedYarn::End, spread);
/// let outcome = THREAD_COUNT_PHOTO.estimate(&readings).unwrap();
/// assert_eq!(format!("{:.1} {:.2}", outcome.value, outcome.uncertainty), "26.8 0.27");
/// assert_eq!(outcome.also("picks").map(|also| also.value), Some(17.3));
/// ```
pub static THREAD_COUNT_PHOTO: Instrument = Instrument {
    key: "thread-count-photo",
    name: "Thread count from a photograph",
    says: "Finds the yarns of woven cloth on a photograph taken close, along and across.",
    unit: Unit::PerCentimetre,
    inputs: &YARNS,
    steps: &[
        "Lay the cloth flat with a ruler or a bank card on it.",
        "Go so close that you see each yarn, and let light fall from the side.",
        "Mark two places far apart on one yarn, then look whether the lines shown lie on the yarns.",
    ],
    cautions: &["For woven cloth only.", "Cover the numbers of a bank card."],
    sources: &[&sources::PHOTOGRAPHS, &sources::CONSTRUCTION, &sources::GUM],
    formula: threads,
};

/// Yarns per centimetre: from sacking to fine shirting. Judgement.
const YARN_LIMITS: [f64; 2] = [2.0, 150.0];

static YARNS: [Input; 6] = [
    Input::measured(
        "ends",
        "Ends",
        "From the picture: yarns that run along the cloth.",
        [Unit::PerCentimetre, Unit::PerCentimetre, Unit::PerInch],
        YARN_LIMITS,
    ),
    Input::measured(
        "picks",
        "Picks",
        "From the picture: yarns that run across.",
        [Unit::PerCentimetre, Unit::PerCentimetre, Unit::PerInch],
        YARN_LIMITS,
    )
    .never_needed(),
    SCALE,
    HEIGHT,
    TILT,
    COUNTING,
];

/// The readings of [`THREAD_COUNT_PHOTO`] in the order of its inputs: yarns per centimetre of the sort that was marked, and of the sort that
/// crosses it, which sort that is, and the spread of both.
pub fn thread_count_photo_readings(marked: f64, crossing: f64, yarn: MarkedYarn, spread: PhotoSpread) -> [Option<f64>; 6] {
    let (ends, picks) = match yarn {
        MarkedYarn::End => (marked, crossing),
        MarkedYarn::Pick => (crossing, marked),
    };
    let [scale, height, tilt, counting] = spread.percent();
    [ends, picks, scale, height, tilt, counting].map(Some)
}

fn threads(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(ends), picks, Some(scale), Some(height), Some(tilt), Some(counting)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: YARNS.len(), given: amounts.len() });
    };
    // Lengths are off by the shares; a count in a length is off by the same.
    let off = scaled(&YARNS[2..], [scale, height, tilt, counting]);
    let ends = YARNS[0].exactly::<PerLength>(ends) / &off;
    let outcome = Outcome::of(&ends, Unit::PerCentimetre).ok_or(Fault::NotANumber(&YARNS[0]))?;
    let Some(picks) = picks else { return Ok(outcome) };
    let picks = YARNS[1].exactly::<PerLength>(picks) / &off;
    Ok(outcome.with("picks", to_say!("Picks"), &picks, Unit::PerCentimetre).with(
        "both",
        to_say!("Both together"),
        &(&ends + &picks),
        Unit::PerInch,
    ))
}

/// The angle of a twill line from a photograph, kept as readings: a screen fills them in by [`twill_photo_readings`].
///
/// # Formula
/// The angle as it was found. Handbook, section 4.6: against the picks, below 45 degrees reclined, from 63 steep.
///
/// # Uncertainty
/// One degree unless told otherwise: judgement; on drawn pictures all of 43 angles came within two.
///
/// # Source
/// Handbook, section 4.6.
pub static TWILL_PHOTO: Instrument = Instrument {
    key: "twill-photo",
    name: "Twill angle from a photograph",
    says: "Finds how steep the line of a twill runs against the picks.",
    unit: Unit::Degree,
    inputs: &TWILL,
    steps: &["Photograph the cloth close and from straight above.", "Mark two places far apart on one end."],
    cautions: &["A phone held at a slant bends the angle: a card in the picture puts that right, a ruler does not."],
    sources: &[&sources::PHOTOGRAPHS, &sources::CONSTRUCTION],
    formula: twill,
};

static TWILL: [Input; 2] = [
    Input::measured("angle", "Twill line against the picks", "From the picture.", [Unit::Degree; 3], [0.0, 90.0]),
    Input::measured("spread", "How far off the angle may be", "Leave it unless you know better.", [Unit::Degree; 3], [0.1, 30.0])
        .usually(1.0),
];

/// The readings of [`TWILL_PHOTO`] in the order of its inputs, from the angle between the twill line and the yarns that cross the marked one
/// and its spread, both in degrees, and which yarn was marked.
pub fn twill_photo_readings(degrees: f64, spread: f64, yarn: MarkedYarn) -> [f64; 2] {
    let against_picks = if yarn == MarkedYarn::End { degrees } else { 90.0 - degrees };
    [against_picks, spread.clamp(TWILL[1].least, TWILL[1].most)]
}

fn twill(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(angle), Some(spread)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: TWILL.len(), given: amounts.len() });
    };
    let outcome = Outcome::plain(angle, spread, TWILL[0].key);
    Ok(if angle - 2.0 * spread > STEEP { outcome.saying(to_say!("A steep twill.")) } else { outcome })
}

/// Rub-off from a photograph of the tissue, kept as readings: a screen fills them in by [`rub_off_photo_readings`].
///
/// # Formula
/// The grade as it was found: [`staining_grade`](super::staining_grade) on the colours of one picture, the white tissue made neutral.
///
/// # Uncertainty
/// Never below a quarter of a grade, whatever the picture says: a phone is no spectrophotometer. What is said is a range of a whole grade.
///
/// # Source
/// ISO 105-A04; handbook, section 7. The least spread: judgement.
///
/// # Example
/// ```
/// use garment_assay::measure::{RUB_OFF_PHOTO, rub_off_photo_readings};
/// let outcome = RUB_OFF_PHOTO.estimate(&rub_off_photo_readings(3.56, 0.1).map(Some)).unwrap();
/// assert_eq!(outcome.uncertainty, 0.25);
/// assert_eq!(outcome.says(), ["About 3 to 4. A phone is no colour meter."]);
/// ```
pub static RUB_OFF_PHOTO: Instrument = Instrument {
    key: "rub-off-photo",
    name: "Rub-off from a photograph",
    says: "Compares the mark on a white tissue with the white beside it, on one photograph.",
    unit: Unit::Count,
    inputs: &RUBBED,
    steps: &[
        "Rub a white tissue on the cloth, ten times to and fro.",
        "Lay it flat on more white tissue by a window, out of the sun.",
        "Photograph it from straight above, without flash. Mark the stain, and white on all sides of it.",
    ],
    cautions: &["Ask before you rub goods that are not yours.", "Lamps of a shop shift colours: go to a window."],
    sources: &[&sources::A04, &sources::A03, &sources::JUDGEMENT],
    formula: rubbed,
};

static RUBBED: [Input; 2] = [
    Input::measured("grade", "Grade", "From the picture: 5 is no stain, 1 is full colour.", [Unit::Count; 3], [1.0, 5.0]),
    Input::measured(
        "spread",
        "How far off the grade may be",
        "Leave it unless you know better: a phone is no colour meter.",
        [Unit::Count; 3],
        [0.25, 2.0],
    )
    // Judgement: a quarter for the camera, and as much again for light and tone curve.
    .usually(0.35),
];

/// What may be claimed at each half step, worst first.
const ABOUT: [&str; 9] = [
    to_say!("About 1 to 1-2. A phone is no colour meter."),
    to_say!("About 1 to 2. A phone is no colour meter."),
    to_say!("About 1-2 to 2-3. A phone is no colour meter."),
    to_say!("About 2 to 3. A phone is no colour meter."),
    to_say!("About 2-3 to 3-4. A phone is no colour meter."),
    to_say!("About 3 to 4. A phone is no colour meter."),
    to_say!("About 3-4 to 4-5. A phone is no colour meter."),
    to_say!("About 4 to 5. A phone is no colour meter."),
    to_say!("About 4-5 to 5. A phone is no colour meter."),
];

/// The readings of [`RUB_OFF_PHOTO`] in the order of its inputs, from grade and spread, both in grades.
pub fn rub_off_photo_readings(grade: f64, spread: f64) -> [f64; 2] {
    [grade.clamp(RUBBED[0].least, RUBBED[0].most), spread.clamp(RUBBED[1].least, RUBBED[1].most)]
}

fn rubbed(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(grade), Some(spread)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: RUBBED.len(), given: amounts.len() });
    };
    let step = Grade::nearest(grade).and_then(|near| Grade::ALL.iter().position(|step| *step == near));
    let about = step.and_then(|step| ABOUT.get(step)).ok_or(Fault::NotANumber(&RUBBED[0]))?;
    Ok(Outcome::plain(grade, spread, RUBBED[0].key).saying(about))
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

    #[test]
    fn ends_are_ends_whichever_yarn_was_marked() {
        let spread = PhotoSpread { scale: 0.003, height: 0.004, ..PhotoSpread::default() };
        let by_end = thread_count_photo_readings(30.0, 20.0, MarkedYarn::End, spread);
        assert_eq!(by_end, thread_count_photo_readings(20.0, 30.0, MarkedYarn::Pick, spread));
        let outcome = THREAD_COUNT_PHOTO.estimate(&by_end).expect("an outcome");
        assert!((outcome.value - 30.0).abs() < 1e-9 && (outcome.uncertainty - 0.15).abs() < 1e-3);
        // 50 per cm are 127 per inch by the definition of the inch.
        assert!((outcome.also("both").expect("both").value - 127.0).abs() < 1e-9);
        let [ends, _, rest @ ..] = by_end;
        let one_way: Vec<Option<f64>> = [ends, None].into_iter().chain(rest).collect();
        assert!(THREAD_COUNT_PHOTO.estimate(&one_way).expect("an outcome").also.is_empty());
    }

    #[test]
    fn a_twill_is_measured_against_the_picks_and_called_steep_beyond_doubt_only() {
        assert_eq!(twill_photo_readings(57.1, 1.0, MarkedYarn::End), [57.1, 1.0]);
        assert_eq!(twill_photo_readings(25.0, 0.0, MarkedYarn::Pick), [65.0, 0.1]);
        let says = |degrees| TWILL_PHOTO.estimate(&[Some(degrees), None]).expect("an outcome").says;
        assert!(says(64.9).is_empty() && says(65.1) == ["A steep twill."]);
    }

    #[test]
    fn a_stain_is_never_claimed_closer_than_a_whole_grade() {
        for tenths in 10..=50 {
            let grade = f64::from(tenths) / 10.0;
            let outcome = RUB_OFF_PHOTO.estimate(&rub_off_photo_readings(grade, 0.01).map(Some)).expect("an outcome");
            assert!(outcome.value == grade && outcome.uncertainty >= 0.25);
            let near = Grade::nearest(grade).expect("a step").value();
            // "3" is 3 and "2-3" lies halfway.
            let value = |text: &str| {
                text.split('-').map(|part| part.parse::<f64>().expect("a grade")).sum::<f64>() / text.split('-').count() as f64
            };
            let (low, high) = outcome.says[0]
                .strip_prefix("About ")
                .and_then(|text| text.split_once('.')?.0.split_once(" to "))
                .expect("a range");
            assert_eq!((value(low), value(high)), ((near - 0.5).max(1.0), (near + 0.5).min(5.0)));
        }
        assert!(matches!(RUB_OFF_PHOTO.estimate(&rub_off_photo_readings(f64::NAN, 0.3).map(Some)), Err(Fault::NotANumber(_))));
    }
}
