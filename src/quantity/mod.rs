//! Values with units and an uncertainty budget, and how numbers are written and read.

pub mod dimension;
mod estimate;
pub mod normal;
mod reading;
mod unit;
mod writing;

pub use dimension::{Area, Dimension, Length, Mass, MassPerArea, Money, MoneyPerTime, Number, PerLength, Time};
pub use estimate::{Estimate, EstimateFault, Name, Share, rectangular, triangular};
pub use reading::{Amount, ReadFault, read};
pub use unit::{System, Unit};
pub use writing::{Decimal, NO_NUMBER, written, written_exactly, written_with_spread};
