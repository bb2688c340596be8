//! Second-hand, what came onto the cloth or went out of it: stains, moths and damp, colour.

use super::Condition;
use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{ColourPair, Picture, SecondHand, Stained, Stored};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static STAINS: Condition = Condition {
    check: Check {
        key: "worn-stains",
        name: "Stains on it",
        question: "Which stains are there, and would they come out?",
        how: "Hold it to daylight, face and inside, also where skin and food come near. Rub a mark lightly with a dry \
            finger: does any of it lift?",
        meaning: "What has been washed and dried in is mostly there for good; what is fresh may come out. What lifts under \
            a finger is dirt. Looking alone promises neither.",
        levels: &[
            Level {
                key: "set",
                name: "Set, in plain view",
                line: "Sharp edge or yellowed, in the cloth itself.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Stained(Stained::Set))),
            },
            Level {
                key: "fresh",
                name: "In plain view, may come out",
                line: "It lies on top, or some of it lifts.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Stained(Stained::Fresh))),
            },
            Level {
                key: "hidden",
                name: "Small or out of sight",
                line: "Seen only when you look for it.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Stained(Stained::Hidden))),
            },
            Level {
                key: "none",
                name: "No stain",
                line: "Clean on both sides in daylight.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Stained(Stained::None))),
            },
        ],
        seconds: 10,
        stage: Stage::InHand,
        aspect: Aspect::Finish,
        // Power 4, shares 9/14/17/60 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Finish, slope: 1.2, thresholds: &[-2.52, -1.39, -0.48] }),
        instruments: &[],
        asked_when: None,
        caution: None,
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "Dye it, cover it or wear it so. Do not count on washing it out.",
        "Worth one wash as the label allows. Keep heat off until it is gone: heat sets it.",
        "Leave it: nobody will search as you did.",
        "",
    ],
};

pub(in crate::catalog) static KEPT: Condition = Condition {
    check: Check {
        key: "worn-kept",
        name: "Moths, mould and smell",
        question: "Does it show or smell of moths, mould or damp?",
        how: "Bring it to your nose, lightly at first. Then look under collar and cuffs and along seams for webs, \
            small holes and specks.",
        meaning: "Holes stay; grubs and mould go on, and spread to what hangs beside them. Smoke and stale cupboards \
            mostly air out; damp and old sweat often do not.",
        levels: &[
            Level {
                key: "living",
                name: "Webs, grubs or mould",
                line: "Silky webs, grubs, or grey and black specks.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Stored(Stored::Living))),
            },
            Level {
                key: "holes",
                name: "Small holes or tide lines, dry",
                line: "Nothing lives there now.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Stored(Stored::Holes))),
            },
            Level {
                key: "smell",
                name: "A smell alone",
                line: "Smoke, scent, sweat or cupboard; nothing to see.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Stored(Stored::Smell))),
            },
            Level {
                key: "clean",
                name: "Clean and fresh",
                line: "Nothing to see and nothing to smell.",
                spans: &[],
                drawn: Some(Picture::SecondHand(SecondHand::Stored(Stored::Clean))),
            },
        ],
        seconds: 8,
        stage: Stage::InHand,
        aspect: Aspect::Finish,
        // Power 3, shares 4/8/30/58 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Finish, slope: 0.9, thresholds: &[-3.95, -2.65, -0.46] }),
        instruments: &[],
        asked_when: None,
        caution: Some(
            "Mould and insects can harm you and your wardrobe. Do not breathe in close; carry it home in a shut bag, \
            and clean it first.",
        ),
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "Leave it, or have it treated before it comes near other clothes.",
        "A few holes can be drawn shut from behind; many are an evening’s work.",
        "Air it some days, then wash it as the label allows. What is left then mostly stays.",
        "",
    ],
};

pub(in crate::catalog) static COLOUR: Condition = Condition {
    check: Check {
        key: "worn-colour",
        name: "Colour that is left",
        question: "How much of its colour has it kept?",
        how: "Turn up a hem, or look under a collar or flap where no light came. Lay that beside the outside. Then \
            look at folds and shoulders for streaks.",
        meaning: "Light and washing take colour, first where it is exposed. Faded cloth can be sound, and fading can be \
            meant, as on washed denim. Streaks do not even out.",
        levels: &[
            Level {
                key: "much-paler",
                name: "Much paler, or streaked",
                line: "Seen from across the room.",
                spans: &[],
                drawn: Some(Picture::ColourPair(ColourPair { grade: 2 })),
            },
            Level {
                key: "paler",
                name: "Paler",
                line: "Plain when laid side by side.",
                spans: &[],
                drawn: Some(Picture::ColourPair(ColourPair { grade: 3 })),
            },
            Level {
                key: "trace",
                name: "A trace paler",
                line: "You have to look for it.",
                spans: &[],
                drawn: Some(Picture::ColourPair(ColourPair { grade: 4 })),
            },
            Level {
                key: "kept",
                name: "As it was",
                line: "No difference where light never came.",
                spans: &[],
                drawn: Some(Picture::ColourPair(ColourPair { grade: 5 })),
            },
        ],
        seconds: 10,
        stage: Stage::InHand,
        aspect: Aspect::Finish,
        // Power 3, shares 8/26/38/28 of 100 second-hand pieces: judgement.
        speaks: Speaks::Left(Curve { group: Group::Finish, slope: 0.9, thresholds: &[-3.17, -0.93, 1.32] }),
        instruments: &[],
        asked_when: None,
        caution: None,
        sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
    },
    mends: &[
        "Dye can even it where fibre and label allow; sewing thread often keeps its old colour.",
        "",
        "Wash it inside out and dry it in the shade, and it keeps longer.",
        "",
    ],
};
