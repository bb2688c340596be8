//! The line of the seam: what looks like a thread from one mark to the other, straight or in a gentle bow.

use super::spectrum::{median, moving_mean};
use super::strip::{Path, Strip};

/// The line found.
pub(super) struct Track {
    /// Millimetres from the straight line between the marks, for each column of the strip.
    pub(super) offsets: Vec<f32>,
    /// How clearly it stands out from the cloth on both sides, in spreads of the cloth.
    pub(super) strength: f32,
    /// Largest distance from the straight line, mm.
    pub(super) sagitta: f32,
}

/// A bow tried: how far it lies off the marks, how far off their line in the middle, and what was seen along it.
#[derive(Clone, Copy, Default)]
struct Curve {
    score: f32,
    clear: f32,
    ends: (f32, f32),
    bow: f32,
    towards: [f32; 3],
}

/// Places along the strip where a curve is tried.
const STATIONS: usize = 28;

/// Differences of colour between a place and the cloth beside it, on the left and on the right, in spreads of such differences.
struct Ridge {
    columns: usize,
    rows: usize,
    left: Vec<[f32; 3]>,
    right: Vec<[f32; 3]>,
}

/// Finds the line in a strip along the straight line between the marks, or the row in it nearest to `v` = 0.
pub(super) fn seam(strip: &Strip, reach: (f32, f32)) -> Track {
    let ridge = Ridge::of(strip);
    let length = strip.columns as f32 / strip.per_mm;
    let row = |v: f32| (((v - strip.first) * strip.per_mm).round().max(0.0) as usize).min(strip.rows - 1);
    let (low, high) = ((-0.13 * length).max(reach.0), (0.13 * length).min(reach.1));
    let stations: Vec<(usize, f32)> = (0..STATIONS)
        .map(|n| (n as f32 + 0.5) / STATIONS as f32)
        .map(|q| (((q * strip.columns as f32) as usize).min(strip.columns - 1), q))
        .collect();
    let tried = |a: f32, b: f32, s: f32| {
        let (mut left, mut right) = ([0.0_f32; 3], [0.0_f32; 3]);
        for (column, q) in &stations {
            let at = row(a * (1.0 - q) + b * q + 4.0 * q * (1.0 - q) * s) * ridge.columns + column;
            for c in 0..3 {
                left[c] += ridge.left[at][c];
                right[c] += ridge.right[at][c];
            }
        }
        (left.map(|sum| sum / STATIONS as f32), right.map(|sum| sum / STATIONS as f32))
    };
    let mut best = Curve { score: f32::MIN, ..Curve::default() };
    let mut look = |a: f32, b: f32, s: f32| {
        let (left, right) = tried(a, b, s);
        let (l, r) = (norm(left), norm(right));
        let alike = if l * r > 0.0 { (dot(left, right) / (l * r)).max(0.0) } else { 0.0 };
        let clear = l.min(r) * (alike + 0.1);
        let score = clear - 0.4 * (a * a + b * b) - 0.06 * s.abs().min(6.0);
        if score > best.score {
            best = Curve { score, clear, ends: (a, b), bow: s, towards: [0, 1, 2].map(|c| left[c] + right[c]) };
        }
        (best.ends, best.bow)
    };
    // Coarsely everywhere, then finely round the best.
    let mut near = ((0.0, 0.0), 0.0);
    for a in -3..=3 {
        for b in -3..=3 {
            for s in (low / 0.2) as i32..=(high / 0.2) as i32 {
                near = look(a as f32 * 0.3, b as f32 * 0.3, s as f32 * 0.2);
            }
        }
    }
    for a in -2..=2 {
        for b in -2..=2 {
            for s in -2..=2 {
                look(near.0.0 + a as f32 * 0.1, near.0.1 + b as f32 * 0.1, near.1 + s as f32 * 0.1);
            }
        }
    }
    let Curve { ends: (a, b), bow: s, towards, clear: strength, .. } = best;
    let size = norm(towards).max(1e-6);
    let towards = towards.map(|value| value / size);
    let looks: Vec<f32> =
        (0..ridge.rows * ridge.columns).map(|at| dot(ridge.left[at], towards).min(dot(ridge.right[at], towards))).collect();
    let offsets = walked(strip, &looks, |q| {
        let tolerance = 0.5 + 1.3 * 4.0 * q * (1.0 - q);
        (a * (1.0 - q) + b * q + 4.0 * q * (1.0 - q) * s, tolerance)
    });
    let offsets = moving_mean(&moving_mean(&offsets, 3.0 * strip.per_mm), 2.0 * strip.per_mm);
    let sagitta = offsets.iter().fold(0.0_f32, |most, v| most.max(v.abs()));
    Track { offsets, strength, sagitta }
}

/// The way from end to end that looks most like thread, within a tolerance of a curve (`v` and tolerance by the share of the way); each step
/// to another row costs a little.
fn walked(strip: &Strip, looks: &[f32], curve: impl Fn(f32) -> (f32, f32)) -> Vec<f32> {
    const STEP: f32 = 0.12;
    let (columns, rows) = (strip.columns, strip.rows);
    let v = |row: usize| strip.first + row as f32 / strip.per_mm;
    let mut from = vec![0_u8; columns * rows];
    let mut now = vec![0.0_f32; rows];
    let mut next = vec![0.0_f32; rows];
    for column in 0..columns {
        let q = column as f32 / columns.max(2) as f32;
        let (middle, tolerance) = curve(q);
        for row in 0..rows {
            let stay = now[row];
            let up = if row > 0 { now[row - 1] - STEP } else { f32::MIN };
            let down = if row + 1 < rows { now[row + 1] - STEP } else { f32::MIN };
            let (way, so_far) = if stay >= up && stay >= down {
                (1, stay)
            } else if up >= down {
                (0, up)
            } else {
                (2, down)
            };
            from[column * rows + row] = way;
            let off = (v(row) - middle).abs() - tolerance;
            let look = if off > 0.0 { -3.0 - off } else { looks[row * columns + column] };
            next[row] = so_far + look;
        }
        std::mem::swap(&mut now, &mut next);
    }
    let mut row = (0..rows).max_by(|a, b| now[*a].total_cmp(&now[*b])).unwrap_or(0);
    let mut offsets = vec![0.0; columns];
    for column in (0..columns).rev() {
        offsets[column] = v(row);
        row = match from[column * rows + row] {
            0 => row - 1,
            2 => row + 1,
            _ => row,
        };
    }
    offsets
}

impl Ridge {
    fn of(strip: &Strip) -> Ridge {
        let (columns, rows) = (strip.columns, strip.rows);
        let smooth = smoothed_along(strip);
        // Sums down the rows, so that the mean of any run of rows is one subtraction.
        let mut sums = vec![[0.0_f32; 3]; (rows + 1) * columns];
        for row in 0..rows {
            for column in 0..columns {
                let (above, here) = (sums[row * columns + column], smooth[row * columns + column]);
                sums[(row + 1) * columns + column] = [0, 1, 2].map(|c| above[c] + here[c]);
            }
        }
        let mean = |from: isize, to: isize, column: usize| {
            let clamp = |row: isize| usize::try_from(row).unwrap_or(0).min(rows);
            let (from, to) = (clamp(from), clamp(to + 1));
            let (from, to) = if from < to {
                (from, to)
            } else if from == 0 {
                (0, 1)
            } else {
                (rows - 1, rows)
            };
            let share = 1.0 / (to - from) as f32;
            [0, 1, 2].map(|c| (sums[to * columns + column][c] - sums[from * columns + column][c]) * share)
        };
        let mm = |v: f32| (v * strip.per_mm).round() as isize;
        let (mut left, mut right) = (vec![[0.0; 3]; rows * columns], vec![[0.0; 3]; rows * columns]);
        for row in 0..rows {
            let at = row as isize;
            for column in 0..columns {
                let centre = mean(at - mm(0.3), at + mm(0.3), column);
                let before = mean(at - mm(1.15), at - mm(0.5), column);
                let after = mean(at + mm(0.5), at + mm(1.15), column);
                left[row * columns + column] = [0, 1, 2].map(|c| centre[c] - before[c]);
                right[row * columns + column] = [0, 1, 2].map(|c| centre[c] - after[c]);
            }
        }
        let mut ridge = Ridge { columns, rows, left, right };
        ridge.scale(strip.per_mm);
        ridge
    }

    /// Divides by half the spread hereabouts and half that of the whole strip, so that neither a shadow nor a fold wins by contrast alone.
    fn scale(&mut self, per_mm: f32) {
        let block = (per_mm as usize).max(1);
        for c in 0..3 {
            let spread = |ridge: &Ridge, from: usize, to: usize, sparse: usize| {
                let some = (0..ridge.rows)
                    .flat_map(|row| (from..to).step_by(sparse).map(move |column| row * ridge.columns + column))
                    .flat_map(|at| [ridge.left[at][c].abs(), ridge.right[at][c].abs()]);
                1.4826 * median(some)
            };
            let whole = spread(self, 0, self.columns, block);
            for from in (0..self.columns).step_by(2 * block) {
                let to = (from + 2 * block).min(self.columns);
                let here = spread(self, from, to, block);
                let scale = 1.0 / (0.5 * here + 0.5 * whole).max(0.4);
                for row in 0..self.rows {
                    for at in row * self.columns + from..row * self.columns + to {
                        self.left[at][c] = tamed(self.left[at][c] * scale);
                        self.right[at][c] = tamed(self.right[at][c] * scale);
                    }
                }
            }
        }
    }
}

/// Large differences count less and less, 6 at most.
fn tamed(value: f32) -> f32 {
    6.0 * value / (6.0 + value.abs())
}

/// Means along 3 mm, row by row.
fn smoothed_along(strip: &Strip) -> Vec<[f32; 3]> {
    let mut smooth = vec![[0.0; 3]; strip.colours.len()];
    let reach = (1.5 * strip.per_mm) as usize;
    for row in 0..strip.rows {
        let (colours, to) = (strip.row(row), &mut smooth[row * strip.columns..(row + 1) * strip.columns]);
        let mut sum = [0.0_f64; 3];
        let (mut from, mut end) = (0, 0);
        for (column, place) in to.iter_mut().enumerate() {
            while end < (column + reach + 1).min(colours.len()) {
                (0..3).for_each(|c| sum[c] += f64::from(colours[end][c]));
                end += 1;
            }
            while from < column.saturating_sub(reach) {
                (0..3).for_each(|c| sum[c] -= f64::from(colours[from][c]));
                from += 1;
            }
            *place = sum.map(|sum| (sum / (end - from) as f64) as f32);
        }
    }
    smooth
}

fn dot(a: [f32; 3], b: [f32; 3]) -> f32 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn norm(a: [f32; 3]) -> f32 {
    dot(a, a).sqrt()
}

/// The straight path moved to the line found.
pub(super) fn followed(straight: &Path, track: &Track, step: f64) -> Path {
    straight.moved(&track.offsets, step)
}
