//! Defects that every piece is looked over for, whatever it is; those of one family stand in its folder. Classes are common practice, no
//! single source: a buyer may class them otherwise.

use crate::lot::{Defect, Severity};

const fn defect(key: &'static str, name: &'static str, severity: Severity) -> Defect {
    Defect { key, name, severity }
}

/// A defect that can hurt somebody or may not be sold.
pub(super) const fn critical(key: &'static str, name: &'static str) -> Defect {
    defect(key, name, Severity::Critical)
}

/// A defect for which a piece would be brought back.
pub(super) const fn major(key: &'static str, name: &'static str) -> Defect {
    defect(key, name, Severity::Major)
}

/// A defect that spoils the looks a little.
pub(super) const fn minor(key: &'static str, name: &'static str) -> Defect {
    defect(key, name, Severity::Minor)
}

/// Of any piece, gravest first.
pub static ANY: [Defect; 16] = [
    critical("sharp-metal", "Broken needle, pin, sharp metal"),
    critical("mould-or-smell", "Mould, insects, a smell that stings"),
    critical("label-missing", "Fibre, care or origin label missing or wrong"),
    critical("childs-cord", "For a child: cord at hood or neck, part that comes off"),
    major("hole", "Hole, cut or broken yarn"),
    major("open-seam", "Open seam, raw edge out, seam slips"),
    major("chain-skip", "Skipped stitch in a chain seam"),
    major("broken-stitch", "Broken stitch"),
    major("shade", "Parts differ in shade"),
    major("stain", "Stain seen from 60 cm, front"),
    major("out-of-measure", "A main measure outside its tolerance"),
    major("button-or-zip", "Button missing, zip dead"),
    major("gathered-seam", "Seam gathered, below grade 3"),
    minor("thread-inside", "Loose thread over 1 cm, inside"),
    minor("thread-outside", "Loose thread over 3 cm, outside"),
    minor("small-mark", "Small mend, thick place, dirty mark inside"),
];
