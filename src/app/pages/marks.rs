//! Counting stitches on the screen's ruler: a comb laid over the seam, or a tap on every needle hole.

use garment_assay::check::Check;
use garment_assay::garment::{Act, Answer, Given, Id, Readings};
use garment_assay::language::one;
use garment_assay::measure::{Instrument, STITCH_COMB, STITCH_TAPS, ScreenScale, Taps, density_from_taps};
use garment_assay::quantity::{Decimal, System, Unit, written};
use garment_assay::say;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::browser::{document, screen};
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::ruler::{Ruler, ZERO, use_view};
use crate::app::route::Route;
use crate::app::words;

/// Room that bar and foot take from the ruler, in CSS pixels.
const BAR_AND_FOOT: f64 = 208.0;
/// Pitches of the comb, in mm: 21 to 3 stitches per inch.
const PITCH: (f64, f64) = (1.2, 8.5);
/// Where the comb begins: 8 stitches per inch.
const BEGIN: f64 = 3.2;

/// What usually stands for an input: the spreads are the instrument's to say.
fn usual(instrument: &'static Instrument, input: &str) -> f64 {
    instrument.input(input).and_then(|(_, input)| input.usual()).unwrap_or_default()
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Comb or taps.
    pub instrument: &'static Instrument,
    /// The scale kept for this screen.
    pub scale: Option<ScreenScale>,
    /// How often the page was resized: what it reads off the screen may be another thing each time.
    pub resized: u32,
    /// Metric or imperial.
    pub system: System,
    /// The garment and the check that the reading is for; none on the bench.
    pub target: Option<(Id, &'static Check)>,
    /// Readings of this instrument that answer the check already.
    pub kept: Option<Readings>,
    /// Where messages go.
    pub send: Callback<Message>,
}

fn given(amounts: [(&'static str, f64, Unit); 4]) -> Vec<Given> {
    amounts.map(|(input, amount, unit)| Given { input, amount, unit }).into()
}

#[derive(Properties, PartialEq)]
struct MarkProps {
    scale: ScreenScale,
    system: System,
    height: f64,
    kept: Option<Readings>,
    read: Callback<Option<Readings>>,
}

/// The comb: its first bar at the zero, its pitch by slider and fine buttons.
#[component]
fn Comb(props: &MarkProps) -> Html {
    let MarkProps { scale, system, height, kept, read } = props;
    let kept = kept.as_ref().and_then(|kept| kept.given.iter().find(|given| given.input == "comb")).map(|given| given.amount);
    let pitch = use_state(|| kept.unwrap_or(BEGIN).clamp(PITCH.0, PITCH.1));
    // Where the bars lie before anybody moved them is no reading.
    let moved = use_state_eq(|| kept.is_some());
    let pitch_px = *pitch * scale.px_per_mm;
    let bars = ((height - 8.0) / pitch_px).floor() + 1.0;
    // Half a CSS pixel at the last bar.
    let fine = 0.5 / scale.px_per_mm / (bars - 1.0).max(1.0);
    {
        let (read, relative) = (read.clone(), scale.relative);
        use_effect_with((*pitch, bars, *moved), move |(pitch, bars, moved)| {
            if !moved {
                return;
            }
            let given = given([
                ("comb", *pitch, Unit::Millimetre),
                ("bars", *bars, Unit::Count),
                ("misfit", usual(&STITCH_COMB, "misfit"), Unit::Millimetre),
                ("ruler", relative * 100.0, Unit::Percent),
            ]);
            read.emit(Some(Readings { instrument: &STITCH_COMB, given }));
        });
    }
    let oninput = {
        let (pitch, moved) = (pitch.clone(), moved.clone());
        Callback::from(move |event: InputEvent| {
            if let Some(value) = event.target_dyn_into::<HtmlInputElement>().and_then(|field| field.value().parse::<f64>().ok()) {
                pitch.set(value.exp());
                moved.set(true);
            }
        })
    };
    let nudge = |by: f64| {
        let (pitch, moved) = (pitch.clone(), moved.clone());
        Callback::from(move |_: MouseEvent| {
            pitch.set((*pitch + by).clamp(PITCH.0, PITCH.1));
            moved.set(true);
        })
    };
    let path = (0..bars as u32).fold(String::new(), |path, bar| format!("{path}M0 {:.3}h58", f64::from(bar) * pitch_px + ZERO));
    html! {
        <>
            <div class="marks">
                <Ruler scale={*scale} system={*system} height={*height} />
                <svg class="comb" width="58" height={height.to_string()} viewBox={format!("0 0 58 {height}")} aria-hidden="true"><path d={path} /></svg>
            </div>
            <div class="side">
                <label class="unseen" for="pitch">{ say!("Wider or closer") }</label>
                <button type="button" class="second" onclick={nudge(-fine)} aria-label={say!("Bars a little closer")}>{ "−" }</button>
                <input id="pitch" type="range" min={PITCH.0.ln().to_string()} max={PITCH.1.ln().to_string()} step="0.001" value={pitch.ln().to_string()} {oninput}
                    aria-valuetext={say!("{pitch} millimetres from bar to bar, {bars} bars", pitch = written(*pitch, 2, Decimal::spoken()), bars)} />
                <button type="button" class="second" onclick={nudge(fine)} aria-label={say!("Bars a little wider")}>{ "+" }</button>
            </div>
        </>
    }
}

/// Taps: a strip beside the ruler that takes one for every needle hole.
#[component]
fn TapAlong(props: &MarkProps) -> Html {
    let MarkProps { scale, system, height, read, .. } = props;
    let places = use_state(Vec::<f64>::new);
    let strip = use_node_ref();
    let mm: Vec<f64> = places.iter().map(|px| px / scale.px_per_mm).collect();
    let taps = density_from_taps(&mm, usual(&STITCH_TAPS, "tap-spread"), scale.relative);
    let begun = use_mut_ref(|| false);
    *begun.borrow_mut() |= !places.is_empty();
    {
        let (read, begun) = (read.clone(), begun.clone());
        use_effect_with((taps.as_ref().ok().map(|taps| taps.readings), places.len()), move |(readings, _)| {
            if !*begun.borrow() {
                return;
            }
            let readings = readings.map(|[count, stitch, spread, ruler]| {
                let given = given([
                    ("taps", count, Unit::Count),
                    ("stitch", stitch, Unit::Millimetre),
                    ("tap-spread", spread, Unit::Millimetre),
                    ("ruler", ruler, Unit::Percent),
                ]);
                Readings { instrument: &STITCH_TAPS, given }
            });
            read.emit(readings);
        });
    }
    let onpointerdown = {
        let (places, strip) = (places.clone(), strip.clone());
        Callback::from(move |event: PointerEvent| {
            event.prevent_default();
            if let Some(top) = document::top(&strip) {
                let mut next = (*places).clone();
                next.push(f64::from(event.client_y()) - top);
                places.set(next);
            }
        })
    };
    let less = {
        let places = places.clone();
        Callback::from(move |_: MouseEvent| places.set(places[..places.len().saturating_sub(1)].to_vec()))
    };
    let none = {
        let places = places.clone();
        Callback::from(move |_: MouseEvent| places.set(Vec::new()))
    };
    let doubt = match &taps {
        // Nobody is told off before the first tap.
        Err(_) if places.is_empty() => None,
        Err(fault) => Some(fault.to_string()),
        Ok(Taps { missed_after: Some(gap), .. }) => Some(say!(
            "Between tap {first} and {second} there is room for two stitches. Was one left out?",
            first = gap + 1,
            second = gap + 2
        )),
        Ok(Taps { doubled_after: Some(gap), .. }) => Some(say!(
            "Taps {first} and {second} lie close together. Was one hole tapped twice?",
            first = gap + 1,
            second = gap + 2
        )),
        Ok(_) => None,
    };
    html! {
        <>
            <div class="marks">
                <Ruler scale={*scale} system={*system} height={*height} />
                <div class="tap-strip" ref={strip} {onpointerdown} role="button" tabindex="-1" aria-label={say!("Tap every needle hole here, from one end to the other")}>
                    <svg width="90" height={height.to_string()} viewBox={format!("0 0 90 {height}")} aria-hidden="true">
                        { for places.iter().enumerate().map(|(tap, px)| html! { <circle key={tap} cx="45" cy={format!("{px:.1}")} r="4" /> }) }
                    </svg>
                </div>
            </div>
            <div class="side">
                <span role="status">{ if one(places.len()) { say!("{count} tap", count = places.len()) } else { say!("{count} taps", count = places.len()) } }</span>
                <button type="button" class="second" onclick={less} disabled={places.is_empty()}>{ say!("Undo tap") }</button>
                <button type="button" class="second" onclick={none} disabled={places.is_empty()}>{ say!("Begin again") }</button>
            </div>
            if let Some(doubt) = doubt {
                <p class="fault">{ doubt }</p>
            }
        </>
    }
}

/// The page: ruler and marks at the edge, the reading large beside them, what to do at the foot.
#[component]
pub fn Marks(props: &Props) -> Html {
    let Props { instrument, scale, system, target, kept, send, .. } = props;
    use_view();
    // What was read before stands until something else is read.
    let readings = use_state_eq(|| kept.clone());
    {
        let (send, alone) = (send.clone(), target.is_none());
        use_effect_with((*readings).clone(), move |readings| {
            if let Some(readings) = readings.clone().filter(|_| alone) {
                send.emit(Message::Tried(readings));
            }
        });
    }
    let read = {
        let readings = readings.clone();
        Callback::from(move |now| readings.set(now))
    };
    let back = target.as_ref().map_or(Route::Bench, |(id, check)| Route::Check(id.clone(), check.key.to_owned())).href();
    let Some(scale) = scale else {
        return html! {
            <>
                <Bar title={instrument.name()} under={instrument.says()} {back} back_name={say!("go back" | "Back")} />
                <section class="card">
                    <p>{ say!("The screen has to know its size first. It takes a card and half a minute.") }</p>
                    <p><a class="prime" href={Route::Ruler.href()}>{ say!("Fit the ruler") }</a></p>
                </section>
            </>
        };
    };
    if screen::is_magnified() {
        return html! {
            <>
                <Bar title={instrument.name()} under={instrument.says()} {back} back_name={say!("go back" | "Back")} />
                <p class="fault lonely" role="alert">{ say!("The page is magnified, so the ruler is not right. Pinch it back to normal first.") }</p>
            </>
        };
    }
    let outcome = (*readings).as_ref().map(Readings::outcome);
    let fault =
        outcome.as_ref().and_then(|outcome| outcome.as_ref().err()).map(|fault| fault.sentence(*system, Decimal::spoken()));
    let outcome = outcome.and_then(Result::ok);
    let use_it = target.clone().map(|(id, check)| {
        let (send, readings) = (send.clone(), (*readings).clone());
        Callback::from(move |_: MouseEvent| {
            if let Some(readings) = readings.clone() {
                send.emit(Message::Done(id.clone(), Act::Answer(check, Answer::Measured(readings))));
            }
        })
    });
    let height = (screen::height() - BAR_AND_FOOT).max(160.0);
    html! {
        <div class="marks-screen">
            <Bar title={instrument.name()} under={instrument.steps().first().copied().unwrap_or_default()} {back} back_name={say!("go back" | "Back")} />
            <div class="marks-body">
                if *instrument == &STITCH_COMB {
                    <Comb scale={*scale} system={*system} {height} kept={kept.clone()} {read} />
                } else {
                    <TapAlong scale={*scale} system={*system} {height} kept={None::<Readings>} {read} />
                }
                <div class="marks-words">
                    <output class="marks-figure" aria-live="polite">
                        if let Some(outcome) = &outcome {
                            <b>{ words::value(outcome.value, outcome.uncertainty) }</b>
                            <span>{ say!("stitches per inch") }</span>
                            <span>{ words::spread_and_per_cm(outcome.value, outcome.uncertainty) }</span>
                        } else if let Some(fault) = fault {
                            <span class="fault">{ fault }</span>
                        } else {
                            <span>{ say!("The reading appears here.") }</span>
                        }
                    </output>
                    <p class="hint">{ instrument.steps().get(1).copied().unwrap_or_default() }</p>
                    <p class="hint">{ instrument.steps().get(2).copied().unwrap_or_default() }</p>
                </div>
            </div>
            <div class="foot">
                if let Some(use_it) = use_it {
                    <button type="button" class="prime" onclick={use_it} disabled={outcome.is_none()}>
                        { outcome.as_ref().map_or_else(|| say!("Use this reading").to_owned(), |outcome| say!("Use {reading}", reading = words::value(outcome.value, outcome.uncertainty))) }
                    </button>
                }
                <a class="second" href={Route::Ruler.href()}>{ say!("Fit the ruler again") }</a>
            </div>
        </div>
    }
}
