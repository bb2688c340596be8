//! What follows from the evidence of one garment: belief about its quality, what moved it, how its aspects stand.

use std::fmt;

use super::record::{Answer, Entry, Garment, Readings, Taped};
use crate::check::{Check, Telling};
use crate::grading::{Belief, Evidence, Reading, Run, Tables, contributions};
use crate::measure::{Fault, Outcome, PointOfMeasure, STITCH_DENSITY, taped};
use crate::quantity::{Amount, Estimate, Unit};
use crate::trade::{Aspect, Band, Question};

/// Standard normal quantile of 0.9: a belief's 80 % range ends so many spreads either side of its mean.
const TENTH: f64 = 1.281_551_565_544_600_4;
/// Two neighbouring bands that hold this much are a result. Judgement: beyond it more checks seldom change what one would buy.
const SETTLED: f64 = 0.8;

/// Marks of a tape in centimetres lie so far apart, in mm.
const STEP: f64 = 1.0;
/// Marks of a tape in inches lie an eighth apart, in mm. Common practice, no source.
const STEP_IN_INCHES: f64 = 3.175;
/// Key of the length among what the stitch count asks for.
const LENGTH: &str = "length";

/// Works out what follows from evidence. Make one and keep it: it remembers what is the same for every garment.
#[derive(Default)]
pub struct Appraiser {
    pub(super) tables: Tables,
}

impl fmt::Debug for Appraiser {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Appraiser").finish_non_exhaustive()
    }
}

/// What follows from the evidence of one garment at one moment. Never stored.
#[derive(Clone, Debug)]
pub struct Appraisal {
    question: Question,
    pub(super) belief: Belief,
    counted: Vec<(&'static Check, Evidence<'static>)>,
}

/// How far one answer moved the belief about quality.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moved {
    /// The check answered.
    pub check: &'static Check,
    /// Change of the mean of quality, in standard deviations among new garments; the width of a middle band is 1.
    pub by: f64,
}

/// Whether a check applies to a garment, as far as its answers tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// It applies.
    Open,
    /// It depends on a check that is not answered.
    NotKnown,
    /// It does not apply.
    Closed,
}

impl Taped {
    /// What the readings come to at that point, in centimetres.
    ///
    /// # Errors
    /// As [`taped`].
    pub fn outcome(&self, point: &PointOfMeasure) -> Result<Outcome, Fault> {
        let in_mm = |reading: &Amount| reading.in_unit(Unit::Millimetre).unwrap_or(f64::NAN);
        let readings: Vec<f64> = self.readings().iter().map(in_mm).collect();
        let inches = self.readings().iter().any(|reading| reading.unit == Unit::Inch);
        taped(point, &readings, self.round(), if inches { STEP_IN_INCHES } else { STEP })
    }
}

impl Readings {
    /// How long a stretch of seam to count over, to tell a stitch count from the nearest edge between the levels of a check; none where it
    /// is told already, where the readings are no count over a length, and where no seam that one may type is long enough.
    pub fn length_that_tells(&self, check: &Check) -> Option<Telling> {
        if *self.instrument != STITCH_DENSITY {
            return None;
        }
        let (_, length) = self.instrument.input(LENGTH)?;
        // Of two for one input the later counts.
        let now = self.given.iter().rev().find(|given| given.input == LENGTH)?;
        let now = Estimate::exact_in(now.unit.convert(now.amount, length.unit)?, length.unit).ok()?;
        let telling = check.length_that_tells(&self.outcome().ok()?, &now)?;
        let (over, _) = telling.over.in_unit(length.unit)?;
        (over <= length.most).then_some(telling)
    }
}

impl Garment {
    /// What was read at a point of measure comes to, in centimetres; none when nothing was read there.
    ///
    /// # Errors
    /// As [`Taped::outcome`].
    pub fn measure(&self, point: &PointOfMeasure) -> Option<Result<Outcome, Fault>> {
        self.taped(point).map(|taped| taped.outcome(point))
    }

    /// The outcome of the readings with which a check was answered; none when it was not answered by readings.
    ///
    /// # Errors
    /// The instrument's [`Fault`] when the readings as kept say nothing.
    pub fn reading(&self, check: &'static Check) -> Option<Result<Outcome, Fault>> {
        match self.answer(check)? {
            Answer::Measured(readings) => Some(readings.outcome()),
            _ => None,
        }
    }

    /// The level that an answer points to, counted from the worst; for a reading the one that it speaks for most, of equals the worse.
    pub fn level_place(&self, check: &'static Check) -> Option<usize> {
        match self.answer(check)? {
            Answer::Judged { level, .. } => check.level(level).map(|(place, _)| place),
            Answer::Measured(_) => {
                let outcome = self.reading(check)?.ok()?;
                let weights = check.weights(&outcome)?;
                let parts = weights.parts();
                // Neither rounding nor the far end of a span must decide between equals.
                (0..parts.len()).reduce(|best, next| if parts[next] > parts[best] + 1e-9 { next } else { best })
            }
            Answer::CannotTell | Answer::Skipped => None,
        }
    }

    /// Whether a check applies to this garment. What hangs on a check that does not apply does not apply either.
    pub fn standing(&self, check: &'static Check) -> Standing {
        let Some(when) = &check.asked_when else { return Standing::Open };
        if self.standing(when.check) == Standing::Closed {
            return Standing::Closed;
        }
        match (self.answer(when.check), self.level_place(when.check)) {
            (_, Some(place)) if when.levels.contains(&when.check.levels[place].key) => Standing::Open,
            (_, Some(_)) => Standing::Closed,
            // Whoever cannot tell may still make the check; whoever has not looked is asked to look first.
            (Some(Answer::CannotTell), None) => Standing::Open,
            _ => Standing::NotKnown,
        }
    }

    /// What one answer says to that question; none when it says nothing.
    fn evidence(&self, question: Question, entry: &Entry) -> Option<Evidence<'static>> {
        if self.standing(entry.check) == Standing::Closed {
            return None;
        }
        match &entry.answer {
            Answer::Judged { level, care } => entry.check.evidence_of_level(question, level, *care),
            Answer::Measured(_) => entry.check.evidence_of_outcome(question, &self.reading(entry.check)?.ok()?),
            Answer::CannotTell | Answer::Skipped => None,
        }
    }
}

impl Appraiser {
    /// What follows from a garment's evidence about how well it is made.
    pub fn appraise(&self, garment: &Garment) -> Appraisal {
        self.about(Question::Make, garment)
    }

    /// What follows from a garment's evidence about what is left in it; none for a new one. How well it was made has no part in this:
    /// a well-made piece may be worn out, and a poor one hardly worn.
    pub fn left(&self, garment: &Garment) -> Option<Appraisal> {
        garment.is_second_hand().then(|| self.about(Question::Left, garment))
    }

    fn about(&self, question: Question, garment: &Garment) -> Appraisal {
        let counted: Vec<_> =
            garment.entries().iter().filter_map(|entry| Some((entry.check, garment.evidence(question, entry)?))).collect();
        let evidence: Vec<Evidence<'static>> = counted.iter().map(|(_, evidence)| evidence.clone()).collect();
        Appraisal { question, belief: Belief::new(&self.tables, &evidence), counted }
    }

    /// How far each answer moved the result, furthest first. The parts sum to the mean of the belief.
    pub fn moved(&self, appraisal: &Appraisal) -> Vec<Moved> {
        let evidence: Vec<Evidence<'static>> = appraisal.counted.iter().map(|(_, evidence)| evidence.clone()).collect();
        let parts = contributions(&self.tables, &evidence);
        let mut moved: Vec<Moved> = appraisal.counted.iter().zip(parts).map(|((check, _), by)| Moved { check, by }).collect();
        moved.sort_by(|one, other| other.by.abs().total_cmp(&one.by.abs()));
        moved
    }
}

impl Appraisal {
    /// Which question it answers.
    pub fn question(&self) -> Question {
        self.question
    }

    /// The word for a band of that question.
    pub fn word(&self, band: Band) -> &'static str {
        self.question.word(band)
    }

    /// Whether a check is one of those put for its sake; those that speak of cost alone go with the make.
    pub fn is_spoken_to_by(&self, check: &Check) -> bool {
        (self.question == Question::Left) == check.speaks.left().is_some()
    }

    /// Answers that say something to its question.
    pub fn evidence(&self) -> usize {
        self.counted.len()
    }

    /// Probability of each band, by [`Band::ALL`].
    pub fn bands(&self) -> [f64; 5] {
        self.belief.bands().all()
    }

    /// The likeliest band and its probability.
    pub fn likely(&self) -> (Band, f64) {
        let band = self.belief.bands().likely();
        (band, self.belief.bands().probability(band))
    }

    /// The shortest run of neighbouring bands that holds at least this probability.
    pub fn run(&self, level: f64) -> Run {
        self.belief.bands().shortest_run(level)
    }

    /// Whether two neighbouring bands hold enough to stop.
    pub fn is_settled(&self) -> bool {
        self.evidence() > 0 && self.belief.bands().heaviest(2).mass >= SETTLED
    }

    /// Mean of quality in standard deviations among new garments.
    pub fn mean(&self) -> f64 {
        self.belief.mean()
    }

    /// Lower end, middle and upper end of the 80 % range of quality, by the normal distribution with the belief's mean and spread.
    pub fn range(&self) -> (f64, f64, f64) {
        let (mean, half) = (self.belief.mean(), TENTH * self.belief.sd());
        (mean - half, mean, mean + half)
    }

    /// The density of quality at so many points from -3 to 3.
    pub fn hill(&self, points: usize) -> Vec<(f64, f64)> {
        self.belief.hill(points)
    }

    /// How each aspect that has answers stands.
    pub fn aspects(&self) -> Vec<(Aspect, Reading)> {
        Aspect::ALL.into_iter().filter_map(|aspect| Some((aspect, self.belief.aspect(aspect)?))).collect()
    }

    /// The aspect that clearly stands above the rest of the garment, if one does.
    pub fn strongest(&self) -> Option<Aspect> {
        self.belief.strongest()
    }

    /// The aspect that clearly stands below the rest, if one does.
    pub fn weakest(&self) -> Option<Aspect> {
        self.belief.weakest()
    }
}

/// Two appraisals are the same when they are the same object; what they show follows from the garment in any case.
impl PartialEq for Appraisal {
    fn eq(&self, other: &Appraisal) -> bool {
        std::ptr::eq(self, other)
    }
}
