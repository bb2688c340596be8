//! Woven shirts that somebody wore before: which checks of wear are put, and where to look.

use crate::catalog::second_hand::{ALTERED, COLOUR, FASTENING, KEPT, Look, MENDS, PILLS, RUBBED, SEAMS, STAINS, THIN};

pub(super) static LOOKS: [Look; 10] = [
    Look { condition: &STAINS, at: "Collar fold, armpits, cuffs, front." },
    Look { condition: &KEPT, at: "" },
    Look { condition: &RUBBED, at: "Collar fold, edges of the cuffs, elbows." },
    Look { condition: &THIN, at: "Elbows, and the back below the yoke." },
    Look { condition: &PILLS, at: "Inside of the collar, sides under the arms." },
    Look { condition: &COLOUR, at: "Under the collar against the shoulder." },
    Look { condition: &SEAMS, at: "Armholes, across the back, sides at the chest." },
    Look { condition: &MENDS, at: "" },
    Look { condition: &FASTENING, at: "" },
    Look { condition: &ALTERED, at: "" },
];
