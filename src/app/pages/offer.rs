//! What a supplier offers a garment for, and what that comes to once landed, price by price.

use std::rc::Rc;

use garment_assay::cost::{Incoterm, Rates};
use garment_assay::garment::{Act, Garment, LandedPrice, NotLanded, PriceBreak, Terms, TermsAct, landed_prices, price};
use garment_assay::quantity::{Decimal, written};
use garment_assay::say;
use garment_assay::trade::{Currency, Day, PriceKind, Ticket};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::model::Message;
use crate::app::money::{about, exact, share};
use crate::app::parts::bar::Bar;
use crate::app::parts::ticket::Draft;
use crate::app::parts::typed::Typed;
use crate::app::parts::value::count;
use crate::app::route::Route;
use crate::app::words;

/// Where a link stands in a sentence that is said as a whole.
const LINK: &str = "\u{1}";

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// Rates of the market in which it would be sold.
    pub rates: Rates,
    /// Currency offered first.
    pub currency: Currency,
    /// Whether there is something to take back.
    pub can_take_back: bool,
    /// Where messages go.
    pub send: Callback<Message>,
}

fn amount(minor: u64, currency: Currency) -> String {
    Draft::of(&Ticket { minor, currency, kind: PriceKind::Wholesale, face_down: false }).amount
}

/// The page.
#[component]
pub fn OfferPage(props: &Props) -> Html {
    let Props { garment, rates, currency, can_take_back, send } = props;
    let id = garment.id().clone();
    let terms = garment.terms();
    let act = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |act: Act| send.emit(Message::Done(id.clone(), act)))
    };
    let note = act.reform(Act::Terms);
    let text = |make: fn(String) -> TermsAct| {
        let note = note.clone();
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                note.emit(make(field.value()));
            }
        })
    };
    let field = |id: &'static str, label: &'static str, kept: &str, make: fn(String) -> TermsAct| {
        html! {
            <div class="field"><label for={id}>{ label }</label>
                <input {id} autocomplete="off" maxlength="200" value={kept.to_owned()} onchange={text(make)} /></div>
        }
    };
    let in_currency = terms.currency().unwrap_or(*currency);
    let on_currency = {
        let note = note.clone();
        Callback::from(move |event: Event| {
            let code = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            note.emit(TermsAct::Currency(Currency::from_code(&code)));
        })
    };
    let on_term = {
        let note = note.clone();
        Callback::from(move |event: Event| {
            let code = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            note.emit(TermsAct::Incoterm(Incoterm::from_code(&code)));
        })
    };
    let minimum = {
        let note = note.clone();
        Callback::from(move |text: String| count(&text, Terms::MOST_PIECES).map(|pieces| note.emit(TermsAct::Minimum(pieces))))
    };
    let day = |first: bool| {
        let (note, kept) = (note.clone(), terms.delivery());
        Callback::from(move |event: Event| {
            let text = event.target_dyn_into::<HtmlInputElement>().map(|field| field.value()).unwrap_or_default();
            // One day given stands for both until the other is given.
            let days = Day::parse(&text).map(|day| match kept {
                Some((_, last)) if first => (day, last.max(day)),
                Some((start, _)) => (start.min(day), day),
                None => (day, day),
            });
            note.emit(TermsAct::Delivery(days));
        })
    };
    let shortlist = {
        let note = note.clone();
        let now = terms.shortlisted();
        Callback::from(move |_: Event| note.emit(TermsAct::Shortlisted(!now)))
    };
    let back = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |_: MouseEvent| send.emit(Message::TakeBack(id.clone())))
    };
    let delivery = |pick: fn((Day, Day)) -> Day| terms.delivery().map_or(String::new(), |days| pick(days).to_string());
    html! {
        <>
            <Bar title={say!("Offer")} under={garment.called().to_owned()} back={Route::Result(id.clone()).href()} back_name={say!("Back to the result")} />
            <section class="card">
                <h2>{ say!("Who, and what") }</h2>
                { field("supplier", say!("Supplier"), terms.supplier(), TermsAct::Supplier) }
                { field("style", say!("Style number"), terms.style(), TermsAct::Style) }
                { field("colourways", say!("Colours"), terms.colourways(), TermsAct::Colourways) }
                { field("sizes", say!("Sizes"), terms.sizes(), TermsAct::Sizes) }
                <label class="tick"><input type="checkbox" checked={terms.shortlisted()} onchange={shortlist} /><span>{ say!("On the short list") }</span></label>
            </section>
            <section class="card">
                <h2>{ say!("Price") }</h2>
                <div class="field-pair">
                    <div class="field"><label for="offer-currency">{ say!("Currency") }</label>
                        <select id="offer-currency" onchange={on_currency}>
                            <option value="" selected={terms.currency().is_none()}>{ say!("not noted") }</option>
                            { for Currency::ALL.into_iter().map(|one| html! { <option key={one.code()} value={one.code()} selected={terms.currency() == Some(one)}>{ one.code() }</option> }) }
                        </select></div>
                    <div class="field"><label for="incoterm">{ say!("What is in it") }</label>
                        <select id="incoterm" onchange={on_term}>
                            <option value="" selected={terms.incoterm().is_none()}>{ say!("not noted") }</option>
                            { for Incoterm::ALL.into_iter().map(|one| html! { <option key={one.code()} value={one.code()} selected={terms.incoterm() == Some(one)}>{ format!("{} · {}", one.code(), one.words()) }</option> }) }
                        </select></div>
                </div>
                <Prices prices={terms.prices().to_vec()} currency={in_currency} noted={terms.currency().is_some()} note={note.clone()} />
                <div class="field-pair">
                    <Typed id="offer-minimum" label={say!("Smallest order, pieces")} kept={terms.minimum().map_or(String::new(), |pieces| pieces.to_string())} write={minimum} />
                </div>
                <div class="field-pair">
                    <div class="field"><label for="delivery-first">{ say!("Delivery from") }</label>
                        <input id="delivery-first" type="date" value={delivery(|days| days.0)} onchange={day(true)} /></div>
                    <div class="field"><label for="delivery-last">{ say!("a last day" | "to") }</label>
                        <input id="delivery-last" type="date" aria-label={say!("Delivery to")} value={delivery(|days| days.1)} onchange={day(false)} /></div>
                </div>
            </section>
            <Landed garment={garment.clone()} rates={rates.clone()} {act} />
            <div class="foot">
                <a class="prime" href={Route::Result(id.clone()).href()}>{ say!("See the result") }</a>
                <a class="second" href={Route::Lot(id).href()}>{ say!("Inspect a lot") }</a>
                if *can_take_back {
                    <button type="button" class="second" onclick={back}>{ say!("Take back") }</button>
                }
            </div>
        </>
    }
}

#[derive(Properties, PartialEq)]
struct PricesProps {
    prices: Vec<PriceBreak>,
    currency: Currency,
    /// Whether the currency was noted; else the one offered first is noted with the first price.
    noted: bool,
    note: Callback<TermsAct>,
}

/// Prices by quantity, and one more to add.
#[component]
fn Prices(props: &PricesProps) -> Html {
    let PricesProps { prices, currency, noted, note } = props;
    let from = use_state_eq(String::new);
    let fault = use_state_eq(|| None::<String>);
    let typed = use_state_eq(String::new);
    let on = |state: &UseStateHandle<String>| {
        let state = state.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                state.set(field.value());
            }
        })
    };
    let add = {
        let (from, typed, fault, note, prices) = (from.clone(), typed.clone(), fault.clone(), note.clone(), prices.clone());
        let (currency, noted) = (*currency, *noted);
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            let read = count(&from, Terms::MOST_PIECES).and_then(|pieces| {
                let ticket = Draft { amount: (*typed).clone(), ..Draft::empty(currency) }.ticket()?;
                let minor = ticket.map(|ticket| ticket.minor).filter(|minor| *minor > 0);
                let minor = minor.ok_or_else(|| say!("Type the price of a piece.").to_owned())?;
                if prices.len() >= Terms::MOST_PRICES && !prices.iter().any(|price| Some(price.from) == pieces) {
                    return Err(say!("{count} prices are kept at the most. Take one away first.", count = Terms::MOST_PRICES));
                }
                Ok(PriceBreak { from: pieces.unwrap_or(1), minor })
            });
            match read {
                Ok(price) => {
                    if !noted {
                        note.emit(TermsAct::Currency(Some(currency)));
                    }
                    note.emit(TermsAct::Prices(prices.iter().copied().chain([price]).collect()));
                    from.set(String::new());
                    typed.set(String::new());
                    fault.set(None);
                }
                Err(sentence) => fault.set(Some(sentence)),
            }
        })
    };
    html! {
        <>
            if !prices.is_empty() {
                <ul class="lot-findings">
                    { for prices.iter().map(|price| {
                        let (note, rest) = (note.clone(), prices.iter().copied().filter(|other| other != price).collect::<Vec<_>>());
                        let away = Callback::from(move |_: MouseEvent| note.emit(TermsAct::Prices(rest.clone())));
                        let said = say!("from {pieces}: {amount}", pieces = price.from, amount = words::minor(price.minor, *currency));
                        html! {
                            <li key={price.from}><span>{ said.clone() }</span>
                                <button type="button" class="ghost" onclick={away} aria-label={say!("Take away: {price}", price = said)}>{ say!("Take away") }</button></li>
                        }
                    }) }
                </ul>
            }
            <form onsubmit={add} novalidate=true>
                <div class="field-pair">
                    <div class="field"><label for="price-from">{ say!("From how many pieces") }</label>
                        <input id="price-from" inputmode="numeric" autocomplete="off" value={(*from).clone()} oninput={on(&from)} placeholder="1" /></div>
                    <div class="field"><label for="price-of">{ say!("Price of a piece, {currency}", currency = currency.code()) }</label>
                        <input id="price-of" inputmode="decimal" autocomplete="off" value={(*typed).clone()} oninput={on(&typed)}
                            aria-invalid={fault.is_some().to_string()} aria-describedby={fault.is_some().then_some("price-said")} /></div>
                </div>
                if let Some(fault) = fault.as_ref() {
                    <p class="fault" id="price-said" role="alert">{ fault }</p>
                }
                <p><button type="submit" class="second">{ say!("Add this price") }</button></p>
            </form>
        </>
    }
}

#[derive(Properties, PartialEq)]
struct LandedProps {
    garment: Rc<Garment>,
    rates: Rates,
    act: Callback<Act>,
}

/// What each price comes to against the ticket that is to be put on the garment.
#[component]
fn Landed(props: &LandedProps) -> Html {
    let LandedProps { garment, rates, act } = props;
    let Some(build_up) = price(garment, rates, garment.shop()) else {
        return html! { <section class="card"><p>{ say!("Nobody has written what this kind costs, so freight and duty are not worked out.") }</p></section> };
    };
    let currency = build_up.currency();
    let deal = *garment.deal();
    let middle = build_up.ticket().median();
    let ticket = deal.target().map_or(middle, |minor| currency.whole(minor));
    let target = {
        let act = act.clone();
        Callback::from(move |amount: String| {
            let ticket = Draft { amount, ..Draft::empty(currency) }.ticket()?;
            act.emit(Act::Deal(deal.with_target(ticket.map(|ticket| ticket.minor))));
            Ok(())
        })
    };
    let rows = landed_prices(garment.terms(), &build_up, rates, ticket);
    let caveat = say!(
        "Sold in: {market}. Freight, duty and fees are averages of the {rates}; duty hangs on fibre and country and may be nothing or more. \
        Ask a customs broker before you order.",
        market = rates.market().name(),
        rates = LINK
    );
    let (before, after) = caveat.split_once(LINK).unwrap_or((&caveat, ""));
    html! {
        <section class="card">
            <h2>{ say!("Landed, and what stays") }</h2>
            <Typed id="offer-target" label={say!("Retail ticket, {currency}", currency = currency.code())} kept={deal.target().map_or(String::new(), |minor| amount(minor, currency))} write={target}
                hint={if deal.target().is_none() { say!("Empty: {amount} is taken, the middle of what such a piece is likely asked for.", amount = about(middle)) } else { String::new() }} />
            { match rows {
                Err(NotLanded::NoPrice) => html! { <p>{ NotLanded::NoPrice.to_string() }</p> },
                Err(why) => html! { <p class="fault">{ why.to_string() }</p> },
                Ok(rows) => table(&rows, garment.terms(), currency),
            } }
            <p class="hint">{ before }<a href={Route::Rates.href()}>{ say!("averages of the …" | "rates") }</a>{ after }</p>
        </section>
    }
}

fn table(rows: &[LandedPrice], terms: &Terms, currency: Currency) -> Html {
    let term = terms.incoterm().map_or_else(|| say!("FOB, for want of a term"), Incoterm::code);
    html! {
        <>
            <div class="scroll-x" tabindex="0" role="region" aria-label={say!("Landed cost by quantity")}>
                <table class="plain-table">
                    <caption>{ say!("Price on terms {term}; amounts in {currency}", term, currency = currency.code()) }</caption>
                    <thead><tr><th scope="col">{ say!("so many pieces" | "From") }</th><th scope="col">{ say!("Landed") }</th><th scope="col">{ say!("Margin") }</th><th scope="col">{ "×" }</th><th scope="col">{ say!("goods" | "Order") }</th><th scope="col">{ say!("Paid after") }</th></tr></thead>
                    <tbody>
                        { for rows.iter().map(|row| html! {
                            <tr key={row.quoted.from}>
                                <th scope="row">{ row.quoted.from }</th>
                                { match row.comes_to {
                                    Ok(view) => html! { <>
                                        <td>{ exact(currency, view.landed) }</td>
                                        <td><b>{ share(view.margin) }</b></td>
                                        <td>{ written(view.multiple, 2, Decimal::spoken()) }</td>
                                        <td>{ exact(currency, view.smallest_order) }</td>
                                        <td>{ view.pays_after.map_or("–".to_owned(), |pieces| pieces.to_string()) }</td>
                                    </> },
                                    Err(fault) => html! { <td colspan="5">{ fault.to_string() }</td> },
                                } }
                            </tr>
                        }) }
                    </tbody>
                </table>
            </div>
            <p class="hint">{ say!("Margin: of the price without tax. ×: price without tax over landed cost. Paid after: so many pieces sold at full price.") }</p>
        </>
    }
}
