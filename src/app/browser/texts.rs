//! Text files of the app's own that are fetched when they are first wanted.

use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;

/// The longer texts of the lessons of the family of that key; none when they do not come.
pub async fn lessons(family: &str) -> Option<String> {
    let answer = JsFuture::from(web_sys::window()?.fetch_with_str(&format!("learn/{family}.txt"))).await.ok()?;
    let answer: Response = answer.dyn_into().ok()?;
    if !answer.ok() {
        return None;
    }
    JsFuture::from(answer.text().ok()?).await.ok()?.as_string()
}
