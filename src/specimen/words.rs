//! Text alternatives put together from few parts.

use super::pen::{clamp, write_tenths};
use crate::language::{filled, one, spoken};

/// A list of things seen, separated by commas.
pub(super) struct Words(String);

impl Words {
    /// Nothing said yet.
    pub(super) fn new() -> Words {
        Words(String::new())
    }

    /// Adds a part.
    pub(super) fn and(&mut self, part: &str) {
        if !self.0.is_empty() {
            self.0.push_str(", ");
        }
        self.0.push_str(part);
    }

    /// Adds a part if it holds.
    pub(super) fn and_if(&mut self, holds: bool, part: &str) {
        if holds {
            self.and(part);
        }
    }

    /// Adds a count of something, none included: two sentences marked by `to_say!`, with `{count}` in them.
    pub(super) fn count(&mut self, count: u8, single: &'static str, many: &'static str) {
        self.and(&filled(if one(usize::from(count)) { single } else { many }, &[("count", &count)]));
    }

    /// Adds a count of something unless there is none.
    pub(super) fn and_count(&mut self, count: u8, single: &'static str, many: &'static str) {
        if count > 0 {
            self.count(count, single, many);
        }
    }

    /// Adds a number to one decimal: a sentence marked by `to_say!`, with `{number}` in it.
    pub(super) fn number(&mut self, value: f64, sentence: &'static str) {
        let mut number = String::new();
        write_tenths(&mut number, (clamp(value, -9999.0, 9999.0) * 10.0).round() as i32);
        self.and(&filled(sentence, &[("number", &number.replace('.', &spoken().decimal_sign().to_string()))]));
    }

    /// What was said.
    pub(super) fn done(self) -> String {
        self.0
    }
}
