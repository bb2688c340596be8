//! What the tickets on the rack taught, worked out once for each state of the garments that teach.

use std::cell::RefCell;
use std::rc::Rc;

use garment_assay::cost::Rates;
use garment_assay::garment::{Garment, Id};
use garment_assay::rack::{Taught, leans_on};

use super::browser::turns::{self, Turns};

/// More tickets than these are learnt from in turns. Judgement: from 333 it took 165 ms on the page's own thread (2026-11), and a hand
/// should not wait longer than 50.
const MANY: usize = 50;

/// The garments that teach, and the rates.
#[derive(Clone)]
struct Basis {
    teachers: Vec<Rc<Garment>>,
    rates: Rates,
}

impl Basis {
    /// Whether it is the same: a garment that was changed is another one.
    fn is(&self, other: &Basis) -> bool {
        let (one, same_rates) = (&self.teachers, self.rates == other.rates);
        same_rates
            && one.len() == other.teachers.len()
            && one.iter().zip(&other.teachers).all(|(one, other)| Rc::ptr_eq(one, other))
    }
}

/// What was learnt, and from whom.
type Known = (Basis, Rc<Taught>);

/// What is being learnt, and whom to tell.
type UnderWay = (Basis, Box<dyn FnOnce()>);

/// A handle to the last one; clones are the same one, and all are equal, since nothing shown depends on what is remembered.
#[derive(Clone, Default)]
pub struct Pricing {
    known: Rc<RefCell<Option<Known>>>,
    under_way: Rc<RefCell<Option<UnderWay>>>,
}

impl PartialEq for Pricing {
    fn eq(&self, other: &Pricing) -> bool {
        Rc::ptr_eq(&self.known, &other.known)
    }
}

impl Pricing {
    /// What all garments but that one taught. An answer to a check of the one that is asked about changes nothing of it, so that two hundred
    /// references are not gone through again with each tap. Where many teach it is none at first, and `came` is called once it is there.
    pub fn taught(&self, garments: &[Rc<Garment>], rates: &Rates, but: &Id, came: impl FnOnce() + 'static) -> Option<Rc<Taught>> {
        let teachers = garments.iter().filter(|garment| leans_on(but, garment)).cloned().collect();
        let from = Basis { teachers, rates: rates.clone() };
        if let Some((known, taught)) = self.known.borrow().as_ref()
            && known.is(&from)
        {
            return Some(taught.clone());
        }
        if from.teachers.len() <= MANY {
            let taught = Rc::new(Taught::by(from.teachers.iter().map(Rc::as_ref), rates));
            self.known.replace(Some((from, taught.clone())));
            return Some(taught);
        }
        // Whoever asked last is told: another page of before may be gone.
        let before = self.under_way.replace(Some((from.clone(), Box::new(came))));
        if !before.is_some_and(|(before, _)| before.is(&from)) {
            let pricing = self.clone();
            turns::begin(|turns| pricing.learn(from, turns));
        }
        None
    }

    async fn learn(self, from: Basis, turns: Turns) {
        let teachers = from.teachers.iter().map(Rc::as_ref);
        let taught = Taught::by_in_turns(teachers, &from.rates, &async || turns.pause().await).await;
        // Something else may have been asked for meanwhile.
        let asked = self.under_way.borrow_mut().take_if(|(asked, _)| asked.is(&from));
        if let Some((from, came)) = asked {
            self.known.replace(Some((from, Rc::new(taught))));
            came();
        }
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
        let taught =
            |garments: &[Rc<Garment>], rates: &Rates, but: &Id| pricing.taught(garments, rates, but, || ()).expect("few");
        let (one, other) = (garment("one", 9_000), garment("other", 12_000));
        let first = taught(&[one.clone(), other.clone()], &rates, one.id());
        assert_eq!(first.ids(), [other.id().clone()]);
        let answered = Rc::new(one.after(Act::Answer(FAMILIES[0].checks[0], Answer::CannotTell)));
        assert!(Rc::ptr_eq(&first, &taught(&[answered.clone(), other.clone()], &rates, one.id())));
        let dearer = garment("other", 15_000);
        assert!(!Rc::ptr_eq(&first, &taught(&[answered.clone(), dearer.clone()], &rates, one.id())));
        let again = taught(&[answered.clone(), dearer.clone()], &rates, one.id());
        assert!(!Rc::ptr_eq(&again, &taught(&[answered, dearer], &rates.in_market(Market::Japan), one.id())));
    }
}
