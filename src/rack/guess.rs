//! A guess scored when the ticket is turned over, and the tool's own range by the same rule.

use super::traits::in_units;
use crate::garment::Garment;
use crate::say;
use crate::trade::{Day, Ticket};

/// An 80 % range of a price with its middle, in natural logarithms, so that a tenth too much weighs the same on a T-shirt and on a coat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    low: f64,
    middle: f64,
    high: f64,
}

impl Range {
    /// From prices in one currency; without a middle it lies at the geometric mean of the ends. None unless `0 < low <= middle <= high`.
    pub fn of_prices(low: f64, middle: Option<f64>, high: f64) -> Option<Range> {
        let middle = middle.unwrap_or_else(|| low.sqrt() * high.sqrt());
        Range::of_logs(low.ln(), middle.ln(), high.ln())
    }

    /// From natural logarithms. None unless they are finite and in order.
    pub fn of_logs(low: f64, middle: f64, high: f64) -> Option<Range> {
        // The geometric mean of two ends that are the same may lie a rounding outside.
        let middle = if (middle - low).abs() < 1e-12 { low } else { middle };
        (low.is_finite() && high.is_finite() && low <= middle && middle <= high).then_some(Range { low, middle, high })
    }

    /// Logarithm of the lower end.
    pub fn low(&self) -> f64 {
        self.low
    }

    /// Logarithm of the middle.
    pub fn middle(&self) -> f64 {
        self.middle
    }

    /// Logarithm of the upper end.
    pub fn high(&self) -> f64 {
        self.high
    }

    /// Whether a log price lies inside; on an end is inside.
    pub fn holds(&self, log_ticket: f64) -> bool {
        self.low <= log_ticket && log_ticket <= self.high
    }
}

/// How good a range was. Proper: whoever says what they believe does best on average.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Score {
    /// Width plus ten times what the ticket lay outside, in natural logarithm; lower is better.
    pub interval: f64,
    /// The same weighed together with the middle's error; lower is better.
    pub weighted: f64,
    /// For display: 100 for a range of no width about the ticket, 0 for one of no use. It goes below 0; a screen may stop there.
    pub points: f64,
    /// Whether the ticket lay inside.
    pub held: bool,
}

impl Score {
    /// How far the ticket may lie outside on either side in all, in an honest range: 80 % leave 0.2.
    const OUTSIDE: f64 = 0.2;
    /// Points that a weighted score of 1 costs. Judgement: a guess of spread 0.4 about the truth comes to about 70, no idea at all to about 0.
    pub const POINTS: f64 = 150.0;

    /// Scores a range when the ticket is known, as natural logarithm. None when that is no number.
    ///
    /// # Formula
    /// Interval score `(u - l) + (2/a) (l - y)+ + (2/a) (y - u)+` with `a = 0.2`; weighted `(|y - m|/2 + a/2 IS) / (3/2)`, which is two thirds of
    /// the sum of the pinball losses at 0.1, 0.5 and 0.9; points `100 - 150` times that.
    ///
    /// # Source
    /// Gneiting and Raftery (2007), Strictly proper scoring rules, prediction, and estimation, eq. 43; weights as Bracher, Ray, Gneiting and
    /// Reich (2021) (from memory). Checked against `scoringrules` 0.10.0.
    pub fn of(range: &Range, log_ticket: f64) -> Option<Score> {
        if !log_ticket.is_finite() {
            return None;
        }
        let outside = (range.low - log_ticket).max(0.0) + (log_ticket - range.high).max(0.0);
        let interval = (range.high - range.low) + 2.0 / Score::OUTSIDE * outside;
        let weighted = (0.5 * (log_ticket - range.middle).abs() + 0.5 * Score::OUTSIDE * interval) / 1.5;
        Some(Score { interval, weighted, points: 100.0 - Score::POINTS * weighted, held: range.holds(log_ticket) })
    }
}

/// A guess, the ticket turned over, and both scores.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reveal {
    /// Day on which the guess was made.
    pub made: Day,
    /// Natural logarithm of the ticket, in the currency guessed in.
    pub log_ticket: f64,
    /// The person's range.
    pub yours: Range,
    /// Its score.
    pub score: Score,
    /// What the tool said at that moment, and its score; none when it said nothing.
    pub tool: Option<(Range, Score)>,
}

impl Reveal {
    /// How much better the person did than the tool, in weighted score; below 0 worse. Proper too: nothing that the person says moves what
    /// is taken away.
    pub fn lead(&self) -> Option<f64> {
        self.tool.map(|(_, tool)| tool.weighted - self.score.weighted)
    }
}

/// Why a garment has no score.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyNoScore {
    /// Nothing was guessed.
    NoGuess,
    /// There is no ticket yet, or it says nothing is to be paid.
    NoTicket,
    /// The ticket lies face down.
    FaceDown,
    /// Guess and ticket are in two currencies, or one is retail and the other wholesale.
    NotAlike,
}

impl std::fmt::Display for WhyNoScore {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            WhyNoScore::NoGuess => say!("You have not guessed at this ticket."),
            WhyNoScore::NoTicket => say!("There is no price to hold your guess against. Enter the ticket when you have seen it."),
            WhyNoScore::FaceDown => say!("The ticket lies face down. Turn it over to see how you did."),
            WhyNoScore::NotAlike => {
                say!("Your guess and the ticket are not alike: two currencies, or retail and wholesale. They cannot be compared.")
            }
        })
    }
}

/// The guess of a garment held against its ticket.
///
/// # Errors
/// [`WhyNoScore`] says what is missing.
pub fn reveal(garment: &Garment) -> Result<Reveal, WhyNoScore> {
    let guess = garment.guess().ok_or(WhyNoScore::NoGuess)?;
    let ticket = garment.ticket().filter(|ticket| ticket.minor > 0).ok_or(WhyNoScore::NoTicket)?;
    if ticket.face_down {
        return Err(WhyNoScore::FaceDown);
    }
    if (ticket.currency, ticket.kind) != (guess.currency(), guess.kind()) {
        return Err(WhyNoScore::NotAlike);
    }
    let price = |minor: u64| in_units(&Ticket { minor, ..*ticket });
    let range = |low, middle: Option<u64>, high| Range::of_prices(price(low), middle.map(price), price(high));
    let scored = |range: Range| Some((range, Score::of(&range, in_units(ticket).ln())?));
    let (yours, score) = range(guess.low(), guess.best(), guess.high()).and_then(scored).ok_or(WhyNoScore::NoGuess)?;
    let tool = guess.shown().and_then(|shown| range(shown.low(), Some(shown.middle()), shown.high())).and_then(scored);
    Ok(Reveal { made: guess.made(), log_ticket: in_units(ticket).ln(), yours, score, tool })
}
