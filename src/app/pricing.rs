//! What the tickets on the rack taught, worked out once for each state of the garments that teach.

use std::cell::RefCell;
use std::rc::Rc;

use garment_assay::cost::Rates;
use garment_assay::garment::{Garment, Id};
use garment_assay::rack::{Taught, leans_on};

/// The garments that taught, the rates, and what came of them.
type Known = (Vec<Rc<Garment>>, Rates, Rc<Taught>);

/// A handle to the last one; clones are the same one, and all are equal, since nothing shown depends on what is remembered.
#[derive(Clone, Default)]
pub struct Pricing {
    known: Rc<RefCell<Option<Known>>>,
}

impl PartialEq for Pricing {
    fn eq(&self, other: &Pricing) -> bool {
        Rc::ptr_eq(&self.known, &other.known)
    }
}

impl Pricing {
    /// What all garments but that one taught. An answer to a check of the one that is asked about changes nothing of it, so that two hundred
    /// references are not gone through again with each tap.
    pub fn taught(&self, garments: &[Rc<Garment>], rates: &Rates, but: &Id) -> Rc<Taught> {
        let teachers: Vec<Rc<Garment>> = garments.iter().filter(|garment| leans_on(but, garment)).cloned().collect();
        if let Some((known, under, taught)) = self.known.borrow().as_ref() {
            let same = known.len() == teachers.len() && known.iter().zip(&teachers).all(|(one, other)| Rc::ptr_eq(one, other));
            if same && under == rates {
                return taught.clone();
            }
        }
        let taught = Rc::new(Taught::by(teachers.iter().map(Rc::as_ref), rates));
        *self.known.borrow_mut() = Some((teachers, rates.clone(), taught.clone()));
        taught
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::catalog::FAMILIES;
    use garment_assay::cost::Market;
    use garment_assay::garment::{Act, Answer};
    use garment_assay::trade::{Currency, Day, PriceKind, Ticket};

    fn garment(name: &str, minor: u64) -> Rc<Garment> {
        let ticket = Ticket { minor, currency: Currency::Usd, kind: PriceKind::Retail, face_down: false };
        let bare = Garment::new(Id::new(name).expect("a name"), FAMILIES[0], Day::new(2026, 11, 25).expect("a day"));
        Rc::new(bare.after(Act::Ticket(Some(ticket))))
    }

    #[test]
    fn what_was_taught_is_kept_while_answers_come_in_and_made_anew_when_a_ticket_changes() {
        let (pricing, rates) = (Pricing::default(), Rates::of(Market::UnitedStates));
        let (one, other) = (garment("one", 9_000), garment("other", 12_000));
        let first = pricing.taught(&[one.clone(), other.clone()], &rates, one.id());
        assert_eq!(first.ids(), [other.id().clone()]);
        let answered = Rc::new(one.after(Act::Answer(FAMILIES[0].checks[0], Answer::CannotTell)));
        assert!(Rc::ptr_eq(&first, &pricing.taught(&[answered.clone(), other.clone()], &rates, one.id())));
        let dearer = garment("other", 15_000);
        assert!(!Rc::ptr_eq(&first, &pricing.taught(&[answered.clone(), dearer.clone()], &rates, one.id())));
        let again = pricing.taught(&[answered.clone(), dearer.clone()], &rates, one.id());
        assert!(!Rc::ptr_eq(&again, &pricing.taught(&[answered, dearer], &rates.in_market(Market::Japan), one.id())));
    }
}
