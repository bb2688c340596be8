//! Dresses and skirts that somebody wore before: which checks of wear are put, and where to look.

use crate::catalog::second_hand::{
    ALTERED, COLOUR, FASTENING, KEPT, LINING, Look, MENDS, PILLS, RUBBED, SEAMS, STAINS, STRETCH, THIN,
};

pub(super) static LOOKS: [Look; 12] = [
    Look { condition: &STAINS, at: "Neck, armpits, front of the skirt, hem." },
    Look { condition: &KEPT, at: "" },
    Look { condition: &RUBBED, at: "Seat, sides under the arms, hem, edge of the neck." },
    Look { condition: &THIN, at: "Seat, and under the arms." },
    Look { condition: &PILLS, at: "Sides under the arms, hips." },
    Look { condition: &COLOUR, at: "Inside of the hem against the shoulder or front." },
    Look { condition: &SEAMS, at: "Waist, sides at the hips, armholes, above a slit." },
    Look { condition: &MENDS, at: "" },
    Look { condition: &FASTENING, at: "" },
    Look { condition: &STRETCH, at: "Elastic at waist, cuffs or neck; cloth that gives." },
    Look { condition: &ALTERED, at: "" },
    Look { condition: &LINING, at: "" },
];
