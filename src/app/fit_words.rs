//! What the fitting room says: lengths with their spread, ranges, the verdict and what it turns on.

use garment_assay::fit::{Ease, Fate, LineFit, SizeAdvice, Span, Time};
use garment_assay::garment::{FitReport, Missing, Row, Spoken, WashKnown};
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

/// Ease in words: cloth to spare, or less cloth than body.
pub fn ease(span: &Span, system: System) -> String {
    let said = number(span.middle, system);
    let size = about(span.middle, system);
    if said.trim_start_matches('\u{2212}').trim_start_matches('-').trim_matches(['0', '.']).is_empty() {
        "as large as the body".to_owned()
    } else if span.middle > 0.0 {
        format!("{size} more than the body")
    } else {
        format!("{size} less than the body")
    }
}

/// What a cut is meant to have: "2 cm less to 2 cm more than the body".
pub fn meant(wanted: &Ease, system: System) -> String {
    let end = |centimetres: f64| {
        let way = if centimetres < 0.0 { "less" } else { "more" };
        format!("{} {way}", about(centimetres, system))
    };
    if wanted.low < 0.0 && wanted.high > 0.0 {
        format!("{} to {} than the body", end(wanted.low), end(wanted.high))
    } else {
        let (near, far) = if wanted.high > 0.0 { (wanted.low, wanted.high) } else { (wanted.high, wanted.low) };
        format!("{} to {} than the body", number(near.abs(), system), end(far))
    }
}

/// When a moment is.
pub const fn when(time: Time) -> &'static str {
    match time {
        Time::Now => "now",
        Time::Washed => "after the first washes",
        Time::Worn => "washed, then a day’s wear",
    }
}

/// What is missing at a place.
pub fn missing(row: &Row, missing: Missing) -> String {
    let (cloth, body) = (row.point.name.to_lowercase(), row.body.name.to_lowercase());
    match missing {
        Missing::Garment => format!("Measure its {cloth}."),
        Missing::Body => format!("Needs your {body}."),
        Missing::Both => format!("Needs your {body} and its {cloth}."),
    }
}

/// The verdict in a few words. What fits today and not later is said so.
pub fn verdict(report: &FitReport) -> (String, String) {
    let Some(found) = &report.verdict else {
        return ("Not tried yet".to_owned(), "tape or mirror, whichever is at hand".to_owned());
    };
    let later = found.fate == Fate::WillNotFit && fits_today(report);
    let lead = if later { "Will not fit after washing" } else { found.fate.words() };
    let sure = format!("{}, {}", found.sure.words(), percent(found.chances[found.fate as usize]));
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
            match found.fate {
                Fate::Fits => format!("Nearest to its limit: {}, {}.", row.point.name.to_lowercase(), at_last(fit)),
                _ => format!("It turns on the {}: {}{}.", row.point.name.to_lowercase(), at_last(fit), short_by(fit, system)),
            }
        }
        Spoken::Move(one) => format!("It turns on what you saw in the mirror: {}.", one.name.to_lowercase()),
        Spoken::Sign(sign) => format!("It turns on what you saw in the mirror: {}.", sign.name.to_lowercase()),
        Spoken::Mirror => "From the mirror alone.".to_owned(),
        Spoken::Unseen => "Tape and mirror together would say more.".to_owned(),
    })
}

/// How a place sits at last.
fn at_last(fit: &LineFit) -> String {
    let sits = fit.last().sits().words(fit.line.lies);
    if fit.worn.is_some() { format!("{sits} once washed and worn") } else { sits.to_owned() }
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
    fn ease_is_said_of_cloth() {
        let span = |middle| Span { low: middle - 1.0, middle, high: middle + 1.0 };
        assert_eq!(ease(&span(2.1), System::Metric), "2 cm more than the body");
        assert_eq!(ease(&span(-4.9), System::Metric), "5 cm less than the body");
        assert_eq!(ease(&span(0.2), System::Metric), "as large as the body");
        assert_eq!(ease(&span(-0.2), System::Metric), "as large as the body");
    }

    #[test]
    fn what_a_cut_has_is_said_from_end_to_end() {
        let said = |low, high| meant(&Ease { low, high }, System::Metric);
        assert_eq!(said(-2.0, 2.0), "2 cm less to 2 cm more than the body");
        assert_eq!(said(4.0, 8.0), "4 to 8 cm more than the body");
        assert_eq!(said(-14.0, -4.0), "4 to 14 cm less than the body");
    }

    #[test]
    fn another_size_is_named_in_words() {
        assert!(size(SizeAdvice::Up(1)).contains("next size up") && size(SizeAdvice::Up(2)).contains("2 sizes up"));
        assert!(size(SizeAdvice::Down(1)).contains("next size down") && !size(SizeAdvice::Stay).contains("Buy"));
    }
}
