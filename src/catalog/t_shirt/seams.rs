//! T-shirts, the seams: inside, hem, shoulder, neck, body.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{BodyTwist, Cover, HemState, KnitHem, KnitSeam, Picture, Taped};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static HEM: Check = Check {
    key: "hem",
    name: "The hem under a stretch",
    question: "How does the hem take a stretch?",
    how: "Hold the bottom hem a hand apart and stretch it a little, once. Listen for cracking thread. Look whether cloth \
        stands up between the two rows, and whether it lies flat again.",
    meaning: "A hem that cracks new will open in the wash. A ridge between the rows, called a tunnel, comes from tight \
        thread. Stretch it gently: any hem cracks when it is torn at.",
    levels: &[
        Level {
            key: "cracks",
            name: "It cracks",
            line: "A thread breaks or has broken.",
            spans: &[],
            drawn: Some(Picture::KnitHem(KnitHem { state: HemState::Cracks, tails: 0 })),
        },
        Level {
            key: "tunnels",
            name: "It tunnels",
            line: "Cloth stands up between the rows.",
            spans: &[],
            drawn: Some(Picture::KnitHem(KnitHem { state: HemState::Tunnels, tails: 0 })),
        },
        Level {
            key: "sound",
            name: "It holds",
            line: "Thread goes along; the edge ripples a little.",
            spans: &[],
            drawn: Some(Picture::KnitHem(KnitHem { state: HemState::Holds, tails: 0 })),
        },
        Level {
            key: "flat",
            name: "It holds, even and flat",
            line: "Goes along and lies flat again.",
            spans: &[],
            drawn: Some(Picture::KnitHem(KnitHem { state: HemState::Flat, tails: 0 })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 9/31/43/17 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Seams, slope: 0.9, thresholds: &[-3.03, -0.57, 2.15] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you stretch goods that are not yours."),
    sources: &[&sources::JUDGEMENT, &sources::ISO_4915],
};

pub(in crate::catalog) static SEAM_TYPE: Check = Check {
    key: "seam-type",
    name: "Seams inside",
    question: "How are the seams inside sewn?",
    how: "Turn it inside out. Look at side and sleeve seam: how many threads wrap the edge? Pull the two layers apart a \
        little and look for a ladder.",
    meaning: "A seam of knitted cloth must stretch with it. Four threads hold better than three; flat or narrow seams rub \
        less. A ladder shows slack thread; it is weak whatever the count.",
    levels: &[
        Level {
            key: "ladder",
            name: "Three threads that ladder",
            line: "The seam grins open when pulled.",
            spans: &[],
            drawn: Some(Picture::KnitSeam(KnitSeam::Ladder)),
        },
        Level {
            key: "three",
            name: "Three threads, sound",
            line: "One line of stitches, then the wrap; closed.",
            spans: &[],
            drawn: Some(Picture::KnitSeam(KnitSeam::Three)),
        },
        Level {
            key: "four",
            name: "Four threads",
            line: "Two lines of stitches within the wrap.",
            spans: &[],
            drawn: Some(Picture::KnitSeam(KnitSeam::Four)),
        },
        Level {
            key: "flat",
            name: "Four threads or flat, neat",
            line: "Narrow and even everywhere.",
            spans: &[],
            drawn: Some(Picture::KnitSeam(KnitSeam::Flat)),
        },
    ],
    seconds: 6,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 4, shares 14/34/38/14 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.2, thresholds: &[-2.03, -0.09, 2.03] },
        "A fourth thread costs little; flat seams take other machines.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you turn out goods that are not yours."),
    sources: &[&sources::JUDGEMENT, &sources::ISO_4915],
};

pub(in crate::catalog) static SHOULDER: Check = Check {
    key: "shoulder",
    name: "Shoulder seams",
    question: "What holds the shoulder seams in length?",
    how: "Inside out, look along the seam from neck to sleeve. Look and feel for a tape, a clear elastic strip or a \
        second row.",
    meaning: "The whole shirt hangs from these two seams, and a knitted seam grows. Tape stops that. A thin cloth shirt made \
        to cling may leave it out to stay soft.",
    levels: &[
        Level {
            key: "nothing",
            name: "Nothing",
            line: "A wrapped edge only.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Overlock, neck: false })),
        },
        Level {
            key: "elastic",
            name: "Clear elastic, or one row",
            line: "A strip you can see through, or a row from outside.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Elastic, neck: false })),
        },
        Level {
            key: "tape",
            name: "Tape",
            line: "A tape is sewn over or into the seam.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Tape, neck: false })),
        },
        Level {
            key: "tape-twice",
            name: "Tape, sewn along both edges",
            line: "Flat, two rows, from neck to sleeve.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::TapeTwice, neck: false })),
        },
    ],
    seconds: 4,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 3, shares 25/35/30/10 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Strength, slope: 0.9, thresholds: &[-1.52, 0.57, 2.89] },
        "Tape and a second row add some cents and a quarter of a minute.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static NECK_TAPE: Check = Check {
    key: "neck-tape",
    name: "Back of the neck inside",
    question: "What covers the seam at the back of the neck?",
    how: "Inside out, look at the seam where the rib joins the back, from shoulder to shoulder.",
    meaning: "A cover keeps the seam off the skin and helps the neck hold. It is cheap, so it says little alone. Printed \
        labels in its place are comfort, not strength.",
    levels: &[
        Level {
            key: "raw",
            name: "Nothing, a raw edge",
            line: "Cut edge and thread against the skin.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Raw, neck: true })),
        },
        Level {
            key: "overlock",
            name: "An overlock row only",
            line: "A wrapped edge.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Overlock, neck: true })),
        },
        Level {
            key: "tape",
            name: "Tape",
            line: "A tape covers it, not quite even.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::Tape, neck: true })),
        },
        Level {
            key: "tape-even",
            name: "Tape, flat and even",
            line: "Even all the way, sewn along both edges.",
            spans: &[],
            drawn: Some(Picture::Taped(Taped { cover: Cover::TapeTwice, neck: true })),
        },
    ],
    seconds: 4,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 2, shares 12/40/36/12 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Strength, slope: 0.6, thresholds: &[-3.63, 0.16, 3.63] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static BODY: Check = Check {
    key: "body",
    name: "Side seams or a tube",
    question: "Does the body have side seams, or is it a tube?",
    how: "Inside out, look below both armholes for a seam.",
    meaning: "A body knitted as a tube saves two seams; one with seams can be shaped. Neither is better. A tube that was \
        twisted in finishing shows it in its columns of stitches.",
    levels: &[
        Level {
            key: "tube",
            name: "A tube",
            line: "No seam below the armholes.",
            spans: &[],
            drawn: Some(Picture::BodyTwist(BodyTwist { percent: 0.0, seam: false })),
        },
        Level {
            key: "seams",
            name: "Side seams",
            line: "One on each side.",
            spans: &[],
            drawn: Some(Picture::BodyTwist(BodyTwist { percent: 0.0, seam: true })),
        },
    ],
    seconds: 4,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    speaks: Speaks::Cost("Side seams add two seams and some waste of cloth."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};
