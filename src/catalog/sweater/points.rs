//! Sweaters: where one is measured with a tape, top to hem, and how that is drawn.

use crate::measure::PointOfMeasure;
use crate::specimen::{Picture, TopCut, TopFlat, TopPoint};

const TOLERANCE: &str = "judgement; knitted cloth is laid down less truly than woven";
const LAY: &str = "common practice, from memory";

/// Points of measure of sweaters, top to hem.
///
/// # Source
/// Common practice of buyers' measuring sheets, from memory: the handbook, section 9.1, has rows for jeans only. Tolerances are wider than
/// those of T-shirts: the coarser the loops, the more a hand moves them.
pub(super) static POINTS: [PointOfMeasure; 6] = [
    PointOfMeasure {
        key: "shoulders",
        name: "Shoulders",
        lay: "Lay the back up. Straight across, from the top of one armhole seam to the other. A raglan has none: leave it.",
        doubled: false,
        tolerance_mm: 12.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "chest",
        name: "Chest",
        lay: "Pat it flat, buttons closed, nothing stretched. Straight across, 2.5 cm (1 in) below the armholes.",
        doubled: true,
        tolerance_mm: 15.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "hem",
        name: "Hem",
        lay: "Lay flat, the rib at rest. Straight across along the bottom.",
        doubled: true,
        tolerance_mm: 15.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "sleeve",
        name: "Sleeve",
        lay: "Lay one sleeve on its fold. From the armhole seam, on a raglan from the neck, along the fold to the end of the cuff.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "cuff",
        name: "Cuff",
        lay: "Lay one cuff flat, the rib at rest. Along its edge, fold to fold.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "length",
        name: "Length",
        lay: "Lay flat, front up. From the top of the shoulder beside the neck straight down to the hem.",
        doubled: false,
        tolerance_mm: 15.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
];

/// The same by their keys, and where the tape lies.
pub(super) static DRAWN: [(&str, Picture); 6] = [
    ("shoulders", Picture::TopFlat(TopFlat { cut: TopCut::Sweater, point: Some(TopPoint::Shoulders) })),
    ("chest", Picture::TopFlat(TopFlat { cut: TopCut::Sweater, point: Some(TopPoint::Chest) })),
    ("hem", Picture::TopFlat(TopFlat { cut: TopCut::Sweater, point: Some(TopPoint::Hem) })),
    ("sleeve", Picture::TopFlat(TopFlat { cut: TopCut::Sweater, point: Some(TopPoint::Sleeve) })),
    ("cuff", Picture::TopFlat(TopFlat { cut: TopCut::Sweater, point: Some(TopPoint::Cuff) })),
    ("length", Picture::TopFlat(TopFlat { cut: TopCut::Sweater, point: Some(TopPoint::Length) })),
];
