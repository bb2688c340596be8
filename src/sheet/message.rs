//! A garment as a short text for a message: what it is, how it stands, what moved that most, and what is judgement.

use std::borrow::Borrow;

use crate::garment::{Appraiser, Garment};
use crate::language::{grouped, money, one, within};
use crate::say;
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
    let family = garment.family().name();
    if garment.label().is_empty() { family.to_owned() } else { format!("{} ({})", garment.label(), within(family)) }
}

fn ticket_said(ticket: &Ticket) -> String {
    let decimals = ticket.currency.decimals() as usize;
    let amount = ticket.currency.whole(ticket.minor);
    let price = money(ticket.currency.code(), grouped(&format!("{amount:.decimals$}")));
    match ticket.kind {
        PriceKind::Retail => say!("{price} on the ticket", price),
        PriceKind::Wholesale => say!("{price} offered to a shop", price),
    }
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
        lines.push(say!("Nothing checked yet.").to_owned());
    } else {
        let (band, chance) = appraisal.likely();
        let run = appraisal.run(RUN);
        let (count, band, chance) = (appraisal.evidence(), within(band.name()), percent(chance));
        let made = if run.first == run.last {
            say!("Make: {band}, {chance}.", band, chance)
        } else {
            say!(
                "Make: {band}, {chance}; {first} to {last}: {both}.",
                band,
                chance,
                first = within(run.first.name()),
                last = within(run.last.name()),
                both = percent(run.mass)
            )
        };
        let from = if one(count) { say!("From {count} answer.", count) } else { say!("From {count} answers.", count) };
        lines.push(format!("{made} {from}"));
        let moved = appraiser.moved(&appraisal);
        for up in [true, false] {
            let named = moved.iter().filter(|moved| moved.by.abs() >= LEAST && (moved.by > 0.0) == up).take(NAMED);
            let named: Vec<String> = named
                .map(|moved| {
                    let level = garment.level_place(moved.check).and_then(|place| moved.check.levels.get(place));
                    let name = within(moved.check.name());
                    level.map_or(name.clone(), |level| format!("{name}: {}", within(level.name())))
                })
                .collect();
            if !named.is_empty() {
                let named = named.join("; ");
                lines.push(if up { say!("For it: {named}.", named) } else { say!("Against it: {named}.", named) });
            }
        }
    }
    if let Some(left) = appraiser.left(garment).filter(|left| left.evidence() > 0) {
        let (band, chance) = left.likely();
        lines.push(say!(
            "Second-hand, what is left: {band}, {chance}.",
            band = within(Question::Left.word(band)),
            chance = percent(chance)
        ));
    }
    if !garment.note().is_empty() {
        lines.push(say!("Note: {note}", note = garment.note()));
    }
    lines.push(say!("How far each answer counts is one expert’s judgement.").to_owned());
    lines.join("\n")
}

/// Several garments as one text: a numbered line for each, with its band and its ticket, in the order given.
pub fn list(garments: &[&Garment], appraiser: &Appraiser) -> String {
    list_pieces(garments.iter().copied(), appraiser).collect()
}

/// The same in pieces, a line in each, so that a long list need not be written in one go.
pub fn list_pieces<G: Borrow<Garment>, A: Borrow<Appraiser>>(
    garments: impl IntoIterator<Item = G>,
    appraiser: A,
) -> impl Iterator<Item = String> {
    let lines = garments.into_iter().zip(1..).map(move |(garment, number)| {
        let garment = garment.borrow();
        let appraisal = appraiser.borrow().appraise(garment);
        let made = if appraisal.evidence() == 0 {
            say!("not checked yet").to_owned()
        } else {
            let (band, chance) = appraisal.likely();
            format!("{}, {}", within(band.name()), percent(chance))
        };
        let ticket = garment.ticket_in_view().map(ticket_said);
        let all = [Some(title(garment)), Some(made), ticket].into_iter().flatten();
        format!("{number}. {}\n", all.collect::<Vec<_>>().join(" · "))
    });
    lines.chain([say!("How far each answer counts is one expert’s judgement.").to_owned()])
}
