//! Measuring instead of judging, within a check: which instrument, and its form.

use garment_assay::check::Check;
use garment_assay::garment::{Act, Answer, Readings};
use garment_assay::measure::Instrument;
use garment_assay::quantity::{Decimal, System, Unit, written, written_exactly};
use garment_assay::say;
use yew::prelude::*;

use super::instrument_form::InstrumentForm;
use super::means::Means;
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The check that the reading answers.
    pub check: &'static Check,
    /// Readings as kept, when the check was answered with them.
    pub kept: Option<Readings>,
    /// Metric or imperial.
    pub system: System,
    /// Address of the ruler for this check, up to the instrument's key.
    pub marks: AttrValue,
    /// Address of the camera's picture for this check, up to the instrument's key.
    pub live: AttrValue,
    /// Address of reading a picture for this check, up to the instrument's key.
    pub picture: AttrValue,
    /// Called when the reading is to be used.
    pub act: Callback<Act>,
}

/// Over what length a count would tell which side of an edge it lies on, where it does not yet.
fn count_longer(check: &Check, readings: &Readings, system: System) -> Option<String> {
    let telling = readings.length_that_tells(check)?;
    let edge = written_exactly(telling.edge, 1, Decimal::spoken());
    let unit = match system {
        System::Metric => Unit::Centimetre,
        System::Imperial => Unit::Inch,
    };
    let (over, _) = telling.over.in_unit(unit)?;
    let length = format!("{} {}", written(over.ceil(), 0, Decimal::spoken()), unit.symbol());
    Some(say!("It could be either side of {edge} per inch. Count over {length} to tell.", edge, length))
}

/// The instruments of a check, one of them open.
#[component]
pub fn Reading(props: &Props) -> Html {
    let Props { check, kept, system, marks, live, picture, act } = props;
    let check = *check;
    let open = use_state_eq(|| kept.is_some());
    let chosen = use_state(|| None::<&'static Instrument>);
    let toggle = {
        let open = open.clone();
        Callback::from(move |_: MouseEvent| open.set(!*open))
    };
    let Some(first) = check.instruments.first().copied() else { return Html::default() };
    let instrument = (*chosen).or(kept.as_ref().map(|kept| kept.instrument)).unwrap_or(first);
    let given = kept.as_ref().filter(|kept| kept.instrument == instrument).map(|kept| kept.given.clone());
    let advice = {
        let system = *system;
        Callback::from(move |readings: Readings| count_longer(check, &readings, system))
    };
    let used = act.reform(move |readings| Act::Answer(check, Answer::Measured(readings)));
    html! {
        <section class="reading" aria-label={say!("Measure it")}>
            <button type="button" class="reading-open" aria-expanded={open.to_string()} onclick={toggle}>
                <b>{ say!("Measure it") }</b><small>{ first.says() }</small>
            </button>
            if *open {
                if check.instruments.len() > 1 {
                    <fieldset class="ways">
                        <legend class="unseen">{ say!("to measure it" | "How") }</legend>
                        { for check.instruments.iter().copied().map(|way| {
                            let onchange = { let chosen = chosen.clone(); Callback::from(move |_: Event| chosen.set(Some(way))) };
                            html! {
                                <label key={way.key} class="tick"><input type="radio" name={format!("{}-way", check.key)} checked={way == instrument} {onchange} /><span>{ way.name() }</span></label>
                            }
                        }) }
                    </fieldset>
                }
                if Means::of(instrument) != Means::Form {
                    <div class="reading-form">
                        <p>{ instrument.says() }</p>
                        if let Some(Ok(outcome)) = kept.as_ref().filter(|kept| kept.instrument == instrument).map(Readings::outcome) {
                            <output class="figure">{ words::outcome(&outcome, instrument.unit, *system) }</output>
                        }
                        if Means::of(instrument) == Means::Camera {
                            <a class="prime" href={format!("{live}{}", instrument.key)}>{ say!("Use the camera") }</a>
                        } else if Means::of(instrument) == Means::Picture {
                            <a class="prime" href={format!("{picture}{}", instrument.key)}>{ say!("Take or choose a picture") }</a>
                        } else {
                            <a class="prime" href={format!("{marks}{}", instrument.key)}>{ say!("Open the ruler") }</a>
                        }
                    </div>
                } else {
                    <InstrumentForm key={instrument.key} {instrument} {given} system={*system} verb={say!("Use this reading")} {used} {advice} />
                }
            }
        </section>
    }
}
