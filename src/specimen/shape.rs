//! Cut and balance: twist, pairs, bagging, matching.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp};
use super::words::Words;
use crate::{say, to_say};

/// The lower leg lying flat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LegTwist {
    /// Distance at the hem from the fold to the outseam in mm, 0 to 60.
    pub twist_mm: f64,
}

/// Back pockets and yoke ends about the centre seam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BackPockets {
    /// How much lower one pocket sits, in mm, 0 to 12.
    pub level_off_mm: f64,
    /// How much farther it sits from the centre seam, in mm, 0 to 12.
    pub centre_off_mm: f64,
    /// How far the yoke ends miss each other, in mm, 0 to 12.
    pub yoke_off_mm: f64,
}

/// Knee, seat and waistband after sitting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bagging {
    /// How far knee and seat stand out, in mm, 0 to 40.
    pub bag_mm: f64,
    /// How far the waistband gapes at the back, in mm, 0 to 50.
    pub gape_mm: f64,
}

/// A pattern running across a seam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Matching {
    /// How far the pattern misses at the seam, in mm, 0 to 12.
    pub miss_mm: f64,
    /// Whether the cloth has a pattern.
    pub pattern: bool,
    /// Whether one piece is made up of two.
    pub pieced: bool,
}

/// Both legs laid on the centre line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Symmetry {
    /// How much longer one leg is, in mm, 0 to 20; drawn twice as large as the rest.
    pub length_off_mm: f64,
    /// How much wider it is at the hem, in mm, 0 to 30.
    pub width_off_mm: f64,
}

impl LegTwist {
    /// Drawing units per mm: a hem of some 200 mm fills the frame.
    const MM: f64 = 0.45;

    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("a leg lying flat"));
        words.number(clamp(self.twist_mm, 0.0, 60.0), to_say!("{number} millimetres from the fold to the side seam at the hem"));
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let walked = clamp(self.twist_mm, 0.0, 60.0) * LegTwist::MM;
        sheet.area(Ink::Paper, FRAME);
        let (top, low, left, fold) = (-5.0, 64.0, 16.0, 106.0);
        let leg = [(left - 4.0, top), (fold + 2.0, top), (fold, low), (left, low)];
        sheet.fill(Ink::Cloth, Pen::with(|pen| _ = pen.outline(&leg)));
        sheet.twill(Ink::ClothDark, Area { x: left, y: 0.0, width: fold - left, height: low }, 4.0);
        sheet.stroke(Ink::Edge, 1.6, Pen::with(|pen| _ = pen.outline(&leg)));
        let hem = Track::level(left, fold, low - 9.0);
        let mut thread = Pen::new();
        Row::of(6.0).sew(&mut thread, &hem, 0.0, 1.0, hem.length());
        // The seam leaves the fold at the knee and walks round.
        let seam: Vec<(f64, f64)> = (0..=12)
            .map(|i| {
                let down = f64::from(i) / 12.0;
                (fold + 1.6 - down * 1.6 - walked * down.powf(1.35) - 1.2, top + (low - top) * down)
            })
            .collect();
        sheet.stroke(Ink::Shade, 3.4, Pen::with(|pen| _ = pen.points(&seam)));
        sheet.stroke(Ink::ClothPale, 1.3, Pen::with(|pen| _ = pen.points(&seam)));
        let track = Track::through(&seam);
        Row::of(6.0).sew(&mut thread, &track, 4.4, 0.0, track.length());
        sheet.stitches(1.9, thread);
        // A tape at the hem, from the fold to the seam.
        let (from, to) = (fold - walked, fold);
        sheet.area(Ink::Tape, Area { x: left, y: 68.0, width: fold - left + 10.0, height: 12.0 });
        let ticks = Pen::with(|pen| {
            for cm in 0..=20 {
                let x = fold - f64::from(cm) * 10.0 * LegTwist::MM;
                pen.line(x, 68.0, x, if cm % 5 == 0 { 75.0 } else { 71.6 });
            }
        });
        sheet.stroke(Ink::Edge, 0.9, ticks);
        sheet.stroke(Ink::Thread, 3.0, Pen::with(|pen| _ = pen.line(from, 77.0, to, 77.0)));
        sheet.stroke(Ink::Thread, 1.3, Pen::with(|pen| _ = pen.line(from, low, from, 79.0).line(to, low, to, 79.0)));
    }
}

impl BackPockets {
    /// Drawing units per mm: the frame shows some 80 mm about the centre seam.
    const MM: f64 = 1.5;

    pub(super) fn words(&self) -> String {
        let worst = self.worst();
        String::from(if worst < 1.0 {
            say!("back pockets level and equally far from the centre seam, yoke ends meet")
        } else if worst < 3.1 {
            say!("back pockets and yoke a trifle off")
        } else if worst < 6.1 {
            say!("back pockets and yoke off by some millimetres")
        } else {
            say!("back pockets and yoke plainly off")
        })
    }

    /// The worst of the three, in mm.
    pub(super) fn worst(&self) -> f64 {
        let held = |mm: f64| clamp(mm, 0.0, 12.0);
        held(self.level_off_mm).max(held(self.centre_off_mm)).max(held(self.yoke_off_mm))
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let off = |mm: f64| clamp(mm, 0.0, 12.0) * BackPockets::MM;
        let (level, centre, yoke) = (off(self.level_off_mm), off(self.centre_off_mm), off(self.yoke_off_mm));
        sheet.face();
        let mut thread = Pen::new();
        let mut sew = |points: &[(f64, f64)], side: f64| {
            let track = Track::through(points);
            Row::of(6.0).sew(&mut thread, &track, side, 0.0, track.length());
        };
        let (left_yoke, right_yoke) = ([(-5.0, 4.0), (60.0, 20.0)], [(60.0, 20.0 + yoke), (125.0, 4.0 + yoke)]);
        let seat = [(60.0, -5.0), (60.0, 85.0)];
        for line in [&left_yoke, &right_yoke] {
            sew(line, 3.4);
        }
        sew(&seat, -3.4);
        let (lx, ly) = (40.0, 38.0);
        let (rx, ry) = (80.0 + centre, 38.0 + level);
        let left = [(-6.0, ly), (lx, ly), (lx - 3.0, 86.0), (-6.0, 86.0)];
        let right = [(126.0, ry), (rx, ry), (rx + 3.0, 86.0), (126.0, 86.0)];
        sew(&[left[0], (lx - 4.0, ly)], 4.0);
        sew(&[right[0], (rx + 4.0, ry)], -4.0);
        sew(&left[1..3], 4.0);
        sew(&right[1..3], -4.0);
        let pockets = Pen::with(|pen| _ = pen.outline(&left).outline(&right));
        sheet.fill(Ink::ClothLight, pockets.clone());
        sheet.twill(Ink::Cloth, Area { x: 0.0, y: ly, width: 37.0, height: 42.0 }, 3.6);
        sheet.twill(Ink::Cloth, Area { x: rx + 3.0, y: ry, width: 117.0 - rx, height: 80.0 - ry }, 3.6);
        let seams = Pen::with(|pen| _ = pen.points(&left_yoke).points(&right_yoke).points(&seat));
        sheet.stroke(Ink::Shade, 2.0, seams);
        sheet.stroke(Ink::Shade, 1.6, pockets);
        sheet.stitches(1.8, thread);
        // A taut thread across shows the level; short marks show equal distance from the centre.
        sheet.dash(Ink::Tape, 1.5, 3.6, 2.4, Pen::with(|pen| _ = pen.line(-5.0, ly, 125.0, ly)));
        sheet.stroke(
            Ink::Tape,
            1.5,
            Pen::with(|pen| _ = pen.line(40.0, ly - 6.0, 40.0, ly + 6.0).line(80.0, ly - 6.0, 80.0, ly + 6.0)),
        );
    }
}

impl Bagging {
    pub(super) fn words(&self) -> String {
        let (bag, gape) = (clamp(self.bag_mm, 0.0, 40.0), clamp(self.gape_mm, 0.0, 50.0));
        let mut words = String::from(if bag > 20.0 {
            say!("knee and seat bag out")
        } else if bag > 8.0 {
            say!("knee and seat bag somewhat")
        } else if bag > 1.5 {
            say!("knee and seat bag slightly")
        } else {
            say!("knee and seat stay as they were")
        });
        if gape > 15.0 {
            words.push_str(", ");
            words.push_str(say!("waistband gapes at the back"));
        }
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let (bag, gape) = (clamp(self.bag_mm, 0.0, 40.0) * 0.45, clamp(self.gape_mm, 0.0, 50.0) * 0.36);
        sheet.area(Ink::Paper, FRAME);
        // From the side. Left, waist and seat with the back to the left; right, a knee with the front to the right.
        let shape = |pen: &mut Pen| {
            pen.at(57.0, 86.0).to(57.0, 7.0).to(35.0 - gape, 7.0).bend(31.0 - gape * 0.5, 20.0, 24.0 - bag * 0.3, 32.0);
            pen.bend(15.0 - bag * 0.9, 48.0 + bag * 0.4, 27.0 - bag * 0.5, 62.0 + bag * 0.2).bend(34.0, 70.0, 35.0, 86.0).close();
            pen.at(72.0, -6.0).to(99.0, -6.0).bend(99.0, 12.0, 101.0 + bag * 0.2, 22.0);
            pen.bend(104.0 + bag * 1.35, 40.0 + bag * 0.3, 98.5, 58.0).bend(97.0, 66.0, 97.0, 86.0).to(72.0, 86.0);
            pen.bend(72.0, 60.0, 75.0 + bag * 0.1, 44.0).bend(72.0, 20.0, 72.0, -6.0).close();
        };
        sheet.fill(Ink::Cloth, Pen::with(shape));
        sheet.stroke(Ink::Edge, 1.6, Pen::with(shape));
        if bag > 0.8 {
            // Slack shows as bows under seat and behind the knee.
            let slack = Pen::with(|pen| {
                for step in 0..(1.0 + bag / 4.0) as i32 {
                    let down = f64::from(step) * 5.0;
                    pen.at(26.0 - bag * 0.4, 56.0 + down).bend(36.0, 62.0 + down, 47.0, 52.0 + down);
                    pen.at(98.0 + bag * 0.3, 46.0 + down).bend(88.0, 52.0 + down, 79.0, 42.0 + down);
                }
            });
            sheet.stroke(Ink::ClothPale, 1.7, slack);
        }
        let band = Track::through(&[(34.0 - gape * 0.8, 15.0), (57.0, 15.0)]);
        sheet.stitches(1.8, Pen::with(|pen| _ = Row::of(5.4).sew(pen, &band, 0.0, 1.0, band.length())));
        // The body, dashed: what the cloth should follow.
        let body = Pen::with(|pen| {
            pen.at(36.0, 1.0).bend(32.0, 20.0, 24.5, 32.0).bend(17.0, 46.0, 28.0, 61.0).bend(34.0, 70.0, 35.5, 80.0);
            pen.at(98.5, 0.0).bend(98.5, 12.0, 100.0, 22.0).bend(103.0, 40.0, 98.0, 58.0).bend(96.5, 66.0, 96.5, 80.0);
        });
        sheet.dash(Ink::Thread, 1.6, 3.0, 2.4, body);
    }
}

impl Matching {
    /// Drawing units per mm.
    const MM: f64 = 2.0;

    pub(super) fn words(&self) -> String {
        let miss = clamp(self.miss_mm, 0.0, 12.0);
        let mut words = String::from(match miss {
            _ if !self.pattern => say!("plain cloth"),
            miss if miss < 0.5 => say!("stripes that meet at the seam"),
            miss if miss < 3.0 => say!("stripes that nearly meet at the seam"),
            _ => say!("stripes that miss each other at the seam"),
        });
        if self.pieced {
            words.push_str(", ");
            words.push_str(say!("one piece made up of two"));
        }
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let off = clamp(self.miss_mm, 0.0, 12.0) * Matching::MM;
        if self.pattern {
            self.stripes(sheet, off);
        } else {
            sheet.face();
        }
        if self.pieced {
            // The scrap lies another way of the cloth.
            sheet.fill(
                if self.pattern { Ink::ClothPale } else { Ink::Cloth },
                Pen::with(|pen| _ = pen.outline(&[(60.0, 34.0), (125.0, 22.0), (125.0, 86.0), (60.0, 86.0)])),
            );
            let across = Pen::with(|pen| _ = pen.hatch(Area { x: 60.0, y: 34.0, width: 60.0, height: 46.0 }, 3.6, -24.0));
            sheet.stroke(Ink::ClothLight, 1.0, across);
        }
        let seam = Pen::with(|pen| {
            pen.line(60.0, -5.0, 60.0, 85.0);
            if self.pieced {
                pen.line(60.0, 34.0, 125.0, 22.0);
            }
        });
        sheet.stroke(Ink::ClothLight, 3.6, seam.clone());
        sheet.stroke(Ink::Edge, 2.0, seam);
        let beside = Track::through(&[(66.0, -5.0), (66.0, 80.0)]);
        let mut thread = Pen::new();
        Row::of(7.6).sew(&mut thread, &beside, 0.0, 3.0, beside.length());
        if self.pieced {
            let join = Track::through(&[(60.0, 39.0), (120.0, 28.0)]);
            Row::of(7.6).sew(&mut thread, &join, 0.0, 8.0, join.length());
        }
        sheet.stitches(2.2, thread);
    }

    /// Stripes on both sides of the seam, those to the right lower by `off`.
    fn stripes(&self, sheet: &mut Sheet, off: f64) {
        sheet.area(Ink::ClothPale, FRAME);
        let repeat = 27.0;
        let (mut wide, mut thin) = (Pen::new(), Pen::new());
        for (x, to, shift) in [(0.0, 60.0, 0.0), (60.0, 120.0, off)] {
            for stripe in -1..4 {
                let y = 12.0 + f64::from(stripe) * repeat + shift;
                wide.rect(x, y - 4.0, to - x, 8.0);
                thin.rect(x, y + 10.0, to - x, 2.4);
            }
        }
        sheet.fill(Ink::Cloth, wide);
        sheet.fill(Ink::Thread, thin);
    }
}

impl Symmetry {
    pub(super) fn words(&self) -> String {
        let (long, wide) = (clamp(self.length_off_mm, 0.0, 20.0), clamp(self.width_off_mm, 0.0, 30.0));
        let mut words = Words::new();
        words.and_if(long < 1.0 && wide < 1.0, say!("both legs alike"));
        words.and_if(long >= 1.0, if long > 10.0 { say!("one leg plainly longer") } else { say!("one leg a little longer") });
        words.and_if(wide >= 1.0, if wide > 10.0 { say!("one leg plainly wider") } else { say!("one leg a little wider") });
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let (long, wide) = (clamp(self.length_off_mm, 0.0, 20.0) * 0.5, clamp(self.width_off_mm, 0.0, 30.0) * 0.4);
        sheet.area(Ink::Paper, FRAME);
        let leg = |way: f64, low: f64, wide: f64| {
            let at = |side: f64, y: f64| (60.0 + way * side, y);
            [at(0.0, 4.0), at(17.0, 4.0), at(22.0, 24.0), at(23.0 + wide, low), at(7.0 - wide * 0.3, low), at(0.0, 27.0)]
        };
        let (left, right) = (leg(-1.0, 67.0, 0.0), leg(1.0, 67.0 + long, wide));
        let both = Pen::with(|pen| _ = pen.outline(&left).outline(&right));
        sheet.fill(Ink::Cloth, both.clone());
        sheet.stroke(Ink::Edge, 1.5, both);
        sheet.stroke(Ink::ClothPale, 1.2, Pen::with(|pen| _ = pen.line(42.0, 9.5, 78.0, 9.5)));
        // The left leg mirrored over the right one; a level line at its hem.
        sheet.dash(Ink::ThreadLight, 1.6, 3.0, 2.2, Pen::with(|pen| _ = pen.outline(&leg(1.0, 67.0, 0.0))));
        sheet.dash(Ink::Thread, 1.2, 2.4, 2.4, Pen::with(|pen| _ = pen.line(24.0, 67.0, 96.0, 67.0)));
        sheet.dash(Ink::Edge, 1.0, 2.0, 2.0, Pen::with(|pen| _ = pen.line(60.0, 28.0, 60.0, 78.0)));
    }
}
