//! Yarns per centimetre and the angle of a twill, from a picture taken close.

mod lattice;
mod read;
mod spectrum2d;

#[cfg(test)]
mod drawn;
#[cfg(test)]
mod tests;

pub use read::{WeaveReading, WeaveRefusal, yarns};
