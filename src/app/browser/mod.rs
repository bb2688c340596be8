//! What the browser lends: storage, its mirror, pictures, the address, the clock, files, the document, the clipboard, the second program. Only these files name web interfaces.

pub mod address;
pub mod clock;
pub mod document;
pub mod files;
pub mod flight;
pub mod handing;
pub mod language;
pub mod mirror;
pub mod photographs;
pub mod picture;
pub mod press;
pub mod room;
pub mod screen;
pub mod shelf;
pub mod shipped;
pub mod turns;
