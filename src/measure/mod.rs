//! Instruments: what a person reads off a ruler, a scale or a count, and the estimate with its spread that follows.

mod cloth_mass;
mod direct;
mod instrument;
mod list;
mod seam;
mod seam_kind;
mod sewing_time;
pub mod sources;
mod stitch_density;
mod stitch_marks;
mod thread_count;
mod weight_names;
mod yarn;

pub use cloth_mass::{
    CLOTH_MASS_BUILT, CLOTH_MASS_COMPARED, CLOTH_MASS_WEIGHED, JeansMeasures, jeans_area, mass_after_shrinking,
    mass_from_threads, mass_from_weighing,
};
pub use direct::{CLOTH_MASS, GIVE, GROWTH, LEG_TWIST, LOOSE_ENDS, TACKS};
pub use instrument::{Also, Choice, Fault, Input, InputKind, Instrument, Needed, Outcome};
pub use list::INSTRUMENTS;
pub use seam::{
    Force, ForcePerLength, SEAM_STRENGTH, StrongStitch, THREAD_USE, on_50_mm, pounds_force, seam_strength, thread_by_geometry,
    thread_by_unravelling,
};
pub use seam_kind::{
    BACK, EDGE, Look, ROWS, SEAM_CLASSES, STITCH_TYPES, SeamClass, StitchType, seam_class_of, stitches_that_look_so,
};
pub use sewing_time::{JEANS, Operation, SEWING_TIME, needle_time, seam_in_a_minute};
pub use stitch_density::{
    STITCH_DENSITY, density_after_shrinking, density_of_stitch_length, length_that_tells, one_stitch_more_or_less, stitch_length,
};
pub use stitch_marks::{MarksFault, STITCH_COMB, STITCH_TAPS, Taps, density_from_comb, density_from_taps};
pub use thread_count::{CLOTH_COVER, THREAD_COUNT, cloth_cover, cover_factor, cover_factor_si, twill_angle};
pub use weight_names::{WeightName, WeightScale};
pub use yarn::{MassPerLength, YARN, YarnSystem, cotton_ticket, metric_ticket};
