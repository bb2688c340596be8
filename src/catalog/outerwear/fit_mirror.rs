//! Outerwear in the mirror: moves to make, and lines that show where cloth is short or over.

use crate::catalog::{Move, Sign};
use crate::fit::{Cure, sources};
use crate::specimen::{Drag, Picture, Pose};

/// Moves of a minute, over what you would wear below, closed. Judgement.
pub(super) static MOVES: [&Move; 3] = [
    &Move {
        key: "reach-forward",
        name: "Reach forward",
        how: "Close it over what you would wear below. Reach both arms forward as if to a wheel, and watch the back and the cuffs.",
        looks: [
            "The back gives; wrists stay covered.",
            "It pulls across the back, or wrists show.",
            "It stops you, or sleeves ride up half the forearm.",
        ],
        cause: "Too little width across back and shoulders for what you wear below.",
        cure: Cure::None,
        needs: None,
        tries: &["chest", "shoulders"],
        weight: 0.7,
        caution: Some("Feel for pins at collar, cuffs and hem before you put it on."),
        drawn: Some(Picture::Pose(Pose::ReachForward)),
        source: &sources::JUDGEMENT,
    },
    &Move {
        key: "arms-up",
        name: "Lift both arms",
        how: "Stretch both arms straight up, then let them hang. See how far the hem rises, and whether it comes back.",
        looks: [
            "The hem rises a little and falls back.",
            "It rises a hand’s width, or stays up.",
            "The waist is bare, or the collar climbs to your ears.",
        ],
        cause: "The armhole is cut low, or the piece is short for you.",
        cure: Cure::None,
        needs: None,
        tries: &["sleeve"],
        weight: 0.5,
        caution: None,
        drawn: Some(Picture::Pose(Pose::ReachUp)),
        source: &sources::JUDGEMENT,
    },
    &Move {
        key: "hood-turn",
        name: "Hood up, look both ways",
        how: "Put the hood up, draw it in, and turn your head to either side. No hood: turn up the collar and close it.",
        looks: [
            "It turns with you; both eyes see.",
            "It covers part of one eye.",
            "You look into cloth, or the collar presses your throat.",
        ],
        cause: "The hood is deep for you, or does not adjust; or the collar is narrow.",
        cure: Cure::None,
        needs: None,
        tries: &[],
        weight: 0.5,
        caution: Some("Let nothing press your throat, and stand still while you cannot see."),
        drawn: Some(Picture::Pose(Pose::TurnHead)),
        source: &sources::JUDGEMENT,
    },
];

/// Lines to look for. Judgement.
pub(super) static SIGNS: [&Sign; 3] = [
    &Sign {
        key: "pulls-at-closing",
        name: "Lines run to the zip or a button",
        looks: "Closed, short lines point at it from both sides, or the chambers are pressed flat.",
        cause: "Too little cloth round the body for what you wear below.",
        cure: Cure::None,
        needs: None,
        mend: "A size larger: hardly any coat has cloth to let out.",
        weight: 0.8,
        drawn: Some(Picture::Drag(Drag::XAtWaist)),
        source: &sources::JUDGEMENT,
    },
    &Sign {
        key: "shoulder-slides",
        name: "The shoulder seam slides off",
        looks: "It lies on the arm, well past the bone at the end of the shoulder.",
        cause: "It is large for you, unless the cut means it.",
        cure: Cure::None,
        needs: None,
        mend: "A size smaller. A dropped shoulder or a raglan may be the cut.",
        weight: 0.5,
        drawn: None,
        source: &sources::JUDGEMENT,
    },
    &Sign {
        key: "back-stands-off",
        name: "It stands off at neck or hem",
        looks: "From the side, a gap shows behind the neck, or the hem swings out at the back.",
        cause: "The back is long or wide for you, and wind gets in.",
        cure: Cure::None,
        needs: None,
        mend: "A cord at hem or hood may draw it in; else another cut.",
        weight: 0.4,
        drawn: None,
        source: &sources::JUDGEMENT,
    },
];
