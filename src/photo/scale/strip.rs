//! The band of the picture round a ruler's graduations, brought straight.

use crate::{Point, Raster};

/// Brightness (0 to 255) of the picture at a place, between the centres of pixels only in the direction that runs with the ruler: across it a
/// graduation is the same for many pixels, and half the pixels are read.
fn brightness(picture: &Raster, at: Point, level: bool) -> f32 {
    if !at.is_finite() {
        return 0.0;
    }
    // 3, 6, 1 of 10: near enough to luma, and whole numbers are quick.
    let luma = |x: isize, y: isize| {
        let [r, g, b] = picture.pixel(x, y);
        (3 * u32::from(r) + 6 * u32::from(g) + u32::from(b)) as f32 / 10.0
    };
    let (run, rest) = if level { (at.x, at.y) } else { (at.y, at.x) };
    let (whole, other) = (run.floor(), (rest + 0.5).floor() as isize);
    let (part, one) = ((run - whole) as f32, whole as isize);
    let next = one.saturating_add(1);
    let (before, after) = if level { (luma(one, other), luma(next, other)) } else { (luma(other, one), luma(other, next)) };
    before * (1.0 - part) + after * part
}

/// Where along and across a ruler lies in the picture: `u` pixels along from the middle between the marks, `v` pixels across.
#[derive(Clone, Copy, Debug)]
pub(super) struct Axes {
    pub(super) middle: Point,
    pub(super) along: Point,
}

impl Axes {
    /// The place in the picture.
    pub(super) fn place(&self, u: f64, v: f64) -> Point {
        self.middle.stepped(self.along, u).stepped(self.across(), v)
    }

    /// One pixel across.
    pub(super) fn across(&self) -> Point {
        Point { x: -self.along.y, y: self.along.x }
    }
}

/// Bands along a ruler: column `i` lies at `u = first + i * step` pixels, band `b` at `v = (b - middle) * wide` pixels.
#[derive(Clone, Debug)]
pub(super) struct Strip {
    pub(super) axes: Axes,
    pub(super) first: f64,
    pub(super) step: f64,
    pub(super) wide: f64,
    /// Brightness of each band, slow changes along it taken out.
    pub(super) bands: Vec<Vec<f32>>,
    /// The same with its liveliness made equal: faint graduations count like strong ones, and cloth no more than they do.
    pub(super) even: Vec<Vec<f32>>,
}

/// Half a millimetre wide: ticks that lean by half their length stay narrow in it.
pub(super) const BAND_MM: f64 = 0.5;
/// Bands on each side of the line between the marks: 5.5 mm, as far as long graduations go.
const BANDS: usize = 11;
/// Liveliness of nothing at all: the noise of a picture, in steps of brightness.
const NOISE: f32 = 1.0;
/// The finest that is needed along, samples a millimetre.
const FINEST: f64 = 12.0;

impl Strip {
    /// Samples the strip along the line through both marks as far as the picture goes, at most half as far again beyond each mark.
    /// `px_mm` is roughly the pixels in a millimetre, `tick_px` those from tick to tick.
    pub(super) fn new(picture: &Raster, from: Point, to: Point, px_mm: f64, tick_px: f64) -> Strip {
        let length = from.distance(to);
        let way = from.way_to(to);
        let axes = Axes {
            middle: Point { x: (from.x + to.x) / 2.0, y: (from.y + to.y) / 2.0 },
            along: Point { x: way.x / length, y: way.y / length },
        };
        let (low, high) = axes.inside(picture, 1.4 * length);
        let step = (px_mm / FINEST).max(1.0);
        let columns = ((high - low) / step).floor().clamp(0.0, 20_000.0) as usize + 1;
        let wide = (BAND_MM * px_mm).max(1.0);
        let rows = (wide.round() as usize).clamp(1, 6);
        let cells = (step.round() as usize).clamp(1, 2);
        let level = axes.along.x.abs() > axes.along.y.abs();
        let share = 1.0 / (rows * cells) as f32;
        let bands: Vec<Vec<f32>> = (0..=2 * BANDS)
            .map(|band| {
                let v = (band as f64 - BANDS as f64) * wide;
                let raw: Vec<f32> = (0..columns)
                    .map(|column| {
                        let u = low + column as f64 * step;
                        let mut sum = 0.0;
                        for row in 0..rows {
                            let v = v + ((row as f64 + 0.5) / rows as f64 - 0.5) * wide;
                            for cell in 0..cells {
                                let u = u + ((cell as f64 + 0.5) / cells as f64 - 0.5) * step;
                                sum += brightness(picture, axes.place(u, v), level);
                            }
                        }
                        sum * share
                    })
                    .collect();
                let smooth = boxed(&raw, (2.2 * tick_px / step).round() as usize);
                raw.iter().zip(&smooth).map(|(value, mean)| value - mean).collect()
            })
            .collect();
        let even = bands
            .iter()
            .map(|band| {
                let squares: Vec<f32> = band.iter().map(|value| value * value).collect();
                let power = boxed(&squares, (8.8 * tick_px / step).round() as usize);
                band.iter().zip(&power).map(|(value, power)| value / (power.sqrt() + NOISE)).collect()
            })
            .collect();
        Strip { axes, first: low, step, wide, bands, even }
    }

    /// How far across a band lies, pixels.
    pub(super) fn v(&self, band: usize) -> f64 {
        (band as f64 - BANDS as f64) * self.wide
    }

    /// How far along the last column lies, pixels.
    pub(super) fn last(&self) -> f64 {
        self.first + self.step * self.bands.first().map_or(0, |band| band.len().saturating_sub(1)) as f64
    }

    /// The value of a band at `u` pixels along, between columns; none outside.
    pub(super) fn at(&self, band: usize, u: f64) -> Option<f32> {
        let column = (u - self.first) / self.step;
        let whole = column.floor();
        if whole.is_nan() || whole < 0.0 {
            return None;
        }
        let (index, part) = (whole as usize, (column - whole) as f32);
        let values = self.bands.get(band)?;
        Some(values.get(index)? * (1.0 - part) + values.get(index + 1)? * part)
    }
}

impl Axes {
    /// From where to where the line lies inside the picture, pixels from the middle, and not beyond `most`.
    fn inside(&self, picture: &Raster, most: f64) -> (f64, f64) {
        let (mut low, mut high) = (-most, most);
        for (at, way, size) in [
            (self.middle.x, self.along.x, picture.width() as f64 - 1.0),
            (self.middle.y, self.along.y, picture.height() as f64 - 1.0),
        ] {
            if way.abs() > 1e-9 {
                let (one, other) = (-at / way, (size - at) / way);
                low = low.max(one.min(other));
                high = high.min(one.max(other));
            }
        }
        (low, high.max(low))
    }
}

/// Mean over `2 * half + 1`, about `size` neighbours, fewer at the ends.
pub(super) fn boxed(values: &[f32], size: usize) -> Vec<f32> {
    let half = size / 2;
    let mut sums = Vec::with_capacity(values.len() + 1);
    let mut sum = 0.0f64;
    sums.push(0.0);
    for value in values {
        sum += f64::from(*value);
        sums.push(sum);
    }
    (0..values.len())
        .map(|at| {
            let (low, high) = (at.saturating_sub(half), (at + half + 1).min(values.len()));
            ((sums[high] - sums[low]) / (high - low) as f64) as f32
        })
        .collect()
}
