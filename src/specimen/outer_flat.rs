//! A coat or padded jacket laid flat: where it is measured, whether its halves match, and what hangs on it.

use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track};
use super::words::Words;
use crate::{say, to_say};

/// A coat or padded jacket laid flat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OuterFlat {
    /// Which.
    pub cut: OuterCut,
    /// Where the tape lies; none where nothing is measured.
    pub point: Option<OuterPoint>,
}

/// Which piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OuterCut {
    /// A buttoned coat without filling.
    Coat,
    /// With hood and zip, padded evenly.
    Padded,
    /// The same in plump chambers, as down is.
    Down,
}

/// A point of measure of a coat or jacket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OuterPoint {
    /// Across the back, armhole seam to armhole seam.
    Shoulders,
    /// Across, 2.5 cm below the armholes.
    Chest,
    /// Along the bottom.
    Hem,
    /// Along the fold of the sleeve, from its seam to the end.
    Sleeve,
    /// Along the end of the sleeve.
    Cuff,
    /// Down the middle of the back, from the collar or hood seam.
    Length,
}

/// The two halves of a coat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OuterPair {
    /// Plainly unlike.
    Off,
    /// A little unlike.
    Slightly,
    /// Alike.
    Level,
    /// Alike, edges flat and stitched along.
    Crisp,
}

/// Zips, snaps, toggles and pockets of a jacket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Hardware {
    /// How many, 0 to 18.
    pub count: u8,
}

/// In cm: across from the middle, and down from where neck and shoulder meet. A piece of middling size. Judgement.
const NECK: (f64, f64) = (8.5, 0.0);
const SHOULDER: (f64, f64) = (24.0, 5.0);
const CUFF: [(f64, f64); 2] = [(61.0, 50.0), (53.0, 57.0)];
const UNDERARM: (f64, f64) = (29.0, 28.0);
const HEM: (f64, f64) = (29.0, 74.0);
const SCALE: f64 = 0.84;

fn place((x, y): (f64, f64)) -> (f64, f64) {
    (60.0 + x * SCALE, 13.0 + y * SCALE)
}

fn line(pen: &mut Pen, points: &[(f64, f64)]) {
    pen.points(&points.iter().map(|&cm| place(cm)).collect::<Vec<_>>());
}

fn bend(pen: &mut Pen, from: (f64, f64), over: (f64, f64), to: (f64, f64)) {
    let [a, b, c] = [from, over, to].map(place);
    pen.at(a.0, a.1).bend(b.0, b.1, c.0, c.1);
}

/// The body, its sleeves and their seams, alike for all.
fn body(sheet: &mut Sheet) {
    sheet.area(Ink::Paper, FRAME);
    let half = [NECK, SHOULDER, CUFF[0], CUFF[1], UNDERARM, HEM];
    let mirrored = half.iter().rev().map(|&(x, y)| (-x, y));
    let all: Vec<(f64, f64)> = half.iter().copied().chain(mirrored).map(place).collect();
    let outline = Pen::with(|pen| _ = pen.outline(&all));
    sheet.fill(Ink::ClothPale, outline.clone());
    sheet.stroke(Ink::Edge, 1.3, outline);
    let seams = Pen::with(|pen| {
        for side in [-1.0, 1.0] {
            bend(pen, (side * SHOULDER.0, SHOULDER.1), (side * 21.0, 17.0), (side * UNDERARM.0, UNDERARM.1));
        }
    });
    sheet.stroke(Ink::Cloth, 1.0, seams);
}

/// A coat from the front; its right half is off by so many cm.
fn coat(sheet: &mut Sheet, off: f64) {
    body(sheet);
    let collar = Pen::with(|pen| {
        for side in [-1.0, 1.0] {
            let long = if side > 0.0 { off } else { 0.0 };
            pen.outline(
                &[(8.5, -1.0), (14.0, 8.0 + long), (9.0, 13.0 + long), (0.0, 19.0), (0.0, 3.0)]
                    .map(|(x, y)| place((side * x, y))),
            );
        }
    });
    sheet.fill(Ink::ClothLight, collar.clone());
    sheet.stroke(Ink::Edge, 1.2, collar);
    if off > 0.0 {
        let longer = Pen::with(|pen| _ = pen.outline(&[(3.0, 74.0), (27.0, 74.0), (5.0, 74.0 + off * 0.7)].map(place)));
        sheet.fill(Ink::ClothLight, longer.clone());
        sheet.stroke(Ink::Edge, 1.2, longer);
    }
    let lines = Pen::with(|pen| {
        line(pen, &[(4.0, 18.0), (4.0, 74.0)]);
        for side in [-1.0, 1.0] {
            let y = 48.0 + if side > 0.0 { off } else { 0.0 };
            line(pen, &[(side * 10.0, y), (side * 24.0, y), (side * 24.0, y + 5.0), (side * 10.0, y + 5.0), (side * 10.0, y)]);
        }
    });
    sheet.stroke(Ink::Edge, 1.1, lines);
    let buttons = Pen::with(|pen| {
        for y in [24.0, 38.0, 52.0] {
            let (x, y) = place((0.0, y));
            pen.circle(x, y, 1.6);
        }
    });
    sheet.fill(Ink::Edge, buttons);
}

/// A jacket with hood and zip, quilted at that distance in cm, 0 for none.
fn padded(sheet: &mut Sheet, rows: f64, plump: bool) {
    body(sheet);
    let hood = Pen::with(|pen| {
        let [a, b, c, d, e, f] = [(-9.5, 0.0), (-13.0, -13.5), (0.0, -13.5), (13.0, -13.5), (9.5, 0.0), (0.0, 6.0)].map(place);
        pen.at(a.0, a.1).bend(b.0, b.1, c.0, c.1).bend(d.0, d.1, e.0, e.1).bend(f.0, f.1, a.0, a.1).close();
    });
    sheet.fill(Ink::ClothLight, hood.clone());
    sheet.stroke(Ink::Edge, 1.2, hood);
    if rows > 0.0 {
        let quilting = Pen::with(|pen| {
            let mut y = 6.0 + rows;
            let sag = if plump { 3.4 } else { 0.0 };
            while y < HEM.1 - 2.0 {
                let wide = if y < UNDERARM.1 { 22.0 } else { UNDERARM.0 };
                for side in [-1.0, 1.0] {
                    bend(pen, (side, y), (side * wide * 0.5, y + sag), (side * wide, y));
                }
                y += rows;
            }
            // The same across both sleeves.
            for on in [0.3, 0.55, 0.8] {
                for side in [-1.0, 1.0] {
                    let outer = (SHOULDER.0 + (CUFF[0].0 - SHOULDER.0) * on, SHOULDER.1 + (CUFF[0].1 - SHOULDER.1) * on);
                    let inner = (UNDERARM.0 + (CUFF[1].0 - UNDERARM.0) * on, UNDERARM.1 + (CUFF[1].1 - UNDERARM.1) * on);
                    bend(pen, (side * outer.0, outer.1), (side * (outer.0 + sag), inner.1), (side * inner.0, inner.1));
                }
            }
        });
        sheet.stroke(if plump { Ink::Cloth } else { Ink::ClothLight }, if plump { 1.6 } else { 1.0 }, quilting);
    }
    let zip = Pen::with(|pen| line(pen, &[(0.0, 4.0), (0.0, 74.0)]));
    sheet.stroke(Ink::Edge, 2.4, zip.clone());
    sheet.dash(Ink::Metal, 1.4, 1.2, 2.0, zip);
    let pockets = Pen::with(|pen| {
        for side in [-1.0, 1.0] {
            line(pen, &[(side * 13.0, 60.0), (side * 22.0, 45.0)]);
        }
    });
    sheet.stroke(Ink::Edge, 1.6, pockets);
}

impl OuterFlat {
    pub(super) fn words(self) -> &'static str {
        match (self.point, self.cut) {
            (None, OuterCut::Coat) => say!("a buttoned coat laid flat, without filling"),
            (None, OuterCut::Padded) => say!("a hooded jacket laid flat, padded in even rows"),
            (None, OuterCut::Down) => say!("a hooded jacket laid flat, plump in many chambers"),
            (Some(OuterPoint::Shoulders), _) => say!("a jacket from the back, a line across the shoulders from seam to seam"),
            (Some(OuterPoint::Chest), _) => say!("a jacket from the front, a line straight across just below the armholes"),
            (Some(OuterPoint::Hem), _) => say!("a jacket from the front, a line along the bottom"),
            (Some(OuterPoint::Sleeve), _) => say!("a jacket from the front, a line along the fold of one sleeve"),
            (Some(OuterPoint::Cuff), _) => say!("a jacket from the front, a line along the end of one sleeve"),
            (Some(OuterPoint::Length), _) => say!("a jacket from the back, a line down its middle to the hem"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        let behind = matches!(self.point, Some(OuterPoint::Shoulders | OuterPoint::Length));
        match self.cut {
            _ if behind => body(sheet),
            OuterCut::Coat => coat(sheet, 0.0),
            OuterCut::Padded => padded(sheet, 13.0, false),
            OuterCut::Down => padded(sheet, 7.0, true),
        }
        let across = |(x, y): (f64, f64)| [(-x, y), (x, y)];
        let ends = match self.point {
            None => return,
            Some(OuterPoint::Shoulders) => across(SHOULDER),
            Some(OuterPoint::Chest) => across((UNDERARM.0, UNDERARM.1 + 2.5)),
            Some(OuterPoint::Hem) => across(HEM),
            Some(OuterPoint::Sleeve) => [SHOULDER, CUFF[0]],
            Some(OuterPoint::Cuff) => CUFF,
            Some(OuterPoint::Length) => [(0.0, 1.0), (0.0, HEM.1)],
        };
        let track = Track::through(&ends.map(place));
        let tape = Pen::with(|pen| {
            pen.points(&track.points);
            for along in [0.0, track.length()] {
                let (a, b) = (track.spot(along).beside(-4.0, 0.0), track.spot(along).beside(4.0, 0.0));
                pen.line(a.0, a.1, b.0, b.1);
            }
        });
        sheet.stroke(Ink::Paper, 4.4, tape.clone());
        sheet.stroke(Ink::Thread, 2.2, tape);
    }
}

impl OuterPair {
    pub(super) fn words(self) -> &'static str {
        match self {
            OuterPair::Off => say!("a coat whose halves differ: one collar point, pocket and front edge lower"),
            OuterPair::Slightly => say!("a coat whose halves differ a little"),
            OuterPair::Level => say!("a coat whose halves are alike"),
            OuterPair::Crisp => say!("a coat whose halves are alike, its edges flat and stitched along"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        coat(
            sheet,
            match self {
                OuterPair::Off => 6.0,
                OuterPair::Slightly => 2.5,
                OuterPair::Level | OuterPair::Crisp => 0.0,
            },
        );
        if self == OuterPair::Crisp {
            let rows = Pen::with(|pen| {
                let row = Row::of(4.0);
                for ends in [[(2.0, 20.0), (2.0, 74.0)], [(-27.0, 72.0), (27.0, 72.0)]] {
                    let track = Track::through(&ends.map(place));
                    row.sew(pen, &track, 0.0, 0.0, track.length());
                }
                for side in [-1.0, 1.0] {
                    let collar = [(8.0, 2.0), (12.4, 8.0), (8.4, 11.6), (2.0, 16.0)].map(|(x, y)| place((side * x, y)));
                    let track = Track::through(&collar);
                    row.sew(pen, &track, 0.0, 0.0, track.length());
                }
            });
            sheet.stroke(Ink::Thread, 1.1, rows);
        }
    }
}

/// Where things hang: main zip's sliders, hood, cuffs, hem, pockets. In cm.
const SPOTS: [(f64, f64); 18] = [
    (0.0, 8.0),
    (-14.0, 58.0),
    (14.0, 58.0),
    (-53.0, 51.0),
    (53.0, 51.0),
    (0.0, 70.0),
    (-12.0, 22.0),
    (12.0, 22.0),
    (-9.0, -3.0),
    (9.0, -3.0),
    (-26.0, 71.0),
    (26.0, 71.0),
    (0.0, 22.0),
    (0.0, 36.0),
    (0.0, 50.0),
    (-20.0, 46.0),
    (20.0, 46.0),
    (0.0, -11.0),
];

impl Hardware {
    fn told(self) -> u8 {
        self.count.min(18)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("a hooded jacket laid flat"));
        words.count(
            self.told(),
            to_say!("{count} zip, snap, toggle or pocket marked"),
            to_say!("{count} zips, snaps, toggles and pockets marked"),
        );
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        padded(sheet, 0.0, false);
        let spots = Pen::with(|pen| {
            for &cm in &SPOTS[..usize::from(self.told())] {
                let (x, y) = place(cm);
                pen.circle(x, y, 3.0);
            }
        });
        sheet.fill(Ink::Metal, spots.clone());
        sheet.stroke(Ink::Edge, 1.2, spots);
    }
}
