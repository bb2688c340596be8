//! Outerwear, what things cost: outer cloth by the metre, lining, filling, zips and trims, finish, freight, duty. US dollars, to be changed
//! by the person.

use crate::catalog::sources;
use crate::cost::{Duty, JUDGED, Market, Rate, RateUnit, sources as cost_sources};
use crate::source::Source;

const COATS: &Source = &sources::OTHER_COSTS;

pub(super) static POLYESTER: Rate =
    Rate::new("outer-polyester", "Outer cloth, polyester", RateUnit::UsdAMetre, [1.9, 2.7, 3.9], COATS, JUDGED);
pub(super) static NYLON: Rate =
    Rate::new("outer-nylon", "Outer cloth, nylon or a blend", RateUnit::UsdAMetre, [3.1, 4.4, 6.2], COATS, JUDGED);
pub(super) static COTTON: Rate =
    Rate::new("outer-cotton", "Outer cloth, cotton, also waxed", RateUnit::UsdAMetre, [3.8, 5.4, 7.8], COATS, JUDGED);
pub(super) static WOOL: Rate =
    Rate::new("outer-wool", "Outer cloth, wool", RateUnit::UsdAMetre, [7.0, 10.0, 14.5], COATS, JUDGED);
pub(super) static FINE: Rate =
    Rate::new("outer-fine", "Outer cloth, membrane or fine wool", RateUnit::UsdAMetre, [13.0, 19.0, 30.0], COATS, JUDGED);
pub(super) static LINING_THIN: Rate =
    Rate::new("outer-lining-thin", "Lining of a coat, thin", RateUnit::UsdAPiece, [1.0, 1.4, 2.0], COATS, JUDGED);
pub(super) static LINING_PLAIN: Rate =
    Rate::new("outer-lining-plain", "Lining of a coat, plain", RateUnit::UsdAPiece, [1.4, 2.0, 2.9], COATS, JUDGED);
pub(super) static LINING_FIRM: Rate =
    Rate::new("outer-lining-firm", "Lining of a coat, firm", RateUnit::UsdAPiece, [2.2, 3.2, 4.8], COATS, JUDGED);
pub(super) static LINING_WARM: Rate =
    Rate::new("outer-lining-warm", "Lining of a coat, firm, warm pockets", RateUnit::UsdAPiece, [3.0, 4.5, 6.8], COATS, JUDGED);
pub(super) static WADDING: Rate =
    Rate::new("outer-wadding", "Filling of fibre", RateUnit::UsdAPiece, [0.9, 1.5, 2.6], COATS, JUDGED);
pub(super) static DOWN: Rate =
    Rate::new("outer-down", "Filling of down or feathers", RateUnit::UsdAPiece, [5.5, 10.5, 22.0], COATS, JUDGED);
pub(super) static ZIP_THIN: Rate =
    Rate::new("outer-zip-thin", "Main zip, thin", RateUnit::UsdAPiece, [0.35, 0.5, 0.75], COATS, JUDGED);
pub(super) static ZIP_PLAIN: Rate =
    Rate::new("outer-zip-plain", "Main zip, plain", RateUnit::UsdAPiece, [0.55, 0.85, 1.3], COATS, JUDGED);
pub(super) static ZIP_SOUND: Rate =
    Rate::new("outer-zip-sound", "Main zip, sound", RateUnit::UsdAPiece, [0.85, 1.3, 2.1], COATS, JUDGED);
pub(super) static ZIP_HEAVY: Rate =
    Rate::new("outer-zip-heavy", "Main zip, heavy, two sliders", RateUnit::UsdAPiece, [1.9, 3.0, 4.8], COATS, JUDGED);
pub(super) static HARDWARE_FEW: Rate =
    Rate::new("outer-hardware-few", "Zips, snaps, cords: under 6", RateUnit::UsdAPiece, [0.3, 0.5, 0.9], COATS, JUDGED);
pub(super) static HARDWARE_USUAL: Rate =
    Rate::new("outer-hardware-usual", "Zips, snaps, cords: 6 to 10", RateUnit::UsdAPiece, [0.7, 1.1, 1.9], COATS, JUDGED);
pub(super) static HARDWARE_MANY: Rate =
    Rate::new("outer-hardware-many", "Zips, snaps, cords: 11 to 16", RateUnit::UsdAPiece, [1.5, 2.4, 3.9], COATS, JUDGED);
pub(super) static HARDWARE_MOST: Rate =
    Rate::new("outer-hardware-most", "Zips, snaps, cords: over 16", RateUnit::UsdAPiece, [2.5, 4.0, 6.5], COATS, JUDGED);
pub(super) static THREAD: Rate =
    Rate::new("outer-thread", "Thread, tape, interlining, a coat", RateUnit::UsdAPiece, [0.3, 0.5, 1.0], COATS, JUDGED);
pub(super) static LABELS: Rate =
    Rate::new("outer-labels", "Labels, a coat", RateUnit::UsdAPiece, [0.12, 0.22, 0.45], COATS, JUDGED);
pub(super) static PACK: Rate =
    Rate::new("outer-pack", "Hanger, bag, hang tag, a coat", RateUnit::UsdAPiece, [0.3, 0.5, 1.0], COATS, JUDGED);
pub(super) static FINISH: Rate =
    Rate::new("outer-finish", "Finish and tests, a coat", RateUnit::UsdAPiece, [0.3, 0.65, 1.7], COATS, JUDGED);
pub(super) static REPELLENT: Rate =
    Rate::new("outer-repellent", "Finish and tape against rain", RateUnit::UsdAPiece, [0.25, 0.7, 2.2], COATS, JUDGED);
pub(super) static FREIGHT: Rate = Rate::new(
    "outer-freight",
    "Freight and insurance, a coat",
    RateUnit::UsdAPiece,
    [0.5, 0.9, 2.0],
    &cost_sources::COST_SHEET_SHARES,
    JUDGED,
);

const TARIFFS: &Source = &sources::OUTERWEAR_TARIFFS;

static US_DUTY: Rate =
    Rate::new("us-outer-duty", "Duty on coats, United States", RateUnit::Share, [0.09, 0.19, 0.38], TARIFFS, JUDGED);
static EU_DUTY: Rate = Rate::new("eu-outer-duty", "Duty on coats, European Union", RateUnit::Share, [0.12; 3], TARIFFS, JUDGED);
static UK_DUTY: Rate = Rate::new("uk-outer-duty", "Duty on coats, United Kingdom", RateUnit::Share, [0.12; 3], TARIFFS, JUDGED);
static IN_DUTY: Rate = Rate::new("in-outer-duty", "Duty on coats, India", RateUnit::Share, [0.20, 0.22, 0.275], TARIFFS, JUDGED);
static JP_DUTY: Rate = Rate::new("jp-outer-duty", "Duty on coats, Japan", RateUnit::Share, [0.074, 0.10, 0.12], TARIFFS, JUDGED);

const MADE_IN: &str = "made-in";

/// Who pays duty where. Which countries have an agreement is from memory; how many of a hundred coats meet its terms is judgement.
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
