//! What a worker is asked about a picture, and what it answers: one form for all instruments, so that it can be sent.

use serde::{Deserialize, Serialize};

use crate::{
    Graduation, Object, Patch, Point, Raster, Said, ScaleFault, SeamCount, SeamRefusal, StainReading, StainRefusal, WeaveReading,
    WeaveRefusal,
};

/// A question about a picture.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum Ask {
    /// Stitches between two places on a seam, and what the person said about a first reading.
    Seam(Point, Point, Object, Said),
    /// Yarns round two places on one yarn.
    Weave(Point, Point, Object),
    /// A stain, and white patches near it.
    Stain(Patch, Vec<Patch>),
}

/// What was found about the scale, to be shown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Found {
    /// What the ruler is graduated in, when its graduations were found.
    pub graduation: Option<Graduation>,
    /// Places to be shown.
    pub places: Vec<Point>,
    /// How far the phone was tilted, in degrees, as far as the object tells.
    pub tilt: Option<f64>,
}

/// What is answered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum Answer {
    /// There is no scale.
    NoScale(ScaleFault),
    /// Stitches, or why not.
    Seam(Found, Result<SeamCount, SeamRefusal>),
    /// Yarns, or why not.
    Weave(Found, Result<WeaveReading, WeaveRefusal>),
    /// The grade of a stain, or why not.
    Stain(Result<StainReading, StainRefusal>),
}

/// Answers a question about a picture.
pub fn answer(picture: &Raster, ask: &Ask) -> Answer {
    let scaled = |object: &Object| crate::scale(picture, object);
    let found = |scale: &crate::Scale| Found { graduation: scale.graduation, places: scale.found.clone(), tilt: scale.tilt };
    match ask {
        Ask::Seam(from, to, object, said) => match scaled(object) {
            Err(fault) => Answer::NoScale(fault),
            Ok(scale) => Answer::Seam(found(&scale), crate::count(picture, *from, *to, &scale, *said)),
        },
        Ask::Weave(from, to, object) => match scaled(object) {
            Err(fault) => Answer::NoScale(fault),
            Ok(scale) => Answer::Weave(found(&scale), crate::yarns(picture, *from, *to, &scale)),
        },
        Ask::Stain(stain, white) => Answer::Stain(crate::grade(picture, *stain, white)),
    }
}
