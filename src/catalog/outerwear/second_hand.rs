//! Outerwear that somebody wore before: which checks of wear are put, and where to look.

use crate::catalog::second_hand::{
    ALTERED, COLOUR, FASTENING, KEPT, LINING, Look, MENDS, PILLS, RUBBED, SEAMS, STAINS, STRETCH, THIN,
};

pub(super) static LOOKS: [Look; 12] = [
    Look { condition: &STAINS, at: "Collar, cuffs, pocket edges, front." },
    Look { condition: &KEPT, at: "Wool draws moths, a damp cupboard mould: look under collar and in pockets." },
    Look { condition: &RUBBED, at: "Cuffs, elbows, collar fold, pocket edges, hem. Peeling coating counts as face worn off." },
    Look { condition: &THIN, at: "Elbows and cuffs, where one layer can be held alone; else skip this." },
    Look { condition: &PILLS, at: "Wool and fleece: sides under the arms, below a bag’s strap." },
    Look { condition: &COLOUR, at: "Under a flap or collar against the shoulder." },
    Look { condition: &SEAMS, at: "Armholes, pocket corners, vent, foot of the zip." },
    Look { condition: &MENDS, at: "" },
    Look { condition: &FASTENING, at: "" },
    Look { condition: &STRETCH, at: "Elastic at cuffs, hem and hood; knitted ribs." },
    Look { condition: &ALTERED, at: "" },
    Look { condition: &LINING, at: "" },
];
