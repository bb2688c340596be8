//! How far on both sides of the marks the cloth is free to be looked at.

use crate::{Plane, Point, Raster};

use super::strip::Path;

/// How far the strip may reach on both sides before it meets the object that gives the scale (its outline in the picture), mm.
pub(super) fn free_of(object: &[Point], plane: &Plane, straight: &Path, half: f32) -> (f32, f32) {
    let (mut low, mut high) = (-half, half);
    let (Some(start), Some(end), Some(across)) = (straight.places.first(), straight.places.last(), straight.across.first())
    else {
        return (low, high);
    };
    let length = (end.x - start.x).hypot(end.y - start.y);
    let mut outline = Vec::with_capacity(32 * object.len());
    for n in 0..object.len() {
        let (a, b) = (object[n], object[(n + 1) % object.len()]);
        for k in 0..32 {
            let share = f64::from(k) / 32.0;
            let at = plane.on_cloth(Point { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) });
            let (dx, dy) = (at.x - start.x, at.y - start.y);
            let v = (dx * across.x + dy * across.y) as f32;
            outline.push((dx * across.y - dy * across.x, v));
        }
    }
    // Its bulk lies on one side of the seam, even where the chord of a curved seam cuts through it.
    let above = outline.iter().map(|(_, v)| v).sum::<f32>() > 0.0;
    for (_, v) in outline.iter().filter(|(along, _)| (-1.0..=length + 1.0).contains(along)) {
        if above {
            high = high.min((v - 0.6).max(1.8));
        } else {
            low = low.max((v + 0.6).min(-1.8));
        }
    }
    (low, high)
}

/// The same reach, not beyond the border of the picture.
pub(super) fn within(picture: &Raster, plane: &Plane, straight: &Path, (mut low, mut high): (f32, f32)) -> (f32, f32) {
    for at in straight.places.iter().zip(&straight.across).step_by((straight.places.len() / 16).max(1)) {
        let inside = |v: f32| {
            let (place, across) = at;
            let seen = plane.in_picture(Point { x: place.x + f64::from(v) * across.x, y: place.y + f64::from(v) * across.y });
            holds(picture, seen)
        };
        while high > 1.8 && !inside(high) {
            high -= 0.2;
        }
        while low < -1.8 && !inside(low) {
            low += 0.2;
        }
    }
    (low, high)
}

/// Whether a place lies in the picture.
pub(super) fn holds(picture: &Raster, at: Point) -> bool {
    (0.0..picture.width() as f64).contains(&at.x) && (0.0..picture.height() as f64).contains(&at.y)
}
