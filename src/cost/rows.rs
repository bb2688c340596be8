//! A build-up as rows of factors, for the gap between two: their product is the middle of each part, and what is not explained is a factor too.

use super::build_up::BuildUp;
use super::gap::{Factor, Row};
use super::range::LogNormal;
use crate::to_say;

// Names are compared, so they are kept as they are; whoever shows one says it.
/// The name of what no row explains.
pub const NOT_EXPLAINED: &str = to_say!("Name, design, season: not explained by what you checked");

/// The name of what turns US dollars into the currency of the ticket.
pub const EXCHANGE: &str = to_say!("Exchange");
/// The name of what brand and shop take.
pub const SHOP: &str = to_say!("Brand and shop");
/// The name of the tax inside a ticket.
pub const TAX: &str = to_say!("Tax");

impl BuildUp {
    /// The build-up at its middles.
    fn at_the_middles(&self) -> Vec<Row<'static>> {
        let chain = &self.chain;
        let factor = |name, amount: LogNormal| Factor { name, amount: amount.median(), spread: amount.sigma };
        let mut rows: Vec<Row<'static>> = Vec::with_capacity(self.parts.len() + 1);
        for part in &self.parts {
            let mut factors: Vec<Factor<'static>> = part.inputs.iter().map(|(name, amount)| factor(name, *amount)).collect();
            factors.push(factor(to_say!("Factory overhead"), chain.overhead));
            factors.push(factor(to_say!("Factory margin"), chain.margin));
            factors.push(factor(to_say!("Duty and fees"), chain.duty));
            rows.push(Row { name: part.name, factors });
        }
        let freight = vec![factor(to_say!("Freight"), chain.freight), factor(to_say!("Duty and fees"), chain.freight_duty)];
        rows.push(Row { name: to_say!("Freight"), factors: freight });
        for row in &mut rows {
            row.factors.push(factor(SHOP, chain.multiple));
            row.factors.push(factor(TAX, chain.tax));
            row.factors.push(factor(EXCHANGE, chain.exchange));
        }
        rows
    }

    /// The rows that add up to a ticket in the market's currency; without one, to the build-up itself. For [`gap`](super::gap).
    ///
    /// # Formula
    /// Each row is the product of the middles of its inputs, and of the [`NOT_EXPLAINED`] factor, ticket over the sum of the rows.
    ///
    /// # Source
    /// Model, section 5.
    pub fn rows(&self, ticket: Option<f64>) -> Vec<Row<'static>> {
        let mut rows = self.at_the_middles();
        let built: f64 = rows.iter().map(Row::amount).sum();
        let rest = ticket.map(|ticket| ticket / built).filter(|rest| rest.is_finite() && *rest > 0.0).unwrap_or(1.0);
        // What is left over is as uncertain as what it is left over from.
        let spread = if ticket.is_some() { self.ticket().sigma } else { 0.0 };
        let rest = Factor { name: NOT_EXPLAINED, amount: rest, spread };
        rows.iter_mut().for_each(|row| row.factors.push(rest));
        rows
    }

    /// What the checks and rates leave open of a ticket: ticket less the middle of the build-up; below nothing where the ticket asks less.
    /// With it, how many spreads the ticket lies above the middle; none for a ticket of nothing.
    ///
    /// # Source
    /// Handbook, section 10.8.
    pub fn not_explained(&self, ticket: f64) -> Option<(f64, f64)> {
        let spreads = self.ticket().spreads_above(ticket)?;
        Some((ticket - self.ticket().median(), spreads))
    }
}
