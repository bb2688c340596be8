//! What a price pays for: the bill of a family, rates, the build-up from cloth to ticket, the gap between two, wears, and shop arithmetic.

mod gap;
mod range;
mod retail;
mod wear;

pub use gap::{GapShare, Row, by_factor, gap, log_mean};
pub use range::{LogNormal, Range, RangeFault, TENTH, Term, sum};
pub use retail::{
    BuyersView, DutyBase, Offer, RetailFault, cloth_length, duty, initial_markup, landed, margin_of_multiple, minute_cost,
    multiple_of_margin, tax_inside,
};
pub use wear::{Life, Outlay, Plan, Wears, break_even};
