//! Cloth left inside a garment, and the ruler where it is measured.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track};
use crate::say;

/// Where cloth is left inside for a tailor, seen from inside, with a ruler on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LeftInside {
    /// At the seat seam, just below the band: from the stitching to the cut edge of one side.
    SeatSeam,
    /// At the inner leg seam, near the crotch: from the stitching to the cut edge of one side.
    InnerSeam,
    /// At the hem: from the fold to the cut edge.
    HemDepth,
}

/// Drawing units per mm.
const MM: f64 = 1.4;
/// What the three show, in mm. No figure of any garment: enough to be seen.
const SEAT: f64 = 30.0;
const INNER: f64 = 18.0;
const HEM: f64 = 40.0;

impl LeftInside {
    /// All of them.
    pub const ALL: [LeftInside; 3] = [LeftInside::SeatSeam, LeftInside::InnerSeam, LeftInside::HemDepth];

    /// Its name in kebab case, as allowances of a fitting are keyed.
    pub const fn key(self) -> &'static str {
        match self {
            LeftInside::SeatSeam => "seat-seam",
            LeftInside::InnerSeam => "inner-seam",
            LeftInside::HemDepth => "hem-depth",
        }
    }

    /// What is drawn, in mm.
    pub(super) fn depth_mm(self) -> f64 {
        match self {
            LeftInside::SeatSeam => SEAT,
            LeftInside::InnerSeam => INNER,
            LeftInside::HemDepth => HEM,
        }
    }

    pub(super) fn words(self) -> String {
        String::from(match self {
            LeftInside::SeatSeam => {
                say!("the seat seam below the band, from inside, a ruler from the stitching to the cut edge of one side")
            }
            LeftInside::InnerSeam => {
                say!("the inner leg seam below the crotch, from inside, a ruler from the stitching to the cut edge of one side")
            }
            LeftInside::HemDepth => say!("a hem from inside, a ruler from the fold up to the cut edge"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.inside();
        let reach = self.depth_mm() * MM;
        match self {
            LeftInside::SeatSeam => {
                allowances(sheet, reach, -5.0);
                let band = Area { x: -5.0, y: -5.0, width: 130.0, height: 20.0 };
                sheet.area(Ink::Cloth, band);
                sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(-5.0, 15.0, 125.0, 15.0)));
                let mut thread = Pen::new();
                let under = Track::level(-3.0, 123.0, 11.5);
                Row::of(6.0).sew(&mut thread, &under, 0.0, 0.0, under.length());
                sheet.stitches(1.4, thread);
                ruler(sheet, (60.0, 38.0), (1.0, 0.0));
            }
            LeftInside::InnerSeam => {
                allowances(sheet, reach, 14.0);
                let cross = Pen::with(|pen| _ = pen.at(-5.0, 4.0).bend(60.0, 20.0, 125.0, 4.0));
                sheet.stroke(Ink::Weft, 9.0, cross.clone());
                sheet.stroke(Ink::Edge, 1.4, cross);
                ruler(sheet, (60.0, 42.0), (1.0, 0.0));
            }
            LeftInside::HemDepth => {
                let (fold, edge) = (74.0, 74.0 - reach);
                sheet.area(Ink::Paper, Area { x: -5.0, y: fold, width: 130.0, height: 12.0 });
                let turned = Area { x: -5.0, y: edge, width: 130.0, height: reach };
                sheet.area(Ink::Cloth, turned);
                sheet.twill(Ink::ClothDark, Area { x: 0.0, width: FRAME.width, ..turned }, 3.9);
                let lines = Pen::with(|pen| _ = pen.line(-5.0, fold, 125.0, fold).line(-5.0, edge, 125.0, edge));
                sheet.stroke(Ink::Edge, 1.4, lines);
                let mut thread = Pen::new();
                let under = Track::level(-3.0, 123.0, edge + 4.0);
                Row::of(6.0).sew(&mut thread, &under, 0.0, 0.0, under.length());
                sheet.stitches(1.4, thread);
                ruler(sheet, (52.0, fold), (0.0, -1.0));
            }
        }
    }
}

/// Both allowances of a seam pressed open, down from `top`.
fn allowances(sheet: &mut Sheet, reach: f64, top: f64) {
    for side in [-1.0, 1.0] {
        let (seam, edge) = (60.0, 60.0 + side * reach);
        let x = f64::min(seam, edge);
        let open = Area { x, y: top, width: reach, height: 86.0 - top };
        sheet.area(Ink::Weft, open);
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(edge, top, edge, 86.0)));
    }
    let mut thread = Pen::new();
    let seam = Track::through(&[(60.0, top), (60.0, 86.0)]);
    sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(60.0, top, 60.0, 86.0)));
    Row::of(4.6).sew(&mut thread, &seam, 0.0, 0.0, seam.length());
    sheet.stroke(Ink::Thread, 1.8, thread);
}

/// A ruler whose zero lies at `zero`: 50 mm of it along `way`, ticks each 5 mm.
fn ruler(sheet: &mut Sheet, zero: (f64, f64), way: (f64, f64)) {
    let track = Track::through(&[zero, (zero.0 + way.0 * 43.0 * MM, zero.1 + way.1 * 43.0 * MM)]);
    let corner = |along: f64, side: f64| track.spot(along).beside(side, 0.0);
    let strip = Pen::with(|pen| {
        let end = track.length();
        pen.outline(&[corner(0.0, 0.0), corner(end, 0.0), corner(end, 14.0), corner(0.0, 14.0)]);
    });
    sheet.fill(Ink::Tape, strip.clone());
    sheet.stroke(Ink::Edge, 1.2, strip);
    let ticks = Pen::with(|pen| {
        for step in 0..=8 {
            let along = f64::from(step) * 5.0 * MM;
            let (a, b) = (corner(along, 0.0), corner(along, if step % 2 == 0 { 8.0 } else { 5.0 }));
            pen.line(a.0, a.1, b.0, b.1);
        }
    });
    sheet.stroke(Ink::Edge, 1.1, ticks);
}
