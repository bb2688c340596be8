//! A garment that somebody wore before: the checks that are put to it besides those of its make, and what may be said of an answer.

use super::record::{Answer, Garment};
use crate::catalog::{Family, Look};
use crate::check::Check;
use crate::language::said;
use crate::trade::Question;

/// The check of that key that a garment of the family may have an answer to, those of wear included.
pub fn check_of(family: &'static Family, key: &str) -> Option<&'static Check> {
    every(family).find(|check| check.key == key)
}

/// Whether a garment of the family may have an answer to the check.
pub(super) fn knows(family: &'static Family, check: &Check) -> bool {
    every(family).any(|other| other == check)
}

fn every(family: &'static Family) -> impl Iterator<Item = &'static Check> {
    family.checks.iter().copied().chain(family.second_hand.iter().map(|look| &look.condition.check))
}

impl Garment {
    /// Whether somebody wore it before, as far as was said.
    pub fn is_second_hand(&self) -> bool {
        self.second_hand
    }

    /// The checks that are put to it as it is: those of its make, and when it is second-hand those of what is left.
    pub fn checks(&self) -> impl Iterator<Item = &'static Check> + use<> {
        let asked = self.second_hand;
        every(self.family()).filter(move |check| asked || check.speaks.about(Question::Left).is_none())
    }

    /// Whether a check is put to it as it is.
    pub fn puts(&self, check: &Check) -> bool {
        self.second_hand || check.speaks.about(Question::Left).is_none()
    }

    /// Whether predictions may lean on its ticket, as far as the person lets them: that of a second-hand piece says nothing of a new one.
    pub fn may_teach(&self) -> bool {
        self.is_reference() && !self.second_hand
    }

    /// Where its family looks for what a check of wear asks; none for a check of the make.
    pub fn look(&self, check: &Check) -> Option<&'static Look> {
        self.family().second_hand.iter().find(|look| look.condition.check == *check)
    }

    /// What may be done about what was found, in a sentence; none where nothing was found or nothing is to be done.
    pub fn mend(&self, check: &'static Check) -> Option<&'static str> {
        let Some(Answer::Judged { .. }) = self.answer(check) else { return None };
        self.look(check)?.condition.mends.get(self.level_place(check)?).copied().filter(|mend| !mend.is_empty()).map(said)
    }
}
