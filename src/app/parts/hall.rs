//! What stands where a page will be, while its code is on the way or when it did not come.

use garment_assay::say;
use yew::prelude::*;

use super::bar::Bar;
use crate::app::route::Route;

/// Finds the hall on the page.
pub const HALL: &str = ".hall";

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The code did not come.
    pub missing: bool,
    /// Called to ask for it once more.
    pub again: Callback<()>,
}

/// A heading for the keyboard to stand on, and a word.
#[component]
pub fn Hall(props: &Props) -> Html {
    let onclick = props.again.reform(|_: MouseEvent| ());
    html! {
        <div class="side-room hall" aria-busy={(!props.missing).to_string()}>
            <Bar title={say!("One moment")} back={Route::Rack.href()} back_name={say!("Rack")} />
            if props.missing {
                <section class="card">
                    <p class="fault" role="alert">{ say!("This part of the app did not load. It needs the network once; after that it works without. Your notes are untouched.") }</p>
                    <div class="foot-buttons"><button type="button" class="second" {onclick}>{ say!("Try again") }</button></div>
                </section>
            } else {
                <p class="side-room-wait" role="status">{ say!("Loading this part of the app.") }</p>
            }
        </div>
    }
}
