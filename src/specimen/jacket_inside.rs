//! A tailored jacket from inside: how the lining hangs at the hem, and how much cloth a seam has to spare.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp, fringe, overlock};
use super::words::Words;
use crate::{say, to_say};

/// The lining where it meets the hem of the jacket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LiningHem {
    /// It hangs out below the hem.
    HangsOut,
    /// It is sewn down tight and pulls the hem.
    Tight,
    /// It has a fold to spare above the hem, and a pleat at the centre back.
    Eased,
    /// The same, finely sewn, of strong cloth.
    EasedFine,
}

/// A seam from inside with the cloth left beside it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpareCloth {
    /// Cloth beyond the seam line on each side in mm, 0 to 26.
    pub width_mm: f64,
    /// Whether its edges are bound or closely overcast.
    pub finished: bool,
}

impl LiningHem {
    pub(super) fn words(self) -> String {
        String::from(match self {
            LiningHem::HangsOut => say!("a lining that hangs out below the hem"),
            LiningHem::Tight => say!("a lining sewn down tight, pulling at the hem"),
            LiningHem::Eased => say!("a lining with a fold to spare at the hem and a pleat"),
            LiningHem::EasedFine => say!("a lining with a fold to spare and a pleat, finely sewn, of strong twill"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let hem = 70.0;
        let eased = matches!(self, LiningHem::Eased | LiningHem::EasedFine);
        // The turned-up cloth of the jacket.
        let turned = Pen::with(|pen| {
            pen.at(-6.0, 44.0).to(126.0, 44.0).to(126.0, hem);
            if self == LiningHem::Tight {
                pen.bend(110.0, hem - 9.0, 94.0, hem).bend(78.0, hem - 9.0, 60.0, hem);
                pen.bend(42.0, hem - 9.0, 26.0, hem).bend(10.0, hem - 9.0, -6.0, hem);
            } else {
                pen.to(-6.0, hem);
            }
            pen.close();
        });
        sheet.fill(Ink::Cloth, turned.clone());
        sheet.stroke(Ink::Edge, 1.5, turned);
        let low = match self {
            LiningHem::HangsOut => 60.0,
            LiningHem::Tight => 55.0,
            LiningHem::Eased | LiningHem::EasedFine => 58.0,
        };
        let lining = Pen::with(|pen| {
            pen.at(-6.0, -6.0).to(126.0, -6.0).to(126.0, low);
            if self == LiningHem::HangsOut {
                pen.to(92.0, low).bend(84.0, 80.0, 62.0, 80.0).bend(36.0, 79.0, 30.0, low).to(-6.0, low);
            } else {
                pen.to(-6.0, low);
            }
            pen.close();
        });
        sheet.fill(Ink::Weft, lining.clone());
        if self == LiningHem::EasedFine {
            sheet.twill(Ink::ClothPale, Area { x: 0.0, y: 0.0, width: 120.0, height: 50.0 }, 4.4);
        }
        sheet.stroke(Ink::Edge, 1.5, lining);
        if eased {
            // The fold that gives, and the pleat at the centre back.
            sheet.stroke(Ink::Shade, 3.0, Pen::with(|pen| _ = pen.line(-6.0, 55.0, 126.0, 55.0)));
            let pleat = Pen::with(|pen| {
                pen.line(60.0, -6.0, 60.0, 52.0).at(67.0, -6.0).bend(67.0, 30.0, 60.0, 52.0);
            });
            sheet.stroke(Ink::Edge, 1.4, pleat);
        }
        if self == LiningHem::Tight {
            let drag = Pen::with(|pen| {
                for x in [12.0, 42.0, 76.0, 108.0] {
                    pen.line(x - 6.0, 14.0, x, 53.0).line(x + 7.0, 26.0, x, 53.0);
                }
            });
            sheet.stroke(Ink::Shade, 1.8, drag);
        }
        if self != LiningHem::HangsOut {
            let stitch = if self == LiningHem::EasedFine { 3.6 } else { 7.4 };
            let mut thread = Pen::new();
            Row::of(stitch).sew(&mut thread, &Track::level(0.0, 120.0, low + 1.6), 0.0, 1.0, 119.0);
            sheet.stroke(Ink::ThreadLight, if self == LiningHem::EasedFine { 1.4 } else { 2.0 }, thread);
        }
    }
}

impl SpareCloth {
    /// Drawing units per mm: 26 mm on either side fill the frame.
    pub(super) const MM: f64 = 2.1;

    /// The width that is drawn, in mm.
    pub(super) fn width(&self) -> f64 {
        clamp(self.width_mm, 0.0, 26.0)
    }

    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("a seam from inside"));
        words.number(self.width(), to_say!("{number} millimetres of cloth beside it"));
        words.and(if self.finished { say!("edges finished") } else { say!("edges wrapped coarsely") });
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        let wide = self.width() * SpareCloth::MM;
        let flaps = Pen::with(|pen| _ = pen.rect(60.0 - wide, -6.0, wide * 2.0, 74.0));
        sheet.fill(Ink::Weft, flaps.clone());
        sheet.stroke(Ink::Edge, 1.3, flaps);
        for side in [-1.0, 1.0] {
            let x = 60.0 + side * wide;
            let rim = Track::through(&[(x, -6.0), (x, 67.0)]);
            if self.finished {
                sheet.stroke(Ink::Edge, 4.6, Pen::with(|pen| _ = pen.points(&rim.points)));
                sheet.stroke(Ink::Tape, 3.4, Pen::with(|pen| _ = pen.points(&rim.points)));
            } else {
                let reach = wide.min(4.0) + 1.0;
                sheet.stroke(Ink::Thread, 1.2, Pen::with(|pen| overlock(pen, &rim, -side * 1.0, side * reach, 6.4)));
                sheet.stroke(Ink::Weft, 1.0, Pen::with(|pen| fringe(pen, &rim, -side, -side * 3.0, 9.0, chance)));
            }
        }
        sheet.stroke(Ink::Edge, 2.0, Pen::with(|pen| _ = pen.line(60.0, -6.0, 60.0, 68.0)));
        // A tape against the seam, a tick every 5 mm and a longer one every 10.
        sheet.area(Ink::Paper, Area { x: -6.0, y: 68.0, width: 132.0, height: 18.0 });
        let ticks = Pen::with(|pen| {
            for tick in -5_i32..=5 {
                let x = 60.0 + f64::from(tick) * 5.0 * SpareCloth::MM;
                pen.line(x, 68.0, x, if tick % 2 == 0 { 76.0 } else { 72.6 });
            }
        });
        sheet.stroke(Ink::Edge, 1.3, ticks);
    }
}
