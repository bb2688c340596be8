//! The screens.

pub mod bench;
pub mod checks;
pub mod details;
pub mod marks;
pub mod numbers;
pub mod rack;
pub mod result;
pub mod ruler;
pub mod seam_kind;
pub mod settings;
pub mod start;
pub mod tape_sheet;
pub mod walk;
