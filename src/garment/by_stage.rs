//! All checks of a garment in one order that stays as it is, for a sheet on which a whole garment is noted at once.

use super::appraisal::Appraiser;
use super::record::Garment;
use crate::check::Check;
use crate::grading::{Belief, prospect};
use crate::trade::{Question, Stage};

impl Appraiser {
    /// The checks put to a garment as it is, by how it is held, in the order in which a person meets that; none of the groups is empty.
    /// Within a group stand first those that tell most in a second before anything is answered, about the make or about what is left; those
    /// that speak of cost only stand last. A check that decides whether another applies stands before it, by what the other may tell.
    ///
    /// # Formula
    /// Bits as in [`prospect`], over the seconds that the check takes. One that opens another is worth the larger of its own bits a second
    /// and what the other tells as often as it is opened, over the seconds of both, as in [`Appraiser::next`].
    ///
    /// # Where it holds
    /// For the first answer: the order does not follow the answers, so that a row stays where the eye left it.
    pub fn by_stage(&self, garment: &Garment) -> Vec<(Stage, Vec<&'static Check>)> {
        let nothing = Belief::new(&self.tables, &[]);
        let bits = |check: &'static Check| {
            let curve = check.speaks.about(Question::Make).or(check.speaks.about(Question::Left));
            curve.map_or(0.0, |curve| prospect(&self.tables, &nothing, curve).bits)
        };
        let told: Vec<(&'static Check, f64)> = garment.checks().map(|check| (check, bits(check))).collect();
        let seconds = |check: &'static Check| f64::from(check.seconds.max(1));
        let worth = |check: &'static Check, own: f64| {
            let opened = told.iter().filter_map(|(other, bits)| {
                let when = other.asked_when.as_ref().filter(|when| when.check == check)?;
                let share = f64::from(when.share) / 100.0;
                Some(share * bits / (seconds(check) + share * seconds(other)))
            });
            opened.fold(own / seconds(check), f64::max)
        };
        let mut rows: Vec<(&'static Check, f64)> = told.iter().map(|(check, own)| (*check, worth(check, *own))).collect();
        // A stable sort: of equals the earlier in the family's list stands first.
        rows.sort_by(|one, other| other.1.total_cmp(&one.1));
        let mut order: Vec<&'static Check> = Vec::with_capacity(rows.len());
        let (mut waiting, mut last): (Vec<&'static Check>, usize) = (rows.iter().map(|(check, _)| *check).collect(), usize::MAX);
        // Each turn takes those whose opener stands already, or is not put at all; a ring of openers would end the turns, not the app.
        while !waiting.is_empty() && waiting.len() < last {
            last = waiting.len();
            let mut left = Vec::new();
            for check in waiting {
                let opener = check.asked_when.as_ref().map(|when| when.check);
                let waits =
                    opener.is_some_and(|opener| !order.contains(&opener) && told.iter().any(|(other, _)| *other == opener));
                if waits { left.push(check) } else { order.push(check) }
            }
            waiting = left;
        }
        order.extend(waiting);
        let held = |stage: Stage| (stage, order.iter().copied().filter(|check| check.stage == stage).collect::<Vec<_>>());
        Stage::ALL.into_iter().map(held).filter(|(_, checks)| !checks.is_empty()).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::{FAMILIES, Family};
    use crate::garment::{Act, Id};
    use crate::trade::Day;

    fn bare(family: &'static Family) -> Garment {
        Garment::new(Id::new("a").expect("a plain name"), family, Day::new(2026, 11, 25).expect("a day"))
    }

    #[test]
    fn every_check_stands_once_held_as_it_wants_and_after_the_one_that_opens_it() {
        let appraiser = Appraiser::default();
        for family in FAMILIES {
            for garment in [bare(family), bare(family).after(Act::SecondHand(true))] {
                let groups = appraiser.by_stage(&garment);
                let all: Vec<&Check> = groups.iter().flat_map(|(_, checks)| checks.iter().copied()).collect();
                assert_eq!(all.len(), garment.checks().count(), "{}", family.key);
                assert!(garment.checks().all(|check| all.contains(&check)), "{}", family.key);
                for (stage, checks) in &groups {
                    assert!(!checks.is_empty() && checks.iter().all(|check| check.stage == *stage));
                    for (place, check) in checks.iter().enumerate() {
                        let opener = check.asked_when.as_ref().map(|when| when.check);
                        assert!(opener.is_none_or(|opener| !checks[place..].contains(&opener)), "{}", check.key);
                    }
                }
            }
        }
    }

    #[test]
    fn what_tells_most_in_a_second_stands_first_and_cost_last() {
        let appraiser = Appraiser::default();
        let nothing = Belief::new(&appraiser.tables, &[]);
        for family in FAMILIES {
            for (stage, checks) in appraiser.by_stage(&bare(family)) {
                // Neither opened by another nor opening one: these stand by their own bits alone.
                let plain = |check: &&&Check| {
                    check.asked_when.is_none()
                        && !family.checks.iter().any(|other| other.asked_when.as_ref().is_some_and(|when| when.check == **check))
                };
                let worths: Vec<f64> = checks
                    .iter()
                    .filter(plain)
                    .map(|check| {
                        let bits = check.speaks.curve().map_or(0.0, |curve| prospect(&appraiser.tables, &nothing, curve).bits);
                        bits / f64::from(check.seconds)
                    })
                    .collect();
                assert!(worths.windows(2).all(|pair| pair[0] >= pair[1]), "{} {stage:?}", family.key);
            }
        }
    }
}
