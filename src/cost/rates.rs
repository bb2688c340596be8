//! Rates: every price, wage and share behind a build-up, each with its range, its source and its day, and each to be changed by the person.

use std::collections::BTreeMap;

use super::market::Market;
use super::range::Range;
use crate::say;
use crate::source::Source;
use crate::trade::Day;

/// What a rate counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RateUnit {
    /// US dollars a piece.
    UsdAPiece,
    /// US dollars a metre of cloth at its full width.
    UsdAMetre,
    /// US dollars a standard minute, the factory's staff, power and idle time in it.
    UsdAMinute,
    /// A share, 1 for all of it.
    Share,
    /// How many times.
    Times,
    /// Units of the market's currency for one US dollar.
    ForOneUsd,
}

impl RateUnit {
    /// As it stands behind a number.
    pub fn words(self) -> &'static str {
        match self {
            RateUnit::UsdAPiece => say!("USD a piece"),
            RateUnit::UsdAMetre => say!("USD a metre"),
            RateUnit::UsdAMinute => say!("USD a minute"),
            RateUnit::Share => say!("share" | "of 1"),
            RateUnit::Times => say!("so many times" | "times"),
            RateUnit::ForOneUsd => say!("for 1 USD"),
        }
    }
}

/// One rate as it stands before anybody changes it.
#[derive(Debug)]
pub struct Rate {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// The words on the screen.
    pub(crate) name: &'static str,
    /// What it counts.
    pub unit: RateUnit,
    /// How much: one in ten below, half below, one in ten above.
    pub range: Range,
    /// What the range leans on.
    pub source: &'static Source,
    /// The day as of which it holds; prices age.
    pub as_of: Day,
}

crate::language::says!(Rate { name });

impl Rate {
    /// A rate as it comes.
    pub const fn new(
        key: &'static str,
        name: &'static str,
        unit: RateUnit,
        [low, usual, high]: [f64; 3],
        source: &'static Source,
        as_of: Day,
    ) -> Rate {
        Rate { key, name, unit, range: Range::new(low, usual, high), source, as_of }
    }
}

/// Content: the same rate is the same place in memory.
impl PartialEq for Rate {
    fn eq(&self, other: &Rate) -> bool {
        std::ptr::eq(self, other)
    }
}

/// A rate as a person changed it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edit {
    /// What they put in its place.
    pub range: Range,
    /// When.
    pub as_of: Day,
}

/// A rate as it acts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Acting {
    /// How much.
    pub range: Range,
    /// As of which day.
    pub as_of: Day,
    /// Whether a person changed it; mark it wherever it acts.
    pub edited: bool,
}

/// A market, and what a person changed of the rates. Facts only: market and edits are all there is to store.
#[derive(Clone, Debug, PartialEq)]
pub struct Rates {
    market: Market,
    edits: BTreeMap<&'static str, Edit>,
}

impl Rates {
    /// The rates of a market as they come.
    pub fn of(market: Market) -> Rates {
        Rates { market, edits: BTreeMap::new() }
    }

    /// The market.
    pub fn market(&self) -> Market {
        self.market
    }

    /// The same edits in another market. What was changed of one market's own rates waits until that market is taken up again.
    pub fn in_market(&self, market: Market) -> Rates {
        Rates { market, edits: self.edits.clone() }
    }

    /// The rate as it acts.
    pub fn acting(&self, rate: &Rate) -> Acting {
        match self.edits.get(rate.key) {
            Some(edit) => Acting { range: edit.range, as_of: edit.as_of, edited: true },
            None => Acting { range: rate.range, as_of: rate.as_of, edited: false },
        }
    }

    /// With a rate changed on that day. A range that breaks the rules of [`Range::checked`] changes nothing.
    pub fn with(&self, rate: &'static Rate, range: Range, as_of: Day) -> Rates {
        let mut next = self.clone();
        if Range::checked(range.low, range.usual, range.high).is_ok() {
            next.edits.insert(rate.key, Edit { range, as_of });
        }
        next
    }

    /// With one rate as it comes.
    pub fn without(&self, rate: &Rate) -> Rates {
        let mut next = self.clone();
        next.edits.remove(rate.key);
        next
    }

    /// With every rate as it comes.
    pub fn reset(&self) -> Rates {
        Rates::of(self.market)
    }

    /// From what was stored: a market and edits by key, against every rate there is. With it, what could not be taken: keys that no rate
    /// has, and ranges that break the rules of [`Range::checked`].
    pub fn of_stored<'a>(
        market: Market,
        stored: impl IntoIterator<Item = (&'a str, Edit)>,
        known: impl IntoIterator<Item = &'static Rate>,
    ) -> (Rates, Vec<(&'a str, Edit)>) {
        let known: Vec<&'static Rate> = known.into_iter().collect();
        let (mut rates, mut left) = (Rates::of(market), Vec::new());
        for (key, edit) in stored {
            let fits = Range::checked(edit.range.low, edit.range.usual, edit.range.high).is_ok();
            match known.iter().find(|rate| rate.key == key) {
                Some(rate) if fits => {
                    rates.edits.insert(rate.key, edit);
                }
                _ => left.push((key, edit)),
            }
        }
        (rates, left)
    }

    /// What was changed, by key: the stored form beside [`Market::key`].
    pub fn edits(&self) -> impl Iterator<Item = (&'static str, Edit)> {
        self.edits.iter().map(|(key, edit)| (*key, *edit))
    }
}
