//! Places where seams cross or pieces end: seat and yoke, crotch, belt loop.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp, fringe, leaf, overlock};
use super::seam::Join;
use super::stitching::ridge;
use crate::say;

/// Where seat seam and yoke cross, from inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeatYoke {
    /// How the seams are joined.
    pub join: Join,
    /// How far the two yoke ends miss each other at the seat seam, in mm, 0 (meet) to 12.
    pub miss_mm: f64,
}

/// Where four seams meet at the crotch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crotch {
    /// How far the inside leg seams miss each other, in mm, 0 (meet) to 12.
    pub miss_mm: f64,
    /// Whether the seam gapes and threads are pulled.
    pub gap: bool,
    /// Whether a bar tack holds the crossing.
    pub tack: bool,
}

/// A belt loop on the waistband.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BeltLoop {
    /// Bar tacks that hold it, 0 to 2.
    pub tacks: u8,
    /// Whether its ends are caught in the waistband seam.
    pub caught: bool,
    /// Degrees off upright, -20 to 20.
    pub tilt: i8,
}

/// Drawing units per mm where seams cross.
const CROSSING: f64 = 1.8;

impl SeatYoke {
    pub(super) fn words(&self) -> String {
        let mut words = say!("seat seam and yoke from inside: {seam}", seam = self.join.words());
        words.push_str(", ");
        words.push_str(match clamp(self.miss_mm, 0.0, 12.0) {
            miss if miss < 1.0 => say!("yoke ends meet"),
            miss if miss < 5.0 => say!("yoke ends nearly meet"),
            _ => say!("yoke ends miss each other"),
        });
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        let half = clamp(self.miss_mm, 0.0, 12.0) * CROSSING / 2.0;
        let scale = 0.72;
        self.join.along(sheet, &Track::through(&[(-6.0, 11.8 - half), (60.0, 36.0 - half)]), scale, chance);
        self.join.along(sheet, &Track::through(&[(60.0, 36.0 + half), (126.0, 11.8 + half)]), scale, chance);
        self.join.along(sheet, &Track::through(&[(60.0, 84.0), (60.0, -4.0)]), scale, chance);
    }
}

impl Crotch {
    pub(super) fn words(&self) -> String {
        let mut words = String::from(if self.gap {
            say!("four seams at the crotch with a gap and pulled threads")
        } else {
            match clamp(self.miss_mm, 0.0, 12.0) {
                miss if miss < 1.0 => say!("four seams that meet exactly at the crotch"),
                miss if miss < 5.0 => say!("four seams that nearly meet at the crotch"),
                _ => say!("four seams that miss each other at the crotch"),
            }
        });
        if self.tack {
            words.push_str(", ");
            words.push_str(say!("held by a bar tack"));
        }
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        let half = clamp(self.miss_mm, 0.0, 12.0) * CROSSING / 2.0;
        let scale = 0.72;
        let bow =
            |x0: f64, x1: f64, y0: f64, y1: f64| Track::through(&[(x0, y0), ((x0 + x1) / 2.0, (y0 + y1) / 2.0 - 2.0), (x1, y1)]);
        Join::Felled.along(sheet, &bow(-6.0, 60.0, 55.0 - half, 40.0 - half), scale, chance);
        Join::Felled.along(sheet, &bow(60.0, 126.0, 40.0 + half, 55.0 + half), scale, chance);
        Join::Felled.along(sheet, &Track::through(&[(60.0, 84.0), (60.0, -4.0)]), scale, chance);
        if self.gap {
            sheet.fill(Ink::Edge, Pen::with(|pen| leaf(pen, (38.0, 48.0), (84.0, 34.0), 15.0)));
            let mut pulled = Pen::new();
            for step in 0..7 {
                let x = 44.0 + f64::from(step) * 5.4;
                pulled.line(x, 36.0 + chance.about(2.0), x + 2.0 + chance.about(3.0), 46.0 + chance.about(3.0));
            }
            pulled.at(60.0, 48.0).bend(66.0, 60.0, 58.0, 66.0).bend(70.0, 72.0, 74.0, 62.0);
            sheet.stitches(1.5, pulled);
        }
        if self.tack {
            let bar = Track::through(&[(50.0, 40.0), (70.0, 40.0)]);
            sheet.stitches(1.9, Pen::with(|pen| overlock(pen, &bar, -5.0, 5.0, 2.3)));
        }
    }
}

impl BeltLoop {
    pub(super) fn words(&self) -> String {
        let mut words = String::from(match self.tacks.min(2) {
            0 => say!("a belt loop on the waistband held by plain stitches only"),
            1 => say!("a belt loop on the waistband held by one bar tack"),
            _ => say!("a belt loop on the waistband held by two bar tacks"),
        });
        if !self.caught {
            words.push_str(", ");
            words.push_str(say!("one end pulled out"));
        }
        if self.tilt.unsigned_abs() > 3 {
            words.push_str(", ");
            words.push_str(say!("sewn on crooked"));
        }
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        sheet.area(Ink::Cloth, Area { x: 0.0, y: 14.0, width: 120.0, height: 44.0 });
        sheet.area(Ink::Paper, Area { height: 8.0, ..FRAME });
        ridge(sheet, &[(-5.0, 9.0), (125.0, 9.0)]);
        ridge(sheet, &[(-5.0, 58.0), (125.0, 58.0)]);
        let mut thread = Pen::new();
        for y in [15.0, 52.0] {
            Row::of(8.0).sew(&mut thread, &Track::level(0.0, 120.0, y), 0.0, 0.0, 120.0);
        }
        sheet.stitches(2.2, thread);
        let lean = f64::from(self.tilt.clamp(-20, 20)).to_radians().tan();
        let at = |side: f64, y: f64| (60.0 + side + lean * (38.0 - y), y);
        let foot = if self.caught { 66.0 } else { 60.0 };
        let shape = [at(-12.0, 6.0), at(12.0, 6.0), at(12.0, foot), at(-12.0, foot)];
        sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&shape)));
        sheet.stroke(Ink::Shade, 2.0, Pen::with(|pen| _ = pen.outline(&shape)));
        let mut rows = Pen::new();
        for side in [-6.5, 6.5] {
            let track = Track::through(&[at(side, 8.0), at(side, foot - 2.0)]);
            Row::of(6.4).sew(&mut rows, &track, 0.0, 0.0, track.length());
        }
        for y in [11.0, foot - 6.0].into_iter().take(usize::from(self.tacks.min(2))) {
            let track = Track::through(&[at(-10.5, y), at(10.5, y)]);
            overlock(&mut rows, &track, -3.2, 3.2, 2.3);
        }
        sheet.stitches(1.8, rows);
        if !self.caught {
            let cut = Track::through(&[at(-12.0, foot), at(12.0, foot)]);
            sheet.stroke(Ink::Weft, 1.2, Pen::with(|pen| fringe(pen, &cut, 0.0, 12.0, 2.2, chance)));
        }
    }
}
