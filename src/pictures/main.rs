//! The second program: the pages for camera and pictures. It is loaded when the first of them is opened, and shows each in a room that
//! the main program gives it.

mod browser;
mod pages;
mod parts;
// This program needs a part of them only. The main program is checked for what nobody uses.
#[allow(dead_code)]
mod shared;

use std::cell::RefCell;
use std::rc::Rc;

use garment_assay::garment::{Errand, Readings};
use yew::AppHandle;
use yew::prelude::*;

use browser::door;
use pages::live::LiveComb;
use pages::picture::PicturePage;
use parts::picture_job::Job;
use shared::document;
use shared::language;
use shared::means::Means;
use shared::room::{Room, Word};

#[derive(Properties, PartialEq)]
struct Props {
    /// What the page is opened for.
    errand: Errand,
    /// Where it is shown.
    room: Room,
}

/// The page that an errand asks for.
#[component]
fn Pictures(props: &Props) -> Html {
    let Errand { instrument, system, back, check, kept } = props.errand.clone();
    {
        let room = props.room.clone();
        use_effect_with((), move |()| room.say(Word::Opened, ""));
    }
    let used = {
        let room = props.room.clone();
        use_callback((), move |readings: Readings, ()| room.say(Word::Used, &readings.spoken()))
    };
    let (back, check) = (AttrValue::from(back), check.map(AttrValue::from));
    match (Means::of(instrument), Job::of(instrument)) {
        (Means::Camera, _) => html! { <LiveComb {system} {back} {check} {kept} {used} /> },
        (_, Some(job)) => html! { <PicturePage {job} {system} {back} for_check={check.is_some()} {used} /> },
        _ => Html::default(),
    }
}

/// Nothing at all.
#[component]
fn Nothing() -> Html {
    Html::default()
}

fn main() {
    yew::set_custom_panic_hook(Box::new(|info| document::say_crash(&info.to_string(), "")));
    // A renderer numbers its roots, from 1 on, and marks elements with the number to tell whose event it is. The main program's only root
    // has the 1, and its elements lie around ours: with a 1 of our own it would take our events for its.
    if let Some(nowhere) = door::nowhere() {
        yew::Renderer::<Nothing>::with_root(nowhere.0).render().destroy();
    }
    door::on_wanted(|room, words| {
        let Some(errand) = Errand::heard(&words) else { return room.say(Word::Failed, "") };
        wasm_bindgen_futures::spawn_local(open(room, errand));
    });
}

/// Shows the page that an errand asks for in a room, once its words are here.
async fn open(room: Room, errand: Errand) {
    let page = Rc::new(RefCell::new(Page::OnItsWay));
    let closed = page.clone();
    // With the page go its camera and its second thread.
    room.on(Word::Close, move |_| {
        if let Page::Shown(shown) = closed.replace(Page::Left) {
            shown.destroy();
        }
    })
    .forget();
    if !language::bring_all().await {
        return room.say(Word::Failed, "");
    }
    if matches!(*page.borrow(), Page::OnItsWay) {
        let props = Props { errand, room: room.clone() };
        page.replace(Page::Shown(yew::Renderer::<Pictures>::with_root_and_props(room.0.clone(), props).render()));
    }
}

/// Where a page is between being asked for and being left.
enum Page {
    /// Its words are awaited.
    OnItsWay,
    /// It is shown.
    Shown(AppHandle<Pictures>),
    /// It was left.
    Left,
}
