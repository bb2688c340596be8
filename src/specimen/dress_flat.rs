//! A dress or skirt laid flat, with one point of measure on it or none, and skirts by the way round their hems.

use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Track, clamp};
use super::words::Words;
use crate::{say, to_say};

/// A dress or skirt laid flat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DressFlat {
    /// Whether it is a skirt only.
    pub skirt: bool,
    /// Where the tape lies; none where nothing is measured.
    pub point: Option<DressPoint>,
}

/// A point of measure of a dress or skirt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DressPoint {
    /// Across the back, armhole seam to armhole seam.
    Shoulders,
    /// Across, just below the armholes.
    Bust,
    /// Across at the waist seam, or the top of a skirt.
    Waist,
    /// Across, 20 cm below the waist.
    Hip,
    /// Along the edge of the hem.
    Hem,
    /// From the top of the shoulder down.
    Length,
}

/// A skirt by the way round its hem.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HemRound {
    /// All the way round, in metres, 0.6 to 6.
    pub metres: f64,
}

/// Half the outline in cm from the middle and down from the shoulder: shoulder to hem.
const HALF: [(f64, f64); 7] = [(9.0, 0.0), (18.5, 3.5), (16.5, 15.0), (21.5, 23.0), (17.5, 41.0), (24.0, 61.0), (31.0, 100.0)];
/// Where the skirt begins among them.
const WAIST: usize = 4;

fn place((x, y): (f64, f64)) -> (f64, f64) {
    (60.0 + x * 0.74, 3.0 + y * 0.74)
}

impl DressFlat {
    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(if self.skirt { say!("a skirt laid flat") } else { say!("a dress laid flat") });
        if let Some(point) = self.point {
            words.and(match point {
                DressPoint::Shoulders => say!("a line from armhole seam to armhole seam"),
                DressPoint::Bust => say!("a line straight across, just below the armholes"),
                DressPoint::Waist => say!("a line straight across at the waist"),
                DressPoint::Hip => say!("a line straight across, 20 centimetres below the waist"),
                DressPoint::Hem => say!("a line along the edge of the hem"),
                DressPoint::Length => say!("a line from the top of the shoulder straight down to the hem"),
            });
        }
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        // A skirt is drawn larger by starting at its waist.
        let half = if self.skirt { &HALF[WAIST..] } else { &HALF[..] };
        let at = |(x, y): (f64, f64)| if self.skirt { (60.0 + x, 8.0 + (y - HALF[WAIST].1)) } else { place((x, y)) };
        let outline = Pen::with(|pen| {
            let mirrored = half.iter().rev().map(|&(x, y)| (-x, y));
            pen.outline(&half.iter().copied().chain(mirrored).map(at).collect::<Vec<_>>());
        });
        sheet.fill(Ink::ClothPale, outline.clone());
        sheet.stroke(Ink::Edge, 1.3, outline);
        let waist = HALF[WAIST];
        let seams = Pen::with(|pen| {
            let (a, b) = (at((-waist.0, waist.1)), at(waist));
            pen.line(a.0, a.1 + if self.skirt { 3.0 } else { 0.0 }, b.0, b.1 + if self.skirt { 3.0 } else { 0.0 });
            for side in [-1.0, 1.0] {
                let (a, b) = (at((side * 8.0, waist.1 + 12.0)), at((side * 9.0, waist.1)));
                pen.line(a.0, a.1, b.0, b.1);
                if !self.skirt {
                    let (a, b) = (at((side * 9.0, waist.1)), at((side * 9.0, 27.0)));
                    pen.line(a.0, a.1, b.0, b.1);
                }
            }
        });
        sheet.stroke(Ink::Cloth, 1.0, seams);
        if !self.skirt {
            let neck = Pen::with(|pen| {
                let (a, b) = (at((-9.0, 0.0)), at((9.0, 0.0)));
                pen.at(a.0, a.1).bend(60.0, a.1 + 17.0, b.0, b.1).close();
            });
            sheet.fill(Ink::Paper, neck.clone());
            sheet.stroke(Ink::Edge, 1.3, neck);
        }
        let Some(point) = self.point else { return };
        let across = |x: f64, y: f64| [at((-x, y)), at((x, y))];
        let line = match point {
            DressPoint::Shoulders => across(HALF[1].0, HALF[1].1),
            DressPoint::Bust => across(HALF[3].0, HALF[3].1 + 0.5),
            DressPoint::Waist => across(waist.0, waist.1),
            DressPoint::Hip => across(HALF[5].0, HALF[5].1),
            DressPoint::Hem => across(HALF[6].0, HALF[6].1),
            DressPoint::Length => [at(HALF[0]), at((HALF[0].0, HALF[6].1))],
        };
        let track = Track::through(&line);
        let dimension = Pen::with(|pen| {
            pen.points(&line);
            for along in [0.0, track.length()] {
                let (a, b) = (track.spot(along).beside(-4.0, 0.0), track.spot(along).beside(4.0, 0.0));
                pen.line(a.0, a.1, b.0, b.1);
            }
        });
        sheet.stroke(Ink::Paper, 4.4, dimension.clone());
        sheet.stroke(Ink::Thread, 2.2, dimension);
    }
}

impl HemRound {
    fn told(self) -> f64 {
        clamp(self.metres, 0.6, 6.0)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("a skirt"));
        words.number(self.told(), to_say!("{number} metres round its hem"));
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        // A flat hem is half the way round; what is wider than the frame shows falls in folds instead.
        let flat = self.told() * 100.0 / 2.0 * 0.5;
        let half = (flat / 2.0).min(30.0 + flat * 0.14);
        let folds = ((self.told() - 0.8) * 2.4).round().max(0.0) as i32;
        let skirt = Pen::with(|pen| {
            pen.at(47.0, 8.0).to(73.0, 8.0).bend(74.0 + half * 0.1, 34.0, 60.0 + half, 70.0);
            let waves = folds.max(1);
            for wave in 0..waves {
                let (from, to) = (f64::from(wave) / f64::from(waves), f64::from(wave + 1) / f64::from(waves));
                let x = |on: f64| 60.0 + half - 2.0 * half * on;
                pen.bend(x((from + to) / 2.0), if folds > 0 { 77.0 } else { 70.0 }, x(to), 70.0);
            }
            pen.bend(46.0 - half * 0.1, 34.0, 47.0, 8.0).close();
        });
        sheet.fill(Ink::ClothPale, skirt.clone());
        let lines = Pen::with(|pen| {
            for fold in 1..folds {
                let on = f64::from(fold) / f64::from(folds);
                pen.at(48.0 + 24.0 * on, 14.0).bend(52.0 + 16.0 * on, 40.0, 60.0 - half + 2.0 * half * on, 69.0);
            }
        });
        sheet.stroke(Ink::Cloth, 1.2, lines);
        sheet.stroke(Ink::Edge, 1.4, skirt);
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(46.6, 12.0, 73.4, 12.0)));
    }
}
