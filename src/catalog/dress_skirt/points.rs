//! Dresses and skirts: where one is measured with a tape, top to hem, and how that is drawn.

use crate::measure::PointOfMeasure;
use crate::specimen::{Dress, DressFlat, DressPoint, Picture};

const TOLERANCE: &str = "judgement, as common for woven girths and lengths";
const LAY: &str = "common practice, from memory";

/// Points of measure of dresses and skirts, top to hem. A skirt has no shoulders and no bust.
///
/// # Source
/// Common practice of buyers' measuring sheets, from memory: the handbook, section 9.1, has rows for jeans only.
pub(super) static POINTS: [PointOfMeasure; 6] = [
    PointOfMeasure {
        key: "shoulders",
        name: "Shoulders",
        lay: "Lay the back up. Straight across, from the top of one armhole seam to the other. Leave it on a skirt.",
        doubled: false,
        tolerance_mm: 6.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "bust",
        name: "Bust",
        lay: "Close it and lay it flat. Straight across, 2.5 cm (1 in) below the armholes. Leave it on a skirt.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "waist",
        name: "Waist",
        lay: "Closed and flat. Along the waist seam, or along the top of a skirt; without either, across at the narrowest. Elastic at rest.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "hip",
        name: "Hip",
        lay: "Closed and flat, pleats shut. Straight across, 20 cm (8 in) below the waist.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "hem",
        name: "Hem",
        lay: "Lay flat, folds opened as far as they go. Along the edge, side to side.",
        doubled: true,
        tolerance_mm: 15.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "length",
        name: "Length",
        lay: "Lay flat. From the top of the shoulder beside the neck straight down to the hem; a skirt from the top of its waist, at the side.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
];

/// The same by their keys, and where the tape lies.
pub(super) static DRAWN: [(&str, Picture); 6] = [
    ("shoulders", Picture::Dress(Dress::Flat(DressFlat { skirt: false, point: Some(DressPoint::Shoulders) }))),
    ("bust", Picture::Dress(Dress::Flat(DressFlat { skirt: false, point: Some(DressPoint::Bust) }))),
    ("waist", Picture::Dress(Dress::Flat(DressFlat { skirt: false, point: Some(DressPoint::Waist) }))),
    ("hip", Picture::Dress(Dress::Flat(DressFlat { skirt: false, point: Some(DressPoint::Hip) }))),
    ("hem", Picture::Dress(Dress::Flat(DressFlat { skirt: false, point: Some(DressPoint::Hem) }))),
    ("length", Picture::Dress(Dress::Flat(DressFlat { skirt: false, point: Some(DressPoint::Length) }))),
];
