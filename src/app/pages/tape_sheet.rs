//! The tape sheet of a garment: what was read at each point of measure, and what it comes to.

use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::fit::Person;
use garment_assay::garment::{Act, Garment, Taped};
use garment_assay::language::{one, said, within};
use garment_assay::measure::{DOUBLED, GIRTH, Outcome, PointOfMeasure};
use garment_assay::quantity::{Amount, Decimal, System, Unit, read, written_exactly, written_with_spread};
use garment_assay::say;
use garment_assay::specimen::Picture;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::model::Message;
use crate::app::pages::fitting;
use crate::app::parts::bar::Bar;
use crate::app::parts::drawn::Drawn;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::verdict::VerdictLines;
use crate::app::route::Route;
use crate::app::words;

/// What stands in the fields of one point.
#[derive(Clone, Debug, PartialEq)]
struct Draft {
    /// One text for each reading; the unit behind a number only where it is not the one that the field says.
    texts: Vec<String>,
    /// The tape went round.
    round: bool,
}

impl Draft {
    /// What is kept, as it was given.
    fn of(kept: Option<&Taped>, unit: Unit) -> Draft {
        let text = |reading: &Amount| {
            let number = written_exactly(reading.number, 6, Decimal::spoken()).replace('\u{202f}', "").replace('\u{2212}', "-");
            if reading.unit == unit { number } else { format!("{number} {}", reading.unit.symbol()) }
        };
        let texts: Vec<String> = kept.map(|kept| kept.readings().iter().map(text).collect()).unwrap_or_default();
        Draft { texts: if texts.is_empty() { vec![String::new()] } else { texts }, round: kept.is_some_and(Taped::round) }
    }

    /// The readings that can be taken, and a sentence for each field that cannot. An empty field is no reading.
    fn said(&self, point: &PointOfMeasure, unit: Unit, system: System) -> (Option<Taped>, BTreeMap<usize, String>) {
        let (mut readings, mut faults) = (Vec::new(), BTreeMap::new());
        for (place, text) in self.texts.iter().enumerate().filter(|(_, text)| !text.trim().is_empty()) {
            let taken = read(text, unit, Decimal::spoken()).map_err(|fault| fault.sentence()).and_then(|amount| {
                let alone = Taped::new(vec![amount], self.round).map(|taped| taped.outcome(point));
                match alone {
                    Some(Ok(_)) => Ok(amount),
                    Some(Err(fault)) => Err(fault.sentence(system, Decimal::spoken())),
                    None => Err(say!("Type a length.").to_owned()),
                }
            });
            match taken {
                Ok(amount) => readings.push(amount),
                Err(sentence) => drop(faults.insert(place, sentence)),
            }
        }
        (Taped::new(readings, self.round), faults)
    }
}

#[derive(Properties, PartialEq)]
struct ReadingProps {
    /// The point measured.
    point: &'static PointOfMeasure,
    /// Its place among the readings, from 0.
    place: usize,
    /// What stands in the field.
    text: String,
    /// The unit that it says.
    unit: Unit,
    /// Why it cannot be taken.
    fault: Option<String>,
    /// Changes when the field is to be sought out.
    sought: u32,
    /// Called with what is typed.
    typed: Callback<(usize, String)>,
    /// Called when the field is left.
    left: Callback<()>,
}

/// One reading of the tape.
#[component]
fn Reading(props: &ReadingProps) -> Html {
    let ReadingProps { point, place, text, unit, fault, sought, typed, left } = props;
    let place = *place;
    let field = use_node_ref();
    {
        let field = field.clone();
        use_effect_with(*sought, move |sought| {
            if let Some(field) = field.cast::<HtmlInputElement>().filter(|_| *sought > 0) {
                // A field that cannot be sought out can still be tapped.
                let _ = field.focus();
            }
        });
    }
    let oninput = typed.reform(move |event: InputEvent| {
        (place, event.target_dyn_into::<HtmlInputElement>().map(|field| field.value()).unwrap_or_default())
    });
    let onblur = left.reform(|_: FocusEvent| ());
    let id = format!("{}-{place}", point.key);
    let (lay, fault_id) = (format!("{}-lay", point.key), format!("{id}-fault"));
    html! {
        <div class="tape-reading">
            <label for={id.clone()}>{ say!("Reading {number}", number = place + 1) }</label>
            <span class="field-unit">
                <input {id} ref={field} inputmode="decimal" autocomplete="off" value={text.clone()} {oninput} {onblur}
                    aria-label={say!("Reading {number}, {place}, in {unit}", number = place + 1, place = within(point.name()), unit = unit.name())}
                    aria-invalid={fault.is_some().to_string()} aria-describedby={if fault.is_some() { format!("{fault_id} {lay}") } else { lay }} />
                <span class="unit" aria-hidden="true">{ unit.symbol() }</span>
            </span>
            if let Some(fault) = fault {
                <p class="fault" id={fault_id} role="alert">{ fault }{ " " }{ say!("This one is not kept.") }</p>
            }
        </div>
    }
}

/// A length in the person's unit.
fn length(value: f64, spread: f64, system: System) -> String {
    let own = Unit::Centimetre.in_system(system);
    match (Unit::Centimetre.convert(value, own), Unit::Centimetre.convert(spread, own)) {
        (Some(value), Some(spread)) => written_with_spread(value, spread, own, Decimal::spoken()),
        _ => written_with_spread(value, spread, Unit::Centimetre, Decimal::spoken()),
    }
}

/// How a girth came about.
fn girth(width: String, count: usize) -> String {
    if one(count) {
        say!("Girth, from {count} reading: flat width {width}, doubled.", count, width)
    } else {
        say!("Girth, mean of {count} readings: flat width {width}, doubled.", count, width)
    }
}

fn figure(outcome: &Outcome, readings: usize, system: System) -> Html {
    html! {
        <>
            <span>{ length(outcome.value, outcome.uncertainty, system) }</span>
            <small>
                if let Some(flat) = outcome.also("flat") {
                    { girth(words::also(flat, system), readings) }
                } else if one(readings) {
                    { say!("From {count} reading.", count = readings) }
                } else {
                    { say!("Mean of {count} readings.", count = readings) }
                }
            </small>
            { for outcome.says().iter().filter(|_| readings > 1).filter(|sentence| **sentence != said(DOUBLED)).map(|sentence| html! { <small key={*sentence}>{ *sentence }</small> }) }
        </>
    }
}

#[derive(Properties, PartialEq)]
struct PointProps {
    /// The point.
    point: &'static PointOfMeasure,
    /// What is kept of it.
    kept: Option<Taped>,
    /// Where the tape lies, drawn.
    picture: Option<Picture>,
    /// Metric or imperial.
    system: System,
    /// Called when readings are to be kept.
    act: Callback<Act>,
}

/// One point of measure: how to lay it, its readings, and what they come to.
#[component]
fn Point(props: &PointProps) -> Html {
    let PointProps { point, kept, picture, system, act } = props;
    let (point, system) = (*point, *system);
    let unit = GIRTH.inputs[1].unit_in(system);
    let draft = use_state_eq(|| Draft::of(kept.as_ref(), unit));
    let editing = use_state_eq(|| None::<usize>);
    let sought = use_state_eq(|| (0_usize, 0_u32));
    let (taped, faults) = draft.said(point, unit, system);
    {
        // An undo, or another window, may change what is kept; what is being corrected stays where it is.
        let (draft, taped) = (draft.clone(), taped.clone());
        use_effect_with((kept.clone(), unit), move |(kept, unit)| {
            if *kept != taped {
                draft.set(Draft::of(kept.as_ref(), *unit));
            }
        });
    }
    let keep = {
        let (act, kept) = (act.clone(), kept.clone());
        move |draft: &Draft| {
            // What was not touched is not rewritten, however it was once given.
            if *draft != Draft::of(kept.as_ref(), unit) {
                let (taped, _) = draft.said(point, unit, system);
                if taped != kept {
                    act.emit(Act::Measure(point, taped));
                }
            }
        }
    };
    let typed = {
        let (draft, editing) = (draft.clone(), editing.clone());
        Callback::from(move |(place, text): (usize, String)| {
            let mut next = (*draft).clone();
            if let Some(field) = next.texts.get_mut(place) {
                *field = text;
            }
            draft.set(next);
            editing.set(Some(place));
        })
    };
    let left = {
        let (draft, editing, keep) = (draft.clone(), editing.clone(), keep.clone());
        Callback::from(move |()| {
            editing.set(None);
            keep(&draft);
        })
    };
    let onround = {
        let draft = draft.clone();
        Callback::from(move |event: Event| {
            let round = event.target_dyn_into::<HtmlInputElement>().is_some_and(|field| field.checked());
            let next = Draft { round, ..(*draft).clone() };
            keep(&next);
            draft.set(next);
        })
    };
    let again = {
        let (draft, sought) = (draft.clone(), sought.clone());
        Callback::from(move |_: MouseEvent| {
            let mut next = (*draft).clone();
            if next.texts.last().is_some_and(|text| !text.trim().is_empty()) && next.texts.len() < Taped::MOST {
                next.texts.push(String::new());
            }
            sought.set((next.texts.len() - 1, sought.1 + 1));
            draft.set(next);
        })
    };
    let outcome = taped.as_ref().filter(|_| faults.is_empty()).and_then(|taped| Some((taped.outcome(point).ok()?, taped)));
    let is_full = draft.texts.len() >= Taped::MOST;
    html! {
        <section class="card tape-point" aria-labelledby={format!("{}-name", point.key)}>
            <h2 id={format!("{}-name", point.key)}>{ point.name() }</h2>
            <div class="tape-lay">
                if let Some(picture) = picture {
                    <Drawn picture={*picture} />
                }
                <p class="hint" id={format!("{}-lay", point.key)}>{ point.lay() }</p>
            </div>
            { for draft.texts.iter().enumerate().map(|(place, text)| html! {
                <Reading key={place} {point} {place} text={text.clone()} {unit} sought={if sought.0 == place { sought.1 } else { 0 }}
                    fault={faults.get(&place).filter(|_| *editing != Some(place)).cloned()} typed={typed.clone()} left={left.clone()} />
            }) }
            if point.doubled {
                <label class="tick"><input type="checkbox" checked={draft.round} onchange={onround}
                    aria-label={say!("The tape went all the way round, {place}", place = within(point.name()))} /><span>{ say!("The tape went all the way round") }</span></label>
            }
            <output class="figure">
                if let Some((outcome, taped)) = &outcome {
                    { figure(outcome, taped.readings().len(), system) }
                } else if !faults.is_empty() {
                    <small>{ say!("No figure while a reading cannot be taken.") }</small>
                }
            </output>
            if !is_full && outcome.is_some() {
                <p><button type="button" class="ghost" onclick={again} aria-label={say!("Read again, {place}", place = within(point.name()))}>{ say!("Read again") }</button></p>
            }
        </section>
    }
}

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
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The sheet: every point of measure of the garment's family.
#[component]
pub fn TapeSheet(props: &Props) -> Html {
    let Props { garment, people, system, can_take_back, send } = props;
    let id = garment.id().clone();
    let act = {
        let id = id.clone();
        send.reform(move |act: Act| Message::Done(id.clone(), act))
    };
    let take_back = {
        let id = id.clone();
        send.reform(move |_: MouseEvent| Message::TakeBack(id.clone()))
    };
    let points = garment.family().points;
    let label = garment.called();
    let under =
        format!("{label} · {}", say!("{count} of {all} measured", count = garment.measures().count(), all = points.len()));
    html! {
        <>
            <Bar title={say!("Tape sheet")} {under} back={Route::Checks(id.clone()).href()} back_name={say!("Back to all checks")}>
                <button type="button" class="icon-button" onclick={take_back} disabled={!can_take_back} aria-label={say!("Undo")}><Icon shape={Shape::Undo} /></button>
            </Bar>
            <section class="card">
                <h2>{ say!("What to do") }</h2>
                <ol class="steps">{ for GIRTH.steps().iter().map(|step| html! { <li key={*step}>{ *step }</li> }) }</ol>
                { for GIRTH.cautions().iter().map(|caution| html! {
                    <p key={*caution} class="caution"><Icon shape={Shape::Care} /><span>{ *caution }</span></p>
                }) }
                <p class="hint">{ say!("Flat widths are typed as read and doubled here. The figure says how far off it may be (1 standard deviation). It moves no band: a measure is not a quality.") }</p>
            </section>
            { for points.iter().map(|point| html! {
                <Point key={point.key} {point} kept={garment.taped(point).cloned()} system={*system} act={act.clone()}
                    picture={garment.family().drawn_points.iter().find(|(key, _)| *key == point.key).map(|(_, picture)| *picture)} />
            }) }
            if let Some(report) = fitting::report(garment, people) {
                <section class="card">
                    <h2>{ say!("Fit") }</h2>
                    <VerdictLines {report} system={*system} />
                    <p><a class="second" href={Route::Fitting(id.clone()).href()}>{ say!("Fitting room") }</a></p>
                </section>
            }
            <div class="foot">
                <a class="prime" href={Route::Resume(id.clone()).href()}>{ say!("Go on checking") }</a>
                <a class="second" href={Route::Result(id).href()}>{ say!("See the result") }</a>
            </div>
        </>
    }
}
