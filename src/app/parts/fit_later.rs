//! What washing and wearing will change: the same places after the first washes and after a day's wear, as ranges; and the size.

use std::rc::Rc;

use garment_assay::catalog::FitTable;
use garment_assay::check::Check;
use garment_assay::fit::Time;
use garment_assay::garment::{Answer, FitAct, FitReport, Garment, Standing, USUAL_WASH, WashKnown};
use garment_assay::language::said;
use garment_assay::measure::{Drying, Warmth};
use garment_assay::quantity::System;
use garment_assay::say;
use garment_assay::to_say;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use super::fit_label::SizeLabel;
use super::fit_scale::FitScale;
use crate::app::fit_words;
use crate::app::route::Route;

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

/// A wash, in storage's order and in words, metric and imperial.
const WARMTHS: [(Warmth, &str, [&str; 2]); 3] = [
    (Warmth::Cool, "cool", [to_say!("cool, 30 °C"), to_say!("cool, 85 °F")]),
    (Warmth::Warm, "warm", [to_say!("warm, 40 °C"), to_say!("warm, 105 °F")]),
    (Warmth::Hot, "hot", [to_say!("hot, 60 °C and over"), to_say!("hot, 140 °F and over")]),
];
const DRYINGS: [(Drying, &str, &str); 2] =
    [(Drying::Line, "line", to_say!("on a line or flat")), (Drying::Tumble, "tumble", to_say!("in a tumble dryer"))];

/// What the cloth is taken to be, in a few words.
pub fn state(garment: &Garment, table: &FitTable) -> &'static str {
    match garment.fitting().cloth() {
        Some(cloth) => cloth.name(),
        None if table.cloths.is_empty() => say!("not judged"),
        None => say!("the cloth is not said yet"),
    }
}

fn chosen(event: &Event) -> String {
    event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default()
}

/// What the cloth is and how it will be washed.
fn wash(props: &Props) -> Html {
    let Props { garment, table, system, act, .. } = props;
    let (table, fitting, own) = (*table, garment.fitting(), usize::from(*system == System::Imperial));
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
                <label for="fit-cloth">{ say!("What the cloth is") }</label>
                <select id="fit-cloth" onchange={cloth} aria-describedby="fit-cloth-tell">
                    <option value="" selected={fitting.cloth().is_none()}>{ say!("Not said") }</option>
                    { for table.cloths.iter().map(|cloth| html! {
                        <option key={cloth.key} value={cloth.key} selected={fitting.cloth() == Some(*cloth)}>{ cloth.name() }</option>
                    }) }
                </select>
                <p class="hint" id="fit-cloth-tell">{ fitting.cloth().map_or(say!("Raw cloth shrinks far, washed cloth little."), |cloth| cloth.tell()) }</p>
            </div>
            if fitting.cloth().is_some() {
                <div class="field">
                    <label for="fit-heat">{ say!("how it is washed" | "Wash") }</label>
                    <select id="fit-heat" onchange={heat}>
                        { for WARMTHS.iter().map(|(value, key, words)| html! { <option key={*key} value={*key} selected={*value == warmth}>{ said(words[own]) }</option> }) }
                    </select>
                </div>
                <div class="field">
                    <label for="fit-dry">{ say!("how it is dried" | "Dry") }</label>
                    <select id="fit-dry" onchange={dry}>
                        { for DRYINGS.iter().map(|(value, key, words)| html! { <option key={*key} value={*key} selected={*value == drying}>{ said(words) }</option> }) }
                    </select>
                </div>
            }
        </div>
    }
}

/// Whether what a pull leaves behind is known, where it matters.
fn growth(props: &Props) -> Html {
    let Props { garment, table, report, .. } = props;
    let matters = report.wash == WashKnown::Yes && table.lines.iter().any(|line| line.grows);
    // Rigid cloth is not asked how far a pull lengthens it.
    let open = |check: &&'static Check| garment.standing(check) != Standing::Closed;
    let Some(check) = table.growth.filter(|_| matters).filter(open) else { return Html::default() };
    let known = matches!(garment.answer(check), Some(Answer::Judged { .. } | Answer::Measured(_)));
    let way = Route::Check(garment.id().clone(), check.key.to_owned()).href();
    html! {
        <p class="hint">
            { if known { say!("Wear takes into account how much longer your pull left the cloth.") } else { say!("Nobody has seen yet how much longer a pull leaves this cloth; wear is taken as usual.") } }{ " " }
            <a href={way}>{ if known { say!("Look again") } else { say!("Pull it and see") } }</a>
        </p>
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
        <>
            if props.table.cloths.is_empty() {
                <p>{ say!("No figures were found of what washing, cleaning and wearing change in pieces of this kind: only today is judged.") }</p>
            } else {
                { wash(props) }
            }
            if let Some(why) = fit_words::wash(report.wash).filter(|_| !props.table.cloths.is_empty()) {
                <p class="hint">{ why }</p>
            }
            if report.wash == WashKnown::Yes && rows.is_empty() {
                <p class="hint">{ say!("Measure a place above, and it stands here as it will be later.") }</p>
            }
            if !rows.is_empty() {
                <ul class="fit-rows">
                    { for rows.iter().map(|(row, fit)| html! {
                        <li key={row.point.key}>
                            <h3>{ row.point.name() }</h3>
                            <FitScale fit={(*fit).clone()} later=true />
                            <dl class="fit-times">
                                { for [Time::Now, Time::Washed, Time::Worn].into_iter().filter_map(|time| Some((time, fit.at(time)?))).map(|(time, moment)| html! {
                                    <div key={fit_words::when(time)}><dt>{ fit_words::when(time) }</dt><dd><b>{ fit_words::range(&moment.size, system) }</b>{ " " }<small>{ moment.sits().words(fit.line.lies) }</small></dd></div>
                                }) }
                            </dl>
                        </li>
                    }) }
                </ul>
                <p class="hint">{ say!("Washed: after the first washes, dry and not worn. Worn: a day later. Four times of five it ends between the two numbers; nobody can tell more beforehand.") }</p>
            }
            { growth(props) }
            if report.rows.iter().any(|row| row.fit.is_ok()) {
                <h3>{ say!("Another size") }</h3>
                <p class="fit-size">{ fit_words::size(report.size) }</p>
            }
            <SizeLabel garment={props.garment.clone()} table={props.table} report={report.clone()} {system} act={props.act.clone()} />
        </>
    }
}
