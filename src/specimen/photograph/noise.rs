//! Values that hang together from place to place: hashes and smooth noise, the same for the same place and salt.

/// Mixes two whole numbers and a salt into 32 well-spread bits (a multiply-and-shift mixer; the constants are common practice, no source).
pub(super) fn hash(i: i32, j: i32, salt: u32) -> u32 {
    let mut h = (i as u32).wrapping_mul(0x9e37_79b1)
        ^ (j as u32).wrapping_mul(0x85eb_ca77).rotate_left(13)
        ^ salt.wrapping_mul(0xc2b2_ae3d);
    h ^= h >> 15;
    h = h.wrapping_mul(0x2c1b_3c6d);
    h ^= h >> 12;
    h = h.wrapping_mul(0x297a_2d39);
    h ^ (h >> 15)
}

/// A value from 0 up to 1 for a cell.
pub(super) fn unit(i: i32, j: i32, salt: u32) -> f32 {
    (hash(i, j, salt) >> 8) as f32 / 16_777_216.0
}

/// A value from -1 up to 1 for a cell.
pub(super) fn both(i: i32, j: i32, salt: u32) -> f32 {
    2.0 * unit(i, j, salt) - 1.0
}

/// The whole number at or below. Quicker than `floor`, which is a call where the processor's rounding is not taken for granted.
pub(super) fn cell(x: f32) -> i32 {
    let cut = x as i32;
    cut - i32::from(x < cut as f32)
}

fn ease(t: f32) -> f32 {
    t * t * (3.0 - 2.0 * t)
}

/// Smooth noise along a line, from -1 to 1, one bump a unit.
pub(super) fn along(x: f32, salt: u32) -> f32 {
    let i = cell(x);
    let t = ease(x - i as f32);
    let (a, b) = (both(i, 0, salt), both(i.wrapping_add(1), 0, salt));
    a + (b - a) * t
}

/// Smooth noise over a plane, from -1 to 1, one bump a unit.
pub(super) fn over(x: f32, y: f32, salt: u32) -> f32 {
    let (i, j) = (cell(x), cell(y));
    let (tx, ty) = (ease(x - i as f32), ease(y - j as f32));
    let at = |di: i32, dj: i32| both(i.wrapping_add(di), j.wrapping_add(dj), salt);
    let (a, b, c, d) = (at(0, 0), at(1, 0), at(0, 1), at(1, 1));
    let (top, foot) = (a + (b - a) * tx, c + (d - c) * tx);
    top + (foot - top) * ty
}

/// About normally distributed with variance 1, for a cell: four even draws of one hash added (bounded by 3.5).
pub(super) fn bell(i: i32, j: i32, salt: u32) -> f32 {
    let (a, b) = (hash(i, j, salt), hash(j, i, salt ^ 0x5bd1_e995));
    let sum = (a & 0xffff) + (a >> 16) + (b & 0xffff) + (b >> 16);
    (sum as f32 / 65_536.0 - 2.0) * 1.732_051
}

/// Zero below `low`, one above `high`, smooth between.
pub(super) fn step(low: f32, high: f32, x: f32) -> f32 {
    ease(((x - low) / (high - low)).clamp(0.0, 1.0))
}
