//! Sweaters that somebody wore before: which checks of wear are put, and where to look.

use crate::catalog::second_hand::{ALTERED, COLOUR, FASTENING, KEPT, Look, MENDS, PILLS, RUBBED, SEAMS, STAINS, STRETCH, THIN};

pub(super) static LOOKS: [Look; 11] = [
    Look { condition: &STAINS, at: "Neck, cuffs, armpits, front." },
    Look { condition: &KEPT, at: "Wool and hair draw moths: look under collar and arms." },
    Look { condition: &RUBBED, at: "Elbows, cuffs, sides under the arms." },
    Look { condition: &THIN, at: "Elbows and cuffs." },
    Look { condition: &PILLS, at: "Sides under the arms, cuffs, belly." },
    Look { condition: &COLOUR, at: "Inside of the hem against the shoulder." },
    Look { condition: &SEAMS, at: "Armpits, shoulders, neck." },
    Look { condition: &MENDS, at: "" },
    Look { condition: &FASTENING, at: "Cardigans; skip this for a pullover without any." },
    Look { condition: &STRETCH, at: "Ribs of cuffs, hem and neck." },
    Look { condition: &ALTERED, at: "" },
];
