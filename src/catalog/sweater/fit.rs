//! Sweaters, the fit: how one is fitted, where cloth and body are compared, moves to make and lines to look for.

use crate::catalog::{FitTable, Move, Sign};
use crate::fit::{ARM, Against, Along, BUST, Between, CHEST, Cure, Cut, EaseRow, LabelSystem, Lies, Line, SHOULDERS, sources};
use crate::measure::CLOTHS_BEFORE_WASH;

pub(super) static FIT: FitTable = FitTable {
    cuts: &[&REGULAR, &CLOSE, &LOOSE],
    lines: &[&AT_CHEST, &AT_SHOULDERS, &ALONG_SLEEVE],
    cloths: &[&CLOTHS_BEFORE_WASH[7], &CLOTHS_BEFORE_WASH[5]],
    give: None,
    // Plain knitting gives more than jersey. Nobody pulled it: judgement.
    usual_give: (40.0, 15.0),
    growth: None,
    allowances: &[],
    moves: &MOVES,
    signs: &SIGNS,
    labels: &[LabelSystem::LettersByChest, LabelSystem::LettersByBust, LabelSystem::Centimetres, LabelSystem::ChestInches],
};

static CLOSE: Cut = Cut { key: "close", name: "Close", says: "Lies on chest and arm and stretches over them." };
static REGULAR: Cut = Cut { key: "regular", name: "Regular", says: "Room for a shirt beneath." };
static LOOSE: Cut = Cut { key: "loose", name: "Loose fit", says: "Stands off; shoulders may drop." };

/// Give of plain knitting across, in per cent, for which the rows stand. Judgement.
const KNITTING: f64 = 40.0;

static AT_CHEST: Line = Line {
    point: "chest",
    against: &[Against::at(&CHEST), Against::near(&BUST, 0.0, 1.0)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&CLOSE, KNITTING, -6.0, 4.0, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, KNITTING, 4.0, 12.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&LOOSE, KNITTING, 12.0, 30.0, &sources::JUDGEMENT),
    ],
    floor_cm: 0.0,
    floor_source: &sources::JUDGEMENT,
    yields: true,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 5.1,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[],
};

static AT_SHOULDERS: Line = Line {
    point: "shoulders",
    against: &[Against::near(&SHOULDERS, 0.0, 0.7)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&CLOSE, KNITTING, -3.0, 1.5, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, KNITTING, -1.0, 4.0, &sources::JUDGEMENT),
        EaseRow::new(&LOOSE, KNITTING, 3.0, 18.0, &sources::JUDGEMENT),
    ],
    floor_cm: -4.0,
    floor_source: &sources::JUDGEMENT,
    // A stay may hold it.
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 1.5,
    step_source: &sources::JUDGEMENT,
    alterations: &[],
};

static ALONG_SLEEVE: Line = Line {
    point: "sleeve",
    // The cuff ends at the wrist bone or a little below it. Judgement.
    against: &[Against::near(&ARM, 0.0, 1.0)],
    lies: Lies::Down,
    along: Along::Length,
    ease: &[
        EaseRow::new(&CLOSE, KNITTING, -1.0, 3.0, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, KNITTING, -1.0, 4.0, &sources::JUDGEMENT),
        // The shoulder has dropped, so less sleeve reaches as far.
        EaseRow::new(&LOOSE, KNITTING, -9.0, 3.0, &sources::JUDGEMENT),
    ],
    // Above that it ends half way up the forearm.
    floor_cm: -9.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    // A rib holds above the hand.
    fails_over_cm: Some(9.0),
    step_cm: 1.5,
    step_source: &sources::JUDGEMENT,
    alterations: &[],
};

/// Moves of a minute. Judgement.
static MOVES: [&Move; 3] = [
    &Move {
        key: "over-the-head",
        name: "Pull it over your head",
        how: "Put it on without forcing it, or button it. Then look at the neck in the mirror.",
        looks: ["The neck passes and closes again.", "It is tight, or stands away a little.", "It hardly passes, or stays wide."],
        cause: "The neck is small for this head, or its rib does not come back.",
        cure: Cure::None,
        needs: None,
        tries: &[],
        weight: 0.7,
        caution: Some("Feel for pins first. Take glasses and earrings off: they catch in loops."),
        drawn: None,
        source: &sources::JUDGEMENT,
    },
    &Move {
        key: "reach-up",
        name: "Reach up",
        how: "Stretch both arms straight up, then let them hang. See where hem and cuffs settle.",
        looks: [
            "Hem and cuffs fall back by themselves.",
            "The hem stays up a little.",
            "The waist is bare, or it stays where it went.",
        ],
        cause: "It is short for you, or tight at chest and armhole.",
        cure: Cure::None,
        needs: None,
        tries: &["chest", "sleeve"],
        weight: 0.6,
        caution: None,
        drawn: None,
        source: &sources::JUDGEMENT,
    },
    &Move {
        key: "push-up-sleeves",
        name: "Push the sleeves up",
        how: "Push both sleeves to the elbow, bend your arms ten times, and pull them down again.",
        looks: ["They stay up, and narrow again.", "They slide down slowly.", "They fall at once, or stay wide."],
        cause: "Cuffs are slack, or the sleeve is narrow for this arm.",
        cure: Cure::None,
        needs: None,
        tries: &[],
        weight: 0.4,
        caution: Some("Ask before you push up sleeves that are not yours."),
        drawn: None,
        source: &sources::JUDGEMENT,
    },
];

/// Lines to look for. The handbook has the shoulder that slides (fit practice, from memory); the others are judgement.
static SIGNS: [&Sign; 3] = [
    &Sign {
        key: "shoulder-slides",
        name: "The shoulder seam slides off",
        looks: "It lies on the arm, well past the bone at the end of the shoulder.",
        cause: "It is large for you, unless the cut means it.",
        cure: Cure::None,
        needs: None,
        mend: "A size smaller. A dropped shoulder may be the cut.",
        weight: 0.5,
        drawn: None,
        source: &sources::COMMON_PRACTICE,
    },
    &Sign {
        key: "loops-open",
        name: "Loops open across the chest",
        looks: "Light or the shirt beneath shows between loops, and columns bow apart.",
        cause: "Too little cloth round the chest.",
        cure: Cure::None,
        needs: None,
        mend: "A size larger. It will also wear out sooner there.",
        weight: 0.7,
        drawn: None,
        source: &sources::JUDGEMENT,
    },
    &Sign {
        key: "hem-rolls-up",
        name: "The hem climbs and bags above",
        looks: "The rib grips the hip and cloth hangs over it in a fold.",
        cause: "The rib is narrow for your hip, or the body long for you.",
        cure: Cure::None,
        needs: None,
        mend: "Another length or a cut without a tight rib.",
        weight: 0.5,
        drawn: None,
        source: &sources::JUDGEMENT,
    },
];
