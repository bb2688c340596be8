//! The language that the page speaks: which it is, and where its messages come from.

use std::cell::RefCell;

use garment_assay::language::{ENTRANCE, FILES, Language, Messages, speak};

use super::shipped;

/// Where a person's choice is kept; nothing there means as the browser is set. `web/boot.js` reads it before anything else is loaded.
const CHOICE: &str = "garment-assay/language";

thread_local! {
    /// Messages that came so far.
    static HERE: RefCell<Messages> = RefCell::default();
}

/// The language of the page, as `web/boot.js` found it: the person's choice, or the browser's first that the app speaks.
pub fn of_page() -> Language {
    let root = web_sys::window().and_then(|window| window.document()).and_then(|document| document.document_element());
    root.and_then(|root| root.get_attribute("lang")).as_deref().and_then(Language::of_tag).unwrap_or_default()
}

/// What stands before the name of a file that is in one language: nothing in English.
pub fn folder() -> String {
    match of_page() {
        Language::English => String::new(),
        language => format!("{}/", language.tag()),
    }
}

/// Asks for what the entrance says; whether it came.
pub fn bring_entrance() -> impl Future<Output = bool> {
    bring(&[ENTRANCE])
}

/// Asks for all else that is said; whether it came.
pub fn bring_all() -> impl Future<Output = bool> {
    bring(&FILES)
}

/// Asks for message files, all at once; reads each by itself, so that the page never stands still for long, and speaks by all that came.
fn bring(files: &[&str]) -> impl Future<Output = bool> + use<> {
    let language = of_page();
    let is_source = language == Language::English;
    let files = if is_source { &[] } else { files };
    let asked: Vec<_> = files.iter().map(|file| shipped::asked(&format!("./language/{}/{file}.po", language.tag()))).collect();
    async move {
        let mut came = true;
        for answer in asked {
            match shipped::text(answer).await.and_then(|text| Messages::read(&text).ok()) {
                Some(messages) => HERE.with_borrow_mut(|here| here.join(messages)),
                None => came = false,
            }
        }
        if !is_source {
            speak(language, HERE.with_borrow(Clone::clone));
        }
        came
    }
}

/// The language that a person chose; none for as the browser is set.
pub fn chosen() -> Option<Language> {
    Language::of_tag(&storage()?.get_item(CHOICE).ok()??)
}

/// Keeps a choice and loads the page anew in that language. Whether it was kept.
pub fn choose(language: Option<Language>) -> bool {
    let Some(storage) = storage() else { return false };
    let kept = match language {
        Some(language) => storage.set_item(CHOICE, language.tag()),
        None => storage.remove_item(CHOICE),
    };
    // A page that cannot be loaded anew goes on in the language that it has.
    kept.is_ok() && web_sys::window().is_some_and(|window| window.location().reload().is_ok())
}

fn storage() -> Option<web_sys::Storage> {
    web_sys::window()?.local_storage().ok()?
}
