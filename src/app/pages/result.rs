//! What the evidence of a garment says: the band, what moved it, what would settle it further, and what it does not say.

use std::rc::Rc;

use garment_assay::catalog::second_hand;
use garment_assay::fit::Person;
use garment_assay::garment::{Answer, Appraisal, Garment, Moved, Proposal};
use garment_assay::language::{one, said, within};
use garment_assay::lot::Stands;
use garment_assay::quantity::System;
use garment_assay::say;
use garment_assay::trade::{Aspect, Band, Stage};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::clock;
use crate::app::pages::fitting;
use crate::app::pages::left::{self, LeftCard};
use crate::app::parts::bar::Bar;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::tape::Tape;
use crate::app::parts::verdict::VerdictLines;
use crate::app::route::Route;
use crate::app::words;

/// Rows of "what moved it" and "what would settle it" shown at first.
const FEW: usize = 8;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// People whose measures are kept, by name.
    pub people: Vec<Rc<Person>>,
    /// Metric or imperial.
    pub system: System,
}

/// A bar to the right for what moved the result up, to the left for what moved it down.
fn bar(by: f64, largest: f64) -> Html {
    let length = (by.abs() / largest.max(1e-9) * 48.0).clamp(1.0, 48.0);
    let (x, class) = if by >= 0.0 { (50.0, "moved-up") } else { (50.0 - length, "moved-down") };
    html! {
        <svg class="moved-bar" viewBox="0 0 100 14" aria-hidden="true" focusable="false" preserveAspectRatio="none">
            <path class="moved-zero" d="M50 0v14" />
            <rect {class} x={format!("{x:.1}")} y="2" width={format!("{length:.1}")} height="10" rx="1.5" />
        </svg>
    }
}

pub(super) fn moved_rows(garment: &Rc<Garment>, moved: &[Moved], system: System) -> Html {
    let largest = moved.first().map_or(0.0, |moved| moved.by.abs());
    html! {
        <ul class="moved">
            { for moved.iter().map(|moved| html! {
                <li key={moved.check.key}>
                    <a href={Route::Check(garment.id().clone(), moved.check.key.to_owned()).href()}>
                        <b>{ moved.check.name() }</b>
                        <small>{ words::answer(garment, moved.check, system) }</small>
                    </a>
                    { bar(moved.by, largest) }
                    <span class="unseen">{ words::strength(moved.by) }</span>
                </li>
            }) }
        </ul>
    }
}

fn further_rows(garment: &Rc<Garment>, proposals: &[Proposal]) -> Html {
    html! {
        <ul class="further">
            { for proposals.iter().map(|proposal| html! {
                <li key={proposal.check.key}>
                    <a href={Route::Check(garment.id().clone(), proposal.check.key.to_owned()).href()}>
                        <b>{ proposal.check.name() }</b>
                        <small>{ say!("{stage}, about {time}", stage = within(proposal.check.stage.name()), time = words::duration(proposal.seconds)) }</small>
                    </a>
                </li>
            }) }
        </ul>
    }
}

fn aspects(appraisal: &Appraisal) -> Html {
    let (strongest, weakest) = (appraisal.strongest(), appraisal.weakest());
    let all = appraisal.aspects();
    if all.is_empty() {
        return Html::default();
    }
    let unseen: Vec<String> = Aspect::ALL
        .into_iter()
        .filter(|aspect| all.iter().all(|(known, _)| known != aspect))
        .map(|aspect| within(aspect.name()))
        .collect();
    let stand = match (strongest, weakest) {
        (Some(best), Some(worst)) => {
            say!("{best} stands above the rest, {worst} below it.", best = best.name(), worst = within(worst.name()))
        }
        (Some(best), None) => say!("{aspect} stands above the rest.", aspect = best.name()),
        (None, Some(worst)) => say!("{aspect} stands below the rest.", aspect = worst.name()),
        (None, None) => say!("No aspect clearly stands out.").to_owned(),
    };
    html! {
        <section class="card">
            <h2>{ say!("Strong and weak") }</h2>
            <p>{ stand }{ if unseen.is_empty() { String::new() } else { format!(" {}", say!("Not looked at: {aspects}.", aspects = unseen.join(", "))) } }</p>
            <ul class="aspects">
                { for all.into_iter().map(|(aspect, reading)| {
                    let along = |quality: f64| ((quality.clamp(-3.0, 3.0) + 3.0) / 6.0 * 100.0 * 10.0).round() / 10.0;
                    let (low, middle, high) = (along(reading.mean - 1.28 * reading.sd), along(reading.mean), along(reading.mean + 1.28 * reading.sd));
                    let place = words::place(reading.mean);
                    html! {
                        <li key={aspect.name()}>
                            <b>{ aspect.name() }</b>
                            <svg class="aspect-bar" viewBox="0 0 100 12" aria-hidden="true" focusable="false" preserveAspectRatio="none">
                                <rect class="tape-strip" y="3" width="100" height="6" />
                                <path class="aspect-cuts" d={Band::BORDERS.map(|border| format!("M{} 3v6", along(border))).concat()} />
                                <path class="aspect-range" d={format!("M{low} 6H{high}")} />
                                <path class="aspect-middle" d={format!("M{middle} 0v12")} />
                            </svg>
                            <small>{ place }{ " · " }{ if one(reading.answers) { say!("{count} answer", count = reading.answers) } else { say!("{count} answers", count = reading.answers) } }</small>
                        </li>
                    }
                }) }
            </ul>
        </section>
    }
}

/// Facts about what the garment cost to make, from its answers.
fn cost_facts(garment: &Rc<Garment>, system: System) -> Html {
    let facts: Vec<_> = garment
        .entries()
        .iter()
        .filter(|entry| matches!(entry.answer, Answer::Judged { .. } | Answer::Measured(_)))
        .filter_map(|entry| Some((entry.check, entry.check.speaks.cost()?)))
        .collect();
    html! {
        <section class="card">
            <h2>{ say!("What it cost to make") }</h2>
            <p class="hint">{ say!("Quality and cost are two things. These answers speak of work and material, not of how good the garment is.") }</p>
            if facts.is_empty() {
                <p>{ say!("No check that speaks of cost is answered yet.") }</p>
            } else {
                <ul class="facts">
                    { for facts.into_iter().map(|(check, meaning)| html! {
                        <li key={check.key}>
                            <a href={Route::Check(garment.id().clone(), check.key.to_owned()).href()}><b>{ check.name() }</b><small>{ words::answer(garment, check, system) }</small></a>
                            <p>{ meaning }</p>
                        </li>
                    }) }
                </ul>
            }
        </section>
    }
}

/// What this result does not say, for this garment.
fn silences(garment: &Garment) -> Vec<String> {
    let made: Vec<_> = garment.entries().iter().filter(|entry| entry.check.speaks.left().is_none()).collect();
    let missing: Vec<&str> = Stage::ALL
        .into_iter()
        .filter(|stage| *stage != Stage::OnTheHanger)
        .filter(|stage| !made.iter().any(|entry| entry.check.stage == *stage && entry.answer != Answer::Skipped))
        .map(|stage| match stage {
            Stage::OnTheHanger | Stage::InHand => say!("not looked at" | "in your hands"),
            Stage::InsideOut => say!("not looked at" | "inside out"),
            Stage::Worn => say!("not looked at" | "worn"),
        })
        .collect();
    let mut silences = Vec::new();
    if !missing.is_empty() {
        silences.push(say!(
            "It was not looked at {how}. If that is because something looked bad, the band is too kind.",
            how = words::joined(&missing)
        ));
    }
    silences.extend(
        [
            say!("How long it will last. No data tie checks like these to years of wear; washing and use decide much of it."),
            say!("Whether the price is fair. In a university test of 65 garments, price did not tell which lasted."),
            say!("What the next piece of the same style is like. One piece says little about a lot."),
            say!("Anything you could not see or feel: fibre shares, dye, how people were paid."),
        ]
        .map(str::to_owned),
    );
    silences
}

/// The result of a garment.
/// What a buyer has noted of it, in a line.
fn buyers_line(garment: &Garment) -> String {
    let terms = garment.terms();
    let lot = garment.lot().map(|log| match log.stands() {
        Stands::Open(left) => say!("lot of {pieces}: {left} pieces left to look at", pieces = log.lot.pieces(), left),
        Stands::Passes => say!("lot of {pieces}: passes", pieces = log.lot.pieces()),
        Stands::Fails => say!("lot of {pieces}: fails", pieces = log.lot.pieces()),
    });
    let facts = [
        Some(terms.supplier().to_owned()).filter(|text| !text.is_empty()),
        Some(terms.style().to_owned()).filter(|text| !text.is_empty()),
        terms.shortlisted().then(|| say!("on the short list").to_owned()),
        lot,
    ];
    let facts: Vec<String> = facts.into_iter().flatten().collect();
    if facts.is_empty() {
        say!("For buyers: a supplier’s terms and what they come to once landed; a lot judged by a sample.").to_owned()
    } else {
        facts.join(" · ")
    }
}

#[component]
pub fn ResultPage(props: &Props) -> Html {
    let Props { garment, appraisals, people, system } = props;
    let id = garment.id().clone();
    let appraisal = appraisals.of(garment);
    let moved = use_memo((garment.clone(), appraisals.clone()), |(garment, appraisals)| {
        appraisals.appraiser().moved(&appraisals.of(garment))
    });
    let all = use_state_eq(|| false);
    let toggle = {
        let all = all.clone();
        Callback::from(move |_: MouseEvent| all.set(!*all))
    };
    let further = appraisals.appraiser().most_telling(garment, &appraisal);
    let shown = if *all { moved.len() } else { moved.len().min(FEW) };
    let label = garment.called();
    let under = [
        Some(garment.family().name().to_owned()),
        Some(say!("noted {day}", day = clock::written_day(garment.noted()))),
        Some(garment.place().to_owned()).filter(|place| !place.is_empty()),
    ];
    let beside = Route::Beside(vec![id.clone()]).href();
    let worn = if garment.is_second_hand() { second_hand::CAUTIONS } else { &[] };
    let cautions: Vec<&str> = worn.iter().map(|caution| said(caution)).chain(garment.family().cautions()).collect();
    html! {
        <>
            <Bar title={label.to_owned()} under={under.into_iter().flatten().collect::<Vec<_>>().join(" · ")} back="#/" back_name={say!("Back to the rack")}>
                <a class="icon-button" href={Route::Details(id.clone()).href()} aria-label={say!("Details: name, place, ticket, note")}><Icon shape={Shape::Edit} /></a>
                <a class="icon-button" href={Route::Checks(id.clone()).href()} aria-label={say!("All checks")}><Icon shape={Shape::List} /></a>
            </Bar>
            <div class="tape-pinned"><Tape appraisal={appraisal.clone()} /></div>
            <p class="why">{ match (appraisal.evidence(), appraisal.is_settled()) {
                (0, _) => say!("No answer speaks of quality yet. Make a check or two.").to_owned(),
                (1, false) => say!("From 1 answer. It is early: more checks will move it.").to_owned(),
                (count, false) => say!("From {count} answers. It is not settled: the checks below would tell more.", count),
                (1, true) => say!("From 1 answer.").to_owned(),
                (count, true) => say!("From {count} answers. Two neighbouring bands hold four fifths of it: enough for most decisions.", count),
            } }</p>
            if let Some(left) = appraisals.left(garment) {
                <LeftCard garment={garment.clone()} appraisals={appraisals.clone()} {left} system={*system} />
            }
            <section class="card">
                <h2>{ say!("Ticket") }</h2>
                <p class="figure">{ garment.ticket().map_or_else(|| say!("not noted").to_owned(), words::ticket) }</p>
                <p class="hint">{ match garment.ticket() {
                    Some(ticket) if ticket.face_down => say!("It lies face down. Guess what it asks, then turn it over."),
                    Some(_) => say!("What cloth, making, shop and tax explain of it, and what others like it ask."),
                    None => say!("What a garment like this would ask, part by part."),
                } }</p>
                if garment.is_second_hand() {
                    <p class="hint">{ said(left::NO_BUILD_UP) }</p>
                }
                <p><a class="second" href={Route::Ticket(id.clone()).href()}>{ say!("Behind the ticket") }</a></p>
            </section>
            <section class="card">
                <h2>{ say!("Offer and lot") }</h2>
                <p class="hint">{ buyers_line(garment) }</p>
                <div class="row">
                    <a class="second" href={Route::Offer(id.clone()).href()}>{ say!("Offer") }</a>
                    <a class="second" href={Route::Lot(id.clone()).href()}>{ say!("Lot") }</a>
                    <a class="second" href={Route::Sheet(id.clone()).href()}>{ say!("Sheet to print") }</a>
                </div>
            </section>
            if let Some(report) = fitting::report(garment, people) {
                <section class="card">
                    <h2>{ say!("Fit") }</h2>
                    <VerdictLines {report} system={*system} />
                    <p class="hint">{ say!("Apart from the band: a well-made piece may not fit, and a poor one may.") }</p>
                    <p><a class="second" href={Route::Fitting(id.clone()).href()}>{ say!("Fitting room") }</a></p>
                </section>
            }
            if !moved.is_empty() {
                <section class="card">
                    <h2>{ say!("What moved the result") }</h2>
                    <p class="hint">{ say!("To the right: up. To the left: down. Tap one to look again.") }</p>
                    { moved_rows(garment, &moved[..shown], *system) }
                    if moved.len() > FEW {
                        <button type="button" class="ghost" onclick={toggle} aria-expanded={all.to_string()}>
                            { if *all { say!("Show fewer").to_owned() } else { say!("Show all {count}", count = moved.len()) } }
                        </button>
                    }
                </section>
            }
            { aspects(&appraisal) }
            <section class="card">
                <h2>{ say!("What would settle it further") }</h2>
                if further.is_empty() {
                    <p>{ say!("No check that is left would move the band much.") }</p>
                } else {
                    { further_rows(garment, &further[..further.len().min(4)]) }
                }
            </section>
            { cost_facts(garment, *system) }
            <section class="card">
                <h2>{ say!("Photographs") }</h2>
                <p class="hint">{ say!("Evidence to see again or to show: kept on this device, beside the notes.") }</p>
                <p><a class="second" href={Route::Photographs(id.clone(), None).href()}>{ match garment.photographs().count() {
                    0 => say!("Add a photograph").to_owned(),
                    count => words::photographs(count),
                } }</a></p>
            </section>
            if !garment.note().is_empty() {
                <section class="card"><h2>{ say!("Note") }</h2><p class="note-text">{ garment.note() }</p></section>
            }
            <section class="card">
                <h2>{ say!("What this does not say") }</h2>
                <ul class="silences">{ for silences(garment).into_iter().map(|silence| html! { <li key={silence.clone()}>{ silence }</li> }) }</ul>
                <p class="hint">{ say!("How telling each check is, and how many garments give each answer, is judgement.") }{ " " }<a href={Route::Numbers.href()}>{ say!("Where the numbers come from") }</a></p>
            </section>
            if !cautions.is_empty() {
                <details class="card">
                    <summary>{ say!("Take care ({count})", count = cautions.len()) }</summary>
                    <ul class="silences">{ for cautions.into_iter().map(|caution| html! { <li key={caution}>{ caution }</li> }) }</ul>
                </details>
            }
            <div class="foot">
                <a class="prime" href={Route::Resume(id).href()}>{ say!("Go on checking") }</a>
                <a class="second" href={beside}>{ say!("Set beside another") }</a>
            </div>
        </>
    }
}
