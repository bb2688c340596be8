//! Where a body is measured, and how.

use crate::quantity::{Estimate, Length, Unit};

/// A place where the tape goes on a body; names its drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BodyPlace {
    /// Crown to floor.
    Height,
    /// Round the neck.
    Neck,
    /// From shoulder point to shoulder point across the back.
    Shoulders,
    /// Round the chest under the armpits.
    Chest,
    /// Round the fullest bust.
    Bust,
    /// Round the waist.
    Waist,
    /// Round the body where a waistband sits.
    Band,
    /// Round the fullest seat.
    Hip,
    /// Round the upper leg.
    Thigh,
    /// Crotch to floor.
    InsideLeg,
    /// Shoulder point over the bent elbow to the wrist.
    Arm,
    /// Nape to waist.
    Back,
    /// Round the upper arm.
    UpperArm,
}

/// A measure of a body.
///
/// # Source
/// The girth at the band is ours. The others: what is measured is as ISO 8559-1:2017 and EN 13402-1 define it, in words of
/// ours. The standards were not at hand: from memory, but for chest, bust, neck and waist, which were read in pages that repeat them.
#[derive(Debug, PartialEq)]
pub struct BodyMeasure {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// The trade's name.
    pub(crate) name: &'static str,
    /// Where the tape goes and how one stands.
    pub(crate) how: &'static str,
    /// Names its drawing.
    pub place: BodyPlace,
    /// Least and most that is taken for a slip of the fingers, in centimetres. Judgement, from a small child to a very large adult.
    pub believed_cm: [f64; 2],
    /// How far one reading of it lies from the next (1 sigma), in centimetres: breath, posture, and where the tape lies. Judgement; nobody
    /// measured it.
    pub spread_cm: f64,
}

crate::language::says!(BodyMeasure { name, how });

impl BodyMeasure {
    /// The measure as an estimate, from a reading in centimetres: off by [`BodyMeasure::spread_cm`]. None for what is not believed.
    pub fn estimate(&self, centimetres: f64) -> Option<Estimate<Length>> {
        let [least, most] = self.believed_cm;
        if !(least..=most).contains(&centimetres) {
            return None;
        }
        Estimate::measured_in(self.key, centimetres, self.spread_cm, Unit::Centimetre).ok()
    }
}

const fn measure(
    key: &'static str,
    name: &'static str,
    how: &'static str,
    place: BodyPlace,
    believed_cm: [f64; 2],
    spread_cm: f64,
) -> BodyMeasure {
    BodyMeasure { key, name, how, place, believed_cm, spread_cm }
}

/// Height.
pub static HEIGHT: BodyMeasure = measure(
    "height",
    "Height",
    "Barefoot, back to a wall, looking straight ahead. From the floor to the top of the head.",
    BodyPlace::Height,
    [80.0, 230.0],
    0.7,
);

/// Neck girth.
pub static NECK: BodyMeasure = measure(
    "neck",
    "Neck girth",
    "Round the neck just above the collar bone, the tape passing below the larynx.",
    BodyPlace::Neck,
    [20.0, 65.0],
    0.6,
);

/// Shoulder width.
pub static SHOULDERS: BodyMeasure = measure(
    "shoulders",
    "Shoulder width",
    "Across the back, from the bone at the end of one shoulder to the other, over the base of the neck.",
    BodyPlace::Shoulders,
    [20.0, 70.0],
    1.0,
);

/// Chest girth.
pub static CHEST: BodyMeasure = measure(
    "chest",
    "Chest girth",
    "Level round the body under the armpits and over the shoulder blades. Arms down, breathing as always.",
    BodyPlace::Chest,
    [45.0, 190.0],
    1.2,
);

/// Bust girth.
pub static BUST: BodyMeasure = measure(
    "bust",
    "Bust girth",
    "Level round the body at the fullest part of the bust, over what is worn under the garment.",
    BodyPlace::Bust,
    [45.0, 190.0],
    1.2,
);

/// Waist girth.
pub static WAIST: BodyMeasure = measure(
    "waist",
    "Waist girth",
    "Level round the body, midway between the lowest rib and the top of the hip bone. Stand upright, without drawing in.",
    BodyPlace::Waist,
    [40.0, 200.0],
    1.2,
);

/// Where a waistband sits: lower than the waist on most trousers, and another girth.
pub static BAND: BodyMeasure = measure(
    "band",
    "Girth at the band",
    "Round the body where the band of trousers or a skirt sits when you wear it, which is mostly below the waist.",
    BodyPlace::Band,
    [40.0, 200.0],
    1.2,
);

/// Hip girth.
pub static HIP: BodyMeasure =
    measure("hip", "Hip girth", "Level round the fullest part of the seat, feet together.", BodyPlace::Hip, [45.0, 200.0], 1.0);

/// Thigh girth.
pub static THIGH: BodyMeasure = measure(
    "thigh",
    "Thigh girth",
    "Level round the upper leg, just below the fold of the seat, standing on both feet.",
    BodyPlace::Thigh,
    [25.0, 110.0],
    0.8,
);

/// Inside leg.
pub static INSIDE_LEG: BodyMeasure = measure(
    "inside-leg",
    "Inside leg",
    "Barefoot, from the crotch straight down to the floor. A book held level as a seat helps.",
    BodyPlace::InsideLeg,
    [30.0, 110.0],
    1.0,
);

/// Arm length.
pub static ARM: BodyMeasure = measure(
    "arm",
    "Arm length",
    "Elbow a little bent, hand on the hip. From the bone at the end of the shoulder over the elbow to the wrist bone.",
    BodyPlace::Arm,
    [25.0, 85.0],
    0.8,
);

/// Upper arm girth.
pub static UPPER_ARM: BodyMeasure = measure(
    "upper-arm",
    "Upper arm girth",
    "Round the fullest part of the upper arm, the arm hanging.",
    BodyPlace::UpperArm,
    [12.0, 75.0],
    0.6,
);

/// Back length.
pub static BACK: BodyMeasure = measure(
    "back",
    "Back length",
    "From the bone at the base of the neck down the spine to the waist.",
    BodyPlace::Back,
    [20.0, 65.0],
    0.8,
);

/// Every body measure that a fit table may lean on, top to bottom. What a family needs of them stands in its table.
pub static BODY_MEASURES: [&BodyMeasure; 13] =
    [&HEIGHT, &NECK, &SHOULDERS, &CHEST, &BUST, &WAIST, &BAND, &HIP, &THIGH, &INSIDE_LEG, &ARM, &UPPER_ARM, &BACK];

/// The body measure of that key.
pub fn body_measure(key: &str) -> Option<&'static BodyMeasure> {
    BODY_MEASURES.into_iter().find(|measure| measure.key == key)
}
