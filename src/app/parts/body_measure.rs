//! One measure of a person: what it is, a field, how to take it, and a word where a reading cannot be taken.

use garment_assay::fit::{BodyMeasure, BodyReading};
use garment_assay::language::within;
use garment_assay::quantity::{Amount, Decimal, System, Unit, read, written, written_exactly};
use garment_assay::say;
use garment_assay::specimen::Picture;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::drawn::Drawn;

/// The number as one types it.
fn typed(amount: Amount) -> String {
    written_exactly(amount.number, 6, Decimal::spoken()).replace('\u{202f}', "")
}

/// What is kept as it was given, ready to be corrected; the unit only where it is not the one that the field says.
fn as_given(kept: Option<&BodyReading>, unit: Unit) -> String {
    let Some(amount) = kept.map(BodyReading::amount) else { return String::new() };
    let number = typed(amount);
    if amount.unit == unit { number } else { format!("{number} {}", amount.unit.symbol()) }
}

/// A length in whole units: nobody measures a limit.
fn about(centimetres: f64, unit: Unit) -> String {
    Unit::Centimetre.convert(centimetres, unit).map(|length| written(length, 0, Decimal::spoken())).unwrap_or_default()
}

/// What was typed as a reading, none where nothing was, or why it cannot be taken.
fn taken(measure: &BodyMeasure, text: &str, unit: Unit) -> Result<Option<BodyReading>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let amount = read(text, unit, Decimal::spoken()).map_err(|fault| fault.sentence())?;
    if let Some(reading) = BodyReading::new(measure, amount) {
        return Ok(Some(reading));
    }
    if amount.in_unit(Unit::Centimetre).is_none() {
        return Err(say!("Type a length.").to_owned());
    }
    let [least, most] = measure.believed_cm;
    let (least, most, symbol) = (about(least, unit), about(most, unit), unit.symbol());
    // A tape has two sides, and the other one is the commonest slip.
    let other = if amount.unit == Unit::Inch { Unit::Centimetre } else { Unit::Inch };
    let number = typed(amount);
    Err(if BodyReading::new(measure, Amount { number: amount.number, unit: other }).is_some() {
        say!(
            "The field takes {least} to {most} {symbol} here. If you read {unit}, type “{typed}”.",
            least,
            most,
            symbol,
            unit = other.name(),
            typed = format!("{number} {}", other.symbol())
        )
    } else {
        say!("The field takes {least} to {most} {symbol} here. See whether a digit or a point slipped.", least, most, symbol)
    })
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The measure.
    pub measure: &'static BodyMeasure,
    /// What is kept of it.
    #[prop_or_default]
    pub kept: Option<BodyReading>,
    /// A line on when it is wanted.
    #[prop_or_default]
    pub wanted: Option<AttrValue>,
    /// Where the tape goes, drawn.
    #[prop_or_default]
    pub picture: Option<Picture>,
    /// Metric or imperial.
    pub system: System,
    /// Called with another reading, or with none to take it away.
    pub keep: Callback<Option<BodyReading>>,
}

/// One measure.
#[component]
pub fn BodyMeasureRow(props: &Props) -> Html {
    let Props { measure, kept, wanted, picture, system, keep } = props;
    let measure = *measure;
    let unit = Unit::Centimetre.in_system(*system);
    let text = use_state_eq(|| as_given(kept.as_ref(), unit));
    let editing = use_state_eq(|| false);
    {
        // An undo, or another window, may change what is kept.
        let text = text.clone();
        use_effect_with((*kept, unit), move |(kept, unit)| text.set(as_given(kept.as_ref(), *unit)));
    }
    let said = taken(measure, &text, unit);
    let oninput = {
        let (text, editing) = (text.clone(), editing.clone());
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                editing.set(true);
                text.set(field.value());
            }
        })
    };
    let onblur = {
        let (text, editing, kept, keep) = (text.clone(), editing.clone(), *kept, keep.clone());
        Callback::from(move |_: FocusEvent| {
            editing.set(false);
            // What was not touched is not rewritten, however it was once given.
            if *text != as_given(kept.as_ref(), unit)
                && let Ok(reading) = taken(measure, &text, unit)
                && reading != kept
            {
                keep.emit(reading);
            }
        })
    };
    let fault = said.err().filter(|_| !*editing).map(|sentence| match kept {
        Some(reading) => {
            let amount = reading.amount();
            let stays = say!("Not kept; {length} stays.", length = format!("{} {}", typed(amount), amount.unit.symbol()));
            format!("{sentence} {stays}")
        }
        None => format!("{sentence} {}", say!("Not kept yet.")),
    });
    let id = format!("body-{}", measure.key);
    let (fault_id, wanted_id) = (format!("{id}-fault"), format!("{id}-wanted"));
    let described: Vec<String> =
        [fault.as_ref().map(|_| fault_id.clone()), wanted.as_ref().map(|_| wanted_id.clone())].into_iter().flatten().collect();
    html! {
        <li class="body-measure">
            <div class="body-line">
                <label for={id.clone()}>{ measure.name() }</label>
                <span class="field-unit">
                    <input {id} inputmode="decimal" autocomplete="off" value={(*text).clone()} {oninput} {onblur}
                        aria-label={say!("{measure}, in {unit}", measure = measure.name(), unit = unit.name())} aria-invalid={fault.is_some().to_string()}
                        aria-describedby={(!described.is_empty()).then(|| described.join(" "))} />
                    <span class="unit" aria-hidden="true">{ unit.symbol() }</span>
                </span>
            </div>
            if let Some(fault) = fault {
                <p class="fault" id={fault_id} role="alert">{ fault }</p>
            }
            if let Some(wanted) = wanted {
                <p class="hint" id={wanted_id}>{ wanted }</p>
            }
            <details class="body-how">
                <summary>{ say!("How to take it") }<span class="unseen">{ format!(": {}", within(measure.name())) }</span></summary>
                <div class="body-how-in">
                    if let Some(picture) = picture {
                        <Drawn picture={*picture} />
                    }
                    <p>{ measure.how() }</p>
                </div>
                <p class="hint">{ say!("One reading lies about {length} from the next, from breath and where the tape lies. The fitting room reckons with that.", length = spread(measure, unit)) }</p>
            </details>
        </li>
    }
}

/// How far one reading lies from the next, in a unit.
fn spread(measure: &BodyMeasure, unit: Unit) -> String {
    let length = Unit::Centimetre.convert(measure.spread_cm, unit).unwrap_or(measure.spread_cm);
    format!("{} {}", written(length, 1, Decimal::spoken()), unit.symbol())
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::fit::{BODY_MEASURES, WAIST};

    fn waist(text: &str, unit: Unit) -> Result<Option<BodyReading>, String> {
        taken(&WAIST, text, unit)
    }

    #[test]
    fn a_length_in_any_unit_is_taken_and_comes_back_as_it_was_given() {
        for (text, field, back) in [
            ("86", Unit::Centimetre, "86"),
            ("34 in", Unit::Centimetre, "34 in"),
            ("33 1/2", Unit::Inch, "33.5"),
            ("86,5", Unit::Centimetre, "86.5"),
            ("860 mm", Unit::Inch, "860 mm"),
        ] {
            let reading = waist(text, field).expect("taken").expect("a reading");
            assert_eq!(as_given(Some(&reading), field), back);
            assert_eq!(waist(back, field), Ok(Some(reading)));
        }
        assert_eq!(waist("  ", Unit::Inch), Ok(None));
    }

    #[test]
    fn what_is_not_believed_says_what_is_and_guesses_at_the_other_side_of_the_tape() {
        let inches = waist("34", Unit::Centimetre).expect_err("too little");
        assert!(inches.contains("40 to 200 cm") && inches.contains("“34 in”"), "{inches}");
        let centimetres = waist("86", Unit::Inch).expect_err("too much");
        assert!(centimetres.contains("16 to 79 in") && centimetres.contains("“86 cm”"), "{centimetres}");
        let slip = waist("8600", Unit::Centimetre).expect_err("far too much");
        assert!(slip.contains("slipped"), "{slip}");
        assert_eq!(waist("3 g", Unit::Centimetre).map_err(|_| ()), Err(()));
        assert!(waist("wide", Unit::Centimetre).is_err());
    }

    #[test]
    fn every_measure_says_its_limits_in_both_systems() {
        for measure in BODY_MEASURES {
            for unit in [Unit::Centimetre, Unit::Inch] {
                let sentence = taken(measure, "9999", unit).expect_err("beyond belief");
                assert!(sentence.contains(unit.symbol()) && !sentence.contains("NaN"), "{sentence}");
            }
        }
    }
}
