//! Places where seams cross or pieces end: seat and yoke, crotch, belt loop.

use super::seam::Join;

/// Where seat seam and yoke cross, from inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeatYoke {
    /// How the seams are joined.
    pub join: Join,
    /// How far the two yoke ends miss each other at the seat seam, in mm, 0 (meet) to 12.
    pub miss_mm: f64,
}

/// Where four seams meet at the crotch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crotch {
    /// How far the inside leg seams miss each other, in mm, 0 (meet) to 12.
    pub miss_mm: f64,
    /// Whether the seam gapes and threads are pulled.
    pub gap: bool,
    /// Whether a bar tack holds the crossing.
    pub tack: bool,
}

/// A belt loop on the waistband.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BeltLoop {
    /// Bar tacks that hold it, 0 to 2.
    pub tacks: u8,
    /// Whether its ends are caught in the waistband seam.
    pub caught: bool,
    /// Degrees off upright, -20 to 20.
    pub tilt: i8,
}
