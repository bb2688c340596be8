//! Instruments: what a person reads off a ruler, a scale or a count, and the estimate with its spread that follows.

mod direct;
mod instrument;
mod list;
pub mod sources;
mod stitch_density;

pub use direct::{CLOTH_MASS, GIVE, GROWTH, LEG_TWIST, LOOSE_ENDS, TACKS};
pub use instrument::{Also, Choice, Fault, Input, InputKind, Instrument, Needed, Outcome};
pub use list::INSTRUMENTS;
pub use stitch_density::{
    STITCH_DENSITY, density_after_shrinking, density_of_stitch_length, one_stitch_more_or_less, stitch_length,
};
