//! From two marks on a yarn to what is said about the cloth, or why nothing is.

use serde::{Deserialize, Serialize};

use super::lattice::{Fit, fit};
use super::spectrum2d::{Peak, Spectrum};
use crate::{Cause, Part, Point, Raster, Scale};

/// What was read from the cloth.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct WeaveReading {
    /// Yarns per centimetre counted across the marked yarn (the marked yarn is one of them).
    pub along_marked: f64,
    /// Yarns per centimetre counted along the marked yarn.
    pub across_marked: f64,
    /// What makes each uncertain.
    pub budget: Vec<Part>,
    /// Angle between twill line and the yarns across the marked ones, degrees from 0 to 90; none for cloth without a twill line.
    pub twill_degrees: Option<f64>,
    /// Standard uncertainty of that angle in degrees, the phone's tilt not counted.
    pub twill_u: f64,
    /// Pixels of the picture in a yarn, of the finer sort.
    pub px_per_yarn: f64,
    /// Corners of the part that was read, to be shown.
    pub area: [Point; 4],
    /// Lines on the picture along the yarns of either system, ten yarns from one to the next, so that a person can count between them.
    pub lines: Vec<[Point; 2]>,
}

/// Why the cloth was not read.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum WeaveRefusal {
    /// A mark is no place in the picture, or both lie too close together.
    Marks,
    /// Ruler or card lie where the cloth is to be read.
    Covered,
    /// The yarns do not stand out.
    NoYarns,
    /// Fewer than six pixels a yarn.
    TooFar,
    /// Fewer than ten yarns one way.
    TooFew,
    /// What repeats in the picture is no weave along the marked yarn.
    NoWeave,
    /// Two weaves of different counts fit nearly as well.
    Doubtful,
    /// A weave along another direction fits better than any along the marks.
    Astray,
}

/// Angles, in degrees, at which a weave is looked for that fits better than any along the marks; a fit reaches some 7 degrees either way, and a
/// quarter turn is the same weave with its yarn systems changed over.
const ASTRAY: [f64; 5] = [15.0, 30.0, 45.0, 60.0, 75.0];
/// How many times as likely, in logarithms, that must be: of 80 drawn cloths marked along a yarn none reached 1.13, of three that were read along
/// none all passed 1.25.
const BETTER: f64 = 1.18;
/// Fewest pixels a yarn, and fewest yarns each way.
const LEAST_PIXELS: f64 = 6.0;
const LEAST_YARNS: f64 = 10.0;
/// Largest square worked on, in samples.
const LARGEST: usize = 1024;
/// Sides of a block that are quick to transform.
const SIDES: [usize; 11] = [640, 512, 480, 384, 320, 256, 240, 192, 160, 128, 96];
/// Least share of the peaks explained, least peaks, least margin over other counts. Set on drawn cloth of other seeds than the tests use.
const EXPLAINED: f64 = 0.35;
const HITS: usize = 4;
const MARGIN: f64 = 8.0;

/// Reads the cloth round two places on one yarn: a square with the yarn along its middle, one and a quarter times as wide as the marks lie apart
/// where the picture and the ruler or card leave room.
///
/// # Method
/// The square is resampled to the plane of the cloth, light and contrast are evened out, and its power spectrum taken (Welch, Hann). A
/// weave of repeat `n` shows peaks only where `k = (u c + v m) / n` with whole `u`, `v` and `v = s u` but for whole repeats, `c` and `m` being
/// the frequencies of both yarn systems and `s` the step. The weave that makes the peaks likeliest against chance is taken, and refused where
/// one of other counts comes near. The twill line stands square to the peak `(1, s)`.
///
/// # Where it holds
/// Both marks on one yarn, up to some 3 degrees off it; marks that follow no yarn are refused where a weave at another angle fits better. Plain weave, twills of three and four, satins of five. Of 60 drawn cloths with nine pixels a yarn
/// and more 53 were answered, none miscounted; of 40 with six to nine 27 were answered, and two of these gave half of the truth, which
/// the answer does not tell.
///
/// # Uncertainty
/// The parts of the scale, and counting: from the scatter of the peaks about the lattice.
///
/// # Errors
/// A [`WeaveRefusal`] that says what to do. Never panics.
///
/// # Source
/// Spectrum of a woven cloth as a lattice: geometry, worked out here. Welch's method: P. D. Welch, 1967. Angle: handbook, section 4.6.
pub fn yarns(picture: &Raster, from: Point, to: Point, scale: &Scale) -> Result<WeaveReading, WeaveRefusal> {
    let square = Square::between(picture, from, to, scale)?;
    let pixels = square.side * square.px_per_mm;
    // Coarser first where the picture is large: more yarns in the square.
    let coarse = ((pixels / LARGEST as f64).round() as usize).clamp(1, 4);
    let read = read_at(picture, scale, &square, coarse);
    match read {
        Err(_) if coarse > 1 => read_at(picture, scale, &square, 1),
        read => read,
    }
}

/// Reads with so many pixels to a sample.
fn read_at(picture: &Raster, scale: &Scale, square: &Square, coarse: usize) -> Result<WeaveReading, WeaveRefusal> {
    let step = coarse as f64 / square.px_per_mm;
    let size = ((square.side / step) as usize).min(LARGEST);
    let side = SIDES.into_iter().find(|side| *side <= size).ok_or(WeaveRefusal::Marks)?;
    let mut grid = square.sampled(picture, scale, size, step, coarse);
    // Light changes over 6 mm, yarns do not.
    even_out(&mut grid, size, ((6.0 / step) as usize).clamp(8, size / 3));
    let spectrum = Spectrum::of(&grid, size, side).ok_or(WeaveRefusal::NoYarns)?;
    let bins = side as f64;
    let peaks = spectrum.peaks((3.0, 0.42 * bins), 14.0, 30);
    if peaks.len() < 3 {
        return Err(WeaveRefusal::NoYarns);
    }
    let periods = (4.0, size as f64 / 4.0);
    let Fit { weave, likely, explained, margin, hits, off, twill } =
        fit(&peaks, 1.0 / bins, periods).ok_or(WeaveRefusal::NoWeave)?;
    let length = |vector: [f64; 2]| vector[0].hypot(vector[1]);
    let (marked, crossing) = (length(weave.marked), length(weave.crossing));
    if explained < EXPLAINED || hits < HITS {
        return Err(WeaveRefusal::NoWeave);
    }
    let px_per_yarn = coarse as f64 / marked.max(crossing);
    if px_per_yarn < LEAST_PIXELS {
        return Err(WeaveRefusal::TooFar);
    }
    if marked.min(crossing) * (size as f64) < LEAST_YARNS {
        return Err(WeaveRefusal::TooFew);
    }
    if margin < MARGIN {
        return Err(WeaveRefusal::Doubtful);
    }
    let better = |degrees: &f64| {
        let other = fit(&turned(&peaks, *degrees), 1.0 / bins, periods);
        other.is_some_and(|other| other.likely > BETTER * likely && other.explained >= EXPLAINED && other.hits >= HITS)
    };
    if ASTRAY.iter().any(better) {
        return Err(WeaveRefusal::Astray);
    }
    let mut budget = scale.spread_at(scale.plane.in_picture(square.middle));
    budget.push(Part { from: Cause::Counting, share: (off / marked.min(crossing)).hypot(0.003) });
    let repeat = f64::from(weave.step.signum());
    let line = [weave.crossing[0] + repeat * weave.marked[0], weave.crossing[1] + repeat * weave.marked[1]];
    let between = ((line[0] * weave.crossing[0] + line[1] * weave.crossing[1]) / (length(line) * crossing)).clamp(-1.0, 1.0);
    let counted = 10.0 / step;
    Ok(WeaveReading {
        along_marked: marked * counted,
        across_marked: crossing * counted,
        budget,
        twill_degrees: twill.then(|| between.acos().to_degrees()),
        twill_u: (off / marked.min(crossing)).to_degrees().hypot(0.3),
        px_per_yarn,
        area: square.corners(scale, size as f64 * step),
        lines: [weave.marked, weave.crossing]
            .iter()
            .flat_map(|system| square.every_tenth(scale, *system, size as f64 * step, step))
            .collect(),
    })
}

/// The peaks as they would lie were the marks turned by that angle.
fn turned(peaks: &[Peak], degrees: f64) -> Vec<Peak> {
    let (sine, cosine) = degrees.to_radians().sin_cos();
    peaks.iter().map(|peak| Peak { x: cosine * peak.x + sine * peak.y, y: cosine * peak.y - sine * peak.x, ..*peak }).collect()
}

/// A square on the cloth, along the marked yarn.
struct Square {
    middle: Point,
    /// Along the marked yarn, length 1.
    along: Point,
    /// mm.
    side: f64,
    px_per_mm: f64,
}

impl Square {
    fn between(picture: &Raster, from: Point, to: Point, scale: &Scale) -> Result<Square, WeaveRefusal> {
        let inside = |at: &Point| (0.0..picture.width() as f64).contains(&at.x) && (0.0..picture.height() as f64).contains(&at.y);
        if !inside(&from) || !inside(&to) {
            return Err(WeaveRefusal::Marks);
        }
        let (a, b) = (scale.plane.on_cloth(from), scale.plane.on_cloth(to));
        let (dx, dy) = (b.x - a.x, b.y - a.y);
        let apart = dx.hypot(dy);
        let px_apart = (to.x - from.x).hypot(to.y - from.y);
        if !apart.is_finite() || apart < 1e-6 || px_apart < SIDES[SIDES.len() - 1] as f64 {
            return Err(WeaveRefusal::Marks);
        }
        let middle = Point { x: (a.x + b.x) / 2.0, y: (a.y + b.y) / 2.0 };
        let mut square =
            Square { middle, along: Point { x: dx / apart, y: dy / apart }, side: 1.25 * apart, px_per_mm: px_apart / apart };
        let object = outline(&scale.object);
        let mut covered = false;
        for _ in 0..40 {
            let lies_in = |at: &Point| {
                let place = scale.plane.on_cloth(*at);
                let (x, y) = (place.x - middle.x, place.y - middle.y);
                let (u, v) = (x * square.along.x + y * square.along.y, y * square.along.x - x * square.along.y);
                u.abs().max(v.abs()) < square.side / 2.0
            };
            covered = object.iter().any(lies_in);
            if !covered && square.corners(scale, square.side).iter().all(inside) {
                return Ok(square);
            }
            square.side *= 0.95;
            if square.side * square.px_per_mm < SIDES[SIDES.len() - 1] as f64 {
                break;
            }
        }
        Err(if covered { WeaveRefusal::Covered } else { WeaveRefusal::Marks })
    }

    /// The place on the cloth that lies so far along and across from the middle (mm).
    fn at(&self, u: f64, v: f64) -> Point {
        Point { x: self.middle.x + u * self.along.x - v * self.along.y, y: self.middle.y + u * self.along.y + v * self.along.x }
    }

    fn corners(&self, scale: &Scale, side: f64) -> [Point; 4] {
        let half = side / 2.0;
        [(-half, -half), (half, -half), (half, half), (-half, half)].map(|(u, v)| scale.plane.in_picture(self.at(u, v)))
    }

    /// Every tenth yarn of a system of that frequency (cycles per sample of `step` mm), from border to border of the square.
    fn every_tenth(&self, scale: &Scale, system: [f64; 2], side: f64, step: f64) -> Vec<[Point; 2]> {
        let frequency = system[0].hypot(system[1]) / step;
        // Across the yarns, and along them.
        let across = system.map(|part| part / step / frequency);
        let along = [-across[1], across[0]];
        let half = side / 2.0;
        let reach = half * std::f64::consts::SQRT_2;
        let tens = ((reach * frequency / 10.0).floor() as i32).clamp(0, 60);
        (-tens..=tens)
            .filter_map(|ten| {
                let away = f64::from(ten) * 10.0 / frequency;
                // Where the line meets the borders of the square.
                let (mut from, mut to) = (-reach, reach);
                for axis in [0, 1] {
                    if along[axis].abs() > 1e-9 {
                        let ends = [-half, half].map(|border| (border - away * across[axis]) / along[axis]);
                        from = from.max(ends[0].min(ends[1]));
                        to = to.min(ends[0].max(ends[1]));
                    } else if (away * across[axis]).abs() > half {
                        return None;
                    }
                }
                let end =
                    |at: f64| scale.plane.in_picture(self.at(away * across[0] + at * along[0], away * across[1] + at * along[1]));
                (from < to).then(|| [end(from), end(to)])
            })
            .collect()
    }

    /// Brightness on a square grid of the cloth, each sample a mean of `coarse` by `coarse` places.
    fn sampled(&self, picture: &Raster, scale: &Scale, size: usize, step: f64, coarse: usize) -> Vec<f64> {
        let fine = step / coarse as f64;
        let place = |at: usize, inner: usize| (at as f64 - size as f64 / 2.0) * step + (inner as f64 + 0.5) * fine;
        let mut grid = Vec::with_capacity(size * size);
        for y in 0..size {
            for x in 0..size {
                let mut sum = 0.0;
                for inner in 0..coarse * coarse {
                    let at = self.at(place(x, inner % coarse), place(y, inner / coarse));
                    let [r, g, b] = picture.colour(scale.plane.in_picture(at));
                    sum += f64::from(0.3 * r + 0.6 * g + 0.1 * b);
                }
                grid.push(sum / (coarse * coarse) as f64);
            }
        }
        grid
    }
}

/// Places along the closed line, so close that a square meets one where it meets the line.
fn outline(line: &[Point]) -> Vec<Point> {
    let next = line.iter().cycle().skip(1);
    line.iter()
        .zip(next)
        .flat_map(|(a, b)| {
            (0..40).map(move |at| f64::from(at) / 40.0).map(move |t| Point { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) })
        })
        .collect()
}

/// Takes out what changes slowly, and makes the contrast alike all over.
fn even_out(grid: &mut [f64], size: usize, width: usize) {
    let mean = blurred(grid, size, width);
    grid.iter_mut().zip(&mean).for_each(|(at, mean)| *at -= mean);
    let squares: Vec<f64> = grid.iter().map(|at| at * at).collect();
    let power = blurred(&squares, size, width);
    grid.iter_mut().zip(&power).for_each(|(at, power)| *at /= (power.max(0.0) + 0.25).sqrt());
}

/// Mean over a square of that width round each sample, less at the border.
fn blurred(grid: &[f64], size: usize, width: usize) -> Vec<f64> {
    let half = width / 2;
    let line = |values: &dyn Fn(usize) -> f64| -> Vec<f64> {
        let sums: Vec<f64> = std::iter::once(0.0)
            .chain((0..size).scan(0.0, |sum, at| {
                *sum += values(at);
                Some(*sum)
            }))
            .collect();
        (0..size)
            .map(|at| {
                let (low, high) = (at.saturating_sub(half), (at + half + 1).min(size));
                (sums[high] - sums[low]) / (high - low) as f64
            })
            .collect()
    };
    let rows: Vec<f64> = (0..size).flat_map(|y| line(&|x| grid[y * size + x])).collect();
    let mut out = vec![0.0; grid.len()];
    for x in 0..size {
        for (y, value) in line(&|y| rows[y * size + x]).into_iter().enumerate() {
            out[y * size + x] = value;
        }
    }
    out
}
