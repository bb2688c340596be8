//! A room beside the app: an element in which the second program shows a page. The two speak by events on it, each with a line of text.

use gloo::events::EventListener;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CustomEvent, CustomEventInit, Element, Event};
use yew::NodeRef;

/// What is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Word {
    /// The app: the second program is wanted here, for this errand. `boot.js` hears it and loads the program.
    Wanted,
    /// `boot.js`: it cannot be loaded.
    Failed,
    /// The second program: its page is shown.
    Opened,
    /// The second program: these readings are to be used.
    Used,
    /// The app: the page is left.
    Close,
}

impl Word {
    const fn name(self) -> &'static str {
        match self {
            Word::Wanted => "pictures-wanted",
            Word::Failed => "pictures-failed",
            Word::Opened => "pictures-opened",
            Word::Used => "pictures-used",
            Word::Close => "pictures-close",
        }
    }
}

/// The element.
#[derive(Clone, Debug, PartialEq)]
pub struct Room(pub Element);

impl Room {
    /// The room that a part of the page is.
    pub fn of(part: &NodeRef) -> Option<Room> {
        part.cast().map(Room)
    }

    /// Says something in the room; whoever listens hears it before this returns.
    pub fn say(&self, word: Word, text: &str) {
        let with = CustomEventInit::new();
        with.set_bubbles(true);
        with.set_detail(&JsValue::from_str(text));
        if let Ok(event) = CustomEvent::new_with_event_init_dict(word.name(), &with) {
            let _ = self.0.dispatch_event(&event);
        }
    }

    /// Calls back when something is said in the room, until the listener is dropped.
    pub fn on(&self, word: Word, call: impl Fn(String) + 'static) -> EventListener {
        EventListener::new(&self.0, word.name(), move |event| call(text(event)))
    }
}

/// The text that goes with what is said.
pub fn text(event: &Event) -> String {
    event.dyn_ref::<CustomEvent>().and_then(|event| event.detail().as_string()).unwrap_or_default()
}
