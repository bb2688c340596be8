//! Dresses and skirts, what things cost: cloth by the metre, lining, zip and trims, finish, freight, duty. US dollars, to be changed by the
//! person.

use crate::catalog::sources;
use crate::cost::{Duty, JUDGED, Market, Rate, RateUnit, sources as cost_sources};
use crate::source::Source;

const DRESSES: &Source = &sources::OTHER_COSTS;

pub(super) static POLYESTER: Rate =
    Rate::new("dress-polyester", "Dress cloth, polyester", RateUnit::UsdAMetre, [1.5, 2.1, 3.0], DRESSES, JUDGED);
pub(super) static VISCOSE: Rate =
    Rate::new("dress-viscose", "Dress cloth, viscose or a blend", RateUnit::UsdAMetre, [2.0, 2.8, 3.9], DRESSES, JUDGED);
pub(super) static COTTON: Rate =
    Rate::new("dress-cotton", "Dress cloth, cotton or linen", RateUnit::UsdAMetre, [2.6, 3.7, 5.4], DRESSES, JUDGED);
pub(super) static SILK: Rate =
    Rate::new("dress-silk", "Dress cloth, wool or silk", RateUnit::UsdAMetre, [6.0, 9.0, 14.0], DRESSES, JUDGED);
pub(super) static LINING_THIN: Rate =
    Rate::new("dress-lining-thin", "Lining of a dress, thin polyester", RateUnit::UsdAPiece, [0.8, 1.1, 1.6], DRESSES, JUDGED);
pub(super) static LINING_PLAIN: Rate =
    Rate::new("dress-lining-plain", "Lining of a dress, plain", RateUnit::UsdAPiece, [1.0, 1.5, 2.2], DRESSES, JUDGED);
pub(super) static LINING_FINE: Rate =
    Rate::new("dress-lining-fine", "Lining of a dress, breathing", RateUnit::UsdAPiece, [2.2, 3.4, 5.5], DRESSES, JUDGED);

pub(super) static ZIP_LIGHT: Rate =
    Rate::new("dress-zip-light", "Zip of a dress, light", RateUnit::UsdAPiece, [0.1, 0.15, 0.24], &sources::TRIM_COSTS, JUDGED);
pub(super) static ZIP_SOUND: Rate =
    Rate::new("dress-zip-sound", "Zip of a dress, sound", RateUnit::UsdAPiece, [0.2, 0.3, 0.45], &sources::TRIM_COSTS, JUDGED);
pub(super) static ZIP_FINE: Rate = Rate::new(
    "dress-zip-fine",
    "Zip of a dress, fine, hidden",
    RateUnit::UsdAPiece,
    [0.35, 0.55, 0.85],
    &sources::TRIM_COSTS,
    JUDGED,
);
pub(super) static THREAD: Rate =
    Rate::new("dress-thread", "Thread, stays, interlining, a dress", RateUnit::UsdAPiece, [0.15, 0.3, 0.65], DRESSES, JUDGED);
pub(super) static SMALL: Rate =
    Rate::new("dress-fastenings", "Hooks, buttons, elastic, a dress", RateUnit::UsdAPiece, [0.08, 0.2, 0.6], DRESSES, JUDGED);
pub(super) static LABELS: Rate =
    Rate::new("dress-labels", "Labels, a dress", RateUnit::UsdAPiece, [0.06, 0.12, 0.3], DRESSES, JUDGED);
pub(super) static PACK: Rate =
    Rate::new("dress-pack", "Hanger, bag, hang tag, a dress", RateUnit::UsdAPiece, [0.15, 0.28, 0.6], DRESSES, JUDGED);
pub(super) static FINISH: Rate =
    Rate::new("dress-finish", "Finish, wash or pleating, and tests", RateUnit::UsdAPiece, [0.06, 0.25, 0.95], DRESSES, JUDGED);
pub(super) static FREIGHT: Rate = Rate::new(
    "dress-freight",
    "Freight and insurance, a dress",
    RateUnit::UsdAPiece,
    [0.3, 0.5, 1.0],
    &cost_sources::COST_SHEET_SHARES,
    JUDGED,
);

const TARIFFS: &Source = &sources::DRESS_TARIFFS;

static US_DUTY: Rate =
    Rate::new("us-dress-duty", "Duty on dresses, United States", RateUnit::Share, [0.084, 0.19, 0.36], TARIFFS, JUDGED);
static EU_DUTY: Rate = Rate::new("eu-dress-duty", "Duty on dresses, European Union", RateUnit::Share, [0.12; 3], TARIFFS, JUDGED);
static UK_DUTY: Rate = Rate::new("uk-dress-duty", "Duty on dresses, United Kingdom", RateUnit::Share, [0.12; 3], TARIFFS, JUDGED);
static IN_DUTY: Rate =
    Rate::new("in-dress-duty", "Duty on dresses, India", RateUnit::Share, [0.20, 0.22, 0.275], TARIFFS, JUDGED);
static JP_DUTY: Rate =
    Rate::new("jp-dress-duty", "Duty on dresses, Japan", RateUnit::Share, [0.074, 0.09, 0.11], TARIFFS, JUDGED);

const MADE_IN: &str = "made-in";

/// Who pays duty where. Which countries have an agreement is from memory; how many of a hundred dresses meet its terms is judgement.
pub(super) static DUTIES: [Duty; 5] = [
    Duty {
        market: Market::UnitedStates,
        rate: &US_DUTY,
        check: MADE_IN,
        pays: &[("central-america", 40), ("north-africa", 60), ("usa-uk", 50)],
        open: 92,
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
        open: 45,
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
        open: 50,
    },
    Duty {
        market: Market::India,
        rate: &IN_DUTY,
        check: MADE_IN,
        pays: &[("south-east-asia", 15), ("bangladesh-pakistan", 30), ("italy-japan", 50)],
        open: 30,
    },
    Duty {
        market: Market::Japan,
        rate: &JP_DUTY,
        check: MADE_IN,
        pays: &[("bangladesh-pakistan", 10), ("south-east-asia", 10), ("italy-japan", 20), ("europe-low", 5), ("usa-uk", 50)],
        open: 50,
    },
];
