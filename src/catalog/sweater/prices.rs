//! Sweaters, what things cost: yarn by the kilogram, a minute of the knitting machine, trims, finish, freight, duty. US dollars, to be
//! changed by the person.

use crate::catalog::sources;
use crate::cost::{Duty, JUDGED, Market, Rate, RateUnit, sources as cost_sources};
use crate::source::Source;

const SWEATERS: &Source = &sources::OTHER_COSTS;

// Cloth comes knitted to a piece of some 340 g, so yarn is said by the piece.
pub(super) static ACRYLIC: Rate =
    Rate::new("sweater-yarn-acrylic", "Yarn for a sweater, acrylic", RateUnit::UsdAPiece, [1.75, 2.3, 3.0], SWEATERS, JUDGED);
pub(super) static BLEND: Rate =
    Rate::new("sweater-yarn-blend", "Yarn for a sweater, a blend", RateUnit::UsdAPiece, [2.9, 3.9, 5.4], SWEATERS, JUDGED);
pub(super) static COTTON_WOOL: Rate = Rate::new(
    "sweater-yarn-cotton-wool",
    "Yarn for a sweater, cotton or wool",
    RateUnit::UsdAPiece,
    [3.8, 5.3, 7.4],
    SWEATERS,
    JUDGED,
);
pub(super) static FINE_WOOL: Rate = Rate::new(
    "sweater-yarn-fine-wool",
    "Yarn for a sweater, fine wool",
    RateUnit::UsdAPiece,
    [8.5, 11.5, 16.0],
    SWEATERS,
    JUDGED,
);
pub(super) static CASHMERE: Rate =
    Rate::new("sweater-yarn-cashmere", "Yarn for a sweater, cashmere", RateUnit::UsdAPiece, [24.0, 33.0, 45.0], SWEATERS, JUDGED);

pub(super) static THREAD: Rate =
    Rate::new("sweater-thread", "Linking yarn and tape, a sweater", RateUnit::UsdAPiece, [0.05, 0.08, 0.15], SWEATERS, JUDGED);
pub(super) static LABELS: Rate =
    Rate::new("sweater-labels", "Labels, a sweater", RateUnit::UsdAPiece, [0.06, 0.1, 0.2], SWEATERS, JUDGED);
pub(super) static PACK: Rate =
    Rate::new("sweater-pack", "Hang tag, bag, a sweater", RateUnit::UsdAPiece, [0.07, 0.11, 0.2], SWEATERS, JUDGED);
pub(super) static BUTTONS_PLAIN: Rate =
    Rate::new("sweater-buttons", "Buttons of a cardigan", RateUnit::UsdAPiece, [0.1, 0.18, 0.35], SWEATERS, JUDGED);
pub(super) static BUTTONS_TAPE: Rate = Rate::new(
    "sweater-buttons-tape",
    "Buttons of a cardigan, with tape",
    RateUnit::UsdAPiece,
    [0.22, 0.38, 0.8],
    SWEATERS,
    JUDGED,
);
pub(super) static FINISH: Rate =
    Rate::new("sweater-finish", "Wash, steam and tests, a sweater", RateUnit::UsdAPiece, [0.3, 0.5, 0.9], SWEATERS, JUDGED);
pub(super) static KNITTING_MINUTE: Rate =
    Rate::new("knitting-minute", "Minute of a knitting machine", RateUnit::UsdAMinute, [0.018, 0.026, 0.04], SWEATERS, JUDGED);
pub(super) static FREIGHT: Rate = Rate::new(
    "sweater-freight",
    "Freight and insurance, a sweater",
    RateUnit::UsdAPiece,
    [0.3, 0.5, 1.0],
    &cost_sources::COST_SHEET_SHARES,
    JUDGED,
);

const TARIFFS: &Source = &sources::SWEATER_TARIFFS;

static US_DUTY: Rate =
    Rate::new("us-sweater-duty", "Duty on sweaters, United States", RateUnit::Share, [0.165, 0.21, 0.38], TARIFFS, JUDGED);
static EU_DUTY: Rate =
    Rate::new("eu-sweater-duty", "Duty on sweaters, European Union", RateUnit::Share, [0.12; 3], TARIFFS, JUDGED);
static UK_DUTY: Rate =
    Rate::new("uk-sweater-duty", "Duty on sweaters, United Kingdom", RateUnit::Share, [0.12; 3], TARIFFS, JUDGED);
static IN_DUTY: Rate =
    Rate::new("in-sweater-duty", "Duty on sweaters, India", RateUnit::Share, [0.20, 0.22, 0.275], TARIFFS, JUDGED);
static JP_DUTY: Rate =
    Rate::new("jp-sweater-duty", "Duty on sweaters, Japan", RateUnit::Share, [0.074, 0.10, 0.109], TARIFFS, JUDGED);

const MADE_IN: &str = "made-in";

/// Who pays duty where. Which countries have an agreement is from memory; how many of a hundred sweaters meet its terms is judgement.
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
