//! What became of raw edges, beyond the joins of long seams: in section above, as the inside shows it below.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, Pen, Row, Track, fringe, overlock};
use crate::say;

/// What became of the raw edges of a seam or hem.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RawEdge {
    /// What became of them.
    pub fate: EdgeFate,
}

/// What may become of raw edges.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EdgeFate {
    /// Shut into a little tube that is sewn twice.
    Tube,
    /// Pressed apart, each in a tape of its own.
    TapeEach,
    /// Meeting without overlap under a band of stitches.
    Butted,
    /// A hem turned once.
    TurnedOnce,
    /// A hem turned twice.
    TurnedTwice,
    /// No second layer: rows for looks.
    OnePly,
    /// Left as cut.
    Raw,
}

/// A stitch in section: through the cloth at a place, with a bar on either face.
fn stitch(pen: &mut Pen, x: f64, top: f64, low: f64) {
    pen.line(x, top, x, low).line(x - 3.5, top, x + 3.5, top).line(x - 3.5, low, x + 3.5, low);
}

/// Where the picture is divided: section above, inside below.
const LEVEL: f64 = 40.0;

impl RawEdge {
    pub(super) fn words(self) -> String {
        let seam = match self.fate {
            EdgeFate::Tube => say!("a seam whose edges are shut into a little tube"),
            EdgeFate::TapeEach => say!("a seam pressed apart, each edge in a tape"),
            EdgeFate::Butted => say!("edges that meet without overlap under a band of stitches"),
            EdgeFate::TurnedOnce => say!("a hem turned once, its raw edge in sight"),
            EdgeFate::TurnedTwice => say!("a hem turned twice, no raw edge in sight"),
            EdgeFate::OnePly => say!("rows of stitches on a single layer of cloth"),
            EdgeFate::Raw => say!("a seam whose edges are left as cut"),
        };
        say!("in section and from inside: {seam}", seam)
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        self.inside(sheet, chance);
        sheet.area(Ink::Paper, Area { x: -5.0, y: -5.0, width: 130.0, height: LEVEL + 5.0 });
        sheet.stroke(Ink::Edge, 1.0, Pen::with(|pen| _ = pen.line(-5.0, LEVEL, 125.0, LEVEL)));
        self.section(sheet, chance);
    }

    fn section(self, sheet: &mut Sheet, chance: &mut Chance) {
        let ply = |sheet: &mut Sheet, ink: Ink, write: &dyn Fn(&mut Pen)| sheet.ply(ink, 5.0, Pen::with(write));
        let (left, right) = (Ink::Cloth, Ink::ClothLight);
        let (mut thread, mut yarns) = (Pen::new(), Pen::new());
        let mut frayed = |x: f64, y: f64, dx: f64, dy: f64| {
            for step in -2..=2 {
                let off = f64::from(step) * 1.1;
                let reach = chance.between(0.7, 1.1);
                yarns.line(
                    x + dy.abs().min(1.0) * off,
                    y + dx.abs().min(1.0) * off,
                    x + dx * reach + dy.abs().min(1.0) * off * 1.5,
                    y + dy * reach + dx.abs().min(1.0) * off * 1.5,
                );
            }
        };
        match self.fate {
            EdgeFate::Tube => {
                // Up, over at the first row, and down inside; the second row holds all below the cut ends.
                ply(sheet, left, &|pen| {
                    pen.at(-6.0, 33.0).to(44.0, 33.0).bend(50.6, 33.0, 50.6, 27.0).to(50.6, 8.0);
                    _ = pen.bend(50.6, 4.0, 53.7, 4.0).bend(56.8, 4.0, 56.8, 8.0).to(56.8, 17.0);
                });
                ply(sheet, right, &|pen| {
                    pen.at(126.0, 33.0).to(76.0, 33.0).bend(69.4, 33.0, 69.4, 27.0).to(69.4, 8.0);
                    _ = pen.bend(69.4, 4.0, 66.3, 4.0).bend(63.2, 4.0, 63.2, 8.0).to(63.2, 17.0);
                });
                thread.line(54.0, 9.0, 66.0, 9.0).line(45.0, 24.0, 75.0, 24.0);
                thread.line(45.0, 21.6, 45.0, 26.4).line(75.0, 21.6, 75.0, 26.4);
            }
            EdgeFate::TapeEach => {
                ply(sheet, left, &|pen| {
                    _ = pen
                        .at(-6.0, 31.0)
                        .to(51.0, 31.0)
                        .bend(56.8, 31.0, 56.8, 25.5)
                        .bend(56.8, 20.0, 51.0, 20.0)
                        .to(30.0, 20.0);
                });
                ply(sheet, right, &|pen| {
                    _ = pen
                        .at(126.0, 31.0)
                        .to(69.0, 31.0)
                        .bend(63.2, 31.0, 63.2, 25.5)
                        .bend(63.2, 20.0, 69.0, 20.0)
                        .to(90.0, 20.0);
                });
                for (edge, way) in [(27.0, 1.0), (93.0, -1.0)] {
                    sheet.ply(
                        Ink::Tape,
                        3.4,
                        Pen::with(|pen| {
                            pen.at(edge + way * 13.0, 15.4).to(edge, 15.4).bend(edge - way * 4.6, 15.4, edge - way * 4.6, 20.0);
                            pen.bend(edge - way * 4.6, 24.6, edge, 24.6).to(edge + way * 13.0, 24.6);
                        }),
                    );
                    thread.line(edge + way * 8.0, 12.6, edge + way * 8.0, 27.2);
                }
                thread.line(53.0, 25.5, 67.0, 25.5);
            }
            EdgeFate::Butted => {
                ply(sheet, left, &|pen| _ = pen.line(-6.0, 21.0, 56.6, 21.0));
                ply(sheet, right, &|pen| _ = pen.line(126.0, 21.0, 63.4, 21.0));
                for x in [40.0, 52.0, 68.0, 80.0] {
                    thread.line(x, 16.0, x, 26.0);
                }
                thread.line(38.0, 16.0, 82.0, 16.0).line(38.0, 26.0, 82.0, 26.0);
            }
            EdgeFate::TurnedOnce => {
                ply(sheet, left, &|pen| {
                    _ = pen
                        .at(-6.0, 29.0)
                        .to(92.0, 29.0)
                        .bend(98.0, 29.0, 98.0, 24.0)
                        .bend(98.0, 19.0, 92.0, 19.0)
                        .to(48.0, 19.0);
                });
                frayed(44.0, 19.0, -6.0, 0.0);
                stitch(&mut thread, 62.0, 14.0, 34.0);
            }
            EdgeFate::TurnedTwice => {
                ply(sheet, left, &|pen| {
                    pen.at(-6.0, 32.0).to(92.0, 32.0).bend(99.0, 32.0, 99.0, 23.0).bend(99.0, 14.0, 92.0, 14.0).to(48.0, 14.0);
                    _ = pen.bend(42.0, 14.0, 42.0, 18.6).bend(42.0, 23.0, 48.0, 23.0).to(86.0, 23.0);
                });
                stitch(&mut thread, 54.0, 9.0, 37.0);
            }
            EdgeFate::OnePly => {
                ply(sheet, left, &|pen| _ = pen.line(-6.0, 21.0, 126.0, 21.0));
                stitch(&mut thread, 50.0, 16.0, 26.0);
                stitch(&mut thread, 70.0, 16.0, 26.0);
            }
            EdgeFate::Raw => {
                ply(sheet, left, &|pen| _ = pen.at(-6.0, 33.0).to(48.0, 33.0).bend(56.8, 33.0, 56.8, 25.0).to(56.8, 13.0));
                ply(sheet, right, &|pen| _ = pen.at(126.0, 33.0).to(72.0, 33.0).bend(63.2, 33.0, 63.2, 25.0).to(63.2, 13.0));
                frayed(56.8, 9.4, 0.0, -5.0);
                frayed(63.2, 9.4, 0.0, -5.0);
                thread.line(47.0, 25.0, 73.0, 25.0).line(47.0, 22.6, 47.0, 27.4).line(73.0, 22.6, 73.0, 27.4);
            }
        }
        sheet.stroke(Ink::Edge, 0.9, yarns);
        sheet.stroke(Ink::Thread, 1.7, thread);
    }

    fn inside(self, sheet: &mut Sheet, chance: &mut Chance) {
        let band = |sheet: &mut Sheet, ink: Ink, from: f64, to: f64| {
            sheet.area(ink, Area { x: -5.0, y: from, width: 130.0, height: to - from });
        };
        let edge = |sheet: &mut Sheet, ink: Ink, y: f64| sheet.stroke(ink, 1.1, Pen::with(|pen| _ = pen.line(-5.0, y, 125.0, y)));
        let mut thread = Pen::new();
        let row = |pen: &mut Pen, y: f64| _ = Row::of(7.0).sew(pen, &Track::level(-4.0, 124.0, y), 0.0, 0.0, 128.0);
        let fray = |sheet: &mut Sheet, y: f64, reach: f64, chance: &mut Chance| {
            let cut = Track::level(0.0, 120.0, y);
            sheet.stroke(Ink::ClothLight, 1.0, Pen::with(|pen| fringe(pen, &cut, 0.0, reach, 2.6, chance)));
        };
        match self.fate {
            EdgeFate::Tube => {
                band(sheet, Ink::ClothLight, 54.0, 68.0);
                edge(sheet, Ink::Shade, 54.0);
                edge(sheet, Ink::Shade, 68.0);
                row(&mut thread, 64.4);
            }
            EdgeFate::TapeEach => {
                band(sheet, Ink::Weft, 48.0, 72.0);
                for (top, low, line) in [(46.0, 54.0, 51.4), (66.0, 74.0, 68.6)] {
                    band(sheet, Ink::Tape, top, low);
                    edge(sheet, Ink::Shade, top);
                    edge(sheet, Ink::Shade, low);
                    row(&mut thread, line);
                }
                sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.line(-5.0, 60.0, 125.0, 60.0)));
            }
            EdgeFate::Butted => {
                edge(sheet, Ink::Edge, 60.0);
                overlock(&mut thread, &Track::level(-4.0, 124.0, 60.0), -8.6, 8.6, 10.0);
                for side in [-11.0, 11.0] {
                    row(&mut thread, 60.0 + side);
                }
            }
            EdgeFate::TurnedOnce => {
                band(sheet, Ink::Cloth, 52.0, 74.0);
                fray(sheet, 52.0, -4.0, chance);
                edge(sheet, Ink::Shade, 52.0);
                row(&mut thread, 57.0);
            }
            EdgeFate::TurnedTwice => {
                band(sheet, Ink::Cloth, 52.0, 74.0);
                edge(sheet, Ink::Shade, 52.0);
                row(&mut thread, 57.0);
            }
            EdgeFate::OnePly => {
                row(&mut thread, 55.0);
                row(&mut thread, 65.0);
            }
            EdgeFate::Raw => {
                band(sheet, Ink::Weft, 52.0, 66.0);
                fray(sheet, 52.0, -4.0, chance);
                edge(sheet, Ink::Shade, 52.0);
                edge(sheet, Ink::Shade, 66.0);
                row(&mut thread, 62.4);
            }
        }
        if matches!(self.fate, EdgeFate::TurnedOnce | EdgeFate::TurnedTwice) {
            band(sheet, Ink::Paper, 74.0, 86.0);
            edge(sheet, Ink::Edge, 74.0);
        }
        let on_face = matches!(self.fate, EdgeFate::TurnedOnce | EdgeFate::TurnedTwice | EdgeFate::Tube);
        if on_face {
            sheet.stitches(1.7, thread);
        } else {
            sheet.stroke(Ink::Thread, 1.8, thread);
        }
    }
}
