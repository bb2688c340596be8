//! A check of wear with what may be done about each answer, and where one family looks for it.

use crate::check::Check;

/// A check of what is left in a second-hand piece of any family.
#[derive(Debug, PartialEq)]
pub struct Condition {
    /// The check. It speaks of what is left and of nothing else.
    pub check: Check,
    /// What may be done about it, for each answer, worst first; empty where nothing is to be done. Times are judgement, for somebody who
    /// can sew.
    pub(crate) mends: &'static [&'static str],
}

crate::language::says!(Condition { mends* });

/// A check of wear as one family puts it.
#[derive(Debug, PartialEq)]
pub struct Look {
    /// What is asked.
    pub condition: &'static Condition,
    /// Where to look on a piece of that family, as a list in words; empty where the check says it itself.
    pub(crate) at: &'static str,
}

crate::language::says!(Look { at });
