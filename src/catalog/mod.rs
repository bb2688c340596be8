//! The content: families and their checks. Data only: no functions, no arithmetic, no conditions.

pub mod cautions;
mod family;
pub mod jeans;
pub mod sources;

pub use family::{FAMILIES, Family};
pub use sources::SOURCES;
