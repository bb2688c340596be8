//! What can be done with the garments that were ticked on the rack: compare, move, put away, hand on.

use garment_assay::garment::{Act, Id, TermsAct};
use garment_assay::language::one;
use garment_assay::say;
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
    if one(count) { say!("{count} garment", count) } else { say!("{count} garments", count) }
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
            let garments = garments(ids.len());
            let said =
                if away { say!("Taken out again: {garments}.", garments) } else { say!("Put away: {garments}.", garments) };
            send.emit(Message::DoneToMany(ids.clone(), Act::Archived(!away), said));
            leave.emit(());
        })
    };
    // Off it only when each of them is on it: else the button would do the two things at once.
    let listed = count > 0 && ids.iter().all(|id| short.contains(id));
    let list = {
        let (send, leave, ids) = (send.clone(), leave.clone(), ids.clone());
        Callback::from(move |_: MouseEvent| {
            let garments = garments(ids.len());
            let said = if listed {
                say!("Off the short list: {garments}.", garments)
            } else {
                say!("On the short list: {garments}.", garments)
            };
            send.emit(Message::DoneToMany(ids.clone(), Act::Terms(TermsAct::Shortlisted(!listed)), said));
            leave.emit(());
        })
    };
    let moved = {
        let (send, leave, ids) = (send.clone(), leave.clone(), ids.clone());
        Callback::from(move |name: String| {
            let garments = garments(ids.len());
            let said = if name.is_empty() {
                say!("Out of their collections: {garments}.", garments)
            } else {
                say!("In {collection}: {garments}.", collection = name, garments)
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
                <CollectionField id="move-to" label={say!("Move {garments} to the collection", garments = garments(count))} hint={say!("A new name makes a new collection. Empty takes them out.")}
                    name="" known={collections.clone()} button={say!("garments, to a collection" | "Move")} chosen={moved} />
                <button type="button" class="second" onclick={turn(false)}>{ say!("Back") }</button>
            </div>
        };
    }
    html! {
        <div class="foot foot-pick">
            <p role="status">{ match count {
                0 => say!("Tick garments: two to four to set side by side, any number for the rest.").to_owned(),
                1 => say!("1 chosen. Choose another to set it beside.").to_owned(),
                count if count > MOST_BESIDE => say!("{count} chosen. Side by side there is room for {most}.", count, most = MOST_BESIDE),
                count => say!("{count} chosen.", count),
            } }</p>
            <div class="foot-more">
                if (2..=MOST_BESIDE).contains(&count) {
                    <a class="second" href={Route::BesideSheet(ids.clone()).href()}>{ say!("Print on one page") }</a>
                }
                <button type="button" class="second" disabled={count == 0} onclick={list}>{ if listed { say!("Off the short list") } else { say!("to do" | "On the short list") } }</button>
                <button type="button" class="second" disabled={count == 0} onclick={turn(true)}>{ say!("Move to a collection") }</button>
                <button type="button" class="second" disabled={count == 0} onclick={put_away}>{ if *away { say!("garments" | "Take out again") } else { say!("garments" | "Put away") } }</button>
                if count > 0 {
                    <a class="second" href={Route::HandOn(ids.clone()).href()}>{ say!("Export these") }</a>
                } else {
                    <button type="button" class="second" disabled=true>{ say!("Export these") }</button>
                }
                if count < shown.len() {
                    <button type="button" class="second" onclick={all}>{ say!("Tick all {count}", count = shown.len()) }</button>
                }
            </div>
            if (2..=MOST_BESIDE).contains(&count) {
                <a class="prime" href={Route::Beside(ids.clone()).href()}>{ say!("Set side by side") }</a>
            } else {
                <button type="button" class="prime" disabled=true>{ say!("Set side by side") }</button>
            }
            <button type="button" class="second" onclick={end}>{ say!("Leave it") }</button>
        </div>
    }
}
