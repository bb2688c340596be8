//! A jacket of patterned cloth: where the lines of its pieces meet.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen};
use crate::say;

/// The front of a jacket, and where its pattern meets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Matched {
    /// Cloth without a pattern.
    Plain,
    /// The pattern meets nowhere.
    Nowhere,
    /// It runs through the pockets only.
    Pockets,
    /// It runs through the pockets and round the side seams.
    FrontAndBack,
    /// It runs through everything, and the lapels are mirrored.
    All,
}

/// From line to line of the pattern.
const REPEAT: f64 = 14.0;

/// A piece of the jacket: its left and right at any height, its top and its foot, and how far its pattern is shifted.
struct Piece {
    from: f64,
    to: f64,
    top: f64,
    foot: f64,
    shift: f64,
}

impl Matched {
    pub(super) fn words(self) -> String {
        String::from(match self {
            Matched::Plain => say!("a jacket of plain cloth"),
            Matched::Nowhere => say!("a patterned jacket, its lines meeting nowhere"),
            Matched::Pockets => say!("a patterned jacket, its lines meeting at the pockets only"),
            Matched::FrontAndBack => say!("a patterned jacket, its lines meeting at pockets and side seams"),
            Matched::All => say!("a patterned jacket, its lines meeting everywhere, lapels mirrored"),
        })
    }

    /// How far the pattern is off at pockets, side seams, sleeves and one lapel.
    const fn off(self) -> [f64; 4] {
        match self {
            Matched::Plain | Matched::All => [0.0; 4],
            Matched::Nowhere => [4.0, 7.0, 7.0, 6.4],
            Matched::Pockets => [0.0, 7.0, 7.0, 6.4],
            Matched::FrontAndBack => [0.0, 0.0, 7.0, 6.4],
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let [pocket, side, sleeve, lapel] = self.off();
        let body = Pen::with(|pen| _ = pen.outline(&[(24.0, 4.0), (96.0, 4.0), (98.0, 86.0), (22.0, 86.0)]));
        sheet.fill(Ink::Cloth, body.clone());
        let sleeves = Pen::with(|pen| {
            pen.rect(2.0, 10.0, 18.0, 76.0).rect(100.0, 10.0, 18.0, 76.0);
        });
        sheet.fill(Ink::Cloth, sleeves.clone());
        // What is seen of the back past the side seams.
        let backs = Pen::with(|pen| {
            pen.rect(22.0, 14.0, 9.0, 72.0).rect(89.0, 14.0, 9.0, 72.0);
        });
        let piece = |from, to, top, foot, shift| Piece { from, to, top, foot, shift };
        let mut pieces = vec![piece(31.0, 60.0, 4.0, 86.0, 0.0), piece(60.0, 89.0, 4.0, 86.0, 0.0)];
        for (from, to) in [(22.0, 31.0), (89.0, 98.0)] {
            pieces.push(piece(from, to, 14.0, 86.0, side));
        }
        for (from, to) in [(2.0, 20.0), (100.0, 118.0)] {
            pieces.push(piece(from, to, 10.0, 86.0, sleeve));
        }
        if self != Matched::Plain {
            sheet.stroke(Ink::ClothPale, 2.6, Pen::with(|pen| pieces.iter().for_each(|piece| piece.lines(pen))));
        }
        sheet.stroke(Ink::Edge, 1.3, body);
        sheet.stroke(Ink::Edge, 1.3, sleeves);
        sheet.stroke(Ink::ClothDark, 1.6, backs);
        self.pockets(sheet, pocket);
        self.lapels(sheet, lapel);
    }

    fn pockets(self, sheet: &mut Sheet, off: f64) {
        for x in [35.0, 67.0] {
            let flap = Pen::with(|pen| _ = pen.rect(x, 58.0, 18.0, 12.0));
            sheet.fill(Ink::Cloth, flap.clone());
            if self != Matched::Plain {
                let lines = Piece { from: x, to: x + 18.0, top: 58.0, foot: 70.0, shift: off };
                sheet.stroke(Ink::ClothPale, 2.6, Pen::with(|pen| lines.lines(pen)));
            }
            sheet.stroke(Ink::Edge, 1.5, flap);
        }
    }

    fn lapels(self, sheet: &mut Sheet, off: f64) {
        sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&[(48.0, 3.0), (72.0, 3.0), (60.0, 46.0)])));
        for (way, shift) in [(-1.0, 0.0), (1.0, off)] {
            let at = |x: f64, y: f64| (60.0 + way * x, y);
            let lapel = Pen::with(|pen| _ = pen.outline(&[at(12.0, 3.0), at(22.0, 12.0), at(25.0, 20.0), at(0.0, 46.0)]));
            sheet.fill(Ink::ClothLight, lapel.clone());
            if self != Matched::Plain {
                let lines = Pen::with(|pen| {
                    for line in 0..4 {
                        let y = 10.0 + REPEAT * f64::from(line) + shift;
                        // The lapel lies turned over, so its lines slant; both alike when it is cut as a pair.
                        let wide = if y < 20.0 { 12.0 + (y - 3.0) * 0.76 } else { 25.0 * (46.0 - y) / 26.0 };
                        let inner = 12.0 * (46.0 - y) / 43.0;
                        if wide - inner > 3.0 {
                            pen.line(60.0 + way * (inner + 0.5), y + 1.0, 60.0 + way * (wide - 1.0), y - 2.0);
                        }
                    }
                });
                sheet.stroke(Ink::ClothPale, 2.6, lines);
            }
            sheet.stroke(Ink::Edge, 1.5, lapel);
        }
    }
}

impl Piece {
    fn lines(&self, pen: &mut Pen) {
        let mut y = REPEAT / 2.0 + self.shift;
        while y < self.foot.min(82.0) {
            if y > self.top + 0.6 && y < self.foot - 0.6 {
                pen.line(self.from + 0.8, y, self.to - 0.8, y);
            }
            y += REPEAT;
        }
    }
}
