//! Garment against body at one place: now, after the first washes, and after a day's wear; how each sits, and how sure that is.

use super::alter::{Alteration, Cost, Way};
use super::borders::{Borders, Seen, add, between, fates_of};
use super::ease::{Against, Cut, Ease, Line, Sits};
use crate::quantity::{Estimate, Length, Number, Unit};

/// Two ends between which a thing lies, all places alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Between {
    /// The lower end.
    pub low: f64,
    /// The upper end.
    pub high: f64,
}

impl Between {
    /// Nothing at all.
    pub const NOTHING: Between = Between { low: 0.0, high: 0.0 };

    fn middle(self) -> f64 {
        0.5 * (self.low + self.high)
    }

    /// Standard uncertainty of a value that lies anywhere in it: half its width over the root of 3 (JCGM 100:2008, 4.3.7).
    fn spread(self) -> f64 {
        0.5 * (self.high - self.low) / 3.0_f64.sqrt()
    }

    /// The middles of `N` equal parts of it.
    fn parts<const N: usize>(self) -> [f64; N] {
        std::array::from_fn(|part| self.low + (self.high - self.low) * (part as f64 + 0.5) / N as f64)
    }
}

/// A value with what it may be off by (1 sigma).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Read {
    /// The value.
    pub value: f64,
    /// Standard uncertainty.
    pub spread: f64,
}

/// What the tape said of garment and body, both whole measures in centimetres, and the give of the cloth in per cent.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tape {
    /// The garment, girths doubled.
    pub garment: Read,
    /// The body where the garment lies.
    pub body: Read,
    /// Give across, in per cent.
    pub give: Read,
    /// How likely a garment that is too tight here today would have let the moves through that went freely; 1 where none was made.
    pub let_through: f64,
}

impl Tape {
    /// From estimates; `against` says what another place of the tape adds to the body's measure, and how far off that may be. None when one
    /// is unknown, or the garment has no size.
    pub fn new(garment: &Estimate<Length>, body: &Estimate<Length>, against: &Against, give: &Estimate<Number>) -> Option<Tape> {
        let read = |(value, spread): (f64, f64)| Read { value, spread };
        let garment = read(garment.in_unit(Unit::Centimetre)?);
        let body = read(body.in_unit(Unit::Centimetre)?);
        let body = Read { value: body.value + against.adds_cm, spread: body.spread.hypot(against.doubt_cm) };
        let give = read(give.in_unit(Unit::Percent)?);
        let whole = [garment, body, give].iter().all(|read| read.value.is_finite() && read.spread.is_finite());
        (whole && garment.value > 0.0 && body.value > 0.0).then_some(Tape { garment, body, give, let_through: 1.0 })
    }

    /// With what was seen when the person moved in it: see [`Tape::let_through`].
    pub fn tried(self, let_through: f64) -> Tape {
        Tape { let_through, ..self }
    }
}

/// What time does to a garment at one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct After {
    /// Change in the first washes as a share, below zero where it shrinks; none while nobody knows, and then nothing is said of later.
    pub wash: Option<Between>,
    /// Whether the cloth was never washed before.
    pub raw: bool,
    /// Growth in a pull, as a share, for stretch cloth; none while nobody knows.
    pub growth: Option<f64>,
}

/// A range in centimetres that holds four cases of five.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// One case in ten lies below.
    pub low: f64,
    /// The middle.
    pub middle: f64,
    /// One case in ten lies above.
    pub high: f64,
}

/// So many standard uncertainties either side of the middle hold four cases of five of a normal distribution.
const FOUR_FIFTHS: f64 = 1.281_551_565_544_600_4;

impl Span {
    fn of(middle: f64, spread: f64) -> Span {
        Span { low: middle - FOUR_FIFTHS * spread, middle, high: middle + FOUR_FIFTHS * spread }
    }
}

/// How garment and body sit at one place at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// The measure of the garment, in centimetres.
    pub size: Span,
    /// Garment minus body, in centimetres.
    pub ease: Span,
    /// How likely each of [`Sits::ALL`] is; they sum to 1.
    pub chances: [f64; 4],
}

impl Moment {
    /// The likeliest; of two alike the tighter.
    pub fn sits(&self) -> Sits {
        let mut best = 0;
        for place in 1..self.chances.len() {
            if self.chances[place] > self.chances[best] {
                best = place;
            }
        }
        Sits::ALL[best]
    }

    /// How likely it is.
    pub fn chance(&self, sits: Sits) -> f64 {
        self.chances[sits as usize]
    }
}

/// One place, now and later.
#[derive(Clone, Debug, PartialEq)]
pub struct LineFit {
    /// The place.
    pub line: &'static Line,
    /// What the tape said.
    pub tape: Tape,
    /// What the cut is meant to have, at the give as read.
    pub wanted: Ease,
    /// Least ease in which one can move, at the give as read.
    pub floor: f64,
    /// As it is.
    pub now: Moment,
    /// After the first washes, dry and not worn; none while nobody knows how it washes.
    pub washed: Option<Moment>,
    /// After the first washes and a day's wear.
    pub worn: Option<Moment>,
    /// How likely it is too tight or short in the end, and how likely so loose or long that it fails.
    pub fails: [f64; 2],
    /// Ease above which too much fails, at the give as read; infinite where it is a matter of taste.
    pub ceiling: f64,
    /// How likely each of [`Fate::ALL`](super::verdict::Fate::ALL) is, by this place alone; they sum to 1.
    pub fates: [f64; 4],
}

impl LineFit {
    /// What is amiss in the end, and by how much, in centimetres; none where nothing is, at its likeliest.
    pub fn amiss(&self) -> Option<(Way, f64)> {
        let ease = self.last().ease.middle;
        if ease < self.floor {
            Some((Way::Out, self.floor - ease))
        } else if ease >= self.ceiling {
            Some((Way::In, ease - self.ceiling))
        } else {
            None
        }
    }

    /// The last moment that is known.
    pub fn last(&self) -> &Moment {
        self.worn.as_ref().unwrap_or(&self.now)
    }
}

/// How far a tailor can go at a place, in centimetres of the whole measure.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Reach {
    /// Larger or longer.
    pub out: f64,
    /// Smaller or shorter.
    pub taken_in: f64,
}

impl Reach {
    /// How far the alterations of a line go, leaving out those that are seldom worth it; `room` says how far one can go.
    pub fn of(line: &Line, room: impl Fn(&'static Alteration) -> f64) -> Reach {
        let most = |way: Way| {
            let worth = line.alterations.iter().filter(|alteration| alteration.way == way && alteration.cost < Cost::VeryMuch);
            worth.map(|alteration| room(alteration)).fold(0.0, f64::max)
        };
        Reach { out: most(Way::Out), taken_in: most(Way::In) }
    }
}

/// Middles of five equal parts of a standard normal distribution.
///
/// # Source
/// scipy 1.17.1, `norm.ppf([0.1, 0.3, 0.5, 0.7, 0.9])`.
const FIFTHS: [f64; 5] = [-FOUR_FIFTHS, -0.524_400_512_708_041, 0.0, 0.524_400_512_708_041, FOUR_FIFTHS];

/// How garment and body sit at a place, now and later, and what becomes of it. None where the table has no ease for the cut,
/// and where a number is none.
///
/// # Formula
/// Ease is `E = G - B` with `u^2 = u_G^2 + u_B^2`. It sits too tight below [`floor`](super::ease::floor), close below what is [`wanted`](super::ease::wanted), as intended within it,
/// and loose above. After the first washes the garment is `G (1 + d)`, after a day's wear `G (1 + d) + w`, with `d` and `w` anywhere in
/// their ranges. The chances are areas of the normal distribution of `E` between these borders, averaged over five values of the give and
/// fifteen of `d` and `w` together; what is off today is off by as much later, so both are judged together for each.
///
/// Where moves that try the place went freely, the cases in which it is too tight today count by [`Tape::let_through`] only (theorem of
/// Bayes); the ranges of size and ease stay those of the tape.
///
/// A place fits where it is neither too tight nor so loose that it fails, today and after washing and a day's wear; it fits after washing
/// where it only comes right then; it can be altered where what is amiss in the end lies within `reach`; else it will not fit.
///
/// # Where it holds
/// Change in washing of -50 to +20 %. That a tape errs alike before and after is taken as it stands: the error of the girth is not shrunk
/// with it, which changes nothing that could be seen.
///
/// # Source
/// Ease: handbook, section 9.2. Size after a wash: AATCC TM150, ISO 5077; handbook, section 6.3. How sure: JCGM 100:2008, 4.3 and 5.1.
/// What counts as fitting is judgement.
pub fn assess(line: &'static Line, cut: &Cut, tape: Tape, after: After, reach: Reach) -> Option<LineFit> {
    let (garment, body) = (tape.garment.value, tape.body.value);
    let spread = tape.garment.spread.hypot(tape.body.spread);
    let ease = garment - body;
    let wash = after.wash.map(|wash| Between { low: wash.low.clamp(-0.5, 0.2), high: wash.high.clamp(-0.5, 0.2) });
    let wear = wear_of(line, garment, after);
    let borders = |give: f64| Borders::new(line, cut, body, give.max(0.0));

    // Never nothing: however freely one moved, the tape is not thrown away.
    let let_through = if tape.let_through.is_finite() { tape.let_through.clamp(0.01, 1.0) } else { 1.0 };
    let gives = FIFTHS.map(|far| borders(tape.give.value + far * tape.give.spread));
    // Where the give moves no border, or nothing is washed, one case stands for all.
    let gives = if gives[0] == gives[4] { &gives[..1] } else { &gives[..] };
    let washes: [f64; 5] = wash.unwrap_or(Between::NOTHING).parts();
    let washes = if wash.is_some() { &washes[..] } else { &washes[..1] };
    let wears: [f64; 3] = wear.parts();
    let wears = if wash.is_some() && wear.low < wear.high { &wears[..] } else { &wears[..1] };

    let (mut now, mut washed, mut worn, mut fates, mut fails) = ([0.0; 4], [0.0; 4], [0.0; 4], [0.0; 4], [0.0; 2]);
    let (mut first, mut all) = (0.0, 0.0);
    for today in gives {
        let today = (*today)?;
        let seen = Seen::new(ease, spread, today, let_through);
        let whole = seen.below(f64::INFINITY);
        let areas = today.areas(&seen);
        add(&mut now, between(areas, whole));
        first += whole;
        for share in washes {
            let shrunk = garment * share;
            let fresh = if wash.is_some() { today.before(shrunk).areas(&seen) } else { areas };
            for worn_by in wears {
                let (border, last) = match wash {
                    Some(_) => {
                        let later = today.before(shrunk + worn_by);
                        (later, later.areas(&seen))
                    }
                    None => (today, areas),
                };
                all += whole;
                add(&mut washed, between(fresh, whole));
                add(&mut worn, between(last, whole));
                add(&mut fails, [last[0], whole - last[3]]);
                add(&mut fates, fates_of(areas, last, border.reached(last, reach.out, reach.taken_in, &seen), whole));
            }
        }
    }
    // Nothing adds up where a number that was handed in is none.
    if all <= 0.0 || !fates.iter().chain(&now).all(|sum| sum.is_finite()) {
        return None;
    }
    let mean = |sums: [f64; 4]| sums.map(|sum| sum / all);
    let Borders([least, low, high, ceiling]) = borders(tape.give.value)?;
    let moment = |by: f64, more_spread: f64, chances: [f64; 4]| Moment {
        size: Span::of(garment + by, tape.garment.spread.hypot(more_spread)),
        ease: Span::of(ease + by, spread.hypot(more_spread)),
        chances,
    };
    Some(LineFit {
        line,
        tape,
        wanted: Ease { low, high },
        floor: least,
        ceiling,
        fails: fails.map(|sum| sum / all),
        now: moment(0.0, 0.0, now.map(|sum| sum / first)),
        washed: wash.map(|wash| moment(garment * wash.middle(), garment * wash.spread(), mean(washed))),
        worn: wash.map(|wash| {
            moment(garment * wash.middle() + wear.middle(), (garment * wash.spread()).hypot(wear.spread()), mean(worn))
        }),
        fates: mean(fates),
    })
}

/// What a day's wear adds, in centimetres.
fn wear_of(line: &Line, garment: f64, after: After) -> Between {
    let usual = line.wear_cm[usize::from(!after.raw)];
    match after.growth.filter(|growth| line.grows && growth.is_finite()) {
        // A hand's pull is harder than a day: what it leaves behind is the most that wear will.
        Some(growth) => Between { low: usual.low, high: usual.high.max(growth.clamp(0.0, 0.5) * garment) },
        None => usual,
    }
}

/// The three moments of a place, for whoever lists them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Time {
    /// As it is.
    Now,
    /// After the first washes, dry and not worn.
    Washed,
    /// After the first washes and a day's wear.
    Worn,
}

impl LineFit {
    /// The moment of that time, where it is known.
    pub fn at(&self, time: Time) -> Option<&Moment> {
        match time {
            Time::Now => Some(&self.now),
            Time::Washed => self.washed.as_ref(),
            Time::Worn => self.worn.as_ref(),
        }
    }

    /// In words, how it sits at its likeliest.
    pub fn words(&self, time: Time) -> Option<&'static str> {
        self.at(time).map(|moment| moment.sits().words(self.line.lies))
    }
}
