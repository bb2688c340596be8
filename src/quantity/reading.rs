//! How a number that a person typed is read. What cannot be read for certain is refused, never guessed.

use super::{Decimal, Unit, written};
use crate::say;

/// Longest text that is looked at, in characters.
const MOST_CHARACTERS: usize = 40;
/// Most digits in a number: up to here every whole number has its own `f64`, so nothing typed is changed unseen.
const MOST_DIGITS: usize = 15;

/// A number as typed, in the unit it was typed in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Amount {
    /// The number; finite.
    pub number: f64,
    /// Its unit.
    pub unit: Unit,
}

impl Amount {
    /// The same amount in another unit; none when that measures something else.
    pub fn in_unit(self, unit: Unit) -> Option<f64> {
        self.unit.convert(self.number, unit)
    }
}

/// Why a text is not taken as a number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ReadFault {
    /// Nothing was typed.
    Empty,
    /// More than 40 characters, or a number of more than 15 digits.
    TooLong,
    /// It does not begin with a number.
    NoNumber,
    /// Digits, commas, points and spaces that make no single number.
    Muddled,
    /// A comma or point that may part thousands or may be the decimal sign.
    Ambiguous {
        /// The number if it parts thousands, as it may be typed.
        whole: String,
        /// The number if it is the decimal sign, as it may be typed.
        decimal: String,
    },
    /// A fraction that is not of the kind `3 1/2`.
    Fraction,
    /// A word behind the number that is no unit we know.
    UnknownUnit(String),
    /// A unit of something else.
    WrongUnit {
        /// The unit typed.
        typed: Unit,
        /// The unit that was asked for.
        expected: Unit,
    },
}

impl ReadFault {
    /// What the person is told, and what to do.
    pub fn sentence(&self) -> String {
        match self {
            ReadFault::Empty => say!("Type a number.").into(),
            ReadFault::TooLong => say!("That is too long for one number. Type up to 15 digits.").into(),
            ReadFault::NoNumber => say!("Start with a number, such as {example} or 3 1/2.", example = example()),
            ReadFault::Muddled => say!("That reads as more than one number. Type one, such as {example}.", example = example()),
            ReadFault::Ambiguous { whole, decimal } => {
                say!("That can mean two things. Type {whole} or {decimal}.", whole, decimal)
            }
            ReadFault::Fraction => {
                say!("Type a fraction smaller than one, on its own or after a whole number: 1/2 or 3 1/2.").into()
            }
            ReadFault::UnknownUnit(word) => {
                say!("“{word}” is not a unit known here. Type the number alone, or with a unit such as mm or in.", word)
            }
            ReadFault::WrongUnit { typed, expected } => match (typed.name(), expected.name()) {
                (typed, "") => say!("A count is asked for, not {typed}. Type the number alone.", typed),
                ("", expected) => say!("The answer is asked for in {expected}; a count cannot be turned into that.", expected),
                (typed, expected) => {
                    say!("The answer is asked for in {expected}; {typed} cannot be turned into that.", expected, typed)
                }
            },
        }
    }
}

/// A number as an example of how one is typed, with the sign of the language that is spoken.
fn example() -> String {
    written(8.5, 1, Decimal::spoken())
}

/// The number that `text` says, in the unit it names, or in `expected` where it names none.
///
/// `decimal` is the sign the person sees in this app. Taken are: `8.5` and `8,5`; spaces around, and between thousands in threes
/// (`1 234,5`); `1,234.5` and `1.234,5`, where the last sign can only be the decimal one; `1,234,567`; `1/2`, `3 1/2`, `½`, `3½`; a sign
/// in front; and a unit behind, `21 cm`, `8 1/2"`, `14 oz`.
///
/// One comma or point with exactly three digits behind it and one to three in front (`1,234`) can be thousands. It is read as a decimal
/// sign where it is the person's own (`decimal`), and refused where it is the other one. `0,234` is never thousands.
///
/// A unit is looked up among those that measure what `expected` does first, so "14 oz" is cloth mass where cloth mass is asked for.
///
/// # Errors
/// A [`ReadFault`], whose [`sentence`](ReadFault::sentence) says what to type instead. Not a number, infinity and exponents (`1e5`) are
/// refused.
///
/// ```
/// use garment_assay::quantity::{read, Amount, Decimal, Unit};
/// assert_eq!(read("3 1/2 in", Unit::Millimetre, Decimal::Point), Ok(Amount { number: 3.5, unit: Unit::Inch }));
/// assert_eq!(read("8,5", Unit::Centimetre, Decimal::Point), Ok(Amount { number: 8.5, unit: Unit::Centimetre }));
/// assert!(read("1,234", Unit::Millimetre, Decimal::Point).is_err());
/// ```
pub fn read(text: &str, expected: Unit, decimal: Decimal) -> Result<Amount, ReadFault> {
    let text = text.trim();
    if text.is_empty() {
        return Err(ReadFault::Empty);
    }
    if text.chars().nth(MOST_CHARACTERS).is_some() {
        return Err(ReadFault::TooLong);
    }
    let (negative, unsigned) = match text.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let unsigned = unsigned.trim_start();
    let (digits, word) = unsigned.split_at(number_end(unsigned));
    if digits.trim().is_empty() {
        return Err(ReadFault::NoNumber);
    }
    let number = number(digits.trim(), decimal)?;
    let unit = unit(word.trim(), expected)?;
    Ok(Amount { number: if negative && number != 0.0 { -number } else { number }, unit })
}

/// Where the number ends and the unit begins, in bytes. A slash belongs to the number only with a digit behind it: `8/in` is a unit.
fn number_end(text: &str) -> usize {
    let mut rest = text.char_indices().peekable();
    while let Some((place, c)) = rest.next() {
        let belongs = match c {
            '0'..='9' | '.' | ',' => true,
            '/' | '⁄' => {
                rest.peek().is_some_and(|(_, next)| next.is_ascii_digit() || next.is_whitespace())
                    && digit_follows(&text[place..])
            }
            c => c.is_whitespace() || vulgar(c).is_some(),
        };
        if !belongs {
            return place;
        }
    }
    text.len()
}

/// Whether the first thing behind the sign at the start of `text` is a digit.
fn digit_follows(text: &str) -> bool {
    text.chars().skip(1).find(|c| !c.is_whitespace()).is_some_and(|c| c.is_ascii_digit())
}

/// Fractions that keyboards offer as one sign.
fn vulgar(c: char) -> Option<f64> {
    let (over, under) = match c {
        '½' => (1.0, 2.0),
        '⅓' => (1.0, 3.0),
        '⅔' => (2.0, 3.0),
        '¼' => (1.0, 4.0),
        '¾' => (3.0, 4.0),
        '⅕' => (1.0, 5.0),
        '⅖' => (2.0, 5.0),
        '⅗' => (3.0, 5.0),
        '⅘' => (4.0, 5.0),
        '⅙' => (1.0, 6.0),
        '⅚' => (5.0, 6.0),
        '⅛' => (1.0, 8.0),
        '⅜' => (3.0, 8.0),
        '⅝' => (5.0, 8.0),
        '⅞' => (7.0, 8.0),
        _ => return None,
    };
    Some(over / under)
}

/// The number in a text of digits, signs, spaces and fractions.
fn number(text: &str, decimal: Decimal) -> Result<f64, ReadFault> {
    let mut rest = text.chars();
    if let Some(fraction) = rest.next_back().and_then(vulgar) {
        let whole = rest.as_str().trim_end();
        return Ok(if whole.is_empty() { fraction } else { whole_number(whole)? + fraction });
    }
    if let Some((over, under)) = text.split_once(['/', '⁄']) {
        let (whole, over) = match over.trim().rsplit_once(char::is_whitespace) {
            Some((whole, over)) => (whole_number(whole.trim())?, whole_number(over)?),
            None => (0.0, whole_number(over.trim())?),
        };
        let under = whole_number(under.trim())?;
        return if over < under { Ok(whole + over / under) } else { Err(ReadFault::Fraction) };
    }
    decimal_number(text, decimal)
}

/// A whole number within a fraction: digits, and spaces between thousands.
fn whole_number(text: &str) -> Result<f64, ReadFault> {
    if !text.chars().all(|c| c.is_ascii_digit() || c.is_whitespace()) {
        return Err(ReadFault::Fraction);
    }
    decimal_number(text, Decimal::Point).map_err(|fault| if fault == ReadFault::TooLong { fault } else { ReadFault::Fraction })
}

/// A number of digits, commas, points and spaces.
fn decimal_number(text: &str, decimal: Decimal) -> Result<f64, ReadFault> {
    if text.chars().any(|c| vulgar(c).is_some()) {
        return Err(ReadFault::Fraction);
    }
    let digits = text.chars().filter(char::is_ascii_digit).count();
    if digits == 0 {
        return Err(ReadFault::NoNumber);
    }
    if digits > MOST_DIGITS {
        return Err(ReadFault::TooLong);
    }
    let (commas, points) = (text.matches(',').count(), text.matches('.').count());
    let (sign, other) = match (text.rfind(','), text.rfind('.')) {
        (Some(comma), Some(point)) if comma > point => (Some(','), Some('.')),
        (Some(_), Some(_)) => (Some('.'), Some(',')),
        (Some(_), None) if commas > 1 => (None, Some(',')),
        (None, Some(_)) if points > 1 => (None, Some('.')),
        (Some(_), None) => (Some(','), None),
        (None, Some(_)) => (Some('.'), None),
        (None, None) => (None, None),
    };
    let (whole, part) = match sign {
        Some(sign) => text.split_once(sign).unwrap_or((text, "")),
        None => (text, ""),
    };
    if !part.chars().all(|c| c.is_ascii_digit()) || (whole.contains(char::is_whitespace) && other.is_some()) {
        return Err(ReadFault::Muddled);
    }
    if !are_thousands(whole, other) {
        return Err(ReadFault::Muddled);
    }
    let may_be_thousands = part.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0');
    if other.is_none() && may_be_thousands && sign.is_some_and(|sign| sign != decimal.sign()) {
        return Err(ReadFault::Ambiguous {
            whole: format!("{whole}{part}"),
            decimal: format!("{whole}{}{part}", decimal.sign()),
        });
    }
    // At most 15 digits over at most 10^15: both exact, so the division rounds once and correctly.
    let mantissa =
        whole.bytes().chain(part.bytes()).filter(u8::is_ascii_digit).fold(0_u64, |n, digit| n * 10 + u64::from(digit - b'0'));
    let scale = (0..part.len()).fold(1_u64, |scale, _| scale * 10);
    Ok(mantissa as f64 / scale as f64)
}

/// Whether the digits are in one piece, or parted by the sign, or by spaces, into threes with one to three in front.
fn are_thousands(whole: &str, sign: Option<char>) -> bool {
    let mut groups = whole.split(|c: char| c.is_whitespace() || Some(c) == sign);
    let Some(first) = groups.next() else { return true };
    let mut more = groups.peekable();
    let all_digits = |group: &str| group.bytes().all(|b| b.is_ascii_digit());
    all_digits(first)
        && (more.peek().is_none() || ((1..=3).contains(&first.len()) && more.all(|group| group.len() == 3 && all_digits(group))))
}

/// The unit a word means where `expected` was asked for.
fn unit(word: &str, expected: Unit) -> Result<Unit, ReadFault> {
    if word.is_empty() {
        return Ok(expected);
    }
    // What the app itself writes behind a number in the language that is spoken is taken back too.
    let means =
        |unit: &Unit| unit.words().iter().chain([&unit.name(), &unit.symbol()]).any(|known| spelled(known).eq(spelled(word)));
    let found = std::iter::once(expected)
        .chain(Unit::ALL.into_iter().filter(|unit| unit.is_like(expected)))
        .chain(Unit::ALL)
        .find(means)
        .ok_or_else(|| ReadFault::UnknownUnit(word.into()))?;
    if found.is_like(expected) { Ok(found) } else { Err(ReadFault::WrongUnit { typed: found, expected }) }
}

/// A unit word without spaces, dots, carets and capitals, so that "Oz / yd^2" is "oz/yd²".
fn spelled(word: &str) -> impl Iterator<Item = char> {
    word.chars()
        .filter(|c| !c.is_whitespace() && *c != '.' && *c != '^')
        .map(|c| if c == '²' { '2' } else { c.to_ascii_lowercase() })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::{Language, Messages, speak};
    use proptest::prelude::*;

    fn number_of(text: &str) -> Result<f64, ReadFault> {
        read(text, Unit::Millimetre, Decimal::Point).map(|amount| amount.number)
    }

    #[test]
    fn people_type_numbers_in_many_ways() {
        for (text, number) in [
            ("8", 8.0),
            ("8.5", 8.5),
            ("8,5", 8.5),
            (" 8.5 ", 8.5),
            (".5", 0.5),
            (",5", 0.5),
            ("8.", 8.0),
            ("+8", 8.0),
            ("-1.5", -1.5),
            ("−1.5", -1.5),
            ("1 234", 1234.0),
            ("1\u{202f}234,5", 1234.5),
            ("1 234 567.25", 1_234_567.25),
            ("1,234.5", 1234.5),
            ("1.234,5", 1234.5),
            ("1,234,567", 1_234_567.0),
            ("1.234.567", 1_234_567.0),
            ("1.234", 1.234),
            ("0,234", 0.234),
            ("1234,567", 1234.567),
            ("½", 0.5),
            ("3½", 3.5),
            ("3 ½", 3.5),
            ("1/2", 0.5),
            ("3 1/2", 3.5),
            ("3 1 / 2", 3.5),
            ("1 234 3/4", 1234.75),
            ("3 1⁄2", 3.5),
        ] {
            assert_eq!(number_of(text), Ok(number), "{text:?}");
        }
    }

    #[test]
    fn what_cannot_be_read_for_certain_is_refused() {
        for (text, fault) in [
            ("", ReadFault::Empty),
            (" \u{a0} ", ReadFault::Empty),
            ("nan", ReadFault::NoNumber),
            ("inf", ReadFault::NoNumber),
            ("-", ReadFault::NoNumber),
            (".", ReadFault::NoNumber),
            ("mm", ReadFault::NoNumber),
            ("--8", ReadFault::NoNumber),
            ("8 5", ReadFault::Muddled),
            ("8, 5", ReadFault::Muddled),
            ("1,23.5", ReadFault::Muddled),
            ("1.5.2", ReadFault::Muddled),
            ("1,5,5", ReadFault::Muddled),
            ("1 234,567,8", ReadFault::Muddled),
            ("1,,234", ReadFault::Muddled),
            ("1,2345.5", ReadFault::Muddled),
            ("1 2345", ReadFault::Muddled),
            ("1234 567", ReadFault::Muddled),
            ("2/2", ReadFault::Fraction),
            ("3/0", ReadFault::Fraction),
            ("7/2", ReadFault::Fraction),
            ("1.5/2", ReadFault::Fraction),
            ("1/2/3", ReadFault::Fraction),
            ("½½", ReadFault::Fraction),
            ("½¼", ReadFault::Fraction),
            ("½ 3", ReadFault::Fraction),
            ("3.5½", ReadFault::Fraction),
            ("1e5", ReadFault::UnknownUnit("e5".into())),
            ("8 ± 2", ReadFault::UnknownUnit("± 2".into())),
            ("8 furlongs", ReadFault::UnknownUnit("furlongs".into())),
            ("8 kg", ReadFault::WrongUnit { typed: Unit::Kilogram, expected: Unit::Millimetre }),
            ("1234567890123456", ReadFault::TooLong),
            ("0.0000000000000000000000000000000000000000001", ReadFault::TooLong),
        ] {
            assert_eq!(number_of(text), Err(fault), "{text:?}");
        }
        assert_eq!(number_of(&"9".repeat(1_000_000)), Err(ReadFault::TooLong));
    }

    #[test]
    fn units_are_read_in_english_and_as_the_app_writes_them_in_the_language_that_is_spoken() {
        let messages = "msgid \"per inch\"\nmsgstr \"pro Zoll\"\nmsgctxt \"inches\"\nmsgid \"in\"\nmsgstr \"Zoll\"";
        speak(Language::German, Messages::read(messages).expect("sound"));
        let unit = |text, expected| read(text, expected, Decimal::Comma).map(|amount| (amount.number, amount.unit));
        assert_eq!(unit("8,5 pro Zoll", Unit::PerCentimetre), Ok((8.5, Unit::PerInch)));
        assert_eq!(unit("8,5 per inch", Unit::PerCentimetre), Ok((8.5, Unit::PerInch)));
        assert_eq!(unit("3 1/2 Zoll", Unit::Centimetre), Ok((3.5, Unit::Inch)));
        for text in ["1.234,50", "1,234.50", "1 234,50", "1\u{202f}234,50"] {
            assert_eq!(unit(text, Unit::Gram), Ok((1234.5, Unit::Gram)), "{text}");
        }
        let ambiguous = unit("1.234", Unit::Gram).expect_err("two readings").sentence();
        assert_eq!(ambiguous, "That can mean two things. Type 1234 or 1,234.");
        assert_eq!(ReadFault::NoNumber.sentence(), "Start with a number, such as 8,5 or 3 1/2.");
        speak(Language::English, Messages::default());
    }

    #[test]
    fn a_sign_that_may_part_thousands_is_read_only_where_it_is_the_persons_own() {
        let ambiguous = |whole: &str, decimal: &str| Err(ReadFault::Ambiguous { whole: whole.into(), decimal: decimal.into() });
        let read = |text, sign| read(text, Unit::Millimetre, sign).map(|amount| amount.number);
        assert_eq!(read("1,234", Decimal::Point), ambiguous("1234", "1.234"));
        assert_eq!(read("1.234", Decimal::Comma), ambiguous("1234", "1,234"));
        assert_eq!(read("1,234", Decimal::Comma), Ok(1.234));
        assert_eq!(read("1.234", Decimal::Point), Ok(1.234));
        assert_eq!(read("1.2345", Decimal::Comma), Ok(1.2345));
    }

    #[test]
    fn both_readings_an_ambiguous_number_offers_can_be_typed() {
        for sign in [Decimal::Point, Decimal::Comma] {
            for text in ["1,234", "1.234", "999,001", "12.500"] {
                if let Err(ReadFault::Ambiguous { whole, decimal }) = read(text, Unit::Metre, sign) {
                    let whole = read(&whole, Unit::Metre, sign).unwrap().number;
                    let decimal = read(&decimal, Unit::Metre, sign).unwrap().number;
                    assert_eq!(whole, (decimal * 1000.0).round());
                }
            }
        }
    }

    #[test]
    fn a_unit_may_stand_behind_the_number() {
        for (text, expected, number, unit) in [
            ("8,5 in", Unit::Millimetre, 8.5, Unit::Inch),
            ("21 cm", Unit::Millimetre, 21.0, Unit::Centimetre),
            ("21cm", Unit::Inch, 21.0, Unit::Centimetre),
            ("8 1/2\"", Unit::Millimetre, 8.5, Unit::Inch),
            ("3 In.", Unit::Millimetre, 3.0, Unit::Inch),
            ("14 oz", Unit::OuncePerSquareYard, 14.0, Unit::OuncePerSquareYard),
            ("14 oz", Unit::GramPerSquareMetre, 14.0, Unit::OuncePerSquareYard),
            ("14 oz", Unit::Gram, 14.0, Unit::Ounce),
            ("14 Oz / yd^2", Unit::GramPerSquareMetre, 14.0, Unit::OuncePerSquareYard),
            ("475 g/m²", Unit::OuncePerSquareYard, 475.0, Unit::GramPerSquareMetre),
            ("475 gsm", Unit::OuncePerSquareYard, 475.0, Unit::GramPerSquareMetre),
            ("8 per inch", Unit::PerCentimetre, 8.0, Unit::PerInch),
            ("8/in", Unit::PerCentimetre, 8.0, Unit::PerInch),
            ("8 1/2 /in", Unit::PerCentimetre, 8.5, Unit::PerInch),
            ("9.4 per 3 cm", Unit::PerInch, 9.4, Unit::PerThreeCentimetres),
            ("5 %", Unit::MillimetrePerHundred, 5.0, Unit::Percent),
            ("5 mm", Unit::MillimetrePerHundred, 5.0, Unit::MillimetrePerHundred),
            ("24 stitches", Unit::Count, 24.0, Unit::Count),
            ("3°", Unit::Degree, 3.0, Unit::Degree),
        ] {
            assert_eq!(read(text, expected, Decimal::Point), Ok(Amount { number, unit }), "{text:?}");
        }
    }

    #[test]
    fn a_slash_before_a_length_is_never_taken_for_a_fraction_unseen() {
        // "9/3cm" reads as the fraction 9/3 and is refused, rather than giving 3 of something.
        assert_eq!(read("9/3cm", Unit::PerThreeCentimetres, Decimal::Point), Err(ReadFault::Fraction));
        assert!(read("2/3 cm", Unit::PerThreeCentimetres, Decimal::Point).is_err());
    }

    #[test]
    fn per_cent_is_no_count() {
        assert!(matches!(read("5 %", Unit::Count, Decimal::Point), Err(ReadFault::WrongUnit { .. })));
    }

    #[test]
    fn every_unit_can_be_typed_by_its_symbol_and_its_name() {
        for unit in Unit::ALL {
            for word in [unit.symbol(), unit.name()] {
                assert_eq!(read(&format!("7 {word}"), unit, Decimal::Point), Ok(Amount { number: 7.0, unit }), "{word}");
            }
        }
    }

    #[test]
    fn no_two_units_of_one_kind_share_a_word() {
        for one in Unit::ALL {
            for other in Unit::ALL.into_iter().filter(|other| *other != one && other.is_like(one)) {
                for word in one.words() {
                    assert!(!other.words().iter().any(|known| spelled(known).eq(spelled(word))), "{word}: {one:?}, {other:?}");
                }
            }
        }
    }

    #[test]
    fn every_refusal_tells_the_person_what_to_do() {
        for text in ["", "nan", "8 5", "1,234", "7/2", "8 furlongs", "8 kg", "8 %", "1234567890123456"] {
            for expected in [Unit::Millimetre, Unit::Count] {
                let fault = read(text, expected, Decimal::Point).unwrap_err();
                let sentence = fault.sentence();
                assert!(sentence.ends_with('.') && !sentence.contains('!') && sentence.len() > 10, "{sentence}");
            }
        }
    }

    proptest! {
        #[test]
        fn any_text_at_all_is_read_or_refused(text in any::<String>(), comma in any::<bool>()) {
            let sign = if comma { Decimal::Comma } else { Decimal::Point };
            for unit in Unit::ALL {
                match read(&text, unit, sign) {
                    Ok(amount) => prop_assert!(amount.number.is_finite() && amount.unit.is_like(unit)),
                    Err(fault) => prop_assert!(!fault.sentence().is_empty()),
                }
            }
        }

        #[test]
        fn any_text_of_number_signs_is_read_or_refused(text in "[-+0-9.,/ ½⅔⁄\u{202f}a-cim\"%°²e]{0,45}") {
            match read(&text, Unit::Inch, Decimal::Point) {
                Ok(amount) => prop_assert!(amount.number.is_finite()),
                Err(fault) => prop_assert!(!fault.sentence().is_empty()),
            }
        }

        /// Against the standard library's own reader of decimals.
        #[test]
        fn a_plain_decimal_is_read_as_the_standard_library_reads_it(whole in 0_u64..1_000_000_000, part in "[0-9]{0,6}") {
            let text = format!("{whole}.{part}");
            prop_assert_eq!(number_of(&text), Ok(text.parse::<f64>().unwrap()));
        }
    }
}
