//! Shirts, the seams inside: side, armhole, yoke and tail.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Join, Picture, SeamWidth, ShirtTail, TailTurn};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static SIDE_SEAM: Check = Check {
    key: "side-seam",
    name: "Side and underarm seam",
    question: "How are side and underarm seam joined?",
    how: "Turn the shirt inside out. Look along the seam that runs from hem to cuff. See whether edges are wrapped in \
        thread (overlocked) or locked into each other (felled), and how narrow it is.",
    meaning: "Felling takes a second pass and skill, and leaves no raw edge to fray. An overlock with a row beside it holds \
        well too. A felled seam is no luxury if it puckers.",
    levels: &[
        Level {
            key: "overlock",
            name: "One overlock row",
            line: "Edges wrapped together, and no other row.",
            spans: &[],
            drawn: Some(Picture::SeamWidth(SeamWidth { join: Join::Overlock, width_mm: 9.0, bend: 0.0 })),
        },
        Level {
            key: "overlock-plus",
            name: "Overlock and a second row",
            line: "A line of stitching beside the wrapped edge.",
            spans: &[],
            drawn: Some(Picture::SeamWidth(SeamWidth { join: Join::OverlockAndRow, width_mm: 10.0, bend: 0.0 })),
        },
        Level {
            key: "felled",
            name: "Felled",
            line: "Edges locked into each other, two rows, 6 mm or wider.",
            spans: &[],
            drawn: Some(Picture::SeamWidth(SeamWidth { join: Join::Felled, width_mm: 8.0, bend: 0.0 })),
        },
        Level {
            key: "felled-narrow",
            name: "Felled and narrow",
            line: "About 5 mm (3⁄16 in), sewn in single passes, flat.",
            spans: &[],
            drawn: Some(Picture::SeamWidth(SeamWidth { join: Join::Felled, width_mm: 4.8, bend: 0.0 })),
        },
    ],
    seconds: 6,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 4, shares 22/38/28/12 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.2, thresholds: &[-1.45, 0.48, 2.21] },
        "Felling takes a second pass; narrow single passes take longer still.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you turn out goods that are not yours. Feel for pins first."),
    sources: &[&sources::JUDGEMENT, &sources::ISO_4916],
};

pub(in crate::catalog) static ARMHOLE: Check = Check {
    key: "armhole",
    name: "The armhole",
    question: "How is the sleeve set into the armhole?",
    how: "Inside out, follow the seam round the armhole. See how its edge is finished, whether it is stitched down, and \
        whether the curve runs without kinks.",
    meaning: "A curve is harder to fell than a straight seam, so this tells skill. A loose armhole is comfort and cut, not \
        make. An overlocked armhole that lies flat can outlast a felled one that puckers.",
    levels: &[
        Level {
            key: "overlock",
            name: "Overlocked only",
            line: "A wrapped edge that stands loose.",
            spans: &[],
            drawn: Some(Picture::SeamWidth(SeamWidth { join: Join::Overlock, width_mm: 9.0, bend: 1.0 })),
        },
        Level {
            key: "overlock-top",
            name: "Overlocked and stitched down",
            line: "A wrapped edge, laid flat under rows seen outside.",
            spans: &[],
            drawn: Some(Picture::SeamWidth(SeamWidth { join: Join::MockFelled, width_mm: 9.0, bend: 1.0 })),
        },
        Level {
            key: "felled",
            name: "Felled",
            line: "No raw edge, two rows.",
            spans: &[],
            drawn: Some(Picture::SeamWidth(SeamWidth { join: Join::Felled, width_mm: 8.0, bend: 1.0 })),
        },
        Level {
            key: "felled-narrow",
            name: "Felled, narrow and smooth",
            line: "About 5 mm wide round the whole curve, no kinks.",
            spans: &[],
            drawn: Some(Picture::SeamWidth(SeamWidth { join: Join::Felled, width_mm: 4.8, bend: 1.0 })),
        },
    ],
    seconds: 6,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 3, shares 20/42/27/11 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 0.9, thresholds: &[-1.9, 0.69, 2.77] },
        "A felled curve takes skill and minutes.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::ISO_4916],
};

pub(in crate::catalog) static YOKE_HEM: Check = Check {
    key: "yoke-hem",
    name: "Tail and yoke inside",
    question: "How are the tail and the yoke finished inside?",
    how: "Inside out, follow the hem from front to back round both curves. See how it is turned and whether it ropes. \
        Then look whether the yoke, the piece over the shoulders, hides its seams.",
    meaning: "Small savings collect here, out of sight. A narrow hem turned twice on a curve takes practice; roping comes \
        from cloth fed unevenly and stays after ironing. A straight hem is easier: judge only its turn.",
    levels: &[
        Level {
            key: "raw",
            name: "Raw or rolled unevenly",
            line: "Width changes, yarns come out.",
            spans: &[],
            drawn: Some(Picture::ShirtTail(ShirtTail { turn: TailTurn::Raw })),
        },
        Level {
            key: "overlocked",
            name: "Overlocked and turned once",
            line: "A wrapped edge folded up wide.",
            spans: &[],
            drawn: Some(Picture::ShirtTail(ShirtTail { turn: TailTurn::Overlocked })),
        },
        Level {
            key: "narrow",
            name: "Narrow, turned twice",
            line: "No edge to see; ropes a little on the curves.",
            spans: &[],
            drawn: Some(Picture::ShirtTail(ShirtTail { turn: TailTurn::Roping })),
        },
        Level {
            key: "narrow-even",
            name: "Narrow and even on curves",
            line: "No edge to see, flat all round; yoke seams hidden.",
            spans: &[],
            drawn: Some(Picture::ShirtTail(ShirtTail { turn: TailTurn::Even })),
        },
    ],
    seconds: 8,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 2, shares 10/38/38/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Seams, slope: 0.6, thresholds: &[-3.96, -0.16, 3.34] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
