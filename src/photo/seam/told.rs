//! What is told of a seam: stitches, their mean length, how even they are, and how far that may be off.

use serde::{Deserialize, Serialize};

use crate::{Plane, Point, Scale};

use super::place::Placed;
use super::strip::Path;

/// What a reading from a picture can be off by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Cause {
    /// Where marks were set and graduations found.
    Scale,
    /// The object lies nearer to the phone than the cloth, or further.
    Height,
    /// The phone was tilted, and the seam does not lie under the object.
    Tilt,
    /// Where stitches or yarns begin and end.
    Counting,
}

/// One entry of an uncertainty budget: what it comes from, and its standard uncertainty as a share of the reading.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Part {
    /// What it comes from.
    pub from: Cause,
    /// Standard uncertainty as a share: 0.01 is one per cent.
    pub share: f64,
}

/// What the person said about a first reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub enum Said {
    /// Nothing: the reading is the picture's alone.
    #[default]
    Nothing,
    /// There are twice as many stitches.
    Twice,
    /// There are half as many.
    Half,
    /// There are about so many in a centimetre: one of two readings that were offered.
    About(f64),
}

/// One stitch on the picture, from needle hole to needle hole (pixels).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Stitch {
    /// Where it begins.
    pub from: Point,
    /// Where it ends.
    pub to: Point,
    /// Whether it is so long that a stitch seems to have been skipped inside.
    pub skipped: bool,
}

/// What was counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SeamCount {
    /// Mean length of a stitch, mm on the cloth.
    pub stitch_mm: f64,
    /// What makes it uncertain.
    pub budget: Vec<Part>,
    /// The stitches counted, in order along the seam.
    pub stitches: Vec<Stitch>,
    /// Coefficient of variation of the length of the stitches, slow changes along the seam taken out.
    pub unevenness: f64,
    /// Pixels of the picture in a stitch.
    pub px_per_stitch: f64,
}

/// What is told of stitches placed along a path of the plane; `per_mm` is how many samples lie in a millimetre of the cloth.
pub(super) fn told(placed: &Placed, path: &Path, plane: &Plane, scale: &Scale, per_mm: f64) -> SeamCount {
    let seen: Vec<Point> = placed.ends.iter().map(|end| plane.in_picture(path.at(f64::from(*end), 0.0))).collect();
    let stitches: Vec<Stitch> = seen
        .windows(2)
        .zip(&placed.double)
        .map(|(pair, double)| Stitch { from: pair[0], to: pair[1], skipped: *double })
        .collect();
    let count = placed.count().max(1) as f64;
    let pixels: f64 = stitches.iter().map(|stitch| (stitch.to.x - stitch.from.x).hypot(stitch.to.y - stitch.from.y)).sum();
    let middle = seen.get(seen.len() / 2).copied().unwrap_or_default();
    let mut budget = scale.spread_at(middle);
    let unevenness = unevenness(&placed.lengths());
    budget.push(Part { from: Cause::Counting, share: counting(placed.jitter, unevenness, count) });
    SeamCount { stitch_mm: f64::from(placed.pitch()) / per_mm, budget, stitches, unevenness, px_per_stitch: pixels / count }
}

/// Standard uncertainty of the mean length of a stitch, as a share, from how well the two sides of an end agree where it lies and from how
/// uneven the stitches are: what is seen between two ends is not quite what lies between the marks. The factor was chosen so that twice this covers
/// 90 to 96 of 100 errors of the sets drawn.
fn counting(jitter: f32, unevenness: f64, stitches: f64) -> f64 {
    2.4 * f64::from(jitter).hypot(unevenness) / stitches
}

/// Coefficient of variation after a parabola (a line below twelve) over the place in the row is taken out.
fn unevenness(lengths: &[f32]) -> f64 {
    let count = lengths.len();
    let degree = if count >= 12 { 2 } else { 1 };
    if count < degree + 2 {
        return 0.0;
    }
    let mean = lengths.iter().map(|l| f64::from(*l)).sum::<f64>() / count as f64;
    // Polynomials at right angles to each other over the places (Gram), built one from the other.
    let mut left: Vec<f64> = lengths.iter().map(|length| f64::from(*length) - mean).collect();
    let mut basis: Vec<Vec<f64>> = vec![vec![1.0; count]];
    for power in 1..=degree {
        let mut next: Vec<f64> = (0..count).map(|n| (2.0 * n as f64 / (count - 1) as f64 - 1.0).powi(power as i32)).collect();
        for known in &basis {
            take_out(&mut next, known);
        }
        take_out(&mut left, &next);
        basis.push(next);
    }
    let squares: f64 = left.iter().map(|value| value * value).sum();
    (squares / (count - degree - 1) as f64).sqrt() / mean
}

fn take_out(values: &mut [f64], known: &[f64]) {
    let size: f64 = known.iter().map(|value| value * value).sum();
    let share = values.iter().zip(known).map(|(value, known)| value * known).sum::<f64>() / size.max(1e-12);
    values.iter_mut().zip(known).for_each(|(value, known)| *value -= share * known);
}

#[cfg(test)]
mod tests {
    use super::*;

    const NUMPY: &str = include_str!("../../../tests/vectors/photo_seam.json");

    #[test]
    fn unevenness_is_what_remains_after_the_polynomial_of_numpy() {
        let rows: serde_json::Value = serde_json::from_str(NUMPY).expect("JSON");
        for row in rows["evenness"].as_array().expect("rows") {
            let lengths: Vec<f32> =
                row["lengths"].as_array().expect("numbers").iter().map(|l| l.as_f64().expect("one") as f32).collect();
            let wanted = row["cv"].as_f64().expect("a number");
            assert!((unevenness(&lengths) - wanted).abs() < 1e-6, "{} for {wanted}", unevenness(&lengths));
        }
    }

    #[test]
    fn too_few_stitches_have_no_unevenness() {
        assert_eq!(unevenness(&[]), 0.0);
        assert_eq!(unevenness(&[3.0, 4.0]), 0.0);
    }
}
