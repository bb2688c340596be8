//! The law of the house: which room may use which, who may speak to the browser, and where names and stored forms may stand.
//!
//! It reads source text with comments and strings taken out, and looks for paths. A macro could hide one; there are no such macros here.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use garment_assay::catalog::FAMILIES;
use garment_assay::catalog::second_hand::CONDITIONS;

/// A room of the library, the rooms it may use, and why it needs those that are not plain.
///
/// A permission that nobody uses is taken away again: the test fails on it.
const ROOMS: [(&str, &[&str], &str); 20] = [
    ("language", &[], "What people are spoken to in; every room may use it, and those that do are not named below."),
    ("turns", &[], "How long work gives the thread back; what a pause is, and when, is handed in."),
    ("quantity", &[], "Values with units and their spread: the ground floor."),
    ("trade", &[], "Nouns only."),
    ("source", &[], "The bibliography."),
    ("archive", &["trade"], "Several files as one; a file carries a day, and what is in it is for others to know."),
    ("specimen", &[], "Pictures drawn from a seed; which answer shows which picture is for the catalog to say."),
    ("measure", &["quantity", "source"], "Readings in, estimates out; an instrument names what its formula leans on."),
    ("cost", &["quantity", "source", "trade"], "Bill, rates and build-up; every rate names its source, a market its currency."),
    (
        "fit",
        &["quantity", "source"],
        "Cloth against body, now and after washing; what is compared is handed in, so it knows no instrument.",
    ),
    ("lot", &["source"], "Many pieces judged by some; which defects a family has is for the catalog to say."),
    ("grading", &["quantity", "trade"], "Belief about bands; stages decide what a check costs in time."),
    (
        "check",
        &["grading", "measure", "quantity", "source", "specimen", "trade"],
        "Where engines meet: a reading (measure, with the unit it was given in) becomes evidence (grading); a level names its picture.",
    ),
    (
        "catalog",
        &["check", "cost", "fit", "grading", "lot", "measure", "source", "specimen", "trade"],
        "Data: curves, instruments, pictures, sources by name.",
    ),
    (
        "garment",
        &["catalog", "check", "cost", "fit", "grading", "lot", "measure", "quantity", "trade"],
        "A record belongs to a family; readings are kept in their units; what follows is worked out by the engines.",
    ),
    (
        "rack",
        &["check", "cost", "garment", "grading", "quantity", "trade", "turns"],
        "Garments beside each other: what a check's answers weigh, readings in their units, tickets and what they are built up of.",
    ),
    (
        "sheet",
        &["check", "garment", "grading", "lot", "quantity", "trade"],
        "What is handed on: facts and what follows from them, as tables and text.",
    ),
    (
        "practice",
        &["catalog", "check", "cost", "garment", "grading", "quantity", "rack", "specimen", "trade"],
        "Specimens as questions; whole garments are made up from the curves and bills of the catalog, and guesses scored as on the rack.",
    ),
    (
        "learn",
        &["catalog", "check", "grading", "measure", "practice", "source", "specimen", "trade"],
        "What is to be read about a check: how telling it is by its curve, what can be practised of it by its instruments and pictures.",
    ),
    (
        "notebook",
        &[
            "archive", "catalog", "check", "cost", "fit", "garment", "grading", "learn", "lot", "measure", "practice",
            "quantity", "trade", "turns",
        ],
        "Keys of families, checks, units, care, currencies, kinds of shop stand in stored text, so it looks all of them up; it keeps a screen's scale and people's measures.",
    ),
];

/// What no file of the library may name: the browser, the clock, chance, files, the network.
const OUTSIDE: [&str; 18] = [
    "yew",
    "web_sys",
    "js_sys",
    "gloo",
    "wasm_bindgen",
    "wasm_bindgen_futures",
    "std::time",
    "SystemTime",
    "Instant",
    "rand",
    "thread_rng",
    "getrandom",
    "std::fs",
    "std::env",
    "std::net",
    "std::process",
    "std::thread",
    "unsafe",
];

/// The only browser types that the app may name outside `browser/`: elements that an event came from, to read what was typed.
const TARGETS: [&str; 3] = ["HtmlInputElement", "HtmlSelectElement", "HtmlTextAreaElement"];

/// Who in the app may name what of the notebook. Only the root holds one; the others name what it reports or takes.
const NOTEBOOK: [(&str, &[&str]); 15] = [
    (
        "app/root.rs",
        &[
            "Change",
            "Elsewhere",
            "Healed",
            "KeepFault",
            "Kept",
            "Notebook",
            "Settings",
            "photographs_of",
            "photographs_perhaps_named",
        ],
    ),
    ("app/root/opening.rs", &["Notebook", "Opened"]),
    ("app/root/people.rs", &["KeepFault", "Kept"]),
    // A file of garments is read there when it comes with the app.
    (
        "app/model.rs",
        &["Change", "Healed", "MOST_TRIALS", "Mode", "SetAside", "Settings", "ShelfFault", "export_all", "import_all"],
    ),
    ("app/browser/shelf.rs", &["Shelf", "ShelfFault"]),
    // What goes into a zip with its pictures, and what comes out of one.
    ("app/browser/photographs.rs", &["Bundle", "unbundle"]),
    ("app/parts/photographs_out.rs", &["photographs_of"]),
    (
        "app/pages/settings.rs",
        &[
            "Change",
            "Choice",
            "Import",
            "Mode",
            "Settings",
            "Record",
            "TextSize",
            "Theme",
            "export_pieces",
            "photographs_of",
            "settled",
        ],
    ),
    ("app/pages/hand_on.rs", &["Settings", "export_pieces"]),
    ("app/parts/import_conflicts.rs", &["Choice"]),
    ("app/parts/import_read.rs", &["Import", "ImportFault", "Mode", "import_in_turns"]),
    // What is shown there as it is.
    ("app/pages/rack.rs", &["SetAside"]),
    ("app/parts/alert.rs", &["ShelfFault"]),
    ("app/parts/quiet_line.rs", &["Unheld"]),
    // When the person is to be asked or reminded.
    ("app/standing.rs", &["Keeping", "Unheld"]),
];

/// Words that are a check's key in the catalog and something else where they stand: file, word, what it is there.
const OTHERWISE: [(&str, &str, &str); 13] = [
    ("sheet/rack.rs", "band", "a column of a table"),
    ("notebook/trade_show.rs", "piece", "the piece of a sample on which something was found, as it is stored"),
    ("practice/draws.rs", "printed", "how whiskers were made"),
    ("app/parts/fit_scale.rs", "body", "the word on a strip of tape"),
    ("notebook/fitting.rs", "cloth", "what the cloth is before the first wash, as it is stored"),
    ("app/pages/beside.rs", "band", "the row in which the bands of garments stand"),
    ("app/route.rs", "details", "the page on which a garment is named, in the address"),
    ("app/pages/hand_on.rs", "zip", "the ending of a file's name"),
    ("app/browser/picture.rs", "canvas", "where the browser draws a picture"),
    ("photo_worker.rs", "canvas", "where the browser draws a picture"),
    ("pictures/browser/reader.rs", "canvas", "where the browser draws a picture"),
    ("pictures/browser/camera.rs", "canvas", "where the browser draws a picture"),
    ("practice/topic.rs", "pucker", "a topic of practice, as it is stored"),
];

/// A source file: its path below `src`, its code without comments and strings, and the strings above its unit tests.
struct File {
    path: String,
    code: String,
    strings: Vec<String>,
}

/// All but the room `photo`: a package of its own, which the compiler keeps apart from the others.
fn files() -> Vec<File> {
    every_file().into_iter().filter(|file| file.room() != "photo").collect()
}

fn every_file() -> Vec<File> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let (mut found, mut folders) = (Vec::new(), vec![root.clone()]);
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).expect("a folder") {
            let path: PathBuf = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|end| end == "rs") {
                let text = fs::read_to_string(&path).expect("text");
                let (code, _) = stripped(&text);
                // Unit tests at a file's foot may name checks.
                let (_, strings) = stripped(text.split("#[cfg(test)]").next().unwrap_or_default());
                let path = path.strip_prefix(&root).expect("below src").to_string_lossy().replace('\\', "/");
                found.push(File { path, code, strings });
            }
        }
    }
    found.sort_by(|one, other| one.path.cmp(&other.path));
    assert!(found.len() > 60, "the house has {} files", found.len());
    found
}

impl File {
    /// The room or, outside the library, `app`, `pictures` or `main`.
    fn room(&self) -> &str {
        self.path.split('/').next().unwrap_or_default().trim_end_matches(".rs")
    }

    fn is_library(&self) -> bool {
        !matches!(self.room(), "app" | "pictures" | "main" | "photo_worker")
    }

    /// The first names after a path: after `crate::` the rooms used, also those in braces.
    fn after(&self, path: &str) -> BTreeSet<String> {
        let mut names = BTreeSet::new();
        for (at, _) in self.code.match_indices(path) {
            let before = self.code[..at].chars().next_back();
            if before.is_some_and(|sign| sign.is_alphanumeric() || sign == '_' || sign == ':') {
                continue;
            }
            let rest = self.code[at + path.len()..].trim_start();
            match rest.strip_prefix('{') {
                None => names.extend(word(rest)),
                Some(group) => {
                    let (mut depth, mut fresh) = (0, true);
                    for (place, sign) in group.char_indices() {
                        match sign {
                            '{' => depth += 1,
                            '}' if depth == 0 => break,
                            '}' => depth -= 1,
                            ',' if depth == 0 => fresh = true,
                            sign if sign.is_whitespace() => {}
                            _ if depth == 0 && fresh => {
                                names.extend(word(&group[place..]));
                                fresh = false;
                            }
                            _ => {}
                        }
                    }
                }
            }
        }
        names
    }

    /// Whether the code names this word or path.
    fn names(&self, path: &str) -> bool {
        let part = |sign: Option<char>| sign.is_some_and(|sign| sign.is_alphanumeric() || sign == '_');
        self.code
            .match_indices(path)
            .any(|(at, _)| !part(self.code[..at].chars().next_back()) && !part(self.code[at + path.len()..].chars().next()))
    }
}

fn word(text: &str) -> Option<String> {
    let word: String = text.chars().take_while(|sign| sign.is_alphanumeric() || *sign == '_' || *sign == '*').collect();
    (!word.is_empty()).then_some(word)
}

/// Code with comments and the insides of strings taken out, and the strings.
fn stripped(text: &str) -> (String, Vec<String>) {
    let signs: Vec<char> = text.chars().collect();
    let (mut code, mut strings, mut at) = (String::new(), Vec::new(), 0);
    let starts = |at: usize, what: &str| what.chars().enumerate().all(|(n, sign)| signs.get(at + n) == Some(&sign));
    while at < signs.len() {
        if starts(at, "//") {
            while at < signs.len() && signs[at] != '\n' {
                at += 1;
            }
        } else if starts(at, "/*") {
            let mut depth = 1;
            at += 2;
            while at < signs.len() && depth > 0 {
                let step = if starts(at, "/*") || starts(at, "*/") { 2 } else { 1 };
                depth += i32::from(starts(at, "/*")) - i32::from(starts(at, "*/"));
                at += step;
            }
        } else if signs[at] == 'r' && !code.ends_with(|sign: char| sign.is_alphanumeric() || sign == '_') && {
            let marks = signs[at + 1..].iter().take_while(|sign| **sign == '#').count();
            signs.get(at + 1 + marks) == Some(&'"')
        } {
            let marks = signs[at + 1..].iter().take_while(|sign| **sign == '#').count();
            let (start, end) = (at + 2 + marks, format!("\"{}", "#".repeat(marks)));
            at = start;
            while at < signs.len() && !starts(at, &end) {
                at += 1;
            }
            strings.push(signs[start..at.min(signs.len())].iter().collect());
            at += end.len();
            code.push_str("\"\"");
        } else if signs[at] == '"' {
            let start = at + 1;
            at = start;
            while at < signs.len() && signs[at] != '"' {
                at += if signs[at] == '\\' { 2 } else { 1 };
            }
            strings.push(signs[start..at.min(signs.len())].iter().collect());
            at += 1;
            code.push_str("\"\"");
        } else if signs[at] == '\'' && (signs.get(at + 1) == Some(&'\\') || signs.get(at + 2) == Some(&'\'')) {
            // A character, not a lifetime; it may be a quotation mark.
            at += if signs[at + 1] == '\\' { 2 } else { 1 };
            at += 1;
            while at < signs.len() && signs[at] != '\'' {
                at += 1;
            }
            at += 1;
            code.push_str("' '");
        } else {
            code.push(signs[at]);
            at += 1;
        }
    }
    (code, strings)
}

#[test]
fn the_reader_of_sources_sees_code_and_strings_and_no_comments() {
    let text = "use crate::{a, b::{c, d}, e}; // crate::no\n/* crate::no /* */ crate::no */ let x = \"crate::no \\\" more\"; \
                let y = r#\"raw \" one\"#; let q: &'static str = z('\"', '\\'', 'r'); crate::f::g(); my_crate::h; pub(in crate::i) fn j() {}";
    let (code, strings) = stripped(text);
    let file = File { path: "room/file.rs".to_owned(), code, strings };
    assert_eq!(file.after("crate::").into_iter().collect::<Vec<_>>(), ["a", "b", "e", "f", "i"]);
    assert_eq!(file.strings, ["crate::no \\\" more", "raw \" one"]);
    assert!(file.names("crate::f") && file.names("static") && !file.names("no") && !file.names("h;x"));
    assert_eq!(file.room(), "room");
}

#[test]
fn a_room_uses_only_the_rooms_that_it_may_and_each_of_them() {
    let mut used: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for file in files().iter().filter(|file| file.is_library() && file.path != "lib.rs") {
        let room = file.room().to_owned();
        let mut rooms = file.after("crate::");
        rooms.remove(&room);
        // To say something is open to all: the room, and its two macros, which stand at the top.
        for word in ["language", "say", "to_say"] {
            rooms.remove(word);
        }
        let may = ROOMS
            .iter()
            .find(|(name, ..)| *name == room)
            .unwrap_or_else(|| panic!("{} stands in no room of the table", file.path));
        for other in &rooms {
            assert!(may.1.contains(&other.as_str()), "{} uses {other}, and {room} may not", file.path);
        }
        used.entry(room).or_default().extend(rooms);
    }
    for (room, may, why) in ROOMS {
        let used: Vec<&str> = used.get(room).into_iter().flatten().map(String::as_str).collect();
        assert_eq!(used, may, "{room} does not use all that it may");
        assert!(!why.is_empty());
    }
}

#[test]
fn the_table_has_one_direction_and_is_the_library() {
    for (place, (room, may, _)) in ROOMS.iter().enumerate() {
        for other in *may {
            assert!(ROOMS[..place].iter().any(|(below, ..)| below == other), "{room} uses {other}, which is not below it");
        }
    }
    let lib = files().into_iter().find(|file| file.path == "lib.rs").expect("lib.rs");
    let rooms: BTreeSet<&str> = lib.code.lines().filter_map(|line| line.strip_prefix("pub mod ")?.strip_suffix(';')).collect();
    assert_eq!(rooms, ROOMS.iter().map(|(room, ..)| *room).collect());
}

#[test]
fn no_path_leaves_a_room_by_the_stairs() {
    for file in files().iter().filter(|file| file.is_library()) {
        // In `room/file.rs`, `super::super` is the house, but for the tests at its foot, where it is the room.
        let code = file.code.split("#[cfg(test)]").next().unwrap_or_default().to_owned();
        let file = File { path: file.path.clone(), code, strings: Vec::new() };
        if file.path.split('/').count() <= 2 {
            assert!(!file.names("super::super"), "{}", file.path);
        }
        if file.path.ends_with("mod.rs") && file.path.split('/').count() == 2 {
            assert!(!file.names("super"), "{}", file.path);
        }
        assert!(!file.names("garment_assay"), "{} names the library from outside", file.path);
    }
}

#[test]
fn the_library_knows_no_browser_no_clock_no_chance_and_no_files() {
    for file in every_file().iter().filter(|file| file.is_library()) {
        for word in OUTSIDE {
            assert!(!file.names(word), "{} names {word}", file.path);
        }
    }
}

#[test]
fn stored_forms_stand_in_the_notebook_alone() {
    let mut seen = 0;
    for file in files() {
        if file.names("serde_json") || file.names("serde") {
            assert_eq!(file.room(), "notebook", "{} names serde", file.path);
            seen += 1;
        }
    }
    assert!(seen >= 3);
}

#[test]
fn checks_and_families_are_named_in_the_catalog_alone() {
    let worn = CONDITIONS.iter().map(|condition| condition.check.key);
    let keys: BTreeSet<&str> =
        FAMILIES.iter().flat_map(|family| family.checks.iter().map(|check| check.key).chain([family.key])).chain(worn).collect();
    assert!(keys.len() > 40);
    let mut excused = 0;
    // The rooms below `check` have words of their own, some of them the same (an instrument's key, a unit as typed); no check is ever
    // handed to them.
    let below = |room: &str| ROOMS.iter().take_while(|(name, ..)| *name != "check").any(|(name, ..)| *name == room);
    for file in files().iter().filter(|file| file.room() != "catalog" && !below(file.room())) {
        for text in file.strings.iter().filter(|text| keys.contains(text.as_str())) {
            let other = OTHERWISE.iter().any(|(path, word, _)| *path == file.path && *word == text);
            assert!(other, "{} holds {text:?}, the key of a check or family", file.path);
            excused += 1;
        }
    }
    assert!(excused >= OTHERWISE.len(), "an excuse that nobody needs");
}

#[test]
fn only_the_browser_folders_speak_to_the_browser() {
    // The second thread is a program of its own, all of it browser; it links what reads pictures and nothing of the house.
    for file in files().iter().filter(|file| file.path == "photo_worker.rs") {
        assert!(!file.names("garment_assay") && !file.names("yew") && file.names("photo"));
    }
    let folders = ["app/browser/", "pictures/browser/"];
    let talks = |path: &str| folders.iter().any(|folder| path.starts_with(folder)) || path == "photo_worker.rs";
    for file in files().iter().filter(|file| !file.is_library() && !talks(&file.path)) {
        for name in file.after("web_sys::") {
            assert!(TARGETS.contains(&name.as_str()), "{} names web_sys::{name}", file.path);
        }
        for word in ["js_sys", "wasm_bindgen", "JsCast", "JsValue"] {
            assert!(!file.names(word), "{} names {word}", file.path);
        }
        // Waiting for what the browser brings later, and holding a listener or timer, is no interface to what it keeps.
        if file.names("gloo") {
            assert!(
                ["app/entrance.rs", "app/root.rs", "app/root/opening.rs"].contains(&file.path.as_str()),
                "{} holds listeners or timers",
                file.path
            );
        }
        if file.names("wasm_bindgen_futures") {
            let waits =
                ["app/entrance.rs", "app/root.rs", "app/pages/settings.rs", "app/wings/mod.rs", "main.rs", "pictures/main.rs"];
            assert!(waits.contains(&file.path.as_str()), "{} waits", file.path);
            assert_eq!(file.after("wasm_bindgen_futures::"), BTreeSet::from(["spawn_local".to_owned()]), "{}", file.path);
        }
    }
}

#[test]
fn inside_the_app_things_are_handed_down() {
    for file in files().iter().filter(|file| file.path.starts_with("app/")) {
        let mut uses = file.after("crate::app::");
        // Files of the app's own floor name their neighbours by `super`, as do files of a folder theirs.
        if file.path.split('/').count() == 2 {
            uses.extend(file.after("super::"));
        } else {
            uses.extend(file.after("super::super::"));
        }
        let may_not: &[&str] = match file.path.split('/').nth(1).unwrap_or_default() {
            "parts" => &["root", "pages", "appraisals"],
            "pages" => &["root"],
            "browser" => &["root", "pages", "parts", "model", "words", "appraisals"],
            "words.rs" => &["root", "pages", "parts", "model", "browser", "appraisals"],
            "model.rs" => &["root", "pages", "parts", "browser", "appraisals"],
            _ => &[],
        };
        for other in uses {
            assert!(!may_not.contains(&other.as_str()), "{} uses {other}", file.path);
        }
    }
}

/// What the second program is made of besides its own: files that stand in the main one's folder and are compiled into both.
const SHARED: [&str; 9] = ["bar", "document", "icon", "language", "means", "room", "screen", "shipped", "words"];

#[test]
fn the_second_program_stands_by_itself_and_the_first_without_it() {
    let (mut own, mut reads) = (0, 0);
    for file in files() {
        match file.room() {
            // What the main program names it links, and everybody loads that at the first visit.
            "app" | "main" => assert!(!file.names("photo"), "{} names what reads pictures", file.path),
            "pictures" => {
                own += 1;
                reads += u32::from(file.names("photo"));
                let uses = file.after("crate::");
                assert!(!uses.contains("app") && !file.names("app"), "{} uses {uses:?}", file.path);
                assert!(!file.after("garment_assay::").contains("notebook"), "{} names the notebook", file.path);
                // As in the main program: pages use parts, and both use what the browser lends.
                let may_not: &[&str] = match file.path.split('/').nth(1).unwrap_or_default() {
                    "browser" => &["pages", "parts"],
                    "parts" => &["pages"],
                    _ => &[],
                };
                for other in uses.iter().chain(&file.after("super::super::")) {
                    assert!(!may_not.contains(&other.as_str()), "{} uses {other}", file.path);
                }
            }
            _ => {}
        }
    }
    assert!(own > 15 && reads > 3);
    let all = files();
    let shared = all.iter().find(|file| file.path == "pictures/shared.rs").expect("the list of shared files");
    let names: Vec<&str> = shared.code.lines().filter_map(|line| line.strip_prefix("pub mod ")?.strip_suffix(';')).collect();
    assert_eq!(names, SHARED);
    for (path, name) in shared.strings.iter().zip(SHARED) {
        let path = path.strip_prefix("../").expect("a path out of the folder");
        let file = all.iter().find(|file| file.path == path).unwrap_or_else(|| panic!("{path} is no file"));
        assert!(path.ends_with(&format!("/{name}.rs")), "{path} is called {name}");
        // In the other program the way up leads elsewhere: they may name each other only.
        assert!(!file.names("crate"), "{path}");
        for other in file.after("super::") {
            assert!(other == "*" || SHARED.contains(&other.as_str()), "{path} uses {other}");
        }
    }
}

#[test]
fn only_the_root_holds_the_notebook() {
    for file in files().iter().filter(|file| !file.is_library()) {
        let named = file.after("garment_assay::notebook::");
        if named.is_empty() {
            assert!(!file.after("garment_assay::").contains("notebook"), "{}", file.path);
            continue;
        }
        let may = NOTEBOOK.iter().find(|(path, _)| *path == file.path);
        let may = may.unwrap_or_else(|| panic!("{} names the notebook: {named:?}", file.path)).1;
        for name in &named {
            assert!(may.contains(&name.as_str()), "{} names notebook::{name}", file.path);
        }
        if !["app/root.rs", "app/root/opening.rs"].contains(&file.path.as_str()) {
            assert!(!named.contains("Notebook"));
        }
    }
}
