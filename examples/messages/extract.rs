//! Finds the messages: which English sentences stand in the source, to be said in other languages.
//!
//! It reads tokens, not text: what is inside a macro such as `html!` is found like anything else, and comments, attributes and unit tests are not.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use garment_assay::language::{ENTRANCE, FILES};
use proc_macro2::{Delimiter, TokenStream, TokenTree};

/// Which source files each message file takes in: the longest beginning of a path decides. A sentence that stands in several files stands in
/// the first. `entrance` is all that a first visit says before the app is there.
const TAKES: [(&str, &[&str]); 14] = [
    (
        "entrance",
        &[
            "app/entrance.rs",
            "app/parts/empty_rack.rs",
            "app/parts/hall.rs",
            "app/parts/bar.rs",
            "app/parts/invented.rs",
            "app/browser/document.rs",
            "main.rs",
        ],
    ),
    (
        "app",
        &[
            "app/",
            "language/",
            "grading/",
            "cost/",
            "lot/",
            "rack/",
            "sheet/",
            "garment/",
            "notebook/",
            "archive/",
            "trade.rs",
            "check.rs",
            "quantity/",
            "practice/",
            "learn/",
        ],
    ),
    ("pictures", &["pictures/", "photo/", "photo_worker.rs"]),
    ("measure", &["measure/", "fit/"]),
    ("specimen", &["specimen/"]),
    ("catalog", &["catalog/", "source.rs", "cost/sources.rs", "cost/market.rs", "lot/sources.rs"]),
    ("jeans", &["catalog/jeans/"]),
    ("woven-shirt", &["catalog/woven_shirt/"]),
    ("t-shirt", &["catalog/t_shirt/"]),
    ("sweater", &["catalog/sweater/"]),
    ("dress-skirt", &["catalog/dress_skirt/"]),
    ("tailored-jacket", &["catalog/tailored_jacket/"]),
    ("outerwear", &["catalog/outerwear/"]),
    ("second-hand", &["catalog/second_hand/"]),
];

/// Where tables of data stand: there each literal that reads as words is a message, unless it is a key.
const TABLES: [&str; 6] = ["catalog/", "measure/", "fit/", "cost/sources.rs", "cost/market.rs", "lot/sources.rs"];

/// Macros and methods whose text nobody is meant to read on a screen as it stands there.
const UNREAD: [&str; 18] = [
    "panic",
    "assert",
    "assert_eq",
    "assert_ne",
    "debug_assert",
    "debug_assert_eq",
    "debug_assert_ne",
    "unreachable",
    "todo",
    "expect",
    "include_str",
    "include_bytes",
    "concat",
    "env",
    "matches",
    "format",
    "write",
    "measured_in",
];

/// The names of the message files, that of the entrance first.
pub fn all_files() -> impl Iterator<Item = &'static str> {
    [ENTRANCE].into_iter().chain(FILES)
}

/// A sentence to be said.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Message {
    /// Which sense of the English is meant, where it has several.
    pub sense: Option<String>,
    /// The English.
    pub english: String,
    /// The source file that it was first found in, below `src`.
    pub path: String,
    /// The names of the values that are put in where it stands; unknown where it is only marked, and said elsewhere.
    pub values: Option<Vec<String>>,
}

impl Message {
    /// As it is looked up.
    pub fn key(&self) -> String {
        self.sense.iter().fold(self.english.clone(), |english, sense| format!("{sense}\u{4}{english}"))
    }

    /// The file that it belongs in.
    pub fn file(&self) -> &'static str {
        let fits =
            |(_, paths): &(&str, &[&str])| paths.iter().filter(|path| self.path.starts_with(**path)).map(|path| path.len()).max();
        let longest = TAKES.iter().filter_map(|file| Some((fits(file)?, file.0))).max_by_key(|(length, _)| *length);
        longest.unwrap_or_else(|| panic!("{} belongs in no message file", self.path)).1
    }
}

/// The names in braces of a sentence.
#[allow(dead_code)] // The tests use it too.
pub fn names(sentence: &str) -> Vec<String> {
    let pieces = sentence.split('{').skip(1).filter_map(|piece| piece.split_once('}'));
    pieces
        .map(|(name, _)| name.to_owned())
        .filter(|name| name.chars().all(|sign| sign.is_ascii_lowercase() || sign == '_' || sign.is_ascii_digit()))
        .collect()
}

/// Every message below a folder of sources, in the order of the files and, within one, of the source; each once.
pub fn messages(src: &Path) -> Vec<Message> {
    let mut found = Vec::new();
    for path in sources(src) {
        let name = path.strip_prefix(src).expect("below src").to_string_lossy().replace('\\', "/");
        let name = name.strip_prefix("photo/src/").map_or(name.clone(), |rest| format!("photo/{rest}"));
        let text = fs::read_to_string(&path).expect("a source file");
        let tokens: TokenStream = text.parse().unwrap_or_else(|_| panic!("{name} is no Rust"));
        let is_table = TABLES.iter().any(|table| name.starts_with(table));
        let mut finder = Finder { path: &name, is_table, found: &mut found };
        finder.look(tokens);
    }
    let place = |message: &Message| all_files().position(|file| file == message.file());
    found.sort_by_key(place);
    let mut seen = BTreeSet::new();
    found.retain(|message| seen.insert(message.key()));
    found
}

fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut entries: Vec<PathBuf> =
        fs::read_dir(folder).expect("a folder").map(|entry| entry.expect("an entry").path()).collect();
    entries.sort();
    let each = |path: PathBuf| match path {
        folder if folder.is_dir() => sources(&folder),
        // Tests in files of their own.
        file if file.ends_with("tests.rs") || file.extension().is_none_or(|end| end != "rs") => Vec::new(),
        file => vec![file],
    };
    entries.into_iter().flat_map(each).collect()
}

struct Finder<'a> {
    path: &'a str,
    is_table: bool,
    found: &'a mut Vec<Message>,
}

impl Finder<'_> {
    fn look(&mut self, tokens: TokenStream) {
        let tokens: Vec<TokenTree> = tokens.into_iter().collect();
        let mut at = 0;
        while at < tokens.len() {
            let before = |back: usize| at.checked_sub(back).map(|at| tokens[at].to_string());
            match &tokens[at] {
                // An attribute; what stands under `cfg(test)` goes with it.
                TokenTree::Punct(sign) if sign.as_char() == '#' => {
                    let bang = usize::from(matches!(tokens.get(at + 1), Some(TokenTree::Punct(sign)) if sign.as_char() == '!'));
                    if let Some(TokenTree::Group(group)) = tokens.get(at + 1 + bang)
                        && group.delimiter() == Delimiter::Bracket
                    {
                        let is_test = group.stream().to_string().replace(' ', "").starts_with("cfg(test)");
                        at += 1 + bang;
                        if is_test {
                            while at + 1 < tokens.len() && !ends_an_item(&tokens[at + 1]) {
                                at += 1;
                            }
                            at += 1;
                        }
                    }
                }
                TokenTree::Group(group) => {
                    let called = match (before(1).as_deref(), before(2)) {
                        (Some("!"), Some(name)) => Some(name),
                        (Some(name), _) => Some(name.to_owned()),
                        _ => None,
                    };
                    match called.as_deref() {
                        Some(name @ ("say" | "to_say")) if before(1).as_deref() == Some("!") => {
                            self.say(group.stream(), name == "say");
                        }
                        Some(name) if UNREAD.contains(&name) => {
                            Finder { path: self.path, is_table: false, found: self.found }.look(group.stream())
                        }
                        _ => self.look(group.stream()),
                    }
                }
                TokenTree::Literal(literal) if self.is_table => {
                    let field = (before(1).as_deref() == Some(":")).then(|| before(2)).flatten();
                    if let Some(text) = text_of(literal)
                        && reads_as_words(&text, field.as_deref())
                    {
                        self.add(None, text, None);
                    }
                }
                _ => {}
            }
            at += 1;
        }
    }

    /// What stands in the brackets of `say!`, or of `to_say!`, which gives no values.
    fn say(&mut self, tokens: TokenStream, with_values: bool) {
        let tokens: Vec<TokenTree> = tokens.into_iter().collect();
        let literal = |at: usize| match tokens.get(at) {
            Some(TokenTree::Literal(literal)) => text_of(literal),
            _ => None,
        };
        let is = |at: usize, what: char| matches!(tokens.get(at), Some(TokenTree::Punct(sign)) if sign.as_char() == what);
        let Some(first) = literal(0) else { return self.look(tokens.into_iter().collect()) };
        let (sense, english, next) = match is(1, '|').then(|| literal(2)).flatten() {
            Some(english) => (Some(first), english, 3),
            None => (None, first, 1),
        };
        let mut values = Vec::new();
        for at in next..tokens.len() {
            if let (true, Some(TokenTree::Ident(name))) = (is(at, ','), tokens.get(at + 1))
                && (at + 2 == tokens.len() || is(at + 2, ',') || (is(at + 2, '=') && !is(at + 3, '=')))
            {
                values.push(name.to_string());
            }
        }
        self.add(sense, english, with_values.then_some(values));
        self.look(tokens.into_iter().skip(next).collect());
    }

    fn add(&mut self, sense: Option<String>, english: String, values: Option<Vec<String>>) {
        let (sense, english) = match english.split_once('\u{4}') {
            Some((sense, english)) => (Some(sense.to_owned()), english.to_owned()),
            None => (sense, english),
        };
        self.found.push(Message { sense, english, path: self.path.to_owned(), values });
    }
}

/// Whether a token is the last of an item: its body, or the semicolon of one that has none.
fn ends_an_item(token: &TokenTree) -> bool {
    match token {
        TokenTree::Group(group) => group.delimiter() == Delimiter::Brace,
        TokenTree::Punct(sign) => sign.as_char() == ';',
        _ => false,
    }
}

fn text_of(literal: &proc_macro2::Literal) -> Option<String> {
    syn::parse_str::<syn::LitStr>(&literal.to_string()).ok().map(|text| text.value())
}

/// Whether a literal of a table is for people: a field's text but for its key, and elsewhere what has a space within or begins with a capital.
fn reads_as_words(text: &str, field: Option<&str>) -> bool {
    let has_letters = text.contains(char::is_lowercase) && text.chars().filter(|sign| sign.is_alphabetic()).count() >= 2;
    let is_spaced = text.trim().contains(' ');
    // LSc, a seam of a standard.
    let is_code = !is_spaced && text.chars().take(2).filter(|sign| sign.is_uppercase()).count() == 2;
    let begins_large = text.chars().next().is_some_and(char::is_uppercase);
    match field {
        // Codes of standards are the same in every language.
        Some("key" | "letters" | "number") => false,
        _ if is_code => false,
        Some(_) => has_letters,
        None => has_letters && (is_spaced || begins_large),
    }
}
