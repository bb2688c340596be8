//! Two marks and the distance between them: all that is known is one length along one line.

use super::object::{Drift, Scale, ScaleFault, height, is_length, unknown_tilt, within};
use crate::{Cause, Part, Plane, Point, Raster};

/// Both marks together, mm: each is set to a quarter of a millimetre or so (standard deviations, judgement), and a graduation has a width.
const MARKS_MM: f64 = 0.42;
/// Below so many pixels two marks are one place.
const LEAST_PX: f64 = 4.0;

/// The scale from two marks.
pub(super) fn scale(picture: &Raster, from: Point, to: Point, mm: f64) -> Result<Scale, ScaleFault> {
    if !is_length(mm) {
        return Err(ScaleFault::Size);
    }
    let px = from.distance(to);
    if !within(picture, from) || !within(picture, to) || px < LEAST_PX {
        return Err(ScaleFault::Marks);
    }
    // X runs along the marks; the same scale everywhere and in every direction.
    let (x, y) = (from.way_to(to).x * mm / (px * px), from.way_to(to).y * mm / (px * px));
    let plane = Plane::new([x, y, -x * from.x - y * from.y, -y, x, y * from.x - x * from.y, 0.0, 0.0, 1.0]);
    Ok(Scale {
        plane: plane.ok_or(ScaleFault::Marks)?,
        // A finger's spread in pixels counts too where a millimetre is small.
        spread: vec![Part { from: Cause::Scale, share: (MARKS_MM / mm).max(2.0 / px).min(1.0) }, height(picture, px / mm)],
        graduation: None,
        found: vec![from, to],
        object: vec![from, to],
        tilt: None,
        drift: Drift {
            from: Point { x: (from.x + to.x) / 2.0, y: (from.y + to.y) / 2.0 },
            // Marks tell nothing of a tilt along them either.
            along: Point::default(),
            share: unknown_tilt(picture),
        },
    })
}
