//! Dresses and skirts, the fit: how one is fitted, where cloth and body are compared, and what a tailor can do there. Moves and signs stand
//! in `fit_mirror`.

use crate::catalog::FitTable;
use crate::fit::{
    Against, Allowance, Along, Alteration, BUST, Between, Cost, Cut, EaseRow, HIP, LabelSystem, Lies, Line, Room, SHOULDERS,
    WAIST, Way, sources,
};
use crate::measure::CLOTHS_BEFORE_WASH;

use super::cloth::STRETCH;
use super::fit_mirror::{MOVES, SIGNS};

pub(super) static FIT: FitTable = FitTable {
    cuts: &[&FITTED, &EASY],
    lines: &[&AT_BUST, &AT_SHOULDERS, &AT_WAIST, &AT_HIP],
    cloths: &[&CLOTHS_BEFORE_WASH[8], &CLOTHS_BEFORE_WASH[6], &CLOTHS_BEFORE_WASH[5]],
    give: Some(&STRETCH),
    // Most dress cloth is woven and hardly gives. Judgement.
    usual_give: (4.0, 4.0),
    growth: None,
    allowances: &[&SIDE_SEAM],
    moves: &MOVES,
    signs: &SIGNS,
    // Sizes in numbers differ from country to country; no table of them was at hand.
    labels: &[LabelSystem::LettersByBust],
};

static FITTED: Cut = Cut { key: "fitted", name: "Fitted", says: "Follows bust, waist and hip." };
static EASY: Cut = Cut { key: "easy", name: "Easy", says: "Falls past the waist, or has a full skirt." };

/// Give of woven cloth and of jersey that is meant to be stretched over the body, in per cent, for which the rows stand. Judgement.
const RIGID: f64 = 3.0;
const JERSEY: f64 = 40.0;

static AT_BUST: Line = Line {
    point: "bust",
    against: &[Against::at(&BUST)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&FITTED, RIGID, 3.8, 5.1, &sources::COSTUME_TEXT),
        EaseRow::new(&FITTED, JERSEY, -8.0, 0.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&EASY, RIGID, 5.1, 18.0, &sources::JUDGEMENT),
        EaseRow::new(&EASY, JERSEY, 0.0, 16.0, &sources::JUDGEMENT),
    ],
    // Less, and one cannot breathe deeply.
    floor_cm: 1.5,
    floor_source: &sources::JUDGEMENT,
    yields: true,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 4.0,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&SIDES_IN, &SIDES_OUT],
};

static AT_SHOULDERS: Line = Line {
    point: "shoulders",
    against: &[Against::near(&SHOULDERS, 0.0, 0.7)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&FITTED, RIGID, -2.0, 1.5, &sources::JUDGEMENT),
        EaseRow::new(&EASY, RIGID, -2.0, 6.0, &sources::JUDGEMENT),
    ],
    floor_cm: -5.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 1.0,
    step_source: &sources::JUDGEMENT,
    alterations: &[],
};

static AT_WAIST: Line = Line {
    point: "waist",
    against: &[Against::at(&WAIST)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        // A skirt's 1.3 to 1.9 and a dress's 1.9 to 2.5 together.
        EaseRow::new(&FITTED, RIGID, 1.3, 2.5, &sources::COSTUME_TEXT),
        EaseRow::new(&FITTED, JERSEY, -8.0, 1.0, &sources::JUDGEMENT),
        EaseRow::new(&EASY, RIGID, 2.5, 30.0, &sources::JUDGEMENT),
        EaseRow::new(&EASY, JERSEY, -2.0, 26.0, &sources::JUDGEMENT),
    ],
    // Half the give of woven cloth brings it to about none.
    floor_cm: 1.0,
    floor_source: &sources::JUDGEMENT,
    // A waist of jersey gives with the cloth; a band of woven cloth has hardly any give to lose.
    yields: true,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 4.0,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&SIDES_IN, &SIDES_OUT],
};

static AT_HIP: Line = Line {
    point: "hip",
    against: &[Against::at(&HIP)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&FITTED, RIGID, 5.1, 7.0, &sources::COSTUME_TEXT),
        EaseRow::new(&FITTED, JERSEY, -8.0, 2.0, &sources::JUDGEMENT),
        EaseRow::new(&EASY, RIGID, 7.0, 60.0, &sources::JUDGEMENT),
        EaseRow::new(&EASY, JERSEY, 0.0, 60.0, &sources::JUDGEMENT),
    ],
    // Less, and one cannot sit.
    floor_cm: 2.0,
    floor_source: &sources::JUDGEMENT,
    yields: true,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 4.0,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&SIDES_IN, &SIDES_OUT],
};

pub(super) static SIDE_SEAM: Allowance = Allowance {
    key: "side-seam",
    name: "Side seams",
    how: "Inside, at the side seam. From the stitching to the edge of one side.",
    most_cm: 5.0,
};

static SIDES_IN: Alteration = Alteration {
    key: "sides-in",
    name: "Take the sides in",
    way: Way::In,
    room: Room::UpTo(8.0),
    cost: Cost::Some,
    says: "At both side seams. A lining and a zip at the side make it more work; darts and pockets come nearer to the seam.",
    source: &sources::COMMON_PRACTICE,
};

static SIDES_OUT: Alteration = Alteration {
    key: "sides-out",
    name: "Let the sides out",
    way: Way::Out,
    // Two seams of two edges each: a centimetre at every edge would give four, and the trade counts on two.
    room: Room::Inside { allowance: &SIDE_SEAM, times: 4.0, keep: 1.0, most: 2.0 },
    cost: Cost::Some,
    says: "As far as cloth was left in the seams, 2 cm at most. An old line can show, on silk the old holes too.",
    source: &sources::COMMON_PRACTICE,
};
