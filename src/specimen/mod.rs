//! Drawn cloth, seams and faults with a known truth: the pictures beside answers, and what practice is made of.

/// What a specimen shows, and how much of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Picture {}
