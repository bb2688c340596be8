//! What is known of a drawn photograph, and the marks that a person would set on it.

use super::cloth::ClothKind;
use super::ruler::Graduation;
use super::thread::Sewn;

/// How hard a photograph is meant to be.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Level {
    /// Held still, near, in good light.
    Easy,
    /// As people take them.
    Normal,
    /// Blurred, dim, steep or of one colour: an honest program refuses some of these.
    Hard,
}

/// A point of the picture in pixels from its upper left corner, the middle of the first pixel at 0.5.
pub type Pixel = [f64; 2];

/// What gives the scale, with the marks set on it; marks carry a person's error.
#[derive(Clone, PartialEq, Debug)]
pub enum Scale {
    /// Two marks on lines of a ruler.
    Ruler {
        /// How the ruler is divided.
        divided: Graduation,
        /// The two marks.
        marks: [Pixel; 2],
        /// What lies between them on the ruler, mm.
        known_mm: f64,
    },
    /// The four corners of an ID-1 card (85.60 by 53.98 mm), as if they were sharp, clockwise from the upper left of its print.
    Card {
        /// The four marks.
        corners: [Pixel; 4],
    },
}

/// The truth of a photograph of a seam. Lengths on the cloth are exact; marks are where a person would have set them.
#[derive(Clone, PartialEq, Debug)]
pub struct SeamTruth {
    /// Two marks along the seam, with a person's error (standard deviation 0.22 mm, at least 2 pixels).
    pub seam: [Pixel; 2],
    /// What gives the scale.
    pub scale: Scale,
    /// Mean density on the cloth between the first and the last needle hole in reach of the marks, per inch. A skipped stitch counts as two
    /// pitches.
    pub stitches_per_inch: f64,
    /// Whole stitches between those holes, without the skipped.
    pub stitches_between: usize,
    /// Stitches skipped between them.
    pub skipped: usize,
    /// Coefficient of variation of the pitch between them.
    pub pitch_cv: f64,
    /// How hard the photograph is meant to be.
    pub level: Level,
    /// What it is sewn in.
    pub cloth: ClothKind,
    /// How it is sewn.
    pub sewn: Sewn,
    /// Whether the thread has the cloth's own colour.
    pub tonal: bool,
    /// Whether the seam is an arc.
    pub curved: bool,
    /// How far the camera leans from looking straight down, degrees.
    pub tilt_deg: f64,
    /// Mean pixels a pitch in the picture, between those holes.
    pub px_per_stitch: f64,
    /// Rows sewn side by side; the marks lie on one.
    pub rows: usize,
    /// From the marked row to the near edge of ruler or card, where they come nearest, mm on the cloth.
    pub gap_mm: f64,
    /// The needle holes between the first and the last in reach of the marks, exact.
    pub holes: Vec<Pixel>,
}
