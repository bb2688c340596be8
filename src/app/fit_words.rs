//! What the fitting room says: lengths with their spread, ranges, the verdict and what it turns on.

use garment_assay::fit::{Ease, Fate, LineFit, Sits, SizeAdvice, Span, Time};
use garment_assay::garment::{FitReport, Row, Spoken, WashKnown};
use garment_assay::language::within;
use garment_assay::quantity::{Decimal, System, Unit, written, written_with_spread};
use garment_assay::say;

use super::words::percent;

/// The unit in which lengths are shown.
pub fn unit(system: System) -> Unit {
    Unit::Centimetre.in_system(system)
}

/// Decimals of a length: a tenth of an inch or half a centimetre is less than a tape knows.
fn decimals(system: System) -> u8 {
    match system {
        System::Metric => 0,
        System::Imperial => 1,
    }
}

/// A number of centimetres in the person's unit, without it.
fn number(centimetres: f64, system: System) -> String {
    let own = Unit::Centimetre.convert(centimetres, unit(system)).unwrap_or(centimetres);
    written(own, decimals(system), Decimal::spoken())
}

/// A length in centimetres with its spread.
pub fn length(value: f64, spread: f64, system: System) -> String {
    let own = unit(system);
    match (Unit::Centimetre.convert(value, own), Unit::Centimetre.convert(spread, own)) {
        (Some(value), Some(spread)) => written_with_spread(value, spread, own, Decimal::spoken()),
        _ => written_with_spread(value, spread, Unit::Centimetre, Decimal::spoken()),
    }
}

/// "78 to 84 cm"; one number where both ends are the same.
pub fn range(span: &Span, system: System) -> String {
    let (low, high) = (number(span.low, system), number(span.high, system));
    if low == high {
        format!("{low} {}", unit(system).symbol())
    } else {
        say!("{low} to {high} {unit}", low, high, unit = unit(system).symbol())
    }
}

/// About how much, without its sign.
pub fn about(centimetres: f64, system: System) -> String {
    format!("{} {}", number(centimetres.abs(), system), unit(system).symbol())
}

/// What a cut is meant to have: "−2 to 2 cm".
pub fn meant(wanted: &Ease, system: System) -> String {
    range(&Span { low: wanted.low, middle: 0.5 * (wanted.low + wanted.high), high: wanted.high }, system)
}

/// When a moment is.
pub fn when(time: Time) -> &'static str {
    match time {
        Time::Now => say!("now"),
        Time::Washed => say!("washed"),
        Time::Worn => say!("washed and worn"),
    }
}

/// The verdict in a few words, and how sure it is. What fits today and not later is said so; what turns on nothing but what nobody looked at
/// is no verdict yet.
pub fn verdict(report: &FitReport) -> (String, String) {
    let Some(found) = &report.verdict else {
        return (say!("Not tried yet").to_owned(), say!("tape or mirror, whichever is at hand").to_owned());
    };
    // A per cent sign does not stand alone at the beginning of a line.
    let chance = percent(found.chances[found.fate as usize]).replace(' ', "\u{a0}");
    if found.fate != Fate::Fits && report.decides() == Some(Spoken::Unseen) {
        return (
            say!("Too early to say").to_owned(),
            say!("likeliest: {fate}, {chance}", fate = within(found.fate.words()), chance),
        );
    }
    let later = found.fate == Fate::WillNotFit && fits_today(report);
    let lead = if later { say!("Will not fit after washing") } else { found.fate.words() };
    let sure = format!("{}, {chance}", found.sure.words());
    (lead.to_owned(), if later { format!("{} · {sure}", say!("fits now")) } else { sure })
}

/// Whether what decides is a place that is well today.
fn fits_today(report: &FitReport) -> bool {
    match report.decides() {
        Some(Spoken::Row(place)) => report
            .rows
            .get(place)
            .and_then(|row| row.fit.as_ref().ok())
            .is_some_and(|fit| fit.worn.is_some() && fit.now.chances[0] < 0.5),
        _ => false,
    }
}

/// What the verdict turns on, in a sentence.
pub fn turns_on(report: &FitReport, system: System) -> Option<String> {
    let found = report.verdict?;
    Some(match report.decides()? {
        Spoken::Row(place) => {
            let row = report.rows.get(place)?;
            let fit = row.fit.as_ref().ok()?;
            let place = within(row.point.name());
            match found.fate {
                Fate::Fits => say!("Nearest to its limit: {place}, {sits}.", place, sits = at_last(fit)),
                fate => {
                    let sits = at_last(fit);
                    let said = match fit.amiss() {
                        None => say!("It turns on the {place}: {sits}.", place, sits),
                        Some((_, by)) => {
                            say!("It turns on the {place}: {sits}, by about {length}.", place, sits, length = about(by, system))
                        }
                    };
                    said + &job(row, fate)
                }
            }
        }
        Spoken::Move(one) => say!("It turns on a move: {motion}.", motion = within(one.name())),
        Spoken::Sign(sign) => say!("It turns on what you saw: {sign}.", sign = within(sign.name())),
        Spoken::Mirror => say!("From the mirror alone.").to_owned(),
        Spoken::Unseen => say!("Tape and mirror together would say more.").to_owned(),
    })
}

/// How a place sits at last.
fn at_last(fit: &LineFit) -> String {
    let sits = fit.last().sits().words(fit.line.lies);
    if fit.worn.is_some() { say!("{sits} once washed and worn", sits) } else { sits.to_owned() }
}

/// What a tailor would do there, where that is the fate.
fn job(row: &Row, fate: Fate) -> String {
    match row.mend.first().filter(|_| fate == Fate::CanBeAltered) {
        Some(job) => format!(" {}: {}.", job.name(), job.cost.words()),
        None => String::new(),
    }
}

/// What the ranges say about the size.
pub fn size(advice: SizeAdvice) -> String {
    match advice {
        SizeAdvice::Stay => say!("The ranges do not say that another size would do better.").to_owned(),
        SizeAdvice::Up(1) => say!("Buy the next size up: this one ends too tight more often than not, and that one is right four times of five.").to_owned(),
        SizeAdvice::Up(count) => say!("Buy {count} sizes up: this one ends too tight more often than not, and that one is right four times of five.", count),
        SizeAdvice::Down(1) => say!("Buy the next size down: this one ends too loose more often than not, and that one is right four times of five.").to_owned(),
        SizeAdvice::Down(count) => say!("Buy {count} sizes down: this one ends too loose more often than not, and that one is right four times of five.", count),
        SizeAdvice::NoneNear => {
            say!(
                "This size is more likely wrong than right, and none within two sizes is right four times of five. Try another cut, or wash it \
                 more gently."
            )
            .to_owned()
        }
    }
}

/// The same in a few words, where another size would do better.
pub fn size_briefly(advice: SizeAdvice) -> Option<String> {
    match advice {
        SizeAdvice::Stay => None,
        SizeAdvice::Up(1) => Some(say!("Buy the next size up.").to_owned()),
        SizeAdvice::Up(count) => Some(say!("Buy {count} sizes up.", count)),
        SizeAdvice::Down(1) => Some(say!("Buy the next size down.").to_owned()),
        SizeAdvice::Down(count) => Some(say!("Buy {count} sizes down.", count)),
        SizeAdvice::NoneNear => Some(say!("No size near this one does better.").to_owned()),
    }
}

/// How far the tape has come.
pub fn taped(report: &FitReport) -> String {
    let compared: Vec<(&Row, &LineFit)> = report.rows.iter().filter_map(|row| Some((row, row.fit.as_ref().ok()?))).collect();
    let amiss: Vec<String> = compared
        .iter()
        .filter(|(_, fit)| matches!(fit.now.sits(), Sits::TooTight | Sits::Loose))
        .map(|(row, fit)| say!("{place} {sits}", place = within(row.point.name()), sits = fit.now.sits().words(fit.line.lies)))
        .collect();
    match (compared.len(), amiss.as_slice()) {
        (0, _) => say!("nothing compared yet").to_owned(),
        (count, []) => say!("{count} of {all} compared", count, all = report.rows.len()),
        (_, amiss) => say!("now: {places}", places = amiss.join(", ")),
    }
}

/// How the wash was taken into account, where it was not.
pub fn wash(known: WashKnown) -> Option<&'static str> {
    match known {
        WashKnown::Yes => None,
        WashKnown::NoCloth => Some(say!("Say what the cloth is, and the table tells what washing and wearing will change.")),
        WashKnown::Felts => {
            Some(say!("Untreated wool may felt in this wash, and felt has no limit to name: nothing is said of later."))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_and_ranges_are_said_in_the_persons_unit() {
        let span = Span { low: 78.2, middle: 81.0, high: 83.8 };
        assert_eq!(range(&span, System::Metric), "78 to 84 cm");
        assert_eq!(range(&span, System::Imperial), "30.8 to 33.0 in");
        assert_eq!(range(&Span { low: 81.1, middle: 81.2, high: 81.3 }, System::Metric), "81 cm");
        assert_eq!(about(-3.2, System::Metric), "3 cm");
    }

    #[test]
    fn what_a_cut_has_is_said_from_end_to_end() {
        let said = |low, high| meant(&Ease { low, high }, System::Metric);
        assert_eq!(said(-2.0, 2.0), "−2 to 2 cm");
        assert_eq!(said(4.0, 8.0), "4 to 8 cm");
        assert_eq!(said(-14.0, -4.0), "−14 to −4 cm");
    }

    #[test]
    fn another_size_is_named_in_words() {
        assert!(size(SizeAdvice::Up(1)).contains("next size up") && size(SizeAdvice::Up(2)).contains("2 sizes up"));
        assert!(size(SizeAdvice::Down(1)).contains("next size down") && !size(SizeAdvice::Stay).contains("Buy"));
        assert_eq!(size_briefly(SizeAdvice::Up(1)).as_deref(), Some("Buy the next size up."));
        assert_eq!(size_briefly(SizeAdvice::Down(2)).as_deref(), Some("Buy 2 sizes down."));
        assert_eq!(size_briefly(SizeAdvice::Stay), None);
    }
}
