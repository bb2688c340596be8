//! Rates as people read and type them: shares in per cent, three numbers that make a range.

use garment_assay::cost::{Range, RateUnit};
use garment_assay::quantity::{Decimal, Unit, read, written_exactly};
use garment_assay::say;

/// What a rate is shown and typed in.
pub fn unit(unit: RateUnit) -> &'static str {
    match unit {
        RateUnit::Share => say!("per cent"),
        other => other.words(),
    }
}

/// Units shown for one of the library's.
fn factor(unit: RateUnit) -> f64 {
    if unit == RateUnit::Share { 100.0 } else { 1.0 }
}

fn number(unit: RateUnit, amount: f64) -> String {
    written_exactly(amount * factor(unit), 4, Decimal::spoken())
}

/// "1.9 – 3.3, usually 2.5"; one number where the ends are the same.
pub fn in_words(unit: RateUnit, range: &Range) -> String {
    if range.low == range.high {
        return number(unit, range.usual);
    }
    say!(
        "{low} – {high}, usually {usual}",
        low = number(unit, range.low),
        high = number(unit, range.high),
        usual = number(unit, range.usual)
    )
}

/// What is typed into the three fields of a rate, not yet a range.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    /// Low, usual, high, as typed.
    pub typed: [String; 3],
}

impl Draft {
    /// Fields that show a range.
    pub fn of(unit: RateUnit, range: &Range) -> Draft {
        Draft { typed: [range.low, range.usual, range.high].map(|amount| number(unit, amount)) }
    }

    /// With another text in one field.
    pub fn with(mut self, place: usize, text: String) -> Draft {
        if let Some(typed) = self.typed.get_mut(place) {
            *typed = text;
        }
        self
    }

    /// The range that the fields say, or a sentence about what is wrong. A field that still shows what `now` is gives that to the last
    /// digit, also where fewer were shown.
    pub fn range(&self, unit: RateUnit, now: &Range) -> Result<Range, String> {
        let amount = |place: usize, name: &str, before: f64| {
            let text = self.typed[place].trim();
            if text == number(unit, before) {
                return Ok(before);
            }
            let bare = text.trim_end_matches('%').trim_end();
            let typed = read(bare, Unit::Count, Decimal::spoken()).map_err(|fault| format!("{name}: {}", fault.sentence()))?;
            Ok::<f64, String>(typed.number / factor(unit))
        };
        let (low, usual, high) = (
            amount(0, say!("low end" | "Low"), now.low)?,
            amount(1, say!("middle" | "Usual"), now.usual)?,
            amount(2, say!("high end" | "High"), now.high)?,
        );
        if high > MOST {
            return Err(say!("That is more than any rate here can be. Check the number of digits.").to_owned());
        }
        Range::checked(low, usual, high).map_err(|fault| fault.to_string())
    }
}

/// No rate is larger: beyond it prices would not fit on the screen. Judgement.
const MOST: f64 = 1e6;

#[cfg(test)]
mod tests {
    use super::*;

    fn typed(unit: RateUnit, texts: [&str; 3]) -> Result<Range, String> {
        Draft { typed: texts.map(str::to_owned) }.range(unit, &Range::new(0.03, 0.045, 0.07))
    }

    #[test]
    fn shares_are_read_and_written_in_per_cent() {
        assert_eq!(in_words(RateUnit::Share, &Range::new(0.03, 0.045, 0.07)), "3 – 7, usually 4.5");
        let range = typed(RateUnit::Share, ["4", "5,5 %", "1/2"]).unwrap_err();
        assert!(range.contains("smallest first"), "{range}");
        let range = typed(RateUnit::Share, ["4", "5,5 %", "6.5"]).expect("a range");
        assert!((range.usual - 0.055).abs() < 1e-12 && (range.high - 0.065).abs() < 1e-12);
    }

    #[test]
    fn a_field_that_was_not_touched_keeps_every_digit() {
        let exact = Range::new(0.001_234_567, 0.002_345_678, 0.003_456_789);
        assert_eq!(Draft::of(RateUnit::Share, &exact).range(RateUnit::Share, &exact), Ok(exact));
        let draft = Draft::of(RateUnit::Share, &exact).with(2, "1".to_owned());
        assert_eq!(draft.range(RateUnit::Share, &exact).map(|range| (range.low, range.high)), Ok((exact.low, 0.01)));
    }

    #[test]
    fn what_cannot_be_a_rate_says_why() {
        for texts in [
            ["", "2", "3"],
            ["1", "dear", "3"],
            ["3", "2", "1"],
            ["-1", "2", "3"],
            ["0", "2", "3"],
            ["1", "2", "3e9"],
            ["1", "2", "9999999"],
        ] {
            let sentence = typed(RateUnit::Times, texts).expect_err("no range");
            assert!(sentence.ends_with('.'), "{sentence}");
        }
    }

    #[test]
    fn one_number_stands_alone() {
        assert_eq!(in_words(RateUnit::ForOneUsd, &Range::exactly(1.0)), "1");
    }
}
