//! The tape: a strip of tape measure with the five bands, the belief about quality as a soft hill over it, and the 80 % range as a
//! stitched line under it.

use std::rc::Rc;

use garment_assay::garment::Appraisal;
use garment_assay::trade::Band;
use yew::prelude::*;

use crate::app::words::{Headline, headline};

/// Width of the drawing; quality from -3 to 3 standard deviations runs along it.
const WIDTH: f64 = 340.0;
const ENDS: f64 = 3.0;
const HILL_FOOT: f64 = 46.0;
/// Height of the hill at a density of 1; a belief with a spread of half a band stands four fifths as high.
const HILL_HEIGHT: f64 = 54.0;
const POINTS: usize = 61;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What the evidence says.
    pub appraisal: Rc<Appraisal>,
    /// Leaves the headline out, where it stands elsewhere.
    #[prop_or_default]
    pub bare: bool,
}

fn along(quality: f64) -> f64 {
    (quality.clamp(-ENDS, ENDS) + ENDS) / (2.0 * ENDS) * WIDTH
}

fn tenth(number: f64) -> f64 {
    (number * 10.0).round() / 10.0
}

fn hill(appraisal: &Appraisal) -> (String, String) {
    let mut line = String::new();
    for (quality, density) in appraisal.hill(POINTS) {
        let start = if line.is_empty() { 'M' } else { 'L' };
        let height = (density * HILL_HEIGHT).min(HILL_FOOT - 1.0);
        line.push_str(&format!("{start}{} {}", tenth(along(quality)), tenth(HILL_FOOT - height)));
    }
    let area = format!("{line}L{WIDTH} {HILL_FOOT}L0 {HILL_FOOT}Z");
    (line, area)
}

fn ticks() -> String {
    (1..60).fold(String::new(), |path, tick| {
        let length = if tick % 5 == 0 { 8 } else { 5 };
        format!("{path}M{} {HILL_FOOT}v{length}", tenth(f64::from(tick) * WIDTH / 60.0))
    })
}

/// The belief as a picture, with its headline. The picture is silent: the headline, here or beside it, says the same in words.
#[component]
pub fn Tape(props: &Props) -> Html {
    let appraisal = &props.appraisal;
    let Headline { lead, rest } = headline(appraisal);
    let (line, area) = hill(appraisal);
    let (likely, _) = appraisal.likely();
    let (low, middle, high) = appraisal.range();
    let checked = appraisal.evidence() > 0;
    // Bare, the strip is thinner and its bands have no names: the headline stands beside it.
    let strip = if props.bare { 10.0 } else { 26.0 };
    let under = HILL_FOOT + strip + if props.bare { 7.0 } else { 10.0 };
    let edges: Vec<f64> = [-ENDS].into_iter().chain(Band::BORDERS).chain([ENDS]).map(along).collect();
    html! {
        <div class="tape">
            if !props.bare {
                <p class="tape-lead"><strong>{ &lead }</strong>{ " " }<span>{ &rest }</span></p>
            }
            <svg viewBox={if props.bare { "0 0 340 68" } else { "0 0 340 88" }} aria-hidden="true" focusable="false">
                <path class="tape-area" d={area} />
                <path class="tape-line" d={line} />
                <rect class="tape-strip" x="0" y={HILL_FOOT.to_string()} width="340" height={strip.to_string()} />
                <path class="tape-ticks" d={ticks()} />
                if !props.bare {
                <g>
                    { for Band::ALL.into_iter().map(|band| {
                        let (left, right) = (edges[band.index()], edges[band.index() + 1]);
                        let named = checked && band == likely;
                        html! {
                            <text key={band.index()} class={classes!("tape-band", named.then_some("is-likely"))}
                                x={tenth((left + right) / 2.0).to_string()} y="67">{ appraisal.word(band) }</text>
                        }
                    }) }
                </g>
                }
                <path class="tape-cuts" d={Band::BORDERS.map(|cut| format!("M{} {HILL_FOOT}v{strip}", tenth(along(cut)))).concat()} />
                if checked {
                    <path class="tape-range" d={format!("M{} {under}H{}", tenth(along(low)), tenth(along(high)))} />
                    <circle class="tape-middle" cx={tenth(along(middle)).to_string()} cy={under.to_string()} r="5" />
                }
            </svg>
        </div>
    }
}
