//! What the app knows, and what becomes of it with each message. Pure: storage, clock and address are somebody else's.

use std::collections::BTreeSet;
use std::rc::Rc;

use garment_assay::catalog::Family;
use garment_assay::cost::Rates;
use garment_assay::fit::{Person, PersonId};
use garment_assay::garment::{Act, FitAct, Garment, Id, Readings};
use garment_assay::language::within;
use garment_assay::learn::Marks;
use garment_assay::measure::ScreenScale;
use garment_assay::notebook::{Change, Healed, MOST_TRIALS, Mode, SetAside, Settings, ShelfFault, import_all};
use garment_assay::practice::Trial;
use garment_assay::say;
use garment_assay::trade::{Day, Ticket};

use super::route::Route;
use super::standing::{Standing, Step, Wish};

/// Everything on which a screen depends.
#[derive(Clone, Debug, PartialEq)]
pub struct Model {
    /// The screen that is open.
    pub route: Route,
    /// Garments noted.
    pub garments: Vec<Rc<Garment>>,
    /// People whose measures are kept, by name and then by id.
    pub people: Vec<Rc<Person>>,
    /// Pages that could not be read.
    pub set_aside: Rc<Vec<SetAside>>,
    /// What the person chose.
    pub settings: Settings,
    /// Acts that take back what was done, the newest last.
    pub undo: Rc<Vec<(Id, Act)>>,
    /// A word to the person about what just happened.
    pub notice: Option<Rc<Notice>>,
    /// Garments whose latest change is not kept, and why.
    pub unkept: Rc<BTreeSet<Id>>,
    /// People whose latest change is not kept.
    pub unkept_people: Rc<BTreeSet<PersonId>>,
    /// What is wrong with storage, if anything.
    pub fault: Option<ShelfFault>,
    /// The reserve was given up: room is running out.
    pub low_on_room: bool,
    /// Changes on their way to the mirror.
    pub on_the_way: u32,
    /// Rack, garment and detail fit beside each other.
    pub wide: bool,
    /// Today, for new garments.
    pub today: Day,
    /// What was answered in practice, oldest first.
    pub trials: Rc<Vec<Trial>>,
    /// Lessons that were read.
    pub read: Rc<Marks>,
    /// The scale of this screen, if it was fitted.
    pub scale: Option<ScreenScale>,
    /// A scale is kept, but for another screen or another zoom.
    pub scale_void: bool,
    /// How safely app and notes lie on this device.
    pub standing: Standing,
}

/// A word to the person, with a way back where there is one.
#[derive(Clone, Debug, PartialEq)]
pub struct Notice {
    /// What happened.
    pub text: String,
    /// What "Undo" puts back.
    pub back: Vec<Rc<Garment>>,
    /// What "Undo" takes away again.
    pub away: Vec<Id>,
    /// People that "Undo" puts back.
    pub people_back: Vec<Rc<Person>>,
    /// People that "Undo" takes away again.
    pub people_away: Vec<PersonId>,
    /// Rates that "Undo" puts back.
    pub rates: Option<Rates>,
    /// Answers of practice that "Undo" puts back.
    pub trials: Option<Rc<Vec<Trial>>>,
    /// Lessons read that "Undo" puts back.
    pub read: Option<Rc<Marks>>,
    /// Of an import: how many were added, replaced, joined and deleted.
    pub tally: [u32; 4],
    /// Of an import: what is said of it once all has come, where that is not its tally.
    pub of_the_whole: Option<String>,
}

impl Notice {
    /// A word with no way back.
    pub fn plain(text: impl Into<String>) -> Notice {
        Notice {
            text: text.into(),
            back: Vec::new(),
            away: Vec::new(),
            people_back: Vec::new(),
            people_away: Vec::new(),
            rates: None,
            trials: None,
            read: None,
            tally: [0; 4],
            of_the_whole: None,
        }
    }

    /// Takes a garment out of its way back, since somebody else's stands there now.
    pub fn leave_out(&mut self, id: &Id) {
        self.away.retain(|other| other != id);
        self.back.retain(|garment| garment.id() != id);
    }

    /// Whether its way back would touch that garment.
    pub fn speaks_of(&self, id: &Id) -> bool {
        self.away.contains(id) || self.back.iter().any(|garment| garment.id() == id)
    }

    /// Whether its way back would touch that person.
    pub fn speaks_of_person(&self, id: &PersonId) -> bool {
        self.people_away.contains(id) || self.people_back.iter().any(|person| person.id() == id)
    }

    /// Whether there is a way back.
    pub fn can_undo(&self) -> bool {
        let garments = !self.back.is_empty() || !self.away.is_empty();
        garments
            || !self.people_back.is_empty()
            || !self.people_away.is_empty()
            || self.rates.is_some()
            || self.trials.is_some()
            || self.read.is_some()
    }
}

/// What is asked for when a check is started.
#[derive(Clone, Debug, PartialEq)]
pub struct Beginning {
    /// Kind of garment.
    pub family: &'static Family,
    /// What the person calls it.
    pub label: String,
    /// Where it is.
    pub place: String,
    /// Its ticket, if noted.
    pub ticket: Option<Ticket>,
    /// Whether somebody wore it before.
    pub second_hand: bool,
}

/// Something that happened.
#[derive(Clone, Debug, PartialEq)]
pub enum Message {
    /// The address names another screen.
    Opened(Route),
    /// A new garment, under this name.
    Begin(Id, Box<Beginning>),
    /// A garment as it stands on the quick sheet: its first entry, or another kind of garment before anything was answered.
    Noted(Box<Garment>),
    /// Another garment is to start from what is noted of the first, under the second name.
    Duplicate(Id, Id),
    /// Something was done to a garment.
    Done(Id, Act),
    /// The same was done to several garments, and what to say of it; one way back over all of them.
    DoneToMany(Vec<Id>, Act, String),
    /// Take back the last thing done to that garment.
    TakeBack(Id),
    /// Delete a garment.
    Delete(Id),
    /// A person who is new here, or whose name or measures changed. One who is new is chosen for the garment whose fitting room is open,
    /// and their measures are opened.
    Person(Box<Person>),
    /// Delete a person.
    Forget(PersonId),
    /// Undo what the notice speaks of.
    UndoNotice,
    /// A word about something that was done outside.
    Said(String),
    /// The notice was read.
    NoticeRead,
    /// Other settings.
    Chosen(Settings),
    /// Other rates, and what was done to them where there is to be a way back.
    Rated(Rates, Option<String>),
    /// Another window wrote the settings.
    ChosenElsewhere(Settings),
    /// An import of garments, people and settings, as shown and agreed to.
    Import(Vec<Change>, Vec<Change<Person>>, Option<Settings>),
    /// More of an import, of whose earlier parts this notice tells: it is counted and taken back as one.
    ImportOn(Vec<Change>, Vec<Change<Person>>, Option<Settings>, Box<Notice>),
    /// The invented rack, as its file has it, to be added; what is here already stays as it is.
    Invent(String),
    /// The invented rack is to be taken out.
    TakeOutInvented,
    /// Everything is to be erased.
    Erase,
    /// Another window wrote a garment.
    ChangedElsewhere(Box<Garment>),
    /// Another window deleted a garment.
    GoneElsewhere(Id),
    /// Another window wrote a person.
    PersonElsewhere(Box<Person>),
    /// Another window deleted a person.
    PersonGoneElsewhere(PersonId),
    /// The mirror had newer pages of some, knew others as deleted, and mended pages.
    Healed(Box<Healed>),
    /// A page that cannot be read is to be dropped.
    DropSetAside(String),
    /// An instrument was given these on the bench.
    Tried(Readings),
    /// A question of practice was answered.
    Practised(Trial),
    /// What is known of the learner is to be forgotten.
    ForgetPractice,
    /// A lesson was read, or is to count as not read: what is read now.
    Read(Rc<Marks>),
    /// What was read is to be forgotten.
    ForgetLessons,
    /// The ruler was fitted to this screen, or is to be fitted again.
    ScaleFitted(Option<ScreenScale>),
    /// The page is on another screen or at another zoom: what is kept for it, and whether something is kept for others.
    ScreenChanged(Option<ScreenScale>, bool),
    /// Something about how safely app and notes lie on this device.
    Step(Step),
    /// The window grew or shrank past the width at which parts stand beside each other.
    Wide(bool),
}

/// What must happen outside for a message to be done with.
#[derive(Clone, Debug, PartialEq)]
pub enum Effect {
    /// Take these in as an import is taken in, then say that.
    TakeIn(Vec<Change>, Vec<Change<Person>>, String),
    /// Keep this garment.
    Keep(Rc<Garment>),
    /// Discard that garment's page.
    Discard(Id),
    /// Keep this person.
    KeepPerson(Rc<Person>),
    /// Discard that person's page.
    DiscardPerson(PersonId),
    /// Keep the settings.
    KeepSettings,
    /// Keep what was given to an instrument on the bench.
    KeepOnTheBench(Readings),
    /// Keep what was answered in practice.
    KeepTrials,
    /// Keep which lessons were read.
    KeepLessonsRead,
    /// Keep or forget the scale of this screen.
    KeepScale(Option<ScreenScale>),
    /// Keep what was done to keep the notebook safe.
    KeepKeeping,
    /// Ask something of the browser.
    Wish(Wish),
    /// Erase shelf and mirror.
    Erase,
    /// Drop a page that cannot be read.
    DropSetAside(String),
    /// Open a screen.
    Open(Route),
    /// Name the screen that is open anew, so that "back" does not return to its old name.
    Rename(Route),
}

/// Acts remembered for undo, over all garments.
const UNDO_DEPTH: usize = 200;

impl Model {
    /// The garment of that name.
    pub fn garment(&self, id: &Id) -> Option<&Rc<Garment>> {
        self.garments.iter().find(|garment| garment.id() == id)
    }

    /// The garments whose guesses show the person's habit: their own; those of the invented rack while there are no others.
    pub fn guessed(&self) -> Vec<Rc<Garment>> {
        let of = |invented: bool| {
            let garments = self.garments.iter().filter(move |garment| garment.id().is_invented() == invented);
            garments.filter(|garment| garment.guess().is_some()).cloned().collect::<Vec<_>>()
        };
        let own = of(false);
        if own.is_empty() { of(true) } else { own }
    }

    fn put(&mut self, garment: Rc<Garment>) {
        match self.garments.iter_mut().find(|other| other.id() == garment.id()) {
            Some(place) => *place = garment,
            None => self.garments.push(garment),
        }
    }

    fn take(&mut self, id: &Id) -> Option<Rc<Garment>> {
        let place = self.garments.iter().position(|garment| garment.id() == id)?;
        self.forget_undo(id);
        Some(self.garments.remove(place))
    }

    /// The person of that id.
    pub fn person(&self, id: &PersonId) -> Option<&Rc<Person>> {
        self.people.iter().find(|person| person.id() == id)
    }

    /// Puts a person in their place among the others.
    pub fn put_person(&mut self, person: Rc<Person>) {
        self.people.retain(|other| other.id() != person.id());
        self.people.push(person);
        // A list in which "anna" stands behind "Zoe" would be searched in vain.
        self.people.sort_by_cached_key(|person| (person.name().to_lowercase(), person.id().clone()));
    }

    /// Takes a person out.
    pub fn take_person(&mut self, id: &PersonId) -> Option<Rc<Person>> {
        let place = self.people.iter().position(|person| person.id() == id)?;
        Some(self.people.remove(place))
    }

    /// Acts recorded for undo fit the garment they were done to; once another window has written it, they no longer do.
    pub fn forget_undo(&mut self, id: &Id) {
        Rc::make_mut(&mut self.undo).retain(|(other, _)| other != id);
    }

    /// Whether there is something to take back for that garment.
    pub fn can_take_back(&self, id: &Id) -> bool {
        self.undo.iter().any(|(other, _)| other == id)
    }

    /// What becomes of the model, and what must happen outside. A message about a garment that is gone changes nothing.
    pub fn after(&mut self, message: Message) -> Vec<Effect> {
        match message {
            Message::Opened(route) => {
                self.route = route;
                Vec::new()
            }
            Message::Begin(id, beginning) => {
                let Beginning { family, label, place, ticket, second_hand } = *beginning;
                let garment = Garment::new(id.clone(), family, self.today)
                    .after(Act::Label(label))
                    .after(Act::Place(place))
                    .after(Act::Ticket(ticket))
                    .after(Act::SecondHand(second_hand));
                let garment = Rc::new(garment);
                self.put(garment.clone());
                vec![Effect::Keep(garment), Effect::Open(Route::Resume(id))]
            }
            Message::Noted(garment) => {
                let id = garment.id().clone();
                self.forget_undo(&id);
                let garment = Rc::new(*garment);
                self.put(garment.clone());
                let mut effects = vec![Effect::Keep(garment)];
                if self.route == Route::Desk(None) {
                    self.route = Route::Desk(Some(id));
                    effects.push(Effect::Rename(self.route.clone()));
                }
                effects
            }
            Message::Duplicate(from, id) => {
                let Some(garment) = self.garment(&from) else { return Vec::new() };
                let next = Rc::new(garment.duplicate(id.clone(), self.today));
                let name = next.called();
                let text = say!("Another begun from: {name}. Its answers count as not sure until you give them again.", name);
                self.notice = Some(Rc::new(Notice { away: vec![id.clone()], ..Notice::plain(text) }));
                self.put(next.clone());
                let route = if matches!(self.route, Route::Desk(_)) { Route::Desk(Some(id)) } else { Route::Details(id) };
                vec![Effect::Keep(next), Effect::Open(route)]
            }
            Message::Done(id, act) => {
                let Some(garment) = self.garment(&id).cloned() else { return Vec::new() };
                let back = garment.undoing(&act);
                let next = garment.after(act);
                // A reading taken on the ruler, the camera or a picture leads back to its check.
                let onward = match &self.route {
                    Route::Marks(_, Some((id, check)))
                    | Route::Live(_, Some((id, check)))
                    | Route::Picture(_, Some((id, check))) => Some(Effect::Open(Route::Check(id.clone(), check.clone()))),
                    _ => None,
                };
                if next == *garment {
                    return onward.into_iter().collect();
                }
                let undo = Rc::make_mut(&mut self.undo);
                undo.push((id, back));
                if undo.len() > UNDO_DEPTH {
                    undo.remove(0);
                }
                let next = Rc::new(next);
                // What was done since must not be undone with it.
                if self.notice.as_ref().is_some_and(|notice| notice.speaks_of(next.id())) {
                    self.notice = None;
                }
                self.put(next.clone());
                [Some(Effect::Keep(next)), onward].into_iter().flatten().collect()
            }
            Message::DoneToMany(ids, act, said) => {
                let mut notice = Notice::plain(said);
                let mut effects = Vec::new();
                for garment in ids.iter().filter_map(|id| self.garment(id).cloned()).collect::<Vec<_>>() {
                    let next = Rc::new(garment.after(act.clone()));
                    if next == garment {
                        continue;
                    }
                    self.put(next.clone());
                    notice.back.push(garment);
                    effects.push(Effect::Keep(next));
                }
                self.notice = Some(Rc::new(notice));
                effects
            }
            Message::TakeBack(id) => {
                let Some(place) = self.undo.iter().rposition(|(other, _)| *other == id) else { return Vec::new() };
                let (_, act) = Rc::make_mut(&mut self.undo).remove(place);
                let Some(garment) = self.garment(&id) else { return Vec::new() };
                let shown = match &act {
                    Act::Clear(check) | Act::Answer(check, _) => Some(check.key),
                    Act::PutBack(_, entry) => Some(entry.check.key),
                    _ => None,
                };
                let next = Rc::new(garment.after(act));
                // The way back of the notice would undo this too.
                if self.notice.as_ref().is_some_and(|notice| notice.speaks_of(&id)) {
                    self.notice = None;
                }
                self.put(next.clone());
                let mut effects = vec![Effect::Keep(next)];
                if let (Some(key), Route::Check(..)) = (shown, &self.route) {
                    effects.push(Effect::Open(Route::Check(id, key.to_owned())));
                }
                effects
            }
            Message::Delete(id) => {
                let Some(garment) = self.take(&id) else { return Vec::new() };
                let name = garment.called();
                let text = say!("Deleted: {name}.", name);
                self.notice = Some(Rc::new(Notice { back: vec![garment], ..Notice::plain(text) }));
                let mut effects = vec![Effect::Discard(id.clone())];
                if self.route.garment() == Some(&id) {
                    effects.push(Effect::Open(Route::Rack));
                }
                effects
            }
            Message::Person(person) => self.with_person(*person),
            Message::Forget(id) => {
                let Some(person) = self.take_person(&id) else { return Vec::new() };
                let name = if person.name().is_empty() { say!("a person without a name") } else { person.name() };
                let text = say!("Deleted: {name}.", name);
                self.notice = Some(Rc::new(Notice { people_back: vec![person], ..Notice::plain(text) }));
                [Some(Effect::DiscardPerson(id.clone())), self.away_from(&id)].into_iter().flatten().collect()
            }
            Message::UndoNotice => {
                let Some(notice) = self.notice.take() else { return Vec::new() };
                let mut effects = Vec::new();
                for id in &notice.people_away {
                    if self.take_person(id).is_some() {
                        effects.push(Effect::DiscardPerson(id.clone()));
                        effects.extend(self.away_from(id));
                    }
                }
                for person in &notice.people_back {
                    self.put_person(person.clone());
                    effects.push(Effect::KeepPerson(person.clone()));
                }
                for id in &notice.away {
                    if self.take(id).is_some() {
                        effects.push(Effect::Discard(id.clone()));
                        if self.route.garment() == Some(id) {
                            effects.push(Effect::Open(Route::Rack));
                        }
                    }
                }
                for garment in &notice.back {
                    self.put(garment.clone());
                    effects.push(Effect::Keep(garment.clone()));
                }
                if let Some(trials) = &notice.trials {
                    self.trials = trials.clone();
                    effects.push(Effect::KeepTrials);
                }
                if let Some(read) = &notice.read {
                    self.read = read.clone();
                    effects.push(Effect::KeepLessonsRead);
                }
                if let Some(rates) = &notice.rates {
                    self.settings = self.settings.with_rates(rates.in_market(self.settings.rates.market()));
                    effects.push(Effect::KeepSettings);
                }
                effects
            }
            Message::Said(text) => {
                self.notice = Some(Rc::new(Notice::plain(text)));
                Vec::new()
            }
            Message::NoticeRead => {
                self.notice = None;
                Vec::new()
            }
            Message::Chosen(settings) => {
                self.settings = settings;
                vec![Effect::KeepSettings]
            }
            Message::Rated(rates, done) => {
                let next = self.settings.with_rates(rates);
                let before = std::mem::replace(&mut self.settings, next);
                if let Some(text) = done {
                    self.notice = Some(Rc::new(Notice { rates: Some(before.rates), ..Notice::plain(text) }));
                }
                vec![Effect::KeepSettings]
            }
            Message::ChosenElsewhere(settings) => {
                self.settings = settings;
                Vec::new()
            }
            Message::Import(garments, people, settings) => {
                self.after(Message::ImportOn(garments, people, settings, Box::new(Notice::plain(""))))
            }
            Message::ImportOn(garments, people, settings, told) => {
                let mut effects = self.imported_after(*told, garments, people);
                if let Some(settings) = settings {
                    let before = std::mem::replace(&mut self.settings, settings);
                    if let Some(notice) = &mut self.notice {
                        Rc::make_mut(notice).rates = Some(before.rates);
                    }
                    effects.push(Effect::KeepSettings);
                }
                effects
            }
            Message::Invent(text) => {
                let here: Vec<&Garment> = self.garments.iter().map(Rc::as_ref).collect();
                let known: Vec<&Person> = self.people.iter().map(Rc::as_ref).collect();
                let (mut garments, mut people) = match import_all(&text, &here, &known, Mode::Merge) {
                    Ok(read) => (read.changes, read.people.unwrap_or_default()),
                    Err(fault) => {
                        self.notice = Some(Rc::new(Notice::plain(fault.to_string())));
                        return Vec::new();
                    }
                };
                // What was tried on them meanwhile is not thrown over.
                garments.retain(|change| matches!(change, Change::Add(_)));
                people.retain(|change| matches!(change, Change::Add(_)));
                // It was asked for twice on a slow line.
                if garments.is_empty() && people.is_empty() {
                    return Vec::new();
                }
                let says =
                    say!("Added: {count} invented garments. Take them out again whenever you like.", count = garments.len());
                vec![Effect::TakeIn(garments, people, says)]
            }
            Message::TakeOutInvented => {
                let garments = self.garments.iter().map(|garment| garment.id()).filter(|id| id.is_invented());
                let garments: Vec<Change> = garments.cloned().map(Change::Delete).collect();
                let people = self.people.iter().map(|person| person.id()).filter(|id| id.is_invented());
                let people: Vec<Change<Person>> = people.cloned().map(Change::Delete).collect();
                let mut effects = self.imported(garments, people);
                self.say(say!("Taken out: the invented rack.").to_owned());
                if self.route.garment().is_some_and(Id::is_invented) {
                    effects.push(Effect::Open(Route::Rack));
                }
                effects
            }
            Message::Erase => {
                self.garments.clear();
                self.people.clear();
                self.set_aside = Rc::default();
                self.undo = Rc::default();
                self.settings = Settings::default();
                self.trials = Rc::default();
                self.read = Rc::default();
                (self.scale, self.scale_void) = (None, false);
                self.standing.keeping = Rc::default();
                // Whether all is gone is said by whoever erased it.
                self.notice = None;
                vec![Effect::Erase, Effect::Open(Route::Rack)]
            }
            Message::ChangedElsewhere(garment) => {
                // What was done here before is not what that window saw.
                if self.notice.as_ref().is_some_and(|notice| notice.speaks_of(garment.id())) {
                    self.notice = None;
                }
                self.forget_undo(garment.id());
                self.put(Rc::new(*garment));
                Vec::new()
            }
            Message::GoneElsewhere(id) => {
                if self.take(&id).is_none() {
                    return Vec::new();
                }
                if self.route.garment() == Some(&id) {
                    self.notice = Some(Rc::new(Notice::plain(say!("This garment was deleted in another window."))));
                    return vec![Effect::Open(Route::Rack)];
                }
                Vec::new()
            }
            Message::PersonElsewhere(person) => {
                // What was taken away here before is not what that window saw.
                if self.notice.as_ref().is_some_and(|notice| notice.speaks_of_person(person.id())) {
                    self.notice = None;
                }
                self.put_person(Rc::new(*person));
                Vec::new()
            }
            Message::PersonGoneElsewhere(id) => {
                if self.take_person(&id).is_none() {
                    return Vec::new();
                }
                let away = self.away_from(&id);
                if away.is_some() {
                    self.notice = Some(Rc::new(Notice::plain(say!("This person was deleted in another window."))));
                }
                away.into_iter().collect()
            }
            Message::Healed(healed) => {
                let Healed { garments, gone, people, people_gone, mended, .. } = *healed;
                for person in people {
                    self.put_person(Rc::new(person));
                }
                for id in people_gone {
                    self.take_person(&id);
                }
                for garment in garments {
                    self.forget_undo(garment.id());
                    self.put(Rc::new(garment));
                }
                for id in gone {
                    self.take(&id);
                }
                Rc::make_mut(&mut self.set_aside).retain(|page| !mended.contains(&page.key));
                Vec::new()
            }
            Message::DropSetAside(key) => {
                Rc::make_mut(&mut self.set_aside).retain(|page| page.key != key);
                vec![Effect::DropSetAside(key)]
            }
            Message::Tried(readings) => vec![Effect::KeepOnTheBench(readings)],
            Message::Practised(trial) => {
                let trials = Rc::make_mut(&mut self.trials);
                trials.push(trial);
                if trials.len() > MOST_TRIALS {
                    trials.remove(0);
                }
                vec![Effect::KeepTrials]
            }
            Message::ForgetPractice => {
                let before = std::mem::take(&mut self.trials);
                let text = say!("Forgotten: what was answered in practice.");
                self.notice = Some(Rc::new(Notice { trials: Some(before), ..Notice::plain(text) }));
                vec![Effect::KeepTrials]
            }
            Message::Read(read) => {
                if self.read == read {
                    return Vec::new();
                }
                // What is forgotten comes back whole or not at all.
                if self.notice.as_ref().is_some_and(|notice| notice.read.is_some()) {
                    self.notice = None;
                }
                self.read = read;
                vec![Effect::KeepLessonsRead]
            }
            Message::ForgetLessons => {
                let before = std::mem::take(&mut self.read);
                let text = say!("Forgotten: which lessons you have read.");
                self.notice = Some(Rc::new(Notice { read: Some(before), ..Notice::plain(text) }));
                vec![Effect::KeepLessonsRead]
            }
            Message::ScaleFitted(scale) => {
                self.scale = scale;
                self.scale_void = false;
                vec![Effect::KeepScale(scale)]
            }
            Message::ScreenChanged(scale, elsewhere) => {
                self.scale = scale;
                self.scale_void = scale.is_none() && elsewhere;
                Vec::new()
            }
            Message::Step(step) => self.after_step(step),
            Message::Wide(wide) => {
                self.wide = wide;
                Vec::new()
            }
        }
    }

    /// A person as they are now. One who is new is chosen for the garment whose fitting room is open, and their measures are opened.
    fn with_person(&mut self, person: Person) -> Vec<Effect> {
        let id = person.id().clone();
        let known = self.person(&id);
        if known.is_some_and(|known| **known == person) {
            return Vec::new();
        }
        let before = known.cloned();
        let is_new = before.is_none();
        // What was done since must not be undone with it.
        if self.notice.as_ref().is_some_and(|notice| notice.speaks_of_person(&id)) {
            self.notice = None;
        }
        // A measure that is wiped out by a slip of the thumb is not easily taken again.
        if let Some(before) = before
            && let Some((measure, _)) = before.readings().find(|(measure, _)| person.reading(measure).is_none())
        {
            let text = say!("Taken away: {measure}.", measure = within(measure.name()));
            self.notice = Some(Rc::new(Notice { people_back: vec![before.clone()], ..Notice::plain(text) }));
        }
        let person = Rc::new(person);
        self.put_person(person.clone());
        let mut effects = vec![Effect::KeepPerson(person)];
        if is_new {
            let garment = match &self.route {
                Route::People => None,
                Route::Fitting(garment) | Route::Person(_, Some(garment)) => Some(garment.clone()),
                _ => return effects,
            };
            if let Some(garment) = &garment {
                effects.extend(self.after(Message::Done(garment.clone(), Act::Fit(FitAct::Who(Some(id.clone()))))));
            }
            effects.push(Effect::Open(Route::Person(id, garment)));
        }
        effects
    }

    /// Leads away from the screen of a person who is gone.
    fn away_from(&self, id: &PersonId) -> Option<Effect> {
        match &self.route {
            Route::Person(person, garment) if person == id => {
                Some(Effect::Open(garment.clone().map_or(Route::People, Route::Fitting)))
            }
            _ => None,
        }
    }

    /// Other words for what just happened; the way back stays.
    fn say(&mut self, text: String) {
        if let Some(notice) = &mut self.notice {
            Rc::make_mut(notice).text = text;
        }
    }

    fn imported(&mut self, changes: Vec<Change>, people: Vec<Change<Person>>) -> Vec<Effect> {
        self.imported_after(Notice::plain(""), changes, people)
    }

    /// Imports what comes after the parts that the notice tells of.
    fn imported_after(&mut self, mut notice: Notice, changes: Vec<Change>, people: Vec<Change<Person>>) -> Vec<Effect> {
        let effects = self.take_in(&mut notice, changes, people);
        self.notice = Some(Rc::new(notice));
        effects
    }

    /// Takes in a part of an import and notes it in what will be told of the whole; nothing is told yet.
    pub fn take_in(&mut self, notice: &mut Notice, changes: Vec<Change>, people: Vec<Change<Person>>) -> Vec<Effect> {
        let mut effects = Vec::new();
        let [mut added, mut changed, mut joined, mut deleted] = notice.tally;
        for change in changes {
            match &change {
                Change::Overwrite(_) => changed += 1,
                Change::Join(_) => joined += 1,
                _ => {}
            }
            match change {
                Change::Same(_) => {}
                Change::Add(garment) | Change::AddBeside(garment) => {
                    added += 1;
                    notice.away.push(garment.id().clone());
                    let garment = Rc::new(garment);
                    self.put(garment.clone());
                    effects.push(Effect::Keep(garment));
                }
                Change::Overwrite(garment) | Change::Join(garment) => {
                    notice.back.extend(self.garment(garment.id()).cloned());
                    let garment = Rc::new(garment);
                    self.put(garment.clone());
                    effects.push(Effect::Keep(garment));
                }
                Change::Delete(id) => {
                    deleted += 1;
                    notice.back.extend(self.take(&id));
                    effects.push(Effect::Discard(id));
                }
            }
        }
        for change in people {
            match change {
                Change::Same(_) => {}
                Change::Add(person) | Change::AddBeside(person) => {
                    added += 1;
                    notice.people_away.push(person.id().clone());
                    let person = Rc::new(person);
                    self.put_person(person.clone());
                    effects.push(Effect::KeepPerson(person));
                }
                Change::Overwrite(person) | Change::Join(person) => {
                    changed += 1;
                    notice.people_back.extend(self.person(person.id()).cloned());
                    let person = Rc::new(person);
                    self.put_person(person.clone());
                    effects.push(Effect::KeepPerson(person));
                }
                Change::Delete(id) => {
                    deleted += 1;
                    notice.people_back.extend(self.take_person(&id));
                    effects.push(Effect::DiscardPerson(id));
                }
            }
        }
        notice.tally = [added, changed, joined, deleted];
        notice.text = if let Some(says) = &notice.of_the_whole {
            says.clone()
        } else if joined > 0 {
            say!(
                "Imported: {added} added, {changed} replaced, {joined} joined, {deleted} deleted.",
                added,
                changed,
                joined,
                deleted
            )
        } else {
            say!("Imported: {added} added, {changed} replaced, {deleted} deleted.", added, changed, deleted)
        };
        effects
    }
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use garment_assay::catalog::FAMILIES;
    use garment_assay::cost::{Market, OVERHEAD, Range};
    use garment_assay::fit::{BodyReading, WAIST};
    use garment_assay::garment::Answer;
    use garment_assay::notebook::export_all;
    use garment_assay::quantity::{Amount, Unit};
    use garment_assay::trade::Currency;

    pub(crate) fn id(name: &str) -> Id {
        Id::new(name).expect("a plain name")
    }

    fn day() -> Day {
        Day::new(2026, 11, 25).expect("a day")
    }

    pub(crate) fn model(garments: Vec<Garment>) -> Model {
        Model {
            route: Route::Rack,
            garments: garments.into_iter().map(Rc::new).collect(),
            people: Vec::new(),
            set_aside: Rc::default(),
            settings: Settings::default(),
            undo: Rc::default(),
            notice: None,
            unkept: Rc::default(),
            unkept_people: Rc::default(),
            fault: None,
            low_on_room: false,
            on_the_way: 0,
            wide: false,
            today: day(),
            trials: Rc::default(),
            read: Rc::default(),
            scale: None,
            scale_void: false,
            standing: Standing::default(),
        }
    }

    pub(crate) fn answered_times(name: &str, times: usize) -> Garment {
        let checks = FAMILIES[0].checks.iter().take(times);
        checks.fold(garment(name), |garment, check| garment.after(Act::Answer(check, Answer::CannotTell)))
    }

    fn garment(name: &str) -> Garment {
        Garment::new(id(name), FAMILIES[0], day())
    }

    fn answered() -> Act {
        Act::Answer(FAMILIES[0].checks[0], Answer::CannotTell)
    }

    #[test]
    fn what_another_window_wrote_cannot_be_undone_by_what_was_done_here_before() {
        let mut model = model(vec![garment("a")]);
        model.after(Message::Done(id("a"), answered()));
        assert!(model.can_take_back(&id("a")));
        let theirs = garment("a").after(Act::Label("theirs".to_owned()));
        model.after(Message::ChangedElsewhere(Box::new(theirs.clone())));
        assert!(model.after(Message::TakeBack(id("a"))).is_empty());
        assert_eq!(model.garment(&id("a")).map(|garment| garment.as_ref()), Some(&theirs));
    }

    #[test]
    fn a_deleted_garment_comes_back_with_undo() {
        let mut model = model(vec![garment("a"), garment("b")]);
        assert_eq!(model.after(Message::Delete(id("a"))), [Effect::Discard(id("a"))]);
        assert!(model.garment(&id("a")).is_none());
        model.after(Message::UndoNotice);
        assert!(model.garment(&id("a")).is_some());
    }

    #[test]
    fn the_first_entry_on_the_quick_sheet_names_its_screen_and_goes_onto_the_rack() {
        let mut model = model(Vec::new());
        model.route = Route::Desk(None);
        let one = garment("a").after(Act::Label("first".to_owned()));
        let effects = model.after(Message::Noted(Box::new(one.clone())));
        let sheet = Route::Desk(Some(id("a")));
        assert_eq!(effects, [Effect::Keep(Rc::new(one)), Effect::Rename(sheet.clone())]);
        assert_eq!(model.route, sheet);
        assert_eq!(model.garment(&id("a")).map(|garment| garment.label()), Some("first"));
    }

    #[test]
    fn a_duplicate_opens_where_it_was_asked_for_and_goes_again_with_undo() {
        let mut model = model(vec![garment("a").after(answered()).after(Act::Label("first".to_owned()))]);
        model.route = Route::Details(id("a"));
        let effects = model.after(Message::Duplicate(id("a"), id("b")));
        assert_eq!(effects.last(), Some(&Effect::Open(Route::Details(id("b")))));
        model.route = Route::Details(id("b"));
        assert_eq!(model.after(Message::UndoNotice), [Effect::Discard(id("b")), Effect::Open(Route::Rack)]);
        model.route = Route::Desk(Some(id("a")));
        let effects = model.after(Message::Duplicate(id("a"), id("c")));
        assert_eq!(effects.last(), Some(&Effect::Open(Route::Desk(Some(id("c"))))));
        assert_eq!(model.garment(&id("c")).map(|garment| garment.label()), Some("first"));
        // What was done to it since is not undone with it.
        model.after(Message::Done(id("c"), Act::Label("second".to_owned())));
        assert!(model.after(Message::UndoNotice).is_empty());
        assert!(model.after(Message::Duplicate(id("gone"), id("d"))).is_empty());
    }

    #[test]
    fn undoing_an_import_does_not_take_what_was_done_since() {
        let mut model = model(Vec::new());
        model.after(Message::Import(vec![Change::Add(garment("a"))], Vec::new(), None));
        model.after(Message::Done(id("a"), answered()));
        assert!(model.after(Message::UndoNotice).is_empty());
        assert_eq!(model.garment(&id("a")).map(|garment| garment.answered()), Some(1));
    }

    #[test]
    fn a_reading_taken_on_the_ruler_leads_back_to_its_check() {
        let mut model = model(vec![garment("a")]);
        let check = FAMILIES[0].checks[0].key.to_owned();
        model.route = Route::Marks("stitch-comb".to_owned(), Some((id("a"), check.clone())));
        let effects = model.after(Message::Done(id("a"), answered()));
        assert_eq!(effects.last(), Some(&Effect::Open(Route::Check(id("a"), check.clone()))));
        model.route = Route::Live("stitch-comb-live".to_owned(), Some((id("a"), check.clone())));
        // So does one on the camera, and one that changes nothing.
        assert_eq!(model.after(Message::Done(id("a"), answered())), [Effect::Open(Route::Check(id("a"), check))]);
    }

    #[test]
    fn rates_that_were_changed_come_back_with_undo_and_the_market_stays() {
        let mut model = model(Vec::new());
        let rates = model.settings.rates.with(&OVERHEAD, Range::exactly(0.5), day());
        assert_eq!(model.after(Message::Rated(rates.clone(), Some("Yours now.".to_owned()))), [Effect::KeepSettings]);
        model.after(Message::Rated(rates.reset(), Some("As it came.".to_owned())));
        assert!(!model.settings.rates.acting(&OVERHEAD).edited);
        // A market has no way back of its own: it is chosen again.
        model.after(Message::Rated(model.settings.rates.in_market(Market::India), None));
        assert_eq!(model.after(Message::UndoNotice), [Effect::KeepSettings]);
        assert_eq!(model.settings.rates, rates.in_market(Market::India));
        assert!(model.after(Message::UndoNotice).is_empty());
    }

    #[test]
    fn what_was_done_to_several_comes_back_at_once_and_not_over_what_was_done_since() {
        let mut model = model(vec![garment("a"), garment("b"), garment("c").after(Act::Archived(true))]);
        let all = || vec![id("a"), id("b"), id("c"), id("gone")];
        let away = || Message::DoneToMany(all(), Act::Archived(true), "Put away.".to_owned());
        // One was away already, one is gone: neither is written.
        assert_eq!(model.after(away()).len(), 2);
        assert!(model.garments.iter().all(|garment| garment.archived()));
        assert_eq!(model.after(Message::UndoNotice).len(), 2);
        assert_eq!(model.garments.iter().filter(|garment| garment.archived()).count(), 1);
        model.after(Message::Done(id("a"), answered()));
        model.after(away());
        model.after(Message::TakeBack(id("a")));
        assert!(model.after(Message::UndoNotice).is_empty());
        assert_eq!(model.garment(&id("a")).map(|garment| garment.answered()), Some(0));
        assert!(model.after(Message::DoneToMany(all(), Act::Archived(true), "Again.".to_owned())).is_empty());
        assert!(model.notice.as_ref().is_some_and(|notice| !notice.can_undo()));
    }

    fn pid(name: &str) -> PersonId {
        PersonId::new(name).expect("a plain name")
    }

    fn person(id: &str, name: &str) -> Box<Person> {
        Box::new(Person::new(pid(id), name))
    }

    fn waist(person: &Person, number: f64) -> Box<Person> {
        let reading = BodyReading::new(&WAIST, Amount { number, unit: Unit::Centimetre });
        assert!(reading.is_some());
        Box::new(person.clone().with(&WAIST, reading))
    }

    #[test]
    fn people_stand_by_name_and_then_by_id_whatever_the_case() {
        let mut model = model(Vec::new());
        for (id, name) in [("3", "Zoe"), ("2", "anna"), ("1", "anna"), ("4", "Ben")] {
            model.after(Message::PersonElsewhere(person(id, name)));
        }
        assert_eq!(model.people.iter().map(|person| person.id().as_str()).collect::<Vec<_>>(), ["1", "2", "4", "3"]);
        model.after(Message::PersonElsewhere(person("1", "Zara")));
        assert_eq!(model.people.iter().map(|person| person.id().as_str()).collect::<Vec<_>>(), ["2", "4", "1", "3"]);
    }

    #[test]
    fn a_new_person_is_opened_and_the_same_again_changes_nothing() {
        let mut model = model(Vec::new());
        model.route = Route::People;
        let effects = model.after(Message::Person(person("p", "Jo")));
        assert_eq!(effects, [Effect::KeepPerson(Rc::new(*person("p", "Jo"))), Effect::Open(Route::Person(pid("p"), None))]);
        assert!(model.after(Message::Person(person("p", "Jo"))).is_empty());
        assert_eq!(model.after(Message::Person(person("p", "Jo B"))), [Effect::KeepPerson(Rc::new(*person("p", "Jo B")))]);
    }

    #[test]
    fn a_person_made_in_a_fitting_room_is_opened_for_that_garment() {
        let mut model = model(vec![garment("a")]);
        model.route = Route::Fitting(id("a"));
        let effects = model.after(Message::Person(person("p", "Jo")));
        assert_eq!(effects.last(), Some(&Effect::Open(Route::Person(pid("p"), Some(id("a"))))));
        // Chosen for it, as far as its family has a fitting room.
        let chosen = FAMILIES[0].fit.map(|_| pid("p"));
        assert_eq!(model.garment(&id("a")).and_then(|garment| garment.fitting().who().cloned()), chosen);
    }

    #[test]
    fn a_deleted_person_comes_back_with_undo_and_their_screen_closes() {
        let mut model = model(vec![garment("a")]);
        model.after(Message::PersonElsewhere(person("p", "Jo")));
        model.route = Route::Person(pid("p"), None);
        assert_eq!(model.after(Message::Forget(pid("p"))), [Effect::DiscardPerson(pid("p")), Effect::Open(Route::People)]);
        assert_eq!(model.after(Message::UndoNotice), [Effect::KeepPerson(Rc::new(*person("p", "Jo")))]);
        assert!(model.person(&pid("p")).is_some());
        model.route = Route::Person(pid("p"), Some(id("a")));
        assert_eq!(model.after(Message::PersonGoneElsewhere(pid("p"))), [Effect::Open(Route::Fitting(id("a")))]);
        assert!(model.after(Message::Forget(pid("p"))).is_empty());
    }

    #[test]
    fn a_measure_taken_away_comes_back_with_undo_until_something_else_is_changed() {
        let mut model = model(Vec::new());
        let measured = waist(&person("p", "Jo"), 80.0);
        model.after(Message::PersonElsewhere(measured.clone()));
        model.after(Message::Person(person("p", "Jo")));
        assert_eq!(model.after(Message::UndoNotice), [Effect::KeepPerson(Rc::new(*measured.clone()))]);
        model.after(Message::Person(person("p", "Jo")));
        model.after(Message::Person(person("p", "Jo B")));
        assert!(model.after(Message::UndoNotice).is_empty());
        // What another window wrote is not undone either.
        model.after(Message::PersonElsewhere(measured));
        model.after(Message::Person(person("p", "Jo")));
        model.after(Message::PersonElsewhere(person("p", "theirs")));
        assert!(model.after(Message::UndoNotice).is_empty());
        assert_eq!(model.person(&pid("p")).map(|person| person.name()), Some("theirs"));
    }

    #[test]
    fn an_import_in_parts_is_counted_and_taken_back_as_one() {
        let mut model = model(vec![garment("a"), garment("b")]);
        model.after(Message::Import(vec![Change::Add(garment("c")), Change::Delete(id("a"))], Vec::new(), None));
        let told = model.notice.take().expect("told").as_ref().clone();
        let more = vec![Change::Add(garment("d")), Change::Overwrite(garment("b").after(Act::Label("Other".to_owned())))];
        model.after(Message::ImportOn(more, Vec::new(), None, Box::new(told)));
        assert_eq!(model.notice.as_ref().map(|notice| notice.tally), Some([2, 1, 0, 1]));
        model.after(Message::UndoNotice);
        let mut here: Vec<&str> = model.garments.iter().map(|garment| garment.id().as_str()).collect();
        here.sort_unstable();
        assert_eq!(here, ["a", "b"]);
        assert_eq!(model.garment(&id("b")).map(|garment| garment.label()), Some(""));
    }

    #[test]
    fn people_of_a_file_come_with_one_way_back_and_erasing_takes_everybody() {
        let mut model = model(Vec::new());
        for (id, name) in [("a", "A"), ("b", "B")] {
            model.after(Message::PersonElsewhere(person(id, name)));
        }
        let changes = vec![Change::Add(*person("c", "C")), Change::Overwrite(*person("a", "A2")), Change::Delete(pid("b"))];
        let effects = model.after(Message::Import(Vec::new(), changes, None));
        assert_eq!(effects.len(), 3);
        assert_eq!(model.people.iter().map(|person| person.name()).collect::<Vec<_>>(), ["A2", "C"]);
        model.after(Message::UndoNotice);
        assert_eq!(model.people.iter().map(|person| person.name()).collect::<Vec<_>>(), ["A", "B"]);
        model.after(Message::Erase);
        assert!(model.people.is_empty());
    }

    #[test]
    fn the_invented_rack_comes_beside_what_is_here_and_goes_alone() {
        let mut model = model(vec![garment("a"), garment("invented-x").after(Act::Label("tried on".to_owned()))]);
        let (one, other) = (garment("invented-x"), garment("invented-y"));
        let file = export_all(&[&one, &other], Some(&[&*person("invented-r", "R")]), &Settings::default(), day());
        let effects = model.after(Message::Invent(file.clone()));
        let [Effect::TakeIn(garments, people, _)] = &effects[..] else { panic!("{effects:?}") };
        let told = Box::new(Notice::plain(""));
        assert_eq!(model.after(Message::ImportOn(garments.clone(), people.clone(), None, told)).len(), 2);
        assert_eq!(model.garments.len(), 3);
        assert_eq!(model.garment(&id("invented-x")).map(|garment| garment.label()), Some("tried on"));
        assert!(model.after(Message::Invent(file)).is_empty(), "asked for twice, it says nothing a second time");
        model.route = Route::Result(id("invented-y"));
        let effects = model.after(Message::TakeOutInvented);
        assert_eq!((effects.len(), effects.last()), (4, Some(&Effect::Open(Route::Rack))));
        assert_eq!((model.garments.len(), model.people.len()), (1, 0));
        model.after(Message::UndoNotice);
        assert_eq!((model.garments.len(), model.people.len()), (3, 1));
    }

    #[test]
    fn what_was_read_comes_back_after_it_was_forgotten_until_something_else_is_read() {
        let mut model = model(Vec::new());
        let marks = |marks: &[&str]| Rc::new(Marks::of(marks.iter().map(|mark| (*mark).to_owned())));
        assert_eq!(model.after(Message::Read(marks(&["a/b"]))), [Effect::KeepLessonsRead]);
        assert!(model.after(Message::Read(marks(&["a/b"]))).is_empty());
        assert_eq!(model.after(Message::ForgetLessons), [Effect::KeepLessonsRead]);
        assert!(model.read.is_empty());
        assert_eq!(model.after(Message::UndoNotice), [Effect::KeepLessonsRead]);
        assert_eq!(model.read, marks(&["a/b"]));
        model.after(Message::ForgetLessons);
        model.after(Message::Read(marks(&["a/c"])));
        assert!(model.after(Message::UndoNotice).is_empty());
        assert_eq!(model.read, marks(&["a/c"]));
        model.after(Message::Erase);
        assert!(model.read.is_empty());
    }

    #[test]
    fn settings_of_a_file_are_taken_only_when_it_brings_some() {
        let mut model = model(Vec::new());
        let yen = Settings { currency: Currency::Jpy, ..Settings::default() };
        model.after(Message::Import(Vec::new(), Vec::new(), None));
        assert_eq!(model.settings, Settings::default());
        assert_eq!(model.after(Message::Import(Vec::new(), Vec::new(), Some(yen.clone()))), [Effect::KeepSettings]);
        assert_eq!(model.settings, yen);
    }
}
