//! What a size on a label means, and how far it can be trusted.

use super::assess::Between;
use super::body::{BUST, BodyMeasure, CHEST, WAIST};
use super::sources;
use crate::say;
use crate::source::Source;

/// A way of writing sizes on labels.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LabelSystem {
    /// Waist in inches: 32, or W32 L34.
    WaistInches,
    /// Letters for chests.
    LettersByChest,
    /// Letters for busts.
    LettersByBust,
    /// Chest in inches: 40, 40R.
    ChestInches,
    /// Half the chest in centimetres: 50.
    HalfChest,
    /// A body girth in centimetres, as in the picture of EN 13402.
    Centimetres,
}

/// Why a label cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LabelFault {
    /// No number where one is needed.
    NoNumber,
    /// A number that no label of this system bears.
    OutOfRange,
    /// Letters that are none of the system.
    NoLetters,
}

impl std::fmt::Display for LabelFault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            LabelFault::NoNumber => say!("Type the number on the label, like 32."),
            LabelFault::OutOfRange => {
                say!("No label of this kind bears such a number. See whether it is counted in another way.")
            }
            LabelFault::NoLetters => say!("Type the letters on the label: XS, S, M, L, XL, XXL or 3XL."),
        })
    }
}

/// What a label names.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nominal {
    /// The body measure that it speaks of.
    pub body: &'static BodyMeasure,
    /// The bodies it is meant for, in centimetres.
    pub body_cm: Between,
    /// What the finished garment has been found to measure at that place, in centimetres; none where nobody published it.
    pub found_cm: Option<Between>,
    /// Where that comes from.
    pub source: &'static Source,
}

const INCH_CM: f64 = 2.54;

/// Chest girths of the letter codes, in centimetres. EN 13402-3, from memory: each letter holds two girths of its scale, and ends midway to
/// the next.
const CHESTS: [(&str, f64, f64); 7] = [
    ("XS", 78.0, 86.0),
    ("S", 86.0, 94.0),
    ("M", 94.0, 102.0),
    ("L", 102.0, 110.0),
    ("XL", 110.0, 118.0),
    ("XXL", 118.0, 129.0),
    ("3XL", 129.0, 141.0),
];

/// Bust girths of the letter codes, in centimetres. EN 13402-3, from memory, as above.
const BUSTS: [(&str, f64, f64); 7] = [
    ("XS", 74.0, 82.0),
    ("S", 82.0, 90.0),
    ("M", 90.0, 98.0),
    ("L", 98.0, 107.0),
    ("XL", 107.0, 119.0),
    ("XXL", 119.0, 131.0),
    ("3XL", 131.0, 143.0),
];

impl LabelSystem {
    /// All of them.
    pub const ALL: [LabelSystem; 6] = [
        LabelSystem::WaistInches,
        LabelSystem::LettersByChest,
        LabelSystem::LettersByBust,
        LabelSystem::ChestInches,
        LabelSystem::HalfChest,
        LabelSystem::Centimetres,
    ];

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            LabelSystem::WaistInches => "waist-inches",
            LabelSystem::LettersByChest => "letters-chest",
            LabelSystem::LettersByBust => "letters-bust",
            LabelSystem::ChestInches => "chest-inches",
            LabelSystem::HalfChest => "half-chest",
            LabelSystem::Centimetres => "chest-centimetres",
        }
    }

    /// The system of that key.
    pub fn from_key(key: &str) -> Option<LabelSystem> {
        LabelSystem::ALL.into_iter().find(|system| system.key() == key)
    }

    /// The words on the screen.
    pub fn words(self) -> &'static str {
        match self {
            LabelSystem::WaistInches => say!("waist in inches (32, or W32 L34)"),
            LabelSystem::LettersByChest => say!("letters, by chest (S, M, L)"),
            LabelSystem::LettersByBust => say!("letters, by bust (S, M, L)"),
            LabelSystem::ChestInches => say!("chest in inches (40)"),
            LabelSystem::HalfChest => say!("half the chest in centimetres (50)"),
            LabelSystem::Centimetres => say!("chest in centimetres (100)"),
        }
    }

    /// How far a label of this kind can be trusted.
    pub fn trust(self) -> &'static str {
        match self {
            LabelSystem::WaistInches => {
                say!("Seldom to the inch. Men’s trousers marked 36 in were found to measure 37 to 41 in across seven chains.")
            }
            LabelSystem::LettersByChest | LabelSystem::LettersByBust => {
                say!("The standard gives each letter 8 cm or more, and many makers cut by tables of their own.")
            }
            LabelSystem::ChestInches | LabelSystem::HalfChest | LabelSystem::Centimetres => {
                say!("It names the body that the maker had in mind, not the cloth: ease and cut are the maker’s.")
            }
        }
    }
}

/// The first whole or broken number in a text.
fn number(text: &str) -> Option<f64> {
    let start = text.find(|sign: char| sign.is_ascii_digit())?;
    let digits: String = text[start..]
        .chars()
        .take_while(|sign| sign.is_ascii_digit() || matches!(sign, '.' | ','))
        .map(|sign| if sign == ',' { '.' } else { sign })
        .collect();
    digits.trim_end_matches('.').parse().ok()
}

/// What a label says, in the way of writing that the person names.
///
/// # Errors
/// [`LabelFault`], in words that say what to type.
///
/// # Source
/// Letters: EN 13402-3, from memory. Inches and half chests: common practice. What waists measure: two surveys; handbook, section 9.4.
pub fn nominal(system: LabelSystem, text: &str) -> Result<Nominal, LabelFault> {
    let one = |least: f64, most: f64| {
        let number = number(text).ok_or(LabelFault::NoNumber)?;
        if (least..=most).contains(&number) { Ok(number) } else { Err(LabelFault::OutOfRange) }
    };
    let letters = |table: &[(&str, f64, f64)], body| {
        let said: String = text.trim().to_uppercase();
        let said = match said.as_str() {
            "2XL" => "XXL",
            "XXXL" => "3XL",
            other => other,
        };
        let (_, low, high) = *table.iter().find(|(code, ..)| *code == said).ok_or(LabelFault::NoLetters)?;
        Ok(Nominal { body, body_cm: Between { low, high }, found_cm: None, source: &sources::EN_13402_3 })
    };
    let girth = |body, low: f64, high: f64| {
        Ok(Nominal { body, body_cm: Between { low, high }, found_cm: None, source: &sources::COMMON_PRACTICE })
    };
    match system {
        LabelSystem::WaistInches => {
            let inches = one(20.0, 60.0)?;
            let found = Between { low: (inches + 1.0) * INCH_CM, high: (inches + 5.0) * INCH_CM };
            Ok(Nominal {
                body: &WAIST,
                body_cm: Between { low: inches * INCH_CM, high: inches * INCH_CM },
                found_cm: Some(found),
                source: &sources::LABEL_SURVEYS,
            })
        }
        LabelSystem::LettersByChest => letters(&CHESTS, &CHEST),
        LabelSystem::LettersByBust => letters(&BUSTS, &BUST),
        LabelSystem::ChestInches => one(28.0, 60.0).and_then(|inches| girth(&CHEST, inches * INCH_CM, inches * INCH_CM)),
        LabelSystem::HalfChest => one(36.0, 80.0).and_then(|half| girth(&CHEST, 2.0 * half, 2.0 * half)),
        // Chests stand 4 cm apart in EN 13402-3, so a number stands for two either side.
        LabelSystem::Centimetres => one(70.0, 150.0).and_then(|chest| girth(&CHEST, chest - 2.0, chest + 2.0)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_number_counts() {
        assert_eq!(number("W32 L34"), Some(32.0));
        assert_eq!(number("size 38,5"), Some(38.5));
        assert_eq!(number("50."), Some(50.0));
        assert_eq!(number("1.2.3"), None);
        assert_eq!(number("½"), None);
    }

    /// The scales of EN 13402-3: chests 4 cm apart to 120 and 6 from there, busts 4 cm apart to 104 and 6 from there; from memory.
    #[test]
    fn letters_end_midway_between_two_girths_of_the_scale() {
        for (table, first, wide_from) in [(CHESTS, 80.0, 120.0), (BUSTS, 76.0, 104.0)] {
            let mut scale = vec![first];
            while scale[scale.len() - 1] < 150.0 {
                let last: f64 = scale[scale.len() - 1];
                scale.push(last + if last >= wide_from { 6.0 } else { 4.0 });
            }
            for (place, (letter, low, high)) in table.into_iter().enumerate() {
                let [one, two] = [scale[2 * place], scale[2 * place + 1]];
                assert!(low < one && two < high, "{letter}");
                assert_eq!(high, 0.5 * (two + scale[2 * place + 2]), "{letter}");
                assert!(place == 0 || table[place - 1].2 == low, "{letter} does not begin where the one before ends");
            }
        }
    }
}
