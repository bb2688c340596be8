//! Threads of a woven cloth: how many there are each way, how steep its twill runs, and how closely they cover.

use super::yarn::{MassPerLength, SYSTEMS, YarnSystem};
use super::{Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, PerLength, Unit, rectangular, triangular};
use crate::to_say;

/// Ends and picks counted in a window laid on the cloth.
///
/// # Formula
/// `n = N / L` each way.
///
/// # Where it holds
/// From 8 threads up (judgement), on cloth that lies flat and unstretched.
///
/// # Uncertainty
/// As for stitches: a window laid down anywhere cuts a thread at both ends, off by up to one either way, `1/sqrt(6)`; with its edge
/// beside a thread it cuts one at the far end only, `1/sqrt(12)`. The window's own length 0.2 mm unless told otherwise (judgement). Both counts
/// share the window, so their ratio and the twill angle do not feel its error.
///
/// # Source
/// Handbook, sections 4.5 and 4.6; method after ISO 7211-2 (not read); JCGM 100:2008 (GUM), 4.3.7 and 4.3.9.
///
/// # Example
/// ```
/// use garment_assay::measure::THREAD_COUNT;
/// let outcome = THREAD_COUNT.estimate(&[Some(68.0), Some(44.0), Some(25.4), None, None]).unwrap();
/// assert_eq!(format!("{:.2}", outcome.value), "26.77");
/// assert_eq!(outcome.also("twill").map(|also| format!("{:.1}", also.value)), Some("57.1".into()));
/// ```
pub static THREAD_COUNT: Instrument = Instrument {
    key: "thread-count",
    name: "Thread count",
    says: "Counts the threads of a woven cloth in a window, along and across.",
    unit: Unit::PerCentimetre,
    inputs: &COUNTED,
    steps: &[
        "Lay the cloth flat. Find the ends: they run along the selvedge, down the leg of jeans.",
        "Lay a window of 10 mm or 1 in on it, or photograph it beside a ruler.",
        "Count the threads inside, one way and then the other.",
    ],
    cautions: &["Do not pick threads out of a garment that is not yours."],
    sources: &[&sources::COUNTING, &sources::CONSTRUCTION, &sources::GUM],
    formula: counted,
};

/// Fewest threads that say something. Judgement.
const FEWEST: u16 = 8;

static COUNTED: [Input; 5] = [
    Input::count("ends", "Ends", "Threads that run along the cloth: count them across the window.", [1.0, 1000.0]),
    Input::count(
        "picks",
        "Picks",
        "Threads that run across: count them down the window. Leave it if you counted one way only.",
        [1.0, 1000.0],
    )
    .never_needed(),
    Input::measured(
        "window",
        "Window",
        "How far you counted, the same both ways. 20 mm is better than 10.",
        [Unit::Millimetre, Unit::Millimetre, Unit::Inch],
        [5.0, 300.0],
    ),
    Input::yes_no(
        "starts-on-thread",
        "Window starts beside a thread",
        "Put one edge of the window just beside a thread, both times.",
    ),
    Input::measured(
        "window-spread",
        "How far off the window may be",
        "Leave it unless you know better.",
        [Unit::Millimetre; 3],
        [0.01, 5.0],
    )
    .usually(0.2),
];

fn counted(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(ends), picks, Some(window), Some(beside), Some(spread)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: COUNTED.len(), given: amounts.len() });
    };
    let u_count = if beside != 0.0 { rectangular(0.5) } else { triangular(1.0) };
    let window = COUNTED[2].at::<Length>(window, spread);
    let density = |place: usize, count: f64| {
        if count < f64::from(FEWEST) {
            return Err(Fault::TooFew { input: &COUNTED[place], needed: FEWEST });
        }
        Ok(COUNTED[place].at::<Number>(count, u_count) / &window)
    };
    let along = density(0, ends)?;
    let outcome = Outcome::of(&along, Unit::PerCentimetre).ok_or(Fault::NotANumber(&COUNTED[0]))?;
    let Some(picks) = picks else { return Ok(outcome) };
    let across = density(1, picks)?;
    let angle = twill_angle(&along, &across);
    let steep = angle.in_unit(Unit::Degree).is_some_and(|(degrees, spread)| degrees - 2.0 * spread > STEEP);
    let outcome = outcome
        .with("picks", to_say!("Picks"), &across, Unit::PerCentimetre)
        .with("both", to_say!("Both together"), &(&along + &across), Unit::PerInch)
        .with("twill", to_say!("Twill line against the weft, if it is a twill"), &angle, Unit::Degree);
    Ok(if steep { outcome.saying(to_say!("If it is a twill, it is a steep one.")) } else { outcome })
}

/// A twill steeper than this is called steep, in degrees. Handbook data, row TA01.
pub(super) const STEEP: f64 = 63.0;

/// The angle of the twill line against the weft, for a twill that steps one thread at a time.
///
/// # Formula
/// `theta = atan(ends / picks)`; 68 by 44 is 57.1 degrees. On a square of cloth the line climbs one pick as it crosses one end, so the closer
/// the ends lie the steeper it is.
///
/// # Source
/// Handbook, section 4.6 (geometry).
pub fn twill_angle(ends: &Estimate<PerLength>, picks: &Estimate<PerLength>) -> Estimate<Number> {
    let ratio = ends / picks;
    if !ratio.is_known() {
        return Estimate::unknown();
    }
    let at = ratio.value();
    // First order, like every estimate: value and slope of the arc tangent at the ratio.
    Estimate::<Number>::exact(at.atan()) + (&ratio - Estimate::<Number>::exact(at)) / (1.0 + at * at)
}

/// How closely threads of one system lie, after Peirce.
///
/// # Formula
/// `K = n / sqrt(Ne)` with threads in an inch; 28 when they touch. 28/cm of 20 tex is 13.09 (a published example prints 12.9: its slip).
///
/// # Source
/// Handbook, section 4.6; F. T. Peirce, 1937.
pub fn cover_factor(threads: &Estimate<PerLength>, yarn: &Estimate<MassPerLength>) -> Estimate<Number> {
    let inch = Estimate::<Length>::exact_in(1.0, Unit::Inch).unwrap_or_else(|_| Estimate::unknown());
    threads * &inch / YarnSystem::Cotton.number(yarn).powf(0.5)
}

/// The same in SI: smaller by 4.3 %, since the constants differ.
///
/// # Formula
/// `K = n * sqrt(tex) / 10` with threads in a centimetre; 28/cm of 20 tex is 12.52 (published 12.5).
///
/// # Source
/// Handbook, section 4.6.
pub fn cover_factor_si(threads: &Estimate<PerLength>, yarn: &Estimate<MassPerLength>) -> Estimate<Number> {
    let centimetre = Estimate::<Length>::exact(0.01);
    threads * &centimetre * YarnSystem::Tex.number(yarn).powf(0.5) / 10.0
}

/// How closely both systems cover the cloth together.
///
/// # Formula
/// `K = K1 + K2 - K1 K2 / 28`, cover factors after Peirce.
///
/// # Source
/// Handbook, section 4.6; F. T. Peirce, 1937. 26.672 and 17.963 give 27.524.
pub fn cloth_cover(warp: &Estimate<Number>, weft: &Estimate<Number>) -> Estimate<Number> {
    warp + weft - warp * weft / 28.0
}

/// Cover factor of a woven cloth from its threads and yarn numbers.
///
/// # Formula
/// [`cover_factor`] each way, [`cloth_cover`] together.
///
/// # Where it holds
/// Cotton-like yarns in plain weave; in a twill threads slide over one another, and a factor near 28 can be woven.
///
/// # Uncertainty
/// Threads 1 per inch, yarn numbers 3 % (judgement).
///
/// # Source
/// Handbook, section 4.6.
pub static CLOTH_COVER: Instrument = Instrument {
    key: "cloth-cover",
    name: "Cloth cover",
    says: "How closely the threads of a woven cloth lie: 28 when they touch.",
    unit: Unit::Count,
    inputs: &COVERED,
    steps: &["Count the threads each way, or take them from the maker’s sheet.", "Take the yarn numbers from the sheet."],
    cautions: &["For woven cloth only."],
    sources: &[&sources::COVER, &sources::JUDGEMENT],
    formula: covered,
};

const THREADS: [Unit; 3] = [Unit::PerInch, Unit::PerCentimetre, Unit::PerInch];

static COVERED: [Input; 7] = [
    Input::measured("ends", "Ends", "Threads that run along the cloth, over its width.", THREADS, [5.0, 400.0]),
    Input::measured("picks", "Picks", "Threads that run across, over the length.", THREADS, [5.0, 400.0]),
    Input::choice("system", "Yarn numbers are in", "Choose the system that both numbers are in.", &SYSTEMS),
    Input::measured(
        "warp-yarn",
        "Yarn of the ends",
        "The number; for 80/2 type 40 in Ne or Nm.",
        [Unit::Count; 3],
        [0.5, 5000.0],
    ),
    Input::measured(
        "weft-yarn",
        "Yarn of the picks",
        "The number; for 80/2 type 40 in Ne or Nm.",
        [Unit::Count; 3],
        [0.5, 5000.0],
    ),
    Input::measured("count-spread", "How far off each count may be", "Leave it unless you know better.", THREADS, [0.01, 40.0])
        .usually(1.0),
    Input::measured(
        "yarn-spread",
        "How far off the yarn numbers may be",
        "Leave it unless you know better.",
        [Unit::Percent; 3],
        [0.1, 30.0],
    )
    .usually(3.0),
];

fn covered(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(ends), Some(picks), Some(system), Some(warp_yarn), Some(weft_yarn), Some(count), Some(yarns)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: COVERED.len(), given: amounts.len() });
    };
    let system = YarnSystem::at(system);
    let side = |threads: usize, counted: f64, yarn: usize, number: f64| {
        let yarn = system.yarn(&COVERED[yarn].at(number, number * yarns / 100.0));
        let threads = COVERED[threads].at(counted, count);
        (cover_factor(&threads, &yarn), cover_factor_si(&threads, &yarn))
    };
    let (warp, warp_si) = side(0, ends, 3, warp_yarn);
    let (weft, weft_si) = side(1, picks, 4, weft_yarn);
    let outcome = Outcome::of(&cloth_cover(&warp, &weft), Unit::Count).ok_or(Fault::NotANumber(&COVERED[3]))?;
    let both = warp.value().min(weft.value());
    let outcome = outcome
        .with("warp", to_say!("Ends alone"), &warp, Unit::Count)
        .with("weft", to_say!("Picks alone"), &weft, Unit::Count)
        .with("warp-si", to_say!("Ends alone, SI"), &warp_si, Unit::Count)
        .with("weft-si", to_say!("Picks alone, SI"), &weft_si, Unit::Count);
    // Handbook, section 4.6: shirting 12 and 12 easy, 14 and 14 tight, 16 and 16 jams in plain weave.
    Ok(match both {
        both if both >= 16.0 => outcome.saying(to_say!("A plain weave would jam here; a twill need not.")),
        both if both >= 14.0 => outcome.saying(to_say!("Tightly set for a plain weave.")),
        _ => outcome,
    })
}
