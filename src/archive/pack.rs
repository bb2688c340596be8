//! A zip written file by file, each stored as it is: pictures are packed already, and notes are small beside them.
//!
//! Written here and not by the crate that reads: that one, like others that write without going back, puts the size of a stored file behind
//! it, and readers that go from front to back cannot tell then where it ends.

use std::fmt;

use super::crc::crc32;
use crate::say;
use crate::trade::Day;

/// Why a file is not taken into a zip.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PackFault {
    /// The plain form of a zip ends at 4 GB, at 65 535 files, and at names of 65 535 bytes.
    TooLarge,
}

impl fmt::Display for PackFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(say!("This is more than one zip can hold. Choose fewer garments, and save them in several."))
    }
}

/// A zip that is being written: what goes before each file is handed out at once, so that the files themselves need not be held here.
///
/// # Source
/// APPNOTE.TXT of the zip format, 6.3.10: 4.3.7 (before each file), 4.3.12 (directory), 4.3.16 (end), 4.4.6 (days).
#[derive(Clone, Debug)]
pub struct Pack {
    day: u16,
    at: u32,
    count: u16,
    directory: Vec<u8>,
}

/// Version of the format that a reader must know: 2.0, folders.
const NEEDS: u16 = 20;
/// Names are in UTF-8.
const UTF_8: u16 = 1 << 11;

impl Pack {
    /// An empty zip; its files carry that day, at midnight. The form begins with 1980 and ends with 2107.
    pub fn new(made: Day) -> Pack {
        let (year, month, day) = made.parts();
        let day = ((year.clamp(1980, 2107) - 1980) << 9) | (u16::from(month) << 5) | u16::from(day);
        Pack { day, at: 0, count: 0, directory: Vec::new() }
    }

    /// Takes a file, and gives what goes into the zip before its bytes; these follow as they are.
    ///
    /// # Errors
    /// [`PackFault::TooLarge`], and the file is not taken.
    pub fn add(&mut self, name: &str, bytes: &[u8]) -> Result<Vec<u8>, PackFault> {
        let size = u32::try_from(bytes.len()).map_err(|_| PackFault::TooLarge)?;
        let length = u16::try_from(name.len()).map_err(|_| PackFault::TooLarge)?;
        let count = self.count.checked_add(1).filter(|count| *count < u16::MAX).ok_or(PackFault::TooLarge)?;
        let before = 30 + u32::from(length);
        let next = self.at.checked_add(before).and_then(|at| at.checked_add(size)).ok_or(PackFault::TooLarge)?;
        let directory = self.directory.len() as u64 + 46 + u64::from(length);
        if u64::from(next) + directory >= u64::from(u32::MAX) {
            return Err(PackFault::TooLarge);
        }
        // What stands in both places: version, flags, stored, midnight, day, checksum, size packed, size, length of the name, nothing more.
        let mut common = Vec::new();
        for word in [NEEDS, UTF_8, 0, 0, self.day] {
            common.extend(word.to_le_bytes());
        }
        for long in [crc32(bytes.iter().copied()), size, size] {
            common.extend(long.to_le_bytes());
        }
        for word in [length, 0] {
            common.extend(word.to_le_bytes());
        }
        let mut header = b"PK\x03\x04".to_vec();
        header.extend(&common);
        header.extend(name.as_bytes());
        self.directory.extend(b"PK\x01\x02");
        self.directory.extend(NEEDS.to_le_bytes());
        self.directory.extend(&common);
        // No comment, first disk, no marks of ours nor of a system.
        self.directory.extend([0; 10]);
        self.directory.extend(self.at.to_le_bytes());
        self.directory.extend(name.as_bytes());
        (self.at, self.count) = (next, count);
        Ok(header)
    }

    /// What closes the zip.
    pub fn end(self) -> Vec<u8> {
        let mut end = self.directory;
        // As `add` saw to it that it fits, nothing is cut here.
        let size = end.len() as u32;
        end.extend(b"PK\x05\x06\0\0\0\0");
        end.extend(self.count.to_le_bytes());
        end.extend(self.count.to_le_bytes());
        end.extend(size.to_le_bytes());
        end.extend(self.at.to_le_bytes());
        end.extend([0; 2]);
        end
    }
}
