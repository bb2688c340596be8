//! What a drawing is made of, and how one is made from a picture and a seed.

use super::chance::Chance;
use super::pen::{Area, FRAME, Pen, clamp};
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
pub fn drawing(picture: &Picture, seed: u64) -> Drawing {
    let (mut sheet, mut chance) = (Sheet::default(), Chance::new(seed));
    picture.draw(&mut sheet, &mut chance);
    Drawing { width: Drawing::WIDTH as u16, height: Drawing::HEIGHT as u16, marks: sheet.marks }
}

/// What the cloth of a drawing is made of.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub(super) enum Ground {
    /// Denim, as most drawings have it.
    #[default]
    Denim,
    /// Plain-woven cloth.
    Plain,
    /// Knitted cloth.
    Knit,
}

impl Ground {
    /// The ink that stands for one of denim where cloth is light: what is dark on denim stays darker than its ground, what shines lighter.
    const fn ink(self, ink: Ink) -> Ink {
        match (self, ink) {
            (Ground::Denim, ink) => ink,
            (_, Ink::ClothDark) => Ink::ClothLight,
            (_, Ink::Cloth) => Ink::ClothPale,
            (_, Ink::ClothLight) => Ink::Weft,
            (_, Ink::ClothPale) => Ink::Paper,
            (_, Ink::Shade) => Ink::Cloth,
            (_, Ink::ThreadLight) => Ink::Thread,
            (_, ink) => ink,
        }
    }
}

/// The drawing under way.
#[derive(Default)]
pub(super) struct Sheet {
    marks: Vec<Mark>,
    /// Of what the cloth is made from here on.
    pub(super) ground: Ground,
}

impl Sheet {
    fn mark(&mut self, ink: Ink, paint: Paint, pen: Pen) {
        let path = pen.finish();
        let held = |length: f64| clamp(length, 0.05, Drawing::WIDTH);
        let paint = match paint {
            Paint::Fill => Paint::Fill,
            Paint::Stroke(width) => Paint::Stroke(held(width)),
            Paint::Dashed(width, dash, gap) => Paint::Dashed(held(width), held(dash), held(gap)),
        };
        if !path.is_empty() {
            self.marks.push(Mark { path, ink: self.ground.ink(ink), paint });
        }
    }

    /// Fills what the pen outlined.
    pub(super) fn fill(&mut self, ink: Ink, pen: Pen) {
        self.mark(ink, Paint::Fill, pen);
    }

    /// Draws along what the pen wrote.
    pub(super) fn stroke(&mut self, ink: Ink, width: f64, pen: Pen) {
        self.mark(ink, Paint::Stroke(width), pen);
    }

    /// Draws along what the pen wrote, in dashes.
    pub(super) fn dash(&mut self, ink: Ink, width: f64, dash: f64, gap: f64, pen: Pen) {
        self.mark(ink, Paint::Dashed(width, dash, gap), pen);
    }

    /// Fills a box.
    pub(super) fn area(&mut self, ink: Ink, area: Area) {
        let mut pen = Pen::new();
        pen.rect(area.x, area.y, area.width, area.height);
        self.fill(ink, pen);
    }

    /// Slanting dashes that make a box read as twill; on other cloth its own threads or loops.
    pub(super) fn twill(&mut self, ink: Ink, area: Area, pitch: f64) {
        let mut pen = Pen::new();
        match self.ground {
            Ground::Denim => {}
            Ground::Plain => return self.stroke(ink, 0.5, Pen::with(|pen| _ = pen.grid(area, pitch * 0.8))),
            Ground::Knit => return self.stroke(ink, 1.0, Pen::with(|pen| _ = pen.hatch(area, pitch * 1.4, 0.0))),
        }
        pen.hatch(area, pitch, area.height * 0.5);
        self.dash(ink, pitch * 0.28, pitch * 1.1, pitch * 0.5, pen);
    }

    /// Denim, face up, over the whole frame.
    pub(super) fn face(&mut self) {
        self.area(Ink::Cloth, FRAME);
        self.twill(Ink::ClothDark, FRAME, 3.9);
    }

    /// Denim, wrong side up, over the whole frame.
    pub(super) fn inside(&mut self) {
        self.area(Ink::ClothPale, FRAME);
        self.twill(Ink::ClothLight, FRAME, 3.9);
    }

    /// Stitches on the face of the cloth, on denim with the shadow that makes them lie on top.
    pub(super) fn stitches(&mut self, width: f64, pen: Pen) {
        if self.ground == Ground::Denim {
            self.stroke(Ink::Shade, width + 1.4, pen.clone());
        }
        self.stroke(Ink::ThreadLight, width, pen);
    }

    /// A ply in section: a thick line with an outline.
    pub(super) fn ply(&mut self, ink: Ink, thickness: f64, pen: Pen) {
        self.stroke(Ink::Edge, thickness + 1.2, pen.clone());
        self.stroke(ink, thickness - 0.4, pen);
    }
}
