//! Files of the main program that this one is made of too. Each is compiled into both; neither loads the other's.

#[path = "../app/parts/bar.rs"]
pub mod bar;
#[path = "../app/browser/document.rs"]
pub mod document;
#[path = "../app/parts/icon.rs"]
pub mod icon;
#[path = "../app/browser/language.rs"]
pub mod language;
#[path = "../app/parts/means.rs"]
pub mod means;
#[path = "../app/browser/room.rs"]
pub mod room;
#[path = "../app/browser/screen.rs"]
pub mod screen;
#[path = "../app/browser/shipped.rs"]
pub mod shipped;
#[path = "../app/words.rs"]
pub mod words;
