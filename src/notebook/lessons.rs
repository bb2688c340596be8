//! Which lessons were read, as one text.

use serde_json::{Value, json};

use crate::learn::Marks;

/// Writes them for storage.
pub(super) fn write(marks: &Marks) -> String {
    json!({ "read": marks.each().collect::<Vec<_>>() }).to_string()
}

/// Reads them. What is no mark is left out: a lesson read twice is no loss.
pub(super) fn read(text: &str) -> Marks {
    let stored: Value = serde_json::from_str(text).unwrap_or_default();
    let marks = stored.get("read").and_then(Value::as_array).cloned().unwrap_or_default();
    Marks::of(marks.iter().filter_map(Value::as_str).map(str::to_owned))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_written_are_the_marks_read_and_what_is_none_is_left_out() {
        let marks = Marks::of(["a/b", "a/c", "later/one"].map(str::to_owned));
        assert_eq!(read(&write(&marks)), marks);
        for text in ["", "{", "[]", "{\"read\":7}", "{\"read\":[7,\"\",null]}"] {
            assert!(read(text).is_empty(), "{text}");
        }
    }
}
