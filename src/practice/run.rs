//! A run: two minutes of one's own, at one's own level, in which mistakes come back; or a run handed out by its code, the same for everyone.

use super::code::Plan;
use super::draws;
use super::question::{Answered, Given, Judged, Question};
use super::skill::{Trial, next_topic, skill};
use super::topic::Topic;
use super::whole;
use crate::cost::Rates;
use crate::garment::Appraiser;
use crate::specimen::Chance;

/// How long a run of one's own takes, in seconds. The question under way is finished.
pub const RUN_SECONDS: f64 = 120.0;
/// Questions of a run that was handed out: about two minutes for most. Judgement.
pub const SHARED_QUESTIONS: usize = 12;
/// After so many other questions a mistake comes back, as a like specimen.
const BACK_AFTER: usize = 3;
/// How much easier it is then, in logits. Judgement.
const EASED: f64 = 0.4;

/// A run under way. Time is somebody else's.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    plan: Plan,
    shared: bool,
    answered: Vec<Answered>,
}

/// What comes next.
#[derive(Clone, Debug, PartialEq)]
pub struct Next {
    /// The question.
    pub question: Question,
    /// Whether it comes back because of a mistake.
    pub again: bool,
}

impl Run {
    /// A run of one's own; its level is the learner's, whatever the plan says.
    pub fn own(plan: Plan) -> Run {
        Run { plan, shared: false, answered: Vec::new() }
    }

    /// A run that was handed out: the same questions for everyone.
    pub fn shared(plan: Plan) -> Run {
        Run { plan, shared: true, answered: Vec::new() }
    }

    /// What makes it.
    pub fn plan(&self) -> Plan {
        self.plan
    }

    /// Whether it was handed out.
    pub fn is_shared(&self) -> bool {
        self.shared
    }

    /// What was answered, in order.
    pub fn answered(&self) -> &[Answered] {
        &self.answered
    }

    /// How many were right.
    pub fn right(&self) -> usize {
        self.answered.iter().filter(|answered| answered.judged.right).count()
    }

    /// Whether it is over, after so many seconds.
    pub fn is_over(&self, seconds: f64) -> bool {
        if self.shared { self.answered.len() >= SHARED_QUESTIONS } else { seconds >= RUN_SECONDS }
    }

    /// Its answers as trials of skill.
    pub fn trials(&self) -> Vec<Trial> {
        let trial = |answered: &Answered| Trial {
            topic: answered.question.topic,
            difficulty: answered.question.difficulty,
            blind: answered.question.blind(),
            right: answered.judged.right,
        };
        self.answered.iter().map(trial).collect()
    }

    /// The next question; `before` are answers of earlier runs. None only where a whole garment cannot be made up, which no table of today
    /// brings about.
    ///
    /// A run that was handed out goes through its topics in turn, each at the plan's level, so that nothing that anybody answers changes what
    /// comes. A run of one's own takes a mistake up again after three other questions, once, with another specimen that is a little easier;
    /// else the topic that is tried least or known least, never twice in a row where there is another.
    pub fn next(&self, before: &[Trial], rates: &Rates, appraiser: &Appraiser) -> Option<Next> {
        let place = self.answered.len();
        let seed = mixed(self.plan.seed(), place);
        if self.shared {
            let topics: Vec<Topic> = self.plan.topics().each().collect();
            let turn = (mixed(self.plan.seed(), usize::MAX) as usize).wrapping_add(place) % topics.len().max(1);
            let question = question(*topics.get(turn)?, seed, self.plan.level().difficulty(), rates, appraiser)?;
            return Some(Next { question, again: false });
        }
        let mut all = before.to_vec();
        all.extend(self.trials());
        if let Some(missed) = self.comes_back(place) {
            let difficulty = missed.question.difficulty - EASED;
            return question(missed.question.topic, seed, difficulty, rates, appraiser)
                .map(|question| Next { question, again: true });
        }
        let last = self.answered.last().map(|answered| answered.question.topic);
        let others: Vec<Topic> = self.plan.topics().each().filter(|topic| Some(*topic) != last).collect();
        let among = super::Topics::of(&others).unwrap_or(self.plan.topics());
        let topic = next_topic(&all, among)?;
        let difficulty = skill(&all, topic).next_difficulty();
        question(topic, seed, difficulty, rates, appraiser).map(|question| Next { question, again: false })
    }

    /// The mistake that is due now. One that was a return itself does not come a second time.
    fn comes_back(&self, place: usize) -> Option<&Answered> {
        let due = place.checked_sub(BACK_AFTER + 1)?;
        let missed = self.answered.get(due).filter(|answered| !answered.judged.right)?;
        let was_return = due
            .checked_sub(BACK_AFTER + 1)
            .and_then(|due| self.answered.get(due))
            .is_some_and(|earlier| !earlier.judged.right && earlier.question.topic == missed.question.topic);
        (!was_return).then_some(missed)
    }

    /// The run with an answer added, and how it was. None when it is an answer to another kind of question.
    pub fn after(mut self, question: Question, given: Given) -> Option<(Run, Judged)> {
        let judged = question.judged(&given)?;
        self.answered.push(Answered { question, given, judged: judged.clone() });
        Some((self, judged))
    }
}

fn question(topic: Topic, seed: u64, difficulty: f64, rates: &Rates, appraiser: &Appraiser) -> Option<Question> {
    match topic {
        Topic::Whole => whole::draw(seed, difficulty, rates, appraiser),
        topic => draws::draw(topic, seed, difficulty),
    }
}

/// A seed for one place of a run: two draws of the generator, so that neighbours share nothing.
fn mixed(seed: u32, place: usize) -> u64 {
    let mut chance = Chance::new(u64::from(seed).wrapping_mul(0x9e37_79b9).wrapping_add(place as u64));
    let mut half = || (chance.share() * 4_294_967_296.0) as u64;
    half() << 32 | half()
}
