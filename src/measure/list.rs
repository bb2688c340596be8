//! Every instrument there is, in the order in which the bench shows them.

use super::{CLOTH_MASS, GIVE, GROWTH, Instrument, LEG_TWIST, LOOSE_ENDS, STITCH_DENSITY, TACKS};

/// All instruments; their keys are unique.
pub static INSTRUMENTS: &[&Instrument] = &[
    // Ruler and count.
    &STITCH_DENSITY,
    &LOOSE_ENDS,
    &TACKS,
    // Cloth.
    &CLOTH_MASS,
    // Stretch, shrinkage and twist.
    &GIVE,
    &GROWTH,
    &LEG_TWIST,
];
