//! Learning: the courses, and how far each was read.

use std::rc::Rc;

use garment_assay::learn::{FIRST, Marks, Subject};
use garment_assay::say;
use yew::prelude::*;

use crate::app::parts::bar::Bar;
use crate::app::parts::drawn::Drawn;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Lessons that were read.
    pub read: Rc<Marks>,
    /// Called when all that was read is to be forgotten.
    pub forget: Callback<()>,
}

/// The courses.
#[component]
pub fn LearnPage(props: &Props) -> Html {
    let read = &props.read;
    let forget = props.forget.reform(|_: MouseEvent| ());
    html! {
        <>
            <Bar title={say!("Learn")} under={say!("Two minutes about each check")} back="#/" back_name={say!("Back to the rack")} />
            <section class="card">
                <p>{ say!("A lesson for each check: what to do with your hands, what you may find, what it means and what it does not, how it is faked, and how telling it is.") }</p>
                if read.is_empty() {
                    <p>{ say!("You have read none yet. Choose what you will look at next; its first {count} lessons are about what tells most, and take ten minutes.", count = FIRST) }</p>
                }
            </section>
            <ul class="courses">
                { for Subject::all().map(|subject| {
                    let (done, all) = (read.count(subject), subject.checks().len());
                    html! {
                        <li key={subject.key()}>
                            <a class="card course" href={Route::Course(subject.key().to_owned()).href()}>
                                <Drawn picture={subject.drawn()} />
                                <span><b>{ subject.name() }</b><small>{ say!("{done} of {all} read", done, all) }</small></span>
                            </a>
                        </li>
                    }
                }) }
            </ul>
            if !read.is_empty() {
                <p class="lonely"><button type="button" class="ghost" onclick={forget}>{ say!("Forget what I read") }</button></p>
            }
        </>
    }
}
