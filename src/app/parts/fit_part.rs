//! One part of the fitting room: its name, how far it has come, and what is in it once it is open. From its end the next one opens.

use garment_assay::say;
use yew::prelude::*;

use crate::app::browser::document;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Names the part within the page.
    pub id: AttrValue,
    /// Its name.
    pub title: AttrValue,
    /// How far it has come, in a few words.
    pub state: AttrValue,
    /// Whether it is open.
    pub open: bool,
    /// Changes when it is to be brought to the top of the window.
    pub sought: u32,
    /// Called to open or to close it.
    pub toggle: Callback<()>,
    /// Name of the part after it.
    #[prop_or_default]
    pub next: Option<AttrValue>,
    /// Called to go on to that one.
    pub onward: Callback<()>,
    /// What is in it.
    #[prop_or_default]
    pub children: Html,
}

/// The part.
#[component]
pub fn FitPart(props: &Props) -> Html {
    let Props { id, title, state, open, sought, toggle, next, onward, children } = props;
    let head = use_node_ref();
    {
        let head = head.clone();
        use_effect_with(*sought, move |sought| {
            if *sought > 0 {
                document::bring_up(&head);
            }
        });
    }
    // The element would open itself as well, and what is shown is told by the page.
    let onclick = toggle.reform(|event: MouseEvent| event.prevent_default());
    let go_on = onward.reform(|_: MouseEvent| ());
    html! {
        <details {id} class="card rate-group fit-part" open={*open}>
            <summary ref={head} {onclick}><h2>{ title }</h2><small>{ state }</small></summary>
            if *open {
                <div class="fit-part-in">
                    { children.clone() }
                    if let Some(next) = next {
                        <button type="button" class="second fit-next" onclick={go_on}>{ say!("Next: {part}", part = next) }</button>
                    }
                </div>
            }
        </details>
    }
}
