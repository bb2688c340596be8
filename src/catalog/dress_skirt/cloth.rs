//! Dresses and skirts, the cloth: how much shows through, how it takes a crush, the lining, how full it is, its fibre.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks, When};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Crushed, Dress, Give, HemRound, LightHand, Picture, SkirtLining};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static OPACITY: Check = Check {
    key: "opacity",
    name: "What shows through",
    question: "How much of your hand shows through what you will wear?",
    how: "Slip a hand in where it lies closest to the body, with the lining if there is one. Hold it before the light and look at \
        your fingers.",
    meaning: "Thin cloth saves money, and you see it on the street rather than in the shop. Sheer cloth can be meant, worn over \
        something: then choose can’t tell. White shows more than dark.",
    levels: &[
        Level {
            key: "see-through",
            name: "Fingers plain to see",
            line: "You would see what is worn beneath.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.85, creases: None, knit: false })),
        },
        Level {
            key: "shapes",
            name: "Shapes",
            line: "You see that there are fingers.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.5, creases: None, knit: false })),
        },
        Level {
            key: "shadow",
            name: "A shadow only",
            line: "Something is there, without an edge.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.25, creases: None, knit: false })),
        },
        Level {
            key: "none",
            name: "Nothing",
            line: "The light shows nothing.",
            spans: &[],
            drawn: Some(Picture::LightHand(LightHand { sheer: 0.0, creases: None, knit: false })),
        },
    ],
    seconds: 4,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 3, shares 14/34/36/16 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 0.9, thresholds: &[-2.44, -0.11, 2.24] },
        "Closer or heavier cloth takes more yarn.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static CRUSH: Check = Check {
    key: "crush",
    name: "Cloth after a crush",
    question: "What stays after you crush a handful for five seconds?",
    how: "Take a handful near the hem, close your fist for five seconds, and let go. Wait a moment and look.",
    meaning: "It tells how you will look after sitting, not how long it lasts. Polyester and wool spring back by nature. Linen creases by \
        nature and is meant to: answer the last choice.",
    levels: &[
        Level {
            key: "stays",
            name: "Sharp creases stay",
            line: "A fan of hard lines.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Crushed(Crushed { creases: 12, sharp: true }))),
        },
        Level {
            key: "slow",
            name: "It opens slowly",
            line: "Soft creases, many left after a while.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Crushed(Crushed { creases: 9, sharp: false }))),
        },
        Level {
            key: "mostly-gone",
            name: "Mostly gone",
            line: "A few faint lines.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Crushed(Crushed { creases: 3, sharp: false }))),
        },
        Level {
            key: "springs",
            name: "It springs back, or is linen",
            line: "As before, or creased as it is meant to.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Crushed(Crushed { creases: 0, sharp: false }))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 3, shares 13/36/36/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Cloth, slope: 0.9, thresholds: &[-2.54, -0.06, 2.34] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you crush goods that are not yours. Leave velvet, pleats and silk alone."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static STRETCH: Check = Check {
    key: "stretch",
    name: "Give of the cloth",
    question: "How far does the cloth give across when you pull it?",
    how: "Away from seams, set two fingertips 10 cm (4 in) apart across the cloth. Pull once, steadily, as if you lifted two \
        kilograms. Read how much longer it gets.",
    meaning: "It decides how a piece may fit, and no answer is better than another. Woven cloth needs room over the body; jersey may be \
        smaller than the body and stretch over it.",
    levels: &[
        Level {
            key: "woven",
            name: "Hardly at all",
            line: "Less than 10 mm (⅜ in): woven cloth.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 10.0 }],
            drawn: Some(Picture::Plain(&Picture::Give(Give { give_cm: 0.4 }))),
        },
        Level {
            key: "some",
            name: "Somewhat",
            line: "10 to 30 mm (⅜ to nearly 1¼ in): elastic yarn woven in.",
            spans: &[Span { low: 10.0, high: 30.0 }],
            drawn: Some(Picture::Plain(&Picture::Give(Give { give_cm: 2.0 }))),
        },
        Level {
            key: "knit",
            name: "Far",
            line: "Over 30 mm (nearly 1¼ in): jersey.",
            spans: &[Span { low: 30.0, high: f64::INFINITY }],
            drawn: Some(Picture::Knit(&Picture::Give(Give { give_cm: 4.2 }))),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost(
        "Elastic yarn adds about a tenth to the price of a metre; plain jersey is often cheaper than woven cloth.",
    ),
    instruments: &[&measure::GIVE],
    asked_when: None,
    caution: Some("One steady pull only, and never on a seam. Ask first when the piece is not yours."),
    sources: &[&sources::JUDGEMENT, &sources::D3107],
};

pub(in crate::catalog) static LINED: Check = Check {
    key: "lined",
    name: "With a lining",
    question: "Does it have a lining?",
    how: "Look inside. A lining of the skirt alone counts; a facing at the neck does not.",
    meaning: "A lining helps cloth to fall and hides seams. Much that is good has none, so it counts as cost only, and it opens the \
        question of how it was set in.",
    levels: &[
        Level {
            key: "unlined",
            name: "No lining",
            line: "You see the back of the cloth.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Lining(SkirtLining::Absent))),
        },
        Level {
            key: "lined",
            name: "Lined",
            line: "A second, thin layer inside.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Lining(SkirtLining::Free))),
        },
    ],
    seconds: 2,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("A lining adds a metre or more of thin cloth and some minutes."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static LINING: Check = Check {
    key: "lining",
    name: "How the lining moves",
    question: "Does the lining move freely, and is it the right length?",
    how: "Let it hang, then slide a hand between lining and cloth. Look at the hem: the lining should end a little above it, all \
        round. Rub it: does it cling?",
    meaning: "A tight lining tears and pulls the hem; a scant one saves cloth. Static comes with polyester and dry air. At the zip, a \
        lining sewn by hand lies clear of the teeth.",
    levels: &[
        Level {
            key: "tight",
            name: "Tight, or it hangs out",
            line: "It pulls, or shows below the hem.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Lining(SkirtLining::HangsOut))),
        },
        Level {
            key: "scant",
            name: "Scant, or it clings",
            line: "Far too short, or it sticks to the hand.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Lining(SkirtLining::Scant))),
        },
        Level {
            key: "free",
            name: "Free",
            line: "It slides, and ends a little above the hem.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Lining(SkirtLining::Free))),
        },
        Level {
            key: "free-fine",
            name: "Free, fine, finished by hand",
            line: "Soft cloth; sewn by hand at zip or vent.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Lining(SkirtLining::FreeFine))),
        },
    ],
    seconds: 8,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    // Power 4, shares 12/38/36/14 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.21, 0.0, 2.03] },
        "Breathing lining costs two to three times what thin polyester does.",
    ),
    instruments: &[],
    // Two in five are lined: judgement.
    asked_when: Some(When { check: &LINED, levels: &["lined"], share: 40 }),
    caution: Some("New linings can hold pins: feel from outside before you slide a hand in."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static VOLUME: Check = Check {
    key: "volume",
    name: "Way round the hem",
    question: "How far is it all the way round the hem?",
    how: "Lay the hem flat, follow its edge with a tape from side to side, and double it. Open pleats as you go.",
    meaning: "A full skirt takes more cloth. Narrow or wide is taste, and neither is better.",
    levels: &[
        Level {
            key: "under-1-2",
            name: "Under 1.2 m",
            line: "Narrow; a long one needs a slit (47 in).",
            spans: &[Span { low: f64::NEG_INFINITY, high: 120.0 }],
            drawn: Some(Picture::Dress(Dress::HemRound(HemRound { metres: 1.0 }))),
        },
        Level {
            key: "1-2-to-2",
            name: "1.2 to 2 m",
            line: "Falls with a little flare (47 to 79 in).",
            spans: &[Span { low: 120.0, high: 200.0 }],
            drawn: Some(Picture::Dress(Dress::HemRound(HemRound { metres: 1.6 }))),
        },
        Level {
            key: "2-to-3-5",
            name: "2 to 3.5 m",
            line: "Wide, falls in folds (79 to 138 in).",
            spans: &[Span { low: 200.0, high: 350.0 }],
            drawn: Some(Picture::Dress(Dress::HemRound(HemRound { metres: 2.7 }))),
        },
        Level {
            key: "over-3-5",
            name: "Over 3.5 m",
            line: "A circle, or closely pleated.",
            spans: &[Span { low: 350.0, high: f64::INFINITY }],
            drawn: Some(Picture::Dress(Dress::HemRound(HemRound { metres: 4.6 }))),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Cloth grows with the way round the hem, and so does the hem itself."),
    instruments: &[&measure::HEM_ROUND],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static FIBRE: Check = Check {
    key: "fibre",
    name: "Fibre on the label",
    question: "Which fibre does the label name first?",
    how: "Look for the sewn-in label of the outer cloth, in the left side seam or at the waist. The lining is named apart.",
    meaning: "Fibre sets care, feel and much of the cost; it is taste, not a grade. Polyester can be fine, and silk can be flimsy.",
    levels: &[
        Level { key: "polyester", name: "Polyester or nylon", line: "More than half, alone or first.", spans: &[], drawn: None },
        Level {
            key: "viscose-blend",
            name: "Viscose or a blend",
            line: "Viscose, lyocell, acetate, or nothing above half.",
            spans: &[],
            drawn: None,
        },
        Level { key: "cotton-linen", name: "Cotton or linen", line: "More than half.", spans: &[], drawn: None },
        Level { key: "wool-silk", name: "Wool or silk", line: "More than half of either, or both.", spans: &[], drawn: None },
    ],
    seconds: 5,
    stage: Stage::InsideOut,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("From polyester to silk the price of a metre rises four- to fivefold."),
    instruments: &[],
    asked_when: None,
    caution: Some("Never burn a thread to find the fibre."),
    sources: &[&sources::CFR_303, &sources::EU_1007],
};
