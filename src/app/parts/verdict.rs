//! The verdict on fit, wherever it is shown: it stands apart from the band, for a well-made garment may not fit.

use garment_assay::garment::FitReport;
use garment_assay::quantity::System;
use yew::prelude::*;

use crate::app::fit_words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What everything comes to.
    pub report: FitReport,
    /// Metric or imperial.
    pub system: System,
}

/// The words, how sure, and what it turns on.
#[component]
pub fn VerdictLines(props: &Props) -> Html {
    let Props { report, system } = props;
    let (lead, rest) = fit_words::verdict(report);
    html! {
        <div class="fit-verdict">
            <p class="fit-lead"><strong>{ lead }</strong><span>{ rest }</span></p>
            if let Some(why) = fit_words::turns_on(report, *system) {
                <p class="fit-why">{ why }</p>
            }
        </div>
    }
}
