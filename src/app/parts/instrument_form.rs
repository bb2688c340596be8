//! The form of an instrument: few inputs, the estimate and its spread live while typing, and what to do with it.

use std::collections::BTreeMap;

use garment_assay::garment::{Given, Readings};
use garment_assay::language::within;
use garment_assay::measure::{Choice, Input, InputKind, Instrument, Needed, Outcome};
use garment_assay::quantity::{Decimal, System, Unit, read, written_exactly};
use garment_assay::say;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use super::icon::{Icon, Shape};
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The instrument.
    pub instrument: &'static Instrument,
    /// Readings as kept, if there are any.
    #[prop_or_default]
    pub given: Option<Vec<Given>>,
    /// Metric or imperial.
    pub system: System,
    /// The word on the button that uses the reading; no button without it.
    #[prop_or_default]
    pub verb: Option<AttrValue>,
    /// Called when the reading is to be used.
    #[prop_or_default]
    pub used: Callback<Readings>,
    /// Called with a whole reading when a field is left, where the form stands by itself.
    #[prop_or_default]
    pub kept: Option<Callback<Readings>>,
    /// A further sentence on what the readings come to, where the form serves a check.
    #[prop_or_default]
    pub advice: Option<Callback<Readings, Option<String>>>,
}

/// What is typed into one input.
#[derive(Clone, Debug, PartialEq)]
struct Typed {
    text: String,
    unit: Unit,
}

type Draft = BTreeMap<&'static str, Typed>;

fn drafted(given: &Option<Vec<Given>>) -> Draft {
    given
        .iter()
        .flatten()
        .map(|given| {
            let text = written_exactly(given.amount, 6, Decimal::spoken()).replace(['\u{2212}', '\u{202f}'], "");
            let sign = if given.amount < 0.0 { "-" } else { "" };
            (given.input, Typed { text: format!("{sign}{text}"), unit: given.unit })
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

/// A sentence for each input that cannot be taken.
type Faults = BTreeMap<&'static str, String>;

/// What is typed as readings. Nothing typed is no reading.
fn readings(instrument: &'static Instrument, draft: &Draft) -> Result<Readings, Faults> {
    let (mut given, mut faults) = (Vec::new(), Faults::new());
    for input in instrument.inputs {
        let Some(typed) = draft.get(input.key).filter(|typed| !typed.text.trim().is_empty()) else { continue };
        match read(&typed.text, typed.unit, Decimal::spoken()) {
            Ok(amount) => given.push(Given { input: input.key, amount: amount.number, unit: amount.unit }),
            Err(fault) => {
                faults.insert(input.key, fault.sentence());
            }
        }
    }
    if faults.is_empty() { Ok(Readings { instrument, given }) } else { Err(faults) }
}

/// One input as the form shows it.
#[derive(Properties, PartialEq)]
struct FieldProps {
    instrument: &'static Instrument,
    input: &'static Input,
    text: String,
    unit: Unit,
    fault: Option<String>,
    typed: Callback<(&'static str, String, Unit)>,
    left: Callback<()>,
}

fn value_of(event: &Event) -> String {
    let select = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value());
    select.or_else(|| event.target_dyn_into::<HtmlInputElement>().map(|field| field.value())).unwrap_or_default()
}

#[component]
fn Field(props: &FieldProps) -> Html {
    let FieldProps { instrument, input, text, unit, fault, typed, left } = props;
    let (input, unit) = (*input, *unit);
    let id = format!("{}-{}", instrument.key, input.key);
    let (fault_id, ask_id) = (format!("{id}-fault"), format!("{id}-ask"));
    let emit = {
        let typed = typed.clone();
        move |text: String| typed.emit((input.key, text, unit))
    };
    match input.kind {
        InputKind::YesNo => {
            let onchange = Callback::from(move |event: Event| {
                let ticked = event.target_dyn_into::<HtmlInputElement>().is_some_and(|field| field.checked());
                emit(if ticked { "1" } else { "0" }.to_owned());
            });
            html! {
                <div class="field">
                    <label class="tick"><input type="checkbox" checked={text == "1"} {onchange} aria-describedby={ask_id.clone()} /><span>{ input.name() }</span></label>
                    <small class="hint" id={ask_id}>{ input.ask() }</small>
                </div>
            }
        }
        InputKind::Choice(choices) => {
            let onchange = Callback::from(move |event: Event| emit(value_of(&event)));
            let line = text.parse::<usize>().ok().and_then(|place| choices.get(place)).map(|choice| choice.line());
            html! {
                <div class="field">
                    <label for={id.clone()}>{ input.name() }</label>
                    <select {id} {onchange} aria-describedby={ask_id.clone()} aria-invalid={fault.is_some().to_string()}>
                        <option value="" selected={text.is_empty()}>{ say!("choose") }</option>
                        { for choices.iter().enumerate().filter(|(place, choice)| choice.is_offered || *text == place.to_string()).map(|(place, choice): (usize, &'static Choice)| html! {
                            <option key={choice.key} value={place.to_string()} selected={*text == place.to_string()}>{ choice.name() }</option>
                        }) }
                    </select>
                    <small class="hint" id={ask_id}>{ line.unwrap_or(input.ask()) }</small>
                    if let Some(fault) = fault {
                        <p class="fault" id={fault_id} role="alert">{ fault }</p>
                    }
                </div>
            }
        }
        InputKind::WholeCount | InputKind::Measured => {
            let oninput = Callback::from(move |event: InputEvent| {
                if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                    emit(field.value());
                }
            });
            let onunit = {
                let (typed, text) = (typed.clone(), text.clone());
                Callback::from(move |event: Event| {
                    if let Some(unit) = Unit::from_key(&value_of(&event)) {
                        typed.emit((input.key, text.clone(), unit));
                    }
                })
            };
            let onblur = left.reform(|_: FocusEvent| ());
            let units = units(input);
            let usual = input
                .usual()
                .and_then(|amount| input.unit.convert(amount, unit))
                .map(|amount| say!("{amount} if left empty", amount = written_exactly(amount, 2, Decimal::spoken())));
            html! {
                <div class="field">
                    <label for={id.clone()}>{ input.name() }</label>
                    <div class="field-unit">
                        <input {id} inputmode={if input.kind == InputKind::WholeCount { "numeric" } else { "decimal" }} autocomplete="off" placeholder={usual}
                            value={text.clone()} {oninput} {onblur}
                            aria-invalid={fault.is_some().to_string()} aria-describedby={if fault.is_some() { format!("{fault_id} {ask_id}") } else { ask_id.clone() }} />
                        if units.len() > 1 {
                            <select aria-label={say!("Unit of {reading}", reading = within(input.name()))} onchange={onunit}>
                                { for units.into_iter().map(|choice| html! { <option key={choice.key()} value={choice.key()} selected={choice == unit}>{ choice.symbol() }</option> }) }
                            </select>
                        } else if !unit.symbol().is_empty() {
                            <span class="unit">{ unit.symbol() }</span>
                        }
                    </div>
                    <small class="hint" id={ask_id}>{ input.ask() }</small>
                    if let Some(fault) = fault {
                        <p class="fault" id={fault_id} role="alert">{ fault }</p>
                    }
                </div>
            }
        }
    }
}

/// What the readings come to, what else they give, and where most of the spread comes from.
fn outcome_shown(outcome: &Outcome, instrument: &'static Instrument, system: System) -> Html {
    html! {
        <>
            <span>{ words::outcome(outcome, instrument.unit, system) }</span>
            <small>{ words::budget(outcome, instrument) }</small>
            if !outcome.also.is_empty() {
                <dl class="also">
                    { for outcome.also.iter().map(|also| html! {
                        <div key={also.key}><dt>{ also.name() }</dt><dd>{ words::also(also, system) }</dd></div>
                    }) }
                </dl>
            }
            { for outcome.says().iter().map(|sentence| html! { <small key={*sentence}>{ *sentence }</small> }) }
        </>
    }
}

/// An instrument's form.
#[component]
pub fn InstrumentForm(props: &Props) -> Html {
    let Props { instrument, given, system, verb, used, kept, advice } = props;
    let (instrument, system) = (*instrument, *system);
    let draft = use_state(|| drafted(given));
    let touched = use_state_eq(|| false);
    {
        // An undo, or another window, may change what is kept.
        let draft = draft.clone();
        use_effect_with(given.clone(), move |given| {
            if given.is_some() {
                draft.set(drafted(given));
            }
        });
    }
    let typed = readings(instrument, &draft);
    let mut faults = typed.as_ref().err().cloned().unwrap_or_default();
    let mut whole_fault = None;
    let outcome =
        typed.as_ref().ok().filter(|readings| !readings.given.is_empty()).and_then(|readings| match readings.outcome() {
            Ok(outcome) => Some(outcome),
            Err(fault) => {
                let sentence = fault.sentence(system, Decimal::spoken());
                match fault.input() {
                    Some(input) => drop(faults.insert(input.key, sentence)),
                    None => whole_fault = Some(sentence),
                }
                None
            }
        });
    let on_typed = {
        let (draft, touched) = (draft.clone(), touched.clone());
        Callback::from(move |(key, text, unit): (&'static str, String, Unit)| {
            let mut next = (*draft).clone();
            next.insert(key, Typed { text, unit });
            draft.set(next);
            touched.set(false);
        })
    };
    let left = {
        // On the bench, where nothing is answered with it, a reading is kept when a field is left.
        let (touched, kept) = (touched.clone(), kept.clone());
        let whole = outcome.as_ref().and_then(|_| typed.as_ref().ok().cloned());
        Callback::from(move |()| {
            touched.set(true);
            if let (Some(kept), Some(readings)) = (&kept, &whole) {
                kept.emit(readings.clone());
            }
        })
    };
    let use_it = {
        let (used, typed) = (used.clone(), typed.as_ref().ok().cloned());
        Callback::from(move |_: MouseEvent| {
            if let Some(readings) = &typed {
                used.emit(readings.clone());
            }
        })
    };
    let is_kept = given.as_ref().is_some_and(|kept| typed.as_ref().is_ok_and(|typed| *kept == typed.given));
    let field = |input: &'static Input| {
        // A choice that usually stands is shown as chosen.
        let preset =
            input.usual().filter(|_| matches!(input.kind, InputKind::Choice(_))).map_or(String::new(), |place| place.to_string());
        let shown = (*draft).get(input.key).cloned().unwrap_or(Typed { text: preset, unit: input.unit_in(system) });
        let fault = faults.get(input.key).filter(|_| *touched).cloned();
        html! { <Field key={input.key} {instrument} {input} text={shown.text} unit={shown.unit} {fault} typed={on_typed.clone()} left={left.clone()} /> }
    };
    // Choices and ticks are answered at a glance; numbers that usually stand may stay out of sight.
    let usual =
        |input: &&'static Input| input.usual().is_some() && matches!(input.kind, InputKind::WholeCount | InputKind::Measured);
    let spare = |input: &&'static Input| input.needed == Needed::Never;
    html! {
        <div class="reading-form">
            if !instrument.cautions().is_empty() {
                <div class="caution"><Icon shape={Shape::Care} /><div>
                    { for instrument.cautions().iter().map(|caution| html! { <p key={*caution}>{ *caution }</p> }) }
                </div></div>
            }
            { for instrument.inputs.iter().filter(|input| !usual(input) && !spare(input)).map(field) }
            if instrument.inputs.iter().any(|input| spare(&input)) {
                <details><summary>{ say!("If you have it") }</summary>
                    { for instrument.inputs.iter().filter(spare).map(field) }
                </details>
            }
            if instrument.inputs.iter().any(|input| usual(&input)) {
                <details><summary>{ say!("How good is the reading") }</summary>
                    { for instrument.inputs.iter().filter(usual).map(field) }
                </details>
            }
            if let Some(fault) = whole_fault {
                <p class="fault" role="alert">{ fault }</p>
            }
            <output class="figure">
                if let Some(outcome) = &outcome {
                    { outcome_shown(outcome, instrument, system) }
                    if let Some(sentence) = advice.as_ref().zip(typed.as_ref().ok()).and_then(|(advice, typed)| advice.emit(typed.clone())) {
                        <small class="advice">{ sentence }</small>
                    }
                } else {
                    <small>{ say!("The reading and its spread appear here.") }</small>
                }
            </output>
            if let Some(verb) = verb {
                <button type="button" class="prime" disabled={outcome.is_none() || is_kept} onclick={use_it}>
                    { if is_kept { AttrValue::Static(say!("of a reading" | "Used")) } else { verb.clone() } }
                </button>
            }
        </div>
    }
}
