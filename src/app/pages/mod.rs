//! The screens.

pub mod checks;
pub mod details;
pub mod numbers;
pub mod rack;
pub mod result;
pub mod settings;
pub mod start;
pub mod walk;
