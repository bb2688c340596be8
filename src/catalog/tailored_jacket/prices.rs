//! The tailored jacket, what things cost: cloth by the metre, what lies inside, trims, freight, duty. US dollars, to be changed by the
//! person.

use crate::catalog::sources;
use crate::cost::{Duty, JUDGED, Market, Rate, RateUnit, TARIFFS_READ, sources as cost_sources};
use crate::source::Source;

const JACKETS: &Source = &sources::JACKET_COSTS;

pub(super) static CLOTH_POLYESTER: Rate =
    Rate::new("suiting-polyester", "Suiting, mostly polyester or viscose", RateUnit::UsdAMetre, [5.0, 7.0, 9.5], JACKETS, JUDGED);
pub(super) static CLOTH_BLEND: Rate =
    Rate::new("suiting-blend", "Suiting of a blend, cotton or linen", RateUnit::UsdAMetre, [7.5, 10.5, 14.5], JACKETS, JUDGED);
pub(super) static CLOTH_WOOL: Rate =
    Rate::new("suiting-wool", "Suiting of wool", RateUnit::UsdAMetre, [11.5, 15.0, 20.5], JACKETS, JUDGED);
pub(super) static CLOTH_FINE: Rate =
    Rate::new("suiting-fine", "Suiting of fine wool, mill named", RateUnit::UsdAMetre, [19.0, 26.0, 36.0], JACKETS, JUDGED);
pub(super) static CLOTH_PRECIOUS: Rate = Rate::new(
    "suiting-precious",
    "Suiting of wool with silk or cashmere",
    RateUnit::UsdAMetre,
    [30.0, 42.0, 65.0],
    JACKETS,
    JUDGED,
);

pub(super) static GLUED_STIFF: Rate =
    Rate::new("front-glued-stiff", "Inside the front: glued, stiff", RateUnit::UsdAPiece, [0.7, 1.0, 1.5], JACKETS, JUDGED);
pub(super) static GLUED_SOFT: Rate =
    Rate::new("front-glued-soft", "Inside the front: glued, soft", RateUnit::UsdAPiece, [1.0, 1.4, 2.1], JACKETS, JUDGED);
pub(super) static FLOATS_CHEST: Rate = Rate::new(
    "front-floats-chest",
    "Inside the front: sewn in, chest and lapel",
    RateUnit::UsdAPiece,
    [2.4, 3.4, 5.0],
    JACKETS,
    JUDGED,
);
pub(super) static FLOATS_HEM: Rate =
    Rate::new("front-floats-hem", "Inside the front: sewn in, to the hem", RateUnit::UsdAPiece, [3.6, 5.2, 8.5], JACKETS, JUDGED);
pub(super) static LINING_THIN: Rate =
    Rate::new("jacket-lining-thin", "Lining, thin polyester", RateUnit::UsdAPiece, [1.1, 1.6, 2.3], JACKETS, JUDGED);
pub(super) static LINING_PLAIN: Rate =
    Rate::new("jacket-lining-plain", "Lining, plain polyester", RateUnit::UsdAPiece, [1.3, 1.9, 2.8], JACKETS, JUDGED);
pub(super) static LINING_MIDDLE: Rate =
    Rate::new("jacket-lining-middle", "Lining, polyester or viscose", RateUnit::UsdAPiece, [1.8, 2.8, 4.4], JACKETS, JUDGED);
pub(super) static LINING_STRONG: Rate =
    Rate::new("jacket-lining-strong", "Lining, viscose or cupro twill", RateUnit::UsdAPiece, [3.6, 5.6, 9.0], JACKETS, JUDGED);
pub(super) static PADS: Rate =
    Rate::new("jacket-pads", "Shoulder pads and sleeve heads", RateUnit::UsdAPiece, [0.5, 0.8, 1.5], JACKETS, JUDGED);
pub(super) static POCKETING: Rate =
    Rate::new("jacket-pocketing", "Pocket cloth, a jacket", RateUnit::UsdAPiece, [0.25, 0.4, 0.7], JACKETS, JUDGED);
pub(super) static BUTTONS_LOOSE: Rate =
    Rate::new("jacket-buttons-loose", "Buttons of a jacket, plain", RateUnit::UsdAPiece, [0.25, 0.4, 0.7], JACKETS, JUDGED);
pub(super) static BUTTONS_FLAT: Rate =
    Rate::new("jacket-buttons-flat", "Buttons of a jacket, firm plastic", RateUnit::UsdAPiece, [0.4, 0.6, 1.0], JACKETS, JUDGED);
pub(super) static BUTTONS_NECKED: Rate = Rate::new(
    "jacket-buttons-necked",
    "Buttons of a jacket, better plastic",
    RateUnit::UsdAPiece,
    [0.6, 1.0, 1.7],
    JACKETS,
    JUDGED,
);
pub(super) static BUTTONS_NATURAL: Rate = Rate::new(
    "jacket-buttons-natural",
    "Buttons of a jacket, horn or nut",
    RateUnit::UsdAPiece,
    [1.8, 3.0, 5.5],
    JACKETS,
    JUDGED,
);
pub(super) static THREAD: Rate =
    Rate::new("jacket-thread", "Thread, a jacket", RateUnit::UsdAPiece, [0.2, 0.3, 0.5], JACKETS, JUDGED);
pub(super) static PACK: Rate =
    Rate::new("jacket-pack", "Labels, hanger, bag, carton, a jacket", RateUnit::UsdAPiece, [0.5, 0.9, 1.8], JACKETS, JUDGED);
pub(super) static TESTS: Rate =
    Rate::new("jacket-tests", "Tests and inspection, a jacket", RateUnit::UsdAPiece, [0.15, 0.3, 0.6], JACKETS, JUDGED);

pub(super) static FREIGHT: Rate = Rate::new(
    "jacket-freight",
    "Freight and insurance, a jacket",
    RateUnit::UsdAPiece,
    [0.6, 1.0, 2.2],
    &cost_sources::RATE_JUDGEMENT,
    JUDGED,
);

// The low end is wool, the listing for man-made fibre is 27.3 per cent; duties that stack on top since 2025 are the high end.
static US_DUTY: Rate = Rate::new(
    "us-jacket-duty",
    "Duty on jackets, United States",
    RateUnit::Share,
    [0.175, 0.22, 0.42],
    &sources::JACKET_TARIFFS,
    TARIFFS_READ,
);
static EU_DUTY: Rate =
    Rate::new("eu-jacket-duty", "Duty on jackets, European Union", RateUnit::Share, [0.12; 3], &sources::JACKET_TARIFFS, JUDGED);
static UK_DUTY: Rate =
    Rate::new("uk-jacket-duty", "Duty on jackets, United Kingdom", RateUnit::Share, [0.12; 3], &sources::JACKET_TARIFFS, JUDGED);
static IN_DUTY: Rate =
    Rate::new("in-jacket-duty", "Duty on jackets, India", RateUnit::Share, [0.20, 0.22, 0.275], &sources::JACKET_TARIFFS, JUDGED);
static JP_DUTY: Rate =
    Rate::new("jp-jacket-duty", "Duty on jackets, Japan", RateUnit::Share, [0.09, 0.10, 0.13], &sources::JACKET_TARIFFS, JUDGED);

const MADE_IN: &str = "made-in";

/// Who pays duty where. Which countries have an agreement is from memory; how many of a hundred pieces meet its terms is judgement.
pub(super) static DUTIES: [Duty; 5] = [
    Duty {
        market: Market::UnitedStates,
        rate: &US_DUTY,
        check: MADE_IN,
        pays: &[("central-america", 40), ("north-africa", 60), ("usa-uk", 50)],
        open: 90,
    },
    Duty {
        market: Market::EuropeanUnion,
        rate: &EU_DUTY,
        check: MADE_IN,
        pays: &[
            ("bangladesh-pakistan", 5),
            ("south-east-asia", 60),
            ("north-africa", 10),
            ("central-america", 60),
            ("turkey", 0),
            ("europe-low", 0),
            ("italy-japan", 5),
            ("usa-uk", 50),
        ],
        open: 40,
    },
    Duty {
        market: Market::UnitedKingdom,
        rate: &UK_DUTY,
        check: MADE_IN,
        pays: &[
            ("bangladesh-pakistan", 5),
            ("south-east-asia", 60),
            ("north-africa", 10),
            ("central-america", 60),
            ("turkey", 5),
            ("europe-low", 5),
            ("italy-japan", 5),
            ("usa-uk", 40),
        ],
        open: 45,
    },
    Duty {
        market: Market::India,
        rate: &IN_DUTY,
        check: MADE_IN,
        pays: &[("south-east-asia", 15), ("bangladesh-pakistan", 30), ("italy-japan", 50)],
        open: 25,
    },
    Duty {
        market: Market::Japan,
        rate: &JP_DUTY,
        check: MADE_IN,
        pays: &[("bangladesh-pakistan", 10), ("south-east-asia", 10), ("italy-japan", 20), ("europe-low", 5), ("usa-uk", 50)],
        open: 45,
    },
];
