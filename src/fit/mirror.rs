//! What the mirror shows while a person moves.

/// How a move went.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Went {
    /// Nothing pulled.
    Freely,
    /// It pulled, but the move could be made.
    Pulled,
    /// It held back, rode up or gaped as the move says.
    Failed,
}

impl Went {
    /// All of them, best first.
    pub const ALL: [Went; 3] = [Went::Freely, Went::Pulled, Went::Failed];

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Went::Freely => "freely",
            Went::Pulled => "pulled",
            Went::Failed => "failed",
        }
    }

    /// The one of that key.
    pub fn from_key(key: &str) -> Option<Went> {
        Went::ALL.into_iter().find(|went| went.key() == key)
    }
}

impl Went {
    /// What part of a fault it is: none, half of one, or one. Judgement.
    pub const fn part(self) -> f64 {
        match self {
            Went::Freely => 0.0,
            Went::Pulled => 0.4,
            Went::Failed => 1.0,
        }
    }
}
