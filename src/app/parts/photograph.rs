//! One photograph of evidence: small in a row of others, and large over the page.

use std::rc::Rc;

use garment_assay::garment::{Photograph, PhotographId};
use garment_assay::say;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::browser::photographs::{self, Seen};
use crate::app::browser::{clock, document};
use crate::app::words;

/// What is said in its place to those who do not see it, and under it where it has no caption.
pub fn spoken(one: &Photograph) -> String {
    if one.caption().is_empty() {
        say!("Photograph added {day}", day = clock::written_day(one.added()))
    } else {
        one.caption().to_owned()
    }
}

/// The picture of that id, once it was looked for. The browser takes its address back when the last part that shows it is gone.
#[hook]
fn use_picture(id: PhotographId) -> Option<Seen> {
    let seen = use_state_eq(|| None::<Seen>);
    {
        let seen = seen.clone();
        use_effect_with(id, move |id| {
            let wanted = Rc::new(std::cell::Cell::new(true));
            let still = wanted.clone();
            photographs::see(*id, move |found| {
                if still.get() {
                    seen.set(Some(found));
                }
            });
            move || wanted.set(false)
        });
    }
    (*seen).clone()
}

#[derive(Properties, PartialEq)]
pub struct TileProps {
    /// The photograph.
    pub one: Photograph,
    /// Called with its id when it is to be seen large.
    pub open: Callback<PhotographId>,
}

/// A photograph as a button with its caption.
#[component]
pub fn Tile(props: &TileProps) -> Html {
    let TileProps { one, open } = props;
    let seen = use_picture(one.id());
    let (width, height) = one.size();
    let onclick = {
        let id = one.id();
        open.reform(move |_: MouseEvent| id)
    };
    html! {
        <li class="photograph">
            <button type="button" {onclick}>
                { match &seen {
                    Some(Seen::Here(address)) => html! {
                        <img src={address.url()} alt={spoken(one)} width={width.to_string()} height={height.to_string()} decoding="async" />
                    },
                    Some(Seen::Missing) => html! { <span class="photograph-gone"><span class="unseen">{ format!("{}: ", spoken(one)) }</span>{ say!("Not on this device") }</span> },
                    None => html! { <span class="photograph-gone" aria-busy="true"><span class="unseen">{ spoken(one) }</span></span> },
                } }
            </button>
            if !one.caption().is_empty() {
                <p aria-hidden="true">{ one.caption() }</p>
            }
            if let Some(check) = one.check() {
                <p class="hint">{ check.name() }</p>
            }
        </li>
    }
}

#[derive(Properties, PartialEq)]
pub struct PrintedProps {
    /// The photograph.
    pub one: Photograph,
}

/// A photograph on a printed page, with its caption; nothing where the picture is not on this device.
#[component]
pub fn Printed(props: &PrintedProps) -> Html {
    let one = &props.one;
    let (width, height) = one.size();
    match use_picture(one.id()) {
        Some(Seen::Here(address)) => html! {
            <li>
                <img src={address.url()} alt={spoken(one)} width={width.to_string()} height={height.to_string()} />
                <span aria-hidden="true">{ one.caption().to_owned() }</span>
            </li>
        },
        _ => Html::default(),
    }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The photograph.
    pub one: Photograph,
    /// Called with its caption when that changed.
    pub caption: Callback<String>,
    /// Called when it is to be removed.
    pub remove: Callback<()>,
    /// Called when it is to be closed.
    pub close: Callback<()>,
}

/// A photograph over the page, with its caption. Escape and "Close" are the same.
#[component]
pub fn OpenPhotograph(props: &Props) -> Html {
    let Props { one, caption, remove, close } = props;
    let dialog = use_node_ref();
    let seen = use_picture(one.id());
    {
        let dialog = dialog.clone();
        use_effect_with((), move |()| document::open_dialog(&dialog));
    }
    let (width, height) = one.size();
    // The picture may come while somebody is typing already.
    let typed = use_state_eq(|| one.caption().to_owned());
    let type_on = {
        let typed = typed.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                typed.set(field.value());
            }
        })
    };
    let write = {
        let caption = caption.clone();
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                caption.emit(field.value());
            }
        })
    };
    let ended = |then: &Callback<()>| {
        let (dialog, then) = (dialog.clone(), then.clone());
        move || {
            // Leaving the field keeps what was typed in it, so it is left before the part is gone.
            document::close_dialog(&dialog);
            then.emit(());
        }
    };
    let (closed, cancelled, removed) = (ended(close), ended(close), ended(remove));
    let facts = [
        Some(say!("{width} by {height} pixels", width, height)),
        match &seen {
            Some(Seen::Here(address)) => Some(words::size(address.bytes())),
            _ => None,
        },
        Some(say!("added {day}", day = clock::written_day(one.added()))),
        one.check().map(|check| say!("for the check: {check}", check = check.name())),
    ];
    html! {
        <dialog class="confirm photograph-open" ref={dialog} oncancel={Callback::from(move |_: Event| cancelled())} aria-labelledby="photograph-title">
            <h2 id="photograph-title">{ say!("Photograph") }</h2>
            { match &seen {
                Some(Seen::Here(address)) => html! { <img src={address.url()} alt={spoken(one)} width={width.to_string()} height={height.to_string()} /> },
                Some(Seen::Missing) => html! {
                    <p>{ say!("The picture is not on this device; only what was noted of it is. Where it was added, save with photographs as a zip, and import that zip here in the settings.") }</p>
                },
                None => html! { <p aria-busy="true">{ say!("Looking for it.") }</p> },
            } }
            <div class="field">
                <label for="photograph-caption">{ say!("What it shows") }</label>
                <input id="photograph-caption" autocomplete="off" maxlength={Photograph::LONGEST_CAPTION.to_string()} value={(*typed).clone()} oninput={type_on} onchange={write} />
            </div>
            <p class="hint">{ facts.into_iter().flatten().collect::<Vec<_>>().join(" · ") }</p>
            <div class="foot-buttons">
                // Not the field, which would bring up the keyboard of a telephone over the picture.
                <button type="button" class="second" autofocus=true onclick={Callback::from(move |_: MouseEvent| closed())}>{ say!("a dialog" | "Close") }</button>
                <button type="button" class="grave" onclick={Callback::from(move |_: MouseEvent| removed())}>{ say!("Remove") }</button>
            </div>
        </dialog>
    }
}
