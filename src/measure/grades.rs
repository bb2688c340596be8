//! Grades by eye, 5 best to 1 worst: rub-off, change of colour, seam smoothness, pilling, with words for each step; and the grey scales
//! reckoned from colour readings, where somebody has them. A phone camera is no colour meter.

use super::{Choice, Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Number, Unit};
use crate::to_say;

/// A grade between 1 and 5 in half steps, as the standards write it: 4-5 lies between 4 and 5.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Grade(u8);

impl Grade {
    /// All nine, worst first.
    pub const ALL: [Grade; 9] = [Grade(2), Grade(3), Grade(4), Grade(5), Grade(6), Grade(7), Grade(8), Grade(9), Grade(10)];

    /// The nearest half step; a number midway goes up. Below 1 is 1, above 5 is 5, and not a number is none.
    pub fn nearest(value: f64) -> Option<Grade> {
        if value.is_nan() {
            return None;
        }
        let halves = (2.0 * value + 0.5).floor();
        Grade::ALL.into_iter().find(|grade| f64::from(grade.0) >= halves).or(Some(Grade(10)))
    }

    /// The grade as a number, 1 to 5.
    pub fn value(self) -> f64 {
        f64::from(self.0) / 2.0
    }

    /// As the standards write it.
    pub const fn name(self) -> &'static str {
        match self.0 {
            10 => "5",
            9 => "4-5",
            8 => "4",
            7 => "3-4",
            6 => "3",
            5 => "2-3",
            4 => "2",
            3 => "1-2",
            _ => "1",
        }
    }
}

/// One thing graded by eye, with plain words for each whole step.
#[derive(Debug, PartialEq)]
pub struct GradeScale {
    /// What is graded.
    pub(crate) name: &'static str,
    /// The standards whose steps these follow. The words are ours; a grade given without the standard's photographs or grey cards, lamp and
    /// practice is a guess at the standard's grade.
    pub(crate) after: &'static str,
    /// What each whole grade looks like: 1 first, 5 last.
    pub(crate) steps: [&'static str; 5],
}

crate::language::says!(GradeScale { name, after, steps* });

impl GradeScale {
    /// The words for a grade: those of the whole step, or of both steps it lies between, better one first.
    pub fn words(&self, grade: Grade) -> (&'static str, Option<&'static str>) {
        let step = |whole: u8| self.steps[usize::from(whole.clamp(1, 5) - 1)];
        if grade.0.is_multiple_of(2) { (step(grade.0 / 2), None) } else { (step(grade.0 / 2 + 1), Some(step(grade.0 / 2))) }
    }
}

/// Colour that rubs off on white cloth (staining).
///
/// # Source
/// Steps after ISO 105-A03, rubbing after ISO 105-X12 and AATCC TM8; handbook, section 7. Words: ours.
pub static RUB_OFF_SCALE: GradeScale = GradeScale {
    name: "Rub-off",
    after: "ISO 105-A03, ISO 105-X12, AATCC TM8: from memory",
    steps: [
        "The white cloth takes on the full colour, as if dyed.",
        "A strong mark, plain across a room.",
        "A clear mark, plain at arm’s length.",
        "A faint mark, seen when you look for it.",
        "The white cloth stays as it was.",
    ],
};

/// Colour changed against the cloth as it was.
///
/// # Source
/// Steps after ISO 105-A02; handbook, section 7. Words: ours.
pub static COLOUR_CHANGE_SCALE: GradeScale = GradeScale {
    name: "Change of colour",
    after: "ISO 105-A02: from memory",
    steps: [
        "Another colour: nobody would take the two for the same cloth.",
        "Strongly changed, plain without the other beside it.",
        "Clearly changed, plain side by side at arm’s length.",
        "A little changed, seen only edge to edge.",
        "No change, edge to edge by a window.",
    ],
};

/// Seam smoothness, or how little a seam puckers.
///
/// # Source
/// Steps after AATCC TM88B and ISO 7770, from memory; handbook, section 7. Words: ours.
pub static SEAM_SMOOTHNESS_SCALE: GradeScale = GradeScale {
    name: "Seam smoothness",
    after: "AATCC TM88B, ISO 7770: from memory",
    steps: [
        "Gathered: deep waves, the seam is plainly shorter than the cloth beside it.",
        "Strong waves, and the seam draws the cloth short.",
        "Waves you see at arm’s length in any light.",
        "A slight ripple that shows in slanting light only.",
        "Flat, even in slanting light.",
    ],
};

/// Pilling, small balls of fibre on the face.
///
/// # Source
/// Steps after ISO 12945 (parts 1, 2 and 4), from memory; handbook, section 7. Words: ours.
pub static PILLING_SCALE: GradeScale = GradeScale {
    name: "Pilling",
    after: "ISO 12945-1, -2 and -4: from memory",
    steps: [
        "Dense fuzz or thick balls all over.",
        "Plain fuzz or balls on most of the face.",
        "Some fuzz or balls on part of the face.",
        "A slight fuzz, or the first balls forming.",
        "The face looks as new.",
    ],
};

/// One step of the grey scale cards: a grade, the colour difference of its pair of chips in CIELAB, and what the pair may be off by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GreyStep {
    /// The grade.
    pub grade: Grade,
    /// Colour difference of the card for change of colour, and its tolerance.
    pub change: (f64, f64),
    /// Colour difference of the card for staining, and its tolerance.
    pub staining: (f64, f64),
}

const fn grey(grade: Grade, change: (f64, f64), staining: (f64, f64)) -> GreyStep {
    GreyStep { grade, change, staining }
}

/// The nine steps of the grey scales, best first.
///
/// # Source
/// ISO 105-A02 (change, with tolerances): preview of the standard. ISO 105-A03 (staining): public code; its tolerances from memory.
/// Handbook, section 7.
pub static GREY_STEPS: [GreyStep; 9] = [
    grey(Grade(10), (0.0, 0.2), (0.0, 0.2)),
    grey(Grade(9), (0.8, 0.2), (2.2, 0.3)),
    grey(Grade(8), (1.7, 0.3), (4.3, 0.3)),
    grey(Grade(7), (2.5, 0.35), (6.0, 0.4)),
    grey(Grade(6), (3.4, 0.4), (8.5, 0.5)),
    grey(Grade(5), (4.8, 0.5), (12.0, 0.7)),
    grey(Grade(4), (6.8, 0.6), (16.9, 1.0)),
    grey(Grade(3), (9.6, 0.7), (24.0, 1.5)),
    grey(Grade(2), (13.6, 1.0), (34.1, 2.0)),
];

/// A colour in CIELAB.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lab {
    /// Lightness, 0 to 100.
    pub l: f64,
    /// Green (below zero) to red.
    pub a: f64,
    /// Blue (below zero) to yellow.
    pub b: f64,
}

impl Lab {
    /// Chroma, the distance from grey.
    fn chroma(self) -> f64 {
        self.a.hypot(self.b)
    }

    /// Hue angle in degrees, 0 to 360.
    fn hue(self) -> f64 {
        let hue = self.b.atan2(self.a).to_degrees();
        if hue < 0.0 { hue + 360.0 } else { hue }
    }

    /// Colour difference.
    ///
    /// # Formula
    /// `dE = sqrt(dL^2 + da^2 + db^2)`.
    ///
    /// # Source
    /// CIE 1976 L*a*b* (ISO/CIE 11664-4).
    pub fn difference(self, other: Lab) -> f64 {
        (self.l - other.l).hypot(self.a - other.a).hypot(self.b - other.b)
    }
}

/// Colour difference as ISO 105-A04 weighs it for staining; not a number where a reading is none.
///
/// # Formula
/// `dE_GS = dE - 0.4 sqrt(dE^2 - dL^2)`.
///
/// # Source
/// ISO 105-A04, as two public implementations have it. Handbook, section 7.
pub fn staining_difference(white: Lab, stained: Lab) -> f64 {
    let all = white.difference(stained);
    // dE^2 - dL^2 is the difference apart from lightness.
    all - 0.4 * (white.a - stained.a).hypot(white.b - stained.b)
}

/// The grade of staining as a number, from [`staining_difference`]: at most 5, at least 1, unknown below zero.
///
/// # Formula
/// `6.1 - 1.45 ln(dE_GS)`; where that is above 4, `5 - 0.23 dE_GS` in its place.
///
/// # Where it holds
/// [`Grade::nearest`] makes a half step of it: borders lie at the quarters. The logarithm is the natural one: the chips of ISO 105-A03 for
/// 3, 2 and 1 (8.5, 16.9, 34.1) give 3.00, 2.00 and 0.98 by it. One public code takes the decimal logarithm, which gives 4.75, 4.32 and
/// 3.88: a slip (handbook, section 17).
///
/// # Source
/// ISO 105-A04, as two public implementations have it. Handbook, section 7.
pub fn staining_grade(difference: &Estimate<Number>) -> Estimate<Number> {
    let value = difference.value();
    if value.is_nan() || value < 0.0 {
        return Estimate::unknown();
    }
    let curved = Estimate::<Number>::exact(6.1) - difference.ln() * 1.45;
    let grade = if curved.value() <= 4.0 { curved } else { Estimate::<Number>::exact(5.0) - difference * 0.23 };
    not_below_one(grade)
}

/// Colour difference as ISO 105-A05 weighs it for change of colour; not a number where a reading is none.
///
/// # Formula
/// With chroma `C` and hue `h` of the cloth as it was (0) and as it is (T): `dL`, `dC = C_T - C_0`, and `dH` the rest of the difference,
/// signed as the hue turns. `C_M` and `h_M` are the means, `h_M` over the shorter way round. `x = ((h_M - 280) / 30)^2`, or
/// `((360 - |h_M - 280|) / 30)^2` where that is the shorter way. `D = dC C_M e^-x / 100`; `dH_F = (dH - D) / (1 + (10 C_M / 1000)^2)`;
/// `dC_F = (dC - D) / (1 + (20 C_M / 1000)^2)`; `dE_F = sqrt(dL^2 + dC_F^2 + dH_F^2)`.
///
/// # Where it holds
/// One public code takes half the difference of the hues for their mean: a slip (handbook, section 17). Here it is half their sum.
///
/// # Source
/// ISO 105-A05:1996, as two public implementations have it. Handbook, section 7.
pub fn change_difference(before: Lab, after: Lab) -> f64 {
    let (c0, ct, h0, ht) = (before.chroma(), after.chroma(), before.hue(), after.hue());
    let turned = {
        let turned = ht - h0;
        if turned > 180.0 {
            turned - 360.0
        } else if turned < -180.0 {
            turned + 360.0
        } else {
            turned
        }
    };
    let (dl, dc) = (after.l - before.l, ct - c0);
    // The same as sqrt(dE^2 - dL^2 - dC^2) with the sign of the turn, without the root of a small difference.
    let dh = 2.0 * (c0 * ct).sqrt() * (turned.to_radians() / 2.0).sin();
    let mean_chroma = (c0 + ct) / 2.0;
    let mean_hue = {
        let mean = (h0 + ht) / 2.0;
        if (ht - h0).abs() <= 180.0 {
            mean
        } else if h0 + ht < 360.0 {
            mean + 180.0
        } else {
            mean - 180.0
        }
    };
    let away = (mean_hue - 280.0).abs();
    let shorter = if away <= 180.0 { away } else { 360.0 - away };
    let x = (shorter / 30.0).powi(2);
    let d = dc * mean_chroma * (-x).exp() / 100.0;
    let dh_f = (dh - d) / (1.0 + (10.0 * mean_chroma / 1000.0).powi(2));
    let dc_f = (dc - d) / (1.0 + (20.0 * mean_chroma / 1000.0).powi(2));
    dl.hypot(dc_f).hypot(dh_f)
}

/// The grade of a change of colour as a number, from [`change_difference`]: at most 5, at least 1, unknown below zero.
///
/// # Formula
/// `5 - dE_F / 1.7` up to 3.4, beyond that `5 - log2(dE_F / 0.85)`.
///
/// # Where it holds
/// Near a border this number and the table of [`change_grade_by_table`] may name different half steps; the table is the one to report.
///
/// # Source
/// ISO 105-A05:1996, as two public implementations have it. Handbook, section 7.
pub fn change_grade(difference: &Estimate<Number>) -> Estimate<Number> {
    let value = difference.value();
    if value.is_nan() || value < 0.0 {
        return Estimate::unknown();
    }
    let five = Estimate::<Number>::exact(5.0);
    let grade = if value <= 3.4 { five - difference / 1.7 } else { five - (difference / 0.85).ln() / std::f64::consts::LN_2 };
    not_below_one(grade)
}

/// The half step of a change of colour, from [`change_difference`]; none below zero or where it is not a number.
///
/// # Formula
/// Below 0.40 it is 5; below 1.25, 2.10, 2.95, 4.10, 5.80, 8.20 and 11.60 each half step down; from there on 1.
///
/// # Source
/// ISO 105-A05:1996, as two public implementations have it. Handbook, section 7.
pub fn change_grade_by_table(difference: f64) -> Option<Grade> {
    const BORDERS: [f64; 8] = [0.40, 1.25, 2.10, 2.95, 4.10, 5.80, 8.20, 11.60];
    if difference.is_nan() || difference < 0.0 {
        return None;
    }
    let below = BORDERS.iter().filter(|border| difference >= **border).count();
    Grade::ALL.iter().rev().nth(below).copied()
}

/// The scale ends at 1, and so does a grade; the spread stays, since the truth may lie above.
fn not_below_one(grade: Estimate<Number>) -> Estimate<Number> {
    if grade.value() >= 1.0 { grade } else { &grade - Estimate::<Number>::exact(grade.value() - 1.0) }
}

/// The nine half steps of a scale to choose from, worst first.
const fn half_steps(scale: &GradeScale) -> [Choice; 9] {
    const BETWEEN: &str = to_say!("Between the two grades beside it.");
    let [one, two, three, four, five] = scale.steps;
    [
        Choice::new("1", "1", one),
        Choice::new("1-2", "1-2", BETWEEN),
        Choice::new("2", "2", two),
        Choice::new("2-3", "2-3", BETWEEN),
        Choice::new("3", "3", three),
        Choice::new("3-4", "3-4", BETWEEN),
        Choice::new("4", "4", four),
        Choice::new("4-5", "4-5", BETWEEN),
        Choice::new("5", "5", five),
    ]
}

/// How far off a grade by eye is (1 sigma), in grades. Judgement: half a grade, a step of the scale; trained eyes do better, a phone camera
/// worse.
pub const GRADE_SPREAD: f64 = 0.5;

const fn grade_input(choices: &'static [Choice]) -> Input {
    Input::choice(
        "grade",
        "Grade",
        "Choose the step that looks most like it. When you waver between two, take the one between them.",
        choices,
    )
}

const fn grade_spread() -> Input {
    Input::measured(
        "spread",
        "How far off the grade may be",
        "Leave it unless you know better: half a grade by eye.",
        [Unit::Count; 3],
        [0.1, 2.0],
    )
    .usually(GRADE_SPREAD)
}

/// Amounts: a place in a list of half steps, and the spread in grades.
fn graded(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(place), Some(spread), ..] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: 2, given: amounts.len() });
    };
    Ok(Outcome::plain(1.0 + place / 2.0, spread, "grade"))
}

/// Below this grade inspectors call a seam's pucker a major fault. Common practice, no single source; handbook data, defects.csv.
const PUCKER_BELOW: f64 = 3.0;
const PUCKER_SAYS: &str = to_say!("Inspectors commonly count a seam below grade 3 as a major fault.");
/// Below this grade inspectors call a difference of two panels of one piece a major fault. Common practice, as above.
const PANELS_BELOW: f64 = 4.0;
const PANELS_SAY: &str =
    to_say!("Between two panels of one new piece, inspectors commonly count a grade below 4 as a major fault.");

/// As [`graded`], with a sentence where the grade lies below a limit by more than its spread.
fn graded_against(amounts: &[Option<f64>], below: f64, says: &'static str) -> Result<Outcome, Fault> {
    let outcome = graded(amounts)?;
    Ok(if outcome.value + outcome.uncertainty < below { outcome.saying(says) } else { outcome })
}

static RUB_OFF_STEPS: [Choice; 9] = half_steps(&RUB_OFF_SCALE);
static COLOUR_CHANGE_STEPS: [Choice; 9] = half_steps(&COLOUR_CHANGE_SCALE);
static SEAM_SMOOTHNESS_STEPS: [Choice; 9] = half_steps(&SEAM_SMOOTHNESS_SCALE);
static PILLING_STEPS: [Choice; 9] = half_steps(&PILLING_SCALE);

/// Grades of rub-off that are usual for a cloth: least and most, dry and wet.
#[derive(Debug, PartialEq)]
pub struct UsualRubOff {
    /// Name for code and tests.
    pub key: &'static str,
    /// The cloth.
    pub(crate) name: &'static str,
    /// How to tell it.
    pub(crate) tell: &'static str,
    /// Rubbed dry.
    pub dry: (f64, f64),
    /// Rubbed wet.
    pub wet: (f64, f64),
}

crate::language::says!(UsualRubOff { name, tell });

/// Usual grades of rub-off.
///
/// # Source
/// ISO 105-X12 and AATCC TM8, usual grades from memory; handbook, section 7, and its data. The two methods wet the cloth differently. A
/// "4-5" there is read as 4 to 5, which holds the half step of that name too.
pub static USUAL_RUB_OFF: [UsualRubOff; 4] = [
    UsualRubOff { key: "raw", name: "Raw indigo", tell: "Deep blue denim, never washed.", dry: (2.0, 4.0), wet: (1.0, 2.0) },
    UsualRubOff {
        key: "rinsed",
        name: "Rinsed indigo",
        tell: "Dark denim, washed once or twice.",
        dry: (3.0, 4.0),
        wet: (2.0, 2.0),
    },
    UsualRubOff { key: "bleached", name: "Bleached indigo", tell: "Pale denim.", dry: (4.0, 5.0), wet: (3.0, 4.0) },
    UsualRubOff {
        key: "dyed",
        name: "Well dyed shirting or jersey",
        tell: "Any other cloth, dyed fast.",
        dry: (4.0, 5.0),
        wet: (3.0, 4.0),
    },
];

const fn cloth(place: usize) -> Choice {
    let cloth = &USUAL_RUB_OFF[place];
    Choice::new(cloth.key, cloth.name, cloth.tell)
}

static RUBBED: [Choice; 4] = [cloth(0), cloth(1), cloth(2), cloth(3)];

static RUB_OFF_INPUTS: [Input; 4] = [
    grade_input(&RUB_OFF_STEPS),
    grade_spread(),
    Input::choice("cloth", "Cloth", "What was rubbed. The grade is set beside what is usual for it.", &RUBBED).never_needed(),
    Input::yes_no("wet", "Rubbed wet", "Choose yes if the white cloth was damp. At home, on what is yours, and never in a shop."),
];

/// A mark on white cloth, graded by eye.
///
/// # Formula
/// The grade itself, 1 to 5, with the spread told. Beside it what is usual for the cloth, [`USUAL_RUB_OFF`].
///
/// # Where it holds
/// A white tissue or cloth under a fingertip only follows the idea of the standard, which has a peg, a weight and ten strokes.
///
/// # Uncertainty
/// Half a grade (1 sigma) unless told otherwise: judgement.
///
/// # Source
/// As [`RUB_OFF_SCALE`].
pub static RUB_OFF: Instrument = Instrument {
    key: "rub-off",
    name: "Rub-off",
    says: "Grades the mark that colour leaves on a white cloth, 5 for none and 1 for the full colour.",
    unit: Unit::Count,
    inputs: &RUB_OFF_INPUTS,
    steps: &[
        "Lay a clean white tissue or cotton cloth over a fingertip.",
        "Rub ten short strokes to and fro on a flat place, pressing as you would wipe a table. Dry in a shop.",
        "Look at the mark by a window, beside a clean part of the tissue.",
        "Choose the step that looks most like it.",
    ],
    cautions: &[
        "Ask first when the goods are not yours, and rub where it does not show. Nothing is wetted in a shop.",
        "Raw indigo marks skin, shoes and pale seats. Wash your hands afterwards.",
    ],
    sources: &[&sources::RUBBING_GRADES, &sources::A03, &sources::JUDGEMENT],
    formula: rubbed,
};

/// Amounts in the order of [`RUB_OFF_INPUTS`].
fn rubbed(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(_), Some(_), cloth, Some(wet)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: RUB_OFF_INPUTS.len(), given: amounts.len() });
    };
    let mut outcome = graded(amounts)?;
    let Some(cloth) = cloth.and_then(|place| USUAL_RUB_OFF.get(place as usize)) else { return Ok(outcome) };
    let (least, most) = if wet == 0.0 { cloth.dry } else { cloth.wet };
    outcome = outcome
        .with("usual-least", to_say!("Usual for such cloth, from"), &Estimate::<Number>::exact(least), Unit::Count)
        .with("usual-most", to_say!("Usual for such cloth, to"), &Estimate::<Number>::exact(most), Unit::Count);
    let (value, u) = (outcome.value, outcome.uncertainty);
    outcome = outcome.saying(if value + u < least {
        to_say!("More rubs off than is usual for such cloth.")
    } else if value - u > most {
        to_say!("Less rubs off than is usual for such cloth.")
    } else {
        to_say!("That is usual for such cloth.")
    });
    if cloth.key == "raw" {
        outcome =
            outcome.saying(to_say!("A low grade is normal for raw indigo, lower still when damp. Mind pale seats and shoes."));
    }
    Ok(outcome)
}

static COLOUR_CHANGE_INPUTS: [Input; 2] = [grade_input(&COLOUR_CHANGE_STEPS), grade_spread()];
static SEAM_SMOOTHNESS_INPUTS: [Input; 2] = [grade_input(&SEAM_SMOOTHNESS_STEPS), grade_spread()];
static PILLING_INPUTS: [Input; 2] = [grade_input(&PILLING_STEPS), grade_spread()];

/// A change of colour, graded by eye. Spread as [`RUB_OFF`], steps as [`COLOUR_CHANGE_SCALE`].
pub static COLOUR_CHANGE: Instrument = Instrument {
    key: "colour-change",
    name: "Change of colour",
    says: "Grades how far a colour has changed against cloth as it was, 5 for none and 1 for another colour.",
    unit: Unit::Count,
    inputs: &COLOUR_CHANGE_INPUTS,
    steps: &[
        "Find cloth as it was: under a pocket flap, inside the hem or a spare piece.",
        "Lay both edge to edge by a window, the weave running the same way.",
        "Choose the step that looks most like it.",
    ],
    cautions: &[
        "Do not unpick a hem or a pocket to see its inside.",
        "Shop lamps and phone cameras shift shades. Judge by daylight, with your own eyes.",
    ],
    sources: &[&sources::A02, &sources::COMMON_PRACTICE, &sources::JUDGEMENT],
    formula: |amounts| graded_against(amounts, PANELS_BELOW, PANELS_SAY),
};

/// Smoothness of a seam, graded by eye. Spread as [`RUB_OFF`], steps as [`SEAM_SMOOTHNESS_SCALE`].
pub static SEAM_SMOOTHNESS: Instrument = Instrument {
    key: "seam-smoothness",
    name: "Seam smoothness",
    says: "Grades how little a seam puckers, 5 for flat and 1 for gathered.",
    unit: Unit::Count,
    inputs: &SEAM_SMOOTHNESS_INPUTS,
    steps: &[
        "Lay the seam flat without pulling it.",
        "Let light come from the side, along the cloth, and look from arm’s length.",
        "Choose the step that looks most like it.",
    ],
    cautions: &["Do not strain the seam to smooth it: that hides the pucker and can break a thread."],
    sources: &[&sources::SMOOTHNESS, &sources::COMMON_PRACTICE, &sources::JUDGEMENT],
    formula: |amounts| graded_against(amounts, PUCKER_BELOW, PUCKER_SAYS),
};

/// Pilling, graded by eye. Spread as [`RUB_OFF`], steps as [`PILLING_SCALE`].
pub static PILLING: Instrument = Instrument {
    key: "pilling",
    name: "Pilling",
    says: "Grades fuzz and small balls on the face of cloth, 5 for none and 1 for all over.",
    unit: Unit::Count,
    inputs: &PILLING_INPUTS,
    steps: &[
        "Look across the face against the light, where it rubs in wear: inner thigh, side, under the arm.",
        "On a piece of your own, rub twenty circles with a dry palm first.",
        "Choose the step that looks most like it.",
    ],
    cautions: &["Do not rub goods that are not yours, and do not pull fibres out: it makes the next balls."],
    sources: &[&sources::PILLING_GRADES, &sources::JUDGEMENT],
    formula: graded,
};

const fn lab(key: &'static str, name: &'static str, limits: [f64; 2]) -> Input {
    Input::measured(key, name, "From a colour meter, in CIELAB for daylight (D65) and 10°.", [Unit::Count; 3], limits)
}

const LIGHTNESS: [f64; 2] = [0.0, 100.0];
const COLOUR: [f64; 2] = [-128.0, 128.0];

static LAB_INPUTS: [Input; 7] = [
    lab("l-before", "L* before, or of the white", LIGHTNESS),
    lab("a-before", "a* before, or of the white", COLOUR),
    lab("b-before", "b* before, or of the white", COLOUR),
    lab("l-after", "L* after, or of the stain", LIGHTNESS),
    lab("a-after", "a* after, or of the stain", COLOUR),
    lab("b-after", "b* after, or of the stain", COLOUR),
    Input::measured(
        "meter",
        "How far off the difference may be",
        "Leave it unless you know better: half a unit, since cloth reads otherwise from place to place.",
        [Unit::Count; 3],
        [0.01, 10.0],
    )
    // Judgement.
    .usually(0.5),
];

const METER_STEPS: &[&str] = &[
    "Lay the cloth in four plies, so that nothing shows through.",
    "Read each place with a colour meter, set to daylight (D65) and 10°.",
    "Type the three numbers before, or of the clean white, and the three after.",
];
const METER_CAUTIONS: &[&str] = &["A phone camera is no colour meter. Numbers from a photograph say nothing here."];

/// Amounts in the order of [`LAB_INPUTS`]: both colours, and the spread of their difference.
fn both_colours(amounts: &[Option<f64>]) -> Result<(Lab, Lab, f64), Fault> {
    let [Some(l), Some(a), Some(b), Some(l_after), Some(a_after), Some(b_after), Some(u)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: LAB_INPUTS.len(), given: amounts.len() });
    };
    Ok((Lab { l, a, b }, Lab { l: l_after, a: a_after, b: b_after }, u))
}

/// A grade from a weighed difference, with the half step to report and the plain colour difference beside it.
fn metered(
    (before, after, u): (Lab, Lab, f64),
    weighed: f64,
    grade: fn(&Estimate<Number>) -> Estimate<Number>,
    step: impl Fn(f64, f64) -> Option<Grade>,
) -> Result<Outcome, Fault> {
    let fault = Fault::NotANumber(&LAB_INPUTS[0]);
    // Two colours exactly alike have no logarithm, but they have a grade: the scale is straight there.
    let difference = Estimate::<Number>::measured("meter", weighed, u).map_err(|_| fault)?;
    let outcome = Outcome::of(&grade(&difference), Unit::Count).ok_or(fault)?;
    let step = step(weighed, outcome.value).ok_or(fault)?;
    Ok(outcome
        .with("half-step", to_say!("Grade to report, in half steps"), &Estimate::<Number>::exact(step.value()), Unit::Count)
        .with(
            "difference",
            to_say!("Colour difference (CIELAB)"),
            &Estimate::<Number>::exact(before.difference(after)),
            Unit::Count,
        )
        .with("weighed", to_say!("Colour difference as the standard weighs it"), &difference, Unit::Count))
}

/// Staining from two readings of a colour meter.
///
/// # Formula
/// [`staining_difference`], then [`staining_grade`]; the half step by [`Grade::nearest`].
///
/// # Uncertainty
/// The weighed difference is off by 0.5 (1 sigma) unless told otherwise: judgement.
///
/// # Source
/// ISO 105-A04, as two public implementations have it.
pub static STAINING_BY_METER: Instrument = Instrument {
    key: "staining-by-meter",
    name: "Rub-off, by colour meter",
    says: "Grades a stain on white from two readings in CIELAB.",
    unit: Unit::Count,
    inputs: &LAB_INPUTS,
    steps: METER_STEPS,
    cautions: METER_CAUTIONS,
    sources: &[&sources::A04, &sources::JUDGEMENT],
    formula: |amounts| {
        let colours = both_colours(amounts)?;
        metered(colours, staining_difference(colours.0, colours.1), staining_grade, |_, grade| Grade::nearest(grade))
    },
};

/// Change of colour from two readings of a colour meter.
///
/// # Formula
/// [`change_difference`], then [`change_grade`]; the half step by [`change_grade_by_table`], which goes before the formula near a border.
///
/// # Uncertainty
/// The weighed difference is off by 0.5 (1 sigma) unless told otherwise: judgement.
///
/// # Source
/// ISO 105-A05:1996, as two public implementations have it.
pub static COLOUR_CHANGE_BY_METER: Instrument = Instrument {
    key: "colour-change-by-meter",
    name: "Change of colour, by colour meter",
    says: "Grades a change of colour from two readings in CIELAB.",
    unit: Unit::Count,
    inputs: &LAB_INPUTS,
    steps: METER_STEPS,
    cautions: METER_CAUTIONS,
    sources: &[&sources::A05, &sources::JUDGEMENT],
    formula: |amounts| {
        let colours = both_colours(amounts)?;
        metered(colours, change_difference(colours.0, colours.1), change_grade, |weighed, _| change_grade_by_table(weighed))
    },
};
