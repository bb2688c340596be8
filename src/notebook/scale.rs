//! A screen's scale as text: kept beside the pages, one for each screen, since it belongs to the device and not to a garment.

use serde_json::{Value, json};

use crate::measure::ScreenScale;

/// Writes a scale for storage.
pub(super) fn write(scale: &ScreenScale) -> String {
    json!({ "px_per_mm": scale.px_per_mm, "relative": scale.relative }).to_string()
}

/// Reads a stored scale; none when it cannot be one, for it can be told again in a minute.
pub(super) fn read(text: &str) -> Option<ScreenScale> {
    let stored: Value = serde_json::from_str(text).ok()?;
    let number = |name: &str| stored.get(name).and_then(Value::as_f64);
    let scale = ScreenScale { px_per_mm: number("px_per_mm")?, relative: number("relative")? };
    (scale.px_per_mm > 0.0 && (0.0..1.0).contains(&scale.relative)).then_some(scale)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scale_written_is_the_scale_read_and_nonsense_is_none() {
        let scale = ScreenScale { px_per_mm: 6.1234, relative: 0.003 };
        assert_eq!(read(&write(&scale)), Some(scale));
        for text in ["", "{}", "7", r#"{"px_per_mm":-1,"relative":0.1}"#, r#"{"px_per_mm":6,"relative":2}"#] {
            assert_eq!(read(text), None, "{text}");
        }
    }
}
