//! Two more kinds of photograph: cloth from near, and tissue after a rub test.

use super::super::chance::Chance;
use super::cloth::ClothKind;
use super::colour::{Rgb, display, mix, times};
use super::lens::{Lens, Planes};
use super::noise::{over, step};
use super::render::PLACES;
use super::scene::{Light, salt, whether};
use super::truth::Level;
use super::wardrobe;

/// Side of these pictures in pixels.
const SIDE: usize = 640;

/// Half the side of the square in the middle of the stain, and the place and half side of the four squares of clean tissue, pixels.
const SPOT: usize = 60;
const CLEAN: (usize, usize) = (40, 28);

/// A photograph of cloth from near, held flat.
#[derive(Clone, PartialEq, Debug)]
pub struct ClothPhotograph {
    /// Side in pixels.
    pub side: usize,
    /// Four bytes a pixel.
    pub rgba: Vec<u8>,
    /// JPEG quality.
    pub quality: u8,
    /// Which weave.
    pub cloth: ClothKind,
    /// Warp yarns a centimetre, counted along the picture's width (turned by `yarn_deg`).
    pub ends_per_cm: f64,
    /// Weft yarns a centimetre.
    pub picks_per_cm: f64,
    /// Turn of the weft against the picture's x axis, degrees, positive if it sinks to the right.
    pub yarn_deg: f64,
    /// Angle of the twill line against the weft, degrees, without sign. Nothing in plain weave.
    pub twill_deg: Option<f64>,
    /// Pixels a millimetre.
    pub px_per_mm: f64,
}

/// A photograph of white tissue with the stain of a rub test in the middle.
#[derive(Clone, PartialEq, Debug)]
pub struct RubPhotograph {
    /// Side in pixels.
    pub side: usize,
    /// Four bytes a pixel.
    pub rgba: Vec<u8>,
    /// JPEG quality.
    pub quality: u8,
    /// Colour of the stain and of the clean tissue: linear light of the display primaries, before lamp and camera.
    pub stain: [f32; 3],
    /// Colour of the clean tissue.
    pub tissue: [f32; 3],
    /// Grade of staining of the two colours, 1 to 5 (ISO 105-A04).
    pub grade: f64,
    /// A square inside the stain: left, top, right, bottom.
    pub spot: [usize; 4],
    /// Four squares of clean tissue.
    pub clean: [[usize; 4]; 4],
}

/// CIELAB of linear light of the display primaries, white being their own white (IEC 61966-2-1; CIE 15).
fn lab(colour: Rgb) -> [f64; 3] {
    let [r, g, b] = colour.map(f64::from);
    let f = |t: f64| if t > 0.008_856_45 { t.cbrt() } else { t / 0.128_418_5 + 4.0 / 29.0 };
    let x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
    let y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
    let z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
    [116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)]
}

/// Grade of staining from lightness and colour difference of CIELAB (ISO 105-A04).
fn grade_of(lightness: f64, difference: f64) -> f64 {
    let grey = difference - 0.4 * (difference * difference - lightness * lightness).max(0.0).sqrt();
    let grade = 6.1 - 1.45 * grey.max(1e-6).ln();
    if grade > 4.0 { (5.0 - 0.23 * grey).min(5.0) } else { grade.max(1.0) }
}

fn grade(tissue: Rgb, stain: Rgb) -> f64 {
    let (a, b) = (lab(tissue), lab(stain));
    let difference = (0..3).map(|k| (a[k] - b[k]).powi(2)).sum::<f64>().sqrt();
    grade_of(a[0] - b[0], difference)
}

fn taken(lens: &Lens, light: impl Fn(f32, f32) -> Rgb) -> Vec<u8> {
    let mut planes = Planes::new(SIDE, SIDE);
    for y in 0..SIDE {
        for x in 0..SIDE {
            let mut sum = [0.0_f32; 3];
            for (dx, dy) in PLACES {
                let seen = light(x as f32 + dx as f32, y as f32 + dy as f32);
                (0..3).for_each(|k| sum[k] += 0.25 * seen[k]);
            }
            (0..3).for_each(|k| planes.plane[k][y * SIDE + x] = sum[k]);
        }
    }
    lens.develop(planes, |_, _| 0.0)
}

fn fall(light: &Light, x: f32, y: f32) -> f32 {
    let (u, v) = (x / SIDE as f32 - 0.5, y / SIDE as f32 - 0.5);
    (1.0 + 0.6 * (light.slope[0] * u + light.slope[1] * v)) * (1.0 - light.vignette * (u * u + v * v))
}

/// The photograph of cloth of a seed.
pub fn cloth_photograph(seed: u64) -> ClothPhotograph {
    let mut chance = Chance::new(seed ^ 0x00c1_0780_0000);
    let kind = match chance.share() {
        x if x < 0.5 => ClothKind::Denim,
        x if x < 0.72 => ClothKind::Twill21,
        x if x < 0.86 => ClothKind::Plain,
        _ => ClothKind::Chambray,
    };
    let mut cloth = wardrobe::cloth(&mut chance, kind);
    let yarn = chance.about(7.0_f64).to_radians();
    cloth.turn = [yarn.sin() as f32, yarn.cos() as f32];
    // Straight enough that counts hold over the whole picture.
    cloth.bow = 0.03;
    let px_per_mm = chance.between(15.0, 28.0);
    let (light, mut lens, quality) = wardrobe::exposure(&mut chance, Level::Normal, SIDE as f64 / px_per_mm, 0.0);
    lens.shake = 0.0;
    let scale = px_per_mm as f32;
    let rgba = taken(&lens, |x, y| {
        let skin = cloth.at(x / scale + 40.0, y / scale + 30.0);
        let bright = light.mirrored(skin.slope, skin.gloss);
        times(times(skin.colour, light.shade(skin.slope, skin.open)).map(|v| v + bright), fall(&light, x, y))
    });
    let twilled = matches!(kind, ClothKind::Denim | ClothKind::Twill21);
    ClothPhotograph {
        side: SIDE,
        rgba,
        quality,
        cloth: kind,
        ends_per_cm: f64::from(cloth.ends) * 10.0,
        picks_per_cm: f64::from(cloth.picks) * 10.0,
        yarn_deg: yarn.to_degrees(),
        twill_deg: twilled.then(|| f64::from(cloth.ends / cloth.picks).atan().to_degrees()),
        px_per_mm,
    }
}

/// The photograph of a rub test of a seed.
pub fn rub_photograph(seed: u64) -> RubPhotograph {
    let mut chance = Chance::new(seed ^ 0x0012_3b00_0000);
    let grain = salt(&mut chance);
    let tissue = display(240, 239, 236).map(|v| v * (1.0 + chance.about(0.03) as f32));
    let dyes = [display(40, 60, 130), display(30, 32, 40), display(150, 30, 40), display(120, 80, 40), display(30, 90, 70)];
    let dye = dyes[((chance.share() * dyes.len() as f64) as usize).min(dyes.len() - 1)];
    let stain = mix(tissue, dye, chance.between(0.0, 1.0).powi(3) as f32 * 0.7 + 0.008);
    let (light, mut lens, quality) = wardrobe::exposure(&mut chance, Level::Normal, 60.0, 0.0);
    // A rub test is read where nothing is burnt out.
    lens.exposure = chance.between(0.55, 0.82) as f32;
    lens.shake = 0.0;
    lens.contrast *= 0.4;
    let (radius, soft) = (chance.between(120.0, 165.0) as f32, chance.between(4.0, 22.0) as f32);
    let streaked = if whether(&mut chance, 0.5) { 0.04 } else { 0.0 };
    let middle = SIDE as f32 / 2.0;
    let rgba = taken(&lens, |x, y| {
        let (dx, dy) = (x - middle, y - middle);
        let edge = radius * (1.0 + 0.06 * over(dx * 0.02, dy * 0.02, grain));
        let inside = 1.0 - step(edge - soft, edge + soft, dx.hypot(dy));
        // Unevenness that leaves the mean as it is.
        let share = inside * (1.0 + streaked * over(x * 0.05, y * 0.4, grain ^ 1));
        // Fibres and embossing of the tissue.
        let slope = [0.07 * over(x * 0.16, y * 0.16, grain ^ 2), 0.07 * over(x * 0.16, y * 0.16, grain ^ 3)];
        times(mix(tissue, stain, share), light.shade(slope, 1.0) * fall(&light, x, y))
    });
    let (centre, (near, half)) = (SIDE / 2, CLEAN);
    let square = |x: usize, y: usize, half: usize| [x - half, y - half, x + half, y + half];
    RubPhotograph {
        side: SIDE,
        rgba,
        quality,
        stain,
        tissue,
        grade: grade(tissue, stain),
        spot: square(centre, centre, SPOT),
        clean: [(near, centre), (SIDE - near, centre), (centre, near), (centre, SIDE - near)].map(|(x, y)| square(x, y, half)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_steps_of_the_grey_scale_for_staining_get_their_own_grades() {
        // Colour differences of the scale's steps (ISO 105-A03): grey against white, so all of the difference is lightness.
        for (difference, grade) in [(4.3, 4.0), (6.0, 3.5), (8.5, 3.0), (12.0, 2.5), (16.9, 2.0), (24.0, 1.5), (34.1, 1.0)] {
            assert!((grade_of(difference, difference) - grade).abs() < 0.06, "{difference}");
        }
    }

    #[test]
    fn white_is_lightness_100_without_hue() {
        let [l, a, b] = lab([1.0; 3]);
        assert!((l - 100.0).abs() < 1e-3 && a.abs() < 0.02 && b.abs() < 0.02, "{l} {a} {b}");
    }

    #[test]
    fn a_stain_is_darker_than_the_tissue_and_its_picture_shows_it() {
        let rub = rub_photograph(5);
        let mean = |[left, top, right, bottom]: [usize; 4]| {
            let all: Vec<f64> = (top..bottom)
                .flat_map(|y| (left..right).map(move |x| (x, y)))
                .map(|(x, y)| f64::from(rub.rgba[4 * (y * SIDE + x) + 1]))
                .collect();
            all.iter().sum::<f64>() / all.len() as f64
        };
        let clean = rub.clean.map(mean).iter().sum::<f64>() / 4.0;
        assert!(rub.stain[1] < rub.tissue[1] && mean(rub.spot) < clean && (1.0..=5.0).contains(&rub.grade));
    }
}
