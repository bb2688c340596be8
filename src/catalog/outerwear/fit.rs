//! Outerwear, the fit: how one is fitted, where cloth and body are compared, and what a tailor can do there. Moves and signs stand in
//! `fit_mirror`.

use crate::catalog::FitTable;
use crate::fit::{
    ARM, Against, Allowance, Along, Alteration, BUST, Between, CHEST, Cost, Cut, EaseRow, LabelSystem, Lies, Line, Room,
    SHOULDERS, Way, sources,
};

use super::fit_mirror::{MOVES, SIGNS};

pub(super) static FIT: FitTable = FitTable {
    cuts: &[&REGULAR, &OVER_JACKET, &LOOSE],
    lines: &[&AT_CHEST, &AT_SHOULDERS, &ALONG_SLEEVE],
    // Coats are cleaned or washed cool, and no table of what that does to shells was at hand: nothing is said of later.
    cloths: &[],
    give: None,
    // Woven outer cloth hardly gives. No line leans on it. Judgement.
    usual_give: (3.0, 2.0),
    growth: None,
    allowances: &[&SLEEVE_END],
    moves: &MOVES,
    signs: &SIGNS,
    labels: &[LabelSystem::LettersByChest, LabelSystem::LettersByBust, LabelSystem::Centimetres, LabelSystem::ChestInches],
};

static REGULAR: Cut = Cut { key: "regular", name: "Regular", says: "Room for a shirt and a sweater." };
static OVER_JACKET: Cut = Cut { key: "over-jacket", name: "Over a jacket", says: "A tailored jacket goes under it." };
static LOOSE: Cut = Cut { key: "loose", name: "Loose fit", says: "Stands off all round; shoulders may drop." };

/// Ease does not hang on the give of the cloth: one row for each cut.
const ANY_GIVE: f64 = 3.0;

static AT_CHEST: Line = Line {
    point: "chest",
    against: &[Against::at(&CHEST), Against::near(&BUST, 0.0, 1.0)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&REGULAR, ANY_GIVE, 12.0, 20.0, &sources::JUDGEMENT),
        EaseRow::new(&OVER_JACKET, ANY_GIVE, 14.0, 22.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&LOOSE, ANY_GIVE, 20.0, 40.0, &sources::JUDGEMENT),
    ],
    // Less, and a filling is pressed flat and cold.
    floor_cm: 8.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
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
        EaseRow::new(&REGULAR, ANY_GIVE, 1.0, 5.0, &sources::JUDGEMENT),
        EaseRow::new(&OVER_JACKET, ANY_GIVE, 2.0, 5.0, &sources::JUDGEMENT),
        EaseRow::new(&LOOSE, ANY_GIVE, 4.0, 20.0, &sources::JUDGEMENT),
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

static ALONG_SLEEVE: Line = Line {
    point: "sleeve",
    // It covers what is worn below and ends past the wrist bone. Judgement.
    against: &[Against::near(&ARM, 0.0, 1.0)],
    lies: Lies::Down,
    along: Along::Length,
    ease: &[
        EaseRow::new(&REGULAR, ANY_GIVE, 0.0, 5.0, &sources::JUDGEMENT),
        EaseRow::new(&OVER_JACKET, ANY_GIVE, 0.0, 4.0, &sources::JUDGEMENT),
        // The shoulder has dropped, so less sleeve reaches as far.
        EaseRow::new(&LOOSE, ANY_GIVE, -8.0, 4.0, &sources::JUDGEMENT),
    ],
    floor_cm: -9.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: Some(4.0),
    step_cm: 1.5,
    step_source: &sources::JUDGEMENT,
    alterations: &[&SLEEVE_SHORTER, &SLEEVE_LONGER],
};

static SLEEVE_END: Allowance = Allowance {
    key: "sleeve-end",
    name: "Sleeve ends",
    how: "Feel at the end of a plain sleeve how far its cloth is turned in.",
    most_cm: 8.0,
};

static SLEEVE_SHORTER: Alteration = Alteration {
    key: "sleeve-shorter",
    name: "Shorten the sleeves",
    way: Way::In,
    room: Room::UpTo(2.5),
    cost: Cost::Some,
    says: "Plain ends of a wool coat are easy. Tabs, zips and elastic must come off first; glued or welded ends are left alone.",
    source: &sources::COMMON_PRACTICE,
};

static SLEEVE_LONGER: Alteration = Alteration {
    key: "sleeve-longer",
    name: "Lengthen the sleeves",
    way: Way::Out,
    room: Room::Inside { allowance: &SLEEVE_END, times: 1.0, keep: 1.0, most: 2.5 },
    cost: Cost::Some,
    says: "As far as cloth is turned in, 2.5 cm at most. The old edge can show; on rain cloth its holes let water in.",
    source: &sources::COMMON_PRACTICE,
};
