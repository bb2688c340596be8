//! The bench: instruments, to use alone or from a check.

use garment_assay::measure::{INSTRUMENTS, Instrument, ScreenScale};
use garment_assay::quantity::System;
use yew::prelude::*;

use crate::app::parts::bar::Bar;
use crate::app::parts::instrument_form::InstrumentForm;
use crate::app::parts::ruler::is_on_ruler;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The scale kept for this screen.
    pub scale: Option<ScreenScale>,
    /// Whether a scale is kept for another screen only.
    pub void: bool,
}

fn row(route: &Route, name: &'static str, says: &str) -> Html {
    html! {
        <li key={name}><a href={route.href()}><b>{ name }</b><small>{ says.to_owned() }</small></a></li>
    }
}

/// Where an instrument is used: on the ruler, or by its form.
fn place(instrument: &'static Instrument) -> Route {
    if is_on_ruler(instrument) {
        Route::Marks(instrument.key.to_owned(), None)
    } else {
        Route::Instrument(instrument.key.to_owned())
    }
}

/// The list of instruments.
#[component]
pub fn Bench(props: &Props) -> Html {
    let ruler = match (props.scale, props.void) {
        (Some(_), _) => "Millimetres or inches along the edge of this screen.",
        (None, true) => "It was fitted on another screen or at another zoom. Fit it again here.",
        (None, false) => "Fit it once against a card or a coin.",
    };
    html! {
        <>
            <Bar title="Bench" under="Measure instead of guessing" back="#/" back_name="Back to the rack" />
            <section class="card"><ul class="further">
                { row(&Route::Ruler, "Ruler on the screen", ruler) }
                { for INSTRUMENTS.iter().copied().map(|instrument| row(&place(instrument), instrument.name, instrument.says)) }
            </ul></section>
        </>
    }
}

#[derive(Properties, PartialEq)]
pub struct InstrumentProps {
    /// The instrument.
    pub instrument: &'static Instrument,
    /// Metric or imperial.
    pub system: System,
}

/// One instrument, used alone.
#[component]
pub fn InstrumentPage(props: &InstrumentProps) -> Html {
    let InstrumentProps { instrument, system } = props;
    let instrument = *instrument;
    html! {
        <>
            <Bar title={instrument.name} under={instrument.says} back={Route::Bench.href()} back_name="Back to the bench" />
            if !instrument.steps.is_empty() {
                <section class="card">
                    <h2>{ "What to do" }</h2>
                    <ol class="steps">{ for instrument.steps.iter().map(|step| html! { <li key={*step}>{ *step }</li> }) }</ol>
                </section>
            }
            <section class="card"><InstrumentForm key={instrument.key} {instrument} system={*system} /></section>
            <section class="card">
                <h2>{ "Where the formula comes from" }</h2>
                <dl class="numbers">{ for instrument.sources.iter().map(|source| html! { <div key={source.name}><dt>{ source.name }</dt><dd>{ source.title }</dd></div> }) }</dl>
            </section>
        </>
    }
}
