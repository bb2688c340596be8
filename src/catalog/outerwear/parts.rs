//! Outerwear, its parts: zip, buttons, lining and pocket bags, and how many things hang on it.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{BackedButton, Hardware, Outer, OuterZip, Picture, PocketBag, SewnButton};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static ZIP: Check = Check {
    key: "zip",
    name: "The main zip",
    question: "How does the main zip run, three times up and down?",
    how: "Close and open it three times, the last time with one hand and the hem hanging. Look behind it for a flap, at the \
        chin for a cover, and at its foot for a patch.",
    meaning: "A dead zip ends a jacket, and a new one is a usual repair that costs a good part of a cheap piece. A thin zip can \
        suit a light shell. A zip under a storm flap may be plain. No zip: choose can’t tell.",
    levels: &[
        Level {
            key: "catches",
            name: "It catches, or is thin",
            line: "Cloth gets between the teeth.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Zip(OuterZip::Catches))),
        },
        Level {
            key: "rough",
            name: "It runs roughly",
            line: "It stops, waves, or opens behind the slider.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Zip(OuterZip::Rough))),
        },
        Level {
            key: "guarded",
            name: "It runs, and is guarded",
            line: "A flap lies behind it.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Zip(OuterZip::Guarded))),
        },
        Level {
            key: "heavy",
            name: "Heavy, two sliders, guarded, stayed",
            line: "It opens from below too; its foot is held.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Zip(OuterZip::Heavy))),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 5, shares 9/31/43/17 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Trims, slope: 1.6, thresholds: &[-2.18, -0.41, 1.55] },
        "A heavy zip with two sliders costs several times as much as a thin one.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Keep chin, beard and lining clear of it, and do not force it."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static BUTTONS: Check = Check {
    key: "buttons",
    name: "Buttons or snaps",
    question: "How are buttons or snaps held?",
    how: "Lift a button and look at its thread, then behind the cloth for a small button or a patch. Snaps: press and open one, \
        and look for a ring or patch behind.",
    meaning: "Thick cloth needs a neck of thread below the button, or it strains and comes off; a small button behind spreads \
        the pull. Snaps on bare thin cloth tear out. One loose button is soon sewn on. Neither: choose can’t tell.",
    levels: &[
        Level {
            key: "loose",
            name: "Loose",
            line: "It tips or turns, or a thread end hangs.",
            spans: &[],
            drawn: Some(Picture::SewnButton(SewnButton::Loose)),
        },
        Level {
            key: "plain",
            name: "Plain",
            line: "Firm, nothing behind, no neck.",
            spans: &[],
            drawn: Some(Picture::SewnButton(SewnButton::Flat)),
        },
        Level {
            key: "backed",
            name: "Backed or stayed",
            line: "A small button, ring or patch behind.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Button(BackedButton { necked: false }))),
        },
        Level {
            key: "backed-necked",
            name: "Backed, on a neck, a spare",
            line: "A wrapped neck, and one more in a pocket.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Button(BackedButton { necked: true }))),
        },
    ],
    seconds: 5,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 3, shares 10/38/38/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Trims, slope: 0.9, thresholds: &[-2.89, -0.11, 2.44] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Do not pull at buttons that are not yours."),
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static HARDWARE: Check = Check {
    key: "hardware",
    name: "Zips, snaps, toggles, pockets",
    question: "How many zips, snaps, toggles and pockets are on it?",
    how: "Count all of them, inside too: each zip, each snap or button pair, each cord stop, each pocket.",
    meaning: "Each is bought and sewn on, so it costs. Many are no sign of quality: few good ones serve better, and each is one \
        more to break.",
    levels: &[
        Level {
            key: "under-6",
            name: "Under 6",
            line: "A plain piece.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Hardware(Hardware { count: 4 }))),
        },
        Level {
            key: "6-to-10",
            name: "6 to 10",
            line: "As most jackets have.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Hardware(Hardware { count: 8 }))),
        },
        Level {
            key: "11-to-16",
            name: "11 to 16",
            line: "A parka, or one for mountains.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Hardware(Hardware { count: 13 }))),
        },
        Level {
            key: "over-16",
            name: "Over 16",
            line: "Something wherever you look.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::Hardware(Hardware { count: 18 }))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    speaks: Speaks::Cost("Each costs from some cents to a dollar, and half a minute to two minutes of sewing."),
    instruments: &[],
    asked_when: None,
    caution: Some("Feel a pocket from outside before you reach in."),
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static LINING: Check = Check {
    key: "lining",
    name: "Lining and pocket bags",
    question: "How sound are lining and pocket bags?",
    how: "Hold the lining before your hand. Draw it gently across a seam at the armhole. Then slide a hand into a pocket and \
        rub the bag between two fingers.",
    meaning: "A saving that nobody sees: sheer lining wears out at armholes and pockets years before the shell. Mesh is meant in \
        rain jackets. A printed or shiny lining is no stronger. No lining: judge the pocket bags.",
    levels: &[
        Level {
            key: "thin-slips",
            name: "Thin, it slips at seams",
            line: "Your hand shows; threads part at the seam.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::PocketBag(PocketBag::Slips))),
        },
        Level {
            key: "plain",
            name: "Plain",
            line: "Your hand is a shadow; seams hold.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::PocketBag(PocketBag::Plain))),
        },
        Level {
            key: "firm",
            name: "Firm",
            line: "Close cloth in body and pockets.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::PocketBag(PocketBag::Firm))),
        },
        Level {
            key: "firm-warm",
            name: "Firm, with warm pocket bags",
            line: "Pile, brushed or quilted cloth round the hand.",
            spans: &[],
            drawn: Some(Picture::Outer(Outer::PocketBag(PocketBag::Warm))),
        },
    ],
    seconds: 8,
    stage: Stage::InsideOut,
    aspect: Aspect::Trims,
    // Power 4, shares 12/40/35/13 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Trims, slope: 1.2, thresholds: &[-2.21, 0.09, 2.12] },
        "Close lining costs about twice as much as the thinnest.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Feel a pocket from outside before you reach in, and do not strain the seam."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
