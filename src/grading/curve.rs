//! How likely each answer to a check is, given how well a garment is made.

use crate::trade::Aspect;

/// Checks that look at the same thing share an error of their own, so that five looks at loose thread do not count five times.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    /// Hand, density, evenness, recovery of the cloth.
    Cloth,
    /// How pieces are joined and edges finished.
    Seams,
    /// Evenness, density and ends of stitching.
    Stitching,
    /// Stress points.
    Strength,
    /// Closures, metal, pocketing, labels.
    Trims,
    /// Wash, fade, abrasion, pressing.
    Finish,
    /// Twist, pairs, balance.
    Shape,
}

impl Group {
    /// All groups.
    pub const ALL: [Group; 7] =
        [Group::Cloth, Group::Seams, Group::Stitching, Group::Strength, Group::Trims, Group::Finish, Group::Shape];

    /// The aspect of a garment that the group belongs to.
    pub const fn aspect(self) -> Aspect {
        match self {
            Group::Cloth => Aspect::Cloth,
            Group::Seams | Group::Stitching | Group::Strength => Aspect::Making,
            Group::Trims => Aspect::Trims,
            Group::Finish => Aspect::Finish,
            Group::Shape => Aspect::Shape,
        }
    }
}

/// The response curve of a check: how steeply its answers follow quality, and where one answer gives way to the next.
#[derive(Debug)]
pub struct Curve {
    /// The group whose shared error the check carries.
    pub group: Group,
    /// Slope of the logistic curves, above 0.
    pub slope: f64,
    /// Where the next better answer becomes the likelier one, rising; one fewer than there are answers.
    pub thresholds: &'static [f64],
}
