//! The recipe of a photograph: everything that varies, drawn from a seed.

use std::f64::consts::PI;

use super::super::chance::Chance;
use super::camera::Camera;
use super::cloth::{Cloth, ClothKind};
use super::lens::Lens;
use super::object::Object;
use super::path::Path;
use super::thread::{Feed, Row, Sewn, Thread};
use super::truth::{Level, SeamTruth};
use super::wardrobe;
use super::{HIGH, WIDE, marks, objects};

/// A step of height beside the seam: the edge of the upper layer.
pub(super) struct Fold {
    /// Where the edge lies across the path, mm.
    pub across: f32,
    /// 1 if the lower layer lies at greater `across`, -1 if at less.
    pub side: f32,
    /// The lower layer.
    pub lower: Cloth,
    /// Slope of the ripples between row and edge, and their length in mm.
    pub roping: f32,
    pub ripple: f32,
}

/// Lamp, sky and shadows.
pub(super) struct Light {
    /// Unit vector towards the lamp.
    pub lamp: [f32; 3],
    pub ambient: f32,
    /// Change of brightness over a picture's width, along x and y of the cloth.
    pub slope: [f32; 2],
    pub vignette: f32,
    /// A hand's shadow: direction of its edge, place, softness in mm, depth.
    pub hand: Option<[f32; 4]>,
}

/// All of a photograph but its pixels.
pub(super) struct Scene {
    pub camera: Camera,
    pub distance: f64,
    /// Width of the picture on the cloth, mm.
    pub width_mm: f64,
    pub cloth: Cloth,
    pub path: Path,
    pub rows: Vec<Row>,
    pub thread: Thread,
    pub fold: Option<Fold>,
    pub pucker: f32,
    pub pull: f32,
    pub object: Object,
    pub light: Light,
    pub lens: Lens,
    pub quality: u8,
    pub salt: u32,
    pub truth: SeamTruth,
}

/// About normally distributed with variance 1.
pub(super) fn normal(chance: &mut Chance) -> f64 {
    (0..12).map(|_| chance.share()).sum::<f64>() - 6.0
}

/// Even on a scale of ratios.
pub(super) fn ratio(chance: &mut Chance, low: f64, high: f64) -> f64 {
    low * (high / low).powf(chance.share())
}

pub(super) fn whether(chance: &mut Chance, share: f64) -> bool {
    chance.share() < share
}

pub(super) fn salt(chance: &mut Chance) -> u32 {
    (chance.share() * 4_294_967_295.0) as u32
}

/// The kinds of scale, in their shares.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Wanted {
    Millimetre,
    Sixteenth,
    Card,
}

impl Scene {
    /// The scene of a seed. Drafts whose seam, ruler or card does not fit the picture are thrown away; the kind of scale and the level stand
    /// from the first draft, so that throwing away does not shift their shares.
    pub(super) fn drawn(seed: u64) -> Scene {
        let mut first = Chance::new(seed.wrapping_mul(0x2545_f491_4f6c_dd1d));
        let wanted = match first.share() {
            x if x < 0.65 => Wanted::Millimetre,
            x if x < 0.90 => Wanted::Sixteenth,
            _ => Wanted::Card,
        };
        let level = match first.share() {
            x if x < 0.25 => Level::Easy,
            x if x < 0.72 => Level::Normal,
            _ => Level::Hard,
        };
        let mut draft = 0_u64;
        loop {
            let mut chance =
                Chance::new(seed.wrapping_mul(0x2545_f491_4f6c_dd1d) ^ (draft + 1).wrapping_mul(0x9e6c_63d0_876a_9a7f));
            // After many drafts only the tamest remain: straight, level, near the middle. Those always fit.
            let tame = draft > 200;
            if let Some(scene) = draft_of(&mut chance, wanted, level, tame) {
                return scene;
            }
            draft += 1;
        }
    }
}

fn draft_of(chance: &mut Chance, wanted: Wanted, level: Level, tame: bool) -> Option<Scene> {
    let per_inch = chance.between(4.0, 16.0);
    let pitch = 25.4 / per_inch;
    let width_mm = match wanted {
        Wanted::Card => chance.between(100.0, 180.0),
        Wanted::Sixteenth => ratio(chance, 55.0, 180.0),
        Wanted::Millimetre => ratio(chance, 44.0, 185.0),
    };
    let scale = f64::from(WIDE as u32) / width_mm;
    if !(9.0..78.0).contains(&(scale * pitch)) {
        return None;
    }
    let tilt_deg = if tame {
        0.0
    } else {
        match level {
            Level::Easy => (2.6 * normal(chance)).abs().min(8.0),
            Level::Normal => (7.2 * normal(chance)).abs().min(16.0),
            Level::Hard => (8.5 * normal(chance)).abs().min(25.0),
        }
    };
    let curved = !tame && whether(chance, 0.25);
    let radius = curved.then(|| {
        let radius = chance.between((0.85 * width_mm).clamp(70.0, 300.0), 320.0);
        if whether(chance, 0.5) { radius } else { -radius }
    });
    let path = Path { radius };

    let kind = match chance.share() {
        x if x < 0.40 => ClothKind::Denim,
        x if x < 0.62 => ClothKind::Twill21,
        x if x < 0.72 => ClothKind::Chambray,
        x if x < 0.82 => ClothKind::Plain,
        x if x < 0.91 => ClothKind::Leather,
        _ => ClothKind::Jersey,
    };
    let cloth = wardrobe::cloth(chance, kind);
    let tonal = whether(chance, if level == Level::Hard { 0.22 } else { 0.06 });
    let sewn = if whether(chance, 0.18) { Sewn::Chain } else { Sewn::Lock };
    let thread = wardrobe::thread(chance, &cloth, sewn, pitch, tonal, level);

    let evenness = ratio(chance, 0.0085, 0.145);
    let alternation = if whether(chance, 0.25) { evenness * chance.between(0.3, 0.8) } else { 0.0 };
    let feed = Feed {
        pitch,
        jitter: (evenness * evenness - alternation * alternation).sqrt() * 0.97,
        alternation,
        drift: if whether(chance, 0.4) { chance.about(0.07) } else { 0.0 },
    };
    let count = match chance.share() {
        x if x < 0.58 => 1,
        x if x < 0.88 => 2,
        _ => 3,
    };
    let spacing = chance.between(2.2, 7.0).min(0.11 * width_mm);
    let skip = whether(chance, 0.07);
    let marked = if whether(chance, 0.75) { 0 } else { (chance.share() * count as f64) as usize };
    // A row may begin or end inside the picture.
    let ends = [0, 1].map(|_| if !tame && whether(chance, 0.14) { chance.between(0.30, 0.46) } else { 0.95 });
    let rows: Vec<Row> = (0..count)
        .map(|row| {
            let across = -spacing * row as f64;
            let (start, end) = (-width_mm * ends[0] + chance.about(1.0), width_mm * ends[1] + chance.about(1.0));
            Row::sewn(chance, across, path.stretch(across), start, end, feed, &thread, skip && row == marked)
        })
        .collect();

    let object = objects::laid(chance, wanted, width_mm, path)?;
    let distance = chance.between(90.0, 250.0).max(0.68 * width_mm);
    let roll = if tame {
        0.0
    } else {
        match chance.share() {
            x if x < 0.70 => chance.about(0.16) + chance.about(0.12),
            x if x < 0.85 => PI + chance.about(0.25),
            _ if wanted == Wanted::Card => chance.about(0.1),
            x => (if x < 0.93 { 1.0 } else { -1.0 }) * (PI / 2.0 + chance.about(0.45)),
        }
    };
    let look = objects::looked_at(chance, wanted, width_mm, &object, spacing * (count - 1) as f64, tame);
    let camera = Camera::new(
        distance * scale,
        distance,
        tilt_deg.to_radians(),
        chance.between(0.0, 2.0 * PI),
        roll,
        look,
        [WIDE as f64 / 2.0, HIGH as f64 / 2.0],
    );

    let fold = (kind != ClothKind::Jersey && whether(chance, 0.5)).then(|| {
        let near = whether(chance, 0.4);
        let edge = chance.between(1.3, 4.5);
        let mut lower = wardrobe::cloth(chance, kind);
        (lower.warp, lower.weft, lower.ends, lower.picks, lower.wash) =
            (cloth.warp, cloth.weft, cloth.ends, cloth.picks, cloth.wash);
        if whether(chance, 0.25) {
            lower.warp = lower.warp.map(|v| v * 0.8);
        }
        Fold {
            across: if near { edge } else { -spacing * (count - 1) as f64 - edge } as f32,
            side: if near { 1.0 } else { -1.0 },
            lower,
            roping: if whether(chance, 0.5) { chance.between(0.05, 0.28) as f32 } else { 0.0 },
            ripple: chance.between(2.5, 7.0) as f32,
        }
    });
    let truth = marks::truth(
        chance,
        &marks::Sight { camera: &camera, path, rows: &rows, marked, object: &object, scale },
        marks::Given { level, cloth: kind, sewn, tonal, curved, tilt_deg },
    )?;
    let (light, lens, quality) = wardrobe::exposure(chance, level, width_mm, tilt_deg);
    let (pucker, pull, salt) = (chance.between(0.0, 0.22) as f32, chance.between(0.0, 0.30) as f32, salt(chance));
    Some(Scene {
        camera,
        distance,
        width_mm,
        cloth,
        path,
        rows,
        thread,
        fold,
        pucker,
        pull,
        object,
        light,
        lens,
        quality,
        salt,
        truth,
    })
}
