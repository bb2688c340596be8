//! Jeans that somebody wore before: which checks of wear are put, and where to look.

use crate::catalog::second_hand::{ALTERED, COLOUR, FASTENING, KEPT, Look, MENDS, RUBBED, SEAMS, STAINS, STRETCH, THIN};

pub(super) static LOOKS: [Look; 10] = [
    Look { condition: &STAINS, at: "Front of the thighs, seat, inside of the waistband." },
    Look { condition: &KEPT, at: "" },
    Look { condition: &RUBBED, at: "Inner thighs, seat, knees, pocket edges, backs of the hems." },
    Look { condition: &THIN, at: "Inner thighs, seat and knees." },
    Look { condition: &COLOUR, at: "Inside of the hem against the knee." },
    Look { condition: &SEAMS, at: "Seat seam, where the legs meet, sides of the hips." },
    Look { condition: &MENDS, at: "" },
    Look { condition: &FASTENING, at: "" },
    Look { condition: &STRETCH, at: "Knee and seat; the back of the waist." },
    Look { condition: &ALTERED, at: "" },
];
