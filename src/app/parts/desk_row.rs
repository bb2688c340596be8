//! One check as a row of the quick sheet: its name, and its answers in one line, worst first.

use garment_assay::check::{Check, Level};
use garment_assay::say;
use yew::prelude::*;

/// What is done to a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Touched {
    /// The keyboard came to one of its answers.
    Came(usize),
    /// One of its answers was given.
    Chose(usize),
    /// Its name was tapped.
    Named,
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The check.
    pub check: &'static Check,
    /// Place of the row on the sheet.
    pub row: usize,
    /// Place of the answer that is given, or that a reading speaks for most.
    pub chosen: Option<usize>,
    /// The answer in a few words where it is none of the levels as judged: a reading, "can't tell".
    pub said: AttrValue,
    /// Whether the check does not apply.
    pub closed: bool,
    /// Place of the answer at which the keyboard is or would come to be; none in every row but one.
    pub at: Option<usize>,
    /// Called with what was done, and where.
    pub touched: Callback<(usize, Touched)>,
}

/// The row. All rows together are one stop of the tab key; arrows move between them.
#[component]
pub fn DeskRow(props: &Props) -> Html {
    let Props { check, row, chosen, said, closed, at, touched } = props;
    let row = *row;
    let emit = |what: Touched| {
        let touched = touched.clone();
        move || touched.emit((row, what))
    };
    let named = emit(Touched::Named);
    let id = format!("quick-row-{}", check.key);
    let state = match (closed, chosen.is_some() || !said.is_empty()) {
        (true, _) => "closed",
        (false, true) => "answered",
        (false, false) => "open",
    };
    html! {
        <div class="quick-row" data-state={state} data-active={at.is_some().to_string()}>
            <button type="button" class="quick-row-name" tabindex="-1" onclick={move |_: MouseEvent| named()}>
                <b {id}>{ check.name() }</b>
                if *closed {
                    <small>{ say!("does not apply here") }</small>
                } else if !said.is_empty() {
                    <small>{ said }</small>
                }
            </button>
            <div class="quick-levels" role="radiogroup" aria-labelledby={format!("quick-row-{}", check.key)}>
                { for check.levels.iter().enumerate().map(|(place, level): (usize, &'static Level)| {
                    let (came, chose) = (emit(Touched::Came(place)), emit(Touched::Chose(place)));
                    let is = *chosen == Some(place);
                    html! {
                        <button key={level.key} type="button" role="radio" class="quick-level" aria-checked={is.to_string()}
                            tabindex={if *at == Some(place) { "0" } else { "-1" }} aria-label={format!("{}: {}", place + 1, level.name())}
                            onfocus={move |_: FocusEvent| came()} onclick={move |_: MouseEvent| chose()}>
                            <b>{ place + 1 }</b><span>{ level.name() }</span>
                        </button>
                    }
                }) }
            </div>
        </div>
    }
}
