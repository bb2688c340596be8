//! One garment: what was recorded of it (facts), and what follows from them (appraisal).

mod appraisal;
mod by_stage;
mod deal;
mod duplicate;
mod errand;
mod fit;
mod fitting;
mod guess;
mod joining;
mod landed;
mod photograph;
mod price;
mod rates;
mod record;
mod second_hand;
mod terms;
mod walk;

pub use appraisal::{Appraisal, Appraiser, Moved, Standing};
pub use deal::Deal;
pub use errand::Errand;
pub use fit::{FitReport, Missing, Row, Spoken, USUAL_WASH, WashKnown, fit};
pub use fitting::{FitAct, Fitting, LabelSize};
pub use guess::{Guess, Shown};
pub use joining::{Fate, JoinFault, Part, differences, joined};
pub use landed::{LandedPrice, LandedSmallest, NotLanded, landed_prices, landed_smallest};
pub use photograph::{Photograph, PhotographAct, PhotographId, Photographs};
pub use price::{price, wears};
pub use rates::{RateGroup, every_rate, rates_in};
pub use record::{Act, Answer, Entry, Garment, Given, Id, Readings, Taped};
pub use second_hand::check_of;
pub use terms::{PriceBreak, Terms, TermsAct};
pub use walk::{Proposal, Reason};
