//! Several files as one: a zip that is written and read here, and knows nothing of garments.

mod crc;
mod pack;
mod unpack;

pub use crc::{Crc32, crc32};
pub use pack::{Pack, PackFault};
pub use unpack::{Archive, ArchiveFault, FileFault, looks_like_archive};
