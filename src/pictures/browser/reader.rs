//! The second thread that reads pictures: started when a picture is opened, asked, stopped.

use std::cell::RefCell;
use std::rc::{Rc, Weak};

use garment_assay::say;
use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use js_sys::{Float64Array, Object, Reflect};
use photo::{Answer, Ask, asked};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{MessageEvent, Worker, WorkerOptions, WorkerType};

use super::pictures::Picture;

/// After so long a person wants to know that something is going on.
const SLOW_MS: u32 = 1000;

/// What the reader tells.
#[derive(Clone, Debug, PartialEq)]
pub enum Told {
    /// It takes longer than a second.
    Slow,
    /// The answer.
    Answered(Box<Answer>),
    /// There is none.
    Failed(ReadFault),
}

/// Why a picture is not read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReadFault {
    /// This browser has no second threads, or no canvas in them.
    TooOld,
    /// The program that reads pictures did not load.
    NotLoaded,
    /// The file is not a picture that this browser can decode.
    NoPicture,
    /// The picture does not fit into memory.
    Memory,
    /// The reader stopped at something unexpected.
    Stopped,
}

impl ReadFault {
    /// What is wrong and what to do.
    pub fn sentence(self) -> &'static str {
        match self {
            ReadFault::TooOld => {
                say!(
                    "This browser cannot read pictures beside the page. Chrome 97, Firefox 114 or Safari 16.4, or any later one, can. Count with the ruler on the screen instead."
                )
            }
            ReadFault::NotLoaded => {
                say!(
                    "The part that reads pictures did not load. Load the page again while there is a network; after that it works without one."
                )
            }
            ReadFault::NoPicture => {
                say!("This browser cannot open that file as a picture. Take one with the camera, or choose a JPEG or PNG.")
            }
            ReadFault::Memory => say!("There is not enough memory for this picture. Close other tabs, or take it smaller."),
            ReadFault::Stopped => say!("Reading stopped at something unexpected. Your marks are kept. Try again."),
        }
    }
}

/// A question that is not answered yet.
struct Open {
    id: u32,
    numbers: Vec<f64>,
    sent: bool,
    tell: Box<dyn Fn(Told)>,
    _slow: Timeout,
}

#[derive(Default)]
struct Inner {
    worker: Option<(Worker, Vec<EventListener>)>,
    picture: Option<Picture>,
    /// The thread holds the picture.
    loaded: bool,
    fault: Option<ReadFault>,
    last: u32,
    open: Option<Open>,
}

/// Holds the second thread; it ends with the last handle.
#[derive(Clone, Default)]
pub struct Reader(Rc<RefCell<Inner>>);

impl PartialEq for Reader {
    fn eq(&self, other: &Reader) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl Drop for Inner {
    fn drop(&mut self) {
        if let Some((worker, _)) = self.worker.take() {
            worker.terminate();
        }
    }
}

impl Reader {
    /// Takes a picture up, so that it is decoded while a person sets marks. The thread is a new one: the memory of the last picture goes back.
    pub fn open(&self, picture: &Picture) {
        let mut inner = self.0.borrow_mut();
        inner.end();
        inner.picture = Some(picture.clone());
        inner.start(Rc::downgrade(&self.0));
    }

    /// Asks about the picture; an earlier question that is still open is dropped.
    pub fn ask(&self, ask: &Ask, tell: impl Fn(Told) + 'static) {
        let numbers = asked(ask);
        let failed = {
            let mut inner = self.0.borrow_mut();
            inner.last += 1;
            if inner.worker.is_none() {
                inner.fault = None;
                inner.start(Rc::downgrade(&self.0));
            }
            let weak = Rc::downgrade(&self.0);
            let id = inner.last;
            let slow = Timeout::new(SLOW_MS, move || told(&weak, id, || Told::Slow));
            match inner.fault {
                Some(fault) => Some((tell, fault)),
                None => {
                    inner.open = Some(Open { id, numbers, sent: false, tell: Box::new(tell), _slow: slow });
                    inner.send_question();
                    None
                }
            }
        };
        if let Some((tell, fault)) = failed {
            tell(Told::Failed(fault));
        }
    }

    /// Drops the question that is open; its answer, should it come, is told to nobody.
    pub fn drop_question(&self) {
        self.0.borrow_mut().open = None;
    }

    /// Ends the thread at once; the next question starts a new one with the same picture.
    pub fn stop(&self) {
        self.0.borrow_mut().end();
    }
}

/// Tells whoever asked, without holding on to the reader meanwhile: a question may follow from the answer.
fn told(inner: &Weak<RefCell<Inner>>, id: u32, what: impl FnOnce() -> Told) {
    let Some(inner) = inner.upgrade() else { return };
    let what = what();
    let open = {
        let mut inner = inner.borrow_mut();
        if inner.open.as_ref().is_none_or(|open| open.id != id) {
            return;
        }
        inner.open.take()
    };
    let Some(open) = open else { return };
    let slow = what == Told::Slow;
    (open.tell)(what);
    let mut inner = inner.borrow_mut();
    if slow && inner.open.is_none() && inner.worker.is_some() {
        inner.open = Some(open);
    }
}

fn field(message: &JsValue, name: &str) -> Option<JsValue> {
    Reflect::get(message, &name.into()).ok().filter(|value| !value.is_undefined())
}

impl Inner {
    fn start(&mut self, weak: Weak<RefCell<Inner>>) {
        if !Reflect::has(&js_sys::global(), &"Worker".into()).unwrap_or(false) {
            self.fault = Some(ReadFault::TooOld);
            return;
        }
        let options = WorkerOptions::new();
        options.set_type(WorkerType::Module);
        let Ok(worker) = Worker::new_with_options("worker.js", &options) else {
            self.fault = Some(ReadFault::NotLoaded);
            return;
        };
        let heard = {
            let weak = weak.clone();
            EventListener::new(&worker, "message", move |event| {
                if let Some(message) = event.dyn_ref::<MessageEvent>() {
                    heard(&weak, &message.data());
                }
            })
        };
        let broken = EventListener::new(&worker, "error", move |_| failed(&weak, ReadFault::NotLoaded));
        self.worker = Some((worker, vec![heard, broken]));
        self.loaded = false;
    }

    fn end(&mut self) {
        if let Some((worker, _)) = self.worker.take() {
            worker.terminate();
        }
        (self.loaded, self.open, self.fault) = (false, None, None);
    }

    fn post(&self, fields: &[(&str, JsValue)]) {
        let message = Object::new();
        for (name, value) in fields {
            let _ = Reflect::set(&message, &(*name).into(), value);
        }
        if let Some((worker, _)) = &self.worker {
            let _ = worker.post_message(&message);
        }
    }

    fn send_picture(&mut self) {
        self.last += 1;
        if let Some(picture) = self.picture.clone() {
            let [width, height] = picture.size();
            // A file is handed over by name, not by its bytes.
            self.post(&[
                ("id", self.last.into()),
                ("picture", picture.blob().clone().into()),
                ("width", width.into()),
                ("height", height.into()),
            ]);
        }
    }

    fn send_question(&mut self) {
        if !self.loaded {
            return;
        }
        if let Some((id, numbers)) = self.open.as_mut().filter(|open| !open.sent).map(|open| {
            open.sent = true;
            (open.id, Float64Array::from(open.numbers.as_slice()))
        }) {
            self.post(&[("id", id.into()), ("ask", numbers.into())]);
        }
    }
}

fn heard(weak: &Weak<RefCell<Inner>>, message: &JsValue) {
    let Some(inner) = weak.upgrade() else { return };
    let id = field(message, "id").and_then(|id| id.as_f64()).map_or(0, |id| id as u32);
    if field(message, "failed").is_some() {
        failed(weak, ReadFault::NotLoaded);
    } else if field(message, "ready").is_some() {
        inner.borrow_mut().send_picture();
    } else if field(message, "loaded").is_some() {
        let mut inner = inner.borrow_mut();
        inner.loaded = true;
        inner.send_question();
    } else if let Some(numbers) = field(message, "answer").and_then(|numbers| numbers.dyn_into::<Float64Array>().ok()) {
        told(weak, id, || match photo::heard(&numbers.to_vec()) {
            Some(answer) => Told::Answered(Box::new(answer)),
            None => Told::Failed(ReadFault::Stopped),
        });
    } else if let Some(word) = field(message, "fault").and_then(|word| word.as_string()) {
        failed(
            weak,
            match word.as_str() {
                "canvas" => ReadFault::TooOld,
                "picture" => ReadFault::NoPicture,
                "memory" => ReadFault::Memory,
                _ => ReadFault::Stopped,
            },
        );
    }
}

/// Notes what went wrong, ends the thread, and tells whoever asked. The next question begins anew.
fn failed(weak: &Weak<RefCell<Inner>>, fault: ReadFault) {
    let Some(inner) = weak.upgrade() else { return };
    let open = {
        let mut inner = inner.borrow_mut();
        let open = inner.open.take();
        inner.end();
        inner.fault = Some(fault).filter(|_| open.is_none());
        open
    };
    if let Some(open) = open {
        (open.tell)(Told::Failed(fault));
    }
}
