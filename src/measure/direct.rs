//! Numbers read straight off a rule, a label or a count of things: the reading is the result, and the spread is a usual one.
//!
//! The usual spreads (1 sigma) are one expert's judgement; nobody measured them. A person who knows better can say so.

use super::cloth_mass::SCALE;
use super::{Fault, Input, InputKind, Instrument, Needed, Outcome, WeightScale, sources};
use crate::quantity::Unit;

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

/// Cloth beyond the stitching on one side of a seam, in millimetres. Usual spread 2 mm: judgement, since it is often felt through a lining.
pub static SPARE_CLOTH: Instrument = Instrument {
    key: "spare-cloth",
    name: "Cloth to spare",
    says: "How much cloth lies beyond the stitching on one side of a seam.",
    unit: Unit::Millimetre,
    inputs: &[
        reading(
            "Cloth beyond the stitching",
            "Inside, lay the rule square to the seam, its zero on the stitching. Read to the edge of the cloth on one side.",
            InputKind::Measured,
            [Unit::Millimetre, Unit::Millimetre, Unit::Inch],
            [0.0, 100.0],
        ),
        spread([Unit::Millimetre, Unit::Millimetre, Unit::Inch], [0.5, 20.0], 2.0),
    ],
    steps: &[
        "Find the seam from inside, or feel it through the lining.",
        "Lay the rule square to it, zero on the stitching, and read to the edge of the cloth on one side.",
    ],
    cautions: &["Do not open a seam or a lining to look. Feel for pins before you slide a hand in."],
    sources: &[&sources::JUDGEMENT],
    formula: straight,
};

/// All the way round a hem, in centimetres. Usual spread 5 cm: judgement, since a tape follows a curved edge and folds in cloth.
pub static HEM_ROUND: Instrument = Instrument {
    key: "hem-round",
    name: "Way round the hem",
    says: "How far it is all the way round a hem.",
    unit: Unit::Centimetre,
    inputs: &[
        reading(
            "Round the hem",
            "Lay the hem flat and follow its edge with a tape from side to side, pleats open. Type twice that.",
            InputKind::Measured,
            [Unit::Centimetre, Unit::Centimetre, Unit::Inch],
            [30.0, 2000.0],
        ),
        spread([Unit::Centimetre, Unit::Centimetre, Unit::Inch], [0.3, 50.0], 5.0),
    ],
    steps: &["Lay the hem flat and open its pleats.", "Follow its edge with a tape from side to side, and double it."],
    cautions: &["Hems of new goods can hold pins: feel from outside first."],
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
            "Take it from the label or the maker’s sheet. Denim is given in oz, meaning ounces in a square yard; most other cloth in grams in \
             a square metre.",
            InputKind::Measured,
            [Unit::OuncePerSquareYard, Unit::GramPerSquareMetre, Unit::OuncePerSquareYard],
            [1.0, 40.0],
        ),
        spread([Unit::OuncePerSquareYard, Unit::GramPerSquareMetre, Unit::OuncePerSquareYard], [0.05, 10.0], 1.1),
        SCALE,
    ],
    steps: &[
        "Take it from the label or the maker’s sheet.",
        "Denim is given in ounces in a square yard; most other cloth in grams in a square metre.",
    ],
    cautions: &[],
    sources: &[&sources::UNITS, &sources::JUDGEMENT],
    formula: labelled,
};

/// The reading itself. Units: of the amount, offered in metric, offered in imperial. Limits: least, most.
pub(super) const fn reading(name: &'static str, ask: &'static str, kind: InputKind, units: [Unit; 3], limits: [f64; 2]) -> Input {
    let ([unit, metric, imperial], [least, most]) = (units, limits);
    Input { key: "reading", name, ask, kind, unit, metric, imperial, least, most, needed: Needed::Always }
}

/// How far off the reading may be (1 sigma), with a usual value where nothing is said.
pub(super) const fn spread(units: [Unit; 3], limits: [f64; 2], usual: f64) -> Input {
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

/// Amounts: the mass and its spread in oz/yd², and the name-scale.
fn labelled(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [mass, spread, Some(scale)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: 3, given: amounts.len() });
    };
    let outcome = straight(&[mass, spread])?;
    Ok(match WeightScale::at(scale).sentence(outcome.value, outcome.uncertainty) {
        Some(sentence) => outcome.saying(sentence),
        None => outcome,
    })
}

/// Amounts: the reading and its spread, both in the instrument's unit.
pub(super) fn straight(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(value), Some(uncertainty)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: 2, given: amounts.len() });
    };
    Ok(Outcome::plain(value, uncertainty, "reading"))
}
