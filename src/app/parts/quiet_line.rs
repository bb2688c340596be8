//! A line at the head of a screen about a newer version, the browser's promise or an export: to be answered or left.

use garment_assay::notebook::Unheld;
use yew::prelude::*;

use crate::app::standing::{Line, Step};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What it is about.
    pub line: Line,
    /// Where steps go.
    pub step: Callback<Step>,
}

fn in_no_file(Unheld { count, days }: Unheld) -> String {
    let since = match days {
        ..=1 => String::new(),
        days => format!(" The first was noted {days} days ago."),
    };
    let which = if count == 1 { "1 garment is".to_owned() } else { format!("{count} garments are") };
    format!("{which} in this browser only, which may throw away what it keeps.{since} Export a copy?")
}

/// The line. Nothing happens unless it is answered.
#[component]
pub fn QuietLine(props: &Props) -> Html {
    let on = |step: Step| props.step.reform(move |_: MouseEvent| step.clone());
    let (text, answers) = match props.line {
        Line::Newer => (
            "A newer version is ready.".to_owned(),
            html! { <>
                <button type="button" class="second" onclick={on(Step::TakeNewer)}>{ "Use it now" }</button>
                <button type="button" class="ghost" onclick={on(Step::LeaveNewer)}>{ "Later" }</button>
            </> },
        ),
        Line::TakenElsewhere => (
            "Another window uses a newer version. This one goes on as it was; load it again when you are done here.".to_owned(),
            html! { <button type="button" class="second" onclick={on(Step::Reload)}>{ "Load it again" }</button> },
        ),
        Line::AskPromise => (
            "What you note lies in this browser only, which may throw it away when room runs short. It can promise to keep it, and may ask you first.".to_owned(),
            html! { <>
                <button type="button" class="second" onclick={on(Step::AskPromise)}>{ "Ask it to keep my notes" }</button>
                <button type="button" class="ghost" onclick={on(Step::LeavePromise)}>{ "No" }</button>
            </> },
        ),
        Line::Remind(unheld) => (
            in_no_file(unheld),
            html! { <>
                <a class="second" href="#/settings">{ "Export" }</a>
                <button type="button" class="ghost" onclick={on(Step::PutOff)}>{ "Not now" }</button>
            </> },
        ),
    };
    html! {
        <section class="quiet-line" aria-label="About your notes and this app">
            <p role="status">{ text }</p>
            <div class="quiet-answers">{ answers }</div>
        </section>
    }
}
