//! A card of the format ID-1 by its four corners.

use super::linear::{Normal, biweight, median, summit};
use super::object::{Drift, Scale, ScaleFault, focal, height, within};
use crate::{Cause, Part, Plane, Point, Raster};

/// Sides of a card, mm (ISO/IEC 7810, ID-1).
const LONG: f64 = 85.60;
const SHORT: f64 = 53.98;
/// Corners are rounded with a radius of 3.18 mm (ISO/IEC 7810); edges are looked at this far from them, mm.
const ROUND: f64 = 6.5;
/// A mark set by a finger, mm (standard deviation in either direction, judgement), and no better than in pixels.
const MARK_MM: f64 = 0.25;
const MARK_PX: f64 = 2.0;
/// A corner where two fitted edges meet, mm (judgement: a blurred or shadowed edge limits it).
const EDGE_MM: f64 = 0.08;
/// The scale from a card.
pub(super) fn scale(picture: &Raster, corners: [Point; 4]) -> Result<Scale, ScaleFault> {
    if corners.iter().any(|corner| !corner.is_finite()) {
        return Err(ScaleFault::Marks);
    }
    // A corner may lie outside the picture where two sides inside it point.
    let middle = corners.iter().fold(Point::default(), |sum, corner| sum.stepped(*corner, 0.25));
    if !within(picture, middle) {
        return Err(ScaleFault::Marks);
    }
    let round = in_order(corners, middle);
    let sides: Vec<f64> = (0..4).map(|n| round[n].distance(round[(n + 1) % 4])).collect();
    if sides.iter().any(|side| *side < 8.0) {
        return Err(ScaleFault::Marks);
    }
    if !is_convex(&round) {
        return Err(ScaleFault::NotACard);
    }
    let marked = upright(picture, round).ok_or(ScaleFault::NotACard)?;
    let plane = Plane::through(marked, places()).ok_or(ScaleFault::NotACard)?;
    let px_mm = marked[0].distance(marked[1]) / LONG;
    let taps = MARK_MM.max(MARK_PX / px_mm);
    let refined =
        edges(picture, &plane, marked, 4.0 * taps).and_then(|corners| Some((corners, Plane::through(corners, places())?)));
    let (corners, plane, corner_mm) = match refined {
        Some((corners, plane)) => (corners, plane, EDGE_MM.max(0.5 / px_mm)),
        None => (marked, plane, taps),
    };
    let tilt = tilt(picture, &plane);
    // Two corners at each end of a side of which two are averaged; the change of scale from side to opposite side.
    let share = corner_mm / LONG;
    let drift = corner_mm * std::f64::consts::SQRT_2 / LONG / (SHORT * px_mm);
    Ok(Scale {
        plane,
        spread: vec![Part { from: Cause::Scale, share }, height(picture, px_mm)],
        graduation: None,
        found: corners.to_vec(),
        object: corners.to_vec(),
        tilt: Some(tilt),
        drift: Drift { from: middle, along: Point::default(), share: drift },
    })
}

/// The corners on the cloth in the order of `upright`.
fn places() -> [Point; 4] {
    [(0.0, 0.0), (LONG, 0.0), (LONG, SHORT), (0.0, SHORT)].map(|(x, y)| Point { x, y })
}

/// The corners going round clockwise as seen.
fn in_order(mut corners: [Point; 4], middle: Point) -> [Point; 4] {
    let angle = |corner: &Point| (corner.y - middle.y).atan2(corner.x - middle.x);
    corners.sort_by(|one, other| angle(one).total_cmp(&angle(other)));
    corners
}

fn is_convex(corners: &[Point; 4]) -> bool {
    (0..4).all(|n| {
        let (one, other) = (corners[n].way_to(corners[(n + 1) % 4]), corners[(n + 1) % 4].way_to(corners[(n + 2) % 4]));
        let turn = one.x * other.y - one.y * other.x;
        turn > 0.05 * one.x.hypot(one.y) * other.x.hypot(other.y)
    })
}

/// Turned so that the first side is a long one: of both ways the one that a camera can see; none when neither is.
fn upright(picture: &Raster, corners: [Point; 4]) -> Option<[Point; 4]> {
    let [p, q, r, s] = corners;
    [[p, q, r, s], [q, r, s, p]]
        .into_iter()
        .filter_map(|corners| Some((oddness(picture, &Plane::through(corners, places())?), corners)))
        .filter(|(odd, _)| *odd < 0.25)
        .min_by(|one, other| one.0.total_cmp(&other.0))
        .map(|(_, corners)| corners)
}

/// How far the picture of a square millimetre is from one that a camera with its axis through the middle of the picture sees: sides of unlike
/// length, or not at right angles. The best among plausible focal lengths, from a wide lens to a small cut-out of a picture.
fn oddness(picture: &Raster, plane: &Plane) -> f64 {
    let h = plane.towards_px();
    let (cx, cy) = (picture.width() as f64 / 2.0, picture.height() as f64 / 2.0);
    [0.6, 0.8, 1.0, 1.4, 3.0]
        .map(|times| {
            let focal = focal(picture) * times;
            let ray = |n: usize| [(h[n] - cx * h[6 + n]) / focal, (h[3 + n] - cy * h[6 + n]) / focal, h[6 + n]];
            let (x, y) = (ray(0), ray(1));
            let dot = |a: &[f64; 3], b: &[f64; 3]| a.iter().zip(b).map(|(a, b)| a * b).sum::<f64>();
            let (xx, yy, xy) = (dot(&x, &x), dot(&y, &y), dot(&x, &y));
            (0.5 * (xx / yy).ln()).abs() + (xy / (xx * yy).sqrt()).abs()
        })
        .into_iter()
        .fold(f64::INFINITY, f64::min)
}

/// Degrees between the camera's axis and the upright on the card.
fn tilt(picture: &Raster, plane: &Plane) -> f64 {
    let h = plane.towards_mm();
    let (cx, cy) = (picture.width() as f64 / 2.0, picture.height() as f64 / 2.0);
    let one = h[8] + h[6] * cx + h[7] * cy;
    (h[6].hypot(h[7]) * focal(picture) / one).abs().atan().to_degrees()
}

/// The corners where straight lines fitted to the four edges meet; none when an edge is not clear, or a corner would go further than `reach` mm.
fn edges(picture: &Raster, plane: &Plane, marked: [Point; 4], reach: f64) -> Option<[Point; 4]> {
    let corners = places();
    let mut lines = [[0.0; 3]; 4];
    for side in 0..4 {
        lines[side] = edge(picture, plane, corners[side], corners[(side + 1) % 4], reach)?;
    }
    let mut found = marked;
    for (n, corner) in found.iter_mut().enumerate() {
        let (one, other) = (lines[(n + 3) % 4], lines[n]);
        let turn = one[0] * other[1] - one[1] * other[0];
        let (x, y) = ((one[2] * other[1] - one[1] * other[2]) / turn, (one[0] * other[2] - one[2] * other[0]) / turn);
        let meets = plane.in_picture(Point { x, y });
        let far = Point { x, y }.distance(corners[n]);
        if far.is_nan() || far >= reach || !meets.is_finite() {
            return None;
        }
        *corner = meets;
    }
    Some(found)
}

/// Places along an edge that are looked at.
const PLACES: usize = 60;
/// Samples across it on each side.
const ACROSS: usize = 24;

/// The line `a x + b y = c` (mm on the cloth) of the card's edge near the one marked.
fn edge(picture: &Raster, plane: &Plane, from: Point, to: Point, reach: f64) -> Option<[f64; 3]> {
    let length = from.distance(to);
    let along = Point { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
    let out = Point { x: along.y, y: -along.x };
    let step = reach / ACROSS as f64;
    let at = |t: f64, off: f64| plane.in_picture(from.stepped(along, t).stepped(out, off));
    let inside =
        |at: Point| at.x >= 0.0 && at.y >= 0.0 && at.x <= picture.width() as f64 - 1.0 && at.y <= picture.height() as f64 - 1.0;
    let mut profiles = Vec::new();
    for n in 0..PLACES {
        let t = ROUND + (length - 2.0 * ROUND) * (n as f64 + 0.5) / PLACES as f64;
        if !inside(at(t, reach)) || !inside(at(t, -reach)) {
            continue;
        }
        let colours: Vec<[f32; 3]> = (0..=2 * ACROSS).map(|k| picture.colour(at(t, (k as f64 - ACROSS as f64) * step))).collect();
        profiles.push((t, colours));
    }
    if profiles.len() < PLACES / 4 {
        return None;
    }
    // The step from card to cloth in the colour in which both differ on the whole.
    let mut difference = [0.0f32; 3];
    for (_, colours) in &profiles {
        for (channel, sum) in difference.iter_mut().enumerate() {
            for k in 0..ACROSS / 2 {
                *sum += colours[2 * ACROSS - k][channel] - colours[k][channel];
            }
        }
    }
    let size = difference.iter().map(|part| part * part).sum::<f32>().sqrt();
    if size.is_nan() || size <= 0.0 {
        return None;
    }
    let steps: Vec<(f64, Vec<f64>)> = profiles
        .iter()
        .map(|(t, colours)| {
            let value: Vec<f64> = colours
                .iter()
                .map(|colour| f64::from(colour.iter().zip(&difference).map(|(c, d)| c * d / size).sum::<f32>()))
                .collect();
            let rise: Vec<f64> =
                (0..value.len())
                    .map(|k| {
                        if k < 2 || k + 2 >= value.len() {
                            0.0
                        } else {
                            value[k + 1] + value[k + 2] - value[k - 1] - value[k - 2]
                        }
                    })
                    .collect();
            (*t, rise)
        })
        .collect();
    // Of every straight line in reach the one on which the picture changes most; then each place's own summit near it.
    let mut best = (f64::MIN, 0.0, 0.0);
    let most = ACROSS as isize - 3;
    for start in -most..=most {
        for end in -most..=most {
            let sum: f64 = steps
                .iter()
                .map(|(t, rise)| {
                    let off = start as f64 + (end - start) as f64 * t / length;
                    rise[(off.round() as isize + ACROSS as isize).clamp(0, 2 * ACROSS as isize) as usize].min(40.0)
                })
                .sum();
            if sum > best.0 {
                best = (sum, start as f64, end as f64);
            }
        }
    }
    let mut found: Vec<(f64, f64)> = Vec::new();
    for (t, rise) in &steps {
        let near = (best.1 + (best.2 - best.1) * t / length).round() as isize + ACROSS as isize;
        let around = (near - 3).max(1) as usize..(near + 4).clamp(1, 2 * ACROSS as isize) as usize;
        let Some(top) = around.max_by(|one, other| rise[*one].total_cmp(&rise[*other])) else { continue };
        if rise[top] > 8.0 {
            found.push((*t, (top as f64 - ACROSS as f64 + summit(rise[top - 1], rise[top], rise[top + 1])) * step));
        }
    }
    if found.len() < PLACES / 4 || found.len() * 10 < profiles.len() * 6 {
        return None;
    }
    let (mut level, mut slope) = (best.1 * step, (best.2 - best.1) * step / length);
    let mut scatter = 0.0;
    for _ in 0..4 {
        let mut off: Vec<f64> = found.iter().map(|(t, value)| (value - level - slope * t).abs()).collect();
        scatter = 1.4826 * median(&mut off);
        let mut normal = Normal::<2>::new();
        for (t, value) in &found {
            normal.row([1.0, *t], *value, biweight(value - level - slope * t, 4.0 * scatter.max(0.02)));
        }
        [level, slope] = normal.solved()?.0;
    }
    if scatter.is_nan() || scatter >= 0.15 {
        return None;
    }
    let ends = [from.stepped(out, level), to.stepped(out, level + slope * length)];
    let (a, b) = (ends[0].y - ends[1].y, ends[1].x - ends[0].x);
    Some([a, b, a * ends[0].x + b * ends[0].y])
}
