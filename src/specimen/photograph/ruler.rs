//! The face of a ruler: ground, graduation, numerals.

use super::colour::{Rgb, mix, times};
use super::digits::inked;
use super::noise::{along, over};
use super::object::Paint;

/// How a ruler is divided.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Graduation {
    /// In millimetres, every fifth and tenth line longer, a numeral every centimetre.
    Millimetre,
    /// In sixteenths of an inch, lines longer at eighths, quarters, halves and inches, a numeral every inch.
    Sixteenth,
}

impl Graduation {
    /// Distance of neighbouring lines, mm.
    pub fn tick_mm(self) -> f64 {
        match self {
            Graduation::Millimetre => 1.0,
            Graduation::Sixteenth => 25.4 / 16.0,
        }
    }

    /// Distance of numerals, mm.
    pub fn numeral_mm(self) -> f64 {
        match self {
            Graduation::Millimetre => 10.0,
            Graduation::Sixteenth => 25.4,
        }
    }
}

/// What a ruler's ground is made of.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Ground {
    Smooth,
    Brushed,
    Wooden,
    Banded,
}

/// A ruler's face. Lengths in mm.
pub(super) struct RulerFace {
    pub divided: Graduation,
    pub ground: Ground,
    pub colour: Rgb,
    pub ink: Rgb,
    pub clear: bool,
    /// The graduation's nought, from the left end.
    pub nought: f32,
    /// Where the lines begin, from the edge.
    pub inset: f32,
    /// Length of the longest line.
    pub reach: f32,
    /// Share of that length that the shortest line has.
    pub least: f32,
    /// Width of a line.
    pub line: f32,
    /// Height of numerals, and how far they stand beyond the longest line (negative: beside it, to the right).
    pub numeral: f32,
    pub below: f32,
    pub bold: f32,
    /// Whether the far edge carries the other division (half as often a plain edge).
    pub far_edge: bool,
    /// Whether a line along the feet of the marks is printed.
    pub rail: bool,
    pub long: f32,
    pub salt: u32,
}

impl RulerFace {
    pub(super) fn paint(&self, x: f32, y: f32, wide: f32) -> Paint {
        let at = x - self.nought;
        let near = self.lines(self.divided, at, y, 1.0);
        let far = self.far_edge && {
            let other = if self.divided == Graduation::Millimetre { Graduation::Sixteenth } else { Graduation::Millimetre };
            // Printed the other way round, so that it reads from the far side.
            self.lines(other, self.long - self.nought - x, wide - y, 0.8)
        };
        let hole = self.salt & 1 == 0 && (x - 4.0).hypot(y - wide / 2.0) < 1.8 && self.nought > 6.5;
        if near || far {
            return Paint { colour: self.ink, cover: if self.clear { 0.86 } else { 1.0 }, gloss: 0.05 };
        }
        if hole {
            return Paint { colour: times(self.colour, 0.1), cover: if self.clear { 0.3 } else { 0.9 }, gloss: 0.0 };
        }
        let colour = match self.ground {
            Ground::Smooth => times(self.colour, 1.0 + 0.02 * over(x * 0.4, y * 0.4, self.salt)),
            Ground::Brushed => {
                times(self.colour, 1.0 + 0.06 * over(x * 0.15, y * 14.0, self.salt) + 0.10 * along(x * 0.035, self.salt ^ 1))
            }
            Ground::Wooden => {
                let vein = (y * 2.2 + 1.6 * over(x * 0.03, y * 0.35, self.salt)).sin();
                times(self.colour, 1.0 + 0.07 * vein + 0.06 * over(x * 0.5, y * 9.0, self.salt ^ 2))
            }
            // Tapes whose bands change colour at every numeral.
            Ground::Banded => {
                let band = (at / self.divided.numeral_mm() as f32).floor() as i32;
                if band.rem_euclid(2) == 0 { self.colour } else { mix(self.colour, [0.75, 0.2, 0.12], 0.28) }
            }
        };
        // A worn or bevelled edge.
        let edge = y.min(wide - y);
        let bevel = if edge < 0.35 { 0.82 } else { 1.0 };
        Paint {
            colour: times(colour, bevel),
            cover: if self.clear { 0.22 + 0.3 * f32::from(edge < 0.35) } else { 1.0 },
            gloss: self.gloss(),
        }
    }

    fn gloss(&self) -> f32 {
        match self.ground {
            Ground::Brushed => 0.30,
            Ground::Smooth => 0.16,
            _ => 0.04,
        }
    }

    /// Whether a place lies on a line or numeral of a division whose lines start at the edge y = 0.
    fn lines(&self, divided: Graduation, at: f32, y: f32, size: f32) -> bool {
        if y < self.inset
            || y > self.inset + self.reach * size + self.below.max(0.0) + self.numeral * 1.2 + 1.0
            || at < -self.numeral
        {
            return false;
        }
        let tick = divided.tick_mm() as f32;
        let nearest = (at / tick).round();
        let number = nearest as i32;
        let long = (self.long - self.nought) - 1.0;
        let share = match divided {
            Graduation::Millimetre => match number.rem_euclid(10) {
                0 => 1.0,
                5 => 0.5 + 0.5 * self.least,
                _ => self.least,
            },
            Graduation::Sixteenth => {
                let rank = number.rem_euclid(16).trailing_zeros().min(4);
                self.least + (1.0 - self.least) * [0.0, 0.16, 0.38, 0.64, 1.0][rank as usize]
            }
        };
        let bold = if share > 0.99 { 1.25 } else { 1.0 };
        let reach = self.reach * size;
        let drawn = number >= 0 && nearest * tick <= long;
        if drawn && (at - nearest * tick).abs() < 0.5 * self.line * bold && y < self.inset + reach * share {
            return true;
        }
        if self.rail && at > 0.0 && at < long && (y - self.inset).abs() < 0.5 * self.line {
            return true;
        }
        let span = divided.numeral_mm() as f32;
        let count = (at / span).round();
        if count * span > long {
            return false;
        }
        let high = self.numeral * size;
        let (dx, dy) = if self.below >= 0.0 {
            (at - count * span, y - self.inset - reach - self.below)
        } else {
            // Beside the long line: the numeral belongs to the line at its left.
            let count_beside = ((at - 0.2) / span).floor();
            let two = if count_beside >= 10.0 { 1.05 } else { 0.5 };
            return inked(
                count_beside as i32,
                at - count_beside * span - 0.5 - two * high * 0.8,
                y - self.inset - reach + high,
                high,
                self.bold,
            );
        };
        inked(count as i32, dx, dy, high, self.bold)
    }
}
