//! A lot of a garment inspected by a sample: the plan, what was found, how it stands, and what such a sample can tell.

use std::rc::Rc;

use garment_assay::catalog::defects;
use garment_assay::garment::{Act, Garment};
use garment_assay::language::{one, spoken};
use garment_assay::lot::{
    Aql, Arrow, Defect, Finding, Level, Log, LotSize, Plan, Severity, Standing, Stands, highest_share, passes, share_that_passes,
};
use garment_assay::quantity::{Decimal, written};
use garment_assay::say;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::curve::Curve;
use crate::app::parts::typed::Typed;
use crate::app::parts::value::count;
use crate::app::route::Route;

/// Most pieces of a lot that are taken.
const MOST_PIECES: u32 = 10_000_000;
/// A bound from here up says nothing.
const ALL_BUT: f64 = 0.99;
/// Confidence with which a bound is named.
const SURE: f64 = 0.95;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// Whether there is something to take back.
    pub can_take_back: bool,
    /// Where messages go.
    pub send: Callback<Message>,
}

fn class(severity: Severity) -> &'static str {
    match severity {
        Severity::Critical => say!("of a defect" | "Critical"),
        Severity::Major => say!("of a defect" | "Major"),
        Severity::Minor => say!("of a defect" | "Minor"),
    }
}

/// The class of a defect, as it stands behind its name.
fn class_of(severity: Severity) -> &'static str {
    match severity {
        Severity::Critical => say!("of a defect" | "critical"),
        Severity::Major => say!("of a defect" | "major"),
        Severity::Minor => say!("of a defect" | "minor"),
    }
}

fn per_cent(share: f64) -> String {
    let percent = share * 100.0;
    format!("{} %", written(percent, if percent < 10.0 { 1 } else { 0 }, Decimal::spoken()))
}

/// A limit as the standard's table heads its column, with the sign of the language.
fn limit_written(limit: Aql) -> String {
    format!("{} %", limit.key().replace('.', &spoken().decimal_sign().to_string()))
}

/// How the table led to the plan, where it did not lead straight.
fn way(plan: &Plan) -> Option<String> {
    if plan.whole {
        return Some(say!("The sample would be as large as the lot: look at every piece.").to_owned());
    }
    let (asked, letter) = (plan.asked.written(), plan.letter.written());
    Some(if plan.arrow? == Arrow::Down {
        say!("Letter {asked} has no plan at this limit; the table leads down to a larger sample, letter {letter}.", asked, letter)
    } else {
        say!("Letter {asked} has no plan at this limit; the table leads up to a smaller sample, letter {letter}.", asked, letter)
    })
}

/// How it stands: for the style sheets, in a word, and in a sentence.
fn stands_in_words(log: &Log) -> (&'static str, &'static str, String) {
    match log.stands() {
        Stands::Open(left) if log.looked_at == 0 => {
            let says = if one(left as usize) {
                say!("Look at {count} piece, taken from all over the lot.", count = left)
            } else {
                say!("Look at {count} pieces, taken from all over the lot.", count = left)
            };
            ("Not begun", say!("Not begun"), says)
        }
        Stands::Open(left) => {
            let says = if one(left as usize) {
                say!("{count} piece left to look at.", count = left)
            } else {
                say!("{count} pieces left to look at.", count = left)
            };
            ("Open", say!("not all was looked at" | "Open"), says)
        }
        Stands::Passes => ("Passes", say!("of a lot" | "Passes"), say!("No class has more bad pieces than it may.").to_owned()),
        Stands::Fails => {
            let failed = log
                .standings()
                .iter()
                .filter(|standing| standing.stands == Stands::Fails)
                .map(|standing| class(standing.severity).to_owned())
                .reduce(|classes, class| say!("{classes} and {class}", classes, class))
                .unwrap_or_default();
            ("Fails", say!("of a lot" | "Fails"), say!("{classes}: more bad pieces than may be.", classes = failed))
        }
    }
}

/// The page.
#[component]
pub fn LotPage(props: &Props) -> Html {
    let Props { garment, can_take_back, send } = props;
    let id = garment.id().clone();
    let act = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |log: Option<Log>| send.emit(Message::Done(id.clone(), Act::Lot(log))))
    };
    let size = {
        let (act, log) = (act.clone(), garment.lot().cloned());
        Callback::from(move |text: String| {
            let Some(lot) = count(&text, MOST_PIECES)? else {
                return Err(say!("Type how many pieces are offered together.").to_owned());
            };
            let lot = LotSize::new(lot).map_err(|fault| fault.to_string())?;
            let next = match &log {
                Some(log) => Log { lot, ..log.clone() },
                None => Log::new(lot),
            };
            if !next.is_whole() {
                return Err(say!("More was looked at, or found, than such a lot has. Clear that first.").to_owned());
            }
            act.emit(Some(next));
            Ok(())
        })
    };
    let back = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |_: MouseEvent| send.emit(Message::TakeBack(id.clone())))
    };
    let kept = garment.lot().map_or(String::new(), |log| log.lot.pieces().to_string());
    html! {
        <>
            <Bar title={say!("Lot")} under={garment.called().to_owned()} back={Route::Result(id.clone()).href()} back_name={say!("Back to the result")} />
            <section class="card">
                <h2>{ say!("What is offered") }</h2>
                <Typed id="lot-size" label={say!("Pieces in the lot")} {kept} write={size}
                    hint={say!("All pieces of one style that are offered together.")} />
                if let Some(log) = garment.lot() {
                    <Agreed log={log.clone()} act={act.clone()} />
                } else {
                    <p>{ say!("From the number of pieces follows how many to look at, and how many bad ones may be among them. Single sampling, normal inspection, ISO 2859-1.") }</p>
                }
            </section>
            if let Some(log) = garment.lot() {
                <Stand log={log.clone()} />
                <Found log={log.clone()} own={garment.family().defects} act={act.clone()} />
                <CannotTell log={log.clone()} />
                <p class="lonely"><button type="button" class="ghost" onclick={let act = act.clone(); move |_: MouseEvent| act.emit(None)}>{ say!("Clear this inspection") }</button></p>
            }
            <div class="foot">
                <a class="prime" href={Route::Result(id).href()}>{ say!("See the result") }</a>
                if *can_take_back {
                    <button type="button" class="second" onclick={back}>{ say!("Take back") }</button>
                }
            </div>
        </>
    }
}

#[derive(Properties, PartialEq)]
struct LogProps {
    log: Log,
    #[prop_or_default]
    own: &'static [Defect],
    #[prop_or_default]
    act: Callback<Option<Log>>,
}

/// Level and limits.
#[component]
fn Agreed(props: &LogProps) -> Html {
    let LogProps { log, act, .. } = props;
    let choose = |with: fn(&Log, &str) -> Option<Log>| {
        let (log, act) = (log.clone(), act.clone());
        Callback::from(move |event: Event| {
            let value = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            if let Some(next) = with(&log, &value) {
                act.emit(Some(next));
            }
        })
    };
    let limit = |id: &'static str, word: &'static str, now: Aql, onchange: Callback<Event>| {
        html! {
            <div class="field"><label for={id}>{ word }</label>
                <select {id} {onchange}>
                    { for Aql::ALL.into_iter().map(|aql| html! { <option key={aql.key()} value={aql.key()} selected={aql == now}>{ limit_written(aql) }</option> }) }
                </select></div>
        }
    };
    let on_level = choose(|log, value| Some(Log { level: Level::from_key(value)?, ..log.clone() }));
    let on_major = choose(|log, value| Some(Log { major: Aql::from_key(value)?, ..log.clone() }));
    let on_minor = choose(|log, value| Some(Log { minor: Aql::from_key(value)?, ..log.clone() }));
    html! {
        <>
            <div class="field"><label for="lot-level">{ say!("How closely") }</label>
                <select id="lot-level" onchange={on_level}>
                    { for Level::ALL.into_iter().rev().map(|level| html! { <option key={level.key()} value={level.key()} selected={level == log.level}>{ match level {
                        Level::III => say!("level III: more pieces"),
                        Level::II => say!("level II: as a rule"),
                        Level::I => say!("level I: fewer pieces"),
                        Level::S4 => say!("special level S-4"),
                        Level::S3 => say!("special level S-3"),
                        Level::S2 => say!("special level S-2"),
                        Level::S1 => say!("special level S-1: fewest"),
                    } }</option> }) }
                </select></div>
            <div class="field-pair">
                { limit("lot-major", say!("Limit for major"), log.major, on_major) }
                { limit("lot-minor", say!("Limit for minor"), log.minor, on_minor) }
            </div>
            <p class="hint">{ say!("Share of bad pieces up to which a steady supply mostly passes (AQL). 2.5 and 4.0 are usual: common practice. Of what is critical no piece may show any.") }</p>
        </>
    }
}

/// The verdict, and each class.
#[component]
fn Stand(props: &LogProps) -> Html {
    let log = &props.log;
    let (key, word, says) = stands_in_words(log);
    let row = |standing: &Standing| {
        let plan = log.plan(standing.severity);
        html! {
            <tr key={standing.severity.key()}>
                <th scope="row">{ class(standing.severity) }</th>
                <td>{ standing.sample }</td>
                <td>{ standing.accept }</td>
                <td>{ standing.accept + 1 }</td>
                <td><b>{ standing.bad }</b></td>
                <td>{ plan.map_or("–".to_owned(), |plan| plan.letter.written().to_string()) }</td>
            </tr>
        }
    };
    let ways: Vec<(&str, String)> = [Severity::Major, Severity::Minor]
        .into_iter()
        .filter_map(|severity| Some((class(severity), way(&log.plan(severity)?)?)))
        .collect();
    html! {
        <section class="card lot-stand" data-stands={key}>
            <p class="lot-verdict" role="status"><b>{ word }</b>{ " " }<span>{ says }</span></p>
            <div class="scroll-x" tabindex="0" role="region" aria-label={say!("The plan, and bad pieces so far")}>
                <table class="plain-table">
                    <caption class="unseen">{ say!("The plan, and bad pieces so far") }</caption>
                    <thead><tr><th scope="col">{ say!("of defects" | "Class") }</th><th scope="col">{ say!("so many pieces" | "Look at") }</th><th scope="col">{ say!("so many bad pieces" | "May be") }</th><th scope="col">{ say!("so many bad pieces" | "Fails at") }</th><th scope="col">{ say!("bad pieces so far" | "Bad") }</th><th scope="col">{ say!("of the plan" | "Letter") }</th></tr></thead>
                    <tbody>{ for log.standings().iter().map(row) }</tbody>
                </table>
            </div>
            { for ways.into_iter().map(|(class, way)| html! { <p class="hint" key={class}>{ say!("{class}: {sentence}", class, sentence = way) }</p> }) }
        </section>
    }
}

/// Pieces looked at, and what was found on them.
#[component]
fn Found(props: &LogProps) -> Html {
    let LogProps { log, own, act } = props;
    let sample = log.sample();
    let chosen = use_state_eq(String::new);
    let words = use_state_eq(String::new);
    let severity = use_state_eq(|| Severity::Major);
    let listed: Vec<&'static Defect> = own.iter().chain(&defects::ANY).collect();
    let looked = {
        let (log, act) = (log.clone(), act.clone());
        Callback::from(move |text: String| {
            let looked_at = count(&text, log.lot.pieces())?.unwrap_or(0);
            act.emit(Some(Log { looked_at, ..log.clone() }));
            Ok(())
        })
    };
    let next = {
        let (log, act) = (log.clone(), act.clone());
        Callback::from(move |_: MouseEvent| act.emit(Some(Log { looked_at: log.looked_at + 1, ..log.clone() })))
    };
    let on_choose = {
        let (chosen, severity, listed) = (chosen.clone(), severity.clone(), listed.clone());
        Callback::from(move |event: Event| {
            let value = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            if let Some(known) = listed.iter().find(|defect| defect.key == value) {
                severity.set(known.severity);
            }
            chosen.set(value);
        })
    };
    let on_words = {
        let words = words.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
                words.set(field.value());
            }
        })
    };
    let on_severity = {
        let severity = severity.clone();
        Callback::from(move |event: Event| {
            let value = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            severity.set(Severity::from_key(&value).unwrap_or(Severity::Major));
        })
    };
    let is_own = chosen.as_str() == OWN;
    let what = if is_own { words.trim().to_owned() } else { (*chosen).clone() };
    let may_log = log.looked_at > 0
        && !what.is_empty()
        && what.chars().count() <= Log::LONGEST_TEXT
        && log.findings.len() < Log::MOST_FINDINGS;
    let note = {
        let (log, act, words, what, severity) = (log.clone(), act.clone(), words.clone(), what, *severity);
        Callback::from(move |_: MouseEvent| {
            let mut log = log.clone();
            log.findings.push(Finding { piece: log.looked_at, what: what.clone(), severity });
            act.emit(Some(log));
            words.set(String::new());
        })
    };
    let called =
        |what: &str| listed.iter().find(|defect| defect.key == what).map_or(what.to_owned(), |defect| defect.name().to_owned());
    html! {
        <section class="card">
            <h2>{ say!("Pieces") }</h2>
            <p>{ say!("{done} of {all} looked at.", done = log.looked_at, all = sample) }</p>
            <div class="row">
                <button type="button" class="prime" onclick={next} disabled={log.looked_at >= log.lot.pieces()}>{ say!("Next piece") }</button>
            </div>
            <Typed id="looked-at" label={say!("Looked at")} kept={log.looked_at.to_string()} write={looked} />
            <h3>{ if log.looked_at == 0 { say!("defects" | "Found").to_owned() } else { say!("Found on piece {number}", number = log.looked_at) } }</h3>
            <div class="field"><label for="found-what">{ say!("Defect") }</label>
                <select id="found-what" onchange={on_choose}>
                    <option value="" selected={chosen.is_empty()}>{ say!("choose") }</option>
                    { for listed.iter().map(|defect| html! { <option key={defect.key} value={defect.key} selected={chosen.as_str() == defect.key}>{ format!("{} · {}", defect.name(), class_of(defect.severity)) }</option> }) }
                    <option value={OWN} selected={is_own}>{ say!("something else") }</option>
                </select></div>
            if is_own {
                <div class="field"><label for="found-words">{ say!("In your words") }</label>
                    <input id="found-words" autocomplete="off" maxlength="200" value={(*words).clone()} oninput={on_words} /></div>
            }
            <div class="field"><label for="found-class">{ say!("of defects" | "Class") }</label>
                <select id="found-class" onchange={on_severity}>
                    { for Severity::ALL.into_iter().map(|one| html! { <option key={one.key()} value={one.key()} selected={one == *severity}>{ class_of(one) }</option> }) }
                </select></div>
            <p><button type="button" class="second" onclick={note} disabled={!may_log}>{ say!("Note it on this piece") }</button></p>
            if log.looked_at == 0 {
                <p class="hint">{ say!("Press “Next piece” with each piece you take up.") }</p>
            }
            if !log.findings.is_empty() {
                <ul class="lot-findings">
                    { for log.findings.iter().enumerate().rev().map(|(place, found)| {
                        let (log, act) = (log.clone(), act.clone());
                        let away = Callback::from(move |_: MouseEvent| {
                            let mut log = log.clone();
                            log.findings.remove(place);
                            act.emit(Some(log));
                        });
                        html! {
                            <li key={place}>
                                <span><b>{ format!("{} ", found.piece) }</b>{ called(&found.what) }<small>{ format!(" · {}", class_of(found.severity)) }</small></span>
                                <button type="button" class="ghost" onclick={away} aria-label={say!("Take away: {defect} on piece {number}", defect = called(&found.what), number = found.piece)}>{ say!("Take away") }</button>
                            </li>
                        }
                    }) }
                </ul>
            }
        </section>
    }
}

/// Value of the choice of one's own words.
const OWN: &str = "own-words";

/// The operating curve, and what follows from it in words.
#[component]
fn CannotTell(props: &LogProps) -> Html {
    let log = &props.log;
    let Some(plan) = log.plan(Severity::Major) else { return Html::default() };
    let (n, c) = (plan.sample, plan.accept);
    let at_limit = passes(n, c, log.major.share());
    let (half, tenth) = (share_that_passes(n, c, 0.5), share_that_passes(n, c, 0.1));
    let major = log.standings()[1];
    let seen = log.looked_at.min(n);
    let so_far = highest_share(seen, major.bad, SURE);
    let most = (tenth * 1.6).clamp(0.05, 1.0);
    let points: Vec<(f64, f64)> =
        (0..=48).map(|step| f64::from(step) / 48.0 * most).map(|bad| (bad, passes(n, c, bad))).collect();
    html! {
        <section class="card">
            <h2>{ say!("What this sample cannot tell") }</h2>
            <Curve {points} {most} marks={vec![(log.major.share(), at_limit), (half, 0.5), (tenth, 0.1)]}
                says={say!("Chance to pass against the share of bad pieces: {passes} at {limit}, one half at {half}, one in ten at {tenth}.",
                    passes = per_cent(at_limit), limit = per_cent(log.major.share()), half = per_cent(half), tenth = per_cent(tenth))} />
            if plan.whole {
                <p>{ say!("Every piece is looked at, so nothing is left to chance but your eyes.") }</p>
            } else {
                <ul>
                    <li>{ say!("With {limit} of its pieces bad, which is the limit for major, a lot passes {passes} of the time.", limit = per_cent(log.major.share()), passes = per_cent(at_limit)) }</li>
                    <li>{ say!("With {share} bad, it is a toss-up.", share = per_cent(half)) }</li>
                    <li>{ say!("With {share} bad, one lot in ten still passes.", share = per_cent(tenth)) }</li>
                </ul>
            }
            if so_far < ALL_BUT && !plan.whole {
                <p>{ say!("So far: {bad} bad of {seen}. With 95 % confidence no more than {share} of the lot is bad.", bad = major.bad, seen, share = per_cent(so_far)) }</p>
            }
            <p class="hint">{ say!("A pass says that the lot is not plainly worse than agreed. It does not say that the lot is good, nor anything of the piece in your hand. Binomial distribution, as in the standard.") }</p>
        </section>
    }
}
