//! The people whose measures are kept, and the measures of one of them.

use std::rc::Rc;

use garment_assay::fit::Person;
use garment_assay::garment::Garment;
use garment_assay::quantity::System;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct PeopleProps {
    /// People whose measures are kept, by name.
    pub people: Vec<Rc<Person>>,
    /// Metric or imperial.
    pub system: System,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The list of them.
#[component]
pub fn PeoplePage(props: &PeopleProps) -> Html {
    let PeopleProps { people, send, .. } = props;
    let add = send.reform(|_: MouseEvent| Message::Person(Box::new(Person::new(clock::new_person_id(), ""))));
    html! {
        <>
            <Bar title="People" back={Route::Settings.href()} back_name="Back to settings" />
            { for people.iter().map(|person| html! {
                <p key={person.id().as_str()}><a class="onward" href={Route::Person(person.id().clone(), None).href()}>{ person.name() }</a></p>
            }) }
            <p><button type="button" class="prime" onclick={add}>{ "Add a person" }</button></p>
        </>
    }
}

#[derive(Properties, PartialEq)]
pub struct PersonProps {
    /// The person.
    pub person: Rc<Person>,
    /// The garment from whose fitting room the page was opened.
    pub garment: Option<Rc<Garment>>,
    /// Metric or imperial.
    pub system: System,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The measures of one person.
#[component]
pub fn PersonPage(props: &PersonProps) -> Html {
    let PersonProps { person, garment, send, .. } = props;
    let forget = {
        let id = person.id().clone();
        send.reform(move |_: MouseEvent| Message::Forget(id.clone()))
    };
    let back = garment.as_ref().map_or(Route::People, |garment| Route::Fitting(garment.id().clone()));
    html! {
        <>
            <Bar title={person.name().to_owned()} back={back.href()} />
            <p><button type="button" class="grave" onclick={forget}>{ "Delete this person" }</button></p>
        </>
    }
}
