//! What stands beside a row of the quick sheet, or beneath it on a phone: its answers drawn, the line of one, and what else can be done.

use garment_assay::check::{Check, Level};
use garment_assay::garment::Readings;
use garment_assay::quantity::System;
use garment_assay::say;
use yew::prelude::*;

use super::desk_reading::{DeskReading, in_a_line};
use super::drawn::Drawn;
use super::icon::{Icon, Shape};

/// What can be done to the check from here.
#[derive(Clone, Debug, PartialEq)]
pub enum Done {
    /// One of its answers is given.
    Chose(usize),
    /// Looked, and cannot tell.
    CannotTell,
    /// The answer is taken back.
    TakenBack,
    /// A reading is used.
    Read(Readings),
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The check.
    pub check: &'static Check,
    /// Place of the answer whose line is shown.
    pub at: usize,
    /// Place of the answer that is given.
    pub chosen: Option<usize>,
    /// Whether it is answered by any means.
    pub answered: bool,
    /// Whether it is answered with "can't tell".
    pub cannot_tell: bool,
    /// Readings as kept.
    pub kept: Option<Readings>,
    /// Metric or imperial.
    pub system: System,
    /// Address of the check's own page; none while the garment is not on the rack.
    pub page: Option<AttrValue>,
    /// Called with what is to be done.
    pub done: Callback<Done>,
}

/// The answers of a check with their drawings.
#[component]
pub fn DeskBeside(props: &Props) -> Html {
    let Props { check, at, chosen, answered, cannot_tell, kept, system, page, done } = props;
    let check = *check;
    let line = check.levels.get(*at).map(|level| level.line());
    let cannot = done.reform(|_: MouseEvent| Done::CannotTell);
    let back = done.reform(|_: MouseEvent| Done::TakenBack);
    html! {
        <div class="quick-beside">
            <p class="quick-question"><b>{ check.question() }</b></p>
            // The rows have the answers for the keyboard and to be read aloud; these are the same, to be looked at and tapped.
            <ul class="quick-drawn" aria-hidden="true">
                { for check.levels.iter().enumerate().map(|(place, level): (usize, &'static Level)| {
                    let onclick = done.reform(move |_: MouseEvent| Done::Chose(place));
                    html! {
                        <li key={level.key} data-at={(*at == place).to_string()} data-chosen={(*chosen == Some(place)).to_string()} {onclick}>
                            if let Some(picture) = level.drawn {
                                <Drawn {picture} />
                            }
                            <span><b>{ format!("{} ", place + 1) }</b>{ level.name() }</span>
                        </li>
                    }
                }) }
            </ul>
            if let Some(line) = line {
                <p class="quick-line"><b>{ format!("{} ", at + 1) }</b>{ line }</p>
            }
            <p class="hint">{ check.how() }</p>
            if let Some(caution) = check.caution() {
                <p class="caution"><Icon shape={Shape::Care} /><span>{ caution }</span></p>
            }
            <div class="row">
                <button type="button" class="ghost" aria-pressed={cannot_tell.to_string()} onclick={cannot}>{ say!("Can’t tell") }</button>
                if *answered {
                    <button type="button" class="ghost" onclick={back}>{ say!("Take answer back") }</button>
                }
            </div>
            if in_a_line(check).is_some() {
                <DeskReading key={check.key} {check} kept={kept.clone()} system={*system} used={done.reform(Done::Read)} />
            }
            if let Some(page) = page {
                <p><a href={page}>{ if in_a_line(check).is_none() && !check.instruments.is_empty() { say!("Measure it on its own page") } else { say!("Open this check on its own page") } }</a></p>
            }
        </div>
    }
}
