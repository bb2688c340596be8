//! What plans and points lean on.

use crate::source::{Kind, Source};

/// Code letters, sample sizes, accept and reject numbers.
pub static ISO_2859_1: Source = Source {
    name: "ISO 2859-1",
    title: "ISO 2859-1, Sampling procedures for inspection by attributes, part 1: tables 1 and 2-A, single sampling, normal inspection; the \
        same as in MIL-STD-105E, of which public copies were read.",
    kind: Kind::Standard,
};

/// Which defects are how grave, and limits that buyers set.
pub static COMMON_PRACTICE: Source = Source {
    name: "common practice in inspection",
    title: "Classes of defects, the usual limits of 2.5 and 4.0 per cent, and 20 or 28 points as buyers commonly have them; no single source, \
        from memory.",
    kind: Kind::CommonPractice,
};
