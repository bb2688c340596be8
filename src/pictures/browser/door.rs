//! The door of this program: where it hears that it is wanted.

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use web_sys::{Document, Element};

use crate::shared::room::{Room, text};

/// What `boot.js` says in a room once this program is loaded, with the errand.
const OPEN: &str = "pictures-open";

fn document() -> Option<Document> {
    web_sys::window()?.document()
}

/// Calls back for each room that this program is wanted in, with the errand, for as long as the page stands.
pub fn on_wanted(call: impl Fn(Room, String) + 'static) {
    let Some(document) = document() else { return };
    let listening = EventListener::new(&document, OPEN, move |event| {
        if let Some(room) = event.target().and_then(|target| target.dyn_into::<Element>().ok()) {
            call(Room(room), text(event));
        }
    });
    listening.forget();
}

/// A room that stands in no page.
pub fn nowhere() -> Option<Room> {
    document()?.create_element("div").ok().map(Room)
}
