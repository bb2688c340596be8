//! A file merged with a rack that knows some of its garments otherwise: what is to become of each pair.

use std::collections::BTreeMap;

use super::importing::Change;
use crate::garment::{Garment, Id, joined};

/// What is to become of a garment that is here and in the file, and not the same.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Choice {
    /// Both are kept, the file's under another name.
    #[default]
    Both,
    /// The file's takes the place of the one here.
    Theirs,
    /// The one here stays, and the file's is left out.
    Mine,
    /// One record in which the notes of both stand.
    Join,
}

impl Choice {
    /// All of them, the default first.
    pub const ALL: [Choice; 4] = [Choice::Both, Choice::Join, Choice::Theirs, Choice::Mine];
}

/// The changes of a merge once each pair was decided. `conflicts` are those of the same [`Import`](super::Import), in its order. Where a
/// pair cannot be joined, both are kept: a choice that cannot be carried out must lose nothing.
pub fn settled(changes: &[Change], conflicts: &[Garment], here: &[&Garment], choose: impl Fn(&Id) -> Choice) -> Vec<Change> {
    let mut theirs = conflicts.iter();
    let here: BTreeMap<&Id, &Garment> = here.iter().map(|garment| (garment.id(), *garment)).collect();
    let changes = changes.iter().map(|change| {
        let Change::AddBeside(_) = change else { return change.clone() };
        let Some(theirs) = theirs.next() else { return change.clone() };
        let id = theirs.id();
        let mine = here.get(id).copied();
        match (choose(id), mine) {
            (Choice::Both, _) | (_, None) => change.clone(),
            (Choice::Mine, Some(_)) => Change::Same(id.clone()),
            (Choice::Theirs, Some(_)) => Change::Overwrite(theirs.clone()),
            (Choice::Join, Some(mine)) => match joined(mine, theirs) {
                Ok(joined) if joined == *mine => Change::Same(id.clone()),
                Ok(joined) => Change::Join(joined),
                Err(_) => change.clone(),
            },
        }
    });
    changes.collect()
}
