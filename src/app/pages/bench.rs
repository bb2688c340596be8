//! The bench: instruments, to use alone or from a check.

use garment_assay::catalog::bench::{DRAWERS, GRADES};
use garment_assay::garment::Given;
use garment_assay::measure::{Instrument, ScreenScale};
use garment_assay::quantity::System;
use garment_assay::say;
use garment_assay::specimen::Picture;
use yew::prelude::*;

use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::drawn::Drawn;
use crate::app::parts::instrument_form::InstrumentForm;
use crate::app::parts::means::Means;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The scale kept for this screen.
    pub scale: Option<ScreenScale>,
    /// Whether a scale is kept for another screen only.
    pub void: bool,
}

fn row(route: &Route, name: &'static str, says: &str, drawn: Option<Picture>) -> Html {
    html! {
        <li key={name}>
            <a class="tool" href={route.href()}>
                if let Some(picture) = drawn {
                    <Drawn {picture} />
                }
                <span><b>{ name }</b><small>{ says.to_owned() }</small></span>
            </a>
        </li>
    }
}

/// How an instrument is used, drawn.
fn drawn(instrument: &'static Instrument) -> Option<Picture> {
    DRAWERS.iter().flat_map(|drawer| drawer.tools).find(|tool| tool.instrument == instrument)?.drawn
}

/// Where an instrument is used: on the ruler, on the camera, on a picture, or by its form.
fn place(instrument: &'static Instrument) -> Route {
    let key = instrument.key.to_owned();
    match Means::of(instrument) {
        Means::Form => Route::Instrument(key),
        Means::Ruler => Route::Marks(key, None),
        Means::Camera => Route::Live(key, None),
        Means::Picture => Route::Picture(key, None),
    }
}

/// The list of instruments.
#[component]
pub fn Bench(props: &Props) -> Html {
    let ruler = match (props.scale, props.void) {
        (Some(_), _) => say!("Millimetres or inches along the edge of this screen."),
        (None, true) => say!("It was fitted on another screen or at another zoom. Fit it again here."),
        (None, false) => say!("Fit it once against a card or a coin."),
    };
    html! {
        <>
            <Bar title={say!("Bench")} under={say!("Measure instead of guessing")} back="#/" back_name={say!("Back to the rack")} />
            <section class="card">
                <h2>{ say!("On this screen") }</h2>
                <ul class="tools">
                    { row(&Route::Ruler, say!("Ruler on the screen"), ruler, None) }
                    { row(&Route::SeamKind, say!("Which stitch, which seam"), say!("Three looks name the stitch and the seam, and what each implies."), None) }
                </ul>
            </section>
            { for DRAWERS.iter().map(|drawer| html! {
                <section class="card" key={drawer.name()}>
                    <h2>{ drawer.name() }</h2>
                    <ul class="tools">
                        { for drawer.tools.iter().map(|tool| row(&place(tool.instrument), tool.instrument.name(), tool.instrument.says(), tool.drawn)) }
                    </ul>
                </section>
            }) }
        </>
    }
}

#[derive(Properties, PartialEq)]
pub struct InstrumentProps {
    /// The instrument.
    pub instrument: &'static Instrument,
    /// What was last given to it here.
    pub given: Option<Vec<Given>>,
    /// Metric or imperial.
    pub system: System,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// One instrument, used alone.
#[component]
pub fn InstrumentPage(props: &InstrumentProps) -> Html {
    let InstrumentProps { instrument, given, system, send } = props;
    let kept = send.reform(Message::Tried);
    let instrument = *instrument;
    html! {
        <>
            <Bar title={instrument.name()} under={instrument.says()} back={Route::Bench.href()} back_name={say!("Back to the bench")} />
            if !instrument.steps().is_empty() {
                <section class="card">
                    <h2>{ say!("What to do") }</h2>
                    if let Some(picture) = drawn(instrument) {
                        <div class="how-drawn"><Drawn {picture} aloud=true /></div>
                    }
                    <ol class="steps">{ for instrument.steps().iter().map(|step| html! { <li key={*step}>{ *step }</li> }) }</ol>
                </section>
            }
            <section class="card"><InstrumentForm key={instrument.key} {instrument} given={given.clone()} system={*system} {kept} /></section>
            if let Some(scale) = GRADES.iter().find(|scale| scale.instrument == instrument) {
                <section class="card">
                    <h2>{ say!("The grades, drawn") }</h2>
                    <p class="hint">{ say!("Drawn references of our own, not the standard’s cards: how much stands for a grade is judgement.") }</p>
                    <ol class="grades">
                        { for scale.steps.iter().enumerate().rev().map(|(place, picture): (usize, &Picture)| html! {
                            <li key={place}><Drawn picture={*picture} /><b>{ place + 1 }</b></li>
                        }) }
                    </ol>
                </section>
            }
            <section class="card">
                <h2>{ say!("Where the formula comes from") }</h2>
                <dl class="numbers">{ for instrument.sources.iter().map(|source| html! { <div key={source.name()}><dt>{ source.name() }</dt><dd>{ source.title() }</dd></div> }) }</dl>
            </section>
        </>
    }
}
