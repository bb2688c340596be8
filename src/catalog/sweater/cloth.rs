//! Sweaters, the cloth: how close it is, how even, how it stands rubbing, its gauge, its fibre.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Gauge, Loops, Picture, Pilling, Poked, Sweater};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static TIGHTNESS: Check = Check {
    key: "tightness",
    name: "How close it is knitted",
    question: "How close are the loops when a finger pushes from behind?",
    how: "Slip a hand in, away from ribs and seams. Push one fingertip gently from behind. Then hold one layer before the \
        light, and let it go: does it spring together?",
    meaning: "Loose knitting saves yarn, loses its shape and pills sooner. A fine close sweater can be thin, and openwork is meant: \
        judge the plain part. Fluff hides gaps, so hold it to the light.",
    levels: &[
        Level {
            key: "finger-passes",
            name: "The finger comes through",
            line: "Light pours in between the loops.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Poked(Poked::Through))),
        },
        Level {
            key: "loose",
            name: "Loose",
            line: "You see the finger, and many points of light.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Poked(Poked::Loose))),
        },
        Level {
            key: "close",
            name: "Close",
            line: "Little shows; here and there a gap.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Poked(Poked::Close))),
        },
        Level {
            key: "springy",
            name: "Close, even and springy",
            line: "Nothing shows, and it closes at once.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Poked(Poked::Springy))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 12/35/38/15 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.21, -0.14, 1.95] },
        "Close knitting takes more yarn, and yarn is the largest cost of a sweater.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Push with the flat of the fingertip: a nail can pull a loop."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static EVEN_KNIT: Check = Check {
    key: "even-knit",
    name: "Evenness of the loops",
    question: "How even are the loops over the whole piece?",
    how: "Look along the body at arm’s length for bars and bands. Then look close: are loops of one size, also beside seams \
        and ribs?",
    meaning: "Bars and thick places come from yarn or from a worn machine. A dropped loop runs further with wear. Uneven yarn can \
        be meant, as in tweed: then it is the same all over.",
    levels: &[
        Level {
            key: "dropped",
            name: "Bars or dropped loops",
            line: "A ladder, a hole or a plain bar.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Loops(Loops::Dropped))),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "Large and small loops beside each other.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Loops(Loops::Uneven))),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Alike, but for some beside the seams.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Loops(Loops::Even))),
        },
        Level {
            key: "even-edge",
            name: "Even up to the edges",
            line: "Alike everywhere.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Loops(Loops::EvenToEdge))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 3, shares 6/30/46/18 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Cloth, slope: 0.9, thresholds: &[-3.51, -0.81, 2.07] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static PILL_RUB: Check = Check {
    key: "pill-rub",
    name: "The face after rubbing",
    question: "What do twenty circles of rubbing leave on the face?",
    how: "Fold the body face to face near the hem. Rub it on itself with your palm, twenty small circles, lightly. Look along \
        the face against the light.",
    meaning: "Short soft fibres and slack twist come out as fuzz and then as beads, cashmere as well as acrylic: softness is no \
        proof of quality. A brushed face is fuzzy from the start: look for beads only.",
    levels: &[
        Level {
            key: "beads",
            name: "Beads",
            line: "Small balls that roll under the finger.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.5 }],
            drawn: Some(Picture::Knit(&Picture::Pilling(Pilling { grade: 2 }))),
        },
        Level {
            key: "fuzz",
            name: "Fuzz",
            line: "Fibres stand up all over the spot.",
            spans: &[Span { low: 2.5, high: 3.5 }],
            drawn: Some(Picture::Knit(&Picture::Pilling(Pilling { grade: 3 }))),
        },
        Level {
            key: "haze",
            name: "A slight haze",
            line: "Only against the light.",
            spans: &[Span { low: 3.5, high: 4.5 }],
            drawn: Some(Picture::Knit(&Picture::Pilling(Pilling { grade: 4 }))),
        },
        Level {
            key: "clear",
            name: "Clear",
            line: "No difference from the cloth beside it.",
            spans: &[Span { low: 4.5, high: f64::INFINITY }],
            drawn: Some(Picture::Knit(&Picture::Pilling(Pilling { grade: 5 }))),
        },
    ],
    seconds: 20,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    // Power 4, shares 18/36/32/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Finish, slope: 1.2, thresholds: &[-1.72, 0.19, 2.03] }),
    instruments: &[&measure::PILLING],
    asked_when: None,
    caution: Some("Ask before you rub goods that are not yours. Use a place inside."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static GAUGE: Check = Check {
    key: "gauge",
    name: "Fine or coarse",
    question: "How many loops stand side by side in an inch?",
    how: "Lay it flat without pulling. Lay a rule across the columns of loops and count them along 5 cm (2 in), then take \
        half for an inch.",
    meaning: "Fine or chunky is taste and season. Fine knitting takes the machine longer, coarse knitting takes more yarn. Neither \
        says how well it was done.",
    levels: &[
        Level {
            key: "under-5",
            name: "Under 5",
            line: "Chunky: each loop wider than 5 mm.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 5.0 }],
            drawn: Some(Picture::Sweater(Sweater::Gauge(Gauge { per_inch: 4.0 }))),
        },
        Level {
            key: "5-to-8",
            name: "5 to 8",
            line: "Loops seen at arm’s length.",
            spans: &[Span { low: 5.0, high: 8.0 }],
            drawn: Some(Picture::Sweater(Sweater::Gauge(Gauge { per_inch: 6.5 }))),
        },
        Level {
            key: "8-to-14",
            name: "8 to 14",
            line: "The usual sweater; loops seen close by.",
            spans: &[Span { low: 8.0, high: 14.0 }],
            drawn: Some(Picture::Sweater(Sweater::Gauge(Gauge { per_inch: 11.0 }))),
        },
        Level {
            key: "over-14",
            name: "Over 14",
            line: "Fine, worn like a shirt.",
            spans: &[Span { low: 14.0, high: f64::INFINITY }],
            drawn: Some(Picture::Sweater(Sweater::Gauge(Gauge { per_inch: 17.0 }))),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Coarse knitting takes more yarn, fine knitting more minutes of the machine."),
    instruments: &[&measure::KNIT_GAUGE],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static FIBRE: Check = Check {
    key: "fibre",
    name: "Fibre on the label",
    question: "Which fibre does the label name first?",
    how: "Look for the sewn-in label, in a side seam or at the neck. Where less than 80 in 100 are of one fibre, take it for a \
        blend.",
    meaning: "Fibre sets warmth, care and most of the cost. It is no grade of quality: fine fibre wears sooner, not later, and a good \
        acrylic can outlast a poor cashmere.",
    levels: &[
        Level { key: "acrylic", name: "Acrylic or polyester", line: "Light, warm, washes easily.", spans: &[], drawn: None },
        Level { key: "blend", name: "A blend", line: "No fibre reaches 80 in 100.", spans: &[], drawn: None },
        Level { key: "cotton-wool", name: "Cotton or wool", line: "No finer name on the label.", spans: &[], drawn: None },
        Level { key: "fine-wool", name: "Fine wool", line: "Merino, lambswool or extra fine.", spans: &[], drawn: None },
        Level {
            key: "cashmere",
            name: "Cashmere and the like",
            line: "Cashmere, alpaca, silk or yak, nearly pure.",
            spans: &[],
            drawn: None,
        },
    ],
    seconds: 5,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Yarn is the largest line; from acrylic to cashmere its price rises some twentyfold."),
    instruments: &[],
    asked_when: None,
    caution: Some("Never burn a thread to find the fibre."),
    sources: &[&sources::CFR_303, &sources::EU_1007],
};
