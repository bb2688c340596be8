//! Practice: choosing, a run of two minutes, and what it came to.

use std::rc::Rc;

use garment_assay::cost::Rates;
use garment_assay::language::{one, within};
use garment_assay::practice::{
    Given, Judged, Level, Next, Plan, RUN_SECONDS, Run, SHARED_QUESTIONS, Skill, Topic, Topics, Trial, next_topic, skill,
};
use garment_assay::say;
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::clock;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::practice_question::QuestionCard;
use crate::app::parts::typed::Typed;
use crate::app::words::percent;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was answered before, oldest first.
    pub trials: Rc<Vec<Trial>>,
    /// The market, and what was changed of its rates, for tickets of made-up garments.
    pub rates: Rates,
    /// What follows from evidence.
    pub appraisals: Appraisals,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// A run under way: the question on the screen and, once answered, how it was.
#[derive(Clone, PartialEq)]
struct Underway {
    run: Run,
    next: Next,
    judged: Option<Judged>,
    began: f64,
}

#[derive(Clone, PartialEq)]
enum Stage {
    Choosing,
    Underway(Box<Underway>),
    Over(Run),
}

/// A bar from 0 to 100: where the share of specimens known lies, four times of five.
fn known_bar(skill: &Skill) -> Html {
    let [low, middle, high] = skill.known().map(|share| (share * 1000.0).round() / 10.0);
    html! {
        <svg class="skill-bar" viewBox="0 0 100 12" aria-hidden="true" focusable="false" preserveAspectRatio="none">
            <rect class="tape-strip" y="3" width="100" height="6" />
            <path class="aspect-range" d={format!("M{low} 6H{high}")} />
            <path class="aspect-middle" d={format!("M{middle} 0v12")} />
        </svg>
    }
}

fn known_words(skill: &Skill) -> String {
    let [low, _, high] = skill.known();
    format!(
        "{} · {}",
        say!("{low} to {high}", low = percent(low), high = percent(high)),
        if one(skill.trials) {
            say!("{count} answer", count = skill.trials)
        } else {
            say!("{count} answers", count = skill.trials)
        }
    )
}

/// What is known of the learner, topic by topic.
fn eye(trials: &[Trial], forget: Callback<MouseEvent>) -> Html {
    if trials.is_empty() {
        return Html::default();
    }
    let rows = Topic::ALL.map(|topic| (topic, skill(trials, topic)));
    let next = next_topic(trials, Topics::ALL);
    html! {
        <section class="card">
            <h2>{ say!("Your eye so far") }</h2>
            <p class="hint">{ say!("Of a hundred middling specimens, how many you would know, blind guesses left out: four times of five it lies within the dashes.") }</p>
            <ul class="aspects">
                { for rows.iter().filter(|(_, skill)| skill.trials > 0).map(|(topic, skill)| html! {
                    <li key={topic.key()}>
                        <b>{ topic.name() }</b>
                        if skill.says_something() { { known_bar(skill) } }
                        <small>
                            if skill.says_something() {
                                { known_words(skill) }
                            } else {
                                { say!("{count} of 5 answers that it takes to say something", count = skill.trials) }
                            }
                        </small>
                    </li>
                }) }
            </ul>
            if let Some(topic) = next {
                <p><b>{ say!("Next: {topic}.", topic = within(topic.name())) }{ " " }</b>{ topic.look_at() }</p>
            }
            <p><button type="button" class="ghost" onclick={forget}>{ say!("Forget all of it") }</button></p>
        </section>
    }
}

/// How a run went.
fn over(run: &Run, again: Callback<MouseEvent>) -> Html {
    let all = run.answered().len();
    let missed: Vec<Topic> = Topic::ALL
        .into_iter()
        .filter(|topic| run.answered().iter().any(|answered| answered.question.topic == *topic && !answered.judged.right))
        .collect();
    let points: Vec<f64> =
        run.answered().iter().filter_map(|answered| answered.judged.ticket.map(|score| score.points)).collect();
    html! {
        <section class="card">
            <h2>{ say!("{count} of {all} right", count = run.right(), all) }</h2>
            if run.is_shared() {
                <p>{ say!("The run {code}. Everyone who types this code is asked the same.", code = run.plan().code()) }</p>
            }
            if !points.is_empty() {
                <p>{ say!("Guesses at tickets: {points} points of 100 on average.", points = (points.iter().sum::<f64>() / points.len() as f64).clamp(0.0, 100.0).round_ties_even()) }</p>
            }
            if missed.is_empty() {
                <p>{ if all == 0 { say!("Nothing was answered.") } else { say!("Nothing was missed. The next run will be harder.") } }</p>
            } else {
                <h3>{ say!("What to look at next time") }</h3>
                <ul class="silences">{ for missed.into_iter().map(|topic| html! { <li key={topic.key()}><b>{ topic.name() }</b>{ ": " }{ topic.look_at() }</li> }) }</ul>
            }
            <p><button type="button" class="prime" onclick={again}>{ say!("Back to practice") }</button></p>
        </section>
    }
}

/// The page.
#[component]
pub fn PracticePage(props: &Props) -> Html {
    let Props { trials, rates, appraisals, send } = props;
    let stage = use_state(|| Stage::Choosing);
    let chosen = use_state_eq(|| Topics::ALL);
    let level = use_state_eq(Level::default);
    let handed = use_state_eq(clock::seed);
    let ask = {
        let (trials, rates, appraisals) = (trials.clone(), rates.clone(), appraisals.clone());
        move |run: &Run| {
            // What this run adds is in the run already.
            let before = &trials[..trials.len().saturating_sub(run.answered().len())];
            run.next(before, &rates, appraisals.appraiser())
        }
    };
    let start = {
        let (stage, ask) = (stage.clone(), ask.clone());
        move |run: Run| {
            if let Some(next) = ask(&run) {
                stage.set(Stage::Underway(Box::new(Underway { run, next, judged: None, began: clock::seconds() })));
            }
        }
    };
    let body = match &*stage {
        Stage::Choosing => {
            let begin = {
                let (start, chosen) = (start.clone(), chosen.clone());
                Callback::from(move |_: MouseEvent| start(Run::own(Plan::new(clock::seed(), *chosen, Level::default()))))
            };
            let by_code = {
                let start = start.clone();
                Callback::from(move |text: String| {
                    if text.trim().is_empty() {
                        return Ok(());
                    }
                    let plan = Plan::of_code(&text).map_err(|fault| fault.to_string())?;
                    start(Run::shared(plan));
                    Ok(())
                })
            };
            let forget = send.reform(|_: MouseEvent| Message::ForgetPractice);
            let plan = Plan::new(*handed, *chosen, *level);
            let another = {
                let handed = handed.clone();
                Callback::from(move |_: MouseEvent| handed.set(clock::seed()))
            };
            let hand = {
                let start = start.clone();
                Callback::from(move |_: MouseEvent| start(Run::shared(plan)))
            };
            html! {
                <>
                    <section class="card">
                        <h2>{ say!("Two minutes") }</h2>
                        <p>{ say!("Specimens are drawn, and what is true of each is known. They follow you: what you know gets harder, and what you miss comes back.") }</p>
                        { topics(&chosen) }
                        <p><button type="button" class="prime" onclick={begin}>{ say!("Start") }</button></p>
                    </section>
                    { eye(trials, forget) }
                    <section class="card">
                        <h2>{ say!("The same for everyone") }</h2>
                        <Typed id="practice-code" label={say!("A code that you were given")} kept="" write={by_code} hint={say!("Eight signs. It brings {count} questions, about two minutes.", count = SHARED_QUESTIONS)} />
                        <details class="fit-label">
                            <summary>{ say!("Hand out a run") }</summary>
                            <p class="hint">{ say!("About the topics ticked above. Whoever types the code gets these very specimens.") }</p>
                            <fieldset class="chips">
                                <legend>{ say!("How hard") }</legend>
                                { for Level::ALL.into_iter().map(|one| {
                                    let onchange = { let level = level.clone(); Callback::from(move |_: Event| level.set(one)) };
                                    html! {
                                        <label key={one.name()} class="chip" data-chosen={(*level == one).to_string()}>
                                            <input type="radio" name="practice-level" checked={*level == one} {onchange} /><span>{ one.name() }</span>
                                        </label>
                                    }
                                }) }
                            </fieldset>
                            <output class="figure practice-code">{ plan.code() }</output>
                            <p><button type="button" class="ghost" onclick={another}>{ say!("Another code") }</button>{ " " }<button type="button" class="second" onclick={hand}>{ say!("Try it") }</button></p>
                        </details>
                    </section>
                </>
            }
        }
        Stage::Underway(now) => {
            let answer = {
                let (stage, now, send) = (stage.clone(), now.as_ref().clone(), send.clone());
                Callback::from(move |given: Given| {
                    if now.judged.is_some() {
                        return;
                    }
                    if let Some((run, judged)) = now.run.clone().after(now.next.question.clone(), given) {
                        if let Some(trial) = run.trials().last() {
                            send.emit(Message::Practised(*trial));
                        }
                        stage.set(Stage::Underway(Box::new(Underway { run, judged: Some(judged), ..now.clone() })));
                    }
                })
            };
            let on = {
                let (stage, now, ask) = (stage.clone(), now.clone(), ask.clone());
                Callback::from(move |()| {
                    let run = now.run.clone();
                    match ask(&run).filter(|_| !run.is_over(clock::seconds() - now.began)) {
                        Some(next) => {
                            stage.set(Stage::Underway(Box::new(Underway { run, next, judged: None, began: now.began })))
                        }
                        None => stage.set(Stage::Over(run)),
                    }
                })
            };
            let stop = {
                let (stage, run) = (stage.clone(), now.run.clone());
                Callback::from(move |_: MouseEvent| stage.set(Stage::Over(run.clone())))
            };
            let place = now.run.answered().len() + usize::from(now.judged.is_none());
            html! {
                <>
                    <QuestionCard key={place} next={now.next.clone()} judged={now.judged.clone()} {answer} {on} />
                    <p class="lonely"><button type="button" class="ghost" onclick={stop}>{ say!("Stop here") }</button></p>
                </>
            }
        }
        Stage::Over(run) => {
            let again = {
                let stage = stage.clone();
                Callback::from(move |_: MouseEvent| stage.set(Stage::Choosing))
            };
            over(run, again)
        }
    };
    let under = match &*stage {
        Stage::Choosing => say!("Train your eye on drawn specimens").to_owned(),
        Stage::Underway(now) => {
            let place = now.run.answered().len() + usize::from(now.judged.is_none());
            if now.run.is_shared() {
                format!(
                    "{} · {}",
                    say!("Question {place} of {all}", place, all = SHARED_QUESTIONS),
                    say!("answers" | "{count} right", count = now.run.right())
                )
            } else {
                let left = (RUN_SECONDS - (clock::seconds() - now.began)).max(0.0);
                format!(
                    "{} · {} · {}",
                    say!("Question {place}", place),
                    say!("answers" | "{count} right", count = now.run.right()),
                    say!("about {seconds} s left", seconds = (left / 10.0).ceil() * 10.0)
                )
            }
        }
        Stage::Over(_) => say!("The run is over").to_owned(),
    };
    html! {
        <>
            <Bar title={say!("Practise")} {under} back="#/" back_name={say!("Back to the rack")} />
            { body }
        </>
    }
}

/// What is to be practised, as boxes to tick; the last one ticked stays.
fn topics(chosen: &UseStateHandle<Topics>) -> Html {
    html! {
        <fieldset class="chips practice-topics">
            <legend>{ say!("About what") }</legend>
            { for Topic::ALL.into_iter().map(|topic| {
                let is = chosen.contains(topic);
                let onchange = {
                    let chosen = chosen.clone();
                    Callback::from(move |_: Event| {
                        let now: Vec<Topic> = Topic::ALL.into_iter().filter(|other| chosen.contains(*other) != (*other == topic)).collect();
                        if let Some(now) = Topics::of(&now) {
                            chosen.set(now);
                        }
                    })
                };
                html! {
                    <label key={topic.key()} class="chip" data-chosen={is.to_string()}>
                        <input type="checkbox" checked={is} {onchange} /><span><b>{ topic.name() }</b></span>
                    </label>
                }
            }) }
        </fieldset>
    }
}
