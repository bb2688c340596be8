//! Between which borders a place sits how, and how much of what tape and moves leave open lies between them.

use super::ease::{Cut, Line, floor, wanted};
use crate::quantity::normal::area_below;

/// The borders of [`Sits`](super::ease::Sits), in centimetres of ease: least to move in, least meant, most meant, and last where too much
/// fails (infinite where it is a matter of taste). Kept in order: a floor above what is meant takes its place.
#[derive(Clone, Copy, PartialEq)]
pub(super) struct Borders(pub(super) [f64; 4]);

impl Borders {
    pub(super) fn new(line: &Line, cut: &Cut, body: f64, give: f64) -> Option<Borders> {
        let ease = wanted(line, cut, give)?;
        let least = floor(line, body, give);
        // Tables count in centimetres for bodies of a middling size: on a small one the cloth gives out sooner, whatever the cut is meant to be.
        let low = ease.low.max(least);
        let high = ease.high.max(low);
        let fails = line.fails_over_cm.map_or(f64::INFINITY, |over| high + over.max(0.0));
        Some(Borders([least, low, high, fails]))
    }

    /// As they lie for the ease of today, when the garment will have so much more cloth.
    pub(super) fn before(self, more: f64) -> Borders {
        Borders(self.0.map(|border| border - more))
    }

    /// Area below each, of the ease as tape and moves have it.
    pub(super) fn areas(self, ease: &Seen) -> [f64; 4] {
        self.0.map(|border| ease.below(border))
    }

    /// Area that a tailor brings within the borders who can let out and take in so much; what lies within them is in it.
    pub(super) fn reached(self, areas: [f64; 4], out: f64, taken_in: f64, ease: &Seen) -> f64 {
        let low = if out > 0.0 { ease.below(self.0[0] - out) } else { areas[0] };
        let high = if taken_in > 0.0 { ease.below(self.0[3] + taken_in) } else { areas[3] };
        high - low
    }
}

/// The ease of today as tape and moves have it.
pub(super) struct Seen {
    /// The middle, by the tape.
    ease: f64,
    /// Standard uncertainty, by the tape.
    spread: f64,
    /// Area in which it is too tight, by the tape.
    tight: f64,
    /// What part of that the moves leave; see [`Tape::let_through`](super::assess::Tape::let_through).
    let_through: f64,
}

impl Seen {
    /// From the tape's ease and its spread, and what the moves leave of the cases that are too tight within those borders.
    pub(super) fn new(ease: f64, spread: f64, today: Borders, let_through: f64) -> Seen {
        Seen { ease, spread, tight: below(today.0[0] - ease, spread), let_through }
    }

    /// Area below a border.
    pub(super) fn below(&self, ease: f64) -> f64 {
        let area = below(ease - self.ease, self.spread);
        area - (1.0 - self.let_through) * area.min(self.tight)
    }
}

/// What lies between the borders of [`Sits`](super::ease::Sits), given the areas below them and below all.
pub(super) fn between([least, low, high, _]: [f64; 4], all: f64) -> [f64; 4] {
    [least, low - least, high - low, all - high]
}

pub(super) fn add<const N: usize>(sums: &mut [f64; N], more: [f64; N]) {
    for (sum, more) in sums.iter_mut().zip(more) {
        *sum += more;
    }
}

/// Area of a normal distribution of that spread about 0, below a point; a step where there is no spread.
fn below(point: f64, spread: f64) -> f64 {
    // Beyond eight standard uncertainties nothing is left that a sum of chances could hold.
    let far = if spread > 0.0 { point / spread } else { f64::INFINITY.copysign(point) };
    if far.abs() > 8.0 { f64::from(u8::from(point > 0.0)) } else { area_below(far) }
}

/// How much comes to each of [`Fate::ALL`](super::verdict::Fate::ALL), given the areas below the borders of today and of the end, and what
/// a tailor reaches. Areas rise as borders do, so that what lies within both lies between the larger of the lower and the smaller of the
/// upper ones.
pub(super) fn fates_of(today: [f64; 4], last: [f64; 4], reached: f64, whole: f64) -> [f64; 4] {
    let fine = last[3] - last[0];
    let both = (today[3].min(last[3]) - today[0].max(last[0])).max(0.0);
    [both, fine - both, (reached - fine).max(0.0), (whole - reached).max(0.0)]
}
