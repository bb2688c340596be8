//! Every instrument there is, in the order in which the bench shows them.

use super::*;

/// All instruments; their keys are unique.
pub static INSTRUMENTS: &[&Instrument] = &[
    // Ruler and count.
    &STITCH_DENSITY,
    &STITCH_TAPS,
    &STITCH_COMB,
    &LOOSE_ENDS,
    &TACKS,
    // Seams.
    &SEAM_STRENGTH,
    &THREAD_USE,
    &SEWING_TIME,
    // Cloth.
    &CLOTH_MASS,
    &CLOTH_MASS_WEIGHED,
    &CLOTH_MASS_BUILT,
    &CLOTH_MASS_COMPARED,
    &THREAD_COUNT,
    &CLOTH_COVER,
    &YARN,
    // Stretch, shrinkage and twist.
    &GIVE,
    &GROWTH,
    &LEG_TWIST,
];
