//! The habit in a person's guesses: too sure, too low or high, getting better. It says nothing before that means something.

use super::areas::{beta_area, beta_point, chi_square_point};
use super::guess::Reveal;
use super::student_t::StudentT;
use crate::say;

/// Share of tickets that an honest range holds.
const HONEST: f64 = 0.8;
/// What is believed of a person before their first guess: a Beta of 4 and 1, mean 0.8 and the weight of five guesses. A flat start would call
/// one honest person in four too sure at the fifth guess; this one 1 in 100. Judgement.
const START: (f64, f64) = (4.0, 1.0);
/// Before so many guesses nothing is said. Judgement; it takes about ten until much can be.
const ENOUGH: usize = 5;
/// So sure one must be to say that ranges are too narrow, and so unsure of it to say that they are wider than needed. Judgement.
const NARROW: f64 = 0.95;
const WIDE: f64 = 0.10;
/// So sure one must be on which side guesses lie to name it. Judgement.
const SIDE: f64 = 0.9;
/// Guesses on either side of a comparison over time.
const BATCH: usize = 10;
/// Standard normal quantile of 0.9: half an 80 % range in standard deviations.
const TENTH: f64 = 1.281_551_565_544_600_4;

/// What guesses so far say together.
#[derive(Clone, Debug, PartialEq)]
pub struct Habit {
    /// Guesses scored.
    pub guesses: usize,
    /// How often the range held the ticket, and how often it will.
    pub rate: HitRate,
    /// What may be said of how sure the person is.
    pub verdict: Verdict,
    /// How much wider ranges should be; none before five guesses.
    pub width: Option<Width>,
    /// Whether guesses lie low or high; none before five, and none while it might well be neither.
    pub bias: Option<Bias>,
    /// The last ten against the ten before; none before twenty.
    pub trend: Option<Trend>,
    /// Mean of how much better the person did than the tool, over the guesses that it stood beside; none before five such.
    pub lead: Option<f64>,
}

/// How often ranges hold the ticket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HitRate {
    /// Ranges that held it.
    pub hits: usize,
    /// Mean of the share that will.
    pub mean: f64,
    /// One time in ten the share is lower.
    pub low: f64,
    /// One time in ten the share is higher.
    pub high: f64,
    /// Probability that it is less than the 80 % that was meant.
    pub narrow: f64,
}

/// What may be said of how sure a person is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Fewer than five guesses.
    TooFew,
    /// Ranges hold the ticket less often than meant.
    TooNarrow,
    /// Ranges hold it more often than meant.
    Wider,
    /// Neither can be said.
    NoClearSign,
}

impl Verdict {
    /// The words on the screen.
    pub fn words(self) -> &'static str {
        match self {
            Verdict::TooFew => say!("Too few guesses to tell. It takes about ten."),
            Verdict::TooNarrow => say!("Your ranges look too narrow: the ticket lies outside more often than one time in five."),
            Verdict::Wider => say!("Your ranges look wider than they need to be."),
            Verdict::NoClearSign => say!("No clear sign that your ranges are too narrow or too wide."),
        }
    }
}

/// By what a person's ranges should be stretched so that they hold four in five.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Width {
    /// One time in ten it is less.
    pub low: f64,
    /// As likely more as less.
    pub middle: f64,
    /// One time in ten it is more.
    pub high: f64,
}

/// On which side of tickets a person's guesses lie.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bias {
    /// Mean of log ticket minus log guess: above 0 the guesses are low, 0.1 by about a tenth.
    pub mean: f64,
    /// One time in ten it is lower.
    pub low: f64,
    /// One time in ten it is higher.
    pub high: f64,
    /// Probability that guesses are low.
    pub guesses_low: f64,
}

/// The last ten guesses against the ten before, in weighted score; below 0 is better than before.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trend {
    /// Mean of the last ten minus mean of the ten before.
    pub mean: f64,
    /// One time in ten it is lower.
    pub low: f64,
    /// One time in ten it is higher.
    pub high: f64,
}

impl Habit {
    /// From guesses in the order in which they were made.
    pub fn of(reveals: &[Reveal]) -> Habit {
        let hits = reveals.iter().filter(|reveal| reveal.score.held).count();
        let rate = HitRate::of(hits, reveals.len());
        let enough = reveals.len() >= ENOUGH;
        let leads: Vec<f64> = reveals.iter().filter_map(Reveal::lead).collect();
        Habit {
            guesses: reveals.len(),
            rate,
            verdict: rate.verdict(reveals.len()),
            width: enough.then(|| Width::of(&reveals.iter().map(stretch).collect::<Vec<_>>())),
            bias: enough.then(|| Bias::of(&reveals.iter().map(miss).collect::<Vec<_>>())).flatten().filter(Bias::is_clear),
            trend: Trend::of(&reveals.iter().map(|reveal| reveal.score.weighted).collect::<Vec<_>>()),
            lead: (leads.len() >= ENOUGH).then(|| mean(&leads)),
        }
    }
}

/// How far a ticket lay from the middle of a range, in standard deviations that the range stands for.
fn stretch(reveal: &Reveal) -> f64 {
    miss(reveal) / ((reveal.yours.high() - reveal.yours.low()) / (2.0 * TENTH)).max(1e-9)
}

fn miss(reveal: &Reveal) -> f64 {
    reveal.log_ticket - reveal.yours.middle()
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len().max(1) as f64
}

fn squares(values: &[f64]) -> f64 {
    let middle = mean(values);
    values.iter().map(|value| (value - middle).powi(2)).sum()
}

impl HitRate {
    /// Of so many guesses so many held the ticket; more than all count as all.
    ///
    /// # Formula
    /// `Beta(4 + hits, 1 + misses)`: conjugate update of a share, textbook; checked against scipy.
    pub fn of(hits: usize, guesses: usize) -> HitRate {
        let hits = hits.min(guesses);
        let (a, b) = (START.0 + hits as f64, START.1 + (guesses - hits) as f64);
        HitRate {
            hits,
            mean: a / (a + b),
            low: beta_point(0.1, a, b),
            high: beta_point(0.9, a, b),
            narrow: beta_area(HONEST, 1.0 - HONEST, a, b),
        }
    }

    /// What may be said after so many guesses.
    pub fn verdict(&self, guesses: usize) -> Verdict {
        match self.narrow {
            _ if guesses < ENOUGH => Verdict::TooFew,
            narrow if narrow > NARROW => Verdict::TooNarrow,
            narrow if narrow < WIDE => Verdict::Wider,
            _ => Verdict::NoClearSign,
        }
    }
}

impl Width {
    /// From how far each ticket lay from the middle of its range, in the range's standard deviations; beyond 4 counts as 4, and what is no
    /// number as 0.
    ///
    /// # Formula
    /// Variance of those about `(6 + sum z^2) / chi-square(6 + n)`: scaled inverse chi-square, centred at 1 with the weight of six guesses;
    /// the factor is its root. Conjugate update, textbook; checked against scipy.
    pub fn of(stretches: &[f64]) -> Width {
        let capped = |z: &f64| if z.is_nan() { 0.0 } else { z.clamp(-4.0, 4.0) };
        let sum = 6.0 + stretches.iter().map(capped).map(|z| z * z).sum::<f64>();
        let degrees = 6.0 + stretches.len() as f64;
        let at = |p: f64| (sum / chi_square_point(1.0 - p, degrees)).sqrt();
        Width { low: at(0.1), middle: at(0.5), high: at(0.9) }
    }
}

impl Bias {
    /// From log ticket minus log guess of each. None when one of them is no number.
    ///
    /// # Formula
    /// Normal-inverse-gamma with mean 0 of the weight of two guesses, spread 0.35 of the weight of six: Student t with `6 + n` degrees about
    /// `n m / (2 + n)`. Conjugate update, textbook (Hoff 2009, chapter 5); judgement in the starting values; checked against scipy.
    pub fn of(misses: &[f64]) -> Option<Bias> {
        let (weight, degrees, spread) = (2.0, 6.0, 0.35_f64);
        let (n, m) = (misses.len() as f64, mean(misses));
        let sum = degrees * spread.powi(2) + squares(misses) + weight * n * m * m / (weight + n);
        let scale = (sum / (degrees + n) / (weight + n)).sqrt();
        let belief = StudentT::new(degrees + n, n * m / (weight + n), scale)?;
        Some(Bias {
            mean: belief.centre(),
            low: belief.quantile(0.1),
            high: belief.quantile(0.9),
            guesses_low: 1.0 - belief.below(0.0),
        })
    }

    /// Whether the side is sure enough to be named.
    pub fn is_clear(&self) -> bool {
        self.guesses_low > SIDE || self.guesses_low < 1.0 - SIDE
    }
}

impl Trend {
    /// From weighted scores in the order of the guesses. None before twenty, or when they do not differ at all.
    ///
    /// # Formula
    /// Difference of two means with pooled variance and 18 degrees of freedom, Student (1908), textbook; checked against scipy.
    pub fn of(scores: &[f64]) -> Option<Trend> {
        let start = scores.len().checked_sub(2 * BATCH)?;
        let (before, last) = scores[start..].split_at(BATCH);
        let batch = BATCH as f64;
        let degrees = 2.0 * batch - 2.0;
        let scale = ((squares(before) + squares(last)) / degrees * 2.0 / batch).sqrt();
        let belief = StudentT::new(degrees, mean(last) - mean(before), scale)?;
        Some(Trend { mean: belief.centre(), low: belief.quantile(0.1), high: belief.quantile(0.9) })
    }
}
