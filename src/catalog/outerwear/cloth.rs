//! Outerwear, the outer cloth: its hand, its weight, what it is made of, and what water does on it.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks, When};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Drop, Fold, Outer, Picture, ShellHand};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static CLOTH_HAND: Check = Check {
    key: "cloth-hand",
    name: "Hand of the outer cloth",
    question: "How does the outer cloth feel, and how does it come back?",
    how: "Crush a handful of sleeve for three seconds and let go. Rub it between two fingers. Where it is coated, look along the \
        creases and inside a cuff for flakes.",
    meaning: "Outer cloth is the largest cost and meets all weather. Thin cloth can be right over down, if it is close: light \
        weight is no fault, slackness is. Stiffness from a finish washes out; a coating that peels never mends.",
    levels: &[
        Level {
            key: "limp-flaking",
            name: "Limp, or it flakes",
            line: "It hangs like a rag, or the coating comes off.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Shell(ShellHand::Flaking))),
        },
        Level {
            key: "thin",
            name: "Thin",
            line: "It crumples, and sharp creases stay.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Shell(ShellHand::Thin))),
        },
        Level {
            key: "firm",
            name: "Firm",
            line: "A few soft creases stay.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Shell(ShellHand::Firm))),
        },
        Level {
            key: "dense",
            name: "Dense and supple, it recovers",
            line: "Close, smooth again at once.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Shell(ShellHand::Supple))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 9/33/42/16 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.52, -0.38, 1.87] },
        "Outer cloth is most often the largest part of the bill.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you crush goods that are not yours."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static RAIN: Check = Check {
    key: "rain",
    name: "What it says of rain",
    question: "Does label or tag say that it keeps rain off?",
    how: "Read hang tag and label: water-repellent, waterproof, a water column in millimetres, taped seams. The name raincoat \
        counts too.",
    meaning: "A word on a tag says nothing about quality. It is asked here since it opens the test with a drop. Repellent means \
        that water beads for a while; waterproof needs a coating or membrane and sealed seams.",
    levels: &[
        Level { key: "no-claim", name: "No word of rain", line: "A coat for dry days.", spans: &[], drawn: None },
        Level { key: "rain", name: "It claims to", line: "Repellent, proof, or named for rain.", spans: &[], drawn: None },
    ],
    seconds: 4,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    speaks: Speaks::Cost("A finish costs some tens of cents, a membrane and taped seams some dollars."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static BEAD: Check = Check {
    key: "bead",
    name: "A drop of water",
    question: "What has a drop of water done after half a minute?",
    how: "Lay a sleeve flat. Set one drop on it with a wet fingertip, wait 30 seconds, then tilt the cloth. In a shop, ask first.",
    meaning: "New repellent cloth should bead. The finish wears off and often comes back with a wash and warmth, so this is a \
        fact of today. It says nothing of seams: water comes in there first.",
    levels: &[
        Level {
            key: "soaks",
            name: "It soaks in",
            line: "Nothing stands; the cloth is dark and wet through.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Drop(Drop::Soaks))),
        },
        Level {
            key: "spreads",
            name: "It spreads",
            line: "Flat and wide, with a wet place below.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Drop(Drop::Spreads))),
        },
        Level {
            key: "beads",
            name: "It beads, with a dark ring",
            line: "A bead stands; a little went in.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Drop(Drop::Beads))),
        },
        Level {
            key: "rolls-off",
            name: "It rolls off",
            line: "Tilted, it runs off and leaves no mark.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Drop(Drop::RollsOff))),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    // Power 3, shares 12/28/38/22 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Finish, slope: 0.9, thresholds: &[-2.65, -0.57, 1.74] }),
    instruments: &[],
    // Four of ten pieces speak of rain: judgement.
    asked_when: Some(When { check: &RAIN, levels: &["rain"], share: 40 }),
    caution: Some("Wet nothing that is not yours without leave. Water can mark silk, wool and suede."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static SHELL_WEIGHT: Check = Check {
    key: "shell-weight",
    name: "Weight of the outer cloth",
    question: "How heavy is the outer cloth by the square metre?",
    how: "Read it off the label or the shop’s page. Else pinch one layer and compare it with cloth whose weight you know.",
    meaning: "Weight is intent: down wants the lightest cloth, a wool coat the heaviest. More grams are more fibre to pay for, \
        and no proof of a longer life.",
    levels: &[
        Level {
            key: "under-90",
            name: "Under 90 g/m²",
            line: "Like a light shirt: over down.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 90.0 }],
            drawn: Some(Picture::Fold(Fold { ounces: 4.0, spring: 0.1 })),
        },
        Level {
            key: "90-to-250",
            name: "90 to 250 g/m²",
            line: "Rain jackets, many parkas.",
            spans: &[Span { low: 90.0, high: 250.0 }],
            drawn: Some(Picture::Fold(Fold { ounces: 6.0, spring: 0.3 })),
        },
        Level {
            key: "250-to-400",
            name: "250 to 400 g/m²",
            line: "Like jeans: waxed cotton, light wool.",
            spans: &[Span { low: 250.0, high: 400.0 }],
            drawn: Some(Picture::Fold(Fold { ounces: 10.0, spring: 0.5 })),
        },
        Level {
            key: "over-400",
            name: "Over 400 g/m²",
            line: "Coating, as winter coats are made of.",
            spans: &[Span { low: 400.0, high: f64::INFINITY }],
            drawn: Some(Picture::Fold(Fold { ounces: 16.0, spring: 0.8 })),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Of one kind of cloth, twice the weight costs half as much again or more."),
    instruments: &[&measure::CLOTH_MASS, &measure::CLOTH_MASS_COMPARED],
    asked_when: None,
    caution: None,
    sources: &[&sources::COMMON_PRACTICE, &sources::JUDGEMENT],
};

pub(in crate::catalog) static SHELL: Check = Check {
    key: "shell",
    name: "Outer cloth on the label",
    question: "What does the label name for the outer cloth?",
    how: "Find the sewn-in label, often in a pocket or low in the side seam. Read the line for the outer cloth, not for lining \
        or filling.",
    meaning: "Fibre sets cost and use, not care. A membrane lets damp out and holds rain; on a wool coat a share of nylon can \
        help it wear. Cashmere named large may be a few per cent: read the figures.",
    levels: &[
        Level { key: "polyester", name: "Polyester", line: "Polyester alone, coated or not.", spans: &[], drawn: None },
        Level {
            key: "nylon-blend",
            name: "Nylon or a blend",
            line: "Nylon, also called polyamide, or cotton mixed with it.",
            spans: &[],
            drawn: None,
        },
        Level { key: "cotton-waxed", name: "Cotton, also waxed", line: "Cotton alone, dry or waxed.", spans: &[], drawn: None },
        Level { key: "wool", name: "Wool, also mixed", line: "Half of it wool or more.", spans: &[], drawn: None },
        Level {
            key: "membrane-fine",
            name: "Membrane, or fine wool",
            line: "Laminated cloth, or pure wool with cashmere or alpaca.",
            spans: &[],
            drawn: None,
        },
    ],
    seconds: 5,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Wool and laminated cloth cost three to seven times as much a metre as polyester."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::CFR_303, &sources::EU_1007, &sources::JUDGEMENT],
};
