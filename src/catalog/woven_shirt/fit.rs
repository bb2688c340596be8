//! Shirts, the fit: how one is fitted, where cloth and body are compared, and what a tailor can do there. Moves and signs stand in
//! `fit_mirror`.

use crate::catalog::FitTable;
use crate::fit::{
    ARM, Against, Along, Alteration, BUST, Between, CHEST, Cost, Cut, EaseRow, LabelSystem, Lies, Line, NECK, Room, SHOULDERS,
    Way, sources,
};
use crate::measure::CLOTHS_BEFORE_WASH;

use super::fit_mirror::{MOVES, SIGNS};

pub(super) static FIT: FitTable = FitTable {
    cuts: &[&CLASSIC, &FITTED, &RELAXED],
    lines: &[&AT_NECK, &AT_SHOULDERS, &AT_CHEST, &ALONG_ARM],
    cloths: &[&CLOTHS_BEFORE_WASH[6], &CLOTHS_BEFORE_WASH[8]],
    give: None,
    // Woven shirting hardly gives. Judgement.
    usual_give: (3.0, 2.0),
    growth: None,
    allowances: &[],
    moves: &MOVES,
    signs: &SIGNS,
    labels: &[LabelSystem::LettersByChest, LabelSystem::LettersByBust, LabelSystem::Centimetres, LabelSystem::ChestInches],
};

static FITTED: Cut = Cut { key: "fitted", name: "Fitted", says: "Follows the chest and waist." };
static CLASSIC: Cut = Cut { key: "classic", name: "Classic", says: "Some room at the chest, tucks in without much over." };
static RELAXED: Cut = Cut { key: "relaxed", name: "Relaxed", says: "Stands off the body; may hang out." };

/// Shirting as good as rigid.
const RIGID: f64 = 3.0;

static AT_NECK: Line = Line {
    point: "neck",
    against: &[Against::at(&NECK)],
    lies: Lies::Round,
    along: Along::Width,
    // A finger or two between collar and neck. Judgement.
    ease: &[
        EaseRow::new(&FITTED, RIGID, 0.5, 2.0, &sources::JUDGEMENT),
        EaseRow::new(&CLASSIC, RIGID, 1.0, 2.5, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, RIGID, 1.0, 4.0, &sources::JUDGEMENT),
    ],
    floor_cm: 0.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    // Worn open, a wide collar is taste.
    fails_over_cm: None,
    step_cm: 1.0,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&BUTTON_OUT],
};

static AT_SHOULDERS: Line = Line {
    point: "shoulders",
    // The seam lies at the bone or a little beyond it. Judgement.
    against: &[Against::near(&SHOULDERS, 0.0, 0.7)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&FITTED, RIGID, 0.0, 2.0, &sources::JUDGEMENT),
        EaseRow::new(&CLASSIC, RIGID, 1.0, 4.0, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, RIGID, 2.0, 10.0, &sources::JUDGEMENT),
    ],
    floor_cm: -1.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 1.5,
    step_source: &sources::JUDGEMENT,
    alterations: &[],
};

static AT_CHEST: Line = Line {
    point: "chest",
    against: &[Against::at(&CHEST), Against::near(&BUST, 0.0, 1.0)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&FITTED, RIGID, 3.8, 6.4, &sources::COSTUME_TEXT),
        EaseRow::new(&CLASSIC, RIGID, 6.4, 7.6, &sources::COSTUME_TEXT),
        EaseRow::new(&RELAXED, RIGID, 7.6, 18.0, &sources::JUDGEMENT),
    ],
    floor_cm: 2.0,
    floor_source: &sources::JUDGEMENT,
    yields: true,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: None,
    step_cm: 5.1,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&DARTS],
};

static ALONG_ARM: Line = Line {
    point: "sleeve",
    // The body is measured over a bent elbow to the wrist bone; the cuff covers that bone. Where the seam lies beyond the shoulder, the
    // sleeve is so much shorter: that is in the doubt. Judgement.
    against: &[Against::near(&ARM, 0.0, 1.0)],
    lies: Lies::Down,
    along: Along::Length,
    ease: &[
        EaseRow::new(&FITTED, RIGID, 0.0, 3.0, &sources::JUDGEMENT),
        EaseRow::new(&CLASSIC, RIGID, 0.0, 4.0, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, RIGID, -3.0, 5.0, &sources::JUDGEMENT),
    ],
    floor_cm: -4.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: Some(4.0),
    step_cm: 1.0,
    step_source: &sources::JUDGEMENT,
    alterations: &[&SLEEVE_UP],
};

static BUTTON_OUT: Alteration = Alteration {
    key: "collar-button",
    name: "Move the collar button",
    way: Way::Out,
    room: Room::UpTo(1.0),
    cost: Cost::Little,
    says: "As far as the band reaches; more shows as a gap under the tie.",
    source: &sources::JUDGEMENT,
};

static DARTS: Alteration = Alteration {
    key: "darts",
    name: "Put darts in the back, or take the sides in",
    way: Way::In,
    room: Room::UpTo(8.0),
    cost: Cost::Little,
    says: "Darts run from below the shoulder blades to the waist. On stripes and checks they show.",
    source: &sources::COMMON_PRACTICE,
};

static SLEEVE_UP: Alteration = Alteration {
    key: "sleeve-up",
    name: "Shorten the sleeves",
    way: Way::In,
    room: Room::UpTo(5.0),
    cost: Cost::Much,
    says: "The cuff is taken off and set again, so the slit above it grows short. There is nothing to let out.",
    source: &sources::JUDGEMENT,
};
