//! What wearing and needles have done to what was sewn: strained seams, mends, altered hems.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, fringe, overlock};
use super::stitching::ridge;
use crate::say;

/// A seam that is parted a little.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Strained {
    /// The cloth beside the stitches is torn.
    Torn,
    /// Stitches are broken, the cloth is whole.
    Popped,
    /// Thread and large holes show.
    Strained,
    /// Nothing shows.
    Sound,
}

/// A place that was mended, or was not.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mended {
    /// A lumpy patch that comes off at a corner.
    Gives,
    /// A flat patch sewn all round.
    Plain,
    /// A darn in the cloth's own colour.
    Fine,
    /// No mend.
    Never,
}

/// A hem from inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Altered {
    /// Cut off at the new edge.
    Cut,
    /// Let down: the old fold shows.
    Line,
    /// Taken up: the cloth is still there, with the holes of the old row.
    Inside,
    /// As it was made.
    Never,
}

/// Holes that a needle left, along a level line.
fn holes(sheet: &mut Sheet, size: f64, y: f64) {
    let row = Pen::with(|pen| (0..20).for_each(|hole| _ = pen.line(f64::from(hole) * 6.4, y, f64::from(hole) * 6.4, y)));
    sheet.stroke(Ink::Edge, size, row);
}

impl Strained {
    pub(super) fn words(self) -> &'static str {
        match self {
            Strained::Torn => say!("a seam, the cloth torn beside its stitches"),
            Strained::Popped => say!("a seam that gapes, its stitches broken, the cloth beside it whole"),
            Strained::Strained => say!("a seam a little open, thread across it and large holes on both sides"),
            Strained::Sound => say!("a seam, closed"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        let across = |pen: &mut Pen, from: f64, to: f64, half: f64| {
            let mut x = from;
            while x < to {
                pen.line(x, 38.0 - half, x + 2.0, 38.0 + half);
                x += 6.4;
            }
        };
        match self {
            Strained::Sound => ridge(sheet, &[(-5.0, 38.0), (125.0, 38.0)]),
            Strained::Strained => {
                sheet.area(Ink::Shade, Area { x: -5.0, y: 35.6, width: 130.0, height: 4.8 });
                sheet.stroke(Ink::ThreadLight, 1.6, Pen::with(|pen| across(pen, 2.0, 120.0, 4.0)));
                holes(sheet, 2.6, 32.4);
                holes(sheet, 2.6, 43.8);
            }
            Strained::Popped => {
                ridge(sheet, &[(-5.0, 38.0), (125.0, 38.0)]);
                sheet.fill(
                    Ink::Edge,
                    Pen::with(|pen| _ = pen.at(22.0, 38.0).bend(60.0, 14.0, 98.0, 38.0).bend(60.0, 62.0, 22.0, 38.0).close()),
                );
                let rims = Pen::with(|pen| {
                    _ = pen.at(22.0, 38.0).bend(60.0, 14.0, 98.0, 38.0).at(22.0, 38.0).bend(60.0, 62.0, 98.0, 38.0)
                });
                sheet.stroke(Ink::ClothLight, 1.6, rims);
                let ends = Pen::with(|pen| {
                    for (x, up) in [(34.0, -9.0), (48.0, 8.0), (62.0, -7.0), (74.0, 9.0), (87.0, -8.0)] {
                        pen.at(x, 38.0 + up).bend(x + chance.about(5.0), 38.0 + up * 0.4, x + 4.0, 38.0 - up * 0.2);
                    }
                });
                sheet.stroke(Ink::ThreadLight, 1.6, ends);
            }
            Strained::Torn => {
                ridge(sheet, &[(-5.0, 38.0), (125.0, 38.0)]);
                let rim = [(22.0, 41.0), (36.0, 54.0), (46.0, 50.0), (60.0, 65.0), (73.0, 55.0), (86.0, 60.0), (99.0, 41.0)];
                sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.outline(&rim)));
                let yarns = Pen::with(|pen| {
                    fringe(pen, &Track::through(&rim), -0.5, -7.0, 5.0, chance);
                    fringe(pen, &Track::level(28.0, 94.0, 41.0), 0.0, 5.0, 7.0, chance);
                });
                sheet.stroke(Ink::Weft, 1.2, yarns);
                holes(sheet, 1.8, 34.0);
            }
        }
    }
}

impl Mended {
    pub(super) fn words(self) -> &'static str {
        match self {
            Mended::Gives => say!("a lumpy patch that comes off at a corner"),
            Mended::Plain => say!("a flat patch sewn all round"),
            Mended::Fine => say!("a small darn, hardly to be told from the cloth"),
            Mended::Never => say!("cloth without a mend"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        match self {
            Mended::Never => {}
            Mended::Fine => {
                let area = Area { x: 46.0, y: 28.0, width: 28.0, height: 22.0 };
                sheet.stroke(Ink::ClothLight, 0.6, Pen::with(|pen| _ = pen.hatch(area, 2.4, 0.0)));
                let over = Pen::with(|pen| {
                    (0..9).for_each(|row| _ = pen.line(46.0, 29.0 + f64::from(row) * 2.5, 74.0, 29.0 + f64::from(row) * 2.5))
                });
                sheet.dash(Ink::ClothDark, 0.9, 2.4, 2.4, over);
            }
            Mended::Plain => {
                let area = Area { x: 30.0, y: 16.0, width: 60.0, height: 48.0 };
                sheet.area(Ink::ClothLight, area);
                sheet.twill(Ink::Cloth, area, 3.9);
                sheet.stroke(Ink::Shade, 1.2, Pen::with(|pen| _ = pen.rect(30.0, 16.0, 60.0, 48.0)));
                let track = Track::through(&[(34.0, 20.0), (86.0, 20.0), (86.0, 60.0), (34.0, 60.0), (34.0, 20.0)]);
                sheet.stitches(1.8, Pen::with(|pen| _ = Row::of(6.4).sew(pen, &track, 0.0, 0.0, track.length())));
            }
            Mended::Gives => {
                let patch = [(28.0, 20.0), (56.0, 13.0), (92.0, 19.0), (88.0, 44.0), (74.0, 58.0), (33.0, 64.0)];
                sheet.fill(
                    Ink::Shade,
                    Pen::with(|pen| _ = pen.outline(&[(74.0, 50.0), (92.0, 40.0), (94.0, 66.0), (70.0, 66.0)])),
                );
                sheet.fill(Ink::ClothPale, Pen::with(|pen| _ = pen.outline(&patch)));
                // The corner that came off lies turned over.
                sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.outline(&[(88.0, 44.0), (74.0, 58.0), (70.0, 41.0)])));
                sheet.stroke(
                    Ink::Edge,
                    1.2,
                    Pen::with(|pen| _ = pen.outline(&patch).line(88.0, 44.0, 70.0, 41.0).to(74.0, 58.0)),
                );
                let crooked = Pen::with(|pen| {
                    let track = Track::through(&[(72.0, 60.0), (31.0, 66.0), (26.0, 18.0), (56.0, 11.0), (94.0, 17.0)]);
                    let mut at = 3.0;
                    while at < track.length() {
                        let (a, b) =
                            (track.spot(at).beside(-3.0, chance.about(3.0)), track.spot(at).beside(6.0, chance.about(4.0)));
                        pen.line(a.0, a.1, b.0, b.1);
                        at += chance.between(5.0, 13.0);
                    }
                });
                sheet.stitches(1.8, crooked);
                let folds = Pen::with(|pen| {
                    _ = pen.at(36.0, 52.0).bend(44.0, 38.0, 40.0, 24.0).at(50.0, 48.0).bend(58.0, 34.0, 66.0, 30.0)
                });
                sheet.stroke(Ink::ClothLight, 2.4, folds);
            }
        }
    }
}

impl Altered {
    pub(super) fn words(self) -> &'static str {
        match self {
            Altered::Cut => say!("a hem from inside, cut off at the edge, nothing turned in"),
            Altered::Line => say!("a narrow hem from inside, the line of an old fold above it"),
            Altered::Inside => say!("a deep hem from inside, the holes of an old row in it"),
            Altered::Never => say!("a hem from inside, one row of stitches"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.inside();
        let (foot, top) = match self {
            Altered::Cut => (58.0, 58.0),
            Altered::Line => (70.0, 61.0),
            Altered::Inside => (70.0, 30.0),
            Altered::Never => (70.0, 48.0),
        };
        sheet.area(Ink::Paper, Area { y: foot, height: 90.0 - foot, ..FRAME });
        let turned = Area { x: -5.0, y: top, width: 130.0, height: foot - top };
        if self != Altered::Cut {
            sheet.area(Ink::ClothLight, turned);
            sheet.twill(Ink::Cloth, turned, 3.9);
            sheet.stroke(Ink::Edge, 1.1, Pen::with(|pen| _ = pen.line(-5.0, top, 125.0, top)));
            let track = Track::level(0.0, 120.0, top + 3.4);
            sheet.stitches(1.8, Pen::with(|pen| _ = Row::of(7.0).sew(pen, &track, 0.0, 0.0, 120.0)));
        }
        match self {
            Altered::Cut => {
                let edge = Track::level(-5.0, 125.0, foot - 5.0);
                sheet.stroke(Ink::Thread, 1.4, Pen::with(|pen| overlock(pen, &edge, 5.0, -4.0, 5.0)));
            }
            Altered::Line => {
                sheet.stroke(Ink::Cloth, 3.4, Pen::with(|pen| _ = pen.line(-5.0, 42.0, 125.0, 42.0)));
                sheet.stroke(Ink::Weft, 1.2, Pen::with(|pen| _ = pen.line(-5.0, 43.6, 125.0, 43.6)));
                holes(sheet, 1.8, 26.0);
            }
            Altered::Inside => holes(sheet, 2.2, 52.0),
            Altered::Never => {}
        }
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.line(-5.0, foot, 125.0, foot)));
    }
}
