//! The entrance: what a first visitor sees, before anything that deals with garments is loaded. The house (the app itself) takes its place as
//! soon as it is wanted, and soon after the page is on the screen in any case; both show the same empty rack.

use std::rc::Rc;

use garment_assay::language::said;
use garment_assay::say;
use gloo::timers::callback::Timeout;
use yew::prelude::*;

use super::browser::press::Presses;
use super::browser::turns::breath;
use super::browser::{address, document, flight, language, shelf};
use super::parts::empty_rack::{EmptyRack, NOTHING_YET, RackBar};
use super::parts::hall::Hall;
use super::wings;

/// Milliseconds from the first page to the fetching of the house, so that the page has the line to itself.
const AFTER_THE_FIRST_PAGE: u32 = 1000;

/// Whether nobody noted or chose anything in this browser, and the address asks for nothing but the rack.
pub fn is_first_visit() -> bool {
    shelf::is_untouched() && at_the_rack()
}

/// Brings the house; says so on the page when it does not come. Whether it came.
pub async fn bring_house() -> bool {
    flight::ask_ahead();
    let is_here = house_and_words().await;
    if !is_here {
        document::say_not_loaded();
    }
    is_here
}

/// Brings the house and what it says, both at once. Whether both came.
async fn house_and_words() -> bool {
    let words = language::bring_all();
    breath().await;
    let is_here = wings::bring_house().await && words.await;
    breath().await;
    is_here
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The house is here already.
    pub is_here: bool,
}

/// How far the house is.
#[derive(Clone, Copy, PartialEq)]
enum House {
    /// Not asked for.
    Away,
    /// On its way.
    Coming,
    /// Here.
    Here,
    /// It did not come.
    Missing,
}

/// The entrance, or the house once it is here.
#[component]
pub fn Entrance(props: &Props) -> Html {
    let house = use_state_eq(|| if props.is_here { House::Here } else { House::Away });
    // Somebody opened a page of it, and waits.
    let waits = use_state_eq(|| false);
    let invented = use_state_eq(|| None::<AttrValue>);
    let asked = use_mut_ref(|| props.is_here);
    let presses = use_mut_ref(|| (!props.is_here).then(|| Rc::new(Presses::new())));
    let bring = {
        let house = house.setter();
        use_callback((), move |(), ()| {
            if asked.replace(true) {
                return;
            }
            let (house, asked, presses) = (house.clone(), asked.clone(), presses.clone());
            house.set(House::Coming);
            wasm_bindgen_futures::spawn_local(async move {
                let is_here = house_and_words().await;
                let heard = presses.borrow().clone();
                if let Some(presses) = heard {
                    presses.over().await;
                }
                if is_here {
                    presses.take();
                }
                asked.replace(is_here);
                let focused = document::focused_link();
                house.set(if is_here { House::Here } else { House::Missing });
                // The house has the same links; the keyboard stays on the one that it was on, or goes to the page that was opened.
                let hand_on =
                    move || if at_the_rack() { document::focus_link(focused.as_deref()) } else { document::focus_heading() };
                Timeout::new(0, hand_on).forget();
            });
        })
    };
    {
        let is_here = props.is_here;
        use_effect_with((), move |()| {
            document::set_root("ready", "yes");
            if !is_here {
                document::set_title(say!("Rack · Garment Assay"));
            }
        });
    }
    {
        let (bring, waits) = (bring.clone(), waits.setter());
        // Only as long as the house is away: once it is here, what happens is for it to hear.
        use_effect_with(*house == House::Here, move |is_here| {
            let listening = (!is_here).then(|| {
                let quietly = {
                    let bring = bring.clone();
                    Timeout::new(AFTER_THE_FIRST_PAGE, move || bring.emit(()))
                };
                let opened = {
                    let bring = bring.clone();
                    address::on_change(move || {
                        waits.set(!at_the_rack());
                        bring.emit(());
                        Timeout::new(0, document::focus_heading).forget();
                    })
                };
                (quietly, opened, document::on_written_elsewhere(move |_, _| bring.emit(())))
            });
            move || drop(listening)
        });
    }
    if *house == House::Here
        && let Some(page) = wings::at_once(wings::house((*invented).clone()), |_| ())
    {
        return page;
    }
    let again = {
        let bring = bring.clone();
        Callback::from(move |()| {
            document::focus_heading();
            bring.emit(());
        })
    };
    let came = {
        let (invented, waits) = (invented.setter(), waits.setter());
        Callback::from(move |file: String| {
            invented.set(Some(file.into()));
            waits.set(true);
            bring.emit(());
        })
    };
    html! {
        <div class="desk" data-beside="none">
            <main id="main" data-screen="rack">
                if *waits {
                    <Hall missing={*house == House::Missing} {again} />
                } else {
                    <RackBar counted={said(NOTHING_YET)} />
                    <EmptyRack {came} />
                }
            </main>
        </div>
    }
}

fn at_the_rack() -> bool {
    matches!(address::hash().as_str(), "" | "#" | "#/")
}
