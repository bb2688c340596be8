//! Edges that stretch cloth has left longer than the cloth beside them.

use super::chance::Chance;
use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{FRAME, Pen, Row, Track, clamp, leaf};
use super::stitching::MM;
use crate::say;

/// An edge of stretch cloth: wavy, or as long as the cloth beside it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeamWaves {
    /// Height of the waves in mm, 0 (flat) to 4.
    pub height_mm: f64,
    /// Share of the edge that waves, 0 to 1.
    pub share: f64,
}

impl SeamWaves {
    pub(super) fn words(&self) -> String {
        String::from(match (clamp(self.height_mm, 0.0, 4.0), clamp(self.share, 0.0, 1.0)) {
            (height, _) if height < 0.1 => say!("a flat edge"),
            (_, share) if share < 0.7 => say!("an edge that waves in places"),
            (height, _) if height < 1.2 => say!("an edge with a hint of waves"),
            _ => say!("an edge that waves all along"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let (height, share) = (clamp(self.height_mm, 0.0, 4.0) * MM, clamp(self.share, 0.0, 1.0));
        let (length, top) = (27.0, 24.0);
        let from = Drawing::WIDTH * (1.0 - share) * chance.between(0.5, 0.9);
        let wave = |x: f64| {
            let inside = ((x - from) / 10.0).min((from + Drawing::WIDTH * share - x) / 10.0);
            // At the frame's own edges a wave that goes all along does not die away.
            let strength = if share > 0.99 { 1.0 } else { clamp(inside, 0.0, 1.0) };
            height * strength * (x / length * std::f64::consts::TAU).sin()
        };
        let along = |depth: f64, part: f64| -> Vec<(f64, f64)> {
            (-2..=62).map(|i| f64::from(i) * 2.0).map(|x| (x, top + depth - wave(x) * part)).collect()
        };
        sheet.area(Ink::Paper, FRAME);
        let edge = along(0.0, 1.0);
        sheet.fill(Ink::Cloth, Pen::with(|pen| _ = pen.smooth(&edge).to(125.0, 86.0).to(-5.0, 86.0).close()));
        let (mut light, mut dark) = (Pen::new(), Pen::new());
        for crest in 0..5 {
            let x = length * (f64::from(crest) + 0.25);
            for (pen, x) in [(&mut light, x), (&mut dark, x + length / 2.0)] {
                let rise = wave(x).abs();
                if rise > 0.6 {
                    leaf(pen, (x, top - wave(x) + 1.5), (x - 3.0, top + 14.0 + rise * 3.2), 4.0 + rise);
                }
            }
        }
        sheet.fill(Ink::ClothLight, light);
        sheet.fill(Ink::Shade, dark);
        sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.smooth(&edge)));
        let mut thread = Pen::new();
        for (depth, part) in [(7.0, 0.9), (22.0, 0.5)] {
            let track = Track::through(&along(depth, part));
            Row::of(25.4 / 8.0 * MM).sew(&mut thread, &track, 0.0, 0.0, track.length());
        }
        sheet.stitches(2.4, thread);
    }
}
