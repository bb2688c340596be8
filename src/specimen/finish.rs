//! What was done to the cloth after sewing: wash, fade, whiskers, and the harm they do.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp, feather, fringe, leaf, overlock};
use super::stitching::ridge;

/// State of the cloth after washing, across a seam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wash {
    /// Colour lost, 0 (raw) to 1 (bleached).
    pub loss: f64,
    /// Light ridges and dark hollows along the seam, 0 to 1.
    pub high_low: f64,
    /// Irregularity of the ground, 0 to 1.
    pub mottle: f64,
    /// Starch and fold lines of cloth that has never met water.
    pub creased: bool,
}

/// Whiskers on both thighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Whiskers {
    /// How they were made.
    pub work: WhiskerWork,
    /// Lines on each thigh, 0 to 7.
    pub lines: u8,
}

/// How whiskers were made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhiskerWork {
    /// There are none.
    None,
    /// Printed or sprayed: hard, even bars.
    Printed,
    /// Laser: fine, crisp, both legs the same in a mirror.
    Laser,
    /// Hand: soft, tapering, the legs differ.
    Hand,
    /// Hand work with pressed creases that stand up.
    Creased,
    /// Worked, then torn and repaired.
    Torn,
}

/// A faded thigh.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fade {
    /// How the fade ends.
    pub edge: FadeEdge,
}

/// How a fade ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FadeEdge {
    /// Hard lines, printed look.
    Hard,
    /// A flat patch that stops abruptly.
    Abrupt,
    /// Softly graded.
    Graded,
    /// Graded, follows the seams and the place where cloth rubs.
    Natural,
}

/// What finishing has done to the cloth at a pocket edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wear {
    /// The harm.
    pub harm: Harm,
}

/// Harm done by finishing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Harm {
    /// None.
    None,
    /// Slight wear on the edge.
    Edge,
    /// Thin spots where the weft shows.
    Thin,
    /// Holes or an edge worn through.
    Hole,
    /// A meant hole, not secured: weft threads hang free.
    HoleOpen,
    /// A meant hole, backed and sewn round.
    HoleRepaired,
}

impl Wash {
    pub(super) fn words(&self) -> String {
        let mut words = String::from(match clamp(self.loss, 0.0, 1.0) {
            loss if loss < 0.12 => "dark cloth, never washed",
            loss if loss < 0.3 => "dark cloth, rinsed",
            loss if loss < 0.5 => "cloth that lost a little colour",
            loss if loss < 0.75 => "cloth faded by stone or bleach",
            _ => "cloth faded in many steps",
        });
        if self.creased {
            words.push_str(", stiff with sharp folds");
        }
        if self.high_low > 0.3 {
            words.push_str(", light ridges and dark hollows along the seam");
        }
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let (loss, high_low, mottle) = (clamp(self.loss, 0.0, 1.0), clamp(self.high_low, 0.0, 1.0), clamp(self.mottle, 0.0, 1.0));
        let (ground, grain, lit) = match loss {
            loss if loss < 0.12 => (Ink::ClothDark, Ink::Edge, Ink::Cloth),
            loss if loss < 0.3 => (Ink::Cloth, Ink::ClothDark, Ink::ClothLight),
            loss if loss < 0.5 => (Ink::Cloth, Ink::ClothLight, Ink::ClothPale),
            loss if loss < 0.75 => (Ink::ClothLight, Ink::Cloth, Ink::ClothPale),
            _ => (Ink::ClothPale, Ink::ClothLight, Ink::Weft),
        };
        let dark = if loss < 0.3 { Ink::Shade } else { Ink::Cloth };
        sheet.area(ground, FRAME);
        if mottle > 0.05 {
            let mut clouds = Pen::new();
            for index in 0..4 {
                let centre = (
                    16.0 + 30.0 * f64::from(index) + chance.about(8.0),
                    if index % 2 == 0 { 16.0 } else { 66.0 } + chance.about(6.0),
                );
                feather(&mut clouds, centre, (6.0 + 10.0 * mottle, 7.0 + 12.0 * mottle), 2.6, 0.4, chance);
            }
            sheet.stroke(lit, 0.8 + 1.2 * mottle, clouds);
        }
        sheet.twill(grain, FRAME, 3.4);
        if self.creased {
            ridge(sheet, &[(26.0, -5.0), (26.0, 85.0)]);
            sheet.stroke(Ink::Shade, 1.4, Pen::with(|pen| _ = pen.line(-5.0, 16.0, 125.0, 16.0)));
        }
        // A felled seam: the wash wears its ridges light and leaves its hollows dark.
        let (top, low) = (32.0, 54.0);
        if high_low > 0.02 {
            let (mut ridges, mut hollows) = (Pen::new(), Pen::new());
            let mut x = -4.0;
            while x < 122.0 {
                let step = chance.between(9.0, 12.5);
                leaf(&mut ridges, (x + 7.0, top - 1.0), (x - 2.0, low + 1.0), 2.0 + 4.6 * high_low);
                leaf(&mut hollows, (x + 7.0 + step / 2.0, top), (x - 2.0 + step / 2.0, low), 1.0 + 3.0 * high_low);
                x += step;
            }
            sheet.fill(dark, hollows);
            sheet.fill(if high_low > 0.6 { Ink::Weft } else { lit }, ridges);
        }
        sheet.stroke(
            Ink::Shade,
            1.6,
            Pen::with(|pen| _ = pen.line(-5.0, top - 3.0, 125.0, top - 3.0).line(-5.0, low + 3.0, 125.0, low + 3.0)),
        );
        let mut thread = Pen::new();
        for y in [top + 3.0, low - 3.0] {
            Row::of(8.0).sew(&mut thread, &Track::level(0.0, 120.0, y), 0.0, 0.0, 120.0);
        }
        sheet.stitches(2.2, thread);
    }
}

/// Both thighs below the fly: the ground that whiskers lie on.
fn thighs(sheet: &mut Sheet) {
    sheet.face();
    sheet.fill(
        Ink::Paper,
        Pen::with(|pen| _ = pen.at(60.0, 40.0).bend(57.0, 60.0, 56.0, 86.0).to(64.0, 86.0).bend(63.0, 60.0, 60.0, 40.0).close()),
    );
    sheet.stroke(Ink::Shade, 1.6, Pen::with(|pen| _ = pen.line(60.0, -5.0, 60.0, 40.0)));
    let fly = Track::through(&[(66.0, 0.0), (66.0, 20.0), (64.5, 26.0), (61.0, 31.0)]);
    sheet.stitches(1.4, Pen::with(|pen| _ = Row::of(4.6).sew(pen, &fly, 0.0, 0.0, fly.length())));
}

impl Whiskers {
    pub(super) fn words(&self) -> String {
        String::from(match self.work {
            WhiskerWork::None => "two thighs without whiskers",
            WhiskerWork::Printed => "whiskers as hard, even bars",
            WhiskerWork::Laser => "fine crisp whiskers, both legs the same in a mirror",
            WhiskerWork::Hand => "soft tapering whiskers, the two legs differ",
            WhiskerWork::Creased => "soft whiskers with creases that stand up",
            WhiskerWork::Torn => "soft whiskers, one thigh torn and repaired",
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        thighs(sheet);
        let lines = self.lines.min(7);
        let hand = matches!(self.work, WhiskerWork::Hand | WhiskerWork::Creased | WhiskerWork::Torn);
        let (mut wide, mut narrow, mut fold) = (Pen::new(), Pen::new(), Pen::new());
        for leg in [-1.0, 1.0] {
            for line in 0..lines {
                let on = (f64::from(line) + 0.5) / f64::from(lines.max(1));
                // Hand work differs from leg to leg; a machine repeats itself.
                let mut loose = |half: f64| if hand { chance.about(half) } else { 0.0 };
                let near = (60.0 + leg * (8.0 + loose(4.0)), 29.0 + on * 24.0 + loose(3.5));
                let far = (60.0 + leg * (46.0 + loose(9.0)), 10.0 + on * 52.0 + loose(5.0));
                match self.work {
                    WhiskerWork::None => {}
                    WhiskerWork::Printed => _ = wide.line(near.0, near.1, far.0, far.1),
                    WhiskerWork::Laser => {
                        for beam in [-1.5_f64, 0.0, 1.5] {
                            narrow.line(near.0 + leg * beam.abs(), near.1 + beam, far.0 - leg * beam.abs() * 2.0, far.1 + beam);
                        }
                    }
                    _ => {
                        let full = chance.between(4.4, 8.4);
                        leaf(&mut wide, near, far, full);
                        let (a, b) = (between(near, far, 0.14), between(near, far, 0.78));
                        leaf(&mut narrow, a, b, full * 0.42);
                        leaf(&mut fold, (near.0, near.1 + 3.0), (far.0, far.1 + 3.4), 1.4);
                    }
                }
            }
        }
        if hand {
            if self.work == WhiskerWork::Creased {
                sheet.fill(Ink::Shade, fold);
            }
            sheet.fill(Ink::ClothLight, wide);
            sheet.fill(Ink::ClothPale, narrow);
        } else {
            sheet.stroke(Ink::ClothPale, 4.2, wide);
            sheet.stroke(Ink::ClothPale, 0.75, narrow);
        }
        if self.work == WhiskerWork::Torn {
            repaired_tear(sheet, (92.0, 56.0), (15.0, 11.0), chance);
        }
    }
}

/// A point on the way from one to another.
fn between(a: (f64, f64), b: (f64, f64), share: f64) -> (f64, f64) {
    (a.0 + (b.0 - a.0) * share, a.1 + (b.1 - a.1) * share)
}

/// A tear with its weft lying across, backed and sewn round.
fn repaired_tear(sheet: &mut Sheet, (x, y): (f64, f64), (rx, ry): (f64, f64), chance: &mut Chance) {
    sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.oval(x, y, rx, ry)));
    wefts(sheet, (x, y), (rx, ry), 0.0, chance);
    let ring: Vec<(f64, f64)> = (0..=24)
        .map(|i| (f64::from(i) * std::f64::consts::TAU / 24.0).sin_cos())
        .map(|(sin, cos)| (x + (rx + 3.0) * cos, y + (ry + 3.0) * sin))
        .collect();
    let track = Track::through(&ring);
    sheet.stitches(1.5, Pen::with(|pen| overlock(pen, &track, 1.8, -2.4, 3.4)));
}

/// Weft yarns bared in a tear; `broken` of them hang.
fn wefts(sheet: &mut Sheet, (x, y): (f64, f64), (rx, ry): (f64, f64), broken: f64, chance: &mut Chance) {
    let mut pen = Pen::new();
    let mut down = -ry + 1.4;
    while down < ry {
        let half = rx * (1.0 - (down / ry).powi(2)).max(0.0).sqrt() + 2.0;
        if chance.share() < broken {
            let stop = x - half + half * chance.between(0.3, 0.9);
            pen.at(x - half, y + down).bend(stop, y + down, stop + chance.about(3.0), y + down + chance.between(5.0, 12.0));
            if chance.share() < 0.6 {
                let stop = x + half - half * chance.between(0.2, 0.6);
                pen.at(x + half, y + down).bend(stop, y + down, stop + 1.0, y + down + chance.between(4.0, 10.0));
            }
        } else {
            pen.line(x - half, y + down, x + half, y + down + chance.about(0.8));
        }
        down += 2.7;
    }
    sheet.stroke(Ink::Weft, 1.3, pen);
}

impl Fade {
    pub(super) fn words(&self) -> String {
        String::from(match self.edge {
            FadeEdge::Hard => "a fade with hard lines, as if printed",
            FadeEdge::Abrupt => "a flat fade that stops abruptly",
            FadeEdge::Graded => "a softly graded fade",
            FadeEdge::Natural => "a graded fade that follows the seam, strongest where cloth rubs",
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        // One leg, lying across: waist to the left, hem to the right, outseam along the top.
        sheet.area(Ink::Paper, FRAME);
        let leg = Area { x: 0.0, y: 5.0, width: 120.0, height: 70.0 };
        sheet.area(Ink::Cloth, leg);
        let (mut soft, mut pale) = (Pen::new(), Pen::new());
        match self.edge {
            FadeEdge::Hard => {
                for x in [18.0, 34.0, 50.0, 66.0, 82.0] {
                    pale.rect(x, 24.0, 9.0, 34.0);
                }
                sheet.fill(Ink::ClothPale, pale);
            }
            FadeEdge::Abrupt => sheet.fill(Ink::ClothPale, Pen::with(|pen| _ = pen.oval(56.0, 41.0, 44.0, 21.0))),
            FadeEdge::Graded | FadeEdge::Natural => {
                let natural = self.edge == FadeEdge::Natural;
                let y = if natural { 44.0 } else { 41.0 };
                feather(&mut soft, (50.0, y), (50.0, 25.0), 1.7, 0.3, chance);
                feather(&mut pale, (46.0, y), (38.0, 14.0), 1.7, 0.45, chance);
                if natural {
                    feather(&mut soft, (96.0, y - 2.0), (18.0, 15.0), 1.7, 0.35, chance);
                    feather(&mut pale, (82.0, y - 1.0), (16.0, 11.0), 1.7, 0.5, chance);
                }
                sheet.stroke(Ink::ClothLight, 1.5, soft);
                sheet.stroke(Ink::ClothPale, 1.2, pale);
            }
        }
        sheet.twill(Ink::ClothDark, leg, 4.0);
        if self.edge == FadeEdge::Natural {
            let mut worn = Pen::new();
            for step in 0..13 {
                let x = f64::from(step) * 9.6 + 3.0;
                let y = 5.5;
                leaf(&mut worn, (x + 2.0, y), (x - 2.0, y + 8.0), 4.0);
            }
            sheet.fill(Ink::ClothPale, worn);
        }
        sheet.stroke(Ink::Shade, 1.4, Pen::with(|pen| _ = pen.line(-5.0, 15.0, 125.0, 15.0)));
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(-5.0, 5.0, 125.0, 5.0).line(-5.0, 75.0, 125.0, 75.0)));
    }
}

impl Wear {
    pub(super) fn words(&self) -> String {
        String::from(match self.harm {
            Harm::None => "a whole edge and whole cloth",
            Harm::Edge => "slight wear along the edge",
            Harm::Thin => "thin spots where the weft shows",
            Harm::Hole => "a hole and an edge worn through",
            Harm::HoleOpen => "a meant hole whose threads hang free",
            Harm::HoleRepaired => "a meant hole, backed and sewn round",
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        let top = 18.0;
        sheet.area(Ink::Paper, Area { height: top, ..FRAME });
        let edge = Track::level(0.0, 120.0, top);
        sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.line(-5.0, top, 125.0, top)));
        sheet.stitches(2.2, Pen::with(|pen| _ = Row::of(8.0).sew(pen, &edge, 9.0, 0.0, 120.0)));
        let spot = (64.0, 54.0);
        match self.harm {
            Harm::None => {}
            Harm::Edge | Harm::Thin | Harm::Hole => {
                let mut worn = Pen::new();
                for step in 0..20 {
                    let x = f64::from(step) * 6.2 + chance.about(1.4);
                    worn.line(x, top + 0.6, x + chance.between(2.0, 5.0), top + 0.6 + chance.about(0.5));
                    worn.line(x, top + 1.5, x + chance.about(1.0), top + chance.between(2.5, 5.0));
                }
                sheet.stroke(Ink::ClothPale, 1.7, worn);
            }
            Harm::HoleOpen => {
                sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.oval(spot.0, spot.1, 30.0, 17.0)));
                sheet.stroke(Ink::ClothLight, 2.4, Pen::with(|pen| _ = pen.oval(spot.0, spot.1, 30.0, 17.0)));
                sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.oval(spot.0, spot.1, 28.0, 15.5)));
                wefts(sheet, spot, (28.0, 15.0), 0.75, chance);
            }
            Harm::HoleRepaired => repaired_tear(sheet, spot, (27.0, 14.0), chance),
        }
        if matches!(self.harm, Harm::Thin | Harm::Hole) {
            let (mut soft, mut bare) = (Pen::new(), Pen::new());
            feather(&mut soft, spot, (34.0, 18.0), 1.8, 0.3, chance);
            sheet.stroke(Ink::ClothLight, 1.5, soft);
            feather(&mut bare, spot, (22.0, 11.0), 2.2, 0.3, chance);
            sheet.stroke(Ink::Weft, 1.5, bare);
            sheet.stroke(
                Ink::ClothLight,
                0.9,
                Pen::with(|pen| {
                    (0..7).for_each(|i| _ = pen.line(46.0, 45.0 + f64::from(i) * 3.0, 82.0, 45.0 + f64::from(i) * 3.0))
                }),
            );
        }
        if self.harm == Harm::Hole {
            let rim = [
                (46.0, 53.0),
                (52.0, 46.0),
                (62.0, 48.0),
                (70.0, 44.0),
                (80.0, 50.0),
                (83.0, 57.0),
                (74.0, 63.0),
                (63.0, 61.0),
                (54.0, 64.0),
                (46.0, 53.0),
            ];
            sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.outline(&rim[..9])));
            let notch = [(18.0, top - 2.0), (22.0, 24.0), (29.0, 22.0), (34.0, 28.0), (41.0, 23.0), (46.0, top - 2.0)];
            sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&notch)));
            let mut yarns = Pen::new();
            fringe(&mut yarns, &Track::through(&rim), 0.5, 7.0, 3.4, chance);
            fringe(&mut yarns, &Track::through(&notch), 0.5, -7.0, 3.0, chance);
            sheet.stroke(Ink::Weft, 1.2, yarns);
        }
    }
}
