//! The rack of a person who noted nothing yet: what the app does, and ways to begin. Nothing here deals with garments, so that a first visit
//! need not load what does.

use garment_assay::say;
use garment_assay::to_say;
use yew::prelude::*;

use super::bar::Bar;
use super::icon::{Icon, Shape};
use super::invented::LookRound;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct BarProps {
    /// How many garments are noted, in words.
    pub counted: AttrValue,
}

/// The bar over the rack.
#[component]
pub fn RackBar(props: &BarProps) -> Html {
    html! {
        <Bar title={say!("Rack")} under={&props.counted}>
            <a class="icon-button" href={Route::Bench.href()} aria-label={say!("Bench: instruments")}><Icon shape={Shape::Ruler} /></a>
            <a class="icon-button" href={Route::Settings.href()} aria-label={say!("Settings")}><Icon shape={Shape::Settings} /></a>
        </Bar>
    }
}

/// What stands over an empty rack instead of a count; to be said.
pub const NOTHING_YET: &str = to_say!("Nothing noted yet");

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Called with the file of the invented rack.
    pub came: Callback<String>,
}

/// What an empty rack says, and where it leads.
#[component]
pub fn EmptyRack(props: &Props) -> Html {
    html! {
        <section class="empty card">
            <h2>{ say!("Take a garment in your hands") }</h2>
            <p>{ say!("The app asks for one look or touch at a time, the most telling first. After each answer you see how well the garment seems to be made, and how sure that is. Stop whenever you like; it is kept on this device.") }</p>
            <p><a class="prime" href={Route::Start.href()}>{ say!("Check a garment") }</a></p>
            <p><a href={Route::Desk(None).href()}>{ say!("Or take the quick sheet: a whole garment on one page, for many samples a day") }</a></p>
            <p><a href={Route::Practice.href()}>{ say!("Or practise first: two minutes for your eye") }</a></p>
            <p><a href={Route::Learn.href()}>{ say!("Or learn first: two minutes about each check") }</a></p>
            <LookRound came={props.came.clone()} />
        </section>
    }
}
