//! An exported file read back: first what it would change, then the change.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

use serde_json::Value;
use serde_json::value::RawValue;

use super::checksum::{Checksum, checksum};
use super::export::KIND;
use super::page::FORM;
use super::record::{LONGEST, PageName, Record};
use super::rescue::{self, rescued};
use super::settings::Settings;
use crate::fit::Person;
use crate::garment::Garment;
use crate::say;
use crate::trade::Day;
use crate::turns::{in_one_turn, without_pause};

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
    in_one_turn(import_in_turns(text, here, people, mode, &without_pause))
}

/// The same with pauses: a rack of a thousand garments takes longer to read than a hand should wait. What was saved after a crash is taken
/// apart in one turn; nobody saves that every day.
///
/// # Errors
/// [`ImportFault`] says why a file is refused as a whole.
pub async fn import_in_turns(
    text: &str,
    here: &[&Garment],
    people: &[&Person],
    mode: Mode,
    pause: &impl AsyncFn(),
) -> Result<Import, ImportFault> {
    let text = text.trim_start_matches('\u{feff}');
    let file: BTreeMap<String, &RawValue> = serde_json::from_str(text).map_err(|_| broken(text))?;
    let field = |name: &str| file.get(name).and_then(|value| serde_json::from_str::<Value>(value.get()).ok());
    let word = |name: &str| field(name).and_then(|value| value.as_str().map(str::to_owned));
    let kind = word("kind").filter(|kind| kind == KIND || kind == rescue::KIND).ok_or(ImportFault::NotOurs)?;
    match field("form").as_ref().and_then(Value::as_u64) {
        None | Some(0) => return Err(ImportFault::Damaged),
        Some(form) if form > FORM => return Err(ImportFault::Newer),
        Some(_) => {}
    }
    let made = word("made").as_deref().and_then(Day::parse).ok_or(ImportFault::Damaged)?;
    if kind == rescue::KIND {
        let file = serde_json::from_str(text).map_err(|_| broken(text))?;
        let rescued = rescued(&file).ok_or(ImportFault::Damaged)?;
        let garments = changes(rescued.garments, here, mode, pause).await.map_err(ImportFault::Garment)?;
        let people = changes(rescued.people, people, mode, pause).await.map_err(ImportFault::Person)?;
        // It is what could be got at after a crash, not what the rack is to be: that one is not in it, or cannot be read, deletes nothing.
        let (garments, people) = (garments.without_deletions(), people.without_deletions());
        let settings = rescued.settings.as_deref().map(Settings::read);
        return Ok(Import {
            made,
            settings,
            changes: garments.changes,
            people: Some(people.changes),
            conflicts: garments.conflicts,
            unread: rescued.unread,
        });
    }
    let (garments, sum) = bodies(file.get("garments").copied(), made, pause).await?;
    if field("count").as_ref().and_then(Value::as_u64) != Some(garments.len() as u64) || field("sum") != Some(sum.into()) {
        return Err(ImportFault::Damaged);
    }
    let people = match (file.get("people").copied(), field("people_sum")) {
        (None, None) => None,
        (Some(persons), Some(said)) => {
            let (bodies, sum) = bodies(Some(persons), made, pause).await?;
            if said.as_str() != Some(sum.as_str()) {
                return Err(ImportFault::Damaged);
            }
            Some(changes(bodies, people, mode, pause).await.map_err(ImportFault::Person)?.changes)
        }
        _ => return Err(ImportFault::Damaged),
    };
    let settings = field("settings").map(|settings| Settings::read(&settings.to_string()));
    if settings.is_none() && file.contains_key("settings") {
        return Err(ImportFault::Damaged);
    }
    let Changes { changes, conflicts } = changes(garments, here, mode, pause).await.map_err(ImportFault::Garment)?;
    Ok(Import { made, settings, changes, people, conflicts, unread: 0 })
}

/// The facts of each record in a list, and the checksum of the day and of them.
async fn bodies(list: Option<&RawValue>, made: Day, pause: &impl AsyncFn()) -> Result<(Vec<Value>, String), ImportFault> {
    let list: Vec<&RawValue> = list.and_then(|list| serde_json::from_str(list.get()).ok()).ok_or(ImportFault::Damaged)?;
    let mut sum = Checksum::default();
    sum.add(&made.to_string());
    sum.add("\n[");
    let mut bodies = Vec::with_capacity(list.len());
    for raw in list {
        let body: Value = serde_json::from_str(raw.get()).map_err(|_| ImportFault::Damaged)?;
        if !bodies.is_empty() {
            sum.add(",");
        }
        // As it would be written, whatever line breaks it was given on its way.
        sum.add(&body.to_string());
        bodies.push(body);
        pause().await;
    }
    sum.add("]");
    Ok((bodies, sum.end()))
}

/// What becomes of each record, and those of the file that would be added beside one that is here.
struct Changes<R: Record> {
    changes: Vec<Change<R>>,
    conflicts: Vec<R>,
}

impl<R: Record> Changes<R> {
    fn without_deletions(mut self) -> Changes<R> {
        self.changes.retain(|change| !matches!(change, Change::Delete(_)));
        self
    }
}

/// What becomes of each record.
///
/// # Errors
/// The place, from 1, of one that cannot be read.
async fn changes<R: Record>(bodies: Vec<Value>, here: &[&R], mode: Mode, pause: &impl AsyncFn()) -> Result<Changes<R>, usize> {
    // Looked up by name and never one by one: a file may hold very many.
    let names: BTreeSet<String> = bodies.iter().filter_map(|body| Some(body.get("id")?.as_str()?.to_owned())).collect();
    let known: BTreeMap<&str, &R> = here.iter().map(|record| (record.page_name().text(), *record)).collect();
    let (mut changes, mut conflicts) = (Vec::with_capacity(bodies.len()), Vec::new());
    let mut seen: BTreeSet<String> = BTreeSet::new();
    for (place, value) in bodies.into_iter().enumerate() {
        let Value::Object(body) = value else { return Err(place + 1) };
        let record = R::read(body).map_err(|_| place + 1)?;
        let name = record.page_name().clone();
        if !seen.insert(name.text().to_owned()) {
            return Err(place + 1);
        }
        changes.push(match (known.get(name.text()), mode) {
            (None, _) => Change::Add(record),
            (Some(known), _) if **known == record => Change::Same(name.clone()),
            (Some(_), Mode::Replace) => Change::Overwrite(record),
            (Some(_), Mode::Merge) => {
                let change = beside(record.clone(), &known, &names).ok_or(place + 1)?;
                if matches!(change, Change::AddBeside(_)) {
                    conflicts.push(record);
                }
                change
            }
        });
        pause().await;
    }
    if mode == Mode::Replace {
        let missing = here.iter().map(|record| record.page_name()).filter(|name| !seen.contains(name.text()));
        changes.extend(missing.map(|name| Change::Delete(name.clone())));
    }
    Ok(Changes { changes, conflicts })
}

/// The file's record under a name worked out from its facts, so that the same file, taken twice, adds it once.
fn beside<R: Record>(record: R, here: &BTreeMap<&str, &R>, in_file: &BTreeSet<String>) -> Option<Change<R>> {
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
