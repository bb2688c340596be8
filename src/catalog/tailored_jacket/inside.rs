//! The tailored jacket, its inside: lining, and the cloth that seams have to spare.

use crate::catalog::sources;
use crate::check::{Check, Level, Span, Speaks};
use crate::grading::{Curve, Group};
use crate::measure;
use crate::specimen::{LiningHem, Picture, SpareCloth};
use crate::trade::{Aspect, Stage};

pub(in crate::catalog) static LINING: Check = Check {
    key: "lining",
    name: "Hang of the lining",
    question: "How much ease has the lining, and how is it sewn?",
    how: "Turn the jacket inside out. Look for a pleat down the middle of the back, and lift the lining at the hem: a fold of it \
        should hang over its own seam. Look at its joins round the armholes.",
    meaning: "Lining tears first, at armhole and back, when it has nothing to give. A fold at the hem and a pleat let it move. A \
        jacket lined in part can be as good, if its seams are bound. Printed or shiny lining is no stronger for that.",
    levels: &[
        Level {
            key: "tight",
            name: "None: it pulls or hangs out",
            line: "It drags the hem up, or shows below it.",
            spans: &[],
            drawn: Some(Picture::LiningHem(LiningHem::HangsOut)),
        },
        Level {
            key: "no-ease",
            name: "None: sewn down flat",
            line: "No fold at the hem, no pleat in the back.",
            spans: &[],
            drawn: Some(Picture::LiningHem(LiningHem::Tight)),
        },
        Level {
            key: "eased",
            name: "Enough",
            line: "A fold at the hem and a pleat; joins are smooth.",
            spans: &[],
            drawn: Some(Picture::LiningHem(LiningHem::Eased)),
        },
        Level {
            key: "eased-fine",
            name: "Enough, finely sewn, strong cloth",
            line: "As above, with tiny stitches and dense smooth cloth.",
            spans: &[],
            drawn: Some(Picture::LiningHem(LiningHem::EasedFine)),
        },
    ],
    seconds: 12,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 4, shares 10/38/38/14 of 100 new pieces: judgement.
    speaks: Speaks::Both(
        Curve { group: Group::Seams, slope: 1.2, thresholds: &[-2.41, -0.09, 2.03] },
        "Viscose or cupro lining costs two to four times as much as thin polyester, and ease takes minutes.",
    ),
    instruments: &[],
    asked_when: None,
    caution: Some("Ask before you turn out goods that are not yours, and feel for pins before you slide a hand into a sleeve."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};

pub(in crate::catalog) static ALLOWANCE: Check = Check {
    key: "allowance",
    name: "Cloth to spare inside seams",
    question: "How much cloth is left beside the back and side seams?",
    how: "Where the lining is open, or through it with your fingers, find the seam down the middle of the back. Feel or measure how \
        much cloth lies beyond the stitching on one side. Take the side seam too.",
    meaning: "Spare cloth (seam allowance) lets a tailor let the jacket out and is left by makers who expect that. An allowance you \
        cannot reach is no fault: choose can’t tell. It does not make the seam stronger, and half-lined jackets may keep less.",
    levels: &[
        Level {
            key: "none",
            name: "None",
            line: "Under 3 mm (⅛ in): cut off beside the stitching.",
            spans: &[Span { low: f64::NEG_INFINITY, high: 3.0 }],
            drawn: Some(Picture::SpareCloth(SpareCloth { width_mm: 2.0, finished: false })),
        },
        Level {
            key: "under-1",
            name: "Under 1 cm",
            line: "3 to 10 mm (⅛ to ⅜ in).",
            spans: &[Span { low: 3.0, high: 10.0 }],
            drawn: Some(Picture::SpareCloth(SpareCloth { width_mm: 7.0, finished: false })),
        },
        Level {
            key: "1-to-2",
            name: "1 to 2 cm",
            line: "10 to 20 mm (⅜ to ¾ in).",
            spans: &[Span { low: 10.0, high: 20.0 }],
            drawn: Some(Picture::SpareCloth(SpareCloth { width_mm: 15.0, finished: false })),
        },
        Level {
            key: "over-2",
            name: "Over 2 cm, edges finished",
            line: "More than 20 mm (¾ in), and nothing frays.",
            spans: &[Span { low: 20.0, high: f64::INFINITY }],
            drawn: Some(Picture::SpareCloth(SpareCloth { width_mm: 24.0, finished: true })),
        },
    ],
    seconds: 8,
    stage: Stage::InsideOut,
    aspect: Aspect::Making,
    // Power 3, shares 25/38/27/10 of 100 new pieces: judgement.
    speaks: Speaks::Quality(Curve { group: Group::Seams, slope: 0.9, thresholds: &[-1.52, 0.75, 2.89] }),
    instruments: &[&measure::SPARE_CLOTH],
    asked_when: None,
    caution: Some("Do not open a seam or a lining to look. Feel for pins first."),
    sources: &[&sources::JUDGEMENT, &sources::COMMON_PRACTICE],
};
