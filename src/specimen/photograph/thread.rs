//! Stitches: where the needle went through, and what the thread looks like between.

use std::f32::consts::PI;

use super::super::chance::Chance;
use super::colour::{Rgb, mix, times};
use super::noise::{along, both, over, step};

/// How a row is sewn, and which side is seen.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Sewn {
    /// Lockstitch (type 301 of ISO 4915): a dash for each stitch.
    Lock,
    /// Chainstitch (type 401 of ISO 4915) seen from the looper side: a chain of loops.
    Chain,
}

/// How even the feed is: shares of the mean pitch.
#[derive(Clone, Copy)]
pub(super) struct Feed {
    /// Mean pitch on the cloth, mm.
    pub pitch: f64,
    /// Random unevenness (coefficient of variation).
    pub jitter: f64,
    /// How much each second stitch is longer and the others shorter.
    pub alternation: f64,
    /// Change of pitch from one end to the other.
    pub drift: f64,
}

/// The look of a thread.
pub(super) struct Thread {
    pub sewn: Sewn,
    pub colour: Rgb,
    /// Width, mm.
    pub wide: f32,
    /// Share of a stitch that is hidden at each end.
    pub dive: f32,
    /// How far a stitch leans across the seam, mm each end.
    pub lean: f32,
    /// Plies, and turns of ply a mm.
    pub plies: f32,
    pub twist: f32,
    /// How much thinner the ends are, 0 to 1.
    pub taper: f32,
    pub gloss: f32,
    pub fuzz: f32,
    /// Half width of a chain's loop, mm.
    pub spread: f32,
    /// Radius of a needle hole, mm.
    pub hole: f32,
    /// Colour of the under thread where it shows at the holes.
    pub under: Option<Rgb>,
}

/// A stitch as it lies: from and to along the path, and its place across.
#[derive(Clone, Copy)]
struct Lay {
    from: f32,
    to: f32,
    side: f32,
    lean: f32,
    thick: f32,
    bright: f32,
    salt: i32,
}

/// A row of stitches.
pub(super) struct Row {
    /// Place across the path, mm.
    pub across: f64,
    /// Needle holes along the path, mm of the middle line, rising.
    pub holes: Vec<f64>,
    /// Index of the hole whose stitch was skipped: the thread runs on over it.
    pub skipped: Option<usize>,
    wander: u32,
    lays: Vec<Lay>,
}

/// What thread, hole or dent does to a place.
pub(super) struct Bead {
    pub colour: Rgb,
    pub cover: f32,
    /// Slope along the seam and across it.
    pub slope: [f32; 2],
    pub gloss: f32,
    pub open: f32,
}

fn normal(chance: &mut Chance) -> f64 {
    // Twelve even draws: variance 1.
    (0..12).map(|_| chance.share()).sum::<f64>() - 6.0
}

impl Row {
    /// Sews from `start` to `end` (mm of the middle line, whose row is `stretch` times as long).
    #[expect(clippy::too_many_arguments, reason = "a row is all of these")]
    pub(super) fn sewn(
        chance: &mut Chance,
        across: f64,
        stretch: f64,
        start: f64,
        end: f64,
        feed: Feed,
        thread: &Thread,
        skip: bool,
    ) -> Row {
        let mut holes = vec![start + feed.pitch * chance.share()];
        let mut memory = 0.0;
        let mut at = holes[0];
        while at < end && holes.len() < 4000 {
            memory = 0.25 * memory + 0.968 * normal(chance);
            let side = if holes.len() % 2 == 0 { 1.0 } else { -1.0 };
            let place = (at - start) / (end - start).max(1.0) - 0.5;
            let share = 1.0 + feed.jitter * memory + side * feed.alternation + feed.drift * place;
            at += feed.pitch * share.clamp(0.55, 1.6) / stretch;
            holes.push(at);
        }
        let count = holes.len();
        let skipped = (skip && count > 14).then(|| (count as f64 * chance.between(0.4, 0.6)) as usize);
        let wander = (chance.share() * 4.0e9) as u32;
        let mut lays = Vec::new();
        let mut from = 0;
        while from + 1 < count {
            let to = if skipped == Some(from + 1) { from + 2 } else { from + 1 };
            let salt = lays.len() as i32;
            lays.push(Lay {
                from: holes[from] as f32,
                to: holes[to.min(count - 1)] as f32,
                side: 0.06 * thread.wide * normal(chance) as f32,
                lean: thread.lean * (1.0 + 0.35 * normal(chance) as f32),
                thick: 1.0 + 0.06 * normal(chance) as f32,
                bright: 1.0 + 0.05 * normal(chance) as f32,
                salt,
            });
            from = to;
        }
        Row { across, holes, skipped, wander, lays }
    }

    /// Where the row lies across the path, with the sewer's wander.
    pub(super) fn line(&self, s: f64) -> f64 {
        self.across + 0.18 * f64::from(along(s as f32 * 0.035, self.wander))
    }

    /// What the row does at a place, nothing where it is far.
    pub(super) fn at(&self, s: f32, v: f32, thread: &Thread) -> Option<Bead> {
        let side = v - self.line(f64::from(s)) as f32;
        if side.abs() > thread.wide + thread.spread + 0.6 || self.lays.is_empty() {
            return None;
        }
        let after = self.lays.partition_point(|lay| lay.from <= s);
        let here = after.saturating_sub(1);
        let mut found: Option<Bead> = None;
        // A chain's loop reaches into the next stitch and lies under its beginning.
        for place in [Some(here), here.checked_sub(1), Some(here + 1)].into_iter().flatten() {
            let Some(lay) = self.lays.get(place) else { continue };
            let bead = match thread.sewn {
                Sewn::Lock => dash(lay, s, side, thread),
                Sewn::Chain => loop_of(lay, s, side, thread),
            };
            if bead.is_some() {
                found = bead;
                break;
            }
        }
        found.or_else(|| self.hole(s, side, thread))
    }

    /// The needle hole near a place, with the dent round it.
    fn hole(&self, s: f32, side: f32, thread: &Thread) -> Option<Bead> {
        let after = self.holes.partition_point(|hole| *hole <= f64::from(s));
        let near = [after.checked_sub(1), Some(after)]
            .into_iter()
            .flatten()
            .filter_map(|place| self.holes.get(place))
            .map(|hole| s - *hole as f32)
            .min_by(|a, b| a.abs().total_cmp(&b.abs()))?;
        let far = near.hypot(side) / thread.hole;
        if far > 2.2 {
            return None;
        }
        if let Some(under) = thread.under
            && far < 0.75
        {
            return Some(Bead { colour: under, cover: 1.0, slope: [near, side], gloss: 0.05, open: 0.7 });
        }
        let dark = 1.0 - step(0.5, 1.15, far);
        let dent = (1.0 - far / 2.2) * 0.5;
        let slope = [-near / thread.hole * dent, -side / thread.hole * dent];
        Some(Bead { colour: [0.01, 0.01, 0.012], cover: 0.8 * dark, slope, gloss: 0.0, open: 1.0 - 0.35 * dent })
    }
}

/// One strand under the light: a rod of some plies. `u` is the place over its width, `run` mm along it, `rise` its slope along.
fn strand(u: f32, run: f32, rise: f32, bright: f32, salt: i32, thread: &Thread) -> Bead {
    let lies = (1.0 - u * u).max(0.0).sqrt();
    // Plies show as grooves across; they crowd towards the rod's sides.
    let phase = run * thread.twist * thread.plies + 0.32 * u.clamp(-1.0, 1.0).asin() * thread.plies / 2.0;
    let groove = (PI * phase).sin().abs();
    let hair = 1.0 + thread.fuzz * 0.25 * over(run * 9.0, u * 4.0 + salt as f32 * 3.7, 77);
    let deep = 0.70 + 0.30 * groove.powf(0.6);
    Bead {
        colour: times(thread.colour, (bright * deep * hair).max(0.05)),
        cover: 1.0,
        slope: [rise + 0.22 * (2.0 * PI * phase).sin(), -1.1 * u / (lies + 0.35)],
        gloss: thread.gloss,
        open: 0.6 + 0.4 * lies,
    }
}

fn dash(lay: &Lay, s: f32, side: f32, thread: &Thread) -> Option<Bead> {
    let long = lay.to - lay.from;
    let dive = thread.dive * long.min(4.0) + 0.03;
    let t = (s - lay.from - dive) / (long - 2.0 * dive).max(0.1);
    if !(0.0..=1.0).contains(&t) {
        return None;
    }
    let m = 2.0 * t - 1.0;
    let end = m.abs().powi(5);
    let rag = 1.0 + thread.fuzz * 0.18 * over(s * 7.0, lay.salt as f32 + side.signum() * 40.0, 5);
    let half = 0.5 * thread.wide * lay.thick * (1.0 - thread.taper * m * m) * (1.0 - 0.75 * end) * rag;
    let u = (side - lay.side - lay.lean * m) / half.max(0.02);
    if u.abs() >= 1.0 {
        return None;
    }
    let mut bead = strand(u, s, -0.75 * m.powi(3), lay.bright, lay.salt, thread);
    bead.open *= 1.0 - 0.35 * end;
    Some(bead)
}

fn loop_of(lay: &Lay, s: f32, side: f32, thread: &Thread) -> Option<Bead> {
    let long = lay.to - lay.from;
    let t = (s - lay.from) / (long * 1.16);
    if !(-0.02..=1.0).contains(&t) {
        return None;
    }
    let bow = (PI * t.max(0.0).powf(0.8)).sin().max(0.0).powf(0.7);
    let half = 0.5 * thread.wide * lay.thick * 0.86;
    for (sign, full) in [(1.0_f32, 1.0_f32), (-1.0, 0.82)] {
        let centre = sign * (0.22 * thread.wide + thread.spread * full * bow) + lay.side + 0.4 * lay.lean * (2.0 * t - 1.0);
        let u = (side - centre) / half;
        if u.abs() < 1.0 {
            let mut bead =
                strand(u, s * (1.0 + 0.1 * sign), 0.5 * (2.0 * t - 1.0), lay.bright, lay.salt * 2 + sign as i32, thread);
            // The loop's head goes under the next loop.
            bead.open *= 1.0 - 0.45 * step(0.80, 1.0, t);
            return Some(bead);
        }
    }
    // The needle thread crosses the mouth of the loop.
    let knot = (t - 0.06).abs() / 0.09;
    if knot < 1.0 && side.abs() < 0.30 * thread.wide {
        let mut bead = strand(side / (0.32 * thread.wide), s, 0.0, lay.bright * 0.9, lay.salt, thread);
        bead.colour = mix(bead.colour, [0.0; 3], 0.15 + 0.1 * both(lay.salt, 3, 9).abs());
        return Some(bead);
    }
    None
}
