//! The app: what is on the screen, and what the browser lends.

mod appraisals;
mod browser;
mod collections;
mod desk;
mod entrance;
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
mod wings;
mod words;
mod worth;

pub use browser::document::{mount, say_crash};
pub use browser::language::bring_entrance;
pub use browser::shelf::last_read;
pub use browser::turns::breath;
pub use entrance::{Entrance, Props as EntranceProps, bring_house, is_first_visit};
