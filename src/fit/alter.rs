//! What a tailor can change, by how much, and what that takes.

use crate::say;
use crate::source::Source;

/// A place inside a garment where cloth was left for later, measured with a ruler.
#[derive(Debug, PartialEq)]
pub struct Allowance {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// The trade's name.
    pub(crate) name: &'static str,
    /// Where to look and what to measure.
    pub(crate) how: &'static str,
    /// Most that is believed, in centimetres. Judgement.
    pub most_cm: f64,
}

crate::language::says!(Allowance { name, how });

/// About what an alteration involves, cheapest first. Prices differ from town to town: ask first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Cost {
    /// A few minutes at the machine.
    Little,
    /// A usual piece of work.
    Some,
    /// Seams are opened and closed over a longer way.
    Much,
    /// The garment is taken apart in part: often more than it is worth.
    VeryMuch,
}

impl Cost {
    /// All of them, cheapest first.
    pub const ALL: [Cost; 4] = [Cost::Little, Cost::Some, Cost::Much, Cost::VeryMuch];

    /// The words on the screen.
    pub fn words(self) -> &'static str {
        match self {
            Cost::Little => say!("a small job"),
            Cost::Some => say!("a usual job"),
            Cost::Much => say!("a large job"),
            Cost::VeryMuch => say!("a very large job, seldom worth it"),
        }
    }
}

/// Whether cloth is added or taken away.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// Made larger or longer.
    Out,
    /// Made smaller or shorter.
    In,
}

/// How far an alteration can go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Room {
    /// Up to so much, in centimetres of the whole measure.
    UpTo(f64),
    /// As far as the cloth left inside lets it: `times * (found - keep)`, and no further than `most`, all in centimetres. While nobody has
    /// looked, it is as if there were none.
    Inside {
        /// Where the cloth is left.
        allowance: &'static Allowance,
        /// What each centimetre left gives to the whole measure: 2 where both sides of a seam have it.
        times: f64,
        /// What must stay in the seam.
        keep: f64,
        /// No further than this.
        most: f64,
    },
}

impl Room {
    /// How far it can go, in centimetres of the whole measure, with what was found inside; `found` says it, in centimetres.
    pub fn centimetres(&self, found: impl Fn(&'static Allowance) -> Option<f64>) -> f64 {
        match *self {
            Room::UpTo(most) => most,
            Room::Inside { allowance, times, keep, most } => {
                found(allowance).filter(|found| found.is_finite()).map_or(0.0, |found| (times * (found - keep)).clamp(0.0, most))
            }
        }
    }
}

/// One thing that a tailor can do.
#[derive(Debug, PartialEq)]
pub struct Alteration {
    /// Name on the page and in tests.
    pub key: &'static str,
    /// What is done.
    pub(crate) name: &'static str,
    /// Larger or smaller.
    pub way: Way,
    /// How far.
    pub room: Room,
    /// About what it involves.
    pub cost: Cost,
    /// What to know before: what is lost or seen.
    pub(crate) says: &'static str,
    /// Where it comes from.
    pub source: &'static Source,
}

crate::language::says!(Alteration { name, says });

#[cfg(test)]
mod tests {
    use super::*;

    static SEAM: Allowance = Allowance { key: "seam", name: "Seam", how: "", most_cm: 8.0 };
    const INSIDE: Room = Room::Inside { allowance: &SEAM, times: 2.0, keep: 1.0, most: 4.0 };

    #[test]
    fn cloth_inside_counts_once_it_was_found_and_never_below_nothing() {
        let far = |found: Option<f64>| INSIDE.centimetres(|_| found);
        assert_eq!(far(None), 0.0);
        assert_eq!(far(Some(0.4)), 0.0);
        assert_eq!(far(Some(2.5)), 3.0);
        assert_eq!(far(Some(8.0)), 4.0);
        assert_eq!(far(Some(f64::NAN)), 0.0);
        assert_eq!(Room::UpTo(3.0).centimetres(|_| None), 3.0);
    }

    #[test]
    fn costs_rise_in_their_order() {
        assert!(Cost::ALL.is_sorted() && Cost::ALL.windows(2).all(|pair| pair[0].words() != pair[1].words()));
    }
}
