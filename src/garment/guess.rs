//! A guess at the ticket, made before the ticket is seen, and what the tool showed at that moment. Scores are worked out elsewhere.

use crate::trade::{Currency, Day, PriceKind};

/// The range that a person committed before turning the ticket over: four times in five, they think, the ticket lies inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Guess {
    low: u64,
    high: u64,
    best: Option<u64>,
    currency: Currency,
    kind: PriceKind,
    made: Day,
    shown: Option<Shown>,
}

/// The tool's own range at the moment of a guess, in the currency and kind of the guess, in minor units.
///
/// It was worked out, and it is kept all the same, alone of all that is worked out: it is a fact about what stood beside the guess. Rates
/// and references change later, and a score that changed with them would be no score.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shown {
    low: u64,
    middle: u64,
    high: u64,
}

impl Guess {
    /// A range in minor units of a currency, made on that day. None when it has no width, starts at nothing, or is upside down.
    pub const fn new(low: u64, high: u64, currency: Currency, kind: PriceKind, made: Day) -> Option<Guess> {
        if low == 0 || low >= high {
            return None;
        }
        Some(Guess { low, high, best: None, currency, kind, made, shown: None })
    }

    /// The same with the single price that the person thinks likeliest; none when that lies outside the range.
    pub const fn with_best(self, best: u64) -> Option<Guess> {
        if best < self.low || best > self.high {
            return None;
        }
        Some(Guess { best: Some(best), ..self })
    }

    /// The same with what the tool itself said at that moment.
    pub const fn beside(self, shown: Shown) -> Guess {
        Guess { shown: Some(shown), ..self }
    }

    /// Lower end, in minor units; above 0.
    pub const fn low(&self) -> u64 {
        self.low
    }

    /// Upper end, in minor units; above the lower.
    pub const fn high(&self) -> u64 {
        self.high
    }

    /// The price thought likeliest, if one was named; inside the range.
    pub const fn best(&self) -> Option<u64> {
        self.best
    }

    /// Currency of the amounts.
    pub const fn currency(&self) -> Currency {
        self.currency
    }

    /// Whether a retail or a wholesale ticket was guessed at.
    pub const fn kind(&self) -> PriceKind {
        self.kind
    }

    /// Day on which it was made.
    pub const fn made(&self) -> Day {
        self.made
    }

    /// What the tool said at that moment, if it said anything.
    pub const fn shown(&self) -> Option<&Shown> {
        self.shown.as_ref()
    }
}

impl Shown {
    /// Ends of an 80 % range and its median. None when they are out of order or start at nothing.
    pub const fn new(low: u64, middle: u64, high: u64) -> Option<Shown> {
        if low == 0 || low > middle || middle > high {
            return None;
        }
        Some(Shown { low, middle, high })
    }

    /// Lower end of the 80 % range.
    pub const fn low(&self) -> u64 {
        self.low
    }

    /// The median.
    pub const fn middle(&self) -> u64 {
        self.middle
    }

    /// Upper end of the 80 % range.
    pub const fn high(&self) -> u64 {
        self.high
    }
}
