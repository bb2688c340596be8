//! T-shirts, the stitching: evenness, flatness, loose ends.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{HemState, KnitHem, Picture, Pucker, Topstitch};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static STITCH_EVEN: Check = Check {
    key: "stitch-even",
    name: "Rows and joins",
    question: "How even are the rows, and how neat are their joins?",
    how: "Follow the double row at the hem all round, then the one at the sleeve. Find the place where each begins and \
        ends.",
    meaning: "Rows run round without a corner, so they meet themselves: that join shows the sewer’s care. A row hidden \
        behind the side seam is neat. Thick thread shows faults more plainly.",
    levels: &[
        Level {
            key: "skips",
            name: "With skips",
            line: "A stitch missing, or a thread broken.",
            spans: &[],
            drawn: Some(Picture::Knit(&Picture::Topstitch(Topstitch {
                stitches_per_inch: 11.0,
                gap_mm: 5.0,
                skips: 3,
                ..Topstitch::CLEAN
            }))),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "Lengths differ plainly, or rows wander.",
            spans: &[],
            drawn: Some(Picture::Knit(&Picture::Topstitch(Topstitch {
                stitches_per_inch: 11.0,
                gap_mm: 5.0,
                unevenness: 0.5,
                wander_mm: 1.2,
                ..Topstitch::CLEAN
            }))),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Even rows; the join shows.",
            spans: &[],
            drawn: Some(Picture::Knit(&Picture::Topstitch(Topstitch {
                stitches_per_inch: 11.0,
                gap_mm: 5.0,
                restarts: 1,
                bunching: 0.4,
                ..Topstitch::CLEAN
            }))),
        },
        Level {
            key: "hidden",
            name: "Even, joins overlapped and hidden",
            line: "You have to look for the join.",
            spans: &[],
            drawn: Some(Picture::Knit(&Picture::Topstitch(Topstitch {
                stitches_per_inch: 11.0,
                gap_mm: 5.0,
                restarts: 0,
                ..Topstitch::CLEAN
            }))),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 8/34/44/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.37, -0.48, 2.59] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::ISO_4915],
};

pub(in crate::catalog) static PUCKER: Check = Check {
    key: "pucker",
    name: "Seam pucker",
    question: "How flat do the seams lie in light from the side?",
    how: "Lay it flat and let light fall along shoulder, sleeve and side seam. Look for gathers and for waves. Stretch \
        nothing.",
    meaning: "Knitted cloth is easily pushed or pulled under the foot of the machine, and it shows as gathers or waves. \
        Pressing hides some of it until the first wash.",
    levels: &[
        Level {
            key: "gathered",
            name: "Gathered",
            line: "The seam is drawn up and shorter than the cloth.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.5 }],
            drawn: Some(Picture::Knit(&Picture::Pucker(Pucker { height_mm: 2.4, length_mm: 8.5 }))),
        },
        Level {
            key: "plain",
            name: "Rippled at arm’s length",
            line: "Ripples you see before you look for them.",
            spans: &[Span { low: 2.5, high: 3.5 }],
            drawn: Some(Picture::Knit(&Picture::Pucker(Pucker { height_mm: 1.3, length_mm: 8.5 }))),
        },
        Level {
            key: "faint",
            name: "Faintly rippled",
            line: "Only in slanting light.",
            spans: &[Span { low: 3.5, high: 4.5 }],
            drawn: Some(Picture::Knit(&Picture::Pucker(Pucker { height_mm: 0.45, length_mm: 8.5 }))),
        },
        Level {
            key: "flat",
            name: "Flat",
            line: "No ripples.",
            spans: &[Span { low: 4.5, high: f64::INFINITY }],
            drawn: Some(Picture::Knit(&Picture::Pucker(Pucker { height_mm: 0.0, length_mm: 8.5 }))),
        },
    ],
    seconds: 5,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 2, shares 9/30/42/19 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.6, thresholds: &[-4.28, -0.89, 2.8] }),
    instruments: &[&measure::SEAM_SMOOTHNESS],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::SEAM_SMOOTHNESS],
};

pub(in crate::catalog) static THREAD_ENDS: Check = Check {
    key: "thread-ends",
    name: "Loose thread",
    question: "How many loose thread ends are there on the whole T-shirt?",
    how: "Count ends longer than 3 mm (⅛ in): at both hems, at the neck, at the labels, inside the side seams.",
    meaning: "A weak sign either way: ends are cheap to trim, and a clean shirt may only be well trimmed. They speak for the \
        last hands in the factory, not for the seams.",
    levels: &[
        Level {
            key: "over-8",
            name: "More than 8",
            line: "Ends wherever you look.",
            spans: &[Span { low: 8.5, high: f64::INFINITY }],
            drawn: Some(Picture::KnitHem(KnitHem { state: HemState::Flat, tails: 11 })),
        },
        Level {
            key: "4-to-8",
            name: "4 to 8",
            line: "Some in view, more inside.",
            spans: &[Span { low: 3.5, high: 8.5 }],
            drawn: Some(Picture::KnitHem(KnitHem { state: HemState::Flat, tails: 6 })),
        },
        Level {
            key: "1-to-3",
            name: "1 to 3",
            line: "You have to search for them.",
            spans: &[Span { low: 0.5, high: 3.5 }],
            drawn: Some(Picture::KnitHem(KnitHem { state: HemState::Flat, tails: 2 })),
        },
        Level {
            key: "none",
            name: "None",
            line: "Clean, inside too.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 0.5 }],
            drawn: Some(Picture::KnitHem(KnitHem { state: HemState::Flat, tails: 0 })),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 1, shares 15/28/35/22 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.3, thresholds: &[-6.07, -1.03, 4.53] }),
    instruments: &[&measure::LOOSE_ENDS],
    asked_when: None,
    caution: Some("Do not pull thread ends: a hem can run out whole. Trim your own with scissors."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
