//! The house: the app itself, with the model and the notes. Everything but the entrance is in it or in a wing of it.

use wasm_split_helpers::{SplitLoaderError, wasm_split};
use yew::prelude::*;

use crate::app::root::App;

/// The app; with the file of the invented rack, if that was asked for at the entrance.
#[wasm_split(house, fallible, preload(bring))]
pub fn house(invented: Option<AttrValue>) -> Result<Html, SplitLoaderError> {
    Ok(html! { <App {invented} /> })
}
