//! Rates that several families lean on: what a sewing minute costs, country by country.

use super::sources;
use crate::cost::{Choice, Input, JUDGED, Rate, RateUnit};

// What a standard minute costs in each group of countries; the factory's staff, power and idle time are in it.
pub(in crate::catalog) static BANGLADESH_PAKISTAN: Rate = Rate::new(
    "minute-bangladesh-pakistan",
    "Sewing minute, Bangladesh or Pakistan",
    RateUnit::UsdAMinute,
    [0.055, 0.08, 0.11],
    &sources::MINUTE_COSTS,
    JUDGED,
);
pub(in crate::catalog) static SOUTH_EAST_ASIA: Rate = Rate::new(
    "minute-south-east-asia",
    "Sewing minute, India, Vietnam, Cambodia or Indonesia",
    RateUnit::UsdAMinute,
    [0.08, 0.12, 0.17],
    &sources::MINUTE_COSTS,
    JUDGED,
);
pub(in crate::catalog) static NORTH_AFRICA: Rate = Rate::new(
    "minute-north-africa",
    "Sewing minute, Egypt, Tunisia or Morocco",
    RateUnit::UsdAMinute,
    [0.10, 0.14, 0.20],
    &sources::MINUTE_COSTS,
    JUDGED,
);
pub(in crate::catalog) static CHINA: Rate =
    Rate::new("minute-china", "Sewing minute, China", RateUnit::UsdAMinute, [0.13, 0.17, 0.22], &sources::MINUTE_COSTS, JUDGED);
pub(in crate::catalog) static CENTRAL_AMERICA: Rate = Rate::new(
    "minute-central-america",
    "Sewing minute, Mexico or Central America",
    RateUnit::UsdAMinute,
    [0.12, 0.17, 0.25],
    &sources::MINUTE_COSTS,
    JUDGED,
);
pub(in crate::catalog) static TURKEY: Rate =
    Rate::new("minute-turkey", "Sewing minute, Turkey", RateUnit::UsdAMinute, [0.16, 0.21, 0.28], &sources::MINUTE_COSTS, JUDGED);
pub(in crate::catalog) static EUROPE_LOW: Rate = Rate::new(
    "minute-europe-low",
    "Sewing minute, Portugal, Romania or Bulgaria",
    RateUnit::UsdAMinute,
    [0.22, 0.31, 0.45],
    &sources::MINUTE_COSTS,
    JUDGED,
);
pub(in crate::catalog) static ITALY_JAPAN: Rate = Rate::new(
    "minute-italy-japan",
    "Sewing minute, Italy or Japan",
    RateUnit::UsdAMinute,
    [0.52, 0.68, 0.90],
    &sources::MINUTE_COSTS,
    JUDGED,
);
pub(in crate::catalog) static USA_UK: Rate = Rate::new(
    "minute-usa-uk",
    "Sewing minute, USA or UK",
    RateUnit::UsdAMinute,
    [0.62, 0.82, 1.10],
    &sources::MINUTE_COSTS,
    JUDGED,
);

/// What a standard minute costs, by the country on the label. Shares of countries: judgement.
pub(in crate::catalog) static SEWING_MINUTE: Input = Input::by(
    "Cost of a minute",
    "made-in",
    const {
        &[
            Choice::rate("bangladesh-pakistan", 30, &BANGLADESH_PAKISTAN),
            Choice::rate("south-east-asia", 22, &SOUTH_EAST_ASIA),
            Choice::rate("north-africa", 9, &NORTH_AFRICA),
            Choice::rate("china", 17, &CHINA),
            Choice::rate("central-america", 8, &CENTRAL_AMERICA),
            Choice::rate("turkey", 7, &TURKEY),
            Choice::rate("europe-low", 3, &EUROPE_LOW),
            Choice::rate("italy-japan", 2, &ITALY_JAPAN),
            Choice::rate("usa-uk", 2, &USA_UK),
        ]
    },
    &sources::MINUTE_COSTS,
);
