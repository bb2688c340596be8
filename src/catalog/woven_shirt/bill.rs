//! Shirts, the bill: cloth, trims, sewing by parts, cutting and packing, press; and how checks move them.
//!
//! All minutes together are some 18.5. Lists say 18 to 25 for a formal shirt, one study 22.32, without saying what that covers (handbook,
//! section 3); the low end goes with what making is said to cost, 1.5 to 4 dollars. How they fall on the parts is judgement. The needle's own running stands apart, since only it hangs on the stitch density. How far a check moves a part is
//! judgement.

use super::prices as price;
use crate::catalog::rates::SEWING_MINUTE;
use crate::catalog::sources::{COMMON_PRACTICE, GARMENT_MINUTES, JUDGEMENT, OTHER_COSTS};
use crate::cost::{Bill, Choice, Input, Life, Line, Part, Range, Use, sources::WEAR_SURVEYS};
use crate::trade::Aspect;

/// What goes into a shirt.
pub(in crate::catalog) static BILL: Bill = Bill {
    lines: &[
        Line { key: "cloth", name: "Cloth", pays_for: Aspect::Cloth, parts: &[CLOTH] },
        Line { key: "trims", name: "Trims", pays_for: Aspect::Trims, parts: TRIMS },
        Line { key: "sewing", name: "Sewing", pays_for: Aspect::Making, parts: SEWING },
        Line { key: "cutting-packing", name: "Cutting, pressing, packing", pays_for: Aspect::Making, parts: ROUND_SEWING },
        Line {
            key: "press",
            name: "Press and tests",
            pays_for: Aspect::Finish,
            parts: &[Part::new("Press and tests", const { &[Use::of(&PRESS)] })],
        },
    ],
    freight: &price::FREIGHT,
    duties: &price::DUTIES,
    life: Life { wears: 180.0, spread: 0.7, washes: 0.6, wash_cost: 0.6, years: 4.0 },
    life_source: &WEAR_SURVEYS,
};

// Cloth: metres are area and loss at ends over width and the share of it that the marker uses.
const CLOTH: Part = Part::new(
    "Cloth",
    const {
        &[
            Use::of(&AREA),
            Use::of(&ENDS),
            Use::of(&MATCHING),
            Use::over(&WIDTH),
            Use::over(&MARKER),
            Use::of(&METRE),
            Use::of(&FIBRE_KIND),
            Use::of(&MILL_COUNTRY),
            Use::to(0.4, &WEIGHT),
        ]
    },
);
static AREA: Input = Input::fixed("Cloth: square metres", Range::new(1.55, 1.65, 1.75), &COMMON_PRACTICE);
static ENDS: Input = Input::fixed("Cloth: shrinkage, ends and splices", Range::new(1.02, 1.04, 1.06), &COMMON_PRACTICE);
static WIDTH: Input = Input::fixed("Cloth: usable width", Range::new(1.42, 1.47, 1.52), &COMMON_PRACTICE);
static MARKER: Input = Input::fixed("Cloth: share that the marker uses", Range::new(0.80, 0.84, 0.87), &COMMON_PRACTICE);
// Of 100 shirts 45 have a pattern; the rest are cut as plain cloth is. Judgement.
static MATCHING: Input = Input::by(
    "Cloth: matching",
    "match",
    const {
        &[
            Choice::new("nowhere", 63, [1.0, 1.0, 1.0]),
            Choice::new("roughly", 17, [1.0, 1.03, 1.06]),
            Choice::new("front-pocket", 14, [1.04, 1.08, 1.12]),
            Choice::new("everywhere", 6, [1.08, 1.15, 1.25]),
        ]
    },
    &JUDGEMENT,
);
static METRE: Input = Input::by(
    "Cloth: price of a metre",
    "cloth-hand",
    const {
        &[
            Choice::rate("thin", 12, &price::CLOTH_THIN),
            Choice::rate("plain", 38, &price::CLOTH_PLAIN),
            Choice::rate("fine", 36, &price::CLOTH_FINE),
            Choice::rate("dense", 14, &price::CLOTH_DENSE),
        ]
    },
    &OTHER_COSTS,
);
static FIBRE_KIND: Input = Input::by(
    "Cloth: fibre",
    "fibre",
    const {
        &[
            Choice::new("polyester", 20, [0.6, 0.72, 0.88]),
            Choice::new("blend", 25, [0.8, 0.9, 1.0]),
            Choice::new("cotton", 45, [0.95, 1.0, 1.08]),
            Choice::new("long-staple", 10, [1.15, 1.4, 2.0]),
        ]
    },
    &JUDGEMENT,
);
// The label names where it was sewn; makers often, not always, buy cloth near by.
static MILL_COUNTRY: Input = Input::by(
    "Cloth: country of the mill",
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
// Over the 115 g/m² for which the metres are priced, in ounces; to the power 0.4, since fine light yarn costs more by weight. Judgement.
static WEIGHT: Input = Input::by_reading(
    "Cloth: weight over 3.4 oz",
    "cloth-weight",
    3.4,
    const {
        &[
            Choice::new("under-100", 15, [0.62, 0.78, 0.87]),
            Choice::new("100-to-130", 45, [0.89, 1.0, 1.12]),
            Choice::new("130-to-180", 30, [1.14, 1.32, 1.53]),
            Choice::new("over-180", 10, [1.57, 1.8, 2.25]),
        ]
    },
    &JUDGEMENT,
);

const TRIMS: &[Part] = &[
    Part::new("Stiffening of collar and cuffs", const { &[Use::of(&STIFFENING)] }),
    Part::new("Buttons", const { &[Use::of(&BUTTONS)] }),
    Part::new("Thread", const { &[Use::of(&THREAD)] }),
    Part::new("Labels", const { &[Use::of(&LABELS)] }),
    Part::new("Hang tag, pins, card, bag", const { &[Use::of(&PACK)] }),
];
static STIFFENING: Input = Input::rate(&price::STIFFENING, &COMMON_PRACTICE);
static BUTTONS: Input = Input::by(
    "Buttons",
    "details",
    const {
        &[
            Choice::rate("none", 40, &price::BUTTONS_PLAIN),
            Choice::rate("one", 35, &price::BUTTONS_PLAIN),
            Choice::rate("two", 15, &price::BUTTONS_SHELL),
            Choice::rate("3-up", 10, &price::BUTTONS_SHELL),
        ]
    },
    &JUDGEMENT,
);
static THREAD: Input = Input::rate(&price::THREAD, &COMMON_PRACTICE);
static LABELS: Input = Input::rate(&price::LABELS, &COMMON_PRACTICE);
static PACK: Input = Input::rate(&price::PACK, &COMMON_PRACTICE);

// Sewing minutes of the parts, within 1.15 times.
static COLLAR: Input = Input::fixed("Collar: minutes", Range::within(3.0, 1.15), &GARMENT_MINUTES);
static CUFFS: Input = Input::fixed("Cuffs and slits: minutes", Range::within(2.8, 1.15), &GARMENT_MINUTES);
static FRONT: Input = Input::fixed("Fronts and pocket: minutes", Range::within(1.6, 1.15), &GARMENT_MINUTES);
static FASTENING: Input = Input::fixed("Buttonholes and buttons: minutes", Range::within(1.9, 1.15), &GARMENT_MINUTES);
static YOKE: Input = Input::fixed("Yoke and shoulders: minutes", Range::within(1.2, 1.15), &GARMENT_MINUTES);
static ARMHOLES: Input = Input::fixed("Sleeves set in: minutes", Range::within(1.4, 1.15), &GARMENT_MINUTES);
static SIDES: Input = Input::fixed("Side and underarm seams: minutes", Range::within(1.0, 1.15), &GARMENT_MINUTES);
static TAIL: Input = Input::fixed("Tail: minutes", Range::within(0.9, 1.15), &GARMENT_MINUTES);
static SMALL: Input = Input::fixed("Labels and trimming of ends: minutes", Range::within(0.6, 1.15), &GARMENT_MINUTES);
const SEWING: &[Part] = &[
    Part::new("Collar", const { &[Use::of(&COLLAR), Use::of(&COLLAR_CARE), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Cuffs and slits", const { &[Use::of(&CUFFS), Use::of(&CUFF_CARE), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Fronts and pocket", const { &[Use::of(&FRONT), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new(
        "Buttonholes and buttons",
        const { &[Use::of(&FASTENING), Use::of(&FASTENING_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] },
    ),
    Part::new("Yoke and shoulders", const { &[Use::of(&YOKE), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Sleeves set in", const { &[Use::of(&ARMHOLES), Use::of(&ARMHOLE_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new(
        "Side and underarm seams",
        const { &[Use::of(&SIDES), Use::of(&SIDE_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] },
    ),
    Part::new("Tail", const { &[Use::of(&TAIL), Use::of(&TAIL_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Labels and trimming of ends", const { &[Use::of(&SMALL), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Making special details", const { &[Use::of(&DETAIL_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Running of the needle", const { &[Use::of(&ROWS), Use::of(&NEEDLE), Use::of(&DENSITY), Use::of(&SEWING_MINUTE)] }),
];
static COLLAR_CARE: Input = Input::by(
    "Collar: care",
    "collar",
    const {
        &[
            Choice::new("bubbled", 10, [0.75, 0.85, 0.95]),
            Choice::new("limp", 35, [0.85, 0.93, 1.0]),
            Choice::new("even", 42, [0.95, 1.0, 1.05]),
            Choice::new("crisp", 13, [1.05, 1.2, 1.45]),
        ]
    },
    &JUDGEMENT,
);
static CUFF_CARE: Input = Input::by(
    "Cuffs: care",
    "cuff",
    const {
        &[
            Choice::new("bubbled", 8, [0.8, 0.88, 0.96]),
            Choice::new("slight", 33, [0.88, 0.95, 1.0]),
            Choice::new("even", 43, [0.95, 1.0, 1.05]),
            Choice::new("crisp", 16, [1.05, 1.15, 1.35]),
        ]
    },
    &JUDGEMENT,
);
static FASTENING_KIND: Input = Input::by(
    "Buttonholes: kind",
    "buttonholes",
    const {
        &[
            Choice::new("ragged", 9, [0.75, 0.85, 0.95]),
            Choice::new("thin", 36, [0.85, 0.92, 1.0]),
            Choice::new("dense", 40, [0.95, 1.0, 1.08]),
            Choice::new("finished", 15, [1.08, 1.2, 1.45]),
        ]
    },
    &JUDGEMENT,
);
static ARMHOLE_KIND: Input = Input::by(
    "Sleeves: kind of seam",
    "armhole",
    const {
        &[
            Choice::new("overlock", 20, [0.65, 0.75, 0.85]),
            Choice::new("overlock-top", 42, [0.92, 1.0, 1.08]),
            Choice::new("felled", 27, [1.05, 1.15, 1.3]),
            Choice::new("felled-narrow", 11, [1.2, 1.45, 1.8]),
        ]
    },
    &JUDGEMENT,
);
static SIDE_KIND: Input = Input::by(
    "Side seams: kind of seam",
    "side-seam",
    const {
        &[
            Choice::new("overlock", 22, [0.6, 0.7, 0.8]),
            Choice::new("overlock-plus", 38, [0.85, 0.95, 1.05]),
            Choice::new("felled", 28, [1.0, 1.1, 1.25]),
            Choice::new("felled-narrow", 12, [1.3, 1.6, 2.1]),
        ]
    },
    &JUDGEMENT,
);
static TAIL_KIND: Input = Input::by(
    "Tail: kind of turn",
    "yoke-hem",
    const {
        &[
            Choice::new("raw", 10, [0.6, 0.75, 0.9]),
            Choice::new("overlocked", 38, [0.8, 0.9, 1.0]),
            Choice::new("narrow", 38, [0.95, 1.05, 1.15]),
            Choice::new("narrow-even", 14, [1.1, 1.3, 1.55]),
        ]
    },
    &JUDGEMENT,
);
// Who adds details nobody needs tends to sew slowly and in short runs.
static PACE: Input = Input::by(
    "Sewing: pace of the factory",
    "details",
    const {
        &[
            Choice::new("none", 40, [0.86, 0.96, 1.08]),
            Choice::new("one", 35, [0.9, 1.0, 1.12]),
            Choice::new("two", 15, [0.96, 1.08, 1.25]),
            Choice::new("3-up", 10, [1.05, 1.25, 1.6]),
        ]
    },
    &JUDGEMENT,
);
static DETAIL_MINUTES: Input = Input::by(
    "Special details: minutes",
    "details",
    const {
        &[
            Choice::new("none", 40, [0.01, 0.02, 0.04]),
            Choice::new("one", 35, [0.25, 0.45, 0.8]),
            Choice::new("two", 15, [0.6, 1.0, 1.7]),
            Choice::new("3-up", 10, [1.2, 2.0, 3.6]),
        ]
    },
    &JUDGEMENT,
);
static ROWS: Input = Input::fixed("Needle: metres of rows", Range::within(12.0, 1.15), &JUDGEMENT);
// 14 stitches to the inch at 4000 a minute, guiding 1.2: 39.37 * 14 / 4000 * 1.2 minutes a metre.
static NEEDLE: Input = Input::fixed("Needle: minutes a metre", Range::within(0.165, 1.25), &COMMON_PRACTICE);
static DENSITY: Input = Input::by_reading(
    "Needle: stitches over 14 an inch",
    "spi",
    14.0,
    const {
        &[
            Choice::new("misfit", 8, [0.45, 0.62, 1.8]),
            Choice::new("long", 38, [0.66, 0.77, 0.84]),
            Choice::new("usual", 38, [0.88, 1.0, 1.12]),
            Choice::new("fine", 16, [1.17, 1.32, 1.62]),
        ]
    },
    &JUDGEMENT,
);

const ROUND_SEWING: &[Part] = &[
    Part::new("Cutting", const { &[Use::of(&CUT_MINUTES), Use::of(&CUT_CARE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Trimming, pressing, packing", const { &[Use::of(&PACK_MINUTES), Use::of(&SEWING_MINUTE)] }),
];
static CUT_MINUTES: Input = Input::fixed("Cutting: minutes", Range::new(0.6, 0.9, 1.3), &JUDGEMENT);
static CUT_CARE: Input = Input::by(
    "Cutting: matching",
    "match",
    const {
        &[
            Choice::new("nowhere", 63, [1.0, 1.0, 1.0]),
            Choice::new("roughly", 17, [1.05, 1.15, 1.3]),
            Choice::new("front-pocket", 14, [1.2, 1.4, 1.7]),
            Choice::new("everywhere", 6, [1.4, 1.8, 2.5]),
        ]
    },
    &JUDGEMENT,
);
static PACK_MINUTES: Input = Input::fixed("Pressing and packing: minutes", Range::new(0.8, 1.2, 1.8), &JUDGEMENT);
static PRESS: Input = Input::rate(&price::PRESS, &COMMON_PRACTICE);
