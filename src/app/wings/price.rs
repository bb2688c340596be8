//! The wing of what a garment costs, what it is offered for, and what is handed on.

use std::rc::Rc;

use garment_assay::cost::Rates;
use garment_assay::garment::Garment;
use wasm_split_helpers::{SplitLoaderError, wasm_split};
use yew::prelude::*;

use super::Scene;
use crate::app::appraisals::Appraisals;
use crate::app::pages::behind::BehindPage;
use crate::app::pages::beside::BesidePage;
use crate::app::pages::beside_sheet::BesideSheetPage;
use crate::app::pages::desk::DeskPage;
use crate::app::pages::guesses::Guesses;
use crate::app::pages::hand_on::HandOnPage;
use crate::app::pages::lot::LotPage;
use crate::app::pages::offer::OfferPage;
use crate::app::pages::rates::RatesPage;
use crate::app::pages::sheet::SheetPage;
use crate::app::route::Route;
use crate::app::worth::{self, Places};

/// The page of the scene.
#[wasm_split(price, fallible, preload(bring))]
pub fn page(scene: Scene) -> Result<Html, SplitLoaderError> {
    let Scene { model, appraisals, send, .. } = &scene;
    let (system, currency) = (model.settings.system, model.settings.currency);
    let shown = scene.garment();
    Ok(match (&model.route, shown) {
        (Route::Ticket(id), Some(garment)) => html! {
            <BehindPage key={id.as_str()} garment={garment.clone()} garments={model.garments.clone()} appraisals={appraisals.clone()}
                pricing={scene.pricing.clone()} rates={model.settings.rates.clone()} {currency} today={model.today}
                can_take_back={model.can_take_back(id)} send={send.clone()} />
        },
        (Route::Offer(id), Some(garment)) => html! {
            <OfferPage key={id.as_str()} garment={garment.clone()} rates={model.settings.rates.clone()} {currency}
                can_take_back={model.can_take_back(id)} send={send.clone()} />
        },
        (Route::Sheet(id), Some(garment)) => html! {
            <SheetPage key={id.as_str()} garment={garment.clone()} appraisals={appraisals.clone()} people={model.people.clone()} {system} />
        },
        (Route::Lot(id), Some(garment)) => html! {
            <LotPage key={id.as_str()} garment={garment.clone()} can_take_back={model.can_take_back(id)} send={send.clone()} />
        },
        (Route::Desk(id), _) => html! {
            <DeskPage garment={shown.cloned()} garments={model.garments.clone()} appraisals={appraisals.clone()} {system} {currency}
                today={model.today} wide={model.wide} can_take_back={id.as_ref().is_some_and(|id| model.can_take_back(id))} send={send.clone()} />
        },
        (Route::Rates, _) => html! {
            <RatesPage rates={model.settings.rates.clone()} unread={model.settings.aside.len()} today={model.today} send={send.clone()} />
        },
        (Route::Beside(ids), _) => html! {
            <BesidePage key={model.route.href()} garments={ids.iter().filter_map(|id| model.garment(id).cloned()).collect::<Vec<_>>()}
                rack={model.garments.clone()} appraisals={appraisals.clone()} rates={model.settings.rates.clone()}
                people={model.people.clone()} {system} />
        },
        (Route::BesideSheet(ids), _) => html! {
            <BesideSheetPage key={model.route.href()} garments={ids.iter().filter_map(|id| model.garment(id).cloned()).collect::<Vec<_>>()}
                rack={model.garments.clone()} appraisals={appraisals.clone()} rates={model.settings.rates.clone()} today={model.today} {system} />
        },
        (Route::HandOn(ids), _) => html! {
            <HandOnPage key={model.route.href()} chosen={ids.clone()} garments={model.garments.clone()} people={model.people.clone()}
                appraisals={appraisals.clone()} settings={model.settings.clone()} today={model.today} send={send.clone()} />
        },
        _ => html! { <Guesses garments={model.guessed()} /> },
    })
}

/// Every garment in its place in the order of value, for the rack.
#[wasm_split(price, fallible)]
pub fn worths(garments: Vec<Rc<Garment>>, rates: Rates, appraisals: Appraisals) -> Result<Rc<Places>, SplitLoaderError> {
    Ok(worth::places(&garments, &rates, &appraisals))
}
