//! Every instrument there is, in the order in which the bench shows them.

use super::{CLOTH_MASS, Instrument, LOOSE_ENDS, STITCH_DENSITY, TACKS};
use super::{
    COLOUR_CHANGE, COLOUR_CHANGE_BY_METER, GIRTH, GIVE, GROWTH, LEG_TWIST, PILLING, RUB_OFF, SEAM_SMOOTHNESS, SEAM_TWIST,
    SHRINKAGE, SHRINKAGE_TO_EXPECT, STAINING_BY_METER, STRETCH_AND_RECOVERY,
};

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
    &STRETCH_AND_RECOVERY,
    &SHRINKAGE,
    &SHRINKAGE_TO_EXPECT,
    &LEG_TWIST,
    &SEAM_TWIST,
    // Tape.
    &GIRTH,
    // Grades by eye, and by colour meter.
    &RUB_OFF,
    &COLOUR_CHANGE,
    &SEAM_SMOOTHNESS,
    &PILLING,
    &STAINING_BY_METER,
    &COLOUR_CHANGE_BY_METER,
];
