//! What was answered in practice, as one text: the latest trials, from which skill is worked out anew.

use serde_json::{Value, json};

use crate::practice::{Topic, Trial};

/// Most trials kept: skill of a topic hardly moves after forty.
pub const MOST_TRIALS: usize = 400;

/// Writes the latest trials for storage.
pub(super) fn write(trials: &[Trial]) -> String {
    let latest = &trials[trials.len().saturating_sub(MOST_TRIALS)..];
    let written: Vec<Value> = latest
        .iter()
        .map(|trial| json!({ "topic": trial.topic.key(), "difficulty": trial.difficulty, "blind": trial.blind, "right": trial.right }))
        .collect();
    json!({ "trials": written }).to_string()
}

/// Reads them. A trial that cannot be read is left out: it is one answer of hundreds, and nothing hangs on it.
pub(super) fn read(text: &str) -> Vec<Trial> {
    let stored: Value = serde_json::from_str(text).unwrap_or_default();
    let trial = |value: &Value| {
        let number = |name: &str| value.get(name).and_then(Value::as_f64).filter(|number| number.is_finite());
        Some(Trial {
            topic: Topic::from_key(value.get("topic")?.as_str()?)?,
            difficulty: number("difficulty")?,
            blind: number("blind").filter(|blind| (0.0..=1.0).contains(blind))?,
            right: value.get("right")?.as_bool()?,
        })
    };
    stored.get("trials").and_then(Value::as_array).map(|all| all.iter().filter_map(trial).collect()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn trials(count: usize) -> Vec<Trial> {
        (0..count)
            .map(|place| Trial {
                topic: Topic::ALL[place % Topic::ALL.len()],
                difficulty: place as f64 / 7.0 - 1.0,
                blind: 0.25,
                right: place % 3 == 0,
            })
            .collect()
    }

    #[test]
    fn trials_written_are_the_trials_read_and_the_oldest_go_first() {
        assert_eq!(read(&write(&trials(30))), trials(30));
        let many = trials(MOST_TRIALS + 25);
        assert_eq!(read(&write(&many)), many[25..]);
    }

    #[test]
    fn what_cannot_be_read_is_left_out() {
        for text in ["", "{", "[]", "{\"trials\":7}", "{\"trials\":[7,{\"topic\":\"moon\"}]}"] {
            assert!(read(text).is_empty(), "{text}");
        }
        let text = r#"{"trials":[{"topic":"count","difficulty":1e999,"blind":0.1,"right":true},
            {"topic":"count","difficulty":1,"blind":0.1,"right":true},{"topic":"count","difficulty":1,"blind":7,"right":true}]}"#;
        assert!(read(text).len() <= 1);
        let text = text.replace("1e999", "0");
        assert_eq!(read(&text).len(), 2);
    }
}
