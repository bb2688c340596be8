//! What was done to the cloth after sewing: wash, fade, whiskers, and the harm they do.

/// State of the cloth after washing, across a seam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wash {
    /// Colour lost, 0 (raw) to 1 (bleached).
    pub loss: f64,
    /// Light ridges and dark hollows along the seam, 0 to 1.
    pub high_low: f64,
    /// Irregularity of the ground, 0 to 1.
    pub mottle: f64,
    /// Starch and fold lines of cloth that has never met water.
    pub creased: bool,
}

/// Whiskers on both thighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Whiskers {
    /// How they were made.
    pub work: WhiskerWork,
    /// Lines on each thigh, 0 to 7.
    pub lines: u8,
}

/// How whiskers were made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhiskerWork {
    /// There are none.
    None,
    /// Printed or sprayed: hard, even bars.
    Printed,
    /// Laser: fine, crisp, both legs the same in a mirror.
    Laser,
    /// Hand: soft, tapering, the legs differ.
    Hand,
    /// Hand work with pressed creases that stand up.
    Creased,
    /// Worked, then torn and repaired.
    Torn,
}

/// A faded thigh.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fade {
    /// How the fade ends.
    pub edge: FadeEdge,
}

/// How a fade ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FadeEdge {
    /// Hard lines, printed look.
    Hard,
    /// A flat patch that stops abruptly.
    Abrupt,
    /// Softly graded.
    Graded,
    /// Graded, follows the seams and the place where cloth rubs.
    Natural,
}

/// What finishing has done to the cloth at a pocket edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wear {
    /// The harm.
    pub harm: Harm,
}

/// Harm done by finishing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Harm {
    /// None.
    None,
    /// Slight wear on the edge.
    Edge,
    /// Thin spots where the weft shows.
    Thin,
    /// Holes or an edge worn through.
    Hole,
    /// A meant hole, not secured: weft threads hang free.
    HoleOpen,
    /// A meant hole, backed and sewn round.
    HoleRepaired,
}
