//! What is saved after a crash comes in again like an export, and what was set aside is listed, not read, and does not come back.

mod drawing;

use drawing::{bare, crc, id, judged};
use garment_assay::fit::{Person, PersonId};
use garment_assay::garment::{Act, Garment};
use garment_assay::notebook::{
    Change, ImportFault, MemoryShelf, Mode, Notebook, Settings, Shelf, Theme, Unreadable, import_all, write,
};
use garment_assay::trade::Day;
use serde_json::json;

const PAGE: &str = "garment-assay/page/";
const ASIDE: &str = "garment-assay/aside/";

fn garment(name: &str, label: &str) -> Garment {
    bare(name).after(Act::Label(label.to_owned())).after(judged("spi", "suits"))
}

/// As `web/rescue.js` writes it.
fn file(pages: &[(&str, &str)]) -> String {
    json!({ "kind": "garment-assay-rescue", "form": 1, "made": "2026-11-26", "pages": pages }).to_string()
}

/// The page of a garment that was deleted at that writing; its checksum by another way than the project's.
fn gone(rev: u64) -> String {
    format!("{{\"form\":1,\"gone\":true,\"rev\":{rev},\"sum\":\"{}\"}}", crc(&format!("{rev}\n")))
}

#[test]
fn of_each_record_the_page_written_most_often_comes_in_and_the_unreadable_are_counted() {
    let (old, new) = (garment("a", "old"), garment("a", "new"));
    let person = kim();
    let settings = Settings { theme: Theme::Dark, ..Settings::default() };
    let (older, newer) = (write(&old, 2), write(&new, 3));
    let text = file(&[
        (&format!("{PAGE}a"), &older),
        (&format!("{PAGE}a"), &newer),
        // Deleted here; the mirror has not heard of it.
        (&format!("{PAGE}b"), &gone(5)),
        (&format!("{PAGE}b"), &write(&garment("b", "deleted"), 4)),
        // Torn here, whole in the mirror.
        (&format!("{PAGE}c"), &write(&garment("c", "torn"), 4)[..40]),
        (&format!("{PAGE}c"), &write(&garment("c", "torn"), 4)),
        // Set aside after a crash.
        (&format!("{ASIDE}page/d"), &write(&garment("d", "aside"), 1)),
        (&format!("{PAGE}e"), "no page at all"),
        ("garment-assay/person/kim", &write(&person, 1)),
        ("garment-assay/settings", &settings.write()),
        ("garment-assay/practice", "whatever"),
    ]);
    let import = import_all(&text, &[], &[], Mode::Merge).expect("it is whole");
    let expected = [new, garment("c", "torn"), garment("d", "aside")];
    assert_eq!(import.changes, expected.map(Change::Add));
    assert_eq!(import.people, Some(vec![Change::Add(person)]));
    assert_eq!(import.settings.map(|settings| settings.theme), Some(Theme::Dark));
    assert_eq!(import.unread, 1);
    assert_eq!(import.made, Day::new(2026, 11, 26).expect("a day"));
}

fn kim() -> Person {
    Person::new(PersonId::new("kim").expect("a name"), "Kim")
}

#[test]
fn the_same_file_twice_changes_nothing_and_what_differs_comes_beside() {
    let here = garment("a", "here");
    let text = file(&[(&format!("{PAGE}a"), &write(&here, 7))]);
    let import = import_all(&text, &[&here], &[], Mode::Merge).expect("it is whole");
    assert_eq!((import.changes, import.conflicts.len()), (vec![Change::Same(id("a"))], 0));
    let other = garment("a", "other");
    let import = import_all(&text, &[&other], &[], Mode::Merge).expect("it is whole");
    assert!(matches!(import.changes[..], [Change::AddBeside(_)]), "{:?}", import.changes);
    assert_eq!(import.conflicts, [here]);
}

#[test]
fn a_file_that_is_none_is_refused_in_words() {
    let refused = |text: &str| import_all(text, &[], &[], Mode::Merge).expect_err("it is none");
    assert_eq!(refused(r#"{"kind":"garment-assay-rescue","form":1,"made":"2026-11-26"}"#), ImportFault::Damaged);
    assert_eq!(refused(r#"{"kind":"garment-assay-rescue","form":1,"pages":[]}"#), ImportFault::Damaged);
    assert_eq!(refused(r#"{"kind":"garment-assay-rescue","form":2,"made":"2026-11-26","pages":[]}"#), ImportFault::Newer);
    let cut = file(&[("garment-assay/page/a", "x")]);
    assert_eq!(refused(&cut[..cut.len() - 3]), ImportFault::Damaged);
    // Whatever the pages are, none makes it stop.
    let odd = r#"{"kind":"garment-assay-rescue","form":1,"made":"2026-11-26","pages":[1,[],["garment-assay/page/"],["garment-assay/page/a",3],["",""]]}"#;
    assert_eq!(import_all(odd, &[], &[], Mode::Merge).expect("a file").changes, []);
}

#[test]
fn what_was_set_aside_is_listed_not_read_and_the_mirror_does_not_bring_it_back_until_it_is_dropped_there_too() {
    let shelf = MemoryShelf::default();
    let poisoned = write(&garment("p", "poisoned"), 3);
    let sound = write(&garment("s", "sound"), 2);
    shelf.set(&format!("{ASIDE}page/p"), &poisoned).expect("room");
    shelf.set(&format!("{ASIDE}settings"), "?").expect("room");
    shelf.set(&format!("{PAGE}s"), &sound).expect("room");
    let (mut notebook, opened) = Notebook::open(shelf.clone());
    assert_eq!(opened.garments, [garment("s", "sound")]);
    assert!(opened.set_aside.iter().all(|page| page.why == Unreadable::Stopped));
    let listed: Vec<&str> = opened.set_aside.iter().map(|page| page.text.as_str()).collect();
    assert_eq!(listed, [poisoned.as_str(), "?"]);

    let mirror = vec![(format!("{PAGE}p"), poisoned.clone()), (format!("{PAGE}s"), sound)];
    let readable = notebook.without_aside(mirror.clone());
    assert_eq!(readable, mirror[1..]);
    assert!(notebook.heal(&readable).expect("no fault").garments.is_empty());

    assert_eq!(notebook.drop_set_aside(&format!("{ASIDE}settings")), Ok(None));
    assert_eq!(notebook.drop_set_aside(&format!("{ASIDE}page/p")), Ok(Some(format!("{PAGE}p"))));
    assert!(Notebook::open(shelf.clone()).1.set_aside.is_empty());
    // What the app then puts in its place in the mirror.
    let emptied = vec![(format!("{PAGE}p"), String::new())];
    let (mut notebook, _) = Notebook::open(shelf.clone());
    assert!(notebook.heal(&notebook.without_aside(emptied)).expect("no fault").garments.is_empty());

    // Taken in again from the file meanwhile: then the mirror's page is that of the new one.
    shelf.set(&format!("{ASIDE}page/p"), &poisoned).expect("room");
    shelf.set(&format!("{PAGE}p"), &poisoned).expect("room");
    let (mut notebook, opened) = Notebook::open(shelf.clone());
    assert_eq!((opened.garments.len(), opened.set_aside.len()), (2, 1));
    assert_eq!(notebook.drop_set_aside(&format!("{ASIDE}page/p")), Ok(None));
    assert_eq!(Notebook::open(shelf).1.garments.len(), 2);
}
