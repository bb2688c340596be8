//! Second-hand, the cloth: wear where it rubs, thinning, beads.

use super::Condition;
use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Harm, Picture, Pilling, SecondHand, Thinned, Wear};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static RUBBED: Condition = Condition {
    check: Check {
        key: "worn-rubbed",
        name: "Wear where it rubs",
        question: "How far is the cloth worn where it rubs most?",
        how: "Bend the cloth over a finger at the places named here. Look for bare threads, fluff and shine. Compare \
            with a place that never rubs.",
        meaning: "Worn cloth goes on wearing, and cloth that has lost its face has little left. Wear made in the factory \
            lies in the same places: judge what is left, however it came.",
        levels: &[
            Level {
                key: "through",
                name: "Worn through",
                line: "A hole, or threads of one direction only.",
                spans: &[],
                drawn: Some(Picture::Wear(Wear { harm: Harm::Hole })),
            },
            Level {
                key: "bare",
                name: "Face worn off",
                line: "The surface is gone; no hole yet.",
                spans: &[],
                drawn: Some(Picture::Wear(Wear { harm: Harm::Thin })),
            },
            Level {
                key: "begun",
                name: "Begun",
                line: "Fluff, shine or a paler edge.",
                spans: &[],
                drawn: Some(Picture::Wear(Wear { harm: Harm::Edge })),
            },
            Level {
                key: "fresh",
                name: "No wear to see",
                line: "The same as where nothing rubs.",
                spans: &[],
                drawn: Some(Picture::Wear(Wear { harm: Harm::None })),
            },
        ],
        seconds: 10,
        stage: Stage::InHand,
        aspect: Aspect::Cloth,
        // Power 5, shares 8/24/43/25 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Cloth, slope: 1.6, thresholds: &[-2.29, -0.76, 1.1] }),
        instruments: &[],
        asked_when: None,
        caution: None,
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "A patch is an hour’s work, and the cloth beside it goes next. For a piece you love.",
        "Back it from inside or darn it now: half an hour, while threads are left to sew to.",
        "Nothing yet. It will go here first.",
        "",
    ],
};

pub(in crate::catalog) static THIN: Condition = Condition {
    check: Check {
        key: "worn-thin",
        name: "Cloth against the light",
        question: "How much more light comes through where it rubs?",
        how: "Hold one layer before a window or lamp. Look at a place named here, and at one beside it that does not \
            rub.",
        meaning: "Thinning shows before a hole does. How open the cloth is says nothing here: only the difference between \
            two places of one piece does. Dark cloth hides it.",
        levels: &[
            Level {
                key: "pinholes",
                name: "Points of light",
                line: "Pinholes, or single threads.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Thinned(Thinned::Pinholes))),
            },
            Level {
                key: "clearly",
                name: "Clearly more",
                line: "A patch glows beside the rest.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Thinned(Thinned::Clearly))),
            },
            Level {
                key: "trace",
                name: "A trace more",
                line: "Seen only when you look for it.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Thinned(Thinned::Trace))),
            },
            Level {
                key: "same",
                name: "No more",
                line: "As dense as the cloth beside it.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Thinned(Thinned::Same))),
            },
        ],
        seconds: 10,
        stage: Stage::InHand,
        aspect: Aspect::Cloth,
        // Power 4, shares 8/22/32/38 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.64, -0.99, 0.57] }),
        instruments: &[],
        asked_when: None,
        caution: None,
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "Light cloth sewn in behind it holds for a while; a darn alone has nothing to hold to.",
        "Back it from inside now, before it is a hole.",
        "",
        "",
    ],
};

pub(in crate::catalog) static PILLS: Condition = Condition {
    check: Check {
        key: "worn-pills",
        name: "Beads and fuzz",
        question: "How far has the face gone to beads and fuzz?",
        how: "Look along the face against the light, first at the places named here. Roll one bead between two \
            fingers: does it come off?",
        meaning: "Beads are loose fibre and can be shaved off, so they say little of what is left. Each shaving takes some \
            cloth, and cloth that beads goes on beading.",
        levels: &[
            Level {
                key: "most",
                name: "On most of it",
                line: "Fuzz and beads wherever you look.",
                spans: &[],
                drawn: Some(Picture::Pilling(Pilling { grade: 2 })),
            },
            Level {
                key: "part",
                name: "On part of it",
                line: "Only where it rubs.",
                spans: &[],
                drawn: Some(Picture::Pilling(Pilling { grade: 3 })),
            },
            Level {
                key: "first",
                name: "First beads",
                line: "Slight fuzz, a bead here and there.",
                spans: &[],
                drawn: Some(Picture::Pilling(Pilling { grade: 4 })),
            },
            Level {
                key: "clear",
                name: "Clear",
                line: "Smooth all over.",
                spans: &[],
                drawn: Some(Picture::Pilling(Pilling { grade: 5 })),
            },
        ],
        seconds: 6,
        stage: Stage::InHand,
        aspect: Aspect::Cloth,
        // Power 2, shares 13/28/34/25 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Cloth, slope: 0.6, thresholds: &[-3.48, -0.7, 2.09] }),
        instruments: &[],
        asked_when: None,
        caution: None,
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "Shave it flat, without pressing: a quarter of an hour. Some will come again.",
        "Shave those places, flat and without pressing: ten minutes.",
        "",
        "",
    ],
};
