//! A person whose measures are kept: a name of their choice, and what the tape said.

use std::collections::BTreeMap;

use super::body::{BODY_MEASURES, BodyMeasure};
use crate::quantity::{Amount, Estimate, Length, Unit};

/// Names one person for good. Made by whoever has chance to hand out; letters, digits, `-` and `~` only.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PersonId(String);

impl PersonId {
    /// Longest name accepted.
    pub const LONGEST: usize = 80;

    /// Takes a name of 1 to 80 letters, digits, `-` and `~`; anything else could not be told apart inside a storage key.
    pub fn new(text: &str) -> Option<PersonId> {
        let fits = !text.is_empty()
            && text.len() <= PersonId::LONGEST
            && text.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'-' || byte == b'~');
        fits.then(|| PersonId(text.to_owned()))
    }

    /// The name as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Whether they are of the invented rack.
    pub fn is_invented(&self) -> bool {
        self.0.starts_with("invented-")
    }
}

/// A reading of a body measure, in the unit in which it was given; one that its measure does not believe cannot be made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BodyReading(Amount);

impl BodyReading {
    /// A reading of that measure. None for what is no length, and for what [`BodyMeasure::believed_cm`] rules out.
    pub fn new(measure: &BodyMeasure, amount: Amount) -> Option<BodyReading> {
        amount.in_unit(Unit::Centimetre).and_then(|centimetres| measure.estimate(centimetres)).map(|_| BodyReading(amount))
    }

    /// What was read.
    pub fn amount(&self) -> Amount {
        self.0
    }
}

/// A person's own measures. They are kept on the device only.
#[derive(Clone, Debug, PartialEq)]
pub struct Person {
    id: PersonId,
    name: String,
    measures: BTreeMap<&'static str, BodyReading>,
    aside: Vec<(String, String)>,
}

impl Person {
    /// Longest name kept, in characters; what is over is cut.
    pub const LONGEST_NAME: usize = 80;

    /// A person of whom nothing is measured yet.
    pub fn new(id: PersonId, name: &str) -> Person {
        Person { id, name: name.chars().take(Person::LONGEST_NAME).collect(), measures: BTreeMap::new(), aside: Vec::new() }
    }

    /// Under another name.
    pub fn named(self, name: &str) -> Person {
        Person { name: name.chars().take(Person::LONGEST_NAME).collect(), ..self }
    }

    /// The same facts under another id.
    pub fn with_id(&self, id: PersonId) -> Person {
        Person { id, ..self.clone() }
    }

    /// Adds what this version cannot read, as the field's name and its stored JSON text, to be written back untouched. Text that is no
    /// JSON cannot be written back, and is not.
    pub fn with_aside(mut self, field: String, text: String) -> Person {
        self.aside.push((field, text));
        self
    }

    /// With another reading of that measure, or without one.
    pub fn with(mut self, measure: &'static BodyMeasure, reading: Option<BodyReading>) -> Person {
        match reading {
            Some(reading) => self.measures.insert(measure.key, reading),
            None => self.measures.remove(measure.key),
        };
        self
    }

    /// Names the person for good.
    pub fn id(&self) -> &PersonId {
        &self.id
    }

    /// What the person is called here; may be empty.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// What this version could not read, by field.
    pub fn aside(&self) -> &[(String, String)] {
        &self.aside
    }

    /// What was read of a measure.
    pub fn reading(&self, measure: &BodyMeasure) -> Option<&BodyReading> {
        self.measures.get(measure.key)
    }

    /// Measures that have a reading, top to bottom.
    pub fn readings(&self) -> impl Iterator<Item = (&'static BodyMeasure, &BodyReading)> {
        BODY_MEASURES.into_iter().filter_map(|measure| Some((measure, self.reading(measure)?)))
    }

    /// A measure with its spread.
    pub fn estimate(&self, measure: &BodyMeasure) -> Option<Estimate<Length>> {
        measure.estimate(self.reading(measure)?.amount().in_unit(Unit::Centimetre)?)
    }
}
