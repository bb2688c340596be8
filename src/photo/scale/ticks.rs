//! Each graduation found on its own in each band across a ruler, and one plane fitted to all of them.
//!
//! Graduations are parallel in the world. How they converge in the picture tells how the phone was tilted across the ruler, which the pitch
//! along one line cannot tell: graduation `n` lies where `n = (a0 + a1 u + a2 v) / (1 + g u + h v)`, and that is linear in all five unknowns.

use super::comb::Comb;
use super::linear::{Normal, biweight, median, summit};
use super::strip::Strip;

/// The plane in units of graduations: `n = (a[0] + a[1] u + a[2] v) / (1 + g u + h v)`, with `u`, `v` in units of half the marks' distance.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fit {
    pub(super) a: [f64; 3],
    pub(super) g: f64,
    pub(super) h: f64,
    /// Standard uncertainty of `h`.
    pub(super) u_h: f64,
    /// Standard uncertainty of the pitch as a share, on the line of the graduations.
    pub(super) u_pitch: f64,
    /// Where across the graduations lie in the mean (same unit).
    pub(super) v: f64,
    /// First and last graduation found.
    pub(super) ends: (i64, i64),
    /// The innermost and outermost band in which graduations were found (same unit as `v`).
    pub(super) reach: (f64, f64),
}

impl Fit {
    /// Where graduation `n` lies along at `v` across.
    pub(super) fn u(&self, n: f64, v: f64) -> f64 {
        (n + n * self.h * v - self.a[0] - self.a[2] * v) / (self.a[1] - n * self.g)
    }

    /// Which graduation lies there, not whole in between.
    pub(super) fn n(&self, u: f64, v: f64) -> f64 {
        (self.a[0] + self.a[1] * u + self.a[2] * v) / (1.0 + self.g * u + self.h * v)
    }

    /// Distance between graduations there, in the unit of `u`.
    fn pitch(&self, u: f64, v: f64) -> f64 {
        (1.0 + self.g * u + self.h * v) / (self.a[1] - self.g * self.n(u, v))
    }
}

/// A graduation found in a band.
#[derive(Clone, Copy, Debug)]
struct Hit {
    n: f64,
    u: f64,
    v: f64,
    weight: f64,
}

/// Places of a window on a graduation, from half a pitch before to half a pitch after.
const PLACES: usize = 21;
/// Furthest shift looked at, in steps of the window: 0.3 of a pitch.
const SHIFTS: usize = 6;
/// Likeness (correlation) with the mean graduation that counts as found.
const LIKE: f64 = 0.6;
/// Share of the graduations between the first and the last that must be found.
const FILLED: f64 = 0.6;
/// Errors of neighbouring bands are not independent (the camera's own smoothing, compression): their uncertainty is taken this much larger
/// (judgement).
const TIED: f64 = 2.0;

/// Fits the plane, beginning from a comb. `prior` is the standard deviation of `g` and `h` among pictures. None when too few are found.
pub(super) fn fitted(strip: &Strip, half: f64, comb: &Comb, prior: f64) -> Option<Fit> {
    let k = comb.ticks / 2.0;
    let c = comb.bend;
    let slant = comb.slant * half;
    let mut fit = Fit {
        a: [k * c + comb.shift, k + comb.shift * c, slant],
        g: c,
        h: 0.0,
        u_h: prior,
        u_pitch: 1.0,
        v: 0.0,
        ends: (0, 0),
        reach: (0.0, 0.0),
    };
    let low_band = comb.bands.iter().copied().min()?;
    let high_band = comb.bands.iter().copied().max()?;
    let strong: Vec<usize> = comb.bands.to_vec();
    // Graduations are narrower than what lies between, so they go further from the mean, be they dark or bright.
    let mean = mean_graduation(strip, half, &fit, &strong, (-1.0, 1.0));
    if mean[0].abs() > mean[PLACES / 2].abs() {
        fit.a[0] += 0.5;
        fit.a[1] += 0.5 * c;
    }
    let (from, to) = (strip.first / half, strip.last() / half);
    let (mut low, mut high) = (-1.0f64, 1.0f64);
    let mut hits: Vec<Hit> = Vec::new();
    let rounds = 5;
    for round in 0..rounds {
        let mean = mean_graduation(strip, half, &fit, &strong, (low, high));
        let typical = mean.iter().map(|value| value * value).sum::<f64>().sqrt();
        hits.clear();
        let shifts = if round < 2 { SHIFTS } else { 4 };
        let take = |band: usize, hits: &mut Vec<Hit>, fit: &Fit| -> bool {
            let found = in_band(strip, half, fit, band, (low, high), &mean, typical, shifts);
            let good = is_comb(
                fit,
                &found,
                match round {
                    // At first the comb is not bent quite right; what it was found in is taken.
                    0 => 0.14,
                    1 => 0.1,
                    _ => 0.05,
                },
            );
            if good {
                hits.extend(found);
            }
            good
        };
        for band in low_band..=high_band {
            take(band, &mut hits, &fit);
        }
        if round > 0 {
            for band in (0..low_band).rev() {
                if !take(band, &mut hits, &fit) {
                    break;
                }
            }
            for band in high_band + 1..strip.bands.len() {
                if !take(band, &mut hits, &fit) {
                    break;
                }
            }
        }
        fit = solved(&hits, fit, prior)?;
        if round + 2 < rounds {
            // Graduations go on beyond the marks.
            low = (low * 1.35).max(from);
            high = (high * 1.35).min(to);
        }
    }
    let ends = hits.iter().fold((f64::MAX, f64::MIN), |ends, hit| (ends.0.min(hit.n), ends.1.max(hit.n)));
    let reach = hits.iter().fold((f64::MAX, f64::MIN), |ends, hit| (ends.0.min(hit.v), ends.1.max(hit.v)));
    // Another comb that shares every second or third line with this one would leave the others empty.
    let mut whole: Vec<i64> = hits.iter().map(|hit| hit.n as i64).collect();
    whole.sort_unstable();
    whole.dedup();
    if (whole.len() as f64) < FILLED * (ends.1 - ends.0 + 1.0) {
        return None;
    }
    fit.ends = (ends.0 as i64, ends.1 as i64);
    fit.reach = reach;
    Some(fit)
}

/// The window of one graduation in one band; none at the ends of the strip.
fn window<const N: usize>(
    strip: &Strip,
    half: f64,
    fit: &Fit,
    band: usize,
    n: f64,
    around: isize,
) -> Option<([f32; N], f64, f64)> {
    let v = strip.v(band) / half;
    let u = fit.u(n, v);
    let pitch = fit.pitch(u, v);
    if !u.is_finite() || pitch.is_nan() || pitch <= 0.0 {
        return None;
    }
    let mut values = [0.0; N];
    for (place, value) in values.iter_mut().enumerate() {
        let off = (place as isize - around) as f64 / (PLACES - 1) as f64;
        *value = strip.at(band, (u + off * pitch) * half)?;
    }
    Some((values, u, pitch))
}

/// The mean of all graduations between two places in the strongest bands, its mean taken out.
fn mean_graduation(strip: &Strip, half: f64, fit: &Fit, bands: &[usize], (low, high): (f64, f64)) -> [f64; PLACES] {
    let mut mean = [0.0; PLACES];
    let mut count = 0.0;
    for band in bands {
        let v = strip.v(*band) / half;
        for n in whole_between(fit.n(low, v), fit.n(high, v)) {
            if let Some((values, _, _)) = window::<PLACES>(strip, half, fit, *band, n, PLACES as isize / 2) {
                for (sum, value) in mean.iter_mut().zip(values) {
                    *sum += f64::from(value);
                }
                count += 1.0;
            }
        }
    }
    // A printed line is the same from both sides: made so, the mean cannot pull the comb along.
    let both: [f64; PLACES] = std::array::from_fn(|n| (mean[n] + mean[PLACES - 1 - n]) / (2.0 * f64::max(count, 1.0)));
    let middle = both.iter().sum::<f64>() / PLACES as f64;
    both.map(|value| value - middle)
}

fn whole_between(one: f64, other: f64) -> impl Iterator<Item = f64> {
    let (low, high) = (one.min(other).ceil(), one.max(other).floor());
    let count = if (high - low).is_finite() { (high - low + 1.0).clamp(0.0, 2000.0) as usize } else { 0 };
    (0..count).map(move |n| low + n as f64)
}

/// The graduations of one band that look like the mean one.
#[allow(clippy::too_many_arguments)]
fn in_band(
    strip: &Strip,
    half: f64,
    fit: &Fit,
    band: usize,
    (low, high): (f64, f64),
    mean: &[f64; PLACES],
    typical: f64,
    shifts: usize,
) -> Vec<Hit> {
    const ALL: usize = PLACES + 2 * SHIFTS;
    let v = strip.v(band) / half;
    let mut hits = Vec::new();
    for n in whole_between(fit.n(low, v), fit.n(high, v)) {
        let Some((values, u, pitch)) = window::<ALL>(strip, half, fit, band, n, (ALL / 2) as isize) else { continue };
        let mut likeness = [f64::MIN; 2 * SHIFTS + 1];
        let mut height = [0.0; 2 * SHIFTS + 1];
        for shift in SHIFTS - shifts..=SHIFTS + shifts {
            let (mut sum, mut squares, mut product) = (0.0, 0.0, 0.0);
            for (value, model) in values[shift..].iter().zip(mean) {
                let value = f64::from(*value);
                sum += value;
                squares += value * value;
                product += value * model;
            }
            let power = squares - sum * sum / PLACES as f64;
            height[shift] = product / typical.max(1e-9);
            likeness[shift] = product / (typical * power.sqrt()).max(1e-9);
        }
        let best = (0..likeness.len()).fold(SHIFTS, |best, at| if likeness[at] > likeness[best] { at } else { best });
        let inner = SHIFTS - shifts < best && best < SHIFTS + shifts;
        if likeness[best] < LIKE || !inner || height[best] < 0.25 * typical {
            continue;
        }
        let off = best as f64 - SHIFTS as f64 + summit(height[best - 1], height[best], height[best + 1]);
        let weight = (likeness[best] - LIKE + 0.1) / (1.1 - LIKE) * (height[best] / typical).min(1.5);
        hits.push(Hit { n, u: u + off / (PLACES - 1) as f64 * pitch, v, weight });
    }
    hits
}

/// Whether what was found in a band lies where the comb says, closer than chance would have it.
fn is_comb(fit: &Fit, hits: &[Hit], most: f64) -> bool {
    if hits.len() < 4 {
        return false;
    }
    let squares: f64 = hits.iter().map(|hit| (fit.n(hit.u, hit.v) - hit.n).powi(2)).sum();
    (squares / hits.len() as f64).sqrt() < most
}

/// Weighted, robust least squares of the five unknowns.
fn solved(hits: &[Hit], mut fit: Fit, prior: f64) -> Option<Fit> {
    let weight: f64 = hits.iter().map(|hit| hit.weight).sum();
    if hits.len() < 10 {
        return None;
    }
    let middle = hits.iter().map(|hit| hit.weight * hit.v).sum::<f64>() / weight;
    let mut spread = 0.0;
    for _ in 0..3 {
        let mut off: Vec<f64> = hits.iter().map(|hit| (fit.n(hit.u, hit.v) - hit.n).abs()).collect();
        spread = (1.4826 * median(&mut off)).max(0.002);
        let mut normal = Normal::<5>::new();
        for hit in hits {
            let tukey = biweight(fit.n(hit.u, hit.v) - hit.n, 4.5 * spread);
            let weight = hit.weight * tukey / (spread * spread * TIED * TIED);
            normal.row([1.0, hit.u, hit.v, -hit.n * hit.u, -hit.n * hit.v], hit.n, weight);
        }
        // Where the picture says nothing, the phone was held flat.
        normal.row([0.0, 0.0, 0.0, 1.0, 0.0], 0.0, 1.0 / (prior * prior));
        normal.row([0.0, 0.0, 0.0, 0.0, 1.0], 0.0, 1.0 / (prior * prior));
        let (found, inverse) = normal.solved()?;
        fit.a = [found[0], found[1], found[2]];
        (fit.g, fit.h) = (found[3], found[4]);
        fit.u_h = inverse[4][4].sqrt();
        fit.u_pitch = inverse[1][1].sqrt() / found[1].abs();
    }
    fit.v = middle;
    (fit.a[1].is_finite() && fit.a[1] > 0.0 && spread < 0.15).then_some(fit)
}
