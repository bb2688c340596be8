//! Each stitch put in its place: the mean stitch is learnt and laid along the seam so that it fits best.

use super::pitch::turns;
use super::spectrum::{between, median, top};

/// Cost of a piece that is longer or shorter than the period, times the square of the share: before the seam's own evenness is known.
const STIFF: f32 = 10.0;

/// The same for a seam taken to be even (judgement: a stitch a twentieth longer costs an eighth of what a perfect one earns).
const EVEN: f32 = 50.0;

/// Points of the mean stitch.
pub(super) const BINS: usize = 20;

/// Places a period where a stitch may begin.
const GRID: usize = 24;

/// Stitches laid along a signal.
#[derive(Clone, Debug)]
pub(super) struct Placed {
    /// Where stitches begin and end, samples; one more than there are pieces.
    pub(super) ends: Vec<f32>,
    /// For each piece, whether it is about two stitches long.
    pub(super) double: Vec<bool>,
    /// Period looked for, samples.
    pub(super) period: f32,
    /// Share of the variance that the mean stitch explains.
    pub(super) likeness: f32,
    /// How many stitches the phase counts between the same ends.
    pub(super) by_phase: f32,
    /// Standard deviation of where an end lies, as a share of the period: by how far two halves of its neighbourhood disagree.
    pub(super) jitter: f32,
    /// By how much stitches differ in how strongly they show: coefficient of variation of the mean stitch's part in each.
    pub(super) patchy: f32,
}

impl Placed {
    /// Stitches counted, a double piece as two.
    pub(super) fn count(&self) -> usize {
        self.double.iter().map(|double| if *double { 2 } else { 1 }).sum()
    }

    /// Mean length of a stitch, samples.
    pub(super) fn pitch(&self) -> f32 {
        match (self.ends.first(), self.ends.last()) {
            (Some(first), Some(last)) if self.count() > 0 => (last - first) / self.count() as f32,
            _ => 0.0,
        }
    }

    /// Lengths of the single pieces, in order.
    pub(super) fn lengths(&self) -> Vec<f32> {
        self.ends.windows(2).zip(&self.double).filter(|(_, double)| !**double).map(|(pair, _)| pair[1] - pair[0]).collect()
    }

    /// Spread of the lengths of single pieces as a share of the period.
    pub(super) fn spread(&self) -> f32 {
        let lengths = self.lengths();
        let mean = lengths.iter().sum::<f32>() / lengths.len().max(1) as f32;
        (lengths.iter().map(|length| (length - mean).powi(2)).sum::<f32>() / lengths.len().max(1) as f32).sqrt() / self.period
    }

    /// How well the placing accounts for the signal, per stitch: what it leaves unexplained, and how much freedom in the lengths it needs for it: the logarithm of
    /// a likelihood with four free values a stitch and a normal prior of the lengths' own spread (four and the floor of 0.02 are judgement).
    pub(super) fn evidence(&self) -> f32 {
        -2.0 * (1.0 - self.likeness.min(0.99)).max(0.01).ln() - (self.spread() + 0.02).ln()
    }

    /// Mean lengths in the three thirds of the seam.
    pub(super) fn thirds(&self) -> [f32; 3] {
        let pieces = self.double.len();
        std::array::from_fn(|n| {
            let (from, to) = (n * pieces / 3, (n + 1) * pieces / 3);
            let count: usize = self.double[from..to].iter().map(|double| if *double { 2 } else { 1 }).sum();
            if count > 0 { (self.ends[to] - self.ends[from]) / count as f32 } else { 0.0 }
        })
    }
}

/// Lays stitches of about one period along a signal (of spread one); `thread` is low where a stitch ends.
pub(super) fn stitches(signal: &[f32], thread: &[f32], frequency: f32, margin: f32) -> Option<Placed> {
    let period = 1.0 / frequency;
    if signal.len() < (3.0 * period) as usize || period < 3.0 {
        return None;
    }
    let turns = turns(signal, frequency);
    let start = lowest(&folded(thread, &turns));
    let mut template: Vec<f32> = {
        let fold = folded(signal, &turns);
        (0..BINS).map(|n| fold[(n + start) % BINS]).collect()
    };
    shape(&mut template);
    let laid = |way: Way| laid(signal, &turns, template.clone(), period, margin, way);
    let (bent, even) = (laid(Way::Bent), laid(Way::Even));
    match (bent, even) {
        (Some(bent), Some(even)) => Some(if even.evidence() > bent.evidence() { even } else { bent }),
        (bent, even) => bent.or(even),
    }
}

/// How much the pieces may differ from each other in length.
#[derive(Clone, Copy, PartialEq)]
enum Way {
    /// By as much as the seam itself shows; a piece may be two stitches long.
    Bent,
    /// Little: what repeats in the cloth cannot lead astray.
    Even,
}

/// Stitches laid along the signal from a first idea of what one looks like.
fn laid(signal: &[f32], turns: &[f32], mut template: Vec<f32>, period: f32, margin: f32, way: Way) -> Option<Placed> {
    let lengths = choices(way);
    let mut stiff = if way == Way::Even { EVEN } else { STIFF };
    let mut laid = (Vec::new(), Vec::new());
    for _ in 0..3 {
        laid = walk(signal, &template, period, margin, &lengths, stiff)?;
        if way == Way::Bent {
            stiff = stiffness(&laid.0, &laid.1, period);
        }
        template = learnt(signal, &laid.0, &laid.1)?;
        shape(&mut template);
    }
    let (ends, double) = laid;
    let (ends, jitter) = settled(signal, &template, &ends, period);
    let mut placed = Placed { ends, double, period, likeness: 0.0, by_phase: 0.0, jitter, patchy: 0.0 };
    trim(&mut placed, signal, &template);
    if placed.double.is_empty() {
        return None;
    }
    placed.likeness = explained(signal, &template, &placed);
    placed.patchy = patchy(signal, &template, &placed);
    let (first, last) = (placed.ends[0], placed.ends[placed.ends.len() - 1]);
    placed.by_phase = between(turns, last) - between(turns, first);
    Some(placed)
}

/// Mean of a signal over the turns.
fn folded(signal: &[f32], turns: &[f32]) -> Vec<f32> {
    let (mut sums, mut counts) = ([0.0_f32; BINS], [0.0_f32; BINS]);
    for (value, turn) in signal.iter().zip(turns) {
        let bin = (turn.rem_euclid(1.0) * BINS as f32) as usize % BINS;
        sums[bin] += value;
        counts[bin] += 1.0;
    }
    sums.iter().zip(counts).map(|(sum, count)| if count > 0.0 { sum / count } else { 0.0 }).collect()
}

/// Where a round fold is lowest, smoothed over a quarter.
fn lowest(fold: &[f32]) -> usize {
    let smooth = |at: usize| (0..5).map(|n| fold[(at + n + BINS - 2) % BINS] * [1.0, 2.0, 3.0, 2.0, 1.0][n]).sum::<f32>();
    (0..BINS).min_by(|a, b| smooth(*a).total_cmp(&smooth(*b))).unwrap_or(0)
}

/// Mean zero, spread one.
fn shape(template: &mut [f32]) {
    let mean = template.iter().sum::<f32>() / template.len() as f32;
    let spread = (template.iter().map(|value| (value - mean).powi(2)).sum::<f32>() / template.len() as f32).sqrt();
    template.iter_mut().for_each(|value| *value = (*value - mean) / spread.max(1e-6));
}

/// The signal between two places at the points of the mean stitch.
pub(super) fn piece(signal: &[f32], from: f32, to: f32) -> [f32; BINS] {
    std::array::from_fn(|n| between(signal, from + (n as f32 + 0.5) / BINS as f32 * (to - from)))
}

fn fit(piece: &[f32], template: &[f32]) -> f32 {
    piece.iter().zip(template).map(|(value, like)| value * like).sum::<f32>() / BINS as f32
}

/// The best chain of pieces along the signal (dynamic programming).
fn walk(
    signal: &[f32],
    template: &[f32],
    period: f32,
    margin: f32,
    lengths: &[(usize, bool)],
    stiff: f32,
) -> Option<(Vec<f32>, Vec<bool>)> {
    let cell = period / GRID as f32;
    let cells = ((signal.len() - 1) as f32 / cell) as usize;
    // On the grid, so that a piece is read without drawing between samples again.
    let fine: Vec<f32> = (0..=cells).map(|n| between(signal, n as f32 * cell)).collect();
    let lengths: Vec<(usize, f32, f32, bool)> = lengths
        .iter()
        .map(|(cells, double)| {
            let share = *cells as f32 / GRID as f32;
            let penalty = if *double { -0.25 - stiff * (share - 2.0).powi(2) } else { -stiff * (share - 1.0).powi(2) };
            (*cells, share, penalty, *double)
        })
        .collect();
    let readers: Vec<[(usize, f32); BINS]> = lengths
        .iter()
        .map(|(cells, ..)| {
            std::array::from_fn(|n| {
                let at = (n as f32 + 0.5) / BINS as f32 * *cells as f32;
                (at as usize, at.fract())
            })
        })
        .collect();
    // A chain may begin within the first period or so, and end within the last.
    let slack = (GRID + GRID / 4 + (margin / cell) as usize).min(cells / 3);
    let mut best = vec![f32::MIN; cells + 1];
    let mut way: Vec<Option<(usize, bool)>> = vec![None; cells + 1];
    best.iter_mut().take(slack.min(cells)).for_each(|value| *value = 0.0);
    for from in 0..cells {
        if best[from] == f32::MIN {
            continue;
        }
        for ((length, share, penalty, double), reader) in lengths.iter().zip(&readers) {
            let to = from + length;
            if to > cells {
                break;
            }
            let matched = if *double {
                0.0
            } else {
                let part = &fine[from..=to];
                let sum: f32 = reader
                    .iter()
                    .zip(template)
                    .map(|((at, between), like)| (part[*at] + between * (part[at + 1] - part[*at])) * like)
                    .sum();
                sum / BINS as f32
            };
            let score = best[from] + matched * share + penalty;
            if score > best[to] {
                (best[to], way[to]) = (score, Some((from, *double)));
            }
        }
    }
    let mut at = (cells.saturating_sub(slack)..=cells).max_by(|a, b| best[*a].total_cmp(&best[*b]))?;
    let (mut ends, mut double) = (vec![at as f32 * cell], Vec::new());
    while let Some((from, twice)) = way[at] {
        ends.push(from as f32 * cell);
        double.push(twice);
        at = from;
    }
    ends.reverse();
    double.reverse();
    (!double.is_empty()).then_some((ends, double))
}

/// Lengths a piece may have, in cells of the grid, and whether such a piece is two stitches.
fn choices(way: Way) -> Vec<(usize, bool)> {
    match way {
        Way::Bent => {
            (GRID / 2..=GRID + GRID / 2).map(|cells| (cells, false)).chain((42..=55).map(|cells| (cells, true))).collect()
        }
        Way::Even => (GRID - GRID / 5..=GRID + GRID / 5).map(|cells| (cells, false)).collect(),
    }
}

/// An even seam's stitches may be bent less than an uneven one's, so that a few that are hard to see do not lead astray.
fn stiffness(ends: &[f32], double: &[bool], period: f32) -> f32 {
    let lengths = || ends.windows(2).zip(double).filter(|(_, double)| !**double).map(|(pair, _)| (pair[1] - pair[0]) / period);
    let usual = median(lengths());
    let spread = 1.4826 * median(lengths().map(|length| (length - usual).abs()));
    (0.04 / (spread * spread + 0.002)).clamp(3.0, 12.0)
}

/// The mean of the pieces.
fn learnt(signal: &[f32], ends: &[f32], double: &[bool]) -> Option<Vec<f32>> {
    let mut sum = vec![0.0; BINS];
    let mut count = 0;
    for (pair, double) in ends.windows(2).zip(double) {
        if !double {
            sum.iter_mut().zip(piece(signal, pair[0], pair[1])).for_each(|(sum, value)| *sum += value);
            count += 1;
        }
    }
    (count > 0).then_some(sum)
}

/// Each end moved, by less than a cell, to where the mean stitch on both its sides fits best; and how far, in spread, left and right
/// neighbours would have it differently.
fn settled(signal: &[f32], template: &[f32], ends: &[f32], period: f32) -> (Vec<f32>, f32) {
    let half = BINS / 2;
    let rolled: Vec<f32> = (0..BINS).map(|n| template[(n + half) % BINS]).collect();
    let step = period / (2 * GRID) as f32;
    let mut differ = Vec::new();
    let moved = ends
        .iter()
        .enumerate()
        .map(|(n, end)| {
            let before = if n > 0 { end - ends[n - 1] } else { period }.min(1.5 * period);
            let after = if n + 1 < ends.len() { ends[n + 1] - end } else { period }.min(1.5 * period);
            let score = |by: f32, part: std::ops::Range<usize>| -> f32 {
                part.map(|k| {
                    let share = (k as f32 + 0.5) / BINS as f32 - 0.5;
                    let off = if share < 0.0 { share * before } else { share * after };
                    between(signal, end + by + off) * rolled[k]
                })
                .sum()
            };
            let best = |part: std::ops::Range<usize>, reach: i32| {
                let scores: Vec<f32> = (-reach..=reach).map(|k| score(k as f32 * step, part.clone())).collect();
                let at = (1..scores.len() - 1).max_by(|a, b| scores[*a].total_cmp(&scores[*b])).unwrap_or(reach as usize);
                (at as f32 - reach as f32 + top(scores[at - 1], scores[at], scores[at + 1])) * step
            };
            differ.push((best(0..half, 6) - best(half..BINS, 6)) / period);
            end + best(0..BINS, 3)
        })
        .collect();
    let spread = (differ.iter().map(|value| value * value).sum::<f32>() / differ.len().max(1) as f32).sqrt();
    (moved, 0.5 * spread)
}

/// Takes away a first or last piece that touches the end of the strip and is of another length than the others.
fn trim(placed: &mut Placed, signal: &[f32], template: &[f32]) {
    let samples = signal.len();
    let mut lengths = placed.lengths();
    if lengths.len() < 4 {
        return;
    }
    lengths.sort_unstable_by(f32::total_cmp);
    let usual = lengths[lengths.len() / 2];
    let margin = 0.06 * placed.period;
    let odd = |length: f32| (length / usual - 1.0).abs() > 0.07;
    // A piece where the seam has ended is like no stitch.
    let unlike = |from: f32, to: f32| fit(&piece(signal, from, to), template) < 0.4;
    while placed.double.len() > 4 {
        let (from, to) = (placed.ends[0], placed.ends[1]);
        if placed.double[0] || unlike(from, to) || (from <= margin && odd(to - from)) {
            placed.ends.remove(0);
            placed.double.remove(0);
        } else {
            break;
        }
    }
    while placed.double.len() > 4 {
        let last = placed.double.len() - 1;
        let (from, to) = (placed.ends[last], placed.ends[last + 1]);
        if placed.double[last] || unlike(from, to) || (to >= samples as f32 - 1.0 - margin && odd(to - from)) {
            placed.ends.pop();
            placed.double.pop();
        } else {
            break;
        }
    }
}

/// Coefficient of variation of how much of the mean stitch each single piece shows.
fn patchy(signal: &[f32], template: &[f32], placed: &Placed) -> f32 {
    let single = placed.ends.windows(2).zip(&placed.double).filter(|(_, double)| !**double);
    let shown: Vec<f32> = single.map(|(pair, _)| fit(&piece(signal, pair[0], pair[1]), template)).collect();
    let count = shown.len().max(1) as f32;
    let mean = shown.iter().sum::<f32>() / count;
    (shown.iter().map(|size| (size - mean).powi(2)).sum::<f32>() / count).sqrt() / mean.max(1e-6)
}

/// Share of the pieces' variance that the mean stitch explains, each piece with its own strength.
fn explained(signal: &[f32], template: &[f32], placed: &Placed) -> f32 {
    let (mut left, mut all) = (0.0, 0.0);
    for (pair, double) in placed.ends.windows(2).zip(&placed.double) {
        if *double {
            continue;
        }
        let piece = piece(signal, pair[0], pair[1]);
        let size = fit(&piece, template);
        for (value, like) in piece.iter().zip(template) {
            left += (value - size * like).powi(2);
            all += value * value;
        }
    }
    if all > 0.0 { 1.0 - left / all } else { 0.0 }
}
