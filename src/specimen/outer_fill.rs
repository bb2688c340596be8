//! A filled jacket: how full its chambers are, what comes out of them, and the rows that quilt them.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track, leaf};
use super::words::Words;
use crate::{say, to_say};

/// Three chambers before the light, a seam across them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FillPanels {
    /// Large places without filling.
    Empty,
    /// Thick and thin.
    Uneven,
    /// Even, thin only in corners.
    Even,
    /// Full up to the corners.
    Full,
}

/// A quilted seam after rubbing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FillLeak {
    /// Fibres or feathers that came out, 0 to 12.
    pub wisps: u8,
    /// Whether the cloth is closely woven.
    pub close: bool,
}

/// Rows of quilting where two panels meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quilt {
    /// Stitches left out.
    Skips,
    /// Rows that wander.
    Uneven,
    /// Even rows that miss each other at the seam.
    Even,
    /// Even rows that meet.
    Meets,
}

/// Rows of quilting with thread ends left hanging.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct QuiltTails {
    /// How many, 0 to 14.
    pub ends: u8,
}

/// Where rows of quilting lie.
const ROWS: [f64; 3] = [14.0, 40.0, 66.0];

/// The soft shine along the chambers between rows.
fn shine(sheet: &mut Sheet, reach: f64) {
    let light = Pen::with(|pen| {
        for y in [1.0, 27.0, 53.0, 79.0] {
            for (a, b) in [
                (60.0 - 54.0 * reach, 60.0 - 58.0 * (1.0 - reach) - 3.0),
                (60.0 + 58.0 * (1.0 - reach) + 3.0, 60.0 + 54.0 * reach),
            ] {
                pen.at(a, y).bend((a + b) / 2.0, y - 4.0, b, y);
            }
        }
    });
    sheet.stroke(Ink::Weft, 2.6, light);
}

impl FillPanels {
    pub(super) fn words(self) -> &'static str {
        match self {
            FillPanels::Empty => say!("chambers before the light, large places without filling"),
            FillPanels::Uneven => say!("chambers before the light, thick and thin places"),
            FillPanels::Even => say!("chambers before the light, even, a little thin where rows meet the seam"),
            FillPanels::Full => say!("chambers before the light, even and plump up to the seam"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothLight, FRAME);
        // Light that comes through: middle, half width and half height of each place.
        let through: &[(f64, f64, f64, f64)] = match self {
            FillPanels::Empty => &[
                (24.0, 27.0, 17.0, 9.0),
                (96.0, 26.0, 15.0, 10.0),
                (82.0, 54.0, 17.0, 9.0),
                (22.0, 75.0, 16.0, 6.0),
                (30.0, 3.0, 18.0, 8.0),
            ],
            FillPanels::Uneven => {
                &[(28.0, 27.0, 10.0, 5.0), (90.0, 53.0, 11.0, 5.0), (98.0, 3.0, 10.0, 5.0), (46.0, 76.0, 9.0, 4.0)]
            }
            FillPanels::Even => &[(60.0, 14.0, 7.0, 4.0), (60.0, 40.0, 7.0, 4.0), (60.0, 66.0, 7.0, 4.0)],
            FillPanels::Full => &[],
        };
        let (mut thin, mut gone) = (Pen::new(), Pen::new());
        for &(x, y, wide, high) in through {
            thin.oval(x, y, wide, high);
            gone.oval(x, y, wide * 0.7, high * 0.66);
        }
        sheet.fill(Ink::ClothPale, thin);
        if matches!(self, FillPanels::Empty | FillPanels::Uneven) {
            sheet.fill(if self == FillPanels::Empty { Ink::Paper } else { Ink::Weft }, gone);
        }
        if self == FillPanels::Full {
            shine(sheet, 0.97);
        } else if self == FillPanels::Even {
            shine(sheet, 0.8);
        }
        let rows = Pen::with(|pen| {
            for y in ROWS {
                Row::of(5.0).sew(pen, &Track::level(-5.0, 125.0, y), 0.0, 0.0, 130.0);
            }
        });
        sheet.stroke(Ink::Edge, 1.5, rows);
        sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 85.0)));
    }
}

impl FillLeak {
    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("a seam of a filled jacket after rubbing"));
        words.count(
            self.wisps.min(12),
            to_say!("{count} fibre or feather coming out"),
            to_say!("{count} fibres or feathers coming out"),
        );
        if self.close {
            words.and(say!("the cloth fine and close"));
        }
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::ClothLight, FRAME);
        let pitch = if self.close { 2.4 } else { 5.0 };
        let weave = Pen::with(|pen| _ = pen.grid(FRAME, pitch));
        sheet.stroke(Ink::ClothPale, 0.5, weave);
        sheet.stroke(Ink::Cloth, 1.4, Pen::with(|pen| _ = pen.line(-5.0, 44.0, 125.0, 44.0)));
        let row = Pen::with(|pen| _ = Row::of(6.0).sew(pen, &Track::level(-5.0, 125.0, 50.0), 0.0, 0.0, 130.0));
        sheet.stitches(1.6, row);
        let many = self.wisps.min(12);
        let (mut vanes, mut quills) = (Pen::new(), Pen::new());
        for wisp in 0..many {
            let x = 4.0 + 112.0 * (f64::from(wisp) + 0.5 + chance.about(0.3)) / f64::from(many);
            let (lean, tall) = (chance.about(7.0), chance.between(11.0, 24.0));
            let (root, tip) = ((x, 50.0), (x + lean, 50.0 - tall));
            leaf(&mut vanes, (x + lean * 0.25, 50.0 - tall * 0.3), tip, 4.6);
            quills.line(root.0, root.1, tip.0, tip.1);
        }
        sheet.fill(Ink::Paper, vanes.clone());
        sheet.stroke(Ink::Edge, 0.8, vanes);
        sheet.stroke(Ink::Edge, 1.0, quills);
    }
}

impl Quilt {
    pub(super) fn words(self) -> &'static str {
        match self {
            Quilt::Skips => say!("rows of quilting with stitches left out, a long loose thread"),
            Quilt::Uneven => say!("rows of quilting that wander and miss each other at the seam"),
            Quilt::Even => say!("even rows of quilting that miss each other at the seam"),
            Quilt::Meets => say!("even rows of quilting that meet at the seam"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        let off = match self {
            Quilt::Skips | Quilt::Even => 4.0,
            Quilt::Uneven => 7.0,
            Quilt::Meets => 0.0,
        };
        let (mut thread, mut dents, mut long) = (Pen::new(), Pen::new(), Pen::new());
        for (place, y) in ROWS.into_iter().enumerate() {
            for (from, shift) in [(-5.0, 0.0), (60.0, off)] {
                let wander = if self == Quilt::Uneven { 3.4 } else { 0.0 };
                let points: Vec<(f64, f64)> = (0..=13)
                    .map(|step| from + 5.0 * f64::from(step))
                    .map(|x| (x, y + shift + wander * (x * 0.13 + y).sin()))
                    .collect();
                let track = Track::through(&points);
                dents.points(&points);
                if self == Quilt::Skips && (place == 1) == (from > 0.0) {
                    Row::of(5.0).sew(&mut thread, &track, 0.0, 0.0, 20.0);
                    Row::of(5.0).sew(&mut thread, &track, 0.0, 44.0, 65.0);
                    long.at(from + 19.0, y + shift).bend(from + 32.0, y + shift - 13.0, from + 44.0, y + shift);
                } else {
                    Row::of(5.0).sew(&mut thread, &track, 0.0, 0.0, track.length());
                }
            }
        }
        sheet.stroke(Ink::ClothLight, 5.0, dents);
        shine(sheet, 0.9);
        sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 85.0)));
        sheet.stroke(Ink::Edge, 1.8, thread);
        sheet.stroke(Ink::Thread, 1.5, long);
    }
}

impl QuiltTails {
    pub(super) fn told(self) -> u8 {
        self.ends.min(14)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("rows of quilting"));
        words.count(self.told(), to_say!("{count} thread end left hanging"), to_say!("{count} thread ends left hanging"));
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        Quilt::Meets.draw(sheet);
        let ends = self.told();
        let tails = Pen::with(|pen| {
            for end in 0..ends {
                let x = 6.0 + 108.0 * (f64::from(end) + 0.5 + chance.about(0.3)) / f64::from(ends);
                let y = ROWS[usize::from(end) % 2];
                let (swing, fall) = (chance.about(6.0), chance.between(10.0, 20.0));
                pen.at(x, y).bend(x + swing, y + fall * 0.5, x - swing * 0.5, y + fall);
            }
        });
        sheet.stroke(Ink::Thread, 1.6, tails);
    }
}
