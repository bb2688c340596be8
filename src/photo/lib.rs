//! Stitches, yarns and stains read from the pixels of a photograph, or a refusal that says why.
//! What a person is told of it, and what to do, stands in the page: it has the language, this package has none.
//!
//! Nothing here knows a browser, a file or a clock: pixels and marks in, readings out. Coordinates in the picture are pixels from its
//! top left corner, x to the right, y down; whole numbers lie on the centres of pixels. Lengths on the cloth are millimetres.

mod ask;
mod plane;
mod raster;
mod scale;
mod seam;
mod stain;
mod weave;
mod wire;

pub use ask::{Answer, Ask, Found, answer};
pub use plane::{Plane, Point};
pub use raster::Raster;
pub use scale::{Drift, Graduation, Object, Scale, ScaleFault, face, scale};
pub use seam::{Cause, Part, Said, SeamCount, SeamRefusal, Stitch, count};
pub use stain::{Patch, StainReading, StainRefusal, grade};
pub use weave::{WeaveReading, WeaveRefusal, yarns};
pub use wire::{ask_of, asked, heard, told};
