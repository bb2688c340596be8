//! What holds: bar tacks, rivets, buttons, and where they should be.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track, clamp, fringe, overlock};
use super::stitching::ridge;
use crate::{say, to_say};

/// One bar tack, close.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BarTack {
    /// Whether it is there and how good it is.
    pub state: TackState,
}

/// State of a bar tack.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TackState {
    /// None where one is needed.
    Absent,
    /// A few loose stitches.
    Loose,
    /// Dense.
    Dense,
    /// A rivet does its work.
    Riveted,
}

/// Ten stress points on the front.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StressPoints {
    /// How many of the ten have a dense tack or rivet, 0 to 10.
    pub secured: u8,
}

/// A shank button in section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Button {
    /// Thickness of the cap in mm, 0.5 (thin) to 4.
    pub cap_mm: f64,
    /// Whether plies or a washer back it.
    pub backed: bool,
    /// Whether it rocks.
    pub loose: bool,
}

/// A rivet in section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rivet {
    /// Thickness of the head in mm, 0.3 (thin) to 3.
    pub head_mm: f64,
    /// Whether a burr backs it.
    pub backed: bool,
    /// Whether it turns or lifts.
    pub loose: bool,
}

impl BarTack {
    pub(super) fn words(&self) -> String {
        String::from(match self.state {
            TackState::Absent => say!("a pocket corner with no bar tack"),
            TackState::Loose => say!("a pocket corner with a few loose stitches across"),
            TackState::Dense => say!("a pocket corner with a dense bar tack"),
            TackState::Riveted => say!("a pocket corner with a rivet"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        // The mouth of a front pocket runs up to the side seam at the right.
        let mouth = [(-5.0, 70.0), (30.0, 58.0), (62.0, 44.0), (88.0, 28.0)];
        let inner = Pen::with(|pen| _ = pen.smooth(&mouth).to(88.0, -5.0).to(-5.0, -5.0).close());
        sheet.fill(Ink::ClothDark, inner);
        ridge(sheet, &[(92.0, -5.0), (92.0, 85.0)]);
        sheet.stroke(Ink::ClothLight, 1.4, Pen::with(|pen| _ = pen.smooth(&mouth)));
        let mut thread = Pen::new();
        for side in [6.0, 13.0] {
            let track = Track::through(&mouth);
            Row::of(7.0).sew(&mut thread, &track, side, 4.0, track.length() - 3.0);
        }
        sheet.stitches(2.0, thread);
        if self.state == TackState::Absent {
            // Nothing holds: the corner begins to tear, the lining shows.
            let rim = [
                (56.0, 45.0),
                (67.0, 35.0),
                (79.0, 27.0),
                (88.0, 19.0),
                (101.0, 13.0),
                (98.0, 20.0),
                (104.0, 24.0),
                (95.0, 30.0),
                (92.0, 38.0),
                (82.0, 39.0),
                (74.0, 46.0),
                (68.0, 44.0),
                (56.0, 45.0),
            ];
            sheet.stroke(Ink::Edge, 2.4, Pen::with(|pen| _ = pen.outline(&rim)));
            sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.outline(&rim)));
            let torn = Track::through(&rim);
            sheet.stroke(Ink::ClothLight, 1.2, Pen::with(|pen| fringe(pen, &torn, -0.5, 5.0, 3.6, chance)));
        }
        let mut tack = Pen::new();
        match self.state {
            TackState::Absent => {}
            TackState::Loose => {
                let bar = Track::through(&[(84.0, 14.0), (84.0, 50.0)]);
                overlock(&mut tack, &bar, -6.0, 7.0, 9.5);
                tack.at(78.0, 50.0).bend(88.0 + chance.about(4.0), 64.0, 74.0, 66.0).bend(84.0, 74.0, 96.0, 70.0);
                sheet.stitches(2.0, tack);
            }
            TackState::Dense => {
                let bar = Track::through(&[(84.0, 12.0), (84.0, 52.0)]);
                overlock(&mut tack, &bar, -6.5, 6.5, 3.0);
                sheet.stitches(2.3, tack);
            }
            TackState::Riveted => {
                sheet.fill(Ink::Shade, Pen::with(|pen| _ = pen.circle(84.8, 33.4, 12.4)));
                sheet.fill(Ink::Metal, Pen::with(|pen| _ = pen.circle(84.0, 32.0, 11.6)));
                sheet.stroke(Ink::Edge, 1.0, Pen::with(|pen| _ = pen.circle(84.0, 32.0, 11.6).circle(84.0, 32.0, 5.0)));
                sheet.stroke(Ink::Paper, 1.6, Pen::with(|pen| _ = pen.at(76.5, 28.0).bend(78.0, 24.5, 82.0, 23.4)));
            }
        }
    }
}

impl StressPoints {
    /// The ten places on the drawn front: fly base, pocket ends, loop ends.
    const PLACES: [(f64, f64); 10] = [
        (60.0, 50.0),
        (66.0, 37.0),
        (40.0, 25.0),
        (80.0, 25.0),
        (24.0, 42.0),
        (96.0, 42.0),
        (34.0, 8.0),
        (86.0, 8.0),
        (34.0, 18.0),
        (86.0, 18.0),
    ];

    pub(super) fn words(&self) -> String {
        let mut words = super::words::Words::new();
        words.count(
            self.secured.min(10),
            to_say!("{count} of ten stress points secured"),
            to_say!("{count} of ten stress points secured"),
        );
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let front = |pen: &mut Pen| {
            pen.at(26.0, 6.0).to(94.0, 6.0).bend(100.0, 36.0, 104.0, 86.0).to(66.0, 86.0).bend(64.0, 66.0, 60.0, 54.0);
            pen.bend(56.0, 66.0, 54.0, 86.0).to(16.0, 86.0).bend(20.0, 36.0, 26.0, 6.0).close();
        };
        sheet.fill(Ink::Cloth, Pen::with(front));
        sheet.stroke(Ink::Edge, 1.4, Pen::with(front));
        let lines = Pen::with(|pen| {
            pen.line(25.0, 18.0, 95.0, 18.0).line(60.0, 6.0, 60.0, 54.0);
            pen.at(40.0, 18.0).bend(38.0, 36.0, 20.0, 42.0).at(80.0, 18.0).bend(82.0, 36.0, 100.0, 42.0);
            pen.at(67.0, 18.0).to(67.0, 34.0).bend(66.0, 44.0, 60.0, 48.0);
        });
        sheet.stroke(Ink::ClothPale, 1.1, lines);
        let (mut held, mut open) = (Pen::new(), Pen::new());
        for (index, (x, y)) in StressPoints::PLACES.into_iter().enumerate() {
            let pen = if index < usize::from(self.secured.min(10)) { &mut held } else { &mut open };
            pen.circle(x, y, 4.0);
        }
        sheet.fill(Ink::ThreadLight, held.clone());
        sheet.stroke(Ink::Edge, 1.0, held);
        sheet.fill(Ink::Edge, open.clone());
        sheet.stroke(Ink::Paper, 1.4, open);
    }
}

/// The cloth that a button or rivet sits in, in section: one ply or three.
fn plies(sheet: &mut Sheet, backed: bool) -> f64 {
    sheet.area(Ink::Paper, FRAME);
    let ys: &[f64] = if backed { &[46.0, 53.0, 60.0] } else { &[50.0] };
    for &y in ys {
        sheet.ply(Ink::Cloth, 6.4, Pen::with(|pen| _ = pen.line(-6.0, y, 126.0, y)));
    }
    if backed { 63.6 } else { 53.6 }
}

/// Points turned about the middle of the cap by a lean, and lifted.
fn leaned(points: &[(f64, f64)], lean: f64, lift: f64) -> Vec<(f64, f64)> {
    let (sin, cos) = lean.sin_cos();
    points
        .iter()
        .map(|&(x, y)| (60.0 + (x - 60.0) * cos - (y - 44.0) * sin, 44.0 - lift + (x - 60.0) * sin + (y - 44.0) * cos))
        .collect()
}

fn metal(sheet: &mut Sheet, points: &[(f64, f64)]) {
    sheet.fill(Ink::Metal, Pen::with(|pen| _ = pen.outline(points)));
    sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.outline(points)));
}

impl Button {
    pub(super) fn words(&self) -> String {
        held(if self.cap_mm < 1.2 { say!("a thin button") } else { say!("a solid button") }, self.backed, self.loose)
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let foot = plies(sheet, self.backed);
        let cap = 2.0 + 3.0 * clamp(self.cap_mm, 0.5, 4.0);
        let (lean, lift) = if self.loose { (-0.2, 5.0) } else { (0.0, 0.0) };
        let top = 30.0;
        if self.backed {
            metal(sheet, &[(44.0, foot), (76.0, foot), (76.0, foot + 4.5), (44.0, foot + 4.5)]);
        }
        metal(sheet, &leaned(&[(58.0, top), (62.0, top), (62.0, foot + 6.0), (58.0, foot + 6.0)], lean * 0.5, lift * 0.4));
        let base = if self.backed { 41.8 } else { 45.8 };
        metal(sheet, &leaned(&[(53.0, top), (67.0, top), (68.5, base), (51.5, base)], lean, lift));
        metal(
            sheet,
            &leaned(
                &[
                    (32.0, top),
                    (32.0, top - cap * 0.6),
                    (38.0, top - cap),
                    (82.0, top - cap),
                    (88.0, top - cap * 0.6),
                    (88.0, top),
                ],
                lean,
                lift,
            ),
        );
        nail_head(sheet, foot, self.backed, lean);
        if cap > 5.0 {
            shine(sheet, top - cap * 0.62, lean, lift);
        }
    }
}

/// The nail's head on the wrong side; wide when backed, a bare point when not.
fn nail_head(sheet: &mut Sheet, foot: f64, backed: bool, lean: f64) {
    let half = if backed { 10.0 } else { 5.0 };
    let y = foot + if backed { 4.5 } else { 2.0 } - lean * 16.0;
    metal(sheet, &[(60.0 - half, y), (60.0 + half, y), (60.0 + half * 0.7, y + 4.0), (60.0 - half * 0.7, y + 4.0)]);
}

fn shine(sheet: &mut Sheet, y: f64, lean: f64, lift: f64) {
    sheet.stroke(Ink::Paper, 1.4, Pen::with(|pen| _ = pen.points(&leaned(&[(48.0, y), (60.0, y)], lean, lift))));
}

/// The words shared by button and rivet: what it is, how it is held, whether it moves.
fn held(what: &str, backed: bool, loose: bool) -> String {
    let held = if backed {
        say!("{what} in section, backed by layers of cloth and a washer", what)
    } else {
        say!("{what} in section, through one layer of cloth", what)
    };
    format!("{held}, {}", if loose { say!("button or rivet" | "loose") } else { say!("button or rivet" | "fixed") })
}

impl Rivet {
    pub(super) fn words(&self) -> String {
        held(if self.head_mm < 1.2 { say!("a thin rivet") } else { say!("a solid rivet") }, self.backed, self.loose)
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let foot = plies(sheet, self.backed);
        let head = 2.0 + 4.0 * clamp(self.head_mm, 0.3, 3.0);
        let (lean, lift) = if self.loose { (-0.16, 6.0) } else { (0.0, 0.0) };
        let top = if self.backed { 42.4 } else { 46.4 };
        metal(sheet, &leaned(&[(55.5, top), (64.5, top), (64.5, foot + 5.0), (55.5, foot + 5.0)], lean * 0.5, lift * 0.5));
        metal(
            sheet,
            &leaned(
                &[
                    (40.0, top),
                    (43.0, top - head * 0.6),
                    (50.0, top - head),
                    (70.0, top - head),
                    (77.0, top - head * 0.6),
                    (80.0, top),
                ],
                lean,
                lift,
            ),
        );
        if self.backed {
            metal(sheet, &[(36.0, foot), (84.0, foot), (77.0, foot + 6.0), (43.0, foot + 6.0)]);
        }
        nail_head(sheet, foot, self.backed, lean);
        if head > 5.5 {
            shine(sheet, top - head * 0.5, lean, lift);
        }
    }
}
