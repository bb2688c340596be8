//! A pair of jeans laid flat, with one point of measure on it.

use super::chance::Chance;
use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{BLEED, FRAME, Pen, Track};
use crate::say;

/// A pair of jeans laid flat, with the line along which one measure is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Measure {
    /// The measure.
    pub point: Point,
}

/// A point of measure of a pair of jeans.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Point {
    /// Across the top edge of the band, seen from the front.
    Waist,
    /// Across, 8 cm above the crotch.
    Hip,
    /// From the crossing of the crotch seams to the top of the band, in front.
    FrontRise,
    /// From the crossing of the crotch seams to the top of the band, behind.
    BackRise,
    /// Across one leg at right angles to its inner seam, 2.5 cm below the crotch.
    Thigh,
    /// Across one leg, 35 cm below the crotch along the inner seam.
    Knee,
    /// Along the edge of the hem, fold to fold.
    Hem,
    /// Along the inner seam, crotch to hem.
    Inseam,
    /// Along the outer seam, top of the band to hem.
    Outseam,
}

impl Point {
    /// All of them, top to hem.
    pub const ALL: [Point; 9] = [
        Point::Waist,
        Point::Hip,
        Point::FrontRise,
        Point::BackRise,
        Point::Thigh,
        Point::Knee,
        Point::Hem,
        Point::Inseam,
        Point::Outseam,
    ];
}

/// A pair of jeans laid flat, and nothing measured on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct JeansFlat;

impl JeansFlat {
    pub(super) fn words(self) -> String {
        String::from(say!("a pair of jeans laid flat, from the front"))
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        Measure { point: Point::Inseam }.pair(sheet);
    }
}

/// The pair in cm: across from its middle, and down from the top of the band in front. A pair of middling size, legs a little apart.
const CROTCH: (f64, f64) = (0.0, 25.0);
/// Where the inner seam ends.
const INNER_HEM: (f64, f64) = (9.5, 105.5);
/// The outer seam from the top of the band over the hip.
const OUTER: [(f64, f64); 3] = [(20.0, 0.0), (23.8, 8.0), (26.4, 17.0)];
/// Where the outer seam turns down between thigh and knee.
const OUTER_THIGH: (f64, f64) = (28.0, 33.0);
/// Flat widths at thigh, knee and hem, and how far down the inner seam they lie; the last at the hem itself.
const WIDTHS: [(f64, f64); 3] = [(2.5, 27.6), (35.0, 22.5), (81.06, 19.5)];

/// A place on the inner seam, and the place on the outer seam straight across from it.
fn across((down, width): (f64, f64)) -> [(f64, f64); 2] {
    let inner = Track::through(&[CROTCH, INNER_HEM]).spot(down);
    // The track runs down the leg, so its left is where the wearer's left leg lies in the picture: outwards.
    [(inner.x, inner.y), inner.beside(-width, 0.0)]
}

/// Drawn small enough to show the pair whole, or larger to show the part of it where the line lies.
#[derive(Clone, Copy)]
struct View {
    scale: f64,
    top: f64,
}

const WHOLE: View = View { scale: 0.69, top: 4.0 };
const UPPER: View = View { scale: 1.5, top: 11.0 };
const MIDDLE: View = View { scale: 1.05, top: -16.0 };
const LOWER: View = View { scale: 1.05, top: -36.0 };

impl View {
    fn place(self, (x, y): (f64, f64)) -> (f64, f64) {
        (Drawing::WIDTH / 2.0 + x * self.scale, self.top + y * self.scale)
    }

    /// A line through places in cm, as far as the frame and its bleed show it; `side` -1 draws it on the other leg.
    fn line(self, pen: &mut Pen, side: f64, cm: &[(f64, f64)]) {
        for pair in cm.windows(2) {
            let piece = within(&[pair[0], pair[1]].map(|(x, y)| self.place((x * side, y))), false);
            if let [(ax, ay), (bx, by)] = piece[..] {
                pen.line(ax, ay, bx, by);
            }
        }
    }
}

/// What of a line or an outline lies between the top and the foot of the frame with its bleed: a pen would bend what lies beyond.
fn within(points: &[(f64, f64)], closed: bool) -> Vec<(f64, f64)> {
    let mut left = points.to_vec();
    for (border, way) in [(-BLEED, 1.0), (Drawing::HEIGHT + BLEED, -1.0)] {
        let inside = |point: (f64, f64)| (point.1 - border) * way >= 0.0;
        let mut kept = Vec::with_capacity(left.len() + 2);
        for (index, &here) in left.iter().enumerate() {
            let before = if index > 0 { left[index - 1] } else { left[left.len() - 1] };
            if (index > 0 || closed) && inside(before) != inside(here) {
                let share = (border - before.1) / (here.1 - before.1);
                kept.push((before.0 + (here.0 - before.0) * share, border));
            }
            if inside(here) {
                kept.push(here);
            }
        }
        left = kept;
    }
    left
}

/// The outer seam in cm, band to hem.
fn outer() -> Vec<(f64, f64)> {
    let [thigh, knee, hem] = WIDTHS.map(|width| across(width)[1]);
    OUTER.into_iter().chain([thigh, OUTER_THIGH, knee, hem]).collect()
}

impl Measure {
    fn view(self) -> View {
        match self.point {
            Point::Waist | Point::Hip | Point::FrontRise | Point::BackRise | Point::Thigh => UPPER,
            Point::Knee => MIDDLE,
            Point::Hem => LOWER,
            Point::Inseam | Point::Outseam => WHOLE,
        }
    }

    /// Drawing units per cm of the pair.
    #[cfg(test)]
    pub(super) fn units_per_cm(self) -> f64 {
        self.view().scale
    }

    /// How far the middle of the top edge lies below its ends in cm: the front dips, the back rises a little; for the waist both edges
    /// are laid level.
    fn dip(self) -> f64 {
        match self.point {
            Point::Waist => 0.0,
            Point::BackRise => -0.8,
            _ => 1.2,
        }
    }

    /// The line of measure in cm.
    fn line(self) -> Vec<(f64, f64)> {
        let middle = (0.0, self.dip());
        match self.point {
            Point::Waist => vec![(-OUTER[0].0, 0.0), OUTER[0]],
            Point::Hip => vec![(-OUTER[2].0, OUTER[2].1), OUTER[2]],
            Point::FrontRise | Point::BackRise => vec![CROTCH, middle],
            Point::Thigh => across(WIDTHS[0]).to_vec(),
            Point::Knee => across(WIDTHS[1]).to_vec(),
            Point::Hem => across(WIDTHS[2]).to_vec(),
            Point::Inseam => vec![CROTCH, INNER_HEM],
            Point::Outseam => outer(),
        }
    }

    pub(super) fn words(self) -> String {
        String::from(match self.point {
            Point::Waist => say!("jeans from the front, a line straight across the top edge of the band"),
            Point::Hip => say!("jeans from the front, a line straight across, a hand’s width above the crotch"),
            Point::FrontRise => say!("jeans from the front, a line from the crotch up the fly seam to the top of the band"),
            Point::BackRise => say!("jeans from the back, a line from the crotch up the seat seam to the top of the band"),
            Point::Thigh => say!("one leg, a line across it just below the crotch, square to the inner seam"),
            Point::Knee => say!("one leg, a line across it at the knee, 35 centimetres below the crotch"),
            Point::Hem => say!("one leg, a line along the edge of its hem"),
            Point::Inseam => say!("one leg, a line along the inner seam from crotch to hem"),
            Point::Outseam => say!("one leg, a line along the outer seam from the top of the band to the hem"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        self.pair(sheet);
        self.dimension(sheet, self.view());
    }

    /// The pair, without the line.
    fn pair(self, sheet: &mut Sheet) {
        let view = self.view();
        sheet.area(Ink::Paper, FRAME);
        let half: Vec<(f64, f64)> = outer().into_iter().chain([INNER_HEM, CROTCH]).collect();
        let outline = Pen::with(|pen| {
            let mirrored = half.iter().rev().skip(1).map(|&(x, y)| (-x, y));
            let all: Vec<(f64, f64)> =
                half.iter().copied().chain(mirrored).chain([(0.0, self.dip())]).map(|cm| view.place(cm)).collect();
            pen.outline(&within(&all, true));
        });
        sheet.fill(Ink::ClothPale, outline.clone());
        sheet.stroke(Ink::Edge, 1.3, outline);
        let seams = Pen::with(|pen| self.seams(pen, view));
        sheet.stroke(Ink::ClothLight, 1.0, seams);
    }

    /// What a front or a back shows, so that it is known as one.
    fn seams(self, pen: &mut Pen, view: View) {
        let back = self.point == Point::BackRise;
        let dip = self.dip();
        view.line(pen, 1.0, &[(-21.5, 4.0), (0.0, 4.0 + dip), (21.5, 4.0)]);
        view.line(pen, 1.0, &[(0.0, dip), CROTCH]);
        for side in [-1.0, 1.0] {
            let [inner, outer] = across((WIDTHS[2].0 - 2.5, WIDTHS[2].1 + 0.2));
            view.line(pen, side, &[inner, outer]);
            if back {
                view.line(pen, side, &[(0.0, 9.6), (22.4, 6.0)]);
                view.line(pen, side, &[(5.0, 11.4), (18.0, 9.4), (19.2, 20.0), (13.4, 24.0), (6.4, 22.0), (5.0, 11.4)]);
            } else {
                view.line(pen, side, &[(10.5, 4.5), (12.0, 9.0), (16.0, 12.4), (24.2, 13.4)]);
            }
        }
        if !back {
            view.line(pen, 1.0, &[(4.0, 5.0), (4.0, 15.0), (2.8, 18.4), (0.0, 20.0)]);
        }
    }

    /// The line of measure with a tick at either end.
    fn dimension(self, sheet: &mut Sheet, view: View) {
        let track = Track::through(&self.line().into_iter().map(|cm| view.place(cm)).collect::<Vec<_>>());
        let tick = |pen: &mut Pen, along: f64| {
            let spot = track.spot(along);
            let (a, b) = (spot.beside(-4.0, 0.0), spot.beside(4.0, 0.0));
            pen.line(a.0, a.1, b.0, b.1);
        };
        let line = Pen::with(|pen| {
            pen.points(&track.points);
            tick(pen, 0.0);
            tick(pen, track.length());
        });
        sheet.stroke(Ink::Paper, 4.4, line.clone());
        sheet.stroke(Ink::Thread, 2.2, line);
    }
}
