//! A shirt, a T-shirt or a sweater laid flat, with one point of measure on it or none, and what is special about a shirt.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track};
use super::words::Words;
use crate::{say, to_say};

/// A top laid flat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TopFlat {
    /// Which.
    pub cut: TopCut,
    /// Where the tape lies; none where nothing is measured.
    pub point: Option<TopPoint>,
}

/// Which top.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TopCut {
    /// With collar, buttons and long sleeves.
    Shirt,
    /// With a ribbed neck and short sleeves.
    Tee,
    /// With ribs at neck, hem and cuffs, and long sleeves.
    Sweater,
    /// The same, open in front.
    Cardigan,
}

/// A point of measure of a top.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TopPoint {
    /// A shirt: along the band of the opened collar. A T-shirt: across the neck, seam to seam.
    Neck,
    /// Across the back, shoulder seam to shoulder seam.
    Shoulders,
    /// Across, 2.5 cm below the armholes.
    Chest,
    /// Across at the narrowest.
    Waist,
    /// Along the bottom.
    Hem,
    /// Along the fold of the sleeve, from its seam to the edge.
    Sleeve,
    /// Along the edge of the cuff or sleeve.
    Cuff,
    /// A shirt: from the collar seam down the middle of the back. A T-shirt: from the top of the shoulder down.
    Length,
}

/// The back of a shirt with special details on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ShirtDetails {
    /// How many, 0 to 4.
    pub count: u8,
}

/// In cm: across from the middle, and down from the top of the shoulder beside the neck.
struct Shape {
    scale: f64,
    shoulder: (f64, f64),
    cuff: [(f64, f64); 2],
    underarm: (f64, f64),
    waist: (f64, f64),
    hem: (f64, f64),
}

const NECK: (f64, f64) = (8.5, 0.0);

impl TopCut {
    const fn is_knit(self) -> bool {
        matches!(self, TopCut::Sweater | TopCut::Cardigan)
    }

    /// A piece of middling size. Judgement: it only has to look like one.
    const fn shape(self) -> Shape {
        match self {
            TopCut::Shirt => Shape {
                scale: 0.93,
                shoulder: (23.0, 4.5),
                cuff: [(61.0, 53.5), (52.0, 61.0)],
                underarm: (27.5, 26.0),
                waist: (25.5, 46.0),
                hem: (27.0, 75.0),
            },
            TopCut::Tee => Shape {
                scale: 0.98,
                shoulder: (23.0, 4.5),
                cuff: [(40.0, 19.0), (29.0, 31.0)],
                underarm: (26.0, 26.0),
                waist: (26.0, 46.0),
                hem: (26.0, 71.0),
            },
            TopCut::Sweater | TopCut::Cardigan => Shape {
                scale: 0.98,
                shoulder: (22.0, 4.5),
                cuff: [(60.0, 50.0), (52.0, 56.0)],
                underarm: (26.0, 26.0),
                waist: (26.0, 46.0),
                hem: (24.0, 70.0),
            },
        }
    }
}

impl Shape {
    fn place(&self, (x, y): (f64, f64)) -> (f64, f64) {
        (60.0 + x * self.scale, 6.0 + y * self.scale)
    }

    fn line(&self, pen: &mut Pen, points: &[(f64, f64)]) {
        pen.points(&points.iter().map(|&cm| self.place(cm)).collect::<Vec<_>>());
    }

    /// The outline, without what closes it at the neck.
    fn outline(&self, pen: &mut Pen) {
        let half = [NECK, self.shoulder, self.cuff[0], self.cuff[1], self.underarm, self.waist, self.hem];
        let mirrored = half.iter().rev().map(|&(x, y)| (-x, y));
        let all: Vec<(f64, f64)> = half.iter().copied().chain(mirrored).map(|cm| self.place(cm)).collect();
        pen.outline(&all);
    }
}

/// The outline filled, with the seams that make a shirt or T-shirt of it.
fn piece(sheet: &mut Sheet, cut: TopCut, back: bool) -> Shape {
    let shape = cut.shape();
    sheet.area(Ink::Paper, FRAME);
    let outline = Pen::with(|pen| shape.outline(pen));
    sheet.fill(Ink::ClothPale, outline.clone());
    sheet.stroke(Ink::Edge, 1.3, outline);
    let at = |x: f64, y: f64| shape.place((x, y));
    let seams = Pen::with(|pen| {
        for side in [-1.0, 1.0] {
            let ((sx, sy), (ux, uy)) = (shape.shoulder, shape.underarm);
            let (a, b, c) = (at(side * sx, sy), at(side * (sx - 3.0), 16.0), at(side * ux, uy));
            pen.at(a.0, a.1).bend(b.0, b.1, c.0, c.1);
            let deep = if cut == TopCut::Tee { 2.0 } else { 5.5 };
            let along = |(x, y): (f64, f64)| (side * (x - deep * 0.61), y - deep * 0.79);
            shape.line(pen, &[along(shape.cuff[0]), along(shape.cuff[1])]);
        }
        if cut.is_knit() {
            shape.line(pen, &[(-24.4, 64.0), (24.4, 64.0)]);
            for step in -8..=8 {
                let x = 2.8 * f64::from(step);
                shape.line(pen, &[(x, 64.6), (x, 69.4)]);
            }
        }
        if cut == TopCut::Cardigan {
            shape.line(pen, &[(-2.4, 17.0), (-2.4, 70.0)]);
            shape.line(pen, &[(2.4, 17.0), (2.4, 70.0)]);
        }
        if cut == TopCut::Tee {
            shape.line(pen, &[(-26.0, 69.0), (26.0, 69.0)]);
        } else if back {
            shape.line(pen, &[(-22.2, 10.0), (22.2, 10.0)]);
        } else if cut == TopCut::Shirt {
            shape.line(pen, &[(-1.8, 8.0), (-1.8, 75.0)]);
            shape.line(pen, &[(1.8, 8.0), (1.8, 75.0)]);
        }
    });
    sheet.stroke(Ink::Cloth, 1.0, seams);
    let neck = Pen::with(|pen| {
        let (a, b) = (at(-8.5, 0.0), at(8.5, 0.0));
        if cut == TopCut::Cardigan {
            pen.at(a.0, a.1).bend(60.0, a.1 + 5.0, b.0, b.1).to(60.0, at(0.0, 18.0).1).close();
        } else if cut != TopCut::Shirt {
            let deep = at(0.0, if cut == TopCut::Tee { 19.0 } else { 15.0 }).1;
            pen.at(a.0, a.1).bend(60.0, deep, b.0, b.1).bend(60.0, a.1 + 5.0, a.0, a.1).close();
        } else if back {
            pen.at(a.0, a.1).bend(60.0, a.1 - 5.0, b.0, b.1).bend(60.0, a.1 + 9.0, a.0, a.1).close();
        } else {
            for side in [-1.0, 1.0] {
                pen.outline(&[at(side * 8.5, -1.0), at(side * 10.5, 4.0), at(side * 6.0, 12.0), at(0.0, 7.0), at(0.0, 3.0)]);
            }
        }
    });
    sheet.fill(if cut == TopCut::Shirt { Ink::ClothLight } else { Ink::Paper }, neck.clone());
    sheet.stroke(Ink::Edge, if cut == TopCut::Shirt { 1.2 } else { 2.4 }, neck);
    shape
}

/// The line of measure with a tick at either end.
fn dimension(sheet: &mut Sheet, points: &[(f64, f64)]) {
    let track = Track::through(points);
    let line = Pen::with(|pen| {
        pen.points(points);
        for along in [0.0, track.length()] {
            let (a, b) = (track.spot(along).beside(-4.0, 0.0), track.spot(along).beside(4.0, 0.0));
            pen.line(a.0, a.1, b.0, b.1);
        }
    });
    sheet.stroke(Ink::Paper, 4.4, line.clone());
    sheet.stroke(Ink::Thread, 2.2, line);
}

impl TopFlat {
    pub(super) fn words(&self) -> String {
        let shirt = self.cut == TopCut::Shirt;
        let mut words = Words::new();
        words.and(match (self.point, shirt) {
            (Some(TopPoint::Neck), true) => say!("the collar of a shirt, opened and laid flat"),
            (Some(TopPoint::Shoulders | TopPoint::Length), true) => say!("a shirt laid flat, from the back"),
            (_, true) => say!("a shirt laid flat, from the front"),
            (_, false) => match self.cut {
                TopCut::Sweater => say!("a sweater laid flat, from the front"),
                TopCut::Cardigan => say!("a cardigan laid flat, from the front"),
                _ => say!("a T-shirt laid flat, from the front"),
            },
        });
        if let Some(point) = self.point {
            words.and(match (point, shirt) {
                (TopPoint::Neck, true) => {
                    say!("a line along its band from the middle of the button to the far end of the buttonhole")
                }
                (TopPoint::Neck, false) => say!("a line across the neck from seam to seam"),
                (TopPoint::Shoulders, _) => say!("a line from shoulder seam to shoulder seam"),
                (TopPoint::Chest, _) => say!("a line straight across, just below the armholes"),
                (TopPoint::Waist, _) => say!("a line straight across at the narrowest"),
                (TopPoint::Hem, _) => say!("a line along the bottom"),
                (TopPoint::Sleeve, _) => say!("a line along the fold of one sleeve from its seam to the edge"),
                (TopPoint::Cuff, true) => say!("a line along the edge of one cuff"),
                (TopPoint::Cuff, false) => say!("a line along the edge of one sleeve"),
                (TopPoint::Length, true) => say!("a line from the collar seam down the middle of the back to the hem"),
                (TopPoint::Length, false) => say!("a line from the top of the shoulder straight down to the hem"),
            });
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let shirt = self.cut == TopCut::Shirt;
        let Some(point) = self.point else {
            piece(sheet, self.cut, false);
            return;
        };
        if shirt && point == TopPoint::Neck {
            return opened_collar(sheet);
        }
        let shape = piece(sheet, self.cut, shirt && matches!(point, TopPoint::Shoulders | TopPoint::Length));
        let across = |(x, y): (f64, f64)| [shape.place((-x, y)), shape.place((x, y))];
        let line = match point {
            TopPoint::Neck => across((NECK.0 + 0.6, NECK.1)),
            TopPoint::Shoulders => across(shape.shoulder),
            TopPoint::Chest => across((shape.underarm.0, shape.underarm.1 + 2.5)),
            TopPoint::Waist => across(shape.waist),
            TopPoint::Hem => across(shape.hem),
            TopPoint::Sleeve => [shape.place(shape.shoulder), shape.place(shape.cuff[0])],
            TopPoint::Cuff => shape.cuff.map(|cm| shape.place(cm)),
            TopPoint::Length if shirt => [shape.place((0.0, 2.0)), shape.place((0.0, shape.hem.1))],
            TopPoint::Length => [shape.place(NECK), shape.place((NECK.0, shape.hem.1))],
        };
        dimension(sheet, &line);
    }
}

/// A collar on its band, opened and laid flat, with the line along which the neck is measured.
fn opened_collar(sheet: &mut Sheet) {
    sheet.area(Ink::Paper, FRAME);
    let collar =
        Pen::with(|pen| _ = pen.at(14.0, 46.0).bend(60.0, 36.0, 106.0, 46.0).to(114.0, 22.0).bend(60.0, 8.0, 6.0, 22.0).close());
    sheet.fill(Ink::ClothPale, collar.clone());
    sheet.stroke(Ink::Edge, 1.3, collar);
    let band = Pen::with(|pen| {
        pen.at(8.0, 48.0).bend(60.0, 35.0, 112.0, 48.0).bend(118.0, 52.0, 113.0, 62.0).bend(60.0, 50.0, 7.0, 62.0);
        pen.bend(2.0, 52.0, 8.0, 48.0).close();
    });
    sheet.fill(Ink::ClothLight, band.clone());
    sheet.stroke(Ink::Edge, 1.3, band);
    let button = Pen::with(|pen| _ = pen.circle(12.0, 54.0, 3.6));
    sheet.fill(Ink::Weft, button.clone());
    sheet.stroke(Ink::Edge, 1.0, button);
    sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.line(100.0, 52.2, 109.0, 54.0)));
    let along: Vec<(f64, f64)> = (0..=12)
        .map(|i| {
            let on = f64::from(i) / 12.0;
            (12.0 + 97.0 * on, 54.0 - 25.0 * on * (1.0 - on))
        })
        .collect();
    dimension(sheet, &along);
}

impl ShirtDetails {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("the back of a shirt"));
        match self.count.min(4) {
            0 => words.and(say!("no special details")),
            count => words.count(count, to_say!("{count} special detail"), to_say!("{count} special details")),
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let count = self.count.min(4);
        let shape = piece(sheet, TopCut::Shirt, true);
        let mut seam = Pen::new();
        if count > 0 {
            // A yoke in two halves.
            let (a, b) = (shape.place((0.0, 3.5)), shape.place((0.0, 10.0)));
            let track = Track::through(&[a, b]);
            Row::of(3.2).sew(&mut seam, &track, -1.0, 0.0, track.length());
            sheet.stroke(Ink::Edge, 1.6, Pen::with(|pen| _ = pen.line(a.0, a.1, b.0, b.1)));
        }
        let mut buttons = Pen::new();
        if count > 1 {
            // A button in the slit above each cuff.
            for side in [-1.0, 1.0] {
                let (x, y) = shape.place((side * 50.0, 49.0));
                buttons.circle(x, y, 3.0);
            }
        }
        if count > 2 {
            // Gussets where side seam and tail meet.
            let gussets = Pen::with(|pen| {
                for side in [-1.0, 1.0] {
                    pen.outline(&[(26.6, 67.0), (31.0, 75.0), (22.6, 75.0)].map(|(x, y)| shape.place((side * x, y))));
                }
            });
            sheet.fill(Ink::Tape, gussets.clone());
            sheet.stroke(Ink::Edge, 1.0, gussets);
        }
        if count > 3 {
            let (x, y) = shape.place((0.0, 14.5));
            sheet.stroke(
                Ink::Edge,
                2.2,
                Pen::with(|pen| _ = pen.points(&[(x - 2.5, y - 4.0), (x - 2.5, y), (x + 2.5, y), (x + 2.5, y - 4.0)])),
            );
        }
        sheet.fill(Ink::Metal, buttons.clone());
        sheet.stroke(Ink::Edge, 1.0, buttons);
        sheet.stroke(Ink::Thread, 1.2, seam);
    }
}
