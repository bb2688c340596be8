//! The wing in which a garment is checked, from its start to the result.

use wasm_split_helpers::{SplitLoaderError, wasm_split};
use yew::prelude::*;

use super::Scene;
use crate::app::collections;
use crate::app::pages::checks::{CheckList, Checks};
use crate::app::pages::details::Details;
use crate::app::pages::photographs::PhotographsPage;
use crate::app::pages::result::ResultPage;
use crate::app::pages::start::Start;
use crate::app::pages::walk::Walk;
use crate::app::route::Route;

/// The page of the scene.
#[wasm_split(judging, fallible, preload(bring))]
pub fn page(scene: Scene) -> Result<Html, SplitLoaderError> {
    let Scene { model, appraisals, send, .. } = &scene;
    let system = model.settings.system;
    Ok(match (&model.route, scene.garment()) {
        (Route::Check(id, key) | Route::Lesson(_, key, Some(id)), Some(garment)) => match scene.check_put(key) {
            // A name of its own for each garment, as the other pages that write have: yew may hear a hand after a page was drawn anew and before its
            // parts were told, and a note written then would go to the garment that the page showed before.
            Some(check) => html! {
                <Walk key={id.as_str()} garment={garment.clone()} {check} appraisals={appraisals.clone()} {system} can_take_back={model.can_take_back(id)} send={send.clone()} />
            },
            None => Html::default(),
        },
        (Route::Checks(_), Some(garment)) => {
            html! { <Checks garment={garment.clone()} appraisals={appraisals.clone()} {system} /> }
        }
        (Route::Result(_), Some(garment)) => {
            html! { <ResultPage garment={garment.clone()} appraisals={appraisals.clone()} people={model.people.clone()} {system} /> }
        }
        (Route::Photographs(id, key), Some(garment)) => html! {
            <PhotographsPage key={id.as_str()} garment={garment.clone()} check={key.as_deref().and_then(|key| scene.check_put(key))} today={model.today}
                can_take_back={model.can_take_back(id)} send={send.clone()} />
        },
        (Route::Details(id), Some(garment)) => html! {
            <Details key={id.as_str()} garment={garment.clone()} collections={collections::names(&model.garments)} currency={model.settings.currency} send={send.clone()} />
        },
        _ => html! { <Start garments={model.garments.clone()} currency={model.settings.currency} send={send.clone()} /> },
    })
}

/// The list of checks that stands beside the page of a garment.
#[wasm_split(judging, fallible)]
pub fn beside(scene: Scene) -> Result<Html, SplitLoaderError> {
    let Some(garment) = scene.garment() else { return Ok(Html::default()) };
    let open = match &scene.model.route {
        Route::Check(_, key) | Route::Lesson(_, key, Some(_)) | Route::Photographs(_, Some(key)) => scene.check_put(key),
        _ => None,
    };
    let system = scene.model.settings.system;
    Ok(html! { <CheckList garment={garment.clone()} open={open.map(|check| AttrValue::Static(check.key))} {system} /> })
}
