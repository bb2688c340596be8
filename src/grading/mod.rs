//! Belief about quality: what answers say together, what one more answer would be worth, what each answer moved.

mod belief;
mod choice;
mod contribution;
mod curve;
mod evidence;
mod tables;

pub use belief::{Bands, Belief, Reading, Run};
pub use choice::{Candidate, Prospect, Settling, Worth, prospect, ranking, settling};
pub use contribution::contributions;
pub use curve::{Curve, Group, Power, SharesError, thresholds};
pub use evidence::{Care, Evidence, LevelsDiffer, Weights, WeightsError};
pub use tables::Tables;
