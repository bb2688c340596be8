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
