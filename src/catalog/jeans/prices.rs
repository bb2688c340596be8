//! Jeans, what things cost: cloth by the metre, pocketing, trims, wash and dry work, freight, duty. US dollars, to be changed by the person.

use crate::catalog::sources;
use crate::cost::{Duty, JUDGED, Market, Rate, RateUnit, TARIFFS_READ, sources as cost_sources};
use crate::source::Source;

const TRIMS: &Source = &sources::TRIM_COSTS;
const WASHES: &Source = &sources::WASH_COSTS;

pub(super) static CLOTH_PLAIN: Rate = Rate::new(
    "denim-plain",
    "Denim of a plain mill, 12 oz, wide",
    RateUnit::UsdAMetre,
    [1.9, 2.5, 3.3],
    &sources::DENIM_PRICES,
    JUDGED,
);
pub(super) static CLOTH_MIDDLE: Rate = Rate::new(
    "denim-middle",
    "Denim of a middling mill, 12 oz, wide",
    RateUnit::UsdAMetre,
    [2.6, 3.6, 5.0],
    &sources::DENIM_PRICES,
    JUDGED,
);
pub(super) static CLOTH_BETTER: Rate = Rate::new(
    "denim-better",
    "Denim of a better mill, 12 oz, wide",
    RateUnit::UsdAMetre,
    [3.8, 5.4, 8.0],
    &sources::DENIM_PRICES,
    JUDGED,
);

pub(super) static SELVEDGE: Rate = Rate::new(
    "denim-selvedge",
    "A metre with selvedge, over one without",
    RateUnit::Times,
    [1.3, 1.9, 2.8],
    &sources::DENIM_PRICES,
    JUDGED,
);
pub(super) static STRETCH: Rate = Rate::new(
    "denim-stretch",
    "A metre with elastic yarn, over one without",
    RateUnit::Times,
    [1.08, 1.13, 1.20],
    &sources::DENIM_PRICES,
    JUDGED,
);

pub(super) static POCKETING_LIMP: Rate =
    Rate::new("pocketing-limp", "Pocket cloth, limp", RateUnit::UsdAPiece, [0.14, 0.20, 0.28], TRIMS, JUDGED);
pub(super) static POCKETING_THIN: Rate =
    Rate::new("pocketing-thin", "Pocket cloth, thin", RateUnit::UsdAPiece, [0.22, 0.30, 0.42], TRIMS, JUDGED);
pub(super) static POCKETING_FIRM: Rate =
    Rate::new("pocketing-firm", "Pocket cloth, firm twill", RateUnit::UsdAPiece, [0.38, 0.52, 0.75], TRIMS, JUDGED);
pub(super) static POCKETING_HEAVY: Rate =
    Rate::new("pocketing-heavy", "Pocket cloth, heavy twill", RateUnit::UsdAPiece, [0.65, 0.95, 1.40], TRIMS, JUDGED);
pub(super) static ZIP: Rate = Rate::new("zip", "Zip", RateUnit::UsdAPiece, [0.12, 0.30, 0.60], TRIMS, JUDGED);
pub(super) static FLY_BUTTONS: Rate =
    Rate::new("fly-buttons", "Fly buttons", RateUnit::UsdAPiece, [0.35, 0.60, 1.50], TRIMS, JUDGED);
pub(super) static METAL_LOOSE: Rate =
    Rate::new("metal-loose", "Button and rivets that turn", RateUnit::UsdAPiece, [0.10, 0.14, 0.22], TRIMS, JUDGED);
pub(super) static METAL_LIGHT: Rate =
    Rate::new("metal-light", "Button and rivets, thin", RateUnit::UsdAPiece, [0.13, 0.20, 0.30], TRIMS, JUDGED);
pub(super) static METAL_FIRM: Rate =
    Rate::new("metal-firm", "Button and rivets, firm", RateUnit::UsdAPiece, [0.20, 0.28, 0.42], TRIMS, JUDGED);
pub(super) static METAL_BACKED: Rate =
    Rate::new("metal-backed", "Button and rivets, backed", RateUnit::UsdAPiece, [0.35, 0.55, 0.90], TRIMS, JUDGED);
pub(super) static THREAD: Rate =
    Rate::new("thread", "Thread, a pair of jeans", RateUnit::UsdAPiece, [0.18, 0.28, 0.60], TRIMS, JUDGED);
pub(super) static LABELS: Rate =
    Rate::new("labels", "Labels, a pair of jeans", RateUnit::UsdAPiece, [0.08, 0.15, 0.35], TRIMS, JUDGED);
pub(super) static PACK: Rate =
    Rate::new("pack", "Hang tag, bag, share of the carton, jeans", RateUnit::UsdAPiece, [0.12, 0.25, 0.60], TRIMS, JUDGED);

pub(super) static WASH_RAW: Rate = Rate::new("wash-raw", "No wash", RateUnit::UsdAPiece, [0.02, 0.05, 0.12], WASHES, JUDGED);
pub(super) static WASH_RINSED: Rate = Rate::new("wash-rinsed", "Rinse", RateUnit::UsdAPiece, [0.28, 0.40, 0.58], WASHES, JUDGED);
pub(super) static WASH_LIGHT: Rate =
    Rate::new("wash-light", "Light wash, with enzymes", RateUnit::UsdAPiece, [0.50, 0.75, 1.05], WASHES, JUDGED);
pub(super) static WASH_STONE: Rate =
    Rate::new("wash-stone", "Stone wash or bleach", RateUnit::UsdAPiece, [0.90, 1.40, 2.20], WASHES, JUDGED);
pub(super) static WASH_MANY: Rate =
    Rate::new("wash-many-step", "Wash in many steps", RateUnit::UsdAPiece, [2.0, 3.1, 5.2], WASHES, JUDGED);
pub(super) static DRY_LASER: Rate =
    Rate::new("dry-laser", "Whiskers by laser", RateUnit::UsdAPiece, [0.20, 0.35, 0.60], WASHES, JUDGED);
pub(super) static DRY_HAND: Rate =
    Rate::new("dry-hand", "Whiskers and scrapes by hand", RateUnit::UsdAPiece, [0.60, 1.05, 1.90], WASHES, JUDGED);
pub(super) static DRY_BOTH: Rate =
    Rate::new("dry-both", "Laser and hand, or set ridges", RateUnit::UsdAPiece, [0.90, 1.50, 2.60], WASHES, JUDGED);
pub(super) static DRY_TORN: Rate =
    Rate::new("dry-torn", "Holes and repairs", RateUnit::UsdAPiece, [0.80, 1.60, 3.0], WASHES, JUDGED);

pub(super) static TESTS: Rate = Rate::new(
    "test-inspect",
    "Tests and inspection, a pair of jeans",
    RateUnit::UsdAPiece,
    [0.06, 0.10, 0.18],
    &cost_sources::COST_SHEET_SHARES,
    JUDGED,
);
pub(super) static FREIGHT: Rate = Rate::new(
    "jeans-freight",
    "Freight and insurance, a pair of jeans",
    RateUnit::UsdAPiece,
    [0.32, 0.48, 0.90],
    &cost_sources::COST_SHEET_SHARES,
    JUDGED,
);

static US_DUTY: Rate = Rate::new(
    "us-jeans-duty",
    "Duty on jeans, United States",
    RateUnit::Share,
    [0.166, 0.20, 0.38],
    &sources::TARIFFS,
    TARIFFS_READ,
);
static EU_DUTY: Rate =
    Rate::new("eu-jeans-duty", "Duty on jeans, European Union", RateUnit::Share, [0.12; 3], &sources::TARIFFS, TARIFFS_READ);
static UK_DUTY: Rate =
    Rate::new("uk-jeans-duty", "Duty on jeans, United Kingdom", RateUnit::Share, [0.12; 3], &sources::TARIFFS_MEMORY, JUDGED);
static IN_DUTY: Rate =
    Rate::new("in-jeans-duty", "Duty on jeans, India", RateUnit::Share, [0.20, 0.22, 0.275], &sources::TARIFFS_MEMORY, JUDGED);
static JP_DUTY: Rate =
    Rate::new("jp-jeans-duty", "Duty on jeans, Japan", RateUnit::Share, [0.091; 3], &sources::TARIFFS_MEMORY, JUDGED);

const MADE_IN: &str = "made-in";

/// Who pays duty where. Which countries have an agreement is from memory; how many of a hundred pairs meet its terms is judgement.
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
