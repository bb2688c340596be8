//! Shirts, the shape: the collar, and how a pattern meets.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks, When};
use crate::grading::{Curve, Group};
use crate::specimen::{Collar, Matching, Picture, ShirtPattern};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static COLLAR: Check = Check {
    key: "collar",
    name: "The collar",
    question: "How even and how springy is the collar?",
    how: "Hold the two points together: are they equally long? Look along the collar for bubbles. Bend one point with a \
        finger, let go, and see whether it springs back.",
    meaning: "The collar is the hardest part to make. Bubbles show that the stiffening inside has come loose, and they grow \
        with washing. A soft collar can be meant: then judge points and surface. Pins and card in a new shirt hold a \
        limp collar up.",
    levels: &[
        Level {
            key: "bubbled",
            name: "Bubbled or uneven",
            line: "Blisters on its face, or points that differ at first sight.",
            spans: &[],
            drawn: Some(Picture::Collar(Collar { bubbles: 7, off_mm: 6.0, roll: 0.5 })),
        },
        Level {
            key: "limp",
            name: "Limp or slightly uneven",
            line: "No bubbles; it stays bent, or the points differ by 3 mm.",
            spans: &[],
            drawn: Some(Picture::Collar(Collar { bubbles: 0, off_mm: 3.0, roll: 0.1 })),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Smooth, points alike, comes back slowly.",
            spans: &[],
            drawn: Some(Picture::Collar(Collar { bubbles: 0, off_mm: 0.0, roll: 0.55 })),
        },
        Level {
            key: "crisp",
            name: "Even and crisp",
            line: "Smooth, points alike, springs back and rolls over by itself.",
            spans: &[],
            drawn: Some(Picture::Collar(Collar { bubbles: 0, off_mm: 0.0, roll: 1.0 })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 5, shares 10/35/42/13 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.6, thresholds: &[-2.09, -0.2, 1.83] }),
    instruments: &[],
    asked_when: None,
    caution: Some("New shirts hold pins: feel under the collar before you bend it."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static PATTERNED: Check = Check {
    key: "patterned",
    name: "Plain or patterned",
    question: "Does the cloth have stripes or checks that could meet at the seams?",
    how: "Look at the front from arm’s length. Fine lines that merge into one colour count as plain.",
    meaning: "A pattern is taste. It only matters here since stripes and checks show whether cloth was laid and cut with \
        care, which plain cloth hides. It opens the question of matching.",
    levels: &[
        Level {
            key: "plain",
            name: "Plain cloth",
            line: "One colour, a weave effect, or a print without direction.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Matching(Matching { miss_mm: 0.0, pattern: false, pieced: false }))),
        },
        Level {
            key: "patterned",
            name: "Striped or checked",
            line: "Lines far enough apart to follow across a seam.",
            spans: &[],
            drawn: Some(Picture::Matching(Matching { miss_mm: 0.0, pattern: true, pieced: false })),
        },
    ],
    seconds: 2,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    speaks: Speaks::Cost("Stripes and checks that meet take more cloth and slower cutting; plain cloth takes neither."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static MATCH: Check = Check {
    key: "match",
    name: "Matching of the pattern",
    question: "Where do stripes or checks meet across the seams?",
    how: "Button the shirt. Follow a line across the front edge, then into the pocket, then from yoke to sleeve and at \
        the slit above the cuff.",
    meaning: "Matching costs cloth and careful cutting, and is hard to fake: lines meet or they do not. The front is matched \
        first, since everyone sees it. Some seams cannot match by geometry, such as the shoulder; do not count those.",
    levels: &[
        Level {
            key: "nowhere",
            name: "Nowhere",
            line: "Lines jump at the front and at the pocket.",
            spans: &[],
            drawn: Some(Picture::ShirtPattern(ShirtPattern { front_off_mm: 7.0, pocket_off_mm: 6.0, yoke_off_mm: 7.0 })),
        },
        Level {
            key: "roughly",
            name: "At the front only, roughly",
            line: "Nearly meet at the buttons; pocket and yoke are left to chance.",
            spans: &[],
            drawn: Some(Picture::ShirtPattern(ShirtPattern { front_off_mm: 1.5, pocket_off_mm: 6.0, yoke_off_mm: 7.0 })),
        },
        Level {
            key: "front-pocket",
            name: "At front and pocket, exactly",
            line: "The pocket seems to vanish; yoke and sleeves do not match.",
            spans: &[],
            drawn: Some(Picture::ShirtPattern(ShirtPattern { front_off_mm: 0.0, pocket_off_mm: 0.0, yoke_off_mm: 7.0 })),
        },
        Level {
            key: "everywhere",
            name: "Wherever it shows",
            line: "Front, pocket, yoke and sleeve slits meet.",
            spans: &[],
            drawn: Some(Picture::ShirtPattern(ShirtPattern { front_off_mm: 0.0, pocket_off_mm: 0.0, yoke_off_mm: 0.0 })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 4, shares 18/37/32/13 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Shape, slope: 1.2, thresholds: &[-1.72, 0.24, 2.12] },
        "Lines that meet take more cloth and slower cutting.",
    ),
    instruments: &[],
    asked_when: Some(When { check: &PATTERNED, levels: &["patterned"], share: 45 }),
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
