//! The arithmetic of shops: landed cost, duty, mark-up and margin, tax in the ticket, and the offer to a buyer.

use crate::say;

/// Why an amount of shop arithmetic cannot be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RetailFault {
    /// An amount is no number or lies below nothing.
    NotAnAmount,
    /// A margin of all of the price, or more, would need an endless price.
    MarginTooHigh,
    /// Price or cost is nothing, so that neither can be a share of the other.
    NoCost,
}

impl std::fmt::Display for RetailFault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            RetailFault::NotAnAmount => say!("Type an amount of nothing or more."),
            RetailFault::MarginTooHigh => say!("Type a margin below 100 %."),
            RetailFault::NoCost => say!("Type a price and a cost above nothing."),
        })
    }
}

/// What duty is reckoned on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DutyBase {
    /// The price at the factory's port, free on board (FOB): United States, Canada, Australia.
    FreeOnBoard,
    /// The price with freight and insurance (CIF): European Union, United Kingdom, India, Japan.
    WithFreight,
}

/// Duty in money.
///
/// # Formula
/// Rate times the price at the factory's port, with the freight where the market's base has it in.
///
/// # Source
/// Handbook, section 10.6. CO03: 12 % of 13.1752 + 0.40 is 1.629.
pub fn duty(base: DutyBase, rate: f64, factory_price: f64, freight: f64) -> f64 {
    rate * match base {
        DutyBase::FreeOnBoard => factory_price,
        DutyBase::WithFreight => factory_price + freight,
    }
}

/// What a piece has cost once it lies in the market's warehouse: factory price, freight, duty and entry fees (a rate on the factory price).
///
/// # Source
/// Handbook, section 10.5. CO02: 13.1752 + 0.40 + 16.6 % + 0.471 % is 15.824.
pub fn landed(base: DutyBase, duty_rate: f64, fee_rate: f64, factory_price: f64, freight: f64) -> f64 {
    factory_price + freight + duty(base, duty_rate, factory_price, freight) + fee_rate * factory_price
}

/// Cloth that a garment takes, in the unit of `width`.
///
/// # Formula
/// `A (1 + s1)(1 + s2)(1 + end) / (w e)`: pattern area, the two shrinkages, what is lost at ends, usable width, and the share of the cloth
/// that the marker (the plan of the parts laid on it) uses.
///
/// # Source
/// Handbook, section 10.1. CN01: 1.50 m² on 1.47 m, 86 % used, is 1.284 m; CN02: on 0.76 m, 80 % used, 2.670 m.
pub fn cloth_length(area: f64, shrinkages: [f64; 2], ends: f64, width: f64, used: f64) -> f64 {
    area * (1.0 + shrinkages[0]) * (1.0 + shrinkages[1]) * (1.0 + ends) / (width * used)
}

/// What a standard minute costs a factory.
///
/// # Formula
/// Monthly wage times loading (staff, power, rent) over minutes worked times the share of them that becomes standard minutes.
///
/// # Source
/// Handbook, section 10.3. CO12: 140 * 2.2 / (12480 * 0.55) is 0.0449.
pub fn minute_cost(wage: f64, loading: f64, minutes: f64, efficiency: f64) -> f64 {
    wage * loading / (minutes * efficiency)
}

/// The share of a price that is margin, from how many times the cost it is.
///
/// # Source
/// Handbook, section 10.7. CO10: 2.5 times is 60 %.
pub fn margin_of_multiple(multiple: f64) -> f64 {
    1.0 - 1.0 / multiple
}

/// How many times the cost a price with that margin is.
///
/// # Errors
/// [`RetailFault::MarginTooHigh`] at 1 and above, [`RetailFault::NotAnAmount`] for no number.
pub fn multiple_of_margin(margin: f64) -> Result<f64, RetailFault> {
    match margin {
        margin if !margin.is_finite() => Err(RetailFault::NotAnAmount),
        margin if margin >= 1.0 => Err(RetailFault::MarginTooHigh),
        margin => Ok(1.0 / (1.0 - margin)),
    }
}

/// The tax inside a ticket.
///
/// # Source
/// Handbook, section 10.7. CO07: 89.90 at 19 % holds 14.354.
pub fn tax_inside(ticket: f64, rate: f64) -> f64 {
    ticket * rate / (1.0 + rate)
}

/// Initial mark-up as a share of the first price, so that the planned profit stays after reductions.
///
/// # Formula
/// `(expenses + alterations + reductions + profit) / (net sales + reductions)`, all in money or all as shares of net sales.
///
/// # Source
/// Handbook, section 10.7. CO08: 44.125 % (published); CO09: 40.87 % (published as 41).
pub fn initial_markup(net_sales: f64, expenses: f64, alterations: f64, reductions: f64, profit: f64) -> f64 {
    (expenses + alterations + reductions + profit) / (net_sales + reductions)
}

/// What a maker offers a shop, in the market's currency and without tax.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Offer {
    /// Price of a piece as offered, at the factory's port.
    pub price: f64,
    /// Freight and insurance of a piece.
    pub freight: f64,
    /// Duty as a share of its base.
    pub duty_rate: f64,
    /// What duty is reckoned on.
    pub base: DutyBase,
    /// Entry fees as a share of the price.
    pub fee_rate: f64,
    /// Fewest pieces that the maker takes an order for.
    pub minimum: u32,
}

/// What an offer comes to against a price in the shop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BuyersView {
    /// Cost of a piece in the warehouse.
    pub landed: f64,
    /// Price in the shop without tax.
    pub before_tax: f64,
    /// What stays of a piece: price before tax less landed cost; below nothing for a loss.
    pub stays: f64,
    /// That as a share of the price before tax: the margin.
    pub margin: f64,
    /// That as a share of the landed cost: the mark-up.
    pub markup: f64,
    /// Price before tax over landed cost.
    pub multiple: f64,
    /// Money bound up in the smallest order.
    pub smallest_order: f64,
    /// Pieces to sell at full price before the smallest order has paid for itself; none where there is no smallest order.
    pub pays_after: Option<u32>,
}

impl Offer {
    /// What the offer comes to when the shop asks `ticket`, which holds tax at `tax_rate` (0 where tax is added at the till).
    ///
    /// # Errors
    /// [`RetailFault::NotAnAmount`] for amounts that are none, [`RetailFault::NoCost`] where price or cost is nothing.
    ///
    /// # Source
    /// Handbook, section 10.7: margin `1 - 1/M`, mark-up `M - 1`.
    pub fn against(&self, ticket: f64, tax_rate: f64) -> Result<BuyersView, RetailFault> {
        let amounts = [self.price, self.freight, self.duty_rate, self.fee_rate, ticket, tax_rate];
        if !amounts.into_iter().all(|amount| amount.is_finite() && amount >= 0.0) {
            return Err(RetailFault::NotAnAmount);
        }
        let landed = landed(self.base, self.duty_rate, self.fee_rate, self.price, self.freight);
        let before_tax = ticket - tax_inside(ticket, tax_rate);
        if !(landed > 0.0 && before_tax > 0.0 && landed.is_finite()) {
            return Err(RetailFault::NoCost);
        }
        let stays = before_tax - landed;
        let smallest_order = landed * f64::from(self.minimum);
        Ok(BuyersView {
            landed,
            before_tax,
            stays,
            margin: stays / before_tax,
            markup: stays / landed,
            multiple: before_tax / landed,
            smallest_order,
            // Rounding must not ask for a piece more. A float beyond the largest count becomes that count; no order is so large.
            pays_after: (smallest_order > 0.0).then(|| (smallest_order / before_tax * (1.0 - 1e-12)).ceil() as u32),
        })
    }

    /// The ticket that leaves a margin, tax inside.
    ///
    /// # Errors
    /// As [`multiple_of_margin`].
    pub fn ticket_for(&self, margin: f64, tax_rate: f64) -> Result<f64, RetailFault> {
        let landed = landed(self.base, self.duty_rate, self.fee_rate, self.price, self.freight);
        let ticket = landed * multiple_of_margin(margin)? * (1.0 + tax_rate);
        if ticket.is_finite() && ticket >= 0.0 { Ok(ticket) } else { Err(RetailFault::NotAnAmount) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const OFFER: Offer =
        Offer { price: 13.1752, freight: 0.40, duty_rate: 0.12, base: DutyBase::WithFreight, fee_rate: 0.0, minimum: 300 };

    #[test]
    fn the_ticket_for_a_margin_leaves_that_margin() {
        let ticket = OFFER.ticket_for(0.6, 0.2).unwrap();
        let view = OFFER.against(ticket, 0.2).unwrap();
        assert!((view.margin - 0.6).abs() < 1e-12 && (view.markup - 1.5).abs() < 1e-12 && (view.multiple - 2.5).abs() < 1e-12);
        assert_eq!(view.pays_after, Some(120));
    }

    #[test]
    fn a_loss_is_shown_as_a_loss() {
        let view = OFFER.against(10.0, 0.0).unwrap();
        assert!(view.stays < 0.0 && view.margin < 0.0 && view.markup < 0.0);
    }

    #[test]
    fn nonsense_is_refused() {
        assert_eq!(OFFER.against(f64::NAN, 0.0), Err(RetailFault::NotAnAmount));
        assert_eq!(OFFER.against(0.0, 0.0), Err(RetailFault::NoCost));
        assert_eq!(OFFER.ticket_for(1.0, 0.2), Err(RetailFault::MarginTooHigh));
        assert_eq!(multiple_of_margin(f64::INFINITY), Err(RetailFault::NotAnAmount));
    }
}
