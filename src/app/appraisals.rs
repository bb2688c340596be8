//! Appraisals of the garments on the rack, worked out once for each state of a garment.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::garment::{Appraisal, Appraiser, Garment, Id};

/// A state of a garment, and what follows from it: about its make, and where it is second-hand about what is left in it.
type Known = (Rc<Garment>, Rc<Appraisal>, Option<Rc<Appraisal>>);

/// A handle to them; clones are the same one, and all are equal, since nothing shown depends on what is remembered.
#[derive(Clone, Default)]
pub struct Appraisals {
    appraiser: Rc<Appraiser>,
    known: Rc<RefCell<BTreeMap<Id, Known>>>,
}

impl PartialEq for Appraisals {
    fn eq(&self, other: &Appraisals) -> bool {
        Rc::ptr_eq(&self.known, &other.known)
    }
}

impl Appraisals {
    /// What follows from a garment's evidence about its make.
    pub fn of(&self, garment: &Rc<Garment>) -> Rc<Appraisal> {
        self.both(garment).0
    }

    /// What follows from it about what is left; none for a new garment.
    pub fn left(&self, garment: &Rc<Garment>) -> Option<Rc<Appraisal>> {
        self.both(garment).1
    }

    /// The one that a check speaks to.
    pub fn for_check(&self, garment: &Rc<Garment>, check: &Check) -> Rc<Appraisal> {
        let (made, left) = self.both(garment);
        left.filter(|left| left.is_spoken_to_by(check)).unwrap_or(made)
    }

    fn both(&self, garment: &Rc<Garment>) -> (Rc<Appraisal>, Option<Rc<Appraisal>>) {
        if let Some((known, made, left)) = self.known.borrow().get(garment.id())
            && Rc::ptr_eq(known, garment)
        {
            return (made.clone(), left.clone());
        }
        let made = Rc::new(self.appraiser.appraise(garment));
        let left = self.appraiser.left(garment).map(Rc::new);
        self.known.borrow_mut().insert(garment.id().clone(), (garment.clone(), made.clone(), left.clone()));
        (made, left)
    }

    /// Who appraises, to be taken along.
    pub fn shared_appraiser(&self) -> Rc<Appraiser> {
        self.appraiser.clone()
    }

    /// Who appraises.
    pub fn appraiser(&self) -> &Appraiser {
        &self.appraiser
    }
}
