//! The stored form: garments to text and back, one page a garment, on a shelf that may fail; what cannot be read is kept and reported.

mod checksum;
mod export;
mod kept;
mod page;
mod scale;
mod settings;
mod shelf;

pub use export::{Change, Import, ImportFault, Mode, export, export_all, import};
pub use kept::{Elsewhere, Healed, KeepFault, Kept, Notebook, Opened, Renamed, SetAside, Stays};
pub use page::{FORM, Page, Unreadable, read, write};
pub use settings::{Settings, TextSize, Theme};
pub use shelf::{FaultyShelf, MemoryShelf, Shelf, ShelfFault};
