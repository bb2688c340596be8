//! Outerwear, the shape: whether its halves match, and whether hood, cuffs and hem stay where they are set.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Cord, Outer, OuterPair, Picture};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static EDGES: Check = Check {
    key: "edges",
    name: "Front edges, collar, pockets",
    question: "Are front edges level, and collar and pockets a pair?",
    how: "Close it and lay it flat. Compare both front edges at the hem, both collar points or sides of the hood, and the height \
        of both pockets.",
    meaning: "Halves that differ were cut or joined in haste, and no wearing brings them together. A slanting zip or one \
        pocket can be the design: compare what is meant to match.",
    levels: &[
        Level {
            key: "off",
            name: "Off",
            line: "You see it from across the room.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Pair(OuterPair::Off))),
        },
        Level {
            key: "slightly",
            name: "Slightly off",
            line: "You see it once you look.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Pair(OuterPair::Slightly))),
        },
        Level {
            key: "level",
            name: "Level, paired",
            line: "Nothing stands out.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Pair(OuterPair::Level))),
        },
        Level {
            key: "level-crisp",
            name: "Level, and edges crisp",
            line: "Flat thin edges, an even row along them.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Pair(OuterPair::Crisp))),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 3, shares 8/31/44/17 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 0.9, thresholds: &[-3.17, -0.63, 2.15] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static HOOD_CUFF: Check = Check {
    key: "hood-cuff",
    name: "Hood, cuffs and hem",
    question: "Do hood, cuffs and hem adjust and stay put?",
    how: "Draw in hood and hem, close a cuff. Tug gently, wait ten seconds, and see whether they hold. Then try to undo each \
        with one hand.",
    meaning: "What does not close lets wind and rain in; a stop that slips soon hangs open. A plain wool coat has nothing to \
        adjust: choose can’t tell. Elastic cuffs count if they come back.",
    levels: &[
        Level {
            key: "none-work",
            name: "None work",
            line: "Cords run out, tabs do not reach.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Cord(Cord::Nothing))),
        },
        Level {
            key: "slip",
            name: "They slip",
            line: "They let go with a tug.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Cord(Cord::Slips))),
        },
        Level {
            key: "hold",
            name: "They hold",
            line: "They stay; ends may hang out.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Cord(Cord::Holds))),
        },
        Level {
            key: "hold-tidy",
            name: "They hold, tidy, with one hand",
            line: "Stops are sewn down and cords led away.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Cord(Cord::Tidy))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 3, shares 10/34/40/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 0.9, thresholds: &[-2.89, -0.34, 2.24] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Cords at hood or neck of a child’s jacket can catch and strangle. Local rules forbid many of them."),
    sources: &[&sources::JUDGEMENT, &sources::CFR_1120, &sources::EN_14682],
};
