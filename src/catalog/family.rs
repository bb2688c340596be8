//! What a family is, and the list of them.

use crate::check::Check;
use crate::cost::Bill;
use crate::measure::PointOfMeasure;

use super::fit_table::FitTable;
use super::jeans;

/// A kind of garment with its own checks.
#[derive(Debug, PartialEq)]
pub struct Family {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// The word on the screen.
    pub name: &'static str,
    /// One sentence on what belongs to it.
    pub covers: &'static str,
    /// Its checks, in the order in which the list shows them.
    pub checks: &'static [&'static Check],
    /// Where it is measured with a tape, in the order in which the sheet shows them.
    pub points: &'static [PointOfMeasure],
    /// What goes into a piece, and what that costs; none while nobody has written it.
    pub bill: Option<&'static Bill>,
    /// How its fit is judged; none while nobody has written it.
    pub fit: Option<&'static FitTable>,
    /// Cautions that hold for the family as a whole.
    pub cautions: &'static [&'static str],
}

/// Every family.
pub static FAMILIES: [&Family; 1] = [&jeans::JEANS];
