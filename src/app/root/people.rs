//! People on their way to the shelf: what was kept, and what becomes of two windows that wrote the same person.

use std::rc::Rc;

use garment_assay::fit::{Person, PersonId};
use garment_assay::notebook::{KeepFault, Kept};
use garment_assay::say;
use yew::prelude::*;

use super::App;
use crate::app::browser::{address, clock};
use crate::app::model::{Message, Notice};
use crate::app::route::Route;

impl App {
    /// Takes note of whether a change to a person was kept.
    pub(super) fn note_keeping_person(&mut self, ctx: &Context<App>, id: &PersonId, kept: Result<Kept<Person>, KeepFault>) {
        match kept {
            Ok(kept) => {
                Rc::make_mut(&mut self.model.unkept_people).remove(id);
                self.note_kept(ctx, kept.page, kept.reserve_used);
                if let Some(renamed) = kept.renamed {
                    self.part_ways_over(ctx, id, renamed.ours, renamed.theirs);
                }
                if let Some(stays) = kept.stays {
                    let text = match stays.theirs {
                        Some(theirs) => {
                            self.take(ctx, Message::PersonElsewhere(Box::new(theirs)));
                            say!("The measures of this person were changed in another window, so nothing was deleted.")
                        }
                        None => {
                            say!(
                                "A newer version of the app has written the measures of this person, so nothing was deleted. Load the page again."
                            )
                        }
                    };
                    self.model.notice = Some(Rc::new(Notice::plain(text)));
                }
            }
            Err(KeepFault(fault)) => {
                Rc::make_mut(&mut self.model.unkept_people).insert(id.clone());
                self.model.fault = Some(fault);
            }
        }
    }

    /// Two windows wrote the same person: theirs keeps the id, ours goes on under a new one.
    fn part_ways_over(&mut self, ctx: &Context<App>, id: &PersonId, ours: Person, theirs: Option<Person>) {
        let new = ours.id().clone();
        let name = if ours.name().is_empty() { say!("Nameless") } else { ours.name() };
        let name = say!("{name} (this window)", name);
        let ours = Rc::new(ours.named(&name));
        self.model.take_person(id);
        if let Some(theirs) = theirs {
            self.model.put_person(Rc::new(theirs));
        }
        self.model.put_person(ours.clone());
        self.model.notice = Some(Rc::new(Notice::plain(say!(
            "The measures of this person were changed in another window at the same time. Both are kept; you go on with yours."
        ))));
        let kept = self.notebook.keep(ours.as_ref());
        self.note_keeping_person(ctx, &new, kept);
        // By the address, as with a garment.
        if let Route::Person(open, garment) = &Route::parse(&address::hash())
            && open == id
        {
            address::replace(&Route::Person(new, garment.clone()).href());
        }
    }

    /// Another window wrote a person of whom our latest change is not kept: ours goes on under a new id, unless it is the same.
    pub(super) fn rescue_person(&mut self, ctx: &Context<App>, id: &PersonId, theirs: Option<&Person>) {
        let ours = self.model.person(id).cloned().filter(|_| self.model.unkept_people.contains(id));
        if let Some(ours) = ours.filter(|ours| Some(ours.as_ref()) != theirs) {
            Rc::make_mut(&mut self.model.unkept_people).remove(id);
            self.part_ways_over(ctx, id, ours.with_id(clock::new_person_id()), theirs.cloned());
        }
    }

    /// Another window's page took the place of ours, unseen: ours goes on under a new id, unless it is the same.
    pub(super) fn over_person(&mut self, ctx: &Context<App>, id: &PersonId, theirs: Option<Person>) {
        Rc::make_mut(&mut self.model.unkept_people).remove(id);
        match self.model.person(id).cloned() {
            Some(ours) if theirs.as_ref() != Some(ours.as_ref()) => {
                self.part_ways_over(ctx, id, ours.with_id(clock::new_person_id()), theirs)
            }
            Some(_) => {}
            None => theirs.into_iter().for_each(|theirs| self.model.put_person(Rc::new(theirs))),
        }
    }
}
