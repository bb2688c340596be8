//! A coin by places on its rim: a circle of known size, seen as an ellipse.

use std::f64::consts::TAU;

use super::ellipse::{Ellipse, ellipse};
use super::linear::{biweight, median, summit};
use super::object::{Drift, Scale, ScaleFault, focal, height, is_length, unknown_tilt, within};
use crate::{Cause, Part, Plane, Point, Raster};

/// A mark set by a finger, mm (standard deviation, judgement), and no better than in pixels.
const MARK_MM: f64 = 0.25;
const MARK_PX: f64 = 2.0;
/// The rim where the picture changes, mm: rims are bevelled and shine (judgement).
const RIM_MM: f64 = 0.12;
/// A coin seen flatter than this is none (cosine of 55 degrees).
const FLATTEST: f64 = 0.57;

/// The scale from a coin.
///
/// An ellipse tells how far the phone was tilted, not to which of two sides; the plane is the one without perspective between both, and what
/// that leaves open grows with the distance (`Drift`).
pub(super) fn scale(picture: &Raster, rim: &[Point], mm: f64) -> Result<Scale, ScaleFault> {
    if !is_length(mm) {
        return Err(ScaleFault::Size);
    }
    if rim.len() < 5 {
        return Err(ScaleFault::FewOnRim);
    }
    if rim.iter().any(|place| !within(picture, *place)) {
        return Err(ScaleFault::Marks);
    }
    let widest = rim.iter().map(|place| place.distance(rim[0])).fold(0.0, f64::max);
    if widest < 8.0 {
        return Err(ScaleFault::Marks);
    }
    let even: Vec<(Point, f64)> = rim.iter().map(|place| (*place, 1.0)).collect();
    let marked = ellipse(&even).ok_or(ScaleFault::NotACoin)?;
    let taps = (MARK_MM / mm).max(MARK_PX / (2.0 * marked.long));
    // Far from a circle, or marks that do not lie on it.
    let scatter = rim.iter().map(|place| (marked.radius(*place) - 1.0).abs()).fold(0.0, f64::max);
    if marked.short < FLATTEST * marked.long || scatter > (8.0 * taps).max(0.06) || !within(picture, marked.middle) {
        return Err(ScaleFault::NotACoin);
    }
    let (found, off) = match on_edge(picture, &marked) {
        Some(edge) => (edge, (RIM_MM / mm).max(0.5 / marked.long)),
        None => (marked, 2.0 * taps / (rim.len() as f64).sqrt()),
    };
    // Along the longer axis the circle keeps its size; across it is foreshortened. A flattening smaller than its own error is none.
    let flat = 1.0 - found.short / found.long;
    let flat = flat * flat * flat / (flat * flat + off * off).max(1e-12);
    let long = if flat < off { (found.long + found.short) / 2.0 } else { found.long };
    let (x, y) = (mm / 2.0 / long, mm / 2.0 / (long * (1.0 - flat)));
    let (way, at) = (found.way, found.middle);
    let across = Point { x: -way.y, y: way.x };
    let row = |by: f64, way: Point| [by * way.x, by * way.y, -by * (way.x * at.x + way.y * at.y)];
    let (a, b) = (row(x, way), row(y, across));
    let plane = Plane::new([a[0], a[1], a[2], b[0], b[1], b[2], 0.0, 0.0, 1.0]).ok_or(ScaleFault::NotACoin)?;
    let tilt = (1.0 - flat).clamp(-1.0, 1.0).acos();
    // To one side or the other; small tilts hide in the error of the rim.
    let hidden = (1.0 - off.min(0.5)).acos();
    let drift = (tilt.max(hidden).tan() / focal(picture)).min(2.0 * unknown_tilt(picture).max(tilt.tan() / focal(picture)));
    let outline: Vec<Point> = (0..24).map(|n| found.rim(TAU * f64::from(n) / 24.0)).collect();
    Ok(Scale {
        plane,
        spread: vec![Part { from: Cause::Scale, share: off.min(1.0) }, height(picture, 1.0 / x)],
        graduation: None,
        found: outline.clone(),
        object: outline,
        tilt: Some(tilt.to_degrees()),
        drift: Drift { from: at, along: Point::default(), share: drift },
    })
}

/// Rays from the middle, and samples on each.
const RAYS: usize = 90;
const SAMPLES: usize = 49;
/// How far from the marked rim is looked, as a share of the radius.
const REACH: f64 = 0.08;

/// The ellipse where the picture changes most near the marked one; none when there is no clear rim, or it lies elsewhere.
fn on_edge(picture: &Raster, marked: &Ellipse) -> Option<Ellipse> {
    let rays: Vec<(f64, Vec<f64>)> = (0..RAYS)
        .map(|n| {
            let angle = TAU * n as f64 / RAYS as f64;
            let colours: Vec<[f32; 3]> = (0..SAMPLES)
                .map(|k| picture.colour(marked.part(angle, 1.0 + REACH * (2.0 * k as f64 / (SAMPLES - 1) as f64 - 1.0))))
                .collect();
            let rise = (0..SAMPLES)
                .map(|k| {
                    if k < 2 || k + 2 >= SAMPLES {
                        return 0.0;
                    }
                    let change = |channel: usize| {
                        colours[k + 1][channel] + colours[k + 2][channel] - colours[k - 1][channel] - colours[k - 2][channel]
                    };
                    f64::from((0..3).map(|channel| change(channel).powi(2)).sum::<f32>().sqrt())
                })
                .collect();
            (angle, rise)
        })
        .collect();
    let mut found: Vec<Point> = Vec::new();
    for (angle, rise) in &rays {
        let top = (1..SAMPLES - 1).fold(1, |top, k| if rise[k] > rise[top] { k } else { top });
        if rise[top] > 25.0 {
            let k = top as f64 + summit(rise[top - 1], rise[top], rise[top + 1]);
            found.push(marked.part(*angle, 1.0 + REACH * (2.0 * k / (SAMPLES - 1) as f64 - 1.0)));
        }
    }
    if found.len() * 10 < RAYS * 6 {
        return None;
    }
    let mut weights = vec![1.0; found.len()];
    let mut edge = *marked;
    for _ in 0..6 {
        let rows: Vec<(Point, f64)> = found.iter().copied().zip(weights.iter().copied()).collect();
        edge = ellipse(&rows)?;
        let off: Vec<f64> = found.iter().map(|place| edge.radius(*place) - 1.0).collect();
        let mut sizes: Vec<f64> = off.iter().map(|off| off.abs()).collect();
        let reach = (6.0 * median(&mut sizes)).max(0.004);
        weights = off.iter().map(|off| biweight(*off, reach)).collect();
    }
    let near = (0..8).all(|n| {
        let angle = TAU * f64::from(n) / 8.0;
        (marked.radius(edge.rim(angle)) - 1.0).abs() < 0.6 * REACH
    });
    let agree = found.iter().filter(|place| (edge.radius(**place) - 1.0).abs() < 0.008).count();
    (near && agree * 2 > RAYS).then_some(edge)
}
