//! The rates that a person can change, as a list to look them up in: those of one market, grouped by what they pay for.

use crate::catalog::FAMILIES;
use crate::cost::{Bill, Channel, FACTORY_MARGIN, Market, OVERHEAD, Rate, common_rates};
use crate::say;
use crate::trade::Aspect;

/// What a rate pays for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum RateGroup {
    /// Cloth by the metre.
    Cloth,
    /// Sewing minutes, tests, what the factory takes.
    Making,
    /// Wash and dry work.
    Finish,
    /// Closures, labels, pocket cloth.
    Trims,
    /// Freight, duty, fees at entry.
    FreightAndDuty,
    /// What brand and shop take.
    Shop,
    /// Tax on the sale.
    Tax,
    /// The currency for one US dollar.
    Exchange,
}

impl RateGroup {
    /// All groups, in the order from cloth to ticket.
    pub const ALL: [RateGroup; 8] = [
        RateGroup::Cloth,
        RateGroup::Making,
        RateGroup::Finish,
        RateGroup::Trims,
        RateGroup::FreightAndDuty,
        RateGroup::Shop,
        RateGroup::Tax,
        RateGroup::Exchange,
    ];

    /// The words on the screen.
    pub fn name(self) -> &'static str {
        match self {
            RateGroup::Cloth => say!("Cloth"),
            RateGroup::Making => say!("Making and factory"),
            RateGroup::Finish => say!("Finish"),
            RateGroup::Trims => say!("Trims"),
            RateGroup::FreightAndDuty => say!("Freight and duty"),
            RateGroup::Shop => say!("Brand and shop"),
            RateGroup::Tax => say!("Tax"),
            RateGroup::Exchange => say!("Exchange rate"),
        }
    }

    const fn of(aspect: Aspect) -> RateGroup {
        match aspect {
            Aspect::Cloth => RateGroup::Cloth,
            Aspect::Making | Aspect::Shape => RateGroup::Making,
            Aspect::Finish => RateGroup::Finish,
            Aspect::Trims => RateGroup::Trims,
        }
    }
}

/// Every rate that a person can change: those of all markets and shops, and those of every family's bill, each once.
pub fn every_rate() -> Vec<&'static Rate> {
    let mut rates: Vec<&'static Rate> = Vec::new();
    let bills = FAMILIES.iter().filter_map(|family| family.bill).flat_map(Bill::rates);
    for rate in common_rates().chain(bills) {
        if !rates.contains(&rate) {
            rates.push(rate);
        }
    }
    rates
}

/// The rates that act in a market, each once, under what they pay for: first in a bill first, and those of one line beside each other. Rates
/// of other markets are not among them.
pub fn rates_in(market: Market) -> Vec<(RateGroup, Vec<&'static Rate>)> {
    let mut placed: Vec<(RateGroup, &'static Rate)> = Vec::new();
    let mut place = |group: RateGroup, rate: &'static Rate| {
        if !placed.iter().any(|(_, other)| *other == rate) {
            placed.push((group, rate));
        }
    };
    for bill in FAMILIES.iter().filter_map(|family| family.bill) {
        for line in bill.lines {
            line.rates().into_iter().for_each(|rate| place(RateGroup::of(line.pays_for), rate));
        }
        place(RateGroup::FreightAndDuty, bill.freight);
        bill.duties.iter().filter(|duty| duty.market == market).for_each(|duty| place(RateGroup::FreightAndDuty, duty.rate));
    }
    place(RateGroup::Making, &OVERHEAD);
    place(RateGroup::Making, &FACTORY_MARGIN);
    place(RateGroup::FreightAndDuty, market.fees());
    for channel in std::iter::once(None).chain(Channel::ALL.map(Some)) {
        Channel::multiples(channel).iter().for_each(|rate| place(RateGroup::Shop, rate));
    }
    place(RateGroup::Tax, market.tax());
    place(RateGroup::Exchange, market.exchange());
    let of = |group: RateGroup| placed.iter().filter(|(other, _)| *other == group).map(|(_, rate)| *rate).collect();
    RateGroup::ALL.into_iter().map(|group| (group, of(group))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_lists_of_all_markets_together_hold_every_rate_and_each_list_holds_none_twice() {
        let mut found: Vec<&'static Rate> = Vec::new();
        for market in Market::ALL {
            let list: Vec<&'static Rate> = rates_in(market).into_iter().flat_map(|(_, rates)| rates).collect();
            for (place, rate) in list.iter().enumerate() {
                assert!(!list[..place].contains(rate), "{} stands twice", rate.key);
                if !found.contains(rate) {
                    found.push(rate);
                }
            }
        }
        for rate in every_rate() {
            assert!(found.contains(&rate), "{} can be changed nowhere", rate.key);
        }
        assert_eq!(found.len(), every_rate().len());
    }

    #[test]
    fn every_group_has_a_rate_in_every_market() {
        for market in Market::ALL {
            for (group, rates) in rates_in(market) {
                assert!(!rates.is_empty(), "{market:?} has nothing under {}", group.name());
            }
        }
    }
}
