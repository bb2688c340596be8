//! Text alternatives put together from few parts.

use super::pen::{clamp, write_tenths};

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

    /// Adds a count of something, none included.
    pub(super) fn count(&mut self, count: u8, one: &str, many: &str) {
        self.number(f64::from(count), if count == 1 { one } else { many });
    }

    /// Adds a count of something unless there is none.
    pub(super) fn and_count(&mut self, count: u8, one: &str, many: &str) {
        if count > 0 {
            self.count(count, one, many);
        }
    }

    /// Adds a number with its unit, to one decimal.
    pub(super) fn number(&mut self, value: f64, unit: &str) {
        self.and("");
        write_tenths(&mut self.0, (clamp(value, -9999.0, 9999.0) * 10.0).round() as i32);
        self.0.push(' ');
        self.0.push_str(unit);
    }

    /// What was said.
    pub(super) fn done(self) -> String {
        self.0
    }
}
