//! The cloth itself: how densely it is woven, how thick it folds, what is wrong with its face.

/// Cloth so close that its yarns can be counted; the frame shows 4.8 mm by 3.2 mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weave {
    /// Warp yarns per cm, 5 to 40.
    pub ends_per_cm: f64,
    /// Weft yarns per cm, 5 to 30.
    pub picks_per_cm: f64,
    /// Thickness of a yarn as a share of the room it has, 0.3 (open) to 1 (crowded).
    pub cover: f64,
    /// Spread of yarn thickness, 0 to 0.5.
    pub unevenness: f64,
}

/// The face of the cloth at arm's length.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClothFace {
    /// What is on it.
    pub flaw: ClothFlaw,
    /// How many of it, 0 to 12.
    pub count: u8,
}

/// What may be seen on the face of cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ClothFlaw {
    /// Nothing: even.
    None,
    /// Thick places in the yarn, evenly strewn by design.
    Slub,
    /// Broken yarns that leave holes.
    Hole,
    /// Light lines along the warp.
    Streak,
    /// Clouds of lighter and darker colour.
    Patch,
}

/// A fold of the cloth in section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fold {
    /// Mass of the cloth in ounces per square yard, 4 to 24.
    pub ounces: f64,
    /// How far the fold stands open by itself, 0 (limp, lies flat) to 1 (springs back).
    pub spring: f64,
}

/// Pocket cloth held before a hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PocketCloth {
    /// How much shows through, 0 (nothing) to 1 (sheer).
    pub sheer: f64,
    /// Whether it is a twill.
    pub twill: bool,
    /// Yarns per cm, 6 to 40: drawn enlarged.
    pub yarns_per_cm: f64,
}
