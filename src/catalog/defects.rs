//! Defects that every piece is looked over for, whatever it is; those of one family stand in its folder. Classes are common practice, no
//! single source: a buyer may class them otherwise.

use crate::lot::Defect;

/// Of any piece, gravest first.
pub static ANY: [Defect; 16] = [
    Defect::critical("sharp-metal", "Broken needle, pin, sharp metal"),
    Defect::critical("mould-or-smell", "Mould, insects, a smell that stings"),
    Defect::critical("label-missing", "Fibre, care or origin label missing or wrong"),
    Defect::critical("childs-cord", "For a child: cord at hood or neck, part that comes off"),
    Defect::major("hole", "Hole, cut or broken yarn"),
    Defect::major("open-seam", "Open seam, raw edge out, seam slips"),
    Defect::major("chain-skip", "Skipped stitch in a chain seam"),
    Defect::major("broken-stitch", "Broken stitch"),
    Defect::major("shade", "Parts differ in shade"),
    Defect::major("stain", "Stain seen from 60 cm, front"),
    Defect::major("out-of-measure", "A main measure outside its tolerance"),
    Defect::major("button-or-zip", "Button missing, zip dead"),
    Defect::major("gathered-seam", "Seam gathered, below grade 3"),
    Defect::minor("thread-inside", "Loose thread over 1 cm, inside"),
    Defect::minor("thread-outside", "Loose thread over 3 cm, outside"),
    Defect::minor("small-mark", "Small mend, thick place, dirty mark inside"),
];
