//! Belief about quality: what answers say together, what one more answer would be worth, what each answer moved.

mod curve;

pub use curve::{Curve, Group};
