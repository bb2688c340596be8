//! What can be done with the garments that were ticked on the rack: compare, move, put away, hand on.

use garment_assay::garment::{Act, Id, TermsAct};
use yew::prelude::*;

use crate::app::model::Message;
use crate::app::route::Route;

use super::collection_field::CollectionField;

/// So many stand side by side at the most.
const MOST_BESIDE: usize = 4;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Those that were ticked, in that order.
    pub ids: Vec<Id>,
    /// Every garment that the rack shows now.
    pub shown: Vec<Id>,
    /// Those that are on the short list.
    pub short: Vec<Id>,
    /// The collections that there are.
    pub collections: Vec<String>,
    /// Whether the rack shows those that were put away.
    pub away: bool,
    /// Called with what is to be ticked instead.
    pub tick: Callback<Vec<Id>>,
    /// Called when this is to end.
    pub leave: Callback<()>,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// "1 garment", "3 garments".
fn garments(count: usize) -> String {
    if count == 1 { "1 garment".to_owned() } else { format!("{count} garments") }
}

/// The foot of the rack while garments are ticked.
#[component]
pub fn Choosing(props: &Props) -> Html {
    let Props { ids, shown, short, collections, away, tick, leave, send } = props;
    let moving = use_state_eq(|| false);
    let count = ids.len();
    let put_away = {
        let (send, leave, ids, away) = (send.clone(), leave.clone(), ids.clone(), *away);
        Callback::from(move |_: MouseEvent| {
            let said = format!("{}: {}.", if away { "Taken out again" } else { "Put away" }, garments(ids.len()));
            send.emit(Message::DoneToMany(ids.clone(), Act::Archived(!away), said));
            leave.emit(());
        })
    };
    // Off it only when each of them is on it: else the button would do the two things at once.
    let listed = count > 0 && ids.iter().all(|id| short.contains(id));
    let list = {
        let (send, leave, ids) = (send.clone(), leave.clone(), ids.clone());
        Callback::from(move |_: MouseEvent| {
            let said = format!("{} the short list: {}.", if listed { "Off" } else { "On" }, garments(ids.len()));
            send.emit(Message::DoneToMany(ids.clone(), Act::Terms(TermsAct::Shortlisted(!listed)), said));
            leave.emit(());
        })
    };
    let moved = {
        let (send, leave, ids) = (send.clone(), leave.clone(), ids.clone());
        Callback::from(move |name: String| {
            let said = if name.is_empty() {
                format!("Out of their collections: {}.", garments(ids.len()))
            } else {
                format!("In {name}: {}.", garments(ids.len()))
            };
            send.emit(Message::DoneToMany(ids.clone(), Act::Collection(name), said));
            leave.emit(());
        })
    };
    let turn = |to: bool| {
        let moving = moving.clone();
        Callback::from(move |_: MouseEvent| moving.set(to))
    };
    let all = {
        let (tick, shown) = (tick.clone(), shown.clone());
        Callback::from(move |_: MouseEvent| tick.emit(shown.clone()))
    };
    let end = leave.reform(|_: MouseEvent| ());
    if *moving && count > 0 {
        return html! {
            <div class="foot foot-pick">
                <CollectionField id="move-to" label={format!("Move {} to the collection", garments(count))} hint="A new name makes a new collection. Empty takes them out."
                    name="" known={collections.clone()} button="Move" chosen={moved} />
                <button type="button" class="second" onclick={turn(false)}>{ "Back" }</button>
            </div>
        };
    }
    html! {
        <div class="foot foot-pick">
            <p role="status">{ match count {
                0 => "Tick garments: two to four to set side by side, any number for the rest.".to_owned(),
                1 => "1 chosen. Choose another to set it beside.".to_owned(),
                count if count > MOST_BESIDE => format!("{count} chosen. Side by side there is room for {MOST_BESIDE}."),
                count => format!("{count} chosen."),
            } }</p>
            <div class="foot-more">
                if (2..=MOST_BESIDE).contains(&count) {
                    <a class="second" href={Route::BesideSheet(ids.clone()).href()}>{ "Print on one page" }</a>
                }
                <button type="button" class="second" disabled={count == 0} onclick={list}>{ if listed { "Off the short list" } else { "On the short list" } }</button>
                <button type="button" class="second" disabled={count == 0} onclick={turn(true)}>{ "Move to a collection" }</button>
                <button type="button" class="second" disabled={count == 0} onclick={put_away}>{ if *away { "Take out again" } else { "Put away" } }</button>
                if count > 0 {
                    <a class="second" href={Route::HandOn(ids.clone()).href()}>{ "Export these" }</a>
                } else {
                    <button type="button" class="second" disabled=true>{ "Export these" }</button>
                }
                if count < shown.len() {
                    <button type="button" class="second" onclick={all}>{ format!("Tick all {}", shown.len()) }</button>
                }
            </div>
            if (2..=MOST_BESIDE).contains(&count) {
                <a class="prime" href={Route::Beside(ids.clone()).href()}>{ "Set side by side" }</a>
            } else {
                <button type="button" class="prime" disabled=true>{ "Set side by side" }</button>
            }
            <button type="button" class="second" onclick={end}>{ "Leave it" }</button>
        </div>
    }
}
