//! A gap between two tickets as steps from the one to the other, for a picture and for words.

use garment_assay::language::said;
use garment_assay::quantity::{Decimal, Unit, written_with_spread};
use garment_assay::rack::TicketGap;
use garment_assay::trade::{Currency, PriceKind, Ticket};
use garment_assay::{say, to_say};

use super::words;

/// One step on the way from the first ticket to the second.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What it is.
    pub name: String,
    /// Money; below 0 it leads down.
    pub amount: f64,
    /// Standard deviation of that.
    pub spread: f64,
    /// Where it starts, in money.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// How many differences it holds.
    pub holds: usize,
    /// Whether it is what nothing explains.
    pub rest: bool,
}

impl Step {
    /// Whether it stands out of its own spread. What is not explained always does: it is a remainder and no estimate.
    pub fn is_clear(&self) -> bool {
        self.rest || self.amount.abs() >= self.spread
    }
}

/// What is left over is called so.
pub const REST: &str = to_say!("Not explained: name, design, season");

/// The steps, the largest first and what is not explained last; differences beyond the first `few` go together. They lead from the first
/// ticket to the second exactly.
pub fn steps(found: &TicketGap, few: usize) -> Vec<Step> {
    let shares = &found.gap.shares;
    // A heap of one says less than its name.
    let shown = if shares.len() <= few + 1 { shares.len() } else { few };
    let far = |shares: &[garment_assay::rack::GapShare]| shares.iter().fold(0.0, |far, share| f64::hypot(far, share.spread));
    let mut parts: Vec<(String, f64, f64, usize, bool)> =
        shares[..shown].iter().map(|share| (share.name.clone(), share.amount, share.spread, 1, false)).collect();
    let small = &shares[shown..];
    if !small.is_empty() {
        let amount = small.iter().map(|share| share.amount).sum();
        parts.push((say!("{count} smaller differences", count = small.len()), amount, far(small), small.len(), false));
    }
    // What is left over is as uncertain as all that it is left over from.
    parts.push((said(REST).to_owned(), found.gap.not_explained, far(shares), 0, true));
    let mut at = found.first;
    parts
        .into_iter()
        .map(|(name, amount, spread, holds, rest)| {
            let from = at;
            at += amount;
            Step { name, amount, spread, from, to: if rest { found.second } else { at }, holds, rest }
        })
        .collect()
}

/// An amount of money to the place that `spread` deserves, with its sign: "+12", "−3".
pub fn signed(amount: f64, spread: f64) -> String {
    let text = plain(amount, spread);
    if amount > 0.0 && text.bytes().any(|digit| (b'1'..=b'9').contains(&digit)) { format!("+{text}") } else { text }
}

/// The same without a sign above 0.
pub fn plain(amount: f64, spread: f64) -> String {
    with_spread(amount, spread).split(" ±").next().unwrap_or_default().to_owned()
}

/// "12 ± 5".
pub fn with_spread(amount: f64, spread: f64) -> String {
    // A hundredth of a currency's unit is the last that anybody pays.
    written_with_spread(amount, spread.max(0.02), Unit::Count, Decimal::spoken())
}

/// A price in a currency, to its minor unit.
pub fn money(currency: Currency, amount: f64) -> String {
    words::amount(&Ticket { minor: currency.minor(amount), currency, kind: PriceKind::Retail, face_down: false })
}

/// A price that was brought from another currency, to two digits: an exchange is known no better.
pub fn about(currency: Currency, amount: f64) -> String {
    let step = 10_f64.powi((amount.max(1e-9).log10().floor() - 1.0) as i32);
    money(currency, (amount / step).round() * step)
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::rack::{GapShare, gap};

    fn found(amounts: &[f64]) -> TicketGap {
        let share = |(place, amount): (usize, &f64)| GapShare { name: place.to_string(), amount: *amount, spread: 4.0 };
        let gap = gap(40.0, 90.0, amounts.iter().enumerate().map(share)).expect("numbers");
        TicketGap { currency: Currency::Eur, first: 40.0, second: 90.0, gap }
    }

    #[test]
    fn steps_lead_from_one_ticket_to_the_other_without_a_hole() {
        for amounts in [&[][..], &[30.0], &[30.0, -8.0, 5.0, 4.0, 3.0, 2.0, 1.0]] {
            let steps = steps(&found(amounts), 4);
            assert_eq!(steps.first().map(|step| step.from), Some(40.0));
            assert_eq!(steps.last().map(|step| step.to), Some(90.0));
            for pair in steps.windows(2) {
                assert!((pair[0].to - pair[1].from).abs() < 1e-9);
            }
            assert!((steps.iter().map(|step| step.amount).sum::<f64>() - 50.0).abs() < 1e-9);
        }
    }

    #[test]
    fn small_differences_go_together_unless_it_is_one() {
        let names = |amounts: &[f64]| steps(&found(amounts), 2).into_iter().map(|step| step.name).collect::<Vec<_>>();
        assert_eq!(names(&[9.0, 8.0, 7.0]), ["0", "1", "2", REST]);
        assert_eq!(names(&[9.0, 8.0, 7.0, 6.0]), ["0", "1", "2 smaller differences", REST]);
    }

    #[test]
    fn a_step_below_its_spread_is_not_clear_but_what_is_left_over_is() {
        let steps = steps(&found(&[30.0, 2.0]), 4);
        assert_eq!(steps.iter().map(Step::is_clear).collect::<Vec<_>>(), [true, false, true]);
    }

    #[test]
    fn money_is_said_with_its_sign_to_the_place_its_spread_deserves() {
        assert_eq!(signed(12.34, 4.0), "+12");
        assert_eq!(signed(-12.34, 0.4), "−12.3");
        assert_eq!(signed(0.2, 4.0), "0");
        assert_eq!(money(Currency::Jpy, 24_000.4), "JPY\u{a0}24,000");
        assert_eq!(money(Currency::Eur, 89.9), "EUR\u{a0}89.90");
    }
}
