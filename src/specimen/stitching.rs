//! Rows of topstitching and what goes wrong with them.

/// Rows of topstitching on the face of the cloth. The frame shows [`super::Drawing::MM_WIDE`] mm of cloth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Topstitch {
    /// Stitches per inch, 2 to 20.
    pub stitches_per_inch: f64,
    /// Rows side by side, 1 to 3.
    pub rows: u8,
    /// Distance from row to row in mm, 1.5 to 10.
    pub gap_mm: f64,
    /// Spread of stitch length as a share of the mean, 0 (even) to 0.6.
    pub unevenness: f64,
    /// Stitches that did not catch, 0 to 6.
    pub skips: u8,
    /// Places where sewing stopped and began again over the old row, 0 to 6.
    pub restarts: u8,
    /// Thread piled up at each restart: 0 (a tidy overlap) to 1 (a nest).
    pub bunching: f64,
    /// Thread ends left long, 0 to 6.
    pub loose_ends: u8,
    /// How far a row strays from its line in mm, 0 to 4.
    pub wander_mm: f64,
    /// How the row runs.
    pub course: Course,
}

/// How a row of topstitching runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Course {
    /// Straight across.
    Straight,
    /// Round a curve and over the thick place where another seam crosses.
    CurveOverJoin,
    /// Round a pocket corner that turns on one needle hole.
    CrispCorner,
    /// Round a pocket corner that is cut short or overshot.
    BluntCorner,
}

/// Where rows of stitching end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RowEnd {
    /// What was done at the end.
    pub ending: Ending,
}

/// What was done at the end of a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// Cut off and left: nothing holds it.
    Loose,
    /// An overlap or knot that can be seen at arm's length.
    Untidy,
    /// Sewn back over itself.
    BackTacked,
    /// Sewn back over itself under another piece, out of sight.
    Hidden,
}

/// A seam in slanting light.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pucker {
    /// Height of the ripples in mm, 0 (flat) to 3.
    pub height_mm: f64,
    /// Length of one ripple in mm, 4 to 20. Short ripples look gathered, long ones wavy.
    pub length_mm: f64,
}

/// Thread ends left hanging.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ThreadTails {
    /// Ends longer than 3 mm, 0 to 14.
    pub ends: u8,
}
