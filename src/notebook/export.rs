//! All garments as one file, with people where that is wished, and such a file read back: first what it would change, then the change.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

use serde_json::{Map, Value};

use super::checksum::checksum;
use super::exporting::{KIND, export_pieces};
use super::page::FORM;
use super::record::{LONGEST, PageName, Record};
use super::rescue::{self, rescued};
use super::settings::Settings;
use crate::fit::Person;
use crate::garment::Garment;
use crate::say;
use crate::trade::Day;

/// Writes garments as one file of JSON text, with their number and a checksum.
pub fn export(garments: &[&Garment], made: Day) -> String {
    export_pieces(garments.iter().copied(), None::<Vec<&Person>>, None, made).collect()
}

/// The same with the settings, so that one file restores everything; with people only where they are given, for what one hands on is not
/// to hold anybody's measures unasked.
pub fn export_all(garments: &[&Garment], people: Option<&[&Person]>, settings: &Settings, made: Day) -> String {
    export_pieces(garments.iter().copied(), people.map(<[&Person]>::to_vec), Some(settings), made).collect()
}

/// Covers the day and the records.
fn sum_of(made: &str, bodies: &[Value]) -> String {
    checksum(&[made, "\n", &Value::Array(bodies.to_vec()).to_string()])
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
    /// A person in it cannot be read; their place in the file, from 1.
    Person(usize),
}

impl fmt::Display for ImportFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            ImportFault::NotOurs => f.write_str(say!("This is not a rack exported from Garment Assay. Nothing was changed. Choose the .json file that the app saved.")),
            ImportFault::Damaged => f.write_str(say!("This file is cut short or was altered, so none of it was taken. Nothing was changed. Export it once more where it came from.")),
            ImportFault::Newer => f.write_str(say!("This file was written by a newer version of the app. Nothing was changed. Load the app again to update it, then import.")),
            ImportFault::Garment(place) => f.write_str(&say!("Garment {place} in this file cannot be read, so none of it was taken. Nothing was changed.", place)),
            ImportFault::Person(place) => f.write_str(&say!("Person {place} in this file cannot be read, so none of it was taken. Nothing was changed.", place)),
        }
    }
}

/// What to do with the garments and people that are here already.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mode {
    /// Keep them all; one that differs is added beside the one that is here.
    Merge,
    /// Make the rack what the file holds. People stay as they are where it holds none.
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
    /// What becomes of each person, likewise; none where the file holds no people, which is another thing than holding nobody.
    pub people: Option<Vec<Change<Person>>>,
    /// Those garments that would be added beside one that is here, as the file has them and under the id of the one here: one for each
    /// [`Change::AddBeside`], in the same order.
    pub conflicts: Vec<Garment>,
    /// Pages in a file saved after a crash of which no text can be read; they are left out. An export has none.
    pub unread: usize,
}

/// What an import does to one garment or one person.
#[derive(Clone, Debug, PartialEq)]
pub enum Change<R: Record = Garment> {
    /// It is not here yet.
    Add(R),
    /// It is here and the same.
    Same(R::Name),
    /// It is here and differs: the file's is added under a new name, both stay.
    AddBeside(R),
    /// It is here and differs: the file's takes its place.
    Overwrite(R),
    /// Takes the place of the one here, in which it has a part.
    Join(R),
    /// It is here and not in the file: it goes.
    Delete(R::Name),
}

/// Reads an exported file and works out what it would change. Nothing is changed by this; the same file twice changes nothing.
///
/// # Errors
/// [`ImportFault`] says why a file is refused as a whole.
pub fn import(text: &str, here: &[&Garment], mode: Mode) -> Result<Import, ImportFault> {
    import_all(text, here, &[], mode)
}

/// The same where there are people too.
///
/// # Errors
/// [`ImportFault`] says why a file is refused as a whole.
pub fn import_all(text: &str, here: &[&Garment], people: &[&Person], mode: Mode) -> Result<Import, ImportFault> {
    let file: Value = serde_json::from_str(text.trim_start_matches('\u{feff}')).map_err(|_| broken(text))?;
    let kind = file.get("kind").and_then(Value::as_str);
    if kind != Some(KIND) && kind != Some(rescue::KIND) {
        return Err(ImportFault::NotOurs);
    }
    match file.get("form").and_then(Value::as_u64) {
        None | Some(0) => return Err(ImportFault::Damaged),
        Some(form) if form > FORM => return Err(ImportFault::Newer),
        Some(_) => {}
    }
    let made = file.get("made").and_then(Value::as_str).and_then(Day::parse).ok_or(ImportFault::Damaged)?;
    if kind == Some(rescue::KIND) {
        let rescued = rescued(&file).ok_or(ImportFault::Damaged)?;
        let (mut changes_of_garments, conflicts) = with_conflicts(&rescued.garments, here, mode)?;
        let mut people = changes(&rescued.people, people, mode).map_err(ImportFault::Person)?;
        // It is what could be got at after a crash, not what the rack is to be: that one is not in it, or cannot be read, deletes nothing.
        changes_of_garments.retain(|change| !matches!(change, Change::Delete(_)));
        people.retain(|change| !matches!(change, Change::Delete(_)));
        let settings = rescued.settings.as_deref().map(Settings::read);
        return Ok(Import {
            made,
            settings,
            changes: changes_of_garments,
            people: Some(people),
            conflicts,
            unread: rescued.unread,
        });
    }
    let garments = file.get("garments").and_then(Value::as_array).ok_or(ImportFault::Damaged)?;
    if file.get("count").and_then(Value::as_u64) != Some(garments.len() as u64)
        || file.get("sum") != Some(&sum_of(&made.to_string(), garments).into())
    {
        return Err(ImportFault::Damaged);
    }
    let people = match (file.get("people"), file.get("people_sum")) {
        (None, None) => None,
        (Some(Value::Array(bodies)), Some(sum)) if *sum == sum_of(&made.to_string(), bodies) => {
            Some(changes(bodies, people, mode).map_err(ImportFault::Person)?)
        }
        _ => return Err(ImportFault::Damaged),
    };
    let settings = file.get("settings").map(|settings| Settings::read(&settings.to_string()));
    let (changes, conflicts) = with_conflicts(garments, here, mode)?;
    Ok(Import { made, settings, changes, people, conflicts, unread: 0 })
}

/// What becomes of each garment, and those of the file that would be added beside one that is here.
fn with_conflicts(bodies: &[Value], here: &[&Garment], mode: Mode) -> Result<(Vec<Change>, Vec<Garment>), ImportFault> {
    let changes = changes(bodies, here, mode).map_err(ImportFault::Garment)?;
    let conflicts = changes.iter().zip(bodies).filter(|(change, _)| matches!(change, Change::AddBeside(_)));
    // Each was read once already, so none is lost here.
    let conflicts = conflicts.filter_map(|(_, body)| Garment::read(body.as_object()?.clone()).ok()).collect();
    Ok((changes, conflicts))
}

/// What becomes of each record.
///
/// # Errors
/// The place, from 1, of one that cannot be read.
fn changes<R: Record>(bodies: &[Value], here: &[&R], mode: Mode) -> Result<Vec<Change<R>>, usize> {
    // Looked up by name and never one by one: a file may hold very many.
    let names: BTreeSet<&str> = bodies.iter().filter_map(|body| body.get("id").and_then(Value::as_str)).collect();
    let mut changes: Vec<Change<R>> = Vec::new();
    let known: BTreeMap<&str, &R> = here.iter().map(|record| (record.page_name().text(), *record)).collect();
    let mut seen: BTreeSet<String> = BTreeSet::new();
    for (place, value) in bodies.iter().enumerate() {
        let body: Map<String, Value> = value.as_object().cloned().ok_or(place + 1)?;
        let record = R::read(body).map_err(|_| place + 1)?;
        let name = record.page_name().clone();
        if !seen.insert(name.text().to_owned()) {
            return Err(place + 1);
        }
        changes.push(match (known.get(name.text()), mode) {
            (None, _) => Change::Add(record),
            (Some(known), _) if **known == record => Change::Same(name.clone()),
            (Some(_), Mode::Replace) => Change::Overwrite(record),
            (Some(_), Mode::Merge) => beside(record, &known, &names).ok_or(place + 1)?,
        });
    }
    if mode == Mode::Replace {
        let missing = here.iter().map(|record| record.page_name()).filter(|name| !seen.contains(name.text()));
        changes.extend(missing.map(|name| Change::Delete(name.clone())));
    }
    Ok(changes)
}

/// The file's record under a name worked out from its facts, so that the same file, taken twice, adds it once.
fn beside<R: Record>(record: R, here: &BTreeMap<&str, &R>, in_file: &BTreeSet<&str>) -> Option<Change<R>> {
    let stem: String = record.page_name().text().chars().take(LONGEST - 10).collect();
    let sum = checksum(&[&Value::Object(record.body()).to_string()]);
    let name = R::Name::parse(&format!("{stem}~{sum}"))?;
    // Where the file brings a record of that name itself, that one was made from this: it has both already.
    if here.contains_key(name.text()) || in_file.contains(name.text()) {
        return Some(Change::Same(name));
    }
    Some(Change::AddBeside(record.under(name).brought_by_a_file()))
}

/// Text that is no JSON: ours but cut, or something else altogether.
fn broken(text: &str) -> ImportFault {
    if text.contains(KIND) || text.contains(rescue::KIND) { ImportFault::Damaged } else { ImportFault::NotOurs }
}
