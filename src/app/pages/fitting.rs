//! The fitting room of a garment: whether it fits a person, now and later. Its parts open one after another; each is useful alone, and
//! each can be passed over.

use std::rc::Rc;

use garment_assay::catalog::FitTable;
use garment_assay::fit::{Cost, Person};
use garment_assay::garment::{Act, FitAct, FitReport, Garment, Row, Spoken, fit};
use garment_assay::language::{one, said};
use garment_assay::quantity::{Decimal, System, written};
use garment_assay::say;
use yew::prelude::*;

use super::people::NAMELESS;
use super::person::measures_of;
use crate::app::fit_words;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::fit_inside::Inside;
use crate::app::parts::fit_later::{self, Later};
use crate::app::parts::fit_mirror::Mirror;
use crate::app::parts::fit_part::FitPart;
use crate::app::parts::fit_scale::FitScale;
use crate::app::parts::fit_tape::{Drafts, TapeRows, with_drafts};
use crate::app::parts::fit_who::Who;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::verdict::VerdictLines;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// People whose measures are kept, by name.
    pub people: Vec<Rc<Person>>,
    /// Metric or imperial.
    pub system: System,
    /// Whether something can be taken back.
    pub can_take_back: bool,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The parts, in the order in which a person in a cubicle comes to them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Part {
    Who,
    Cut,
    Tape,
    Later,
    Mirror,
    Inside,
}

impl Part {
    const ALL: [Part; 6] = [Part::Who, Part::Cut, Part::Tape, Part::Later, Part::Mirror, Part::Inside];

    fn name(self) -> &'static str {
        match self {
            Part::Who => say!("For whom"),
            Part::Cut => say!("Cut and cloth"),
            Part::Tape => say!("What the tape says"),
            Part::Later => say!("After washing and wearing"),
            Part::Mirror => say!("In the mirror"),
            Part::Inside => say!("What a tailor can do"),
        }
    }

    const fn id(self) -> &'static str {
        match self {
            Part::Who => "fit-part-who",
            Part::Cut => "fit-part-cut",
            Part::Tape => "fit-part-tape",
            Part::Later => "fit-part-later",
            Part::Mirror => "fit-part-mirror",
            Part::Inside => "fit-part-inside",
        }
    }

    fn after(self) -> Option<Part> {
        Part::ALL.get(self as usize + 1).copied()
    }

    /// The first that still waits for something; of a garment for which all is noted, the tape.
    fn waiting(garment: &Garment, table: &FitTable, wearer: Option<&Rc<Person>>) -> Part {
        let fitting = garment.fitting();
        let measured = table.lines.iter().all(|line| garment.measures().any(|(point, _)| point.key == line.point));
        if wearer.is_none() {
            Part::Who
        } else if !measured {
            Part::Tape
        } else if fitting.cloth().is_none() && !table.cloths.is_empty() {
            Part::Later
        } else if table.moves.iter().any(|one| fitting.went(one).is_none()) {
            Part::Mirror
        } else {
            Part::Tape
        }
    }
}

/// The person for whom it is noted; none where nobody is, or that person is no longer kept.
fn wearer<'a>(garment: &Garment, people: &'a [Rc<Person>]) -> Option<&'a Rc<Person>> {
    let who = garment.fitting().who()?;
    people.iter().find(|person| person.id() == who)
}

/// What everything comes to, for pages that show the verdict alone.
pub fn report(garment: &Garment, people: &[Rc<Person>]) -> Option<FitReport> {
    fit(garment, wearer(garment, people).map(Rc::as_ref))
}

/// How far a part has come, in a few words.
fn state(part: Part, garment: &Garment, table: &'static FitTable, report: &FitReport, people: &[Rc<Person>]) -> String {
    let fitting = garment.fitting();
    match part {
        Part::Who => match wearer(garment, people) {
            None => say!("nobody chosen").to_owned(),
            Some(person) => {
                let (known, of) = measures_of(person, table);
                let name = if person.name().is_empty() { said(NAMELESS) } else { person.name() };
                say!("{name}, {count} of {all} measures", name, count = known, all = of)
            }
        },
        Part::Cut => {
            let (cut, give) = (report.cut.name(), written(report.give.0, 0, Decimal::spoken()));
            match table.give {
                Some(_) if report.give_known => say!("{cut}, gives {give} %", cut, give),
                Some(_) => say!("{cut}, gives {give} % as usual", cut, give),
                None => cut.to_owned(),
            }
        }
        Part::Tape => fit_words::taped(report),
        Part::Later => fit_later::state(garment, table).to_owned(),
        Part::Mirror => {
            let looked = table.moves.iter().filter(|one| fitting.went(one).is_some()).count()
                + table.signs.iter().filter(|sign| fitting.seen(sign).is_some()).count();
            match looked {
                0 => say!("nothing looked at yet").to_owned(),
                looked => say!("{done} of {all} looked at", done = looked, all = table.moves.len() + table.signs.len()),
            }
        }
        Part::Inside => {
            let worth = |row: &&Row| row.mend.iter().any(|job| job.cost < Cost::VeryMuch);
            let jobs = report.rows.iter().filter(worth).count();
            let found = table.allowances.iter().filter(|one| fitting.allowance(one).is_some()).count();
            match (jobs, found) {
                (0, _) if table.allowances.is_empty() => String::new(),
                (0, 0) => say!("not looked inside yet").to_owned(),
                (0, found) => say!("{done} of {all} looked at", done = found, all = table.allowances.len()),
                (jobs, _) if one(jobs) => say!("{count} place can be mended", count = jobs),
                (jobs, _) => say!("{count} places can be mended", count = jobs),
            }
        }
    }
}

/// How it is meant to lie, and what the cloth gives.
fn cut(garment: &Rc<Garment>, table: &'static FitTable, report: &FitReport, act: &Callback<FitAct>) -> Html {
    let (give, spread) = report.give;
    let (give, spread) = (written(give, 0, Decimal::spoken()), written(spread, 0, Decimal::spoken()));
    html! {
        <>
            <fieldset class="chips chips-down">
                <legend>{ say!("How it is meant to lie") }</legend>
                { for table.cuts.iter().map(|cut| {
                    let is = report.cut == *cut;
                    let onchange = act.reform(|_: Event| FitAct::Cut(Some(cut)));
                    html! {
                        <label key={cut.key} class="chip" data-chosen={is.to_string()}>
                            <input type="radio" name="cut" checked={is} {onchange} /><span><b>{ cut.name() }</b><small>{ cut.says() }</small></span>
                        </label>
                    }
                }) }
            </fieldset>
            if let Some(check) = table.give {
                <p>
                    { if report.give_known {
                        say!("The cloth gives {give} ± {spread} %: from your answer.", give, spread)
                    } else {
                        say!("The cloth gives {give} ± {spread} %: what most pieces of this kind do; nobody pulled this one.", give, spread)
                    } }
                    { " " }
                    <a href={Route::Check(garment.id().clone(), check.key.to_owned()).href()}>{ if report.give_known { say!("Look again") } else { say!("Pull it and see") } }</a>
                </p>
                <p class="hint">{ say!("Cloth that gives may be cut smaller than the body; half of the give is there to move in.") }</p>
            }
        </>
    }
}

#[derive(Properties, PartialEq)]
struct AloudProps {
    said: AttrValue,
}

/// Says the verdict when it has changed. As long as it is the one that the page was opened with, the lines above say it, once.
#[component]
fn Aloud(props: &AloudProps) -> Html {
    let opened = use_mut_ref(|| (props.said.clone(), false));
    let mut opened = opened.borrow_mut();
    opened.1 |= opened.0 != props.said;
    html! { <p class="unseen" aria-live="polite">if opened.1 { { &props.said } }</p> }
}

/// The fitting room.
#[component]
pub fn FittingPage(props: &Props) -> Html {
    let Props { garment, people, system, can_take_back, send } = props;
    let id = garment.id().clone();
    let act = {
        let id = id.clone();
        send.reform(move |act: Act| Message::Done(id.clone(), act))
    };
    let note = act.reform(Act::Fit);
    let take_back = {
        let id = id.clone();
        send.reform(move |_: MouseEvent| Message::TakeBack(id.clone()))
    };
    let chosen = wearer(garment, people);
    let open = use_state_eq(|| garment.family().fit.map_or_else(Vec::new, |table| vec![Part::waiting(garment, table, chosen)]));
    let drafts = use_state_eq(|| Rc::new(Drafts::new()));
    let typed = {
        let drafts = drafts.clone();
        Callback::from(move |(key, text): (&'static str, Option<String>)| {
            let mut next = drafts.as_ref().clone();
            match text {
                Some(text) => drop(next.insert(key, text)),
                None => drop(next.remove(key)),
            }
            drafts.set(Rc::new(next));
        })
    };
    // Which part is to be brought to the top, and how often that was asked.
    let sought = use_state_eq(|| (Part::Who, 0_u32));
    let label = garment.called();
    let bar = html! {
        <Bar title={say!("Fitting room")} under={label.to_owned()} back={Route::Result(id.clone()).href()} back_name={say!("Back to the result")}>
            <button type="button" class="icon-button" onclick={take_back} disabled={!can_take_back} aria-label={say!("Undo")}><Icon shape={Shape::Undo} /></button>
        </Bar>
    };
    let (Some(table), Some(kept)) = (garment.family().fit, report(garment, people)) else {
        return html! {
            <>
                { bar }
                <section class="card"><h2>{ say!("Not written yet") }</h2><p>{ say!("Nobody has written down how pieces of this kind are fitted.") }</p></section>
            </>
        };
    };
    let typing = (!drafts.is_empty()).then(|| report(&with_drafts(garment, &drafts, *system), people)).flatten();
    let report = typing.unwrap_or_else(|| kept.clone());
    let deciding = match report.decides() {
        Some(Spoken::Row(place)) => report.rows.get(place).and_then(|row| row.fit.clone().ok()),
        _ => None,
    };
    // Read aloud only once it is kept.
    let (lead, rest) = fit_words::verdict(&kept);
    // Opens a part and brings it up, in place of another where there is one.
    let go_to = |part: Part, from: Option<Part>| {
        let (open, sought) = (open.clone(), sought.clone());
        Callback::from(move |()| {
            let mut parts: Vec<Part> = open.iter().copied().filter(|other| Some(*other) != from && *other != part).collect();
            parts.push(part);
            open.set(parts);
            sought.set((part, sought.1 + 1));
        })
    };
    let toggle = |part: Part| {
        let open = open.clone();
        Callback::from(move |()| {
            let mut parts = (*open).clone();
            match parts.iter().position(|other| *other == part) {
                Some(place) => drop(parts.remove(place)),
                None => parts.push(part),
            }
            open.set(parts);
        })
    };
    let inner = |part: Part| match part {
        Part::Who => {
            let add = send.reform(|person: Person| Message::Person(Box::new(person)));
            html! { <Who garment={garment.clone()} people={people.clone()} wearer={chosen.map(|person| person.id().clone())} act={note.clone()} {add} /> }
        }
        Part::Cut => cut(garment, table, &report, &note),
        Part::Tape => {
            let measures = chosen.map(|person| AttrValue::from(Route::Person(person.id().clone(), Some(id.clone())).href()));
            html! { <TapeRows garment={garment.clone()} report={report.clone()} drafts={(*drafts).clone()} {measures} system={*system} act={act.clone()} typed={typed.clone()} choose={go_to(Part::Who, None)} /> }
        }
        Part::Later => {
            html! { <Later garment={garment.clone()} {table} report={report.clone()} system={*system} act={note.clone()} /> }
        }
        Part::Mirror => html! { <Mirror garment={garment.clone()} {table} act={note.clone()} /> },
        Part::Inside => {
            html! { <Inside garment={garment.clone()} {table} report={report.clone()} system={*system} act={note.clone()} /> }
        }
    };
    html! {
        <>
            { bar }
            <div class="fit-pinned">
                <VerdictLines report={report.clone()} system={*system} />
                if let Some(fit) = deciding {
                    <FitScale {fit} later=true brief=true />
                }
                <Aloud key={id.as_str().to_owned()} said={format!("{lead}, {rest}.")} />
            </div>
            { for Part::ALL.into_iter().map(|part| {
                let is_open = open.contains(&part);
                let onward = part.after().map_or_else(Callback::noop, |next| go_to(next, Some(part)));
                html! {
                    <FitPart key={part.id()} id={part.id()} title={part.name()} state={state(part, garment, table, &report, people)} open={is_open}
                        sought={if sought.0 == part { sought.1 } else { 0 }} toggle={toggle(part)} next={part.after().map(|next| AttrValue::from(next.name()))} {onward}>
                        { if is_open { inner(part) } else { Html::default() } }
                    </FitPart>
                }
            }) }
            <p class="why">{ say!("Fit and quality are two things: this moves no band. How much ease a cut has, what wear does and what counts as fitting is mostly judgement.") }{ " " }
                <a href={Route::Numbers.href()}>{ say!("Where the numbers come from") }</a></p>
            <div class="foot">
                <a class="prime" href={Route::Resume(id.clone()).href()}>{ say!("Go on checking") }</a>
                <a class="second" href={Route::Result(id).href()}>{ say!("See the result") }</a>
            </div>
        </>
    }
}
