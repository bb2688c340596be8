//! Days that run backwards, pages that a newer version wrote, and a shelf full of damaged pages.

mod drawing;

use std::collections::BTreeMap;
use std::time::Instant;

use drawing::{act, bare, check, crc, id, judged};
use garment_assay::catalog::FAMILIES;
use garment_assay::garment::{Act, Garment, Guess, Id};
use garment_assay::notebook::{
    Change, Choice, FORM, Keeping, MemoryShelf, Mode, Notebook, Page, Shelf, Unreadable, export, import, read, settled, write,
};
use garment_assay::trade::{Currency, Day, PriceKind};
use proptest::prelude::*;
use proptest::sample::select;
use serde_json::{Value, json};

const PAGE: &str = "garment-assay/page/";

fn on(year: u16, month: u8, date: u8) -> Day {
    Day::new(year, month, date).expect("a day")
}

fn opened(shelf: &MemoryShelf) -> BTreeMap<Id, Garment> {
    let (_, opened) = Notebook::open(shelf.clone());
    assert_eq!(opened.fault, None);
    opened.garments.into_iter().map(|garment| (garment.id().clone(), garment)).collect()
}

/// A page of that body as another version could have written it.
fn sealed(body: &Value, rev: u64) -> String {
    let body = body.to_string();
    format!("{{\"form\":1,\"rev\":{rev},\"sum\":\"{}\"}}\n{body}", crc(&format!("{rev}\n{body}")))
}

// The clock.

/// Days in any order, from the first to the last that there is.
fn any_day() -> impl Strategy<Value = Day> {
    let usual = (1_u16..=9999, 1_u8..=12, 1_u8..=28).prop_map(|(year, month, date)| on(year, month, date));
    prop_oneof![3 => usual, 1 => select(vec![on(1970, 1, 1), on(2026, 11, 26), on(2026, 11, 25), on(9999, 12, 31)])]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// Each act on a day of its own, two windows and a mirror that is looked at now and then: the later act stands, whatever the clock said.
    #[test]
    fn the_count_of_writings_decides_and_no_clock(
        days in prop::collection::vec((any_day(), any::<bool>(), any::<bool>()), 1..20)
    ) {
        let shelf = MemoryShelf::default();
        let (mut windows, mut mirror) = ([Notebook::open(shelf.clone()).0, Notebook::open(shelf.clone()).0], BTreeMap::new());
        let mut garment = Garment::new(id("g"), FAMILIES[0], days[0].0);
        for (number, (day, second, reopened)) in days.iter().enumerate() {
            let window = usize::from(*second);
            if *reopened {
                windows[window] = Notebook::open(shelf.clone()).0;
                let pages: Vec<(String, String)> = mirror.clone().into_iter().collect();
                let healed = windows[window].heal(&pages).expect("a shelf that works");
                prop_assert_eq!((healed.garments.len(), healed.to_mirror.len()), (0, 0));
            }
            garment = garment.after(Act::Note(format!("act {number}")));
            garment = garment.after(Act::Guess(Guess::new(1, 2 + number as u64, Currency::Eur, PriceKind::Retail, *day)));
            let (key, page) = windows[window].keep(&garment).expect("room").page;
            // The other window hears of it, as windows do.
            windows[1 - window].written_elsewhere(&key, Some(&page));
            mirror.insert(key, page);
            let later = Garment::new(id(&format!("n{number}")), FAMILIES[0], *day);
            let kept = windows[window].keep(&later).expect("room");
            prop_assert_eq!(kept.renamed, None);
            mirror.insert(kept.page.0, kept.page.1);
            let there = opened(&shelf);
            prop_assert_eq!(there.get(&id("g")), Some(&garment));
            prop_assert_eq!(there.len(), number + 2);
        }
        // A file made "yesterday" of what is here today changes nothing, and one made tomorrow neither.
        let there: Vec<Garment> = opened(&shelf).into_values().collect();
        let here: Vec<&Garment> = there.iter().collect();
        for (day, ..) in &days {
            for mode in [Mode::Merge, Mode::Replace] {
                let changes = import(&export(&here, *day), &here, mode).expect("our own file").changes;
                prop_assert!(changes.iter().all(|change| matches!(change, Change::Same(_))));
            }
        }
    }

    /// What is said of the last export never goes under because the clock went back, and never forgets a garment.
    #[test]
    fn an_export_dated_in_the_future_hides_nothing_that_came_since(exported in any_day(), today in any_day()) {
        let held = bare("held");
        let new = bare("new").after(judged("hang", "equal"));
        let keeping = Keeping::default().after_export(exported, &[&held]);
        let unheld = keeping.unheld([&held, &new].into_iter(), today);
        prop_assert!(unheld.is_some(), "{:?} exported, {:?} today", exported, today);
        let _ = keeping.after_putting_off(exported).reminds([&held, &new].into_iter(), false, today);
    }
}

// Pages from the future.

/// A page's body with what no version has yet, in every place where something new could come.
fn from_the_future() -> Value {
    json!({
        "id": "f", "family": "jeans", "noted": "2031-01-01", "label": "Blue",
        "answers": [
            { "check": "hang", "judged": "equal" },
            { "check": "hang", "judged": "floating" },
            { "check": "no-such-check", "judged": "fine" },
            { "check": "cloth-hand", "judged": "firm", "by": "glove" },
            { "check": "spi", "instrument": "ultrasound", "measured": [{ "input": "echo", "amount": 1.5, "unit": "hertz" }] },
            { "check": "leg-twist", "dreamt": true },
        ],
        "notes": { "no-such-check": "kept", "hang": "left leg" },
        "measures": { "ankle": { "readings": [{ "amount": 19.0, "unit": "cm" }] }, "waist": { "readings": [{ "amount": 1.0, "unit": "parsec" }] } },
        "ticket": { "minor": 5, "currency": "XAU", "kind": "retail", "face_down": false },
        "guess": { "low": 1, "high": 2, "currency": "EUR", "kind": "auction", "made": "2031-01-01" },
        "shop": "orbital", "name": "colony", "second_hand": "thrice", "reference": "sometimes",
        "deal": { "rent": 3 }, "terms": { "incoterm": "ZZZ" }, "lot": { "pieces": 40, "robots": 2 }, "fit": { "avatar": 7 },
        "collection": ["a", "b"], "archived": "half",
        "photograph": { "a": [1.25, null, { "deep": [[[]]] }] }, "zzz": 18_446_744_073_709_551_615_u64,
    })
}

/// Every leaf of a value by the way to it, so that what is carried along can be looked for. Lists are bags: their order may change.
fn leaves(value: &Value, way: &str, all: &mut Vec<String>) {
    match value {
        Value::Object(fields) => fields.iter().for_each(|(name, value)| leaves(value, &format!("{way}/{name}"), all)),
        Value::Array(values) if !values.is_empty() => values.iter().for_each(|value| leaves(value, &format!("{way}[]"), all)),
        leaf => all.push(format!("{way} = {leaf}")),
    }
}

fn leaves_of(page: &str) -> Vec<String> {
    let body: Value = serde_json::from_str(page.split_once('\n').expect("two lines").1).expect("JSON");
    let mut all = Vec::new();
    leaves(&body, "", &mut all);
    all.sort();
    all
}

fn garment_of(text: &str) -> Garment {
    match read(text) {
        Ok(Page::Here { record, .. }) => *record,
        other => panic!("{other:?}"),
    }
}

#[test]
fn whatever_a_newer_version_adds_is_carried_along_unchanged() {
    let page = sealed(&from_the_future(), 5);
    let garment = garment_of(&page);
    assert_eq!((garment.label(), garment.check_note(check("hang"))), ("Blue", "left leg"));
    assert_eq!(leaves_of(&write(&garment, 5)), leaves_of(&page));
    // Through an export and an import too.
    let brought = import(&export(&[&garment], on(2026, 11, 26)), &[], Mode::Merge).expect("our own file");
    assert_eq!(brought.changes, [Change::Add(garment)]);
}

#[test]
fn two_versions_that_take_turns_lose_nothing_of_each_other() {
    let shelf = MemoryShelf::default();
    let key = format!("{PAGE}f");
    let mut future = from_the_future();
    let mut rev = 1;
    for turn in 0..20 {
        // The newer version writes the page as it knows it, with one thing more each time.
        future["diary"][format!("turn {turn}")] = json!({ "felt": turn });
        shelf.set(&key, &sealed(&future, rev)).expect("room");
        // The older one opens it and notes something.
        let (mut notebook, opened) = Notebook::open(shelf.clone());
        assert_eq!((opened.garments.len(), opened.set_aside.len()), (1, 0));
        let edited = opened.garments[0].after(Act::Note(format!("noted in turn {turn}")));
        let kept = notebook.keep(&edited).expect("room");
        assert_eq!((kept.renamed, &kept.page.0), (None, &key));
        // The newer one reads what the older one wrote: its own is all there, and the note.
        let text = shelf.get(&key).expect("a shelf").expect("a page");
        future["note"] = format!("noted in turn {turn}").into();
        assert_eq!(leaves_of(&text), leaves_of(&sealed(&future, 1)));
        rev = read(&text).expect("a page").rev() + 1;
        future = serde_json::from_str(text.split_once('\n').expect("two lines").1).expect("JSON");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(100))]

    /// A page of a newer form is kept byte for byte, whatever the older version does beside it, and with it.
    #[test]
    fn an_older_version_never_writes_over_a_page_of_a_newer_form(
        form in FORM + 1..u64::MAX, rest in "[^\u{0}]{0,60}", acts in prop::collection::vec(act(), 1..6), discards in any::<bool>()
    ) {
        let shelf = MemoryShelf::default();
        let (mut notebook, _) = Notebook::open(shelf.clone());
        notebook.keep(&bare("f")).expect("room");
        let newer = format!("{{\"form\":{form},\"x\":[]}}\n{rest}");
        shelf.set(&format!("{PAGE}f"), &newer).expect("room");
        let mut reopened = Notebook::open(shelf.clone());
        prop_assert_eq!(reopened.1.set_aside.pop().map(|aside| (aside.text, aside.why)), Some((newer.clone(), Unreadable::Newer { form })));
        let mut garment = bare("f");
        for act in acts {
            garment = garment.after(act);
            for notebook in [&mut notebook, &mut reopened.0] {
                let kept = notebook.keep(&garment).expect("room");
                prop_assert_ne!(&kept.page.0, &format!("{PAGE}f"), "it is kept under another name");
            }
        }
        if discards {
            prop_assert!(notebook.discard(&id("f")).expect("no fault").stays.is_some());
        }
        notebook.heal(&[(format!("{PAGE}f"), write(&bare("f"), 99))]).expect("no fault");
        prop_assert_eq!(shelf.get(&format!("{PAGE}f")), Ok(Some(newer)));
    }
}

// Many damaged pages.

/// The page damaged in the n-th of the ways there are.
fn damaged(page: &str, number: usize) -> String {
    let bytes = page.as_bytes();
    let place = number.wrapping_mul(7_919) % bytes.len();
    let lossy = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    let deep = |open: &str, shut: &str| format!("{}{}", open.repeat(10_000), shut.repeat(10_000));
    let head = page.split_once('\n').expect("two lines");
    match number % 14 {
        0 => {
            let mut bytes = bytes.to_vec();
            bytes[place] ^= 1 << (number % 8);
            lossy(&bytes)
        }
        1 => lossy(&bytes[..place]),
        2 => format!("{page}{page}"),
        3 => String::new(),
        4 => head.0.to_owned() + "\n" + &deep("[", "]"),
        5 => deep("{\"form\":", "}"),
        6 => page.replacen("\"rev\":", "\"rev\":99999999999999999999", 1),
        7 => page.replacen("\"rev\":1,", "\"rev\":-1e400,", 1),
        8 => page.replacen("\"sum\":\"", "\"sum\":\"0", 1),
        9 => head.1.to_owned(),
        10 => format!("{}\n{}", head.1, head.0),
        11 => lossy(&bytes.iter().rev().copied().collect::<Vec<u8>>()),
        12 => "\u{0}".repeat(bytes.len()),
        _ => page.chars().rev().chain("\n\u{feff}\u{202e}".chars()).collect(),
    }
}

/// Not a number to hold a machine to: it is printed (`--nocapture`), and written down in `docs/fuzzing.md`.
#[test]
fn ten_thousand_damaged_pages_among_a_hundred_sound_ones_are_all_kept_and_said() {
    let shelf = MemoryShelf::default();
    let sound: BTreeMap<Id, Garment> = (0..100)
        .map(|number| bare(&format!("s{number}")).after(judged("hang", "equal")).after(Act::Note(format!("sound {number}"))))
        .map(|garment| (garment.id().clone(), garment))
        .collect();
    for garment in sound.values() {
        shelf.set(&format!("{PAGE}{}", garment.id().as_str()), &write(garment, 1)).expect("room");
    }
    let mut bad = BTreeMap::new();
    for number in 0..10_000 {
        let name = format!("d{number}");
        let text = damaged(&write(&bare(&name).after(judged("hang", "equal")), 1), number);
        let key = format!("{PAGE}{name}");
        shelf.set(&key, &text).expect("room");
        bad.insert(key, text);
    }
    let began = Instant::now();
    let (mut notebook, opened) = Notebook::open(shelf.clone());
    println!("10,000 damaged pages and 100 sound ones opened in {:?}", began.elapsed());
    assert_eq!(opened.fault, None);
    let found: BTreeMap<Id, Garment> = opened.garments.into_iter().map(|garment| (garment.id().clone(), garment)).collect();
    assert_eq!(found, sound);
    let aside: BTreeMap<String, String> = opened.set_aside.into_iter().map(|aside| (aside.key, aside.text)).collect();
    assert_eq!(aside, bad);
    // Work goes on among them, and a mirror with a thousand of them sound heals those and loses no text.
    for garment in sound.values() {
        notebook.keep(&garment.after(Act::Label("edited".to_owned()))).expect("room");
    }
    let mirror: Vec<(String, String)> = (0..1_000)
        .map(|number| bare(&format!("d{number}")))
        .map(|garment| (format!("{PAGE}{}", garment.id().as_str()), write(&garment, 1)))
        .collect();
    let healed = notebook.heal(&mirror).expect("a shelf that works");
    assert_eq!((healed.garments.len(), healed.mended.len()), (1_000, 1_000));
    let (_, opened) = Notebook::open(shelf);
    assert_eq!((opened.garments.len(), opened.set_aside.len()), (1_100, 10_000));
    let mut texts: Vec<&String> = opened.set_aside.iter().map(|aside| &aside.text).collect();
    let mut expected: Vec<&String> = bad.values().collect();
    texts.sort();
    expected.sort();
    assert_eq!(texts, expected);
}

// Files made to be slow. There is no clock in these: where work grew with the square of the size, they would not end.

#[test]
fn a_file_of_very_many_garments_is_read_in_one_go() {
    let many: Vec<Garment> = (0..20_000).map(|number| bare(&format!("m{number}"))).collect();
    let file = export(&many.iter().collect::<Vec<_>>(), on(2026, 11, 26));
    // All of them are here already and differ, which is the longest way through.
    let here: Vec<Garment> = many.iter().map(|garment| garment.after(Act::Archived(true))).collect();
    let here: Vec<&Garment> = here.iter().collect();
    let began = Instant::now();
    for mode in [Mode::Merge, Mode::Replace] {
        let brought = import(&file, &here, mode).expect("our own file");
        assert_eq!(brought.changes.len(), many.len());
        let changes = settled(&brought.changes, &brought.conflicts, &here, |_| Choice::Join);
        assert_eq!(changes.len(), many.len());
    }
    println!("20,000 garments ({} KB) merged, joined and replaced in {:?}", file.len() / 1024, began.elapsed());
}

#[test]
fn a_page_of_very_many_answers_is_read_in_one_go() {
    let unknown = (0..20_000).map(|number| json!({ "check": format!("no-such-{number}"), "judged": "fine" }));
    let known = (0..20_000).map(|_| json!({ "check": "hang", "judged": "equal" }));
    let answers: Vec<Value> = unknown.chain(known).collect();
    let page = sealed(&json!({ "id": "g", "family": "jeans", "noted": "2026-11-26", "answers": answers }), 1);
    let began = Instant::now();
    let garment = garment_of(&page);
    println!("40,000 answers ({} KB) read in {:?}", page.len() / 1024, began.elapsed());
    assert_eq!((garment.entries().len(), garment.aside().len()), (1, 20_000));
    assert_eq!(garment_of(&write(&garment, 2)), garment);
    // So with everything else of which there can be many.
    let many = |value: Value| Value::Object((0..20_000).map(|number| (format!("x{number}"), value.clone())).collect());
    let page = sealed(
        &json!({
            "id": "g", "family": "jeans", "noted": "2026-11-26", "answers": [], "notes": many("kept".into()),
            "measures": many(json!({ "readings": [] })), "fit": { "moves": many("well".into()), "signs": many(true.into()) },
            "lot": { "pieces": 90_000, "level": "II", "major": "2.5", "minor": "4.0", "looked_at": 40_000,
                "findings": (1..20_000).map(|piece| json!({ "piece": piece, "what": "x", "severity": "major" })).collect::<Vec<_>>() },
        }),
        1,
    );
    let began = Instant::now();
    let garment = garment_of(&page);
    let again = garment_of(&write(&garment, 2));
    println!("many of everything ({} KB) read, written and read in {:?}", page.len() / 1024, began.elapsed());
    assert_eq!(again, garment);
    assert!(garment.aside().len() >= 80_000 || garment.lot().is_some(), "{}", garment.aside().len());
}
