//! What closes and what tells: buttonhole, fly, label.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, Pen, Row, Track, clamp, fringe, overlock};
use super::stitching::ridge;
use super::words::Words;
use crate::{say, to_say};

/// The waist buttonhole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Buttonhole {
    /// Stitches per cm along the edge, 4 to 24.
    pub stitches_per_cm: f64,
    /// Loose yarns in the cut, 0 (clean) to 1 (ragged).
    pub ragged: f64,
    /// Whether it has a round eye.
    pub keyhole: bool,
    /// Whether a bar closes its tail.
    pub bar: bool,
}

/// The fly.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fly {
    /// A zip that catches its tape or cloth.
    ZipCatches,
    /// A light zip with fine teeth.
    ZipLight,
    /// A zip that runs well.
    ZipSound,
    /// A heavy zip with a locking slider, its tape sewn twice.
    ZipHeavy,
    /// Buttons.
    Buttons,
}

/// A sewn-in label; its lines are neutral strokes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Label {
    /// Lines of print, 0 to 6; none means the label is missing.
    pub lines: u8,
    /// Whether it carries care symbols.
    pub symbols: bool,
    /// Whether every symbol is crossed out: all care forbidden.
    pub forbids: bool,
    /// Whether it is woven and sewn on all sides rather than printed and caught at one edge.
    pub woven: bool,
}

impl Buttonhole {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        let ragged = clamp(self.ragged, 0.0, 1.0);
        words.and(if self.keyhole { say!("a buttonhole with a round eye") } else { say!("a straight buttonhole") });
        words.and(if ragged > 0.5 {
            say!("ragged")
        } else if self.stitches_per_cm < 11.0 {
            say!("thinly stitched")
        } else {
            say!("densely stitched")
        });
        words.and_if(ragged <= 0.15, say!("cleanly cut"));
        words.and_if(self.bar, say!("a bar across its tail"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        ridge(sheet, &[(-5.0, 9.0), (125.0, 9.0)]);
        // The frame shows some 26 mm; the hole is 17 mm long.
        let pitch = 46.0 / clamp(self.stitches_per_cm, 4.0, 24.0);
        let ragged = clamp(self.ragged, 0.0, 1.0);
        let mut rim = vec![(22.0, 44.0), (84.0, 42.6)];
        if self.keyhole {
            rim.extend((0..=14).map(|i| {
                let turn = -2.75 + f64::from(i) * 5.5 / 14.0;
                (92.0 + 8.0 * turn.cos(), 44.0 + 8.0 * turn.sin())
            }));
        } else {
            rim.extend([(94.0, 42.6), (95.0, 44.0), (94.0, 45.4)]);
        }
        rim.extend([(84.0, 45.4), (22.0, 44.0)]);
        let track = Track::through(&rim);
        let mut thread = Pen::new();
        if ragged > 0.3 {
            // Stitches of all lengths, some missing.
            let mut at = 0.0;
            while at < track.length() {
                if chance.share() > 0.22 * ragged {
                    let spot = track.spot(at);
                    let (a, b) = (spot.beside(-1.0, 0.0), spot.beside(-chance.between(4.0, 10.0), chance.about(3.0 * ragged)));
                    thread.line(a.0, a.1, b.0, b.1);
                }
                at += pitch * chance.between(0.6, 1.5);
            }
        } else {
            if self.keyhole {
                overlock(&mut thread, &track, -1.0, -8.4, pitch);
            } else {
                for (y, way) in [(43.0, -1.0), (45.0, 1.0)] {
                    overlock(&mut thread, &Track::level(22.0, 95.0, y), way, way * 8.4, pitch);
                }
                thread.line(97.0, 36.0, 97.0, 52.0);
            }
        }
        sheet.stitches(1.9, thread);
        sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.outline(&rim)));
        sheet.stroke(Ink::Edge, 1.6, Pen::with(|pen| _ = pen.outline(&rim)));
        if ragged > 0.15 {
            sheet.stroke(
                Ink::Weft,
                1.1,
                Pen::with(|pen| fringe(pen, &track, -1.0, 3.0 + 6.0 * ragged, 10.0 - 4.0 * ragged, chance)),
            );
        }
        if self.bar {
            let bar = Track::through(&[(19.0, 34.0), (19.0, 54.0)]);
            sheet.stitches(2.2, Pen::with(|pen| overlock(pen, &bar, -3.4, 3.4, 2.6)));
        }
    }
}

impl Fly {
    pub(super) fn words(&self) -> String {
        String::from(match self {
            Fly::ZipCatches => say!("a zip that has caught cloth in its slider"),
            Fly::ZipLight => say!("a light zip with fine teeth"),
            Fly::ZipSound => say!("a zip with even teeth"),
            Fly::ZipHeavy => say!("a heavy zip with a locking slider, its tape sewn twice"),
            Fly::Buttons => say!("a fly closed by buttons"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        if *self == Fly::Buttons {
            return buttons(sheet);
        }
        // The fly lies across: its top to the right.
        let (pitch, half, rows) = match self {
            Fly::ZipLight | Fly::ZipCatches => (4.2, 4.0, 1),
            Fly::ZipSound => (5.8, 5.6, 1),
            _ => (8.0, 8.4, 2),
        };
        let tape = half + 12.0;
        sheet.area(Ink::Weft, Area { x: 0.0, y: 40.0 - tape, width: 120.0, height: 2.0 * tape });
        sheet.stroke(
            Ink::Shade,
            1.6,
            Pen::with(|pen| _ = pen.line(-5.0, 40.0 - tape, 125.0, 40.0 - tape).line(-5.0, 40.0 + tape, 125.0, 40.0 + tape)),
        );
        let mut thread = Pen::new();
        for row in 0..rows {
            for way in [-1.0, 1.0] {
                Row::of(6.6).sew(
                    &mut thread,
                    &Track::level(0.0, 120.0, 40.0 + way * (tape - 3.0 - 5.0 * f64::from(row))),
                    0.0,
                    0.0,
                    120.0,
                );
            }
        }
        sheet.stroke(Ink::Thread, 1.7, thread);
        let slider = 84.0;
        let mut teeth = Pen::new();
        for tooth in 0..(122.0 / pitch) as i32 {
            let x = f64::from(tooth) * pitch;
            // Behind the slider teeth mesh; before it the two sides part.
            let part = ((x - slider - 4.0) * 0.16).max(0.0);
            let way = if tooth % 2 == 0 { -1.0 } else { 1.0 };
            let y = 40.0 + way * (half * 0.36 + part);
            teeth.rect(x, y - half * 0.64, pitch * 0.62, half * 1.28);
        }
        sheet.fill(Ink::Metal, teeth.clone());
        sheet.stroke(Ink::Edge, 0.8, teeth);
        if *self == Fly::ZipCatches {
            let fold = [(66.0, 84.0), (72.0, 58.0), (80.0, 44.0), (92.0, 37.0), (98.0, 44.0), (102.0, 60.0), (106.0, 84.0)];
            sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.smooth(&fold).close()));
            sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.smooth(&fold)));
            sheet.stroke(
                Ink::Shade,
                1.4,
                Pen::with(|pen| _ = pen.at(80.0, 82.0).bend(83.0, 60.0, 89.0, 46.0).at(94.0, 82.0).bend(92.0, 62.0, 92.0, 48.0)),
            );
        }
        let tilt = if *self == Fly::ZipCatches { 4.0 + chance.share() } else { 0.0 };
        let (wide, long) = (half + 4.0, half * 0.8 + 7.0);
        let body = [
            (slider - long, 40.0 - wide * 0.7 - tilt),
            (slider + long, 40.0 - wide - tilt * 0.2),
            (slider + long, 40.0 + wide - tilt * 0.4),
            (slider - long, 40.0 + wide * 0.7 - tilt),
        ];
        sheet.fill(Ink::Metal, Pen::with(|pen| _ = pen.outline(&body)));
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.outline(&body)));
        let pull = |pen: &mut Pen| {
            _ = pen
                .at(slider, 38.0 - tilt)
                .bend(slider - 14.0, 35.0 - tilt, slider - long - 16.0, 37.0 - tilt)
                .bend(slider - long - 20.0, 40.0 - tilt, slider - long - 16.0, 43.0 - tilt)
                .bend(slider - 14.0, 45.0 - tilt, slider, 42.0 - tilt)
                .close()
        };
        sheet.fill(Ink::Metal, Pen::with(pull));
        sheet.stroke(Ink::Edge, 1.2, Pen::with(pull));
        if *self == Fly::ZipHeavy {
            sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.circle(slider + 3.0, 40.0, 3.6)));
        }
    }
}

/// A button fly lying across: three shank buttons, the flap's edge and its rows.
fn buttons(sheet: &mut Sheet) {
    sheet.area(Ink::Cloth, Area { x: 0.0, y: 0.0, width: 120.0, height: 54.0 });
    ridge(sheet, &[(-5.0, 60.0), (125.0, 60.0)]);
    let mut thread = Pen::new();
    for y in [6.0, 54.0] {
        Row::of(7.0).sew(&mut thread, &Track::level(0.0, 120.0, y), 0.0, 0.0, 120.0);
    }
    sheet.stitches(2.0, thread);
    let (mut disc, mut lines, mut light, mut hole) = (Pen::new(), Pen::new(), Pen::new(), Pen::new());
    for x in [20.0, 60.0, 100.0] {
        hole.line(x, 14.0, x, 47.0);
        disc.circle(x, 32.0, 12.0);
        lines.circle(x, 32.0, 12.0).circle(x, 32.0, 7.5);
        light.at(x - 8.6, 29.0).bend(x - 7.0, 24.5, x - 2.0, 23.2);
    }
    sheet.stitches(6.0, hole.clone());
    sheet.stroke(Ink::Edge, 1.4, hole);
    sheet.fill(Ink::Metal, disc);
    sheet.stroke(Ink::Edge, 1.3, lines);
    sheet.stroke(Ink::Paper, 1.6, light);
}

impl Label {
    pub(super) fn words(&self) -> String {
        let lines = self.lines.min(6);
        if lines == 0 {
            return String::from(say!("a place where a label has been cut out"));
        }
        let mut words = Words::new();
        words.and(if self.woven { say!("a label sewn down on all sides") } else { say!("a printed label caught at one edge") });
        words.count(lines, to_say!("{count} line of print"), to_say!("{count} lines of print"));
        words.and_if(self.symbols, if self.forbids { say!("every care symbol crossed out") } else { say!("care symbols") });
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        ridge(sheet, &[(-5.0, 10.0), (125.0, 10.0)]);
        let lines = self.lines.min(6);
        let (left, right, top, low) = (26.0, 94.0, 10.0, 74.0);
        if lines == 0 {
            let stub = [(left, top), (right, top), (right, 17.0), (left, 15.0)];
            sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&stub)));
            let cut = Track::through(&[stub[3], stub[2]]);
            sheet.stroke(Ink::Paper, 1.2, Pen::with(|pen| fringe(pen, &cut, 0.0, 5.0, 2.6, chance)));
            sheet.dash(
                Ink::Shade,
                1.2,
                3.0,
                3.0,
                Pen::with(|pen| _ = pen.points(&[(left, 20.0), (left, low), (right, low), (right, 20.0)])),
            );
            return;
        }
        let curl = if self.woven { 0.0 } else { 9.0 };
        let body = [(left, top), (right, top), (right, low - curl), (right - curl, low), (left, low)];
        sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&body)));
        sheet.stroke(Ink::Edge, 1.0, Pen::with(|pen| _ = pen.outline(&body)));
        if self.woven {
            let round = Track::through(&[
                (left + 3.0, top + 3.0),
                (right - 3.0, top + 3.0),
                (right - 3.0, low - 3.0),
                (left + 3.0, low - 3.0),
                (left + 3.0, top + 3.0),
            ]);
            sheet.stroke(Ink::Thread, 1.5, Pen::with(|pen| _ = Row::of(5.0).sew(pen, &round, 0.0, 0.0, round.length())));
        } else {
            sheet.fill(
                Ink::Weft,
                Pen::with(|pen| _ = pen.outline(&[(right, low - curl), (right - curl, low), (right - curl, low - curl)])),
            );
            sheet.stroke(
                Ink::Thread,
                1.6,
                Pen::with(|pen| _ = Row::of(6.0).sew(pen, &Track::level(left, right, top + 3.0), 0.0, 2.0, 66.0)),
            );
        }
        let room = if self.symbols { 34.0 } else { 50.0 };
        let mut print = Pen::new();
        for line in 0..lines {
            let y = 20.0 + room * (f64::from(line) + 0.5) / f64::from(lines);
            print.line(left + 9.0, y, right - 9.0 - chance.between(0.0, 22.0), y);
        }
        sheet.stroke(Ink::Shade, 2.4, print);
        if self.symbols {
            let y = 60.0;
            let signs = Pen::with(|pen| {
                pen.points(&[(34.0, y - 5.0), (36.0, y + 5.0), (45.0, y + 5.0), (47.0, y - 5.0)]);
                pen.outline(&[(53.0, y + 5.0), (64.0, y + 5.0), (58.5, y - 5.0)]);
                pen.rect(69.0, y - 5.0, 10.0, 10.0).circle(74.0, y, 4.0);
            });
            sheet.stroke(Ink::Edge, 1.3, signs);
            if self.forbids {
                let crosses = Pen::with(|pen| {
                    for x in [40.5, 58.5, 74.0] {
                        pen.line(x - 7.0, y - 6.5, x + 7.0, y + 6.5).line(x - 7.0, y + 6.5, x + 7.0, y - 6.5);
                    }
                });
                sheet.stroke(Ink::Thread, 1.8, crosses);
            }
        }
    }
}
