//! What the instruments lean on. A standard named here was not always read; the title says so.

use crate::source::{Kind, Source};

/// One expert’s estimate.
pub static JUDGEMENT: Source =
    Source { name: "judgement", title: "One expert’s estimate; nobody measured it.", kind: Kind::Judgement };

/// Widely done, with no single source.
pub static COMMON_PRACTICE: Source = Source {
    name: "common practice",
    title: "Widely known and done in the trade; no single source.",
    kind: Kind::CommonPractice,
};

/// How uncertainty is stated and carried.
pub static GUM: Source = Source {
    name: "JCGM 100:2008 (GUM)",
    title: "JCGM 100:2008, Evaluation of measurement data: guide to the expression of uncertainty in measurement.",
    kind: Kind::Standard,
};

/// Units and their sizes.
pub static UNITS: Source = Source {
    name: "SI Brochure; 1959 agreement",
    title: "SI Brochure, 9th edition, and the international yard and pound agreement of 1959: the sizes of the units.",
    kind: Kind::Standard,
};

/// How far off a count of stitches is.
pub static COUNTING: Source = Source {
    name: "stitch counting",
    title: "Counting error worked out from a ruler laid down anywhere, or started on a needle hole; tried on simulated seams.",
    kind: Kind::Computed,
};

/// Stretch and growth of woven stretch cloth.
pub static D3107: Source = Source {
    name: "ASTM D3107",
    title: "ASTM D3107, Stretch properties of fabrics woven from stretch yarns. Scope and loads seen; the formula symbols from \
        memory. The hand pull here only follows its idea.",
    kind: Kind::Standard,
};

/// Seam twist in garments.
pub static TM207: Source = Source {
    name: "AATCC TM207",
    title: "AATCC TM207, Seam twist in garments before and after home laundering. A reading before washing is part of the \
        method.",
    kind: Kind::Standard,
};

/// How much cloth a garment holds.
pub static AREA_MODEL: Source = Source {
    name: "area of jeans",
    title: "Cloth area of jeans from seven measures: a model of our own, held against one published weight of a pair (3 % low).",
    kind: Kind::Computed,
};

/// Yarn numbers and thread tickets.
pub static YARNS: Source = Source {
    name: "yarn numbers",
    title: "Tex, cotton number, metric number and denier by their definitions; thread tickets by a published conversion. ISO 2947 and \
        ISO 1144 from memory.",
    kind: Kind::Document,
};

/// Mass and cover of cloth from its threads.
pub static CONSTRUCTION: Source = Source {
    name: "cloth construction",
    title: "Mass from thread counts, yarn numbers and crimp; the constant 0.6857 seen in a published list of fabric formulas. \
        Methods ISO 7211-2 and 7211-3 not read.",
    kind: Kind::Document,
};

/// How closely threads cover a cloth.
pub static COVER: Source = Source {
    name: "Peirce 1937",
    title: "F. T. Peirce, The geometry of cloth structure, Journal of the Textile Institute 28 (1937), T45. Seen as quoted in \
        course notes; a printed worked example (12.9) is recomputed to 13.09.",
    kind: Kind::Document,
};

/// Stitch types by number.
pub static ISO_4915: Source = Source {
    name: "ISO 4915",
    title: "ISO 4915, Textiles: stitch types, classification and terminology. Class digits seen in university course notes; \
        the standard itself not read.",
    kind: Kind::Standard,
};

/// Stitches and seams by letter.
pub static D6193: Source = Source {
    name: "ASTM D6193",
    title: "ASTM D6193, Standard practice for stitches and seams. The felled seam LSc seen in a seam chart.",
    kind: Kind::Standard,
};

/// Strength of a seam from its stitches and thread.
pub static SEAM_STRENGTH_BULLETIN: Source = Source {
    name: "thread maker’s bulletin",
    title: "A thread maker’s technical bulletin on stitches per inch: seam strength from density and thread strength, with worked \
        figures; speeds of sewing.",
    kind: Kind::Document,
};

/// How much thread a seam takes.
pub static THREAD_USE_TABLE: Source = Source {
    name: "thread ratios",
    title: "Table of thread per length of seam, widely printed by thread makers; 301 and 401 confirmed in a published \
        measurement, the rest from memory. Formulas for 101, 301 and 401 from textile calculation tutorials.",
    kind: Kind::Document,
};

/// What the sewing of jeans takes, operation by operation.
pub static JEANS_OPERATIONS: Source = Source {
    name: "jeans operations",
    title: "Operations of a pair of jeans with seam lengths and minutes: a synthesis of our own from common practice. Its thread, \
        173 m with waste, stands against a published 180 m.",
    kind: Kind::CommonPractice,
};
