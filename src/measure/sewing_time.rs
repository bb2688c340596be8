//! What a stitch density costs in seconds and in thread. It surprises people how little.

use super::{Choice, Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, PerLength, Time, Unit, rectangular};
use crate::to_say;

/// How long the needle runs for a seam.
///
/// # Formula
/// `t = L * S / v`, with the length, stitches per length, and stitches per second `v`. 150 cm at 8 per inch and 4000 a minute is 7.09 s;
/// 15 m more closely sewn, 12 instead of 8, is 35.4 s more.
///
/// # Source
/// Handbook, section 3.
pub fn needle_time(
    seam: &Estimate<Length>,
    density: &Estimate<PerLength>,
    stitches_per_minute: &Estimate<Number>,
) -> Estimate<Time> {
    seam * density * Estimate::<Time>::exact(60.0) / stitches_per_minute
}

/// How much seam goes through the machine in a minute of running.
///
/// # Formula
/// `v / S`; 5000 a minute at 8 per inch is 17.36 yd a minute (published 17.4), at 14 per inch 9.92 (published 9.9).
///
/// # Source
/// Handbook, section 3 (a thread maker's bulletin).
pub fn seam_in_a_minute(density: &Estimate<PerLength>, stitches_per_minute: &Estimate<Number>) -> Estimate<Length> {
    stitches_per_minute / density
}

/// Seconds to sew a seam at a density, and what another density would save.
///
/// # Formula
/// `t = L * S / v * f + b * t_b`: needle time, slowed by guiding `f`, and `b` stops of `t_b` each. The difference of two densities has no
/// stops in it: `L * (S - S2) / v * f`. Thread saved, lock- and chainstitch alike: `2 T L (S - S2)` (handbook, section 2.1).
///
/// # Where it holds
/// The machine's part only. Picking up, laying and putting away are 70 to 85 % of an operation (common practice) and do not depend on the
/// density.
///
/// # Uncertainty
/// Running speed: lockstitch 2500 to 4500, chainstitch 3000 to 5500, overedge 5000 to 7000 a minute, all alike within; guiding 1.0 to 1.4;
/// a stop 0.4 to 0.6 s; all common practice. Seam 5 %, thickness 20 % (judgement). Densities stand as exact: they are asked as "what if".
///
/// # Source
/// Handbook, section 3. Inseam of 150 cm, 8 per inch, 4000 a minute, `f` 1.2, four stops of 0.5 s: 10.50 s; 12 per inch: 14.76 s.
///
/// # Example
/// ```
/// use garment_assay::measure::SEWING_TIME;
/// let given = [Some(1.5), Some(12.0), Some(8.0), None, Some(4000.0), Some(4.0), None, None, None];
/// let outcome = SEWING_TIME.estimate(&given).unwrap();
/// assert_eq!(format!("{:.2}", outcome.value), "14.76");
/// assert_eq!(outcome.also("more-time").map(|also| format!("{:.2}", also.value)), Some("4.25".into()));
/// ```
pub static SEWING_TIME: Instrument = Instrument {
    key: "sewing-time",
    name: "Sewing time",
    says: "Works out the seconds and the thread that a stitch density takes, and what a coarser one would save.",
    unit: Unit::Second,
    inputs: &INPUTS,
    steps: &[
        "Measure the seam, or leave 19 m for all seams of a pair of jeans.",
        "Type the density you counted, and the one to hold it against.",
    ],
    cautions: &["These are the machine’s seconds. Handling takes several times as long, whatever the density."],
    sources: &[&sources::SEAM_STRENGTH_BULLETIN, &sources::JEANS_OPERATIONS, &sources::COMMON_PRACTICE],
    formula,
};

const DENSITY: [Unit; 3] = [Unit::PerInch, Unit::PerCentimetre, Unit::PerInch];

static INPUTS: [Input; 9] = [
    Input::measured(
        "seam",
        "Seam",
        "All rows added up. Leave it for jeans: 19.1 m.",
        [Unit::Metre, Unit::Metre, Unit::Yard],
        [0.05, 200.0],
    )
    // The sum of JEANS, handbook, section 3.
    .usually(19.1),
    Input::measured("density", "Stitches", "As counted on the seam.", DENSITY, [2.0, 40.0]),
    Input::measured("instead-of", "Instead of", "The density to hold it against.", DENSITY, [2.0, 40.0]).usually(8.0),
    Input::choice("machine", "Machine", "What sews it: this says how fast it runs.", &MACHINES).usually(0.0),
    Input::measured(
        "speed",
        "Stitches a minute",
        "Leave it unless you know the machine: its usual speeds then stand.",
        [Unit::Count; 3],
        [100.0, 10_000.0],
    )
    .never_needed(),
    Input::count(
        "stops",
        "Stops",
        "How often the seam is stopped and taken up again. Leave it for one stop every 25 cm.",
        [0.0, 2000.0],
    )
    .never_needed(),
    Input::measured("guiding", "Slowed by guiding", "1 is full speed; 1.2 is usual.", [Unit::Count; 3], [1.0, 5.0]).usually(1.2),
    Input::measured("thickness", "Seam thickness", "Leave it unless you know better.", [Unit::Millimetre; 3], [0.1, 20.0])
        .usually(1.6),
    Input::measured(
        "seam-spread",
        "How far off the seam may be",
        "Leave it unless you know better.",
        [Unit::Percent; 3],
        [0.1, 30.0],
    )
    .usually(5.0),
];

static MACHINES: [Choice; 3] = [
    Choice::new("lock", "Lockstitch", "2500 to 4500 stitches a minute."),
    Choice::new("chain", "Chainstitch", "3000 to 5500 stitches a minute."),
    Choice::new("overedge", "Overedge", "5000 to 7000 stitches a minute."),
];

/// Usual running speeds, least and most, in the order of [`MACHINES`]. Handbook, section 3: common practice.
const SPEEDS: [[f64; 2]; 3] = [[2500.0, 4500.0], [3000.0, 5500.0], [5000.0, 7000.0]];
/// A speed that was typed is this far off. Judgement.
const SPEED_TYPED: f64 = 0.03;
/// Guiding lies this far either way of what is said. Handbook, section 3: 1.0 to 1.4 is common practice.
const GUIDING: f64 = 0.2;
/// A stop takes 0.4 to 0.6 s. Handbook, section 3: common practice.
const STOP: [f64; 2] = [0.4, 0.6];
/// Usual length between two stops in metres: straight topstitching 15 to 30 cm. Handbook, section 3: common practice.
const BURST: f64 = 0.25;

fn formula(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [
        Some(seam),
        Some(density),
        Some(instead),
        Some(machine),
        speed,
        stops,
        Some(guiding),
        Some(thickness),
        Some(seam_spread),
    ] = *amounts
    else {
        return Err(Fault::WrongNumberOfReadings { needed: INPUTS.len(), given: amounts.len() });
    };
    let known = (0_u8..).zip(SPEEDS).find(|(place, _)| f64::from(*place) == machine);
    let (_, [slow, quick]) = known.ok_or(Fault::NotAChoice(&INPUTS[3]))?;
    let speed: Estimate<Number> = match speed {
        Some(speed) => INPUTS[4].at(speed, speed * SPEED_TYPED),
        None => INPUTS[3].at((slow + quick) / 2.0, rectangular((quick - slow) / 2.0)),
    };
    let length: Estimate<Length> = INPUTS[0].at(seam, seam * seam_spread / 100.0);
    let guided: Estimate<Number> = INPUTS[6].at(guiding, rectangular(GUIDING));
    let stop = Estimate::<Time>::measured("stops", (STOP[0] + STOP[1]) / 2.0, rectangular((STOP[1] - STOP[0]) / 2.0))
        .unwrap_or_else(|_| Estimate::unknown());
    let (this, other): (Estimate<PerLength>, Estimate<PerLength>) = (INPUTS[1].exactly(density), INPUTS[2].exactly(instead));
    let running = needle_time(&length, &this, &speed) * &guided;
    let time = running + stop * stops.unwrap_or((seam / BURST).round());
    let more = needle_time(&length, &(&this - &other), &speed) * &guided;
    let thick: Estimate<Length> = INPUTS[7].at(thickness, thickness * 0.2);
    let thread = thick * &length * (&this - &other) * 2.0;
    Ok(Outcome::of(&time, Unit::Second)
        .ok_or(Fault::NotANumber(&INPUTS[0]))?
        .with("more-time", to_say!("More than the other density, seconds"), &more, Unit::Second)
        .with("more-thread", to_say!("More thread than the other density"), &thread, Unit::Metre))
}

/// One operation of sewing a pair of jeans.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Operation {
    /// What is done.
    pub(crate) name: &'static str,
    /// Stitch type in ISO 4915; empty where none is sewn.
    pub stitch: &'static str,
    /// Rows sewn.
    pub rows: f64,
    /// Length of each row in cm.
    pub centimetres: f64,
    /// Standard minutes of the whole operation, handling counted.
    pub minutes: f64,
}

crate::language::says!(Operation { name });

impl Operation {
    /// Rows times their length, in metres.
    pub fn metres(&self) -> f64 {
        self.rows * self.centimetres / 100.0
    }
}

const fn op(name: &'static str, stitch: &'static str, rows: f64, centimetres: f64, minutes: f64) -> Operation {
    Operation { name, stitch, rows, centimetres, minutes }
}

/// Sewing a pair of jeans, size 32 by 32, operation by operation: 19.1 m of rows and 13.47 standard minutes in all.
///
/// # Source
/// Handbook, section 3 and its data: a synthesis of our own from common practice, not one factory's sheet.
pub static JEANS: [Operation; 29] = [
    op("Hem watch pocket", "301", 2.0, 8.0, 0.15),
    op("Attach watch pocket", "301", 2.0, 20.0, 0.45),
    op("Hem back pockets (2)", "401", 2.0, 30.0, 0.25),
    op("Decorate back pockets (2)", "301", 2.0, 45.0, 0.5),
    op("Attach back pockets (2)", "301", 2.0, 90.0, 1.0),
    op("Join back yokes (2) felled", "401", 2.0, 40.0, 0.45),
    op("Join seat felled", "401", 2.0, 30.0, 0.4),
    op("Facings to pocket bags", "406", 1.0, 50.0, 0.4),
    op("Close pocket bags (2)", "516", 1.0, 90.0, 0.5),
    op("Front pocket mouth topstitch (2)", "301", 2.0, 36.0, 0.6),
    op("Serge fly pieces and rises", "504", 1.0, 60.0, 0.3),
    op("Left fly, zip set", "301", 1.0, 40.0, 0.5),
    op("J-stitch", "301", 2.0, 18.0, 0.35),
    op("Right fly, crotch join", "301", 1.0, 25.0, 0.55),
    op("Front rise topstitch", "301", 2.0, 12.0, 0.35),
    op("Inseam felled through crotch", "401", 2.0, 162.0, 0.85),
    op("Outseams (2)", "516", 1.0, 206.0, 1.1),
    op("Hip topstitch (2)", "301", 2.0, 36.0, 0.45),
    op("Make belt loops", "406", 1.0, 55.0, 0.1),
    op("Set 5 loops, bartack x10", "304", 10.0, 1.2, 0.6),
    op("Attach waistband", "401", 2.0, 88.0, 0.6),
    op("Close waistband ends", "301", 1.0, 20.0, 0.8),
    op("Bar tacks 10", "304", 10.0, 1.0, 0.4),
    op("Leg hems (2)", "401", 1.0, 84.0, 0.6),
    op("Eyelet buttonhole", "", 1.0, 0.0, 0.15),
    op("Button", "", 1.0, 0.0, 0.12),
    op("6 rivets", "", 1.0, 0.0, 0.35),
    op("Waist patch", "301", 1.0, 20.0, 0.4),
    op("Care/size labels", "301", 1.0, 8.0, 0.2),
];
