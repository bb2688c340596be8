//! Garment Assay's engines and content, with no browser in them: what a check is, how answers become a belief about quality, how
//! readings carry their spread, what is recorded of a garment and how it is written down.
//!
//! A room uses only rooms below it; `tests/rooms.rs` holds the table.

pub mod archive;
pub mod catalog;
pub mod check;
pub mod cost;
pub mod fit;
pub mod garment;
pub mod grading;
pub mod language;
pub mod learn;
pub mod lot;
pub mod measure;
pub mod notebook;
pub mod practice;
pub mod quantity;
pub mod rack;
pub mod sheet;
pub mod source;
pub mod specimen;
pub mod trade;
pub mod turns;
