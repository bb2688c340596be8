//! T-shirts, the shape: neck and twist.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{BodyTwist, NeckRib, Picture};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static NECK_RIB: Check = Check {
    key: "neck-rib",
    name: "The neck",
    question: "How does the neck come back after a stretch?",
    how: "Put both hands in the neck and stretch it to about the size of your head, once. Let go and lay it flat. Look \
        whether it waves, and whether its ribs stand evenly all round.",
    meaning: "The neck is the first thing to fail. Ribs with some elastane spring back; thin ribs cut too long stay wavy. A \
        steamed neck looks flat in the shop, so stretch it once. A wide neck can be meant: judge its return.",
    levels: &[
        Level {
            key: "wavy",
            name: "It stays wavy",
            line: "Waves remain, or it is plainly wider.",
            spans: &[],
            drawn: Some(Picture::NeckRib(NeckRib { wave_mm: 5.0, wider_mm: 20.0, even: false })),
        },
        Level {
            key: "slow",
            name: "Slowly, with a slight wave",
            line: "It creeps back and waves a little.",
            spans: &[],
            drawn: Some(Picture::NeckRib(NeckRib { wave_mm: 1.6, wider_mm: 8.0, even: false })),
        },
        Level {
            key: "returns",
            name: "It returns",
            line: "Back at once, flat; ribs uneven somewhere.",
            spans: &[],
            drawn: Some(Picture::NeckRib(NeckRib { wave_mm: 0.0, wider_mm: 0.0, even: false })),
        },
        Level {
            key: "even",
            name: "It returns, flat and even",
            line: "Back at once, and the same all round.",
            spans: &[],
            drawn: Some(Picture::NeckRib(NeckRib { wave_mm: 0.0, wider_mm: 0.0, even: true })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 5, shares 12/33/40/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.6, thresholds: &[-1.91, -0.2, 1.69] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you stretch goods that are not yours. Once is enough."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static TWIST: Check = Check {
    key: "twist",
    name: "Twist of the body",
    question: "How far has the side seam walked from the fold at the hem?",
    how: "Hang it by the shoulders, then lay it flat on its own folds. At the hem, measure from the side seam to the \
        fold, and divide by the length of the seam. Without a seam, follow one wale, a column of stitches.",
    meaning: "Lively yarn turns the cloth; it cannot be cured and grows with the first washes. Over 5 in 100 counts as a \
        defect in common practice. A pressed shirt can be pulled straight: hang it first.",
    levels: &[
        Level {
            key: "over-7",
            name: "Over 7 in 100",
            line: "The seam lies on the front at the hem.",
            spans: &[Span { low: 7.0, high: f64::INFINITY }],
            drawn: Some(Picture::BodyTwist(BodyTwist { percent: 9.0, seam: true })),
        },
        Level {
            key: "5-to-7",
            name: "5 to 7 in 100",
            line: "You see it on the hanger.",
            spans: &[Span { low: 5.0, high: 7.0 }],
            drawn: Some(Picture::BodyTwist(BodyTwist { percent: 6.0, seam: true })),
        },
        Level {
            key: "2-to-5",
            name: "2 to 5 in 100",
            line: "You have to look for it.",
            spans: &[Span { low: 2.0, high: 5.0 }],
            drawn: Some(Picture::BodyTwist(BodyTwist { percent: 3.5, seam: true })),
        },
        Level {
            key: "under-2",
            name: "Under 2 in 100",
            line: "The seam runs down the fold.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.0 }],
            drawn: Some(Picture::BodyTwist(BodyTwist { percent: 0.8, seam: true })),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 5, shares 14/20/38/28 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.6, thresholds: &[-1.76, -0.67, 0.95] }),
    instruments: &[&measure::SEAM_TWIST],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::TM207, &sources::ISO_16322],
};
