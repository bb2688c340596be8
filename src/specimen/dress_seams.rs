//! A dress or skirt, how it is sewn: zip, hem, edges inside, a seam under a pull, thread ends.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, fringe, leaf, overlock};
use super::words::Words;
use crate::{say, to_say};

/// A zip in its seam, where a waist seam crosses it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DressZip {
    /// It has caught cloth, and the cloth beside it ripples.
    Catches,
    /// It shows a slight ripple.
    Rough,
    /// It lies flat.
    Flat,
    /// It is hidden, and seams meet across it.
    Hidden,
}

/// The hem from outside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HemLine {
    /// Not level, its edge raw.
    Uneven,
    /// Dimples and stitches show.
    Shows,
    /// Level; a row shows.
    Even,
    /// Level; nothing shows.
    Unseen,
}

/// The edges of a seam inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EdgeInside {
    /// Left as cut, fraying.
    Fraying,
    /// Wrapped by a loose thread.
    LooseWrap,
    /// Wrapped densely.
    DenseWrap,
    /// Bound in a strip of cloth.
    Bound,
}

/// A side seam that is pulled across.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SlipPull {
    /// The threads slide off each other beside it.
    Opens,
    /// Small gaps show.
    Gaps,
    /// It holds.
    Stable,
    /// It holds, finely stitched.
    StableFine,
}

/// Thread ends along a seam inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TailsInside {
    /// How many, 0 to 14.
    pub ends: u8,
}

impl DressZip {
    pub(super) fn words(self) -> &'static str {
        match self {
            DressZip::Catches => say!("a zip that has caught cloth, rippled cloth beside it, the waist seam far off across it"),
            DressZip::Rough => say!("a zip with slight ripples beside it, the waist seam a little off across it"),
            DressZip::Flat => say!("a zip that lies flat"),
            DressZip::Hidden => say!("a zip hidden in its seam, the waist seam meeting across it"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        let (ripple, off) = match self {
            DressZip::Catches => (5.4, 7.0),
            DressZip::Rough => (2.6, 3.0),
            DressZip::Flat => (0.0, 1.2),
            DressZip::Hidden => (0.0, 0.0),
        };
        // The zip lies across, its top to the right; the waist seam runs down.
        let seam = |x: f64, from: f64, to: f64| Pen::with(|pen| _ = pen.line(x, from, x, to));
        sheet.stroke(Ink::Cloth, 1.6, seam(52.0, -5.0, 40.0));
        sheet.stroke(Ink::Cloth, 1.6, seam(52.0 + off, 40.0, 85.0));
        if ripple > 0.0 {
            let ripples = Pen::with(|pen| {
                for step in 0..7 {
                    let x = 6.0 + 16.0 * f64::from(step);
                    leaf(pen, (x, 31.0), (x + 3.0, 12.0), ripple);
                    leaf(pen, (x + 8.0, 49.0), (x + 5.0, 68.0), ripple);
                }
            });
            sheet.fill(Ink::ClothLight, ripples);
        }
        let hidden = self == DressZip::Hidden;
        if !hidden {
            sheet.area(Ink::Weft, Area { x: -5.0, y: 35.0, width: 130.0, height: 10.0 });
            let teeth = Pen::with(|pen| _ = pen.line(-5.0, 40.0, 125.0, 40.0));
            sheet.dash(Ink::Metal, 4.4, 0.6, 5.2, teeth.clone());
            sheet.dash(Ink::Edge, 1.0, 0.6, 5.2, teeth);
            let rows = Pen::with(|pen| {
                for y in [31.0, 49.0] {
                    Row::of(5.0).sew(pen, &Track::level(-5.0, 125.0, y), 0.0, 0.0, 130.0);
                }
            });
            sheet.stroke(Ink::Thread, 1.4, rows);
        }
        sheet.stroke(
            Ink::Edge,
            1.5,
            Pen::with(|pen| {
                for y in if hidden { [40.0, 40.0] } else { [35.0, 45.0] } {
                    pen.line(-5.0, y, 125.0, y);
                }
            }),
        );
        if self == DressZip::Catches {
            let fold = Pen::with(|pen| _ = pen.at(70.0, 46.0).bend(78.0, 28.0, 90.0, 38.0).bend(98.0, 44.0, 96.0, 52.0).close());
            sheet.fill(Ink::ClothPale, fold.clone());
            sheet.stroke(Ink::Edge, 1.4, fold);
        }
        let slider = Pen::with(|pen| {
            if !hidden {
                pen.outline(&[(84.0, 36.0), (94.0, 34.6), (94.0, 45.4), (84.0, 44.0)]);
            }
            pen.at(90.0, 38.4).bend(104.0, 35.0, 112.0, 40.0).bend(104.0, 45.0, 90.0, 41.6).close();
        });
        sheet.fill(Ink::Metal, slider.clone());
        sheet.stroke(Ink::Edge, 1.3, slider);
    }
}

impl HemLine {
    pub(super) fn words(self) -> &'static str {
        match self {
            HemLine::Uneven => say!("a hem that is not level, its edge raw in places"),
            HemLine::Shows => say!("a level hem with dimples and stitches showing"),
            HemLine::Even => say!("a level hem with one even row of stitches"),
            HemLine::Unseen => say!("a level hem with no stitch to see, cloth turned deep inside"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let slope = if self == HemLine::Uneven { 12.0 } else { 0.0 };
        let line = |y: f64| -> Vec<(f64, f64)> {
            (0..=13)
                .map(|i| f64::from(i) / 13.0)
                .map(|on| (-5.0 + 130.0 * on, y + slope * (on - 0.5) + slope * 0.3 * (on * 9.0).sin()))
                .collect()
        };
        let edge = line(66.0);
        let body = Pen::with(|pen| _ = pen.points(&edge).to(125.0, -5.0).to(-5.0, -5.0).close());
        sheet.fill(Ink::ClothPale, body.clone());
        // Folds of the skirt, so that it reads as one.
        let folds = Pen::with(|pen| {
            for x in [22.0, 58.0, 92.0] {
                pen.at(x, -5.0).bend(x + 3.0, 30.0, x + 1.0, 62.0);
            }
        });
        sheet.stroke(Ink::ClothLight, 1.6, folds);
        sheet.stroke(Ink::Edge, 1.6, body);
        match self {
            HemLine::Uneven => {
                let track = Track::through(&edge);
                sheet.stroke(Ink::ClothLight, 1.2, Pen::with(|pen| fringe(pen, &track, -0.5, 8.0, 3.4, chance)));
                let row = Track::through(&line(54.0));
                sheet.stroke(Ink::Thread, 1.5, Pen::with(|pen| _ = Row::of(6.4).sew(pen, &row, 0.0, 0.0, row.length())));
            }
            HemLine::Shows => {
                let dimples = Pen::with(|pen| {
                    for step in 0..9 {
                        let x = 6.0 + 14.0 * f64::from(step);
                        leaf(pen, (x, 44.0), (x + 1.0, 58.0), 4.4);
                    }
                });
                sheet.fill(Ink::ClothLight, dimples);
                let pricks = Pen::with(|pen| {
                    for step in 0..9 {
                        let x = 6.5 + 14.0 * f64::from(step);
                        pen.line(x - 1.8, 51.0, x + 1.8, 51.0);
                    }
                });
                sheet.stroke(Ink::Thread, 2.2, pricks);
            }
            HemLine::Even => {
                let row = Track::level(-5.0, 125.0, 54.0);
                sheet.stroke(Ink::Thread, 1.3, Pen::with(|pen| _ = Row::of(5.0).sew(pen, &row, 0.0, 0.0, 130.0)));
            }
            HemLine::Unseen => {
                // A corner is lifted: the cloth turned up behind.
                let turned = Pen::with(|pen| _ = pen.outline(&[(96.0, 66.0), (125.0, 66.0), (125.0, 50.0)]));
                sheet.fill(Ink::Paper, turned);
                let inside = Pen::with(|pen| _ = pen.outline(&[(96.0, 66.0), (125.0, 50.0), (112.0, 42.0)]));
                sheet.fill(Ink::Weft, inside.clone());
                sheet.stroke(Ink::Edge, 1.4, inside);
            }
        }
    }
}

impl EdgeInside {
    pub(super) fn words(self) -> &'static str {
        match self {
            EdgeInside::Fraying => say!("a seam inside, its edges left as cut and fraying"),
            EdgeInside::LooseWrap => say!("a seam inside, its edge wrapped loosely, threads coming through"),
            EdgeInside::DenseWrap => say!("a seam inside, its edge wrapped densely and evenly"),
            EdgeInside::Bound => say!("a seam inside, its edge bound in a strip of cloth"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::ClothPale, FRAME);
        sheet.stroke(Ink::ClothLight, 0.6, Pen::with(|pen| _ = pen.hatch(FRAME, 4.0, 0.0)));
        let (seam, edge) = (24.0, 56.0);
        sheet.area(Ink::Weft, Area { x: -5.0, y: seam, width: 130.0, height: edge - seam });
        let track = Track::level(-5.0, 125.0, edge);
        let mut thread = Pen::with(|pen| _ = Row::of(5.0).sew(pen, &Track::level(-5.0, 125.0, seam + 5.0), 0.0, 0.0, 130.0));
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.line(-5.0, seam, 125.0, seam).line(-5.0, edge, 125.0, edge)));
        match self {
            EdgeInside::Fraying => {
                sheet.stroke(Ink::ClothLight, 1.3, Pen::with(|pen| fringe(pen, &track, -3.0, 15.0, 2.6, chance)));
            }
            EdgeInside::LooseWrap => {
                sheet.stroke(Ink::ClothLight, 1.2, Pen::with(|pen| fringe(pen, &track, -1.0, 8.0, 6.0, chance)));
                overlock(&mut thread, &track, 3.0, -10.0, 11.0);
            }
            EdgeInside::DenseWrap => overlock(&mut thread, &track, 1.4, -11.0, 4.0),
            EdgeInside::Bound => {
                let strip = Area { x: -5.0, y: edge - 11.0, width: 130.0, height: 14.0 };
                sheet.area(Ink::Tape, strip);
                sheet.stroke(
                    Ink::Edge,
                    1.4,
                    Pen::with(|pen| _ = pen.line(-5.0, strip.y, 125.0, strip.y).line(-5.0, edge + 3.0, 125.0, edge + 3.0)),
                );
                Row::of(4.4).sew(&mut thread, &Track::level(-5.0, 125.0, strip.y + 3.0), 0.0, 0.0, 130.0);
            }
        }
        sheet.stroke(Ink::Thread, 1.4, thread);
    }
}

impl SlipPull {
    pub(super) fn words(self) -> &'static str {
        match self {
            SlipPull::Opens => say!("a side seam under a gentle pull, the cloth beside it open, single threads bridging"),
            SlipPull::Gaps => say!("a side seam under a gentle pull, small gaps beside it"),
            SlipPull::Stable => say!("a side seam under a gentle pull, closed"),
            SlipPull::StableFine => say!("a side seam under a gentle pull, closed, its stitches short and fine"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        let gap = match self {
            SlipPull::Opens => 13.0,
            SlipPull::Gaps => 4.5,
            SlipPull::Stable | SlipPull::StableFine => 0.0,
        };
        // Beside the seam the lengthwise threads have slid away and the crosswise ones are left.
        let cloth = Pen::with(|pen| {
            pen.rect(-5.0, -5.0, 63.0 - gap, 90.0).rect(57.0, -5.0, 6.0, 90.0).rect(62.0 + gap, -5.0, 63.0 - gap, 90.0);
        });
        sheet.fill(Ink::ClothPale, cloth);
        let threads = Pen::with(|pen| {
            for step in 0..16 {
                let y = 2.5 + 5.0 * f64::from(step);
                pen.line(-5.0, y, 125.0, y);
            }
        });
        sheet.stroke(Ink::ClothLight, 1.3, threads);
        sheet.stroke(Ink::Cloth, 4.6, Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 85.0)));
        let track = Track::through(&[(60.0, -5.0), (60.0, 85.0)]);
        let (stitch, thread) = if self == SlipPull::StableFine { (5.2, 1.5) } else { (11.0, 2.6) };
        sheet.stroke(Ink::ThreadLight, thread, Pen::with(|pen| _ = Row::of(stitch).sew(pen, &track, 0.0, 0.0, 90.0)));
        let pull = Pen::with(|pen| {
            for (x, way) in [(18.0, -1.0), (102.0, 1.0)] {
                pen.line(x, 40.0, x + way * 12.0, 40.0).points(&[
                    (x + way * 7.0, 35.0),
                    (x + way * 12.0, 40.0),
                    (x + way * 7.0, 45.0),
                ]);
            }
        });
        sheet.stroke(Ink::Edge, 1.8, pull);
    }
}

impl TailsInside {
    pub(super) fn told(self) -> u8 {
        self.ends.min(14)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("a seam inside a dress"));
        words.count(self.told(), to_say!("{count} thread end left hanging"), to_say!("{count} thread ends left hanging"));
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        EdgeInside::DenseWrap.draw(sheet, chance);
        let ends = self.told();
        let tails = Pen::with(|pen| {
            for end in 0..ends {
                let x = 6.0 + 108.0 * (f64::from(end) + 0.5 + chance.about(0.3)) / f64::from(ends);
                let (swing, fall) = (chance.about(6.0), chance.between(12.0, 24.0));
                pen.at(x, 52.0).bend(x + swing, 52.0 + fall * 0.5, x - swing * 0.5, 52.0 + fall);
            }
        });
        sheet.stroke(Ink::Edge, 1.5, tails);
    }
}
