//! Stitch density from bars laid over a camera's picture, with a scale beside the seam marked in the same picture.

use super::stitch_density::{BELIEVED, density_of_stitch_length};
use super::{Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, PerLength, Unit, triangular};

/// Density from a comb of bars on a picture, in which two marks on a ruler or card stand a known length apart.
///
/// # Formula
/// `p = q * L`, the length of a stitch, with `q` the distance of two bars as a share of the distance of the marks, both in pixels of the
/// picture, and `L` the length between the marks; `S = 1 / p`. Held square to the cloth, a picture shrinks all lengths alike.
///
/// # Uncertainty
/// - "mark-spread": each mark is off by `u_m` on its own, so `u(L) / L = sqrt(2) * u_m / L`.
/// - "misfit": as on the screen's comb ([`density_from_comb`](super::density_from_comb)), `n` bars that look right leave the pitch a
///   triangular error of half-width `2 * misfit / (n - 1)`.
/// - "tilt": the scale lies beside the seam, not on it. Tilted by `t`, a phone at distance [`DISTANCE_MM`] has one of the two nearer than
///   the other by `GAP_MM * sin(t)`, and the scale is off by the share `GAP_MM * sin(t) / DISTANCE_MM`, one way or the other.
/// - "height": the scale lies higher or lower than the cloth by some share of the phone's distance.
///
/// # Where it holds
/// Marks and bars over the same stretch, four bars or more, and no hole between two bars.
///
/// # Source
/// First-order central projection, worked out here; that 15 degrees over a gap of 10 mm at 120 mm are 2 %, and a height of 0.7 %, are the
/// project's error budget for photographs, on drawn ones. Gap, distance and the usual amounts: judgement. Shapes of errors: JCGM 100:2008
/// (GUM), 4.3.7 and 4.3.9.
pub static STITCH_COMB_LIVE: Instrument = Instrument {
    key: "stitch-comb-live",
    name: "Stitches on the live picture",
    says: "Takes the density from bars laid over the live picture, with a ruler or card beside the seam.",
    unit: Unit::PerInch,
    inputs: &INPUTS,
    steps: &[
        "Lay the seam flat and a ruler or card close beside it.",
        "Drag the two yellow marks to two lines of the ruler, and say how far apart those are.",
        "Drag the first bar to a needle hole, then any other bar until all of them meet holes.",
        "See that no hole is left between two bars.",
    ],
    cautions: &["Lay the scale as high as the cloth and hold the phone flat: tilt makes the scale and the seam differ."],
    sources: &[&sources::COUNTING, &sources::PICTURE_SCALE, &sources::GUM],
    formula,
};

/// Fewest bars that say something. Judgement, as on the screen's comb.
const FEWEST: f64 = 4.0;
/// How far beside the seam a scale lies, in mm. Judgement.
const GAP_MM: f64 = 10.0;
/// How far a phone is held from the cloth to see stitches large, in mm. Judgement.
const DISTANCE_MM: f64 = 120.0;

static INPUTS: [Input; 7] = [
    Input::measured(
        "pitch",
        "Distance of two bars",
        "What the comb is stretched to, as a part of the distance of the two marks.",
        [Unit::Percent; 3],
        [0.2, 60.0],
    ),
    Input::count("bars", "Bars", "How many bars meet a hole.", [1.0, 1000.0]),
    Input::measured(
        "marked",
        "Between the marks",
        "What the ruler or card says lies between the two marks.",
        [Unit::Millimetre, Unit::Millimetre, Unit::Inch],
        [5.0, 500.0],
    ),
    Input::measured(
        "mark-spread",
        "How far off a mark may be",
        "Leave it unless you know better: about a third of a millimetre on a small picture.",
        [Unit::Millimetre; 3],
        [0.01, 10.0],
    )
    // Judgement: a line of a ruler is about 0.2 mm broad, and a mark is put on it by eye.
    .usually(0.3),
    Input::measured(
        "misfit",
        "Smallest misfit you can see",
        "Leave it unless you know better: about half a bar.",
        [Unit::Millimetre; 3],
        [0.01, 5.0],
    )
    // Judgement, as on the screen's comb.
    .usually(0.25),
    Input::measured("tilt", "Tilt of the phone", "Leave it unless a level says better.", [Unit::Degree; 3], [0.5, 45.0])
        // Judgement: a phone held flat by eye.
        .usually(10.0),
    Input::measured(
        "height",
        "How far off by the height of the scale",
        "Leave it unless you know better: the scale lies higher or lower than the seam.",
        [Unit::Percent; 3],
        [0.01, 20.0],
    )
    // The project's error budget for photographs, on drawn ones.
    .usually(0.7),
];

/// Amounts in the order of [`INPUTS`]: per cent, a count, mm, mm, mm, degrees, per cent.
fn formula(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(pitch), Some(bars), Some(marked), Some(mark), Some(misfit), Some(tilt), Some(height)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: INPUTS.len(), given: amounts.len() });
    };
    if bars < FEWEST {
        return Err(Fault::TooFew { input: &INPUTS[1], needed: FEWEST as u16 });
    }
    let density = density_of([pitch / 100.0, bars, marked, mark, misfit, tilt, height / 100.0]);
    let (least, most) = BELIEVED;
    match density.in_unit(Unit::PerInch) {
        Some((value, _)) if !(least..=most).contains(&value) => {
            Err(Fault::Implausible { value, least, most, unit: Unit::PerInch })
        }
        _ => Outcome::of(&density, Unit::PerInch).ok_or(Fault::NotANumber(&INPUTS[0])),
    }
}

/// Pitch and height as shares, lengths in mm, tilt in degrees.
fn density_of([pitch, bars, marked, mark, misfit, tilt, height]: [f64; 7]) -> Estimate<PerLength> {
    let length: Estimate<Length> = INPUTS[3].at(marked, std::f64::consts::SQRT_2 * mark);
    // What the eye lets pass at the last bar, in mm on the cloth, as a share of the marked length.
    let share = Estimate::<Number>::measured(INPUTS[4].key, pitch, triangular(2.0 * misfit / (bars - 1.0)) / marked);
    let share = share.unwrap_or_else(|_| Estimate::unknown());
    density_of_stitch_length(&(length * share * off(5, GAP_MM * tilt.to_radians().sin() / DISTANCE_MM) * off(6, height)))
}

/// A scale that is off by such a share, because of that input.
fn off(input: usize, share: f64) -> Estimate<Number> {
    Estimate::measured(INPUTS[input].key, 1.0, share).unwrap_or_else(|_| Estimate::unknown())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(amounts: [f64; 7]) -> Outcome {
        STITCH_COMB_LIVE.estimate(&amounts.map(Some)).expect("a density")
    }

    /// By hand, shares of the variance too. First row: pitch 6.35 % of 50 mm is 3.175 mm, so 8 to the inch. Relative spreads:
    /// marks sqrt(2) 0.3 / 50 = 0.848 53 %; bars 2 0.25 / 15 / sqrt(6) / 3.175 = 0.428 61 %; tilt 10 sin(10) / 120 = 1.447 07 %;
    /// height 0.7 %. Root of the sum of squares: 1.867 54 %, of 8 is 0.149 40. Second row: 5 % of 2 in is 0.1 in, so 10 to the inch;
    /// marks 0.278 37 %, bars 2 0.1 / 19 / sqrt(6) / 2.54 = 0.169 19 %, tilt 10 sin(2) / 120 = 0.290 83 %, height 0.7 %: 0.825 05 %.
    #[test]
    fn the_rows_reckoned_by_hand_come_out() {
        let tilted = read([6.35, 16.0, 50.0, 0.3, 0.25, 10.0, 0.7]);
        assert!((tilted.value - 8.0).abs() < 1e-12, "{}", tilted.value);
        assert!((tilted.uncertainty - 0.149_403).abs() < 0.000_01, "{}", tilted.uncertainty);
        assert_eq!(tilted.budget[0].0, "tilt");
        assert!((tilted.budget[0].1 - (1.447_07_f64 / 1.867_54).powi(2)).abs() < 0.000_01);
        let flat = read([5.0, 20.0, 50.8, 0.1, 0.1, 2.0, 0.7]);
        assert!((flat.value - 10.0).abs() < 1e-12, "{}", flat.value);
        assert!((flat.uncertainty - 0.082_505).abs() < 0.000_01, "{}", flat.uncertainty);
        assert_eq!(flat.budget[0].0, "height");
    }

    /// The project's error budget for photographs: 15 degrees at 120 mm over a gap of 10 mm is about 2 %.
    #[test]
    fn a_tilt_of_fifteen_degrees_is_two_per_cent() {
        let density = density_of([0.0635, 16.0, 50.0, 0.0, 0.0, 15.0, 0.0]);
        assert!((density.relative().expect("a spread") - 0.0216).abs() < 0.0001);
    }

    /// Numbers from 0 to 1 by a multiplicative generator (Lehmer, 48 271 modulo 2^31 - 1), enough to scatter with.
    struct Even(u64);

    impl Even {
        fn next(&mut self) -> f64 {
            self.0 = self.0 * 48_271 % 2_147_483_647;
            self.0 as f64 / 2_147_483_647.0
        }

        /// About normal, of spread 1: twelve even ones less six.
        fn normal(&mut self) -> f64 {
            (0..12).map(|_| self.next()).sum::<f64>() - 6.0
        }
    }

    /// 6000 pictures seen through a pinhole: a scale beside the seam and a little above it, the phone tilted; marks put down with an error
    /// of their own, and a comb chosen evenly among all that look right. None of the formula's first-order terms is used.
    #[test]
    fn simulated_pictures_scatter_as_the_spread_claims() {
        let mut even = Even(11);
        for (tilt, mark, misfit, bars) in [(10.0_f64, 0.3, 0.25, 14.0_f64), (3.0, 0.5, 0.25, 14.0), (4.0, 0.1, 0.3, 8.0)] {
            let (marked, height, stitch) = (stitch_count(bars) * 3.175, 0.7, 3.175);
            let (mut squares, mut mean, mut found) = (0.0, 0.0, 0.0);
            while found < 6000.0 {
                // Misfit first: which combs look right.
                let reach = 2.0 * misfit / (bars - 1.0);
                let (shift, wrong) = ((2.0 * even.next() - 1.0) * misfit, (2.0 * even.next() - 1.0) * reach);
                if (0..bars as u32).any(|bar| (shift + wrong * f64::from(bar)).abs() > misfit) {
                    continue;
                }
                found += 1.0;
                // How far seam and scale are from the lens: tilt lifts one side by gap times sine, the scale's height is a share.
                let lift = GAP_MM * (tilt * even.normal()).to_radians().sin();
                let far = DISTANCE_MM + lift + DISTANCE_MM * height / 100.0 * even.normal();
                let pixels = |mm: f64, far: f64| mm * 3000.0 / far;
                let seen = pixels(marked + mark * (even.normal() - even.normal()), far);
                let pitch = pixels(stitch + wrong, DISTANCE_MM) / seen * 100.0;
                let value = read([pitch, bars, marked, mark, misfit, tilt, height]).value;
                mean += value;
                squares += (value - 8.0).powi(2);
            }
            let claimed = read([stitch / marked * 100.0, bars, marked, mark, misfit, tilt, height]).uncertainty;
            let ratio = claimed / (squares / found).sqrt();
            assert!((ratio - 1.0).abs() < 0.05, "{tilt} degrees, {bars} bars: claimed over true {ratio}");
            assert!((mean / found - 8.0).abs() < 0.02);
        }
    }

    fn stitch_count(bars: f64) -> f64 {
        bars - 1.0
    }

    #[test]
    fn three_bars_and_a_pitch_that_nobody_sews_are_refused() {
        let few = STITCH_COMB_LIVE.estimate(&[6.0, 3.0, 50.0, 0.3, 0.25, 10.0, 0.7].map(Some));
        assert_eq!(few, Err(Fault::TooFew { input: &INPUTS[1], needed: 4 }));
        let wide = STITCH_COMB_LIVE.estimate(&[60.0, 4.0, 50.0, 0.3, 0.25, 10.0, 0.7].map(Some));
        assert!(matches!(wide, Err(Fault::Implausible { .. })));
    }

    #[test]
    fn what_is_left_empty_stands_as_usual() {
        let usual = STITCH_COMB_LIVE.estimate(&[Some(6.35), Some(16.0), Some(50.0), None, None, None, None]);
        assert_eq!(usual, Ok(read([6.35, 16.0, 50.0, 0.3, 0.25, 10.0, 0.7])));
    }
}
