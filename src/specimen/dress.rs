//! A dress or skirt, look by look: what a picture of it may show.

use super::chance::Chance;
use super::drawing::Sheet;
use super::dress_flat::{DressFlat, HemRound};
use super::dress_seams::{DressZip, EdgeInside, HemLine, SlipPull, TailsInside};
use super::dress_shape::{Darts, Hooks, HungDress, SkirtLining};

/// One look at a dress or skirt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Dress {
    /// It lies flat, whole.
    Flat(DressFlat),
    /// A skirt by the way round its hem.
    HemRound(HemRound),
    /// A zip in its seam.
    Zip(DressZip),
    /// The hem from outside.
    Hem(HemLine),
    /// The edges of a seam inside.
    EdgeInside(EdgeInside),
    /// A seam that is pulled across.
    Slip(SlipPull),
    /// Thread ends along a seam inside.
    Tails(TailsInside),
    /// It hangs.
    Hung(HungDress),
    /// A lining, seen through the skirt.
    Lining(SkirtLining),
    /// Two darts of a front.
    Darts(Darts),
    /// Hook and eye.
    Hooks(Hooks),
}

impl Dress {
    pub(super) fn words(&self) -> String {
        let said = match self {
            Dress::Flat(it) => return it.words(),
            Dress::HemRound(it) => return it.words(),
            Dress::Tails(it) => return it.words(),
            Dress::Zip(it) => it.words(),
            Dress::Hem(it) => it.words(),
            Dress::EdgeInside(it) => it.words(),
            Dress::Slip(it) => it.words(),
            Dress::Hung(it) => it.words(),
            Dress::Lining(it) => it.words(),
            Dress::Darts(it) => it.words(),
            Dress::Hooks(it) => it.words(),
        };
        String::from(said)
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        match self {
            Dress::Flat(it) => it.draw(sheet),
            Dress::HemRound(it) => it.draw(sheet),
            Dress::Zip(it) => it.draw(sheet),
            Dress::Hem(it) => it.draw(sheet, chance),
            Dress::EdgeInside(it) => it.draw(sheet, chance),
            Dress::Slip(it) => it.draw(sheet),
            Dress::Tails(it) => it.draw(sheet, chance),
            Dress::Hung(it) => it.draw(sheet),
            Dress::Lining(it) => it.draw(sheet),
            Dress::Darts(it) => it.draw(sheet),
            Dress::Hooks(it) => it.draw(sheet),
        }
    }
}
