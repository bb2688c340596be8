//! Student's t distribution, moved and stretched, and mixtures of it: what a prediction of a log price is.

use std::f64::consts::PI;

use super::areas::{beta_area, ln_beta, ln_gamma, reached};

/// A Student t distribution of a log price.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StudentT {
    degrees: f64,
    centre: f64,
    scale: f64,
}

impl StudentT {
    /// With so many degrees of freedom, about that centre. None when a number is not finite, or degrees or scale are not above 0.
    pub fn new(degrees: f64, centre: f64, scale: f64) -> Option<StudentT> {
        let fits = degrees.is_finite() && centre.is_finite() && scale.is_finite() && degrees > 0.0 && scale > 0.0;
        fits.then_some(StudentT { degrees, centre, scale })
    }

    /// Degrees of freedom: the fewer, the heavier the tails.
    pub fn degrees(&self) -> f64 {
        self.degrees
    }

    /// Middle, also the median.
    pub fn centre(&self) -> f64 {
        self.centre
    }

    /// Stretch; the standard deviation is larger by `sqrt(degrees / (degrees - 2))`.
    pub fn scale(&self) -> f64 {
        self.scale
    }

    /// Natural logarithm of the density at `x`. Its negative is the log score of the prediction, when `x` comes true.
    ///
    /// # Source
    /// Abramowitz and Stegun, 26.7 (from memory); scipy in the tests.
    pub fn ln_density(&self, x: f64) -> f64 {
        let z = (x - self.centre) / self.scale;
        ln_gamma(0.5 * (self.degrees + 1.0))
            - ln_gamma(0.5 * self.degrees)
            - 0.5 * (self.degrees * PI).ln()
            - self.scale.ln()
            - 0.5 * (self.degrees + 1.0) * (z * z / self.degrees).ln_1p()
    }

    /// Probability of a value below `x`; a half for what is no number.
    ///
    /// # Source
    /// Abramowitz and Stegun, 26.7.1 with 26.5.27 (from memory); scipy in the tests.
    pub fn below(&self, x: f64) -> f64 {
        let z = (x - self.centre) / self.scale;
        if z.is_nan() {
            return 0.5;
        }
        let (square, whole) = (z * z, self.degrees + z * z);
        if whole.is_infinite() {
            return if z < 0.0 { 0.0 } else { 1.0 };
        }
        // `degrees / whole` and its rest are both exact near the middle and far out.
        let tail = 0.5 * beta_area(self.degrees / whole, square / whole, 0.5 * self.degrees, 0.5);
        if z < 0.0 { tail } else { 1.0 - tail }
    }

    /// The value below which a share `p` lies; `p` outside 0 to 1, or no number, counts as the nearer of 1e-12 and 1 - 1e-12, or the middle.
    pub fn quantile(&self, p: f64) -> f64 {
        Mixture { parts: vec![(1.0, *self)] }.quantile(p)
    }

    /// Continuous ranked probability score when `x` comes true, in the unit of `x`; lower is better. None with one degree or less.
    ///
    /// # Formula
    /// `s [z (2 F(z) - 1) + 2 f(z) (v + z^2)/(v - 1) - 2 sqrt(v)/(v - 1) B(1/2, v - 1/2) / B(1/2, v/2)^2]`.
    ///
    /// # Source
    /// Jordan, Krueger and Lerch (2019), Evaluating probabilistic forecasts with scoringRules, appendix (from memory); checked against
    /// `scoringrules` 0.10.0.
    pub fn ranked_score(&self, x: f64) -> Option<f64> {
        let v = self.degrees;
        if v <= 1.0 || !x.is_finite() {
            return None;
        }
        let z = (x - self.centre) / self.scale;
        let density = (self.ln_density(x)).exp() * self.scale;
        let spread = 2.0 * v.sqrt() / (v - 1.0) * (ln_beta(0.5, v - 0.5) - 2.0 * ln_beta(0.5, 0.5 * v)).exp();
        Some(self.scale * (z * (2.0 * self.below(x) - 1.0) + 2.0 * density * (v + z * z) / (v - 1.0) - spread))
    }
}

/// A prediction that is one of several, each with its weight.
#[derive(Clone, Debug, PartialEq)]
pub struct Mixture {
    parts: Vec<(f64, StudentT)>,
}

impl Mixture {
    /// Parts with their weights, which are brought to a sum of 1. None without a part of a weight above 0, and for weights below 0 or not
    /// finite.
    pub fn new(parts: impl IntoIterator<Item = (f64, StudentT)>) -> Option<Mixture> {
        let mut parts: Vec<(f64, StudentT)> = parts.into_iter().collect();
        let sum: f64 = parts.iter().map(|(weight, _)| weight).sum();
        if !(sum > 0.0 && sum.is_finite()) || parts.iter().any(|(weight, _)| *weight < 0.0) {
            return None;
        }
        parts.iter_mut().for_each(|(weight, _)| *weight /= sum);
        Some(Mixture { parts })
    }

    /// The parts and their weights, which sum to 1.
    pub fn parts(&self) -> &[(f64, StudentT)] {
        &self.parts
    }

    /// Density at `x`.
    pub fn density(&self, x: f64) -> f64 {
        self.parts.iter().map(|(weight, part)| weight * part.ln_density(x).exp()).sum()
    }

    /// Probability of a value below `x`; a half for what is no number.
    pub fn below(&self, x: f64) -> f64 {
        self.parts.iter().map(|(weight, part)| weight * part.below(x)).sum()
    }

    /// The value below which a share `p` lies; `p` as in [`StudentT::quantile`].
    pub fn quantile(&self, p: f64) -> f64 {
        let p = if p.is_nan() { 0.5 } else { p.clamp(1e-12, 1.0 - 1e-12) };
        let of = |part: &StudentT, way: f64, reach: f64| part.centre + way * reach * part.scale;
        // Widen until the quantile lies between; the reach of every share at once is found by doubling.
        let mut reach = 2.0;
        loop {
            let low = self.parts.iter().map(|(_, part)| of(part, -1.0, reach)).fold(f64::INFINITY, f64::min);
            let high = self.parts.iter().map(|(_, part)| of(part, 1.0, reach)).fold(f64::NEG_INFINITY, f64::max);
            if (self.below(low) <= p && self.below(high) >= p) || reach > 1e280 {
                return reached(p, (low, high), |x| self.below(x), |x| self.density(x));
            }
            reach *= 2.0;
        }
    }

    /// The same weights after a value has come true: how well each part foretold it. As they were for what is no number.
    pub fn weights_after(&self, x: f64) -> Vec<f64> {
        let logs: Vec<f64> = self.parts.iter().map(|(weight, part)| weight.ln() + part.ln_density(x)).collect();
        let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        if !most.is_finite() {
            return self.parts.iter().map(|(weight, _)| *weight).collect();
        }
        let sum: f64 = logs.iter().map(|log| (log - most).exp()).sum();
        logs.iter().map(|log| (log - most).exp() / sum).collect()
    }
}
