//! Two to four garments side by side: where answers and readings differ, which is likelier the better made, whom a stranger resembles, where it
//! stands between two that are known, and what a gap between two tickets consists of.

use super::areas::normal_area;
use crate::check::Check;
use crate::garment::{Answer, Appraisal, Garment};
use crate::grading::Weights;
use crate::quantity::Unit;
use crate::say;

/// Standard normal quantile of 0.9.
const TENTH: f64 = 1.281_551_565_544_600_4;
/// Two readings differ when they lie so many standard uncertainties of their difference apart. Common practice (GUM, coverage factor 2).
const APART: f64 = 2.0;

/// Garments side by side.
#[derive(Clone, Debug, PartialEq)]
pub struct Beside {
    /// Every check that two of them or more have answered, those that differ most first.
    pub checks: Vec<Difference>,
    /// Every reading that two of them or more have.
    pub readings: Vec<ReadingDifference>,
    /// For each pair by its places, the lower first: probability that the one of the lower place is the better made.
    pub better: Vec<((usize, usize), f64)>,
}

/// Why garments cannot stand side by side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BesideFault {
    /// Fewer than two.
    TooFew,
    /// More than four.
    TooMany,
}

impl std::fmt::Display for BesideFault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            BesideFault::TooFew => say!("Choose at least two garments to set side by side."),
            BesideFault::TooMany => say!("No more than four garments fit side by side. Take one away."),
        })
    }
}

/// A check across garments.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference {
    /// The check.
    pub check: &'static Check,
    /// For each garment, where between the worst level (0) and the best (1) its answer lies; none where it has none.
    pub places: Vec<Option<f64>>,
    /// How far the lowest and the highest lie apart, 0 to 1.
    pub apart: f64,
}

/// A reading across garments.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadingDifference {
    /// What was read.
    pub(crate) name: &'static str,
    /// Unit of the values.
    pub unit: Unit,
    /// For each garment the value and its standard uncertainty.
    pub values: Vec<Option<(f64, f64)>>,
    /// Whether the two furthest apart differ by more than twice the standard uncertainty of their difference.
    pub differs: bool,
}

crate::language::says!(ReadingDifference { name });

/// Whom a stranger resembles in one thing.
#[derive(Clone, Debug, PartialEq)]
pub struct Likeness {
    /// The check.
    pub check: &'static Check,
    /// For each reference, how far its answer lies from the stranger's, 0 to 1; none where it has none.
    pub apart: Vec<Option<f64>>,
    /// References that come nearest; several where they come equally near.
    pub nearest: Vec<usize>,
}

/// Where a stranger stands between two garments that are known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Between {
    /// How much of the way from the first to the second, by all checks in which these two differ: 0 as the first, 1 as the second; below 0
    /// or above 1 it lies beyond them.
    pub way: f64,
    /// Standard error of that, from how much the checks disagree; none from a single check.
    pub error: Option<f64>,
    /// Checks in which the two differ and the stranger is answered.
    pub checks: usize,
}

/// How much an answer speaks for each level; none when it says nothing.
fn weights(garment: &Garment, check: &'static Check) -> Option<Weights> {
    match garment.answer(check)? {
        Answer::Judged { level, .. } => Weights::certain(check.level(level)?.0, check.levels.len()).ok(),
        Answer::Measured(_) => check.weights(&garment.reading(check)?.ok()?),
        Answer::CannotTell | Answer::Skipped => None,
    }
}

/// Mean place of an answer among its levels, 0 to 1.
fn place(garment: &Garment, check: &'static Check) -> Option<f64> {
    let weights = weights(garment, check)?;
    let parts = weights.parts();
    let sum: f64 = parts.iter().sum();
    let last = parts.len().checked_sub(1).filter(|last| *last > 0 && sum > 0.0)?;
    Some(parts.iter().enumerate().map(|(level, part)| level as f64 * part).sum::<f64>() / sum / last as f64)
}

/// How far two answers lie apart: the share of the scale that has to be crossed to turn one into the other (earth mover's distance).
fn apart(one: &Weights, other: &Weights) -> Option<f64> {
    let (one, other) = (one.parts(), other.parts());
    let sum = |parts: &[f64]| parts.iter().sum::<f64>();
    let steps = one.len().checked_sub(1).filter(|steps| *steps > 0 && one.len() == other.len())?;
    let (mut carried, mut moved) = (0.0, 0.0);
    for (one_part, other_part) in one.iter().zip(other).take(steps) {
        carried += one_part / sum(one) - other_part / sum(other);
        moved += f64::abs(carried);
    }
    Some(moved / steps as f64)
}

/// Checks of the make answered by at least one, each once, in the order of the answers. What wear has left is no likeness in the make.
fn checks<'a>(garments: impl IntoIterator<Item = &'a Garment>) -> Vec<&'static Check> {
    let mut checks: Vec<&'static Check> = Vec::new();
    for entry in garments.into_iter().flat_map(Garment::entries) {
        if !checks.contains(&entry.check) && entry.check.speaks.left().is_none() {
            checks.push(entry.check);
        }
    }
    checks
}

impl Beside {
    /// Sets two to four garments side by side, each with its appraisal.
    ///
    /// # Errors
    /// [`BesideFault`] for any other number.
    pub fn of(garments: &[(&Garment, &Appraisal)]) -> Result<Beside, BesideFault> {
        match garments.len() {
            0 | 1 => return Err(BesideFault::TooFew),
            2..=4 => {}
            _ => return Err(BesideFault::TooMany),
        }
        let row = |check: &'static Check| {
            let places: Vec<Option<f64>> = garments.iter().map(|(garment, _)| place(garment, check)).collect();
            let known: Vec<f64> = places.iter().copied().flatten().collect();
            let lowest = known.iter().copied().fold(f64::INFINITY, f64::min);
            let highest = known.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            (known.len() >= 2).then_some(Difference { check, places, apart: highest - lowest })
        };
        let mut rows: Vec<Difference> =
            checks(garments.iter().map(|(garment, _)| *garment)).into_iter().filter_map(row).collect();
        rows.sort_by(|one, other| other.apart.total_cmp(&one.apart));
        let pairs = (0..garments.len()).flat_map(|one| (one + 1..garments.len()).map(move |other| (one, other)));
        let better = pairs.map(|(one, other)| ((one, other), better(garments[one].1, garments[other].1))).collect();
        let garments: Vec<&Garment> = garments.iter().map(|(garment, _)| *garment).collect();
        Ok(Beside { checks: rows, readings: readings(&garments), better })
    }
}

/// Probability that the first is the better made, from the two beliefs taken as normal and independent. One pair of eyes may err alike on
/// both, which would make it surer; that is left out.
fn better(one: &Appraisal, other: &Appraisal) -> f64 {
    let z = (one.mean() - other.mean()) / f64::hypot(spread(one), spread(other));
    if z.is_finite() { normal_area(z) } else { 0.5 }
}

/// Standard deviation of a belief taken as normal, from the ends of its 80 % range.
pub(super) fn spread(appraisal: &Appraisal) -> f64 {
    let (low, _, high) = appraisal.range();
    (high - low) / (2.0 * TENTH)
}

fn readings(garments: &[&Garment]) -> Vec<ReadingDifference> {
    let of_check = |check: &'static Check| {
        let values: Vec<Option<(f64, f64)>> = garments
            .iter()
            .map(|garment| garment.reading(check)?.ok().map(|outcome| (outcome.value, outcome.uncertainty)))
            .collect();
        // All instruments of a check give one unit.
        ReadingDifference::of(check.name, check.instruments.first()?.unit, values)
    };
    let mut rows: Vec<ReadingDifference> = checks(garments.iter().copied()).into_iter().filter_map(of_check).collect();
    let mut done = Vec::new();
    for point in garments.iter().flat_map(|garment| garment.family().points) {
        if done.contains(&point) {
            continue;
        }
        done.push(point);
        // Another family may measure another place under the same name; only the same point is compared.
        let value = |garment: &&Garment| {
            let known = garment.family().points.iter().any(|other| std::ptr::eq(other, point));
            let outcome = known.then(|| garment.measure(point)).flatten()?.ok()?;
            Some((outcome.value, outcome.uncertainty))
        };
        rows.extend(ReadingDifference::of(point.name, Unit::Centimetre, garments.iter().map(value).collect()));
    }
    rows
}

impl ReadingDifference {
    fn of(name: &'static str, unit: Unit, values: Vec<Option<(f64, f64)>>) -> Option<ReadingDifference> {
        let mut known: Vec<(f64, f64)> = values.iter().copied().flatten().collect();
        known.sort_by(|one, other| one.0.total_cmp(&other.0));
        let (lowest, highest) = (known.first()?, known.last()?);
        let differs = highest.0 - lowest.0 > APART * f64::hypot(lowest.1, highest.1);
        (known.len() >= 2).then_some(ReadingDifference { name, unit, values, differs })
    }
}

impl Likeness {
    /// For each check that the stranger and at least one reference have answered, whom the stranger resembles.
    pub fn of(stranger: &Garment, references: &[&Garment]) -> Vec<Likeness> {
        let row = |check: &'static Check| {
            let own = weights(stranger, check)?;
            let far = |reference: &&Garment| apart(&own, &weights(reference, check)?);
            let apart: Vec<Option<f64>> = references.iter().map(far).collect();
            let least = apart.iter().copied().flatten().reduce(f64::min)?;
            let near = |(place, far): (usize, &Option<f64>)| far.filter(|far| *far <= least + 1e-9).map(|_| place);
            let nearest = apart.iter().enumerate().filter_map(near).collect();
            Some(Likeness { check, apart, nearest })
        };
        checks([stranger]).into_iter().filter_map(row).collect()
    }
}

impl Between {
    /// Where a stranger stands between two known garments. None when these differ in nothing that the stranger is answered in.
    ///
    /// # Formula
    /// Least squares along the line from one to the other: `t = sum (x - a)(b - a) / sum (b - a)^2` over checks, places from 0 to 1; standard
    /// error `sqrt(sum (x - a - t (b - a))^2 / (n - 1) / sum (b - a)^2)`: regression through the origin, textbook.
    pub fn of(stranger: &Garment, first: &Garment, second: &Garment) -> Option<Between> {
        let pairs: Vec<(f64, f64)> = checks([stranger])
            .into_iter()
            .filter_map(|check| {
                let (x, a, b) = (place(stranger, check)?, place(first, check)?, place(second, check)?);
                ((b - a).abs() > 1e-9).then_some((x - a, b - a))
            })
            .collect();
        let whole: f64 = pairs.iter().map(|(_, line)| line * line).sum();
        if pairs.is_empty() {
            return None;
        }
        let way = pairs.iter().map(|(x, line)| x * line).sum::<f64>() / whole;
        let rest: f64 = pairs.iter().map(|(x, line)| (x - way * line).powi(2)).sum();
        let error = (pairs.len() > 1).then(|| (rest / (pairs.len() - 1) as f64 / whole).sqrt());
        Some(Between { way, error, checks: pairs.len() })
    }
}

/// What one difference accounts for in a gap between two tickets, as the cost model shares it out.
#[derive(Clone, Debug, PartialEq)]
pub struct GapShare {
    /// What differs, in the words of the build-up.
    pub name: String,
    /// Money, in the currency of the tickets; above 0 makes the second dearer.
    pub amount: f64,
    /// Standard deviation of that.
    pub spread: f64,
}

/// A gap between two tickets and what it consists of.
#[derive(Clone, Debug, PartialEq)]
pub struct Gap {
    /// The second ticket less the first.
    pub gap: f64,
    /// What was recorded and accounts for some of it, the largest first.
    pub shares: Vec<GapShare>,
    /// The rest, named as what it is: name, design, season, not explained by what was recorded. Shares and rest sum to the gap.
    pub not_explained: f64,
}

impl GapShare {
    /// Whether it is larger than its own spread; one that is not should be shown as uncertain.
    pub fn is_clear(&self) -> bool {
        self.amount.abs() >= self.spread
    }
}

/// Puts together what a gap consists of. The shares come from the cost model, without its share for the name: what it leaves is the rest
/// here. A share that is no number is left out, and so part of the rest. None when a ticket is no number.
pub fn gap(first: f64, second: f64, shares: impl IntoIterator<Item = GapShare>) -> Option<Gap> {
    let gap = second - first;
    if !gap.is_finite() {
        return None;
    }
    let mut shares: Vec<GapShare> = shares.into_iter().filter(|share| share.amount.is_finite()).collect();
    shares.sort_by(|one, other| other.amount.abs().total_cmp(&one.amount.abs()));
    let not_explained = gap - shares.iter().map(|share| share.amount).sum::<f64>();
    Some(Gap { gap, shares, not_explained })
}
