//! What washing and rubbing did to the colour: wash and fade.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp, feather, leaf};
use super::stitching::ridge;
use crate::say;

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

impl Wash {
    pub(super) fn words(&self) -> String {
        let mut words = String::from(match clamp(self.loss, 0.0, 1.0) {
            loss if loss < 0.12 => say!("dark cloth, never washed"),
            loss if loss < 0.3 => say!("dark cloth, rinsed"),
            loss if loss < 0.5 => say!("cloth that lost a little colour"),
            loss if loss < 0.75 => say!("cloth faded by stone or bleach"),
            _ => say!("cloth faded in many steps"),
        });
        if self.creased {
            words.push_str(", ");
            words.push_str(say!("stiff with sharp folds"));
        }
        if self.high_low > 0.1 {
            words.push_str(", ");
            words.push_str(if self.high_low > 0.6 {
                say!("strong light ridges along the seam")
            } else {
                say!("light ridges along the seam")
            });
        }
        if self.mottle > 0.05 {
            words.push_str(", ");
            words.push_str(if self.mottle > 0.5 { say!("many tones") } else { say!("two or three tones") });
        }
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let (loss, high_low, mottle) = (clamp(self.loss, 0.0, 1.0), clamp(self.high_low, 0.0, 1.0), clamp(self.mottle, 0.0, 1.0));
        let (ground, grain, lit) = match loss {
            loss if loss < 0.12 => (Ink::ClothDark, Ink::Edge, Ink::Cloth),
            loss if loss < 0.3 => (Ink::Cloth, Ink::ClothDark, Ink::ClothLight),
            loss if loss < 0.5 => (Ink::Cloth, Ink::ClothLight, Ink::ClothPale),
            loss if loss < 0.75 => (Ink::ClothLight, Ink::Cloth, Ink::ClothPale),
            _ => (Ink::ClothPale, Ink::ClothLight, Ink::Weft),
        };
        let dark = if loss < 0.3 { Ink::Shade } else { Ink::Cloth };
        sheet.area(ground, FRAME);
        if mottle > 0.05 {
            let mut clouds = Pen::new();
            for index in 0..4 {
                let centre = (
                    16.0 + 30.0 * f64::from(index) + chance.about(8.0),
                    if index % 2 == 0 { 13.0 } else { 69.0 } + chance.about(4.0),
                );
                feather(&mut clouds, centre, (12.0 + 18.0 * mottle, 4.0 + 8.0 * mottle), 1.8, 0.75, chance);
            }
            sheet.stroke(lit, 1.9, clouds);
        }
        sheet.twill(grain, FRAME, 3.4);
        if self.creased {
            ridge(sheet, &[(26.0, -5.0), (26.0, 85.0)]);
            sheet.stroke(Ink::Shade, 1.4, Pen::with(|pen| _ = pen.line(-5.0, 16.0, 125.0, 16.0)));
        }
        // A felled seam: the wash wears its ridges light and leaves its hollows dark.
        let (top, low) = (32.0, 54.0);
        if high_low > 0.02 {
            let (mut ridges, mut hollows) = (Pen::new(), Pen::new());
            let mut x = -4.0;
            while x < 122.0 {
                let step = chance.between(9.0, 12.5);
                leaf(&mut ridges, (x + 7.0, top - 1.0), (x - 2.0, low + 1.0), 2.0 + 4.6 * high_low);
                leaf(&mut hollows, (x + 7.0 + step / 2.0, top), (x - 2.0 + step / 2.0, low), 1.0 + 3.0 * high_low);
                x += step;
            }
            sheet.fill(dark, hollows);
            sheet.fill(if high_low > 0.6 { Ink::Weft } else { lit }, ridges);
        }
        sheet.stroke(
            Ink::Shade,
            1.6,
            Pen::with(|pen| _ = pen.line(-5.0, top - 3.0, 125.0, top - 3.0).line(-5.0, low + 3.0, 125.0, low + 3.0)),
        );
        let mut thread = Pen::new();
        for y in [top + 3.0, low - 3.0] {
            Row::of(8.0).sew(&mut thread, &Track::level(0.0, 120.0, y), 0.0, 0.0, 120.0);
        }
        sheet.stitches(2.2, thread);
    }
}

impl Fade {
    pub(super) fn words(&self) -> String {
        String::from(match self.edge {
            FadeEdge::Hard => say!("a fade with hard lines, as if printed"),
            FadeEdge::Abrupt => say!("a flat fade that stops abruptly"),
            FadeEdge::Graded => say!("a softly graded fade"),
            FadeEdge::Natural => say!("a graded fade that follows the seam, strongest where cloth rubs"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        // One leg, lying across: waist to the left, hem to the right, outseam along the top.
        sheet.area(Ink::Paper, FRAME);
        let leg = Area { x: 0.0, y: 5.0, width: 120.0, height: 70.0 };
        sheet.area(Ink::Cloth, leg);
        let (mut soft, mut pale) = (Pen::new(), Pen::new());
        match self.edge {
            FadeEdge::Hard => {
                for x in [18.0, 34.0, 50.0, 66.0, 82.0] {
                    pale.rect(x, 24.0, 9.0, 34.0);
                }
                sheet.fill(Ink::ClothPale, pale);
            }
            FadeEdge::Abrupt => sheet.fill(Ink::ClothPale, Pen::with(|pen| _ = pen.oval(56.0, 41.0, 44.0, 21.0))),
            FadeEdge::Graded | FadeEdge::Natural => {
                let natural = self.edge == FadeEdge::Natural;
                if natural {
                    // Thigh and knee rub; between them and along the seams cloth keeps its colour.
                    feather(&mut soft, (36.0, 45.0), (36.0, 21.0), 1.7, 0.3, chance);
                    feather(&mut pale, (33.0, 45.0), (25.0, 11.0), 1.7, 0.45, chance);
                    feather(&mut soft, (94.0, 44.0), (17.0, 18.0), 1.7, 0.35, chance);
                    feather(&mut pale, (94.0, 44.0), (10.0, 9.0), 1.7, 0.5, chance);
                } else {
                    feather(&mut soft, (56.0, 44.0), (52.0, 24.0), 1.7, 0.3, chance);
                    feather(&mut pale, (54.0, 44.0), (38.0, 13.0), 1.7, 0.45, chance);
                }
                sheet.stroke(Ink::ClothLight, 1.5, soft);
                sheet.stroke(Ink::ClothPale, 1.2, pale);
            }
        }
        sheet.twill(Ink::ClothDark, leg, 4.0);
        if self.edge == FadeEdge::Natural {
            let mut worn = Pen::new();
            for step in 0..13 {
                let x = f64::from(step) * 9.6 + 3.0;
                let y = 5.5;
                leaf(&mut worn, (x + 2.5, y), (x - 2.5, y + 9.0), 5.0);
            }
            sheet.fill(Ink::ClothPale, worn);
        }
        sheet.stroke(Ink::Shade, 1.4, Pen::with(|pen| _ = pen.line(-5.0, 15.0, 125.0, 15.0)));
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(-5.0, 5.0, 125.0, 5.0).line(-5.0, 75.0, 125.0, 75.0)));
    }
}
