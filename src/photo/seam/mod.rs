//! Stitches counted along a seam: a strip is cut along it, what repeats in it is found, and each stitch is put in its place, or a reason is given.

mod agree;
mod count;
mod pitch;
mod place;
mod reach;
mod reading;
mod refusal;
mod signal;
mod spectrum;
mod strip;
mod told;
mod track;
mod view;

pub use count::count;
pub use refusal::SeamRefusal;
pub use told::{Cause, Part, Said, SeamCount, Stitch};
