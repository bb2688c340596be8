//! The copy of the app for use without a network, of which `web/flight.js` tells, and the browser's promise to keep what is noted.

use std::cell::Cell;

use gloo::events::EventListener;
use js_sys::Reflect;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use web_sys::{CustomEvent, CustomEventInit, StorageManager};

use super::room::text;
use crate::app::standing::{Copy, Lasting, Newer, Wish};

const TOLD: &str = "flight-told";
const WISHED: &str = "flight-wished";

/// Calls back when something is told, until the listener is dropped.
pub fn on_told(call: impl Fn(Copy, Newer) + 'static) -> Option<EventListener> {
    let document = web_sys::window()?.document()?;
    Some(EventListener::new(&document, TOLD, move |event| {
        let (copy, newer) = read(&text(event));
        call(copy, newer);
    }))
}

/// Reads what `web/flight.js` tells: two words.
fn read(told: &str) -> (Copy, Newer) {
    let mut words = told.split(' ');
    let copy = match words.next().unwrap_or_default() {
        "whole" => Copy::Whole,
        "failed" => Copy::Failed,
        "none:insecure" => Copy::Insecure,
        "none:lacking" => Copy::Lacking,
        word => word.strip_prefix("part:").and_then(|bytes| bytes.parse().ok()).map_or(Copy::Loading, Copy::Part),
    };
    let newer = match words.next() {
        Some("waiting") => Newer::Waiting,
        Some("coming") => Newer::Coming,
        Some("taken") => Newer::TakenElsewhere,
        _ => Newer::No,
    };
    (copy, newer)
}

/// Says what is wished; the promise is asked for by [`ask_promise`].
pub fn wish(wish: Wish) {
    match wish {
        Wish::TakeNewer => say("take"),
        Wish::Reload => say("reload"),
        Wish::FetchRest => say("rest"),
        Wish::AskPromise => {}
    }
}

/// Asks to be told again, since something may have been told before anyone listened.
pub fn ask() {
    say("tell");
}

fn say(word: &str) {
    let with = CustomEventInit::new();
    with.set_detail(&JsValue::from_str(word));
    let document = web_sys::window().and_then(|window| window.document());
    if let (Some(document), Ok(event)) = (document, CustomEvent::new_with_event_init_dict(WISHED, &with)) {
        let _ = document.dispatch_event(&event);
    }
}

/// Whether the person asked the browser to save data. Not every browser says.
pub fn is_sparing() -> bool {
    let Some(navigator) = web_sys::window().map(|window| window.navigator()) else { return false };
    let got = |of: &JsValue, name: &str| Reflect::get(of, &JsValue::from_str(name)).ok();
    let connection = got(&navigator, "connection").filter(|connection| connection.is_object());
    connection.and_then(|connection| got(&connection, "saveData")).is_some_and(|saves| saves.is_truthy())
}

/// The browser's store, if it has one that can be asked: what it lacks must not be called.
fn store(name: &str) -> Option<StorageManager> {
    let navigator = web_sys::window()?.navigator();
    let has =
        |of: &JsValue, name: &str| Reflect::get(of, &name.into()).is_ok_and(|value| !value.is_undefined() && !value.is_null());
    (has(&navigator, "storage") && has(&navigator.storage(), name)).then(|| navigator.storage())
}

thread_local! {
    /// What the browser had said of its promise before the app stood.
    static AHEAD: Cell<Lasting> = const { Cell::new(Lasting::Unknown) };
}

/// Asks for the browser's promise while the app is on its way, so that a line about it is on the first page from the start: one that came
/// a moment later would push the page away from under a hand.
pub fn ask_ahead() {
    wasm_bindgen_futures::spawn_local(async { AHEAD.set(promise().await) });
}

/// What is known of it by now, without waiting.
pub fn known_promise() -> Lasting {
    AHEAD.get()
}

/// Whether the browser has promised to keep what is noted.
pub async fn promise() -> Lasting {
    let Some(Ok(asked)) = store("persisted").map(|store| store.persisted()) else { return Lasting::CannotBeAsked };
    lasting(JsFuture::from(asked).await)
}

/// Asks the browser for its promise; some ask the person, others decide by themselves.
pub async fn ask_promise() -> Lasting {
    let Some(Ok(asked)) = store("persist").map(|store| store.persist()) else { return Lasting::CannotBeAsked };
    lasting(JsFuture::from(asked).await)
}

fn lasting(answer: Result<JsValue, JsValue>) -> Lasting {
    match answer {
        Ok(answer) if answer.is_truthy() => Lasting::Promised,
        Ok(_) => Lasting::NotPromised,
        Err(_) => Lasting::CannotBeAsked,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_told_is_read_and_what_nobody_tells_is_loading() {
        for (told, read_as) in [
            ("whole current", (Copy::Whole, Newer::No)),
            ("part:1234 waiting", (Copy::Part(1234), Newer::Waiting)),
            ("whole coming", (Copy::Whole, Newer::Coming)),
            ("failed taken", (Copy::Failed, Newer::TakenElsewhere)),
            ("none:insecure current", (Copy::Insecure, Newer::No)),
            ("none:lacking current", (Copy::Lacking, Newer::No)),
            ("loading", (Copy::Loading, Newer::No)),
            ("part:-1", (Copy::Loading, Newer::No)),
            ("", (Copy::Loading, Newer::No)),
        ] {
            assert_eq!(read(told), read_as, "{told}");
        }
    }
}
