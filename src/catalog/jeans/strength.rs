//! Jeans, the places that tear first, and what holds them.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks, When};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Crotch, Picture, StressPoints, Tear};
use crate::trade::{Aspect, Stage};

use super::finish::DRY_WORK;

pub(in crate::catalog) static TACKS: Check = Check {
    key: "tacks",
    name: "Stress points",
    question: "How many of ten stress points are secured?",
    how: "Check ten places: two at the bottom of the fly, both ends of each front pocket, and one end of four belt loops. \
        Count those with a rivet or a dense little zigzag bar.",
    meaning: "Tears start at these places, and a tack or rivet spreads the pull. More beyond these ten is decoration. A tack \
        sewn beside its pocket end secures nothing, so do not count it.",
    levels: &[
        Level {
            key: "few",
            name: "0 to 3",
            line: "Most ends are held by plain stitching only.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 3.5 }],
            drawn: Some(Picture::StressPoints(StressPoints { secured: 2 })),
        },
        Level {
            key: "some",
            name: "4 to 6",
            line: "About half of them.",
            spans: &[Span { low: 3.5, high: 6.5 }],
            drawn: Some(Picture::StressPoints(StressPoints { secured: 5 })),
        },
        Level {
            key: "most",
            name: "7 to 8",
            line: "Two or three are missing.",
            spans: &[Span { low: 6.5, high: 8.5 }],
            drawn: Some(Picture::StressPoints(StressPoints { secured: 8 })),
        },
        Level {
            key: "all",
            name: "9 to 10",
            line: "Nearly every one.",
            spans: &[Span { low: 8.5, high: f64::INFINITY }],
            drawn: Some(Picture::StressPoints(StressPoints { secured: 10 })),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 7/25/40/28 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Strength, slope: 0.9, thresholds: &[-3.33, -1.06, 1.32] },
        "A tack takes seconds, a rivet a part and seconds more; leaving them out saves little each.",
    ),
    instruments: &[&measure::TACKS],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static CROTCH: Check = Check {
    key: "crotch",
    name: "Crossing at the crotch",
    question: "How well do the seams meet at the crotch?",
    how: "Inside out, spread the point where both inner leg seams, the seat seam and the front seam cross. Look for gaps, \
        pulled threads and the distance between the seam lines. Look for a dense zigzag bar (tack).",
    meaning: "Jeans often fail here first. Meeting seams share the pull. A step of a few millimetres can be wanted: some \
        makers offset thick seams so that the needle gets through. A gap or a pulled thread is never wanted.",
    levels: &[
        Level {
            key: "gap",
            name: "With a gap or pulled threads",
            line: "You see light, open stitches or strained thread.",
            spans: &[],
            drawn: Some(Picture::Crotch(Crotch { miss_mm: 6.0, gap: true, tack: false })),
        },
        Level {
            key: "off",
            name: "Off by more than 5 mm",
            line: "Seam lines miss each other plainly (over 3⁄16 in).",
            spans: &[],
            drawn: Some(Picture::Crotch(Crotch { miss_mm: 8.0, gap: false, tack: false })),
        },
        Level {
            key: "near",
            name: "Within 5 mm",
            line: "Close, closed and firm (within 3⁄16 in).",
            spans: &[],
            drawn: Some(Picture::Crotch(Crotch { miss_mm: 3.0, gap: false, tack: false })),
        },
        Level {
            key: "exact",
            name: "Exactly, and tacked",
            line: "One crossing point, with a zigzag bar or extra rows.",
            spans: &[],
            drawn: Some(Picture::Crotch(Crotch { miss_mm: 0.0, gap: false, tack: true })),
        },
    ],
    seconds: 6,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 4, shares 7/30/43/20 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Strength, slope: 1.2, thresholds: &[-2.77, -0.62, 1.58] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static REPAIRS: Check = Check {
    key: "repairs",
    name: "Holes, patches and darns",
    question: "How are the intended holes and repairs secured?",
    how: "Look at each hole, patch or darn from both sides. See whether yarns across it are still held at the ends, whether a \
        patch or stitching lies behind it, and whether its edges go on tearing.",
    meaning: "Holes made for looks are no fault; leaving them to run is. Stitching back and forth around the edge or cloth \
        behind stops the tear. A toe will find an open hole at the knee first.",
    levels: &[
        Level {
            key: "running",
            name: "Not at all",
            line: "Edges tear on; yarns hang by one end.",
            spans: &[],
            drawn: Some(Picture::Tear(Tear { sewn: 0.0, backed: false })),
        },
        Level {
            key: "weak",
            name: "In places",
            line: "Some stitching, but an edge is still free to run.",
            spans: &[],
            drawn: Some(Picture::Tear(Tear { sewn: 0.55, backed: false })),
        },
        Level {
            key: "backed",
            name: "With stitching or backing",
            line: "Cloth behind, or stitching all round each hole.",
            spans: &[],
            drawn: Some(Picture::Tear(Tear { sewn: 0.55, backed: true })),
        },
        Level {
            key: "worked",
            name: "With both, and flat",
            line: "Cloth behind and stitching all round; flat, nothing scratches.",
            spans: &[],
            drawn: Some(Picture::Tear(Tear { sewn: 1.0, backed: true })),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 17/38/32/13 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Strength, slope: 0.9, thresholds: &[-2.15, 0.28, 2.54] },
        "Backing and stitching holes by hand takes minutes; tearing alone takes seconds.",
    ),
    instruments: &[],
    asked_when: Some(When { check: &DRY_WORK, levels: &["torn"], share: 8 }),
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::WASH_COSTS],
};
