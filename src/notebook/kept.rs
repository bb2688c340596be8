//! The notebook on its shelf: opening, keeping, discarding, healing from a mirror, and two windows writing the same page.

use std::collections::BTreeMap;

use super::checksum::checksum;
use super::page::{Page, Unreadable, read, write, write_gone};
use super::shelf::{Shelf, ShelfFault};
use crate::garment::{Garment, Id};

const PAGE: &str = "garment-assay/page/";
const DAMAGED: &str = "garment-assay/damaged/";
const SETTINGS: &str = "garment-assay/settings";
const BALLAST: &str = "garment-assay/ballast";
/// Room set free when the shelf is full, so that the last edit still fits: 32,768 characters. Judgement; a page has 2 to 6 thousand.
const BALLAST_LENGTH: usize = 32_768;

/// The garments kept on a shelf, one page each. There is no index: the shelf's keys are the list.
#[derive(Debug)]
pub struct Notebook<S> {
    shelf: S,
    revs: BTreeMap<Id, u64>,
}

/// What opening found.
#[derive(Debug, Default)]
pub struct Opened {
    /// Garments that could be read, in no particular order.
    pub garments: Vec<Garment>,
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

/// A change that is on the shelf.
#[derive(Debug, PartialEq)]
pub struct Kept {
    /// Key and text of the page as written, for the mirror.
    pub page: (String, String),
    /// Set when another window had written the same page: then ours was kept under this new name and theirs stays.
    pub renamed: Option<Box<Renamed>>,
    /// The shelf was full, and the reserve was given up to keep this.
    pub reserve_used: bool,
}

/// Two windows wrote the same page; both are kept.
#[derive(Debug, PartialEq)]
pub struct Renamed {
    /// Our garment under its new name.
    pub ours: Garment,
    /// The other window's, if this version can read it.
    pub theirs: Option<Garment>,
}

/// A change that is not on the shelf; what was there before still is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct KeepFault(pub ShelfFault);

/// What a look at the mirror brought.
#[derive(Debug, Default, PartialEq)]
pub struct Healed {
    /// Garments of which the mirror had a newer or the only readable page; now on the shelf too.
    pub garments: Vec<Garment>,
    /// Garments that the mirror knows to be deleted.
    pub gone: Vec<Id>,
    /// Pages that the mirror lacks.
    pub to_mirror: Vec<(String, String)>,
    /// Keys of pages that were unreadable and now are not.
    pub mended: Vec<String>,
}

/// What another window did to a page.
#[derive(Debug, PartialEq)]
pub enum Elsewhere {
    /// It wrote this garment.
    Changed(Box<Garment>),
    /// It deleted that garment.
    Gone(Id),
    /// Nothing that concerns the rack.
    Nothing,
}

impl<S: Shelf> Notebook<S> {
    /// Opens the notebook on a shelf and reads every page. A page that cannot be read never stands in the way of the others.
    pub fn open(shelf: S) -> (Notebook<S>, Opened) {
        let mut notebook = Notebook { shelf, revs: BTreeMap::new() };
        let mut opened = Opened::default();
        match notebook.shelf.keys() {
            Err(fault) => opened.fault = Some(fault),
            Ok(keys) => {
                for key in keys.into_iter().filter(|key| key.starts_with(PAGE) || key.starts_with(DAMAGED)) {
                    match notebook.shelf.get(&key) {
                        Ok(Some(text)) => notebook.sort_in(key, text, &mut opened),
                        Ok(None) => {}
                        Err(fault) => opened.fault = Some(fault),
                    }
                }
            }
        }
        if opened.fault.is_none() && notebook.shelf.get(BALLAST) == Ok(None) {
            // A shelf without room for the reserve is reported when a page does not fit, not here.
            let _ = notebook.shelf.set(BALLAST, &"x".repeat(BALLAST_LENGTH));
        }
        (notebook, opened)
    }

    fn sort_in(&mut self, key: String, text: String, opened: &mut Opened) {
        let named = key.strip_prefix(PAGE).and_then(Id::new);
        match (named, read(&text)) {
            (Some(id), Ok(Page::Garment { rev, garment })) if *garment.id() == id => {
                self.revs.insert(id, rev);
                opened.garments.push(*garment);
            }
            (Some(id), Ok(Page::Gone { rev })) => {
                self.revs.insert(id, rev);
            }
            (_, Err(why)) => opened.set_aside.push(SetAside { key, text, why }),
            (_, Ok(_)) => opened.set_aside.push(SetAside { key, text, why: Unreadable::Damaged }),
        }
    }

    /// Keeps a garment: when this returns, its page is on the shelf.
    ///
    /// # Errors
    /// The shelf refused; the page that was there before is untouched.
    pub fn keep(&mut self, garment: &Garment) -> Result<Kept, KeepFault> {
        let key = page_key(garment.id());
        let known = self.revs.get(garment.id()).copied().unwrap_or(0);
        let found = self.shelf.get(&key).map_err(KeepFault)?;
        let (rev, theirs) = match found.as_deref().map(read) {
            None => (known, None),
            Some(Ok(page)) if page.rev() <= known => (known, None),
            Some(Ok(Page::Gone { rev })) => (rev, None),
            Some(Ok(Page::Garment { rev, garment: theirs })) if *theirs == *garment => (rev, None),
            Some(Ok(Page::Garment { rev, garment: theirs })) => (rev, Some(Some(*theirs))),
            Some(Err(Unreadable::Damaged)) => {
                let text = found.unwrap_or_default();
                self.put(&format!("{DAMAGED}{}~{}", garment.id().as_str(), checksum(&text)), &text).map_err(KeepFault)?;
                (known, None)
            }
            Some(Err(_)) => (known, Some(None)),
        };
        let Some(theirs) = theirs else {
            let text = write(garment, rev + 1);
            let reserve_used = self.put(&key, &text).map_err(KeepFault)?;
            self.revs.insert(garment.id().clone(), rev + 1);
            return Ok(Kept { page: (key, text), renamed: None, reserve_used });
        };
        let ours = garment.named(self.free_name(garment.id()).map_err(KeepFault)?);
        let mut kept = self.keep(&ours)?;
        if let Some(theirs) = &theirs {
            self.revs.insert(theirs.id().clone(), rev);
        }
        kept.renamed = Some(Box::new(Renamed { ours, theirs }));
        Ok(kept)
    }

    fn free_name(&self, id: &Id) -> Result<Id, ShelfFault> {
        let stem: String = id.as_str().split('~').next().unwrap_or_default().chars().take(Id::LONGEST - 12).collect();
        for number in 2_u32.. {
            let Some(name) = Id::new(&format!("{stem}~{number}")) else { break };
            if self.shelf.get(&page_key(&name))?.is_none() {
                return Ok(name);
            }
        }
        Err(ShelfFault::Broken)
    }

    /// Deletes a garment. Its page stays as a short line that tells other copies of the notebook.
    ///
    /// # Errors
    /// The shelf refused; the garment is still there.
    pub fn discard(&mut self, id: &Id) -> Result<Kept, KeepFault> {
        let key = page_key(id);
        let stored = self.shelf.get(&key).map_err(KeepFault)?.and_then(|text| read(&text).ok()).map_or(0, |page| page.rev());
        let rev = stored.max(self.revs.get(id).copied().unwrap_or(0)) + 1;
        let text = write_gone(rev);
        let reserve_used = self.put(&key, &text).map_err(KeepFault)?;
        self.revs.insert(id.clone(), rev);
        Ok(Kept { page: (key, text), renamed: None, reserve_used })
    }

    /// Puts text on the shelf, giving up the reserve if it must; says whether it did.
    fn put(&self, key: &str, text: &str) -> Result<bool, ShelfFault> {
        match self.shelf.set(key, text) {
            Ok(()) => Ok(false),
            Err(ShelfFault::Full) if self.shelf.get(BALLAST)?.is_some() => {
                self.shelf.remove(BALLAST)?;
                self.shelf.set(key, text).map(|()| true)
            }
            Err(fault) => Err(fault),
        }
    }

    /// Compares the shelf with the pages of a mirror; of each garment the page written more often wins, on both sides.
    ///
    /// # Errors
    /// The shelf refused; what it held is untouched.
    pub fn heal(&mut self, mirror: &[(String, String)]) -> Result<Healed, KeepFault> {
        let mut healed = Healed::default();
        for (key, text) in mirror {
            let Some(id) = key.strip_prefix(PAGE).and_then(Id::new) else { continue };
            let Ok(theirs) = read(text) else { continue };
            let local = self.shelf.get(key).map_err(KeepFault)?;
            let mended = match local.as_deref().map(read) {
                Some(Ok(page)) if page.rev() >= theirs.rev() => continue,
                Some(Err(Unreadable::Damaged)) => {
                    let damaged = local.unwrap_or_default();
                    self.put(&format!("{DAMAGED}{}~{}", id.as_str(), checksum(&damaged)), &damaged).map_err(KeepFault)?;
                    true
                }
                Some(Err(_)) => continue,
                Some(Ok(_)) | None => false,
            };
            self.put(key, text).map_err(KeepFault)?;
            self.revs.insert(id.clone(), theirs.rev());
            match theirs {
                Page::Garment { garment, .. } => healed.garments.push(*garment),
                Page::Gone { .. } => healed.gone.push(id),
            }
            if mended {
                healed.mended.push(key.clone());
            }
        }
        for key in self.shelf.keys().map_err(KeepFault)?.into_iter().filter(|key| key.starts_with(PAGE)) {
            let Some(text) = self.shelf.get(&key).map_err(KeepFault)? else { continue };
            let Ok(local) = read(&text) else { continue };
            let mirrored = mirror.iter().find(|(other, _)| *other == key).and_then(|(_, text)| read(text).ok());
            if mirrored.is_none_or(|page| page.rev() < local.rev()) {
                healed.to_mirror.push((key, text));
            }
        }
        Ok(healed)
    }

    /// Takes note of what another window wrote under a key; `None` when it removed the key.
    pub fn written_elsewhere(&mut self, key: &str, text: Option<&str>) -> Elsewhere {
        let Some(id) = key.strip_prefix(PAGE).and_then(Id::new) else { return Elsewhere::Nothing };
        let Some(text) = text else {
            self.revs.remove(&id);
            return Elsewhere::Gone(id);
        };
        match read(text) {
            Ok(Page::Garment { rev, garment }) => {
                self.revs.insert(id, rev);
                Elsewhere::Changed(garment)
            }
            Ok(Page::Gone { rev }) => {
                self.revs.insert(id.clone(), rev);
                Elsewhere::Gone(id)
            }
            Err(_) => Elsewhere::Nothing,
        }
    }

    /// Takes a page that could not be read off the shelf for good.
    ///
    /// # Errors
    /// The shelf refused.
    pub fn drop_set_aside(&mut self, key: &str) -> Result<(), KeepFault> {
        self.shelf.remove(key).map_err(KeepFault)
    }

    /// The settings as text.
    ///
    /// # Errors
    /// The shelf cannot be read.
    pub fn settings(&self) -> Result<Option<String>, KeepFault> {
        self.shelf.get(SETTINGS).map_err(KeepFault)
    }

    /// Keeps the settings.
    ///
    /// # Errors
    /// The shelf refused; the settings that were there still are.
    pub fn keep_settings(&mut self, text: &str) -> Result<(), KeepFault> {
        self.put(SETTINGS, text).map(|_| ()).map_err(KeepFault)
    }

    /// Removes everything the app has put on the shelf.
    ///
    /// # Errors
    /// The shelf refused part of it; calling again goes on.
    pub fn erase(&mut self) -> Result<(), KeepFault> {
        for key in self.shelf.keys().map_err(KeepFault)?.into_iter().filter(|key| key.starts_with("garment-assay/")) {
            self.shelf.remove(&key).map_err(KeepFault)?;
        }
        self.revs.clear();
        Ok(())
    }
}

fn page_key(id: &Id) -> String {
    format!("{PAGE}{}", id.as_str())
}
