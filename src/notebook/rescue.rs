//! What `web/rescue.js` hands out after a crash: the texts of all keys as they lay, the mirror's beside them. Read like an export.
//!
//! ```text
//! {"kind":"garment-assay-rescue","form":1,"made":"2026-11-26","pages":[["garment-assay/page/…","{\"form\":1,…}\n{…}"], …]}
//! ```
//! It has no checksum of its own: it is written by a script that knows nothing of what it saves, and each page has one.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use super::aside::before_aside;
use super::kept::{SETTINGS, read_for};
use super::page::{Page, Unreadable};
use super::record::{PageName, Record};
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
    let mut unread = BTreeSet::new();
    for page in file.get("pages")?.as_array()? {
        let (Some(key), Some(text)) = (page.get(0).and_then(Value::as_str), page.get(1).and_then(Value::as_str)) else {
            continue;
        };
        let key = before_aside(key).unwrap_or_else(|| key.to_owned());
        let read = match (Id::of_key(&key), PersonId::of_key(&key)) {
            (Some(name), _) => better(&mut garments, &name, text),
            (_, Some(name)) => better(&mut people, &name, text),
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
    rescued.unread = unread.iter().filter(|key| !garments.contains_key(*key) && !people.contains_key(*key)).count();
    (rescued.garments, rescued.people) = (bodies(garments), bodies(people));
    Some(rescued)
}

/// Takes a page, unless there is one of the same record that was written more often.
fn better<N: PageName>(best: &mut Best<N::Of>, name: &N, text: &str) -> Result<(), Unreadable> {
    let page = read_for(name, text)?;
    if best.get(&name.key()).is_none_or(|known| known.rev() < page.rev()) {
        best.insert(name.key(), page);
    }
    Ok(())
}

/// The facts of those that were not deleted.
fn bodies<R: Record>(best: Best<R>) -> Vec<Value> {
    let here = best.into_values().filter_map(|page| match page {
        Page::Here { record, .. } => Some(Value::Object(record.body())),
        Page::Gone { .. } => None,
    });
    here.collect()
}
