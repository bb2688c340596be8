//! Whether a finger or a button of the mouse is down: what lies under it must not be exchanged, or the tap is lost.

use std::cell::Cell;
use std::rc::Rc;

use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use gloo::timers::future::TimeoutFuture;

/// Milliseconds after a finger is lifted in which its tap is heard. Judgement.
const TAP_AFTER: u32 = 60;
/// Milliseconds from one look to the next, and how many looks are taken: a button that is let go outside the window is never heard of.
const LOOK: u32 = 30;
const LOOKS: u32 = 50;

/// Hears presses on the page until it is dropped.
pub struct Presses {
    under_way: Rc<Cell<bool>>,
    _listeners: Vec<EventListener>,
}

impl Presses {
    /// Hears them from now on.
    pub fn new() -> Presses {
        let under_way = Rc::new(Cell::new(false));
        let Some(page) = web_sys::window().and_then(|window| window.document()) else {
            return Presses { under_way, _listeners: Vec::new() };
        };
        let down = {
            let under_way = under_way.clone();
            EventListener::new(&page, "pointerdown", move |_| under_way.set(true))
        };
        let up = |name| {
            let under_way = under_way.clone();
            EventListener::new(&page, name, move |_| {
                let under_way = under_way.clone();
                Timeout::new(TAP_AFTER, move || under_way.set(false)).forget();
            })
        };
        let _listeners = vec![down, up("pointerup"), up("pointercancel")];
        Presses { under_way, _listeners }
    }

    /// Waits until none is under way, a second and a half at most.
    pub async fn over(&self) {
        for _ in 0..LOOKS {
            if !self.under_way.get() {
                return;
            }
            TimeoutFuture::new(LOOK).await;
        }
    }
}
