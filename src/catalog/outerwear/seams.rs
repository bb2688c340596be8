//! Outerwear, how one is sewn: seams inside, quilting, corners that are held, thread ends.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Dress, EdgeInside, Outer, Picture, PocketTacks, Quilt, QuiltTails, SealedSeam};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static SEAMS: Check = Check {
    key: "seams",
    name: "Seams inside",
    question: "How are the seams inside finished?",
    how: "Open it and follow side and armhole seam inside. Fully lined: judge the seams of the lining, and reach through a \
        pocket for the others. On a rain jacket look for tape over every seam.",
    meaning: "Seams take the pull of every day and let rain in through their holes: 8 to 10 stitches an inch is usual, fewer \
        holes keep drier. Tape belongs on rain cloth only; on wool, a binding is as good.",
    levels: &[
        Level {
            key: "raw",
            name: "Raw, or wrapped loosely once",
            line: "Threads come out beside a single row.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::EdgeInside(EdgeInside::LooseWrap))),
        },
        Level {
            key: "topstitched",
            name: "Wrapped and stitched down",
            line: "Dense wrapping, a second row through the face.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Seam(SealedSeam::Topstitched))),
        },
        Level {
            key: "bound",
            name: "Bound, or folded in (felled)",
            line: "No cut edge to see.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::EdgeInside(EdgeInside::Bound))),
        },
        Level {
            key: "taped",
            name: "Taped or bound throughout",
            line: "Every seam, and no line of needle holes.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Seam(SealedSeam::Taped))),
        },
    ],
    seconds: 12,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 5, shares 15/42/31/12 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.6, thresholds: &[-1.69, 0.29, 1.91] },
        "Binding or taping takes twice to three times the minutes of wrapping.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you turn out goods that are not yours, and feel for pins first."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static QUILT: Check = Check {
    key: "quilt",
    name: "Quilting or rows of stitching",
    question: "Are rows of stitching even, and do they meet at seams?",
    how: "Look along three rows at arm’s length. Then follow two of them across the side seam or the zip. Not quilted: take \
        the rows along front edge and pockets.",
    meaning: "Rows show how far work was under control. A row that misses its neighbour by a thread’s width is nothing; a skip \
        opens further. Glued or welded chambers have no thread: judge whether their lines meet.",
    levels: &[
        Level {
            key: "skips",
            name: "Stitches left out",
            line: "Loose threads lie over the cloth.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Quilt(Quilt::Skips))),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "Rows wander and miss each other.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Quilt(Quilt::Uneven))),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Straight; at seams a little off.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Quilt(Quilt::Even))),
        },
        Level {
            key: "even-meets",
            name: "Even, and lines meet",
            line: "Each runs on across seam and zip.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Quilt(Quilt::Meets))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 8/33/43/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.37, -0.54, 2.38] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static TACKS: Check = Check {
    key: "tacks",
    name: "Corners of pockets, vents, tabs",
    question: "Are corners of pockets, vents and tabs held?",
    how: "Look at both ends of each pocket, the top of a vent, and the foot of tabs. Search for a short dense bar of thread, a \
        rivet, or a patch felt behind.",
    meaning: "Tears start there. A bar tack costs seconds, so its lack is a saving. Welded pockets of thin shells have a glued \
        patch instead: that counts as held.",
    levels: &[
        Level {
            key: "none",
            name: "None",
            line: "The row just ends at the corner.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Tacks(PocketTacks { tacks: 0, backed: false }))),
        },
        Level {
            key: "some",
            name: "Some",
            line: "Main pockets only.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Tacks(PocketTacks { tacks: 2, backed: false }))),
        },
        Level {
            key: "most",
            name: "Most",
            line: "You have to search for one without.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Tacks(PocketTacks { tacks: 3, backed: false }))),
        },
        Level {
            key: "all-backed",
            name: "All, with a patch behind",
            line: "Each corner, and you feel a second layer.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Tacks(PocketTacks { tacks: 4, backed: true }))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 12/36/38/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Strength, slope: 0.9, thresholds: &[-2.65, -0.11, 2.44] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Feel a pocket from outside before you reach in."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static THREAD_ENDS: Check = Check {
    key: "thread-ends",
    name: "Thread ends left long",
    question: "How many thread ends over 3 mm (⅛ in) hang out?",
    how: "Look along front edges, quilting, pockets, cuffs and hem. Count ends longer than 3 mm (⅛ in). Pull none.",
    meaning: "Trimming is the last step and the first to be skipped. It says little of the rest, and anyone can cut ends off \
        later: take scissors, since a pulled end can open a row.",
    levels: &[
        Level {
            key: "over-8",
            name: "Over 8",
            line: "At nearly every row.",
            spans: &[Span { low: 8.5, high: f64::INFINITY }],
            drawn: Some(Picture::Outer(Outer::Tails(QuiltTails { ends: 12 }))),
        },
        Level {
            key: "4-to-8",
            name: "4 to 8",
            line: "Some at most rows.",
            spans: &[Span { low: 3.5, high: 8.5 }],
            drawn: Some(Picture::Outer(Outer::Tails(QuiltTails { ends: 6 }))),
        },
        Level {
            key: "1-to-3",
            name: "1 to 3",
            line: "You have to search for them.",
            spans: &[Span { low: 0.5, high: 3.5 }],
            drawn: Some(Picture::Outer(Outer::Tails(QuiltTails { ends: 2 }))),
        },
        Level {
            key: "none",
            name: "None",
            line: "Clean throughout.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 0.5 }],
            drawn: Some(Picture::Outer(Outer::Tails(QuiltTails { ends: 0 }))),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 1, shares 13/28/37/22 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.3, thresholds: &[-6.6, -1.33, 4.53] }),
    instruments: &[&measure::LOOSE_ENDS],
    asked_when: None,
    caution: Some("Do not pull a thread end: a row can run out whole."),
    sources: &[&sources::JUDGEMENT],
};
