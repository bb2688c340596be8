//! The switch between new and second-hand.

use garment_assay::say;
use web_sys::HtmlInputElement;
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Whether it is second-hand.
    pub on: bool,
    /// Takes the choice.
    pub chosen: Callback<bool>,
}

/// One tick: most garments are new, and nothing has to be said of those.
#[component]
pub fn WornSwitch(props: &Props) -> Html {
    let chosen = props.chosen.clone();
    let onchange = Callback::from(move |event: Event| {
        if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
            chosen.emit(field.checked());
        }
    });
    html! {
        <label class="tick"><input type="checkbox" checked={props.on} {onchange} /><span>{ say!("Second-hand: also ask what wear has left") }</span></label>
    }
}
