//! What a price pays for: the bill of a family, rates, the build-up from cloth to ticket, the gap between two, wears, and shop arithmetic.

mod acting;
mod bill;
mod build_up;
mod chain;
mod gap;
mod incoterm;
mod market;
mod range;
mod rates;
mod retail;
mod rows;
pub mod sources;
mod spread;
mod wear;

pub use acting::Known;
pub use bill::{Amount, Bill, Choice, Duty, Input, Line, Part, Use, Value};
pub use build_up::{BuildUp, Cost, Leg, build_up};
pub use chain::{Chain, Totals};
pub use gap::{Factor, FactorShare, GapShare, Row, by_factor, gap, log_mean};
pub use incoterm::{Incoterm, TO_THE_PORT};
pub use market::{Channel, FACTORY_MARGIN, JUDGED, Market, OVERHEAD, TARIFFS_READ, TaxHabit, common_rates};
pub use range::{LogNormal, Range, RangeFault, TENTH, Term, sum};
pub use rates::{Acting, Edit, Rate, RateUnit, Rates};
pub use retail::{
    BuyersView, DutyBase, Offer, RetailFault, cloth_length, duty, initial_markup, landed, margin_of_multiple, minute_cost,
    multiple_of_margin, tax_inside,
};
pub use rows::{EXCHANGE, NOT_EXPLAINED, SHOP, TAX};
pub use spread::{Cause, CauseKind};
pub use wear::{Life, Outlay, Plan, Wears, break_even};
