//! The wing of lessons, practice, the bench and the settings.

use std::rc::Rc;

use garment_assay::catalog::bench::LOOKS;
use garment_assay::garment::{Act, Answer, Id};
use garment_assay::measure::{BACK, EDGE, Instrument, Look, ROWS};
use garment_assay::specimen::Picture;
use wasm_split_helpers::{SplitLoaderError, wasm_split};
use yew::prelude::*;

use super::{Scene, instrument_of};
use crate::app::model::Message;
use crate::app::pages::bench::{Bench, InstrumentPage};
use crate::app::pages::course::CoursePage;
use crate::app::pages::learn::LearnPage;
use crate::app::pages::lesson::LessonPage;
use crate::app::pages::licences::Licences;
use crate::app::pages::marks::Marks;
use crate::app::pages::numbers::Numbers;
use crate::app::pages::practice::PracticePage;
use crate::app::pages::ruler::RulerPage;
use crate::app::pages::seam_kind::SeamKind;
use crate::app::pages::settings::SettingsPage;
use crate::app::parts::side_room::SideRoom;
use crate::app::route::Route;

/// The page of the scene.
#[wasm_split(study, fallible, preload(bring))]
pub fn page(scene: Scene) -> Result<Html, SplitLoaderError> {
    let Scene { model, appraisals, send, .. } = &scene;
    let system = model.settings.system;
    Ok(match &model.route {
        Route::Practice => html! {
            <PracticePage trials={model.trials.clone()} rates={model.settings.rates.clone()} appraisals={appraisals.clone()} send={send.clone()} />
        },
        Route::Learn => html! { <LearnPage read={model.read.clone()} forget={send.reform(|()| Message::ForgetLessons)} /> },
        Route::Course(key) => match scene.lessons.course(key) {
            Some(course) => {
                html! { <CoursePage here={scene.lessons.here(course.subject)} {course} read={model.read.clone()} /> }
            }
            None => Html::default(),
        },
        Route::Lesson(subject, key, garment) => lesson(&scene, subject, key, garment.as_ref()),
        Route::Numbers => html! { <Numbers /> },
        Route::Licences => html! { <Licences /> },
        Route::Bench => html! { <Bench scale={model.scale} void={model.scale_void} /> },
        Route::SeamKind => html! { <SeamKind backs={looks(&BACK)} rows={looks(&ROWS)} edges={looks(&EDGE)} /> },
        Route::Ruler => {
            html! { <RulerPage scale={model.scale} void={model.scale_void} resized={scene.resized} {system} send={send.clone()} /> }
        }
        Route::Instrument(key) => match instrument_of(key) {
            Some(instrument) => {
                let given = scene.on_the_bench.clone().map(|readings| readings.given);
                html! { <InstrumentPage key={instrument.key} {instrument} {given} {system} send={send.clone()} /> }
            }
            None => Html::default(),
        },
        Route::Marks(key, target) => match instrument_of(key) {
            Some(instrument) => {
                let (target, kept) = scene.taken_for(instrument, target);
                html! { <Marks key={instrument.key} {instrument} scale={model.scale} resized={scene.resized} {system} {target} {kept} send={send.clone()} /> }
            }
            None => Html::default(),
        },
        Route::Live(key, target) | Route::Picture(key, target) => match instrument_of(key) {
            Some(instrument) => side_room(&scene, instrument, target),
            None => Html::default(),
        },
        _ => html! {
            <SettingsPage garments={model.garments.clone()} people={model.people.clone()} settings={model.settings.clone()} standing={model.standing.clone()} today={model.today} send={send.clone()} />
        },
    })
}

/// What the choices of a look are drawn as.
fn looks(look: &'static Look) -> &'static [(&'static str, Picture)] {
    LOOKS.iter().find(|drawn| drawn.look.key == look.key).map_or(&[], |drawn| drawn.choices)
}

/// The lesson that is open, if there is one.
fn lesson(scene: &Scene, subject: &str, key: &str, garment: Option<&Id>) -> Html {
    let Some(course) = scene.lessons.course(subject) else { return Html::default() };
    let Some((place, lesson)) = course.lesson(key) else { return Html::default() };
    let (read, is_read) = (scene.model.read.clone(), scene.model.read.has(lesson));
    let mark = {
        let lesson = lesson.clone();
        scene.send.reform(move |is: bool| Message::Read(Rc::new(read.as_ref().clone().with(&lesson, is))))
    };
    let from = garment.cloned().map(|id| AttrValue::from(Route::Check(id, key.to_owned()).href()));
    let here = scene.lessons.here(course.subject);
    html! { <LessonPage key={format!("{subject}/{key}")} {course} {place} {here} {is_read} {from} {mark} /> }
}

/// A page of the program for camera and pictures, and what becomes of the readings that it hands over.
fn side_room(scene: &Scene, instrument: &'static Instrument, target: &Option<(Id, String)>) -> Html {
    let (target, kept) = scene.taken_for(instrument, target);
    let check = target.as_ref().map(|(_, check)| *check);
    let back = target.as_ref().map_or(Route::Bench, |(id, check)| Route::Check(id.clone(), check.key.to_owned())).href();
    let used = scene.send.reform(move |readings| match &target {
        Some((id, check)) => Message::Done(id.clone(), Act::Answer(check, Answer::Measured(readings))),
        None => Message::Tried(readings),
    });
    html! { <SideRoom key={instrument.key} {instrument} system={scene.model.settings.system} {back} {check} {kept} {used} /> }
}
