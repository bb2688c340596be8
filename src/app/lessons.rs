//! Courses and the longer texts of their lessons: each worked out or fetched once, when it is first opened.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::grading::Tables;
use garment_assay::learn::{Course, Subject, TextFault, Texts};

/// Where the longer texts of a course are.
#[derive(Clone, Debug, PartialEq)]
pub enum Here {
    /// Asked for.
    OnTheWay,
    /// Read.
    Read(Rc<Texts>),
    /// They did not come: no network, and they were not fetched before.
    Missing,
    /// They came and cannot be read.
    Unreadable(TextFault),
}

impl Here {
    /// The texts, when they are here.
    pub fn texts(&self) -> Option<&Rc<Texts>> {
        match self {
            Here::Read(texts) => Some(texts),
            Here::OnTheWay | Here::Missing | Here::Unreadable(_) => None,
        }
    }
}

/// What was worked out and fetched so far; a clone is another handle to the same.
#[derive(Clone, Default)]
pub struct Lessons(Rc<Held>);

#[derive(Default)]
struct Held {
    tables: Tables,
    courses: RefCell<BTreeMap<&'static str, Rc<Course>>>,
    texts: RefCell<BTreeMap<&'static str, Here>>,
}

impl Lessons {
    /// The course of the subject of that key.
    pub fn course(&self, subject: &str) -> Option<Rc<Course>> {
        let subject = Subject::of(subject)?;
        let mut courses = self.0.courses.borrow_mut();
        Some(courses.entry(subject.key()).or_insert_with(|| Rc::new(Course::of(subject, &self.0.tables))).clone())
    }

    /// Where the texts of that subject are.
    pub fn here(&self, subject: Subject) -> Here {
        self.0.texts.borrow().get(subject.key()).cloned().unwrap_or(Here::OnTheWay)
    }

    /// The subject whose texts are to be fetched now, since they are wanted and neither here nor on the way. A fetch that failed is tried
    /// again each time.
    pub fn wanted(&self, subject: &str) -> Option<Subject> {
        let subject = Subject::of(subject)?;
        if matches!(self.0.texts.borrow().get(subject.key()), Some(Here::OnTheWay | Here::Read(_))) {
            return None;
        }
        self.0.texts.borrow_mut().insert(subject.key(), Here::OnTheWay);
        Some(subject)
    }

    /// What a fetch brought.
    pub fn came(&self, subject: Subject, file: Option<&str>) {
        let here = match file.map(Texts::read) {
            Some(Ok(texts)) => Here::Read(Rc::new(texts)),
            Some(Err(fault)) => Here::Unreadable(fault),
            None => Here::Missing,
        };
        self.0.texts.borrow_mut().insert(subject.key(), here);
    }
}
