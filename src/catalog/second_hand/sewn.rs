//! Second-hand, what was sewn: strain, mends, alterations.

use super::Condition;
use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Altered, Mended, Picture, SecondHand, Strained};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static SEAMS: Condition = Condition {
    check: Check {
        key: "worn-seams",
        name: "Seams under strain",
        question: "What shows when you part the seams a little?",
        how: "At the places named here, hold the cloth either side of the seam and part it until it lies flat, no \
            further. Look for gaps, broken thread and large holes.",
        meaning: "Popped thread is sewn again, for the cloth is whole. Cloth torn or drawn out beside it leaves nothing to \
            sew to. A strained seam also says that it was tight on someone.",
        levels: &[
            Level {
                key: "torn",
                name: "Cloth torn beside it",
                line: "Threads drawn out of the cloth, or a tear.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Strained(Strained::Torn))),
            },
            Level {
                key: "popped",
                name: "Stitches popped",
                line: "It gapes; the cloth beside it is whole.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Strained(Strained::Popped))),
            },
            Level {
                key: "strained",
                name: "Strained, and holds",
                line: "Thread and large holes show.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Strained(Strained::Strained))),
            },
            Level {
                key: "sound",
                name: "Whole and sound",
                line: "It closes again, and nothing shows.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Strained(Strained::Sound))),
            },
        ],
        seconds: 12,
        stage: Stage::InHand,
        aspect: Aspect::Making,
        // Power 4, shares 6/17/29/48 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Strength, slope: 1.2, thresholds: &[-2.92, -1.39, 0.09] }),
        instruments: &[],
        asked_when: None,
        caution: Some("Do not pull: the goods may not be yours, and a chain of thread can run out."),
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "It needs cloth behind it, or the seam taken in: for a good piece only.",
        "Ten minutes with needle and thread, along the old holes.",
        "A second row just inside the old one takes the strain, where it is wide enough.",
        "",
    ],
};

pub(in crate::catalog) static MENDS: Condition = Condition {
    check: Check {
        key: "worn-mends",
        name: "Mends and patches",
        question: "How well was it mended, where it was?",
        how: "Look inside where it wears, for darns, patches, glue and iron-on cloth. Bend each over a finger: does it \
            lie flat and hold all round?",
        meaning: "A mend is no fault: a good one holds longer than the cloth round it. A poor one pulls at that cloth. \
            Mends also show you where the piece wears.",
        levels: &[
            Level {
                key: "gives",
                name: "Poor, or giving way",
                line: "Glue, lumps, or stitches that pull at the cloth.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Mended(Mended::Gives))),
            },
            Level {
                key: "plain",
                name: "Plain, and holds",
                line: "You see it; it lies flat and is fast.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Mended(Mended::Plain))),
            },
            Level {
                key: "fine",
                name: "Hardly to be seen",
                line: "Found by touch, or only from inside.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Mended(Mended::Fine))),
            },
            Level {
                key: "never",
                name: "Never mended",
                line: "No mend found on either side.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Mended(Mended::Never))),
            },
        ],
        seconds: 10,
        stage: Stage::InHand,
        aspect: Aspect::Making,
        // Power 2, shares 8/14/8/70 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Seams, slope: 0.6, thresholds: &[-4.35, -2.39, -1.62] }),
        instruments: &[],
        asked_when: None,
        caution: None,
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &["Unpick it and do it anew, if the cloth round it holds: an hour.", "Leave it alone while it holds.", "", ""],
};

pub(in crate::catalog) static ALTERED: Condition = Condition {
    check: Check {
        key: "worn-altered",
        name: "Altered or not",
        question: "Was it altered, and can that be undone?",
        how: "Inside, look at hem, side seams and waist for a second row of holes, a cut edge or an old fold. Feel how \
            much cloth is left.",
        meaning: "What was taken in can be let out while the cloth is there; what was cut is gone. None of it is a fault \
            where the piece fits you.",
        levels: &[
            Level {
                key: "cut",
                name: "Cut, nothing left",
                line: "A new edge, and no cloth behind it.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Altered(Altered::Cut))),
            },
            Level {
                key: "line",
                name: "Let down, the old line shows",
                line: "A pale or dark line where the fold was.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Altered(Altered::Line))),
            },
            Level {
                key: "inside",
                name: "Altered, cloth left inside",
                line: "New stitches; the rest is still there.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Altered(Altered::Inside))),
            },
            Level {
                key: "never",
                name: "Never altered",
                line: "One row of holes, one thread.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Altered(Altered::Never))),
            },
        ],
        seconds: 12,
        stage: Stage::InsideOut,
        aspect: Aspect::Shape,
        // Power 1, shares 7/8/13/72 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Shape, slope: 0.3, thresholds: &[-8.57, -6.02, -3.38] }),
        instruments: &[],
        asked_when: None,
        caution: None,
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "What is cut stays cut. Measure it against you first.",
        "A wash may fade the line; a facing or a row of stitches hides it.",
        "It can be let out again: about an hour a seam.",
        "",
    ],
};
