//! Photographs of a garment, as the field `photographs` of its page; and the names of their files beside an export.
//!
//! ```text
//! "photographs": [{"id":"ba7816bf8f01cfea414140de5dae2223","size":[1600,1200],"added":"2026-11-26","caption":"…","check":"…"}]
//! ```
//! The page never holds a picture. One in which anything is not known is set aside whole, and the others are read.

use serde_json::{Map, Value, json};

use super::page::has_only;
use crate::garment::{Act, Garment, Photograph, PhotographAct, PhotographId, check_of};
use crate::trade::Day;

/// Name of the field.
pub(super) const FIELD: &str = "photographs";

/// The field; none where there is nothing to write. What was set aside goes first, as with answers.
pub(super) fn written(garment: &Garment, aside: Vec<Value>) -> Option<Value> {
    let mut all: Vec<Value> = Vec::new();
    let mut other = None;
    for value in aside {
        match value {
            Value::Array(values) => all.extend(values),
            // A field of another shape altogether; what the person has put in since counts more.
            value => other = Some(value),
        }
    }
    all.extend(garment.photographs().all().iter().map(one_written));
    if all.is_empty() { other } else { Some(all.into()) }
}

fn one_written(one: &Photograph) -> Value {
    let (width, height) = one.size();
    let mut written = Map::new();
    written.insert("id".to_owned(), one.id().to_string().into());
    written.insert("size".to_owned(), json!([width, height]));
    written.insert("added".to_owned(), one.added().to_string().into());
    if !one.caption().is_empty() {
        written.insert("caption".to_owned(), one.caption().into());
    }
    if let Some(check) = one.check() {
        written.insert("check".to_owned(), check.key.into());
    }
    Value::Object(written)
}

/// The garment with the photographs of the field.
pub(super) fn read(mut garment: Garment, value: Value) -> Garment {
    let Value::Array(values) = value else { return garment.with_aside(FIELD.to_owned(), value.to_string()) };
    for value in values {
        let next = one_read(&garment, &value).map(|one| garment.after(Act::Photograph(PhotographAct::Add(one))));
        garment = match next {
            // One too many, or one that is there already, changes nothing and must not be lost.
            Some(next) if next.photographs().count() > garment.photographs().count() => next,
            _ => garment.with_aside(FIELD.to_owned(), Value::Array(vec![value]).to_string()),
        };
    }
    garment
}

fn one_read(garment: &Garment, value: &Value) -> Option<Photograph> {
    if !has_only(value, &["id", "size", "added", "caption", "check"]) {
        return None;
    }
    let text = |name: &str| value.get(name)?.as_str();
    let [width, height] = value.get("size")?.as_array()?.as_slice() else { return None };
    let side = |value: &Value| value.as_u64().and_then(|side| u32::try_from(side).ok());
    let one = Photograph::new(PhotographId::parse(text("id")?)?, Day::parse(text("added")?)?, side(width)?, side(height)?)?;
    let check = match value.get("check") {
        None => None,
        Some(key) => Some(check_of(garment.family(), key.as_str()?)?),
    };
    let one = one.captioned(text("caption").unwrap_or_default()).for_check(check);
    // A caption that would not be taken as it stands is for a version that knows better.
    (one_written(&one) == *value).then_some(one)
}

/// Every name of a photograph that may stand in this text: 32 hexadecimal digits in a row. For text that cannot be read, so that no picture
/// is let go that a page which a newer version could read still names.
pub fn photographs_perhaps_named(text: &str) -> Vec<PhotographId> {
    let words = text.split(|sign: char| !sign.is_ascii_hexdigit());
    words.filter_map(PhotographId::parse).collect()
}
