//! Jeans, the stitching: its density, evenness, rows and ends, and how flat it lies.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks, When};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{Course, Ending, Picture, Pucker, RowEnd, SeamWaves, ThreadTails, Topstitch};
use crate::trade::{Aspect, Stage};

use super::cloth::STRETCH;

pub(in crate::catalog) static STITCH_DENSITY: Check = Check {
    key: "spi",
    name: "Stitch density",
    question: "How many stitches are there to the inch (25 mm)?",
    how: "Lay a ruler along visible stitching at hip or inner leg, zero on a needle hole. Count the stitches, not the holes, \
        over three inches (76 mm), then divide by three. Do not stretch the cloth.",
    meaning: "Stitches must suit the cloth. Too few gape and snag; too many perforate heavy cloth like a stamp. Density costs \
        only cents, so it is a weak sign. Bold decorative rows may run a little longer by design.",
    levels: &[
        Level {
            key: "misfit",
            name: "Below 6 or above 12",
            line: "Stitches over 4.2 mm long, or under 2.1 mm like a perforation.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 6.0 }, Span { low: 12.0, high: f64::INFINITY }],
            drawn: Some(Picture::Topstitch(Topstitch {
                stitches_per_inch: 4.5,
                other_rows_per_inch: 15.0,
                inch: true,
                ..Topstitch::CLEAN
            })),
        },
        Level {
            key: "border",
            name: "6 to 7, or 10.5 to 12",
            line: "A little long (3.6 to 4.2 mm) or short (2.1 to 2.4 mm).",
            spans: &[Span { low: 6.0, high: 7.0 }, Span { low: 10.5, high: 12.0 }],
            drawn: Some(Picture::Topstitch(Topstitch {
                stitches_per_inch: 6.4,
                other_rows_per_inch: 11.2,
                inch: true,
                ..Topstitch::CLEAN
            })),
        },
        Level {
            key: "suits",
            name: "7 to 10.5",
            line: "What sturdy cloth wants: 2.4 to 3.6 mm each.",
            spans: &[Span { low: 7.0, high: 10.5 }],
            drawn: Some(Picture::Topstitch(Topstitch { stitches_per_inch: 8.5, inch: true, ..Topstitch::CLEAN })),
        },
    ],
    seconds: 25,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 2, shares 10/28/62 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.6, thresholds: &[-4.09, -0.98] }),
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

pub(in crate::catalog) static STITCH_EVEN: Check = Check {
    key: "stitch-even",
    name: "Evenness of stitches",
    question: "How even are the stitches along the seams?",
    how: "Follow one visible row along a straight stretch, round a pocket curve and over a thick crossing of seams. Look for \
        skipped stitches, breaks, and stitches that shrink before a thick spot.",
    meaning: "Even length on curves and over thick spots shows skill and a well-set machine. A deliberate hand-sewn or visibly \
        mended row is decoration and does not count. Thick thread shows faults more plainly than thin.",
    levels: &[
        Level {
            key: "skips",
            name: "With skips or breaks",
            line: "A stitch missing, or a thread broken.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch {
                unevenness: 0.1,
                skips: 3,
                course: Course::CurveOverJoin,
                ..Topstitch::CLEAN
            })),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "No skips, but lengths differ plainly, also on straight parts.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { unevenness: 0.5, course: Course::CurveOverJoin, ..Topstitch::CLEAN })),
        },
        Level {
            key: "even",
            name: "Even on straight parts",
            line: "Even where it is easy; shorter over thick joins.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch {
                short_over_join: 0.45,
                course: Course::CurveOverJoin,
                ..Topstitch::CLEAN
            })),
        },
        Level {
            key: "even-all",
            name: "Even everywhere",
            line: "The same length on curves and over thick joins.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { course: Course::CurveOverJoin, ..Topstitch::CLEAN })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 4, shares 8/32/44/16 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 1.2, thresholds: &[-2.87, -0.52, 2.03] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static ROWS_TRUE: Check = Check {
    key: "rows-true",
    name: "Parallel rows",
    question: "How straight and parallel are the double rows?",
    how: "Look at double rows on back pockets, yoke and seat. Check whether the gap stays the same and whether corners turn on \
        one stitch in both rows. Twin rows are usually 6 mm (¼ in) apart.",
    meaning: "Rows by a twin-needle machine are parallel by nature on straight runs, so curves and corners tell most. A wavy \
        row put there as decoration is not a fault. Straight rows do not make the seam stronger.",
    levels: &[
        Level {
            key: "wander",
            name: "They wander over 2 mm",
            line: "You see the gap open and close at once (1⁄12 in).",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { wander_mm: 2.8, course: Course::BluntCorner, ..Topstitch::CLEAN })),
        },
        Level {
            key: "slight",
            name: "They wander a little",
            line: "Parallel at first look, uneven when followed.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { wander_mm: 1.2, course: Course::BluntCorner, ..Topstitch::CLEAN })),
        },
        Level {
            key: "parallel",
            name: "Parallel",
            line: "The gap stays the same; corners a bit rounded.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { course: Course::BluntCorner, ..Topstitch::CLEAN })),
        },
        Level {
            key: "crisp",
            name: "Parallel with crisp corners",
            line: "The gap stays the same and corners turn sharply.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { course: Course::CrispCorner, ..Topstitch::CLEAN })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 4, shares 9/34/42/15 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 1.2, thresholds: &[-2.74, -0.36, 2.12] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static STARTS_STOPS: Check = Check {
    key: "starts-stops",
    name: "Starts and ends of rows",
    question: "How are the ends of the stitching secured?",
    how: "Look where rows begin and end: pocket tops, fly bottom, waistband ends, hem. See whether the machine sewed back over \
        itself, whether rows overlap neatly, or whether thread just stops.",
    meaning: "A row that is not secured runs out from its end. Sewing back over a few stitches holds it, and a dense zigzag \
        bar (bar tack) on top holds it too. Showing or hiding it is a matter of neatness. Look only; do not tug.",
    levels: &[
        Level {
            key: "loose",
            name: "Not secured",
            line: "Thread ends free, with nothing holding the last stitch.",
            spans: &[],
            drawn: Some(Picture::RowEnd(RowEnd { ending: Ending::Loose })),
        },
        Level {
            key: "untidy",
            name: "With knots or untidy overlaps",
            line: "Held somehow, with lumps, knots or crooked overlaps.",
            spans: &[],
            drawn: Some(Picture::RowEnd(RowEnd { ending: Ending::Untidy })),
        },
        Level {
            key: "back-tacked",
            name: "By sewing back over",
            line: "A few stitches doubled back in line.",
            spans: &[],
            drawn: Some(Picture::RowEnd(RowEnd { ending: Ending::BackTacked })),
        },
        Level {
            key: "hidden",
            name: "Sewn back, and hidden",
            line: "Doubled back and tucked under a seam or tack.",
            spans: &[],
            drawn: Some(Picture::RowEnd(RowEnd { ending: Ending::Hidden })),
        },
    ],
    seconds: 10,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 10/34/42/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.07, -0.36, 2.59] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Do not pull thread ends on goods that are not yours: a chain stitch can run out whole."),
    sources: &[&sources::JUDGEMENT, &sources::ISO_4915],
};

pub(in crate::catalog) static RESTARTS: Check = Check {
    key: "restarts",
    name: "Restarts and bunching",
    question: "Where a seam was begun again, how does it look?",
    how: "Scan the long rows: outer seam, inner leg, waistband, hems. Look for places where stitching overlaps in mid-row, for \
        knots of bunched thread, and for a row that jumps sideways.",
    meaning: "A thread that ran out is normal; how it was picked up shows care. A clean overlap of a few stitches holds well. \
        Bunches come from a badly set machine and rub through. Decorative zigzag bars are not restarts.",
    levels: &[
        Level {
            key: "bunched",
            name: "Bunched, or with a gap",
            line: "Thread nests, or a gap where the row was not joined.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { restarts: 3, bunching: 1.0, loose_ends: 3, ..Topstitch::CLEAN })),
        },
        Level {
            key: "crooked",
            name: "Out of line",
            line: "The new row overlaps beside the old one.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { restarts: 2, bunching: 0.4, ..Topstitch::CLEAN })),
        },
        Level {
            key: "in-line",
            name: "In line",
            line: "An overlap you must look for, on the same line.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch { restarts: 1, ..Topstitch::CLEAN })),
        },
        Level {
            key: "none",
            name: "No restart to be found",
            line: "Rows run through from end to end.",
            spans: &[],
            drawn: Some(Picture::Topstitch(Topstitch::CLEAN)),
        },
    ],
    seconds: 12,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 9/27/38/26 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.21, -0.86, 1.54] }),
    instruments: &[],
    asked_when: None,
    caution: Some("Look only. Do not pull at bunched thread on goods that are not yours."),
    sources: &[&sources::JUDGEMENT],
};

pub(in crate::catalog) static THREAD_ENDS: Check = Check {
    key: "thread-ends",
    name: "Loose thread",
    question: "How many loose thread ends are there on the whole pair?",
    how: "Count ends longer than 3 mm (⅛ in), outside and in the openings. Lift each belt loop, look behind the fly and at \
        both hems: trimming is skipped there first.",
    meaning: "A weak sign either way: ends are cheap to trim, and a clean pair may only be well trimmed. They speak for the \
        last hands in the factory, not for the seams. Fringes of an intended hole or raw hem do not count.",
    levels: &[
        Level {
            key: "over-10",
            name: "More than 10",
            line: "Ends wherever you look.",
            spans: &[Span { low: 10.5, high: f64::INFINITY }],
            drawn: Some(Picture::ThreadTails(ThreadTails { ends: 12 })),
        },
        Level {
            key: "5-to-10",
            name: "5 to 10",
            line: "Some in view, more under the belt loops.",
            spans: &[Span { low: 4.5, high: 10.5 }],
            drawn: Some(Picture::ThreadTails(ThreadTails { ends: 7 })),
        },
        Level {
            key: "2-to-4",
            name: "2 to 4",
            line: "You have to search for them.",
            spans: &[Span { low: 1.5, high: 4.5 }],
            drawn: Some(Picture::ThreadTails(ThreadTails { ends: 3 })),
        },
        Level {
            key: "clean",
            name: "None or 1",
            line: "Clean, also under the belt loops and behind the fly.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 1.5 }],
            drawn: Some(Picture::ThreadTails(ThreadTails { ends: 0 })),
        },
    ],
    seconds: 20,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 1, shares 15/27/35/23 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.3, thresholds: &[-6.07, -1.18, 4.33] }),
    instruments: &[&measure::LOOSE_ENDS],
    asked_when: None,
    caution: Some("Do not pull thread ends: a chain stitch can run out whole. Trim your own with scissors."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static PUCKER: Check = Check {
    key: "pucker",
    name: "Seam pucker",
    question: "How flat do the seams lie?",
    how: "Lay the outer seam, fly and yoke flat and let light fall along them from the side. Look for small gathers that start \
        at the needle holes. Stretch nothing; smooth it only with a flat palm.",
    meaning: "Gathers come from thread tension or cloth fed unevenly. Ropy ridges with pale tops that a wash leaves along hems \
        and seams are not pucker, and many people want them. Judge raw and washed cloth by the gathers only.",
    levels: &[
        Level {
            key: "gathered",
            name: "Gathered",
            line: "The seam is drawn up and shorter than the cloth.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 2.5 }],
            drawn: Some(Picture::Pucker(Pucker { height_mm: 2.4, length_mm: 7.5 })),
        },
        Level {
            key: "plain",
            name: "Rippled at arm’s length",
            line: "Ripples you see without searching.",
            spans: &[Span { low: 2.5, high: 3.5 }],
            drawn: Some(Picture::Pucker(Pucker { height_mm: 1.2, length_mm: 7.5 })),
        },
        Level {
            key: "faint",
            name: "Faintly rippled",
            line: "Only seen in light from the side.",
            spans: &[Span { low: 3.5, high: 4.5 }],
            drawn: Some(Picture::Pucker(Pucker { height_mm: 0.4, length_mm: 7.5 })),
        },
        Level {
            key: "flat",
            name: "Flat",
            line: "Smooth, or only puffed by the wash.",
            spans: &[Span { low: 4.5, high: f64::INFINITY }],
            drawn: Some(Picture::Pucker(Pucker { height_mm: 0.0, length_mm: 7.5 })),
        },
    ],
    seconds: 6,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 7/25/45/23 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.53, -1.12, 1.77] }),
    instruments: &[&measure::SEAM_SMOOTHNESS],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::SEAM_SMOOTHNESS],
};

pub(in crate::catalog) static SEAM_WAVES: Check = Check {
    key: "seam-waves",
    name: "Waves in stretch cloth",
    question: "How wavy are the seams and edges?",
    how: "Lay the jeans flat, do not pull. Look along the waistband top, pocket mouths, outer seam and hem for edges longer \
        than the cloth beside them, like the edge of a lettuce leaf.",
    meaning: "Waves mean that the cloth was stretched while it was sewn, or that the elastic yarn has been hurt by heat. \
        Washing seldom cures them. Gathers are the opposite fault and have their own question.",
    levels: &[
        Level {
            key: "wavy",
            name: "Wavy all over",
            line: "Edges stand up in waves, also at the hem or band.",
            spans: &[],
            drawn: Some(Picture::SeamWaves(SeamWaves { height_mm: 2.6, share: 1.0 })),
        },
        Level {
            key: "places",
            name: "Wavy in places",
            line: "Waves at a pocket mouth or along one seam.",
            spans: &[],
            drawn: Some(Picture::SeamWaves(SeamWaves { height_mm: 2.4, share: 0.5 })),
        },
        Level {
            key: "slight",
            name: "Slightly, smooths flat",
            line: "A hint of a wave that your palm smooths away.",
            spans: &[],
            drawn: Some(Picture::SeamWaves(SeamWaves { height_mm: 0.7, share: 1.0 })),
        },
        Level {
            key: "flat",
            name: "Not wavy",
            line: "Edges as long as the cloth beside them.",
            spans: &[],
            drawn: Some(Picture::SeamWaves(SeamWaves { height_mm: 0.0, share: 0.0 })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 8/26/40/26 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Stitching, slope: 0.9, thresholds: &[-3.37, -0.99, 1.54] }),
    instruments: &[],
    asked_when: Some(When { check: &STRETCH, levels: &["comfort", "stretch", "power"], share: 80 }),
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
