//! The rates: the market, and every price, wage and share behind a build-up, each to be changed and put back.

use garment_assay::cost::{Market, Rate, RateUnit, Rates};
use garment_assay::garment::{RateGroup, rates_in};
use garment_assay::language::one;
use garment_assay::say;
use garment_assay::source::Kind;
use garment_assay::trade::Day;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::browser::{clock, document};
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::rate_words::{Draft, in_words, unit};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Market, and what was changed.
    pub rates: Rates,
    /// How many stored rates this version cannot read.
    pub unread: usize,
    /// Today, the day of a change.
    pub today: Day,
    /// Where messages go.
    pub send: Callback<Message>,
}

#[derive(Properties, PartialEq)]
struct RowProps {
    rate: &'static Rate,
    rates: Rates,
    today: Day,
    /// The search leaves it out; what is half-typed in it stays.
    hidden: bool,
    send: Callback<Message>,
}

fn leans_on(rate: &Rate) -> &'static str {
    match rate.source.kind {
        Kind::Judgement => say!("judgement"),
        _ => rate.source.name(),
    }
}

/// The market's own word, since "for 1 USD" alone does not say of what.
fn unit_of(rate: &Rate, rates: &Rates) -> String {
    match rate.unit {
        RateUnit::ForOneUsd => format!("{} {}", rates.market().currency().code(), unit(rate.unit)),
        _ => unit(rate.unit).to_owned(),
    }
}

/// One rate: how much it is, what it leans on, and three fields to change it.
#[component]
fn Row(props: &RowProps) -> Html {
    let RowProps { rate, rates, today, hidden, send } = props;
    let rate = *rate;
    let acting = rates.acting(rate);
    let draft = use_state_eq(|| None::<Draft>);
    let fault = use_state_eq(|| None::<AttrValue>);
    let opener = use_node_ref();
    let open = {
        let (draft, fault) = (draft.clone(), fault.clone());
        Callback::from(move |_: MouseEvent| {
            fault.set(None);
            draft.set(if draft.is_some() { None } else { Some(Draft::of(rate.unit, &acting.range)) });
        })
    };
    let leave = {
        let (draft, fault, opener) = (draft.clone(), fault.clone(), opener.clone());
        Callback::from(move |_: MouseEvent| {
            fault.set(None);
            draft.set(None);
            document::focus_on(&opener);
        })
    };
    let keep = {
        let (draft, fault, opener, rates, today, send) =
            (draft.clone(), fault.clone(), opener.clone(), rates.clone(), *today, send.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            let Some(typed) = (*draft).clone() else { return };
            match typed.range(rate.unit, &acting.range) {
                Err(sentence) => fault.set(Some(sentence.into())),
                Ok(range) => {
                    if range != acting.range {
                        let said = say!("Yours now: {rate}.", rate = rate.name());
                        send.emit(Message::Rated(rates.with(rate, range, today), Some(said)));
                    }
                    fault.set(None);
                    draft.set(None);
                    document::focus_on(&opener);
                }
            }
        })
    };
    let reset = {
        let (rates, opener, draft, fault, send) = (rates.clone(), opener.clone(), draft.clone(), fault.clone(), send.clone());
        Callback::from(move |_: MouseEvent| {
            fault.set(None);
            draft.set(None);
            document::focus_on(&opener);
            send.emit(Message::Rated(rates.without(rate), Some(say!("As it came: {rate}.", rate = rate.name()))));
        })
    };
    let unit = unit_of(rate, rates);
    let field = |place: usize, word: &'static str| {
        let id = format!("{}-{place}", rate.key);
        let oninput = {
            let draft = draft.clone();
            Callback::from(move |event: InputEvent| {
                if let (Some(field), Some(typed)) = (event.target_dyn_into::<HtmlInputElement>(), (*draft).clone()) {
                    draft.set(Some(typed.with(place, field.value())));
                }
            })
        };
        let value = draft.as_ref().map(|draft| draft.typed[place].clone()).unwrap_or_default();
        html! {
            <div class="field">
                <label for={id.clone()}>{ word }</label>
                <input {id} inputmode="decimal" autocomplete="off" {value} {oninput} aria-invalid={fault.is_some().to_string()}
                    aria-describedby={fault.is_some().then(|| format!("{}-fault", rate.key))} />
            </div>
        }
    };
    html! {
        <li class="rate" hidden={*hidden} data-edited={acting.edited.to_string()}>
            <div class="rate-line">
                <div>
                    <b>{ rate.name() }</b>
                    <span class="rate-range">{ in_words(rate.unit, &acting.range) }<small>{ format!(" {unit}") }</small></span>
                    <small>
                        if acting.edited {
                            <mark class="yours">{ say!("yours, of {day}", day = clock::written_day(acting.as_of)) }</mark>
                            { " · " }{ say!("as it came: {range}", range = in_words(rate.unit, &rate.range)) }
                        } else {
                            { leans_on(rate) }{ " · " }{ say!("as of {day}", day = clock::written_day(acting.as_of)) }
                        }
                    </small>
                </div>
                <button ref={opener} type="button" class="icon-button" onclick={open} aria-expanded={draft.is_some().to_string()}
                    aria-label={say!("Change {rate}", rate = rate.name())}><Icon shape={if draft.is_some() { Shape::Close } else { Shape::Edit }} /></button>
            </div>
            if draft.is_some() {
                <form class="rate-form" onsubmit={keep} novalidate=true>
                    <p class="hint" id={format!("{}-hint", rate.key)}>{ say!("In {unit}. One in ten lies below the low end, one in ten above the high end.", unit) }</p>
                    <div class="rate-fields" role="group" aria-label={rate.name()}>
                        { field(0, say!("low end" | "Low")) }
                        { field(1, say!("middle" | "Usual")) }
                        { field(2, say!("high end" | "High")) }
                    </div>
                    if let Some(fault) = &*fault {
                        <p class="fault" role="alert" id={format!("{}-fault", rate.key)}>{ fault }{ " " }{ say!("Nothing was changed.") }</p>
                    }
                    <div class="row">
                        <button type="submit" class="prime">{ say!("Use these") }</button>
                        <button type="button" class="second" onclick={leave}>{ say!("Leave it") }</button>
                    </div>
                    <p class="hint">{ rate.source.title() }</p>
                </form>
            }
            if acting.edited {
                <p class="rate-reset"><button type="button" class="ghost" onclick={reset} aria-label={say!("Put it back as it came: {rate}", rate = rate.name())}>{ say!("Put it back as it came") }</button></p>
            }
        </li>
    }
}

#[derive(Properties, PartialEq)]
struct GroupProps {
    group: RateGroup,
    list: Vec<&'static Rate>,
    rates: Rates,
    today: Day,
    /// Words that a name must hold, in small letters.
    words: Vec<String>,
    send: Callback<Message>,
}

fn fits(rate: &Rate, group: RateGroup, words: &[String]) -> bool {
    let name = format!("{} {} {}", rate.name(), group.name(), rate.source.name()).to_lowercase();
    words.iter().all(|word| name.contains(word.as_str()))
}

/// The rates of one group, folded until they are asked for or searched.
#[component]
fn Group(props: &GroupProps) -> Html {
    let GroupProps { group, list, rates, today, words, send } = props;
    let open = use_state_eq(|| false);
    let ontoggle = {
        let open = open.clone();
        Callback::from(move |event: MouseEvent| {
            event.prevent_default();
            open.set(!*open);
        })
    };
    let yours = list.iter().filter(|rate| rates.acting(rate).edited).count();
    let found = list.iter().filter(|rate| fits(rate, *group, words)).count();
    let searched = !words.is_empty();
    // Folded, its rows are made when they are first asked for, all groups at once would keep a hand waiting; from then on they stay, with
    // what is half-typed in them.
    let seen = use_mut_ref(|| false);
    let was_open = *seen.borrow() || *open || (searched && found > 0);
    seen.replace(was_open);
    let count = if searched { say!("{found} of {all}", found, all = list.len()) } else { list.len().to_string() };
    html! {
        <details class="card rate-group" open={*open || (searched && found > 0)} hidden={searched && found == 0}>
            <summary onclick={ontoggle}>
                <h2>{ group.name() }</h2>
                <small>{ count }
                    if yours > 0 { { " · " }<mark class="yours">{ say!("{count} yours", count = yours) }</mark> }
                </small>
            </summary>
            if was_open {
                <ul>
                    { for list.iter().map(|rate| html! {
                        <Row key={rate.key} rate={*rate} rates={rates.clone()} today={*today} hidden={!fits(rate, *group, words)} send={send.clone()} />
                    }) }
                </ul>
            }
        </details>
    }
}

/// The rates.
#[component]
pub fn RatesPage(props: &Props) -> Html {
    let Props { rates, unread, today, send } = props;
    let search = use_state_eq(String::new);
    let onsearch = {
        let search = search.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                search.set(field.value());
            }
        })
    };
    let onmarket = {
        let (rates, send) = (rates.clone(), send.clone());
        Callback::from(move |event: Event| {
            let chosen = event.target_dyn_into::<HtmlSelectElement>().and_then(|field| Market::from_key(&field.value()));
            if let Some(market) = chosen {
                send.emit(Message::Rated(rates.in_market(market), None));
            }
        })
    };
    let reset_all = {
        let (rates, send) = (rates.clone(), send.clone());
        Callback::from(move |_: MouseEvent| {
            send.emit(Message::Rated(rates.reset(), Some(say!("Every rate is as it came.").to_owned())));
        })
    };
    let words: Vec<String> = search.to_lowercase().split_whitespace().map(str::to_owned).collect();
    let groups = rates_in(rates.market());
    let here = groups.iter().flat_map(|(_, list)| list).filter(|rate| rates.acting(rate).edited).count();
    let elsewhere = rates.edits().count().saturating_sub(here);
    let none = !words.is_empty() && groups.iter().all(|(group, list)| list.iter().all(|rate| !fits(rate, *group, &words)));
    html! {
        <>
            <Bar title={say!("Rates")} under={say!("What a build-up takes things to cost")} back="#/settings" back_name={say!("Back to settings")} />
            <section class="card">
                <div class="field"><label for="market">{ say!("Market") }</label>
                    <select id="market" onchange={onmarket}>
                        { for Market::ALL.into_iter().map(|market| html! {
                            <option key={market.key()} value={market.key()} selected={market == rates.market()}>{ format!("{}, {}", market.name(), market.currency().code()) }</option>
                        }) }
                    </select></div>
                <p class="hint">{ say!("It sets tax, duty, fees and exchange for garments whose ticket names no other currency. No rate here is a quotation: most are judgement, and prices age. Put your own in their place.") }</p>
            </section>
            <div class="rack-tools" role="search">
                <label class="search"><Icon shape={Shape::Search} /><span class="unseen">{ say!("Search the rates") }</span>
                    <input type="search" placeholder={say!("Zip, minute, duty …")} value={(*search).clone()} oninput={onsearch} /></label>
            </div>
            if none {
                <p class="hint lonely" role="status">{ say!("No rate of this market fits that.") }</p>
            }
            { for groups.into_iter().map(|(group, list)| html! {
                <Group key={group.name()} {group} {list} rates={rates.clone()} today={*today} words={words.clone()} send={send.clone()} />
            }) }
            <section class="card">
                <h2>{ say!("Yours") }</h2>
                <p>{ match here {
                    0 => say!("Every rate of this market is as it came.").to_owned(),
                    count if one(count) => say!("{count} rate of this market is yours.", count),
                    count => say!("{count} rates of this market are yours.", count),
                } }
                { match elsewhere {
                    0 => String::new(),
                    count if one(count) => " ".to_owned() + &say!("{count} of another market waits until you choose that market again.", count),
                    count => " ".to_owned() + &say!("{count} of other markets wait until you choose them again.", count),
                } }</p>
                if *unread > 0 {
                    <p class="hint">{ say!("{count} more cannot be read by this version of the app. They are kept as they are, and go along when you export.", count = unread) }</p>
                }
                if here + elsewhere > 0 {
                    <p><button type="button" class="grave" onclick={reset_all}>{ say!("Put every rate back as it came") }</button></p>
                }
            </section>
        </>
    }
}
