//! What lens, sensor and camera software make of the light: blur, grain, colour balance, sharpening, the display curve.

use super::colour::{Rgb, shown};
use super::noise::bell;

/// Faults of one exposure. Lengths in pixels.
pub(super) struct Lens {
    /// Blur where the picture is sharpest, and at the far end of the depth (standard deviation).
    pub blur: f32,
    pub far_blur: f32,
    /// Motion: how far, and the direction (radians).
    pub shake: f32,
    pub shake_way: f32,
    /// Grain of full white light (share), of darkness (share), and how much of it is coloured, 0 to 1.
    pub grain: f32,
    pub floor: f32,
    pub chroma: f32,
    pub exposure: f32,
    pub balance: Rgb,
    /// Strength and width of sharpening.
    pub sharpen: f32,
    pub sharp_width: f32,
    pub contrast: f32,
    pub salt: u32,
}

/// Three planes of a picture.
pub(super) struct Planes {
    pub wide: usize,
    pub high: usize,
    pub plane: [Vec<f32>; 3],
}

impl Planes {
    pub(super) fn new(wide: usize, high: usize) -> Planes {
        Planes { wide, high, plane: [0, 1, 2].map(|_| vec![0.0; wide * high]) }
    }

    /// Blurred along both axes by a bell curve.
    fn softened(&self, sigma: f32) -> Planes {
        let mut out = Planes::new(self.wide, self.high);
        for (from, to) in self.plane.iter().zip(&mut out.plane) {
            *to = soft(from, self.wide, self.high, sigma);
        }
        out
    }
}

fn soft(from: &[f32], wide: usize, high: usize, sigma: f32) -> Vec<f32> {
    if sigma < 0.15 {
        return from.to_vec();
    }
    let reach = (3.0 * sigma).ceil() as usize;
    let mut kernel: Vec<f32> = (0..=2 * reach).map(|k| (-0.5 * ((k as f32 - reach as f32) / sigma).powi(2)).exp()).collect();
    let sum: f32 = kernel.iter().sum();
    kernel.iter_mut().for_each(|k| *k /= sum);
    let mut rows = vec![0.0_f32; from.len()];
    let mut padded = vec![0.0_f32; wide + 2 * reach];
    for (source, target) in from.chunks_exact(wide).zip(rows.chunks_exact_mut(wide)) {
        padded[..reach].fill(source[0]);
        padded[reach..reach + wide].copy_from_slice(source);
        padded[reach + wide..].fill(source[wide - 1]);
        for (k, weight) in kernel.iter().enumerate() {
            target.iter_mut().zip(&padded[k..]).for_each(|(t, p)| *t += weight * p);
        }
    }
    let mut out = vec![0.0_f32; from.len()];
    for (y, target) in out.chunks_exact_mut(wide).enumerate() {
        for (k, weight) in kernel.iter().enumerate() {
            let row = (y + k).saturating_sub(reach).min(high - 1);
            target.iter_mut().zip(&rows[row * wide..(row + 1) * wide]).for_each(|(t, p)| *t += weight * p);
        }
    }
    out
}

fn shaken(from: &Planes, long: f32, way: f32) -> Planes {
    let steps = (long * 1.5).ceil().max(1.0) as i32;
    let (s, c) = way.sin_cos();
    let mut out = Planes::new(from.wide, from.high);
    let share = 1.0 / (2 * steps + 1) as f32;
    for (source, target) in from.plane.iter().zip(&mut out.plane) {
        for step in -steps..=steps {
            let at = 0.5 * long * step as f32 / steps as f32;
            let (dx, dy) = ((at * c).round() as isize, (at * s).round() as isize);
            for y in 0..from.high {
                let row = (y as isize + dy).clamp(0, from.high as isize - 1) as usize;
                let (source, target) =
                    (&source[row * from.wide..(row + 1) * from.wide], &mut target[y * from.wide..(y + 1) * from.wide]);
                let shift = dx.unsigned_abs().min(from.wide);
                if dx >= 0 {
                    target.iter_mut().zip(&source[shift..]).for_each(|(t, p)| *t += share * p);
                    let end = source[from.wide - 1];
                    target[from.wide - shift..].iter_mut().for_each(|t| *t += share * end);
                } else {
                    target[shift..].iter_mut().zip(source).for_each(|(t, p)| *t += share * p);
                    target[..shift].iter_mut().for_each(|t| *t += share * source[0]);
                }
            }
        }
    }
    out
}

impl Lens {
    /// The picture as kept: RGBA bytes. `far` tells for a pixel how far out of focus it lies, 0 to 1.
    pub(super) fn develop(&self, light: Planes, far: impl Fn(usize, usize) -> f32) -> Vec<u8> {
        let light = if self.shake > 0.6 { shaken(&light, self.shake, self.shake_way) } else { light };
        let near = light.softened(self.blur);
        let away = (self.far_blur > self.blur + 0.15).then(|| light.softened(self.far_blur));
        let (wide, high) = (near.wide, near.high);
        let mut out = near;
        if let Some(away) = away {
            for (sharp, soft) in out.plane.iter_mut().zip(&away.plane) {
                for (at, (s, f)) in sharp.iter_mut().zip(soft).enumerate() {
                    *s += (f - *s) * far(at % wide, at / wide);
                }
            }
        }
        for (channel, plane) in out.plane.iter_mut().enumerate() {
            let gain = self.exposure * self.balance[channel];
            for (at, value) in plane.iter_mut().enumerate() {
                let (x, y) = ((at % wide) as i32, (at / wide) as i32);
                let clean = *value * gain;
                let own = bell(x, y, self.salt ^ (channel as u32 + 1));
                let shared = bell(x, y, self.salt ^ 9);
                // Coloured grain comes in clumps, because colour is worked out from neighbours.
                let clump = bell(x >> 1, y >> 1, self.salt ^ (channel as u32 + 21));
                let grain = (1.0 - self.chroma) * shared + self.chroma * (0.6 * own + 0.8 * clump);
                let much = (self.grain * self.grain * clean.max(0.0) * gain.max(0.2) + self.floor * self.floor).sqrt();
                *value = (clean + much * grain).max(0.0);
            }
        }
        let curve: Vec<f32> = (0..=4096)
            .map(|k| {
                let v = shown(k as f32 / 4096.0 * 1.0);
                let bent = v * v * (3.0 - 2.0 * v);
                v + self.contrast * (bent - v)
            })
            .collect();
        for plane in &mut out.plane {
            plane.iter_mut().for_each(|v| {
                let at = (*v * 4096.0).clamp(0.0, 4095.99);
                let k = at as usize;
                *v = curve[k] + (curve[k + 1] - curve[k]) * (at - k as f32);
            });
        }
        if self.sharpen > 0.05 {
            // Sharpened in brightness alone, as camera software does.
            let grey: Vec<f32> = (0..wide * high)
                .map(|at| 0.299 * out.plane[0][at] + 0.587 * out.plane[1][at] + 0.114 * out.plane[2][at])
                .collect();
            let smooth = soft(&grey, wide, high, self.sharp_width);
            for plane in &mut out.plane {
                for (value, (g, s)) in plane.iter_mut().zip(grey.iter().zip(&smooth)) {
                    *value += self.sharpen * (g - s);
                }
            }
        }
        let byte = |v: f32| (v * 255.0 + 0.5).clamp(0.0, 255.0) as u8;
        (0..wide * high).flat_map(|at| [byte(out.plane[0][at]), byte(out.plane[1][at]), byte(out.plane[2][at]), 255]).collect()
    }
}
