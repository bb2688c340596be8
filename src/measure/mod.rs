//! Instruments: what a person reads off a ruler, a scale or a count, and the estimate with its spread that follows.

mod direct;
mod girth;
mod give;
mod grades;
mod instrument;
mod list;
mod shrinkage;
pub mod sources;
mod stitch_density;
mod twist;

pub use direct::{CLOTH_MASS, LOOSE_ENDS, TACKS};
pub use girth::{
    GIRTH, JEANS_POINTS, ONE_READING_MM, PRIOR_FREEDOM, PointOfMeasure, girth_of_flat, length_of_readings, mean_of_readings,
};
pub use give::{
    ExpectedGive, GIVE, GROWTH, STRETCH_AND_RECOVERY, STRETCH_CLASSES, StretchClass, expected_give, growth, recovery_of_length,
    recovery_of_stretch, stretch, stretch_classes_of,
};
pub use grades::{
    COLOUR_CHANGE, COLOUR_CHANGE_BY_METER, COLOUR_CHANGE_SCALE, GRADE_SPREAD, GREY_STEPS, Grade, GradeScale, GreyStep, Lab,
    PILLING, PILLING_SCALE, RUB_OFF, RUB_OFF_SCALE, SEAM_SMOOTHNESS, SEAM_SMOOTHNESS_SCALE, STAINING_BY_METER, USUAL_RUB_OFF,
    UsualRubOff, change_difference, change_grade, change_grade_by_table, staining_difference, staining_grade,
};
pub use instrument::{Also, Choice, Fault, Input, InputKind, Instrument, Needed, Outcome};
pub use list::INSTRUMENTS;
pub use shrinkage::{
    CLOTHS_BEFORE_WASH, ChangeRange, ClothBeforeWash, Drying, SHRINKAGE, SHRINKAGE_TO_EXPECT, Warmth, change_of_washes,
    dimensional_change, expected_change, size_after, size_to_buy,
};
pub use stitch_density::{
    STITCH_DENSITY, density_after_shrinking, density_of_stitch_length, one_stitch_more_or_less, stitch_length,
};
pub use twist::{LEG_TWIST, SEAM_TWIST, TWISTED_LEG_MM, lean, seam_twist, skew, skew_of_diagonals};
