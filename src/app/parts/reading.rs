//! The form of an instrument: few inputs, the estimate and its spread live while typing, and "use this".

use std::collections::BTreeMap;

use garment_assay::check::Check;
use garment_assay::garment::{Act, Answer, Given};
use garment_assay::measure::{Input, InputKind};
use garment_assay::quantity::{Decimal, System, Unit, read, written_exactly};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The check that the reading answers.
    pub check: &'static Check,
    /// Readings as kept, when the check was answered with them.
    pub given: Option<Vec<Given>>,
    /// Metric or imperial.
    pub system: System,
    /// Called when the reading is to be used.
    pub act: Callback<Act>,
}

/// What is typed into one input.
#[derive(Clone, Debug, PartialEq)]
struct Typed {
    text: String,
    unit: Unit,
}

type Draft = BTreeMap<&'static str, Typed>;

fn kept(given: &Option<Vec<Given>>) -> Draft {
    given
        .iter()
        .flatten()
        .map(|given| {
            (
                given.input,
                Typed { text: written_exactly(given.amount, 6, Decimal::Point).replace('\u{2212}', "-"), unit: given.unit },
            )
        })
        .collect()
}

/// The units an input can be typed in.
fn units(input: &Input) -> Vec<Unit> {
    let mut units = vec![input.metric];
    if input.imperial != input.metric {
        units.push(input.imperial);
    }
    units
}

/// What is typed as readings, or a sentence for each input that cannot be taken. Nothing typed is no reading.
fn readings(inputs: &'static [Input], draft: &Draft) -> Result<Vec<Given>, BTreeMap<&'static str, String>> {
    let (mut given, mut faults) = (Vec::new(), BTreeMap::new());
    for input in inputs {
        let Some(typed) = draft.get(input.key).filter(|typed| !typed.text.trim().is_empty()) else { continue };
        match read(&typed.text, typed.unit, Decimal::Point) {
            Ok(amount) => given.push(Given { input: input.key, amount: amount.number, unit: amount.unit }),
            Err(fault) => {
                faults.insert(input.key, fault.sentence());
            }
        }
    }
    if faults.is_empty() { Ok(given) } else { Err(faults) }
}

/// An instrument's form inside a check.
#[component]
pub fn Reading(props: &Props) -> Html {
    let Props { check, given, system, act } = props;
    let (check, system) = (*check, *system);
    let draft = use_state(|| kept(given));
    let touched = use_state_eq(|| false);
    let open = use_state_eq(|| given.is_some());
    {
        // An undo, or another window, may change what is kept.
        let draft = draft.clone();
        use_effect_with(given.clone(), move |given| {
            if given.is_some() {
                draft.set(kept(given));
            }
        });
    }
    let Some(instrument) = check.instrument else { return Html::default() };
    let typed = readings(instrument.inputs, &draft);
    let mut faults = typed.as_ref().err().cloned().unwrap_or_default();
    let mut whole_fault = None;
    let outcome = typed.as_ref().ok().filter(|given| !given.is_empty()).and_then(|given| {
        match check.outcome(given.iter().map(|given| (given.input, given.amount, given.unit)))? {
            Ok(outcome) => Some(outcome),
            Err(fault) => {
                let sentence = fault.sentence(system, Decimal::Point);
                match fault.input() {
                    Some(input) => drop(faults.insert(input.key, sentence)),
                    None => whole_fault = Some(sentence),
                }
                None
            }
        }
    });
    let change = |input: &'static Input, with: fn(&mut Typed, String)| {
        let (draft, touched) = (draft.clone(), touched.clone());
        move |value: String| {
            let mut next = (*draft).clone();
            let typed = next.entry(input.key).or_insert_with(|| Typed { text: String::new(), unit: input.unit_in(system) });
            with(typed, value);
            draft.set(next);
            touched.set(false);
        }
    };
    let use_it = {
        let (act, given) = (act.clone(), typed.as_ref().cloned().unwrap_or_default());
        Callback::from(move |_: MouseEvent| act.emit(Act::Answer(check, Answer::Measured(given.clone()))))
    };
    let show_faults = {
        let touched = touched.clone();
        Callback::from(move |_: FocusEvent| touched.set(true))
    };
    let toggle = {
        let open = open.clone();
        Callback::from(move |_: MouseEvent| open.set(!*open))
    };
    let is_kept = given.as_ref().is_some_and(|kept| Ok(kept) == typed.as_ref());
    let field = |input: &'static Input| {
        let shown = (*draft).get(input.key).cloned();
        let unit = shown.as_ref().map_or(input.unit_in(system), |typed| typed.unit);
        let text = shown.map_or(String::new(), |typed| typed.text);
        let id = format!("{}-{}", check.key, input.key);
        let fault = faults.get(input.key).filter(|_| *touched);
        let fault_id = format!("{id}-fault");
        let ask_id = format!("{id}-ask");
        if input.kind == InputKind::YesNo {
            let emit = change(input, |typed, value| typed.text = value);
            let onchange = Callback::from(move |event: Event| {
                if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                    emit(if field.checked() { "1" } else { "0" }.to_owned());
                }
            });
            return html! {
                <label key={input.key} class="tick"><input type="checkbox" checked={text == "1"} {onchange} /><span>{ input.name }</span></label>
            };
        }
        let emit = change(input, |typed, value| typed.text = value);
        let oninput = Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                emit(field.value());
            }
        });
        let emit = change(input, |typed, value| {
            if let Some(unit) = Unit::from_key(&value) {
                typed.unit = unit;
            }
        });
        let onunit = Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlSelectElement>() {
                emit(field.value());
            }
        });
        let units = units(input);
        let usual = input
            .usual()
            .and_then(|amount| input.unit.convert(amount, unit))
            .map(|amount| format!("{} if left empty", written_exactly(amount, 2, Decimal::Point)));
        html! {
            <div key={input.key} class="field">
                <label for={id.clone()}>{ input.name }</label>
                <div class="field-unit">
                    <input {id} inputmode={if input.kind == InputKind::WholeCount { "numeric" } else { "decimal" }} autocomplete="off" placeholder={usual}
                        value={text} {oninput} onblur={show_faults.clone()}
                        aria-invalid={fault.is_some().to_string()} aria-describedby={if fault.is_some() { format!("{fault_id} {ask_id}") } else { ask_id.clone() }} />
                    if units.len() > 1 {
                        <select aria-label={format!("Unit of {}", input.name.to_lowercase())} onchange={onunit}>
                            { for units.into_iter().map(|choice| html! { <option key={choice.key()} value={choice.key()} selected={choice == unit}>{ choice.symbol() }</option> }) }
                        </select>
                    } else if !unit.symbol().is_empty() {
                        <span class="unit">{ unit.symbol() }</span>
                    }
                </div>
                <small class="hint" id={ask_id}>{ input.ask }</small>
                if let Some(fault) = fault {
                    <p class="fault" id={fault_id} role="alert">{ fault }</p>
                }
            </div>
        }
    };
    html! {
        <section class="reading" aria-label={format!("Measure: {}", instrument.name)}>
            <button type="button" class="reading-open" aria-expanded={open.to_string()} onclick={toggle}>
                <b>{ "Measure it" }</b><small>{ instrument.says }</small>
            </button>
            if *open {
                <div class="reading-form">
                    { for instrument.inputs.iter().filter(|input| input.usual().is_none() || input.kind == InputKind::YesNo).map(field) }
                    <details><summary>{ "How good is the reading" }</summary>
                        { for instrument.inputs.iter().filter(|input| input.usual().is_some() && input.kind != InputKind::YesNo).map(field) }
                    </details>
                    if let Some(fault) = whole_fault {
                        <p class="fault" role="alert">{ fault }</p>
                    }
                    <output class="figure">
                        if let Some(outcome) = &outcome {
                            { words::outcome(outcome, instrument.unit, system) }
                            <small>{ words::budget(outcome, instrument) }</small>
                        } else {
                            <small>{ "The reading and its spread appear here." }</small>
                        }
                    </output>
                    <button type="button" class="prime" disabled={outcome.is_none() || is_kept} onclick={use_it}>
                        { if is_kept { "Used" } else { "Use this reading" } }
                    </button>
                </div>
            }
        </section>
    }
}
