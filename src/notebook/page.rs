//! One record, a garment or a person, as a page of text: a line that says what the page is, then the facts as JSON.
//!
//! ```text
//! {"form":1,"rev":7,"sum":"1a2b3c4d"}
//! {"id":"…","family":"jeans","answers":[…],"measures":{"waist":{"readings":[{"amount":42.5,"unit":"cm"}]}}, …}
//! ```
//! The checksum covers the number of writings and the second line. A page of a record that was deleted has `"gone":true` and no second
//! line: it tells other copies of the notebook that the page they still have is out of date.

use std::fmt;

use serde_json::{Map, Value, json};

use super::checksum::checksum;
use super::fitting;
use super::photographs;
use super::record::Record;
use super::trade_show;
use crate::catalog::{FAMILIES, Family};
use crate::check::Check;
use crate::cost::Channel;
use crate::garment::{Act, Answer, Deal, Garment, Given, Guess, Id, Readings, Shown, Taped, check_of};
use crate::grading::Care;
use crate::measure::Instrument;
use crate::quantity::{Amount, Unit};
use crate::say;
use crate::trade::{Currency, Day, Name, PriceKind, Ticket};

/// The form this version writes. It reads every form from 1 up to this one.
pub const FORM: u64 = 1;
/// Deepest nesting of brackets taken. Ours has five; what another version added is written back inside an export, which is deeper by
/// two, and the parser refuses 128.
const DEEPEST: usize = 100;

/// What a page holds.
#[derive(Clone, Debug, PartialEq)]
pub enum Page<R = Garment> {
    /// A record, and how many times it has been written.
    Here {
        /// Counts the writings of this page, from 1.
        rev: u64,
        /// The facts.
        record: Box<R>,
    },
    /// The record was deleted at that writing.
    Gone {
        /// Counts the writings of this page.
        rev: u64,
    },
}

impl<R> Page<R> {
    /// Counts the writings of the page.
    pub fn rev(&self) -> u64 {
        match self {
            Page::Here { rev, .. } | Page::Gone { rev } => *rev,
        }
    }

    /// The facts; none where it was deleted.
    pub fn record(self) -> Option<Box<R>> {
        match self {
            Page::Here { record, .. } => Some(record),
            Page::Gone { .. } => None,
        }
    }
}

/// Why a page cannot be read. The text is kept as it is in any case.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unreadable {
    /// It is not a page, or it was cut or overwritten.
    Damaged,
    /// It was written by a newer version of the app.
    Newer {
        /// The form it says it has.
        form: u64,
    },
    /// It is of a family that this version does not know.
    UnknownFamily(String),
    /// The app stopped when it read it, so it was set aside and is not read.
    Stopped,
}

impl fmt::Display for Unreadable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Unreadable::Damaged => {
                f.write_str(say!("This page is damaged. Its text is kept as it was; you can save it to a file."))
            }
            Unreadable::Newer { .. } => f.write_str(say!(
                "This page was written by a newer version of the app. It is kept as it is; load the app again to update it."
            )),
            Unreadable::Stopped => f.write_str(say!(
                "The app stopped when it read this page, so it was set aside. Its text is kept as it was; you can save it to a file."
            )),
            Unreadable::UnknownFamily(family) => f.write_str(&say!(
                "This page is about a kind of garment that this version does not know ({family}). It is kept as it is.",
                family
            )),
        }
    }
}

/// Writes a garment or a person as a page.
pub fn write<R: Record>(record: &R, rev: u64) -> String {
    let body = Value::Object(record.body()).to_string();
    let head = json!({ "form": FORM, "rev": rev, "sum": sum(rev, &body) });
    format!("{head}\n{body}")
}

/// Writes the page of a record that was deleted.
pub(super) fn write_gone(rev: u64) -> String {
    json!({ "form": FORM, "rev": rev, "gone": true, "sum": sum(rev, "") }).to_string()
}

fn sum(rev: u64, body: &str) -> String {
    checksum(&[&rev.to_string(), "\n", body])
}

/// Reads a garment's page of this or any older form.
///
/// # Errors
/// [`Unreadable`] says why; nothing is guessed.
pub fn read(text: &str) -> Result<Page, Unreadable> {
    read_as(text)
}

/// Reads a page of that kind of record, of this or any older form.
pub(super) fn read_as<R: Record>(text: &str) -> Result<Page<R>, Unreadable> {
    let (head, body) = text.split_once('\n').unwrap_or((text, ""));
    let head: Value = serde_json::from_str(head).map_err(|_| Unreadable::Damaged)?;
    let form = head.get("form").and_then(Value::as_u64).ok_or(Unreadable::Damaged)?;
    if form > FORM {
        return Err(Unreadable::Newer { form });
    }
    let rev = head.get("rev").and_then(Value::as_u64).ok_or(Unreadable::Damaged)?;
    if form == 0 || head.get("sum").and_then(Value::as_str) != Some(sum(rev, body).as_str()) {
        return Err(Unreadable::Damaged);
    }
    if body.is_empty() && head.get("gone") == Some(&Value::Bool(true)) {
        return Ok(Page::Gone { rev });
    }
    let body: Value = serde_json::from_str(body).map_err(|_| Unreadable::Damaged)?;
    let Value::Object(body) = body else { return Err(Unreadable::Damaged) };
    Ok(Page::Here { rev, record: Box::new(R::read(body)?) })
}

/// The facts of a garment as a JSON object, the same for pages and exports.
pub(super) fn body(garment: &Garment) -> Map<String, Value> {
    let mut body = Map::new();
    let mut put = |name: &str, value: Value| {
        body.insert(name.to_owned(), value);
    };
    put("id", garment.id().as_str().into());
    put("family", garment.family().key.into());
    put("noted", garment.noted().to_string().into());
    for (name, text) in [("label", garment.label()), ("place", garment.place()), ("note", garment.note())] {
        if !text.is_empty() {
            put(name, text.into());
        }
    }
    if let Some(ticket) = garment.ticket() {
        put(
            "ticket",
            json!({
                "minor": ticket.minor,
                "currency": ticket.currency.code(),
                "kind": kind_written(ticket.kind),
                "face_down": ticket.face_down,
            }),
        );
    }
    if let Some(guess) = garment.guess() {
        put("guess", guess_written(guess));
    }
    // In until taken out, so only that is written.
    if !garment.is_reference() {
        put("reference", false.into());
    }
    if let Some(shop) = garment.shop() {
        put("shop", shop.key().into());
    }
    if let Some(name) = garment.name() {
        put("name", name.key().into());
    }
    // New until said otherwise.
    if garment.is_second_hand() {
        put("second_hand", true.into());
    }
    if *garment.deal() != Deal::default() {
        put("deal", deal_written(garment.deal()));
    }
    if let Some(terms) = trade_show::terms_written(garment.terms()) {
        put(trade_show::TERMS, terms);
    }
    if let Some(log) = garment.lot() {
        put(trade_show::LOT, trade_show::lot_written(log));
    }
    if !garment.collection().is_empty() {
        put("collection", garment.collection().into());
    }
    if garment.archived() {
        put("archived", true.into());
    }
    // What was set aside goes first, so that an answer given since then wins when a version that knows both reads the page.
    let mut answers: Vec<Value> = Vec::new();
    let mut notes: Map<String, Value> = Map::new();
    let mut measures: Map<String, Value> = Map::new();
    let mut fits: Vec<Value> = Vec::new();
    let mut pictures: Vec<Value> = Vec::new();
    for (field, text) in garment.aside() {
        let Ok(value) = serde_json::from_str::<Value>(text) else { continue };
        match (field.as_str(), value) {
            ("answers", value) => answers.push(value),
            ("notes", Value::Object(more)) => notes.extend(more),
            ("measures", Value::Object(more)) => measures.extend(more),
            (fitting::FIELD, value) => fits.push(value),
            (photographs::FIELD, value) => pictures.push(value),
            // What the person has put in since counts, not what could not be read.
            (_, value) => {
                body.entry(field.as_str()).or_insert(value);
            }
        }
    }
    answers.extend(garment.entries().iter().map(|entry| answer_written(entry.check, &entry.answer)));
    notes.extend(garment.check_notes().map(|(key, note)| (key.to_owned(), note.into())));
    body.insert("answers".to_owned(), answers.into());
    if !notes.is_empty() {
        body.insert("notes".to_owned(), notes.into());
    }
    measures.extend(garment.measures().map(|(point, taped)| (point.key.to_owned(), taped_written(taped))));
    if !measures.is_empty() {
        body.insert("measures".to_owned(), measures.into());
    }
    if let Some(fit) = fitting::written(garment.family().fit, garment.fitting(), fits) {
        body.insert(fitting::FIELD.to_owned(), fit);
    }
    if let Some(pictures) = photographs::written(garment, pictures) {
        body.insert(photographs::FIELD.to_owned(), pictures);
    }
    body
}

fn kind_written(kind: PriceKind) -> &'static str {
    match kind {
        PriceKind::Retail => "retail",
        PriceKind::Wholesale => "wholesale",
    }
}

fn guess_written(guess: &Guess) -> Value {
    let mut written = json!({
        "low": guess.low(),
        "high": guess.high(),
        "currency": guess.currency().code(),
        "kind": kind_written(guess.kind()),
        "made": guess.made().to_string(),
    });
    if let Some(best) = guess.best() {
        written["best"] = best.into();
    }
    if let Some(shown) = guess.shown() {
        written["shown"] = json!({ "low": shown.low(), "middle": shown.middle(), "high": shown.high() });
    }
    written
}

fn deal_written(deal: &Deal) -> Value {
    let mut written = Map::new();
    let wears = deal.wears_a_year().map(u64::from);
    for (name, amount) in [("wears_a_year", wears), ("target", deal.target()), ("minimum", deal.minimum().map(u64::from))] {
        if let Some(amount) = amount {
            written.insert(name.to_owned(), amount.into());
        }
    }
    Value::Object(written)
}

/// An amount in the unit in which it was given.
pub(super) fn amount_written(amount: Amount) -> Value {
    json!({ "amount": amount.number, "unit": amount.unit.key() })
}

/// The other way; none when anything in it is not known or not whole.
pub(super) fn amount_read(value: &Value) -> Option<Amount> {
    let number = value.get("amount").filter(|_| has_only(value, &["amount", "unit"]))?.as_f64()?;
    Some(Amount { number, unit: Unit::from_key(value.get("unit")?.as_str()?)? })
}

fn taped_written(taped: &Taped) -> Value {
    let readings: Vec<Value> = taped.readings().iter().map(|reading| amount_written(*reading)).collect();
    if taped.round() { json!({ "readings": readings, "round": true }) } else { json!({ "readings": readings }) }
}

fn answer_written(check: &Check, answer: &Answer) -> Value {
    match answer {
        Answer::Judged { level, care: Care::Usual } => json!({ "check": check.key, "judged": level }),
        Answer::Judged { level, care } => json!({ "check": check.key, "judged": level, "care": care.key() }),
        Answer::Measured(Readings { instrument, given }) => json!({
            "check": check.key,
            "instrument": instrument.key,
            "measured": given_written(given),
        }),
        Answer::CannotTell => json!({ "check": check.key, "cannot_tell": true }),
        Answer::Skipped => json!({ "check": check.key, "skipped": true }),
    }
}

/// What was given for the inputs of an instrument.
pub(super) fn given_written(given: &[Given]) -> Value {
    given.iter().map(|given| json!({ "input": given.input, "amount": given.amount, "unit": given.unit.key() })).collect()
}

/// The other way; none when anything in it is not known or not whole.
pub(super) fn given_read(instrument: &'static Instrument, value: &Value) -> Option<Vec<Given>> {
    let given = value.as_array()?.iter().map(|reading| {
        let input = reading.get("input").filter(|_| has_only(reading, &["input", "amount", "unit"]))?.as_str()?;
        Some(Given {
            input: instrument.input(input)?.1.key,
            amount: reading.get("amount")?.as_f64()?,
            unit: Unit::from_key(reading.get("unit")?.as_str()?)?,
        })
    });
    given.collect()
}

/// Reads the facts of a garment. What this version does not know within them is set aside whole, not dropped and not half read.
pub(super) fn garment(body: Map<String, Value>) -> Result<Garment, Unreadable> {
    if is_too_deep(&body) {
        return Err(Unreadable::Damaged);
    }
    let text = |name: &str| body.get(name).and_then(Value::as_str);
    let id = text("id").and_then(Id::new).ok_or(Unreadable::Damaged)?;
    let key = text("family").ok_or(Unreadable::Damaged)?;
    let family = FAMILIES
        .iter()
        .copied()
        .find(|family| family.key == key)
        .ok_or_else(|| Unreadable::UnknownFamily(key.chars().take(40).collect()))?;
    let noted = text("noted").and_then(Day::parse).ok_or(Unreadable::Damaged)?;
    let mut garment = Garment::new(id, family, noted);
    // Laid aside at the end: each act copies the garment, and of what is not known there may be very much.
    let mut aside: Vec<(String, String)> = Vec::new();
    for (field, value) in body {
        let act = match (field.as_str(), value) {
            ("id" | "family" | "noted", _) => continue,
            ("label", Value::String(text)) => Ok(Act::Label(text)),
            ("place", Value::String(text)) => Ok(Act::Place(text)),
            ("note", Value::String(text)) => Ok(Act::Note(text)),
            ("ticket", value) => ticket(&value).map(|ticket| Act::Ticket(Some(ticket))).ok_or(value),
            // Fields come in the order of the alphabet, so the ticket comes after its guess; a guess at a ticket in view is refused.
            ("guess", value) => guess(&value).map(|guess| Act::Guess(Some(guess))).ok_or(value),
            ("reference", Value::Bool(false)) => Ok(Act::Reference(false)),
            ("second_hand", Value::Bool(true)) => Ok(Act::SecondHand(true)),
            ("shop", value) => value.as_str().and_then(Channel::from_key).map(|shop| Act::Shop(Some(shop))).ok_or(value),
            ("name", value) => value.as_str().and_then(Name::from_key).map(|name| Act::Name(Some(name))).ok_or(value),
            ("deal", value) => deal(&value).map(Act::Deal).ok_or(value),
            ("answers", Value::Array(answers)) => {
                for answer in answers {
                    match answer_read(family, &answer) {
                        Some((check, answer)) => garment = garment.after(Act::Answer(check, answer)),
                        None => aside.push(("answers".to_owned(), answer.to_string())),
                    }
                }
                continue;
            }
            ("notes", Value::Object(notes)) => {
                for (key, note) in notes {
                    match (check_of(family, &key), note) {
                        (Some(check), Value::String(note)) => garment = garment.after(Act::CheckNote(check, note)),
                        (_, note) => aside.push(("notes".to_owned(), json!({ key: note }).to_string())),
                    }
                }
                continue;
            }
            // Pages came without measures at first, so one whose measures are of another shape is not damaged: they are set aside whole.
            ("measures", Value::Object(measures)) => {
                for (key, value) in measures {
                    let known = family.points.iter().find(|point| point.key == key);
                    match known.zip(taped(&value)) {
                        Some((point, taped)) => garment = garment.after(Act::Measure(point, Some(taped))),
                        None => aside.push(("measures".to_owned(), json!({ key: value }).to_string())),
                    }
                }
                continue;
            }
            // Pages came without a fitting room at first, too.
            (fitting::FIELD, value) => {
                garment = fitting::read(garment, value);
                continue;
            }
            (photographs::FIELD, value) => {
                garment = photographs::read(garment, value);
                continue;
            }
            (trade_show::TERMS, value) => {
                garment = trade_show::with_terms(garment, value);
                continue;
            }
            (trade_show::LOT, value) => trade_show::lot_read(&value).map(|log| Act::Lot(Some(log))).ok_or(value),
            ("collection", value) => match value.as_str().map(str::to_owned) {
                Some(text) if garment.after(Act::Collection(text.clone())).collection() == text => Ok(Act::Collection(text)),
                _ => Err(value),
            },
            ("archived", Value::Bool(true)) => Ok(Act::Archived(true)),
            ("answers" | "notes", _) => return Err(Unreadable::Damaged),
            (_, value) => Err(value),
        };
        match act {
            Ok(act) => garment = garment.after(act),
            Err(value) => aside.push((field, value.to_string())),
        }
    }
    Ok(aside.into_iter().fold(garment, |garment, (field, text)| garment.with_aside(field, text)))
}

/// Whether anything in it is nested deeper than is taken.
pub(super) fn is_too_deep(body: &Map<String, Value>) -> bool {
    body.values().any(|value| is_deeper(value, DEEPEST))
}

fn is_deeper(value: &Value, levels: usize) -> bool {
    match value {
        Value::Array(values) => levels == 0 || values.iter().any(|value| is_deeper(value, levels - 1)),
        Value::Object(fields) => levels == 0 || fields.values().any(|value| is_deeper(value, levels - 1)),
        _ => false,
    }
}

/// Whether a thing has no other fields than these: one more could change what the others mean, so then nothing of it is read.
pub(super) fn has_only(value: &Value, fields: &[&str]) -> bool {
    value.as_object().is_some_and(|object| object.keys().all(|key| fields.contains(&key.as_str())))
}

fn ticket(value: &Value) -> Option<Ticket> {
    if !has_only(value, &["minor", "currency", "kind", "face_down"]) {
        return None;
    }
    Some(Ticket {
        minor: value.get("minor")?.as_u64()?,
        currency: Currency::from_code(value.get("currency")?.as_str()?)?,
        kind: kind(value)?,
        face_down: value.get("face_down")?.as_bool()?,
    })
}

fn kind(value: &Value) -> Option<PriceKind> {
    match value.get("kind")?.as_str()? {
        "retail" => Some(PriceKind::Retail),
        "wholesale" => Some(PriceKind::Wholesale),
        _ => None,
    }
}

fn guess(value: &Value) -> Option<Guess> {
    if !has_only(value, &["low", "high", "best", "currency", "kind", "made", "shown"]) {
        return None;
    }
    let amount = |value: &Value, name: &str| value.get(name)?.as_u64();
    let currency = Currency::from_code(value.get("currency")?.as_str()?)?;
    let made = Day::parse(value.get("made")?.as_str()?)?;
    let mut guess = Guess::new(amount(value, "low")?, amount(value, "high")?, currency, kind(value)?, made)?;
    if value.get("best").is_some() {
        guess = guess.with_best(amount(value, "best")?)?;
    }
    if let Some(shown) = value.get("shown") {
        if !has_only(shown, &["low", "middle", "high"]) {
            return None;
        }
        guess = guess.beside(Shown::new(amount(shown, "low")?, amount(shown, "middle")?, amount(shown, "high")?)?);
    }
    Some(guess)
}

fn deal(value: &Value) -> Option<Deal> {
    if !has_only(value, &["wears_a_year", "target", "minimum"]) {
        return None;
    }
    // A number that is none, or that would not be taken as it stands, leaves the whole to a version that knows better.
    let amount = |name: &str| match value.get(name) {
        None => Some(None),
        Some(amount) => amount.as_u64().map(Some),
    };
    let small = |amount: Option<u64>| amount.map(u32::try_from).transpose().ok();
    let (wears, target, minimum) = (small(amount("wears_a_year")?)?, amount("target")?, small(amount("minimum")?)?);
    let deal = Deal::default().with_wears(wears).with_target(target).with_minimum(minimum);
    ((deal.wears_a_year(), deal.target(), deal.minimum()) == (wears, target, minimum)).then_some(deal)
}

fn taped(value: &Value) -> Option<Taped> {
    if !has_only(value, &["readings", "round"]) {
        return None;
    }
    let readings = value.get("readings")?.as_array()?.iter().map(amount_read);
    let round = match value.get("round") {
        None => false,
        Some(Value::Bool(true)) => true,
        Some(_) => return None,
    };
    Taped::new(readings.collect::<Option<Vec<_>>>()?, round)
}

fn answer_read(family: &'static Family, value: &Value) -> Option<(&'static Check, Answer)> {
    let key = value.get("check")?.as_str()?;
    let check = check_of(family, key)?;
    let flag = |name: &str| value.get(name) == Some(&Value::Bool(true)) && has_only(value, &["check", name]);
    if flag("cannot_tell") {
        return Some((check, Answer::CannotTell));
    }
    if flag("skipped") {
        return Some((check, Answer::Skipped));
    }
    if let Some(level) = value.get("judged").filter(|_| has_only(value, &["check", "judged", "care"])) {
        let (_, level) = check.level(level.as_str()?)?;
        let care = match value.get("care") {
            None => Care::Usual,
            Some(care) => Care::from_key(care.as_str()?)?,
        };
        return Some((check, Answer::Judged { level: level.key, care }));
    }
    if !has_only(value, &["check", "instrument", "measured"]) {
        return None;
    }
    // Pages written before checks had a choice of instruments do not name one.
    let instrument = match value.get("instrument") {
        None => check.instruments.first().copied()?,
        Some(key) => check.instrument(key.as_str()?)?,
    };
    let given = given_read(instrument, value.get("measured")?)?;
    Some((check, Answer::Measured(Readings { instrument, given })))
}
