//! Opening the notes before the app stands: a thousand pages are read in turns, so that the page hears a hand meanwhile.

use std::cell::RefCell;
use std::cmp::Reverse;
use std::rc::Rc;

use garment_assay::garment::Garment;
use garment_assay::notebook::{Notebook, Opened};
use gloo::events::EventListener;

use crate::app::appraisals::Appraisals;
use crate::app::browser::shelf::{BrowserShelf, nothing_is_read};
use crate::app::browser::turns::Turns;
use crate::app::browser::{address, clock, document};
use crate::app::pages::rack::PAGE;
use crate::app::route::Route;

/// The notes as they were read, and what happened to them since.
pub struct Read {
    pub notebook: Notebook<BrowserShelf>,
    /// All that was found but the garments.
    pub opened: Opened,
    pub garments: Vec<Rc<Garment>>,
    /// Of those that the rack shows at first.
    pub appraisals: Appraisals,
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
    let (notebook, mut opened) = Notebook::open_in_turns(BrowserShelf, &pause).await;
    let garments = shared(&mut opened);
    if !garments.is_empty() {
        clock::make_ready();
        pause().await;
    }
    let appraisals = Appraisals::default();
    if Route::parse(&address::hash()) == Route::Rack {
        let mut newest: Vec<&Rc<Garment>> = garments.iter().filter(|garment| !garment.archived()).collect();
        newest.sort_by_key(|garment| Reverse((garment.noted(), garment.id())));
        // What the rack shows at first.
        for garment in newest.into_iter().take(PAGE) {
            appraisals.of(garment);
            pause().await;
        }
    }
    READ.set(Some(Read { notebook, opened, garments, appraisals, heard }));
}

/// The notes as they were read; where nobody has, they are now.
pub fn taken() -> Read {
    READ.take().unwrap_or_else(|| {
        let (notebook, mut opened) = Notebook::open(BrowserShelf);
        let garments = shared(&mut opened);
        Read { notebook, opened, garments, appraisals: Appraisals::default(), heard: Heard::default() }
    })
}

/// The garments that were read, to be shared from now on.
fn shared(opened: &mut Opened) -> Vec<Rc<Garment>> {
    std::mem::take(&mut opened.garments).into_iter().map(Rc::new).collect()
}
