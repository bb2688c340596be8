//! The people whose measures are kept: who there is, and adding one.

use std::rc::Rc;

use garment_assay::fit::{BODY_MEASURES, Person};
use garment_assay::language::said;
use garment_assay::{say, to_say};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::route::Route;

/// What a person is called where they gave no name.
pub const NAMELESS: &str = to_say!("No name");

#[derive(Properties, PartialEq)]
pub struct Props {
    /// People whose measures are kept, by name.
    pub people: Vec<Rc<Person>>,
    /// Where messages go.
    pub send: Callback<Message>,
}

fn counted(person: &Person) -> String {
    match person.readings().count() {
        0 => say!("nothing measured yet").to_owned(),
        count => say!("{count} of {all} measures", count, all = BODY_MEASURES.len()),
    }
}

/// The list of them.
#[component]
pub fn PeoplePage(props: &Props) -> Html {
    let Props { people, send } = props;
    let field = use_node_ref();
    let onsubmit = {
        let (send, field) = (send.clone(), field.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            let name = field.cast::<HtmlInputElement>().map(|field| field.value()).unwrap_or_default();
            send.emit(Message::Person(Box::new(Person::new(clock::new_person_id(), name.trim()))));
        })
    };
    html! {
        <>
            <Bar title={say!("People")} under={say!("Body measures for the fitting room")} back={Route::Settings.href()} back_name={say!("Back to settings")} />
            <section class="card" aria-labelledby="people-kept">
                <h2 id="people-kept">{ say!("Kept here") }</h2>
                if people.is_empty() {
                    <p>{ say!("Nobody yet. Measures stay on this device.") }</p>
                    <p class="hint">{ say!("Add yourself, or whoever you look for clothes for. With one or two measures the fitting room can already say something.") }</p>
                } else {
                    <ul class="people">
                        { for people.iter().map(|person| html! {
                            <li key={person.id().as_str()}>
                                <a class="onward" href={Route::Person(person.id().clone(), None).href()}>
                                    <b>{ if person.name().is_empty() { said(NAMELESS) } else { person.name() } }</b><small>{ counted(person) }</small>
                                </a>
                            </li>
                        }) }
                    </ul>
                    <p class="hint">{ say!("Measures stay on this device. A file you export holds them only if you tick that in the settings.") }</p>
                }
            </section>
            <section class="card" aria-labelledby="people-add">
                <h2 id="people-add">{ say!("Add a person") }</h2>
                <form {onsubmit}>
                    <div class="field">
                        <label for="person-new">{ say!("What you call them") }</label>
                        <input ref={field} id="person-new" autocomplete="off" maxlength={Person::LONGEST_NAME.to_string()} aria-describedby="person-new-hint" />
                        <p class="hint" id="person-new-hint">{ say!("Any word that you will know again. It may stay empty.") }</p>
                    </div>
                    <p><button type="submit" class="prime">{ say!("Add") }</button></p>
                </form>
            </section>
        </>
    }
}
