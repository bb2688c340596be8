//! Pictures of woven cloth drawn from a seed, with a known truth.

use crate::{Point, Scale};

pub(super) struct Chance(pub u64);

impl Chance {
    /// 0 to 1. SplitMix64 (Steele, Lea, Flood 2014).
    pub fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    pub fn within(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }

    pub fn normal(&mut self) -> f64 {
        (-2.0 * self.next().max(1e-300).ln()).sqrt() * (std::f64::consts::TAU * self.next()).cos()
    }
}

pub(super) const SIDE: usize = 560;

pub(super) struct Cloth {
    pub rgba: Vec<u8>,
    pub scale: Scale,
    pub marks: (Point, Point),
    pub ends_cm: f64,
    pub picks_cm: f64,
    pub twill: Option<f64>,
}

/// A weave of which ends are dyed and picks are not (or nearly alike), at any angle, the perspective a little off, with uneven yarns, side
/// light, blur and noise. The marked yarn is an end; `px` are the
/// least and the most pixels of an end.
pub(super) fn cloth(seed: u64, px: (f64, f64)) -> Cloth {
    let mut chance = Chance(seed);
    let weaves: [&[&[u8]]; 6] = [
        &[&[1, 0], &[0, 1]],
        &[&[1, 1, 0], &[1, 0, 1], &[0, 1, 1]],
        &[&[1, 1, 1, 0], &[1, 1, 0, 1], &[1, 0, 1, 1], &[0, 1, 1, 1]],
        &[&[0, 1, 1, 1], &[1, 0, 1, 1], &[1, 1, 0, 1], &[1, 1, 1, 0]],
        &[&[1, 1, 0, 0], &[0, 1, 1, 0], &[0, 0, 1, 1], &[1, 0, 0, 1]],
        &[&[1, 1, 0], &[0, 1, 1], &[1, 0, 1]],
    ];
    let kind = (chance.next() * 6.0) as usize % 6;
    let pattern = weaves[kind];
    let px_per_end = chance.within(px.0, px.1);
    let ends_cm = chance.within(15.0, 40.0);
    let picks_cm = ends_cm * chance.within(0.55, 0.95);
    let px_per_mm = px_per_end * ends_cm / 10.0;
    let turn = chance.within(0.0, std::f64::consts::TAU);
    let (sine, cosine) = turn.sin_cos();
    let skew = chance.within(-0.02, 0.02);
    let slant = (chance.within(-0.015, 0.015), chance.within(-0.015, 0.015));
    let (dark, light) = (chance.within(40.0, 90.0), chance.within(110.0, 220.0));
    let weft = if chance.next() < 0.2 { dark + 15.0 } else { light };
    let (uneven, jitter) = (chance.within(0.02, 0.12), chance.within(0.02, 0.10));
    let (noise, shade) = (chance.within(1.0, 9.0), chance.within(0.15, 0.5));
    let glow = (chance.within(-0.25, 0.25), chance.within(-0.25, 0.25));
    let yarns: Vec<(f64, f64)> = (0..512).map(|_| (chance.normal() * jitter, 1.0 + uneven * chance.normal())).collect();
    let other: Vec<(f64, f64)> = (0..512).map(|_| (chance.normal() * jitter, 1.0 + uneven * chance.normal())).collect();
    let middle = SIDE as f64 / 2.0;
    let seen = |x: f64, y: f64| {
        let (x, y) = ((x - middle) / middle, (y - middle) / middle);
        let w = 1.0 + slant.0 * x + slant.1 * y;
        let (x, y) = (x / w * middle / px_per_mm, y / w * middle / px_per_mm);
        // Ends run along the second axis of the cloth.
        let (across, along) = (x * cosine + y * sine, -x * sine + y * cosine);
        let (e, p) = (across * ends_cm / 10.0 + 200.0, (along + skew * across) * picks_cm / 10.0 + 200.0);
        let lies = |at: f64, yarns: &[(f64, f64)]| {
            let whole = at.floor();
            let yarn = yarns[(whole as usize).min(511)];
            (whole as usize, at - whole - 0.5 - yarn.0, yarn.1)
        };
        let (end, off_end, bright_end) = lies(e, &yarns);
        let (pick, off_pick, bright_pick) = lies(p, &other);
        let row = pattern[pick % pattern.len()];
        let on_top = row[end % row.len()] == 1;
        let round = |off: f64| (1.0 - shade * (2.0 * off).powi(2)).max(0.2);
        if on_top {
            dark * bright_end * round(off_end) * (0.7 + 0.3 * round(off_pick))
        } else {
            weft * bright_pick * round(off_pick) * (0.7 + 0.3 * round(off_end))
        }
    };
    let mut rgba = Vec::with_capacity(SIDE * SIDE * 4);
    for y in 0..SIDE {
        for x in 0..SIDE {
            let value = [(-0.25, -0.25), (0.25, -0.25), (-0.25, 0.25), (0.25, 0.25)]
                .map(|(dx, dy)| seen(x as f64 + 1.5 * dx, y as f64 + 1.5 * dy));
            let lit = 1.0 + glow.0 * (x as f64 / middle - 1.0) + glow.1 * (y as f64 / middle - 1.0);
            let grey = value.iter().sum::<f64>() / 4.0 * lit + noise * chance.normal();
            let of = |tint: f64| (grey * tint).round().clamp(0.0, 255.0) as u8;
            rgba.extend([of(0.9), of(0.97), of(1.1), 255]);
        }
    }
    let reach = 0.36 * SIDE as f64;
    // A mark's error: about a degree.
    let wrong = chance.normal() * 0.017;
    let (ms, mc) = (turn + wrong).sin_cos();
    let along = (-ms, mc);
    let marks = (
        Point { x: middle - reach * along.0, y: middle - reach * along.1 },
        Point { x: middle + reach * along.0, y: middle + reach * along.1 },
    );
    // The twill line by the drawn geometry: one end on, one pick up or down; against the direction of the picks.
    let twill = (kind > 0).then(|| {
        let right = matches!(kind, 3..=5);
        let (dx, dp) = (10.0 / ends_cm, if right { 10.0 / picks_cm } else { -10.0 / picks_cm });
        // On the cloth: p = along + skew * across.
        let (ax, ay) = (dx, dp - skew * dx);
        let pick = (1.0, -skew);
        let cos = (ax * pick.0 + ay * pick.1).abs() / (ax.hypot(ay) * 1.0_f64.hypot(skew));
        cos.min(1.0).acos().to_degrees()
    });
    Cloth { rgba, scale: flat(px_per_mm), marks, ends_cm, picks_cm: picks_cm * 1.0_f64.hypot(skew), twill }
}

/// The scale of a picture taken from straight above.
pub(super) fn flat(px_per_mm: f64) -> Scale {
    Scale::even(px_per_mm).expect("a scale")
}
