//! What `web/rescue.js` hands out after a crash: the texts of all keys as they lay, the mirror's beside them. Read like an export.
//!
//! ```text
//! {"kind":"garment-assay-rescue","form":1,"made":"2026-11-26","pages":[["garment-assay/page/…","{\"form\":1,…}\n{…}"], …]}
//! ```
//! It has no checksum of its own: it is written by a script that knows nothing of what it saves, and each page has one.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use super::aside::before_aside;
use super::checksum::checksum;
use super::kept::{SETTINGS, read_for};
use super::page::{Page, Unreadable};
use super::record::{LONGEST, PageName, Record};
use crate::fit::PersonId;
use crate::garment::Id;

/// Marks a file as such.
pub(super) const KIND: &str = "garment-assay-rescue";

/// What such a file holds.
#[derive(Default)]
pub(super) struct Rescued {
    /// Facts of each garment, by its page that was written most often.
    pub(super) garments: Vec<Value>,
    /// Facts of each person, likewise.
    pub(super) people: Vec<Value>,
    /// The settings as they were kept.
    pub(super) settings: Option<String>,
    /// Pages of which no text can be read.
    pub(super) unread: usize,
}

/// The best page of each record.
type Best<R> = BTreeMap<String, Page<R>>;

/// Takes what can be read of it; none when the file has no pages at all.
pub(super) fn rescued(file: &Value) -> Option<Rescued> {
    let mut rescued = Rescued::default();
    let (mut garments, mut people) = (Best::new(), Best::new());
    // What was set aside may have come in again and been gone on with, counting from 1: how often it was written says nothing then.
    let (mut garments_aside, mut people_aside) = (Best::new(), Best::new());
    let mut unread = BTreeSet::new();
    for page in file.get("pages")?.as_array()? {
        let (Some(key), Some(text)) = (page.get(0).and_then(Value::as_str), page.get(1).and_then(Value::as_str)) else {
            continue;
        };
        let before = before_aside(key).map(|key| without_stamp(&key).unwrap_or(key));
        let (garments, people) =
            if before.is_some() { (&mut garments_aside, &mut people_aside) } else { (&mut garments, &mut people) };
        let key = before.unwrap_or_else(|| key.to_owned());
        let read = match (Id::of_key(&key), PersonId::of_key(&key)) {
            (Some(name), _) => better(garments, &name, text),
            (_, Some(name)) => better(people, &name, text),
            _ if key == SETTINGS => {
                rescued.settings.get_or_insert_with(|| text.to_owned());
                continue;
            }
            _ => continue,
        };
        if read.is_err() {
            unread.insert(key);
        }
    }
    unread.retain(|key| !garments.contains_key(key) && !people.contains_key(key));
    unread.retain(|key| !garments_aside.contains_key(key) && !people_aside.contains_key(key));
    rescued.unread = unread.len();
    (rescued.garments, rescued.people) = (bodies(garments, garments_aside), bodies(people, people_aside));
    Some(rescued)
}

/// The key without the time that `web/rescue.js` adds where another text of it had been set aside before.
fn without_stamp(key: &str) -> Option<String> {
    let (key, stamp) = key.rsplit_once('~')?;
    (stamp.len() >= 13 && stamp.bytes().all(|byte| byte.is_ascii_digit())).then(|| key.to_owned())
}

/// Takes a page, unless there is one of the same record that was written more often.
fn better<N: PageName>(best: &mut Best<N::Of>, name: &N, text: &str) -> Result<(), Unreadable> {
    let page = read_for(name, text)?;
    if best.get(&name.key()).is_none_or(|known| known.rev() < page.rev()) {
        best.insert(name.key(), page);
    }
    Ok(())
}

/// The facts of those that were not deleted; one that was set aside and is otherwise in use comes beside that, under another name.
fn bodies<R: Record>(best: Best<R>, aside: Best<R>) -> Vec<Value> {
    let mut all: Vec<R> = Vec::new();
    for (key, page) in aside {
        let Page::Here { record, rev } = page else { continue };
        match best.get(&key) {
            None => all.push(*record),
            Some(Page::Here { record: known, .. }) if *known == record => {}
            Some(Page::Gone { rev: gone }) if *gone > rev => {}
            Some(_) => {
                let stem: String = record.page_name().text().chars().take(LONGEST - 10).collect();
                let sum = checksum(&[&Value::Object(record.body()).to_string()]);
                let name = R::Name::parse(&format!("{stem}~{sum}")).filter(|name| !best.contains_key(&name.key()));
                all.extend(name.map(|name| record.under(name).brought_by_a_file()));
            }
        }
    }
    all.extend(best.into_values().filter_map(|page| match page {
        Page::Here { record, .. } => Some(*record),
        Page::Gone { .. } => None,
    }));
    all.sort_by(|one, other| one.page_name().text().cmp(other.page_name().text()));
    all.iter().map(|record| Value::Object(record.body())).collect()
}
