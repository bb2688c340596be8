//! Opening the notebook: every page on its shelf is read, and what cannot be read is set aside.

use std::collections::{BTreeMap, BTreeSet};

use super::aside::ASIDE;
use super::kept::{Notebook, is_page, read_for};
use super::page::{Page, Unreadable, read};
use super::record::PageName;
use super::shelf::{Shelf, ShelfFault};
use crate::fit::{Person, PersonId};
use crate::garment::{Garment, Id};
use crate::turns::{in_one_turn, without_pause};

/// What opening found.
#[derive(Debug, Default)]
pub struct Opened {
    /// Garments that could be read, in no particular order.
    pub garments: Vec<Garment>,
    /// People who could be read, likewise.
    pub people: Vec<Person>,
    /// Pages that could not; their text still lies on the shelf.
    pub set_aside: Vec<SetAside>,
    /// The shelf itself could not be read.
    pub fault: Option<ShelfFault>,
}

/// A page that this version cannot read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SetAside {
    /// Where it lies.
    pub key: String,
    /// Its text as it was.
    pub text: String,
    /// Why it cannot be read.
    pub why: Unreadable,
}

impl<S: Shelf> Notebook<S> {
    /// Opens the notebook on a shelf and reads every page. A page that cannot be read never stands in the way of the others.
    pub fn open(shelf: S) -> (Notebook<S>, Opened) {
        in_one_turn(Notebook::open_in_turns(shelf, &without_pause))
    }

    /// The same with a pause after each page. What another window writes meanwhile is for the caller to hear, and to hand to
    /// [`written_elsewhere`](Notebook::written_elsewhere) afterwards.
    pub async fn open_in_turns(shelf: S, pause: &impl AsyncFn()) -> (Notebook<S>, Opened) {
        let mut notebook = Notebook { shelf, known: BTreeMap::new(), written: BTreeSet::new() };
        let mut opened = Opened::default();
        match notebook.shelf.keys() {
            Err(fault) => opened.fault = Some(fault),
            Ok(keys) => {
                for key in keys.into_iter().filter(|key| is_page(key)) {
                    match notebook.shelf.get(&key) {
                        Ok(Some(text)) => notebook.sort_in(key, text, &mut opened),
                        Ok(None) => {}
                        Err(fault) => opened.fault = Some(fault),
                    }
                    pause().await;
                }
            }
        }
        if opened.fault.is_none() {
            // A shelf without room for the reserve is reported when a page does not fit, not here.
            notebook.set_reserve_aside();
        }
        (notebook, opened)
    }

    fn sort_in(&mut self, key: String, text: String, opened: &mut Opened) {
        let sorted = if key.starts_with(ASIDE) {
            Err(Unreadable::Stopped)
        } else if let Some(name) = Id::of_key(&key) {
            self.sort_page_in(&name, &text).map(|garment| opened.garments.extend(garment))
        } else if let Some(name) = PersonId::of_key(&key) {
            self.sort_page_in(&name, &text).map(|person| opened.people.extend(person))
        } else {
            Err(read(&text).err().unwrap_or(Unreadable::Damaged))
        };
        if let Err(why) = sorted {
            opened.set_aside.push(SetAside { key, text, why });
        }
    }

    /// Takes note of a page; none when its record was deleted.
    fn sort_page_in<N: PageName>(&mut self, name: &N, text: &str) -> Result<Option<N::Of>, Unreadable> {
        let page = read_for(name, text)?;
        self.note(name.key(), page.rev(), text);
        match page {
            Page::Here { record, .. } => Ok(Some(*record)),
            Page::Gone { .. } => Ok(None),
        }
    }
}
