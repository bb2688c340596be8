//! How much larger than the body a garment is meant to be at one place, and how small it may be there.

use super::alter::Alteration;
use super::assess::Between;
use super::body::BodyMeasure;
use crate::say;
use crate::source::Source;

/// Which way the cloth runs along a measure: it decides which shrinkage works on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Along {
    /// Lengthwise, as the warp or the wales run.
    Length,
    /// Across.
    Width,
}

/// What a measure of the garment has to do with the body.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lies {
    /// Goes round the body or spans it: too little cloth is tight, too much is loose.
    Round,
    /// Runs down the body: too little cloth is short, too much is long.
    Down,
}

/// How a garment is meant to lie on the body, as its maker or its wearer wants it.
#[derive(Debug, PartialEq)]
pub struct Cut {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// The trade's name.
    pub(crate) name: &'static str,
    /// How it lies, in a few words.
    pub(crate) says: &'static str,
}

crate::language::says!(Cut { name, says });

impl Cut {
    /// A cut of that key, name and words.
    pub const fn new(key: &'static str, name: &'static str, says: &'static str) -> Cut {
        Cut { key, name, says }
    }
}

/// The ease that a cut usually has, for cloth of that give.
#[derive(Debug, PartialEq)]
pub struct EaseRow {
    /// The cut.
    pub cut: &'static Cut,
    /// Give of the cloth across, in per cent; between two rows of a cut the ease lies on the straight line, outside it stays.
    pub give: f64,
    /// Least and most ease, in centimetres of the whole measure; below zero where the cloth is meant to be stretched.
    pub ease_cm: Ease,
    /// Where it comes from.
    pub source: &'static Source,
}

impl EaseRow {
    /// A row of a table, least and most in centimetres.
    pub const fn new(cut: &'static Cut, give: f64, low: f64, high: f64, source: &'static Source) -> EaseRow {
        EaseRow { cut, give, ease_cm: Ease { low, high }, source }
    }
}

/// Least and most that is meant, garment minus body, in centimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ease {
    /// Least.
    pub low: f64,
    /// Most.
    pub high: f64,
}

/// A measure of the body that may stand against a measure of the garment.
#[derive(Debug, PartialEq)]
pub struct Against {
    /// The measure.
    pub measure: &'static BodyMeasure,
    /// So much is added to it, in centimetres, because the body is mostly larger where the garment lies. Judgement.
    pub adds_cm: f64,
    /// How far off that may be (1 sigma, in centimetres); 0 where the garment lies just where the body is measured. Judgement.
    pub doubt_cm: f64,
}

impl Against {
    /// A measure taken just where the garment lies.
    pub const fn at(measure: &'static BodyMeasure) -> Against {
        Against { measure, adds_cm: 0.0, doubt_cm: 0.0 }
    }

    /// A measure taken elsewhere: what the body is mostly larger by where the garment lies, and how far off that may be.
    pub const fn near(measure: &'static BodyMeasure, adds_cm: f64, doubt_cm: f64) -> Against {
        Against { measure, adds_cm, doubt_cm }
    }
}

/// One place where garment and body are compared.
#[derive(Debug, PartialEq)]
pub struct Line {
    /// Key of the point of measure of the garment.
    pub point: &'static str,
    /// The measures of the body that may stand against it, the best first.
    pub against: &'static [Against],
    /// What it has to do with the body.
    pub lies: Lies,
    /// Which way the cloth runs.
    pub along: Along,
    /// What is meant, cut by cut, each in order of give.
    pub ease: &'static [EaseRow],
    /// Least ease with which one can still sit, reach or step in cloth that gives nothing, in centimetres. Where the cloth gives, half the
    /// give is there to be used on top.
    pub floor_cm: f64,
    /// Where the floor comes from.
    pub floor_source: &'static Source,
    /// Whether the give of the cloth helps here: across, where no band or canvas holds it.
    pub yields: bool,
    /// How much a day's wear adds, in centimetres: raw cloth that was never washed before, and cloth that was.
    pub wear_cm: [Between; 2],
    /// Whether growth in a pull, where it is known, adds to a day's wear: seat, thigh, waist of stretch cloth.
    pub grows: bool,
    /// How much more than meant fails, and does not only look otherwise, in centimetres: a waist that does not hold up, a sleeve over the
    /// hand. None where more cloth is a matter of taste. Judgement.
    pub fails_over_cm: Option<f64>,
    /// From one size to the next, in centimetres.
    pub step_cm: f64,
    /// Where the step comes from.
    pub step_source: &'static Source,
    /// What a tailor can do about too little and about too much here.
    pub alterations: &'static [&'static Alteration],
}

/// How garment and body sit at one place; for a length, read tight as short and loose as long.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Sits {
    /// Less cloth than one can move in.
    TooTight,
    /// Less than the cut is meant to have, but one can move in it.
    Close,
    /// As the cut is meant to be.
    AsIntended,
    /// More than the cut is meant to have.
    Loose,
}

impl Sits {
    /// All of them, tightest first.
    pub const ALL: [Sits; 4] = [Sits::TooTight, Sits::Close, Sits::AsIntended, Sits::Loose];

    /// The words on the screen.
    pub fn words(self, lies: Lies) -> &'static str {
        match (self, lies) {
            (Sits::TooTight, Lies::Round) => say!("too tight"),
            (Sits::Close, Lies::Round) => say!("of a fit" | "close"),
            (Sits::AsIntended, _) => say!("as intended"),
            (Sits::Loose, Lies::Round) => say!("of a fit" | "loose"),
            (Sits::TooTight, Lies::Down) => say!("too short"),
            (Sits::Close, Lies::Down) => say!("of a fit" | "short"),
            (Sits::Loose, Lies::Down) => say!("of a fit" | "long"),
        }
    }
}

/// The ease that a cut is meant to have at a place, in cloth of that give (per cent). None where the table has no row for the cut.
///
/// # Formula
/// Straight between the two rows whose gives lie either side; the first row below the first, the last above the last.
///
/// # Source
/// The rows name theirs; that ease falls evenly as the cloth gives more is judgement.
pub fn wanted(line: &Line, cut: &Cut, give: f64) -> Option<Ease> {
    let mut below: Option<&EaseRow> = None;
    for row in line.ease.iter().filter(|row| row.cut == cut) {
        if give <= row.give || !give.is_finite() {
            let Some(before) = below else { return Some(row.ease_cm) };
            let part = (give - before.give) / (row.give - before.give);
            let between = |low: f64, high: f64| low + (high - low) * part;
            return Some(Ease {
                low: between(before.ease_cm.low, row.ease_cm.low),
                high: between(before.ease_cm.high, row.ease_cm.high),
            });
        }
        below = Some(row);
    }
    below.map(|row| row.ease_cm)
}

/// The least ease in which one can still move, in centimetres, for a body of that measure (cm) and cloth of that give (per cent).
///
/// # Formula
/// `floor - B (g / 2) / (1 + g / 2)` where the cloth yields, `floor` where it does not: a garment that is stretched by half its give is
/// `B / (1 + g / 2)` when it lies flat.
///
/// # Where it holds
/// Half the give, because cloth that is stretched to its end neither feels nor lasts well (common practice).
///
/// # Source
/// Handbook, section 9.2: needed stretch is `(body - garment) / garment`, and at most half of the measured stretch is to be used.
pub fn floor(line: &Line, body: f64, give: f64) -> f64 {
    let used = give.clamp(0.0, 150.0) / 100.0 / 2.0;
    if line.yields { line.floor_cm - body * used / (1.0 + used) } else { line.floor_cm }
}

/// How far the cloth must stretch to go round the body, as a share of the garment; below zero where there is cloth to spare. None for a
/// garment of no size.
///
/// # Source
/// Handbook, section 9.2; 98 on 90 is 8.9 %.
pub fn needed_stretch(body: f64, garment: f64) -> Option<f64> {
    let share = (body - garment) / garment;
    (garment > 0.0 && share.is_finite()).then_some(share)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_short_and_long_and_girths_tight_and_loose() {
        assert_eq!(Sits::ALL.map(|sits| sits.words(Lies::Round)), ["too tight", "close", "as intended", "loose"]);
        assert_eq!(Sits::ALL.map(|sits| sits.words(Lies::Down)), ["too short", "short", "as intended", "long"]);
    }

    /// Handbook, section 9.2: 98 on 90.
    #[test]
    fn stretch_is_counted_from_the_garment() {
        assert!((needed_stretch(98.0, 90.0).unwrap() - 0.08889).abs() < 1e-5);
        assert!(needed_stretch(90.0, 98.0).unwrap() < 0.0);
        assert_eq!(needed_stretch(f64::NAN, 90.0), None);
        assert_eq!(needed_stretch(90.0, -1.0), None);
    }
}
