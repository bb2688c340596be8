//! A seam in slanting light: what tension and feed do to it.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track, clamp};
use super::stitching::MM;
use crate::say;

/// A seam in slanting light.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pucker {
    /// Height of the ripples in mm, 0 (flat) to 3.
    pub height_mm: f64,
    /// Length of one ripple in mm, 4 to 20.
    pub length_mm: f64,
}

impl Pucker {
    pub(super) fn words(&self) -> String {
        String::from(match clamp(self.height_mm, 0.0, 3.0) {
            height if height < 0.1 => say!("a seam that lies flat"),
            height if height < 0.7 => say!("a seam with faint ripples"),
            height if height < 1.6 => say!("a seam with plain ripples"),
            height if height < 2.2 => say!("a seam with strong ripples"),
            _ => say!("a seam gathered in deep ripples"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let (height, length) = (clamp(self.height_mm, 0.0, 3.0), clamp(self.length_mm, 4.0, 20.0) * MM);
        let (middle, phase) = (40.0, chance.share());
        sheet.area(Ink::Cloth, FRAME);
        // A long ripple moves the seam itself; a short one mostly the cloth beside it.
        let sway = height * (length / 14.0).min(2.4);
        let at = |x: f64| middle - sway * ((x / length + phase) * std::f64::consts::TAU).sin();
        let line: Vec<(f64, f64)> = (0..=60).map(|i| (f64::from(i) * 2.0, at(f64::from(i) * 2.0))).collect();
        let (mut light, mut dark) = (Pen::new(), Pen::new());
        if height >= 0.1 {
            let reach = 7.0 + 11.0 * height;
            let width = length * (0.14 + 0.13 * height).min(0.42);
            for ripple in -1..(120.0 / length) as i32 + 2 {
                let x = (f64::from(ripple) - phase + 0.25) * length;
                for way in [-1.0, 1.0] {
                    let (x, far) = (x + chance.about(length * 0.1), reach * chance.between(0.7, 1.1) * way);
                    ridge_flank(&mut light, (x, at(x)), width, far);
                    ridge_flank(&mut dark, (x + width, at(x + width)), width, far * 0.9);
                }
            }
        }
        sheet.fill(Ink::ClothLight, light);
        sheet.fill(Ink::ClothDark, dark);
        sheet.twill(Ink::ClothDark, FRAME, 3.6);
        let lap: Vec<(f64, f64)> = line.iter().map(|&(x, y)| (x, y - 6.0)).collect();
        sheet.stroke(Ink::Shade, 2.4, Pen::with(|pen| _ = pen.smooth(&lap)));
        let track = Track::through(&line);
        sheet.stitches(2.4, Pen::with(|pen| _ = Row::of(25.4 / 8.0 * MM).sew(pen, &track, 0.0, 0.0, track.length())));
    }
}

/// One flank of a ripple: broad at the seam, gone at its far end.
fn ridge_flank(pen: &mut Pen, (x, y): (f64, f64), width: f64, far: f64) {
    let (lean, full) = (-0.15 * far, y + far * 0.72);
    let tip = (x + width * 0.5 + lean, y + far);
    pen.at(x, y).bend(x - width * 0.1 + lean * 0.6, full, tip.0, tip.1);
    pen.bend(x + width * 1.1 + lean * 0.6, full, x + width, y).close();
}
