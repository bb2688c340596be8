//! What a garment costs from cloth to ticket, how often it will be worn, and what its ticket leaves unexplained.

use super::appraisal::{Appraisal, Standing};
use super::record::{Answer, Garment};
use crate::check::Check;
use crate::cost::{BuildUp, Channel, Known, Plan, Rates, Wears, build_up};
use crate::grading::Care;

/// Works out what a garment costs from cloth to ticket; none where nobody has written the bill of its family. `channel` is the kind of
/// shop, where that is known: it narrows the ticket more than any check.
pub fn price(garment: &Garment, rates: &Rates, channel: Option<Channel>) -> Option<BuildUp> {
    let bill = garment.family().bill?;
    Some(build_up(bill, rates, channel, |key| garment.known(key)))
}

/// How often a garment will be worn; none where nobody has written the bill of its family, or the plan is none.
pub fn wears(garment: &Garment, appraisal: &Appraisal, plan: Option<Plan>) -> Option<Wears> {
    let bill = garment.family().bill?;
    Wears::new(&bill.life, appraisal.mean(), appraisal.belief.sd(), plan)
}

impl Garment {
    /// What is known of a check, for the build-up.
    fn known(&self, key: &str) -> Known {
        let Some(check) = self.family().checks.iter().copied().find(|check| check.key == key) else { return Known::Open };
        if self.standing(check) == Standing::Closed {
            return Known::DoesNotApply;
        }
        let levels = || check.levels.iter().map(|level| level.key).collect();
        match self.answer(check) {
            Some(Answer::Judged { level, care }) => {
                let weights = check.levels.iter().map(|other| f64::from(u8::from(other.key == *level))).collect();
                Known::Found { weights, levels: levels(), slip: care.lapse(), reading: None }
            }
            Some(Answer::Measured(_)) => self.measured(check, levels()).unwrap_or(Known::Open),
            Some(Answer::CannotTell | Answer::Skipped) | None => Known::Open,
        }
    }

    /// Whoever measures is careful: what a reading may be off by stands in its uncertainty.
    fn measured(&self, check: &'static Check, levels: Vec<&'static str>) -> Option<Known> {
        let outcome = self.reading(check)?.ok()?;
        let weights = check.weights(&outcome)?.parts().to_vec();
        let reading = Some((outcome.value, outcome.uncertainty));
        Some(Known::Found { weights, levels, slip: Care::Careful.lapse(), reading })
    }
}
