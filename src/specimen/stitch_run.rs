//! How the threads of a stitch run: cut open above, the back of it below.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, Pen};
use super::seam_look::BackLook;

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
            StitchKind::Lockstitch => "lockstitch 301 cut along the seam, two threads that lock within the cloth, and its back",
            StitchKind::Chainstitch => "chainstitch 401 cut along the seam, needle loops held by a second thread, and its back",
            StitchKind::Overedge => "overedge 504 cut across the seam, threads that meet round the edge, and its back",
            StitchKind::Cover => {
                "cover stitch 406 cut across the seam, a thread that crosses below two needle threads, and its back"
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
    let (face, foot) = (TOP - 1.6, LOW + 8.6);
    needle.at(-5.0, face);
    for x in holes() {
        // Down through the cloth, a loop that leans on below it, and up again.
        needle.to(x - 4.0, face).bend(x - 1.8, face, x - 1.8, face + 3.0).to(x - 1.8, LOW + 2.0);
        needle.bend(x - 1.8, foot, x + 5.0, foot).bend(x + 9.0, foot - 0.4, x + 8.0, LOW + 4.4).bend(
            x + 1.8,
            LOW + 4.4,
            x + 1.8,
            LOW,
        );
        needle.to(x + 1.8, face + 3.0).bend(x + 1.8, face, x + 4.0, face);
    }
    needle.to(125.0, face);
    under.at(-5.0, LOW + 7.0);
    for x in holes() {
        // Through the loop of this hole, round that of the next, and back to this.
        under.to(x + 1.0, LOW + 6.4).to(x + 22.0, LOW + 3.0).bend(x + 32.0, LOW + 4.0, x + 30.0, LOW + 9.6);
        under.bend(x + 20.0, LOW + 12.0, x + 6.0, LOW + 6.6);
    }
}

fn round_the_edge(needle: &mut Pen, under: &mut Pen, end: f64) {
    let x = 52.0;
    needle.line(x, TOP - 1.6, x, LOW + 1.6).line(x - 5.0, TOP - 1.6, x + 2.0, TOP - 1.6);
    // The upper looper comes over the top, the lower along the bottom; they meet at the edge.
    under.at(x, TOP - 4.4).to(end - 2.0, TOP - 4.4).bend(end + 6.0, TOP - 4.4, end + 6.0, TOP + 5.0).to(end + 6.0, TOP + 9.0);
    under.at(x, LOW + 4.4).to(end - 2.0, LOW + 4.4).bend(end + 6.0, LOW + 4.4, end + 6.0, LOW - 5.0).to(end + 6.0, LOW - 7.0);
    under.circle(end + 6.0, TOP + 8.6, 1.6);
    needle.at(x, TOP - 1.6).bend(x + 3.0, TOP - 6.4, x + 5.0, TOP - 2.0).at(x, LOW + 1.6).bend(
        x + 3.0,
        LOW + 6.4,
        x + 5.0,
        LOW + 2.0,
    );
}

fn across(needle: &mut Pen, under: &mut Pen) {
    let foot = LOW + 7.0;
    for x in [40.0, 80.0] {
        needle.line(x - 2.0, TOP - 1.6, x - 2.0, foot - 3.0).line(x + 2.0, TOP - 1.6, x + 2.0, foot - 3.0);
        needle.line(x - 2.0, TOP - 1.6, x + 2.0, TOP - 1.6).at(x - 2.0, foot - 3.0).bend(x, foot + 5.0, x + 2.0, foot - 3.0);
    }
    under.at(34.0, foot - 1.6).bend(37.0, foot - 4.0, 41.0, foot - 2.0).to(79.0, foot - 2.0).bend(
        85.0,
        foot - 4.0,
        86.0,
        foot - 0.6,
    );
    under.bend(84.0, foot + 2.0, 79.0, foot).to(41.0, foot).bend(35.0, foot + 1.0, 34.0, foot - 1.6);
}
