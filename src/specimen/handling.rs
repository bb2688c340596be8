//! What the hands do at the bench: a ruler laid on, fingertips set, a pair hung up, marks before and after a wash.

use super::chance::Chance;
use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp};
use super::pucker::Pucker;
use super::words::Words;
use crate::{say, to_say};

/// A ruler along a row of stitches, its zero on a needle hole, eight centimetres marked for counting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RulerOnSeam {
    /// Stitches per inch, 3 to 12.
    pub stitches_per_inch: f64,
}

/// A row of stitches laid along the edge of a screen, its needle holes marked there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HolesMarked {
    /// By a comb whose bars meet the holes; otherwise by taps of a finger.
    pub comb: bool,
}

/// A pair hung on a luggage scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Hung;

/// A counting window of one centimetre on a plain weave, and a needle that points at the yarns.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Window {
    /// Warp yarns inside, 4 to 20.
    pub ends: u8,
    /// Weft yarns inside, 4 to 20.
    pub picks: u8,
}

/// Two fingertips on cloth, ten centimetres apart at rest, against a ruler.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fingertips {
    /// How far they are pulled apart beyond that, in cm, 0 (at rest) to 3.
    pub give_cm: f64,
}

/// A strip of cloth before and after a wash, with the same two marks on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WashMarks {
    /// How much shorter it became, in percent, 0 to 15.
    pub shorter_percent: f64,
}

/// A seam under a lamp that shines along the cloth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SideLight {
    /// Height of the ripples in mm, 0 to 3.
    pub height_mm: f64,
}

/// A fingertip in a white tissue that rubs the cloth to and fro.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rubbing;

/// A fingertip that comes down from above and touches at a place: an outline, of no skin in particular.
fn fingertip(sheet: &mut Sheet, (x, y): (f64, f64), lean: f64) {
    let finger = Pen::with(|pen| _ = pen.at(x + lean, y - 54.0).bend(x + lean * 0.2, y - 30.0, x, y - 8.0));
    sheet.ply(Ink::Paper, 17.0, finger);
    // The nail ends short of the tip; a bend of the joint lies above it.
    let nail = Pen::with(|pen| {
        pen.at(x - 4.6, y - 11.6).to(x - 4.6, y - 6.6).bend(x - 4.4, y - 2.2, x, y - 2.2).bend(
            x + 4.4,
            y - 2.2,
            x + 4.6,
            y - 6.6,
        );
        pen.to(x + 4.6, y - 11.6).bend(x, y - 15.4, x - 4.6, y - 11.6).close();
    });
    sheet.fill(Ink::Weft, nail.clone());
    sheet.stroke(Ink::Edge, 0.9, nail);
    let (bx, by) = (x + lean * 0.2, y - 23.0);
    sheet.stroke(Ink::Edge, 0.8, Pen::with(|pen| _ = pen.at(bx - 4.0, by).bend(bx, by + 2.0, bx + 4.0, by)));
}

/// A ruler with a tick each cm from `zero` on, `cm` units apart; the upper edge lies at `y`.
fn ruler(sheet: &mut Sheet, y: f64, height: f64, zero: f64, cm: f64) {
    sheet.area(Ink::Tape, Area { x: -5.0, y, width: 130.0, height });
    let ticks = Pen::with(|pen| {
        let mut x = zero;
        let mut count = 0;
        while x < Drawing::WIDTH {
            pen.line(x, y, x, y + height * if count % 5 == 0 { 0.62 } else { 0.36 });
            x += cm;
            count += 1;
        }
    });
    sheet.stroke(Ink::Edge, 1.1, ticks);
}

/// A line of measure with ticks at its ends, level, in the colour of what is yours.
fn span(sheet: &mut Sheet, from: f64, to: f64, y: f64, halo: Ink, ink: Ink) {
    let line = Pen::with(|pen| {
        pen.line(from, y, to, y).line(from, y - 4.0, from, y + 4.0).line(to, y - 4.0, to, y + 4.0);
    });
    sheet.stroke(halo, 4.0, line.clone());
    sheet.stroke(ink, 2.0, line);
}

impl RulerOnSeam {
    /// Drawing units per mm: eight centimetres and a little more fit the frame.
    pub(super) const MM: f64 = 1.25;
    /// Where the zero lies.
    const ZERO: f64 = 10.0;

    pub(super) fn per_inch(self) -> f64 {
        clamp(self.stitches_per_inch, 3.0, 12.0)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("a ruler along a row of stitches, its zero on a needle hole, eight centimetres marked"));
        words.number(self.per_inch(), to_say!("{number} stitches per inch"));
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.face();
        let (stitch, row) = (25.4 / self.per_inch() * RulerOnSeam::MM, 35.0);
        let end = RulerOnSeam::ZERO + 80.0 * RulerOnSeam::MM;
        super::stitching::ridge(sheet, &[(-5.0, 28.0), (125.0, 28.0)]);
        // A stitch begins half its gap after its hole, so that the hole lies in the gap.
        let first = RulerOnSeam::ZERO - (RulerOnSeam::ZERO / stitch).ceil() * stitch;
        let track = Track::level(first, 125.0, row);
        let dip = Row::of(stitch).dip * stitch / 2.0;
        sheet.stitches(1.9, Pen::with(|pen| _ = Row::of(stitch).sew(pen, &track, 0.0, dip, track.length())));
        ruler(sheet, 46.0, 26.0, RulerOnSeam::ZERO, 10.0 * RulerOnSeam::MM);
        span(sheet, RulerOnSeam::ZERO, end, 16.0, Ink::Shade, Ink::ThreadLight);
        let guides = Pen::with(|pen| _ = pen.line(RulerOnSeam::ZERO, 20.0, RulerOnSeam::ZERO, 46.0).line(end, 20.0, end, 46.0));
        sheet.dash(Ink::ThreadLight, 1.1, 1.6, 2.2, guides);
        sheet.stroke(Ink::Edge, 2.6, Pen::with(|pen| _ = pen.line(RulerOnSeam::ZERO, row, RulerOnSeam::ZERO, row)));
    }
}

impl HolesMarked {
    /// Where the first hole lies, and from hole to hole.
    const FIRST: f64 = 16.0;
    const STITCH: f64 = 11.0;

    pub(super) fn words(self) -> String {
        String::from(if self.comb {
            say!("a row of stitches along a screen, a bar of a comb at each needle hole")
        } else {
            say!("a row of stitches along a screen, a dot at each needle hole that a finger has tapped")
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        let (row, screen, stitch) = (36.0, 46.0, HolesMarked::STITCH);
        sheet.face();
        let dip = Row::of(stitch).dip * stitch / 2.0;
        let track = Track::level(HolesMarked::FIRST - 2.0 * stitch, 126.0, row);
        sheet.stitches(2.2, Pen::with(|pen| _ = Row::of(stitch).sew(pen, &track, 0.0, dip, track.length())));
        sheet.area(Ink::Paper, Area { x: -5.0, y: screen, width: 130.0, height: 40.0 });
        sheet.stroke(Ink::Edge, 2.0, Pen::with(|pen| _ = pen.line(-5.0, screen, 125.0, screen)));
        let holes = |count: u8| (0..count).map(|hole| HolesMarked::FIRST + f64::from(hole) * stitch);
        if self.comb {
            let bars = Pen::with(|pen| {
                for x in holes(9) {
                    pen.line(x, row + 5.0, x, 64.0);
                }
                pen.line(HolesMarked::FIRST, 64.0, HolesMarked::FIRST + 8.0 * stitch, 64.0);
            });
            sheet.stroke(Ink::Paper, 3.4, bars.clone());
            sheet.stroke(Ink::Thread, 1.6, bars);
            let ends = Pen::with(|pen| {
                pen.circle(HolesMarked::FIRST, 69.0, 5.0).circle(HolesMarked::FIRST + 8.0 * stitch, 69.0, 5.0);
            });
            sheet.fill(Ink::Thread, ends);
        } else {
            let leads = Pen::with(|pen| holes(7).for_each(|x| _ = pen.line(x, row + 4.0, x, 54.0)));
            sheet.dash(Ink::Thread, 1.1, 1.4, 2.0, leads);
            let dots = Pen::with(|pen| holes(7).for_each(|x| _ = pen.line(x, 59.0, x, 59.0)));
            sheet.stroke(Ink::Thread, 5.6, dots);
            fingertip(sheet, (HolesMarked::FIRST + 7.0 * stitch, row + 4.0), 10.0);
        }
    }
}

impl Hung {
    pub(super) fn words(self) -> String {
        String::from(say!("a pair of jeans hung by its belt loops from the hook of a luggage scale"))
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        // The pair, folded once along its middle, hangs down out of the frame.
        let pair = |pen: &mut Pen| {
            pen.at(44.0, 47.0).to(76.0, 47.0).bend(82.0, 62.0, 82.0, 85.0).to(42.0, 85.0).bend(44.0, 62.0, 44.0, 47.0).close();
        };
        sheet.fill(Ink::Cloth, Pen::with(pair));
        sheet.stroke(Ink::Edge, 1.4, Pen::with(pair));
        let pocket = |pen: &mut Pen| {
            _ = pen.outline(&[(52.0, 62.0), (70.0, 62.0), (71.0, 78.0), (61.5, 83.0), (52.0, 78.0)]);
        };
        let seams = Pen::with(|pen| {
            pen.line(44.0, 54.5, 78.6, 54.5);
            pocket(pen);
        });
        sheet.stroke(Ink::ClothPale, 1.1, seams);
        let loops =
            Pen::with(|pen| _ = pen.at(53.0, 55.0).bend(53.0, 42.0, 60.0, 39.6).at(67.0, 55.0).bend(67.0, 42.0, 60.0, 39.6));
        sheet.stroke(Ink::Edge, 4.6, loops.clone());
        sheet.stroke(Ink::ClothLight, 2.8, loops);
        let hook = Pen::with(|pen| {
            pen.at(60.0, 25.0).to(60.0, 29.0).bend(66.5, 30.0, 66.5, 35.5).bend(66.5, 41.6, 60.0, 41.6);
            pen.bend(54.2, 41.6, 53.6, 36.4);
        });
        sheet.stroke(Ink::Edge, 4.4, hook.clone());
        sheet.stroke(Ink::Metal, 2.6, hook);
        // The scale: a strap to hold, a body, a dial with its pointer.
        sheet.stroke(Ink::Edge, 3.2, Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 3.0)));
        let body = Pen::with(|pen| _ = pen.circle(60.0, 14.0, 12.0));
        sheet.fill(Ink::Tape, body.clone());
        sheet.stroke(Ink::Edge, 1.6, body);
        let dial = Pen::with(|pen| {
            for step in 0..9 {
                let (sin, cos) = (-2.2 + f64::from(step) * 0.55).sin_cos();
                pen.line(60.0 + 9.6 * sin, 14.0 - 9.6 * cos, 60.0 + 7.4 * sin, 14.0 - 7.4 * cos);
            }
        });
        sheet.stroke(Ink::Edge, 1.0, dial);
        sheet.stroke(Ink::Thread, 1.8, Pen::with(|pen| _ = pen.line(60.0, 14.0, 64.6, 8.8)));
    }
}

impl Window {
    /// Drawing units per cm of cloth: the side of the window.
    pub(super) const SIDE: f64 = 56.0;
    const LEFT: f64 = 22.0;
    const TOP: f64 = 12.0;

    pub(super) fn counts(self) -> (f64, f64) {
        (f64::from(self.ends.clamp(4, 20)), f64::from(self.picks.clamp(4, 20)))
    }

    pub(super) fn words(self) -> String {
        let (ends, picks) = self.counts();
        let mut words = Words::new();
        words.and(say!("a window of one centimetre on cloth, a needle pointing at its yarns"));
        words.number(ends, to_say!("{number} yarns along"));
        words.number(picks, to_say!("{number} across"));
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        let (ends, picks) = self.counts();
        let (across, down) = (Window::SIDE / ends, Window::SIDE / picks);
        let (left, top, side) = (Window::LEFT, Window::TOP, Window::SIDE);
        sheet.area(Ink::Shade, Area { x: left, y: top, width: side, height: side });
        let (mut warp, mut weft, mut over) = (Pen::new(), Pen::new(), Pen::new());
        for pick in 0..picks as u32 {
            let y = top + down * (f64::from(pick) + 0.5);
            weft.line(left, y, left + side, y);
        }
        for end in 0..ends as u32 {
            let x = left + across * (f64::from(end) + 0.5);
            warp.line(x, top, x, top + side);
            // Plain weave: each weft yarn lies over every other warp yarn.
            for pick in (0..picks as u32).filter(|pick| (pick + end) % 2 == 0) {
                let y = top + down * (f64::from(pick) + 0.5);
                over.line(x - across * 0.28, y, x + across * 0.28, y);
            }
        }
        sheet.stroke(Ink::Weft, down * 0.72, weft);
        sheet.stroke(Ink::Cloth, across * 0.66, warp);
        sheet.stroke(Ink::Weft, down * 0.6, over);
        // Around it the card with the window in it; drawn as four bars, so that the cloth stays open.
        let card = Pen::with(|pen| {
            pen.rect(-5.0, -5.0, 130.0, top + 5.0).rect(-5.0, top + side, 130.0, 90.0 - top - side);
            pen.rect(-5.0, top - 0.4, left + 5.0, side + 0.8).rect(left + side, top - 0.4, 125.0 - left - side, side + 0.8);
        });
        sheet.fill(Ink::Tape, card);
        sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.rect(left, top, side, side)));
        let ticks = Pen::with(|pen| {
            for mm in 0..=10 {
                let on = f64::from(mm) * side / 10.0;
                let reach = if mm % 5 == 0 { 5.0 } else { 3.0 };
                pen.line(left + on, top - reach - 1.4, left + on, top - 1.4);
            }
        });
        sheet.stroke(Ink::Edge, 1.0, ticks);
        // The needle lies over the card; its point is on the third yarn from the right.
        let point = (left + side - across * 2.5, top + side * 0.56);
        let needle = Pen::with(|pen| _ = pen.outline(&[point, (118.0, 69.2), (125.0, 74.0), (123.0, 79.0), (115.6, 72.4)]));
        sheet.stroke(Ink::Edge, 2.0, needle.clone());
        sheet.fill(Ink::Paper, needle);
    }
}

impl Fingertips {
    /// Drawing units per cm: ten at rest and three more fit the frame.
    pub(super) const CM: f64 = 7.6;
    const FROM: f64 = 11.0;

    pub(super) fn give(self) -> f64 {
        clamp(self.give_cm, 0.0, 3.0)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("two fingertips on cloth against a ruler, ten centimetres apart at rest"));
        if self.give() > 0.0 {
            words.number(self.give(), to_say!("{number} centimetres more when pulled"));
        }
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        let give = self.give() * Fingertips::CM;
        let (from, rest) = (Fingertips::FROM, Fingertips::FROM + 10.0 * Fingertips::CM);
        sheet.area(Ink::Paper, FRAME);
        let cloth = Area { x: -5.0, y: 20.0, width: 130.0, height: 34.0 };
        sheet.area(Ink::Cloth, cloth);
        sheet.twill(Ink::ClothDark, Area { x: 0.0, width: 120.0, ..cloth }, 3.8 + give * 0.02);
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(-5.0, 20.0, 125.0, 20.0)));
        ruler(sheet, 54.0, 14.0, from, Fingertips::CM);
        fingertip(sheet, (from, 49.0), -4.0);
        fingertip(sheet, (rest + give, 49.0), 4.0);
        let marks = Pen::with(|pen| _ = pen.line(from, 51.0, from, 62.0).line(rest + give, 51.0, rest + give, 62.0));
        sheet.stroke(Ink::Thread, 1.6, marks);
        if give > 0.0 {
            let (y, head) = (33.0, 3.6);
            let arrow = Pen::with(|pen| {
                pen.line(rest - 26.0, y, rest - 10.0, y).at(rest - 10.0 - head, y - head).to(rest - 10.0, y);
                pen.to(rest - 10.0 - head, y + head);
            });
            sheet.stitches(2.0, arrow);
            sheet.dash(Ink::Thread, 1.2, 2.2, 2.4, Pen::with(|pen| _ = pen.line(rest, 56.0, rest, 79.0)));
            sheet.stroke(Ink::Thread, 3.0, Pen::with(|pen| _ = pen.line(rest + 1.5, 74.0, rest + give - 1.5, 74.0)));
        } else {
            span(sheet, from, rest, 74.0, Ink::Paper, Ink::Thread);
        }
    }
}

impl WashMarks {
    const FROM: f64 = 14.0;
    /// Drawing units between the marks before the wash.
    pub(super) const APART: f64 = 92.0;

    pub(super) fn shorter(self) -> f64 {
        clamp(self.shorter_percent, 0.0, 15.0)
    }

    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("a strip of cloth before and after a wash, two marks on it"));
        words.number(self.shorter(), to_say!("{number} percent closer together after it"));
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        let (from, before) = (WashMarks::FROM, WashMarks::FROM + WashMarks::APART);
        let after = from + WashMarks::APART * (1.0 - self.shorter() / 100.0);
        sheet.area(Ink::Paper, FRAME);
        for (y, end, ink, twill) in [(6.0, before, Ink::Cloth, Ink::ClothDark), (43.0, after, Ink::ClothLight, Ink::Cloth)] {
            let strip = Area { x: -5.0, y, width: end + 13.0, height: 24.0 };
            sheet.area(ink, strip);
            sheet.twill(twill, Area { x: 0.0, width: end + 8.0, ..strip }, 3.8);
            let marks = Pen::with(|pen| {
                for x in [from, end] {
                    pen.line(x - 3.2, y + 12.0, x + 3.2, y + 12.0).line(x, y + 8.8, x, y + 15.2);
                }
            });
            sheet.stroke(Ink::Shade, 4.0, marks.clone());
            sheet.stroke(Ink::Paper, 2.2, marks);
        }
        // From before to after: water between the strips.
        let wave = |y: f64| -> Vec<(f64, f64)> {
            (0..=8).map(|i| (46.0 + f64::from(i) * 3.6, y + if i % 2 == 0 { 1.5 } else { -1.5 })).collect()
        };
        sheet.stroke(Ink::Stain, 1.2, Pen::with(|pen| _ = pen.smooth(&wave(35.0)).smooth(&wave(38.6))));
        sheet.dash(Ink::Thread, 1.2, 2.2, 2.4, Pen::with(|pen| _ = pen.line(before, 30.0, before, 78.0)));
        if before - after > 1.0 {
            span(sheet, after, before, 73.5, Ink::Paper, Ink::Thread);
        }
    }
}

impl SideLight {
    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("a lamp that shines along the cloth"));
        words.and(&Pucker { height_mm: self.height_mm, length_mm: 7.5 }.words());
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        Pucker { height_mm: self.height_mm, length_mm: 9.0 }.draw(sheet, chance);
        // The lamp is at the left edge, low, and throws its light along the cloth.
        let rays = Pen::with(|pen| {
            pen.line(24.0, 14.0, 106.0, 10.0).line(24.0, 18.5, 92.0, 24.0).line(22.0, 23.0, 60.0, 33.0);
        });
        sheet.dash(Ink::Tape, 1.6, 5.0, 4.0, rays);
        let shade =
            Pen::with(|pen| _ = pen.outline(&[(-5.0, 8.0), (6.0, 9.0), (20.0, 5.0), (16.0, 27.0), (3.0, 20.0), (-5.0, 19.0)]));
        sheet.fill(Ink::Metal, shade.clone());
        sheet.stroke(Ink::Edge, 1.4, shade);
        let glow = Pen::with(|pen| super::pen::leaf(pen, (20.0, 5.0), (16.0, 27.0), 7.0));
        sheet.fill(Ink::Tape, glow.clone());
        sheet.stroke(Ink::Edge, 1.0, glow);
    }
}

impl Rubbing {
    pub(super) fn words(self) -> String {
        String::from(say!("a fingertip in a white tissue that rubs the cloth to and fro"))
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        // The tissue lies between fingertip and cloth; what came off shows round the tip.
        let tissue =
            [(22.0, 26.0), (60.0, 21.0), (99.0, 27.0), (97.0, 46.0), (101.0, 63.0), (58.0, 66.0), (20.0, 62.0), (24.0, 44.0)];
        sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&tissue)));
        sheet.stroke(Ink::Shade, 1.2, Pen::with(|pen| _ = pen.outline(&tissue)));
        let folds = Pen::with(|pen| {
            pen.at(22.0, 26.0).bend(36.0, 32.0, 32.0, 42.0).at(99.0, 27.0).bend(86.0, 32.0, 89.0, 42.0);
            pen.at(58.0, 66.0).bend(66.0, 60.0, 80.0, 62.0);
        });
        sheet.stroke(Ink::ClothPale, 1.0, folds);
        let colour = Pen::with(|pen| {
            for line in 0..7 {
                let (y, half) = (45.0 + f64::from(line) * 2.0, 22.0 - f64::from((line - 3_i32).abs()) * 2.6);
                pen.line(60.0 - half + chance.about(2.0), y, 60.0 + half + chance.about(2.0), y);
            }
        });
        sheet.stroke(Ink::Stain, 1.3, colour);
        fingertip(sheet, (60.0, 57.0), 9.0);
        let (y, head) = (73.0, 3.4);
        let arrow = Pen::with(|pen| {
            pen.line(32.0, y, 88.0, y).at(32.0 + head, y - head).to(32.0, y).to(32.0 + head, y + head);
            pen.at(88.0 - head, y - head).to(88.0, y).to(88.0 - head, y + head);
        });
        sheet.stitches(2.0, arrow);
    }
}
