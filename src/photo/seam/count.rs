//! From two marks to stitches counted.

use serde::{Deserialize, Serialize};

use crate::{Point, Raster, Scale};

use super::pitch::{Candidate, Lines, neighbours_alike};
use super::place::{self, Placed};
use super::refusal::{SeamRefusal, Signs};
use super::signal::{Bank, unwarped};
use super::strip::{Path, Strip};
use super::track;

/// What a reading from a picture can be off by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Cause {
    /// Where marks were set and graduations found.
    Scale,
    /// The object lies nearer to the phone than the cloth, or further.
    Height,
    /// The phone was tilted, and the seam does not lie under the object.
    Tilt,
    /// Where stitches or yarns begin and end.
    Counting,
}

/// One entry of an uncertainty budget: what it comes from, and its standard uncertainty as a share of the reading.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Part {
    /// What it comes from.
    pub from: Cause,
    /// Standard uncertainty as a share: 0.01 is one per cent.
    pub share: f64,
}

/// What the person said about a first reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub enum Said {
    /// Nothing: the reading is the picture's alone.
    #[default]
    Nothing,
    /// There are twice as many stitches.
    Twice,
    /// There are half as many.
    Half,
    /// There are about so many in a centimetre: one of two readings that were offered.
    About(f64),
}

/// One stitch on the picture, from needle hole to needle hole (pixels).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Stitch {
    /// Where it begins.
    pub from: Point,
    /// Where it ends.
    pub to: Point,
    /// Whether it is so long that a stitch seems to have been skipped inside.
    pub skipped: bool,
}

/// What was counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SeamCount {
    /// Mean length of a stitch, mm on the cloth.
    pub stitch_mm: f64,
    /// What makes it uncertain.
    pub budget: Vec<Part>,
    /// The stitches counted, in order along the seam.
    pub stitches: Vec<Stitch>,
    /// Coefficient of variation of the length of the stitches, slow changes along the seam taken out.
    pub unevenness: f64,
    /// Pixels of the picture in a stitch.
    pub px_per_stitch: f64,
}

/// Longest stretch that is read, mm, and most samples along it.
const LONGEST: f64 = 1500.0;
const MOST_SAMPLES: f64 = 6000.0;

/// How far beyond the marks stitches are looked for, mm.
const BEYOND: f64 = 2.0;

/// Strongest line of the spectrum, in spreads of the floor, below which nothing repeats at all.
const LEAST_LINE: f32 = 0.05;

/// Doubt above which a reading is refused (judgement: at this, none of the 709 usable drawings that the weights were not fitted on was answered
/// off by more than 15 %).
const MOST_DOUBT: f32 = 0.11;

/// Unevenness above which stitches were lost too often (judgement: of ten usable drawings read above it three were off by more than 0.25
/// stitches per inch, most of them one stitch short).
const MOST_UNEVEN: f64 = 0.125;

/// A reading of one candidate.
struct Reading {
    candidate: Candidate,
    placed: Placed,
    neighbours: f32,
    merit: f32,
}

/// Counts the stitches between two places on a seam. The picture's reading is held against doubt; one that a person chose is not.
pub fn count(picture: &Raster, from: Point, to: Point, scale: &Scale, said: Said) -> Result<SeamCount, SeamRefusal> {
    let plane = &scale.plane;
    let (start, end) = (plane.on_cloth(from), plane.on_cloth(to));
    let length = (end.x - start.x).hypot(end.y - start.y);
    let px_per_mm = (to.x - from.x).hypot(to.y - from.y) / length;
    let marked = holds(picture, from) && holds(picture, to);
    if !(marked && length > 1.0 && length < LONGEST && px_per_mm.is_finite() && px_per_mm > 0.0) {
        return Err(SeamRefusal::Marks);
    }
    // Marks are set by hand: a stitch that ends just outside them is wanted too.
    let beyond = BEYOND / length;
    let (dx, dy) = (beyond * (end.x - start.x), beyond * (end.y - start.y));
    let furthest = |from: Point, dx: f64, dy: f64| {
        [1.0, 0.75, 0.5, 0.25]
            .map(|share| Point { x: from.x + share * dx, y: from.y + share * dy })
            .into_iter()
            .find(|at| holds(picture, plane.in_picture(*at)))
            .unwrap_or(from)
    };
    let (start, end) = (furthest(start, -dx, -dy), furthest(end, dx, dy));
    let coarse = 8.0_f64.min(MOST_SAMPLES / length);
    let straight = Path::straight(start, end, 1.0 / coarse);
    if straight.places.len() < 16 {
        return Err(SeamRefusal::TooFew { stitches: (length / 2.5) as usize });
    }
    let half = (0.13 * length + 1.5).clamp(4.2, 12.0) as f32;
    let (low, high) = within(picture, scale, &straight, free_of(scale, &straight, half));
    let wide = Strip::read(picture, plane, &straight, low, high, coarse as f32);
    let seam = track::seam(&wide, (low + 1.2, high - 1.2));
    let per_mm = px_per_mm.clamp(6.0, 14.0).min(MOST_SAMPLES / length);
    let path = track::followed(&straight, &seam, 1.0 / per_mm);
    if path.places.len() < 16 {
        return Err(SeamRefusal::NoSeam);
    }
    let strip = Strip::read(picture, plane, &path, -3.6, 3.6, per_mm as f32);
    let bank = Bank::of(&strip);
    let samples = bank.samples();
    let finest = 0.42 * (px_per_mm / per_mm) as f32;
    let warp = warp(&bank, finest);
    let few = SeamRefusal::TooFew { stitches: (length / 2.5) as usize };
    let plain = Lines::of(&bank, finest).ok_or(few)?;
    let (bank, mut lines, warp) = straightened(bank, plain, warp, finest);
    let clean = lines.cleaned(&bank);
    if lines.strongest() < LEAST_LINE {
        return Err(SeamRefusal::NoSeam);
    }
    let (candidates, peaks) = lines.candidates(samples);
    let mut readings: Vec<Reading> =
        candidates.iter().filter_map(|candidate| reading(&bank, &clean, &mut lines, *candidate, true)).collect();
    readings.sort_by(|a, b| b.merit.total_cmp(&a.merit));
    let first = readings.first().ok_or(SeamRefusal::NoSeam)?;
    let wanted = match said {
        Said::Nothing => None,
        Said::Twice => Some(2.0 / first.placed.pitch()),
        Said::Half => Some(0.5 / first.placed.pitch()),
        Said::About(per_cm) => Some((per_cm / 10.0 / per_mm) as f32),
    };
    let best = match wanted {
        None => readings.swap_remove(0),
        Some(frequency) => {
            let candidate = Candidate { frequency, line: lines.near(frequency, samples), score: 0.0 };
            reading(&bank, &clean, &mut lines, candidate, false).ok_or(SeamRefusal::NoSeam)?
        }
    };
    let signs = signs(&best, &lines, &peaks, &seam, px_per_mm / per_mm);
    let mut best = best;
    best.placed.ends.iter_mut().for_each(|end| *end = unwarped(*end, samples, warp));
    if said == Said::Nothing {
        refuse(&signs, &best, &peaks, per_mm, f64::from(seam.sagitta) / length)?;
    } else if best.placed.count() < 3 {
        return Err(SeamRefusal::TooFew { stitches: best.placed.count() });
    }
    let told = told(&best.placed, &path, scale, per_mm);
    if said == Said::Nothing && told.unevenness > MOST_UNEVEN {
        return Err(SeamRefusal::Uneven);
    }
    Ok(told)
}

/// How far the strip may reach on both sides before it meets the object that gives the scale, mm.
fn free_of(scale: &Scale, straight: &Path, half: f32) -> (f32, f32) {
    let (mut low, mut high) = (-half, half);
    let (Some(start), Some(end), Some(across)) = (straight.places.first(), straight.places.last(), straight.across.first())
    else {
        return (low, high);
    };
    let length = (end.x - start.x).hypot(end.y - start.y);
    let corners = &scale.object;
    let mut outline = Vec::with_capacity(32 * corners.len());
    for n in 0..corners.len() {
        let (a, b) = (corners[n], corners[(n + 1) % corners.len()]);
        for k in 0..32 {
            let share = f64::from(k) / 32.0;
            let at = scale.plane.on_cloth(Point { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) });
            let (dx, dy) = (at.x - start.x, at.y - start.y);
            let v = (dx * across.x + dy * across.y) as f32;
            outline.push((dx * across.y - dy * across.x, v));
        }
    }
    // Its bulk lies on one side of the seam, even where the chord of a curved seam cuts through it.
    let above = outline.iter().map(|(_, v)| v).sum::<f32>() > 0.0;
    for (_, v) in outline.iter().filter(|(along, _)| (-1.0..=length + 1.0).contains(along)) {
        if above {
            high = high.min((v - 0.6).max(1.8));
        } else {
            low = low.max((v + 0.6).min(-1.8));
        }
    }
    (low, high)
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

/// The same, not beyond the border of the picture.
fn within(picture: &Raster, scale: &Scale, straight: &Path, (mut low, mut high): (f32, f32)) -> (f32, f32) {
    for at in straight.places.iter().zip(&straight.across).step_by((straight.places.len() / 16).max(1)) {
        let inside = |v: f32| {
            let (place, across) = at;
            let seen =
                scale.plane.in_picture(Point { x: place.x + f64::from(v) * across.x, y: place.y + f64::from(v) * across.y });
            holds(picture, seen)
        };
        while high > 1.8 && !inside(high) {
            high -= 0.2;
        }
        while low < -1.8 && !inside(low) {
            low += 0.2;
        }
    }
    (low, high)
}

fn holds(picture: &Raster, at: Point) -> bool {
    (0.0..picture.width() as f64).contains(&at.x) && (0.0..picture.height() as f64).contains(&at.y)
}

/// Places the stitches of a candidate; unless it was said by the person, an octave too high is brought down.
fn reading(bank: &Bank, clean: &[Vec<f32>], lines: &mut Lines, candidate: Candidate, guarded: bool) -> Option<Reading> {
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

fn signs(best: &Reading, lines: &Lines, peaks: &[Candidate], seam: &track::Track, px_per_sample: f64) -> Signs {
    let Reading { candidate, placed, neighbours, .. } = best;
    let harmonic = |frequency: f32| {
        [0.5, 1.0, 1.5, 2.0, 3.0, 4.0, 5.0].iter().any(|times| (frequency / (times * candidate.frequency) - 1.0).abs() < 0.06)
    };
    let near = |peak: &&Candidate| (peak.frequency / candidate.frequency - 1.0).abs() < 0.15;
    let strongest = |peaks: Vec<&Candidate>| peaks.iter().map(|peak| peak.line).fold(0.0, f32::max) / candidate.line.max(1e-6);
    // A multiple much stronger than the line itself is more than its overtone.
    let others = || peaks.iter().filter(|peak| !harmonic(peak.frequency) || peak.line > 3.0 * candidate.line);
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
        usual: lines.usual(1.0 / placed.pitch().max(1e-6)),
    }
}

fn refuse(signs: &Signs, best: &Reading, peaks: &[Candidate], per_mm: f64, bow: f64) -> Result<(), SeamRefusal> {
    let per_cm = |frequency: f32| f64::from(frequency) * per_mm * 10.0;
    if signs.stitches < 6 {
        return Err(SeamRefusal::TooFew { stitches: signs.stitches });
    }
    if signs.px_per_stitch < 7.0 {
        return Err(SeamRefusal::TooSmall { px_per_stitch: f64::from(signs.px_per_stitch) });
    }
    if bow > 0.135 {
        return Err(SeamRefusal::Bends);
    }
    if signs.line < 0.5 || signs.strength < 0.2 {
        return Err(SeamRefusal::NoSeam);
    }
    if signs.likeness < 0.5 {
        return Err(SeamRefusal::Faint);
    }
    if signs.doubt() > MOST_DOUBT {
        let rival = peaks
            .iter()
            .filter(|peak| (peak.frequency / best.candidate.frequency - 1.0).abs() > 0.06)
            .max_by(|a, b| a.line.total_cmp(&b.line));
        return Err(match rival {
            Some(rival) if signs.rival > 0.45 || rival.line > 0.6 * best.candidate.line => {
                SeamRefusal::TwoReadings { likelier: per_cm(1.0 / best.placed.pitch()), other: per_cm(rival.frequency) }
            }
            _ if signs.thirds > 0.12 || signs.drift > 0.5 => SeamRefusal::Unsteady,
            _ => SeamRefusal::Faint,
        });
    }
    Ok(())
}

fn told(placed: &Placed, path: &Path, scale: &Scale, per_mm: f64) -> SeamCount {
    let seen: Vec<Point> = placed.ends.iter().map(|end| scale.plane.in_picture(path.at(f64::from(*end), 0.0))).collect();
    let stitches: Vec<Stitch> = seen
        .windows(2)
        .zip(&placed.double)
        .map(|(pair, double)| Stitch { from: pair[0], to: pair[1], skipped: *double })
        .collect();
    let count = placed.count().max(1) as f64;
    let pixels: f64 = stitches.iter().map(|stitch| (stitch.to.x - stitch.from.x).hypot(stitch.to.y - stitch.from.y)).sum();
    let middle = seen.get(seen.len() / 2).copied().unwrap_or_default();
    let mut budget = scale.spread_at(middle);
    let unevenness = unevenness(&placed.lengths());
    budget.push(Part { from: Cause::Counting, share: counting(placed.jitter, unevenness, count) });
    SeamCount { stitch_mm: f64::from(placed.pitch()) / per_mm, budget, stitches, unevenness, px_per_stitch: pixels / count }
}

/// Standard uncertainty of the mean length of a stitch, as a share, from how well the two sides of an end agree where it lies and from how
/// uneven the stitches are: what is seen between two ends is not quite what lies between the marks. The factor was chosen so that twice this covers
/// 90 to 96 of 100 errors of the sets drawn.
fn counting(jitter: f32, unevenness: f64, stitches: f64) -> f64 {
    2.4 * f64::from(jitter).hypot(unevenness) / stitches
}

/// Coefficient of variation after a parabola (a line below twelve) over the place in the row is taken out.
fn unevenness(lengths: &[f32]) -> f64 {
    let count = lengths.len();
    let degree = if count >= 12 { 2 } else { 1 };
    if count < degree + 2 {
        return 0.0;
    }
    let mean = lengths.iter().map(|l| f64::from(*l)).sum::<f64>() / count as f64;
    // Polynomials at right angles to each other over the places (Gram), built one from the other.
    let mut left: Vec<f64> = lengths.iter().map(|length| f64::from(*length) - mean).collect();
    let mut basis: Vec<Vec<f64>> = vec![vec![1.0; count]];
    for power in 1..=degree {
        let mut next: Vec<f64> = (0..count).map(|n| (2.0 * n as f64 / (count - 1) as f64 - 1.0).powi(power as i32)).collect();
        for known in &basis {
            take_out(&mut next, known);
        }
        take_out(&mut left, &next);
        basis.push(next);
    }
    let squares: f64 = left.iter().map(|value| value * value).sum();
    (squares / (count - degree - 1) as f64).sqrt() / mean
}

fn take_out(values: &mut [f64], known: &[f64]) {
    let size: f64 = known.iter().map(|value| value * value).sum();
    let share = values.iter().zip(known).map(|(value, known)| value * known).sum::<f64>() / size.max(1e-12);
    values.iter_mut().zip(known).for_each(|(value, known)| *value -= share * known);
}

#[cfg(test)]
mod tests {
    use super::*;

    const NUMPY: &str = include_str!("../../../tests/vectors/photo_seam.json");

    #[test]
    fn unevenness_is_what_remains_after_the_polynomial_of_numpy() {
        let rows: serde_json::Value = serde_json::from_str(NUMPY).expect("JSON");
        for row in rows["evenness"].as_array().expect("rows") {
            let lengths: Vec<f32> =
                row["lengths"].as_array().expect("numbers").iter().map(|l| l.as_f64().expect("one") as f32).collect();
            let wanted = row["cv"].as_f64().expect("a number");
            assert!((unevenness(&lengths) - wanted).abs() < 1e-6, "{} for {wanted}", unevenness(&lengths));
        }
    }

    #[test]
    fn too_few_stitches_have_no_unevenness() {
        assert_eq!(unevenness(&[]), 0.0);
        assert_eq!(unevenness(&[3.0, 4.0]), 0.0);
    }
}
