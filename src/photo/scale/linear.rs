//! Small systems of linear equations, and what little else of numbers the scale needs.

/// Least squares with weights: sums gathered row by row, then solved. `N` unknowns.
#[derive(Clone, Debug)]
pub(super) struct Normal<const N: usize> {
    matrix: [[f64; N]; N],
    right: [f64; N],
}

impl<const N: usize> Normal<N> {
    /// No rows yet.
    pub(super) fn new() -> Normal<N> {
        Normal { matrix: [[0.0; N]; N], right: [0.0; N] }
    }

    /// A row: `row · unknowns = value`, with its weight.
    pub(super) fn row(&mut self, row: [f64; N], value: f64, weight: f64) {
        for i in 0..N {
            for j in 0..N {
                self.matrix[i][j] += weight * row[i] * row[j];
            }
            self.right[i] += weight * row[i] * value;
        }
    }

    /// The unknowns, and the inverse of the matrix (their covariance for errors of one unit); none when rows do not suffice.
    pub(super) fn solved(&self) -> Option<([f64; N], [[f64; N]; N])> {
        let inverse = inverse(self.matrix)?;
        let mut found = [0.0; N];
        for (value, row) in found.iter_mut().zip(&inverse) {
            *value = row.iter().zip(&self.right).map(|(a, b)| a * b).sum();
        }
        found.iter().all(|value| value.is_finite()).then_some((found, inverse))
    }
}

/// The inverse of a square matrix by elimination with pivots; none when it has none.
pub(super) fn inverse<const N: usize>(mut a: [[f64; N]; N]) -> Option<[[f64; N]; N]> {
    let mut b = [[0.0; N]; N];
    for (i, row) in b.iter_mut().enumerate() {
        row[i] = 1.0;
    }
    for column in 0..N {
        let pivot = (column..N).max_by(|&i, &j| a[i][column].abs().total_cmp(&a[j][column].abs()))?;
        if a[pivot][column].is_nan() || a[pivot][column].abs() < 1e-300 {
            return None;
        }
        a.swap(column, pivot);
        b.swap(column, pivot);
        let by = 1.0 / a[column][column];
        for j in 0..N {
            a[column][j] *= by;
            b[column][j] *= by;
        }
        for i in 0..N {
            if i != column {
                let times = a[i][column];
                for j in 0..N {
                    a[i][j] -= times * a[column][j];
                    b[i][j] -= times * b[column][j];
                }
            }
        }
    }
    b.iter().flatten().all(|entry| entry.is_finite()).then_some(b)
}

/// The middle value; 0 for none. Sorts what it is given.
pub(super) fn median(values: &mut [f64]) -> f64 {
    let middle = values.len() / 2;
    if values.is_empty() {
        return 0.0;
    }
    *values.select_nth_unstable_by(middle, f64::total_cmp).1
}

/// How far the top of a parabola through three neighbours lies from the middle one, in steps, at most one half.
pub(super) fn summit(before: f64, top: f64, after: f64) -> f64 {
    let bend = before - 2.0 * top + after;
    let shift = 0.5 * (before - after) / bend;
    if bend < 0.0 && shift.is_finite() { shift.clamp(-0.5, 0.5) } else { 0.0 }
}

/// Weight of a residual by Tukey's biweight, which leaves out what lies further than `reach`.
pub(super) fn biweight(residual: f64, reach: f64) -> f64 {
    let share = residual / reach;
    if share.abs() < 1.0 { (1.0 - share * share).powi(2) } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_matrix_times_its_inverse_is_one() {
        let matrix = [[0.0, 2.0, 1.0], [1.0, -3.0, 0.5], [4.0, 0.0, 7.0]];
        let inverse = inverse(matrix).expect("an inverse");
        for (i, row) in matrix.iter().enumerate() {
            let product: [f64; 3] = std::array::from_fn(|j| (0..3).map(|k| row[k] * inverse[k][j]).sum());
            assert!(product.iter().enumerate().all(|(j, entry)| (entry - f64::from(u8::from(i == j))).abs() < 1e-12));
        }
    }

    #[test]
    fn rows_that_say_the_same_do_not_suffice() {
        let mut normal = Normal::<2>::new();
        normal.row([1.0, 2.0], 3.0, 1.0);
        normal.row([1.0, 2.0], 3.0, 1.0);
        assert!(normal.solved().is_none());
        normal.row([1.0, -2.0], -1.0, 1.0);
        let [x, y] = normal.solved().expect("two unknowns").0;
        assert!((x - 1.0).abs() < 1e-12 && (y - 1.0).abs() < 1e-12);
    }

    #[test]
    fn the_top_of_a_parabola_is_found_between_samples() {
        let height = |x: f64| 5.0 - (x - 0.3).powi(2);
        assert!((summit(height(-1.0), height(0.0), height(1.0)) - 0.3).abs() < 1e-12);
        assert_eq!(summit(1.0, 1.0, 1.0), 0.0);
        assert_eq!(summit(f64::NAN, 1.0, 0.0), 0.0);
    }
}
