//! Long seams and edges: how two pieces are joined and what keeps the edge from fraying.

/// A long seam: its section above, its inside below.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct JoinedSeam {
    /// How the pieces are joined.
    pub join: Join,
}

/// How two pieces of cloth are joined.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Join {
    /// One overlock row holds everything.
    Overlock,
    /// An overlock row and a separate line of stitching beside it.
    OverlockAndRow,
    /// An overlock edge laid to one side and topstitched twice: a felled seam from outside only.
    MockFelled,
    /// Edges locked into each other and sewn twice.
    Felled,
    /// Felled, but the fold runs off and a raw edge shows.
    FelledRunOff,
    /// Edges wrapped in tape.
    Bound,
}

/// The outer leg seam pressed open, from inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OutseamEdge {
    /// What the edge of the allowance is.
    pub edge: Edge,
    /// Whether it is so along the whole leg; if not, only in the turn-up and overlocked above.
    pub whole_leg: bool,
}

/// The edge of a seam allowance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edge {
    /// Cut and left; yarns come out.
    Raw,
    /// Three-thread overlock, wide apart.
    LooseOverlock,
    /// Five-thread overlock, dense.
    DenseOverlock,
    /// The cloth's own woven edge.
    SelfEdge,
    /// A tape sewn on that looks like a self-edge.
    SewnTape,
    /// Wrapped in tape.
    Bound,
}

/// The bottom of a pocket bag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BagSeam {
    /// How the bag is closed.
    pub closing: BagClosing,
}

/// How a pocket bag is closed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BagClosing {
    /// One overlock row.
    Overlock,
    /// Overlock and a line of stitching inside it.
    SafetyRow,
    /// Turned and sewn again, edges shut in.
    Turned,
    /// Wrapped in tape.
    Bound,
}

/// The hem of a leg.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hem {
    /// How it is sewn.
    pub stitch: HemStitch,
    /// Diagonal ridges that washing brings out, 0 (none) to 1 (strong).
    pub roping: f64,
}

/// How a hem is sewn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HemStitch {
    /// A line on both faces.
    Lock,
    /// A line on the face, a rope of loops behind.
    Chain,
}
