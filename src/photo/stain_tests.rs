//! The handbook's rows, refusals, and stains drawn under colour cast, wrong tone curve and uneven light.

use super::*;

struct Chance(u64);

impl Chance {
    /// 0 to 1. SplitMix64 (Steele, Lea, Flood 2014).
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn within(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }

    fn normal(&mut self) -> f64 {
        (-2.0 * self.next().max(1e-300).ln()).sqrt() * (std::f64::consts::TAU * self.next()).cos()
    }
}

fn encoded(linear: f64) -> f64 {
    if linear <= 0.003_130_8 { 12.92 * linear } else { 1.055 * linear.powf(1.0 / 2.4) - 0.055 }
}

const SIDE: usize = 240;
const SPOT: Patch = patch(95.0, 95.0, 145.0, 145.0);
const ROUND: [Patch; 4] = [
    patch(6.0, 95.0, 30.0, 145.0),
    patch(210.0, 95.0, 234.0, 145.0),
    patch(95.0, 6.0, 145.0, 30.0),
    patch(95.0, 210.0, 145.0, 234.0),
];

const fn patch(left: f64, top: f64, right: f64, bottom: f64) -> Patch {
    Patch { from: Point { x: left, y: top }, to: Point { x: right, y: bottom } }
}

fn picture(colour: impl FnMut(usize, usize) -> [u8; 3]) -> Vec<u8> {
    let mut colour = colour;
    (0..SIDE * SIDE)
        .flat_map(|at| {
            let [r, g, b] = colour(at % SIDE, at / SIDE);
            [r, g, b, 255]
        })
        .collect()
}

fn graded(bytes: &[u8], white: &[Patch]) -> Result<StainReading, StainRefusal> {
    grade(&Raster::new(SIDE, SIDE, bytes).expect("a picture"), SPOT, white)
}

fn in_spot(x: usize, y: usize) -> bool {
    (85..155).contains(&x) && (85..155).contains(&y)
}

/// A photograph of a stained tissue, and the true grade by the colours of tissue and stain.
fn photograph(seed: u64) -> (Vec<u8>, f64) {
    let mut chance = Chance(seed);
    let level = chance.within(0.72, 0.88);
    let tissue = [level * chance.within(0.97, 1.0), level, level * chance.within(0.97, 1.03)];
    let dyes =
        [[0.05, 0.10, 0.28], [0.03, 0.03, 0.04], [0.45, 0.06, 0.08], [0.25, 0.14, 0.07], [0.08, 0.28, 0.12], [0.10, 0.16, 0.30]];
    let dye = dyes[(chance.next() * 6.0) as usize % 6];
    let cover = chance.next().powi(2) * 0.9;
    let stained: [f64; 3] = std::array::from_fn(|n| tissue[n] * (1.0 - cover) + tissue[n] * dye[n] * cover);
    let truth = staining_grade(staining_difference(lab(tissue), lab(stained)));
    let exposure = chance.within(0.55, 0.98);
    let cast: [f64; 3] = std::array::from_fn(|_| chance.within(0.85, 1.0) * exposure);
    let (slope_x, slope_y) = (chance.within(-0.12, 0.12), chance.within(-0.12, 0.12));
    let (curve, s_shape) = (chance.within(0.85, 1.15), chance.within(-0.06, 0.06));
    let (noise, emboss) = (chance.within(0.5, 3.0), chance.within(0.0, 0.03));
    let (blotch, phase) = (chance.within(0.0, 0.12), chance.within(0.0, 6.0));
    let bytes = picture(|x, y| {
        let (u, v) = (x as f64 / SIDE as f64 - 0.5, y as f64 / SIDE as f64 - 0.5);
        let light = 1.0 + slope_x * 2.0 * u + slope_y * 2.0 * v + emboss * (x as f64 * 0.9).sin() * (y as f64 * 0.9).sin();
        let edge = (((u * u + v * v).sqrt() - 0.24) / 0.04).clamp(0.0, 1.0);
        let strength = (1.0 - edge) * (1.0 + blotch * (x as f64 * 0.21 + phase).sin() * (y as f64 * 0.17).cos());
        std::array::from_fn(|n| {
            let colour = tissue[n] + (stained[n] - tissue[n]) * strength;
            let value = encoded((colour * light * cast[n]).clamp(0.0, 1.0)).powf(curve);
            let value = value + s_shape * (std::f64::consts::TAU * value).sin() * 0.5;
            (value * 255.0 + noise * chance.normal()).round().clamp(0.0, 255.0) as u8
        })
    });
    (bytes, truth)
}

#[test]
fn the_five_whole_steps_of_the_grey_scale_come_out_as_the_handbook_says() {
    // ISO 105-A03: differences of the chips; all are grey, so that dE_GS is dE.
    for (difference, grade) in
        [(0.0, 5.0), (2.2, 4.5), (4.3, 4.0), (6.0, 3.5), (8.5, 3.0), (12.0, 2.5), (16.9, 2.0), (24.0, 1.5), (34.1, 1.0)]
    {
        let found = staining_grade(staining_difference([91.0, 0.0, 0.0], [91.0 - difference, 0.0, 0.0]));
        assert!((found - grade).abs() <= 0.02, "{difference}: {found}");
    }
}

#[test]
fn staining_agrees_with_the_rows_of_the_handbook() {
    // grey_scale_instrument.csv, GA04_1 to GA04_5: white, stained, dE_GS, grade.
    for (white, stained, difference, grade) in [
        ([94.0, -0.5, 2.0], [89.7, -0.5, 2.0], 4.3000, 3.985),
        ([94.0, 0.0, 2.0], [77.1, 0.0, 2.0], 16.9000, 2.000),
        ([94.0, -0.5, 2.0], [86.0, -1.0, -6.0], 8.1185, 3.063),
        ([94.0, -0.5, 2.0], [72.0, -1.5, -14.0], 20.8088, 1.699),
        ([94.0, -0.5, 2.0], [92.0, -0.6, 0.5], 1.9007, 4.563),
    ] {
        let found = staining_difference(white, stained);
        assert!((found - difference).abs() < 5e-4 && (staining_grade(found) - grade).abs() < 1e-3, "{found}");
    }
}

#[test]
fn drawn_stains_are_graded_within_half_a_grade() {
    let mut off = Vec::new();
    let mut near_2u = 0;
    let asked = 150;
    for seed in 0..asked {
        let (bytes, truth) = photograph(910_000 + seed);
        if let Ok(reading) = graded(&bytes, &ROUND) {
            off.push(reading.grade - truth);
            near_2u += u32::from((reading.grade - truth).abs() <= 2.0 * reading.u);
        }
    }
    let answered = off.len() as f64;
    let within = off.iter().filter(|off| off.abs() <= 0.5).count() as f64 / answered;
    let sd = (off.iter().map(|off| off * off).sum::<f64>() / answered).sqrt();
    let mean = off.iter().sum::<f64>() / answered;
    eprintln!(
        "stains: answered {answered} of {asked}, mean {mean:.3}, rms {sd:.3}, within half {within:.3}, within 2u {near_2u}"
    );
    assert!(answered >= 0.8 * asked as f64 && within >= 0.95 && sd < 0.25 && mean.abs() < 0.1);
}

#[test]
fn what_cannot_be_graded_is_refused_with_what_to_do() {
    let flat = |white: u8, stain: u8| picture(|x, y| [if in_spot(x, y) { stain } else { white }; 3]);
    assert!(graded(&flat(220, 150), &ROUND).is_ok());
    assert_eq!(graded(&flat(255, 150), &ROUND), Err(StainRefusal::TooBright));
    assert_eq!(graded(&flat(90, 50), &ROUND), Err(StainRefusal::TooDark));
    assert_eq!(graded(&flat(180, 220), &ROUND), Err(StainRefusal::Reversed));
    assert_eq!(graded(&flat(220, 150), &[]), Err(StainRefusal::NoWhiteNear));
    let shadow = picture(|x, y| {
        if in_spot(x, y) {
            [150; 3]
        } else if x > 200 {
            [170; 3]
        } else {
            [220; 3]
        }
    });
    assert_eq!(graded(&shadow, &ROUND), Err(StainRefusal::WhiteUneven));
    let half = picture(|x, y| if in_spot(x, y) && x < 120 { [130; 3] } else { [220; 3] });
    assert_eq!(graded(&half, &ROUND), Err(StainRefusal::StainUneven));
    for odd in [f64::NAN, f64::INFINITY, -50.0, 1e300, 9_999.0] {
        let bytes = flat(220, 150);
        let raster = Raster::new(SIDE, SIDE, &bytes).expect("a picture");
        assert_eq!(grade(&raster, patch(odd, 95.0, 145.0, 145.0), &ROUND), Err(StainRefusal::Marks));
        assert_eq!(grade(&raster, SPOT, &[patch(6.0, odd, 30.0, 145.0)]), Err(StainRefusal::Marks));
    }
    let small = Raster::new(12, 12, &[200; 576]).expect("a picture");
    let corner = patch(0.0, 0.0, 3.0, 3.0);
    assert_eq!(grade(&small, corner, &[corner]), Err(StainRefusal::Marks));
}

#[test]
fn white_on_one_side_or_on_one_line_is_enough_and_makes_no_plane() {
    let bytes = picture(|x, y| [if in_spot(x, y) { 150 } else { 220 }; 3]);
    let whole = graded(&bytes, &ROUND).expect("a grade");
    for some in [&ROUND[..1], &ROUND[..2], &[ROUND[0], ROUND[0], ROUND[1]][..]] {
        let reading = graded(&bytes, some).expect("a grade");
        assert!((reading.grade - whole.grade).abs() < 1e-9 && reading.u >= whole.u);
    }
}
