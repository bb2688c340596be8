//! Dresses and skirts, the bill: cloth, lining, trims, sewing by parts, cutting and packing, finish; and how checks move them.
//!
//! The minutes of a dress are some 24, of a skirt half of that: a list says 20 to 30 and 10 to 15. How they fall on the parts, and how far a
//! check moves one, is judgement.

use super::prices as price;
use crate::catalog::rates::SEWING_MINUTE;
use crate::catalog::sources::{COMMON_PRACTICE, DRESS_MINUTES, JUDGEMENT, OTHER_COSTS, TRIM_COSTS};
use crate::cost::{Bill, Choice, Input, Life, Line, Part, Range, Use, sources::WEAR_SURVEYS};
use crate::trade::Aspect;

/// What goes into a dress or a skirt.
pub(in crate::catalog) static BILL: Bill = Bill {
    lines: &[
        Line { key: "cloth", name: "Cloth", pays_for: Aspect::Cloth, parts: &[CLOTH] },
        Line { key: "lining", name: "Lining", pays_for: Aspect::Cloth, parts: &[LINING_CLOTH] },
        Line { key: "trims", name: "Trims", pays_for: Aspect::Trims, parts: TRIMS },
        Line { key: "sewing", name: "Sewing", pays_for: Aspect::Making, parts: SEWING },
        Line { key: "cutting-packing", name: "Cutting, pressing, packing", pays_for: Aspect::Making, parts: ROUND_SEWING },
        Line { key: "finish", name: "Finish", pays_for: Aspect::Finish, parts: &[FINISHING] },
    ],
    freight: &price::FREIGHT,
    duties: &price::DUTIES,
    life: Life { wears: 120.0, spread: 0.75, washes: 0.35, wash_cost: 0.6, years: 4.6 },
    life_source: &WEAR_SURVEYS,
};

const CLOTH: Part = Part::new(
    "Cloth",
    const {
        &[
            Use::of(&FIBRE),
            Use::of(&METRES),
            Use::of(&PIECE_CLOTH),
            Use::of(&VOLUME),
            Use::of(&CLOSENESS),
            Use::of(&STRETCH),
            Use::of(&MILL),
        ]
    },
);
static FIBRE: Input = Input::by(
    "Cloth: price of a metre",
    "fibre",
    const {
        &[
            Choice::rate("polyester", 38, &price::POLYESTER),
            Choice::rate("viscose-blend", 30, &price::VISCOSE),
            Choice::rate("cotton-linen", 24, &price::COTTON),
            Choice::rate("wool-silk", 8, &price::SILK),
        ]
    },
    &OTHER_COSTS,
);
static METRES: Input = Input::fixed("Cloth: metres for a dress", Range::new(1.7, 1.95, 2.25), &COMMON_PRACTICE);
static PIECE_CLOTH: Input = Input::by(
    "Cloth: dress or skirt",
    "piece",
    const { &[Choice::new("skirt", 30, [0.58, 0.66, 0.75]), Choice::new("dress", 70, [0.97, 1.0, 1.03])] },
    &JUDGEMENT,
);
static VOLUME: Input = Input::by(
    "Cloth: how full it is",
    "volume",
    const {
        &[
            Choice::new("under-1-2", 32, [0.68, 0.76, 0.85]),
            Choice::new("1-2-to-2", 40, [0.88, 0.98, 1.08]),
            Choice::new("2-to-3-5", 21, [1.2, 1.35, 1.55]),
            Choice::new("over-3-5", 7, [1.6, 1.9, 2.4]),
        ]
    },
    &JUDGEMENT,
);
static CLOSENESS: Input = Input::by(
    "Cloth: how close it is",
    "opacity",
    const {
        &[
            Choice::new("see-through", 14, [0.75, 0.82, 0.9]),
            Choice::new("shapes", 34, [0.86, 0.92, 0.99]),
            Choice::new("shadow", 36, [1.0, 1.07, 1.15]),
            Choice::new("none", 16, [1.1, 1.2, 1.35]),
        ]
    },
    &JUDGEMENT,
);
static STRETCH: Input = Input::by(
    "Cloth: how far it gives",
    "stretch",
    const {
        &[
            Choice::new("woven", 60, [0.96, 1.0, 1.04]),
            Choice::new("some", 15, [1.05, 1.1, 1.17]),
            Choice::new("knit", 25, [0.82, 0.92, 1.02]),
        ]
    },
    &JUDGEMENT,
);
// The label names where it was sewn; makers often, not always, buy cloth near by.
static MILL: Input = Input::by(
    "Cloth: country of the mill",
    "made-in",
    const {
        &[
            Choice::new("bangladesh-pakistan", 30, [0.80, 0.93, 1.10]),
            Choice::new("south-east-asia", 22, [0.85, 1.00, 1.20]),
            Choice::new("north-africa", 9, [0.90, 1.08, 1.30]),
            Choice::new("china", 17, [0.78, 0.95, 1.15]),
            Choice::new("central-america", 8, [0.90, 1.08, 1.30]),
            Choice::new("turkey", 7, [1.00, 1.20, 1.50]),
            Choice::new("europe-low", 3, [1.10, 1.35, 1.70]),
            Choice::new("italy-japan", 2, [1.25, 1.65, 2.30]),
            Choice::new("usa-uk", 2, [1.15, 1.50, 2.10]),
        ]
    },
    &JUDGEMENT,
);

const LINING_CLOTH: Part = Part::new("Lining", const { &[Use::of(&LINING), Use::of(&LINED), Use::of(&PIECE_CLOTH)] });
static LINING: Input = Input::by(
    "Lining",
    "lining",
    const {
        &[
            Choice::rate("tight", 12, &price::LINING_THIN),
            Choice::rate("scant", 38, &price::LINING_THIN),
            Choice::rate("free", 36, &price::LINING_PLAIN),
            Choice::rate("free-fine", 14, &price::LINING_FINE),
        ]
    },
    &OTHER_COSTS,
);
static LINED: Input = Input::by(
    "Lining: whether there is one",
    "lined",
    const { &[Choice::new("unlined", 60, [0.01, 0.01, 0.01]), Choice::new("lined", 40, [1.0, 1.0, 1.0])] },
    &JUDGEMENT,
);

const TRIMS: &[Part] = &[
    Part::new("Zip", const { &[Use::of(&ZIP)] }),
    Part::new("Hooks, buttons, elastic", const { &[Use::of(&SMALL)] }),
    Part::new("Thread, stays, interlining", const { &[Use::of(&THREAD)] }),
    Part::new("Labels", const { &[Use::of(&LABELS)] }),
    Part::new("Hanger, bag, hang tag", const { &[Use::of(&PACK)] }),
];
static ZIP: Input = Input::by(
    "Zip",
    "zip",
    const {
        &[
            Choice::rate("catches", 11, &price::ZIP_LIGHT),
            Choice::rate("rough", 32, &price::ZIP_LIGHT),
            Choice::rate("runs-flat", 41, &price::ZIP_SOUND),
            Choice::rate("runs-hidden", 16, &price::ZIP_FINE),
        ]
    },
    &TRIM_COSTS,
);
static SMALL: Input = Input::rate(&price::SMALL, &COMMON_PRACTICE);
static THREAD: Input = Input::rate(&price::THREAD, &COMMON_PRACTICE);
static LABELS: Input = Input::rate(&price::LABELS, &COMMON_PRACTICE);
static PACK: Input = Input::rate(&price::PACK, &COMMON_PRACTICE);

// Minutes of a dress, within 1.2 times; a skirt takes half of them.
static SHAPE_MINUTES: Input = Input::fixed("Panels, darts, pleats: minutes", Range::within(8.0, 1.2), &DRESS_MINUTES);
static EDGE_MINUTES: Input = Input::fixed("Inside edges: minutes", Range::within(3.2, 1.2), &DRESS_MINUTES);
static TOP_MINUTES: Input = Input::fixed("Neck, sleeves or band: minutes", Range::within(5.5, 1.2), &DRESS_MINUTES);
static ZIP_MINUTES: Input = Input::fixed("Zip and fastenings: minutes", Range::within(2.8, 1.2), &DRESS_MINUTES);
static HEM_MINUTES: Input = Input::fixed("Hem: minutes", Range::within(2.2, 1.2), &DRESS_MINUTES);
static SMALL_MINUTES: Input = Input::fixed("Labels, loops, trimming: minutes", Range::within(2.3, 1.2), &DRESS_MINUTES);
static LINING_MINUTES: Input = Input::fixed("Setting in the lining, minutes", Range::within(5.0, 1.25), &JUDGEMENT);
const SEWING: &[Part] = &[
    Part::new(
        "Panels, darts, pleats",
        const { &[Use::of(&SHAPE_MINUTES), Use::of(&SHAPE_KIND), Use::of(&PIECE_WORK), Use::of(&SEWING_MINUTE)] },
    ),
    Part::new(
        "Inside edges",
        const { &[Use::of(&EDGE_MINUTES), Use::of(&EDGE_KIND), Use::of(&PIECE_WORK), Use::of(&SEWING_MINUTE)] },
    ),
    Part::new("Neck, sleeves or band", const { &[Use::of(&TOP_MINUTES), Use::of(&PIECE_WORK), Use::of(&SEWING_MINUTE)] }),
    Part::new("Zip and fastenings", const { &[Use::of(&ZIP_MINUTES), Use::of(&ZIP_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Hem", const { &[Use::of(&HEM_MINUTES), Use::of(&HEM_KIND), Use::to(0.6, &VOLUME), Use::of(&SEWING_MINUTE)] }),
    Part::new("Labels, loops, trimming", const { &[Use::of(&SMALL_MINUTES), Use::of(&PIECE_WORK), Use::of(&SEWING_MINUTE)] }),
    Part::new(
        "Setting in the lining",
        const { &[Use::of(&LINING_MINUTES), Use::of(&LINED), Use::of(&PIECE_WORK), Use::of(&SEWING_MINUTE)] },
    ),
];
static PIECE_WORK: Input = Input::by(
    "Work: dress or skirt",
    "piece",
    const { &[Choice::new("skirt", 30, [0.38, 0.45, 0.54]), Choice::new("dress", 70, [0.97, 1.0, 1.03])] },
    &DRESS_MINUTES,
);
static SHAPE_KIND: Input = Input::by(
    "Panels, darts, pleats: care",
    "fullness",
    const {
        &[
            Choice::new("uneven", 9, [0.74, 0.82, 0.9]),
            Choice::new("slightly", 33, [0.84, 0.91, 0.98]),
            Choice::new("even", 42, [0.97, 1.04, 1.12]),
            Choice::new("vanish", 16, [1.15, 1.3, 1.5]),
        ]
    },
    &JUDGEMENT,
);
static EDGE_KIND: Input = Input::by(
    "Inside edges: kind",
    "seam-finish",
    const {
        &[
            Choice::new("raw", 10, [0.2, 0.3, 0.45]),
            Choice::new("loose", 45, [0.7, 0.82, 0.95]),
            Choice::new("dense", 34, [0.92, 1.05, 1.18]),
            Choice::new("bound", 11, [1.8, 2.3, 3.0]),
        ]
    },
    &JUDGEMENT,
);
static ZIP_KIND: Input = Input::by(
    "Zip and fastenings: care",
    "zip",
    const {
        &[
            Choice::new("catches", 11, [0.72, 0.8, 0.9]),
            Choice::new("rough", 32, [0.8, 0.88, 0.96]),
            Choice::new("runs-flat", 41, [0.95, 1.03, 1.12]),
            Choice::new("runs-hidden", 16, [1.2, 1.4, 1.7]),
        ]
    },
    &JUDGEMENT,
);
static HEM_KIND: Input = Input::by(
    "Hem: kind",
    "hem",
    const {
        &[
            Choice::new("uneven-raw", 10, [0.45, 0.55, 0.7]),
            Choice::new("shows", 36, [0.72, 0.82, 0.93]),
            Choice::new("even", 39, [0.95, 1.05, 1.17]),
            Choice::new("unseen", 15, [1.4, 1.8, 2.6]),
        ]
    },
    &JUDGEMENT,
);

const ROUND_SEWING: &[Part] = &[
    Part::new("Cutting", const { &[Use::of(&CUT_MINUTES), Use::of(&PIECE_CLOTH), Use::of(&SEWING_MINUTE)] }),
    Part::new("Pressing, looking over, packing", const { &[Use::of(&PACK_MINUTES), Use::of(&SEWING_MINUTE)] }),
];
static CUT_MINUTES: Input = Input::fixed("Cutting, minutes", Range::new(1.2, 1.7, 2.4), &JUDGEMENT);
static PACK_MINUTES: Input = Input::fixed("Pressing and packing, minutes", Range::new(2.0, 2.8, 3.9), &JUDGEMENT);

const FINISHING: Part = Part::new("Finish, wash or pleating, and tests", const { &[Use::of(&FINISH)] });
static FINISH: Input = Input::rate(&price::FINISH, &COMMON_PRACTICE);
