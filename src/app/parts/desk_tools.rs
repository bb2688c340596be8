//! Over the rows of the quick sheet: the search for a check, and the keys.

use garment_assay::check::Check;
use garment_assay::language::said;
use garment_assay::say;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::icon::{Icon, Shape};
use crate::app::desk::{KEYS, found};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The checks, in the order of the rows.
    pub checks: Vec<&'static Check>,
    /// The field of the search, for whoever sends the keyboard there.
    pub field: NodeRef,
    /// Whether the keys are shown.
    pub keys: bool,
    /// Called when they are to be shown or hidden.
    pub toggled: Callback<()>,
    /// Called with the row to go to.
    pub found: Callback<usize>,
}

/// The search and the keys.
#[component]
pub fn DeskTools(props: &Props) -> Html {
    let Props { checks, field, keys, toggled, found: go } = props;
    let search = use_state_eq(String::new);
    let matched = found(checks, &search);
    let oninput = {
        let search = search.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                search.set(field.value());
            }
        })
    };
    let onkeydown = {
        let (search, go) = (search.clone(), go.clone());
        Callback::from(move |event: KeyboardEvent| match event.key().as_str() {
            "Enter" => {
                event.prevent_default();
                if let Some(row) = matched {
                    search.set(String::new());
                    go.emit(row);
                }
            }
            // It goes on to the rows, which take the keyboard back.
            "Escape" => search.set(String::new()),
            _ => {}
        })
    };
    let found = match (search.trim().is_empty(), matched) {
        (true, _) => String::new(),
        (false, Some(row)) => say!("Enter goes to: {check}", check = checks.get(row).map_or("", |check| check.name())),
        (false, None) => say!("No check has that in its name.").to_owned(),
    };
    html! {
        <>
            <div class="quick-tools">
                <div class="quick-search" role="search">
                    <label class="search"><Icon shape={Shape::Search} /><span class="unseen">{ say!("Search for a check") }</span>
                        <input ref={field} type="search" placeholder={say!("Search for a check")} value={(*search).clone()} {oninput} {onkeydown} /></label>
                    <p class="hint" role="status">{ found }</p>
                </div>
                <button type="button" class="ghost" aria-expanded={keys.to_string()} onclick={toggled.reform(|_: MouseEvent| ())}>{ say!("of the keyboard" | "Keys") }</button>
            </div>
            if *keys {
                <dl class="quick-keys card">
                    { for KEYS.iter().map(|(key, what)| html! { <div key={*key}><dt>{ said(key) }</dt><dd>{ said(what) }</dd></div> }) }
                </dl>
            }
        </>
    }
}
