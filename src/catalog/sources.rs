//! The bibliography of the catalog.

use crate::source::{Kind, Source};

/// One expert's estimate.
pub static JUDGEMENT: Source =
    Source { name: "judgement", title: "One expert's estimate; nobody measured it.", kind: Kind::Judgement };
