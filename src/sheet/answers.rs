//! Answers as a table: one row for each answer of each garment.

use std::borrow::Borrow;

use super::cell::{Cell, Form, table};
use crate::check::Check;
use crate::garment::{Answer, Garment};
use crate::grading::Care;

/// Names of the columns. Once released they are never renamed, moved or taken away; new ones come at the end.
const COLUMNS: [&str; 15] = [
    "id",
    "label",
    "kind",
    "check",
    "check_name",
    "how",
    "answer",
    "answer_words",
    "sure",
    "instrument",
    "value",
    "give_or_take",
    "unit",
    "aspect",
    "note",
];

/// Answers as a table, garments in the order given and answers in that in which they were first made.
pub fn answers_table(garments: &[&Garment], form: Form) -> String {
    answers_table_pieces(garments.iter().copied(), form).collect()
}

/// The same in pieces, a row in each, so that a large rack need not be written in one go.
pub fn answers_table_pieces<G: Borrow<Garment>>(
    garments: impl IntoIterator<Item = G>,
    form: Form,
) -> impl Iterator<Item = String> {
    let rows = garments.into_iter().flat_map(|garment| {
        let garment: &Garment = garment.borrow();
        garment.entries().iter().map(|entry| row(garment, entry.check, &entry.answer)).collect::<Vec<_>>()
    });
    table(&COLUMNS, rows, form)
}

fn row(garment: &Garment, check: &'static Check, answer: &Answer) -> Vec<Cell> {
    let level = garment.level_place(check).and_then(|place| check.levels.get(place));
    let outcome = garment.reading(check).and_then(Result::ok);
    let (how, sure, instrument) = match answer {
        Answer::Judged { care, .. } => ("judged", Some(*care), None),
        Answer::Measured(readings) => ("measured", None, Some(readings.instrument)),
        Answer::CannotTell => ("cannot tell", None, None),
        Answer::Skipped => ("not now", None, None),
    };
    vec![
        Cell::text(garment.id().as_str()),
        Cell::text(garment.label()),
        Cell::text(garment.family().name),
        Cell::text(check.key),
        Cell::text(check.name),
        Cell::text(how),
        Cell::or_empty(level, |level| Cell::text(level.key)),
        Cell::or_empty(level, |level| Cell::text(level.name)),
        Cell::or_empty(sure, |care: Care| Cell::text(care.key())),
        Cell::or_empty(instrument, |instrument| Cell::text(instrument.key)),
        Cell::or_empty(outcome.as_ref(), |outcome| Cell::Number(outcome.value, 3)),
        Cell::or_empty(outcome.as_ref(), |outcome| Cell::Number(outcome.uncertainty, 3)),
        Cell::or_empty(instrument, |instrument| Cell::text(instrument.unit.key())),
        Cell::text(check.aspect.english()),
        Cell::text(garment.check_note(check)),
    ]
}
