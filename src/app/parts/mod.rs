//! What screens are made of. A part is handed all it shows and calls back; it never sees storage or the rack.

pub mod alert;
pub mod answers;
pub mod bar;
pub mod body_measure;
pub mod build_steps;
pub mod confirm;
pub mod drawn;
pub mod guess;
pub mod icon;
pub mod instrument_form;
pub mod means;
pub mod money_scale;
pub mod note;
pub mod offer;
pub mod reading;
pub mod ruler;
pub mod side_room;
pub mod steps;
pub mod tape;
pub mod ticket;
pub mod toast;
pub mod typed;
pub mod value;
