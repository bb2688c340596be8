//! Stitches per inch from a count over a length.

use super::Instrument;

/// Stitches per inch counted over a length of seam.
pub static STITCH_DENSITY: Instrument = Instrument { key: "stitch-density" };
