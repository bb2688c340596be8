//! The notebook on its shelf: opening, keeping, discarding, healing from a mirror, and two windows writing the same page.

use std::collections::{BTreeMap, BTreeSet};

use super::checksum::checksum;
use super::page::{self, Page, Unreadable, read, write, write_gone};
use super::scale;
use super::settings::Settings;
use super::shelf::{Shelf, ShelfFault};
use crate::garment::{Garment, Given, Id, Readings};
use crate::measure::{Instrument, ScreenScale};

const PAGE: &str = "garment-assay/page/";
const DAMAGED: &str = "garment-assay/damaged/";
const BENCH: &str = "garment-assay/bench/";
const SCALE: &str = "garment-assay/scale/";
const SETTINGS: &str = "garment-assay/settings";
const BALLAST: &str = "garment-assay/ballast";
/// Room set free when the shelf is full, so that the last edit still fits: 32,768 characters. Judgement; a page has 2 to 6 thousand.
const BALLAST_LENGTH: usize = 32_768;

/// The garments kept on a shelf, one page each. There is no index: the shelf's keys are the list.
#[derive(Debug)]
pub struct Notebook<S> {
    shelf: S,
    /// How many times each page had been written when it was last read or written here.
    revs: BTreeMap<Id, u64>,
    /// Pages written here since opening.
    written: BTreeSet<Id>,
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
    /// Set when another window had written a garment that was to be deleted here: then it stays as that window left it.
    pub stays: Option<Box<Stays>>,
    /// The shelf was full, and the reserve was given up to keep this.
    pub reserve_used: bool,
}

/// Another window wrote a page that was to be deleted here; nobody here has seen that, so it stays.
#[derive(Debug, PartialEq)]
pub struct Stays {
    /// The other window's garment, if this version can read it.
    pub theirs: Option<Garment>,
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
    /// The shelf was full, and the reserve was given up.
    pub reserve_used: bool,
    /// The shelf refused part-way; the rest is as it was, and looking again goes on.
    pub fault: Option<ShelfFault>,
}

/// What another window did to a page.
#[derive(Debug, PartialEq)]
pub enum Elsewhere {
    /// It wrote this garment.
    Changed(Box<Garment>),
    /// It deleted that garment.
    Gone(Id),
    /// It wrote the settings.
    Chosen(Box<Settings>),
    /// Nothing that concerns the rack.
    Nothing,
}

impl<S: Shelf> Notebook<S> {
    /// Opens the notebook on a shelf and reads every page. A page that cannot be read never stands in the way of the others.
    pub fn open(shelf: S) -> (Notebook<S>, Opened) {
        let mut notebook = Notebook { shelf, revs: BTreeMap::new(), written: BTreeSet::new() };
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
        if opened.fault.is_none() {
            // A shelf without room for the reserve is reported when a page does not fit, not here.
            notebook.set_reserve_aside();
        }
        (notebook, opened)
    }

    /// Sets the reserve aside, where it is not and there is room for it again; says whether there is one.
    pub fn set_reserve_aside(&mut self) -> bool {
        match self.shelf.get(BALLAST) {
            Ok(Some(_)) => true,
            Ok(None) => self.shelf.set(BALLAST, &ballast()).is_ok(),
            Err(_) => false,
        }
    }

    fn sort_in(&mut self, key: String, text: String, opened: &mut Opened) {
        let Some(id) = id_of(&key) else {
            let why = read(&text).err().unwrap_or(Unreadable::Damaged);
            opened.set_aside.push(SetAside { key, text, why });
            return;
        };
        match read_for(&id, &text) {
            Ok(Page::Garment { rev, garment }) => {
                self.revs.insert(id, rev);
                opened.garments.push(*garment);
            }
            Ok(Page::Gone { rev }) => {
                self.revs.insert(id, rev);
            }
            Err(why) => opened.set_aside.push(SetAside { key, text, why }),
        }
    }

    /// Keeps a garment: when this returns, its page is on the shelf. What another window or a newer version wrote under its name is
    /// never written over; the garment is then kept under a new name.
    ///
    /// # Errors
    /// The shelf refused; the page that was there before is untouched.
    pub fn keep(&mut self, garment: &Garment) -> Result<Kept, KeepFault> {
        let id = garment.id();
        let key = page_key(id);
        let known = self.revs.get(id).copied().unwrap_or(0);
        let found = self.shelf.get(&key).map_err(KeepFault)?;
        let mut reserve_used = false;
        let (rev, theirs) = match found.as_deref().map(|text| (text, read_for(id, text))) {
            None => (known, None),
            Some((_, Ok(page))) if page.rev() <= known => (known, None),
            Some((_, Ok(Page::Gone { rev }))) => (rev, None),
            Some((_, Ok(Page::Garment { rev, garment: theirs }))) if *theirs == *garment => (rev, None),
            Some((_, Ok(Page::Garment { rev, garment: theirs }))) => (rev, Some(Some(*theirs))),
            Some((text, Err(Unreadable::Damaged))) => {
                reserve_used = self.set_damaged_aside(id, text).map_err(KeepFault)?;
                (known, None)
            }
            Some((_, Err(_))) => (known, Some(None)),
        };
        let Some(theirs) = theirs else {
            let (page, given_up) = self.write(id, rev, |rev| write(garment, rev)).map_err(KeepFault)?;
            return Ok(Kept { page, renamed: None, stays: None, reserve_used: reserve_used || given_up });
        };
        let ours = garment.named(self.free_name(id).map_err(KeepFault)?);
        let mut kept = self.keep(&ours)?;
        if theirs.is_some() {
            self.revs.insert(id.clone(), rev);
        }
        kept.renamed = Some(Box::new(Renamed { ours, theirs }));
        Ok(kept)
    }

    /// Writes the page after `rev`; gives back key and text, and whether the reserve was given up.
    fn write(&mut self, id: &Id, rev: u64, page: impl Fn(u64) -> String) -> Result<((String, String), bool), ShelfFault> {
        // 2^64 writings are not reached by writing, but a number can be typed into a file.
        let rev = rev.saturating_add(1);
        let (key, text) = (page_key(id), page(rev));
        let reserve_used = self.put(&key, &text)?;
        self.revs.insert(id.clone(), rev);
        self.written.insert(id.clone());
        Ok(((key, text), reserve_used))
    }

    /// Copies text that cannot be read to a place of its own before its page is written over.
    fn set_damaged_aside(&self, id: &Id, text: &str) -> Result<bool, ShelfFault> {
        self.put(&format!("{DAMAGED}{}~{}", id.as_str(), checksum(&[text])), text)
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

    /// Deletes a garment. Its page stays as a short line that tells other copies of the notebook. What another window or a newer
    /// version has written since is not deleted unseen.
    ///
    /// # Errors
    /// The shelf refused; the garment is still there.
    pub fn discard(&mut self, id: &Id) -> Result<Kept, KeepFault> {
        let key = page_key(id);
        let known = self.revs.get(id).copied().unwrap_or(0);
        let found = self.shelf.get(&key).map_err(KeepFault)?;
        let mut reserve_used = false;
        let rev = match found.as_deref().map(|text| (text, read_for(id, text))) {
            None => known,
            Some((_, Ok(page))) if page.rev() <= known => known,
            Some((_, Ok(Page::Gone { rev }))) => rev,
            Some((text, Ok(Page::Garment { rev, garment }))) => {
                self.revs.insert(id.clone(), rev);
                let stays = Some(Box::new(Stays { theirs: Some(*garment) }));
                return Ok(Kept { page: (key, text.to_owned()), renamed: None, stays, reserve_used });
            }
            Some((text, Err(Unreadable::Damaged))) => {
                reserve_used = self.set_damaged_aside(id, text).map_err(KeepFault)?;
                known
            }
            Some((text, Err(_))) => {
                let stays = Some(Box::new(Stays { theirs: None }));
                return Ok(Kept { page: (key, text.to_owned()), renamed: None, stays, reserve_used });
            }
        };
        let (page, given_up) = self.write(id, rev, write_gone).map_err(KeepFault)?;
        Ok(Kept { page, renamed: None, stays: None, reserve_used: reserve_used || given_up })
    }

    /// Puts text on the shelf, giving up the reserve if it must; says whether it did.
    fn put(&self, key: &str, text: &str) -> Result<bool, ShelfFault> {
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

    /// Compares the shelf with the pages of a mirror; of each garment the page written more often wins, on both sides. A garment that
    /// was written here since opening, before the mirror's newer page was known, stays beside that one.
    ///
    /// # Errors
    /// The shelf refused before anything was changed. If it refuses later, [`Healed::fault`] says so: what was taken over by then must
    /// reach the screen, or the next edit there would start from an older state.
    pub fn heal(&mut self, mirror: &[(String, String)]) -> Result<Healed, KeepFault> {
        let mut healed = Healed::default();
        if let Err(fault) = self.heal_into(&mut healed, mirror) {
            if healed.garments.is_empty() && healed.gone.is_empty() {
                return Err(KeepFault(fault));
            }
            healed.fault = Some(fault);
        }
        Ok(healed)
    }

    fn heal_into(&mut self, healed: &mut Healed, mirror: &[(String, String)]) -> Result<(), ShelfFault> {
        for (key, text) in mirror {
            let Some(id) = id_of(key) else { continue };
            let Ok(theirs) = read_for(&id, text) else { continue };
            let local = self.shelf.get(key)?;
            let mut mended = false;
            match local.as_deref().map(|text| (text, read_for(&id, text))) {
                Some((_, Ok(page))) if page.rev() >= theirs.rev() => continue,
                Some((_, Ok(Page::Garment { garment, .. }))) if self.written.contains(&id) => {
                    self.heal_apart(healed, &garment, theirs)?;
                    continue;
                }
                Some((text, Err(Unreadable::Damaged))) => {
                    healed.reserve_used |= self.set_damaged_aside(&id, text)?;
                    mended = true;
                }
                Some((_, Err(_))) => continue,
                Some((_, Ok(_))) | None => {}
            }
            healed.reserve_used |= self.put(key, text)?;
            self.revs.insert(id.clone(), theirs.rev());
            match theirs {
                Page::Garment { garment, .. } => healed.garments.push(*garment),
                Page::Gone { .. } => healed.gone.push(id),
            }
            if mended {
                healed.mended.push(key.clone());
            }
        }
        let mirrored: BTreeMap<&str, &str> = mirror.iter().map(|(key, text)| (key.as_str(), text.as_str())).collect();
        for key in self.shelf.keys()? {
            let Some(id) = id_of(&key) else { continue };
            let Some(text) = self.shelf.get(&key)? else { continue };
            let Ok(local) = read_for(&id, &text) else { continue };
            let there = mirrored.get(key.as_str()).map(|text| read_for(&id, text));
            match there {
                // A newer version's page stays in the mirror as it stays on the shelf.
                Some(Err(Unreadable::Newer { .. } | Unreadable::UnknownFamily(_))) => {}
                Some(Ok(page)) if page.rev() >= local.rev() => {}
                _ => healed.to_mirror.push((key, text)),
            }
        }
        Ok(())
    }

    /// The mirror has a newer page of a garment that was edited here meanwhile: ours keeps the name, theirs comes beside it.
    fn heal_apart(&mut self, healed: &mut Healed, ours: &Garment, theirs: Page) -> Result<(), ShelfFault> {
        let rev = theirs.rev();
        if let Page::Garment { garment: theirs, .. } = theirs
            && *theirs != *ours
        {
            let theirs = theirs.named(self.free_name(theirs.id())?);
            let (_, reserve_used) = self.write(theirs.id(), 0, |rev| write(&theirs, rev))?;
            healed.reserve_used |= reserve_used;
            healed.garments.push(theirs);
        }
        let (_, reserve_used) = self.write(ours.id(), rev, |rev| write(ours, rev))?;
        healed.reserve_used |= reserve_used;
        Ok(())
    }

    /// Takes note of what another window wrote under a key; `None` when it removed the key. Word of a page that was read or written
    /// here since comes too late, and changes nothing.
    pub fn written_elsewhere(&mut self, key: &str, text: Option<&str>) -> Elsewhere {
        if let (SETTINGS, Some(text)) = (key, text) {
            return Elsewhere::Chosen(Box::new(Settings::read(text)));
        }
        let Some(id) = id_of(key) else { return Elsewhere::Nothing };
        let Some(text) = text else {
            self.revs.remove(&id);
            return Elsewhere::Gone(id);
        };
        match read_for(&id, text) {
            Ok(page) if self.revs.get(&id).is_some_and(|known| page.rev() <= *known) => Elsewhere::Nothing,
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

    /// Takes a page that could not be read off the shelf for good; one that can be read by now stays.
    ///
    /// # Errors
    /// The shelf refused.
    pub fn drop_set_aside(&mut self, key: &str) -> Result<(), KeepFault> {
        let text = self.shelf.get(key).map_err(KeepFault)?;
        match (id_of(key), text) {
            (Some(id), Some(text)) if read_for(&id, &text).is_ok() => Ok(()),
            (Some(_), _) => self.shelf.remove(key).map_err(KeepFault),
            (None, _) if key.starts_with(PAGE) || key.starts_with(DAMAGED) => self.shelf.remove(key).map_err(KeepFault),
            (None, _) => Ok(()),
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
        self.revs.clear();
        self.written.clear();
        Ok(())
    }
}

fn page_key(id: &Id) -> String {
    format!("{PAGE}{}", id.as_str())
}

fn id_of(key: &str) -> Option<Id> {
    key.strip_prefix(PAGE).and_then(Id::new)
}

/// Reads a page that lies under that name; a garment of another name there is damage.
fn read_for(id: &Id, text: &str) -> Result<Page, Unreadable> {
    match read(text)? {
        Page::Garment { garment, .. } if garment.id() != id => Err(Unreadable::Damaged),
        page => Ok(page),
    }
}

fn ballast() -> String {
    "x".repeat(BALLAST_LENGTH)
}
