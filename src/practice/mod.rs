//! Training the eye: specimens drawn from a seed with a known truth, questions about them, runs of two minutes, and what a learner's
//! answers say of their skill. Nothing is drawn by chance that was not handed in.

mod code;
mod draws;
mod question;
mod run;
mod skill;
mod topic;
mod whole;

pub use code::{CodeFault, Plan};
pub use question::{Answered, Given, Judged, Question, Shown, Takes};
pub use run::{Next, RUN_SECONDS, Run, SHARED_QUESTIONS};
pub use skill::{ENOUGH, Skill, Trial, next_topic, skill};
pub use topic::{Level, Topic, Topics};
pub use whole::{Described, PriceGuess};
