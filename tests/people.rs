//! Laws of people's pages: what is read and written, failing shelves, colliding windows, the mirror, and files with and without people.

mod drawing;

use std::collections::{BTreeMap, BTreeSet};

use drawing::{act, bare, day, id, text};
use garment_assay::fit::{BAND, BODY_MEASURES, BodyReading, HIP, INSIDE_LEG, Person, PersonId, WAIST};
use garment_assay::garment::{Act, Garment, Id};
use garment_assay::notebook::{
    Change, Elsewhere, FaultyShelf, Healed, ImportFault, KeepFault, MemoryShelf, Mode, Notebook, Settings, Shelf, ShelfFault,
    Unreadable, export, export_all, import, import_all, write,
};
use garment_assay::quantity::{Amount, Unit};
use garment_assay::trade::Day;
use proptest::prelude::*;
use proptest::sample::select;

const PERSON: &str = "garment-assay/person/";
const DAMAGED: &str = "garment-assay/damaged/person/";
/// Written by Python (`json.dumps` with sorted keys, `zlib.crc32`), not by this project; one measure is at a place that no version had yet.
const GOLDEN: &str = include_str!("vectors/pages/person-1.txt");
/// Likewise: one garment and two people.
const GOLDEN_RACK: &str = include_str!("vectors/pages/rack-1-people.json");

fn pid(text: &str) -> PersonId {
    PersonId::new(text).expect("a name")
}

fn key(name: &str) -> String {
    format!("{PERSON}{name}")
}

fn nobody(name: &str) -> Person {
    Person::new(pid(name), "")
}

fn with(person: Person, place: usize, number: f64, unit: Unit) -> Person {
    let measure = BODY_MEASURES[place];
    person.with(measure, BodyReading::new(measure, Amount { number, unit }))
}

fn reading(measure: &garment_assay::fit::BodyMeasure, number: f64, unit: Unit) -> Option<BodyReading> {
    let reading = BodyReading::new(measure, Amount { number, unit });
    assert!(reading.is_some(), "{} {number}", measure.key);
    reading
}

/// A person with a name and measures in three units.
fn jo(name: &str) -> Person {
    Person::new(pid(name), "Jo, \"upstairs\" 牛")
        .with(&WAIST, reading(&WAIST, 34.5, Unit::Inch))
        .with(&INSIDE_LEG, reading(&INSIDE_LEG, 78.0, Unit::Centimetre))
        .with(&BAND, reading(&BAND, 905.0, Unit::Millimetre))
}

/// What lies on a shelf: people by their ids.
fn people<S: Shelf>(shelf: S) -> BTreeMap<String, Person> {
    let (_, opened) = Notebook::open(shelf);
    assert_eq!(opened.fault, None);
    opened.people.into_iter().map(|person| (person.id().as_str().to_owned(), person)).collect()
}

/// What the page of that text holds, read through a shelf, as the app reads it.
fn read(name: &str, page: &str) -> Result<Person, Unreadable> {
    let shelf = MemoryShelf::default();
    shelf.set(&key(name), page).expect("room");
    let (_, mut opened) = Notebook::open(shelf);
    match opened.people.pop() {
        Some(person) => Ok(person),
        None => Err(opened.set_aside.pop().expect("set aside, if not read").why),
    }
}

/// The page of a body as another version could have written it, with the checksum that a garment's page of that body would have had.
fn page_of(body: &str, rev: u64) -> String {
    let crc = {
        let mut rest = u32::MAX;
        for byte in format!("{rev}\n{body}").bytes() {
            rest = (0..8).fold(rest ^ u32::from(byte), |rest, _| if rest & 1 == 1 { rest >> 1 ^ 0xEDB8_8320 } else { rest >> 1 });
        }
        !rest
    };
    format!("{{\"form\":1,\"rev\":{rev},\"sum\":\"{crc:08x}\"}}\n{body}")
}

/// Anyone: any name, any measures that are believed, in any unit of length.
fn person_named(name: &'static str) -> impl Strategy<Value = Person> {
    let units = vec![Unit::Centimetre, Unit::Millimetre, Unit::Inch];
    let measure = (0..BODY_MEASURES.len(), 0.0..1.0_f64, select(units));
    (text(), prop::collection::vec(measure, 0..8)).prop_map(move |(called, measures)| {
        measures.into_iter().fold(Person::new(pid(name), &called), |person, (place, share, unit)| {
            let [least, most] = BODY_MEASURES[place].believed_cm;
            let number = Unit::Centimetre.convert(least + share * (most - least), unit).expect("a length");
            with(person, place, number, unit)
        })
    })
}

/// Keys that stand in people's pages. Add; never change or remove one.
const RELEASED: [&str; 13] =
    ["height", "neck", "shoulders", "chest", "bust", "waist", "band", "hip", "thigh", "inside-leg", "arm", "upper-arm", "back"];

// Writing and reading.

#[test]
fn every_released_key_of_a_measure_is_still_read() {
    let known: Vec<&str> = BODY_MEASURES.iter().map(|measure| measure.key).collect();
    assert_eq!(known.iter().collect::<BTreeSet<_>>(), RELEASED.iter().collect());
    assert_eq!(known.len(), RELEASED.len(), "no key twice");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn a_person_written_is_the_person_read(person in person_named("p"), rev in 0..u64::MAX) {
        prop_assert_eq!(read("p", &write(&person, rev)), Ok(person));
    }

    #[test]
    fn reading_never_panics(text in text(), more in prop::collection::vec(any::<char>(), 0..60)) {
        let more = String::from_iter(more);
        for text in [&text, &more, &page_of(&text, 1), &page_of(&more, 1)] {
            let _ = read("p", text);
            let _ = import_all(text, &[], &[], Mode::Merge);
        }
    }

    #[test]
    fn a_file_with_people_gives_the_same_people(one in person_named("one"), two in person_named("two")) {
        let file = export_all(&[], Some(&[&one, &two]), &Settings::default(), day());
        let whole: serde_json::Value = serde_json::from_str(&file).expect("JSON");
        prop_assert_eq!(&format!("{whole:#}\n"), &file, "its pieces are joined by hand");
        let read = import_all(&file, &[], &[], Mode::Merge).expect("a whole file");
        prop_assert_eq!(read.people, Some(vec![Change::Add(one), Change::Add(two)]));
    }
}

#[test]
fn the_committed_page_still_opens_to_the_facts_known_of_it() {
    let page = GOLDEN.trim_end_matches('\n');
    let person = read("p-1", page).expect("a page");
    let known = jo("p-1")
        .with_aside("measures".to_owned(), r#"{"ankle":{"amount":22.0,"unit":"cm"}}"#.to_owned())
        .with_aside("season".to_owned(), r#""winter""#.to_owned());
    assert_eq!(person, known);
    // 34.5 in are 87.63 cm, the inch being 2.54 cm.
    let waist = person.reading(&WAIST).and_then(|reading| reading.amount().in_unit(Unit::Centimetre)).expect("a waist");
    assert!((waist - 87.63).abs() < 1e-9);
    assert_eq!(write(&person, 4), page, "and is written the same");
}

#[test]
fn what_this_version_does_not_know_is_set_aside_and_written_back_unchanged() {
    let unknown = [
        r#""arm":{"amount":60.0,"by":"thumb","unit":"cm"}"#,
        r#""band":{"amount":90.0,"unit":"cubit"}"#,
        r#""chest":{"amount":"wide","unit":"cm"}"#,
        r#""foot":{"amount":26.0,"unit":"cm"}"#,
        r#""height":{"amount":1.7,"unit":"cm"}"#,
        r#""hip":{"amount":98.0,"unit":"g"}"#,
        r#""neck":[38]"#,
        r#""waist":null"#,
    ];
    let body = format!(r#"{{"id":"p","measures":{{{}}},"name":7,"photograph":{{"a":[1.25,null]}}}}"#, unknown.join(","));
    let person = read("p", &page_of(&body, 3)).expect("a page");
    assert_eq!((person.readings().count(), person.aside().len(), person.name()), (0, unknown.len() + 2, ""));
    assert_eq!(write(&person, 3), page_of(&body, 3));
    // What is put in since counts; the rest stays where it is.
    let put_in = person.with(&WAIST, reading(&WAIST, 80.0, Unit::Centimetre)).named("Jo");
    let again = read("p", &write(&put_in, 4)).expect("a page");
    assert_eq!((again.readings().count(), again.name(), again.aside().len()), (1, "Jo", unknown.len()));
    // Measures of another shape altogether give way to what is measured.
    let body = r#"{"id":"p","measures":[1,2]}"#;
    let person = read("p", &page_of(body, 3)).expect("a page");
    assert_eq!(write(&person, 3), page_of(body, 3));
    let again = read("p", &write(&person.with(&WAIST, reading(&WAIST, 80.0, Unit::Centimetre)), 4)).expect("a page");
    assert_eq!((again.readings().count(), again.aside().len()), (1, 0));
}

#[test]
fn every_bit_of_a_page_flipped_and_every_cut_is_noticed_and_the_text_kept() {
    let (whole, page) = (jo("p"), write(&jo("p"), 7));
    let mut tried = 0;
    for place in 0..page.len() {
        if page.is_char_boundary(place) {
            assert!(read("p", &page[..place]).is_err(), "cut at {place}");
        }
        for bit in 0..8 {
            let mut bytes = page.clone().into_bytes();
            bytes[place] ^= 1 << bit;
            // The same facts in other words would be no harm.
            if let Ok(person) = read("p", &String::from_utf8_lossy(&bytes)) {
                assert_eq!(person, whole, "{place} {bit}");
            }
            tried += 1;
        }
    }
    assert!(tried > 500);
}

#[test]
fn a_page_that_cannot_be_read_is_set_aside_and_leaves_the_others_readable() {
    let shelf = MemoryShelf::default();
    let (mut notebook, _) = Notebook::open(shelf.clone());
    for name in ["a", "b", "c"] {
        notebook.keep(&jo(name)).expect("room");
    }
    notebook.keep(&bare("b")).expect("room");
    let cut = write(&jo("b"), 1)[..60].to_owned();
    let deep = page_of(&format!(r#"{{"id":"d","x":{}1{}}}"#, "[".repeat(200), "]".repeat(200)), 1);
    for (place, text) in
        [("b", cut.as_str()), ("d", &deep), ("e", &write(&jo("f"), 1)), ("no name", &write(&jo("f"), 1)), ("n", "{\"form\":2}\n")]
    {
        shelf.set(&key(place), text).expect("room");
    }
    let (mut notebook, opened) = Notebook::open(shelf.clone());
    let names: BTreeSet<&str> = opened.people.iter().map(|person| person.id().as_str()).collect();
    assert_eq!((names, opened.garments.len(), opened.set_aside.len()), (BTreeSet::from(["a", "c"]), 1, 5));
    assert_eq!(opened.set_aside.iter().find(|page| page.key == key("b")).map(|page| page.text.as_str()), Some(cut.as_str()));
    // Written over, the damaged text lies in a place of its own; a newer version's page is not written over at all.
    notebook.keep(&jo("b")).expect("room");
    let kept = notebook.keep(&jo("n")).expect("room");
    assert_eq!(kept.renamed.map(|renamed| renamed.ours.id().clone()), Some(pid("n~2")));
    let (mut notebook, opened) = Notebook::open(shelf.clone());
    let aside = opened.set_aside.iter().find(|page| page.key.starts_with(DAMAGED)).expect("set aside");
    assert_eq!(aside.text, cut);
    notebook.drop_set_aside(&aside.key.clone()).expect("a shelf");
    notebook.drop_set_aside(&key("a")).expect("a shelf");
    let left = people(shelf.clone());
    assert_eq!(left.keys().map(String::as_str).collect::<Vec<_>>(), ["a", "b", "c", "n~2"]);
    assert!(shelf.keys().expect("a shelf").iter().all(|key| !key.starts_with(DAMAGED)));
}

// Windows.

#[test]
fn two_windows_that_change_one_person_keep_both() {
    let shelf = MemoryShelf::default();
    let (mut one, _) = Notebook::open(shelf.clone());
    one.keep(&jo("p")).expect("room");
    let (mut two, _) = Notebook::open(shelf.clone());
    let (mine, yours) = (jo("p").named("mine"), jo("p").named("yours"));
    one.keep(&mine).expect("room");
    let renamed = *two.keep(&yours).expect("room").renamed.expect("a new id");
    assert_eq!((renamed.theirs, renamed.ours.id()), (Some(mine.clone()), &pid("p~2")));
    assert_eq!(people(shelf.clone()).into_values().collect::<Vec<_>>(), [mine, renamed.ours]);
    // A deletion of what nobody here has seen does not happen.
    let kept = one.keep(&jo("p").named("again")).expect("room");
    assert_eq!(kept.renamed, None);
    let stays = two.discard(&pid("p")).expect("no fault").stays.expect("it stays");
    assert_eq!(stays.theirs.map(|person| person.name().to_owned()), Some("again".to_owned()));
    assert_eq!(two.discard(&pid("p")).expect("no fault").stays, None);
    assert_eq!(people(shelf).len(), 1);
}

#[test]
fn word_from_another_window_is_taken_once_and_in_order() {
    let shelf = MemoryShelf::default();
    let (mut one, _) = Notebook::open(shelf.clone());
    let (mut two, _) = Notebook::open(shelf);
    let (place, first) = one.keep(&jo("p")).expect("room").page;
    assert_eq!(place, key("p"));
    assert_eq!(Elsewhere::of(&place, &first), Elsewhere::PersonChanged(Box::new(jo("p"))));
    assert_eq!(two.written_elsewhere(&place, Some(&first)), Elsewhere::PersonChanged(Box::new(jo("p"))));
    let (_, second) = two.keep(&jo("p").named("second")).expect("room").page;
    assert_eq!(two.written_elsewhere(&place, Some(&first)), Elsewhere::Nothing);
    assert_eq!(one.written_elsewhere(&place, Some(&second)), Elsewhere::PersonChanged(Box::new(jo("p").named("second"))));
    let (_, gone) = one.discard(&pid("p")).expect("no fault").page;
    assert_eq!(Elsewhere::of(&place, &gone), Elsewhere::PersonGone(pid("p")));
    assert_eq!(two.written_elsewhere(&place, Some(&gone)), Elsewhere::PersonGone(pid("p")));
    assert_eq!(two.written_elsewhere(&place, None), Elsewhere::PersonGone(pid("p")));
    for text in ["", "x", &write(&jo("q"), 9)] {
        assert_eq!(two.written_elsewhere(&place, Some(text)), Elsewhere::Nothing);
        assert_eq!(Elsewhere::of(&place, text), Elsewhere::Nothing);
    }
    assert_eq!(Elsewhere::of("garment-assay/settings", &first), Elsewhere::Nothing);
}

// Failing shelves.

#[test]
fn whatever_operation_fails_every_acknowledged_person_is_there() {
    for fault in [ShelfFault::Forbidden, ShelfFault::Full, ShelfFault::Broken] {
        for once in [true, false] {
            let mut failed = 0;
            for operations in 0.. {
                let when = format!("{fault:?} after {operations}, once {once}");
                let memory = MemoryShelf::default();
                // Of each person the last state that was acknowledged (none when deleted), and states asked for since.
                let mut told: BTreeMap<String, (Option<Person>, Vec<Option<Person>>)> = BTreeMap::new();
                {
                    let (mut notebook, _) = Notebook::open(memory.clone());
                    for name in ["a", "b", "c"] {
                        notebook.keep(&jo(name)).expect("room");
                        told.insert(name.to_owned(), (Some(jo(name)), Vec::new()));
                    }
                }
                memory.set(&key("d"), &write(&jo("d"), 2)[..40]).expect("room");
                let shelf = FaultyShelf::new(memory.clone());
                shelf.fail_after(operations, fault, once);

                let (mut notebook, opening) = Notebook::open(shelf.clone());
                let mut errors = u32::from(opening.fault.is_some());
                let mut seen: BTreeSet<String> = opening.people.iter().map(|person| person.id().as_str().to_owned()).collect();
                let (newer, sound) = (jo("c").named("from the mirror"), jo("d"));
                let mirror = [(key("c"), write(&newer, 5)), (key("d"), write(&sound, 2))];
                match notebook.heal(&mirror) {
                    Ok(healed) => {
                        errors += u32::from(healed.fault.is_some());
                        for person in healed.people {
                            seen.insert(person.id().as_str().to_owned());
                            told.insert(person.id().as_str().to_owned(), (Some(person), Vec::new()));
                        }
                        if healed.fault.is_some() {
                            told.entry("c".to_owned()).or_default().1.push(Some(newer));
                            told.entry("d".to_owned()).or_default().1.push(Some(sound));
                        }
                    }
                    Err(_) => {
                        errors += 1;
                        told.entry("c".to_owned()).or_default().1.push(Some(newer));
                        told.insert("d".to_owned(), (None, vec![Some(sound)]));
                    }
                }
                let mut asked = |name: &str, state: Option<Person>, done: bool| {
                    let entry = told.entry(name.to_owned()).or_default();
                    if done { *entry = (state, Vec::new()) } else { entry.1.push(state) }
                };
                for name in ["a", "c"].into_iter().filter(|name| seen.contains(*name)) {
                    let edited = jo(name).named("edited");
                    let done = notebook.keep(&edited);
                    errors += u32::from(done.is_err());
                    asked(name, Some(edited), done.is_ok_and(|kept| kept.renamed.is_none()));
                }
                let done = notebook.discard(&pid("b"));
                errors += u32::from(done.is_err());
                asked("b", None, done.is_ok_and(|kept| kept.stays.is_none()));
                let done = notebook.keep(&jo("e"));
                errors += u32::from(done.is_err());
                asked("e", Some(jo("e")), done.is_ok());

                let left = shelf.left();
                shelf.mend();
                let found = people(memory);
                for (name, (last, asked)) in &told {
                    let found = found.get(name).cloned();
                    assert!(found == *last || asked.contains(&found), "{when}: {name} is {found:?}");
                }
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
fn a_full_shelf_gives_up_its_reserve_for_a_person_too() {
    let shelf = FaultyShelf::new(MemoryShelf::default());
    shelf.limit(33_000);
    let (mut notebook, opened) = Notebook::open(shelf.clone());
    assert_eq!(opened.fault, None);
    assert!(notebook.keep(&jo("p")).expect("the reserve").reserve_used);
    shelf.limit(0);
    assert_eq!(notebook.keep(&jo("p").named("more")).expect_err("no room at all"), KeepFault(ShelfFault::Full));
    shelf.mend();
    assert_eq!(people(shelf).into_values().collect::<Vec<_>>(), [jo("p")]);
}

#[test]
fn erasing_takes_people_and_what_was_damaged_of_them() {
    let shelf = MemoryShelf::default();
    shelf.set("another-app", "stays").expect("room");
    shelf.set(&key("d"), "damaged").expect("room");
    let (mut notebook, _) = Notebook::open(shelf.clone());
    notebook.keep(&jo("p")).expect("room");
    notebook.keep(&jo("d")).expect("room");
    assert!(shelf.keys().expect("a shelf").iter().any(|key| key.starts_with(DAMAGED)));
    notebook.erase().expect("a shelf");
    assert_eq!(shelf.keys(), Ok(vec!["another-app".to_owned()]));
    // The count of writings begins anew.
    notebook.keep(&jo("p")).expect("room");
    assert_eq!(shelf.get(&key("p")), Ok(Some(write(&jo("p"), 1))));
}

// The mirror.

#[test]
fn of_shelf_and_mirror_the_page_written_more_often_wins_on_both_sides() {
    let (old, new) = (jo("p"), jo("p").named("new"));
    let shelf_with = |rev: u64, person: &Person| {
        let shelf = MemoryShelf::default();
        shelf.set(&key("p"), &write(person, rev)).expect("room");
        shelf
    };
    let shelf = shelf_with(2, &old);
    let (mut notebook, _) = Notebook::open(shelf.clone());
    let mirror = [(key("p"), write(&new, 3))];
    let healed = notebook.heal(&mirror).expect("no fault");
    assert_eq!((healed.people, healed.garments.len(), healed.to_mirror.len()), (vec![new.clone()], 0, 0));
    assert_eq!(notebook.heal(&mirror), Ok(Healed::default()), "twice is once");
    let (mut notebook, _) = Notebook::open(shelf_with(3, &new));
    assert_eq!(notebook.heal(&[]).expect("no fault").to_mirror, [(key("p"), write(&new, 3))]);
    // A newer version's page in the mirror stays there.
    assert_eq!(notebook.heal(&[(key("p"), "{\"form\":2}\n".to_owned())]).expect("no fault").to_mirror, []);
    // A deletion on one side reaches the other, and an older page does not bring anybody back.
    let (mut other, _) = Notebook::open(MemoryShelf::default());
    other.keep(&old).expect("room");
    let gone = other.discard(&pid("p")).expect("no fault").page;
    let shelf = shelf_with(1, &old);
    let (mut notebook, _) = Notebook::open(shelf.clone());
    assert_eq!(notebook.heal(std::slice::from_ref(&gone)).expect("no fault").people_gone, [pid("p")]);
    assert_eq!(notebook.heal(&[(key("p"), write(&old, 1))]).expect("no fault").to_mirror, [gone]);
    assert!(people(shelf).is_empty());
    // Damaged here, sound in the mirror.
    let shelf = shelf_with(3, &new);
    shelf.set(&key("p"), "damaged").expect("room");
    let (mut notebook, _) = Notebook::open(shelf.clone());
    let healed = notebook.heal(&[(key("p"), write(&old, 2))]).expect("no fault");
    assert_eq!((healed.people, healed.mended), (vec![old.clone()], vec![key("p")]));
    assert_eq!(Notebook::open(shelf).1.set_aside.len(), 1, "the damaged text is kept elsewhere");
    // Edited here before the mirror was read: both stay.
    let (mut notebook, _) = Notebook::open(shelf_with(2, &old));
    let edited = old.clone().named("just now");
    notebook.keep(&edited).expect("room");
    let healed = notebook.heal(&[(key("p"), write(&new, 7))]).expect("no fault");
    let beside = new.with_id(pid("p~2"));
    assert_eq!(healed.people, std::slice::from_ref(&beside));
    assert_eq!(healed.to_mirror, [(key("p"), write(&edited, 8)), (key("p~2"), write(&beside, 1))]);
}

// Everything against plain maps.

#[derive(Clone, Debug)]
enum Step {
    Person(usize, Person),
    Garment(usize, Act),
    Forget(usize),
    Discard(usize),
    Reopen,
    Lose(usize),
    Damage(usize),
}

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        6 => (0_usize..3, person_named("x")).prop_map(|(which, person)| Step::Person(which, person)),
        3 => (0_usize..3, act()).prop_map(|(which, act)| Step::Garment(which, act)),
        2 => (0_usize..3).prop_map(Step::Forget),
        1 => (0_usize..3).prop_map(Step::Discard),
        1 => Just(Step::Reopen),
        1 => (0_usize..3).prop_map(Step::Lose),
        1 => (0_usize..3).prop_map(Step::Damage),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(100))]

    /// Garments and people of the same names do not come into each other's way.
    #[test]
    fn a_notebook_with_a_mirror_is_two_plain_maps_whatever_is_done(steps in prop::collection::vec(step(), 0..30)) {
        let names = ["a", "b", "c"];
        let (shelf, mut mirror) = (MemoryShelf::default(), BTreeMap::new());
        let (mut people_here, mut garments) = (BTreeMap::<String, Person>::new(), BTreeMap::<Id, Garment>::new());
        let (mut notebook, _) = Notebook::open(shelf.clone());
        for step in steps {
            match step {
                Step::Person(which, person) => {
                    let person = person.with_id(pid(names[which]));
                    let kept = notebook.keep(&person).expect("room");
                    prop_assert_eq!(kept.renamed, None);
                    mirror.insert(kept.page.0, kept.page.1);
                    people_here.insert(names[which].to_owned(), person);
                }
                Step::Garment(which, act) => {
                    let garment = garments.get(&id(names[which])).cloned().unwrap_or_else(|| bare(names[which])).after(act);
                    let kept = notebook.keep(&garment).expect("room");
                    prop_assert_eq!(kept.renamed, None);
                    mirror.insert(kept.page.0, kept.page.1);
                    garments.insert(id(names[which]), garment);
                }
                Step::Forget(which) => {
                    let kept = notebook.discard(&pid(names[which])).expect("no fault");
                    mirror.insert(kept.page.0, kept.page.1);
                    people_here.remove(names[which]);
                }
                Step::Discard(which) => {
                    let kept = notebook.discard(&id(names[which])).expect("no fault");
                    mirror.insert(kept.page.0, kept.page.1);
                    garments.remove(&id(names[which]));
                }
                Step::Reopen | Step::Lose(_) | Step::Damage(_) => {
                    match step {
                        Step::Lose(which) => shelf.remove(&key(names[which])).expect("a shelf"),
                        Step::Damage(which) => {
                            if let Ok(Some(page)) = shelf.get(&key(names[which])) {
                                shelf.set(&key(names[which]), &page[..page.len() - 1]).expect("room");
                            }
                        }
                        _ => {}
                    }
                    (notebook, _) = Notebook::open(shelf.clone());
                    let pages: Vec<_> = mirror.clone().into_iter().collect();
                    let healed = notebook.heal(&pages).expect("no fault");
                    prop_assert_eq!(healed.to_mirror, vec![]);
                    prop_assert_eq!(notebook.heal(&pages).expect("no fault"), Healed::default());
                }
            }
            prop_assert_eq!(&people(shelf.clone()), &people_here);
            let (_, opened) = Notebook::open(shelf.clone());
            let found: BTreeMap<Id, Garment> = opened.garments.into_iter().map(|garment| (garment.id().clone(), garment)).collect();
            prop_assert_eq!(&found, &garments);
        }
    }
}

// Files.

#[test]
fn the_committed_file_with_people_still_opens_to_the_facts_known_of_it() {
    let read = import_all(GOLDEN_RACK, &[], &[], Mode::Merge).expect("a whole file");
    let jo = Person::new(pid("p-1"), "Jo").with(&WAIST, reading(&WAIST, 34.5, Unit::Inch));
    let other = nobody("p-2").with(&HIP, reading(&HIP, 98.0, Unit::Centimetre));
    assert_eq!((read.made, read.changes.len()), (Day::new(2026, 11, 26).expect("a day"), 1));
    assert_eq!(read.people, Some(vec![Change::Add(jo), Change::Add(other)]));
}

#[test]
fn a_file_holds_people_only_where_they_are_given() {
    for file in [export(&[&bare("g")], day()), export_all(&[&bare("g")], None, &Settings::default(), day())] {
        assert!(!file.contains("people") && !file.contains("measures"), "{file}");
        // Whoever is here stays, also where the rack is made what the file holds.
        for mode in [Mode::Merge, Mode::Replace] {
            assert_eq!(import_all(&file, &[], &[&jo("p")], mode).expect("a whole file").people, None);
        }
    }
    let file = export_all(&[], Some(&[]), &Settings::default(), day());
    let emptied = import_all(&file, &[], &[&jo("p")], Mode::Replace).expect("a whole file").people;
    assert_eq!(emptied, Some(vec![Change::Delete(pid("p"))]), "a file that holds nobody is another thing");
    assert_eq!(import_all(&file, &[], &[&jo("p")], Mode::Merge).expect("a whole file").people, Some(Vec::new()));
}

#[test]
fn people_of_a_file_are_merged_or_replaced_like_garments() {
    let (mine, theirs) = (jo("p").named("mine"), jo("p").named("theirs"));
    let file = export_all(&[], Some(&[&theirs, &jo("q")]), &Settings::default(), day());
    let here = [&mine, &jo("q"), &jo("r")];
    let merged = import_all(&file, &[], &here, Mode::Merge).expect("a whole file").people.expect("people");
    let [Change::AddBeside(beside), Change::Same(same)] = merged.as_slice() else { panic!("{merged:?}") };
    assert_eq!((beside.name(), same), ("theirs (from a file)", &pid("q")));
    assert!(beside.id() != mine.id() && beside.readings().eq(theirs.readings()));
    // The same file again adds nothing.
    let again = import_all(&file, &[], &[&mine, beside, &jo("q")], Mode::Merge).expect("a whole file").people.expect("people");
    assert!(again.iter().all(|change| matches!(change, Change::Same(_))), "{again:?}");
    let replaced = import_all(&file, &[], &here, Mode::Replace).expect("a whole file").people.expect("people");
    assert_eq!(replaced, [Change::Overwrite(theirs), Change::Same(pid("q")), Change::Delete(pid("r"))]);
}

#[test]
fn people_of_a_file_cut_or_altered_anywhere_are_refused_or_mean_the_same() {
    let file = export_all(&[&bare("g")], Some(&[&jo("p"), &jo("q")]), &Settings::default(), day());
    let whole = import(&file, &[], Mode::Merge).expect("a whole file");
    let (from, to) = (file.find("\"people\"").expect("people"), file.find("\"settings\"").expect("settings"));
    for place in from..to {
        let cut = String::from_utf8_lossy(&file.as_bytes()[..place]).into_owned();
        assert!(import(&cut, &[], Mode::Merge).is_err(), "{place}");
        for bit in 0..8 {
            let mut bytes = file.clone().into_bytes();
            bytes[place] ^= 1 << bit;
            if let Ok(read) = import(&String::from_utf8_lossy(&bytes), &[], Mode::Merge) {
                assert_eq!(read, whole, "{place} {bit}");
            }
        }
    }
    let twice = export_all(&[], Some(&[&jo("p"), &jo("p")]), &Settings::default(), day());
    assert_eq!(import(&twice, &[], Mode::Merge), Err(ImportFault::Person(2)));
    assert!(ImportFault::Person(2).to_string().contains("Person 2"));
    assert_eq!(import(&file.replace("people_sum", "people-sum"), &[], Mode::Merge), Err(ImportFault::Damaged));
}
