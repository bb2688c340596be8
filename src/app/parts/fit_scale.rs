//! Cloth against body at one place, as a strip of tape: the yellow is what the cut is meant to have, the dashes are where this one lies.

use garment_assay::fit::{LineFit, Time};
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The place.
    pub fit: LineFit,
    /// Whether what washing and wearing will change is drawn below today.
    #[prop_or_default]
    pub later: bool,
    /// Whether the day after the first washes is left out of that.
    #[prop_or_default]
    pub brief: bool,
}

/// Width of the drawing, and the ends of what is drawn, in its units.
const WIDTH: f64 = 320.0;
const ENDS: (f64, f64) = (4.0, 316.0);
/// Height of the strip, and of one moment below it.
const STRIP: f64 = 14.0;
const MOMENT: f64 = 16.0;

/// The strip. What it shows stands in words beside it.
#[component]
pub fn FitScale(props: &Props) -> Html {
    let Props { fit, later, brief } = props;
    let times: &[Time] = match (later, brief) {
        (false, _) => &[Time::Now],
        (true, true) => &[Time::Now, Time::Worn],
        (true, false) => &[Time::Now, Time::Washed, Time::Worn],
    };
    let moments: Vec<_> = times.iter().filter_map(|time| Some((*time, fit.at(*time)?))).collect();
    let edges = [fit.floor, fit.wanted.low, fit.wanted.high];
    let all = || edges.into_iter().chain(moments.iter().flat_map(|(_, moment)| [moment.ease.low, moment.ease.high]));
    let (least, most) = (all().fold(f64::INFINITY, f64::min) - 1.5, all().fold(f64::NEG_INFINITY, f64::max) + 1.5);
    let along = |ease: f64| {
        let share = ((ease - least) / (most - least).max(1e-6)).clamp(0.0, 1.0);
        ((ENDS.0 + (ENDS.1 - ENDS.0) * share) * 10.0).round() / 10.0
    };
    let height = STRIP + 8.0 + MOMENT * moments.len() as f64;
    let (low, high, floor) = (along(fit.wanted.low), along(fit.wanted.high), along(fit.floor));
    let ceiling = fit.ceiling.is_finite().then(|| along(fit.ceiling)).filter(|ceiling| *ceiling < ENDS.1);
    let zero = (least < 0.0 && most > 0.0).then(|| along(0.0));
    html! {
        <svg class="fit-scale" viewBox={format!("0 0 {WIDTH} {height}")} aria-hidden="true" focusable="false">
            <rect class="fit-ground" x={ENDS.0.to_string()} y="2" width={(ENDS.1 - ENDS.0).to_string()} height={STRIP.to_string()} rx="2" />
            <rect class="tape-strip" x={low.to_string()} y="2" width={(high - low).max(1.0).to_string()} height={STRIP.to_string()} />
            <rect class="fit-short" x={ENDS.0.to_string()} y="2" width={(floor - ENDS.0).max(0.0).to_string()} height={STRIP.to_string()} />
            if let Some(ceiling) = ceiling {
                <rect class="fit-short" x={ceiling.to_string()} y="2" width={(ENDS.1 - ceiling).to_string()} height={STRIP.to_string()} />
            }
            if let Some(zero) = zero {
                <path class="fit-zero" d={format!("M{zero} 0v{height}")} />
            }
            { for moments.iter().enumerate().map(|(place, (time, moment))| {
                let y = STRIP + 12.0 + MOMENT * place as f64;
                let (from, middle, to) = (along(moment.ease.low), along(moment.ease.middle), along(moment.ease.high));
                html! {
                    <g key={place} class={match time { Time::Now => "fit-now", Time::Washed | Time::Worn => "fit-later" }}>
                        <path class="fit-range" d={format!("M{from} {y}H{to}")} />
                        <circle class="fit-middle" cx={middle.to_string()} cy={y.to_string()} r="4.5" />
                    </g>
                }
            }) }
        </svg>
    }
}
