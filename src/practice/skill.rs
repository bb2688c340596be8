//! What a learner's answers say of their skill in a topic, with its width, and what to practise next.

use super::topic::{Topic, Topics};

/// A question answered, as it counts for skill.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trial {
    /// What it was about.
    pub topic: Topic,
    /// How hard it was, in logits.
    pub difficulty: f64,
    /// How likely a blind guess was right.
    pub blind: f64,
    /// Whether it was right.
    pub right: bool,
}

/// Skill in a topic.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Skill {
    /// Questions it rests on.
    pub trials: usize,
    /// Mean, in logits; at 0 one knows half of the middling specimens.
    pub mean: f64,
    /// Standard deviation of what is believed of it.
    pub sd: f64,
    /// One time in ten it is less.
    pub low: f64,
    /// One time in ten it is more.
    pub high: f64,
}

/// Before so many questions of a topic nothing is said of it. Judgement.
pub const ENOUGH: usize = 5;
/// Spread of skill among learners, in logits, believed before the first question. Judgement.
const LEARNERS: f64 = 1.5;
/// Chance of a slip of the finger by one who knows. Judgement.
const SLIP: f64 = 0.03;
/// Places at which skill is looked at, and the first of them, in logits.
const PLACES: usize = 121;
const FIRST: f64 = -6.0;
const STEP: f64 = 0.1;

fn logistic(x: f64) -> f64 {
    1.0 / (1.0 + (-x).exp())
}

/// Chance that one of that skill answers right.
///
/// # Formula
/// `c + (1 - s - c) / (1 + exp(b - t))`, with `c` the chance of a blind guess, `s` = 0.03 of a slip, `b` difficulty, `t` skill.
///
/// # Source
/// The logistic model of Rasch with a lower and an upper end (common practice in testing); sizes are judgement.
pub(super) fn chance(skill: f64, difficulty: f64, blind: f64) -> f64 {
    let blind = blind.clamp(0.0, 0.9);
    blind + (1.0 - SLIP - blind).max(0.0) * logistic(skill - difficulty)
}

/// Skill in a topic from all answers; those about other topics count for nothing.
///
/// # Formula
/// Bayes on a grid from -6 to 6 logits: normal prior of mean 0 and spread 1.5, times [`chance`] of each answer.
///
/// # Where it holds
/// For answers of one season: skill is taken to stand still. Later answers do not count for more.
pub fn skill(trials: &[Trial], topic: Topic) -> Skill {
    let at = |place: usize| FIRST + STEP * place as f64;
    let mut weights: [f64; PLACES] = std::array::from_fn(|place| -0.5 * (at(place) / LEARNERS).powi(2));
    let mut count = 0;
    for trial in trials.iter().filter(|trial| trial.topic == topic && trial.difficulty.is_finite() && trial.blind.is_finite()) {
        count += 1;
        for (place, weight) in weights.iter_mut().enumerate() {
            let right = chance(at(place), trial.difficulty, trial.blind);
            *weight += if trial.right { right } else { 1.0 - right }.ln();
        }
    }
    let most = weights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let weights = weights.map(|weight| (weight - most).exp());
    let sum: f64 = weights.iter().sum();
    let mean = weights.iter().enumerate().map(|(place, weight)| at(place) * weight).sum::<f64>() / sum;
    let variance = weights.iter().enumerate().map(|(place, weight)| (at(place) - mean).powi(2) * weight).sum::<f64>() / sum;
    let below = |share: f64| {
        let mut passed = 0.0;
        for (place, weight) in weights.iter().enumerate() {
            let next = passed + weight / sum;
            if next >= share {
                // Within the step, as if the weight were spread evenly over it.
                return at(place) + STEP * ((share - passed) / (next - passed) - 0.5);
            }
            passed = next;
        }
        at(PLACES - 1)
    };
    Skill { trials: count, mean, sd: variance.sqrt(), low: below(0.1), high: below(0.9) }
}

impl Skill {
    /// Of a hundred middling specimens, how many one would know, blind guesses left out: least, middle, most of an 80 % range, as shares.
    pub fn known(&self) -> [f64; 3] {
        [self.low, self.mean, self.high].map(logistic)
    }

    /// Whether there are answers enough to say something.
    pub fn says_something(&self) -> bool {
        self.trials >= ENOUGH
    }

    /// How hard the next specimen should be: such that two of three are known. Judgement: enough to learn from, not enough to give up.
    pub fn next_difficulty(&self) -> f64 {
        (self.mean - 0.7).clamp(-2.5, 2.5)
    }
}

/// What to practise next, of these topics: the one whose skill is lowest at its upper end once it is known, and before that the one that
/// was tried least.
pub fn next_topic(trials: &[Trial], topics: Topics) -> Option<Topic> {
    let skills: Vec<(Topic, Skill)> = topics.each().map(|topic| (topic, skill(trials, topic))).collect();
    let untried = skills.iter().filter(|(_, skill)| !skill.says_something()).min_by_key(|(_, skill)| skill.trials);
    let weakest = skills.iter().min_by(|(_, one), (_, other)| one.high.total_cmp(&other.high));
    untried.or(weakest).map(|(topic, _)| *topic)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn trials(topic: Topic, rights: usize, wrongs: usize, difficulty: f64) -> Vec<Trial> {
        let trial = |right| Trial { topic, difficulty, blind: 0.25, right };
        std::iter::repeat_n(trial(true), rights).chain(std::iter::repeat_n(trial(false), wrongs)).collect()
    }

    #[test]
    fn nothing_answered_is_the_prior_and_says_nothing() {
        let none = skill(&[], Topic::Count);
        assert!(none.mean.abs() < 1e-12 && (none.sd - LEARNERS).abs() < 0.01 && !none.says_something());
        // The normal quantile of 0.9 is 1.2816.
        assert!((none.high - 1.2816 * LEARNERS).abs() < 0.02 && (none.low + none.high).abs() < 1e-9);
    }

    #[test]
    fn right_answers_raise_and_hard_ones_raise_more_and_width_shrinks() {
        let (few, many) =
            (skill(&trials(Topic::Count, 4, 1, 0.0), Topic::Count), skill(&trials(Topic::Count, 40, 10, 0.0), Topic::Count));
        assert!(few.mean > 0.0 && many.sd < few.sd && few.says_something());
        assert!(skill(&trials(Topic::Count, 4, 1, 1.0), Topic::Count).mean > few.mean);
        assert!(skill(&trials(Topic::Count, 1, 4, 0.0), Topic::Count).mean < few.mean);
        assert_eq!(skill(&trials(Topic::More, 4, 1, 0.0), Topic::Count), skill(&[], Topic::Count));
    }

    #[test]
    fn what_is_untried_comes_first_then_what_is_weakest() {
        let topics = Topics::of(&[Topic::Count, Topic::More, Topic::Weave]).unwrap();
        let mut all = trials(Topic::Count, 9, 1, 0.0);
        all.extend(trials(Topic::More, 2, 8, 0.0));
        assert_eq!(next_topic(&all, topics), Some(Topic::Weave));
        all.extend(trials(Topic::Weave, 6, 4, 0.0));
        assert_eq!(next_topic(&all, topics), Some(Topic::More));
    }
}
