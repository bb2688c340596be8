//! Our own drawn references for two grades by eye: pilling, and change of colour.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, Pen};
use super::words::Words;
use crate::say;

/// Fuzz and small balls on the face of cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pilling {
    /// The grade, 5 (as new) to 1 (all over).
    pub grade: u8,
}

/// Cloth as it was, at the left, edge to edge with cloth as it is now.
///
/// The change is drawn with one pair of inks, so its size holds for the palette that the screen uses; a screen is no grey scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ColourPair {
    /// The grade, 5 (no change) to 1 (another colour).
    pub grade: u8,
}

/// A grade as its place from the best: 0 for 5, 4 for 1.
fn down(grade: u8) -> usize {
    usize::from(5 - grade.clamp(1, 5))
}

impl Pilling {
    /// How many balls, best grade first. Judgement.
    const BALLS: [u8; 5] = [0, 3, 12, 30, 60];
    /// How many fibres stand up, best grade first. Judgement.
    const FIBRES: [u8; 5] = [0, 14, 30, 52, 76];

    pub(super) fn balls(self) -> u8 {
        Pilling::BALLS[down(self.grade)]
    }

    pub(super) fn words(self) -> String {
        String::from(match self.grade.clamp(1, 5) {
            5 => say!("the face of cloth as new"),
            4 => say!("the face of cloth with slight fuzz, the first balls forming"),
            3 => say!("the face of cloth with fuzz and balls on part of it"),
            2 => say!("the face of cloth with fuzz and balls on most of it"),
            _ => say!("the face of cloth with dense fuzz and thick balls all over"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        // Spread by two steps that never line up; the lower grades fill the frame, the higher a part of it.
        let mut place = |index: u8, share: f64| {
            let at = |step: f64, shift: f64| (f64::from(index) * step + shift).fract();
            let (x, y) = (at(0.754_878, 0.31), at(0.569_840, 0.17));
            (60.0 + (x - 0.5) * 112.0 * share + chance.about(2.0), 40.0 + (y - 0.5) * 72.0 * share + chance.about(2.0))
        };
        let share = if self.grade.clamp(1, 5) == 3 { 0.72 } else { 1.0 };
        let mut fuzz = Pen::new();
        for fibre in 0..Pilling::FIBRES[down(self.grade)] {
            let (x, y) = place(fibre.wrapping_add(7), share);
            let (lean, up) = (f64::from(fibre % 5) * 1.4 - 2.8, 3.0 + f64::from(fibre % 3));
            fuzz.at(x, y).bend(x + lean, y - up * 0.5, x + lean * 0.4, y - up);
        }
        sheet.stroke(Ink::ClothPale, 0.7, fuzz);
        let (mut small, mut thick) = (Pen::new(), Pen::new());
        for ball in 0..self.balls() {
            let (x, y) = place(ball, share);
            let pen = if ball % 3 == 0 { &mut thick } else { &mut small };
            pen.line(x, y, x, y);
        }
        let size = [0.0, 2.6, 3.0, 3.4, 4.2][down(self.grade)];
        for (pen, size) in [(small, size), (thick, size * 1.35)] {
            if self.balls() > 0 {
                sheet.stroke(Ink::Shade, size + 1.2, pen.clone());
                sheet.stroke(Ink::ClothPale, size, pen);
            }
        }
    }
}

impl ColourPair {
    /// Width of the lighter lines, `PITCH` apart, best grade first. Found so that the eye, which takes the lines together, meets the colour
    /// differences of the grey scale for change (0, 1.7, 3.4, 6.8, 13.6 of CIELAB) on the palette's `cloth` and `cloth-light`.
    pub(super) const LINES: [f64; 5] = [0.0, 0.08, 0.16, 0.325, 0.66];
    /// Distance of the lines.
    pub(super) const PITCH: f64 = 1.0;

    /// The grade that is drawn.
    pub(super) fn held(self) -> u8 {
        self.grade.clamp(1, 5)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("two pieces of cloth edge to edge"));
        words.and(match self.held() {
            5 => say!("of one colour"),
            4 => say!("the right one a trace lighter"),
            3 => say!("the right one a little lighter"),
            2 => say!("the right one clearly lighter"),
            _ => say!("the right one much lighter"),
        });
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        let whole = Area { x: 0.0, y: 0.0, width: 120.0, height: 80.0 };
        let right = Area { x: 60.0, width: 60.0, ..whole };
        sheet.area(Ink::Cloth, whole);
        let width = ColourPair::LINES[down(self.grade)];
        if width > 0.0 {
            sheet.stroke(Ink::ClothLight, width, Pen::with(|pen| _ = pen.hatch(right, ColourPair::PITCH, 0.0)));
        }
        // Edge to edge: nothing may lie between them but at the rim, where notches say that there are two.
        let notches = Pen::with(|pen| {
            pen.outline(&[(55.0, -5.0), (60.0, 7.0), (65.0, -5.0)]).outline(&[(55.0, 85.0), (60.0, 73.0), (65.0, 85.0)]);
        });
        sheet.fill(Ink::Paper, notches);
    }
}
