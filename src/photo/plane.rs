//! Where the flat cloth lies in the picture.

use serde::{Deserialize, Serialize};

/// A place in the picture in pixels, or on the cloth in millimetres.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

/// A plane seen in perspective: from pixels to millimetres and back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plane {
    to_mm: [f64; 9],
    to_px: [f64; 9],
}

impl Plane {
    /// From the homography (row by row, last number free) that takes pixels to millimetres; none when it has no inverse or is not finite.
    pub fn new(to_mm: [f64; 9]) -> Option<Plane> {
        let to_px = inverse(to_mm)?;
        Some(Plane { to_mm, to_px })
    }

    /// The place on the cloth that is seen there.
    pub fn on_cloth(&self, pixel: Point) -> Point {
        mapped(&self.to_mm, pixel)
    }

    /// Where a place on the cloth is seen.
    pub fn in_picture(&self, place: Point) -> Point {
        mapped(&self.to_px, place)
    }
}

fn mapped(h: &[f64; 9], at: Point) -> Point {
    let w = h[6] * at.x + h[7] * at.y + h[8];
    Point { x: (h[0] * at.x + h[1] * at.y + h[2]) / w, y: (h[3] * at.x + h[4] * at.y + h[5]) / w }
}

fn inverse(h: [f64; 9]) -> Option<[f64; 9]> {
    let [a, b, c, d, e, f, g, i, k] = h;
    let adjugate = [
        e * k - f * i,
        c * i - b * k,
        b * f - c * e,
        f * g - d * k,
        a * k - c * g,
        c * d - a * f,
        d * i - e * g,
        b * g - a * i,
        a * e - b * d,
    ];
    let determinant = a * adjugate[0] + b * adjugate[3] + c * adjugate[6];
    let inverse = adjugate.map(|entry| entry / determinant);
    inverse.iter().all(|entry| entry.is_finite()).then_some(inverse)
}
