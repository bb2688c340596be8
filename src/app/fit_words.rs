//! What the fitting room says: lengths with their spread, ranges, the verdict and what it turns on.

use garment_assay::fit::{Ease, Fate, LineFit, Sits, SizeAdvice, Span, Time};
use garment_assay::garment::{FitReport, Row, Spoken, WashKnown};
use garment_assay::quantity::{Decimal, System, Unit, written, written_with_spread};

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
    written(own, decimals(system), Decimal::Point)
}

/// A length in centimetres with its spread.
pub fn length(value: f64, spread: f64, system: System) -> String {
    let own = unit(system);
    match (Unit::Centimetre.convert(value, own), Unit::Centimetre.convert(spread, own)) {
        (Some(value), Some(spread)) => written_with_spread(value, spread, own, Decimal::Point),
        _ => written_with_spread(value, spread, Unit::Centimetre, Decimal::Point),
    }
}

/// "78 to 84 cm"; one number where both ends are the same.
pub fn range(span: &Span, system: System) -> String {
    let (low, high) = (number(span.low, system), number(span.high, system));
    if low == high { format!("{low} {}", unit(system).symbol()) } else { format!("{low} to {high} {}", unit(system).symbol()) }
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
pub const fn when(time: Time) -> &'static str {
    match time {
        Time::Now => "now",
        Time::Washed => "washed",
        Time::Worn => "washed and worn",
    }
}

/// The verdict in a few words, and how sure it is. What fits today and not later is said so; what turns on nothing but what nobody looked at
/// is no verdict yet.
pub fn verdict(report: &FitReport) -> (String, String) {
    let Some(found) = &report.verdict else {
        return ("Not tried yet".to_owned(), "tape or mirror, whichever is at hand".to_owned());
    };
    // A per cent sign does not stand alone at the beginning of a line.
    let chance = percent(found.chances[found.fate as usize]).replace(' ', "\u{a0}");
    if found.fate != Fate::Fits && report.decides() == Some(Spoken::Unseen) {
        return ("Too early to say".to_owned(), format!("likeliest: {}, {chance}", found.fate.words().to_lowercase()));
    }
    let later = found.fate == Fate::WillNotFit && fits_today(report);
    let lead = if later { "Will not fit after washing" } else { found.fate.words() };
    let sure = format!("{}, {chance}", found.sure.words());
    (lead.to_owned(), if later { format!("fits now · {sure}") } else { sure })
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
            let name = row.point.name.to_lowercase();
            match found.fate {
                Fate::Fits => format!("Nearest to its limit: {name}, {}.", at_last(fit)),
                _ => format!("It turns on the {name}: {}{}.{}", at_last(fit), short_by(fit, system), job(row, found.fate)),
            }
        }
        Spoken::Move(one) => format!("It turns on a move: {}.", one.name.to_lowercase()),
        Spoken::Sign(sign) => format!("It turns on what you saw: {}.", sign.name.to_lowercase()),
        Spoken::Mirror => "From the mirror alone.".to_owned(),
        Spoken::Unseen => "Tape and mirror together would say more.".to_owned(),
    })
}

/// How a place sits at last.
fn at_last(fit: &LineFit) -> String {
    let sits = fit.last().sits().words(fit.line.lies);
    if fit.worn.is_some() { format!("{sits} once washed and worn") } else { sits.to_owned() }
}

/// What a tailor would do there, where that is the fate.
fn job(row: &Row, fate: Fate) -> String {
    match row.mend.first().filter(|_| fate == Fate::CanBeAltered) {
        Some(job) => format!(" {}: {}.", job.name, job.cost.words()),
        None => String::new(),
    }
}

/// ", by about 3 cm" where something is amiss.
fn short_by(fit: &LineFit, system: System) -> String {
    fit.amiss().map_or_else(String::new, |(_, by)| format!(", by about {}", about(by, system)))
}

/// What the ranges say about the size.
pub fn size(advice: SizeAdvice) -> String {
    let sizes = |count: u8| if count == 1 { "the next size".to_owned() } else { format!("{count} sizes") };
    match advice {
        SizeAdvice::Stay => "The ranges do not say that another size would do better.".to_owned(),
        SizeAdvice::Up(1) => "Buy the next size up: this one ends too tight more often than not, and that one is right four times of five.".to_owned(),
        SizeAdvice::Up(count) => format!("Buy {} up: this one ends too tight more often than not, and that one is right four times of five.", sizes(count)),
        SizeAdvice::Down(count) => {
            let what = if count == 1 { "the next size down".to_owned() } else { format!("{} down", sizes(count)) };
            format!("Buy {what}: this one ends too loose more often than not, and that one is right four times of five.")
        }
        SizeAdvice::NoneNear => {
            "This size is more likely wrong than right, and none within two sizes is right four times of five. Try another cut, or wash it \
             more gently."
                .to_owned()
        }
    }
}

/// The same in a few words, where another size would do better.
pub fn size_briefly(advice: SizeAdvice) -> Option<String> {
    let many = |count: u8| if count == 1 { "the next size".to_owned() } else { format!("{count} sizes") };
    match advice {
        SizeAdvice::Stay => None,
        SizeAdvice::Up(count) => Some(format!("Buy {} up.", many(count))),
        SizeAdvice::Down(count) => Some(format!("Buy {} down.", many(count))),
        SizeAdvice::NoneNear => Some("No size near this one does better.".to_owned()),
    }
}

/// How far the tape has come.
pub fn taped(report: &FitReport) -> String {
    let compared: Vec<(&Row, &LineFit)> = report.rows.iter().filter_map(|row| Some((row, row.fit.as_ref().ok()?))).collect();
    let amiss: Vec<String> = compared
        .iter()
        .filter(|(_, fit)| matches!(fit.now.sits(), Sits::TooTight | Sits::Loose))
        .map(|(row, fit)| format!("{} {}", row.point.name.to_lowercase(), fit.now.sits().words(fit.line.lies)))
        .collect();
    match (compared.len(), amiss.as_slice()) {
        (0, _) => "nothing compared yet".to_owned(),
        (count, []) => format!("{count} of {} compared", report.rows.len()),
        (_, amiss) => format!("now: {}", amiss.join(", ")),
    }
}

/// How the wash was taken into account, where it was not.
pub const fn wash(known: WashKnown) -> Option<&'static str> {
    match known {
        WashKnown::Yes => None,
        WashKnown::NoCloth => Some("Say what the cloth is, and the table tells what washing and wearing will change."),
        WashKnown::Felts => {
            Some("Untreated wool may felt in this wash, and felt has no limit to name: nothing is said of later.")
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
