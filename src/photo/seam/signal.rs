//! Profiles along the seam: brightness and thread colour in bands across it, and the same of the bare cloth on both sides.

use super::spectrum::{between, moving_mean, without_slow};
use super::strip::Strip;

/// Bands across the seam, mm from its line.
const BANDS: [(f32, f32); 8] =
    [(-0.95, -0.65), (-0.65, -0.4), (-0.4, -0.15), (-0.15, 0.15), (0.15, 0.4), (0.4, 0.65), (0.65, 0.95), (-0.5, 0.5)];

/// Bands of bare cloth, mm from the line on either side: near it and further off.
const FLANKS: [[(f32, f32); 3]; 2] = [[(1.3, 1.65), (1.65, 2.0), (2.0, 2.35)], [(2.35, 2.7), (2.7, 3.05), (3.05, 3.4)]];

/// Weights of red, green and blue in brightness (ITU-R BT.601 luma).
const LUMA: [f32; 3] = [0.299, 0.587, 0.114];

/// Profiles along the seam, one value a column.
pub(super) struct Bank {
    /// Samples in a millimetre as the strip counts them, and in one of the cloth.
    pub(super) per_mm: f32,
    pub(super) per_true_mm: f32,
    /// Bands across the seam, thread colour first, then brightness.
    pub(super) seam: Vec<Vec<f32>>,
    /// Bands of the cloth in four zones: left and right near the seam, left and right further off.
    pub(super) sides: [Vec<Vec<f32>>; 4],
    /// How much the middle of the seam has the colour of the thread: low at the needle holes.
    pub(super) thread: Vec<f32>,
}

impl Bank {
    /// Profiles of a strip along the line of the seam; a millimetre of the cloth is `nearer` of its millimetres.
    pub(super) fn of(strip: &Strip, nearer: f32) -> Bank {
        let per_mm = strip.per_mm;
        let (left, right) = (strip.band(-2.5, -1.3), strip.band(1.3, 2.5));
        // The colour of the cloth hereabouts: it follows puckers and shadows.
        let cloth: Vec<[f32; 3]> = {
            let channel = |c: usize| {
                let both: Vec<f32> = left.iter().zip(&right).map(|(l, r)| 0.5 * (l[c] + r[c])).collect();
                moving_mean(&moving_mean(&both, 1.2 * per_mm), 0.8 * per_mm)
            };
            let (r, g, b) = (channel(0), channel(1), channel(2));
            (0..strip.columns).map(|n| [r[n], g[n], b[n]]).collect()
        };
        let towards = thread_colour(strip, &cloth);
        let bands = |ranges: &[(f32, f32)], weights: &[f32; 3]| -> Vec<Vec<f32>> {
            ranges
                .iter()
                .map(|(from, to)| {
                    let band = strip.band(*from, *to);
                    let profile: Vec<f32> = band
                        .iter()
                        .zip(&cloth)
                        .map(|(at, cloth)| (0..3).map(|c| (at[c] - cloth[c]) * weights[c]).sum())
                        .collect();
                    without_slow(&profile, 9.0 * per_mm)
                })
                .collect()
        };
        let both = |ranges: &[(f32, f32)]| {
            let mut all = bands(ranges, &towards);
            all.extend(bands(ranges, &LUMA));
            all
        };
        let before = FLANKS.map(|bands| bands.map(|(from, to)| (-to, -from)));
        let seam = both(&BANDS);
        let thread = seam[BANDS.len() - 1].clone();
        Bank {
            per_mm,
            per_true_mm: nearer * per_mm,
            seam,
            sides: [both(&before[0]), both(&FLANKS[0]), both(&before[1]), both(&FLANKS[1])],
            thread,
        }
    }

    /// The widest band of the seam and the mean of each side, in both kinds: enough to judge a warp by.
    pub(super) fn brief(&self) -> Bank {
        let half = BANDS.len();
        let mean = |profiles: &[Vec<f32>]| -> Vec<f32> {
            (0..self.samples()).map(|n| profiles.iter().map(|profile| profile[n]).sum::<f32>() / profiles.len() as f32).collect()
        };
        let side = |side: &Vec<Vec<f32>>| vec![mean(&side[..side.len() / 2]), mean(&side[side.len() / 2..])];
        Bank {
            per_mm: self.per_mm,
            per_true_mm: self.per_true_mm,
            seam: vec![self.seam[half - 1].clone(), self.seam[2 * half - 1].clone()],
            sides: self.sides.each_ref().map(side),
            thread: self.thread.clone(),
        }
    }

    /// The same profiles as they would lie were the far end of the seam as near as its near end: read at `warped` places.
    pub(super) fn warped(&self, warp: f32) -> Bank {
        let samples = self.samples();
        let places: Vec<f32> = (0..samples).map(|n| unwarped(n as f32, samples, warp)).collect();
        let read = |profile: &Vec<f32>| places.iter().map(|at| between(profile, *at)).collect::<Vec<f32>>();
        Bank {
            per_mm: self.per_mm,
            per_true_mm: self.per_true_mm,
            seam: self.seam.iter().map(read).collect(),
            sides: self.sides.each_ref().map(|side| side.iter().map(read).collect()),
            thread: read(&self.thread),
        }
    }

    /// Samples along the seam.
    pub(super) fn samples(&self) -> usize {
        self.thread.len()
    }
}

/// The sample of the picture's profile that lies at sample `at` of a warped one (a projective map of the line to itself that keeps its ends).
pub(super) fn unwarped(at: f32, samples: usize, warp: f32) -> f32 {
    let half = 0.5 * (samples.max(2) - 1) as f32;
    let y = at / half - 1.0;
    ((y - warp) / (1.0 - warp * y) + 1.0) * half
}

/// The direction of colour that parts thread from cloth best (Fisher's linear discriminant, with a floor for noise).
fn thread_colour(strip: &Strip, cloth: &[[f32; 3]]) -> [f32; 3] {
    let mean_of = |from: f32, to: f32| {
        let (mut sum, mut count) = ([0.0_f64; 3], 0.0_f64);
        for row in strip.rows_between(from, to) {
            for (at, cloth) in strip.row(row).iter().zip(cloth) {
                (0..3).for_each(|c| sum[c] += f64::from(at[c] - cloth[c]));
                count += 1.0;
            }
        }
        sum.map(|sum| sum / count.max(1.0))
    };
    let centre = mean_of(-0.3, 0.3);
    let flanks = [(-2.5, -1.3), (1.3, 2.5)];
    let means = flanks.map(|(from, to)| mean_of(from, to));
    let mean: [f64; 3] = std::array::from_fn(|c| 0.5 * (means[0][c] + means[1][c]));
    let mut spread = [[0.0_f64; 3]; 3];
    let mut count = 0.0_f64;
    for (from, to) in flanks {
        for row in strip.rows_between(from, to) {
            for (at, cloth) in strip.row(row).iter().zip(cloth) {
                let off: [f64; 3] = std::array::from_fn(|c| f64::from(at[c] - cloth[c]) - mean[c]);
                for (i, row) in spread.iter_mut().enumerate() {
                    for (j, cell) in row.iter_mut().enumerate() {
                        *cell += off[i] * off[j];
                    }
                }
                count += 1.0;
            }
        }
    }
    for (i, row) in spread.iter_mut().enumerate() {
        row.iter_mut().for_each(|cell| *cell /= count.max(1.0));
        row[i] += 25.0;
    }
    let found = solved(spread, std::array::from_fn(|c| centre[c] - mean[c]));
    let size = found.iter().map(|value| value * value).sum::<f64>().sqrt();
    if size > 0.0 && size.is_finite() { found.map(|value| (value / size) as f32) } else { LUMA }
}

/// Solves three linear equations by Cramer's rule; the matrix has an inverse, for its diagonal was raised.
fn solved(m: [[f64; 3]; 3], b: [f64; 3]) -> [f64; 3] {
    let det = |m: [[f64; 3]; 3]| {
        m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
            + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0])
    };
    let whole = det(m);
    std::array::from_fn(|column| {
        let mut with = m;
        (0..3).for_each(|row| with[row][column] = b[row]);
        det(with) / whole
    })
}
