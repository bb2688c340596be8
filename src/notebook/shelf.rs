//! Where pages lie: a small trait over text by key, with a form in memory and one that fails on purpose. The browser's form is the app's.

use crate::say;
use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::fmt;
use std::rc::Rc;

/// What can go wrong with a shelf.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShelfFault {
    /// The browser refuses storage altogether (private window, blocked by settings).
    Forbidden,
    /// No room is left.
    Full,
    /// Anything else the browser reports.
    Broken,
}

impl fmt::Display for ShelfFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            ShelfFault::Forbidden => {
                say!("This browser does not let the app keep anything. Allow site data for this page, or export before you close it.")
            }
            ShelfFault::Full => say!("There is no room left to keep this. Export your rack, then delete garments you no longer need."),
            ShelfFault::Broken => say!("The browser could not keep this. Export your rack now, then load the page again."),
        })
    }
}

/// Text by key. A `set` that returns an error has left the old text as it was.
pub trait Shelf {
    /// The text under a key.
    ///
    /// # Errors
    /// When the shelf cannot be read.
    fn get(&self, key: &str) -> Result<Option<String>, ShelfFault>;
    /// Puts text under a key.
    ///
    /// # Errors
    /// When the text was not kept; what stood there before still does.
    fn set(&self, key: &str, text: &str) -> Result<(), ShelfFault>;
    /// Takes a key away; a key that is not there is no error.
    ///
    /// # Errors
    /// When the shelf cannot be written.
    fn remove(&self, key: &str) -> Result<(), ShelfFault>;
    /// All keys, in no particular order.
    ///
    /// # Errors
    /// When the shelf cannot be read.
    fn keys(&self) -> Result<Vec<String>, ShelfFault>;
}

/// A shelf in memory, gone when it is dropped. Clones are the same shelf, as two tabs are.
#[derive(Clone, Debug, Default)]
pub struct MemoryShelf {
    texts: Rc<RefCell<BTreeMap<String, String>>>,
}

impl Shelf for MemoryShelf {
    fn get(&self, key: &str) -> Result<Option<String>, ShelfFault> {
        Ok(self.texts.borrow().get(key).cloned())
    }

    fn set(&self, key: &str, text: &str) -> Result<(), ShelfFault> {
        self.texts.borrow_mut().insert(key.to_owned(), text.to_owned());
        Ok(())
    }

    fn remove(&self, key: &str) -> Result<(), ShelfFault> {
        self.texts.borrow_mut().remove(key);
        Ok(())
    }

    fn keys(&self) -> Result<Vec<String>, ShelfFault> {
        Ok(self.texts.borrow().keys().cloned().collect())
    }
}

/// A shelf that fails on purpose: at the n-th operation from now, always, or beyond a size. Clones fail together, so that one can be
/// kept outside to steer the one inside a notebook.
#[derive(Clone, Debug)]
pub struct FaultyShelf<S> {
    inner: S,
    plan: Rc<Plan>,
}

#[derive(Debug)]
struct Plan {
    fault: Cell<ShelfFault>,
    fails_after: Cell<Option<u64>>,
    fails_once: Cell<bool>,
    room: Cell<Option<usize>>,
}

impl<S: Shelf> FaultyShelf<S> {
    /// A shelf that works until told otherwise.
    pub fn new(inner: S) -> FaultyShelf<S> {
        let plan = Plan {
            fault: Cell::new(ShelfFault::Broken),
            fails_after: Cell::new(None),
            fails_once: Cell::new(false),
            room: Cell::new(None),
        };
        FaultyShelf { inner, plan: Rc::new(plan) }
    }

    /// Lets `operations` more succeed, then fails: once, or from then on.
    pub fn fail_after(&self, operations: u64, fault: ShelfFault, once: bool) {
        self.plan.fault.set(fault);
        self.plan.fails_after.set(Some(operations));
        self.plan.fails_once.set(once);
    }

    /// Operations that still succeed before the failure that was ordered; none when it came once, or none was ordered.
    pub fn left(&self) -> Option<u64> {
        self.plan.fails_after.get()
    }

    /// Works again.
    pub fn mend(&self) {
        self.plan.fails_after.set(None);
        self.plan.room.set(None);
    }

    /// Refuses as full whatever would bring keys and texts over `units` UTF-16 units, as browsers count them.
    pub fn limit(&self, units: usize) {
        self.plan.room.set(Some(units));
    }

    fn step(&self) -> Result<(), ShelfFault> {
        match self.plan.fails_after.get() {
            None => Ok(()),
            Some(0) => {
                if self.plan.fails_once.get() {
                    self.plan.fails_after.set(None);
                }
                Err(self.plan.fault.get())
            }
            Some(left) => {
                self.plan.fails_after.set(Some(left - 1));
                Ok(())
            }
        }
    }

    fn used_without(&self, key: &str) -> Result<usize, ShelfFault> {
        let mut used = 0;
        for other in self.inner.keys()? {
            if other != key {
                used += units(&other) + self.inner.get(&other)?.map_or(0, |text| units(&text));
            }
        }
        Ok(used)
    }
}

fn units(text: &str) -> usize {
    text.encode_utf16().count()
}

impl<S: Shelf> Shelf for FaultyShelf<S> {
    fn get(&self, key: &str) -> Result<Option<String>, ShelfFault> {
        self.step()?;
        self.inner.get(key)
    }

    fn set(&self, key: &str, text: &str) -> Result<(), ShelfFault> {
        self.step()?;
        if let Some(room) = self.plan.room.get()
            && self.used_without(key)? + units(key) + units(text) > room
        {
            return Err(ShelfFault::Full);
        }
        self.inner.set(key, text)
    }

    fn remove(&self, key: &str) -> Result<(), ShelfFault> {
        self.step()?;
        self.inner.remove(key)
    }

    fn keys(&self) -> Result<Vec<String>, ShelfFault> {
        self.step()?;
        self.inner.keys()
    }
}
