//! Outerwear that somebody wore before: which checks of wear are put, and where to look.

use crate::catalog::second_hand::{
    ALTERED, COLOUR, FASTENING, KEPT, LINING, Look, MENDS, PILLS, RUBBED, SEAMS, STAINS, STRETCH, THIN,
};

pub(super) static LOOKS: [Look; 12] = [
    Look { condition: &STAINS, at: "Collar, cuffs, front, pocket mouths." },
    Look { condition: &KEPT, at: "Under the collar and in pockets; smell for old coating that has gone sharp or sticky." },
    Look { condition: &RUBBED, at: "Cuffs, hem, elbows, where a bag hung." },
    Look { condition: &THIN, at: "Elbows, shoulders, seat." },
    Look { condition: &PILLS, at: "Wool: sides under the arms, where a bag hung." },
    Look { condition: &COLOUR, at: "Under the collar against the shoulder." },
    Look { condition: &SEAMS, at: "Armpits, pockets; tape inside a rain jacket." },
    Look { condition: &MENDS, at: "Patches on shell and padding." },
    Look { condition: &FASTENING, at: "The main zip from end to end, then snaps and cords." },
    Look { condition: &STRETCH, at: "Cuffs and hood." },
    Look { condition: &LINING, at: "Armpits, pocket bags, neck." },
    Look { condition: &ALTERED, at: "" },
];
