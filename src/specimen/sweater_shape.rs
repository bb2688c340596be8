//! A sweater, its shape: cuff, neck, how it hangs, and the edge of a cardigan that buttons.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp, fringe, overlock};
use super::words::Words;
use crate::{say, to_say};

/// A cuff after it was stretched by half, three times.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RibCuff {
    /// How much wider it stays, in per cent, 0 to 40.
    pub wider_percent: f64,
}

/// The neck after a stretch, and the inside of its back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SweaterNeck {
    /// It stays wide.
    StaysWide,
    /// It returns; the seam inside is raw.
    Raw,
    /// It returns; the seam inside is wrapped.
    Tidy,
    /// It returns; its band is doubled over the seam.
    Doubled,
}

/// A sweater hanging: side seams and sleeves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HungSweater {
    /// Seams walk far, sleeves differ.
    Twisted,
    /// They walk a little.
    Slightly,
    /// They run straight, sleeves alike.
    Straight,
    /// The same, and a pattern meets.
    Meets,
}

/// The edge of a cardigan that buttons, lying across.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CardiganBand {
    /// It gapes between the buttons.
    Gapes,
    /// It is flat, and nothing lies behind it.
    Unbacked,
    /// Tape lies behind it.
    Backed,
    /// The same, straight, with a button to spare.
    BackedSpare,
}

impl RibCuff {
    fn told(self) -> f64 {
        clamp(self.wider_percent, 0.0, 40.0)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("a ribbed cuff after a stretch"));
        if self.told() > 0.0 {
            words.number(self.told(), to_say!("{number} per cent wider than before"));
        } else {
            words.and(say!("as narrow as before"));
        }
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        let (rest, top, low) = (22.0, 34.0, 68.0);
        // What it stays wider is drawn three times as far, so that it can be seen.
        let half = rest * (1.0 + 3.0 * self.told() / 100.0);
        let wave = if self.told() > 15.0 { 2.4 } else { 0.0 };
        let sleeve = Pen::with(|pen| {
            pen.at(24.0, -5.0).bend(26.0, 20.0, 60.0 - rest - 4.0, top).to(60.0 + rest + 4.0, top).bend(94.0, 20.0, 96.0, -5.0);
        });
        sheet.fill(Ink::ClothPale, sleeve.clone());
        let cuff: Vec<(f64, f64)> = (0..=24)
            .map(|i| f64::from(i) / 24.0)
            .map(|on| (60.0 - half + 2.0 * half * on, low + wave * (on * 26.0).sin()))
            .collect();
        let band = Pen::with(|pen| {
            pen.points(&cuff).bend(60.0 + half, top + 10.0, 60.0 + rest + 2.0, top).to(60.0 - rest - 2.0, top);
            pen.bend(60.0 - half, top + 10.0, 60.0 - half, low).close();
        });
        sheet.fill(Ink::ClothLight, band.clone());
        let ribs = Pen::with(|pen| {
            for (x, y) in cuff.iter().skip(1).step_by(2) {
                let from = 60.0 + (x - 60.0) * (rest + 2.0) / half;
                pen.at(from, top + 1.0).bend(*x, top + 12.0, *x, y - 1.0);
            }
        });
        sheet.stroke(Ink::Cloth, 1.5, ribs);
        sheet.stroke(Ink::Edge, 1.4, sleeve);
        sheet.stroke(Ink::Edge, 1.4, band);
        let before = Pen::with(|pen| {
            for way in [-1.0, 1.0] {
                pen.line(60.0 + way * rest, top + 4.0, 60.0 + way * rest, 78.0);
            }
        });
        sheet.dash(Ink::Thread, 1.6, 3.0, 3.0, before);
    }
}

impl SweaterNeck {
    pub(super) fn words(self) -> &'static str {
        match self {
            SweaterNeck::StaysWide => say!("the neck of a sweater after a stretch, wide and wavy"),
            SweaterNeck::Raw => say!("the neck of a sweater after a stretch, flat, its seam inside raw"),
            SweaterNeck::Tidy => say!("the neck of a sweater after a stretch, flat, its seam inside wrapped in thread"),
            SweaterNeck::Doubled => say!("the neck of a sweater after a stretch, flat, its band doubled over the seam inside"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        let wide = self == SweaterNeck::StaysWide;
        let (wave, more) = if wide { (3.4, 9.0) } else { (0.0, 0.0) };
        sheet.area(Ink::Paper, FRAME);
        let body = Pen::with(|pen| {
            _ = pen.outline(&[(-5.0, 34.0), (30.0, 14.0), (90.0, 14.0), (125.0, 34.0), (125.0, 86.0), (-5.0, 86.0)])
        });
        sheet.fill(Ink::ClothPale, body.clone());
        sheet.stroke(Ink::Edge, 1.3, body);
        // From shoulder to shoulder: the front hangs below, the inside of the back shows above it.
        let arc = |rx: f64, ry: f64| -> Vec<(f64, f64)> {
            (0..=32)
                .map(|i| {
                    let turn = std::f64::consts::PI * f64::from(i) / 32.0;
                    let swell = wave * (turn * 9.0).sin();
                    (60.0 - (rx + swell) * turn.cos(), 14.0 + (ry + swell) * turn.sin())
                })
                .collect()
        };
        let (rx, ry) = (27.0 + more, 32.0 + more * 0.6);
        let (inner, outer) = (arc(rx, ry), arc(rx + 9.0, ry + 9.0));
        let behind = Pen::with(|pen| _ = pen.points(&inner).bend(60.0, 20.0, 60.0 - rx, 14.0).close());
        sheet.fill(Ink::Weft, behind);
        // The back of the band, and below it the seam that joins it to the back.
        let back = |deep: f64| -> Vec<(f64, f64)> {
            (0..=20)
                .map(|i| f64::from(i) / 20.0)
                .map(|on| (60.0 + (2.0 * on - 1.0) * (rx - 1.0), 14.0 + deep * 4.0 * on * (1.0 - on)))
                .collect()
        };
        let band: Vec<(f64, f64)> = back(-4.0).into_iter().chain(back(9.0).into_iter().rev()).collect();
        sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&band)));
        let seam = Track::through(&back(9.0));
        let mut thread = Pen::new();
        match self {
            SweaterNeck::Raw | SweaterNeck::StaysWide => {
                sheet.stroke(Ink::Cloth, 1.3, Pen::with(|pen| fringe(pen, &seam, 1.0, 7.0, 3.0, chance)));
            }
            SweaterNeck::Tidy => overlock(&mut thread, &seam, 6.0, 0.0, 4.6),
            SweaterNeck::Doubled => {
                let fold: Vec<(f64, f64)> = back(9.0).into_iter().chain(back(16.0).into_iter().rev()).collect();
                sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&fold)));
                Row::of(4.4).sew(&mut thread, &Track::through(&back(15.0)), 0.0, 2.0, 52.0);
            }
        }
        let ribs = Pen::with(|pen| {
            for place in (1..32).step_by(2) {
                pen.line(inner[place].0, inner[place].1, outer[place].0, outer[place].1);
            }
        });
        let front: Vec<(f64, f64)> = inner.iter().copied().chain(outer.iter().rev().copied()).collect();
        sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&front)));
        sheet.stroke(Ink::Cloth, 1.4, ribs);
        sheet.stroke(
            Ink::Edge,
            1.3,
            Pen::with(|pen| _ = pen.points(&inner).points(&outer).points(&back(-4.0)).points(&back(9.0))),
        );
        sheet.stroke(Ink::Thread, 1.4, thread);
    }
}

impl HungSweater {
    pub(super) fn words(self) -> &'static str {
        match self {
            HungSweater::Twisted => say!("a sweater hanging, its side seams walking far to one side, sleeves of two lengths"),
            HungSweater::Slightly => say!("a sweater hanging, its side seams a little off"),
            HungSweater::Straight => say!("a sweater hanging, its side seams straight, sleeves alike"),
            HungSweater::Meets => say!("a striped sweater hanging, its seams straight, stripes meeting at seams and sleeves"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        let (walk, longer) = match self {
            HungSweater::Twisted => (13.0, 7.0),
            HungSweater::Slightly => (5.0, 2.0),
            HungSweater::Straight | HungSweater::Meets => (0.0, 0.0),
        };
        let sleeve = |way: f64, foot: f64| {
            [
                (60.0 + way * 21.0, 9.0),
                (60.0 + way * 31.0, 14.0),
                (60.0 + way * 44.0, foot),
                (60.0 + way * 34.0, foot),
                (60.0 + way * 23.0, 30.0),
            ]
        };
        let body = [(50.0, 5.0), (70.0, 5.0), (81.0, 9.0), (83.0, 74.0), (37.0, 74.0), (39.0, 9.0)];
        let outline = Pen::with(|pen| {
            pen.outline(&sleeve(-1.0, 66.0)).outline(&sleeve(1.0, 66.0 + longer)).outline(&body);
        });
        sheet.fill(Ink::ClothPale, outline.clone());
        if self == HungSweater::Meets {
            let stripes = Pen::with(|pen| {
                for step in 0..4 {
                    let y = 26.0 + 10.0 * f64::from(step);
                    // As wide as the body, and the sleeves where they hang beside it.
                    pen.line(39.8, y, 80.2, y);
                    for way in [-1.0, 1.0] {
                        let on = (y - 14.0) / 52.0;
                        let (outer, inner) = (31.0 + 13.0 * on, 23.0 + 11.0 * ((y - 30.0) / 36.0).max(0.0));
                        pen.line(60.0 + way * (outer - 2.0), y, 60.0 + way * (inner + 1.5), y);
                    }
                }
            });
            sheet.stroke(Ink::Cloth, 3.4, stripes);
        }
        sheet.stroke(Ink::Edge, 1.3, outline);
        let ribs = Pen::with(|pen| {
            for step in 0..15 {
                let x = 39.0 + 3.0 * f64::from(step);
                pen.line(x, 67.0, x, 73.0);
            }
        });
        sheet.stroke(Ink::ClothLight, 1.2, ribs);
        sheet.stroke(Ink::Edge, 2.2, Pen::with(|pen| _ = pen.at(50.0, 5.0).bend(60.0, 14.0, 70.0, 5.0)));
        if walk > 0.0 {
            let seam = Pen::with(|pen| _ = pen.at(82.0, 26.0).bend(81.6, 44.0, 82.4 - walk, 74.0));
            sheet.stroke(Ink::Thread, 2.6, seam);
        } else {
            sheet.stroke(Ink::Thread, 2.6, Pen::with(|pen| _ = pen.line(81.8, 26.0, 82.8, 74.0).line(38.2, 26.0, 37.2, 74.0)));
        }
        sheet.stroke(
            Ink::Edge,
            1.6,
            Pen::with(|pen| _ = pen.line(44.0, 4.0, 76.0, 4.0).at(60.0, 4.0).bend(60.0, -4.0, 66.0, -5.0)),
        );
    }
}

impl CardiganBand {
    pub(super) fn words(self) -> &'static str {
        match self {
            CardiganBand::Gapes => say!("the button band of a cardigan, gaping between its buttons"),
            CardiganBand::Unbacked => say!("the button band of a cardigan, flat, nothing behind it"),
            CardiganBand::Backed => say!("the button band of a cardigan, tape behind it"),
            CardiganBand::BackedSpare => {
                say!("the button band of a cardigan, straight, tape behind it, a spare button beside it")
            }
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        let gapes = self == CardiganBand::Gapes;
        sheet.area(Ink::ClothPale, FRAME);
        let edge: Vec<(f64, f64)> = (0..=26)
            .map(|i| -5.0 + 5.0 * f64::from(i))
            .map(|x| {
                let sag = if gapes { 8.0 * ((x - 20.0) / 40.0 * std::f64::consts::PI).sin().powi(2) } else { 0.0 };
                (x, 26.0 + sag)
            })
            .collect();
        // Above the band lies what is under it: tape where it is backed, the other front, or nothing.
        let backed = matches!(self, CardiganBand::Backed | CardiganBand::BackedSpare);
        sheet.area(Ink::Paper, Area { x: -5.0, y: -5.0, width: 130.0, height: 31.0 });
        if backed {
            let tape = Area { x: -5.0, y: 14.0, width: 130.0, height: 12.0 };
            sheet.area(Ink::Tape, tape);
            let row = Pen::with(|pen| _ = Row::of(4.6).sew(pen, &Track::level(-5.0, 125.0, 16.5), 0.0, 0.0, 130.0));
            sheet.stroke(Ink::Thread, 1.3, row);
            sheet.stroke(Ink::Edge, 1.1, Pen::with(|pen| _ = pen.line(-5.0, 14.0, 125.0, 14.0)));
        }
        if gapes {
            sheet.area(Ink::Weft, Area { x: -5.0, y: 26.0, width: 130.0, height: 10.0 });
        }
        let band = Pen::with(|pen| _ = pen.points(&edge).to(125.0, 56.0).to(-5.0, 56.0).close());
        sheet.fill(Ink::ClothLight, band.clone());
        let ribs = Pen::with(|pen| {
            for (x, y) in &edge {
                pen.line(*x, y + 1.0, *x, 55.0);
            }
        });
        sheet.stroke(Ink::Cloth, 1.3, ribs);
        sheet.stroke(Ink::Edge, 1.5, band);
        let (mut holes, mut discs, mut eyes) = (Pen::new(), Pen::new(), Pen::new());
        let spare = (self == CardiganBand::BackedSpare).then_some((104.0, 70.0));
        for (x, y) in [(20.0, 41.0), (60.0, 41.0), (100.0, 41.0)].into_iter().chain(spare) {
            if y < 50.0 {
                // A slack hole pulls open beside its button.
                holes.oval(x + if gapes { 4.0 } else { 0.0 }, y, if gapes { 13.0 } else { 10.0 }, if gapes { 4.0 } else { 1.6 });
            }
            discs.circle(x, y, 7.0);
            eyes.circle(x - 2.0, y, 0.9).circle(x + 2.0, y, 0.9);
        }
        sheet.fill(Ink::Edge, holes);
        sheet.fill(Ink::Metal, discs.clone());
        sheet.stroke(Ink::Edge, 1.2, discs);
        sheet.fill(Ink::Edge, eyes);
    }
}
