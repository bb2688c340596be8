//! Which check to make next: the most telling for its seconds, with the garment turned as seldom as can be.

use super::appraisal::{Appraisal, Appraiser, Standing};
use super::record::{Answer, Garment};
use crate::check::Check;
use crate::grading::{Candidate, prospect, ranking, settling};
use crate::trade::Stage;

/// From here on a check is called telling, in bits about the band. Judgement; the first checks of a pair have 0.1 to 0.2.
const TELLING: f64 = 0.01;
/// What a fact about cost is worth beside bits about the band, so that it comes after telling checks and before weak ones. Judgement.
const COST_FACT: f64 = 0.002;

/// A check proposed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Proposal {
    /// The check.
    pub check: &'static Check,
    /// What its answer is expected to tell about the band, in bits.
    pub bits: f64,
    /// Seconds it takes now, turning the garment included.
    pub seconds: f64,
    /// Why it is proposed.
    pub reason: Reason,
}

/// Why a check is proposed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reason {
    /// Of all checks it tells most about the band for its seconds.
    Telling,
    /// The garment is held right for it, and would have to be turned again later.
    WhileHeld,
    /// Its answer decides whether a telling check applies.
    Opens,
    /// It speaks of cost.
    Costs,
    /// Nothing better is left.
    LeftOver,
}

impl Appraiser {
    /// The check to put next, none when all are answered. `shown` is the check on the screen, which is not proposed again; the garment
    /// is taken to be held as that check wants it.
    ///
    /// Whoever has turned a garment inside out, or put it on, finishes there: nobody is asked to do it twice, but for checks that they
    /// put off. A check put off comes again before the garment is turned back, unless nothing was answered there since, and else when
    /// nothing else is left.
    ///
    /// Of a second-hand piece the checks of make and of wear stand in one order, each by what it tells of its own five bands for its
    /// seconds: bits about the one are worth as much as bits about the other, the garment is turned once for both, and whoever stops
    /// after two minutes knows something of each.
    pub fn next(&self, garment: &Garment, appraisal: &Appraisal, shown: Option<&'static Check>) -> Option<Proposal> {
        let left = self.left(garment);
        let appraisals: Vec<&Appraisal> = std::iter::once(appraisal).chain(&left).collect();
        let stage = shown.map_or(garment.stage(), |check| check.stage);
        let pool = |may: &dyn Fn(&'static Check) -> bool| {
            self.proposals(garment, &appraisals, stage, |check| shown != Some(check) && may(check))
        };
        let fresh = pool(&|check| garment.answer(check).is_none());
        let put_off = || pool(&|check| garment.answer(check) == Some(&Answer::Skipped));
        if !matches!(stage, Stage::InsideOut | Stage::Worn) {
            return fresh.first().or(put_off().first()).copied();
        }
        let held = |proposal: &&Proposal| proposal.check.stage == stage;
        let staying = |pool: &[Proposal]| {
            let best = pool.first()?;
            let stay = pool.iter().find(held)?;
            Some(if stay == best { *best } else { Proposal { reason: Reason::WhileHeld, ..*stay } })
        };
        staying(&fresh).or_else(|| {
            let put_off = put_off();
            let again: Vec<Proposal> =
                put_off.iter().filter(|proposal| garment.was_put_off_early(proposal.check)).copied().collect();
            let again = staying(&again).map(|proposal| Proposal { reason: Reason::WhileHeld, ..proposal });
            again.or(fresh.first().copied()).or_else(|| staying(&put_off)).or(put_off.first().copied())
        })
    }

    /// Checks that would settle the band further, of the make or of what is left as the appraisal is, most telling first, whatever their
    /// seconds.
    pub fn most_telling(&self, garment: &Garment, appraisal: &Appraisal) -> Vec<Proposal> {
        let open = |check: &'static Check| matches!(garment.answer(check), None | Some(Answer::Skipped));
        let mut proposals = self.proposals(garment, &[appraisal], garment.stage(), open);
        proposals.retain(|proposal| proposal.bits >= TELLING);
        proposals.sort_by(|one, other| other.bits.total_cmp(&one.bits));
        proposals
    }

    /// Seconds until two neighbouring bands hold 0.8, if answers come as they are likeliest to; 0 when they do, none when the checks
    /// that are left do not lead there.
    pub fn settling(&self, garment: &Garment, appraisal: &Appraisal) -> Option<f64> {
        if appraisal.is_settled() {
            return Some(0.0);
        }
        let stage = garment.stage();
        let open = |check: &'static Check| matches!(garment.answer(check), None | Some(Answer::Skipped));
        let candidates: Vec<Candidate<'static>> = garment
            .checks()
            .filter(|check| open(check) && garment.standing(check) == Standing::Open)
            .filter_map(|check| candidate(check, appraisal))
            .collect();
        let to_reach = |to: Stage| to.seconds_from(stage);
        let ranked = ranking(&self.tables, &appraisal.belief, &candidates, to_reach);
        settling(&self.tables, &appraisal.belief, &candidates, &ranked, to_reach).to_eighty
    }

    /// Checks that may be put and speak to one of these appraisals, the best for its seconds first. A fact about cost goes with the make.
    fn proposals(
        &self,
        garment: &Garment,
        appraisals: &[&Appraisal],
        stage: Stage,
        may: impl Fn(&'static Check) -> bool,
    ) -> Vec<Proposal> {
        let checks: Vec<&'static Check> =
            garment.checks().filter(|check| appraisals.iter().any(|appraisal| appraisal.is_spoken_to_by(check))).collect();
        let bits = |check: &'static Check| {
            let told = |appraisal: &&Appraisal| {
                Some(prospect(&self.tables, &appraisal.belief, check.speaks.about(appraisal.question())?).bits)
            };
            appraisals.iter().find_map(told).unwrap_or(0.0)
        };
        let open: Vec<&'static Check> =
            checks.iter().copied().filter(|check| may(check) && garment.standing(check) == Standing::Open).collect();
        let mut ranked = vec![0.0; open.len()];
        for appraisal in appraisals {
            let speaking = open.iter().enumerate().filter_map(|(place, check)| Some((place, candidate(check, appraisal)?)));
            let (places, candidates): (Vec<usize>, Vec<Candidate<'static>>) = speaking.unzip();
            for worth in ranking(&self.tables, &appraisal.belief, &candidates, |to| to.seconds_from(stage)) {
                ranked[places[worth.candidate]] = worth.bits;
            }
        }
        let mut proposals: Vec<(f64, Proposal)> = open
            .into_iter()
            .zip(ranked)
            .map(|(check, told)| {
                let seconds = f64::from(check.seconds) + check.stage.seconds_from(stage);
                let opened = opened_by(&checks, check)
                    .filter(|(dependent, _)| garment.answer(dependent).is_none())
                    .map(|(dependent, share)| (share * bits(dependent), share * f64::from(dependent.seconds)))
                    .fold((0.0, 0.0), |best: (f64, f64), next| if next.0 > best.0 { next } else { best });
                let costs = check.speaks.cost().is_some();
                let reason = match (told, opened.0) {
                    (told, opened) if told >= TELLING && told >= opened => Reason::Telling,
                    (_, opened) if opened >= TELLING => Reason::Opens,
                    _ if costs => Reason::Costs,
                    _ => Reason::LeftOver,
                };
                let worth = told.max(opened.0).max(if costs { COST_FACT } else { 0.0 });
                let takes = if reason == Reason::Opens { seconds + opened.1 } else { seconds };
                (worth / takes.max(1.0), Proposal { check, bits: told.max(opened.0), seconds, reason })
            })
            .collect();
        proposals.sort_by(|one, other| other.0.total_cmp(&one.0));
        proposals.into_iter().map(|(_, proposal)| proposal).collect()
    }
}

impl Garment {
    /// Whether a check was put off and another, made with the garment held alike, was answered since.
    fn was_put_off_early(&self, check: &Check) -> bool {
        let since = self.entries().iter().skip_while(|entry| entry.check != check);
        since.skip(1).any(|entry| entry.check.stage == check.stage && entry.answer != Answer::Skipped)
    }
}

fn candidate(check: &'static Check, appraisal: &Appraisal) -> Option<Candidate<'static>> {
    let curve = check.speaks.about(appraisal.question())?;
    Some(Candidate { curve, seconds: f64::from(check.seconds), stage: check.stage })
}

/// Checks that another check opens, and how often it does.
fn opened_by(checks: &[&'static Check], opener: &'static Check) -> impl Iterator<Item = (&'static Check, f64)> {
    checks.iter().copied().filter_map(move |check| {
        let when = check.asked_when.as_ref()?;
        (when.check == opener).then(|| (check, f64::from(when.share) / 100.0))
    })
}
