//! The browser's local storage as a shelf.

use std::cell::RefCell;

use garment_assay::notebook::{Shelf, ShelfFault};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DomException, Storage};

thread_local! {
    /// The key that was read last, while nothing else was asked of the shelf.
    static LAST_READ: RefCell<String> = const { RefCell::new(String::new()) };
}

fn note_read(key: &str) {
    LAST_READ.with_borrow_mut(|last| {
        last.clear();
        last.push_str(key);
    });
}

/// The key whose text was read last: where a panic comes of a page, it is that page's.
pub fn last_read() -> String {
    LAST_READ.with(|last| last.try_borrow().map(|last| last.clone()).unwrap_or_default())
}

/// What is read last from now on is nobody's page, until the next is read.
pub fn nothing_is_read() {
    note_read("");
}

/// Local storage of this site. Asked for anew each time, since a browser may take the permission away.
#[derive(Clone, Copy, Debug, Default)]
pub struct BrowserShelf;

impl BrowserShelf {
    fn storage() -> Result<Storage, ShelfFault> {
        match web_sys::window().map(|window| window.local_storage()) {
            Some(Ok(Some(storage))) => Ok(storage),
            _ => Err(ShelfFault::Forbidden),
        }
    }
}

fn fault(error: JsValue) -> ShelfFault {
    match error.dyn_ref::<DomException>().map(DomException::name).as_deref() {
        Some("QuotaExceededError" | "NS_ERROR_DOM_QUOTA_REACHED") => ShelfFault::Full,
        Some("SecurityError") => ShelfFault::Forbidden,
        _ => ShelfFault::Broken,
    }
}

impl Shelf for BrowserShelf {
    fn get(&self, key: &str) -> Result<Option<String>, ShelfFault> {
        note_read(key);
        Self::storage()?.get_item(key).map_err(fault)
    }

    fn set(&self, key: &str, text: &str) -> Result<(), ShelfFault> {
        note_read("");
        Self::storage()?.set_item(key, text).map_err(fault)
    }

    fn remove(&self, key: &str) -> Result<(), ShelfFault> {
        Self::storage()?.remove_item(key).map_err(fault)
    }

    fn keys(&self) -> Result<Vec<String>, ShelfFault> {
        note_read("");
        let storage = Self::storage()?;
        let length = storage.length().map_err(fault)?;
        (0..length).filter_map(|index| storage.key(index).map_err(fault).transpose()).collect()
    }
}

/// Whether that text lies under that key.
pub fn says(key: &str, text: &str) -> bool {
    let found = BrowserShelf.get(key);
    nothing_is_read();
    found.is_ok_and(|found| found.as_deref() == Some(text))
}

/// Whether nothing was ever kept here. A storage that cannot be asked is none of which that can be said.
pub fn is_untouched() -> bool {
    BrowserShelf.keys().is_ok_and(|keys| !keys.iter().any(|key| key.starts_with(OURS)))
}

/// What all keys of ours begin with: other apps of the same host may have theirs.
const OURS: &str = "garment-assay/";
