//! Sweaters, how one is put together: narrowing, joins, shoulders, yarn ends, the thread in the joins.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Cover, JoinPulled, KnitJoin, Picture, Shaping, Sweater, Taped, YarnEnds};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static SHAPING: Check = Check {
    key: "shaping",
    name: "Marks of shaping",
    question: "Are there marks of shaping at armhole and shoulder?",
    how: "Follow the seam from underarm to neck on the right side. Look for small slanting marks beside it, where two \
        loops became one, and whether columns of loops run along the seam or end in it.",
    meaning: "Marks mean that the panel was knitted to its shape: no cut edge can run, and no yarn is thrown away. A cut \
        sweater can be sound. Printed or embroidered dashes imitate marks: look whether columns really bend.",
    levels: &[
        Level {
            key: "cut",
            name: "None, cut edges",
            line: "Columns run straight into the seam.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Shaping(Shaping::Cut))),
        },
        Level {
            key: "few",
            name: "A few",
            line: "At the neck only, or here and there.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Shaping(Shaping::Few))),
        },
        Level {
            key: "regular",
            name: "Marks at even steps",
            line: "All along the armhole, and columns bend with them.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Shaping(Shaping::Regular))),
        },
        Level {
            key: "decorative",
            name: "Set out as ornament, mirrored",
            line: "Broad or paired marks, both sides alike.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Shaping(Shaping::Decorative))),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 4, shares 30/25/34/11 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.2, thresholds: &[-0.99, 0.24, 2.3] },
        "Knitting to shape saves yarn and takes more time on the machine.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static JOINS: Check = Check {
    key: "joins",
    name: "How panels are joined",
    question: "How are the panels joined inside?",
    how: "Turn it inside out. Look at side, armhole and neck seam: is an edge cut and wrapped, or does a fine chain run \
        along whole loops? Feel how thick the ridge is.",
    meaning: "Linking hangs each loop on a needle by hand: slow, flat and elastic. A wrapped cut edge is quicker and thicker; \
        on thick felted cloth it can serve well. A piece knitted whole has no seams to judge: choose the last answer.",
    levels: &[
        Level {
            key: "cut-overlocked",
            name: "Cut and wrapped in thread",
            line: "A cut edge inside a zigzag, thick to feel.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::KnitJoin(KnitJoin::CutOverlocked))),
        },
        Level {
            key: "linked-rough",
            name: "Linked roughly, bulky",
            line: "A chain that wanders off the row of loops.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::KnitJoin(KnitJoin::LinkedRough))),
        },
        Level {
            key: "loop-to-loop",
            name: "Linked loop to loop",
            line: "One link for each loop, a narrow ridge.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::KnitJoin(KnitJoin::LoopToLoop))),
        },
        Level {
            key: "flat",
            name: "Linked flat, or knitted whole",
            line: "Hardly a ridge; columns meet, or no seam at all.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::KnitJoin(KnitJoin::Flat))),
        },
    ],
    seconds: 10,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 5, shares 28/30/32/10 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.6, thresholds: &[-0.95, 0.33, 2.09] },
        "Linking takes two to three times as long as wrapping a cut edge.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you turn out goods that are not yours, and feel for pins first."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static SHOULDER: Check = Check {
    key: "shoulder",
    name: "Shoulders held in length",
    question: "What holds the shoulder seams in length?",
    how: "Inside out, look along the seam from neck to sleeve for a tape, an elastic strip or a firm chain. Stretch it \
        gently between your hands.",
    meaning: "The whole weight hangs from these seams, and wet wool is heavy. A stay keeps them from growing. A sweater without \
        shoulder seams, a raglan, has less need of one: choose can’t tell.",
    levels: &[
        Level {
            key: "nothing",
            name: "Nothing",
            line: "The bare seam stretches with your hands.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Raw, neck: false })),
        },
        Level {
            key: "overlock",
            name: "The wrapped edge alone",
            line: "It gives a little.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Overlock, neck: false })),
        },
        Level {
            key: "stay",
            name: "A tape or a firm chain",
            line: "It stops your hands.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Tape, neck: false })),
        },
        Level {
            key: "stay-flat",
            name: "A stay, soft and flat",
            line: "It stops your hands, and you hardly feel it.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::TapeTwice, neck: false })),
        },
    ],
    seconds: 5,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 3, shares 25/38/27/10 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Strength, slope: 0.9, thresholds: &[-1.52, 0.75, 2.89] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you stretch goods that are not yours."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static ENDS: Check = Check {
    key: "ends",
    name: "Yarn ends inside",
    question: "What became of the yarn ends inside?",
    how: "Inside out, look where colours change, at the ends of seams, at cuffs and neck. Touch nothing that hangs.",
    meaning: "Knitting undoes itself from a free end. Ends run back through the loops hold best; a knot holds, and can slip or \
        be felt. Patterns of many colours have more ends: judge how they are held, not how many.",
    levels: &[
        Level {
            key: "loose",
            name: "Loose",
            line: "They hang, cut to any length.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::YarnEnds(YarnEnds::Loose))),
        },
        Level {
            key: "knotted",
            name: "Knotted and cut",
            line: "Small knots you can feel.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::YarnEnds(YarnEnds::Knotted))),
        },
        Level {
            key: "worked-in",
            name: "Worked in",
            line: "They run back through loops or seam.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::YarnEnds(YarnEnds::WorkedIn))),
        },
        Level {
            key: "invisible",
            name: "None to be found",
            line: "You search and find no end.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::YarnEnds(YarnEnds::Invisible))),
        },
    ],
    seconds: 12,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 2, shares 12/40/36/12 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.6, thresholds: &[-3.75, 0.16, 3.75] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Do not pull a yarn end: a seam or a column can run out whole."),
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static STITCH_EVEN: Check = Check {
    key: "stitch-even",
    name: "Thread in the joins",
    question: "Does the thread in the joins stretch with the cloth?",
    how: "Take a side seam in both hands, a hand apart, and stretch it gently, once. Watch the thread, then compare its \
        colour with the yarn.",
    meaning: "A join must give as far as the cloth beside it, or its thread breaks when you pull it on. Colour is a small sign of \
        care; a contrast can be meant. A shoulder is stayed on purpose, so try a side seam.",
    levels: &[
        Level {
            key: "breaks",
            name: "It breaks, or gaps show",
            line: "A crack, or thread seen from the right side.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::JoinPulled(JoinPulled::Breaks))),
        },
        Level {
            key: "tight",
            name: "It is tight",
            line: "The seam stops while the cloth could go on.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::JoinPulled(JoinPulled::Tight))),
        },
        Level {
            key: "gives",
            name: "It gives",
            line: "Thread and cloth go as far as each other.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::JoinPulled(JoinPulled::Gives))),
        },
        Level {
            key: "gives-matched",
            name: "It gives, and matches",
            line: "Of the same yarn or colour as the cloth.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::JoinPulled(JoinPulled::GivesMatched))),
        },
    ],
    seconds: 8,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 2, shares 8/36/42/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.6, thresholds: &[-4.49, -0.48, 3.45] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you stretch goods that are not yours. Stop where thread cracks."),
    sources: &[&sources::JUDGEMENT],
};
