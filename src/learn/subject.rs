//! What a course is about: how pieces of a family are made, or what is left in second-hand pieces of any family.

use crate::catalog::second_hand::CONDITIONS;
use crate::catalog::{FAMILIES, Family};
use crate::check::Check;
use crate::say;
use crate::specimen::{Mended, Picture, SecondHand};
use crate::trade::Question;

/// What a course is about.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Subject {
    /// How pieces of the family are made.
    Make(&'static Family),
    /// What wear has left, in a piece of any family: one course for all, as its checks are the same for all.
    SecondHand,
}

impl Subject {
    /// Every subject, in the order in which they are shown.
    pub fn all() -> impl Iterator<Item = Subject> {
        FAMILIES.iter().copied().map(Subject::Make).chain([Subject::SecondHand])
    }

    /// The subject of that key.
    pub fn of(key: &str) -> Option<Subject> {
        Subject::all().find(|subject| subject.key() == key)
    }

    /// In which course a check that is put to a piece of the family has its lesson.
    pub fn with(family: &'static Family, check: &Check) -> Subject {
        if check.speaks.left().is_some() { Subject::SecondHand } else { Subject::Make(family) }
    }

    /// The key in addresses, in marks and in the name of the file of texts. Never renamed.
    pub const fn key(self) -> &'static str {
        match self {
            Subject::Make(family) => family.key,
            Subject::SecondHand => "second-hand",
        }
    }

    /// The words on the screen.
    pub fn name(self) -> &'static str {
        match self {
            Subject::Make(family) => family.name(),
            Subject::SecondHand => say!("a subject" | "Second-hand"),
        }
    }

    /// A picture of it.
    pub const fn drawn(self) -> Picture {
        match self {
            Subject::Make(family) => family.drawn,
            Subject::SecondHand => Picture::SecondHand(SecondHand::Mended(Mended::Plain)),
        }
    }

    /// What its checks speak to, those of cost aside.
    pub const fn question(self) -> Question {
        match self {
            Subject::Make(_) => Question::Make,
            Subject::SecondHand => Question::Left,
        }
    }

    /// Its checks.
    pub fn checks(self) -> Vec<&'static Check> {
        match self {
            Subject::Make(family) => family.checks.to_vec(),
            Subject::SecondHand => CONDITIONS.iter().map(|condition| &condition.check).collect(),
        }
    }

    /// Its check of that key.
    pub fn check(self, key: &str) -> Option<&'static Check> {
        self.checks().into_iter().find(|check| check.key == key)
    }
}
