//! Behind the ticket: where it stands among what is likely, what it is made up of, what others taught, the guess, and what it is worth.

use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::cost::{Channel, Plan, Rates};
use garment_assay::garment::{Act, Appraisal, Deal, Garment, wears};
use garment_assay::language::{money, opening, said, within};
use garment_assay::rack::{Behind, Habit, Name, Reveal, Taught, reveal};
use garment_assay::say;
use garment_assay::trade::{Currency, Day, PriceKind};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::document;
use crate::app::model::Message;
use crate::app::money::{about, known, known_between, range, share, verdict};
use crate::app::pages::left::NO_BUILD_UP;
use crate::app::parts::bar::Bar;
use crate::app::parts::build_steps::BuildSteps;
use crate::app::parts::guess::GuessCard;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::money_scale::{MoneyScale, Span};
use crate::app::parts::offer::OfferCard;
use crate::app::parts::value::Value;
use crate::app::pricing::Pricing;
use crate::app::route::Route;
use crate::app::words;

/// Checks that would narrow the range, and lessons, shown at first.
const FEW: usize = 4;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// All garments, for what their tickets teach and for guesses so far.
    pub garments: Vec<Rc<Garment>>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// What tickets taught.
    pub pricing: Pricing,
    /// The rates.
    pub rates: Rates,
    /// Currency of new guesses.
    pub currency: Currency,
    /// Today.
    pub today: Day,
    /// Whether something can be taken back.
    pub can_take_back: bool,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// Everything that is known of one ticket, for the cards.
struct Seen<'a> {
    garment: &'a Rc<Garment>,
    behind: &'a Behind,
    kind: PriceKind,
    /// The ticket in view, in whole units of the build-up's currency.
    price: Option<f64>,
    act: &'a Callback<Act>,
}

impl Seen<'_> {
    fn check(&self, key: &str) -> Option<(&'static Check, AttrValue)> {
        let check = self.garment.family().checks.iter().copied().find(|check| check.key == key)?;
        Some((check, Route::Check(self.garment.id().clone(), check.key.to_owned()).href().into()))
    }

    fn picture(&self) -> Html {
        let Seen { garment, behind, kind, price, .. } = *self;
        let (currency, likely) = (behind.currency(), behind.range(kind));
        let called = match kind {
            PriceKind::Retail if garment.is_second_hand() => say!("Likely, new"),
            PriceKind::Retail => say!("Likely"),
            PriceKind::Wholesale => say!("By the make"),
        };
        let guess = garment.guess().filter(|guess| guess.currency() == currency && guess.kind() == kind);
        let span = guess.map(|guess| {
            let at = |minor| currency.whole(minor);
            Span { low: at(guess.low()), middle: guess.best().map(at), high: at(guess.high()) }
        });
        let hill = {
            let (prediction, exchange) = (behind.likely.prediction().clone(), behind.exchange.ln());
            let made = behind.build_up.totals().factory_price;
            Callback::from(move |log: f64| match kind {
                PriceKind::Retail => prediction.density(log - exchange),
                PriceKind::Wholesale => (-0.5 * ((log - made.mu) / made.sigma).powi(2)).exp(),
            })
        };
        let ticket = garment.ticket_in_view();
        html! {
            <section class="card money">
                <h2 class="unseen">{ say!("Where the ticket stands") }</h2>
                <MoneyScale {currency} {likely} {called} ticket={price} guess={span} {hill} />
                <dl class="figures">
                    <div><dt><span class="key key-ticket" aria-hidden="true"></span>{ if kind == PriceKind::Retail { say!("Ticket") } else { say!("Offer") } }</dt>
                        <dd>{ match (ticket, garment.ticket()) { (Some(ticket), _) => words::amount(ticket), (None, Some(_)) => say!("face down").to_owned(), (None, None) => say!("no ticket" | "none").to_owned() } }</dd></div>
                    <div><dt><span class="key key-likely" aria-hidden="true"></span>{ called }</dt>
                        <dd>{ range(currency, &likely) }<small>{ say!("middle {amount}", amount = about(likely.usual)) }</small></dd></div>
                    if let Some(span) = &span {
                        <div><dt><span class="key key-guess" aria-hidden="true"></span>{ say!("Your guess") }</dt>
                            <dd>{ money(currency.code(), known_between(span.low, span.high)) }</dd></div>
                    }
                </dl>
                if !garment.is_second_hand() {
                    <p>{ verdict(behind, kind, ticket) }</p>
                }
                <details class="meaning">
                    <summary>{ say!("The picture as a table") }</summary>
                    <table class="plain-table">
                        <caption class="unseen">{ say!("Prices in {currency}", currency = currency.code()) }</caption>
                        <thead><tr><th scope="col">{ say!("heading of a column" | "What") }</th><th scope="col">{ say!("Low") }</th><th scope="col">{ say!("Middle") }</th><th scope="col">{ say!("High") }</th></tr></thead>
                        <tbody>
                            { figures(called, likely.low, Some(likely.usual), likely.high, about) }
                            if kind == PriceKind::Retail {
                                { { let made = behind.made(kind); figures(say!("By the make alone"), made.low, Some(made.usual), made.high, about) } }
                            }
                            if let Some(span) = &span { { figures(say!("Your guess"), span.low, span.middle, span.high, known) } }
                            if let Some(price) = price { { figures(say!("Ticket"), price, Some(price), price, known) } }
                        </tbody>
                    </table>
                    <p class="hint">{ say!("Low and high hold four in five. The scale is one of ratios: from 50 to 100 is as far as from 100 to 200.") }</p>
                </details>
            </section>
        }
    }

    fn narrowing(&self) -> Html {
        let Seen { garment, behind, act, .. } = *self;
        let shop = select(act, |value| Act::Shop(Channel::from_key(value)));
        let whose = select(act, |value| Act::Name(Name::from_key(value)));
        let open: Vec<_> = behind.build_up.would_narrow().into_iter().filter_map(|key| self.check(key)).take(FEW).collect();
        html! {
            <section class="card">
                <h2>{ say!("What would narrow it") }</h2>
                <div class="field-pair">
                    <div class="field">
                        <label for="shop">{ say!("Kind of shop") }</label>
                        <select id="shop" onchange={shop}>
                            <option value="" selected={garment.shop().is_none()}>{ say!("I do not know") }</option>
                            { for Channel::ALL.into_iter().map(|shop| html! {
                                <option key={shop.key()} value={shop.key()} selected={garment.shop() == Some(shop)}>{ shop.name() }</option>
                            }) }
                        </select>
                    </div>
                    <div class="field">
                        <label for="whose">{ say!("Whose name is on it") }</label>
                        <select id="whose" onchange={whose}>
                            <option value="" selected={garment.name().is_none()}>{ say!("I do not know") }</option>
                            { for Name::ALL.into_iter().map(|name| html! {
                                <option key={name.key()} value={name.key()} selected={garment.name() == Some(name)}>{ opening(name.words()) }</option>
                            }) }
                        </select>
                    </div>
                </div>
                if open.is_empty() {
                    <p>{ say!("No check that is left would narrow it.") }</p>
                } else {
                    <ul class="further">
                        { for open.into_iter().map(|(check, href)| html! {
                            <li key={check.key}><a {href}><b>{ check.name() }</b><small>{ say!("{stage}, about {time}", stage = within(check.stage.name()), time = words::duration(f64::from(check.seconds))) }</small></a></li>
                        }) }
                    </ul>
                }
            </section>
        }
    }

    fn steps(&self) -> Html {
        let Seen { garment, behind, kind, price, .. } = *self;
        let check = {
            let garment = garment.clone();
            Callback::from(move |key: &'static str| {
                let check = garment.family().checks.iter().copied().find(|check| check.key == key)?;
                Some((check, AttrValue::from(Route::Check(garment.id().clone(), check.key.to_owned()).href())))
            })
        };
        html! {
            <section class="card">
                <h2>{ say!("What it is made up of, {currency}", currency = behind.currency().code()) }</h2>
                <p class="hint">{ say!("Each range holds four in five. Tap a part to see what moved it and what it rests on.") }</p>
                <BuildSteps build_up={behind.build_up.clone()} ticket={price} to_the_port={kind == PriceKind::Wholesale} {check} />
            </section>
        }
    }

    fn lessons(&self, taught: &Taught, garments: &[Rc<Garment>]) -> Html {
        let Seen { garment, behind, act, .. } = *self;
        let rows: Vec<Html> = behind
            .likely
            .lessons()
            .iter()
            .take(FEW)
            .filter_map(|lesson| {
                let id = taught.ids().get(lesson.reference)?;
                let other = garments.iter().find(|other| other.id() == id)?;
                let by = lesson.by.exp() - 1.0;
                let moved = match by {
                    by if by.abs() < 0.005 => say!("hardly moved the middle").to_owned(),
                    by if by > 0.0 => say!("moved the middle up by {share}", share = share(by)),
                    by => say!("moved the middle down by {share}", share = share(-by)),
                };
                let ticket = other.ticket_in_view().map_or(String::new(), |ticket| format!("{}, ", words::amount(ticket)));
                Some(html! {
                    <li key={id.as_str().to_owned()}><a href={Route::Ticket(id.clone()).href()}><b>{ other.called() }</b><small>{ format!("{ticket}{moved}") }</small></a></li>
                })
            })
            .collect();
        let count = taught.ids().len();
        let teaches = {
            let act = act.clone();
            Callback::from(move |event: Event| {
                act.emit(Act::Reference(event.target_dyn_into::<HtmlInputElement>().is_some_and(|field| field.checked())));
            })
        };
        let retail = garment.ticket_in_view().is_some_and(|ticket| ticket.kind == PriceKind::Retail);
        html! {
            <section class="card">
                <h2>{ say!("What other tickets taught") }</h2>
                <p class="hint">{ match count {
                    0 => say!("No other garment on your rack has a retail ticket in view. Until one has, the range rests on the make and on general rates.").to_owned(),
                    1 => say!("The range leans on one other ticket on your rack.").to_owned(),
                    count => say!("The range leans on {count} other tickets on your rack; those that moved it furthest first.", count),
                } }</p>
                if !rows.is_empty() {
                    <ul class="further">{ rows }</ul>
                }
                if retail && !garment.is_second_hand() {
                    <label class="tick"><input type="checkbox" checked={garment.is_reference()} onchange={teaches} /><span>{ say!("Learn from this garment’s ticket") }</span></label>
                }
            </section>
        }
    }
}

fn figures(what: &'static str, low: f64, middle: Option<f64>, high: f64, say: fn(f64) -> String) -> Html {
    html! {
        <tr><th scope="row">{ what }</th><td>{ say(low) }</td><td>{ middle.map_or_else(|| say!("no middle" | "none").to_owned(), say) }</td><td>{ say(high) }</td></tr>
    }
}

fn select(act: &Callback<Act>, make: fn(&str) -> Act) -> Callback<Event> {
    let act = act.clone();
    Callback::from(move |event: Event| {
        if let Some(field) = event.target_dyn_into::<HtmlSelectElement>() {
            act.emit(make(&field.value()));
        }
    })
}

/// Guesses so far, in the order in which they were made.
fn habit(garments: &[Rc<Garment>]) -> Habit {
    let mut reveals: Vec<(Day, &str, Reveal)> = garments
        .iter()
        .filter_map(|garment| reveal(garment).ok().map(|reveal| (reveal.made, garment.id().as_str(), reveal)))
        .collect();
    reveals.sort_by_key(|(made, id, _)| (*made, *id));
    Habit::of(&reveals.into_iter().map(|(_, _, reveal)| reveal).collect::<Vec<_>>())
}

/// Behind the ticket of one garment.
#[component]
pub fn BehindPage(props: &Props) -> Html {
    let Props { garment, garments, appraisals, pricing, rates, currency, today, can_take_back, send } = props;
    let id = garment.id().clone();
    let act = {
        let id = id.clone();
        send.reform(move |act: Act| Message::Done(id.clone(), act))
    };
    let take_back = {
        let id = id.clone();
        send.reform(move |_: MouseEvent| Message::TakeBack(id.clone()))
    };
    let heading = use_node_ref();
    let stands = use_mut_ref(|| None::<(bool, bool)>);
    {
        // A step forward leads to what it brought; undo leaves focus where it is.
        let (heading, stands) = (heading.clone(), stands.clone());
        use_effect_with((garment.guess().is_some(), garment.ticket_in_view().is_some()), move |(guessed, seen)| {
            let before = stands.borrow_mut().replace((*guessed, *seen));
            if before.is_some_and(|(guessed_before, seen_before)| *guessed && (!guessed_before || *seen && !seen_before)) {
                document::focus_part(&heading);
            }
        });
    }
    let redraw = use_force_update();
    // What was known before stays on the page until the new is there: a guess may be half-typed below it.
    let last = use_mut_ref(|| None::<Rc<Taught>>);
    let taught = pricing.taught(garments, rates, &id, move || redraw.force_update());
    let taught = match taught {
        Some(taught) => last.borrow_mut().insert(taught).clone().into(),
        None => last.borrow().clone(),
    };
    let behind = use_memo((garment.clone(), rates.clone(), taught.as_ref().map(Rc::as_ptr)), {
        let taught = taught.clone();
        move |(garment, ..)| taught.and_then(|taught| taught.behind(garment))
    });
    let peeked = use_state_eq(|| false);
    let peek = {
        let peeked = peeked.clone();
        Callback::from(move |_: MouseEvent| peeked.set(true))
    };
    let ticket = garment.ticket().filter(|ticket| ticket.minor > 0);
    let kind = ticket.map(|ticket| ticket.kind).or(garment.guess().map(|guess| guess.kind())).unwrap_or_default();
    // The tool's own range would lean on the guess that is to be made: it stays covered until that stands.
    let covered = ticket.is_some_and(|ticket| ticket.face_down) && garment.guess().is_none() && !*peeked;
    let guess_in = garment.ticket().map(|ticket| ticket.currency).or(garment.guess().map(|guess| guess.currency()));
    let guess_in = guess_in.or((*behind).as_ref().as_ref().map(|behind| behind.currency())).unwrap_or(*currency);
    let shown = (*behind).as_ref().as_ref().and_then(|behind| behind.shown(guess_in, kind));
    // A range for a new piece is no guess at a second-hand ticket, and is not scored as one.
    let shown = shown.filter(|_| !garment.is_second_hand());
    let guess = html! {
        <GuessCard garment={garment.clone()} currency={guess_in} {shown} today={*today} habit={habit(garments)} habit_href="#/guesses" heading={heading.clone()} act={act.clone()} />
    };
    let body = match (&taught, behind.as_ref()) {
        (None, _) => html! {
            <section class="card"><p role="status">{ say!("Working out what the other tickets taught …") }</p></section>
        },
        (_, None) => html! {
            <section class="card"><p>{ say!("Nobody has written yet what goes into a garment of this kind, so its ticket cannot be taken apart. A guess can still be made and held against it.") }</p></section>
        },
        (_, Some(_)) if covered => html! {
            <section class="card">
                <p>{ say!("The ticket lies face down, and what the app thinks likely stays covered until your guess stands.") }</p>
                <p><button type="button" class="ghost" onclick={peek}>{ say!("Show the likely range first") }</button></p>
            </section>
        },
        (Some(taught), Some(behind)) => {
            let in_view = garment.ticket_in_view().filter(|ticket| ticket.minor > 0 && ticket.currency == behind.currency());
            let price = in_view.map(|ticket| ticket.currency.whole(ticket.minor));
            let seen = Seen { garment, behind, kind, price, act: &act };
            let plan = act.reform(Act::Deal);
            let middle = behind.range(PriceKind::Retail).usual;
            let value = match (kind, price) {
                (PriceKind::Wholesale, Some(price)) => html! {
                    <OfferCard build_up={behind.build_up.clone()} {price} deal={*garment.deal()} {middle} {plan} />
                },
                (PriceKind::Wholesale, None) => Html::default(),
                // How often a new one is worn says nothing of one that was worn.
                (PriceKind::Retail, _) if garment.is_second_hand() => Html::default(),
                (PriceKind::Retail, _) => worth(garment, behind, price, middle, &appraisals.of(garment), plan),
            };
            html! {
                <>
                    { seen.picture() }
                    { seen.steps() }
                    { seen.narrowing() }
                    { seen.lessons(taught, garments) }
                    { value }
                </>
            }
        }
    };
    // The guess never changes its place under a hand: until it is known which, it has none.
    let first = covered || taught.is_some() && behind.is_none() || garment.guess().is_some();
    html! {
        <>
            <Bar title={say!("Behind the ticket")} under={garment.called().to_owned()} back={Route::Result(id.clone()).href()} back_name={say!("Back to the result")}>
                <button type="button" class="icon-button" onclick={take_back} disabled={!can_take_back} aria-label={say!("Undo")}><Icon shape={Shape::Undo} /></button>
            </Bar>
            if garment.is_second_hand() {
                <p class="why">{ said(NO_BUILD_UP) }{ " " }{ say!("Its ticket teaches nothing about new ones.") }</p>
            }
            if first {
                { guess.clone() }
            }
            { body }
            if !first && taught.is_some() {
                { guess }
            }
            <p class="lonely hint">{ say!("Prices, wages and shares behind this are expert judgement unless a source stands with them.") }{ " " }<a href={Route::Numbers.href()}>{ say!("Where the numbers come from") }</a></p>
            <div class="foot">
                <a class="prime" href={Route::Resume(id.clone()).href()}>{ say!("Go on checking") }</a>
                <a class="second" href={Route::Details(id).href()}>{ if garment.ticket().is_some() { say!("Change the ticket") } else { say!("Enter the ticket") } }</a>
            </div>
        </>
    }
}

fn worth(
    garment: &Garment,
    behind: &Behind,
    price: Option<f64>,
    middle: f64,
    appraisal: &Appraisal,
    plan: Callback<Deal>,
) -> Html {
    let Some(bill) = garment.family().bill else { return Html::default() };
    let planned = garment.deal().wears_a_year().map(|wears| Plan { a_month: f64::from(wears) / 12.0, years: bill.life.years });
    html! {
        <Value deal={*garment.deal()} wears={wears(garment, appraisal, planned)} currency={behind.currency()} price={price.unwrap_or(middle)}
            is_ticket={price.is_some()} {middle} wash_cost={bill.life.wash_cost * behind.exchange} years={bill.life.years} {plan} />
    }
}
