//! The tailored jacket, its front: what lies inside it, how the lapels turn, how the edges end.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{FrontEdge, FrontLayer, Lapels, Picture};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static CANVAS: Check = Check {
    key: "canvas",
    name: "Layer inside the front",
    question: "What lies between cloth and facing, below the top button?",
    how: "Undo the front. Pinch the outer cloth with one hand and the facing, its inner side, with the other; draw them a little \
        apart. Feel whether a third layer slides free between. Do it in the chest, then near the hem.",
    meaning: "A layer sewn in (canvas) lets the front take your shape and outlasts cleaning; a glued one may come off in bubbles. \
        Soft glue of today can last for years. Some makers let a scrap float in the chest only, so pinch in both places. Stiffness \
        alone proves nothing.",
    levels: &[
        Level {
            key: "glued-stiff",
            name: "A stiff layer, glued on",
            line: "Two layers only; the front feels like card.",
            spans: &[],
            drawn: Some(Picture::FrontLayer(FrontLayer::GluedStiff)),
        },
        Level {
            key: "glued-soft",
            name: "A soft layer, glued on",
            line: "Two layers only, but they bend and drape.",
            spans: &[],
            drawn: Some(Picture::FrontLayer(FrontLayer::GluedSoft)),
        },
        Level {
            key: "floats-chest",
            name: "A free layer in chest and lapel",
            line: "A third layer slides in the chest, none near the hem.",
            spans: &[],
            drawn: Some(Picture::FrontLayer(FrontLayer::FloatsInChest)),
        },
        Level {
            key: "floats-hem",
            name: "A free layer down to the hem",
            line: "A third layer slides between, top and bottom.",
            spans: &[],
            drawn: Some(Picture::FrontLayer(FrontLayer::FloatsToHem)),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 5, shares 30/38/24/8 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Strength, slope: 1.6, thresholds: &[-0.85, 0.76, 2.29] },
        "A sewn-in layer takes up to twice the minutes of a glued one, and dearer cloth inside.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Draw the layers apart gently and do not tug: glue and stitches can let go, and the goods may not be yours."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static LAPEL_ROLL: Check = Check {
    key: "lapel-roll",
    name: "Roll of the lapels",
    question: "How do the lapels turn back?",
    how: "Button the jacket on its hanger or on yourself. Look from the side at the fold of each lapel, from collar to button. Lift \
        a lapel, let it go, and see whether it falls back into the same line. Compare left with right.",
    meaning: "A roll is sewn in with the layer below; an iron can only press a crease. Steam can fake it for a day, so lift and let \
        go. A jacket squeezed in transport may lie flat until it has hung: shake it out first. Wide or narrow lapels are fashion.",
    levels: &[
        Level {
            key: "curls",
            name: "Creased flat, or curling out",
            line: "A line like paper, or tips that stand up.",
            spans: &[],
            drawn: Some(Picture::Lapels(Lapels::Curled)),
        },
        Level {
            key: "flat",
            name: "Flat",
            line: "They lie on the chest along a hard crease.",
            spans: &[],
            drawn: Some(Picture::Lapels(Lapels::Flat)),
        },
        Level {
            key: "rolls",
            name: "In a roll down to the button",
            line: "A soft turn, though left and right differ a little.",
            spans: &[],
            drawn: Some(Picture::Lapels(Lapels::Rolled)),
        },
        Level {
            key: "rolls-alike",
            name: "In a roll, both alike",
            line: "A soft turn that springs back when lifted.",
            spans: &[],
            drawn: Some(Picture::Lapels(Lapels::RolledAlike)),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 5, shares 12/38/37/13 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.6, thresholds: &[-1.91, 0.0, 1.83] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static EDGES: Check = Check {
    key: "edges",
    name: "Front edges and hem",
    question: "How do the front edges and the hem lie?",
    how: "Run the front edge between thumb and finger from lapel to hem, both sides. Hold it against the light from the side: look \
        for waves, thick spots, and shine where an iron pressed too hard. Compare the two curves at the bottom.",
    meaning: "A thin crisp edge means that the layers inside were cut back step by step and pressed well. Bulk comes from hurry and \
        does not press out. Heavy cloth has thicker edges by nature. Stitching along the edge may be real or only for show.",
    levels: &[
        Level {
            key: "bulky",
            name: "Bulky or wavy",
            line: "Thick as a rope in places, or it ripples.",
            spans: &[],
            drawn: Some(Picture::FrontEdge(FrontEdge::Bulky)),
        },
        Level {
            key: "shine",
            name: "With some bulk or shine",
            line: "Layers show through, or the iron left its gloss.",
            spans: &[],
            drawn: Some(Picture::FrontEdge(FrontEdge::Shiny)),
        },
        Level {
            key: "flat",
            name: "Flat",
            line: "No waves, no shine; you feel a soft ridge.",
            spans: &[],
            drawn: Some(Picture::FrontEdge(FrontEdge::Flat)),
        },
        Level {
            key: "crisp",
            name: "Thin and crisp",
            line: "Thin all along, and both curves run alike.",
            spans: &[],
            drawn: Some(Picture::FrontEdge(FrontEdge::Crisp)),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Finish,
    // Power 3, shares 9/36/40/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Finish, slope: 0.9, thresholds: &[-3.03, -0.28, 2.34] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
