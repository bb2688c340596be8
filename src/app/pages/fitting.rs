//! The fitting room of a garment: whether it fits a person, now and later.

use std::rc::Rc;

use garment_assay::fit::Person;
use garment_assay::garment::Garment;
use garment_assay::quantity::System;
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// People whose measures are kept, by name.
    pub people: Vec<Rc<Person>>,
    /// Metric or imperial.
    pub system: System,
    /// Whether something can be taken back.
    pub can_take_back: bool,
    /// What follows from the evidence of garments.
    pub appraisals: Appraisals,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The fitting room. Its page is built elsewhere; this holds its place.
#[component]
pub fn FittingPage(props: &Props) -> Html {
    let Props { garment, .. } = props;
    html! { <Bar title="Fitting room" back={Route::Checks(garment.id().clone()).href()} back_name="Back to all checks" /> }
}
