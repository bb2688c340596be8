//! What a person chose for all garments: units, currency, look, and the rates behind build-ups.

use serde_json::{Map, Value, json};

use crate::cost::{Edit, Market, Range, Rates};
use crate::garment::every_rate;
use crate::quantity::System;
use crate::trade::{Currency, Day};

/// Light, dark, or as the device says.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Theme {
    /// As the device is set.
    #[default]
    Device,
    /// Light, for shops and windows.
    Light,
    /// Dark, for dim fitting rooms.
    Dark,
}

impl Theme {
    /// All choices.
    pub const ALL: [Theme; 3] = [Theme::Device, Theme::Light, Theme::Dark];

    /// Name in storage and in the style sheets.
    pub const fn key(self) -> &'static str {
        match self {
            Theme::Device => "device",
            Theme::Light => "light",
            Theme::Dark => "dark",
        }
    }
}

/// How large text is, beside the device's own setting.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum TextSize {
    /// As designed.
    #[default]
    Usual,
    /// A quarter larger.
    Larger,
    /// Half as large again.
    Large,
    /// Twice as large.
    Double,
}

impl TextSize {
    /// All sizes, smallest first.
    pub const ALL: [TextSize; 4] = [TextSize::Usual, TextSize::Larger, TextSize::Large, TextSize::Double];

    /// Per cent, also its name in storage and in the style sheets.
    pub const fn key(self) -> &'static str {
        match self {
            TextSize::Usual => "100",
            TextSize::Larger => "125",
            TextSize::Large => "150",
            TextSize::Double => "200",
        }
    }
}

/// The choices.
#[derive(Clone, Debug, PartialEq)]
pub struct Settings {
    /// Metric or imperial.
    pub system: System,
    /// Currency offered first for a ticket.
    pub currency: Currency,
    /// Light or dark.
    pub theme: Theme,
    /// Size of text.
    pub text_size: TextSize,
    /// The market, and what was changed of its rates.
    pub rates: Rates,
    /// What this version cannot read of the stored rates: a key and its JSON text, written back as it was. A market stands under
    /// [`Settings::MARKET`].
    pub aside: Vec<(String, String)>,
}

impl Default for Settings {
    fn default() -> Settings {
        let currency = Currency::Eur;
        Settings {
            system: System::Metric,
            currency,
            theme: Theme::default(),
            text_size: TextSize::default(),
            rates: Rates::of(Market::of_currency(currency).unwrap_or_default()),
            aside: Vec::new(),
        }
    }
}

/// One edit as it is stored: three numbers in the rate's own unit, and the day.
fn edit_read(stored: &Value) -> Option<Edit> {
    let number = |name: &str| stored.get(name).and_then(Value::as_f64);
    let range = Range::new(number("low")?, number("usual")?, number("high")?);
    // What a newer version adds to an edit would be lost in writing it again: it is left as it is.
    let plain = stored.as_object()?.keys().all(|name| ["low", "usual", "high", "as_of"].contains(&name.as_str()));
    let as_of = Day::parse(stored.get("as_of")?.as_str()?)?;
    plain.then_some(Edit { range, as_of })
}

fn edit_written(edit: &Edit) -> Value {
    json!({ "low": edit.range.low, "usual": edit.range.usual, "high": edit.range.high, "as_of": edit.as_of.to_string() })
}

impl Settings {
    /// The name under which a market that cannot be read is laid aside.
    pub const MARKET: &str = "market";

    /// Reads stored settings; whatever is missing or unknown of units and look is as by default, since a choice can be made again. Rates took
    /// work: what cannot be read of them is kept aside. Without a market it is that of the currency.
    pub fn read(text: &str) -> Settings {
        let stored: Value = serde_json::from_str(text).unwrap_or_default();
        let word = |name: &str| stored.get(name).and_then(Value::as_str).unwrap_or_default();
        let usual = Settings::default();
        let currency = Currency::from_code(word("currency")).unwrap_or(usual.currency);
        let mut aside: Vec<(String, String)> = Vec::new();
        let market = stored.get(Settings::MARKET);
        let known = market.and_then(Value::as_str).and_then(Market::from_key);
        if let (Some(market), None) = (market, known) {
            aside.push((Settings::MARKET.to_owned(), market.to_string()));
        }
        let (rates, left) =
            Settings::rates_read(known.or(Market::of_currency(currency)).unwrap_or_default(), stored.get("rates"));
        aside.extend(left);
        Settings {
            system: match word("system") {
                "imperial" => System::Imperial,
                _ => System::Metric,
            },
            currency,
            theme: Theme::ALL.into_iter().find(|theme| theme.key() == word("theme")).unwrap_or_default(),
            text_size: TextSize::ALL.into_iter().find(|size| size.key() == word("text_size")).unwrap_or_default(),
            rates,
            aside,
        }
    }

    /// The rates as stored, and what could not be read of them.
    fn rates_read(market: Market, stored: Option<&Value>) -> (Rates, Vec<(String, String)>) {
        let Some(stored) = stored.and_then(Value::as_object) else { return (Rates::of(market), Vec::new()) };
        let mut aside: Vec<(String, String)> = Vec::new();
        let mut edits: Vec<(&str, Edit)> = Vec::new();
        for (key, value) in stored {
            match edit_read(value) {
                Some(edit) => edits.push((key, edit)),
                None => aside.push((key.clone(), value.to_string())),
            }
        }
        let (rates, left) = Rates::of_stored(market, edits, every_rate());
        aside.extend(left.into_iter().filter_map(|(key, _)| Some((key.to_owned(), stored.get(key)?.to_string()))));
        (rates, aside)
    }

    /// With other rates. An edit made here takes the place of one laid aside under its key, and a market chosen here that of one laid aside.
    pub fn with_rates(&self, rates: Rates) -> Settings {
        let edited: Vec<&str> = rates.edits().map(|(key, _)| key).collect();
        let moved = rates.market() != self.rates.market();
        let stays = |key: &str| if key == Settings::MARKET { !moved } else { !edited.contains(&key) };
        let aside = self.aside.iter().filter(|(key, _)| stays(key)).cloned().collect();
        Settings { rates, aside, ..self.clone() }
    }

    /// Writes settings for storage.
    pub fn write(&self) -> String {
        let system = match self.system {
            System::Metric => "metric",
            System::Imperial => "imperial",
        };
        let mut market = Value::from(self.rates.market().key());
        let mut rates: Map<String, Value> = self.rates.edits().map(|(key, edit)| (key.to_owned(), edit_written(&edit))).collect();
        for (key, text) in &self.aside {
            let Ok(value) = serde_json::from_str(text) else { continue };
            if key == Settings::MARKET {
                market = value;
            } else if !rates.contains_key(key) {
                rates.insert(key.clone(), value);
            }
        }
        json!({
            "system": system,
            "currency": self.currency.code(),
            "theme": self.theme.key(),
            "text_size": self.text_size.key(),
            "market": market,
            "rates": rates,
        })
        .to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cost::OVERHEAD;

    fn day() -> Day {
        Day::new(2026, 11, 25).expect("a day")
    }

    #[test]
    fn settings_written_are_the_settings_read() {
        for theme in Theme::ALL {
            for text_size in TextSize::ALL {
                for system in [System::Metric, System::Imperial] {
                    let settings = Settings { system, currency: Currency::Jpy, theme, text_size, ..Settings::default() };
                    assert_eq!(Settings::read(&settings.write()), settings);
                }
            }
        }
    }

    #[test]
    fn settings_nobody_can_read_are_the_usual_ones() {
        for text in ["", "{", "[]", "{\"theme\":7}", "null", "{\"rates\":7}"] {
            assert_eq!(Settings::read(text), Settings::default());
        }
    }

    #[test]
    fn settings_from_before_there_were_rates_take_the_market_of_their_currency() {
        let market = |currency: &str| Settings::read(&format!("{{\"currency\":\"{currency}\"}}")).rates.market();
        assert_eq!(market("JPY"), Market::Japan);
        assert_eq!(market("USD"), Market::UnitedStates);
        // No market is known for the franc.
        assert_eq!(market("CHF"), Market::UnitedStates);
    }

    #[test]
    fn a_rate_that_was_changed_is_read_as_it_was_written() {
        for market in Market::ALL {
            let rates = Rates::of(market).with(&OVERHEAD, Range::new(0.031, 0.1, 0.2), day());
            let settings = Settings::default().with_rates(rates);
            assert_eq!(Settings::read(&settings.write()), settings);
            assert!(settings.rates.acting(&OVERHEAD).edited);
        }
    }

    #[test]
    fn what_a_newer_version_wrote_among_the_rates_is_written_back_as_it_was() {
        let text = r#"{"market":"moon","rates":{"overhead":{"low":1,"usual":2,"high":3,"as_of":"2026-11-25"},
            "glue":{"low":1.5,"usual":2.5,"high":3.5,"as_of":"2026-11-25"},"thread":{"low":3,"usual":2,"high":1,"as_of":"2026-11-25"},
            "labels":"dear","zip":{"low":1,"usual":2,"high":3,"as_of":"2026-11-25","why":"a new maker"}}}"#;
        let settings = Settings::read(text);
        assert_eq!(settings.rates.edits().count(), 1);
        assert_eq!(settings.aside.len(), 5);
        let written: Value = serde_json::from_str(&settings.write()).expect("JSON");
        let stored: Value = serde_json::from_str(text).expect("JSON");
        assert_eq!(written["market"], stored["market"]);
        for key in ["glue", "thread", "labels", "zip"] {
            assert_eq!(written["rates"][key], stored["rates"][key], "{key}");
        }
        assert_eq!(Settings::read(&settings.write()), settings);
    }

    #[test]
    fn what_is_chosen_here_takes_the_place_of_what_could_not_be_read() {
        let settings = Settings::read(r#"{"market":"moon","rates":{"overhead":"dear","glue":1}}"#);
        let rates = settings.rates.with(&OVERHEAD, Range::exactly(0.2), day());
        let edited = settings.with_rates(rates.clone());
        assert_eq!(edited.aside.iter().map(|(key, _)| key.as_str()).collect::<Vec<_>>(), ["market", "glue"]);
        let moved = edited.with_rates(rates.in_market(Market::India));
        assert_eq!(moved.aside.iter().map(|(key, _)| key.as_str()).collect::<Vec<_>>(), ["glue"]);
        assert_eq!(Settings::read(&moved.write()).rates, moved.rates);
    }
}
