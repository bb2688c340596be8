//! Light cloth as the hand tries it: held before a hand and crushed, or laid in layers.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, clamp};
use super::words::Words;
use crate::{say, to_say};

/// Cloth held before a hand, and, where it was crushed, the same cloth after that, to the right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LightHand {
    /// How much of the hand shows, 0 (nothing) to 1 (sheer).
    pub sheer: f64,
    /// Creases that stayed, 0 to 14; none where it was not crushed.
    pub creases: Option<u8>,
    /// Whether it is knitted: its columns show, not crossing threads.
    pub knit: bool,
}

/// Ten layers of cloth in section; how thick follows from the mass alone and is a sign for it, no measure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layers {
    /// What a square metre weighs, in grams, 60 to 300.
    pub grams: f64,
}

impl LightHand {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(match clamp(self.sheer, 0.0, 1.0) {
            sheer if sheer > 0.66 => say!("cloth through which the fingers are plain to see"),
            sheer if sheer > 0.33 => say!("cloth through which the fingers show as shapes"),
            sheer if sheer > 0.1 => say!("cloth through which a hand is a shadow"),
            _ => say!("cloth that hides the hand"),
        });
        match self.creases {
            None => {}
            Some(0) => words.and(say!("no creases after crushing")),
            Some(1..=3) => words.and(say!("a few faint creases after crushing")),
            Some(4..=6) => words.and(say!("some creases after crushing")),
            Some(_) => words.and(say!("many sharp creases after crushing")),
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let sheer = clamp(self.sheer, 0.0, 1.0);
        let middle = if self.creases.is_some() { 0.0 } else { 29.0 };
        sheet.area(Ink::ClothPale, FRAME);
        if sheer > 0.02 {
            let fingers = Pen::with(|pen| {
                for (x, tip) in [(10.0, 34.0), (25.0, 20.0), (40.0, 18.0), (54.0, 30.0)] {
                    pen.line(x + middle, tip, x + middle + (32.0 - x) * 0.14, 86.0);
                }
            });
            let ink = if sheer > 0.66 {
                Ink::Cloth
            } else if sheer > 0.33 {
                Ink::ClothLight
            } else {
                Ink::Weft
            };
            sheet.stroke(ink, 4.0 + 7.5 * sheer.sqrt(), fingers);
        }
        let pitch = 3.0 + 2.4 * sheer;
        let threads = Pen::with(|pen| _ = if self.knit { pen.hatch(FRAME, pitch, 0.0) } else { pen.grid(FRAME, pitch) });
        sheet.stroke(Ink::ClothLight, if self.knit { 0.9 } else { 0.5 }, threads);
        let Some(creases) = self.creases.map(|creases| creases.min(14)) else { return };
        let (mut dark, mut light) = (Pen::new(), Pen::new());
        for crease in 0..creases {
            let turn = std::f64::consts::TAU * (f64::from(crease) + 0.5 + chance.about(0.3)) / f64::from(creases);
            let (near, far) = (chance.between(3.0, 8.0), chance.between(17.0, 26.0));
            let bent = turn + chance.about(0.5);
            let middle = (near + far) / 2.0;
            let at = |turn: f64, far: f64| (92.0 + far * turn.cos(), 40.0 + far * 1.25 * turn.sin());
            let points = [at(turn, near), at(bent, middle), at(turn, far)];
            dark.points(&points);
            light.points(&points.map(|(x, y)| (x - 1.2, y - 1.2)));
        }
        let sharp = if creases > 6 { 1.7 } else { 1.1 };
        sheet.stroke(Ink::Weft, sharp, light);
        sheet.stroke(Ink::Cloth, sharp, dark);
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.line(64.0, -5.0, 64.0, 85.0)));
    }
}

impl Layers {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("ten layers of cloth"));
        words.number(clamp(self.grams, 60.0, 300.0), to_say!("{number} grams a square metre"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let thick = clamp(self.grams, 60.0, 300.0) * 0.026;
        sheet.area(Ink::Paper, FRAME);
        let table = 74.0;
        let layers = Pen::with(|pen| {
            for layer in 0..10 {
                let y = table - thick * (f64::from(layer) + 0.5);
                pen.line(20.0 + f64::from(layer % 3), y, 92.0 - f64::from(layer % 2) * 2.0, y);
            }
        });
        sheet.stroke(Ink::Edge, thick, layers.clone());
        sheet.stroke(Ink::ClothLight, thick - 1.0, layers);
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.line(-5.0, table, 125.0, table)));
        // A ruler upright beside the pile: how high the heaviest stands.
        sheet.area(Ink::Tape, Area { x: 104.0, y: -5.0, width: 12.0, height: table + 5.0 });
        let ticks = Pen::with(|pen| {
            for step in 0..15 {
                let y = table - f64::from(step) * 5.2;
                pen.line(104.0, y, if step % 5 == 0 { 112.0 } else { 108.0 }, y);
            }
        });
        sheet.stroke(Ink::Edge, 1.0, ticks);
        sheet.dash(
            Ink::Thread,
            1.2,
            2.4,
            2.0,
            Pen::with(|pen| _ = pen.line(20.0, table - thick * 10.0, 104.0, table - thick * 10.0)),
        );
    }
}
