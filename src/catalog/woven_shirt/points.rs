//! Shirts: where one is measured with a tape, top to hem, and how that is drawn.

use crate::measure::PointOfMeasure;
use crate::specimen::{Picture, TopCut, TopFlat, TopPoint};

const TOLERANCE: &str = "common practice, from memory; buyers differ";
const LAY: &str = "common practice, from memory";

/// Points of measure of shirts, top to hem. Always say "flat, doubled" beside a girth.
///
/// # Source
/// Common practice of buyers' measuring sheets, from memory: the handbook, section 9.1, has rows for jeans only.
pub(super) static POINTS: [PointOfMeasure; 8] = [
    PointOfMeasure {
        key: "neck",
        name: "Collar",
        lay: "Open the collar and lay it flat, inside up. Along the band, from the middle of the button to the far end \
              of the buttonhole.",
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
        tolerance_mm: 6.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "chest",
        name: "Chest",
        lay: "Button up, lay flat, side seams smoothed. Straight across, 2.5 cm (1 in) below the armholes.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "waist",
        name: "Waist",
        lay: "Lay flat. Straight across at the narrowest place, some 20 cm (8 in) below the armholes.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "hem",
        name: "Hem",
        lay: "Lay flat. Straight across between the lower ends of the side seams.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "sleeve",
        name: "Sleeve",
        lay: "Lay one sleeve on its fold. From the armhole seam along the fold to the edge of the cuff. Some charts \
              begin at the middle of the back: note which.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "cuff",
        name: "Cuff",
        lay: "Close the cuff on its outer button, lay flat. Along its edge, fold to fold.",
        doubled: true,
        tolerance_mm: 5.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "length",
        name: "Back length",
        lay: "Lay the back up. From the collar seam down the middle to the lowest edge of the tail.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
];

/// The same by their keys, and where the tape lies.
pub(super) static DRAWN: [(&str, Picture); 8] = [
    ("neck", Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: Some(TopPoint::Neck) })),
    ("shoulders", Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: Some(TopPoint::Shoulders) })),
    ("chest", Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: Some(TopPoint::Chest) })),
    ("waist", Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: Some(TopPoint::Waist) })),
    ("hem", Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: Some(TopPoint::Hem) })),
    ("sleeve", Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: Some(TopPoint::Sleeve) })),
    ("cuff", Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: Some(TopPoint::Cuff) })),
    ("length", Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: Some(TopPoint::Length) })),
];
