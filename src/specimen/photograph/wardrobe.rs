//! Cloths, threads and exposures to draw from.

use std::f64::consts::PI;

use super::super::chance::Chance;
use super::cloth::{Cloth, ClothKind};
use super::colour::{Rgb, apart, display, mix};
use super::lens::Lens;
use super::scene::{Light, normal, salt, whether};
use super::thread::{Sewn, Thread};
use super::truth::Level;

type Shade = (u8, u8, u8);

const DENIM: [Shade; 7] =
    [(44, 60, 102), (30, 38, 64), (84, 108, 152), (34, 34, 38), (62, 78, 116), (96, 104, 112), (52, 84, 110)];
const TWILL: [Shade; 8] =
    [(158, 138, 104), (84, 90, 62), (40, 46, 70), (192, 182, 164), (112, 114, 116), (132, 60, 48), (52, 58, 50), (205, 196, 186)];
const PLAIN: [Shade; 7] =
    [(226, 224, 218), (198, 168, 160), (140, 150, 158), (92, 128, 104), (44, 44, 48), (214, 200, 160), (90, 110, 150)];
const CHAMBRAY: [Shade; 4] = [(92, 122, 170), (120, 136, 160), (170, 96, 100), (96, 120, 110)];
const JERSEY: [Shade; 6] = [(152, 152, 154), (52, 52, 56), (222, 220, 214), (150, 52, 56), (70, 90, 130), (120, 140, 110)];
const LEATHER: [Shade; 5] = [(150, 90, 54), (44, 40, 38), (96, 62, 42), (128, 122, 114), (110, 40, 36)];
const THREADS: [Shade; 12] = [
    (206, 146, 60),
    (204, 110, 44),
    (236, 233, 226),
    (216, 204, 176),
    (182, 42, 46),
    (34, 40, 84),
    (30, 30, 32),
    (48, 124, 88),
    (146, 146, 148),
    (164, 130, 92),
    (90, 130, 180),
    (240, 214, 120),
];

fn one_of(chance: &mut Chance, from: &[Shade]) -> Rgb {
    let (r, g, b) = from[((chance.share() * from.len() as f64) as usize).min(from.len() - 1)];
    let bright = 1.0 + chance.about(0.18) as f32;
    display(r, g, b).map(|v| (v * bright * (1.0 + chance.about(0.06) as f32)).clamp(0.004, 0.95))
}

/// A cloth of a kind.
pub(super) fn cloth(chance: &mut Chance, kind: ClothKind) -> Cloth {
    let (shades, ends, picks): (&[Shade], [f64; 2], [f64; 2]) = match kind {
        ClothKind::Denim => (&DENIM, [2.3, 3.3], [1.5, 2.2]),
        ClothKind::Twill21 => (&TWILL, [2.4, 4.2], [1.9, 2.8]),
        ClothKind::Plain => (&PLAIN, [1.6, 3.6], [1.5, 3.2]),
        ClothKind::Chambray => (&CHAMBRAY, [2.4, 3.8], [2.0, 3.0]),
        ClothKind::Jersey => (&JERSEY, [1.0, 1.7], [1.3, 2.1]),
        ClothKind::Leather => (&LEATHER, [0.9, 2.4], [0.9, 2.4]),
    };
    let warp = one_of(chance, shades);
    let weft = match kind {
        ClothKind::Denim => {
            mix(display(218, 214, 202), warp, if whether(chance, 0.2) { 0.6 } else { chance.between(0.0, 0.2) as f32 })
        }
        ClothKind::Chambray => mix(display(228, 226, 220), warp, chance.between(0.0, 0.25) as f32),
        _ => warp.map(|v| (v * (1.0 + chance.about(0.18) as f32)).min(0.95)),
    };
    let even = chance.share();
    let ends = ends[0] + (ends[1] - ends[0]) * even;
    let slub = chance.between(0.1, 0.9) as f32;
    // The seam follows the warp, the weft or, seldom, neither.
    let turn = if whether(chance, 0.3) { PI / 2.0 } else { 0.0 };
    let bias = if whether(chance, 0.12) { chance.about(0.7) } else { chance.about(0.12) };
    Cloth {
        kind,
        warp,
        weft,
        ends: ends as f32,
        picks: (picks[0] + (picks[1] - picks[0]) * (0.6 * even + 0.4 * chance.share())) as f32,
        turn: [(turn + bias).sin() as f32, (turn + bias).cos() as f32],
        hand: if whether(chance, 0.65) { 1 } else { -1 },
        bow: 0.35 * slub,
        slub,
        wash: chance.between(0.0, 0.9) as f32,
        relief: chance.between(0.6, 1.25) as f32,
        salt: salt(chance),
    }
}

/// A thread for a cloth.
pub(super) fn thread(chance: &mut Chance, cloth: &Cloth, sewn: Sewn, pitch: f64, tonal: bool, level: Level) -> Thread {
    let face = cloth.mean();
    let least = match level {
        Level::Easy => 0.36,
        Level::Normal => 0.27,
        Level::Hard => 0.20,
    };
    let mut colour = if apart(face, [0.0; 3]) > 0.8 { display(30, 32, 60) } else { display(236, 233, 226) };
    if tonal {
        let bright = chance.between(0.72, 1.35) as f32;
        colour = face.map(|v| (v * bright * (1.0 + chance.about(0.06) as f32)).clamp(0.006, 0.95));
    } else {
        for _ in 0..12 {
            let other = one_of(chance, &THREADS);
            // Some threads are faded towards the cloth.
            let other = mix(other, face, if whether(chance, 0.35) { chance.between(0.0, 0.5) as f32 } else { 0.0 });
            if apart(other, face) > least {
                colour = other;
                break;
            }
        }
    }
    let heavy = matches!(cloth.kind, ClothKind::Denim | ClothKind::Leather) && whether(chance, 0.7);
    let wide = (if heavy { chance.between(0.36, 0.72) } else { chance.between(0.22, 0.48) }).min(0.30 * pitch + 0.08) as f32;
    let lean =
        if whether(chance, 0.7) { chance.between(0.05, 0.32) } else { 0.0 } * if whether(chance, 0.7) { 1.0 } else { -1.0 };
    Thread {
        sewn,
        colour,
        wide,
        dive: chance.between(0.0, 0.085) as f32,
        lean: lean as f32 * wide,
        plies: if whether(chance, 0.6) { 3.0 } else { 2.0 },
        twist: chance.between(0.45, 0.95) as f32,
        taper: chance.between(0.0, 0.35) as f32,
        gloss: if whether(chance, 0.5) { chance.between(0.10, 0.5) } else { 0.03 } as f32,
        fuzz: chance.between(0.1, 1.0) as f32,
        spread: if sewn == Sewn::Chain { wide * chance.between(0.3, 0.8) as f32 } else { 0.0 },
        hole: (chance.between(0.35, 0.62) as f32 * wide).max(0.13),
        under: whether(chance, 0.10).then(|| one_of(chance, &THREADS)),
    }
}

/// Light, lens and the quality of the kept file.
pub(super) fn exposure(chance: &mut Chance, level: Level, width_mm: f64, tilt_deg: f64) -> (Light, Lens, u8) {
    let (azimuth, height) = (chance.between(0.0, 2.0 * PI), chance.between(24.0, 72.0_f64).to_radians());
    let hand_share = match level {
        Level::Easy => 0.05,
        Level::Normal => 0.20,
        Level::Hard => 0.40,
    };
    let hand = whether(chance, hand_share).then(|| {
        let soft = chance.between(2.0, 12.0);
        [chance.between(0.0, 2.0 * PI), chance.about(0.25 * width_mm), soft, chance.between(0.25, 0.6)].map(|v| v as f32)
    });
    let light = Light {
        lamp: [(azimuth.cos() * height.cos()) as f32, (azimuth.sin() * height.cos()) as f32, height.sin() as f32],
        ambient: chance.between(0.35, 0.75) as f32,
        slope: [chance.about(0.35) as f32, chance.about(0.35) as f32],
        vignette: chance.between(0.0, 0.28) as f32,
        hand,
    };
    // Blur, shake, grain, exposure, quality.
    let (blur, shake, grain, dim, quality) = match level {
        Level::Easy => ([0.45, 0.9], [0.10, 1.4], [0.008, 0.022], [0.85, 1.2], [78.0, 93.0]),
        Level::Normal => ([0.5, 1.35], [0.25, 2.4], [0.012, 0.042], [0.7, 1.3], [60.0, 92.0]),
        Level::Hard => ([0.8, 2.1], [0.5, 5.0], [0.03, 0.085], [0.38, 1.45], [38.0, 84.0]),
    };
    let sigma = chance.between(blur[0], blur[1]) as f32;
    let warm = chance.about(0.20) as f32;
    let lens = Lens {
        blur: sigma,
        far_blur: sigma + (tilt_deg / 25.0 * chance.between(0.0, 3.0)) as f32,
        shake: if whether(chance, shake[0]) { chance.between(0.6, shake[1]) as f32 } else { 0.0 },
        shake_way: chance.between(0.0, PI) as f32,
        grain: chance.between(grain[0], grain[1]) as f32,
        floor: (chance.between(grain[0], grain[1]) * 0.12) as f32,
        chroma: chance.between(0.2, 0.7) as f32,
        exposure: chance.between(dim[0], dim[1]) as f32,
        balance: [
            1.0 + warm + 0.03 * normal(chance) as f32,
            1.0 + 0.02 * normal(chance) as f32,
            1.0 - warm + 0.03 * normal(chance) as f32,
        ],
        sharpen: if whether(chance, 0.6) { chance.between(0.2, 1.1) as f32 } else { 0.0 },
        sharp_width: chance.between(0.8, 1.8) as f32,
        contrast: chance.between(0.0, 0.55) as f32,
        salt: salt(chance),
    };
    (light, lens, chance.between(quality[0], quality[1]).round() as u8)
}
