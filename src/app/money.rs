//! What the app says of money that was worked out: never more digits than it deserves, never an accusation.

use garment_assay::cost::Range;
use garment_assay::language::{grouped, money};
use garment_assay::quantity::{Decimal, written};
use garment_assay::rack::{Behind, Left, Range as Ends, Reveal, Stand};
use garment_assay::say;
use garment_assay::trade::{Currency, PriceKind, Ticket};

/// An amount to two digits, and no further than hundredths: what is worked out here is never known better.
pub fn about(amount: f64) -> String {
    if !(amount.is_finite() && amount > 0.0) {
        return "0".to_owned();
    }
    let step = 10_f64.powi(amount.log10().floor() as i32 - 1);
    let rounded = (amount / step).round() * step;
    let decimals = if step >= 1.0 { 0 } else { (-step.log10()).round().clamp(0.0, 2.0) as usize };
    grouped(&format!("{rounded:.decimals$}"))
}

/// An amount that is known: to the last cent, and without cents where there are none.
pub fn known(amount: f64) -> String {
    let digits = format!("{amount:.2}");
    grouped(digits.strip_suffix(".00").unwrap_or(&digits))
}

/// Two ends that are known.
pub fn known_between(low: f64, high: f64) -> String {
    say!("{low} to {high}", low = known(low), high = known(high))
}

/// An amount that follows from a price known to the last cent: with its sign, whole from 100 on.
pub fn exact(currency: Currency, amount: f64) -> String {
    let decimals = if amount.abs() >= 100.0 || currency.decimals() == 0 { 0 } else { 2 };
    let sign = if amount < 0.0 { "−" } else { "" };
    money(currency.code(), format!("{sign}{}", grouped(&format!("{:.decimals$}", amount.abs()))))
}

/// An amount to two digits with its currency before it.
pub fn sum(currency: Currency, amount: f64) -> String {
    money(currency.code(), about(amount))
}

/// Two ends; one where they are the same to two digits.
pub fn between(low: f64, high: f64) -> String {
    let (low, high) = (about(low), about(high));
    if low == high { low } else { say!("{low} to {high}", low, high) }
}

/// A range with its currency before it.
pub fn range(currency: Currency, range: &Range) -> String {
    money(currency.code(), between(range.low, range.high))
}

/// A share in whole per cents, below nothing too.
pub fn share(share: f64) -> String {
    format!("{} %", written(share * 100.0, 0, Decimal::spoken()))
}

/// What the picture says, in a sentence or two.
pub fn verdict(behind: &Behind, kind: PriceKind, ticket: Option<&Ticket>) -> String {
    let currency = behind.currency();
    let range = behind.range(kind);
    let Some(ticket) = ticket.filter(|ticket| ticket.minor > 0) else {
        let likely = self::range(currency, &range);
        return match kind {
            PriceKind::Retail => say!(
                "Four in five garments like this ask {likely}, by what you checked. There is no ticket to hold against it yet.",
                likely
            ),
            PriceKind::Wholesale => {
                say!(
                    "Four in five offers for a garment like this ask {likely} at the factory’s port, by what you checked.",
                    likely
                )
            }
        };
    };
    if ticket.currency != currency {
        return say!(
            "The ticket is in {ticket}, for which the app has no rates. It cannot be held against a range in {range}.",
            ticket = ticket.currency.code(),
            range = currency.code()
        );
    }
    let price = currency.whole(ticket.minor);
    match (kind, &behind.left) {
        (PriceKind::Retail, Some(left)) => format!("{} {}", standing(left.stand), unexplained(left, price, currency)),
        _ => {
            let said = if price < range.low {
                say!("The offer lies below what making a garment like this costs at the factory’s port, by what you checked.")
            } else if price > range.high {
                say!("The offer lies above what making a garment like this costs at the factory’s port, by what you checked.")
            } else {
                say!("The offer lies inside what making a garment like this costs at the factory’s port, by what you checked.")
            };
            said.to_owned()
        }
    }
}

fn standing(stand: Stand) -> &'static str {
    match stand {
        Stand::FarBelow => {
            say!(
                "The ticket lies far below what garments like this cost, by what you checked. It may be a sale price, or a slip."
            )
        }
        Stand::Below => say!("The ticket lies below what garments like this cost, by what you checked."),
        Stand::Within => say!("The ticket lies inside what garments like this cost, by what you checked."),
        Stand::Above => say!("The ticket lies above what garments like this cost, by what you checked."),
        Stand::FarAbove => say!("The ticket lies far above what garments like this cost, by what you checked. It may be a slip."),
    }
}

fn unexplained(left: &Left, price: f64, currency: Currency) -> String {
    // Ticket over build-up, so the part of the ticket beyond the build-up is what is left of one.
    let beyond = |ratio: f64| (price * (1.0 - 1.0 / ratio)).max(0.0);
    if left.high <= 1.0 {
        return say!("The make alone would come to more: a plain shop, a sale, or a saving you did not see.").to_owned();
    }
    let (ends, middle) = (between(beyond(left.low), beyond(left.high)), about(beyond(left.middle)));
    say!(
        "{amount} of it, in the middle {middle}, are not explained by the make: name, design, service, or a cost you did not see.",
        amount = money(currency.code(), ends),
        middle
    )
}

/// How one range did against the ticket: how far the ticket lay outside, and how wide the range was.
fn missed([low, high, ticket, points]: [f64; 4], written: fn(f64) -> String, currency: Currency) -> String {
    let amount = |amount: f64| money(currency.code(), written(amount));
    let off = (low - ticket).max(0.0) + (ticket - high).max(0.0);
    // A ticket on an end comes back from its logarithm a rounding outside.
    let (wide, points) = (amount(high - low), points.max(0.0).round());
    if off > 1e-6 * ticket {
        say!("missed by {amount}, range {wide} wide. {points} of 100 points.", amount = amount(off), wide, points)
    } else {
        say!("the ticket lies inside, range {wide} wide. {points} of 100 points.", wide, points)
    }
}

/// How a guess and the tool's range did, each in a sentence.
pub fn revealed(reveal: &Reveal, currency: Currency) -> (String, Option<String>) {
    let ticket = reveal.log_ticket.exp();
    let of = |range: &Ends, points: f64| [range.low().exp(), range.high().exp(), ticket, points];
    // What the person named is known to the cent; the tool's ends were worked out.
    let yours = missed(of(&reveal.yours, reveal.score.points), known, currency);
    let tool = reveal.tool.map(|(range, score)| missed(of(&range, score.points), about, currency));
    (say!("You: {how}", how = yours), tool.map(|tool| say!("Tool: {how}", how = tool)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_worked_out_has_two_digits() {
        let said: Vec<String> = [0.0, 0.048, 0.996, 3.44, 34.4, 99.6, 344.0, 123_456.0, f64::NAN].map(about).into();
        assert_eq!(said, ["0", "0.05", "1.00", "3.4", "34", "100", "340", "120,000", "0"]);
        assert_eq!((between(34.1, 34.3), between(3.0, 12.0)), ("34".to_owned(), "3.0 to 12".to_owned()));
    }

    #[test]
    fn a_share_below_nothing_has_a_minus() {
        assert_eq!((share(0.634), share(-0.2)), ("63 %".to_owned(), "−20 %".to_owned()));
    }

    #[test]
    fn a_miss_is_told_in_money() {
        // 40 to 80 against 92.50: 12.50 outside, 40 wide.
        let said = |ticket, points| missed([40.0, 80.0, ticket, points], known, Currency::Usd);
        assert_eq!(said(92.5, 61.7), "missed by USD\u{a0}12.50, range USD\u{a0}40 wide. 62 of 100 points.");
        assert_eq!(said(80.0 + 1e-9, -3.0), "the ticket lies inside, range USD\u{a0}40 wide. 0 of 100 points.");
    }

    #[test]
    fn what_is_left_is_said_with_its_ends_and_never_below_nothing() {
        let left = |low, middle, high| Left { low, middle, high, below: 0.5, stand: Stand::Within };
        let said = |low, middle, high| unexplained(&left(low, middle, high), 100.0, Currency::Usd);
        // A ticket of 100 over a make of 67 (80 to 50 at the ends): 33 (20 to 50) are left.
        assert!(said(1.25, 1.5, 2.0).starts_with("USD\u{a0}20 to 50 of it, in the middle 33, are not explained by the make"));
        assert!(said(0.4, 0.9, 1.8).starts_with("USD\u{a0}0 to 44 of it, in the middle 0,"));
        assert!(said(0.4, 0.5, 0.8).starts_with("The make alone would come to more"));
    }

    #[test]
    fn what_follows_from_a_price_keeps_its_cents() {
        assert_eq!(exact(Currency::Eur, 45.178), "EUR\u{a0}45.18");
        assert_eq!(exact(Currency::Eur, -13_554.2), "EUR\u{a0}−13,554");
        assert_eq!(exact(Currency::Jpy, 45.2), "JPY\u{a0}45");
    }
}
