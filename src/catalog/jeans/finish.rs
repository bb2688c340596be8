//! Jeans, the finish: what was done to the cloth after sewing, and what that did to it.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks, When};
use crate::grading::{Curve, Group};
use crate::specimen::{Fade, FadeEdge, Harm, Picture, Wash, Wear, WhiskerWork, Whiskers};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static WASH_LEVEL: Check = Check {
    key: "wash-level",
    name: "Raw, rinsed or washed",
    question: "What was done to the cloth after sewing?",
    how: "Look at hem, belt loops and thick seams. Tops worn pale beside dark hollows (high-low) mean a wash that rubs. Bend \
        the cloth: raw cloth is stiff with starch and creases like card.",
    meaning: "Raw, rinsed or washed are choices of look. None is better. Raw cloth may shrink and stains what it touches; a \
        strong wash has used up some of its life. Dark dye can hide an earlier wash.",
    levels: &[
        Level {
            key: "raw",
            name: "Nothing, it is raw",
            line: "Stiff, even and dark; seams flat, no pale tops.",
            spans: &[],
            drawn: Some(Picture::Wash(Wash { loss: 0.0, high_low: 0.0, mottle: 0.0, creased: true })),
        },
        Level {
            key: "rinsed",
            name: "Only rinsed",
            line: "Softer, still evenly dark; seams puff a little, no pale tops.",
            spans: &[],
            drawn: Some(Picture::Wash(Wash { loss: 0.2, high_low: 0.0, mottle: 0.0, creased: false })),
        },
        Level {
            key: "light",
            name: "One light wash",
            line: "Dark to middle blue; pale tops on seams and hems.",
            spans: &[],
            drawn: Some(Picture::Wash(Wash { loss: 0.4, high_low: 0.15, mottle: 0.0, creased: false })),
        },
        Level {
            key: "stone",
            name: "Stoned or bleached",
            line: "Middle to light blue; strong pale tops, soft edges.",
            spans: &[],
            drawn: Some(Picture::Wash(Wash { loss: 0.6, high_low: 0.7, mottle: 0.3, creased: false })),
        },
        Level {
            key: "many-step",
            name: "Many steps",
            line: "Several tones, tints, sprays or scrapes on top of a wash.",
            spans: &[],
            drawn: Some(Picture::Wash(Wash { loss: 0.85, high_low: 1.0, mottle: 0.8, creased: false })),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    speaks: Speaks::Cost("Each washing step adds cost. Raw is the cheapest finish, though often found on dear jeans."),
    instruments: &[],
    asked_when: None,
    caution: Some("Raw indigo marks skin, shoes and pale seats. Wash it apart from other things."),
    sources: &[&sources::COMMON_PRACTICE, &sources::WASH_COSTS],
};

pub(in crate::catalog) static DRY_WORK: Check = Check {
    key: "dry-work",
    name: "Whiskers and scrapes",
    question: "How were the whiskers and worn places made?",
    how: "Lay both legs side by side. Whiskers are pale lines fanning out from the fly. Compare left with right: mirror-same \
        and crisp, or soft and a little different? Look closely for dots.",
    meaning: "Neither makes better cloth. Laser lines are crisp, alike on both legs and leave seam ridges whole; handwork is \
        softer and differs. A good laser pattern can pass for handwork. Laser is safer for the people who do the work: \
        blasting with sand ruined lungs.",
    levels: &[
        Level {
            key: "none",
            name: "There are none",
            line: "No whiskers, scrapes or holes.",
            spans: &[],
            drawn: Some(Picture::Whiskers(Whiskers { work: WhiskerWork::None, lines: 0 })),
        },
        Level {
            key: "laser",
            name: "By laser or print",
            line: "Crisp ends, fine dots or lines, legs mirror-same.",
            spans: &[],
            drawn: Some(Picture::Whiskers(Whiskers { work: WhiskerWork::Laser, lines: 5 })),
        },
        Level {
            key: "hand",
            name: "By hand",
            line: "Soft edges, legs differ a little, seam ridges rubbed.",
            spans: &[],
            drawn: Some(Picture::Whiskers(Whiskers { work: WhiskerWork::Hand, lines: 5 })),
        },
        Level {
            key: "both",
            name: "By both, or as set ridges",
            line: "Crisp and soft together, or stiff ridges that stay up.",
            spans: &[],
            drawn: Some(Picture::Whiskers(Whiskers { work: WhiskerWork::Creased, lines: 5 })),
        },
        Level {
            key: "torn",
            name: "With holes or repairs",
            line: "Intended holes, darns or patches, whatever else was done.",
            spans: &[],
            drawn: Some(Picture::Whiskers(Whiskers { work: WhiskerWork::Torn, lines: 4 })),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    speaks: Speaks::Cost(
        "Handwork, set ridges and repairs usually cost more for each pair than a laser. None of them says how long the cloth lives.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::COMMON_PRACTICE, &sources::WASH_COSTS, &sources::SANDBLASTING],
};

pub(in crate::catalog) static FINISH_CRAFT: Check = Check {
    key: "finish-craft",
    name: "Grading of the fades",
    question: "How do the fades and creases end?",
    how: "Hold the thighs at arm’s length, then close. Follow a pale place to its edge. Do fades end softly, lie where a body \
        bends, follow the seams? Drip marks and crack lines from a full washing drum count as hard lines.",
    meaning: "Soft edges in the right place show a careful finish, whether by hand or machine. This speaks for the finish \
        only. A whisker can sit wrongly because the size was changed, so try the pair on if it matters.",
    levels: &[
        Level {
            key: "hard",
            name: "In hard lines, as if printed",
            line: "A sharp edge, visible dots, drips or crack lines.",
            spans: &[],
            drawn: Some(Picture::Fade(Fade { edge: FadeEdge::Hard })),
        },
        Level {
            key: "abrupt",
            name: "Flat and sudden",
            line: "One pale tone that ends within a finger’s width.",
            spans: &[],
            drawn: Some(Picture::Fade(Fade { edge: FadeEdge::Abrupt })),
        },
        Level {
            key: "soft",
            name: "Softly",
            line: "Gradually, but not quite where this body would wear it.",
            spans: &[],
            drawn: Some(Picture::Fade(Fade { edge: FadeEdge::Graded })),
        },
        Level {
            key: "natural",
            name: "Softly, in the right place",
            line: "Gradually, along seams and where bodies bend.",
            spans: &[],
            drawn: Some(Picture::Fade(Fade { edge: FadeEdge::Natural })),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    // Power 2, shares 12/36/38/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Finish, slope: 0.6, thresholds: &[-3.63, -0.16, 3.34] }),
    instruments: &[],
    asked_when: Some(When { check: &WASH_LEVEL, levels: &["light", "stone", "many-step"], share: 75 }),
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static WASH_DEPTH: Check = Check {
    key: "wash-depth",
    name: "Depth of the wash",
    question: "How much does the colour vary across the washed cloth?",
    how: "Step back two paces, then come close. Compare thighs, knees, seat, the sides of seams and the inside of the hem. \
        Count tones that flow into each other, from dark hollows to pale heights.",
    meaning: "A flat, even wash is a choice like any other. Several tones flowing together take more steps and tell of time in \
        the wash house, not of better cloth. Thick-and-thin yarn adds streaks by itself: do not count those.",
    levels: &[
        Level {
            key: "flat",
            name: "Hardly at all",
            line: "One tone; seams, thighs and seat nearly alike.",
            spans: &[],
            drawn: Some(Picture::Wash(Wash { loss: 0.6, high_low: 0.0, mottle: 0.0, creased: false })),
        },
        Level {
            key: "varied",
            name: "Somewhat",
            line: "Two or three tones; seams, thighs and seat differ.",
            spans: &[],
            drawn: Some(Picture::Wash(Wash { loss: 0.6, high_low: 0.45, mottle: 0.15, creased: false })),
        },
        Level {
            key: "deep",
            name: "Greatly",
            line: "Many tones, no two places alike, all flowing together.",
            spans: &[],
            drawn: Some(Picture::Wash(Wash { loss: 0.6, high_low: 1.0, mottle: 0.9, creased: false })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    speaks: Speaks::Cost("More tones mean more steps in the wash house, and each step is paid."),
    instruments: &[],
    asked_when: Some(When { check: &WASH_LEVEL, levels: &["light", "stone", "many-step"], share: 75 }),
    caution: None,
    sources: &[&sources::COMMON_PRACTICE, &sources::WASH_COSTS],
};

pub(in crate::catalog) static FINISH_HARM: Check = Check {
    key: "finish-harm",
    name: "Harm by the finish",
    question: "Has the finish hurt the cloth?",
    how: "Check hem edges, pocket edges, belt loops and the palest spots against unfaded cloth from beside a seam. Rub both \
        between your fingers and hold the pale spot against the light.",
    meaning: "Cloth worn thin before you buy it has spent part of its life. Intended holes do not count here: judge the cloth \
        round them. For raw and rinsed jeans the answer is mostly no. Softness alone is not harm.",
    levels: &[
        Level {
            key: "worn",
            name: "Yes, worn through",
            line: "Broken yarns at edges or holes that nobody planned.",
            spans: &[],
            drawn: Some(Picture::Wear(Wear { harm: Harm::Hole })),
        },
        Level {
            key: "thin",
            name: "Yes, thin spots",
            line: "Pale places plainly thinner than the rest.",
            spans: &[],
            drawn: Some(Picture::Wear(Wear { harm: Harm::Thin })),
        },
        Level {
            key: "slight",
            name: "A little, at edges",
            line: "Fuzzy edges, with full thickness inside them.",
            spans: &[],
            drawn: Some(Picture::Wear(Wear { harm: Harm::Edge })),
        },
        Level {
            key: "none",
            name: "No",
            line: "Pale and dark places feel equally strong.",
            spans: &[],
            drawn: Some(Picture::Wear(Wear { harm: Harm::None })),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    // Power 4, shares 8/17/35/40 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Finish, slope: 1.2, thresholds: &[-2.64, -1.27, 0.48] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::WASH_COSTS],
};
