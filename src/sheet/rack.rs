//! The rack as a table: one row for each garment.

use std::borrow::Borrow;

use super::cell::{Cell, Form, table};
use crate::garment::{Appraiser, Garment};
use crate::lot::Stands;
use crate::trade::{PriceKind, Question};

/// The run of bands is that which holds so much.
const RUN: f64 = 0.8;

/// Names of the columns. Once released they are never renamed, moved or taken away; new ones come at the end.
const COLUMNS: [&str; 49] = [
    "id",
    "kind",
    "label",
    "place",
    "collection",
    "archived",
    "second_hand",
    "noted",
    "answers",
    "answers_that_count",
    "band",
    "band_chance_percent",
    "bands_from",
    "bands_to",
    "bands_chance_percent",
    "quality_low",
    "quality_middle",
    "quality_high",
    "left",
    "left_chance_percent",
    "ticket",
    "ticket_currency",
    "ticket_kind",
    "ticket_face_down",
    "guess_low",
    "guess_likeliest",
    "guess_high",
    "guess_currency",
    "shop",
    "name_on_it",
    "supplier",
    "style",
    "colourways",
    "sizes",
    "offer_currency",
    "incoterm",
    "price_from_pieces",
    "price",
    "best_price_from_pieces",
    "best_price",
    "smallest_order",
    "delivery_first",
    "delivery_last",
    "shortlisted",
    "lot_pieces",
    "lot_sample",
    "lot_looked_at",
    "lot_stands",
    "note",
];

/// The rack as a table, in the order given.
pub fn rack_table(garments: &[&Garment], appraiser: &Appraiser, form: Form) -> String {
    rack_table_pieces(garments.iter().copied(), appraiser, form).collect()
}

/// The same in pieces, a row in each, so that a large rack need not be written in one go.
pub fn rack_table_pieces<G: Borrow<Garment>, A: Borrow<Appraiser>>(
    garments: impl IntoIterator<Item = G>,
    appraiser: A,
    form: Form,
) -> impl Iterator<Item = String> {
    table(&COLUMNS, garments.into_iter().map(move |garment| row(garment.borrow(), appraiser.borrow())), form)
}

fn row(garment: &Garment, appraiser: &Appraiser) -> Vec<Cell> {
    let appraisal = appraiser.appraise(garment);
    let evidence = appraisal.evidence();
    // Nobody looked: what is believed of any garment is not said of this one.
    let known = |cell: Cell| if evidence == 0 { Cell::Empty } else { cell };
    let (band, chance) = appraisal.likely();
    let run = appraisal.run(RUN);
    let (low, middle, high) = appraisal.range();
    let left = appraiser.left(garment).filter(|left| left.evidence() > 0).map(|left| left.likely());
    let percent = |share: f64| Cell::Number(share * 100.0, 1);
    let ticket = garment.ticket();
    let guess = garment.guess();
    let terms = garment.terms();
    let price = |minor: Option<u64>| match (minor, terms.currency()) {
        (Some(minor), Some(currency)) => Cell::money(minor, currency),
        _ => Cell::Empty,
    };
    let guessed = |minor: Option<u64>| Cell::or_empty(guess.zip(minor), |(guess, minor)| Cell::money(minor, guess.currency()));
    let lot = garment.lot();
    vec![
        Cell::text(garment.id().as_str()),
        Cell::text(garment.family().name),
        Cell::text(garment.label()),
        Cell::text(garment.place()),
        Cell::text(garment.collection()),
        Cell::Yes(garment.archived()),
        Cell::Yes(garment.is_second_hand()),
        Cell::day(garment.noted()),
        Cell::Whole(garment.answered() as u64),
        Cell::Whole(evidence as u64),
        known(Cell::text(band.english())),
        known(percent(chance)),
        known(Cell::text(run.first.english())),
        known(Cell::text(run.last.english())),
        known(percent(run.mass)),
        known(Cell::Number(low, 2)),
        known(Cell::Number(middle, 2)),
        known(Cell::Number(high, 2)),
        Cell::or_empty(left, |(band, _)| Cell::text(Question::Left.english_word(band))),
        Cell::or_empty(left, |(_, chance)| percent(chance)),
        // A ticket that lies face down is not to be seen here either.
        Cell::or_empty(garment.ticket_in_view(), |ticket| Cell::money(ticket.minor, ticket.currency)),
        Cell::or_empty(ticket, |ticket| Cell::text(ticket.currency.code())),
        Cell::or_empty(ticket, |ticket| {
            Cell::text(match ticket.kind {
                PriceKind::Retail => "retail",
                PriceKind::Wholesale => "wholesale",
            })
        }),
        Cell::or_empty(ticket, |ticket| Cell::Yes(ticket.face_down)),
        guessed(guess.map(|guess| guess.low())),
        guessed(guess.and_then(|guess| guess.best())),
        guessed(guess.map(|guess| guess.high())),
        Cell::or_empty(guess, |guess| Cell::text(guess.currency().code())),
        Cell::or_empty(garment.shop(), |shop| Cell::text(shop.key())),
        Cell::or_empty(garment.name(), |name| Cell::text(name.key())),
        Cell::text(terms.supplier()),
        Cell::text(terms.style()),
        Cell::text(terms.colourways()),
        Cell::text(terms.sizes()),
        Cell::or_empty(terms.currency(), |currency| Cell::text(currency.code())),
        Cell::or_empty(terms.incoterm(), |term| Cell::text(term.code())),
        Cell::or_empty(terms.prices().first(), |price| Cell::Whole(price.from.into())),
        price(terms.prices().first().map(|price| price.minor)),
        Cell::or_empty(terms.prices().last(), |price| Cell::Whole(price.from.into())),
        price(terms.prices().last().map(|price| price.minor)),
        Cell::or_empty(terms.smallest_order(), |pieces| Cell::Whole(pieces.into())),
        Cell::or_empty(terms.delivery(), |(first, _)| Cell::day(first)),
        Cell::or_empty(terms.delivery(), |(_, last)| Cell::day(last)),
        Cell::Yes(terms.shortlisted()),
        Cell::or_empty(lot, |log| Cell::Whole(log.lot.pieces().into())),
        Cell::or_empty(lot, |log| Cell::Whole(log.sample().into())),
        Cell::or_empty(lot, |log| Cell::Whole(log.looked_at.into())),
        Cell::or_empty(lot, |log| {
            Cell::text(match log.stands() {
                Stands::Open(_) => "open",
                Stands::Passes => "passes",
                Stands::Fails => "fails",
            })
        }),
        Cell::text(garment.note()),
    ]
}
