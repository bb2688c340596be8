//! Long work in turns short enough not to be felt.

use std::cell::Cell;

use gloo::timers::future::TimeoutFuture;

use super::clock;

/// Seconds after which a turn gives the thread back: two frames of a screen with sixty a second, less what else a frame needs.
const LONG_ENOUGH: f64 = 0.012;

/// One long piece of work.
pub struct Turns {
    since: Cell<f64>,
}

/// Begins a piece of work that goes on by itself.
pub fn begin<W: Future<Output = ()> + 'static>(work: impl FnOnce(Turns) -> W) {
    wasm_bindgen_futures::spawn_local(work(Turns::new()));
}

impl Turns {
    /// Begins now.
    pub fn new() -> Turns {
        Turns { since: Cell::new(clock::seconds()) }
    }

    /// Gives the thread back if this turn has lasted long enough. Out of sight no hand waits, and the browser would wake it a second later.
    pub async fn pause(&self) {
        if clock::seconds() - self.since.get() < LONG_ENOUGH || super::document::is_hidden() {
            return;
        }
        TimeoutFuture::new(0).await;
        self.since.set(clock::seconds());
    }
}
