//! Dresses and skirts, the sewing: hem, edges inside, slipping seams, rows, pucker, loose ends.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Dress, EdgeInside, HemLine, Picture, Pucker, SlipPull, TailsInside, Topstitch};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static HEM: Check = Check {
    key: "hem",
    name: "The hem",
    question: "Is the hem level and even, and does it show outside?",
    how: "Hold the hem at eye height and look along it. Then look at the right side for dimples and stitches, and feel how deep the \
        cloth is turned up.",
    meaning: "The slowest seam to do well. Long blind stitches, 3 to 5 an inch, are right here: short ones dimple. A rolled hem on \
        sheer cloth, or a plain row on casual cotton, is a choice: judge how level and even it is.",
    levels: &[
        Level {
            key: "uneven-raw",
            name: "Not level, or raw",
            line: "It waves up and down, or an edge frays.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hem(HemLine::Uneven))),
        },
        Level {
            key: "shows",
            name: "It shows, or puckers",
            line: "Dimples or stitches draw the eye.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hem(HemLine::Shows))),
        },
        Level {
            key: "even",
            name: "Level and even",
            line: "An even row, or stitches you must look for.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hem(HemLine::Even))),
        },
        Level {
            key: "unseen",
            name: "Level, unseen, falls well",
            line: "No stitch outside; deep enough to hang.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Hem(HemLine::Unseen))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 4, shares 10/36/39/15 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.2, thresholds: &[-2.41, -0.19, 1.95] },
        "A deep unseen hem takes more cloth and two to three times the minutes.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Hems of new goods can hold pins: feel from outside first."),
    sources: &[&sources::JUDGEMENT, &sources::SPI_BULLETIN],
};

pub(in crate::catalog) static SEAM_FINISH: Check = Check {
    key: "seam-finish",
    name: "Edges inside",
    question: "What became of the raw edges inside?",
    how: "Turn it inside out, or lift the lining. Look along side seams and waist: left as cut, wrapped in thread, bound, or folded \
        away.",
    meaning: "Nobody sees these but you, so they tell the maker’s habit. A frayed edge eats its way to the seam in the wash. Under a full \
        lining an edge may be left plainer; jersey does not fray.",
    levels: &[
        Level {
            key: "raw",
            name: "Raw or fraying",
            line: "Threads come off the edge.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::EdgeInside(EdgeInside::Fraying))),
        },
        Level {
            key: "loose",
            name: "Wrapped, loosely",
            line: "Wide zigzag; cloth comes through.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::EdgeInside(EdgeInside::LooseWrap))),
        },
        Level {
            key: "dense",
            name: "Wrapped, densely",
            line: "Close even thread; nothing frays.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::EdgeInside(EdgeInside::DenseWrap))),
        },
        Level {
            key: "bound",
            name: "Bound or folded away",
            line: "Tape round the edge, or no edge to see.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::EdgeInside(EdgeInside::Bound))),
        },
    ],
    seconds: 8,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 4, shares 10/45/34/11 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.2, thresholds: &[-2.41, 0.24, 2.3] },
        "Binding or folding edges away about doubles the minutes of a seam.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you turn out goods that are not yours, and feel for pins first."),
    sources: &[&sources::JUDGEMENT, &sources::ISO_4916],
};

pub(in crate::catalog) static SLIP: Check = Check {
    key: "slip",
    name: "Seams that slip",
    question: "Does the cloth open beside a side seam under a gentle pull?",
    how: "Hold the cloth on both sides of a side seam, where it is close to the body. Pull gently across it, once, and look for gaps \
        beside the thread.",
    meaning: "In smooth open cloth the threads slide off each other, and no mending holds. Seam allowance and finer stitches help a \
        little. Chiffon and satin slip soonest; that is no excuse in a fitted dress.",
    levels: &[
        Level {
            key: "opens",
            name: "It opens",
            line: "A ladder of single threads beside the seam.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Slip(SlipPull::Opens))),
        },
        Level {
            key: "gaps",
            name: "Small gaps show",
            line: "Points of light that close again.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Slip(SlipPull::Gaps))),
        },
        Level {
            key: "stable",
            name: "It holds",
            line: "Nothing opens.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Slip(SlipPull::Stable))),
        },
        Level {
            key: "stable-fine",
            name: "It holds, finely stitched",
            line: "Short even stitches, and nothing opens.",
            spans: &[],
            drawn: Some(Picture::Dress(Dress::Slip(SlipPull::StableFine))),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 4, shares 9/27/46/18 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Strength, slope: 1.2, thresholds: &[-2.52, -0.67, 1.72] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask first, pull gently and once: what has slipped does not go back."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static STITCH_EVEN: Check = Check {
    key: "stitch-even",
    name: "Rows that show",
    question: "How even are the rows of stitches that you can see?",
    how: "Follow the rows at neck, waist, pockets and placket on the right side. Look at their length, their distance from the edge, \
        and where they begin and end.",
    meaning: "Even rows show care and a machine in order; 10 to 12 stitches an inch are usual for such pieces. Some have no row to see: \
        then judge the rows beside the zip.",
    levels: &[
        Level {
            key: "skips",
            name: "With skips",
            line: "A stitch missing, or a thread broken.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Topstitch(Topstitch {
                stitches_per_inch: 9.0,
                gap_mm: 4.0,
                skips: 3,
                ..Topstitch::CLEAN
            }))),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "Lengths differ plainly, or rows wander.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Topstitch(Topstitch {
                stitches_per_inch: 9.0,
                gap_mm: 4.0,
                unevenness: 0.5,
                wander_mm: 1.2,
                ..Topstitch::CLEAN
            }))),
        },
        Level {
            key: "even",
            name: "Even",
            line: "Alike, at one distance from the edge.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Topstitch(Topstitch {
                stitches_per_inch: 10.0,
                gap_mm: 4.0,
                ..Topstitch::CLEAN
            }))),
        },
        Level {
            key: "even-fine",
            name: "Even and fine",
            line: "Short stitches in fine thread, all alike.",
            spans: &[],
            drawn: Some(Picture::Plain(&Picture::Topstitch(Topstitch {
                stitches_per_inch: 14.0,
                gap_mm: 4.0,
                ..Topstitch::CLEAN
            }))),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 8/33/44/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.37, -0.54, 2.48] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::SPI_BULLETIN],
};

pub(in crate::catalog) static PUCKER: Check = Check {
    key: "pucker",
    name: "Seam pucker",
    question: "How flat do the seams lie in light from the side?",
    how: "Let light fall along side seams, waist and zip. Look for small gathers across the seam. Stretch nothing.",
    meaning: "Light smooth cloth shows what thread and machine do to it. Pressing hides some until the first wash. Crinkled cloth and \
        seersucker hide it for good.",
    levels: &[
        Level {
            key: "gathered",
            name: "Gathered",
            line: "The seam is drawn up and shorter than the cloth.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.5 }],
            drawn: Some(Picture::Plain(&Picture::Pucker(Pucker { height_mm: 2.2, length_mm: 6.5 }))),
        },
        Level {
            key: "plain",
            name: "Plain ripples",
            line: "Ripples you see before you look for them.",
            spans: &[Span { low: 2.5, high: 3.5 }],
            drawn: Some(Picture::Plain(&Picture::Pucker(Pucker { height_mm: 1.2, length_mm: 6.5 }))),
        },
        Level {
            key: "faint",
            name: "Faint ripples",
            line: "Only in slanting light.",
            spans: &[Span { low: 3.5, high: 4.5 }],
            drawn: Some(Picture::Plain(&Picture::Pucker(Pucker { height_mm: 0.4, length_mm: 6.5 }))),
        },
        Level {
            key: "flat",
            name: "Flat",
            line: "No ripples.",
            spans: &[Span { low: 4.5, high: f64::INFINITY }],
            drawn: Some(Picture::Plain(&Picture::Pucker(Pucker { height_mm: 0.0, length_mm: 6.5 }))),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 10/31/40/19 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.07, -0.54, 2.1] }),
    instruments: &[&measure::SEAM_SMOOTHNESS],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::SEAM_SMOOTHNESS],
};

pub(in crate::catalog) static THREAD_ENDS: Check = Check {
    key: "thread-ends",
    name: "Loose thread",
    question: "How many loose thread ends are there on the whole piece?",
    how: "Inside out, count ends longer than 3 mm (⅛ in): at hem, waist, zip, labels, and along the side seams.",
    meaning: "A weak sign either way: ends are cheap to trim, and a clean piece may only be well trimmed. They speak for the last hands \
        in the factory, not for the seams.",
    levels: &[
        Level {
            key: "over-8",
            name: "More than 8",
            line: "Ends wherever you look.",
            spans: &[Span { low: 8.5, high: f64::INFINITY }],
            drawn: Some(Picture::Dress(Dress::Tails(TailsInside { ends: 11 }))),
        },
        Level {
            key: "4-to-8",
            name: "4 to 8",
            line: "Some in most seams.",
            spans: &[Span { low: 3.5, high: 8.5 }],
            drawn: Some(Picture::Dress(Dress::Tails(TailsInside { ends: 6 }))),
        },
        Level {
            key: "1-to-3",
            name: "1 to 3",
            line: "You have to search for them.",
            spans: &[Span { low: 0.5, high: 3.5 }],
            drawn: Some(Picture::Dress(Dress::Tails(TailsInside { ends: 2 }))),
        },
        Level {
            key: "none",
            name: "None",
            line: "Clean throughout.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 0.5 }],
            drawn: Some(Picture::Dress(Dress::Tails(TailsInside { ends: 0 }))),
        },
    ],
    seconds: 12,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 1, shares 15/28/35/22 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.3, thresholds: &[-6.07, -1.03, 4.53] }),
    instruments: &[&measure::LOOSE_ENDS],
    asked_when: None,
    caution: Some("Do not pull thread ends: a hem can run out whole. Trim your own with scissors."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
