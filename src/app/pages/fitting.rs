//! The fitting room of a garment: whether it fits a person, now and later. Each part is useful alone, and each can be passed over.

use std::rc::Rc;

use garment_assay::catalog::FitTable;
use garment_assay::fit::Person;
use garment_assay::garment::{Act, FitAct, FitReport, Garment, Spoken, fit};
use garment_assay::quantity::System;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::fit_words;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::fit_inside::Inside;
use crate::app::parts::fit_later::Later;
use crate::app::parts::fit_mirror::Mirror;
use crate::app::parts::fit_scale::FitScale;
use crate::app::parts::fit_tape::TapeRows;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::verdict::VerdictLines;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// People whose measures are kept, by name.
    pub people: Vec<Rc<Person>>,
    /// Metric or imperial.
    pub system: System,
    /// Whether something can be taken back.
    pub can_take_back: bool,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// What must be said before anything is put on.
const CAUTIONS: [&str; 2] = [
    "Ask before you try on goods that are not yours, and do not strain seams or fastenings.",
    "New goods can hold pins or bits of needle: feel bands and hems from outside before you step in.",
];

/// The person for whom it is noted; none where nobody is, or that person is no longer kept.
fn wearer<'a>(garment: &Garment, people: &'a [Rc<Person>]) -> Option<&'a Rc<Person>> {
    let who = garment.fitting().who()?;
    people.iter().find(|person| person.id() == who)
}

/// What everything comes to, for pages that show the verdict alone.
pub fn report(garment: &Garment, people: &[Rc<Person>]) -> Option<FitReport> {
    fit(garment, wearer(garment, people).map(Rc::as_ref))
}

/// A choice of few, as native radio buttons side by side.
fn choice<T: Copy + PartialEq + 'static>(
    name: &'static str,
    legend: &'static str,
    choices: &[(T, &'static str, &'static str)],
    chosen: Option<T>,
    choose: &Callback<T>,
) -> Html {
    html! {
        <fieldset class="chips">
            <legend>{ legend }</legend>
            { for choices.iter().enumerate().map(|(place, (value, word, says))| {
                let value = *value;
                let onchange = choose.reform(move |_: Event| value);
                html! {
                    <label key={place} class="chip" data-chosen={(chosen == Some(value)).to_string()}>
                        <input type="radio" {name} checked={chosen == Some(value)} {onchange} />
                        <span><b>{ *word }</b>if !says.is_empty() { <small>{ *says }</small> }</span>
                    </label>
                }
            }) }
        </fieldset>
    }
}

/// Who it is for.
fn who(garment: &Rc<Garment>, people: &[Rc<Person>], act: &Callback<FitAct>, send: &Callback<Message>) -> Html {
    // Whoever is added here is chosen here, and their measures are asked for at once.
    let add = send.reform(|_: MouseEvent| Message::Person(Box::new(Person::new(clock::new_person_id(), ""))));
    let chosen = wearer(garment, people);
    let gone = garment.fitting().who().is_some() && chosen.is_none();
    html! {
        <section class="card">
            <h2>{ "For whom" }</h2>
            <fieldset class="chips">
                <legend class="unseen">{ "For whom it is" }</legend>
                { for people.iter().map(|person| {
                    let is = chosen.is_some_and(|other| other.id() == person.id());
                    let onchange = { let id = person.id().clone(); act.reform(move |_: Event| FitAct::Who(Some(id.clone()))) };
                    let name = if person.name().is_empty() { "No name" } else { person.name() };
                    html! {
                        <label key={person.id().as_str()} class="chip" data-chosen={is.to_string()}>
                            <input type="radio" name="who" checked={is} {onchange} /><span><b>{ name.to_owned() }</b></span>
                        </label>
                    }
                }) }
            </fieldset>
            if gone {
                <p class="hint">{ "The person it was noted for is no longer kept on this device." }</p>
            }
            if people.is_empty() {
                <p class="hint">{ "Measures stay on this device. Without any, the mirror below still tells." }</p>
            }
            <p class="fit-links">
                if let Some(person) = chosen {
                    <a href={Route::Person(person.id().clone(), Some(garment.id().clone())).href()}>{ "Measures" }</a>
                }
                <button type="button" class={if people.is_empty() { "second" } else { "ghost" }} onclick={add}>{ "Add a person" }</button>
            </p>
        </section>
    }
}

/// How it is meant to lie, and what the cloth gives.
fn cut(garment: &Rc<Garment>, table: &'static FitTable, report: &FitReport, act: &Callback<FitAct>) -> Html {
    let choices: Vec<(&'static str, &'static str, &'static str)> =
        table.cuts.iter().map(|cut| (cut.key, cut.name, cut.says)).collect();
    let choose = {
        let act = act.clone();
        Callback::from(move |key: &'static str| {
            act.emit(FitAct::Cut(table.cuts.iter().copied().find(|cut| cut.key == key)));
        })
    };
    let (give, _) = report.give;
    html! {
        <section class="card">
            <h2>{ "Cut and cloth" }</h2>
            { choice("cut", "How it is meant to lie", &choices, Some(report.cut.key), &choose) }
            if let Some(check) = table.give {
                <p class="hint">
                    if report.give_known {
                        { format!("The cloth gives about {give:.0} %: from your answer. ") }
                    } else {
                        { format!("Taken as cloth that gives about {give:.0} %, which is usual; nobody pulled it yet. ") }
                    }
                    <a href={Route::Check(garment.id().clone(), check.key.to_owned()).href()}>{ if report.give_known { "Look again" } else { "Pull it" } }</a>
                </p>
            }
        </section>
    }
}

/// The fitting room.
#[component]
pub fn FittingPage(props: &Props) -> Html {
    let Props { garment, people, system, can_take_back, send } = props;
    let id = garment.id().clone();
    let act = {
        let id = id.clone();
        send.reform(move |act: Act| Message::Done(id.clone(), act))
    };
    let note = act.reform(Act::Fit);
    let take_back = {
        let id = id.clone();
        send.reform(move |_: MouseEvent| Message::TakeBack(id.clone()))
    };
    let label = if garment.label().is_empty() { garment.family().name } else { garment.label() };
    let bar = html! {
        <Bar title="Fitting room" under={label.to_owned()} back={Route::Result(id.clone()).href()} back_name="Back to the result">
            <button type="button" class="icon-button" onclick={take_back} disabled={!can_take_back} aria-label="Undo"><Icon shape={Shape::Undo} /></button>
        </Bar>
    };
    let (Some(table), Some(report)) = (garment.family().fit, report(garment, people)) else {
        return html! {
            <>
                { bar }
                <section class="card"><h2>{ "Not written yet" }</h2><p>{ "Nobody has written down how pieces of this kind are fitted." }</p></section>
            </>
        };
    };
    let deciding = match report.decides() {
        Some(Spoken::Row(place)) => report.rows.get(place).and_then(|row| row.fit.clone().ok()),
        _ => None,
    };
    let (lead, rest) = fit_words::verdict(&report);
    html! {
        <>
            { bar }
            <div class="fit-pinned">
                <VerdictLines report={report.clone()} system={*system} />
                if let Some(fit) = deciding {
                    <FitScale {fit} later=true brief=true />
                }
                <p class="unseen" aria-live="polite">{ format!("{lead}, {rest}.") }</p>
            </div>
            { who(garment, people, &note, send) }
            { cut(garment, table, &report, &note) }
            <TapeRows garment={garment.clone()} report={report.clone()} system={*system} act={act} />
            <Later garment={garment.clone()} {table} report={report.clone()} system={*system} act={note.clone()} />
            <Mirror garment={garment.clone()} {table} act={note.clone()} />
            <Inside garment={garment.clone()} {table} report={report.clone()} system={*system} act={note} />
            <section class="card">
                <h2>{ "Take care" }</h2>
                { for CAUTIONS.iter().map(|caution| html! { <p key={*caution} class="caution"><Icon shape={Shape::Care} /><span>{ *caution }</span></p> }) }
                <p class="hint">{ "Fit and quality are two things: this moves no band. How much ease a cut has, what wear does and what counts as fitting is mostly judgement. " }
                    <a href={Route::Numbers.href()}>{ "Where the numbers come from" }</a></p>
            </section>
            <div class="foot">
                <a class="prime" href={Route::Resume(id.clone()).href()}>{ "Go on checking" }</a>
                <a class="second" href={Route::Result(id).href()}>{ "See the result" }</a>
            </div>
        </>
    }
}
