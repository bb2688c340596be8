//! What is handed on: the rack as tables for a spreadsheet, and a garment as a short text for a message. `docs/tables.md` says what each
//! column holds.

mod answers;
mod cell;
mod message;
mod rack;

pub use answers::{answers_table, answers_table_pieces};
pub use cell::Form;
pub use message::{list, list_pieces, message};
pub use rack::{rack_table, rack_table_pieces};
