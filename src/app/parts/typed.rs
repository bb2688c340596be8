//! A field for one amount, kept when the person leaves it; what cannot be taken says why and changes nothing.

use web_sys::HtmlInputElement;
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Names the field within the page.
    pub id: AttrValue,
    /// The word over the field.
    pub label: AttrValue,
    /// A line under it.
    #[prop_or_default]
    pub hint: AttrValue,
    /// The amount as kept.
    pub kept: AttrValue,
    /// Called with each change while it is being typed; the caller then hands the text back as `kept`.
    #[prop_or_default]
    pub typing: Callback<String>,
    /// Takes what was typed, or says why it cannot.
    pub write: Callback<String, Result<(), String>>,
}

/// The field.
#[component]
pub fn Typed(props: &Props) -> Html {
    let Props { id, label, hint, kept, typing, write } = props;
    let fault = use_state_eq(|| None::<String>);
    let onchange = {
        let (fault, write) = (fault.clone(), write.clone());
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                fault.set(write.emit(field.value()).err());
            }
        })
    };
    let oninput = {
        let typing = typing.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                typing.emit(field.value());
            }
        })
    };
    let said = format!("{id}-said");
    html! {
        <div class="field">
            <label for={id}>{ label }</label>
            <input {id} inputmode="decimal" autocomplete="off" value={kept} {oninput} {onchange} aria-invalid={fault.is_some().to_string()}
                aria-describedby={(fault.is_some() || !hint.is_empty()).then_some(said.clone())} />
            if let Some(fault) = fault.as_ref() {
                <p class="fault" id={said} role="alert">{ fault }</p>
            } else if !hint.is_empty() {
                <p class="hint" id={said}>{ hint }</p>
            }
        </div>
    }
}
