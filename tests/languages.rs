//! The languages of the interface: every sentence is there in each, whole and well-formed, and numbers and plurals are those of the Unicode
//! CLDR.

#[path = "../examples/messages/extract.rs"]
mod extract;
#[path = "../examples/messages/file.rs"]
mod file;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::PathBuf;

use extract::{Message, all_files, names};
use garment_assay::language::{Language, Messages, grouped, money, one, speak};
use garment_assay::learn::{Section, Texts};
use garment_assay::quantity::{Decimal, written_exactly};
use serde_json::Value;

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

fn messages() -> Vec<Message> {
    let messages = extract::messages(&root().join("src"));
    assert!(messages.len() > 4000, "{} messages were found", messages.len());
    messages
}

fn others() -> impl Iterator<Item = Language> {
    Language::ALL.into_iter().filter(|language| *language != Language::English)
}

fn known(language: Language) -> Messages {
    file::all(&root().join("language").join(language.tag()))
}

/// Shown whole when it fails: the first of many, and how many.
fn none(what: &str, faults: Vec<String>) {
    assert!(faults.is_empty(), "{} {what}, first: {:#?}", faults.len(), &faults[..faults.len().min(12)]);
}

#[test]
fn every_sentence_is_there_in_every_language() {
    let messages = messages();
    for language in others() {
        let known = known(language);
        let missing = messages.iter().filter(|message| known.get(&message.key()).is_none());
        none(&format!("sentences have no {}", language.own_name()), missing.map(|message| message.english.clone()).collect());
    }
}

#[test]
fn message_files_are_as_they_would_be_written() {
    let messages = messages();
    for language in others() {
        let folder = root().join("language").join(language.tag());
        let known = known(language);
        for name in all_files() {
            let here: Vec<&Message> = messages.iter().filter(|message| message.file() == name).collect();
            let stands = fs::read_to_string(folder.join(name).with_extension("po")).unwrap();
            assert!(
                stands == file::written(language, &here, &known),
                "{}/{name}.po is not up to the source: run make messages",
                language.tag()
            );
        }
        let there: BTreeSet<String> =
            fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        assert_eq!(there, all_files().map(|name| format!("{name}.po")).collect());
    }
}

#[test]
fn every_value_that_a_sentence_names_is_given_and_no_other() {
    let sorted = |names: &[String]| names.iter().cloned().collect::<BTreeSet<_>>();
    let wrong = messages()
        .into_iter()
        .filter(|message| message.values.as_ref().is_some_and(|values| sorted(&names(&message.english)) != sorted(values)));
    none("sentences name other values than they are given", wrong.map(|message| format!("{message:?}")).collect());
}

#[test]
fn a_translation_names_the_same_values() {
    let sorted = |sentence: &str| {
        let mut names = names(sentence);
        names.sort();
        names
    };
    for language in others() {
        let known = known(language);
        let wrong = known.iter().filter(|(english, said)| sorted(english.split('\u{4}').next_back().unwrap()) != sorted(said));
        none("translations name other values", wrong.map(|(english, said)| format!("{english} -> {said}")).collect());
    }
}

#[test]
fn a_translation_begins_and_ends_like_the_english() {
    // A space at an end joins two parts; a full stop missing or too many is seen at once.
    let edges = |text: &str| {
        let (front, back) = (text.starts_with(' '), text.ends_with(' '));
        let stop = text.trim_end().chars().next_back().filter(|sign| ".:?…".contains(*sign));
        (front, back, stop)
    };
    for language in others() {
        let known = known(language);
        let wrong = known.iter().filter(|(english, said)| edges(english) != edges(said));
        none("translations begin or end otherwise", wrong.map(|(english, said)| format!("{english:?} -> {said:?}")).collect());
    }
}

#[test]
fn signs_are_those_of_the_language() {
    for language in others() {
        let known = known(language);
        let wrong = known.iter().filter(|(english, said)| {
            let straight = said.contains('\'') || said.contains('"') || said.contains('!') && !english.contains('!');
            straight
                || match language {
                    Language::English => false,
                    Language::German => said.contains(" %") || said.contains('“') && !said.contains('„'),
                    // No sign of these without the space that French sets before it, and no breaking one.
                    Language::French => {
                        let spaced = |sign: char| {
                            said.match_indices(sign).any(|(at, _)| {
                                let before = said[..at].chars().next_back();
                                // Within a reference, 2015;148, it parts no sentence.
                                if said[at + 1..].starts_with(|sign: char| sign.is_ascii_digit()) {
                                    return false;
                                }
                                !matches!(before, None | Some('\u{a0}' | '\u{202f}' | '…' | '{' | '(' | '?'))
                            })
                        };
                        [';', '?', '%'].into_iter().any(spaced)
                            || said.contains(" :")
                            || said.contains(" ;")
                            || said.contains("« ")
                    }
                }
        });
        none(
            "translations have signs of another language",
            wrong.map(|(english, said)| format!("{english:?} -> {said:?}")).collect(),
        );
    }
}

/// The same English where a translation is right: names, loan words, codes.
#[test]
fn few_sentences_are_the_same_in_two_languages() {
    for language in others() {
        let known = known(language);
        let same: Vec<_> = known.iter().filter(|(english, said)| english == said && english.split(' ').count() > 3).collect();
        // What stays as it is over more than three words is a reference: it has a figure in it.
        let wrong = same
            .into_iter()
            .filter(|(english, _)| !english.contains(|sign: char| sign.is_ascii_digit()) && names(english).is_empty());
        none("sentences were left in English", wrong.map(|(english, _)| english.to_owned()).collect());
    }
}

#[test]
fn another_reader_of_the_format_reads_the_same() {
    for language in others() {
        for name in all_files() {
            let path = root().join("language").join(language.tag()).join(name).with_extension("po");
            let ours = Messages::read(&fs::read_to_string(&path).unwrap()).unwrap();
            let theirs = rspolib::pofile(path.to_str().unwrap()).unwrap();
            let read: BTreeMap<String, String> = theirs
                .translated_entries()
                .into_iter()
                .map(|entry| {
                    let sense = entry.msgctxt.as_ref().filter(|sense| !sense.is_empty());
                    let key = sense.map_or(entry.msgid.clone(), |sense| format!("{sense}\u{4}{}", entry.msgid));
                    (key, entry.msgstr.clone().unwrap())
                })
                .collect();
            let ours: BTreeMap<String, String> =
                ours.iter().map(|(english, said)| (english.to_owned(), said.to_owned())).collect();
            assert_eq!(ours, read, "{}", path.display());
        }
    }
}

#[test]
fn numbers_money_and_plurals_are_those_of_the_cldr() {
    // Taken from Intl of node, as the file says; its no-break spaces stand in it.
    let table: Value = serde_json::from_str(include_str!("vectors/locales.json")).unwrap();
    for language in Language::ALL {
        speak(language, Messages::default());
        let rows = |name: &str| table["languages"][language.tag()][name].as_array().unwrap().clone();
        for row in rows("plural") {
            let count = row[0].as_u64().unwrap() as usize;
            assert_eq!(one(count), row[1] == "one", "{count} in {}", language.tag());
        }
        for row in rows("decimals") {
            assert_eq!(written_exactly(row[0].as_f64().unwrap(), 3, Decimal::spoken()), row[1].as_str().unwrap());
        }
        for row in rows("grouped") {
            assert_eq!(grouped(row[0].as_str().unwrap()), row[1].as_str().unwrap());
        }
        for row in rows("money") {
            let digits = grouped(row[1].as_str().unwrap());
            assert_eq!(money(row[0].as_str().unwrap(), digits), row[2].as_str().unwrap());
        }
    }
    speak(Language::English, Messages::default());
}

#[test]
fn the_catalog_speaks_every_language() {
    let family = garment_assay::catalog::FAMILIES[0];
    for language in others() {
        speak(language, known(language));
        for check in family.checks {
            assert_ne!(check.question(), check.question);
        }
    }
    speak(Language::English, Messages::default());
}

#[test]
fn every_lesson_is_written_in_every_language() {
    let read = |path: PathBuf| {
        let text = fs::read_to_string(&path).unwrap_or_else(|fault| panic!("{}: {fault}", path.display()));
        Texts::read(&text).unwrap_or_else(|fault| panic!("{}: {fault}", path.display()))
    };
    let files: BTreeSet<String> = fs::read_dir(root().join("learn"))
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .filter(|name| name.ends_with(".txt"))
        .collect();
    for language in others() {
        let folder = root().join("learn").join(language.tag());
        let there: BTreeSet<String> =
            fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        assert_eq!(there, files);
        for name in &files {
            let (english, theirs) = (read(root().join("learn").join(name)), read(folder.join(name)));
            assert_eq!(english.checks().collect::<Vec<_>>(), theirs.checks().collect::<Vec<_>>(), "{name}");
            for key in english.checks() {
                for section in Section::ALL {
                    let (english, said) = (english.of(key).unwrap().section(section), theirs.of(key).unwrap().section(section));
                    let at = format!("{}/{name}, {key}, {}", language.tag(), section.key());
                    assert_ne!(english, said, "{at}");
                    // A language is somewhat longer or shorter than another; half of it would be a sentence lost.
                    let share = said.len() as f64 / english.len() as f64;
                    assert!((0.6..1.9).contains(&share), "{at}: {share:.2} times as long");
                    assert!(said.ends_with('.') && !said.contains(['!', '"', '\'', '<', '>']), "{at}: {said}");
                }
            }
        }
    }
}

#[test]
fn what_is_said_before_the_program_is_there_is_said_in_every_language() {
    let script = fs::read_to_string(root().join("web/boot.js")).unwrap();
    let page = fs::read_to_string(root().join("index.html")).unwrap();
    let said: BTreeSet<&str> = script.split("said(\"").skip(1).map(|rest| rest.split_once('"').unwrap().0).collect();
    let waiting = page.split_once("<p>").unwrap().1.split_once("</p>").unwrap().0;
    assert!(said.len() > 8, "{said:?}");
    for english in said.into_iter().chain([waiting]) {
        let entry = script
            .split_once(&format!("  {english:?}: {{"))
            .unwrap_or_else(|| panic!("web/boot.js has no words for {english}"))
            .1;
        let entry = entry.split_once("},\n").unwrap().0;
        for language in others() {
            let theirs = entry.split_once(&format!("{}: \"", language.tag())).map(|(_, rest)| rest.split_once('"').unwrap().0);
            let theirs = theirs.unwrap_or_else(|| panic!("{english} has no {}", language.own_name()));
            assert!(theirs != english && names(theirs) == names(english), "{theirs}");
        }
    }
}

#[test]
fn the_reader_of_sources_finds_what_is_said_and_nothing_else() {
    let folder = std::env::temp_dir().join(format!("garment-assay-messages-{}", std::process::id()));
    fs::create_dir_all(folder.join("app")).unwrap();
    fs::create_dir_all(folder.join("catalog/jeans")).unwrap();
    let code = r##"
        //! say!("no")
        /// say!("no")
        #[doc = "no"] const A: &str = to_say!("a \"b\" \
            c");
        fn f() { html! { <p title={say!("screen" | "Light")}>{ say!("{count} of {all}", count, all = g(say!("deep"), x == y)) }</p> } }
        fn h() { format!("No {x}"); sayer!("no"); }
        #[cfg(test)] mod tests { fn t() { say!("no"); } }
        #[cfg(test)] use no;
        const B: &str = to_say!("after");
    "##;
    fs::write(folder.join("app/a.rs"), code).unwrap();
    let table = r#"static C: Check = Check { key: "felled", name: "felled", line: "Two words", levels: &["x-y", "Large", "xs"], from: f("Hem", "length") };
        fn f() { panic!("No words"); }"#;
    fs::write(folder.join("catalog/jeans/b.rs"), table).unwrap();
    let found = extract::messages(&folder);
    fs::remove_dir_all(&folder).unwrap();
    let keys: Vec<String> = found.iter().map(Message::key).collect();
    assert_eq!(
        keys,
        ["a \"b\" c", "screen\u{4}Light", "{count} of {all}", "deep", "after", "felled", "Two words", "Large", "Hem"]
    );
    assert_eq!(found[2].values.as_deref(), Some(&["count".to_owned(), "all".to_owned()][..]));
    assert_eq!((found[0].file(), found[5].file()), ("app", "jeans"));
}
