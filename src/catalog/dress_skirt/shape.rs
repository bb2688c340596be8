//! Dresses and skirts, the shape: how one hangs, darts and gathers, and which of the two it is.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Darts, Dress, DressFlat, HungDress, Picture};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static HANG: Check = Check {
    key: "hang",
    name: "How it hangs",
    question: "Do its seams hang plumb, and do both sides match?",
    how: "Hang it straight by shoulders or loops and step back. Follow the middle and both side seams down to the hem. Look for \
        folds that drag slantwise.",
    meaning: "Seams that hang plumb show cloth cut on its grain, and no pressing puts that right for good. A piece hung crookedly \
        looks the same: hang it again. Cloth cut on the slant, and draped designs, may turn on purpose.",
    levels: &[
        Level {
            key: "twisted",
            name: "Twisted",
            line: "Seams turn to the front or back, folds drag.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hung(HungDress::Twisted))),
        },
        Level {
            key: "leans",
            name: "It leans",
            line: "One side hangs lower, or a seam strays.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hung(HungDress::Leans))),
        },
        Level {
            key: "plumb",
            name: "Plumb",
            line: "Seams run straight down, sides alike.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hung(HungDress::Plumb))),
        },
        Level {
            key: "plumb-meets",
            name: "Plumb, and patterns meet",
            line: "A pattern meets at the seams; plain cloth hangs alike throughout.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hung(HungDress::Meets))),
        },
    ],
    seconds: 8,
    stage: Stage::OnTheHanger,
    aspect: Aspect::Shape,
    // Power 4, shares 10/32/42/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.2, thresholds: &[-2.41, -0.38, 1.87] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static FULLNESS: Check = Check {
    key: "fullness",
    name: "Darts, pleats and gathers",
    question: "How even are darts, pleats or gathers on both sides?",
    how: "Lay the front flat and compare left and right: where darts end, how deep pleats are, how gathers spread. Smooth the \
        point of a dart with a finger.",
    meaning: "Shape is sewn in here, and a dart that runs out into nothing takes skill. A bubble at its point seldom presses out. A \
        piece without any has nothing to judge: choose can’t tell.",
    levels: &[
        Level {
            key: "uneven",
            name: "Uneven",
            line: "Left and right differ at a glance, or points stand up.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Darts(Darts::Uneven))),
        },
        Level {
            key: "slightly",
            name: "Slightly off",
            line: "Some millimetres, or a small bubble.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Darts(Darts::Slightly))),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Both sides alike; you see where they end.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Darts(Darts::Even))),
        },
        Level {
            key: "vanish",
            name: "Even, and points vanish",
            line: "You cannot feel where a dart ends.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Darts(Darts::Vanish))),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 3, shares 9/33/42/16 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Shape, slope: 0.9, thresholds: &[-3.03, -0.46, 2.24] },
        "Careful shaping takes some minutes more at the machine and the iron.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static PIECE: Check = Check {
    key: "piece",
    name: "Dress or skirt",
    question: "Is it a dress or a skirt?",
    how: "A pinafore or a skirt with a bib counts as a dress.",
    meaning: "It says nothing about quality. A skirt is about half the work and two thirds of the cloth of a dress, so what it \
        costs to make hangs on it.",
    levels: &[
        Level {
            key: "skirt",
            name: "A skirt",
            line: "It begins at the waist.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Flat(DressFlat { skirt: true, point: None }))),
        },
        Level {
            key: "dress",
            name: "A dress",
            line: "It hangs from the shoulders or the bust.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Flat(DressFlat { skirt: false, point: None }))),
        },
    ],
    seconds: 1,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    speaks: Speaks::Cost("A dress takes about twice the minutes and half again the cloth of a skirt."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};
