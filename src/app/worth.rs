//! Value for quality of the garments on the rack, worked out once for each state of them, and in words.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::cost::Rates;
use garment_assay::garment::{Appraisal, Garment, Id};
use garment_assay::language::one;
use garment_assay::rack::{WhyNoWorth, Worth, by_worth, worth};
use garment_assay::{say, to_say};

use crate::app::appraisals::Appraisals;

/// Where a garment stands in the order of value.
#[derive(PartialEq)]
pub struct Place {
    /// Place in the order, from 0.
    pub at: usize,
    about_the_same: bool,
    found: Result<Worth, WhyNoWorth>,
}

/// What is found of a garment is finite, so a place is equal to itself.
impl Eq for Place {}

impl Place {
    /// Why, as the rack says it: beside the one above.
    pub fn on_the_rack(&self) -> String {
        line(&self.found, self.about_the_same)
    }

    /// Why, where no other stands above it.
    pub fn alone(&self) -> String {
        line(&self.found, false)
    }
}

/// The place of each garment in the order of value.
pub type Places = BTreeMap<Id, Place>;

/// The garments, the rates, and the places that came of them.
type Known = (Vec<Rc<Garment>>, Rates, Rc<Places>);

thread_local! {
    /// The last ones: the rack is opened again and again with the same garments.
    static KNOWN: RefCell<Option<Known>> = const { RefCell::new(None) };
}

/// Every garment in its place. What was put away is set against nothing; it stands where it would if it were not.
pub fn places(garments: &[Rc<Garment>], rates: &Rates, appraisals: &Appraisals) -> Rc<Places> {
    let known = KNOWN.with_borrow(|known| {
        let (before, under, places) = known.as_ref()?;
        let same = before.len() == garments.len() && before.iter().zip(garments).all(|(one, other)| Rc::ptr_eq(one, other));
        (same && under == rates).then(|| places.clone())
    });
    known.unwrap_or_else(|| {
        let mut places = Places::new();
        let (away, here): (Vec<&Rc<Garment>>, Vec<&Rc<Garment>>) = garments.iter().partition(|garment| garment.archived());
        for garments in [here, away] {
            let known: Vec<Rc<Appraisal>> = garments.iter().map(|garment| appraisals.of(garment)).collect();
            let pairs: Vec<(&Garment, &Appraisal)> =
                garments.iter().map(|garment| garment.as_ref()).zip(known.iter().map(Rc::as_ref)).collect();
            let found = worth(&pairs, rates);
            for (at, placed) in by_worth(&found).into_iter().enumerate() {
                let place = Place { at, about_the_same: placed.about_the_same, found: found[placed.which] };
                places.insert(garments[placed.which].id().clone(), place);
            }
        }
        let places = Rc::new(places);
        KNOWN.set(Some((garments.to_vec(), rates.clone(), places.clone())));
        places
    })
}

/// What the order is, for people.
pub const MEANING: &str = to_say!(
    "Each garment is set against the others of its kind whose price is of the same sort and currency: tickets against \
    tickets, offers by what a piece of the smallest order costs once landed. It gains where it is likely the better made and costs no more, \
    and loses where another is likely the better made and costs no more than it. A dearer one that is better made neither gains nor loses: \
    what better making is worth to you is yours to say. “About the same” means less than 80 in 100 sure. Fewer than three others, or fewer \
    than three answers, and a garment stands at the end. That a pair counts only so, and these limits, are judgement."
);

/// Why it stands where it does, as the rack says it.
fn line(found: &Result<Worth, WhyNoWorth>, about_the_same: bool) -> String {
    match found {
        Ok(worth) if about_the_same => say!("About the same value as the one above: {counts}", counts = counts(worth)),
        Ok(worth) => say!("Value: {counts}", counts = counts(worth)),
        Err(why) => format!("{} {why}", say!("Not in the order of value.")),
    }
}

/// "better made for no more money than about 4 of 7 others; about 1 is so against it". Whole counts: the belief knows no finer.
pub fn counts(worth: &Worth) -> String {
    let (beats, beaten) = (worth.beats.round(), worth.beaten.round());
    let against = match beaten as usize {
        0 => say!("hardly any beats it so").to_owned(),
        count if one(count) => say!("about {count} beats it so", count),
        count => say!("about {count} beat it so", count),
    };
    let others = worth.others;
    let ahead = if beats == 0.0 {
        say!("better made for no more money than hardly any of {others} others of its kind", others)
    } else {
        say!("better made for no more money than about {count} of {others} others of its kind", count = beats, others)
    };
    format!("{ahead}; {against}.")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_are_whole_and_nothing_is_called_hardly_any() {
        let said = |beats, beaten| counts(&Worth { others: 7, beats, beaten, spread: 0.1 });
        assert_eq!(said(4.2, 0.6), "better made for no more money than about 4 of 7 others of its kind; about 1 beats it so.");
        assert_eq!(said(0.3, 2.9), "better made for no more money than hardly any of 7 others of its kind; about 3 beat it so.");
        assert_eq!(said(1.0, 0.0), "better made for no more money than about 1 of 7 others of its kind; hardly any beats it so.");
    }
}
