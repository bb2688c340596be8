//! Jeans, what is added: closures, metal, pocket cloth, labels.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{Button, Buttonhole, Details, Fly, Label, Picture, PocketCloth};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static CLOSURE: Check = Check {
    key: "closure",
    name: "Zip or buttons at work",
    question: "How does the fly work when you open and close it three times?",
    how: "Hold the fly flat and run the zip, or work the buttons, three times. See whether the zip slider stays up when you \
        pull sideways, and whether the tape beside the teeth is sewn down twice.",
    meaning: "A zip that catches new will catch worse later. Weight alone proves little: a light zip can run well. Both zip \
        and buttons can be replaced, so a fault here is annoying rather than fatal.",
    levels: &[
        Level {
            key: "sticks",
            name: "It sticks or catches",
            line: "You need two tries, or it bites cloth.",
            spans: &[],
            drawn: Some(Picture::Fly(Fly::ZipCatches)),
        },
        Level {
            key: "rough",
            name: "Roughly",
            line: "Works every time, but scrapes or needs force.",
            spans: &[],
            drawn: Some(Picture::Fly(Fly::ZipLight)),
        },
        Level {
            key: "runs",
            name: "It runs well",
            line: "Smooth, and stays shut.",
            spans: &[],
            drawn: Some(Picture::Fly(Fly::ZipSound)),
        },
        Level {
            key: "solid",
            name: "It runs well and is solid",
            line: "Smooth; slider locks, tape sewn twice, or buttons sit firm.",
            spans: &[],
            drawn: Some(Picture::Fly(Fly::ZipHeavy)),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 3, shares 6/26/48/20 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Trims, slope: 0.9, thresholds: &[-3.51, -1.06, 1.9] }),
    instruments: &[],
    asked_when: None,
    caution: Some("A zip bites: keep skin and cloth clear of it."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static METAL: Check = Check {
    key: "metal",
    name: "Button and rivets",
    question: "How firmly do the button and rivets sit?",
    how: "Try to turn the waist button and each rivet with your thumb, gently. Feel the back of each for sharp edges. Look \
        whether cloth around them is cut, and whether a second disc backs them.",
    meaning: "Parts that turn cut the cloth round them and come out. Some waist buttons swivel on their stem by design: feel \
        whether the back is fixed. Colour and engraving say nothing about strength.",
    levels: &[
        Level {
            key: "loose",
            name: "Loose, sharp or bent",
            line: "Turns, rattles, scratches or tips.",
            spans: &[],
            drawn: Some(Picture::Button(Button { cap_mm: 0.7, backed: false, loose: true })),
        },
        Level {
            key: "light",
            name: "Fixed but thin",
            line: "Does not turn; thin metal you could dent.",
            spans: &[],
            drawn: Some(Picture::Button(Button { cap_mm: 1.0, backed: false, loose: false })),
        },
        Level {
            key: "firm",
            name: "Firm",
            line: "Does not turn; solid, with smooth backs.",
            spans: &[],
            drawn: Some(Picture::Button(Button { cap_mm: 2.4, backed: false, loose: false })),
        },
        Level {
            key: "backed",
            name: "Firm and backed",
            line: "As firm, and a second disc or extra cloth behind.",
            spans: &[],
            drawn: Some(Picture::Button(Button { cap_mm: 2.8, backed: true, loose: false })),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 2, shares 7/35/43/15 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Trims, slope: 0.6, thresholds: &[-4.56, -0.62, 3.21] },
        "Solid copper or brass parts cost a few times as much as thin plated steel.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some(
        "Nickel in buttons and rivets can cause a rash. If you are sensitive, cover the inner side. Limits depend on local \
            rules.",
    ),
    sources: &[&sources::JUDGEMENT, &sources::REACH_27],
};

pub(in crate::catalog) static POCKETING: Check = Check {
    key: "pocketing",
    name: "Cloth of the pocket bags",
    question: "What are the pocket bags made of?",
    how: "Turn a front pocket bag out. Hold one layer against the light with your hand behind, then rub it between your \
        fingers. Compare it with a shirt you know.",
    meaning: "Pocket cloth is unseen in the shop, so it shows honestly what the maker spent, and it wears through early when \
        thin. Dense thin cloth may be chosen to keep a dressy front flat. A printed bag is not a stronger bag.",
    levels: &[
        Level {
            key: "limp",
            name: "See-through or limp",
            line: "You can count your fingers through it.",
            spans: &[],
            drawn: Some(Picture::PocketCloth(PocketCloth { sheer: 1.0, twill: false, yarns_per_cm: 16.0 })),
        },
        Level {
            key: "thin",
            name: "Thin and papery",
            line: "No fingers seen, but thinner than a shirt.",
            spans: &[],
            drawn: Some(Picture::PocketCloth(PocketCloth { sheer: 0.3, twill: false, yarns_per_cm: 24.0 })),
        },
        Level {
            key: "firm",
            name: "Firm twill",
            line: "Like a sturdy shirt, with fine slanting lines.",
            spans: &[],
            drawn: Some(Picture::PocketCloth(PocketCloth { sheer: 0.0, twill: true, yarns_per_cm: 30.0 })),
        },
        Level {
            key: "heavy",
            name: "Heavy twill or the jeans cloth",
            line: "As thick as trousers, or the same cloth as outside.",
            spans: &[],
            drawn: Some(Picture::PocketCloth(PocketCloth { sheer: 0.0, twill: true, yarns_per_cm: 16.0 })),
        },
    ],
    seconds: 6,
    stage: Stage::InsideOut,
    aspect: Aspect::Trims,
    // Power 4, shares 13/42/33/12 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Trims, slope: 1.2, thresholds: &[-2.12, 0.24, 2.21] },
        "Heavy pocket cloth costs several times what thin cotton-polyester does, all out of sight.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static BUTTONHOLE: Check = Check {
    key: "buttonhole",
    name: "Waist buttonhole",
    question: "How is the waist buttonhole made?",
    how: "Open the waist button and spread the hole gently. Look how close the stitches stand, whether the slit is cut \
        cleanly, and whether the far end has a small bar across it.",
    meaning: "Dense stitching and a clean cut need thread and time, and keep the hole from growing. A round eye at the front \
        end, called a keyhole, makes room for the button’s stem. A fluffy slit on raw cloth may still be firm.",
    levels: &[
        Level {
            key: "ragged",
            name: "Ragged",
            line: "Yarns hang in the slit, or stitches are cut.",
            spans: &[],
            drawn: Some(Picture::Buttonhole(Buttonhole { stitches_per_cm: 7.0, ragged: 1.0, keyhole: false, bar: false })),
        },
        Level {
            key: "thin",
            name: "Clean but thin",
            line: "Cut neatly, but cloth shows between the stitches.",
            spans: &[],
            drawn: Some(Picture::Buttonhole(Buttonhole { stitches_per_cm: 8.0, ragged: 0.1, keyhole: false, bar: false })),
        },
        Level {
            key: "dense",
            name: "Dense and clean",
            line: "Stitches stand side by side; the slit is clean.",
            spans: &[],
            drawn: Some(Picture::Buttonhole(Buttonhole { stitches_per_cm: 15.0, ragged: 0.0, keyhole: false, bar: true })),
        },
        Level {
            key: "keyhole",
            name: "Dense, round-eyed, with a bar",
            line: "As dense; round eye in front and a bar at the end.",
            spans: &[],
            drawn: Some(Picture::Buttonhole(Buttonhole { stitches_per_cm: 17.0, ragged: 0.0, keyhole: true, bar: true })),
        },
    ],
    seconds: 5,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    // Power 3, shares 9/33/42/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Trims, slope: 0.9, thresholds: &[-3.03, -0.46, 2.24] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static FLY_TYPE: Check = Check {
    key: "fly-type",
    name: "Kind of fly",
    question: "How does the fly close?",
    how: "Open the waist button and look.",
    meaning: "A matter of habit and style. A button fly is easier to mend, a zip faster to use. Neither says anything about \
        how well the jeans are made.",
    levels: &[
        Level {
            key: "zip",
            name: "With a zip",
            line: "Teeth and a slider.",
            spans: &[],
            drawn: Some(Picture::Fly(Fly::ZipSound)),
        },
        Level {
            key: "buttons",
            name: "With buttons",
            line: "Three to five buttons below the waist button.",
            spans: &[],
            drawn: Some(Picture::Fly(Fly::Buttons)),
        },
    ],
    seconds: 2,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    speaks: Speaks::Cost("A button fly adds parts and sewing minutes."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static DETAILS: Check = Check {
    key: "details",
    name: "Details nobody needs to notice",
    question: "How many special details can you find?",
    how: "Count one each: rivets hidden inside the back pockets, lined back pockets, belt loops with a raised middle, selvedge \
        in the coin pocket, a leather patch, embroidery, a chain-stitched hem.",
    meaning: "Each detail takes time and shows interest in how jeans were once made. They are easily copied and add little to \
        how long a pair lives. Count what is there, not what the hang tag says.",
    levels: &[
        Level {
            key: "none",
            name: "None",
            line: "A plain pair.",
            spans: &[],
            drawn: Some(Picture::Details(Details { count: 0 })),
        },
        Level {
            key: "1-to-2",
            name: "1 to 2",
            line: "One or two, often a patch or embroidery.",
            spans: &[],
            drawn: Some(Picture::Details(Details { count: 2 })),
        },
        Level {
            key: "3-to-4",
            name: "3 to 4",
            line: "You find some only by searching.",
            spans: &[],
            drawn: Some(Picture::Details(Details { count: 4 })),
        },
        Level {
            key: "5-up",
            name: "5 or more",
            line: "Hardly a place without one.",
            spans: &[],
            drawn: Some(Picture::Details(Details { count: 6 })),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Trims,
    speaks: Speaks::Cost("Each detail adds about half a minute of sewing and some material."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE, &sources::PRICE_AND_LIFE],
};

pub(in crate::catalog) static CARE_LABEL: Check = Check {
    key: "care-label",
    name: "Care and fibre labels",
    question: "How useful are the sewn-in labels?",
    how: "Find fibre, care and country inside the hip or the back of the waist. Tub means wash, triangle bleach, square dry, \
        circle professional cleaning; a cross means do not. See whether all are readable.",
    meaning: "Most places require labels, so having them says little. Dry cleaning only, on plain cotton, often means caution \
        or glued trims. Follow it all the same. A washed-thin label on worn jeans is no fault of the make.",
    levels: &[
        Level {
            key: "missing",
            name: "Missing or unreadable",
            line: "Fibre or care is not to be found, or rubbing off.",
            spans: &[],
            drawn: Some(Picture::Label(Label { lines: 0, symbols: false, forbids: false, woven: false })),
        },
        Level {
            key: "odd",
            name: "There, but doubtful",
            line: "They contradict, or forbid what such cloth normally stands.",
            spans: &[],
            drawn: Some(Picture::Label(Label { lines: 3, symbols: true, forbids: true, woven: false })),
        },
        Level {
            key: "clear",
            name: "Clear and sensible",
            line: "You can follow them, and they suit the cloth.",
            spans: &[],
            drawn: Some(Picture::Label(Label { lines: 5, symbols: true, forbids: false, woven: true })),
        },
    ],
    seconds: 6,
    stage: Stage::InsideOut,
    aspect: Aspect::Trims,
    // Power 1, shares 6/24/70 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Trims, slope: 0.3, thresholds: &[-9.03, -3.04] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::CARE_SYMBOLS, &sources::CFR_423],
};
