//! An opened file read in turns: what it would change, worked out anew for each way to take it in and each state of the rack.

use std::cell::Cell;
use std::rc::Rc;

use garment_assay::fit::Person;
use garment_assay::garment::Garment;
use garment_assay::notebook::{Import, ImportFault, Mode, import_in_turns};
use yew::prelude::*;

use crate::app::browser::turns::{self, Turns};

/// What the answer hangs on.
#[derive(Clone, PartialEq)]
struct Asked {
    text: Option<Rc<str>>,
    garments: Vec<Rc<Garment>>,
    people: Vec<Rc<Person>>,
    mode: Mode,
}

/// What a file would change, or why it is refused.
type Answer = Result<Rc<Import>, ImportFault>;

impl Asked {
    async fn answer(&self, turns: &Turns) -> Option<Answer> {
        let garments: Vec<&Garment> = self.garments.iter().map(Rc::as_ref).collect();
        let people: Vec<&Person> = self.people.iter().map(Rc::as_ref).collect();
        let text = self.text.as_ref()?;
        Some(import_in_turns(text, &garments, &people, self.mode, &async || turns.pause().await).await.map(Rc::new))
    }
}

/// What is known of a file by now.
pub struct Read {
    /// What it would change; none until it was read for the first time. It stays while it is read anew, so that the page stays where it is.
    pub answer: Option<Answer>,
    /// The answer is about what was asked, and nothing is being read.
    pub is_current: bool,
}

/// Reads the text of a file, if one is open.
#[hook]
pub fn use_import(text: Option<Rc<str>>, garments: &[Rc<Garment>], people: &[Rc<Person>], mode: Mode) -> Read {
    let asked = Rc::new(Asked { text, garments: garments.to_vec(), people: people.to_vec(), mode });
    let known = use_state(|| None::<(Rc<Asked>, Answer)>);
    {
        let known = known.setter();
        use_effect_with(asked.clone(), move |asked| {
            let (asked, is_over) = (asked.clone(), Rc::new(Cell::new(false)));
            let over = is_over.clone();
            turns::begin(async move |turns| {
                let answer = asked.answer(&turns).await;
                if !is_over.get() {
                    known.set(answer.map(|answer| (asked, answer)));
                }
            });
            move || over.set(true)
        });
    }
    match (&asked.text, known.as_ref()) {
        (None, _) => Read { answer: None, is_current: true },
        (Some(_), None) => Read { answer: None, is_current: false },
        // Another file has nothing to do with the one before.
        (Some(text), Some((of, _))) if of.text.as_ref() != Some(text) => Read { answer: None, is_current: false },
        (Some(_), Some((of, answer))) => Read { answer: Some(answer.clone()), is_current: *of == asked },
    }
}
