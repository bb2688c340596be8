//! A jacket or coat for outside, look by look: what a picture of it may show.

use super::chance::Chance;
use super::drawing::Sheet;
use super::outer_fill::{FillLeak, FillPanels, Quilt, QuiltTails};
use super::outer_flat::{Hardware, OuterFlat, OuterPair};
use super::outer_parts::{BackedButton, Cord, OuterZip, PocketBag, PocketTacks};
use super::outer_shell::{Drop, SealedSeam, ShellHand};

/// One look at a jacket or coat for outside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outer {
    /// Laid flat, with one point of measure or none.
    Flat(OuterFlat),
    /// Front edges, collar and pockets.
    Pair(OuterPair),
    /// Zips, snaps and toggles, counted.
    Hardware(Hardware),
    /// The main zip.
    Zip(OuterZip),
    /// A hem that is drawn in by a cord.
    Cord(Cord),
    /// Corners of pockets.
    Tacks(PocketTacks),
    /// A button with a small one behind the cloth.
    Button(BackedButton),
    /// Lining and a pocket bag, from inside.
    PocketBag(PocketBag),
    /// Three filled chambers before the light.
    Fill(FillPanels),
    /// A seam of a filled piece after rubbing.
    Leak(FillLeak),
    /// Rows of quilting where two panels meet.
    Quilt(Quilt),
    /// Rows of quilting with thread ends left hanging.
    Tails(QuiltTails),
    /// Outer cloth after a crush.
    Shell(ShellHand),
    /// A drop of water on the outer cloth, in section.
    Drop(Drop),
    /// A seam from inside.
    Seam(SealedSeam),
}

impl Outer {
    pub(super) fn words(&self) -> String {
        let said = match self {
            Outer::Hardware(it) => return it.words(),
            Outer::Leak(it) => return it.words(),
            Outer::Tails(it) => return it.words(),
            Outer::Tacks(it) => return it.words(),
            Outer::Flat(it) => it.words(),
            Outer::Pair(it) => it.words(),
            Outer::Zip(it) => it.words(),
            Outer::Cord(it) => it.words(),
            Outer::Button(it) => it.words(),
            Outer::PocketBag(it) => it.words(),
            Outer::Fill(it) => it.words(),
            Outer::Quilt(it) => it.words(),
            Outer::Shell(it) => it.words(),
            Outer::Drop(it) => it.words(),
            Outer::Seam(it) => it.words(),
        };
        String::from(said)
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        match self {
            Outer::Flat(it) => it.draw(sheet),
            Outer::Pair(it) => it.draw(sheet),
            Outer::Hardware(it) => it.draw(sheet),
            Outer::Zip(it) => it.draw(sheet),
            Outer::Cord(it) => it.draw(sheet),
            Outer::Tacks(it) => it.draw(sheet),
            Outer::Button(it) => it.draw(sheet, chance),
            Outer::PocketBag(it) => it.draw(sheet),
            Outer::Fill(it) => it.draw(sheet),
            Outer::Leak(it) => it.draw(sheet, chance),
            Outer::Quilt(it) => it.draw(sheet),
            Outer::Tails(it) => it.draw(sheet, chance),
            Outer::Shell(it) => it.draw(sheet, chance),
            Outer::Drop(it) => it.draw(sheet),
            Outer::Seam(it) => it.draw(sheet, chance),
        }
    }
}
