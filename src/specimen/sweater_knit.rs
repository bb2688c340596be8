//! A sweater, its cloth: loops close up, beside a rule, before the light, and where yarns end inside.

use super::chance::Chance;
use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{Area, FRAME, Pen, clamp};
use super::words::Words;
use crate::{say, to_say};

/// The face of plain knitting, close.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Loops {
    /// A loop has run down, and a row stands out as a bar.
    Dropped,
    /// Loops of all sizes.
    Uneven,
    /// Loops alike.
    Even,
    /// Loops alike up to the edge.
    EvenToEdge,
}

/// Loops beside a rule.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gauge {
    /// Columns of loops to the inch across, 3 to 20.
    pub per_inch: f64,
}

/// One layer before the light, a fingertip behind it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Poked {
    /// The finger comes through.
    Through,
    /// It is seen between the loops.
    Loose,
    /// Little of it is seen.
    Close,
    /// Nothing of it is seen.
    Springy,
}

/// Where yarns end, from inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum YarnEnds {
    /// They hang.
    Loose,
    /// They are knotted and cut.
    Knotted,
    /// They run back through the loops.
    WorkedIn,
    /// None is seen.
    Invisible,
}

/// Columns of loops, `pitch` apart, and rows, `row` apart; `size` says how large a loop is drawn, by column and row, 1 for as it should be,
/// and leaves out those of 0.
pub(super) fn loops(pen: &mut Pen, area: Area, pitch: f64, row: f64, mut size: impl FnMut(i32, i32) -> f64) {
    let (columns, rows) = ((area.width / pitch) as i32, (area.height / row) as i32);
    for down in 0..rows {
        for across in 0..columns {
            let held = size(across, down);
            let (x, y) = (area.x + pitch * (f64::from(across) + 0.5), area.y + row * (f64::from(down) + 0.5));
            let (half, deep) = (pitch * 0.32 * held, row * 0.44 * held);
            if held > 0.0 {
                pen.points(&[(x - half, y - deep), (x, y + deep), (x + half, y - deep)]);
            }
        }
    }
}

impl Loops {
    pub(super) fn words(self) -> &'static str {
        match self {
            Loops::Dropped => say!("loops close up, one column run down like a ladder, one row standing out as a bar"),
            Loops::Uneven => say!("loops close up, large and small beside each other"),
            Loops::Even => say!("loops close up, all alike"),
            Loops::EvenToEdge => say!("loops close up, all alike as far as the edge of the piece"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        let edge = if self == Loops::EvenToEdge { 98.0 } else { 120.0 };
        sheet.area(Ink::Paper, FRAME);
        sheet.area(Ink::Cloth, Area { width: edge, ..FRAME });
        let mut face = Pen::new();
        let mut run = Vec::new();
        loops(&mut face, Area { width: edge + 0.1, ..FRAME }, 10.9, 9.0, |across, down| match self {
            Loops::Uneven => chance.between(0.62, 1.3),
            Loops::Dropped if across == 6 && down > 1 => {
                run.push(9.0 * (f64::from(down) + 0.5));
                0.0
            }
            Loops::Dropped if down == 5 => 0.0,
            _ => 1.0,
        });
        sheet.stroke(Ink::ClothPale, 3.5, face);
        if self == Loops::Dropped {
            // The column that ran down leaves its bars of yarn.
            let bars = Pen::with(|pen| {
                for y in &run {
                    pen.at(65.4, *y).bend(70.8, y + 2.6, 76.3, *y);
                }
            });
            sheet.stroke(Ink::ClothPale, 2.2, bars);
            let bar = Pen::with(|pen| {
                loops(pen, Area { y: 45.0, height: 9.1, ..FRAME }, 10.9, 9.0, |across, _| if across == 6 { 0.0 } else { 1.3 });
            });
            sheet.stroke(Ink::Weft, 4.4, bar);
        }
        if self == Loops::EvenToEdge {
            sheet.stroke(Ink::Edge, 2.4, Pen::with(|pen| _ = pen.line(edge, -5.0, edge, 85.0)));
        }
    }
}

impl Gauge {
    /// Drawing units of an inch: the frame is 48 mm wide.
    const INCH: f64 = 25.4 * Drawing::WIDTH / Drawing::MM_WIDE;

    pub(super) fn told(self) -> f64 {
        clamp(self.per_inch, 3.0, 20.0)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("loops beside a rule"));
        words.number(self.told(), to_say!("{number} columns to the inch"));
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        let pitch = Gauge::INCH / self.told();
        let row = pitch * 0.78;
        sheet.area(Ink::Cloth, FRAME);
        // Fine loops are drawn in a band above the rule only: the rest would weigh much and show no more.
        let columns = (122.0 / pitch).ceil();
        let rows = (54.0 / row).ceil().min((150.0 / columns).floor()).max(3.0);
        let height = rows * row;
        let area = Area { x: 0.0, y: 56.0 - height, width: columns * pitch + 0.1, height: height + 0.1 };
        if area.y > 1.0 {
            sheet.area(Ink::ClothPale, Area { height: area.y, ..FRAME });
        }
        let mut face = Pen::new();
        loops(&mut face, area, pitch, row, |_, _| 1.0);
        sheet.stroke(Ink::ClothPale, pitch * 0.3, face);
        sheet.area(Ink::Tape, Area { x: -5.0, y: 56.0, width: 130.0, height: 30.0 });
        let ticks = Pen::with(|pen| {
            for eighth in 0..16 {
                let x = Gauge::INCH * f64::from(eighth) / 8.0;
                pen.line(x, 56.0, x, 56.0 + if eighth % 8 == 0 { 16.0 } else { 6.0 });
            }
        });
        sheet.stroke(Ink::Edge, 1.2, ticks);
    }
}

impl Poked {
    pub(super) fn words(self) -> &'static str {
        match self {
            Poked::Through => say!("thin loops before the light, a fingertip coming through between them"),
            Poked::Loose => say!("loose loops before the light, a finger plain to see behind them"),
            Poked::Close => say!("close loops before the light, little of a finger to see behind them"),
            Poked::Springy => say!("close even loops before the light, no finger to see behind them"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let finger = |top: f64| {
            Pen::with(|pen| {
                pen.at(44.0, 86.0)
                    .to(46.0, top + 18.0)
                    .bend(47.0, top, 60.0, top)
                    .bend(73.0, top, 74.0, top + 18.0)
                    .to(76.0, 86.0);
                pen.close();
            })
        };
        sheet.fill(Ink::Stain, finger(20.0));
        let (width, uneven) = match self {
            Poked::Through => (1.5, 0.3),
            Poked::Loose => (2.8, 0.25),
            Poked::Close => (5.0, 0.12),
            Poked::Springy => (6.6, 0.0),
        };
        let mut face = Pen::new();
        let hole = self == Poked::Through;
        loops(&mut face, Area { width: 120.1, height: 80.1, ..FRAME }, 10.9, 9.0, |across, down| {
            if hole && (4..7).contains(&across) && (3..5).contains(&down) { 0.0 } else { 1.0 + chance.about(uneven) }
        });
        sheet.stroke(Ink::ClothLight, width, face);
        if hole {
            let tip = Pen::with(|pen| _ = pen.oval(60.0, 36.0, 15.0, 13.0));
            sheet.fill(Ink::Stain, tip.clone());
            sheet.stroke(Ink::Edge, 2.2, tip);
            sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.at(52.0, 30.0).bend(60.0, 22.0, 68.0, 30.0)));
        }
    }
}

impl YarnEnds {
    pub(super) fn words(self) -> &'static str {
        match self {
            YarnEnds::Loose => say!("the inside of knitting, yarn ends hanging"),
            YarnEnds::Knotted => say!("the inside of knitting, yarn ends knotted and cut short"),
            YarnEnds::WorkedIn => say!("the inside of knitting, yarn ends run back through the loops"),
            YarnEnds::Invisible => say!("the inside of knitting, no yarn end to see"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        let bumps = Pen::with(|pen| {
            for row in 0..8 {
                let y = 5.0 + 10.0 * f64::from(row);
                pen.at(-6.0, y);
                for step in 0..11 {
                    let x = -6.0 + 12.0 * f64::from(step);
                    pen.bend(x + 3.0, y - 5.0, x + 6.0, y).bend(x + 9.0, y + 5.0, x + 12.0, y);
                }
            }
        });
        sheet.stroke(Ink::ClothLight, 1.2, bumps);
        sheet.stroke(Ink::Edge, 1.6, Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 85.0)));
        let places = [(60.0, 16.0, 1.0), (60.0, 38.0, -1.0), (60.0, 58.0, 1.0)];
        let ends = Pen::with(|pen| {
            for (x, y, way) in places {
                match self {
                    YarnEnds::Loose => {
                        pen.at(x, y).bend(x + way * 16.0, y + 2.0, x + way * 14.0, y + 12.0);
                        pen.bend(x + way * 12.0, y + 22.0, x + way * 24.0, y + 20.0);
                    }
                    YarnEnds::Knotted => {
                        pen.line(x + way * 2.0, y, x + way * 9.0, y + 5.0).line(x + way * 2.0, y, x + way * 10.0, y - 3.0);
                    }
                    YarnEnds::WorkedIn => {
                        pen.at(x, y);
                        for step in 0..5 {
                            let from = x + way * 7.0 * f64::from(step);
                            let up = if step % 2 == 0 { -6.0 } else { 6.0 };
                            pen.bend(from + way * 3.5, y + up, from + way * 7.0, y);
                        }
                    }
                    YarnEnds::Invisible => {}
                }
            }
        });
        sheet.stroke(Ink::Edge, 3.9, ends.clone());
        sheet.stroke(Ink::ThreadLight, 2.6, ends);
        if self == YarnEnds::Knotted {
            let knots = Pen::with(|pen| {
                for (x, y, way) in places {
                    pen.circle(x + way * 1.5, y, 3.4);
                }
            });
            sheet.fill(Ink::ThreadLight, knots.clone());
            sheet.stroke(Ink::Edge, 1.2, knots);
        }
    }
}
