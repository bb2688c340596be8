//! Files that come with the app and are fetched only when they are asked for.

use js_sys::Promise;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;

/// Fetches a file that lies beside the page and hands on its text; none when it cannot be fetched, as before the first visit is whole and
/// without a network.
pub fn fetch(file: String, then: impl FnOnce(Option<String>) + 'static) {
    let asked = asked(&file);
    wasm_bindgen_futures::spawn_local(async move { then(text(asked).await) });
}

/// Asks for a file, so that several can be on their way at once.
pub fn asked(file: &str) -> Option<Promise> {
    Some(web_sys::window()?.fetch_with_str(file))
}

/// The text of a file that was asked for.
pub async fn text(asked: Option<Promise>) -> Option<String> {
    let answer: Response = JsFuture::from(asked?).await.ok()?.dyn_into().ok()?;
    if !answer.ok() {
        return None;
    }
    JsFuture::from(answer.text().ok()?).await.ok()?.as_string()
}
