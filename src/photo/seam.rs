//! Stitches counted along a seam.

use std::fmt;

use serde::{Deserialize, Serialize};

use crate::{Point, Raster, Scale};

/// What a reading from a picture can be off by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Cause {
    /// Where marks were set and graduations found.
    Scale,
    /// The object lies nearer to the phone than the cloth, or further.
    Height,
    /// The phone was tilted, and the seam does not lie under the object.
    Tilt,
    /// Where stitches or yarns begin and end.
    Counting,
}

/// One entry of an uncertainty budget: what it comes from, and its standard uncertainty as a share of the reading.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Part {
    /// What it comes from.
    pub from: Cause,
    /// Standard uncertainty as a share: 0.01 is one per cent.
    pub share: f64,
}

/// One stitch on the picture, from needle hole to needle hole (pixels).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Stitch {
    /// Where it begins.
    pub from: Point,
    /// Where it ends.
    pub to: Point,
    /// Whether it is so long that a stitch seems to have been skipped inside.
    pub skipped: bool,
}

/// What was counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SeamCount {
    /// Mean length of a stitch, mm on the cloth.
    pub stitch_mm: f64,
    /// What makes it uncertain.
    pub budget: Vec<Part>,
    /// The stitches counted, in order along the seam.
    pub stitches: Vec<Stitch>,
    /// Coefficient of variation of the length of the stitches, slow changes along the seam taken out.
    pub unevenness: f64,
    /// Pixels of the picture in a stitch.
    pub px_per_stitch: f64,
}

/// Why the stitches were not counted.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum SeamRefusal {
    /// Nothing that looks like a row of stitches lies between the marks.
    NoSeam,
}

impl fmt::Display for SeamRefusal {
    /// The reason and what to do.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            SeamRefusal::NoSeam => f.write_str("No row of stitches stands out between the marks. Mark the thread itself, or take the picture closer, with light from the side."),
        }
    }
}

/// Counts the stitches between two places on a seam.
pub fn count(_picture: &Raster, _from: Point, _to: Point, _scale: &Scale) -> Result<SeamCount, SeamRefusal> {
    Err(SeamRefusal::NoSeam)
}
