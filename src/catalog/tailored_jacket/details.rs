//! The tailored jacket, its small things: pockets, visible stitching, buttonholes, buttons, cuffs.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Buttonhole, CuffVent, JetPocket, Picture, PurledHole, SewnButton, Topstitch};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static POCKETS: Check = Check {
    key: "pockets",
    name: "Pocket lips and flaps",
    question: "How true are the corners and lips of the pockets?",
    how: "Lift each flap. The two narrow strips (jets) above and below the opening should be of one width from end to end, and the \
        corners square. Look for loose yarns at the corners. Compare left with right.",
    meaning: "A cut pocket cannot be corrected: the cloth is slit to the corner, and a slip gapes or frays for good. Pockets still \
        basted shut are normal on new goods. Flap or no flap is style, and a stiff flap is no better made.",
    levels: &[
        Level {
            key: "gaping",
            name: "Corners gape or fray",
            line: "An end stands open, or yarns come out.",
            spans: &[],
            drawn: Some(Picture::JetPocket(JetPocket::Gaping)),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "Lips change width, or the flap hangs askew.",
            spans: &[],
            drawn: Some(Picture::JetPocket(JetPocket::Uneven)),
        },
        Level {
            key: "true",
            name: "True",
            line: "Even lips and square corners on both sides.",
            spans: &[],
            drawn: Some(Picture::JetPocket(JetPocket::True)),
        },
        Level {
            key: "fine",
            name: "True and fine, flaps flat",
            line: "Thin even lips; the flap lies close to the body.",
            spans: &[],
            drawn: Some(Picture::JetPocket(JetPocket::Fine)),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 4, shares 7/34/43/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 1.2, thresholds: &[-3.01, -0.46, 2.03] }),
    instruments: &[],
    asked_when: None,
    caution: Some(
        "Feel from outside before you put fingers into a pocket: pins are left there. Do not cut basting that is not yours.",
    ),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static STITCH_EVEN: Check = Check {
    key: "stitch-even",
    name: "Evenness of visible stitches",
    question: "How even is the stitching that you can see?",
    how: "Look along lapel edge, pocket flaps and the back vent. Follow one row from end to end. Many jackets show no stitching at \
        all outside: then look at the seams of the facing.",
    meaning: "Even stitches show care. Small dots along an edge (pick stitching) may be sewn by hand, about 4 to 8 an inch; when \
        they are perfectly even a machine made them, and that is no fault. No stitching in view is the neatest of all.",
    levels: &[
        Level {
            key: "skips",
            name: "With skips",
            line: "A stitch is missing, or thread stands off.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch {
                stitches_per_inch: 9.0,
                rows: 1,
                unevenness: 0.15,
                skips: 3,
                ..Topstitch::CLEAN
            })),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "No skips, but lengths differ plainly.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { stitches_per_inch: 9.0, rows: 1, unevenness: 0.5, ..Topstitch::CLEAN })),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Of one length from end to end.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { stitches_per_inch: 9.0, rows: 1, ..Topstitch::CLEAN })),
        },
        Level {
            key: "fine",
            name: "Fine and even, or none seen",
            line: "Small, alike and straight; or hidden everywhere.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { stitches_per_inch: 13.0, rows: 1, ..Topstitch::CLEAN })),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 6/33/46/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.72, -0.67, 2.48] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static BUTTONHOLES: Check = Check {
    key: "buttonholes",
    name: "Buttonholes of the front",
    question: "How are the buttonholes sewn?",
    how: "Open the front and look at the lowest buttonhole from both sides. See how close the stitches lie, whether yarns hang in \
        the cut, and whether the edge is raised like a fine cord.",
    meaning: "Buttonholes cost minutes, and a dense one does not fray. By hand, every stitch ends in a knot and the edge stands up; \
        a machine can imitate it with thick thread. One fine hole on the lapel proves little: look at the working ones.",
    levels: &[
        Level {
            key: "ragged",
            name: "Raggedly",
            line: "Stitches miss, and yarns hang in the cut.",
            spans: &[],
            drawn: Some(Picture::Buttonhole(Buttonhole { stitches_per_cm: 8.0, ragged: 0.9, keyhole: true, bar: false })),
        },
        Level {
            key: "thin",
            name: "Thinly",
            line: "Held, but you see cloth between the stitches.",
            spans: &[],
            drawn: Some(Picture::Buttonhole(Buttonhole { stitches_per_cm: 8.0, ragged: 0.2, keyhole: true, bar: false })),
        },
        Level {
            key: "dense",
            name: "Densely and cleanly",
            line: "No cloth between stitches, no loose yarn.",
            spans: &[],
            drawn: Some(Picture::Buttonhole(Buttonhole { stitches_per_cm: 18.0, ragged: 0.0, keyhole: true, bar: true })),
        },
        Level {
            key: "purled",
            name: "By hand, or with a raised edge",
            line: "Knots side by side form a firm cord.",
            spans: &[],
            drawn: Some(Picture::PurledHole(PurledHole)),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 3, shares 9/40/39/12 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Trims, slope: 0.9, thresholds: &[-3.03, -0.06, 2.65] },
        "A machine sews one in half a minute; by hand it takes ten or more.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static BUTTONS: Check = Check {
    key: "buttons",
    name: "Buttons and their necks",
    question: "How are the buttons sewn on, and what are they?",
    how: "Take the lowest front button between two fingers and tilt it gently. Look from the side for a neck of wrapped thread \
        between button and cloth. Look at its back for grain, and inside for a spare one.",
    meaning: "A neck leaves room for the cloth that buttons over it and keeps threads from rubbing through. Horn and nut show grain \
        on the back; good imitations do too. A button can be sewn on again in minutes, so this sign is weak.",
    levels: &[
        Level {
            key: "loose",
            name: "Loosely",
            line: "It tips or hangs; threads are slack.",
            spans: &[],
            drawn: Some(Picture::SewnButton(SewnButton::Loose)),
        },
        Level {
            key: "flat",
            name: "Firm, plain, flat on the cloth",
            line: "No neck; one colour of plastic.",
            spans: &[],
            drawn: Some(Picture::SewnButton(SewnButton::Flat)),
        },
        Level {
            key: "necked",
            name: "Firm, on a neck",
            line: "Thread is wrapped between button and cloth.",
            spans: &[],
            drawn: Some(Picture::SewnButton(SewnButton::Necked)),
        },
        Level {
            key: "natural",
            name: "On a neck, grained, with a spare",
            line: "Grain on the back, and one more inside.",
            spans: &[],
            drawn: Some(Picture::SewnButton(SewnButton::NeckedSpare)),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 2, shares 10/42/36/12 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Trims, slope: 0.6, thresholds: &[-3.96, 0.16, 3.63] },
        "A set of horn or nut costs some five times as much as plain plastic.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Tilt, do not pull. Loose buttons can be swallowed: keep them from small children."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static CUFF: Check = Check {
    key: "cuff",
    name: "Buttons of the cuff",
    question: "Can the buttons of the sleeve be opened?",
    how: "Try the last button at the end of one sleeve. Look whether its hole is cut through, or whether the button is sewn on \
        through both layers.",
    meaning: "Open cuffs cost minutes and were once a sign of a tailor; makers of plain jackets copy them now, so they say nothing \
        about quality. They make a sleeve harder to shorten from the end.",
    levels: &[
        Level {
            key: "sewn-shut",
            name: "No, sewn shut",
            line: "The buttons are for show.",
            spans: &[],
            drawn: Some(Picture::CuffVent(CuffVent { opens: false })),
        },
        Level {
            key: "open",
            name: "Yes, they open",
            line: "Holes are cut, and the cuff turns back.",
            spans: &[],
            drawn: Some(Picture::CuffVent(CuffVent { opens: true })),
        },
    ],
    seconds: 4,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    speaks: Speaks::Cost("Cut and sewn holes in both sleeves take some minutes more than buttons for show."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
