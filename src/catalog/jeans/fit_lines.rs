//! Jeans, the fit: where cloth and body are compared, and what a tailor can do there.

use crate::fit::{
    Against, Allowance, Along, Alteration, BAND, Between, Cost, Cut, EaseRow, HIP, INSIDE_LEG, Lies, Line, Room, THIGH, WAIST,
    Way, sources,
};

pub(super) static SLIM: Cut = Cut { key: "slim", name: "Slim", says: "Follows the leg; the seat is filled." };
pub(super) static REGULAR: Cut = Cut { key: "regular", name: "Regular", says: "Some room at seat and thigh, straight below." };
pub(super) static RELAXED: Cut = Cut { key: "relaxed", name: "Relaxed", says: "Stands off seat and thigh." };

/// Rigid cloth, plain stretch and super stretch, as the ease tables part them: the middles of under 10, 20 to 30 and over 30 per cent.
const RIGID: f64 = 5.0;
const STRETCHY: f64 = 25.0;
const SUPER: f64 = 37.0;

pub(super) static AT_WAIST: Line = Line {
    point: "waist",
    // The band of most jeans lies below the waist, where the body is mostly some centimetres larger. Judgement.
    against: &[Against::at(&BAND), Against::near(&WAIST, 4.0, 3.0)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&SLIM, RIGID, -2.0, 2.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&REGULAR, RIGID, -2.0, 2.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&RELAXED, RIGID, -2.0, 2.0, &sources::COMMON_PRACTICE),
    ],
    floor_cm: -3.0,
    floor_source: &sources::JUDGEMENT,
    // The band is doubled and cut along the cloth: it gives little, whatever the cloth does.
    yields: false,
    // Rigid cloth comes back 13 to 25 mm at the waist (common practice); what was washed before, less (judgement).
    wear_cm: [Between { low: 1.3, high: 2.5 }, Between { low: 0.0, high: 1.0 }],
    grows: false,
    fails_over_cm: Some(2.0),
    step_cm: 2.54,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&WAIST_IN, &WAIST_OUT_BY_SEAT, &WAIST_OUT],
};

pub(super) static AT_HIP: Line = Line {
    point: "hip",
    against: &[Against::at(&HIP)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&SLIM, RIGID, 0.0, 4.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&SLIM, STRETCHY, -6.0, 2.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&SLIM, SUPER, -14.0, -4.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&REGULAR, RIGID, 4.0, 8.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&REGULAR, STRETCHY, -2.0, 6.0, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, SUPER, -9.0, 1.0, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, RIGID, 8.0, 14.0, &sources::COMMON_PRACTICE),
        EaseRow::new(&RELAXED, STRETCHY, 3.0, 11.0, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, SUPER, -3.0, 7.0, &sources::JUDGEMENT),
    ],
    floor_cm: 0.0,
    floor_source: &sources::JUDGEMENT,
    yields: true,
    // Judgement, beside what is known of the waist.
    wear_cm: [Between { low: 0.5, high: 2.0 }, Between { low: 0.0, high: 1.0 }],
    grows: true,
    fails_over_cm: None,
    step_cm: 2.54,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&SEAT_OUT, &SEAT_IN],
};

pub(super) static AT_THIGH: Line = Line {
    point: "thigh",
    against: &[Against::near(&THIGH, 0.0, 0.5)],
    lies: Lies::Round,
    along: Along::Width,
    ease: &[
        EaseRow::new(&SLIM, RIGID, 1.0, 4.0, &sources::JUDGEMENT),
        EaseRow::new(&SLIM, STRETCHY, -4.0, 2.0, &sources::JUDGEMENT),
        EaseRow::new(&SLIM, SUPER, -8.0, -1.0, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, RIGID, 2.5, 5.0, &sources::COSTUME_TEXT),
        EaseRow::new(&REGULAR, STRETCHY, -1.0, 5.0, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, SUPER, -5.0, 3.0, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, RIGID, 5.0, 11.0, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, STRETCHY, 3.0, 10.0, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, SUPER, 0.0, 8.0, &sources::JUDGEMENT),
    ],
    floor_cm: 0.0,
    floor_source: &sources::JUDGEMENT,
    yields: true,
    wear_cm: [Between { low: 0.3, high: 1.5 }, Between { low: 0.0, high: 0.7 }],
    grows: true,
    fails_over_cm: None,
    step_cm: 1.6,
    step_source: &sources::COMMON_PRACTICE,
    alterations: &[&THIGH_OUT, &TAPER],
};

pub(super) static ALONG_LEG: Line = Line {
    point: "inseam",
    against: &[Against::at(&INSIDE_LEG)],
    lies: Lies::Down,
    along: Along::Length,
    // Crotch to floor, barefoot: the hem hangs between the ankle and the floor, lower over shoes. Judgement.
    ease: &[
        EaseRow::new(&SLIM, RIGID, -6.0, 1.0, &sources::JUDGEMENT),
        EaseRow::new(&REGULAR, RIGID, -4.0, 2.0, &sources::JUDGEMENT),
        EaseRow::new(&RELAXED, RIGID, -4.0, 3.0, &sources::JUDGEMENT),
    ],
    floor_cm: -8.0,
    floor_source: &sources::JUDGEMENT,
    yields: false,
    wear_cm: [Between::NOTHING, Between::NOTHING],
    grows: false,
    fails_over_cm: Some(3.0),
    // Legs come in lengths of their own.
    step_cm: 0.0,
    step_source: &sources::JUDGEMENT,
    alterations: &[&HEM_UP, &HEM_DOWN],
};

pub(super) static SEAT_SEAM: Allowance = Allowance {
    key: "seat-seam",
    name: "Seat seam",
    how: "Turn them out. From the stitching of the seat seam, just below the band, to the cut edge of one side. Felled seams have none to let \
          out: note 0.",
    most_cm: 8.0,
};

pub(super) static INNER_SEAM: Allowance = Allowance {
    key: "inner-seam",
    name: "Inner leg seam",
    how: "Turn them out. Near the crotch, from the stitching of the inner leg seam to the cut edge of one side. Felled seams have none to let \
          out: note 0.",
    most_cm: 6.0,
};

pub(super) static HEM: Allowance = Allowance {
    key: "hem-depth",
    name: "Hem",
    how: "Turn the hem up. From the fold to the cut edge inside, both turns together.",
    most_cm: 15.0,
};

static WAIST_IN: Alteration = Alteration {
    key: "waist-in",
    name: "Take the waist in at the back",
    way: Way::In,
    room: Room::UpTo(4.0),
    cost: Cost::Some,
    says: "The band is opened at the centre back and the seat seam taken in. Back pockets move together.",
    source: &sources::COMMON_PRACTICE,
};

static WAIST_OUT_BY_SEAT: Alteration = Alteration {
    // Everyday work on dress trousers, whose band is parted at the back; jeans are a step dearer. Judgement.
    key: "waist-out-by-seat",
    name: "Let the waist out at the seat seam",
    way: Way::Out,
    room: Room::Inside { allowance: &SEAT_SEAM, times: 2.0, keep: 1.0, most: 4.0 },
    cost: Cost::Much,
    says: "Only where cloth was left beside a plain seam, as dress trousers have it. The band of jeans is one piece, so a piece is put in.",
    source: &sources::JUDGEMENT,
};

static WAIST_OUT: Alteration = Alteration {
    key: "waist-out",
    name: "Let the waist out",
    way: Way::Out,
    room: Room::UpTo(1.0),
    cost: Cost::VeryMuch,
    says: "Felled seams hold no cloth to let out, so pieces are put in and show.",
    source: &sources::COMMON_PRACTICE,
};

static SEAT_OUT: Alteration = Alteration {
    key: "seat-out",
    name: "Let the seat out",
    way: Way::Out,
    room: Room::Inside { allowance: &SEAT_SEAM, times: 2.0, keep: 1.0, most: 4.0 },
    cost: Cost::Some,
    says: "Only where cloth was left beside a plain seat seam. On washed cloth the old line shows.",
    source: &sources::COMMON_PRACTICE,
};

static SEAT_IN: Alteration = Alteration {
    key: "seat-in",
    name: "Take the seat in",
    way: Way::In,
    room: Room::UpTo(3.0),
    cost: Cost::Much,
    says: "At the seat seam and the side; topstitching is opened and sewn again.",
    source: &sources::JUDGEMENT,
};

static THIGH_OUT: Alteration = Alteration {
    key: "thigh-out",
    name: "Let the thigh out",
    way: Way::Out,
    room: Room::Inside { allowance: &INNER_SEAM, times: 2.0, keep: 1.0, most: 2.0 },
    cost: Cost::Much,
    says: "Only where cloth was left beside a plain inner seam. On washed cloth the old line shows.",
    source: &sources::JUDGEMENT,
};

static TAPER: Alteration = Alteration {
    key: "taper",
    name: "Take the leg in",
    way: Way::In,
    room: Room::UpTo(6.0),
    cost: Cost::Much,
    says: "At the plain one of the two leg seams. A felled seam or a selvedge is lost by it.",
    source: &sources::COMMON_PRACTICE,
};

static HEM_UP: Alteration = Alteration {
    key: "hem-up",
    name: "Shorten the legs",
    way: Way::In,
    room: Room::UpTo(20.0),
    cost: Cost::Little,
    says: "Ask for the same stitch, or for the old hem to be kept and sewn on again.",
    source: &sources::COMMON_PRACTICE,
};

static HEM_DOWN: Alteration = Alteration {
    key: "hem-down",
    name: "Let the hem down",
    way: Way::Out,
    room: Room::Inside { allowance: &HEM, times: 1.0, keep: 1.0, most: 10.0 },
    cost: Cost::Some,
    says: "As far as the hem is deep, less a centimetre. On washed cloth the old fold stays as a pale line.",
    source: &sources::COMMON_PRACTICE,
};
