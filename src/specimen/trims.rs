//! What holds and closes: tacks, rivets, buttons, buttonholes, flies, labels.

/// One bar tack, close.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BarTack {
    /// Whether it is there and how good it is.
    pub state: TackState,
}

/// State of a bar tack.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TackState {
    /// None where one is needed.
    Absent,
    /// A few loose stitches.
    Loose,
    /// Dense.
    Dense,
    /// A rivet does its work.
    Riveted,
}

/// Ten stress points on the front.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StressPoints {
    /// How many of the ten have a dense tack or rivet, 0 to 10.
    pub secured: u8,
}

/// A shank button in section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Button {
    /// Thickness of the cap in mm, 0.5 (thin) to 4.
    pub cap_mm: f64,
    /// Whether plies or a washer back it.
    pub backed: bool,
    /// Whether it rocks.
    pub loose: bool,
}

/// A rivet in section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rivet {
    /// Thickness of the head in mm, 0.3 (thin) to 3.
    pub head_mm: f64,
    /// Whether a burr backs it.
    pub backed: bool,
    /// Whether it turns or lifts.
    pub loose: bool,
}

/// The waist buttonhole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Buttonhole {
    /// Stitches per cm along the edge, 4 to 24.
    pub stitches_per_cm: f64,
    /// Loose yarns in the cut, 0 (clean) to 1 (ragged).
    pub ragged: f64,
    /// Whether it has a round eye.
    pub keyhole: bool,
    /// Whether a bar closes its tail.
    pub bar: bool,
}

/// The fly.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fly {
    /// A zip that catches its tape or cloth.
    ZipCatches,
    /// A light zip with fine teeth.
    ZipLight,
    /// A zip that runs well.
    ZipSound,
    /// A heavy zip with a locking slider, its tape sewn twice.
    ZipHeavy,
    /// Buttons.
    Buttons,
}

/// A sewn-in label; its lines are neutral strokes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Label {
    /// Lines of print, 0 to 6; none means the label is missing.
    pub lines: u8,
    /// Whether it carries care symbols.
    pub symbols: bool,
    /// Whether it is woven and sewn on all sides rather than printed and caught at one edge.
    pub woven: bool,
}
