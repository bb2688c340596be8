//! Files handed to the person and taken from them; nothing leaves the device.

use garment_assay::archive::looks_like_archive;
use garment_assay::{say, to_say};
use js_sys::{Array, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

use super::photographs::{Opened, Pictures, unpacked};
use super::picture::bytes;
use super::turns::{self, Pieces};

/// What is said where the browser will not save a file.
pub const NOT_SAVED: &str =
    to_say!("The browser would not save the file. Try another browser, or allow downloads for this page.");

/// Offers a short text as a file to save.
pub fn save(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    save_blob(name, &file_of(&Array::of1(&Uint8Array::from(text.as_bytes())), kind)?)
}

/// Writes a text in turns and offers it as a file to save; says whether the browser took it.
pub fn save_in_turns(name: String, kind: &'static str, text: Pieces, then: impl FnOnce(Result<(), JsValue>) + 'static) {
    wasm_bindgen_futures::spawn_local(async move {
        let parts = turns::parts(text).await;
        then(file_of(&parts, kind).and_then(|blob| save_blob(&name, &blob)));
    });
}

fn file_of(parts: &Array, kind: &str) -> Result<Blob, JsValue> {
    let properties = BlobPropertyBag::new();
    properties.set_type(kind);
    Blob::new_with_u8_array_sequence_and_options(parts, &properties)
}

/// Offers a file to save.
pub fn save_blob(name: &str, blob: &Blob) -> Result<(), JsValue> {
    let document = web_sys::window().and_then(|window| window.document()).ok_or(JsValue::NULL)?;
    let url = Url::create_object_url_with_blob(blob)?;
    let link: HtmlAnchorElement = document.create_element("a")?.dyn_into()?;
    link.set_href(&url);
    link.set_download(name);
    link.click();
    // The browser starts to read the blob after this turn of the event loop; a minute is ample.
    gloo::timers::callback::Timeout::new(60_000, move || {
        let _ = Url::revoke_object_url(&url);
    })
    .forget();
    Ok(())
}

/// Largest file that is read: 50 million bytes, some ten thousand garments.
const LARGEST: f64 = 50e6;

/// The text of a file, or none when it cannot be read or is too large to be one of ours.
pub async fn text(file: File) -> Option<String> {
    if file.size() > LARGEST {
        return None;
    }
    wasm_bindgen_futures::JsFuture::from(file.text()).await.ok()?.as_string()
}

/// Largest zip that is read, in bytes: two thousand photographs of 300 KB. It is held in memory while it is read.
const LARGEST_ZIP: f64 = 600e6;

/// Opens an export, alone or in a zip with its photographs.
///
/// # Errors
/// The sentence for why it cannot be read.
pub async fn opened(file: File) -> Result<Opened, String> {
    let refused = || say!("This file cannot be read, or it is far larger than a rack. Nothing was changed.").to_owned();
    let begins = match file.slice_with_i32_and_i32(0, 4) {
        Ok(start) => bytes(&start).await.unwrap_or_default(),
        Err(_) => Vec::new(),
    };
    if !looks_like_archive(&begins) {
        let text = text(file).await.ok_or_else(refused)?;
        return Ok(Opened { text: text.into(), pictures: Pictures::default(), fresh: 0, missing: 0, refused: 0 });
    }
    if file.size() > LARGEST_ZIP {
        return Err(refused());
    }
    let read =
        bytes(&file).await.ok_or_else(|| say!("There is no room to open this zip on this device. Nothing was changed."))?;
    unpacked(&read).await
}
