//! A run by a short code, so that a teacher can give everyone the same specimens.

use std::fmt;

use super::topic::{Level, Topics};
use crate::say;

/// What makes a run: which specimens, about what, how hard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Plan {
    seed: u32,
    topics: Topics,
    level: Level,
}

/// Why a code cannot be taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CodeFault {
    /// It has too few or too many signs.
    Length {
        /// How many it has.
        found: usize,
    },
    /// A sign that no code has.
    Sign(char),
    /// It does not check: a sign is wrong, or two are swapped.
    Mistyped,
    /// It names something that this version does not know.
    Newer,
}

impl fmt::Display for CodeFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            CodeFault::Length { found } => {
                f.write_str(&say!("A code has {count} signs; this one has {found}.", count = SIGNS_IN_CODE, found))
            }
            CodeFault::Sign(sign) => f.write_str(&say!(
                "No code holds “{sign}”. Codes are made of digits from 2 to 9 and letters without I, L, O, U and V.",
                sign
            )),
            CodeFault::Mistyped => {
                f.write_str(say!("This code does not check. Look for a wrong sign, or two that were swapped."))
            }
            CodeFault::Newer => {
                f.write_str(say!("This code is from a newer version of the app. Load the app again to update it."))
            }
        }
    }
}

/// Signs of a code: 29, a prime, so that the last sign shows every single wrong one and every two swapped. None looks like another.
const SIGNS: [u8; 29] = *b"23456789ABCDEFGHJKMNPQRSTWXYZ";
/// Signs in a code, the one that checks included.
const SIGNS_IN_CODE: usize = 8;
/// Seeds that a code can name.
const SEEDS: u64 = 1 << 21;

impl Plan {
    /// A run of that seed, of which the lowest 21 bits count.
    pub fn new(seed: u32, topics: Topics, level: Level) -> Plan {
        Plan { seed: (u64::from(seed) % SEEDS) as u32, topics, level }
    }

    /// Which specimens.
    pub fn seed(&self) -> u32 {
        self.seed
    }

    /// About what.
    pub fn topics(&self) -> Topics {
        self.topics
    }

    /// How hard.
    pub fn level(&self) -> Level {
        self.level
    }

    /// The code, as it is handed out: two groups of four signs.
    pub fn code(&self) -> String {
        let level = Level::ALL.iter().position(|level| *level == self.level).unwrap_or_default() as u64;
        let mut rest = (u64::from(self.seed) * 3 + level) * (1 << 10) + u64::from(self.topics.bits());
        let mut digits = [0_u64; SIGNS_IN_CODE];
        for digit in digits[..SIGNS_IN_CODE - 1].iter_mut().rev() {
            (*digit, rest) = (rest % 29, rest / 29);
        }
        digits[SIGNS_IN_CODE - 1] = check(&digits[..SIGNS_IN_CODE - 1]);
        let mut code: String = digits.iter().map(|digit| char::from(SIGNS[*digit as usize])).collect();
        code.insert(SIGNS_IN_CODE / 2, '-');
        code
    }

    /// The run of a code; small letters, spaces and dashes are taken as they come.
    ///
    /// # Errors
    /// [`CodeFault`] says what to look at.
    pub fn of_code(text: &str) -> Result<Plan, CodeFault> {
        let signs: Vec<char> =
            text.chars().filter(|sign| !sign.is_whitespace() && *sign != '-').map(|sign| sign.to_ascii_uppercase()).collect();
        let digits = signs
            .iter()
            .map(|sign| {
                SIGNS.iter().position(|known| char::from(*known) == *sign).map(|place| place as u64).ok_or(CodeFault::Sign(*sign))
            })
            .collect::<Result<Vec<u64>, CodeFault>>()?;
        if digits.len() != SIGNS_IN_CODE {
            return Err(CodeFault::Length { found: digits.len() });
        }
        let (body, last) = digits.split_at(SIGNS_IN_CODE - 1);
        if check(body) != last[0] {
            return Err(CodeFault::Mistyped);
        }
        let number = body.iter().fold(0, |number, digit| number * 29 + digit);
        let (rest, bits) = (number >> 10, (number % (1 << 10)) as u16);
        let topics = Topics::of_bits(bits).ok_or(CodeFault::Newer)?;
        let (seed, level) = (rest / 3, (rest % 3) as usize);
        if seed >= SEEDS {
            return Err(CodeFault::Newer);
        }
        Ok(Plan { seed: seed as u32, topics, level: Level::ALL[level] })
    }
}

/// The sign that makes the weighted sum of all a multiple of 29.
///
/// # Source
/// Weights that all differ, over a prime, find every single error and every swap: as in ISBN-10 (ISO 2108:1992), there over 11.
fn check(digits: &[u64]) -> u64 {
    let sum: u64 = digits.iter().enumerate().map(|(place, digit)| (place as u64 + 2) * digit).sum();
    (29 - sum % 29) % 29
}

#[cfg(test)]
mod tests {
    use super::super::topic::Topic;
    use super::*;

    #[test]
    fn a_code_leads_back_to_its_run() {
        for seed in [0, 1, 77, 4_095, 1_234_567, u32::MAX] {
            for level in Level::ALL {
                for topics in
                    [Topics::ALL, Topics::of(&[Topic::Count]).unwrap(), Topics::of(&[Topic::Whole, Topic::Felled]).unwrap()]
                {
                    let plan = Plan::new(seed, topics, level);
                    assert_eq!(Plan::of_code(&plan.code()), Ok(plan));
                    assert_eq!(Plan::of_code(&plan.code().to_lowercase().replace('-', " ")), Ok(plan));
                    assert_eq!(plan.code().len(), 9);
                }
            }
        }
    }

    #[test]
    fn one_wrong_sign_or_two_swapped_are_found() {
        let code: Vec<char> = Plan::new(987_654, Topics::ALL, Level::Hard).code().chars().filter(|sign| *sign != '-').collect();
        for place in 0..code.len() {
            for sign in SIGNS.map(char::from).into_iter().filter(|sign| *sign != code[place]) {
                let mut wrong = code.clone();
                wrong[place] = sign;
                assert_eq!(Plan::of_code(&wrong.iter().collect::<String>()), Err(CodeFault::Mistyped));
            }
            for other in place + 1..code.len() {
                if code[other] != code[place] {
                    let mut swapped = code.clone();
                    swapped.swap(place, other);
                    assert_eq!(Plan::of_code(&swapped.iter().collect::<String>()), Err(CodeFault::Mistyped));
                }
            }
        }
    }

    #[test]
    fn what_is_no_code_says_why() {
        assert_eq!(Plan::of_code("2345"), Err(CodeFault::Length { found: 4 }));
        assert_eq!(Plan::of_code(""), Err(CodeFault::Length { found: 0 }));
        assert_eq!(Plan::of_code("2345-678O"), Err(CodeFault::Sign('O')));
        assert!(CodeFault::Sign('O').to_string().contains('O'));
    }
}
