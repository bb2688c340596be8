//! What a seam holds and how much thread it takes.

use typenum::{N2, P1, Z0};

use super::{Choice, Fault, Input, Instrument, Outcome, STITCH_TYPES, sources};
use crate::quantity::dimension::Dim;
use crate::quantity::{Estimate, Length, Number, PerLength, Unit, rectangular};
use crate::to_say;

/// A force, in newtons.
pub type Force = Dim<P1, P1, N2, Z0>;
/// A force on a length of seam, in N/m.
pub type ForcePerLength = Dim<Z0, P1, N2, Z0>;

/// Standard acceleration of free fall, m/s², exact (3rd CGPM, 1901; SI Brochure).
const G: f64 = 9.806_65;
/// A pound-force in newtons: a pound times standard gravity, exact.
const POUND_FORCE: f64 = 0.453_592_37 * G;

/// A force given in pounds-force. Unknown when it is not a number.
pub fn pounds_force(pounds: f64) -> Estimate<Force> {
    Estimate::exact(pounds * POUND_FORCE)
}

/// Stitches whose seam strength can be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StrongStitch {
    /// 301.
    Lockstitch,
    /// 401.
    Chainstitch,
}

/// What a seam holds before its thread breaks, on each length of seam.
///
/// # Formula
/// `F = S * F_thread * k`, with `S` stitches per length, `k` 1.5 for lockstitch 301 and 1.7 for chainstitch 401.
///
/// # Where it holds
/// Plain seams in woven cloth, balanced stitches, the same thread above and below, and cloth stronger than the seam. The weaker thread rules.
///
/// # Uncertainty
/// `k` is off by up to 20 % between threads, since their loops keep 60 to 95 % of their strength (handbook, section 2.3): multiply
/// by that.
///
/// # Source
/// Handbook, section 2.3 (a thread maker's bulletin): 10 per inch of 4.0 lbf are 60 lbf/in (301) and 68 lbf/in (401).
pub fn seam_strength(stitch: StrongStitch, density: &Estimate<PerLength>, thread: &Estimate<Force>) -> Estimate<ForcePerLength> {
    let factor = match stitch {
        StrongStitch::Lockstitch => 1.5,
        StrongStitch::Chainstitch => 1.7,
    };
    density * thread * factor
}

/// In newtons on the 50 mm strip of ISO 13935-1.
pub fn on_50_mm(strength: &Estimate<ForcePerLength>) -> Estimate<Force> {
    strength * Estimate::<Length>::exact(0.05)
}

/// What a seam holds, as the mass that 5 cm of it would carry.
///
/// # Formula
/// [`seam_strength`] on 50 mm, over standard gravity.
///
/// # Uncertainty
/// Density 0.2 per inch, thread 5 %, the formula's factor 20 % taken as one standard uncertainty (the cautious reading of the handbook's
/// "±20 %"); all judgement.
///
/// # Source
/// Handbook, section 2.3.
///
/// # Example
/// ```
/// use garment_assay::measure::SEAM_STRENGTH;
/// // Lockstitch, 10 per inch, thread that breaks at 4.0 lbf.
/// let given = [Some(0.0), Some(10.0), Some(0.0), Some(4.0 * 0.453_592_37), None, None, None];
/// let outcome = SEAM_STRENGTH.estimate(&given).unwrap();
/// assert_eq!(outcome.also("newtons").map(|also| format!("{:.1}", also.value)), Some("525.4".into()));
/// ```
pub static SEAM_STRENGTH: Instrument = Instrument {
    key: "seam-strength",
    name: "Seam strength",
    says: "Works out what 5 cm of a seam can carry before its thread breaks.",
    unit: Unit::Kilogram,
    inputs: &STRENGTH,
    steps: &[
        "Turn the seam over: the same line on the back is a lockstitch, a rope of loops a chainstitch.",
        "Count its stitches over 8 cm or 3 in.",
        "Say how strong the thread is, or choose one that is known.",
    ],
    cautions: &["Do not pull a seam apart in a shop.", "Weak or worn cloth gives way before the seam does."],
    sources: &[&sources::SEAM_STRENGTH_BULLETIN, &sources::ISO_4915, &sources::JUDGEMENT],
    formula: strength,
};

static STRENGTH: [Input; 7] = [
    Input::choice("stitch", "Stitch", "Look at the back of the seam.", &STRONG),
    Input::measured(
        "density",
        "Stitches",
        "As counted over the seam.",
        [Unit::PerInch, Unit::PerCentimetre, Unit::PerInch],
        [2.0, 40.0],
    ),
    Input::choice("thread", "Thread", "Choose one, or type what it breaks at.", &THREADS).usually(0.0),
    Input::measured(
        "breaks-at",
        "Thread breaks at",
        "The mass that one thread carries before it breaks, from its maker’s sheet.",
        [Unit::Kilogram, Unit::Kilogram, Unit::Pound],
        [0.1, 50.0],
    )
    .never_needed(),
    Input::measured(
        "density-spread",
        "How far off the count may be",
        "Leave it unless you know better.",
        [Unit::PerInch, Unit::PerCentimetre, Unit::PerInch],
        [0.01, 5.0],
    )
    .usually(0.2),
    Input::measured(
        "thread-spread",
        "How far off the thread may be",
        "Leave it unless you know better.",
        [Unit::Percent; 3],
        [0.1, 50.0],
    )
    .usually(5.0),
    Input::measured(
        "model",
        "How far off the formula may be",
        "Leave it unless you know better: threads lose more or less in a loop.",
        [Unit::Percent; 3],
        [1.0, 50.0],
    )
    .usually(20.0),
];

static STRONG: [Choice; 2] = [
    Choice::new("301", "Lockstitch, 301", "The same line on both sides."),
    Choice::new("401", "Chainstitch, 401", "A line on the face, a rope of loops behind."),
];

static THREADS: [Choice; 3] = [
    Choice::new("own", "Another thread", "Type below what it breaks at."),
    Choice::new("tex-24-core", "Tex 24, core-spun", "Fine thread of polyester and cotton: breaks at 2.6 lbf."),
    Choice::new("tex-27-spun", "Tex 27, spun polyester", "Fine thread of short fibres: breaks at 2.2 lbf."),
];

fn strength(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(stitch), Some(density), Some(thread), own, Some(count), Some(thread_spread), Some(model)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: STRENGTH.len(), given: amounts.len() });
    };
    // Handbook, section 2.3: the bulletin's chart.
    let kilograms = match thread {
        1.0 => 2.6 * 0.453_592_37,
        2.0 => 2.2 * 0.453_592_37,
        _ => own.ok_or(Fault::NeededToo(&STRENGTH[3]))?,
    };
    let newtons = kilograms * G;
    let thread = Estimate::<Force>::measured("breaks-at", newtons, newtons * thread_spread / 100.0)
        .unwrap_or_else(|_| Estimate::unknown());
    let stitch = if stitch == 1.0 { StrongStitch::Chainstitch } else { StrongStitch::Lockstitch };
    let sure = Estimate::<Number>::exact(1.0) + STRENGTH[6].at::<Number>(0.0, model);
    let holds = seam_strength(stitch, &STRENGTH[1].at(density, count), &thread) * sure;
    let gravity = Estimate::<Dim<P1, Z0, N2, Z0>>::exact(G);
    let strip = on_50_mm(&holds);
    let inch = Estimate::<Length>::exact(0.0254);
    Ok(Outcome::of(&(&strip / &gravity), Unit::Kilogram)
        .ok_or(Fault::NotANumber(&STRENGTH[3]))?
        .with("newtons", to_say!("Newtons on 50 mm"), &(&strip / Estimate::<Force>::exact(1.0)), Unit::Count)
        .with("pounds-force", to_say!("Pounds-force on an inch"), &(&holds * &inch / pounds_force(1.0)), Unit::Count))
}

/// Cm of thread on each cm of a single-thread chainstitch (101), lockstitch (301) or two-thread chainstitch (401), by geometry.
///
/// # Formula
/// `c = base + 2 T S`, with the thickness `T` of the whole seam, `S` stitches per length, and a base of 3, 2 and 4.
///
/// # Where it holds
/// Balanced tension, 3 to 8 stitches per cm. To 10 or 15 %.
///
/// # Source
/// Handbook, section 2.1 (textile calculation tutorials): 301, 0.01 in, 10 per inch is 2.2; 101, 0.005 in, 9 per inch is 3.09; 401 through
/// felled denim of 3.2 mm at 8 per inch is 6.016, 301 through the same 4.016.
pub fn thread_by_geometry(number: &str, thickness: &Estimate<Length>, density: &Estimate<PerLength>) -> Option<Estimate<Number>> {
    let base = match number {
        "101" => 3.0,
        "301" => 2.0,
        "401" => 4.0,
        _ => return None,
    };
    Some(Estimate::<Number>::exact(base) + thickness * density * 2.0)
}

/// Cm of thread on each cm of seam, from a piece of seam taken apart: thread drawn out over the length of the piece.
///
/// # Source
/// Handbook, section 2.2 (a published measurement): 15 cm of 401 gave 19.5 cm of needle and 62.0 cm of looper thread, 5.43; the source rounds
/// to 5.4, and so has 540 cm for 100 cm of seam and 621 cm with 15 % waste, where its own figures give 543.3 and 624.8.
pub fn thread_by_unravelling(seam: &Estimate<Length>, threads: &[Estimate<Length>]) -> Estimate<Number> {
    threads.iter().fold(Estimate::exact(0.0), |sum: Estimate<Length>, thread| &sum + thread) / seam
}

/// Metres of thread that a length of seam takes.
///
/// # Formula
/// `length * ratio * (1 + waste)`; the ratio as drawn from a piece taken apart where one was, else from [`thread_by_geometry`] where
/// thickness and density are given and it holds, else from the table of ratios.
///
/// # Uncertainty
/// Ratio 12.5 % (handbook, sections 2.1 and 2.2: ±10 to 15 %), 3 % where a piece was taken apart (judgement); length 2 % (judgement); waste 10 to 15 %, rectangular.
///
/// # Source
/// Handbook, sections 2.1 and 2.2.
pub static THREAD_USE: Instrument = Instrument {
    key: "thread-use",
    name: "Thread in a seam",
    says: "Works out how much thread a length of seam takes.",
    unit: Unit::Metre,
    inputs: &USE,
    steps: &["Turn the seam over and find its stitch.", "Measure the length of seam; two rows count twice."],
    cautions: &[],
    sources: &[&sources::THREAD_USE_TABLE, &sources::ISO_4915, &sources::JUDGEMENT],
    formula: thread_use,
};

static USE: [Input; 8] = [
    Input::choice("stitch", "Stitch", "Look at the back of the seam.", &USED),
    Input::measured(
        "seam",
        "Seam",
        "How long the seam is. A jeans inseam is about 1.6 m with both legs.",
        [Unit::Metre, Unit::Metre, Unit::Yard],
        [0.01, 200.0],
    ),
    Input::measured(
        "thickness",
        "Thickness",
        "The whole seam between the jaws, all layers. Leave it if you cannot: an average then stands.",
        [Unit::Millimetre; 3],
        [0.1, 20.0],
    )
    .never_needed(),
    Input::measured(
        "density",
        "Stitches",
        "Needed with the thickness.",
        [Unit::PerInch, Unit::PerCentimetre, Unit::PerInch],
        [2.0, 40.0],
    )
    .never_needed(),
    Input::measured(
        "waste",
        "Waste",
        "Thread ends and broken thread. 12.5 is usual in a factory.",
        [Unit::Percent; 3],
        [0.0, 100.0],
    )
    .usually(12.5),
    Input::measured(
        "seam-spread",
        "How far off the seam may be",
        "Leave it unless you know better.",
        [Unit::Percent; 3],
        [0.1, 30.0],
    )
    .usually(2.0),
    Input::measured("model", "How far off the ratio may be", "Leave it unless you know better.", [Unit::Percent; 3], [0.1, 50.0])
        .usually(12.5),
    Input::measured(
        "unravelled",
        "Thread drawn from a piece of it",
        "If you took a piece apart: cm of thread over cm of seam. It stands instead of the table. Leave it otherwise.",
        [Unit::Count; 3],
        [1.0, 60.0],
    )
    .never_needed(),
];

/// A ratio drawn from a piece taken apart is this far off. Judgement: the published measurement rounds its own by 1 %.
const UNRAVELLED: f64 = 0.03;

/// Keys are numbers of `STITCH_TYPES`, which has the ratios.
static USED: [Choice; 12] = [
    Choice::new("301", "301 lockstitch", "The same line on both sides."),
    Choice::new("401", "401 chainstitch", "A line on the face, a rope of loops behind."),
    Choice::new("101", "101 single chain", "A thin chain of one thread behind."),
    Choice::new("304", "304 zigzag", "A zigzag on both sides."),
    Choice::new("406", "406 two-needle cover", "Two lines on the face, a ladder behind."),
    Choice::new("503", "503 two-thread overedge", "Two threads wrap the edge."),
    Choice::new("504", "504 three-thread overedge", "Three threads wrap the edge, one line holds them."),
    Choice::new("512", "512 mock safety", "Threads wrap the edge, two lines tied into it."),
    Choice::new("514", "514 four-thread overedge", "As 512, tied more strongly."),
    Choice::new("516", "516 safety stitch", "A chain, a gap, then threads round the edge."),
    Choice::new("602", "602 two-needle top cover", "Two lines, ladders on both sides."),
    Choice::new("605", "605 three-needle top cover", "Three lines, ladders on both sides."),
];

fn thread_use(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(stitch), Some(seam), thickness, density, Some(waste), Some(seam_spread), Some(model), unravelled] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: USE.len(), given: amounts.len() });
    };
    let chosen = (0_u8..).zip(&USED).find(|(place, _)| f64::from(*place) == stitch).map(|(_, choice)| choice.key);
    let known = chosen.and_then(|key| STITCH_TYPES.iter().find(|known| known.number.ends_with(key)));
    let (Some(number), Some(ratio), Some(needle)) = (chosen, known.and_then(|s| s.ratio), known.and_then(|s| s.needle_share))
    else {
        return Err(Fault::NotAChoice(&USE[0]));
    };
    let by_geometry = match (thickness, density) {
        (Some(thickness), Some(density)) => thread_by_geometry(number, &USE[2].exactly(thickness), &USE[3].exactly(density)),
        (Some(_), None) => return Err(Fault::NeededToo(&USE[3])),
        (None, Some(_)) => return Err(Fault::NeededToo(&USE[2])),
        (None, None) => None,
    };
    let from_table = by_geometry.is_none() && unravelled.is_none();
    let per_length = match unravelled {
        Some(drawn) => USE[7].at(drawn, drawn * UNRAVELLED),
        None => {
            by_geometry.unwrap_or_else(|| Estimate::exact(ratio))
                * (Estimate::<Number>::exact(1.0) + USE[6].at::<Number>(0.0, model))
        }
    };
    let length: Estimate<Length> = USE[1].at(seam, seam * seam_spread / 100.0);
    let in_seam = length * per_length;
    // The usual 12.5 stands for 10 to 15; a waste that was typed is as far off in proportion.
    let total = &in_seam * (Estimate::<Number>::exact(1.0) + USE[4].at::<Number>(waste, rectangular(waste * 0.2)));
    let outcome = Outcome::of(&total, Unit::Metre).ok_or(Fault::NotANumber(&USE[1]))?.with(
        "in-seam",
        to_say!("In the seam itself"),
        &in_seam,
        Unit::Metre,
    );
    // The shares are those of the table's ratio; nobody gave others.
    Ok(if from_table {
        outcome.with("needle", to_say!("Of that on the needles"), &(&in_seam * needle), Unit::Metre)
    } else {
        outcome
    })
}
