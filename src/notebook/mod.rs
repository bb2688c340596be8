//! The stored form: garments and people to text and back, one page each, on a shelf that may fail; what cannot be read is kept and reported.

mod aside;
mod bundle;
mod checksum;
mod export;
mod exporting;
mod fitting;
mod healing;
mod joining;
mod keeping;
mod kept;
mod known;
mod lessons;
mod page;
mod person;
mod photographs;
mod record;
mod rescue;
mod scale;
mod settings;
mod shelf;
mod trade_show;
mod trials;

pub use bundle::{Brought, Bundle, BundleFault, photographs_of, unbundle};
pub use export::{Change, Import, ImportFault, Mode, export, export_all, import, import_all};
pub use exporting::{ExportPieces, export_pieces};
pub use healing::{Elsewhere, Healed};
pub use joining::{Choice, settled};
pub use keeping::{Keeping, Unheld};
pub use kept::{KeepFault, Kept, Notebook, Opened, Renamed, SetAside, Stays};
pub use page::{FORM, Page, Unreadable, read, write};
pub use photographs::photographs_perhaps_named;
pub use record::{PageName, Record};
pub use settings::{Settings, TextSize, Theme};
pub use shelf::{FaultyShelf, MemoryShelf, Shelf, ShelfFault};
pub use trials::MOST_TRIALS;
