//! The screens.

pub mod behind;
pub mod bench;
pub mod checks;
pub mod details;
pub mod live;
pub mod marks;
pub mod numbers;
pub mod picture;
pub mod rack;
pub mod result;
pub mod ruler;
pub mod seam_kind;
pub mod settings;
pub mod start;
pub mod tape_sheet;
pub mod walk;
