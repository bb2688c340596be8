//! Outerwear: where one is measured with a tape, and how that is drawn.

use crate::measure::PointOfMeasure;
use crate::specimen::{Outer, OuterCut, OuterFlat, OuterPoint, Picture};

const TOLERANCE: &str = "judgement; a filled piece is laid down less truly than a flat one";
const LAY: &str = "common practice, from memory";

/// Points of measure of jackets and coats for outside, top to hem.
///
/// # Source
/// Common practice of buyers' measuring sheets, from memory: the handbook, section 9.1, has rows for jeans only. Tolerances are judgement.
pub(super) static POINTS: [PointOfMeasure; 6] = [
    PointOfMeasure {
        key: "shoulders",
        name: "Shoulders",
        lay: "Lay the back up. Straight across, from the top of one armhole seam to the other. A raglan has none: leave it.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "chest",
        name: "Chest",
        lay: "Close it, press the air out, pat it flat. Straight across, 2.5 cm (1 in) below the armholes.",
        doubled: true,
        tolerance_mm: 15.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "hem",
        name: "Hem",
        lay: "Closed and flat, cords slack. Straight across along the bottom.",
        doubled: true,
        tolerance_mm: 15.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "sleeve",
        name: "Sleeve",
        lay: "Lay one sleeve on its fold. From the armhole seam, on a raglan from the collar seam, along the fold to the end.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "cuff",
        name: "Sleeve opening",
        lay: "Lay one sleeve flat, tab open, elastic at rest. Along its end, fold to fold.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "length",
        name: "Back length",
        lay: "Lay the back up. From the seam of collar or hood straight down the middle to the hem.",
        doubled: false,
        tolerance_mm: 15.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
];

/// The same by their keys, and where the tape lies.
pub(super) static DRAWN: [(&str, Picture); 6] = [
    ("shoulders", Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Padded, point: Some(OuterPoint::Shoulders) }))),
    ("chest", Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Padded, point: Some(OuterPoint::Chest) }))),
    ("hem", Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Padded, point: Some(OuterPoint::Hem) }))),
    ("sleeve", Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Padded, point: Some(OuterPoint::Sleeve) }))),
    ("cuff", Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Padded, point: Some(OuterPoint::Cuff) }))),
    ("length", Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Padded, point: Some(OuterPoint::Length) }))),
];
