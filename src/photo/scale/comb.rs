//! The comb of graduations between two marks: how many lie there, and how their pitch changes along a tilted ruler.

use std::f64::consts::TAU;

use super::linear::median;
use super::strip::Strip;

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
    /// The bands in which it is strongest.
    pub(super) bands: [usize; STRONG],
}

/// As many bands as are looked at: the strongest fifth, two millimetres.
const STRONG: usize = 4;
/// How much a mark can be off, mm for both together: two taps of 0.25 mm, three times their spread.
const REACH_MM: f64 = 0.9;
/// Spread of the bend among pictures (judgement: tilts up to 15 degrees at an arm's half).
const BENDS: f64 = 0.07;

/// Samples of a band between the marks with the window that tapers their ends.
struct Between<'a> {
    strip: &'a Strip,
    half: f64,
    columns: std::ops::Range<usize>,
    stride: usize,
}

impl Between<'_> {
    /// Sums of band times window times a turning arrow, for the bands given.
    fn turned(&self, bands: &[usize], ticks: f64, bend: f64) -> Vec<(f64, f64)> {
        let mut sums = vec![(0.0, 0.0); bands.len()];
        let first = self.strip.first / self.half;
        let step = self.strip.step / self.half;
        for column in self.columns.clone().step_by(self.stride) {
            let q = first + column as f64 * step;
            let window = (0.25 * TAU * q).cos().powi(2);
            let (sin, cos) = ((-0.5 * TAU * ticks * bent(q, bend)) as f32).sin_cos();
            for (sum, band) in sums.iter_mut().zip(bands) {
                let value = f64::from(self.strip.bands[*band][column]) * window;
                sum.0 += value * f64::from(cos);
                sum.1 += value * f64::from(sin);
            }
        }
        sums
    }

    fn power(&self, bands: &[usize], ticks: f64, bend: f64) -> f64 {
        self.turned(bands, ticks, bend).iter().map(|(re, im)| re * re + im * im).sum()
    }
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
    if expected < 3.0 || !(per_tick >= 2.5) {
        return None;
    }
    let between = Between { strip, half, columns, stride: ((per_tick / 7.0) as usize).max(1) };
    let reach = REACH_MM / tick_mm;
    let counts = || (0..).map(|n| expected - reach + 0.35 * f64::from(n)).take_while(|n| *n <= expected + reach);
    let all: Vec<usize> = (0..strip.bands.len()).collect();
    let mut powers: Vec<(f64, usize)> = all.iter().map(|band| (0.0, *band)).collect();
    for bend in [-0.06, -0.02, 0.02, 0.06] {
        for ticks in counts() {
            for (power, (re, im)) in powers.iter_mut().zip(between.turned(&all, ticks, bend)) {
                power.0 = power.0.max(re * re + im * im);
            }
        }
    }
    powers.sort_by(|one, other| other.0.total_cmp(&one.0));
    let bands: [usize; STRONG] = std::array::from_fn(|n| powers.get(n).map_or(0, |power| power.1));
    let score = |ticks: f64, bend: f64| between.power(&bands, ticks, bend) * (-0.5 * (bend / BENDS).powi(2)).exp();
    let mut best = (f64::MIN, expected, 0.0);
    for bend in (-6..=6).map(|n| 0.02 * f64::from(n)) {
        for ticks in counts() {
            let value = score(ticks, bend);
            if value > best.0 {
                best = (value, ticks, bend);
            }
        }
    }
    let (mut by_ticks, mut by_bend) = (0.2, 0.01);
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
    // Bands side by side turn by the lean of the graduations.
    let turns = between.turned(&all, ticks, bend);
    let (mut re, mut im) = (0.0, 0.0);
    for pair in turns.windows(2) {
        re += pair[1].0 * pair[0].0 + pair[1].1 * pair[0].1;
        im += pair[1].1 * pair[0].0 - pair[1].0 * pair[0].1;
    }
    let slant = im.atan2(re) / TAU / strip.wide;
    // Graduations may be dark or bright; which, the fit of single ones finds out from here.
    let (mut re, mut im) = (0.0, 0.0);
    for band in bands {
        let back = -TAU * slant * strip.v(band);
        let (sin, cos) = back.sin_cos();
        let (r, i) = turns[band];
        re += r * cos - i * sin;
        im += r * sin + i * cos;
    }
    Some(Comb { ticks, bend, shift: im.atan2(re) / TAU, slant, line, bands })
}
