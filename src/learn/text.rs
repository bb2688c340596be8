//! The longer text of each lesson of a family, as it is written in a file and fetched when it is first read.
//!
//! A file is plain text:
//!
//! ```text
//! lessons 1
//!
//! # key-of-a-check
//! wear: what becomes of it, in one paragraph
//! that may run over several lines.
//! silent: what it does not tell.
//! fooled: how the eye is fooled.
//! faked: how it is faked.
//! basis: what this paragraph or that leans on.
//! ```
//!
//! Empty lines part nothing; a line that begins with `%` is a note to whoever writes the file.

use crate::say;
use std::collections::BTreeMap;
use std::fmt;

/// What a paragraph is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Section {
    /// What becomes of it in wear, good or bad.
    Wear,
    /// What the check does not tell.
    Silent,
    /// How the eye or the hand is fooled, and where good work looks bad.
    Fooled,
    /// How the good answer is faked, or its cost saved unseen.
    Faked,
    /// What the text leans on.
    Basis,
}

impl Section {
    /// All of them, in the order in which they are read.
    pub const ALL: [Section; 5] = [Section::Wear, Section::Silent, Section::Fooled, Section::Faked, Section::Basis];

    /// The word before the colon in the file.
    pub const fn key(self) -> &'static str {
        match self {
            Section::Wear => "wear",
            Section::Silent => "silent",
            Section::Fooled => "fooled",
            Section::Faked => "faked",
            Section::Basis => "basis",
        }
    }

    /// The heading on the screen.
    pub fn heading(self) -> &'static str {
        match self {
            Section::Wear => say!("What becomes of it"),
            Section::Silent => say!("What it does not tell"),
            Section::Fooled => say!("How you may be misled"),
            Section::Faked => say!("How it is faked"),
            Section::Basis => say!("How well this is known"),
        }
    }
}

/// The longer text of one lesson: a paragraph for each section.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Text([String; Section::ALL.len()]);

impl Text {
    /// The paragraph of that section.
    pub fn section(&self, section: Section) -> &str {
        &self.0[section as usize]
    }

    /// How many words it has.
    pub fn words(&self) -> usize {
        self.0.iter().map(|paragraph| paragraph.split_whitespace().count()).sum()
    }
}

/// The longer texts of a family's lessons, by the keys of its checks.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Texts(BTreeMap<String, Text>);

/// Why a file of texts cannot be read; lines are counted from 1.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TextFault {
    /// The first line does not say that it is such a file, in a form that is known here.
    NotTexts,
    /// A paragraph stands before the first check.
    NoCheck(usize),
    /// A line begins no paragraph that is known and continues none.
    UnknownParagraph(usize),
    /// The check, or its paragraph, stands there a second time.
    Twice(usize),
    /// The check lacks that section, or it is empty.
    Lacks(String, Section),
}

impl fmt::Display for TextFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            TextFault::NotTexts => {
                f.write_str(say!("This is no file of lessons that this version can read. Load the page again."))
            }
            TextFault::NoCheck(line) => f.write_str(&say!("Line {line} stands before any check. Put “# key” above it.", line)),
            TextFault::UnknownParagraph(line) => f.write_str(&say!(
                "Line {line} begins no known paragraph. Begin it with wear, silent, fooled, faked or basis and a colon.",
                line
            )),
            TextFault::Twice(line) => {
                f.write_str(&say!("Line {line} says again what stands above. Take one of the two out.", line))
            }
            TextFault::Lacks(check, section) => {
                f.write_str(&say!("The text of {check} has no “{section}:”. Write it.", check, section = section.key()))
            }
        }
    }
}

/// A check's paragraphs while they are read.
type Paragraphs = [Option<String>; Section::ALL.len()];

/// The section that a line begins, and what stands after the colon.
fn begun(line: &str) -> Option<(Section, &str)> {
    let (word, rest) = line.split_once(':')?;
    let section = Section::ALL.into_iter().find(|section| section.key() == word)?;
    Some((section, rest.trim()))
}

impl Texts {
    /// Reads a file.
    ///
    /// # Errors
    /// [`TextFault`], with the line; nothing of a file with a fault is used.
    ///
    /// # Example
    /// ```
    /// use garment_assay::learn::{Section, Texts};
    ///
    /// let file = "lessons 1\n# hem\nwear: It falls.\nsilent: Not how\nlong.\nfooled: By steam.\nfaked: With glue.\nbasis: Judgement.";
    /// let texts = Texts::read(file).unwrap();
    /// assert_eq!(texts.of("hem").unwrap().section(Section::Silent), "Not how long.");
    /// ```
    pub fn read(file: &str) -> Result<Texts, TextFault> {
        let mut lines = file.lines().map(str::trim).enumerate();
        // Some editors put a mark before the first line.
        if lines.next().map(|(_, line)| line.trim_start_matches('\u{feff}')) != Some("lessons 1") {
            return Err(TextFault::NotTexts);
        }
        let mut texts = BTreeMap::new();
        let mut open: Option<(String, Paragraphs)> = None;
        let mut under = None;
        for (place, line) in lines {
            let number = place + 1;
            if line.is_empty() || line.starts_with('%') {
                continue;
            }
            if let Some(key) = line.strip_prefix('#').map(str::trim) {
                close(&mut texts, open.take())?;
                if texts.contains_key(key) {
                    return Err(TextFault::Twice(number));
                }
                (open, under) = (Some((key.to_owned(), Paragraphs::default())), None);
                continue;
            }
            let Some((_, paragraphs)) = &mut open else { return Err(TextFault::NoCheck(number)) };
            if let Some((section, rest)) = begun(line) {
                let paragraph = &mut paragraphs[section as usize];
                if paragraph.is_some() {
                    return Err(TextFault::Twice(number));
                }
                (*paragraph, under) = (Some(rest.to_owned()), Some(section));
            } else if let Some(paragraph) = under.and_then(|section: Section| paragraphs[section as usize].as_mut()) {
                paragraph.push(' ');
                paragraph.push_str(line);
            } else {
                return Err(TextFault::UnknownParagraph(number));
            }
        }
        close(&mut texts, open)?;
        Ok(Texts(texts))
    }

    /// The text of the check of that key.
    pub fn of(&self, check: &str) -> Option<&Text> {
        self.0.get(check)
    }

    /// The keys of the checks that have a text.
    pub fn checks(&self) -> impl Iterator<Item = &str> {
        self.0.keys().map(String::as_str)
    }
}

/// Puts a check whose paragraphs were all read among the others.
fn close(texts: &mut BTreeMap<String, Text>, open: Option<(String, Paragraphs)>) -> Result<(), TextFault> {
    let Some((check, paragraphs)) = open else { return Ok(()) };
    for section in Section::ALL {
        if paragraphs[section as usize].as_deref().unwrap_or_default().trim().is_empty() {
            return Err(TextFault::Lacks(check, section));
        }
    }
    texts.insert(check, Text(paragraphs.map(Option::unwrap_or_default)));
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    const WHOLE: &str = "wear: a\nsilent: b\nfooled: c\nfaked: d\nbasis: e";

    #[test]
    fn a_file_is_read_whole_or_not_at_all_and_the_fault_names_its_line() {
        let fault = |file: &str| Texts::read(file).expect_err(file);
        assert_eq!(fault(""), TextFault::NotTexts);
        assert_eq!(fault("lessons 2\n"), TextFault::NotTexts);
        assert_eq!(fault("<!doctype html>"), TextFault::NotTexts);
        assert_eq!(fault("lessons 1\nwear: a"), TextFault::NoCheck(2));
        assert_eq!(fault("lessons 1\n# x\n\nwares: a"), TextFault::UnknownParagraph(4));
        assert_eq!(fault("lessons 1\n# x\nwear: a\nwear: b"), TextFault::Twice(4));
        assert_eq!(fault("lessons 1\n# x\nwear: a\n"), TextFault::Lacks("x".to_owned(), Section::Silent));
        assert_eq!(fault(&format!("lessons 1\n# x\n{WHOLE}\n# x\n{WHOLE}")), TextFault::Twice(8));
        assert_eq!(
            fault(&format!("lessons 1\n# x\n{}", WHOLE.replace(": d", ":"))),
            TextFault::Lacks("x".to_owned(), Section::Faked)
        );
    }

    #[test]
    fn notes_empty_lines_and_a_colon_within_a_sentence_are_no_paragraphs() {
        let file = format!("\u{feff}lessons 1\r\n% a note\r\n\r\n# x\r\n{}\r\nand so: on\r\n", WHOLE.replace('\n', "\r\n"));
        let texts = Texts::read(&file).expect("sound");
        assert_eq!(texts.of("x").map(|text| text.section(Section::Basis)), Some("e and so: on"));
        assert_eq!(texts.of("x").map(Text::words), Some(8));
        assert_eq!(texts.checks().collect::<Vec<_>>(), ["x"]);
        assert!(texts.of("y").is_none());
    }

    proptest::proptest! {
        #[test]
        fn no_text_makes_it_panic(file in "(lessons 1\n)?((# ?[a-c]|wear:|silent:|fooled:|faked:|basis:|%|x| )[a-z:#]{0,3}\n?){0,30}") {
            let _ = Texts::read(&file);
        }
    }
}
