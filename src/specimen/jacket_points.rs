//! A tailored jacket laid flat, with one point of measure on it.

use super::chance::Chance;
use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{FRAME, Pen, Track};
use crate::say;

/// A tailored jacket laid flat, and nothing measured on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct JacketFlat;

/// A tailored jacket laid flat, with the line along which one measure is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct JacketMeasure {
    /// The measure.
    pub point: JacketPoint,
}

/// A point of measure of a tailored jacket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JacketPoint {
    /// Across, 2.5 cm below the armholes.
    Chest,
    /// Across at the button that is closed.
    Waist,
    /// Along the hem.
    Hem,
    /// Across the back, from sleeve seam to sleeve seam.
    Shoulders,
    /// Down the middle of the back, from the collar seam to the hem.
    BackLength,
    /// Along the sleeve from the shoulder seam to its end.
    Sleeve,
    /// Across the upper sleeve, 2.5 cm below the armhole.
    Biceps,
    /// Along the end of the sleeve.
    Cuff,
}

impl JacketPoint {
    /// All of them, in the order of the sheet.
    pub const ALL: [JacketPoint; 8] = [
        JacketPoint::Chest,
        JacketPoint::Waist,
        JacketPoint::Hem,
        JacketPoint::Shoulders,
        JacketPoint::BackLength,
        JacketPoint::Sleeve,
        JacketPoint::Biceps,
        JacketPoint::Cuff,
    ];
}

/// The jacket in cm: across from its middle, and down from where shoulder and collar meet. One of middling size.
const NECK: (f64, f64) = (8.0, 0.0);
const SHOULDER: (f64, f64) = (22.5, 4.5);
const UNDERARM: (f64, f64) = (26.5, 26.0);
const WAIST: (f64, f64) = (24.5, 43.0);
const HEM: (f64, f64) = (27.5, 74.0);
/// The sleeve hangs away from the body: its end, outer and inner. 63 cm from the shoulder, 14 cm wide.
const CUFF_OUTER: (f64, f64) = (45.2, 63.2);
const CUFF_INNER: (f64, f64) = (31.9, 67.6);
/// Where the collar seam lies at the middle of the back.
const NAPE: f64 = 1.5;
/// Drawing units per cm.
const SCALE: f64 = 0.98;

fn place((x, y): (f64, f64)) -> (f64, f64) {
    (Drawing::WIDTH / 2.0 + x * SCALE, 3.0 + y * SCALE)
}

/// The place on the line from `a` to `b` at that height.
fn at_height(a: (f64, f64), b: (f64, f64), y: f64) -> (f64, f64) {
    (a.0 + (b.0 - a.0) * (y - a.1) / (b.1 - a.1), y)
}

impl JacketFlat {
    pub(super) fn words(self) -> String {
        String::from(say!("a tailored jacket laid flat, from the front"))
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        jacket(sheet, false);
    }
}

impl JacketMeasure {
    /// Drawing units per cm of the jacket.
    #[cfg(test)]
    pub(super) const UNITS_PER_CM: f64 = SCALE;

    /// The line of measure in cm.
    fn line(self) -> Vec<(f64, f64)> {
        let across = |(x, y): (f64, f64)| vec![(-x, y), (x, y)];
        match self.point {
            JacketPoint::Chest => across(at_height(UNDERARM, WAIST, UNDERARM.1 + 2.5)),
            JacketPoint::Waist => across(WAIST),
            JacketPoint::Hem => across(HEM),
            JacketPoint::Shoulders => across(SHOULDER),
            JacketPoint::BackLength => vec![(0.0, NAPE), (0.0, HEM.1)],
            JacketPoint::Sleeve => vec![SHOULDER, CUFF_OUTER],
            JacketPoint::Biceps => biceps(),
            JacketPoint::Cuff => vec![CUFF_INNER, CUFF_OUTER],
        }
    }

    const fn behind(self) -> bool {
        matches!(self.point, JacketPoint::Shoulders | JacketPoint::BackLength)
    }

    pub(super) fn words(self) -> String {
        String::from(match self.point {
            JacketPoint::Chest => say!("a jacket from the front, a line straight across just below the armholes"),
            JacketPoint::Waist => say!("a jacket from the front, a line straight across at the closed button"),
            JacketPoint::Hem => say!("a jacket from the front, a line along the hem"),
            JacketPoint::Shoulders => say!("a jacket from the back, a line from sleeve seam to sleeve seam across the shoulders"),
            JacketPoint::BackLength => say!("a jacket from the back, a line down its middle from the collar seam to the hem"),
            JacketPoint::Sleeve => say!("a jacket from the front, a line along the outer sleeve from shoulder seam to its end"),
            JacketPoint::Biceps => say!("a jacket from the front, a line across the upper sleeve, square to it"),
            JacketPoint::Cuff => say!("a jacket from the front, a line along the end of the sleeve"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        jacket(sheet, self.behind());
        let track = Track::through(&self.line().into_iter().map(place).collect::<Vec<_>>());
        let line = Pen::with(|pen| {
            pen.points(&track.points);
            for along in [0.0, track.length()] {
                let spot = track.spot(along);
                let (a, b) = (spot.beside(-3.6, 0.0), spot.beside(3.6, 0.0));
                pen.line(a.0, a.1, b.0, b.1);
            }
        });
        sheet.stroke(Ink::Paper, 4.4, line.clone());
        sheet.stroke(Ink::Thread, 2.2, line);
    }
}

/// Across the sleeve, square to its outer edge, from a place 2.5 cm down the inner seam.
fn biceps() -> Vec<(f64, f64)> {
    let inner = Track::through(&[UNDERARM, CUFF_INNER]).spot(2.5);
    let outer = Track::through(&[SHOULDER, CUFF_OUTER]);
    let (run, start) = (outer.spot(0.0), outer.points[0]);
    let along = (inner.x - start.0) * run.dx + (inner.y - start.1) * run.dy;
    let square = outer.spot(along);
    vec![(inner.x, inner.y), (square.x, square.y)]
}

/// The jacket without a line.
fn jacket(sheet: &mut Sheet, behind: bool) {
    sheet.area(Ink::Paper, FRAME);
    for side in [-1.0, 1.0] {
        let sleeve: Vec<(f64, f64)> =
            [SHOULDER, CUFF_OUTER, CUFF_INNER, UNDERARM].iter().map(|&(x, y)| place((x * side, y))).collect();
        let sleeve = Pen::with(|pen| _ = pen.outline(&sleeve));
        sheet.fill(Ink::ClothLight, sleeve.clone());
        sheet.stroke(Ink::Edge, 1.3, sleeve);
    }
    let half = [NECK, SHOULDER, (20.0, 15.0), UNDERARM, WAIST, HEM];
    let mirrored = half.iter().rev().map(|&(x, y)| (-x, y));
    let body: Vec<(f64, f64)> = half.iter().copied().chain(mirrored).map(place).collect();
    let body = Pen::with(|pen| _ = pen.outline(&body));
    sheet.fill(Ink::ClothPale, body.clone());
    sheet.stroke(Ink::Edge, 1.3, body);
    let points = |all: &[(f64, f64)], side: f64| -> Vec<(f64, f64)> { all.iter().map(|&(x, y)| place((x * side, y))).collect() };
    if behind {
        let collar = points(&[(-8.0, 0.0), (-4.0, -2.4), (4.0, -2.4), (8.0, 0.0), (0.0, NAPE)], 1.0);
        sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&collar)));
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.outline(&collar)));
        sheet.stroke(Ink::ClothLight, 1.0, Pen::with(|pen| _ = pen.points(&points(&[(0.0, NAPE), (0.0, HEM.1)], 1.0))));
        return;
    }
    sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&points(&[(-8.0, -0.4), (8.0, -0.4), (0.0, WAIST.1 - 4.0)], 1.0))));
    for side in [-1.0, 1.0] {
        let lapel = points(&[(8.0, -0.6), (14.5, 9.0), (12.5, 11.0), (16.0, 13.0), (0.0, WAIST.1 - 3.0)], side);
        sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&lapel)));
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.outline(&lapel)));
    }
    let lines = Pen::with(|pen| {
        pen.points(&points(&[(0.0, WAIST.1 - 3.0), (0.0, 66.0), (4.0, HEM.1)], 1.0));
        for side in [-1.0, 1.0] {
            pen.outline(&points(&[(9.0, 51.0), (22.0, 51.0), (22.0, 55.5), (9.0, 55.5)], side));
        }
    });
    sheet.stroke(Ink::Edge, 1.0, lines);
    let button = place((0.0, WAIST.1));
    sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.circle(button.0, button.1, 1.7)));
}
