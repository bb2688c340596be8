//! A shirt from inside: the width of its seams, and how its tail is turned.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp, fringe, leaf, overlock};
use super::seam::Join;
use super::stitching::MM;
use super::words::Words;
use crate::{say, to_say};

/// A seam from inside beside a ruler.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeamWidth {
    /// How the pieces are joined.
    pub join: Join,
    /// How wide it is, in mm, 4 to 12.
    pub width_mm: f64,
    /// How far it bends, 0 (straight) to 1 (an armhole).
    pub bend: f64,
}

/// The tail of a shirt from inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ShirtTail {
    /// How its edge is turned.
    pub turn: TailTurn,
}

/// How the edge of a tail is turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TailTurn {
    /// Rolled unevenly, raw yarns coming out.
    Raw,
    /// Overlocked and turned once.
    Overlocked,
    /// Turned twice, narrow, roping on the curve.
    Roping,
    /// Turned twice, narrow and flat on the curve too.
    Even,
}

impl SeamWidth {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(if clamp(self.bend, 0.0, 1.0) > 0.2 { say!("a curved seam from inside") } else { say!("a seam from inside") });
        words.and(self.join.words());
        words.number(clamp(self.width_mm, 4.0, 12.0), to_say!("{number} millimetres wide"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::ClothPale, FRAME);
        let bend = clamp(self.bend, 0.0, 1.0) * 22.0;
        let points: Vec<(f64, f64)> = (0..=24)
            .map(|i| {
                let on = f64::from(i) / 12.0 - 1.0;
                (-5.0 + 130.0 * f64::from(i) / 24.0, 30.0 + bend * (0.55 - on * on))
            })
            .collect();
        // A join is some 22 units wide at scale 1.
        self.join.along(sheet, &Track::through(&points), clamp(self.width_mm, 4.0, 12.0) * MM / 22.0, chance);
        let tape = Area { x: -5.0, y: 64.0, width: 130.0, height: 22.0 };
        sheet.area(Ink::Tape, tape);
        let ticks = Pen::with(|pen| {
            for mm in 0..=48 {
                let x = f64::from(mm) * MM;
                pen.line(x, tape.y, x, tape.y + if mm % 5 == 0 { 8.0 } else { 4.5 });
            }
        });
        sheet.stroke(Ink::Edge, 0.9, ticks);
    }
}

impl ShirtTail {
    pub(super) fn words(&self) -> String {
        String::from(match self.turn {
            TailTurn::Raw => say!("the tail of a shirt from inside, its edge rolled unevenly, yarns coming out"),
            TailTurn::Overlocked => say!("the tail of a shirt from inside, overlocked and turned once"),
            TailTurn::Roping => say!("the tail of a shirt from inside, turned twice and narrow, roping on the curve"),
            TailTurn::Even => say!("the tail of a shirt from inside, turned twice and narrow, flat on the curve"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        // From the side seam, left and high, down the curve to the back.
        let edge: Vec<(f64, f64)> = (0..=30)
            .map(|i| {
                let on = f64::from(i) / 30.0;
                (-5.0 + 130.0 * on, 30.0 + 40.0 * (1.0 - (on * 2.6).min(std::f64::consts::PI).cos()) / 2.0)
            })
            .collect();
        let cloth = Pen::with(|pen| _ = pen.points(&edge).to(125.0, -5.0).to(-5.0, -5.0).close());
        sheet.fill(Ink::ClothPale, cloth);
        let track = Track::through(&edge);
        let (wide, ragged) = match self.turn {
            TailTurn::Raw => (6.0, 4.0),
            TailTurn::Overlocked => (15.0, 0.0),
            TailTurn::Roping | TailTurn::Even => (8.0, 0.0),
        };
        let inner: Vec<(f64, f64)> = (0..=40)
            .map(|i| {
                let at = track.length() * f64::from(i) / 40.0;
                track.spot(at).beside(-wide - if i % 5 == 0 { ragged } else { chance.about(ragged * 0.6) }, 0.0)
            })
            .collect();
        let band = Pen::with(|pen| _ = pen.points(&edge).points(&[]));
        let turned: Vec<(f64, f64)> = edge.iter().copied().chain(inner.iter().rev().copied()).collect();
        sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&turned)));
        let rim = Track::through(&inner);
        let mut thread = Pen::new();
        match self.turn {
            TailTurn::Raw => sheet.stroke(Ink::Edge, 1.0, Pen::with(|pen| fringe(pen, &rim, 0.0, -6.0, 3.4, chance))),
            TailTurn::Overlocked => overlock(&mut thread, &rim, -1.0, 4.5, 4.4),
            TailTurn::Roping => {
                let ropes = Pen::with(|pen| {
                    for step in 1..14 {
                        let spot = track.spot(f64::from(step) * 8.6 + 12.0);
                        leaf(pen, spot.beside(-0.6, -3.4), spot.beside(-wide + 0.6, 3.4), 2.6);
                    }
                });
                sheet.fill(Ink::Weft, ropes);
            }
            TailTurn::Even => {}
        }
        sheet.stroke(Ink::Cloth, 1.1, Pen::with(|pen| _ = pen.points(&inner)));
        Row::of(4.4).sew(
            &mut thread,
            &track,
            -wide + if self.turn == TailTurn::Overlocked { 5.0 } else { 1.8 },
            0.0,
            track.length(),
        );
        sheet.stroke(Ink::Thread, 1.3, thread);
        sheet.stroke(Ink::Edge, 1.6, band);
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(10.0, -5.0, 10.0, 30.0)));
    }
}
