//! What each answer moved.

use super::belief::{Belief, FAINTEST};
use super::evidence::Evidence;
use super::tables::{ETA, PSI, Tables, VARIANCE, psi_at};

/// Gauss-Legendre nodes on 0 to 1 with their weights (numpy 2 `leggauss(12)`, shifted to 0 to 1). On a sheet of 25 jeans answers the
/// parts err by 6e-6 with eight nodes, 1e-8 with these; on sheets all worst or all best, all careful, by 5e-4 and 2e-5 (measured
/// against 60 nodes).
const PATH: [(f64, f64); 12] = [
    (0.009219682876640378, 0.023587668193255706),
    (0.0479413718147626, 0.05346966299765953),
    (0.11504866290284765, 0.08003916427167321),
    (0.20634102285669126, 0.10158371336153287),
    (0.31608425050090994, 0.1167462682691773),
    (0.43738329574426554, 0.12457352290670134),
    (0.5626167042557344, 0.12457352290670134),
    (0.6839157494990901, 0.1167462682691773),
    (0.7936589771433087, 0.10158371336153287),
    (0.8849513370971523, 0.08003916427167321),
    (0.9520586281852375, 0.05346966299765953),
    (0.9907803171233596, 0.023587668193255706),
];

/// What each answer added to the mean of quality, in standard deviations among new garments, in the order of the answers.
///
/// The parts sum to the mean of the belief; with no answer that mean is 0. They need no order of answers, and equal answers
/// have equal parts.
///
/// # Formula
/// All answers are let in together, each with its likelihood to the power t, t from 0 to 1. Answer j moves the mean at the rate
/// `Cov_t(psi, log L_j) / (1 + d^2)`, d the reading error; its part is the integral of that over t (Aumann-Shapley). What the
/// rule leaves over (1e-7 on a natural sheet of 25) is shared out in proportion, so that the sum is right for any sheet.
///
/// # Source
/// Aumann and Shapley (1974), Values of non-atomic games. Gauss-Legendre rule: Abramowitz and Stegun 25.4.30 (from memory).
pub fn contributions(tables: &Tables, evidence: &[Evidence<'_>]) -> Vec<f64> {
    let mut parts = integrated(tables, evidence);
    let left = Belief::new(tables, evidence).mean() - parts.iter().sum::<f64>();
    let size: f64 = parts.iter().map(|part| part.abs()).sum();
    if size > 0.0 {
        parts.iter_mut().for_each(|part| *part += left * part.abs() / size);
    }
    parts
}

/// The integral along the path.
fn integrated(tables: &Tables, evidence: &[Evidence<'_>]) -> Vec<f64> {
    let kernels = &tables.grid.kernels;
    let logs: Vec<[f64; ETA]> = evidence.iter().map(|piece| tables.likelihood(piece).map(f64::ln)).collect();
    let sums = group_sums(evidence, &logs);
    let mut parts = vec![0.0; evidence.len()];
    for (t, step) in PATH {
        let let_in: [Option<LetIn>; 7] = std::array::from_fn(|group| {
            let product = sums[group].as_ref()?.map(|log| (t * log).exp().max(FAINTEST));
            Some(LetIn { seen: kernels[group].mean(&product), product })
        });
        let mut psi = tables.grid.prior;
        for group in let_in.iter().flatten() {
            psi.iter_mut().zip(&group.seen).for_each(|(weight, seen)| *weight *= seen);
        }
        let total: f64 = psi.iter().sum();
        psi.iter_mut().for_each(|weight| *weight /= total);
        let mean: f64 = psi.iter().enumerate().map(|(node, weight)| weight * psi_at(node)).sum();
        // What a node of eta weighs in the covariance with psi: one line serves all answers of a group.
        let lines: [Option<[f64; ETA]>; 7] = std::array::from_fn(|group| {
            let pool = let_in[group].as_ref()?;
            let mut line = [[0.0]; ETA];
            for (node, (weight, seen)) in psi.iter().zip(&pool.seen).enumerate() {
                kernels[group].scatter(node, [weight * (psi_at(node) - mean) / seen], &mut line);
            }
            Some(std::array::from_fn(|node| line[node][0] * pool.product[node]))
        });
        for ((part, piece), log) in parts.iter_mut().zip(evidence).zip(&logs) {
            if let Some(line) = &lines[piece.curve().group.index()] {
                *part += step / VARIANCE * line.iter().zip(log).map(|(weight, log)| weight * log).sum::<f64>();
            }
        }
    }
    parts
}

/// A group's answers at a point of the path.
struct LetIn {
    product: [f64; ETA],
    seen: [f64; PSI],
}

/// Sum of the logarithms of each group's answers along eta, the largest at 0; none where a group has no answer.
fn group_sums(evidence: &[Evidence<'_>], logs: &[[f64; ETA]]) -> [Option<[f64; ETA]>; 7] {
    let mut sums = [None; 7];
    for (piece, log) in evidence.iter().zip(logs) {
        let sum = sums[piece.curve().group.index()].get_or_insert([0.0; ETA]);
        sum.iter_mut().zip(log).for_each(|(sum, log)| *sum += log);
    }
    for sum in sums.iter_mut().flatten() {
        let largest = sum.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        sum.iter_mut().for_each(|value| *value -= largest);
    }
    sums
}
