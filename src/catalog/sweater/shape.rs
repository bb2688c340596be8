//! Sweaters, the shape: ribs, neck, how it hangs, and the band of a cardigan.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks, When};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{CardiganBand, HungSweater, Picture, RibCuff, Sweater, SweaterNeck, TopCut, TopFlat};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static RIB_RETURN: Check = Check {
    key: "rib-return",
    name: "Ribs after a stretch",
    question: "How do cuff and hem come back after three stretches?",
    how: "Lay a cuff flat. Stretch it to one and a half times its width, three times. Wait ten seconds and see how wide it \
        lies. Do the same with the hem.",
    meaning: "Cuffs and hem go first. Close ribs of lively yarn snap back; loose ones, and some cotton, stay out and ask for \
        elastic in the yarn. Steam narrows a rib for the shop only. A hem without rib is a choice: try the cuff.",
    // Shares of width that it stays wider: judgement.
    levels: &[
        Level {
            key: "stays-wide",
            name: "It stays wide",
            line: "A tenth wider or more, perhaps wavy.",
            spans: &[Span { low: 10.0, high: f64::INFINITY }],
            drawn: Some(Picture::Sweater(Sweater::RibCuff(RibCuff { wider_percent: 22.0 }))),
        },
        Level {
            key: "slow",
            name: "It creeps back",
            line: "Wider at first, nearly back after ten seconds.",
            spans: &[Span { low: 5.0, high: 10.0 }],
            drawn: Some(Picture::Sweater(Sweater::RibCuff(RibCuff { wider_percent: 8.0 }))),
        },
        Level {
            key: "returns",
            name: "It returns",
            line: "A trace wider, flat.",
            spans: &[Span { low: 2.0, high: 5.0 }],
            drawn: Some(Picture::Sweater(Sweater::RibCuff(RibCuff { wider_percent: 3.5 }))),
        },
        Level {
            key: "snaps-back",
            name: "It snaps back",
            line: "As narrow as before, at once.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.0 }],
            drawn: Some(Picture::Sweater(Sweater::RibCuff(RibCuff { wider_percent: 0.0 }))),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 5, shares 12/32/40/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 1.6, thresholds: &[-1.91, -0.25, 1.62] }),
    instruments: &[&measure::RIB_RETURN],
    asked_when: None,
    caution: Some("Ask before you stretch goods that are not yours."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE, &sources::D3107],
};

pub(in crate::catalog) static NECK: Check = Check {
    key: "neck",
    name: "Neck and its inside",
    question: "Does the neck pass a head, come back, and look finished inside?",
    how: "Stretch the neck with both hands to about the size of your head, once, and let go. Then look at the seam inside \
        the back of it.",
    meaning: "No edge is handled more. It must open for the head and close again. A band doubled over the seam, or linked loop \
        by loop, lies soft against the skin. A wide neck can be meant: judge how it returns.",
    levels: &[
        Level {
            key: "tight-or-wide",
            name: "Too tight, or it stays wide",
            line: "A head would not pass, or waves remain.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Neck(SweaterNeck::StaysWide))),
        },
        Level {
            key: "raw",
            name: "It returns, raw inside",
            line: "A cut edge or open loops show.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Neck(SweaterNeck::Raw))),
        },
        Level {
            key: "tidy",
            name: "It returns, tidy inside",
            line: "The edge is wrapped or covered.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Neck(SweaterNeck::Tidy))),
        },
        Level {
            key: "doubled",
            name: "It returns, doubled or linked",
            line: "Band folded over the seam, or joined loop by loop.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Neck(SweaterNeck::Doubled))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 3, shares 10/36/38/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 0.9, thresholds: &[-2.89, -0.23, 2.24] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you stretch goods that are not yours. Once is enough."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static SEAM_LINE: Check = Check {
    key: "seam-line",
    name: "How it hangs",
    question: "Do side seams hang straight, and are both sleeves alike?",
    how: "Hold it up by the shoulders, or lay it on a table without smoothing. Follow the side seams to the hem. Lay one \
        sleeve on the other.",
    meaning: "Unbalanced yarn turns the whole body, and careless making-up leaves sleeves of two lengths. Nothing cures a turn. A \
        sweater from a pile may only be creased: shake it first.",
    levels: &[
        Level {
            key: "twisted",
            name: "Twisted, or sleeves differ",
            line: "You see it from across the room.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Hung(HungSweater::Twisted))),
        },
        Level {
            key: "slightly",
            name: "Slightly off",
            line: "You see it once you look.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Hung(HungSweater::Slightly))),
        },
        Level {
            key: "straight",
            name: "Straight, sleeves alike",
            line: "Seams run down the sides.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Hung(HungSweater::Straight))),
        },
        Level {
            key: "straight-meets",
            name: "Straight, and patterns meet",
            line: "Stripes or ribs meet at sides, or columns where plain.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Hung(HungSweater::Meets))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Shape,
    // Power 3, shares 8/30/44/18 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Shape, slope: 0.9, thresholds: &[-3.17, -0.69, 2.07] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static CARDIGAN: Check = Check {
    key: "cardigan",
    name: "Pullover or cardigan",
    question: "Is it pulled over the head, or does it button?",
    how: "Look at the front. A short slit at the neck with two or three buttons counts as buttoned.",
    meaning: "A choice of style that says nothing about quality. It is asked here since a band with buttons can be badly made, and \
        it opens the question of how.",
    levels: &[
        Level {
            key: "pullover",
            name: "Pulled over the head",
            line: "No opening, or one without buttons.",
            spans: &[],
            drawn: Some(Picture::TopFlat(TopFlat { cut: TopCut::Sweater, point: None })),
        },
        Level {
            key: "cardigan",
            name: "It buttons",
            line: "A band with buttons and holes.",
            spans: &[],
            drawn: Some(Picture::TopFlat(TopFlat { cut: TopCut::Cardigan, point: None })),
        },
    ],
    seconds: 2,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    speaks: Speaks::Cost("Bands, holes and buttons add some minutes and some cents."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static BAND: Check = Check {
    key: "band",
    name: "The button band",
    question: "How well is the button band held, and are its holes firm?",
    how: "Button it and lay it flat. Look for gaps between the buttons, turn the band over for a tape or a second layer, and \
        try a hole with a finger.",
    meaning: "A knitted band grows where it is pulled, so firm cloth or a second layer should lie behind it. A soft band can be \
        meant on a loose cardigan; gaping holes never are.",
    levels: &[
        Level {
            key: "gapes",
            name: "It gapes",
            line: "The edge sags between buttons, or holes are slack.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Band(CardiganBand::Gapes))),
        },
        Level {
            key: "unbacked",
            name: "Flat, nothing behind it",
            line: "One layer of knitting.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Band(CardiganBand::Unbacked))),
        },
        Level {
            key: "backed",
            name: "Tape or cloth behind it",
            line: "Holes firm, perhaps not quite straight.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Band(CardiganBand::Backed))),
        },
        Level {
            key: "backed-spare",
            name: "Backed, straight, a spare button",
            line: "Both edges level, all buttons alike.",
            spans: &[],
            drawn: Some(Picture::Sweater(Sweater::Band(CardiganBand::BackedSpare))),
        },
    ],
    seconds: 5,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 2, shares 14/38/34/14 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Trims, slope: 0.6, thresholds: &[-3.34, 0.16, 3.34] },
        "Tape and better buttons add some tens of cents.",
    ),
    instruments: &[],
    // A third of sweaters button: judgement.
    asked_when: Some(When { check: &CARDIGAN, levels: &["cardigan"], share: 30 }),
    caution: Some("Do not pull at buttons that are not yours."),
    sources: &[&sources::JUDGEMENT],
};
