//! Second-hand, what closes, stretches and lines.

use super::Condition;
use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Fastening, Growth, Picture, SecondHand, WornLining};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static FASTENING: Condition = Condition {
    check: Check {
        key: "worn-fastening",
        name: "Buttons, zips and hooks",
        question: "Do all buttons, hooks and zips work?",
        how: "Run each zip its whole way, twice. Close each button and hook. Count the buttons, compare them, and look \
            at the cloth under them.",
        meaning: "A button that is gone is a small thing. Cloth torn under a button is a larger one, and a new zip can \
            cost more than the piece.",
        levels: &[
            Level {
                key: "fails",
                name: "One fails, or tore its cloth",
                line: "A zip slips or gapes; a button left a hole.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Fastening(Fastening::Fails))),
            },
            Level {
                key: "missing",
                name: "One missing or unlike",
                line: "A gap, or a button of another kind.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Fastening(Fastening::Missing))),
            },
            Level {
                key: "loose",
                name: "All there, some loose",
                line: "Threads long or frayed.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Fastening(Fastening::Loose))),
            },
            Level {
                key: "firm",
                name: "All there and firm",
                line: "Each closes and holds.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Fastening(Fastening::Firm))),
            },
        ],
        seconds: 12,
        stage: Stage::InHand,
        aspect: Aspect::Trims,
        // Power 3, shares 8/15/22/55 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Trims, slope: 0.9, thresholds: &[-3.17, -1.67, -0.28] }),
        instruments: &[],
        asked_when: None,
        caution: Some("Pockets and hems can hold pins or something sharp. Feel them from outside before you put a hand in."),
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "A new zip is an hour at a tailor’s; a slider alone can be changed. A torn place needs cloth behind it.",
        "Ten minutes. A spare is often sewn to a seam inside.",
        "Ten minutes now, before one is lost.",
        "",
    ],
};

pub(in crate::catalog) static STRETCH: Condition = Condition {
    check: Check {
        key: "worn-stretch",
        name: "Stretch that is left",
        question: "How well do ribs, elastic and stretch cloth come back?",
        how: "Ask first. At a place named here lay two fingers 10 cm (4 in) apart, stretch by a quarter, hold, let go. \
            How much longer does it stay? Listen for a crackle.",
        meaning: "Elastic dies of age, heat and bleach, worn or not, and stays dead. Ribs of wool and cotton often draw in \
            again in a wash. Cloth without stretch: skip this.",
        levels: &[
            Level {
                key: "dead",
                name: "Dead",
                line: "8 mm or more stay, or it waves and crackles.",
                spans: &[],
                drawn: Some(Picture::Growth(Growth { percent: 8.0 })),
            },
            Level {
                key: "slack",
                name: "Slack",
                line: "About 5 mm stay.",
                spans: &[],
                drawn: Some(Picture::Growth(Growth { percent: 5.0 })),
            },
            Level {
                key: "slow",
                name: "Slow",
                line: "About 2 mm stay.",
                spans: &[],
                drawn: Some(Picture::Growth(Growth { percent: 2.0 })),
            },
            Level {
                key: "springs",
                name: "Springs back",
                line: "Nothing stays.",
                spans: &[],
                drawn: Some(Picture::Growth(Growth { percent: 0.0 })),
            },
        ],
        seconds: 12,
        stage: Stage::InHand,
        aspect: Aspect::Shape,
        // Power 4, shares 7/23/34/36 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Shape, slope: 1.2, thresholds: &[-2.77, -0.99, 0.67] }),
        instruments: &[],
        asked_when: None,
        caution: Some("One slow pull, no jerk: old elastic can snap."),
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "New elastic in a channel is half an hour; stretch that died in the cloth itself cannot be mended.",
        "A wash may draw in ribs of wool or cotton. It does not mend elastic.",
        "",
        "",
    ],
};

pub(in crate::catalog) static LINING: Condition = Condition {
    check: Check {
        key: "worn-lining",
        name: "What is left of the lining",
        question: "How much is left in the lining?",
        how: "Turn it out. Look at armholes, hem, slits and pocket mouths. Hold a stretched place to the light.",
        meaning: "Linings give way before the cloth does. A split seam is soon closed; silk or viscose that shreds under \
            the finger tears again beside each stitch. No lining: skip this.",
        levels: &[
            Level {
                key: "shreds",
                name: "Torn or shredding",
                line: "It tears on under the finger.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Lining(WornLining::Shreds))),
            },
            Level {
                key: "split",
                name: "Split at the seams",
                line: "A seam is open; the cloth beside it is firm.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Lining(WornLining::Split))),
            },
            Level {
                key: "thin",
                name: "Thin or marked",
                line: "Worn thin, faded or stained in places.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Lining(WornLining::Thin))),
            },
            Level {
                key: "whole",
                name: "Whole",
                line: "Firm and clean all round.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Lining(WornLining::Whole))),
            },
        ],
        seconds: 12,
        stage: Stage::InsideOut,
        aspect: Aspect::Trims,
        // Power 3, shares 8/17/35/40 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Trims, slope: 0.9, thresholds: &[-3.17, -1.52, 0.57] }),
        instruments: &[],
        asked_when: None,
        caution: Some("Pins and needles can sit in linings. Feel from outside before you put a hand in."),
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "A new lining is many hours, and can cost more than the piece.",
        "Half an hour by hand. Leave it a little loose, or it splits again.",
        "",
        "",
    ],
};
