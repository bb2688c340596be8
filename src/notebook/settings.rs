//! What a person chose for all garments: units, currency, look.

use serde_json::{Value, json};

use crate::quantity::System;
use crate::trade::Currency;

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
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Settings {
    /// Metric or imperial.
    pub system: System,
    /// Currency offered first for a ticket.
    pub currency: Currency,
    /// Light or dark.
    pub theme: Theme,
    /// Size of text.
    pub text_size: TextSize,
}

impl Default for Settings {
    fn default() -> Settings {
        Settings { system: System::Metric, currency: Currency::Eur, theme: Theme::default(), text_size: TextSize::default() }
    }
}

impl Settings {
    /// Reads stored settings; whatever is missing or unknown is as by default, since a choice can be made again.
    pub fn read(text: &str) -> Settings {
        let stored: Value = serde_json::from_str(text).unwrap_or_default();
        let word = |name: &str| stored.get(name).and_then(Value::as_str).unwrap_or_default();
        let usual = Settings::default();
        Settings {
            system: match word("system") {
                "imperial" => System::Imperial,
                _ => System::Metric,
            },
            currency: Currency::from_code(word("currency")).unwrap_or(usual.currency),
            theme: Theme::ALL.into_iter().find(|theme| theme.key() == word("theme")).unwrap_or_default(),
            text_size: TextSize::ALL.into_iter().find(|size| size.key() == word("text_size")).unwrap_or_default(),
        }
    }

    /// Writes settings for storage.
    pub fn write(&self) -> String {
        let system = match self.system {
            System::Metric => "metric",
            System::Imperial => "imperial",
        };
        json!({
            "system": system,
            "currency": self.currency.code(),
            "theme": self.theme.key(),
            "text_size": self.text_size.key(),
        })
        .to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn settings_written_are_the_settings_read() {
        for theme in Theme::ALL {
            for text_size in TextSize::ALL {
                for system in [System::Metric, System::Imperial] {
                    let settings = Settings { system, currency: Currency::Jpy, theme, text_size };
                    assert_eq!(Settings::read(&settings.write()), settings);
                }
            }
        }
    }

    #[test]
    fn settings_nobody_can_read_are_the_usual_ones() {
        for text in ["", "{", "[]", "{\"theme\":7}", "null"] {
            assert_eq!(Settings::read(text), Settings::default());
        }
    }
}
