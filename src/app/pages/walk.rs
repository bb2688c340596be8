//! One check at a time, the tape always in view.

use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::garment::{Act, Answer, Appraisal, Garment, Proposal, Reason};
use garment_assay::grading::Care;
use garment_assay::language::within;
use garment_assay::learn::Subject;
use garment_assay::quantity::System;
use garment_assay::say;
use garment_assay::trade::Question;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::address;
use crate::app::model::Message;
use crate::app::parts::answers::Answers;
use crate::app::parts::bar::Bar;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::note::Note;
use crate::app::parts::reading::Reading;
use crate::app::parts::tape::Tape;
use crate::app::route::Route;
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// The check that is put.
    pub check: &'static Check,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// Metric or imperial.
    pub system: System,
    /// Whether something can be taken back.
    pub can_take_back: bool,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The line under the garment's name: how far, and how long until it settles.
fn progress(garment: &Garment, appraisals: &Appraisals, appraisal: &Appraisal) -> String {
    let (answered, all) = (garment.answered(), garment.checks().count());
    let settles = match appraisals.appraiser().settling(garment, appraisal) {
        // Before the third answer the time is mostly a guess (simulated: 163 s said where the middle garment took 100).
        _ if appraisal.evidence() < 3 => String::new(),
        Some(seconds) if seconds <= 0.0 => format!(" · {}", say!("settled")),
        Some(seconds) => format!(" · {}", say!("{time} to settle", time = words::duration(seconds))),
        None => String::new(),
    };
    format!("{}{settles}", say!("{answered} of {all}", answered, all))
}

fn why(proposal: &Proposal) -> String {
    match proposal.reason {
        Reason::Telling => {
            say!(
                "It tells more about the band than any other check for {time} of work.",
                time = words::duration(proposal.seconds)
            )
        }
        Reason::WhileHeld => say!("You hold the garment the right way for it now.").to_owned(),
        Reason::Opens => say!("Its answer decides whether another check is worth making.").to_owned(),
        Reason::Costs => say!("It says what the garment cost to make, not how good it is.").to_owned(),
        Reason::LeftOver => say!("It will hardly move the band any more.").to_owned(),
    }
}

/// One check of a garment.
#[component]
pub fn Walk(props: &Props) -> Html {
    let Props { garment, check, appraisals, system, can_take_back, send } = props;
    let check = *check;
    let id = garment.id().clone();
    // The tape on the screen is the one that the answer moves.
    let appraisal = appraisals.for_check(garment, check);
    let next = appraisals.appraiser().next(garment, &appraisals.of(garment), Some(check));
    let answer = garment.answer(check);
    let unsure = use_state_eq(|| false);
    let noting = use_state_eq(|| false);
    {
        // What is half-said belongs to one check.
        let (unsure, noting) = (unsure.clone(), noting.clone());
        let has_note = !garment.check_note(check).is_empty();
        use_effect_with((id.clone(), check.key), move |_| {
            unsure.set(false);
            noting.set(has_note);
        });
    }
    // What was answered goes before what is only ticked.
    let (chosen, is_unsure) = match answer {
        Some(Answer::Judged { level, care }) => (Some(*level), *care == Care::Unsure),
        _ => (None, *unsure),
    };
    let read = garment
        .reading(check)
        .and_then(Result::ok)
        .and_then(|outcome| check.weights(&outcome))
        .map(|weights| weights.parts().to_vec());
    let act = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |act: Act| send.emit(Message::Done(id.clone(), act)))
    };
    let judged = move |level: &'static str, unsure: bool| {
        let care = if unsure { Care::Unsure } else { Care::Usual };
        Act::Answer(check, Answer::Judged { level, care })
    };
    let choose = {
        let act = act.clone();
        Callback::from(move |level| act.emit(judged(level, is_unsure)))
    };
    let onunsure = {
        let (act, unsure) = (act.clone(), unsure.clone());
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                unsure.set(field.checked());
                if let Some(level) = chosen {
                    act.emit(judged(level, field.checked()));
                }
            }
        })
    };
    let next_href =
        next.as_ref().map_or(Route::Result(id.clone()), |next| Route::Check(id.clone(), next.check.key.to_owned())).href();
    let cannot_tell = {
        let act = act.clone();
        Callback::from(move |_: MouseEvent| act.emit(Act::Answer(check, Answer::CannotTell)))
    };
    let clear = {
        let act = act.clone();
        Callback::from(move |_: MouseEvent| act.emit(Act::Clear(check)))
    };
    let answered = answer.is_some_and(|answer| *answer != Answer::Skipped);
    let onward = {
        let (act, next_href) = (act.clone(), next_href.clone());
        Callback::from(move |_: MouseEvent| {
            if !answered {
                act.emit(Act::Answer(check, Answer::Skipped));
            }
            address::open(&next_href);
        })
    };
    let take_back = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |_: MouseEvent| send.emit(Message::TakeBack(id.clone())))
    };
    let toggle_note = {
        let noting = noting.clone();
        Callback::from(move |_: MouseEvent| noting.set(!*noting))
    };
    let write_note = act.reform(move |text| Act::CheckNote(check, text));
    let label = garment.called();
    html! {
        <>
            <Bar title={label.to_owned()} under={progress(garment, appraisals, &appraisal)} back="#/" back_name={say!("Back to the rack")}>
                <button type="button" class="icon-button" onclick={take_back} disabled={!can_take_back} aria-label={say!("Undo")}><Icon shape={Shape::Undo} /></button>
                <a class="icon-button" href={Route::Checks(id.clone()).href()} aria-label={say!("All checks")}><Icon shape={Shape::List} /></a>
            </Bar>
            <div class="tape-pinned"><Tape appraisal={appraisal.clone()} /></div>
            <article class="card check" key={check.key}>
                <p class="eyebrow">
                    <span class="stage">{ check.stage.name() }</span>
                    { format!("{} · {}", check.aspect.name(), words::duration(f64::from(check.seconds))) }
                    if check.speaks.left().is_some() {
                        <span class="cost-only">{ within(Question::Left.name()) }</span>
                    } else if check.speaks.curve().is_none() {
                        <span class="cost-only">{ say!("cost only") }</span>
                    }
                </p>
                <h2 tabindex="-1" data-opens="">{ check.question() }</h2>
                <p class="hint">{ check.how() }</p>
                if let Some(look) = garment.look(check).filter(|look| !look.at().is_empty()) {
                    <p class="hint"><b>{ say!("Here:") }{ " " }</b>{ look.at() }</p>
                }
                if let Some(caution) = check.caution() {
                    <p class="caution"><Icon shape={Shape::Care} /><span>{ caution }</span></p>
                }
                if !check.instruments.is_empty() {
                    <Reading {check} kept={match answer { Some(Answer::Measured(readings)) => Some(readings.clone()), _ => None }} system={*system} marks={Route::Marks(String::new(), Some((id.clone(), check.key.to_owned()))).href()} live={Route::Live(String::new(), Some((id.clone(), check.key.to_owned()))).href()} picture={Route::Picture(String::new(), Some((id.clone(), check.key.to_owned()))).href()} act={act.clone()} />
                }
                <Answers {check} {chosen} {read} {choose} />
                if let Some(mend) = garment.mend(check) {
                    <p><b>{ say!("What to do:") }{ " " }</b>{ mend }</p>
                }
                <label class="tick"><input type="checkbox" checked={is_unsure} onchange={onunsure} /><span>{ say!("I am not sure of this") }</span></label>
                <div class="row">
                    <button type="button" class="ghost" aria-pressed={(answer == Some(&Answer::CannotTell)).to_string()} onclick={cannot_tell}>{ say!("Can't tell") }</button>
                    if answered {
                        <button type="button" class="ghost" onclick={clear}>{ say!("Take answer back") }</button>
                    }
                    <button type="button" class="ghost" aria-expanded={noting.to_string()} onclick={toggle_note}>
                        { if garment.check_note(check).is_empty() { say!("Add a note") } else { say!("Note") } }
                    </button>
                </div>
                <p><a href={Route::Photographs(id.clone(), Some(check.key.to_owned())).href()}>{ match garment.photographs().of_check(check) {
                    0 => say!("Add a photograph").to_owned(),
                    count => words::photographs(count),
                } }</a></p>
                if *noting {
                    <Note id="check-note" label={say!("Note on this check")} text={garment.check_note(check).to_owned()} write={write_note} />
                }
                <details class="meaning">
                    <summary>{ say!("What it says, and what it does not") }</summary>
                    <p>{ check.meaning() }</p>
                    if let Some(cost) = check.speaks.cost() {
                        <p>{ cost }</p>
                    }
                    <p class="sources">{ say!("Leans on: {sources}.", sources = check.sources.iter().map(|source| source.name()).collect::<Vec<_>>().join("; ")) }</p>
                </details>
                <p><a href={Route::Lesson(Subject::with(garment.family(), check).key().to_owned(), check.key.to_owned(), Some(id.clone())).href()}>{ say!("Read about this check") }</a></p>
            </article>
            if let Some(next) = &next {
                <p class="why">{ say!("Next:") }{ " " }<b>{ next.check.name() }</b>{ format!(" ({}). ", within(next.check.stage.name())) }{ why(next) }</p>
            } else {
                <p class="why">{ say!("That was the last check.") }</p>
            }
            <div class="foot">
                <button type="button" class={if answered || next.is_none() { "prime" } else { "second" }} onclick={onward}>
                    { match (answered, next.is_some()) {
                        (true, true) => say!("Next check"),
                        (false, true) => say!("Skip for now"),
                        (_, false) => say!("See the result"),
                    } }
                </button>
                if next.is_some() {
                    <a class="second" href={Route::Result(id).href()}>{ say!("See the result") }</a>
                }
            </div>
        </>
    }
}
