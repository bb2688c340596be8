//! Second-hand pieces of any family: what wear, repairs, stains and keeping have left. It says nothing of how well a piece was made.

mod cloth;
mod condition;
mod marks;
mod parts;
mod sewn;

pub use condition::{Condition, Look};

pub(in crate::catalog) use cloth::{PILLS, RUBBED, THIN};
pub(in crate::catalog) use marks::{COLOUR, KEPT, STAINS};
pub(in crate::catalog) use parts::{FASTENING, LINING, STRETCH};
pub(in crate::catalog) use sewn::{ALTERED, MENDS, SEAMS};

/// Every condition; a family puts those that make sense for it.
pub static CONDITIONS: [&Condition; 12] =
    [&STAINS, &KEPT, &RUBBED, &THIN, &PILLS, &COLOUR, &SEAMS, &MENDS, &FASTENING, &STRETCH, &ALTERED, &LINING];

/// Cautions that hold for anything worn before. Common practice, no source.
pub static CAUTIONS: &[&str] = &[
    "Wash or clean it before you wear it, as its label allows.",
    "Feel pockets, hems and linings from outside first: pins, needles or blades may be in them.",
    "Bag what smells of damp or shows webs, and keep it away from other clothes until it is clean.",
    "Old dyes, finishes and mothproofing may not meet today’s rules. Air the piece, and wash your hands after handling it.",
    "Old children’s clothes can have cords and small parts that local rules forbid now.",
];
