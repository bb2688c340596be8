//! What a family is, and the list of them.

use crate::check::Check;
use crate::cost::Bill;
use crate::lot::Defect;
use crate::measure::PointOfMeasure;
use crate::specimen::Picture;

use super::fit_table::FitTable;
use super::second_hand::Look;
use super::{dress_skirt, jeans, outerwear, sweater, t_shirt, tailored_jacket, woven_shirt};

/// A kind of garment with its own checks.
#[derive(Debug, PartialEq)]
pub struct Family {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// The word on the screen.
    pub name: &'static str,
    /// A name that somebody might give to a piece of it, as a hint in the empty field.
    pub example: &'static str,
    /// A piece of it laid flat, beside the word.
    pub drawn: Picture,
    /// One sentence on what belongs to it.
    pub covers: &'static str,
    /// Its checks, in the order in which the list shows them.
    pub checks: &'static [&'static Check],
    /// Where it is measured with a tape, in the order in which the sheet shows them.
    pub points: &'static [PointOfMeasure],
    /// The same by their keys and in their order, and where the tape lies there, drawn.
    pub drawn_points: &'static [(&'static str, Picture)],
    /// What goes into a piece, and what that costs; none while nobody has written it.
    pub bill: Option<&'static Bill>,
    /// What a piece of it is looked over for besides [`defects::ANY`](super::defects::ANY), gravest first.
    pub defects: &'static [Defect],
    /// How its fit is judged; none while nobody has written it.
    pub fit: Option<&'static FitTable>,
    /// What is asked of a second-hand piece, in the order in which the list shows it, and where to look on a piece of this family. What
    /// it has not, a zip or a lining, is left out.
    pub second_hand: &'static [Look],
    /// Cautions that hold for the family as a whole.
    pub cautions: &'static [&'static str],
}

crate::language::says!(Family { name, example, covers, cautions* });

/// Every family.
pub static FAMILIES: [&Family; 7] = [
    &jeans::JEANS,
    &woven_shirt::WOVEN_SHIRT,
    &t_shirt::T_SHIRT,
    &sweater::SWEATER,
    &dress_skirt::DRESS_SKIRT,
    &tailored_jacket::TAILORED_JACKET,
    &outerwear::OUTERWEAR,
];
