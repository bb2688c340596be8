//! What wearing and keeping have done to cloth: stains, moths and damp, thinning.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen};
use crate::say;

/// Cloth with or without a stain.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stained {
    /// A stain with a sharp dark rim, in the middle.
    Set,
    /// A stain that lies on top, in the middle.
    Fresh,
    /// A small spot at the hem.
    Hidden,
    /// None.
    None,
}

/// What keeping has done to cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stored {
    /// Webs, grubs and specks.
    Living,
    /// Small round holes and the line that damp leaves.
    Holes,
    /// A smell.
    Smell,
    /// Nothing.
    Clean,
}

/// Cloth before the light, with a place that rubs in the middle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Thinned {
    /// Points of light there.
    Pinholes,
    /// Clearly more light there than beside it.
    Clearly,
    /// A trace more.
    Trace,
    /// As much as beside it.
    Same,
}

/// Light cloth with a hem along its foot, on which a mark shows.
fn pale(sheet: &mut Sheet) {
    sheet.area(Ink::ClothPale, FRAME);
    sheet.twill(Ink::ClothLight, FRAME, 3.0);
    sheet.stroke(Ink::Cloth, 1.4, Pen::with(|pen| _ = pen.line(-5.0, 64.0, 125.0, 64.0)));
    sheet.dash(Ink::Weft, 1.6, 5.0, 3.6, Pen::with(|pen| _ = pen.line(-5.0, 61.0, 125.0, 61.0)));
}

/// An outline without corners round a place.
fn blot(pen: &mut Pen, (x, y): (f64, f64), (rx, ry): (f64, f64)) {
    // How far the outline stands off an ellipse, going round it.
    const SWELL: [f64; 12] = [1.0, 0.84, 1.08, 0.9, 1.12, 0.8, 1.0, 0.88, 1.14, 0.92, 0.8, 1.06];
    let ring: Vec<(f64, f64)> = (0..=13)
        .map(|step| (f64::from(step) * std::f64::consts::TAU / 12.0, SWELL[step as usize % 12]))
        .map(|(turn, swell)| (x + rx * swell * turn.cos(), y + ry * swell * turn.sin()))
        .collect();
    let middle = |pair: &[(f64, f64)]| ((pair[0].0 + pair[1].0) / 2.0, (pair[0].1 + pair[1].1) / 2.0);
    let start = middle(&ring[..2]);
    pen.at(start.0, start.1);
    for pair in ring.windows(2).skip(1) {
        let to = middle(pair);
        pen.bend(pair[0].0, pair[0].1, to.0, to.1);
    }
    pen.close();
}

impl Stained {
    pub(super) fn words(self) -> &'static str {
        match self {
            Stained::Set => say!("light cloth with a stain in the middle, its rim sharp and dark"),
            Stained::Fresh => say!("light cloth with a stain in the middle that lies on top"),
            Stained::Hidden => say!("light cloth with a small spot at the hem"),
            Stained::None => say!("light cloth without a stain"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        pale(sheet);
        match self {
            Stained::Set => {
                let rim = Pen::with(|pen| blot(pen, (58.0, 32.0), (27.0, 20.0)));
                sheet.fill(Ink::ThreadLight, rim.clone());
                sheet.twill(Ink::Thread, Area { x: 40.0, y: 20.0, width: 36.0, height: 24.0 }, 4.2);
                sheet.stroke(Ink::Thread, 2.4, rim);
            }
            Stained::Fresh => {
                let drops = [(95.0, 20.0, 3.0), (101.0, 30.0, 1.8), (24.0, 22.0, 2.2), (30.0, 47.0, 2.6)];
                sheet.fill(Ink::Cloth, Pen::with(|pen| blot(pen, (61.0, 35.0), (25.0, 17.0))));
                sheet.fill(Ink::Thread, Pen::with(|pen| blot(pen, (59.0, 32.0), (25.0, 17.0))));
                sheet.fill(Ink::Thread, Pen::with(|pen| drops.iter().for_each(|&(x, y, r)| _ = pen.circle(x, y, r))));
                let shine = Pen::with(|pen| _ = pen.at(45.0, 28.0).bend(50.0, 21.0, 59.0, 22.0).line(64.0, 23.0, 66.0, 24.0));
                sheet.stroke(Ink::Weft, 2.2, shine);
            }
            Stained::Hidden => sheet.fill(Ink::Thread, Pen::with(|pen| blot(pen, (96.0, 71.0), (5.0, 3.4)))),
            Stained::None => {}
        }
    }
}

impl Stored {
    pub(super) fn words(self) -> &'static str {
        match self {
            Stored::Living => say!("light cloth with webs, grubs and dark specks"),
            Stored::Holes => say!("light cloth with small round holes and a line that damp left"),
            Stored::Smell => say!("light cloth, whole and clean, from which a smell rises"),
            Stored::Clean => say!("light cloth, whole and clean"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        pale(sheet);
        match self {
            Stored::Living => {
                let webs = Pen::with(|pen| {
                    for (x, y) in [(74.0, 10.0), (72.0, 24.0), (60.0, 40.0), (42.0, 52.0), (22.0, 56.0)] {
                        pen.line(12.0, 6.0, x, y);
                    }
                    for share in [0.45, 0.7, 0.95] {
                        let at = |x: f64, y: f64| (12.0 + (x - 12.0) * share, 6.0 + (y - 6.0) * share);
                        let (from, over, to) = (at(74.0, 10.0), at(50.0, 34.0), at(22.0, 56.0));
                        pen.at(from.0, from.1).bend(over.0, over.1, to.0, to.1);
                    }
                });
                sheet.stroke(Ink::Weft, 1.0, webs);
                let grubs = Pen::with(|pen| {
                    for (x, y) in [(52.0, 30.0), (76.0, 48.0), (30.0, 40.0)] {
                        pen.at(x, y).bend(x + 4.0, y - 4.0, x + 9.0, y + 1.0);
                    }
                });
                sheet.stroke(Ink::Edge, 5.4, grubs.clone());
                sheet.stroke(Ink::Paper, 3.8, grubs);
                let specks = Pen::with(|pen| {
                    for _ in 0..26 {
                        let (x, y) = (92.0 + chance.about(17.0), 26.0 + chance.about(18.0));
                        pen.line(x, y, x, y);
                    }
                });
                sheet.stroke(Ink::Edge, 2.2, specks);
            }
            Stored::Holes => {
                let tide = Pen::with(|pen| _ = pen.at(-5.0, 44.0).bend(16.0, 56.0, 34.0, 44.0).bend(52.0, 34.0, 66.0, 52.0));
                sheet.stroke(Ink::Thread, 1.6, tide);
                let holes = [(40.0, 20.0, 3.0), (52.0, 28.0, 2.2), (86.0, 18.0, 3.6), (94.0, 34.0, 2.4), (76.0, 46.0, 2.8)];
                let round = Pen::with(|pen| holes.iter().for_each(|&(x, y, r)| _ = pen.circle(x, y, r)));
                sheet.stroke(Ink::Weft, 2.0, round.clone());
                sheet.fill(Ink::Edge, round);
            }
            Stored::Smell => {
                let waves = Pen::with(|pen| {
                    for x in [40.0, 60.0, 80.0] {
                        pen.at(x, 54.0).bend(x - 9.0, 44.0, x, 34.0).bend(x + 9.0, 24.0, x, 13.0);
                    }
                });
                sheet.stroke(Ink::Thread, 2.0, waves);
            }
            Stored::Clean => {}
        }
    }
}

impl Thinned {
    pub(super) fn words(self) -> &'static str {
        match self {
            Thinned::Pinholes => say!("cloth before the light, a patch full of points of light"),
            Thinned::Clearly => say!("cloth before the light, a patch clearly lighter than the rest"),
            Thinned::Trace => say!("cloth before the light, a patch a trace lighter than the rest"),
            Thinned::Same => say!("cloth before the light, equally dense all over"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::Cloth, FRAME);
        // Light comes between the yarns: a point in each gap, larger where cloth is gone.
        let (mut whole, mut thin) = (Pen::new(), Pen::new());
        for row in 0..14 {
            for column in 0..21 {
                let (x, y) = (f64::from(column) * 6.0, 1.0 + f64::from(row) * 6.0);
                let rubbed = ((x - 60.0) / 36.0).powi(2) + ((y - 40.0) / 24.0).powi(2) < 1.0;
                let pen = if rubbed { &mut thin } else { &mut whole };
                pen.line(x, y, x, y);
            }
        }
        const WHOLE: f64 = 1.1;
        sheet.stroke(Ink::ClothPale, WHOLE, whole);
        let size = match self {
            Thinned::Same => WHOLE,
            Thinned::Trace => 1.8,
            Thinned::Clearly | Thinned::Pinholes => 3.0,
        };
        sheet.stroke(Ink::ClothPale, size, thin);
        if self == Thinned::Pinholes {
            let holes = Pen::with(|pen| {
                for _ in 0..13 {
                    let (x, y) = (60.0 + 6.0 * chance.about(4.4).round(), 37.0 + 6.0 * chance.about(2.6).round());
                    pen.line(x, y, x, y);
                }
            });
            sheet.stroke(Ink::Tape, 5.4, holes);
        }
    }
}
