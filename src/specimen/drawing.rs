//! What a drawing is made of, and how one is made from a picture and a seed.

use super::picture::Picture;

/// A finished drawing: marks to be painted in order, in a frame of [`Drawing::WIDTH`] by [`Drawing::HEIGHT`] units.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// Width of the frame in drawing units.
    pub width: u16,
    /// Height of the frame in drawing units.
    pub height: u16,
    /// What to paint, first to last.
    pub marks: Vec<Mark>,
}

impl Drawing {
    /// Width of every frame in drawing units.
    pub const WIDTH: f64 = 120.0;
    /// Height of every frame in drawing units; 3:2.
    pub const HEIGHT: f64 = 80.0;
    /// Millimetres of cloth that the frame shows across where a picture has real stitches in it.
    pub const MM_WIDE: f64 = 48.0;
}

/// One path and how it is painted. Caps and joins are round.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// SVG path data, coordinates rounded to 0.1.
    pub path: String,
    /// What it stands for; the colour is the screen's business.
    pub ink: Ink,
    /// Filled, or drawn along.
    pub paint: Paint,
}

/// How a path is painted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Paint {
    /// Filled, no outline.
    Fill,
    /// Drawn along, this many units wide.
    Stroke(f64),
    /// Drawn along in dashes: width, length of dash, length of gap.
    Dashed(f64, f64, f64),
}

/// What a mark stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Ink {
    /// Cloth in shadow, or never washed.
    ClothDark,
    /// Cloth.
    Cloth,
    /// Cloth that lost some colour, or catches the light.
    ClothLight,
    /// Cloth faded nearly to its weft.
    ClothPale,
    /// Undyed weft, pocketing, the wrong side.
    Weft,
    /// Sewing thread on paper or in shadow.
    Thread,
    /// Sewing thread on cloth.
    ThreadLight,
    /// Shadow.
    Shade,
    /// Outline.
    Edge,
    /// Metal.
    Metal,
    /// What lies behind: table, tissue, label.
    Paper,
    /// Colour that came off.
    Stain,
    /// Tape measure.
    Tape,
}

/// Draws a picture. The same picture and seed give the same drawing; any knob values are accepted and clamped.
pub fn drawing(_picture: &Picture, _seed: u64) -> Drawing {
    Drawing { width: Drawing::WIDTH as u16, height: Drawing::HEIGHT as u16, marks: Vec::new() }
}
