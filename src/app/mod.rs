//! The app: what is on the screen, and what the browser lends.

mod appraisals;
mod browser;
mod collections;
mod desk;
mod fit_words;
mod lessons;
mod model;
mod money;
mod pages;
mod parts;
mod pricing;
mod rate_words;
mod root;
mod route;
mod standing;
mod steps;
mod words;

pub use browser::document::{mount, say_crash};
pub use root::App;
