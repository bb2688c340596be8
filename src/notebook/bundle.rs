//! An export with its photographs as one zip: `garments.json`, and `photos/ID.jpg` for each picture; and such a zip read back.
//!
//! The form is the zip's own, so that any program can look into it. What is in it is trusted no further than it proves itself: the notes
//! by their checksum, a picture by its name, which is worked out from its bytes.

use std::borrow::Cow;
use std::collections::BTreeSet;
use std::fmt;

use super::importing::{Change, ImportFault, Mode, import};
use crate::archive::{Archive, ArchiveFault, FileFault, Pack, PackFault};
use crate::garment::{Garment, PhotographId};
use crate::say;
use crate::trade::Day;

/// The file that holds the notes.
const GARMENTS: &str = "garments.json";
/// Most bytes of notes: as many as an export alone may have.
const MOST_NOTES: usize = 50_000_000;

/// The file of a picture within the zip.
fn file_of(id: PhotographId) -> String {
    format!("photos/{id}.jpg")
}

/// The photographs that these garments name, each once, in order.
pub fn photographs_of<'a>(garments: impl IntoIterator<Item = &'a Garment>) -> Vec<PhotographId> {
    let mut seen = BTreeSet::new();
    let all = garments.into_iter().flat_map(|garment| garment.photographs().all()).map(|one| one.id());
    all.filter(|id| seen.insert(*id)).collect()
}

/// A zip that is being written. Its parts are handed out one by one, since all pictures together may be more than fits in memory.
#[derive(Clone, Debug)]
pub struct Bundle(Pack);

impl Bundle {
    /// Begins a zip with an export in it; with the bytes that it begins with.
    ///
    /// # Errors
    /// [`PackFault`].
    pub fn begin(export: &str, made: Day) -> Result<(Bundle, Vec<u8>), PackFault> {
        let mut pack = Pack::new(made);
        let mut bytes = pack.add(GARMENTS, export.as_bytes())?;
        bytes.extend(export.as_bytes());
        Ok((Bundle(pack), bytes))
    }

    /// Adds a picture; with the bytes that go before its own. None where the bytes are not those that the name was worked out from: what
    /// was damaged here is not to be handed on as whole.
    ///
    /// # Errors
    /// [`PackFault`].
    pub fn add(&mut self, id: PhotographId, picture: &[u8]) -> Result<Option<Vec<u8>>, PackFault> {
        if PhotographId::of(picture) != id {
            return Ok(None);
        }
        self.0.add(&file_of(id), picture).map(Some)
    }

    /// The bytes that close it.
    pub fn end(self) -> Vec<u8> {
        self.0.end()
    }
}

/// Why a zip is not taken. Nothing has been changed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BundleFault {
    /// The zip as a whole.
    Archive(ArchiveFault),
    /// The file of notes in it.
    Notes(FileFault),
    /// The notes themselves.
    Import(ImportFault),
}

impl fmt::Display for BundleFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            BundleFault::Archive(fault) => fault.fmt(f),
            BundleFault::Notes(FileFault::Missing) => f.write_str(&say!(
                "There is no {file} in this zip, so it is not one that the app saved. Nothing was changed.",
                file = GARMENTS
            )),
            BundleFault::Notes(fault) => {
                f.write_str(&say!("{file} in this zip cannot be read. {fault} Nothing was changed.", file = GARMENTS, fault))
            }
            BundleFault::Import(fault) => fault.fmt(f),
        }
    }
}

/// What a zip brought.
#[derive(Clone, Debug, PartialEq)]
pub struct Brought<'a> {
    /// The export, as [`import_all`](super::import_all) takes it.
    pub notes: Cow<'a, str>,
    /// The pictures that its garments name, each found to be the one named.
    pub photographs: Vec<(PhotographId, Cow<'a, [u8]>)>,
    /// Pictures that its garments name and that are not in it.
    pub missing: usize,
    /// Pictures that are in it under the name of another, damaged, too large or packed in another way; they are not taken.
    pub refused: Vec<(PhotographId, FileFault)>,
}

/// Reads a zip. A picture that is missing or refused costs nothing but itself.
///
/// # Errors
/// [`BundleFault`] where there are no notes to be had of it.
pub fn unbundle(bytes: &[u8]) -> Result<Brought<'_>, BundleFault> {
    let archive = Archive::open(bytes).map_err(BundleFault::Archive)?;
    let damaged = || BundleFault::Notes(FileFault::Damaged);
    let notes = match archive.file(GARMENTS, MOST_NOTES).map_err(BundleFault::Notes)? {
        Cow::Borrowed(bytes) => Cow::Borrowed(std::str::from_utf8(bytes).map_err(|_| damaged())?),
        Cow::Owned(bytes) => Cow::Owned(String::from_utf8(bytes).map_err(|_| damaged())?),
    };
    // With nothing here, every garment of the file is one to be added.
    let changes = import(&notes, &[], Mode::Merge).map_err(BundleFault::Import)?.changes;
    let garments = changes.iter().filter_map(|change| match change {
        Change::Add(garment) => Some(garment),
        _ => None,
    });
    let mut brought = Brought { notes: notes.clone(), photographs: Vec::new(), missing: 0, refused: Vec::new() };
    for id in photographs_of(garments) {
        match archive.file(&file_of(id), MOST_PICTURE) {
            Ok(picture) if PhotographId::of(&picture) == id => brought.photographs.push((id, picture)),
            Ok(_) => brought.refused.push((id, FileFault::Damaged)),
            Err(FileFault::Missing) => brought.missing += 1,
            Err(fault) => brought.refused.push((id, fault)),
        }
    }
    Ok(brought)
}

/// Most bytes of one picture. Judgement: ten times what one of 1600 pixels takes at the most.
const MOST_PICTURE: usize = 20_000_000;
