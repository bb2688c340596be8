//! The invented rack, one tap to add and one to take out.

use std::rc::Rc;

use garment_assay::garment::Garment;
use garment_assay::language::one;
use garment_assay::say;
use yew::prelude::*;

use crate::app::browser::shipped;
use crate::app::model::Message;

/// The file of the invented rack, beside the page.
const FILE: &str = "./invented-rack.json";

#[derive(Clone, Copy, PartialEq)]
enum Coming {
    Not,
    Fetched,
    Failed,
}

fn how_many(count: usize) -> String {
    if one(count) { say!("{count} garment here is invented.", count) } else { say!("{count} garments here are invented.", count) }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Garments noted.
    pub garments: Vec<Rc<Garment>>,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// Adds the invented rack, or takes it out where it is there.
#[component]
pub fn Invented(props: &Props) -> Html {
    let Props { garments, send } = props;
    let count = garments.iter().filter(|garment| garment.id().is_invented()).count();
    if count > 0 {
        let out = send.reform(|_: MouseEvent| Message::TakeOutInvented);
        return html! {
            <p class="invented"><span>{ how_many(count) }{ " " }</span>
                <button type="button" class="ghost" onclick={out}>{ say!("Take the invented rack out") }</button></p>
        };
    }
    html! { <LookRound came={send.reform(Message::Invent)} /> }
}

#[derive(Properties, PartialEq)]
pub struct LookRoundProps {
    /// Called with the file of the invented rack.
    pub came: Callback<String>,
}

/// Fetches the invented rack.
#[component]
pub fn LookRound(props: &LookRoundProps) -> Html {
    let coming = use_state_eq(|| Coming::Not);
    let add = {
        let (coming, came) = (coming.clone(), props.came.clone());
        Callback::from(move |_: MouseEvent| {
            coming.set(Coming::Fetched);
            let (coming, came) = (coming.clone(), came.clone());
            shipped::fetch(FILE.to_owned(), move |text| match text {
                Some(text) => {
                    coming.set(Coming::Not);
                    came.emit(text);
                }
                None => coming.set(Coming::Failed),
            });
        })
    };
    html! {
        <div class="invented">
            <button type="button" class="ghost" onclick={add} disabled={*coming == Coming::Fetched}>
                { if *coming == Coming::Fetched { say!("Fetching it") } else { say!("Look round in an invented rack") } }</button>
            if *coming == Coming::Failed {
                <p class="fault" role="alert">{ say!("The invented rack could not be fetched. It comes over the network the first time: try again where you have one.") }</p>
            }
        </div>
    }
}
