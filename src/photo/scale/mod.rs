//! How large things in the picture are: from a card, a ruler, a coin, or two marks and the distance between them.

mod card;
mod coin;
mod comb;
mod ellipse;
mod linear;
mod marks;
mod object;
mod ruler;
mod strip;
mod ticks;

pub use object::{Drift, Graduation, Object, Scale, ScaleFault, scale};
