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
/// A chance at or above this is what "the ranges say so" means: the range of four cases in five lies on one side. Judgement.
const SURE: f64 = 0.9;
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
        Place { tape: Tape { garment, ..self.tape }, ..*self }
    }

    fn assess(&self, cut: &Cut) -> Option<LineFit> {
        assess(self.line, cut, self.tape, self.after, self.reach)
    }
}

/// What the measured places say about the size. Places whose step is 0 (a leg that comes in lengths of its own) are left out.
///
/// # Formula
/// Another size is named only if this one is too tight (or so loose that it fails) at some place with a chance of 0.9 or more, and the other
/// is too tight nowhere, and fails by looseness nowhere, with a chance above 0.1. The nearest such size is named. Each size adds its step to
/// each measure, give or take a fifth of it.
///
/// # Source
/// Steps: handbook, section 9.3. The two borders are judgement: they are the ends of a range that holds four cases in five.
pub fn advise(places: &[Place], cut: &Cut) -> SizeAdvice {
    let counted = || places.iter().filter(|place| place.line.step_cm > 0.0);
    let at = |sizes: i8| -> Vec<LineFit> { counted().filter_map(|place| place.sized(sizes).assess(cut)).collect() };
    let this = at(0);
    // What is too tight in the end is wrong; what is only too tight today may come right in wear.
    let fails = |fits: &[LineFit], way: usize, chance: f64| fits.iter().any(|fit| fit.fails[way] >= chance);
    let tight = fails(&this, TIGHT, SURE);
    let loose = fails(&this, LOOSE, SURE);
    if !tight && !loose {
        return SizeAdvice::Stay;
    }
    if tight && loose {
        return SizeAdvice::NoneNear;
    }
    let good = |sizes: i8| {
        let fits = at(sizes);
        !fails(&fits, TIGHT, 1.0 - SURE) && !fails(&fits, LOOSE, 1.0 - SURE)
    };
    let sizes = (1..=MOST).find(|sizes| good(if tight { *sizes as i8 } else { -(*sizes as i8) }));
    match sizes {
        Some(sizes) if tight => SizeAdvice::Up(sizes),
        Some(sizes) => SizeAdvice::Down(sizes),
        None => SizeAdvice::NoneNear,
    }
}
