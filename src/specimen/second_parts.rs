//! What wearing has done to what closes and what lines a piece.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, fringe};
use super::stitching::ridge;
use crate::say;

/// A row of buttons.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fastening {
    /// One is gone, and the cloth under it torn.
    Fails,
    /// One is missing, and one of another kind.
    Missing,
    /// One hangs by a long thread.
    Loose,
    /// All alike and firm.
    Firm,
}

/// A lining beside the seam that holds it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WornLining {
    /// Slits with frayed edges.
    Shreds,
    /// Open at the seam, the cloth whole.
    Split,
    /// Worn thin and marked in a place.
    Thin,
    /// Whole.
    Whole,
}

/// Buttons at these places, with their thread.
fn buttons(sheet: &mut Sheet, ink: Ink, radius: f64, places: &[(f64, f64)]) {
    let disks = Pen::with(|pen| places.iter().for_each(|&(x, y)| _ = pen.circle(x, y, radius)));
    sheet.fill(ink, disks.clone());
    sheet.stroke(Ink::Edge, 1.3, disks);
    let thread = Pen::with(|pen| {
        for &(x, y) in places {
            pen.line(x - 2.6, y - 2.6, x + 2.6, y + 2.6).line(x - 2.6, y + 2.6, x + 2.6, y - 2.6);
        }
    });
    sheet.stroke(Ink::Thread, 1.5, thread);
}

impl Fastening {
    pub(super) fn words(self) -> &'static str {
        match self {
            Fastening::Fails => say!("three places for buttons, the middle one gone with a hole torn in the cloth"),
            Fastening::Missing => say!("three places for buttons, the middle one empty, the last of another kind"),
            Fastening::Loose => say!("three buttons, the middle one hanging by a long thread"),
            Fastening::Firm => say!("three buttons, alike and firm"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        let band = Area { x: -5.0, y: 20.0, width: 130.0, height: 42.0 };
        sheet.area(Ink::ClothLight, band);
        sheet.twill(Ink::Cloth, band, 3.9);
        for y in [20.0, 62.0] {
            ridge(sheet, &[(-5.0, y), (125.0, y)]);
        }
        let (first, middle, last) = ((22.0, 41.0), (60.0, 41.0), (98.0, 41.0));
        match self {
            Fastening::Fails => {
                let rim = [(50.0, 40.0), (56.0, 33.0), (64.0, 35.0), (71.0, 41.0), (65.0, 49.0), (56.0, 48.0)];
                sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.outline(&rim)));
                sheet.stroke(Ink::Weft, 1.2, Pen::with(|pen| fringe(pen, &Track::through(&rim), 0.5, 6.0, 3.0, chance)));
                buttons(sheet, Ink::Weft, 11.0, &[first, last]);
            }
            Fastening::Missing => {
                let stubs = Pen::with(|pen| {
                    _ = pen.line(57.0, 38.0, 54.0, 33.0).line(62.0, 42.0, 67.0, 45.0).line(59.0, 44.0, 57.0, 49.0)
                });
                sheet.stroke(Ink::Thread, 1.5, stubs);
                buttons(sheet, Ink::Weft, 11.0, &[first]);
                buttons(sheet, Ink::Metal, 8.0, &[last]);
            }
            Fastening::Loose => {
                let shank = Pen::with(|pen| {
                    _ = pen.at(60.0, 34.0).bend(66.0, 44.0, 61.0, 54.0).at(62.0, 34.0).bend(58.0, 46.0, 64.0, 54.0)
                });
                sheet.stitches(1.5, shank);
                buttons(sheet, Ink::Weft, 11.0, &[first, (63.0, 60.0), last]);
            }
            Fastening::Firm => buttons(sheet, Ink::Weft, 11.0, &[first, middle, last]),
        }
    }
}

impl WornLining {
    pub(super) fn words(self) -> &'static str {
        match self {
            WornLining::Shreds => say!("a lining with long slits, their edges frayed"),
            WornLining::Split => say!("a lining open along its seam, the cloth beside it whole"),
            WornLining::Thin => say!("a lining worn thin and marked in one place"),
            WornLining::Whole => say!("a lining, whole and clean"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::Weft, FRAME);
        let folds = Pen::with(|pen| {
            for x in [58.0, 82.0, 104.0] {
                pen.at(x, -5.0).bend(x + 5.0, 30.0, x - 2.0, 85.0);
            }
        });
        sheet.stroke(Ink::Paper, 3.0, folds);
        let outer = Area { x: -5.0, y: -5.0, width: 39.0, height: 90.0 };
        sheet.area(Ink::Cloth, outer);
        sheet.twill(Ink::ClothDark, outer, 3.9);
        let seam = Track::through(&[(37.0, -5.0), (37.0, 85.0)]);
        let sewn = |from: f64, to: f64| Pen::with(|pen| _ = Row::of(6.4).sew(pen, &seam, 0.0, from, to));
        match self {
            WornLining::Split => {
                sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.at(34.0, 14.0).bend(66.0, 40.0, 34.0, 68.0).close()));
                sheet.stroke(Ink::Thread, 1.4, Pen::with(|pen| _ = pen.at(34.0, 14.0).bend(66.0, 40.0, 34.0, 68.0)));
                let mut thread = sewn(0.0, 18.0);
                _ = Row::of(6.4).sew(&mut thread, &seam, 0.0, 74.0, 90.0);
                sheet.stroke(Ink::Thread, 1.6, thread);
            }
            WornLining::Shreds => {
                sheet.stroke(Ink::Thread, 1.6, sewn(0.0, 90.0));
                let slits = [((54.0, 12.0), (50.0, 66.0)), ((72.0, 22.0), (76.0, 74.0)), ((92.0, 8.0), (90.0, 52.0))];
                let (mut open, mut yarns) = (Pen::new(), Pen::new());
                for (from, to) in slits {
                    super::pen::leaf(&mut open, from, to, 7.0);
                    fringe(&mut yarns, &Track::through(&[from, to]), -4.0, 9.0, 3.4, chance);
                }
                sheet.fill(Ink::Cloth, open);
                sheet.stroke(Ink::Paper, 1.0, yarns);
            }
            WornLining::Thin => {
                sheet.stroke(Ink::Thread, 1.6, sewn(0.0, 90.0));
                let thin = Area { x: 46.0, y: 18.0, width: 36.0, height: 40.0 };
                sheet.stroke(Ink::ClothPale, 1.0, Pen::with(|pen| _ = pen.hatch(thin, 2.6, 0.0)));
                let mark = Pen::with(|pen| _ = pen.oval(64.0, 38.0, 21.0, 23.0));
                sheet.dash(Ink::ThreadLight, 2.0, 9.0, 5.0, mark);
            }
            WornLining::Whole => sheet.stroke(Ink::Thread, 1.6, sewn(0.0, 90.0)),
        }
    }
}
