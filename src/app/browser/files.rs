//! Files handed to the person and taken from them; nothing leaves the device.

use js_sys::Array;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

/// Offers text as a file to save.
pub fn save(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    let document = web_sys::window().and_then(|window| window.document()).ok_or(JsValue::NULL)?;
    let properties = BlobPropertyBag::new();
    properties.set_type(kind);
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&text.into()), &properties)?;
    let url = Url::create_object_url_with_blob(&blob)?;
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
