//! Behind one ticket: the build-up of its garment, what the other tickets on the rack taught, the likely ticket, and what is left.

use super::likely::{Likely, likely};
use super::premium::{Left, left};
use super::process::{Learned, Spreads, learn_in_turns};
use super::traits::{Explained, Traits, in_units, reference, traits};
use crate::cost::{BuildUp, Channel, Market, Range, Rates};
use crate::garment::{Garment, Id, Shown, price};
use crate::trade::{Currency, PriceKind, Ticket};
use crate::turns::{in_one_turn, without_pause};

/// What the tickets of some garments taught, under some rates.
///
/// Every garment is built up in the market of its own ticket's currency, and brought to US dollars by the middle of that market's exchange,
/// so that a tax inside one ticket and not in another is told apart.
#[derive(Clone, Debug)]
pub struct Taught {
    rates: Rates,
    ids: Vec<Id>,
    learned: Learned,
}

/// What stands behind one ticket. Amounts are in the currency of its build-up unless they say otherwise.
#[derive(Clone, Debug)]
pub struct Behind {
    /// The cost from cloth to ticket.
    pub build_up: BuildUp,
    /// The same in the form that predictions take, in US dollars.
    pub explained: Explained,
    /// The likely ticket, in US dollars.
    pub likely: Likely,
    /// What is left of the ticket: none without a retail ticket in view whose currency is that of the build-up.
    pub left: Option<Left>,
    /// Units of the currency for one US dollar.
    pub exchange: f64,
}

/// Whether others' predictions lean on a garment: the person lets them, nobody wore it before, its retail ticket is in view, its family has a bill and its currency
/// a market.
pub fn teaches(garment: &Garment) -> bool {
    let usable =
        |ticket: &Ticket| ticket.kind == PriceKind::Retail && ticket.minor > 0 && Market::of_currency(ticket.currency).is_some();
    garment.may_teach() && garment.family().bill.is_some() && garment.ticket_in_view().is_some_and(usable)
}

/// Whether a prediction for the garment of that name leans on another: that one teaches, is not the same, and the invented teach only each
/// other.
pub fn leans_on(asked: &Id, other: &Garment) -> bool {
    teaches(other) && other.id() != asked && other.id().is_invented() == asked.is_invented()
}

/// The rates in the market whose tickets the garment's own is one of: by the currency of its ticket, face down too, else of its guess, else as
/// they are.
fn rates_for(garment: &Garment, rates: &Rates) -> Rates {
    let currency = garment.ticket().map(|ticket| ticket.currency).or(garment.guess().map(|guess| guess.currency()));
    currency.and_then(Market::of_currency).map_or_else(|| rates.clone(), |market| rates.in_market(market))
}

fn exchange(rates: &Rates) -> f64 {
    rates.acting(rates.market().exchange()).range.usual
}

/// The build-up as predictions take it: in US dollars, the spread of the shop's multiple as the part that garments of one shop share.
fn explained(build_up: &BuildUp, exchange: f64) -> Option<Explained> {
    let ticket = build_up.ticket();
    let explained = Explained::new(ticket.mu - exchange.ln(), ticket.sigma)?;
    explained.with_shop_part(build_up.shop_multiple().sigma.min(ticket.sigma))
}

/// Build-up, its form for predictions, what is known of kin, and the exchange.
fn built(garment: &Garment, rates: &Rates) -> Option<(BuildUp, Traits, f64)> {
    let rates = rates_for(garment, rates);
    let (build_up, exchange) = (price(garment, &rates, garment.shop())?, exchange(&rates));
    let traits = traits(garment, explained(&build_up, exchange)?, None, garment.name());
    Some((build_up, traits, exchange))
}

impl Taught {
    /// By those garments that teach; the others are passed over.
    pub fn by<'a>(garments: impl IntoIterator<Item = &'a Garment>, rates: &Rates) -> Taught {
        in_one_turn(Taught::by_in_turns(garments, rates, &without_pause))
    }

    /// The same with pauses, for a rack on which many teach.
    pub async fn by_in_turns<'a>(
        garments: impl IntoIterator<Item = &'a Garment>,
        rates: &Rates,
        pause: &impl AsyncFn(),
    ) -> Taught {
        let mut ids = Vec::new();
        let mut references = Vec::new();
        for garment in garments.into_iter().filter(|garment| teaches(garment)) {
            let reference = built(garment, rates).and_then(|(_, traits, exchange)| reference(garment, traits, exchange.recip()));
            if let Some(reference) = reference {
                ids.push(garment.id().clone());
                references.push(reference);
            }
            pause().await;
        }
        Taught { rates: rates.clone(), ids, learned: learn_in_turns(Spreads::USUAL, references, true, pause).await }
    }

    /// Garments that taught, by the places that lessons name.
    pub fn ids(&self) -> &[Id] {
        &self.ids
    }

    /// What was learnt.
    pub fn learned(&self) -> &Learned {
        &self.learned
    }

    /// What stands behind a garment's ticket. None where nobody has written the bill of its family, and where rates are so extreme that
    /// nothing can be said. A garment that is among those that taught would lean on its own ticket: none too.
    pub fn behind(&self, garment: &Garment) -> Option<Behind> {
        if self.ids.contains(garment.id()) {
            return None;
        }
        let (build_up, traits, exchange) = built(garment, &self.rates)?;
        let likely = likely(&self.learned, &traits)?;
        let ticket = garment.ticket_in_view().filter(|ticket| ticket.kind == PriceKind::Retail && ticket.minor > 0);
        let ticket = ticket.filter(|ticket| ticket.currency == build_up.currency());
        let left = ticket.and_then(|ticket| left((in_units(ticket) / exchange).ln(), &traits.explained, &likely));
        Some(Behind { build_up, explained: traits.explained, likely, left, exchange })
    }
}

impl Behind {
    /// The currency of its amounts.
    pub fn currency(&self) -> Currency {
        self.build_up.currency()
    }

    /// The 80 % range and middle of what a garment like it asks: retail tickets from build-up, name and references; an offer to a shop from
    /// the build-up at the factory's port alone.
    pub fn range(&self, kind: PriceKind) -> Range {
        match kind {
            PriceKind::Retail => {
                let Likely { low, middle, high, .. } = self.likely;
                Range { low: low * self.exchange, usual: middle * self.exchange, high: high * self.exchange }
            }
            PriceKind::Wholesale => self.build_up.totals().factory_price.range(),
        }
    }

    /// What the make alone explains: its range and middle.
    pub fn made(&self, kind: PriceKind) -> Range {
        match kind {
            PriceKind::Retail => self.build_up.ticket().range(),
            PriceKind::Wholesale => self.build_up.totals().factory_price.range(),
        }
    }

    /// The same range as it is kept beside a guess, in minor units. None where the guess is in another currency, and where an end rounds to
    /// nothing.
    pub fn shown(&self, currency: Currency, kind: PriceKind) -> Option<Shown> {
        if currency != self.currency() {
            return None;
        }
        let minor = |amount: f64| currency.minor(amount);
        let range = self.range(kind);
        Shown::new(minor(range.low), minor(range.usual), minor(range.high))
    }

    /// The kind of shop that was told.
    pub fn shop(&self) -> Option<Channel> {
        self.build_up.channel()
    }
}
