//! What the width of a build-up comes from: which open checks, rates and judgements, and how much of it each.

use std::collections::BTreeMap;

use super::chain::{Chain, TOGETHER};
use super::range::{LogNormal, Term};

/// One reason why the ticket is not known better.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cause {
    /// What it is.
    pub kind: CauseKind,
    /// Its share of the variance of the logarithm of the ticket, 0 to 1.
    pub share: f64,
}

/// What keeps a ticket wide.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CauseKind {
    /// A check that is open, by key.
    Open(&'static str),
    /// A check that was answered but leaves doubt, by key.
    Doubt(&'static str),
    /// An input that several parts share, by name.
    Input(&'static str),
    /// What is a part's own, by the part's name.
    Part(&'static str),
    /// Overhead and margin of the factory.
    Factory,
    /// Duty and entry fees.
    Duty,
    /// Freight.
    Freight,
    /// What brand and shop take, the kind of shop being known.
    Shop,
    /// The kind of shop is not known.
    KindOfShop,
    /// Tax and exchange.
    TaxAndExchange,
}

/// Shares out the variance of the ticket's logarithm to first order: the weight of each part in the whole, times what it owes to a cause. What
/// the own parts owe to each other, being correlated, goes to each alike.
pub(super) fn widest(
    chain: &Chain,
    terms: &[Term],
    owners: &[&'static str],
    kind_of: impl Fn(usize) -> CauseKind,
    shop_is_open: bool,
) -> Vec<Cause> {
    let means: Vec<f64> = terms.iter().map(|term| term.amount().mean()).collect();
    let direct: f64 = means.iter().sum();
    let price = direct * chain.overhead.mean() * chain.margin.mean() * chain.duty.mean();
    let way = chain.freight.mean() * chain.freight_duty.mean();
    let landed = price + way;
    let weight = |mean: f64| if direct > 0.0 && landed > 0.0 { mean / direct * price / landed } else { 0.0 };
    let mut causes: Vec<Cause> = Vec::new();
    let mut add = |kind: CauseKind, variance: f64| {
        if !(variance > 0.0 && variance.is_finite()) {
            return;
        }
        match causes.iter_mut().find(|cause| cause.kind == kind) {
            Some(cause) => cause.share += variance,
            None => causes.push(Cause { kind, share: variance }),
        }
    };
    let mut owed: BTreeMap<usize, f64> = BTreeMap::new();
    for (term, mean) in terms.iter().zip(&means) {
        for (id, spread) in &term.shared {
            *owed.entry(*id).or_default() += weight(*mean) * spread;
        }
    }
    for (id, owed) in owed {
        add(kind_of(id), owed * owed);
    }
    let own: Vec<f64> = terms.iter().zip(&means).map(|(term, mean)| weight(*mean) * term.own).collect();
    let all: f64 = own.iter().sum();
    for (own, owner) in own.iter().zip(owners) {
        add(CauseKind::Part(owner), (1.0 - TOGETHER) * own * own + TOGETHER * own * all);
    }
    let square = |part: LogNormal| part.sigma * part.sigma;
    let (of_price, of_way) = if landed > 0.0 { (price / landed, way / landed) } else { (0.0, 0.0) };
    add(CauseKind::Factory, of_price * of_price * (square(chain.overhead) + square(chain.margin)));
    add(CauseKind::Duty, (of_price * chain.duty.sigma + of_way * chain.freight_duty.sigma).powi(2));
    add(CauseKind::Freight, of_way * of_way * square(chain.freight));
    add(if shop_is_open { CauseKind::KindOfShop } else { CauseKind::Shop }, square(chain.multiple));
    add(CauseKind::TaxAndExchange, square(chain.tax) + square(chain.exchange));
    let whole: f64 = causes.iter().map(|cause| cause.share).sum();
    causes.iter_mut().for_each(|cause| cause.share /= whole);
    causes.sort_by(|one, other| other.share.total_cmp(&one.share));
    causes
}
