//! What washing and wearing will change: the same places after the first washes and after a day's wear, as ranges; the size, and its label.

use std::rc::Rc;

use garment_assay::catalog::FitTable;
use garment_assay::fit::{LabelSystem, Time, nominal};
use garment_assay::garment::{FitAct, FitReport, Garment, LabelSize, USUAL_WASH, WashKnown};
use garment_assay::measure::{Drying, Warmth};
use garment_assay::quantity::System;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use super::fit_scale::FitScale;
use super::typed::Typed;
use crate::app::fit_words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// How its family is fitted.
    pub table: &'static FitTable,
    /// What everything comes to.
    pub report: FitReport,
    /// Metric or imperial.
    pub system: System,
    /// Called with what is noted.
    pub act: Callback<FitAct>,
}

/// A wash, in storage's order and in words.
const WARMTHS: [(Warmth, &str, &str); 3] =
    [(Warmth::Cool, "cool", "cool, 30 °C"), (Warmth::Warm, "warm", "warm, 40 °C"), (Warmth::Hot, "hot", "hot, 60 °C and over")];
const DRYINGS: [(Drying, &str, &str); 2] =
    [(Drying::Line, "line", "on a line or flat"), (Drying::Tumble, "tumble", "in a tumble dryer")];

fn chosen(event: &Event) -> String {
    event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default()
}

/// What the cloth is and how it will be washed.
fn wash(props: &Props) -> Html {
    let Props { garment, table, act, .. } = props;
    let (table, fitting) = (*table, garment.fitting());
    let (warmth, drying) = fitting.wash().unwrap_or(USUAL_WASH);
    let cloth = act.reform(move |event: Event| {
        let key = chosen(&event);
        FitAct::Cloth(table.cloths.iter().copied().find(|cloth| cloth.key == key))
    });
    let heat = act.reform(move |event: Event| {
        let key = chosen(&event);
        FitAct::Wash(WARMTHS.iter().find(|(_, other, _)| *other == key).map(|(warmth, ..)| (*warmth, drying)))
    });
    let dry = act.reform(move |event: Event| {
        let key = chosen(&event);
        FitAct::Wash(DRYINGS.iter().find(|(_, other, _)| *other == key).map(|(drying, ..)| (warmth, *drying)))
    });
    html! {
        <div class="fit-wash">
            <div class="field">
                <label for="fit-cloth">{ "What the cloth is" }</label>
                <select id="fit-cloth" onchange={cloth} aria-describedby="fit-cloth-tell">
                    <option value="" selected={fitting.cloth().is_none()}>{ "Not said" }</option>
                    { for table.cloths.iter().map(|cloth| html! {
                        <option key={cloth.key} value={cloth.key} selected={fitting.cloth() == Some(*cloth)}>{ cloth.name }</option>
                    }) }
                </select>
                <p class="hint" id="fit-cloth-tell">{ fitting.cloth().map_or("Raw cloth shrinks far, washed cloth little.", |cloth| cloth.tell) }</p>
            </div>
            if fitting.cloth().is_some() {
                <div class="field">
                    <label for="fit-heat">{ "Wash" }</label>
                    <select id="fit-heat" onchange={heat}>
                        { for WARMTHS.iter().map(|(value, key, words)| html! { <option key={*key} value={*key} selected={*value == warmth}>{ *words }</option> }) }
                    </select>
                </div>
                <div class="field">
                    <label for="fit-dry">{ "Dry" }</label>
                    <select id="fit-dry" onchange={dry}>
                        { for DRYINGS.iter().map(|(value, key, words)| html! { <option key={*key} value={*key} selected={*value == drying}>{ *words }</option> }) }
                    </select>
                </div>
            }
        </div>
    }
}

/// The size on the label, and how far it can be trusted.
fn label(props: &Props) -> Html {
    let Props { garment, table, system, act, .. } = props;
    let size = garment.fitting().label();
    let counted = size.map_or(table.labels.first().copied(), |size| Some(size.system()));
    let Some(counted) = counted else { return Html::default() };
    let text = size.map_or("", LabelSize::text).to_owned();
    let system_chosen = {
        let text = text.clone();
        act.reform(move |event: Event| {
            let system = LabelSystem::from_key(&chosen(&event)).unwrap_or(counted);
            FitAct::Label(LabelSize::new(system, &text))
        })
    };
    let write = {
        let act = act.clone();
        Callback::from(move |text: String| {
            if !text.trim().is_empty() {
                nominal(counted, &text).map_err(|fault| fault.to_string())?;
            }
            act.emit(FitAct::Label(LabelSize::new(counted, &text)));
            Ok(())
        })
    };
    let means = size.and_then(|size| nominal(size.system(), size.text()).ok()).map(|means| {
        let body = garment_assay::fit::Span { low: means.body_cm.low, middle: means.body_cm.low, high: means.body_cm.high };
        let found = means.found_cm.map_or_else(String::new, |found| {
            let found = garment_assay::fit::Span { low: found.low, middle: found.low, high: found.high };
            format!(" Pieces so marked were found to measure {}.", fit_words::range(&found, *system))
        });
        format!("It names a {} of {}.{found}", means.body.name.to_lowercase(), fit_words::range(&body, *system))
    });
    html! {
        <details class="fit-label" open={size.is_some()}>
            <summary>{ "The size on the label" }</summary>
            <div class="field">
                <label for="fit-counted">{ "How it counts" }</label>
                <select id="fit-counted" onchange={system_chosen} disabled={table.labels.len() < 2}>
                    { for table.labels.iter().map(|other| html! { <option key={other.key()} value={other.key()} selected={*other == counted}>{ other.words() }</option> }) }
                </select>
            </div>
            <Typed id="fit-size" label="What it says" kept={text} {write} />
            if let Some(means) = means { <p>{ means }</p> }
            <p class="hint">{ counted.trust() }{ " Measure; a label is a hint." }</p>
        </details>
    }
}

/// The part.
#[component]
pub fn Later(props: &Props) -> Html {
    let Props { report, system, .. } = props;
    let system = *system;
    let rows: Vec<_> =
        report.rows.iter().filter_map(|row| Some((row, row.fit.as_ref().ok()?))).filter(|(_, fit)| fit.worn.is_some()).collect();
    html! {
        <section class="card">
            <h2>{ "After washing and wearing" }</h2>
            if props.table.cloths.is_empty() {
                <p>{ "Pieces of this kind are cleaned, not washed, and nobody has published what cleaning and wearing change: only today is judged." }</p>
            } else {
                { wash(props) }
            }
            if let Some(why) = fit_words::wash(report.wash).filter(|_| !props.table.cloths.is_empty()) {
                <p class="hint">{ why }</p>
            }
            if report.wash == WashKnown::Yes && rows.is_empty() {
                <p class="hint">{ "Measure a place above, and it stands here as it will be later." }</p>
            }
            if !rows.is_empty() {
                <ul class="fit-rows">
                    { for rows.iter().map(|(row, fit)| html! {
                        <li key={row.point.key}>
                            <h3>{ row.point.name }</h3>
                            <FitScale fit={(*fit).clone()} later=true />
                            <dl class="fit-times">
                                { for [Time::Now, Time::Washed, Time::Worn].into_iter().filter_map(|time| Some((time, fit.at(time)?))).map(|(time, moment)| html! {
                                    <div key={fit_words::when(time)}><dt>{ fit_words::when(time) }</dt><dd><b>{ fit_words::range(&moment.size, system) }</b>{ " " }<small>{ moment.sits().words(fit.line.lies) }</small></dd></div>
                                }) }
                            </dl>
                        </li>
                    }) }
                </ul>
                <p class="fit-size"><b>{ fit_words::size(report.size) }</b></p>
                <p class="hint">{ "Blue is later: first washed, below it washed and worn for a day. Four times of five it ends between the two numbers; nobody can tell the number beforehand." }</p>
            }
            { label(props) }
        </section>
    }
}
