//! Messages of a language, read from the text of a file in the PO format of GNU gettext.

use std::collections::HashMap;
use std::fmt;

/// Sentences by the English ones.
///
/// Of the format this reads what message files here consist of: `msgctxt`, `msgid` and `msgstr`, each a quoted text that may go on over further
/// quoted lines, and comments. Plural forms are not used (see [`one`](super::one)); the heading (an empty `msgid`) and messages without
/// a translation are left out.
///
/// # Source
/// GNU gettext manual, "The Format of PO Files"; `tests/languages.rs` reads every file with another reader too.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Messages(HashMap<String, String>);

/// Why a message file cannot be read; lines are counted from 1.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum MessageFault {
    /// The line is no comment, no keyword that is known, and no quoted text that belongs to one.
    Line(usize),
    /// The text of that line has no end, or something follows it.
    Quotes(usize),
    /// A backslash stands before something that it cannot stand before.
    Escape(usize),
}

impl fmt::Display for MessageFault {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            MessageFault::Line(line) => write!(to, "Line {line} is no part of a message."),
            MessageFault::Quotes(line) => {
                write!(to, "The text in line {line} has no closing quotation mark, or something follows it.")
            }
            MessageFault::Escape(line) => {
                write!(to, "A backslash in line {line} stands before something it cannot stand before.")
            }
        }
    }
}

/// Which text of a message goes on.
#[derive(Clone, Copy)]
enum Part {
    Sense,
    English,
    Said,
}

/// One message while it is read.
#[derive(Default)]
struct Draft {
    sense: Option<String>,
    english: String,
    said: String,
}

impl Messages {
    /// Reads the text of a file.
    ///
    /// # Errors
    /// At the first line that is no part of a message.
    pub fn read(text: &str) -> Result<Messages, MessageFault> {
        let mut messages = Messages::default();
        let mut draft = Draft::default();
        let mut part = None;
        for (at, line) in text.lines().enumerate() {
            let number = at + 1;
            let line = line.trim();
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            let begins = |keyword: &str| line.strip_prefix(keyword).filter(|rest| rest.starts_with([' ', '\t', '"']));
            let (now, rest) = if let Some(rest) = begins("msgctxt") {
                messages.take(std::mem::take(&mut draft));
                draft.sense = Some(String::new());
                (Part::Sense, rest)
            } else if let Some(rest) = begins("msgid") {
                // The sense of a message stands before it and belongs to it.
                if !matches!(part, Some(Part::Sense)) {
                    messages.take(std::mem::take(&mut draft));
                }
                (Part::English, rest)
            } else if let Some(rest) = begins("msgstr") {
                (Part::Said, rest)
            } else {
                (part.ok_or(MessageFault::Line(number))?, line)
            };
            part = Some(now);
            let piece = unquoted(rest.trim(), number)?;
            match now {
                Part::Sense => draft.sense.get_or_insert_default().push_str(&piece),
                Part::English => draft.english.push_str(&piece),
                Part::Said => draft.said.push_str(&piece),
            }
        }
        messages.take(draft);
        Ok(messages)
    }

    fn take(&mut self, draft: Draft) {
        if !draft.english.is_empty() && !draft.said.is_empty() {
            let key = match draft.sense {
                Some(sense) => format!("{sense}\u{4}{}", draft.english),
                None => draft.english,
            };
            self.0.insert(key, draft.said);
        }
    }

    /// What is said for an English sentence.
    pub fn get(&self, english: &str) -> Option<&str> {
        self.0.get(english).map(String::as_str)
    }

    /// Adds those of another file.
    pub fn join(&mut self, other: Messages) {
        self.0.extend(other.0);
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// English and what is said for it, in no order.
    pub fn iter(&self) -> impl Iterator<Item = (&str, &str)> {
        self.0.iter().map(|(english, said)| (english.as_str(), said.as_str()))
    }
}

fn unquoted(text: &str, line: usize) -> Result<String, MessageFault> {
    let inner = text.strip_prefix('"').ok_or(MessageFault::Line(line))?;
    let mut out = String::with_capacity(inner.len());
    let mut signs = inner.chars();
    loop {
        match signs.next().ok_or(MessageFault::Quotes(line))? {
            '"' => break,
            '\\' => out.push(match signs.next().ok_or(MessageFault::Quotes(line))? {
                'n' => '\n',
                't' => '\t',
                sign @ ('"' | '\\') => sign,
                _ => return Err(MessageFault::Escape(line)),
            }),
            sign => out.push(sign),
        }
    }
    if signs.as_str().is_empty() { Ok(out) } else { Err(MessageFault::Quotes(line)) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const FILE: &str = "# Notes\nmsgid \"\"\nmsgstr \"Language: de\\n\"\n\nmsgid \"Seam\"\nmsgstr \"Naht\"\n\n\
        msgctxt \"screen\"\nmsgid \"Light\"\nmsgstr \"Hell\"\n\nmsgid \"\"\n\"Two \"\n\"\\\"lines\\\"\"\nmsgstr \"\"\n\"Zwei Zeilen\"\n\n\
        msgid \"Not yet\"\nmsgstr \"\"\n";

    #[test]
    fn a_file_is_read() {
        let messages = Messages::read(FILE).unwrap();
        assert_eq!(messages.get("Seam"), Some("Naht"));
        assert_eq!((messages.get("Light"), messages.get("screen\u{4}Light")), (None, Some("Hell")));
        assert_eq!(messages.get("Two \"lines\""), Some("Zwei Zeilen"));
        assert_eq!((messages.get("Not yet"), messages.get(""), messages.len()), (None, None, 3));
    }

    #[test]
    fn a_fault_is_told_by_its_line() {
        let fault = |text| Messages::read(text).unwrap_err();
        assert_eq!(fault("\nSeam"), MessageFault::Line(2));
        assert_eq!(fault("\"Seam\""), MessageFault::Line(1));
        assert_eq!(fault("msgid \"Seam"), MessageFault::Quotes(1));
        assert_eq!(fault("msgid \"Seam\" x"), MessageFault::Quotes(1));
        assert_eq!(fault("msgid \"Se\\am\""), MessageFault::Escape(1));
        assert_eq!(fault("msgid_plural \"Seams\""), MessageFault::Line(1));
    }

    proptest! {
        #[test]
        fn any_text_at_all_is_read_or_refused(text in any::<String>(), cut in 0_usize..200) {
            let _ = Messages::read(&text);
            let end = FILE.char_indices().map(|(at, _)| at).nth(cut).unwrap_or(FILE.len());
            let _ = Messages::read(&format!("{}{text}{}", &FILE[..end], &FILE[end..]));
        }
    }
}
