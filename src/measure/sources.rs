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

/// How far off a scale laid beside the seam is in a picture.
pub static PICTURE_SCALE: Source = Source {
    name: "scale in a picture",
    title: "Central projection worked out for a scale beside the seam and a tilted phone; height and tilt tried on drawn \
        photographs. How far from the cloth a phone is held is judgement.",
    kind: Kind::Computed,
};

/// Stretch and growth of woven stretch cloth.
pub static D3107: Source = Source {
    name: "ASTM D3107",
    title: "ASTM D3107, Stretch properties of fabrics woven from stretch yarns. Scope and loads seen; the formula symbols from \
        memory. The hand pull here only follows its idea.",
    kind: Kind::Standard,
};

/// Points for flaws in cloth.
pub static D5430: Source = Source {
    name: "ASTM D5430",
    title: "ASTM D5430, Visually inspecting and grading fabrics, four-point option, as published articles repeat it. The limits of 20 and 28 \
        points are common practice.",
    kind: Kind::Standard,
};

/// Elasticity of cloth, strips.
pub static ISO_20932: Source = Source {
    name: "ISO 20932-1",
    title: "ISO 20932-1, Textiles: elasticity of fabrics, strip tests; it took over from EN 14704-1. From memory.",
    kind: Kind::Memory,
};

/// Names and limits of stretch.
pub static STRETCH_CLASSES: Source = Source {
    name: "stretch classes",
    title: "Rigid, comfort, stretch, power, hyper: limits in common use in the trade, with the growth that still passes and the \
        usual elastane. From memory; mills differ.",
    kind: Kind::Memory,
};

/// Give from the share of elastane.
pub static ELASTANE_RULE: Source = Source {
    name: "rule of five",
    title: "Trade rule, seen on two pages: 5 per cent of give for each per cent of elastane. The range of 3 to 15 is common \
        practice without a source.",
    kind: Kind::CommonPractice,
};

/// Dimensional change in washing.
pub static TM135: Source = Source {
    name: "AATCC TM135, ISO 5077",
    title: "AATCC TM135 (cloth) and TM150 (garments), ISO 5077 with ISO 3759 and ISO 6330: dimensional change in washing. The \
        formula seen; the standards not read.",
    kind: Kind::Standard,
};

/// Usual shrinkage.
pub static SHRINKAGE_GUIDES: Source = Source {
    name: "shrinkage guides",
    title: "Several guides to raw denim (up to 10 per cent in the first hot soak; about 3 where sanforised) and the formula of a \
        jeans factory for stretch denim (15 per cent in the weft at most).",
    kind: Kind::Document,
};

/// Twist stated in millimetres, per cent or as an angle.
pub static ISO_16322: Source = Source {
    name: "ISO 16322",
    title: "ISO 16322, Textiles: determination of spirality after laundering, parts 1 to 3. Seen as national adoptions.",
    kind: Kind::Standard,
};

/// Where twist begins.
pub static TWIST_LIMIT: Source = Source {
    name: "denim mill paper",
    title: "“Recommendations for the prevention of leg twist”, paper of a denim mill: a leg counts as twisted beyond 25.4 mm \
        from knee to hem.",
    kind: Kind::Document,
};

/// How garments are measured.
pub static MEASURING_GUIDES: Source = Source {
    name: "measuring guides",
    title: "Buyers’ manuals, a guide to measuring old jeans and a fit article (knee 35 cm below the crotch); the rest from \
        memory.",
    kind: Kind::Document,
};

/// Body measures.
pub static ISO_8559: Source = Source {
    name: "ISO 8559-1",
    title: "ISO 8559-1:2017, Size designation of clothes: body measures, which garment measures are set beside. From memory.",
    kind: Kind::Memory,
};

/// Grey scale for change of colour.
pub static A02: Source = Source {
    name: "ISO 105-A02",
    title: "ISO 105-A02, Grey scale for assessing change in colour: colour differences of its steps seen in a preview. The words \
        are ours.",
    kind: Kind::Standard,
};

/// Grey scale for staining.
pub static A03: Source = Source {
    name: "ISO 105-A03",
    title: "ISO 105-A03, Grey scale for assessing staining: colour differences of its steps seen in public code, tolerances from \
        memory. The words are ours.",
    kind: Kind::Standard,
};

/// Staining by instrument.
pub static A04: Source = Source {
    name: "ISO 105-A04",
    title: "ISO 105-A04, Instrumental assessment of staining: formulas as two public implementations have them; the natural \
        logarithm borne out by the steps of ISO 105-A03.",
    kind: Kind::Standard,
};

/// Change of colour by instrument.
pub static A05: Source = Source {
    name: "ISO 105-A05",
    title: "ISO 105-A05:1996, Instrumental assessment of change in colour: formulas and table as two public implementations \
        have them, a slip in one of them left out.",
    kind: Kind::Standard,
};

/// Colour that rubs off.
pub static RUBBING_GRADES: Source = Source {
    name: "ISO 105-X12, AATCC TM8",
    title: "ISO 105-X12 and AATCC TM8, colour fastness to rubbing; usual grades of denim from memory. A tissue by hand only \
        follows the idea.",
    kind: Kind::Memory,
};

/// Seam smoothness grades.
pub static SMOOTHNESS: Source = Source {
    name: "AATCC TM88B, ISO 7770",
    title: "AATCC TM88B and ISO 7770, smoothness of seams against photographs in slanting light, five grades. From memory; the \
        words are ours.",
    kind: Kind::Memory,
};

/// Pilling grades.
pub static PILLING_GRADES: Source = Source {
    name: "ISO 12945",
    title: "ISO 12945-1, -2 and -4, pilling, fuzzing and matting, five grades. From memory; the words are ours.",
    kind: Kind::Memory,
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

/// Lengths read from photographs.
pub static PHOTOGRAPHS: Source = Source {
    name: "drawn photographs",
    title: "Usual shares of scale, height, tilt and counting: from a first trial on photographs that we drew with a known truth, not \
        measured again since. Nobody has tried it on many real garments yet.",
    kind: Kind::Judgement,
};

/// What the sewing of jeans takes, operation by operation.
pub static JEANS_OPERATIONS: Source = Source {
    name: "jeans operations",
    title: "Operations of a pair of jeans with seam lengths and minutes: a synthesis of our own from common practice. Its thread, \
        173 m with waste, stands against a published 180 m.",
    kind: Kind::CommonPractice,
};
