//! How numbers are written for people: never to more digits than their spread deserves.

use super::Unit;

/// What stands for a number that is not known.
pub const NO_NUMBER: &str = "–";

/// The decimal sign a person is used to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum Decimal {
    /// 8.6
    #[default]
    Point,
    /// 8,6
    Comma,
}

impl Decimal {
    /// That of the language that is spoken.
    pub fn spoken() -> Decimal {
        match crate::language::spoken().decimal_sign() {
            ',' => Decimal::Comma,
            _ => Decimal::Point,
        }
    }

    /// The sign itself.
    pub const fn sign(self) -> char {
        match self {
            Decimal::Point => '.',
            Decimal::Comma => ',',
        }
    }
}

/// Most decimals ever written.
const MOST_DECIMALS: i32 = 9;
/// Sizes from here up are not written: no garment has them, and they would run off the screen.
const TOO_BIG: f64 = 1e15;

/// `value` to so many decimals (at most 9), with a true minus and narrow spaces between thousands from 10 000 up; a dash
/// ([`NO_NUMBER`]) when it is not finite or its size is 10^15 or more. [`read`](super::read()) takes it back.
///
/// Grouping in threes by a space, and none in four digits: SI Brochure, 9th edition, 5.4.4.
///
/// ```
/// use garment_assay::quantity::{written, Decimal};
/// assert_eq!(written(-12345.678, 1, Decimal::Comma), "−12\u{202f}345,7");
/// ```
pub fn written(value: f64, decimals: u8, decimal: Decimal) -> String {
    if !value.is_finite() || value.abs() >= TOO_BIG {
        return NO_NUMBER.into();
    }
    let decimals = usize::from(decimals.min(MOST_DECIMALS as u8));
    let plain = format!("{:.decimals$}", value.abs());
    let (whole, part) = plain.split_once('.').unwrap_or((&plain, ""));
    let mut text = String::with_capacity(plain.len() + 12);
    if value < 0.0 && plain.bytes().any(|digit| (b'1'..=b'9').contains(&digit)) {
        text.push('−');
    }
    for (place, digit) in whole.chars().enumerate() {
        if place > 0 && whole.len() > 4 && (whole.len() - place) % 3 == 0 {
            text.push('\u{202f}');
        }
        text.push(digit);
    }
    if !part.is_empty() {
        text.push(decimal.sign());
        text.push_str(part);
    }
    text
}

/// `value` to at most so many decimals, without zeros at the end: for numbers that have no spread.
pub fn written_exactly(value: f64, most_decimals: u8, decimal: Decimal) -> String {
    let text = written(value, most_decimals, decimal);
    if !text.contains(decimal.sign()) {
        return text;
    }
    let text = text.trim_end_matches('0').trim_end_matches(decimal.sign());
    if text == "−0" { "0".into() } else { text.into() }
}

/// `8.6 ± 0.2 per inch`: the spread to one digit, or to two when the first is 1; the value to the same place; then the unit.
///
/// No spread (0, or below 10^-9) writes the value alone with at most six decimals. Not known (NaN, infinite, negative spread, or a size of 10^15
/// or more) writes a dash. The digits rule is common practice; JCGM 100:2008 (GUM), 7.2.6, asks for two at the most.
///
/// ```
/// use garment_assay::quantity::{written_with_spread, Decimal, Unit};
/// assert_eq!(written_with_spread(8.6437, 0.2312, Unit::PerInch, Decimal::Point), "8.6 ± 0.2 per inch");
/// assert_eq!(written_with_spread(474.68, 37.3, Unit::GramPerSquareMetre, Decimal::Point), "470 ± 40 g/m²");
/// ```
pub fn written_with_spread(value: f64, spread: f64, unit: Unit, decimal: Decimal) -> String {
    let number = match last_place(spread) {
        _ if !value.is_finite() || !spread.is_finite() || spread < 0.0 => NO_NUMBER.into(),
        _ if value.abs() >= TOO_BIG || spread >= TOO_BIG => NO_NUMBER.into(),
        None => written_exactly(value, 6, decimal),
        Some(place) => {
            let decimals = (-place).max(0) as u8;
            // Tens and hundreds are rounded to their place first, then written whole.
            let step = 10.0_f64.powi(place);
            let shown = |number: f64| {
                written(if place > 0 { (number / step).round_ties_even() * step } else { number }, decimals, decimal)
            };
            format!("{} ± {}", shown(value), shown(spread))
        }
    };
    match unit {
        Unit::Count => number,
        Unit::Degree => format!("{number}{}", unit.symbol()),
        _ => format!("{number} {}", unit.symbol()),
    }
}

/// The power of ten of the last digit a spread deserves; none when it is none or too small to be written.
fn last_place(spread: f64) -> Option<i32> {
    if !(spread.is_finite() && spread >= 1e-9) {
        return None;
    }
    let mut power = 0;
    while spread >= 10.0_f64.powi(power + 1) {
        power += 1;
    }
    while spread < 10.0_f64.powi(power) {
        power -= 1;
    }
    // 1.95 would be written 2.0 with two digits, whose first is no longer 1.
    let two = spread / 10.0_f64.powi(power) < 1.95;
    Some((power - i32::from(two)).max(-MOST_DECIMALS))
}

#[cfg(test)]
mod tests {
    use super::super::read;
    use super::*;
    use proptest::prelude::*;

    const NARROW: char = '\u{202f}';

    #[test]
    fn a_spread_gets_one_digit_or_two_when_the_first_is_1() {
        for (value, spread, text) in [
            (8.6437, 0.2312, "8.6 ± 0.2"),
            (8.0, 0.146, "8.00 ± 0.15"),
            (8.0, 0.0996, "8.00 ± 0.10"),
            (8.0, 0.194, "8.00 ± 0.19"),
            (8.0, 0.196, "8.0 ± 0.2"),
            (8.0, 0.96, "8.0 ± 1.0"),
            (8.0, 3.0, "8 ± 3"),
            (147.0, 12.3, "147 ± 12"),
            (147.0, 23.0, "150 ± 20"),
            (147.0, 96.0, "150 ± 100"),
            (12_345.0, 678.0, "12\u{202f}300 ± 700"),
            (-0.04, 2.0, "0 ± 2"),
            (-3.2, 0.5, "−3.2 ± 0.5"),
            (8.5, 0.0, "8.5"),
            (8.0, 0.0, "8"),
            (1.0 / 3.0, 0.0, "0.333333"),
        ] {
            assert_eq!(written_with_spread(value, spread, Unit::Count, Decimal::Point), text, "{value} {spread}");
        }
    }

    #[test]
    fn what_is_not_known_is_a_dash() {
        for (value, spread) in [
            (f64::NAN, 1.0),
            (1.0, f64::NAN),
            (f64::INFINITY, 1.0),
            (1.0, f64::INFINITY),
            (1.0, -1.0),
            (1e300, 1.0),
            (1.0, 1e300),
        ] {
            assert_eq!(written_with_spread(value, spread, Unit::Count, Decimal::Point), NO_NUMBER);
        }
        assert_eq!(written(f64::NEG_INFINITY, 2, Decimal::Point), NO_NUMBER);
        assert_eq!(written_exactly(f64::NAN, 2, Decimal::Point), NO_NUMBER);
    }

    #[test]
    fn nothing_rounds_to_minus_zero() {
        assert_eq!(written(-0.001, 1, Decimal::Point), "0.0");
        assert_eq!(written_exactly(-0.001, 1, Decimal::Point), "0");
        assert_eq!(written(-0.0, 0, Decimal::Point), "0");
    }

    #[test]
    fn thousands_are_parted_from_five_digits_up() {
        assert_eq!(written(1234.0, 0, Decimal::Point), "1234");
        assert_eq!(written(12_345.0, 0, Decimal::Point), "12\u{202f}345");
        assert_eq!(written(-1_234_567.25, 2, Decimal::Comma), "−1\u{202f}234\u{202f}567,25");
    }

    #[test]
    fn the_decimal_sign_is_the_persons_own() {
        assert_eq!(written_with_spread(8.6437, 0.2312, Unit::Millimetre, Decimal::Comma), "8,6 ± 0,2 mm");
    }

    proptest! {
        #[test]
        fn what_is_written_reads_back_to_half_its_last_digit(value in -1e8_f64..1e8, decimals in 0_u8..6, comma in any::<bool>(), unit in 0_usize..22) {
            let (sign, unit) = (if comma { Decimal::Comma } else { Decimal::Point }, Unit::ALL[unit]);
            let text = format!("{} {}", written(value, decimals, sign), unit.symbol());
            let amount = read(&text, unit, sign);
            prop_assert!(amount.is_ok(), "{} {:?}", text, amount);
            let amount = amount.unwrap();
            prop_assert_eq!(amount.unit, unit);
            prop_assert!((amount.number - value).abs() <= 0.5000001 * 10.0_f64.powi(-i32::from(decimals)), "{}", text);
        }

        #[test]
        fn a_decimal_of_up_to_six_places_survives_writing_and_reading_bit_for_bit(millionths in -1_000_000_000_000_i64..1_000_000_000_000, comma in any::<bool>()) {
            let sign = if comma { Decimal::Comma } else { Decimal::Point };
            let value = millionths as f64 / 1e6;
            let text = written_exactly(value, 6, sign);
            prop_assert_eq!(read(&text, Unit::Metre, sign).map(|amount| amount.number), Ok(value), "{}", text);
        }

        #[test]
        fn any_number_at_all_can_be_written(value in any::<f64>(), spread in any::<f64>(), decimals in any::<u8>()) {
            prop_assert!(written(value, decimals, Decimal::Point).chars().count() <= 32);
            prop_assert!(written_with_spread(value, spread, Unit::Inch, Decimal::Comma).chars().count() <= 80);
        }

        /// The spread as shown is never further from the true one than its last digit allows, and its digits are one, or two from 1.
        #[test]
        fn a_written_spread_is_within_a_quarter_of_the_true_one(value in -1e6_f64..1e6, power in -6_f64..5.0) {
            let spread = 10.0_f64.powf(power);
            let text = written_with_spread(value, spread, Unit::Count, Decimal::Point);
            let shown = text.split(" ± ").nth(1).unwrap().replace(NARROW, "");
            let number: f64 = shown.parse().unwrap();
            prop_assert!((number - spread).abs() <= 0.25 * spread, "{}", text);
            let digits = shown.replace('.', "");
            let digits = digits.trim_start_matches('0');
            let significant = digits.trim_end_matches('0');
            prop_assert!(significant.len() <= 1 || (significant.len() == 2 && significant.starts_with('1')), "{}", text);
        }
    }
}
