//! What the browser lends: storage, its mirror, the address, the clock, files, the document, camera and level. Only these files name web interfaces.

pub mod address;
pub mod camera;
pub mod clock;
pub mod document;
pub mod files;
pub mod mirror;
pub mod pictures;
pub mod reader;
pub mod screen;
pub mod shelf;
pub mod tilt;
