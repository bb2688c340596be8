//! A whole garment by its evidence: made up from a quality that was drawn first, so that its band is known, with answers as such a garment
//! would get them and a ticket as such a garment would bear it.

use super::question::{Question, Takes, Truth};
use super::topic::Topic;
use crate::catalog::{FAMILIES, Family};
use crate::check::{Check, Level};
use crate::cost::{Channel, LogNormal, Rates};
use crate::garment::{Act, Answer, Appraiser, Garment, Id, price};
use crate::grading::Care;
use crate::quantity::normal::point_below;
use crate::rack::{Range, Score};
use crate::specimen::Chance;
use crate::trade::{Band, Currency, Day};
use crate::{say, to_say};

/// Answers told of a garment.
const TOLD: usize = 8;
/// Half the width of a middle band, in standard deviations of quality.
const HALF_BAND: f64 = 0.5;

/// A garment that was made up, and what is true of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Described {
    family: &'static Family,
    answers: Vec<(&'static Check, &'static Level)>,
    channel: Channel,
    band: Band,
    told: Band,
    ticket: Option<(f64, LogNormal, Currency)>,
}

/// A range that one guesses a ticket to lie in, four times of five, in whole units of the market's currency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PriceGuess {
    /// The lower end.
    pub low: f64,
    /// The upper end.
    pub high: f64,
}

impl Described {
    /// Kind of garment.
    pub fn family(&self) -> &'static Family {
        self.family
    }

    /// What was found on it.
    pub fn answers(&self) -> &[(&'static Check, &'static Level)] {
        &self.answers
    }

    /// The kind of shop it hangs in.
    pub fn channel(&self) -> Channel {
        self.channel
    }

    /// The band of the quality that it was made up from.
    pub fn band(&self) -> Band {
        self.band
    }

    /// The band that the evidence told points to most; it may be another, for eight answers do not tell all.
    pub fn told(&self) -> Band {
        self.told
    }

    /// Its ticket and currency, in whole units; none where nobody has written what the family costs.
    pub fn ticket(&self) -> Option<(f64, Currency)> {
        self.ticket.map(|(ticket, _, currency)| (ticket, currency))
    }

    /// Where four of five such tickets lie, by the evidence told.
    pub fn likely(&self) -> Option<(f64, f64)> {
        self.ticket.map(|(_, spread, _)| {
            let range = spread.range();
            (range.low, range.high)
        })
    }

    /// How good a guess at the ticket is; none where there is none, or the range is none.
    pub fn score(&self, guess: &PriceGuess) -> Option<Score> {
        let (ticket, ..) = self.ticket?;
        Score::of(&Range::of_prices(guess.low, None, guess.high)?, ticket.ln())
    }
}

/// A quality of that band: near its middle where it is easy, near a border where it is hard.
fn quality(band: Band, hardness: f64, chance: &mut Chance) -> f64 {
    let side = if chance.share() < 0.5 { -1.0 } else { 1.0 };
    let middle = (band.index() as f64 - 2.0) * 2.0 * HALF_BAND;
    middle + side * HALF_BAND * 0.9 * hardness * chance.share()
}

/// A garment and its question.
///
/// # Formula
/// Band at random, quality within it; each answer with the chance that its check's curve gives for that quality; the ticket from the spread
/// of [`price`] for that evidence. The checks are the most telling of the family that stand by themselves, and what tells most of cost.
pub(super) fn draw(seed: u64, difficulty: f64, rates: &Rates, appraiser: &Appraiser) -> Option<Question> {
    let mut chance = Chance::new(seed);
    let hardness = ((difficulty + 2.5) / 5.0).clamp(0.0, 1.0);
    let family = *FAMILIES.get(chance.below(FAMILIES.len()))?;
    let band = Band::ALL[chance.below(Band::ALL.len())];
    let theta = quality(band, hardness, &mut chance);
    let mut checks: Vec<&'static Check> =
        family.checks.iter().copied().filter(|check| check.asked_when.is_none() && check.speaks.curve().is_some()).collect();
    let slope = |check: &Check| check.speaks.curve().map_or(0.0, |curve| curve.slope);
    checks.sort_by(|one, other| slope(other).total_cmp(&slope(one)));
    checks.truncate(TOLD + TOLD / 2);
    while checks.len() > TOLD {
        checks.remove(chance.below(checks.len()));
    }
    let channel = [Channel::ALL[0], Channel::ALL[1], Channel::ALL[2]][chance.below(3)];
    let mut garment = Garment::new(Id::new("practice")?, family, Day::new(2026, 1, 1)?).after(Act::Shop(Some(channel)));
    let mut answers = Vec::new();
    for check in checks {
        let mut left = chance.share();
        let place = check.speaks.curve()?.probabilities(theta).iter().position(|share| {
            left -= share;
            left < 0.0
        });
        let level = check.levels.get(place.unwrap_or(check.levels.len() - 1))?;
        garment = garment.after(Act::Answer(check, Answer::Judged { level: level.key, care: Care::Usual }));
        answers.push((check, level));
    }
    answers.sort_by_key(|(check, _)| check.stage);
    let ticket = price(&garment, rates, Some(channel)).map(|build_up| {
        let spread = build_up.ticket();
        // Within the middle nine tenths: a ticket that nobody could foresee teaches nothing.
        let far = point_below(0.05 + 0.9 * chance.share());
        ((spread.mu + spread.sigma * far).exp(), spread, build_up.currency())
    });
    let told = appraiser.appraise(&garment).likely().0;
    let described = Described { family, answers, channel, band, told, ticket };
    let because = match told == band {
        true => say!("The app, told the same, says {band} too.", band = told.name()),
        false => say!("The app, told the same, says {band}: eight answers do not tell all.", band = told.name()),
    };
    Some(Question {
        topic: Topic::Whole,
        asks: to_say!("How well is it made, and what does its ticket say?"),
        shown: Vec::new(),
        takes: Takes::BandAndTicket,
        difficulty,
        truth: Truth::Whole(Box::new(described)),
        because,
    })
}
