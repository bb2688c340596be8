//! The tailored jacket, the fit: cuts, where cloth and body are compared, what a tailor can do, moves and lines in the mirror.

use super::fit_table::{FitTable, Move, Sign};
use crate::fit::{
    ARM, Against, Allowance, Along, Alteration, BUST, Between, CHEST, Cost, Cure, Cut, EaseRow, LabelSystem, Lies, Line, Room,
    SHOULDERS, UPPER_ARM, WAIST, Way, sources,
};

pub(in crate::catalog) static FIT: FitTable = FitTable {
    cuts: &[&REGULAR, &SLIM, &OVER_A_SWEATER],
    lines: &[&AT_CHEST, &AT_WAIST, &AT_SHOULDERS, &ALONG_SLEEVE, &AT_UPPER_SLEEVE],
    // Wool on canvas is cleaned, not washed, and no table of what cleaning does was at hand: nothing is said of later.
    cloths: &[],
    give: None,
    // Woven wool gives a little. No line here leans on it: canvas and lining hold the cloth. Judgement.
    usual_give: (4.0, 2.0),
    growth: None,
    allowances: &[&BODY_SEAM, &SLEEVE_END],
    moves: &[&REACH, &ARMS_UP, &BUTTON_AND_SIT],
    signs: &[&CROSS_AT_BUTTON, &COLLAR_OFF, &DENT_BELOW_SHOULDER, &SLEEVE_TURNS],
    labels: &[
        LabelSystem::HalfChest,
        LabelSystem::ChestInches,
        LabelSystem::Centimetres,
        LabelSystem::LettersByChest,
        LabelSystem::LettersByBust,
    ],
};

static REGULAR: Cut = Cut { key: "regular", name: "Regular", says: "Room for a shirt and for reaching." };
static SLIM: Cut = Cut { key: "slim", name: "Slim", says: "Close at chest and waist, over a shirt alone." };
static OVER_A_SWEATER: Cut = Cut { key: "over-sweater", name: "Over a sweater", says: "A layer of knit goes under it." };

/// Ease does not hang on the give of the cloth: one row for each cut.
const ANY_GIVE: f64 = 4.0;
const NO_WEAR: [Between; 2] = [Between::NOTHING, Between::NOTHING];

static AT_CHEST: Line = Line {
    point: "chest",
    against: &[Against::at(&BUST), Against::near(&CHEST, 1.0, 2.0)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&REGULAR, ANY_GIVE, 8.0, 12.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&SLIM, ANY_GIVE, 5.0, 9.0, &sources::JUDGEMENT),
        EaseRow::new(&OVER_A_SWEATER, ANY_GIVE, 11.0, 16.0, &sources::JUDGEMENT),
    ],
    floor_cm: 4.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: NO_WEAR,
    grows: false,
    fails_over_cm: None,
    step_cm: 4.0,
    step_source: &sources::EN_13402_3,
    alterations: &[],
};

static AT_WAIST: Line = Line {
    point: "waist",
    // The button that is closed lies about the waist, not always at it.
    against: &[Against::near(&WAIST, 0.0, 1.5)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&REGULAR, ANY_GIVE, 7.0, 12.0, &sources::JACKET_DRAFT),
        EaseRow::new(&SLIM, ANY_GIVE, 4.0, 8.0, &sources::JUDGEMENT),
        EaseRow::new(&OVER_A_SWEATER, ANY_GIVE, 9.0, 15.0, &sources::JUDGEMENT),
    ],
    floor_cm: 2.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: NO_WEAR,
    grows: false,
    fails_over_cm: None,
    step_cm: 4.0,
    step_source: &sources::EN_13402_3,
    alterations: &[&WAIST_IN, &WAIST_OUT],
};

static AT_SHOULDERS: Line = Line {
    point: "shoulders",
    against: &[Against::at(&SHOULDERS)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&REGULAR, ANY_GIVE, 0.0, 2.5, &sources::JUDGEMENT),
        EaseRow::new(&SLIM, ANY_GIVE, -0.5, 1.5, &sources::JUDGEMENT),
        EaseRow::new(&OVER_A_SWEATER, ANY_GIVE, 0.5, 3.5, &sources::JUDGEMENT),
    ],
    floor_cm: -1.5,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: NO_WEAR,
    grows: false,
    // Cloth that stands out beyond the shoulder drops into a dent below it, and hardly anybody can mend that.
    fails_over_cm: Some(2.0),
    step_cm: 1.0,
    step_source: &sources::JUDGEMENT,
    alterations: &[&SHOULDERS_IN],
};

static ALONG_SLEEVE: Line = Line {
    point: "sleeve",
    against: &[Against::at(&ARM)],
    lies: Lies::Down,
    along: Along::Length,
    // It ends about the wrist bone, a little above it so that a cuff shows, and begins where the shoulder of the cloth ends. Judgement.
    ease: &[
        EaseRow::new(&REGULAR, ANY_GIVE, -2.0, 1.0, &sources::JUDGEMENT),
        EaseRow::new(&SLIM, ANY_GIVE, -2.5, 0.5, &sources::JUDGEMENT),
        EaseRow::new(&OVER_A_SWEATER, ANY_GIVE, -1.5, 1.5, &sources::JUDGEMENT),
    ],
    floor_cm: -4.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: NO_WEAR,
    grows: false,
    fails_over_cm: Some(1.0),
    // A sleeve is altered sooner than a size is changed for it.
    step_cm: 0.0,
    step_source: &sources::JUDGEMENT,
    alterations: &[&SLEEVE_SHORTER, &SLEEVE_LONGER],
};

static AT_UPPER_SLEEVE: Line = Line {
    point: "biceps",
    against: &[Against::at(&UPPER_ARM)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&REGULAR, ANY_GIVE, 5.0, 9.0, &sources::JUDGEMENT),
        EaseRow::new(&SLIM, ANY_GIVE, 3.5, 7.0, &sources::JUDGEMENT),
        EaseRow::new(&OVER_A_SWEATER, ANY_GIVE, 7.0, 12.0, &sources::JUDGEMENT),
    ],
    floor_cm: 2.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: NO_WEAR,
    grows: false,
    fails_over_cm: None,
    step_cm: 1.2,
    step_source: &sources::JUDGEMENT,
    alterations: &[],
};

static BODY_SEAM: Allowance = Allowance {
    key: "body-seam",
    name: "Seams of the body",
    how: "Feel through the lining beside the seam down the back or the side. From the ridge of the stitching to the edge of one side.",
    most_cm: 5.0,
};

static SLEEVE_END: Allowance = Allowance {
    key: "sleeve-end",
    name: "End of the sleeve",
    how: "Feel through the lining. From the end of the sleeve up to the edge of the cloth that is turned in. Buttonholes cut through at the \
          end leave nothing to move: note 0.",
    most_cm: 8.0,
};

static WAIST_IN: Alteration = Alteration {
    key: "waist-in",
    name: "Take the waist in",
    way: Way::In,
    room: Room::UpTo(4.0),
    cost: Cost::Some,
    says: "At the seams of back or side. Pockets come nearer to each other.",
    source: &sources::COMMON_PRACTICE,
};

static WAIST_OUT: Alteration = Alteration {
    key: "waist-out",
    name: "Let the waist out",
    way: Way::Out,
    room: Room::Inside { allowance: &BODY_SEAM, times: 2.0, keep: 1.0, most: 2.0 },
    cost: Cost::Some,
    says: "As far as cloth was left in the seams, 2 cm at most. An old line can show on worn cloth.",
    source: &sources::COMMON_PRACTICE,
};

static SHOULDERS_IN: Alteration = Alteration {
    key: "shoulders-in",
    name: "Narrow the shoulders",
    way: Way::In,
    room: Room::UpTo(1.0),
    cost: Cost::VeryMuch,
    says: "Both sleeves come off and are set in anew, for a centimetre at most.",
    source: &sources::COMMON_PRACTICE,
};

static SLEEVE_SHORTER: Alteration = Alteration {
    key: "sleeve-shorter",
    name: "Shorten the sleeves",
    way: Way::In,
    room: Room::UpTo(2.5),
    cost: Cost::Some,
    says: "From the end, where the buttonholes there are not cut through; else from the shoulder, at a far higher price.",
    source: &sources::COMMON_PRACTICE,
};

static SLEEVE_LONGER: Alteration = Alteration {
    key: "sleeve-longer",
    name: "Lengthen the sleeves",
    way: Way::Out,
    room: Room::Inside { allowance: &SLEEVE_END, times: 1.0, keep: 1.0, most: 2.5 },
    cost: Cost::Some,
    says: "As far as cloth is turned in at the end, 2.5 cm at most, where the buttonholes there are not cut through.",
    source: &sources::COMMON_PRACTICE,
};

// Moves of a minute, and how far a sleeve may ride up: handbook, section 9.7, common practice.
static REACH: Move = Move {
    key: "reach-forward",
    name: "Reach forward",
    how: "Button up. Reach both arms forward as if to a wheel, and watch the back and the sleeve ends.",
    looks: [
        "The back gives; sleeves ride up less than 2 cm (¾ in).",
        "It pulls across the back, or sleeves ride up 2 to 4 cm.",
        "It stops you, a seam cracks, or sleeves ride up more than 4 cm (1½ in).",
    ],
    cause: "Too little width across the back, or an armhole that is cut low.",
    cure: Cure::None,
    needs: None,
    tries: &["chest", "shoulders", "biceps"],
    weight: 0.6,
    caution: None,
    drawn: None,
    source: &sources::COMMON_PRACTICE,
};

static ARMS_UP: Move = Move {
    key: "arms-up",
    name: "Lift both arms",
    how: "Lift both arms to the side as high as your shoulders, then let them fall. See whether the collar stays and the shoulders settle.",
    looks: [
        "The body of the jacket hardly moves.",
        "It lifts, and settles by itself.",
        "All of it is carried up, and collar or shoulders stay out of place.",
    ],
    cause: "The armhole is cut low: it carries the whole jacket with the arm.",
    cure: Cure::None,
    needs: None,
    tries: &["biceps"],
    weight: 0.4,
    caution: None,
    drawn: None,
    source: &sources::COMMON_PRACTICE,
};

static BUTTON_AND_SIT: Move = Move {
    key: "button-and-sit",
    name: "Button up, then sit",
    how: "Close the button that you would close, stand, then sit down. Watch the button.",
    looks: ["It stays at ease.", "Short lines point at it when you sit.", "Lines cross at it, or you must open it to sit."],
    cause: "Too little cloth at waist or hips.",
    cure: Cure::Some,
    needs: Some(&BODY_SEAM),
    tries: &["waist"],
    weight: 0.6,
    caution: Some("Feel for pins at collar, cuffs and hem before you put it on."),
    drawn: None,
    source: &sources::COMMON_PRACTICE,
};

// Causes and cures as the handbook has them, section 9.5 and its data: fit practice, from memory.
static CROSS_AT_BUTTON: Sign = Sign {
    key: "cross-at-button",
    name: "Lines cross at the waist button",
    looks: "Closed, it draws lines from all sides, like an X.",
    cause: "Too little cloth round the waist.",
    cure: Cure::Some,
    needs: Some(&BODY_SEAM),
    mend: "Let the waist out by 1 to 3 cm (⅜ to 1¼ in), if cloth was left in the seams: a usual job.",
    weight: 0.8,
    drawn: None,
    source: &sources::COMMON_PRACTICE,
};

static COLLAR_OFF: Sign = Sign {
    key: "collar-stands-off",
    name: "The collar stands off the neck",
    looks: "A gap shows between the collar of the jacket and that of the shirt.",
    cause: "Back length or the slope of the shoulders is cut for another way of standing.",
    cure: Cure::Costly,
    needs: None,
    mend: "A tailor takes collar and neck apart and sets them anew: a very large job. Try another cut first.",
    weight: 0.7,
    drawn: None,
    source: &sources::COMMON_PRACTICE,
};

static DENT_BELOW_SHOULDER: Sign = Sign {
    key: "dent-below-shoulder",
    name: "A dent below the sleeve head",
    looks: "At the top of the sleeve the cloth falls in, below the end of the pad.",
    cause: "Sleeve or pad is wrong for this shoulder, or the shoulders are wide.",
    cure: Cure::None,
    needs: None,
    mend: "Hardly anybody can mend it: another size or another cut.",
    weight: 0.7,
    drawn: None,
    source: &sources::COMMON_PRACTICE,
};

static SLEEVE_TURNS: Sign = Sign {
    key: "sleeve-turns",
    name: "Lines wind round the sleeve",
    looks: "With the arm hanging, slanting lines run round it from the shoulder down.",
    cause: "The sleeve is set in for arms that hang further forward or back.",
    cure: Cure::Costly,
    needs: None,
    mend: "A tailor takes the sleeve out and turns it in its armhole: a large job.",
    weight: 0.6,
    drawn: None,
    source: &sources::COMMON_PRACTICE,
};
