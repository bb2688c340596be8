//! T-shirts, the bill: cloth, trims, sewing by parts, cutting and packing, print and finish; and how checks move them.
//!
//! All minutes together are some 5.3: a list says 5 to 7 with cutting and finishing (handbook, section 3). How they fall on the parts, and
//! how far a check moves one, is judgement.

use super::prices as price;
use crate::catalog::rates::SEWING_MINUTE;
use crate::catalog::sources::{COMMON_PRACTICE, GARMENT_MINUTES, JUDGEMENT, OTHER_COSTS};
use crate::cost::{Bill, Choice, Input, Life, Line, Part, Range, Use, sources::WEAR_SURVEYS};
use crate::trade::Aspect;

/// What goes into a T-shirt.
pub(in crate::catalog) static BILL: Bill = Bill {
    lines: &[
        Line { key: "cloth", name: "Cloth", pays_for: Aspect::Cloth, parts: &[CLOTH] },
        Line { key: "trims", name: "Trims", pays_for: Aspect::Trims, parts: TRIMS },
        Line { key: "sewing", name: "Sewing", pays_for: Aspect::Making, parts: SEWING },
        Line { key: "cutting-packing", name: "Cutting, pressing, packing", pays_for: Aspect::Making, parts: ROUND_SEWING },
        Line { key: "finish", name: "Print and finish", pays_for: Aspect::Finish, parts: FINISHING },
    ],
    freight: &price::FREIGHT,
    duties: &price::DUTIES,
    life: Life { wears: 150.0, spread: 0.7, washes: 0.9, wash_cost: 0.35, years: 4.0 },
    life_source: &WEAR_SURVEYS,
};

// Jersey is bought by weight: about a square metre of 170 g/m² is in its price, so more weight costs in step.
const CLOTH: Part = Part::new(
    "Cloth",
    const { &[Use::of(&JERSEY), Use::of(&AREA), Use::of(&BODY_WASTE), Use::of(&MILL_COUNTRY), Use::of(&WEIGHT)] },
);
static JERSEY: Input = Input::by(
    "Cloth: price for a square metre of 170 g/m²",
    "density",
    const {
        &[
            Choice::rate("fingers", 14, &price::JERSEY_OPEN),
            Choice::rate("shapes", 36, &price::JERSEY_PLAIN),
            Choice::rate("shadow", 36, &price::JERSEY_CLOSE),
            Choice::rate("nothing", 14, &price::JERSEY_FIRM),
        ]
    },
    &OTHER_COSTS,
);
static AREA: Input = Input::fixed("Cloth: square metres", Range::new(0.88, 0.95, 1.03), &COMMON_PRACTICE);
static BODY_WASTE: Input = Input::by(
    "Cloth: loss at cutting",
    "body",
    const { &[Choice::new("tube", 25, [1.05, 1.08, 1.12]), Choice::new("seams", 75, [1.1, 1.14, 1.19])] },
    &JUDGEMENT,
);
// The label names where it was sewn; makers often, not always, buy cloth near by.
static MILL_COUNTRY: Input = Input::by(
    "Cloth: country of the knitter",
    "made-in",
    const {
        &[
            Choice::new("bangladesh-pakistan", 30, [0.75, 0.90, 1.10]),
            Choice::new("south-east-asia", 22, [0.85, 1.00, 1.25]),
            Choice::new("north-africa", 9, [0.85, 1.05, 1.30]),
            Choice::new("china", 17, [0.80, 1.00, 1.25]),
            Choice::new("central-america", 8, [0.85, 1.05, 1.30]),
            Choice::new("turkey", 7, [1.05, 1.35, 1.75]),
            Choice::new("europe-low", 3, [1.00, 1.25, 1.70]),
            Choice::new("italy-japan", 2, [1.10, 1.55, 2.20]),
            Choice::new("usa-uk", 2, [1.00, 1.45, 2.10]),
        ]
    },
    &JUDGEMENT,
);
static WEIGHT: Input = Input::by_reading(
    "Cloth: weight over 5 oz",
    "weight",
    5.0,
    const {
        &[
            Choice::new("under-140", 15, [0.62, 0.75, 0.82]),
            Choice::new("140-to-170", 40, [0.83, 0.92, 0.99]),
            Choice::new("170-to-200", 30, [1.01, 1.09, 1.17]),
            Choice::new("over-200", 15, [1.19, 1.32, 1.62]),
        ]
    },
    &JUDGEMENT,
);

const TRIMS: &[Part] = &[
    Part::new("Thread and tape", const { &[Use::of(&THREAD)] }),
    Part::new("Labels", const { &[Use::of(&LABELS)] }),
    Part::new("Hang tag, bag", const { &[Use::of(&PACK)] }),
];
static THREAD: Input = Input::rate(&price::THREAD, &COMMON_PRACTICE);
static LABELS: Input = Input::rate(&price::LABELS, &COMMON_PRACTICE);
static PACK: Input = Input::rate(&price::PACK, &COMMON_PRACTICE);

// Sewing minutes of the parts, within 1.2 times.
static SHOULDERS: Input = Input::fixed("Shoulders and their tape: minutes", Range::within(0.6, 1.2), &GARMENT_MINUTES);
static NECK: Input = Input::fixed("Neck and its tape: minutes", Range::within(1.3, 1.2), &GARMENT_MINUTES);
static SLEEVES: Input = Input::fixed("Sleeves set in: minutes", Range::within(0.7, 1.2), &GARMENT_MINUTES);
static SIDES: Input = Input::fixed("Side seams: minutes", Range::within(0.5, 1.2), &GARMENT_MINUTES);
static HEMS: Input = Input::fixed("Hems: minutes", Range::within(0.8, 1.2), &GARMENT_MINUTES);
static SMALL: Input = Input::fixed("Labels and trimming of ends: minutes", Range::within(0.4, 1.2), &GARMENT_MINUTES);
const SEWING: &[Part] = &[
    Part::new("Shoulders and their tape", const { &[Use::of(&SHOULDERS), Use::of(&SHOULDER_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Neck and its tape", const { &[Use::of(&NECK), Use::of(&NECK_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Sleeves set in", const { &[Use::of(&SLEEVES), Use::of(&SEAM_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Side seams", const { &[Use::of(&SIDES), Use::of(&BODY_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Hems", const { &[Use::of(&HEMS), Use::of(&SEWING_MINUTE)] }),
    Part::new("Labels and trimming of ends", const { &[Use::of(&SMALL), Use::of(&SEWING_MINUTE)] }),
];
static SHOULDER_KIND: Input = Input::by(
    "Shoulders: what holds them",
    "shoulder",
    const {
        &[
            Choice::new("nothing", 25, [0.6, 0.7, 0.8]),
            Choice::new("elastic", 35, [0.9, 0.97, 1.05]),
            Choice::new("tape", 30, [1.05, 1.15, 1.3]),
            Choice::new("tape-twice", 10, [1.25, 1.45, 1.75]),
        ]
    },
    &JUDGEMENT,
);
static NECK_KIND: Input = Input::by(
    "Neck: what covers its seam",
    "neck-tape",
    const {
        &[
            Choice::new("raw", 12, [0.7, 0.78, 0.86]),
            Choice::new("overlock", 40, [0.8, 0.88, 0.96]),
            Choice::new("tape", 36, [1.05, 1.13, 1.22]),
            Choice::new("tape-even", 12, [1.12, 1.25, 1.45]),
        ]
    },
    &JUDGEMENT,
);
static SEAM_KIND: Input = Input::by(
    "Seams: kind",
    "seam-type",
    const {
        &[
            Choice::new("ladder", 14, [0.85, 0.92, 1.0]),
            Choice::new("three", 34, [0.92, 0.97, 1.02]),
            Choice::new("four", 38, [0.98, 1.03, 1.08]),
            Choice::new("flat", 14, [1.1, 1.3, 1.7]),
        ]
    },
    &JUDGEMENT,
);
static BODY_KIND: Input = Input::by(
    "Side seams: whether there are any",
    "body",
    const { &[Choice::new("tube", 25, [0.02, 0.03, 0.05]), Choice::new("seams", 75, [0.95, 1.0, 1.05])] },
    &JUDGEMENT,
);

const ROUND_SEWING: &[Part] = &[
    Part::new("Cutting", const { &[Use::of(&CUT_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Trimming, pressing, packing", const { &[Use::of(&PACK_MINUTES), Use::of(&SEWING_MINUTE)] }),
];
static CUT_MINUTES: Input = Input::fixed("Cutting: minutes", Range::new(0.3, 0.4, 0.5), &JUDGEMENT);
static PACK_MINUTES: Input = Input::fixed("Pressing and packing: minutes", Range::new(0.4, 0.6, 0.8), &JUDGEMENT);

const FINISHING: &[Part] = &[
    Part::new("Print", const { &[Use::of(&PRINTING), Use::of(&PRINTED)] }),
    Part::new("Press, wash and tests", const { &[Use::of(&FINISH)] }),
];
static PRINTING: Input = Input::by(
    "Print",
    "print",
    const {
        &[
            Choice::rate("cracks", 15, &price::PRINT_CRACKS),
            Choice::rate("plate", 35, &price::PRINT_PLATE),
            Choice::rate("flexes", 35, &price::PRINT_FLEXES),
            Choice::rate("in-cloth", 15, &price::PRINT_SOFT),
        ]
    },
    &OTHER_COSTS,
);
static PRINTED: Input = Input::by(
    "Print: whether there is one",
    "printed",
    const { &[Choice::new("plain", 60, [0.01, 0.01, 0.01]), Choice::new("printed", 40, [1.0, 1.0, 1.0])] },
    &JUDGEMENT,
);
static FINISH: Input = Input::rate(&price::FINISH, &COMMON_PRACTICE);
