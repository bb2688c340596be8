//! The rack: garments noted.

use std::cell::RefCell;
use std::cmp::Reverse;
use std::rc::Rc;

use garment_assay::cost::Rates;
use garment_assay::garment::{Act, Appraisal, Garment, Id};
use garment_assay::language::{one, said};
use garment_assay::notebook::SetAside;
use garment_assay::trade::Currency;
use garment_assay::{say, to_say};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::{clock, files, screen};
use crate::app::collections::{self, Which};
use crate::app::model::Message;
use crate::app::parts::choosing::Choosing;
use crate::app::parts::collection_field::CollectionField;
use crate::app::parts::confirm::Confirm;
use crate::app::parts::empty_rack::{EmptyRack, NOTHING_YET, RackBar};
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::invented::Invented;
use crate::app::parts::laid::Rest;
use crate::app::parts::tape::Tape;
use crate::app::route::Route;
use crate::app::wings;
use crate::app::words::{self, headline};
use crate::app::worth::{MEANING, Places};

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Order {
    Newest,
    Oldest,
    Name,
    Best,
    Worth,
    Dearest,
}

impl Order {
    const ALL: [(Order, &'static str, &'static str); 6] = [
        (Order::Newest, "newest", to_say!("Newest first")),
        (Order::Oldest, "oldest", to_say!("Oldest first")),
        (Order::Name, "name", to_say!("By name")),
        (Order::Best, "best", to_say!("Best made first")),
        (Order::Worth, "worth", to_say!("Value for quality")),
        (Order::Dearest, "dearest", to_say!("Dearest first")),
    ];
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Show {
    All,
    Begun,
    Settled,
    WithTicket,
    ShortList,
}

impl Show {
    const ALL: [(Show, &'static str, &'static str); 5] = [
        (Show::All, "all", to_say!("All garments")),
        (Show::Begun, "begun", to_say!("Not settled yet")),
        (Show::Settled, "settled", to_say!("garments" | "Settled")),
        (Show::WithTicket, "ticket", to_say!("With a ticket")),
        (Show::ShortList, "short", to_say!("Short list")),
    ];
}

/// Rows shown at first, and again with each "show more": more would be slow to lay out on a phone.
pub const PAGE: usize = 30;
/// Rows laid out at once, and then again in each turn until the page is full: about as many as a phone shows of them before it is moved.
/// Judgement.
const TURN: usize = 5;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Garments noted.
    pub garments: Vec<Rc<Garment>>,
    /// Pages that could not be read.
    pub set_aside: Rc<Vec<SetAside>>,
    /// The garment that is open beside the rack.
    #[prop_or_default]
    pub open: Option<Id>,
    /// Whether the rack stands beside another screen, which then has the heading.
    #[prop_or_default]
    pub beside: bool,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// Rates of the market, by which an offer lands.
    pub rates: Rates,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The price that sorting by price may look at: a ticket that lies face down has none.
fn shown_price(garment: &Garment) -> Option<(Reverse<Currency>, u64)> {
    // Amounts in two currencies cannot be compared without a rate, so each currency stands by itself.
    let ticket = garment.ticket().filter(|ticket| !ticket.face_down)?;
    Some((Reverse(ticket.currency), ticket.minor))
}

/// What a search looks into.
fn searched(garment: &Garment) -> String {
    [garment.label(), garment.place(), garment.note(), garment.family().name(), garment.collection()].join("\n").to_lowercase()
}

/// A garment, with what the search and the orders would otherwise work out anew for each letter and each pair.
#[derive(PartialEq, Eq)]
struct Listed {
    garment: Rc<Garment>,
    searched: String,
    called: String,
}

impl Listed {
    fn of(garment: &Rc<Garment>) -> Listed {
        Listed { garment: garment.clone(), searched: searched(garment), called: garment.called().to_lowercase() }
    }
}

thread_local! {
    /// What was listed last: the rack is opened again and again with the same garments.
    static LISTED: RefCell<Rc<Vec<Listed>>> = RefCell::default();
}

/// These garments, listed; those that were listed last are taken as they were.
fn listed(garments: &[Rc<Garment>]) -> Rc<Vec<Listed>> {
    LISTED.with_borrow_mut(|last| {
        let same = last.len() == garments.len() && last.iter().zip(garments).all(|(one, other)| Rc::ptr_eq(&one.garment, other));
        if !same {
            *last = Rc::new(garments.iter().map(Listed::of).collect());
        }
        last.clone()
    })
}

/// The garments to show, in order.
fn chosen(
    garments: &[Listed],
    search: &str,
    which: &Which,
    show: Show,
    order: Order,
    appraisals: &Appraisals,
    places: Option<&Places>,
) -> Vec<Rc<Garment>> {
    let words: Vec<String> = search.to_lowercase().split_whitespace().map(str::to_owned).collect();
    let settled = |garment: &Rc<Garment>| appraisals.of(garment).is_settled();
    let mut rows: Vec<(&Listed, f64)> = garments
        .iter()
        .filter(|Listed { garment, .. }| which.shows(garment))
        .filter(|Listed { searched, .. }| words.iter().all(|word| searched.contains(word.as_str())))
        .filter(|Listed { garment, .. }| match show {
            Show::All => true,
            Show::Begun => !settled(garment),
            Show::Settled => settled(garment),
            Show::WithTicket => garment.ticket().is_some(),
            Show::ShortList => garment.terms().shortlisted(),
        })
        .map(|listed| (listed, if order == Order::Best { appraisals.of(&listed.garment).mean() } else { 0.0 }))
        .collect();
    let place = |garment: &Garment| places.and_then(|places| places.get(garment.id())).map(|place| place.at);
    // One sort for all orders: each call is compiled anew, at some 12 KB of download.
    rows.sort_by(|(a, made_a), (b, made_b)| match order {
        Order::Newest => (b.garment.noted(), b.garment.id()).cmp(&(a.garment.noted(), a.garment.id())),
        Order::Oldest => (a.garment.noted(), a.garment.id()).cmp(&(b.garment.noted(), b.garment.id())),
        Order::Name => a.called.cmp(&b.called),
        Order::Best => made_b.total_cmp(made_a),
        Order::Worth => place(&a.garment).cmp(&place(&b.garment)),
        Order::Dearest => shown_price(&b.garment).cmp(&shown_price(&a.garment)),
    });
    rows.into_iter().map(|(listed, _)| listed.garment.clone()).collect()
}

/// "8 garments noted, 2 of them put away".
fn counted(count: usize, away: usize) -> String {
    match away {
        _ if count == 0 => said(NOTHING_YET).to_owned(),
        0 if one(count) => say!("{count} garment noted", count),
        0 => say!("{count} garments noted", count),
        away if away == count && one(count) => say!("{count} garment noted, put away", count),
        away if away == count => say!("{count} garments noted, put away", count),
        away if one(away) => say!("one of them" | "{count} garments noted, {away} of them put away", count, away),
        away => say!("{count} garments noted, {away} of them put away", count, away),
    }
}

#[derive(Properties, PartialEq)]
struct RowProps {
    garment: Rc<Garment>,
    appraisal: Rc<Appraisal>,
    left: Option<Rc<Appraisal>>,
    open: bool,
    /// Where it stands in the order of value, while the rack is in that order.
    worth: Option<AttrValue>,
    delete: Callback<Id>,
    /// While garments are ticked: whether this one is.
    pick: Option<bool>,
    picked: Callback<Id>,
}

#[component]
fn Row(props: &RowProps) -> Html {
    let RowProps { garment, appraisal, left, open, worth, delete, pick, picked } = props;
    let made = headline(appraisal);
    let id = garment.id().clone();
    let onclick = {
        let (delete, id) = (delete.clone(), id.clone());
        Callback::from(move |_: MouseEvent| delete.emit(id.clone()))
    };
    let facts = [
        Some(garment.family().name().to_owned()).filter(|_| !garment.label().is_empty()),
        Some(garment.place().to_owned()).filter(|place| !place.is_empty()),
        Some(clock::written_day(garment.noted())),
        garment.ticket().map(words::ticket),
        left.as_ref().map(|left| match left.evidence() {
            0 => say!("second-hand").to_owned(),
            _ => say!("second-hand: {band}", band = words::bands_within(&headline(left).lead)),
        }),
    ];
    let words = html! {
        <>
            <b>{ garment.called() }if garment.terms().shortlisted() { { " " }<span class="rack-mark">{ say!("short list") }</span> }</b>
            <span class="rack-band">{ &made.lead }<small>{ format!(" {}", made.rest) }</small></span>
            <Tape appraisal={appraisal.clone()} bare=true />
            if let Some(worth) = worth {
                <small class="rack-worth">{ worth }</small>
            }
            <small class="rack-facts">{ facts.into_iter().flatten().collect::<Vec<_>>().join(" · ") }</small>
        </>
    };
    if let Some(chosen) = *pick {
        let (picked, id) = (picked.clone(), id.clone());
        let onchange = Callback::from(move |_: Event| picked.emit(id.clone()));
        return html! {
            <li class="rack-row">
                <label class="rack-pick" data-chosen={chosen.to_string()}>
                    <input type="checkbox" checked={chosen} {onchange} aria-label={format!("{}, {}", garment.called(), made.lead)} />
                    <span>{ words }</span>
                </label>
            </li>
        };
    }
    html! {
        <li class="rack-row">
            <a href={Route::Resume(id).href()} aria-current={open.then_some("page")}>{ words }</a>
            <button type="button" class="icon-button" {onclick} aria-label={say!("Delete {garment}", garment = garment.called())}><Icon shape={Shape::Delete} /></button>
        </li>
    }
}

/// The garments noted.
#[component]
pub fn Rack(props: &Props) -> Html {
    let Props { garments, set_aside, open, beside, appraisals, rates, send } = props;
    let search = use_state_eq(String::new);
    let show = use_state_eq(|| Show::All);
    let order = use_state_eq(|| Order::Newest);
    let shown = use_state_eq(|| PAGE);
    let which = use_state_eq(|| Which::All);
    let known = collections::names(garments);
    let away = garments.iter().filter(|garment| garment.archived()).count();
    // One that was renamed or emptied meanwhile is none any more.
    let shown_which = match &*which {
        Which::In(name) if !known.contains(name) => Which::All,
        Which::Away if away == 0 => Which::All,
        Which::Nowhere if known.is_empty() => Which::All,
        which => which.clone(),
    };
    {
        // Forgotten for good, so that the next one put away goes out of sight as any other.
        let which = which.clone();
        use_effect_with(*which == Which::Away && away == 0, move |gone| {
            if *gone {
                which.set(Which::All);
            }
        });
    }
    let onwhich = {
        let (which, shown) = (which.clone(), shown.clone());
        Callback::from(move |event: Event| {
            let value = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            which.set(Which::of_key(&value));
            shown.set(PAGE);
        })
    };
    let rename = {
        let (which, send, garments) = (which.clone(), send.clone(), garments.clone());
        Callback::from(move |name: String| {
            let Which::In(old) = &*which else { return };
            if name.is_empty() || name == *old {
                return;
            }
            let ids = garments.iter().filter(|garment| garment.collection() == old).map(|garment| garment.id().clone()).collect();
            send.emit(Message::DoneToMany(ids, Act::Collection(name.clone()), say!("{old} is now called {name}.", old, name)));
            which.set(Which::In(name));
        })
    };
    let onsearch = {
        let (search, shown) = (search.clone(), shown.clone());
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                search.set(field.value());
                shown.set(PAGE);
            }
        })
    };
    let onorder = {
        let order = order.clone();
        Callback::from(move |event: Event| {
            let value = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            order.set(Order::ALL.into_iter().find(|(_, key, _)| *key == value).map_or(Order::Newest, |(order, ..)| order));
        })
    };
    let onshow = {
        let show = show.clone();
        Callback::from(move |event: Event| {
            let value = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            show.set(Show::ALL.into_iter().find(|(_, key, _)| *key == value).map_or(Show::All, |(show, ..)| show));
        })
    };
    let more = {
        let shown = shown.clone();
        Callback::from(move |_: MouseEvent| shown.set(*shown + PAGE))
    };
    let picks = use_state_eq(|| None::<Vec<Id>>);
    let picked = {
        let picks = picks.clone();
        Callback::from(move |id: Id| {
            let mut ids = (*picks).clone().unwrap_or_default();
            match ids.iter().position(|other| *other == id) {
                Some(place) => {
                    ids.remove(place);
                }
                None => ids.push(id),
            }
            picks.set(Some(ids));
        })
    };
    let pick = {
        let picks = picks.clone();
        Callback::from(move |_: MouseEvent| picks.set(if picks.is_some() { None } else { Some(Vec::new()) }))
    };
    // One that was deleted meanwhile is none any more.
    let ids: Vec<Id> = picks.iter().flatten().filter(|id| garments.iter().any(|garment| garment.id() == *id)).cloned().collect();
    let listed = use_memo(garments.clone(), |garments| listed(garments));
    let listed = (*listed).clone();
    let update = use_force_update();
    let places = (*order == Order::Worth)
        .then(|| {
            let worths = wings::worths(garments.clone(), rates.clone(), appraisals.clone());
            // A wing that does not come is not asked again by itself.
            wings::at_once(worths, move |is_here| {
                if is_here {
                    update.force_update()
                }
            })
        })
        .flatten();
    let asked = (listed, (*search).clone(), shown_which.clone(), *show, *order, places.clone());
    let appraise = appraisals.clone();
    let rows = use_memo(asked, move |(listed, search, which, show, order, places)| {
        chosen(listed, search, which, *show, *order, &appraise, places.as_deref())
    });
    // What can be seen comes first; the rest of the page follows in turns, so that no tap and no letter waits for it. What was asked for
    // begins anew; a change of a garment does not, or the page would move under the hand.
    let ask = ((*search).clone(), shown_which.clone(), *show, *order);
    let laid = use_state_eq(|| (ask.clone(), TURN));
    let count = if laid.0 == ask { laid.1 } else { TURN };
    {
        let laid = laid.setter();
        use_effect_with((ask, count, (*shown).min(rows.len())), move |(ask, count, full)| {
            let next = (*count < *full).then(|| {
                let (ask, count) = (ask.clone(), count + TURN);
                screen::soon(move || laid.set((ask, count)))
            });
            move || drop(next)
        });
    }
    let short: Vec<Id> = match *show {
        Show::ShortList => rows.iter().take(5).map(|garment| garment.id().clone()).collect(),
        _ => Vec::new(),
    };
    let rows_shown: Vec<Id> =
        if picks.is_some() { rows.iter().map(|garment| garment.id().clone()).collect() } else { Vec::new() };
    let tick = {
        let picks = picks.clone();
        Callback::from(move |ids: Vec<Id>| picks.set(Some(ids)))
    };
    let leave = {
        let picks = picks.clone();
        Callback::from(move |()| picks.set(None))
    };
    let found = rows.len();
    let delete = send.reform(Message::Delete);
    let dropping = use_state_eq(|| None::<String>);
    let dropped = {
        let (dropping, send) = (dropping.clone(), send.clone());
        Callback::from(move |yes: bool| {
            if let Some(key) = (*dropping).clone().filter(|_| yes) {
                send.emit(Message::DropSetAside(key));
            }
            dropping.set(None);
        })
    };
    html! {
        <>
            if *beside {
                <header class="bar"><div class="bar-title"><p class="bar-beside"><a href="#/">{ say!("Rack") }</a></p></div></header>
            } else {
                <RackBar counted={counted(garments.len(), away)} />
            }
            if garments.is_empty() {
                <EmptyRack came={send.reform(Message::Invent)} />
            } else {
                <div class="rack-tools" role="search">
                    <label class="search"><Icon shape={Shape::Search} /><span class="unseen">{ say!("Search name, place or note") }</span>
                        <input type="search" placeholder={say!("Name, place or note")} value={(*search).clone()} oninput={onsearch} /></label>
                    <label><span class="unseen">{ say!("Show") }</span>
                        <select onchange={onshow}>
                            { for Show::ALL.into_iter().map(|(value, key, word)| html! { <option {key} value={key} selected={value == *show}>{ said(word) }</option> }) }
                        </select></label>
                    <label><span class="unseen">{ say!("sorting" | "Order") }</span>
                        <select onchange={onorder}>
                            { for Order::ALL.into_iter().map(|(value, key, word)| html! { <option {key} value={key} selected={value == *order}>{ said(word) }</option> }) }
                        </select></label>
                    if !known.is_empty() || away > 0 {
                        <label class="rack-which"><span class="unseen">{ say!("Collection") }</span>
                            <select onchange={onwhich}>
                                <option value={Which::All.key()} selected={shown_which == Which::All}>{ say!("All collections") }</option>
                                { for known.iter().map(|name| {
                                    let which = Which::In(name.clone());
                                    html! { <option key={which.key()} value={which.key()} selected={shown_which == which}>{ name }</option> }
                                }) }
                                if !known.is_empty() {
                                    <option value={Which::Nowhere.key()} selected={shown_which == Which::Nowhere}>{ say!("In no collection") }</option>
                                }
                                if away > 0 {
                                    <option value={Which::Away.key()} selected={shown_which == Which::Away}>{ say!("Put away ({count})", count = away) }</option>
                                }
                            </select></label>
                    }
                    <a class="ghost rack-hand-on" href={Route::HandOn(Vec::new()).href()}>{ say!("Hand on") }</a>
                </div>
                if let Which::In(name) = &shown_which {
                    <details class="rack-rename" key={name.clone()}>
                        <summary>{ say!("Rename this collection") }</summary>
                        <CollectionField id="rename" label={say!("Its name")} hint={say!("All its garments go with it, those put away too. A name that there is already puts both together.")}
                            name={name.clone()} known={Vec::new()} button={say!("Rename")} chosen={rename} />
                    </details>
                }
                if found == 0 && shown_which != Which::Away && away == garments.len() {
                    <p class="hint lonely">{ say!("Every garment is put away. Choose that above to see them.") }</p>
                } else if found == 0 && *show == Show::ShortList && !garments.iter().any(|garment| garment.terms().shortlisted()) {
                    <p class="hint lonely">{ say!("Nothing is on the short list yet. Show all garments, press Choose, tick some and put them on it; or do so on a garment’s page Offer.") }</p>
                } else if found == 0 {
                    <p class="hint lonely">{ say!("No garment fits that. Change the search or what is shown.") }</p>
                }
                if (2..=4).contains(&short.len()) {
                    <p class="lonely"><a href={Route::BesideSheet(short).href()}>{ say!("Print these side by side on one page") }</a></p>
                }
                if *order == Order::Worth {
                    <details class="meaning lonely"><summary>{ say!("What this order means") }</summary><p>{ said(MEANING) }</p></details>
                }
                if found > 0 {
                    <ul class="rack">
                        { for rows.iter().take((*shown).min(count)).map(|garment| {
                            let appraisal = appraisals.of(garment);
                            let open = open.as_ref() == Some(garment.id());
                            let pick = picks.as_ref().map(|_| ids.contains(garment.id()));
                            let worth = places.as_ref().and_then(|places| places.get(garment.id())).map(|place| AttrValue::from(place.on_the_rack()));
                            html! { <Row key={garment.id().as_str().to_owned()} {appraisal} {worth} left={appraisals.left(garment)} {open} {pick} picked={picked.clone()} delete={delete.clone()} garment={garment.clone()} /> }
                        }) }
                    </ul>
                }
                <Rest of={count < found.min(*shown)} />
                if found > *shown {
                    <p class="lonely"><button type="button" class="ghost" onclick={more}>{ say!("Show more ({count} left)", count = found - *shown) }</button></p>
                }
                if garments.iter().any(|garment| garment.guess().is_some()) {
                    <p class="lonely"><a href={Route::Guesses.href()}>{ say!("Your guesses, and the habit in them") }</a></p>
                }
                if !*beside {
                    if garments.iter().any(|garment| garment.id().is_invented()) {
                        <Invented garments={garments.clone()} send={send.clone()} />
                    }
                    <p class="lonely"><a href={Route::Practice.href()}>{ say!("Practise: two minutes for your eye") }</a></p>
                    <p class="lonely"><a href={Route::Learn.href()}>{ say!("Learn: two minutes about each check") }</a></p>
                }
            }
            if !set_aside.is_empty() {
                <section class="card set-aside">
                    <h2>{ say!("Pages that could not be read") }</h2>
                    <ul>
                        { for set_aside.iter().map(|page| {
                            let save = {
                                let text = page.text.clone();
                                Callback::from(move |_: MouseEvent| { let _ = files::save("page-not-read.txt", "text/plain", &text); })
                            };
                            let drop = {
                                let (dropping, key) = (dropping.clone(), page.key.clone());
                                Callback::from(move |_: MouseEvent| dropping.set(Some(key.clone())))
                            };
                            html! {
                                <li key={page.key.clone()}>
                                    <p>{ page.why.to_string() }</p>
                                    <div class="row">
                                        <button type="button" class="ghost" onclick={save}>{ say!("Save its text") }</button>
                                        <button type="button" class="ghost" onclick={drop}>{ say!("Drop it") }</button>
                                    </div>
                                </li>
                            }
                        }) }
                    </ul>
                </section>
            }
            if dropping.is_some() {
                <Confirm question={say!("Drop this page?")} explains={say!("Its text is taken off this device for good. Save it first if you may want it.")} yes={say!("Drop it")} answered={dropped} />
            }
            if picks.is_some() {
                <Choosing {ids} shown={rows_shown} short={garments.iter().filter(|garment| garment.terms().shortlisted()).map(|garment| garment.id().clone()).collect::<Vec<_>>()} collections={known} away={shown_which == Which::Away} {tick} {leave} send={send.clone()} />
            } else if !garments.is_empty() {
                <div class="foot">
                    <a class="prime" href={Route::Start.href()}>{ say!("Check a garment") }</a>
                    <a class="second" href={Route::Desk(None).href()}>{ say!("Quick sheet") }</a>
                    <button type="button" class="second" onclick={pick}>{ say!("Choose") }</button>
                </div>
            }
        </>
    }
}
