//! The size on the label: what it means, what pieces so marked were found to measure, and how far it can be trusted.

use std::rc::Rc;

use garment_assay::catalog::FitTable;
use garment_assay::fit::{Between, BodyMeasure, LabelSystem, Nominal, Span, nominal};
use garment_assay::garment::{FitAct, FitReport, Garment, LabelSize};
use garment_assay::language::within;
use garment_assay::quantity::System;
use garment_assay::say;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

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
    /// Called with what the label says.
    pub act: Callback<FitAct>,
}

fn range(between: Between, system: System) -> String {
    fit_words::range(&Span { low: between.low, middle: between.low, high: between.high }, system)
}

/// What a label means, and what this piece measures where it speaks of the body.
fn meaning(means: &Nominal, report: &FitReport, system: System) -> String {
    let found = means.found_cm.map(|found| say!("Pieces so marked were found to measure {range}.", range = range(found, system)));
    let named =
        say!("It names a {measure} of {range}.", measure = within(means.body.name()), range = range(means.body_cm, system));
    [Some(named), found, this_one(report, means.body, system)].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

fn this_one(report: &FitReport, body: &BodyMeasure, system: System) -> Option<String> {
    let mut known = report.rows.iter().filter_map(|row| row.fit.as_ref().ok());
    let fit = known.find(|fit| fit.line.against.iter().any(|against| against.measure == body))?;
    let length = fit_words::length(fit.tape.garment.value, fit.tape.garment.spread, system);
    Some(say!("This one: {length}.", length))
}

/// What the label says, and what to make of it.
#[component]
pub fn SizeLabel(props: &Props) -> Html {
    let Props { garment, table, report, system, act } = props;
    let size = garment.fitting().label();
    // What is being typed is explained at once, and the way of counting may be chosen before anything is typed.
    let draft = use_state_eq(|| None::<String>);
    let chosen = use_state_eq(|| None::<LabelSystem>);
    let Some(counted) = (*chosen).or(size.map(LabelSize::system)).or(table.labels.first().copied()) else {
        return Html::default();
    };
    let text = draft.as_ref().cloned().unwrap_or_else(|| size.map_or("", LabelSize::text).to_owned());
    let onchange = {
        let (act, chosen, text) = (act.clone(), chosen.clone(), text.clone());
        Callback::from(move |event: Event| {
            let key = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            let system = LabelSystem::from_key(&key).unwrap_or(counted);
            chosen.set(Some(system));
            // What cannot be counted that way is not kept so; the field then says why.
            if nominal(system, &text).is_ok() {
                act.emit(FitAct::Label(LabelSize::new(system, &text)));
            }
        })
    };
    let write = {
        let (act, draft) = (act.clone(), draft.clone());
        Callback::from(move |text: String| {
            if !text.trim().is_empty() {
                nominal(counted, &text).map_err(|fault| fault.to_string())?;
            }
            act.emit(FitAct::Label(LabelSize::new(counted, &text)));
            draft.set(None);
            Ok(())
        })
    };
    let typing = {
        let draft = draft.clone();
        Callback::from(move |text: String| draft.set(Some(text)))
    };
    let means = nominal(counted, &text).ok().map(|means| meaning(&means, report, *system));
    html! {
        <details class="fit-label" open={size.is_some()}>
            <summary>{ say!("The size on the label") }</summary>
            <div class="field">
                <label for="fit-counted">{ say!("How it counts") }</label>
                <select id="fit-counted" {onchange} disabled={table.labels.len() < 2}>
                    { for table.labels.iter().map(|other| html! { <option key={other.key()} value={other.key()} selected={*other == counted}>{ other.words() }</option> }) }
                </select>
            </div>
            <Typed id="fit-size" label={say!("What it says")} kept={text} {typing} {write} />
            if let Some(means) = means { <p>{ means }</p> }
            <p class="hint">{ counted.trust() }{ " " }{ say!("Measure; a label is a hint.") }</p>
        </details>
    }
}
