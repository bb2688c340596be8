//! Dresses and skirts, what closes one: zip, hooks, loops, buttons.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Dress, DressZip, Hooks, Picture};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static ZIP: Check = Check {
    key: "zip",
    name: "Zip and the cloth beside it",
    question: "How does the zip run, and how does the cloth lie beside it?",
    how: "Hold the top together and run the zip up and down three times. Close it, lay it flat, and look along it: ripples, tape \
        that shows, a waist seam that misses across it.",
    meaning: "A failed zip ends the use of a piece; ripples come from cloth stretched or held back when it was sewn. Stiff running can be \
        newness. Without a zip, choose can’t tell.",
    levels: &[
        Level {
            key: "catches",
            name: "It catches, or cloth ripples",
            line: "Bites lining or cloth; waves stand beside it.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Zip(DressZip::Catches))),
        },
        Level {
            key: "rough",
            name: "Rough, or a slight ripple",
            line: "Sticks somewhere; a seam misses across it.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Zip(DressZip::Rough))),
        },
        Level {
            key: "runs-flat",
            name: "It runs, and lies flat",
            line: "No ripple, whether or not you see it.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Zip(DressZip::Flat))),
        },
        Level {
            key: "runs-hidden",
            name: "It runs hidden, and seams meet",
            line: "Only its pull shows; the waist seam meets across it.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Zip(DressZip::Hidden))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 5, shares 11/32/41/16 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Trims, slope: 1.6, thresholds: &[-2.0, -0.29, 1.62] },
        "A good zip costs half a dollar more, and setting it hidden takes minutes.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask first, and do not force a zip that sticks. Nickel can cause a rash where metal lies on skin."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE, &sources::REACH_27],
};

pub(in crate::catalog) static FASTENING: Check = Check {
    key: "fastening",
    name: "Hooks, loops and buttons",
    question: "How firmly do hooks, loops and buttons sit?",
    how: "Close and open each once. Wiggle it gently. Look behind it for a tape or a second layer that takes the pull.",
    meaning: "Small things done cheaply first: a hook on two stitches tears out and takes cloth with it. They are easily replaced, so \
        they say little of the rest. Without any, choose can’t tell.",
    levels: &[
        Level {
            key: "loose",
            name: "Loose or missing",
            line: "One hangs by a thread.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hooks(Hooks::Loose))),
        },
        Level {
            key: "flimsy",
            name: "Flimsy",
            line: "Thin wire or plastic, few stitches.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hooks(Hooks::Flimsy))),
        },
        Level {
            key: "firm",
            name: "Firm",
            line: "Many stitches; nothing wiggles.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hooks(Hooks::Firm))),
        },
        Level {
            key: "firm-stayed",
            name: "Firm, and backed",
            line: "A tape or a second layer takes the pull.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hooks(Hooks::Stayed))),
        },
    ],
    seconds: 5,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 2, shares 10/36/40/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Trims, slope: 0.6, thresholds: &[-3.96, -0.31, 3.34] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Do not pull at buttons or hooks that are not yours."),
    sources: &[&sources::JUDGEMENT],
};
