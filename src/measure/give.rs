//! Give, growth and recovery of stretch cloth by hand: two fingertips against a ruler, one pull, one rest. No load cell, so indicative only.

use super::direct::{reading, spread, straight};
use super::{Fault, Input, InputKind, Instrument, Outcome, sources};
use crate::quantity::{Estimate, Length, Number, Unit};
use crate::to_say;

/// How much longer the cloth is under the pull, as a share of the length before; 0.22 is 22 per cent.
///
/// # Formula
/// `(B - A) / A`, with `A` the length at rest and `B` the length under the pull. ISO 20932-1 calls the same quotient elongation,
/// `(E - L) / L`.
///
/// # Where it holds
/// For one pull, at whatever force pulled. A laboratory hangs 1.35 or 1.8 kg on a strip of set width (ASTM D3107); a hand does not, and
/// the method itself warns that even laboratories differ.
///
/// # Source
/// ASTM D3107-07(2019), principle; the symbols from memory. Handbook, section 5.
///
/// # Example
/// ```
/// use garment_assay::measure::stretch;
/// use garment_assay::quantity::{Estimate, Unit};
/// let mm = |length| Estimate::exact_in(length, Unit::Millimetre).unwrap();
/// assert!((stretch(&mm(250.0), &mm(310.0)).value() - 0.24).abs() < 1e-12);
/// ```
pub fn stretch(at_rest: &Estimate<Length>, pulled: &Estimate<Length>) -> Estimate<Number> {
    (pulled - at_rest) / at_rest
}

/// How much longer the cloth stays after the pull and a rest, as a share of the length before.
///
/// # Formula
/// `(C - A) / A`, with `A` the length before and `C` the length after the rest. ISO 20932-1 calls it unrecovered elongation,
/// `(Q - P) / P`.
///
/// # Source
/// ASTM D3107-07(2019), principle; the symbols from memory. ISO 20932-1, from memory. Handbook, section 5.
pub fn growth(at_rest: &Estimate<Length>, rested: &Estimate<Length>) -> Estimate<Number> {
    (rested - at_rest) / at_rest
}

/// What part of the stretch goes back, after ASTM D3107: 1 when all of it does.
///
/// # Formula
/// `(B - C) / (B - A)`. Unknown when the cloth did not get longer (`B` not above `A`): there is nothing to come back from.
///
/// # Where it holds
/// Its base is the stretch. [`recovery_of_length`] has another base, so the same cloth reads otherwise there: 250, 310, 256 mm is 90 %
/// here and 97.6 % there. Never set the one beside the other without its name.
///
/// # Source
/// ASTM D3107-07(2019), principle; the symbols from memory. Handbook, section 5.
///
/// # Example
/// ```
/// use garment_assay::measure::{recovery_of_length, recovery_of_stretch};
/// use garment_assay::quantity::{Estimate, Unit};
/// let mm = |length| Estimate::exact_in(length, Unit::Millimetre).unwrap();
/// assert!((recovery_of_stretch(&mm(250.0), &mm(310.0), &mm(256.0)).value() - 0.90).abs() < 1e-12);
/// assert!((recovery_of_length(&mm(250.0), &mm(256.0)).value() - 0.976).abs() < 1e-12);
/// ```
pub fn recovery_of_stretch(at_rest: &Estimate<Length>, pulled: &Estimate<Length>, rested: &Estimate<Length>) -> Estimate<Number> {
    if pulled.value() > at_rest.value() { (pulled - rested) / (pulled - at_rest) } else { Estimate::unknown() }
}

/// What is left when the growth is taken off, after ISO 20932-1: 1 when the cloth comes all the way back.
///
/// # Formula
/// `1 - (Q - P) / P`. Its base is the length before, not the stretch: see [`recovery_of_stretch`].
///
/// # Source
/// ISO 20932-1 (it took over from EN 14704-1), from memory. Handbook, section 5.
pub fn recovery_of_length(at_rest: &Estimate<Length>, rested: &Estimate<Length>) -> Estimate<Number> {
    Estimate::<Number>::exact(1.0) - growth(at_rest, rested)
}

/// A name the trade gives to cloth by how far it gives.
#[derive(Debug, PartialEq)]
pub struct StretchClass {
    /// Its name.
    pub(crate) name: &'static str,
    /// Give it starts at, in per cent.
    pub from: f64,
    /// Give it ends at, in per cent.
    pub to: f64,
    /// Most growth, in per cent, that still passes as good in this class.
    pub good_growth: f64,
    /// Elastane on labels of such cloth, least and most, in per cent.
    pub elastane: (f64, f64),
    /// What it is called and what it is made into, in a sentence.
    pub(crate) says: &'static str,
}

crate::language::says!(StretchClass { name, says });

/// The classes, from rigid up; each begins where the one before ends.
///
/// # Source
/// Common practice, no single source, from memory: mills differ. Handbook, section 5, and its data.
pub static STRETCH_CLASSES: [StretchClass; 5] = [
    StretchClass {
        name: "rigid",
        from: 0.0,
        to: 10.0,
        good_growth: 4.0,
        elastane: (0.0, 0.0),
        says: "That is rigid cloth, as in raw and old-style jeans.",
    },
    StretchClass {
        name: "comfort stretch",
        from: 10.0,
        to: 20.0,
        good_growth: 4.0,
        elastane: (1.0, 2.0),
        says: "That is comfort stretch, as in straight and regular legs.",
    },
    StretchClass {
        name: "stretch",
        from: 20.0,
        to: 30.0,
        good_growth: 5.0,
        elastane: (1.5, 3.0),
        says: "That is stretch, as in slim legs.",
    },
    StretchClass {
        name: "power stretch",
        from: 30.0,
        to: 45.0,
        good_growth: 6.0,
        elastane: (2.0, 5.0),
        says: "That is power stretch, as in skinny legs.",
    },
    StretchClass {
        name: "hyper stretch",
        from: 45.0,
        to: 80.0,
        good_growth: 8.0,
        elastane: (4.0, 8.0),
        says: "That is hyper stretch, as in leggings that look like jeans.",
    },
];

/// The classes that a give may belong to: all that lie, with any part, within one standard uncertainty of it. A value on a border counts
/// for both sides. The first class has no lower end and the last no upper. Empty when the give is unknown.
pub fn stretch_classes_of(give: &Estimate<Number>) -> Vec<&'static StretchClass> {
    let Some((value, spread)) = give.in_unit(Unit::Percent) else { return Vec::new() };
    let last = STRETCH_CLASSES.len() - 1;
    let meets = |(place, class): &(usize, &StretchClass)| {
        (*place == 0 || value + spread >= class.from) && (*place == last || value - spread <= class.to)
    };
    STRETCH_CLASSES.iter().enumerate().filter(meets).map(|(_, class)| class).collect()
}

/// What the share of elastane on a label lets one expect of the give, in per cent.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ExpectedGive {
    /// Least.
    pub least: f64,
    /// By the trade's rule of thumb: five for each one.
    pub by_rule: f64,
    /// Most.
    pub most: f64,
}

/// What the share of elastane (spandex) on the label, in per cent, suggests of the give. None below 0, above 30 or not a number.
///
/// # Formula
/// From `3 e` to `15 e`, and by the rule of thumb `5 e`; the upper end no lower than the end of any of [`STRETCH_CLASSES`] in which that
/// share is usual, and no higher than the last class ends. Without elastane: 0 to 10, the rigid class.
///
/// # Where it holds
/// A weak rule: yarn and weave decide more than the share does. Some polyester yarns (elasterell-p, elastomultiester) stretch with no
/// elastane on the label. Cloth that reads far below the range may be tired, or the label may speak of another part.
///
/// # Source
/// The rule of five: trade rule of thumb, two pages. The spread of 3 to 15: common practice, no source. Handbook, section 5.
pub fn expected_give(elastane: f64) -> Option<ExpectedGive> {
    if !(0.0..=30.0).contains(&elastane) {
        return None;
    }
    let ceiling = STRETCH_CLASSES[STRETCH_CLASSES.len() - 1].to;
    let usual_in = |class: &&StretchClass| class.elastane.0 <= elastane && elastane <= class.elastane.1;
    let most = STRETCH_CLASSES.iter().filter(usual_in).fold(15.0 * elastane, |most, class| most.max(class.to)).min(ceiling);
    Some(ExpectedGive { least: (3.0 * elastane).min(ceiling), by_rule: (5.0 * elastane).min(ceiling), most })
}

const CAUTIONS: &[&str] = &[
    "Ask first when the goods are not yours. One steady pull, never a hard one.",
    "Keep off seams, prints and beads, and off thin or torn cloth.",
    "New goods can hold pins or bits of needle: feel the place from outside first.",
];

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
    cautions: CAUTIONS,
    sources: &[&sources::D3107, &sources::JUDGEMENT],
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
    cautions: CAUTIONS,
    sources: &[&sources::D3107, &sources::JUDGEMENT],
    formula: straight,
};

/// Give, growth and recovery from one pull between two fingertips.
///
/// # Formula
/// The value is [`stretch`]; also [`growth`], [`recovery_of_stretch`] and [`recovery_of_length`], and [`expected_give`] where the share of
/// elastane is given. 10.0, 12.2, 10.3 cm is 22 %, 3 %, 86.4 % (of the stretch) and 97 % (of the length).
///
/// # Where it holds
/// For one pull as if lifting 2 kg, held 10 s, and a rest of 30 s, on one ply away from seams. Give of 0 to 150 %.
///
/// # Uncertainty
/// Each of the three readings is off by 1 mm (1 sigma) unless told otherwise: fingertips on cloth. The pull is off by 6 % of what it stretches:
/// no hand is a scale. Both are judgement, chosen so that 100 mm gives the handbook's "3 points either way" at two standard uncertainties.
///
/// # Source
/// Handbook, section 5, hand protocol; formulas as named.
pub static STRETCH_AND_RECOVERY: Instrument = Instrument {
    key: "stretch-recovery",
    name: "Give, growth and recovery",
    says: "One pull and one rest: how far the cloth gives, how much longer it stays, and how well it comes back.",
    unit: Unit::Percent,
    inputs: &TRIAL,
    steps: &[
        "Lay the cloth flat, on trousers the thigh. Set two fingertips 10 cm apart across it, against a ruler.",
        "Pull once and steadily, as if you lifted 2 kg. Hold for 10 seconds and read the ruler.",
        "Let go, wait 30 seconds, and read again between the same two places.",
    ],
    cautions: CAUTIONS,
    sources: &[&sources::D3107, &sources::ISO_20932, &sources::STRETCH_CLASSES, &sources::ELASTANE_RULE, &sources::JUDGEMENT],
    formula: trial,
};

const SMALL: [Unit; 3] = [Unit::Millimetre, Unit::Millimetre, Unit::Inch];

static TRIAL: [Input; 6] = [
    Input::measured(
        "start",
        "Before the pull",
        "Between the fingertips, the cloth flat and at rest. 100 mm is handy.",
        SMALL,
        [20.0, 500.0],
    ),
    Input::measured("pulled", "Under the pull", "Between the same places, after 10 seconds of the pull.", SMALL, [20.0, 1500.0]),
    Input::measured("rested", "After the rest", "Between the same places, 30 seconds after you let go.", SMALL, [20.0, 1500.0])
        .never_needed(),
    Input::measured(
        "elastane",
        "Elastane on the label",
        "Per cent of elastane or spandex, where the label names it. It sets beside the reading what the trade would expect.",
        [Unit::Percent; 3],
        [0.0, 30.0],
    )
    .never_needed(),
    Input::measured(
        "fingers",
        "How far off each reading may be",
        "Leave it unless you know better: fingertips on cloth are good to about a millimetre.",
        SMALL,
        [0.1, 10.0],
    )
    .usually(1.0),
    Input::measured(
        "pull",
        "How far off the pull may be",
        "Leave it unless you know better: the part of the give by which your pulls differ.",
        [Unit::Percent; 3],
        [0.0, 50.0],
    )
    .usually(6.0),
];

/// Largest give believed, in per cent. Judgement: cloth for swimwear gives about so much.
const MOST_GIVE: f64 = 150.0;
/// Growth below zero, in per cent, that may still be a misreading of fingertips. Judgement.
const LEAST_GROWTH: f64 = -5.0;

/// Amounts in the order of [`TRIAL`]: mm, mm, mm or none, per cent or none, mm, per cent.
fn trial(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(start), Some(pulled), rested, elastane, Some(fingers), Some(pull)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: TRIAL.len(), given: amounts.len() });
    };
    let percent = |length: f64| 100.0 * (length - start) / start;
    if !(0.0..=MOST_GIVE).contains(&percent(pulled)) {
        return Err(Fault::Implausible { value: percent(pulled), least: 0.0, most: MOST_GIVE, unit: Unit::Percent });
    }
    if let Some(after) = rested.map(percent) {
        let most = percent(pulled).max(100.0 * fingers / start);
        if !(LEAST_GROWTH..=most).contains(&after) {
            return Err(Fault::Implausible { value: after, least: LEAST_GROWTH, most, unit: Unit::Percent });
        }
    }
    // Not reached by amounts within their limits.
    let length = |key: &'static str, value: f64, u: f64| {
        Estimate::<Length>::measured_in(key, value, u, Unit::Millimetre).map_err(|_| Fault::NotANumber(&TRIAL[1]))
    };
    let a = length("start", start, fingers)?;
    let b = length("pulled", pulled, fingers)? + length("pull", 0.0, pull / 100.0 * (pulled - start))?;
    let give = stretch(&a, &b);
    let mut outcome = Outcome::of(&give, Unit::Percent).ok_or(Fault::NotANumber(&TRIAL[1]))?;
    if let Some(rested) = rested {
        let c = length("rested", rested, fingers)?;
        outcome = outcome
            .with("growth", to_say!("Growth"), &growth(&a, &c), Unit::Percent)
            .with(
                "recovery-of-stretch",
                to_say!("Recovery, as ASTM D3107 counts it"),
                &recovery_of_stretch(&a, &b, &c),
                Unit::Percent,
            )
            .with("recovery-of-length", to_say!("Recovery, as ISO 20932-1 counts it"), &recovery_of_length(&a, &c), Unit::Percent)
            .saying(to_say!(
                "The two recoveries differ because one counts from the stretch and the other from the whole length."
            ));
    }
    let classes = stretch_classes_of(&give);
    for class in &classes {
        outcome = outcome.saying(class.says);
    }
    if let (Some((value, u)), true) = (outcome.also("growth").map(|also| (also.value, also.uncertainty)), !classes.is_empty()) {
        let good = classes.iter().fold(0.0_f64, |most, class| most.max(class.good_growth));
        outcome = outcome.saying(if value + u <= good {
            to_say!("It stays no longer than good cloth of its class does.")
        } else if value - u > good {
            to_say!("It stays longer than good cloth of its class: knees and seat may bag.")
        } else {
            to_say!("Whether it stays too long is too near to tell by hand.")
        });
    }
    if let Some(expected) = elastane.and_then(expected_give) {
        let end = |value: f64| Estimate::<Number>::exact(value / 100.0);
        outcome = outcome
            .with("expected-least", to_say!("Least to expect from the label"), &end(expected.least), Unit::Percent)
            .with("expected-most", to_say!("Most to expect from the label"), &end(expected.most), Unit::Percent);
        let (value, u) = (outcome.value, outcome.uncertainty);
        outcome = outcome.saying(if value + u < expected.least {
            to_say!("Less give than the label suggests: a tight weave, tired yarn, or the share is that of another part.")
        } else if value - u > expected.most {
            to_say!("More give than the label suggests: a loose or slanting weave, or a polyester yarn that stretches by itself.")
        } else {
            to_say!("The give fits what the label suggests, which is a wide range.")
        });
    }
    Ok(outcome)
}
