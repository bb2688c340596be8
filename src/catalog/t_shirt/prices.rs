//! T-shirts, what things cost: jersey by the square metre, trims, print and finish, freight, duty. US dollars, to be changed by the person.

use crate::catalog::sources;
use crate::cost::{Duty, JUDGED, Market, Rate, RateUnit, sources as cost_sources};
use crate::source::Source;

const SHIRTS: &Source = &sources::OTHER_COSTS;

pub(super) static JERSEY_OPEN: Rate =
    Rate::new("jersey-open", "Jersey for a T-shirt, open, 170 g/m²", RateUnit::UsdAPiece, [0.80, 1.02, 1.30], SHIRTS, JUDGED);
pub(super) static JERSEY_PLAIN: Rate =
    Rate::new("jersey-plain", "Jersey for a T-shirt, plain, 170 g/m²", RateUnit::UsdAPiece, [0.95, 1.22, 1.58], SHIRTS, JUDGED);
pub(super) static JERSEY_CLOSE: Rate =
    Rate::new("jersey-close", "Jersey for a T-shirt, close, 170 g/m²", RateUnit::UsdAPiece, [1.10, 1.45, 1.90], SHIRTS, JUDGED);
pub(super) static JERSEY_FIRM: Rate = Rate::new(
    "jersey-firm",
    "Jersey for a T-shirt, close and firm, 170 g/m²",
    RateUnit::UsdAPiece,
    [1.30, 1.80, 2.60],
    SHIRTS,
    JUDGED,
);
pub(super) static THREAD: Rate =
    Rate::new("t-shirt-thread", "Thread and tape, a T-shirt", RateUnit::UsdAPiece, [0.03, 0.05, 0.10], SHIRTS, JUDGED);
pub(super) static LABELS: Rate =
    Rate::new("t-shirt-labels", "Labels, a T-shirt", RateUnit::UsdAPiece, [0.02, 0.05, 0.10], SHIRTS, JUDGED);
pub(super) static PACK: Rate =
    Rate::new("t-shirt-pack", "Hang tag, bag, a T-shirt", RateUnit::UsdAPiece, [0.04, 0.07, 0.14], SHIRTS, JUDGED);
pub(super) static FINISH: Rate =
    Rate::new("t-shirt-finish", "Press, wash and tests, a T-shirt", RateUnit::UsdAPiece, [0.02, 0.05, 0.12], SHIRTS, JUDGED);
pub(super) static PRINT_CRACKS: Rate =
    Rate::new("print-cracks", "Print that cracks", RateUnit::UsdAPiece, [0.08, 0.15, 0.35], SHIRTS, JUDGED);
pub(super) static PRINT_PLATE: Rate =
    Rate::new("print-plate", "Print as a thick film", RateUnit::UsdAPiece, [0.10, 0.20, 0.45], SHIRTS, JUDGED);
pub(super) static PRINT_FLEXES: Rate =
    Rate::new("print-flexes", "Print that goes along", RateUnit::UsdAPiece, [0.12, 0.25, 0.60], SHIRTS, JUDGED);
pub(super) static PRINT_SOFT: Rate =
    Rate::new("print-in-cloth", "Print that lies in the cloth", RateUnit::UsdAPiece, [0.18, 0.38, 0.90], SHIRTS, JUDGED);
pub(super) static FREIGHT: Rate = Rate::new(
    "t-shirt-freight",
    "Freight and insurance, a T-shirt",
    RateUnit::UsdAPiece,
    [0.10, 0.25, 0.55],
    &cost_sources::COST_SHEET_SHARES,
    JUDGED,
);

static US_DUTY: Rate = Rate::new(
    "us-t-shirt-duty",
    "Duty on T-shirts, United States",
    RateUnit::Share,
    [0.165, 0.20, 0.36],
    &sources::T_SHIRT_TARIFFS,
    JUDGED,
);
static EU_DUTY: Rate = Rate::new(
    "eu-t-shirt-duty",
    "Duty on T-shirts, European Union",
    RateUnit::Share,
    [0.12; 3],
    &sources::T_SHIRT_TARIFFS,
    JUDGED,
);
static UK_DUTY: Rate = Rate::new(
    "uk-t-shirt-duty",
    "Duty on T-shirts, United Kingdom",
    RateUnit::Share,
    [0.12; 3],
    &sources::T_SHIRT_TARIFFS,
    JUDGED,
);
static IN_DUTY: Rate = Rate::new(
    "in-t-shirt-duty",
    "Duty on T-shirts, India",
    RateUnit::Share,
    [0.20, 0.22, 0.275],
    &sources::T_SHIRT_TARIFFS,
    JUDGED,
);
static JP_DUTY: Rate = Rate::new(
    "jp-t-shirt-duty",
    "Duty on T-shirts, Japan",
    RateUnit::Share,
    [0.074, 0.09, 0.109],
    &sources::T_SHIRT_TARIFFS,
    JUDGED,
);

const MADE_IN: &str = "made-in";

/// Who pays duty where. Which countries have an agreement is from memory; how many of a hundred T-shirts meet its terms is judgement.
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
