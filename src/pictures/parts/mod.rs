//! What the two pages are made of.

pub mod camera;
pub mod comb_stage;
pub mod known_size;
pub mod laid;
pub mod level;
pub mod marking;
pub mod picture;
pub mod picture_job;
pub mod picture_result;
pub mod reading_of_picture;
pub mod refusal;
pub mod take;
