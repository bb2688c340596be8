//! The build-up as steps: each part of the ticket starts where the one before ends; what is left of the ticket is the last.

use garment_assay::check::Check;
use garment_assay::cost::{BuildUp, Cost, Leg};
use garment_assay::language::within;
use garment_assay::say;
use garment_assay::source::Kind;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::money::{about, between, share};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The build-up.
    pub build_up: BuildUp,
    /// The ticket in its currency, where one is in view.
    #[prop_or_default]
    pub ticket: Option<f64>,
    /// Whether the way ends at the factory's port: an offer to a shop.
    #[prop_or_default]
    pub to_the_port: bool,
    /// Finds a check by its key, and the address of its screen.
    pub check: Callback<&'static str, Option<(&'static Check, AttrValue)>>,
}

/// Checks named in one line.
const FEW: usize = 4;

fn leg_class(leg: Leg) -> &'static str {
    match leg {
        Leg::Direct => "step-direct",
        Leg::Factory => "step-factory",
        Leg::Way => "step-way",
        Leg::Shop => "step-shop",
        Leg::Tax => "step-tax",
    }
}

fn bar(from: f64, to: f64, whole: f64, class: &'static str) -> Html {
    let along = |amount: f64| (amount / whole * 100.0).clamp(0.0, 100.0);
    let (left, right) = (along(from.min(to)), along(from.max(to)));
    html! {
        <svg class="step-bar" viewBox="0 0 100 14" aria-hidden="true" focusable="false" preserveAspectRatio="none">
            <path class="step-path" d="M0 13.500H100" />
            <rect {class} x={format!("{left:.2}")} y="2" width={format!("{:.2}", (right - left).max(0.8))} height="9" rx="0.600" />
        </svg>
    }
}

/// What stands behind one line: what moved it, what would narrow it, what it leans on.
fn behind(cost: &Cost, check: &Callback<&'static str, Option<(&'static Check, AttrValue)>>) -> Html {
    let links = |keys: &[&'static str]| {
        let found: Vec<_> = keys.iter().filter_map(|key| check.emit(key)).collect();
        let more = found.len().saturating_sub(FEW);
        let links = found
            .into_iter()
            .take(FEW)
            .enumerate()
            .map(|(place, (check, href))| html! { <>{ if place > 0 { ", " } else { "" } }<a {href}>{ check.name() }</a></> })
            .collect::<Html>();
        html! { <>{ links }{ if more > 0 { format!(", {}", say!("and {count} more", count = more)) } else { String::new() } }</> }
    };
    let judged = cost.sources.iter().all(|source| source.kind == Kind::Judgement);
    let sources: Vec<&str> = cost.sources.iter().map(|source| source.name()).collect();
    html! {
        <div class="step-behind">
            if !cost.moved_by.is_empty() {
                <p>{ say!("Moved by:") }{ " " }{ links(&cost.moved_by) }{ "." }</p>
            }
            if !cost.open.is_empty() {
                <p>{ say!("Would narrow it:") }{ " " }{ links(&cost.open) }{ "." }</p>
            }
            if !cost.shares().is_empty() {
                <p>{ say!("Moves together with other parts by: {parts}.", parts = cost.shares().iter().map(|share| within(share)).collect::<Vec<_>>().join(", ")) }</p>
            }
            if !cost.edited.is_empty() {
                <p><b>{ say!("Changed by you:") }{ " " }</b>{ format!("{}.", cost.edited.iter().map(|rate| rate.name()).collect::<Vec<_>>().join(", ")) }</p>
            }
            if !sources.is_empty() {
                <p>{ if judged { say!("Rests on judgement:") } else { say!("Rests on:") } }{ format!(" {}.", sources.join("; ")) }
                    if let Some(day) = cost.as_of { { format!(" {}", say!("As of {day}.", day = clock::written_day(day))) } }</p>
            }
        </div>
    }
}

/// The steps, and the same as a table on demand.
#[component]
pub fn BuildSteps(props: &Props) -> Html {
    let Props { build_up, ticket, to_the_port, check } = props;
    let lines: Vec<&Cost> =
        build_up.lines().iter().filter(|cost| !to_the_port || matches!(cost.leg, Leg::Direct | Leg::Factory)).collect();
    let currency = build_up.currency();
    let total = if *to_the_port { build_up.totals().factory_price } else { build_up.ticket() };
    let sum: f64 = lines.iter().map(|cost| cost.amount.mean()).sum();
    // Middles do not add up, averages do: the middle of the whole is shared out as the averages are.
    let part = |cost: &Cost| if sum > 0.0 { cost.amount.mean() / sum } else { 0.0 };
    let middle = total.median();
    let whole = middle.max(ticket.unwrap_or_default()).max(f64::MIN_POSITIVE);
    let name = if *to_the_port { say!("What the offer is made up of") } else { say!("What the ticket is made up of") };
    let said = lines.iter().map(|cost| format!("{} {}", cost.name(), about(part(cost) * middle))).collect::<Vec<_>>().join(", ");
    let mut at = 0.0;
    let left = ticket.map(|ticket| ticket - middle);
    let left_word =
        if left.is_some_and(|left| left < 0.0) { say!("Less than the make comes to") } else { say!("Not explained by the make") };
    let left_said = left.zip(*ticket).map(|(left, ticket)| {
        let ends = total.range();
        let (less, more) = (ticket - ends.high, ticket - ends.low);
        if left < 0.0 { between(-more, -less) } else { between(less, more) }
    });
    html! {
        <>
            <p class="unseen" role="img" aria-label={say!("{name}, step by step in {currency}: {parts}; together {amount}.", name, currency = currency.code(), parts = said, amount = about(middle))}></p>
            <ul class="steps-up">
                { for lines.iter().map(|cost| {
                    let from = at;
                    at += part(cost) * middle;
                    let ends = cost.amount.range();
                    html! {
                        <li key={cost.key}>
                            <details>
                                <summary>
                                    <span class="step-name">{ cost.name() }
                                        if !cost.edited.is_empty() { <small class="changed">{ " " }{ say!("changed by you") }</small> }
                                    </span>
                                    { bar(from, at, whole, leg_class(cost.leg)) }
                                    <span class="step-range">{ between(ends.low, ends.high) }</span>
                                </summary>
                                { behind(cost, check) }
                            </details>
                        </li>
                    }
                }) }
                <li class="step-total">
                    <span class="step-name">{ if *to_the_port { say!("Together, at the port") } else { say!("Together, by the make") } }</span>
                    { bar(0.0, middle, whole, "step-together") }
                    <span class="step-range">{ { let ends = total.range(); between(ends.low, ends.high) } }</span>
                </li>
                if let (Some(ticket), Some(said)) = (ticket, &left_said) {
                    <li class="step-total">
                        <span class="step-name">{ left_word }</span>
                        { bar(middle, *ticket, whole, "step-left") }
                        <span class="step-range">{ said }</span>
                    </li>
                }
            </ul>
            <details class="meaning">
                <summary>{ say!("The same as a table") }</summary>
                <div class="scroll-x" tabindex="0" role="region" aria-label={name}>
                    <table class="plain-table">
                        <caption class="unseen">{ name }</caption>
                        <thead><tr><th scope="col">{ say!("of the build-up" | "Part") }</th><th scope="col">{ say!("Usual") }</th><th scope="col">{ say!("Four in five") }</th><th scope="col">{ say!("of the whole" | "Share") }</th></tr></thead>
                        <tbody>
                            { for lines.iter().map(|cost| html! {
                                <tr key={cost.key}>
                                    <th scope="row">{ cost.name() }</th>
                                    <td>{ about(cost.amount.median()) }</td>
                                    <td>{ { let ends = cost.amount.range(); between(ends.low, ends.high) } }</td>
                                    <td>{ if part(cost) < 0.005 { say!("under 1 %").to_owned() } else { share(part(cost)) } }</td>
                                </tr>
                            }) }
                            <tr>
                                <th scope="row">{ say!("Together") }</th>
                                <td>{ about(middle) }</td>
                                <td>{ { let ends = total.range(); between(ends.low, ends.high) } }</td>
                                <td>{ share(1.0) }</td>
                            </tr>
                        </tbody>
                    </table>
                </div>
                <p class="hint">{ say!("Amounts in {currency}. Each range is that of the part alone: ends do not add up, because not all parts are dear at once. Bars share out the middle of the whole.", currency = currency.code()) }</p>
            </details>
        </>
    }
}
