//! The bibliography of the catalog: what its wording and numbers lean on. A standard named here was not always read; the title says so.

use crate::cost::sources as cost;
use crate::fit::sources as fit;
use crate::lot::sources as lot;
use crate::source::{Kind, Source};

// What instruments lean on too stands with them.
pub use crate::measure::sources::{COMMON_PRACTICE, D3107, D6193, ISO_4915, ISO_16322, JEANS_OPERATIONS, JUDGEMENT, TM207};

/// Seam types by number.
pub static ISO_4916: Source = Source {
    name: "ISO 4916",
    title: "ISO 4916, Textiles: seam types, classification and terminology. Class digits seen in a primer; the standard itself \
        not read.",
    kind: Kind::Standard,
};

/// Fibre labels in the United States.
pub static CFR_303: Source = Source {
    name: "16 CFR 303",
    title: "United States, rules under the Textile Fiber Products Identification Act: fibre names, order by weight; the \
        tolerance of 3 points from memory.",
    kind: Kind::Standard,
};

/// Fibre labels in the European Union.
pub static EU_1007: Source = Source {
    name: "EU 1007/2011",
    title: "Regulation (EU) No 1007/2011 on textile fibre names and labelling: names from its Annex I, order by weight, \
        manufacturing tolerance of 3 points.",
    kind: Kind::Standard,
};

/// Nickel against the skin.
pub static REACH_27: Source = Source {
    name: "REACH Annex XVII, entry 27",
    title: "Regulation (EC) No 1907/2006, Annex XVII, entry 27: nickel set free on skin, at most 0.5 µg/cm² a week; rivets, \
        zips and buttons are named.",
    kind: Kind::Standard,
};

/// Drawstrings of children’s clothes.
pub static CFR_1120: Source = Source {
    name: "16 CFR 1120",
    title: "United States: substantial product hazards; drawstrings of children’s upper outerwear, with ASTM F1816.",
    kind: Kind::Standard,
};

/// Drawstrings of children’s clothes in Europe.
pub static EN_14682: Source = Source {
    name: "EN 14682",
    title: "EN 14682, Safety of children’s clothing: cords and drawstrings. From memory.",
    kind: Kind::Memory,
};

/// Small parts for young children.
pub static CFR_1501: Source = Source {
    name: "16 CFR 1501",
    title: "United States: small parts in articles for children under three. From memory.",
    kind: Kind::Memory,
};

/// Seam smoothness grades.
pub static SEAM_SMOOTHNESS: Source = Source {
    name: "AATCC TM88B",
    title: "AATCC TM88B and ISO 7770, smoothness of seams against photographs in slanting light, five grades. From memory; our \
        four answers are not those grades.",
    kind: Kind::Memory,
};

/// Colour that rubs off.
pub static CROCKING: Source = Source {
    name: "ISO 105-X12",
    title: "ISO 105-X12 and AATCC TM8, colour fastness to rubbing; usual grades of denim from memory. A tissue by hand only \
        follows the idea.",
    kind: Kind::Memory,
};

/// What the care symbols mean.
pub static CARE_SYMBOLS: Source =
    Source { name: "ISO 3758", title: "ISO 3758 and ASTM D5489, care labelling symbols. From memory.", kind: Kind::Memory };

/// Care labels in the United States.
pub static CFR_423: Source = Source {
    name: "16 CFR 423",
    title: "United States: care labelling of textile wearing apparel. From memory.",
    kind: Kind::Memory,
};

/// What “made in” means.
pub static ORIGIN_RULES: Source = Source {
    name: "16 CFR 303.33",
    title: "United States: country where a textile product is processed or made; other countries have rules of their own. From \
        memory.",
    kind: Kind::Memory,
};

/// Names and limits of stretch.
pub static STRETCH_CLASSES: Source = Source {
    name: "stretch classes",
    title: "Rigid, comfort, stretch, power: limits in common use in the trade, 10, 20 and 30 per cent. From memory; mills \
        differ.",
    kind: Kind::Memory,
};

/// Usual stitch densities.
pub static SPI_BULLETIN: Source = Source {
    name: "thread bulletin",
    title: "“Stitches per inch: what you should know”, technical bulletin of a thread maker: jeans 7 to 8. Our wider range to \
        10.5 is judgement.",
    kind: Kind::Document,
};

/// Why three inches and not one.
pub static COUNTING: Source = Source {
    name: "counting error",
    title: "Error of a count of stitches over a length, computed here: over 3 in about 0.15 an inch, over 1 in about 0.44.",
    kind: Kind::Computed,
};

/// Where twist begins.
pub static TWIST_LIMIT: Source = Source {
    name: "denim mill paper",
    title: "“Recommendations for the prevention of leg twist”, paper of a denim mill: a leg counts as twisted beyond 25.4 mm \
        from knee to hem. The finer steps are judgement.",
    kind: Kind::Document,
};

/// What elastane does to denim.
pub static ELASTANE_STUDY: Source = Source {
    name: "denim elastane study",
    title: "University study of denim with different shares of elastane: more elastane gave more stretch and recovery, less \
        growth, lower strength.",
    kind: Kind::Document,
};

/// What an ounce of denim is.
pub static DENIM_OUNCE: Source = Source {
    name: "ounces of denim",
    title: "Several denim references: ounces are counted for a square yard. 1 oz/yd² is 33.9 g/m², computed from the \
        definitions.",
    kind: Kind::Document,
};

/// How weight on a scale becomes cloth weight.
pub static AREA_MODEL: Source = Source {
    name: "area of a pair",
    title: "Cloth area of a pair from its measures, computed here; agreed within 3 per cent with one published weight of a \
        pair.",
    kind: Kind::Computed,
};

/// Heavier is not always longer-lived.
pub static RUBBING: Source = Source {
    name: "rubbing study",
    title: "Sofronova, Technical University of Sofia: fabric-to-fabric rubbing of denim. The ranking of cloths changed with \
        the method.",
    kind: Kind::Document,
};

/// What a metre of denim costs.
pub static DENIM_PRICES: Source = Source {
    name: "denim prices 2026",
    title: "Price breakdown in a 2026 trade article: commodity cloth USD 1.8 to 3.0 a metre, selvedge from the USA or Japan 16 \
        to 33, stretch 10 to 20 per cent dearer.",
    kind: Kind::Document,
};

/// Metres of narrow cloth.
pub static NARROW_CLOTH: Source = Source {
    name: "narrow cloth",
    title: "A feature on making jeans in Japan: 2.6 m of cloth 86 cm wide for a pair, where wide cloth takes about 1.4 m.",
    kind: Kind::Document,
};

/// What washing and dry work cost.
pub static WASH_COSTS: Source = Source {
    name: "wash costs",
    title: "“Trend analysis of the costing of denim wash”, European Scientific Journal, prices 2010 to 2018; amounts of single \
        steps from common practice.",
    kind: Kind::Document,
};

/// Why blasting with sand was banned.
pub static SANDBLASTING: Source = Source {
    name: "sandblasting and lungs",
    title: "Akgun et al., Chest 2015;148(3):647-654: lung disease in former denim sandblasters, 55.4 per cent rising to 95.9 \
        in four years.",
    kind: Kind::Document,
};

/// How large the cloth is in the cost.
pub static COST_SHEETS: Source = Source {
    name: "four cost sheets",
    title: "Four cost sheets of jeans worked here from common-practice prices: cloth is 32 to 44 per cent of the price at the \
        factory gate.",
    kind: Kind::Computed,
};

/// What a sewing minute costs by country.
pub static MINUTE_COSTS: Source = Source {
    name: "cost of a sewing minute",
    title: "Ranges by country in common use, a few beside a 2026 trade article; from memory otherwise. They age fast.",
    kind: Kind::Memory,
};

/// What trims and pocket cloth cost.
pub static TRIM_COSTS: Source = Source {
    name: "trim costs",
    title: "Zips, buttons, rivets, thread, labels and pocket cloth by tier: common practice, no single source; an old page of a jeans \
        maker gives 0.25 dollars for thread, buttons or zip and rivets together.",
    kind: Kind::CommonPractice,
};

/// What goes into a tailored jacket.
pub static JACKET_COSTS: Source = Source {
    name: "costs of a jacket",
    title: "Ranges for a tailored jacket: cloth 12 to 45 dollars, trims 4 to 14, making 10 to 60, finish 1 to 4, price at the factory gate \
        28 to 140. From memory; metres, linings, buttons and single prices are laid out within them by judgement.",
    kind: Kind::Memory,
};

/// Duty on jackets.
pub static JACKET_TARIFFS: Source = Source {
    name: "tariffs on jackets",
    title: "United States tariff, 6203.33 (man-made fibre): 27.3 per cent, as listed; wool, other countries, and what stacks on top since \
        2025: from memory and judgement.",
    kind: Kind::Document,
};

/// Duty on trousers of denim.
pub static TARIFFS: Source = Source {
    name: "tariff listings",
    title: "United States tariff of December 2025, 6203.42.07.11 and 6203.42.45.11: 16.6 per cent; European Union, 6203 42 31: 12 per \
        cent. United States duties by country since 2025 stack on top and change: the high end is judgement.",
    kind: Kind::Document,
};

/// Duty elsewhere, and who is free of it.
pub static TARIFFS_MEMORY: Source = Source {
    name: "tariffs from memory",
    title: "Duty on denim trousers in the United Kingdom, India and Japan, and which countries’ goods are free of it. From memory.",
    kind: Kind::Memory,
};

/// Price does not foretell life.
pub static PRICE_AND_LIFE: Source = Source {
    name: "price and life",
    title: "University of Leeds, School of Design, “Worn out”, July 2023: no link of price and durability in 65 garments. \
        Commissioned by a charity and paid for by a low-price retailer; testing said to be independent.",
    kind: Kind::Document,
};

/// What a square metre of cloth other than denim weighs.
pub static CLOTH_CHARTS: Source = Source {
    name: "cloth charts",
    title: "A comparison of shirtings and charts of cloth weights: poplin 100 to 130 g/m², oxford 130 to 180, T-shirt jersey 140 to 200. \
        1 oz/yd² is 33.9 g/m², computed.",
    kind: Kind::Document,
};

/// How many minutes it takes to sew garments other than jeans.
pub static GARMENT_MINUTES: Source = Source {
    name: "minutes of garments",
    title: "Lists of an industrial-engineering tutorial: formal shirt 18 to 25 minutes, T-shirt 5 to 7; one published study has 22.32 for \
        a shirt. What the minutes cover differs.",
    kind: Kind::Document,
};

/// What garments other than jeans cost to make.
pub static OTHER_COSTS: Source = Source {
    name: "costs of other garments",
    title: "Ranges for cloth, trims and making of shirts, T-shirts and others at the factory gate: common practice, no single source.",
    kind: Kind::CommonPractice,
};

/// Duty on shirts.
pub static SHIRT_TARIFFS: Source = Source {
    name: "tariffs on shirts",
    title: "United States tariff, 6205.20.20: 19.7 per cent; duties by country since 2025 stack on top: the high end is judgement. \
        Elsewhere from memory.",
    kind: Kind::Document,
};

/// Duty on T-shirts.
pub static T_SHIRT_TARIFFS: Source = Source {
    name: "tariffs on T-shirts",
    title: "United States tariff, 6109.10: 16.5 per cent, from memory; duties by country since 2025 stack on top: the high end is judgement. \
        Elsewhere from memory.",
    kind: Kind::Memory,
};

/// Duty on sweaters.
pub static SWEATER_TARIFFS: Source = Source {
    name: "tariffs on sweaters",
    title: "United States tariff, 6110.20: cotton sweaters 16.5 per cent, wool about as much, man-made fibres about twice that, from memory; \
        duties by country since 2025 stack on top: the high end is judgement. Elsewhere from memory.",
    kind: Kind::Memory,
};

/// Duty on dresses and skirts.
pub static DRESS_TARIFFS: Source = Source {
    name: "tariffs on dresses",
    title: "United States tariff, 6204.4 and 6204.5: cotton about 8 per cent, man-made fibres about 16; European Union 12 per cent on most \
        clothing; all from memory. Duties by country since 2025 stack on top: the high end is judgement.",
    kind: Kind::Memory,
};

/// Duty on jackets and coats for outside.
pub static OUTERWEAR_TARIFFS: Source = Source {
    name: "tariffs on coats",
    title: "United States tariff, 6201 and 6202: cotton about 9 per cent, wool about 17, man-made fibres about 28, some rain jackets 7; \
        European Union 12 per cent on most clothing; all from memory. Duties by country since 2025 stack on top: the high end is judgement.",
    kind: Kind::Memory,
};

/// How many minutes it takes to sew a jacket or coat for outside.
pub static OUTERWEAR_MINUTES: Source = Source {
    name: "minutes of coats",
    title: "Padded jacket 45 to 90 minutes, trench or wool coat 70 to 120; common practice, no single source. What the minutes cover differs.",
    kind: Kind::CommonPractice,
};

/// How many minutes it takes to sew a dress or a skirt.
pub static DRESS_MINUTES: Source = Source {
    name: "minutes of dresses",
    title: "Lists of an industrial-engineering tutorial: basic dress 20 to 30 minutes, basic skirt 10 to 15. What the minutes cover differs.",
    kind: Kind::Document,
};

/// How many minutes it takes to knit and link a sweater.
pub static KNITTING_MINUTES: Source = Source {
    name: "minutes of sweaters",
    title: "Fully fashioned sweaters: 40 to 90 minutes on the knitting machine, 15 to 30 of linking and finishing by hand; common practice, \
        no single source.",
    kind: Kind::CommonPractice,
};

/// Every entry, for the page that says where numbers come from.
pub static SOURCES: &[&Source] = &[
    &JUDGEMENT,
    &COMMON_PRACTICE,
    &ISO_4915,
    &ISO_4916,
    &D6193,
    &D3107,
    &TM207,
    &ISO_16322,
    &CFR_303,
    &EU_1007,
    &REACH_27,
    &CFR_1120,
    &EN_14682,
    &CFR_1501,
    &SEAM_SMOOTHNESS,
    &CROCKING,
    &CARE_SYMBOLS,
    &CFR_423,
    &ORIGIN_RULES,
    &STRETCH_CLASSES,
    &SPI_BULLETIN,
    &COUNTING,
    &TWIST_LIMIT,
    &ELASTANE_STUDY,
    &DENIM_OUNCE,
    &AREA_MODEL,
    &RUBBING,
    &DENIM_PRICES,
    &NARROW_CLOTH,
    &WASH_COSTS,
    &SANDBLASTING,
    &COST_SHEETS,
    &MINUTE_COSTS,
    &JEANS_OPERATIONS,
    &TRIM_COSTS,
    &TARIFFS,
    &JACKET_COSTS,
    &JACKET_TARIFFS,
    &TARIFFS_MEMORY,
    &cost::RATE_JUDGEMENT,
    &cost::MULTIPLES,
    &cost::SALES_TAXES,
    &cost::ENTRY_FEES,
    &cost::COST_SHEET_SHARES,
    &cost::WEAR_SURVEYS,
    &PRICE_AND_LIFE,
    &CLOTH_CHARTS,
    &GARMENT_MINUTES,
    &OTHER_COSTS,
    &SHIRT_TARIFFS,
    &T_SHIRT_TARIFFS,
    &SWEATER_TARIFFS,
    &KNITTING_MINUTES,
    &DRESS_TARIFFS,
    &DRESS_MINUTES,
    &OUTERWEAR_TARIFFS,
    &OUTERWEAR_MINUTES,
    &fit::JUDGEMENT,
    &fit::COMMON_PRACTICE,
    &fit::COSTUME_TEXT,
    &fit::ISO_8559,
    &fit::EN_13402_3,
    &fit::JACKET_DRAFT,
    &fit::TAILORING_MANUAL,
    &fit::TAILORING_ARTICLE,
    &fit::LABEL_SURVEYS,
    &cost::INCOTERMS,
    &lot::ISO_2859_1,
    &lot::COMMON_PRACTICE,
];
