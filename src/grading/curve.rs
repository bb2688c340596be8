//! How likely each answer to a check is, given how well a garment is made.

use crate::quantity::normal;
use crate::trade::Aspect;

/// Standard deviation of the error that one person, reading one garment in one light, carries into all checks. Judgement.
pub(super) const READING_ERROR: f64 = 0.4;

/// Checks that look at the same thing share an error of their own, so that five looks at loose thread do not count five times.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    /// Hand, density, evenness, recovery of the cloth.
    Cloth,
    /// How pieces are joined and edges finished.
    Seams,
    /// Evenness, density and ends of stitching.
    Stitching,
    /// Stress points.
    Strength,
    /// Closures, metal, pocketing, labels.
    Trims,
    /// Wash, fade, abrasion, pressing.
    Finish,
    /// Twist, pairs, balance.
    Shape,
}

impl Group {
    /// All groups.
    pub const ALL: [Group; 7] =
        [Group::Cloth, Group::Seams, Group::Stitching, Group::Strength, Group::Trims, Group::Finish, Group::Shape];

    /// The aspect of a garment that the group belongs to.
    pub const fn aspect(self) -> Aspect {
        match self {
            Group::Cloth => Aspect::Cloth,
            Group::Seams | Group::Stitching | Group::Strength => Aspect::Making,
            Group::Trims => Aspect::Trims,
            Group::Finish => Aspect::Finish,
            Group::Shape => Aspect::Shape,
        }
    }

    /// Standard deviation of the error that the group's checks share, where quality among new garments has 1. Judgement, not
    /// measured: one stitching look resembles the next more than one seam resembles another.
    pub const fn spread(self) -> f64 {
        match self {
            Group::Stitching => 1.0,
            Group::Cloth | Group::Seams | Group::Strength | Group::Trims | Group::Finish | Group::Shape => 0.6,
        }
    }

    /// Place in [`Group::ALL`].
    pub(super) const fn index(self) -> usize {
        self as usize
    }
}

/// The response curve of a check: how steeply its answers follow quality, and where one answer gives way to the next.
#[derive(Debug)]
pub struct Curve {
    /// The group whose shared error the check carries.
    pub group: Group,
    /// Slope of the logistic curves, above 0.
    pub slope: f64,
    /// Where the next better answer becomes the likelier one, rising; one fewer than there are answers.
    pub thresholds: &'static [f64],
}

impl Curve {
    /// How many answers the check has.
    pub const fn levels(&self) -> usize {
        self.thresholds.len() + 1
    }

    /// How likely each answer is, worst first, for a person who never slips; the probabilities sum to 1.
    ///
    /// `eta` is quality with the errors of reading and of the group in it; 0 is the middle of the market, 1 one standard deviation.
    ///
    /// # Formula
    /// `P(answer >= k) = 1 / (1 + exp(-slope (eta - threshold_k)))`, and differences of neighbours.
    /// Total: where thresholds fall or are not numbers, the answer between them has probability 0.
    ///
    /// # Source
    /// Samejima, F. (1969), Estimation of latent ability using a response pattern of graded scores, Psychometrika Monograph 17.
    ///
    /// # Example
    /// ```
    /// use garment_assay::grading::{Curve, Group};
    ///
    /// let curve = Curve { group: Group::Seams, slope: 1.0, thresholds: &[-1.0, 1.0] };
    /// let probabilities = curve.probabilities(1.0);
    /// assert!((probabilities[2] - 0.5).abs() < 1e-12);
    /// ```
    pub fn probabilities(&self, eta: f64) -> Vec<f64> {
        let mut above = 1.0;
        let mut probabilities = Vec::with_capacity(self.levels());
        for k in 0..self.thresholds.len() {
            let next = self.at_least(k, eta, above);
            probabilities.push(above - next);
            above = next;
        }
        probabilities.push(above);
        probabilities
    }

    /// Probability of an answer beyond threshold `k`, held to at most that of the threshold before, so that answers never get
    /// a negative probability. `min` passes over a value that is not a number.
    pub(super) fn at_least(&self, k: usize, eta: f64, before: f64) -> f64 {
        let logistic = 1.0 / (1.0 + (-self.slope * (eta - self.thresholds[k])).exp());
        logistic.min(before)
    }
}

/// How closely a check's answers follow quality; a trade person's mark from 1 to 5.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Power {
    /// 1: hardly.
    Faint,
    /// 2: a little.
    Slight,
    /// 3: plainly.
    Fair,
    /// 4: strongly.
    Strong,
    /// 5: as closely as one look can.
    Telling,
}

impl Power {
    /// The slope of the response curve. Judgement, not measured.
    pub const fn slope(self) -> f64 {
        match self {
            Power::Faint => 0.3,
            Power::Slight => 0.6,
            Power::Fair => 0.9,
            Power::Strong => 1.2,
            Power::Telling => 1.6,
        }
    }
}

/// Why shares give no thresholds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SharesError {
    /// Fewer than two answers.
    TooFew,
    /// A share is zero, negative, infinite or not a number.
    NotPositive,
}

/// The thresholds that follow from how many of 100 new garments on the rails give each answer, worst first.
///
/// Shares need not sum to 100; they are scaled. The catalog keeps the result rounded to 2 decimals.
///
/// # Formula
/// `threshold_k = z(c_k) (1.702 / a) sqrt(1 + (a / 1.702)^2 (1 + d^2 + s^2))`: `c_k` share below answer k, `z` the normal quantile,
/// `a` slope, `d` reading error, `s` the group's spread. 1.702 fits a normal ogive to a logistic curve to within 0.01, so the shares
/// come back to within about a point.
///
/// # Errors
/// [`SharesError`] when the shares are not at least two positive numbers.
///
/// # Source
/// Normal mean of a probit, textbook; 1.702: Haley (1952), Stanford technical report 15 (from memory).
pub fn thresholds(power: Power, group: Group, shares: &[f64]) -> Result<Vec<f64>, SharesError> {
    if shares.len() < 2 {
        return Err(SharesError::TooFew);
    }
    let total: f64 = shares.iter().sum();
    if !(total.is_finite() && shares.iter().all(|&share| share > 0.0)) {
        return Err(SharesError::NotPositive);
    }
    let ratio = power.slope() / 1.702;
    let variance = 1.0 + READING_ERROR * READING_ERROR + group.spread() * group.spread();
    let scale = (1.0 + ratio * ratio * variance).sqrt() / ratio;
    let mut below = 0.0;
    let result = shares[..shares.len() - 1]
        .iter()
        .map(|share| {
            below += share / total;
            normal::point_below(below.min(1.0)) * scale
        })
        .collect();
    Ok(result)
}
