//! One question put to a garment, its ordered answers, and how an answer counts as evidence. What the questions are stands in `catalog`.

use crate::grading::{Care, Curve, Evidence, Weights};
use crate::measure::{Instrument, Outcome};
use crate::quantity::{Estimate, Length};
use crate::source::Source;
use crate::specimen::Picture;
use crate::trade::{Aspect, Question, Stage};

/// One question put to hands and eyes, with ordered answers.
#[derive(Debug)]
pub struct Check {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// A few words for lists: "Cloth in the hand".
    pub name: &'static str,
    /// The question, as it stands over the answers.
    pub question: &'static str,
    /// What to do with the hands and where to look.
    pub how: &'static str,
    /// What the answer says, and what it does not.
    pub meaning: &'static str,
    /// The answers, worst first; for a check that speaks of cost only, plainest first. Two or more.
    pub levels: &'static [Level],
    /// Seconds the check takes once the garment is held right. Judgement, not measured.
    pub seconds: u16,
    /// How the garment is held.
    pub stage: Stage,
    /// What it looks at.
    pub aspect: Aspect,
    /// Whether the answer speaks of quality, of cost, of both, or of what wear has left.
    pub speaks: Speaks,
    /// Instruments whose reading can answer the check, the handiest first; all give the same unit, and the levels then carry spans in it.
    pub instruments: &'static [&'static Instrument],
    /// Asked only when another check has one of these answers.
    pub asked_when: Option<When>,
    /// The usual caution, where the work can hurt someone or harm goods.
    pub caution: Option<&'static str>,
    /// What the wording and numbers lean on.
    pub sources: &'static [&'static Source],
}

crate::language::says!(Check { name, question, how, meaning, caution? });

/// Quality and costliness are two things: a check speaks of one, of the other, or of both. What wear has left is a third, and is told by
/// checks of its own.
#[derive(Debug)]
pub enum Speaks {
    /// Evidence about quality, by this curve.
    Quality(Curve),
    /// A fact about what it cost to make; this sentence says what it means.
    Cost(&'static str),
    /// Evidence about quality by the curve, and a fact about cost.
    Both(Curve, &'static str),
    /// Evidence about what is left in a second-hand piece, by this curve; it says nothing of how well the piece was made.
    Left(Curve),
}

impl Speaks {
    /// The curve, when the check speaks of quality.
    pub const fn curve(&self) -> Option<&Curve> {
        match self {
            Speaks::Quality(curve) | Speaks::Both(curve, _) => Some(curve),
            Speaks::Cost(_) | Speaks::Left(_) => None,
        }
    }

    /// The curve, when the check speaks of what is left.
    pub const fn left(&self) -> Option<&Curve> {
        match self {
            Speaks::Left(curve) => Some(curve),
            Speaks::Quality(_) | Speaks::Both(..) | Speaks::Cost(_) => None,
        }
    }

    /// The curve, when the check speaks to that question.
    pub const fn about(&self, question: Question) -> Option<&Curve> {
        match question {
            Question::Make => self.curve(),
            Question::Left => self.left(),
        }
    }

    /// What the answer means for the cost of making, when it speaks of that.
    pub fn cost(&self) -> Option<&'static str> {
        match self {
            Speaks::Cost(meaning) | Speaks::Both(_, meaning) => Some(crate::language::said(meaning)),
            Speaks::Quality(_) | Speaks::Left(_) => None,
        }
    }
}

/// One ordered answer.
#[derive(Debug, PartialEq)]
pub struct Level {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// The answer in a few words.
    pub name: &'static str,
    /// One line that lets a newcomer choose it.
    pub line: &'static str,
    /// Where a reading of the check's instrument falls in this level, in the instrument's unit; two spans where too little and too
    /// much are the same fault. Empty when no instrument answers the check.
    pub spans: &'static [Span],
    /// The drawn specimen, where the answer can be drawn.
    pub drawn: Option<Picture>,
}

crate::language::says!(Level { name, line });

/// A stretch of the instrument's scale, from `low` up to `high`; infinite ends are open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// When a check is worth asking: another check has one of these answers.
#[derive(Debug)]
pub struct When {
    /// The check that opens this one.
    pub check: &'static Check,
    /// Keys of its levels that do.
    pub levels: &'static [&'static str],
    /// How many of 100 new pieces open it. Judgement; it only decides when the opening check is put.
    pub share: u8,
}

/// What would tell a reading from the nearest edge between two levels.
#[derive(Clone, Debug, PartialEq)]
pub struct Telling {
    /// The edge, in the unit of the reading.
    pub edge: f64,
    /// How long a stretch to count over; exact, since it is a plan and no reading.
    pub over: Estimate<Length>,
}

impl Check {
    /// The level of that key, and its place counted from the worst.
    pub fn level(&self, key: &str) -> Option<(usize, &'static Level)> {
        self.levels.iter().enumerate().find(|(_, level)| level.key == key)
    }

    /// The instrument of that key, if its readings can answer the check.
    pub fn instrument(&self, key: &str) -> Option<&'static Instrument> {
        self.instruments.iter().copied().find(|instrument| instrument.key == key)
    }

    /// How much a reading speaks for each level; a value on a border counts for both sides.
    pub fn weights(&self, outcome: &Outcome) -> Option<Weights> {
        let spans = self.levels.iter().map(|level| level.spans.iter().map(|span| (span.low, span.high)));
        Weights::of_reading(outcome.value, outcome.uncertainty, spans).ok()
    }

    /// How long a stretch has to be counted to tell a reading from the nearest edge between levels, where it lies within two standard
    /// uncertainties of that edge now. None where it is told already, sits on the edge, is no number, or the check has no edges.
    ///
    /// # Formula
    /// `L = L_now * 2 u / |value - edge|`, the length at which the edge lies two standard uncertainties away.
    ///
    /// # Where it holds
    /// For an instrument whose uncertainty falls as one over the length counted, as that of
    /// [`STITCH_DENSITY`](crate::measure::STITCH_DENSITY) does exactly. The length may be longer than any seam; that is the answer, then.
    ///
    /// # Source
    /// As [`length_that_tells`](crate::measure::length_that_tells), which comes to the same from the parts of the uncertainty: handbook,
    /// section 1.3.
    ///
    /// # Example
    /// ```
    /// use garment_assay::catalog::jeans::JEANS;
    /// use garment_assay::measure::STITCH_DENSITY;
    /// use garment_assay::quantity::{Estimate, Unit};
    /// let spi = JEANS.checks.iter().find(|check| check.key == "spi").unwrap();
    /// // 15 stitches over 52 mm: 7.33 per inch, give or take 0.21.
    /// let outcome = STITCH_DENSITY.estimate(&[Some(15.0), Some(52.0), None, None, None, None]).unwrap();
    /// let telling = spi.length_that_tells(&outcome, &Estimate::exact(0.052)).unwrap();
    /// assert_eq!((telling.edge, telling.over.in_unit(Unit::Centimetre).map(|(cm, _)| cm.round())), (7.0, Some(7.0)));
    /// ```
    pub fn length_that_tells(&self, outcome: &Outcome, now: &Estimate<Length>) -> Option<Telling> {
        let edges = self.levels.iter().flat_map(|level| level.spans).flat_map(|span| [span.low, span.high]);
        let far = |edge: f64| (outcome.value - edge).abs();
        let edge = edges.filter(|edge| far(*edge).is_finite()).min_by(|one, other| far(*one).total_cmp(&far(*other)))?;
        let reach = 2.0 * outcome.uncertainty;
        if far(edge) == 0.0 || far(edge) >= reach {
            return None;
        }
        let over: Estimate<Length> = Estimate::exact(now.value() * reach / far(edge));
        (over.value() > 0.0).then_some(Telling { edge, over })
    }

    /// What a reading says to that question; none when the check does not speak to it. Whoever measures is [`Care::Careful`]: what a
    /// reading may be off by stands in its uncertainty.
    pub fn evidence_of_outcome(&'static self, question: Question, outcome: &Outcome) -> Option<Evidence<'static>> {
        Evidence::new(self.speaks.about(question)?, self.weights(outcome)?, Care::Careful).ok()
    }

    /// What a judged level says to that question; none when the check does not speak to it or has no such level.
    pub fn evidence_of_level(&'static self, question: Question, level: &str, care: Care) -> Option<Evidence<'static>> {
        let (place, _) = self.level(level)?;
        Evidence::new(self.speaks.about(question)?, Weights::certain(place, self.levels.len()).ok()?, care).ok()
    }
}

/// Content: the same check is the same place in memory.
impl PartialEq for Check {
    fn eq(&self, other: &Check) -> bool {
        std::ptr::eq(self, other)
    }
}
