//! Laws of the stored form, and what becomes of garments when pages are damaged, shelves fail, windows collide and files are foreign.

mod drawing;

use std::collections::{BTreeMap, BTreeSet};

use drawing::{act, bare, check, day, garment_named, id, judged, point, text};
use garment_assay::cost::{Channel, Incoterm};
use garment_assay::garment::{Act, Answer, Deal, Garment, Given, Guess, Id, PriceBreak, Readings, Shown, Taped, TermsAct};
use garment_assay::grading::Care;
use garment_assay::lot::{Finding, Log, LotSize, Severity};
use garment_assay::measure::STITCH_DENSITY;
use garment_assay::notebook::{
    Change, Elsewhere, FaultyShelf, Healed, ImportFault, KeepFault, MemoryShelf, Mode, Notebook, Page, Settings, Shelf,
    ShelfFault, Theme, Unreadable, export, export_all, import, read, write,
};
use garment_assay::quantity::{Amount, Unit};
use garment_assay::trade::{Currency, Day, Name, PriceKind, Ticket};
use proptest::prelude::*;

const PAGE: &str = "garment-assay/page/";
const BALLAST: &str = "garment-assay/ballast";
/// Written by Python (`json.dumps` with sorted keys, `zlib.crc32`), not by this project.
const GOLDEN: &str = include_str!("vectors/pages/form-1.txt");
/// Likewise, with measures, one of them at a point that no version had yet.
const GOLDEN_MEASURES: &str = include_str!("vectors/pages/form-1-measures.txt");
/// Likewise, with a guess, what the tool showed beside it, and the garment left out as a reference.
const GOLDEN_GUESS: &str = include_str!("vectors/pages/form-1-guess.txt");
/// Likewise, with the kind of shop, the name and what the person means to do with it.
const GOLDEN_DEAL: &str = include_str!("vectors/pages/form-1-deal.txt");
/// Likewise.
const GOLDEN_RACK: &str = include_str!("vectors/pages/rack-1.json");

fn key(garment: &Garment) -> String {
    format!("{PAGE}{}", garment.id().as_str())
}

/// CRC-32 from its definition as division of polynomials, bit by bit, most significant first: another way than the project's.
fn crc(text: &str) -> String {
    let bits = |byte: u8| (0..8).map(move |bit| byte >> bit & 1 == 1);
    let mut message: Vec<bool> = text.bytes().flat_map(bits).collect();
    message.extend([false; 32]);
    message.iter_mut().take(32).for_each(|bit| *bit = !*bit);
    let generator: Vec<bool> = (0..33).map(|bit| 0x1_04C1_1DB7_u64 >> (32 - bit) & 1 == 1).collect();
    for start in 0..message.len() - 32 {
        if message[start] {
            message[start..start + 33].iter_mut().zip(&generator).for_each(|(bit, other)| *bit ^= other);
        }
    }
    let rest =
        message[message.len() - 32..].iter().enumerate().fold(0_u32, |rest, (place, bit)| rest | u32::from(!*bit) << place);
    format!("{rest:08x}")
}

/// A page with that body and a right checksum, as another version of the app could have written it.
fn page_of(body: &str, rev: u64) -> String {
    format!("{{\"form\":1,\"rev\":{rev},\"sum\":\"{}\"}}\n{body}", crc(&format!("{rev}\n{body}")))
}

fn garment_of(text: &str) -> Garment {
    match read(text) {
        Ok(Page::Here { record: garment, .. }) => *garment,
        other => panic!("{other:?}"),
    }
}

/// A garment with something in every field.
fn full(name: &str) -> Garment {
    let reading = |input, amount, unit| Given { input, amount, unit };
    let density = vec![reading("count", 24.0, Unit::Count), reading("length", 76.2, Unit::Millimetre)];
    bare(name)
        .after(Act::Label("Blue pair, \"third\" rail".to_owned()))
        .after(Act::Place("Market hall\nrow 2".to_owned()))
        .after(Act::Note("Größe 32, 牛仔裤".to_owned()))
        .after(Act::Ticket(Some(Ticket { minor: 8_995, currency: Currency::Eur, kind: PriceKind::Retail, face_down: true })))
        .after(judged("hang", "equal"))
        .after(Act::Answer(check("cloth-hand"), Answer::Judged { level: "firm", care: Care::Unsure }))
        .after(Act::Answer(check("spi"), Answer::Measured(Readings { instrument: &STITCH_DENSITY, given: density })))
        .after(Act::Answer(check("leg-twist"), Answer::CannotTell))
        .after(Act::Answer(check("inseam"), Answer::Skipped))
        .after(Act::CheckNote(check("spi"), "hip, left".to_owned()))
}

fn opened<S: Shelf>(shelf: S) -> BTreeMap<Id, Garment> {
    let (_, opened) = Notebook::open(shelf);
    assert_eq!(opened.fault, None);
    opened.garments.into_iter().map(|garment| (garment.id().clone(), garment)).collect()
}

// Writing and reading.

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn a_garment_written_is_the_garment_read(garment in garment_named("g"), rev in any::<u64>()) {
        let page = write(&garment, rev);
        prop_assert_eq!(read(&page), Ok(Page::Here { rev, record: Box::new(garment) }));
    }

    #[test]
    fn reading_never_panics(text in text(), more in prop::collection::vec(any::<char>(), 0..60)) {
        let more = String::from_iter(more);
        for text in [&text, &more, &page_of(&text, 1), &page_of(&more, 1)] {
            let _ = read(text);
            let _ = import(text, &[], Mode::Merge);
        }
    }

    #[test]
    fn export_and_import_give_the_same_garments(one in garment_named("one"), two in garment_named("two")) {
        let file = export(&[&one, &two], day());
        // Its pieces are joined by hand: the whole is to be what serde_json writes of it.
        let whole: serde_json::Value = serde_json::from_str(&file).expect("JSON");
        prop_assert_eq!(&format!("{whole:#}\n"), &file);
        let import = import(&file, &[], Mode::Merge).expect("a whole file");
        prop_assert_eq!(import.made, day());
        prop_assert_eq!(import.changes, vec![Change::Add(one), Change::Add(two)]);
    }
}

#[test]
fn the_committed_page_still_opens_to_the_facts_known_of_it() {
    let garment = garment_of(GOLDEN.trim_end_matches('\n'));
    assert_eq!(garment, full("6f1c-0001"));
    assert_eq!(garment.label(), "Blue pair, \"third\" rail");
    assert_eq!(garment.place(), "Market hall\nrow 2");
    assert_eq!(garment.note(), "Größe 32, 牛仔裤");
    assert_eq!(garment.noted(), Day::new(2026, 11, 25).expect("a day"));
    assert_eq!(garment.entries().len(), 5);
    assert_eq!(garment.level(check("hang")).map(|level| level.key), Some("equal"));
    assert_eq!(garment.check_note(check("spi")), "hip, left");
    let density = garment.reading(check("spi")).expect("readings").expect("an outcome");
    assert!((density.value - 8.0).abs() < 1e-9);
    // It was written before answers named their instrument; it is written as it was, with that said.
    let (_, body) = GOLDEN.trim_end_matches('\n').split_once('\n').expect("two lines");
    let body = body.replace(r#""measured":"#, r#""instrument":"stitch-density","measured":"#);
    assert_eq!(write(&garment, 7), page_of(&body, 7), "and is written the same");
}

fn taped(readings: &[(f64, Unit)], round: bool) -> Option<Taped> {
    Taped::new(readings.iter().map(|&(number, unit)| Amount { number, unit }).collect(), round)
}

#[test]
fn the_committed_page_with_measures_still_opens_to_the_facts_known_of_it() {
    let page = GOLDEN_MEASURES.trim_end_matches('\n');
    let garment = garment_of(page);
    let (cm, mm) = (Unit::Centimetre, Unit::Millimetre);
    let known = full("6f1c-0003")
        .after(Act::Measure(point("waist"), taped(&[(42.5, cm), (42.8, cm), (426.0, mm)], false)))
        .after(Act::Measure(point("hip"), taped(&[(41.25, Unit::Inch)], true)))
        .with_aside("measures".to_owned(), r#"{"ankle":{"readings":[{"amount":19.0,"unit":"cm"}]}}"#.to_owned());
    assert_eq!(garment, known);
    // The mean of 42.5, 42.8 and 42.6, doubled.
    let waist = garment.measure(point("waist")).expect("readings").expect("a girth");
    assert!((waist.value - 85.266_666_666_666_67).abs() < 1e-9);
    assert_eq!(write(&garment, 8), page, "and is written the same");
}

#[test]
fn measures_this_version_does_not_know_are_set_aside_and_written_back_unchanged() {
    let unknown = [
        r#""ankle":{"readings":[{"amount":19.0,"unit":"cm"}]}"#,
        r#""back-rise":{"curved":true,"readings":[{"amount":40.0,"unit":"cm"}]}"#,
        r#""front-rise":{"readings":[{"amount":28.0,"by":"thumb","unit":"cm"}]}"#,
        r#""hem":{"readings":[]}"#,
        r#""hip":{"readings":[{"amount":52.0,"unit":"cm"}],"round":false}"#,
        r#""inseam":{"readings":[{"amount":1.5,"unit":"cubit"}]}"#,
        r#""knee":{"readings":[{"amount":1.5,"unit":"g"}]}"#,
        r#""outseam":[104]"#,
        r#""thigh":{"readings":[{"amount":"wide","unit":"cm"}]}"#,
        r#""waist":null"#,
    ];
    let body = format!(r#"{{"answers":[],"family":"jeans","id":"g","measures":{{{}}},"noted":"2026-11-25"}}"#, unknown.join(","));
    let garment = garment_of(&page_of(&body, 3));
    assert_eq!((garment.measures().count(), garment.aside().len()), (0, unknown.len()));
    assert_eq!(write(&garment, 3), page_of(&body, 3));
    // What is measured since counts; the rest stays where it is.
    let knee = taped(&[(22.5, Unit::Centimetre)], false);
    let again = garment_of(&write(&garment.after(Act::Measure(point("knee"), knee.clone())), 4));
    assert_eq!((again.taped(point("knee")), again.measures().count()), (knee.as_ref(), 1));
    assert_eq!(again.aside().len(), unknown.len() - 1);
    assert!(unknown.iter().filter(|text| !text.contains("knee")).all(|text| write(&again, 5).contains(text)));
    // Measures of another shape altogether are no damage, and give way to what is measured.
    let body = r#"{"answers":[],"family":"jeans","id":"g","measures":[1,2],"noted":"2026-11-25"}"#;
    let garment = garment_of(&page_of(body, 3));
    assert_eq!(write(&garment, 3), page_of(body, 3));
    let again = garment_of(&write(&garment.after(Act::Measure(point("knee"), knee.clone())), 4));
    assert_eq!(again.taped(point("knee")), knee.as_ref());
}

#[test]
fn the_committed_page_with_a_guess_still_opens_to_the_facts_known_of_it() {
    let page = GOLDEN_GUESS.trim_end_matches('\n');
    let garment = garment_of(page);
    let made = Day::new(2026, 11, 26).expect("a day");
    let guess = Guess::new(6_000, 13_000, Currency::Eur, PriceKind::Retail, made).and_then(|guess| guess.with_best(9_000));
    let guess = guess.expect("a guess").beside(Shown::new(4_200, 8_150, 15_900).expect("a range"));
    let up = Ticket { minor: 8_995, currency: Currency::Eur, kind: PriceKind::Retail, face_down: false };
    let known = full("6f1c-0004").after(Act::Guess(Some(guess))).after(Act::Reference(false)).after(Act::Ticket(Some(up)));
    assert_eq!(garment, known);
    assert_eq!((garment.guess(), garment.is_reference()), (Some(&guess), false));
    assert_eq!(write(&garment, 9), page, "and is written the same");
}

#[test]
fn guesses_this_version_does_not_know_are_set_aside_and_written_back_unchanged() {
    let unknown = [
        r#"{"currency":"EUR","high":9000,"kind":"retail","low":9000,"made":"2026-11-26"}"#,
        r#"{"currency":"EUR","high":9000,"kind":"retail","low":0,"made":"2026-11-26"}"#,
        r#"{"currency":"EUR","high":9000.5,"kind":"retail","low":6000,"made":"2026-11-26"}"#,
        r#"{"currency":"XAU","high":9000,"kind":"retail","low":6000,"made":"2026-11-26"}"#,
        r#"{"currency":"EUR","high":9000,"kind":"sale","low":6000,"made":"2026-11-26"}"#,
        r#"{"currency":"EUR","high":9000,"kind":"retail","low":6000,"made":"2026-02-30"}"#,
        r#"{"best":9001,"currency":"EUR","high":9000,"kind":"retail","low":6000,"made":"2026-11-26"}"#,
        r#"{"best":null,"currency":"EUR","high":9000,"kind":"retail","low":6000,"made":"2026-11-26"}"#,
        r#"{"currency":"EUR","high":9000,"kind":"retail","level":0.9,"low":6000,"made":"2026-11-26"}"#,
        r#"{"currency":"EUR","high":9000,"kind":"retail","low":6000,"made":"2026-11-26","shown":{"high":3,"low":2,"middle":1}}"#,
        r#"{"currency":"EUR","high":9000,"kind":"retail","low":6000,"made":"2026-11-26","shown":{"high":3,"low":1,"mean":2,"middle":2}}"#,
        "[6000,9000]",
        "null",
    ];
    for text in unknown {
        let body =
            format!(r#"{{"answers":[],"family":"jeans","guess":{text},"id":"g","noted":"2026-11-25","reference":"often"}}"#);
        let garment = garment_of(&page_of(&body, 3));
        assert_eq!((garment.guess(), garment.is_reference(), garment.aside().len()), (None, true, 2), "{text}");
        assert_eq!(write(&garment, 3), page_of(&body, 3));
        // What is guessed and said since counts.
        let guess = Guess::new(1, 2, Currency::Jpy, PriceKind::Wholesale, day());
        let again = garment_of(&write(&garment.after(Act::Guess(guess)).after(Act::Reference(false)), 4));
        assert_eq!((again.guess(), again.is_reference(), again.aside().len()), (guess.as_ref(), false, 0), "{text}");
    }
}

#[test]
fn the_committed_page_with_a_shop_and_a_name_still_opens_to_the_facts_known_of_it() {
    let page = GOLDEN_DEAL.trim_end_matches('\n');
    let garment = garment_of(page);
    let up = Ticket { minor: 8_995, currency: Currency::Eur, kind: PriceKind::Retail, face_down: false };
    let known = full("6f1c-0005")
        .after(Act::Shop(Some(Channel::BrandThroughStores)))
        .after(Act::Name(Some(Name::Known)))
        .after(Act::Deal(Deal::default().with_wears(Some(60)).with_target(Some(12_000)).with_minimum(Some(300))))
        .after(Act::Ticket(Some(up)));
    assert_eq!(garment, known);
    assert_eq!(write(&garment, 10), page, "and is written the same");
}

#[test]
fn shops_names_and_plans_this_version_does_not_know_are_set_aside_and_written_back_unchanged() {
    for deal in
        [r#"{"minimum":4294967296}"#, r#"{"wears_a_year":400}"#, r#"{"target":0}"#, r#"{"rent":1,"target":9}"#, "[]", "null"]
    {
        let body = format!(
            r#"{{"answers":[],"deal":{deal},"family":"jeans","id":"g","name":"house","noted":"2026-11-25","shop":"market-stall"}}"#
        );
        let garment = garment_of(&page_of(&body, 3));
        assert_eq!((garment.shop(), garment.name(), garment.deal()), (None, None, &Deal::default()), "{deal}");
        assert_eq!(garment.aside().len(), 3, "{deal}");
        assert_eq!(write(&garment, 3), page_of(&body, 3));
        // What is said since counts.
        let told = garment.after(Act::Shop(Some(Channel::Luxury))).after(Act::Name(Some(Name::Designer)));
        let again = garment_of(&write(&told, 4));
        assert_eq!((again.shop(), again.name(), again.aside().len()), (told.shop(), told.name(), 1), "{deal}");
    }
}

#[test]
fn a_switch_to_second_hand_of_another_shape_is_set_aside_and_written_back_unchanged() {
    for told in ["false", "1", r#""twice""#, "null"] {
        let body = format!(r#"{{"answers":[],"family":"jeans","id":"g","noted":"2026-11-25","second_hand":{told}}}"#);
        let garment = garment_of(&page_of(&body, 3));
        assert!(!garment.is_second_hand());
        assert_eq!(garment.aside(), [("second_hand".to_owned(), told.to_owned())]);
        assert_eq!(write(&garment, 3), page_of(&body, 3));
        // What is said since counts.
        assert!(garment_of(&write(&garment.after(Act::SecondHand(true)), 4)).is_second_hand(), "{told}");
    }
}

#[test]
fn the_committed_rack_still_opens_to_the_facts_known_of_it() {
    let import = import(GOLDEN_RACK, &[], Mode::Merge).expect("a whole file");
    let [Change::Add(first), Change::Add(second)] = import.changes.as_slice() else { panic!("{import:?}") };
    assert_eq!((import.made, first), (day(), &full("6f1c-0001")));
    assert_eq!((second.id().as_str(), second.noted()), ("6f1c-0002", Day::new(2026, 11, 24).expect("a day")));
    let crisp = Answer::Judged { level: "crisp", care: Care::Careful };
    assert_eq!((second.entries().len(), second.answer(check("rows-true"))), (1, Some(&crisp)));
    let aside: Vec<(&str, &str)> = second.aside().iter().map(|(field, text)| (field.as_str(), text.as_str())).collect();
    assert_eq!(aside, [("answers", r#"{"check":"no-such-check","judged":"fine"}"#), ("washed", "3")]);
}

#[test]
fn what_this_version_does_not_know_is_set_aside_and_written_back_unchanged() {
    let unknown = [
        r#"{"check":"no-such-check","judged":"fine"}"#,
        r#"{"check":"hang","judged":"superb"}"#,
        r#"{"check":"hang","judged":"equal","side":"left"}"#,
        r#"{"care":"twice","check":"hang","judged":"equal"}"#,
        r#"{"check":"hang","skipped":true,"until":"Friday"}"#,
        r#"{"check":"hang","measured":[{"amount":1.0,"input":"count","unit":"count"}]}"#,
        r#"{"check":"spi","measured":[{"amount":1.5,"input":"count","unit":"cubit"}]}"#,
        r#"{"check":"spi","measured":[{"amount":1.5,"input":"angle","unit":"count"}]}"#,
        r#"{"check":"spi","measured":[{"amount":1.5,"by":"thumb","input":"count","unit":"count"}]}"#,
        r#"{"check":"spi","measured":[{"amount":"many","input":"count","unit":"count"}]}"#,
        r#"{"photographs":[1,2]}"#,
        "7",
        "null",
    ];
    let body = format!(
        r#"{{"answers":[{}],"family":"jeans","id":"g","noted":"2026-11-25","notes":{{"hang":7,"no-such-check":"kept"}},"photograph":{{"a":[1.25,null]}},"ticket":{{"currency":"XAU","face_down":false,"kind":"retail","minor":5}}}}"#,
        unknown.join(",")
    );
    let garment = garment_of(&page_of(&body, 3));
    assert_eq!(garment.entries(), []);
    assert_eq!(garment.ticket(), None);
    assert_eq!(garment.aside().len(), unknown.len() + 4);
    let written = write(&garment, 3);
    assert_eq!(written, page_of(&body, 3));
    // Edits leave it where it is.
    let edited = garment.after(judged("cloth-hand", "firm")).after(Act::CheckNote(check("spi"), "hip".to_owned()));
    let again = garment_of(&write(&edited, 4));
    assert_eq!(again, edited);
    assert_eq!(again.aside(), garment.aside());
    assert!(unknown.iter().all(|text| write(&edited, 4).contains(text)));
}

#[test]
fn what_the_person_puts_in_counts_more_than_what_could_not_be_read() {
    let body =
        r#"{"answers":[{"check":"hang","judged":"superb"}],"family":"jeans","id":"g","label":7,"noted":"2026-11-25","ticket":5}"#;
    let ticket = Ticket { minor: 1, currency: Currency::Jpy, kind: PriceKind::Wholesale, face_down: false };
    let garment = garment_of(&page_of(body, 1))
        .after(Act::Label("Mine".to_owned()))
        .after(Act::Ticket(Some(ticket)))
        .after(judged("hang", "equal"));
    let again = garment_of(&write(&garment, 2));
    assert_eq!((again.label(), again.ticket()), ("Mine", Some(&ticket)));
    assert_eq!(again.level(check("hang")).map(|level| level.key), Some("equal"));
}

#[test]
fn every_bit_of_a_page_flipped_and_every_cut_is_noticed() {
    let garment = full("g");
    for page in [write(&garment, 7), write(&bare("g"), 12)] {
        let original = garment_of(&page);
        let mut tried = 0;
        for place in 0..page.len() {
            let cut = String::from_utf8_lossy(&page.as_bytes()[..place]).into_owned();
            assert!(read(&cut).is_err(), "cut at {place}");
            for bit in 0..8 {
                let mut bytes = page.clone().into_bytes();
                bytes[place] ^= 1 << bit;
                let text = String::from_utf8_lossy(&bytes).into_owned();
                match read(&text) {
                    Err(_) => {}
                    // The same facts in other words would be no harm.
                    Ok(Page::Here { rev, record: garment }) => {
                        assert_eq!((rev, *garment), (read(&page).expect("a page").rev(), original.clone()), "{place} {bit}");
                    }
                    Ok(gone) => panic!("{place} {bit}: {gone:?}"),
                }
                tried += 1;
            }
        }
        assert!(tried > 500);
    }
}

#[test]
fn a_damaged_page_leaves_the_others_readable_and_its_text_kept() {
    let shelf = MemoryShelf::default();
    let (mut notebook, _) = Notebook::open(shelf.clone());
    for garment in [full("a"), full("b"), full("c")] {
        notebook.keep(&garment).expect("room");
    }
    let page = shelf.get(&key(&full("b"))).expect("a shelf").expect("a page");
    for place in (0..page.len()).filter(|place| page.is_char_boundary(*place)) {
        let text = &page[..place];
        shelf.set(&key(&full("b")), text).expect("room");
        let (_, opened) = Notebook::open(shelf.clone());
        let names: BTreeSet<&str> = opened.garments.iter().map(|garment| garment.id().as_str()).collect();
        assert_eq!(names, BTreeSet::from(["a", "c"]));
        assert_eq!(opened.set_aside.len(), 1);
        assert_eq!(opened.set_aside[0].text, text);
        assert_eq!(shelf.get(&key(&full("b"))).expect("a shelf").as_deref(), Some(text));
    }
}

#[test]
fn a_page_under_another_name_or_no_name_is_set_aside() {
    let shelf = MemoryShelf::default();
    for place in ["b", "no name", ""] {
        shelf.set(&format!("{PAGE}{place}"), &write(&full("a"), 3)).expect("room");
    }
    shelf.set("another-app/page/a", &write(&full("a"), 3)).expect("room");
    let (mut notebook, opened) = Notebook::open(shelf.clone());
    assert_eq!((opened.garments.len(), opened.set_aside.len()), (0, 3));
    // Keeping the garment of that name sets the wrong page aside for good.
    notebook.keep(&full("b")).expect("room");
    let (_, opened) = Notebook::open(shelf);
    assert_eq!((opened.garments, opened.set_aside.len()), (vec![full("b")], 3));
}

#[test]
fn a_page_nested_beyond_measure_is_refused_and_not_a_fall() {
    for levels in [101, 127, 128, 1_000, 100_000] {
        for (open, shut) in [("[", "]"), ("{\"a\":", "}")] {
            let deep = format!("{}1{}", open.repeat(levels), shut.repeat(levels));
            let body = format!(r#"{{"answers":[],"family":"jeans","id":"g","noted":"2026-11-25","x":{deep}}}"#);
            assert_eq!(read(&page_of(&body, 1)), Err(Unreadable::Damaged), "{levels}");
            assert_eq!(read(&deep), Err(Unreadable::Damaged));
        }
    }
    // What is taken can also be exported and imported.
    let deep = format!("{}1{}", "[".repeat(100), "]".repeat(100));
    let body = format!(r#"{{"answers":[],"family":"jeans","id":"g","noted":"2026-11-25","x":{deep}}}"#);
    let garment = garment_of(&page_of(&body, 1));
    let import = import(&export(&[&garment], day()), &[], Mode::Merge).expect("a whole file");
    assert_eq!(import.changes, [Change::Add(garment)]);
}

#[test]
fn pages_of_no_form_and_of_wrong_shape_are_damaged() {
    let body = r#"{"answers":[],"family":"jeans","id":"g","noted":"2026-11-25"}"#;
    assert!(read(&page_of(body, 1)).is_ok());
    let wrong = [
        page_of(body, 1).replace("\"form\":1", "\"form\":0"),
        page_of(body, 1).replace("\"form\":1", "\"form\":1.0"),
        page_of(body, 1).replace("\"rev\":1", "\"rev\":-1"),
        page_of(&body.replace("[]", "7"), 1),
        page_of(&body.replace("}", ",\"notes\":[]}"), 1),
        page_of(&body.replace("2026-11-25", "2026-02-30"), 1),
        page_of(&body.replace("\"g\"", "\"g/g\""), 1),
        page_of("[]", 1),
        page_of("", 1),
        "{\"form\":1,\"rev\":3,\"gone\":true}".to_owned(),
        String::new(),
        "\n".to_owned(),
    ];
    for text in wrong {
        assert_eq!(read(&text), Err(Unreadable::Damaged), "{text}");
    }
    assert_eq!(read(&page_of(&body.replace("jeans", "kilt"), 1)), Err(Unreadable::UnknownFamily("kilt".to_owned())));
}

// Newer versions.

#[test]
fn a_newer_page_is_kept_as_it_is_and_never_written_over() {
    let newer = "{\"form\":2,\"whatever\":true}\nanything";
    let family = page_of(r#"{"answers":[],"family":"kilt","id":"g","noted":"2026-11-25"}"#, 9);
    for stranger in [newer, &family] {
        let shelf = MemoryShelf::default();
        let (mut notebook, _) = Notebook::open(shelf.clone());
        notebook.keep(&full("g")).expect("room");
        // A newer version in another window rewrites the page.
        shelf.set(&key(&full("g")), stranger).expect("room");
        assert_eq!(notebook.written_elsewhere(&key(&full("g")), Some(stranger)), Elsewhere::Nothing);

        let kept = notebook.keep(&full("g")).expect("room");
        let renamed = kept.renamed.expect("a new name");
        assert_eq!(renamed.theirs, None);
        assert_eq!(renamed.ours, full("g").named(renamed.ours.id().clone()));
        let kept = notebook.discard(&id("g")).expect("no fault");
        assert_eq!(kept.stays.map(|stays| stays.theirs), Some(None));
        let healed = notebook.heal(&[(key(&full("g")), write(&full("g"), 99))]).expect("no fault");
        assert_eq!(healed.garments, []);

        let (_, opened) = Notebook::open(shelf);
        assert_eq!(opened.garments, [renamed.ours]);
        assert_eq!(opened.set_aside.len(), 1);
        assert_eq!(opened.set_aside[0].text, stranger);
    }
}

#[test]
fn a_newer_page_in_the_mirror_is_not_asked_to_be_written_over() {
    let (mut notebook, _) = Notebook::open(MemoryShelf::default());
    notebook.keep(&full("g")).expect("room");
    let healed = notebook.heal(&[(key(&full("g")), "{\"form\":2}\n".to_owned())]).expect("no fault");
    assert_eq!(healed.to_mirror, []);
}

// Windows.

#[test]
fn two_windows_that_edit_one_garment_keep_both() {
    let shelf = MemoryShelf::default();
    let (mut one, _) = Notebook::open(shelf.clone());
    let start = full("g");
    one.keep(&start).expect("room");
    let (mut two, _) = Notebook::open(shelf.clone());
    let (mine, yours) = (start.after(Act::Label("mine".to_owned())), start.after(Act::Label("yours".to_owned())));
    one.keep(&mine).expect("room");
    let kept = two.keep(&yours).expect("room");
    let renamed = *kept.renamed.expect("a new name");
    assert_eq!(renamed.theirs, Some(mine.clone()));
    assert_eq!(renamed.ours, yours.named(id("g~2")));
    assert_eq!(kept.page, (key(&renamed.ours), write(&renamed.ours, 1)));
    let all = opened(shelf.clone());
    assert_eq!(all.values().collect::<Vec<_>>(), [&mine, &renamed.ours]);
    // The second window now knows the first one's, and may go on with either.
    let next = mine.after(Act::Note("seen".to_owned()));
    assert_eq!(two.keep(&next).expect("room").renamed, None);
    // A third collision finds a third name.
    let kept = one.keep(&mine.after(Act::Note("not seen".to_owned()))).expect("room");
    assert_eq!(kept.renamed.expect("a new name").ours.id(), &id("g~3"));
    assert_eq!(opened(shelf).len(), 3);
}

#[test]
fn two_windows_that_write_the_same_facts_have_no_quarrel() {
    let shelf = MemoryShelf::default();
    let (mut one, _) = Notebook::open(shelf.clone());
    let (mut two, _) = Notebook::open(shelf.clone());
    one.keep(&full("g")).expect("room");
    assert_eq!(two.keep(&full("g")).expect("room").renamed, None);
    assert_eq!(opened(shelf).len(), 1);
}

#[test]
fn an_edit_meets_a_deletion_and_stays_whichever_comes_first() {
    let edited = full("g").after(Act::Note("edited".to_owned()));
    let windows = || {
        let shelf = MemoryShelf::default();
        let (mut one, _) = Notebook::open(shelf.clone());
        one.keep(&full("g")).expect("room");
        let (two, _) = Notebook::open(shelf.clone());
        (shelf, one, two)
    };
    let (shelf, mut one, mut two) = windows();
    one.discard(&id("g")).expect("no fault");
    assert_eq!(two.keep(&edited).expect("room").renamed, None);
    assert_eq!(opened(shelf).into_values().collect::<Vec<_>>(), vec![edited.clone()]);

    let (shelf, mut one, mut two) = windows();
    one.keep(&edited).expect("room");
    let kept = two.discard(&id("g")).expect("no fault");
    assert_eq!(kept.stays.and_then(|stays| stays.theirs), Some(edited.clone()));
    assert_eq!(kept.page.1, write(&edited, 2));
    assert_eq!(opened(shelf.clone()).into_values().collect::<Vec<_>>(), [edited]);
    // Whoever has seen it may delete it.
    assert_eq!(two.discard(&id("g")).expect("no fault").stays, None);
    assert!(opened(shelf).is_empty());
}

#[test]
fn word_from_another_window_is_taken_once_and_in_order() {
    let shelf = MemoryShelf::default();
    let (mut one, _) = Notebook::open(shelf.clone());
    let (mut two, _) = Notebook::open(shelf.clone());
    let (first, second) = (full("g"), full("g").after(Act::Note("second".to_owned())));
    let (key, first_page) = one.keep(&first).expect("room").page;
    assert_eq!(two.written_elsewhere(&key, Some(&first_page)), Elsewhere::Changed(Box::new(first.clone())));
    assert_eq!(two.keep(&second).expect("room").renamed, None);
    // The first word again, late: it must not bring the old state back, nor make the next edit a quarrel.
    assert_eq!(two.written_elsewhere(&key, Some(&first_page)), Elsewhere::Nothing);
    let third = second.after(Act::Note("third".to_owned()));
    assert_eq!(two.keep(&third).expect("room").renamed, None);
    let (_, gone) = one.discard(&id("g")).expect("no fault").page;
    // Nothing is gone: the first window had not seen the third state.
    assert_eq!(gone, write(&third, 3));
    let (_, gone) = one.discard(&id("g")).expect("no fault").page;
    assert_eq!(two.written_elsewhere(&key, Some(&gone)), Elsewhere::Gone(id("g")));
    assert_eq!(two.written_elsewhere(&key, None), Elsewhere::Gone(id("g")));
    for (key, text) in [("other", Some("x")), (BALLAST, None), (key.as_str(), Some("x")), (key.as_str(), Some(""))] {
        assert_eq!(two.written_elsewhere(key, text), Elsewhere::Nothing, "{key}");
    }
    assert_eq!(two.written_elsewhere(&key, Some(&write(&full("h"), 9))), Elsewhere::Nothing, "another garment's page");
}

#[test]
fn of_two_that_wrote_at_the_same_instant_the_one_whose_page_is_gone_hears_of_it() {
    let note = |text: &str| full("g").after(Act::Note(text.to_owned()));
    let key = key(&full("g"));
    let windows = || {
        let shelf = MemoryShelf::default();
        Notebook::open(shelf.clone()).0.keep(&full("g")).expect("room");
        let (one, two, three) =
            (Notebook::open(shelf.clone()).0, Notebook::open(shelf.clone()).0, Notebook::open(shelf.clone()).0);
        (shelf, one, two, three)
    };
    // Both had seen the first writing only; the second to write did not hear of the first in time, and its page lies on the shelf.
    let theirs = write(&note("theirs"), 2);
    let (shelf, mut ours, mut winner, mut reader) = windows();
    let (_, first) = ours.keep(&note("ours")).expect("room").page;
    shelf.set(&key, &theirs).expect("room");
    assert_eq!(ours.written_elsewhere(&key, Some(&theirs)), Elsewhere::Over(id("g"), Some(Box::new(note("theirs")))));
    assert_eq!(ours.written_elsewhere(&key, Some(&theirs)), Elsewhere::Nothing, "said once");
    // Who only read what is gone takes what stands, and saves nothing.
    assert_eq!(reader.written_elsewhere(&key, Some(&first)), Elsewhere::Changed(Box::new(note("ours"))));
    assert_eq!(reader.written_elsewhere(&key, Some(&theirs)), Elsewhere::Changed(Box::new(note("theirs"))));
    // Whose page stands has nothing to save.
    shelf.set(&key, &write(&full("g"), 1)).expect("room");
    assert_eq!(winner.keep(&note("theirs")).expect("room").page.1, theirs);
    assert_eq!(winner.written_elsewhere(&key, Some(&first)), Elsewhere::Nothing);
    // Until the other writes again, still without having heard of it; whoever only read takes what stands.
    let again = write(&note("ours, later"), 3);
    shelf.set(&key, &again).expect("room");
    assert_eq!(winner.written_elsewhere(&key, Some(&again)), Elsewhere::Over(id("g"), Some(Box::new(note("ours, later")))));
    assert_eq!(reader.written_elsewhere(&key, Some(&again)), Elsewhere::Changed(Box::new(note("ours, later"))));
    let third = write(&note("ours, last"), 4);
    assert_eq!(winner.written_elsewhere(&key, Some(&third)), Elsewhere::Changed(Box::new(note("ours, last"))), "said once");
    // Both writings of the other came before ours: what stands is ours, and the other will hear of that.
    let (shelf, mut ours, mut other, ..) = windows();
    let (_, first) = other.keep(&note("first")).expect("room").page;
    let (_, second) = other.keep(&note("second")).expect("room").page;
    shelf.set(&key, &write(&full("g"), 1)).expect("room");
    let (_, stands) = ours.keep(&note("ours")).expect("room").page;
    for word in [&first, &second] {
        assert_eq!(ours.written_elsewhere(&key, Some(word)), Elsewhere::Nothing);
    }
    assert_eq!(other.written_elsewhere(&key, Some(&stands)), Elsewhere::Over(id("g"), Some(Box::new(note("ours")))));
    // The other has gone on before word of its first writing comes.
    let (shelf, mut ours, ..) = windows();
    ours.keep(&note("ours")).expect("room");
    shelf.set(&key, &write(&note("theirs, later"), 3)).expect("room");
    assert_eq!(ours.written_elsewhere(&key, Some(&theirs)), Elsewhere::Over(id("g"), Some(Box::new(note("theirs, later")))));
    // Ours was written twice meanwhile, theirs once, and came last.
    let (shelf, mut ours, ..) = windows();
    ours.keep(&note("ours")).expect("room");
    ours.keep(&note("ours, later")).expect("room");
    shelf.set(&key, &theirs).expect("room");
    assert_eq!(ours.written_elsewhere(&key, Some(&theirs)), Elsewhere::Over(id("g"), Some(Box::new(note("theirs")))));
    // Late word of a page that was seen before ours was written.
    let (_, mut ours, ..) = windows();
    ours.keep(&note("ours")).expect("room");
    assert_eq!(ours.written_elsewhere(&key, Some(&write(&full("g"), 1))), Elsewhere::Nothing);
}

#[test]
fn writings_beyond_counting_do_not_fall() {
    let shelf = MemoryShelf::default();
    shelf.set(&key(&full("g")), &write(&full("g"), u64::MAX)).expect("room");
    let (mut notebook, _) = Notebook::open(shelf.clone());
    let edited = full("g").after(Act::Note(String::new()));
    notebook.keep(&edited).expect("room");
    notebook.keep(&full("g")).expect("room");
    assert_eq!(opened(shelf).into_values().collect::<Vec<_>>(), [full("g")]);
    notebook.discard(&id("g")).expect("no fault");
}

// Full and failing shelves.

#[test]
fn a_full_shelf_gives_up_its_reserve_once_and_then_says_so_and_loses_nothing() {
    let memory = MemoryShelf::default();
    let shelf = FaultyShelf::new(memory.clone());
    shelf.limit(60_000);
    let (mut notebook, opening) = Notebook::open(shelf.clone());
    assert_eq!(opening.fault, None);
    assert!(memory.get(BALLAST).expect("a shelf").is_some());
    let heavy = |number: u32| full(&format!("g{number}")).after(Act::Note("n".repeat(2000)));
    let (mut used, mut kept) = (Vec::new(), BTreeMap::new());
    let fault = loop {
        let garment = heavy(kept.len() as u32);
        match notebook.keep(&garment) {
            Ok(done) => {
                used.push(done.reserve_used);
                kept.insert(garment.id().clone(), garment);
            }
            Err(KeepFault(fault)) => break fault,
        }
        assert!(kept.len() < 100);
    };
    assert_eq!(fault, ShelfFault::Full);
    assert_eq!(used.iter().filter(|used| **used).count(), 1, "{used:?}");
    assert!(memory.get(BALLAST).expect("a shelf").is_none());
    assert_eq!(opened(memory.clone()), kept);
    // Deleting makes room again, and the next opening lays a new reserve.
    for name in kept.keys() {
        notebook.discard(name).expect("a short line fits where a page stood");
    }
    let (mut notebook, _) = Notebook::open(shelf);
    assert!(memory.get(BALLAST).expect("a shelf").is_some());
    assert!(!notebook.keep(&heavy(0)).expect("room").reserve_used);
}

#[test]
fn what_is_too_large_even_for_the_reserve_leaves_the_reserve_in_place() {
    let memory = MemoryShelf::default();
    let shelf = FaultyShelf::new(memory.clone());
    shelf.limit(33_000);
    let (mut notebook, _) = Notebook::open(shelf);
    let huge = noted_everywhere(bare("huge"));
    assert_eq!(notebook.keep(&huge).expect_err("too large"), KeepFault(ShelfFault::Full));
    assert!(memory.get(BALLAST).expect("a shelf").is_some());
    assert!(notebook.keep(&full("small")).expect("the reserve").reserve_used);
}

fn noted_everywhere(garment: Garment) -> Garment {
    garment.family().checks.iter().fold(garment.clone(), |garment, check| garment.after(Act::CheckNote(check, "n".repeat(2000))))
}

/// What one person did and was told, so that it can be held against what lies on the shelf afterwards.
#[derive(Default)]
struct Told {
    /// Of each garment the last state that was acknowledged (none when deleted), and states asked for since.
    last: BTreeMap<Id, (Option<Garment>, Vec<Option<Garment>>)>,
}

impl Told {
    fn asked(&mut self, name: &Id, state: Option<Garment>, done: bool) {
        let entry = self.last.entry(name.clone()).or_default();
        if done {
            *entry = (state, Vec::new());
        } else {
            entry.1.push(state);
        }
    }

    fn assert_holds(&self, found: &BTreeMap<Id, Garment>, when: &str) {
        for (name, (last, asked)) in &self.last {
            let found = found.get(name).cloned();
            assert!(found == *last || asked.contains(&found), "{when}: {name:?} is {found:?}");
        }
    }
}

#[test]
fn whatever_operation_fails_every_acknowledged_garment_is_there() {
    let edit = |garment: &Garment, word: &str| garment.after(Act::Note(word.to_owned()));
    for fault in [ShelfFault::Forbidden, ShelfFault::Full, ShelfFault::Broken] {
        for once in [true, false] {
            let mut failed = 0;
            for operations in 0.. {
                let when = format!("{fault:?} after {operations}, once {once}");
                let memory = MemoryShelf::default();
                let mut told = Told::default();
                {
                    let (mut notebook, _) = Notebook::open(memory.clone());
                    for garment in [full("a"), full("b"), full("c")] {
                        notebook.keep(&garment).expect("room");
                        told.asked(garment.id(), Some(garment.clone()), true);
                    }
                }
                memory.set(&format!("{PAGE}d"), &write(&full("d"), 2)[..40]).expect("room");
                let shelf = FaultyShelf::new(memory.clone());
                shelf.fail_after(operations, fault, once);

                let (mut notebook, opening) = Notebook::open(shelf.clone());
                let mut errors = u32::from(opening.fault.is_some());
                let mut seen: BTreeMap<Id, Garment> =
                    opening.garments.into_iter().map(|garment| (garment.id().clone(), garment)).collect();
                // The mirror has a newer page of c, and a sound one of d, which is damaged here.
                let (newer, sound) = (edit(&full("c"), "from the mirror"), full("d"));
                let mirror = [(key(&newer), write(&newer, 5)), (key(&sound), write(&sound, 2))];
                match notebook.heal(&mirror) {
                    Ok(healed) => {
                        errors += u32::from(healed.fault.is_some());
                        for garment in healed.garments {
                            told.asked(garment.id(), Some(garment.clone()), true);
                            seen.insert(garment.id().clone(), garment);
                        }
                    }
                    Err(_) => {
                        errors += 1;
                        told.asked(&id("c"), Some(newer), false);
                        told.last.insert(id("d"), (None, vec![Some(sound)]));
                    }
                }
                for name in ["a", "c"] {
                    let Some(garment) = seen.get(&id(name)).map(|garment| edit(garment, "edited")) else { continue };
                    let done = notebook.keep(&garment);
                    errors += u32::from(done.is_err());
                    told.asked(&id(name), Some(garment), done.as_ref().is_ok_and(|kept| kept.renamed.is_none()));
                }
                let done = notebook.discard(&id("b"));
                errors += u32::from(done.is_err());
                // A garment that could not be read at opening is not deleted unseen.
                told.asked(&id("b"), None, done.is_ok_and(|kept| kept.stays.is_none()));
                let done = notebook.keep(&full("e"));
                errors += u32::from(done.is_err());
                told.asked(&id("e"), Some(full("e")), done.is_ok());

                let left = shelf.left();
                shelf.mend();
                told.assert_holds(&opened(memory), &when);
                failed += errors;
                if left.is_some_and(|left| left > 0) {
                    assert_eq!(errors, 0, "{when}");
                    break;
                }
                assert!(operations < 200);
            }
            assert!(failed > 10, "{fault:?}: {failed} failures were met");
        }
    }
}

#[test]
fn erasing_that_fails_can_be_taken_up_again_and_leaves_nothing_of_ours() {
    for fault in [ShelfFault::Forbidden, ShelfFault::Full, ShelfFault::Broken] {
        for operations in 0..10 {
            let memory = MemoryShelf::default();
            memory.set("another-app", "stays").expect("room");
            let shelf = FaultyShelf::new(memory.clone());
            let (mut notebook, _) = Notebook::open(shelf.clone());
            notebook.keep(&full("a")).expect("room");
            notebook.keep_settings("{}").expect("room");
            assert_eq!(notebook.settings(), Ok(Some("{}".to_owned())));
            shelf.fail_after(operations, fault, true);
            if notebook.erase().is_err() {
                notebook.erase().expect("the failure came once");
            }
            assert_eq!(memory.keys(), Ok(vec!["another-app".to_owned()]));
            shelf.mend();
            notebook.keep(&full("a")).expect("room");
            assert_eq!(opened(memory).len(), 1);
        }
    }
}

#[test]
fn a_shelf_that_cannot_be_read_at_all_is_said_and_not_written_over() {
    let memory = MemoryShelf::default();
    let (mut notebook, _) = Notebook::open(memory.clone());
    notebook.keep(&full("a")).expect("room");
    let shelf = FaultyShelf::new(memory.clone());
    shelf.fail_after(0, ShelfFault::Forbidden, false);
    let (mut notebook, opening) = Notebook::open(shelf.clone());
    assert_eq!((opening.fault, opening.garments.len()), (Some(ShelfFault::Forbidden), 0));
    assert_eq!(notebook.keep(&full("b")).expect_err("forbidden"), KeepFault(ShelfFault::Forbidden));
    shelf.mend();
    // A garment of the same name, made without knowing what lies there, does not push it out.
    let other = bare("a").after(Act::Note("other".to_owned()));
    let kept = notebook.keep(&other).expect("room");
    assert!(kept.renamed.is_some());
    assert_eq!(opened(memory).len(), 2);
}

// The mirror.

#[test]
fn of_shelf_and_mirror_the_page_written_more_often_wins_on_both_sides() {
    let (old, new) = (full("g"), full("g").after(Act::Note("new".to_owned())));
    let shelf_with = |rev: u64, garment: &Garment| {
        let shelf = MemoryShelf::default();
        shelf.set(&key(garment), &write(garment, rev)).expect("room");
        shelf
    };
    // Mirror newer.
    let shelf = shelf_with(2, &old);
    let (mut notebook, _) = Notebook::open(shelf.clone());
    let mirror = [(key(&new), write(&new, 3))];
    let healed = notebook.heal(&mirror).expect("no fault");
    assert_eq!((healed.garments, healed.to_mirror.len(), healed.mended.len()), (vec![new.clone()], 0, 0));
    assert_eq!(shelf.get(&key(&new)), Ok(Some(write(&new, 3))));
    // Twice is once.
    assert_eq!(notebook.heal(&mirror), Ok(Healed::default()));
    // Mirror older, and mirror without it.
    for mirror in [vec![(key(&old), write(&old, 2))], Vec::new(), vec![(key(&old), "damaged".to_owned())]] {
        let (mut notebook, _) = Notebook::open(shelf_with(3, &new));
        let healed = notebook.heal(&mirror).expect("no fault");
        assert_eq!((healed.garments.len(), healed.to_mirror), (0, vec![(key(&new), write(&new, 3))]));
    }
    // Mirror only.
    let shelf = MemoryShelf::default();
    let (mut notebook, _) = Notebook::open(shelf.clone());
    assert_eq!(notebook.heal(&[(key(&new), write(&new, 3))]).expect("no fault").garments, vec![new.clone()]);
    assert_eq!(opened(shelf).len(), 1);
    // Local damaged, mirror sound.
    let shelf = shelf_with(3, &new);
    let damaged = write(&new, 3).replace("new", "nex");
    shelf.set(&key(&new), &damaged).expect("room");
    let (mut notebook, opening) = Notebook::open(shelf.clone());
    assert_eq!(opening.set_aside.len(), 1);
    let healed = notebook.heal(&[(key(&old), write(&old, 2))]).expect("no fault");
    assert_eq!((healed.garments, healed.mended), (vec![old.clone()], vec![key(&old)]));
    let (mut notebook, opening) = Notebook::open(shelf.clone());
    assert_eq!(opening.garments, [old]);
    assert_eq!(opening.set_aside[0].text, damaged, "the damaged text is kept elsewhere");
    let place = opening.set_aside[0].key.clone();
    notebook.drop_set_aside(&place).expect("no fault");
    assert_eq!(Notebook::open(shelf).1.set_aside, []);
}

#[test]
fn a_deletion_on_one_side_reaches_the_other() {
    let garment = full("g");
    let (mut other, _) = Notebook::open(MemoryShelf::default());
    other.keep(&garment).expect("room");
    let gone = other.discard(garment.id()).expect("no fault").page;
    // Deleted in the mirror.
    let shelf = MemoryShelf::default();
    shelf.set(&key(&garment), &write(&garment, 1)).expect("room");
    let (mut notebook, _) = Notebook::open(shelf.clone());
    assert_eq!(notebook.heal(std::slice::from_ref(&gone)).expect("no fault").gone, [id("g")]);
    assert!(opened(shelf.clone()).is_empty());
    // Deleted here: the mirror's older page does not bring it back.
    let (mut notebook, _) = Notebook::open(shelf.clone());
    let healed = notebook.heal(&[(key(&garment), write(&garment, 1))]).expect("no fault");
    assert_eq!((healed.garments.len(), healed.to_mirror), (0, vec![gone]));
    assert!(opened(shelf).is_empty());
}

#[test]
fn an_edit_made_before_the_mirror_was_read_is_not_lost_to_it() {
    let (stale, newer) = (full("g"), full("g").after(Act::Note("in the mirror".to_owned())));
    let edited = stale.after(Act::Note("just now".to_owned()));
    let shelf = MemoryShelf::default();
    shelf.set(&key(&stale), &write(&stale, 2)).expect("room");
    let (mut notebook, _) = Notebook::open(shelf.clone());
    notebook.keep(&edited).expect("room");
    let mirror = [(key(&newer), write(&newer, 7))];
    let healed = notebook.heal(&mirror).expect("no fault");
    let beside = newer.named(id("g~2"));
    assert_eq!(healed.garments, vec![beside.clone()]);
    assert_eq!(healed.to_mirror, [(key(&edited), write(&edited, 8)), (key(&beside), write(&beside, 1))]);
    assert_eq!(opened(shelf).into_values().collect::<Vec<_>>(), [edited, beside]);
    let mirror: Vec<_> = healed.to_mirror;
    assert_eq!(notebook.heal(&mirror), Ok(Healed::default()), "twice is once");
}

#[test]
fn of_pages_that_were_alike_only_those_written_since_go_to_the_mirror() {
    let (left, edited) = (full("g"), full("h"));
    let shelf = MemoryShelf::default();
    for garment in [&left, &edited] {
        shelf.set(&key(garment), &write(garment, 2)).expect("room");
    }
    let (mut notebook, _) = Notebook::open(shelf);
    let alike = BTreeSet::from([key(&left), key(&edited)]);
    let edited = edited.after(Act::Note("since".to_owned()));
    notebook.keep(&edited).expect("room");
    let healed = notebook.heal_where_unlike(&[], &alike).expect("no fault");
    assert_eq!(healed, Healed { to_mirror: vec![(key(&edited), write(&edited, 3))], ..Healed::default() });
    assert_eq!(notebook.heal(&[]).expect("no fault").to_mirror.len(), 2, "not known to be alike");
}

#[test]
fn a_mirror_of_nonsense_changes_nothing() {
    let shelf = MemoryShelf::default();
    let (mut notebook, _) = Notebook::open(shelf.clone());
    notebook.keep(&full("g")).expect("room");
    let before = shelf.keys();
    let page = |place: &str, text: &str| (place.to_owned(), text.to_owned());
    let mirror = [
        page("", ""),
        page("another-app", "x"),
        page(&format!("{PAGE}g"), "damaged"),
        page(&format!("{PAGE}h"), &write(&full("x"), 9)),
        page(&format!("{PAGE}no name"), &write(&full("x"), 9)),
    ];
    let healed = notebook.heal(&mirror).expect("no fault");
    assert_eq!((healed.garments.len(), healed.gone.len()), (0, 0));
    assert_eq!(shelf.keys(), before);
}

#[test]
fn a_healing_that_stops_part_way_tells_what_it_took_over() {
    let shelf = FaultyShelf::new(MemoryShelf::default());
    let (mut notebook, _) = Notebook::open(shelf.clone());
    let mirror = ["a", "b"].map(|name| (key(&full(name)), write(&full(name), 3)));
    shelf.fail_after(3, ShelfFault::Broken, true);
    let healed = notebook.heal(&mirror).expect("one was taken over");
    assert_eq!((healed.garments.len(), healed.fault), (1, Some(ShelfFault::Broken)));
    let healed = notebook.heal(&mirror).expect("no fault");
    assert_eq!((healed.garments, healed.fault), (vec![full("b")], None));
}

#[test]
fn what_was_set_aside_is_dropped_only_while_it_cannot_be_read() {
    let shelf = MemoryShelf::default();
    shelf.set(&format!("{PAGE}g"), "damaged").expect("room");
    shelf.set("another-app", "stays").expect("room");
    let (mut notebook, _) = Notebook::open(shelf.clone());
    shelf.set(&format!("{PAGE}g"), &write(&full("g"), 3)).expect("room");
    notebook.drop_set_aside(&format!("{PAGE}g")).expect("no fault");
    notebook.drop_set_aside("another-app").expect("no fault");
    assert_eq!(opened(shelf.clone()).len(), 1);
    assert_eq!(shelf.get("another-app"), Ok(Some("stays".to_owned())));
}

// Everything against a plain map.

#[derive(Clone, Debug)]
enum Step {
    Edit(usize, Act),
    Discard(usize),
    Undo,
    Heal,
    Reopen,
    LoseLocal(usize),
    DamageLocal(usize),
}

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        8 => (0_usize..4, act()).prop_map(|(which, act)| Step::Edit(which, act)),
        2 => (0_usize..4).prop_map(Step::Discard),
        2 => Just(Step::Undo),
        1 => Just(Step::Heal),
        1 => Just(Step::Reopen),
        1 => (0_usize..4).prop_map(Step::LoseLocal),
        1 => (0_usize..4).prop_map(Step::DamageLocal),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(150))]

    #[test]
    fn a_notebook_with_a_mirror_is_a_plain_map_whatever_is_done_in_whatever_order(steps in prop::collection::vec(step(), 0..40)) {
        let names = ["a", "b", "c", "d"];
        let (shelf, mut mirror, mut map) = (MemoryShelf::default(), BTreeMap::new(), BTreeMap::<Id, Garment>::new());
        let mut undo: Vec<(Id, Option<Garment>)> = Vec::new();
        let (mut notebook, _) = Notebook::open(shelf.clone());
        let mut damaged = 0;
        for step in steps {
            let change = match step {
                Step::Edit(which, act) => {
                    let name = id(names[which]);
                    let garment = map.get(&name).cloned().unwrap_or_else(|| bare(names[which]));
                    undo.push((name.clone(), map.get(&name).cloned()));
                    Some((name, Some(garment.after(act))))
                }
                Step::Discard(which) if map.contains_key(&id(names[which])) => {
                    let name = id(names[which]);
                    undo.push((name.clone(), map.get(&name).cloned()));
                    Some((name, None))
                }
                Step::Discard(_) => None,
                Step::Undo => undo.pop(),
                Step::Heal | Step::Reopen => {
                    (notebook, _) = Notebook::open(shelf.clone());
                    None
                }
                Step::LoseLocal(which) => {
                    shelf.remove(&format!("{PAGE}{}", names[which])).expect("a shelf");
                    (notebook, _) = Notebook::open(shelf.clone());
                    None
                }
                Step::DamageLocal(which) => {
                    let place = format!("{PAGE}{}", names[which]);
                    if let Ok(Some(text)) = shelf.get(&place) {
                        shelf.set(&place, &text[..text.len() - 1]).expect("room");
                        damaged += 1;
                    }
                    (notebook, _) = Notebook::open(shelf.clone());
                    None
                }
            };
            match change {
                Some((name, Some(garment))) => {
                    let kept = notebook.keep(&garment).expect("room");
                    prop_assert_eq!(kept.renamed, None);
                    mirror.insert(kept.page.0, kept.page.1);
                    map.insert(name, garment);
                }
                Some((name, None)) => {
                    let kept = notebook.discard(&name).expect("no fault");
                    prop_assert_eq!(kept.stays, None);
                    mirror.insert(kept.page.0, kept.page.1);
                    map.remove(&name);
                }
                None => {
                    let pages: Vec<_> = mirror.clone().into_iter().collect();
                    let healed = notebook.heal(&pages).expect("no fault");
                    prop_assert_eq!(healed.to_mirror, vec![]);
                    let again = notebook.heal(&pages).expect("no fault");
                    prop_assert_eq!(again, Healed::default());
                }
            }
            prop_assert_eq!(&opened(shelf.clone()), &map);
        }
        let (_, opening) = Notebook::open(shelf);
        prop_assert!(opening.set_aside.len() <= damaged);
    }

    #[test]
    fn a_file_merged_twice_changes_nothing_the_second_time(
        here in prop::collection::vec(act(), 0..12), there in prop::collection::vec(act(), 0..12), more in garment_named("b")
    ) {
        let grown = |acts: Vec<Act>| acts.into_iter().fold(bare("a"), |garment, act| garment.after(act));
        let (mine, theirs) = (grown(here), grown(there));
        let file = export(&[&theirs, &more], day());
        let first = import(&file, &[&mine], Mode::Merge).expect("a whole file");
        let merged = apply(&[&mine], &first.changes);
        prop_assert!(merged.contains(&mine), "what is here stays");
        prop_assert!(merged.contains(&more));
        let differs = mine != theirs;
        prop_assert_eq!(merged.len(), 2 + usize::from(differs));
        let merged: Vec<&Garment> = merged.iter().collect();
        let second = import(&file, &merged, Mode::Merge).expect("a whole file");
        prop_assert!(second.changes.iter().all(|change| matches!(change, Change::Same(_))), "{:?}", second.changes);
    }

    #[test]
    fn replacing_makes_the_rack_the_file_and_the_file_saved_before_takes_it_back(
        a in garment_named("a"), b in garment_named("b"), other in garment_named("b"), c in garment_named("c")
    ) {
        let (before, after) = (export(&[&a, &b], day()), export(&[&other, &c], day()));
        let replaced = apply(&[&a, &b], &import(&after, &[&a, &b], Mode::Replace).expect("a whole file").changes);
        prop_assert_eq!(&replaced, &vec![other, c]);
        let replaced: Vec<&Garment> = replaced.iter().collect();
        let back = apply(&replaced, &import(&before, &replaced, Mode::Replace).expect("a whole file").changes);
        prop_assert_eq!(back, vec![a, b]);
    }
}

/// What a rack is after the changes, by name.
fn apply(here: &[&Garment], changes: &[Change]) -> Vec<Garment> {
    let mut rack: BTreeMap<Id, Garment> = here.iter().map(|garment| (garment.id().clone(), (*garment).clone())).collect();
    for change in changes {
        match change {
            Change::Add(garment) | Change::AddBeside(garment) => {
                assert!(rack.insert(garment.id().clone(), garment.clone()).is_none(), "added over another");
            }
            Change::Overwrite(garment) | Change::Join(garment) => {
                assert!(rack.insert(garment.id().clone(), garment.clone()).is_some());
            }
            Change::Delete(name) => assert!(rack.remove(name).is_some()),
            Change::Same(name) => assert!(rack.contains_key(name)),
        }
    }
    rack.into_values().collect()
}

// Files.

#[test]
fn a_file_cut_or_altered_anywhere_is_refused_or_means_the_same() {
    let garments = [full("a"), full("b").after(Act::Ticket(None))];
    let file = export(&[&garments[0], &garments[1]], day());
    let whole = import(&file, &[], Mode::Merge).expect("a whole file");
    for place in 0..file.len() {
        let cut = String::from_utf8_lossy(&file.as_bytes()[..place]).into_owned();
        match import(&cut, &[], Mode::Merge) {
            // Only the line's end is missing.
            Ok(import) => assert_eq!((import, place), (whole.clone(), file.len() - 1)),
            Err(fault) => assert!(matches!(fault, ImportFault::NotOurs | ImportFault::Damaged), "{place}: {fault:?}"),
        }
        for bit in 0..8 {
            let mut bytes = file.clone().into_bytes();
            bytes[place] ^= 1 << bit;
            if let Ok(import) = import(&String::from_utf8_lossy(&bytes), &[], Mode::Merge) {
                assert_eq!(import, whole, "{place} {bit}");
            }
        }
    }
}

#[test]
fn foreign_files_are_refused_each_for_its_reason() {
    let file = export(&[&full("a")], day());
    let deep = |levels: usize| "[".repeat(levels) + &"]".repeat(levels);
    let body = |garment: &Garment| export(&[garment], day());
    for (text, fault) in [
        (String::new(), ImportFault::NotOurs),
        ("\u{feff}".to_owned(), ImportFault::NotOurs),
        ("not JSON".to_owned(), ImportFault::NotOurs),
        ("null".to_owned(), ImportFault::NotOurs),
        ("[]".to_owned(), ImportFault::NotOurs),
        ("{}".to_owned(), ImportFault::NotOurs),
        ("{\"kind\":\"another-app\",\"garments\":[]}".to_owned(), ImportFault::NotOurs),
        (GOLDEN.to_owned(), ImportFault::NotOurs),
        (deep(100_000), ImportFault::NotOurs),
        (format!("{{\"kind\":\"garment-assay-rack\",\"form\":1,\"garments\":{}}}", deep(100_000)), ImportFault::Damaged),
        (file.replace("\"form\": 1", "\"form\": 2"), ImportFault::Newer),
        (file.replace("\"form\": 1", "\"form\": 0"), ImportFault::Damaged),
        (file.replace("\"form\": 1", "\"form\": \"1\""), ImportFault::Damaged),
        (file.replace("\"count\": 1", "\"count\": 2"), ImportFault::Damaged),
        (file.replace("2026-11-25\",\n  \"sum", "2026-11-24\",\n  \"sum"), ImportFault::Damaged),
        (file.replace("third", "fourth"), ImportFault::Damaged),
        (file.clone() + &body(&full("b")), ImportFault::Damaged),
        (export(&[&full("a"), &full("b"), &full("a")], day()), ImportFault::Garment(3)),
        (with_sum(file.replace("\"jeans\"", "\"kilt\"")), ImportFault::Garment(1)),
        (with_sum(file.replace("\"id\": \"a\"", "\"id\": \"a/b\"")), ImportFault::Garment(1)),
    ] {
        let changed = text != file;
        assert!(changed, "the replacement found nothing to replace: {fault:?}");
        for mode in [Mode::Merge, Mode::Replace] {
            assert_eq!(import(&text, &[&full("h")], mode), Err(fault.clone()), "{}", &text[..text.len().min(80)]);
        }
        assert!(!fault.to_string().is_empty());
    }
}

/// The file with the checksum that its changed content needs; `serde_json` as a reader from outside the notebook.
fn with_sum(file: String) -> String {
    let mut value: serde_json::Value = serde_json::from_str(&file).expect("JSON");
    let made = value["made"].as_str().expect("a day").to_owned();
    value["sum"] = crc(&format!("{made}\n{}", value["garments"])).into();
    value.to_string()
}

#[test]
fn a_file_may_begin_with_a_byte_order_mark_and_be_laid_out_otherwise() {
    let file = export(&[&full("a")], day());
    let whole = import(&file, &[], Mode::Merge);
    assert_eq!(import(&format!("\u{feff}{file}"), &[], Mode::Merge), whole);
    assert_eq!(import(&with_sum(file.clone()), &[], Mode::Merge), whole);
    assert_eq!(import(&file.replace('\n', "\r\n"), &[], Mode::Merge), whole);
    assert_eq!(import(&export(&[], day()), &[], Mode::Merge).expect("an empty rack").changes, []);
}

#[test]
fn what_is_taken_beside_says_where_it_is_from_and_never_grows_beyond_a_name() {
    let long = "a".repeat(Id::LONGEST);
    let (mine, theirs) = (full(&long), full(&long).after(Act::Label(String::new())));
    let changes = import(&export(&[&theirs], day()), &[&mine], Mode::Merge).expect("a whole file").changes;
    let [Change::AddBeside(beside)] = changes.as_slice() else { panic!("{changes:?}") };
    assert_eq!(beside.label(), "From a file");
    assert!(beside.id().as_str().len() <= Id::LONGEST && beside.id() != mine.id());
    assert_eq!(beside.entries(), theirs.entries());
}

#[test]
fn one_file_restores_the_settings_too() {
    let settings = Settings { currency: Currency::Jpy, theme: Theme::Dark, ..Settings::default() };
    let file = export_all(&[&full("a")], None, &settings, day());
    let read = import(&file, &[], Mode::Replace).expect("a whole file");
    assert_eq!(read.settings, Some(settings));
    assert_eq!(import(&export(&[&full("a")], day()), &[], Mode::Replace).expect("a whole file").settings, None);
}

#[test]
fn a_file_that_holds_a_garment_and_what_was_once_set_beside_it_brings_no_two_of_one_name() {
    let mine = full("a").after(Act::Label("mine".to_owned()));
    let theirs = full("a").after(Act::Label("theirs".to_owned()));
    let first = import(&export(&[&theirs], day()), &[&mine], Mode::Merge).expect("a whole file").changes;
    let [Change::AddBeside(beside)] = &first[..] else { panic!("{first:?}") };
    let edited = beside.after(Act::Note("edited".to_owned()));
    let changes = import(&export(&[&theirs, &edited], day()), &[&mine], Mode::Merge).expect("a whole file").changes;
    let added: Vec<&Id> = changes
        .iter()
        .filter_map(|change| match change {
            Change::Add(garment) | Change::AddBeside(garment) => Some(garment.id()),
            _ => None,
        })
        .collect();
    assert_eq!(added, [edited.id()]);
}

#[test]
fn what_was_given_on_the_bench_is_kept_and_erased_with_the_rest() {
    let (mut notebook, _) = Notebook::open(MemoryShelf::default());
    let given =
        vec![Given { input: "count", amount: 24.0, unit: Unit::Count }, Given { input: "length", amount: 3.0, unit: Unit::Inch }];
    assert_eq!(notebook.on_the_bench(&STITCH_DENSITY), None);
    notebook.keep_on_the_bench(&Readings { instrument: &STITCH_DENSITY, given: given.clone() }).expect("room");
    assert_eq!(notebook.on_the_bench(&STITCH_DENSITY), Some(given));
    notebook.erase().expect("a shelf that works");
    assert_eq!(notebook.on_the_bench(&STITCH_DENSITY), None);
}

/// A garment with everything a buyer notes.
fn offered(id: &str) -> Garment {
    let (first, last) = (Day::new(2027, 1, 10).expect("a day"), Day::new(2027, 2, 1).expect("a day"));
    let terms = [
        TermsAct::Supplier("Mill on the hill".to_owned()),
        TermsAct::Style("0042-E1".to_owned()),
        TermsAct::Colourways("ink, straw".to_owned()),
        TermsAct::Sizes("34 to 46".to_owned()),
        TermsAct::Currency(Some(Currency::Eur)),
        TermsAct::Incoterm(Some(Incoterm::CostInsuranceFreight)),
        TermsAct::Prices(vec![PriceBreak { from: 300, minor: 1_200 }, PriceBreak { from: 1_000, minor: 1_090 }]),
        TermsAct::Minimum(Some(300)),
        TermsAct::Delivery(Some((first, last))),
        TermsAct::Shortlisted(true),
    ];
    let mut log = Log::new(LotSize::new(400).expect("a lot"));
    log.looked_at = 20;
    log.findings = vec![
        Finding { piece: 3, what: "open-seam".to_owned(), severity: Severity::Major },
        Finding { piece: 7, what: "needle left in the hem".to_owned(), severity: Severity::Critical },
    ];
    terms
        .into_iter()
        .fold(bare(id), |garment, act| garment.after(Act::Terms(act)))
        .after(Act::Lot(Some(log)))
        .after(Act::Collection("Spring, hall 4".to_owned()))
        .after(Act::Archived(true))
}

#[test]
fn what_a_buyer_noted_is_read_as_it_was_written_and_undone_act_by_act() {
    let garment = offered("g");
    assert_eq!(garment_of(&write(&garment, 3)), garment);
    let merged = import(&export(&[&garment], day()), &[], Mode::Merge).expect("our own file");
    assert_eq!(merged.changes, [Change::Add(garment.clone())]);
    for act in [
        Act::Terms(TermsAct::Prices(Vec::new())),
        Act::Lot(None),
        Act::Collection(String::new()),
        Act::Archived(false),
        Act::Terms(TermsAct::Incoterm(None)),
    ] {
        let back = garment.undoing(&act);
        assert_ne!(garment.after(act.clone()), garment, "{act:?}");
        assert_eq!(garment.after(act).after(back), garment);
    }
}

#[test]
fn offers_and_lots_this_version_does_not_know_are_set_aside_whole_and_written_back_unchanged() {
    for (field, text) in [
        ("terms", r#"{"incoterm":"XYZ","style":"7"}"#),
        ("terms", r#"{"prices":[{"from":1,"minor":5},{"from":1,"minor":6}]}"#),
        ("terms", r#"{"delivery":["2027-02-01","2027-01-10"]}"#),
        ("terms", r#"{"minimum":4294967296}"#),
        ("terms", r#"{"rebate":2}"#),
        ("terms", "7"),
        ("lot", r#"{"findings":[],"level":"II","looked_at":0,"major":"2.5","minor":"4.0","pieces":1}"#),
        ("lot", r#"{"findings":[],"level":"IV","looked_at":0,"major":"2.5","minor":"4.0","pieces":40}"#),
        ("lot", r#"{"findings":[],"level":"II","looked_at":41,"major":"2.5","minor":"4.0","pieces":40}"#),
        (
            "lot",
            r#"{"findings":[{"piece":0,"severity":"major","what":"x"}],"level":"II","looked_at":1,"major":"2.5","minor":"4.0","pieces":40}"#,
        ),
        ("lot", "null"),
        ("collection", "[1]"),
        ("archived", "\"so\""),
    ] {
        let body = format!(r#"{{"answers":[],"family":"jeans","id":"g","{field}":{text},"noted":"2026-11-25"}}"#);
        let garment = garment_of(&page_of(&body, 3));
        assert!(garment.terms().is_empty() && garment.lot().is_none(), "{text}");
        assert_eq!(garment.aside().len(), 1, "{text}");
        assert!(write(&garment, 3).contains(text), "{text}");
    }
    // More pieces looked at than the lot has is no lot, whoever says it.
    let mut log = Log::new(LotSize::new(4).expect("a lot"));
    log.looked_at = 5;
    assert_eq!(bare("g").after(Act::Lot(Some(log))), bare("g"));
}
