//! A second-hand piece, look by look: what a picture of wear may show.

use super::chance::Chance;
use super::drawing::Sheet;
use super::second_cloth::{Stained, Stored, Thinned};
use super::second_parts::{Fastening, WornLining};
use super::second_sewn::{Altered, Mended, Strained};

/// One look at a second-hand piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SecondHand {
    /// Cloth with or without a stain.
    Stained(Stained),
    /// What keeping has done to cloth.
    Stored(Stored),
    /// Cloth before the light, a place that rubs in the middle.
    Thinned(Thinned),
    /// A seam that is parted a little.
    Strained(Strained),
    /// A place that was mended.
    Mended(Mended),
    /// A hem from inside.
    Altered(Altered),
    /// A row of buttons.
    Fastening(Fastening),
    /// A lining beside the seam that holds it.
    Lining(WornLining),
}

impl SecondHand {
    pub(super) fn words(&self) -> String {
        String::from(match self {
            SecondHand::Stained(it) => it.words(),
            SecondHand::Stored(it) => it.words(),
            SecondHand::Thinned(it) => it.words(),
            SecondHand::Strained(it) => it.words(),
            SecondHand::Mended(it) => it.words(),
            SecondHand::Altered(it) => it.words(),
            SecondHand::Fastening(it) => it.words(),
            SecondHand::Lining(it) => it.words(),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        match self {
            SecondHand::Stained(it) => it.draw(sheet),
            SecondHand::Stored(it) => it.draw(sheet, chance),
            SecondHand::Thinned(it) => it.draw(sheet, chance),
            SecondHand::Strained(it) => it.draw(sheet, chance),
            SecondHand::Mended(it) => it.draw(sheet, chance),
            SecondHand::Altered(it) => it.draw(sheet),
            SecondHand::Fastening(it) => it.draw(sheet, chance),
            SecondHand::Lining(it) => it.draw(sheet, chance),
        }
    }
}
