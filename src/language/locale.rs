//! What differs from language to language beside its words: signs in numbers, where a currency stands, letters within a sentence.

use std::fmt;

use super::spoken;

/// A language of the interface.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English, in which the messages stand in the code.
    #[default]
    English,
    /// German.
    German,
    /// French.
    French,
}

impl Language {
    /// All of them.
    pub const ALL: [Language; 3] = [Language::English, Language::German, Language::French];

    /// Its tag after BCP 47; also the name of the folder of its messages.
    pub const fn tag(self) -> &'static str {
        match self {
            Language::English => "en",
            Language::German => "de",
            Language::French => "fr",
        }
    }

    /// Its name in itself.
    pub const fn own_name(self) -> &'static str {
        match self {
            Language::English => "English",
            Language::German => "Deutsch",
            Language::French => "Français",
        }
    }

    /// The language of a tag such as `de-AT`, by what stands before the first hyphen.
    pub fn of_tag(tag: &str) -> Option<Language> {
        let primary = tag.split(['-', '_']).next().unwrap_or_default();
        Language::ALL.into_iter().find(|language| language.tag().eq_ignore_ascii_case(primary))
    }

    /// The sign between whole and part of a number.
    ///
    /// # Source
    /// Unicode CLDR, as the browser's `Intl.NumberFormat` gives it (`tests/browser/languages.test.mjs`).
    pub const fn decimal_sign(self) -> char {
        match self {
            Language::English => '.',
            Language::German | Language::French => ',',
        }
    }
}

/// The digits of an amount of money (`1234.50`) with the signs of the language that is spoken: `1,234.50`, `1.234,50`, `1 234,50` with a narrow
/// space. Physical quantities are grouped by spaces in every language (`quantity::written`).
///
/// # Source
/// Unicode CLDR, as the browser's `Intl.NumberFormat` gives it (`tests/browser/languages.test.mjs`).
pub fn grouped(digits: &str) -> String {
    let language = spoken();
    let group = match language {
        Language::English => ',',
        Language::German => '.',
        Language::French => '\u{202f}',
    };
    let (whole, part) = digits.split_once('.').unwrap_or((digits, ""));
    let mut out = String::with_capacity(digits.len() + 8);
    for (place, digit) in whole.chars().enumerate() {
        if place > 0 && (whole.len() - place).is_multiple_of(3) {
            out.push(group);
        }
        out.push(digit);
    }
    if !part.is_empty() {
        out.push(language.decimal_sign());
        out.push_str(part);
    }
    out
}

/// An amount, written already, with the code of its currency: before it in English, after it elsewhere. The two stay on one line.
///
/// # Source
/// Unicode CLDR, pattern of a currency shown by its code (`Intl.NumberFormat`, `currencyDisplay: "code"`).
pub fn money(code: &str, amount: impl fmt::Display) -> String {
    match spoken() {
        Language::English => format!("{code}\u{a0}{amount}"),
        Language::German | Language::French => format!("{amount}\u{a0}{code}"),
    }
}

/// A name that stands alone, as it is written within a sentence: with a small letter at its front, but in German, where nouns keep theirs.
/// What begins with two capitals (a norm, an abbreviation) stays.
pub fn within(name: &str) -> String {
    let mut letters = name.chars();
    match (spoken(), letters.next(), letters.clone().next()) {
        (Language::German, ..) => name.to_owned(),
        (_, Some(_), Some(second)) if second.is_uppercase() || second.is_ascii_digit() => name.to_owned(),
        (_, Some(first), _) => first.to_lowercase().chain(letters).collect(),
        (_, None, _) => String::new(),
    }
}

/// Words that begin a sentence: with a capital at their front.
pub fn opening(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tag_is_known_by_its_front() {
        let of = |tag| Language::of_tag(tag).map(Language::tag);
        assert_eq!([of("de-AT"), of("FR"), of("en_GB"), of("it"), of("")], [Some("de"), Some("fr"), Some("en"), None, None]);
    }

    #[test]
    fn an_amount_is_grouped_in_threes() {
        assert_eq!(["7", "999", "1234.50", "1234567"].map(grouped), ["7", "999", "1,234.50", "1,234,567"]);
        crate::language::speak(Language::German, Default::default());
        assert_eq!((grouped("1234.50"), money("EUR", "5")), ("1.234,50".to_owned(), "5\u{a0}EUR".to_owned()));
        assert_eq!(within("Innere Beinnaht"), "Innere Beinnaht");
        crate::language::speak(Language::French, Default::default());
        assert_eq!(grouped("1234.50"), "1\u{202f}234,50");
    }

    #[test]
    fn a_name_within_a_sentence_has_a_small_letter_and_a_norm_keeps_its_own() {
        assert_eq!(
            [within("Inner leg seam"), within("ISO 4916"), within(""), within("É")],
            ["inner leg seam", "ISO 4916", "", "é"]
        );
        assert_eq!([opening("on the hanger"), opening("")], ["On the hanger", ""]);
    }
}
