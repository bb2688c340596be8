//! What the app says of money that was worked out: never more digits than it deserves, never an accusation.

use garment_assay::cost::Range;
use garment_assay::rack::{Behind, Left, Reveal, Stand};
use garment_assay::trade::{Currency, PriceKind, Ticket};

/// An amount to two digits: what is worked out here is never known better.
pub fn about(amount: f64) -> String {
    if !(amount.is_finite() && amount > 0.0) {
        return "0".to_owned();
    }
    let step = 10_f64.powi(amount.log10().floor() as i32 - 1);
    let rounded = (amount / step).round() * step;
    let decimals = if step >= 1.0 { 0 } else { (-step.log10()).round().clamp(0.0, 4.0) as usize };
    grouped(&format!("{rounded:.decimals$}"))
}

/// Thousands set apart by a narrow space.
fn grouped(digits: &str) -> String {
    let (whole, rest) = digits.split_at(digits.find('.').unwrap_or(digits.len()));
    let mut out = String::new();
    for (place, digit) in whole.chars().enumerate() {
        if place > 0 && (whole.len() - place).is_multiple_of(3) {
            out.push('\u{202f}');
        }
        out.push(digit);
    }
    out + rest
}

/// An amount to two digits with its currency before it.
pub fn sum(currency: Currency, amount: f64) -> String {
    format!("{} {}", currency.code(), about(amount))
}

/// Two ends; one where they are the same to two digits.
pub fn between(low: f64, high: f64) -> String {
    let (low, high) = (about(low), about(high));
    if low == high { low } else { format!("{low} to {high}") }
}

/// A range with its currency before it.
pub fn range(currency: Currency, range: &Range) -> String {
    format!("{} {}", currency.code(), between(range.low, range.high))
}

/// An amount of minor units in whole ones.
pub fn whole(minor: u64, currency: Currency) -> f64 {
    minor as f64 / 10_f64.powi(currency.decimals() as i32)
}

/// A share in whole per cents, below nothing too.
pub fn share(share: f64) -> String {
    format!("{:.0} %", share * 100.0).replace('-', "−")
}

/// What the picture says, in a sentence or two.
pub fn verdict(behind: &Behind, kind: PriceKind, ticket: Option<&Ticket>) -> String {
    let currency = behind.currency();
    let range = behind.range(kind);
    let Some(ticket) = ticket.filter(|ticket| ticket.minor > 0) else {
        let likely = self::range(currency, &range);
        return match kind {
            PriceKind::Retail => format!(
                "Four in five garments like this ask {likely}, by what you checked. There is no ticket to hold against it yet."
            ),
            PriceKind::Wholesale => {
                format!("Four in five offers for a garment like this ask {likely} at the factory’s port, by what you checked.")
            }
        };
    };
    if ticket.currency != currency {
        return format!(
            "The ticket is in {}, for which the app has no rates. It cannot be held against a range in {}.",
            ticket.currency.code(),
            currency.code()
        );
    }
    let price = whole(ticket.minor, currency);
    match (kind, &behind.left) {
        (PriceKind::Retail, Some(left)) => format!("{} {}", standing(left.stand), unexplained(left, price, currency)),
        _ => {
            let place = if price < range.low {
                "below"
            } else if price > range.high {
                "above"
            } else {
                "inside"
            };
            format!("The offer lies {place} what making a garment like this costs at the factory’s port, by what you checked.")
        }
    }
}

fn standing(stand: Stand) -> &'static str {
    match stand {
        Stand::FarBelow => {
            "The ticket lies far below what garments like this cost, by what you checked. It may be a sale price, or a slip."
        }
        Stand::Below => "The ticket lies below what garments like this cost, by what you checked.",
        Stand::Within => "The ticket lies inside what garments like this cost, by what you checked.",
        Stand::Above => "The ticket lies above what garments like this cost, by what you checked.",
        Stand::FarAbove => "The ticket lies far above what garments like this cost, by what you checked. It may be a slip.",
    }
}

fn unexplained(left: &Left, price: f64, currency: Currency) -> String {
    // Ticket over build-up, so the part of the ticket beyond the build-up is what is left of one.
    let beyond = |ratio: f64| price * (1.0 - 1.0 / ratio);
    let why = "name, design, service, or a cost you did not see";
    if left.low > 1.0 {
        let ends = between(beyond(left.low), beyond(left.high));
        format!("{} {ends} of it are not explained by the make: {why}.", currency.code())
    } else if left.middle > 1.0 && beyond(left.middle) >= 0.01 * price {
        let middle = about(beyond(left.middle));
        format!(
            "About {} {middle} of it are not explained by the middle of what the make comes to: {why}. The make may also explain all of it.",
            currency.code()
        )
    } else if left.high < 1.0 {
        "The make alone would come to more: a plain shop, a sale, or a saving you did not see.".to_owned()
    } else {
        "The make explains all of it.".to_owned()
    }
}

/// How one range did against the ticket: how far the ticket lay outside, and how wide the range was.
fn missed(low: f64, high: f64, ticket: f64, points: f64, currency: Currency) -> String {
    let off = (low - ticket).max(0.0) + (ticket - high).max(0.0);
    let hit = if off > 0.0 { format!("missed by {}", sum(currency, off)) } else { "the ticket lies inside".to_owned() };
    let points = points.max(0.0).round();
    format!("{hit}, range {} wide. {points} of 100 points.", sum(currency, high - low))
}

/// How a guess and the tool's range did, each in a sentence.
pub fn revealed(reveal: &Reveal, currency: Currency) -> (String, Option<String>) {
    let ticket = reveal.log_ticket.exp();
    let say =
        |range: &garment_assay::rack::Range, points: f64| missed(range.low().exp(), range.high().exp(), ticket, points, currency);
    let yours = say(&reveal.yours, reveal.score.points);
    (format!("You: {yours}"), reveal.tool.map(|(range, score)| format!("Tool: {}", say(&range, score.points))))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_worked_out_has_two_digits() {
        let said: Vec<String> = [0.0, 0.043, 0.996, 3.44, 34.4, 99.6, 344.0, 123_456.0, f64::NAN].map(about).into();
        assert_eq!(said, ["0", "0.043", "1.00", "3.4", "34", "100", "340", "120\u{202f}000", "0"]);
        assert_eq!((between(34.1, 34.3), between(3.0, 12.0)), ("34".to_owned(), "3.0 to 12".to_owned()));
    }

    #[test]
    fn a_share_below_nothing_has_a_minus() {
        assert_eq!((share(0.634), share(-0.2)), ("63 %".to_owned(), "−20 %".to_owned()));
    }

    #[test]
    fn a_miss_is_told_in_money() {
        // 40 to 80 against 92: 12 outside, 40 wide.
        assert_eq!(missed(40.0, 80.0, 92.0, 61.7, Currency::Usd), "missed by USD 12, range USD 40 wide. 62 of 100 points.");
        assert_eq!(missed(40.0, 80.0, 60.0, -3.0, Currency::Usd), "the ticket lies inside, range USD 40 wide. 0 of 100 points.");
    }

    #[test]
    fn what_is_left_is_said_as_a_range_only_when_the_dear_end_of_the_make_leaves_some() {
        let left = |low, middle, high| Left { low, middle, high, below: 0.5, stand: Stand::Within };
        // A ticket of 100 over a make of 80 (80 to 50 at the ends): 20 to 50 are left.
        assert!(unexplained(&left(1.25, 1.5, 2.0), 100.0, Currency::Usd).starts_with("USD 20 to 50 of it are not explained"));
        assert!(unexplained(&left(0.8, 1.25, 2.0), 100.0, Currency::Usd).starts_with("About USD 20 of it"));
        assert!(unexplained(&left(0.4, 0.5, 0.8), 100.0, Currency::Usd).starts_with("The make alone would come to more"));
        assert_eq!(unexplained(&left(0.4, 0.9, 1.8), 100.0, Currency::Usd), "The make explains all of it.");
    }
}
