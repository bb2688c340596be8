//! What has a page of its own on the shelf: a garment, a person. How each is named there, written and read.

use std::fmt;

use serde_json::{Map, Value};

use super::page::{self, Unreadable};
use super::person;
use crate::fit::{Person, PersonId};
use crate::garment::{Act, Garment, Id};
use crate::say;

/// Names one record for good.
pub trait PageName: Clone + fmt::Debug + PartialEq {
    /// What it names.
    type Of: Record<Name = Self>;
    /// What the keys of its pages begin with; never changed.
    const PLACE: &'static str;
    /// What the keys of damaged text that was found under its pages begin with; never changed.
    const DAMAGED: &'static str;

    /// Takes a name that can stand in a key.
    fn parse(text: &str) -> Option<Self>;
    /// The name as text.
    fn text(&self) -> &str;

    /// Where the page lies.
    fn key(&self) -> String {
        format!("{}{}", Self::PLACE, self.text())
    }

    /// The name in the key of a page; none where that is a key of something else.
    fn of_key(key: &str) -> Option<Self> {
        key.strip_prefix(Self::PLACE).and_then(Self::parse)
    }
}

/// A record that has a page of its own.
pub trait Record: Clone + PartialEq {
    /// What it is named by.
    type Name: PageName<Of = Self>;

    /// Its name.
    fn page_name(&self) -> &Self::Name;
    /// The same facts under another name.
    fn under(&self, name: Self::Name) -> Self;
    /// The same facts, called so that a person sees that they came from a file.
    fn brought_by_a_file(self) -> Self;
    /// Its facts as a JSON object, the same for pages and exports.
    fn body(&self) -> Map<String, Value>;
    /// Reads its facts. What this version does not know within them is set aside whole, not dropped and not half read.
    ///
    /// # Errors
    /// What cannot be such a record at all.
    fn read(body: Map<String, Value>) -> Result<Self, Unreadable>;
}

impl PageName for Id {
    type Of = Garment;
    const PLACE: &'static str = "garment-assay/page/";
    const DAMAGED: &'static str = "garment-assay/damaged/";

    fn parse(text: &str) -> Option<Id> {
        Id::new(text)
    }

    fn text(&self) -> &str {
        self.as_str()
    }
}

impl PageName for PersonId {
    type Of = Person;
    const PLACE: &'static str = "garment-assay/person/";
    const DAMAGED: &'static str = "garment-assay/damaged/person/";

    fn parse(text: &str) -> Option<PersonId> {
        PersonId::new(text)
    }

    fn text(&self) -> &str {
        self.as_str()
    }
}

impl Record for Garment {
    type Name = Id;

    fn page_name(&self) -> &Id {
        self.id()
    }

    fn under(&self, name: Id) -> Garment {
        self.named(name)
    }

    fn brought_by_a_file(self) -> Garment {
        let label = said_from_a_file(self.label());
        self.after(Act::Label(label))
    }

    fn body(&self) -> Map<String, Value> {
        page::body(self)
    }

    fn read(body: Map<String, Value>) -> Result<Garment, Unreadable> {
        page::garment(body)
    }
}

impl Record for Person {
    type Name = PersonId;

    fn page_name(&self) -> &PersonId {
        self.id()
    }

    fn under(&self, name: PersonId) -> Person {
        self.with_id(name)
    }

    fn brought_by_a_file(self) -> Person {
        let name = said_from_a_file(self.name());
        self.named(&name)
    }

    fn body(&self) -> Map<String, Value> {
        person::body(self)
    }

    fn read(body: Map<String, Value>) -> Result<Person, Unreadable> {
        person::person(body)
    }
}

fn said_from_a_file(name: &str) -> String {
    if name.is_empty() { say!("From a file").to_owned() } else { say!("{name} (from a file)", name) }
}

/// Longest name of either kind, in characters.
pub(super) const LONGEST: usize = if Id::LONGEST < PersonId::LONGEST { Id::LONGEST } else { PersonId::LONGEST };
