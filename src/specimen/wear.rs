//! The harm that finishing does, and tears that were meant.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp, feather, fringe, overlock};
use crate::say;

/// What finishing has done to the cloth at a pocket edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wear {
    /// The harm.
    pub harm: Harm,
}

/// Harm done by finishing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Harm {
    /// None.
    None,
    /// Slight wear on the edge.
    Edge,
    /// Thin spots where the weft shows.
    Thin,
    /// Holes or an edge worn through.
    Hole,
}

impl Wear {
    pub(super) fn words(&self) -> String {
        String::from(match self.harm {
            Harm::None => say!("a whole edge and whole cloth"),
            Harm::Edge => say!("slight wear along the edge"),
            Harm::Thin => say!("thin spots where the weft shows"),
            Harm::Hole => say!("a hole and an edge worn through"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        let top = 18.0;
        sheet.area(Ink::Paper, Area { height: top, ..FRAME });
        let edge = Track::level(0.0, 120.0, top);
        sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.line(-5.0, top, 125.0, top)));
        sheet.stitches(2.2, Pen::with(|pen| _ = Row::of(8.0).sew(pen, &edge, 9.0, 0.0, 120.0)));
        let spot = (64.0, 54.0);
        match self.harm {
            Harm::None => {}
            Harm::Edge | Harm::Thin | Harm::Hole => {
                let mut worn = Pen::new();
                for step in 0..20 {
                    let x = f64::from(step) * 6.2 + chance.about(1.4);
                    worn.line(x, top + 0.6, x + chance.between(2.0, 5.0), top + 0.6 + chance.about(0.5));
                    worn.line(x, top + 1.5, x + chance.about(1.0), top + chance.between(2.5, 5.0));
                }
                sheet.stroke(Ink::ClothPale, 1.7, worn);
            }
        }
        if matches!(self.harm, Harm::Thin | Harm::Hole) {
            let (mut soft, mut bare) = (Pen::new(), Pen::new());
            feather(&mut soft, spot, (34.0, 18.0), 1.8, 0.3, chance);
            sheet.stroke(Ink::ClothLight, 1.5, soft);
            feather(&mut bare, spot, (22.0, 11.0), 2.2, 0.3, chance);
            sheet.stroke(Ink::Weft, 1.5, bare);
            sheet.stroke(
                Ink::ClothLight,
                0.9,
                Pen::with(|pen| {
                    (0..7).for_each(|i| _ = pen.line(46.0, 45.0 + f64::from(i) * 3.0, 82.0, 45.0 + f64::from(i) * 3.0))
                }),
            );
        }
        if self.harm == Harm::Hole {
            let rim = [
                (46.0, 53.0),
                (52.0, 46.0),
                (62.0, 48.0),
                (70.0, 44.0),
                (80.0, 50.0),
                (83.0, 57.0),
                (74.0, 63.0),
                (63.0, 61.0),
                (54.0, 64.0),
                (46.0, 53.0),
            ];
            sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.outline(&rim[..9])));
            let notch = [(18.0, top - 2.0), (22.0, 24.0), (29.0, 22.0), (34.0, 28.0), (41.0, 23.0), (46.0, top - 2.0)];
            sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&notch)));
            let mut yarns = Pen::new();
            fringe(&mut yarns, &Track::through(&rim), 0.5, 7.0, 3.4, chance);
            fringe(&mut yarns, &Track::through(&notch), 0.5, -7.0, 3.0, chance);
            sheet.stroke(Ink::Weft, 1.2, yarns);
        }
    }
}

/// A hole that was meant to be there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tear {
    /// Share of its rim that is sewn, 0 (none) to 1 (all round).
    pub sewn: f64,
    /// Whether cloth lies behind it.
    pub backed: bool,
}

impl Tear {
    pub(super) fn words(&self) -> String {
        let mut words = String::from(match clamp(self.sewn, 0.0, 1.0) {
            sewn if sewn < 0.05 => say!("a meant hole, its rim free"),
            sewn if sewn < 0.95 => say!("a meant hole, its rim sewn in places"),
            _ => say!("a meant hole, sewn all round"),
        });
        words.push_str(", ");
        words.push_str(if self.backed { say!("cloth behind it") } else { say!("nothing behind it") });
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        self.at(sheet, (60.0, 41.0), (37.0, 21.0), chance);
    }

    /// The tear at a place, of a size.
    pub(super) fn at(&self, sheet: &mut Sheet, (x, y): (f64, f64), (rx, ry): (f64, f64), chance: &mut Chance) {
        let sewn = clamp(self.sewn, 0.0, 1.0);
        let hole = Pen::with(|pen| _ = pen.oval(x, y, rx, ry));
        if self.backed {
            // The patch is larger than the hole: its outline shows through.
            sheet.stroke(
                Ink::ClothDark,
                1.6,
                Pen::with(|pen| _ = pen.rect(x - rx - 6.0, y - ry - 6.0, 2.0 * rx + 12.0, 2.0 * ry + 12.0)),
            );
        }
        sheet.fill(if self.backed { Ink::ClothLight } else { Ink::Edge }, hole.clone());
        sheet.stroke(Ink::ClothPale, 1.6, hole);
        wefts(sheet, (x, y), (rx, ry), 0.8 * (1.0 - sewn) * if self.backed { 0.3 } else { 1.0 }, chance);
        let ring: Vec<(f64, f64)> = (0..=24)
            .map(|i| (-2.4 + f64::from(i) * sewn * std::f64::consts::TAU / 24.0).sin_cos())
            .map(|(sin, cos)| (x + (rx + 2.0) * cos, y + (ry + 2.0) * sin))
            .collect();
        let track = Track::through(&ring);
        if sewn > 0.05 {
            sheet.stitches(1.6, Pen::with(|pen| overlock(pen, &track, 2.4, -3.0, 4.6)));
        } else {
            sheet.stroke(
                Ink::Weft,
                1.1,
                Pen::with(|pen| fringe(pen, &Track::through(&ellipse((x, y), (rx, ry))), -0.5, -6.0, 5.0, chance)),
            );
        }
    }
}

/// Points round an ellipse.
fn ellipse((x, y): (f64, f64), (rx, ry): (f64, f64)) -> Vec<(f64, f64)> {
    (0..=24)
        .map(|i| (f64::from(i) * std::f64::consts::TAU / 24.0).sin_cos())
        .map(|(sin, cos)| (x + rx * cos, y + ry * sin))
        .collect()
}

/// Weft yarns bared in a tear; `broken` of them hang.
fn wefts(sheet: &mut Sheet, (x, y): (f64, f64), (rx, ry): (f64, f64), broken: f64, chance: &mut Chance) {
    let mut pen = Pen::new();
    let mut down = -ry + 1.4;
    while down < ry {
        let half = rx * (1.0 - (down / ry).powi(2)).max(0.0).sqrt() + 2.0;
        if chance.share() < broken {
            let stop = x - half + half * chance.between(0.3, 0.9);
            pen.at(x - half, y + down).bend(stop, y + down, stop + chance.about(3.0), y + down + chance.between(5.0, 12.0));
            if chance.share() < 0.6 {
                let stop = x + half - half * chance.between(0.2, 0.6);
                pen.at(x + half, y + down).bend(stop, y + down, stop + 1.0, y + down + chance.between(4.0, 10.0));
            }
        } else {
            pen.line(x - half, y + down, x + half, y + down + chance.about(0.8));
        }
        down += 2.7;
    }
    sheet.stroke(Ink::Weft, 1.3, pen);
}
