//! Cloth against body at one place, as lengths of tape that begin together, out of the picture: where each ends is what counts. The pale
//! zone is where this cut is meant to end; dashes are the range of four cases in five.

use garment_assay::fit::{LineFit, Moment, Time};
use garment_assay::say;
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

/// Width of the drawing, in its units.
const WIDTH: f64 = 320.0;
/// Where the ends of the lengths may lie; left of it stand their names.
const ENDS: (f64, f64) = (128.0, 314.0);
/// Height of one length, and from one to the next.
const STRIP: f64 = 13.0;
const STEP: f64 = 17.0;

fn name(time: Time) -> &'static str {
    match time {
        Time::Now => say!("cloth now"),
        Time::Washed => say!("washed"),
        Time::Worn => say!("washed and worn"),
    }
}

/// From centimetres of the garment to the drawing.
#[derive(Clone, Copy)]
struct Along {
    least: f64,
    most: f64,
}

impl Along {
    fn of(fit: &LineFit, moments: &[(Time, &Moment)]) -> Along {
        let body = fit.tape.body.value;
        let edges = [0.0, fit.floor, fit.wanted.low, fit.wanted.high].map(|ease| body + ease);
        let all = || {
            edges
                .into_iter()
                .chain(moments.iter().flat_map(|(_, moment)| [moment.ease.low, moment.ease.high].map(|ease| body + ease)))
        };
        Along { least: all().fold(f64::INFINITY, f64::min) - 0.8, most: all().fold(f64::NEG_INFINITY, f64::max) + 0.8 }
    }

    fn at(self, centimetres: f64) -> f64 {
        let share = ((centimetres - self.least) / (self.most - self.least).max(1e-6)).clamp(0.0, 1.0);
        ((ENDS.0 + (ENDS.1 - ENDS.0) * share) * 10.0).round() / 10.0
    }

    /// Marks of a tape, a centimetre apart, up to an end; none where they would run together.
    fn ticks(self, end: f64, y: f64) -> String {
        if self.most - self.least > 45.0 {
            return String::new();
        }
        let first = self.least.ceil() as i32;
        let last = end.floor() as i32;
        (first..=last)
            .map(|centimetre| {
                let length = if centimetre % 5 == 0 { 6.0 } else { 3.5 };
                format!("M{} {y}v{length}", self.at(f64::from(centimetre)))
            })
            .collect()
    }
}

/// The lengths. What they show stands in words beside them.
#[component]
pub fn FitScale(props: &Props) -> Html {
    let Props { fit, later, brief } = props;
    let times: &[Time] = match (later, brief) {
        (false, _) => &[Time::Now],
        (true, true) => &[Time::Now, Time::Worn],
        (true, false) => &[Time::Now, Time::Washed, Time::Worn],
    };
    let moments: Vec<(Time, &Moment)> = times.iter().filter_map(|time| Some((*time, fit.at(*time)?))).collect();
    let along = Along::of(fit, &moments);
    let body = fit.tape.body.value;
    let height = STEP * (moments.len() + 1) as f64 + 2.0;
    let (low, high) = (along.at(body + fit.wanted.low), along.at(body + fit.wanted.high));
    let floor = along.at(body + fit.floor);
    let ceiling = fit.ceiling.is_finite().then(|| along.at(body + fit.ceiling)).filter(|ceiling| *ceiling < ENDS.1);
    // The torn edge says that the lengths go on to the left.
    let torn = |y: f64| format!("M4 {y}l3 {q}l-3 {q}l3 {q}l-3 {q}", q = STRIP / 4.0);
    html! {
        <svg class="fit-scale" viewBox={format!("0 0 {WIDTH} {height}")} aria-hidden="true" focusable="false">
            <rect class="fit-meant" x={low.to_string()} y="0" width={(high - low).max(1.5).to_string()} height={height.to_string()} rx="2" />
            <path class="fit-limit" d={format!("M{floor} 0v{height}{}", ceiling.map_or_else(String::new, |ceiling| format!("M{ceiling} 0v{height}")))} />
            <path class="fit-body" d={format!("{}H{}V2z", torn(2.0), along.at(body))} />
            <text class="fit-name" x="10" y={(2.0 + STRIP - 3.0).to_string()}>{ say!("body") }</text>
            { for moments.iter().enumerate().map(|(place, (time, moment))| {
                let y = 2.0 + STEP * (place + 1) as f64;
                let ends = [moment.ease.low, moment.ease.middle, moment.ease.high].map(|ease| along.at(body + ease));
                let middle = y + STRIP / 2.0;
                html! {
                    <g key={place} class={match time { Time::Now => "fit-now", Time::Washed | Time::Worn => "fit-later" }}>
                        <path class="fit-cloth" d={format!("{}H{}V{y}z", torn(y), ends[1])} />
                        <path class="fit-ticks" d={along.ticks(body + moment.ease.middle, y)} />
                        <text class="fit-name" x="10" y={(y + STRIP - 3.0).to_string()}>{ name(*time) }</text>
                        <path class="fit-bed" d={format!("M{} {middle}H{}", ends[0], ends[2])} />
                        <path class="fit-range" d={format!("M{} {middle}H{}", ends[0], ends[2])} />
                        <circle class="fit-middle" cx={ends[1].to_string()} cy={middle.to_string()} r="4" />
                    </g>
                }
            }) }
        </svg>
    }
}
