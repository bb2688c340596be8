//! The line of the seam: what looks like a thread from one mark to the other, straight or in a gentle bow.

use super::reach::Reach;
use super::spectrum::{median, moving_mean};
use super::strip::{Path, Strip, bowed};

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

/// How far beside a place the cloth is seen that it is compared with, mm, less a little.
const BESIDE: f32 = 1.0;

/// What a place counts as thread that cannot be seen (the object lies there, or the picture has ended): as bare cloth does.
const UNSOUND: f32 = -1.0;

/// Places along the strip where a curve is tried.
const STATIONS: usize = 28;

/// Largest bow that is followed, as a share of the length.
const MOST_BOW: f32 = 0.13;

/// Bow, as a share of the length, up to which smoothing along the straight line does little harm: over 3 mm a line so bent moves aside by
/// a quarter of a millimetre at most, less than the half of a thread.
const BOW_STEP: f32 = 0.02;

/// How clearly a line has to stand out for the straight look to be enough (judgement).
const CLEAR: f32 = 3.0;

/// Differences of colour between a place and the cloth beside it, on the left and on the right, in spreads of such differences.
struct Ridge {
    columns: usize,
    rows: usize,
    /// For each column, the first row that is to be trusted and the one after the last.
    sound: Vec<(usize, usize)>,
    left: Vec<[f32; 3]>,
    right: Vec<[f32; 3]>,
}

/// Finds the line in a strip along the straight line between the marks, or the row in it nearest to `v` = 0.
///
/// What is smoothed along the straight line smears a thread that runs askew to it: where the line found bows or is not clear, the strip is looked at
/// bent as well, one bow after the other.
pub(super) fn seam(strip: &Strip, reach: &[Reach]) -> Track {
    let length = strip.columns as f32 / strip.per_mm;
    let ridge = Ridge::of(strip, reach);
    let curve = ridge.searched(strip, MOST_BOW * length);
    let straight = curve.bow.abs() <= BOW_STEP * length && curve.clear >= CLEAR;
    let (mut best, mut offsets) = (curve, Vec::new());
    if !straight {
        for n in [-3.0, -2.0, -1.0, 1.0, 2.0, 3.0] {
            let bow = n * 2.0 * BOW_STEP * length;
            // A line that is clear already needs no more than to be followed better.
            if curve.clear >= CLEAR && (bow - curve.bow).abs() > 2.0 * BOW_STEP * length {
                continue;
            }
            let bent = strip.bent(bow);
            let off = |column: usize| bowed(column, strip.columns, bow);
            let moved: Vec<Reach> =
                reach.iter().enumerate().map(|(column, (low, high))| (low - off(column), high - off(column))).collect();
            let ridge = Ridge::of(&bent, &moved);
            let curve = ridge.searched(&bent, BOW_STEP * length);
            let score = curve.score + against(curve.bow) - against(curve.bow + bow);
            if score > best.score {
                best = Curve { score, ..curve };
                offsets = ridge.walked(&bent, &curve);
                offsets.iter_mut().enumerate().for_each(|(column, offset)| *offset += off(column));
            }
        }
    }
    if offsets.is_empty() {
        offsets = ridge.walked(strip, &curve);
    }
    let sagitta = offsets.iter().fold(0.0_f32, |most, v| most.max(v.abs()));
    Track { offsets, strength: best.clear, sagitta }
}

/// What a bow costs: of two lines as clear the straighter is likelier.
fn against(bow: f32) -> f32 {
    0.06 * bow.abs().min(6.0)
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
    /// The best gentle curve through the strip that bows by `most` mm at most, coarsely everywhere, then finely round the best.
    fn searched(&self, strip: &Strip, most: f32) -> Curve {
        let row = |v: f32| (((v - strip.first) * strip.per_mm).round().max(0.0) as usize).min(strip.rows - 1);
        let stations: Vec<(usize, f32)> = (0..STATIONS)
            .map(|n| (n as f32 + 0.5) / STATIONS as f32)
            .map(|q| (((q * strip.columns as f32) as usize).min(strip.columns - 1), q))
            .collect();
        let tried = |a: f32, b: f32, s: f32| {
            let (mut left, mut right) = ([0.0_f32; 3], [0.0_f32; 3]);
            for (column, q) in &stations {
                let at = row(a * (1.0 - q) + b * q + 4.0 * q * (1.0 - q) * s) * self.columns + column;
                for c in 0..3 {
                    left[c] += self.left[at][c];
                    right[c] += self.right[at][c];
                }
            }
            (left.map(|sum| sum / STATIONS as f32), right.map(|sum| sum / STATIONS as f32))
        };
        let last = strip.first + strip.rows as f32 / strip.per_mm;
        let (low, high) = ((-most).max(strip.first), most.min(last));
        let mut best = Curve { score: f32::MIN, ..Curve::default() };
        let mut look = |a: f32, b: f32, s: f32| {
            let (left, right) = tried(a, b, s);
            let (l, r) = (norm(left), norm(right));
            let alike = if l * r > 0.0 { (dot(left, right) / (l * r)).max(0.0) } else { 0.0 };
            let clear = l.min(r) * (alike + 0.1);
            let score = clear - 0.4 * (a * a + b * b) - against(s);
            if score > best.score {
                best = Curve { score, clear, ends: (a, b), bow: s, towards: [0, 1, 2].map(|c| left[c] + right[c]) };
            }
            (best.ends, best.bow)
        };
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
        best
    }

    /// The way that looks most like thread near a curve, smoothed: how far it lies from the middle of the strip, for each column.
    fn walked(&self, strip: &Strip, curve: &Curve) -> Vec<f32> {
        let size = norm(curve.towards).max(1e-6);
        let towards = curve.towards.map(|value| value / size);
        let looks: Vec<f32> = (0..self.rows * self.columns)
            .map(|at| {
                let (first, end) = self.sound[at % self.columns];
                let sound = (first..end).contains(&(at / self.columns));
                if sound { dot(self.left[at], towards).min(dot(self.right[at], towards)) } else { UNSOUND }
            })
            .collect();
        let ((a, b), s) = (curve.ends, curve.bow);
        let offsets = walked(strip, &looks, |q| {
            let tolerance = 0.5 + 1.3 * 4.0 * q * (1.0 - q);
            (a * (1.0 - q) + b * q + 4.0 * q * (1.0 - q) * s, tolerance)
        });
        moving_mean(&moving_mean(&offsets, 3.0 * strip.per_mm), 2.0 * strip.per_mm)
    }

    fn of(strip: &Strip, reach: &[Reach]) -> Ridge {
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
        // What is compared with a place lies up to so far beside it.
        let row_of = |v: f32| ((v - strip.first) * strip.per_mm).ceil().max(0.0) as usize;
        let sound: Vec<(usize, usize)> =
            reach.iter().map(|(low, high)| (row_of(low + BESIDE).min(rows), row_of(high - BESIDE).min(rows))).collect();
        let (mut left, mut right) = (vec![[0.0; 3]; rows * columns], vec![[0.0; 3]; rows * columns]);
        for row in 0..rows {
            let at = row as isize;
            for (column, (first, end)) in sound.iter().enumerate() {
                if !(*first..*end).contains(&row) {
                    continue;
                }
                let centre = mean(at - mm(0.3), at + mm(0.3), column);
                let before = mean(at - mm(1.15), at - mm(0.5), column);
                let after = mean(at + mm(0.5), at + mm(1.15), column);
                left[row * columns + column] = [0, 1, 2].map(|c| centre[c] - before[c]);
                right[row * columns + column] = [0, 1, 2].map(|c| centre[c] - after[c]);
            }
        }
        let mut ridge = Ridge { columns, rows, sound, left, right };
        ridge.scale(strip.per_mm);
        ridge
    }

    /// Divides by half the spread hereabouts and half that of the whole strip, so that neither a shadow nor a fold wins by contrast alone.
    fn scale(&mut self, per_mm: f32) {
        let block = (per_mm as usize).max(1);
        for c in 0..3 {
            let spread = |ridge: &Ridge, from: usize, to: usize, sparse: usize| {
                let some = (from..to)
                    .step_by(sparse)
                    .flat_map(|column| {
                        (ridge.sound[column].0..ridge.sound[column].1).map(move |row| row * ridge.columns + column)
                    })
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
