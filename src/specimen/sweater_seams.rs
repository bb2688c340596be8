//! A sweater, how it is put together: joins, the thread in them, and the marks of narrowing.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, chain, fringe, leaf, overlock};
use crate::say;

/// How two panels are joined: in section above, from inside below.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KnitJoin {
    /// Cut edges, wrapped.
    CutOverlocked,
    /// Linked past the loops: bulky, not straight.
    LinkedRough,
    /// Linked loop to loop.
    LoopToLoop,
    /// Linked flat or grafted: hardly a ridge.
    Flat,
}

/// A join that is pulled a little.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JoinPulled {
    /// Its thread breaks, and shows.
    Breaks,
    /// Its thread holds the cloth back.
    Tight,
    /// It goes along, in another colour.
    Gives,
    /// It goes along, in the colour of the cloth.
    GivesMatched,
}

/// Where body and sleeves were narrowed, seen from the front.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shaping {
    /// Cut: columns run into the seam.
    Cut,
    /// A mark here and there.
    Few,
    /// Marks at even steps.
    Regular,
    /// Marks in pairs, both sides mirrored.
    Decorative,
}

impl KnitJoin {
    pub(super) fn words(self) -> &'static str {
        match self {
            KnitJoin::CutOverlocked => say!("two panels joined, their cut edges wrapped in thread, a thick ridge"),
            KnitJoin::LinkedRough => say!("two panels linked by a chain that wanders, a bulky ridge"),
            KnitJoin::LoopToLoop => say!("two panels linked loop to loop by an even chain, a narrow ridge"),
            KnitJoin::Flat => say!("two panels joined flat, columns meeting, hardly a ridge"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        // The section: two layers meet and turn up as a ridge.
        let (rise, thick) = match self {
            KnitJoin::CutOverlocked => (15.0, 5.0),
            KnitJoin::LinkedRough => (9.0, 6.0),
            KnitJoin::LoopToLoop => (4.0, 5.0),
            KnitJoin::Flat => (0.0, 5.0),
        };
        for way in [-1.0, 1.0] {
            let layer = Pen::with(|pen| {
                pen.at(60.0 + way * 66.0, 22.0);
                if rise > 0.0 {
                    pen.to(60.0 + way * 9.0, 22.0).bend(60.0 + way * 3.2, 22.0, 60.0 + way * 3.2, 22.0 - rise);
                } else {
                    pen.to(60.0 + way * 3.4, 22.0);
                }
            });
            sheet.ply(Ink::ClothLight, thick, layer);
        }
        let body = Area { x: -5.0, y: 31.0, width: 130.0, height: 55.0 };
        sheet.area(Ink::ClothPale, body);
        let shift = if self == KnitJoin::LinkedRough { 3.0 } else { 0.0 };
        let wales = Pen::with(|pen| {
            pen.hatch(Area { height: 24.0, ..body }, 6.0, 0.0);
            pen.hatch(Area { x: body.x + shift, y: 56.0, height: 30.0, ..body }, 6.0, 0.0);
        });
        sheet.stroke(Ink::ClothLight, 1.6, wales);
        let middle = Track::level(-5.0, 125.0, 56.0);
        let mut thread = Pen::new();
        match self {
            KnitJoin::CutOverlocked => {
                sheet.area(Ink::Weft, Area { y: 46.0, height: 20.0, ..body });
                let hairs = Pen::with(|pen| fringe(pen, &middle, -9.0, -6.0, 4.0, chance));
                sheet.stroke(Ink::ClothLight, 1.2, hairs);
                overlock(&mut thread, &middle, -10.0, 9.0, 6.4);
                thread.line(55.0, 6.0, 66.0, 11.0).line(54.0, 11.0, 66.0, 16.0);
            }
            KnitJoin::LinkedRough => {
                let line: Vec<(f64, f64)> =
                    (0..=20).map(|i| (-5.0 + 6.5 * f64::from(i), 56.0 + 3.0 * (f64::from(i) * 1.3).sin())).collect();
                sheet.stroke(Ink::ClothLight, 13.0, Pen::with(|pen| _ = pen.smooth(&line)));
                chain(&mut thread, &Track::through(&line), 9.0, 3.4);
            }
            KnitJoin::LoopToLoop => {
                sheet.stroke(Ink::ClothLight, 6.0, Pen::with(|pen| _ = pen.points(&middle.points)));
                chain(&mut thread, &middle, 6.0, 2.2);
            }
            KnitJoin::Flat => sheet.stroke(Ink::Cloth, 1.0, Pen::with(|pen| _ = pen.points(&middle.points))),
        }
        sheet.stroke(Ink::Thread, 1.1, thread);
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(-5.0, 31.0, 125.0, 31.0)));
    }
}

impl JoinPulled {
    pub(super) fn words(self) -> &'static str {
        match self {
            JoinPulled::Breaks => say!("a join that is pulled, its thread broken, a gap with thread showing"),
            JoinPulled::Tight => say!("a join that is pulled, its thread tight, the cloth gathered along it"),
            JoinPulled::Gives => say!("a join that is pulled and goes along, its thread of another colour"),
            JoinPulled::GivesMatched => say!("a join that is pulled and goes along, its thread of the same colour"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        let tight = self == JoinPulled::Tight;
        let wales = Pen::with(|pen| {
            for step in 0..17 {
                let x = 4.0 + 7.0 * f64::from(step);
                // A tight thread draws the columns together at the join.
                let held = if tight { 60.0 + (x - 60.0) * 0.72 } else { x };
                pen.at(x, -5.0).bend(held, 24.0, held, 40.0).bend(held, 56.0, x, 85.0);
            }
        });
        sheet.stroke(Ink::ClothLight, 1.4, wales);
        let track = Track::level(-5.0, 125.0, 40.0);
        sheet.stroke(Ink::Cloth, 3.4, Pen::with(|pen| _ = pen.points(&track.points)));
        let mut thread = Pen::new();
        match self {
            JoinPulled::Breaks => {
                let gap = Pen::with(|pen| leaf(pen, (30.0, 40.0), (92.0, 40.0), 24.0));
                sheet.fill(Ink::Paper, gap.clone());
                sheet.stroke(Ink::Edge, 1.4, gap);
                chain(&mut thread, &Track::level(-5.0, 30.0, 40.0), 6.0, 2.4);
                chain(&mut thread, &Track::level(92.0, 128.0, 40.0), 6.0, 2.4);
                thread.at(30.0, 40.0).bend(42.0, 36.0, 46.0, 44.0).at(92.0, 40.0).bend(82.0, 44.0, 78.0, 37.0);
                for (x, half) in [(54.0, 11.0), (66.0, 11.0)] {
                    thread.line(x, 40.0 - half, x + 1.5, 40.0 + half);
                }
            }
            JoinPulled::Tight => {
                let gathers = Pen::with(|pen| {
                    for step in 0..9 {
                        let x = 12.0 + 12.0 * f64::from(step);
                        leaf(pen, (x - 1.0, 30.0), (x + 2.0, 50.0), 3.0);
                    }
                });
                sheet.fill(Ink::ClothLight, gathers);
                Row::of(4.6).sew(&mut thread, &track, 0.0, 0.0, track.length());
            }
            JoinPulled::Gives | JoinPulled::GivesMatched => chain(&mut thread, &track, 9.0, 2.6),
        }
        sheet.stroke(if self == JoinPulled::GivesMatched { Ink::Edge } else { Ink::Thread }, 1.5, thread);
    }
}

impl Shaping {
    pub(super) fn words(self) -> &'static str {
        match self {
            Shaping::Cut => say!("a sweater from the front, columns of loops running into the armhole seams, no marks"),
            Shaping::Few => say!("a sweater from the front, a mark of narrowing here and there"),
            Shaping::Regular => say!("a sweater from the front, marks of narrowing at even steps along the armholes"),
            Shaping::Decorative => say!("a sweater from the front, marks of narrowing in pairs, both sides mirrored"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        let cut = self == Shaping::Cut;
        // The slanting seam from neck to underarm on either side of the body.
        let seam = |way: f64| Track::through(&[(60.0 + way * 20.0, -4.0), (60.0 + way * 46.0, 84.0)]);
        let wales = Pen::with(|pen| {
            for step in -8..=8 {
                let off = 5.5 * f64::from(step);
                let top = ((off.abs() - 20.0) * 88.0 / 26.0 - 4.0).max(-5.0);
                // Narrowed panels end with columns along the seam; cut ones run into it.
                if cut || off.abs() < 20.0 {
                    pen.line(60.0 + off, top, 60.0 + off, 85.0);
                } else {
                    pen.line(60.0 + off, top + 18.0, 60.0 + off, 85.0);
                }
            }
        });
        sheet.stroke(Ink::ClothLight, 1.0, wales);
        let (mut seams, mut marks) = (Pen::new(), Pen::new());
        for way in [-1.0, 1.0] {
            let track = seam(way);
            seams.points(&track.points);
            let inner = way * 6.0;
            if !cut {
                let a = track.spot(0.0).beside(inner, 0.0);
                let b = track.spot(track.length()).beside(inner, 0.0);
                seams.line(a.0, a.1, b.0, b.1);
            }
            let places: &[f64] = match (self, way > 0.0) {
                (Shaping::Cut, _) => &[],
                (Shaping::Few, false) => &[22.0, 64.0],
                (Shaping::Few, true) => &[40.0],
                (Shaping::Regular, _) => &[12.0, 26.0, 40.0, 54.0, 68.0, 82.0],
                (Shaping::Decorative, _) => &[10.0, 25.0, 40.0, 55.0, 70.0, 85.0],
            };
            for place in places {
                let spot = track.spot(*place);
                let pairs: &[f64] = if self == Shaping::Decorative { &[6.0, 12.0] } else { &[8.0] };
                for side in pairs {
                    leaf(&mut marks, spot.beside(way * (side + 4.0), -4.0), spot.beside(way * side, 4.0), 3.4);
                }
            }
        }
        sheet.stroke(Ink::Edge, 1.5, seams);
        sheet.fill(Ink::Edge, marks);
    }
}
