//! Files that come with the app and are fetched only when they are asked for.

use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;

/// Fetches a file that lies beside the page and hands on its text; none when it cannot be fetched, as before the first visit is whole and
/// without a network.
pub fn fetch(file: String, then: impl FnOnce(Option<String>) + 'static) {
    wasm_bindgen_futures::spawn_local(async move { then(text(&file).await) });
}

async fn text(file: &str) -> Option<String> {
    let answer: Response = JsFuture::from(web_sys::window()?.fetch_with_str(file)).await.ok()?.dyn_into().ok()?;
    if !answer.ok() {
        return None;
    }
    JsFuture::from(answer.text().ok()?).await.ok()?.as_string()
}
