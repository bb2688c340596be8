//! What one program asks of another, in words: an instrument's readings are wanted, and here they are.
//!
//! The two share no memory, only a line of text. It is never kept; the stored form is the notebook's.

use super::record::{Given, Readings};
use crate::measure::{INSTRUMENTS, Instrument};
use crate::quantity::{System, Unit};

/// Readings of an instrument that are wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct Errand {
    /// The instrument.
    pub instrument: &'static Instrument,
    /// Metric or imperial.
    pub system: System,
    /// The address to go back to.
    pub back: String,
    /// The name of the check that they are for; none when they are for nobody.
    pub check: Option<String>,
    /// What was read before.
    pub kept: Option<Readings>,
}

/// Between the fields of an errand. A name or an address that holds one is not carried.
const BREAK: char = '\n';

impl Errand {
    /// In words.
    pub fn spoken(&self) -> String {
        let system = match self.system {
            System::Metric => "metric",
            System::Imperial => "imperial",
        };
        let kept = self.kept.as_ref().map(Readings::spoken).unwrap_or_default();
        let check = self.check.as_deref().unwrap_or_default();
        [self.instrument.key, system, &self.back, check, &kept].join("\n")
    }

    /// The other way; none when anything in it is not known or not whole.
    pub fn heard(words: &str) -> Option<Errand> {
        let fields: Vec<&str> = words.split(BREAK).collect();
        let [instrument, system, back, check, kept] = fields.as_slice() else { return None };
        let instrument = instrument_of(instrument)?;
        let system = match *system {
            "metric" => System::Metric,
            "imperial" => System::Imperial,
            _ => return None,
        };
        let kept = match *kept {
            "" => None,
            kept => Some(Readings::heard(kept).filter(|kept| kept.instrument == instrument)?),
        };
        let check = (!check.is_empty()).then(|| (*check).to_owned());
        Some(Errand { instrument, system, back: (*back).to_owned(), check, kept })
    }
}

impl Readings {
    /// In words: the instrument, then each input with its amount and unit, as `twill-photo;angle 27.5 degree`.
    pub fn spoken(&self) -> String {
        self.given.iter().fold(self.instrument.key.to_owned(), |words, given| {
            format!("{words};{} {} {}", given.input, given.amount, given.unit.key())
        })
    }

    /// The other way; none when anything in it is not known, not whole or not a finite number.
    pub fn heard(words: &str) -> Option<Readings> {
        let mut parts = words.split(';');
        let instrument = instrument_of(parts.next()?)?;
        let given = parts.map(|part| {
            let words: Vec<&str> = part.split(' ').collect();
            let [input, amount, unit] = words.as_slice() else { return None };
            let amount = amount.parse().ok().filter(|amount: &f64| amount.is_finite())?;
            Some(Given { input: instrument.input(input)?.1.key, amount, unit: Unit::from_key(unit)? })
        });
        Some(Readings { instrument, given: given.collect::<Option<Vec<Given>>>()? })
    }
}

fn instrument_of(key: &str) -> Option<&'static Instrument> {
    INSTRUMENTS.iter().copied().find(|instrument| instrument.key == key)
}
