//! The wing of whether a garment fits, and whom.

use garment_assay::catalog::on_body::BODY_PICTURES;
use wasm_split_helpers::{SplitLoaderError, wasm_split};
use yew::prelude::*;

use super::Scene;
use crate::app::pages::fitting::FittingPage;
use crate::app::pages::people::PeoplePage;
use crate::app::pages::person::PersonPage;
use crate::app::pages::tape_sheet::TapeSheet;
use crate::app::route::Route;

/// The page of the scene.
#[wasm_split(body, fallible, preload(bring))]
pub fn page(scene: Scene) -> Result<Html, SplitLoaderError> {
    let Scene { model, send, .. } = &scene;
    let system = model.settings.system;
    let shown = scene.garment();
    let person = match &model.route {
        Route::Person(id, _) => model.person(id),
        _ => None,
    };
    Ok(match (&model.route, shown, person) {
        (Route::TapeSheet(id), Some(garment), _) => html! {
            <TapeSheet key={id.as_str()} garment={garment.clone()} people={model.people.clone()} {system} can_take_back={model.can_take_back(id)} send={send.clone()} />
        },
        (Route::Fitting(id), Some(garment), _) => html! {
            <FittingPage key={id.as_str()} garment={garment.clone()} people={model.people.clone()} {system}
                can_take_back={model.can_take_back(id)} send={send.clone()} />
        },
        (Route::Person(id, _), _, Some(person)) => html! {
            <PersonPage key={id.as_str()} person={person.clone()} garment={shown.cloned()} {system} pictures={&BODY_PICTURES[..]} send={send.clone()} />
        },
        _ => html! { <PeoplePage people={model.people.clone()} send={send.clone()} /> },
    })
}
