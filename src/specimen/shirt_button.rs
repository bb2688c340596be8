//! A button with holes, in section: what holds it.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen};
use crate::say;

/// A button with holes, in section.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ShirtButton {
    /// What holds it.
    pub hold: Hold,
}

/// What holds a button.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hold {
    /// Loose loops; an end that hangs out.
    Loose,
    /// Sewn flat on the cloth.
    Flat,
    /// Sewn flat, with a knot behind.
    Locked,
    /// On a neck wrapped with thread, a spare beside it.
    Wrapped,
}

impl ShirtButton {
    pub(super) fn words(&self) -> String {
        String::from(match self.hold {
            Hold::Loose => say!("a button in section, on loose loops, an end of thread hanging out"),
            Hold::Flat => say!("a button in section, sewn flat on the cloth"),
            Hold::Locked => say!("a button in section, sewn flat, knotted behind the cloth"),
            Hold::Wrapped => say!("a button in section, on a neck wrapped with thread, a spare button beside it"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        for y in [58.0, 63.0] {
            sheet.ply(Ink::ClothPale, 5.0, Pen::with(|pen| _ = pen.line(-6.0, y, 126.0, y)));
        }
        let loose = self.hold == Hold::Loose;
        let (y, lean, x) = match self.hold {
            Hold::Loose => (30.0, 9.0, 60.0),
            Hold::Flat | Hold::Locked => (48.0, 0.0, 60.0),
            Hold::Wrapped => (34.0, 0.0, 46.0),
        };
        let mut thread = Pen::new();
        for side in [-6.0, 6.0] {
            let top = y - 5.0 + lean * side / 26.0;
            if loose {
                thread.at(x + side, top).bend(x + side * 3.4, 46.0, x + side, 67.0);
            } else {
                thread.line(x + side, top, x + side * if self.hold == Hold::Wrapped { 0.7 } else { 1.0 }, 67.0);
            }
        }
        thread.line(x - 6.0, y - 5.6 - lean * 0.25, x + 6.0, y - 5.6 + lean * 0.25).line(x - 6.0, 67.0, x + 6.0, 67.0);
        let button =
            [(x - 26.0, y - 5.0 - lean), (x + 26.0, y - 5.0 + lean), (x + 26.0, y + 3.0 + lean), (x - 26.0, y + 3.0 - lean)];
        sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.outline(&button)));
        sheet.stroke(Ink::Edge, 1.3, Pen::with(|pen| _ = pen.outline(&button)));
        sheet.stroke(Ink::Thread, 2.4, thread);
        let mut more = Pen::new();
        match self.hold {
            Hold::Loose => _ = more.at(x + 6.0, 67.0).bend(x + 20.0, 70.0, x + 16.0, 78.0).bend(x + 30.0, 84.0, x + 38.0, 74.0),
            Hold::Flat => {}
            Hold::Locked => {
                more.circle(x, 70.5, 3.0).line(x - 9.0, 69.5, x + 9.0, 69.5).line(x - 7.0, 72.0, x + 7.0, 72.0);
            }
            Hold::Wrapped => {
                for step in 0..7 {
                    let wrap = 38.6 + f64::from(step) * 2.7;
                    more.line(x - 6.5, wrap, x + 6.5, wrap + 1.2);
                }
            }
        }
        sheet.stroke(Ink::Thread, 2.2, more);
        if self.hold == Hold::Wrapped {
            let spare = Pen::with(|pen| _ = pen.circle(100.0, 32.0, 13.0));
            sheet.fill(Ink::Weft, spare.clone());
            sheet.stroke(Ink::Edge, 1.3, spare);
            let holes = Pen::with(|pen| {
                for (dx, dy) in [(-3.5, -3.5), (3.5, -3.5), (-3.5, 3.5), (3.5, 3.5)] {
                    pen.circle(100.0 + dx, 32.0 + dy, 1.5);
                }
            });
            sheet.fill(Ink::Edge, holes);
        }
    }
}
