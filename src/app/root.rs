//! The root: holds the model, hands messages to it, and carries out what they ask of the world outside.

mod people;

use std::rc::Rc;

use garment_assay::catalog::bench::LOOKS;
use garment_assay::catalog::on_body::BODY_PICTURES;
use garment_assay::check::Check;
use garment_assay::fit::PersonId;
use garment_assay::garment::{Act, Answer, Garment, Id, Readings};
use garment_assay::learn::Subject;
use garment_assay::measure::{BACK, EDGE, INSTRUMENTS, Instrument, Look, ROWS, ScreenScale};
use garment_assay::notebook::{
    Elsewhere, Healed, KeepFault, Kept, Notebook, Settings, photographs_of, photographs_perhaps_named,
};
use garment_assay::specimen::Picture;
use gloo::events::EventListener;
use yew::prelude::*;

use super::appraisals::Appraisals;
use super::browser::mirror::Mirror;
use super::browser::shelf::BrowserShelf;
use super::browser::{address, clock, document, photographs, screen, shipped};
use super::collections;
use super::lessons::Lessons;
use super::model::{Effect, Message, Model, Notice};
use super::pages::behind::BehindPage;
use super::pages::bench::{Bench, InstrumentPage};
use super::pages::beside::BesidePage;
use super::pages::checks::{CheckList, Checks};
use super::pages::course::CoursePage;
use super::pages::desk::DeskPage;
use super::pages::details::Details;
use super::pages::fitting::FittingPage;
use super::pages::guesses::Guesses;
use super::pages::hand_on::HandOnPage;
use super::pages::learn::LearnPage;
use super::pages::lesson::LessonPage;
use super::pages::lot::LotPage;
use super::pages::marks::Marks;
use super::pages::numbers::Numbers;
use super::pages::offer::OfferPage;
use super::pages::people::PeoplePage;
use super::pages::person::PersonPage;
use super::pages::photographs::PhotographsPage;
use super::pages::practice::PracticePage;
use super::pages::rack::Rack;
use super::pages::rates::RatesPage;
use super::pages::result::ResultPage;
use super::pages::ruler::RulerPage;
use super::pages::seam_kind::SeamKind;
use super::pages::settings::SettingsPage;
use super::pages::sheet::SheetPage;
use super::pages::start::Start;
use super::pages::tape_sheet::TapeSheet;
use super::pages::walk::Walk;
use super::parts::alert::Alert;
use super::parts::means::Means;
use super::parts::side_room::SideRoom;
use super::parts::toast::Toast;
use super::pricing::Pricing;
use super::route::Route;
use super::words::headline;

/// What comes to the root.
pub enum Incoming {
    /// Something that happened on the screen or to the address.
    Message(Message),
    /// The mirror was opened and holds these pages; none when it could not be.
    Mirrored(Option<Vec<(String, String)>>),
    /// So many changes reached the mirror.
    Arrived(u32),
    /// The page's size or zoom changed, or it moved to another screen.
    Resized,
    /// The longer texts of a course's lessons came, or did not.
    Texts(Subject, Option<String>),
    /// Another window wrote under a key.
    Written(Option<String>, Option<String>),
}

/// Whether changes go to the mirror.
enum Mirroring {
    /// It is being opened; until it was compared, nothing may be written over what it holds.
    Opening,
    /// It is being opened, and everything was erased meanwhile: what it holds must go too.
    Emptying,
    /// They do.
    On,
    /// There is none, or it could not be compared.
    Off,
}

/// The whole app.
pub struct App {
    model: Model,
    notebook: Notebook<BrowserShelf>,
    mirror: Mirror,
    mirroring: Mirroring,
    /// A garment that goes on under a new name since this message: old name, new name.
    renamed: Option<(Id, Id)>,
    appraisals: Appraisals,
    pricing: Pricing,
    lessons: Lessons,
    aloud: String,
    _listeners: Vec<EventListener>,
}

impl Component for App {
    type Message = Incoming;
    type Properties = ();

    fn create(ctx: &Context<App>) -> App {
        let (notebook, opened) = Notebook::open(BrowserShelf);
        let settings = notebook.settings().ok().flatten().map_or_else(Settings::default, |text| Settings::read(&text));
        let mut model = Model {
            route: Route::parse(&address::hash()),
            garments: opened.garments.into_iter().map(Rc::new).collect(),
            people: Vec::new(),
            set_aside: Rc::new(opened.set_aside),
            settings,
            undo: Rc::default(),
            notice: None,
            unkept: Rc::default(),
            unkept_people: Rc::default(),
            fault: opened.fault,
            low_on_room: false,
            on_the_way: 0,
            wide: document::is_wide(),
            today: clock::today(),
            trials: Rc::new(notebook.trials()),
            read: Rc::new(notebook.lessons_read()),
            scale: None,
            scale_void: false,
        };
        for person in opened.people {
            model.put_person(Rc::new(person));
        }
        let link = ctx.link().clone();
        let on_address = {
            let link = link.clone();
            move || link.send_message(Incoming::Message(Message::Opened(Route::parse(&address::hash()))))
        };
        let on_width = {
            let link = link.clone();
            move || link.send_message(Incoming::Message(Message::Wide(document::is_wide())))
        };
        let on_written = {
            let link = link.clone();
            move |key, text| link.send_message(Incoming::Written(key, text))
        };
        let on_resize = {
            let link = link.clone();
            move || link.send_message(Incoming::Resized)
        };
        let listeners = [
            address::on_change(on_address),
            document::on_width_change(on_width),
            document::on_written_elsewhere(on_written),
            screen::on_change(on_resize),
        ];
        let mirror = Mirror::default();
        {
            let mirror = mirror.clone();
            wasm_bindgen_futures::spawn_local(async move {
                link.send_message(Incoming::Mirrored(mirror.open().await.ok()));
            });
        }
        let mut app = App {
            model,
            notebook,
            mirror,
            mirroring: Mirroring::Opening,
            renamed: None,
            appraisals: Appraisals::default(),
            pricing: Pricing::default(),
            lessons: Lessons::default(),
            aloud: String::new(),
            _listeners: listeners.into_iter().flatten().collect(),
        };
        let (scale, elsewhere) = app.scale();
        app.model.after(Message::ScreenChanged(scale, elsewhere));
        app.dress();
        app.settle_route();
        app.fetch_texts(ctx);
        app
    }

    fn update(&mut self, ctx: &Context<App>, incoming: Incoming) -> bool {
        match incoming {
            Incoming::Message(message) => self.take(ctx, message),
            Incoming::Arrived(count) => {
                self.model.on_the_way = self.model.on_the_way.saturating_sub(count);
                true
            }
            Incoming::Mirrored(None) => {
                self.model.on_the_way = 0;
                self.mirroring = Mirroring::Off;
                true
            }
            Incoming::Mirrored(Some(_)) if matches!(self.mirroring, Mirroring::Emptying) => {
                self.mirroring = Mirroring::On;
                self.empty_mirror(ctx);
                let healed = self.notebook.heal(&[]).unwrap_or_default();
                self.model.on_the_way = 0;
                self.send_to_mirror(ctx, healed.to_mirror);
                true
            }
            Incoming::Mirrored(Some(pages)) => {
                for (key, text) in &pages {
                    match Elsewhere::of(key, text) {
                        Elsewhere::Changed(garment) => self.rescue(ctx, garment.id(), Some(&garment)),
                        Elsewhere::PersonChanged(person) => self.rescue_person(ctx, person.id(), Some(&person)),
                        _ => {}
                    }
                }
                let mut healed = self
                    .notebook
                    .heal(&pages)
                    .unwrap_or_else(|KeepFault(fault)| Healed { fault: Some(fault), ..Healed::default() });
                self.model.low_on_room |= healed.reserve_used;
                if healed.fault.is_some() {
                    // What could not be compared must not be written over: the mirror may hold the newer page.
                    self.model.fault = healed.fault;
                    self.model.on_the_way = 0;
                    self.mirroring = Mirroring::Off;
                } else {
                    // What was changed while the mirror opened is among what it lacks.
                    self.model.on_the_way = 0;
                    self.mirroring = Mirroring::On;
                    self.send_to_mirror(ctx, std::mem::take(&mut healed.to_mirror));
                }
                let whole = healed.fault.is_none();
                let redraw = self.take(ctx, Message::Healed(Box::new(healed)));
                if whole && self.model.fault.is_none() {
                    self.sweep_photographs();
                }
                redraw
            }
            Incoming::Texts(subject, file) => {
                self.lessons.came(subject, file.as_deref());
                true
            }
            Incoming::Resized => {
                let (scale, elsewhere) = self.scale();
                if (scale, scale.is_none() && elsewhere) == (self.model.scale, self.model.scale_void) {
                    // The ruler follows the height of the page all the same.
                    return matches!(self.model.route, Route::Ruler | Route::Marks(..));
                }
                self.take(ctx, Message::ScreenChanged(scale, elsewhere))
            }
            Incoming::Written(None, _) => {
                // Another window erased everything.
                let gone: Vec<Id> = self.model.garments.iter().map(|garment| garment.id().clone()).collect();
                for id in gone {
                    self.take(ctx, Message::GoneElsewhere(id));
                }
                let gone: Vec<PersonId> = self.model.people.iter().map(|person| person.id().clone()).collect();
                for id in gone {
                    self.take(ctx, Message::PersonGoneElsewhere(id));
                }
                true
            }
            Incoming::Written(Some(key), text) => match self.notebook.written_elsewhere(&key, text.as_deref()) {
                Elsewhere::Changed(garment) => {
                    self.rescue(ctx, garment.id(), Some(&garment));
                    self.take(ctx, Message::ChangedElsewhere(garment))
                }
                Elsewhere::Gone(id) => {
                    self.rescue(ctx, &id, None);
                    self.take(ctx, Message::GoneElsewhere(id))
                }
                Elsewhere::PersonChanged(person) => {
                    self.rescue_person(ctx, person.id(), Some(&person));
                    self.take(ctx, Message::PersonElsewhere(person))
                }
                Elsewhere::PersonGone(id) => {
                    self.rescue_person(ctx, &id, None);
                    self.take(ctx, Message::PersonGoneElsewhere(id))
                }
                // Rates are work: the next choice made here must not write over those made there.
                Elsewhere::Chosen(settings) => self.take(ctx, Message::ChosenElsewhere(*settings)),
                Elsewhere::Nothing => false,
            },
        }
    }

    fn view(&self, ctx: &Context<App>) -> Html {
        let send = ctx.link().callback(Incoming::Message);
        let model = &self.model;
        let (system, wide) = (model.settings.system, model.wide);
        let shown = model.route.garment().and_then(|id| model.garment(id));
        let person = match &model.route {
            Route::Person(id, _) => model.person(id),
            _ => None,
        };
        let check = match &model.route {
            Route::Check(_, key) | Route::Lesson(_, key, Some(_)) | Route::Photographs(_, Some(key)) => {
                shown.and_then(|garment| check_put(garment, key))
            }
            _ => None,
        };
        // The quick sheet has all checks on it, and wants the width for them.
        let on_sheet = matches!(model.route, Route::Desk(_));
        let beside_rack = wide && !on_sheet && model.route != Route::Rack && shown.is_some();
        let beside_list = wide && !on_sheet && shown.is_some() && !matches!(model.route, Route::Checks(_));
        let main = match (&model.route, shown) {
            (Route::Check(id, _) | Route::Lesson(_, _, Some(id)), Some(garment)) if check.is_some() => match check {
                Some(check) => html! {
                    <>
                        { self.lesson(&send) }
                        // Stays while its lesson is read: what is half-said or half-typed there is not lost.
                        <div key="check" class="kept-open" hidden={matches!(model.route, Route::Lesson(..))}>
                            <Walk garment={garment.clone()} {check} appraisals={self.appraisals.clone()} {system} can_take_back={model.can_take_back(id)} send={send.clone()} />
                        </div>
                    </>
                },
                None => Html::default(),
            },
            (Route::Checks(_), Some(garment)) => {
                html! { <Checks garment={garment.clone()} appraisals={self.appraisals.clone()} {system} /> }
            }
            (Route::Result(_), Some(garment)) => {
                html! { <ResultPage garment={garment.clone()} appraisals={self.appraisals.clone()} people={model.people.clone()} {system} /> }
            }
            (Route::Details(id), Some(garment)) => html! {
                <Details key={id.as_str()} garment={garment.clone()} collections={collections::names(&model.garments)} currency={model.settings.currency} send={send.clone()} />
            },
            (Route::Ticket(id), Some(garment)) => html! {
                <BehindPage key={id.as_str()} garment={garment.clone()} garments={model.garments.clone()} appraisals={self.appraisals.clone()}
                    pricing={self.pricing.clone()} rates={model.settings.rates.clone()} currency={model.settings.currency} today={model.today}
                    can_take_back={model.can_take_back(id)} send={send.clone()} />
            },
            (Route::TapeSheet(id), Some(garment)) => html! {
                <TapeSheet key={id.as_str()} garment={garment.clone()} people={model.people.clone()} {system} can_take_back={model.can_take_back(id)} send={send.clone()} />
            },
            (Route::Fitting(id), Some(garment)) => html! {
                <FittingPage key={id.as_str()} garment={garment.clone()} people={model.people.clone()} {system}
                    can_take_back={model.can_take_back(id)} send={send.clone()} />
            },
            (Route::Offer(id), Some(garment)) => html! {
                <OfferPage key={id.as_str()} garment={garment.clone()} rates={model.settings.rates.clone()} currency={model.settings.currency}
                    can_take_back={model.can_take_back(id)} send={send.clone()} />
            },
            (Route::Sheet(id), Some(garment)) => html! {
                <SheetPage key={id.as_str()} garment={garment.clone()} appraisals={self.appraisals.clone()} people={model.people.clone()} {system} />
            },
            (Route::Photographs(id, _), Some(garment)) => html! {
                <PhotographsPage key={id.as_str()} garment={garment.clone()} {check} today={model.today} can_take_back={model.can_take_back(id)} send={send.clone()} />
            },
            (Route::Lot(id), Some(garment)) => html! {
                <LotPage key={id.as_str()} garment={garment.clone()} can_take_back={model.can_take_back(id)} send={send.clone()} />
            },
            (Route::Person(id, _), _) if person.is_some() => match person {
                Some(person) => html! {
                    <PersonPage key={id.as_str()} person={person.clone()} garment={shown.cloned()} {system} pictures={&BODY_PICTURES[..]} send={send.clone()} />
                },
                None => Html::default(),
            },
            (Route::People | Route::Person(..), _) => html! { <PeoplePage people={model.people.clone()} send={send.clone()} /> },
            (Route::Start, _) => {
                html! { <Start garments={model.garments.clone()} currency={model.settings.currency} send={send.clone()} /> }
            }
            (Route::Desk(id), _) => html! {
                <DeskPage garment={shown.cloned()} garments={model.garments.clone()} appraisals={self.appraisals.clone()} {system} currency={model.settings.currency}
                    today={model.today} {wide} can_take_back={id.as_ref().is_some_and(|id| model.can_take_back(id))} send={send.clone()} />
            },
            (Route::Settings, _) => {
                html! { <SettingsPage garments={model.garments.clone()} people={model.people.clone()} settings={model.settings.clone()} today={model.today} send={send.clone()} /> }
            }
            (Route::Rates, _) => {
                html! { <RatesPage rates={model.settings.rates.clone()} unread={model.settings.aside.len()} today={model.today} send={send.clone()} /> }
            }
            (Route::Beside(ids), _) => html! {
                <BesidePage key={model.route.href()} garments={ids.iter().filter_map(|id| model.garment(id).cloned()).collect::<Vec<_>>()}
                    rack={model.garments.clone()} appraisals={self.appraisals.clone()} rates={model.settings.rates.clone()}
                    people={model.people.clone()} {system} />
            },
            (Route::HandOn(ids), _) => html! {
                <HandOnPage key={model.route.href()} chosen={ids.clone()} garments={model.garments.clone()} people={model.people.clone()}
                    appraisals={self.appraisals.clone()} settings={model.settings.clone()} today={model.today} send={send.clone()} />
            },
            (Route::Guesses, _) => html! { <Guesses garments={model.guessed()} /> },
            (Route::Practice, _) => html! {
                <PracticePage trials={model.trials.clone()} rates={model.settings.rates.clone()} appraisals={self.appraisals.clone()} send={send.clone()} />
            },
            (Route::Learn, _) => {
                html! { <LearnPage read={model.read.clone()} forget={send.reform(|()| Message::ForgetLessons)} /> }
            }
            (Route::Course(key), _) if Subject::of(key).is_some() => match self.lessons.course(key) {
                Some(course) => {
                    html! { <CoursePage here={self.lessons.here(course.subject)} {course} read={model.read.clone()} /> }
                }
                None => Html::default(),
            },
            (Route::Lesson(..), _) => self.lesson(&send),
            (Route::Numbers, _) => html! { <Numbers /> },
            (Route::Bench, _) => html! { <Bench scale={model.scale} void={model.scale_void} /> },
            (Route::SeamKind, _) => html! { <SeamKind backs={looks(&BACK)} rows={looks(&ROWS)} edges={looks(&EDGE)} /> },
            (Route::Ruler, _) => html! { <RulerPage scale={model.scale} void={model.scale_void} {system} send={send.clone()} /> },
            (Route::Instrument(key), _) if instrument_of(key).is_some() => match instrument_of(key) {
                Some(instrument) => {
                    html! { <InstrumentPage key={instrument.key} {instrument} given={self.notebook.on_the_bench(instrument)} {system} send={send.clone()} /> }
                }
                None => Html::default(),
            },
            (Route::Marks(key, target), _) if instrument_of(key).is_some() => match instrument_of(key) {
                Some(instrument) => {
                    let (target, kept) = self.taken_for(instrument, target, shown);
                    html! { <Marks key={instrument.key} {instrument} scale={model.scale} {system} {target} {kept} send={send.clone()} /> }
                }
                None => Html::default(),
            },
            (Route::Live(key, target), _) if by_means(key, Means::Camera).is_some() => {
                self.beside(by_means(key, Means::Camera), target, shown, &send)
            }
            (Route::Picture(key, target), _) if by_means(key, Means::Picture).is_some() => {
                self.beside(by_means(key, Means::Picture), target, shown, &send)
            }
            _ => html! {
                <Rack garments={model.garments.clone()} set_aside={model.set_aside.clone()} appraisals={self.appraisals.clone()} send={send.clone()} />
            },
        };
        html! {
            <div class="desk" data-beside={match (beside_rack, beside_list) { (true, true) => "both", (true, false) => "rack", _ => "none" }}>
                // The screen itself stands first, so that a keyboard is in it at once; styles put the rack at its left.
                <main id="main" data-screen={match model.route { Route::Rack => "rack", Route::Beside(_) | Route::Desk(_) => "wide", _ => "one" }}>
                    if model.fault.is_some() || model.low_on_room {
                        <Alert fault={model.fault} exportable={!model.garments.is_empty() || !model.people.is_empty()} unkept={model.unkept.len()} people={model.unkept_people.len()} />
                    }
                    { main }
                </main>
                if beside_rack {
                    <aside class="beside beside-rack" aria-label="Rack">
                        <Rack beside=true garments={model.garments.clone()} set_aside={Rc::new(Vec::new())} open={model.route.garment().cloned()} appraisals={self.appraisals.clone()} send={send.clone()} />
                    </aside>
                }
                if beside_list {
                    if let Some(garment) = shown {
                        <aside class="beside" aria-label="All checks of this garment">
                            <CheckList garment={garment.clone()} open={check.map(|check| AttrValue::Static(check.key))} {system} />
                        </aside>
                    }
                }
                if let Some(notice) = &model.notice {
                    <Toast notice={notice.clone()} {send} />
                }
                <p class="kept" data-state={if model.on_the_way > 0 { "going" } else { "kept" }} aria-hidden="true"></p>
                <p class="unseen" role="status" aria-live="polite">{ &self.aloud }</p>
            </div>
        }
    }

    fn rendered(&mut self, _: &Context<App>, first: bool) {
        if first {
            document::set_root("ready", "yes");
        }
    }
}

/// What the choices of a look are drawn as.
fn looks(look: &'static Look) -> &'static [(&'static str, Picture)] {
    LOOKS.iter().find(|drawn| drawn.look.key == look.key).map_or(&[], |drawn| drawn.choices)
}

fn instrument_of(key: &str) -> Option<&'static Instrument> {
    INSTRUMENTS.iter().copied().find(|instrument| instrument.key == key)
}

fn by_means(key: &str, means: Means) -> Option<&'static Instrument> {
    instrument_of(key).filter(|instrument| Means::of(instrument) == means)
}

/// The check of that key, if it is put to the garment as it is.
fn check_put(garment: &Garment, key: &str) -> Option<&'static Check> {
    garment.checks().find(|check| check.key == key)
}

/// Whether the lesson of that subject and check is about a check that is put to the garment as it is.
fn has_lesson(garment: &Garment, subject: &str, check: &str) -> bool {
    check_put(garment, check).is_some_and(|check| Subject::with(garment.family(), check).key() == subject)
}

impl App {
    /// The check that an instrument's reading is for, with its garment, and what is kept of that instrument there or on the bench.
    fn taken_for(
        &self,
        instrument: &'static Instrument,
        target: &Option<(Id, String)>,
        shown: Option<&Rc<Garment>>,
    ) -> (Option<(Id, &'static Check)>, Option<Readings>) {
        let found = target.as_ref().zip(shown);
        let target = found.and_then(|((id, check), garment)| Some((id.clone(), check_put(garment, check)?)));
        let kept = match (&target, shown) {
            (Some((_, check)), Some(garment)) => match garment.answer(check) {
                Some(Answer::Measured(readings)) if readings.instrument == instrument => Some(readings.clone()),
                _ => None,
            },
            _ => self.notebook.on_the_bench(instrument).map(|given| Readings { instrument, given }),
        };
        (target, kept)
    }

    /// The lesson that is open, if one is.
    fn lesson(&self, send: &Callback<Message>) -> Html {
        let Route::Lesson(subject, key, garment) = &self.model.route else { return Html::default() };
        let Some(course) = self.lessons.course(subject) else { return Html::default() };
        let Some((place, lesson)) = course.lesson(key) else { return Html::default() };
        let (read, is_read) = (self.model.read.clone(), self.model.read.has(lesson));
        let mark = {
            let lesson = lesson.clone();
            send.reform(move |is: bool| Message::Read(Rc::new(read.as_ref().clone().with(&lesson, is))))
        };
        let from = garment.clone().map(|id| AttrValue::from(Route::Check(id, key.clone()).href()));
        let here = self.lessons.here(course.subject);
        html! { <LessonPage key={format!("{subject}/{key}")} {course} {place} {here} {is_read} {from} {mark} /> }
    }

    /// Fetches the longer texts of the lessons that are on the screen, unless they are here.
    fn fetch_texts(&mut self, ctx: &Context<App>) {
        let (Route::Course(subject) | Route::Lesson(subject, ..)) = &self.model.route else { return };
        let Some(subject) = self.lessons.wanted(subject) else { return };
        let link = ctx.link().clone();
        shipped::fetch(format!("./learn/{}.txt", subject.key()), move |text| link.send_message(Incoming::Texts(subject, text)));
    }

    /// A page of the second program, and what becomes of the readings that it hands over.
    fn beside(
        &self,
        instrument: Option<&'static Instrument>,
        target: &Option<(Id, String)>,
        shown: Option<&Rc<Garment>>,
        send: &Callback<Message>,
    ) -> Html {
        let Some(instrument) = instrument else { return Html::default() };
        let (target, kept) = self.taken_for(instrument, target, shown);
        let check = target.as_ref().map(|(_, check)| *check);
        let back = target.as_ref().map_or(Route::Bench, |(id, check)| Route::Check(id.clone(), check.key.to_owned())).href();
        let used = send.reform(move |readings| match &target {
            Some((id, check)) => Message::Done(id.clone(), Act::Answer(check, Answer::Measured(readings))),
            None => Message::Tried(readings),
        });
        html! { <SideRoom key={instrument.key} {instrument} system={self.model.settings.system} {back} {check} {kept} {used} /> }
    }

    /// Lets the model take a message, then carries out what it asks for.
    fn take(&mut self, ctx: &Context<App>, message: Message) -> bool {
        let before = (self.model.route.clone(), self.model.settings.clone());
        let speaks = match &message {
            Message::Done(id, Act::Answer(..) | Act::Clear(_)) | Message::TakeBack(id) => Some(id.clone()),
            Message::Noted(garment) if garment.answered() > 0 => Some(garment.id().clone()),
            _ => None,
        };
        // A tab may stay open past midnight.
        self.model.today = clock::today();
        for effect in self.model.after(message) {
            self.carry_out(ctx, effect);
        }
        self.renamed = None;
        if let Some(garment) = speaks.and_then(|id| self.model.garment(&id).cloned()) {
            let open = match &self.model.route {
                Route::Check(_, key) => check_put(&garment, key),
                _ => None,
            };
            let appraisal = open.map_or_else(|| self.appraisals.of(&garment), |check| self.appraisals.for_check(&garment, check));
            self.aloud = headline(&appraisal).aloud();
        }
        if before.1 != self.model.settings {
            self.dress();
        }
        if matches!((&before.0, &self.model.route), (Route::Desk(None), Route::Desk(Some(_)))) {
            // With its first entry the sheet has a name; it is the same sheet, and the hand is in the middle of it.
            self.settle_route();
        } else if before.0 != self.model.route {
            self.aloud.clear();
            self.settle_route();
            self.fetch_texts(ctx);
            gloo::timers::callback::Timeout::new(0, document::focus_heading).forget();
        }
        true
    }

    fn carry_out(&mut self, ctx: &Context<App>, effect: Effect) {
        match effect {
            Effect::Keep(garment) => {
                let kept = self.notebook.keep(garment.as_ref());
                self.note_keeping(ctx, garment.id(), kept);
            }
            Effect::Discard(id) => {
                let kept = self.notebook.discard(&id);
                self.note_keeping(ctx, &id, kept);
            }
            Effect::KeepPerson(person) => {
                let kept = self.notebook.keep(person.as_ref());
                self.note_keeping_person(ctx, person.id(), kept);
            }
            Effect::DiscardPerson(id) => {
                let kept = self.notebook.discard(&id);
                self.note_keeping_person(ctx, &id, kept);
            }
            Effect::KeepSettings => {
                if let Err(KeepFault(fault)) = self.notebook.keep_settings(&self.model.settings.write()) {
                    self.model.fault = Some(fault);
                }
            }
            Effect::KeepOnTheBench(readings) => {
                if let Err(KeepFault(fault)) = self.notebook.keep_on_the_bench(&readings) {
                    self.model.fault = Some(fault);
                }
            }
            Effect::KeepTrials => {
                if let Err(KeepFault(fault)) = self.notebook.keep_trials(&self.model.trials) {
                    self.model.fault = Some(fault);
                }
            }
            Effect::KeepLessonsRead => {
                if let Err(KeepFault(fault)) = self.notebook.keep_lessons_read(&self.model.read) {
                    self.model.fault = Some(fault);
                }
            }
            Effect::KeepScale(scale) => {
                let kept = screen::name().map_or(Ok(()), |name| self.notebook.keep_scale(&name, scale.as_ref()));
                if let Err(KeepFault(fault)) = kept {
                    self.model.fault = Some(fault);
                }
            }
            Effect::Erase => {
                match self.notebook.erase() {
                    Ok(()) => {
                        self.model.fault = None;
                        (self.model.unkept, self.model.unkept_people) = (Rc::default(), Rc::default());
                        self.model.low_on_room = !self.notebook.set_reserve_aside();
                        self.model.notice = Some(Rc::new(Notice::plain("Everything is erased.")));
                    }
                    Err(KeepFault(fault)) => {
                        self.model.fault = Some(fault);
                        let text = "Not everything could be erased. Load the page again and erase once more.";
                        self.model.notice = Some(Rc::new(Notice::plain(text)));
                    }
                }
                self.erase_photographs(ctx);
                match self.mirroring {
                    Mirroring::Opening => self.mirroring = Mirroring::Emptying,
                    Mirroring::Emptying => {}
                    Mirroring::On | Mirroring::Off => self.empty_mirror(ctx),
                }
            }
            Effect::DropSetAside(key) => {
                if let Err(KeepFault(fault)) = self.notebook.drop_set_aside(&key) {
                    self.model.fault = Some(fault);
                }
            }
            Effect::Open(route) => match self.renamed.take() {
                Some((old, new)) if route.garment() == Some(&old) => address::open(&route.of(new).href()),
                _ => address::open(&route.href()),
            },
            Effect::Rename(route) => address::replace(&route.href()),
        }
    }

    /// Takes note of whether a change was kept.
    fn note_keeping(&mut self, ctx: &Context<App>, id: &Id, kept: Result<Kept, KeepFault>) {
        match kept {
            Ok(kept) => {
                Rc::make_mut(&mut self.model.unkept).remove(id);
                self.note_kept(ctx, kept.page, kept.reserve_used);
                if let Some(renamed) = kept.renamed {
                    self.part_ways(ctx, id, renamed.ours, renamed.theirs);
                }
                if let Some(stays) = kept.stays {
                    let text = match stays.theirs {
                        Some(theirs) => {
                            self.take(ctx, Message::ChangedElsewhere(Box::new(theirs)));
                            "This garment was changed in another window, so it was not deleted."
                        }
                        None => {
                            "A newer version of the app has written this garment, so it was not deleted. Load the page again."
                        }
                    };
                    self.model.notice = Some(Rc::new(Notice::plain(text)));
                }
            }
            Err(KeepFault(fault)) => {
                Rc::make_mut(&mut self.model.unkept).insert(id.clone());
                self.model.fault = Some(fault);
            }
        }
    }

    /// A page is on the shelf: it goes to the mirror, and what was said about storage may no longer be true.
    fn note_kept(&mut self, ctx: &Context<App>, page: (String, String), reserve_used: bool) {
        if self.model.unkept.is_empty() && self.model.unkept_people.is_empty() {
            self.model.fault = None;
        }
        // Once there is room again, the reserve comes back before the sentence goes.
        self.model.low_on_room = reserve_used || (self.model.low_on_room && !self.notebook.set_reserve_aside());
        self.send_to_mirror(ctx, vec![page]);
    }

    /// Two windows wrote the same page: theirs keeps the name, ours goes on under a new one.
    fn part_ways(&mut self, ctx: &Context<App>, id: &Id, ours: Garment, theirs: Option<Garment>) {
        let new = ours.id().clone();
        let label = ours.called();
        let ours = Rc::new(ours.after(Act::Label(format!("{label} (this window)"))));
        self.model.forget_undo(id);
        self.model.garments.retain(|garment| garment.id() != id);
        self.model.garments.extend(theirs.map(Rc::new));
        self.model.garments.push(ours.clone());
        self.model.notice = Some(Rc::new(Notice::plain(
            "This garment was changed in another window at the same time. Both are kept; you go on with yours.",
        )));
        let kept = self.notebook.keep(ours.as_ref());
        self.note_keeping(ctx, &new, kept);
        if self.model.route.garment() == Some(id) {
            address::replace(&self.model.route.clone().of(new.clone()).href());
        }
        self.renamed = Some((id.clone(), new));
    }

    /// Another window wrote a garment of which our latest change is not kept: ours goes on under a new name, unless it is the same.
    fn rescue(&mut self, ctx: &Context<App>, id: &Id, theirs: Option<&Garment>) {
        let ours = self.model.garment(id).cloned().filter(|_| self.model.unkept.contains(id));
        if let Some(ours) = ours.filter(|ours| Some(ours.as_ref()) != theirs) {
            Rc::make_mut(&mut self.model.unkept).remove(id);
            self.part_ways(ctx, id, ours.named(clock::new_id()), theirs.cloned());
        }
    }

    fn send_to_mirror(&mut self, ctx: &Context<App>, pages: Vec<(String, String)>) {
        match self.mirroring {
            _ if pages.is_empty() => return,
            Mirroring::Off => return,
            Mirroring::Opening | Mirroring::Emptying => {
                self.model.on_the_way = 1;
                return;
            }
            Mirroring::On => self.model.on_the_way += 1,
        }
        let (mirror, link) = (self.mirror.clone(), ctx.link().clone());
        wasm_bindgen_futures::spawn_local(async move {
            // Without a mirror, or when it fails, local storage has the page all the same.
            let _ = mirror.put(pages).await;
            link.send_message(Incoming::Arrived(1));
        });
    }

    /// The scale kept for the screen that the page is on, and whether any is kept.
    fn scale(&self) -> (Option<ScreenScale>, bool) {
        let scale = screen::name().and_then(|name| self.notebook.scale(&name));
        (scale, self.notebook.knows_scales())
    }

    /// Erases the second copy, and says so when that fails: it would come back at the next start.
    fn empty_mirror(&self, ctx: &Context<App>) {
        let (mirror, link) = (self.mirror.clone(), ctx.link().clone());
        wasm_bindgen_futures::spawn_local(async move {
            if mirror.clear().await.is_err() {
                let text =
                    "The second copy in this browser could not be erased. Clear the site’s data in the browser’s settings.";
                link.send_message(Incoming::Message(Message::Said(text.to_owned())));
            }
        });
    }

    /// Lets go of pictures that no page names any more. What cannot be read may name some, so whatever looks like a name there counts as one.
    fn sweep_photographs(&self) {
        let garments = self.model.garments.iter().map(Rc::as_ref);
        let asides = garments.clone().flat_map(|garment| garment.aside().iter().map(|(_, text)| text.as_str()));
        let unread = self.model.set_aside.iter().map(|page| page.text.as_str());
        let perhaps = asides.chain(unread).flat_map(photographs_perhaps_named);
        photographs::sweep(photographs_of(garments).into_iter().chain(perhaps).collect());
    }

    /// Erases the pictures, and says so when that fails.
    fn erase_photographs(&self, ctx: &Context<App>) {
        let link = ctx.link().clone();
        photographs::clear(move |cleared| {
            if !cleared {
                let text =
                    "The photographs in this browser could not be erased. Clear the site’s data in the browser’s settings.";
                link.send_message(Incoming::Message(Message::Said(text.to_owned())));
            }
        });
    }

    /// Lets the page follow the settings.
    fn dress(&mut self) {
        document::set_root("theme", self.model.settings.theme.key());
        document::set_root("text", self.model.settings.text_size.key());
    }

    /// Names the window, and leads an address that only names a garment, or one that is gone, to a screen.
    fn settle_route(&mut self) {
        let garment = self.model.route.garment().and_then(|id| self.model.garment(id)).cloned();
        let title = match (&self.model.route, &garment) {
            (Route::Start, _) => "Check a garment".to_owned(),
            (Route::Desk(None), _) => "Quick sheet".to_owned(),
            (Route::Settings, _) => "Settings".to_owned(),
            (Route::People, _) => "People".to_owned(),
            (Route::Person(id, _), _) => match self.model.person(id).map(|person| person.name()) {
                Some(name) if !name.is_empty() => name.to_owned(),
                _ => "Person".to_owned(),
            },
            (Route::Numbers, _) => "Where the numbers come from".to_owned(),
            (Route::Rates, _) => "Rates".to_owned(),
            (Route::Beside(_), _) => "Side by side".to_owned(),
            (Route::HandOn(_), _) => "Hand on".to_owned(),
            (Route::Guesses, _) => "Your guesses".to_owned(),
            (Route::Practice, _) => "Practise".to_owned(),
            (Route::Learn, _) => "Learn".to_owned(),
            (Route::Course(subject), _) => Subject::of(subject).map_or("Learn", Subject::name).to_owned(),
            (Route::Lesson(subject, key, _), _) => {
                Subject::of(subject).and_then(|subject| subject.check(key)).map_or("Learn", |check| check.name).to_owned()
            }
            (Route::Bench, _) => "Bench".to_owned(),
            (Route::SeamKind, _) => "Which stitch, which seam".to_owned(),
            (Route::Ruler, _) => "Ruler on the screen".to_owned(),
            (Route::Instrument(key) | Route::Marks(key, _) | Route::Live(key, _) | Route::Picture(key, _), _) => {
                instrument_of(key).map_or("Bench", |instrument| instrument.name).to_owned()
            }
            (_, Some(garment)) if garment.label().is_empty() => garment.family().name.to_owned(),
            (_, Some(garment)) => garment.label().to_owned(),
            _ => "Rack".to_owned(),
        };
        document::set_title(&format!("{title} · Garment Assay"));
        let to = match (&self.model.route, garment) {
            (Route::Person(person, _), _) if self.model.person(person).is_none() => Route::People,
            (Route::Person(person, Some(_)), None) => Route::Person(person.clone(), None),
            (Route::Course(subject), _) if Subject::of(subject).is_none() => Route::Learn,
            (Route::Lesson(subject, key, _), _) if Subject::of(subject).and_then(|subject| subject.check(key)).is_none() => {
                Route::Course(subject.clone())
            }
            // A lesson about a check that is not put to the garment, or of a garment that is gone, is read for itself.
            (Route::Lesson(subject, key, Some(_)), garment)
                if garment.as_ref().is_none_or(|garment| !has_lesson(garment, subject, key)) =>
            {
                Route::Lesson(subject.clone(), key.clone(), None)
            }
            (route, None) if route.garment().is_some() => Route::Rack,
            (Route::Resume(id), Some(garment)) => {
                let appraisal = self.appraisals.of(&garment);
                match self.appraisals.appraiser().next(&garment, &appraisal, None) {
                    Some(next) => Route::Check(id.clone(), next.check.key.to_owned()),
                    None => Route::Result(id.clone()),
                }
            }
            (Route::Check(id, key), Some(garment)) if check_put(&garment, key).is_none() => Route::Resume(id.clone()),
            _ => return,
        };
        address::replace(&to.href());
    }
}
