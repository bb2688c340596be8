//! Rates that several families lean on: what a sewing minute costs, country by country.

use super::sources;
use crate::cost::{Choice, Input, JUDGED, Rate, RateUnit};

/// What a standard minute costs in one group of countries.
macro_rules! minutes {
    ($($name:ident $key:literal $words:literal $range:expr;)+) => {
        $(pub(in crate::catalog) static $name: Rate =
            Rate::new($key, $words, RateUnit::UsdAMinute, $range, &sources::MINUTE_COSTS, JUDGED);)+
    };
}

// The factory's staff, power and idle time are in the minute.
minutes! {
    BANGLADESH_PAKISTAN "minute-bangladesh-pakistan" "Sewing minute, Bangladesh or Pakistan" [0.055, 0.08, 0.11];
    SOUTH_EAST_ASIA "minute-south-east-asia" "Sewing minute, India, Vietnam, Cambodia or Indonesia" [0.08, 0.12, 0.17];
    NORTH_AFRICA "minute-north-africa" "Sewing minute, Egypt, Tunisia or Morocco" [0.10, 0.14, 0.20];
    CHINA "minute-china" "Sewing minute, China" [0.13, 0.17, 0.22];
    CENTRAL_AMERICA "minute-central-america" "Sewing minute, Mexico or Central America" [0.12, 0.17, 0.25];
    TURKEY "minute-turkey" "Sewing minute, Turkey" [0.16, 0.21, 0.28];
    EUROPE_LOW "minute-europe-low" "Sewing minute, Portugal, Romania or Bulgaria" [0.22, 0.31, 0.45];
    ITALY_JAPAN "minute-italy-japan" "Sewing minute, Italy or Japan" [0.52, 0.68, 0.90];
    USA_UK "minute-usa-uk" "Sewing minute, USA or UK" [0.62, 0.82, 1.10];
}

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
