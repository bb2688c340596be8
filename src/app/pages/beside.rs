//! Two to four garments side by side: where they differ, what the gap between their tickets pays for, and whom a stranger resembles.

use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::cost::{Market, Rates};
use garment_assay::fit::Person;
use garment_assay::garment::{Answer, Appraisal, FitReport, Garment, price};
use garment_assay::quantity::{Decimal, System, written, written_exactly, written_with_spread};
use garment_assay::rack::{
    Beside, BesideFault, Between, Difference, Likeness, ReadingDifference, exchange, in_one_currency, ticket_gap,
};
use garment_assay::say;
use garment_assay::trade::{Currency, Question, Ticket};
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::clock;
use crate::app::fit_words;
use crate::app::money;
use crate::app::pages::fitting;
use crate::app::parts::bar::Bar;
use crate::app::parts::laid::{Rest, use_laid};
use crate::app::parts::steps::Steps;
use crate::app::parts::tape::Tape;
use crate::app::route::Route;
use crate::app::steps::{about, money as counted};
use crate::app::words::{self, headline};

/// Answers that lie less than this part of the scale apart are shown only on demand: a reading on the border of two levels is no difference.
/// Judgement.
pub(super) const ALIKE: f64 = 0.05;
/// Garments offered to set beside one.
const LATEST: usize = 20;
/// Below this probability neither of two is called the better made. Judgement.
const HARDLY: f64 = 0.6;
/// Checks named for each garment that a stranger resembles.
const NAMED: usize = 6;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garments, in the order of the address.
    pub garments: Vec<Rc<Garment>>,
    /// All garments noted.
    pub rack: Vec<Rc<Garment>>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// The market, and what was changed of its rates.
    pub rates: Rates,
    /// People whose measures are kept, by name.
    pub people: Vec<Rc<Person>>,
    /// Metric or imperial.
    pub system: System,
}

/// What the garments are called for short, in the order of the address.
pub(super) const LETTERS: [&str; 4] = ["A", "B", "C", "D"];

/// One attribute, the garments side by side under its name. Tapes are for the eye alone: the row of bands says the same in words.
fn row(title: Html, key: &str, cells: Vec<Html>) -> Html {
    html! {
        <li class="sbs-row" key={key.to_owned()} aria-hidden={(key == "tape").then_some("true")}>
            <div class="sbs-name">{ title }</div>
            <ul class="sbs-cells" data-count={cells.len().to_string()}>
                { for cells.into_iter().enumerate().map(|(place, cell)| html! {
                    <li key={place}><span class="sbs-whose">{ format!("{}: ", LETTERS[place]) }</span>{ cell }</li>
                }) }
            </ul>
        </li>
    }
}

fn heads(garments: &[Rc<Garment>]) -> Html {
    html! {
        <div class="sbs-heads sbs-row">
            <div class="sbs-name" aria-hidden="true"></div>
            <ol class="sbs-cells" data-count={garments.len().to_string()} aria-label={say!("Garments")}>
                { for garments.iter().enumerate().map(|(place, garment)| html! {
                    <li key={garment.id().as_str().to_owned()}>
                        <a href={Route::Result(garment.id().clone()).href()}><b class="sbs-letter">{ LETTERS[place] }</b><span>{ garment.called() }</span></a>
                    </li>
                }) }
            </ol>
        </div>
    }
}

/// Which is likelier the better made, in a sentence for each pair.
pub(super) fn better(beside: &Beside) -> Vec<String> {
    beside
        .better
        .iter()
        .map(|((one, other), sure)| {
            let (best, worst, sure) = if *sure >= 0.5 { (*one, *other, *sure) } else { (*other, *one, 1.0 - sure) };
            if sure < HARDLY {
                say!("{one} and {other}: no telling which is the better made.", one = LETTERS[*one], other = LETTERS[*other])
            } else {
                say!(
                    "{best} is better made than {worst}: {share} sure.",
                    best = LETTERS[best],
                    worst = LETTERS[worst],
                    share = words::percent(sure)
                )
            }
        })
        .collect()
}

fn made(garments: &[Rc<Garment>], appraisals: &[Rc<Appraisal>], left: &[Option<Rc<Appraisal>>], beside: &Beside) -> Html {
    let cells = appraisals.iter().map(|appraisal| {
        let said = headline(appraisal);
        html! { <><b>{ said.lead }</b><small>{ said.rest }</small></> }
    });
    // Apart from the words, so that the tapes stand at one height and can be compared.
    let tapes = appraisals.iter().map(|appraisal| html! { <Tape appraisal={appraisal.clone()} bare=true /> });
    let answers = garments.iter().map(|garment| html! { { garment.answered() } });
    let left_in = left.iter().map(|left| match left {
        Some(left) => {
            let said = headline(left);
            html! { <><b>{ said.lead }</b><small>{ said.rest }</small></> }
        }
        None => html! { { say!("not second-hand" | "new") } },
    });
    html! {
        <section class="card">
            <h2>{ say!("How well made") }</h2>
            <ul class="sbs">
                { row(html! { { say!("Band") } }, "band", cells.collect()) }
                { row(html! { { say!("Where it may stand") } }, "tape", tapes.collect()) }
                if left.iter().any(Option::is_some) {
                    { row(html! { { Question::Left.name() } }, "left", left_in.collect()) }
                }
                { row(html! { { say!("Checks answered") } }, "answers", answers.collect()) }
            </ul>
            <ul>{ for better(beside).into_iter().map(|said| html! { <li key={said.clone()}>{ said }</li> }) }</ul>
            if beside.better.len() > 1 {
                <p class="hint">{ say!("Each pair is weighed by itself.") }</p>
            }
            if garments.windows(2).any(|two| two[0].family() != two[1].family()) {
                <p class="hint">{ say!("These are of different kinds. Each is judged among new pieces of its own kind, so “better made” means better for what it is.") }</p>
            }
        </section>
    }
}

/// Whether each fits, apart from how well it is made; nothing while no fit of any of them was tried.
fn fits(garments: &[Rc<Garment>], people: &[Rc<Person>], system: System) -> Html {
    let reports: Vec<Option<FitReport>> = garments.iter().map(|garment| fitting::report(garment, people)).collect();
    if !reports.iter().flatten().any(|report| report.verdict.is_some()) {
        return Html::default();
    }
    let each = |say: &dyn Fn(&FitReport) -> Html| -> Vec<Html> {
        reports.iter().map(|report| report.as_ref().map_or_else(|| html! { { say!("not written") } }, say)).collect()
    };
    let verdicts = each(&|report| {
        let (lead, rest) = fit_words::verdict(report);
        html! { <><b>{ lead }</b><small>{ rest }</small></> }
    });
    let open = || html! { <span class="sbs-open"><span aria-hidden="true">{ "–" }</span><span class="unseen">{ say!("not known") }</span></span> };
    let turns = each(&|report| fit_words::turns_on(report, system).map_or_else(open, |why| html! { { why } }));
    let sizes = each(&|report| match fit_words::size_briefly(report.size) {
        _ if report.rows.iter().all(|row| row.fit.is_err()) => open(),
        Some(size) => html! { <b>{ size }</b> },
        None => html! { { say!("not called for") } },
    });
    html! {
        <section class="card">
            <h2>{ say!("Fit") }</h2>
            <ul class="sbs">
                { row(html! { { say!("Verdict") } }, "fit", verdicts) }
                { row(html! { { say!("What it turns on") } }, "fit-why", turns) }
                { row(html! { { say!("Another size") } }, "fit-size", sizes) }
            </ul>
            <p class="hint">{ say!("Each for the person for whom it was tried. It moves no band.") }</p>
        </section>
    }
}

/// Tickets in view, by the places of their garments.
fn priced(garments: &[Rc<Garment>]) -> Vec<(usize, Ticket)> {
    let seen =
        |(place, garment): (usize, &Rc<Garment>)| Some((place, *garment.ticket_in_view().filter(|ticket| ticket.minor > 0)?));
    garments.iter().enumerate().filter_map(seen).collect()
}

/// What one dollar is taken to be in each currency, and where that comes from.
fn exchanges(currencies: &[Currency], rates: &Rates) -> String {
    let said: Vec<String> = currencies
        .iter()
        .filter(|currency| **currency != Currency::Usd)
        .filter_map(|currency| {
            let acting = rates.acting(Market::of_currency(*currency)?.exchange());
            let amount = written_exactly(acting.range.usual, 4, Decimal::spoken());
            let (code, day) = (currency.code(), clock::written_day(acting.as_of));
            Some(if acting.edited {
                say!("{amount} {code} for 1 USD (yours, of {day})", amount, code, day)
            } else {
                say!("{amount} {code} for 1 USD (judgement, of {day})", amount, code, day)
            })
        })
        .collect();
    said.join("; ")
}

fn tickets(garments: &[Rc<Garment>], rates: &Rates) -> Html {
    let priced = priced(garments);
    let shown = garments.iter().map(|garment| match garment.ticket() {
        Some(ticket) => html! { <b>{ words::ticket(ticket) }</b> },
        None => html! { { say!("none noted") } },
    });
    let only: Vec<&Ticket> = priced.iter().map(|(_, ticket)| ticket).collect();
    let mut currencies: Vec<Currency> = Vec::new();
    for ticket in &only {
        if !currencies.contains(&ticket.currency) {
            currencies.push(ticket.currency);
        }
    }
    let together = (currencies.len() > 1).then(|| in_one_currency(&only, rates));
    let converted = match &together {
        Some(Ok((common, amounts))) => {
            let cells = (0..garments.len()).map(|place| match priced.iter().position(|(of, _)| *of == place) {
                Some(at) if garments[place].ticket().is_some_and(|ticket| ticket.currency != *common) => {
                    html! { { say!("about {amount}", amount = about(*common, amounts[at])) } }
                }
                Some(at) => html! { { counted(*common, amounts[at]) } },
                None => html! { "–" },
            });
            row(html! { { say!("In {currency}", currency = common.code()) } }, "converted", cells.collect())
        }
        _ => Html::default(),
    };
    if let Some(Ok((common, _))) = &together
        && !currencies.contains(common)
    {
        currencies.push(*common);
    }
    html! {
        <section class="card">
            <h2>{ say!("Ticket") }</h2>
            <ul class="sbs">
                { row(html! { { say!("Price") } }, "price", shown.collect()) }
                { converted }
                { built(garments, rates) }
            </ul>
            if garments.iter().any(|garment| garment.is_second_hand()) {
                <p class="hint">{ say!("A build-up is of a new piece: it explains no second-hand ticket.") }</p>
            }
            { match together {
                Some(Ok(_)) => html! { <p class="hint">{ say!("Converted at {rates}.", rates = exchanges(&currencies, rates)) }{ " " }<a href={Route::Rates.href()}>{ say!("Change the rates") }</a></p> },
                Some(Err(why)) => html! { <p class="hint">{ why.to_string() }</p> },
                None => Html::default(),
            } }
        </section>
    }
}

/// The build-up of each, in short: what it costs out of the factory and what that makes of a ticket, with the way to its parts.
fn built(garments: &[Rc<Garment>], rates: &Rates) -> Html {
    let builds = garments.iter().map(|garment| {
        let market = garment.ticket().and_then(|ticket| Market::of_currency(ticket.currency)).unwrap_or(rates.market());
        price(garment, &rates.in_market(market), garment.shop())
    });
    let builds: Vec<_> = builds.collect();
    let cell = |text: Option<String>| text.map_or_else(|| html! { "–" }, |text| html! { { text } });
    let factory = builds
        .iter()
        .map(|build| cell(build.as_ref().map(|build| money::range(build.currency(), &build.totals().factory_price.range()))));
    let ticket =
        builds.iter().map(|build| cell(build.as_ref().map(|build| money::range(build.currency(), &build.ticket().range()))));
    let parts = garments.iter().map(|garment| {
        html! { <a href={Route::Ticket(garment.id().clone()).href()} aria-label={say!("Its parts: {garment}", garment = garment.called())}>{ say!("Its parts") }</a> }
    });
    html! {
        <>
            { row(html! { { say!("Out of the factory, by the make") } }, "factory", factory.collect()) }
            { row(html! { { say!("Ticket, by the make") } }, "made", ticket.collect()) }
            { row(html! { { say!("Build-up") } }, "parts", parts.collect()) }
        </>
    }
}

/// What the gap between two of them pays for; with more than two, which two.
fn gap_card(garments: &[Rc<Garment>], rates: &Rates, ends: (usize, usize), choose: &Callback<(usize, usize)>) -> Html {
    let (one, other) = ends;
    let pick = |label: &'static str, id: &'static str, now: usize, with: fn((usize, usize), usize) -> (usize, usize)| {
        let choose = choose.clone();
        let onchange = Callback::from(move |event: Event| {
            let place = event.target_dyn_into::<HtmlSelectElement>().and_then(|field| field.value().parse().ok());
            if let Some(place) = place {
                choose.emit(with(ends, place));
            }
        });
        html! {
            <div class="field"><label for={id}>{ label }</label>
                <select {id} {onchange}>
                    { for garments.iter().enumerate().map(|(place, garment)| html! {
                        <option key={place} value={place.to_string()} selected={place == now}>{ say!("{letter}: {garment}", letter = LETTERS[place], garment = garment.called()) }</option>
                    }) }
                </select></div>
        }
    };
    let currency = |place: usize| garments[place].ticket().map(|ticket| ticket.currency);
    let found = if one == other {
        None
    } else {
        Some(ticket_gap(&garments[one], &garments[other], rates, [garments[one].shop(), garments[other].shop()]))
    };
    html! {
        <section class="card">
            <h2>{ say!("What the gap in price pays for") }</h2>
            if garments.len() > 2 {
                <div class="sbs-ends">
                    { pick(say!("the first of two garments" | "From"), "gap-from", one, |(_, other), place| (place, other)) }
                    { pick(say!("the second of two garments" | "To"), "gap-to", other, |(one, _), place| (one, place)) }
                </div>
            }
            { match found {
                None => html! { <p class="hint">{ say!("Choose two different garments.") }</p> },
                Some(_) if garments[one].is_second_hand() || garments[other].is_second_hand() => {
                    html! { <p class="hint">{ say!("One of them is second-hand: how it was made does not account for what it asks.") }</p> }
                }
                Some(Err(why)) => html! { <p class="hint">{ why.to_string() }</p> },
                Some(Ok(found)) => {
                    let converted = [one, other].map(|place| currency(place) != Some(found.currency));
                    html! {
                    <Steps {found} from={(LETTERS[one], garments[one].called().to_owned())} to={(LETTERS[other], garments[other].called().to_owned())} {converted} />
                    }
                },
            } }
        </section>
    }
}

fn answer_row(garments: &[Rc<Garment>], check: &'static Check, system: System) -> Html {
    let cells = garments.iter().map(|garment| {
        let said = words::answer(garment, check, system);
        let open = !matches!(garment.answer(check), Some(Answer::Judged { .. } | Answer::Measured(_)));
        html! { if said.is_empty() { <span class="sbs-open"><span aria-hidden="true">{ "–" }</span><span class="unseen">{ say!("not answered") }</span></span> } else if open { <span class="sbs-open">{ said }</span> } else { { said } } }
    });
    row(html! { { check.name() } }, check.key, cells.collect())
}

fn reading_row(row_of: &ReadingDifference, system: System) -> Html {
    let own = row_of.unit.in_system(system);
    let cells = row_of.values.iter().map(|value| {
        let said = value.and_then(|(value, spread)| {
            let (value, spread) = (row_of.unit.convert(value, own)?, row_of.unit.convert(spread, own)?);
            Some(written_with_spread(value, spread, own, Decimal::spoken()))
        });
        match said {
            Some(said) => html! { { said } },
            None => html! { <span class="sbs-open"><span aria-hidden="true">{ "–" }</span><span class="unseen">{ say!("not measured") }</span></span> },
        }
    });
    row(html! { { row_of.name() } }, row_of.name(), cells.collect())
}

/// Checks that are not among the differences: alike, or answered for fewer than two.
fn others(garments: &[Rc<Garment>], shown: &[&Difference]) -> Vec<&'static Check> {
    let mut checks: Vec<&'static Check> = Vec::new();
    for entry in garments.iter().flat_map(|garment| garment.entries()) {
        let of_make = entry.check.speaks.left().is_none();
        if of_make
            && entry.answer != Answer::Skipped
            && !checks.contains(&entry.check)
            && shown.iter().all(|row| row.check != entry.check)
        {
            checks.push(entry.check);
        }
    }
    checks
}

fn differences(garments: &[Rc<Garment>], beside: &Beside, system: System, all: bool, toggle: Callback<MouseEvent>) -> Html {
    let apart: Vec<&Difference> = beside.checks.iter().filter(|row| row.apart > ALIKE).collect();
    let (differ, alike): (Vec<&ReadingDifference>, Vec<&ReadingDifference>) = beside.readings.iter().partition(|row| row.differs);
    let rest = others(garments, &apart);
    let hidden = rest.len() + alike.len();
    html! {
        <section class="card">
            <h2>{ say!("Where they differ") }</h2>
            if apart.is_empty() && differ.is_empty() {
                <p>{ if beside.checks.is_empty() { say!("No check is answered for two of them yet.") } else { say!("Nothing that was answered for two of them differs.") } }</p>
            }
            if !differ.is_empty() {
                <h3>{ say!("Readings") }</h3>
                <ul class="sbs">{ for differ.iter().map(|row| reading_row(row, system)) }</ul>
            }
            if !apart.is_empty() {
                <h3>{ say!("Answers, the furthest apart first") }</h3>
                <ul class="sbs">{ for apart.iter().map(|row| answer_row(garments, row.check, system)) }</ul>
            }
            if all && !rest.is_empty() {
                <h3>{ say!("Answers that are alike, or missing for some") }</h3>
                <ul class="sbs">{ for rest.iter().map(|check| answer_row(garments, check, system)) }</ul>
            }
            if all && !alike.is_empty() {
                <h3>{ say!("Readings that do not differ by more than twice their spread") }</h3>
                <ul class="sbs">{ for alike.iter().map(|row| reading_row(row, system)) }</ul>
            }
            if hidden > 0 {
                <button type="button" class="ghost" onclick={toggle} aria-expanded={all.to_string()}>
                    { if all { say!("Show only what differs").to_owned() } else { say!("Show all ({count} more)", count = hidden) } }
                </button>
            }
        </section>
    }
}

/// Where a stranger stands on the line from one garment to another, as a picture.
fn line(between: &Between, stranger: usize, ends: (usize, usize)) -> Html {
    // The two ends stand at a fifth and four fifths: beyond them is room for one that lies outside.
    let along = |way: f64| 20.0 + way.clamp(-0.3, 1.3) * 60.0;
    let error = between.error.unwrap_or(0.0);
    html! {
        <svg class="between" viewBox="0 0 100 26" aria-hidden="true" focusable="false">
            <rect class="tape-strip" x="0" y="9" width="100" height="6" />
            <path class="tape-cuts" d="M20 9v6M80 9v6" />
            if error > 0.0 {
                <path class="between-range" d={format!("M{:.1} 19H{:.1}", along(between.way - error), along(between.way + error))} />
            }
            <circle class="tape-middle" cx={format!("{:.1}", along(between.way))} cy="19" r="2.2" />
            <text x="20" y="7">{ LETTERS[ends.0] }</text>
            <text x="80" y="7">{ LETTERS[ends.1] }</text>
            <text class="between-own" x={format!("{:.1}", along(between.way))} y="26">{ LETTERS[stranger] }</text>
        </svg>
    }
}

fn way_said(between: &Between, stranger: usize, ends: (usize, usize)) -> String {
    let (own, first, second) = (LETTERS[stranger], LETTERS[ends.0], LETTERS[ends.1]);
    let whole = |share: f64| written(share * 100.0, 0, Decimal::spoken());
    let beyond = match between.way {
        way if way < 0.0 => Some((first, second)),
        way if way > 1.0 => Some((second, first)),
        _ => None,
    };
    let (share, count) = (whole(between.way), between.checks);
    // There is no error where there is one check.
    match (beyond, between.error) {
        (Some((near, far)), Some(_)) => say!(
            "By {count} checks in which {first} and {second} differ, {own} lies beyond {near}, on the side away from {far}.",
            count,
            first,
            second,
            own,
            near,
            far
        ),
        (Some((near, far)), None) => say!(
            "By 1 check in which {first} and {second} differ, {own} lies beyond {near}, on the side away from {far}. From a single check that says little.",
            first,
            second,
            own,
            near,
            far
        ),
        (None, Some(error)) => say!(
            "By {count} checks in which {first} and {second} differ, {own} stands {share} per cent of the way from {first} to {second}, give or take {error}.",
            count,
            first,
            second,
            own,
            share,
            error = whole(error)
        ),
        (None, None) => say!(
            "By 1 check in which {first} and {second} differ, {own} stands {share} per cent of the way from {first} to {second}. From a single check that says little.",
            first,
            second,
            own,
            share
        ),
    }
}

/// For each reference, the checks in which the stranger comes nearest to it alone; last those in which several come equally near.
fn nearest(likeness: &[Likeness], count: usize) -> Vec<Vec<&'static str>> {
    let mut lists: Vec<Vec<&'static str>> = vec![Vec::new(); count + 1];
    for row in likeness {
        match row.nearest.as_slice() {
            // One that alone is answered resembles for want of others.
            [_] if row.apart.iter().flatten().count() < 2 => {}
            [one] => lists[*one].push(row.check.name()),
            _ => lists[count].push(row.check.name()),
        }
    }
    lists
}

#[derive(Properties, PartialEq)]
struct StrangerProps {
    garments: Vec<Rc<Garment>>,
}

/// A stranger placed between two known garments, and whom it resembles in what.
#[component]
fn Stranger(props: &StrangerProps) -> Html {
    let garments = &props.garments;
    let chosen = use_state_eq(|| None::<usize>);
    if garments.len() < 3 {
        return html! {
            <section class="card">
                <h2>{ say!("A stranger between two") }</h2>
                <p class="hint">{ say!("Set three garments side by side, and one tap places any of them between the others.") }</p>
            </section>
        };
    }
    // Of three others the cheapest and the dearest are the ends; where a ticket is missing, the first and the last.
    let ends = |stranger: usize| {
        let mut known: Vec<usize> = (0..garments.len()).filter(|place| *place != stranger).collect();
        let price = |place: &usize| garments[*place].ticket_in_view().map(|ticket| (ticket.currency, ticket.minor));
        if known.iter().all(|place| price(place).map(|(currency, _)| currency) == price(&known[0]).map(|(currency, _)| currency))
        {
            known.sort_by_key(price);
        }
        (known[0], known[known.len() - 1])
    };
    html! {
        <section class="card">
            <h2>{ say!("A stranger between two") }</h2>
            <div class="sbs-strangers" role="group" aria-label={say!("Which one to place")}>
                { for (0..garments.len()).map(|place| {
                    let (first, second) = ends(place);
                    let chosen_now = *chosen == Some(place);
                    let chosen = chosen.clone();
                    let onclick = Callback::from(move |_: MouseEvent| chosen.set(if chosen_now { None } else { Some(place) }));
                    html! {
                        <button key={place} type="button" class="ghost" {onclick} aria-pressed={chosen_now.to_string()}>
                            { say!("Place {own} between {first} and {second}", own = LETTERS[place], first = LETTERS[first], second = LETTERS[second]) }
                        </button>
                    }
                }) }
            </div>
            { match *chosen {
                None => Html::default(),
                Some(stranger) => {
                    let (first, second) = ends(stranger);
                    let between = Between::of(&garments[stranger], &garments[first], &garments[second]);
                    let known: Vec<usize> = (0..garments.len()).filter(|place| *place != stranger).collect();
                    let references: Vec<&Garment> = known.iter().map(|place| garments[*place].as_ref()).collect();
                    let lists = nearest(&Likeness::of(&garments[stranger], &references), known.len());
                    html! {
                        <div role="status">
                            { match &between {
                                None => html! { <p>{ say!("{first} and {second} differ in nothing that {own} is answered in.", first = LETTERS[first], second = LETTERS[second], own = LETTERS[stranger]) }</p> },
                                Some(between) => html! { <>{ line(between, stranger, (first, second)) }<p>{ way_said(between, stranger, (first, second)) }</p></> },
                            } }
                            <ul class="sbs-like">
                                { for lists.iter().enumerate().filter(|(_, list)| !list.is_empty()).map(|(place, list)| {
                                    let (count, all) = (list.len(), lists.iter().map(Vec::len).sum::<usize>());
                                    let whom = match known.get(place) {
                                        Some(place) => say!("Most like {letter} in {count} of {all}", letter = LETTERS[*place], count, all),
                                        None => say!("Equally near to several in {count} of {all}", count, all),
                                    };
                                    let more = list.len().saturating_sub(NAMED);
                                    html! {
                                        <li key={place}>
                                            <b>{ whom }</b>
                                            if more == 0 {
                                                <p>{ list.join(", ") }</p>
                                            } else {
                                                <details class="meaning"><summary>{ say!("{checks} and {more} more", checks = list[..NAMED].join(", "), more) }</summary><p>{ list[NAMED..].join(", ") }</p></details>
                                            }
                                        </li>
                                    }
                                }) }
                            </ul>
                        </div>
                    }
                }
            } }
        </section>
    }
}

/// What there is to do when the address does not name two to four garments that are noted.
pub(super) fn too_few(garments: &[Rc<Garment>], rack: &[Rc<Garment>], why: &BesideFault) -> Html {
    if rack.len() < 2 {
        return html! {
            <section class="empty card">
                <h2>{ say!("It takes two") }</h2>
                <p>{ why.to_string() }{ " " }{ say!("Check another garment first.") }</p>
                <p><a class="prime" href={Route::Start.href()}>{ say!("Check a garment") }</a></p>
            </section>
        };
    }
    let mut others: Vec<&Rc<Garment>> = match garments {
        [one] => rack.iter().filter(|garment| garment.id() != one.id()).collect(),
        _ => Vec::new(),
    };
    others.sort_by(|one, other| (other.noted(), other.id()).cmp(&(one.noted(), one.id())));
    html! {
        <section class="card">
            <h2>{ garments.first().filter(|_| !others.is_empty()).map_or_else(|| say!("Choose two to four").to_owned(), |one| say!("Set {garment} beside", garment = one.called())) }</h2>
            if others.is_empty() {
                <p>{ why.to_string() }{ " " }{ say!("On the rack, press Choose and tick them.") }</p>
            }
            <ul class="further">
                { for others.iter().take(LATEST).zip(std::iter::repeat(garments)).map(|(other, garments)| {
                    let ids = garments.iter().chain([*other]).map(|garment| garment.id().clone()).collect();
                    html! {
                        <li key={other.id().as_str().to_owned()}><a href={Route::Beside(ids).href()}><b>{ other.called() }</b><small>{ other.ticket().map(words::ticket).unwrap_or_default() }</small></a></li>
                    }
                }) }
            </ul>
            <p class="hint">{ say!("For three or four, press Choose on the rack.") }</p>
            <p><a class="second" href="#/">{ say!("To the rack") }</a></p>
        </section>
    }
}

/// The page.
#[component]
pub fn BesidePage(props: &Props) -> Html {
    let Props { garments, rack, appraisals, rates, people, system } = props;
    let all = use_state_eq(|| false);
    let toggle = {
        let all = all.clone();
        Callback::from(move |_: MouseEvent| all.set(!*all))
    };
    let ends = use_state_eq(|| None::<(usize, usize)>);
    let choose = {
        let ends = ends.clone();
        Callback::from(move |to: (usize, usize)| ends.set(Some(to)))
    };
    let is_whole = use_laid(1, 2) == 2;
    let known: Vec<Rc<Appraisal>> = garments.iter().map(|garment| appraisals.of(garment)).collect();
    let left: Vec<Option<Rc<Appraisal>>> = garments.iter().map(|garment| appraisals.left(garment)).collect();
    let pairs: Vec<(&Garment, &Appraisal)> = garments.iter().map(Rc::as_ref).zip(known.iter().map(Rc::as_ref)).collect();
    let bar = html! { <Bar title={say!("Side by side")} under={if garments.len() < 2 { String::new() } else { say!("{count} garments", count = garments.len()) }} back="#/" back_name={say!("Back to the rack")} /> };
    let beside = match Beside::of(&pairs) {
        Ok(beside) => beside,
        Err(why) => {
            return html! {
                <>
                    { bar }
                    { too_few(garments, rack, &why) }
                </>
            };
        }
    };
    // The widest gap first: from the cheapest ticket to the dearest that can be set against it.
    let usual = || {
        let priced = priced(garments);
        let kind = priced.first().map(|(_, ticket)| ticket.kind);
        let mut known: Vec<(usize, Ticket)> = priced.into_iter().filter(|(_, ticket)| Some(ticket.kind) == kind).collect();
        let dollars = |ticket: &Ticket| ticket.currency.whole(ticket.minor) / exchange(ticket.currency, rates).unwrap_or(1.0);
        known.sort_by(|(_, one), (_, other)| dollars(one).total_cmp(&dollars(other)));
        match known.as_slice() {
            [(one, _), .., (other, _)] => (*one, *other),
            _ => (0, 1),
        }
    };
    let ends = ends.unwrap_or_else(usual);
    html! {
        <>
            { bar }
            { heads(garments) }
            { made(garments, &known, &left, &beside) }
            { fits(garments, people, *system) }
            { tickets(garments, rates) }
            if is_whole {
                { gap_card(garments, rates, ends, &choose) }
                { differences(garments, &beside, *system, *all, toggle) }
                <Stranger garments={garments.clone()} />
            }
            <Rest of={!is_whole} />
            <div class="foot">
                <a class="prime" href={Route::BesideSheet(garments.iter().map(|garment| garment.id().clone()).collect()).href()}>{ say!("Comparison sheet to print") }</a>
            </div>
        </>
    }
}
