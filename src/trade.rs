//! The trade's nouns that every room speaks: bands, aspects, stages, days, tickets. No rules about them live here.

use crate::language::said;
use crate::{say, to_say};
use std::fmt;

/// How well a garment is made for its kind, among new pieces of its family on general sale; five bands, worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Band {
    /// Clearly below what its kind needs.
    Poor,
    /// Made down to a cost; works, with plain savings.
    Basic,
    /// What one may expect of the kind.
    Sound,
    /// Clearly above what its kind needs.
    Fine,
    /// Rare: nearly everything that can be done well is.
    Exceptional,
}

impl Band {
    /// All bands, worst first.
    pub const ALL: [Band; 5] = [Band::Poor, Band::Basic, Band::Sound, Band::Fine, Band::Exceptional];

    /// Borders between the bands, in standard deviations of quality among new garments of the family. They cut the market into 6.7, 24.2,
    /// 38.3, 24.2 and 6.7 per cent. Judgement.
    pub const BORDERS: [f64; 4] = [-1.5, -0.5, 0.5, 1.5];

    /// The band in which a quality lies; one on a border lies in the better.
    pub fn of(quality: f64) -> Band {
        Band::ALL[Band::BORDERS.iter().filter(|border| quality >= **border).count()]
    }

    /// The word on the screen and on the sheet.
    pub fn name(self) -> &'static str {
        said(self.english())
    }

    /// The same in English, as tables hold it whatever is spoken.
    pub const fn english(self) -> &'static str {
        match self {
            Band::Poor => to_say!("Poor"),
            Band::Basic => to_say!("Basic"),
            Band::Sound => to_say!("Sound"),
            Band::Fine => to_say!("Fine"),
            Band::Exceptional => to_say!("Exceptional"),
        }
    }

    /// Place in [`Band::ALL`], 0 to 4.
    pub const fn index(self) -> usize {
        self as usize
    }
}

/// Two questions are put to a garment, each with five bands of its own; an answer speaks to one of them and never to both.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Question {
    /// How well it is made.
    Make,
    /// What is left in it, after whoever wore it before.
    Left,
}

impl Question {
    /// The words on the screen.
    pub fn name(self) -> &'static str {
        match self {
            Question::Make => say!("How well made"),
            Question::Left => say!("What is left in it"),
        }
    }

    /// The word for a band of that question. Of 100 second-hand pieces 7, 24, 38, 24 and 7 are taken to lie in those of
    /// [`Question::Left`], as of 100 new ones in those of [`Question::Make`]: the borders are [`Band::BORDERS`]. Judgement.
    pub fn word(self, band: Band) -> &'static str {
        said(self.english_word(band))
    }

    /// The same in English, as tables hold it whatever is spoken.
    pub const fn english_word(self, band: Band) -> &'static str {
        match (self, band) {
            (Question::Make, band) => band.english(),
            (Question::Left, Band::Poor) => to_say!("Worn out"),
            (Question::Left, Band::Basic) => to_say!("Little left"),
            (Question::Left, Band::Sound) => to_say!("Some life"),
            (Question::Left, Band::Fine) => to_say!("Much left"),
            (Question::Left, Band::Exceptional) => to_say!("As new"),
        }
    }
}

/// What a check looks at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Aspect {
    /// The cloth itself: hand, density, give, flaws.
    Cloth,
    /// How it is sewn: seams, stitching, stress points.
    Making,
    /// What was done after sewing: wash, fade, abrasion, pressing.
    Finish,
    /// What is added: closures, buttons, rivets, pocketing, labels.
    Trims,
    /// Cut and balance: twist, pairs, how it sits.
    Shape,
}

impl Aspect {
    /// All aspects in the order in which screens list them.
    pub const ALL: [Aspect; 5] = [Aspect::Cloth, Aspect::Making, Aspect::Finish, Aspect::Trims, Aspect::Shape];

    /// The word on the screen.
    pub fn name(self) -> &'static str {
        said(self.english())
    }

    /// The same in English, as tables hold it whatever is spoken.
    pub const fn english(self) -> &'static str {
        match self {
            Aspect::Cloth => to_say!("Cloth"),
            Aspect::Making => to_say!("Making"),
            Aspect::Finish => to_say!("Finish"),
            Aspect::Trims => to_say!("Trims"),
            Aspect::Shape => to_say!("Shape"),
        }
    }
}

/// How the garment is held while a check is made; checks are grouped by it so that nobody turns a garment twice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stage {
    /// Hanging as found.
    OnTheHanger,
    /// Taken down, right side out.
    InHand,
    /// Turned inside out.
    InsideOut,
    /// Tried on.
    Worn,
}

impl Stage {
    /// All stages in the order in which a person usually meets them.
    pub const ALL: [Stage; 4] = [Stage::OnTheHanger, Stage::InHand, Stage::InsideOut, Stage::Worn];

    /// The word on the screen.
    pub fn name(self) -> &'static str {
        match self {
            Stage::OnTheHanger => say!("On the hanger"),
            Stage::InHand => say!("In hand"),
            Stage::InsideOut => say!("Inside out"),
            Stage::Worn => say!("tried on, not used up" | "Worn"),
        }
    }

    /// Seconds it takes to bring a garment into this stage from the one before. Judgement, not measured.
    pub const fn seconds_to_reach(self) -> f64 {
        match self {
            Stage::OnTheHanger => 0.0,
            Stage::InHand => 3.0,
            Stage::InsideOut => 12.0,
            Stage::Worn => 120.0,
        }
    }
}

impl Stage {
    /// Seconds to bring a garment from the stage it is in into this one: turning it out or putting it on, and first turning it back or
    /// taking it off where that is needed. Judgement, not measured.
    pub const fn seconds_from(self, from: Stage) -> f64 {
        let leaving = match from {
            Stage::OnTheHanger | Stage::InHand => 0.0,
            Stage::InsideOut => 12.0,
            Stage::Worn => 60.0,
        };
        match (from, self) {
            (Stage::OnTheHanger, Stage::OnTheHanger)
            | (Stage::InHand, Stage::InHand)
            | (Stage::InsideOut, Stage::InsideOut)
            | (Stage::Worn, Stage::Worn) => 0.0,
            (_, Stage::OnTheHanger) => leaving + Stage::InHand.seconds_to_reach(),
            (_, to) => leaving + to.seconds_to_reach(),
        }
    }
}

/// A calendar day in the Gregorian calendar, handed in by whoever has a clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day {
    year: u16,
    month: u8,
    day: u8,
}

impl Day {
    /// The day of that date, or none when the calendar has no such day. Years 1 to 9999.
    pub const fn new(year: u16, month: u8, day: u8) -> Option<Day> {
        let leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
        let last = match month {
            1 | 3 | 5 | 7 | 8 | 10 | 12 => 31,
            4 | 6 | 9 | 11 => 30,
            2 if leap => 29,
            2 => 28,
            _ => return None,
        };
        if year == 0 || year > 9999 || day == 0 || day > last {
            return None;
        }
        Some(Day { year, month, day })
    }

    /// Reads the extended calendar date of ISO 8601, `2026-11-25`, and nothing else.
    pub fn parse(text: &str) -> Option<Day> {
        let mut parts = text.split('-');
        let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
        let digits = |part: &str, width: usize| part.len() == width && part.bytes().all(|b| b.is_ascii_digit());
        if parts.next().is_some() || !digits(year, 4) || !digits(month, 2) || !digits(day, 2) {
            return None;
        }
        Day::new(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?)
    }

    /// Year, month 1 to 12, day of the month 1 to 31.
    pub const fn parts(self) -> (u16, u8, u8) {
        (self.year, self.month, self.day)
    }

    /// Days from another day to this one by the Gregorian calendar; below nought if that one is later.
    pub fn days_since(self, earlier: Day) -> i32 {
        self.place() - earlier.place()
    }

    /// Days since the eve of a March 1 in a year nought: years that begin in March have their leap day at their end.
    fn place(self) -> i32 {
        let (year, month, day) = (i32::from(self.year), i32::from(self.month), i32::from(self.day));
        let (year, since_march) = if month >= 3 { (year, month - 3) } else { (year - 1, month + 9) };
        // From March on the months have 31, 30, 31, 30, 31 days and again: 153 in five.
        year * 365 + year / 4 - year / 100 + year / 400 + (since_march * 153 + 2) / 5 + day
    }
}

impl fmt::Display for Day {
    /// Writes the extended calendar date of ISO 8601.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

/// A currency by its ISO 4217 code, with the number of decimals that the standard gives its minor unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Currency {
    /// United States dollar.
    Usd,
    /// Euro.
    Eur,
    /// Pound sterling.
    Gbp,
    /// Indian rupee.
    Inr,
    /// Japanese yen.
    Jpy,
    /// Swiss franc.
    Chf,
    /// Swedish krona.
    Sek,
    /// Danish krone.
    Dkk,
    /// Norwegian krone.
    Nok,
    /// Polish zloty.
    Pln,
    /// Turkish lira.
    Try,
    /// Canadian dollar.
    Cad,
    /// Australian dollar.
    Aud,
    /// Renminbi yuan.
    Cny,
    /// Won of the Republic of Korea.
    Krw,
    /// Brazilian real.
    Brl,
    /// Mexican peso.
    Mxn,
    /// South African rand.
    Zar,
}

impl Currency {
    /// All currencies offered, the commonest tickets first.
    pub const ALL: [Currency; 18] = [
        Currency::Usd,
        Currency::Eur,
        Currency::Gbp,
        Currency::Inr,
        Currency::Jpy,
        Currency::Chf,
        Currency::Sek,
        Currency::Dkk,
        Currency::Nok,
        Currency::Pln,
        Currency::Try,
        Currency::Cad,
        Currency::Aud,
        Currency::Cny,
        Currency::Krw,
        Currency::Brl,
        Currency::Mxn,
        Currency::Zar,
    ];

    /// The ISO 4217 code.
    pub const fn code(self) -> &'static str {
        match self {
            Currency::Usd => "USD",
            Currency::Eur => "EUR",
            Currency::Gbp => "GBP",
            Currency::Inr => "INR",
            Currency::Jpy => "JPY",
            Currency::Chf => "CHF",
            Currency::Sek => "SEK",
            Currency::Dkk => "DKK",
            Currency::Nok => "NOK",
            Currency::Pln => "PLN",
            Currency::Try => "TRY",
            Currency::Cad => "CAD",
            Currency::Aud => "AUD",
            Currency::Cny => "CNY",
            Currency::Krw => "KRW",
            Currency::Brl => "BRL",
            Currency::Mxn => "MXN",
            Currency::Zar => "ZAR",
        }
    }

    /// The currency of an ISO 4217 code, if it is offered.
    pub fn from_code(code: &str) -> Option<Currency> {
        Currency::ALL.into_iter().find(|currency| currency.code() == code)
    }

    /// Decimals of the minor unit (ISO 4217): 0 for yen and won, 2 for the rest.
    pub const fn decimals(self) -> u32 {
        match self {
            Currency::Jpy | Currency::Krw => 0,
            _ => 2,
        }
    }

    /// So many of its smallest unit, in whole units.
    pub fn whole(self, minor: u64) -> f64 {
        minor as f64 / 10_f64.powi(self.decimals() as i32)
    }

    /// An amount in whole units, to the nearest of its smallest unit; nothing for what lies below nothing or is no number.
    pub fn minor(self, whole: f64) -> u64 {
        (whole * 10_f64.powi(self.decimals() as i32)).round() as u64
    }
}

/// Which price a ticket states.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum PriceKind {
    /// What a shopper pays.
    #[default]
    Retail,
    /// What a shop pays.
    Wholesale,
}

/// The price on the garment. The amount is in the currency's minor unit, so that no ticket is ever a rounded fraction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Ticket {
    /// Amount in minor units (cents, pence, paise; yen as they are).
    pub minor: u64,
    /// Currency of the amount.
    pub currency: Currency,
    /// Retail or wholesale.
    pub kind: PriceKind,
    /// Entered face down: kept, but not shown until the person has guessed.
    pub face_down: bool,
}

/// Whose name is on a garment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Name {
    /// None, or the shop's own label.
    StoreLabel,
    /// A name that most people know.
    Known,
    /// A name that asks for more.
    Premium,
    /// A designer's or a luxury house's.
    Designer,
}

impl Name {
    /// All, cheapest first.
    pub const ALL: [Name; 4] = [Name::StoreLabel, Name::Known, Name::Premium, Name::Designer];

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Name::StoreLabel => "store-label",
            Name::Known => "known",
            Name::Premium => "premium",
            Name::Designer => "designer",
        }
    }

    /// The name of that key.
    pub fn from_key(key: &str) -> Option<Name> {
        Name::ALL.into_iter().find(|name| name.key() == key)
    }

    /// The words on the screen.
    pub fn words(self) -> &'static str {
        match self {
            Name::StoreLabel => say!("no name, or the shop’s own label"),
            Name::Known => say!("a known name"),
            Name::Premium => say!("a premium name"),
            Name::Designer => say!("a designer’s name"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_between_dates_are_those_of_the_calendar() {
        // Python 3.11, datetime.date(...) - datetime.date(...).
        let rows = [
            ((2026, 11, 26), (2026, 11, 12), 14),
            ((2028, 3, 1), (2028, 2, 28), 2),
            ((2100, 3, 1), (2100, 2, 28), 1),
            ((2000, 3, 1), (1999, 3, 1), 366),
            ((2026, 1, 1), (2025, 12, 31), 1),
            ((1, 1, 1), (9999, 12, 31), -3_652_058),
        ];
        for ((y, m, d), (year, month, day), days) in rows {
            let (late, early) = (Day::new(y, m, d).expect("a day"), Day::new(year, month, day).expect("a day"));
            assert_eq!(late.days_since(early), days, "{late} {early}");
        }
        // Each day of four centuries follows the one before.
        let mut before = Day::new(1900, 1, 1).expect("a day");
        for year in 1900..2300 {
            for month in 1..=12 {
                for day in (1..=31)
                    .filter_map(|day| Day::new(year, month, day))
                    .filter(|day| *day != Day { year: 1900, month: 1, day: 1 })
                {
                    assert_eq!(day.days_since(before), 1, "{day}");
                    before = day;
                }
            }
        }
    }
}
