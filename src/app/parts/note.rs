//! A note that is kept when the person leaves the field.

use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Names the field within the page.
    pub id: AttrValue,
    /// The word over the field.
    pub label: AttrValue,
    /// The note as kept.
    pub text: AttrValue,
    /// Called with the note when it changed.
    pub write: Callback<String>,
}

/// A field for a note. What is half-typed stays here; it is kept on leaving the field.
#[component]
pub fn Note(props: &Props) -> Html {
    let onchange = {
        let write = props.write.clone();
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlTextAreaElement>() {
                write.emit(field.value());
            }
        })
    };
    html! {
        <div class="field">
            <label for={&props.id}>{ &props.label }</label>
            <textarea id={&props.id} rows="2" maxlength="2000" value={&props.text} {onchange} />
        </div>
    }
}
