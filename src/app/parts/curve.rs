//! An operating curve: the chance to pass against the share that is bad.

use garment_assay::quantity::{Decimal, written};
use garment_assay::say;
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Share that is bad and chance to pass, both 0 to 1, from left to right.
    pub points: Vec<(f64, f64)>,
    /// The share at the right end.
    pub most: f64,
    /// Points marked.
    pub marks: Vec<(f64, f64)>,
    /// The same in words.
    pub says: String,
}

/// The curve, 300 wide and 120 high inside its frame.
#[component]
pub fn Curve(props: &Props) -> Html {
    let Props { points, most, marks, says } = props;
    let x = |share: f64| 34.0 + (share / most).clamp(0.0, 1.0) * 300.0;
    let y = |chance: f64| 8.0 + (1.0 - chance) * 120.0;
    let line: Vec<String> = points.iter().map(|(share, chance)| format!("{:.1} {:.1}", x(*share), y(*chance))).collect();
    let label = |share: f64| {
        let percent = share * 100.0;
        written(percent, if percent < 10.0 { 1 } else { 0 }, Decimal::spoken())
    };
    html! {
        <svg class="curve" viewBox="0 0 344 158" role="img" aria-label={says.clone()}>
            <path class="curve-grid" d={[0.0, 0.5, 1.0].map(|chance| format!("M34 {:.1}h300", y(chance))).concat()} />
            { for [(1.0, "100"), (0.5, "50"), (0.0, "0")].into_iter().map(|(chance, word)| html! { <text key={word} class="curve-word" x="28" y={format!("{:.1}", y(chance) + 4.0)} text-anchor="end">{ word }</text> }) }
            <path class="curve-line" d={format!("M{}", line.join("L"))} />
            { for marks.iter().enumerate().map(|(place, (share, chance))| html! {
                <g key={place}>
                    <path class="curve-drop" d={format!("M{:.1} {:.1}V128", x(*share), y(*chance))} />
                    <circle class="curve-mark" cx={format!("{:.1}", x(*share))} cy={format!("{:.1}", y(*chance))} r="4" />
                    <text class="curve-word" x={format!("{:.1}", x(*share))} y="142" text-anchor="middle">{ label(*share) }</text>
                </g>
            }) }
            <text class="curve-word" x="334" y="155" text-anchor="end">{ say!("% of pieces bad; upwards: % of such lots that pass") }</text>
        </svg>
    }
}
