//! Outerwear, the bill: outer cloth, lining, filling, trims, sewing by parts, cutting and packing, finish; and how checks move them.
//!
//! A padded jacket takes 45 to 90 minutes to sew, a trench or wool coat 70 to 120 (common practice). How they fall on the parts, and how
//! far a check moves one, is judgement.

use super::prices as price;
use crate::catalog::rates::SEWING_MINUTE;
use crate::catalog::sources::{COMMON_PRACTICE, JUDGEMENT, OTHER_COSTS, OUTERWEAR_MINUTES};
use crate::cost::{Bill, Choice, Input, Life, Line, Part, Range, Use, sources::WEAR_SURVEYS};
use crate::trade::Aspect;

/// What goes into a jacket or coat for outside.
pub(in crate::catalog) static BILL: Bill = Bill {
    lines: &[
        Line { key: "cloth", name: "Outer cloth", pays_for: Aspect::Cloth, parts: &[CLOTH] },
        Line { key: "lining", name: "Lining, pocket bags", pays_for: Aspect::Trims, parts: &[LINING_CLOTH] },
        Line { key: "fill", name: "Filling", pays_for: Aspect::Cloth, parts: &[FILLING] },
        Line { key: "trims", name: "Trims", pays_for: Aspect::Trims, parts: TRIMS },
        Line { key: "sewing", name: "Sewing", pays_for: Aspect::Making, parts: SEWING },
        Line { key: "cutting-packing", name: "Cutting, looking over, packing", pays_for: Aspect::Making, parts: ROUND_SEWING },
        Line { key: "finish", name: "Finish and tests", pays_for: Aspect::Finish, parts: FINISHING },
    ],
    freight: &price::FREIGHT,
    duties: &price::DUTIES,
    life: Life { wears: 450.0, spread: 0.75, washes: 0.01, wash_cost: 8.0, years: 6.0 },
    life_source: &WEAR_SURVEYS,
};

const CLOTH: Part =
    Part::new("Outer cloth", const { &[Use::of(&SHELL), Use::of(&METRES), Use::of(&HAND), Use::of(&WEIGHT), Use::of(&MILL)] });
static SHELL: Input = Input::by(
    "Outer cloth: price of a metre",
    "shell",
    const {
        &[
            Choice::rate("polyester", 40, &price::POLYESTER),
            Choice::rate("nylon-blend", 25, &price::NYLON),
            Choice::rate("cotton-waxed", 12, &price::COTTON),
            Choice::rate("wool", 15, &price::WOOL),
            Choice::rate("membrane-fine", 8, &price::FINE),
        ]
    },
    &OTHER_COSTS,
);
static METRES: Input = Input::fixed("Outer cloth: metres", Range::new(1.95, 2.3, 2.75), &COMMON_PRACTICE);
static HAND: Input = Input::by(
    "Outer cloth: yarn and finish",
    "cloth-hand",
    const {
        &[
            Choice::new("limp-flaking", 9, [0.72, 0.8, 0.88]),
            Choice::new("thin", 33, [0.83, 0.9, 0.98]),
            Choice::new("firm", 42, [0.97, 1.05, 1.14]),
            Choice::new("dense", 16, [1.1, 1.22, 1.4]),
        ]
    },
    &JUDGEMENT,
);
// Wool is heavy and dear already: within a kind of cloth weight moves the price less than its grams.
static WEIGHT: Input = Input::by(
    "Outer cloth: weight",
    "shell-weight",
    const {
        &[
            Choice::new("under-90", 28, [0.84, 0.92, 1.0]),
            Choice::new("90-to-250", 40, [0.93, 1.0, 1.07]),
            Choice::new("250-to-400", 18, [1.0, 1.08, 1.17]),
            Choice::new("over-400", 14, [1.08, 1.18, 1.3]),
        ]
    },
    &JUDGEMENT,
);
// The label names where it was sewn; makers often, not always, buy cloth near by.
static MILL: Input = Input::by(
    "Outer cloth: country of the mill",
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

const LINING_CLOTH: Part = Part::new("Lining, pocket bags", const { &[Use::of(&LINING)] });
static LINING: Input = Input::by(
    "Lining",
    "lining",
    const {
        &[
            Choice::rate("thin-slips", 12, &price::LINING_THIN),
            Choice::rate("plain", 40, &price::LINING_PLAIN),
            Choice::rate("firm", 35, &price::LINING_FIRM),
            Choice::rate("firm-warm", 13, &price::LINING_WARM),
        ]
    },
    &OTHER_COSTS,
);

const FILLING: Part = Part::new("Filling", const { &[Use::of(&FILL), Use::of(&FULLNESS)] });
static FILL: Input = Input::by(
    "Filling",
    "filling",
    const {
        &[
            Choice::new("unfilled", 45, [0.01, 0.01, 0.01]),
            Choice::rate("fibre", 38, &price::WADDING),
            Choice::rate("down", 17, &price::DOWN),
        ]
    },
    &OTHER_COSTS,
);
static FULLNESS: Input = Input::by(
    "Filling: how full",
    "fill-even",
    const {
        &[
            Choice::new("empty", 9, [0.6, 0.7, 0.82]),
            Choice::new("uneven", 33, [0.78, 0.87, 0.97]),
            Choice::new("even", 42, [0.97, 1.06, 1.17]),
            Choice::new("even-corners", 16, [1.15, 1.32, 1.55]),
        ]
    },
    &JUDGEMENT,
);

const TRIMS: &[Part] = &[
    Part::new("Main zip", const { &[Use::of(&ZIP)] }),
    Part::new("Other zips, snaps, cords, buttons", const { &[Use::of(&HARDWARE)] }),
    Part::new("Thread, tape, interlining", const { &[Use::of(&THREAD)] }),
    Part::new("Labels", const { &[Use::of(&LABELS)] }),
    Part::new("Hanger, bag, hang tag", const { &[Use::of(&PACK)] }),
];
static ZIP: Input = Input::by(
    "Main zip",
    "zip",
    const {
        &[
            Choice::rate("catches", 9, &price::ZIP_THIN),
            Choice::rate("rough", 31, &price::ZIP_PLAIN),
            Choice::rate("guarded", 43, &price::ZIP_SOUND),
            Choice::rate("heavy", 17, &price::ZIP_HEAVY),
        ]
    },
    &OTHER_COSTS,
);
static HARDWARE: Input = Input::by(
    "Zips, snaps, cords, buttons",
    "hardware",
    const {
        &[
            Choice::rate("under-6", 25, &price::HARDWARE_FEW),
            Choice::rate("6-to-10", 40, &price::HARDWARE_USUAL),
            Choice::rate("11-to-16", 25, &price::HARDWARE_MANY),
            Choice::rate("over-16", 10, &price::HARDWARE_MOST),
        ]
    },
    &OTHER_COSTS,
);
static THREAD: Input = Input::rate(&price::THREAD, &COMMON_PRACTICE);
static LABELS: Input = Input::rate(&price::LABELS, &COMMON_PRACTICE);
static PACK: Input = Input::rate(&price::PACK, &COMMON_PRACTICE);

// Minutes, within 1.2 times.
static BODY_MINUTES: Input = Input::fixed("Panels and armholes: minutes", Range::within(13.0, 1.2), &OUTERWEAR_MINUTES);
static TOP_MINUTES: Input = Input::fixed("Sleeves, collar or hood: minutes", Range::within(12.0, 1.2), &OUTERWEAR_MINUTES);
static QUILT_MINUTES: Input = Input::fixed("Filling and quilting: minutes", Range::within(14.0, 1.2), &OUTERWEAR_MINUTES);
static EDGE_MINUTES: Input = Input::fixed("Fronts and edges: minutes", Range::within(8.0, 1.2), &OUTERWEAR_MINUTES);
static ZIP_MINUTES: Input = Input::fixed("Zips, snaps, cords: minutes", Range::within(7.0, 1.2), &OUTERWEAR_MINUTES);
static POCKET_MINUTES: Input = Input::fixed("Pockets, tabs, tacks: minutes", Range::within(8.0, 1.2), &OUTERWEAR_MINUTES);
static LINING_MINUTES: Input = Input::fixed("Lining: minutes", Range::within(8.0, 1.2), &OUTERWEAR_MINUTES);
static SMALL_MINUTES: Input = Input::fixed("Labels, loops, trimming: minutes", Range::within(4.0, 1.2), &OUTERWEAR_MINUTES);
const SEWING: &[Part] = &[
    Part::new("Panels and armholes", const { &[Use::of(&BODY_MINUTES), Use::of(&SEAM_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Sleeves, collar or hood", const { &[Use::of(&TOP_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Filling and quilting", const { &[Use::of(&QUILT_MINUTES), Use::of(&QUILTED), Use::of(&SEWING_MINUTE)] }),
    Part::new("Fronts and edges", const { &[Use::of(&EDGE_MINUTES), Use::of(&EDGE_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Zips, snaps, cords", const { &[Use::of(&ZIP_MINUTES), Use::of(&HARDWARE_WORK), Use::of(&SEWING_MINUTE)] }),
    Part::new("Pockets, tabs, tacks", const { &[Use::of(&POCKET_MINUTES), Use::of(&TACK_KIND), Use::of(&SEWING_MINUTE)] }),
    Part::new("Lining", const { &[Use::of(&LINING_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Labels, loops, trimming", const { &[Use::of(&SMALL_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Pressing and hand work", const { &[Use::of(&PRESS_MINUTES), Use::of(&SEWING_MINUTE)] }),
];
static SEAM_KIND: Input = Input::by(
    "Panels: kind of seam",
    "seams",
    const {
        &[
            Choice::new("raw", 15, [0.65, 0.74, 0.84]),
            Choice::new("topstitched", 42, [0.86, 0.94, 1.03]),
            Choice::new("bound", 31, [1.05, 1.18, 1.33]),
            Choice::new("taped", 12, [1.3, 1.55, 1.9]),
        ]
    },
    &JUDGEMENT,
);
static QUILTED: Input = Input::by(
    "Filling: work",
    "filling",
    const {
        &[
            Choice::new("unfilled", 45, [0.01, 0.01, 0.01]),
            Choice::new("fibre", 38, [0.8, 0.92, 1.05]),
            Choice::new("down", 17, [1.05, 1.3, 1.6]),
        ]
    },
    &JUDGEMENT,
);
static EDGE_KIND: Input = Input::by(
    "Fronts and edges: care",
    "edges",
    const {
        &[
            Choice::new("off", 8, [0.74, 0.82, 0.9]),
            Choice::new("slightly", 31, [0.84, 0.91, 0.98]),
            Choice::new("level", 44, [0.97, 1.03, 1.1]),
            Choice::new("level-crisp", 17, [1.12, 1.25, 1.45]),
        ]
    },
    &JUDGEMENT,
);
static HARDWARE_WORK: Input = Input::by(
    "Zips, snaps, cords: how many",
    "hardware",
    const {
        &[
            Choice::new("under-6", 25, [0.55, 0.65, 0.78]),
            Choice::new("6-to-10", 40, [0.86, 0.96, 1.07]),
            Choice::new("11-to-16", 25, [1.15, 1.35, 1.6]),
            Choice::new("over-16", 10, [1.5, 1.85, 2.3]),
        ]
    },
    &JUDGEMENT,
);
static TACK_KIND: Input = Input::by(
    "Pockets and tacks: care",
    "tacks",
    const {
        &[
            Choice::new("none", 12, [0.8, 0.87, 0.94]),
            Choice::new("some", 36, [0.88, 0.94, 1.0]),
            Choice::new("most", 38, [0.97, 1.04, 1.12]),
            Choice::new("all-backed", 14, [1.12, 1.25, 1.42]),
        ]
    },
    &JUDGEMENT,
);
// A padded jacket is hardly pressed; a wool coat is shaped under the iron and partly sewn by hand.
static PRESS_MINUTES: Input = Input::by(
    "Pressing and hand work by cloth",
    "shell",
    const {
        &[
            Choice::new("polyester", 40, [2.5, 4.0, 6.0]),
            Choice::new("nylon-blend", 25, [2.5, 4.0, 6.0]),
            Choice::new("cotton-waxed", 12, [4.0, 6.0, 9.0]),
            Choice::new("wool", 15, [16.0, 22.0, 31.0]),
            Choice::new("membrane-fine", 8, [10.0, 17.0, 28.0]),
        ]
    },
    &JUDGEMENT,
);

const ROUND_SEWING: &[Part] = &[
    Part::new("Cutting", const { &[Use::of(&CUT_MINUTES), Use::of(&SEWING_MINUTE)] }),
    Part::new("Looking over, packing", const { &[Use::of(&PACK_MINUTES), Use::of(&SEWING_MINUTE)] }),
];
static CUT_MINUTES: Input = Input::fixed("Cutting, minutes", Range::new(3.5, 5.0, 7.0), &JUDGEMENT);
static PACK_MINUTES: Input = Input::fixed("Packing, minutes", Range::new(3.0, 4.0, 5.5), &JUDGEMENT);

const FINISHING: &[Part] =
    &[Part::new("Finish and tests", const { &[Use::of(&FINISH)] }), Part::new("Against rain", const { &[Use::of(&REPELLENT)] })];
static FINISH: Input = Input::rate(&price::FINISH, &COMMON_PRACTICE);
static REPELLENT: Input = Input::by(
    "Against rain",
    "rain",
    const { &[Choice::new("no-claim", 60, [0.01, 0.01, 0.01]), Choice::rate("rain", 40, &price::REPELLENT)] },
    &JUDGEMENT,
);
