//! Tailored jackets that somebody wore before: which checks of wear are put, and where to look.

use crate::catalog::second_hand::{ALTERED, COLOUR, FASTENING, KEPT, LINING, Look, MENDS, PILLS, RUBBED, SEAMS, STAINS, THIN};

pub(super) static LOOKS: [Look; 11] = [
    Look { condition: &STAINS, at: "Lapels, collar fold, pockets, front." },
    Look { condition: &KEPT, at: "Wool and hair draw moths: look under collar and lapels." },
    Look { condition: &RUBBED, at: "Cuffs, elbows, collar fold, pocket edges." },
    Look { condition: &THIN, at: "Elbows, where no lining lies behind." },
    Look { condition: &PILLS, at: "Sides under the arms, below a bag’s strap." },
    Look { condition: &COLOUR, at: "Under the collar against the shoulder." },
    Look { condition: &SEAMS, at: "Middle of the back, armholes, pocket corners." },
    Look { condition: &MENDS, at: "" },
    Look { condition: &FASTENING, at: "" },
    Look { condition: &ALTERED, at: "" },
    Look { condition: &LINING, at: "" },
];
