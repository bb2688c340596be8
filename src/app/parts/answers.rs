//! The ordered answers of a check, one to choose.

use garment_assay::check::{Check, Level};
use garment_assay::say;
use yew::prelude::*;

use super::drawn::Drawn;
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The check.
    pub check: &'static Check,
    /// Key of the level that is chosen.
    pub chosen: Option<&'static str>,
    /// How much of a reading speaks for each level, worst first, when the check was answered with one.
    #[prop_or_default]
    pub read: Option<Vec<f64>>,
    /// Called with the key of a level.
    pub choose: Callback<&'static str>,
}

/// The answers as native radio buttons: arrow keys and one stop for the tab key come with them.
#[component]
pub fn Answers(props: &Props) -> Html {
    let check = props.check;
    html! {
        <fieldset class="answers">
            <legend class="unseen">{ check.question() }</legend>
            // The best answer first: that is the order in which a person compares what is in hand with what it should be.
            { for check.levels.iter().enumerate().rev().map(|(place, level): (usize, &'static Level)| {
                let chosen = props.chosen == Some(level.key);
                let share = props.read.as_ref().and_then(|shares| shares.get(place)).copied().filter(|share| *share >= 0.005);
                let onchange = props.choose.reform(move |_: Event| level.key);
                html! {
                    <label key={level.key} class="answer" data-chosen={(chosen || share.is_some_and(|share| share >= 0.5)).to_string()}>
                        <input type="radio" name={check.key} value={level.key} checked={chosen} {onchange} />
                        if let Some(picture) = level.drawn {
                            <Drawn {picture} />
                        }
                        <span class="answer-words"><b>{ level.name() }</b><small>{ level.line() }</small>
                            if let Some(share) = share {
                                <em>{ say!("{share} of your reading", share = words::percent(share)) }</em>
                            }
                        </span>
                    </label>
                }
            }) }
        </fieldset>
    }
}
