//! Long seams: how two pieces are joined, in section and as the inside shows it.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, Pen, Row, Track, fringe, overlock};
use crate::say;

/// A long seam: its section above, its inside below.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct JoinedSeam {
    /// How the pieces are joined.
    pub join: Join,
}

/// How two pieces of cloth are joined.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Join {
    /// One overlock row holds everything.
    Overlock,
    /// An overlock row and a separate line of stitching beside it.
    OverlockAndRow,
    /// An overlock edge laid to one side and topstitched twice: a felled seam from outside only.
    MockFelled,
    /// Edges locked into each other and sewn twice.
    Felled,
    /// Felled, but the fold runs off and a raw edge shows.
    FelledRunOff,
    /// Edges wrapped in tape.
    Bound,
}

impl Join {
    /// The join in words.
    pub(super) fn words(self) -> &'static str {
        match self {
            Join::Overlock => say!("one overlock row"),
            Join::OverlockAndRow => say!("an overlock row and a second row beside it"),
            Join::MockFelled => say!("an overlocked edge laid flat under two rows"),
            Join::Felled => say!("felled, edges locked into each other under two rows"),
            Join::FelledRunOff => say!("felled, but a raw edge has slipped out"),
            Join::Bound => say!("edges bound in tape"),
        }
    }

    /// The join as the inside shows it along a track; `scale` 1 is a band some 24 units wide.
    pub(super) fn along(self, sheet: &mut Sheet, track: &Track, scale: f64, chance: &mut Chance) {
        let length = track.length();
        let beside = |side: f64| -> Vec<(f64, f64)> {
            track.points.iter().enumerate().map(|(i, _)| track.spot(track_at(track, i)).beside(side * scale, 0.0)).collect()
        };
        let band = |sheet: &mut Sheet, ink: Ink, from: f64, to: f64| {
            let mut outline = beside(from);
            outline.extend(beside(to).into_iter().rev());
            sheet.fill(ink, Pen::with(|pen| _ = pen.outline(&outline)));
        };
        let edge = |sheet: &mut Sheet, side: f64| sheet.stroke(Ink::Shade, 1.1, Pen::with(|pen| _ = pen.points(&beside(side))));
        let mut thread = Pen::new();
        let row = Row::of(7.0 * scale.max(0.8));
        match self {
            Join::Felled | Join::FelledRunOff => {
                band(sheet, Ink::Weft, -11.0, 11.0);
                edge(sheet, -11.0);
                edge(sheet, 11.0);
                for side in [-6.0, 6.0] {
                    row.sew(&mut thread, track, side * scale, 0.0, length);
                }
                if self == Join::FelledRunOff {
                    let (from, to) = (track.spot(length * 0.42), track.spot(length * 0.86));
                    let (a, b) = (from.beside(9.0 * scale, 0.0), to.beside(9.0 * scale, 0.0));
                    sheet.fill(Ink::ClothDark, Pen::with(|pen| super::pen::leaf(pen, a, b, 12.0 * scale)));
                    let open = Track::through(&[from.beside(6.0 * scale, 3.0), to.beside(6.0 * scale, -3.0)]);
                    sheet.stroke(Ink::Weft, 1.1, Pen::with(|pen| fringe(pen, &open, 0.0, 11.0 * scale, 2.6, chance)));
                }
            }
            Join::Bound => {
                band(sheet, Ink::Tape, -13.0, -1.0);
                edge(sheet, -13.0);
                edge(sheet, -1.0);
                row.sew(&mut thread, track, -4.0 * scale, 0.0, length);
                edge(sheet, 7.0);
            }
            _ => {
                band(sheet, Ink::Weft, -14.0, 6.0);
                edge(sheet, 6.0);
                let inner = if self == Join::Overlock { -2.0 } else { -6.5 };
                overlock(&mut thread, track, -15.0 * scale, inner * scale, 5.4 * scale.max(0.8));
                let rows: &[f64] = match self {
                    Join::OverlockAndRow => &[1.0],
                    Join::MockFelled => &[-4.0, 3.0],
                    _ => &[],
                };
                for side in rows {
                    row.sew(&mut thread, track, side * scale, 0.0, length);
                }
            }
        }
        sheet.stroke(Ink::Thread, 1.9, thread);
    }

    /// The join in section, in the upper 36 units.
    fn section(self, sheet: &mut Sheet) {
        let (left, right) = (Ink::Cloth, Ink::ClothLight);
        let ply = |sheet: &mut Sheet, ink: Ink, write: &dyn Fn(&mut Pen)| sheet.ply(ink, 5.0, Pen::with(write));
        let mut thread = Pen::new();
        match self {
            Join::Overlock | Join::OverlockAndRow | Join::Bound => {
                // Both allowances stand up together; the picture's lower half shows them laid to one side.
                ply(sheet, left, &|pen| _ = pen.at(-6.0, 31.0).to(48.0, 31.0).bend(56.8, 31.0, 56.8, 23.0).to(56.8, 8.0));
                ply(sheet, right, &|pen| _ = pen.at(126.0, 31.0).to(72.0, 31.0).bend(63.2, 31.0, 63.2, 23.0).to(63.2, 8.0));
                if self == Join::Bound {
                    let tape = |pen: &mut Pen| {
                        _ = pen
                            .at(50.5, 20.0)
                            .to(50.5, 7.0)
                            .bend(50.5, 3.0, 55.0, 3.0)
                            .to(65.0, 3.0)
                            .bend(69.5, 3.0, 69.5, 7.0)
                            .to(69.5, 20.0)
                    };
                    sheet.ply(Ink::Tape, 4.0, Pen::with(tape));
                    thread.line(46.0, 16.0, 74.0, 16.0);
                } else {
                    for low in [18.0, 13.0] {
                        thread
                            .at(51.0, low)
                            .to(51.0, 6.0)
                            .bend(51.0, 2.5, 60.0, 2.5)
                            .bend(69.0, 2.5, 69.0, 6.0)
                            .to(69.0, low)
                            .to(51.0, low);
                    }
                    if self == Join::OverlockAndRow {
                        thread.line(47.0, 25.0, 73.0, 25.0).at(47.0, 22.8).to(47.0, 27.2).at(73.0, 22.8).to(73.0, 27.2);
                    }
                }
            }
            Join::MockFelled => {
                ply(sheet, right, &|pen| {
                    _ = pen
                        .at(126.0, 31.0)
                        .to(62.0, 31.0)
                        .bend(56.0, 31.0, 56.0, 28.0)
                        .bend(56.0, 25.0, 62.0, 25.0)
                        .to(92.0, 25.0)
                });
                ply(sheet, left, &|pen| {
                    _ = pen.at(-6.0, 31.0).to(42.0, 31.0).bend(48.0, 31.0, 51.0, 25.0).bend(53.0, 19.0, 60.0, 19.0).to(92.0, 19.0)
                });
                thread
                    .at(82.0, 15.0)
                    .to(94.0, 15.0)
                    .bend(98.0, 15.0, 98.0, 22.0)
                    .bend(98.0, 29.0, 94.0, 29.0)
                    .to(82.0, 29.0)
                    .to(82.0, 15.0);
                needles(&mut thread, &[63.0, 76.0], 13.0, 35.0);
            }
            Join::Felled => {
                ply(sheet, left, &|pen| {
                    _ = pen.at(-6.0, 30.0).to(76.0, 30.0).bend(82.0, 30.0, 82.0, 24.0).bend(82.0, 18.0, 76.0, 18.0).to(46.0, 18.0)
                });
                ply(sheet, right, &|pen| {
                    _ = pen
                        .at(126.0, 12.0)
                        .to(44.0, 12.0)
                        .bend(38.0, 12.0, 38.0, 18.0)
                        .bend(38.0, 24.0, 44.0, 24.0)
                        .to(74.0, 24.0)
                });
                needles(&mut thread, &[52.0, 68.0], 7.0, 35.0);
            }
            Join::FelledRunOff => {
                ply(sheet, left, &|pen| _ = pen.at(-6.0, 30.0).to(74.0, 30.0));
                ply(sheet, right, &|pen| {
                    _ = pen
                        .at(126.0, 14.0)
                        .to(52.0, 14.0)
                        .bend(46.0, 14.0, 46.0, 19.0)
                        .bend(46.0, 23.0, 52.0, 23.0)
                        .to(70.0, 23.0)
                });
                sheet.stroke(
                    Ink::Edge,
                    0.9,
                    Pen::with(|pen| {
                        (0..5).for_each(|i| {
                            _ = pen.line(77.0, 27.4 + f64::from(i) * 1.4, 86.0 + f64::from(i % 3), 24.0 + f64::from(i) * 3.0)
                        })
                    }),
                );
                needles(&mut thread, &[55.0, 67.0], 8.0, 35.0);
            }
        }
        sheet.stroke(Ink::Thread, 1.7, thread);
    }
}

/// Distance along a track at its point of that index.
fn track_at(track: &Track, index: usize) -> f64 {
    // A hair before the point keeps the direction of the piece that leads to it.
    (track.along[index] - 1e-6).max(0.0)
}

/// Stitches seen from the side: through all plies, a bar on each face.
fn needles(pen: &mut Pen, places: &[f64], top: f64, bottom: f64) {
    for &x in places {
        pen.line(x, top, x, bottom).at(x - 3.5, top).to(x + 3.5, top).at(x - 3.5, bottom).to(x + 3.5, bottom);
    }
}

impl JoinedSeam {
    pub(super) fn words(&self) -> String {
        say!("a long seam in section and from inside: {seam}", seam = self.join.words())
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        let track = Track::level(0.0, 120.0, 60.5);
        self.join.along(sheet, &track, 1.0, chance);
        sheet.area(Ink::Paper, Area { x: 0.0, y: 0.0, width: 120.0, height: 40.0 });
        sheet.stroke(Ink::Edge, 1.0, Pen::with(|pen| _ = pen.line(-5.0, 40.0, 125.0, 40.0)));
        self.join.section(sheet);
    }
}
