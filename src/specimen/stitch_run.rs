//! How the threads of a stitch run: cut open above, the back of it below.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, Pen};
use super::seam_look::BackLook;
use crate::say;

/// How the threads of a stitch run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StitchRun {
    /// The stitch.
    pub kind: StitchKind,
}

/// Stitches by their number in ISO 4915; ASTM D6193 uses the same numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StitchKind {
    /// 301: two threads that lock within the cloth. Cut along the seam.
    Lockstitch,
    /// 401: needle loops held by a second thread below. Cut along the seam.
    Chainstitch,
    /// 504: a needle thread, and two that meet round the edge. Cut across the seam.
    Overedge,
    /// 406: two needle threads, and a third that crosses between them below. Cut across the seam.
    Cover,
}

/// Upper and lower face of the two plies in section.
const TOP: f64 = 13.0;
const LOW: f64 = 29.0;

impl StitchRun {
    pub(super) fn words(self) -> String {
        String::from(match self.kind {
            StitchKind::Lockstitch => {
                say!("lockstitch 301 cut along the seam, two threads that lock within the cloth, and its back")
            }
            StitchKind::Chainstitch => {
                say!("chainstitch 401 cut along the seam, needle loops held by a second thread, and its back")
            }
            StitchKind::Overedge => say!("overedge 504 cut across the seam, threads that meet round the edge, and its back"),
            StitchKind::Cover => {
                say!("cover stitch 406 cut across the seam, a thread that crosses below two needle threads, and its back")
            }
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        let back = match self.kind {
            StitchKind::Lockstitch => BackLook::SameLine,
            StitchKind::Chainstitch => BackLook::Rope,
            StitchKind::Overedge => BackLook::Wrapped,
            StitchKind::Cover => BackLook::Ladder,
        };
        back.along(sheet, 61.0, chance);
        sheet.area(Ink::Paper, Area { x: -5.0, y: -5.0, width: 130.0, height: 49.0 });
        sheet.stroke(Ink::Edge, 1.0, Pen::with(|pen| _ = pen.line(-5.0, 44.0, 125.0, 44.0)));
        let end = if self.kind == StitchKind::Overedge { 84.0 } else { 130.0 };
        let middle = (TOP + LOW) / 2.0;
        for (y, ink) in [(TOP, Ink::ClothPale), (middle, Ink::Weft)] {
            let ply = Area { x: -5.0, y, width: end + 5.0, height: middle - TOP };
            sheet.area(ink, ply);
            let outline = Pen::with(|pen| _ = pen.rect(ply.x, ply.y, ply.width, ply.height));
            sheet.stroke(Ink::Edge, 1.0, outline);
        }
        let (mut needle, mut under) = (Pen::new(), Pen::new());
        match self.kind {
            StitchKind::Lockstitch => lock(&mut needle, &mut under, middle),
            StitchKind::Chainstitch => links(&mut needle, &mut under),
            StitchKind::Overedge => round_the_edge(&mut needle, &mut under, end),
            StitchKind::Cover => across(&mut needle, &mut under),
        }
        sheet.stroke(Ink::Edge, 2.2, under);
        sheet.stroke(Ink::Thread, 2.2, needle);
    }
}

/// Places of the needle along a seam, hole to hole.
fn holes() -> impl Iterator<Item = f64> {
    (0..5).map(|hole| 12.0 + f64::from(hole) * 24.0)
}

fn lock(needle: &mut Pen, under: &mut Pen, middle: f64) {
    // Each thread lies on its own face, dips to the middle at a hole and turns round the other there.
    for (pen, face, turn) in [(needle, TOP - 1.6, middle + 2.4), (under, LOW + 1.6, middle - 2.4)] {
        pen.at(-5.0, face);
        for x in holes() {
            let way = (turn - face).signum();
            pen.to(x - 4.0, face).bend(x - 2.2, face, x - 2.2, face + way * 3.0).to(x - 2.2, turn - way * 2.6);
            pen.bend(x - 2.2, turn, x, turn).bend(x + 2.2, turn, x + 2.2, turn - way * 2.6).to(x + 2.2, face + way * 3.0);
            pen.bend(x + 2.2, face, x + 4.0, face);
        }
        pen.to(125.0, face);
    }
}

fn links(needle: &mut Pen, under: &mut Pen) {
    let (face, foot) = (TOP - 1.6, LOW + 10.4);
    needle.at(-5.0, face);
    for x in holes() {
        // Down through the cloth, a loop below it, and up again.
        needle.to(x - 4.6, face).bend(x - 2.6, face, x - 2.6, face + 3.0).to(x - 2.6, foot - 3.0);
        needle.bend(x - 2.6, foot, x, foot).bend(x + 2.6, foot, x + 2.6, foot - 3.0).to(x + 2.6, face + 3.0);
        needle.bend(x + 2.6, face, x + 4.6, face);
    }
    needle.to(125.0, face);
    for x in holes().chain([-12.0]) {
        // The second thread runs to the next loop, through and round it, and back: two strands from loop to loop.
        under.at(x, LOW + 6.6).bend(x + 12.0, LOW + 0.8, x + 24.0, LOW + 6.6).bend(x + 12.0, LOW + 12.4, x, LOW + 6.6);
    }
}

fn round_the_edge(needle: &mut Pen, under: &mut Pen, end: f64) {
    let x = 52.0;
    let (over, below, rim) = (TOP - 3.4, LOW + 3.4, end + 6.0);
    // The upper looper comes over the top, the lower along the bottom; they meet at the edge. The needle thread holds both.
    under.at(x, over).to(rim - 6.0, over).bend(rim, over, rim, over + 6.0).to(rim, TOP + 8.0);
    under.at(x, below).to(rim - 6.0, below).bend(rim, below, rim, below - 6.0).to(rim, TOP + 8.0);
    under.circle(rim, TOP + 8.0, 1.6);
    for way in [-1.8, 1.8] {
        needle.line(x + way, over, x + way, below);
    }
    needle.at(x - 1.8, over).bend(x, over - 4.4, x + 1.8, over).at(x - 1.8, below).bend(x, below + 4.4, x + 1.8, below);
}

fn across(needle: &mut Pen, under: &mut Pen) {
    let (face, high, foot) = (TOP - 1.6, LOW + 3.4, LOW + 8.2);
    for x in [40.0, 80.0] {
        needle.at(x - 2.2, foot - 1.6).to(x - 2.2, face).to(x + 2.2, face).to(x + 2.2, foot - 1.6);
        needle.bend(x + 2.2, foot + 3.0, x, foot + 3.0).bend(x - 2.2, foot + 3.0, x - 2.2, foot - 1.6);
    }
    under.at(36.0, high).to(84.0, high).bend(88.6, high, 88.6, (high + foot) / 2.0).bend(88.6, foot, 84.0, foot);
    under.to(36.0, foot).bend(31.4, foot, 31.4, (high + foot) / 2.0).bend(31.4, high, 36.0, high);
}
