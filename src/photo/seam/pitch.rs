//! How many times a millimetre something repeats along the seam and not in the cloth beside it: candidates, and the guard against octaves.

use realfft::num_complex::Complex;

use super::place::{BINS, Placed, piece};
use super::signal::Bank;
use super::spectrum::{Fourier, dilated, hann, median, moving_mean, power, top};

/// Shortest and longest stitch that is usual, mm: 16.5 and 3.5 to the inch (judgement).
const USUAL: (f32, f32) = (1.54, 7.26);

/// Least strength of a line that is tried, as a share of the strongest (judgement).
const LOUD: f32 = 0.35;

/// The mean of the middle two of four values.
fn middle(mut four: [f32; 4]) -> f32 {
    four.sort_unstable_by(f32::total_cmp);
    four[1]
}

/// Lines of the spectrum that the seam has and the cloth has not.
pub(super) struct Lines {
    /// Transform used.
    pub(super) fourier: Fourier,
    /// Bins in a cycle per sample.
    bins: f32,
    /// Strength at each bin, in spreads of the floor.
    pub(super) strength: Vec<f32>,
    /// For each profile of the seam, the share of its power at each bin that is its own.
    own: Vec<Vec<f32>>,
    /// For each profile, power of the floor.
    floor: Vec<f32>,
    /// The cloth's part of what is seen there, 0 to 1.
    shared: Vec<f32>,
    /// Samples in a millimetre of the cloth.
    per_true_mm: f32,
    /// First and last bin where stitches may lie.
    range: (usize, usize),
}

/// A possible number of stitches.
#[derive(Clone, Copy, Debug)]
pub(super) struct Candidate {
    /// Cycles a sample.
    pub(super) frequency: f32,
    /// Strength of its line.
    pub(super) line: f32,
    /// Strength with harmonics.
    pub(super) score: f32,
}

impl Lines {
    /// Of a bank of profiles; `finest` is the finest frequency the picture can show, cycles a sample.
    pub(super) fn of(bank: &Bank, finest: f32) -> Option<Lines> {
        let samples = bank.samples();
        let mut fourier = Fourier::for_samples(samples);
        let bins = fourier.length() as f32;
        let coarsest = (1.0 / (8.5 * bank.per_true_mm)).max(3.2 / samples as f32);
        let finest = (1.0 / (1.25 * bank.per_true_mm)).min(finest).min(0.45);
        let range = ((coarsest * bins).ceil() as usize, (finest * bins) as usize);
        if range.0 + 2 >= range.1 {
            return None;
        }
        let half = bank.seam.len() / 2;
        let reach = (bins / samples as f32) as usize;
        // The middle of the zones on both sides, thread colour and brightness apart: a second row in one of them, or an edge, is outvoted.
        let mut cloth_of = |kind: usize| {
            let mut mean = |side: &Vec<Vec<f32>>| {
                let part = side.len() / 2;
                let mut sum = vec![0.0; bins as usize / 2 + 1];
                for profile in &side[kind * part..(kind + 1) * part] {
                    for (sum, power) in sum.iter_mut().zip(power(&mut fourier, profile)) {
                        *sum += power / part as f32;
                    }
                }
                sum
            };
            let zones = bank.sides.each_ref().map(&mut mean);
            let middle: Vec<f32> = (0..zones[0].len()).map(|at| middle(std::array::from_fn(|n| zones[n][at]))).collect();
            dilated(&middle, reach)
        };
        let cloths = [cloth_of(0), cloth_of(1)];
        let (mut pooled, mut weights) = (vec![0.0_f32; bins as usize / 2 + 1], 0.0_f32);
        let (mut own, mut floors) = (Vec::new(), Vec::new());
        let mut on_cloth = vec![0.0_f32; pooled.len()];
        for (n, profile) in bank.seam.iter().enumerate() {
            let (seam, cloth) = (power(&mut fourier, profile), &cloths[n / half]);
            let within = |power: &Vec<f32>| median(power[range.0..range.1].iter().copied());
            let floor = (within(&seam) + within(cloth)).max(1e-4);
            let line: Vec<f32> = seam.iter().zip(cloth).map(|(s, c)| (s - 1.2 * c).max(0.0) / (floor + 0.5 * c)).collect();
            let mut sorted = line[range.0..=range.1].to_vec();
            sorted.sort_unstable_by(|a, b| b.total_cmp(a));
            let strongest = (sorted.len() / 50).max(1);
            let weight = (sorted[..strongest].iter().sum::<f32>() / strongest as f32).sqrt();
            for (pooled, line) in pooled.iter_mut().zip(&line) {
                *pooled += weight * line;
            }
            for ((on, s), c) in on_cloth.iter_mut().zip(&seam).zip(cloth) {
                *on += weight * c / (s + c + 1e-9);
            }
            weights += weight;
            // What is seen in the cloth too is noise to the stitches: held back as a matched filter would, by its amplitude.
            let white = |c: f32| (floor / (floor + c)).sqrt();
            own.push(seam.iter().zip(cloth).map(|(s, c)| ((s - 1.2 * c) / s.max(1e-9)).clamp(0.03, 1.0) * white(*c)).collect());
            floors.push(floor);
        }
        if weights <= 0.0 {
            return None;
        }
        let wide = 0.22 / bank.per_mm * bins;
        pooled.iter_mut().for_each(|value| *value /= weights);
        let broad = moving_mean(&pooled, wide);
        let strength: Vec<f32> = pooled.iter().zip(broad).map(|(value, broad)| (value - 1.5 * broad).max(0.0)).collect();
        let shared = on_cloth.iter().map(|on| on / weights).collect();
        Some(Lines { fourier, bins, strength, own, floor: floors, shared, per_true_mm: bank.per_true_mm, range })
    }

    /// Strength near a frequency: the most within a third of a main lobe.
    pub(super) fn near(&self, frequency: f32, samples: usize) -> f32 {
        let (at, reach) = ((frequency * self.bins).round() as usize, (0.7 * self.bins / samples as f32) as usize);
        if at > self.range.1 + self.range.1 {
            return 0.0;
        }
        let (from, to) = (at.saturating_sub(reach), (at + reach + 1).min(self.strength.len()));
        self.strength.get(from..to).map_or(0.0, |part| part.iter().copied().fold(0.0, f32::max))
    }

    /// Whether stitches may repeat so often.
    pub(super) fn allows(&self, frequency: f32) -> bool {
        let at = frequency * self.bins;
        at >= self.range.0 as f32 && at <= self.range.1 as f32
    }

    /// Length of a stitch at a frequency, mm on the cloth.
    pub(super) fn length(&self, frequency: f32) -> f32 {
        1.0 / (frequency * self.per_true_mm).max(1e-6)
    }

    /// How usual stitches of this length are, 0 to 1: 1 for those that are sewn, less the further beyond.
    pub(super) fn usual(&self, frequency: f32) -> f32 {
        let length = self.length(frequency);
        let beyond = (length / USUAL.1).ln().max((USUAL.0 / length).ln()).max(0.0);
        (-0.5 * (beyond / 0.12).powi(2)).exp()
    }

    /// The cloth's part of what is seen at a frequency, 0 to 1.
    pub(super) fn shared(&self, frequency: f32) -> f32 {
        self.shared.get((frequency * self.bins).round() as usize).copied().unwrap_or(0.0)
    }

    /// The strongest line there is.
    pub(super) fn strongest(&self) -> f32 {
        self.strength[self.range.0..=self.range.1].iter().copied().fold(0.0, f32::max)
    }

    /// Up to three frequencies that may be that of the stitches, the best first; every peak that rivals them stands in the second list.
    pub(super) fn candidates(&self, samples: usize) -> (Vec<Candidate>, Vec<Candidate>) {
        let mut peaks = Vec::new();
        for at in self.range.0.max(1)..=self.range.1.min(self.strength.len() - 2) {
            let (before, here, after) = (self.strength[at - 1], self.strength[at], self.strength[at + 1]);
            if here > 0.0 && here >= before && here > after {
                let frequency = (at as f32 + top(before, here, after)) / self.bins;
                let second = self.near(2.0 * frequency, samples).min(here);
                let third = self.near(3.0 * frequency, samples).min(here);
                let score = self.usual(frequency) * (here + 0.5 * second + 0.25 * third);
                peaks.push(Candidate { frequency, line: here, score });
            }
        }
        peaks.sort_unstable_by(|a, b| b.score.total_cmp(&a.score));
        peaks.truncate(6);
        let least = 0.12 * peaks.first().map_or(0.0, |best| best.score);
        // An overtone may be stronger than its own line, but not by much.
        let weighed = |peak: &Candidate| peak.line * self.usual(peak.frequency);
        let loud = LOUD * peaks.iter().map(weighed).fold(0.0, f32::max);
        let kept = peaks.iter().copied().filter(|peak| peak.score >= least && weighed(peak) >= loud).take(3).collect();
        (kept, peaks)
    }

    /// The profiles of the seam with what the cloth shows too held back.
    pub(super) fn cleaned(&mut self, bank: &Bank) -> Vec<Vec<f32>> {
        let samples = bank.samples();
        let mut clean = Vec::with_capacity(bank.seam.len());
        for (profile, own) in bank.seam.iter().zip(&self.own) {
            let mut spectrum = self.fourier.spectrum(profile.iter().copied());
            spectrum.iter_mut().zip(own).for_each(|(value, own)| *value *= *own);
            clean.push(self.fourier.signal(spectrum, samples));
        }
        clean
    }

    /// One profile that shows the stitches best: the bands of the seam brought into step with each other at this frequency, with what the
    /// cloth shows too held back.
    pub(super) fn joined(&mut self, bank: &Bank, frequency: f32) -> Vec<f32> {
        let weights = in_step(bank, &self.floor, frequency);
        let half = self.strength.len();
        let mut sum = vec![Complex::new(0.0, 0.0); half];
        // Near the line, as wide as the line itself is: an uneven seam spreads it, an even one leaves the rest to the cloth.
        let near = 0.13 * frequency;
        let wide = dilated(&self.strength, (0.7 * self.bins / bank.samples() as f32) as usize);
        let line = self.near(frequency, bank.samples()).max(1e-6);
        for ((profile, own), (weight, floor)) in bank.seam.iter().zip(&self.own).zip(weights.iter().zip(&self.floor)) {
            let spectrum = self.fourier.spectrum(profile.iter().copied());
            let scale = weight.conj() / floor.sqrt();
            for (bin, (sum, value)) in sum.iter_mut().zip(&spectrum).enumerate() {
                let at = bin as f32 / self.bins;
                let mut gain = own[bin];
                if (at - frequency).abs() < near && self.shared[bin] <= 0.45 {
                    gain = gain.max(0.6 * (wide[bin] / line).min(1.0).sqrt());
                }
                if at > 3.6 * frequency {
                    gain *= 0.3;
                }
                *sum += value * scale * gain;
            }
        }
        let joined = self.fourier.signal(sum, bank.samples());
        let period = 1.0 / frequency;
        let smooth = moving_mean(&joined, 0.12 * period);
        let squares: Vec<f32> = smooth.iter().map(|value| value * value).collect();
        let loud = moving_mean(&moving_mean(&squares, 4.0 * period), 2.0 * period);
        let whole = squares.iter().sum::<f32>() / squares.len().max(1) as f32;
        smooth.iter().zip(loud).map(|(value, loud)| value / (0.85 * loud + 0.15 * whole).sqrt().max(1e-12)).collect()
    }
}

/// Weight and phase of each profile: the leading eigenvector of their cross-spectra at the frequency, over windows of a few stitches.
fn in_step(bank: &Bank, floor: &[f32], frequency: f32) -> Vec<Complex<f32>> {
    let (count, samples) = (bank.seam.len(), bank.samples());
    let width = ((4.0 / frequency) as usize).clamp(4, samples);
    let turns: Vec<Complex<f32>> = (0..width)
        .map(|n| Complex::from_polar(hann(n, width), -std::f32::consts::TAU * (frequency * n as f32).fract()))
        .collect();
    let mut cross = vec![Complex::new(0.0_f32, 0.0); count * count];
    let mut from = 0;
    while from + width <= samples {
        let seen: Vec<Complex<f32>> = bank
            .seam
            .iter()
            .zip(floor)
            .map(|(profile, floor)| {
                let sum: Complex<f32> = profile[from..from + width].iter().zip(&turns).map(|(value, turn)| turn * value).sum();
                sum / floor.sqrt()
            })
            .collect();
        for (i, a) in seen.iter().enumerate() {
            for (j, b) in seen.iter().enumerate() {
                cross[i * count + j] += a * b.conj();
            }
        }
        from += (width / 2).max(1);
    }
    let mut vector = vec![Complex::new(1.0_f32, 0.0); count];
    // From the loudest profile, so that the start is never at right angles to the answer.
    if let Some(loudest) = (0..count).max_by(|a, b| cross[a * count + a].re.total_cmp(&cross[b * count + b].re)) {
        vector = (0..count).map(|i| cross[i * count + loudest]).collect();
    }
    for _ in 0..12 {
        let next: Vec<Complex<f32>> =
            (0..count).map(|i| (0..count).map(|j| cross[i * count + j] * vector[j]).sum::<Complex<f32>>()).collect();
        let size = next.iter().map(Complex::norm_sqr).sum::<f32>().sqrt();
        if !(size > 0.0 && size.is_finite()) {
            break;
        }
        vector = next.iter().map(|value| value / size).collect();
    }
    let size = vector.iter().map(Complex::norm_sqr).sum::<f32>().sqrt();
    if size > 0.0 && size.is_finite() {
        vector.iter().map(|value| value / size).collect()
    } else {
        vec![Complex::new(1.0, 0.0); count]
    }
}

/// Turns of the frequency along a signal, followed as it drifts: at each sample, how many periods have passed.
pub(super) fn turns(signal: &[f32], frequency: f32) -> Vec<f32> {
    let reach = ((1.5 / frequency) as usize).max(2);
    let step = ((0.25 / frequency) as usize).max(1);
    let spin: Vec<Complex<f32>> = (0..signal.len())
        .map(|n| Complex::from_polar(signal[n], -std::f32::consts::TAU * (frequency * n as f32).fract()))
        .collect();
    let window: Vec<f32> = (0..2 * reach + 1).map(|n| hann(n, 2 * reach + 1)).collect();
    let mut drift: Vec<f32> = Vec::new();
    let mut places: Vec<usize> = (0..signal.len()).step_by(step).collect();
    places.push(signal.len().saturating_sub(1));
    let mut last = 0.0_f32;
    for (n, at) in places.iter().enumerate() {
        let from = at.saturating_sub(reach);
        let sum: Complex<f32> = (from..(at + reach + 1).min(signal.len())).map(|k| spin[k] * window[k + reach - at]).sum();
        let phase = sum.arg() / std::f32::consts::TAU;
        last = if n == 0 { phase } else { phase + (last - phase).round() };
        drift.push(last);
    }
    let mut turns = vec![0.0; signal.len()];
    for pair in 0..places.len().saturating_sub(1) {
        let (from, to) = (places[pair], places[pair + 1]);
        for (at, turn) in turns.iter_mut().enumerate().take(to + 1).skip(from) {
            let share = if to > from { (at - from) as f32 / (to - from) as f32 } else { 0.0 };
            *turn = frequency * at as f32 + drift[pair] + share * (drift[pair + 1] - drift[pair]);
        }
    }
    turns
}

/// How alike neighbouring stitches are, -1 to 1: the mean of the odd ones against the mean of the even ones in all profiles, with what chance adds
/// to their difference taken off. Where it is low, the true period is twice as long.
pub(super) fn neighbours_alike(clean: &[Vec<f32>], lines: &Lines, placed: &Placed) -> f32 {
    let (mut common, mut apart) = (0.0_f32, 0.0_f32);
    for (profile, floor) in clean.iter().zip(&lines.floor) {
        let mut sums = [[0.0_f32; BINS]; 2];
        let mut squares = [0.0_f32; 2];
        let mut counts = [0.0_f32; 2];
        for (n, (pair, double)) in placed.ends.windows(2).zip(&placed.double).enumerate() {
            if *double {
                continue;
            }
            let mut piece = piece(profile, pair[0], pair[1]);
            let mean = piece.iter().sum::<f32>() / BINS as f32;
            piece.iter_mut().for_each(|value| *value -= mean);
            sums[n % 2].iter_mut().zip(piece).for_each(|(sum, value)| *sum += value);
            squares[n % 2] += piece.iter().map(|value| value * value).sum::<f32>();
            counts[n % 2] += 1.0;
        }
        if counts[0] < 2.0 || counts[1] < 2.0 {
            continue;
        }
        let means = [0, 1].map(|k| sums[k].map(|sum| sum / counts[k]));
        let size = [0, 1].map(|k| means[k].iter().map(|value| value * value).sum::<f32>());
        let chance = [0, 1].map(|k| ((squares[k] / counts[k] - size[k]) / (counts[k] - 1.0)).max(0.0));
        let together: f32 = means[0].iter().zip(means[1]).map(|(a, b)| a * b).sum();
        common += together / floor;
        apart += (0.5 * (size[0] + size[1]) - together - 0.5 * (chance[0] + chance[1])) / floor;
    }
    let all = common.abs() + apart.max(0.0);
    if all > 0.0 { common / all } else { 0.0 }
}
