//! An ellipse through places on the rim of a circle seen at a slant.

use super::linear::{Normal, inverse};
use crate::Point;

/// An ellipse in the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Ellipse {
    pub(super) middle: Point,
    /// Half the longer and the shorter axis, pixels.
    pub(super) long: f64,
    pub(super) short: f64,
    /// The way of the longer axis, length 1.
    pub(super) way: Point,
}

impl Ellipse {
    /// The place on the rim at an angle round the middle, counted from the longer axis.
    pub(super) fn rim(&self, angle: f64) -> Point {
        self.part(angle, 1.0)
    }

    /// The same on an ellipse of the same shape, `times` as large.
    pub(super) fn part(&self, angle: f64, times: f64) -> Point {
        let (sin, cos) = angle.sin_cos();
        let across = Point { x: -self.way.y, y: self.way.x };
        self.middle.stepped(self.way, times * self.long * cos).stepped(across, times * self.short * sin)
    }

    /// How far out a place lies: 1 on the rim.
    pub(super) fn radius(&self, at: Point) -> f64 {
        let way = self.middle.way_to(at);
        let (x, y) = (way.x * self.way.x + way.y * self.way.y, -way.x * self.way.y + way.y * self.way.x);
        (x / self.long).hypot(y / self.short)
    }
}

/// The ellipse nearest to places with weights: least squares of the conic under `4ac - b² = 1` (Fitzgibbon, Pilu, Fisher, IEEE PAMI 21 (1999)
/// 476, in the numerically stable form of Halir and Flusser, WSCG 1998). None when they lie on no ellipse.
pub(super) fn ellipse(places: &[(Point, f64)]) -> Option<Ellipse> {
    let weight: f64 = places.iter().map(|place| place.1).sum();
    let mean = |value: fn(Point) -> f64| places.iter().map(|place| place.1 * value(place.0)).sum::<f64>() / weight;
    let middle = Point { x: mean(|at| at.x), y: mean(|at| at.y) };
    let size = (places.iter().map(|place| place.1 * middle.distance(place.0).powi(2)).sum::<f64>() / weight).sqrt();
    if places.len() < 5 || size.is_nan() || size <= 0.0 || !middle.is_finite() {
        return None;
    }
    let (mut s1, mut s2, mut s3) = ([[0.0; 3]; 3], [[0.0; 3]; 3], [[0.0; 3]; 3]);
    for (at, weight) in places {
        let (x, y) = ((at.x - middle.x) / size, (at.y - middle.y) / size);
        let (quadratic, linear) = ([x * x, x * y, y * y], [x, y, 1.0]);
        for i in 0..3 {
            for j in 0..3 {
                s1[i][j] += weight * quadratic[i] * quadratic[j];
                s2[i][j] += weight * quadratic[i] * linear[j];
                s3[i][j] += weight * linear[i] * linear[j];
            }
        }
    }
    // t = -S3⁻¹ S2ᵀ, M = C1⁻¹ (S1 + S2 t).
    let s3 = inverse(s3)?;
    let t: [[f64; 3]; 3] = std::array::from_fn(|i| std::array::from_fn(|j| -(0..3).map(|k| s3[i][k] * s2[j][k]).sum::<f64>()));
    let m: [[f64; 3]; 3] =
        std::array::from_fn(|i| std::array::from_fn(|j| s1[i][j] + (0..3).map(|k| s2[i][k] * t[k][j]).sum::<f64>()));
    let m = [m[2].map(|entry| entry / 2.0), m[1].map(|entry| -entry), m[0].map(|entry| entry / 2.0)];
    let quadratic = roots(m).into_iter().filter_map(|root| kernel(m, root)).find(|v| 4.0 * v[0] * v[2] - v[1] * v[1] > 0.0)?;
    let linear: [f64; 3] = std::array::from_fn(|i| (0..3).map(|k| t[i][k] * quadratic[k]).sum());
    of_conic(quadratic, linear, middle, size)
}

/// Eigenvalues of a matrix that are real.
fn roots(m: [[f64; 3]; 3]) -> Vec<f64> {
    let trace = m[0][0] + m[1][1] + m[2][2];
    let minors =
        m[0][0] * m[1][1] - m[0][1] * m[1][0] + m[0][0] * m[2][2] - m[0][2] * m[2][0] + m[1][1] * m[2][2] - m[1][2] * m[2][1];
    let determinant = m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
    // x³ - trace x² + minors x - determinant, with x = y + trace / 3.
    let third = trace / 3.0;
    let p = minors - trace * third;
    let q = third * minors - 2.0 * third.powi(3) - determinant;
    if p >= 0.0 {
        // One real root at most counts; three equal ones when both are 0.
        return vec![third + cube_root(p, q)];
    }
    let reach = 2.0 * (-p / 3.0).sqrt();
    let turn = (3.0 * q / (p * reach)).clamp(-1.0, 1.0).acos() / 3.0;
    (0..3).map(|k| third + reach * (turn - std::f64::consts::TAU * f64::from(k) / 3.0).cos()).collect()
}

/// The real root of `y³ + p y + q` for `p` not below 0.
fn cube_root(p: f64, q: f64) -> f64 {
    let root = (q * q / 4.0 + p * p * p / 27.0).sqrt();
    (-q / 2.0 + root).cbrt() + (-q / 2.0 - root).cbrt()
}

/// The way that a matrix only stretches, by that factor.
fn kernel(m: [[f64; 3]; 3], by: f64) -> Option<[f64; 3]> {
    let mut rows = m;
    for (n, row) in rows.iter_mut().enumerate() {
        row[n] -= by;
    }
    let cross = |a: [f64; 3], b: [f64; 3]| [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
    let size = |v: &[f64; 3]| v.iter().map(|part| part * part).sum::<f64>();
    let best = [cross(rows[0], rows[1]), cross(rows[1], rows[2]), cross(rows[0], rows[2])]
        .into_iter()
        .max_by(|one, other| size(one).total_cmp(&size(other)))?;
    let length = size(&best).sqrt();
    (length > 0.0 && length.is_finite()).then(|| best.map(|part| part / length))
}

fn of_conic([a, b, c]: [f64; 3], [d, e, f]: [f64; 3], middle: Point, size: f64) -> Option<Ellipse> {
    let mut centre = Normal::<2>::new();
    centre.row([2.0 * a, b], -d, 1.0);
    centre.row([b, 2.0 * c], -e, 1.0);
    let [x, y] = centre.solved()?.0;
    let level = -(f + (d * x + e * y) / 2.0);
    // Eigenvalues of [[a, b/2], [b/2, c]] are level over the squares of the half axes.
    let (mean, reach) = ((a + c) / 2.0, ((a - c) / 2.0).hypot(b / 2.0));
    let squares = [level / (mean - reach), level / (mean + reach)];
    let (one, other) = (squares[0].sqrt(), squares[1].sqrt());
    let swapped = other > one;
    let angle = 0.5 * b.atan2(a - c) + if swapped { 0.0 } else { std::f64::consts::FRAC_PI_2 };
    let (long, short) = (one.max(other) * size, one.min(other) * size);
    let found = Ellipse {
        middle: Point { x: middle.x + x * size, y: middle.y + y * size },
        long,
        short,
        way: Point { x: angle.cos(), y: angle.sin() },
    };
    (found.middle.is_finite() && long.is_finite() && short > 0.0).then_some(found)
}
