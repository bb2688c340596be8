//! Value for quality: of the other garments of a kind, how many a garment beats by being better made for no more money.
//!
//! No rate at which quality and money change for each other is assumed, because nobody has measured one. A garment gains on another only where
//! it is ahead in both, and loses only where it is behind in both; a dearer one that is better made neither gains nor loses. So quality is
//! never read from a price, nor a price from quality.

use std::cmp::Ordering;
use std::collections::BTreeMap;
use std::fmt;

use super::areas::normal_area;
use super::compare::spread;
use super::traits::in_units;
use crate::cost::Rates;
use crate::garment::{Appraisal, Garment, NotLanded, landed_smallest};
use crate::say;
use crate::trade::{Currency, PriceKind};

/// Fewest answers that speak of quality. Judgement: with fewer the belief is hardly more than what is believed of any garment.
const ENOUGH_ANSWERS: usize = 3;
/// Fewest others to be set against. Judgement.
const ENOUGH_OTHERS: usize = 3;
/// Less sure than this of which of two is the better value, they are about the same. Judgement.
const SURE: f64 = 0.8;

/// What is to be weighed of one garment: a belief about its quality, taken as normal, and what is to be paid for a piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Asked {
    quality: f64,
    spread: f64,
    price: f64,
}

/// How a garment stands among the others that it can be set against.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Worth {
    /// How many others.
    pub others: usize,
    /// Of how many of them it is better made for no more money: an expected count, so seldom whole.
    pub beats: f64,
    /// How many of them are better made for no more money than it.
    pub beaten: f64,
    /// Standard deviation of [`net`](Worth::net), from how unsure each quality is.
    pub spread: f64,
}

/// Why a garment has no place in the order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyNoWorth {
    /// Fewer than three others of its kind have a price of the same sort in the same currency.
    FewOthers,
    /// Fewer than three of its answers speak of quality.
    FewAnswers,
    /// It was worn: what is left in it is another question than how it was made.
    SecondHand,
    /// There is an offer, and what it comes to cannot be said.
    NotLanded(NotLanded),
    /// Its ticket lies face down.
    FaceDown,
    /// Nobody noted what it costs.
    NoPrice,
}

impl fmt::Display for WhyNoWorth {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            WhyNoWorth::FewOthers => {
                say!("Fewer than three others of its kind are checked and have such a price in this currency.")
            }
            WhyNoWorth::FewAnswers => say!("Too few answers to weigh its quality. Make a check or two more."),
            WhyNoWorth::SecondHand => say!("Second-hand: what is left in it is not weighed here."),
            WhyNoWorth::NotLanded(why) => return why.fmt(f),
            WhyNoWorth::FaceDown => say!("The ticket lies face down. Guess first, then turn it over."),
            WhyNoWorth::NoPrice => say!("No price is noted."),
        })
    }
}

/// A place in the order of value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placed {
    /// Which of those that were asked about.
    pub which: usize,
    /// Whether it is about the same value as the first of the run that it stands in; never for the first of a run.
    pub about_the_same: bool,
}

/// Prices that may be set against each other: what shoppers pay, what shops pay, and what a piece costs in the warehouse.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Sort {
    Retail,
    Wholesale,
    Landed,
}

impl Asked {
    /// With a belief of mean `quality` and standard deviation `spread`, for `price`. None unless all are numbers, and the last two above
    /// nothing.
    pub fn new(quality: f64, spread: f64, price: f64) -> Option<Asked> {
        let sound = quality.is_finite() && spread.is_finite() && price.is_finite() && spread > 0.0 && price > 0.0;
        sound.then_some(Asked { quality, spread, price })
    }

    /// Whether it costs no more than the other.
    fn no_dearer(&self, than: &Asked) -> bool {
        self.price <= than.price
    }
}

impl Worth {
    /// Share of the others that it beats less the share that beat it: 1 for the best value, -1 for the worst.
    pub fn net(&self) -> f64 {
        (self.beats - self.beaten) / self.others.max(1) as f64
    }

    /// Whether it may as well be the other way round with another that stands no higher: less than 80 % sure.
    ///
    /// Both are taken as independent. They are set against the same others, which makes the difference surer than that; so this calls more
    /// pairs alike than it might.
    pub fn about_the_same(&self, lower: &Worth) -> bool {
        let apart = self.net() - lower.net();
        apart <= 0.0 || normal_area(apart / f64::hypot(self.spread, lower.spread)) < SURE
    }
}

/// Weights of a mean over a standard normal at these points: Gauss-Hermite of seven, exact for polynomials up to the thirteenth power.
///
/// # Source
/// `numpy.polynomial.hermite_e.hermegauss(7)`, weights over the root of two pi.
const POINTS: [(f64, f64); 7] = [
    (-3.750_439_717_725_742, 0.000_548_268_855_972_217),
    (-2.366_759_410_734_541, 0.030_757_123_967_586_5),
    (-1.154_405_394_739_968, 0.240_123_178_605_012_7),
    (0.0, 0.457_142_857_142_857_1),
    (1.154_405_394_739_968, 0.240_123_178_605_012_7),
    (2.366_759_410_734_541, 0.030_757_123_967_586_5),
    (3.750_439_717_725_742, 0.000_548_268_855_972_217),
];

/// Areas under the normal curve from a table, off by 3e-6 at the most: a rack of a thousand asks for some millions of them.
struct Areas(Vec<f64>);

impl Areas {
    const STEPS: f64 = 100.0;
    const LAST: usize = 600;

    fn new() -> Areas {
        Areas((0..=Areas::LAST + 1).map(|step| normal_area(step as f64 / Areas::STEPS)).collect())
    }

    fn below(&self, z: f64) -> f64 {
        let at = z.abs() * Areas::STEPS;
        let upper = if at < Areas::LAST as f64 {
            let step = at as usize;
            self.0[step] + (at - step as f64) * (self.0[step + 1] - self.0[step])
        } else {
            1.0
        };
        if z < 0.0 { 1.0 - upper } else { upper }
    }
}

/// How each of some garments stands among the rest of them.
///
/// # Formula
/// With qualities `q` normal and independent and prices `p`: `beats = sum P(q > q_j)` over the others with `p <= p_j`, `beaten = sum P(q_j > q)`
/// over those with `p_j <= p`, `P(q > q_j) = Phi((m - m_j) / sqrt(s^2 + s_j^2))`. Spread of `net`: of its mean given `q` over `q`, by seven points
/// of Gauss-Hermite (off by less than 0.01 where checked), and of the others' qualities given `q`.
///
/// # Source
/// Win probability less loss probability over all pairs: net benefit of generalised pairwise comparisons, Buyse (2010) (from memory). That a
/// pair counts only where one is ahead in both quality and price is judgement. Checked against `scipy`.
pub fn among(asked: &[Asked]) -> Vec<Worth> {
    let areas = Areas::new();
    if asked.len() > FEW { many_among(asked, &areas) } else { few_among(asked, &areas) }
}

/// Up to so many each is set against each other at every point; above, sums over all others are read off a grid, which takes a hundredth of
/// the time for a thousand.
const FEW: usize = 64;

fn few_among(asked: &[Asked], areas: &Areas) -> Vec<Worth> {
    (0..asked.len()).map(|place| one_among(asked, place, areas)).collect()
}

/// Sums over some garments on a grid of quality, point by point: of the chance that each lies below, and of how much that varies.
#[derive(Clone)]
struct Sums {
    below: Vec<f64>,
    varies: Vec<f64>,
}

/// Points of quality, evenly apart.
struct Grid {
    least: f64,
    step: f64,
}

impl Grid {
    const POINTS: usize = 192;

    fn over(asked: &[Asked]) -> Grid {
        let reach = POINTS[POINTS.len() - 1].0;
        let least = asked.iter().map(|one| one.quality - reach * one.spread).fold(f64::INFINITY, f64::min);
        let most = asked.iter().map(|one| one.quality + reach * one.spread).fold(f64::NEG_INFINITY, f64::max);
        Grid { least, step: ((most - least) / (Grid::POINTS - 1) as f64).max(f64::MIN_POSITIVE) }
    }

    fn nothing() -> Sums {
        Sums { below: vec![0.0; Grid::POINTS], varies: vec![0.0; Grid::POINTS] }
    }

    fn add(&self, one: &Asked, areas: &Areas, to: &mut Sums) {
        for (at, (below, varies)) in to.below.iter_mut().zip(&mut to.varies).enumerate() {
            let share = areas.below((self.least + at as f64 * self.step - one.quality) / one.spread);
            *below += share;
            *varies += share * (1.0 - share);
        }
    }

    /// Between two points, as the line between them has it.
    fn read(&self, sums: &[f64], quality: f64) -> f64 {
        let at = ((quality - self.least) / self.step).clamp(0.0, (Grid::POINTS - 1) as f64);
        let low = (at as usize).min(Grid::POINTS - 2);
        sums[low] + (at - low as f64) * (sums[low + 1] - sums[low])
    }
}

/// The same as [`few_among`], but that the spread is read off a grid: off by less than 0.001 where checked.
fn many_among(asked: &[Asked], areas: &Areas) -> Vec<Worth> {
    let grid = Grid::over(asked);
    let mut all = Grid::nothing();
    for one in asked {
        grid.add(one, areas, &mut all);
    }
    let mut counts = vec![(0.0, 0.0); asked.len()];
    for (place, own) in asked.iter().enumerate() {
        for (other, against) in asked.iter().enumerate().skip(place + 1) {
            let apart = (own.spread * own.spread + against.spread * against.spread).sqrt();
            let ahead = areas.below((own.quality - against.quality) / apart);
            if own.no_dearer(against) {
                counts[place].0 += ahead;
                counts[other].1 += ahead;
            }
            if against.no_dearer(own) {
                counts[place].1 += 1.0 - ahead;
                counts[other].0 += 1.0 - ahead;
            }
        }
    }
    let mut by_price: Vec<usize> = (0..asked.len()).collect();
    by_price.sort_by(|one, other| asked[*one].price.total_cmp(&asked[*other].price));
    let others = asked.len() - 1;
    let mut worths = vec![Worth { others, beats: 0.0, beaten: 0.0, spread: 0.0 }; asked.len()];
    let mut cheaper = Grid::nothing();
    let mut fewer = 0_usize;
    for run in by_price.chunk_by(|one, other| asked[*one].price == asked[*other].price) {
        let mut equal = Grid::nothing();
        for which in run {
            grid.add(&asked[*which], areas, &mut equal);
        }
        for which in run {
            let own = &asked[*which];
            let no_dearer = (fewer + run.len() - 1) as f64;
            let at = POINTS.map(|(z, _)| {
                let quality = own.quality + z * own.spread;
                let read = |sums: &[f64]| grid.read(sums, quality);
                // Among all and among its equals it is itself, and is not to be set against itself.
                let own_share = areas.below(z);
                let (below_all, below_cheaper, below_equal) =
                    (read(&all.below) - own_share, read(&cheaper.below), read(&equal.below) - own_share);
                let net = below_all - below_cheaper - (no_dearer - below_cheaper - below_equal);
                let own_varies = own_share * (1.0 - own_share);
                // At the same price the pair counts one way or the other: twice as far, four times the variance.
                let varies = (read(&all.varies) - own_varies) + 3.0 * (read(&equal.varies) - own_varies);
                (net, varies.max(0.0))
            });
            let (beats, beaten) = counts[*which];
            worths[*which] = Worth { others, beats, beaten, spread: spread_of(&at) / others as f64 };
        }
        for ((below, varies), (more, vary)) in
            cheaper.below.iter_mut().zip(&mut cheaper.varies).zip(equal.below.iter().zip(&equal.varies))
        {
            *below += more;
            *varies += vary;
        }
        fewer += run.len();
    }
    worths
}

/// Standard deviation of a net count, from its mean and its variance at each point of its own quality.
fn spread_of(at: &[(f64, f64); POINTS.len()]) -> f64 {
    let mean = |of: &dyn Fn(&(f64, f64)) -> f64| -> f64 { POINTS.iter().zip(at).map(|((_, weight), at)| weight * of(at)).sum() };
    let middle = mean(&|(net, _)| *net);
    mean(&|(net, varies)| (net - middle).powi(2) + varies).max(0.0).sqrt()
}

fn one_among(asked: &[Asked], place: usize, areas: &Areas) -> Worth {
    let own = &asked[place];
    let (mut beats, mut beaten) = (0.0, 0.0);
    // At each point of its own quality: expected net count, and how much that varies with the others' qualities.
    let mut at = [(0.0, 0.0); POINTS.len()];
    for (_, other) in asked.iter().enumerate().filter(|(other, _)| *other != place) {
        let (gains, loses) = (own.no_dearer(other), other.no_dearer(own));
        let ahead = areas.below((own.quality - other.quality) / f64::hypot(own.spread, other.spread));
        beats += if gains { ahead } else { 0.0 };
        beaten += if loses { 1.0 - ahead } else { 0.0 };
        // At the same price the pair counts one way or the other, else one way or not at all.
        let range = if gains && loses { 2.0 } else { 1.0 };
        for ((z, _), (net, varies)) in POINTS.iter().zip(&mut at) {
            let ahead = areas.below((own.quality + z * own.spread - other.quality) / other.spread);
            *net += if gains { ahead } else { 0.0 } - if loses { 1.0 - ahead } else { 0.0 };
            *varies += range * range * ahead * (1.0 - ahead);
        }
    }
    let others = asked.len().saturating_sub(1);
    Worth { others, beats, beaten, spread: spread_of(&at) / others.max(1) as f64 }
}

/// What is to be paid for a piece, and what sort of price that is: an offer's smallest order landed, else the ticket in view.
fn price(garment: &Garment, rates: &Rates) -> Result<(Sort, Currency, f64), WhyNoWorth> {
    if !garment.terms().prices().is_empty() {
        let landed = landed_smallest(garment, rates).map_err(WhyNoWorth::NotLanded)?;
        return Ok((Sort::Landed, landed.currency, landed.view.landed));
    }
    let ticket = garment.ticket().filter(|ticket| ticket.minor > 0).ok_or(WhyNoWorth::NoPrice)?;
    if ticket.face_down {
        return Err(WhyNoWorth::FaceDown);
    }
    let sort = match ticket.kind {
        PriceKind::Retail => Sort::Retail,
        PriceKind::Wholesale => Sort::Wholesale,
    };
    Ok((sort, ticket.currency, in_units(ticket)))
}

/// Value for quality of each garment among those of its kind that have a price of the same sort in the same currency. The invented stand
/// among the invented only.
///
/// # Errors
/// Each garment's [`WhyNoWorth`] says why it has no place.
pub fn worth(garments: &[(&Garment, &Appraisal)], rates: &Rates) -> Vec<Result<Worth, WhyNoWorth>> {
    let mut found: Vec<Result<Worth, WhyNoWorth>> = Vec::with_capacity(garments.len());
    let mut groups: BTreeMap<_, Vec<(usize, Asked)>> = BTreeMap::new();
    for (place, (garment, appraisal)) in garments.iter().enumerate() {
        let why = match price(garment, rates) {
            Err(why) => why,
            Ok(_) if garment.is_second_hand() => WhyNoWorth::SecondHand,
            Ok(_) if appraisal.evidence() < ENOUGH_ANSWERS => WhyNoWorth::FewAnswers,
            Ok((sort, currency, amount)) => {
                if let Some(asked) = Asked::new(appraisal.mean(), spread(appraisal), amount) {
                    let group = (garment.family().key, sort, currency, garment.id().is_invented());
                    groups.entry(group).or_default().push((place, asked));
                }
                WhyNoWorth::FewOthers
            }
        };
        found.push(Err(why));
    }
    for group in groups.into_values().filter(|group| group.len() > ENOUGH_OTHERS) {
        let (places, asked): (Vec<usize>, Vec<Asked>) = group.into_iter().unzip();
        for (place, worth) in places.into_iter().zip(among(&asked)) {
            found[place] = Ok(worth);
        }
    }
    found
}

/// The best value first; those without a place last, by what is missing. Equals keep the order in which they were handed in.
///
/// A run goes on as long as its first is [`about_the_same`](Worth::about_the_same) as the next.
pub fn by_worth(found: &[Result<Worth, WhyNoWorth>]) -> Vec<Placed> {
    let rank = |why: &WhyNoWorth| match why {
        WhyNoWorth::FewOthers => 0,
        WhyNoWorth::FewAnswers => 1,
        WhyNoWorth::SecondHand => 2,
        WhyNoWorth::NotLanded(_) => 3,
        WhyNoWorth::FaceDown => 4,
        WhyNoWorth::NoPrice => 5,
    };
    let mut order: Vec<usize> = (0..found.len()).collect();
    order.sort_by(|one, other| match (&found[*one], &found[*other]) {
        (Ok(one), Ok(other)) => other.net().total_cmp(&one.net()),
        (Ok(_), Err(_)) => Ordering::Less,
        (Err(_), Ok(_)) => Ordering::Greater,
        (Err(one), Err(other)) => rank(one).cmp(&rank(other)),
    });
    let mut first: Option<&Worth> = None;
    let placed = order.into_iter().map(|which| {
        let own = found[which].as_ref().ok();
        let about_the_same = first.zip(own).is_some_and(|(first, own)| first.about_the_same(own));
        if !about_the_same {
            first = own;
        }
        Placed { which, about_the_same }
    });
    placed.collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn many_stand_as_they_would_if_each_were_set_against_each() {
        let areas = Areas::new();
        // Prices come several times; qualities and spreads as a rack has them, and some far surer.
        let asked: Vec<Asked> = (0..300_u32)
            .map(|place| {
                let quality = f64::from(place * 37 % 101) / 101.0 * 6.0 - 3.0;
                let spread = 0.15 + f64::from(place * 13 % 29) / 29.0;
                Asked::new(quality, spread, f64::from(20 + place * 7 % 40)).expect("sound")
            })
            .collect();
        for (few, many) in few_among(&asked, &areas).iter().zip(many_among(&asked, &areas)) {
            assert_eq!(few.others, many.others);
            assert!((few.beats - many.beats).abs() < 1e-6 && (few.beaten - many.beaten).abs() < 1e-6, "{few:?} {many:?}");
            assert!((few.spread - many.spread).abs() < 0.001, "{few:?} {many:?}");
        }
    }
}
