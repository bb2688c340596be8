//! How far on both sides of the marks the cloth is free to be looked at.

use crate::{Plane, Point, Raster};

use super::strip::Path;

/// How far across the line, mm on both sides, the strip is to be trusted.
pub(super) type Reach = (f32, f32);

/// Least reach on both sides, mm: the seam itself is looked at wherever the marks lie.
const LEAST: f32 = 1.8;

/// Columns that share one reach.
const TOGETHER: usize = 8;

/// The reach at each place of the line: `half` at most, not beyond the border of the picture, and not onto the object that gives the scale (its
/// outline in the picture). A seam that bows may come nearer to both elsewhere, so that each place has its own.
pub(super) fn free(picture: &Raster, plane: &Plane, straight: &Path, object: &[Point], half: f32) -> Vec<Reach> {
    let outline = Outline::of(object, plane, straight);
    let mut reach = Vec::with_capacity(straight.places.len());
    for first in (0..straight.places.len()).step_by(TOGETHER) {
        let (place, across) = (straight.places[first], straight.across[first]);
        let inside = |v: f32| {
            let at = Point { x: place.x + f64::from(v) * across.x, y: place.y + f64::from(v) * across.y };
            holds(picture, plane.in_picture(at))
        };
        let (mut low, mut high) = outline.as_ref().map_or((-half, half), |outline| outline.short_of(place, half));
        while high > LEAST && !inside(high) {
            high -= 0.2;
        }
        while low < -LEAST && !inside(low) {
            low += 0.2;
        }
        let shared = TOGETHER.min(straight.places.len() - first);
        reach.extend(std::iter::repeat_n((low.min(-LEAST), high.max(LEAST)), shared));
    }
    reach
}

/// The outline of the object beside a line: how far along and across it each corner lies, mm.
struct Outline {
    start: Point,
    along: Point,
    corners: Vec<(f64, f64)>,
    above: bool,
}

impl Outline {
    fn of(object: &[Point], plane: &Plane, straight: &Path) -> Option<Outline> {
        let (start, across) = (*straight.places.first()?, *straight.across.first()?);
        let along = Point { x: across.y, y: -across.x };
        let mut corners: Vec<(f64, f64)> = object
            .iter()
            .map(|corner| plane.on_cloth(*corner))
            .map(|at| (at.x - start.x, at.y - start.y))
            .map(|(dx, dy)| (dx * along.x + dy * along.y, dx * across.x + dy * across.y))
            .collect();
        // A ruler goes on beyond its two marks.
        if let [a, b] = corners[..]
            && (b.0 - a.0).abs() > (b.1 - a.1).abs()
        {
            let (dx, dy) = (b.0 - a.0, b.1 - a.1);
            corners = vec![(a.0 - dx, a.1 - dy), (b.0 + dx, b.1 + dy)];
        }
        // Its bulk lies on one side of the seam, even where the chord of a curved seam cuts through it.
        let above = corners.iter().map(|(_, v)| v).sum::<f64>() > 0.0;
        (!corners.is_empty()).then_some(Outline { start, along, corners, above })
    }

    /// The reach at a place of the line.
    fn short_of(&self, place: Point, half: f32) -> Reach {
        let x = (place.x - self.start.x) * self.along.x + (place.y - self.start.y) * self.along.y;
        let (mut low, mut high) = (-half, half);
        for (n, a) in self.corners.iter().enumerate() {
            let b = self.corners[(n + 1) % self.corners.len()];
            let (from, to) = (a.0.min(b.0), a.0.max(b.0));
            if x < from - 1.0 || x > to + 1.0 {
                continue;
            }
            let share = if to > from { ((x - a.0) / (b.0 - a.0)).clamp(0.0, 1.0) } else { 0.5 };
            let v = (a.1 + share * (b.1 - a.1)) as f32;
            if self.above {
                high = high.min((v - 0.6).max(LEAST));
            } else {
                low = low.max((v + 0.6).min(-LEAST));
            }
        }
        (low, high)
    }
}

/// Whether a place lies in the picture.
pub(super) fn holds(picture: &Raster, at: Point) -> bool {
    (0.0..picture.width() as f64).contains(&at.x) && (0.0..picture.height() as f64).contains(&at.y)
}
