//! Stitches placed for each candidate, the best of them, and what speaks for it.

use super::pitch::{Candidate, Lines, neighbours_alike};
use super::place::{self, Placed};
use super::signal::Bank;

/// How far beyond the marks stitches are looked for, mm.
pub(super) const BEYOND: f64 = 2.0;

/// A reading of one candidate.
pub(super) struct Reading {
    pub(super) candidate: Candidate,
    pub(super) placed: Placed,
    pub(super) neighbours: f32,
    pub(super) merit: f32,
}

/// Places the stitches of a candidate; unless it was said by the person, an octave too high is brought down.
pub(super) fn reading(
    bank: &Bank,
    clean: &[Vec<f32>],
    lines: &mut Lines,
    candidate: Candidate,
    guarded: bool,
) -> Option<Reading> {
    let samples = bank.samples();
    let mut candidate = candidate;
    let signal = lines.joined(bank, candidate.frequency);
    let mut placed = place::stitches(&signal, &bank.thread, candidate.frequency, BEYOND as f32 * bank.per_mm)?;
    let mut neighbours = neighbours_alike(clean, lines, &placed);
    let below = lines.near(0.5 * candidate.frequency, samples) / candidate.line.max(1e-9);
    let alternates = (below > 0.35 && neighbours < 0.45) || (below > 0.15 && neighbours < -0.2);
    if guarded && alternates && lines.allows(0.5 * candidate.frequency) {
        candidate.frequency *= 0.5;
        let signal = lines.joined(bank, candidate.frequency);
        placed = place::stitches(&signal, &bank.thread, candidate.frequency, BEYOND as f32 * bank.per_mm)?;
        neighbours = 0.3;
    }
    let off = placed.pitch() * candidate.frequency - 1.0;
    let merit = candidate.line.max(0.0).sqrt()
        * placed.likeness.max(0.0).powi(2)
        * (-(off / 0.08).powi(2)).exp()
        * (0.6 + 0.4 * neighbours)
        * lines.usual(candidate.frequency);
    Some(Reading { candidate, placed, neighbours, merit })
}
