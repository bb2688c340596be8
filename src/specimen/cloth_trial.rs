//! What cloth does when it is pulled, let go, rubbed or held before a light.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, clamp, feather};
use super::words::Words;
use crate::{say, to_say};

/// Ten centimetres of cloth at rest and pulled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Give {
    /// How far it gives over 10 cm, in cm, 0 to 5.
    pub give_cm: f64,
}

/// Ten centimetres of cloth after it was pulled and let go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Growth {
    /// How much longer it stays, in percent, 0 to 10.
    pub percent: f64,
}

/// A white tissue after rubbing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RubOff {
    /// Colour on the tissue, 0 (none) to 1 (strong).
    pub strength: f64,
}

impl Give {
    /// Drawing units per cm: ten at rest and five more fit the frame.
    const CM: f64 = 7.0;

    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("ten centimetres of cloth, pulled"));
        words.number(clamp(self.give_cm, 0.0, 5.0), to_say!("{number} centimetres longer"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let give = clamp(self.give_cm, 0.0, 5.0) * Give::CM;
        sheet.area(Ink::Paper, FRAME);
        let (from, to) = (10.0, 10.0 + 10.0 * Give::CM);
        // At rest above; below pulled, longer and narrower.
        let waist = give * 0.07;
        for (y, end, slim) in [(5.0, to, 0.0), (43.0, to + give, waist)] {
            let high = 22.0 - slim;
            let top = y + slim / 2.0;
            let strip = Area { x: 0.0, y: top, width: end + 3.0, height: high };
            sheet.area(Ink::Cloth, strip);
            sheet.twill(Ink::ClothDark, strip, 3.4 * (1.0 + give * 0.012 * slim.signum()));
            sheet.stroke(
                Ink::Paper,
                2.2,
                Pen::with(|pen| _ = pen.line(from, top, from, top + high).line(end, top, end, top + high)),
            );
        }
        // The tape between, ten centimetres and five beyond.
        sheet.area(Ink::Tape, Area { x: 0.0, y: 29.0, width: 120.0, height: 12.0 });
        let ticks = Pen::with(|pen| {
            for cm in 0..16 {
                let x = from + f64::from(cm) * Give::CM;
                pen.line(x, 29.0, x, if cm % 5 == 0 { 38.0 } else { 33.5 });
            }
        });
        sheet.stroke(Ink::Edge, 1.1, ticks);
        if give > 0.0 {
            let y = 72.0;
            sheet.stroke(Ink::Thread, 3.4, Pen::with(|pen| _ = pen.line(to, y, to + give, y)));
            sheet.stroke(
                Ink::Thread,
                1.4,
                Pen::with(|pen| _ = pen.line(to, y - 4.0, to, y + 4.0).line(to + give, y - 4.0, to + give, y + 4.0)),
            );
        }
        sheet.dash(Ink::Thread, 1.2, 2.4, 2.4, Pen::with(|pen| _ = pen.line(to, 2.0, to, 77.0)));
    }
}

impl Growth {
    /// Drawing units per mm: the frame shows the tape from 9.6 cm to 11.2 cm.
    const MM: f64 = 7.5;

    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("ten centimetres of cloth after it was pulled and let go"));
        words.number(clamp(self.percent, 0.0, 10.0), to_say!("{number} millimetres longer"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        // Ten centimetres grow by as many mm as the growth in percent.
        let from = 4.0 * Growth::MM;
        let to = from + clamp(self.percent, 0.0, 10.0) * Growth::MM;
        sheet.area(Ink::Paper, FRAME);
        let strip = Area { x: 0.0, y: 28.0, width: to + 6.0, height: 34.0 };
        sheet.area(Ink::Cloth, strip);
        sheet.twill(Ink::ClothDark, strip, 3.8);
        sheet.area(Ink::Tape, Area { x: 0.0, y: 4.0, width: 120.0, height: 24.0 });
        let ticks = Pen::with(|pen| {
            for mm in 0..=16 {
                let x = f64::from(mm) * Growth::MM;
                pen.line(x, 28.0, x, if mm % 5 == 4 { 12.0 } else { 21.0 });
            }
        });
        sheet.stroke(Ink::Edge, 1.1, ticks);
        sheet.stroke(Ink::Edge, 2.6, Pen::with(|pen| _ = pen.line(from, 28.0, from, 6.0)));
        sheet.stroke(Ink::Paper, 2.6, Pen::with(|pen| _ = pen.line(to, 28.0, to, 62.0)));
        sheet.dash(Ink::Thread, 1.4, 2.6, 2.6, Pen::with(|pen| _ = pen.line(from, 28.0, from, 78.0)));
        if to - from > 1.0 {
            sheet.stroke(Ink::Thread, 4.0, Pen::with(|pen| _ = pen.line(from + 1.0, 71.0, to - 1.0, 71.0)));
        }
        sheet.stroke(Ink::Thread, 1.4, Pen::with(|pen| _ = pen.line(to, 65.0, to, 77.0)));
    }
}

impl RubOff {
    pub(super) fn words(&self) -> String {
        String::from(match clamp(self.strength, 0.0, 1.0) {
            strength if strength < 0.05 => say!("a clean white tissue"),
            strength if strength < 0.35 => say!("a white tissue with a faint trace of colour"),
            strength if strength < 0.7 => say!("a white tissue with colour plain to see"),
            strength if strength < 0.97 => say!("a white tissue strongly coloured"),
            _ => say!("a white tissue that took on the full colour"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let strength = clamp(self.strength, 0.0, 1.0);
        sheet.face();
        let tissue =
            [(20.0, 12.0), (58.0, 8.0), (101.0, 13.0), (104.0, 42.0), (99.0, 70.0), (60.0, 73.0), (18.0, 69.0), (15.0, 40.0)];
        sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&tissue)));
        sheet.stroke(Ink::Shade, 1.0, Pen::with(|pen| _ = pen.outline(&tissue)));
        sheet.stroke(
            Ink::Weft,
            1.0,
            Pen::with(|pen| {
                pen.at(20.0, 12.0)
                    .bend(40.0, 24.0, 30.0, 36.0)
                    .at(101.0, 13.0)
                    .bend(86.0, 22.0, 92.0, 34.0)
                    .at(60.0, 73.0)
                    .bend(66.0, 64.0, 84.0, 66.0);
            }),
        );
        if strength >= 0.05 {
            // Rubbing leaves strokes one way: more, longer and closer the more comes off.
            let lines = 4 + (strength * 15.0) as i32;
            let (reach, high) = (18.0 + 16.0 * strength, 10.0 + 12.0 * strength);
            let mut smear = Pen::new();
            for line in 0..lines {
                let on = (f64::from(line) + 0.5) / f64::from(lines) * 2.0 - 1.0;
                let half = reach * (1.0 - on * on).sqrt();
                let y = 40.0 + high * on;
                smear.line(60.0 - half * chance.between(0.75, 1.1), y + 1.5, 60.0 + half * chance.between(0.75, 1.1), y - 1.5);
            }
            let width = 0.9 + 2.4 * strength;
            if strength < 0.5 {
                sheet.dash(Ink::Stain, width, 1.5 + 9.0 * strength, 2.6, smear);
            } else {
                sheet.stroke(Ink::Stain, width, smear);
            }
        }
    }
}

/// One layer of cloth held before a light.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LightThrough {
    /// Places where light breaks through, 0 to 40.
    pub pinholes: u8,
    /// Unevenness of the glow, 0 to 1.
    pub cloud: f64,
}

impl LightThrough {
    pub(super) fn words(&self) -> String {
        String::from(if self.pinholes > 3 {
            say!("cloth before a light, which breaks through in points and lines")
        } else if clamp(self.cloud, 0.0, 1.0) > 0.2 {
            say!("cloth before a light, glowing in lighter and darker patches")
        } else {
            say!("cloth before a light, dim and even")
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::ClothDark, FRAME);
        let cloud = clamp(self.cloud, 0.0, 1.0);
        if cloud > 0.05 {
            let mut glow = [Pen::new(), Pen::new()];
            for (index, (x, y)) in [(22.0, 26.0), (58.0, 52.0), (96.0, 24.0), (102.0, 64.0), (18.0, 66.0)].into_iter().enumerate()
            {
                let radii = (12.0 + 10.0 * cloud + chance.about(3.0), 8.0 + 9.0 * cloud + chance.about(3.0));
                feather(&mut glow[0], (x, y), radii, 1.8, 0.35, chance);
                if index < 3 {
                    feather(&mut glow[1], (x, y), (radii.0 * 0.55, radii.1 * 0.5), 1.8, 0.4, chance);
                }
            }
            let [dim, bright] = glow;
            sheet.stroke(Ink::ClothLight, 1.9, dim);
            sheet.stroke(Ink::ClothPale, 1.6, bright);
        }
        sheet.twill(Ink::Cloth, FRAME, 3.6);
        let (mut points, mut lines) = (Pen::new(), Pen::new());
        for hole in 0..self.pinholes.min(40) {
            let x = 120.0 * ((f64::from(hole) * 0.618 + 0.1) % 1.0);
            let y = 80.0 * ((f64::from(hole) + 0.5) / f64::from(self.pinholes.min(40))) + chance.about(3.0);
            if hole % 6 == 5 {
                lines.line(x, y - 9.0, x + 0.6, y + 9.0);
            } else {
                points.line(x, y, x, y + chance.share());
            }
        }
        sheet.stroke(Ink::Tape, 3.2, points);
        sheet.stroke(Ink::Tape, 1.6, lines);
    }
}
