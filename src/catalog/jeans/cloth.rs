//! Jeans, the cloth: hand, evenness, weight, give and return, its woven edge, its fibre.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks, When};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{ClothFace, ClothFlaw, Edge, Fold, Give, Growth, LightThrough, OutseamEdge, Picture, RubOff, Weave};
use crate::trade::{Aspect, Stage};

use super::finish::WASH_LEVEL;

pub(in crate::catalog) static CLOTH_HAND: Check = Check {
    key: "cloth-hand",
    name: "Cloth in the hand",
    question: "How does the cloth feel between your fingers?",
    how: "Take one layer at the thigh, away from seams. Roll it between thumb and two fingers, crush it for five seconds, let \
        go. Feel how closely the yarns sit and watch how it opens again.",
    meaning: "Close yarns and a lively spring are hard to fake, and loose cloth tends to thin out sooner. Thin cloth can be \
        dense, and heavy cloth can be loose. Starch in raw cloth or softener in washed cloth can mislead: look for springing \
        back, not for hard or soft.",
    levels: &[
        Level {
            key: "papery",
            name: "Papery or loose",
            line: "Yarns shift under the thumb, or it crackles like paper.",
            spans: &[],
            drawn: Some(Picture::Weave(Weave { ends_per_cm: 13.0, picks_per_cm: 9.0, cover: 0.5, unevenness: 0.3 })),
        },
        Level {
            key: "limp",
            name: "Thin or limp",
            line: "Holds together, but hangs dead and keeps every crease.",
            spans: &[],
            drawn: Some(Picture::Weave(Weave { ends_per_cm: 18.0, picks_per_cm: 12.0, cover: 0.7, unevenness: 0.15 })),
        },
        Level {
            key: "firm",
            name: "Firm",
            line: "Close and solid, and the creases open slowly.",
            spans: &[],
            drawn: Some(Picture::Weave(Weave { ends_per_cm: 24.0, picks_per_cm: 16.0, cover: 0.88, unevenness: 0.08 })),
        },
        Level {
            key: "lively",
            name: "Dense and springy",
            line: "Very close, full in the fingers, and opens again at once.",
            spans: &[],
            drawn: Some(Picture::Weave(Weave { ends_per_cm: 30.0, picks_per_cm: 20.0, cover: 0.98, unevenness: 0.05 })),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 5, shares 12/33/42/13 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 1.6, thresholds: &[-1.91, -0.2, 1.83] },
        "Dense, lively cloth comes from better mills, and cloth is the largest single cost of most jeans.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COST_SHEETS],
};

pub(in crate::catalog) static CLOTH_EVEN: Check = Check {
    key: "cloth-even",
    name: "Evenness of the cloth",
    question: "How even is the cloth along the leg?",
    how: "Hold one leg towards the light so that it falls flat along the cloth. Look from thigh to hem, front and back. Leave \
        out fades, intended holes and thick places that repeat all over.",
    meaning: "Streaks, knots and broken yarns are mill faults that careful makers cut around. Thick and thin yarns spread all \
        over (slub) are a chosen look and count as even. So do planned fades. Shop light is often yellow: go to a window if \
        you doubt.",
    levels: &[
        Level {
            key: "faulty",
            name: "Holes, streaks or broken yarns",
            line: "A fault you would point out to a friend.",
            spans: &[],
            drawn: Some(Picture::ClothFace(ClothFace { flaw: ClothFlaw::Hole, count: 3 })),
        },
        Level {
            key: "patchy",
            name: "Patchy",
            line: "No single fault, but cloudy, barred or unlike from place to place.",
            spans: &[],
            drawn: Some(Picture::ClothFace(ClothFace { flaw: ClothFlaw::Patch, count: 5 })),
        },
        Level {
            key: "even",
            name: "Even, or evenly slubby",
            line: "The same all along; thick yarns, if any, are spread all over.",
            spans: &[],
            drawn: Some(Picture::ClothFace(ClothFace { flaw: ClothFlaw::None, count: 0 })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 3, shares 8/32/60 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Cloth, slope: 0.9, thresholds: &[-3.17, -0.57] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static LIGHT_THROUGH: Check = Check {
    key: "light-through",
    name: "Light through the cloth",
    question: "What do you see with a light behind one layer?",
    how: "Slide your phone inside a leg with its torch on low, shining outwards. Press one layer of the thigh flat over it and \
        look from outside. Choose a place with no fade, seam or pocket.",
    meaning: "Pinholes and bright streaks show loose or uneven weaving. Light and pale cloth lets more light through by \
        nature: look for unevenness, not brightness. This tells nothing about how strong the yarns are.",
    levels: &[
        Level {
            key: "open",
            name: "Pinholes or bright streaks",
            line: "Light breaks through in points or lines.",
            spans: &[],
            drawn: Some(Picture::LightThrough(LightThrough { pinholes: 26, cloud: 0.0 })),
        },
        Level {
            key: "uneven",
            name: "Cloudy glow",
            line: "The glow has lighter and darker patches.",
            spans: &[],
            drawn: Some(Picture::LightThrough(LightThrough { pinholes: 0, cloud: 0.7 })),
        },
        Level {
            key: "closed",
            name: "Even glow or none",
            line: "The same dim glow all over, or no light at all.",
            spans: &[],
            drawn: Some(Picture::LightThrough(LightThrough { pinholes: 0, cloud: 0.0 })),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 2, shares 12/38/50 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Cloth, slope: 0.6, thresholds: &[-3.63, 0.0] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static CLOTH_WEIGHT: Check = Check {
    key: "cloth-weight",
    name: "Weight of the cloth",
    question: "How heavy is the cloth?",
    how: "Look for ounces (oz) on the label or hang tag. If none is given, hang the jeans on a luggage scale and let the bench \
        work it out from the size.",
    meaning: "Ounces count one square yard; 12 oz is about 407 grams per square metre. Weight is a matter of taste and season. \
        Heavier is warmer and stiffer, and it does not always last longer. Raw cloth also carries starch that washes out.",
    levels: &[
        Level {
            key: "under-10",
            name: "Under 10 oz",
            line: "Light, for summer (under 340 g/m²).",
            spans: &[Span { low: f64::NEG_INFINITY, high: 10.0 }],
            drawn: Some(Picture::Fold(Fold { ounces: 8.0, spring: 0.125 })),
        },
        Level {
            key: "10-to-12",
            name: "10 to 12 oz",
            line: "Light to middling; common in stretch jeans (340 to 407 g/m²).",
            spans: &[Span { low: 10.0, high: 12.0 }],
            drawn: Some(Picture::Fold(Fold { ounces: 11.0, spring: 0.3125 })),
        },
        Level {
            key: "12-to-14",
            name: "12 to 14 oz",
            line: "The usual weight of sturdy jeans (407 to 475 g/m²).",
            spans: &[Span { low: 12.0, high: 14.0 }],
            drawn: Some(Picture::Fold(Fold { ounces: 13.0, spring: 0.4375 })),
        },
        Level {
            key: "14-to-16",
            name: "14 to 16 oz",
            line: "Heavy and slow to fold (475 to 542 g/m²).",
            spans: &[Span { low: 14.0, high: 16.0 }],
            drawn: Some(Picture::Fold(Fold { ounces: 15.0, spring: 0.5625 })),
        },
        Level {
            key: "over-16",
            name: "Over 16 oz",
            line: "Very heavy; legs nearly stand by themselves (over 542 g/m²).",
            spans: &[Span { low: 16.0, high: f64::INFINITY }],
            drawn: Some(Picture::Fold(Fold { ounces: 18.0, spring: 0.75 })),
        },
    ],
    seconds: 40,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Heavier cloth takes more cotton, so every metre costs more."),
    instruments: &[&measure::CLOTH_MASS, &measure::CLOTH_MASS_WEIGHED, &measure::CLOTH_MASS_BUILT, &measure::CLOTH_MASS_COMPARED],
    asked_when: None,
    caution: None,
    sources: &[&sources::DENIM_OUNCE, &sources::AREA_MODEL, &sources::RUBBING],
};

pub(in crate::catalog) static STRETCH: Check = Check {
    key: "stretch",
    name: "Give of the cloth",
    question: "How far does the cloth give when you pull it?",
    how: "On the thigh, away from seams, set two fingertips 10 cm (4 in) apart across the leg. Pull once, steadily, as if you \
        lifted two kilograms. Read how much longer it gets.",
    meaning: "This is what the cloth is meant to do, and no answer is better than another. Rigid cloth shapes itself to you \
        slowly; stretch moves with you. How well it comes back is another question, and the one that counts.",
    levels: &[
        Level {
            key: "rigid",
            name: "Rigid",
            line: "Hardly moves: less than 10 mm (⅜ in).",
            spans: &[Span { low: f64::NEG_INFINITY, high: 10.0 }],
            drawn: Some(Picture::Give(Give { give_cm: 0.4 })),
        },
        Level {
            key: "comfort",
            name: "Comfort stretch",
            line: "A little give: 10 to 20 mm (⅜ to ¾ in).",
            spans: &[Span { low: 10.0, high: 20.0 }],
            drawn: Some(Picture::Give(Give { give_cm: 1.5 })),
        },
        Level {
            key: "stretch",
            name: "Stretch",
            line: "Plain give: 20 to 30 mm (¾ to nearly 1¼ in).",
            spans: &[Span { low: 20.0, high: 30.0 }],
            drawn: Some(Picture::Give(Give { give_cm: 2.5 })),
        },
        Level {
            key: "power",
            name: "Power stretch",
            line: "Gives like a sports legging: over 30 mm (nearly 1¼ in).",
            spans: &[Span { low: 30.0, high: f64::INFINITY }],
            drawn: Some(Picture::Give(Give { give_cm: 4.0 })),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Elastic yarn adds roughly a tenth to a fifth to the price of a metre."),
    instruments: &[&measure::GIVE],
    asked_when: None,
    caution: Some("One steady pull only, and never on a seam. Ask first when the jeans are not yours."),
    sources: &[&sources::D3107, &sources::STRETCH_CLASSES, &sources::DENIM_PRICES],
};

pub(in crate::catalog) static GROWTH: Check = Check {
    key: "growth",
    name: "Return after a pull",
    question: "How much longer does the cloth stay after a pull?",
    how: "Mark 10 cm across the thigh with two fingertips against a ruler. Pull firmly for ten seconds, let go, wait thirty \
        seconds, measure again. Each extra millimetre is one per cent.",
    meaning: "What stays longer will bag at knee and seat. The pull itself tells little: cloth can give far and still come \
        back. One hand test is rough, about three points either way, and wear and heat tire elastic yarn later.",
    levels: &[
        Level {
            key: "over-7",
            name: "More than 7 %",
            line: "Over 7 mm longer: likely to bag soon.",
            spans: &[Span { low: 7.0, high: f64::INFINITY }],
            drawn: Some(Picture::Growth(Growth { percent: 8.5 })),
        },
        Level {
            key: "5-to-7",
            name: "5 to 7 %",
            line: "5 to 7 mm longer: knees may show it by evening.",
            spans: &[Span { low: 5.0, high: 7.0 }],
            drawn: Some(Picture::Growth(Growth { percent: 6.0 })),
        },
        Level {
            key: "3-to-5",
            name: "3 to 5 %",
            line: "3 to 5 mm longer: usual for stretch cloth.",
            spans: &[Span { low: 3.0, high: 5.0 }],
            drawn: Some(Picture::Growth(Growth { percent: 4.0 })),
        },
        Level {
            key: "under-3",
            name: "3 % or less",
            line: "Within 3 mm of where it was.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 3.0 }],
            drawn: Some(Picture::Growth(Growth { percent: 1.5 })),
        },
    ],
    seconds: 45,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 15/27/35/23 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-1.95, -0.38, 1.39] }),
    instruments: &[&measure::GROWTH],
    asked_when: Some(When { check: &STRETCH, levels: &["comfort", "stretch", "power"], share: 80 }),
    caution: Some("One steady pull only, and never on a seam. Ask first when the jeans are not yours."),
    sources: &[&sources::JUDGEMENT, &sources::D3107, &sources::ELASTANE_STUDY],
};

pub(in crate::catalog) static RUB_OFF: Check = Check {
    key: "rub-off",
    name: "Colour that rubs off",
    question: "How much colour does a white tissue pick up?",
    how: "Ask first if the jeans are not yours. Wrap a dry white tissue round a finger and rub ten times inside the waistband, \
        with the pressure of wiping a table.",
    meaning: "On washed jeans much colour means poor rinsing. Raw indigo always rubs off, so it is not asked there. Black and \
        very dark shades give a little even when well rinsed. A dry tissue says nothing about rubbing when wet.",
    levels: &[
        Level {
            key: "strong",
            name: "A lot",
            line: "A dark blue or black patch.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.5 }],
            drawn: Some(Picture::RubOff(RubOff { strength: 0.95 })),
        },
        Level {
            key: "plain",
            name: "Some, plain to see",
            line: "A clear tint at arm’s length.",
            spans: &[Span { low: 2.5, high: 3.5 }],
            drawn: Some(Picture::RubOff(RubOff { strength: 0.6 })),
        },
        Level {
            key: "faint",
            name: "A trace",
            line: "Only seen beside a clean part of the tissue.",
            spans: &[Span { low: 3.5, high: 4.5 }],
            drawn: Some(Picture::RubOff(RubOff { strength: 0.2 })),
        },
        Level {
            key: "none",
            name: "None",
            line: "The tissue stays white.",
            spans: &[Span { low: 4.5, high: f64::INFINITY }],
            drawn: Some(Picture::RubOff(RubOff { strength: 0.0 })),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 2, shares 10/30/42/18 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Cloth, slope: 0.6, thresholds: &[-3.96, -0.78, 2.83] }),
    instruments: &[&measure::RUB_OFF, &measure::RUB_OFF_PHOTO],
    asked_when: Some(When { check: &WASH_LEVEL, levels: &["light", "stone", "many-step"], share: 75 }),
    caution: Some("Ask before you rub goods that are not yours. Do not wet them."),
    sources: &[&sources::JUDGEMENT, &sources::CROCKING],
};

pub(in crate::catalog) static SELVEDGE: Check = Check {
    key: "selvedge",
    name: "Selvedge at the outer leg",
    question: "Does the outer leg seam use the woven edge of the cloth?",
    how: "Turn up the hem, then look inside along the whole outer leg seam. A selvedge is the cloth’s own closed edge, often \
        white with a coloured line, on both sides of the seam pressed open.",
    meaning: "A true selvedge means narrow cloth from a slow loom. It says what the cloth cost, not how long it lives. It is \
        faked by tape sewn on, a printed line, or an edge only at the turn-up or coin pocket.",
    levels: &[
        Level {
            key: "none",
            name: "No",
            line: "Cut edges wrapped in thread, bound or raw.",
            spans: &[],
            drawn: Some(Picture::OutseamEdge(OutseamEdge { edge: Edge::DenseOverlock, whole_leg: true })),
        },
        Level {
            key: "partial",
            name: "Only in part, or a tape",
            line: "At the turn-up only, on one side, or sewn on.",
            spans: &[],
            drawn: Some(Picture::OutseamEdge(OutseamEdge { edge: Edge::SewnTape, whole_leg: true })),
        },
        Level {
            key: "true",
            name: "Yes, the whole leg",
            line: "Woven edge on both sides, from waist to hem.",
            spans: &[],
            drawn: Some(Picture::OutseamEdge(OutseamEdge { edge: Edge::SelfEdge, whole_leg: true })),
        },
    ],
    seconds: 8,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost(
        "Narrow cloth takes about twice the metres, and each metre is dearer; a wrapped outer seam is cheaper and need not last less.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::COMMON_PRACTICE, &sources::DENIM_PRICES, &sources::NARROW_CLOTH],
};

pub(in crate::catalog) static FIBRE_LABEL: Check = Check {
    key: "fibre-label",
    name: "What the fibre label says",
    question: "What is the cloth made of, by its label?",
    how: "Find the small sewn-in label inside the left hip or at the back of the waist. Read the percentages of the main \
        cloth; they stand in order of weight. Spandex and elastane are the same fibre. No label: choose can’t tell.",
    meaning: "The label is the maker’s claim, and rules allow about three points either way. No touch can confirm it. Elastic \
        fibre makes stretch, polyester dries fast and holds shape, cotton breathes. None of them is better cloth by itself.",
    levels: &[
        Level {
            key: "much-synthetic",
            name: "Over 30 % man-made",
            line: "Polyester, viscose or the like make up a large part.",
            spans: &[],
            drawn: None,
        },
        Level {
            key: "some-synthetic",
            name: "3 to 30 % man-made",
            line: "Mostly cotton, with polyester, viscose or more elastane.",
            spans: &[],
            drawn: None,
        },
        Level {
            key: "little-elastane",
            name: "Cotton, under 3 % elastane",
            line: "Nearly all cotton with a touch of stretch.",
            spans: &[],
            drawn: None,
        },
        Level {
            key: "natural",
            name: "All natural fibre",
            line: "All cotton, or cotton with linen or hemp.",
            spans: &[],
            drawn: None,
        },
    ],
    seconds: 8,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost(
        "Polyester mostly makes cloth cheaper; linen, hemp and long cotton fibre make it dearer. The label does not tell long from short cotton.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Never burn a thread to find the fibre: it can set cloth and hair alight, and it proves little."),
    sources: &[&sources::CFR_303, &sources::EU_1007],
};
