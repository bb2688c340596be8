//! Whether a finger or a button of the mouse is down: what lies under it must not be exchanged, or the tap is lost.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use gloo::timers::future::TimeoutFuture;

/// Milliseconds after a finger is lifted in which its tap is heard. Judgement.
const TAP_AFTER: u32 = 60;
/// Milliseconds from one look to the next, and how many looks are taken: a button that is let go outside the window is never heard of.
/// Judgement.
const LOOK: u32 = 30;
const LOOKS: u32 = 50;

/// Hears presses on the page until it is dropped.
pub struct Presses {
    under_way: Rc<UnderWay>,
    _listeners: Vec<EventListener>,
}

#[derive(Default)]
struct UnderWay {
    /// Fingers and buttons that are down.
    down: Cell<u32>,
    /// The tap of the last one is still to be heard.
    tap: Cell<bool>,
    timer: RefCell<Option<Timeout>>,
}

impl UnderWay {
    fn pressed(&self) {
        self.down.set(self.down.get() + 1);
    }

    fn lifted(self: &Rc<Self>) {
        self.down.set(self.down.get().saturating_sub(1));
        self.tap.set(true);
        let of = self.clone();
        self.timer.replace(Some(Timeout::new(TAP_AFTER, move || of.tap.set(false))));
    }

    fn is_over(&self) -> bool {
        self.down.get() == 0 && !self.tap.get()
    }
}

impl Presses {
    /// Hears them from now on.
    pub fn new() -> Presses {
        let under_way = Rc::<UnderWay>::default();
        let hear = |name, heard: fn(&Rc<UnderWay>)| {
            let page = web_sys::window()?.document()?;
            let under_way = under_way.clone();
            Some(EventListener::new(&page, name, move |_| heard(&under_way)))
        };
        let listeners = [
            hear("pointerdown", |under_way| under_way.pressed()),
            hear("pointerup", UnderWay::lifted),
            hear("pointercancel", UnderWay::lifted),
        ];
        Presses { _listeners: listeners.into_iter().flatten().collect(), under_way }
    }

    /// Waits until none is under way, a second and a half at most.
    pub async fn over(&self) {
        for _ in 0..LOOKS {
            if self.under_way.is_over() {
                return;
            }
            TimeoutFuture::new(LOOK).await;
        }
    }
}
