//! Whether the size beside it would do better. Said only where the ranges say so.

use super::assess::{After, LineFit, Reach, Read, Tape, assess};
use super::ease::{Cut, Line};

/// What to do about the size.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SizeAdvice {
    /// Nothing says that another size would do better.
    Stay,
    /// So many sizes larger.
    Up(u8),
    /// So many sizes smaller.
    Down(u8),
    /// This one is clearly wrong, and two sizes either way are not clearly right.
    NoneNear,
}

/// Sizes looked at either way.
const MOST: u8 = 2;
/// A size is wrong where it is wrong more often than not, and right where it is in four cases of five, as every range here has it. Judgement.
const WRONG: f64 = 0.5;
const RIGHT: f64 = 0.8;
/// Places in [`LineFit::fails`].
const TIGHT: usize = 0;
const LOOSE: usize = 1;
/// How far a size may lie from its step, as a part of it (1 sigma). Judgement.
const UNEVEN_STEP: f64 = 0.2;

/// One place of a garment, all that is needed to judge it in another size.
#[derive(Clone, Copy, Debug)]
pub struct Place {
    /// The place.
    pub line: &'static Line,
    /// What the tape said.
    pub tape: Tape,
    /// What time does there.
    pub after: After,
    /// How far a tailor can go.
    pub reach: Reach,
}

impl Place {
    /// The place in a garment so many sizes larger.
    fn sized(&self, sizes: i8) -> Place {
        let by = f64::from(sizes) * self.line.step_cm;
        let garment = Read { value: self.tape.garment.value + by, spread: self.tape.garment.spread.hypot(UNEVEN_STEP * by) };
        // Another size was not moved in.
        let let_through = if sizes == 0 { self.tape.let_through } else { 1.0 };
        Place { tape: Tape { garment, let_through, ..self.tape }, ..*self }
    }

    fn assess(&self, cut: &Cut) -> Option<LineFit> {
        assess(self.line, cut, self.tape, self.after, self.reach)
    }
}

/// What the measured places say about the size. Places whose step is 0 (a leg that comes in lengths of its own) are left out.
///
/// # Formula
/// Another size is named only if this one is too tight in the end at some place, or so loose at some that it fails, more often than not, and
/// the other is neither at any in four cases of five; places are taken to err by themselves. The nearest such size is named. Each size adds
/// its step to each measure, give or take a fifth of it.
///
/// # Source
/// Steps: handbook, section 9.3. The borders are judgement.
pub fn advise(places: &[Place], cut: &Cut) -> SizeAdvice {
    let counted = || places.iter().filter(|place| place.line.step_cm > 0.0);
    let at = |sizes: i8| -> Vec<LineFit> { counted().filter_map(|place| place.sized(sizes).assess(cut)).collect() };
    let this = at(0);
    // What is too tight in the end is wrong; what is only too tight today may come right in wear.
    let fails = |fits: &[LineFit], way: usize| 1.0 - fits.iter().map(|fit| 1.0 - fit.fails[way]).product::<f64>();
    let (tight, loose) = (fails(&this, TIGHT) >= WRONG, fails(&this, LOOSE) >= WRONG);
    if !tight && !loose {
        return SizeAdvice::Stay;
    }
    if tight && loose {
        return SizeAdvice::NoneNear;
    }
    let good = |sizes: i8| {
        let right = at(sizes).iter().map(|fit| 1.0 - fit.fails[TIGHT] - fit.fails[LOOSE]).product::<f64>();
        right >= RIGHT
    };
    let sizes = (1..=MOST).find(|sizes| good(if tight { *sizes as i8 } else { -(*sizes as i8) }));
    match sizes {
        Some(sizes) if tight => SizeAdvice::Up(sizes),
        Some(sizes) => SizeAdvice::Down(sizes),
        None => SizeAdvice::NoneNear,
    }
}
