//! The tailored jacket, its cloth: patterned or plain, how it recovers, what the label says.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Crushed, Matched, Picture};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static PATTERNED: Check = Check {
    key: "patterned",
    name: "Plain or patterned cloth",
    question: "Has the cloth a pattern with lines that could meet?",
    how: "Look from a step back. Stripes, checks and large figures count as a pattern. A fine weave whose lines you only see close \
        up does not: nobody matches it.",
    meaning: "It decides whether the meeting of the pattern can be judged at all. A pattern is a choice of style: it makes a jacket \
        neither better nor worse, though matching it costs cloth.",
    levels: &[
        Level {
            key: "plain",
            name: "No",
            line: "Plain, or a weave too fine to see from a step.",
            spans: &[],
            drawn: Some(Picture::Matched(Matched::Plain)),
        },
        Level {
            key: "patterned",
            name: "Yes",
            line: "Stripes, checks or figures you can follow.",
            spans: &[],
            drawn: Some(Picture::Matched(Matched::All)),
        },
    ],
    seconds: 3,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("A pattern costs more cloth, since pieces must be laid where its lines fall."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static CLOTH_CRUSH: Check = Check {
    key: "cloth-crush",
    name: "Crushing a handful",
    question: "How does the cloth come back after you crush it?",
    how: "Take a handful of one sleeve or the lower back, crush it in your fist for five seconds, then let go. Watch for ten \
        seconds. Use cloth that is not pressed for show, and not the lapel.",
    meaning: "Recovery comes from fibre, twist and weave, and tells how the jacket looks at noon. Linen and cotton crease by nature: \
        judge them against their own kind. Resin finishes fake it until a few cleanings have gone. Softness alone is not strength.",
    levels: &[
        Level {
            key: "stays",
            name: "It stays creased",
            line: "Sharp creases that remain.",
            spans: &[],
            drawn: Some(Picture::Crushed(Crushed { creases: 12, sharp: true })),
        },
        Level {
            key: "slow",
            name: "Slowly",
            line: "Many soft creases after ten seconds.",
            spans: &[],
            drawn: Some(Picture::Crushed(Crushed { creases: 9, sharp: false })),
        },
        Level {
            key: "mostly",
            name: "For the most part",
            line: "A few soft creases that will hang out.",
            spans: &[],
            drawn: Some(Picture::Crushed(Crushed { creases: 3, sharp: false })),
        },
        Level {
            key: "springs",
            name: "At once, and supple",
            line: "It springs open and lies smooth again.",
            spans: &[],
            drawn: Some(Picture::Crushed(Crushed { creases: 0, sharp: false })),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 12/35/38/15 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.21, -0.14, 1.95] },
        "Long fine fibre and well-twisted yarn are dearer than short.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you crush goods that are not yours, and take the cloth where it does not show."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static CLOTH: Check = Check {
    key: "cloth",
    name: "Fibre on the label",
    question: "What does the label say the outer cloth is made of?",
    how: "Find the small label, often in the inner pocket, and read the line for the outer cloth, not the lining. See whether a \
        woven label of the mill is sewn in as well.",
    meaning: "It says what the cloth cost. Fine fibre feels soft and wears sooner, so dearer is not longer-lived. A mill’s name says \
        who wove it, not how well it was sewn, and mills sell several grades. Labels may be off by a few points by law.",
    levels: &[
        Level {
            key: "polyester",
            name: "Mostly polyester or viscose",
            line: "Less than a third of wool or another natural fibre.",
            spans: &[],
            drawn: None,
        },
        Level {
            key: "blend",
            name: "A blend; or cotton, linen",
            line: "Half wool and half something else, or cotton or linen.",
            spans: &[],
            drawn: None,
        },
        Level { key: "wool", name: "Wool", line: "Nine tenths or more, no mill named.", spans: &[], drawn: None },
        Level {
            key: "fine-wool",
            name: "Fine wool with the mill named",
            line: "All wool, and a woven label of the mill.",
            spans: &[],
            drawn: None,
        },
        Level {
            key: "precious",
            name: "Wool with silk or cashmere",
            line: "A tenth or more of silk, cashmere and the like.",
            spans: &[],
            drawn: None,
        },
    ],
    seconds: 5,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Cloth is about a third of the price at the factory gate, and wool several times as dear as polyester."),
    instruments: &[],
    asked_when: None,
    caution: Some("Never burn a thread to find the fibre. That belongs in a laboratory."),
    sources: &[&sources::CFR_303, &sources::EU_1007, &sources::COMMON_PRACTICE],
};
