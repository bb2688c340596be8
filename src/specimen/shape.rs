//! Cut and balance: twist, pairs, bagging, matching.

/// The lower leg lying flat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LegTwist {
    /// Distance at the hem from the fold to the outseam in mm, 0 to 60.
    pub twist_mm: f64,
}

/// Back pockets and yoke ends about the centre seam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BackPockets {
    /// How much lower one pocket sits, in mm, 0 to 12.
    pub level_off_mm: f64,
    /// How much farther it sits from the centre seam, in mm, 0 to 12.
    pub centre_off_mm: f64,
    /// How far the yoke ends miss each other, in mm, 0 to 12.
    pub yoke_off_mm: f64,
}

/// Knee, seat and waistband after sitting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bagging {
    /// How far knee and seat stand out, in mm, 0 to 40.
    pub bag_mm: f64,
    /// How far the waistband gapes at the back, in mm, 0 to 50.
    pub gape_mm: f64,
}

/// A pattern running across a seam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Matching {
    /// How far the pattern misses at the seam, in mm, 0 to 12.
    pub miss_mm: f64,
    /// Whether one piece is made up of two.
    pub pieced: bool,
}

/// Both legs laid on the centre line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Symmetry {
    /// How much longer one leg is, in mm, 0 to 40.
    pub length_off_mm: f64,
    /// How much wider it is at the hem, in mm, 0 to 30.
    pub width_off_mm: f64,
}
