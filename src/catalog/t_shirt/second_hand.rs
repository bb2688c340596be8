//! T-shirts that somebody wore before: which checks of wear are put, and where to look.

use crate::catalog::second_hand::{ALTERED, COLOUR, KEPT, Look, MENDS, PILLS, RUBBED, SEAMS, STAINS, STRETCH, THIN};

pub(super) static LOOKS: [Look; 10] = [
    Look { condition: &STAINS, at: "Neck, armpits, chest." },
    Look { condition: &KEPT, at: "" },
    Look { condition: &RUBBED, at: "Neck edge, shoulders under a bag’s strap, hem." },
    Look { condition: &THIN, at: "Belly above the belt, shoulders." },
    Look { condition: &PILLS, at: "Belly, sides under the arms." },
    Look { condition: &COLOUR, at: "Inside of the hem against the shoulder." },
    Look { condition: &SEAMS, at: "Shoulder seams, armpits, neck." },
    Look { condition: &MENDS, at: "" },
    Look { condition: &STRETCH, at: "The rib of the neck, and the hem." },
    Look { condition: &ALTERED, at: "" },
];
