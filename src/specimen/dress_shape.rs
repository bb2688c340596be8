//! A dress or skirt, its shape: how it hangs, its lining, darts, hook and eye.

use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, leaf};
use crate::say;

/// A dress on its hanger.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HungDress {
    /// Seams turn round the body, folds drag.
    Twisted,
    /// It leans to one side.
    Leans,
    /// Seams hang plumb.
    Plumb,
    /// The same, and a pattern meets at them.
    Meets,
}

/// A lining, seen through the skirt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SkirtLining {
    /// There is none.
    Absent,
    /// It is narrow and hangs out.
    HangsOut,
    /// It is scant and clings.
    Scant,
    /// It hangs free.
    Free,
    /// It hangs free, its hem and pleat finely sewn.
    FreeFine,
}

/// Two darts of a front.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Darts {
    /// Of two lengths, ending in bubbles.
    Uneven,
    /// A little off, with small bubbles.
    Slightly,
    /// Alike.
    Even,
    /// Alike, their points running out into nothing.
    Vanish,
}

/// Hook and eye at the top of a closing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hooks {
    /// Hanging by a thread.
    Loose,
    /// Thin, sewn with few stitches.
    Flimsy,
    /// Sewn firmly.
    Firm,
    /// The same, with tape behind.
    Stayed,
}

impl HungDress {
    pub(super) fn words(self) -> &'static str {
        match self {
            HungDress::Twisted => say!("a dress on a hanger, its seams turned round the body, folds dragging across"),
            HungDress::Leans => say!("a dress on a hanger, leaning to one side"),
            HungDress::Plumb => say!("a dress on a hanger, its seams plumb"),
            HungDress::Meets => say!("a striped dress on a hanger, its seams plumb, stripes meeting at them"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        let (lean, turn) = match self {
            HungDress::Twisted => (5.0, 17.0),
            HungDress::Leans => (6.0, 0.0),
            HungDress::Plumb | HungDress::Meets => (0.0, 0.0),
        };
        // Drags sideways the more, the further down.
        let at = |x: f64, y: f64| (x + lean * (y / 74.0), y + (x - 60.0) / 30.0 * lean * 0.5 * (y / 74.0));
        let body: Vec<(f64, f64)> = [
            (47.0, 8.0),
            (54.0, 6.0),
            (60.0, 13.0),
            (66.0, 6.0),
            (73.0, 8.0),
            (73.0, 24.0),
            (71.0, 36.0),
            (86.0, 74.0),
            (34.0, 74.0),
            (49.0, 36.0),
            (47.0, 24.0),
        ]
        .map(|(x, y)| at(x, y))
        .to_vec();
        let outline = Pen::with(|pen| _ = pen.outline(&body));
        sheet.fill(Ink::ClothPale, outline.clone());
        if self == HungDress::Meets {
            let stripes = Pen::with(|pen| {
                for step in 0..8 {
                    let y = 16.0 + 7.5 * f64::from(step);
                    let half = if y < 36.0 { 10.0 } else { 11.0 + (y - 36.0) * 15.0 / 38.0 - 1.4 };
                    pen.line(60.0 - half, y, 60.0 + half, y);
                }
            });
            sheet.stroke(Ink::Cloth, 2.8, stripes);
        }
        sheet.stroke(Ink::Edge, 1.4, outline);
        if self == HungDress::Twisted {
            let drags = Pen::with(|pen| {
                for step in 0..4 {
                    let y = 26.0 + 11.0 * f64::from(step);
                    let (a, b) = (at(50.0, y + 6.0), at(70.0, y - 4.0));
                    pen.at(a.0, a.1).bend(60.0, y + 3.0, b.0, b.1);
                }
            });
            sheet.stroke(Ink::ClothLight, 2.0, drags);
        }
        let (a, m, b) = (at(60.0, 13.0), at(60.0 + turn * 0.2, 40.0), at(60.0 + turn, 74.0));
        sheet.stroke(Ink::Thread, 2.2, Pen::with(|pen| _ = pen.at(a.0, a.1).bend(m.0, m.1, b.0, b.1)));
        // A plumb line beside it.
        sheet.dash(Ink::Edge, 1.2, 3.0, 3.0, Pen::with(|pen| _ = pen.line(22.0, -5.0, 22.0, 70.0)));
        sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.outline(&[(19.0, 68.0), (25.0, 68.0), (22.0, 76.0)])));
        sheet.stroke(
            Ink::Edge,
            1.6,
            Pen::with(|pen| _ = pen.line(48.0, 7.0, 72.0, 7.0).at(60.0, 7.0).bend(58.0, -3.0, 66.0, -4.0)),
        );
    }
}

impl SkirtLining {
    pub(super) fn words(self) -> &'static str {
        match self {
            SkirtLining::Absent => say!("a skirt without a lining"),
            SkirtLining::HangsOut => say!("a narrow lining that hangs out below the skirt"),
            SkirtLining::Scant => say!("a scant lining that clings and ends far above the hem"),
            SkirtLining::Free => say!("a lining that hangs free, a little shorter than the skirt"),
            SkirtLining::FreeFine => say!("a lining that hangs free, with a pleat and a finely sewn hem"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        let skirt = Pen::with(|pen| _ = pen.outline(&[(42.0, -5.0), (78.0, -5.0), (98.0, 66.0), (22.0, 66.0)]));
        sheet.fill(Ink::ClothPale, skirt.clone());
        let (half, low) = match self {
            SkirtLining::Absent => return sheet.stroke(Ink::Edge, 1.6, skirt),
            SkirtLining::HangsOut => (20.0, 75.0),
            SkirtLining::Scant => (21.0, 44.0),
            SkirtLining::Free | SkirtLining::FreeFine => (32.0, 58.0),
        };
        let lining = Pen::with(|pen| {
            pen.at(45.0, -5.0).to(75.0, -5.0);
            match self {
                SkirtLining::Scant => pen.bend(73.0, 24.0, 60.0 + half, low).bend(64.0, low - 8.0, 58.0, low).bend(
                    48.0,
                    low - 6.0,
                    60.0 - half,
                    low,
                ),
                _ => pen.to(60.0 + half, low).to(60.0 - half, low),
            };
            pen.close();
        });
        sheet.fill(Ink::Weft, lining.clone());
        if self == SkirtLining::Scant {
            let clings = Pen::with(|pen| {
                for x in [50.0, 58.0, 67.0] {
                    leaf(pen, (x, 12.0), (x + 2.0, 40.0), 4.0);
                }
            });
            sheet.fill(Ink::ClothPale, clings);
        }
        sheet.stroke(Ink::Edge, 1.2, lining);
        sheet.stroke(Ink::Edge, 1.6, skirt);
        if matches!(self, SkirtLining::Free | SkirtLining::FreeFine) {
            let row = Track::level(60.0 - half + 1.0, 60.0 + half - 1.0, low - 4.0);
            let stitch = if self == SkirtLining::FreeFine { 3.2 } else { 5.6 };
            sheet.stroke(Ink::Thread, 1.3, Pen::with(|pen| _ = Row::of(stitch).sew(pen, &row, 0.0, 0.0, row.length())));
        }
        if self == SkirtLining::FreeFine {
            sheet.stroke(
                Ink::Edge,
                1.4,
                Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 34.0).line(60.0, -5.0, 66.0, 34.0).line(58.0, 34.0, 68.0, 34.0)),
            );
        }
    }
}

impl Darts {
    pub(super) fn words(self) -> &'static str {
        match self {
            Darts::Uneven => say!("two darts of different length that end in bubbles"),
            Darts::Slightly => say!("two darts a little off each other, with small bubbles at their points"),
            Darts::Even => say!("two darts alike, their points to be seen"),
            Darts::Vanish => say!("two darts alike, their points running out into the cloth"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        // Left and right: how far out and how high each ends; the bubble at the point.
        let (left, right, bubble) = match self {
            Darts::Uneven => ((30.0, 20.0), (84.0, 38.0), 7.0),
            Darts::Slightly => ((33.0, 26.0), (86.0, 31.0), 4.0),
            Darts::Even => ((34.0, 28.0), (86.0, 28.0), 2.8),
            Darts::Vanish => ((34.0, 28.0), (86.0, 28.0), 0.0),
        };
        let (mut bubbles, mut shine, mut seams, mut folds) = (Pen::new(), Pen::new(), Pen::new(), Pen::new());
        for ((x, y), foot) in [(left, 36.0), (right, 84.0)] {
            if bubble > 0.0 {
                bubbles.oval(x, y, bubble * 1.7, bubble);
                shine.at(x - bubble, y - bubble * 0.3).bend(x, y - bubble * 0.9, x + bubble, y - bubble * 0.3);
            }
            seams.line(foot, 85.0, x, y);
            // The cloth folded away behind shows through, and narrows to the point.
            folds.outline(&[(foot, 85.0), (x, y), (foot + 9.0, 85.0)]);
        }
        sheet.fill(Ink::ClothLight, folds);
        sheet.fill(Ink::ClothLight, bubbles);
        sheet.stroke(Ink::Weft, 1.2, shine);
        if self == Darts::Vanish {
            sheet.dash(Ink::Edge, 1.6, 7.0, 0.6, seams);
        } else {
            sheet.stroke(Ink::Edge, 2.0, seams);
        }
        sheet.dash(Ink::Cloth, 1.2, 3.0, 3.0, Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 85.0)));
        sheet.stroke(Ink::Edge, 1.6, Pen::with(|pen| _ = pen.line(-5.0, 76.0, 125.0, 76.0)));
    }
}

impl Hooks {
    pub(super) fn words(self) -> &'static str {
        match self {
            Hooks::Loose => say!("a hook hanging by one thread, its eye pulled askew"),
            Hooks::Flimsy => say!("a thin hook and eye, sewn with few stitches"),
            Hooks::Firm => say!("a hook and eye sewn with many stitches"),
            Hooks::Stayed => say!("a hook and eye sewn with many stitches, tape behind them"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        sheet.area(Ink::ClothPale, Area { x: -5.0, y: -5.0, width: 57.0, height: 90.0 });
        sheet.area(Ink::ClothPale, Area { x: 68.0, y: -5.0, width: 57.0, height: 90.0 });
        if self == Hooks::Stayed {
            let tapes = Pen::with(|pen| _ = pen.rect(22.0, -5.0, 30.0, 90.0).rect(68.0, -5.0, 30.0, 90.0));
            sheet.fill(Ink::Tape, tapes.clone());
            sheet.stroke(Ink::Edge, 1.0, tapes);
        }
        sheet.stroke(Ink::Edge, 1.6, Pen::with(|pen| _ = pen.line(52.0, -5.0, 52.0, 85.0).line(68.0, -5.0, 68.0, 85.0)));
        let loose = self == Hooks::Loose;
        let drop = if loose { 16.0 } else { 0.0 };
        let wire = if matches!(self, Hooks::Flimsy | Hooks::Loose) { 2.0 } else { 3.6 };
        let metal = Pen::with(|pen| {
            // The hook from the left, and two rings that hold it.
            pen.at(40.0, 38.0 + drop).to(62.0, 38.0 + drop * 1.6).bend(70.0, 41.0 + drop * 1.7, 60.0, 44.0 + drop * 1.6);
            pen.circle(38.0, 34.0 + drop, 4.2).circle(38.0, 43.0 + drop, 4.2);
            // The eye on the right.
            pen.at(84.0, 35.0).bend(62.0, 33.0 + drop * 0.4, 64.0, 41.0).bend(62.0, 48.0, 84.0, 46.0);
            pen.circle(88.0, 33.0, 4.2).circle(88.0, 48.0, 4.2);
        });
        sheet.stroke(Ink::Edge, wire + 1.4, metal.clone());
        sheet.stroke(Ink::Metal, wire, metal);
        let many = match self {
            Hooks::Loose => 1,
            Hooks::Flimsy => 2,
            Hooks::Firm | Hooks::Stayed => 7,
        };
        let thread = Pen::with(|pen| {
            for (x, y) in [(38.0, 34.0 + drop), (38.0, 43.0 + drop), (88.0, 33.0), (88.0, 48.0)] {
                for stitch in 0..many {
                    let turn = std::f64::consts::TAU * (f64::from(stitch) + 0.3) / f64::from(many);
                    pen.line(x, y, x + 7.6 * turn.cos(), y + 6.0 * turn.sin());
                }
            }
            if loose {
                pen.at(38.0, 50.0).bend(30.0, 34.0, 34.0, 26.0);
            }
        });
        sheet.stroke(Ink::Thread, 1.5, thread);
    }
}
