//! Work that would keep the page from a hand for long, done in turns: after each the page has its own.

use js_sys::{Array, Date, Promise, Uint8Array};
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

use super::document;

/// Milliseconds after which a turn ends. Judgement: a touch that comes meanwhile waits no longer than a frame, and a thousand garments take
/// some ten turns.
const TURN: f64 = 12.0;

/// A text that is written piece by piece, each a short piece of work.
pub type Pieces = Box<dyn Iterator<Item = String>>;

/// Lets the page have its turn. Out of sight it is waited for no longer: turns would come a second apart there.
pub async fn breath() {
    if document::is_hidden() {
        return;
    }
    let wait = Promise::new(&mut |resolve, _| {
        let end = move || drop(resolve.call0(&JsValue::NULL));
        gloo::timers::callback::Timeout::new(0, end).forget();
    });
    // It is never refused.
    let _ = JsFuture::from(wait).await;
}

/// Writes it in turns; what came of each is handed over. A short text takes one, and is written before this is waited for.
async fn in_turns(pieces: Pieces, mut hand_over: impl FnMut(&str)) {
    let mut written = String::new();
    let mut begun = Date::now();
    for piece in pieces {
        written.push_str(&piece);
        if Date::now() - begun >= TURN {
            hand_over(&written);
            written.clear();
            breath().await;
            begun = Date::now();
        }
    }
    hand_over(&written);
}

/// The text as parts of a file.
pub async fn parts(pieces: Pieces) -> Array {
    let parts = Array::new();
    let put = |text: &str| {
        parts.push(&Uint8Array::from(text.as_bytes()));
    };
    in_turns(pieces, put).await;
    parts
}

/// Writes the text, and hands it over as one.
pub fn write(pieces: Pieces, then: impl FnOnce(String) + 'static) {
    wasm_bindgen_futures::spawn_local(async move { then(text(pieces).await) });
}

/// The text as one.
pub async fn text(pieces: Pieces) -> String {
    let mut whole = String::new();
    in_turns(pieces, |text| whole.push_str(text)).await;
    whole
}
