//! What ease, fit and sizes lean on.

use crate::source::{Kind, Source};

/// One expert's estimate.
pub static JUDGEMENT: Source = Source {
    name: "judgement on fit",
    title: "One expert’s estimate of ease, wear or alteration; nobody measured it.",
    kind: Kind::Judgement,
};

/// Widely done, with no single source.
pub static COMMON_PRACTICE: Source = Source {
    name: "common practice in fitting",
    title: "Ease, grading steps and alterations as the trade commonly has them; no single source, from memory.",
    kind: Kind::CommonPractice,
};

/// Ease of woven garments.
pub static COSTUME_TEXT: Source = Source {
    name: "costume-making text on ease",
    title: "A university’s open text on costume making, chapter 16: the ease that woven bodices, dresses, shirts, skirts and trousers need. \
        Of the thigh it names the least only.",
    kind: Kind::Document,
};

/// Where body measures lie.
pub static ISO_8559: Source = Source {
    name: "ISO 8559-1; EN 13402-1",
    title: "ISO 8559-1:2017, Size designation of clothes, part 1: anthropometric definitions for body measurement; EN 13402-1. From \
        memory, but for chest, bust, neck and waist, which were read in pages that repeat the standards.",
    kind: Kind::Memory,
};

/// Steps of size.
pub static EN_13402_3: Source = Source {
    name: "EN 13402-3",
    title: "EN 13402-3, Size designation of clothes, part 3: body measurements and intervals; letter codes by chest and bust. From memory.",
    kind: Kind::Memory,
};

/// Ease of a jacket.
pub static JACKET_DRAFT: Source = Source {
    name: "jacket draft of 1954",
    title: "A tailor’s draft of a man’s jacket, 1954, for a chest of 100 cm: 12 cm of ease at the chest, 9.5 at the waist, 8.5 at the seat. \
        The ranges round it are judgement.",
    kind: Kind::Document,
};

/// What drag lines on trousers mean.
pub static TAILORING_MANUAL: Source = Source {
    name: "tailoring manual of 1949",
    title: "A manual on the fitting of trousers, 1949, sections 1 to 4: lap fullness, folds below the seat, surplus at the inner leg, a roped seat seam.",
    kind: Kind::Document,
};

/// What pulls and gapes tell.
pub static TAILORING_ARTICLE: Source = Source {
    name: "tailoring article on trousers",
    title: "An article of a tailoring journal on what gaping pockets and folds at the front of trousers tell.",
    kind: Kind::Document,
};

/// How far labels and tapes differ.
pub static LABEL_SURVEYS: Source = Source {
    name: "surveys of waist labels",
    title: "A magazine’s tape on men’s trousers marked 36 in: 37 to 41 in across seven chains (2010); 28 of 30 checked pieces larger than \
        marked by up to 2 in (United Kingdom, 2011).",
    kind: Kind::Document,
};
