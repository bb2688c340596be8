//! The tailored jacket, the bill: cloth, what lies inside and lines it, trims, sewing by parts, cutting and pressing, tests; and how checks
//! move them.
//!
//! No list of operations of a jacket was at hand. Minutes of the parts are judgement, laid out so that a glued jacket comes to 60 to 90
//! sewing minutes and one with a sewn-in layer to 90 to 180, which is common practice (handbook, section 3). How far a check moves a part
//! is judgement too.

use super::prices as price;
use crate::catalog::rates::{
    BANGLADESH_PAKISTAN, CENTRAL_AMERICA, CHINA, EUROPE_LOW, ITALY_JAPAN, NORTH_AFRICA, SOUTH_EAST_ASIA, TURKEY, USA_UK,
};
use crate::catalog::sources::{COMMON_PRACTICE, JACKET_COSTS, JUDGEMENT, MINUTE_COSTS};
use crate::cost::{Bill, Choice, Input, Life, Line, Part, Range, Use, sources::WEAR_SURVEYS};
use crate::trade::Aspect;

/// What goes into a jacket.
pub(in crate::catalog) static BILL: Bill = Bill {
    lines: &[
        Line {
            key: "cloth",
            name: "Cloth",
            pays_for: Aspect::Cloth,
            parts: &[Part::new("Cloth", const { &[Use::of(&METRES), Use::of(&METRE), Use::of(&YARN), Use::of(&MATCHING)] })],
        },
        Line { key: "inside", name: "Lining and inner layers", pays_for: Aspect::Making, parts: INSIDE },
        Line { key: "trims", name: "Trims", pays_for: Aspect::Trims, parts: TRIMS },
        Line { key: "sewing", name: "Sewing", pays_for: Aspect::Making, parts: SEWING },
        Line { key: "cutting", name: "Cutting", pays_for: Aspect::Making, parts: CUTTING },
        Line { key: "pressing", name: "Final pressing, tests", pays_for: Aspect::Finish, parts: PRESSING },
    ],
    freight: &price::FREIGHT,
    duties: &price::DUTIES,
    life: Life { wears: 300.0, spread: 0.75, washes: 0.02, wash_cost: 12.0, years: 6.0 },
    life_source: &WEAR_SURVEYS,
};

static METRES: Input = Input::fixed("Cloth: metres", Range::new(1.55, 1.75, 2.05), &COMMON_PRACTICE);
static METRE: Input = Input::by(
    "Cloth: price of a metre",
    "cloth",
    const {
        &[
            Choice::rate("polyester", 15, &price::CLOTH_POLYESTER),
            Choice::rate("blend", 27, &price::CLOTH_BLEND),
            Choice::rate("wool", 35, &price::CLOTH_WOOL),
            Choice::rate("fine-wool", 17, &price::CLOTH_FINE),
            Choice::rate("precious", 6, &price::CLOTH_PRECIOUS),
        ]
    },
    &JACKET_COSTS,
);
static YARN: Input = Input::by(
    "Cloth: yarn and finish",
    "cloth-crush",
    const {
        &[
            Choice::new("stays", 12, [0.80, 0.88, 0.95]),
            Choice::new("slow", 35, [0.88, 0.95, 1.02]),
            Choice::new("mostly", 38, [0.96, 1.02, 1.10]),
            Choice::new("springs", 15, [1.05, 1.15, 1.30]),
        ]
    },
    &JUDGEMENT,
);
// Where the cloth has no pattern this falls away.
static MATCHING: Input = Input::by(
    "Cloth: matching",
    "match",
    const {
        &[
            Choice::new("nowhere", 18, [1.0, 1.0, 1.0]),
            Choice::new("pockets", 36, [1.01, 1.03, 1.05]),
            Choice::new("front-back", 33, [1.04, 1.08, 1.13]),
            Choice::new("all", 13, [1.08, 1.15, 1.25]),
        ]
    },
    &JUDGEMENT,
);

const INSIDE: &[Part] = &[
    Part::new("Layer inside the front", const { &[Use::of(&LAYER)] }),
    Part::new("Lining", const { &[Use::of(&LINING)] }),
    Part::new("Shoulder pads and sleeve heads", const { &[Use::of(&PADS)] }),
    Part::new("Pocket cloth", const { &[Use::of(&POCKETING)] }),
];
static LAYER: Input = Input::by(
    "Layer inside the front",
    "canvas",
    const {
        &[
            Choice::rate("glued-stiff", 30, &price::GLUED_STIFF),
            Choice::rate("glued-soft", 38, &price::GLUED_SOFT),
            Choice::rate("floats-chest", 24, &price::FLOATS_CHEST),
            Choice::rate("floats-hem", 8, &price::FLOATS_HEM),
        ]
    },
    &JACKET_COSTS,
);
static LINING: Input = Input::by(
    "Lining",
    "lining",
    const {
        &[
            Choice::rate("tight", 10, &price::LINING_THIN),
            Choice::rate("no-ease", 38, &price::LINING_PLAIN),
            Choice::rate("eased", 38, &price::LINING_MIDDLE),
            Choice::rate("eased-fine", 14, &price::LINING_STRONG),
        ]
    },
    &JACKET_COSTS,
);
static PADS: Input = Input::rate(&price::PADS, &JACKET_COSTS);
static POCKETING: Input = Input::rate(&price::POCKETING, &JACKET_COSTS);

const TRIMS: &[Part] = &[
    Part::new("Buttons", const { &[Use::of(&BUTTONS)] }),
    Part::new("Thread", const { &[Use::of(&THREAD)] }),
    Part::new("Labels, hanger, bag, carton", const { &[Use::of(&PACK)] }),
];
static BUTTONS: Input = Input::by(
    "Buttons",
    "buttons",
    const {
        &[
            Choice::rate("loose", 10, &price::BUTTONS_LOOSE),
            Choice::rate("flat", 42, &price::BUTTONS_FLAT),
            Choice::rate("necked", 36, &price::BUTTONS_NECKED),
            Choice::rate("natural", 12, &price::BUTTONS_NATURAL),
        ]
    },
    &JACKET_COSTS,
);
static THREAD: Input = Input::rate(&price::THREAD, &JACKET_COSTS);
static PACK: Input = Input::rate(&price::PACK, &JACKET_COSTS);

// Jackets are sewn in other places than jeans, and by the same rates. Shares of countries: judgement.
static MINUTE: Input = Input::by(
    "Cost of a minute",
    "made-in",
    const {
        &[
            Choice::rate("bangladesh-pakistan", 5, &BANGLADESH_PAKISTAN),
            Choice::rate("south-east-asia", 18, &SOUTH_EAST_ASIA),
            Choice::rate("north-africa", 13, &NORTH_AFRICA),
            Choice::rate("china", 24, &CHINA),
            Choice::rate("central-america", 5, &CENTRAL_AMERICA),
            Choice::rate("turkey", 10, &TURKEY),
            Choice::rate("europe-low", 15, &EUROPE_LOW),
            Choice::rate("italy-japan", 8, &ITALY_JAPAN),
            Choice::rate("usa-uk", 2, &USA_UK),
        ]
    },
    &MINUTE_COSTS,
);

const SEWING: &[Part] = &[
    Part::new("Fronts and their layer", const { &[Use::of(&FRONTS), Use::of(&MINUTE)] }),
    Part::new("Pockets", const { &[Use::of(&POCKETS), Use::of(&POCKET_KIND), Use::of(&MINUTE)] }),
    Part::new("Body seams and lining", const { &[Use::of(&BODY), Use::of(&LINING_KIND), Use::of(&MINUTE)] }),
    Part::new("Collar and lapels", const { &[Use::of(&COLLAR), Use::of(&LAPEL_KIND), Use::of(&MINUTE)] }),
    Part::new("Sleeves and shoulders", const { &[Use::of(&SLEEVES), Use::of(&SLEEVE_KIND), Use::of(&MINUTE)] }),
    Part::new("Buttonholes and buttons", const { &[Use::of(&HOLES), Use::of(&HOLE_KIND), Use::of(&MINUTE)] }),
    Part::new("Cuffs", const { &[Use::of(&CUFFS), Use::of(&MINUTE)] }),
    Part::new("Edges, pressing on the way", const { &[Use::of(&EDGES), Use::of(&EDGE_KIND), Use::of(&MINUTE)] }),
];
static FRONTS: Input = Input::by(
    "Fronts and their layer: minutes",
    "canvas",
    const {
        &[
            Choice::new("glued-stiff", 30, [10.0, 12.5, 16.0]),
            Choice::new("glued-soft", 38, [11.0, 14.0, 18.0]),
            Choice::new("floats-chest", 24, [28.0, 38.0, 52.0]),
            Choice::new("floats-hem", 8, [45.0, 65.0, 95.0]),
        ]
    },
    &JUDGEMENT,
);
static POCKETS: Input = Input::fixed("Pockets: minutes", Range::within(12.0, 1.2), &COMMON_PRACTICE);
static POCKET_KIND: Input = Input::by(
    "Pockets: care",
    "pockets",
    const {
        &[
            Choice::new("gaping", 7, [0.75, 0.85, 0.95]),
            Choice::new("uneven", 34, [0.85, 0.92, 1.0]),
            Choice::new("true", 43, [0.95, 1.03, 1.12]),
            Choice::new("fine", 16, [1.05, 1.2, 1.4]),
        ]
    },
    &JUDGEMENT,
);
static BODY: Input = Input::fixed("Body seams and lining: minutes", Range::within(15.0, 1.2), &COMMON_PRACTICE);
static LINING_KIND: Input = Input::by(
    "Lining: ease and stitches",
    "lining",
    const {
        &[
            Choice::new("tight", 10, [0.80, 0.88, 0.96]),
            Choice::new("no-ease", 38, [0.85, 0.92, 1.0]),
            Choice::new("eased", 38, [0.97, 1.05, 1.15]),
            Choice::new("eased-fine", 14, [1.15, 1.4, 1.8]),
        ]
    },
    &JUDGEMENT,
);
static COLLAR: Input = Input::fixed("Collar and lapels: minutes", Range::within(9.0, 1.2), &COMMON_PRACTICE);
static LAPEL_KIND: Input = Input::by(
    "Lapels: shaping",
    "lapel-roll",
    const {
        &[
            Choice::new("curls", 12, [0.80, 0.88, 0.96]),
            Choice::new("flat", 38, [0.85, 0.93, 1.0]),
            Choice::new("rolls", 37, [0.97, 1.08, 1.2]),
            Choice::new("rolls-alike", 13, [1.1, 1.35, 1.7]),
        ]
    },
    &JUDGEMENT,
);
static SLEEVES: Input = Input::fixed("Sleeves and shoulders: minutes", Range::within(14.0, 1.2), &COMMON_PRACTICE);
static SLEEVE_KIND: Input = Input::by(
    "Sleeves: setting in",
    "sleeve-head",
    const {
        &[
            Choice::new("dents", 12, [0.78, 0.86, 0.95]),
            Choice::new("ripples", 36, [0.86, 0.94, 1.0]),
            Choice::new("clean", 38, [0.97, 1.05, 1.15]),
            Choice::new("clean-pitched", 14, [1.08, 1.25, 1.5]),
        ]
    },
    &JUDGEMENT,
);
static HOLES: Input = Input::fixed("Buttonholes and buttons: minutes", Range::within(5.0, 1.2), &COMMON_PRACTICE);
static HOLE_KIND: Input = Input::by(
    "Buttonholes: kind",
    "buttonholes",
    const {
        &[
            Choice::new("ragged", 9, [0.80, 0.88, 0.96]),
            Choice::new("thin", 40, [0.88, 0.95, 1.0]),
            Choice::new("dense", 39, [1.0, 1.08, 1.2]),
            Choice::new("purled", 12, [1.5, 3.5, 8.0]),
        ]
    },
    &JUDGEMENT,
);
static CUFFS: Input = Input::by(
    "Cuffs: minutes",
    "cuff",
    const { &[Choice::new("sewn-shut", 75, [1.2, 1.6, 2.2]), Choice::new("open", 25, [3.0, 5.0, 9.0])] },
    &JUDGEMENT,
);
static EDGES: Input = Input::fixed("Edges, pressing on the way: minutes", Range::within(12.0, 1.2), &COMMON_PRACTICE);
static EDGE_KIND: Input = Input::by(
    "Edges: trimming and pressing",
    "edges",
    const {
        &[
            Choice::new("bulky", 9, [0.75, 0.85, 0.95]),
            Choice::new("shine", 36, [0.82, 0.90, 1.0]),
            Choice::new("flat", 40, [0.95, 1.05, 1.15]),
            Choice::new("crisp", 15, [1.1, 1.3, 1.6]),
        ]
    },
    &JUDGEMENT,
);

const CUTTING: &[Part] = &[Part::new("Cutting", const { &[Use::of(&CUT), Use::of(&CUT_CARE), Use::of(&MINUTE)] })];
static CUT: Input = Input::fixed("Cutting: minutes", Range::new(7.0, 10.0, 15.0), &COMMON_PRACTICE);
static CUT_CARE: Input = Input::by(
    "Cutting: matching",
    "match",
    const {
        &[
            Choice::new("nowhere", 18, [1.0, 1.0, 1.0]),
            Choice::new("pockets", 36, [1.05, 1.1, 1.2]),
            Choice::new("front-back", 33, [1.15, 1.3, 1.5]),
            Choice::new("all", 13, [1.3, 1.6, 2.2]),
        ]
    },
    &JUDGEMENT,
);

const PRESSING: &[Part] = &[
    Part::new("Final pressing", const { &[Use::of(&PRESS), Use::of(&MINUTE)] }),
    Part::new("Tests and inspection", const { &[Use::of(&TESTS)] }),
];
static PRESS: Input = Input::fixed("Final pressing: minutes", Range::new(6.0, 9.0, 14.0), &COMMON_PRACTICE);
static TESTS: Input = Input::rate(&price::TESTS, &JACKET_COSTS);
