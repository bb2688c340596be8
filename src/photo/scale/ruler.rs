//! A ruler by two marks on its graduations: the comb between the marks, then every graduation, then the plane on which they lie.

use super::comb::{Comb, comb};
use super::marks;
use super::object::{Drift, Graduation, Scale, ScaleFault, focal, height, unknown_tilt};
use super::strip::{Axes, BAND_MM, Strip};
use super::ticks::{Fit, fitted};
use crate::{Cause, Part, Plane, Point, Raster};

/// How far a comb must stand out of the spectrum round it to be looked at (judgement). Rulers mostly reach hundreds; cloth alone can pass, and
/// is told apart when each graduation is looked for.
const LINE: f64 = 3.0;
/// Most that both marks together can be off, mm.
const MARKS_OFF: f64 = 1.2;
/// What the printing of a ruler may be off by, as a share (judgement; EC class II allows 0.03 mm and more in 100).
const PRINTED: f64 = 0.0005;

/// The scale from a ruler.
pub(super) fn scale(picture: &Raster, from: Point, to: Point, mm: f64) -> Result<Scale, ScaleFault> {
    // What the marks alone tell, and their faults.
    let marked = marks::scale(picture, from, to, mm)?;
    Ok(read(picture, from, to, mm).unwrap_or(marked))
}

fn read(picture: &Raster, from: Point, to: Point, mm: f64) -> Option<Scale> {
    let px = from.distance(to);
    let px_mm = px / mm;
    if px_mm <= 2.0 || px_mm * 3.0 > px {
        return None;
    }
    let half = px / 2.0;
    let prior = unknown_tilt(picture) * half;
    let strip = Strip::new(picture, from, to, px_mm, 1.25 * px_mm);
    let mut combs: Vec<(f64, Graduation, Comb)> = [Graduation::Millimetre, Graduation::Sixteenth]
        .into_iter()
        .filter_map(|unit| {
            let comb = comb(&strip, half, mm / unit.mm(), unit.mm())?;
            Some((comb.line * plausible(mm, unit) * (-0.5 * (comb.bend / 0.08).powi(2)).exp(), unit, comb))
        })
        .filter(|(_, _, comb)| comb.line >= LINE)
        .collect();
    combs.sort_by(|one, other| other.0.total_cmp(&one.0));
    combs.into_iter().find_map(|(_, unit, comb)| {
        let fit = fitted(&strip, half, &comb, prior)?;
        let between = fit.n(1.0, 0.0) - fit.n(-1.0, 0.0);
        let off = (between * unit.mm() - mm).abs();
        if off.is_nan() || off >= MARKS_OFF {
            return None;
        }
        Some(scale_of(picture, &strip.axes, half, &fit, unit))?
    })
}

/// People mark whole centimetres or whole graduations: a length that is whole in one unit only speaks for that unit.
fn plausible(mm: f64, unit: Graduation) -> f64 {
    let odd = |step: f64| (mm / step - (mm / step).round()).abs() * step;
    if odd(unit.mm()) < 0.02 { 2.0 } else { 1.0 }
}

/// From graduations to millimetres, and what is uncertain about it.
fn scale_of(picture: &Raster, axes: &Axes, half: f64, fit: &Fit, unit: Graduation) -> Option<Scale> {
    let mm = unit.mm();
    // The line of the graduations, from which millimetres across are counted.
    let v0 = fit.v;
    let weights = [fit.g / half, fit.h / half];
    let focal = focal(picture);
    let (across, tilt) = metric(picture, axes, half, fit, mm, focal)?;
    let along = [fit.a[1] * mm / half, fit.a[2] * mm / half, fit.a[0] * mm];
    let side = [0.0, across, -across * v0 * half];
    // From u, v to pixels of the picture.
    let row = |u: f64, v: f64, one: f64| {
        let (a, b) = (axes.along, axes.across());
        let (x, y) = (u * a.x + v * b.x, u * a.y + v * b.y);
        [x, y, one - x * axes.middle.x - y * axes.middle.y]
    };
    let (x, y, w) = (row(along[0], along[1], along[2]), row(side[0], side[1], side[2]), row(weights[0], weights[1], 1.0));
    let plane = Plane::new([x[0], x[1], x[2], y[0], y[1], y[2], w[0], w[1], w[2]])?;
    let from = axes.place(0.0, v0 * half);
    let px_mm = plane.px_per_mm(from, from.stepped(axes.along, 1.0));
    let found: Vec<Point> = (fit.ends.0..=fit.ends.1)
        .take(2000)
        .map(|n| axes.place(fit.u(n as f64, v0) * half, v0 * half))
        .filter(|place| place.is_finite())
        .collect();
    // The graduations as an outline, half a band wider.
    let (low, high) = (fit.reach.0 * half - BAND_MM * px_mm / 2.0, fit.reach.1 * half + BAND_MM * px_mm / 2.0);
    let outline = [(fit.ends.0, low), (fit.ends.1, low), (fit.ends.1, high), (fit.ends.0, high)]
        .map(|(n, v)| axes.place(fit.u(n as f64, v / half) * half, v));
    if found.is_empty() || !px_mm.is_finite() || outline.iter().any(|place| !place.is_finite()) {
        return None;
    }
    Some(Scale {
        plane,
        spread: vec![Part { from: Cause::Scale, share: fit.u_pitch.hypot(PRINTED) }, height(picture, px_mm)],
        graduation: Some(unit),
        object: outline.to_vec(),
        found,
        tilt: Some(tilt),
        drift: Drift { from, along: axes.along, share: fit.u_h / half },
    })
}

/// Millimetres across in a pixel (numerator of the map), and the tilt in degrees, with a camera of that focal length whose axis goes through the
/// middle of the picture. Both depend little on the focal length: what is seen across is foreshortened by the cosine of the tilt.
fn metric(picture: &Raster, axes: &Axes, half: f64, fit: &Fit, mm: f64, focal: f64) -> Option<(f64, f64)> {
    let centre = Point { x: picture.width() as f64 / 2.0, y: picture.height() as f64 / 2.0 };
    let (a, b) = (axes.along, axes.across());
    let (g, h) = (fit.g / half, fit.h / half);
    // 1 + g u + h v as a function of pixels from the centre is, but for a factor, the plane's depth turned over.
    let (x, y) = (g * a.x + h * b.x, g * a.y + h * b.y);
    let way = axes.middle.way_to(centre);
    let one = 1.0 + x * way.x + y * way.y;
    let normal = [x * focal, y * focal, one];
    let length = normal.iter().map(|part| part * part).sum::<f64>().sqrt();
    let tilt = (one / length).clamp(-1.0, 1.0).acos().to_degrees();
    let space = |u: f64, v: f64| {
        let at = centre.way_to(axes.place(u, v));
        let depth = 1.0 / (x * at.x + y * at.y + one);
        [at.x / focal * depth, at.y / focal * depth, depth]
    };
    let minus = |one: [f64; 3], other: [f64; 3]| -> [f64; 3] { std::array::from_fn(|n| one[n] - other[n]) };
    let dot = |one: &[f64; 3], other: &[f64; 3]| one.iter().zip(other).map(|(a, b)| a * b).sum::<f64>();
    let v0 = fit.v * half;
    let middle = space(0.0, v0);
    let (right, down) = (minus(space(0.5, v0), middle), minus(space(0.0, v0 + 0.5), middle));
    let long = dot(&right, &right).sqrt();
    let lean = dot(&right, &down) / long;
    let up = (dot(&down, &down) - lean * lean).max(0.0).sqrt();
    // X of a step along, in mm, against its length in space.
    let n = |u: f64| (fit.a[0] + fit.a[1] * u / half + fit.a[2] * fit.v) / (1.0 + g * u + h * v0);
    let mm_each = (n(0.5) - n(0.0)).abs() * mm / long;
    let across = up * mm_each / 0.5 * (1.0 + h * (v0 + 0.5));
    (across.is_finite() && across > 0.0 && tilt.is_finite()).then_some((across, tilt))
}
