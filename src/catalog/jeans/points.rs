//! Jeans: where a pair is measured with a tape, top to hem, and how that is drawn.

use crate::measure::PointOfMeasure;
use crate::specimen::{Measure, Picture, Point};

const HANDBOOK_TOLERANCE: &str = "common practice, no source (handbook, section 9.1)";
const GUESSED_TOLERANCE: &str = "judgement";

/// Points of measure of jeans, top to hem. Body measures of the same names are another thing: ISO 8559-1 says where they lie.
///
/// # Source
/// Buyer manuals, a guide to measuring old jeans, and a fit article for the knee (35 cm below the crotch): handbook, section 9.1 and its
/// data; the rest from memory. Who doubles what is common practice: always say "flat, doubled" beside a girth.
pub(super) static POINTS: [PointOfMeasure; 9] = [
    PointOfMeasure {
        key: "waist",
        name: "Waist",
        lay: "Button up, lay flat, front and back edges of the band level. Straight across along the top edge. If the band curves, say so; the \
              tape walked round inside it is truer.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: HANDBOOK_TOLERANCE,
        lay_from: "buyer manuals; a guide to measuring old jeans",
    },
    PointOfMeasure {
        key: "hip",
        name: "Hip",
        lay: "Lay flat. Straight across, 8 cm (3 in) above the crotch, or at the place the size chart names; note which.",
        doubled: true,
        tolerance_mm: 10.0,
        tolerance_from: HANDBOOK_TOLERANCE,
        lay_from: "common practice, from memory",
    },
    PointOfMeasure {
        key: "front-rise",
        name: "Front rise",
        lay: "Lay the front flat. Along the seam from the crossing of the crotch seams to the top of the band.",
        doubled: false,
        tolerance_mm: 6.0,
        tolerance_from: GUESSED_TOLERANCE,
        lay_from: "buyer manuals; a guide to measuring old jeans",
    },
    PointOfMeasure {
        key: "back-rise",
        name: "Back rise",
        lay: "Lay the back flat. Along the seat seam from the crossing of the crotch seams to the top of the band.",
        doubled: false,
        tolerance_mm: 6.0,
        tolerance_from: GUESSED_TOLERANCE,
        lay_from: "common practice, from memory",
    },
    PointOfMeasure {
        key: "thigh",
        name: "Thigh",
        lay: "Lay one leg flat, inner seam smoothed. Straight across, 2.5 cm (1 in) below the crotch.",
        doubled: true,
        tolerance_mm: 7.0,
        tolerance_from: HANDBOOK_TOLERANCE,
        lay_from: "common practice, from memory",
    },
    PointOfMeasure {
        key: "knee",
        name: "Knee",
        lay: "Lay one leg flat. Straight across, 35 cm (14 in) below the crotch along the inner seam.",
        doubled: true,
        tolerance_mm: 7.0,
        tolerance_from: GUESSED_TOLERANCE,
        lay_from: "a fit article",
    },
    PointOfMeasure {
        key: "hem",
        name: "Leg opening",
        lay: "Lay the hem flat. Along its edge, from fold to fold.",
        doubled: true,
        tolerance_mm: 5.0,
        tolerance_from: HANDBOOK_TOLERANCE,
        lay_from: "common practice, from memory",
    },
    PointOfMeasure {
        key: "inseam",
        name: "Inseam",
        lay: "Lay one leg flat. Along the inner seam from the crossing of the crotch seams to the edge of the hem.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: HANDBOOK_TOLERANCE,
        lay_from: "common practice, from memory",
    },
    PointOfMeasure {
        key: "outseam",
        name: "Outseam",
        lay: "Lay one leg flat. Along the outer seam from the top of the band to the edge of the hem.",
        doubled: false,
        tolerance_mm: 10.0,
        tolerance_from: GUESSED_TOLERANCE,
        lay_from: "common practice, from memory",
    },
];

/// The same by their keys, and where the tape lies.
pub(super) static DRAWN: [(&str, Picture); 9] = [
    ("waist", Picture::Measure(Measure { point: Point::Waist })),
    ("hip", Picture::Measure(Measure { point: Point::Hip })),
    ("front-rise", Picture::Measure(Measure { point: Point::FrontRise })),
    ("back-rise", Picture::Measure(Measure { point: Point::BackRise })),
    ("thigh", Picture::Measure(Measure { point: Point::Thigh })),
    ("knee", Picture::Measure(Measure { point: Point::Knee })),
    ("hem", Picture::Measure(Measure { point: Point::Hem })),
    ("inseam", Picture::Measure(Measure { point: Point::Inseam })),
    ("outseam", Picture::Measure(Measure { point: Point::Outseam })),
];
