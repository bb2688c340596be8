//! Jeans, the shape: pairs, twist, and how they sit.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{BackPockets, Bagging, LegTwist, Picture, Symmetry};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static HANG: Check = Check {
    key: "hang",
    name: "Legs on the hanger",
    question: "How alike do the two legs hang?",
    how: "Let the pair hang straight from the hanger, or from both hands at the waistband. Compare the hems. See whether one \
        leg swings forward or turns, and whether knees sit at one height.",
    meaning: "Unequal legs come from careless cutting or sewing, or from a bad fold. Shake the pair out and hang it again \
        before you judge. Twist has a measure of its own; here you compare left with right.",
    levels: &[
        Level {
            key: "unequal",
            name: "Plainly unequal",
            line: "Hems more than 10 mm (⅜ in) apart, or one leg swings.",
            spans: &[],
            drawn: Some(Picture::Symmetry(Symmetry { length_off_mm: 14.0, width_off_mm: 0.0 })),
        },
        Level {
            key: "slightly",
            name: "Slightly unequal",
            line: "Hems 5 to 10 mm apart (3⁄16 to ⅜ in).",
            spans: &[],
            drawn: Some(Picture::Symmetry(Symmetry { length_off_mm: 7.0, width_off_mm: 0.0 })),
        },
        Level {
            key: "equal",
            name: "Equal",
            line: "Hems within 5 mm (3⁄16 in); both hang the same way.",
            spans: &[],
            drawn: Some(Picture::Symmetry(Symmetry { length_off_mm: 0.0, width_off_mm: 0.0 })),
        },
    ],
    seconds: 6,
    stage: Stage::OnTheHanger,
    aspect: Aspect::Shape,
    // Power 3, shares 8/34/58 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 0.9, thresholds: &[-3.17, -0.46] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static LEG_TWIST: Check = Check {
    key: "leg-twist",
    name: "Leg twist",
    question: "How far has the outer seam moved from the fold at the hem?",
    how: "Hang the jeans by the waistband, then lay them flat just as they fall. At the hem, measure from the outer seam to \
        the side fold. Take the worse leg.",
    meaning: "The slant of the weave can turn a leg. It cannot be cured and grows with washing; mills prevent it before \
        cutting. Some cuts bend the seam forward on purpose, alike on both legs: skip this there.",
    levels: &[
        Level {
            key: "over-25",
            name: "Over 25 mm",
            line: "More than 1 in: the seam walks on to the front.",
            spans: &[Span { low: 25.0, high: f64::INFINITY }],
            drawn: Some(Picture::LegTwist(LegTwist { twist_mm: 32.0 })),
        },
        Level {
            key: "15-to-25",
            name: "15 to 25 mm",
            line: "About ⅝ to 1 in: plain when worn.",
            spans: &[Span { low: 15.0, high: 25.0 }],
            drawn: Some(Picture::LegTwist(LegTwist { twist_mm: 20.0 })),
        },
        Level {
            key: "8-to-15",
            name: "8 to 15 mm",
            line: "About 5⁄16 to ⅝ in: you must look for it.",
            spans: &[Span { low: 8.0, high: 15.0 }],
            drawn: Some(Picture::LegTwist(LegTwist { twist_mm: 11.0 })),
        },
        Level {
            key: "under-8",
            name: "Under 8 mm",
            line: "Less than 5⁄16 in: the seam runs true.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 8.0 }],
            drawn: Some(Picture::LegTwist(LegTwist { twist_mm: 3.0 })),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 4, shares 10/22/38/30 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.2, thresholds: &[-2.41, -0.88, 0.99] }),
    instruments: &[&measure::LEG_TWIST],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::TM207, &sources::TWIST_LIMIT, &sources::ISO_16322],
};

pub(in crate::catalog) static PAIR_MATCH: Check = Check {
    key: "pair-match",
    name: "Left against right, at the back",
    question: "How well do the two sides of the back match?",
    how: "Lay the back upwards. Compare both back pockets: height, tilt, distance from the middle seam. See whether the two \
        ends of the yoke, the strip below the waistband, meet across that seam.",
    meaning: "This is where every eye goes, so it shows the care of cutting and sewing. It says nothing about strength. \
        Pockets set at a slant on purpose are fine when both slant alike.",
    levels: &[
        Level {
            key: "off",
            name: "Plainly off",
            line: "More than 6 mm (¼ in) on any of them.",
            spans: &[],
            drawn: Some(Picture::BackPockets(BackPockets { level_off_mm: 9.0, centre_off_mm: 7.0, yoke_off_mm: 8.0 })),
        },
        Level {
            key: "3-to-6",
            name: "Off by 3 to 6 mm",
            line: "You see it when you look (⅛ to ¼ in).",
            spans: &[],
            drawn: Some(Picture::BackPockets(BackPockets { level_off_mm: 4.5, centre_off_mm: 3.0, yoke_off_mm: 4.5 })),
        },
        Level {
            key: "within-3",
            name: "Within 3 mm",
            line: "You must measure to find it (⅛ in).",
            spans: &[],
            drawn: Some(Picture::BackPockets(BackPockets { level_off_mm: 2.0, centre_off_mm: 1.0, yoke_off_mm: 2.0 })),
        },
        Level {
            key: "exact",
            name: "Exact",
            line: "No difference to find; yoke ends meet on one point.",
            spans: &[],
            drawn: Some(Picture::BackPockets(BackPockets { level_off_mm: 0.0, centre_off_mm: 0.0, yoke_off_mm: 0.0 })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 4, shares 10/33/42/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.2, thresholds: &[-2.41, -0.33, 1.95] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static SIT_TEST: Check = Check {
    key: "sit-test",
    name: "Sit and squat",
    question: "How do they look after you sat and squatted?",
    how: "Try them on. Sit one minute, squat once, stand, and look from the side. See whether the band drops at the back and \
        whether cloth stays out at knees and seat.",
    meaning: "This joins cut and recovery of cloth, on your body: another body may get another answer. Rigid cloth creases and \
        eases with wear, which is not bagging. The wrong size fails too, so try the size beside it.",
    levels: &[
        Level {
            key: "bags",
            name: "They gape or bag at once",
            line: "Band gapes or drops, knees stay out.",
            spans: &[],
            drawn: Some(Picture::Bagging(Bagging { bag_mm: 32.0, gape_mm: 40.0 })),
        },
        Level {
            key: "some",
            name: "They bag somewhat",
            line: "Seat or knees stay out; you would notice in a mirror.",
            spans: &[],
            drawn: Some(Picture::Bagging(Bagging { bag_mm: 18.0, gape_mm: 18.0 })),
        },
        Level {
            key: "slight",
            name: "They bag, then recover",
            line: "Back in shape after a minute of walking.",
            spans: &[],
            drawn: Some(Picture::Bagging(Bagging { bag_mm: 7.0, gape_mm: 5.0 })),
        },
        Level {
            key: "stays",
            name: "As before",
            line: "Waistband in place, knees and seat smooth.",
            spans: &[],
            drawn: Some(Picture::Bagging(Bagging { bag_mm: 0.0, gape_mm: 0.0 })),
        },
    ],
    seconds: 60,
    stage: Stage::Worn,
    aspect: Aspect::Shape,
    // Power 3, shares 12/35/38/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 0.9, thresholds: &[-2.65, -0.17, 2.34] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Feel waistband and hems for pins before you step in. Raw indigo marks pale seats: ask before you sit."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
