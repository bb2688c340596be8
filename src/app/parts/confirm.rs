//! A question before something that cannot be undone.

use garment_assay::say;
use yew::prelude::*;

use crate::app::browser::{document, screen};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The question.
    pub question: AttrValue,
    /// What follows from "yes".
    pub explains: AttrValue,
    /// The word on the button that goes ahead.
    pub yes: AttrValue,
    /// Called with the answer.
    pub answered: Callback<bool>,
}

/// A dialog over the page; Escape and "Keep" are the same.
#[component]
pub fn Confirm(props: &Props) -> Html {
    let dialog = use_node_ref();
    {
        let dialog = dialog.clone();
        use_effect_with((), move |()| document::open_dialog(&dialog));
    }
    let answer = |yes: bool| {
        let (dialog, answered) = (dialog.clone(), props.answered.clone());
        move || {
            let answered = answered.clone();
            document::close_dialog(&dialog);
            // The page is drawn without the dialog first: what follows from "yes" may take a while.
            screen::soon(move || answered.emit(yes)).forget();
        }
    };
    let (no, yes, cancel) = (answer(false), answer(true), answer(false));
    let no = Callback::from(move |_: MouseEvent| no());
    let yes = Callback::from(move |_: MouseEvent| yes());
    let cancelled = Callback::from(move |_: Event| cancel());
    html! {
        <dialog class="confirm" ref={dialog} oncancel={cancelled} aria-labelledby="confirm-question" aria-describedby="confirm-explains">
            <h2 id="confirm-question">{ &props.question }</h2>
            <p id="confirm-explains">{ &props.explains }</p>
            <div class="foot-buttons">
                <button type="button" class="second" onclick={no}>{ say!("Keep it") }</button>
                <button type="button" class="grave" onclick={yes}>{ &props.yes }</button>
            </div>
        </dialog>
    }
}
