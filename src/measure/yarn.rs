//! Yarn numbers: how thick a yarn or a sewing thread is, in the systems that people write it in.

use typenum::{N1, P1, Z0};

use super::{Choice, Fault, Input, Instrument, Outcome, sources};
use crate::quantity::dimension::Dim;
use crate::quantity::{Estimate, Length, Number, Unit};
use crate::to_say;

/// What a length of yarn weighs, in kg/m; one tex is 10^-6 kg/m.
pub type MassPerLength = Dim<N1, P1, Z0, Z0>;

/// One tex in kg/m: a gram in 1000 m. ISO 1144 (from memory).
const TEX: f64 = 1e-6;
/// Tex times cotton number: hanks of 840 yd in a pound, so `0.453 592 37 kg / (840 * 0.9144 m)` in tex; 590.541.
const TEX_TIMES_COTTON: f64 = 453.592_37 / (840.0 * 0.9144) * 1000.0;

/// A way of writing how thick a yarn is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum YarnSystem {
    /// Grams in 1000 m: bigger is thicker.
    Tex,
    /// English cotton number, Ne: hanks of 840 yd in a pound; bigger is finer.
    Cotton,
    /// Metric number, Nm: metres in a gram; bigger is finer.
    Metric,
    /// Denier: grams in 9000 m; bigger is thicker.
    Denier,
}

/// The systems as a choice, in the order of [`YarnSystem::ALL`].
pub(super) static SYSTEMS: [Choice; 4] = [
    Choice::new("tex", "Tex", "Grams in 1000 metres. Sewing thread is often marked so."),
    Choice::new("cotton", "Ne, cotton number", "Denim and shirting sheets: 7 is thick denim yarn, 80 is fine shirting."),
    Choice::new("metric", "Nm, metric number", "Metres in a gram: wool and linen."),
    Choice::new("denier", "Denier", "Grams in 9000 metres: silk, polyester, nylon."),
];

impl YarnSystem {
    /// All systems.
    pub const ALL: [YarnSystem; 4] = [YarnSystem::Tex, YarnSystem::Cotton, YarnSystem::Metric, YarnSystem::Denier];

    /// What the yarn of that number weighs; unknown for zero in the systems where bigger is finer.
    ///
    /// # Formula
    /// `tex = 590.541 / Ne = 1000 / Nm = denier / 9`
    ///
    /// # Where it holds
    /// Single yarn. For plied yarn of `k` plies in the cotton or metric number divide the number by `k` first: 80/2 is 40.
    ///
    /// # Source
    /// Handbook, section 4.4; the constant from the definitions of the yard and the pound.
    ///
    /// # Example
    /// ```
    /// use garment_assay::measure::YarnSystem;
    /// use garment_assay::quantity::Estimate;
    /// let seven = YarnSystem::Cotton.yarn(&Estimate::exact(7.0));
    /// assert_eq!(format!("{:.2}", seven.value() * 1e6), "84.36");
    /// ```
    pub fn yarn(self, number: &Estimate<Number>) -> Estimate<MassPerLength> {
        let tex = Estimate::<MassPerLength>::exact(TEX);
        match self {
            YarnSystem::Tex => number * &tex,
            YarnSystem::Cotton => &tex * TEX_TIMES_COTTON / number,
            YarnSystem::Metric => &tex * 1000.0 / number,
            YarnSystem::Denier => number * &tex / 9.0,
        }
    }

    /// The number of a yarn in this system.
    pub fn number(self, yarn: &Estimate<MassPerLength>) -> Estimate<Number> {
        let tex = Estimate::<MassPerLength>::exact(TEX);
        match self {
            YarnSystem::Tex => yarn / &tex,
            YarnSystem::Cotton => &tex * TEX_TIMES_COTTON / yarn,
            YarnSystem::Metric => &tex * 1000.0 / yarn,
            YarnSystem::Denier => yarn * 9.0 / &tex,
        }
    }

    /// The system at that place of the choice; tex where there is none.
    pub(super) fn at(place: f64) -> YarnSystem {
        YarnSystem::ALL.into_iter().zip(0_u8..).find(|(_, at)| f64::from(*at) == place).map_or(YarnSystem::Tex, |(s, _)| s)
    }
}

/// Ticket number of synthetic sewing thread; bigger is finer. What is sold is the nearest of a short list of tickets.
///
/// # Formula
/// `ticket = 3000 / tex`
///
/// # Source
/// Handbook, section 2.4 (published conversion); tex 40 is ticket 75.
pub fn metric_ticket(thread: &Estimate<MassPerLength>) -> Estimate<Number> {
    Estimate::<MassPerLength>::exact(TEX) * 3000.0 / thread
}

/// Ticket number of cotton sewing thread. Never compare it with a metric ticket.
///
/// # Formula
/// `ticket = 3 * 590.541 / tex`
///
/// # Source
/// Handbook, section 2.4 (published conversion); tex 60 is 29.53.
pub fn cotton_ticket(thread: &Estimate<MassPerLength>) -> Estimate<Number> {
    Estimate::<MassPerLength>::exact(TEX) * (3.0 * TEX_TIMES_COTTON) / thread
}

/// What 1000 m of a yarn weigh (the tex number), from a yarn number in any system, with the number in the other systems.
///
/// # Formula
/// As [`YarnSystem::yarn`], with `plies` yarns twisted together: the number is of one of them. Twisting shortens; that is left out.
///
/// # Uncertainty
/// The number's own: 3 % unless told otherwise (judgement; yarns are spun to a nominal number).
///
/// # Source
/// Handbook, sections 2.4 and 4.4.
pub static YARN: Instrument = Instrument {
    key: "yarn-number",
    name: "Yarn number",
    says: "Turns a yarn number of any system into grams in 1000 metres, and into the other systems.",
    unit: Unit::Gram,
    inputs: &INPUTS,
    steps: &["Take the number from the label, the maker’s sheet or the cone.", "Choose the system it is written in."],
    cautions: &["In tex and denier a bigger number is thicker; in Ne, Nm and tickets a bigger number is finer."],
    sources: &[&sources::UNITS, &sources::YARNS],
    formula,
};

static INPUTS: [Input; 4] = [
    Input::choice("system", "System", "Choose what the number is written in.", &SYSTEMS),
    Input::measured("number", "Number", "The number of one single yarn. For 80/2 type 80.", [Unit::Count; 3], [0.5, 5000.0]),
    Input::count("plies", "Plies", "How many single yarns are twisted together. For 80/2 type 2.", [1.0, 12.0]).usually(1.0),
    Input::measured(
        "spread",
        "How far off the number may be",
        "Leave it unless you know better.",
        [Unit::Percent; 3],
        [0.1, 30.0],
    )
    .usually(3.0),
];

fn formula(amounts: &[Option<f64>]) -> Result<Outcome, Fault> {
    let [Some(system), Some(number), Some(plies), Some(spread)] = *amounts else {
        return Err(Fault::WrongNumberOfReadings { needed: INPUTS.len(), given: amounts.len() });
    };
    let yarn = YarnSystem::at(system).yarn(&INPUTS[1].at(number, number * spread / 100.0)) * plies;
    let kilometre = Estimate::<Length>::exact_in(1000.0, Unit::Metre).unwrap_or_else(|_| Estimate::unknown());
    Ok(Outcome::of(&(&yarn * &kilometre), Unit::Gram)
        .ok_or(Fault::NotANumber(&INPUTS[1]))?
        .with("cotton", to_say!("Ne, cotton number"), &YarnSystem::Cotton.number(&yarn), Unit::Count)
        .with("metric", to_say!("Nm, metric number"), &YarnSystem::Metric.number(&yarn), Unit::Count)
        .with("denier", to_say!("Denier"), &YarnSystem::Denier.number(&yarn), Unit::Count)
        .with("ticket", to_say!("Metric ticket of sewing thread"), &metric_ticket(&yarn), Unit::Count))
}
