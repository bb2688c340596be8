//! Tables read back by a general-purpose reader (the crate csv), held against the facts they were written from and against docs/tables.md.

mod drawing;

use std::collections::BTreeMap;

use drawing::{bare, day, garment_named};
use garment_assay::garment::{Act, Appraiser, PriceBreak, TermsAct};
use garment_assay::quantity::Decimal;
use garment_assay::sheet::{Form, answers_table, list, message, rack_table};
use garment_assay::trade::{Currency, PriceKind, Ticket};
use proptest::prelude::*;

const COMMA: Form = Form { decimal: Decimal::Comma };

/// Rows by the names of their columns.
fn read(text: &str, form: Form) -> Vec<BTreeMap<String, String>> {
    let text = text.strip_prefix('\u{feff}').expect("the mark of UTF-8");
    let between = if form.decimal == Decimal::Comma { b';' } else { b',' };
    let mut reader = csv::ReaderBuilder::new().delimiter(between).from_reader(text.as_bytes());
    let names = reader.headers().expect("names").clone();
    let rows = reader.records().map(|row| {
        let row = row.expect("as many fields as names");
        names.iter().map(str::to_owned).zip(row.iter().map(str::to_owned)).collect()
    });
    rows.collect()
}

/// One apostrophe at the start is the mark; ends of lines are one sign.
fn told(text: &str) -> String {
    text.strip_prefix('\'').unwrap_or(text).to_owned()
}

fn kept(text: &str) -> String {
    text.replace("\r\n", "\n").replace('\r', "\n").replace('\0', "")
}

#[test]
fn every_column_stands_in_the_documentation_and_no_other() {
    let doc = include_str!("../docs/tables.md");
    let named: Vec<&str> = doc
        .lines()
        .filter(|line| line.starts_with("| `"))
        .flat_map(|line| line.split('|').nth(1).unwrap_or_default().split('`').skip(1).step_by(2))
        .collect();
    let rack = rack_table(&[], &Appraiser::default(), Form::default());
    let answers = answers_table(&[], Form::default());
    let written: Vec<&str> =
        [&rack, &answers].iter().flat_map(|text| text.trim_start_matches('\u{feff}').trim_end().split(',')).collect();
    assert_eq!(written, named);
}

#[test]
fn a_ticket_that_lies_face_down_is_in_no_table_and_no_message() {
    let ticket = Ticket { minor: 123_456, currency: Currency::Eur, kind: PriceKind::Retail, face_down: true };
    let garment = bare("g").after(Act::Ticket(Some(ticket)));
    let appraiser = Appraiser::default();
    let all = [
        rack_table(&[&garment], &appraiser, Form::default()),
        rack_table(&[&garment], &appraiser, COMMA),
        message(&garment, &appraiser),
        list(&[&garment], &appraiser),
    ];
    for text in all {
        assert!(!text.contains("1234"), "{text}");
    }
}

#[test]
fn figures_of_an_offer_come_back_in_both_forms() {
    let garment = [
        TermsAct::Style("0042".to_owned()),
        TermsAct::Supplier("=HYPERLINK(\"x\")".to_owned()),
        TermsAct::Currency(Some(Currency::Eur)),
        TermsAct::Prices(vec![PriceBreak { from: 300, minor: 1_205 }]),
    ]
    .into_iter()
    .fold(bare("g"), |garment, act| garment.after(Act::Terms(act)));
    let appraiser = Appraiser::default();
    let [point] = read(&rack_table(&[&garment], &appraiser, Form::default()), Form::default()).try_into().expect("one row");
    assert_eq!((point["style"].as_str(), point["price"].as_str()), ("'0042", "12.05"));
    assert_eq!(point["supplier"], "'=HYPERLINK(\"x\")");
    let [comma] = read(&rack_table(&[&garment], &appraiser, COMMA), COMMA).try_into().expect("one row");
    assert_eq!((comma["price"].as_str(), comma["quality_low"].as_str()), ("12,05", ""));
    assert_eq!(point["noted"], day().to_string());
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever a person types comes back, is never the start of a formula, and moves no column.
    #[test]
    fn what_was_typed_comes_back_and_nothing_is_a_formula(garment in garment_named("g")) {
        let appraiser = Appraiser::default();
        for form in [Form::default(), COMMA] {
            let rows = read(&rack_table(&[&garment, &bare("other")], &appraiser, form), form);
            prop_assert_eq!(rows.len(), 2);
            let row = &rows[0];
            for (column, typed) in [
                ("label", garment.label()),
                ("place", garment.place()),
                ("note", garment.note()),
                ("collection", garment.collection()),
                ("supplier", garment.terms().supplier()),
                ("sizes", garment.terms().sizes()),
            ] {
                prop_assert_eq!(told(&row[column]), kept(typed), "{}", column);
            }
            let answers = read(&answers_table(&[&garment], form), form);
            prop_assert_eq!(answers.len(), garment.entries().len());
            for field in rows.iter().chain(&answers).flat_map(|row| row.iter()) {
                let (column, text) = field;
                let is_figure = text.parse::<f64>().is_ok() || text.replace(',', ".").parse::<f64>().is_ok();
                prop_assert!(!text.trim_start().starts_with(['=', '+', '-', '@']) || is_figure, "{}: {}", column, text);
            }
        }
        let text = message(&garment, &appraiser);
        prop_assert!(text.lines().count() >= 3);
    }
}

#[test]
fn a_list_has_a_line_for_each_garment_and_one_about_judgement() {
    let ticket = Ticket { minor: 8_995, currency: Currency::Eur, kind: PriceKind::Retail, face_down: false };
    let (one, other) = (bare("a").after(Act::Label("Blue".to_owned())).after(Act::Ticket(Some(ticket))), bare("b"));
    let text = list(&[&one, &other], &Appraiser::default());
    let lines: Vec<&str> = text.lines().collect();
    assert_eq!(lines[0], "1. Blue (jeans) · not checked yet · EUR\u{a0}89.95 on the ticket");
    assert!(lines[1].starts_with("2. Jeans") && lines[2].contains("judgement") && lines.len() == 3, "{text}");
}
