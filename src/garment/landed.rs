//! What a supplier's offer comes to: each price by quantity, landed in the market, against the ticket that is to be put on it.

use std::fmt;

use super::price::price;
use super::record::Garment;
use super::terms::{PriceBreak, Terms};
use crate::cost::{BuildUp, BuyersView, Incoterm, Market, Offer, Rates, RetailFault};
use crate::say;
use crate::trade::Currency;

/// A price by quantity and what it comes to, in the market's currency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LandedPrice {
    /// The price as it was quoted.
    pub quoted: PriceBreak,
    /// The same at the factory's port.
    pub at_port: Offer,
    /// What it comes to; why not, where the ticket or the price is none.
    pub comes_to: Result<BuyersView, RetailFault>,
}

/// Why an offer comes to nothing that can be said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotLanded {
    /// No price was noted.
    NoPrice,
    /// In which currency it is was not noted.
    NoCurrency,
    /// No rate of exchange is known for that currency.
    NoExchange,
    /// Nobody has written down what goes into a garment of this kind, so freight and duty are not known.
    NoBill,
    /// Landed cost or retail ticket cannot be worked out.
    Amount(RetailFault),
}

impl fmt::Display for NotLanded {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            NotLanded::NoPrice => say!("Note a price, and you see what it comes to once landed."),
            NotLanded::NoCurrency => say!("Note the currency of the price."),
            NotLanded::NoExchange => {
                say!("No rate of exchange is known here for this currency. Note the price in one that the rates list.")
            }
            NotLanded::NoBill => say!("Nobody has written what this kind costs, so freight and duty are not worked out."),
            NotLanded::Amount(why) => return why.fmt(f),
        })
    }
}

/// What each price of an offer comes to, fewest pieces first, when the shop asks `ticket` for a piece, tax in as the market has it.
///
/// # Formula
/// The quoted price goes into the market's currency by the usual rates of exchange (over the US dollar), to the factory's port by its
/// [`Incoterm`] (free on board where none was noted), and lands by [`Offer::against`] with the averages of freight, duty and fees.
///
/// # Errors
/// [`NotLanded`] says what is missing.
///
/// # Source
/// As [`Offer::against`] and [`Incoterm::at_the_port`]; rates as the person has them.
pub fn landed_prices(terms: &Terms, build_up: &BuildUp, rates: &Rates, ticket: f64) -> Result<Vec<LandedPrice>, NotLanded> {
    if terms.prices().is_empty() {
        return Err(NotLanded::NoPrice);
    }
    let currency = terms.currency().ok_or(NotLanded::NoCurrency)?;
    let for_a_dollar = |market: Market| rates.acting(market.exchange()).range.usual;
    let from = Market::of_currency(currency).ok_or(NotLanded::NoExchange)?;
    let exchange = for_a_dollar(build_up.market()) / for_a_dollar(from);
    let term = terms.incoterm().unwrap_or(Incoterm::FreeOnBoard);
    let landed = terms.prices().iter().map(|price| {
        // The smallest order at a price is what it starts from, or what the supplier takes at the least, whichever is more.
        let pieces = price.from.max(terms.minimum().unwrap_or(0));
        let at_port = term.at_the_port(build_up.offer(currency.whole(price.minor) * exchange, pieces));
        LandedPrice { quoted: *price, at_port, comes_to: at_port.against(ticket, build_up.tax_inside()) }
    });
    Ok(landed.collect())
}

/// What the smallest order of an offer comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LandedSmallest {
    /// Currency of every amount: that of the market.
    pub currency: Currency,
    /// Pieces in that order.
    pub pieces: u32,
    /// The retail ticket that it is held against.
    pub ticket: f64,
    /// Whether somebody set that ticket; else it is the middle of what such a piece is likely asked.
    pub targeted: bool,
    /// Landed cost, and what stays.
    pub view: BuyersView,
}

/// What the smallest order of a garment's offer comes to, at the price that holds for it, against the target ticket or for want of one the
/// middle of its build-up.
///
/// # Errors
/// [`NotLanded`] says what is missing.
///
/// # Source
/// As [`landed_prices`].
pub fn landed_smallest(garment: &Garment, rates: &Rates) -> Result<LandedSmallest, NotLanded> {
    let terms = garment.terms();
    let pieces = terms.smallest_order().ok_or(NotLanded::NoPrice)?;
    let build_up = price(garment, rates, garment.shop()).ok_or(NotLanded::NoBill)?;
    let currency = build_up.currency();
    let target = garment.deal().target().map(|minor| currency.whole(minor));
    let ticket = target.unwrap_or_else(|| build_up.ticket().median());
    let rows = landed_prices(terms, &build_up, rates, ticket)?;
    // Where fewer are taken than have a price, the first price stands.
    let row = rows.iter().rev().find(|row| row.quoted.from <= pieces).or(rows.first()).ok_or(NotLanded::NoPrice)?;
    let view = row.comes_to.map_err(NotLanded::Amount)?;
    Ok(LandedSmallest { currency, pieces: pieces.max(row.quoted.from), ticket, targeted: target.is_some(), view })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::FAMILIES;
    use crate::garment::{Act, Garment, Id, TermsAct, price};
    use crate::trade::{Currency, Day};

    fn garment(acts: Vec<TermsAct>) -> Garment {
        let bare = Garment::new(Id::new("g").expect("a name"), FAMILIES[0], Day::new(2026, 11, 26).expect("a day"));
        acts.into_iter().fold(bare, |garment, act| garment.after(Act::Terms(act)))
    }

    fn prices() -> TermsAct {
        TermsAct::Prices(vec![PriceBreak { from: 100, minor: 1_300 }, PriceBreak { from: 1_000, minor: 1_100 }])
    }

    #[test]
    fn what_is_missing_is_named() {
        let rates = Rates::of(Market::UnitedStates);
        let landed = |acts: Vec<TermsAct>| {
            let garment = garment(acts);
            landed_prices(garment.terms(), &price(&garment, &rates, None).expect("a bill"), &rates, 60.0)
        };
        assert_eq!(landed(Vec::new()), Err(NotLanded::NoPrice));
        assert_eq!(landed(vec![prices()]), Err(NotLanded::NoCurrency));
        assert!(landed(vec![prices(), TermsAct::Currency(Some(Currency::Usd))]).is_ok_and(|rows| rows.len() == 2));
    }

    #[test]
    fn more_pieces_land_cheaper_and_duty_paid_lands_at_its_price() {
        let rates = Rates::of(Market::UnitedStates);
        let with = |term| {
            let garment = garment(vec![prices(), TermsAct::Currency(Some(Currency::Usd)), TermsAct::Incoterm(Some(term))]);
            let build_up = price(&garment, &rates, None).expect("a bill");
            landed_prices(garment.terms(), &build_up, &rates, 60.0).expect("two prices")
        };
        let at_port = with(Incoterm::FreeOnBoard);
        let view = |row: &LandedPrice| row.comes_to.expect("amounts");
        assert!(view(&at_port[0]).landed > 13.0 && view(&at_port[1]).landed < view(&at_port[0]).landed);
        assert_eq!((view(&at_port[0]).smallest_order / view(&at_port[0]).landed).round(), 100.0);
        let paid = with(Incoterm::DeliveredDutyPaid);
        assert!((view(&paid[0]).landed - 13.0).abs() < 1e-9);
        assert!((view(&paid[0]).margin - (1.0 - 13.0 / 60.0)).abs() < 1e-9);
    }

    #[test]
    fn a_price_in_another_currency_goes_over_the_dollar() {
        let rates = Rates::of(Market::UnitedStates);
        let garment = garment(vec![
            prices(),
            TermsAct::Currency(Some(Currency::Eur)),
            TermsAct::Incoterm(Some(Incoterm::DeliveredDutyPaid)),
        ]);
        let build_up = price(&garment, &rates, None).expect("a bill");
        let rows = landed_prices(garment.terms(), &build_up, &rates, 60.0).expect("two prices");
        let euro = rates.acting(Market::of_currency(Currency::Eur).expect("a market").exchange()).range.usual;
        assert!((rows[0].at_port.price - 13.0 / euro).abs() < 1e-9);
    }
}
