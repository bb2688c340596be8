//! A card of the ID-1 size with a pattern of its own.

use super::colour::{Rgb, mix, times};
use super::noise::{along, over, unit};
use super::object::Paint;

/// Width of an ID-1 card in mm (ISO/IEC 7810).
pub(super) const CARD_LONG: f64 = 85.60;
/// Height of an ID-1 card in mm (ISO/IEC 7810).
pub(super) const CARD_WIDE: f64 = 53.98;
/// Radius of its corners in mm (ISO/IEC 7810).
pub(super) const CARD_CORNER: f64 = 3.18;

/// What is printed on a card.
pub(super) struct CardFace {
    pub ground: Rgb,
    pub second: Rgb,
    pub ink: Rgb,
    pub salt: u32,
}

impl CardFace {
    pub(super) fn paint(&self, x: f32, y: f32) -> Paint {
        let (salt, ground) = (self.salt, self.ground);
        let mut colour = match salt % 4 {
            // Waves of two colours.
            0 => mix(ground, self.second, (0.5 + 0.5 * (0.22 * y + 1.8 * along(x * 0.05, salt) + 0.06 * x).sin()).powi(3)),
            // One colour running into another.
            1 => mix(ground, self.second, (x / 85.6 + 0.3 * over(x * 0.03, y * 0.03, salt)).clamp(0.0, 1.0)),
            // Rings round a corner.
            2 => {
                let r = (x - 70.0).hypot(y - 44.0);
                if r < 46.0 && (r / 5.0).fract() < 0.5 { mix(ground, self.second, 0.6) } else { ground }
            }
            // A broad band.
            _ => {
                if (9.0..20.0).contains(&y) {
                    self.second
                } else {
                    ground
                }
            }
        };
        // Lines that look like small print, and a row of blocks.
        let line = ((y - 30.0) / 4.5).floor();
        if (0.0..4.0).contains(&line) && (y - 30.0).rem_euclid(4.5) < 1.7 {
            let ends = 20.0 + 45.0 * unit(line as i32, 7, salt);
            let glyph = (x * 0.9).floor() as i32;
            if (8.0..ends).contains(&x) && unit(glyph, line as i32, salt) > 0.22 {
                colour = mix(colour, self.ink, 0.85);
            }
        }
        if salt & 16 != 0
            && (23.0..26.5).contains(&y)
            && (8.0..76.0).contains(&x)
            && (x - 8.0).rem_euclid(17.5) < 14.0
            && (x * 0.55).fract() < 0.62
        {
            colour = mix(colour, self.ink, 0.9);
        }
        if salt & 32 != 0 && (x - 68.0).hypot((y - 14.0) * 1.1) < 7.5 {
            colour = mix(self.second, self.ink, 0.5);
        }
        Paint { colour: times(colour, 1.0 + 0.015 * over(x * 0.8, y * 0.8, salt ^ 3)), cover: 1.0, gloss: 0.25 }
    }
}
