//! What of the app and of the notes is on this device, and how safely: a card of the settings.

use std::rc::Rc;

use garment_assay::garment::Garment;
use garment_assay::trade::Day;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::standing::{Copy, Lasting, Newer, Standing, Step};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// How all of it stands.
    pub standing: Standing,
    /// Garments noted.
    pub garments: Vec<Rc<Garment>>,
    /// Today.
    pub today: Day,
    /// Where steps go.
    pub step: Callback<Step>,
}

fn copy_says(copy: Copy) -> String {
    match copy {
        Copy::Whole => "Ready for use without a network.".to_owned(),
        Copy::Loading => "Still loading: not all of the app is on this device yet.".to_owned(),
        Copy::Part(bytes) => format!(
            "Partly ready for use without a network: what you have opened is on this device. The rest comes as you open it, or now; it is at most {:.1} MB.",
            (bytes as f64 / 1e6).max(0.1)
        ),
        Copy::Failed => {
            "This browser keeps no copy yet, because not all files arrived, or there is no room for them. It tries again when the app is next opened."
                .to_owned()
        }
        Copy::Insecure => "This browser keeps no copy, because it does so only for an address that begins with https.".to_owned(),
        Copy::Lacking => "This browser keeps no copy, because it has no way to, or because this is a private window.".to_owned(),
    }
}

fn lasting_says(lasting: Lasting) -> Option<&'static str> {
    match lasting {
        Lasting::Unknown => None,
        Lasting::Promised => Some("The browser has promised to keep your notes until you erase them."),
        Lasting::NotPromised => Some(
            "The browser has not promised to keep your notes: it may throw them away when the device runs short of room, or when you have not come for a while. It may ask you whether you agree.",
        ),
        Lasting::CannotBeAsked => Some("This browser promises nothing about your notes. Export now and then."),
    }
}

/// The card.
#[component]
pub fn OnDevice(props: &Props) -> Html {
    let Props { standing, garments, today, step } = props;
    let on = |wanted: Step| step.reform(move |_: MouseEvent| wanted.clone());
    let exported = standing.keeping.exported().map(|day| format!("Last exported {}. ", clock::written_day(day)));
    let unheld = match standing.unheld(garments, *today) {
        None => None,
        Some(unheld) if unheld.count == 1 => Some("1 garment is in no export.".to_owned()),
        Some(unheld) => Some(format!("{} garments are in no export.", unheld.count)),
    };
    html! {
        <section class="card on-device">
            <h2>{ "On this device" }</h2>
            <p role="status">{ copy_says(standing.copy) }</p>
            if matches!(standing.copy, Copy::Part(_) | Copy::Failed) {
                <p><button type="button" class="second" onclick={on(Step::FetchRest)}>{ if standing.copy == Copy::Failed { "Try again" } else { "Load the rest now" } }</button></p>
            }
            { match standing.newer {
                Newer::No => Html::default(),
                Newer::Waiting => html! { <><p>{ "A newer version is ready. Your notes stay as they are." }</p>
                    <p><button type="button" class="second" onclick={on(Step::TakeNewer)}>{ "Use it now" }</button></p></> },
                Newer::TakenElsewhere => html! { <><p>{ "Another window uses a newer version. This one goes on as it was." }</p>
                    <p><button type="button" class="second" onclick={on(Step::Reload)}>{ "Load it again" }</button></p></> },
            } }
            if let Some(says) = lasting_says(standing.lasting) {
                <p>{ says }</p>
            }
            if standing.lasting == Lasting::NotPromised {
                <p><button type="button" class="second" onclick={on(Step::AskPromise)}>{ "Ask it to keep my notes" }</button></p>
            }
            if exported.is_some() || unheld.is_some() {
                <p>{ exported }{ unheld }</p>
            }
        </section>
    }
}
