//! A T-shirt: its neck, how it twists, what a pull does to its print.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp};
use super::words::Words;
use crate::{say, to_say};

/// The neck of a T-shirt after it was stretched to the size of a head and let go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NeckRib {
    /// How far it waves, in mm, 0 to 8.
    pub wave_mm: f64,
    /// How much wider it stays, in mm, 0 to 30.
    pub wider_mm: f64,
    /// Whether its ribs stand evenly all round.
    pub even: bool,
}

/// The body of a T-shirt laid flat on its own folds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BodyTwist {
    /// How far the side seam has walked from the fold at the hem, per 100 of its length, 0 to 15.
    pub percent: f64,
    /// Whether it has a side seam; a tube has none.
    pub seam: bool,
}

/// A print while the cloth below it is stretched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Print {
    /// None.
    Absent,
    /// It cracks and lifts.
    Cracks,
    /// It stands as one stiff plate.
    Plate,
    /// It goes along.
    Flexes,
    /// It lies in the cloth and shows its texture.
    InCloth,
}

impl NeckRib {
    pub(super) fn words(&self) -> String {
        let (wave, wider) = (clamp(self.wave_mm, 0.0, 8.0), clamp(self.wider_mm, 0.0, 30.0));
        let mut words = Words::new();
        words.and(say!("the neck of a T-shirt after a stretch"));
        words.and(if wave > 2.5 {
            say!("it stays wavy")
        } else if wave > 0.3 {
            say!("slightly wavy")
        } else {
            say!("flat")
        });
        if wider > 0.0 {
            words.number(wider, to_say!("{number} millimetres wider than before"));
        } else {
            words.and(say!("as narrow as before"));
        }
        words.and_if(self.even, say!("ribs even all round"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let (wave, wider) = (clamp(self.wave_mm, 0.0, 8.0) * 0.8, clamp(self.wider_mm, 0.0, 30.0) * 0.45);
        sheet.area(Ink::Paper, FRAME);
        let body = Pen::with(|pen| {
            _ = pen.outline(&[(-5.0, 32.0), (28.0, 8.0), (92.0, 8.0), (125.0, 32.0), (125.0, 86.0), (-5.0, 86.0)])
        });
        sheet.fill(Ink::ClothPale, body.clone());
        sheet.stroke(Ink::Edge, 1.3, body);
        // Half an ellipse from shoulder to shoulder; waves run along it.
        let arc = |rx: f64, ry: f64, part: f64| -> Vec<(f64, f64)> {
            (0..=48)
                .map(|i| {
                    let turn = std::f64::consts::PI * f64::from(i) / 48.0;
                    let swell = wave * part * (turn * 11.0).sin();
                    (60.0 - (rx + swell) * turn.cos(), 8.0 + (ry + swell) * turn.sin())
                })
                .collect()
        };
        let (rx, ry) = (30.0 + wider, 36.0 + wider * 0.6);
        let (inner, outer) = (arc(rx, ry, 1.0), arc(rx + 9.0, ry + 9.0, 0.6));
        let behind = Pen::with(|pen| _ = pen.points(&inner).bend(60.0, 20.0, 60.0 - rx, 8.0).close());
        sheet.fill(Ink::Weft, behind.clone());
        sheet.stroke(Ink::Edge, 1.2, behind);
        let band: Vec<(f64, f64)> = inner.iter().copied().chain(outer.iter().rev().copied()).collect();
        sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&band)));
        let ribs = Pen::with(|pen| {
            let mut at = 0.0_f64;
            while at < 48.0 {
                let place = at as usize;
                pen.line(inner[place].0, inner[place].1, outer[place].0, outer[place].1);
                // Uneven ribs crowd and part.
                at += if self.even { 1.0 } else { 1.1 + 0.7 * (at * 0.9).sin() };
            }
        });
        sheet.stroke(Ink::Cloth, 0.8, ribs);
        sheet.stroke(Ink::Edge, 1.3, Pen::with(|pen| _ = pen.points(&inner).points(&outer)));
        let track = Track::through(&arc(rx + 11.5, ry + 11.5, 0.5));
        sheet.stroke(Ink::Thread, 1.2, Pen::with(|pen| _ = Row::of(4.6).sew(pen, &track, 0.0, 2.0, track.length() - 2.0)));
    }
}

impl BodyTwist {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("the body of a T-shirt laid flat"));
        if self.seam {
            words.number(clamp(self.percent, 0.0, 15.0), to_say!("{number} of 100 from the fold to the side seam at the hem"));
        } else {
            words.and(say!("knitted as a tube, no side seam"));
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        // The fold is 66 units long; what walks is drawn twice as far, so that it can be seen.
        let (left, right, top, low) = (22.0, 98.0, -5.0, 66.0);
        let walked = clamp(self.percent, 0.0, 15.0) * 0.66 * 2.0;
        let body = Area { x: left, y: top, width: right - left, height: low - top };
        sheet.area(Ink::ClothPale, body);
        let wales = Pen::with(|pen| {
            for step in 1..10 {
                let x = left + 7.6 * f64::from(step);
                if x - walked * 0.9 < left + 1.0 {
                    continue;
                }
                pen.at(x, top).bend(x, 30.0, x - walked * 0.9, low);
            }
        });
        sheet.stroke(Ink::ClothLight, 0.7, wales);
        sheet.stroke(Ink::Edge, 1.5, Pen::with(|pen| _ = pen.points(&[(left, top), (left, low), (right, low), (right, top)])));
        let hem = Track::level(left, right, low - 6.0);
        sheet.stroke(Ink::Thread, 1.2, Pen::with(|pen| _ = Row::of(4.6).sew(pen, &hem, 0.0, 1.0, hem.length())));
        if self.seam {
            let seam = Pen::with(|pen| _ = pen.at(right - 0.8, top).bend(right - 0.8, 30.0, right - 0.8 - walked, low));
            sheet.stroke(Ink::Edge, 3.0, seam.clone());
            sheet.stroke(Ink::ThreadLight, 1.4, seam);
            let tape = Area { x: right - 34.0, y: 69.0, width: 44.0, height: 10.0 };
            sheet.area(Ink::Tape, tape);
            let ticks = Pen::with(|pen| {
                for step in 0..=10 {
                    let x = right - f64::from(step) * 2.64;
                    pen.line(x, tape.y, x, tape.y + if step % 5 == 0 { 6.0 } else { 3.5 });
                }
            });
            sheet.stroke(Ink::Edge, 0.9, ticks);
            sheet.stroke(Ink::Thread, 2.6, Pen::with(|pen| _ = pen.line(right - walked, 77.0, right, 77.0)));
        }
    }
}

impl Print {
    pub(super) fn words(&self) -> String {
        String::from(match self {
            Print::Absent => say!("T-shirt cloth without a print"),
            Print::Cracks => say!("a stretched print that cracks and lifts"),
            Print::Plate => say!("a stretched print that stands as one stiff plate, the cloth gathered round it"),
            Print::Flexes => say!("a stretched print that goes along with the cloth"),
            Print::InCloth => say!("a stretched print that lies in the cloth and shows its ribs"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::ClothPale, FRAME);
        sheet.stroke(Ink::ClothLight, 0.8, Pen::with(|pen| _ = pen.hatch(FRAME, 5.0, 0.0)));
        if *self == Print::Absent {
            return;
        }
        // A plain lozenge: a shape that is nobody's mark.
        let shape = [(24.0, 40.0), (60.0, 10.0), (96.0, 40.0), (60.0, 70.0)];
        let whole = Pen::with(|pen| _ = pen.outline(&shape));
        match self {
            Print::InCloth => {
                let ribs = Pen::with(|pen| {
                    for step in 0..15 {
                        let x = 25.0 + f64::from(step) * 5.0;
                        let half = 30.0 * (1.0 - (x - 60.0).abs() / 36.0);
                        pen.line(x, 40.0 - half, x, 40.0 + half);
                    }
                });
                sheet.stroke(Ink::Thread, 3.6, ribs);
            }
            _ => {
                sheet.fill(Ink::Thread, whole.clone());
                if *self == Print::Plate {
                    sheet.stroke(Ink::Edge, 2.2, whole);
                    let gathers = Pen::with(|pen| {
                        for (x, y, way) in [
                            (30.0, 30.0, -1.0),
                            (40.0, 22.0, -1.0),
                            (30.0, 50.0, -1.0),
                            (40.0, 58.0, -1.0),
                            (90.0, 30.0, 1.0),
                            (80.0, 22.0, 1.0),
                            (90.0, 50.0, 1.0),
                            (80.0, 58.0, 1.0),
                        ] {
                            pen.at(x, y).bend(x + way * 10.0, y + 2.0, x + way * 18.0, y + if y < 40.0 { -6.0 } else { 6.0 });
                        }
                    });
                    sheet.stroke(Ink::Cloth, 1.6, gathers);
                } else if *self == Print::Cracks {
                    let cracks = Pen::with(|pen| {
                        for step in 0..6 {
                            let x = 34.0 + f64::from(step) * 10.4;
                            let half = 28.0 * (1.0 - (x - 60.0).abs() / 36.0);
                            let mut y = 40.0 - half;
                            pen.at(x, y);
                            while y < 40.0 + half {
                                y += 6.0;
                                pen.to(x + chance.about(3.0), y.min(40.0 + half));
                            }
                        }
                    });
                    sheet.stroke(Ink::ClothPale, 2.0, cracks);
                    let flake = Pen::with(|pen| _ = pen.outline(&[(82.0, 52.0), (90.0, 45.0), (92.0, 54.0)]));
                    sheet.fill(Ink::Paper, flake.clone());
                    sheet.stroke(Ink::Edge, 1.0, flake);
                }
            }
        }
        let pull = Pen::with(|pen| {
            for (x, way) in [(12.0, -1.0), (108.0, 1.0)] {
                pen.line(x, 40.0, x + way * 9.0, 40.0).points(&[
                    (x + way * 5.0, 36.0),
                    (x + way * 9.0, 40.0),
                    (x + way * 5.0, 44.0),
                ]);
            }
        });
        sheet.stroke(Ink::Edge, 1.6, pull);
    }
}
