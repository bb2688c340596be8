//! The course of a subject: its lessons in order.

use std::rc::Rc;

use garment_assay::language::within;
use garment_assay::learn::{Course, FIRST, Lesson, Marks, Part};
use garment_assay::say;
use yew::prelude::*;

use crate::app::lessons::Here;
use crate::app::parts::bar::Bar;
use crate::app::route::Route;
use crate::app::words::duration;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The course.
    pub course: Rc<Course>,
    /// The longer texts, for the time that reading takes.
    pub here: Here,
    /// Lessons that were read.
    pub read: Rc<Marks>,
}

/// The address of a lesson read for itself.
fn href(lesson: &Lesson) -> String {
    Route::Lesson(lesson.subject.key().to_owned(), lesson.check.key.to_owned(), None).href()
}

fn heading(part: &Part) -> String {
    part.stage.map_or_else(
        || say!("First: the {count} that tell most", count = part.lessons.len().min(FIRST)),
        |stage| stage.name().to_owned(),
    )
}

/// The course.
#[component]
pub fn CoursePage(props: &Props) -> Html {
    let Props { course, here, read } = props;
    let texts = here.texts().map(Rc::as_ref);
    let (done, all) = (read.count(course.subject), course.lessons().count());
    let next = course.lessons().find(|lesson| !read.has(lesson));
    html! {
        <>
            <Bar title={say!("{subject}: the course", subject = course.subject.name())} under={say!("{done} of {all} read · the whole about {time}", done, all, time = duration(course.seconds(texts)))} back={Route::Learn.href()} back_name={say!("Back to all courses")} />
            { for course.parts.iter().map(|part| html! {
                <section class="card lessons" key={heading(part)}>
                    <h2>{ heading(part) }</h2>
                    <ul>
                        { for part.lessons.iter().map(|lesson| {
                            let is_read = read.has(lesson);
                            let text = texts.and_then(|texts| texts.of(lesson.check.key));
                            let facts = [
                                is_read.then(|| say!("of a lesson" | "read").to_owned()),
                                lesson.telling.is_none().then(|| say!("cost only").to_owned()),
                                Some(duration(lesson.seconds(text))),
                            ];
                            html! {
                                <li key={lesson.check.key} data-read={is_read.to_string()}>
                                    <a href={href(lesson)}>
                                        <b>{ lesson.check.name() }</b>
                                        <small>{ facts.into_iter().flatten().collect::<Vec<_>>().join(" · ") }</small>
                                    </a>
                                </li>
                            }
                        }) }
                    </ul>
                </section>
            }) }
            <div class="foot">
                if let Some(next) = next {
                    <a class="prime" href={href(next)}>{ if done == 0 { say!("Begin: {lesson}", lesson = within(next.check.name())) } else { say!("Go on: {lesson}", lesson = within(next.check.name())) } }</a>
                } else {
                    <a class="prime" href={Route::Learn.href()}>{ say!("All read: other courses") }</a>
                }
            </div>
        </>
    }
}
