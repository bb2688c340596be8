//! Guesses at tickets: how each came out, and what habit shows in them once there are enough.

use std::rc::Rc;

use garment_assay::garment::Garment;
use garment_assay::language::one;
use garment_assay::quantity::{Decimal, written};
use garment_assay::rack::{Bias, Habit, HitRate, Range, Reveal, Score, Trend, Verdict, WhyNoScore, Width, reveal};
use garment_assay::say;
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::parts::bar::Bar;
use crate::app::route::Route;
use crate::app::steps::money;
use crate::app::words;

/// Before so many nothing is said of a habit, as the library has it.
const ENOUGH: usize = 5;
/// The picture reaches from a quarter of the ticket to four times it.
const REACH: f64 = 4.0;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Garments noted.
    pub garments: Vec<Rc<Garment>>,
}

/// Where a price lies across the picture, its ticket in the middle; on a logarithmic scale, so that half and double lie equally far.
fn across(log_price: f64, log_ticket: f64) -> f64 {
    let reach = REACH.ln();
    50.0 + ((log_price - log_ticket) / reach).clamp(-1.0, 1.0) * 48.0
}

fn strip(range: &Range, log_ticket: f64, class: &'static str, y: f64) -> Html {
    let at = |log: f64| across(log, log_ticket);
    html! {
        <>
            <path {class} d={format!("M{:.1} {y}H{:.1}", at(range.low()), at(range.high()).max(at(range.low()) + 1.0))} />
            <path class="guess-middle" d={format!("M{:.1} {}v6", at(range.middle()), y - 3.0)} />
        </>
    }
}

/// The person's range over the tool's, and the ticket as a line through both.
fn picture(reveal: &Reveal) -> Html {
    html! {
        <svg class="guess-bar" viewBox="0 0 100 22" aria-hidden="true" focusable="false" preserveAspectRatio="none">
            <path class="guess-grid" d={[0.25_f64, 0.5, 2.0, 4.0].map(|times| format!("M{:.1} 0v22", across(times.ln(), 0.0))).concat()} />
            <path class="guess-ticket" d="M50 0v22" />
            { strip(&reveal.yours, reveal.log_ticket, "guess-yours", 7.0) }
            if let Some((range, _)) = &reveal.tool {
                { strip(range, reveal.log_ticket, "guess-tool", 16.0) }
            }
        </svg>
    }
}

/// Where the ticket lay, in words.
fn came_out(range: &Range, log_ticket: f64) -> &'static str {
    if range.holds(log_ticket) {
        say!("of a ticket in a range" | "inside")
    } else if log_ticket > range.high() {
        say!("the ticket was dearer")
    } else {
        say!("the ticket was cheaper")
    }
}

fn guess_row(garment: &Rc<Garment>, reveal: &Reveal) -> Html {
    let name = garment.called();
    html! {
        <li key={garment.id().as_str().to_owned()} data-held={reveal.score.held.to_string()}>
            <a href={Route::Result(garment.id().clone()).href()}><b>{ name }</b><small>{ clock::written_day(reveal.made) }</small></a>
            { picture(reveal) }
            <small>{ came_out(&reveal.yours, reveal.log_ticket) }</small>
        </li>
    }
}

/// Whole per cents, from a difference of logarithms.
fn per_cent(log: f64) -> String {
    written((log.abs().exp() - 1.0) * 100.0, 0, Decimal::spoken())
}

fn bias_said(bias: &Bias) -> String {
    let (near, far) = (bias.low.abs().min(bias.high.abs()), bias.low.abs().max(bias.high.abs()));
    let (middle, least, most) = (per_cent(bias.mean), per_cent(near), per_cent(far));
    match (bias.mean > 0.0, bias.low * bias.high < 0.0) {
        (true, true) => say!(
            "You guess too low: tickets lie about {middle} per cent off the middle of your ranges, and it may be anything from hardly at all to {most} per cent.",
            middle,
            most
        ),
        (true, false) => say!(
            "You guess too low: tickets lie about {middle} per cent off the middle of your ranges, and it may be anything from {least} per cent to {most} per cent.",
            middle,
            least,
            most
        ),
        (false, true) => say!(
            "You guess too high: tickets lie about {middle} per cent off the middle of your ranges, and it may be anything from hardly at all to {most} per cent.",
            middle,
            most
        ),
        (false, false) => say!(
            "You guess too high: tickets lie about {middle} per cent off the middle of your ranges, and it may be anything from {least} per cent to {most} per cent.",
            middle,
            least,
            most
        ),
    }
}

fn width_said(width: &Width) -> String {
    let times = |times: f64| written(times, 1, Decimal::spoken());
    say!(
        "To hold four in five, your ranges would have to be {times} times as wide (between {low} and {high}).",
        times = times(width.middle),
        low = times(width.low),
        high = times(width.high)
    )
}

fn trend_said(trend: &Trend) -> &'static str {
    if trend.high < 0.0 {
        say!("Your last ten guesses were better than the ten before.")
    } else if trend.low > 0.0 {
        say!("Your last ten guesses were worse than the ten before.")
    } else {
        say!("Your last ten guesses and the ten before do not clearly differ.")
    }
}

/// How many more it takes.
fn until_enough(guesses: usize) -> String {
    match ENOUGH.saturating_sub(guesses) {
        0 => String::new(),
        more if one(more) => {
            say!("{count} more guess until anything can be said of your habit; about ten until much can.", count = more)
        }
        more => say!("{count} more guesses until anything can be said of your habit; about ten until much can.", count = more),
    }
}

/// Of so many so many inside, as a bar from 0 to all with the four in five that is meant.
fn share(rate: &HitRate) -> Html {
    let at = |share: f64| format!("{:.1}", 1.0 + share * 98.0);
    html! {
        <svg class="hit-bar" viewBox="0 0 100 22" aria-hidden="true" focusable="false" preserveAspectRatio="none">
            <rect class="tape-strip" x="1" y="1" width="98" height="8" />
            <path class="guess-ticket" d={format!("M{} 0v22", at(0.8))} />
            <path class="guess-yours" d={format!("M{} 16H{}", at(rate.low), at(rate.high))} />
            <path class="guess-middle" d={format!("M{} 12v8", at(rate.mean))} />
        </svg>
    }
}

fn habit_card(habit: &Habit, tool: Option<(usize, usize)>) -> Html {
    let rate = &habit.rate;
    let mut said: Vec<String> = Vec::new();
    match habit.verdict {
        Verdict::TooFew => said.push(until_enough(habit.guesses)),
        verdict => said.push(verdict.words().to_owned()),
    }
    if let (Verdict::TooNarrow | Verdict::Wider, Some(width)) = (habit.verdict, &habit.width) {
        said.push(width_said(width));
    }
    said.extend(habit.bias.as_ref().map(bias_said));
    said.extend(habit.trend.as_ref().map(|trend| trend_said(trend).to_owned()));
    let tool_said = match tool {
        None => say!("The tool said nothing beside these guesses.").to_owned(),
        Some((held, of)) => {
            let points = |lead: f64| written(lead * Score::POINTS, 0, Decimal::spoken());
            let record = say!("The tool’s own ranges, made before the ticket was seen, held {held} of {all}.", held, all = of);
            let lead = habit.lead.map(|lead| match lead {
                lead if lead > 0.0 => say!("On average you did better, by {points} points.", points = points(lead)),
                lead => say!("On average it did better, by {points} points.", points = points(-lead)),
            });
            match lead {
                Some(lead) => format!("{record} {lead}"),
                None => record,
            }
        }
    };
    html! {
        <section class="card">
            <h2>{ say!("Your habit") }</h2>
            <p class="figure">{ say!("{count} of {all} inside", count = rate.hits, all = habit.guesses) }<small>{ say!("A range that is meant to hold four in five should hold about that many.") }</small></p>
            { share(rate) }
            <p class="hint">{ say!("From this few it says: between {low} and {high} of tickets to come (80 %). The line stands at four in five.", low = words::percent(rate.low), high = words::percent(rate.high)) }</p>
            { for said.into_iter().map(|said| html! { <p key={said.clone()}>{ said }</p> }) }
            <h3>{ say!("The tool’s record") }</h3>
            <p>{ tool_said }</p>
        </section>
    }
}

fn numbers(rows: &[(Rc<Garment>, Reveal)]) -> Html {
    html! {
        <details class="card">
            <summary>{ say!("Numbers of each guess") }</summary>
            <div class="scroll-x" tabindex="0" role="region" aria-label={say!("Numbers of each guess")}>
                <table class="gap-table">
                    <thead><tr><th scope="col">{ say!("Garment") }</th><th scope="col">{ say!("Your range") }</th><th scope="col">{ say!("Ticket") }</th><th scope="col">{ say!("Points") }</th><th scope="col">{ say!("Tool’s range") }</th><th scope="col">{ say!("Its points") }</th></tr></thead>
                    <tbody>
                        { for rows.iter().filter_map(|(garment, reveal)| {
                            let ticket = garment.ticket()?;
                            let range = |range: &Range| format!("{} – {}", money(ticket.currency, range.low().exp()), money(ticket.currency, range.high().exp()));
                            let points = |points: f64| format!("{:.0}", points.max(0.0));
                            Some(html! {
                                <tr key={garment.id().as_str().to_owned()}>
                                    <th scope="row">{ garment.called() }</th>
                                    <td>{ range(&reveal.yours) }</td><td>{ words::amount(ticket) }</td><td>{ points(reveal.score.points) }</td>
                                    <td>{ reveal.tool.as_ref().map_or("–".to_owned(), |(tool, _)| range(tool)) }</td>
                                    <td>{ reveal.tool.as_ref().map_or("–".to_owned(), |(_, score)| points(score.points)) }</td>
                                </tr>
                            })
                        }) }
                    </tbody>
                </table>
            </div>
            <p class="hint">{ say!("Points: 100 for a range of no width about the ticket, 0 for one of no use. Whoever says what they believe does best on average (interval score, Gneiting and Raftery 2007).") }</p>
        </details>
    }
}

/// The page.
#[component]
pub fn Guesses(props: &Props) -> Html {
    let mut rows: Vec<(Rc<Garment>, Reveal)> = Vec::new();
    let (mut waiting, mut unlike) = (0_usize, 0_usize);
    for garment in &props.garments {
        match reveal(garment) {
            Ok(reveal) => rows.push((garment.clone(), reveal)),
            Err(WhyNoScore::NoGuess) => {}
            Err(WhyNoScore::NoTicket | WhyNoScore::FaceDown) => waiting += 1,
            Err(WhyNoScore::NotAlike) => unlike += 1,
        }
    }
    // By date; two of one day in the order in which the garments were begun, which their names keep.
    rows.sort_by(|(one, first), (other, second)| (first.made, one.id()).cmp(&(second.made, other.id())));
    let reveals: Vec<Reveal> = rows.iter().map(|(_, reveal)| *reveal).collect();
    let habit = Habit::of(&reveals);
    let tools: Vec<bool> = reveals.iter().filter_map(|reveal| reveal.tool.map(|(_, score)| score.held)).collect();
    let tool = (!tools.is_empty()).then(|| (tools.iter().filter(|held| **held).count(), tools.len()));
    let left_out = match (waiting, unlike) {
        (0, 0) => String::new(),
        (waiting, 0) => say!("{waiting} not turned over yet.", waiting),
        (0, unlike) => {
            say!("{count} left out: guess and ticket are in two currencies, or retail and wholesale.", count = unlike)
        }
        (waiting, unlike) => {
            say!("{waiting} not turned over yet, {count} left out: guess and ticket are not alike.", waiting, count = unlike)
        }
    };
    html! {
        <>
            <Bar title={say!("Your guesses")} under={match rows.len() { 0 => String::new(), count => say!("{count} turned over", count) }} back="#/" back_name={say!("Back to the rack")} />
            if rows.is_empty() {
                <section class="empty card">
                    <h2>{ say!("Guess before you look") }</h2>
                    <p>{ say!("Check a garment with its ticket face down. Then, on its ticket page, give a low and a high price between which the ticket lies four times in five, and turn it over. Each guess comes to stand here, and after five the page can say whether you are too sure, or too low.") }</p>
                    if !left_out.is_empty() {
                        <p>{ left_out }</p>
                    }
                    <p><a class="prime" href={Route::Start.href()}>{ say!("Check a garment") }</a></p>
                </section>
            } else {
                <section class="card">
                    <h2>{ say!("Each guess, the oldest first") }</h2>
                    <p class="hint">{ say!("Every ticket stands on the line in the middle. A bar to the left of it guessed too low, one to the right too high. The thin lines are a quarter, half, double and four times the ticket.") }</p>
                    <ul class="guesses">{ for rows.iter().map(|(garment, reveal)| guess_row(garment, reveal)) }</ul>
                    <p class="guess-key"><span class="key-yours">{ say!("a range" | "yours") }</span>{ " " }<span class="key-tool">{ say!("a range" | "the tool’s") }</span></p>
                    if !left_out.is_empty() {
                        <p class="hint">{ left_out }</p>
                    }
                </section>
                { habit_card(&habit, tool) }
                { numbers(&rows) }
            }
        </>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_and_double_lie_equally_far_from_the_ticket_and_nothing_leaves_the_picture() {
        let (half, double) = (across(50_f64.ln(), 100_f64.ln()), across(200_f64.ln(), 100_f64.ln()));
        assert!((50.0 - half - (double - 50.0)).abs() < 1e-9 && half < 50.0);
        assert_eq!(across(1e9_f64.ln(), 0.0), 98.0);
        assert_eq!(across(-1e9, 0.0), 2.0);
    }

    #[test]
    fn it_says_how_many_guesses_are_missing() {
        assert!(until_enough(0).starts_with("5 more guesses"));
        assert!(until_enough(4).starts_with("1 more guess until"));
        assert_eq!(until_enough(5), "");
    }

    #[test]
    fn the_library_stays_silent_as_long_as_the_page_counts_down() {
        let range = Range::of_prices(90.0, None, 110.0).expect("a range");
        let score = garment_assay::rack::Score::of(&range, 100_f64.ln()).expect("a score");
        let made = garment_assay::trade::Day::new(2026, 11, 25).expect("a day");
        let one = Reveal { made, log_ticket: 100_f64.ln(), yours: range, score, tool: None };
        assert_eq!(Habit::of(&vec![one; ENOUGH - 1]).verdict, Verdict::TooFew);
        assert_ne!(Habit::of(&vec![one; ENOUGH]).verdict, Verdict::TooFew);
    }
}
