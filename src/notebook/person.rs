//! One person's facts as a JSON object: `{"id":"…","name":"…","measures":{"waist":{"amount":34.5,"unit":"in"}}}`.

use serde_json::{Map, Value, json};

use super::page::{Unreadable, amount_read, amount_written, is_too_deep};
use crate::fit::{BodyReading, Person, PersonId, body_measure};

/// The facts of a person.
pub(super) fn body(person: &Person) -> Map<String, Value> {
    let mut body = Map::new();
    body.insert("id".to_owned(), person.id().as_str().into());
    if !person.name().is_empty() {
        body.insert("name".to_owned(), person.name().into());
    }
    let mut measures: Map<String, Value> = Map::new();
    for (field, text) in person.aside() {
        let Ok(value) = serde_json::from_str::<Value>(text) else { continue };
        match (field.as_str(), value) {
            ("measures", Value::Object(more)) => measures.extend(more),
            // What the person has put in since counts, not what could not be read.
            (_, value) => {
                body.entry(field.as_str()).or_insert(value);
            }
        }
    }
    measures.extend(person.readings().map(|(measure, reading)| (measure.key.to_owned(), amount_written(reading.amount()))));
    if !measures.is_empty() {
        body.insert("measures".to_owned(), measures.into());
    }
    body
}

/// Reads the facts of a person.
pub(super) fn person(body: Map<String, Value>) -> Result<Person, Unreadable> {
    if is_too_deep(&body) {
        return Err(Unreadable::Damaged);
    }
    let id = body.get("id").and_then(Value::as_str).and_then(PersonId::new).ok_or(Unreadable::Damaged)?;
    let mut person = Person::new(id, "");
    for (field, value) in body {
        person = match (field.as_str(), value) {
            ("id", _) => person,
            ("name", Value::String(name)) => person.named(&name),
            ("measures", Value::Object(measures)) => measures.into_iter().fold(person, measured),
            (_, value) => person.with_aside(field, value.to_string()),
        };
    }
    Ok(person)
}

/// With one stored measure; one that this version does not know or does not believe is set aside.
fn measured(person: Person, (key, value): (String, Value)) -> Person {
    let known = body_measure(&key);
    let reading = known.and_then(|measure| Some((measure, BodyReading::new(measure, amount_read(&value)?)?)));
    match reading {
        Some((measure, reading)) => person.with(measure, Some(reading)),
        None => person.with_aside("measures".to_owned(), json!({ key: value }).to_string()),
    }
}
