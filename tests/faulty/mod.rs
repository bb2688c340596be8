//! A shelf that does harm on purpose: every single operation can be refused, done by halves, done and denied, or not done and affirmed.

pub mod desk;

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::notebook::{MemoryShelf, Shelf, ShelfFault};

/// What befalls one operation. What an operation cannot suffer, it does not.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Harm {
    /// Nothing is done, and that is said.
    Refused(ShelfFault),
    /// A text is written up to that share of its bytes, and said to be kept.
    Torn(f64),
    /// A text is written up to that share of its bytes, and said not to be kept. A shelf promises not to do so.
    TornAndRefused(f64),
    /// It is done, and said not to be.
    DoneAndRefused,
    /// It is not done, and said to be: what lay there before still does.
    NotDone,
    /// What lies there is gone, whatever is said.
    Vanished,
    /// What lay there before comes back, whatever is said.
    Stale,
}

impl Harm {
    /// All kinds; torn in four places, among them at the very beginning and one byte before the end.
    pub const ALL: [Harm; 15] = [
        Harm::Refused(ShelfFault::Full),
        Harm::Refused(ShelfFault::Forbidden),
        Harm::Refused(ShelfFault::Broken),
        Harm::Torn(0.0),
        Harm::Torn(0.1),
        Harm::Torn(0.5),
        Harm::Torn(1.0),
        Harm::TornAndRefused(0.0),
        Harm::TornAndRefused(0.1),
        Harm::TornAndRefused(0.5),
        Harm::TornAndRefused(1.0),
        Harm::DoneAndRefused,
        Harm::NotDone,
        Harm::Vanished,
        Harm::Stale,
    ];
}

/// What is asked of a shelf.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Operation {
    Get,
    Set,
    Remove,
    Keys,
}

impl Operation {
    /// Whether that harm is one of its own, and not another one over again.
    pub fn can_suffer(self, harm: Harm) -> bool {
        match harm {
            Harm::Refused(_) => true,
            Harm::Torn(_) | Harm::TornAndRefused(_) => self == Operation::Set,
            Harm::DoneAndRefused | Harm::NotDone => matches!(self, Operation::Set | Operation::Remove),
            Harm::Vanished => matches!(self, Operation::Get | Operation::Set),
            Harm::Stale => self == Operation::Get,
        }
    }
}

/// A harm that came to pass.
#[derive(Clone, Debug, PartialEq)]
pub struct Struck {
    /// The operation, from 0.
    pub operation: u64,
    /// The key it was about; empty where it was about all of them.
    pub key: String,
    /// What befell it.
    pub harm: Harm,
    /// The piece of text that was left there, where one was.
    pub piece: Option<String>,
}

#[derive(Debug, Default)]
struct Story {
    plan: BTreeMap<u64, Harm>,
    operations: Vec<Operation>,
    /// What lay under each key before its last writing.
    before: BTreeMap<String, Option<String>>,
    struck: Vec<Struck>,
}

/// The shelf. Clones are the same shelf and go on with the same plan.
#[derive(Clone, Debug, Default)]
pub struct HarmfulShelf {
    /// What lies there in truth.
    pub memory: MemoryShelf,
    story: Rc<RefCell<Story>>,
}

impl HarmfulShelf {
    /// A shelf on which those operations, counted from 0, come to harm.
    pub fn new(memory: MemoryShelf, plan: BTreeMap<u64, Harm>) -> HarmfulShelf {
        HarmfulShelf { memory, story: Rc::new(RefCell::new(Story { plan, ..Story::default() })) }
    }

    /// Works from now on.
    pub fn mend(&self) {
        self.story.borrow_mut().plan.clear();
    }

    /// What was asked so far.
    pub fn operations(&self) -> Vec<Operation> {
        self.story.borrow().operations.clone()
    }

    /// What came to pass so far.
    pub fn struck(&self) -> Vec<Struck> {
        self.story.borrow().struck.clone()
    }

    fn next(&self, asked: Operation) -> Option<(u64, Harm)> {
        let mut story = self.story.borrow_mut();
        let operation = story.operations.len() as u64;
        story.operations.push(asked);
        story.plan.get(&operation).filter(|harm| asked.can_suffer(**harm)).map(|harm| (operation, *harm))
    }

    fn note(&self, operation: u64, key: &str, harm: Harm, piece: Option<String>) {
        self.story.borrow_mut().struck.push(Struck { operation, key: key.to_owned(), harm, piece });
    }

    fn lay(&self, key: &str, text: Option<&str>) {
        let before = self.memory.get(key).expect("memory");
        self.story.borrow_mut().before.insert(key.to_owned(), before);
        self.lay_unnoted(key, text);
    }

    fn lay_unnoted(&self, key: &str, text: Option<&str>) {
        match text {
            Some(text) => self.memory.set(key, text),
            None => self.memory.remove(key),
        }
        .expect("memory");
    }

    /// What lay there before its last writing, if anything was ever written there.
    fn before(&self, key: &str) -> Option<Option<String>> {
        self.story.borrow().before.get(key).cloned()
    }

    fn write(&self, asked: Operation, key: &str, text: Option<&str>) -> Result<(), ShelfFault> {
        let Some((operation, harm)) = self.next(asked) else {
            self.lay(key, text);
            return Ok(());
        };
        let (left, told) = match harm {
            Harm::Torn(share) => (text.map(|text| cut(text, share)), Ok(())),
            Harm::TornAndRefused(share) => (text.map(|text| cut(text, share)), Err(ShelfFault::Broken)),
            Harm::DoneAndRefused => (text.map(str::to_owned), Err(ShelfFault::Broken)),
            Harm::Vanished => (None, Ok(())),
            Harm::Refused(_) | Harm::NotDone | Harm::Stale => {
                self.note(operation, key, harm, None);
                return if let Harm::Refused(fault) = harm { Err(fault) } else { Ok(()) };
            }
        };
        self.lay(key, left.as_deref());
        let torn = matches!(harm, Harm::Torn(_) | Harm::TornAndRefused(_));
        self.note(operation, key, harm, left.filter(|_| torn));
        told
    }
}

/// The beginning of a text; never the whole of it, unless it is empty.
fn cut(text: &str, share: f64) -> String {
    let mut end = ((text.len() as f64 * share) as usize).min(text.len().saturating_sub(1));
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    text[..end].to_owned()
}

impl Shelf for HarmfulShelf {
    fn get(&self, key: &str) -> Result<Option<String>, ShelfFault> {
        match self.next(Operation::Get) {
            Some((operation, harm @ Harm::Refused(fault))) => {
                self.note(operation, key, harm, None);
                return Err(fault);
            }
            Some((operation, Harm::Vanished)) => {
                self.note(operation, key, Harm::Vanished, None);
                self.lay_unnoted(key, None);
            }
            Some((operation, Harm::Stale)) => {
                if let Some(before) = self.before(key) {
                    self.note(operation, key, Harm::Stale, None);
                    self.lay_unnoted(key, before.as_deref());
                }
            }
            _ => {}
        }
        self.memory.get(key)
    }

    fn set(&self, key: &str, text: &str) -> Result<(), ShelfFault> {
        self.write(Operation::Set, key, Some(text))
    }

    fn remove(&self, key: &str) -> Result<(), ShelfFault> {
        self.write(Operation::Remove, key, None)
    }

    fn keys(&self) -> Result<Vec<String>, ShelfFault> {
        if let Some((operation, harm @ Harm::Refused(fault))) = self.next(Operation::Keys) {
            self.note(operation, "", harm, None);
            return Err(fault);
        }
        self.memory.keys()
    }
}
