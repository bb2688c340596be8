//! How telling a check is, worked out from its curve: what each answer alone makes of a garment that nobody has looked at, to
//! the question that the course asks.

use crate::check::Check;
use crate::grading::{Bands, Belief, Care, Tables, prospect};
use crate::trade::{Band, Question};

/// One answer, given alone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Alone {
    /// What is then believed of the garment.
    pub bands: Bands,
}

/// How telling a check is.
#[derive(Clone, Debug, PartialEq)]
pub struct Telling {
    /// What is believed before anybody looks: of a new garment of the family, or of a second-hand one.
    pub before: Bands,
    /// What each answer alone makes of that, worst first.
    pub alone: Vec<Alone>,
    /// What the check is expected to tell about the band, in bits, before it is answered.
    pub bits: f64,
    /// The same for each second that the check takes, once the garment is held right.
    pub bits_per_second: f64,
}

/// Chance of Fine or Exceptional, or by what is left of Much left or As new: of being better than most of its kind.
pub(super) fn better(bands: &Bands) -> f64 {
    bands.probability(Band::Fine) + bands.probability(Band::Exceptional)
}

impl Alone {
    /// The chance of the two best bands, 0 to 1.
    pub fn better(&self) -> f64 {
        better(&self.bands)
    }
}

impl Telling {
    /// How telling a check is; none when it does not speak to that question.
    ///
    /// # Formula
    /// Belief before any answer, then after each answer alone, given with usual care; bits as in [`prospect`].
    ///
    /// # Where it holds
    /// For the first answer about a garment. A second check of the same group tells less, as the group's error is shared.
    ///
    /// # Source
    /// As [`Belief`] and [`prospect`]. The numbers of each curve are judgement, so what follows from them is no better than that.
    pub fn of(question: Question, check: &'static Check, tables: &Tables) -> Option<Telling> {
        let curve = check.speaks.about(question)?;
        let before = Belief::new(tables, &[]);
        let alone = check
            .levels
            .iter()
            .filter_map(|level| check.evidence_of_level(question, level.key, Care::Usual))
            .map(|piece| Alone { bands: before.after(tables, &piece).bands() })
            .collect();
        let bits = prospect(tables, &before, curve).bits;
        Some(Telling { before: before.bands(), alone, bits, bits_per_second: bits / f64::from(check.seconds.max(1)) })
    }

    /// The chance of the two best bands before anybody looks, 0 to 1.
    pub fn better_before(&self) -> f64 {
        better(&self.before)
    }
}
