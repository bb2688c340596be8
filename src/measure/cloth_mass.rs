//! What a square of cloth weighs, by four ways that a shopper or a buyer has: the label (in `direct`), a luggage scale, thread counts with
//! yarn numbers, and the hand held against pieces of known mass.

use super::weight_names::{SCALES, WeightScale};
use super::yarn::{MassPerLength, SYSTEMS, YarnSystem};
use super::{Choice, Fault, Input, Instrument, Outcome, sources};
use crate::quantity::{Area, Estimate, Length, Mass, MassPerArea, Number, PerLength, Unit, rectangular};
use crate::to_say;

/// Girths and lengths of a pair of jeans. Girths go all the way round the garment; where one side lay flat, twice that.
#[derive(Clone, Debug)]
pub struct JeansMeasures {
    /// Round one leg at the top of the thigh.
    pub thigh: Estimate<Length>,
    /// Round one leg at the knee.
    pub knee: Estimate<Length>,
    /// Round one leg at the hem.
    pub hem: Estimate<Length>,
    /// Crotch to hem.
    pub inseam: Estimate<Length>,
    /// Round the seat at its widest.
    pub hip: Estimate<Length>,
    /// The mean of the front and the back rise, from crotch to the top of the waistband.
    pub rise: Estimate<Length>,
    /// Round the waistband.
    pub waist: Estimate<Length>,
}

/// How much cloth a pair of jeans holds, pockets, waistband, fly and seam overlap counted.
///
/// # Formula
/// In cm and cm²: legs `2 * [(thigh + knee)/2 * 35 + (knee + hem)/2 * (inseam - 35)]`, seat `hip * (rise - 4) + 400`, waistband
/// `8 * (waist + 4)`, back pockets 510, fly, facings and loops 700, seam overlap `6*inseam + 5*(inseam + rise - 4) + 225 + 6*hem`.
///
/// # Where it holds
/// Five-pocket jeans of adults with felled inseams. A published 700 g for W33 L34 in 12 oz implies 3 % more than the model gives.
///
/// # Uncertainty
/// The measures' own. The model itself is off by some 8 % (judgement); whoever uses it multiplies by that.
///
/// # Source
/// Handbook, section 4.3: a model of our own. 32 x 32 straight gives 1.4226 m².
pub fn jeans_area(at: &JeansMeasures) -> Estimate<Area> {
    let cm = |number: f64| Estimate::<Length>::exact(number / 100.0);
    let cm2 = |number: f64| Estimate::<Area>::exact(number / 10_000.0);
    let upper = (&at.thigh + &at.knee) / 2.0 * cm(35.0);
    let lower = (&at.knee + &at.hem) / 2.0 * (&at.inseam - cm(35.0));
    let seat = &at.hip * (&at.rise - cm(4.0)) + cm2(400.0);
    let waistband = (&at.waist + cm(4.0)) * cm(8.0);
    let overlap = &at.inseam * cm(6.0) + (&at.inseam + &at.rise - cm(4.0)) * cm(5.0) + cm2(225.0) + &at.hem * cm(6.0);
    (upper + lower) * 2.0 + seat + waistband + overlap + cm2(510.0 + 700.0)
}

/// What a square of cloth weighs, from a garment on a scale.
///
/// # Formula
/// `m = (W - W_trims) / A`; 690 g with 70 g of trims on 1.42 m² is 436.6 g/m².
///
/// # Source
/// Handbook, section 4.3.
pub fn mass_from_weighing(whole: &Estimate<Mass>, trims: &Estimate<Mass>, area: &Estimate<Area>) -> Estimate<MassPerArea> {
    (whole - trims) / area
}

/// What a square of woven cloth weighs, from its threads.
///
/// # Formula
/// `m = n1 T1 (1 + c1) + n2 T2 (1 + c2)`, with threads per length `n`, what a length of yarn weighs `T`, and the crimp `c`: how much
/// longer the yarn is than the cloth it lies in, as a share of the cloth. In g/m², threads per cm and tex that is 0.1 of the sum.
///
/// # Where it holds
/// Finished woven cloth, to about 5 % (handbook: judgement): size, dye and shrinkage are not in it.
///
/// # Source
/// Handbook, section 4.5; crimp as in ISO 7211-3. 68 x 44 with Ne 6.5 and 6, crimp 10 % and 4 %, is 444.9 g/m².
pub fn mass_from_threads(
    warp: (&Estimate<PerLength>, &Estimate<MassPerLength>, &Estimate<Number>),
    weft: (&Estimate<PerLength>, &Estimate<MassPerLength>, &Estimate<Number>),
) -> Estimate<MassPerArea> {
    let system = |(threads, yarn, crimp): (&Estimate<PerLength>, &Estimate<MassPerLength>, &Estimate<Number>)| {
        threads * yarn * (Estimate::<Number>::exact(1.0) + crimp)
    };
    system(warp) + system(weft)
}

/// What a square of cloth weighs after it shrank; size and lint that wash out are not in it.
///
/// # Formula
/// `m_after = m / ((1 - s1) (1 - s2))`, shrinkage as a share of the length before, 0 for none. Unknown when nothing would be left.
///
/// # Source
/// Handbook, section 4.5: 450 g/m² with 3 % and 1 % is 468.6 g/m².
pub fn mass_after_shrinking(
    mass: &Estimate<MassPerArea>,
    along: &Estimate<Number>,
    across: &Estimate<Number>,
) -> Estimate<MassPerArea> {
    if along.value() >= 1.0 || across.value() >= 1.0 {
        return Estimate::unknown();
    }
    let one = Estimate::<Number>::exact(1.0);
    mass / ((&one - along) * (&one - across))
}

/// Ounces in a square yard that clothes are made of, least and most. Judgement.
const BELIEVED: [f64; 2] = [1.0, 40.0];
const MASS_UNITS: [Unit; 3] = [Unit::OuncePerSquareYard, Unit::GramPerSquareMetre, Unit::OuncePerSquareYard];
const CENTIMETRES: [Unit; 3] = [Unit::Centimetre, Unit::Centimetre, Unit::Inch];

/// Which name-scale says light or heavy.
pub(super) const SCALE: Input =
    Input::choice("scale", "Called light or heavy by", "No scale is universal. Choose whose words you want.", &SCALES)
        .usually(0.0);

/// The estimate as an outcome with its name on the scale, when clothes have such a mass.
fn said(mass: &Estimate<MassPerArea>, scale: f64, at_fault: &'static Input) -> Result<Outcome, Fault> {
    let outcome = Outcome::of(mass, Unit::OuncePerSquareYard).ok_or(Fault::NotANumber(at_fault))?;
    let [least, most] = BELIEVED;
    if !(least..=most).contains(&outcome.value) {
        return Err(Fault::Implausible { value: outcome.value, least, most, unit: Unit::OuncePerSquareYard });
    }
    Ok(match WeightScale::at(scale).sentence(outcome.value, outcome.uncertainty) {
        Some(sentence) => outcome.saying(sentence),
        None => outcome,
    })
}

/// Cloth mass of a pair of jeans from its weight on a luggage scale and seven measures.
///
/// # Formula
/// `m = (W - W_trims) / A * (1 ± model) * (1 ± damp)`, the area by [`jeans_area`].
///
/// # Where it holds
/// Dry five-pocket jeans without lining. Metal-heavy or padded pairs need their own trims.
///
/// # Uncertainty
/// Scale 10 g; trims 20 g (judgement) on 70 g; each measure 1 cm (judgement); the area model 8 %; damp of the room 1.2 %, half-width 2 %
/// over the root of 3. About 9 % together, nearly all of it the model's. Size (starch) of a pair never washed does not move the result,
/// which is the cloth as it lies; the mass without size is given beside it: 5 to 12 % less, rectangular.
///
/// # Source
/// Handbook, section 4.3; rectangular limits by JCGM 100:2008 (GUM), 4.3.7.
///
/// # Example
/// ```
/// use garment_assay::measure::CLOTH_MASS_WEIGHED;
/// let jeans = [690.0, 60.0, 44.0, 40.0, 81.0, 104.0, 32.0, 84.0].map(Some);
/// let mut given = vec![None; CLOTH_MASS_WEIGHED.inputs.len()];
/// given[..8].copy_from_slice(&jeans);
/// let outcome = CLOTH_MASS_WEIGHED.estimate(&given).unwrap();
/// assert_eq!(format!("{:.1} {:.1}", outcome.value, outcome.uncertainty), "12.9 1.1");
/// assert_eq!(outcome.budget[0].0, "model");
/// ```
pub static CLOTH_MASS_WEIGHED: Instrument = Instrument {
    key: "cloth-mass-weighed",
    name: "Cloth mass by weighing",
    says: "Weighs a whole pair of jeans and works out what a square of its cloth weighs.",
    unit: Unit::OuncePerSquareYard,
    inputs: &WEIGHED,
    steps: &[
        "Empty the pockets. Hang the pair on a luggage scale or lay it on a kitchen scale.",
        "Lay it flat and measure across; twice that is the girth.",
        "Rise: measure front and back from crotch to the top of the waistband, and take the middle.",
    ],
    cautions: &["Weigh it dry: damp cotton is heavier.", "A lining, padding or heavy metal spoils the result."],
    sources: &[&sources::AREA_MODEL, &sources::GUM, &sources::JUDGEMENT],
    formula: weighed,
};

static WEIGHED: [Input; 15] = [
    Input::measured(
        "mass",
        "The pair on the scale",
        "Weigh it dry, with nothing in the pockets.",
        [Unit::Gram, Unit::Gram, Unit::Ounce],
        [150.0, 2000.0],
    ),
    Input::measured(
        "thigh",
        "Thigh",
        "Round one leg just below the crotch: across it lying flat, times two.",
        CENTIMETRES,
        [30.0, 110.0],
    ),
    Input::measured("knee", "Knee", "Round one leg 35 cm (14 in) below the crotch.", CENTIMETRES, [20.0, 90.0]),
    Input::measured("hem", "Hem", "Round one leg at the hem.", CENTIMETRES, [16.0, 90.0]),
    Input::measured("inseam", "Inseam", "From the crotch to the hem, along the seam.", CENTIMETRES, [40.0, 110.0]),
    Input::measured("hip", "Seat", "Round the seat at its widest, above the crotch.", CENTIMETRES, [60.0, 190.0]),
    Input::measured(
        "rise",
        "Rise",
        "From the crotch to the top of the waistband: front and back, and the middle of the two.",
        CENTIMETRES,
        [15.0, 50.0],
    ),
    Input::measured("waist", "Waist", "Round the waistband, closed.", CENTIMETRES, [50.0, 180.0]),
    Input::choice("washed", "Washed before", "Choose whether the cloth was ever washed.", &WASHED).usually(0.0),
    SCALE,
    Input::measured(
        "trims",
        "Zip, buttons, rivets, labels, pocket bags",
        "Leave it unless you know better: 70 g suits jeans with a zip and rivets.",
        [Unit::Gram, Unit::Gram, Unit::Ounce],
        [0.0, 400.0],
    )
    .usually(70.0),
    Input::measured(
        "scale-spread",
        "How far off the scale may be",
        "Leave it unless you know better: 10 g suits a luggage scale.",
        [Unit::Gram, Unit::Gram, Unit::Ounce],
        [0.1, 200.0],
    )
    .usually(10.0),
    Input::measured("tape", "How far off each measure may be", "Leave it unless you know better.", CENTIMETRES, [0.05, 10.0])
        .usually(1.0),
    Input::measured(
        "model",
        "How far off the cloth area may be",
        "Leave it unless you know better: pockets, folds and cuts differ.",
        [Unit::Percent; 3],
        [0.1, 30.0],
    )
    .usually(8.0),
    Input::measured(
        "damp",
        "How far off by damp",
        "Cotton takes up one or two per cent of water between a dry and a damp room.",
        [Unit::Percent; 3],
        [0.01, 20.0],
    )
    // Half-width 2 %, all alike: 2 / sqrt(3).
    .usually(1.15),
];

static WASHED: [Choice; 2] = [
    Choice::new("washed", "Washed, or soft when bought", "Most jeans were washed in the factory."),
    Choice::new("raw", "Never washed", "Raw denim: stiff, dark, smooth, with starch still in it."),
];

/// Spread of the usual trims, in grams. Judgement.
const TRIMS_SPREAD: f64 = 20.0;
/// Share of raw cloth that is size (starch), least and most. Handbook, section 4.3: common practice, from memory.
const SIZE: [f64; 2] = [0.05, 0.12];

fn weighed(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [
        Some(mass),
        Some(thigh),
        Some(knee),
        Some(hem),
        Some(inseam),
        Some(hip),
        Some(rise),
        Some(waist),
        Some(washed),
        Some(scale),
        Some(trims),
        Some(scale_spread),
        Some(tape),
        Some(model),
        Some(damp),
    ] = *amounts
    else {
        return Err(Fault::WrongNumberOfReadings { needed: WEIGHED.len(), given: amounts.len() });
    };
    let at = |place: usize, value: f64| WEIGHED[place].at(value, tape);
    let measures = JeansMeasures {
        thigh: at(1, thigh),
        knee: at(2, knee),
        hem: at(3, hem),
        inseam: at(4, inseam),
        hip: at(5, hip),
        rise: at(6, rise),
        waist: at(7, waist),
    };
    let sure = |place: usize, percent: f64| Estimate::<Number>::exact(1.0) + WEIGHED[place].at::<Number>(0.0, percent);
    let area = jeans_area(&measures) * sure(13, model);
    let trims = WEIGHED[10].at(trims, TRIMS_SPREAD);
    let cloth = mass_from_weighing(&WEIGHED[0].at(mass, scale_spread), &trims, &area) * sure(14, damp);
    let outcome = said(&cloth, scale, &WEIGHED[0])?.with("area", to_say!("Cloth in the pair"), &area, Unit::SquareMetre);
    if washed == 0.0 {
        return Ok(outcome);
    }
    let middle = (SIZE[0] + SIZE[1]) / 2.0;
    let size = Estimate::<Number>::measured("washed", 1.0 - middle, rectangular((SIZE[1] - SIZE[0]) / 2.0))
        .unwrap_or_else(|_| Estimate::unknown());
    Ok(outcome
        .with("without-size", to_say!("Without its starch"), &(cloth * size), Unit::OuncePerSquareYard)
        .saying(to_say!("Never washed: 5 to 12 in 100 of this is starch that washes out. Labels count it in.")))
}

/// Cloth mass from threads counted and yarn numbers off a sheet.
///
/// # Formula
/// [`mass_from_threads`].
///
/// # Uncertainty
/// Threads 1 per inch each; crimp in the warp 6 to 12 %, in the weft 2 to 5 % (common practice), rectangular, unless one is given; all
/// that is left, yarn numbers and finish, 5 % (handbook, section 4.5: judgement).
///
/// # Source
/// Handbook, section 4.5.
///
/// # Example
/// ```
/// use garment_assay::measure::CLOTH_MASS_BUILT;
/// let given = [Some(68.0), Some(44.0), Some(1.0), Some(6.5), Some(6.0), Some(10.0), Some(4.0), None, None, None];
/// let outcome = CLOTH_MASS_BUILT.estimate(&given).unwrap();
/// assert_eq!(format!("{:.2}", outcome.value), "13.12");
/// ```
pub static CLOTH_MASS_BUILT: Instrument = Instrument {
    key: "cloth-mass-built",
    name: "Cloth mass from its threads",
    says: "Adds up the threads of a woven cloth: counts, yarn numbers and crimp.",
    unit: Unit::OuncePerSquareYard,
    inputs: &BUILT,
    steps: &[
        "Count the threads each way, or take them from the maker’s sheet.",
        "Take the yarn numbers from the sheet, and choose the system they are in.",
    ],
    cautions: &["For woven cloth only: a knit has loops, not crossing threads."],
    sources: &[&sources::CONSTRUCTION, &sources::UNITS, &sources::JUDGEMENT],
    formula: built,
};

const THREADS: [Unit; 3] = [Unit::PerInch, Unit::PerCentimetre, Unit::PerInch];

static BUILT: [Input; 10] = [
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
    Input::measured(
        "warp-crimp",
        "Crimp of the ends",
        "On cloth of your own only: draw a thread out of 100 mm, straighten it; each mm longer is one per cent. Else leave it: 9 suits denim.",
        [Unit::Percent; 3],
        [0.0, 60.0],
    )
    .never_needed(),
    Input::measured(
        "weft-crimp",
        "Crimp of the picks",
        "As for the ends. Leave it if you cannot: 3.5 suits denim.",
        [Unit::Percent; 3],
        [0.0, 60.0],
    )
    .never_needed(),
    SCALE,
    Input::measured("count-spread", "How far off each count may be", "Leave it unless you know better.", THREADS, [0.01, 40.0])
        .usually(1.0),
    Input::measured(
        "model",
        "How far off the yarns and the finish may be",
        "Leave it unless you know better.",
        [Unit::Percent; 3],
        [0.1, 30.0],
    )
    .usually(5.0),
];

/// Spread of a crimp that was read, in per cent. Judgement.
const CRIMP_READ: f64 = 1.0;

fn built(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [
        Some(ends),
        Some(picks),
        Some(system),
        Some(warp_yarn),
        Some(weft_yarn),
        warp_crimp,
        weft_crimp,
        Some(scale),
        Some(count),
        Some(model),
    ] = *amounts
    else {
        return Err(Fault::WrongNumberOfReadings { needed: BUILT.len(), given: amounts.len() });
    };
    let system = YarnSystem::at(system);
    let yarn = |number: f64| system.yarn(&Estimate::exact(number));
    // Common practice, handbook, section 4.5: denim lies between these.
    let crimp = |place: usize, read: Option<f64>, [low, high]: [f64; 2]| {
        let (middle, spread) = read.map_or(((low + high) / 2.0, rectangular((high - low) / 2.0)), |read| (read, CRIMP_READ));
        BUILT[place].at::<Number>(middle, spread)
    };
    let mass = mass_from_threads(
        (&BUILT[0].at(ends, count), &yarn(warp_yarn), &crimp(5, warp_crimp, [6.0, 12.0])),
        (&BUILT[1].at(picks, count), &yarn(weft_yarn), &crimp(6, weft_crimp, [2.0, 5.0])),
    );
    said(&(mass * (Estimate::<Number>::exact(1.0) + BUILT[9].at::<Number>(0.0, model))), scale, &BUILT[3])
}

/// Cloth mass by the hand: heavier than one known piece, lighter than another.
///
/// # Formula
/// The middle of what is left, where all places are alike: `(low + high) / 2`; "nearer to" leaves the nearer half.
///
/// # Uncertainty
/// `(high - low) / 2 / sqrt(3)`, half of that where one is nearer; and the hand itself, 5 % (judgement: nobody measured how well hands
/// tell cloth). The known pieces stand as exact.
///
/// # Source
/// JCGM 100:2008 (GUM), 4.3.7; the ends of what jeans are made of, 5 and 24 oz, are judgement.
pub static CLOTH_MASS_COMPARED: Instrument = Instrument {
    key: "cloth-mass-compared",
    name: "Cloth mass by comparing",
    says: "Sets the cloth between two pieces whose mass you know, by hand.",
    unit: Unit::OuncePerSquareYard,
    inputs: &COMPARED,
    steps: &[
        "Find a piece you know that is lighter, and one that is heavier.",
        "Pinch a single layer of each between thumb and two fingers, eyes shut.",
        "Say which of the two it is nearer to, if you can.",
    ],
    cautions: &["Compare single layers, away from seams. Stiff is not the same as heavy."],
    sources: &[&sources::GUM, &sources::JUDGEMENT],
    formula: compared,
};

static COMPARED: [Input; 5] = [
    Input::measured(
        "lighter",
        "Heavier than",
        "What the lighter piece is known to weigh. None at hand: leave it.",
        MASS_UNITS,
        [1.0, 40.0],
    )
    .usually(5.0),
    Input::measured(
        "heavier",
        "Lighter than",
        "What the heavier piece is known to weigh. None at hand: leave it.",
        MASS_UNITS,
        [1.0, 40.0],
    )
    .usually(24.0),
    Input::choice("nearer", "Nearer to", "Which of the two it is more like.", &NEARER),
    SCALE,
    Input::measured("hand", "How far off the hand may be", "Leave it unless you know better.", [Unit::Percent; 3], [0.5, 50.0])
        .usually(5.0),
];

static NEARER: [Choice; 3] = [
    Choice::new("neither", "Cannot tell", "Somewhere between the two."),
    Choice::new("lighter", "The lighter one", "More like the lighter piece."),
    Choice::new("heavier", "The heavier one", "More like the heavier piece."),
];

fn compared(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(low), Some(high), Some(nearer), Some(scale), Some(hand)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: COMPARED.len(), given: amounts.len() });
    };
    if low >= high {
        return Err(Fault::WrongOrder { smaller: &COMPARED[0], larger: &COMPARED[1] });
    }
    let middle = (low + high) / 2.0;
    let (low, high) = match nearer {
        1.0 => (low, middle),
        2.0 => (middle, high),
        _ => (low, high),
    };
    let (middle, spread) = ((low + high) / 2.0, rectangular((high - low) / 2.0));
    let between = Estimate::<MassPerArea>::measured_in(COMPARED[2].key, middle, spread, Unit::OuncePerSquareYard)
        .unwrap_or_else(|_| Estimate::unknown());
    said(&(between * (Estimate::<Number>::exact(1.0) + COMPARED[4].at::<Number>(0.0, hand))), scale, &COMPARED[0])
}
