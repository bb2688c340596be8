//! Units, currency, look; all data out and in; erase everything.

use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::fit::Person;
use garment_assay::garment::{Garment, Id};
use garment_assay::language::{one, said};
use garment_assay::notebook::{
    Change, Choice, Import, Mode, Record, Settings, TextSize, Theme, export_pieces, photographs_of, settled,
};
use garment_assay::quantity::System;
use garment_assay::say;
use garment_assay::trade::{Currency, Day};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::browser::photographs::{Opened, Pictures};
use crate::app::browser::turns::Pieces;
use crate::app::browser::{clock, document, files};
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::confirm::Confirm;
use crate::app::parts::import_conflicts::ImportConflicts;
use crate::app::parts::import_read::{Read, use_import};
use crate::app::parts::invented::Invented;
use crate::app::parts::language_choice::LanguageChoice;
use crate::app::parts::on_device::OnDevice;
use crate::app::parts::photographs_out::PhotographsOut;
use crate::app::route::Route;
use crate::app::standing::{Standing, Step};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Garments noted.
    pub garments: Vec<Rc<Garment>>,
    /// People whose measures are kept.
    pub people: Vec<Rc<Person>>,
    /// What is chosen.
    pub settings: Settings,
    /// How safely app and notes lie on this device.
    pub standing: Standing,
    /// Today, for the name of the file.
    pub today: Day,
    /// Where messages go.
    pub send: Callback<Message>,
}

#[derive(Clone, Copy, PartialEq)]
enum Asking {
    Nothing,
    Once,
    Twice,
}

/// How many of each change; the words fit one and many.
fn counted<R: Record>(changes: &[Change<R>], mode: Mode) -> [(usize, &'static str); 6] {
    let count = |is: fn(&Change<R>) -> bool| changes.iter().filter(|change| is(change)).count();
    [
        (count(|change| matches!(change, Change::Add(_))), say!("new, will be added")),
        (count(|change| matches!(change, Change::Same(_))), say!("here already, unchanged")),
        (count(|change| matches!(change, Change::AddBeside(_))), say!("not as here: both will be kept")),
        (
            count(|change| matches!(change, Change::Overwrite(_))),
            match mode {
                Mode::Replace => say!("not as here: the file’s takes the place of yours"),
                Mode::Merge => say!("not as here: the file’s will take the place of yours, as you chose below"),
            },
        ),
        (count(|change| matches!(change, Change::Join(_))), say!("not as here: both will be joined, as you chose below")),
        (count(|change| matches!(change, Change::Delete(_))), say!("not in the file: will be deleted here")),
    ]
}

fn list<R: Record>(changes: &[Change<R>], mode: Mode) -> Html {
    let counts = counted(changes, mode).into_iter().filter(|(count, _)| *count > 0);
    html! { <ul>{ for counts.map(|(count, says)| html! { <li key={says}><b>{ count }</b>{ format!(" {says}") }</li> }) }</ul> }
}

fn differ<R: Record>(changes: &[Change<R>]) -> bool {
    changes.iter().any(|change| !matches!(change, Change::Same(_)))
}

/// What the records here are called that an import would replace, delete or set another beside.
fn touched<R: Record>(changes: &[Change<R>], here: &[Rc<R>], called: fn(&R) -> &str) -> Vec<String> {
    let known = |name: &R::Name| here.iter().find(|record| record.page_name() == name).map(|record| called(record).to_owned());
    let names = changes.iter().filter_map(|change| match change {
        Change::Overwrite(record) | Change::Join(record) => known(record.page_name()),
        Change::Delete(name) => known(name),
        Change::AddBeside(record) => Some(called(record).to_owned()),
        Change::Add(_) | Change::Same(_) => None,
    });
    names.collect()
}

/// Names, as many as can be read.
fn named(names: Vec<String>) -> String {
    let more = names.len().saturating_sub(NAMED);
    let said = names.into_iter().take(NAMED).collect::<Vec<_>>().join(", ");
    if more > 0 { say!("{names} and {count} more", names = said, count = more) } else { said }
}

fn name(person: &Person) -> &str {
    if person.name().is_empty() { say!("a person without a name") } else { person.name() }
}

/// "the 1 garment", "all 3 garments, the measures of all 2 people": the first of a list of what is erased.
fn all_of(garments: usize, people: usize) -> String {
    let count = garments;
    let noted = if one(count) {
        say!("what is erased" | "the {count} garment", count)
    } else {
        say!("what is erased" | "all {count} garments", count)
    };
    let count = people;
    match count {
        0 => noted,
        _ if one(count) => format!("{noted}, {}", say!("what is erased" | "the measures of the {count} person", count)),
        _ => format!("{noted}, {}", say!("what is erased" | "the measures of all {count} people", count)),
    }
}

/// What will be gone once all is erased.
fn gone(garments: usize, people: usize) -> String {
    let (count, others) = (garments, people);
    match (people, one(garments), one(people)) {
        (0, true, _) => say!("There is no way back. {count} garment will be gone.", count),
        (0, false, _) => say!("There is no way back. {count} garments will be gone.", count),
        (_, true, true) => {
            say!("There is no way back. {count} garment and the measures of {others} person will be gone.", count, others)
        }
        (_, true, false) => {
            say!("There is no way back. {count} garment and the measures of {others} people will be gone.", count, others)
        }
        (_, false, true) => {
            say!("There is no way back. {count} garments and the measures of {others} person will be gone.", count, others)
        }
        (_, false, false) => {
            say!("There is no way back. {count} garments and the measures of {others} people will be gone.", count, others)
        }
    }
}

/// What comes with an export in a zip, and what of it does not.
fn photographs_with(file: Option<&Opened>) -> Html {
    let Some(Opened { pictures, fresh, missing, refused, .. }) = file else { return Html::default() };
    let come = |count: usize| {
        if one(count) {
            say!("{count} photograph comes with it, {fresh} of them not here yet.", count, fresh)
        } else {
            say!("{count} photographs come with it, {fresh} of them not here yet.", count, fresh)
        }
    };
    let lack = |count: usize| {
        if one(count) {
            say!("{count} photograph that it names is not with it. What was noted of it comes all the same.", count)
        } else {
            say!("{count} photographs that it names are not with it. What was noted of them comes all the same.", count)
        }
    };
    let damaged = |count: usize| {
        if one(count) {
            say!("{count} photograph in it was damaged or exchanged, and is not taken.", count)
        } else {
            say!("{count} photographs in it were damaged or exchanged, and are not taken.", count)
        }
    };
    let lines = [(pictures.count(), come(pictures.count())), (*missing, lack(*missing)), (*refused, damaged(*refused))];
    html! { <>{ for lines.into_iter().filter(|(count, _)| *count > 0).map(|(_, line)| html! { <p>{ line }</p> }) }</> }
}

/// The garment that stands after a change. One that is as here may be without its pictures here, and gets them from the zip.
fn stands<'a>(change: &'a Change, here: &'a [Rc<Garment>]) -> Option<&'a Garment> {
    match change {
        Change::Add(garment) | Change::AddBeside(garment) | Change::Overwrite(garment) | Change::Join(garment) => Some(garment),
        Change::Same(id) => here.iter().find(|garment| garment.id() == id).map(Rc::as_ref),
        Change::Delete(_) => None,
    }
}

/// Garments and people named in the plan of an import.
const NAMED: usize = 12;

/// What was chosen for garments that are not as here; the message `None` forgets it all.
#[derive(Clone, Default, PartialEq)]
struct Choices(BTreeMap<Id, Choice>);

impl Reducible for Choices {
    type Action = Option<(Id, Choice)>;

    fn reduce(self: Rc<Choices>, chosen: Option<(Id, Choice)>) -> Rc<Choices> {
        let Some((id, choice)) = chosen else { return Rc::default() };
        let mut choices = (*self).clone();
        choices.0.insert(id, choice);
        Rc::new(choices)
    }
}

#[derive(Properties, PartialEq)]
struct TakeInProps {
    garments: Vec<Rc<Garment>>,
    people: Vec<Rc<Person>>,
    system: System,
    send: Callback<Message>,
}

/// Choosing a file, seeing what it would change, and saying yes.
#[component]
fn TakeIn(props: &TakeInProps) -> Html {
    let TakeInProps { garments, people, system, send } = props;
    let input = use_node_ref();
    let opened = use_state(|| None::<Opened>);
    let reading = use_state_eq(|| false);
    let fault = use_state(|| None::<AttrValue>);
    let mode = use_state_eq(|| Mode::Merge);
    let going = use_mut_ref(|| false);
    // Told one by one and all in one breath, so what was chosen before must not be lost to an older copy.
    let choices = use_reducer_eq(Choices::default);
    let choose = {
        let choices = choices.dispatcher();
        Callback::from(move |chosen: (Id, Choice)| choices.dispatch(Some(chosen)))
    };
    // A large file takes a while to be read; each choice that is made about it must not read it anew.
    let Read { answer, is_current } = use_import((*opened).as_ref().map(|file| file.text.clone()), garments, people, *mode);
    let plan = answer.as_ref().and_then(|answer| answer.as_ref().ok()).cloned();
    let garments_change = use_memo((plan.clone(), garments.clone(), choices.clone()), |(plan, garments, choices)| {
        let Some(plan) = &plan else { return Vec::new() };
        let here: Vec<&Garment> = garments.iter().map(Rc::as_ref).collect();
        settled(&plan.changes, &plan.conflicts, &here, |id| choices.0.get(id).copied().unwrap_or_default())
    });
    let chosen = {
        let (opened, fault, input, choices) = (opened.clone(), fault.clone(), input.clone(), choices.dispatcher());
        let reading = reading.clone();
        Callback::from(move |event: Event| {
            choices.dispatch(None);
            let file = event.target_dyn_into::<HtmlInputElement>().and_then(|field| field.files()).and_then(|files| files.get(0));
            let (opened, fault, input, reading) = (opened.clone(), fault.clone(), input.clone(), reading.clone());
            let Some(file) = file else { return };
            reading.set(true);
            wasm_bindgen_futures::spawn_local(async move {
                match files::opened(file).await {
                    Ok(read) => {
                        fault.set(None);
                        opened.set(Some(read));
                    }
                    Err(why) => {
                        opened.set(None);
                        fault.set(Some(why.into()));
                    }
                }
                reading.set(false);
                document::clear_input(&input);
            });
        })
    };
    let set_mode = |to: Mode| {
        let mode = mode.clone();
        Callback::from(move |_: Event| mode.set(to))
    };
    let leave = {
        let opened = opened.clone();
        Callback::from(move |_: MouseEvent| opened.set(None))
    };
    html! {
        <>
            <p><label class="second file">{ say!("Choose a file to import") }<input ref={input} type="file" accept="application/json,.json,application/zip,.zip" onchange={chosen} /></label></p>
            <p role="status">{ if *reading || !is_current { say!("Reading the file.") } else { "" } }</p>
            if let Some(fault) = &*fault {
                <p class="fault" role="alert">{ fault }</p>
            }
            { match answer {
                None => Html::default(),
                Some(Err(fault)) => html! { <p class="fault" role="alert">{ fault.to_string() }</p> },
                Some(Ok(plan)) => {
                    let Import { made, settings, people: people_change, conflicts, unread, .. } = plan.as_ref();
                    let (made, unread) = (*made, *unread);
                    let pairs: Vec<(Rc<Garment>, Rc<Garment>)> = conflicts
                        .iter()
                        .filter_map(|theirs| Some((garments.iter().find(|mine| mine.id() == theirs.id())?.clone(), Rc::new(theirs.clone()))))
                        .collect();
                    let holds_people = people_change.is_some();
                    let people_change = people_change.clone().unwrap_or_default();
                    let mut names = touched(&garments_change, garments, Garment::called);
                    names.extend(touched(&people_change, people, name));
                    let named = named(names);
                    let brings = (*opened).as_ref().is_some_and(|file| file.fresh > 0);
                    let changes = differ(&garments_change) || differ(&people_change) || brings;
                    // Whoever merges keeps their own settings.
                    let settings = settings.clone().filter(|_| *mode == Mode::Replace);
                    let agree = {
                        let (send, opened, fault, settings) = (send.clone(), opened.clone(), fault.clone(), settings.clone());
                        let going = going.clone();
                        let (garments, people, known) = (garments_change.clone(), people_change.clone(), props.garments.clone());
                        Callback::from(move |_: MouseEvent| {
                            let import = Message::Import((*garments).clone(), people.clone(), settings.clone());
                            let named = photographs_of(garments.iter().filter_map(|change| stands(change, &known)));
                            let Some(file) = (*opened).clone() else { return };
                            // Pressed again while pictures are kept it would be taken in twice, and its way back would be to itself.
                            if going.replace(true) {
                                return;
                            }
                            let (send, opened, fault, going) = (send.clone(), opened.clone(), fault.clone(), going.clone());
                            // Pictures first: notes are not to name any that could not be kept.
                            wasm_bindgen_futures::spawn_local(async move {
                                let kept = file.pictures.keep(&named).await;
                                going.replace(false);
                                match kept {
                                    Ok(()) => {
                                        fault.set(None);
                                        opened.set(None);
                                        send.emit(import);
                                    }
                                    Err(why) => {
                                        fault.set(Some(say!("The photographs of this file are not kept, and nothing was changed. {why} You can still take in the notes without them.", why = why.words()).into()));
                                        opened.set(Some(Opened { missing: file.missing + file.pictures.count(), pictures: Pictures::default(), fresh: 0, ..file }));
                                    }
                                }
                            });
                        })
                    };
                    html! {
                        <div class="import-plan" role="group" aria-labelledby="import-title">
                            <h3 id="import-title">{ say!("In this file, made {day}", day = clock::written_day(made)) }</h3>
                            if !garments_change.is_empty() && !people_change.is_empty() {
                                <h4>{ say!("Garments") }</h4>
                            }
                            { list(&garments_change, *mode) }
                            if !people_change.is_empty() {
                                <h4>{ say!("People and their body measures") }</h4>
                                { list(&people_change, *mode) }
                            } else if !holds_people {
                                <p>{ say!("It holds no body measures. The people here stay as they are.") }</p>
                            }
                            if !named.is_empty() {
                                <p>{ say!("Changed, deleted or kept twice: {names}.", names = named) }</p>
                            }
                            if unread > 0 {
                                <p>{ say!("Pages in it that cannot be read, and are left out: {count}. Keep the file.", count = unread) }</p>
                            }
                            { photographs_with((*opened).as_ref()) }
                            if !pairs.is_empty() {
                                <ImportConflicts {pairs} choices={choices.0.clone()} system={*system} choose={choose.clone()} />
                            }
                            if settings.is_some() {
                                <p>{ say!("Its settings and rates take the place of yours.") }</p>
                            }
                            if !changes && settings.is_none() {
                                <p>{ say!("It would change nothing.") }</p>
                            }
                            <label class="tick"><input type="radio" name="mode" checked={*mode == Mode::Merge} onchange={set_mode(Mode::Merge)} /><span>{ say!("Merge: keep all that is here") }</span></label>
                            <label class="tick"><input type="radio" name="mode" checked={*mode == Mode::Replace} onchange={set_mode(Mode::Replace)} /><span>{ say!("Replace: make the rack what the file holds") }</span></label>
                            <div class="row">
                                <button type="button" class="prime" onclick={agree} disabled={!is_current || !changes && settings.is_none()}>{ if *mode == Mode::Merge { say!("Merge") } else { say!("Replace") } }</button>
                                <button type="button" class="second" onclick={leave}>{ say!("Leave it") }</button>
                            </div>
                        </div>
                    }
                }
            } }
        </>
    }
}

/// The settings.
#[component]
pub fn SettingsPage(props: &Props) -> Html {
    let Props { garments, people, settings, standing, today, send } = props;
    let asking = use_state_eq(|| Asking::Nothing);
    let choose = |with: fn(&mut Settings, &str)| {
        let (send, settings) = (send.clone(), settings.clone());
        Callback::from(move |event: Event| {
            let value = event
                .target_dyn_into::<HtmlSelectElement>()
                .map(|field| field.value())
                .or_else(|| event.target_dyn_into::<HtmlInputElement>().map(|field| field.value()))
                .unwrap_or_default();
            let mut settings = settings.clone();
            with(&mut settings, &value);
            send.emit(Message::Chosen(settings));
        })
    };
    let on_system =
        choose(|settings, value| settings.system = if value == "imperial" { System::Imperial } else { System::Metric });
    let on_currency = choose(|settings, value| settings.currency = Currency::from_code(value).unwrap_or(settings.currency));
    let on_theme =
        choose(|settings, value| settings.theme = Theme::ALL.into_iter().find(|theme| theme.key() == value).unwrap_or_default());
    let on_size = choose(|settings, value| {
        settings.text_size = TextSize::ALL.into_iter().find(|size| size.key() == value).unwrap_or_default()
    });
    // Off at each visit: a file is handed on more easily than one thinks.
    let with_people = use_state_eq(|| false);
    let export = {
        let (garments, people, with_people) = (garments.clone(), people.clone(), *with_people);
        let (today, settings) = (*today, settings.clone());
        Callback::from(move |()| -> Pieces {
            Box::new(export_pieces(garments.clone(), with_people.then(|| people.clone()), Some(&settings), today))
        })
    };
    let exported = {
        let garments = garments.clone();
        send.reform(move |()| Message::Step(Step::Exported(garments.iter().map(|garment| garment.id().clone()).collect())))
    };
    let save = {
        let (today, export, exported, send) = (*today, export.clone(), exported.clone(), send.clone());
        Callback::from(move |_: MouseEvent| {
            let name = format!("garment-assay-{today}.json");
            let (exported, send) = (exported.clone(), send.clone());
            files::save_in_turns(name.clone(), "application/json", export.emit(()), move |saved| {
                let said = match saved {
                    Ok(()) => {
                        exported.emit(());
                        say!("Handed to the browser to save: {name}.", name)
                    }
                    Err(_) => said(files::NOT_SAVED).to_owned(),
                };
                send.emit(Message::Said(said));
            });
        })
    };
    let ask = |to: Asking| {
        let asking = asking.clone();
        Callback::from(move |_: MouseEvent| asking.set(to))
    };
    let answered = {
        let (asking, send) = (asking.clone(), send.clone());
        Callback::from(move |yes: bool| match (*asking, yes) {
            (Asking::Once, true) => asking.set(Asking::Twice),
            (Asking::Twice, true) => {
                asking.set(Asking::Nothing);
                send.emit(Message::Erase);
            }
            _ => asking.set(Asking::Nothing),
        })
    };
    let tick_people = {
        let with_people = with_people.clone();
        Callback::from(move |event: Event| {
            with_people.set(event.target_dyn_into::<HtmlInputElement>().is_some_and(|field| field.checked()));
        })
    };
    let all = all_of(garments.len(), people.len());
    let gone = gone(garments.len(), people.len());
    html! {
        <>
            <Bar title={say!("Settings")} back="#/" back_name={say!("Back to the rack")} />
            <section class="card">
                <h2>{ say!("Language, units and money") }</h2>
                <LanguageChoice />
                <div class="field"><label for="system">{ say!("Lengths and weights") }</label>
                    <select id="system" onchange={on_system}>
                        <option value="metric" selected={settings.system == System::Metric}>{ say!("metric: mm, g/m²") }</option>
                        <option value="imperial" selected={settings.system == System::Imperial}>{ say!("imperial: inches, oz/yd²") }</option>
                    </select></div>
                <div class="field"><label for="currency">{ say!("Currency for new tickets") }</label>
                    <select id="currency" onchange={on_currency}>
                        { for Currency::ALL.into_iter().map(|currency| html! { <option key={currency.code()} value={currency.code()} selected={currency == settings.currency}>{ currency.code() }</option> }) }
                    </select></div>
                <p><a class="onward" href={Route::Rates.href()}><b>{ say!("Rates") }</b><small>{ settings.rates.market().name() }{ " · " }{ say!("what a build-up takes cloth, wages, freight and shops to cost") }</small></a></p>
            </section>
            <section class="card">
                <h2>{ say!("People") }</h2>
                <p>{ say!("Body measures for the fitting room. They stay on this device.") }</p>
                <p><a class="onward" href={Route::People.href()}><b>{ say!("People") }</b><small>{ match people.len() {
                    0 => say!("nobody yet").to_owned(),
                    count if one(count) => say!("{count} person", count),
                    count => say!("{count} people", count),
                } }</small></a></p>
            </section>
            <section class="card">
                <h2>{ say!("of the app" | "Look") }</h2>
                <div class="field"><label for="theme">{ say!("Light or dark") }</label>
                    <select id="theme" onchange={on_theme}>
                        { for Theme::ALL.into_iter().map(|theme| html! { <option key={theme.key()} value={theme.key()} selected={theme == settings.theme}>{ match theme {
                            Theme::Device => say!("as this device"),
                            Theme::Light => say!("screen, not weight" | "light"),
                            Theme::Dark => say!("dark, for dim rooms"),
                        } }</option> }) }
                    </select></div>
                <div class="field"><label for="text-size">{ say!("Size of text") }</label>
                    <select id="text-size" onchange={on_size}>
                        { for TextSize::ALL.into_iter().map(|size| html! { <option key={size.key()} value={size.key()} selected={size == settings.text_size}>{ format!("{} %", size.key()) }</option> }) }
                    </select></div>
            </section>
            <section class="card">
                <h2>{ say!("Your data") }</h2>
                <p>{ say!("Everything stays in this browser on this device. Nothing is sent anywhere. A browser may throw away what a page keeps, so export now and then.") }</p>
                if !people.is_empty() {
                    <label class="tick"><input type="checkbox" checked={*with_people} onchange={tick_people} aria-describedby="with-people" /><span>{ say!("Also the body measures of people") }</span></label>
                    <p class="hint" id="with-people">{ say!("Off unless you tick it, so that a file handed on holds nobody’s measures. Tick it for a copy of your own: without it, the measures of people are in no file.") }</p>
                }
                <p><button type="button" class="second" onclick={save}>{ if *with_people || people.is_empty() { say!("Export everything") } else { say!("Export garments and settings") } }</button></p>
                <PhotographsOut garments={garments.clone()} save={say!("Export with photographs (zip)")}
                    name={format!("garment-assay-{today}.zip")} export={export} made={*today} done={exported.clone()} send={send.clone()} />
                <p><a class="onward" href={Route::HandOn(Vec::new()).href()}><b>{ say!("Hand on") }</b><small>{ say!("tables for a spreadsheet, a collection alone, text for a message") }</small></a></p>
                <TakeIn garments={garments.clone()} people={people.clone()} system={settings.system} send={send.clone()} />
            </section>
            <OnDevice standing={standing.clone()} garments={garments.clone()} today={*today} step={send.reform(Message::Step)} />
            <section class="card">
                <h2>{ say!("Invented rack") }</h2>
                <p>{ say!("Garments of every kind from a Saturday that never was, with answers, readings, tickets, guesses and a fitting: to see what the app does. Nothing about your own garments is worked out from them.") }</p>
                <Invented garments={garments.clone()} send={send.clone()} />
            </section>
            <section class="card">
                <h2>{ say!("Erase") }</h2>
                <p>{ say!("Takes {what} and these settings off this device.", what = all) }</p>
                <p><button type="button" class="grave" onclick={ask(Asking::Once)}>{ say!("Erase everything") }</button></p>
            </section>
            <section class="card">
                <h2>{ say!("the app" | "About") }</h2>
                <p><a href={Route::Numbers.href()}>{ say!("Where the numbers come from") }</a></p>
                <p><a href={Route::Licences.href()}>{ say!("Licences of what the app is made of") }</a></p>
                <p class="hint">{ say!("Garment Assay {version}. Typeface: Instrument Sans, SIL Open Font License.", version = env!("CARGO_PKG_VERSION")) }</p>
            </section>
            { match *asking {
                Asking::Nothing => Html::default(),
                Asking::Once => html! {
                    <Confirm key="once" question={say!("Erase everything?")} explains={say!("This takes {what} and your settings off this device. Export first if you may want them again.", what = all)}
                        yes={say!("Erase")} answered={answered} />
                },
                Asking::Twice => html! {
                    <Confirm key="twice" question={say!("Really everything?")} explains={gone}
                        yes={say!("Yes, erase all")} answered={answered} />
                },
            } }
        </>
    }
}
