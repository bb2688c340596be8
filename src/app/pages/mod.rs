//! The screens.

pub mod bench;
pub mod checks;
pub mod details;
pub mod marks;
pub mod numbers;
pub mod rack;
pub mod result;
pub mod ruler;
pub mod settings;
pub mod start;
pub mod walk;
