//! Handing text and files to other programs on this device: the clipboard and the system's own way to share. Each is offered only where
//! the browser has it.

use garment_assay::quantity::Decimal;
use js_sys::{Array, Number, Promise, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DomException, File, FilePropertyBag, Navigator, ShareData};

use super::turns::{self, Pieces};

/// How handing on ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Handed {
    /// It was taken.
    Done,
    /// The person changed their mind.
    Left,
    /// The browser would not.
    Refused,
}

fn navigator() -> Option<Navigator> {
    web_sys::window().map(|window| window.navigator())
}

/// The navigator, if it has a thing of that name: what it lacks must not be called.
fn with(name: &str) -> Option<Navigator> {
    let navigator = navigator()?;
    let value = Reflect::get(&navigator, &name.into()).ok()?;
    (!value.is_undefined() && !value.is_null()).then_some(navigator)
}

fn end(promise: Promise, then: impl FnOnce(Handed) + 'static) {
    wasm_bindgen_futures::spawn_local(async move {
        let handed = match wasm_bindgen_futures::JsFuture::from(promise).await {
            Ok(_) => Handed::Done,
            Err(why) if why.dyn_ref::<DomException>().is_some_and(|why| why.name() == "AbortError") => Handed::Left,
            Err(_) => Handed::Refused,
        };
        then(handed);
    });
}

/// Whether text can be put on the clipboard.
pub fn can_copy() -> bool {
    with("clipboard").is_some()
}

/// Puts text on the clipboard.
pub fn copy(text: &str, then: impl FnOnce(Handed) + 'static) {
    match with("clipboard") {
        Some(navigator) => end(navigator.clipboard().write_text(text), then),
        None => then(Handed::Refused),
    }
}

/// Whether text can be handed to the system.
pub fn can_share_text() -> bool {
    with("share").is_some()
}

/// Hands text to the system.
pub fn share_text(title: &str, text: &str, then: impl FnOnce(Handed) + 'static) {
    let Some(navigator) = with("share") else { return then(Handed::Refused) };
    let data = ShareData::new();
    data.set_title(title);
    data.set_text(text);
    end(navigator.share_with_data(&data), then);
}

fn with_file(name: &str, kind: &str, parts: &Array) -> Option<ShareData> {
    let properties = FilePropertyBag::new();
    properties.set_type(kind);
    let file = File::new_with_u8_array_sequence_and_options(parts, name, &properties).ok()?;
    let data = ShareData::new();
    data.set_files(&JsValue::from(Array::of1(&file)));
    Some(data)
}

/// Whether a file of that name and kind can be handed to the system; browsers take some kinds and refuse others.
pub fn can_share_file(name: &str, kind: &str) -> bool {
    let (Some(navigator), Some(_)) = (with("canShare"), with("share")) else { return false };
    with_file(name, kind, &Array::of1(&Uint8Array::from(&b"x"[..]))).is_some_and(|data| navigator.can_share_with_data(&data))
}

/// Writes text in turns and hands it to the system as a file. Browsers let that be done for some seconds after a touch (from memory); where the writing
/// takes longer they refuse, and that is told.
pub fn share_file(name: String, kind: &'static str, text: Pieces, then: impl FnOnce(Handed) + 'static) {
    wasm_bindgen_futures::spawn_local(async move {
        let parts = turns::parts(text).await;
        match (with("share"), with_file(&name, kind, &parts)) {
            (Some(navigator), Some(data)) => end(navigator.share_with_data(&data), then),
            _ => then(Handed::Refused),
        }
    });
}

/// The decimal sign of the browser's language: a spreadsheet on this device most likely expects the same.
pub fn decimal() -> Decimal {
    let language = navigator().and_then(|navigator| navigator.language()).unwrap_or_default();
    // A tag that is none is refused with an error that would end the program, and a browser on a machine without a language (LANG=C.UTF-8) gives
    // one: "C" (seen in WebKitGTK 2.50).
    let primary = language.split('-').next().unwrap_or_default();
    let is_tag = (2..=8).contains(&primary.len()) && primary.bytes().all(|letter| letter.is_ascii_alphabetic());
    let written = if is_tag { String::from(Number::from(1.5).to_locale_string(&language)) } else { String::new() };
    if written.contains(',') { Decimal::Comma } else { Decimal::Point }
}
