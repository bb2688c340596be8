//! What the tape says, place by place: the garment's measure typed right here, the body's beside it, and how the two sit.

use std::rc::Rc;

use garment_assay::garment::{Act, FitReport, Garment, Row, Taped};
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
    /// Metric or imperial.
    pub system: System,
    /// Called when readings are to be kept.
    pub act: Callback<Act>,
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
    let several = taped.is_some_and(|taped| taped.readings().len() > 1);
    let sheet = Route::TapeSheet(garment.id().clone()).href();
    if several {
        return html! { <p class="hint">{ "The mean of several readings. " }<a href={sheet}>{ "Tape sheet" }</a></p> };
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
    let how = if point.doubled && !round { "flat width" } else { "length" };
    html! {
        <Typed id={format!("fit-{}", point.key)} label={format!("{}, {how}, {}", point.name, unit.symbol())} kept={kept(taped, unit)} {write} />
    }
}

/// The places.
#[component]
pub fn TapeRows(props: &Props) -> Html {
    let Props { garment, report, system, act } = props;
    let system = *system;
    let pictures = garment.family().drawn_points;
    html! {
        <section class="card fit-tape">
            <h2>{ "What the tape says" }</h2>
            <p class="hint">{ "Lay it flat, fastened, without pulling. Type flat widths as you read them; they are doubled here. Leave out what you cannot measure. On each strip yellow is the room that the cut is meant to have, grey is too little or far too much, and the dashes are where this one lies; at the dotted line cloth is as large as the body." }</p>
            <ul class="fit-rows">
                { for report.rows.iter().map(|row| {
                    let picture = pictures.iter().find(|(key, _)| *key == row.point.key).map(|(_, picture)| *picture);
                    html! {
                        <li key={row.point.key}>
                            <div class="fit-entry">
                                if let Some(picture) = picture { <Drawn {picture} /> }
                                { field(garment, row, system, act) }
                            </div>
                            { said(row, system) }
                        </li>
                    }
                }) }
            </ul>
            <p><a href={Route::TapeSheet(garment.id().clone()).href()}>{ "Tape sheet: read again, other places" }</a></p>
        </section>
    }
}

/// How cloth and body sit there.
fn said(row: &Row, system: System) -> Html {
    let fit = match &row.fit {
        Err(missing) => return html! { <p class="hint">{ fit_words::missing(row, *missing) }</p> },
        Ok(fit) => fit,
    };
    let now = &fit.now;
    let (garment, body) = (fit.tape.garment, fit.tape.body);
    html! {
        <>
            <p class="fit-sits"><b>{ now.sits().words(fit.line.lies) }</b><small>{ format!("{} now", percent(now.chance(now.sits()))) }</small></p>
            <FitScale fit={fit.clone()} />
            <p class="hint">{ format!(
                "Cloth {}, {} {}{}: {}. This cut has {} here.",
                fit_words::length(garment.value, garment.spread, system),
                row.body.name.to_lowercase(),
                fit_words::length(body.value, body.spread, system),
                if row.adds_cm > 0.0 { format!(", with {} added for where it lies", fit_words::about(row.adds_cm, system)) } else { String::new() },
                fit_words::ease(&now.ease, system),
                fit_words::meant(&fit.wanted, system),
            ) }</p>
        </>
    }
}
