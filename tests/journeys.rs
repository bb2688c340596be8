//! Whole journeys of a pair of jeans through record, appraisal, walk and notebook, against numbers worked out by
//! `vectors/jeans_journeys.py` with numpy and scipy from the catalog's curves, without the project's engine.
//!
//! Which check comes next is pinned as it is, since nobody else can say; bands, mean and spread are held to the other computation.
//! After a change of the catalog: `WRITE_VECTORS=1 cargo test --no-default-features --test journeys`, then `jeans_journeys.py`, then look
//! at what changed.

mod drawing;

use std::fs;
use std::path::PathBuf;

use drawing::{bare, check, id};
use garment_assay::catalog::jeans::JEANS;
use garment_assay::check::{Check, Span};
use garment_assay::garment::{Act, Answer, Appraisal, Appraiser, Garment, Given, Readings};
use garment_assay::grading::{Care, Group};
use garment_assay::notebook::{MemoryShelf, Mode, Notebook, Page, export, import, read, write};
use garment_assay::quantity::Unit;
use serde_json::{Value, json};

/// The other computation and this one agree to this, in probability and in standard deviations. It is a thousandth of what a screen shows.
const AGREES: f64 = 1e-6;

fn file(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/vectors").join(name)
}

fn stored(name: &str) -> Value {
    serde_json::from_str(&fs::read_to_string(file(name)).expect("a file of vectors")).expect("JSON")
}

fn writes_vectors() -> bool {
    std::env::var_os("WRITE_VECTORS").is_some()
}

fn word<'a>(value: &'a Value, name: &str) -> &'a str {
    value[name].as_str().unwrap_or_else(|| panic!("{name} in {value}"))
}

/// What the other computation needs to know of a check.
fn described(check: &Check) -> Value {
    let end = |end: f64| if end.is_finite() { json!(end) } else { Value::Null };
    let spans = |spans: &[Span]| spans.iter().map(|span| json!([end(span.low), end(span.high)])).collect::<Vec<_>>();
    json!({
        "check": check.key,
        "stage": check.stage.name(),
        "levels": check.levels.iter().map(|level| level.key).collect::<Vec<_>>(),
        "curve": check.speaks.curve().map(|curve| json!({
            "group": format!("{:?}", curve.group),
            "slope": curve.slope,
            "thresholds": curve.thresholds,
        })),
        "spans": check.instruments.first().map(|_| check.levels.iter().map(|level| spans(level.spans)).collect::<Vec<_>>()),
        "asked_when": check.asked_when.as_ref().map(|when| json!({ "check": when.check.key, "levels": when.levels })),
    })
}

/// One check to a line.
fn catalog_written() -> String {
    let groups: Vec<String> = Group::ALL.iter().map(|group| format!("\"{group:?}\": {}", group.spread())).collect();
    let cares: Vec<String> =
        [Care::Careful, Care::Usual, Care::Unsure].iter().map(|care| format!("\"{}\": {}", care.key(), care.lapse())).collect();
    let checks: Vec<String> = JEANS.checks.iter().map(|check| described(check).to_string()).collect();
    format!(
        "{{\"spread\": {{{}}},\n\"lapse\": {{{}}},\n\"reading_error\": 0.4,\n\"checks\": [\n{}\n]}}\n",
        groups.join(", "),
        cares.join(", "),
        checks.join(",\n")
    )
}

#[test]
fn the_curves_that_the_other_computation_read_are_those_of_the_catalog() {
    let written = catalog_written();
    if writes_vectors() {
        fs::write(file("jeans_curves.json"), &written).expect("a place to write");
    }
    assert_eq!(fs::read_to_string(file("jeans_curves.json")).expect("a file"), written);
}

fn act(value: &Value) -> Act {
    let check = check(word(value, "check"));
    let answer = match word(value, "act") {
        "judge" => {
            let (_, level) = check.level(word(value, "level")).unwrap_or_else(|| panic!("no such level: {value}"));
            let care = value.get("care").map_or(Some(Care::Usual), |care| Care::from_key(care.as_str()?));
            Answer::Judged { level: level.key, care: care.expect("a care") }
        }
        "measure" => {
            let instrument = *check.instruments.first().expect("an instrument");
            let given = value["given"].as_array().expect("readings").iter().map(|given| Given {
                input: instrument.input(word(given, "input")).expect("an input").1.key,
                amount: given["amount"].as_f64().expect("an amount"),
                unit: Unit::from_key(word(given, "unit")).expect("a unit"),
            });
            Answer::Measured(Readings { instrument, given: given.collect() })
        }
        "cannot_tell" => Answer::CannotTell,
        "skip" => Answer::Skipped,
        "clear" => return Act::Clear(check),
        other => panic!("no such act: {other}"),
    };
    Act::Answer(check, answer)
}

/// The garment through the notebook and through a file, and back.
fn there_and_back(garment: &Garment, notebook: &mut Notebook<MemoryShelf>, shelf: &MemoryShelf) -> Garment {
    notebook.keep(garment).expect("room");
    let (_, opened) = Notebook::open(shelf.clone());
    let [found] = opened.garments.as_slice() else { panic!("{opened:?}") };
    assert_eq!(found, garment);
    let file = export(&[found], found.noted());
    let whole = import(&file, &[garment], Mode::Merge).expect("a whole file");
    assert_eq!(whole.changes, [garment_assay::notebook::Change::Same(id("journey"))]);
    match read(&write(found, 1)) {
        Ok(Page::Here { record: garment, .. }) => *garment,
        other => panic!("{other:?}"),
    }
}

fn assert_agrees(when: &str, appraisal: &Appraisal, garment: &Garment, other: &Value) {
    let number = |name: &str| other[name].as_f64().expect("a number");
    let (low, mean, high) = appraisal.range();
    assert!((mean - number("mean")).abs() < AGREES, "{when}: mean {mean}");
    // Standard normal quantile of 0.9 (printed tables: 1.2816).
    assert!(((high - low) / 2.0 / 1.281_551_565_544_600_4 - number("sd")).abs() < AGREES, "{when}: {low} to {high}");
    for (band, (ours, theirs)) in appraisal.bands().iter().zip(other["bands"].as_array().expect("bands")).enumerate() {
        assert!((ours - theirs.as_f64().expect("a number")).abs() < AGREES, "{when}: band {band}: {ours}, not {theirs}");
    }
    assert_eq!(appraisal.likely().0.name(), word(other, "likely"), "{when}");
    assert_eq!(appraisal.is_settled(), other["settled"].as_bool().expect("yes or no"), "{when}");
    assert_eq!(appraisal.evidence() as u64, other["counted"].as_u64().expect("a count"), "{when}: {:?}", garment.entries().len());
}

#[test]
fn every_journey_comes_to_what_the_other_computation_says_and_survives_the_notebook() {
    let (mut journeys, others) = (stored("journeys.json"), stored("jeans_journeys.json"));
    let appraiser = Appraiser::default();
    let mut acts_tried = 0;
    for (place, journey) in journeys.as_array_mut().expect("journeys").iter_mut().enumerate() {
        let name = word(journey, "name").to_owned();
        let shelf = MemoryShelf::default();
        let (mut notebook, _) = Notebook::open(shelf.clone());
        let mut garment = bare("journey");
        let acts: Vec<Value> = journey["acts"].as_array().expect("acts").clone();
        let mut next = Vec::new();
        for (step, value) in acts.iter().enumerate() {
            let when = format!("{name}, act {} ({})", step + 1, word(value, "check"));
            let act = act(value);
            let (Act::Answer(shown, _) | Act::Clear(shown)) = act else { panic!("{act:?}") };
            garment = there_and_back(&garment.after(act), &mut notebook, &shelf);
            let appraisal = appraiser.appraise(&garment);
            next.push(appraiser.next(&garment, &appraisal, Some(shown)).map(|proposal| proposal.check.key));
            if !writes_vectors() {
                let other = &others["journeys"][place];
                assert_eq!(word(other, "name"), name);
                assert_agrees(&when, &appraisal, &garment, &other["beliefs"][step]);
            }
            acts_tried += 1;
        }
        if writes_vectors() {
            journey["next"] = json!(next);
        }
        assert_eq!(journey["next"], json!(next), "{name}");
    }
    if writes_vectors() {
        fs::write(file("journeys.json"), laid_out(&journeys)).expect("a place to write");
    }
    assert!(acts_tried >= 60, "{acts_tried}");
}

/// One act to a line.
fn laid_out(journeys: &Value) -> String {
    let journeys: Vec<String> = journeys
        .as_array()
        .expect("journeys")
        .iter()
        .map(|journey| {
            let acts: Vec<String> = journey["acts"].as_array().expect("acts").iter().map(|act| format!("  {act}")).collect();
            format!("{{\"name\": {},\n \"acts\": [\n{}],\n \"next\": {}}}", journey["name"], acts.join(",\n"), journey["next"])
        })
        .collect();
    format!("[\n{}\n]\n", journeys.join(",\n"))
}

#[test]
fn the_long_journey_has_a_typed_stitch_count_and_more_than_twenty_answers() {
    let journeys = stored("journeys.json");
    let long = journeys.as_array().expect("journeys").iter().map(|journey| journey["acts"].as_array().expect("acts"));
    let long = long.max_by_key(|acts| acts.len()).expect("a journey");
    let garment = long.iter().fold(bare("journey"), |garment, value| garment.after(act(value)));
    assert!(garment.answered() >= 22);
    let density = garment.reading(check("spi")).expect("readings").expect("an outcome");
    // 22 stitches over 3 inches: 7.333 per inch.
    assert!((density.value - 22.0 / 3.0).abs() < 1e-9);
}

#[test]
fn what_moved_the_long_journey_sums_to_the_mean_that_the_other_computation_gives() {
    let (journeys, others) = (stored("journeys.json"), stored("jeans_journeys.json"));
    let appraiser = Appraiser::default();
    for (journey, other) in journeys.as_array().expect("journeys").iter().zip(others["journeys"].as_array().expect("journeys")) {
        let acts = journey["acts"].as_array().expect("acts");
        let garment = acts.iter().fold(bare("journey"), |garment, value| garment.after(act(value)));
        let moved = appraiser.moved(&appraiser.appraise(&garment));
        let mean = other["beliefs"][acts.len() - 1]["mean"].as_f64().expect("a mean");
        assert!((moved.iter().map(|moved| moved.by).sum::<f64>() - mean).abs() < AGREES, "{}", journey["name"]);
    }
}
