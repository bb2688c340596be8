//! What of the app and of the notes is on this device, and how safely: a card of the settings.

use std::rc::Rc;

use garment_assay::garment::Garment;
use garment_assay::language::one;
use garment_assay::quantity::{Decimal, written};
use garment_assay::say;
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
        Copy::Whole => say!("Ready for use without a network.").to_owned(),
        Copy::Loading => say!("Still loading: not all of the app is on this device yet.").to_owned(),
        Copy::Part(bytes) => say!(
            "Partly ready for use without a network: what you have opened is on this device. The rest comes as you open it, or now; it is at most {megabytes} MB.",
            megabytes = written((bytes as f64 / 1e6).max(0.1), 1, Decimal::spoken())
        ),
        Copy::Failed => {
            say!("This browser keeps no copy yet, because not all files arrived, or there is no room for them. It tries again when the app is next opened.")
                .to_owned()
        }
        Copy::Insecure => say!("This browser keeps no copy, because it does so only for an address that begins with https.").to_owned(),
        Copy::Lacking => say!("This browser keeps no copy, because it has no way to, or because this is a private window.").to_owned(),
    }
}

fn lasting_says(lasting: Lasting) -> Option<&'static str> {
    match lasting {
        Lasting::Unknown => None,
        Lasting::Promised => Some(say!("The browser has promised to keep your notes until you erase them.")),
        Lasting::NotPromised => Some(say!(
            "The browser has not promised to keep your notes: it may throw them away when the device runs short of room, or when you have not come for a while. It may ask you whether you agree."
        )),
        Lasting::CannotBeAsked => Some(say!("This browser promises nothing about your notes. Export now and then.")),
    }
}

/// The card.
#[component]
pub fn OnDevice(props: &Props) -> Html {
    let Props { standing, garments, today, step } = props;
    let on = |wanted: Step| step.reform(move |_: MouseEvent| wanted.clone());
    let exported = standing.keeping.exported().map(|day| say!("Last exported {day}.", day = clock::written_day(day)));
    let unheld = standing.unheld(garments, *today).map(|unheld| {
        let count = unheld.count;
        if one(count) {
            say!("{count} garment is in no export.", count)
        } else {
            say!("{count} garments are in no export.", count)
        }
    });
    let export_said = exported.into_iter().chain(unheld).collect::<Vec<_>>().join(" ");
    html! {
        <section class="card on-device">
            <h2>{ say!("On this device") }</h2>
            <p role="status">{ copy_says(standing.copy) }</p>
            if matches!(standing.copy, Copy::Part(_) | Copy::Failed) {
                <p><button type="button" class="second" onclick={on(Step::FetchRest)}>{ if standing.copy == Copy::Failed { say!("Try again") } else { say!("Load the rest now") } }</button></p>
            }
            { match standing.newer {
                Newer::No => Html::default(),
                Newer::Waiting => html! { <><p>{ say!("A newer version is ready. Your notes stay as they are.") }</p>
                    <p><button type="button" class="second" onclick={on(Step::TakeNewer)}>{ say!("Use it now") }</button></p></> },
                Newer::Coming => html! { <p>{ say!("The newer version is coming: this page loads again by itself.") }</p> },
                Newer::TakenElsewhere => html! { <><p>{ say!("Another window uses a newer version. This one goes on as it was.") }</p>
                    <p><button type="button" class="second" onclick={on(Step::Reload)}>{ say!("Load it again") }</button></p></> },
            } }
            if let Some(says) = lasting_says(standing.lasting) {
                <p>{ says }</p>
            }
            if standing.lasting == Lasting::NotPromised {
                <p><button type="button" class="second" onclick={on(Step::AskPromise)}>{ say!("Ask it to keep my notes") }</button></p>
            }
            if !export_said.is_empty() {
                <p>{ export_said }</p>
            }
        </section>
    }
}
