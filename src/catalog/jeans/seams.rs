//! Jeans, the seams: how pieces are cut, joined and their edges finished.

use crate::catalog::sources;
use crate::check::{Check, Level, Speaks};
use crate::grading::{Curve, Group};
use crate::specimen::{
    BagClosing, BagSeam, Edge, Hem, HemStitch, Join, JoinedSeam, Matching, OutseamEdge, Picture, SeatYoke, Waistband,
};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static INSEAM: Check = Check {
    key: "inseam",
    name: "Inner leg seam",
    question: "How is the inner leg seam joined?",
    how: "Turn the jeans inside out and follow the inner leg seam from crotch to hem, both legs. Look for raw edges, thread \
        wrapped round an edge, and places where an edge slips out of its fold.",
    meaning: "A felled seam has both edges folded into each other, two rows of stitching seen on both sides and no raw edge. \
        It needs a special machine and skill. From outside, two rows over a wrapped edge look the same, so look inside.",
    levels: &[
        Level {
            key: "overlock",
            name: "One wrapped edge only",
            line: "Thread wraps the raw edges; a single row holds the leg.",
            spans: &[],
            drawn: Some(Picture::JoinedSeam(JoinedSeam { join: Join::Overlock })),
        },
        Level {
            key: "overlock-plus",
            name: "Wrapped edge and a second row",
            line: "Raw edges wrapped in thread, plus one more straight row.",
            spans: &[],
            drawn: Some(Picture::JoinedSeam(JoinedSeam { join: Join::OverlockAndRow })),
        },
        Level {
            key: "felled",
            name: "Felled",
            line: "Edges folded into each other, two rows on both sides; perhaps a slip.",
            spans: &[],
            drawn: Some(Picture::JoinedSeam(JoinedSeam { join: Join::FelledRunOff })),
        },
        Level {
            key: "felled-flat",
            name: "Felled flat without a slip, or bound",
            line: "No raw edge anywhere, flat all along; or edges wrapped in tape.",
            spans: &[],
            drawn: Some(Picture::JoinedSeam(JoinedSeam { join: Join::Felled })),
        },
    ],
    seconds: 6,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 5, shares 18/40/34/8 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.6, thresholds: &[-1.49, 0.33, 2.29] },
        "A felled seam takes more machine time and a dearer machine than a wrapped one.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you turn out goods that are not yours, and feel for pins before you slide a hand in."),
    sources: &[&sources::JUDGEMENT, &sources::D6193, &sources::ISO_4916],
};

pub(in crate::catalog) static SEAT_YOKE: Check = Check {
    key: "seat-yoke",
    name: "Seat seam and yoke",
    question: "How are the seat seam and the yoke joined?",
    how: "Inside out, look at the seam down the middle of the seat and at the yoke, the shaped strip below the back waistband. \
        Then turn to the outside and look where yoke and seat seam cross.",
    meaning: "These seams take the strain when you sit. Folded edges last; a wrapped edge under neat rows only looks like it. \
        Meeting corners show care in cutting and sewing, but they do not make the seam stronger.",
    levels: &[
        Level {
            key: "overlock",
            name: "Wrapped edge, no row on top",
            line: "Raw edges wrapped in thread; outside you see no stitching.",
            spans: &[],
            drawn: Some(Picture::SeatYoke(SeatYoke { join: Join::Overlock, miss_mm: 5.0 })),
        },
        Level {
            key: "overlock-top",
            name: "Wrapped edge under neat rows",
            line: "Rows show outside, but a thread-wrapped raw edge inside.",
            spans: &[],
            drawn: Some(Picture::SeatYoke(SeatYoke { join: Join::MockFelled, miss_mm: 5.0 })),
        },
        Level {
            key: "felled",
            name: "Felled",
            line: "Edges folded in, two rows on both sides; corners may miss.",
            spans: &[],
            drawn: Some(Picture::SeatYoke(SeatYoke { join: Join::Felled, miss_mm: 5.0 })),
        },
        Level {
            key: "felled-met",
            name: "Felled, and corners meet",
            line: "As felled, and the yoke ends meet at the seat seam.",
            spans: &[],
            drawn: Some(Picture::SeatYoke(SeatYoke { join: Join::Felled, miss_mm: 0.0 })),
        },
    ],
    seconds: 6,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 4, shares 15/40/33/12 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.2, thresholds: &[-1.95, 0.24, 2.21] },
        "Felling a curve takes more minutes and skill than wrapping an edge.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::D6193, &sources::ISO_4916],
};

pub(in crate::catalog) static OUTSEAM_EDGE: Check = Check {
    key: "outseam-edge",
    name: "Edges of the outer seam",
    question: "How are the edges of the outer leg seam finished inside?",
    how: "Inside out, run a finger along the outer leg seam from hip to hem. See whether the cut edges fray, how closely \
        thread wraps them, and whether a second straight row runs beside the wrap.",
    meaning: "The finish decides whether the seam frays after many washes. A dense wrap with a separate straight row is a \
        sound everyday seam. A selvedge counts here only as one clean edge among others, not as a better seam.",
    levels: &[
        Level {
            key: "raw",
            name: "Raw or fraying",
            line: "Cut edges with loose yarns and nothing round them.",
            spans: &[],
            drawn: Some(Picture::OutseamEdge(OutseamEdge { edge: Edge::Raw, whole_leg: true })),
        },
        Level {
            key: "loose",
            name: "Loosely wrapped",
            line: "Thread round the edge, but gaps, or yarns poke out.",
            spans: &[],
            drawn: Some(Picture::OutseamEdge(OutseamEdge { edge: Edge::LooseOverlock, whole_leg: true })),
        },
        Level {
            key: "dense",
            name: "Densely wrapped, with its own seam row",
            line: "Close wrap, and a separate straight row beside it.",
            spans: &[],
            drawn: Some(Picture::OutseamEdge(OutseamEdge { edge: Edge::DenseOverlock, whole_leg: true })),
        },
        Level {
            key: "clean",
            name: "Bound or selvedge",
            line: "Edges wrapped in tape, or woven closed by the loom.",
            spans: &[],
            drawn: Some(Picture::OutseamEdge(OutseamEdge { edge: Edge::Bound, whole_leg: true })),
        },
    ],
    seconds: 5,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 3, shares 5/35/48/12 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Seams, slope: 0.9, thresholds: &[-3.71, -0.57, 2.65] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::ISO_4915, &sources::D6193],
};

pub(in crate::catalog) static BAG_SEAM: Check = Check {
    key: "bag-seam",
    name: "Seams of the pocket bags",
    question: "How are the pocket bags closed?",
    how: "Pull the front pocket bags out, or look at them inside out. Follow the curved edge round the bottom. Count rows of \
        stitching and see whether a raw edge is left.",
    meaning: "The bottom of the bag carries keys and coins. It is hidden in the shop, so makers save here first. A plain \
        wrapped edge is not wrong, but it opens sooner than a bag sewn twice.",
    levels: &[
        Level {
            key: "overlock",
            name: "One wrapped edge",
            line: "Thread wraps the raw edge, and nothing else holds it.",
            spans: &[],
            drawn: Some(Picture::BagSeam(BagSeam { closing: BagClosing::Overlock })),
        },
        Level {
            key: "safety",
            name: "Wrapped edge and a straight row",
            line: "Two kinds of stitching side by side, raw edge visible.",
            spans: &[],
            drawn: Some(Picture::BagSeam(BagSeam { closing: BagClosing::SafetyRow })),
        },
        Level {
            key: "clean",
            name: "Turned, bound or sewn twice",
            line: "Raw edge hidden inside the bag or under a tape.",
            spans: &[],
            drawn: Some(Picture::BagSeam(BagSeam { closing: BagClosing::Turned })),
        },
    ],
    seconds: 5,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 3, shares 30/50/20 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 0.9, thresholds: &[-1.18, 1.9] },
        "Turning or binding a bag adds a second pass at the machine.",
    ),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::ISO_4915],
};

pub(in crate::catalog) static WAISTBAND: Check = Check {
    key: "waistband",
    name: "The waistband",
    question: "How well does the waistband sit on the jeans?",
    how: "Close the button and lay the band flat. Look along both edges, inside and out: is the lower row caught on both \
        sides, do the ends form clean squares, does the top step at the closing?",
    meaning: "A band that ropes or gapes was fed badly or cut askew to the weave, and no pressing cures it. A curved band in \
        two parts is shaping, not a fault. Waves in stretch cloth belong to another question. It says nothing about fit.",
    levels: &[
        Level {
            key: "open",
            name: "Twisted, or not caught",
            line: "Ropes diagonally, or the row misses the band somewhere.",
            spans: &[],
            drawn: Some(Picture::Waistband(Waistband {
                step_mm: 0.0,
                width_off_mm: 0.0,
                twisted: true,
                caught: false,
                square: false,
            })),
        },
        Level {
            key: "uneven",
            name: "Uneven",
            line: "Width changes, or the ends step by 3 mm (⅛ in) or more.",
            spans: &[],
            drawn: Some(Picture::Waistband(Waistband {
                step_mm: 5.0,
                width_off_mm: 4.0,
                twisted: false,
                caught: true,
                square: false,
            })),
        },
        Level {
            key: "flat",
            name: "Flat and even",
            line: "Lies flat, one width, ends nearly level.",
            spans: &[],
            drawn: Some(Picture::Waistband(Waistband {
                step_mm: 1.5,
                width_off_mm: 0.0,
                twisted: false,
                caught: true,
                square: false,
            })),
        },
        Level {
            key: "square",
            name: "Flat, square and level",
            line: "As flat; ends are crisp squares and level when closed.",
            spans: &[],
            drawn: Some(Picture::Waistband(Waistband {
                step_mm: 0.0,
                width_off_mm: 0.0,
                twisted: false,
                caught: true,
                square: true,
            })),
        },
    ],
    seconds: 8,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    // Power 3, shares 8/34/44/14 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Seams, slope: 0.9, thresholds: &[-3.17, -0.46, 2.44] }),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static HEM_STITCH: Check = Check {
    key: "hem-stitch",
    name: "Hem stitch",
    question: "How is the leg hem sewn?",
    how: "Feel the hem for pins with your thumb from outside first. Then turn it up. See whether the edge is folded twice or \
        only wrapped, and whether the stitches look alike on both faces.",
    meaning: "The same line on both faces is lockstitch. A line outside and a small rope of loops inside is chain stitch; it \
        fades in slanting ridges, which some people love. Neither is the better hem. A hem cut raw by design: choose can’t \
        tell.",
    levels: &[
        Level {
            key: "wrapped",
            name: "Edge wrapped, turned up once",
            line: "Thread wraps the raw edge, and you can see it inside.",
            spans: &[],
            drawn: Some(Picture::Hem(Hem { stitch: HemStitch::Wrapped, roping: 0.0 })),
        },
        Level {
            key: "lock",
            name: "Folded twice, lockstitch",
            line: "No raw edge; the same line of stitches on both faces.",
            spans: &[],
            drawn: Some(Picture::Hem(Hem { stitch: HemStitch::Lock, roping: 0.0 })),
        },
        Level {
            key: "chain",
            name: "Folded twice, chain stitch",
            line: "No raw edge; a small rope of loops runs inside.",
            spans: &[],
            drawn: Some(Picture::Hem(Hem { stitch: HemStitch::Chain, roping: 0.0 })),
        },
    ],
    seconds: 5,
    stage: Stage::InHand,
    aspect: Aspect::Making,
    speaks: Speaks::Cost(
        "A second fold and a chain-stitch hemming machine cost a few cents more; much of the talk about them is style.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("New goods can hold pins or broken needles: feel the hem from outside before you put a finger in."),
    sources: &[&sources::ISO_4915, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static CUTTING: Check = Check {
    key: "cutting",
    name: "Cutting and matching",
    question: "How was the cloth cut and matched?",
    how: "If the cloth has a stripe or check, look whether it runs on across back pockets, fly and outer seams. If it is \
        plain, look for extra joins in waistband, fly and inner leg.",
    meaning: "Small parts joined from scraps save cloth and can be as strong as whole ones. A matched pattern costs cloth and \
        minutes. Both are choices of cost. A seam that shapes the leg or seat is design, not piecing.",
    levels: &[
        Level {
            key: "pieced",
            name: "Pieced from scraps",
            line: "Extra joins in waistband, fly or leg that shape nothing.",
            spans: &[],
            drawn: Some(Picture::Matching(Matching { miss_mm: 0.0, pattern: false, pieced: true })),
        },
        Level {
            key: "plain",
            name: "Plain cloth, whole parts",
            line: "No pattern to match, and no joins without a reason.",
            spans: &[],
            drawn: Some(Picture::Matching(Matching { miss_mm: 0.0, pattern: false, pieced: false })),
        },
        Level {
            key: "falls",
            name: "Pattern, hardly matched",
            line: "A stripe or check that meets in some places or nowhere.",
            spans: &[],
            drawn: Some(Picture::Matching(Matching { miss_mm: 6.0, pattern: true, pieced: false })),
        },
        Level {
            key: "meets",
            name: "Pattern, matched throughout",
            line: "Pockets nearly vanish into the stripe or check.",
            spans: &[],
            drawn: Some(Picture::Matching(Matching { miss_mm: 0.0, pattern: true, pieced: false })),
        },
    ],
    seconds: 10,
    stage: Stage::OnTheHanger,
    aspect: Aspect::Making,
    speaks: Speaks::Cost("Piecing saves cloth; matching a stripe or check uses more cloth and more cutting time."),
    instruments: &[],
    asked_when: None,
    caution: None,
    sources: &[&sources::COMMON_PRACTICE],
};
