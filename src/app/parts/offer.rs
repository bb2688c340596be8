//! An offer to a shop: what it comes to once landed, against the retail ticket that is to be put on it.

use garment_assay::cost::{BuildUp, DutyBase, Offer};
use garment_assay::garment::Deal;
use garment_assay::quantity::{Decimal, written};
use garment_assay::say;
use garment_assay::trade::{Currency, PriceKind, Ticket};
use yew::prelude::*;

use super::ticket::Draft;
use super::typed::Typed;
use super::value::count;
use crate::app::money::{about, exact, share};

/// Margins for which the ticket is named. Common practice, no source.
const MARGINS: [f64; 3] = [0.5, 0.6, 0.65];
/// Most pieces of a smallest order that are taken.
const MOST_PIECES: u32 = 1_000_000;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The build-up, for freight, duty, fees and tax.
    pub build_up: BuildUp,
    /// The price offered, in the currency of the build-up.
    pub price: f64,
    /// What the person means to ask and to order.
    pub deal: Deal,
    /// The middle of what shoppers are likely asked, taken while no retail ticket is set.
    pub middle: f64,
    /// Called with another plan.
    pub plan: Callback<Deal>,
}

fn target_text(deal: &Deal, currency: Currency) -> String {
    let ticket = |minor| Ticket { minor, currency, kind: PriceKind::Retail, face_down: false };
    deal.target().map_or(String::new(), |minor| Draft::of(&ticket(minor)).amount)
}

/// The card.
#[component]
pub fn OfferCard(props: &Props) -> Html {
    let Props { build_up, price, deal, middle, plan } = props;
    let (currency, deal) = (build_up.currency(), *deal);
    let offer: Offer = build_up.offer(*price, deal.minimum().unwrap_or_default());
    let tax = build_up.tax_inside();
    let ticket = deal.target().map_or(*middle, |minor| currency.whole(minor));
    let target = {
        let plan = plan.clone();
        Callback::from(move |amount: String| {
            let ticket = Draft { amount, ..Draft::empty(currency) }.ticket()?;
            plan.emit(deal.with_target(ticket.map(|ticket| ticket.minor)));
            Ok(())
        })
    };
    let minimum = {
        let plan = plan.clone();
        Callback::from(move |text: String| count(&text, MOST_PIECES).map(|pieces| plan.emit(deal.with_minimum(pieces))))
    };
    let tickets = MARGINS.iter().filter_map(|margin| Some((share(*margin), offer.ticket_for(*margin, tax).ok()?)));
    html! {
        <section class="card">
            <h2>{ say!("The offer, for a shop") }</h2>
            <div class="field-pair">
                <Typed id="target" label={say!("Retail ticket, {currency}", currency = currency.code())} kept={target_text(&deal, currency)} write={target}
                    hint={if deal.target().is_none() { say!("Empty: {amount} is taken, the middle of what is likely.", amount = about(*middle)) } else { String::new() }} />
                <Typed id="minimum" label={say!("Smallest order, pieces")} kept={deal.minimum().map_or(String::new(), |pieces| pieces.to_string())} write={minimum} />
            </div>
            { match offer.against(ticket, tax) {
                Err(fault) => html! { <p class="fault">{ fault.to_string() }</p> },
                Ok(view) => html! {
                    <>
                        <dl class="figures">
                            <div><dt>{ say!("Landed") }</dt><dd>{ exact(currency, view.landed) }</dd></div>
                            <div><dt>{ say!("Margin") }</dt><dd>{ share(view.margin) }<small>{ " " }{ say!("of the price") }</small></dd></div>
                            <div><dt>{ say!("Mark-up") }</dt><dd>{ share(view.markup) }<small>{ " " }{ say!("on cost, × {multiple}", multiple = written(view.multiple, 2, Decimal::spoken())) }</small></dd></div>
                        </dl>
                        <table class="plain-table">
                            <caption class="unseen">{ say!("From offer to margin") }</caption>
                            <tbody>
                                { row(say!("Offer, at the factory’s port"), exact(currency, offer.price)) }
                                { row(say!("Freight"), exact(currency, offer.freight)) }
                                { row(&duty(&offer),
                                    exact(currency, view.landed - offer.price - offer.freight - offer.fee_rate * offer.price)) }
                                { row(say!("Entry fees"), exact(currency, offer.fee_rate * offer.price)) }
                                { row(say!("Landed"), exact(currency, view.landed)) }
                                { row(if tax > 0.0 { say!("Retail price without tax") } else { say!("Retail price; tax comes at the till") }, exact(currency, view.before_tax)) }
                                { row(say!("Stays with the shop, a piece"), exact(currency, view.stays)) }
                                if deal.minimum().is_some() {
                                    { row(say!("Bound in the smallest order"), exact(currency, view.smallest_order)) }
                                }
                                if let Some(pieces) = view.pays_after {
                                    { row(say!("Pieces to sell at full price until it is paid"), pieces.to_string()) }
                                }
                            </tbody>
                        </table>
                    </>
                },
            } }
            <p>{ say!("Ticket for a margin of {tickets}.", tickets = tickets.map(|(margin, ticket)| format!("{margin}: {}", exact(currency, ticket))).collect::<Vec<_>>().join(", ")) }</p>
            <p class="hint">{ say!("Freight, duty and fees are the averages of the rates. Duty may be nothing or more than this: it hangs on fibre and country.") }</p>
        </section>
    }
}

/// The line of the duty: how much, on what.
fn duty(offer: &Offer) -> String {
    let share = percent1(offer.duty_rate);
    if offer.base == DutyBase::WithFreight {
        say!("Duty, {share} on offer and freight", share)
    } else {
        say!("Duty, {share} on the offer", share)
    }
}

fn row(name: &str, amount: String) -> Html {
    html! { <tr><th scope="row">{ name.to_owned() }</th><td>{ amount }</td></tr> }
}

/// A share with one decimal.
fn percent1(share: f64) -> String {
    format!("{} %", written(share * 100.0, 1, Decimal::spoken()))
}
