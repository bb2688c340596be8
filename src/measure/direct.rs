//! Numbers read straight off a rule, a label or a count of things: the reading is the result, and the spread is a usual one.
//!
//! The usual spreads (1 sigma) are one expert's judgement; nobody measured them. A person who knows better can say so.

use super::{Fault, Input, InputKind, Instrument, Needed, Outcome, sources};
use crate::quantity::Unit;

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
    cautions: &[],
    sources: &[&sources::TM207, &sources::JUDGEMENT],
    formula: straight,
};

/// How much longer stretch cloth stays after a pull, in per cent. Usual spread 1.5: judgement.
///
/// A hand test after the manner of ASTM D3107 (growth), without its weights and times; that method warns that even laboratories differ.
pub static GROWTH: Instrument = Instrument {
    key: "growth",
    name: "Growth",
    says: "How much longer stretch cloth stays after one firm pull.",
    unit: Unit::Percent,
    inputs: &[
        reading(
            "Growth on 100 mm",
            "Mark 100 mm across the cloth with two fingertips; on trousers, across the thigh. Pull firmly for 10 seconds, let go, wait 30 seconds. Read how many \
             millimetres longer it is: each is one per cent.",
            InputKind::Measured,
            [Unit::Percent, Unit::MillimetrePerHundred, Unit::Percent],
            [0.0, 50.0],
        ),
        spread([Unit::Percent, Unit::MillimetrePerHundred, Unit::Percent], [0.1, 20.0], 1.5),
    ],
    steps: &[
        "Mark 100 mm across the cloth with two fingertips.",
        "Pull firmly for 10 seconds, let go, wait 30 seconds.",
        "Read how many millimetres longer it is.",
    ],
    cautions: &["Pull gently on thin or torn cloth. Keep off seams and prints."],
    sources: &[&sources::D3107, &sources::JUDGEMENT],
    formula: straight,
};

/// How far 100 mm of cloth gives under a firm pull, in millimetres. Usual spread 2 mm: judgement.
pub static GIVE: Instrument = Instrument {
    key: "give",
    name: "Give",
    says: "How far 100 mm of cloth gives under a firm pull.",
    unit: Unit::MillimetrePerHundred,
    inputs: &[
        reading(
            "Give on 100 mm",
            "Mark 100 mm across the cloth with two fingertips; on trousers, across the thigh. Pull as if you lifted 2 kg, and read how many millimetres longer it is. Keep \
             off seams and prints. One clean pull is enough.",
            InputKind::Measured,
            [Unit::MillimetrePerHundred, Unit::MillimetrePerHundred, Unit::Percent],
            [0.0, 150.0],
        ),
        spread([Unit::MillimetrePerHundred, Unit::MillimetrePerHundred, Unit::Percent], [0.1, 30.0], 2.0),
    ],
    steps: &[
        "Mark 100 mm across the cloth with two fingertips.",
        "Pull once as if you lifted 2 kg.",
        "Read how many millimetres longer it is.",
    ],
    cautions: &["Keep off seams and prints. One clean pull is enough."],
    sources: &[&sources::D3107, &sources::JUDGEMENT],
    formula: straight,
};

/// Loose thread ends longer than 3 mm on the whole piece. Usual spread 0.7 of one: judgement.
pub static LOOSE_ENDS: Instrument = Instrument {
    key: "loose-ends",
    name: "Loose ends",
    says: "How many loose thread ends the whole piece has.",
    unit: Unit::Count,
    inputs: &[
        reading(
            "Loose ends",
            "Go round the whole piece, inside and out. Count thread ends longer than 3 mm.",
            InputKind::WholeCount,
            [Unit::Count; 3],
            [0.0, 200.0],
        ),
        spread([Unit::Count; 3], [0.1, 50.0], 0.7),
    ],
    steps: &["Go round the whole piece, inside and out.", "Count thread ends longer than 3 mm."],
    cautions: &["Do not pull them: a chain stitch can run."],
    sources: &[&sources::JUDGEMENT],
    formula: straight,
};

/// Stress points out of ten that carry a dense tack or a rivet. Usual spread 0.5 of one: judgement.
pub static TACKS: Instrument = Instrument {
    key: "tacks",
    name: "Tacks",
    says: "How many of ten stress points carry a dense tack or a rivet.",
    unit: Unit::Count,
    inputs: &[
        reading(
            "Points held",
            "Look at ten points: two at the foot of the fly, four at the ends of the front pockets, four at the ends of belt loops. Count those \
             with a rivet or a tack, a short bar of dense zigzag stitches.",
            InputKind::WholeCount,
            [Unit::Count; 3],
            [0.0, 10.0],
        ),
        spread([Unit::Count; 3], [0.1, 5.0], 0.5),
    ],
    steps: &[
        "Look at the foot of the fly, the ends of the front pockets and the ends of the belt loops.",
        "Count the points that have a rivet or a dense tack, ten at the most.",
    ],
    cautions: &[],
    sources: &[&sources::JUDGEMENT],
    formula: straight,
};

/// Cloth mass in ounces per square yard, from a label or worked out from a scale; g/m² is taken too. Usual spread 1.1 oz/yd², which is
/// what weighing a whole pair gives (handbook, section 4.3): judgement.
pub static CLOTH_MASS: Instrument = Instrument {
    key: "cloth-mass",
    name: "Cloth mass",
    says: "What a square of the cloth weighs: what denim makers mean by oz.",
    unit: Unit::OuncePerSquareYard,
    inputs: &[
        reading(
            "Cloth mass",
            "Take it from the label or the maker's sheet. Denim is given in oz, meaning ounces in a square yard; most other cloth in grams in \
             a square metre.",
            InputKind::Measured,
            [Unit::OuncePerSquareYard, Unit::GramPerSquareMetre, Unit::OuncePerSquareYard],
            [1.0, 40.0],
        ),
        spread([Unit::OuncePerSquareYard, Unit::GramPerSquareMetre, Unit::OuncePerSquareYard], [0.05, 10.0], 1.1),
    ],
    steps: &[
        "Take it from the label or the maker’s sheet.",
        "Denim is given in ounces in a square yard; most other cloth in grams in a square metre.",
    ],
    cautions: &[],
    sources: &[&sources::UNITS, &sources::JUDGEMENT],
    formula: straight,
};

/// The reading itself. Units: of the amount, offered in metric, offered in imperial. Limits: least, most.
const fn reading(name: &'static str, ask: &'static str, kind: InputKind, units: [Unit; 3], limits: [f64; 2]) -> Input {
    let ([unit, metric, imperial], [least, most]) = (units, limits);
    Input { key: "reading", name, ask, kind, unit, metric, imperial, least, most, needed: Needed::Always }
}

/// How far off the reading may be (1 sigma), with a usual value where nothing is said.
const fn spread(units: [Unit; 3], limits: [f64; 2], usual: f64) -> Input {
    let ([unit, metric, imperial], [least, most]) = (units, limits);
    Input {
        key: "spread",
        name: "How far off it may be",
        ask: "Leave it unless you know better. If you took the reading again and again, two in three should lie this close to the truth.",
        kind: InputKind::Measured,
        unit,
        metric,
        imperial,
        least,
        most,
        needed: Needed::Usually(usual),
    }
}

/// Amounts: the reading and its spread, both in the instrument's unit.
fn straight(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(value), Some(uncertainty)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: 2, given: amounts.len() });
    };
    Ok(Outcome::plain(value, uncertainty, "reading"))
}
