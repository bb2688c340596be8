//! Starting the check of a new garment.

use std::collections::BTreeSet;
use std::rc::Rc;

use garment_assay::catalog::{FAMILIES, Family};
use garment_assay::garment::Garment;
use garment_assay::say;
use garment_assay::trade::Currency;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::model::{Beginning, Message};
use crate::app::parts::bar::Bar;
use crate::app::parts::drawn::Drawn;
use crate::app::parts::ticket::{Draft, TicketFields};
use crate::app::parts::worn_switch::WornSwitch;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Garments noted, for places to offer.
    pub garments: Vec<Rc<Garment>>,
    /// Currency offered first.
    pub currency: Currency,
    /// Where messages go.
    pub send: Callback<Message>,
}

fn typed(field: &UseStateHandle<String>) -> Callback<InputEvent> {
    let field = field.clone();
    Callback::from(move |event: InputEvent| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            field.set(input.value());
        }
    })
}

/// A form of which only the family must be chosen.
#[component]
pub fn Start(props: &Props) -> Html {
    let Props { garments, currency, send } = props;
    let family = use_state(|| FAMILIES[0]);
    let label = use_state(String::new);
    let last_place = garments
        .iter()
        .max_by_key(|garment| (garment.noted(), garment.id()))
        .map_or(String::new(), |last| last.place().to_owned());
    let place = use_state(move || last_place);
    let draft = use_state(|| Draft::empty(*currency));
    let fault = use_state(|| None::<AttrValue>);
    let second_hand = use_state_eq(|| false);
    let switched = {
        let second_hand = second_hand.clone();
        Callback::from(move |is: bool| second_hand.set(is))
    };
    let places: BTreeSet<&str> = garments.iter().map(|garment| garment.place()).filter(|place| !place.is_empty()).collect();
    let onsubmit = {
        let (family, label, place, draft, fault, send) =
            (family.clone(), label.clone(), place.clone(), draft.clone(), fault.clone(), send.clone());
        let second_hand = second_hand.clone();
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            match draft.ticket() {
                Err(sentence) => fault.set(Some(sentence.into())),
                Ok(ticket) => {
                    let (label, place) = (label.trim().to_owned(), place.trim().to_owned());
                    let beginning = Beginning { family: *family, label, place, ticket, second_hand: *second_hand };
                    send.emit(Message::Begin(clock::new_id(), Box::new(beginning)));
                }
            }
        })
    };
    let ticket_typed = {
        let (draft, fault) = (draft.clone(), fault.clone());
        Callback::from(move |typed: Draft| {
            draft.set(typed);
            fault.set(None);
        })
    };
    html! {
        <form class="start" {onsubmit} novalidate=true>
            <Bar title={say!("Check a garment")} under={say!("Only the kind is needed; make as many of its checks as you like")} back="#/" back_name={say!("Back to the rack")} />
            <div class="card">
                <fieldset class="families">
                    <legend>{ say!("What is it?") }</legend>
                    { for FAMILIES.iter().copied().map(|kind: &'static Family| {
                        let onchange = { let family = family.clone(); Callback::from(move |_: Event| family.set(kind)) };
                        let chosen = family.key == kind.key;
                        html! {
                            <label key={kind.key} class="answer" data-chosen={chosen.to_string()}>
                                <input type="radio" name="family" value={kind.key} checked={chosen} {onchange} />
                                <Drawn picture={kind.drawn} />
                                <span class="answer-words"><b>{ kind.name() }</b><small>{ kind.covers() }{ " " }{ say!("{count} checks.", count = kind.checks.len()) }</small></span>
                            </label>
                        }
                    }) }
                </fieldset>
                <WornSwitch on={*second_hand} chosen={switched} />
                <div class="field">
                    <label for="label">{ say!("A name for it") }</label>
                    <input id="label" autocomplete="off" maxlength="120" placeholder={family.example()} value={(*label).clone()} oninput={typed(&label)} />
                </div>
                <div class="field">
                    <label for="place">{ say!("Where you are") }</label>
                    <input id="place" autocomplete="off" maxlength="120" list="places" placeholder={say!("Shop, stand or wardrobe")} value={(*place).clone()} oninput={typed(&place)} />
                    <datalist id="places">{ for places.into_iter().map(|place| html! { <option key={place} value={place.to_owned()} /> }) }</datalist>
                </div>
                <TicketFields draft={(*draft).clone()} typed={ticket_typed} fault={(*fault).clone()} />
            </div>
            <div class="foot"><button type="submit" class="prime">{ say!("Start checking") }</button></div>
        </form>
    }
}
