//! What a supplier offers a style for, as it stands on the order sheet. Facts only: what it comes to once landed is worked out elsewhere.

use crate::cost::Incoterm;
use crate::trade::{Currency, Day};

/// A price from so many pieces on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PriceBreak {
    /// Fewest pieces at this price; 1 where it holds from the first.
    pub from: u32,
    /// Price of a piece in the currency's smallest unit, above nothing.
    pub minor: u64,
}

/// What a supplier offers a style for. All of it may be missing: one writes down what was said.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Terms {
    supplier: String,
    style: String,
    colourways: String,
    sizes: String,
    currency: Option<Currency>,
    incoterm: Option<Incoterm>,
    prices: Vec<PriceBreak>,
    minimum: Option<u32>,
    delivery: Option<(Day, Day)>,
    shortlisted: bool,
}

/// One thing noted of an offer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TermsAct {
    /// Who offers.
    Supplier(String),
    /// The supplier's number of the style.
    Style(String),
    /// Which colours it comes in.
    Colourways(String),
    /// Which sizes it comes in.
    Sizes(String),
    /// In which currency, or that nobody said.
    Currency(Option<Currency>),
    /// What the price has in it, or that nobody said.
    Incoterm(Option<Incoterm>),
    /// Prices by quantity; see [`Terms::prices`] for what becomes of their order.
    Prices(Vec<PriceBreak>),
    /// Fewest pieces that an order is taken for.
    Minimum(Option<u32>),
    /// First and last day of delivery; the other way round is put right.
    Delivery(Option<(Day, Day)>),
    /// Whether it is on the short list.
    Shortlisted(bool),
}

impl Terms {
    /// Longest text kept of each, in characters.
    pub const LONGEST_TEXT: usize = 200;
    /// Most prices by quantity.
    pub const MOST_PRICES: usize = 8;
    /// Most pieces that are believed.
    pub const MOST_PIECES: u32 = 10_000_000;

    /// Who offers; may be empty.
    pub fn supplier(&self) -> &str {
        &self.supplier
    }

    /// The supplier's number of the style; may be empty.
    pub fn style(&self) -> &str {
        &self.style
    }

    /// Which colours it comes in; may be empty.
    pub fn colourways(&self) -> &str {
        &self.colourways
    }

    /// Which sizes it comes in; may be empty.
    pub fn sizes(&self) -> &str {
        &self.sizes
    }

    /// In which currency.
    pub fn currency(&self) -> Option<Currency> {
        self.currency
    }

    /// What the price has in it.
    pub fn incoterm(&self) -> Option<Incoterm> {
        self.incoterm
    }

    /// Prices by quantity, fewest pieces first and one for each quantity, each above nothing.
    pub fn prices(&self) -> &[PriceBreak] {
        &self.prices
    }

    /// Fewest pieces that an order is taken for.
    pub fn minimum(&self) -> Option<u32> {
        self.minimum
    }

    /// First and last day of delivery.
    pub fn delivery(&self) -> Option<(Day, Day)> {
        self.delivery
    }

    /// Whether it is on the short list.
    pub fn shortlisted(&self) -> bool {
        self.shortlisted
    }

    /// Whether nothing was noted.
    pub fn is_empty(&self) -> bool {
        *self == Terms::default()
    }

    /// The price of a piece in an order of so many; none below the fewest that have a price.
    pub fn price_for(&self, pieces: u32) -> Option<u64> {
        self.prices.iter().rev().find(|price| price.from <= pieces).map(|price| price.minor)
    }

    /// Pieces in the smallest order: what the supplier says, else the fewest that have a price.
    pub fn smallest_order(&self) -> Option<u32> {
        self.minimum.or(self.prices.first().map(|price| price.from))
    }

    pub(super) fn after(mut self, act: TermsAct) -> Terms {
        match act {
            TermsAct::Supplier(text) => self.supplier = shortened(&text),
            TermsAct::Style(text) => self.style = shortened(&text),
            TermsAct::Colourways(text) => self.colourways = shortened(&text),
            TermsAct::Sizes(text) => self.sizes = shortened(&text),
            TermsAct::Currency(currency) => self.currency = currency,
            TermsAct::Incoterm(term) => self.incoterm = term,
            TermsAct::Prices(prices) => self.prices = in_order(prices),
            TermsAct::Minimum(pieces) => self.minimum = pieces.filter(|pieces| (1..=Terms::MOST_PIECES).contains(pieces)),
            TermsAct::Delivery(days) => self.delivery = days.map(|(one, other)| (one.min(other), one.max(other))),
            TermsAct::Shortlisted(is) => self.shortlisted = is,
        }
        self
    }

    pub(super) fn undoing(&self, act: &TermsAct) -> TermsAct {
        match act {
            TermsAct::Supplier(_) => TermsAct::Supplier(self.supplier.clone()),
            TermsAct::Style(_) => TermsAct::Style(self.style.clone()),
            TermsAct::Colourways(_) => TermsAct::Colourways(self.colourways.clone()),
            TermsAct::Sizes(_) => TermsAct::Sizes(self.sizes.clone()),
            TermsAct::Currency(_) => TermsAct::Currency(self.currency),
            TermsAct::Incoterm(_) => TermsAct::Incoterm(self.incoterm),
            TermsAct::Prices(_) => TermsAct::Prices(self.prices.clone()),
            TermsAct::Minimum(_) => TermsAct::Minimum(self.minimum),
            TermsAct::Delivery(_) => TermsAct::Delivery(self.delivery),
            TermsAct::Shortlisted(_) => TermsAct::Shortlisted(self.shortlisted),
        }
    }
}

fn shortened(text: &str) -> String {
    text.trim().chars().take(Terms::LONGEST_TEXT).collect::<String>().trim_end().to_owned()
}

/// Fewest pieces first; of two for one quantity the later counts; what is no price or no quantity is left out.
fn in_order(prices: Vec<PriceBreak>) -> Vec<PriceBreak> {
    let mut kept: Vec<PriceBreak> = Vec::new();
    for price in prices.into_iter().filter(|price| price.minor > 0 && (1..=Terms::MOST_PIECES).contains(&price.from)) {
        kept.retain(|other| other.from != price.from);
        kept.push(price);
    }
    kept.sort_by_key(|price| price.from);
    kept.truncate(Terms::MOST_PRICES);
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    fn price(from: u32, minor: u64) -> PriceBreak {
        PriceBreak { from, minor }
    }

    #[test]
    fn the_price_is_that_of_the_largest_quantity_reached() {
        let terms = Terms::default().after(TermsAct::Prices(vec![
            price(1000, 900),
            price(100, 1200),
            price(300, 1050),
            price(100, 1150),
        ]));
        assert_eq!(terms.prices(), [price(100, 1150), price(300, 1050), price(1000, 900)]);
        let at = |pieces| terms.price_for(pieces);
        assert_eq!([at(99), at(100), at(299), at(300), at(5000)], [None, Some(1150), Some(1150), Some(1050), Some(900)]);
        assert_eq!(terms.smallest_order(), Some(100));
        assert_eq!(terms.after(TermsAct::Minimum(Some(50))).smallest_order(), Some(50));
    }

    #[test]
    fn what_is_no_price_is_left_out_and_days_are_put_in_order() {
        let terms = Terms::default().after(TermsAct::Prices(vec![price(0, 5), price(10, 0), price(u32::MAX, 5)]));
        assert!(terms.is_empty());
        let (early, late) = (Day::new(2027, 1, 10).expect("a day"), Day::new(2027, 2, 1).expect("a day"));
        assert_eq!(Terms::default().after(TermsAct::Delivery(Some((late, early)))).delivery(), Some((early, late)));
    }

    #[test]
    fn each_act_is_undone_by_its_undoing() {
        let full = [
            TermsAct::Supplier("Mill on the hill".to_owned()),
            TermsAct::Style("0042".to_owned()),
            TermsAct::Colourways("ink, straw".to_owned()),
            TermsAct::Sizes("34 to 46".to_owned()),
            TermsAct::Currency(Some(Currency::Eur)),
            TermsAct::Incoterm(Some(Incoterm::FreeOnBoard)),
            TermsAct::Prices(vec![price(100, 1200)]),
            TermsAct::Minimum(Some(300)),
            TermsAct::Delivery(Day::new(2027, 1, 10).map(|day| (day, day))),
            TermsAct::Shortlisted(true),
        ];
        let mut terms = Terms::default();
        for act in full {
            let back = terms.undoing(&act);
            let next = terms.clone().after(act);
            assert_ne!(next, terms);
            assert_eq!(next.clone().after(back), terms);
            terms = next;
        }
    }
}
