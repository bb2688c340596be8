//! What is left in a second-hand piece, on its result: the second reading, what moved it, and what is worth doing about it.

use std::rc::Rc;

use garment_assay::garment::{Appraisal, Garment};
use garment_assay::quantity::System;
use garment_assay::trade::Question;
use garment_assay::{say, to_say};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::pages::result::moved_rows;
use crate::app::parts::tape::Tape;
use crate::app::route::Route;
use crate::app::words;

/// What is said wherever a ticket is taken apart.
pub const NO_BUILD_UP: &str = to_say!(
    "It is second-hand, and a build-up is of a new piece: it explains neither what this one asks nor how long it will last."
);
/// Checks named that would tell more.
const FEW: usize = 3;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// What its answers say of what is left.
    pub left: Rc<Appraisal>,
    /// Metric or imperial.
    pub system: System,
}

/// The card beneath the band of the make.
#[component]
pub fn LeftCard(props: &Props) -> Html {
    let Props { garment, appraisals, left, system } = props;
    let moved = use_memo(left.clone(), |left| appraisals.appraiser().moved(left));
    let further = appraisals.appraiser().most_telling(garment, left);
    let mends: Vec<_> = garment.checks().filter_map(|check| Some((check, garment.mend(check)?))).collect();
    html! {
        <section class="card">
            <h2>{ Question::Left.name() }</h2>
            <p class="hint">{ say!("Among second-hand pieces, by the checks of wear alone. It moves nothing above, and nothing above moves it.") }</p>
            <Tape appraisal={left.clone()} />
            if !moved.is_empty() {
                <h3>{ say!("What moved it") }</h3>
                { moved_rows(garment, &moved, *system) }
            }
            if !mends.is_empty() {
                <h3>{ say!("What is worth doing") }</h3>
                <ul class="facts">
                    { for mends.into_iter().map(|(check, mend)| html! {
                        <li key={check.key}><a href={Route::Check(garment.id().clone(), check.key.to_owned()).href()}><b>{ check.name() }</b></a><p>{ mend }</p></li>
                    }) }
                </ul>
            }
            if !further.is_empty() {
                <p class="hint">{ say!("Would tell more:") }{ " " }{ for further.iter().take(FEW).enumerate().map(|(place, proposal)| html! {
                    <>
                        { if place > 0 { ", " } else { "" } }
                        <a href={Route::Check(garment.id().clone(), proposal.check.key.to_owned()).href()}>{ proposal.check.name() }</a>
                    </>
                }) }{ " " }{ say!("(about {time} for the first).", time = words::duration(further[0].seconds)) }</p>
            }
        </section>
    }
}
