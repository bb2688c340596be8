//! What the tape says, place by place: the garment's measure typed right here, the body's beside it, and how the two sit.

use std::rc::Rc;

use garment_assay::fit::LineFit;
use garment_assay::garment::{Act, FitReport, Garment, Missing, Row, Taped};
use garment_assay::measure::GIRTH;
use garment_assay::quantity::{Amount, Decimal, System, Unit, read, written_exactly};
use yew::prelude::*;

use super::drawn::Drawn;
use super::fit_scale::FitScale;
use super::typed::Typed;
use crate::app::fit_words;
use crate::app::route::Route;
use crate::app::words::percent;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// What everything comes to.
    pub report: FitReport,
    /// Where the measures of the person are typed; none while nobody is chosen.
    pub measures: Option<AttrValue>,
    /// Metric or imperial.
    pub system: System,
    /// Called when readings are to be kept.
    pub act: Callback<Act>,
    /// Called to choose the person.
    pub choose: Callback<()>,
}

/// One reading as it was given; with several, none, for they are changed on the tape sheet.
fn kept(taped: Option<&Taped>, unit: Unit) -> String {
    let Some([reading]) = taped.map(Taped::readings) else { return String::new() };
    let number = written_exactly(reading.number, 6, Decimal::Point).replace('\u{202f}', "").replace('\u{2212}', "-");
    if reading.unit == unit { number } else { format!("{number} {}", reading.unit.symbol()) }
}

/// The field for the garment's width or length at a place.
fn field(garment: &Garment, row: &Row, system: System, act: &Callback<Act>) -> Html {
    let (point, taped) = (row.point, garment.taped(row.point));
    let unit = GIRTH.inputs[1].unit_in(system);
    if taped.is_some_and(|taped| taped.readings().len() > 1) {
        let sheet = Route::TapeSheet(garment.id().clone()).href();
        return html! { <div><h3>{ point.name }</h3><p class="hint">{ "The mean of several readings. " }<a href={sheet}>{ "Tape sheet" }</a></p></div> };
    }
    let round = taped.is_some_and(Taped::round);
    let write = {
        let act = act.clone();
        Callback::from(move |text: String| {
            if text.trim().is_empty() {
                act.emit(Act::Measure(point, None));
                return Ok(());
            }
            let amount: Amount = read(&text, unit, Decimal::Point).map_err(|fault| fault.sentence())?;
            let taped = Taped::new(vec![amount], round).ok_or_else(|| "Type a length.".to_owned())?;
            taped.outcome(point).map_err(|fault| fault.sentence(system, Decimal::Point))?;
            act.emit(Act::Measure(point, Some(taped)));
            Ok(())
        })
    };
    let how = match (point.doubled, round) {
        (true, false) => "flat width",
        (true, true) => "all round",
        (false, _) => "length",
    };
    html! {
        <Typed id={format!("fit-{}", point.key)} label={format!("{}, {how}, {}", point.name, unit.symbol())} kept={kept(taped, unit)} {write} />
    }
}

/// What is missing at a place, and the way there.
fn missing(props: &Props, row: &Row, missing: Missing) -> Html {
    let body = row.body.name.to_lowercase();
    let said = match missing {
        Missing::Garment => {
            return html! { <p class="hint">{ format!("The {body} is known; the cloth is not measured here.") }</p> };
        }
        Missing::Body => "The cloth is measured; what is missing: ",
        Missing::Both => "Cloth and body are not measured here. ",
    };
    let way = match &props.measures {
        Some(measures) => html! { <a href={measures.clone()}>{ format!("Add the {body}") }</a> },
        None => {
            let choose = props.choose.reform(|_: MouseEvent| ());
            html! { <button type="button" class="ghost fit-way" onclick={choose}>{ "For whom is it?" }</button> }
        }
    };
    html! { <p class="hint">{ said }{ way }</p> }
}

/// How cloth and body sit there.
fn said(fit: &LineFit, row: &Row, system: System) -> Html {
    let now = &fit.now;
    let (garment, body) = (fit.tape.garment, fit.tape.body);
    let figures = [
        ("Cloth", fit_words::length(garment.value, garment.spread, system)),
        ("Body", fit_words::length(body.value, body.spread, system)),
        ("Ease", fit_words::length(now.ease.middle, garment.spread.hypot(body.spread), system)),
        ("This cut has", fit_words::meant(&fit.wanted, system)),
    ];
    html! {
        <>
            <p class="fit-sits"><b>{ now.sits().words(fit.line.lies) }</b><small>{ format!("now, {}", percent(now.chance(now.sits()))) }</small></p>
            <FitScale fit={fit.clone()} />
            <dl class="figures fit-figures">
                { for figures.into_iter().map(|(name, figure)| html! { <div key={name}><dt>{ name }</dt><dd>{ figure }</dd></div> }) }
            </dl>
            if row.adds_cm > 0.0 {
                <p class="hint">{ format!("Body: the {} with {} added, because the cloth lies at another place.", row.body.name.to_lowercase(), fit_words::about(row.adds_cm, system)) }</p>
            }
        </>
    }
}

/// The places.
#[component]
pub fn TapeRows(props: &Props) -> Html {
    let Props { garment, report, system, act, .. } = props;
    let system = *system;
    let pictures = garment.family().drawn_points;
    let stretched = report.rows.iter().filter_map(|row| row.fit.as_ref().ok()).any(|fit| fit.wanted.low < 0.0);
    html! {
        <div class="fit-tape">
            <p class="hint">{ "Lay it flat, fastened, without pulling. Type flat widths as you read them; they are doubled here. Leave out what you cannot measure." }</p>
            <ul class="fit-rows">
                { for report.rows.iter().map(|row| {
                    let picture = pictures.iter().find(|(key, _)| *key == row.point.key).map(|(_, picture)| *picture);
                    html! {
                        <li key={row.point.key}>
                            <div class="fit-entry">
                                if let Some(picture) = picture { <Drawn {picture} /> }
                                { field(garment, row, system, act) }
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
                <p class="hint">{ "Ease is cloth minus body. " }{ if stretched { "Below 0 the cloth is stretched or the band sits firm, which some cuts mean it to. " } else { "" } }{ "In the drawing the pale zone is where this cut is meant to end, and the dashes are where this piece may end. ± is 1 standard deviation; the per cent say how sure the word is." }</p>
            }
            <p><a class="onward" href={Route::TapeSheet(garment.id().clone()).href()}><b>{ "Tape sheet: how to lay it, read again, other places" }</b></a></p>
        </div>
    }
}
