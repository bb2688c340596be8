//! The gap between two tickets as steps that lead from the one to the other.

use garment_assay::rack::TicketGap;
use yew::prelude::*;

use crate::app::steps::{Step, money, plain, signed, steps, with_spread};

/// Steps shown by themselves; smaller ones go together until the numbers are asked for.
const FEW: usize = 6;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The gap.
    pub found: TicketGap,
    /// The garment it starts from.
    pub from: String,
    /// The garment it leads to.
    pub to: String,
}

/// What the gap is, in a sentence or two.
fn said(found: &TicketGap, shown: &[Step]) -> String {
    let code = found.currency.code();
    let gap = found.gap.gap;
    if gap.abs() < 0.005 {
        return "Both tickets ask the same.".to_owned();
    }
    let rest = shown.last().map_or(0.0, |step| step.amount);
    let spread = shown.last().map_or(0.0, |step| step.spread);
    let explained = gap - rest;
    let more = if gap > 0.0 { "more" } else { "less" };
    format!(
        "The second asks {} {more}. What you checked accounts for {code} {} of that, and {code} {} is not explained: name, design, season.",
        money(found.currency, gap.abs()),
        signed(explained, spread),
        signed(rest, spread),
    )
}

/// A ticket, or a step, as a line of the picture.
fn bar(along: impl Fn(f64) -> f64, from: f64, to: f64, class: &'static str) -> Html {
    let (left, right) = (along(from.min(to)), along(from.max(to)));
    let (mid, width) = (along(from), (right - left).max(0.8));
    html! {
        <svg class="step-bar" viewBox="0 0 100 20" aria-hidden="true" focusable="false" preserveAspectRatio="none">
            if class == "step-ticket" {
                <path class="step-ticket" d={format!("M{mid:.1} 0v20")} />
            } else {
                <rect {class} x={format!("{left:.1}")} y="3" width={format!("{width:.1}")} height="14" rx="1" />
                <path class="step-edge" d={format!("M{:.1} 3v17", along(to))} />
            }
        </svg>
    }
}

/// The picture, its words, and the numbers on demand.
#[component]
pub fn Steps(props: &Props) -> Html {
    let Props { found, from, to } = props;
    let shown = steps(found, FEW);
    let every = steps(found, usize::MAX - 1);
    let ends = shown.iter().flat_map(|step| [step.from, step.to]).chain([found.first, found.second]);
    let (low, high) = ends.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)));
    let whole = (high - low).max(1e-9);
    let along = |at: f64| 2.0 + (at - low) / whole * 96.0;
    let vague = shown.iter().any(|step| !step.is_clear());
    let class = |step: &Step| match (step.rest, step.is_clear(), step.amount >= 0.0) {
        (true, ..) => "step-rest",
        (_, false, _) => "step-vague",
        (.., true) => "step-up",
        (.., false) => "step-down",
    };
    let code = found.currency.code();
    html! {
        <>
            <p>{ said(found, &shown) }</p>
            <ol class="steps">
                <li><b>{ from }</b>{ bar(along, found.first, found.first, "step-ticket") }<span>{ money(found.currency, found.first) }</span></li>
                { for shown.iter().map(|step| html! {
                    <li key={step.name.clone()}>
                        <span class="step-name">{ &step.name }if !step.is_clear() { <small>{ " uncertain" }</small> }</span>
                        { bar(along, step.from, step.to, class(step)) }
                        <span>{ signed(step.amount, step.spread) }</span>
                    </li>
                }) }
                <li><b>{ to }</b>{ bar(along, found.second, found.second, "step-ticket") }<span>{ money(found.currency, found.second) }</span></li>
            </ol>
            if vague {
                <p class="hint">{ "Outlined steps are smaller than their own spread: they may be nothing." }</p>
            }
            <details class="meaning">
                <summary>{ "Numbers" }</summary>
                <div class="scroll-x" tabindex="0" role="region" aria-label="Numbers of the gap">
                    <table class="steps-table">
                        <thead><tr><th scope="col">{ "What differs" }</th><th scope="col">{ format!("{code}, ± one standard deviation") }</th></tr></thead>
                        <tbody>
                            { for every.iter().map(|step| html! {
                                <tr key={step.name.clone()}><th scope="row">{ &step.name }</th><td>{ with_spread(step.amount, step.spread) }</td></tr>
                            }) }
                            <tr><th scope="row">{ "Together: the gap" }</th><td>{ plain(found.gap.gap, 0.0) }</td></tr>
                        </tbody>
                    </table>
                </div>
                <p>{ "Each ticket is taken as a product of what goes into it, and the gap is shared out by how much each factor differs (additive log-mean Divisia). Shares and rest sum to the gap to the last cent; rounded to what they deserve, as here, they may miss it by a little. The rates behind it are judgement." }</p>
            </details>
        </>
    }
}
