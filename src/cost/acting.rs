//! Inputs as they act in one garment: what its checks found picks or mixes their amounts, and the rates fill them.

use super::bill::{Amount, Bill, Choice, Input, Value};
use super::range::LogNormal;
use super::rates::{Rate, Rates};
use crate::trade::Day;

/// What is known about one check of a garment.
#[derive(Clone, Debug, PartialEq)]
pub enum Known {
    /// It was not answered, or nobody could tell.
    Open,
    /// It does not apply to this garment.
    DoesNotApply,
    /// It was answered.
    Found {
        /// How much the answer speaks for each level, in the check's order.
        weights: Vec<f64>,
        /// Keys of those levels.
        levels: Vec<&'static str>,
        /// Chance that the answer is a slip and says nothing, 0 to 1.
        slip: f64,
        /// The reading behind it with its standard uncertainty, in the instrument's unit, if there is one.
        reading: Option<(f64, f64)>,
    },
}

/// An input as it acts in one garment.
pub(super) struct ActingInput {
    pub(super) input: &'static Input,
    /// How many parts use it.
    pub(super) used: usize,
    /// The amount as it is, over all that is not known.
    pub(super) amount: LogNormal,
    /// Spread that is left once the level of its check is known.
    pub(super) within: f64,
    /// Spread by which level it is, level by level; the squares and `within` sum to the whole.
    pub(super) between: Vec<f64>,
    pub(super) check: Option<(&'static str, Standing)>,
    pub(super) rates: Vec<(&'static Rate, bool, Day)>,
}

#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Standing {
    Open,
    Answered,
    DoesNotApply,
}

/// A rate as it acts.
pub(super) fn rate_as(rate: &Rate, rates: &Rates) -> LogNormal {
    rates.acting(rate).range.log_normal()
}

/// An input in one garment.
pub(super) fn act(input: &'static Input, rates: &Rates, known: &impl Fn(&str) -> Known) -> ActingInput {
    let plain = |amount: LogNormal, check, rates| ActingInput {
        input,
        used: 1,
        amount,
        within: amount.sigma,
        between: Vec::new(),
        check,
        rates,
    };
    let (check, choices, over) = match &input.value {
        Value::Fixed(amount) => return plain(amount_of(amount, rates), None, note(amount, rates).into_iter().collect()),
        Value::By { check, choices, reading_over } => (*check, *choices, *reading_over),
    };
    let standing = match known(check) {
        Known::DoesNotApply => return plain(LogNormal::ONE, Some((check, Standing::DoesNotApply)), Vec::new()),
        Known::Open => None,
        Known::Found { reading: Some((value, spread)), .. } if over.is_some() && value > 0.0 && value.is_finite() => {
            let over = over.filter(|over| *over > 0.0).unwrap_or(1.0);
            let amount = LogNormal::of_moments(value / over, (spread / over).powi(2));
            return plain(amount, Some((check, Standing::Answered)), Vec::new());
        }
        Known::Found { weights, levels, slip, .. } => Some((weights, levels, slip)),
    };
    let weights = weights_of(choices, standing.as_ref());
    let amounts: Vec<LogNormal> = choices.iter().map(|choice| amount_of(&choice.amount, rates)).collect();
    let amount = LogNormal::one_of(weights.iter().copied().zip(amounts.iter().copied()));
    // In logarithms the spread parts into what lies within the levels and what lies between them; both are then brought to the whole that
    // mean and variance ask for.
    let all: f64 = weights.iter().sum();
    let middle: f64 = weights.iter().zip(&amounts).map(|(weight, part)| weight * part.mu).sum::<f64>() / all;
    let inside: f64 = weights.iter().zip(&amounts).map(|(weight, part)| weight * part.sigma.powi(2)).sum::<f64>() / all;
    let far: Vec<f64> = weights.iter().zip(&amounts).map(|(weight, part)| (weight / all).sqrt() * (part.mu - middle)).collect();
    let whole = inside + far.iter().map(|far| far * far).sum::<f64>();
    let scale = if whole > 0.0 && whole.is_finite() { amount.sigma / whole.sqrt() } else { 0.0 };
    let mut named: Vec<(&'static Rate, bool, Day)> = Vec::new();
    for (choice, _) in choices.iter().zip(&weights).filter(|(_, weight)| **weight > 0.0) {
        named.extend(note(&choice.amount, rates));
    }
    ActingInput {
        input,
        used: 1,
        amount,
        within: if scale > 0.0 { inside.sqrt() * scale } else { amount.sigma },
        between: if scale > 0.0 { far.into_iter().map(|far| far * scale).collect() } else { Vec::new() },
        check: Some((check, if standing.is_some() { Standing::Answered } else { Standing::Open })),
        rates: named,
    }
}

fn amount_of(amount: &Amount, rates: &Rates) -> LogNormal {
    match amount {
        Amount::Rate(rate) => rate_as(rate, rates),
        Amount::Own(range) => range.log_normal(),
    }
}

fn note(amount: &Amount, rates: &Rates) -> Option<(&'static Rate, bool, Day)> {
    match amount {
        Amount::Rate(rate) => {
            let acting = rates.acting(rate);
            Some((rate, acting.edited, acting.as_of))
        }
        Amount::Own(_) => None,
    }
}

/// How much speaks for each choice: the answer, but for the chance that it is a slip; the shares on sale where there is none.
fn weights_of(choices: &[Choice], found: Option<&(Vec<f64>, Vec<&'static str>, f64)>) -> Vec<f64> {
    let all: f64 = choices.iter().map(|choice| f64::from(choice.share)).sum();
    let shares = |choice: &Choice| if all > 0.0 { f64::from(choice.share) / all } else { 1.0 / choices.len() as f64 };
    let Some((weights, levels, slip)) = found else { return choices.iter().map(shares).collect() };
    let says = |choice: &Choice| {
        let place = levels.iter().position(|level| *level == choice.level);
        place.and_then(|place| weights.get(place)).copied().filter(|weight| weight.is_finite() && *weight > 0.0).unwrap_or(0.0)
    };
    let said: f64 = choices.iter().map(says).sum();
    let slip = if said > 0.0 && *slip >= 0.0 { slip.min(1.0) } else { 1.0 };
    let said = if said > 0.0 { said } else { 1.0 };
    choices.iter().map(|choice| (1.0 - slip) * says(choice) / said + slip * shares(choice)).collect()
}

/// The duty as a share of its base, and how the check on the country stands.
pub(super) fn duty(bill: &Bill, rates: &Rates, known: &impl Fn(&str) -> Known) -> (LogNormal, Standing) {
    let Some(duty) = bill.duties.iter().find(|duty| duty.market == rates.market()) else {
        return (LogNormal::NOTHING, Standing::DoesNotApply);
    };
    let open = f64::from(duty.open.min(100)) / 100.0;
    let (pays, standing) = match known(duty.check) {
        Known::Open => (open, Standing::Open),
        Known::DoesNotApply => (open, Standing::DoesNotApply),
        Known::Found { weights, levels, slip, .. } => {
            let share = |level: &str| {
                let some = duty.pays.iter().find(|(key, _)| *key == level);
                some.map_or(1.0, |(_, share)| f64::from((*share).min(100)) / 100.0)
            };
            let all: f64 = weights.iter().sum();
            let said: f64 = weights.iter().zip(&levels).map(|(weight, level)| weight * share(level)).sum::<f64>() / all;
            let said = if said.is_finite() { (1.0 - slip) * said + slip * open } else { open };
            (said.clamp(0.0, 1.0), Standing::Answered)
        }
    };
    let rate = rate_as(duty.rate, rates);
    // Few pay at all: then mostly nothing, and at times the whole.
    (LogNormal::one_of([(pays, rate), (1.0 - pays, LogNormal::NOTHING)]), standing)
}
