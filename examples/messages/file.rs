//! The form of a message file.

use std::fs;
use std::path::Path;

use garment_assay::language::{Language, Messages};

use super::extract::Message;

/// All messages in a folder's files.
pub fn all(folder: &Path) -> Messages {
    let mut all = Messages::default();
    for entry in fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.extension().is_some_and(|end| end == "po") {
            let text = fs::read_to_string(&path).expect("a message file");
            all.join(Messages::read(&text).unwrap_or_else(|fault| panic!("{}: {fault}", path.display())));
        }
    }
    all
}

/// The text of a file with these messages, each with what is said for it so far.
pub fn written(language: Language, messages: &[&Message], known: &Messages) -> String {
    let mut out = format!(
        "msgid \"\"\nmsgstr \"\"\n\"Language: {}\\n\"\n\"MIME-Version: 1.0\\n\"\n\"Content-Type: text/plain; charset=UTF-8\\n\"\n\
         \"Content-Transfer-Encoding: 8bit\\n\"\n",
        language.tag()
    );
    for message in messages {
        out += &format!("\n#: {}\n", message.path);
        if let Some(sense) = &message.sense {
            out += &format!("msgctxt {}\n", quoted(sense));
        }
        let said = known.get(&message.key()).unwrap_or_default();
        out += &format!("msgid {}\nmsgstr {}\n", quoted(&message.english), quoted(said));
    }
    out
}

fn quoted(text: &str) -> String {
    let text = text.replace('\\', "\\\\").replace('"', "\\\"").replace('\n', "\\n").replace('\t', "\\t");
    format!("\"{text}\"")
}
