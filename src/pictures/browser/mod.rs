//! What the browser lends to this program alone: its door, camera and level, pictures, and the thread that reads them.

pub mod camera;
pub mod door;
pub mod hand;
pub mod pictures;
pub mod reader;
pub mod tilt;
