//! Shirts, what is added: buttonholes, buttons, cuffs, special details.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Buttonhole, Cuffs, Hold, Picture, ShirtButton, ShirtDetails};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static CUFF: Check = Check {
    key: "cuff",
    name: "The cuffs",
    question: "How even and how crisp are the cuffs?",
    how: "Lay both cuffs side by side. Compare edges, corners and width. Look for bubbles on the face, for layers that \
        twist, and count the pleats above each.",
    meaning: "A cuff is made like the collar, twice, so it repeats that test. Soft unlined cuffs are meant on casual shirts: \
        judge whether both are alike. Bubbles grow with washing.",
    levels: &[
        Level {
            key: "bubbled",
            name: "Bubbled or twisted",
            line: "Blisters, or layers that rope to one side.",
            spans: &[],
            drawn: Some(Picture::Cuffs(Cuffs { bubbles: 7, twisted: true, off_mm: 4.0, crisp: false })),
        },
        Level {
            key: "slight",
            name: "Slightly uneven",
            line: "Smooth, but edges or pleats differ when compared.",
            spans: &[],
            drawn: Some(Picture::Cuffs(Cuffs { bubbles: 0, twisted: false, off_mm: 3.0, crisp: false })),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Smooth and alike; edges a bit soft.",
            spans: &[],
            drawn: Some(Picture::Cuffs(Cuffs { bubbles: 0, twisted: false, off_mm: 0.0, crisp: false })),
        },
        Level {
            key: "crisp",
            name: "Even and crisp",
            line: "Sharp edges, pleats in the same places.",
            spans: &[],
            drawn: Some(Picture::Cuffs(Cuffs { bubbles: 0, twisted: false, off_mm: 0.0, crisp: true })),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 3, shares 8/33/43/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Trims, slope: 0.9, thresholds: &[-3.17, -0.51, 2.24] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static BUTTONS: Check = Check {
    key: "buttons",
    name: "The buttons",
    question: "How firmly are the buttons sewn on?",
    how: "Tip each button with a finger, gently. Look between button and cloth for a neck, the short stem of thread, and \
        behind the cloth for a knot or a tail. Look for a spare inside.",
    meaning: "A button is the first thing to come off, and the easiest to mend. One loose end can let a whole button go when \
        it was sewn with a single chained thread. Shell or plastic says cost, not hold.",
    levels: &[
        Level {
            key: "loose",
            name: "Loose, or tails hang",
            line: "It wobbles, or an end of thread hangs out behind.",
            spans: &[],
            drawn: Some(Picture::ShirtButton(ShirtButton { hold: Hold::Loose })),
        },
        Level {
            key: "flat",
            name: "Firm and flat",
            line: "Holds, close on the cloth, nothing secured behind.",
            spans: &[],
            drawn: Some(Picture::ShirtButton(ShirtButton { hold: Hold::Flat })),
        },
        Level {
            key: "locked",
            name: "Firm and locked",
            line: "Holds, with a knot or crossed thread behind.",
            spans: &[],
            drawn: Some(Picture::ShirtButton(ShirtButton { hold: Hold::Locked })),
        },
        Level {
            key: "wrapped",
            name: "On a wrapped neck",
            line: "A wrapped stem lifts it; a spare is sewn inside.",
            spans: &[],
            drawn: Some(Picture::ShirtButton(ShirtButton { hold: Hold::Wrapped })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 3, shares 12/44/32/12 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Trims, slope: 0.9, thresholds: &[-2.65, 0.34, 2.65] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Do not tug: buttons and thread ends come off goods that are not yours."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static BUTTONHOLES: Check = Check {
    key: "buttonholes",
    name: "The buttonholes",
    question: "How dense and clean are the buttonholes?",
    how: "Look at the lowest and the collar buttonhole, inside and out. See how closely the stitches stand, whether \
        yarns hang in the cut, and whether both ends have a bar.",
    meaning: "Dense, cleanly cut holes take time and thread. One that was sewn after cutting, or cut by a dull knife, frays. \
        Loose lint in a new hole may only need a wash; missing stitches will not come back.",
    levels: &[
        Level {
            key: "ragged",
            name: "Ragged",
            line: "Yarns hang out, stitches are missing or cut through.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Buttonhole(Buttonhole {
                stitches_per_cm: 6.0,
                ragged: 0.9,
                keyhole: false,
                bar: false,
            }))),
        },
        Level {
            key: "thin",
            name: "Thin but clean",
            line: "Clean cut; cloth shows between the stitches.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Buttonhole(Buttonhole {
                stitches_per_cm: 8.0,
                ragged: 0.1,
                keyhole: false,
                bar: false,
            }))),
        },
        Level {
            key: "dense",
            name: "Dense and clean",
            line: "No cloth shows between the stitches.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Buttonhole(Buttonhole {
                stitches_per_cm: 16.0,
                ragged: 0.0,
                keyhole: false,
                bar: false,
            }))),
        },
        Level {
            key: "finished",
            name: "Dense, with bars and hidden ends",
            line: "Dense and clean; both ends barred, no thread end seen.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Buttonhole(Buttonhole {
                stitches_per_cm: 20.0,
                ragged: 0.0,
                keyhole: false,
                bar: true,
            }))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 3, shares 9/36/40/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Trims, slope: 0.9, thresholds: &[-3.03, -0.28, 2.34] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static DETAILS: Check = Check {
    key: "details",
    name: "Special details",
    question: "How many special details do you find?",
    how: "Count these: a yoke in two halves, gussets (small patches where side seam and tail meet), a button in the slit \
        above the cuff, shell buttons, collar stays you can take out.",
    meaning: "Details speak of what was spent, and they are cheaply copied. None of them makes a shirt last longer by \
        itself. Shell feels cold to the lip and shows a brown back; good plastic comes close.",
    levels: &[
        Level {
            key: "none",
            name: "None",
            line: "A plain one-piece yoke, plastic buttons.",
            spans: &[],
            drawn: Some(Picture::ShirtDetails(ShirtDetails { count: 0 })),
        },
        Level {
            key: "one",
            name: "1",
            line: "Often the button above the cuff.",
            spans: &[],
            drawn: Some(Picture::ShirtDetails(ShirtDetails { count: 1 })),
        },
        Level {
            key: "two",
            name: "2",
            line: "Two of the list.",
            spans: &[],
            drawn: Some(Picture::ShirtDetails(ShirtDetails { count: 2 })),
        },
        Level {
            key: "3-up",
            name: "3 or more",
            line: "Somebody meant to show it.",
            spans: &[],
            drawn: Some(Picture::ShirtDetails(ShirtDetails { count: 4 })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    speaks: Speaks::Cost("Each adds about half a minute or some cents; shell buttons add more."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
