//! The comb of graduations between two marks: how many lie there, and how their pitch changes along a tilted ruler.

use std::f64::consts::TAU;

use super::linear::median;
use super::strip::{BAND_MM, Strip};

/// A comb along the line between the marks. `q` runs from -1 to 1 between them; graduations lie where `ticks / 2 * bent(q) + shift` is whole.
#[derive(Clone, Copy, Debug)]
pub(super) struct Comb {
    /// Graduations between the marks, not whole because marks are not exact.
    pub(super) ticks: f64,
    /// How the pitch changes along: `bent(q) = (q + c) / (1 + c q)`.
    pub(super) bend: f64,
    /// Where whole numbers lie on the line between the marks.
    pub(super) shift: f64,
    /// Change of `shift` per pixel across.
    pub(super) slant: f64,
    /// How far the line stands out of the spectrum round it.
    pub(super) line: f64,
    /// The bands side by side in which it is strongest.
    pub(super) bands: [usize; STRONG],
}

/// As many bands as are looked at: a fifth, two millimetres.
const STRONG: usize = 4;
/// How far from the line between the marks graduations go on, mm (standard deviation, judgement).
const NEAR_MM: f64 = 1.5;
/// How much a mark can be off, mm for both together: two taps of 0.25 mm, three times their spread.
const REACH_MM: f64 = 0.9;
/// How far graduations lean at most, as a share of their length: the marks are off the ruler's direction, and the phone is tilted.
const LEAN: f64 = 0.32;
/// From one number of graduations tried to the next: half of what a window between the marks can tell apart.
const STEP: f64 = 0.4;
/// Spread of the bend among pictures (judgement: tilts up to 15 degrees at an arm's half).
const BENDS: f64 = 0.08;
/// The largest bend tried.
const MOST: f64 = 0.16;

/// Samples of a band between the marks with the window that tapers their ends.
struct Between<'a> {
    strip: &'a Strip,
    half: f64,
    columns: std::ops::Range<usize>,
    stride: usize,
}

/// Sums over a band: real and imaginary part.
type Turned = (f64, f64);

impl Between<'_> {
    /// Sums of band times window times a turning arrow for the bands given, for `count` numbers of graduations from `ticks` on, `by` apart.
    fn turned(&self, bands: &[usize], (ticks, by, count): (f64, f64, usize), bend: f64) -> Vec<Vec<Turned>> {
        let mut sums = vec![vec![(0.0f32, 0.0f32); bands.len()]; count];
        let first = self.strip.first / self.half;
        let step = self.strip.step / self.half;
        for column in self.columns.clone().step_by(self.stride) {
            let q = first + column as f64 * step;
            let window = (0.25 * TAU * q).cos().powi(2) as f32;
            let turn = -0.5 * TAU * bent(q, bend);
            let (mut sin, mut cos) = ((turn * ticks) as f32).sin_cos();
            let (by_sin, by_cos) = ((turn * by) as f32).sin_cos();
            for sums in &mut sums {
                for (sum, band) in sums.iter_mut().zip(bands) {
                    let value = self.strip.even[*band][column] * window;
                    sum.0 += value * cos;
                    sum.1 += value * sin;
                }
                (sin, cos) = (sin * by_cos + cos * by_sin, cos * by_cos - sin * by_sin);
            }
        }
        sums.into_iter().map(|sums| sums.into_iter().map(|(re, im)| (f64::from(re), f64::from(im))).collect()).collect()
    }

    /// Power of bands side by side when graduations lean as much as fits best (turns a band), and that lean.
    fn upright(&self, sums: &[Turned], ticks: f64) -> (f64, f64) {
        let pitch = 2.0 * self.half / ticks;
        let most = LEAN * self.strip.wide / pitch;
        let mut best = (0.0, 0.0);
        for n in -4..=4 {
            let lean = most * f64::from(n) / 4.0;
            let (re, im) = untwisted(sums, lean);
            let power = re * re + im * im;
            if power > best.0 {
                best = (power, lean);
            }
        }
        best
    }

    fn power(&self, bands: &[usize], ticks: f64, bend: f64) -> f64 {
        self.turned(bands, (ticks, 0.0, 1), bend).first().map_or(0.0, |sums| self.upright(sums, ticks).0)
    }
}

/// The sum of bands, each turned back by its lean, counted from the first.
fn untwisted(sums: &[Turned], lean: f64) -> Turned {
    sums.iter().enumerate().fold((0.0, 0.0), |sum, (n, (re, im))| {
        let (sin, cos) = (-TAU * lean * n as f64).sin_cos();
        (sum.0 + re * cos - im * sin, sum.1 + re * sin + im * cos)
    })
}

/// The bends tried, `by` apart, on both sides of none.
fn bends(by: f64) -> impl Iterator<Item = f64> {
    let count = (MOST / by) as i32;
    (-count..=count).map(move |n| f64::from(n) * by)
}

fn bent(q: f64, c: f64) -> f64 {
    (q + c) / (1.0 + c * q)
}

/// Looks for a comb with `expected` graduations between the marks, `half` pixels on each side of the middle. None when the strip is too short.
pub(super) fn comb(strip: &Strip, half: f64, expected: f64, tick_mm: f64) -> Option<Comb> {
    let count = strip.bands.first()?.len();
    let column = |u: f64| ((u - strip.first) / strip.step).ceil().clamp(0.0, count as f64) as usize;
    let columns = column(-half)..column(half);
    let per_tick = columns.len() as f64 / expected;
    if expected < 3.0 || per_tick < 2.5 {
        return None;
    }
    let between = Between { strip, half, columns, stride: ((per_tick / 7.0) as usize).max(1) };
    let reach = REACH_MM / tick_mm;
    let row = (expected - reach, STEP, (2.0 * reach / STEP) as usize + 1);
    let all: Vec<usize> = (0..strip.bands.len()).collect();
    // Graduations are lines nearly upright to the ruler's edge: bands side by side, two millimetres of them. The marks lie on them, so those near
    // the marks' line count more.
    let mut groups = vec![0.0f64; all.len() + 1 - STRONG];
    for bend in bends(if expected > 60.0 { 0.02 } else { 0.04 }) {
        for (n, sums) in between.turned(&all, row, bend).iter().enumerate() {
            let ticks = row.0 + n as f64 * STEP;
            for (group, sums) in groups.iter_mut().zip(sums.windows(STRONG)) {
                *group = group.max(between.upright(sums, ticks).0);
            }
        }
    }
    let near = groups.iter().enumerate().map(|(first, power)| {
        let away = (strip.v(first) + strip.v(first + STRONG - 1)) / 2.0 / (NEAR_MM * strip.wide / BAND_MM);
        power * (-0.5 * away * away).exp()
    });
    let start = near.enumerate().max_by(|one, other| one.1.total_cmp(&other.1))?.0;
    let bands: [usize; STRONG] = std::array::from_fn(|n| start + n);
    let prior = |bend: f64| (-0.5 * (bend / BENDS).powi(2)).exp();
    let score = |ticks: f64, bend: f64| between.power(&bands, ticks, bend) * prior(bend);
    let mut best = (f64::MIN, expected, 0.0);
    // A bend moves the middle against the ends by so many graduations: steps must not lose it.
    let fine = (0.9 / expected).min(0.02);
    for bend in bends(fine) {
        for (n, sums) in between.turned(&bands, row, bend).iter().enumerate() {
            let ticks = row.0 + n as f64 * STEP;
            let value = between.upright(sums, ticks).0 * prior(bend);
            if value > best.0 {
                best = (value, ticks, bend);
            }
        }
    }
    let (mut by_ticks, mut by_bend) = (0.2, 0.5 * fine);
    for _ in 0..7 {
        for (ticks, bend) in [(by_ticks, 0.0), (-by_ticks, 0.0), (0.0, by_bend), (0.0, -by_bend)] {
            let (ticks, bend) = (best.1 + ticks, best.2 + bend);
            let value = score(ticks, bend);
            if value > best.0 && (ticks - expected).abs() <= reach {
                best = (value, ticks, bend);
            }
        }
        by_ticks *= 0.6;
        by_bend *= 0.6;
    }
    let (_, ticks, bend) = best;
    let mut around: Vec<f64> =
        [0.72, 0.78, 0.83, 0.88, 1.12, 1.17, 1.22, 1.28].iter().map(|share| between.power(&bands, ticks * share, bend)).collect();
    let line = between.power(&bands, ticks, bend) / median(&mut around).max(1e-9);
    let sums = between.turned(&bands, (ticks, 0.0, 1), bend).pop()?;
    let (mut re, mut im) = (0.0, 0.0);
    for pair in sums.windows(2) {
        re += pair[1].0 * pair[0].0 + pair[1].1 * pair[0].1;
        im += pair[1].1 * pair[0].0 - pair[1].0 * pair[0].1;
    }
    let lean = im.atan2(re) / TAU;
    let lean = if (lean * 2.0 * half / ticks).abs() < 1.5 * LEAN * strip.wide { lean } else { between.upright(&sums, ticks).1 };
    // Whether what lies on whole numbers are graduations or what lies between them, the fit of single ones finds out from here.
    let (re, im) = untwisted(&sums, lean);
    let slant = lean / strip.wide;
    Some(Comb { ticks, bend, shift: im.atan2(re) / TAU - slant * strip.v(start), slant, line, bands })
}
