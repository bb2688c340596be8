//! Which lessons were read.

use std::collections::BTreeSet;

use super::lesson::Lesson;
use super::subject::Subject;

/// Most marks that are taken from storage: ten times the lessons there are.
const MOST: usize = 2000;
/// Longest mark that is taken from storage, in bytes.
const LONGEST: usize = 120;

/// Lessons that were read, by the keys of subject and check. Marks of lessons that this version does not know stay among them, so that
/// opening an older version loses nothing.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Marks(BTreeSet<String>);

fn mark(subject: &str, check: &str) -> String {
    format!("{subject}/{check}")
}

impl Marks {
    /// Marks as they were stored; what is no mark is left out.
    pub fn of(marks: impl IntoIterator<Item = String>) -> Marks {
        let sound = |mark: &String| mark.len() <= LONGEST && mark.split('/').filter(|part| !part.is_empty()).count() == 2;
        Marks(marks.into_iter().filter(sound).take(MOST).collect())
    }

    /// Each mark, as it is stored.
    pub fn each(&self) -> impl Iterator<Item = &str> {
        self.0.iter().map(String::as_str)
    }

    /// Whether that lesson was read.
    pub fn has(&self, lesson: &Lesson) -> bool {
        self.0.contains(&mark(lesson.subject.key(), lesson.check.key))
    }

    /// With that lesson read, or not read.
    pub fn with(mut self, lesson: &Lesson, read: bool) -> Marks {
        let mark = mark(lesson.subject.key(), lesson.check.key);
        if read {
            self.0.insert(mark);
        } else {
            self.0.remove(&mark);
        }
        self
    }

    /// How many lessons of the subject were read; those of checks that it no longer has do not count.
    pub fn count(&self, subject: Subject) -> usize {
        subject.checks().iter().filter(|check| self.0.contains(&mark(subject.key(), check.key))).count()
    }

    /// Whether nothing was read.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_nobody_made_are_left_out_and_unknown_ones_stay() {
        let given = ["a/b", "moon/dust", "a", "/", "a/b/c", ""].map(str::to_owned);
        let marks = Marks::of(given.into_iter().chain(["x/".to_owned() + &"y".repeat(LONGEST)]));
        assert_eq!(marks.each().collect::<Vec<_>>(), ["a/b", "moon/dust"]);
        assert_eq!(Marks::of((0..5000).map(|place| format!("a/{place}"))).each().count(), MOST);
    }
}
