//! The cloth itself: how densely it is woven, how thick it folds, what is wrong with its face.

use super::chance::Chance;
use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{FRAME, Pen, Track, clamp, feather, fringe};
use super::words::Words;
use crate::{say, to_say};

/// Cloth so close that its yarns can be counted; the frame shows 4.8 mm by 3.2 mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weave {
    /// Warp yarns per cm, 5 to 40.
    pub ends_per_cm: f64,
    /// Weft yarns per cm, 5 to 30.
    pub picks_per_cm: f64,
    /// Thickness of a yarn as a share of the room it has, 0.3 (open) to 1 (crowded).
    pub cover: f64,
    /// Spread of yarn thickness, 0 to 0.5.
    pub unevenness: f64,
}

/// The face of the cloth at arm's length.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClothFace {
    /// What is on it.
    pub flaw: ClothFlaw,
    /// How many of it, 0 to 12.
    pub count: u8,
}

/// What may be seen on the face of cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ClothFlaw {
    /// Nothing: even.
    None,
    /// Thick places in the yarn, evenly strewn by design.
    Slub,
    /// Broken yarns that leave holes.
    Hole,
    /// Light lines along the warp.
    Streak,
    /// Clouds of lighter and darker colour.
    Patch,
}

/// A fold of the cloth in section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fold {
    /// Mass of the cloth in ounces per square yard, 4 to 24.
    pub ounces: f64,
    /// How far the fold stands open by itself, 0 (limp, lies flat) to 1 (springs back).
    pub spring: f64,
}

/// Pocket cloth held before a hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PocketCloth {
    /// How much shows through, 0 (nothing) to 1 (sheer).
    pub sheer: f64,
    /// Whether it is a twill.
    pub twill: bool,
    /// Yarns per cm, 6 to 40: drawn enlarged.
    pub yarns_per_cm: f64,
}

impl Weave {
    /// Drawing units per cm of cloth: the frame is 4.8 mm wide.
    pub const UNITS_PER_CM: f64 = 250.0;

    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        let cover = clamp(self.cover, 0.3, 1.0);
        words.and(if cover < 0.55 {
            say!("open weave, light shows between the yarns")
        } else if cover < 0.8 {
            say!("loose weave")
        } else if cover < 0.93 {
            say!("close weave")
        } else {
            say!("crowded weave, no gaps")
        });
        words.number(clamp(self.ends_per_cm, 5.0, 40.0), to_say!("{number} yarns per centimetre along"));
        words.number(clamp(self.picks_per_cm, 5.0, 30.0), to_say!("{number} across"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let across = Weave::UNITS_PER_CM / clamp(self.ends_per_cm, 5.0, 40.0);
        let down = Weave::UNITS_PER_CM / clamp(self.picks_per_cm, 5.0, 30.0);
        let (cover, spread) = (clamp(self.cover, 0.3, 1.0), clamp(self.unevenness, 0.0, 0.5));
        sheet.area(Ink::Paper, FRAME);
        let mut weft = Pen::new();
        let picks = (Drawing::HEIGHT / down) as i32 + 2;
        let ends = (Drawing::WIDTH / across) as i32 + 1;
        for pick in 0..picks {
            let (y, sway) = (down * (f64::from(pick) - 0.5), chance.about(spread * down * 0.4));
            weft.line(-5.0, y + sway, 125.0, y - sway);
        }
        let thick = down * (cover * 0.72);
        sheet.stroke(Ink::ClothLight, thick + 1.2, weft.clone());
        sheet.stroke(Ink::Weft, thick, weft);
        // A right-hand three-over-one twill: each warp yarn dips under one weft of four, a step higher on each next yarn.
        let mut warp = [Pen::new(), Pen::new()];
        for end in 0..ends {
            let x = across * (f64::from(end) + 0.5);
            let sway = chance.about(spread * across * 0.5);
            let thin = usize::from(chance.share() < spread);
            let first = -4 + (3 - end).rem_euclid(4);
            let mut pick = first;
            while pick < picks {
                let top = down * (f64::from(pick) - 0.5 + 0.5 + 0.08);
                let foot = down * (f64::from(pick) + 3.0 - 0.08);
                let (top, foot) = (top + across * cover * 0.36, foot - across * cover * 0.36);
                if foot > -4.0 && top < 84.0 {
                    warp[thin].line(x + sway, top.max(-5.0), x - sway, foot.min(85.0));
                }
                pick += 4;
            }
        }
        let width = across * cover;
        for (pen, share) in warp.into_iter().zip([1.0, 0.66]) {
            sheet.stroke(Ink::Edge, width * share, pen.clone());
            sheet.stroke(Ink::Cloth, width * share - 1.4, pen.clone());
            sheet.dash(Ink::ClothLight, (width * share * 0.16).max(0.6), down * 0.7, down * 0.45, pen);
        }
    }
}

impl ClothFace {
    pub(super) fn words(&self) -> String {
        String::from(match self.flaw {
            ClothFlaw::None => say!("even cloth"),
            ClothFlaw::Slub => say!("cloth with slubs strewn evenly"),
            ClothFlaw::Hole => say!("cloth with broken yarns and holes"),
            ClothFlaw::Streak => say!("cloth with light streaks along it"),
            ClothFlaw::Patch => say!("cloth with lighter and darker clouds"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let count = self.count.min(12);
        sheet.area(Ink::Cloth, FRAME);
        let places: Vec<(f64, f64)> = (0..count)
            .map(|i| {
                // One per stripe across, spread over the height by a step that never lines up.
                let x = 120.0 * (f64::from(i) + 0.5 + chance.about(0.22)) / f64::from(count);
                (x, 12.0 + 56.0 * ((f64::from(i) * 0.618 + 0.3 + chance.about(0.08)) % 1.0).abs())
            })
            .collect();
        if self.flaw == ClothFlaw::Patch {
            let mut clouds = [Pen::new(), Pen::new()];
            for (index, &(x, y)) in places.iter().enumerate() {
                let radii = (chance.between(14.0, 22.0), chance.between(12.0, 22.0));
                feather(&mut clouds[index % 2], (x, y), radii, 1.8, 0.35, chance);
            }
            let [light, dark] = clouds;
            sheet.stroke(Ink::ClothDark, 1.9, dark);
            sheet.stroke(Ink::ClothLight, 1.5, light);
        }
        sheet.twill(Ink::ClothDark, FRAME, 3.0);
        let mut marks = Pen::new();
        match self.flaw {
            ClothFlaw::None | ClothFlaw::Patch => {}
            ClothFlaw::Slub => {
                for &(x, y) in &places {
                    let half = chance.between(5.0, 12.0);
                    super::pen::leaf(&mut marks, (x, y - half), (x + chance.about(0.6), y + half), 2.6);
                }
                sheet.fill(Ink::ClothLight, marks);
            }
            ClothFlaw::Streak => {
                for &(x, _) in &places {
                    let wide = chance.between(0.6, 2.2);
                    marks.rect(x, -2.0, wide, 84.0);
                }
                sheet.fill(Ink::ClothLight, marks);
            }
            ClothFlaw::Hole => {
                let mut yarns = Pen::new();
                let mut run = Pen::new();
                for (index, &(x, y)) in places.iter().enumerate() {
                    let size = if index.is_multiple_of(2) { 8.0 } else { 5.0 };
                    let rim: Vec<(f64, f64)> = (0..=10)
                        .map(|i| {
                            let turn = f64::from(i) * std::f64::consts::TAU / 10.0;
                            let reach = size * if i == 10 { 1.0 } else { chance.between(0.75, 1.15) };
                            (x + reach * turn.cos() * 0.9, y + reach * turn.sin())
                        })
                        .collect();
                    marks.outline(&rim[..10]);
                    let track = Track::through(&rim);
                    fringe(&mut yarns, &track, -0.5, 5.0, 3.0, chance);
                    run.line(x + 2.0, y - size, x + 2.0, y - size - 16.0).line(x - 1.0, y + size, x - 1.0, y + size + 12.0);
                }
                sheet.stroke(Ink::ClothLight, 1.6, run);
                sheet.stroke(Ink::ClothPale, 2.0, marks.clone());
                sheet.fill(Ink::Paper, marks);
                sheet.stroke(Ink::ClothLight, 1.1, yarns);
            }
        }
    }
}

impl Fold {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(if self.spring > 0.6 {
            say!("a fold that springs open")
        } else if self.spring > 0.25 {
            say!("a fold that stands a little open")
        } else {
            say!("a fold that lies flat")
        });
        words.number(clamp(self.ounces, 4.0, 24.0), to_say!("{number} ounces"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let thick = 1.0 + 0.62 * clamp(self.ounces, 4.0, 24.0);
        let lift = clamp(self.spring, 0.0, 1.0) * 34.0;
        sheet.area(Ink::Paper, FRAME);
        let table = 68.0;
        let (low, high) = (table - thick / 2.0 - 0.6, table - thick * 1.6 - 1.8 - lift);
        let bulge = 92.0 + (low - high) * 0.42;
        let cloth = Pen::with(|pen| {
            let tip = high - lift * 0.35;
            pen.at(-5.0, low).to(88.0, low).bend(bulge, low, bulge, (low + high) / 2.0).bend(bulge, high, 86.0, high);
            pen.bend(56.0, high, 20.0, tip - 0.1 * lift);
        });
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.line(-5.0, table + 0.8, 125.0, table + 0.8)));
        sheet.ply(Ink::Cloth, thick, cloth.clone());
        sheet.dash(Ink::ClothPale, thick * 0.16, 2.4, 2.4, cloth);
    }
}

impl PocketCloth {
    pub(super) fn words(&self) -> String {
        let mut words = String::from(match clamp(self.sheer, 0.0, 1.0) {
            sheer if sheer > 0.66 => say!("pocket cloth through which the hand is seen"),
            sheer if sheer > 0.2 => say!("pocket cloth through which the hand shows faintly"),
            _ => say!("pocket cloth that hides the hand"),
        });
        words.push_str(", ");
        words.push_str(match (self.twill, self.yarns_per_cm < 22.0) {
            (false, _) => say!("plain weave"),
            (true, false) => say!("twill"),
            (true, true) => say!("heavy twill"),
        });
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let sheer = clamp(self.sheer, 0.0, 1.0);
        let fingers = Pen::with(|pen| {
            for (x, tip) in [(38.0, 30.0), (54.0, 18.0), (70.0, 15.0), (86.0, 24.0)] {
                pen.line(x, tip, x + (62.0 - x) * 0.12, 86.0);
            }
        });
        sheet.area(Ink::Paper, FRAME);
        if sheer > 0.02 {
            // What shows through is drawn as broken lines where the cloth covers much of it.
            let (width, ink) = (
                13.5,
                if sheer > 0.66 {
                    Ink::Shade
                } else if sheer > 0.33 {
                    Ink::ClothLight
                } else {
                    Ink::Weft
                },
            );
            sheet.stroke(ink, width, fingers);
        }
        let pitch = 150.0 / clamp(self.yarns_per_cm, 6.0, 40.0);
        if self.twill {
            let heavy = self.yarns_per_cm < 22.0;
            let lines = Pen::with(|pen| _ = pen.hatch(FRAME, pitch, 70.0));
            sheet.area(Ink::Weft, FRAME);
            sheet.dash(Ink::ClothPale, pitch * 0.42, pitch * 2.0, pitch * 0.55, lines.clone());
            if heavy {
                sheet.dash(Ink::ClothLight, pitch * 0.16, pitch * 2.0, pitch * 0.55, lines);
            }
        } else {
            let grid = Pen::with(|pen| {
                pen.hatch(FRAME, pitch, 0.0);
                let mut y = pitch / 2.0;
                while y < 80.0 {
                    pen.line(-5.0, y, 125.0, y);
                    y += pitch;
                }
            });
            sheet.stroke(Ink::Weft, 0.5 + pitch * 0.3 * (1.0 - sheer), grid.clone());
            sheet.stroke(Ink::Paper, pitch * (0.34 - 0.2 * sheer), grid);
        }
    }
}
