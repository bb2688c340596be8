//! One question of practice: specimens, the answers, and afterwards what was true.

use garment_assay::practice::{Described, Given, Judged, Next, PriceGuess, Takes};
use garment_assay::quantity::{Decimal, written};
use garment_assay::say;
use garment_assay::trade::Band;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::drawn::Drawn;
use crate::app::browser::document::focus_on;
use crate::app::money::sum;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The question.
    pub next: Next,
    /// How it was answered, once it is.
    pub judged: Option<Judged>,
    /// Called with an answer.
    pub answer: Callback<Given>,
    /// Called to go on.
    pub on: Callback<()>,
}

/// What was found on a garment, as lines.
fn evidence(described: &Described) -> Html {
    html! {
        <>
            <p>{ say!("{garment}, in {shop}.", garment = described.family().name(), shop = described.channel().name()) }</p>
            <ul class="practice-evidence">
                { for described.answers().iter().map(|(check, level)| html! {
                    <li key={check.key}><small>{ check.name() }</small>{ " " }<b>{ level.name() }</b></li>
                }) }
            </ul>
        </>
    }
}

/// A guess at band and ticket.
#[component]
fn WholeAnswer(props: &WholeProps) -> Html {
    let WholeProps { described, answer } = props;
    let band = use_state_eq(|| None::<usize>);
    let (low, high) = (use_node_ref(), use_node_ref());
    let fault = use_state_eq(|| None::<&'static str>);
    let amount = |field: &NodeRef| field.cast::<HtmlInputElement>().map(|field| field.value()).unwrap_or_default();
    let onsubmit = {
        let (band, low, high, fault, answer) = (band.clone(), low.clone(), high.clone(), fault.clone(), answer.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            let Some(band) = *band else {
                fault.set(Some(say!("Choose a band.")));
                return;
            };
            let (low, high) = (amount(&low), amount(&high));
            let number = |text: &str| {
                text.trim().replace(',', ".").parse::<f64>().ok().filter(|number| number.is_finite() && *number > 0.0)
            };
            let guess = match (low.trim().is_empty() && high.trim().is_empty(), number(&low), number(&high)) {
                (true, ..) => None,
                (false, Some(low), Some(high)) if low <= high => Some(PriceGuess { low, high }),
                _ => {
                    fault.set(Some(say!("Type two prices, the smaller first, or none.")));
                    return;
                }
            };
            answer.emit(Given::BandAndTicket(band, guess));
        })
    };
    let currency = described.ticket().map(|(_, currency)| currency.code());
    html! {
        <form {onsubmit} novalidate=true>
            <fieldset class="chips">
                <legend>{ say!("How well made") }</legend>
                { for Band::ALL.into_iter().map(|one| {
                    let onchange = { let band = band.clone(); Callback::from(move |_: Event| band.set(Some(one.index()))) };
                    html! {
                        <label key={one.name()} class="chip" data-chosen={(*band == Some(one.index())).to_string()}>
                            <input type="radio" name="practice-band" checked={*band == Some(one.index())} {onchange} /><span>{ one.name() }</span>
                        </label>
                    }
                }) }
            </fieldset>
            if let Some(currency) = currency {
                <div class="practice-prices">
                    <div class="field"><label for="practice-low">{ say!("Ticket at least, {currency}", currency) }</label><input id="practice-low" ref={low} inputmode="decimal" autocomplete="off" /></div>
                    <div class="field"><label for="practice-high">{ say!("At most, {currency}", currency) }</label><input id="practice-high" ref={high} inputmode="decimal" autocomplete="off" /></div>
                </div>
                <p class="hint">{ say!("So wide that four tickets of five would lie inside. Leave both empty to guess the band alone.") }</p>
            }
            if let Some(fault) = *fault {
                <p class="fault" role="alert">{ fault }</p>
            }
            <p><button type="submit" class="prime">{ say!("verb" | "Answer") }</button></p>
        </form>
    }
}

#[derive(Properties, PartialEq)]
struct WholeProps {
    described: Described,
    answer: Callback<Given>,
}

/// The answers of a question about specimens, as buttons: one tap answers.
fn buttons(takes: &Takes, answer: &Callback<Given>) -> Html {
    match takes {
        Takes::OneOf(choices) => html! {
            <div class="practice-choices">
                { for choices.iter().enumerate().map(|(place, word)| {
                    let onclick = answer.reform(move |_: MouseEvent| Given::OneOf(place));
                    html! { <button key={place} type="button" class="second" {onclick}>{ *word }</button> }
                }) }
            </div>
        },
        Takes::Count(least, most) => html! {
            <div class="practice-choices practice-numbers">
                { for (*least..=*most).map(|number| {
                    let onclick = answer.reform(move |_: MouseEvent| Given::Count(number));
                    html! { <button key={number} type="button" class="second" {onclick}>{ number }</button> }
                }) }
            </div>
        },
        Takes::BandAndTicket => Html::default(),
    }
}

/// How a range did.
fn of_the_range(held: bool, points: f64) -> String {
    let points = written(points.clamp(0.0, 100.0), 0, Decimal::spoken());
    if held {
        say!("Your range held it: {points} points of 100.", points)
    } else {
        say!("Your range did not hold it: {points} points of 100.", points)
    }
}

/// What is true, and how the guess at the ticket was.
fn told(next: &Next, judged: &Judged) -> Html {
    let ticket = next.question.described().and_then(|described| {
        let (ticket, currency) = described.ticket()?;
        let (low, high) = described.likely()?;
        Some(say!(
            "Its ticket: {price}. The app would have said {low} to {high}.",
            price = sum(currency, ticket),
            low = sum(currency, low),
            high = sum(currency, high)
        ))
    });
    html! {
        <>
            <p class="practice-told" data-right={judged.right.to_string()}><b>{ if judged.right { say!("of an answer" | "Right") } else { say!("Not so") } }</b>{ format!(": {}. ", judged.truth) }{ judged.because.clone() }</p>
            if let Some(ticket) = ticket {
                <p>{ ticket }
                    if let Some(score) = judged.ticket {
                        { " " }{ of_the_range(score.held, score.points) }
                    }
                </p>
            }
            if !judged.right {
                <p class="hint">{ next.question.topic.look_at() }</p>
            }
        </>
    }
}

/// The card.
#[component]
pub fn QuestionCard(props: &Props) -> Html {
    let Props { next, judged, answer, on } = props;
    let heading = use_node_ref();
    let onward = use_node_ref();
    {
        // Read aloud as it comes, and the next one a key away.
        let (heading, onward) = (heading.clone(), onward.clone());
        use_effect_with(judged.is_some(), move |answered| {
            focus_on(if *answered { &onward } else { &heading });
        });
    }
    let question = &next.question;
    let onclick = on.reform(|_: MouseEvent| ());
    html! {
        <section class="card practice-question">
            <h2 ref={heading} tabindex="-1">{ question.asks() }</h2>
            if next.again {
                <p class="hint">{ say!("A like one that you missed before.") }</p>
            }
            if !question.shown.is_empty() {
                <div class="practice-shown" data-count={question.shown.len().to_string()}>
                    { for question.shown.iter().enumerate().map(|(place, shown)| html! {
                        <figure key={place}>
                            <Drawn picture={shown.picture} seed={shown.seed} aloud={judged.is_some()} />
                            if question.shown.len() > 1 {
                                <figcaption>{ if place == 0 { say!("The first") } else { say!("The second") } }</figcaption>
                            }
                        </figure>
                    }) }
                </div>
                if judged.is_none() {
                    <p class="unseen">{ say!("A drawn specimen. What it shows is the question; it is told in words after the answer.") }</p>
                }
            }
            if let Some(described) = question.described() {
                { evidence(described) }
            }
            if let Some(judged) = judged {
                <div role="status">{ told(next, judged) }</div>
                <p><button ref={onward} type="button" class="prime" {onclick}>{ say!("Next") }</button></p>
            } else if let Some(described) = question.described() {
                <WholeAnswer described={described.clone()} answer={answer.clone()} />
            } else {
                { buttons(&question.takes, answer) }
            }
        </section>
    }
}
