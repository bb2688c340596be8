//! How colour came into a cloth: in its yarns before weaving, or on its face afterwards. Face and turned-back corner.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, Pen, clamp};
use crate::say;

/// A cloth with one corner turned over, so that face and back are seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Colouring {
    /// Where the colour is.
    pub work: ColourWork,
    /// How far the colour of a print goes through to the back, 0 (not at all) to 1 (all of it).
    pub through: f64,
}

/// Where the colour of a cloth is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ColourWork {
    /// Dyed warp over a pale weft, most of it on the face: the back is pale, with flecks of warp.
    WarpFaced,
    /// The same look printed on pale cloth: its flecks follow no yarn, and the back is bare or blotched where colour went through.
    Printed,
}

/// Where the fold of the corner runs: from the top edge to the right edge.
const FOLD: [(f64, f64); 2] = [(52.0, -5.0), (125.0, 62.0)];

impl Colouring {
    pub(super) fn words(&self) -> String {
        String::from(match self.work {
            ColourWork::WarpFaced => {
                say!(
                    "cloth with a corner turned over: flecks that follow the yarns on the face, the back pale with flecks of colour"
                )
            }
            ColourWork::Printed => {
                say!("cloth with a corner turned over: flecks that follow no yarn on the face, the back bare or blotched")
            }
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let through = clamp(self.through, 0.0, 1.0);
        let whole = Area { x: -5.0, y: -5.0, width: 130.0, height: 90.0 };
        let back = Pen::with(|pen| _ = pen.outline(&[FOLD[0], (125.0, -5.0), FOLD[1]]));
        let lip = Pen::with(|pen| _ = pen.line(FOLD[0].0, FOLD[0].1, FOLD[1].0, FOLD[1].1));
        // Light flecks on the face: along the warp where they are weft yarns that show, aslant where they are only printed.
        let lean = if self.work == ColourWork::Printed { 1.6 + chance.share() } else { 0.0 };
        let (mut flecks, mut yarns) = (Pen::new(), Pen::new());
        for end in 0..34 {
            let x = f64::from(end) * 3.7 - 3.0;
            yarns.line(x + 1.85, -5.0, x + 1.85, 85.0);
            for pick in 0..12 {
                let y = f64::from(pick) * 7.6 + f64::from((end * 3) % 4) * 1.9 - 6.0 + chance.about(0.25);
                flecks.line(x, y, x + lean, y + 2.0);
            }
        }
        sheet.area(Ink::Cloth, whole);
        sheet.stroke(Ink::ClothPale, 1.1, flecks);
        sheet.stroke(Ink::ClothDark, 0.4, yarns);
        match self.work {
            ColourWork::WarpFaced => {
                sheet.fill(Ink::Weft, back);
                let mut behind = Pen::new();
                self.on_back(&mut behind, chance);
                sheet.stroke(Ink::ClothLight, 1.0, behind);
            }
            ColourWork::Printed => {
                sheet.fill(Ink::Weft, back.clone());
                if through > 0.05 {
                    let mut ghost = Pen::new();
                    for _ in 0..(3.0 + 14.0 * through) as i32 {
                        let along = chance.between(0.15, 0.95);
                        let (x, y) = (FOLD[0].0 + (125.0 - FOLD[0].0) * along, -5.0 + 60.0 * along * chance.share());
                        ghost.circle(x.min(122.0), y, 1.0 + 3.0 * through * chance.share());
                    }
                    sheet.fill(Ink::ClothPale, ghost);
                }
            }
        }
        sheet.stroke(Ink::Shade, 2.6, lip.clone());
        sheet.stroke(Ink::Edge, 0.9, lip);
    }

    /// Flecks of warp on the back, inside the turned corner.
    fn on_back(&self, pen: &mut Pen, chance: &mut Chance) {
        for end in 0..30 {
            let x = 56.0 + f64::from(end) * 2.4;
            let deepest = (x - FOLD[0].0) * (FOLD[1].1 - FOLD[0].1) / (FOLD[1].0 - FOLD[0].0) - 5.0 - 4.0;
            let mut y = -4.0 + f64::from((end * 5) % 7) + chance.about(0.4);
            while y < deepest - 1.5 {
                pen.line(x, y, x, y + 1.4);
                y += 7.0;
            }
        }
    }
}
