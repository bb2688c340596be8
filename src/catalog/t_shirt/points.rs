//! T-shirts: where one is measured with a tape, top to hem, and how that is drawn.

use crate::measure::PointOfMeasure;
use crate::specimen::{Picture, TopCut, TopFlat, TopPoint};

const TOLERANCE: &str = "judgement; knitted cloth is laid down less truly than woven";
const LAY: &str = "common practice, from memory";

/// Points of measure of T-shirts, top to hem. Always say "flat, doubled" beside a girth.
///
/// # Source
/// Common practice of buyers' measuring sheets, from memory: the handbook, section 9.1, has rows for jeans only.
pub(super) static POINTS: [PointOfMeasure; 7] = [
    PointOfMeasure {
        key: "neck",
        name: "Neck",
        lay: "Lay flat, front up. Straight across from seam to seam at the top of the shoulders; the rib does not \
              count.",
        doubled: false,
        tolerance_mm: 6.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "shoulders",
        name: "Shoulders",
        lay: "Lay the back up. Straight across, from the top of one armhole seam to the other.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "chest",
        name: "Chest",
        lay: "Lay flat, side seams or folds smoothed, nothing stretched. Straight across, 2.5 cm (1 in) below the \
              armholes.",
        doubled: true,
        tolerance_mm: 12.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "hem",
        name: "Hem",
        lay: "Lay flat. Straight across along the bottom.",
        doubled: true,
        tolerance_mm: 12.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "sleeve",
        name: "Sleeve",
        lay: "Lay one sleeve on its fold. From the armhole seam along the fold to its edge.",
        doubled: false,
        tolerance_mm: 6.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "cuff",
        name: "Sleeve opening",
        lay: "Lay one sleeve flat. Along its edge, fold to fold.",
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
        tolerance_mm: 12.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
];

/// The same by their keys, and where the tape lies.
pub(super) static DRAWN: [(&str, Picture); 7] = [
    ("neck", Picture::TopFlat(TopFlat { cut: TopCut::Tee, point: Some(TopPoint::Neck) })),
    ("shoulders", Picture::TopFlat(TopFlat { cut: TopCut::Tee, point: Some(TopPoint::Shoulders) })),
    ("chest", Picture::TopFlat(TopFlat { cut: TopCut::Tee, point: Some(TopPoint::Chest) })),
    ("hem", Picture::TopFlat(TopFlat { cut: TopCut::Tee, point: Some(TopPoint::Hem) })),
    ("sleeve", Picture::TopFlat(TopFlat { cut: TopCut::Tee, point: Some(TopPoint::Sleeve) })),
    ("cuff", Picture::TopFlat(TopFlat { cut: TopCut::Tee, point: Some(TopPoint::Cuff) })),
    ("length", Picture::TopFlat(TopFlat { cut: TopCut::Tee, point: Some(TopPoint::Length) })),
];
