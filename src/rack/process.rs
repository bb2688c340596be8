//! What references teach about tickets: a Student-t process on the logarithm of ticket over build-up.

use super::student_t::StudentT;
use super::traits::{Reference, Traits};
use crate::trade::Name;
use crate::turns::{in_one_turn, without_pause};

/// How much tickets vary, and with whom they vary together: standard deviations of the natural logarithm. All judgement, held against
/// simulated markets and never against a real one; editable.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spreads {
    /// Of one ticket on its own.
    pub own: f64,
    /// How firmly [`own`](Self::own) is believed, as degrees of freedom.
    pub degrees: f64,
    /// The market's level against the build-up.
    pub level: f64,
    /// How much more than in proportion dear build-ups cost, for each unit of their logarithm.
    pub slope: f64,
    /// What garments of a family share.
    pub family: f64,
    /// What garments of a shop share.
    pub shop: f64,
    /// What garments of a maker share.
    pub maker: f64,
    /// What garments of a family with like build-ups share.
    pub like: f64,
    /// How far apart in the logarithm of the build-up still counts as like.
    pub reach: f64,
}

impl Spreads {
    /// The usual ones. Judgement.
    pub const USUAL: Spreads = Spreads {
        own: 0.22,
        degrees: 8.0,
        level: 0.28,
        slope: 0.20,
        family: 0.15,
        shop: 0.20,
        maker: 0.25,
        like: 0.20,
        reach: 1.0,
    };
    /// The build-up, in US dollars, from which the slope counts. Judgement: a middling ticket.
    pub const MIDDLING: f64 = 60.0;

    /// With what is not finite or below nothing put back to the usual, and what would overflow capped.
    fn sound(self) -> Spreads {
        let usual = Spreads::USUAL;
        let at_least = |value: f64, least: f64, usual: f64| if value >= least && value <= 1e3 { value } else { usual };
        Spreads {
            own: at_least(self.own, 1e-3, usual.own),
            degrees: at_least(self.degrees, 1e-3, usual.degrees),
            level: at_least(self.level, 0.0, usual.level),
            slope: at_least(self.slope, 0.0, usual.slope),
            family: at_least(self.family, 0.0, usual.family),
            shop: at_least(self.shop, 0.0, usual.shop),
            maker: at_least(self.maker, 0.0, usual.maker),
            like: at_least(self.like, 0.0, usual.like),
            reach: at_least(self.reach, 1e-3, usual.reach),
        }
    }

    fn from_middling(traits: &Traits) -> f64 {
        traits.explained.mu() - Spreads::MIDDLING.ln()
    }

    /// Covariance of what two different garments share, in units of `own` squared.
    fn shared(&self, one: &Traits, other: &Traits) -> f64 {
        let same = |one: &Option<String>, other: &Option<String>| one.is_some() && one == other;
        let mut sum = self.level.powi(2) + self.slope.powi(2) * Spreads::from_middling(one) * Spreads::from_middling(other);
        if one.family == other.family {
            let apart = (one.explained.mu() - other.explained.mu()) / self.reach;
            sum += self.family.powi(2) + self.like.powi(2) * (-0.5 * apart * apart).exp();
        }
        if same(&one.shop, &other.shop) {
            sum += self.shop.powi(2) + one.explained.of_shop() * other.explained.of_shop();
        }
        if same(&one.maker, &other.maker) {
            sum += self.maker.powi(2);
        }
        sum / self.own.powi(2)
    }

    /// Variance of the same for one garment; a shop or maker that is not known varies as much as any.
    fn alone(&self, one: &Traits) -> f64 {
        let kin = self.level.powi(2) + self.family.powi(2) + self.shop.powi(2) + self.maker.powi(2) + self.like.powi(2);
        let slope = self.slope.powi(2) * Spreads::from_middling(one).powi(2);
        (kin + slope + one.explained.of_shop().powi(2)) / self.own.powi(2)
    }
}

/// Times that weights are set anew. Judgement: a fourth moves them no further that matters.
const PASSES: usize = 3;

/// What references have taught. Made once for a rack; each prediction from it is quick.
#[derive(Clone, Debug)]
pub struct Learned {
    spreads: Spreads,
    references: Vec<Reference>,
    /// How far each reference's log ticket stood from what was expected of it before.
    surprises: Vec<f64>,
    /// Each reference's own variance, in units of `own` squared, and what it is divided by where its ticket looks like a slip.
    own: Vec<f64>,
    weights: Vec<f64>,
    solved: Solved,
    degrees: f64,
    scale: f64,
}

/// The covariance of the references, taken apart.
#[derive(Clone, Debug, Default)]
struct Solved {
    root: Triangle,
    /// Inverse covariance times surprises.
    alpha: Vec<f64>,
    /// Diagonal of the inverse covariance.
    inverse: Vec<f64>,
}

/// Learns from references, in any order; from none, it knows what it knew before.
///
/// # Formula
/// Log ticket of reference i: mean `m_i` (build-up and name) and, given `s`, covariance `s^2 C` with `C = K + diag((1 + u_i^2/s0^2) / w_i)`,
/// K what garments share, u the spread of build-up and name, `s^2` inverse gamma of `nu0/2`, `nu0 s0^2/2`. With surprises `r = y - m`:
/// `alpha = C^-1 r`, `s^2` has `nu0 + sum w` degrees about `(nu0 s0^2 + r alpha) / (nu0 + sum w)`. With `slips`, three passes set weights
/// `w = min(1, 5/(4 + e^2/t^2))`, `e` what is left of a surprise after the fit and `t^2` its variance, so that a mistyped ticket or a sale price
/// pulls less.
///
/// `e = W alpha` and `t^2 = s^2 (D + W - W^2 diag(C^-1))` with `D = 1 + u^2/s0^2`, `W = D/w`, which needs no product of full matrices.
///
/// Weights are measured against the market as it is (`s^2`, not `s0^2`), and a reference that counts half counts half as a witness of how much
/// tickets vary. With `s0^2` and full counts a market twice as variable as assumed was taken for one full of slips: its 80 % range held 63 %
/// of tickets with fifty references, now 74 %; in a market as assumed 77 %, now 78 % (1500 seeded markets of three strangers each).
///
/// # Source
/// Conjugate normal-inverse-gamma regression as a process: Shah, Wilson and Ghahramani (2014), Student-t processes as alternatives to
/// Gaussian processes (from memory). Weights: Student t with 4 degrees as a mixture, Lange, Little and Taylor (1989) (from memory).
pub fn learn(spreads: Spreads, references: Vec<Reference>, slips: bool) -> Learned {
    in_one_turn(learn_in_turns(spreads, references, slips, &without_pause))
}

/// The same with pauses, since a few hundred references take longer than a hand should wait.
pub async fn learn_in_turns(spreads: Spreads, references: Vec<Reference>, slips: bool, pause: &impl AsyncFn()) -> Learned {
    let spreads = spreads.sound();
    let variance = spreads.own.powi(2);
    let before: Vec<(f64, f64)> = references.iter().map(|reference| reference.traits().before(reference.traits().name)).collect();
    let surprises: Vec<f64> =
        references.iter().zip(&before).map(|(reference, (mean, _))| reference.log_ticket() - mean).collect();
    let own: Vec<f64> = before.iter().map(|(_, more)| 1.0 + more / variance).collect();
    let cell = |row: usize, column: usize| {
        let (one, other) = (references[row].traits(), references[column].traits());
        if row == column { spreads.alone(one) } else { spreads.shared(one, other) }
    };
    let shared = Triangle::new(references.len(), cell, pause).await;
    let mut weights = vec![1.0; references.len()];
    let mut solved = Solved::new(&shared, &own, &weights, &surprises, pause).await;
    let belief = |solved: &Solved, weights: &[f64]| {
        let degrees = spreads.degrees + weights.iter().sum::<f64>();
        (degrees, (spreads.degrees * variance + dot(&surprises, &solved.alpha).max(0.0)) / degrees)
    };
    for _ in 0..if slips { PASSES } else { 0 } {
        let (_, scale) = belief(&solved, &weights);
        for (place, weight) in weights.iter_mut().enumerate() {
            let noise = own[place] / *weight;
            let rest = noise * solved.alpha[place];
            let spread = scale * (own[place] + noise - noise * noise * solved.inverse[place]);
            *weight = f64::min(1.0, 5.0 / (4.0 + rest * rest / spread.max(f64::MIN_POSITIVE)));
        }
        solved = Solved::new(&shared, &own, &weights, &surprises, pause).await;
    }
    let (degrees, scale) = belief(&solved, &weights);
    Learned { spreads, references, surprises, own, weights, solved, degrees, scale }
}

impl Learned {
    /// The references it learnt from, in the order given.
    pub fn references(&self) -> &[Reference] {
        &self.references
    }

    /// How much each reference counts, 1 for one that looks like no slip.
    pub fn weights(&self) -> &[f64] {
        &self.weights
    }

    /// How far each reference's log ticket stood from its build-up and name.
    pub(super) fn surprises(&self) -> &[f64] {
        &self.surprises
    }

    /// The log ticket of a garment, for each of several names; none stands for an unknown one taken as a single wide name.
    pub(super) fn predictions(&self, traits: &Traits, names: &[Option<Name>]) -> Vec<StudentT> {
        let shared: Vec<f64> = self.references.iter().map(|reference| self.spreads.shared(reference.traits(), traits)).collect();
        let known = self.solved.root.forward(&shared);
        let (shift, known) = (dot(&shared, &self.solved.alpha), dot(&known, &known));
        let of = |name: &Option<Name>| {
            let (mean, more) = traits.before(*name);
            let spread = self.spreads.alone(traits) + 1.0 + more / self.spreads.own.powi(2) - known;
            StudentT::new(self.degrees, mean + shift, (self.scale * spread.max(f64::MIN_POSITIVE)).sqrt())
        };
        names.iter().filter_map(of).collect()
    }

    /// What each reference's surprise counts for in the prediction of a garment; the sum of weight times surprise is how far the centre
    /// moved from where it stood without references.
    pub(super) fn pulls(&self, traits: &Traits) -> Vec<f64> {
        let shared: Vec<f64> = self.references.iter().map(|reference| self.spreads.shared(reference.traits(), traits)).collect();
        self.solved.root.backward(self.solved.root.forward(&shared))
    }

    /// How surprising a reference's own ticket is beside all the others: the probability of a lower one. Below 0.01 or above 0.99 it is
    /// worth asking whether it was a sale price, or a slip. None for a place that no reference has.
    ///
    /// # Formula
    /// Left out in closed form: `y_i - alpha_i / (C^-1)_ii` with variance `1 / (C^-1)_ii`; Rasmussen and Williams (2006), Gaussian processes
    /// for machine learning, 5.12 (from memory), and for the scale the same taken from `b`. Checked against learning without it.
    pub fn surprise(&self, place: usize) -> Option<f64> {
        let (alpha, inverse) = (*self.solved.alpha.get(place)?, *self.solved.inverse.get(place)?);
        let degrees = self.degrees - self.weights[place];
        let scale = (self.scale * self.degrees - alpha * alpha / inverse) / degrees;
        // What it weighs as it stands here is undone: asked is how its ticket as given fits.
        let spread = 1.0 / inverse - self.own[place] / self.weights[place] + self.own[place];
        let rest = alpha / inverse;
        StudentT::new(degrees, 0.0, (scale.max(f64::MIN_POSITIVE) * spread.max(f64::MIN_POSITIVE)).sqrt()).map(|t| t.below(rest))
    }
}

impl Solved {
    async fn new(shared: &Triangle, own: &[f64], weights: &[f64], surprises: &[f64], pause: &impl AsyncFn()) -> Solved {
        let mut root = shared.clone();
        for (place, (own, weight)) in own.iter().zip(weights).enumerate() {
            root.row_mut(place)[place] += own / weight;
        }
        root.take_root(pause).await;
        let alpha = root.backward(root.forward(surprises));
        let inverse = root.inverse_diagonal(pause).await;
        Solved { root, alpha, inverse }
    }
}

/// The lower triangle of a symmetric matrix, or a triangular one, row by row.
#[derive(Clone, Debug, Default)]
struct Triangle {
    rows: usize,
    cells: Vec<f64>,
}

impl Triangle {
    async fn new(rows: usize, cell: impl Fn(usize, usize) -> f64, pause: &impl AsyncFn()) -> Triangle {
        let mut cells = Vec::with_capacity(rows * (rows + 1) / 2);
        for row in 0..rows {
            cells.extend((0..=row).map(|column| cell(row, column)));
            pause().await;
        }
        Triangle { rows, cells }
    }

    fn row(&self, row: usize) -> &[f64] {
        let start = row * (row + 1) / 2;
        &self.cells[start..=start + row]
    }

    fn row_mut(&mut self, row: usize) -> &mut [f64] {
        let start = row * (row + 1) / 2;
        &mut self.cells[start..=start + row]
    }

    /// Puts in the place of a symmetric matrix its lower root (Cholesky). Every reference brings a variance of its own, so that no pivot
    /// comes near 0; rounding is kept from making one negative all the same.
    async fn take_root(&mut self, pause: &impl AsyncFn()) {
        for row in 0..self.rows {
            let (above, rest) = self.cells.split_at_mut(row * (row + 1) / 2);
            let this = &mut rest[..=row];
            for column in 0..row {
                let start = column * (column + 1) / 2;
                let other = &above[start..=start + column];
                this[column] = (this[column] - dot(&this[..column], &other[..column])) / other[column];
            }
            this[row] = (this[row] - dot(&this[..row], &this[..row])).max(1e-12).sqrt();
            pause().await;
        }
    }

    /// Solves `L x = b`.
    fn forward(&self, b: &[f64]) -> Vec<f64> {
        let mut x = Vec::with_capacity(self.rows);
        for (row, b) in b.iter().enumerate() {
            let line = self.row(row);
            x.push((b - dot(&line[..row], &x)) / line[row]);
        }
        x
    }

    /// Solves `L^T x = b`.
    fn backward(&self, mut x: Vec<f64>) -> Vec<f64> {
        for row in (0..self.rows).rev() {
            let line = self.row(row);
            let value = x[row] / line[row];
            x[row] = value;
            x[..row].iter_mut().zip(line).for_each(|(x, cell)| *x -= value * cell);
        }
        x
    }

    /// Diagonal of the inverse of `L L^T`.
    async fn inverse_diagonal(&self, pause: &impl AsyncFn()) -> Vec<f64> {
        let mut column = vec![0.0; self.rows];
        let mut diagonal = Vec::with_capacity(self.rows);
        for start in 0..self.rows {
            column[start] = 1.0 / self.row(start)[start];
            for row in start + 1..self.rows {
                let line = self.row(row);
                column[row] = -dot(&line[start..row], &column[start..row]) / line[row];
            }
            diagonal.push(dot(&column[start..], &column[start..]));
            pause().await;
        }
        diagonal
    }
}

/// Sum of products, in four strands: one strand would wait for each addition.
fn dot(one: &[f64], other: &[f64]) -> f64 {
    let (one, other) = (one.chunks_exact(4), other[..one.len()].chunks_exact(4));
    let rest: f64 = one.remainder().iter().zip(other.remainder()).map(|(one, other)| one * other).sum();
    let mut strands = [0.0; 4];
    for (one, other) in one.zip(other) {
        for strand in 0..4 {
            strands[strand] += one[strand] * other[strand];
        }
    }
    (strands[0] + strands[1]) + (strands[2] + strands[3]) + rest
}
