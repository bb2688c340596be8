//! The bibliography: everything a number or a sentence of the catalog leans on. "Common practice", "judgement" and "from memory"
//! are sources too, and say so.

/// What sort of authority a source is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// A published standard, law or regulation.
    Standard,
    /// A study, book, bulletin or course text.
    Document,
    /// Computed here from definitions.
    Computed,
    /// Widely done in the trade, with no single source.
    CommonPractice,
    /// One expert's estimate; nobody measured it.
    Judgement,
    /// Remembered, not confirmed in a document.
    Memory,
}

/// One entry of the bibliography.
#[derive(Debug, PartialEq, Eq, Hash)]
pub struct Source {
    /// Short name shown beside a number.
    pub(crate) name: &'static str,
    /// What it is and where it stands.
    pub(crate) title: &'static str,
    /// What sort of authority it is.
    pub kind: Kind,
}

crate::language::says!(Source { name, title });
