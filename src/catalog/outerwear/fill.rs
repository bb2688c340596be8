//! Outerwear, the filling: whether there is any, how even it is, whether it stays in.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks, When};
use crate::grading::{Curve, Group};
use crate::specimen::{FillLeak, FillPanels, Outer, OuterCut, OuterFlat, Picture};
use crate::trade::{Aspect, Stage};

/// Half of all pieces are filled: judgement.
const WHEN_FILLED: Option<When> = Some(When { check: &FILLED, levels: &["fibre", "down"], share: 55 });

pub(in crate::catalog) static FILLED: Check = Check {
    key: "filling",
    name: "Filled or not",
    question: "Is it filled, and with what?",
    how: "Pinch the body between two fingers and move the layers on each other. Read the label for the filling: wadding of \
        fibre, or down and feathers.",
    meaning: "A choice of use that says nothing about quality: down is lighter for its warmth, fibre stays warm when damp. \
        It is asked here since it opens two questions. A thin warm lining alone is no filling.",
    levels: &[
        Level {
            key: "unfilled",
            name: "Not filled",
            line: "Cloth and lining only.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Coat, point: None }))),
        },
        Level {
            key: "fibre",
            name: "Filled with fibre",
            line: "Flat even wadding, most often polyester.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Padded, point: None }))),
        },
        Level {
            key: "down",
            name: "Filled with down or feathers",
            line: "Plump chambers; a quill now and then to feel.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Down, point: None }))),
        },
    ],
    seconds: 4,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    speaks: Speaks::Cost("Wadding costs a dollar or two for a piece, down five to ten times as much."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static FILL_EVEN: Check = Check {
    key: "fill-even",
    name: "How even the filling is",
    question: "How even is the filling from chamber to chamber?",
    how: "Shake it once. Squeeze chamber by chamber, shoulders and underarms too, then hold it up to the light and look for \
        bright places.",
    meaning: "Filling is dear, and short weight hides in underarms and lower back. An empty place is a cold place. New down is \
        pressed flat from the parcel: shake it, give it a minute, then judge.",
    levels: &[
        Level {
            key: "empty",
            name: "Empty places",
            line: "Cloth on cloth; light shines through.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Fill(FillPanels::Empty))),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "Lumps and thin places.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Fill(FillPanels::Uneven))),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Alike, a little thin at seams.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Fill(FillPanels::Even))),
        },
        Level {
            key: "even-corners",
            name: "Even up to the corners",
            line: "Plump at seams, collar and underarm too.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Fill(FillPanels::Full))),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 9/33/42/16 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.52, -0.38, 1.87] },
        "A full filling can weigh twice as much as a short one.",
    ),
    instruments: &[],
    asked_when: WHEN_FILLED,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static FILL_LEAK: Check = Check {
    key: "fill-leak",
    name: "Whether the filling stays in",
    question: "What comes out of seam and panel when you rub them?",
    how: "Rub a quilted seam between two fingers ten times, then a panel. Look along both against something dark. Pull at \
        nothing that sticks out.",
    meaning: "Loose cloth or a coarse needle lets the filling out, and it never stops. One small feather at a new seam can be \
        chance. Fluff on the outside may come from another coat: brush it off first.",
    levels: &[
        Level {
            key: "comes-out",
            name: "Fibres or feathers come out",
            line: "Many, at seams and through the cloth.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Leak(FillLeak { wisps: 9, close: false }))),
        },
        Level {
            key: "a-few",
            name: "A few",
            line: "At the seams only.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Leak(FillLeak { wisps: 3, close: false }))),
        },
        Level {
            key: "none",
            name: "None",
            line: "Nothing comes out.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Leak(FillLeak { wisps: 0, close: false }))),
        },
        Level {
            key: "none-close",
            name: "None, and the cloth is close",
            line: "So fine that you see no thread; needle holes tiny.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Leak(FillLeak { wisps: 0, close: true }))),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Cloth,
    // Power 4, shares 10/28/44/18 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Cloth, slope: 1.2, thresholds: &[-2.41, -0.57, 1.72] }),
    instruments: &[],
    asked_when: WHEN_FILLED,
    caution: Some("Ask before you rub goods that are not yours. Dust of down can irritate nose and eyes."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
