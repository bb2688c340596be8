//! The part of the address after `#`, and going from screen to screen.

use gloo::events::EventListener;

/// What stands after `#` now.
pub fn hash() -> String {
    web_sys::window().and_then(|window| window.location().hash().ok()).unwrap_or_default()
}

/// Opens a screen as a new step of the history.
pub fn open(href: &str) {
    if let Some(window) = web_sys::window() {
        let _ = window.location().set_hash(href);
    }
}

/// Opens a screen in place of the one that is open, so that "back" does not return to it.
pub fn replace(href: &str) {
    if let Some(window) = web_sys::window() {
        let _ = window.location().replace(href);
    }
}

/// Calls back whenever the address changes, until the listener is dropped.
pub fn on_change(call: impl Fn() + 'static) -> Option<EventListener> {
    web_sys::window().map(|window| EventListener::new(&window, "hashchange", move |_| call()))
}
