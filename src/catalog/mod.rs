//! The content: families and their checks. Data only: no functions, no arithmetic, no conditions.

pub mod bench;
pub mod cautions;
pub mod defects;
mod drawer;
pub mod dress_skirt;
mod family;
mod fit_table;
pub mod jeans;
pub mod on_body;
pub mod outerwear;
mod rates;
pub mod second_hand;
mod shared;
pub mod sources;
pub mod sweater;
pub mod t_shirt;
pub mod tailored_jacket;
pub mod woven_shirt;

pub use drawer::{Drawer, DrawnLook, DrawnScale, Tool};
pub use family::{FAMILIES, Family};
pub use fit_table::{FitTable, Move, Sign};
pub use second_hand::{Condition, Look};
pub use sources::SOURCES;
