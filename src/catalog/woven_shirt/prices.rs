//! Shirts, what things cost: shirting by the metre, trims, press, freight, duty. US dollars, to be changed by the person.

use crate::catalog::sources;
use crate::cost::{Duty, JUDGED, Market, Rate, RateUnit, TARIFFS_READ, sources as cost_sources};
use crate::source::Source;

const SHIRTS: &Source = &sources::OTHER_COSTS;

pub(super) static CLOTH_THIN: Rate =
    Rate::new("shirting-thin", "Shirting, thin and plain, wide", RateUnit::UsdAMetre, [1.2, 1.7, 2.4], SHIRTS, JUDGED);
pub(super) static CLOTH_PLAIN: Rate =
    Rate::new("shirting-plain", "Shirting of a plain mill, wide", RateUnit::UsdAMetre, [1.7, 2.5, 3.6], SHIRTS, JUDGED);
pub(super) static CLOTH_FINE: Rate =
    Rate::new("shirting-fine", "Shirting, fine, wide", RateUnit::UsdAMetre, [2.6, 3.7, 5.4], SHIRTS, JUDGED);
pub(super) static CLOTH_DENSE: Rate =
    Rate::new("shirting-dense", "Shirting, fine and dense, wide", RateUnit::UsdAMetre, [3.8, 5.6, 9.0], SHIRTS, JUDGED);

pub(super) static STIFFENING: Rate =
    Rate::new("shirt-stiffening", "Stiffening of collar and cuffs", RateUnit::UsdAPiece, [0.10, 0.18, 0.35], SHIRTS, JUDGED);
pub(super) static BUTTONS_PLAIN: Rate =
    Rate::new("shirt-buttons-plain", "Shirt buttons, plastic", RateUnit::UsdAPiece, [0.06, 0.12, 0.22], SHIRTS, JUDGED);
pub(super) static BUTTONS_SHELL: Rate =
    Rate::new("shirt-buttons-shell", "Shirt buttons, often shell", RateUnit::UsdAPiece, [0.15, 0.45, 1.10], SHIRTS, JUDGED);
pub(super) static THREAD: Rate =
    Rate::new("shirt-thread", "Thread, a shirt", RateUnit::UsdAPiece, [0.06, 0.10, 0.20], SHIRTS, JUDGED);
pub(super) static LABELS: Rate =
    Rate::new("shirt-labels", "Labels, a shirt", RateUnit::UsdAPiece, [0.05, 0.10, 0.25], SHIRTS, JUDGED);
pub(super) static PACK: Rate =
    Rate::new("shirt-pack", "Hang tag, pins, card, bag, a shirt", RateUnit::UsdAPiece, [0.10, 0.20, 0.40], SHIRTS, JUDGED);
pub(super) static PRESS: Rate =
    Rate::new("shirt-press", "Wash or press, and tests, a shirt", RateUnit::UsdAPiece, [0.05, 0.15, 0.40], SHIRTS, JUDGED);
pub(super) static FREIGHT: Rate = Rate::new(
    "shirt-freight",
    "Freight and insurance, a shirt",
    RateUnit::UsdAPiece,
    [0.15, 0.25, 0.55],
    &cost_sources::COST_SHEET_SHARES,
    JUDGED,
);

static US_DUTY: Rate = Rate::new(
    "us-shirt-duty",
    "Duty on shirts, United States",
    RateUnit::Share,
    [0.197, 0.22, 0.38],
    &sources::SHIRT_TARIFFS,
    TARIFFS_READ,
);
static EU_DUTY: Rate =
    Rate::new("eu-shirt-duty", "Duty on shirts, European Union", RateUnit::Share, [0.12; 3], &sources::SHIRT_TARIFFS, JUDGED);
static UK_DUTY: Rate =
    Rate::new("uk-shirt-duty", "Duty on shirts, United Kingdom", RateUnit::Share, [0.12; 3], &sources::SHIRT_TARIFFS, JUDGED);
static IN_DUTY: Rate =
    Rate::new("in-shirt-duty", "Duty on shirts, India", RateUnit::Share, [0.20, 0.22, 0.275], &sources::SHIRT_TARIFFS, JUDGED);
static JP_DUTY: Rate =
    Rate::new("jp-shirt-duty", "Duty on shirts, Japan", RateUnit::Share, [0.074, 0.09, 0.109], &sources::SHIRT_TARIFFS, JUDGED);

const MADE_IN: &str = "made-in";

/// Who pays duty where. Which countries have an agreement is from memory; how many of a hundred shirts meet its terms is judgement.
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
