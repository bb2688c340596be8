//! The tailored jacket, its shape: sleeve, collar, and where a pattern meets.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks, When};
use crate::grading::{Curve, Group};
use crate::specimen::{CollarSit, Matched, Picture, SleeveHead};
use crate::trade::{Aspect, Stage};

use super::cloth::PATTERNED;

pub(in crate::catalog) static SLEEVE_HEAD: Check = Check {
    key: "sleeve-head",
    name: "Head and hang of sleeves",
    question: "How are the sleeves set into the shoulder?",
    how: "Hold the jacket on your fist inside one shoulder, or look at it on a wide hanger. Follow the sleeve seam over the top: \
        look for dents and ripples. Then see how the sleeve falls: straight, twisted, or a little forward.",
    meaning: "A longer sleeve is eased into a shorter hole without a pleat: the hardest seam of a jacket. A row of small gathers \
        can be a style, alike on both sides. A thin hanger dents every sleeve, so use your fist. Padding can hide a poor seam.",
    levels: &[
        Level {
            key: "dents",
            name: "With dents or a twist",
            line: "Hollows at the top, or lines winding round the sleeve.",
            spans: &[],
            drawn: Some(Picture::SleeveHead(SleeveHead::Dented)),
        },
        Level {
            key: "ripples",
            name: "With some ripples",
            line: "Small waves along the seam; the sleeve hangs straight.",
            spans: &[],
            drawn: Some(Picture::SleeveHead(SleeveHead::Rippled)),
        },
        Level {
            key: "clean",
            name: "Cleanly",
            line: "Smooth and round at the top, on both sides.",
            spans: &[],
            drawn: Some(Picture::SleeveHead(SleeveHead::Clean)),
        },
        Level {
            key: "clean-pitched",
            name: "Cleanly, and hanging as an arm does",
            line: "Smooth on top, and bent a little forward.",
            spans: &[],
            drawn: Some(Picture::SleeveHead(SleeveHead::CleanPitched)),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 4, shares 12/36/38/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.2, thresholds: &[-2.21, -0.09, 2.03] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static MATCH: Check = Check {
    key: "match",
    name: "Meeting of the pattern",
    question: "Where do the lines of the pattern meet?",
    how: "Follow one strong line of the pattern across a pocket flap, then round the side seam, then from chest to sleeve. Last, \
        compare the two lapels: the same lines should stand at the same height.",
    meaning: "Matching takes more cloth and slow cutting. Pockets are easy to match and seen first, so look at side and sleeve too. \
        Not every seam can meet: sleeves only match in front, and slanting seams drift apart. It says nothing about strength.",
    levels: &[
        Level {
            key: "nowhere",
            name: "Nowhere",
            line: "Lines break at pockets, sides and sleeves.",
            spans: &[],
            drawn: Some(Picture::Matched(Matched::Nowhere)),
        },
        Level {
            key: "pockets",
            name: "At the pockets only",
            line: "They run through the flaps and break elsewhere.",
            spans: &[],
            drawn: Some(Picture::Matched(Matched::Pockets)),
        },
        Level {
            key: "front-back",
            name: "At pockets and side seams",
            line: "Front and back meet; sleeves or lapels do not.",
            spans: &[],
            drawn: Some(Picture::Matched(Matched::FrontAndBack)),
        },
        Level {
            key: "all",
            name: "Everywhere, lapels mirrored",
            line: "Sleeves meet the chest, and lapels are alike.",
            spans: &[],
            drawn: Some(Picture::Matched(Matched::All)),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 4, shares 18/36/33/13 of 100 new pieces with a pattern: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Shape, slope: 1.2, thresholds: &[-1.72, 0.19, 2.12] },
        "Matching everywhere takes perhaps a sixth more cloth, and cutting piece by piece.",
    ),
    instruments: &[],
    asked_when: Some(When { check: &PATTERNED, levels: &["patterned"], share: 35 }),
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static COLLAR_SIT: Check = Check {
    key: "collar-sit",
    name: "Collar on the neck",
    question: "How does the collar sit on your neck?",
    how: "Put the jacket on over a shirt and close it as it is meant to be worn. Look from the side, in a mirror or a picture. Turn, \
        reach forward, then lift both arms. See whether the collar leaves the shirt.",
    meaning: "It joins balance of the cut with your own posture: a well-made jacket may stand off on you, so try the size beside it \
        before you blame the maker. Stand as you usually do. Half a finger of shirt above the collar is usual.",
    levels: &[
        Level {
            key: "stands-away",
            name: "It stands away",
            line: "A gap behind the neck, though you stand still.",
            spans: &[],
            drawn: Some(Picture::CollarSit(CollarSit::StandsAway)),
        },
        Level {
            key: "gapes",
            name: "It gapes when you move",
            line: "Close at rest; it leaves the shirt as you turn.",
            spans: &[],
            drawn: Some(Picture::CollarSit(CollarSit::GapesMoving)),
        },
        Level {
            key: "close",
            name: "It lies close",
            line: "It stays on the shirt as you turn and reach.",
            spans: &[],
            drawn: Some(Picture::CollarSit(CollarSit::Close)),
        },
        Level {
            key: "close-arms-up",
            name: "It lies close, arms lifted too",
            line: "It stays on the shirt with both arms up.",
            spans: &[],
            drawn: Some(Picture::CollarSit(CollarSit::CloseArmsUp)),
        },
    ],
    seconds: 30,
    stage: Stage::Worn,
    aspect: Aspect::Shape,
    // Power 4, shares 14/34/38/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.2, thresholds: &[-2.03, -0.09, 2.03] }),
    instruments: &[],
    asked_when: None,
    caution: Some(
        "Feel shoulders, armholes and collar for pins before you put it on. Lift your arms slowly: seams may be tight.",
    ),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
