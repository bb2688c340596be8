//! One lesson: a check with all that is to be read about it.

use std::rc::Rc;

use garment_assay::language::within;
use garment_assay::learn::{Course, Lesson, Section, Telling, Text};
use garment_assay::practice::Topic;
use garment_assay::say;
use garment_assay::source::{Kind, Source};
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::lessons::Here;
use crate::app::parts::bar::Bar;
use crate::app::parts::drawn::Drawn;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::which_worse::WhichWorse;
use crate::app::route::Route;
use crate::app::words::{duration, percent};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The course in which it stands.
    pub course: Rc<Course>,
    /// Its place there, from 0.
    pub place: usize,
    /// The longer texts of the course.
    pub here: Here,
    /// Whether it was read.
    pub is_read: bool,
    /// The check of a garment from which it was opened, as an address.
    pub from: Option<AttrValue>,
    /// Called with whether it was read.
    pub mark: Callback<bool>,
}

/// Every answer, drawn, from the worst to the best.
fn levels(lesson: &Lesson) -> Html {
    html! {
        <section class="card">
            <h2>{ say!("What you may find") }</h2>
            <p class="hint">{ if lesson.telling.is_some() { say!("From the worst to the best.") } else { say!("From plain to costly, or in no order; none is better.") } }</p>
            <ol class="lesson-levels">
                { for lesson.check.levels.iter().map(|level| html! {
                    <li key={level.key}>
                        if let Some(picture) = level.drawn {
                            <Drawn {picture} />
                        }
                        <span><b>{ level.name() }</b><small>{ level.line() }</small></span>
                    </li>
                }) }
            </ol>
        </section>
    }
}

/// What it means; with the longer text, or a sentence on where that is.
fn meaning(lesson: &Lesson, here: &Here, text: Option<&Text>) -> Html {
    let sections = [Section::Wear, Section::Silent, Section::Fooled, Section::Faked];
    html! {
        <section class="card lesson-text" aria-busy={(*here == Here::OnTheWay).then_some("true")}>
            <h2>{ say!("What it means") }</h2>
            <p>{ lesson.check.meaning() }</p>
            if let Some(cost) = lesson.check.speaks.cost() {
                <p>{ cost }</p>
            }
            { match (here, text) {
                (_, Some(text)) => html! {
                    <>
                        { for sections.into_iter().map(|section| html! {
                            <div key={section.heading()}><h3>{ section.heading() }</h3><p>{ text.section(section).to_owned() }</p></div>
                        }) }
                    </>
                },
                (Here::OnTheWay, None) => html! { <p class="hint">{ say!("More is on its way.") }</p> },
                (Here::Read(_), None) => html! { <p class="hint">{ say!("No more is written about this check yet.") }</p> },
                (Here::Missing, None) => html! {
                    <p class="hint" role="status">{ say!("There is more to read, and it could not be fetched. Open this lesson again when you have a network; what stands here holds without it.") }</p>
                },
                (Here::Unreadable(fault), None) => html! {
                    <p class="hint" role="status">{ say!("There is more to read, and it cannot be shown. {fault}", fault) }</p>
                },
            } }
        </section>
    }
}

/// A strip from 0 to 100: how many are Fine or Exceptional after this answer, and the mark where they are before any.
fn strip(telling: &Telling, after: f64) -> Html {
    let at = |share: f64| (share * 1000.0).round() / 10.0;
    html! {
        <svg class="telling-bar" viewBox="0 0 100 12" aria-hidden="true" focusable="false" preserveAspectRatio="none">
            <rect class="tape-strip" y="3" width="100" height="6" />
            <rect class="telling-after" y="3" width={at(after).to_string()} height="6" />
            <path class="telling-before" d={format!("M{} 0v12", at(telling.better_before()))} />
        </svg>
    }
}

fn telling(lesson: &Lesson, text: Option<&Text>) -> Html {
    html! {
        <section class="card">
            <h2>{ say!("How telling it is") }</h2>
            { for lesson.telling_words().into_iter().map(|sentence| html! { <p>{ sentence }</p> }) }
            if let Some(telling) = &lesson.telling {
                <ul class="telling">
                    { for lesson.check.levels.iter().zip(&telling.alone).map(|(level, alone)| html! {
                        <li key={level.key}><b>{ level.name() }</b>{ strip(telling, alone.better()) }<small>{ percent(alone.better()) }</small></li>
                    }) }
                </ul>
                <p class="hint">{ say!("How many count as {bands} after that answer alone. The line marks the {share} before any.", bands = lesson.better_words(), share = percent(telling.better_before())) }</p>
            }
            <h3>{ Section::Basis.heading() }</h3>
            <p>{ lesson.sure_words() }</p>
            if let Some(text) = text {
                <p>{ text.section(Section::Basis).to_owned() }</p>
            }
        </section>
    }
}

fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Standard => say!("standard or law"),
        Kind::Document => say!("book, study or bulletin"),
        Kind::Computed => say!("computed here"),
        Kind::CommonPractice => say!("common practice, no source"),
        Kind::Judgement => say!("judgement"),
        Kind::Memory => say!("from memory, not confirmed"),
    }
}

/// The name of a source, and what sort it is where the name does not say so.
fn named(source: &Source) -> String {
    let kind = kind(source.kind);
    if kind.starts_with(source.name()) { kind.to_owned() } else { say!("{source} ({kind})", source = source.name(), kind) }
}

fn sources(lesson: &Lesson) -> Html {
    html! {
        <section class="card">
            <h2>{ say!("What it leans on") }</h2>
            <dl class="numbers">
                { for lesson.check.sources.iter().map(|source: &&'static Source| html! {
                    <div key={source.title()}><dt>{ named(source) }</dt><dd>{ source.title() }</dd></div>
                }) }
            </dl>
            <p><a href={Route::Numbers.href()}>{ say!("All sources, and the numbers of each check") }</a></p>
        </section>
    }
}

fn practise(topic: Topic) -> Html {
    html! {
        <section class="card">
            <h2>{ say!("Practise it") }</h2>
            <p>{ topic.look_at() }</p>
            <p><a href={Route::Practice.href()}>{ say!("Practise on drawn specimens: {topic}", topic = within(topic.name())) }</a></p>
        </section>
    }
}

/// The lesson.
#[component]
pub fn LessonPage(props: &Props) -> Html {
    let Props { course, place, here, is_read, from, mark } = props;
    let seed = use_memo((course.subject.key(), *place), |_| clock::seed());
    let Some(lesson) = course.at(*place) else { return Html::default() };
    let check = lesson.check;
    let text = here.texts().and_then(|texts| texts.of(check.key));
    let all = course.lessons().count();
    let near = |place: Option<usize>| place.and_then(|place| course.at(place));
    let (before, after) = (near(place.checked_sub(1)), near(place.checked_add(1)));
    let href = |lesson: &Lesson| Route::Lesson(lesson.subject.key().to_owned(), lesson.check.key.to_owned(), None).href();
    let in_course = Route::Course(course.subject.key().to_owned()).href();
    let (back, back_name) = match from {
        Some(from) => (from.clone(), say!("Back to the check")),
        None => (AttrValue::from(in_course.clone()), say!("Back to the course")),
    };
    // The way on, what it is called once the lesson is read, and before.
    let (onward, read, unread) = match (from, after) {
        (Some(from), _) => (from.clone(), say!("Back to the check"), say!("Read: back to the check")),
        (None, Some(after)) => (AttrValue::from(href(after)), say!("Next lesson"), say!("Read: next lesson")),
        (None, None) => (AttrValue::from(in_course.clone()), say!("Back to the course"), say!("Read: back to the course")),
    };
    let onread = mark.reform(|_: MouseEvent| true);
    let onunread = mark.reform(|_: MouseEvent| false);
    html! {
        <>
            <Bar title={check.name()} under={say!("{subject} · lesson {number} of {all} · {time} to read", subject = course.subject.name(), number = place + 1, all, time = duration(lesson.seconds(text)))} {back} {back_name} />
            <article class="lesson">
                <section class="card check">
                    <p class="eyebrow">
                        <span class="stage">{ check.stage.name() }</span>
                        { format!("{} · {}", check.aspect.name(), duration(f64::from(check.seconds))) }
                        if lesson.telling.is_none() {
                            <span class="cost-only">{ say!("cost only") }</span>
                        }
                    </p>
                    <h2>{ check.question() }</h2>
                    <p>{ check.how() }</p>
                    if let Some(caution) = check.caution() {
                        <p class="caution"><Icon shape={Shape::Care} /><span>{ caution }</span></p>
                    }
                </section>
                { levels(lesson) }
                { meaning(lesson, here, text) }
                { telling(lesson, text) }
                if lesson.telling.is_some() {
                    <WhichWorse key={check.key} {check} seed={*seed} />
                }
                if let Some(topic) = lesson.topic() {
                    { practise(topic) }
                }
                { sources(lesson) }
            </article>
            <nav class="lesson-ways" aria-label={say!("Course")}>
                if let Some(before) = before {
                    <a href={href(before)}>{ say!("Before: {lesson}", lesson = within(before.check.name())) }</a>
                }
                if let Some(after) = after {
                    <a href={href(after)}>{ say!("After: {lesson}", lesson = within(after.check.name())) }</a>
                }
                if from.is_some() {
                    <a href={in_course}>{ say!("The whole course") }</a>
                }
                if *is_read {
                    <button type="button" class="ghost" onclick={onunread}>{ say!("Mark as not read") }</button>
                }
            </nav>
            <div class="foot">
                // A link that marks on its way: it leads on by itself, with a key or in another window too.
                <a class="prime" href={onward} onclick={onread}>{ if *is_read { read } else { unread } }</a>
            </div>
        </>
    }
}
