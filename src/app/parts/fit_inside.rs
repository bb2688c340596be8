//! What a tailor can do: cloth left inside, measured with a ruler, and the alterations that it lets happen.

use std::rc::Rc;

use garment_assay::catalog::FitTable;
use garment_assay::fit::{Allowance, Alteration, Sits, Way};
use garment_assay::garment::{FitAct, FitReport, Garment};
use garment_assay::language::within;
use garment_assay::quantity::{Decimal, System, Unit, read, written_exactly};
use garment_assay::say;
use garment_assay::specimen::{LeftInside, Picture};
use yew::prelude::*;

use super::drawn::Drawn;
use super::icon::{Icon, Shape};
use super::typed::Typed;
use crate::app::fit_words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// How its family is fitted.
    pub table: &'static FitTable,
    /// What everything comes to.
    pub report: FitReport,
    /// Metric or imperial.
    pub system: System,
    /// Called with what was found.
    pub act: Callback<FitAct>,
}

/// The field for cloth left at a place.
fn found(garment: &Garment, allowance: &'static Allowance, system: System, act: &Callback<FitAct>) -> Html {
    let unit = Unit::Centimetre.in_system(system);
    let kept = garment.fitting().allowance(allowance).map_or_else(String::new, |amount| {
        let number = written_exactly(amount.number, 6, Decimal::spoken()).replace('\u{202f}', "");
        if amount.unit == unit { number } else { format!("{number} {}", amount.unit.symbol()) }
    });
    let write = {
        let act = act.clone();
        Callback::from(move |text: String| {
            if text.trim().is_empty() {
                act.emit(FitAct::Allowance(allowance, None));
                return Ok(());
            }
            let amount = read(&text, unit, Decimal::spoken()).map_err(|fault| fault.sentence())?;
            match amount.in_unit(Unit::Centimetre) {
                Some(centimetres) if (0.0..=allowance.most_cm).contains(&centimetres) => {
                    act.emit(FitAct::Allowance(allowance, Some(amount)));
                    Ok(())
                }
                Some(_) => {
                    Err(say!("Between 0 and {length} is believed here.", length = fit_words::about(allowance.most_cm, system)))
                }
                None => Err(say!("Type a length.").to_owned()),
            }
        })
    };
    let picture = LeftInside::ALL.into_iter().find(|inside| inside.key() == allowance.key).map(Picture::LeftInside);
    html! {
        <div key={allowance.key} class="fit-entry fit-found">
            if let Some(picture) = picture { <Drawn {picture} /> }
            <Typed id={format!("inside-{}", allowance.key)} label={format!("{}, {}", allowance.name(), unit.symbol())} hint={allowance.how()} {kept} {write} />
        </div>
    }
}

/// An alteration that would mend something.
fn job(alteration: &'static Alteration, place: &str) -> Html {
    html! {
        <li key={alteration.key}>
            <b>{ alteration.name() }</b><small>{ format!("{place}: {}", alteration.cost.words()) }</small>
            <p class="hint">{ alteration.says() }</p>
        </li>
    }
}

/// The part.
#[component]
pub fn Inside(props: &Props) -> Html {
    let Props { garment, table, report, system, act } = props;
    let jobs: Vec<(&'static Alteration, String)> =
        report.rows.iter().flat_map(|row| row.mend.iter().map(|alteration| (*alteration, within(row.point.name())))).collect();
    let short: Vec<String> = report
        .rows
        .iter()
        .filter(|row| row.mend.is_empty())
        .filter_map(|row| Some((row, row.fit.as_ref().ok()?.amiss()?)))
        .map(|(row, (way, by))| {
            let (place, length) = (row.point.name(), fit_words::about(by, *system));
            if way == Way::Out {
                say!("{place}: about {length} more is needed, and no alteration goes so far.", place, length)
            } else {
                say!("{place}: about {length} less is needed, and no alteration goes so far.", place, length)
            }
        })
        .collect();
    // It fits, and lies looser or longer than the cut has it: what could be taken in, for one who wants that.
    let closer: Vec<(&'static Alteration, String)> = (report.rows.iter())
        .filter(|row| row.mend.is_empty())
        .filter_map(|row| Some((row, row.fit.as_ref().ok()?)))
        .filter(|(_, fit)| fit.now.sits() == Sits::Loose && fit.amiss().is_none())
        .flat_map(|(row, fit)| fit.line.alterations.iter().map(|alteration| (*alteration, within(row.point.name()))))
        .filter(|(alteration, _)| alteration.way == Way::In)
        .collect();
    html! {
        <>
            if !table.allowances.is_empty() {
                <p class="hint">{ say!("Turn it inside out and lay a ruler on what was left for later. Cloth left inside says that the maker thought of it.") }</p>
            }
            { for table.allowances.iter().map(|allowance| found(garment, allowance, *system, act)) }
            if jobs.is_empty() && short.is_empty() {
                <p>{ if report.rows.iter().any(|row| row.fit.is_ok()) { say!("Nothing that was measured needs a tailor.") } else { say!("What the tape finds amiss stands here with what mends it. What the mirror shows says its own cure.") } }</p>
            }
            if !jobs.is_empty() {
                <ul class="fit-jobs">{ for jobs.iter().map(|(alteration, place)| job(alteration, place)) }</ul>
            }
            { for short.into_iter().map(|sentence| html! { <p key={sentence.clone()}>{ sentence }</p> }) }
            if !closer.is_empty() {
                <p>{ say!("If you want it nearer to the cut:") }</p>
                <ul class="fit-jobs">{ for closer.iter().map(|(alteration, place)| job(alteration, place)) }</ul>
            }
            <p class="caution"><Icon shape={Shape::Care} /><span>{ say!("Prices differ from place to place: ask before you buy with an alteration in mind.") }</span></p>
        </>
    }
}
