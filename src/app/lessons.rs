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

/// What was worked out and fetched so far.
#[derive(Default)]
pub struct Lessons {
    tables: Tables,
    courses: RefCell<BTreeMap<&'static str, Rc<Course>>>,
    texts: BTreeMap<&'static str, Here>,
}

impl Lessons {
    /// The course of the subject of that key.
    pub fn course(&self, subject: &str) -> Option<Rc<Course>> {
        let subject = Subject::of(subject)?;
        let mut courses = self.courses.borrow_mut();
        Some(courses.entry(subject.key()).or_insert_with(|| Rc::new(Course::of(subject, &self.tables))).clone())
    }

    /// Where the texts of that subject are.
    pub fn here(&self, subject: Subject) -> Here {
        self.texts.get(subject.key()).cloned().unwrap_or(Here::OnTheWay)
    }

    /// The subject whose texts are to be fetched now, since they are wanted and neither here nor on the way. A fetch that failed is tried
    /// again each time.
    pub fn wanted(&mut self, subject: &str) -> Option<Subject> {
        let subject = Subject::of(subject)?;
        if matches!(self.texts.get(subject.key()), Some(Here::OnTheWay | Here::Read(_))) {
            return None;
        }
        self.texts.insert(subject.key(), Here::OnTheWay);
        Some(subject)
    }

    /// What a fetch brought.
    pub fn came(&mut self, subject: Subject, file: Option<&str>) {
        let here = match file.map(Texts::read) {
            Some(Ok(texts)) => Here::Read(Rc::new(texts)),
            Some(Err(fault)) => Here::Unreadable(fault),
            None => Here::Missing,
        };
        self.texts.insert(subject.key(), here);
    }
}
