//! What a garment is worth to who wears it: wearings, what one costs, and from how many on it costs no more than another.

use garment_assay::cost::{Outlay, Wears, break_even};
use garment_assay::garment::Deal;
use garment_assay::quantity::{Amount, Decimal, Unit, read, written};
use garment_assay::say;
use garment_assay::trade::Currency;
use yew::prelude::*;

use super::typed::Typed;
use crate::app::money::{about, between, range, sum};
use crate::app::words::percent;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What the person means to do with it.
    pub deal: Deal,
    /// Its wearings by that plan; none where they cannot be said.
    pub wears: Option<Wears>,
    /// Currency of the amounts.
    pub currency: Currency,
    /// What it costs: the ticket, or the middle of what is likely.
    pub price: f64,
    /// Whether that price is the ticket.
    pub is_ticket: bool,
    /// The middle of what is likely.
    pub middle: f64,
    /// One wash.
    pub wash_cost: f64,
    /// Years for which people keep such a piece.
    pub years: f64,
    /// Called with another plan.
    pub plan: Callback<Deal>,
}

/// A whole number above nothing; none for an empty field.
pub fn count(text: &str, most: u32) -> Result<Option<u32>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    match read(text.trim(), Unit::Count, Decimal::spoken()) {
        Ok(Amount { number, .. }) if number >= 1.0 && number <= f64::from(most) && number.fract() == 0.0 => {
            Ok(Some(number as u32))
        }
        _ => Err(say!("Type a whole number from 1 to {most}, or nothing.", most)),
    }
}

/// The card.
#[component]
pub fn Value(props: &Props) -> Html {
    let Props { deal, wears, currency, price, is_ticket, middle, wash_cost, years, plan } = props;
    let write = {
        let (deal, plan) = (*deal, plan.clone());
        Callback::from(move |text: String| count(&text, Deal::MOST_WEARS).map(|wears| plan.emit(deal.with_wears(wears))))
    };
    let outlay = |price: f64| Outlay { price, wash_cost: *wash_cost, ..Outlay::default() };
    html! {
        <section class="card">
            <h2>{ say!("What it is worth to you") }</h2>
            <Typed id="wears-a-year" label={say!("How often a year you would wear it")} kept={deal.wears_a_year().map_or(String::new(), |wears| wears.to_string())}
                hint={say!("Leave it empty to count what the cloth lasts.")} {write} />
            if let Some(wears) = wears {
                <dl class="figures">
                    <div><dt>{ say!("Worn in all") }</dt><dd>{ { let ends = wears.range(); between(ends.low, ends.high) } }<small>{ " " }{ say!("times") }</small></dd></div>
                    <div><dt>{ say!("One wearing") }</dt><dd>{ range(*currency, &wears.cost(&outlay(*price))) }</dd></div>
                    <div><dt>{ say!("Middle of likely") }</dt><dd>{ sum(*currency, *middle) }</dd></div>
                </dl>
                <p class="hint">{ say!("Four in five lie between these ends.") }{ " " }{ counted(*is_ticket, deal.wears_a_year().map(|_| *years)) }</p>
                if *is_ticket {
                    <p>{ even(wears, &outlay(*price), &outlay(*middle), *currency) }</p>
                }
                <p class="hint">{ say!("How long it lasts hangs on use and washing more than on price: in a university test of 65 garments, price did not tell which lasted.") }</p>
            }
        </section>
    }
}

/// What was counted: with which price, and for how many years where wearings a year were said.
fn counted(is_ticket: bool, years: Option<f64>) -> String {
    let years = years.map(|years| written(years, 0, Decimal::spoken()));
    match (is_ticket, years) {
        (true, None) => say!("Washing is counted; the price is the ticket.").to_owned(),
        (true, Some(years)) => {
            say!("Washing is counted; the price is the ticket; kept {years} years, as people do.", years)
        }
        (false, None) => {
            say!("Washing is counted; the price is the middle of the likely range, for want of a ticket.").to_owned()
        }
        (false, Some(years)) => say!(
            "Washing is counted; the price is the middle of the likely range, for want of a ticket; kept {years} years, as people do.",
            years
        ),
    }
}

/// From how many wearings on it costs no more each time than one at the middle of what is likely.
fn even(wears: &Wears, own: &Outlay, other: &Outlay, currency: Currency) -> String {
    let usual = wears.cost(other).usual;
    match break_even(own.price, wears.care(own), usual) {
        Some(wearings) => say!(
            "Worn {count} times or more it costs no more each time than one at the middle of the likely range ({amount} a wearing). The chance of that is {chance}.",
            count = about(wearings),
            amount = sum(currency, usual),
            chance = percent(wears.reaches(wearings))
        ),
        None => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_count_is_whole_and_above_nothing() {
        assert_eq!(count(" 60 ", 366), Ok(Some(60)));
        assert_eq!(count("", 366), Ok(None));
        for text in ["0", "-3", "1.5", "367", "often"] {
            assert!(count(text, 366).is_err(), "{text}");
        }
    }
}
