//! How often a garment will be worn, and what one wearing costs: ranges only, since habits decide more than the make.

use super::range::{LogNormal, Range, TENTH};
use crate::quantity::normal::area_above;

/// How far the logarithm of the wearings grows with one step of quality (the width of a middle band). Judgement: one step is worth about
/// 16 per cent, 3 to 31 by its spread. It explains about a twentieth of what differs between garments, small on purpose: in a survey of
/// five countries garment, user and use together explain 11 to 43 per cent of how long clothes last (Laitala and Klepp 2020).
const QUALITY: f64 = 0.15;
/// Its standard deviation. Judgement.
const QUALITY_SPREAD: f64 = 0.10;
/// Standard deviation of the logarithm of planned wearings: people do not keep to plans. Judgement.
const PLAN_SPREAD: f64 = 0.5;

/// How long garments of a family last, and what it takes to keep them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Life {
    /// Median of wearings before the cloth gives way, at middling quality.
    pub wears: f64,
    /// Standard deviation of their logarithm.
    pub spread: f64,
    /// Washes, or cleanings, for one wearing.
    pub washes: f64,
    /// US dollars for one wash or cleaning.
    pub wash_cost: f64,
    /// Years for which people keep such a piece.
    pub years: f64,
}

/// How often and how long a person means to wear it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plan {
    /// Wearings a month, above nothing.
    pub a_month: f64,
    /// Years, above nothing.
    pub years: f64,
}

/// What is paid for the piece apart from washing, in one currency.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Outlay {
    /// The price.
    pub price: f64,
    /// What it will be sold on for.
    pub resale: f64,
    /// What mending will cost.
    pub mending: f64,
    /// One wash or cleaning.
    pub wash_cost: f64,
}

/// Wearings of one garment: what its cloth lasts, and, where there is a plan, what its owner means to wear it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wears {
    lasts: LogNormal,
    planned: Option<LogNormal>,
    washes: f64,
}

impl Wears {
    /// From the family's life, quality and its spread in standard deviations among new garments, and a plan.
    ///
    /// # Formula
    /// Life: median `wears * exp(0.15 q)`, log variance `spread^2 + (0.15 u)^2 + (0.10 q)^2 + (0.10 u)^2`. Plan: median wearings a month
    /// times months. The smaller of the two counts; they have nothing to do with each other.
    ///
    /// # Where it holds
    /// None for amounts that are no numbers, and for a life or plan of nothing.
    ///
    /// # Source
    /// Model, section 6. Vectors WEAR-01 to WEAR-03 (scipy).
    pub fn new(life: &Life, quality: f64, spread: f64, plan: Option<Plan>) -> Option<Wears> {
        let squares = [life.spread, QUALITY * spread, QUALITY_SPREAD * quality, QUALITY_SPREAD * spread];
        let lasts = LogNormal {
            mu: life.wears.ln() + QUALITY * quality,
            sigma: squares.into_iter().map(|part| part * part).sum::<f64>().sqrt(),
        };
        let planned = match plan {
            None => None,
            Some(plan) if plan.a_month > 0.0 && plan.years > 0.0 => {
                Some(LogNormal { mu: (plan.a_month * 12.0 * plan.years).ln(), sigma: PLAN_SPREAD })
            }
            Some(_) => return None,
        };
        let sound = |part: LogNormal| part.mu.is_finite() && part.sigma.is_finite() && part.sigma > 0.0;
        let washes = life.washes;
        (sound(lasts) && planned.is_none_or(sound) && washes.is_finite() && washes >= 0.0).then_some(Wears {
            lasts,
            planned,
            washes,
        })
    }

    /// Chance that it is worn so often or more; 1 for nothing and less, NaN for no number.
    pub fn reaches(&self, wears: f64) -> f64 {
        if wears <= 0.0 {
            return 1.0;
        }
        let reaches = |part: LogNormal| area_above((wears.ln() - part.mu) / part.sigma);
        reaches(self.lasts) * self.planned.map_or(1.0, reaches)
    }

    /// Wearings that so large a share of such garments stays below; `share` between 0 and 1, else NaN.
    fn quantile(&self, share: f64) -> f64 {
        if !(share > 0.0 && share < 1.0) {
            return f64::NAN;
        }
        let parts = [Some(self.lasts), self.planned];
        let end = |side: f64| parts.into_iter().flatten().map(move |part| part.mu + side * 10.0 * part.sigma);
        let (mut low, mut high) = (end(-1.0).fold(f64::INFINITY, f64::min), end(1.0).fold(f64::NEG_INFINITY, f64::max));
        // Halving some 60 times reaches the last digit of a logarithm.
        for _ in 0..64 {
            let middle = 0.5 * (low + high);
            if 1.0 - self.reaches(middle.exp()) < share { low = middle } else { high = middle }
        }
        (0.5 * (low + high)).exp()
    }

    /// One in ten is worn less than `low`, one in ten more than `high`.
    pub fn range(&self) -> Range {
        match self.planned {
            None => {
                let half = TENTH * self.lasts.sigma;
                let at = |z: f64| (self.lasts.mu + z).exp();
                Range { low: at(-half), usual: at(0.0), high: at(half) }
            }
            Some(_) => Range { low: self.quantile(0.1), usual: self.quantile(0.5), high: self.quantile(0.9) },
        }
    }

    /// What washing adds to one wearing.
    pub fn care(&self, outlay: &Outlay) -> f64 {
        self.washes * outlay.wash_cost
    }

    /// What one wearing costs: one in ten less than `low`, one in ten more than `high`.
    ///
    /// # Formula
    /// `(price - resale + mending) / wears + washes * wash cost`, the few wearings giving the high end. Exact where the net outlay is not
    /// below nothing; a piece that brings in more than it cost has its ends the other way round.
    pub fn cost(&self, outlay: &Outlay) -> Range {
        let (wears, net) = (self.range(), outlay.price - outlay.resale + outlay.mending);
        let (one, other) = (net / wears.high + self.care(outlay), net / wears.low + self.care(outlay));
        Range { low: one.min(other), usual: net / wears.usual + self.care(outlay), high: one.max(other) }
    }
}

/// Wearings from which a dearer piece costs no more for each than a cheaper one; none where its washing alone costs that much.
///
/// # Source
/// Model in full, section 7. WEAR-05: 180 / (0.40 - 0.06) is 529.4.
pub fn break_even(price: f64, care: f64, others_cost: f64) -> Option<f64> {
    let wears = price / (others_cost - care);
    (others_cost > care && wears.is_finite() && wears >= 0.0).then_some(wears)
}

#[cfg(test)]
mod tests {
    use super::*;

    const LIFE: Life = Life { wears: 350.0, spread: 0.7, washes: 0.1, wash_cost: 0.6, years: 4.0 };

    #[test]
    fn two_bands_move_the_wearings_less_than_their_spread() {
        let (poor, fine) = (Wears::new(&LIFE, -1.0, 0.5, None).unwrap(), Wears::new(&LIFE, 1.0, 0.5, None).unwrap());
        assert!(fine.range().usual > poor.range().usual && fine.range().usual < poor.range().high);
    }

    #[test]
    fn a_life_or_plan_of_nothing_has_no_wearings() {
        assert!(Wears::new(&Life { wears: 0.0, ..LIFE }, 0.0, 0.5, None).is_none());
        assert!(Wears::new(&LIFE, f64::NAN, 0.5, None).is_none());
        assert!(Wears::new(&LIFE, 0.0, 0.5, Some(Plan { a_month: 0.0, years: 4.0 })).is_none());
        assert!(break_even(180.0, 0.4, 0.4).is_none());
    }

    #[test]
    fn the_chance_to_reach_the_median_is_a_half() {
        let wears = Wears::new(&LIFE, 0.3, 0.5, Some(Plan { a_month: 8.0, years: 4.0 })).unwrap();
        assert!((wears.reaches(wears.range().usual) - 0.5).abs() < 1e-9);
        assert_eq!(wears.reaches(0.0), 1.0);
    }
}
