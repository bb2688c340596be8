//! One garment on one printed page: what was found, what follows, and what of it is judgement.

use std::rc::Rc;

use garment_assay::fit::Person;
use garment_assay::garment::{Answer, Appraisal, Garment, Terms};
use garment_assay::lot::Stands;
use garment_assay::quantity::{System, Unit};
use garment_assay::say;
use garment_assay::trade::{Band, Question, Stage};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::{clock, document};
use crate::app::pages::fitting;
use crate::app::parts::bar::Bar;
use crate::app::parts::drawn::Drawn;
use crate::app::parts::photograph::Printed;
use crate::app::parts::tape::Tape;
use crate::app::parts::verdict::VerdictLines;
use crate::app::route::Route;
use crate::app::words;

/// Answers shown with their drawing: those that moved the result most.
const DRAWN: usize = 4;
/// Photographs shown, where there is room for a row of them.
const PHOTOGRAPHS: usize = 3;
/// Lines, as [`lines`] counts them, that may stand on the page with a row of photographs. Measured on Letter, the lower page: 19 leave room
/// for the row, 27 do not; between the two nothing was tried. `tests/browser/photographs.test.mjs`.
const LINES_ABOVE: usize = 20;
/// Longest note that a page has room for, in characters; what is over is cut, and says so.
const LONGEST_NOTE: usize = 420;

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

/// The page.
#[component]
pub fn SheetPage(props: &Props) -> Html {
    let Props { garment, appraisals, people, system } = props;
    let id = garment.id().clone();
    let appraisal = appraisals.of(garment);
    let print = Callback::from(|_: MouseEvent| document::print());
    html! {
        <>
            <Bar title={say!("Sheet")} under={garment.called().to_owned()} back={Route::Result(id.clone()).href()} back_name={say!("Back to the result")} />
            <p class="hint lonely no-print">{ say!("One page, A4 or Letter, in black ink. Choose “Save as PDF” in the browser’s dialogue for a file.") }</p>
            <article class="sheet card">
                { head(garment) }
                <section class="sheet-make">
                    <Tape appraisal={appraisal.clone()} />
                    { bands(&appraisal) }
                </section>
                { left(garment, appraisals) }
                { drawn(garment, appraisals, &appraisal, *system) }
                { answers(garment, *system) }
                { measures(garment, *system) }
                if let Some(report) = fitting::report(garment, people) {
                    <section><h3>{ say!("Fit") }</h3><VerdictLines {report} system={*system} /></section>
                }
                { buyers(garment) }
                { note(garment) }
                { photographs(garment, fitting::report(garment, people).is_some(), *system) }
                <p class="sheet-foot">{ say!("Bands, and how far each answer counts, are one expert’s judgement; instruments and standards are named in the app. A band is a belief with a chance, not a grade by a laboratory.") }{ " Garment Assay, " }{ clock::written_day(garment.noted()) }{ "." }</p>
            </article>
            <div class="foot">
                <button type="button" class="prime" onclick={print}>{ say!("to do" | "Print") }</button>
                <a class="second" href={Route::Result(id).href()}>{ say!("Back to the result") }</a>
            </div>
        </>
    }
}

fn head(garment: &Garment) -> Html {
    let terms = garment.terms();
    let noted = |text: &str| (!text.is_empty()).then(|| text.to_owned());
    let facts = [
        Some(garment.family().name().to_owned()),
        garment.is_second_hand().then(|| say!("second-hand").to_owned()),
        noted(garment.place().trim()),
        noted(garment.collection()).map(|name| say!("collection {name}", name)),
        Some(clock::written_day(garment.noted())),
        garment.ticket_in_view().map(words::ticket),
        noted(terms.supplier()).map(|name| say!("supplier {name}", name)),
        noted(terms.style()).map(|number| say!("style {number}", number)),
        noted(terms.colourways()).map(|names| say!("colours {names}", names)),
        noted(terms.sizes()).map(|sizes| say!("sizes {sizes}", sizes)),
    ];
    html! {
        <header>
            <h2>{ garment.called().to_owned() }</h2>
            <p>{ facts.into_iter().flatten().collect::<Vec<_>>().join(" · ") }</p>
        </header>
    }
}

fn bands(appraisal: &Appraisal) -> Html {
    if appraisal.evidence() == 0 {
        return Html::default();
    }
    let bands = appraisal.bands();
    html! {
        <p class="sheet-bands">{ Band::ALL.into_iter().map(|band| format!("{} {}", band.name(), words::percent(bands[band.index()]))).collect::<Vec<_>>().join(" · ") }</p>
    }
}

fn left(garment: &Rc<Garment>, appraisals: &Appraisals) -> Html {
    let Some(left) = appraisals.left(garment).filter(|left| left.evidence() > 0) else { return Html::default() };
    let (band, chance) = left.likely();
    html! { <p><b>{ say!("What is left in it:") }{ " " }</b>{ format!("{}, {}", Question::Left.word(band), words::percent(chance)) }</p> }
}

/// The answers that moved the result most, with the drawing of what was found.
fn drawn(garment: &Rc<Garment>, appraisals: &Appraisals, appraisal: &Appraisal, system: System) -> Html {
    let moved = appraisals.appraiser().moved(appraisal);
    let shown = moved.iter().filter_map(|moved| {
        let level = moved.check.levels.get(garment.level_place(moved.check)?)?;
        Some((moved, level.drawn?))
    });
    let shown: Vec<_> = shown.take(DRAWN).collect();
    if shown.is_empty() {
        return Html::default();
    }
    html! {
        <section>
            <h3>{ say!("What told most") }</h3>
            <ul class="sheet-drawn">
                { for shown.into_iter().map(|(moved, picture)| html! {
                    <li key={moved.check.key}>
                        <Drawn {picture} />
                        <b>{ moved.check.name() }</b>
                        <span>{ format!("{} · {}", words::answer(garment, moved.check, system), words::strength(moved.by)) }</span>
                    </li>
                }) }
            </ul>
        </section>
    }
}

/// Every answer, by how the garment was held.
fn answers(garment: &Garment, system: System) -> Html {
    let given = |stage: Stage| {
        garment
            .entries()
            .iter()
            .filter(move |entry| entry.check.stage == stage && entry.answer != Answer::Skipped)
            .collect::<Vec<_>>()
    };
    html! {
        <section class="sheet-answers">
            { for Stage::ALL.into_iter().filter_map(|stage| {
                let entries = given(stage);
                (!entries.is_empty()).then(|| html! {
                    <div key={stage.name()}>
                        <h3>{ stage.name() }</h3>
                        <ul>
                            { for entries.iter().map(|entry| html! {
                                <li key={entry.check.key}><b>{ entry.check.name() }</b>{ ": " }{ words::answer(garment, entry.check, system) }
                                    { note_of(garment.check_note(entry.check)) }</li>
                            }) }
                        </ul>
                    </div>
                })
            }) }
        </section>
    }
}

fn note_of(note: &str) -> Html {
    if note.is_empty() {
        Html::default()
    } else {
        html! { <i>{ format!(" {}", cut(note, 80)) }</i> }
    }
}

fn cut(text: &str, longest: usize) -> String {
    if text.chars().count() <= longest { text.to_owned() } else { text.chars().take(longest).collect::<String>() + " …" }
}

fn measures(garment: &Garment, system: System) -> Html {
    let read: Vec<String> = garment
        .measures()
        .filter_map(|(point, taped)| {
            let outcome = taped.outcome(point).ok()?;
            Some(format!("{} {}", point.name(), words::outcome(&outcome, Unit::Centimetre, system)))
        })
        .collect();
    if read.is_empty() {
        return Html::default();
    }
    html! { <section><h3>{ say!("tape measure" | "Tape") }</h3><p>{ read.join(" · ") }</p></section> }
}

fn buyers(garment: &Garment) -> Html {
    let terms = garment.terms();
    let prices = terms.prices().iter().filter_map(|price| {
        let currency = terms.currency()?;
        Some(say!("from {pieces}: {amount}", pieces = price.from, amount = words::to_the_cent(price.minor, currency)))
    });
    let facts = [
        Some(prices.collect::<Vec<_>>().join(", ")).filter(|text| !text.is_empty()),
        terms.incoterm().map(|term| term.code().to_owned()),
        terms.smallest_order().map(|pieces| say!("smallest order {pieces}", pieces)),
        terms.delivery().map(|(first, last)| {
            say!("delivery {first} to {last}", first = clock::written_day(first), last = clock::written_day(last))
        }),
        terms.shortlisted().then(|| say!("on the short list").to_owned()),
    ];
    let facts: Vec<String> = facts.into_iter().flatten().collect();
    let lot = garment.lot().map(|log| {
        let [critical, major, minor] = log.standings().map(|standing| standing.bad);
        let stands = match log.stands() {
            Stands::Open(left) => say!("lot" | "{left} left to look at", left),
            Stands::Passes => say!("lot" | "passes").to_owned(),
            Stands::Fails => say!("lot" | "fails").to_owned(),
        };
        let looked = say!(
            "Lot of {pieces}, level {level}, limits {major_limit} and {minor_limit}: {looked_at} of {sample} looked at, {critical} critical, \
             {major} major, {minor} minor",
            pieces = log.lot.pieces(),
            level = log.level.key(),
            major_limit = log.major.key(),
            minor_limit = log.minor.key(),
            looked_at = log.looked_at,
            sample = log.sample(),
            critical,
            major,
            minor,
        );
        format!("{looked}; {stands}.")
    });
    if facts.is_empty() && lot.is_none() {
        return Html::default();
    }
    html! {
        <section><h3>{ say!("Offer and lot") }</h3>
            if !facts.is_empty() {
                <p>{ facts.join(" · ") }</p>
            }
            if let Some(lot) = lot {
                <p>{ lot }</p>
            }
        </section>
    }
}

fn note(garment: &Garment) -> Html {
    if garment.note().is_empty() {
        return Html::default();
    }
    html! { <section><h3>{ say!("Note") }</h3><p>{ cut(garment.note(), LONGEST_NOTE) }</p></section> }
}

/// How many lines the longer parts take, roughly: answers in two columns of some 55 letters, the rest in lines of some 110.
fn lines(garment: &Garment, with_fit: bool, system: System) -> usize {
    let of = |text: usize, line: usize| text.div_ceil(line);
    let answers = garment.entries().iter().filter(|entry| entry.answer != Answer::Skipped).map(|entry| {
        let note = garment.check_note(entry.check).chars().count().min(80);
        of(entry.check.name().len() + 2 + words::answer(garment, entry.check, system).chars().count() + note, 55)
    });
    let stages = 2 * Stage::ALL.len();
    let measures = 2 * garment.measures().count().min(1) + garment.measures().count().div_ceil(4);
    let note = if garment.note().is_empty() { 0 } else { 2 + of(garment.note().chars().count().min(LONGEST_NOTE), 100) };
    let offered = if *garment.terms() == Terms::default() && garment.lot().is_none() { 0 } else { 4 };
    (answers.sum::<usize>() + stages).div_ceil(2) + measures + note + offered + if with_fit { 6 } else { 0 }
}

/// A few photographs, those with words first; none where the page would become two.
fn photographs(garment: &Garment, with_fit: bool, system: System) -> Html {
    let all = garment.photographs().all();
    if all.is_empty() || lines(garment, with_fit, system) > LINES_ABOVE {
        return Html::default();
    }
    let (said, unsaid): (Vec<_>, Vec<_>) = all.iter().partition(|one| !one.caption().is_empty());
    html! {
        <section>
            <h3>{ say!("Photographs") }</h3>
            <ul class="sheet-photographs">{ for said.into_iter().chain(unsaid).take(PHOTOGRAPHS).map(|one| html! { <Printed key={one.id().to_string()} one={one.clone()} /> }) }</ul>
        </section>
    }
}
