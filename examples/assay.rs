//! Reads a rack exported from the app and says of each garment what the app would: band, what moved it, what to check next.
//!
//! `cargo run --no-default-features --example assay -- rack.json` prints text; with `--json` it prints JSON.

use std::process::ExitCode;

use garment_assay::garment::{Answer, Appraisal, Appraiser, Garment, Proposal, Reason};
use garment_assay::notebook::{Change, Mode, import};
use garment_assay::trade::Band;
use serde_json::{Value, json};

const USAGE: &str = "Usage: assay RACK.json [--json]";
/// Probability that the run of bands named holds. As on the screen.
const HOLDS: f64 = 0.8;

fn main() -> ExitCode {
    let (flags, paths): (Vec<String>, Vec<String>) = std::env::args().skip(1).partition(|word| word.starts_with("--"));
    let as_json = match flags.as_slice() {
        [] => false,
        [flag] if flag == "--json" => true,
        _ => return refuse(USAGE),
    };
    let [path] = paths.as_slice() else { return refuse(USAGE) };
    let text = match std::fs::read_to_string(path) {
        Ok(text) => text,
        Err(error) => return refuse(&format!("{path}: {error}")),
    };
    let import = match import(&text, &[], Mode::Merge) {
        Ok(import) => import,
        Err(fault) => return refuse(&format!("{path}: {fault}")),
    };
    let appraiser = Appraiser::default();
    let garments = import.changes.iter().filter_map(|change| match change {
        Change::Add(garment) => Some(garment),
        _ => None,
    });
    if as_json {
        let all: Vec<Value> = garments.map(|garment| as_value(&appraiser, garment)).collect();
        println!("{:#}", json!({ "made": import.made.to_string(), "garments": all }));
    } else {
        println!("Rack of {}", import.made);
        garments.for_each(|garment| print(&appraiser, garment));
    }
    ExitCode::SUCCESS
}

fn refuse(why: &str) -> ExitCode {
    eprintln!("{why}");
    ExitCode::FAILURE
}

/// What was answered, in words.
fn answer_in_words(garment: &Garment, place: usize) -> String {
    let entry = &garment.entries()[place];
    match &entry.answer {
        Answer::CannotTell => "cannot tell".to_owned(),
        Answer::Skipped => "not now".to_owned(),
        Answer::Judged { level, care } => {
            let name = entry.check.level(level).map_or(*level, |(_, level)| level.name);
            format!("{name} ({})", care.key())
        }
        Answer::Measured(readings) => match readings.outcome() {
            Ok(outcome) => {
                format!("{:.2} ± {:.2} {}", outcome.value, outcome.uncertainty, readings.instrument.unit.symbol())
            }
            Err(_) => "readings that say nothing".to_owned(),
        },
    }
}

fn why(reason: Reason) -> &'static str {
    match reason {
        Reason::Telling => "tells most about the band for its seconds",
        Reason::WhileHeld => "the garment is held right for it",
        Reason::Opens => "decides whether another check is worth making",
        Reason::Costs => "says what it cost to make, not how good it is",
        Reason::LeftOver => "will hardly move the band",
    }
}

fn run_in_words(appraisal: &Appraisal) -> String {
    let run = appraisal.run(HOLDS);
    let names =
        if run.first == run.last { run.first.name().to_owned() } else { format!("{} to {}", run.first.name(), run.last.name()) };
    format!("{names} ({:.0} %)", 100.0 * run.mass)
}

fn next(appraiser: &Appraiser, garment: &Garment, appraisal: &Appraisal) -> Option<Proposal> {
    appraiser.next(garment, appraisal, None)
}

fn print(appraiser: &Appraiser, garment: &Garment) {
    let appraisal = appraiser.appraise(garment);
    let label = if garment.label().is_empty() { garment.id().as_str() } else { garment.label() };
    println!("\n{label}: {}, noted {}", garment.family().name, garment.noted());
    println!("  Band: {}{}", run_in_words(&appraisal), if appraisal.is_settled() { ", settled" } else { "" });
    let shares = Band::ALL.iter().zip(appraisal.bands()).map(|(band, share)| format!("{} {:.1} %", band.name(), 100.0 * share));
    println!("    {}", shares.collect::<Vec<_>>().join(", "));
    if let Some(left) = appraiser.left(garment) {
        let shares =
            Band::ALL.iter().zip(left.bands()).map(|(band, share)| format!("{} {:.1} %", left.word(*band), 100.0 * share));
        println!("  Second-hand, what is left: {}", shares.collect::<Vec<_>>().join(", "));
    }
    println!("  Answers: {} of {} checks", garment.answered(), garment.checks().count());
    for (place, entry) in garment.entries().iter().enumerate() {
        println!("    {}: {}", entry.check.name, answer_in_words(garment, place));
    }
    if !garment.aside().is_empty() {
        println!("    and {} that this version cannot read", garment.aside().len());
    }
    println!("  What moved it, in spreads among new garments:");
    for moved in appraiser.moved(&appraisal) {
        println!("    {:+.2} {}", moved.by, moved.check.name);
    }
    match next(appraiser, garment, &appraisal) {
        Some(proposal) => println!("  Next: {}, {:.0} s; {}", proposal.check.name, proposal.seconds, why(proposal.reason)),
        None => println!("  Next: nothing is left"),
    }
}

fn as_value(appraiser: &Appraiser, garment: &Garment) -> Value {
    let appraisal = appraiser.appraise(garment);
    let run = appraisal.run(HOLDS);
    let answers: Vec<Value> = garment
        .entries()
        .iter()
        .enumerate()
        .map(|(place, entry)| json!({ "check": entry.check.key, "name": entry.check.name, "answer": answer_in_words(garment, place) }))
        .collect();
    let bands: Vec<Value> = Band::ALL
        .iter()
        .zip(appraisal.bands())
        .map(|(band, probability)| json!({ "band": band.name(), "probability": probability }))
        .collect();
    let moved: Vec<Value> = appraiser
        .moved(&appraisal)
        .iter()
        .map(|moved| json!({ "check": moved.check.key, "name": moved.check.name, "by": moved.by }))
        .collect();
    let next = next(appraiser, garment, &appraisal).map(|proposal| {
        json!({
            "check": proposal.check.key,
            "name": proposal.check.name,
            "seconds": proposal.seconds,
            "bits": proposal.bits,
            "why": why(proposal.reason),
        })
    });
    json!({
        "id": garment.id().as_str(),
        "family": garment.family().name,
        "label": garment.label(),
        "noted": garment.noted().to_string(),
        "answers": answers,
        "unreadable": garment.aside().len(),
        "bands": bands,
        "run": { "first": run.first.name(), "last": run.last.name(), "probability": run.mass },
        "settled": appraisal.is_settled(),
        "mean": appraisal.mean(),
        "moved": moved,
        "next": next,
    })
}
