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

impl Point {
    /// How far another place is.
    pub fn distance(self, other: Point) -> f64 {
        (self.x - other.x).hypot(self.y - other.y)
    }

    /// Whether both coordinates are numbers.
    pub fn is_finite(self) -> bool {
        self.x.is_finite() && self.y.is_finite()
    }

    /// The place reached by going `by` times the way that `way` goes from the origin.
    pub(crate) fn stepped(self, way: Point, by: f64) -> Point {
        Point { x: self.x + by * way.x, y: self.y + by * way.y }
    }

    /// The way to another place.
    pub(crate) fn way_to(self, other: Point) -> Point {
        Point { x: other.x - self.x, y: other.y - self.y }
    }
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

    /// From four places in the picture and where they lie on the cloth; none when three of them lie on a line.
    pub fn through(pixels: [Point; 4], places: [Point; 4]) -> Option<Plane> {
        let to_px = times(&from_square(pixels)?, &inverse(from_square(places)?)?);
        Plane::new(inverse(to_px)?)
    }

    /// The place on the cloth that is seen there.
    pub fn on_cloth(&self, pixel: Point) -> Point {
        mapped(&self.to_mm, pixel)
    }

    /// Where a place on the cloth is seen.
    pub fn in_picture(&self, place: Point) -> Point {
        mapped(&self.to_px, place)
    }

    /// Pixels in a millimetre of cloth at a place of the picture, for lengths that go the way from there to `towards` (pixels). Not finite when
    /// both are one place.
    pub fn px_per_mm(&self, at: Point, towards: Point) -> f64 {
        let way = at.way_to(towards);
        let step = 0.5 / way.x.hypot(way.y);
        let (one, other) = (at.stepped(way, -step), at.stepped(way, step));
        one.distance(other) / self.on_cloth(one).distance(self.on_cloth(other))
    }

    /// The homography from pixels to millimetres, row by row.
    pub(crate) fn towards_mm(&self) -> &[f64; 9] {
        &self.to_mm
    }

    /// The homography from millimetres to pixels, row by row.
    pub(crate) fn towards_px(&self) -> &[f64; 9] {
        &self.to_px
    }
}

fn mapped(h: &[f64; 9], at: Point) -> Point {
    let w = h[6] * at.x + h[7] * at.y + h[8];
    Point { x: (h[0] * at.x + h[1] * at.y + h[2]) / w, y: (h[3] * at.x + h[4] * at.y + h[5]) / w }
}

/// The homography that takes the corners (0,0), (1,0), (1,1), (0,1) to four places. The equations of a projective map of a square solved by
/// hand: common practice, checked in `tests/photo_scale.rs` against OpenCV.
fn from_square(to: [Point; 4]) -> Option<[f64; 9]> {
    let [p, q, r, s] = to;
    let (right, left) = (r.way_to(q), r.way_to(s));
    let odd = Point { x: p.x - q.x + r.x - s.x, y: p.y - q.y + r.y - s.y };
    let area = right.x * left.y - left.x * right.y;
    let (g, h) = ((odd.x * left.y - left.x * odd.y) / area, (right.x * odd.y - odd.x * right.y) / area);
    let map = [q.x - p.x + g * q.x, s.x - p.x + h * s.x, p.x, q.y - p.y + g * q.y, s.y - p.y + h * s.y, p.y, g, h, 1.0];
    map.iter().all(|entry| entry.is_finite()).then_some(map)
}

fn times(a: &[f64; 9], b: &[f64; 9]) -> [f64; 9] {
    std::array::from_fn(|n| (0..3).map(|k| a[n / 3 * 3 + k] * b[k * 3 + n % 3]).sum())
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_and_back_is_the_same_place() {
        let plane = Plane::new([0.1, 0.01, -3.0, -0.02, 0.12, 4.0, 1e-5, -2e-5, 1.0]).expect("a plane");
        let at = Point { x: 812.0, y: 333.0 };
        assert!(plane.in_picture(plane.on_cloth(at)).distance(at) < 1e-9);
    }

    #[test]
    fn three_places_on_a_line_give_no_plane() {
        let line = [0.0, 1.0, 2.0, 3.0].map(|x| Point { x, y: x });
        let square = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)].map(|(x, y)| Point { x, y });
        assert!(Plane::through(line, square).is_none());
        assert!(Plane::through([Point { x: f64::NAN, y: 0.0 }; 4], square).is_none());
    }
}
