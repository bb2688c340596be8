//! Shrinkage: measured between two marks before and after a wash, or expected from what label and cloth say, and then only as a range.

use super::{Choice, Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, Unit, rectangular};
use crate::to_say;

/// Dimensional change as a share of the length before; below zero is shrinkage, -0.03 is 3 per cent shorter.
///
/// # Formula
/// `(B - A) / A`, with `A` the distance between two marks before and `B` after washing and drying.
///
/// # Where it holds
/// For the one direction measured: length (warp) and width (weft) are two numbers. Marks lie flat, without tension, the cloth dry and
/// rested both times.
///
/// # Source
/// AATCC TM135 (cloth) and TM150 (garments), ISO 5077; marks after ISO 3759, washes after ISO 6330. Handbook, section 6.1.
///
/// # Example
/// ```
/// use garment_assay::measure::dimensional_change;
/// use garment_assay::quantity::{Estimate, Unit};
/// let mm = |length| Estimate::exact_in(length, Unit::Millimetre).unwrap();
/// let change = dimensional_change(&mm(380.0), &mm(369.0));
/// assert_eq!(format!("{:.2}", change.in_unit(Unit::Percent).unwrap().0), "-2.89");
/// ```
pub fn dimensional_change(before: &Estimate<Length>, after: &Estimate<Length>) -> Estimate<Number> {
    (after - before) / before
}

/// The change after several washes together.
///
/// # Formula
/// `(1 + d1)(1 + d2)... - 1`: each wash starts from what the one before left, so -3 % and then -1 % is -3.97 %, not -4 %. No wash is no
/// change.
///
/// # Source
/// Handbook, section 6.1; follows from the definition of the change.
pub fn change_of_washes<'a>(changes: impl IntoIterator<Item = &'a Estimate<Number>>) -> Estimate<Number> {
    let left =
        changes.into_iter().fold(Estimate::<Number>::exact(1.0), |left, change| left * (Estimate::<Number>::exact(1.0) + change));
    left - Estimate::<Number>::exact(1.0)
}

/// The size after a change. Unknown when nothing would be left (a change of -1 or less).
///
/// # Formula
/// `size * (1 + d)`; 34 in at -3 % is 32.98 in.
///
/// # Source
/// Handbook, section 6.3.
pub fn size_after(size: &Estimate<Length>, change: &Estimate<Number>) -> Estimate<Length> {
    if change.value() > -1.0 { (Estimate::<Number>::exact(1.0) + change) * size } else { Estimate::unknown() }
}

/// The size to buy so that the wanted size is left after a change. Unknown when nothing would be left (a change of -1 or less).
///
/// # Formula
/// `wanted / (1 + d)`; 32 in wanted at -8 % is 34.78 in.
///
/// # Source
/// Handbook, section 6.3.
pub fn size_to_buy(wanted: &Estimate<Length>, change: &Estimate<Number>) -> Estimate<Length> {
    if change.value() > -1.0 { wanted / (Estimate::<Number>::exact(1.0) + change) } else { Estimate::unknown() }
}

/// A stretch of changes, in per cent, all places in it alike; below zero is shrinkage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChangeRange {
    /// The strongest shrinkage.
    pub low: f64,
    /// The weakest; above zero where the cloth may come out longer.
    pub high: f64,
}

impl ChangeRange {
    /// The range as an estimate to reckon with: its middle, and the spread of a value that lies anywhere in it.
    ///
    /// # Formula
    /// `(low + high) / 2`, `u = (high - low) / 2 / sqrt(3)`.
    ///
    /// # Source
    /// JCGM 100:2008 (GUM), 4.3.7.
    pub fn estimate(&self, name: &'static str) -> Estimate<Number> {
        let u = rectangular((self.high - self.low) / 2.0);
        Estimate::measured_in(name, (self.low + self.high) / 2.0, u, Unit::Percent).unwrap_or_else(|_| Estimate::unknown())
    }
}

/// What a piece is and what was done to its cloth before it was sold: one row of the table of usual changes.
#[derive(Debug, PartialEq)]
pub struct ClothBeforeWash {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// What it is, in a few words.
    pub(crate) name: &'static str,
    /// How to tell it.
    pub(crate) tell: &'static str,
    /// Change of length (warp).
    pub length: ChangeRange,
    /// Change of width (weft).
    pub width: ChangeRange,
    /// Felts without limit when it is machine washed or tumbled.
    pub felts: bool,
    /// Never washed before: wear eases it more than cloth that was.
    pub raw: bool,
}

crate::language::says!(ClothBeforeWash { name, tell });

/// The warmth of a wash.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Warmth {
    /// Up to 30 °C.
    Cool,
    /// About 40 °C.
    Warm,
    /// 60 °C and over.
    Hot,
}

/// How a piece is dried.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Drying {
    /// On a line or laid flat.
    Line,
    /// In a tumble dryer.
    Tumble,
}

const fn range(low: f64, high: f64) -> ChangeRange {
    ChangeRange { low, high }
}

/// Usual changes of the first washes, in per cent.
///
/// # Source
/// Loomstate denim: several guides to raw denim, up to 10 % in the first hot soak. Sanforised raw denim: about 3 % as a rule, the process
/// aims below 1 %. Stretch denim before its garment wash: formula of a jeans factory, 15 % in the weft at most, 12 % good. The rest: common
/// practice, from memory. Handbook, section 6.2, and its data.
pub static CLOTHS_BEFORE_WASH: [ClothBeforeWash; 9] = [
    ClothBeforeWash {
        key: "loomstate",
        name: "Raw denim, not pre-shrunk",
        tell: "Stiff, deep blue, never washed, and the label says loomstate, unsanforised or shrink-to-fit.",
        length: range(-10.0, -7.0),
        width: range(-10.0, -3.0),
        felts: false,
        raw: true,
    },
    ClothBeforeWash {
        key: "sanforised-raw",
        name: "Raw denim, sanforised",
        tell: "Stiff and never washed, but the label says sanforised or pre-shrunk: the mill shrank the cloth in steam.",
        length: range(-3.0, -1.0),
        width: range(-3.0, 0.0),
        felts: false,
        raw: true,
    },
    ClothBeforeWash {
        key: "one-wash",
        name: "Denim rinsed once",
        tell: "Dark and even, softer than raw; the label says rinsed or one-wash.",
        length: range(-2.0, 0.0),
        width: range(-2.0, 0.0),
        felts: false,
        raw: false,
    },
    ClothBeforeWash {
        key: "washed",
        name: "Washed jeans",
        tell: "Soft, with pale high places: washed at the factory.",
        length: range(-2.0, 0.0),
        width: range(-2.0, 0.5),
        felts: false,
        raw: false,
    },
    ClothBeforeWash {
        key: "stretch-unwashed",
        name: "Stretch denim cloth, before any garment wash",
        tell: "Cloth from the roll, not a finished pair: a garment wash takes this out.",
        length: range(-4.0, -2.0),
        width: range(-16.0, -10.0),
        felts: false,
        raw: true,
    },
    ClothBeforeWash {
        key: "jersey",
        name: "Cotton jersey, as in T-shirts",
        tell: "Knitted: fine columns on the face, it gives every way.",
        length: range(-7.0, -3.0),
        width: range(-5.0, 0.0),
        felts: false,
        raw: false,
    },
    ClothBeforeWash {
        key: "cotton-shirt",
        name: "Woven cotton, as in shirts",
        tell: "Threads cross at right angles; collar and cuffs can shrink otherwise than the body.",
        length: range(-3.0, -1.0),
        width: range(-2.0, 0.0),
        felts: false,
        raw: false,
    },
    ClothBeforeWash {
        key: "wool-knit",
        name: "Wool knit, washed by hand",
        tell: "Wool on the label. A machine can felt untreated wool, and felt knows no limit.",
        length: range(-5.0, -2.0),
        width: range(-5.0, 0.0),
        felts: true,
        raw: false,
    },
    ClothBeforeWash {
        key: "viscose-linen",
        name: "Viscose or linen",
        tell: "Viscose, modal, lyocell or linen on the label.",
        length: range(-6.0, -3.0),
        width: range(-4.0, -1.0),
        felts: false,
        raw: false,
    },
];

/// What a tumble dryer adds to a change, in per cent points, strongest and weakest. Common practice, no source; handbook, section 6.2.
const TUMBLE: ChangeRange = range(-3.0, -1.0);
/// A cool wash may leave up to half of the weakest usual shrinkage for a later, warmer one. Judgement.
const COOL_LEAVES: f64 = 0.5;
/// A hot wash may take a quarter more than the strongest usual shrinkage. Judgement.
const HOT_ADDS: f64 = 1.25;

/// What changes of length and of width to expect from what cloth and label say. Always a range: nobody can tell the number beforehand.
/// None for wool that is washed warm or hot or tumbled: felting has no limit to name.
///
/// # Formula
/// The row of [`CLOTHS_BEFORE_WASH`]. A tumble dryer adds 1 to 3 points of shrinkage. A cool wash halves the weaker end, since the rest
/// may come later; a hot wash makes the stronger end a quarter stronger, except for loomstate denim, whose row is a hot soak already.
///
/// # Where it holds
/// For the first washes together; most of what cotton does is done by the third (common practice). The waist of rigid jeans comes back
/// 13 to 25 mm in wear (common practice).
///
/// # Source
/// Handbook, sections 6.2 and 6.3; what warmth does here is judgement.
pub fn expected_change(cloth: &ClothBeforeWash, warmth: Warmth, drying: Drying) -> Option<[ChangeRange; 2]> {
    if cloth.felts && (warmth != Warmth::Cool || drying == Drying::Tumble) {
        return None;
    }
    let one = |usual: ChangeRange| {
        let ChangeRange { mut low, mut high } = usual;
        match warmth {
            Warmth::Cool if high < 0.0 => high *= COOL_LEAVES,
            Warmth::Hot if cloth.key != "loomstate" => low *= HOT_ADDS,
            _ => {}
        }
        if drying == Drying::Tumble {
            (low, high) = (low + TUMBLE.low, high + TUMBLE.high);
        }
        ChangeRange { low, high }
    };
    Some([one(cloth.length), one(cloth.width)])
}

const CAUTIONS: &[&str] = &[
    "Wash only what is yours, by its care label. Nothing is wetted in a shop.",
    "Raw indigo marks skin, pale seats and other washing: wash it by itself.",
    "Mark with thread or a pencil, not with pins left in the cloth.",
];
const SMALL: [Unit; 3] = [Unit::Millimetre, Unit::Millimetre, Unit::Inch];
const LONG: [Unit; 3] = [Unit::Millimetre, Unit::Centimetre, Unit::Inch];
const SHARE: [Unit; 3] = [Unit::Percent; 3];

/// Dimensional change between two marks, measured before and after a wash.
///
/// # Formula
/// The value is [`dimensional_change`] of the length; also of the width, the total with an earlier change by [`change_of_washes`], and what a
/// size becomes if the same change comes over it, by [`size_after`].
///
/// # Where it holds
/// Marks 20 mm to 1.5 m apart, changes of -50 to +20 % (judgement: beyond that a mark was lost).
///
/// # Uncertainty
/// Each distance is off by 1 mm (1 sigma) unless told otherwise: a ruler good to half a millimetre, and marks on cloth that never lies twice
/// alike. Judgement.
///
/// # Source
/// AATCC TM135 and TM150, ISO 5077. Handbook, sections 6.1 and 6.3.
pub static SHRINKAGE: Instrument = Instrument {
    key: "shrinkage",
    name: "Shrinkage, measured",
    says: "Two marks before and after a wash: how much shorter the cloth became, lengthwise and across.",
    unit: Unit::Percent,
    inputs: &MEASURED,
    steps: &[
        "Lay the dry piece flat without pulling. Mark two places along its length, far apart, and two across.",
        "Write both distances down.",
        "Wash and dry it as you always will, and let it lie for an hour.",
        "Lay it flat the same way and measure between the same marks.",
    ],
    cautions: CAUTIONS,
    sources: &[&sources::TM135, &sources::JUDGEMENT],
    formula: measured,
};

static MEASURED: [Input; 7] = [
    Input::measured("before", "Along the length, before", "Between the two marks, dry and flat.", SMALL, [20.0, 1500.0]),
    Input::measured("after", "Along the length, after", "Between the same marks, washed and dry.", SMALL, [20.0, 1500.0]),
    Input::measured("width-before", "Across, before", "Between the two marks across, dry and flat.", SMALL, [20.0, 1500.0])
        .never_needed(),
    Input::measured("width-after", "Across, after", "Between the same marks across, washed and dry.", SMALL, [20.0, 1500.0])
        .never_needed(),
    Input::measured(
        "earlier",
        "Change in earlier washes",
        "Lengthwise, in per cent, below zero where it shrank; for a piece that was washed before.",
        SHARE,
        [-50.0, 20.0],
    )
    .never_needed(),
    Input::measured(
        "size",
        "A length of the piece before this wash",
        "The inseam, say. It comes back as the length after.",
        LONG,
        [20.0, 2000.0],
    )
    .never_needed(),
    Input::measured(
        "ruler",
        "How far off each distance may be",
        "Leave it unless you know better: about a millimetre on cloth.",
        SMALL,
        [0.05, 20.0],
    )
    .usually(1.0),
];

/// Changes believed, in per cent. Judgement.
const BELIEVED: (f64, f64) = (-50.0, 20.0);

/// Amounts in the order of [`MEASURED`]: four mm of which the last two may be none, per cent or none, mm or none, mm.
fn measured(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(before), Some(after), width_before, width_after, earlier, size, Some(ruler)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: MEASURED.len(), given: amounts.len() });
    };
    // Not reached by amounts within their limits.
    let length = |key: &'static str, value: f64, u: f64| {
        Estimate::<Length>::measured_in(key, value, u, Unit::Millimetre).map_err(|_| Fault::NotANumber(&MEASURED[0]))
    };
    let believed = |change: Estimate<Number>| {
        let value = change.value() * 100.0;
        if (BELIEVED.0..=BELIEVED.1).contains(&value) {
            Ok(change)
        } else {
            Err(Fault::Implausible { value, least: BELIEVED.0, most: BELIEVED.1, unit: Unit::Percent })
        }
    };
    let change = believed(dimensional_change(&length("before", before, ruler)?, &length("after", after, ruler)?))?;
    let mut outcome = Outcome::of(&change, Unit::Percent).ok_or(Fault::NotANumber(&MEASURED[0]))?;
    match (width_before, width_after) {
        (Some(before), Some(after)) => {
            let across =
                believed(dimensional_change(&length("width-before", before, ruler)?, &length("width-after", after, ruler)?))?;
            outcome = outcome.with("width", to_say!("Across"), &across, Unit::Percent);
        }
        (Some(_), None) => return Err(Fault::NeededToo(&MEASURED[3])),
        (None, Some(_)) => return Err(Fault::NeededToo(&MEASURED[2])),
        (None, None) => {}
    }
    if let Some(earlier) = earlier {
        let total = change_of_washes([&Estimate::<Number>::exact(earlier / 100.0), &change]);
        outcome = outcome
            .with("total", to_say!("With the earlier washes"), &total, Unit::Percent)
            .saying(to_say!("Washes multiply: the second works on what the first left."));
    }
    if let Some(size) = size {
        outcome = outcome.with(
            "size-after",
            to_say!("Length after this wash"),
            &size_after(&length("size", size, ruler)?, &change),
            Unit::Centimetre,
        );
    }
    Ok(outcome)
}

/// What a wash may do, from what cloth and label say: always a range.
///
/// # Formula
/// [`expected_change`]. The value is the middle of the range lengthwise and its spread that of a value anywhere in the range; the ends
/// stand beside it, and those are what to show. A size comes back as a range too.
///
/// # Where it holds
/// As [`expected_change`]. Nobody can tell a piece's own shrinkage before it is washed.
///
/// # Uncertainty
/// `u = (high - low) / 2 / sqrt(3)`, [`ChangeRange::estimate`].
///
/// # Source
/// Handbook, sections 6.2 and 6.3; JCGM 100:2008 (GUM), 4.3.7. What warmth does is judgement.
pub static SHRINKAGE_TO_EXPECT: Instrument = Instrument {
    key: "shrinkage-expected",
    name: "Shrinkage to expect",
    says: "What the first washes may do to a piece like this: a range, from what its cloth and label say.",
    unit: Unit::Percent,
    inputs: &EXPECTED,
    steps: &[
        "Read the label: fibre, pre-shrunk or not, wash and dryer symbols.",
        "Feel whether the cloth is raw and stiff or was washed at the factory.",
        "Choose how you will wash and dry it.",
    ],
    cautions: CAUTIONS,
    sources: &[&sources::SHRINKAGE_GUIDES, &sources::COMMON_PRACTICE, &sources::JUDGEMENT],
    formula: expected,
};

const fn row(place: usize) -> Choice {
    let row = &CLOTHS_BEFORE_WASH[place];
    Choice::new(row.key, row.name, row.tell)
}

static CLOTHS: [Choice; 9] = [row(0), row(1), row(2), row(3), row(4), row(5), row(6), row(7), row(8)];

static WARMTHS: [Choice; 3] = [
    Choice::new("cool", "Cool", "Up to 30 °C."),
    Choice::new("warm", "Warm", "About 40 °C."),
    Choice::new("hot", "Hot", "60 °C and over, or a hot soak."),
];

static DRYINGS: [Choice; 2] = [
    Choice::new("line", "On a line or flat", "Hung up or laid down to dry."),
    Choice::new("tumble", "In a dryer", "Tumbled with warm air, which takes 1 to 3 points more."),
];

static EXPECTED: [Input; 4] = [
    Input::choice("cloth", "Cloth", "What it is, and what was done to it before it was sold.", &CLOTHS),
    Input::choice("warmth", "Wash", "How warm you will wash it.", &WARMTHS),
    Input::choice("drying", "Drying", "How you will dry it.", &DRYINGS),
    Input::measured(
        "size",
        "A length of the piece",
        "The inseam, say. It comes back as the range it may end in.",
        LONG,
        [20.0, 2000.0],
    )
    .never_needed(),
];

/// Amounts in the order of [`EXPECTED`]: three places in lists, mm or none.
fn expected(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(cloth), Some(warmth), Some(drying), size] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: EXPECTED.len(), given: amounts.len() });
    };
    let cloth = CLOTHS_BEFORE_WASH.get(cloth as usize).ok_or(Fault::NotAChoice(&EXPECTED[0]))?;
    let warmth = if warmth < 1.0 {
        Warmth::Cool
    } else if warmth < 2.0 {
        Warmth::Warm
    } else {
        Warmth::Hot
    };
    let drying = if drying < 1.0 { Drying::Line } else { Drying::Tumble };
    let [length, width] = expected_change(cloth, warmth, drying).ok_or(Fault::NoNumber(to_say!(
        "Untreated wool may felt without limit that way. A range stands only for a cool hand wash, dried flat."
    )))?;
    let change = length.estimate("cloth");
    let exact = |value: f64| Estimate::<Number>::exact(value / 100.0);
    let mut outcome = Outcome::of(&change, Unit::Percent)
        .ok_or(Fault::NotAChoice(&EXPECTED[0]))?
        .with("length-low", to_say!("Lengthwise, at the strongest"), &exact(length.low), Unit::Percent)
        .with("length-high", to_say!("Lengthwise, at the weakest"), &exact(length.high), Unit::Percent)
        .with("width-low", to_say!("Across, at the strongest"), &exact(width.low), Unit::Percent)
        .with("width-high", to_say!("Across, at the weakest"), &exact(width.high), Unit::Percent);
    if let Some(size) = size {
        let size = Estimate::<Length>::exact_in(size, Unit::Millimetre).map_err(|_| Fault::NotANumber(&EXPECTED[3]))?;
        outcome = outcome
            .with("size-after", to_say!("Length it may end at"), &size_after(&size, &change), Unit::Centimetre)
            .with("size-least", to_say!("At the shortest"), &size_after(&size, &exact(length.low)), Unit::Centimetre)
            .with("size-most", to_say!("At the longest"), &size_after(&size, &exact(length.high)), Unit::Centimetre)
            .with("size-to-buy", to_say!("Length to buy to end at this one"), &size_to_buy(&size, &change), Unit::Centimetre);
    }
    outcome = outcome.saying(to_say!("A range, not a forecast: pieces of one kind differ, and only a wash tells."));
    if cloth.key == "loomstate" {
        outcome = outcome.saying(to_say!(
            "Waist and thighs of rigid jeans come back in wear, the waist by about 13 to 25 mm (½ to 1 in); the inseam does not."
        ));
    }
    if warmth == Warmth::Cool {
        outcome = outcome.saying(to_say!("What a cool wash leaves may come in a later, warmer one."));
    }
    Ok(outcome)
}
