//! What all answers say together: how likely each band is, and how the groups and aspects of the garment stand.

use std::rc::Rc;

use crate::trade::{Aspect, Band};

use super::curve::Group;
use super::evidence::Evidence;
use super::tables::{ETA, Grid, PAD, PSI, STEP, Tables, VARIANCE, psi_at, sd_given_psi};

/// Odds beyond which one group's answers are not followed further. Never met by fewer than 17 careful answers in one group; with
/// hundreds it keeps seven contradicting groups from multiplying to zero everywhere: seven times 1e-40, and 1e-15 before any answer.
pub(super) const FAINTEST: f64 = 1e-40;
/// Answers multiplied before the product is taken into logarithms; 0.02 / levels to this power is far from underflow.
const FOLD: usize = 32;
/// Weights of nodes below this share of the whole add nothing that a double can hold.
pub(super) const NEGLIGIBLE: f64 = 1e-17;
/// How sure it must be that an aspect stands above or below the rest of the garment, in standard deviations: 0.7 one-sided. Judgement.
const LEANS: f64 = 0.5244;

/// How likely each band is; not negative, sums to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bands([f64; 5]);

/// Neighbouring bands and the probability that they hold together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// Worst band of the run.
    pub first: Band,
    /// Best band of the run; may be the same.
    pub last: Band,
    /// Probability of the run, 0 to 1.
    pub mass: f64,
}

impl Run {
    /// Number of bands in the run, 1 to 5.
    pub const fn length(&self) -> usize {
        self.last.index() - self.first.index() + 1
    }

    /// The bands of the run, worst first.
    pub fn bands(&self) -> impl Iterator<Item = Band> + use<> {
        Band::ALL.into_iter().skip(self.first.index()).take(self.length())
    }
}

impl Bands {
    /// Probabilities by [`Band::ALL`], scaled to sum to 1; none unless all are finite and not negative, and one is above 0.
    pub fn new(probabilities: [f64; 5]) -> Option<Bands> {
        let total: f64 = probabilities.iter().sum();
        let sound = total > 0.0 && total.is_finite() && probabilities.iter().all(|&p| p >= 0.0);
        sound.then(|| Bands(probabilities.map(|p| p / total)))
    }

    /// Probability of a band, 0 to 1.
    pub const fn probability(&self, band: Band) -> f64 {
        self.0[band.index()]
    }

    /// Probabilities by [`Band::ALL`].
    pub const fn all(&self) -> [f64; 5] {
        self.0
    }

    /// The likeliest band; of equals the worse.
    pub fn likely(&self) -> Band {
        self.heaviest(1).first
    }

    /// The likeliest run of so many neighbouring bands (held to 1 to 5); of equals the worse.
    pub fn heaviest(&self, length: usize) -> Run {
        let length = length.clamp(1, 5);
        let run = |first: usize| Run {
            first: Band::ALL[first],
            last: Band::ALL[first + length - 1],
            mass: self.0[first..first + length].iter().sum(),
        };
        // Rounding must not decide between equals.
        (1..=5 - length).map(run).fold(run(0), |best, next| if next.mass > best.mass + 1e-12 { next } else { best })
    }

    /// The shortest run of neighbouring bands that holds at least this probability; of equally short ones the likelier, then the
    /// worse. All five for a level of 1 or more, or one that is not a number.
    pub fn shortest_run(&self, level: f64) -> Run {
        (1..5).map(|length| self.heaviest(length)).find(|run| run.mass >= level - 1e-12).unwrap_or_else(|| self.heaviest(5))
    }

    /// Uncertainty about the band in bits, 0 to log2(5) = 2.32. Before any answer it is 2.0423.
    ///
    /// # Source
    /// Shannon (1948), A mathematical theory of communication.
    pub fn entropy(&self) -> f64 {
        self.0.iter().filter(|&&p| p > 0.0).map(|p| -p * p.log2()).sum::<f64>().max(0.0)
    }
}

/// How one group or aspect of a garment stands, in standard deviations of quality among new garments.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Where it stands: quality as read, with what is peculiar to the group. 0 is the middle of the market.
    pub mean: f64,
    /// Standard deviation of that.
    pub sd: f64,
    /// How far it stands above (or below) the garment as a whole.
    pub lean: f64,
    /// Standard deviation of that.
    pub lean_sd: f64,
    /// Answers that it rests on.
    pub answers: usize,
}

/// What the answers of one group say.
#[derive(Clone, Debug)]
pub(super) struct Pool {
    pub(super) answers: usize,
    /// Product of likelihoods along eta, scaled so that the largest is 1.
    pub(super) product: [f64; ETA],
    /// The same as quality alone shows it: the mean over the group's error, at each node of psi.
    pub(super) seen: [f64; PSI],
    /// Logarithm of what the scaling took out.
    log_scale: f64,
}

impl Pool {
    fn new(answers: usize, mut product: [f64; ETA], log_scale: f64, grid: &Grid, group: Group) -> Pool {
        let largest = product.iter().copied().fold(f64::MIN_POSITIVE, f64::max);
        product.iter_mut().for_each(|value| *value = (*value / largest).max(FAINTEST));
        let seen = grid.kernels[group.index()].mean(&product);
        Pool { answers, product, seen, log_scale: log_scale + largest.ln() }
    }

    /// Multiplies likelihoods; total for any number of them.
    fn of(likelihoods: impl Iterator<Item = [f64; ETA]>, grid: &Grid, group: Group) -> Option<Pool> {
        let (mut answers, mut product, mut logs) = (0, [1.0; ETA], None::<[f64; ETA]>);
        for likelihood in likelihoods {
            if answers > 0 && answers % FOLD == 0 {
                let logs = logs.get_or_insert([0.0; ETA]);
                logs.iter_mut().zip(&product).for_each(|(log, value): (&mut f64, &f64)| *log += value.ln());
                product = [1.0; ETA];
            }
            product.iter_mut().zip(&likelihood).for_each(|(value, factor)| *value *= factor);
            answers += 1;
        }
        let Some(logs) = logs else {
            return (answers > 0).then(|| Pool::new(answers, product, 0.0, grid, group));
        };
        let logs: [f64; ETA] = std::array::from_fn(|node| logs[node] + product[node].ln());
        let largest = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        Some(Pool::new(answers, logs.map(|log| (log - largest).exp()), largest, grid, group))
    }
}

/// Belief about the quality of one garment.
///
/// Quality theta is standard normal among new garments of the family. One reading of one garment shares an error over all checks
/// (psi = theta + error), and checks that look at the same thing share another (eta = psi + the group's error), so answers that
/// resemble each other do not count as often as they are given. Given eta, answers are independent and follow their curves.
///
/// # Source
/// Samejima (1969), graded responses; Bradlow, Wainer and Wang (1999), A Bayesian random effects model for testlets, Psychometrika
/// 64 (from memory). All constants are judgement, not measured.
#[derive(Clone, Debug)]
pub struct Belief {
    pub(super) grid: Rc<Grid>,
    pub(super) pools: [Option<Box<Pool>>; 7],
    /// Weight of each node of psi; sums to 1.
    pub(super) psi: [f64; PSI],
    bands: Bands,
    mean: f64,
    sd: f64,
    log_evidence: f64,
}

impl Belief {
    /// What these answers say together. Their order does not matter; with none, this is what is known of any new garment.
    pub fn new(tables: &Tables, evidence: &[Evidence<'_>]) -> Belief {
        let pools = Group::ALL.map(|group| {
            let of_group = evidence.iter().filter(|piece| piece.curve().group == group);
            Pool::of(of_group.map(|piece| tables.likelihood(piece)), &tables.grid, group).map(Box::new)
        });
        Belief::from_pools(Rc::clone(&tables.grid), pools)
    }

    /// Belief after one more answer, for a fraction of the work of starting anew.
    pub fn after(&self, tables: &Tables, piece: &Evidence<'_>) -> Belief {
        let group = piece.curve().group;
        let mut likelihood = tables.likelihood(piece);
        let mut pools = self.pools.clone();
        let pool = &mut pools[group.index()];
        let (mut answers, mut log_scale) = (1, 0.0);
        if let Some(earlier) = pool {
            likelihood.iter_mut().zip(&earlier.product).for_each(|(value, factor)| *value *= factor);
            (answers, log_scale) = (earlier.answers + 1, earlier.log_scale);
        }
        *pool = Some(Box::new(Pool::new(answers, likelihood, log_scale, &self.grid, group)));
        Belief::from_pools(Rc::clone(&self.grid), pools)
    }

    fn from_pools(grid: Rc<Grid>, pools: [Option<Box<Pool>>; 7]) -> Belief {
        let mut psi = grid.prior;
        let mut log_evidence = 0.0;
        for pool in pools.iter().flatten() {
            psi.iter_mut().zip(&pool.seen).for_each(|(weight, seen)| *weight *= seen);
            log_evidence += pool.log_scale;
        }
        let total: f64 = psi.iter().sum();
        psi.iter_mut().for_each(|weight| *weight /= total);
        let (mean, variance) = moments(&psi, |node| (psi_at(node), 0.0));
        let given_psi = sd_given_psi();
        Belief {
            bands: Bands(grid.band_probabilities(&psi)),
            mean: mean / VARIANCE,
            sd: (variance / (VARIANCE * VARIANCE) + given_psi * given_psi).sqrt(),
            log_evidence: log_evidence + total.ln(),
            grid,
            pools,
            psi,
        }
    }

    /// How likely each band is.
    pub fn bands(&self) -> Bands {
        self.bands
    }

    /// Mean of quality, in standard deviations among new garments.
    pub fn mean(&self) -> f64 {
        self.mean
    }

    /// Standard deviation of quality, in the same unit; 1 before any answer.
    pub fn sd(&self) -> f64 {
        self.sd
    }

    /// Number of answers behind it.
    pub fn answers(&self) -> usize {
        self.pools.iter().flatten().map(|pool| pool.answers).sum()
    }

    /// Natural logarithm of the probability of these very answers: 0 for none, and the lower the odder they are together.
    pub fn log_evidence(&self) -> f64 {
        self.log_evidence
    }

    /// How much of the uncertainty about the band is gone: 0 before any answer (or when answers contradict each other so much
    /// that one knows less than before), 1 when the band is certain.
    pub fn sureness(&self) -> f64 {
        let before = Bands(self.grid.band_probabilities(&self.grid.prior)).entropy();
        (1.0 - self.bands.entropy() / before).clamp(0.0, 1.0)
    }

    /// The hill: density of quality at so many evenly spaced points from -3 to 3, as `(quality, density)`.
    pub fn hill(&self, points: usize) -> Vec<(f64, f64)> {
        let sd = sd_given_psi();
        let height = 1.0 / (sd * (2.0 * std::f64::consts::PI).sqrt());
        let step = if points > 1 { 6.0 / (points - 1) as f64 } else { 0.0 };
        // Beyond 7 standard deviations a node adds less than 1e-10 of its weight: about 20 of the 61 nodes matter at a point.
        let near = (7.0 * sd * VARIANCE / STEP) as usize + 1;
        let density = |theta: f64| {
            let centre = (theta * VARIANCE / STEP + (PSI / 2) as f64).round() as usize;
            let nodes = centre.saturating_sub(near)..(centre + near + 1).min(PSI);
            let at = |node: usize| {
                let z = (theta - psi_at(node) / VARIANCE) / sd;
                self.psi[node] * (-0.5 * z * z).exp()
            };
            nodes.map(at).sum::<f64>() * height
        };
        (0..points).map(|point| step.mul_add(point as f64, -3.0)).map(|theta| (theta, density(theta))).collect()
    }

    /// How one group stands; with no answers of its own it is pulled along by the rest.
    pub fn group(&self, group: Group) -> Reading {
        self.reading(&[group])
    }

    /// How one aspect stands: its groups that have answers, in equal parts (so seams are not outvoted by many looks at
    /// stitches). None when it has no answer.
    pub fn aspect(&self, aspect: Aspect) -> Option<Reading> {
        let answered: Vec<Group> =
            Group::ALL.into_iter().filter(|group| group.aspect() == aspect && self.pools[group.index()].is_some()).collect();
        (!answered.is_empty()).then(|| self.reading(&answered))
    }

    /// The aspect that stands furthest above the garment as a whole, when one with two answers or more does so with a probability
    /// of 0.7 (judgement).
    pub fn strongest(&self) -> Option<Aspect> {
        self.leaning(1.0)
    }

    /// The aspect that stands furthest below the garment as a whole, on the same terms as [`Belief::strongest`].
    pub fn weakest(&self) -> Option<Aspect> {
        self.leaning(-1.0)
    }

    fn leaning(&self, sign: f64) -> Option<Aspect> {
        Aspect::ALL
            .into_iter()
            .filter_map(|aspect| self.aspect(aspect).map(|reading| (aspect, reading)))
            .filter(|(_, reading)| reading.answers >= 2 && sign * reading.lean >= LEANS * reading.lean_sd)
            .max_by(|(_, one), (_, other)| (sign * one.lean).total_cmp(&(sign * other.lean)))
            .map(|(aspect, _)| aspect)
    }

    /// Mean and spread of psi plus the average error of the groups. Given psi, groups are independent: their variances add.
    fn reading(&self, groups: &[Group]) -> Reading {
        let count = groups.len().max(1) as f64;
        let (mut lean, mut variance, mut answers) = ([0.0; PSI], [0.0; PSI], 0);
        for &group in groups {
            let kernel = &self.grid.kernels[group.index()];
            let pool = self.pools[group.index()].as_deref();
            answers += pool.map_or(0, |pool| pool.answers);
            for node in 0..PSI {
                let (mut sum, mut squares, mut total) = (0.0, 0.0, 0.0);
                for (j, weight) in kernel.half.iter().enumerate() {
                    let away = j * kernel.stride;
                    let error = away as f64 * STEP;
                    let at = |place: usize| pool.map_or(1.0, |pool| pool.product[place]);
                    let (below, above) = (at(node + PAD - away), if j == 0 { 0.0 } else { at(node + PAD + away) });
                    total += weight * (below + above);
                    sum += weight * error * (above - below);
                    squares += weight * error * error * (above + below);
                }
                let mean = sum / total;
                lean[node] += mean / count;
                variance[node] += (squares / total - mean * mean).max(0.0) / (count * count);
            }
        }
        let (mean, spread) = moments(&self.psi, |node| (psi_at(node) + lean[node], variance[node]));
        let (lean, lean_spread) = moments(&self.psi, |node| (lean[node], variance[node]));
        Reading { mean, sd: spread.sqrt(), lean, lean_sd: lean_spread.sqrt(), answers }
    }
}

/// Mean and variance of something whose mean and variance are known at each node of psi.
fn moments(psi: &[f64; PSI], at: impl Fn(usize) -> (f64, f64)) -> (f64, f64) {
    let mean: f64 = psi.iter().enumerate().map(|(node, weight)| weight * at(node).0).sum();
    let variance = |(node, weight): (usize, &f64)| {
        let (value, within) = at(node);
        weight * ((value - mean) * (value - mean) + within)
    };
    (mean, psi.iter().enumerate().map(variance).sum())
}
