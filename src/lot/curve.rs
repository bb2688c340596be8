//! What a sample tells of a lot, and what it cannot: the operating curve of a plan, and how bad a lot may still be.

/// Halvings of a share: beyond them nothing changes any more.
const HALVINGS: u32 = 60;

/// How likely a lot of which that share is bad passes a sample of so many pieces in which so many may be bad. A share outside 0 to 1 is
/// held there.
///
/// # Formula
/// `P = sum over k from 0 to accept of C(n, k) p^k (1 - p)^(n - k)`, term by term from the one before.
///
/// # Where it holds
/// Exactly for pieces drawn from a steady supply, as the curves of the standard have it. Where the sample is a good part of one lot a bad lot
/// fails more often than this says.
///
/// # Source
/// ISO 2859-1, section on operating characteristic curves: the binomial distribution.
///
/// # Example
/// ```
/// use garment_assay::lot::passes;
/// // One piece looked at, and it is good: a lot of which a tenth is bad passes so nine times of ten.
/// assert!((passes(1, 0, 0.10) - 0.9).abs() < 1e-12);
/// ```
pub fn passes(sample: u32, accept: u32, bad: f64) -> f64 {
    if accept >= sample || bad <= 0.0 || bad.is_nan() {
        return 1.0;
    }
    if bad >= 1.0 {
        return 0.0;
    }
    let n = f64::from(sample);
    // From the logarithm, so that a large sample does not start from nothing.
    let mut term = (n * (-bad).ln_1p()).exp();
    let mut sum = term;
    for k in 1..=accept {
        let k = f64::from(k);
        term *= (n - k + 1.0) / k * bad / (1.0 - bad);
        sum += term;
    }
    sum.clamp(0.0, 1.0)
}

/// The share that is bad in a lot which passes with that chance: with 0.1, how bad a lot may be and still pass one time of ten.
///
/// # Source
/// As [`passes`], turned round by halving.
pub fn share_that_passes(sample: u32, accept: u32, chance: f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if passes(sample, accept, middle) > chance {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

/// The highest share that may be bad, with that much confidence, where so many of a sample were; 1 for no sample.
///
/// # Formula
/// The share at which so few or fewer would be found with chance `1 - confidence` (Clopper and Pearson, one-sided).
///
/// # Source
/// Handbook, section 11.1: none of five found, and still 45 of 100 may be bad, with 95 per cent confidence.
pub fn highest_share(sample: u32, found: u32, confidence: f64) -> f64 {
    if found >= sample { 1.0 } else { share_that_passes(sample, found, 1.0 - confidence) }
}
