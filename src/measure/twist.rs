//! Twist of a leg and slant of the weft: read on the bare piece in the shop, and again after washing where that can be done.

use super::direct::{reading, spread, straight};
use super::{Fault, Input, InputKind, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, Unit};
use crate::to_say;

/// Twist of a seam as a share of its length.
///
/// # Formula
/// `AA' / AB`. `A` is the bottom end of the side seam, hem included; `A'` the natural fold at the hem; `B` a point on the seam 25 mm
/// below the seam that crosses it at the top; `AB` the length of seam between. 30 mm over 780 mm is 3.85 %.
///
/// # Where it holds
/// On a piece that hung freely and was laid down on its own folds. A seam bent forward by design is not twist: it does so alike on both
/// legs.
///
/// # Source
/// AATCC TM207-2017, measuring points; the method reads before laundering and after. Handbook, section 6.4.
///
/// # Example
/// ```
/// use garment_assay::measure::seam_twist;
/// use garment_assay::quantity::{Estimate, Unit};
/// let mm = |length| Estimate::exact_in(length, Unit::Millimetre).unwrap();
/// assert_eq!(format!("{:.3}", 100.0 * seam_twist(&mm(30.0), &mm(780.0)).value()), "3.846");
/// ```
pub fn seam_twist(moved: &Estimate<Length>, seam: &Estimate<Length>) -> Estimate<Number> {
    moved / seam
}

/// The angle, in radians, by which something moved aside over a length leans. 45 mm over 1500 mm leans by 1.72°.
///
/// # Formula
/// `atan(moved / along)`; its slope by `t = moved / along` is `1 / (1 + t^2)`.
///
/// # Source
/// ISO 16322 names an angle as one way of saying spirality, seen as national adoptions; the formula is trigonometry.
pub fn lean(moved: &Estimate<Length>, along: &Estimate<Length>) -> Estimate<Number> {
    let slope = moved / along;
    let at = slope.value();
    // The estimate as a straight line about its value: keeps each input's sign and name.
    (slope - Estimate::<Number>::exact(at)) * (1.0 / (1.0 + at * at)) + Estimate::<Number>::exact(at.atan())
}

/// Skew of a weft line as a share of the width: how far it has run off over the width of cloth.
///
/// # Formula
/// `D / W`; 45 mm over 1500 mm is 3 %.
///
/// # Where it holds
/// Mills skew twill on purpose, so that legs do not twist in the wash: a slant of the weft is no fault by itself.
///
/// # Source
/// ASTM D3882, from memory. Handbook, section 6.4.
pub fn skew(run_off: &Estimate<Length>, width: &Estimate<Length>) -> Estimate<Number> {
    run_off / width
}

/// Change of skew from the two diagonals of a marked square, after washing.
///
/// # Formula
/// `2 (AC - BD) / (AC + BD)`; diagonals of 366 and 348 mm are 5.04 %. The sign says which way it leans.
///
/// # Source
/// AATCC TM179, option 1, from memory. Handbook, section 6.4.
pub fn skew_of_diagonals(one: &Estimate<Length>, other: &Estimate<Length>) -> Estimate<Number> {
    (one - other) * 2.0 / (one + other)
}

/// From how many millimetres between knee and hem one denim mill calls a leg twisted: an inch. Over 460 mm that is 5.5 %.
///
/// # Source
/// Bulletin of a denim mill; handbook, section 6.4.
pub const TWISTED_LEG_MM: f64 = 25.4;

const CAUTIONS: &[&str] = &[
    "Do not pull the leg straight: that hides the twist and strains the seam.",
    "New goods can hold pins or bits of needle: feel the hem from outside first.",
    "Wash only what is yours, by its label. Raw indigo marks pale seats, skin and other washing.",
];

/// How far the side seam has walked round the leg at the hem, in millimetres. Usual spread 3 mm: judgement.
///
/// The place it is read at is that of AATCC TM207 (garment twist), which reads before laundering as well as after; the reading stays in
/// millimetres here and is not divided by the length of the seam.
pub static LEG_TWIST: Instrument = Instrument {
    key: "leg-twist",
    name: "Leg twist",
    says: "How far the side seam has walked from the fold at the hem.",
    unit: Unit::Millimetre,
    inputs: &[
        reading(
            "Distance from seam to fold",
            "Hang the piece by the waistband, then lay it flat on its own folds. Measure at the hem from the side seam to the fold.",
            InputKind::Measured,
            [Unit::Millimetre, Unit::Millimetre, Unit::Inch],
            [0.0, 200.0],
        ),
        spread([Unit::Millimetre, Unit::Millimetre, Unit::Inch], [0.5, 50.0], 3.0),
    ],
    steps: &[
        "Hang the piece by the waistband, then lay it flat on its own folds.",
        "Measure at the hem, from the side seam to the fold.",
    ],
    cautions: CAUTIONS.split_at(2).0,
    sources: &[&sources::TM207, &sources::JUDGEMENT],
    formula: straight,
};

/// Twist of a leg in per cent of its seam, in millimetres and in degrees, before washing and, where that can be, after.
///
/// # Formula
/// The value is [`seam_twist`]; also the millimetres, the angle by [`lean`], the other leg, and the same leg after washing with what the
/// wash added, `after - before`.
///
/// # Where it holds
/// As [`seam_twist`]. The seam is 150 to 1300 mm long, and the twist is no more than half of it.
///
/// # Uncertainty
/// Each distance at the hem is off by 3 mm (1 sigma) unless told otherwise, mostly since no leg lies down twice alike; the seam by 5 mm.
/// Both are judgement.
///
/// # Source
/// AATCC TM207-2017, measuring points, which reads before and after laundering; ISO 16322 for millimetres, per cent or degrees. Handbook,
/// section 6.4.
pub static SEAM_TWIST: Instrument = Instrument {
    key: "seam-twist",
    name: "Twist of a seam, in per cent",
    says: "How far the side seam has walked round the piece, for the length of the seam.",
    unit: Unit::Percent,
    inputs: &INPUTS,
    steps: &[
        "Hang the piece by its upper edge, then lay it flat on its own folds.",
        "At the hem, measure from the side seam to the fold.",
        "Measure along the seam, from the hem to 25 mm below the seam that crosses it at the top.",
        "Do the other side too. If it is yours, read again after the first wash, dry.",
    ],
    cautions: CAUTIONS,
    sources: &[&sources::TM207, &sources::ISO_16322, &sources::TWIST_LIMIT, &sources::JUDGEMENT],
    formula: twist,
};

const SMALL: [Unit; 3] = [Unit::Millimetre, Unit::Millimetre, Unit::Inch];
const LONG: [Unit; 3] = [Unit::Millimetre, Unit::Centimetre, Unit::Inch];

static INPUTS: [Input; 6] = [
    Input::measured(
        "moved",
        "Seam to fold, worse side",
        "At the hem, from the side seam to the fold of the leg or body.",
        SMALL,
        [0.0, 200.0],
    ),
    Input::measured(
        "seam",
        "Length of the seam",
        "Along the seam, from the edge of the hem to 25 mm (1 in) below the seam that crosses it at the top.",
        LONG,
        [150.0, 1300.0],
    ),
    Input::measured("other", "Seam to fold, other side", "The same at the other leg or side.", SMALL, [0.0, 200.0])
        .never_needed(),
    Input::measured(
        "washed",
        "Seam to fold after washing",
        "The worse side again, washed and dry. Only on what is yours.",
        SMALL,
        [0.0, 300.0],
    )
    .never_needed(),
    Input::measured(
        "laying",
        "How far off each distance may be",
        "Leave it unless you know better: laid down again, a piece comes out a few millimetres otherwise.",
        SMALL,
        [0.5, 50.0],
    )
    .usually(3.0),
    Input::measured("tape", "How far off the length may be", "Leave it unless you know better.", SMALL, [0.5, 50.0]).usually(5.0),
];

/// Amounts in the order of [`INPUTS`]: all mm; the third and fourth may be none.
fn twist(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(moved), Some(seam), other, washed, Some(laying), Some(tape)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: INPUTS.len(), given: amounts.len() });
    };
    let most = [Some(moved), other, washed].into_iter().flatten().fold(0.0_f64, f64::max);
    if most > seam / 2.0 {
        return Err(Fault::Implausible { value: 100.0 * most / seam, least: 0.0, most: 50.0, unit: Unit::Percent });
    }
    // Not reached by amounts within their limits.
    let length = |key: &'static str, value: f64, u: f64| {
        Estimate::<Length>::measured_in(key, value, u, Unit::Millimetre).map_err(|_| Fault::NotANumber(&INPUTS[0]))
    };
    let (at_hem, along) = (length("moved", moved, laying)?, length("seam", seam, tape)?);
    let before = seam_twist(&at_hem, &along);
    let mut outcome = Outcome::of(&before, Unit::Percent)
        .ok_or(Fault::NotANumber(&INPUTS[0]))?
        .with("distance", to_say!("At the hem"), &at_hem, Unit::Millimetre)
        .with("angle", to_say!("As an angle"), &lean(&at_hem, &along), Unit::Degree);
    if let Some(other) = other {
        outcome =
            outcome.with("other", to_say!("Other side"), &seam_twist(&length("other", other, laying)?, &along), Unit::Percent);
        // Two readings, each with its own spread, at two standard uncertainties.
        let alike = (moved - other).abs() <= 2.0 * laying * std::f64::consts::SQRT_2;
        if alike && moved.min(other) > 2.0 * laying {
            outcome = outcome.saying(
                to_say!("Both sides show the same. If the seams lean forward on both, the cut may mean it; if both turn one way round, the cloth does it."),
            );
        }
    }
    if let Some(washed) = washed {
        let after = seam_twist(&length("washed", washed, laying)?, &along);
        outcome = outcome.with("after", to_say!("After washing"), &after, Unit::Percent).with(
            "added",
            to_say!("What the wash added"),
            &(&after - &before),
            Unit::Percent,
        );
    } else {
        outcome =
            outcome.saying(to_say!("Before a wash this is only the twist that shows already: washing lets more of it out."));
    }
    if most > TWISTED_LEG_MM {
        outcome = outcome.saying(to_say!(
            "Over 25.4 mm (1 in) at the hem. One denim mill calls a leg twisted when it moves that far from knee to hem."
        ));
    }
    Ok(outcome)
}
