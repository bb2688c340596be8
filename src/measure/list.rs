//! Every instrument there is, in the order in which the bench shows them.

use super::*;

/// All instruments; their keys are unique.
pub static INSTRUMENTS: &[&Instrument] = &[
    // Ruler and count.
    &STITCH_DENSITY,
    &STITCH_TAPS,
    &STITCH_COMB,
    &STITCH_COMB_LIVE,
    &LOOSE_ENDS,
    &TACKS,
    // Seams.
    &SEAM_STRENGTH,
    &THREAD_USE,
    &SEWING_TIME,
    &SPARE_CLOTH,
    // Cloth.
    &CLOTH_MASS,
    &CLOTH_MASS_WEIGHED,
    &CLOTH_MASS_BUILT,
    &CLOTH_MASS_COMPARED,
    &THREAD_COUNT,
    &CLOTH_COVER,
    &YARN,
    &KNIT_GAUGE,
    &CLOTH_POINTS,
    // Stretch, shrinkage and twist.
    &GIVE,
    &GROWTH,
    &STRETCH_AND_RECOVERY,
    &RIB_RETURN,
    &SHRINKAGE,
    &SHRINKAGE_TO_EXPECT,
    &LEG_TWIST,
    &SEAM_TWIST,
    // Tape.
    &GIRTH,
    &HEM_ROUND,
    // From a photograph.
    &STITCH_PHOTO,
    &THREAD_COUNT_PHOTO,
    &TWILL_PHOTO,
    &RUB_OFF_PHOTO,
    // Grades by eye, and by colour meter.
    &RUB_OFF,
    &COLOUR_CHANGE,
    &SEAM_SMOOTHNESS,
    &PILLING,
    &STAINING_BY_METER,
    &COLOUR_CHANGE_BY_METER,
];
