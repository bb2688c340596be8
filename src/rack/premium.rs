//! What a ticket asks beyond what the make explains: name, design, season, rarity, or a cost that nobody saw. Shown as what is left, never as an
//! accusation.

use super::likely::Likely;
use super::traits::Explained;
use crate::say;

/// Standard normal quantile of 0.9.
const TENTH: f64 = 1.281_551_565_544_600_4;

/// What is left of a ticket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Left {
    /// Ticket over build-up, where the build-up is as high as it may well be (one time in ten).
    pub low: f64,
    /// Ticket over the median build-up; 1 is no more and no less than the make explains.
    pub middle: f64,
    /// Ticket over build-up, where the build-up is as low as it may well be.
    pub high: f64,
    /// Probability of a lower ticket for this garment, names and references considered.
    pub below: f64,
    /// Where the ticket stands in the likely range.
    pub stand: Stand,
}

/// Where a ticket stands in the likely range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stand {
    /// Lower than 99 of 100.
    FarBelow,
    /// Below the 80 % range.
    Below,
    /// Inside it.
    Within,
    /// Above it.
    Above,
    /// Higher than 99 of 100.
    FarAbove,
}

impl Stand {
    /// What that may mean, for people.
    pub fn words(self) -> &'static str {
        match self {
            Stand::FarBelow => say!("Far cheaper than the make explains. Is it a sale price, or a slip?"),
            Stand::Below => say!("Cheaper than the make explains: a plain shop, a sale, or a saving you did not see."),
            Stand::Within => say!("About what garments like it ask."),
            Stand::Above => say!("Dearer than the make explains: name, shop, season, or a cost you did not see."),
            Stand::FarAbove => say!("Far dearer than the make explains: a name, a rarity, a cost you did not see, or a slip."),
        }
    }
}

/// What is left of a ticket, given as the natural logarithm of US dollars. None when that is no number.
pub fn left(log_ticket: f64, explained: &Explained, likely: &Likely) -> Option<Left> {
    if !log_ticket.is_finite() {
        return None;
    }
    let ratio = |spreads: f64| (log_ticket - explained.mu() + spreads * explained.sigma()).exp();
    let below = likely.prediction().below(log_ticket);
    let stand = match below {
        b if b < 0.01 => Stand::FarBelow,
        b if b < 0.1 => Stand::Below,
        b if b <= 0.9 => Stand::Within,
        b if b <= 0.99 => Stand::Above,
        _ => Stand::FarAbove,
    };
    Some(Left { low: ratio(-TENTH), middle: ratio(0.0), high: ratio(TENTH), below, stand })
}
