//! Which language is spoken, and its messages.

use std::cell::{Cell, RefCell};
use std::collections::HashSet;
use std::fmt::{self, Write};

use super::{Language, Messages};

thread_local! {
    static LANGUAGE: Cell<Language> = const { Cell::new(Language::English) };
    static MESSAGES: RefCell<Held> = RefCell::default();
}

/// Messages that live as long as the program, so that what is said can be handed on like the literal it stands for.
#[derive(Default)]
struct Held {
    messages: Messages,
    /// What was handed out: each text once, however often it is said and however often the language changes.
    given: HashSet<&'static str>,
}

impl Held {
    fn given(&mut self, text: &str) -> &'static str {
        match self.given.get(text) {
            Some(given) => given,
            None => {
                let kept: &'static str = Box::leak(text.to_owned().into_boxed_str());
                self.given.insert(kept);
                kept
            }
        }
    }
}

/// From now on this thread speaks that language, by those messages. What they lack is said in English.
pub fn speak(language: Language, messages: Messages) {
    LANGUAGE.set(language);
    MESSAGES.with_borrow_mut(|held| held.messages = messages);
}

/// The language that this thread speaks.
pub fn spoken() -> Language {
    LANGUAGE.get()
}

/// What is said for an English sentence. What does not change in it stays as it is; [`say!`](crate::say!) is the shorter form for sentences in code.
pub fn said(english: &'static str) -> &'static str {
    if spoken() != Language::English
        && let Some(said) = MESSAGES.with_borrow_mut(|held| {
            let said = held.messages.get(english)?.to_owned();
            Some(held.given(&said))
        })
    {
        return said;
    }
    plain(english)
}

/// A sentence without the words that tell its sense.
fn plain(english: &'static str) -> &'static str {
    english.split_once('\u{4}').map_or(english, |(_, plain)| plain)
}

/// What is said for an English sentence, with the values put in by their names. A name in braces for which there is no value stays.
pub fn filled(english: &'static str, values: &[(&str, &dyn fmt::Display)]) -> String {
    let mut rest = said(english);
    let mut out = String::with_capacity(rest.len() + 16);
    while let Some((before, after)) = rest.split_once('{') {
        out.push_str(before);
        let named =
            after.split_once('}').and_then(|(name, after)| Some((values.iter().find(|(known, _)| *known == name)?, after)));
        match named {
            Some(((_, value), after)) => {
                // Writing to a text cannot fail; a value whose Display fails is left out.
                let _ = write!(out, "{value}");
                rest = after;
            }
            None => {
                out.push('{');
                rest = after;
            }
        }
    }
    out + rest
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{say, to_say};

    fn german(messages: &[(&str, &str)]) {
        let text: String = messages.iter().map(|(english, said)| format!("msgid \"{english}\"\nmsgstr \"{said}\"\n")).collect();
        speak(Language::German, Messages::read(&text).unwrap());
    }

    #[test]
    fn what_has_no_message_is_said_in_english() {
        german(&[("Seam", "Naht")]);
        assert_eq!([say!("Seam"), say!("Hem"), said(to_say!("Seam"))], ["Naht", "Hem", "Naht"]);
        speak(Language::English, Messages::default());
        assert_eq!(say!("Seam"), "Seam");
    }

    #[test]
    fn values_go_where_the_language_wants_them() {
        german(&[("{part} of {whole}", "von {whole}: {part}")]);
        let part = 3;
        assert_eq!(say!("{part} of {whole}", part, whole = "acht"), "von acht: 3");
        assert_eq!(say!("{open and {what} {part}", part), "{open and {what} 3");
    }

    #[test]
    fn a_value_that_looks_like_a_name_stays_a_value() {
        assert_eq!(say!("{a} {b}", a = "{b}", b = 2), "{b} 2");
    }

    #[test]
    fn the_sense_is_never_shown() {
        assert_eq!(say!("screen" | "Light"), "Light");
        assert_eq!(say!("of the rack" | "{count} light", count = 2), "2 light");
        assert_eq!(said(to_say!("screen" | "Light")), "Light");
    }
}
