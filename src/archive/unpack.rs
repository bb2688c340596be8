//! A zip read: its files by name, each within bounds. Bytes from outside are taken for hostile.

use std::borrow::Cow;
use std::cell::Cell;
use std::collections::BTreeMap;
use std::fmt;

use miniz_oxide::inflate::decompress_to_vec_with_limit;
use rawzip::{CompressionMethod, ZipArchive, ZipArchiveEntryWayfinder, ZipSliceArchive};

use super::crc::crc32;
use crate::say;

/// Why a zip is refused as a whole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ArchiveFault {
    /// It is no zip, or it is cut short.
    Damaged,
    /// It holds more files than are looked at.
    TooMany,
}

impl fmt::Display for ArchiveFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            ArchiveFault::Damaged => {
                say!("This zip cannot be read: it is cut short or was altered. Nothing was changed. Save it once more where it came from.")
            }
            ArchiveFault::TooMany => {
                say!("This zip holds more files than a rack with photographs could. Nothing was changed. Choose the one that the app saved.")
            }
        })
    }
}

/// Why a file of a zip cannot be had.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileFault {
    /// There is none of that name.
    Missing,
    /// There are two of that name, and nothing says which is meant.
    Twice,
    /// It is cut short, or its bytes are not those that it was packed from.
    Damaged,
    /// It is larger than was asked for, or all together are.
    TooLarge,
    /// It is encrypted, or packed in another way than stored or deflated.
    OtherPacking,
}

impl fmt::Display for FileFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            FileFault::Missing => say!("It is not in this zip."),
            FileFault::Twice => say!("It is twice in this zip."),
            FileFault::Damaged => say!("It is cut short or was altered."),
            FileFault::TooLarge => say!("It is larger than it can be."),
            FileFault::OtherPacking => {
                say!("It is packed in a way that this app does not read. Unpack the zip and pack it again as a plain zip.")
            }
        })
    }
}

/// Where the bytes of a file lie.
#[derive(Clone, Copy)]
struct Place {
    way: ZipArchiveEntryWayfinder,
    method: CompressionMethod,
    encrypted: bool,
    crc: u32,
    size: u64,
    twice: bool,
}

/// A zip in memory.
pub struct Archive<'a> {
    bytes: &'a [u8],
    zip: ZipSliceArchive<&'a [u8]>,
    files: BTreeMap<String, Place>,
    left: Cell<usize>,
}

/// Whether bytes begin as a zip does, with a file or empty.
pub fn looks_like_archive(bytes: &[u8]) -> bool {
    bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(b"PK\x05\x06")
}

/// A name that is one: parts between `/`, none empty, none that climbs, no drive, no other system's sign between folders.
fn is_plain(name: &str) -> bool {
    let part = |part: &str| !part.is_empty() && part != "." && part != "..";
    name.split('/').all(part) && !name.contains(['\\', ':', '\0'])
}

impl<'a> Archive<'a> {
    /// Most files looked at.
    pub const MOST_FILES: usize = 60_000;
    /// Most bytes that all files read may come to. Judgement: two thousand photographs of 500 KB, and less than a telephone's memory.
    pub const MOST_BYTES: usize = 1_000_000_000;

    /// Reads the list of files. Folders, and names that are not plain ones within the zip, are left out of it: nothing can ask for them.
    ///
    /// # Errors
    /// [`ArchiveFault`].
    pub fn open(bytes: &'a [u8]) -> Result<Archive<'a>, ArchiveFault> {
        let zip = ZipArchive::from_slice(bytes).map_err(|_| ArchiveFault::Damaged)?;
        let mut files: BTreeMap<String, Place> = BTreeMap::new();
        let (mut entries, mut seen) = (zip.entries(), 0);
        while let Some(entry) = entries.next_entry().map_err(|_| ArchiveFault::Damaged)? {
            seen += 1;
            if seen > Archive::MOST_FILES {
                return Err(ArchiveFault::TooMany);
            }
            let path = entry.file_path();
            let Ok(name) = std::str::from_utf8(path.as_bytes()) else { continue };
            if !is_plain(name) {
                continue;
            }
            let place = Place {
                way: entry.wayfinder(),
                method: entry.compression_method(),
                encrypted: entry.flags().is_encrypted(),
                crc: entry.crc32(),
                size: entry.uncompressed_size_hint(),
                twice: false,
            };
            files.entry(name.to_owned()).and_modify(|known| known.twice = true).or_insert(place);
        }
        // The list ends where the next sign is no file's; one that was cut has fewer than it says.
        if zip.entries_hint() != seen as u64 {
            return Err(ArchiveFault::Damaged);
        }
        Ok(Archive { bytes, zip, files, left: Cell::new(Archive::MOST_BYTES) })
    }

    /// The same with another bound in place of [`Archive::MOST_BYTES`].
    pub fn within(self, most: usize) -> Archive<'a> {
        Archive { left: Cell::new(most), ..self }
    }

    /// The names in it.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        self.files.keys().map(String::as_str)
    }

    /// The bytes of a file of at most so many. What was read counts against [`Archive::MOST_BYTES`], however often it is the same bytes, so
    /// that a small zip cannot fill the memory.
    ///
    /// # Errors
    /// [`FileFault`].
    pub fn file(&self, name: &str, most: usize) -> Result<Cow<'a, [u8]>, FileFault> {
        let place = self.files.get(name).ok_or(FileFault::Missing)?;
        if place.twice {
            return Err(FileFault::Twice);
        }
        if place.encrypted {
            return Err(FileFault::OtherPacking);
        }
        let most = most.min(self.left.get());
        if place.size > most as u64 {
            return Err(FileFault::TooLarge);
        }
        let (from, to) = self.zip.get_entry(place.way).map_err(|_| FileFault::Damaged)?.compressed_data_range();
        let range = usize::try_from(from).ok().zip(usize::try_from(to).ok());
        let packed = range.and_then(|(from, to)| self.bytes.get(from..to)).ok_or(FileFault::Damaged)?;
        let read = match place.method {
            CompressionMethod::STORE => Cow::Borrowed(packed),
            // No more is made than the directory says, so a file that swells beyond that stops there.
            CompressionMethod::DEFLATE => {
                Cow::Owned(decompress_to_vec_with_limit(packed, place.size as usize).map_err(|_| FileFault::Damaged)?)
            }
            _ => return Err(FileFault::OtherPacking),
        };
        if read.len() as u64 != place.size || crc32(read.iter().copied()) != place.crc {
            return Err(FileFault::Damaged);
        }
        self.left.set(self.left.get().saturating_sub(read.len()));
        Ok(read)
    }
}

#[cfg(test)]
mod tests {
    use super::is_plain;

    #[test]
    fn a_name_stays_within_the_zip() {
        for name in ["garments.json", "photos/a.jpg", "photos/...", "ä/ö"] {
            assert!(is_plain(name), "{name}");
        }
        for name in ["", "/etc/x", "../x", "a/../x", "a/./x", "a//x", "a/", "a\\x", "C:x", "a\0b"] {
            assert!(!is_plain(name), "{name:?}");
        }
    }
}
