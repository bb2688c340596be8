//! The tailored jacket: where it is measured with a tape, top to hem and then the sleeve, and how that is drawn.

use crate::measure::PointOfMeasure;
use crate::specimen::{JacketMeasure, JacketPoint, Picture};

const TOLERANCE: &str = "common practice, from memory";
const GUESSED_TOLERANCE: &str = "judgement";
const LAY: &str = "common practice, from memory";

/// Points of measure of a jacket that is buttoned and lies on its back. Body measures of the same names are another thing: ISO 8559-1 says
/// where they lie.
///
/// # Source
/// No size chart or manual was read for these: places and tolerances are common practice from memory, two tolerances judgement. Who
/// doubles what is common practice: always say "flat, doubled" beside a girth.
pub(super) static POINTS: [PointOfMeasure; 8] = [
    PointOfMeasure {
        key: "chest",
        name: "Chest",
        lay: "Button up, lay on its back, sleeves out. Straight across from side to side, 2.5 cm (1 in) below the armholes. Smooth the \
              folds out; do not pull.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "waist",
        name: "Waist",
        lay: "Buttoned and flat. Straight across from side to side at the button that you close.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "hem",
        name: "Hem",
        lay: "Buttoned and flat, vents closed. Straight across from side to side along the hem.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "shoulders",
        name: "Shoulders",
        lay: "Lay the back upwards and flat. Straight across from one sleeve seam to the other, where they meet the shoulder seams.",
        doubled: false,
        tolerance_mm: 6.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "back-length",
        name: "Back length",
        lay: "Back upwards. Down the middle, from the seam below the collar to the edge of the hem. Say so if you measure from under the \
              collar or with it.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "sleeve",
        name: "Sleeve",
        lay: "Sleeve flat, its fold outwards. Along that edge from the top of the sleeve seam at the shoulder to the end of the sleeve.",
        doubled: false,
        tolerance_mm: 6.0,
        tolerance_from: TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "biceps",
        name: "Upper sleeve",
        lay: "Sleeve flat. Straight across, square to its fold, 2.5 cm (1 in) below the armhole.",
        doubled: true,
        tolerance_mm: 6.0,
        tolerance_from: GUESSED_TOLERANCE,
        lay_from: LAY,
    },
    PointOfMeasure {
        key: "cuff",
        name: "Sleeve opening",
        lay: "Sleeve flat, its buttons closed. Along the end of the sleeve, from fold to fold.",
        doubled: true,
        tolerance_mm: 6.0,
        tolerance_from: GUESSED_TOLERANCE,
        lay_from: LAY,
    },
];

/// The same by their keys, and where the tape lies.
pub(super) static DRAWN: [(&str, Picture); 8] = [
    ("chest", Picture::JacketMeasure(JacketMeasure { point: JacketPoint::Chest })),
    ("waist", Picture::JacketMeasure(JacketMeasure { point: JacketPoint::Waist })),
    ("hem", Picture::JacketMeasure(JacketMeasure { point: JacketPoint::Hem })),
    ("shoulders", Picture::JacketMeasure(JacketMeasure { point: JacketPoint::Shoulders })),
    ("back-length", Picture::JacketMeasure(JacketMeasure { point: JacketPoint::BackLength })),
    ("sleeve", Picture::JacketMeasure(JacketMeasure { point: JacketPoint::Sleeve })),
    ("biceps", Picture::JacketMeasure(JacketMeasure { point: JacketPoint::Biceps })),
    ("cuff", Picture::JacketMeasure(JacketMeasure { point: JacketPoint::Cuff })),
];
