//! The verdict on fit, from every place that was measured and everything that the mirror showed. It is apart from quality.

use crate::say;

/// What becomes of a garment on a person.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Fate {
    /// Today and after washing and a day's wear.
    Fits,
    /// Not today, but once it is washed and worn.
    FitsAfterWashing,
    /// Not as it is, but a tailor can mend it.
    CanBeAltered,
    /// Neither.
    WillNotFit,
}

impl Fate {
    /// All of them, best first.
    pub const ALL: [Fate; 4] = [Fate::Fits, Fate::FitsAfterWashing, Fate::CanBeAltered, Fate::WillNotFit];

    /// The words on the screen.
    pub fn words(self) -> &'static str {
        match self {
            Fate::Fits => say!("Fits"),
            Fate::FitsAfterWashing => say!("Will fit after washing"),
            Fate::CanBeAltered => say!("Can be altered"),
            Fate::WillNotFit => say!("Will not fit"),
        }
    }
}

/// How sure a verdict is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Sure {
    /// Less than seven in ten.
    CloseCall,
    /// Seven in ten and more.
    Likely,
    /// Nine in ten and more.
    Clear,
}

impl Sure {
    /// Of a chance from 0 to 1.
    pub fn of(chance: f64) -> Sure {
        if chance >= 0.9 {
            Sure::Clear
        } else if chance >= 0.7 {
            Sure::Likely
        } else {
            Sure::CloseCall
        }
    }

    /// The words on the screen.
    pub fn words(self) -> &'static str {
        match self {
            Sure::CloseCall => say!("a close call"),
            Sure::Likely => say!("likely"),
            Sure::Clear => say!("clear"),
        }
    }
}

/// Whether a fault that the mirror shows can be mended.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Cure {
    /// Another size or another cut, no needle.
    None,
    /// A tailor can, but it is seldom worth it.
    Costly,
    /// A tailor may, on some pieces: where cloth was left inside, or pockets and rivets leave room.
    Some,
    /// A tailor does it every day.
    Easy,
}

impl Cure {
    /// The words on the screen.
    pub fn words(self) -> &'static str {
        match self {
            Cure::None => say!("No alteration cures it: another size or another cut."),
            Cure::Costly => say!("A tailor can, at a price that is seldom worth it."),
            Cure::Some => say!("A tailor may be able to: it hangs on the cloth, and on what was left inside."),
            Cure::Easy => say!("A tailor can: it is everyday work."),
        }
    }
}

/// What one look, or one place, says about the fate of the whole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Finding {
    /// How likely each of [`Fate::ALL`] is by this alone; they sum to 1.
    pub chances: [f64; 4],
}

impl Finding {
    /// A fault that was seen, which is one with that chance; what cannot be mended, or is seldom worth it, will not fit.
    pub fn fault(chance: f64, cure: Cure) -> Finding {
        let chance = if chance.is_finite() { chance.clamp(0.0, 1.0) } else { 0.0 };
        let (altered, not) = match cure {
            Cure::Easy => (chance, 0.0),
            // On half of the pieces it cannot be done. Judgement.
            Cure::Some => (0.5 * chance, 0.5 * chance),
            Cure::Costly | Cure::None => (0.0, chance),
        };
        Finding { chances: [1.0 - chance, 0.0, altered, not] }
    }
}

/// The verdict.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Verdict {
    /// The likeliest fate; of two alike the worse.
    pub fate: Fate,
    /// How likely each of [`Fate::ALL`] is.
    pub chances: [f64; 4],
    /// How sure it is.
    pub sure: Sure,
    /// Which of the findings decides: the one that speaks loudest for this fate; for one that fits, the one that comes nearest to not
    /// fitting.
    pub decides: usize,
}

/// The verdict from all findings; none without any.
///
/// # Formula
/// A garment fits where every place does. With `p_k` the chance that a place comes to fate `k` or better, the whole comes to fate `k` or
/// better with the product of the `p_k`.
///
/// # Where it holds
/// Places are taken to err by themselves. They do not quite: one person holds one tape. The verdict is then a little less sure than it
/// could be where all places agree. Judgement.
pub fn verdict(findings: &[Finding]) -> Option<Verdict> {
    if findings.is_empty() {
        return None;
    }
    let mut or_better = [1.0; 4];
    for finding in findings {
        let mut sum = 0.0;
        for (place, chance) in finding.chances.into_iter().enumerate() {
            sum += chance;
            or_better[place] *= sum.clamp(0.0, 1.0);
        }
    }
    // Chances of a finding sum to 1, but not to its last digit.
    or_better[3] = 1.0;
    let chances: [f64; 4] =
        std::array::from_fn(|place| if place == 0 { or_better[0] } else { (or_better[place] - or_better[place - 1]).max(0.0) });
    let best = (0..4).rev().fold(3, |best, place| if chances[place] > chances[best] { place } else { best });
    let speaks = |finding: &Finding| if best == 0 { 1.0 - finding.chances[0] } else { finding.chances[best] };
    let decides = (0..findings.len())
        .fold(0, |loudest, place| if speaks(&findings[place]) > speaks(&findings[loudest]) { place } else { loudest });
    Some(Verdict { fate: Fate::ALL[best], chances, sure: Sure::of(chances[best]), decides })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fault_goes_where_its_cure_sends_it() {
        let of = |cure| Finding::fault(0.8, cure).chances.map(|chance| (100.0 * chance).round());
        assert_eq!(of(Cure::Easy), [20.0, 0.0, 80.0, 0.0]);
        assert_eq!(of(Cure::Some), [20.0, 0.0, 40.0, 40.0]);
        assert_eq!(of(Cure::Costly), of(Cure::None));
        assert_eq!(of(Cure::None), [20.0, 0.0, 0.0, 80.0]);
        assert_eq!(Finding::fault(f64::NAN, Cure::None).chances, [1.0, 0.0, 0.0, 0.0]);
        assert_eq!(Finding::fault(7.0, Cure::None).chances, [0.0, 0.0, 0.0, 1.0]);
    }

    #[test]
    fn what_fits_turns_on_what_comes_nearest_to_not_fitting() {
        let findings = [[1.0, 0.0, 0.0, 0.0], [0.8, 0.0, 0.1, 0.1], [0.9, 0.0, 0.0, 0.1]].map(|chances| Finding { chances });
        let found = verdict(&findings).unwrap();
        assert_eq!((found.fate, found.decides, found.sure), (Fate::Fits, 1, Sure::Likely));
    }
}
