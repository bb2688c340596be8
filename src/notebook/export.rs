//! All garments as one file, and such a file read back: first what it would change, then the change.

use std::fmt;

use serde_json::{Map, Value, json};

use super::checksum::checksum;
use super::page::{self, FORM};
use super::settings::Settings;
use crate::garment::{Act, Garment, Id};
use crate::trade::Day;

/// Marks a file as ours.
const KIND: &str = "garment-assay-rack";

/// Writes garments as one file of JSON text, with their number and a checksum.
pub fn export(garments: &[&Garment], made: Day) -> String {
    written(garments, made, None)
}

/// The same with the settings, so that one file restores everything.
pub fn export_all(garments: &[&Garment], settings: &Settings, made: Day) -> String {
    written(garments, made, serde_json::from_str(&settings.write()).ok())
}

fn written(garments: &[&Garment], made: Day, settings: Option<Value>) -> String {
    let bodies: Vec<Value> = garments.iter().map(|garment| Value::Object(page::body(garment))).collect();
    let made = made.to_string();
    let sum = checksum(&[&made, "\n", &Value::Array(bodies.clone()).to_string()]);
    let mut file = json!({
        "kind": KIND,
        "form": FORM,
        "made": made,
        "count": bodies.len(),
        "sum": sum,
        "garments": bodies,
    });
    if let Some(settings) = settings {
        file["settings"] = settings;
    }
    format!("{file:#}\n")
}

/// Why a file is refused. Nothing has been changed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ImportFault {
    /// It is not a file of this app.
    NotOurs,
    /// It is one, but cut or altered.
    Damaged,
    /// It was written by a newer version.
    Newer,
    /// A garment in it cannot be read; its place in the file, from 1.
    Garment(usize),
}

impl fmt::Display for ImportFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            ImportFault::NotOurs => f.write_str("This is not a rack exported from Garment Assay. Nothing was changed. Choose the .json file that the app saved."),
            ImportFault::Damaged => f.write_str("This file is cut short or was altered, so none of it was taken. Nothing was changed. Export it once more where it came from."),
            ImportFault::Newer => f.write_str("This file was written by a newer version of the app. Nothing was changed. Load the app again to update it, then import."),
            ImportFault::Garment(place) => write!(f, "Garment {place} in this file cannot be read, so none of it was taken. Nothing was changed."),
        }
    }
}

/// What to do with the garments that are here already.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mode {
    /// Keep them all; a garment that differs is added beside the one that is here.
    Merge,
    /// Make the rack what the file holds.
    Replace,
}

/// A file that was read and found whole, with what it would change.
#[derive(Clone, Debug, PartialEq)]
pub struct Import {
    /// Day on which the file was made.
    pub made: Day,
    /// The settings in the file, if it has any; a choice that cannot be read is as by default.
    pub settings: Option<Settings>,
    /// What becomes of each garment, in the file's order; with [`Mode::Replace`], deletions follow.
    pub changes: Vec<Change>,
}

/// What an import does to one garment.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// It is not here yet.
    Add(Garment),
    /// It is here and the same.
    Same(Id),
    /// It is here and differs: the file's is added under a new name, both stay.
    AddBeside(Garment),
    /// It is here and differs: the file's takes its place.
    Overwrite(Garment),
    /// It is here and not in the file: it goes.
    Delete(Id),
}

/// Reads an exported file and works out what it would change. Nothing is changed by this; the same file twice changes nothing.
///
/// # Errors
/// [`ImportFault`] says why a file is refused as a whole.
pub fn import(text: &str, here: &[&Garment], mode: Mode) -> Result<Import, ImportFault> {
    let file: Value = serde_json::from_str(text.trim_start_matches('\u{feff}')).map_err(|_| broken(text))?;
    if file.get("kind").and_then(Value::as_str) != Some(KIND) {
        return Err(ImportFault::NotOurs);
    }
    match file.get("form").and_then(Value::as_u64) {
        None | Some(0) => return Err(ImportFault::Damaged),
        Some(form) if form > FORM => return Err(ImportFault::Newer),
        Some(_) => {}
    }
    let made = file.get("made").and_then(Value::as_str).and_then(Day::parse).ok_or(ImportFault::Damaged)?;
    let garments = file.get("garments").and_then(Value::as_array).ok_or(ImportFault::Damaged)?;
    let sum = checksum(&[&made.to_string(), "\n", &Value::Array(garments.clone()).to_string()]);
    if file.get("count").and_then(Value::as_u64) != Some(garments.len() as u64)
        || file.get("sum").and_then(Value::as_str) != Some(sum.as_str())
    {
        return Err(ImportFault::Damaged);
    }
    let names: Vec<&str> = garments.iter().filter_map(|garment| garment.get("id").and_then(Value::as_str)).collect();
    let settings = file.get("settings").map(|settings| Settings::read(&settings.to_string()));
    let mut changes: Vec<Change> = Vec::new();
    let mut seen: Vec<Id> = Vec::new();
    for (place, value) in garments.iter().enumerate() {
        let body: Map<String, Value> = value.as_object().cloned().ok_or(ImportFault::Garment(place + 1))?;
        let garment = page::garment(body).map_err(|_| ImportFault::Garment(place + 1))?;
        if seen.contains(garment.id()) {
            return Err(ImportFault::Garment(place + 1));
        }
        seen.push(garment.id().clone());
        let known = here.iter().find(|other| other.id() == garment.id());
        changes.push(match (known, mode) {
            (None, _) => Change::Add(garment),
            (Some(known), _) if **known == garment => Change::Same(garment.id().clone()),
            (Some(_), Mode::Replace) => Change::Overwrite(garment),
            (Some(_), Mode::Merge) => beside(garment, here, &names).ok_or(ImportFault::Garment(place + 1))?,
        });
    }
    if mode == Mode::Replace {
        changes.extend(
            here.iter().filter(|garment| !seen.contains(garment.id())).map(|garment| Change::Delete(garment.id().clone())),
        );
    }
    Ok(Import { made, settings, changes })
}

/// The file's garment under a name worked out from its facts, so that the same file, taken twice, adds it once.
fn beside(garment: Garment, here: &[&Garment], in_file: &[&str]) -> Option<Change> {
    let stem: String = garment.id().as_str().chars().take(Id::LONGEST - 10).collect();
    let sum = checksum(&[&Value::Object(page::body(&garment)).to_string()]);
    let name = Id::new(&format!("{stem}~{sum}"))?;
    // Where the file brings a garment of that name itself, that one was made from this: it has both already.
    if here.iter().any(|other| *other.id() == name) || in_file.contains(&name.as_str()) {
        return Some(Change::Same(name));
    }
    let label = if garment.label().is_empty() { "From a file".to_owned() } else { format!("{} (from a file)", garment.label()) };
    Some(Change::AddBeside(garment.named(name).after(Act::Label(label))))
}

/// Text that is no JSON: ours but cut, or something else altogether.
fn broken(text: &str) -> ImportFault {
    if text.contains(KIND) { ImportFault::Damaged } else { ImportFault::NotOurs }
}
