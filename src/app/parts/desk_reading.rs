//! A reading typed in one line, where the handiest instrument of a check asks for one number or two.

use garment_assay::check::Check;
use garment_assay::garment::{Given, Readings};
use garment_assay::measure::{Input, InputKind, Instrument, Needed};
use garment_assay::quantity::{Decimal, System, read, written_exactly};
use garment_assay::say;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::means::Means;
use crate::app::words;

/// Most numbers that are typed in a line.
const MOST: usize = 2;

/// The inputs that must be given, if they are one or two numbers.
fn line(instrument: &'static Instrument) -> Option<Vec<&'static Input>> {
    let inputs: Vec<&'static Input> = instrument.inputs.iter().filter(|input| input.needed == Needed::Always).collect();
    let numbers = inputs.iter().all(|input| matches!(input.kind, InputKind::WholeCount | InputKind::Measured));
    (Means::of(instrument) == Means::Form && numbers && (1..=MOST).contains(&inputs.len())).then_some(inputs)
}

/// The handiest instrument of a check whose reading fits into a line, with what it must be given.
pub fn in_a_line(check: &'static Check) -> Option<(&'static Instrument, Vec<&'static Input>)> {
    check.instruments.iter().find_map(|instrument| Some((*instrument, line(instrument)?)))
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The check; its handiest instrument is [`in_a_line`].
    pub check: &'static Check,
    /// Readings as kept, when the check was answered with some.
    pub kept: Option<Readings>,
    /// Metric or imperial.
    pub system: System,
    /// Called with a reading that is to be used.
    pub used: Callback<Readings>,
}

fn readings(
    instrument: &'static Instrument,
    inputs: &[&'static Input],
    texts: &[String],
    system: System,
) -> Result<Readings, String> {
    let given = inputs.iter().zip(texts).map(|(input, text)| {
        let amount = read(text, input.unit_in(system), Decimal::spoken())
            .map_err(|fault| format!("{}: {}", input.name(), fault.sentence()))?;
        Ok(Given { input: input.key, amount: amount.number, unit: amount.unit })
    });
    let readings = Readings { instrument, given: given.collect::<Result<Vec<Given>, String>>()? };
    readings.outcome().map_err(|fault| fault.sentence(system, Decimal::spoken()))?;
    Ok(readings)
}

/// The line; Enter uses what is typed.
#[component]
pub fn DeskReading(props: &Props) -> Html {
    let Props { check, kept, system, used } = props;
    let texts = use_state_eq(|| vec![String::new(); MOST]);
    let fault = use_state_eq(|| None::<String>);
    let Some((instrument, inputs)) = in_a_line(check) else { return Html::default() };
    let system = *system;
    let outcome = kept.as_ref().filter(|kept| kept.instrument == instrument).and_then(|kept| kept.outcome().ok());
    let take_it = {
        let (texts, fault, used, inputs) = (texts.clone(), fault.clone(), used.clone(), inputs.clone());
        move || match readings(instrument, &inputs, &texts, system) {
            Ok(readings) => {
                fault.set(None);
                texts.set(vec![String::new(); MOST]);
                used.emit(readings);
            }
            Err(sentence) => fault.set(Some(sentence)),
        }
    };
    let onkeydown = {
        let take_it = take_it.clone();
        Callback::from(move |event: KeyboardEvent| {
            if event.key() == "Enter" && event.target_dyn_into::<HtmlInputElement>().is_some() {
                event.prevent_default();
                take_it();
            }
        })
    };
    html! {
        <div class="quick-reading" role="group" aria-label={instrument.name()} {onkeydown}>
            <p class="hint">{ say!("Or measure it: {how}", how = instrument.says()) }</p>
            { for inputs.iter().enumerate().map(|(place, input)| {
                let oninput = {
                    let texts = texts.clone();
                    Callback::from(move |event: InputEvent| {
                        if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                            let mut next = (*texts).clone();
                            next[place] = field.value();
                            texts.set(next);
                        }
                    })
                };
                let id = format!("quick-reading-{place}");
                let unit = input.unit_in(system).symbol();
                let now = kept.iter().flat_map(|kept| &kept.given).find(|given| given.input == input.key);
                let now = now.map(|given| format!("{} {}", written_exactly(given.amount, 3, Decimal::spoken()), given.unit.symbol()).trim().to_owned());
                html! {
                    <div class="field" key={input.key}>
                        <label for={id.clone()}>{ if unit.is_empty() { input.name().to_owned() } else { format!("{}, {unit}", input.name()) } }</label>
                        <input {id} inputmode="decimal" autocomplete="off" value={texts[place].clone()} placeholder={now} {oninput}
                            aria-invalid={fault.is_some().to_string()} aria-describedby={fault.is_some().then_some("quick-reading-fault")} />
                    </div>
                }
            }) }
            <button type="button" class="second" onclick={move |_: MouseEvent| take_it()}>{ say!("Use it") }</button>
            if let Some(outcome) = outcome {
                <output>{ words::outcome(&outcome, instrument.unit, system) }</output>
            }
            if let Some(fault) = fault.as_ref() {
                <p class="fault" id="quick-reading-fault" role="alert">{ fault }</p>
            }
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::catalog::FAMILIES;
    use garment_assay::measure::STITCH_DENSITY;

    #[test]
    fn a_stitch_count_is_two_numbers() {
        let inputs = line(&STITCH_DENSITY).expect("it fits into a line");
        assert_eq!(inputs.iter().map(|input| input.key).collect::<Vec<_>>(), ["count", "length"]);
        let texts = |count: &str, length: &str| vec![count.to_owned(), length.to_owned()];
        // 24 stitches over 3 inches are 8 to the inch.
        let outcome = readings(&STITCH_DENSITY, &inputs, &texts("24", "3 in"), System::Metric).map(|readings| readings.outcome());
        assert!(outcome.is_ok_and(|outcome| outcome.is_ok_and(|outcome| (outcome.value - 8.0).abs() < 1e-9)));
        for (count, length) in [("", "76"), ("24", ""), ("many", "76"), ("24", "9000"), ("24.5", "76")] {
            assert!(readings(&STITCH_DENSITY, &inputs, &texts(count, length), System::Metric).is_err(), "{count} over {length}");
        }
    }

    #[test]
    fn every_family_has_a_check_whose_reading_fits_into_a_line() {
        for family in FAMILIES {
            assert!(family.checks.iter().any(|check| in_a_line(check).is_some()), "{}", family.key);
        }
    }
}
