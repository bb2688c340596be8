//! Jeans, the bill: cloth, pocketing, trims, sewing by parts, cutting and packing, wash, dry work, tests; and how checks move them.
//!
//! Minutes and seam lengths are those of the operations of a pair of 32 by 32 (handbook, section 3), taken together by part, the needle's
//! own running taken out and put in a part of its own, since only it hangs on the stitch density. How far a check moves a part is judgement.

use super::prices as price;
use crate::catalog::rates::SEWING_MINUTE;
use crate::catalog::sources::{AREA_MODEL, COMMON_PRACTICE, DENIM_PRICES, JEANS_OPERATIONS, JUDGEMENT, NARROW_CLOTH};
use crate::cost::{Bill, Choice, Input, Life, Line, Part, Range, Use, sources::WEAR_SURVEYS};
use crate::trade::Aspect;

/// What goes into a pair.
pub(in crate::catalog) static BILL: Bill = Bill {
    lines: &[
        Line { key: "cloth", name: "Cloth", pays_for: Aspect::Cloth, parts: &[CLOTH] },
        Line {
            key: "pocketing",
            name: "Pocketing",
            pays_for: Aspect::Trims,
            parts: &[Part::new("Pocketing", const { &[Use::of(&POCKETING)] })],
        },
        Line { key: "trims", name: "Trims", pays_for: Aspect::Trims, parts: TRIMS },
        Line { key: "sewing", name: "Sewing", pays_for: Aspect::Making, parts: SEWING },
        Line { key: "cutting-packing", name: "Cutting, pressing, packing", pays_for: Aspect::Making, parts: ROUND_SEWING },
        Line {
            key: "wash",
            name: "Wash",
            pays_for: Aspect::Finish,
            parts: &[Part::new("Wash", const { &[Use::of(&WASH), Use::of(&WASH_DEPTH)] })],
        },
        Line {
            key: "dry-work",
            name: "Dry work",
            pays_for: Aspect::Finish,
            // Much of it is paid by the minute, and moves with the minute, though less than in step.
            parts: &[Part::new(
                "Dry work",
                const { &[Use::of(&DRY_WORK), Use::to(0.3, &SEWING_MINUTE), Use::to(-0.3, &MINUTE_OF_DRY_PRICES)] },
            )],
        },
        Line {
            key: "tests",
            name: "Tests and inspection",
            pays_for: Aspect::Making,
            parts: &[Part::new("Tests and inspection", const { &[Use::of(&TESTS)] })],
        },
    ],
    freight: &price::FREIGHT,
    duties: &price::DUTIES,
    life: Life { wears: 350.0, spread: 0.7, washes: 0.1, wash_cost: 0.6, years: 4.0 },
    life_source: &WEAR_SURVEYS,
};

// Cloth: metres are area, shrinkage and loss at ends over width and the share of it that the marker uses.
const CLOTH: Part = Part::new(
    "Cloth",
    const {
        &[
            Use::of(&AREA),
            Use::of(&SHRINKAGE),
            Use::of(&ENDS),
            Use::of(&CUTTING),
            Use::over(&WIDTH),
            Use::over(&MARKER),
            Use::of(&METRE),
            Use::of(&SELVEDGE),
            Use::of(&MILL_COUNTRY),
            Use::of(&STRETCH),
            Use::to(0.6, &WEIGHT),
        ]
    },
);
static AREA: Input = Input::fixed("Cloth: square metres", Range::new(1.40, 1.50, 1.62), &AREA_MODEL);
static SHRINKAGE: Input = Input::by(
    "Cloth: shrinkage in the wash",
    "stretch",
    const {
        &[
            Choice::new("rigid", 20, [1.04, 1.06, 1.08]),
            Choice::new("comfort", 40, [1.06, 1.09, 1.12]),
            Choice::new("stretch", 30, [1.09, 1.13, 1.18]),
            Choice::new("power", 10, [1.11, 1.16, 1.21]),
        ]
    },
    &COMMON_PRACTICE,
);
static ENDS: Input = Input::fixed("Cloth: ends and splices", Range::new(1.01, 1.02, 1.03), &COMMON_PRACTICE);
static CUTTING: Input = Input::by(
    "Cloth: matching and piecing",
    "cutting",
    const {
        &[
            Choice::new("pieced", 6, [0.94, 0.96, 0.98]),
            Choice::new("plain", 90, [1.0, 1.0, 1.0]),
            Choice::new("falls", 3, [1.0, 1.02, 1.04]),
            Choice::new("meets", 1, [1.05, 1.10, 1.18]),
        ]
    },
    &JUDGEMENT,
);
static WIDTH: Input = Input::by(
    "Cloth: usable width",
    "selvedge",
    const {
        &[
            Choice::new("none", 85, [1.42, 1.48, 1.54]),
            Choice::new("partial", 5, [1.42, 1.48, 1.54]),
            Choice::new("true", 10, [0.72, 0.76, 0.80]),
        ]
    },
    &NARROW_CLOTH,
);
static MARKER: Input = Input::by(
    "Cloth: share that the marker uses",
    "selvedge",
    const {
        &[
            Choice::new("none", 85, [0.82, 0.85, 0.88]),
            Choice::new("partial", 5, [0.82, 0.85, 0.88]),
            Choice::new("true", 10, [0.78, 0.80, 0.82]),
        ]
    },
    &COMMON_PRACTICE,
);
static METRE: Input = Input::by(
    "Cloth: price of a metre",
    "cloth-hand",
    const {
        &[
            Choice::rate("papery", 12, &price::CLOTH_PLAIN),
            Choice::rate("limp", 33, &price::CLOTH_PLAIN),
            Choice::rate("firm", 42, &price::CLOTH_MIDDLE),
            Choice::rate("lively", 13, &price::CLOTH_BETTER),
        ]
    },
    &DENIM_PRICES,
);
static SELVEDGE: Input = Input::by(
    "Cloth: selvedge",
    "selvedge",
    const {
        &[
            Choice::new("none", 85, [1.0, 1.0, 1.0]),
            Choice::new("partial", 5, [1.0, 1.0, 1.0]),
            Choice::rate("true", 10, &price::SELVEDGE),
        ]
    },
    &DENIM_PRICES,
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
    &DENIM_PRICES,
);
static STRETCH: Input = Input::by(
    "Cloth: elastic yarn",
    "stretch",
    const {
        &[
            Choice::new("rigid", 20, [1.0, 1.0, 1.0]),
            Choice::rate("comfort", 40, &price::STRETCH),
            Choice::rate("stretch", 30, &price::STRETCH),
            Choice::rate("power", 10, &price::STRETCH),
        ]
    },
    &DENIM_PRICES,
);
// Over 12 oz, for which the metres are priced; to the power 0.6, since yarn is not all of the price. Judgement.
static WEIGHT: Input = Input::by_reading(
    "Cloth: weight over 12 oz",
    "cloth-weight",
    12.0,
    const {
        &[
            Choice::new("under-10", 12, [0.66, 0.76, 0.82]),
            Choice::new("10-to-12", 42, [0.84, 0.92, 0.99]),
            Choice::new("12-to-14", 34, [1.01, 1.08, 1.16]),
            Choice::new("14-to-16", 9, [1.18, 1.25, 1.32]),
            Choice::new("over-16", 3, [1.35, 1.45, 1.75]),
        ]
    },
    &JUDGEMENT,
);

static POCKETING: Input = Input::by(
    "Pocket cloth",
    "pocketing",
    const {
        &[
            Choice::rate("limp", 13, &price::POCKETING_LIMP),
            Choice::rate("thin", 42, &price::POCKETING_THIN),
            Choice::rate("firm", 33, &price::POCKETING_FIRM),
            Choice::rate("heavy", 12, &price::POCKETING_HEAVY),
        ]
    },
    &COMMON_PRACTICE,
);

const TRIMS: &[Part] = &[
    Part::new("Closure", const { &[Use::of(&CLOSURE)] }),
    Part::new("Button and rivets", const { &[Use::of(&METAL)] }),
    Part::new("Thread", const { &[Use::of(&THREAD)] }),
    Part::new("Patch and special details", const { &[Use::of(&PATCH)] }),
    Part::new("Labels", const { &[Use::of(&LABELS)] }),
    Part::new("Hang tag, bag, carton", const { &[Use::of(&PACK)] }),
];
static CLOSURE: Input = Input::by(
    "Closure",
    "fly-type",
    const { &[Choice::rate("zip", 85, &price::ZIP), Choice::rate("buttons", 15, &price::FLY_BUTTONS)] },
    &COMMON_PRACTICE,
);
static METAL: Input = Input::by(
    "Button and rivets",
    "metal",
    const {
        &[
            Choice::rate("loose", 7, &price::METAL_LOOSE),
            Choice::rate("light", 35, &price::METAL_LIGHT),
            Choice::rate("firm", 43, &price::METAL_FIRM),
            Choice::rate("backed", 15, &price::METAL_BACKED),
        ]
    },
    &COMMON_PRACTICE,
);
static THREAD: Input = Input::rate(&price::THREAD, &COMMON_PRACTICE);
static PATCH: Input = Input::by(
    "Patch and special details",
    "details",
    const {
        &[
            Choice::new("none", 35, [0.05, 0.10, 0.20]),
            Choice::new("1-to-2", 40, [0.12, 0.25, 0.60]),
            Choice::new("3-to-4", 18, [0.40, 0.80, 1.60]),
            Choice::new("5-up", 7, [0.90, 1.80, 3.20]),
        ]
    },
    &JUDGEMENT,
);
static LABELS: Input = Input::rate(&price::LABELS, &COMMON_PRACTICE);
static PACK: Input = Input::rate(&price::PACK, &COMMON_PRACTICE);

// Sewing minutes of the parts, within 1.15 times; the operations say the middle.
static WATCH_POCKET: Input = Input::fixed("Watch pocket: minutes", Range::within(0.54, 1.15), &JEANS_OPERATIONS);
static BACK_POCKETS: Input = Input::fixed("Back pockets: minutes", Range::within(1.394, 1.15), &JEANS_OPERATIONS);
static YOKE_SEAT: Input = Input::fixed("Yokes and seat: minutes", Range::within(0.699, 1.15), &JEANS_OPERATIONS);
static FRONT_POCKETS: Input = Input::fixed("Front pockets: minutes", Range::within(1.271, 1.15), &JEANS_OPERATIONS);
static FLY: Input = Input::fixed("Fly: minutes", Range::within(1.85, 1.15), &JEANS_OPERATIONS);
static INSEAM: Input = Input::fixed("Inseam: minutes", Range::within(0.50, 1.15), &JEANS_OPERATIONS);
static OUTSEAMS: Input = Input::fixed("Outer seams: minutes", Range::within(1.25, 1.15), &JEANS_OPERATIONS);
static LOOPS: Input = Input::fixed("Belt loops: minutes", Range::within(0.628, 1.15), &JEANS_OPERATIONS);
static WAISTBAND: Input = Input::fixed("Waistband: minutes", Range::within(1.188, 1.15), &JEANS_OPERATIONS);
static TACKS: Input = Input::fixed("Bar tacks: minutes", Range::within(0.389, 1.15), &JEANS_OPERATIONS);
static HEMS: Input = Input::fixed("Leg hems: minutes", Range::within(0.509, 1.15), &JEANS_OPERATIONS);
static FASTENING: Input = Input::fixed("Buttonhole, button, rivets: minutes", Range::within(0.62, 1.15), &JEANS_OPERATIONS);
static PATCH_LABELS: Input = Input::fixed("Patch and labels: minutes", Range::within(0.57, 1.15), &JEANS_OPERATIONS);
const SEWING: &[Part] = &[
    Part::new("Watch pocket", const { &[Use::of(&WATCH_POCKET), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Back pockets", const { &[Use::of(&BACK_POCKETS), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Yokes and seat", const { &[Use::of(&YOKE_SEAT), Use::of(&YOKE_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Front pockets", const { &[Use::of(&FRONT_POCKETS), Use::of(&BAG_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Fly", const { &[Use::of(&FLY), Use::of(&FLY_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Inseam", const { &[Use::of(&INSEAM), Use::of(&INSEAM_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Outer seams", const { &[Use::of(&OUTSEAMS), Use::of(&OUTSEAM_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Belt loops", const { &[Use::of(&LOOPS), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Waistband", const { &[Use::of(&WAISTBAND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Bar tacks", const { &[Use::of(&TACKS), Use::of(&TACK_COUNT), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Leg hems", const { &[Use::of(&HEMS), Use::of(&HEM_KIND), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Buttonhole, button, rivets", const { &[Use::of(&FASTENING), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Patch and labels", const { &[Use::of(&PATCH_LABELS), Use::of(&PACE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Making special details", const { &[Use::of(&DETAIL_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Running of the needle", const { &[Use::of(&ROWS), Use::of(&NEEDLE), Use::of(&DENSITY), Use::of(&SEWING_MINUTE)] }),
];
static YOKE_KIND: Input = Input::by(
    "Yokes and seat: kind of seam",
    "seat-yoke",
    const {
        &[
            Choice::new("overlock", 15, [0.65, 0.70, 0.75]),
            Choice::new("overlock-top", 40, [0.90, 0.95, 1.0]),
            Choice::new("felled", 33, [0.95, 1.0, 1.05]),
            Choice::new("felled-met", 12, [1.05, 1.15, 1.30]),
        ]
    },
    &JUDGEMENT,
);
static BAG_KIND: Input = Input::by(
    "Front pockets: kind of seam",
    "bag-seam",
    const {
        &[
            Choice::new("overlock", 30, [0.85, 0.90, 0.95]),
            Choice::new("safety", 50, [0.95, 1.0, 1.05]),
            Choice::new("clean", 20, [1.15, 1.30, 1.50]),
        ]
    },
    &JUDGEMENT,
);
static FLY_KIND: Input = Input::by(
    "Fly: zip or buttons",
    "fly-type",
    const { &[Choice::new("zip", 85, [0.95, 1.0, 1.05]), Choice::new("buttons", 15, [1.15, 1.35, 1.60])] },
    &JUDGEMENT,
);
static INSEAM_KIND: Input = Input::by(
    "Inseam: kind of seam",
    "inseam",
    const {
        &[
            Choice::new("overlock", 18, [0.65, 0.75, 0.85]),
            Choice::new("overlock-plus", 40, [0.85, 0.95, 1.05]),
            Choice::new("felled", 34, [0.95, 1.0, 1.05]),
            Choice::new("felled-flat", 8, [1.05, 1.15, 1.30]),
        ]
    },
    &JUDGEMENT,
);
static OUTSEAM_KIND: Input = Input::by(
    "Outer seams: kind of edge",
    "outseam-edge",
    const {
        &[
            Choice::new("raw", 5, [0.75, 0.85, 0.95]),
            Choice::new("loose", 35, [0.90, 0.95, 1.0]),
            Choice::new("dense", 48, [0.95, 1.0, 1.05]),
            Choice::new("clean", 12, [1.0, 1.15, 1.35]),
        ]
    },
    &JUDGEMENT,
);
static TACK_COUNT: Input = Input::by(
    "Bar tacks: how many",
    "tacks",
    const {
        &[
            Choice::new("few", 7, [0.20, 0.35, 0.50]),
            Choice::new("some", 25, [0.55, 0.65, 0.75]),
            Choice::new("most", 40, [0.80, 0.90, 1.0]),
            Choice::new("all", 28, [1.0, 1.10, 1.25]),
        ]
    },
    &JUDGEMENT,
);
static HEM_KIND: Input = Input::by(
    "Leg hems: kind of stitch",
    "hem-stitch",
    const {
        &[
            Choice::new("wrapped", 15, [0.65, 0.75, 0.85]),
            Choice::new("lock", 65, [0.95, 1.0, 1.05]),
            Choice::new("chain", 20, [0.95, 1.05, 1.20]),
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
            Choice::new("none", 35, [0.86, 0.96, 1.08]),
            Choice::new("1-to-2", 40, [0.90, 1.0, 1.12]),
            Choice::new("3-to-4", 18, [0.98, 1.12, 1.30]),
            Choice::new("5-up", 7, [1.12, 1.40, 1.80]),
        ]
    },
    &JUDGEMENT,
);
static DETAIL_MINUTES: Input = Input::by(
    "Special details: minutes",
    "details",
    const {
        &[
            Choice::new("none", 35, [0.01, 0.02, 0.04]),
            Choice::new("1-to-2", 40, [0.40, 0.75, 1.40]),
            Choice::new("3-to-4", 18, [1.10, 1.90, 3.40]),
            Choice::new("5-up", 7, [2.20, 3.60, 6.50]),
        ]
    },
    &JUDGEMENT,
);
static ROWS: Input = Input::fixed("Needle: metres of rows", Range::within(19.1, 1.06), &JEANS_OPERATIONS);
// 8 stitches to the inch at 3500 a minute, guiding 1.2: 39.37 * 8 / 3500 * 1.2 minutes a metre.
static NEEDLE: Input = Input::fixed("Needle: minutes a metre", Range::within(0.108, 1.25), &COMMON_PRACTICE);
static DENSITY: Input = Input::by_reading(
    "Needle: stitches over 8 an inch",
    "spi",
    8.0,
    const {
        &[
            Choice::new("misfit", 10, [0.65, 1.0, 1.60]),
            Choice::new("border", 28, [0.80, 0.95, 1.40]),
            Choice::new("suits", 62, [0.92, 1.05, 1.20]),
        ]
    },
    &JUDGEMENT,
);

const ROUND_SEWING: &[Part] = &[
    Part::new("Cutting", const { &[Use::of(&CUT_MINUTES), Use::of(&CUT_CARE), Use::of(&SEWING_MINUTE)] }),
    Part::new("Trimming, pressing, packing", const { &[Use::of(&PACK_MINUTES), Use::of(&SEWING_MINUTE)] }),
];
static CUT_MINUTES: Input = Input::fixed("Cutting: minutes", Range::new(1.5, 2.0, 2.5), &COMMON_PRACTICE);
static CUT_CARE: Input = Input::by(
    "Cutting: matching and piecing",
    "cutting",
    const {
        &[
            Choice::new("pieced", 6, [1.0, 1.10, 1.20]),
            Choice::new("plain", 90, [1.0, 1.0, 1.0]),
            Choice::new("falls", 3, [1.0, 1.05, 1.15]),
            Choice::new("meets", 1, [1.3, 1.6, 2.2]),
        ]
    },
    &JUDGEMENT,
);
static PACK_MINUTES: Input = Input::fixed("Pressing and packing: minutes", Range::new(3.0, 4.0, 5.0), &COMMON_PRACTICE);

static WASH: Input = Input::by(
    "Wash",
    "wash-level",
    const {
        &[
            Choice::rate("raw", 4, &price::WASH_RAW),
            Choice::rate("rinsed", 14, &price::WASH_RINSED),
            Choice::rate("light", 30, &price::WASH_LIGHT),
            Choice::rate("stone", 37, &price::WASH_STONE),
            Choice::rate("many-step", 15, &price::WASH_MANY),
        ]
    },
    &COMMON_PRACTICE,
);
static WASH_DEPTH: Input = Input::by(
    "Wash: depth",
    "wash-depth",
    const {
        &[
            Choice::new("flat", 35, [0.80, 0.90, 1.0]),
            Choice::new("varied", 45, [0.95, 1.0, 1.05]),
            Choice::new("deep", 20, [1.10, 1.30, 1.60]),
        ]
    },
    &JUDGEMENT,
);
static DRY_WORK: Input = Input::by(
    "Dry work",
    "dry-work",
    const {
        &[
            Choice::new("none", 25, [0.01, 0.01, 0.01]),
            Choice::rate("laser", 30, &price::DRY_LASER),
            Choice::rate("hand", 25, &price::DRY_HAND),
            Choice::rate("both", 12, &price::DRY_BOTH),
            Choice::rate("torn", 8, &price::DRY_TORN),
        ]
    },
    &COMMON_PRACTICE,
);
static MINUTE_OF_DRY_PRICES: Input = Input::fixed("Dry work: minute of its prices", Range::exactly(0.12), &JUDGEMENT);
static TESTS: Input = Input::rate(&price::TESTS, &COMMON_PRACTICE);
