//! One garment: what was recorded of it (facts), and what follows from them (appraisal).

mod appraisal;
mod errand;
mod guess;
mod price;
mod record;
mod walk;

pub use appraisal::{Appraisal, Appraiser, Moved, Standing};
pub use errand::Errand;
pub use guess::{Guess, Shown};
pub use price::{every_rate, price, wears};
pub use record::{Act, Answer, Entry, Garment, Given, Id, Readings, Taped};
pub use walk::{Proposal, Reason};
