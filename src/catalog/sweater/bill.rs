//! Sweaters, the bill: yarn, trims, knitting, linking and making up, finish; and how checks move them.
//!
//! Some 55 minutes on the machine and 18 by hand stand in the middle of what is commonly said of fully fashioned pieces, 40 to 90 and 15 to
//! 30; cut pieces take less. How minutes fall on the parts, and how far a check moves one, is judgement.

use super::prices as price;
use crate::catalog::rates::SEWING_MINUTE;
use crate::catalog::sources::{COMMON_PRACTICE, JUDGEMENT, KNITTING_MINUTES, OTHER_COSTS};
use crate::cost::{Bill, Choice, Input, Life, Line, Part, Range, Use, sources::WEAR_SURVEYS};
use crate::trade::Aspect;

/// What goes into a sweater.
pub(in crate::catalog) static BILL: Bill = Bill {
    lines: &[
        Line { key: "cloth", name: "Yarn", pays_for: Aspect::Cloth, parts: &[YARN] },
        Line { key: "trims", name: "Trims", pays_for: Aspect::Trims, parts: TRIMS },
        Line { key: "knitting", name: "Knitting", pays_for: Aspect::Making, parts: &[KNITTING] },
        Line { key: "making-up", name: "Linking, making up, packing", pays_for: Aspect::Making, parts: MAKING_UP },
        Line { key: "finish", name: "Wash and steam", pays_for: Aspect::Finish, parts: &[FINISHING] },
    ],
    freight: &price::FREIGHT,
    duties: &price::DUTIES,
    life: Life { wears: 180.0, spread: 0.75, washes: 0.15, wash_cost: 0.7, years: 4.5 },
    life_source: &WEAR_SURVEYS,
};

// The price is of the yarn in a piece of some 340 g, loss on the machine included.
const YARN: Part = Part::new(
    "Yarn",
    const { &[Use::of(&FIBRE), Use::of(&GAUGE_YARN), Use::of(&CLOSENESS), Use::of(&CUTTING_LOSS), Use::of(&SPINNER)] },
);
static FIBRE: Input = Input::by(
    "Yarn: price for a piece of 340 g",
    "fibre",
    const {
        &[
            Choice::rate("acrylic", 24, &price::ACRYLIC),
            Choice::rate("blend", 30, &price::BLEND),
            Choice::rate("cotton-wool", 30, &price::COTTON_WOOL),
            Choice::rate("fine-wool", 11, &price::FINE_WOOL),
            Choice::rate("cashmere", 5, &price::CASHMERE),
        ]
    },
    &OTHER_COSTS,
);
static GAUGE_YARN: Input = Input::by(
    "Yarn: weight by how coarse it is",
    "gauge",
    const {
        &[
            Choice::new("under-5", 10, [1.35, 1.55, 1.9]),
            Choice::new("5-to-8", 25, [1.1, 1.22, 1.4]),
            Choice::new("8-to-14", 50, [0.82, 0.92, 1.04]),
            Choice::new("over-14", 15, [0.58, 0.68, 0.8]),
        ]
    },
    &JUDGEMENT,
);
static CLOSENESS: Input = Input::by(
    "Yarn: weight by how close it is",
    "tightness",
    const {
        &[
            Choice::new("finger-passes", 12, [0.8, 0.86, 0.92]),
            Choice::new("loose", 35, [0.9, 0.95, 1.0]),
            Choice::new("close", 38, [1.0, 1.05, 1.1]),
            Choice::new("springy", 15, [1.06, 1.13, 1.22]),
        ]
    },
    &JUDGEMENT,
);
static CUTTING_LOSS: Input = Input::by(
    "Yarn: loss at cutting",
    "shaping",
    const {
        &[
            Choice::new("cut", 30, [1.12, 1.2, 1.3]),
            Choice::new("few", 25, [1.04, 1.09, 1.15]),
            Choice::new("regular", 34, [1.0, 1.02, 1.04]),
            Choice::new("decorative", 11, [0.99, 1.01, 1.03]),
        ]
    },
    &JUDGEMENT,
);
// The label names where it was made up; makers often, not always, buy yarn near by.
static SPINNER: Input = Input::by(
    "Yarn: country of the spinner",
    "made-in",
    const {
        &[
            Choice::new("bangladesh-pakistan", 30, [0.85, 0.97, 1.10]),
            Choice::new("south-east-asia", 22, [0.85, 1.00, 1.20]),
            Choice::new("north-africa", 9, [0.90, 1.05, 1.25]),
            Choice::new("china", 17, [0.80, 0.96, 1.15]),
            Choice::new("central-america", 8, [0.90, 1.05, 1.25]),
            Choice::new("turkey", 7, [0.90, 1.05, 1.25]),
            Choice::new("europe-low", 3, [1.00, 1.15, 1.40]),
            Choice::new("italy-japan", 2, [1.10, 1.35, 1.75]),
            Choice::new("usa-uk", 2, [1.05, 1.30, 1.70]),
        ]
    },
    &JUDGEMENT,
);

const TRIMS: &[Part] = &[
    Part::new("Linking yarn and tape", const { &[Use::of(&THREAD)] }),
    Part::new("Labels", const { &[Use::of(&LABELS)] }),
    Part::new("Hang tag, bag", const { &[Use::of(&PACK)] }),
    Part::new("Buttons", const { &[Use::of(&BUTTONS), Use::of(&BUTTONED)] }),
];
static THREAD: Input = Input::rate(&price::THREAD, &COMMON_PRACTICE);
static LABELS: Input = Input::rate(&price::LABELS, &COMMON_PRACTICE);
static PACK: Input = Input::rate(&price::PACK, &COMMON_PRACTICE);
static BUTTONS: Input = Input::by(
    "Buttons",
    "band",
    const {
        &[
            Choice::rate("gapes", 14, &price::BUTTONS_PLAIN),
            Choice::rate("unbacked", 38, &price::BUTTONS_PLAIN),
            Choice::rate("backed", 34, &price::BUTTONS_TAPE),
            Choice::rate("backed-spare", 14, &price::BUTTONS_TAPE),
        ]
    },
    &OTHER_COSTS,
);
static BUTTONED: Input = Input::by(
    "Buttons: whether there are any",
    "cardigan",
    const { &[Choice::new("pullover", 70, [0.01, 0.01, 0.01]), Choice::new("cardigan", 30, [1.0, 1.0, 1.0])] },
    &JUDGEMENT,
);

const KNITTING: Part = Part::new(
    "Time on the knitting machine",
    const { &[Use::of(&MACHINE_MINUTES), Use::of(&GAUGE_TIME), Use::of(&SHAPING_TIME), Use::of(&KNITTING_MINUTE)] },
);
static MACHINE_MINUTES: Input = Input::fixed("Knitting: machine minutes", Range::new(45.0, 55.0, 68.0), &KNITTING_MINUTES);
static KNITTING_MINUTE: Input = Input::rate(&price::KNITTING_MINUTE, &JUDGEMENT);
static GAUGE_TIME: Input = Input::by(
    "Knitting: time by how fine it is",
    "gauge",
    const {
        &[
            Choice::new("under-5", 10, [0.55, 0.65, 0.78]),
            Choice::new("5-to-8", 25, [0.75, 0.85, 0.96]),
            Choice::new("8-to-14", 50, [0.95, 1.05, 1.2]),
            Choice::new("over-14", 15, [1.2, 1.4, 1.7]),
        ]
    },
    &JUDGEMENT,
);
static SHAPING_TIME: Input = Input::by(
    "Knitting: time by shaping",
    "shaping",
    const {
        &[
            Choice::new("cut", 30, [0.6, 0.7, 0.82]),
            Choice::new("few", 25, [0.85, 0.93, 1.0]),
            Choice::new("regular", 34, [1.05, 1.15, 1.25]),
            Choice::new("decorative", 11, [1.2, 1.35, 1.55]),
        ]
    },
    &JUDGEMENT,
);

// Minutes by hand, within 1.2 times.
static JOIN_MINUTES: Input = Input::fixed("Joining: minutes", Range::within(7.5, 1.2), &KNITTING_MINUTES);
static NECK_MINUTES: Input = Input::fixed("Neck and bands: minutes", Range::within(3.0, 1.2), &KNITTING_MINUTES);
static END_MINUTES: Input = Input::fixed("Yarn ends and looking over: minutes", Range::within(3.0, 1.2), &KNITTING_MINUTES);
static STEAM_MINUTES: Input = Input::fixed("Washing and steaming: minutes", Range::within(2.5, 1.2), &KNITTING_MINUTES);
static PACK_MINUTES: Input = Input::fixed("Labels and packing: minutes", Range::within(2.0, 1.2), &KNITTING_MINUTES);
const MAKING_UP: &[Part] = &[
    Part::new("Joining the panels", const { &[Use::of(&JOIN_MINUTES), Use::of(&JOIN_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Neck and bands", const { &[Use::of(&NECK_MINUTES), Use::of(&BAND_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Yarn ends and looking over", const { &[Use::of(&END_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Washing and steaming", const { &[Use::of(&STEAM_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Labels and packing", const { &[Use::of(&PACK_MINUTES), Use::of(&SEWING_MINUTE)] }),
];
static JOIN_KIND: Input = Input::by(
    "Joining: kind",
    "joins",
    const {
        &[
            Choice::new("cut-overlocked", 28, [0.45, 0.55, 0.65]),
            Choice::new("linked-rough", 30, [0.8, 0.92, 1.05]),
            Choice::new("loop-to-loop", 32, [1.2, 1.4, 1.6]),
            Choice::new("flat", 10, [1.4, 1.8, 2.3]),
        ]
    },
    &JUDGEMENT,
);
static BAND_KIND: Input = Input::by(
    "Bands: whether it buttons",
    "cardigan",
    const { &[Choice::new("pullover", 70, [0.78, 0.83, 0.88]), Choice::new("cardigan", 30, [1.25, 1.4, 1.6])] },
    &JUDGEMENT,
);

const FINISHING: Part = Part::new("Wash, steam and tests", const { &[Use::of(&FINISH)] });
static FINISH: Input = Input::rate(&price::FINISH, &COMMON_PRACTICE);
