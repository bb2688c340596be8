//! Appraisals of the garments on the rack, worked out once for each state of a garment.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::garment::{Appraisal, Appraiser, Garment, Id};

/// A state of a garment, and what follows from it.
type Known = (Rc<Garment>, Rc<Appraisal>);

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
    /// What follows from a garment's evidence.
    pub fn of(&self, garment: &Rc<Garment>) -> Rc<Appraisal> {
        if let Some((known, appraisal)) = self.known.borrow().get(garment.id())
            && Rc::ptr_eq(known, garment)
        {
            return appraisal.clone();
        }
        let appraisal = Rc::new(self.appraiser.appraise(garment));
        self.known.borrow_mut().insert(garment.id().clone(), (garment.clone(), appraisal.clone()));
        appraisal
    }

    /// Who appraises.
    pub fn appraiser(&self) -> &Appraiser {
        &self.appraiser
    }
}
