//! A ruler drawn to the screen's scale along its long edge.

use garment_assay::measure::ScreenScale;
use garment_assay::quantity::System;
use garment_assay::say;
use yew::prelude::*;

use crate::app::browser::screen;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The screen's scale.
    pub scale: ScreenScale,
    /// Millimetres, or inches in sixteenths.
    pub system: System,
    /// How long it is, in CSS pixels.
    pub height: f64,
}

/// Draws the component anew when the page's height changes or two fingers magnify it: its properties do not tell it.
#[hook]
pub fn use_view() {
    let again = use_force_update();
    use_effect_with((), move |()| {
        let listening = screen::on_view_change(move || again.force_update());
        move || drop(listening)
    });
}

/// Breadth of the ruler in CSS pixels.
const BREADTH: f64 = 76.0;
/// Where the zero stands, in CSS pixels: at the very edge half of its tick would be cut off.
pub const ZERO: f64 = 1.0;

/// Where ticks stand, in CSS pixels from the zero, and how long each is: `(position, length, number)`. Positions are not rounded.
fn ticks(px_per_mm: f64, system: System, height: f64) -> Vec<(f64, f64, Option<u32>)> {
    let (step, longs): (f64, [(u32, f64); 4]) = match system {
        System::Metric => (px_per_mm, [(10, 30.0), (5, 22.0), (1, 14.0), (1, 14.0)]),
        System::Imperial => (px_per_mm * 25.4 / 16.0, [(16, 34.0), (8, 26.0), (4, 20.0), (2, 16.0)]),
    };
    let numbered = longs[0].0;
    (0..)
        .map(|tick: u32| (tick, f64::from(tick) * step))
        .take_while(|(_, at)| *at <= height)
        .map(|(tick, at)| {
            let length = longs.iter().find(|(every, _)| tick.is_multiple_of(*every)).map_or(11.0, |(_, length)| *length);
            (at, length, tick.is_multiple_of(numbered).then_some(tick / numbered))
        })
        .collect()
}

/// A ruler, its zero at the top.
#[component]
pub fn Ruler(props: &Props) -> Html {
    let ticks = ticks(props.scale.px_per_mm, props.system, props.height - 8.0);
    let path = ticks.iter().fold(String::new(), |path, (at, length, _)| format!("{path}M0 {:.3}h{length}", at + ZERO));
    let length = ticks.iter().filter_map(|tick| tick.2).max().unwrap_or(0);
    let label = match props.system {
        System::Metric => say!("Ruler in centimetres, {length} long", length),
        System::Imperial => say!("Ruler in inches, {length} long", length),
    };
    let height = props.height;
    html! {
        <svg class="ruler" width={BREADTH.to_string()} height={height.to_string()} viewBox={format!("0 0 {BREADTH} {height}")} role="img"
            aria-label={label}>
            <rect class="ruler-strip" width={BREADTH.to_string()} height={height.to_string()} />
            <path class="ruler-ticks" d={path} />
            { for ticks.iter().filter_map(|(at, _, number)| Some((at, (*number)?))).filter(|(_, number)| *number > 0).map(|(at, number)| html! {
                <text key={number} x="42" y={format!("{:.2}", at + ZERO + 6.0)}>{ number }</text>
            }) }
        </svg>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hundred_millimetres_stand_where_the_scale_says() {
        let all = ticks(6.0321, System::Metric, 700.0);
        assert!((all[100].0 - 603.21).abs() < 1e-9);
        assert_eq!(all[100].2, Some(10));
    }

    #[test]
    fn sixteen_sixteenths_make_an_inch() {
        let all = ticks(4.0, System::Imperial, 400.0);
        assert!((all[16].0 - 101.6).abs() < 1e-9);
        assert_eq!((all[16].2, all[8].2), (Some(1), None));
    }
}
