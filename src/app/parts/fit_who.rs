//! For whom a garment is tried: one of the people whose measures are kept, or somebody new.

use std::rc::Rc;

use garment_assay::fit::{Person, PersonId};
use garment_assay::garment::{FitAct, Garment};
use garment_assay::say;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// People whose measures are kept, by name.
    pub people: Vec<Rc<Person>>,
    /// The one for whom it is, if that one is kept.
    pub wearer: Option<PersonId>,
    /// Called with whom it is for.
    pub act: Callback<FitAct>,
    /// Called with somebody new, who is chosen at once.
    pub add: Callback<Person>,
}

/// Choosing, and adding.
#[component]
pub fn Who(props: &Props) -> Html {
    let Props { garment, people, wearer, act, add } = props;
    let field = use_node_ref();
    let gone = garment.fitting().who().is_some() && wearer.is_none();
    let onsubmit = {
        let (add, field) = (add.clone(), field.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            let name = field.cast::<HtmlInputElement>().map(|field| field.value()).unwrap_or_default();
            add.emit(Person::new(clock::new_person_id(), name.trim()));
        })
    };
    html! {
        <>
            if !people.is_empty() {
                <fieldset class="chips">
                    <legend class="unseen">{ say!("For whom it is") }</legend>
                    { for people.iter().map(|person| {
                        let is = wearer.as_ref() == Some(person.id());
                        let onchange = { let id = person.id().clone(); act.reform(move |_: Event| FitAct::Who(Some(id.clone()))) };
                        let name = if person.name().is_empty() { say!("No name") } else { person.name() };
                        html! {
                            <label key={person.id().as_str()} class="chip" data-chosen={is.to_string()}>
                                <input type="radio" name="who" checked={is} {onchange} /><span><b>{ name.to_owned() }</b></span>
                            </label>
                        }
                    }) }
                </fieldset>
            }
            if gone {
                <p class="hint">{ say!("The person it was noted for is no longer kept on this device.") }</p>
            }
            if let Some(wearer) = wearer {
                <p><a class="second" href={Route::Person(wearer.clone(), Some(garment.id().clone())).href()}>{ say!("Their measures") }</a></p>
            }
            <form class="fit-add" {onsubmit}>
                <div class="field">
                    <label for="fit-new">{ if people.is_empty() { say!("What you call them") } else { say!("Somebody else") } }</label>
                    <input ref={field} id="fit-new" autocomplete="off" maxlength={Person::LONGEST_NAME.to_string()} placeholder={say!("Me")} />
                </div>
                <button type="submit" class="second">{ say!("Add") }</button>
            </form>
            <p class="hint">{ say!("Whoever you add is measured next, only where this piece is compared. Measures stay on this device, and you can delete them. Without any, the mirror still tells.") }</p>
        </>
    }
}
