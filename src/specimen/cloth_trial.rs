//! What cloth does when it is pulled, let go or rubbed.

/// Ten centimetres of cloth at rest and pulled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Give {
    /// How far it gives over 10 cm, in cm, 0 to 5.
    pub give_cm: f64,
}

/// Ten centimetres of cloth after it was pulled and let go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Growth {
    /// How much longer it stays, in percent, 0 to 10.
    pub percent: f64,
}

/// A white tissue after rubbing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RubOff {
    /// Colour on the tissue, 0 (none) to 1 (strong).
    pub strength: f64,
}
