//! Telling the app how large this screen is, against a card or a coin, and the ruler that follows.

use garment_assay::language::within;
use garment_assay::measure::{CARD, COINS, Known, ScreenScale, known};
use garment_assay::quantity::{Decimal, System, written};
use garment_assay::say;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::app::browser::screen;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::ruler::{Ruler, use_view};
use crate::app::route::Route;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The scale kept for this screen.
    pub scale: Option<ScreenScale>,
    /// Whether a scale is kept for another screen or another zoom.
    pub void: bool,
    /// How often the page was resized: what it reads off the screen may be another thing each time.
    pub resized: u32,
    /// Metric or imperial.
    pub system: System,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// CSS pixels to the millimetre that most phones and most desks have; where fitting begins. Never so many that a card's frame is wider
/// than the page.
fn usual() -> f64 {
    let usual = if screen::width() < 700.0 { 6.1 } else { 3.8 };
    CARD.short_mm.map_or(usual, |mm| (screen::width() / mm).min(usual))
}

/// Step of the fine buttons in CSS pixels: finer than half of one.
const FINE: f64 = 0.2;

#[derive(Properties, PartialEq)]
struct SideProps {
    name: AttrValue,
    id: AttrValue,
    px: f64,
    least: f64,
    most: f64,
    set: Callback<f64>,
}

/// One side to fit: a slider for far, two buttons for near.
#[component]
fn Side(props: &SideProps) -> Html {
    let SideProps { name, id, px, least, most, set } = props;
    let (px, least, most) = (*px, *least, *most);
    let oninput = {
        let set = set.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(px) = event.target_dyn_into::<HtmlInputElement>().and_then(|field| field.value().parse::<f64>().ok()) {
                set.emit(px);
            }
        })
    };
    let nudge = |by: f64| set.reform(move |_: MouseEvent| (px + by).clamp(least, most));
    html! {
        <div class="side">
            <label for={id}>{ name }</label>
            <button type="button" class="second" onclick={nudge(-FINE)} aria-label={say!("{side}: a little less", side = name)}>{ "−" }</button>
            <input {id} type="range" min={least.to_string()} max={most.to_string()} step="0.2" value={px.to_string()} {oninput} />
            <button type="button" class="second" onclick={nudge(FINE)} aria-label={say!("{side}: a little more", side = name)}>{ "+" }</button>
        </div>
    }
}

/// Fitting the outline of a card or a coin.
#[component]
fn Fit(props: &Props) -> Html {
    let start = props.scale.map_or_else(usual, |scale| scale.px_per_mm);
    let object = use_state(|| &CARD);
    let long = use_state(|| start * CARD.long_mm);
    let short = use_state(|| start * CARD.short_mm.unwrap_or(CARD.long_mm));
    let tried = use_state_eq(|| false);
    let onobject = {
        let (object, long, short, tried) = (object.clone(), long.clone(), short.clone(), tried.clone());
        Callback::from(move |event: Event| {
            let value = event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value()).unwrap_or_default();
            if let Some(chosen) = known(&value) {
                let now = *long / object.long_mm;
                long.set(now * chosen.long_mm);
                short.set(now * chosen.short_mm.unwrap_or(chosen.long_mm));
                object.set(chosen);
                tried.set(false);
            }
        })
    };
    let set = |side: &UseStateHandle<f64>| {
        let (side, tried) = (side.clone(), tried.clone());
        Callback::from(move |px| {
            side.set(px);
            tried.set(false);
        })
    };
    let fitted = ScreenScale::fitted(&object, *long, object.short_mm.map(|_| *short));
    let keep = {
        let (send, tried) = (props.send.clone(), tried.clone());
        Callback::from(move |_: MouseEvent| match fitted {
            Ok(scale) => send.emit(Message::ScaleFitted(Some(scale))),
            Err(_) => tried.set(true),
        })
    };
    let chosen: &'static Known = *object;
    let (most, least) = (chosen.long_mm * 10.0, chosen.long_mm * 2.0);
    let (width, height) = if chosen.short_mm.is_some() { (*short, *long) } else { (*long, *long) };
    html! {
        <>
            // The card covers the words once they are read; the frame must not be pushed down by them.
            <div class="fitting">
                <svg class="outline" width={width.to_string()} height={height.to_string()} viewBox={format!("0 0 {width} {height}")} role="img"
                    aria-label={say!("Frame for: {object}", object = within(chosen.name()))}>
                    if chosen.short_mm.is_some() {
                        <rect x="0.5" y="0.5" width={(width - 1.0).to_string()} height={(height - 1.0).to_string()} rx={(height / 85.6 * 3.18).to_string()} />
                    } else {
                        <circle cx={(width / 2.0).to_string()} cy={(height / 2.0).to_string()} r={(width / 2.0 - 0.5).to_string()} />
                    }
                </svg>
                <div class="fitting-words">
                    <div class="field">
                        <label for="object">{ say!("What you lay on the screen") }</label>
                        <select id="object" onchange={onobject}>
                            <option value={CARD.key} selected={chosen == &CARD}>{ CARD.name() }</option>
                            { for COINS.iter().map(|coin| html! { <option key={coin.key} value={coin.key} selected={chosen == coin}>{ coin.name() }</option> }) }
                        </select>
                    </div>
                    if chosen.short_mm.is_some() {
                        <p>{ say!("Lay the card in this frame, its back up, one corner in the upper left. Move the lines until the frame shows all round it, as thin as a thread.") }</p>
                        <p class="hint">{ say!("Nothing is photographed.") }</p>
                    } else {
                        <p>{ say!("Lay the coin in the circle. Move the line until the circle shows all round it.") }</p>
                        <p class="hint">{ say!("A coin tells the scale to about 1.2 %, a card to 0.3 %.") }{ " " }{ if chosen.confirmed { "" } else { say!("This coin’s size is from memory.") } }</p>
                    }
                </div>
            </div>
            <div class="foot fit">
                <Side name={if chosen.short_mm.is_some() { say!("Long side") } else { say!("width of a coin" | "Across") }} id="side-long" px={*long} {least} {most} set={set(&long)} />
                if let Some(mm) = chosen.short_mm {
                    <Side name={say!("Short side")} id="side-short" px={*short} least={mm * 2.0} most={mm * 10.0} set={set(&short)} />
                }
                if let (true, Err(fault)) = (*tried, fitted) {
                    <p class="fault" role="alert">{ fault.to_string() }</p>
                }
                <button type="button" class="prime" onclick={keep}>{ say!("It fits: keep this") }</button>
            </div>
        </>
    }
}

/// The ruler, or what makes one.
#[component]
pub fn RulerPage(props: &Props) -> Html {
    let Props { scale, void, system, send, .. } = props;
    use_view();
    let again = send.reform(|_: MouseEvent| Message::ScaleFitted(None));
    let magnified = screen::is_magnified();
    html! {
        <>
            <Bar title={say!("Ruler on the screen")} under={match (scale, void) {
                (Some(_), _) => say!("Lay the seam along the left edge"),
                (None, true) => say!("This is another screen or another zoom: fit it again"),
                (None, false) => say!("Fit it once against a card or a coin"),
            }} back={Route::Bench.href()} back_name={say!("Back to the bench")} />
            if magnified {
                <p class="fault lonely" role="alert">{ say!("The page is magnified, so nothing on it has its size. Pinch it back to normal first.") }</p>
            } else if let Some(scale) = scale {
                <div class="ruler-screen">
                    <Ruler scale={*scale} system={*system} height={screen::height() - 64.0} />
                    <div class="ruler-words">
                        <p>{ say!("{pixels} pixels to the millimetre, sure to {share} % (1 sigma).", pixels = written(scale.px_per_mm, 2, Decimal::spoken()), share = written(scale.relative * 100.0, 1, Decimal::spoken())) }</p>
                        <p class="hint">{ say!("It holds on this screen at this zoom; on another monitor of the same figures fit it again, for a page cannot tell them apart. Press the cloth flat on the glass and look straight down.") }</p>
                        <p><button type="button" class="second" onclick={again}>{ say!("Fit it again") }</button></p>
                    </div>
                </div>
            } else {
                <Fit scale={*scale} void={*void} resized={props.resized} system={*system} send={send.clone()} />
            }
        </>
    }
}
