//! Whole lots judged by a sample: how many pieces to look at, how many may be bad, what such a sample can tell and what it cannot.

mod curve;
mod log;
mod plan;
pub mod sources;

pub use curve::{highest_share, passes, share_that_passes};
pub use log::{Defect, Finding, Log, Severity, Standing, Stands};
pub use plan::{Aql, Arrow, Letter, Level, LotFault, LotSize, Plan, plan};
