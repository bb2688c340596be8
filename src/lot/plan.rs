//! How many pieces of a lot to look at, and how many bad ones among them still pass.

use crate::say;
use std::fmt;

/// Pieces in a lot: two or more, for a single piece is no lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct LotSize(u32);

/// Why a number is no lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LotFault {
    /// None or one.
    TooFew,
}

impl fmt::Display for LotFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            LotFault::TooFew => f.write_str(say!("A lot has two pieces or more. Give the number of pieces offered together.")),
        }
    }
}

impl LotSize {
    /// A lot of so many pieces.
    ///
    /// # Errors
    /// [`LotFault::TooFew`] below two.
    pub const fn new(pieces: u32) -> Result<LotSize, LotFault> {
        if pieces < 2 { Err(LotFault::TooFew) } else { Ok(LotSize(pieces)) }
    }

    /// Pieces.
    pub const fn pieces(self) -> u32 {
        self.0
    }
}

/// How closely a lot is looked at: the general levels, II as a rule, and the special ones for what is dear to test.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// Special level S-1.
    S1,
    /// Special level S-2.
    S2,
    /// Special level S-3.
    S3,
    /// Special level S-4.
    S4,
    /// General level I: fewer pieces.
    I,
    /// General level II: as a rule.
    II,
    /// General level III: more pieces.
    III,
}

impl Level {
    /// All of them, in the order of the table.
    pub const ALL: [Level; 7] = [Level::S1, Level::S2, Level::S3, Level::S4, Level::I, Level::II, Level::III];

    /// Name on the screen and in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Level::S1 => "S-1",
            Level::S2 => "S-2",
            Level::S3 => "S-3",
            Level::S4 => "S-4",
            Level::I => "I",
            Level::II => "II",
            Level::III => "III",
        }
    }

    /// The level of that name.
    pub fn from_key(key: &str) -> Option<Level> {
        Level::ALL.into_iter().find(|level| level.key() == key)
    }
}

/// The share of bad pieces, in per cent, up to which a steady supply mostly passes: the acceptance quality limit. The preferred values that
/// clothes are bought by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Aql {
    /// 0.65 per cent.
    P065,
    /// 1.0 per cent.
    P1,
    /// 1.5 per cent.
    P15,
    /// 2.5 per cent: usual for major defects.
    P25,
    /// 4.0 per cent: usual for minor defects.
    P4,
    /// 6.5 per cent.
    P65,
}

impl Aql {
    /// All of them, smallest first.
    pub const ALL: [Aql; 6] = [Aql::P065, Aql::P1, Aql::P15, Aql::P25, Aql::P4, Aql::P65];

    /// Name on the screen and in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Aql::P065 => "0.65",
            Aql::P1 => "1.0",
            Aql::P15 => "1.5",
            Aql::P25 => "2.5",
            Aql::P4 => "4.0",
            Aql::P65 => "6.5",
        }
    }

    /// The limit of that name.
    pub fn from_key(key: &str) -> Option<Aql> {
        Aql::ALL.into_iter().find(|aql| aql.key() == key)
    }

    /// As a share from 0 to 1.
    pub const fn share(self) -> f64 {
        match self {
            Aql::P065 => 0.0065,
            Aql::P1 => 0.01,
            Aql::P15 => 0.015,
            Aql::P25 => 0.025,
            Aql::P4 => 0.04,
            Aql::P65 => 0.065,
        }
    }
}

/// A code letter, which stands for a sample size; letters I and O are not used.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Letter(u8);

const LETTERS: [char; 16] = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'K', 'L', 'M', 'N', 'P', 'Q', 'R'];
const SAMPLES: [u32; 16] = [2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000];

/// The largest lot of each row of table 1; the last row has no end.
const LOTS: [u32; 14] = [8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10_000, 35_000, 150_000, 500_000];
/// Table 1: the letters of each level, row by row.
const CODES: [&[u8; 15]; 7] = [
    b"AAAABBBBCCCCDDD",
    b"AAABBBCCCDDDEEE",
    b"AABBCCDDEEFFGGH",
    b"AABCCDEEFGGHJJK",
    b"AABCCDEFGHJKLMN",
    b"ABCDEFGHJKLMNPQ",
    b"BCDEFGHJKLMNPQR",
];

impl Letter {
    /// The letter of a lot at a level, by table 1 of ISO 2859-1.
    pub fn of(lot: LotSize, level: Level) -> Letter {
        let row = LOTS.iter().position(|most| lot.0 <= *most).unwrap_or(LOTS.len());
        let code = CODES[level as usize][row];
        Letter(LETTERS.iter().position(|letter| *letter as u8 == code).unwrap_or(0) as u8)
    }

    /// The letter as it is written.
    pub fn written(self) -> char {
        LETTERS[usize::from(self.0)]
    }

    /// Pieces to look at.
    pub fn sample(self) -> u32 {
        SAMPLES[usize::from(self.0)]
    }
}

/// Which way the table sends one from a letter that has no plan of its own at a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Arrow {
    /// To a smaller sample.
    Up,
    /// To a larger sample.
    Down,
}

/// What to do with a lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Plan {
    /// The letter that lot size and level give.
    pub asked: Letter,
    /// The letter whose plan is used.
    pub letter: Letter,
    /// Which way the table sent from the one to the other; none where they are the same.
    pub arrow: Option<Arrow>,
    /// Pieces to look at; never more than the lot has.
    pub sample: u32,
    /// So many bad pieces still pass.
    pub accept: u32,
    /// From so many on it fails.
    pub reject: u32,
    /// The sample would be as large as the lot, so every piece is looked at.
    pub whole: bool,
}

/// Accept numbers along the diagonals of table 2-A, from the first that has a plan; one more bad piece fails.
const ACCEPT: [Option<u32>; 11] =
    [Some(0), None, None, Some(1), Some(2), Some(3), Some(5), Some(7), Some(10), Some(14), Some(21)];
/// The diagonal, letter and limit counted from 0, on which none may be bad. Below it the table sends down, past the last one up.
const FIRST: usize = 5;

/// The plan for a lot: single sampling, normal inspection.
///
/// # Formula
/// Table 1 gives the letter. In table 2-A plans lie on diagonals, for each next letter is worth as much as each next limit; the two
/// diagonals after the one on which none may be bad hold an arrow up and an arrow down. The sample size of the letter that the arrow leads to
/// is used, not that of the letter one came from.
///
/// # Source
/// ISO 2859-1, tables 1 and 2-A.
///
/// # Example
/// ```
/// use garment_assay::lot::{Aql, Arrow, Level, LotSize, plan};
/// let plan = plan(LotSize::new(200).unwrap(), Level::II, Aql::P1);
/// // Letter G has no plan at 1.0 per cent: the arrow leads down to H.
/// assert_eq!((plan.asked.written(), plan.letter.written(), plan.arrow), ('G', 'H', Some(Arrow::Down)));
/// assert_eq!((plan.sample, plan.accept, plan.reject), (50, 1, 2));
/// ```
pub fn plan(lot: LotSize, level: Level, aql: Aql) -> Plan {
    let asked = Letter::of(lot, level);
    let column = aql as usize;
    let mut letter = asked;
    let mut arrow = None;
    // Two steps at the most for an arrow inside the table, more past its ends.
    let accept = loop {
        let diagonal = usize::from(letter.0) + column;
        let way = match diagonal.checked_sub(FIRST).map(|past| (past, ACCEPT.get(past))) {
            Some((_, Some(Some(accept)))) => break *accept,
            None | Some((2, _)) => Arrow::Down,
            Some(_) => Arrow::Up,
        };
        arrow = Some(way);
        letter = Letter(match way {
            Arrow::Down => letter.0 + 1,
            Arrow::Up => letter.0.saturating_sub(1),
        });
    };
    let whole = letter.sample() >= lot.0;
    Plan { asked, letter, arrow, sample: letter.sample().min(lot.0), accept, reject: accept + 1, whole }
}
