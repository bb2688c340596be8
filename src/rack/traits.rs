//! What a prediction needs to know of a garment: its build-up, and whom it is kin to; and of a reference its ticket too.

use crate::garment::Garment;
use crate::trade::{Name, PriceKind, Ticket};

/// A build-up's ticket as a lognormal, in US dollars: the currency in which the constants of this room stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Explained {
    mu: f64,
    sigma: f64,
    of_shop: f64,
}

impl Name {
    /// Mean and standard deviation of the logarithm of what the name multiplies the build-up by.
    ///
    /// # Source
    /// Judgement, rounded from published hedonic regressions of US consumer prices (Bureau of Labor Statistics, quality adjustment in the
    /// CPI, men's suits 2022 and men's underwear 2023): log price against national brands, exclusive or luxury suits +1.03, private label
    /// -0.10; underwear, premium national +0.32, private label -0.26; five single brands -0.34 to +0.78, spread 0.49.
    pub const fn premium(self) -> (f64, f64) {
        match self {
            Name::StoreLabel => (-0.10, 0.20),
            Name::Known => (0.15, 0.28),
            Name::Premium => (0.45, 0.38),
            Name::Designer => (1.05, 0.55),
        }
    }

    /// Share among garments of which nobody said. Judgement.
    pub const fn share(self) -> f64 {
        match self {
            Name::StoreLabel => 0.45,
            Name::Known => 0.35,
            Name::Premium => 0.15,
            Name::Designer => 0.05,
        }
    }

    /// Mean and standard deviation of the log premium when the name is not known.
    pub(super) fn unknown() -> (f64, f64) {
        let mean: f64 = Name::ALL.iter().map(|name| name.share() * name.premium().0).sum();
        let variance = |name: &Name| name.premium().1.powi(2) + (name.premium().0 - mean).powi(2);
        let variance: f64 = Name::ALL.iter().map(|name| name.share() * variance(name)).sum();
        (mean, variance.sqrt())
    }
}

impl Explained {
    /// Largest size of a log price, and largest spread, that are taken: far beyond any ticket, and safe to reckon with.
    const MOST: f64 = 50.0;

    /// Median `exp(mu)` US dollars and spread `sigma` of the logarithm. None for what is not finite, a negative spread, or a price beyond
    /// all tickets.
    pub fn new(mu: f64, sigma: f64) -> Option<Explained> {
        (mu.abs() <= Explained::MOST && (0.0..=Explained::MOST).contains(&sigma)).then_some(Explained { mu, sigma, of_shop: 0.0 })
    }

    /// The same, where so much of the spread comes from not knowing what the shop multiplies by. Two garments of one shop share that part,
    /// so one ticket seen there narrows the others. None when it is negative or more than the whole.
    pub fn with_shop_part(self, of_shop: f64) -> Option<Explained> {
        (0.0..=self.sigma).contains(&of_shop).then_some(Explained { of_shop, ..self })
    }

    /// Natural logarithm of the median, in US dollars.
    pub fn mu(&self) -> f64 {
        self.mu
    }

    /// Standard deviation of the natural logarithm.
    pub fn sigma(&self) -> f64 {
        self.sigma
    }

    /// The part of [`sigma`](Self::sigma) that garments of one shop share.
    pub fn of_shop(&self) -> f64 {
        self.of_shop
    }
}

/// What is known of a garment but its ticket.
#[derive(Clone, Debug, PartialEq)]
pub struct Traits {
    /// The build-up.
    pub explained: Explained,
    /// Kind of garment; any text that is the same for the same kind.
    pub family: String,
    /// Where it is sold, in any words that are the same for the same shop; none when not known.
    pub shop: Option<String>,
    /// Who made it, likewise.
    pub maker: Option<String>,
    /// Whose name is on it.
    pub name: Option<Name>,
}

impl Traits {
    /// Mean of the log ticket before any reference is looked at, and the variance that is the garment's own, for that name or for an
    /// unknown one.
    pub(super) fn before(&self, name: Option<Name>) -> (f64, f64) {
        let (mean, spread) = name.map_or_else(Name::unknown, Name::premium);
        let own = self.explained.sigma.powi(2) - self.explained.of_shop.powi(2);
        (self.explained.mu + mean, own.max(0.0) + spread * spread)
    }
}

/// A garment whose ticket is known and that predictions may lean on.
#[derive(Clone, Debug, PartialEq)]
pub struct Reference {
    traits: Traits,
    log_ticket: f64,
}

impl Reference {
    /// With that full price, as the natural logarithm of US dollars. None when it is not finite or beyond all tickets.
    pub fn new(traits: Traits, log_ticket: f64) -> Option<Reference> {
        (log_ticket.abs() <= Explained::MOST).then_some(Reference { traits, log_ticket })
    }

    /// What is known of it beside the ticket.
    pub fn traits(&self) -> &Traits {
        &self.traits
    }

    /// Natural logarithm of its ticket in US dollars.
    pub fn log_ticket(&self) -> f64 {
        self.log_ticket
    }
}

/// What a record says of whom a garment is kin to. Place and maker are compared without capitals and without space around them.
pub fn traits(garment: &Garment, explained: Explained, maker: Option<&str>, name: Option<Name>) -> Traits {
    let kin = |text: &str| Some(text.trim().to_lowercase()).filter(|text| !text.is_empty());
    Traits { explained, family: garment.family().key.to_owned(), shop: kin(garment.place()), maker: maker.and_then(kin), name }
}

/// The garment as a reference, where `dollars` is what one unit of its ticket's currency is worth in US dollars. None when the person has
/// taken it out, when it is second-hand, when it has no ticket, when that lies face down (a prediction that leaned on it would give it away), or when it is a
/// wholesale ticket, which says little of what a shopper pays.
pub fn reference(garment: &Garment, traits: Traits, dollars: f64) -> Option<Reference> {
    let ticket = garment.ticket_in_view().filter(|ticket| garment.may_teach() && ticket.kind == PriceKind::Retail)?;
    Reference::new(traits, (in_units(ticket) * dollars).ln())
}

/// A ticket's amount in whole units of its currency.
pub(super) fn in_units(ticket: &Ticket) -> f64 {
    ticket.currency.whole(ticket.minor)
}
