//! A tailored jacket on a body: how the collar meets the neck, and how the sleeve is set into the shoulder.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen};
use crate::say;

/// Neck and shoulder from the side, the back to the left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CollarSit {
    /// The collar stands off the neck.
    StandsAway,
    /// It lies close at rest and gapes in movement.
    GapesMoving,
    /// It lies close.
    Close,
    /// It lies close even with the arm lifted.
    CloseArmsUp,
}

/// Shoulder and sleeve from the front.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SleeveHead {
    /// Dents in the head, the sleeve twisted.
    Dented,
    /// Ripples round the head.
    Rippled,
    /// A clean head.
    Clean,
    /// A clean head, the sleeve bent forward as an arm is.
    CleanPitched,
}

impl CollarSit {
    pub(super) fn words(self) -> String {
        String::from(match self {
            CollarSit::StandsAway => say!("a jacket collar standing off the neck"),
            CollarSit::GapesMoving => say!("a jacket collar that leaves the neck as the body moves"),
            CollarSit::Close => say!("a jacket collar lying on the neck"),
            CollarSit::CloseArmsUp => say!("a jacket collar lying on the neck while the arm is lifted"),
        })
    }

    /// How far the collar is off the neck, in drawing units.
    const fn gap(self) -> f64 {
        match self {
            CollarSit::StandsAway => 15.0,
            CollarSit::GapesMoving => 8.0,
            CollarSit::Close | CollarSit::CloseArmsUp => 0.0,
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let gap = self.gap();
        // Neck, and the shirt below it.
        let neck = [(50.0, -6.0), (51.0, 16.0), (46.0, 34.0), (86.0, 40.0), (78.0, 22.0), (77.0, 4.0), (84.0, -6.0)];
        sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.outline(&neck)));
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.outline(&neck)));
        if gap > 0.0 {
            sheet.fill(
                Ink::Shade,
                Pen::with(|pen| _ = pen.outline(&[(50.0, 18.0), (50.0 - gap, 20.0), (34.0, 44.0), (54.0, 40.0)])),
            );
        }
        let shirt = [(49.5, 13.0), (78.0, 19.0), (80.0, 29.0), (48.0, 24.0)];
        sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&shirt)));
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.outline(&shirt)));
        let body = Pen::with(|pen| {
            pen.at(49.0 - gap, 20.0).bend(42.0 - gap, 34.0, 26.0, 44.0).bend(10.0, 54.0, 6.0, 86.0);
            pen.to(106.0, 86.0).bend(106.0, 60.0, 97.0, 48.0).to(84.0, 30.0).bend(64.0, 34.0, 49.0 - gap, 20.0).close();
        });
        sheet.fill(Ink::Cloth, body.clone());
        sheet.stroke(Ink::Edge, 1.5, body);
        let collar = Pen::with(|pen| {
            pen.at(49.0 - gap, 20.0).bend(64.0, 34.0, 84.0, 30.0).to(88.0, 39.0).bend(60.0, 48.0, 42.0 - gap, 32.0).close();
        });
        sheet.fill(Ink::ClothLight, collar.clone());
        sheet.stroke(Ink::Edge, 1.3, collar);
        if self == CollarSit::GapesMoving {
            let rest = Pen::with(|pen| _ = pen.at(49.0, 20.0).bend(42.0, 34.0, 26.0, 44.0));
            sheet.dash(Ink::ClothDark, 1.8, 3.0, 3.4, rest);
            let sway = Pen::with(|pen| {
                pen.at(22.0, 22.0).bend(16.0, 28.0, 14.0, 36.0);
                pen.at(15.0, 18.0).bend(8.0, 26.0, 6.0, 36.0);
            });
            sheet.stroke(Ink::Thread, 2.0, sway);
        }
        let arm = Pen::with(|pen| {
            if self == CollarSit::CloseArmsUp {
                pen.outline(&[(46.0, 66.0), (58.0, 46.0), (76.0, 44.0), (116.0, 6.0), (124.0, 20.0), (84.0, 72.0)]);
            } else {
                pen.outline(&[(40.0, 86.0), (42.0, 56.0), (54.0, 46.0), (68.0, 50.0), (76.0, 62.0), (76.0, 86.0)]);
            }
        });
        sheet.fill(Ink::Cloth, arm.clone());
        sheet.stroke(Ink::Edge, 1.4, arm);
    }
}

impl SleeveHead {
    pub(super) fn words(self) -> String {
        String::from(match self {
            SleeveHead::Dented => say!("a shoulder with dents at the sleeve head, the sleeve twisting"),
            SleeveHead::Rippled => say!("a shoulder with ripples round the sleeve head"),
            SleeveHead::Clean => say!("a shoulder with a clean sleeve head"),
            SleeveHead::CleanPitched => say!("a shoulder with a clean sleeve head, the sleeve bent forward as an arm is"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let body = Pen::with(|pen| {
            pen.at(-6.0, 4.0).to(66.0, 16.0).bend(58.0, 38.0, 64.0, 56.0).bend(60.0, 70.0, 60.0, 86.0).to(-6.0, 86.0).close();
        });
        sheet.fill(Ink::Cloth, body.clone());
        let sleeve = Pen::with(|pen| {
            pen.at(66.0, 16.0);
            match self {
                // Two hollows below the shoulder point.
                SleeveHead::Dented => {
                    pen.bend(74.0, 14.0, 78.0, 21.0).bend(79.0, 27.0, 84.0, 25.0).bend(91.0, 27.0, 92.0, 40.0);
                }
                SleeveHead::Rippled => {
                    pen.bend(73.0, 12.0, 77.0, 17.0).bend(82.0, 15.0, 85.0, 22.0).bend(91.0, 26.0, 92.0, 40.0);
                }
                SleeveHead::Clean | SleeveHead::CleanPitched => _ = pen.bend(88.0, 13.0, 92.0, 40.0),
            }
            if self == SleeveHead::CleanPitched {
                pen.bend(96.0, 60.0, 86.0, 86.0).to(54.0, 86.0).bend(66.0, 72.0, 64.0, 56.0);
            } else {
                pen.to(98.0, 86.0).to(68.0, 86.0).to(64.0, 56.0);
            }
            pen.bend(58.0, 38.0, 66.0, 16.0).close();
        });
        sheet.fill(Ink::ClothLight, sleeve.clone());
        sheet.stroke(Ink::Edge, 1.5, body);
        sheet.stroke(Ink::Edge, 1.5, sleeve);
        let (folds, lines) = match self {
            SleeveHead::Dented => (5, 3),
            SleeveHead::Rippled => (7, 0),
            SleeveHead::Clean | SleeveHead::CleanPitched => (0, 0),
        };
        let marks = Pen::with(|pen| {
            for fold in 0..folds {
                let share = f64::from(fold) / 6.0;
                let (x, y) = (66.0 - 4.0 * share, 20.0 + 26.0 * share);
                let reach = if self == SleeveHead::Dented { 15.0 } else { 8.0 };
                pen.at(x, y).bend(x + reach * 0.5, y - 2.0, x + reach, y + 2.0);
            }
            for line in 0..lines {
                let y = 50.0 + 11.0 * f64::from(line);
                pen.at(67.0, y + 10.0).bend(80.0, y + 6.0, 94.0, y - 4.0);
            }
        });
        sheet.stroke(Ink::ClothDark, 2.0, marks);
        if self == SleeveHead::CleanPitched {
            let bend = Pen::with(|pen| _ = pen.at(80.0, 34.0).bend(85.0, 58.0, 74.0, 84.0));
            sheet.stroke(Ink::ClothPale, 1.6, bend);
        }
    }
}
