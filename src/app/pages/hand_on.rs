//! Handing on: tables for a spreadsheet, a file for another copy of the app, a text for a message.

use std::cell::Cell;
use std::rc::Rc;

use garment_assay::fit::Person;
use garment_assay::garment::{Appraiser, Garment, Id};
use garment_assay::language::{one, said};
use garment_assay::notebook::{Settings, export_pieces};
use garment_assay::quantity::Decimal;
use garment_assay::say;
use garment_assay::sheet::{Form, answers_table_pieces, list_pieces, message, rack_table_pieces};
use garment_assay::trade::Day;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::files;
use crate::app::browser::handing::{self, Handed};
use crate::app::browser::turns::{self, Pieces};
use crate::app::collections::{self, Which};
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::photographs_out::PhotographsOut;
use crate::app::route::Route;
use crate::app::standing::Step;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Those that were chosen for it; none where nobody chose.
    pub chosen: Vec<Id>,
    /// Garments noted.
    pub garments: Vec<Rc<Garment>>,
    /// People whose measures are kept.
    pub people: Vec<Rc<Person>>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// What is chosen.
    pub settings: Settings,
    /// Today, for the names of files.
    pub today: Day,
    /// Where messages go.
    pub send: Callback<Message>,
}

const CSV: &str = "text/csv";
const JSON: &str = "application/json";

/// What is handed on, in the order in which it was noted, and how many invented garments are left out of it: they would be taken for real ones
/// elsewhere, so they go only where nothing else was chosen.
fn handed(garments: &[Rc<Garment>], which: &Which, chosen: &[Id]) -> (Vec<Rc<Garment>>, usize) {
    let meant = |garment: &&Rc<Garment>| match which {
        Which::Ticked => chosen.contains(garment.id()),
        which => which.means(garment),
    };
    let mut all: Vec<Rc<Garment>> = garments.iter().filter(meant).cloned().collect();
    // They come off the shelf in any order; two tables of one rack are to be alike.
    all.sort_by(|a, b| (a.noted(), a.id()).cmp(&(b.noted(), b.id())));
    let invented = all.iter().filter(|garment| garment.id().is_invented()).count();
    if invented == all.len() {
        return (all, 0);
    }
    (all.into_iter().filter(|garment| !garment.id().is_invented()).collect(), invented)
}

/// Letters, digits and dashes of a collection's name, for the name of a file.
fn plain(name: &str) -> String {
    let dashed: String = name.to_lowercase().chars().map(|c| if c.is_ascii_alphanumeric() { c } else { '-' }).collect();
    dashed.split('-').filter(|part| !part.is_empty()).collect::<Vec<_>>().join("-").chars().take(30).collect()
}

/// What is handed on, counted.
fn counted(count: usize, away: usize) -> String {
    match (count, away) {
        (0, _) => say!("None. Choose something else above.").to_owned(),
        (count, 0) if one(count) => say!("{count} garment.", count),
        (count, 0) => say!("{count} garments.", count),
        (count, away) if one(count) => say!("{count} garment, {away} of them put away.", count, away),
        (count, away) => say!("{count} garments, {away} of them put away.", count, away),
    }
}

/// What is left out of it.
fn left_out(count: usize) -> String {
    if one(count) {
        say!("{count} invented garment is left out: elsewhere nobody could tell it from a real one.", count)
    } else {
        say!("{count} invented garments are left out: elsewhere nobody could tell it from a real one.", count)
    }
}

/// Whose measures go with it.
fn theirs(count: usize) -> String {
    if one(count) {
        say!("Off unless you tick it. They are those of {count} person.", count)
    } else {
        say!("Off unless you tick it. They are those of {count} people.", count)
    }
}

/// Says how handing on ended, where that is not to be seen anyway.
fn told(send: &Callback<Message>, done: &'static str) -> impl FnOnce(Handed) + 'static {
    let send = send.clone();
    move |handed| match handed {
        Handed::Done => send.emit(Message::Said(done.to_owned())),
        Handed::Left => {}
        Handed::Refused => {
            send.emit(Message::Said(
                say!("The browser would not hand it on. Save the file, or mark the text and copy it.").to_owned(),
            ));
        }
    }
}

/// Garments that the text is about; the same ones are known by where they lie, not by looking through a thousand of them.
#[derive(Clone)]
struct Those(Vec<Rc<Garment>>);

impl PartialEq for Those {
    fn eq(&self, other: &Those) -> bool {
        self.0.len() == other.0.len() && self.0.iter().zip(&other.0).all(|(a, b)| Rc::ptr_eq(a, b))
    }
}

/// The text for a message about them, in pieces.
fn about(those: &Those, appraiser: &Rc<Appraiser>) -> Pieces {
    match those.0.as_slice() {
        [] => Box::new(std::iter::empty()),
        [one] => Box::new(std::iter::once(message(one, appraiser))),
        _ => Box::new(list_pieces(those.0.clone(), appraiser.clone())),
    }
}

/// That text, once it is written: of a large rack a moment after the page is there.
#[hook]
fn use_text(those: &Those, appraisals: &Appraisals) -> Option<AttrValue> {
    let written = use_state(|| None::<(Those, AttrValue)>);
    {
        let (written, appraiser) = (written.clone(), appraisals.shared_appraiser());
        use_effect_with(those.clone(), move |those| {
            let is_wanted = Rc::new(Cell::new(true));
            let (those, asked, wanted) = (those.clone(), is_wanted.clone(), is_wanted.clone());
            let pieces = about(&those, &appraiser).take_while(move |_| asked.get());
            turns::write(Box::new(pieces), move |text| {
                if wanted.get() {
                    written.set(Some((those, text.into())));
                }
            });
            move || is_wanted.set(false)
        });
    }
    written.as_ref().filter(|(of, _)| of == those).map(|(_, text)| text.clone())
}

#[derive(Properties, PartialEq)]
struct FileProps {
    /// The words on the button that saves.
    save: AttrValue,
    /// The name of the file.
    name: String,
    /// Its kind.
    kind: &'static str,
    /// What is in it.
    text: Callback<(), Pieces>,
    /// Called once it was handed out.
    #[prop_or_default]
    done: Callback<()>,
    send: Callback<Message>,
}

/// A file to save, and to share where the browser takes one of its kind.
#[component]
fn FileOut(props: &FileProps) -> Html {
    let FileProps { save, name, kind, text, done, send } = props;
    let can_share = use_memo((name.clone(), *kind), |(name, kind)| handing::can_share_file(name, kind));
    let onsave = {
        let (name, kind, text, done, send) = (name.clone(), *kind, text.clone(), done.clone(), send.clone());
        Callback::from(move |_: MouseEvent| {
            let (name, done, send) = (name.clone(), done.clone(), send.clone());
            files::save_in_turns(name.clone(), kind, text.emit(()), move |saved| {
                let said = match saved {
                    Ok(()) => {
                        done.emit(());
                        say!("Handed to the browser to save: {name}.", name)
                    }
                    Err(_) => said(files::NOT_SAVED).to_owned(),
                };
                send.emit(Message::Said(said));
            });
        })
    };
    let onshare = {
        let (name, kind, text, done, send) = (name.clone(), *kind, text.clone(), done.clone(), send.clone());
        Callback::from(move |_: MouseEvent| {
            let (done, said) = (done.clone(), told(&send, say!("Handed on.")));
            handing::share_file(name.clone(), kind, text.emit(()), move |handed| {
                if handed == Handed::Done {
                    done.emit(());
                }
                said(handed);
            });
        })
    };
    html! {
        <div class="row">
            <button type="button" class="second" onclick={onsave}>{ save }</button>
            if *can_share {
                <button type="button" class="second" onclick={onshare} aria-label={say!("Share it: {name}", name)}>{ say!("Share it") }</button>
            }
        </div>
    }
}

/// The page.
#[component]
pub fn HandOnPage(props: &Props) -> Html {
    let Props { chosen, garments, people, appraisals, settings, today, send } = props;
    let which = use_state_eq(|| if chosen.is_empty() { Which::All } else { Which::Ticked });
    let expected = use_memo((), |()| handing::decimal());
    let decimal = use_state_eq(|| *expected);
    // Off at each visit: a file is handed on more easily than one thinks.
    let with_people = use_state_eq(|| false);
    let (meant, invented) = handed(garments, &which, chosen);
    let known = collections::names(garments);
    let away = meant.iter().filter(|garment| garment.archived()).count();
    let onwhich = {
        let which = which.clone();
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlSelectElement>() {
                which.set(Which::of_key(&field.value()));
            }
        })
    };
    let form = |to: Decimal| {
        let decimal = decimal.clone();
        Callback::from(move |_: Event| decimal.set(to))
    };
    let tick_people = {
        let with_people = with_people.clone();
        Callback::from(move |event: Event| {
            with_people.set(event.target_dyn_into::<HtmlInputElement>().is_some_and(|field| field.checked()));
        })
    };
    // Those whose measures could be wanted with these garments: all people with the whole rack, else those it was tried on.
    let whose: Vec<Rc<Person>> = people
        .iter()
        .filter(|person| match &*which {
            Which::All => true,
            _ => meant.iter().any(|garment| garment.fitting().who() == Some(person.id())),
        })
        .filter(|person| !person.id().is_invented() || meant.iter().all(|garment| garment.id().is_invented()))
        .cloned()
        .collect();
    let part = match &*which {
        Which::All => String::new(),
        Which::In(name) => plain(name),
        Which::Nowhere => "no-collection".to_owned(),
        Which::Away => "put-away".to_owned(),
        Which::Ticked => "chosen".to_owned(),
    };
    let named = |what: &str, end: &str| {
        let parts = ["garment-assay", what, part.as_str()].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>();
        format!("{}-{today}.{end}", parts.join("-"))
    };
    let shape = Form { decimal: *decimal };
    let rack = {
        let (meant, appraiser) = (meant.clone(), appraisals.shared_appraiser());
        Callback::from(move |()| -> Pieces { Box::new(rack_table_pieces(meant.clone(), appraiser.clone(), shape)) })
    };
    let answers = {
        let meant = meant.clone();
        Callback::from(move |()| -> Pieces { Box::new(answers_table_pieces(meant.clone(), shape)) })
    };
    let file = {
        let (meant, whose, with_people) = (meant.clone(), whose.clone(), *with_people);
        let (settings, today) = (settings.clone(), *today);
        Callback::from(move |()| -> Pieces {
            Box::new(export_pieces(meant.clone(), with_people.then(|| whose.clone()), Some(&settings), today))
        })
    };
    let handed_out = {
        let ids: Vec<Id> = meant.iter().map(|garment| garment.id().clone()).collect();
        send.reform(move |()| Message::Step(Step::Exported(ids.clone())))
    };
    let text = use_text(&Those(meant.clone()), appraisals);
    // Touched before it was written to its end, it is written at once: browsers take text from a touch itself, not from what comes after.
    let whole = {
        let (text, meant, appraiser) = (text.clone(), Those(meant.clone()), appraisals.shared_appraiser());
        move || text.clone().unwrap_or_else(|| about(&meant, &appraiser).collect::<String>().into())
    };
    let copy = {
        let (whole, send) = (whole.clone(), send.clone());
        Callback::from(move |_: MouseEvent| handing::copy(&whole(), told(&send, say!("Copied."))))
    };
    let share = {
        let send = send.clone();
        Callback::from(move |_: MouseEvent| handing::share_text("Garment Assay", &whole(), told(&send, say!("Handed on."))))
    };
    let bar = html! { <Bar title={say!("Hand on")} under={say!("To a spreadsheet, a colleague or a message")} back={Route::Rack.href()} back_name={say!("Back to the rack")} /> };
    if garments.is_empty() {
        return html! {
            <>
                { bar }
                <section class="card"><p>{ say!("There is nothing to hand on yet.") }</p><p><a class="prime" href={Route::Start.href()}>{ say!("Check a garment") }</a></p></section>
            </>
        };
    }
    html! {
        <div class="hand-on">
            { bar }
            <section class="card">
                <h2>{ say!("what is handed on" | "What") }</h2>
                <div class="field"><label for="hand-on-which">{ say!("Which garments") }</label>
                    <select id="hand-on-which" onchange={onwhich}>
                        if !chosen.is_empty() {
                            <option value={Which::Ticked.key()} selected={*which == Which::Ticked}>{ say!("Those I chose") }</option>
                        }
                        <option value={Which::All.key()} selected={*which == Which::All}>{ say!("All of them") }</option>
                        { for known.iter().map(|name| {
                            let value = Which::In(name.clone());
                            html! { <option key={value.key()} value={value.key()} selected={*which == value}>{ name }</option> }
                        }) }
                        if !known.is_empty() {
                            <option value={Which::Nowhere.key()} selected={*which == Which::Nowhere}>{ say!("In no collection") }</option>
                        }
                        <option value={Which::Away.key()} selected={*which == Which::Away}>{ say!("garments" | "Put away") }</option>
                    </select></div>
                <p role="status">{ counted(meant.len(), away) }</p>
                if invented > 0 {
                    <p class="hint">{ left_out(invented) }</p>
                }
            </section>
            if !meant.is_empty() {
                <section class="card">
                    <h2>{ say!("Tables for a spreadsheet") }</h2>
                    <label class="tick"><input type="radio" name="form" checked={*decimal == Decimal::Point} onchange={form(Decimal::Point)} /><span>{ say!("Figures with a point (8.6), columns parted by commas") }</span></label>
                    <label class="tick"><input type="radio" name="form" checked={*decimal == Decimal::Comma} onchange={form(Decimal::Comma)} /><span>{ say!("Figures with a comma (8,6), columns parted by semicolons") }</span></label>
                    <p class="hint">{ match *expected {
                        Decimal::Point => say!("This browser’s language writes 8.6, so that form is chosen first. Take the form of the device on which the table is opened."),
                        Decimal::Comma => say!("This browser’s language writes 8,6, so that form is chosen first. Take the form of the device on which the table is opened."),
                    } }</p>
                    <FileOut save={say!("Save the rack")} name={named("rack", "csv")} kind={CSV} text={rack} send={send.clone()} />
                    <FileOut save={say!("Save the answers")} name={named("answers", "csv")} kind={CSV} text={answers} send={send.clone()} />
                    <p class="hint">{ say!("The rack has a row for each garment, the answers a row for each answer. Words that a spreadsheet could take for a formula, a figure or a date begin with an apostrophe. A ticket that lies face down is in neither.") }</p>
                </section>
                <section class="card">
                    <h2>{ say!("A file for this app") }</h2>
                    <p>{ say!("It holds all that was noted of these garments, and your settings. Whoever gets it imports it in the settings, and keeps their own notes.") }</p>
                    if !whose.is_empty() {
                        <label class="tick"><input type="checkbox" checked={*with_people} onchange={tick_people} aria-describedby="hand-on-people" /><span>{ say!("Also the body measures of people") }</span></label>
                        <p class="hint" id="hand-on-people">{ theirs(whose.len()) }</p>
                    }
                    <FileOut save={say!("Save the file")} name={named("", "json")} kind={JSON} text={file.clone()} done={handed_out.clone()} send={send.clone()} />
                    <PhotographsOut garments={meant.clone()} save={say!("Save with photographs (zip)")} name={named("", "zip")} export={file} made={*today} done={handed_out} send={send.clone()} />
                </section>
                <section class="card">
                    <h2>{ say!("A text for a message") }</h2>
                    <div class="field">
                        <label for="hand-on-message">{ if meant.len() == 1 { say!("About this garment") } else { say!("The list") } }</label>
                        <textarea id="hand-on-message" readonly=true rows="8" value={text.unwrap_or_default()} />
                    </div>
                    <div class="row">
                        if handing::can_copy() {
                            <button type="button" class="second" onclick={copy}>{ say!("Copy the text") }</button>
                        }
                        if handing::can_share_text() {
                            <button type="button" class="second" onclick={share}>{ say!("Share the text") }</button>
                        }
                    </div>
                </section>
            }
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::catalog::FAMILIES;
    use garment_assay::garment::Act;

    fn garment(id: &str) -> Rc<Garment> {
        let id = Id::new(id).expect("a plain name");
        Rc::new(Garment::new(id, FAMILIES[0], Day::new(2026, 11, 26).expect("a day")))
    }

    #[test]
    fn invented_garments_are_left_out_unless_only_they_were_chosen() {
        let rack = [Rc::new(garment("c").after(Act::Archived(true))), garment("a"), garment("invented-b")];
        let ids = |which: &Which, chosen: &[&str]| {
            let chosen: Vec<Id> = chosen.iter().filter_map(|id| Id::new(id)).collect();
            let (meant, invented) = handed(&rack, which, &chosen);
            (meant.iter().map(|garment| garment.id().as_str().to_owned()).collect::<Vec<_>>().join(" "), invented)
        };
        assert_eq!(ids(&Which::All, &[]), ("a c".to_owned(), 1));
        assert_eq!(ids(&Which::Ticked, &["invented-b"]), ("invented-b".to_owned(), 0));
        assert_eq!(ids(&Which::Ticked, &["invented-b", "a"]), ("a".to_owned(), 1));
        assert_eq!(ids(&Which::Away, &[]), ("c".to_owned(), 0));
        assert_eq!(ids(&Which::In("none".to_owned()), &[]), (String::new(), 0));
    }

    #[test]
    fn a_collection_names_its_file_in_plain_letters() {
        assert_eq!(plain("Autumn '27 / Milan"), "autumn-27-milan");
        assert_eq!(plain("秋冬"), "");
    }
}
