//! What was read from a picture, in words, and what a person can say about it.

use garment_assay::garment::Readings;
use garment_assay::language::one;
use garment_assay::measure::MarkedYarn;
use garment_assay::quantity::{Decimal, System, written};
use garment_assay::say;
use photo::{Answer, Graduation, Said, SeamCount, WeaveReading};
use yew::prelude::*;

use super::picture::Found;
use super::refusal::{rivals, sentence};
use crate::shared::words;

/// What is shown on the picture.
pub fn shown(heard: &Answer) -> Found {
    match heard {
        Answer::Seam(found, count) => Found {
            places: found.places.clone(),
            stitches: count.iter().flat_map(|count| &count.stitches).map(|one| (one.from, one.to, one.skipped)).collect(),
            ..Found::default()
        },
        Answer::Weave(found, cloth) => Found {
            places: found.places.clone(),
            area: cloth.iter().flat_map(|cloth| cloth.area).collect(),
            lines: cloth.iter().flat_map(|cloth| cloth.lines.clone()).collect(),
            ..Found::default()
        },
        Answer::NoScale(_) | Answer::Stain(_) => Found::default(),
    }
}

/// How even the stitches are, in words. Where the words change is judgement; a picture tells evenness to a hundredth or two.
fn evenness(unevenness: f64) -> String {
    let percent = written(unevenness * 100.0, 0, Decimal::spoken());
    match unevenness {
        share if share < 0.06 => {
            say!("Even: the length of stitches varies by {percent} % (standard deviation, as a share of the mean).", percent)
        }
        share if share < 0.12 => say!(
            "A little uneven: the length of stitches varies by {percent} % (standard deviation, as a share of the mean).",
            percent
        ),
        _ => say!("Uneven: the length of stitches varies by {percent} % (standard deviation, as a share of the mean).", percent),
    }
}

fn long_stitches(count: &SeamCount) -> Option<String> {
    let long = count.stitches.iter().filter(|stitch| stitch.skipped).count();
    let line = match long {
        0 => return None,
        1 => say!("One long stitch, dotted on the picture, may be a skipped one.").to_owned(),
        count => say!("{count} long stitches, dotted on the picture, may be skipped ones.", count),
    };
    let look = say!("Look at the cloth: a picture misses most skipped stitches and takes some others for them.");
    Some(format!("{line} {look}"))
}

/// What the object told.
fn about_scale(heard: &Answer) -> Option<String> {
    let (Answer::Seam(found, _) | Answer::Weave(found, _)) = heard else { return None };
    let ruler = found.graduation.map(|graduation| {
        match graduation {
            Graduation::Millimetre => say!("The ruler shows millimetres."),
            Graduation::Sixteenth => say!("The ruler shows sixteenths of an inch."),
        }
        .to_owned()
    });
    let tilted = found.tilt.filter(|tilt| *tilt >= 3.0);
    let tilt =
        tilted.map(|tilt| say!("The phone was tilted by about {degrees}°.", degrees = written(tilt, 0, Decimal::spoken())));
    let both: Vec<String> = [ruler, tilt].into_iter().flatten().collect();
    (!both.is_empty()).then(|| both.join(" "))
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The answer.
    pub heard: Answer,
    /// Readings that follow from it; none for a refusal.
    pub readings: Option<Readings>,
    /// What the person said about the count.
    pub said: Said,
    /// Called when they say something else.
    pub say: Callback<Said>,
    /// Which yarn they marked.
    pub yarn: MarkedYarn,
    /// Called when they say so.
    pub mark_yarn: Callback<MarkedYarn>,
    /// Metric or imperial.
    pub system: System,
}

/// Buttons for a count that is twice or half as large.
fn correction(props: &Props) -> Html {
    let says = |what: Said| {
        let say = props.say.clone();
        Callback::from(move |_: MouseEvent| say.emit(what))
    };
    html! {
        <div class="row">
            if props.said == Said::Nothing {
                <button type="button" class="second" onclick={says(Said::Twice)}>{ say!("Twice as many") }</button>
                <button type="button" class="second" onclick={says(Said::Half)}>{ say!("Half as many") }</button>
            } else {
                <button type="button" class="second" onclick={says(Said::Nothing)}>{ say!("As first found") }</button>
            }
        </div>
    }
}

fn about_stitches(count: &SeamCount, props: &Props) -> Html {
    let over = written(count.stitch_mm * count.stitches.len() as f64, 0, Decimal::spoken());
    let found = count.stitches.len();
    let found = if one(found) {
        say!("{count} stitch found over {length} mm. Do the bars lie on the needle holes?", count = found, length = over)
    } else {
        say!("{count} stitches found over {length} mm. Do the bars lie on the needle holes?", count = found, length = over)
    };
    html! {
        <>
            <p>{ found }</p>
            { correction(props) }
            <p class="hint">{ evenness(count.unevenness) }</p>
            if let Some(long) = long_stitches(count) {
                <p class="hint">{ long }</p>
            }
        </>
    }
}

fn about_cloth(cloth: &WeaveReading, props: &Props) -> Html {
    let is = |yarn: MarkedYarn| {
        let mark_yarn = props.mark_yarn.clone();
        let onchange = Callback::from(move |_: Event| mark_yarn.emit(yarn));
        let name = if yarn == MarkedYarn::End { say!("along the cloth") } else { say!("across the cloth") };
        html! { <label class="tick"><input type="radio" name="marked-yarn" checked={yarn == props.yarn} {onchange} /><span>{ name }</span></label> }
    };
    let twill = match cloth.twill_degrees {
        Some(degrees) => {
            let degrees = words::value(degrees, cloth.twill_u.max(0.5));
            say!("A twill line, {degrees}° from the yarns that cross the marked one.", degrees)
        }
        None => say!("No twill line: a plain weave, or one that the picture does not show.").to_owned(),
    };
    html! {
        <>
            <fieldset class="ways">
                <legend>{ say!("The yarn I marked runs") }</legend>
                { is(MarkedYarn::End) }
                { is(MarkedYarn::Pick) }
            </fieldset>
            <p class="hint">{ say!("Along is the way of the selvedge, on most garments from top to bottom.") }</p>
            <p class="hint">{ twill }</p>
            <p class="hint">{ say!("From one line on the picture to the next are ten yarns. Count a few: if there are not ten, the reading is wrong.") }</p>
        </>
    }
}

/// Why there is no reading, and the choice where two fit.
fn refused(heard: &Answer, why: &str, say: &Callback<Said>) -> Html {
    html! {
        <div class="picture-refused">
            <p class="fault" role="alert">{ why }</p>
            if let Some(rivals) = rivals(heard) {
                <div class="row">
                    { for rivals.into_iter().map(|per_cm| {
                        let say = say.clone();
                        let onclick = Callback::from(move |_: MouseEvent| say.emit(Said::About(per_cm)));
                        let [cm, inch] = [per_cm, per_cm * 2.54].map(|density| written(density, 1, Decimal::spoken()));
                        html! { <button key={per_cm.to_bits().to_string()} type="button" class="second" {onclick}>{ say!("{cm} per cm · {inch} per inch", cm, inch) }</button> }
                    }) }
                </div>
            }
        </div>
    }
}

/// The reading large, what it consists of, and whether it is the right one.
#[component]
pub fn PictureResult(props: &Props) -> Html {
    let Props { heard, readings, say, system, .. } = props;
    let system = *system;
    if let Some(why) = sentence(heard) {
        return refused(heard, &why, say);
    }
    let outcome = readings.as_ref().map(|readings| (readings.instrument, readings.outcome()));
    html! {
        <section class="card">
            <output class="marks-figure" aria-live="polite">
                { match (&outcome, heard) {
                    (Some((_, Ok(outcome))), Answer::Seam(..)) => html! {
                        <>
                            <b>{ words::value(outcome.value, outcome.uncertainty) }</b>
                            <span>{ say!("stitches per inch") }</span>
                            <span>{ words::spread_and_per_cm(outcome.value, outcome.uncertainty) }</span>
                        </>
                    },
                    (Some((instrument, Ok(outcome))), _) => html! {
                        <>
                            <b>{ words::value(outcome.value, outcome.uncertainty) }</b>
                            <span>{ words::outcome(outcome, instrument.unit, system) }</span>
                            { for outcome.also.iter().map(|also| html! { <span key={also.key}>{ format!("{}: {}", also.name(), words::also(also, system)) }</span> }) }
                            { for outcome.says().iter().map(|line| html! { <span key={*line}>{ *line }</span> }) }
                        </>
                    },
                    (Some((_, Err(fault))), _) => html! { <span class="fault">{ fault.sentence(system, Decimal::spoken()) }</span> },
                    (None, _) => html! { <span class="fault">{ say!("The picture shows none here.") }</span> },
                } }
            </output>
            { match heard {
                Answer::Seam(_, Ok(count)) => about_stitches(count, props),
                Answer::Weave(_, Ok(cloth)) => about_cloth(cloth, props),
                _ => Html::default(),
            } }
            if let Some((instrument, Ok(outcome))) = &outcome {
                <p class="hint">{ words::budget(outcome, instrument) }</p>
            }
            if let Some(scale) = about_scale(heard) {
                <p class="hint">{ scale }</p>
            }
        </section>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn evenness_is_said_in_a_word_and_a_number() {
        assert!(evenness(0.04).starts_with("Even: the length of stitches varies by 4 %"));
        assert!(evenness(0.2).starts_with("Uneven: the length of stitches varies by 20 %"));
    }
}
