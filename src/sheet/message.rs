//! A garment as a short text for a message: what it is, how it stands, what moved that most, and what is judgement.

use crate::garment::{Appraiser, Garment};
use crate::trade::{PriceKind, Question, Ticket};

/// The run of bands is that which holds so much.
const RUN: f64 = 0.8;
/// Answers named for each way.
const NAMED: usize = 3;
/// An answer that moved quality by less is not named: a third of a tenth of a band.
const LEAST: f64 = 0.03;

fn percent(share: f64) -> String {
    format!("{} %", (share * 100.0).round().clamp(1.0, 99.0))
}

fn title(garment: &Garment) -> String {
    let family = garment.family().name;
    if garment.label().is_empty() { family.to_owned() } else { format!("{} ({})", garment.label(), family.to_lowercase()) }
}

fn ticket_said(ticket: &Ticket) -> String {
    let decimals = ticket.currency.decimals() as usize;
    let amount = ticket.currency.whole(ticket.minor);
    let kind = match ticket.kind {
        PriceKind::Retail => "on the ticket",
        PriceKind::Wholesale => "offered to a shop",
    };
    format!("{} {amount:.decimals$} {kind}", ticket.currency.code())
}

/// The text; plain lines, no markup.
pub fn message(garment: &Garment, appraiser: &Appraiser) -> String {
    let appraisal = appraiser.appraise(garment);
    let mut lines = vec![title(garment)];
    let terms = garment.terms();
    let facts = [garment.place(), terms.supplier(), terms.style(), garment.collection()];
    let facts: Vec<&str> = facts.into_iter().filter(|fact| !fact.is_empty()).collect();
    lines.push(format!("{} · {}", facts.join(" · "), garment.noted()).trim_start_matches(" · ").to_owned());
    if let Some(ticket) = garment.ticket_in_view() {
        lines.push(ticket_said(ticket));
    }
    if appraisal.evidence() == 0 {
        lines.push("Nothing checked yet.".to_owned());
    } else {
        let (band, chance) = appraisal.likely();
        let run = appraisal.run(RUN);
        let run_said = if run.first == run.last {
            String::new()
        } else {
            format!("; {} to {}: {}", run.first.name().to_lowercase(), run.last.name().to_lowercase(), percent(run.mass))
        };
        let count = match appraisal.evidence() {
            1 => "1 answer".to_owned(),
            count => format!("{count} answers"),
        };
        lines.push(format!("Make: {}, {}{run_said}. From {count}.", band.name().to_lowercase(), percent(chance)));
        let moved = appraiser.moved(&appraisal);
        for (words, up) in [("For it", true), ("Against it", false)] {
            let named = moved.iter().filter(|moved| moved.by.abs() >= LEAST && (moved.by > 0.0) == up).take(NAMED);
            let named: Vec<String> = named
                .map(|moved| {
                    let level = garment.level_place(moved.check).and_then(|place| moved.check.levels.get(place));
                    let name = moved.check.name.to_lowercase();
                    level.map_or(name.clone(), |level| format!("{name}: {}", level.name.to_lowercase()))
                })
                .collect();
            if !named.is_empty() {
                lines.push(format!("{words}: {}.", named.join("; ")));
            }
        }
    }
    if let Some(left) = appraiser.left(garment).filter(|left| left.evidence() > 0) {
        let (band, chance) = left.likely();
        lines.push(format!("Second-hand, what is left: {}, {}.", Question::Left.word(band).to_lowercase(), percent(chance)));
    }
    if !garment.note().is_empty() {
        lines.push(format!("Note: {}", garment.note()));
    }
    lines.push("How far each answer counts is one expert’s judgement.".to_owned());
    lines.join("\n")
}

/// Several garments as one text: a numbered line for each, with its band and its ticket, in the order given.
pub fn list(garments: &[&Garment], appraiser: &Appraiser) -> String {
    let lines = garments.iter().zip(1..).map(|(garment, number)| {
        let appraisal = appraiser.appraise(garment);
        let made = if appraisal.evidence() == 0 {
            "not checked yet".to_owned()
        } else {
            let (band, chance) = appraisal.likely();
            format!("{}, {}", band.name().to_lowercase(), percent(chance))
        };
        let ticket = garment.ticket_in_view().map(ticket_said);
        let all = [Some(title(garment)), Some(made), ticket].into_iter().flatten();
        format!("{number}. {}", all.collect::<Vec<_>>().join(" · "))
    });
    lines.chain(["How far each answer counts is one expert’s judgement.".to_owned()]).collect::<Vec<_>>().join("\n")
}
