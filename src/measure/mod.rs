//! Instruments: what a person reads off a ruler, a scale or a count, and the estimate with its spread that follows.

mod cloth_mass;
mod cloth_points;
mod direct;
mod girth;
mod give;
mod grades;
mod instrument;
mod knit;
mod list;
mod live_comb;
mod photo_readings;
mod screen_scale;
mod seam;
mod seam_kind;
mod sewing_time;
mod shrinkage;
pub mod sources;
mod stitch_density;
mod stitch_marks;
mod thread_count;
mod twist;
mod weight_names;
mod yarn;

pub use cloth_mass::{
    CLOTH_MASS_BUILT, CLOTH_MASS_COMPARED, CLOTH_MASS_WEIGHED, JeansMeasures, jeans_area, mass_after_shrinking,
    mass_from_threads, mass_from_weighing,
};
pub use cloth_points::CLOTH_POINTS;
pub use direct::{CLOTH_MASS, HEM_ROUND, LOOSE_ENDS, SPARE_CLOTH, TACKS};
pub use girth::{
    DOUBLED, GIRTH, ONE_READING_MM, PRIOR_FREEDOM, PointOfMeasure, girth_of_flat, length_of_readings, mean_of_readings, taped,
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
pub use knit::{KNIT_GAUGE, RIB_RETURN};
pub use list::INSTRUMENTS;
pub use live_comb::STITCH_COMB_LIVE;
pub use photo_readings::{
    MarkedYarn, PhotoSpread, RUB_OFF_PHOTO, STITCH_PHOTO, THREAD_COUNT_PHOTO, TWILL_PHOTO, rub_off_photo_readings,
    stitch_photo_readings, thread_count_photo_readings, twill_photo_readings,
};
pub use screen_scale::{CARD, COINS, Known, ScaleFault, ScreenScale, known};
pub use seam::{
    Force, ForcePerLength, SEAM_STRENGTH, StrongStitch, THREAD_USE, on_50_mm, pounds_force, seam_strength, thread_by_geometry,
    thread_by_unravelling,
};
pub use seam_kind::{
    BACK, EDGE, Look, ROWS, SEAM_CLASSES, STITCH_TYPES, SeamClass, StitchType, seam_class_of, seams_that_look_so,
    stitches_that_look_so,
};
pub use sewing_time::{JEANS, Operation, SEWING_TIME, needle_time, seam_in_a_minute};
pub use shrinkage::{
    CLOTHS_BEFORE_WASH, ChangeRange, ClothBeforeWash, Drying, SHRINKAGE, SHRINKAGE_TO_EXPECT, Warmth, change_of_washes,
    dimensional_change, expected_change, size_after, size_to_buy,
};
pub use stitch_density::{
    STITCH_DENSITY, density_after_shrinking, density_as_sewn, density_of_stitch_length, length_that_tells,
    one_stitch_more_or_less, stitch_length,
};
pub use stitch_marks::{MarksFault, STITCH_COMB, STITCH_TAPS, Taps, density_from_comb, density_from_taps};
pub use thread_count::{CLOTH_COVER, THREAD_COUNT, cloth_cover, cover_factor, cover_factor_si, twill_angle};
pub use twist::{LEG_TWIST, SEAM_TWIST, TWISTED_LEG_MM, lean, seam_twist, skew, skew_of_diagonals};
pub use weight_names::{WeightName, WeightScale};
pub use yarn::{MassPerLength, YARN, YarnSystem, cotton_ticket, metric_ticket};
