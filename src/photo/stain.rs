//! The grade of a stain on white, against white of the same picture.

use serde::{Deserialize, Serialize};

use crate::{Point, Raster};

/// A rectangle of the picture, by two opposite corners (pixels).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Patch {
    /// A corner.
    pub from: Point,
    /// The corner opposite.
    pub to: Point,
}

/// What was read from the stain.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct StainReading {
    /// Grade by the formula, 1 to 5, not rounded.
    pub grade: f64,
    /// Its standard uncertainty in grades.
    pub u: f64,
}

/// Why the stain was not graded.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum StainRefusal {
    /// A mark is no rectangle inside the picture, or too small to say a colour.
    Marks,
    /// No white is marked, or all of it lies far from the stain.
    NoWhiteNear,
    /// White is so bright that it is cut off.
    TooBright,
    /// White is so dark that noise and tone curve drown the colour.
    TooDark,
    /// White differs from white: a shadow, a fold, or a mark on something else.
    WhiteUneven,
    /// The stain differs within its mark.
    StainUneven,
    /// The stain is brighter than the white.
    Reversed,
}

/// White counts as this bright, as a tissue does: luminance as a share of a perfect white. The grade hardly feels it.
const WHITE: f64 = 0.80;
/// Share of the pixels of white that may be cut off, and from which value on one counts so.
const CUT_OFF: (f64, u8) = (0.02, 254);
/// Least luminance of white.
const DARKEST: f64 = 0.12;
/// White patches may differ by this share at most, the slope of the light taken out where it can be.
const WHITE_MAY_DIFFER: f64 = 0.06;
/// The same without a slope taken out, and across the stain: beyond this the light itself is too uneven.
const LIGHT_MAY_DIFFER: f64 = 0.35;
/// Fewest pixels along the side of a patch.
const LEAST_SIDE: usize = 8;
/// Blocks along each side of a patch, by which its evenness is judged.
const BLOCKS: usize = 4;
/// Standard uncertainty of the camera's tone curve, as a share of its exponent: 15 % either way, all alike likely.
const CURVE: f64 = 0.087;
/// What no drawn picture shows: colours seen by a camera and not by an eye, brighteners, gloss. In grades. Judgement.
const CAMERA: f64 = 0.25;

/// Grades the stain in a patch against white patches round it.
///
/// # Formula
/// Colours are made linear (sRGB). White at the stain is the white of the patches, with the slope of the light taken out where three or more
/// stand round it. The stain is divided by white channel by channel (von Kries), white being set to a neutral 0.80; CIELAB under D65 of both
/// gives `dE` and `dL`. `dE_GS = dE - 0.4 sqrt(dE^2 - dL^2)`; grade `6.1 - 1.45 ln dE_GS`, where that is above 4 `5 - 0.23 dE_GS`.
///
/// # Uncertainty
/// Scatter of blocks of the stain and of the white, the camera's tone curve (15 % either way), and a quarter of a grade for what no drawn
/// picture shows.
///
/// # Source
/// ISO 105-A04, as public code naming the standard has it; IEC 61966-2-1 (sRGB); ISO/CIE 11664-4 (CIELAB).
///
/// # Errors
/// A [`StainRefusal`] that says what to do. Never panics.
pub fn grade(picture: &Raster, stain: Patch, white: &[Patch]) -> Result<StainReading, StainRefusal> {
    let spot = Area::within(picture, stain).ok_or(StainRefusal::Marks)?;
    if white.is_empty() {
        return Err(StainRefusal::NoWhiteNear);
    }
    let whites: Vec<Area> =
        white.iter().map(|patch| Area::within(picture, *patch)).collect::<Option<_>>().ok_or(StainRefusal::Marks)?;
    let reach = 3.0 * (spot.width() + spot.height());
    let near: Vec<Seen> = (whites.iter())
        .filter(|area| (area.middle().0 - spot.middle().0).hypot(area.middle().1 - spot.middle().1) <= reach)
        .map(|area| area.seen(picture))
        .collect();
    if near.is_empty() {
        return Err(StainRefusal::NoWhiteNear);
    }
    if near.iter().any(|seen| seen.cut_off > CUT_OFF.0) {
        return Err(StainRefusal::TooBright);
    }
    if near.iter().any(|seen| luminance(seen.mean) < DARKEST) {
        return Err(StainRefusal::TooDark);
    }
    let (reference, white_off) = white_at(&near, spot.middle())?;
    let seen = spot.seen(picture);
    let share = |colour: [f64; 3], curve: f64| -> [f64; 3] {
        std::array::from_fn(|n| (colour[n].max(1e-4) / reference[n]).powf(curve) * WHITE)
    };
    if luminance(share(seen.mean, 1.0)) > WHITE * 1.06 {
        return Err(StainRefusal::Reversed);
    }
    let differs = |colour: [f64; 3], curve: f64| staining_difference(lab([WHITE; 3]), lab(share(colour, curve)));
    let difference = differs(seen.mean, 1.0);
    let blocks: Vec<f64> = seen.blocks.iter().map(|block| differs(*block, 1.0)).collect();
    let scatter = deviation(&blocks);
    if scatter > (0.3 * difference).max(2.5) {
        return Err(StainRefusal::StainUneven);
    }
    let graded = staining_grade(difference);
    // How steep the grade is where it was found.
    let steep = (staining_grade((difference - 0.5).max(0.0)) - staining_grade(difference + 0.5)).abs();
    let curve = (staining_grade(differs(seen.mean, 1.0 + CURVE)) - staining_grade(differs(seen.mean, 1.0 - CURVE))).abs() / 2.0;
    // A share of white is this much lightness: 116 / 3 of the cube root.
    let white_lightness = white_off * 116.0 / 3.0 * WHITE.cbrt();
    let u = (steep * scatter / 2.0).hypot(steep * white_lightness).hypot(curve).hypot(CAMERA);
    if !graded.is_finite() || !u.is_finite() {
        return Err(StainRefusal::Marks);
    }
    Ok(StainReading { grade: graded.clamp(1.0, 5.0), u })
}

/// White where the stain lies, and how far off it may be as a share.
fn white_at(near: &[Seen], (x, y): (f64, f64)) -> Result<([f64; 3], f64), StainRefusal> {
    let count = near.len() as f64;
    let green: Vec<f64> = near.iter().map(|seen| luminance(seen.mean).ln()).collect();
    let (low, high) = green.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(*at), high.max(*at)));
    if high - low > LIGHT_MAY_DIFFER {
        return Err(StainRefusal::WhiteUneven);
    }
    let around: Vec<(f64, f64)> = near.iter().map(|seen| (seen.middle.0 - x, seen.middle.1 - y)).collect();
    let weights = plane_weights(&around);
    let weighted = weights.clone().unwrap_or_else(|| vec![1.0 / count; near.len()]);
    let reference: [f64; 3] =
        std::array::from_fn(|n| near.iter().zip(&weighted).map(|(seen, w)| w * seen.mean[n].ln()).sum::<f64>().exp());
    // What is left of each channel when the plane is taken out (or the mean, where there is none).
    let mut worst = 0.0_f64;
    for n in 0..3 {
        let logs: Vec<f64> = near.iter().map(|seen| seen.mean[n].ln()).collect();
        let left = if weights.is_some() {
            off_plane(&around, &logs)
        } else {
            logs.iter().map(|at| at - logs.iter().sum::<f64>() / count).collect()
        };
        worst = worst.max(left.iter().fold(0.0, |most, at| most.max(at.abs())));
    }
    let inside = near
        .iter()
        .map(|seen| deviation(&seen.blocks.iter().map(|block| luminance(*block).ln()).collect::<Vec<_>>()))
        .fold(0.0, f64::max);
    if worst > if weights.is_some() { WHITE_MAY_DIFFER } else { 2.0 * WHITE_MAY_DIFFER } || inside > 1.5 * WHITE_MAY_DIFFER {
        return Err(StainRefusal::WhiteUneven);
    }
    // One patch on one side says nothing about the slope of the light: 3 % (judgement).
    let one_sided = if near.len() == 1 { 0.03 } else { 0.0 };
    let off = (worst * worst + inside * inside).sqrt() / count.sqrt();
    Ok((reference, off.hypot(one_sided)))
}

/// Weights with which values at these places give the value of their plane at the origin; none where they do not stand round it.
fn plane_weights(around: &[(f64, f64)]) -> Option<Vec<f64>> {
    if around.len() < 3 {
        return None;
    }
    let sum = |of: &dyn Fn(&(f64, f64)) -> f64| around.iter().map(of).sum::<f64>() / around.len() as f64;
    let (mx, my) = (sum(&|at| at.0), sum(&|at| at.1));
    let (xx, yy, xy) = (sum(&|at| (at.0 - mx).powi(2)), sum(&|at| (at.1 - my).powi(2)), sum(&|at| (at.0 - mx) * (at.1 - my)));
    let area = xx * yy - xy * xy;
    // Nearly on one line, or the stain outside of them: no plane.
    if area <= 0.02 * (xx + yy).powi(2) || mx * mx + my * my > xx + yy {
        return None;
    }
    let slope = |at: &(f64, f64)| {
        let (dx, dy) = (at.0 - mx, at.1 - my);
        ((yy * dx - xy * dy) / area, (xx * dy - xy * dx) / area)
    };
    let n = around.len() as f64;
    Some(around.iter().map(|at| (1.0 - mx * slope(at).0 - my * slope(at).1) / n).collect())
}

/// What is left of values when their plane of least squares is taken out.
fn off_plane(around: &[(f64, f64)], values: &[f64]) -> Vec<f64> {
    let at_place = |place: &(f64, f64)| {
        let moved: Vec<(f64, f64)> = around.iter().map(|at| (at.0 - place.0, at.1 - place.1)).collect();
        // The same plane, whose weights are always there since they were before; else the value's own mean.
        let n = moved.len() as f64;
        let (mx, my) = (moved.iter().map(|at| at.0).sum::<f64>() / n, moved.iter().map(|at| at.1).sum::<f64>() / n);
        let (mut xx, mut yy, mut xy, mut xv, mut yv) = (0.0, 0.0, 0.0, 0.0, 0.0);
        let mean = values.iter().sum::<f64>() / n;
        for (at, value) in moved.iter().zip(values) {
            let (dx, dy) = (at.0 - mx, at.1 - my);
            (xx, yy, xy, xv, yv) = (xx + dx * dx, yy + dy * dy, xy + dx * dy, xv + dx * (value - mean), yv + dy * (value - mean));
        }
        let area = xx * yy - xy * xy;
        let (sx, sy) = ((yy * xv - xy * yv) / area, (xx * yv - xy * xv) / area);
        mean - mx * sx - my * sy
    };
    around.iter().zip(values).map(|(place, value)| value - at_place(place)).collect()
}

fn deviation(values: &[f64]) -> f64 {
    let n = values.len().max(1) as f64;
    let mean = values.iter().sum::<f64>() / n;
    (values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / n).sqrt()
}

/// Whole pixels of a patch: columns and rows, ends left out.
struct Area {
    columns: (usize, usize),
    rows: (usize, usize),
}

/// What an area shows, in linear light.
struct Seen {
    middle: (f64, f64),
    mean: [f64; 3],
    blocks: Vec<[f64; 3]>,
    cut_off: f64,
}

impl Area {
    fn within(picture: &Raster, patch: Patch) -> Option<Area> {
        let ends = |one: f64, other: f64, size: usize| {
            let (low, high) = (one.min(other), one.max(other));
            let inside = one.is_finite() && other.is_finite() && low > -1.0 && high < size as f64 + 1.0;
            let (from, to) = (low.max(0.0).round() as usize, (high.max(0.0).round() as usize).min(size));
            (inside && to >= from + LEAST_SIDE).then_some((from, to))
        };
        Some(Area {
            columns: ends(patch.from.x, patch.to.x, picture.width())?,
            rows: ends(patch.from.y, patch.to.y, picture.height())?,
        })
    }

    fn width(&self) -> f64 {
        (self.columns.1 - self.columns.0) as f64
    }

    fn height(&self) -> f64 {
        (self.rows.1 - self.rows.0) as f64
    }

    fn middle(&self) -> (f64, f64) {
        ((self.columns.0 + self.columns.1) as f64 / 2.0, (self.rows.0 + self.rows.1) as f64 / 2.0)
    }

    fn seen(&self, picture: &Raster) -> Seen {
        let linear: [f64; 256] = std::array::from_fn(|value| decoded(value as f64 / 255.0));
        let mut sums = [([0.0; 3], 0.0); BLOCKS * BLOCKS];
        let mut cut_off = 0.0;
        let block = |at: usize, (from, to): (usize, usize)| (at - from) * BLOCKS / (to - from);
        for row in self.rows.0..self.rows.1 {
            for column in self.columns.0..self.columns.1 {
                let pixel = picture.pixel(column as isize, row as isize);
                if pixel.iter().any(|value| *value >= CUT_OFF.1) {
                    cut_off += 1.0;
                }
                let (sum, count) = &mut sums[block(row, self.rows) * BLOCKS + block(column, self.columns)];
                for (sum, value) in sum.iter_mut().zip(pixel) {
                    *sum += linear[usize::from(value)];
                }
                *count += 1.0;
            }
        }
        let pixels = self.width() * self.height();
        let mean = std::array::from_fn(|n| (sums.iter().map(|(sum, _)| sum[n]).sum::<f64>() / pixels).max(1e-4));
        let blocks = sums.iter().map(|(sum, count)| sum.map(|of| (of / count).max(1e-4))).collect();
        Seen { middle: self.middle(), mean, blocks, cut_off: cut_off / pixels }
    }
}

/// A value of sRGB (0 to 1) as linear light. IEC 61966-2-1.
fn decoded(value: f64) -> f64 {
    if value <= 0.040_45 { value / 12.92 } else { ((value + 0.055) / 1.055).powf(2.4) }
}

/// Luminance of linear light of sRGB. IEC 61966-2-1.
fn luminance([r, g, b]: [f64; 3]) -> f64 {
    0.2126 * r + 0.7152 * g + 0.0722 * b
}

/// CIELAB under D65 of linear light of sRGB. IEC 61966-2-1 for the matrix, whose rows give the white, and ISO/CIE 11664-4.
fn lab([r, g, b]: [f64; 3]) -> [f64; 3] {
    let curve = |t: f64| if t > (6.0_f64 / 29.0).powi(3) { t.cbrt() } else { t * (29.0_f64 / 6.0).powi(2) / 3.0 + 4.0 / 29.0 };
    let x = curve((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
    let y = curve(luminance([r, g, b]));
    let z = curve((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
    [116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)]
}

/// Colour difference as ISO 105-A04 weighs it.
fn staining_difference(white: [f64; 3], stained: [f64; 3]) -> f64 {
    let apart = (white[1] - stained[1]).hypot(white[2] - stained[2]);
    (white[0] - stained[0]).hypot(apart) - 0.4 * apart
}

/// Grade of that difference, not below 1.
fn staining_grade(difference: f64) -> f64 {
    let curved = 6.1 - 1.45 * difference.ln();
    (if curved > 4.0 { 5.0 - 0.23 * difference } else { curved }).max(1.0)
}

#[cfg(test)]
#[path = "stain_tests.rs"]
mod tests;
