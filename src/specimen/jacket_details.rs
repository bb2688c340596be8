//! Small things of a tailored jacket: pocket, buttonhole, button, cuff, and a handful of its cloth.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track, fringe};
use crate::say;

/// A pocket with two narrow strips of cloth for lips, and a flap.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JetPocket {
    /// A corner gapes and frays.
    Gaping,
    /// Lips of uneven width, the flap askew.
    Uneven,
    /// Lips true, corners square.
    True,
    /// Lips thin and true, the flap flat and finely stitched.
    Fine,
}

/// A buttonhole whose every stitch is knotted into a raised edge, as by hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PurledHole;

/// A sewn button in section.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SewnButton {
    /// Hanging on slack thread.
    Loose,
    /// Sewn flat on the cloth.
    Flat,
    /// Standing on a wrapped neck of thread.
    Necked,
    /// The same, of grained material, with a spare one.
    NeckedSpare,
}

/// The end of a sleeve with its buttons.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CuffVent {
    /// Whether it opens.
    pub opens: bool,
}

/// Cloth after a handful of it was crushed and let go.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Crushed {
    /// Creases that stay, 0 to 12.
    pub creases: u8,
    /// Whether they are sharp.
    pub sharp: bool,
}

impl JetPocket {
    pub(super) fn words(self) -> String {
        String::from(match self {
            JetPocket::Gaping => say!("a pocket whose corner gapes and frays"),
            JetPocket::Uneven => say!("a pocket with lips of uneven width, its flap askew"),
            JetPocket::True => say!("a pocket with even lips and square corners"),
            JetPocket::Fine => say!("a pocket with thin even lips, its flap flat and finely stitched"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::Cloth, FRAME);
        let (left, right, mid) = (18.0, 102.0, 32.0);
        let lip = if self == JetPocket::Fine { 3.6 } else { 5.6 };
        // Left and right height of both lips; left and right foot of the flap.
        let (upper, lower, foot) = match self {
            JetPocket::Uneven => ((8.2, 4.0), (3.8, 8.0), (58.0, 66.0)),
            _ => ((lip, lip), (lip, lip), (62.0, 62.0)),
        };
        let flap = Pen::with(|pen| {
            pen.at(left, mid).to(right, mid).to(right, foot.1 - 5.0).bend(right, foot.1, right - 6.0, foot.1);
            if self == JetPocket::True {
                pen.bend(60.0, foot.0 - 5.0, left + 6.0, foot.0);
            } else {
                pen.to(left + 6.0, foot.0);
            }
            pen.bend(left, foot.0, left, foot.0 - 5.0).close();
        });
        sheet.fill(Ink::ClothLight, flap.clone());
        sheet.stroke(Ink::Edge, 1.6, flap);
        let top = [(left, mid - upper.0), (right, mid - upper.1), (right, mid), (left, mid)];
        let low = [(left, mid), (right, mid), (right, mid + lower.1), (left, mid + lower.0)];
        for strip in [&top, &low] {
            sheet.fill(Ink::ClothPale, Pen::with(|pen| _ = pen.outline(strip)));
            sheet.stroke(Ink::Edge, 1.3, Pen::with(|pen| _ = pen.outline(strip)));
        }
        if self == JetPocket::Gaping {
            let hole = [(left - 3.0, mid - 7.0), (left + 12.0, mid - 3.0), (left + 14.0, mid + 3.0), (left - 2.0, mid + 8.0)];
            sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.outline(&hole)));
            let rim = Track::through(&[hole[0], (left - 8.0, mid), hole[3]]);
            sheet.stroke(Ink::Weft, 1.4, Pen::with(|pen| fringe(pen, &rim, 0.0, -11.0, 2.6, chance)));
            let torn = Track::through(&[hole[1], hole[2]]);
            sheet.stroke(Ink::Weft, 1.4, Pen::with(|pen| fringe(pen, &torn, 0.0, -8.0, 1.8, chance)));
        }
        if self == JetPocket::Fine {
            let mut prick = Pen::new();
            let line =
                [(left + 3.0, mid + 6.0), (left + 3.0, foot.0 - 5.0), (left + 8.0, foot.0 - 3.0), (right - 8.0, foot.0 - 3.0)];
            let mut whole = line.to_vec();
            whole.extend([(right - 3.0, foot.0 - 5.0), (right - 3.0, mid + 6.0)]);
            let track = Track::through(&whole);
            Row { stitch: 4.0, dip: 0.62 }.sew(&mut prick, &track, 0.0, 0.0, track.length());
            sheet.stroke(Ink::ClothPale, 1.2, prick);
        }
    }
}

impl PurledHole {
    pub(super) fn words(self) -> String {
        String::from(say!("a buttonhole with a round eye, every stitch knotted into a raised edge"))
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Cloth, FRAME);
        let mut rim = vec![(22.0, 43.0), (82.0, 42.0)];
        rim.extend((0..=14).map(|step| {
            let turn = -2.75 + f64::from(step) * 5.5 / 14.0;
            (92.0 + 7.0 * turn.cos(), 44.0 + 7.0 * turn.sin())
        }));
        rim.extend([(82.0, 46.0), (22.0, 45.0)]);
        let track = Track::through(&rim);
        let (mut thread, mut knots) = (Pen::new(), Pen::new());
        let mut at = 0.0;
        while at < track.length() {
            let spot = track.spot(at);
            let (near, far) = (spot.beside(-2.0, 0.0), spot.beside(-10.0, 0.0));
            thread.line(near.0, near.1, far.0, far.1);
            knots.line(near.0, near.1, near.0 + 0.1, near.1);
            at += 3.5;
        }
        sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.outline(&rim)));
        sheet.stitches(1.7, thread);
        sheet.stroke(Ink::Edge, 4.4, knots.clone());
        sheet.stroke(Ink::ThreadLight, 3.0, knots);
        let bar = Pen::with(|pen| {
            for x in [17.0, 19.0] {
                pen.line(x, 35.0, x, 53.0);
            }
        });
        sheet.stitches(1.8, bar);
    }
}

impl SewnButton {
    pub(super) fn words(self) -> String {
        String::from(match self {
            SewnButton::Loose => say!("a button in section, tipping on slack thread"),
            SewnButton::Flat => say!("a button in section, sewn flat on the cloth"),
            SewnButton::Necked => say!("a button in section, on a wrapped neck of thread"),
            SewnButton::NeckedSpare => say!("a button in section, grained, on a wrapped neck, a spare one beside it"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let neck = match self {
            SewnButton::Loose => 16.0,
            SewnButton::Flat => 1.0,
            SewnButton::Necked | SewnButton::NeckedSpare => 11.0,
        };
        let (cloth, tilt) = (62.0, if self == SewnButton::Loose { 9.0 } else { 0.0 });
        let low = cloth - 4.0 - neck;
        sheet.ply(Ink::Cloth, 8.0, Pen::with(|pen| _ = pen.line(-6.0, cloth, 126.0, cloth)));
        let button = [(20.0, low - 9.0 + tilt), (24.0, low + tilt), (76.0, low - tilt), (80.0, low - 9.0 - tilt)];
        let threads = Pen::with(|pen| {
            for x in [44.0, 50.0, 56.0] {
                let lean = tilt * (50.0 - x) / 30.0;
                if self == SewnButton::Loose {
                    pen.at(x, low - 11.0 + lean).bend(x + 6.0, cloth - 12.0, x, cloth + 4.0);
                } else {
                    pen.line(x, low - 11.0, 47.0 + (x - 44.0) * 0.5, cloth + 4.0);
                }
            }
        });
        sheet.stroke(Ink::Edge, 3.4, threads.clone());
        sheet.stroke(Ink::Thread, 2.2, threads);
        let disc = Pen::with(|pen| _ = pen.outline(&button));
        let natural = self == SewnButton::NeckedSpare;
        sheet.fill(if natural { Ink::Thread } else { Ink::Metal }, disc.clone());
        sheet.stroke(Ink::Edge, 1.5, disc);
        if matches!(self, SewnButton::Necked | SewnButton::NeckedSpare) {
            let wraps = Pen::with(|pen| {
                for wrap in 0..4 {
                    let y = low + 1.6 + f64::from(wrap) * 2.7;
                    pen.line(44.0, y + 0.8, 56.0, y - 0.8);
                }
            });
            sheet.stroke(Ink::Edge, 3.2, wraps.clone());
            sheet.stroke(Ink::Thread, 2.2, wraps);
        }
        if natural {
            let grain = Pen::with(|pen| {
                pen.at(28.0, low - 6.0).bend(50.0, low - 2.0, 74.0, low - 6.0);
            });
            sheet.stroke(Ink::Edge, 1.0, grain);
            sheet.fill(Ink::Thread, Pen::with(|pen| _ = pen.circle(101.0, 32.0, 14.0)));
            sheet.stroke(Ink::Edge, 1.5, Pen::with(|pen| _ = pen.circle(101.0, 32.0, 14.0)));
            let holes = Pen::with(|pen| {
                for (x, y) in [(97.0, 28.0), (105.0, 28.0), (97.0, 36.0), (105.0, 36.0)] {
                    pen.circle(x, y, 1.9);
                }
            });
            sheet.fill(Ink::Edge, holes);
        }
    }
}

impl CuffVent {
    pub(super) fn words(self) -> String {
        String::from(if self.opens {
            say!("a sleeve end with cut buttonholes, its lowest button open")
        } else {
            say!("a sleeve end with buttons sewn on through both layers")
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let sleeve = Pen::with(|pen| _ = pen.outline(&[(10.0, -6.0), (100.0, -6.0), (96.0, 70.0), (14.0, 70.0)]));
        sheet.fill(Ink::Cloth, sleeve.clone());
        sheet.stroke(Ink::Edge, 1.5, sleeve);
        if self.opens {
            // The upper layer turned back over the lower.
            let under = [(84.0, 30.0), (112.0, 44.0), (110.0, 74.0), (82.0, 70.0)];
            sheet.fill(Ink::ClothLight, Pen::with(|pen| _ = pen.outline(&under)));
            sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.outline(&under)));
            let turned = [(82.0, 32.0), (82.0, 70.0), (58.0, 66.0)];
            sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.outline(&turned)));
            sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.outline(&turned)));
            let holes = Pen::with(|pen| {
                for y in [4.0, 18.0] {
                    pen.line(60.0, y, 76.0, y);
                }
                pen.line(70.0, 60.0, 79.0, 52.0);
            });
            sheet.stroke(Ink::ThreadLight, 4.0, holes.clone());
            sheet.stroke(Ink::Edge, 1.4, holes);
        } else {
            sheet.stroke(Ink::ClothDark, 1.8, Pen::with(|pen| _ = pen.line(84.0, -6.0, 82.0, 70.0)));
        }
        let spots: [(f64, f64); 4] = if self.opens {
            [(76.0, 4.0), (76.0, 18.0), (96.0, 48.0), (96.0, 62.0)]
        } else {
            [(74.0, 6.0), (74.0, 22.0), (74.0, 38.0), (74.0, 54.0)]
        };
        let buttons = Pen::with(|pen| spots.iter().for_each(|&(x, y)| _ = pen.circle(x, y, 6.2)));
        sheet.fill(Ink::Metal, buttons.clone());
        sheet.stroke(Ink::Edge, 1.4, buttons);
        let holes = Pen::with(|pen| {
            for (x, y) in spots {
                pen.line(x - 1.8, y, x - 1.7, y).line(x + 1.8, y, x + 1.9, y);
            }
        });
        sheet.stroke(Ink::Edge, 1.8, holes);
    }
}

impl Crushed {
    pub(super) fn words(self) -> String {
        String::from(match (self.creases.min(12), self.sharp) {
            (0, _) => say!("cloth smooth again after it was crushed"),
            (_, true) => say!("cloth full of sharp creases after it was crushed"),
            (1..=3, false) => say!("cloth with a few soft creases after it was crushed"),
            (_, false) => say!("cloth with many soft creases after it was crushed"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        let count = self.creases.min(12);
        let (mut dark, mut light) = (Pen::new(), Pen::new());
        for crease in 0..count {
            // They run out from where the hand held the cloth.
            let turn = f64::from(crease) * std::f64::consts::TAU / f64::from(count) + chance.about(0.3);
            let (inner, outer) = (chance.between(3.0, 9.0), chance.between(24.0, 40.0));
            let at = |far: f64, turn: f64| (60.0 + far * 1.3 * turn.cos(), 40.0 + far * turn.sin());
            let bend = chance.about(0.5);
            for (pen, off) in [(&mut dark, 0.0), (&mut light, 2.0)] {
                let (a, b, c) = (at(inner, turn), at((inner + outer) / 2.0, turn + bend), at(outer, turn));
                if self.sharp {
                    pen.at(a.0, a.1 + off).to(b.0, b.1 + off).to(c.0, c.1 + off);
                } else {
                    pen.at(a.0, a.1 + off).bend(b.0, b.1 + off, c.0, c.1 + off);
                }
            }
        }
        sheet.stroke(Ink::ClothPale, if self.sharp { 1.8 } else { 2.6 }, light);
        sheet.stroke(if self.sharp { Ink::Edge } else { Ink::ClothDark }, if self.sharp { 2.2 } else { 3.0 }, dark);
        if count == 0 {
            let drape = Pen::with(|pen| {
                pen.at(-6.0, 62.0).bend(60.0, 44.0, 126.0, 66.0);
            });
            sheet.stroke(Ink::ClothLight, 3.0, drape);
        }
    }
}
