//! Amounts that are only known as a range: log-normal, so that a dear end lies further off than a cheap one and none falls below nothing.

use crate::quantity::normal::area_above;
use crate::say;

/// Standard normal quantile of 0.9: the tenth and the ninetieth of a hundred lie so many spreads either side of the median.
pub const TENTH: f64 = 1.281_551_565_544_600_4;

/// Why three numbers are no range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RangeFault {
    /// One of them is no finite number.
    NotANumber,
    /// One of them lies below nothing.
    Negative,
    /// Only an amount that is nothing throughout may begin at nothing.
    Nothing,
    /// They do not stand in order.
    OutOfOrder,
}

impl std::fmt::Display for RangeFault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            RangeFault::NotANumber => say!("Type a number in each of the three places."),
            RangeFault::Negative => say!("An amount below nothing cannot stand here."),
            RangeFault::Nothing => say!("Give a low end above nothing, or nothing in all three places."),
            RangeFault::OutOfOrder => say!("Put the smallest first, then the usual, then the largest."),
        })
    }
}

/// Three numbers that say how much something is: of ten cases one lies below `low`, one above `high`, and half below `usual`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// One in ten lies below it.
    pub low: f64,
    /// Half lie below it.
    pub usual: f64,
    /// One in ten lies above it.
    pub high: f64,
}

impl Range {
    /// For tables of content, which a test holds to the rules of [`Range::checked`].
    pub const fn new(low: f64, usual: f64, high: f64) -> Range {
        Range { low, usual, high }
    }

    /// That much, within so many times either way.
    pub const fn within(usual: f64, times: f64) -> Range {
        Range { low: usual / times, usual, high: usual * times }
    }

    /// An amount that is known.
    pub const fn exactly(amount: f64) -> Range {
        Range { low: amount, usual: amount, high: amount }
    }

    /// A range as a person typed it.
    ///
    /// # Errors
    /// [`RangeFault`] for what is no number, lies below nothing, or is out of order.
    pub fn checked(low: f64, usual: f64, high: f64) -> Result<Range, RangeFault> {
        if ![low, usual, high].into_iter().all(f64::is_finite) {
            return Err(RangeFault::NotANumber);
        }
        if low < 0.0 {
            return Err(RangeFault::Negative);
        }
        if low > usual || usual > high {
            return Err(RangeFault::OutOfOrder);
        }
        if low == 0.0 && high > 0.0 {
            return Err(RangeFault::Nothing);
        }
        Ok(Range { low, usual, high })
    }

    /// As a distribution: the median as it stands, the spread from the two ends together.
    ///
    /// # Formula
    /// `mu = ln usual`, `sigma = ln(high / low) / (2 * 1.2816)`.
    ///
    /// # Source
    /// Model, section 2. Vector LN-01 (scipy).
    pub fn log_normal(self) -> LogNormal {
        if self.usual <= 0.0 {
            return LogNormal::NOTHING;
        }
        let sigma = (self.high / self.low).ln() / (2.0 * TENTH);
        LogNormal { mu: self.usual.ln(), sigma: if sigma.is_finite() && sigma > 0.0 { sigma } else { 0.0 } }
    }
}

/// An amount whose natural logarithm is normal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogNormal {
    /// Natural logarithm of the median; minus infinity for nothing.
    pub mu: f64,
    /// Standard deviation of the natural logarithm; 0 where it is known.
    pub sigma: f64,
}

impl LogNormal {
    /// Nothing at all.
    pub const NOTHING: LogNormal = LogNormal { mu: f64::NEG_INFINITY, sigma: 0.0 };
    /// Exactly one: the factor that changes nothing.
    pub const ONE: LogNormal = LogNormal { mu: 0.0, sigma: 0.0 };

    /// An amount that is known; nothing where it is no number above nothing.
    pub fn certain(amount: f64) -> LogNormal {
        if amount > 0.0 && amount.is_finite() { LogNormal { mu: amount.ln(), sigma: 0.0 } } else { LogNormal::NOTHING }
    }

    /// The log-normal amount with that mean and variance; nothing where the mean is not above nothing.
    ///
    /// # Formula
    /// `sigma^2 = ln(1 + variance / mean^2)`, `mu = ln mean - sigma^2 / 2`.
    pub fn of_moments(mean: f64, variance: f64) -> LogNormal {
        if !(mean > 0.0 && mean.is_finite()) {
            return LogNormal::NOTHING;
        }
        let square = (variance / mean / mean).max(0.0).ln_1p();
        let square = if square.is_finite() { square } else { 0.0 };
        LogNormal { mu: mean.ln() - square / 2.0, sigma: square.sqrt() }
    }

    /// Half lie below it.
    pub fn median(self) -> f64 {
        self.mu.exp()
    }

    /// The average, which lies above the median.
    pub fn mean(self) -> f64 {
        (self.mu + self.sigma * self.sigma / 2.0).exp()
    }

    /// The average of the square, less the square of the average.
    pub fn variance(self) -> f64 {
        let mean = self.mean();
        mean * mean * (self.sigma * self.sigma).exp_m1()
    }

    /// The tenth, the fiftieth and the ninetieth of a hundred.
    pub fn range(self) -> Range {
        let half = TENTH * self.sigma;
        Range { low: (self.mu - half).exp(), usual: self.median(), high: (self.mu + half).exp() }
    }

    /// Times another amount that has nothing to do with it.
    pub fn times(self, other: LogNormal) -> LogNormal {
        LogNormal { mu: self.mu + other.mu, sigma: self.sigma.hypot(other.sigma) }
    }

    /// To that power; a negative one divides. Nothing stays nothing.
    pub fn power(self, power: f64) -> LogNormal {
        if self.mu == f64::NEG_INFINITY {
            return LogNormal::NOTHING;
        }
        LogNormal { mu: self.mu * power, sigma: self.sigma * power.abs() }
    }

    /// How many spreads an amount lies above the median; none where the spread is nothing or the amount is not above nothing.
    pub fn spreads_above(self, amount: f64) -> Option<f64> {
        let far = (amount.ln() - self.mu) / self.sigma;
        far.is_finite().then_some(far)
    }

    /// Of a hundred, how many lie below an amount, as a share of 1; none as in [`LogNormal::spreads_above`].
    pub fn share_below(self, amount: f64) -> Option<f64> {
        self.spreads_above(amount).map(|far| area_above(-far))
    }

    /// One of several amounts, each with its weight; the weights need not sum to 1. Mean and variance are those of the mixture.
    ///
    /// # Formula
    /// Mean `sum w m`, mean square `sum w m^2 exp(sigma^2)`, then [`LogNormal::of_moments`]. Nothing where no weight counts.
    pub fn one_of(parts: impl IntoIterator<Item = (f64, LogNormal)>) -> LogNormal {
        let (mut weights, mut mean, mut square) = (0.0, 0.0, 0.0);
        let (mut only, mut several) = (None, false);
        for (weight, part) in parts {
            if !(weight > 0.0 && weight.is_finite()) {
                continue;
            }
            several |= only.is_some_and(|other| other != part);
            only = Some(part);
            let amount = part.mean();
            weights += weight;
            mean += weight * amount;
            square += weight * (amount * amount + part.variance());
        }
        match (only, several) {
            (None, _) => LogNormal::NOTHING,
            // One that is certain comes back digit for digit.
            (Some(part), false) => part,
            _ => LogNormal::of_moments(mean / weights, square / weights - (mean / weights).powi(2)),
        }
    }
}

/// One amount of a sum: what it leans on together with others, and what is its own.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Term {
    /// Natural logarithm of the median.
    pub mu: f64,
    /// Standard deviation of the natural logarithm that no other amount has a part in.
    pub own: f64,
    /// Inputs that other amounts may share: place of the input, and the standard deviation of the logarithm that comes from it, signed.
    pub shared: Vec<(usize, f64)>,
}

impl Term {
    /// An amount that shares nothing.
    pub fn alone(amount: LogNormal) -> Term {
        Term { mu: amount.mu, own: amount.sigma, shared: Vec::new() }
    }

    /// The amount by itself.
    pub fn amount(&self) -> LogNormal {
        LogNormal { mu: self.mu, sigma: self.covariance(self, 1.0).sqrt() }
    }

    /// Covariance of the logarithms of two amounts, whose own parts correlate so far.
    fn covariance(&self, other: &Term, own: f64) -> f64 {
        let shared: f64 = self
            .shared
            .iter()
            .flat_map(|(input, spread)| {
                other.shared.iter().filter(move |(same, _)| same == input).map(move |(_, far)| spread * far)
            })
            .sum();
        own * self.own * other.own + shared
    }
}

/// The sum of log-normal amounts, taken as log-normal itself.
///
/// # Formula
/// Fenton and Wilkinson: mean and variance of the sum are exact, `V = sum m_i m_j (exp(c_ij) - 1)` with `c_ij` the covariance of the
/// logarithms: shared inputs count as shared, and the own parts of two amounts correlate by `together` (0 to 1).
///
/// # Where it holds
/// Mean and variance always; the percentiles within about 2 per cent for the spreads of cost sheets (against draws, `tests/cost.rs`).
///
/// # Source
/// Fenton 1960, from memory; model, section 2. Vector SUM-01 (mpmath).
pub fn sum(terms: &[Term], together: f64) -> LogNormal {
    let means: Vec<f64> = terms.iter().map(|term| term.amount().mean()).collect();
    let mean: f64 = means.iter().sum();
    let mut variance = 0.0;
    for (place, term) in terms.iter().enumerate() {
        variance += means[place] * means[place] * term.covariance(term, 1.0).exp_m1();
        for (other, far) in terms.iter().enumerate().skip(place + 1) {
            variance += 2.0 * means[place] * means[other] * term.covariance(far, together).exp_m1();
        }
    }
    LogNormal::of_moments(mean, variance)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_range_gives_back_its_own_ends() {
        let range = Range::new(2.0, 3.0, 4.5).log_normal().range();
        assert!((range.low - 2.0).abs() < 1e-12 && (range.high - 4.5).abs() < 1e-12, "{range:?}");
    }

    #[test]
    fn a_mixture_has_the_mean_of_its_parts_and_more_spread_than_any_when_they_lie_apart() {
        let (cheap, dear) = (Range::new(0.9, 1.0, 1.1).log_normal(), Range::new(3.6, 4.0, 4.4).log_normal());
        let mixed = LogNormal::one_of([(1.0, cheap), (3.0, dear)]);
        assert!((mixed.mean() - (cheap.mean() + 3.0 * dear.mean()) / 4.0).abs() < 1e-12);
        assert!(mixed.sigma > cheap.sigma.max(dear.sigma));
        assert_eq!(LogNormal::one_of([(0.0, cheap), (1.0, dear)]), dear);
    }

    #[test]
    fn a_shared_input_widens_a_sum_and_a_sum_of_one_is_that_one() {
        let apart: Vec<Term> = (0..3).map(|_| Term::alone(LogNormal { mu: 0.0, sigma: 0.4 })).collect();
        let shared: Vec<Term> = (0..3).map(|_| Term { mu: 0.0, own: 0.0, shared: vec![(7, 0.4)] }).collect();
        assert!(sum(&shared, 0.0).sigma > sum(&apart, 0.0).sigma + 0.1);
        // Three that are one thing are three times that thing.
        assert!((sum(&shared, 0.0).sigma - 0.4).abs() < 1e-12 && (sum(&shared, 0.0).median() - 3.0).abs() < 1e-12);
        let one = sum(&apart[..1], 0.0);
        assert!((one.sigma - 0.4).abs() < 1e-12 && one.mu.abs() < 1e-12);
    }

    #[test]
    fn nothing_and_nonsense_do_not_spread() {
        assert_eq!(sum(&[], 0.3), LogNormal::NOTHING);
        let some = Term::alone(LogNormal { mu: 1.0, sigma: 0.2 });
        let with = sum(&[Term::alone(LogNormal::NOTHING), some.clone()], 0.3);
        assert!((with.mu - 1.0).abs() < 1e-12 && (with.sigma - 0.2).abs() < 1e-12);
        assert_eq!(Range::checked(1.0, f64::NAN, 2.0), Err(RangeFault::NotANumber));
        assert_eq!(Range::checked(2.0, 1.0, 3.0), Err(RangeFault::OutOfOrder));
        assert_eq!(Range::checked(-1.0, 1.0, 3.0), Err(RangeFault::Negative));
        assert_eq!(Range::checked(0.0, 1.0, 3.0), Err(RangeFault::Nothing));
        assert!(Range::checked(0.0, 0.0, 0.0).is_ok());
    }
}
