//! Jeans, what things cost: cloth by the metre, pocketing, trims, wash and dry work, freight, duty. US dollars, to be changed by the person.

use crate::catalog::sources;
use crate::cost::{Duty, sources as cost_sources};
use crate::cost::{JUDGED, Market, Rate, RateUnit};
use crate::source::Source;
use crate::trade::Day;

/// As of when the United States tariff was read.
const TARIFF_READ: Day = match Day::new(2025, 12, 1) {
    Some(day) => day,
    None => panic!("a day of the calendar"),
};

/// Rates of one unit and source: key, words, and how much.
macro_rules! rates {
    ($unit:ident, $source:expr; $($name:ident $key:literal $words:literal $range:expr;)+) => {
        $(pub(super) static $name: Rate = Rate::new($key, $words, RateUnit::$unit, $range, $source, JUDGED);)+
    };
}

const TRIMS: &Source = &sources::TRIM_COSTS;
const WASHES: &Source = &sources::WASH_COSTS;

rates! {
    UsdAMetre, &sources::DENIM_PRICES;
    CLOTH_PLAIN "denim-plain" "Denim of a plain mill, 12 oz, wide" [1.9, 2.5, 3.3];
    CLOTH_MIDDLE "denim-middle" "Denim of a middling mill, 12 oz, wide" [2.6, 3.6, 5.0];
    CLOTH_BETTER "denim-better" "Denim of a better mill, 12 oz, wide" [3.8, 5.4, 8.0];
}

rates! {
    Times, &sources::DENIM_PRICES;
    SELVEDGE "denim-selvedge" "A metre with selvedge, over one without" [1.25, 1.8, 2.7];
    STRETCH "denim-stretch" "A metre with elastic yarn, over one without" [1.08, 1.13, 1.20];
}

rates! {
    UsdAPiece, TRIMS;
    POCKETING_LIMP "pocketing-limp" "Pocket cloth, limp" [0.14, 0.20, 0.28];
    POCKETING_THIN "pocketing-thin" "Pocket cloth, thin" [0.22, 0.30, 0.42];
    POCKETING_FIRM "pocketing-firm" "Pocket cloth, firm twill" [0.38, 0.52, 0.75];
    POCKETING_HEAVY "pocketing-heavy" "Pocket cloth, heavy twill" [0.65, 0.95, 1.40];
    ZIP "zip" "Zip" [0.12, 0.30, 0.60];
    FLY_BUTTONS "fly-buttons" "Fly buttons" [0.35, 0.60, 1.50];
    METAL_LOOSE "metal-loose" "Button and rivets that turn" [0.10, 0.14, 0.22];
    METAL_LIGHT "metal-light" "Button and rivets, thin" [0.13, 0.20, 0.30];
    METAL_FIRM "metal-firm" "Button and rivets, firm" [0.20, 0.28, 0.42];
    METAL_BACKED "metal-backed" "Button and rivets, backed" [0.35, 0.55, 0.90];
    THREAD "thread" "Thread" [0.18, 0.28, 0.60];
    LABELS "labels" "Labels" [0.08, 0.15, 0.35];
    PACK "pack" "Hang tag, bag, share of the carton" [0.12, 0.25, 0.60];
}

rates! {
    UsdAPiece, WASHES;
    WASH_RAW "wash-raw" "No wash" [0.02, 0.05, 0.12];
    WASH_RINSED "wash-rinsed" "Rinse" [0.28, 0.40, 0.58];
    WASH_LIGHT "wash-light" "Light wash, with enzymes" [0.50, 0.75, 1.05];
    WASH_STONE "wash-stone" "Stone wash or bleach" [0.90, 1.40, 2.20];
    WASH_MANY "wash-many-step" "Wash in many steps" [2.0, 3.1, 5.2];
    DRY_LASER "dry-laser" "Whiskers by laser" [0.20, 0.35, 0.60];
    DRY_HAND "dry-hand" "Whiskers and scrapes by hand" [0.60, 1.05, 1.90];
    DRY_BOTH "dry-both" "Laser and hand, or set ridges" [0.90, 1.50, 2.60];
    DRY_TORN "dry-torn" "Holes and repairs" [0.80, 1.60, 3.0];
}

rates! {
    UsdAPiece, &cost_sources::COST_SHEET_SHARES;
    TESTS "test-inspect" "Tests and inspection" [0.06, 0.10, 0.18];
    FREIGHT "jeans-freight" "Freight and insurance, a pair of jeans" [0.32, 0.48, 0.90];
}

static US_DUTY: Rate = Rate::new(
    "us-jeans-duty",
    "Duty on jeans, United States",
    RateUnit::Share,
    [0.166, 0.20, 0.38],
    &sources::TARIFFS,
    TARIFF_READ,
);
static EU_DUTY: Rate =
    Rate::new("eu-jeans-duty", "Duty on jeans, European Union", RateUnit::Share, [0.12; 3], &sources::TARIFFS, TARIFF_READ);
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
