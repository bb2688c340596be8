//! What the tape says, place by place: the garment's measure typed right here, the body's beside it, and how the two sit.

use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::fit::LineFit;
use garment_assay::garment::{Act, FitReport, Garment, Missing, Row, Taped};
use garment_assay::language::within;
use garment_assay::measure::{GIRTH, PointOfMeasure};
use garment_assay::quantity::{Amount, Decimal, System, Unit, read, written_exactly};
use garment_assay::say;
use yew::prelude::*;

use super::drawn::Drawn;
use super::fit_scale::FitScale;
use super::typed::Typed;
use crate::app::fit_words;
use crate::app::route::Route;
use crate::app::words::percent;

/// What is being typed, by the keys of points of measure. It is reckoned with at once, so that nothing moves when the field is left: a
/// button that a thumb is already on its way to must not slip away.
pub type Drafts = BTreeMap<&'static str, String>;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// What everything comes to, with what is being typed.
    pub report: FitReport,
    /// What is being typed.
    pub drafts: Rc<Drafts>,
    /// Where the measures of the person are typed; none while nobody is chosen.
    pub measures: Option<AttrValue>,
    /// Metric or imperial.
    pub system: System,
    /// Called when readings are to be kept.
    pub act: Callback<Act>,
    /// Called with what is being typed at a point, and with none once it is kept.
    pub typed: Callback<(&'static str, Option<String>)>,
    /// Called to choose the person.
    pub choose: Callback<()>,
}

/// One reading as it was given; with several, none, for they are changed on the tape sheet.
fn kept(taped: Option<&Taped>, unit: Unit) -> String {
    let Some([reading]) = taped.map(Taped::readings) else { return String::new() };
    let number = written_exactly(reading.number, 6, Decimal::spoken()).replace('\u{202f}', "").replace('\u{2212}', "-");
    if reading.unit == unit { number } else { format!("{number} {}", reading.unit.symbol()) }
}

/// What was typed as a reading, none where nothing was, or why it cannot be taken.
fn taken(text: &str, point: &'static PointOfMeasure, round: bool, system: System) -> Result<Option<Taped>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let amount: Amount = read(text, GIRTH.inputs[1].unit_in(system), Decimal::spoken()).map_err(|fault| fault.sentence())?;
    let taped = Taped::new(vec![amount], round).ok_or_else(|| say!("Type a length.").to_owned())?;
    taped.outcome(point).map_err(|fault| fault.sentence(system, Decimal::spoken()))?;
    Ok(Some(taped))
}

/// The garment as it would be with what is being typed.
pub fn with_drafts(garment: &Rc<Garment>, drafts: &Drafts, system: System) -> Rc<Garment> {
    let typed = |garment: Rc<Garment>, (key, text): (&&str, &String)| {
        let point = garment.family().points.iter().find(|point| point.key == *key);
        let round = point.and_then(|point| garment.taped(point)).is_some_and(Taped::round);
        match point.map(|point| (point, taken(text, point, round, system))) {
            Some((point, Ok(taped))) => Rc::new(garment.after(Act::Measure(point, taped))),
            _ => garment,
        }
    };
    drafts.iter().fold(garment.clone(), typed)
}

/// The field for the garment's width or length at a place.
fn field(props: &Props, row: &Row) -> Html {
    let Props { garment, drafts, system, act, typed, .. } = props;
    let (point, taped, system) = (row.point, garment.taped(row.point), *system);
    let unit = GIRTH.inputs[1].unit_in(system);
    if taped.is_some_and(|taped| taped.readings().len() > 1) {
        let sheet = Route::TapeSheet(garment.id().clone()).href();
        return html! { <div><h3>{ point.name() }</h3><p class="hint">{ say!("The mean of several readings.") }{ " " }<a href={sheet}>{ say!("Tape sheet") }</a></p></div> };
    }
    let round = taped.is_some_and(Taped::round);
    let write = {
        let (act, typed) = (act.clone(), typed.clone());
        Callback::from(move |text: String| {
            let taped = taken(&text, point, round, system)?;
            act.emit(Act::Measure(point, taped));
            typed.emit((point.key, None));
            Ok(())
        })
    };
    let typing = typed.reform(|text: String| (point.key, Some(text)));
    let how = match (point.doubled, round) {
        (true, false) => say!("flat width"),
        (true, true) => say!("all round"),
        (false, _) => say!("length"),
    };
    let text = drafts.get(point.key).cloned().unwrap_or_else(|| kept(taped, unit));
    html! {
        <Typed id={format!("fit-{}", point.key)} label={format!("{}, {how}, {}", point.name(), unit.symbol())} kept={text} {typing} {write} />
    }
}

/// What is missing at a place, and the way there.
fn missing(props: &Props, row: &Row, missing: Missing) -> Html {
    let body = within(row.body.name());
    let said = match missing {
        Missing::Garment => {
            return html! { <p class="hint">{ say!("The {measure} is known; the cloth is not measured here.", measure = body) }</p> };
        }
        Missing::Body => say!("The cloth is measured; what is missing:"),
        Missing::Both => say!("Cloth and body are not measured here."),
    };
    let way = match &props.measures {
        Some(measures) => html! { <a href={measures.clone()}>{ say!("Add the {measure}", measure = body) }</a> },
        None => {
            let choose = props.choose.reform(|_: MouseEvent| ());
            html! { <button type="button" class="ghost fit-way" onclick={choose}>{ say!("For whom is it?") }</button> }
        }
    };
    html! { <p class="hint">{ said }{ " " }{ way }</p> }
}

/// How cloth and body sit there.
fn said(fit: &LineFit, row: &Row, system: System) -> Html {
    let now = &fit.now;
    let (garment, body) = (fit.tape.garment, fit.tape.body);
    let figures = [
        (say!("Cloth"), fit_words::length(garment.value, garment.spread, system)),
        (say!("Body"), fit_words::length(body.value, body.spread, system)),
        (say!("Ease"), fit_words::length(now.ease.middle, garment.spread.hypot(body.spread), system)),
        (say!("This cut has"), fit_words::meant(&fit.wanted, system)),
    ];
    html! {
        <>
            <p class="fit-sits"><b>{ now.sits().words(fit.line.lies) }</b><small>{ say!("now, {chance}", chance = percent(now.chance(now.sits()))) }</small></p>
            <FitScale fit={fit.clone()} />
            <dl class="figures fit-figures">
                { for figures.into_iter().map(|(name, figure)| html! { <div key={name}><dt>{ name }</dt><dd>{ figure }</dd></div> }) }
            </dl>
            if row.adds_cm > 0.0 {
                <p class="hint">{ say!("Body: the {measure} with {length} added, because the cloth lies at another place.", measure = within(row.body.name()), length = fit_words::about(row.adds_cm, system)) }</p>
            }
        </>
    }
}

/// The places.
#[component]
pub fn TapeRows(props: &Props) -> Html {
    let Props { garment, report, system, .. } = props;
    let system = *system;
    let pictures = garment.family().drawn_points;
    let stretched = report.rows.iter().filter_map(|row| row.fit.as_ref().ok()).any(|fit| fit.wanted.low < 0.0);
    html! {
        <div class="fit-tape">
            <p class="hint">{ say!("Lay it flat, fastened, without pulling. Type flat widths as you read them; they are doubled here. Leave out what you cannot measure.") }</p>
            <ul class="fit-rows">
                { for report.rows.iter().map(|row| {
                    let picture = pictures.iter().find(|(key, _)| *key == row.point.key).map(|(_, picture)| *picture);
                    html! {
                        <li key={row.point.key}>
                            <div class="fit-entry">
                                if let Some(picture) = picture { <Drawn {picture} /> }
                                { field(props, row) }
                            </div>
                            { match &row.fit {
                                Ok(fit) => said(fit, row, system),
                                Err(what) => missing(props, row, *what),
                            } }
                        </li>
                    }
                }) }
            </ul>
            if report.rows.iter().any(|row| row.fit.is_ok()) {
                <p class="hint">{ say!("Ease is cloth minus body.") }{ " " }{ if stretched { say!("Below 0 the cloth is stretched or the band sits firm, which some cuts mean it to.") } else { "" } }{ if stretched { " " } else { "" } }{ say!("In the drawing the pale zone is where this cut is meant to end, and the dashes are where this piece may end. ± is 1 standard deviation; the per cent say how sure the word is.") }</p>
            }
            <p><a class="onward" href={Route::TapeSheet(garment.id().clone()).href()}><b>{ say!("Tape sheet: how to lay it, read again, other places") }</b></a></p>
        </div>
    }
}
