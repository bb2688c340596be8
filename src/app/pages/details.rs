//! Label, place, ticket and note of a garment.

use std::rc::Rc;

use garment_assay::garment::{Act, Garment};
use garment_assay::say;
use garment_assay::trade::{Currency, Ticket};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::collection_field::CollectionField;
use crate::app::parts::note::Note;
use crate::app::parts::ticket::{Draft, TicketFields};
use crate::app::parts::worn_switch::WornSwitch;
use crate::app::route::Route;
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// The collections that there are.
    pub collections: Vec<String>,
    /// Currency offered first.
    pub currency: Currency,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// A ticket that lies face down is not shown in a field either; it is turned over with one button.
#[component]
pub fn Details(props: &Props) -> Html {
    let Props { garment, collections, currency, send } = props;
    let id = garment.id().clone();
    let act = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |act: Act| send.emit(Message::Done(id.clone(), act)))
    };
    let text = |make: fn(String) -> Act| {
        let act = act.clone();
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                act.emit(make(field.value().trim().to_owned()));
            }
        })
    };
    let draft = use_state(|| garment.ticket().map_or(Draft::empty(*currency), Draft::of));
    let fault = use_state(|| None::<AttrValue>);
    let keep_ticket = {
        let (fault, act) = (fault.clone(), act.clone());
        move |typed: &Draft| match typed.ticket() {
            Ok(ticket) => {
                fault.set(None);
                act.emit(Act::Ticket(ticket));
            }
            Err(sentence) => fault.set(Some(sentence.into())),
        }
    };
    let ticket_typed = {
        let (draft, keep_ticket) = (draft.clone(), keep_ticket.clone());
        Callback::from(move |typed: Draft| {
            // An amount is kept when the person leaves its field, not letter by letter.
            if typed.amount == draft.amount {
                keep_ticket(&typed);
            }
            draft.set(typed);
        })
    };
    let ticket_left = {
        let draft = draft.clone();
        Callback::from(move |_: FocusEvent| keep_ticket(&draft))
    };
    let face_down = garment.ticket().copied().filter(|ticket| ticket.face_down);
    let turn_over = |ticket: Ticket| {
        let (draft, act) = (draft.clone(), act.clone());
        Callback::from(move |_: MouseEvent| {
            let open = Ticket { face_down: false, ..ticket };
            draft.set(Draft::of(&open));
            act.emit(Act::Ticket(Some(open)));
        })
    };
    let duplicate = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |_: MouseEvent| send.emit(Message::Duplicate(id.clone(), clock::new_id())))
    };
    let delete = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |_: MouseEvent| send.emit(Message::Delete(id.clone())))
    };
    let away = garment.archived();
    let put_away = {
        let (send, id) = (send.clone(), id.clone());
        let name = garment.called();
        let said = if away { say!("Taken out again: {name}.", name) } else { say!("Put away: {name}.", name) };
        Callback::from(move |_: MouseEvent| send.emit(Message::DoneToMany(vec![id.clone()], Act::Archived(!away), said.clone())))
    };
    html! {
        <>
            <Bar title={say!("Details")} under={say!("{kind} · noted {day}", kind = garment.family().name(), day = clock::written_day(garment.noted()))}
                back={Route::Result(id.clone()).href()} back_name={say!("Back to the result")} />
            <div class="card">
                <div class="field">
                    <label for="label">{ say!("A name for it") }</label>
                    <input id="label" autocomplete="off" maxlength="120" value={garment.label().to_owned()} onchange={text(Act::Label)} />
                </div>
                <div class="field">
                    <label for="place">{ say!("Place") }</label>
                    <input id="place" autocomplete="off" maxlength="120" value={garment.place().to_owned()} onchange={text(Act::Place)} />
                </div>
                <CollectionField id="collection" label={say!("Collection")} hint={say!("A season, a show, a project. A new name makes a new collection.")} name={garment.collection().to_owned()}
                    known={collections.clone()} chosen={act.reform(Act::Collection)} />
                <WornSwitch on={garment.is_second_hand()} chosen={act.reform(Act::SecondHand)} />
                if let Some(ticket) = face_down {
                    <p class="hint">{ say!("The ticket lies face down. To guess first, open what stands behind it.") }</p>
                    <p><button type="button" class="second" onclick={turn_over(ticket)}>{ say!("Turn it over") }</button></p>
                } else {
                    <div onfocusout={ticket_left}>
                        <TicketFields draft={(*draft).clone()} typed={ticket_typed} fault={(*fault).clone()} />
                    </div>
                }
                <p><a class="ghost" href={Route::Ticket(id.clone()).href()}>{ say!("Behind the ticket") }</a></p>
                <p><a class="ghost" href={Route::Photographs(id.clone(), None).href()}>{ match garment.photographs().count() {
                    0 => say!("Add a photograph").to_owned(),
                    count => words::photographs(count),
                } }</a></p>
                <Note id="garment-note" label={say!("Note")} text={garment.note().to_owned()} write={act.reform(Act::Note)} />
            </div>
            <section class="card">
                <p><button type="button" class="second" onclick={put_away} aria-describedby="away-hint">{ if away { say!("Take out again") } else { say!("Put away") } }</button></p>
                <p class="hint" id="away-hint">{ say!("Put away, it is out of sight on the rack and not gone: what was noted still teaches what other tickets are likely to be.") }</p>
                <p><a class="ghost" href={Route::HandOn(vec![id.clone()]).href()}>{ say!("Hand it on") }</a></p>
            </section>
            <p class="lonely"><a href={Route::Desk(Some(id.clone())).href()}>{ say!("On one sheet") }</a></p>
            <p class="lonely"><button type="button" class="ghost" onclick={duplicate}>{ say!("Begin another from this one") }</button></p>
            <p class="lonely"><button type="button" class="ghost" onclick={delete}>{ say!("Delete this garment") }</button></p>
            <div class="foot">
                <a class="prime" href={Route::Resume(id.clone()).href()}>{ say!("Go on checking") }</a>
                <a class="second" href={Route::Result(id).href()}>{ say!("See the result") }</a>
            </div>
        </>
    }
}
