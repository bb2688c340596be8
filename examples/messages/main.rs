//! Brings the message files in `language/` up to the source: adds what is new without a translation, takes out what is gone, and says how many
//! sentences of each language are still to be written. `make messages` runs it.

mod extract;
mod file;

use std::path::Path;

use garment_assay::language::Language;

fn main() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let messages = extract::messages(&root.join("src"));
    for language in Language::ALL.into_iter().filter(|language| *language != Language::English) {
        let folder = root.join("language").join(language.tag());
        std::fs::create_dir_all(&folder).expect("a folder for the messages");
        let known = file::all(&folder);
        let mut missing = 0;
        for name in extract::all_files() {
            let here: Vec<_> = messages.iter().filter(|message| message.file() == name).collect();
            missing += here.iter().filter(|message| known.get(&message.key()).is_none()).count();
            std::fs::write(folder.join(name).with_extension("po"), file::written(language, &here, &known))
                .expect("a message file");
        }
        println!("{}: {} messages, {missing} to be written", language.own_name(), messages.len());
    }
}
