//! The pages: a comb on the camera's picture, and a picture that is read.

pub mod live;
pub mod picture;
