//! The house: the app itself, with the model and the notes. Everything but the entrance is in it or in a wing of it.

use std::pin::Pin;

use wasm_split_helpers::{SplitLoaderError, wasm_split};
use yew::prelude::*;

use crate::app::root::{App, open};

/// The reading of the notes, which the app then finds when it is made.
#[wasm_split(house, fallible)]
pub fn notes() -> Result<Pin<Box<dyn Future<Output = ()>>>, SplitLoaderError> {
    Ok(Box::pin(open()))
}

/// The app; with the file of the invented rack, if that was asked for at the entrance.
#[wasm_split(house, fallible, preload(bring))]
pub fn house(invented: Option<AttrValue>) -> Result<Html, SplitLoaderError> {
    Ok(html! { <App {invented} /> })
}
