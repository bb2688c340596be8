//! The field for the name of a collection, with those that there are offered as one types.

use garment_assay::garment::Garment;
use web_sys::HtmlInputElement;
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Names the field within the page.
    pub id: AttrValue,
    /// The word over the field.
    pub label: AttrValue,
    /// The line under it.
    #[prop_or_default]
    pub hint: AttrValue,
    /// The name as it is.
    pub name: AttrValue,
    /// The collections that there are.
    pub known: Vec<String>,
    /// The word on the button; without one the name is taken on leaving the field.
    #[prop_or_default]
    pub button: Option<AttrValue>,
    /// Called with the name.
    pub chosen: Callback<String>,
}

/// One field; any name that is new makes a collection.
#[component]
pub fn CollectionField(props: &Props) -> Html {
    let Props { id, label, hint, name, known, button, chosen } = props;
    let field = use_node_ref();
    let onchange = {
        let chosen = chosen.clone();
        let at_once = button.is_none();
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>().filter(|_| at_once) {
                chosen.emit(field.value().trim().to_owned());
            }
        })
    };
    let onsubmit = {
        let (chosen, field) = (chosen.clone(), field.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            if let Some(field) = field.cast::<HtmlInputElement>() {
                chosen.emit(field.value().trim().to_owned());
            }
        })
    };
    let list = format!("{id}-known");
    let hint_id = format!("{id}-hint");
    let inside = html! {
        <div class="field">
            <label for={id}>{ label }</label>
            <input ref={field} {id} list={list.clone()} autocomplete="off" maxlength={Garment::LONGEST_NAME.to_string()} value={name} {onchange}
                aria-describedby={(!hint.is_empty()).then(|| hint_id.clone())} />
            <datalist id={list}>{ for known.iter().map(|name| html! { <option key={name.as_str()} value={name.clone()} /> }) }</datalist>
            if !hint.is_empty() {
                <p class="hint" id={hint_id}>{ hint }</p>
            }
        </div>
    };
    match button {
        None => inside,
        Some(word) => {
            html! { <form class="collection-form" {onsubmit}>{ inside }<button type="submit" class="second">{ word }</button></form> }
        }
    }
}
