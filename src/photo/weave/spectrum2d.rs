//! The power spectrum of a square of cloth, and its peaks.

use realfft::RealFftPlanner;
use realfft::num_complex::Complex;

/// Power of a square block over its frequencies: columns 0 to half the side, rows wrapped as in any Fourier transform.
pub(super) struct Spectrum {
    side: usize,
    power: Vec<f64>,
}

/// A peak: frequency in cycles per sample, and how many times it stands above the middle of its ring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Peak {
    pub x: f64,
    pub y: f64,
    pub above: f64,
}

impl Spectrum {
    /// Mean power of blocks that overlap by half or more, each under a Hann window (Welch's method). `grid` is a square of `size`; `side` at
    /// most `size` and even.
    pub fn of(grid: &[f64], size: usize, side: usize) -> Option<Spectrum> {
        if side < 16 || !side.is_multiple_of(2) || side > size || grid.len() != size * size {
            return None;
        }
        let window: Vec<f64> = (0..side).map(|at| 0.5 - 0.5 * (std::f64::consts::TAU * at as f64 / side as f64).cos()).collect();
        let steps = (size - side).div_ceil(side / 2);
        let starts: Vec<usize> = (0..=steps).map(|step| if steps == 0 { 0 } else { step * (size - side) / steps }).collect();
        let mut spectrum = Spectrum { side, power: vec![0.0; side * (side / 2 + 1)] };
        for top in &starts {
            for left in &starts {
                spectrum.add(|x, y| grid[(top + y) * size + left + x] * window[x] * window[y]);
            }
        }
        Some(spectrum)
    }

    fn half(&self) -> usize {
        self.side / 2 + 1
    }

    fn add(&mut self, value: impl Fn(usize, usize) -> f64) {
        let (side, half) = (self.side, self.half());
        let transform = RealFftPlanner::<f64>::new().plan_fft_forward(side);
        let mut line = transform.make_input_vec();
        let mut out = transform.make_output_vec();
        let mut rows = vec![Complex::new(0.0, 0.0); side * half];
        for y in 0..side {
            line.iter_mut().enumerate().for_each(|(x, at)| *at = value(x, y));
            if transform.process(&mut line, &mut out).is_ok() {
                rows[y * half..(y + 1) * half].copy_from_slice(&out);
            }
        }
        let mut imaginary = transform.make_output_vec();
        for x in 0..half {
            // A complex column as two real ones: X = R + iI, and for the other half of the frequencies conj(R) + i conj(I).
            line.iter_mut().enumerate().for_each(|(y, at)| *at = rows[y * half + x].re);
            let real_done = transform.process(&mut line, &mut out).is_ok();
            line.iter_mut().enumerate().for_each(|(y, at)| *at = rows[y * half + x].im);
            if !real_done || transform.process(&mut line, &mut imaginary).is_err() {
                continue;
            }
            let i = Complex::new(0.0, 1.0);
            for y in 0..half {
                self.power[y * half + x] += (out[y] + i * imaginary[y]).norm_sqr();
                if y > 0 && y < side - y {
                    self.power[(side - y) * half + x] += (out[y].conj() + i * imaginary[y].conj()).norm_sqr();
                }
            }
        }
    }

    /// Power at whole frequencies, of either sign.
    pub fn at(&self, x: isize, y: isize) -> f64 {
        let (x, y) = if x < 0 { (-x, -y) } else { (x, y) };
        let row = y.rem_euclid(self.side as isize) as usize;
        self.power.get(row * self.half() + x as usize).copied().unwrap_or(0.0)
    }

    /// The strongest peaks of one half of the plane, strongest first: those between the two radii (bins) that stand `above` times over the
    /// middle of their ring.
    pub fn peaks(&self, radii: (f64, f64), above: f64, most: usize) -> Vec<Peak> {
        let reach = (radii.1.min(self.side as f64 / 2.0 - 2.0)) as isize;
        let half_plane = || (0..=reach).flat_map(|x| (-reach..=reach).map(move |y| (x, y))).filter(|(x, y)| *x > 0 || *y > 0);
        let ring = |x: isize, y: isize| (8.0 * (1.0 + (x as f64).hypot(y as f64)).ln()) as usize;
        let mut rings: Vec<Vec<f64>> = Vec::new();
        for (x, y) in half_plane() {
            let place = ring(x, y);
            if rings.len() <= place {
                rings.resize(place + 1, Vec::new());
            }
            rings[place].push(self.at(x, y));
        }
        let middles: Vec<f64> = (rings.iter_mut())
            .map(|ring| {
                ring.sort_by(f64::total_cmp);
                ring.get(ring.len() / 2).copied().unwrap_or(0.0)
            })
            .collect();
        let mut peaks: Vec<Peak> = half_plane()
            .filter(|(x, y)| (radii.0..=radii.1).contains(&(*x as f64).hypot(*y as f64)))
            .filter_map(|(x, y)| {
                let here = self.at(x, y);
                let height = here / middles[ring(x, y)].max(f64::MIN_POSITIVE);
                let beside = |dx: isize, dy: isize| self.at(x + dx, y + dy);
                let highest = (-2..=2).all(|dx| (-2..=2).all(|dy| (dx, dy) == (0, 0) || beside(dx, dy) < here));
                (height > above && highest).then(|| Peak {
                    x: (x as f64 + vertex(beside(-1, 0), here, beside(1, 0))) / self.side as f64,
                    y: (y as f64 + vertex(beside(0, -1), here, beside(0, 1))) / self.side as f64,
                    above: height,
                })
            })
            .collect();
        peaks.sort_by(|one, other| other.above.total_cmp(&one.above));
        peaks.truncate(most);
        peaks
    }
}

/// Where the parabola through the logarithms of three neighbours has its top, from the middle one.
fn vertex(before: f64, here: f64, after: f64) -> f64 {
    let [before, here, after] = [before, here, after].map(|power| power.max(f64::MIN_POSITIVE).ln());
    let bend = before - 2.0 * here + after;
    if bend < 0.0 { (0.5 * (before - after) / bend).clamp(-0.5, 0.5) } else { 0.0 }
}
