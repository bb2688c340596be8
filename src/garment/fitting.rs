//! What a person noted in the fitting room: for whom it is, how it is meant to lie, how it will be washed, and what the mirror showed.
//! Facts only; tape readings stand on the tape sheet.

use std::collections::BTreeMap;

use crate::catalog::{FitTable, Move, Sign};
use crate::fit::{Allowance, Cure, Cut, LabelSystem, PersonId, Went};
use crate::measure::{ClothBeforeWash, Drying, Warmth};
use crate::quantity::{Amount, Unit};

/// The size on the label, as written there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LabelSize {
    system: LabelSystem,
    text: String,
}

impl LabelSize {
    /// Longest text kept, in characters; what is over is cut.
    pub const LONGEST: usize = 20;

    /// What stands on the label, counted in that way. None for an empty text.
    pub fn new(system: LabelSystem, text: &str) -> Option<LabelSize> {
        let cut: String = text.trim().chars().take(LabelSize::LONGEST).collect();
        // Once more: what was cut may end in a space, and what is read must be what was written.
        let text = cut.trim_end().to_owned();
        (!text.is_empty()).then_some(LabelSize { system, text })
    }

    /// How it is counted.
    pub fn system(&self) -> LabelSystem {
        self.system
    }

    /// What stands there.
    pub fn text(&self) -> &str {
        &self.text
    }
}

/// Cloth left inside with which a tailor can do something, in centimetres: one stays in the seam. Judgement.
const ENOUGH_CM: f64 = 1.5;

/// What was noted in the fitting room. Changed only by acts.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Fitting {
    who: Option<PersonId>,
    cut: Option<&'static Cut>,
    cloth: Option<&'static ClothBeforeWash>,
    wash: Option<(Warmth, Drying)>,
    label: Option<LabelSize>,
    allowances: BTreeMap<&'static str, Amount>,
    moves: BTreeMap<&'static str, Went>,
    signs: BTreeMap<&'static str, bool>,
}

/// One thing noted in the fitting room. `None` takes it away.
#[derive(Clone, Debug, PartialEq)]
pub enum FitAct {
    /// For whom it is.
    Who(Option<PersonId>),
    /// How it is meant to lie.
    Cut(Option<&'static Cut>),
    /// What its cloth is before the first wash at home.
    Cloth(Option<&'static ClothBeforeWash>),
    /// How it will be washed and dried.
    Wash(Option<(Warmth, Drying)>),
    /// What the label says.
    Label(Option<LabelSize>),
    /// How much cloth was left inside.
    Allowance(&'static Allowance, Option<Amount>),
    /// How a move went.
    Move(&'static Move, Option<Went>),
    /// Whether a sign was seen.
    Sign(&'static Sign, Option<bool>),
    /// Which signs were looked for, by their keys, and whether each was seen: all at once, in place of what was noted before.
    Signs(BTreeMap<&'static str, bool>),
}

impl Fitting {
    /// For whom it is.
    pub fn who(&self) -> Option<&PersonId> {
        self.who.as_ref()
    }

    /// How it is meant to lie, where the person said so.
    pub fn cut(&self) -> Option<&'static Cut> {
        self.cut
    }

    /// What its cloth is before the first wash at home, where the person said so.
    pub fn cloth(&self) -> Option<&'static ClothBeforeWash> {
        self.cloth
    }

    /// How it will be washed and dried, where the person said so.
    pub fn wash(&self) -> Option<(Warmth, Drying)> {
        self.wash
    }

    /// What the label says.
    pub fn label(&self) -> Option<&LabelSize> {
        self.label.as_ref()
    }

    /// How much cloth was left inside at a place.
    pub fn allowance(&self, allowance: &Allowance) -> Option<Amount> {
        self.allowances.get(allowance.key).copied()
    }

    /// How a move went.
    pub fn went(&self, one: &Move) -> Option<Went> {
        self.moves.get(one.key).copied()
    }

    /// Whether a sign was looked for, and seen.
    pub fn seen(&self, sign: &Sign) -> Option<bool> {
        self.signs.get(sign.key).copied()
    }

    /// Whether a fault can be mended on this garment: what a tailor may do where cloth was left becomes everyday work or nothing at all
    /// once somebody has looked inside.
    pub fn cure(&self, cure: Cure, needs: Option<&Allowance>) -> Cure {
        let found = needs.and_then(|allowance| self.allowance(allowance)?.in_unit(Unit::Centimetre));
        match (cure, found) {
            (Cure::Some, Some(found)) if found >= ENOUGH_CM => Cure::Easy,
            (Cure::Some, Some(_)) => Cure::None,
            (cure, _) => cure,
        }
    }

    /// What was looked for, with every other sign of the table noted as not there.
    pub fn no_other_sign(&self, table: &FitTable) -> FitAct {
        FitAct::Signs(table.signs.iter().map(|sign| (sign.key, self.seen(sign).unwrap_or(false))).collect())
    }

    /// Whether an act is about something of this table, and holds what can be kept.
    pub(super) fn takes(table: &FitTable, act: &FitAct) -> bool {
        match act {
            FitAct::Who(_) | FitAct::Wash(_) => true,
            FitAct::Label(label) => label.as_ref().is_none_or(|label| table.labels.contains(&label.system)),
            FitAct::Cut(cut) => cut.is_none_or(|cut| table.cuts.contains(&cut)),
            FitAct::Cloth(cloth) => cloth.is_none_or(|cloth| table.cloths.contains(&cloth)),
            FitAct::Allowance(allowance, amount) => {
                let believed = |amount: &Amount| {
                    amount.in_unit(Unit::Centimetre).is_some_and(|found| (0.0..=allowance.most_cm).contains(&found))
                };
                table.allowances.contains(allowance) && amount.as_ref().is_none_or(believed)
            }
            FitAct::Move(one, _) => table.moves.contains(one),
            FitAct::Sign(sign, _) => table.signs.contains(sign),
            FitAct::Signs(signs) => signs.keys().all(|key| table.signs.iter().any(|sign| sign.key == *key)),
        }
    }

    /// After an act that [`Fitting::takes`].
    pub(super) fn after(mut self, act: FitAct) -> Fitting {
        fn put<T>(map: &mut BTreeMap<&'static str, T>, key: &'static str, value: Option<T>) {
            match value {
                Some(value) => drop(map.insert(key, value)),
                None => drop(map.remove(key)),
            }
        }
        match act {
            FitAct::Who(who) => self.who = who,
            FitAct::Cut(cut) => self.cut = cut,
            FitAct::Cloth(cloth) => self.cloth = cloth,
            FitAct::Wash(wash) => self.wash = wash,
            FitAct::Label(label) => self.label = label,
            FitAct::Allowance(allowance, amount) => put(&mut self.allowances, allowance.key, amount),
            FitAct::Move(one, went) => put(&mut self.moves, one.key, went),
            FitAct::Sign(sign, seen) => put(&mut self.signs, sign.key, seen),
            FitAct::Signs(signs) => self.signs = signs,
        }
        self
    }

    /// The act that puts back what `act` would change.
    pub(super) fn undoing(&self, act: &FitAct) -> FitAct {
        match act {
            FitAct::Who(_) => FitAct::Who(self.who.clone()),
            FitAct::Cut(_) => FitAct::Cut(self.cut),
            FitAct::Cloth(_) => FitAct::Cloth(self.cloth),
            FitAct::Wash(_) => FitAct::Wash(self.wash),
            FitAct::Label(_) => FitAct::Label(self.label.clone()),
            FitAct::Allowance(allowance, _) => FitAct::Allowance(allowance, self.allowance(allowance)),
            FitAct::Move(one, _) => FitAct::Move(one, self.went(one)),
            FitAct::Sign(sign, _) => FitAct::Sign(sign, self.seen(sign)),
            FitAct::Signs(_) => FitAct::Signs(self.signs.clone()),
        }
    }
}
