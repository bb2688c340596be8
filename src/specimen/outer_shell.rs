//! The outer cloth of a jacket or coat: after a crush, under a drop of water, and at a seam from inside.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::dress_seams::EdgeInside;
use super::pen::{Area, FRAME, Pen, Row, Track};
use crate::say;

/// Outer cloth after a handful was crushed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShellHand {
    /// Its coating comes off along the creases.
    Flaking,
    /// Full of creases that stay.
    Thin,
    /// With a few soft ones.
    Firm,
    /// Smooth again.
    Supple,
}

/// A drop of water on outer cloth, in section, half a minute on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Drop {
    /// Gone into the cloth.
    Soaks,
    /// Flat and wide.
    Spreads,
    /// A bead with a dark ring below.
    Beads,
    /// A ball that runs off a slope.
    RollsOff,
}

/// A seam of a jacket from inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SealedSeam {
    /// Wrapped edges, held down by rows beside them.
    Topstitched,
    /// Under a smooth tape.
    Taped,
}

impl ShellHand {
    pub(super) fn words(self) -> &'static str {
        match self {
            ShellHand::Flaking => say!("outer cloth after a crush, its coating flaking off along the creases"),
            ShellHand::Thin => say!("thin outer cloth after a crush, full of sharp creases"),
            ShellHand::Firm => say!("firm outer cloth after a crush, a few soft creases"),
            ShellHand::Supple => say!("dense outer cloth after a crush, smooth again"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.area(Ink::ClothLight, FRAME);
        let (count, pitch) = match self {
            ShellHand::Flaking => (7, 5.0),
            ShellHand::Thin => (12, 5.6),
            ShellHand::Firm => (3, 3.4),
            ShellHand::Supple => (0, 2.4),
        };
        sheet.stroke(Ink::ClothPale, 0.5, Pen::with(|pen| _ = pen.hatch(FRAME, pitch, 0.0)));
        let (mut dark, mut light, mut flakes) = (Pen::new(), Pen::new(), Pen::new());
        for crease in 0..count {
            let turn = f64::from(crease) * std::f64::consts::TAU / f64::from(count) + chance.about(0.3);
            let bent = turn + chance.about(0.4);
            let at = |far: f64, turn: f64| (60.0 + far * 1.4 * turn.cos(), 40.0 + far * turn.sin());
            let (a, b, c) = (at(6.0, turn), at(20.0, bent), at(chance.between(28.0, 38.0), turn));
            for (pen, off) in [(&mut dark, 0.0), (&mut light, 1.8)] {
                if self == ShellHand::Firm {
                    pen.at(a.0, a.1 + off).bend(b.0, b.1 + off, c.0, c.1 + off);
                } else {
                    pen.points(&[a, b, c].map(|(x, y)| (x, y + off)));
                }
            }
            if self == ShellHand::Flaking {
                for (x, y) in [b, ((b.0 + c.0) / 2.0, (b.1 + c.1) / 2.0)] {
                    let corners: Vec<(f64, f64)> = (0..6)
                        .map(|step| std::f64::consts::TAU * f64::from(step) / 6.0)
                        .map(|turn| (turn, chance.between(2.4, 6.4)))
                        .map(|(turn, far)| (x + far * turn.cos(), y + far * turn.sin()))
                        .collect();
                    flakes.outline(&corners);
                }
            }
        }
        sheet.stroke(Ink::Weft, 1.6, light);
        sheet.stroke(Ink::Cloth, if self == ShellHand::Firm { 2.6 } else { 2.0 }, dark);
        sheet.fill(Ink::Weft, flakes.clone());
        sheet.stroke(Ink::Edge, 1.0, flakes);
        if self == ShellHand::Supple {
            let drape = Pen::with(|pen| {
                _ = pen.at(-5.0, 60.0).bend(60.0, 38.0, 125.0, 64.0).at(-5.0, 26.0).bend(50.0, 12.0, 125.0, 30.0)
            });
            sheet.stroke(Ink::ClothPale, 4.0, drape);
        }
    }
}

impl Drop {
    pub(super) fn words(self) -> &'static str {
        match self {
            Drop::Soaks => say!("a drop of water in section, gone into the cloth"),
            Drop::Spreads => say!("a drop of water in section, spread flat on the cloth, wet below"),
            Drop::Beads => say!("a drop of water in section, a bead on the cloth, a dark ring below it"),
            Drop::RollsOff => say!("a drop of water in section, a ball running off the sloping cloth"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, FRAME);
        let slope = if self == Drop::RollsOff { 14.0 } else { 0.0 };
        sheet.ply(Ink::ClothPale, 12.0, Pen::with(|pen| _ = pen.line(-8.0, 56.0 - slope, 128.0, 56.0 + slope)));
        // How far the cloth is wet to either side, and from where.
        let wet: &[(f64, f64)] = match self {
            Drop::Soaks => &[(26.0, 94.0)],
            Drop::Spreads => &[(36.0, 84.0)],
            Drop::Beads => &[(40.0, 46.0), (74.0, 80.0)],
            Drop::RollsOff => &[],
        };
        sheet.stroke(Ink::Cloth, 11.0, Pen::with(|pen| wet.iter().for_each(|&(a, b)| _ = pen.line(a, 56.0, b, 56.0))));
        let water = Pen::with(|pen| match self {
            Drop::Soaks => _ = pen.rect(28.0, 61.6, 64.0, 2.4),
            Drop::Spreads => _ = pen.at(28.0, 49.6).bend(60.0, 36.0, 92.0, 49.6).close(),
            Drop::Beads => {
                pen.at(45.0, 49.6).bend(34.0, 40.0, 42.0, 28.0).bend(60.0, 14.0, 78.0, 28.0).bend(86.0, 40.0, 75.0, 49.6).close();
            }
            Drop::RollsOff => _ = pen.oval(72.0, 32.4, 19.0, 18.0),
        });
        sheet.fill(Ink::Stain, water.clone());
        sheet.stroke(Ink::Edge, 1.4, water);
        if matches!(self, Drop::Beads | Drop::RollsOff) {
            let x = if self == Drop::Beads { 0.0 } else { 12.0 };
            let gleam = Pen::with(|pen| _ = pen.at(48.0 + x, 34.0).bend(49.0 + x, 26.0, 57.0 + x, 23.0));
            sheet.stroke(Ink::Paper, 2.4, gleam);
        }
        if self == Drop::RollsOff {
            let way = Pen::with(|pen| _ = pen.line(22.0, 26.0, 40.0, 30.0).line(18.0, 36.0, 38.0, 40.0));
            sheet.stroke(Ink::Edge, 1.6, way);
        }
    }
}

impl SealedSeam {
    pub(super) fn words(self) -> &'static str {
        match self {
            SealedSeam::Topstitched => say!("a seam inside, its edge wrapped densely and stitched down"),
            SealedSeam::Taped => say!("a seam inside under a smooth tape, no needle hole to see"),
        }
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        if self == SealedSeam::Topstitched {
            EdgeInside::DenseWrap.draw(sheet, chance);
            let row = Pen::with(|pen| _ = Row::of(6.0).sew(pen, &Track::level(-5.0, 125.0, 39.0), 0.0, 0.0, 130.0));
            sheet.stroke(Ink::Edge, 2.6, row);
            return;
        }
        sheet.area(Ink::ClothPale, FRAME);
        sheet.stroke(Ink::ClothLight, 0.6, Pen::with(|pen| _ = pen.hatch(FRAME, 4.0, 0.0)));
        let tape = Area { x: -5.0, y: 24.0, width: 130.0, height: 32.0 };
        sheet.area(Ink::Weft, tape);
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.line(-5.0, 24.0, 125.0, 24.0).line(-5.0, 56.0, 125.0, 56.0)));
        // The seam below shows as a ridge, and the tape shines.
        sheet.stroke(Ink::ClothPale, 3.0, Pen::with(|pen| _ = pen.line(-5.0, 42.0, 125.0, 42.0)));
        sheet.stroke(Ink::Paper, 2.4, Pen::with(|pen| _ = pen.line(10.0, 30.0, 48.0, 30.0).line(66.0, 30.0, 112.0, 30.0)));
    }
}
