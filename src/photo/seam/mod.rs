//! Stitches counted along a seam: a strip is cut along it, what repeats in it is found, and each stitch is put in its place, or a reason is given.

mod count;
mod pitch;
mod place;
mod refusal;
mod signal;
mod spectrum;
mod strip;
mod track;

pub use count::{Cause, Part, Said, SeamCount, Stitch, count};
pub use refusal::SeamRefusal;
