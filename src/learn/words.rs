//! The sentences of a lesson that are worked out.

use crate::trade::{Band, Question};

use super::lesson::Lesson;

/// A probability in whole per cents.
fn percent(probability: f64) -> String {
    format!("{:.0} %", (probability * 100.0).clamp(0.0, 100.0))
}

/// What the two best bands are called, to that question.
pub(super) fn better(question: Question) -> String {
    format!("{} or {}", question.word(Band::Fine), question.word(Band::Exceptional))
}

/// How telling the check is.
pub(super) fn telling(lesson: &Lesson) -> Vec<String> {
    let Some(telling) = &lesson.telling else {
        return vec!["It moves no band. It says what the piece cost to make, and cost and quality are two things.".to_owned()];
    };
    let question = lesson.subject.question();
    let mut sentences = Vec::new();
    if let (Some(best), Some(worst)) = (telling.alone.last(), telling.alone.first()) {
        let (pieces, are) = match question {
            Question::Make => ("new", "are"),
            Question::Left => ("second-hand", "count as"),
        };
        sentences.push(format!(
            "Of {pieces} pieces that nobody has looked at, {} {are} {}. The best answer alone makes that {}, the worst {}.",
            percent(telling.better_before()),
            better(question),
            percent(best.better()),
            percent(worst.better()),
        ));
    }
    if let Some((place, of)) = lesson.rank {
        let of_what = match question {
            Question::Make => "quality",
            Question::Left => "what is left",
        };
        sentences.push(format!(
            "By what it tells in each second it is number {place} of the {of} checks that speak of {of_what} here."
        ));
    }
    sentences
}

/// How sure that is.
pub(super) fn sure(lesson: &Lesson) -> &'static str {
    match (lesson.telling.is_some(), lesson.leans_on_something_published()) {
        (true, true) => {
            "How telling it is was judged by one expert and never measured. What the words lean on is published in part, as named below."
        }
        (true, false) => {
            "How telling it is was judged by one expert and never measured. No document that was read stands behind the words either."
        }
        (false, true) => "What the words lean on is published in part, as named below.",
        (false, false) => {
            "No document that was read stands behind this: it is common practice, memory or one expert’s judgement."
        }
    }
}
