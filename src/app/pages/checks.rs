//! Every check of a garment, by stage, with its answer.

use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::garment::{Answer, Garment, Standing};
use garment_assay::quantity::System;
use garment_assay::say;
use garment_assay::trade::{Question, Stage};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::parts::bar::Bar;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::tape::Tape;
use crate::app::route::Route;
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// Key of the check that is open beside the list.
    #[prop_or_default]
    pub open: Option<AttrValue>,
    /// Metric or imperial.
    pub system: System,
}

/// What stands behind a check in the list, and its state for the style sheets.
fn state(garment: &Garment, check: &'static Check, system: System) -> (&'static str, String) {
    let said = words::answer(garment, check, system);
    match (garment.answer(check), garment.standing(check)) {
        (_, Standing::Closed) => ("closed", say!("does not apply here").to_owned()),
        (None, _) => ("open", said),
        (Some(Answer::Skipped), _) => ("skipped", said),
        (Some(_), _) => ("answered", said),
    }
}

/// The list itself, for its own page and for the side of a wide screen: the make by stage, then what is left as a group of its own.
#[component]
pub fn CheckList(props: &Props) -> Html {
    let garment = &props.garment;
    let (left, made): (Vec<&'static Check>, Vec<&'static Check>) =
        garment.checks().partition(|check| check.speaks.left().is_some());
    let group = |name: &'static str, checks: Vec<&'static Check>| {
        let done = checks.iter().filter(|check| garment.answer(check).is_some_and(|answer| *answer != Answer::Skipped)).count();
        html! {
            <section key={name}>
                <h2>{ name }<small>{ say!("{done} of {all}", done, all = checks.len()) }</small></h2>
                <ul>
                    { for checks.into_iter().map(|check| {
                        let (state, answer) = state(garment, check, props.system);
                        let current = (props.open.as_deref() == Some(check.key)).then_some("page");
                        html! {
                            <li key={check.key} data-state={state}>
                                <a href={Route::Check(garment.id().clone(), check.key.to_owned()).href()} aria-current={current}>
                                    <b>{ check.name() }</b>
                                    if !answer.is_empty() {
                                        <span>{ answer }</span>
                                    }
                                </a>
                            </li>
                        }
                    }) }
                </ul>
            </section>
        }
    };
    html! {
        <div class="check-list">
            { for Stage::ALL.into_iter().filter_map(|stage| {
                // A jacket has nothing to look at on the hanger.
                let here: Vec<_> = made.iter().copied().filter(|check| check.stage == stage).collect();
                (!here.is_empty()).then(|| group(stage.name(), here))
            }) }
            if !left.is_empty() {
                { group(Question::Left.name(), left) }
            }
        </div>
    }
}

#[derive(Properties, PartialEq)]
pub struct PageProps {
    /// The garment.
    pub garment: Rc<Garment>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// Metric or imperial.
    pub system: System,
}

/// The page of all checks.
#[component]
pub fn Checks(props: &PageProps) -> Html {
    let PageProps { garment, appraisals, system } = props;
    let id = garment.id().clone();
    let under = say!("{done} of {all} answered", done = garment.answered(), all = garment.checks().count());
    html! {
        <>
            <Bar title={say!("All checks")} {under} back={Route::Resume(id.clone()).href()} back_name={say!("Back to checking")}>
                <a class="icon-button" href={Route::TapeSheet(id.clone()).href()} aria-label={say!("Tape sheet: girths and lengths")}><Icon shape={Shape::Ruler} /></a>
                <a class="icon-button" href={Route::Details(id.clone()).href()} aria-label={say!("Details: name, place, ticket, note")}><Icon shape={Shape::Edit} /></a>
            </Bar>
            <Tape appraisal={appraisals.of(garment)} />
            <p class="lonely"><a href={Route::Desk(Some(id.clone())).href()}>{ say!("On one sheet") }</a></p>
            <div class="card"><CheckList garment={garment.clone()} system={*system} /></div>
            if garment.family().fit.is_some() {
                <section class="card">
                    <h2>{ say!("Does it fit") }</h2>
                    <p class="hint">{ say!("Tape and mirror, today and after washing. It moves no band.") }</p>
                    <p><a class="second" href={Route::Fitting(id.clone()).href()}>{ say!("Fitting room") }</a></p>
                </section>
            }
            <div class="foot">
                <a class="prime" href={Route::Resume(id.clone()).href()}>{ say!("Go on checking") }</a>
                <a class="second" href={Route::Result(id).href()}>{ say!("See the result") }</a>
            </div>
        </>
    }
}
