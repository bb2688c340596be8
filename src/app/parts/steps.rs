//! The gap between two tickets as steps that lead from the one to the other.

use garment_assay::language;
use garment_assay::rack::TicketGap;
use garment_assay::say;
use yew::prelude::*;

use crate::app::steps::{Step, about, money, plain, signed, steps, with_spread};

/// Steps shown by themselves; smaller ones go together until the numbers are asked for.
const FEW: usize = 6;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The gap.
    pub found: TicketGap,
    /// Letter and name of the garment it starts from.
    pub from: (&'static str, String),
    /// Those of the garment it leads to.
    pub to: (&'static str, String),
    /// Whether the first or the second ticket was brought from another currency, and is known no better than the exchange.
    pub converted: [bool; 2],
}

/// What the gap is, in a sentence or two; `tell` says an amount.
fn said(found: &TicketGap, shown: &[Step], [from, to]: [&str; 2], tell: impl Fn(f64) -> String) -> String {
    let gap = found.gap.gap;
    let (rest, spread) = shown.last().map_or((0.0, 0.0), |step| (step.amount, step.spread));
    let explained = gap - rest;
    let about = |amount: f64| language::money(found.currency.code(), plain(amount.abs(), spread));
    let (amount, left) = (about(explained), about(rest));
    if gap.abs() < 0.005 {
        let same = say!("{from} and {to} ask the same.", from, to);
        let make = if explained > 0.0 {
            say!("By what you checked {to} would be about {amount} dearer.", to, amount)
        } else {
            say!("By what you checked {to} would be about {amount} cheaper.", to, amount)
        };
        return format!("{same} {make}");
    }
    let first = if gap > 0.0 {
        say!("{to} asks {amount} more than {from}.", to, from, amount = tell(gap.abs()))
    } else {
        say!("{to} asks {amount} less than {from}.", to, from, amount = tell(gap.abs()))
    };
    let then = if found.gap.shares.is_empty() {
        say!("Nothing that you checked tells them apart in cost, so all of it is not explained: name, design, season.").to_owned()
    } else if explained * gap >= 0.0 && rest * gap >= 0.0 {
        say!(
            "What you checked accounts for about {amount} of that. About {rest} is not explained: name, design, season.",
            amount,
            rest = left
        )
    } else if explained > 0.0 {
        say!(
            "By what you checked alone it would be about {amount} dearer. The rest, about {rest} the other way, is not explained: name, design, season.",
            amount,
            rest = left
        )
    } else {
        say!(
            "By what you checked alone it would be about {amount} cheaper. The rest, about {rest} the other way, is not explained: name, design, season.",
            amount,
            rest = left
        )
    };
    format!("{first} {then}")
}

/// A ticket, or a step, as a line of the picture.
fn bar(along: impl Fn(f64) -> f64, from: f64, to: f64, class: &'static str) -> Html {
    let (left, right) = (along(from.min(to)), along(from.max(to)));
    let (mid, width) = (along(from), (right - left).max(0.8));
    html! {
        <svg class="gap-bar" viewBox="0 0 100 20" aria-hidden="true" focusable="false" preserveAspectRatio="none">
            if class == "gap-ticket" {
                <path class="gap-ticket" d={format!("M{mid:.1} 0v20")} />
            } else {
                <rect {class} x={format!("{left:.1}")} y="3" width={format!("{width:.1}")} height="14" rx="1" />
                <path class="gap-edge" d={format!("M{:.1} 3v17", along(to))} />
            }
        </svg>
    }
}

/// The picture, its words, and the numbers on demand.
#[component]
pub fn Steps(props: &Props) -> Html {
    let Props { found, from, to, converted } = props;
    let said_as = |amount: f64, converted: bool| {
        if converted { say!("about {amount}", amount = about(found.currency, amount)) } else { money(found.currency, amount) }
    };
    let any = converted[0] || converted[1];
    let tell = |amount: f64| said_as(amount, any);
    let shown = steps(found, FEW);
    let every = steps(found, usize::MAX - 1);
    let ends = shown.iter().flat_map(|step| [step.from, step.to]).chain([found.first, found.second]);
    let (low, high) = ends.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)));
    let whole = (high - low).max(1e-9);
    let along = |at: f64| 2.0 + (at - low) / whole * 96.0;
    let vague = shown.iter().any(|step| !step.is_clear());
    let class = |step: &Step| match (step.rest, step.is_clear(), step.amount >= 0.0) {
        (true, ..) => "gap-rest",
        (_, false, _) => "gap-vague",
        (.., true) => "gap-up",
        (.., false) => "gap-down",
    };
    let code = found.currency.code();
    html! {
        <>
            <p>{ said(found, &shown, [from.0, to.0], tell) }</p>
            <ol class="gap-steps">
                <li><b>{ format!("{}: {}", from.0, from.1) }</b>{ bar(along, found.first, found.first, "gap-ticket") }<span>{ said_as(found.first, converted[0]) }</span></li>
                { for shown.iter().map(|step| html! {
                    <li key={step.name.clone()}>
                        <span class="gap-name">{ &step.name }if !step.is_clear() { <small>{ " " }{ say!("uncertain") }</small> }</span>
                        { bar(along, step.from, step.to, class(step)) }
                        <span>{ signed(step.amount, step.spread) }</span>
                    </li>
                }) }
                <li><b>{ format!("{}: {}", to.0, to.1) }</b>{ bar(along, found.second, found.second, "gap-ticket") }<span>{ said_as(found.second, converted[1]) }</span></li>
            </ol>
            if vague {
                <p class="hint">{ say!("Outlined steps are smaller than their own spread: they may be nothing.") }</p>
            }
            <details class="meaning">
                <summary>{ say!("Numbers") }</summary>
                <div class="scroll-x" tabindex="0" role="region" aria-label={say!("Numbers of the gap")}>
                    <table class="gap-table">
                        <thead><tr><th scope="col">{ say!("What differs") }</th><th scope="col">{ say!("{currency}, ± one standard deviation", currency = code) }</th></tr></thead>
                        <tbody>
                            { for every.iter().map(|step| html! {
                                <tr key={step.name.clone()}><th scope="row">{ &step.name }</th><td>{ with_spread(step.amount, step.spread) }</td></tr>
                            }) }
                            <tr><th scope="row">{ say!("Together: the gap") }</th><td>{ if any { tell(found.gap.gap.abs()) } else { plain(found.gap.gap, 0.0) } }</td></tr>
                        </tbody>
                    </table>
                </div>
                <p>{ say!("Each ticket is taken as a product of what goes into it, and the gap is shared out by how much each factor differs (additive log-mean Divisia). Shares and rest sum to the gap to the last cent; rounded to what they deserve, as here, they may miss it by a little. The rates behind it are judgement.") }</p>
            </details>
        </>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::rack::{GapShare, gap};
    use garment_assay::trade::Currency;

    fn words(second: f64, shares: &[f64]) -> String {
        let share = |amount: &f64| GapShare { name: "cloth".to_owned(), amount: *amount, spread: 3.0 };
        let gap = gap(50.0, second, shares.iter().map(share)).expect("numbers");
        let found = TicketGap { currency: Currency::Eur, first: 50.0, second, gap };
        // A code and its amount stay on one line.
        said(&found, &steps(&found, FEW), ["A", "B"], |amount| money(found.currency, amount)).replace('\u{a0}', " ")
    }

    #[test]
    fn the_sentence_says_which_way_what_was_checked_and_what_was_not_explained_work() {
        assert!(
            words(90.0, &[30.0])
                .starts_with("B asks EUR 40 more than A. What you checked accounts for about EUR 30 of that. About EUR 10")
        );
        assert!(
            words(20.0, &[-20.0]).starts_with("B asks EUR 30 less than A. What you checked accounts for about EUR 20 of that.")
        );
        assert!(words(60.0, &[-30.0]).contains("it would be about EUR 30 cheaper. The rest, about EUR 40 the other way"));
        assert!(words(60.0, &[30.0]).contains("it would be about EUR 30 dearer. The rest, about EUR 20 the other way"));
        assert!(words(50.0, &[30.0]).contains("ask the same. By what you checked B would be about EUR 30 dearer"));
        assert!(words(60.0, &[]).contains("all of it is not explained"));
    }
}
