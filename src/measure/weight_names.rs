//! What a cloth mass is called: light, middle or heavy. No scale is universal, so which one is meant has to be said.

use super::Choice;
use crate::to_say;

/// A scale that names the mass of denim. The borders are in ounces in a square yard.
///
/// # Source
/// Handbook, section 4.2: trade pages seen for the first two; "some textbooks" for the third, which leaves out what lies between 10 and 11.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WeightScale {
    /// People who collect jeans: below 12 light, above 16 heavy.
    Enthusiast,
    /// Factories: below 10 light, 10 to 13 middle, from 14 heavy.
    Factory,
    /// Some textbooks: up to 7 light, 7 to 10 middle, from 11 heavy.
    Textbook,
}

/// The scales as a choice, in the order of [`WeightScale::ALL`].
pub(super) static SCALES: [Choice; 3] = [
    Choice::new("enthusiast", "People who collect jeans", "Below 12 oz is light, above 16 oz is heavy."),
    Choice::new("factory", "Jeans factories", "Below 10 oz is light, 14 oz and more is heavy."),
    Choice::new("textbook", "Some textbooks", "Up to 7 oz is light, 11 oz and more is heavy."),
];

/// How heavy, in words; the order is light first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum WeightName {
    /// Light on its scale.
    Light,
    /// Between light and heavy.
    Middle,
    /// Heavy on its scale.
    Heavy,
}

impl WeightScale {
    /// All scales.
    pub const ALL: [WeightScale; 3] = [WeightScale::Enthusiast, WeightScale::Factory, WeightScale::Textbook];

    /// Light ends here, middle ends here, heavy begins here: ounces in a square yard. Where the last two differ the scale leaves a gap,
    /// and a mass in the gap may be called either. A mass on a border bears both names.
    pub const fn borders(self) -> [f64; 3] {
        match self {
            WeightScale::Enthusiast => [12.0, 16.0, 16.0],
            WeightScale::Factory => [10.0, 13.0, 14.0],
            WeightScale::Textbook => [7.0, 10.0, 11.0],
        }
    }

    /// The lightest and the heaviest name that a mass within two spreads of `ounces` may bear; none when it is not known.
    pub fn names(self, ounces: f64, spread: f64) -> Option<(WeightName, WeightName)> {
        if !(ounces.is_finite() && spread.is_finite() && spread >= 0.0) {
            return None;
        }
        let [light_to, middle_to, heavy_from] = self.borders();
        let (low, high) = (ounces - 2.0 * spread, ounces + 2.0 * spread);
        let lightest = if low <= light_to {
            WeightName::Light
        } else if low <= middle_to || low < heavy_from {
            WeightName::Middle
        } else {
            WeightName::Heavy
        };
        let heaviest = if high >= heavy_from || high > middle_to {
            WeightName::Heavy
        } else if high >= light_to {
            WeightName::Middle
        } else {
            WeightName::Light
        };
        Some((lightest, heaviest))
    }

    /// The names as a sentence, to be said by whoever shows it.
    pub fn sentence(self, ounces: f64, spread: f64) -> Option<&'static str> {
        use WeightName::{Heavy, Light, Middle};
        Some(match self.names(ounces, spread)? {
            (Light, Light) => to_say!("Light, on this scale."),
            (Light, Middle) => to_say!("Light or middle, on this scale: the spread reaches both."),
            (Light, Heavy) => to_say!("The spread is too wide to call it light, middle or heavy."),
            (Middle, Middle) => to_say!("Middle, on this scale."),
            (Middle, Heavy) => to_say!("Middle or heavy, on this scale: the spread reaches both."),
            _ => to_say!("Heavy, on this scale."),
        })
    }

    /// The scale at that place of the choice; the first where there is none.
    pub(super) fn at(place: f64) -> WeightScale {
        WeightScale::ALL
            .into_iter()
            .zip(0_u8..)
            .find(|(_, at)| f64::from(*at) == place)
            .map_or(WeightScale::Enthusiast, |(s, _)| s)
    }
}
