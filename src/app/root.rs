//! The root: holds the model, hands messages to it, and carries out what they ask of the world outside.

mod opening;
mod people;

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet, VecDeque};
use std::rc::Rc;

use garment_assay::cost::Rates;
use garment_assay::fit::{Person, PersonId};
use garment_assay::garment::{Act, Garment, Id, Readings};
use garment_assay::learn::Subject;
use garment_assay::measure::ScreenScale;
use garment_assay::notebook::{
    Change, Elsewhere, Healed, KeepFault, Kept, Notebook, Settings, photographs_of, photographs_perhaps_named,
};
use garment_assay::say;
use gloo::events::EventListener;
use yew::prelude::*;

use opening::Read;
pub use opening::open;

use super::appraisals::Appraisals;
use super::browser::mirror::{Mirror, Mirrored};
use super::browser::shelf::BrowserShelf;
use super::browser::turns::breath;
use super::browser::{address, clock, document, flight, language, photographs, screen, shelf, shipped};
use super::lessons::Lessons;
use super::model::{Effect, Message, Model, Notice};
use super::pages::rack::Rack;
use super::parts::alert::Alert;
use super::parts::hall::{HALL, Hall};
use super::parts::quiet_line::QuietLine;
use super::parts::toast::Toast;
use super::pricing::Pricing;
use super::route::Route;
use super::standing::{Standing, Step, Wish};
use super::wings::{self, Scene, Wing, check_put, instrument_of};
use super::words::headline;

/// What comes to the root.
pub enum Incoming {
    /// Something that happened on the screen or to the address.
    Message(Message),
    /// The mirror was opened and holds that; none when it could not be.
    Mirrored(Option<Mirrored>),
    /// So many changes reached the mirror.
    Arrived(u32),
    /// The page's size or zoom changed, or it moved to another screen.
    Resized,
    /// The longer texts of a course's lessons came, or did not.
    Texts(Subject, Option<String>),
    /// The code of a wing came, or did not.
    Entered(Wing, bool),
    /// A wing that did not come is asked for once more.
    Again(Wing),
    /// Another window wrote under a key.
    Written(Option<String>, Option<String>),
    /// The next part of a large import is due.
    ImportOn,
    /// The page is out of sight, and may be closed without another word.
    Hidden,
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

/// What is kept as a whole beside the pages.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Small {
    Settings,
    Trials,
    LessonsRead,
    Keeping,
}

/// Milliseconds from the first page to the fetching of what the others need.
const AFTER_THE_FIRST_PAGE: u32 = 1500;

/// What is still to come of a large import, and the notice of what came.
struct Importing {
    changes: Vec<Change>,
    people: Vec<Change<Person>>,
    settings: Option<Settings>,
    told: Box<Notice>,
    in_a_turn: usize,
}

/// How far the code of a wing is that is not here.
#[derive(Clone, Copy, PartialEq)]
enum Coming {
    OnTheWay,
    Missing,
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The file of the invented rack, which is to be added at once.
    pub invented: Option<AttrValue>,
}

/// The whole app.
pub struct App {
    model: Model,
    notebook: Notebook<BrowserShelf>,
    mirror: Mirror,
    mirroring: Mirroring,
    /// Pages that wait for their turn on the way to the mirror, the oldest first.
    outgoing: Rc<RefCell<VecDeque<(String, String)>>>,
    /// While the mirror is opened: keys whose pages another window took away, which are not to come back from it.
    taken_away: BTreeSet<String>,
    /// A large import that is under way.
    importing: Option<Importing>,
    /// What is no page and could not be kept; it is tried again whenever something else is.
    small_unkept: BTreeSet<Small>,
    /// A garment that goes on under a new name since this message: old name, new name.
    renamed: Option<(Id, Id)>,
    appraisals: Appraisals,
    pricing: Pricing,
    lessons: Lessons,
    /// Where the screens' messages go: one for all time, since a page whose properties are the same is not worked out anew, and keeps what
    /// is half-typed on it.
    send: Callback<Message>,
    /// How often the page was resized.
    resized: u32,
    /// Wings whose code is on its way, and those whose code did not come.
    wings: RefCell<BTreeMap<Wing, Coming>>,
    aloud: String,
    _listeners: Vec<EventListener>,
}

impl Component for App {
    type Message = Incoming;
    type Properties = Props;

    fn create(ctx: &Context<App>) -> App {
        let Read { notebook, opened, garments, appraisals, heard } = opening::taken();
        let settings = notebook.settings().ok().flatten().map_or_else(Settings::default, |text| Settings::read(&text));
        let mut model = Model {
            route: Route::parse(&address::hash()),
            garments,
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
            standing: Standing { keeping: Rc::new(notebook.keeping()), lasting: flight::known_promise(), ..Standing::default() },
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
        let on_hidden = {
            let link = link.clone();
            move || link.send_message(Incoming::Hidden)
        };
        let on_told = {
            let link = link.clone();
            move |copy, newer| link.send_message(Incoming::Message(Message::Step(Step::Told(copy, newer))))
        };
        // What another window wrote while the pages were read is heard first.
        for (key, text) in heard.so_far() {
            link.send_message(Incoming::Written(key, text));
        }
        let listeners = [
            flight::on_told(on_told),
            address::on_change(on_address),
            document::on_width_change(on_width),
            document::on_written_elsewhere(on_written),
            document::on_hidden(on_hidden),
            screen::on_change(on_resize),
        ];
        {
            let link = link.clone();
            // After the page is drawn, as the mirror.
            wasm_bindgen_futures::spawn_local(async move {
                breath().await;
                let lasting = flight::promise().await;
                link.send_message(Incoming::Message(Message::Step(Step::Lasting(lasting, false))));
            });
        }
        let mirror = Mirror::default();
        {
            let mirror = mirror.clone();
            wasm_bindgen_futures::spawn_local(async move {
                breath().await;
                link.send_message(Incoming::Mirrored(mirror.open(shelf::says).await.ok()));
            });
        }
        let mut app = App {
            model,
            notebook,
            mirror,
            mirroring: Mirroring::Opening,
            outgoing: Rc::default(),
            taken_away: BTreeSet::new(),
            importing: None,
            small_unkept: BTreeSet::new(),
            renamed: None,
            appraisals,
            pricing: Pricing::default(),
            lessons: Lessons::default(),
            send: ctx.link().callback(Incoming::Message),
            resized: 0,
            wings: RefCell::default(),
            aloud: String::new(),
            _listeners: listeners.into_iter().flatten().collect(),
        };
        let (scale, elsewhere) = app.scale();
        app.model.after(Message::ScreenChanged(scale, elsewhere));
        app.dress();
        app.settle_route();
        app.fetch_texts(ctx);
        if let Some(file) = &ctx.props().invented {
            ctx.link().send_message(Incoming::Message(Message::Invent(file.to_string())));
        }
        app
    }

    fn update(&mut self, ctx: &Context<App>, incoming: Incoming) -> bool {
        match incoming {
            Incoming::Message(Message::Import(changes, people, settings)) if changes.len() > IMPORTED_IN_A_TURN => {
                let told = Box::new(Notice::plain(""));
                self.begin_importing(ctx, Importing { changes, people, settings, told, in_a_turn: IMPORTED_IN_A_TURN })
            }
            Incoming::ImportOn => self.import_on(ctx),
            Incoming::Hidden => {
                // Out of sight its turns would come a second apart, and a closed page would leave a part.
                self.finish_importing(ctx)
            }
            Incoming::Message(message) => {
                // Whatever is done meanwhile is done to what the import leaves, and the import's way back must not take it too.
                if !leaves_the_rack(&message) {
                    self.finish_importing(ctx);
                }
                self.take(ctx, message)
            }
            Incoming::Arrived(count) => {
                self.model.on_the_way = self.model.on_the_way.saturating_sub(count);
                true
            }
            Incoming::Mirrored(None) => {
                self.finish_importing(ctx);
                self.model.on_the_way = 0;
                self.mirroring = Mirroring::Off;
                true
            }
            Incoming::Mirrored(Some(_)) if matches!(self.mirroring, Mirroring::Emptying) => {
                self.finish_importing(ctx);
                self.mirroring = Mirroring::On;
                self.empty_mirror(ctx);
                let healed = self.notebook.heal(&[]).unwrap_or_default();
                self.model.on_the_way = 0;
                self.send_to_mirror(ctx, healed.to_mirror);
                true
            }
            Incoming::Mirrored(Some(Mirrored { alike, unlike: pages })) => {
                // What the import brings is newer than what lies in the mirror.
                self.finish_importing(ctx);
                // Dropped before the mirror was here: its page of it must go, not come back.
                let dropped: Vec<_> = self.outgoing.borrow_mut().drain(..).collect();
                let mut pages = self.notebook.without_aside(pages);
                let taken_away = std::mem::take(&mut self.taken_away);
                pages.retain(|(key, _)| !taken_away.contains(key) && !dropped.iter().any(|(gone, _)| gone == key));
                let all_kept = self.model.unkept.is_empty() && self.model.unkept_people.is_empty();
                for (key, text) in pages.iter().filter(|_| !all_kept) {
                    match Elsewhere::of(key, text) {
                        Elsewhere::Changed(garment) => self.rescue(ctx, garment.id(), Some(&garment)),
                        Elsewhere::PersonChanged(person) => self.rescue_person(ctx, person.id(), Some(&person)),
                        _ => {}
                    }
                }
                let mut healed = self
                    .notebook
                    .heal_where_unlike(&pages, &alike)
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
                    self.send_to_mirror(ctx, dropped);
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
            Incoming::Entered(wing, is_here) => {
                if is_here {
                    self.wings.borrow_mut().remove(&wing);
                    if document::focus_is_in(HALL) {
                        // The heading that goes hands the keyboard on to that of the page.
                        gloo::timers::callback::Timeout::new(0, document::focus_heading).forget();
                    }
                } else {
                    self.wings.borrow_mut().insert(wing, Coming::Missing);
                }
                true
            }
            Incoming::Again(wing) => {
                // The button goes; the heading stays, until that of the page takes over from it.
                document::focus_heading();
                self.wings.borrow_mut().remove(&wing);
                true
            }
            Incoming::Resized => {
                self.resized = self.resized.wrapping_add(1);
                let (scale, elsewhere) = self.scale();
                if (scale, scale.is_none() && elsewhere) == (self.model.scale, self.model.scale_void) {
                    // The ruler follows the height of the page all the same.
                    return matches!(self.model.route, Route::Ruler | Route::Marks(..));
                }
                self.take(ctx, Message::ScreenChanged(scale, elsewhere))
            }
            Incoming::Written(None, _) => {
                // Another window erased everything.
                self.stop_importing();
                if matches!(self.mirroring, Mirroring::Opening) {
                    self.mirroring = Mirroring::Emptying;
                }
                self.outgoing.borrow_mut().clear();
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
            Incoming::Written(Some(key), text) => {
                if text.is_some() {
                    // An import decided before that window wrote must find its page unseen, so that both are kept.
                    self.finish_importing(ctx);
                    self.taken_away.remove(&key);
                } else if matches!(self.mirroring, Mirroring::Opening) {
                    self.taken_away.insert(key.clone());
                }
                let elsewhere = self.notebook.written_elsewhere(&key, text.as_deref());
                if !matches!(elsewhere, Elsewhere::Nothing) {
                    // What waits here for the mirror is older than that, and must not come after it.
                    let newer = |page: &mut String| text.as_ref().map(|text| page.clone_from(text)).is_some();
                    self.outgoing.borrow_mut().retain_mut(|(waiting, page)| *waiting != key || newer(page));
                }
                match elsewhere {
                    Elsewhere::Changed(garment) => {
                        self.rescue(ctx, garment.id(), Some(&garment));
                        self.take(ctx, Message::ChangedElsewhere(garment))
                    }
                    Elsewhere::Gone(id) => {
                        if text.is_none() {
                            // It was erased, not deleted, and so is to be what would still come.
                            self.stop_importing();
                        }
                        self.rescue(ctx, &id, None);
                        self.take(ctx, Message::GoneElsewhere(id))
                    }
                    Elsewhere::Over(id, theirs) => {
                        Rc::make_mut(&mut self.model.unkept).remove(&id);
                        match (self.model.garment(&id).cloned(), theirs) {
                            (Some(ours), Some(theirs)) if *ours == *theirs => {}
                            (Some(ours), theirs) => {
                                self.part_ways(ctx, &id, ours.named(clock::new_id()), theirs.map(|theirs| *theirs));
                                self.renamed = None;
                            }
                            (None, theirs) => self.model.garments.extend(theirs.map(|theirs| Rc::new(*theirs))),
                        }
                        true
                    }
                    Elsewhere::PersonOver(id, theirs) => {
                        self.over_person(ctx, &id, theirs.map(|theirs| *theirs));
                        true
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
                }
            }
        }
    }

    /// The file of the invented rack was asked for at the entrance and came after the house had taken its place.
    fn changed(&mut self, ctx: &Context<App>, old: &Props) -> bool {
        if let Some(file) = ctx.props().invented.as_ref().filter(|file| old.invented.as_ref() != Some(file)) {
            ctx.link().send_message(Incoming::Message(Message::Invent(file.to_string())));
        }
        false
    }

    fn view(&self, ctx: &Context<App>) -> Html {
        let send = self.send.clone();
        let model = &self.model;
        let scene = self.scene(&send);
        let shown = scene.garment();
        // The quick sheet has all checks on it, and wants the width for them.
        let on_sheet = matches!(model.route, Route::Desk(_));
        let beside_rack = model.wide && !on_sheet && model.route != Route::Rack && shown.is_some();
        let beside_list = model.wide && !on_sheet && shown.is_some() && !matches!(model.route, Route::Checks(_));
        let over_check = matches!(&model.route, Route::Lesson(_, key, Some(_)) if scene.check_put(key).is_some());
        let main = match Wing::of(&scene) {
            _ if over_check || matches!(model.route, Route::Check(..)) && shown.is_some() => html! {
                <>
                    if over_check {
                        { self.page(ctx, Wing::Study, &scene) }
                    }
                    // Stays while its lesson is read: what is half-said or half-typed there is not lost.
                    <div key="check" class="kept-open" hidden={over_check}>{ self.page(ctx, Wing::Judging, &scene) }</div>
                </>
            },
            Some(wing) => self.page(ctx, wing, &scene),
            None => html! {
                <Rack garments={model.garments.clone()} set_aside={model.set_aside.clone()} appraisals={self.appraisals.clone()} rates={model.settings.rates.clone()} send={send.clone()} />
            },
        };
        html! {
            <div class="desk" data-beside={match (beside_rack, beside_list) { (true, true) => "both", (true, false) => "rack", _ => "none" }}>
                // The screen itself stands first, so that a keyboard is in it at once; styles put the rack at its left.
                <main id="main" data-screen={match model.route { Route::Rack => "rack", Route::Beside(_) | Route::BesideSheet(_) | Route::Desk(_) => "wide", _ => "one" }}>
                    if model.fault.is_some() || model.low_on_room {
                        <Alert fault={model.fault} exportable={!model.garments.is_empty() || !model.people.is_empty()} unkept={model.unkept.len()} people={model.unkept_people.len()} />
                    }
                    if let Some(line) = model.line() {
                        <QuietLine {line} step={send.reform(Message::Step)} />
                    }
                    { main }
                </main>
                if beside_rack {
                    <aside class="beside beside-rack" aria-label={say!("Rack")}>
                        <Rack beside=true garments={model.garments.clone()} set_aside={Rc::new(Vec::new())} open={model.route.garment().cloned()} appraisals={self.appraisals.clone()} rates={model.settings.rates.clone()} send={send.clone()} />
                    </aside>
                }
                if beside_list {
                    <aside class="beside" aria-label={say!("All checks of this garment")}>{ self.page(ctx, Wing::Beside, &scene) }</aside>
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
            flight::ask();
            // Once the first page has had the line to itself. Where data are dear, a wing comes when it is entered.
            let bring = || {
                wasm_bindgen_futures::spawn_local(async {
                    if wings::bring_all().await {
                        document::set_root("whole", "yes");
                    }
                });
            };
            work_ahead(self.appraisals.clone(), self.model.garments.clone(), self.model.settings.rates.clone());
            if !flight::is_sparing() {
                gloo::timers::callback::Timeout::new(AFTER_THE_FIRST_PAGE, bring).forget();
            }
        }
    }
}

/// Works out what follows from each garment, in turns too short to be felt, and then their places by value, so that no order of the rack has
/// to wait for all of them.
fn work_ahead(appraisals: Appraisals, garments: Vec<Rc<Garment>>, rates: Rates) {
    fn turn(appraisals: Appraisals, garments: Vec<Rc<Garment>>, rates: Rates, from: usize) {
        let next = move || {
            if from >= garments.len() {
                let _ = wings::at_once(wings::worths(garments, rates, appraisals), |_| ());
                return;
            }
            let to = (from + IN_A_TURN).min(garments.len());
            for garment in &garments[from..to] {
                appraisals.of(garment);
            }
            turn(appraisals, garments, rates, to);
        };
        gloo::timers::callback::Timeout::new(BETWEEN_TURNS, next).forget();
    }
    if !garments.is_empty() {
        turn(appraisals, garments, rates, 0);
    }
}

/// Garments worked out in one turn.
const IN_A_TURN: usize = 10;
/// Garments of an import that are taken in at once.
const IMPORTED_IN_A_TURN: usize = 24;
/// Garments that are taken in at once where each comes onto the screen as well. Judgement, as the numbers beside it.
const SHOWN_IN_A_TURN: usize = 4;
/// Pages that go to the mirror at once.
const IN_AN_ERRAND: usize = 50;
/// Milliseconds between two turns, for whoever taps meanwhile.
const BETWEEN_TURNS: u32 = 15;

/// Has the next part of an import come in a turn of its own.
fn import_soon(ctx: &Context<App>) {
    let link = ctx.link().clone();
    gloo::timers::callback::Timeout::new(0, move || link.send_message(Incoming::ImportOn)).forget();
}

/// Whether that changes no garment, no person and no settings, or takes back what was done before an import.
fn leaves_the_rack(message: &Message) -> bool {
    use Message::{Erase, NoticeRead, Opened, Said, ScreenChanged, Step, UndoNotice, Wide};
    matches!(message, Opened(_) | Wide(_) | Step(_) | ScreenChanged(..) | Said(_) | NoticeRead | UndoNotice | Erase)
}

/// Whether the lesson of that subject and check is about a check that is put to the garment as it is.
fn has_lesson(garment: &Garment, subject: &str, check: &str) -> bool {
    check_put(garment, check).is_some_and(|check| Subject::with(garment.family(), check).key() == subject)
}

impl App {
    /// All that a page may be shown from.
    fn scene(&self, send: &Callback<Message>) -> Scene {
        let open = match &self.model.route {
            Route::Instrument(key) | Route::Marks(key, _) | Route::Live(key, _) | Route::Picture(key, _) => instrument_of(key),
            _ => None,
        };
        let given = open.and_then(|instrument| Some(Readings { instrument, given: self.notebook.on_the_bench(instrument)? }));
        Scene {
            model: Rc::new(self.model.clone()),
            appraisals: self.appraisals.clone(),
            pricing: self.pricing.clone(),
            lessons: self.lessons.clone(),
            on_the_bench: given,
            resized: self.resized,
            send: send.clone(),
        }
    }

    /// The page of a wing if its code is here; else a word about it, and its code is sent for.
    fn page(&self, ctx: &Context<App>, wing: Wing, scene: &Scene) -> Html {
        let coming = self.wings.borrow().get(&wing).copied();
        if coming.is_none() {
            let link = ctx.link().clone();
            let came = move |is_here| link.send_message(Incoming::Entered(wing, is_here));
            if let Some(page) = wings::at_once(wing.page(scene.clone()), came) {
                return page;
            }
            self.wings.borrow_mut().insert(wing, Coming::OnTheWay);
        }
        if wing == Wing::Beside {
            // The page that it stands beside is in the same wing or says that one is on its way.
            return Html::default();
        }
        html! { <Hall missing={coming == Some(Coming::Missing)} again={ctx.link().callback(move |()| Incoming::Again(wing))} /> }
    }

    /// Fetches the longer texts of the lessons that are on the screen, unless they are here.
    fn fetch_texts(&mut self, ctx: &Context<App>) {
        let (Route::Course(subject) | Route::Lesson(subject, ..)) = &self.model.route else { return };
        let Some(subject) = self.lessons.wanted(subject) else { return };
        let link = ctx.link().clone();
        shipped::fetch(format!("./learn/{}{}.txt", language::folder(), subject.key()), move |text| {
            link.send_message(Incoming::Texts(subject, text))
        });
    }

    /// Begins a large import; one that is still under way comes first, and whole.
    fn begin_importing(&mut self, ctx: &Context<App>, importing: Importing) -> bool {
        self.finish_importing(ctx);
        self.importing = Some(importing);
        self.model.on_the_way += 1;
        // The rows that it brings have days on them.
        clock::make_ready();
        if document::is_hidden() {
            // Out of sight its turns would come a second apart.
            return self.finish_importing(ctx);
        }
        import_soon(ctx);
        true
    }

    /// Takes in at once what is left of an import; whether anything was.
    fn finish_importing(&mut self, ctx: &Context<App>) -> bool {
        let is_under_way = self.importing.is_some();
        while self.importing.is_some() {
            self.import_on(ctx);
        }
        is_under_way
    }

    /// Takes in the next part of a large import, in turns too short to keep a hand waiting. Each part is on the shelf when its turn is over;
    /// of a window that is closed in between, the rest can be taken in from the same file again; of the invented rack, which is no file of
    /// theirs, the part that came is taken out and all of it in again. It is told once all is here.
    fn import_on(&mut self, ctx: &Context<App>) -> bool {
        let Some(mut importing) = self.importing.take() else { return false };
        let rest = importing.changes.split_off(importing.changes.len().min(importing.in_a_turn));
        let part = std::mem::replace(&mut importing.changes, rest);
        if importing.changes.is_empty() {
            self.model.on_the_way = self.model.on_the_way.saturating_sub(1);
            return self.take(ctx, Message::ImportOn(part, importing.people, importing.settings, importing.told));
        }
        let effects = self.model.take_in(&mut importing.told, part, Vec::new());
        self.importing = Some(importing);
        for effect in effects {
            self.carry_out(ctx, effect);
        }
        self.renamed = None;
        import_soon(ctx);
        true
    }

    /// Lets go of what is still to come of an import.
    fn stop_importing(&mut self) {
        if self.importing.take().is_some() {
            self.model.on_the_way = self.model.on_the_way.saturating_sub(1);
        }
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
            Effect::TakeIn(changes, people, says) => {
                let told = Box::new(Notice { of_the_whole: Some(says), ..Notice::plain("") });
                self.begin_importing(ctx, Importing { changes, people, settings: None, told, in_a_turn: SHOWN_IN_A_TURN });
            }
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
            Effect::KeepSettings => self.keep_small(Small::Settings),
            Effect::KeepOnTheBench(readings) => {
                let kept = self.notebook.keep_on_the_bench(&readings);
                self.note_small(kept);
            }
            Effect::KeepTrials => self.keep_small(Small::Trials),
            Effect::KeepLessonsRead => self.keep_small(Small::LessonsRead),
            Effect::KeepKeeping => self.keep_small(Small::Keeping),
            Effect::Wish(Wish::AskPromise) => {
                let link = ctx.link().clone();
                wasm_bindgen_futures::spawn_local(async move {
                    let lasting = flight::ask_promise().await;
                    link.send_message(Incoming::Message(Message::Step(Step::Lasting(lasting, true))));
                });
            }
            Effect::Wish(wish) => flight::wish(wish),
            Effect::KeepScale(scale) => {
                let kept = screen::name().map_or(Ok(()), |name| self.notebook.keep_scale(&name, scale.as_ref()));
                self.note_small(kept);
            }
            Effect::Erase => {
                self.stop_importing();
                match self.notebook.erase() {
                    Ok(()) => {
                        self.model.fault = None;
                        (self.model.unkept, self.model.unkept_people) = (Rc::default(), Rc::default());
                        self.small_unkept.clear();
                        self.model.low_on_room = !self.notebook.set_reserve_aside();
                        self.model.notice = Some(Rc::new(Notice::plain(say!("Everything is erased."))));
                    }
                    Err(KeepFault(fault)) => {
                        self.model.fault = Some(fault);
                        let text = say!("Not everything could be erased. Load the page again and erase once more.");
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
            Effect::DropSetAside(key) => match self.notebook.drop_set_aside(&key) {
                // No page in the place of the mirror's, or that one would come back.
                Ok(Some(key)) if matches!(self.mirroring, Mirroring::Opening) => {
                    self.outgoing.borrow_mut().push_back((key, String::new()));
                }
                Ok(Some(key)) => self.send_to_mirror(ctx, vec![(key, String::new())]),
                Ok(None) => {}
                Err(KeepFault(fault)) => self.model.fault = Some(fault),
            },
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
                    if let Some(importing) = &mut self.importing {
                        importing.told.leave_out(id);
                    }
                    let text = match stays.theirs {
                        Some(theirs) => {
                            self.take(ctx, Message::ChangedElsewhere(Box::new(theirs)));
                            say!("This garment was changed in another window, so it was not deleted.")
                        }
                        None => {
                            say!(
                                "A newer version of the app has written this garment, so it was not deleted. Load the page again."
                            )
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
        self.try_small_again();
        // Once there is room again, the reserve comes back before the sentence goes.
        self.model.low_on_room = reserve_used || (self.model.low_on_room && !self.notebook.set_reserve_aside());
        self.send_to_mirror(ctx, vec![page]);
    }

    /// Keeps something that is no page, as it stands now.
    fn keep_small(&mut self, small: Small) {
        let fault = self.model.fault.filter(|_| self.small_unkept.is_empty());
        self.small_unkept.insert(small);
        self.try_small_again();
        // A sentence that was there for another reason is not for this to take away.
        self.model.fault = self.model.fault.or(fault);
    }

    /// Takes note of whether something that is no page was kept, of which nothing is left to try again.
    fn note_small(&mut self, kept: Result<(), KeepFault>) {
        match kept {
            Ok(()) if self.small_unkept.is_empty() => {}
            Ok(()) => self.try_small_again(),
            Err(KeepFault(fault)) => self.model.fault = Some(fault),
        }
    }

    /// Keeps what could not be kept before; once nothing is left of it, the sentence about storage goes.
    fn try_small_again(&mut self) {
        let mut refused = None;
        for small in self.small_unkept.clone() {
            let kept = match small {
                Small::Settings => self.notebook.keep_settings(&self.model.settings.write()),
                Small::Trials => self.notebook.keep_trials(&self.model.trials),
                Small::LessonsRead => self.notebook.keep_lessons_read(&self.model.read),
                Small::Keeping => self
                    .notebook
                    .keep_keeping(&self.model.standing.keeping)
                    .map(|joined| self.model.standing.keeping = Rc::new(joined)),
            };
            match kept {
                Ok(()) => {
                    self.small_unkept.remove(&small);
                }
                Err(KeepFault(fault)) => refused = Some(fault),
            }
        }
        if refused.is_some() || (self.model.unkept.is_empty() && self.model.unkept_people.is_empty()) {
            self.model.fault = refused;
        }
    }

    /// Two windows wrote the same page: theirs keeps the name, ours goes on under a new one.
    fn part_ways(&mut self, ctx: &Context<App>, id: &Id, ours: Garment, theirs: Option<Garment>) {
        let new = ours.id().clone();
        let label = ours.called();
        let ours = Rc::new(ours.after(Act::Label(say!("{name} (this window)", name = label))));
        self.model.forget_undo(id);
        if let Some(importing) = &mut self.importing {
            importing.told.leave_out(id);
        }
        self.model.garments.retain(|garment| garment.id() != id);
        self.model.garments.extend(theirs.map(Rc::new));
        self.model.garments.push(ours.clone());
        self.model.notice = Some(Rc::new(Notice::plain(say!(
            "This garment was changed in another window at the same time. Both are kept; you go on with yours."
        ))));
        let kept = self.notebook.keep(ours.as_ref());
        self.note_keeping(ctx, &new, kept);
        // By the address and not by the model: a hand may have gone on to another garment a moment ago, and is not to be led back.
        let route = Route::parse(&address::hash());
        if route.garment() == Some(id) {
            address::replace(&route.of(new.clone()).href());
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
            Mirroring::On => {}
        }
        let is_going = !self.outgoing.borrow().is_empty();
        self.outgoing.borrow_mut().extend(pages);
        if is_going {
            return;
        }
        self.model.on_the_way += 1;
        let (mirror, outgoing, link) = (self.mirror.clone(), self.outgoing.clone(), ctx.link().clone());
        // Begins once all that this message keeps is here: a thousand garments taken in must be neither a thousand errands, each with a page
        // drawn anew, nor one that keeps a hand waiting. They go in order, so that no older page comes after a newer one.
        wasm_bindgen_futures::spawn_local(async move {
            loop {
                let next: Vec<_> = {
                    let mut outgoing = outgoing.borrow_mut();
                    let count = outgoing.len().min(IN_AN_ERRAND);
                    outgoing.drain(..count).collect()
                };
                if next.is_empty() {
                    break;
                }
                // Without a mirror, or when it fails, local storage has the page all the same.
                let _ = mirror.put(next).await;
            }
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
        // What waits is erased too; what is under way was begun before, and comes before.
        self.outgoing.borrow_mut().clear();
        let (mirror, link) = (self.mirror.clone(), ctx.link().clone());
        wasm_bindgen_futures::spawn_local(async move {
            if mirror.clear().await.is_err() {
                let text =
                    say!("The second copy in this browser could not be erased. Clear the site’s data in the browser’s settings.");
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
                    say!("The photographs in this browser could not be erased. Clear the site’s data in the browser’s settings.");
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
            (Route::Start, _) => say!("Check a garment").to_owned(),
            (Route::Desk(None), _) => say!("Quick sheet").to_owned(),
            (Route::Settings, _) => say!("Settings").to_owned(),
            (Route::People, _) => say!("People").to_owned(),
            (Route::Person(id, _), _) => match self.model.person(id).map(|person| person.name()) {
                Some(name) if !name.is_empty() => name.to_owned(),
                _ => say!("Person").to_owned(),
            },
            (Route::Numbers, _) => say!("Where the numbers come from").to_owned(),
            (Route::Licences, _) => say!("Licences").to_owned(),
            (Route::Rates, _) => say!("Rates").to_owned(),
            (Route::Beside(_), _) => say!("Side by side").to_owned(),
            (Route::BesideSheet(_), _) => say!("Comparison sheet").to_owned(),
            (Route::HandOn(_), _) => say!("Hand on").to_owned(),
            (Route::Guesses, _) => say!("Your guesses").to_owned(),
            (Route::Practice, _) => say!("Practise").to_owned(),
            (Route::Learn, _) => say!("Learn").to_owned(),
            (Route::Course(subject), _) => Subject::of(subject).map_or_else(|| say!("Learn"), Subject::name).to_owned(),
            (Route::Lesson(subject, key, _), _) => Subject::of(subject)
                .and_then(|subject| subject.check(key))
                .map_or_else(|| say!("Learn"), |check| check.name())
                .to_owned(),
            (Route::Bench, _) => say!("Bench").to_owned(),
            (Route::SeamKind, _) => say!("Which stitch, which seam").to_owned(),
            (Route::Ruler, _) => say!("Ruler on the screen").to_owned(),
            (Route::Instrument(key) | Route::Marks(key, _) | Route::Live(key, _) | Route::Picture(key, _), _) => {
                instrument_of(key).map_or_else(|| say!("Bench"), |instrument| instrument.name()).to_owned()
            }
            (_, Some(garment)) if garment.label().is_empty() => garment.family().name().to_owned(),
            (_, Some(garment)) => garment.label().to_owned(),
            _ => say!("Rack").to_owned(),
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
