//! Checks that several families put in the same words.

use super::sources;
use crate::check::{Check, Level, Speaks};
use crate::trade::{Aspect, Stage};

/// Where the piece was sewn; rates of minutes and duties hang on it.
pub(in crate::catalog) static MADE_IN: Check = Check {
    key: "made-in",
    name: "Country of making",
    question: "Which country does the sewn-in label name?",
    how: "Look for “Made in” on the small label inside, in a seam or a pocket. If the country is not listed or not named, choose can’t tell.",
    meaning: "It names where the piece was sewn or last changed in a large way, not where cloth or fibre come from. It sets \
        wages and duty. Good and poor work come from every country, so it says nothing about care.",
    levels: &[
        Level {
            key: "bangladesh-pakistan",
            name: "Bangladesh or Pakistan",
            line: "Lowest cost of a sewing minute in this list.",
            spans: &[],
            drawn: None,
        },
        Level {
            key: "south-east-asia",
            name: "India, Vietnam, Cambodia or Indonesia",
            line: "Low cost of a sewing minute.",
            spans: &[],
            drawn: None,
        },
        Level {
            key: "north-africa",
            name: "Egypt, Tunisia or Morocco",
            line: "Low to middling; short way to Europe.",
            spans: &[],
            drawn: None,
        },
        Level { key: "china", name: "China", line: "Middling cost of a sewing minute.", spans: &[], drawn: None },
        Level {
            key: "central-america",
            name: "Mexico or Central America",
            line: "Middling; short way to North America.",
            spans: &[],
            drawn: None,
        },
        Level { key: "turkey", name: "Turkey", line: "Upper middling; short way to Europe.", spans: &[], drawn: None },
        Level {
            key: "europe-low",
            name: "Portugal, Romania or Bulgaria",
            line: "High; short way within Europe.",
            spans: &[],
            drawn: None,
        },
        Level { key: "italy-japan", name: "Italy or Japan", line: "Very high cost of a sewing minute.", spans: &[], drawn: None },
        Level {
            key: "usa-uk",
            name: "USA or UK",
            line: "Highest cost of a sewing minute in this list.",
            spans: &[],
            drawn: None,
        },
    ],
    seconds: 4,
    stage: Stage::InsideOut,
    aspect: Aspect::Trims,
    speaks: Speaks::Cost(
        "Sets what a sewing minute costs and which duty may apply; between the ends of this list that is roughly tenfold.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::MINUTE_COSTS, &sources::ORIGIN_RULES],
};
