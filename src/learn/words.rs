//! The sentences of a lesson that are worked out.

use crate::say;
use crate::trade::{Band, Question};

use super::lesson::Lesson;

/// A probability in whole per cents.
fn percent(probability: f64) -> String {
    format!("{:.0} %", (probability * 100.0).clamp(0.0, 100.0))
}

/// What the two best bands are called, to that question.
pub(super) fn better(question: Question) -> String {
    say!("{fine} or {exceptional}", fine = question.word(Band::Fine), exceptional = question.word(Band::Exceptional))
}

/// How telling the check is.
pub(super) fn telling(lesson: &Lesson) -> Vec<String> {
    let Some(telling) = &lesson.telling else {
        return vec![
            say!("It moves no band. It says what the piece cost to make, and cost and quality are two things.").to_owned(),
        ];
    };
    let question = lesson.subject.question();
    let mut sentences = Vec::new();
    if let (Some(best), Some(worst)) = (telling.alone.last(), telling.alone.first()) {
        let (share, bands) = (percent(telling.better_before()), better(question));
        let (best, worst) = (percent(best.better()), percent(worst.better()));
        sentences.push(match question {
            Question::Make => say!(
                "Of new pieces that nobody has looked at, {share} are {bands}. The best answer alone makes that {best}, the worst {worst}.",
                share,
                bands,
                best,
                worst
            ),
            Question::Left => say!(
                "Of second-hand pieces that nobody has looked at, {share} count as {bands}. The best answer alone makes that {best}, the worst {worst}.",
                share,
                bands,
                best,
                worst
            ),
        });
    }
    if let Some((place, of)) = lesson.rank {
        sentences.push(match question {
            Question::Make => say!(
                "By what it tells in each second it is number {place} of the {of} checks that speak of quality here.",
                place,
                of
            ),
            Question::Left => say!(
                "By what it tells in each second it is number {place} of the {of} checks that speak of what is left here.",
                place,
                of
            ),
        });
    }
    sentences
}

/// How sure that is.
pub(super) fn sure(lesson: &Lesson) -> &'static str {
    match (lesson.telling.is_some(), lesson.leans_on_something_published()) {
        (true, true) => {
            say!(
                "How telling it is was judged by one expert and never measured. What the words lean on is published in part, as named below."
            )
        }
        (true, false) => {
            say!(
                "How telling it is was judged by one expert and never measured. No document that was read stands behind the words either."
            )
        }
        (false, true) => say!("What the words lean on is published in part, as named below."),
        (false, false) => {
            say!("No document that was read stands behind this: it is common practice, memory or one expert’s judgement.")
        }
    }
}
