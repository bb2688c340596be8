//! What belief is computed on: the grid of quality, and each check's curve along it, worked out once and kept.
//!
//! The steps of the groups' errors are whole steps of quality, so quality plus a group's error falls on one line of nodes. A curve
//! is then a table along a line instead of a plane, the answers of a group multiply along that line, and taking in the group's
//! error is one short weighted sum per node. That is some twenty times less work than a plane of nodes per check.

use std::cell::RefCell;
use std::fmt;
use std::rc::Rc;

use crate::quantity::normal;
use crate::trade::Band;

use super::curve::{Curve, Group, READING_ERROR};
use super::evidence::Evidence;

/// Step of the grid, in standard deviations of quality among new garments.
///
/// The trapezoid rule on these smooth, bell-shaped integrands errs by less than 1e-9 at this step for slopes up to 1.6 (measured
/// against steps of 0.1 over 45 sheets of answers: all worst, all best, random, groups that contradict each other); at 0.4 it errs by 1e-6.
pub(super) const STEP: f64 = 0.3;
/// Nodes of quality as read, psi, from -9 to 9.
pub(super) const PSI: usize = 61;
/// Nodes on either side that only a group's error reaches.
pub(super) const PAD: usize = 24;
/// Nodes of quality as one group shows it, eta = psi + the group's error, from -16.2 to 16.2.
pub(super) const ETA: usize = PSI + 2 * PAD;
/// Variance of psi among new garments: quality has variance 1, the reading error is on top.
pub(super) const VARIANCE: f64 = 1.0 + READING_ERROR * READING_ERROR;
/// How many spreads of a group's error the sum takes in. Six leave an error of 2e-6 where groups contradict each other.
const REACH: f64 = 7.5;

/// psi at a node.
pub(super) fn psi_at(node: usize) -> f64 {
    (node as f64 - (PSI / 2) as f64) * STEP
}

/// Standard deviation of quality once psi is known.
pub(super) fn sd_given_psi() -> f64 {
    READING_ERROR / VARIANCE.sqrt()
}

/// Weights of a group's error: `half[j]` belongs to an error of plus and of minus `j * stride` steps; all together sum to 1.
#[derive(Debug)]
pub(super) struct Kernel {
    pub(super) stride: usize,
    pub(super) half: Vec<f64>,
}

impl Kernel {
    fn new(spread: f64) -> Kernel {
        // Twice the step is enough for the wider error (the spread is then still 1.7 strides).
        let stride = if spread >= 1.0 { 2 } else { 1 };
        let size = (REACH * spread / (stride as f64 * STEP)).floor().min((PAD / stride) as f64) as usize;
        let mut half: Vec<f64> = (0..=size)
            .map(|j| {
                let z = (j * stride) as f64 * STEP / spread;
                if j == 0 { 1.0 } else { (-0.5 * z * z).exp() }
            })
            .collect();
        let total = half[0] + 2.0 * half[1..].iter().sum::<f64>();
        half.iter_mut().for_each(|weight| *weight /= total);
        Kernel { stride, half }
    }

    /// The mean of `line` over the group's error, at each node of psi.
    pub(super) fn mean(&self, line: &[f64; ETA]) -> [f64; PSI] {
        let mut mean = [0.0; PSI];
        for (node, slot) in mean.iter_mut().enumerate() {
            let centre = node + PAD;
            let mut sum = self.half[0] * line[centre];
            let mut away = self.stride;
            for weight in &self.half[1..] {
                sum += weight * (line[centre - away] + line[centre + away]);
                away += self.stride;
            }
            *slot = sum;
        }
        mean
    }

    /// The other way: spreads an amount that stands at a node of psi over the nodes of eta.
    pub(super) fn scatter<const N: usize>(&self, node: usize, amount: [f64; N], line: &mut [[f64; N]; ETA]) {
        let centre = node + PAD;
        let mut away = 0;
        for (j, weight) in self.half.iter().enumerate() {
            for (n, part) in amount.iter().enumerate() {
                line[centre + away][n] += weight * part;
                if j > 0 {
                    line[centre - away][n] += weight * part;
                }
            }
            away += self.stride;
        }
    }
}

/// The fixed part: nodes, what is known before any answer, bands, the groups' errors.
#[derive(Debug)]
pub(super) struct Grid {
    /// Weight of each node of psi before any answer; sums to 1.
    pub(super) prior: [f64; PSI],
    /// Probability of each band at each node of psi.
    pub(super) bands: [[f64; 5]; PSI],
    /// By [`Group::ALL`].
    pub(super) kernels: [Kernel; 7],
}

impl Grid {
    fn new(spread: impl Fn(Group) -> f64) -> Grid {
        let mut prior: [f64; PSI] = std::array::from_fn(|node| (-psi_at(node) * psi_at(node) / (2.0 * VARIANCE)).exp());
        let total: f64 = prior.iter().sum();
        prior.iter_mut().for_each(|weight| *weight /= total);
        let bands = std::array::from_fn(|node| {
            let at = |cut: f64| (cut - psi_at(node) / VARIANCE) / sd_given_psi();
            std::array::from_fn(|band| {
                let low = if band == 0 { f64::NEG_INFINITY } else { at(Band::BORDERS[band - 1]) };
                let high = if band + 1 == Band::ALL.len() { f64::INFINITY } else { at(Band::BORDERS[band]) };
                normal::area_between(low, high)
            })
        });
        Grid { prior, bands, kernels: Group::ALL.map(|group| Kernel::new(spread(group))) }
    }

    /// Probability of each band when the nodes of psi have these weights.
    pub(super) fn band_probabilities(&self, psi: &[f64; PSI]) -> [f64; 5] {
        let mut bands = [0.0; 5];
        for (weight, given) in psi.iter().zip(&self.bands) {
            for (band, share) in bands.iter_mut().zip(given) {
                *band += weight * share;
            }
        }
        bands
    }
}

/// A curve along the nodes of eta.
pub(super) struct Response {
    /// Row k: probability of an answer beyond threshold k.
    pub(super) at_least: Vec<[f64; ETA]>,
}

impl Response {
    fn new(curve: &Curve) -> Response {
        let mut before = [1.0; ETA];
        let at_least = (0..curve.thresholds.len())
            .map(|k| {
                for (node, value) in before.iter_mut().enumerate() {
                    let eta = (node as f64 - (ETA / 2) as f64) * STEP;
                    *value = curve.at_least(k, eta, *value);
                }
                before
            })
            .collect();
        Response { at_least }
    }

    /// Likelihood of an answer along the nodes; at least lapse / levels, so never 0.
    pub(super) fn likelihood(&self, weights: &[f64], lapse: f64) -> [f64; ETA] {
        let levels = self.at_least.len() + 1;
        let first = weights.first().copied().unwrap_or(0.0);
        let mut likelihood = [(1.0 - lapse) * first + lapse / levels as f64; ETA];
        // sum of w_k (c_k - c_(k+1)) = w_0 + sum of (w_k - w_(k-1)) c_k: one row less, and none where neighbours weigh the same.
        for (pair, row) in weights.windows(2).zip(&self.at_least) {
            let step = (1.0 - lapse) * (pair[1] - pair[0]);
            if step != 0.0 {
                for (value, at_least) in likelihood.iter_mut().zip(row) {
                    *value += step * at_least;
                }
            }
        }
        likelihood
    }
}

/// A curve's numbers, which are all that its table depends on. Slices live for ever, so their address stands for their content.
type Key = (u64, *const f64, usize);

/// Owner of what is worked out once: the grid, and a table for each curve, made when it is first met (about 3 KB each).
///
/// Make one for the life of the program and hand it to whatever grades.
pub struct Tables {
    pub(super) grid: Rc<Grid>,
    curves: RefCell<Vec<(Key, Rc<Response>)>>,
}

impl Tables {
    /// Tables for grading.
    pub fn new() -> Tables {
        Tables::with(Group::spread)
    }

    /// Tables in which no two checks share an error. For comparison only: beliefs on them are surer than they have a right to be.
    pub fn without_groups() -> Tables {
        Tables::with(|_| 0.0)
    }

    fn with(spread: impl Fn(Group) -> f64) -> Tables {
        Tables { grid: Rc::new(Grid::new(spread)), curves: RefCell::new(Vec::new()) }
    }

    /// The curve's table.
    pub(super) fn response(&self, curve: &Curve) -> Rc<Response> {
        let key: Key = (curve.slope.to_bits(), curve.thresholds.as_ptr(), curve.thresholds.len());
        if let Some((_, response)) = self.curves.borrow().iter().find(|(known, _)| *known == key) {
            return Rc::clone(response);
        }
        let response = Rc::new(Response::new(curve));
        self.curves.borrow_mut().push((key, Rc::clone(&response)));
        response
    }

    /// Likelihood of a piece of evidence along the nodes of eta.
    pub(super) fn likelihood(&self, evidence: &Evidence<'_>) -> [f64; ETA] {
        self.response(evidence.curve()).likelihood(evidence.weights().parts(), evidence.care().lapse())
    }
}

impl Default for Tables {
    fn default() -> Tables {
        Tables::new()
    }
}

impl fmt::Debug for Tables {
    /// Says how many curves are kept; the numbers themselves would fill pages.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Tables").field("curves", &self.curves.borrow().len()).finish_non_exhaustive()
    }
}
