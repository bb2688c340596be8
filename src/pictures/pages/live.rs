//! Counting stitches on the camera's picture: two marks on a scale beside the seam, and a comb of bars laid over the stitches.

use garment_assay::garment::{Given, Readings};
use garment_assay::language::one;
use garment_assay::measure::{Instrument, STITCH_COMB_LIVE};
use garment_assay::quantity::{Decimal, System, Unit, read, written, written_exactly};
use garment_assay::say;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use crate::browser::camera::{Seen, Taken, lay};
use crate::browser::tilt::{self, Tilt};
use crate::parts::camera::{Lamp, NoCamera, PictureFile, UseCamera, Viewfinder, lamp_of, use_camera};
use crate::parts::comb_stage::{CombStage, Moved};
use crate::parts::laid::{Laid, Place, View};
use crate::parts::level::{HANGING, Level};
use crate::shared::bar::Bar;
use crate::shared::words;

/// Pitches that the slider reaches, in mm: 21 to 3 stitches per inch.
const PITCH: [f64; 2] = [1.2, 8.5];
/// Where the comb begins: 8 stitches per inch.
const BEGIN: f64 = 3.2;
/// How far off a mark and a bar may be on a still picture, in CSS pixels. Judgement: the eye sees half a bar.
const STEADY: f64 = 1.0;
/// The same while the picture moves with the hand. Judgement.
const SHAKY: f64 = 2.0;
/// No mark and no bar is better than this, in mm: a line of a ruler and a needle hole are as broad. Judgement.
const FINEST: f64 = 0.1;
/// The smallest tilt that is believed, in degrees: a level of a phone and a table are off by as much. Judgement.
const LEVEL: f64 = 2.0;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Metric or imperial.
    pub system: System,
    /// Where "back" leads.
    pub back: AttrValue,
    /// The name of the check that the reading is for; none on the bench.
    pub check: Option<AttrValue>,
    /// Readings of this instrument that are there already.
    pub kept: Option<Readings>,
    /// Called with readings that are to be used: for a check when the person says so, on the bench with each.
    pub used: Callback<Readings>,
}

/// Where the picture comes from.
#[derive(Clone, PartialEq)]
enum From {
    Nowhere,
    Camera,
    /// A picture is about to be taken, to be read at rest.
    Shutter,
    File(Taken),
}

/// What a frame was like when it was read.
#[derive(Clone, Copy, PartialEq)]
struct Held {
    frozen: bool,
    tilt: Option<f64>,
}

/// What the marks and bars come to as amounts of the instrument.
fn readings(laid: &Laid, view: View, marked_mm: f64, held: Held) -> Readings {
    // A CSS pixel on the cloth.
    let pixel = marked_mm / (laid.length() * view.times);
    let off = (pixel * if held.frozen { STEADY } else { SHAKY }).max(FINEST);
    let mut given = vec![
        Given { input: "pitch", amount: laid.share() * 100.0, unit: Unit::Percent },
        Given { input: "bars", amount: laid.bars(), unit: Unit::Count },
        Given { input: "marked", amount: marked_mm, unit: Unit::Millimetre },
        Given { input: "mark-spread", amount: off, unit: Unit::Millimetre },
        Given { input: "misfit", amount: off, unit: Unit::Millimetre },
    ];
    // A phone that stands upright looks at cloth that hangs: its level says nothing of the angle between the two.
    if let Some(tilt) = held.tilt.filter(|tilt| *tilt <= HANGING) {
        given.push(Given { input: "tilt", amount: tilt.max(LEVEL), unit: Unit::Degree });
    }
    Readings { instrument: &STITCH_COMB_LIVE, given }
}

/// The unit of the marks' distance in that system, and what is usual.
const fn usual(system: System) -> (Unit, &'static str) {
    match system {
        System::Metric => (Unit::Millimetre, "50"),
        System::Imperial => (Unit::Inch, "2"),
    }
}

/// What was typed between the marks when those readings were kept.
fn typed_before(kept: &Option<Readings>, system: System) -> Option<String> {
    let marked = kept.as_ref()?.given.iter().find(|given| given.input == "marked")?;
    let amount = marked.unit.convert(marked.amount, usual(system).0)?;
    Some(written_exactly(amount, 3, Decimal::spoken()))
}

/// What is asked of a distance that cannot be.
fn far_apart() -> String {
    let least = written(0.2, 1, Decimal::spoken());
    say!("Type how far apart the two marks are: 5 to 500 mm, or {least} to 19 in.", least)
}

/// The page.
#[component]
pub fn LiveComb(props: &Props) -> Html {
    let Props { system, back, check, kept, used } = props;
    let instrument: &'static Instrument = &STITCH_COMB_LIVE;
    let from = use_state(|| From::Nowhere);
    let (video, canvas) = (use_node_ref(), use_node_ref());
    let open = *from == From::Camera;
    let UseCamera { seen, camera, again } = use_camera(&video, open);
    let frozen = use_state_eq(|| false);
    let unreadable = use_state_eq(|| false);
    let size = use_state_eq(|| None::<Place>);
    let frame = use_state_eq(|| [0.0, 0.0]);
    let view = use_state(|| View { times: 1.0, corner: [0.0, 0.0] });
    let laid = use_state(|| None::<Laid>);
    // Where marks and bars lie before anybody moved them is no reading.
    let moved = use_state_eq(|| (false, false));
    let tilted = use_mut_ref(|| None::<f64>);
    let tilt_then = use_state_eq(|| None::<f64>);
    let unit = use_state_eq(|| usual(*system).0);
    let typed = use_state(|| typed_before(kept, *system).unwrap_or_else(|| usual(*system).1.to_owned()));
    let current = use_state_eq(|| kept.clone());

    let input = instrument.inputs.iter().find(|input| input.key == "marked");
    let marked = read(&typed, *unit, Decimal::spoken()).map_err(|fault| fault.sentence()).and_then(|amount| {
        let mm = amount.in_unit(Unit::Millimetre).filter(|mm| input.is_none_or(|input| (input.least..=input.most).contains(mm)));
        mm.ok_or_else(far_apart)
    });
    let marked_mm = *marked.as_ref().unwrap_or(&50.0);
    let limits = PITCH.map(|pitch| pitch / marked_mm);

    {
        // A frame that is held keeps its shape when the phone is turned.
        let size = size.clone();
        use_effect_with((seen, open, *frozen), move |(seen, open, frozen)| {
            if let (Seen::Live { width, height, .. }, true, false) = (*seen, *open, *frozen) {
                size.set(Some([f64::from(width), f64::from(height)]));
            }
        });
    }
    {
        // A picture of another shape begins anew; a frame of another shape shows the same marks.
        let (view, laid, moved) = (view.clone(), laid.clone(), moved.clone());
        let share = (BEGIN / marked_mm).clamp(0.01, 0.5);
        let before = use_mut_ref(|| None::<Place>);
        use_effect_with((*size, *frame), move |(size, frame)| {
            let Some(size) = size.filter(|_| frame[0] > 0.0 && frame[1] > 0.0) else { return };
            if before.replace(Some(size)) == Some(size) && laid.is_some() {
                view.set(view.within(*frame, size));
            } else {
                let filling = View::filling(*frame, size);
                view.set(filling);
                laid.set(Some(Laid::begun(*frame, filling, share)));
                moved.set((false, false));
            }
        });
    }
    {
        let (size, frozen, unreadable, canvas) = (size.clone(), frozen.clone(), unreadable.clone(), canvas.clone());
        let file = match &*from {
            From::File(taken) => Some(taken.clone()),
            _ => None,
        };
        use_effect_with(file, move |file| {
            let Some(file) = file.clone() else { return };
            lay(file, canvas, move |laid| {
                unreadable.set(laid.is_none());
                frozen.set(laid.is_some());
                size.set(laid.map(|(width, height)| [f64::from(width), f64::from(height)]));
            });
        });
    }
    let held = Held { frozen: *frozen, tilt: if open { if *frozen { *tilt_then } else { *tilted.borrow() } } else { None } };
    {
        let current = current.clone();
        let now =
            (*laid).filter(|_| *moved == (true, true) && marked.is_ok()).map(|laid| readings(&laid, *view, marked_mm, held));
        let begun = moved.0 || moved.1;
        use_effect_with((now, begun), move |(now, begun)| {
            if *begun {
                current.set(now.clone());
            }
        });
    }
    {
        let (used, alone) = (used.clone(), check.is_none());
        use_effect_with((*current).clone(), move |readings| {
            if let Some(readings) = readings.clone().filter(|_| alone) {
                used.emit(readings);
            }
        });
    }

    let start = {
        let from = from.clone();
        Callback::from(move |_: MouseEvent| {
            tilt::ask();
            from.set(From::Camera);
        })
    };
    // Another picture: nothing that was laid on the one before belongs to it.
    let to = {
        let (from, size, frozen, laid, unreadable) =
            (from.clone(), size.clone(), frozen.clone(), laid.clone(), unreadable.clone());
        move |place: From| {
            size.set(None);
            frozen.set(false);
            laid.set(None);
            unreadable.set(false);
            from.set(place);
        }
    };
    let on_file = {
        let to = to.clone();
        Callback::from(move |taken: Taken| to(From::File(taken)))
    };
    let to_nowhere = {
        let to = to.clone();
        Callback::from(move |()| to(From::Nowhere))
    };
    let to_shutter = Callback::from(move |_: MouseEvent| to(From::Shutter));
    let freeze = {
        let (camera, canvas, frozen) = (camera.clone(), canvas.clone(), frozen.clone());
        let (tilted, tilt_then) = (tilted.clone(), tilt_then.clone());
        Callback::from(move |()| {
            if !open {
                return;
            }
            if *frozen {
                frozen.set(false);
            } else if camera.borrow().as_ref().and_then(|camera| camera.freeze(&canvas)).is_some() {
                tilt_then.set(*tilted.borrow());
                frozen.set(true);
            }
        })
    };
    let told = Callback::from(move |tilt: Tilt| {
        tilted.replace(Some(tilt.degrees));
    });
    let on_laid = {
        let (laid, moved) = (laid.clone(), moved.clone());
        Callback::from(move |(now, what): (Laid, Moved)| {
            laid.set(Some(now));
            moved.set((moved.0 || what == Moved::Mark, moved.1 || what == Moved::Comb));
        })
    };
    let on_view = {
        let view = view.clone();
        Callback::from(move |now| view.set(now))
    };
    let on_frame = {
        let frame = frame.clone();
        Callback::from(move |now| frame.set(now))
    };

    let under = check.clone().unwrap_or(AttrValue::Static(say!("Measure instead of guessing")));
    let bar = html! { <Bar title={instrument.name()} {under} back={back.clone()} back_name={say!("Back")} /> };
    let outcome = (*current).as_ref().map(Readings::outcome);
    let figure = figure(&outcome, current.as_ref(), *moved, instrument, *system);
    if *from == From::Nowhere || *unreadable {
        return html! {
            <>
                { bar }
                if *unreadable {
                    <p class="fault lonely" role="alert">{ say!("That file holds no picture that this browser can read. Choose another one.") }</p>
                }
                <section class="card">
                    <h2>{ say!("What to do") }</h2>
                    <ol class="steps">{ for instrument.steps().iter().map(|step| html! { <li key={*step}>{ *step }</li> }) }</ol>
                    <p class="hint">{ instrument.cautions().first().copied().unwrap_or_default() }</p>
                    <p class="hint">{ say!("A tap on the picture holds it still. Nothing of it is kept or sent.") }</p>
                </section>
                <section class="card">
                    <h2>{ say!("Where the formula comes from") }</h2>
                    <dl class="numbers">{ for instrument.sources.iter().map(|source| html! { <div key={source.name()}><dt>{ source.name() }</dt><dd>{ source.title() }</dd></div> }) }</dl>
                </section>
                if outcome.is_some() {
                    <section class="card"><h2>{ say!("Read before") }</h2>{ figure }</section>
                }
                <div class="foot">
                    <PictureFile words={say!("Choose a picture")} {on_file} />
                    <button type="button" class="prime" onclick={start}>{ say!("Open the camera") }</button>
                </div>
            </>
        };
    }
    if *from == From::Shutter {
        return html! { <>{ bar }<Viewfinder on_taken={on_file.clone()} on_file_instead={on_file} on_close={to_nowhere} /></> };
    }
    if let (Seen::Failed(fault), true) = (seen, open) {
        return html! { <>{ bar }<NoCamera {fault} {again} {on_file} /></> };
    }
    let outcome = outcome.and_then(Result::ok);
    let use_it = check.is_some().then(|| {
        let (used, readings) = (used.clone(), (*current).clone());
        Callback::from(move |_: MouseEvent| {
            if let Some(readings) = readings.clone() {
                used.emit(readings);
            }
        })
    });
    let freeze_button = freeze.reform(|_: MouseEvent| ());
    let waiting = if open { say!("The camera is starting.") } else { say!("The picture is being read.") };
    html! {
        <div class="live-screen">
            { bar }
            <CombStage {video} {canvas} {open} frozen={*frozen} picture={*size} frame={*frame} view={*view} laid={*laid} {limits}
                between={format!("{} {}", *typed, unit.name())} {on_frame} {on_view} on_laid={on_laid.clone()} on_tap={freeze}>
                if size.is_none() {
                    <p class="camera-words" role="status">{ waiting }</p>
                }
                if open && !*frozen {
                    <Level {told} />
                }
            </CombStage>
            <div class="live-figure">{ figure }</div>
            if let Some(laid) = *laid {
                { pitch_row(&laid, marked_mm, *view, &on_laid) }
            }
            <div class="live-row">
                { marked_field(&typed, &unit, &marked) }
                if open {
                    <button type="button" class="second" disabled={size.is_none()} onclick={freeze_button}>{ if *frozen { say!("Go live") } else { say!("Hold still") } }</button>
                    if let Seen::Live { lamp: true, .. } = seen {
                        <Lamp camera={lamp_of(&camera)} />
                    }
                } else {
                    <button type="button" class="second" onclick={to_shutter}>{ say!("New picture") }</button>
                }
            </div>
            if let Some(fault) = marked.as_ref().err() {
                <p class="fault lonely" id="marked-fault" role="alert">{ fault }</p>
            }
            if let Some(use_it) = use_it {
                <div class="foot">
                    <button type="button" class="prime" onclick={use_it} disabled={outcome.is_none()}>
                        { outcome.as_ref().map_or(say!("Use this reading").to_owned(), |outcome| say!("Use {reading}", reading = words::value(outcome.value, outcome.uncertainty))) }
                    </button>
                </div>
            }
        </div>
    }
}

/// The density with its spread, in both units, and how many bars say so; or what to do next.
fn figure(
    outcome: &Option<Result<garment_assay::measure::Outcome, garment_assay::measure::Fault>>,
    readings: Option<&Readings>,
    moved: (bool, bool),
    instrument: &'static Instrument,
    system: System,
) -> Html {
    let bars = readings.and_then(|readings| readings.given.iter().find(|given| given.input == "bars")).map(|given| given.amount);
    html! {
        <output class="live-reading" aria-live="polite">
            { match outcome {
                Some(Ok(outcome)) => html! {
                    <>
                        <b>{ words::value(outcome.value, outcome.uncertainty) }</b>{ " " }
                        <span>{ say!("stitches per inch") }{ " " }{ words::spread_and_per_cm(outcome.value, outcome.uncertainty) }{ bars.map(|bars| format!(" · {}", counted(bars))) }</span>
                    </>
                },
                Some(Err(fault)) => html! { <span class="fault">{ fault.sentence(system, Decimal::spoken()) }</span> },
                None => html! { <span>{ instrument.steps().get(if moved.0 { 2 } else { 1 }).copied().unwrap_or_default() }</span> },
            } }
        </output>
    }
}

/// "16 bars".
fn counted(bars: f64) -> String {
    let count = bars as usize;
    if one(count) { say!("{count} bar", count) } else { say!("{count} bars", count) }
}

/// How far apart the bars are and how many there are, to be read aloud.
fn aloud(pitch: f64, bars: f64) -> String {
    let (pitch, count) = (written(pitch, 2, Decimal::spoken()), bars as usize);
    if one(count) {
        say!("{pitch} millimetres from bar to bar, {count} bar", pitch, count)
    } else {
        say!("{pitch} millimetres from bar to bar, {count} bars", pitch, count)
    }
}

/// The pitch by slider and fine buttons.
fn pitch_row(laid: &Laid, marked_mm: f64, view: View, on_laid: &Callback<(Laid, Moved)>) -> Html {
    let (laid, limits) = (*laid, PITCH.map(|pitch| pitch / marked_mm));
    let set = {
        let on_laid = on_laid.clone();
        move |share: f64| on_laid.emit((laid.with_share(share, limits), Moved::Comb))
    };
    let oninput = {
        let set = set.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(value) = event.target_dyn_into::<HtmlInputElement>().and_then(|field| field.value().parse::<f64>().ok()) {
                set(value.exp() / marked_mm);
            }
        })
    };
    // Half a CSS pixel at the last bar.
    let fine = 0.5 / view.times / (laid.bars() - 1.0).max(1.0);
    let nudge = |by: f64| {
        let set = set.clone();
        Callback::from(move |_: MouseEvent| set((laid.pitch + by) / laid.length()))
    };
    let pitch = laid.share() * marked_mm;
    html! {
        <div class="live-row live-pitch">
            <label class="unseen" for="pitch">{ say!("Wider or closer") }</label>
            <button type="button" class="second" onclick={nudge(-fine)} aria-label={say!("Bars a little closer")}>{ "−" }</button>
            <input id="pitch" type="range" min={PITCH[0].ln().to_string()} max={PITCH[1].ln().to_string()} step="0.001" value={pitch.ln().to_string()} {oninput}
                aria-valuetext={aloud(pitch, laid.bars())} />
            <button type="button" class="second" onclick={nudge(fine)} aria-label={say!("Bars a little wider")}>{ "+" }</button>
        </div>
    }
}

/// How far apart the marks are, as the scale says.
fn marked_field(typed: &UseStateHandle<String>, unit: &UseStateHandle<Unit>, marked: &Result<f64, String>) -> Html {
    let oninput = {
        let typed = typed.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                typed.set(field.value());
            }
        })
    };
    let onchange = {
        let unit = unit.clone();
        Callback::from(move |event: Event| {
            if let Some(chosen) = event.target_dyn_into::<HtmlSelectElement>().and_then(|field| Unit::from_key(&field.value())) {
                unit.set(chosen);
            }
        })
    };
    let fault = marked.is_err();
    html! {
        <div class="live-marked">
            <label for="marked">{ say!("Between the marks") }</label>
            <input id="marked" inputmode="decimal" autocomplete="off" value={(**typed).clone()} {oninput} aria-invalid={fault.to_string()} aria-describedby={fault.then_some("marked-fault")} />
            <select aria-label={say!("Unit between the marks")} {onchange}>
                { for [Unit::Millimetre, Unit::Centimetre, Unit::Inch].into_iter().map(|choice| html! {
                    <option key={choice.key()} value={choice.key()} selected={choice == **unit}>{ choice.symbol() }</option>
                }) }
            </select>
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 500 picture pixels at half a CSS pixel each are 250 for 50 mm: a CSS pixel is 0.2 mm, and two of them are lost to a shaking hand.
    #[test]
    fn marks_and_bars_become_amounts_of_the_instrument() {
        let laid = Laid { marks: [[100.0, 500.0], [600.0, 500.0]], first: [110.0, 400.0], pitch: 31.75 };
        let view = View { times: 0.5, corner: [0.0, 0.0] };
        let read = |held| readings(&laid, view, 50.0, held);
        let amount =
            |readings: &Readings, input| readings.given.iter().find(|given| given.input == input).map(|given| given.amount);
        let still = read(Held { frozen: true, tilt: Some(1.0) });
        assert!((still.outcome().expect("a density").value - 8.0).abs() < 1e-9);
        assert_eq!((amount(&still, "bars"), amount(&still, "tilt")), (Some(16.0), Some(2.0)));
        assert!((amount(&still, "misfit").expect("a misfit") - 0.2).abs() < 1e-12);
        let shaky = read(Held { frozen: false, tilt: None });
        assert!((amount(&shaky, "mark-spread").expect("a spread") - 0.4).abs() < 1e-12);
        assert_eq!(amount(&shaky, "tilt"), None);
        assert!(shaky.outcome().expect("a density").uncertainty > still.outcome().expect("a density").uncertainty);
        assert_eq!(amount(&read(Held { frozen: true, tilt: Some(88.0) }), "tilt"), None);
    }
}
