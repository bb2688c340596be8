//! The stiffened parts of a shirt: collar and cuffs.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track, clamp, leaf};
use super::words::Words;
use crate::{say, to_say};

/// A collar from the front.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Collar {
    /// Bubbles on its face, 0 to 10.
    pub bubbles: u8,
    /// How much longer one point is, in mm, 0 to 12.
    pub off_mm: f64,
    /// How it stands: 0 (limp) to 1 (springs into its roll).
    pub roll: f64,
}

/// Both cuffs laid flat, side by side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cuffs {
    /// Bubbles on them, 0 to 10.
    pub bubbles: u8,
    /// Whether they rope, as when their layers were fed unevenly.
    pub twisted: bool,
    /// How far one differs from the other, in mm, 0 to 12.
    pub off_mm: f64,
    /// Whether edges and corners are crisp.
    pub crisp: bool,
}

/// Blisters in an outline: each a pale dome with its shadow below.
fn blisters(sheet: &mut Sheet, places: &[(f64, f64)], chance: &mut Chance) {
    let (mut domes, mut shadows) = (Pen::new(), Pen::new());
    for &(x, y) in places {
        let (rx, ry) = (chance.between(2.6, 4.4), chance.between(2.0, 3.2));
        domes.oval(x, y, rx, ry);
        shadows.at(x - rx, y + 0.6).bend(x, y + ry * 2.4, x + rx, y + 0.6);
    }
    sheet.fill(Ink::Weft, domes);
    sheet.stroke(Ink::Cloth, 1.3, shadows);
}

impl Collar {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("a shirt collar from the front"));
        words.and_count(self.bubbles.min(10), to_say!("{count} bubble on its face"), to_say!("{count} bubbles on its face"));
        match clamp(self.off_mm, 0.0, 12.0) {
            off if off > 0.0 => words.number(off, to_say!("{number} millimetres between the lengths of its points")),
            _ => words.and(say!("points equally long")),
        }
        words.and(match clamp(self.roll, 0.0, 1.0) {
            roll if roll < 0.4 => say!("limp"),
            roll if roll < 0.8 => say!("firm"),
            _ => say!("rolls over crisply"),
        });
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let (off, roll) = (clamp(self.off_mm, 0.0, 12.0) * 1.3, clamp(self.roll, 0.0, 1.0));
        sheet.area(Ink::Paper, FRAME);
        let body = Pen::with(|pen| {
            _ = pen
                .at(-5.0, 48.0)
                .bend(20.0, 40.0, 30.0, 24.0)
                .to(90.0, 24.0)
                .bend(100.0, 40.0, 125.0, 48.0)
                .to(125.0, 86.0)
                .to(-5.0, 86.0);
            pen.close();
        });
        sheet.fill(Ink::ClothLight, body.clone());
        sheet.stroke(Ink::Edge, 1.3, body);
        let inside = Pen::with(|pen| {
            _ = pen.at(32.0, 12.0).bend(60.0, 2.0, 88.0, 12.0).bend(82.0, 32.0, 60.0, 36.0).bend(38.0, 32.0, 32.0, 12.0).close();
        });
        sheet.fill(Ink::Weft, inside.clone());
        sheet.stroke(Ink::Edge, 1.2, inside);
        let front = Pen::with(|pen| _ = pen.line(53.0, 37.0, 53.0, 86.0).line(67.0, 37.0, 67.0, 86.0));
        sheet.stroke(Ink::Cloth, 1.1, front);
        let buttons = Pen::with(|pen| _ = pen.circle(60.0, 41.0, 3.2).circle(60.0, 70.0, 3.2));
        sheet.fill(Ink::Weft, buttons.clone());
        sheet.stroke(Ink::Edge, 1.0, buttons);
        // Where it is limp, edges sag and points curl; where it rolls, its edges are straight and its fold catches the light.
        let sag = 9.0 * (1.0 - roll);
        let mut thread = Pen::new();
        for (way, long) in [(-1.0, 0.0), (1.0, off)] {
            let at = |x: f64, y: f64| (60.0 + way * x, y);
            let (top, inner, point, outer) = (at(30.0, 9.0), at(2.0, 35.0), at(25.0, 60.0 + long), at(43.0, 30.0));
            let (low, bow) = (at(11.0 - sag * 0.4, 50.0 + sag), at(37.0 + sag, 48.0 - sag * 0.3));
            let piece = Pen::with(|pen| {
                pen.at(top.0, top.1).bend(at(22.0, 30.0).0, 30.0 - 3.0 * roll, inner.0, inner.1);
                pen.bend(low.0, low.1, point.0, point.1)
                    .bend(bow.0, bow.1, outer.0, outer.1)
                    .bend(at(40.0, 14.0).0, 14.0, top.0, top.1)
                    .close();
            });
            sheet.fill(Ink::ClothPale, piece.clone());
            sheet.stroke(Ink::Edge, 1.5, piece);
            let curve = |a: (f64, f64), c: (f64, f64), b: (f64, f64), t: f64| {
                let mix = |a: f64, c: f64, b: f64| (1.0 - t) * (1.0 - t) * a + 2.0 * t * (1.0 - t) * c + t * t * b;
                (mix(a.0, c.0, b.0), mix(a.1, c.1, b.1))
            };
            let mut edge: Vec<(f64, f64)> = (0..=6).map(|i| curve(inner, low, point, f64::from(i) / 6.0)).collect();
            edge.extend((1..=6).map(|i| curve(point, bow, outer, f64::from(i) / 6.0)));
            // The row runs inside the edge, which lies on the other hand of the run on the other side.
            let within: Vec<(f64, f64)> =
                edge.iter().map(|&(x, y)| (x + (60.0 + way * 26.0 - x) * 0.14, y + (38.0 - y) * 0.14)).collect();
            let track = Track::through(&within);
            Row::of(4.0).sew(&mut thread, &track, 0.0, 1.0, track.length());
            if roll > 0.8 {
                let fold =
                    Pen::with(|pen| _ = pen.at(at(33.0, 13.0).0, 13.0).bend(at(25.0, 31.0).0, 31.0, at(7.0, 36.0).0, 36.0));
                sheet.stroke(Ink::Weft, 2.6, fold);
            } else if roll < 0.4 {
                let slack = Pen::with(|pen| {
                    leaf(pen, at(12.0, 40.0), at(32.0, 46.0), 1.8);
                    leaf(pen, at(16.0, 49.0), at(34.0, 53.0), 1.6);
                });
                sheet.fill(Ink::ClothLight, slack);
            }
        }
        sheet.stroke(Ink::Thread, 1.2, thread);
        let places: Vec<(f64, f64)> = (0..self.bubbles.min(10))
            .map(|i| {
                let (side, step) = (if i % 2 == 0 { -1.0 } else { 1.0 }, f64::from(i / 2));
                (60.0 + side * (23.0 + (step * 7.0) % 13.0 + chance.about(1.0)), 27.0 + (step * 9.5) % 24.0)
            })
            .collect();
        blisters(sheet, &places, chance);
        if off > 0.0 {
            sheet.dash(Ink::Edge, 1.0, 2.4, 2.0, Pen::with(|pen| _ = pen.line(24.0, 60.0, 104.0, 60.0)));
        }
    }
}

impl Cuffs {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("two cuffs laid flat"));
        words.and_count(self.bubbles.min(10), to_say!("{count} bubble"), to_say!("{count} bubbles"));
        words.and_if(self.twisted, say!("twisted into diagonal ropes"));
        match clamp(self.off_mm, 0.0, 12.0) {
            off if off > 0.0 => words.number(off, to_say!("{number} millimetres between them")),
            _ => words.and(say!("alike")),
        }
        words.and(if self.crisp { say!("edges crisp") } else { say!("edges soft") });
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let off = clamp(self.off_mm, 0.0, 12.0) * 1.2;
        sheet.area(Ink::Paper, FRAME);
        let round = if self.crisp { 1.5 } else { 8.0 };
        let mut thread = Pen::new();
        for (left, more) in [(6.0, 0.0), (66.0, off)] {
            let (right, top, low) = (left + 48.0, 36.0 - more * 0.4, 66.0 + more);
            let sleeve = [(left + 4.0, -5.0), (left + 44.0, -5.0), (right - 2.0, top), (left + 2.0, top)];
            sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&sleeve)));
            sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.outline(&sleeve)));
            let pleats = Pen::with(|pen| {
                for x in [left + 17.0 + more, left + 27.0 + more * 1.4] {
                    pen.line(x, top, x - 1.5, top - 26.0).line(x + 4.0, top, x + 1.0, top - 20.0);
                }
            });
            sheet.stroke(Ink::Cloth, 1.3, pleats);
            let cuff = Pen::with(|pen| {
                pen.at(left, top).to(right, top).to(right, low - round).bend(right, low, right - round, low);
                pen.to(left + round, low).bend(left, low, left, low - round).close();
            });
            sheet.fill(Ink::ClothPale, cuff.clone());
            sheet.stroke(Ink::Edge, 1.5, cuff);
            if self.twisted {
                let ropes = Pen::with(|pen| {
                    for step in 0..4 {
                        let x = left + 7.0 + f64::from(step) * 10.0;
                        leaf(pen, (x + 6.0, top + 3.0), (x - 2.0, low - 4.0), 2.2);
                    }
                });
                sheet.fill(Ink::ClothLight, ropes);
            }
            for y in [top + 3.5, low - 3.5] {
                let track = Track::level(left + 4.0, right - 3.0, y);
                Row::of(4.0).sew(&mut thread, &track, 0.0, 0.0, track.length());
            }
            let button = Pen::with(|pen| _ = pen.circle(right - 8.0, (top + low) / 2.0, 3.4));
            sheet.fill(Ink::Weft, button.clone());
            sheet.stroke(Ink::Edge, 1.0, button);
        }
        sheet.stroke(Ink::Thread, 1.2, thread);
        let places: Vec<(f64, f64)> = (0..self.bubbles.min(10))
            .map(|i| {
                let step = f64::from(i / 2);
                (if i % 2 == 0 { 14.0 } else { 74.0 } + (step * 11.0) % 26.0 + chance.about(1.0), 46.0 + (step * 7.0) % 14.0)
            })
            .collect();
        blisters(sheet, &places, chance);
        if off > 0.0 {
            sheet.dash(Ink::Edge, 1.0, 2.4, 2.0, Pen::with(|pen| _ = pen.line(2.0, 66.0, 118.0, 66.0)));
        }
    }
}
