//! T-shirts, the cloth: how close it is, how it comes back, its weight, its face, its print.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks, When};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Growth, Layers, LightHand, Picture, Pilling, Print};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static DENSITY: Check = Check {
    key: "density",
    name: "How close the cloth is",
    question: "How much of your hand shows through one layer?",
    how: "Pinch the cloth, then slip a hand in, away from seams, and hold one layer before the light. Look at your \
        fingers behind it.",
    meaning: "Close loops of good yarn hide more and hold their shape. Light cloth may be meant for summer, so judge how \
        even and close the loops are, not the weight. White shows more than dark: compare like with like.",
    levels: &[
        Level {
            key: "fingers",
            name: "Fingers plain to see",
            line: "You could count rings on them.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.85, creases: None, knit: true })),
        },
        Level {
            key: "shapes",
            name: "Shapes",
            line: "You see that there are fingers.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.5, creases: None, knit: true })),
        },
        Level {
            key: "shadow",
            name: "A shadow only",
            line: "Something is there, without an edge.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.25, creases: None, knit: true })),
        },
        Level {
            key: "nothing",
            name: "Nothing, and it feels firm",
            line: "Close loops, full in the fingers.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.0, creases: None, knit: true })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 14/36/36/14 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.03, 0.0, 2.03] },
        "Closer cloth takes more and finer yarn, and yarn is most of the cost of a T-shirt.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static RETURN: Check = Check {
    key: "return",
    name: "Return after a pull",
    question: "How much longer do 10 cm stay after a pull?",
    how: "Set two fingertips 10 cm (4 in) apart across the body. Pull to 13 cm, let go, wait ten seconds. Read how far \
        apart the same two places are now.",
    meaning: "What does not come back bags at elbow and hem. Elastane helps, and so does close cloth. Warm hands and a \
        second pull change it, so pull once and steadily.",
    levels: &[
        Level {
            key: "over-10-6",
            name: "Over 10.6 cm",
            line: "Over 6 mm longer: it stays out.",
            spans: &[Span { low: 6.0, high: f64::INFINITY }],
            drawn: Some(Picture::Knit(&Picture::Growth(Growth { percent: 8.0 }))),
        },
        Level {
            key: "to-10-6",
            name: "10.3 to 10.6 cm",
            line: "3 to 6 mm (⅛ to ¼ in) longer.",
            spans: &[Span { low: 3.0, high: 6.0 }],
            drawn: Some(Picture::Knit(&Picture::Growth(Growth { percent: 4.5 }))),
        },
        Level {
            key: "to-10-3",
            name: "10.1 to 10.3 cm",
            line: "1 to 3 mm longer.",
            spans: &[Span { low: 1.0, high: 3.0 }],
            drawn: Some(Picture::Knit(&Picture::Growth(Growth { percent: 2.0 }))),
        },
        Level {
            key: "10-1",
            name: "10.1 cm or less",
            line: "Back where it was.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 1.0 }],
            drawn: Some(Picture::Knit(&Picture::Growth(Growth { percent: 0.0 }))),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 14/30/36/20 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.03, -0.28, 1.58] }),
    instruments: &[&measure::GROWTH],
    asked_when: None,
    caution: Some("One steady pull, and ask first on goods that are not yours."),
    sources: &[&sources::JUDGEMENT, &sources::D3107],
};

pub(in crate::catalog) static PILL_RUB: Check = Check {
    key: "pill-rub",
    name: "The face after rubbing",
    question: "What do twenty circles of rubbing leave on the face?",
    how: "Lay the cloth of the hem on itself, face to face. Rub twenty small circles with light pressure. Look along the \
        face against the light.",
    meaning: "Short fibres and loose twist work loose as fuzz and then as beads. A coat of finish hides it in new goods and \
        washes out. It tells how soon the face looks old, not how soon it tears.",
    levels: &[
        Level {
            key: "beads",
            name: "Beads",
            line: "Small balls that roll under the finger.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.5 }],
            drawn: Some(Picture::Knit(&Picture::Pilling(Pilling { grade: 2 }))),
        },
        Level {
            key: "fuzz",
            name: "Fuzz",
            line: "Fibres stand up all over the spot.",
            spans: &[Span { low: 2.5, high: 3.5 }],
            drawn: Some(Picture::Knit(&Picture::Pilling(Pilling { grade: 3 }))),
        },
        Level {
            key: "haze",
            name: "A slight haze",
            line: "Only against the light.",
            spans: &[Span { low: 3.5, high: 4.5 }],
            drawn: Some(Picture::Knit(&Picture::Pilling(Pilling { grade: 4 }))),
        },
        Level {
            key: "clear",
            name: "Clear",
            line: "No difference from the cloth beside it.",
            spans: &[Span { low: 4.5, high: f64::INFINITY }],
            drawn: Some(Picture::Knit(&Picture::Pilling(Pilling { grade: 5 }))),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    // Power 3, shares 14/34/36/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Finish, slope: 0.9, thresholds: &[-2.44, -0.11, 2.24] }),
    instruments: &[&measure::PILLING],
    asked_when: None,
    caution: Some("Ask before you rub goods that are not yours. Use a place inside."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static PRINTED: Check = Check {
    key: "printed",
    name: "Plain or printed",
    question: "Is there a print on it?",
    how: "Look at front, back and sleeves. A woven or dyed pattern in the cloth itself does not count.",
    meaning: "A print is taste. It is asked here since a print can fail while the cloth is sound, and it opens the question \
        of how it stretches.",
    levels: &[
        Level {
            key: "plain",
            name: "No print",
            line: "Plain cloth, or a pattern knitted in.",
            spans: &[],
            drawn: Some(Picture::Print(Print::Absent)),
        },
        Level {
            key: "printed",
            name: "Printed",
            line: "Colour or film laid on the cloth.",
            spans: &[],
            drawn: Some(Picture::Print(Print::Flexes)),
        },
    ],
    seconds: 2,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    speaks: Speaks::Cost("Each colour of a print adds some cents and a screen or a pass."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static PRINT: Check = Check {
    key: "print",
    name: "The print under a stretch",
    question: "What does the print do when you stretch it?",
    how: "Hold the cloth on both sides of the print and stretch it a little, once. Look at its surface and feel its \
        edge.",
    meaning: "Ink that was cured too little cracks and washes off; thick film is hot to wear and stiff. Cracks can be \
        printed on purpose: such cracks do not open. It says little about the shirt below.",
    levels: &[
        Level {
            key: "cracks",
            name: "It cracks or lifts",
            line: "Lines open, or an edge comes up.",
            spans: &[],
            drawn: Some(Picture::Print(Print::Cracks)),
        },
        Level {
            key: "plate",
            name: "It stays a stiff plate",
            line: "The cloth gathers round it.",
            spans: &[],
            drawn: Some(Picture::Print(Print::Plate)),
        },
        Level {
            key: "flexes",
            name: "It goes along",
            line: "It stretches and comes back whole.",
            spans: &[],
            drawn: Some(Picture::Print(Print::Flexes)),
        },
        Level {
            key: "in-cloth",
            name: "It is soft, in the cloth",
            line: "You feel the loops through it.",
            spans: &[],
            drawn: Some(Picture::Print(Print::InCloth)),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    // Power 3, shares 15/35/35/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Finish, slope: 0.9, thresholds: &[-2.34, 0.0, 2.34] }),
    instruments: &[],
    asked_when: Some(When { check: &PRINTED, levels: &["printed"], share: 40 }),
    caution: Some("Ask before you stretch a print that is not yours."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static WEIGHT: Check = Check {
    key: "weight",
    name: "Weight of the cloth",
    question: "How heavy is the cloth?",
    how: "Look for grams (g/m²) on the label, the hang tag or the seller’s page. If none is given, compare it with cloth \
        you know.",
    meaning: "Weight is season and taste: 140 to 200 grams per square metre are usual. Heavier is warmer and more opaque; \
        whether loops are close is another question, and the one that counts.",
    levels: &[
        Level {
            key: "under-140",
            name: "Under 140 g/m²",
            line: "Light, often see-through (under 4.1 oz).",
            spans: &[Span { low: f64::NEG_INFINITY, high: 4.129 }],
            drawn: Some(Picture::Layers(Layers { grams: 120.0 })),
        },
        Level {
            key: "140-to-170",
            name: "140 to 170 g/m²",
            line: "The usual light T-shirt (4.1 to 5 oz).",
            spans: &[Span { low: 4.129, high: 5.014 }],
            drawn: Some(Picture::Layers(Layers { grams: 155.0 })),
        },
        Level {
            key: "170-to-200",
            name: "170 to 200 g/m²",
            line: "Middling (5 to 5.9 oz).",
            spans: &[Span { low: 5.014, high: 5.899 }],
            drawn: Some(Picture::Layers(Layers { grams: 185.0 })),
        },
        Level {
            key: "over-200",
            name: "Over 200 g/m²",
            line: "Heavy, for wear by itself (over 5.9 oz).",
            spans: &[Span { low: 5.899, high: f64::INFINITY }],
            drawn: Some(Picture::Layers(Layers { grams: 240.0 })),
        },
    ],
    seconds: 30,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("A T-shirt takes about one square metre, so heavier cloth costs in step with its yarn."),
    instruments: &[&measure::CLOTH_MASS, &measure::CLOTH_MASS_COMPARED],
    asked_when: None,
    caution: None,
    sources: &[&sources::CLOTH_CHARTS],
};
