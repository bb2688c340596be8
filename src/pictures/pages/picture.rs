//! Reading a picture: take it, mark what is of known size and what is to be read, look at what was found, use the reading.

use std::rc::Rc;

use garment_assay::garment::Readings;
use garment_assay::language;
use garment_assay::measure::MarkedYarn;
use garment_assay::quantity::System;
use garment_assay::say;
use photo::{Object, Point, Said};
use yew::prelude::*;

use crate::browser::pictures::Picture;
use crate::parts::known_size::{KnownSize, KnownSizeForm};
use crate::parts::marking::Marks;
use crate::parts::picture::PictureBoard;
use crate::parts::picture_job::Job;
use crate::parts::picture_result::{PictureResult, shown};
use crate::parts::reading_of_picture::{Asking, ReadingProgress, use_reader};
use crate::parts::take::Take;
use crate::shared::bar::Bar;
use crate::shared::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is read.
    pub job: Job,
    /// Metric or imperial.
    pub system: System,
    /// Where "back" leads.
    pub back: AttrValue,
    /// Whether the reading is for a check.
    pub for_check: bool,
    /// Called with readings that are to be used.
    pub used: Callback<Readings>,
}

/// How many marks what is of known size takes.
fn of_size(job: Job, known: &KnownSize) -> usize {
    if job.needs_size() { known.kind.marks() } else { 0 }
}

/// What is of known size, by the first of all marks; none where none is needed.
fn object(job: Job, known: &KnownSize, all: &[Point], system: System) -> Result<Option<Object>, String> {
    if !job.needs_size() {
        return Ok(None);
    }
    known.object(&all[..of_size(job, known).min(all.len())], system).map(Some)
}

/// That a smaller copy is read.
fn smaller([width, height]: [u32; 2], [less_width, less_height]: [u32; 2]) -> String {
    say!(
        "The picture has {width} × {height} pixels. It is read at {less_width} × {less_height}, which is enough and spares memory.",
        width,
        height,
        less_width,
        less_height
    )
}

/// The page.
#[component]
pub fn PicturePage(props: &Props) -> Html {
    let Props { job, system, back, for_check, used } = props;
    let (job, system, for_check) = (*job, *system, *for_check);
    let instrument = job.instrument();
    let own = job.marks().len();
    let picture = use_state(|| None::<Picture>);
    let known = use_state(|| KnownSize::usual(system));
    let marks = use_state(|| Marks::new(of_size(job, &known) + own));
    let said = use_state_eq(|| Said::Nothing);
    let yarn = use_state_eq(|| MarkedYarn::End);
    let kept = use_state_eq(|| false);
    let reader = use_reader();
    let back = back.clone();
    let Some(taken) = (*picture).clone() else {
        let taken = {
            let (picture, reader) = (picture.clone(), reader.clone());
            Callback::from(move |taken: Picture| {
                reader.open(&taken);
                picture.set(Some(taken));
            })
        };
        return html! {
            <>
                <Bar title={instrument.name()} under={instrument.says()} {back} back_name={say!("Back")} />
                <Take how={job.how()} aim={job.aim()} {taken}>
                    <section class="card">
                        <h2>{ say!("Where the formula comes from") }</h2>
                        <dl class="numbers">{ for instrument.sources.iter().map(|source| html! { <div key={source.name()}><dt>{ source.name() }</dt><dd>{ source.title() }</dd></div> }) }</dl>
                    </section>
                </Take>
            </>
        };
    };
    let ask = {
        let (reader, known, kept) = (reader.clone(), known.clone(), kept.clone());
        move |marks: &Marks, said: Said| {
            let Some(all) = marks.all() else { return };
            let Ok(object) = object(job, &known, &all, system) else { return };
            if let Some(ask) = job.ask(object, &all[all.len() - own..], said) {
                kept.set(false);
                reader.ask(ask);
            }
        }
    };
    let on_marks = {
        let (marks, said, reader, ask) = (marks.clone(), said.clone(), reader.clone(), ask.clone());
        Callback::from(move |next: Marks| {
            if next.places() != marks.places() {
                said.set(Said::Nothing);
                // Once there was an answer, a mark that is moved asks again.
                if reader.was_asked() && next.all().is_some() { ask(&next, Said::Nothing) } else { reader.forget() }
            }
            marks.set(next);
        })
    };
    let on_known = {
        let (known, marks, said, reader) = (known.clone(), marks.clone(), said.clone(), reader.clone());
        Callback::from(move |next: KnownSize| {
            if next.kind != known.kind {
                marks.set(marks.with_front(next.kind.marks(), own));
            }
            said.set(Said::Nothing);
            reader.forget();
            known.set(next);
        })
    };
    let say = {
        let (said, marks, ask) = (said.clone(), marks.clone(), ask.clone());
        Callback::from(move |what: Said| {
            said.set(what);
            ask(&marks, what);
        })
    };
    let mark_yarn = {
        let (yarn, kept) = (yarn.clone(), kept.clone());
        Callback::from(move |which: MarkedYarn| {
            yarn.set(which);
            kept.set(false);
        })
    };
    let count = {
        let (marks, said, ask) = (marks.clone(), said.clone(), ask.clone());
        Callback::from(move |_: MouseEvent| ask(&marks, *said))
    };
    let another = {
        let (picture, marks, known, said, reader) = (picture.clone(), marks.clone(), known.clone(), said.clone(), reader.clone());
        Callback::from(move |_: MouseEvent| {
            reader.close();
            said.set(Said::Nothing);
            marks.set(Marks::new(of_size(job, &known) + own));
            picture.set(None);
        })
    };
    let front = of_size(job, &known);
    let names =
        (0..front).map(|mark| known.kind.mark(mark)).chain(job.marks().iter().map(|(name, _)| language::said(name).to_owned()));
    let all = marks.all();
    let heard = reader.answer();
    let how = match marks.chosen() {
        _ if heard.is_some() => "",
        _ if all.is_some() => say!("See that each mark is right: drag it, or move it by arrow keys."),
        mark if mark < front => known.kind.how(mark),
        mark => job.marks().get(mark - front).map_or("", |(_, how)| language::said(how)),
    };
    let joins = (front > 0).then(|| (known.kind.join(), 0, front - 1)).into_iter();
    let joins = joins.chain(job.joins().iter().map(|(join, first, last)| (*join, first + front, last + front)));
    let ready = all.as_ref().is_some_and(|all| object(job, &known, all, system).is_ok());
    let readings = heard.as_ref().and_then(|heard| job.readings(heard, *yarn));
    let use_it = readings.clone().filter(|readings| readings.outcome().is_ok());
    let onuse = {
        let (used, use_it, kept) = (used.clone(), use_it.clone(), kept.clone());
        Callback::from(move |_: MouseEvent| {
            let Some(readings) = use_it.clone() else { return };
            kept.set(!for_check);
            used.emit(readings);
        })
    };
    html! {
        <div class="picture-screen" data-told={heard.is_some().to_string()}>
            <Bar title={instrument.name()} {back} back_name={say!("Back")} />
            <PictureBoard picture={taken.clone()} names={Rc::new(names.collect::<Vec<_>>())} marks={(*marks).clone()} joins={Rc::new(joins.collect::<Vec<_>>())}
                found={Rc::new(heard.as_ref().map(shown).unwrap_or_default())} {how} on={on_marks} />
            <ReadingProgress reader={reader.clone()} />
            if let Some(heard) = heard {
                <PictureResult {heard} {readings} said={*said} {say} yarn={*yarn} {mark_yarn} {system} />
            }
            if job.needs_size() {
                <KnownSizeForm known={(*known).clone()} {system} on={on_known} />
            }
            if let Some([width, height]) = taken.reduced_from() {
                <p class="why">{ smaller([width, height], taken.size()) }</p>
            }
            <div class="foot">
                <button type="button" class="second" onclick={another}>{ say!("Other picture") }</button>
                if let Some(readings) = &use_it {
                    <button type="button" class="prime" onclick={onuse} disabled={*kept}>
                        { match (readings.outcome(), for_check, *kept) {
                            (_, false, true) => say!("Kept").to_owned(),
                            (Ok(outcome), true, _) => say!("Use {reading}", reading = words::value(outcome.value, outcome.uncertainty)),
                            _ => say!("Keep this reading").to_owned(),
                        } }
                    </button>
                } else {
                    <button type="button" class="prime" onclick={count} disabled={!ready || reader.state() == Asking::Open}>{ job.verb() }</button>
                }
            </div>
        </div>
    }
}
