//! Which weave explains the peaks of a spectrum: two systems of yarns and a pattern that repeats over both.

use super::spectrum2d::Peak;

/// A weave that explains the peaks; frequencies in cycles per sample.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Weave {
    /// Of the yarns that cross the marked one: nearly along it (x).
    pub crossing: [f64; 2],
    /// Of the marked yarn and those beside it: nearly across it (y).
    pub marked: [f64; 2],
    /// Yarns after which the pattern repeats.
    pub repeat: i32,
    /// How many yarns it steps from one to the next.
    pub step: i32,
}

/// The best weave, how it was found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Fit {
    pub weave: Weave,
    /// Logarithm of how much likelier the peaks are by it than by chance.
    pub likely: f64,
    /// Share of the peaks, by weight, that it explains.
    pub explained: f64,
    /// How much likelier it is than the best weave of other counts, as a logarithm.
    pub margin: f64,
    /// Peaks explained.
    pub hits: usize,
    /// Standard uncertainties of both frequencies, cycles per sample.
    pub off: f64,
    /// Whether the line of a twill stands out.
    pub twill: bool,
}

/// Repeat and step: plain, twills of three and four, satins of five.
const WEAVES: [(i32, i32); 7] = [(2, 1), (3, 1), (3, -1), (4, 1), (4, -1), (5, 2), (5, -2)];
/// Share of peaks that belong to no weave. Judgement.
const STRAY: f64 = 0.15;
/// How far the marks may lie off the yarn (radians), and how far the other yarns off the square. Judgement.
const MARKS_OFF: f64 = 0.04;
const SKEW: f64 = 0.06;
/// What it costs when nothing stands out at any of the lowest lattice points. Set on drawn cloth of other seeds than the tests use.
const UNSEEN: f64 = 12.0;
/// Weaves whose kin are tried too.
const KIN: usize = 40;
/// Weaves whose lattice is tried along other axes too.
const SHEARED: usize = 4;
/// Peaks from which weaves are guessed.
const GUESSED_FROM: usize = 12;

impl Weave {
    /// Area of the cell of the lattice of peaks.
    fn cell(&self) -> f64 {
        cross(self.crossing, self.marked).abs() / f64::from(self.repeat)
    }

    /// Place of the lattice point of two indices, in parts of the repeat.
    fn point(&self, (i, j): (i32, i32)) -> [f64; 2] {
        let (u, v) = (f64::from(i) / f64::from(self.repeat), f64::from(j) / f64::from(self.repeat));
        [u * self.crossing[0] + v * self.marked[0], u * self.crossing[1] + v * self.marked[1]]
    }

    /// The lattice point nearest to a peak, and how far it is.
    fn nearest(&self, peak: &Peak) -> ((i32, i32), f64) {
        let area = cross(self.crossing, self.marked);
        let at = [peak.x, peak.y];
        let n = f64::from(self.repeat);
        let (u, v) = (cross(at, self.marked) / area * n, cross(self.crossing, at) / area * n);
        let mut best = ((0, 0), f64::INFINITY);
        for i in [u.floor() as i32, u.floor() as i32 + 1] {
            // The second index is the step times the first, but for whole repeats.
            let base = self.step * i;
            let turns = ((v - f64::from(base)) / n).round() as i32;
            for j in [base + self.repeat * (turns - 1), base + self.repeat * turns, base + self.repeat * (turns + 1)] {
                let point = self.point((i, j));
                let away = (point[0] - peak.x).hypot(point[1] - peak.y);
                if (i, j) != (0, 0) && away < best.1 {
                    best = ((i, j), away);
                }
            }
        }
        best
    }

    /// Logarithm of how much likelier the peaks are by this weave than by chance.
    fn likelihood(&self, peaks: &[Peak], bin: f64) -> f64 {
        let cell = self.cell();
        let explained: f64 = (peaks.iter())
            .map(|peak| {
                let spread = spread(peak, bin);
                let (_, away) = self.nearest(peak);
                let near = cell / (std::f64::consts::TAU * spread * spread) * (-away * away / (2.0 * spread * spread)).exp();
                weight(peak) * ((1.0 - STRAY) * near + STRAY).ln()
            })
            .sum();
        let (marks, square) = self.turned();
        explained - UNSEEN * self.unseen(peaks, bin) - 0.5 * (marks / MARKS_OFF).powi(2) - 0.5 * ((square - marks) / SKEW).powi(2)
    }

    /// Share of the lowest lattice points at which nothing stands out: a lattice of half the counts explains the same peaks and many more.
    fn unseen(&self, peaks: &[Peak], bin: f64) -> f64 {
        let low = self.low();
        let seen = |at: &&(i32, i32)| {
            let [x, y] = self.point(**at);
            let reach = 2.5 * (0.35 * bin + 0.006 * x.hypot(y));
            peaks.iter().any(|peak| (peak.x - x).hypot(peak.y - y).min((peak.x + x).hypot(peak.y + y)) < reach)
        };
        1.0 - low.iter().filter(seen).count() as f64 / low.len().max(1) as f64
    }

    /// How far the two systems are turned from the axes of the marks, in radians.
    fn turned(&self) -> (f64, f64) {
        ((-self.marked[0]).atan2(self.marked[1]), self.crossing[1].atan2(self.crossing[0]))
    }

    /// Whether such counts are woven and seen: turned little, five samples a yarn, not too unlike.
    fn possible(&self, periods: (f64, f64)) -> bool {
        let (marks, square) = self.turned();
        let (crossing, marked) = (self.crossing[0].hypot(self.crossing[1]), self.marked[0].hypot(self.marked[1]));
        let seen = |frequency: f64| (1.0 / periods.1..=1.0 / periods.0).contains(&frequency);
        marks.abs() < 3.0 * MARKS_OFF
            && (square - marks).abs() < 3.0 * SKEW
            && seen(crossing)
            && seen(marked)
            && (0.35..=2.9).contains(&(crossing / marked))
    }

    /// The same pattern moved to lie best on the peaks it explains, and the standard uncertainty of its frequencies.
    fn settled(&self, peaks: &[Peak], bin: f64) -> Option<(Weave, f64)> {
        let (mut uu, mut vv, mut uv, mut weights) = (0.0, 0.0, 0.0, 0.0);
        let (mut u_at, mut v_at, mut left) = ([0.0; 2], [0.0; 2], 0.0);
        for peak in peaks {
            let ((i, j), away) = self.nearest(peak);
            let spread = spread(peak, bin);
            if away > 2.5 * spread {
                continue;
            }
            let (u, v) = (f64::from(i) / f64::from(self.repeat), f64::from(j) / f64::from(self.repeat));
            let w = weight(peak) / (spread * spread);
            (uu, vv, uv, weights) = (uu + w * u * u, vv + w * v * v, uv + w * u * v, weights + w);
            for (n, at) in [peak.x, peak.y].into_iter().enumerate() {
                u_at[n] += w * u * at;
                v_at[n] += w * v * at;
            }
            left += w * away * away;
        }
        let area = uu * vv - uv * uv;
        if area.is_nan() || area <= 1e-6 * (uu + vv).powi(2) {
            return None;
        }
        let crossing = [0, 1].map(|n| (vv * u_at[n] - uv * v_at[n]) / area);
        let marked = [0, 1].map(|n| (uu * v_at[n] - uv * u_at[n]) / area);
        // Spread of a peak as it was found, and not less than a tenth of a bin.
        let scatter = (left / weights).sqrt().max(0.1 * bin);
        let off = scatter * (weights * uu.max(vv) / area).sqrt();
        Some((Weave { crossing, marked, ..*self }, off))
    }

    /// The lowest lattice points that a strong peak may be.
    fn low(&self) -> Vec<(i32, i32)> {
        let n = self.repeat;
        (-n..=n)
            .flat_map(|i| (-n..=n).map(move |j| (i, j)))
            .filter(|(i, j)| (i, j) != (&0, &0) && (j - self.step * i).rem_euclid(n) == 0)
            .collect()
    }
}

/// How far a peak may lie off its place: a third of a bin, and half a per cent for cloth that is not quite regular.
fn spread(peak: &Peak, bin: f64) -> f64 {
    0.35 * bin + 0.006 * peak.x.hypot(peak.y)
}

/// What a peak counts: more the higher it stands, and never very much more.
fn weight(peak: &Peak) -> f64 {
    ((peak.above / 12.0).max(1.0).ln() / 3.0).clamp(0.05, 1.5)
}

fn cross(a: [f64; 2], b: [f64; 2]) -> f64 {
    a[0] * b[1] - a[1] * b[0]
}

/// The weave that explains the peaks best; none where no two of them span one. `bin` is the width of a frequency, `periods` the least and the
/// most samples of a yarn.
pub(super) fn fit(peaks: &[Peak], bin: f64, periods: (f64, f64)) -> Option<Fit> {
    let mut found: Vec<(f64, Weave)> = Vec::new();
    let strongest = guessed_from(peaks);
    for (repeat, step) in WEAVES {
        let bare = Weave { crossing: [1.0, 0.0], marked: [0.0, 1.0], repeat, step };
        let low = bare.low();
        for (place, one) in strongest.iter().enumerate() {
            for other in &strongest[..place] {
                for p in &low {
                    for q in &low {
                        let Some(weave) = spanned(&bare, (one, *p), (other, *q)).filter(|weave| weave.possible(periods)) else {
                            continue;
                        };
                        let likely = weave.likelihood(peaks, bin);
                        if likely > 0.0 {
                            found.push((likely, weave));
                        }
                    }
                }
            }
        }
    }
    found.sort_by(|one, other| other.0.total_cmp(&one.0));
    found.truncate(300);
    // Weaves whose lattice is part of a likely one, or holds it: no two strong peaks need to span them.
    let kin: Vec<(f64, Weave)> = (found.iter().take(KIN))
        .flat_map(|(_, weave)| kin(weave))
        .chain(found.iter().take(SHEARED).flat_map(|(_, weave)| sheared(weave)))
        .filter(|weave| weave.possible(periods))
        .map(|weave| (weave.likelihood(peaks, bin), weave))
        .collect();
    found.extend(kin);
    found.sort_by(|one, other| other.0.total_cmp(&one.0));
    found.truncate(300);
    let mut settled: Vec<(f64, Weave, f64)> = (found.into_iter())
        .filter_map(|(_, weave)| {
            let (weave, _) = weave.settled(peaks, bin)?;
            let (weave, off) = weave.settled(peaks, bin)?;
            weave.possible(periods).then(|| (weave.likelihood(peaks, bin), weave, off))
        })
        .collect();
    settled.sort_by(|one, other| other.0.total_cmp(&one.0));
    let (likely, weave, off) = *settled.first()?;
    let length = |vector: [f64; 2]| vector[0].hypot(vector[1]);
    let alike = |one: [f64; 2], other: [f64; 2]| (length(one) / length(other)).ln().abs() < 0.04;
    let rival = settled.iter().find(|(_, other, _)| !alike(other.marked, weave.marked) || !alike(other.crossing, weave.crossing));
    let hit = |peak: &&Peak| weave.nearest(peak).1 < 2.5 * spread(peak, bin);
    let total: f64 = peaks.iter().map(weight).sum();
    let line = (1, if weave.repeat == 2 { 1 } else { weave.step });
    let twill = weave.repeat > 2
        && weave.step.abs() == 1
        && peaks.iter().filter(hit).any(|peak| {
            let (at, _) = weave.nearest(peak);
            at == line || at == (-line.0, -line.1)
        });
    Some(Fit {
        weave,
        likely,
        explained: peaks.iter().filter(hit).map(weight).sum::<f64>() / total,
        margin: likely - rival.map_or(0.0, |rival| rival.0),
        hits: peaks.iter().filter(hit).count(),
        off,
        twill,
    })
}

/// The same with counts of a half, two or three times, of every repeat.
fn kin(weave: &Weave) -> Vec<Weave> {
    const TIMES: [f64; 5] = [1.0, 2.0, 0.5, 3.0, 1.0 / 3.0];
    let scaled = |vector: [f64; 2], times: f64| vector.map(|at| at * times);
    (TIMES.into_iter())
        .flat_map(|c| TIMES.map(|m| (c, m)))
        .flat_map(|(c, m)| {
            WEAVES.map(|(repeat, step)| Weave {
                crossing: scaled(weave.crossing, c),
                marked: scaled(weave.marked, m),
                repeat,
                step,
            })
        })
        .collect()
}

/// The same lattice with other points of it taken for the yarns: those near by.
fn sheared(weave: &Weave) -> Vec<Weave> {
    let n = weave.repeat;
    let near = |(i, j): (i32, i32)| {
        (-2..=2)
            .flat_map(move |di| (-2..=2).map(move |dj| (i + di, j + dj)))
            .filter(move |(i, j)| (j - weave.step * i).rem_euclid(n) == 0)
    };
    near((n, 0))
        .flat_map(|c| near((0, n)).map(move |m| (c, m)))
        .flat_map(|(c, m)| WEAVES.map(|(repeat, step)| Weave { crossing: weave.point(c), marked: weave.point(m), repeat, step }))
        .collect()
}

/// Strong peaks of low frequency: harmonics stand out of a dark ring, and say less about which yarns there are.
fn guessed_from(peaks: &[Peak]) -> Vec<Peak> {
    let mut low = peaks.to_vec();
    low.sort_by(|one, other| (one.x.hypot(one.y) / weight(one)).total_cmp(&(other.x.hypot(other.y) / weight(other))));
    low.truncate(GUESSED_FROM);
    low
}

/// The weave by which two peaks have these indices.
fn spanned(bare: &Weave, (one, p): (&Peak, (i32, i32)), (other, q): (&Peak, (i32, i32))) -> Option<Weave> {
    let n = f64::from(bare.repeat);
    let ([u1, v1], [u2, v2]) = ([p.0, p.1].map(|at| f64::from(at) / n), [q.0, q.1].map(|at| f64::from(at) / n));
    let area = u1 * v2 - u2 * v1;
    if area.abs() < 1e-9 {
        return None;
    }
    let solved = |a: f64, b: f64| ((a * v2 - b * v1) / area, (b * u1 - a * u2) / area);
    let (cx, mx) = solved(one.x, other.x);
    let (cy, my) = solved(one.y, other.y);
    Some(Weave { crossing: [cx, cy], marked: [mx, my], ..*bare })
}
