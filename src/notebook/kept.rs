//! The notebook on its shelf: keeping, discarding, and two windows writing the same page.

use std::collections::{BTreeMap, BTreeSet};

use super::aside::ASIDE;
use super::checksum::checksum;
use super::keeping::Keeping;
use super::known::Known;
use super::lessons;
use super::page::{self, Page, Unreadable, read_as, write, write_gone};
use super::record::{LONGEST, PageName, Record};
use super::scale;
use super::shelf::{Shelf, ShelfFault};
use super::trials;
use crate::fit::PersonId;
use crate::garment::{Garment, Given, Id, Readings};
use crate::learn::Marks;
use crate::measure::{Instrument, ScreenScale};
use crate::practice::Trial;

const BENCH: &str = "garment-assay/bench/";
const SCALE: &str = "garment-assay/scale/";
const PRACTICE: &str = "garment-assay/practice";
/// Key of the lessons that were read.
const LESSONS: &str = "garment-assay/lessons";
/// Key of what was done to keep the notebook safe in this browser.
const KEEPING: &str = "garment-assay/keeping";
pub(super) const SETTINGS: &str = "garment-assay/settings";
const BALLAST: &str = "garment-assay/ballast";
/// Room set free when the shelf is full, so that the last edit still fits: 32,768 characters. Judgement; a page has 2 to 6 thousand.
const BALLAST_LENGTH: usize = 32_768;

/// The garments and people kept on a shelf, one page each. There is no index: the shelf's keys are the list.
#[derive(Debug)]
pub struct Notebook<S> {
    pub(super) shelf: S,
    /// By its key, each page as it was last read or written here.
    pub(super) known: BTreeMap<String, Known>,
    /// Keys of pages written here since opening.
    pub(super) written: BTreeSet<String>,
}

/// A change that is on the shelf.
#[derive(Debug, PartialEq)]
pub struct Kept<R = Garment> {
    /// Key and text of the page as written, for the mirror.
    pub page: (String, String),
    /// Set when another window had written the same page: then ours was kept under this new name and theirs stays.
    pub renamed: Option<Box<Renamed<R>>>,
    /// Set when another window had written a record that was to be deleted here: then it stays as that window left it.
    pub stays: Option<Box<Stays<R>>>,
    /// The shelf was full, and the reserve was given up to keep this.
    pub reserve_used: bool,
}

/// Another window wrote a page that was to be deleted here; nobody here has seen that, so it stays.
#[derive(Debug, PartialEq)]
pub struct Stays<R = Garment> {
    /// The other window's record, if this version can read it.
    pub theirs: Option<R>,
}

/// Two windows wrote the same page; both are kept.
#[derive(Debug, PartialEq)]
pub struct Renamed<R = Garment> {
    /// Our record under its new name.
    pub ours: R,
    /// The other window's, if this version can read it.
    pub theirs: Option<R>,
}

/// A change that is not on the shelf; what was there before still is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct KeepFault(pub ShelfFault);

impl<S: Shelf> Notebook<S> {
    /// Sets the reserve aside, where it is not and there is room for it again; says whether there is one.
    pub fn set_reserve_aside(&mut self) -> bool {
        match self.shelf.get(BALLAST) {
            Ok(Some(_)) => true,
            Ok(None) => self.shelf.set(BALLAST, &ballast()).is_ok(),
            Err(_) => false,
        }
    }

    /// Keeps a garment or a person: when this returns, the page is on the shelf. What another window or a newer version wrote under the
    /// name is never written over; the record is then kept under a new name.
    ///
    /// # Errors
    /// The shelf refused; the page that was there before is untouched.
    pub fn keep<R: Record>(&mut self, record: &R) -> Result<Kept<R>, KeepFault> {
        let name = record.page_name();
        let key = name.key();
        let known = self.known_rev(&key);
        let found = self.shelf.get(&key).map_err(KeepFault)?;
        let mut reserve_used = false;
        let (rev, theirs) = match found.as_deref().map(|text| (text, read_for(name, text))) {
            None => (known, None),
            Some((text, Ok(page))) if self.has_seen(&key, page.rev(), text) => (known, None),
            Some((_, Ok(Page::Gone { rev }))) => (rev, None),
            Some((_, Ok(Page::Here { rev, record: theirs }))) if *theirs == *record => (rev, None),
            Some((_, Ok(Page::Here { rev, record: theirs }))) => (rev, Some(Some(*theirs))),
            Some((text, Err(Unreadable::Damaged))) => {
                reserve_used = self.set_damaged_aside(name, text).map_err(KeepFault)?;
                (known, None)
            }
            Some((_, Err(_))) => (known, Some(None)),
        };
        let Some(theirs) = theirs else {
            let (page, given_up) = self.write(name, rev, |rev| write(record, rev)).map_err(KeepFault)?;
            return Ok(Kept { page, renamed: None, stays: None, reserve_used: reserve_used || given_up });
        };
        let ours = record.under(self.free_name(name).map_err(KeepFault)?);
        let mut kept = self.keep(&ours)?;
        if let (Some(_), Some(text)) = (&theirs, &found) {
            self.note(key, rev, text);
        }
        kept.renamed = Some(Box::new(Renamed { ours, theirs }));
        Ok(kept)
    }

    /// Writes the page after `rev`; gives back key and text, and whether the reserve was given up.
    pub(super) fn write<N: PageName>(
        &mut self,
        name: &N,
        rev: u64,
        page: impl Fn(u64) -> String,
    ) -> Result<((String, String), bool), ShelfFault> {
        // 2^64 writings are not reached by writing, but a number can be typed into a file.
        let rev = rev.saturating_add(1);
        let (key, text) = (name.key(), page(rev));
        let reserve_used = self.put(&key, &text)?;
        self.note_ours(key.clone(), rev, &text);
        self.written.insert(key.clone());
        Ok(((key, text), reserve_used))
    }

    /// Copies text that cannot be read to a place of its own before its page is written over.
    pub(super) fn set_damaged_aside<N: PageName>(&self, name: &N, text: &str) -> Result<bool, ShelfFault> {
        self.put(&format!("{}{}~{}", N::DAMAGED, name.text(), checksum(&[text])), text)
    }

    pub(super) fn free_name<N: PageName>(&self, name: &N) -> Result<N, ShelfFault> {
        let stem: String = name.text().split('~').next().unwrap_or_default().chars().take(LONGEST - 12).collect();
        for number in 2_u32.. {
            let Some(name) = N::parse(&format!("{stem}~{number}")) else { break };
            if self.shelf.get(&name.key())?.is_none() {
                return Ok(name);
            }
        }
        Err(ShelfFault::Broken)
    }

    /// Deletes a garment or a person. The page stays as a short line that tells other copies of the notebook. What another window or a
    /// newer version has written since is not deleted unseen.
    ///
    /// # Errors
    /// The shelf refused; the record is still there.
    pub fn discard<N: PageName>(&mut self, name: &N) -> Result<Kept<N::Of>, KeepFault> {
        let key = name.key();
        let known = self.known_rev(&key);
        let found = self.shelf.get(&key).map_err(KeepFault)?;
        let mut reserve_used = false;
        let rev = match found.as_deref().map(|text| (text, read_for(name, text))) {
            None => known,
            Some((text, Ok(page))) if self.has_seen(&key, page.rev(), text) => known,
            Some((_, Ok(Page::Gone { rev }))) => rev,
            Some((text, Ok(Page::Here { rev, record }))) => {
                self.note(key.clone(), rev, text);
                let stays = Some(Box::new(Stays { theirs: Some(*record) }));
                return Ok(Kept { page: (key, text.to_owned()), renamed: None, stays, reserve_used });
            }
            Some((text, Err(Unreadable::Damaged))) => {
                reserve_used = self.set_damaged_aside(name, text).map_err(KeepFault)?;
                known
            }
            Some((text, Err(_))) => {
                let stays = Some(Box::new(Stays { theirs: None }));
                return Ok(Kept { page: (key, text.to_owned()), renamed: None, stays, reserve_used });
            }
        };
        let (page, given_up) = self.write(name, rev, write_gone).map_err(KeepFault)?;
        Ok(Kept { page, renamed: None, stays: None, reserve_used: reserve_used || given_up })
    }

    /// Puts text on the shelf, giving up the reserve if it must; says whether it did.
    pub(super) fn put(&self, key: &str, text: &str) -> Result<bool, ShelfFault> {
        match self.shelf.set(key, text) {
            Ok(()) => Ok(false),
            Err(ShelfFault::Full) if self.shelf.get(BALLAST)?.is_some() => {
                self.shelf.remove(BALLAST)?;
                let put = self.shelf.set(key, text);
                if put.is_err() {
                    // Too large even so: the reserve is better kept for an edit that fits.
                    let _ = self.shelf.set(BALLAST, &ballast());
                }
                put.map(|()| true)
            }
            Err(fault) => Err(fault),
        }
    }

    /// Takes a page that could not be read off the shelf; one that can be read by now stays.
    pub(super) fn drop_unread(&mut self, key: &str) -> Result<(), KeepFault> {
        let text = self.shelf.get(key).map_err(KeepFault)?;
        match text.as_deref().map(|text| rev_of(key, text)) {
            Some(Some(Ok(_))) => Ok(()),
            _ if is_page(key) => self.shelf.remove(key).map_err(KeepFault),
            _ => Ok(()),
        }
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

    /// What was last given to an instrument on the bench; none when there is none or it cannot be read.
    pub fn on_the_bench(&self, instrument: &'static Instrument) -> Option<Vec<Given>> {
        let text = self.shelf.get(&format!("{BENCH}{}", instrument.key)).ok()??;
        page::given_read(instrument, &serde_json::from_str(&text).ok()?)
    }

    /// Keeps what was given to an instrument on the bench, so that it can be looked at again and corrected.
    ///
    /// # Errors
    /// The shelf refused; what was kept before still is.
    pub fn keep_on_the_bench(&mut self, readings: &Readings) -> Result<(), KeepFault> {
        let text = page::given_written(&readings.given).to_string();
        self.put(&format!("{BENCH}{}", readings.instrument.key), &text).map(|_| ()).map_err(KeepFault)
    }

    /// What was answered in practice, oldest first.
    pub fn trials(&self) -> Vec<Trial> {
        self.shelf.get(PRACTICE).ok().flatten().map(|text| trials::read(&text)).unwrap_or_default()
    }

    /// Keeps what was answered in practice, the latest of it.
    ///
    /// # Errors
    /// The shelf refused; what was kept before still is.
    pub fn keep_trials(&mut self, trials: &[Trial]) -> Result<(), KeepFault> {
        self.put(PRACTICE, &trials::write(trials)).map(|_| ()).map_err(KeepFault)
    }

    /// The lessons that were read.
    pub fn lessons_read(&self) -> Marks {
        self.shelf.get(LESSONS).ok().flatten().map(|text| lessons::read(&text)).unwrap_or_default()
    }

    /// Keeps which lessons were read.
    ///
    /// # Errors
    /// The shelf refused; what was kept before still is.
    pub fn keep_lessons_read(&mut self, marks: &Marks) -> Result<(), KeepFault> {
        self.put(LESSONS, &lessons::write(marks)).map(|_| ()).map_err(KeepFault)
    }

    /// What was done so far to keep the notebook safe.
    pub fn keeping(&self) -> Keeping {
        self.shelf.get(KEEPING).ok().flatten().map(|text| Keeping::read(&text)).unwrap_or_default()
    }

    /// Keeps what was done to keep the notebook safe, together with what another window has noted of it; returns both.
    ///
    /// # Errors
    /// The shelf refused; what was kept before still is.
    pub fn keep_keeping(&mut self, keeping: &Keeping) -> Result<Keeping, KeepFault> {
        let joined = keeping.joined(&self.keeping());
        self.put(KEEPING, &joined.write()).map(|_| joined).map_err(KeepFault)
    }

    /// The scale kept for a screen of that name; none when there is none or it cannot be read.
    pub fn scale(&self, screen: &str) -> Option<ScreenScale> {
        scale::read(&self.shelf.get(&format!("{SCALE}{screen}")).ok()??)
    }

    /// Whether a scale is kept for any screen.
    pub fn knows_scales(&self) -> bool {
        self.shelf.keys().is_ok_and(|keys| keys.iter().any(|key| key.starts_with(SCALE)))
    }

    /// Keeps the scale of a screen, or forgets it.
    ///
    /// # Errors
    /// The shelf refused; what was kept before still is.
    pub fn keep_scale(&mut self, screen: &str, scale: Option<&ScreenScale>) -> Result<(), KeepFault> {
        let key = format!("{SCALE}{screen}");
        match scale {
            Some(scale) => self.put(&key, &scale::write(scale)).map(|_| ()),
            None => self.shelf.remove(&key),
        }
        .map_err(KeepFault)
    }

    /// Removes everything the app has put on the shelf.
    ///
    /// # Errors
    /// The shelf refused part of it; calling again goes on.
    pub fn erase(&mut self) -> Result<(), KeepFault> {
        for key in self.shelf.keys().map_err(KeepFault)?.into_iter().filter(|key| key.starts_with("garment-assay/")) {
            self.shelf.remove(&key).map_err(KeepFault)?;
        }
        self.known.clear();
        self.written.clear();
        Ok(())
    }
}

/// Whether a page lies under that key, or text that was one.
pub(super) fn is_page(key: &str) -> bool {
    [Id::PLACE, Id::DAMAGED, PersonId::PLACE, PersonId::DAMAGED, ASIDE].into_iter().any(|place| key.starts_with(place))
}

/// How often the page under that key was written, or why it cannot be read; none for the key of something else.
pub(super) fn rev_of(key: &str, text: &str) -> Option<Result<u64, Unreadable>> {
    if let Some(name) = Id::of_key(key) {
        return Some(read_for(&name, text).map(|page| page.rev()));
    }
    PersonId::of_key(key).map(|name| read_for(&name, text).map(|page| page.rev()))
}

/// Reads a page that lies under that name; a record of another name there is damage.
pub(super) fn read_for<N: PageName>(name: &N, text: &str) -> Result<Page<N::Of>, Unreadable> {
    match read_as::<N::Of>(text)? {
        Page::Here { record, .. } if record.page_name() != name => Err(Unreadable::Damaged),
        page => Ok(page),
    }
}

fn ballast() -> String {
    "x".repeat(BALLAST_LENGTH)
}
