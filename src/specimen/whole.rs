//! Seen from a step back: the waistband at its closing, and what is special about the back.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track, clamp, fringe, leaf};
use super::stitching::MM;
use super::words::Words;
use crate::{say, to_say};

/// The waistband where it closes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Waistband {
    /// How far one end lies above the other in mm, 0 to 10.
    pub step_mm: f64,
    /// How much its width changes along the way in mm, 0 to 6.
    pub width_off_mm: f64,
    /// Whether it ropes diagonally, as when its layers were fed unevenly.
    pub twisted: bool,
    /// Whether the lower row catches it all along.
    pub caught: bool,
    /// Whether its ends are crisp squares.
    pub square: bool,
}

impl Waistband {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("a waistband at its closing"));
        words.and_if(self.twisted, say!("twisted into diagonal ropes"));
        words.and_if(!self.caught, say!("one row missing its edge"));
        let (step, width) = (clamp(self.step_mm, 0.0, 10.0), clamp(self.width_off_mm, 0.0, 6.0));
        words.and_if(width >= 1.0, say!("width changing"));
        words.and(if step >= 3.0 {
            say!("ends on different levels")
        } else if step >= 0.5 {
            say!("ends nearly level")
        } else {
            say!("ends level")
        });
        words.and(if self.square { say!("ends square") } else { say!("ends rounded") });
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        // Half the scale of the stitch pictures: some 96 mm across.
        let scale = MM / 2.0;
        let (step, width) = (clamp(self.step_mm, 0.0, 10.0) * scale, clamp(self.width_off_mm, 0.0, 6.0) * scale);
        sheet.face();
        sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.rect(-5.0, -5.0, 130.0, 24.0 + step)));
        let mut thread = Pen::new();
        // Left over, right under: each half is an outline whose inner end is square or rounded.
        for (outer, end, up) in [(125.0, 54.0, step), (-5.0, 72.0, 0.0)] {
            let way = if outer > end { 1.0 } else { -1.0 };
            let (top, low) = (19.0 + up, 57.0 + up);
            let round = if self.square { 0.0 } else { 9.0 };
            let middle = (outer + end) / 2.0;
            let half = Pen::with(|pen| {
                pen.at(outer, top).bend(middle, top - width, end + way * round, top);
                pen.bend(end, top, end, top + round).to(end - way * round * 0.1, low - round).bend(
                    end,
                    low,
                    end + way * round,
                    low,
                );
                pen.bend(middle, low + width * 2.2, outer, low - width * 0.5).close();
            });
            sheet.fill(Ink::Cloth, half.clone());
            sheet.stroke(Ink::Shade, 2.6, half.clone());
            sheet.stroke(Ink::ClothLight, 1.0, half);
            if self.twisted {
                let ropes = Pen::with(|pen| {
                    let mut x = end + way * 16.0;
                    while (x - outer) * way < 0.0 {
                        leaf(pen, (x + 8.0, top + 4.0), (x - 8.0, low - 4.0), 4.4);
                        x += way * 12.0;
                    }
                });
                sheet.fill(Ink::ClothLight, ropes);
            }
            for (y, bow) in [(top + 5.0, -width), (low - 5.0, width)] {
                let slip = if self.caught || y < 40.0 { 0.0 } else { 15.0 };
                let points: Vec<(f64, f64)> = (0..=10)
                    .map(|i| {
                        let on = f64::from(i) / 10.0;
                        // A row that slips off the band runs below its edge for a while.
                        let sink = slip * (1.0 - (2.0 * on - 1.0).powi(2)).powi(2) * if way < 0.0 { 1.0 } else { 0.0 };
                        (outer + (end + way * 5.0 - outer) * on, y + bow * 2.0 * on * (1.0 - on) + sink)
                    })
                    .collect();
                let track = Track::through(&points);
                Row::of(6.0).sew(&mut thread, &track, 0.0, 0.0, track.length());
            }
        }
        sheet.stitches(1.8, thread);
        if !self.caught {
            let open = Track::level(18.0, 46.0, 57.0);
            sheet.stroke(Ink::Weft, 1.1, Pen::with(|pen| fringe(pen, &open, 0.0, 6.0, 2.8, chance)));
        }
        sheet.fill(Ink::Metal, Pen::with(|pen| _ = pen.circle(63.0, 38.0, 6.6)));
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.circle(63.0, 38.0, 6.6).circle(63.0, 38.0, 3.6)));
    }
}

/// The back of a pair with special details on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Details {
    /// How many, 0 to 6.
    pub count: u8,
}

impl Details {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("the back of a pair"));
        match self.count.min(6) {
            0 => words.and(say!("no special details")),
            count => words.count(count, to_say!("{count} special detail"), to_say!("{count} special details")),
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let count = self.count.min(6);
        sheet.area(Ink::Paper, FRAME);
        let back = |pen: &mut Pen| {
            pen.at(24.0, 5.0).to(96.0, 5.0).bend(104.0, 40.0, 106.0, 86.0).to(66.0, 86.0).bend(64.0, 76.0, 60.0, 70.0);
            pen.bend(56.0, 76.0, 54.0, 86.0).to(14.0, 86.0).bend(16.0, 40.0, 24.0, 5.0).close();
        };
        sheet.fill(Ink::Cloth, Pen::with(back));
        sheet.stroke(Ink::Edge, 1.4, Pen::with(back));
        let pocket = |pen: &mut Pen, x: f64| {
            _ = pen.outline(&[(x, 34.0), (x + 26.0, 34.0), (x + 24.0, 58.0), (x + 13.0, 64.0), (x + 2.0, 58.0)])
        };
        let lines = Pen::with(|pen| {
            pen.line(22.0, 15.0, 98.0, 15.0).line(60.0, 15.0, 60.0, 70.0);
            pen.points(&[(20.0, 23.0), (60.0, 31.0), (100.0, 23.0)]);
            pocket(pen, 27.0);
            pocket(pen, 67.0);
        });
        sheet.stroke(Ink::ClothPale, 1.1, lines);
        let mut held = Pen::new();
        if count > 0 {
            let patch = Pen::with(|pen| _ = pen.rect(70.0, 7.0, 20.0, 13.0));
            sheet.fill(Ink::Metal, patch.clone());
            sheet.stroke(Ink::Edge, 1.2, patch);
        }
        if count > 1 {
            // A plain lozenge on each pocket: a shape that is nobody's mark.
            for x in [40.0, 80.0] {
                held.outline(&[(x, 41.0), (x + 7.0, 48.5), (x, 56.0), (x - 7.0, 48.5)]);
            }
        }
        if count > 4 {
            held.line(20.0, 70.0, 44.0, 70.0).line(19.6, 74.0, 44.4, 74.0).line(19.2, 78.0, 44.8, 78.0);
        }
        sheet.stitches(1.6, held);
        if count > 2 {
            let loops = Pen::with(|pen| _ = pen.line(36.0, 4.0, 36.0, 17.0).line(60.0, 4.0, 60.0, 17.0));
            sheet.stroke(Ink::Edge, 6.4, loops.clone());
            sheet.stroke(Ink::ClothPale, 4.4, loops);
        }
        if count > 3 {
            let rivets = Pen::with(|pen| {
                for x in [28.0, 52.0, 68.0, 92.0] {
                    pen.circle(x, 35.0, 2.8);
                }
            });
            sheet.fill(Ink::Metal, rivets.clone());
            sheet.stroke(Ink::Edge, 0.9, rivets);
        }
        if count > 5 {
            // A self-edge that shows along the outseam.
            let edge = Pen::with(|pen| _ = pen.at(99.0, 24.0).bend(102.0, 50.0, 102.5, 84.0));
            sheet.stroke(Ink::Paper, 4.0, edge.clone());
            sheet.stroke(Ink::Thread, 1.4, edge);
        }
    }
}
