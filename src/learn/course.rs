//! The lessons of a subject in an order.

use crate::grading::Tables;
use crate::trade::Stage;

use super::lesson::Lesson;
use super::subject::Subject;
use super::text::Texts;

/// So many of the most telling checks stand before all others, whatever way the garment is held for them.
pub const FIRST: usize = 5;

/// A stretch of a course.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// How the garment is held for its checks; none for the first part, the most telling of all.
    pub stage: Option<Stage>,
    /// Its lessons, the most telling in a second first, those that speak of cost only last.
    pub lessons: Vec<Lesson>,
}

/// The course of a subject.
#[derive(Clone, Debug, PartialEq)]
pub struct Course {
    /// What it is about.
    pub subject: Subject,
    /// Its parts, none of them empty.
    pub parts: Vec<Part>,
}

impl Course {
    /// The course of a subject: first the five checks that tell most in a second, so that somebody who stops there has learned those;
    /// then the others by how the garment is held.
    pub fn of(subject: Subject, tables: &Tables) -> Course {
        let mut lessons: Vec<Lesson> =
            subject.checks().into_iter().map(|check| Lesson::unranked(subject, check, tables)).collect();
        let worth = |lesson: &Lesson| lesson.telling.as_ref().map_or(-1.0, |telling| telling.bits_per_second);
        // A stable sort: of equals, and of those that speak of cost, the earlier in the list stands first.
        lessons.sort_by(|one, other| worth(other).total_cmp(&worth(one)));
        let of = lessons.iter().filter(|lesson| lesson.telling.is_some()).count();
        for (place, lesson) in lessons.iter_mut().enumerate().take(of) {
            lesson.rank = Some((place + 1, of));
        }
        let rest = lessons.split_off(FIRST.min(of));
        let mut parts = vec![Part { stage: None, lessons }];
        for stage in Stage::ALL {
            let lessons = rest.iter().filter(|lesson| lesson.check.stage == stage).cloned().collect();
            parts.push(Part { stage: Some(stage), lessons });
        }
        parts.retain(|part| !part.lessons.is_empty());
        Course { subject, parts }
    }

    /// All lessons in order.
    pub fn lessons(&self) -> impl Iterator<Item = &Lesson> {
        self.parts.iter().flat_map(|part| &part.lessons)
    }

    /// The lesson of the check of that key, with its place from 0.
    pub fn lesson(&self, check: &str) -> Option<(usize, &Lesson)> {
        self.lessons().enumerate().find(|(_, lesson)| lesson.check.key == check)
    }

    /// The lesson at that place from 0.
    pub fn at(&self, place: usize) -> Option<&Lesson> {
        self.lessons().nth(place)
    }

    /// About how long the whole takes to read, in seconds, with the longer texts where they are here.
    pub fn seconds(&self, texts: Option<&Texts>) -> f64 {
        self.lessons().map(|lesson| lesson.seconds(texts.and_then(|texts| texts.of(lesson.check.key)))).sum()
    }
}
