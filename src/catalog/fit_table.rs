//! What a family's fit is judged by: its cuts, the places compared, how its cloth washes, moves to make and lines to look for.

use crate::check::Check;
use crate::fit::{Allowance, Cure, Cut, LabelSystem, Line};
use crate::measure::ClothBeforeWash;
use crate::source::Source;
use crate::specimen::Picture;

/// How a family is fitted.
#[derive(Debug, PartialEq)]
pub struct FitTable {
    /// Its cuts, the commonest first: that one is taken until the person says otherwise.
    pub cuts: &'static [&'static Cut],
    /// Where garment and body are compared, in the order of the sheet.
    pub lines: &'static [&'static Line],
    /// What its cloth may be before the first wash at home, the commonest first.
    pub cloths: &'static [&'static ClothBeforeWash],
    /// The check that says how far the cloth gives, if the family has one.
    pub give: Option<&'static Check>,
    /// Give of cloth that nobody pulled, in per cent, and how far off that may be (1 sigma).
    pub usual_give: (f64, f64),
    /// The check that says how much longer the cloth stays after a pull, if the family has one.
    pub growth: Option<&'static Check>,
    /// Where cloth may be left inside.
    pub allowances: &'static [&'static Allowance],
    /// Moves to make in front of the mirror.
    pub moves: &'static [&'static Move],
    /// Lines and gapes to look for while standing.
    pub signs: &'static [&'static Sign],
    /// How its labels count, the commonest first.
    pub labels: &'static [LabelSystem],
}

/// A move to make in front of the mirror.
#[derive(Debug, PartialEq)]
pub struct Move {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// What to do, in two or three words.
    pub(crate) name: &'static str,
    /// What to do, and what to watch.
    pub(crate) how: &'static str,
    /// What each of [`Went::ALL`](crate::fit::Went::ALL) looks like here.
    pub(crate) looks: [&'static str; 3],
    /// What a failure comes from.
    pub(crate) cause: &'static str,
    /// Whether that can be mended.
    pub cure: Cure,
    /// Where cloth must have been left for that, among [`FitTable::allowances`]; none where no cloth is needed.
    pub needs: Option<&'static Allowance>,
    /// Points of measure of the [`FitTable::lines`] that it tries: where it went freely, the garment is hardly too tight there today.
    pub tries: &'static [&'static str],
    /// How likely it is a misfit where it failed. Judgement.
    pub weight: f64,
    /// What must be said before.
    pub(crate) caution: Option<&'static str>,
    /// The move, drawn.
    pub drawn: Option<Picture>,
    /// Where it comes from.
    pub source: &'static Source,
}

crate::language::says!(Move { name, how, looks*, cause, caution? });

/// Lines or gapes that show a misfit while standing still.
#[derive(Debug, PartialEq)]
pub struct Sign {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// What is seen, in a few words.
    pub(crate) name: &'static str,
    /// Where it is, and where the lines point.
    pub(crate) looks: &'static str,
    /// What causes it.
    pub(crate) cause: &'static str,
    /// Whether it can be mended.
    pub cure: Cure,
    /// Where cloth must have been left for that, among [`FitTable::allowances`]; none where no cloth is needed.
    pub needs: Option<&'static Allowance>,
    /// What a tailor does about it and about what that involves, or what to try instead.
    pub(crate) mend: &'static str,
    /// How likely it is a misfit where it was seen. Judgement: some lines are only the way a cut falls.
    pub weight: f64,
    /// The lines, drawn.
    pub drawn: Option<Picture>,
    /// Where it comes from.
    pub source: &'static Source,
}

crate::language::says!(Sign { name, looks, cause, mend });
