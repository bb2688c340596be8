//! The likely ticket of a garment: an 80 % range with its median, and what each reference taught.

use super::process::Learned;
use super::student_t::Mixture;
use super::traits::Traits;
use crate::trade::Name;

/// The likely ticket, in US dollars.
#[derive(Clone, Debug, PartialEq)]
pub struct Likely {
    names: Vec<Name>,
    prediction: Mixture,
    /// One time in ten the ticket is lower.
    pub low: f64,
    /// As often lower as higher: what the ticket would have to be to sit in the middle.
    pub middle: f64,
    /// One time in ten the ticket is higher.
    pub high: f64,
    lessons: Vec<Lesson>,
}

/// What one reference did to the likely ticket of a garment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lesson {
    /// Place of the reference among those learnt from.
    pub reference: usize,
    /// How far its own log ticket stood from its build-up and name; above 0 it was dearer.
    pub stood: f64,
    /// How much of that counts here.
    pub weight: f64,
    /// How far it moved the middle of the log price; 0.1 is about a tenth dearer. All lessons sum to how far the references moved it, for
    /// each name.
    pub by: f64,
}

/// The likely ticket of a garment, from what references taught. Where its name is not known, each name counts with its share, which makes
/// the upper end reach far: so it should. None only where spreads were made so extreme that nothing can be said.
pub fn likely(learned: &Learned, traits: &Traits) -> Option<Likely> {
    let names = traits.name.map_or(Name::ALL.to_vec(), |name| vec![name]);
    let asked: Vec<Option<Name>> = names.iter().copied().map(Some).collect();
    let predictions = learned.predictions(traits, &asked);
    if predictions.len() != names.len() {
        return None;
    }
    let prediction = Mixture::new(names.iter().map(|name| name.share()).zip(predictions))?;
    let at = |p: f64| prediction.quantile(p).exp();
    let (low, middle, high) = (at(0.1), at(0.5), at(0.9));
    let pulls = learned.pulls(traits);
    let mut lessons: Vec<Lesson> = pulls
        .iter()
        .zip(learned.surprises())
        .enumerate()
        .map(|(reference, (weight, stood))| Lesson { reference, stood: *stood, weight: *weight, by: weight * stood })
        .collect();
    lessons.sort_by(|one, other| other.by.abs().total_cmp(&one.by.abs()));
    Some(Likely { names, prediction, low, middle, high, lessons })
}

impl Likely {
    /// The whole distribution of the natural logarithm of the ticket.
    pub fn prediction(&self) -> &Mixture {
        &self.prediction
    }

    /// What each reference taught, the one that moved it furthest first.
    pub fn lessons(&self) -> &[Lesson] {
        &self.lessons
    }

    /// By what the middle is to be divided and multiplied to come to the ends, on average of both: "80 in 100 within x / 2.5".
    pub fn factor(&self) -> f64 {
        (self.high / self.low).sqrt()
    }

    /// How likely each name is, once the ticket is seen. A single name that was told stays what it is.
    pub fn names_after(&self, log_ticket: f64) -> Vec<(Name, f64)> {
        self.names.iter().copied().zip(self.prediction.weights_after(log_ticket)).collect()
    }
}
