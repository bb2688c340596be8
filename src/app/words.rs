//! What the app says: headlines, amounts, how sure. Sentences that belong to one check stand in the catalog.

use garment_assay::check::Check;
use garment_assay::garment::{Answer, Appraisal, Garment};
use garment_assay::language::{Language, grouped, money, one, spoken, within};
use garment_assay::measure::{Also, Instrument, Outcome};
use garment_assay::quantity::{Decimal, System, Unit, written, written_with_spread};
use garment_assay::say;
use garment_assay::trade::{Band, Currency, PriceKind, Ticket};

/// The band and how sure it is, in two strengths of voice and aloud.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Headline {
    /// The large word.
    pub lead: String,
    /// The line beside it.
    pub rest: String,
}

impl Headline {
    /// What a screen reader says after an answer.
    pub fn aloud(&self) -> String {
        format!("{}, {}.", self.lead, self.rest)
    }
}

/// A band alone is named from this probability on.
const ONE_BAND: f64 = 0.6;
/// A run of bands is named when it holds this much.
pub const RUN: f64 = 0.8;
/// A band below this is spoken of as ruled out.
const RULED_OUT: f64 = 0.05;

/// Says what the evidence says, and never more.
pub fn headline(appraisal: &Appraisal) -> Headline {
    let headed = |lead: &str, rest: String| Headline { lead: lead.to_owned(), rest };
    if appraisal.evidence() == 0 {
        return headed(say!("Not checked yet"), say!("every band is open").to_owned());
    }
    let word = |band: Band| appraisal.word(band);
    let bands = appraisal.bands();
    let (likely, sure) = appraisal.likely();
    let run = appraisal.run(RUN);
    if sure >= ONE_BAND {
        let others: Vec<&str> = run.bands().filter(|band| *band != likely).map(word).collect();
        let sure = say!("{share} sure", share = percent(sure));
        let rest =
            if others.is_empty() { sure } else { format!("{sure} · {}", say!("could be {bands}", bands = joined(&others))) };
        return headed(word(likely), rest);
    }
    let named: Vec<&str> = run.bands().map(word).collect();
    if named.len() <= 2 {
        return headed(&joined(&named), say!("{share} sure", share = percent(run.mass)));
    }
    let out: Vec<&str> =
        [Band::Poor, Band::Exceptional].into_iter().filter(|band| bands[band.index()] < RULED_OUT).map(word).collect();
    let rest = if out.is_empty() {
        say!("every band is still open").to_owned()
    } else {
        format!("{} · {}", say!("hardly {bands}", bands = joined(&out)), say!("{band} is likeliest", band = word(likely)))
    };
    headed(say!("Too early to say"), rest)
}

/// "A", "A or B", "A, B or C".
pub fn joined(words: &[&str]) -> String {
    match words {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [first @ .., last] => say!("{first} or {last}", first = first.join(", "), last),
    }
}

/// A probability in whole per cents; never a plain 0 or 100, which nobody knows.
pub fn percent(probability: f64) -> String {
    let whole = (probability * 100.0).round();
    if whole < 1.0 {
        say!("under 1 %").to_owned()
    } else if whole > 99.0 {
        say!("over 99 %").to_owned()
    } else {
        format!("{} %", whole as u8)
    }
}

/// A length of time as people say it.
pub fn duration(seconds: f64) -> String {
    if seconds < 50.0 {
        let tens = ((seconds / 5.0).ceil() * 5.0).max(5.0) as u32;
        format!("{tens} s")
    } else {
        say!("{minutes} min", minutes = (seconds / 60.0).round().max(1.0) as u32)
    }
}

/// How strongly something moved the result, in the words a person would use for so many steps of a band.
pub fn strength(points: f64) -> &'static str {
    let size = points.abs();
    let up = points > 0.0;
    match (size, up) {
        (size, _) if size < 0.03 => say!("hardly moved it"),
        (size, true) if size < 0.15 => say!("a little up"),
        (size, false) if size < 0.15 => say!("a little down"),
        (size, true) if size < 0.4 => say!("the band moved" | "up"),
        (size, false) if size < 0.4 => say!("the band moved" | "down"),
        (_, true) => say!("far up"),
        (_, false) => say!("far down"),
    }
}

/// Names of bands as they are written within a sentence: small, where the language has small names.
pub fn bands_within(bands: &str) -> String {
    match spoken() {
        Language::German => bands.to_owned(),
        Language::English | Language::French => bands.to_lowercase(),
    }
}

/// Where a quality stands, in words.
pub fn place(quality: f64) -> String {
    bands_within(Band::of(quality).name())
}

/// A reading with its spread in the unit that its check speaks, and in the person's own where that is another.
pub fn outcome(outcome: &Outcome, unit: Unit, system: System) -> String {
    let said = written_with_spread(outcome.value, outcome.uncertainty, unit, Decimal::spoken());
    let own = unit.in_system(system);
    match (unit.convert(outcome.value, own), unit.convert(outcome.uncertainty, own)) {
        (Some(value), Some(spread)) if own != unit => {
            format!("{said} · {} {}", self::value(value, spread), own.symbol())
        }
        _ => said,
    }
}

/// A further result of the same readings, in the person's units.
pub fn also(also: &Also, system: System) -> String {
    let own = also.unit.in_system(system);
    match (also.unit.convert(also.value, own), also.unit.convert(also.uncertainty, own)) {
        (Some(value), Some(spread)) => written_with_spread(value, spread, own, Decimal::spoken()),
        _ => written_with_spread(also.value, also.uncertainty, also.unit, Decimal::spoken()),
    }
}

/// A value to the place that its spread deserves.
pub fn value(value: f64, spread: f64) -> String {
    written_with_spread(value, spread, Unit::Count, Decimal::spoken()).split(" ±").next().unwrap_or_default().to_owned()
}

/// The spread of a stitch density per inch, and the density per cm.
pub fn spread_and_per_cm(density: f64, spread: f64) -> String {
    let both = written_with_spread(density, spread, Unit::Count, Decimal::spoken());
    let spread_said = both.split("± ").nth(1).unwrap_or_default();
    format!("± {spread_said} · {}", say!("{density} per cm", density = value(density / 2.54, spread / 2.54)))
}

/// Which input most of the spread comes from.
pub fn budget(outcome: &Outcome, instrument: &Instrument) -> String {
    let named = outcome.budget.first().and_then(|(key, share)| Some((instrument.input(key)?.1.name(), *share)));
    match named {
        Some((_, share)) if share > 0.999 => String::new(),
        Some((name, share)) => say!("{share} of this spread comes from: {input}.", share = percent(share), input = within(name)),
        None => String::new(),
    }
}

/// The answer to a check in a few words; empty when it has none.
pub fn answer(garment: &Garment, check: &'static Check, system: System) -> String {
    match garment.answer(check) {
        None => String::new(),
        Some(Answer::Skipped) => say!("skipped for now").to_owned(),
        Some(Answer::CannotTell) => say!("can’t tell").to_owned(),
        Some(Answer::Judged { level, .. }) => check.level(level).map_or(String::new(), |(_, level)| level.name().to_owned()),
        Some(Answer::Measured(readings)) => match readings.outcome() {
            Ok(reading) => outcome(&reading, readings.instrument.unit, system),
            Err(_) => say!("measured, but the readings say nothing").to_owned(),
        },
    }
}

/// The amount on a ticket with its currency.
pub fn amount(ticket: &Ticket) -> String {
    minor(ticket.minor, ticket.currency)
}

/// So many of a currency's smallest unit, with the currency; no decimals where they are all zero.
pub fn minor(minor: u64, currency: Currency) -> String {
    let unit = 10_u64.pow(currency.decimals());
    if minor.is_multiple_of(unit) {
        money(currency.code(), grouped(&(minor / unit).to_string()))
    } else {
        to_the_cent(minor, currency)
    }
}

/// The same with its decimals, zero or not.
pub fn to_the_cent(minor: u64, currency: Currency) -> String {
    let decimals = currency.decimals();
    let unit = 10_u64.pow(decimals);
    let (whole, part) = (minor / unit, minor % unit);
    let digits = if decimals == 0 { whole.to_string() } else { format!("{whole}.{part:0width$}", width = decimals as usize) };
    money(currency.code(), grouped(&digits))
}

/// A ticket in words, hidden while it lies face down.
pub fn ticket(ticket: &Ticket) -> String {
    if ticket.face_down {
        return say!("face down").to_owned();
    }
    match ticket.kind {
        PriceKind::Retail => amount(ticket),
        PriceKind::Wholesale => say!("{amount} wholesale", amount = amount(ticket)),
    }
}

/// "1 photograph", "3 photographs".
pub fn photographs(count: usize) -> String {
    if one(count) { say!("{count} photograph", count) } else { say!("{count} photographs", count) }
}

/// A number of bytes as a person thinks of it, in thousands and millions.
pub fn size(bytes: f64) -> String {
    match bytes {
        bytes if bytes < 999_500.0 => say!("{size} KB", size = (bytes / 1e3).ceil()),
        bytes if bytes < 9.95e6 => say!("{size} MB", size = written(bytes / 1e6, 1, Decimal::spoken())),
        bytes => say!("{size} MB", size = written(bytes / 1e6, 0, Decimal::spoken())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nobody_is_ever_wholly_sure() {
        assert_eq!(percent(0.9999), "over 99 %");
        assert_eq!(percent(0.0001), "under 1 %");
        assert_eq!(percent(0.634), "63 %");
    }

    #[test]
    fn amounts_keep_their_minor_unit() {
        let ticket = |minor, currency| Ticket { minor, currency, kind: PriceKind::Retail, face_down: false };
        assert_eq!(amount(&ticket(8990, Currency::Eur)), "EUR\u{a0}89.90");
        assert_eq!(amount(&ticket(123_456_700, Currency::Inr)), "INR\u{a0}1,234,567");
        assert_eq!(amount(&ticket(24_000, Currency::Jpy)), "JPY\u{a0}24,000");
    }
}
