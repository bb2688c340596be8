//! A line at the head of a screen about a newer version, the browser's promise or an export: to be answered or left.

use garment_assay::language::one;
use garment_assay::notebook::Unheld;
use garment_assay::say;
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
    let which = if one(count) {
        say!("{count} garment is in this browser only, which may throw away what it keeps.", count)
    } else {
        say!("{count} garments are in this browser only, which may throw away what it keeps.", count)
    };
    let since = (days > 1).then(|| say!("The first was noted {count} days ago.", count = days));
    [Some(which), since, Some(say!("Export a copy?").to_owned())].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// The line. Nothing happens unless it is answered.
#[component]
pub fn QuietLine(props: &Props) -> Html {
    let on = |step: Step| props.step.reform(move |_: MouseEvent| step.clone());
    let (text, answers) = match props.line {
        Line::Newer => (
            say!("A newer version is ready.").to_owned(),
            html! { <>
                <button type="button" class="second" onclick={on(Step::TakeNewer)}>{ say!("Use it now") }</button>
                <button type="button" class="ghost" onclick={on(Step::LeaveNewer)}>{ say!("Later") }</button>
            </> },
        ),
        Line::Coming => (say!("The newer version is coming: this page loads again by itself.").to_owned(), Html::default()),
        Line::TakenElsewhere => (
            say!("Another window uses a newer version. This one goes on as it was; load it again when you are done here.").to_owned(),
            html! { <button type="button" class="second" onclick={on(Step::Reload)}>{ say!("Load it again") }</button> },
        ),
        Line::AskPromise => (
            say!("What you note lies in this browser only, which may throw it away when room runs short. It can promise to keep it, and may ask you first.").to_owned(),
            html! { <>
                <button type="button" class="second" onclick={on(Step::AskPromise)}>{ say!("Ask it to keep my notes") }</button>
                <button type="button" class="ghost" onclick={on(Step::LeavePromise)}>{ say!("to a proposal" | "No") }</button>
            </> },
        ),
        Line::Remind(unheld) => (
            in_no_file(unheld),
            html! { <>
                <a class="second" href="#/settings">{ say!("Export") }</a>
                <button type="button" class="ghost" onclick={on(Step::PutOff)}>{ say!("Not now") }</button>
            </> },
        ),
    };
    html! {
        <section class="quiet-line" aria-label={say!("About your notes and this app")}>
            <p role="status">{ text }</p>
            <div class="quiet-answers">{ answers }</div>
        </section>
    }
}
