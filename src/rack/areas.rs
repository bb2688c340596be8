//! Areas under the beta and gamma curves, from which the areas of Student t, chi-square and the normal follow, and the points at which they
//! are reached. Own code: two continued fractions and a series are smaller than a library of distributions, and are held against scipy.

use std::f64::consts::PI;

/// Below this, a step of a series or fraction changes nothing that is kept.
const STILL: f64 = 1e-16;
/// Stands for 0 where a continued fraction would divide by it.
const TINY: f64 = 1e-300;
/// More steps than any argument here needs; the square root of the larger parameter sets the need.
const STEPS: usize = 20_000;

/// Natural logarithm of the gamma function of `x` above 0.
///
/// # Formula
/// `(x - 1/2) ln x - x + ln(2 pi)/2 + 1/(12 x) - 1/(360 x^3) + ...` from 12 upwards; below, `gamma(x + 1) = x gamma(x)`.
///
/// # Source
/// Abramowitz and Stegun, Handbook of Mathematical Functions, 6.1.40 and 6.1.15 (numbers from memory).
pub(super) fn ln_gamma(x: f64) -> f64 {
    let (mut x, mut below) = (x, 1.0);
    while x < 12.0 {
        below *= x;
        x += 1.0;
    }
    let square = x * x;
    let series =
        (1.0 / 12.0 - (1.0 / 360.0 - (1.0 / 1260.0 - (1.0 / 1680.0 - 1.0 / (1188.0 * square)) / square) / square) / square) / x;
    (x - 0.5) * x.ln() - x + 0.5 * (2.0 * PI).ln() + series - f64::ln(below)
}

/// Area from 0 to `x` under the beta curve with parameters `a` and `b` above 0. It takes `1 - x` too, which near 1 the caller knows better.
///
/// # Formula
/// `x^a y^b / (a B(a, b))` times the continued fraction, `y = 1 - x`; the area from the other end where that converges faster.
///
/// # Source
/// Abramowitz and Stegun, 26.5.8 and 26.5.2 (numbers from memory); fraction by the forward recurrence of Lentz (1976).
pub(super) fn beta_area(x: f64, y: f64, a: f64, b: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if y <= 0.0 {
        return 1.0;
    }
    if x > (a + 1.0) / (a + b + 2.0) {
        return 1.0 - beta_area_from_below(y, x, b, a);
    }
    beta_area_from_below(x, y, a, b)
}

fn beta_area_from_below(x: f64, y: f64, a: f64, b: f64) -> f64 {
    let front = (a * x.ln() + b * y.ln() - ln_beta(a, b)).exp() / a;
    let safe = |value: f64| if value.abs() < TINY { TINY } else { value };
    let (mut upper, mut lower) = (1.0, 1.0 / safe(1.0 - (a + b) * x / (a + 1.0)));
    let mut fraction = lower;
    for step in 1..STEPS {
        let m = step as f64;
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        let mut factor = 1.0;
        for term in [even, odd] {
            lower = 1.0 / safe(1.0 + term * lower);
            upper = safe(1.0 + term / upper);
            factor = upper * lower;
            fraction *= factor;
        }
        if (factor - 1.0).abs() < STILL {
            break;
        }
    }
    (front * fraction).clamp(0.0, 1.0)
}

/// Natural logarithm of the beta function.
pub(super) fn ln_beta(a: f64, b: f64) -> f64 {
    ln_gamma(a) + ln_gamma(b) - ln_gamma(a + b)
}

/// The point below which a share `p` of the area under the beta curve lies.
pub(super) fn beta_point(p: f64, a: f64, b: f64) -> f64 {
    let density = |x: f64| ((a - 1.0) * x.ln() + (b - 1.0) * (1.0 - x).ln() - ln_beta(a, b)).exp();
    reached(p, (0.0, 1.0), |x| beta_area(x, 1.0 - x, a, b), density)
}

/// Area from 0 to `x` under the gamma curve with shape `a` above 0 and scale 1.
///
/// # Formula
/// Series `x^a e^-x / gamma(a + 1) (1 + x/(a+1) + x^2/((a+1)(a+2)) + ...)` up to `x = a + 1`, beyond it one minus the continued fraction.
///
/// # Source
/// Abramowitz and Stegun, 6.5.29 and 6.5.31 (numbers from memory).
pub(super) fn gamma_area(x: f64, a: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    let front = (a * x.ln() - x - ln_gamma(a)).exp();
    if x < a + 1.0 {
        let (mut term, mut sum) = (1.0 / a, 1.0 / a);
        for step in 1..STEPS {
            term *= x / (a + step as f64);
            sum += term;
            if term < sum * STILL {
                break;
            }
        }
        return (front * sum).clamp(0.0, 1.0);
    }
    let (mut upper, mut lower) = (1.0 / TINY, 1.0 / (x + 1.0 - a));
    let mut fraction = lower;
    for step in 1..STEPS {
        let m = step as f64;
        let (term, place) = (-m * (m - a), x + 2.0 * m + 1.0 - a);
        lower = 1.0 / (place + term * lower);
        upper = place + term / upper;
        fraction *= upper * lower;
        if (upper * lower - 1.0).abs() < STILL {
            break;
        }
    }
    (1.0 - front * fraction).clamp(0.0, 1.0)
}

/// The point below which a share `p` of the area under the chi-square curve with `degrees` of freedom lies.
pub(super) fn chi_square_point(p: f64, degrees: f64) -> f64 {
    let shape = degrees / 2.0;
    let density = |x: f64| ((shape - 1.0) * x.ln() - x - ln_gamma(shape)).exp();
    let mut most = shape + 10.0;
    while gamma_area(most, shape) < p && most < 1e9 {
        most *= 2.0;
    }
    2.0 * reached(p, (0.0, most), |x| gamma_area(x, shape), density)
}

/// Area under the standard normal curve below `z`.
pub(super) fn normal_area(z: f64) -> f64 {
    let half = 0.5 * gamma_area(0.5 * z * z, 0.5);
    if z < 0.0 { 0.5 - half } else { 0.5 + half }
}

/// Where a rising `area` reaches `p`, between two ends: Newton's steps, and halving wherever such a step would leave what is left.
pub(super) fn reached(p: f64, ends: (f64, f64), area: impl Fn(f64) -> f64, density: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = ends;
    let mut at = 0.5 * (low + high);
    for _ in 0..200 {
        let over = area(at) - p;
        if over == 0.0 {
            return at;
        }
        if over > 0.0 {
            high = at;
        } else {
            low = at;
        }
        let step = over / density(at);
        let next = at - step;
        let next = if next > low && next < high { next } else { 0.5 * (low + high) };
        if (next - at).abs() <= 1e-15 * at.abs() || high - low <= f64::EPSILON * high.abs() {
            return next;
        }
        at = next;
    }
    at
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(one: f64, other: f64) {
        // Logarithms of the gamma function of thousands cancel to twelve digits.
        assert!((one - other).abs() <= 1e-11 * other.abs().max(1e-3), "{one} {other}");
    }

    /// scipy 1.17.1: `special.gammaln`, `betainc`, `betaincinv`, `gammainc`, `stats.chi2.ppf`, `stats.norm.cdf`, seventeen digits.
    #[test]
    fn areas_and_points_are_those_of_scipy() {
        for [a, expected] in [
            [0.1, 2.252712651734206],
            [0.5, 0.5723649429247],
            [1.5, -0.12078223763524526],
            [4.0, 1.791759469228055],
            [11.9, 17.25847745059552],
            [12.0, 17.502307845873887],
            [100.5, 361.43554046777757],
            [5000.0, 37582.62631568535],
        ] {
            near(ln_gamma(a), expected);
        }
        for [a, b, c, expected] in [
            [0.8, 4.0, 1.0, 0.4096000000000001],
            [0.8, 6.0, 4.0, 0.9143582720000001],
            [0.1, 0.5, 29.0, 0.9861637806404531],
            [0.999, 40.0, 0.5, 0.777919867635688],
            [0.5, 200.0, 210.0, 0.6894852134274166],
            [0.79, 1604.0, 396.0, 0.09042619670024636],
            [1e-06, 2.0, 3.0, 5.999992000002998e-12],
        ] {
            near(beta_area(a, 1.0 - a, b, c), expected);
        }
        for [a, b, c, expected] in [
            [0.1, 4.0, 1.0, 0.5623413251903491],
            [0.9, 4.0, 1.0, 0.9740037464252967],
            [0.1, 6.0, 4.0, 0.4005795105916673],
            [0.9, 20.0, 5.0, 0.8950325659399486],
            [0.9, 1604.0, 396.0, 0.8133517558321621],
        ] {
            near(beta_point(a, b, c), expected);
        }
        for [a, b, expected] in [
            [0.2, 0.5, 0.47291074313446196],
            [9.0, 0.5, 0.9999779095030014],
            [3.0, 3.0, 0.5768099188731566],
            [12.0, 6.5, 0.9688699404875611],
            [4.0, 20.0, 1.0200522105968346e-08],
            [90.0, 100.0, 0.15822098918643007],
            [1e-08, 0.5, 0.00011283791633342464],
        ] {
            near(gamma_area(a, b), expected);
        }
        for [a, b, expected] in [
            [0.1, 6.0, 2.2041306564986427],
            [0.5, 6.0, 5.348120627447118],
            [0.9, 13.0, 19.81192930712756],
            [0.5, 206.0, 205.33371824907744],
            [0.9, 6.0, 10.644640675668422],
        ] {
            near(chi_square_point(a, b), expected);
        }
        for [a, expected] in [
            [-3.0, 0.0013498980316300933],
            [-0.2, 0.42074029056089696],
            [0.0, 0.5],
            [1.2815515655446004, 0.8999999999999999],
            [2.5, 0.9937903346742238],
        ] {
            near(normal_area(a), expected);
        }
    }
}
