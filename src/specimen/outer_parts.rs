//! Small things of a jacket or coat for outside: zip, cord, corners of pockets, buttons, pocket bag.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::jacket_details::SewnButton;
use super::pen::{Area, FRAME, Pen, Row, Track, leaf};
use super::words::Words;
use crate::{say, to_say};

/// The main zip, its top to the right.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OuterZip {
    /// Thin, with cloth caught in it.
    Catches,
    /// It parts behind the slider, cloth beside it ripples.
    Rough,
    /// A flap of cloth lies behind it.
    Guarded,
    /// Heavy, with two sliders, flap and stayed end.
    Heavy,
}

/// A hem with a cord in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cord {
    /// A bare end, nothing that stops it.
    Nothing,
    /// A stop that has slid down a slack cord.
    Slips,
    /// A stop that holds.
    Holds,
    /// A stop sewn to the hem, its cord led back in.
    Tidy,
}

/// Four corners of two pockets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PocketTacks {
    /// How many are tacked, 0 to 4.
    pub tacks: u8,
    /// Whether a patch lies behind each corner.
    pub backed: bool,
}

/// A button in section, with a small one behind the cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BackedButton {
    /// Whether it stands on a wrapped neck, a spare one beside it.
    pub necked: bool,
}

/// Lining and a pocket bag from inside, a hand in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PocketBag {
    /// Sheer cloth, its threads sliding apart at a seam.
    Slips,
    /// Plain cloth.
    Plain,
    /// Close cloth.
    Firm,
    /// Close cloth, the bag of pile.
    Warm,
}

impl OuterZip {
    pub(super) fn words(self) -> &'static str {
        match self {
            OuterZip::Catches => say!("a thin zip that has caught cloth"),
            OuterZip::Rough => say!("a zip that parts behind its slider, ripples beside it"),
            OuterZip::Guarded => say!("a closed zip with a flap of cloth behind it"),
            OuterZip::Heavy => say!("a heavy zip with two sliders, a flap behind it, its end stayed"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        let heavy = self == OuterZip::Heavy;
        let thin = self == OuterZip::Catches;
        let (half, tooth) = if heavy {
            (13.0, 9.0)
        } else if thin {
            (8.0, 4.0)
        } else {
            (10.0, 6.0)
        };
        if heavy || self == OuterZip::Guarded {
            sheet.area(Ink::ClothLight, Area { x: -5.0, y: 40.0, width: 130.0, height: half + 14.0 });
            let edge = Pen::with(|pen| _ = pen.line(-5.0, 54.0 + half, 125.0, 54.0 + half));
            sheet.stroke(Ink::Edge, 1.4, edge);
        } else {
            let ripples = Pen::with(|pen| {
                for step in 0..7 {
                    let x = 6.0 + 16.0 * f64::from(step);
                    leaf(pen, (x, 29.0), (x + 3.0, 10.0), 3.6);
                    leaf(pen, (x + 8.0, 51.0), (x + 5.0, 70.0), 3.6);
                }
            });
            sheet.fill(Ink::ClothLight, ripples);
        }
        sheet.area(Ink::Weft, Area { x: -5.0, y: 40.0 - half, width: 130.0, height: 2.0 * half });
        let teeth = Pen::with(|pen| {
            pen.line(-5.0, 40.0, 125.0, 40.0);
            if self == OuterZip::Rough {
                pen.at(10.0, 40.0).bend(36.0, 54.0, 62.0, 40.0);
            }
        });
        if self == OuterZip::Rough {
            sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.at(10.0, 40.0).bend(36.0, 54.0, 62.0, 40.0).close()));
        }
        sheet.dash(Ink::Metal, tooth, 0.6, tooth + 1.4, teeth.clone());
        sheet.dash(Ink::Edge, 1.2, 0.6, tooth + 1.4, teeth);
        let rows = Pen::with(|pen| {
            for way in [-1.0, 1.0] {
                Row::of(5.0).sew(pen, &Track::level(-5.0, 125.0, 40.0 + way * (half + 3.6)), 0.0, 0.0, 130.0);
            }
        });
        sheet.stroke(Ink::Thread, 1.4, rows);
        let edges =
            Pen::with(|pen| _ = pen.line(-5.0, 40.0 - half, 125.0, 40.0 - half).line(-5.0, 40.0 + half, 125.0, 40.0 + half));
        sheet.stroke(Ink::Edge, 1.4, edges);
        if thin {
            let fold = Pen::with(|pen| _ = pen.at(58.0, 49.0).bend(68.0, 26.0, 80.0, 36.0).bend(90.0, 42.0, 86.0, 52.0).close());
            sheet.fill(Ink::ClothPale, fold.clone());
            sheet.stroke(Ink::Edge, 1.4, fold);
        }
        let slider = |pen: &mut Pen, x: f64, way: f64| {
            let high = tooth * 0.8 + 1.6;
            pen.outline(&[
                (x, 40.0 - high),
                (x + way * 12.0, 40.0 - high - 1.4),
                (x + way * 12.0, 40.0 + high + 1.4),
                (x, 40.0 + high),
            ]);
            pen.at(x + way * 8.0, 38.0).bend(x + way * 24.0, 34.4, x + way * 32.0, 40.0);
            pen.bend(x + way * 24.0, 45.6, x + way * 8.0, 42.0).close();
        };
        let sliders = Pen::with(|pen| {
            slider(pen, if heavy { 84.0 } else { 76.0 }, 1.0);
            if heavy {
                slider(pen, 46.0, -1.0);
            }
        });
        sheet.fill(Ink::Metal, sliders.clone());
        sheet.stroke(Ink::Edge, 1.3, sliders);
        if heavy {
            // A patch over the lower end of the tape.
            let stay = Pen::with(|pen| _ = pen.rect(-4.0, 40.0 - half - 2.0, 13.0, 2.0 * half + 4.0));
            sheet.fill(Ink::Tape, stay.clone());
            sheet.stroke(Ink::Edge, 1.2, stay);
        }
    }
}

impl Cord {
    pub(super) fn words(self) -> &'static str {
        match self {
            Cord::Nothing => say!("a hem with a bare end of cord, nothing that stops it"),
            Cord::Slips => say!("a wide hem, the stop has slid down its slack cord"),
            Cord::Holds => say!("a hem drawn in by a cord, a stop holds it at the hem"),
            Cord::Tidy => say!("a hem drawn in, the stop sewn to it, the cord led back inside"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        let drawn_in = matches!(self, Cord::Holds | Cord::Tidy);
        let wave = if drawn_in { 3.0 } else { 0.0 };
        let edge: Vec<(f64, f64)> =
            (0..=26).map(|step| -5.0 + 5.0 * f64::from(step)).map(|x| (x, 52.0 + wave * (x * 0.42).sin())).collect();
        let cloth = Pen::with(|pen| _ = pen.smooth(&edge).to(125.0, -5.0).to(-5.0, -5.0).close());
        sheet.fill(Ink::ClothPale, cloth.clone());
        if drawn_in {
            let gathers = Pen::with(|pen| {
                for step in 0..9 {
                    let x = 4.0 + 14.0 * f64::from(step);
                    leaf(pen, (x, 50.0), (x + 2.0, 18.0), 4.4);
                }
            });
            sheet.fill(Ink::ClothLight, gathers);
        }
        sheet.stroke(Ink::Edge, 1.5, cloth);
        let row: Vec<(f64, f64)> = edge.iter().map(|&(x, y)| (x, y - 15.0)).collect();
        let track = Track::through(&row);
        sheet.stroke(Ink::Thread, 1.3, Pen::with(|pen| _ = Row::of(5.0).sew(pen, &track, 0.0, 0.0, track.length())));
        let cord = Pen::with(|pen| match self {
            Cord::Nothing => _ = pen.at(60.0, 44.0).bend(66.0, 60.0, 54.0, 74.0),
            Cord::Slips => _ = pen.at(57.0, 44.0).bend(46.0, 64.0, 60.0, 79.0).bend(74.0, 64.0, 63.0, 44.0),
            Cord::Holds => _ = pen.at(60.0, 44.0).to(60.0, 58.0).bend(48.0, 78.0, 60.0, 79.0).bend(72.0, 78.0, 60.0, 58.0),
            Cord::Tidy => _ = pen.at(60.0, 44.0).bend(62.0, 62.0, 76.0, 60.0).bend(84.0, 56.0, 82.0, 46.0),
        });
        sheet.stroke(Ink::Edge, 3.8, cord.clone());
        sheet.stroke(Ink::Tape, 2.2, cord);
        let eye = Pen::with(|pen| _ = pen.circle(60.0, 44.0, 4.0));
        sheet.stroke(Ink::Edge, 3.4, eye.clone());
        sheet.stroke(Ink::Metal, 2.0, eye);
        if self == Cord::Nothing {
            let frayed =
                Pen::with(|pen| _ = pen.line(54.0, 74.0, 48.0, 80.0).line(54.0, 74.0, 54.0, 82.0).line(54.0, 74.0, 60.0, 80.0));
            sheet.stroke(Ink::Edge, 1.0, frayed);
            return;
        }
        let low = if self == Cord::Slips { 66.0 } else { 51.0 };
        if self == Cord::Tidy {
            let loops = Pen::with(|pen| _ = pen.rect(44.0, 49.0, 10.0, 13.0).rect(78.0, 40.0, 9.0, 9.0));
            sheet.fill(Ink::Cloth, loops.clone());
            sheet.stroke(Ink::Edge, 1.2, loops);
        }
        let stop = Pen::with(|pen| _ = pen.rect(51.0, low, 18.0, 10.0).rect(55.0, low - 4.0, 10.0, 4.0));
        sheet.fill(Ink::Metal, stop.clone());
        sheet.stroke(Ink::Edge, 1.4, stop);
    }
}

impl PocketTacks {
    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("two pockets with four corners"));
        words.count(self.tacks.min(4), to_say!("{count} corner tacked"), to_say!("{count} corners tacked"));
        if self.backed {
            words.and(say!("a patch behind each"));
        }
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        let corners = [(16.0, 26.0), (104.0, 26.0), (16.0, 62.0), (104.0, 62.0)];
        if self.backed {
            let patches = Pen::with(|pen| corners.iter().for_each(|&(x, y)| _ = pen.rect(x - 11.0, y - 12.0, 22.0, 24.0)));
            sheet.fill(Ink::Tape, patches.clone());
            sheet.dash(Ink::Thread, 1.3, 3.0, 2.4, patches);
        }
        let welts = Pen::with(|pen| _ = pen.rect(16.0, 18.0, 88.0, 16.0).rect(16.0, 54.0, 88.0, 16.0));
        sheet.fill(Ink::ClothLight, welts.clone());
        sheet.stroke(Ink::Edge, 1.6, welts);
        let mut tacks = Pen::new();
        // Two of a pocket first would leave the other bare: across.
        for place in [0, 3, 1, 2].into_iter().take(usize::from(self.tacks.min(4))) {
            let (x, y) = corners[place];
            for step in 0..8 {
                let y = y - 8.0 + 2.3 * f64::from(step);
                tacks.line(x - 3.4, y, x + 3.4, y + 1.0);
            }
        }
        sheet.stroke(Ink::Edge, 3.0, tacks.clone());
        sheet.stroke(Ink::Thread, 1.9, tacks);
    }
}

impl BackedButton {
    pub(super) fn words(self) -> &'static str {
        if self.necked {
            say!("a button in section, on a wrapped neck, a small one behind the cloth and a spare beside it")
        } else {
            say!("a button in section, sewn flat, a small one behind the cloth")
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        if self.necked { SewnButton::NeckedSpare } else { SewnButton::Flat }.draw(sheet, chance);
        let small = Pen::with(|pen| _ = pen.outline(&[(36.0, 67.0), (64.0, 67.0), (62.0, 73.0), (38.0, 73.0)]));
        sheet.fill(Ink::Metal, small.clone());
        sheet.stroke(Ink::Edge, 1.4, small);
    }
}

impl PocketBag {
    pub(super) fn words(self) -> &'static str {
        match self {
            PocketBag::Slips => say!("lining whose threads slide apart at a seam, a hand seen through the pocket bag"),
            PocketBag::Plain => say!("plain lining, a hand shows faintly through the pocket bag"),
            PocketBag::Firm => say!("close lining, the pocket bag hides the hand"),
            PocketBag::Warm => say!("close lining, a pocket bag of warm pile"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::ClothPale, FRAME);
        let pitch = match self {
            PocketBag::Slips => 6.4,
            PocketBag::Plain => 4.4,
            PocketBag::Firm | PocketBag::Warm => 2.8,
        };
        sheet.stroke(Ink::ClothLight, 0.7, Pen::with(|pen| _ = pen.hatch(FRAME, pitch, 0.0)));
        sheet.stroke(Ink::Cloth, 2.4, Pen::with(|pen| _ = pen.line(20.0, -5.0, 20.0, 85.0)));
        if self == PocketBag::Slips {
            let gap = Pen::with(|pen| leaf(pen, (24.0, 12.0), (24.0, 70.0), 9.0));
            sheet.fill(Ink::Paper, gap.clone());
            sheet.stroke(Ink::Edge, 1.0, gap);
            let threads = Pen::with(|pen| {
                for step in 0..9 {
                    let y = 21.0 + 5.0 * f64::from(step);
                    pen.line(20.0, y, 29.0, y);
                }
            });
            sheet.stroke(Ink::ClothLight, 1.2, threads);
        }
        let bag = Pen::with(|pen| {
            pen.at(42.0, -5.0).to(42.0, 52.0).bend(44.0, 72.0, 76.0, 72.0).bend(108.0, 72.0, 110.0, 50.0).to(110.0, -5.0).close();
        });
        sheet.fill(if self == PocketBag::Warm { Ink::Tape } else { Ink::Weft }, bag.clone());
        let hand = match self {
            PocketBag::Slips => Some(Ink::ClothLight),
            PocketBag::Plain => Some(Ink::ClothPale),
            PocketBag::Firm | PocketBag::Warm => None,
        };
        if let Some(ink) = hand {
            let fingers = Pen::with(|pen| {
                for (x, tip) in [(58.0, 48.0), (70.0, 59.0), (82.0, 58.0), (94.0, 46.0)] {
                    pen.line(76.0 + (x - 76.0) * 0.86, -5.0, x, tip);
                }
            });
            sheet.stroke(ink, 9.0, fingers);
        }
        let face = Pen::with(|pen| {
            if self == PocketBag::Warm {
                for row in 0..8 {
                    for column in 0..8 {
                        let x = 48.0 + 8.0 * f64::from(column) + 4.0 * f64::from(row % 2);
                        let y = 3.0 + 8.0 * f64::from(row);
                        if x < 105.0 && (y < 54.0 || (54.0..98.0).contains(&x)) {
                            pen.at(x - 2.0, y).bend(x, y - 4.0, x + 2.0, y);
                        }
                    }
                }
            } else if self == PocketBag::Firm {
                pen.hatch(Area { x: 43.0, y: -5.0, width: 66.0, height: 58.0 }, 2.8, 0.0);
                pen.hatch(Area { x: 51.4, y: 53.0, width: 48.0, height: 15.0 }, 2.8, 0.0);
            }
        });
        sheet.stroke(Ink::ClothLight, if self == PocketBag::Warm { 1.2 } else { 0.6 }, face);
        sheet.stroke(Ink::Edge, 1.6, bag);
    }
}
