//! What one answer says: how much it speaks for each level, and how carefully it was given.

use super::curve::Curve;
use crate::quantity::normal;

/// How often an answer is a slip that says nothing, whatever the garment. Judgement.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Care {
    /// Looked twice, or measured.
    Careful,
    /// Looked once, as one does.
    #[default]
    Usual,
    /// "Not sure".
    Unsure,
}

impl Care {
    /// Share of answers that are slips, spread evenly over the levels; no single answer can weigh without limit.
    pub const fn lapse(self) -> f64 {
        match self {
            Care::Careful => 0.02,
            Care::Usual => 0.06,
            Care::Unsure => 0.25,
        }
    }

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Care::Careful => "careful",
            Care::Usual => "usual",
            Care::Unsure => "unsure",
        }
    }

    /// The care of that name in storage.
    pub fn from_key(key: &str) -> Option<Care> {
        [Care::Careful, Care::Usual, Care::Unsure].into_iter().find(|care| care.key() == key)
    }
}

/// How much an answer speaks for each level, worst first; parts are not negative and sum to 1.
#[derive(Clone, Debug, PartialEq)]
pub struct Weights(Vec<f64>);

/// Why there are no weights.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WeightsError {
    /// The check has no such level.
    NoSuchLevel,
    /// A weight is negative or not finite, or all are zero.
    NotWeights,
    /// The reading is not a finite number.
    ValueNotFinite,
    /// The reading's standard uncertainty is negative, infinite or not a number.
    SpreadNotFinite,
    /// A span has an end that is not a number, or ends before it begins.
    BadSpan,
    /// No level has a span.
    NoSpans,
}

impl Weights {
    /// Weights as given, scaled so that they sum to 1.
    ///
    /// # Errors
    /// [`WeightsError::NotWeights`] unless all are finite and not negative and one at least is above 0.
    pub fn new(weights: impl IntoIterator<Item = f64>) -> Result<Weights, WeightsError> {
        let weights: Vec<f64> = weights.into_iter().collect();
        // Scaled by the largest first: huge weights would otherwise sum to infinity.
        let largest = weights.iter().copied().fold(0.0, f64::max);
        if largest <= 0.0 || !weights.iter().all(|&weight| weight.is_finite() && weight >= 0.0) {
            return Err(WeightsError::NotWeights);
        }
        let total: f64 = weights.iter().map(|weight| weight / largest).sum();
        Ok(Weights(weights.into_iter().map(|weight| weight / largest / total).collect()))
    }

    /// The answer is this level of so many, 0 the worst.
    ///
    /// # Errors
    /// [`WeightsError::NoSuchLevel`] when `level` is not below `levels`.
    pub fn certain(level: usize, levels: usize) -> Result<Weights, WeightsError> {
        Weights::between(level, level, levels)
    }

    /// The answer lies between these two levels of so many: half for each.
    ///
    /// # Errors
    /// [`WeightsError::NoSuchLevel`] when one of them is not below `levels`.
    pub fn between(one: usize, other: usize, levels: usize) -> Result<Weights, WeightsError> {
        if one >= levels || other >= levels {
            return Err(WeightsError::NoSuchLevel);
        }
        let mut weights = vec![0.0; levels];
        weights[one] += 0.5;
        weights[other] += 0.5;
        Ok(Weights(weights))
    }

    /// What a reading `value` with standard uncertainty `spread` says, given the spans `(low, high)` of each level, worst first.
    ///
    /// A level may have two spans (too few and too many are the same fault) or none; ends may be infinite.
    ///
    /// # Formula
    /// `w_k = sum over spans of Phi((high - value) / spread) - Phi((low - value) / spread)`, then scaled to sum to 1. It holds while
    /// the spread is smaller than a span, since levels are taken as equally likely before the reading.
    /// With spread 0, or a reading so far outside all spans that every area vanishes, the nearest level gets all; a value on a
    /// border then counts half for each side, which is also the limit for small spreads.
    ///
    /// # Errors
    /// [`WeightsError`]: value or spread not finite, spread negative, a bad span, no spans at all.
    ///
    /// # Source
    /// The normal distribution that JCGM 100:2008, 4.3 and annex G, attaches to a value with a standard uncertainty.
    ///
    /// # Example
    /// ```
    /// use garment_assay::grading::Weights;
    ///
    /// let inf = f64::INFINITY;
    /// let spans = [vec![(-inf, 6.0), (12.0, inf)], vec![(6.0, 7.0), (10.5, 12.0)], vec![(7.0, 10.5)]];
    /// let weights = Weights::of_reading(7.0, 0.15, spans).unwrap();
    /// assert!((weights.parts()[1] - 0.5).abs() < 1e-9);
    /// ```
    pub fn of_reading<S>(value: f64, spread: f64, levels: impl IntoIterator<Item = S>) -> Result<Weights, WeightsError>
    where
        S: IntoIterator<Item = (f64, f64)>,
    {
        if !value.is_finite() {
            return Err(WeightsError::ValueNotFinite);
        }
        if !spread.is_finite() || spread < 0.0 {
            return Err(WeightsError::SpreadNotFinite);
        }
        let (mut areas, mut points) = (Vec::new(), Vec::new());
        for spans in levels {
            // The places of the level that come nearest to the reading from below and from above; the reading itself if inside.
            let (mut area, mut below, mut above) = (0.0, f64::NEG_INFINITY, f64::INFINITY);
            for (low, high) in spans {
                if low.is_nan() || high.is_nan() || low > high {
                    return Err(WeightsError::BadSpan);
                }
                if low <= value {
                    below = high.min(value).max(below);
                }
                if high >= value {
                    above = low.max(value).min(above);
                }
                if spread > 0.0 {
                    area += normal::area_between((low - value) / spread, (high - value) / spread);
                }
            }
            areas.push(area);
            points.push((below, above));
        }
        Weights::new(areas).or_else(|_| nearest(value, &points))
    }

    /// The weights, worst level first.
    pub fn parts(&self) -> &[f64] {
        &self.0
    }
}

/// All weight on the level that comes nearest to the value, from below or above; shared by levels equally near.
fn nearest(value: f64, points: &[(f64, f64)]) -> Result<Weights, WeightsError> {
    let below = points.iter().map(|point| point.0).fold(f64::NEG_INFINITY, f64::max);
    let above = points.iter().map(|point| point.1).fold(f64::INFINITY, f64::min);
    let (down, up) = (value - below, above - value);
    if !below.is_finite() && !above.is_finite() {
        return Err(WeightsError::NoSpans);
    }
    // Places are compared, not distances: far out, distances to different places round to the same number.
    let wins = |point: &(f64, f64)| (down <= up && point.0 == below) || (up <= down && point.1 == above);
    Weights::new(points.iter().map(|point| f64::from(u8::from(wins(point)))))
}

/// One answer as it counts: the curve of its check, its weights over the levels, the care behind it.
#[derive(Clone, Debug)]
pub struct Evidence<'a> {
    curve: &'a Curve,
    weights: Weights,
    care: Care,
}

/// The weights are not one for each level of the check.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LevelsDiffer {
    /// Levels of the curve.
    pub curve: usize,
    /// Weights given.
    pub weights: usize,
}

impl<'a> Evidence<'a> {
    /// Joins them.
    ///
    /// # Errors
    /// [`LevelsDiffer`] when the weights are not one for each level of the curve.
    pub fn new(curve: &'a Curve, weights: Weights, care: Care) -> Result<Evidence<'a>, LevelsDiffer> {
        if weights.0.len() != curve.levels() {
            return Err(LevelsDiffer { curve: curve.levels(), weights: weights.0.len() });
        }
        Ok(Evidence { curve, weights, care })
    }

    /// The response curve of the check that was answered.
    pub fn curve(&self) -> &'a Curve {
        self.curve
    }

    /// How much the answer speaks for each level.
    pub fn weights(&self) -> &Weights {
        &self.weights
    }

    /// The care behind the answer.
    pub fn care(&self) -> Care {
        self.care
    }
}
