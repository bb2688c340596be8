//! A T-shirt: its seams from inside, its hem, and what covers shoulder and neck.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track, fringe, leaf, overlock};
use super::words::Words;
use crate::{say, to_say};

/// A seam of knitted cloth from inside, pulled a little.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KnitSeam {
    /// Three threads that open like a ladder.
    Ladder,
    /// Three threads that hold.
    Three,
    /// Four threads: one more line in the wrap.
    Four,
    /// Laid flat, narrow and even.
    Flat,
}

/// The hem of a T-shirt while it is stretched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct KnitHem {
    /// What becomes of it.
    pub state: HemState,
    /// Thread ends left hanging, 0 to 14.
    pub tails: u8,
}

/// What becomes of a hem that is stretched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HemState {
    /// Its thread breaks.
    Cracks,
    /// The cloth stands up between its rows.
    Tunnels,
    /// It holds, and ripples a little.
    Holds,
    /// It holds and lies flat.
    Flat,
}

/// A seam at shoulder or neck from inside, and what covers it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Taped {
    /// What covers it.
    pub cover: Cover,
    /// Whether it is the back of a neck; else a shoulder.
    pub neck: bool,
}

/// What covers a seam of knitted cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cover {
    /// Nothing: a raw edge.
    Raw,
    /// An overlock row only.
    Overlock,
    /// A strip of clear elastic.
    Elastic,
    /// Tape, sewn once, not quite even.
    Tape,
    /// Tape, flat and even, sewn along both edges.
    TapeTwice,
}

impl KnitSeam {
    pub(super) fn words(&self) -> String {
        String::from(match self {
            KnitSeam::Ladder => say!("a seam from inside, wrapped in three threads, open like a ladder"),
            KnitSeam::Three => say!("a seam from inside, wrapped in three threads, closed"),
            KnitSeam::Four => say!("a seam from inside, wrapped in four threads, one line more along it"),
            KnitSeam::Flat => say!("a seam from inside, narrow, even and flat"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::ClothPale, FRAME);
        sheet.stroke(Ink::ClothLight, 0.6, Pen::with(|pen| _ = pen.hatch(FRAME, 5.0, 0.0)));
        let track = Track::level(-4.0, 124.0, 42.0);
        let mut thread = Pen::new();
        match self {
            KnitSeam::Ladder => {
                // The two pieces part; single threads bridge the gap.
                let gap =
                    Pen::with(|pen| _ = pen.at(14.0, 42.0).bend(60.0, 22.0, 106.0, 42.0).bend(60.0, 62.0, 14.0, 42.0).close());
                sheet.fill(Ink::Paper, gap.clone());
                sheet.stroke(Ink::Edge, 1.4, gap);
                for step in 0..9 {
                    let x = 24.0 + f64::from(step) * 9.0;
                    let half = 10.0 * (1.0 - ((x - 60.0) / 46.0).powi(2));
                    thread.line(x, 42.0 - half, x + 2.0, 42.0 + half);
                }
                overlock(&mut thread, &Track::level(-4.0, 16.0, 42.0), -8.0, 6.0, 6.4);
                overlock(&mut thread, &Track::level(104.0, 124.0, 42.0), -8.0, 6.0, 6.4);
            }
            KnitSeam::Three => {
                sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.rect(-5.0, 32.0, 130.0, 20.0)));
                overlock(&mut thread, &track, -10.0, 8.0, 6.4);
            }
            KnitSeam::Four => {
                sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.rect(-5.0, 32.0, 130.0, 20.0)));
                overlock(&mut thread, &track, -10.0, 8.0, 5.4);
                for side in [1.0, 9.0] {
                    Row::of(5.4).sew(&mut thread, &track, side, 0.0, track.length());
                }
            }
            KnitSeam::Flat => {
                sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.rect(-5.0, 36.0, 130.0, 12.0)));
                overlock(&mut thread, &track, -5.0, 5.0, 4.0);
                for side in [-6.0, 6.0] {
                    Row::of(4.4).sew(&mut thread, &track, side, 0.0, track.length());
                }
            }
        }
        sheet.stroke(Ink::Thread, 1.5, thread);
    }
}

impl KnitHem {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(match self.state {
            HemState::Cracks => say!("a stretched hem, its thread broken in places"),
            HemState::Tunnels => say!("a stretched hem, cloth standing up between its two rows"),
            HemState::Holds => say!("a stretched hem that holds and ripples a little"),
            HemState::Flat => say!("a hem that holds, flat and even"),
        });
        words.and_count(
            self.tails.min(14),
            to_say!("{count} thread end left hanging"),
            to_say!("{count} thread ends left hanging"),
        );
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let edge = 62.0;
        sheet.area(Ink::Paper, FRAME);
        let ripple = if self.state == HemState::Holds { 1.6 } else { 0.0 };
        let line = |y: f64| -> Vec<(f64, f64)> {
            (0..=32).map(|i| -5.0 + 130.0 * f64::from(i) / 32.0).map(|x| (x, y + ripple * (x / 7.0).sin())).collect()
        };
        let body = Pen::with(|pen| _ = pen.smooth(&line(edge)).to(125.0, -5.0).to(-5.0, -5.0).close());
        sheet.fill(Ink::ClothPale, body.clone());
        sheet.stroke(Ink::ClothLight, 0.6, Pen::with(|pen| _ = pen.hatch(super::pen::Area { height: 58.0, ..FRAME }, 5.0, 0.0)));
        sheet.stroke(Ink::Edge, 1.6, body);
        if self.state == HemState::Tunnels {
            let (mut high, mut low) = (Pen::new(), Pen::new());
            high.rect(-5.0, 34.0, 130.0, 8.0);
            for step in 0..13 {
                let x = 2.0 + f64::from(step) * 10.0;
                leaf(&mut low, (x + 3.0, 33.0), (x - 3.0, 43.0), 2.4);
            }
            sheet.fill(Ink::Weft, high);
            sheet.fill(Ink::ClothLight, low);
        }
        let mut thread = Pen::new();
        for y in [32.0, 44.0] {
            let track = Track::through(&line(y));
            if self.state == HemState::Cracks {
                for (from, to) in [(2.0, 30.0), (46.0, 74.0), (92.0, 128.0)] {
                    Row::of(5.4).sew(&mut thread, &track, 0.0, from, to);
                    let (x, way) = (to - 5.0, if y < 40.0 { -1.0 } else { 1.0 });
                    thread.at(x, y).bend(x + 6.0, y + way * 2.0, x + 5.0, y + way * 8.0);
                }
            } else {
                Row::of(5.4).sew(&mut thread, &track, 0.0, 0.0, track.length());
            }
        }
        sheet.stroke(Ink::Thread, 1.7, thread);
        let mut tails = Pen::new();
        let ends = self.tails.min(14);
        for end in 0..ends {
            let x = 6.0 + 108.0 * (f64::from(end) + 0.5 + chance.about(0.3)) / f64::from(ends);
            let (swing, fall) = (chance.about(7.0), chance.between(12.0, 24.0));
            tails.at(x, 46.0).bend(x + swing, 46.0 + fall * 0.4, x, 46.0 + fall * 0.7).bend(
                x - swing,
                46.0 + fall,
                x + 2.0,
                48.0 + fall,
            );
        }
        sheet.stroke(Ink::Edge, 1.3, tails);
    }
}

impl Taped {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(if self.neck { say!("the back of a neck from inside") } else { say!("a shoulder seam from inside") });
        words.and(match self.cover {
            Cover::Raw => say!("its edge raw"),
            Cover::Overlock => say!("an overlock row and nothing over it"),
            Cover::Elastic => say!("a strip of clear elastic along it"),
            Cover::Tape => say!("tape over it, not quite even"),
            Cover::TapeTwice => say!("tape over it, flat and even, sewn along both edges"),
        });
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let deep = if self.neck { 16.0 } else { -4.0 };
        let along = |off: f64, wave: f64| -> Vec<(f64, f64)> {
            (0..=26)
                .map(|i| {
                    let on = f64::from(i) / 26.0;
                    (-5.0 + 130.0 * on, 32.0 + off + deep * 4.0 * on * (1.0 - on) + wave * (on * 17.0).sin())
                })
                .collect()
        };
        sheet.area(Ink::ClothPale, FRAME);
        if self.neck {
            // Above the seam the rib, then nothing.
            sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.points(&along(0.0, 0.0)).to(125.0, -5.0).to(-5.0, -5.0).close()));
            sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.points(&along(-22.0, 0.0)).to(125.0, -5.0).to(-5.0, -5.0).close()));
            sheet.stroke(Ink::Edge, 1.3, Pen::with(|pen| _ = pen.points(&along(-22.0, 0.0))));
        }
        let seam = Track::through(&along(0.0, 0.0));
        sheet.stroke(Ink::Edge, 1.6, Pen::with(|pen| _ = pen.points(&seam.points)));
        let mut thread = Pen::new();
        match self.cover {
            Cover::Raw => {
                sheet.stroke(Ink::Weft, 1.3, Pen::with(|pen| fringe(pen, &seam, 6.0, 9.0, 3.0, chance)));
                Row::of(5.4).sew(&mut thread, &seam, 4.0, 0.0, seam.length());
            }
            Cover::Overlock => overlock(&mut thread, &seam, 13.0, 1.0, 5.6),
            _ => {
                let twice = self.cover == Cover::TapeTwice;
                let wave = if self.cover == Cover::Tape { 1.8 } else { 0.0 };
                let band: Vec<(f64, f64)> = along(1.0, wave).into_iter().chain(along(15.0, -wave).into_iter().rev()).collect();
                let clear = self.cover == Cover::Elastic;
                if clear {
                    overlock(&mut thread, &seam, 13.0, 1.0, 5.6);
                }
                sheet.fill(if clear { Ink::Paper } else { Ink::Tape }, Pen::with(|pen| _ = pen.outline(&band)));
                sheet.stroke(Ink::Edge, 1.1, Pen::with(|pen| _ = pen.outline(&band)));
                let rows: &[f64] = match (clear, twice) {
                    (true, _) => &[],
                    (_, true) => &[4.0, 12.0],
                    _ => &[8.0],
                };
                for side in rows {
                    Row::of(5.0).sew(&mut thread, &seam, *side, 0.0, seam.length());
                }
            }
        }
        sheet.stroke(Ink::Thread, 1.5, thread);
    }
}
