//! The measures of one person: those that a garment is compared with first, the others folded away.

use std::rc::Rc;

use garment_assay::catalog::FitTable;
use garment_assay::fit::{BODY_MEASURES, BodyMeasure, BodyPlace, BodyReading, Line, Person};
use garment_assay::garment::Garment;
use garment_assay::language::{said, within};
use garment_assay::quantity::System;
use garment_assay::say;
use garment_assay::specimen::Picture;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::people::NAMELESS;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::body_measure::BodyMeasureRow;
use crate::app::route::Route;

/// A measure that a family's table leans on.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Needed {
    /// The measure.
    measure: &'static BodyMeasure,
    /// The measure for which it stands in, where it is second best everywhere.
    instead_of: Option<&'static BodyMeasure>,
}

/// What a table leans on: the best measure of each line in the order of the sheet, then those that may stand in.
fn needed(table: &FitTable) -> Vec<Needed> {
    let mut all: Vec<Needed> = Vec::new();
    let mut add = |measure: &'static BodyMeasure, instead_of: Option<&'static BodyMeasure>| {
        if all.iter().all(|other| other.measure.key != measure.key) {
            all.push(Needed { measure, instead_of });
        }
    };
    let best = |line: &Line| line.against.first().map(|against| against.measure);
    table.lines.iter().filter_map(|line| best(line)).for_each(|measure| add(measure, None));
    for line in table.lines {
        line.against.iter().skip(1).for_each(|against| add(against.measure, best(line)));
    }
    all
}

/// How many of the places that a table compares are known of a person, and how many there are. A measure that stands in counts.
pub fn measures_of(person: &Person, table: &FitTable) -> (usize, usize) {
    let known = |line: &&Line| line.against.iter().any(|against| person.reading(against.measure).is_some());
    (table.lines.iter().copied().filter(|line| known(line)).count(), table.lines.len())
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The person.
    pub person: Rc<Person>,
    /// The garment from whose fitting room the page was opened.
    pub garment: Option<Rc<Garment>>,
    /// Metric or imperial.
    pub system: System,
    /// Where the tape goes at each place, drawn.
    #[prop_or_default]
    pub pictures: &'static [(BodyPlace, Picture)],
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The measures of one person.
#[component]
pub fn PersonPage(props: &Props) -> Html {
    let Props { person, garment, system, pictures, send } = props;
    let rename = {
        let (send, person) = (send.clone(), person.clone());
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                send.emit(Message::Person(Box::new(person.as_ref().clone().named(field.value().trim()))));
            }
        })
    };
    let forget = {
        let id = person.id().clone();
        send.reform(move |_: MouseEvent| Message::Forget(id.clone()))
    };
    let row = |measure: &'static BodyMeasure, wanted: Option<String>| {
        let keep = {
            let (send, person) = (send.clone(), person.clone());
            Callback::from(move |reading: Option<BodyReading>| {
                send.emit(Message::Person(Box::new(person.as_ref().clone().with(measure, reading))));
            })
        };
        let picture = pictures.iter().find(|(place, _)| *place == measure.place).map(|(_, picture)| *picture);
        html! { <BodyMeasureRow key={measure.key} {measure} kept={person.reading(measure).copied()} wanted={wanted.map(AttrValue::from)} {picture} system={*system} {keep} /> }
    };
    let first = garment.as_ref().and_then(|garment| garment.family().fit).map(needed).unwrap_or_default();
    let others: Vec<&'static BodyMeasure> =
        BODY_MEASURES.into_iter().filter(|measure| first.iter().all(|one| one.measure.key != measure.key)).collect();
    let under = match person.readings().count() {
        0 => say!("Nothing measured yet").to_owned(),
        count => say!("{count} of {all} measured", count, all = BODY_MEASURES.len()),
    };
    let (back, back_name) = match garment {
        Some(garment) => (Route::Fitting(garment.id().clone()), say!("Back to the fitting room")),
        None => (Route::People, say!("Back to people")),
    };
    let title = if person.name().is_empty() { said(NAMELESS).to_owned() } else { person.name().to_owned() };
    html! {
        <>
            <Bar {title} {under} back={back.href()} {back_name} />
            <section class="card">
                <div class="field">
                    <label for="person-name">{ say!("What you call them") }</label>
                    <input id="person-name" autocomplete="off" maxlength={Person::LONGEST_NAME.to_string()} value={person.name().to_owned()} onchange={rename} />
                </div>
                <p class="hint">{ say!("Measure over what is worn under the garment. Tape level and lying close, not drawn in; breathe as always. Take what you have time for: a measure that is missing is left out, not guessed. All of it stays on this device.") }</p>
            </section>
            if let Some(garment) = garment.as_ref().filter(|_| !first.is_empty()) {
                <section class="card" aria-labelledby="body-first">
                    <h2 id="body-first">{ say!("For {garment}", garment = garment.called()) }</h2>
                    <p>{ say!("The garment is compared at these places. Each one measured makes the answer surer.") }</p>
                    <ul class="body-measures">
                        { for first.iter().map(|one| row(one.measure, one.instead_of.map(|best| {
                            say!("Stands in where the {measure} is not known, and is less sure there.", measure = within(best.name()))
                        }))) }
                    </ul>
                </section>
                <details class="card rate-group body-others">
                    <summary><h2>{ say!("Other measures") }</h2><small>{ others.len() }</small></summary>
                    <ul class="body-measures">{ for others.iter().map(|measure| row(measure, None)) }</ul>
                </details>
            } else {
                <section class="card" aria-labelledby="body-all">
                    <h2 id="body-all">{ say!("Measures") }</h2>
                    <p>{ say!("Top to bottom. From a garment’s fitting room you see first those that matter for it.") }</p>
                    <ul class="body-measures">{ for others.iter().map(|measure| row(measure, None)) }</ul>
                </section>
            }
            if !person.aside().is_empty() {
                <p class="hint lonely">{ say!("Some of what is kept of this person cannot be read by this version of the app. It is kept as it is.") }</p>
            }
            <p class="lonely"><button type="button" class="ghost" onclick={forget}>{ say!("Delete this person") }</button></p>
            if let Some(garment) = garment {
                <div class="foot">
                    <a class="prime" href={Route::Fitting(garment.id().clone()).href()}>{ say!("To the fitting room") }</a>
                </div>
            }
        </>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::catalog::FAMILIES;
    use garment_assay::catalog::SOURCES;
    use garment_assay::fit::{Against, Along, BAND, Between, HIP, Lies, WAIST};

    #[test]
    fn the_best_measure_of_each_line_comes_first_and_nothing_comes_twice() {
        for table in FAMILIES.into_iter().filter_map(|family| family.fit) {
            let needed = needed(table);
            let keys: std::collections::BTreeSet<&str> = needed.iter().map(|one| one.measure.key).collect();
            assert_eq!(keys.len(), needed.len());
            for line in table.lines {
                assert!(line.against.iter().all(|against| keys.contains(against.measure.key)));
            }
        }
        // A table of the test's own, as long as none stands in the catalog.
        let line = |against: &'static [Against]| -> &'static Line {
            Box::leak(Box::new(Line {
                point: "waist",
                against,
                lies: Lies::Round,
                along: Along::Width,
                ease: &[],
                floor_cm: 0.0,
                floor_source: SOURCES[0],
                yields: false,
                wear_cm: [Between { low: 0.0, high: 0.0 }; 2],
                grows: false,
                fails_over_cm: None,
                step_cm: 2.54,
                step_source: SOURCES[0],
                alterations: &[],
            }))
        };
        static WAISTBAND: [Against; 2] = [Against::at(&BAND), Against::near(&WAIST, 4.0, 3.0)];
        static SEAT: [Against; 1] = [Against::at(&HIP)];
        let lines: &'static [&'static Line] = Box::leak(Box::new([line(&WAISTBAND), line(&SEAT)]));
        let table = FitTable {
            cuts: &[],
            lines,
            cloths: &[],
            give: None,
            usual_give: (0.0, 1.0),
            growth: None,
            allowances: &[],
            moves: &[],
            signs: &[],
            labels: &[],
        };
        let found: Vec<(&str, Option<&str>)> =
            needed(&table).iter().map(|one| (one.measure.key, one.instead_of.map(|best| best.key))).collect();
        assert_eq!(found, [("band", None), ("hip", None), ("waist", Some("band"))]);
    }
}
