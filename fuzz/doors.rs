//! The doors through which text comes in from outside, each with the laws that must hold whatever the text is. Shared by the fuzz targets
//! beside it and by `tests/fuzz.rs`, so that what the long run tried is what `make test` tries again.

use std::collections::{BTreeMap, BTreeSet};

use garment_assay::catalog::FAMILIES;
use garment_assay::fit::{LabelSystem, Person, PersonId};
use garment_assay::garment::{Act, Answer, Appraiser, Errand, Garment, Id, LabelSize, Readings, differences, fit, joined, price};
use garment_assay::grading::Care;
use garment_assay::learn::Texts;
use garment_assay::measure::INSTRUMENTS;
use garment_assay::notebook::{
    Change, Choice, Elsewhere, MemoryShelf, Mode, Notebook, Page, Record, Settings, Shelf, Unreadable, export, import_all, read,
    settled, write,
};
use garment_assay::practice::{Plan, Topic, skill};
use garment_assay::quantity::{Decimal, Unit, read as typed};
use garment_assay::sheet::{Form, answers_table, list, message, rack_table};
use garment_assay::trade::{Currency, Day, Name};
use serde_json::{Value, json};

/// A door by the name of its corpus.
pub type Door = (&'static str, fn(&[u8]));

/// All of them.
pub const DOORS: [Door; 5] = [("import", import), ("page", page), ("shelf", shelf), ("record", record), ("words", words)];

fn id(text: &str) -> Id {
    Id::new(text).expect("a name")
}

fn day() -> Day {
    Day::new(2026, 11, 25).expect("a day")
}

/// CRC-32, reflected, from its definition; the library keeps its own to itself.
fn crc(text: &str) -> String {
    let crc = text.bytes().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(byte), |crc, _| if crc & 1 == 1 { crc >> 1 ^ 0xEDB8_8320 } else { crc >> 1 })
    });
    format!("{:08x}", !crc)
}

/// The text as a file whose count and checksums are right, so that what lies behind them is tried too; none where it is no object.
pub fn resealed(text: &str) -> Option<String> {
    let mut file: Value = serde_json::from_str(text).ok()?;
    let made = file.get("made")?.as_str()?.to_owned();
    let garments = file.get("garments")?.as_array()?.clone();
    file["count"] = garments.len().into();
    file["sum"] = crc(&format!("{made}\n{}", Value::Array(garments))).into();
    if let Some(people) = file.get("people") {
        file["people_sum"] = crc(&format!("{made}\n{people}")).into();
    }
    Some(file.to_string())
}

/// A page with a right checksum around that body.
pub fn sealed(body: &str, rev: u64) -> String {
    format!("{{\"form\":1,\"rev\":{rev},\"sum\":\"{}\"}}\n{body}", crc(&format!("{rev}\n{body}")))
}

/// What is on the rack when a file is brought.
fn here() -> (Vec<Garment>, Vec<Person>) {
    let garment = |name: &str, family: usize| Garment::new(id(name), FAMILIES[family], day());
    let check = FAMILIES[0].checks[0];
    let answer = Answer::Judged { level: check.levels[0].key, care: Care::Usual };
    let garments = vec![
        garment("a", 0).after(Act::Label("mine".to_owned())).after(Act::Answer(check, answer)),
        garment("b", 1).after(Act::Note("mine too".to_owned())),
    ];
    (garments, vec![Person::new(PersonId::new("p").expect("a name"), "Jo")])
}

/// What a list of records is after the changes, by name; the laws of an import hold on the way.
fn applied<R: Record>(here: &[&R], changes: &[Change<R>], mode: Mode) -> Vec<R> {
    use garment_assay::notebook::PageName;
    let name = |record: &R| record.page_name().text().to_owned();
    let mut all: BTreeMap<String, R> = here.iter().map(|record| (name(record), (*record).clone())).collect();
    for change in changes {
        match change {
            Change::Add(record) | Change::AddBeside(record) => {
                assert!(all.insert(name(record), record.clone()).is_none(), "added over another");
            }
            Change::Overwrite(record) | Change::Join(record) => {
                assert!(
                    mode == Mode::Replace && all.insert(name(record), record.clone()).is_some(),
                    "a merge writes nothing over"
                );
            }
            Change::Delete(gone) => {
                assert!(mode == Mode::Replace && all.remove(gone.text()).is_some(), "a merge deletes nothing")
            }
            Change::Same(_) => {}
        }
    }
    if mode == Mode::Merge {
        assert!(here.iter().all(|record| all.get(&name(record)) == Some(*record)), "what is here stays in a merge");
    }
    all.into_values().collect()
}

/// A file that somebody brings.
pub fn import(data: &[u8]) {
    let text = String::from_utf8_lossy(data);
    brought(&text);
    if let Some(text) = resealed(&text) {
        brought(&text);
    }
}

fn brought(text: &str) {
    let (garments, people) = here();
    let (garments, people): (Vec<&Garment>, Vec<&Person>) = (garments.iter().collect(), people.iter().collect());
    for mode in [Mode::Merge, Mode::Replace] {
        let brought = match import_all(text, &garments, &people, mode) {
            Ok(brought) => brought,
            Err(fault) => {
                assert!(fault.to_string().contains("Nothing was changed"));
                continue;
            }
        };
        let rack = applied(&garments, &brought.changes, mode);
        let crowd = brought.people.as_ref().map(|changes| applied(&people, changes, mode));
        let beside = brought.changes.iter().filter(|change| matches!(change, Change::AddBeside(_))).count();
        assert_eq!(beside, brought.conflicts.len());
        for choice in Choice::ALL {
            let changes = settled(&brought.changes, &brought.conflicts, &garments, |_| choice);
            // A choice may write over what is here, which is what was chosen; it may not add over it.
            applied(&garments, &changes, Mode::Replace);
        }
        // The same file once more changes nothing.
        let (rack, crowd): (Vec<&Garment>, Vec<&Person>) = (rack.iter().collect(), crowd.iter().flatten().collect());
        let here = if brought.people.is_some() { &crowd } else { &people };
        let again = import_all(text, &rack, here, mode).expect("it was taken before");
        assert!(again.changes.iter().all(|change| matches!(change, Change::Same(_))), "{:?}", again.changes);
        assert!(again.people.iter().flatten().all(|change| matches!(change, Change::Same(_))), "{:?}", again.people);
        // What was taken can be handed on.
        let handed_on = import_all(&export(&rack, day()), &[], &[], Mode::Merge).expect("our own file");
        assert!(handed_on.changes.into_iter().zip(&rack).all(|(change, garment)| change == Change::Add((*garment).clone())));
    }
}

/// The text of a page: as it is, and as the body of a page that is whole.
pub fn page(data: &[u8]) {
    let text = String::from_utf8_lossy(data);
    let body = text.split_once('\n').map_or(&*text, |(_, body)| body);
    for text in [&*text, &sealed(body, 7)] {
        match read(text) {
            Ok(Page::Here { rev, record }) => {
                let written = write(&*record, rev);
                let again = read(&written).expect("our own page");
                // A key given twice is given once when it is written, and then it stays as it is.
                let Page::Here { record: again, .. } = again else { panic!("it is gone: {written}") };
                assert_eq!(again, record);
                assert_eq!(write(&*again, rev), written);
            }
            Ok(Page::Gone { .. }) => {}
            Err(why) => assert!(why.to_string().contains("kept")),
        }
    }
}

/// A shelf on which the text lies under every kind of key.
pub fn shelf(data: &[u8]) {
    let text = String::from_utf8_lossy(data);
    let body = text.split_once('\n').map_or(&*text, |(_, body)| body);
    for text in [text.to_string(), sealed(body, 3)] {
        let shelf = MemoryShelf::default();
        let put = |key: &str, text: &str| shelf.set(&format!("garment-assay/{key}"), text).expect("room");
        let sound = here().0.remove(1);
        put("page/b", &write(&sound, 2));
        // So large a reserve would only cost time here.
        put("ballast", "x");
        for key in ["page/a", "person/p", "damaged/a~1", "practice", "lessons", "keeping", "settings", "scale/s"] {
            put(key, &text);
        }
        for instrument in INSTRUMENTS {
            put(&format!("bench/{}", instrument.key), &text);
        }
        let (mut notebook, opened) = Notebook::open(shelf.clone());
        assert!(opened.fault.is_none() && opened.garments.contains(&sound), "one page stood in the way of another");
        for key in ["page/a", "person/p"].map(|key| format!("garment-assay/{key}")) {
            let is_read = !matches!(Elsewhere::of(&key, &text), Elsewhere::Nothing);
            assert_ne!(is_read, opened.set_aside.iter().any(|aside| aside.key == key && aside.text == text), "read or set aside");
        }
        let _ = (notebook.lessons_read(), notebook.keeping(), notebook.scale("s"), skill(&notebook.trials(), Topic::ALL[0]));
        for instrument in INSTRUMENTS {
            if let Some(given) = notebook.on_the_bench(instrument) {
                let _ = Readings { instrument, given }.outcome();
            }
        }
        let pages = [("garment-assay/page/b".to_owned(), text.clone()), ("garment-assay/page/c".to_owned(), text.clone())];
        notebook.heal(&pages).expect("a shelf that works");
        // A garment of the same name does not push out what could not be read, nor what was not seen.
        let mine = here().0.remove(0);
        let known: Vec<Garment> = opened.garments.into_iter().filter(|garment| garment.id() == mine.id()).collect();
        notebook.keep(&mine).expect("a shelf that works");
        if known.is_empty() && !matches!(read(&text), Ok(Page::Gone { .. })) {
            let all: BTreeSet<String> = shelf
                .keys()
                .expect("a shelf")
                .iter()
                .filter(|key| {
                    let damaged = key.starts_with("garment-assay/damaged/") && *key != "garment-assay/damaged/a~1";
                    damaged || key.starts_with("garment-assay/page/")
                })
                .filter_map(|key| shelf.get(key).expect("a shelf"))
                .collect();
            assert!(all.contains(&text), "what could not be read is gone");
        }
    }
}

/// What follows from a garment that any page could hold.
pub fn record(data: &[u8]) {
    thread_local!(static APPRAISER: Appraiser = Appraiser::default());
    let text = String::from_utf8_lossy(data);
    let body = text.split_once('\n').map_or(&*text, |(_, body)| body);
    let garment = match read(&sealed(body, 1)) {
        Ok(Page::Here { record, .. }) => *record,
        Ok(Page::Gone { .. })
        | Err(Unreadable::Damaged | Unreadable::Newer { .. } | Unreadable::Stopped | Unreadable::UnknownFamily(_)) => return,
    };
    APPRAISER.with(|appraiser| {
        let appraisal = appraiser.appraise(&garment);
        let all: f64 = appraisal.bands().iter().sum();
        assert!((all - 1.0).abs() < 1e-6, "the bands are shares of one: {all}");
        assert!(appraisal.mean().is_finite());
        let _ = (appraiser.left(&garment), appraiser.next(&garment, &appraisal, None), appraiser.moved(&appraisal));
        for point in garment.family().points {
            let _ = garment.measure(point);
        }
        let all = [&garment];
        for decimal in [Decimal::Point, Decimal::Comma] {
            let _ = (answers_table(&all, Form { decimal }), rack_table(&all, appraiser, Form { decimal }));
        }
        let _ = (message(&garment, appraiser), list(&all, appraiser));
    });
    let _ = (fit(&garment, Some(&here().1[0])), price(&garment, &Settings::default().rates, None));
    let sister = garment.duplicate(id("sister"), day());
    let (one, other) = (joined(&garment, &sister), joined(&sister, &garment));
    let _ = (differences(&garment, &sister), one, other);
    assert!(joined(&garment, &garment).is_ok_and(|joined| joined == garment), "joined with itself it is itself");
}

/// Shorter text: what is typed, what one program says to the other, codes, days, settings, the longer texts of the lessons. The first
/// byte says which.
pub fn words(data: &[u8]) {
    let Some((which, data)) = data.split_first() else { return };
    let text = &*String::from_utf8_lossy(data);
    match which % 9 {
        0 => {
            let settings = Settings::read(text);
            assert_eq!(Settings::read(&settings.write()), settings);
        }
        1 => {
            if let Some(errand) = Errand::heard(text) {
                assert_eq!(Errand::heard(&errand.spoken()), Some(errand));
            }
        }
        2 => {
            if let Some(readings) = Readings::heard(text) {
                assert_eq!(Readings::heard(&readings.spoken()), Some(readings.clone()));
                let _ = readings.outcome();
            }
        }
        3 => {
            for unit in Unit::ALL {
                for decimal in [Decimal::Point, Decimal::Comma] {
                    match typed(text, unit, decimal) {
                        Ok(amount) => assert!(amount.number.is_finite(), "{amount:?}"),
                        Err(fault) => assert!(!fault.sentence().is_empty()),
                    }
                }
            }
        }
        4 => {
            for input in INSTRUMENTS.iter().flat_map(|instrument| instrument.inputs) {
                assert!(input.read(text, input.unit, Decimal::Comma).map_or(true, f64::is_finite));
            }
        }
        5 => {
            if let Some(day) = Day::parse(text) {
                assert_eq!(Day::parse(&day.to_string()), Some(day));
            }
            let _ = (Unit::from_key(text), Currency::from_code(text), Name::from_key(text), LabelSystem::from_key(text));
        }
        6 => {
            if let Ok(plan) = Plan::of_code(text) {
                assert_eq!(Plan::of_code(&plan.code()), Ok(plan));
            }
        }
        7 => {
            let _ = Texts::read(text);
        }
        _ => {
            for system in LabelSystem::ALL {
                if let Some(size) = LabelSize::new(system, text) {
                    let json = json!({ "system": system.key(), "text": text });
                    assert!(!size.text().is_empty(), "{json}");
                }
            }
            if let (Some(garment), Some(person)) = (Id::new(text), PersonId::new(text)) {
                assert_eq!((garment.as_str(), person.as_str()), (text, text));
            }
        }
    }
}
