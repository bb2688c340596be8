//! Shirts, the stitching: its density, how flat it lies, the edge that buttons, loose ends.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{FineStitches, Picture, Pucker, ShirtFront};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static STITCH_DENSITY: Check = Check {
    key: "spi",
    name: "Stitch density",
    question: "How many stitches to the inch (25 mm) run along the front edge?",
    how: "Lay a ruler along the stitching beside the buttons, zero on a needle hole. Count the stitches, not the holes, \
        over three inches (76 mm), then divide by three.",
    meaning: "Shirts range widely, and dense rows need slow machines, so this tells more than on jeans. Dress shirts have 14 \
        to 20, casual ones 10 to 14. Too many weaken the cloth like a perforation. Look at pucker too: density alone \
        is cheap to show off.",
    levels: &[
        Level {
            key: "misfit",
            name: "Below 9 or above 24",
            line: "Over 2.8 mm each and gaping, or a perforation.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 9.0 }, Span { low: 24.0, high: f64::INFINITY }],
            drawn: Some(Picture::FineStitches(FineStitches { per_inch: 7.0, or_per_inch: 27.0 })),
        },
        Level {
            key: "long",
            name: "9 to 12",
            line: "Long: 2.1 to 2.8 mm each.",
            spans: &[Span { low: 9.0, high: 12.0 }],
            drawn: Some(Picture::FineStitches(FineStitches { per_inch: 10.5, or_per_inch: 0.0 })),
        },
        Level {
            key: "usual",
            name: "12 to 16",
            line: "What most good shirts have: 1.6 to 2.1 mm.",
            spans: &[Span { low: 12.0, high: 16.0 }],
            drawn: Some(Picture::FineStitches(FineStitches { per_inch: 14.0, or_per_inch: 0.0 })),
        },
        Level {
            key: "fine",
            name: "16 to 24",
            line: "Fine and slow to sew: 1.1 to 1.6 mm.",
            spans: &[Span { low: 16.0, high: 24.0 }],
            drawn: Some(Picture::FineStitches(FineStitches { per_inch: 19.0, or_per_inch: 0.0 })),
        },
    ],
    seconds: 20,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 4, shares 8/38/38/16 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Stitching, slope: 1.2, thresholds: &[-2.87, -0.21, 2.03] },
        "More stitches take more time at the machine, and slower machines.",
    ),
    instruments: &[
        &measure::STITCH_DENSITY,
        &measure::STITCH_COMB,
        &measure::STITCH_TAPS,
        &measure::STITCH_PHOTO,
        &measure::STITCH_COMB_LIVE,
    ],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::SPI_BULLETIN, &sources::COUNTING],
};

pub(in crate::catalog) static PUCKER: Check = Check {
    key: "pucker",
    name: "Seam pucker",
    question: "How flat do front edge, yoke and sleeve seams lie?",
    how: "Let light fall along the front edge, the yoke and the sleeve seam from the side. Look for small gathers that \
        start at the needle holes. Stretch nothing.",
    meaning: "Close thin cloth has no room for extra thread, so bad tension shows at once, and washing makes it worse. A hot \
        press hides it in the shop: look where the iron does not reach, at the sleeve seam.",
    levels: &[
        Level {
            key: "gathered",
            name: "Gathered",
            line: "The seam is drawn up and shorter than the cloth.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.5 }],
            drawn: Some(Picture::Plain(&Picture::Pucker(Pucker { height_mm: 2.4, length_mm: 7.5 }))),
        },
        Level {
            key: "plain",
            name: "Rippled at arm’s length",
            line: "Ripples you see before you look for them.",
            spans: &[Span { low: 2.5, high: 3.5 }],
            drawn: Some(Picture::Plain(&Picture::Pucker(Pucker { height_mm: 1.3, length_mm: 7.5 }))),
        },
        Level {
            key: "faint",
            name: "Faintly rippled",
            line: "Only in slanting light.",
            spans: &[Span { low: 3.5, high: 4.5 }],
            drawn: Some(Picture::Plain(&Picture::Pucker(Pucker { height_mm: 0.45, length_mm: 7.5 }))),
        },
        Level {
            key: "flat",
            name: "Flat",
            line: "No ripples, even on the sleeve.",
            spans: &[Span { low: 4.5, high: f64::INFINITY }],
            drawn: Some(Picture::Plain(&Picture::Pucker(Pucker { height_mm: 0.0, length_mm: 7.5 }))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 4, shares 10/32/40/18 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 1.2, thresholds: &[-2.62, -0.41, 1.87] }),
    instruments: &[&measure::SEAM_SMOOTHNESS],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::SEAM_SMOOTHNESS],
};

pub(in crate::catalog) static PLACKET_TRUE: Check = Check {
    key: "placket-true",
    name: "The buttoned edge",
    question: "How straight is the front edge, and do its ends meet?",
    how: "Button the shirt and lay it flat. Look along the front edge from collar to hem. Compare where both fronts end \
        at the collar and at the hem.",
    meaning: "It is the longest row that everyone sees, so it shows the care of the line. Ends that differ at the hem were \
        cut or fed unevenly and cannot be pressed right. It says little about strength.",
    levels: &[
        Level {
            key: "wavy",
            name: "Wavy, or ends uneven",
            line: "The edge waves, or the fronts differ by over 5 mm.",
            spans: &[],
            drawn: Some(Picture::ShirtFront(ShirtFront { wave_mm: 4.0, ends_off_mm: 8.0, ..ShirtFront::CLEAN })),
        },
        Level {
            key: "slight",
            name: "Slightly off",
            line: "Small waves, or fronts that differ by 2 to 5 mm.",
            spans: &[],
            drawn: Some(Picture::ShirtFront(ShirtFront { wave_mm: 1.6, ends_off_mm: 3.5, ..ShirtFront::CLEAN })),
        },
        Level {
            key: "true",
            name: "True",
            line: "Straight; ends within 2 mm.",
            spans: &[],
            drawn: Some(Picture::ShirtFront(ShirtFront { wave_mm: 0.25, ends_off_mm: 1.5, ..ShirtFront::CLEAN })),
        },
        Level {
            key: "exact",
            name: "True to the millimetre",
            line: "Straight as a ruler, and the ends meet.",
            spans: &[],
            drawn: Some(Picture::ShirtFront(ShirtFront { wave_mm: 0.0, ends_off_mm: 0.0, ..ShirtFront::CLEAN })),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 9/34/42/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.21, -0.42, 2.48] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static THREAD_ENDS: Check = Check {
    key: "thread-ends",
    name: "Loose thread",
    question: "How many loose thread ends are there on the whole shirt?",
    how: "Count ends longer than 3 mm (⅛ in): at buttonholes, behind buttons, at the cuffs, at the hem, inside the side \
        seams.",
    meaning: "A weak sign either way: ends are cheap to trim, and a clean shirt may only be well trimmed. They speak for the \
        last hands in the factory, not for the seams.",
    levels: &[
        Level {
            key: "over-8",
            name: "More than 8",
            line: "Ends wherever you look.",
            spans: &[Span { low: 8.5, high: f64::INFINITY }],
            drawn: Some(Picture::ShirtFront(ShirtFront { tails: 11, ..ShirtFront::CLEAN })),
        },
        Level {
            key: "4-to-8",
            name: "4 to 8",
            line: "Some in view, more behind the buttons.",
            spans: &[Span { low: 3.5, high: 8.5 }],
            drawn: Some(Picture::ShirtFront(ShirtFront { tails: 6, ..ShirtFront::CLEAN })),
        },
        Level {
            key: "1-to-3",
            name: "1 to 3",
            line: "You have to search for them.",
            spans: &[Span { low: 0.5, high: 3.5 }],
            drawn: Some(Picture::ShirtFront(ShirtFront { tails: 2, ..ShirtFront::CLEAN })),
        },
        Level {
            key: "none",
            name: "None",
            line: "Clean, also inside the cuffs.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 0.5 }],
            drawn: Some(Picture::ShirtFront(ShirtFront { tails: 0, ..ShirtFront::CLEAN })),
        },
    ],
    seconds: 15,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 1, shares 14/28/36/22 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.3, thresholds: &[-6.33, -1.18, 4.53] }),
    instruments: &[&measure::LOOSE_ENDS],
    asked_when: None,
    caution: Some("Do not pull thread ends: a row or a button can come undone. Trim your own with scissors."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
