//! Numbers read straight off a rule, a label or a count of things.

use super::Instrument;

/// How far the side seam has walked round the leg at the hem, in millimetres.
pub static LEG_TWIST: Instrument = Instrument { key: "leg-twist" };
/// How much longer stretch cloth stays after a pull, in per cent.
pub static GROWTH: Instrument = Instrument { key: "growth" };
/// How far 100 mm of cloth gives under a firm pull, in millimetres.
pub static GIVE: Instrument = Instrument { key: "give" };
/// Loose thread ends longer than 3 mm on the whole piece.
pub static LOOSE_ENDS: Instrument = Instrument { key: "loose-ends" };
/// Stress points out of ten that carry a dense tack or a rivet.
pub static TACKS: Instrument = Instrument { key: "tacks" };
/// Cloth mass in ounces per square yard.
pub static CLOTH_MASS: Instrument = Instrument { key: "cloth-mass" };
