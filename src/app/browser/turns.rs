//! Long work in turns short enough not to be felt.

use std::cell::Cell;

use gloo::timers::future::TimeoutFuture;
use js_sys::{Array, Uint8Array};

use super::{clock, document};

/// Seconds after which a turn ends. Judgement: a touch that comes meanwhile waits no longer than a frame of the screen.
const LONG_ENOUGH: f64 = 0.012;

/// One long piece of work.
pub struct Turns {
    since: Cell<f64>,
}

/// Begins a piece of work that goes on by itself.
pub fn begin<W: Future<Output = ()> + 'static>(work: impl FnOnce(Turns) -> W) {
    wasm_bindgen_futures::spawn_local(work(Turns::new()));
}

/// Gives the thread back once.
pub async fn breath() {
    if !document::is_hidden() {
        TimeoutFuture::new(0).await;
    }
}

impl Turns {
    /// Begins now.
    pub fn new() -> Turns {
        Turns { since: Cell::new(clock::seconds()) }
    }

    /// Whether this turn has lasted long enough. Out of sight no hand waits, and the browser would wake it a second later.
    fn is_over(&self) -> bool {
        clock::seconds() - self.since.get() >= LONG_ENOUGH && !document::is_hidden()
    }

    /// Gives the thread back if this turn has lasted long enough.
    pub async fn pause(&self) {
        if self.is_over() {
            TimeoutFuture::new(0).await;
            self.since.set(clock::seconds());
        }
    }
}

/// A text that is written piece by piece, each a short piece of work.
pub type Pieces = Box<dyn Iterator<Item = String>>;

/// Writes it in turns; what came of each is handed over. A short text takes one, and is written before this is waited for.
async fn in_turns(pieces: Pieces, mut hand_over: impl FnMut(&str)) {
    let (mut written, turns) = (String::new(), Turns::new());
    for piece in pieces {
        written.push_str(&piece);
        if turns.is_over() {
            hand_over(&written);
            written.clear();
            turns.pause().await;
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
