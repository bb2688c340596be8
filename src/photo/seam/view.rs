//! One look at the seam: its line, a strip along it, what repeats there and each stitch put in its place.
//!
//! Everything near a seam has its size in millimetres: how thick a thread is, how far from it the cloth lies bare. Sewing threads differ by half,
//! so the same seam can be looked at as though it lay nearer or further: what is read of it should stay the same.

use crate::{Plane, Point, Raster, Scale};

use super::pitch::{Candidate, Lines};
use super::reach::{free, holds};
use super::reading::{BEYOND, Reading, reading};
use super::refusal::{SeamRefusal, Signs};
use super::signal::{Bank, unwarped};
use super::strip::{Path, Strip};
use super::told::{SeamCount, told};
use super::track::{self, Track};

/// Most samples along the strip.
const MOST_SAMPLES: f64 = 6000.0;

/// Strongest line of the spectrum, in spreads of the floor, below which nothing repeats at all.
const LEAST_LINE: f32 = 0.05;

/// What was found at one look.
pub(super) struct View {
    /// How many times as long everything was taken to be.
    nearer: f64,
    plane: Plane,
    path: Path,
    /// Samples in a millimetre as taken.
    per_mm: f64,
    warp: f32,
    bank: Bank,
    clean: Vec<Vec<f32>>,
    lines: Lines,
    /// Every frequency that stands out.
    peaks: Vec<Candidate>,
    /// The likeliest reading.
    pub(super) best: Reading,
    /// What speaks for and against it.
    pub(super) signs: Signs,
}

impl View {
    /// Looks at the seam between two places of the picture as though everything were `nearer` times as long.
    pub(super) fn of(picture: &Raster, from: Point, to: Point, scale: &Scale, nearer: f64) -> Result<View, SeamRefusal> {
        let plane = if nearer == 1.0 { scale.plane } else { scale.plane.stretched(nearer).ok_or(SeamRefusal::Marks)? };
        let (start, end) = (plane.on_cloth(from), plane.on_cloth(to));
        let length = start.distance(end);
        let px_per_mm = from.distance(to) / length;
        let few = SeamRefusal::TooFew { stitches: (length / nearer / 2.5) as usize };
        let (start, end) = beyond(picture, &plane, start, end);
        let coarse = px_per_mm.clamp(4.5, 8.0).min(MOST_SAMPLES / length);
        let straight = Path::straight(start, end, 1.0 / coarse);
        if straight.places.len() < 16 {
            return Err(few);
        }
        let half = (0.13 * length + 1.5).clamp(4.2, 22.0 * nearer.max(1.0)) as f32;
        let reach = free(picture, &plane, &straight, &scale.object, half);
        let low = reach.iter().map(|reach| reach.0).fold(0.0, f32::min);
        let high = reach.iter().map(|reach| reach.1).fold(0.0, f32::max);
        let wide = Strip::read(picture, &plane, &straight, low, high, coarse as f32);
        let seam = track::seam(&wide, &reach);
        let per_mm = px_per_mm.clamp(6.0, 14.0).min(MOST_SAMPLES / length);
        let path = track::followed(&straight, &seam, 1.0 / per_mm);
        if path.places.len() < 16 {
            return Err(SeamRefusal::NoSeam);
        }
        let strip = Strip::read(picture, &plane, &path, -3.6, 3.6, per_mm as f32);
        let bank = Bank::of(&strip, nearer as f32);
        let finest = 0.42 * (px_per_mm / per_mm) as f32;
        let warp = warp(&bank, finest);
        let plain = Lines::of(&bank, finest).ok_or(few)?;
        let (bank, mut lines, warp) = straightened(bank, plain, warp, finest);
        let clean = lines.cleaned(&bank);
        if lines.strongest() < LEAST_LINE {
            return Err(SeamRefusal::NoSeam);
        }
        let (candidates, peaks) = lines.candidates(bank.samples());
        let best = candidates
            .iter()
            .filter_map(|candidate| reading(&bank, &clean, &mut lines, *candidate, true))
            .max_by(|a, b| a.merit.total_cmp(&b.merit))
            .ok_or(SeamRefusal::NoSeam)?;
        let signs = signs(&best, &lines, &peaks, &seam, (length, per_mm), px_per_mm / per_mm);
        Ok(View { nearer, plane, path, per_mm, warp, bank, clean, lines, peaks, best, signs })
    }

    /// The same look with the stitches that a person says there are: so many times as many, or so many in a centimetre.
    pub(super) fn said(mut self, times: f32, per_cm: Option<f64>) -> Option<View> {
        let per_sample = |per_cm: f64| (per_cm / 10.0 / (self.per_mm * self.nearer)) as f32;
        let frequency = per_cm.map_or(times / self.best.placed.pitch(), per_sample);
        let candidate = Candidate { frequency, line: self.lines.near(frequency, self.bank.samples()), score: 0.0 };
        self.best = reading(&self.bank, &self.clean, &mut self.lines, candidate, false)?;
        Some(self)
    }

    /// What is told of the likeliest reading.
    pub(super) fn told(&self, scale: &Scale) -> SeamCount {
        let mut placed = self.best.placed.clone();
        placed.ends.iter_mut().for_each(|end| *end = unwarped(*end, self.bank.samples(), self.warp));
        told(&placed, &self.path, &self.plane, scale, self.per_mm * self.nearer)
    }

    /// Why the reading is in doubt.
    pub(super) fn doubted(&self) -> SeamRefusal {
        let per_cm = |frequency: f32| f64::from(frequency) * self.per_mm * self.nearer * 10.0;
        let Reading { candidate, placed, .. } = &self.best;
        let rival = self
            .peaks
            .iter()
            .filter(|peak| (peak.frequency / candidate.frequency - 1.0).abs() > 0.06)
            .max_by(|a, b| a.line.total_cmp(&b.line));
        match rival {
            Some(rival) if self.signs.rival > 0.45 || rival.line > 0.6 * candidate.line => {
                SeamRefusal::TwoReadings { likelier: per_cm(1.0 / placed.pitch()), other: per_cm(rival.frequency) }
            }
            _ if self.signs.thirds > 0.12 || self.signs.drift > 0.5 => SeamRefusal::Unsteady,
            _ => SeamRefusal::Faint,
        }
    }
}

/// Both ends moved outwards as far as the picture goes: marks are set by hand, and a stitch that ends just outside them is wanted too.
fn beyond(picture: &Raster, plane: &Plane, start: Point, end: Point) -> (Point, Point) {
    let share = BEYOND / start.distance(end);
    let further = |from: Point, way: Point| {
        [1.0, 0.75, 0.5, 0.25]
            .map(|part| from.stepped(way, part * share))
            .into_iter()
            .find(|at| holds(picture, plane.in_picture(*at)))
            .unwrap_or(from)
    };
    (further(start, end.way_to(start)), further(end, start.way_to(end)))
}

/// How strongly the pitch changes along the seam as it does in perspective, where that makes the strongest line much stronger.
fn warp(bank: &Bank, finest: f32) -> f32 {
    let brief = bank.brief();
    let strongest = |bank: &Bank| Lines::of(bank, finest).map_or(0.0, |lines| lines.strongest());
    let plain = strongest(&brief);
    let (mut best, mut found) = (1.3 * plain, 0.0);
    for warp in [-0.1, -0.07, -0.045, -0.025, 0.025, 0.045, 0.07, 0.1] {
        let line = strongest(&brief.warped(warp));
        if line > best {
            (best, found) = (line, warp);
        }
    }
    found
}

/// The bank and its lines with the warp taken out, unless the whole bank, other than its brief, knows nothing of it.
fn straightened(bank: Bank, plain: Lines, warp: f32, finest: f32) -> (Bank, Lines, f32) {
    if warp == 0.0 {
        return (bank, plain, 0.0);
    }
    let warped = bank.warped(warp);
    match Lines::of(&warped, finest) {
        Some(lines) if lines.strongest() > 1.15 * plain.strongest() => (warped, lines, warp),
        _ => (bank, plain, 0.0),
    }
}

/// What speaks for and against the reading of a seam so long (mm), with so many samples to a millimetre.
fn signs(
    best: &Reading,
    lines: &Lines,
    peaks: &[Candidate],
    seam: &Track,
    (length, per_mm): (f64, f64),
    px_per_sample: f64,
) -> Signs {
    let Reading { candidate, placed, neighbours, .. } = best;
    let is_one_of = |times: &[f32], peak: &&Candidate| {
        times.iter().any(|times| (peak.frequency / (times * candidate.frequency) - 1.0).abs() < 0.06)
    };
    // A multiple much stronger than the line itself is more than its overtone; what goes twice into every second stitch or thrice, and is stronger
    // than the line at all, is no trace of every second stitch.
    let explained = |peak: &&Candidate| {
        (is_one_of(&[1.0, 2.0, 3.0, 4.0, 5.0], peak) && peak.line <= 3.0 * candidate.line)
            || (is_one_of(&[0.5, 1.5], peak) && peak.line <= candidate.line)
    };
    let near = |peak: &&Candidate| (peak.frequency / candidate.frequency - 1.0).abs() < 0.15;
    let strongest = |peaks: Vec<&Candidate>| peaks.iter().map(|peak| peak.line).fold(0.0, f32::max) / candidate.line.max(1e-6);
    let others = || peaks.iter().filter(|peak| !explained(peak));
    let thirds = placed.thirds();
    let (slope, bend) = (thirds[2] - thirds[0], thirds[0] - 2.0 * thirds[1] + thirds[2]);
    Signs {
        stitches: placed.count(),
        px_per_stitch: placed.pitch() * px_per_sample as f32,
        line: lines.strongest(),
        likeness: placed.likeness,
        rival: strongest(others().filter(|peak| !near(peak)).collect()),
        near: strongest(others().filter(near).collect()),
        neighbours: *neighbours,
        drift: (placed.by_phase - placed.count() as f32).abs(),
        strength: seam.strength,
        thirds: (0.3 * slope.abs() + 0.5 * bend.abs()) / placed.pitch().max(1e-6),
        shared: lines.shared(candidate.frequency),
        patchy: placed.patchy,
        usual: lines.usual(1.0 / placed.pitch().max(1e-6)),
        bow: seam.sagitta / length as f32,
        length: lines.length(1.0 / placed.pitch().max(1e-6)),
        filled: placed.pitch() * placed.count() as f32 / (length * per_mm) as f32,
    }
}
