//! Opening the notes before the app stands: a thousand pages are read in turns, so that the page hears a hand meanwhile.

use std::cell::RefCell;
use std::rc::Rc;

use garment_assay::notebook::{Notebook, Opened};
use gloo::events::EventListener;

use crate::app::browser::document;
use crate::app::browser::shelf::{BrowserShelf, nothing_is_read};
use crate::app::browser::turns::Turns;

/// The notes as they were read, and what happened to them since.
pub struct Read {
    pub notebook: Notebook<BrowserShelf>,
    pub opened: Opened,
    pub heard: Heard,
}

/// What other windows wrote, each a key and its text: a page that they write is not read twice.
#[derive(Default)]
pub struct Heard {
    written: Rc<RefCell<Vec<Written>>>,
    _listener: Option<EventListener>,
}

type Written = (Option<String>, Option<String>);

impl Heard {
    fn new() -> Heard {
        let written: Rc<RefCell<Vec<Written>>> = Rc::default();
        let to = written.clone();
        let _listener = document::on_written_elsewhere(move |key, text| to.borrow_mut().push((key, text)));
        Heard { written, _listener }
    }

    /// All of it, in order.
    pub fn so_far(&self) -> Vec<Written> {
        self.written.take()
    }
}

thread_local! {
    static READ: RefCell<Option<Read>> = const { RefCell::new(None) };
}

/// Reads the notes, for the app to find them when it is made.
pub async fn open() {
    let (heard, turns) = (Heard::new(), Turns::new());
    let pause = async || {
        // Should something else stop the app in between, the page that was read is not to blame.
        nothing_is_read();
        turns.pause().await;
    };
    let (notebook, opened) = Notebook::open_in_turns(BrowserShelf, &pause).await;
    READ.set(Some(Read { notebook, opened, heard }));
}

/// The notes as they were read; where nobody has, they are now.
pub fn taken() -> Read {
    READ.take().unwrap_or_else(|| {
        let (notebook, opened) = Notebook::open(BrowserShelf);
        Read { notebook, opened, heard: Heard::default() }
    })
}
