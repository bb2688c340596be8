//! One or many.

use super::{Language, spoken};

/// Whether so many things are spoken of as one in the language that is spoken: 1 in English and German, 0 and 1 in French.
///
/// The sentence for one names the number too (`{count} photograph`), since it may be said of none.
///
/// # Source
/// Unicode CLDR, plural rules, cardinal, category "one" for whole numbers; `tests/languages.rs` holds it to the browser's own table.
pub fn one(count: usize) -> bool {
    match spoken() {
        Language::English | Language::German => count == 1,
        Language::French => count < 2,
    }
}
