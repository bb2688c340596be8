//! A question about drawn specimens, how it is answered, and what is true.

use super::topic::Topic;
use super::whole::{Described, PriceGuess};
use crate::language::said;
use crate::rack::Score;
use crate::specimen::Picture;

/// A specimen, and the seed that it is drawn from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shown {
    /// What is drawn.
    pub picture: Picture,
    /// From which seed.
    pub seed: u64,
}

/// How a question is answered.
#[derive(Clone, Debug, PartialEq)]
pub enum Takes {
    /// One of these, marked by `to_say!`; [`Takes::choices`] says them.
    OneOf(&'static [&'static str]),
    /// A whole number between these, ends included.
    Count(u8, u8),
    /// A band, and a range for the ticket.
    BandAndTicket,
}

impl Takes {
    /// What can be chosen from, in the language that is spoken; empty where nothing is.
    pub fn choices(&self) -> Vec<&'static str> {
        match self {
            Takes::OneOf(choices) => choices.iter().copied().map(said).collect(),
            Takes::Count(..) | Takes::BandAndTicket => Vec::new(),
        }
    }
}

/// An answer.
#[derive(Clone, Debug, PartialEq)]
pub enum Given {
    /// One of the choices, by its place.
    OneOf(usize),
    /// A whole number.
    Count(u8),
    /// A band by its place, worst first, and what one would guess at the ticket.
    BandAndTicket(usize, Option<PriceGuess>),
}

/// What is true.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Truth {
    OneOf(usize),
    Count(u8),
    Whole(Box<Described>),
}

/// A question.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// What it is about.
    pub topic: Topic,
    /// What is asked.
    pub(crate) asks: &'static str,
    /// The specimens; of two, the first above or to the left.
    pub shown: Vec<Shown>,
    /// How it is answered.
    pub takes: Takes,
    /// How hard it is, in logits; 0 is middling.
    pub difficulty: f64,
    pub(super) truth: Truth,
    /// What there is to see, told afterwards.
    pub(super) because: String,
}

crate::language::says!(Question { asks });

/// An answer beside the truth.
#[derive(Clone, Debug, PartialEq)]
pub struct Judged {
    /// Whether it is right.
    pub right: bool,
    /// What is true, in a few words.
    pub truth: String,
    /// What there was to see.
    pub because: String,
    /// How good the range for the ticket was, where one was given.
    pub ticket: Option<Score>,
}

/// A question that was answered.
#[derive(Clone, Debug, PartialEq)]
pub struct Answered {
    /// The question.
    pub question: Question,
    /// The answer.
    pub given: Given,
    /// Answer and truth.
    pub judged: Judged,
}

impl Question {
    /// The garment, for a question about a whole one.
    pub fn described(&self) -> Option<&Described> {
        match &self.truth {
            Truth::Whole(described) => Some(described),
            _ => None,
        }
    }

    /// How likely a blind guess is right.
    pub fn blind(&self) -> f64 {
        match &self.takes {
            Takes::OneOf(choices) => 1.0 / choices.len().max(1) as f64,
            Takes::Count(least, most) => 1.0 / (f64::from(most.saturating_sub(*least)) + 1.0),
            Takes::BandAndTicket => 0.3,
        }
    }

    /// Sets an answer beside the truth. None when it is an answer to another kind of question.
    pub fn judged(&self, given: &Given) -> Option<Judged> {
        let (right, truth, ticket) = match (given, &self.truth, &self.takes) {
            (Given::OneOf(place), Truth::OneOf(truth), Takes::OneOf(choices)) if *place < choices.len() => {
                (place == truth, choices.get(*truth).map_or_else(String::new, |choice| said(choice).to_owned()), None)
            }
            (Given::Count(count), Truth::Count(truth), Takes::Count(..)) => (count == truth, truth.to_string(), None),
            (Given::BandAndTicket(band, guess), Truth::Whole(described), Takes::BandAndTicket) => {
                let score = guess.as_ref().and_then(|guess| described.score(guess));
                (*band == described.band().index(), described.band().name().to_owned(), score)
            }
            _ => return None,
        };
        Some(Judged { right, truth, because: self.because.clone(), ticket })
    }
}
