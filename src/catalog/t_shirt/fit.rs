//! T-shirts, the fit: how one is fitted, where cloth and body are compared, moves to make and lines to look for.

use crate::catalog::{FitTable, Move, Sign};
use crate::fit::{
    Against, Along, Alteration, BUST, Between, CHEST, Cost, Cure, Cut, EaseRow, LabelSystem, Lies, Line, Room, SHOULDERS,
    UPPER_ARM, Way, sources,
};
use crate::measure::CLOTHS_BEFORE_WASH;

use super::cloth::RETURN;
use crate::specimen::{Drag, Picture, Pose};

pub(super) static FIT: FitTable = FitTable {
    cuts: &[&REGULAR, &SLIM, &LOOSE],
    lines: &[&AT_CHEST, &AT_SHOULDERS, &AT_SLEEVE],
    cloths: &[&CLOTHS_BEFORE_WASH[5], &CLOTHS_BEFORE_WASH[8]],
    // Jersey gives across by itself. Nobody pulled it: judgement.
    give: None,
    usual_give: (30.0, 12.0),
    growth: Some(&RETURN),
    allowances: &[],
    moves: &MOVES,
    signs: &SIGNS,
    labels: &[LabelSystem::LettersByChest, LabelSystem::LettersByBust, LabelSystem::Centimetres],
};

static SLIM: Cut = Cut { key: "slim", name: "Slim", says: "Touches chest and upper arm." };
static REGULAR: Cut = Cut { key: "regular", name: "Regular", says: "Falls straight from the chest with some room." };
static LOOSE: Cut = Cut { key: "loose", name: "Loose fit", says: "Stands off; shoulders may drop." };

/// Give of plain jersey across, in per cent, for which the rows stand. Judgement.
const JERSEY: f64 = 30.0;

static AT_CHEST: Line = Line {
    point: "chest",
    against: &[Against::at(&CHEST), Against::near(&BUST, 0.0, 1.0)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&SLIM, JERSEY, 0.0, 6.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&REGULAR, JERSEY, 6.0, 12.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&LOOSE, JERSEY, 12.0, 26.0, &sources::JUDGEMENT),
    ],
    floor_cm: 0.0,
    floor_source: &sources::JUDGEMENT,
    yields: true,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: true,
    fails_over_cm: None,
    step_cm: 5.1,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&SIDES_IN],
};

static AT_SHOULDERS: Line = Line {
    point: "shoulders",
    against: &[Against::near(&SHOULDERS, 0.0, 0.7)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&SLIM, JERSEY, -2.0, 1.5, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, JERSEY, 0.0, 4.0, &sources::JUDGEMENT),
        EaseRow::new(&LOOSE, JERSEY, 3.0, 14.0, &sources::JUDGEMENT),
    ],
    floor_cm: -3.0,
    floor_source: &sources::JUDGEMENT,
    // Seams and tape hold it.
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 1.5,
    step_source: &sources::JUDGEMENT,
    alterations: &[&SHOULDERS_IN],
};

static AT_SLEEVE: Line = Line {
    point: "cuff",
    // Where a short sleeve ends the arm is a little smaller than at its fullest. Judgement.
    against: &[Against::near(&UPPER_ARM, -0.5, 0.8)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&SLIM, JERSEY, -1.0, 4.0, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, JERSEY, 3.0, 10.0, &sources::JUDGEMENT),
        EaseRow::new(&LOOSE, JERSEY, 6.0, 20.0, &sources::JUDGEMENT),
    ],
    floor_cm: 0.0,
    floor_source: &sources::JUDGEMENT,
    yields: true,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 1.5,
    step_source: &sources::JUDGEMENT,
    alterations: &[&SLEEVES_IN],
};

// The handbook has no row for T-shirts. Sides in go by its row for dresses (in any, cost 2 of 5; common practice); how far, and the others,
// are judgement. Nothing can be let out: edges are trimmed to the wrapping thread.
static SIDES_IN: Alteration = Alteration {
    key: "sides-in",
    name: "Take the sides in",
    way: Way::In,
    room: Room::UpTo(8.0),
    cost: Cost::Some,
    says: "From hem to underarm and into the sleeve, with a seam that stretches. A body knitted as a tube gets its first side seams.",
    source: &sources::COMMON_PRACTICE,
};

static SHOULDERS_IN: Alteration = Alteration {
    key: "shoulders-in",
    name: "Set the sleeves in anew",
    way: Way::In,
    room: Room::UpTo(3.0),
    cost: Cost::VeryMuch,
    says: "Both sleeves come off and the shoulder is cut narrower. It can cost more than the piece.",
    source: &sources::JUDGEMENT,
};

static SLEEVES_IN: Alteration = Alteration {
    key: "sleeves-in",
    name: "Narrow the sleeves",
    way: Way::In,
    room: Room::UpTo(5.0),
    cost: Cost::Some,
    says: "At the seam below the arm; the hem of the sleeve is opened and turned again.",
    source: &sources::JUDGEMENT,
};

/// Moves of a minute. Judgement.
static MOVES: [&Move; 3] = [
    &Move {
        key: "over-the-head",
        name: "Pull it over your head",
        how: "Put it on without forcing it. Then look at the neck in the mirror.",
        looks: [
            "The neck passes and lies flat again.",
            "It is tight, or waves a little.",
            "It hardly passes, or stays stretched.",
        ],
        cause: "The neck is small for this head, or its rib does not come back.",
        cure: Cure::None,
        needs: None,
        tries: &[],
        weight: 0.7,
        caution: Some("Take glasses and earrings off first. New goods can hold pins: feel the neck and the hems from outside."),
        drawn: Some(Picture::Pose(Pose::OverTheHead)),
        source: &sources::JUDGEMENT,
    },
    &Move {
        key: "reach-up",
        name: "Reach up",
        how: "Stretch both arms straight up, then let them hang. See where hem and shoulders settle.",
        looks: [
            "The waist stays covered, all falls back.",
            "The hem rises to the band.",
            "It stays up, or pulls under the arms.",
        ],
        cause: "It is short for you, or tight at chest and armhole.",
        cure: Cure::None,
        needs: None,
        tries: &["chest"],
        weight: 0.6,
        caution: None,
        drawn: Some(Picture::Pose(Pose::ReachUp)),
        source: &sources::JUDGEMENT,
    },
    &Move {
        key: "hug",
        name: "Hug yourself",
        how: "Cross your arms and lay each hand on the other shoulder. Feel back and sleeves.",
        looks: ["The cloth goes along.", "It pulls across the back.", "A sleeve or the back stops you."],
        cause: "Too little cloth across back or arm.",
        cure: Cure::None,
        needs: None,
        tries: &["chest", "cuff"],
        weight: 0.7,
        caution: None,
        drawn: Some(Picture::Pose(Pose::Hug)),
        source: &sources::JUDGEMENT,
    },
];

/// Lines to look for. The handbook has none for T-shirts: judgement. That a hem goes up by any length, as a small job, is its row on hems
/// (common practice).
static SIGNS: [&Sign; 4] = [
    &Sign {
        key: "lines-across-chest",
        name: "Level lines across the chest",
        looks: "They run from armhole to armhole while your arms hang.",
        cause: "Too little cloth round the chest.",
        cure: Cure::None,
        needs: None,
        mend: "A size larger: there is no cloth inside to let out.",
        weight: 0.7,
        drawn: None,
        source: &sources::JUDGEMENT,
    },
    &Sign {
        key: "shoulder-slides",
        name: "The shoulder seam lies on the arm",
        looks: "It has slid well past the bone at the end of the shoulder.",
        cause: "It is large for you, unless the cut means it.",
        cure: Cure::None,
        needs: None,
        mend: "A size smaller. A dropped shoulder may be the cut, and moving the seam is a very large job.",
        weight: 0.4,
        drawn: Some(Picture::Drag(Drag::ShoulderSlides)),
        source: &sources::JUDGEMENT,
    },
    &Sign {
        key: "hem-too-long",
        name: "The hem hangs low or bunches",
        looks: "Untucked it covers the seat, or it lies in rings at the hip.",
        cause: "The body is long for you, unless the cut means it.",
        cure: Cure::Easy,
        needs: None,
        mend: "A tailor turns it up by any length, a small job. Ask for a hem that stretches. First see what washing takes.",
        weight: 0.3,
        drawn: None,
        source: &sources::COMMON_PRACTICE,
    },
    &Sign {
        key: "side-seam-front",
        name: "A side seam lies on the front",
        looks: "It walks to the middle towards the hem.",
        cause: "The cloth twists. It grows with washing.",
        cure: Cure::None,
        needs: None,
        mend: "Nothing cures it: try another piece of the same style.",
        weight: 0.5,
        drawn: None,
        source: &sources::JUDGEMENT,
    },
];
