//! Whiskers: printed, by laser, by hand.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Pen, Row, Track, leaf};
use super::wear::Tear;
use crate::say;

/// Whiskers on both thighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Whiskers {
    /// How they were made.
    pub work: WhiskerWork,
    /// Lines on each thigh, 0 to 7.
    pub lines: u8,
}

/// How whiskers were made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhiskerWork {
    /// There are none.
    None,
    /// Printed or sprayed: hard, even bars.
    Printed,
    /// Laser: fine, crisp, both legs the same in a mirror.
    Laser,
    /// Hand: soft, tapering, the legs differ.
    Hand,
    /// Hand work with pressed creases that stand up.
    Creased,
    /// Worked, then torn and repaired.
    Torn,
}

/// Both thighs below the fly: the ground that whiskers lie on.
fn thighs(sheet: &mut Sheet) {
    sheet.face();
    sheet.fill(
        Ink::Paper,
        Pen::with(|pen| _ = pen.at(60.0, 40.0).bend(57.0, 60.0, 56.0, 86.0).to(64.0, 86.0).bend(63.0, 60.0, 60.0, 40.0).close()),
    );
    sheet.stroke(Ink::Shade, 1.6, Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 40.0)));
    let fly = Track::through(&[(66.0, 0.0), (66.0, 20.0), (64.5, 26.0), (61.0, 31.0)]);
    sheet.stitches(1.4, Pen::with(|pen| _ = Row::of(4.6).sew(pen, &fly, 0.0, 0.0, fly.length())));
}

impl Whiskers {
    pub(super) fn words(&self) -> String {
        String::from(match self.work {
            WhiskerWork::None => say!("two thighs without whiskers"),
            WhiskerWork::Printed => say!("whiskers as hard, even bars"),
            WhiskerWork::Laser => say!("fine crisp whiskers, both legs the same in a mirror"),
            WhiskerWork::Hand => say!("soft tapering whiskers, the two legs differ"),
            WhiskerWork::Creased => say!("soft whiskers with creases that stand up"),
            WhiskerWork::Torn => say!("soft whiskers, one thigh torn and repaired"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        thighs(sheet);
        let lines = self.lines.min(7);
        let hand = matches!(self.work, WhiskerWork::Hand | WhiskerWork::Creased | WhiskerWork::Torn);
        let (mut wide, mut narrow, mut fold) = (Pen::new(), Pen::new(), Pen::new());
        for leg in [-1.0, 1.0] {
            for line in 0..lines {
                let on = (f64::from(line) + 0.5) / f64::from(lines.max(1));
                // Hand work differs from leg to leg; a machine repeats itself.
                let mut loose = |half: f64| if hand { chance.about(half) } else { 0.0 };
                let near = (60.0 + leg * (8.0 + loose(4.0)), 29.0 + on * 24.0 + loose(3.5));
                let far = (60.0 + leg * (46.0 + loose(9.0)), 10.0 + on * 52.0 + loose(5.0));
                match self.work {
                    WhiskerWork::None => {}
                    WhiskerWork::Printed => _ = wide.line(near.0, near.1, far.0, far.1),
                    WhiskerWork::Laser => {
                        for beam in [-1.5_f64, 0.0, 1.5] {
                            narrow.line(near.0 + leg * beam.abs(), near.1 + beam, far.0 - leg * beam.abs() * 2.0, far.1 + beam);
                        }
                    }
                    _ => {
                        let full = chance.between(4.4, 8.4);
                        leaf(&mut wide, near, far, full);
                        let (a, b) = (between(near, far, 0.14), between(near, far, 0.78));
                        leaf(&mut narrow, a, b, full * 0.42);
                        leaf(&mut fold, (near.0, near.1 + 3.6), (far.0, far.1 + 4.6), 3.2);
                    }
                }
            }
        }
        if hand {
            if self.work == WhiskerWork::Creased {
                sheet.fill(Ink::Shade, fold);
            }
            sheet.fill(Ink::ClothLight, wide);
            sheet.fill(Ink::ClothPale, narrow);
        } else {
            sheet.stroke(Ink::ClothPale, 4.2, wide);
            sheet.stroke(Ink::ClothPale, 0.75, narrow);
        }
        if self.work == WhiskerWork::Torn {
            Tear { sewn: 1.0, backed: false }.at(sheet, (92.0, 56.0), (15.0, 11.0), chance);
        }
    }
}

/// A point on the way from one to another.
fn between(a: (f64, f64), b: (f64, f64), share: f64) -> (f64, f64) {
    (a.0 + (b.0 - a.0) * share, a.1 + (b.1 - a.1) * share)
}
