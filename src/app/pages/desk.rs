//! The quick sheet: a whole garment on one page, for whoever has two minutes a sample and a keyboard, or a thumb.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::garment::{Act, Answer, Garment, Id, Standing};
use garment_assay::grading::Care;
use garment_assay::language::within;
use garment_assay::quantity::System;
use garment_assay::say;
use garment_assay::trade::{Currency, Day, Question, Stage};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::{address, clock, document};
use crate::app::desk::{Stroke, repeated, stroke};
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::desk_beside::{DeskBeside, Done};
use crate::app::parts::desk_head::{DeskHead, Head};
use crate::app::parts::desk_row::{DeskRow, Touched};
use crate::app::parts::desk_tools::DeskTools;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::tape::Tape;
use crate::app::route::Route;
use crate::app::words::{self, headline};

#[derive(Clone, Properties, PartialEq)]
pub struct Props {
    /// The garment on the sheet; none while nothing was entered.
    pub garment: Option<Rc<Garment>>,
    /// Garments noted, for what the next sample repeats.
    pub garments: Vec<Rc<Garment>>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// Metric or imperial.
    pub system: System,
    /// Currency offered where nothing is repeated.
    pub currency: Currency,
    /// Today, for a new garment.
    pub today: Day,
    /// Whether drawings fit beside the rows.
    pub wide: bool,
    /// Whether something can be taken back.
    pub can_take_back: bool,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The sheet of one garment after another; each has its own state.
#[component]
pub fn DeskPage(props: &Props) -> Html {
    let blank = use_mut_ref(clock::new_id);
    let id = match &props.garment {
        Some(garment) => garment.id().clone(),
        None => {
            let mut blank = blank.borrow_mut();
            if props.garments.iter().any(|garment| garment.id() == &*blank) {
                *blank = clock::new_id();
            }
            blank.clone()
        }
    };
    html! { <Sheet key={id.as_str().to_owned()} id={id.clone()} page={props.clone()} /> }
}

#[derive(Properties, PartialEq)]
struct SheetProps {
    /// Name of the garment, also while it is not on the rack.
    id: Id,
    page: Props,
}

/// Where the keyboard is: row, answer, and how often it was sent somewhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct At {
    row: usize,
    level: usize,
    sent: u32,
}

type Touch = Rc<dyn Fn(usize, Touched)>;

#[component]
fn Sheet(props: &SheetProps) -> Html {
    let SheetProps { id, page } = props;
    let Props { garment: noted, garments, appraisals, system, currency, today, wide, can_take_back, send } = page;
    let start = use_state_eq(|| repeated(garments, *currency));
    let head = match noted {
        Some(garment) => Head::of(garment, start.ticket.currency, start.ticket.kind),
        None => (*start).clone(),
    };
    // Of what the head says the kind may be changed; answers, notes and all else belong to a kind.
    let free = noted.as_ref().is_none_or(|garment| **garment == head.garment(id.clone(), garment.noted()));
    let written = use_memo((head.clone(), noted.is_some()), |(head, _)| Rc::new(head.garment(id.clone(), *today)));
    let garment: Rc<Garment> = noted.clone().unwrap_or_else(|| (*written).clone());
    let groups = use_memo((garment.family().key, garment.is_second_hand()), |_| appraisals.appraiser().by_stage(&garment));
    let checks: Vec<&'static Check> = groups.iter().flat_map(|(_, checks)| checks.iter().copied()).collect();
    let at = use_state_eq(|| At { row: 0, level: 0, sent: 0 });
    let row = at.row.min(checks.len().saturating_sub(1));
    // On a phone the drawings stand beneath one row, where a name was tapped or the keyboard is.
    let open = use_state_eq(|| None::<usize>);
    let keys = use_state_eq(|| false);
    let (rows, search_field) = (use_node_ref(), use_node_ref());
    {
        let rows = rows.clone();
        use_effect_with(at.sent, move |sent| {
            if *sent > 0 {
                document::focus_within(&rows, "[role=radio][tabindex='0']");
            }
        });
    }

    // Rows keep one callback, so that an answer repaints the rows that it changes and no others.
    let latest = use_mut_ref(|| None::<Touch>);
    let touched = use_callback((), {
        let latest: Rc<RefCell<Option<Touch>>> = latest.clone();
        move |(row, what): (usize, Touched), _: &()| {
            let touch = latest.borrow().clone();
            if let Some(touch) = touch {
                touch(row, what);
            }
        }
    });
    let Some(check) = checks.get(row).copied() else { return Html::default() };

    let act = {
        let (send, garment, on_rack) = (send.clone(), garment.clone(), noted.is_some());
        move |act: Act| {
            if on_rack {
                send.emit(Message::Done(garment.id().clone(), act));
            } else {
                send.emit(Message::Noted(Box::new(garment.after(act))));
            }
        }
    };
    let place_in = {
        let (garment, checks) = (garment.clone(), checks.clone());
        move |row: usize| checks.get(row).and_then(|check| garment.level_place(check)).unwrap_or(0)
    };
    let send_to = {
        let (at, open) = (at.clone(), open.clone());
        move |row: usize, level: usize| {
            at.set(At { row, level, sent: at.sent + 1 });
            open.set(Some(row));
        }
    };
    // The next row, from one, whose check applies once this is done; the same where there is none.
    let onward = {
        let (checks, place_in, send_to) = (checks.clone(), place_in.clone(), send_to.clone());
        move |from: usize, by: isize, after: &Garment| {
            let mut next = from;
            while let Some(other) = next.checked_add_signed(by).filter(|other| *other < checks.len()) {
                next = other;
                if after.standing(checks[next]) != Standing::Closed {
                    send_to(next, place_in(next));
                    return;
                }
            }
            send_to(from, place_in(from));
        }
    };
    let give = {
        let (act, garment, onward) = (act.clone(), garment.clone(), onward.clone());
        move |row: usize, check: &'static Check, answer: Answer, go_on: bool| {
            let given = Act::Answer(check, answer);
            act(given.clone());
            if go_on {
                onward(row, 1, &garment.after(given));
            }
        }
    };
    let judged = |check: &'static Check, place: usize| {
        check.levels.get(place).map(|level| Answer::Judged { level: level.key, care: Care::Usual })
    };

    *latest.borrow_mut() = Some({
        let (at, open, give, checks) = (at.clone(), open.clone(), give.clone(), checks.clone());
        Rc::new(move |row: usize, what: Touched| match what {
            Touched::Came(level) => at.set(At { row, level, ..*at }),
            Touched::Chose(level) => {
                at.set(At { row, level, ..*at });
                if let Some(check) = checks.get(row).copied()
                    && let Some(answer) = judged(check, level)
                {
                    give(row, check, answer, false);
                }
            }
            Touched::Named => {
                at.set(At { row, level: 0, ..*at });
                open.set(if *open == Some(row) { None } else { Some(row) });
            }
        })
    });
    let done = {
        let (act, give) = (act.clone(), give.clone());
        move |row: usize, check: &'static Check| {
            let (act, give) = (act.clone(), give.clone());
            Callback::from(move |what: Done| match what {
                Done::Chose(place) => {
                    if let Some(answer) = judged(check, place) {
                        give(row, check, answer, false);
                    }
                }
                Done::CannotTell => give(row, check, Answer::CannotTell, false),
                Done::TakenBack => act(Act::Clear(check)),
                Done::Read(readings) => give(row, check, Answer::Measured(readings), true),
            })
        }
    };

    let onkeydown = {
        let (rows, search_field, keys, at) = (rows.clone(), search_field.clone(), keys.clone(), at.clone());
        let (act, give, onward, send_to, garment) = (act.clone(), give.clone(), onward.clone(), send_to.clone(), garment.clone());
        let last = checks.len() - 1;
        Callback::from(move |event: KeyboardEvent| {
            let typing =
                event.target_dyn_into::<HtmlInputElement>().is_some() || event.target_dyn_into::<HtmlSelectElement>().is_some();
            if typing && event.key() == "Escape" {
                event.prevent_default();
                send_to(row, at.level);
            }
            if typing || event.ctrl_key() || event.meta_key() || event.alt_key() || event.is_composing() {
                return;
            }
            let Some(stroke) = stroke(&event.key()) else { return };
            // A button or a link in the same place has its own Enter.
            if stroke == Stroke::AnswerHere && !document::is_within(&event, "[role=radio]") {
                return;
            }
            event.prevent_default();
            match stroke {
                Stroke::Answer(place) => {
                    if let Some(answer) = judged(check, place) {
                        give(row, check, answer, true);
                    }
                }
                Stroke::AnswerHere => {
                    if let Some(answer) = judged(check, at.level) {
                        give(row, check, answer, true);
                    }
                }
                Stroke::CannotTell => give(row, check, Answer::CannotTell, true),
                Stroke::TakeBack => {
                    act(Act::Clear(check));
                    send_to(row, at.level);
                }
                Stroke::Row(by) => onward(row, by, &garment),
                Stroke::End(false) => send_to(0, 0),
                Stroke::End(true) => send_to(last, 0),
                Stroke::Level(by) => {
                    let count = check.levels.len();
                    let level = at.level.saturating_add_signed(by).min(count.saturating_sub(1));
                    send_to(row, level);
                }
                Stroke::Search => document::focus_part(&search_field),
                Stroke::Measure => {
                    document::focus_within(&rows, ".quick-reading input");
                }
                Stroke::Next => address::open(&Route::Desk(None).href()),
                Stroke::Keys => keys.set(!*keys),
            }
        })
    };
    let keep = {
        let (send, noted, start, id, today) = (send.clone(), noted.clone(), start.clone(), id.clone(), *today);
        Callback::from(move |head: Head| match &noted {
            Some(garment) if garment.family().key != head.family.key => {
                // What else is noted would be lost with the kind.
                if free {
                    send.emit(Message::Noted(Box::new(head.garment(id.clone(), garment.noted()))));
                }
            }
            Some(garment) => {
                for act in head.acts(garment) {
                    send.emit(Message::Done(id.clone(), act));
                }
                start.set(Head { ticket: head.ticket.clone(), ..(*start).clone() });
            }
            None => {
                if head.says_more_than(&start) {
                    send.emit(Message::Noted(Box::new(head.garment(id.clone(), today))));
                }
                start.set(head);
            }
        })
    };
    let to_rows = {
        let (send_to, level) = (send_to.clone(), at.level);
        Callback::from(move |()| send_to(row, level))
    };
    let toggle_keys = {
        let keys = keys.clone();
        Callback::from(move |()| keys.set(!*keys))
    };
    let found = {
        let (send_to, place_in) = (send_to.clone(), place_in.clone());
        Callback::from(move |row: usize| send_to(row, place_in(row)))
    };
    let take_back = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |_: MouseEvent| send.emit(Message::TakeBack(id.clone())))
    };
    let duplicate = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |_: MouseEvent| send.emit(Message::Duplicate(id.clone(), clock::new_id())))
    };
    let offered = |of: fn(&Garment) -> &str| {
        let words: BTreeSet<&str> = garments.iter().map(|garment| of(garment)).filter(|word| !word.is_empty()).collect();
        words.into_iter().map(str::to_owned).collect::<Vec<_>>()
    };
    let beside = |row: usize, check: &'static Check| {
        let answer = garment.answer(check);
        html! {
            <DeskBeside key={check.key} {check} at={if row == at.row { at.level } else { 0 }} chosen={garment.level_place(check)}
                answered={answer.is_some()} cannot_tell={answer == Some(&Answer::CannotTell)}
                kept={match answer { Some(Answer::Measured(readings)) => Some(readings.clone()), _ => None }} system={*system}
                page={noted.as_ref().map(|garment| AttrValue::from(Route::Check(garment.id().clone(), check.key.to_owned()).href()))}
                done={done(row, check)} />
        }
    };
    let appraisal = appraisals.for_check(&garment, check);
    let said = headline(&appraisal);
    let under = format!(
        "{} · {}",
        say!("{done} of {all} answered", done = garment.answered(), all = checks.len()),
        say!("each entry is kept at once")
    );
    let mut place = 0;
    html! {
        <>
            <Bar title={say!("Quick sheet")} {under} back="#/" back_name={say!("Back to the rack")}>
                <button type="button" class="icon-button" onclick={take_back} disabled={!can_take_back} aria-label={say!("Undo")}><Icon shape={Shape::Undo} /></button>
                if noted.is_some() {
                    <a class="icon-button" href={Route::Checks(id.clone()).href()} aria-label={say!("All checks")}><Icon shape={Shape::List} /></a>
                }
            </Bar>
            <div class="tape-pinned quick-tape">
                if check.speaks.left().is_some() {
                    <p class="eyebrow"><span class="cost-only">{ within(Question::Left.name()) }</span></p>
                }
                <p class="tape-lead"><strong>{ &said.lead }</strong>{ " " }<span>{ &said.rest }</span></p>
                <Tape appraisal={appraisal.clone()} bare=true />
            </div>
            <DeskHead {head} fresh={noted.is_none()} {free} face_down={garment.ticket().is_some_and(|ticket| ticket.face_down)}
                places={offered(Garment::place)} suppliers={offered(|garment| garment.terms().supplier())} collections={offered(Garment::collection)}
                {keep} done={to_rows} />
            <div class="quick" ref={rows} {onkeydown} data-wide={wide.to_string()}>
                <DeskTools checks={checks.clone()} field={search_field} keys={*keys} toggled={toggle_keys} found={found} />
                <div class="quick-rows">
                    { for groups.iter().map(|(stage, checks): &(Stage, Vec<&'static Check>)| html! {
                        <section key={stage.name()}>
                            <h2>{ stage.name() }</h2>
                            { for checks.iter().copied().map(|check| {
                                let here = place;
                                place += 1;
                                let said = match garment.answer(check) {
                                    Some(Answer::Judged { care: Care::Unsure, .. }) => say!("not sure").to_owned(),
                                    Some(Answer::Judged { .. }) => String::new(),
                                    _ => words::answer(&garment, check, *system),
                                };
                                html! {
                                    <div key={check.key} class="quick-check">
                                        <DeskRow {check} row={here} chosen={garment.level_place(check)} {said} closed={garment.standing(check) == Standing::Closed}
                                            at={(here == row).then_some(at.level.min(check.levels.len().saturating_sub(1)))} touched={touched.clone()} />
                                        if !*wide && *open == Some(here) {
                                            { beside(here, check) }
                                        }
                                    </div>
                                }
                            }) }
                        </section>
                    }) }
                </div>
                if *wide {
                    <aside class="quick-side card" aria-label={say!("The check, drawn")}>{ beside(row, check) }</aside>
                }
            </div>
            if noted.is_some() {
                <p class="lonely"><button type="button" class="ghost" onclick={duplicate}>{ say!("Begin another from this one") }</button></p>
            }
            <div class="foot">
                <a class="prime" href={Route::Desk(None).href()}>{ say!("Next sample") }</a>
                if noted.is_some() {
                    <a class="second" href={Route::Result(id.clone()).href()}>{ say!("See the result") }</a>
                }
            </div>
        </>
    }
}
