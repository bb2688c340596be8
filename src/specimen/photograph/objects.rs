//! Where ruler or card lies, what it looks like, and where the camera looks.

use super::super::chance::Chance;
use super::card::{CARD_CORNER, CARD_LONG, CARD_WIDE, CardFace};
use super::colour::{Rgb, apart, display};
use super::object::{Face, Object};
use super::path::Path;
use super::ruler::{Graduation, Ground, RulerFace};
use super::scene::{Wanted, salt, whether};

/// Lays a ruler or card beside the seam, clear of it over most of the picture. Nothing if the arc is too deep for that.
pub(super) fn laid(chance: &mut Chance, wanted: Wanted, width_mm: f64, path: Path) -> Option<Object> {
    let angle = chance.about(0.05);
    let gap = chance.between(1.8, 12.0).min(0.11 * width_mm + 1.0);
    // The edge passes `gap` below the lowest place of the seam, as seen along the edge.
    let half = if wanted == Wanted::Card { 0.36 * width_mm } else { 0.40 * width_mm };
    let (s, c) = angle.sin_cos();
    let lowest = (-20..=20)
        .map(|k| {
            let [x, y] = path.point(half * f64::from(k) / 20.0, 0.0);
            y * c - x * s
        })
        .fold(f64::MIN, f64::max);
    if lowest > 0.3 * width_mm {
        return None;
    }
    let edge = lowest + gap;
    let height = chance.between(0.0, 2.5) * if whether(chance, 0.25) { 0.2 } else { 1.0 };
    let object = match wanted {
        Wanted::Card => {
            let left = -CARD_LONG / 2.0 + chance.about(0.5 * (width_mm - CARD_LONG) - 3.0);
            Object {
                face: Face::Card(card(chance)),
                origin: [left * c - edge * s, left * s + edge * c],
                turn: [s, c],
                long: CARD_LONG,
                wide: CARD_WIDE,
                corner: CARD_CORNER,
                height: height.min(1.6),
            }
        }
        _ => {
            let divided = if wanted == Wanted::Sixteenth { Graduation::Sixteenth } else { Graduation::Millimetre };
            let nought = chance.between(1.0, 9.0);
            let inches = wanted == Wanted::Sixteenth;
            let length =
                [if inches { 152.4 } else { 150.0 }, if inches { 203.2 } else { 200.0 }, if inches { 304.8 } else { 300.0 }];
            let long = length[(chance.share() * 3.0) as usize % 3] + 2.0 * nought;
            let wide = chance.between(13.0, 36.0);
            let left = (-0.5 * width_mm + chance.between(-0.55 * long, 0.12 * width_mm)).max(0.33 * width_mm - long);
            Object {
                face: Face::Ruler(ruler(chance, divided, nought, long, wide)),
                origin: [left * c - edge * s, left * s + edge * c],
                turn: [s, c],
                long,
                wide,
                corner: if whether(chance, 0.5) { chance.between(0.5, 3.0) } else { 0.2 },
                height,
            }
        }
    };
    Some(object)
}

/// The point of the cloth in the middle of the picture.
pub(super) fn looked_at(
    chance: &mut Chance,
    wanted: Wanted,
    width_mm: f64,
    object: &Object,
    behind: f64,
    tame: bool,
) -> [f64; 2] {
    let edge = object.origin[1];
    let half = 0.375 * width_mm;
    let (low, high) = match wanted {
        // All of the card, and the rows.
        Wanted::Card => (edge + CARD_WIDE + 2.0 - half, half - 5.0 - behind),
        _ => (edge + 7.0 - half * 0.9, half * 0.8 - behind - 4.0),
    };
    let middle = 0.5 * (low + high);
    if tame || low > high {
        return [0.0, middle];
    }
    let reach = if wanted == Wanted::Card { 0.5 } else { 0.32 };
    [chance.about(0.06 * width_mm), middle + chance.about(reach * (high - low))]
}

fn pick<T: Copy>(chance: &mut Chance, from: &[T]) -> T {
    from[((chance.share() * from.len() as f64) as usize).min(from.len() - 1)]
}

fn card(chance: &mut Chance) -> CardFace {
    let colours: [Rgb; 9] = [
        display(236, 236, 232),
        display(40, 60, 110),
        display(190, 60, 50),
        display(40, 120, 95),
        display(225, 190, 90),
        display(60, 60, 64),
        display(150, 190, 215),
        display(205, 150, 175),
        display(120, 95, 150),
    ];
    let ground = pick(chance, &colours);
    let second = pick(chance, &colours);
    let ink = if apart(ground, [0.02; 3]) > 0.7 { display(40, 40, 44) } else { display(235, 232, 225) };
    CardFace { ground, second, ink, salt: salt(chance) }
}

fn ruler(chance: &mut Chance, divided: Graduation, nought: f64, long: f64, wide: f64) -> RulerFace {
    let dark = display(28, 28, 32);
    // Ground, colour, ink, clear.
    let styles = [
        (Ground::Smooth, display(240, 240, 236), dark, false),
        (Ground::Smooth, display(232, 226, 205), display(40, 36, 60), false),
        (Ground::Smooth, display(236, 240, 242), dark, true),
        (Ground::Smooth, display(225, 235, 232), display(20, 60, 120), true),
        (Ground::Brushed, display(176, 178, 180), display(34, 34, 36), false),
        (Ground::Brushed, display(150, 152, 155), display(20, 20, 22), false),
        (Ground::Wooden, display(205, 165, 105), display(50, 32, 20), false),
        (Ground::Smooth, display(38, 38, 40), display(225, 225, 220), false),
        (Ground::Banded, display(240, 205, 70), display(30, 30, 30), false),
        (Ground::Smooth, display(120, 200, 170), display(25, 45, 45), false),
        (Ground::Smooth, display(235, 110, 90), display(250, 245, 235), false),
    ];
    let (ground, colour, ink, clear) = pick(chance, &styles);
    let big = divided == Graduation::Sixteenth;
    let reach = if big { chance.between(4.5, 9.0) } else { chance.between(3.6, 6.5) };
    let numeral = chance.between(1.9, 3.6) * if big { 1.25 } else { 1.0 };
    let beside = whether(chance, 0.3);
    let room = wide - reach - numeral - 1.5;
    RulerFace {
        divided,
        ground,
        colour,
        ink,
        clear,
        nought: nought as f32,
        inset: if whether(chance, 0.6) { 0.0 } else { chance.between(0.1, 0.9) as f32 },
        reach: reach as f32,
        least: chance.between(0.38, 0.62) as f32,
        line: chance.between(0.11, if big { 0.28 } else { 0.22 }) as f32,
        numeral: if room < 0.5 { 1.9 } else { numeral as f32 },
        below: if beside { -1.0 } else { chance.between(0.4, 1.6) as f32 },
        bold: chance.between(0.10, 0.17) as f32,
        far_edge: wide > 24.0 && whether(chance, 0.45),
        rail: whether(chance, 0.12),
        long: long as f32,
        salt: salt(chance),
    }
}
