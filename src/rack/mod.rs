//! Many garments at once: the likely ticket of one from the tickets of others, guesses and the habit in them, two to four side by side, value
//! for quality.

mod areas;
mod behind;
mod compare;
mod guess;
mod habit;
mod likely;
mod premium;
mod process;
mod student_t;
mod ticket_gap;
mod traits;
mod worth;

pub use behind::{Behind, Taught, leans_on, teaches};
pub use compare::{Beside, BesideFault, Between, Difference, Gap, GapShare, Likeness, ReadingDifference, gap};
pub use guess::{Range, Reveal, Score, WhyNoScore, reveal};
pub use habit::{Bias, Habit, HitRate, Trend, Verdict, Width};
pub use likely::{Lesson, Likely, likely};
pub use premium::{Left, Stand, left};
pub use process::{Learned, Spreads, learn};
pub use student_t::{Mixture, StudentT};
pub use ticket_gap::{NoGap, TicketGap, exchange, in_one_currency, ticket_gap};
pub use traits::{Explained, Reference, Traits, reference, traits};
pub use worth::{Asked, Placed, WhyNoWorth, Worth, among, by_worth, worth};

pub use crate::trade::Name;
