//! Shirts, the cloth: its hand, its weight, its fibre.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Layers, LightHand, Picture};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static CLOTH_HAND: Check = Check {
    key: "cloth-hand",
    name: "Cloth in the hand",
    question: "How fine and how lively is the cloth?",
    how: "Rub one layer between thumb and fingers. Crush a handful for five seconds and let go. Then hold one layer \
        before your other hand, against the light.",
    meaning: "Fine yarns set close feel smooth and hide the hand; coarse or loose ones do not. Linen and voile are sheer or \
        crease by nature: judge them by evenness. Starch and easy-care resin make poor cloth feel crisp until it is \
        washed.",
    levels: &[
        Level {
            key: "thin",
            name: "Thin and sheer",
            line: "The hand shows, and every crease stays.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.8, creases: Some(11), knit: false })),
        },
        Level {
            key: "plain",
            name: "Plain and dry",
            line: "Serviceable; the hand shows as shapes, creases open slowly.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.5, creases: Some(6), knit: false })),
        },
        Level {
            key: "fine",
            name: "Fine and even",
            line: "Smooth yarns, an even surface, few creases.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.25, creases: Some(3), knit: false })),
        },
        Level {
            key: "dense",
            name: "Fine, dense and smooth",
            line: "Close and cool, hides the hand, opens again.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.0, creases: Some(0), knit: false })),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 12/38/36/14 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.21, 0.0, 2.03] },
        "Finer, longer yarn costs more, and cloth is the largest single cost of a shirt.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you crush cloth that is not yours."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static CLOTH_WEIGHT: Check = Check {
    key: "cloth-weight",
    name: "Weight of the cloth",
    question: "How heavy is the cloth?",
    how: "Look for grams (g/m²) on the label, hang tag or the seller’s page. If none is given, count its threads and let \
        the bench work it out, or compare it with cloth you know.",
    meaning: "Weight is season and taste. Poplin, the plain smooth shirting, has 100 to 130 grams per square metre, oxford \
        130 to 180. Heavier is warmer and more opaque; it does not always last longer.",
    levels: &[
        Level {
            key: "under-100",
            name: "Under 100 g/m²",
            line: "Voile and other summer cloth (under 2.9 oz).",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.949 }],
            drawn: Some(Picture::Layers(Layers { grams: 85.0 })),
        },
        Level {
            key: "100-to-130",
            name: "100 to 130 g/m²",
            line: "The usual poplin (2.9 to 3.8 oz).",
            spans: &[Span { low: 2.949, high: 3.834 }],
            drawn: Some(Picture::Layers(Layers { grams: 115.0 })),
        },
        Level {
            key: "130-to-180",
            name: "130 to 180 g/m²",
            line: "Oxford, twill, chambray (3.8 to 5.3 oz).",
            spans: &[Span { low: 3.834, high: 5.309 }],
            drawn: Some(Picture::Layers(Layers { grams: 155.0 })),
        },
        Level {
            key: "over-180",
            name: "Over 180 g/m²",
            line: "Flannel, heavy twill, a shirt worn as a jacket (over 5.3 oz).",
            spans: &[Span { low: 5.309, high: f64::INFINITY }],
            drawn: Some(Picture::Layers(Layers { grams: 220.0 })),
        },
    ],
    seconds: 30,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Heavier cloth takes more cotton, but fine light cloth can cost more than heavy coarse cloth."),
    instruments: &[&measure::CLOTH_MASS, &measure::CLOTH_MASS_BUILT, &measure::CLOTH_MASS_COMPARED],
    asked_when: None,
    caution: None,
    sources: &[&sources::CLOTH_CHARTS],
};

pub(in crate::catalog) static FIBRE: Check = Check {
    key: "fibre",
    name: "Fibre on the label",
    question: "What is the cloth made of, by its label?",
    how: "Find the sewn-in label in the side seam. The fibres stand in order of weight. Words such as “Egyptian” or \
        “Supima” are names; the label may not explain them.",
    meaning: "Fibre is cost and comfort, not quality by itself. Polyester dries fast and keeps its press; cotton and linen \
        breathe. A claim of long staple, meaning longer fibres, cannot be checked by hand.",
    levels: &[
        Level {
            key: "polyester",
            name: "Mostly polyester",
            line: "Over half polyester or other man-made fibre of that kind.",
            spans: &[],
            drawn: None,
        },
        Level { key: "blend", name: "Blend", line: "Mostly cotton with polyester, or with viscose.", spans: &[], drawn: None },
        Level { key: "cotton", name: "Cotton", line: "All or nearly all cotton.", spans: &[], drawn: None },
        Level {
            key: "long-staple",
            name: "Long-staple cotton, linen or silk",
            line: "Named long-staple cotton, all linen, or all silk.",
            spans: &[],
            drawn: None,
        },
    ],
    seconds: 5,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Long-staple cotton, linen and silk cost a multiple of polyester by weight."),
    instruments: &[],
    asked_when: None,
    caution: Some("Never burn a thread to find the fibre. That belongs in a laboratory."),
    sources: &[&sources::CFR_303, &sources::EU_1007],
};
