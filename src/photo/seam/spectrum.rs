//! Small pieces of signal work: moving means, spectra, the top of a peak.

use realfft::{RealFftPlanner, num_complex::Complex};

/// Mean of the values within `width / 2` on both sides of each (a centred moving mean; at the ends of what is there).
pub(super) fn moving_mean(values: &[f32], width: f32) -> Vec<f32> {
    let reach = (width / 2.0).max(0.0) as usize;
    let mut sums = Vec::with_capacity(values.len() + 1);
    let mut sum = 0.0_f64;
    sums.push(sum);
    for value in values {
        sum += f64::from(*value);
        sums.push(sum);
    }
    (0..values.len())
        .map(|at| {
            let (from, to) = (at.saturating_sub(reach), (at + reach + 1).min(values.len()));
            ((sums[to] - sums[from]) / (to - from) as f64) as f32
        })
        .collect()
}

/// Slow changes taken out: periods well over `width` samples go, those below stay.
pub(super) fn without_slow(values: &[f32], width: f32) -> Vec<f32> {
    let slow = moving_mean(&moving_mean(values, width), width / 2.0);
    values.iter().zip(slow).map(|(value, slow)| value - slow).collect()
}

/// Fourier transforms of one length, both ways.
pub(super) struct Fourier {
    length: usize,
    planner: RealFftPlanner<f32>,
}

impl Fourier {
    /// For signals of up to so many samples, with three times as many points or more, so that peaks are well drawn.
    pub(super) fn for_samples(samples: usize) -> Fourier {
        Fourier { length: (3 * samples.max(8)).next_power_of_two(), planner: RealFftPlanner::new() }
    }

    /// Points of the transform; bin `n` is the frequency `n / length` cycles a sample.
    pub(super) fn length(&self) -> usize {
        self.length
    }

    /// Half the spectrum of a real signal, filled up with zeros.
    pub(super) fn spectrum(&mut self, signal: impl Iterator<Item = f32>) -> Vec<Complex<f32>> {
        let forward = self.planner.plan_fft_forward(self.length);
        let mut input = forward.make_input_vec();
        for (place, value) in input.iter_mut().zip(signal) {
            *place = value;
        }
        let mut output = forward.make_output_vec();
        // The lengths fit, for the plan made both.
        let _ = forward.process(&mut input, &mut output);
        output
    }

    /// The real signal of half a spectrum, its first `samples` values.
    pub(super) fn signal(&mut self, mut spectrum: Vec<Complex<f32>>, samples: usize) -> Vec<f32> {
        let inverse = self.planner.plan_fft_inverse(self.length);
        if let (Some(first), Some(last)) = (spectrum.first().copied(), spectrum.last().copied()) {
            // The plan wants these two real.
            spectrum[0] = Complex::new(first.re, 0.0);
            let end = spectrum.len() - 1;
            spectrum[end] = Complex::new(last.re, 0.0);
        }
        let mut output = inverse.make_output_vec();
        let _ = inverse.process(&mut spectrum, &mut output);
        output.truncate(samples);
        output.iter_mut().for_each(|value| *value /= self.length as f32);
        output
    }
}

/// Hann's window at a place of so many.
pub(super) fn hann(at: usize, of: usize) -> f32 {
    0.5 - 0.5 * (std::f32::consts::TAU * (at as f32 + 0.5) / of as f32).cos()
}

/// Power of a signal at each frequency, seen through Hann's window.
pub(super) fn power(fourier: &mut Fourier, signal: &[f32]) -> Vec<f32> {
    let of = signal.len();
    let windowed = signal.iter().enumerate().map(|(at, value)| value * hann(at, of));
    fourier.spectrum(windowed).iter().map(|bin| bin.norm_sqr() / of as f32).collect()
}

/// The largest value within `reach` places of each.
pub(super) fn dilated(values: &[f32], reach: usize) -> Vec<f32> {
    (0..values.len())
        .map(|at| values[at.saturating_sub(reach)..(at + reach + 1).min(values.len())].iter().copied().fold(f32::MIN, f32::max))
        .collect()
}

/// The middle value; 0 when there is none.
pub(super) fn median(values: impl Iterator<Item = f32>) -> f32 {
    let mut values: Vec<f32> = values.collect();
    if values.is_empty() {
        return 0.0;
    }
    let middle = values.len() / 2;
    *values.select_nth_unstable_by(middle, f32::total_cmp).1
}

/// How far the top of the parabola through three neighbours lies from the middle one, -0.5 to 0.5.
pub(super) fn top(before: f32, at: f32, after: f32) -> f32 {
    let bend = before - 2.0 * at + after;
    if bend < 0.0 { (0.5 * (before - after) / bend).clamp(-0.5, 0.5) } else { 0.0 }
}

/// A value between samples, drawn straight; the ends go on.
pub(super) fn between(values: &[f32], at: f32) -> f32 {
    let last = values.len().saturating_sub(1);
    let n = (at.max(0.0) as usize).min(last);
    let share = (at - n as f32).clamp(0.0, 1.0);
    let (a, b) = (values.get(n).copied().unwrap_or(0.0), values.get((n + 1).min(last)).copied().unwrap_or(0.0));
    a + share * (b - a)
}
