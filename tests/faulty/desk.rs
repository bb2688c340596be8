//! One person at a notebook whose shelf does harm: does what the app does (`src/app/root.rs`), remembers what was acknowledged, and holds
//! it against what lies there afterwards.

use std::collections::{BTreeMap, BTreeSet};

use garment_assay::fit::Person;
use garment_assay::garment::{Garment, Id};
use garment_assay::notebook::{Change, KeepFault, Kept, MemoryShelf, Notebook, PageName, Record, SetAside, Shelf, Unreadable};
use serde_json::Value;

use crate::drawing::crc;

use super::{Harm, HarmfulShelf, Operation, Struck};

/// The facts of a record as text; none when it is deleted.
type State = Option<String>;

fn state<R: Record>(record: &R) -> State {
    Some(Value::Object(record.body()).to_string())
}

fn key<R: Record>(record: &R) -> String {
    record.page_name().key()
}

/// What was said of one page.
#[derive(Debug, Default)]
struct Told {
    /// What was last acknowledged.
    last: State,
    /// What was asked for since and refused.
    asked: Vec<State>,
    /// All that was ever acknowledged or asked for.
    ever: Vec<State>,
}

/// The person, the notebook and its mirror.
pub struct Desk {
    shelf: HarmfulShelf,
    notebook: Notebook<HarmfulShelf>,
    /// Garments on the screen.
    pub garments: BTreeMap<Id, Garment>,
    /// People on the screen, by key.
    pub people: BTreeMap<String, Person>,
    mirror: BTreeMap<String, String>,
    mirroring: bool,
    told: BTreeMap<String, Told>,
    /// What another window wrote of a page, that has not been seen here.
    unseen: BTreeMap<String, State>,
    /// Damaged text was thrown away on purpose.
    dropped: bool,
    /// Faults that were said.
    pub said: usize,
}

impl Desk {
    /// Opens the notebook for the first time.
    pub fn new(plan: BTreeMap<u64, Harm>) -> Desk {
        let shelf = HarmfulShelf::new(MemoryShelf::default(), plan);
        // Nobody needs a reserve of 32 KB to be copied a thousand times; that there is one is enough, except where it is the matter.
        shelf.memory.set("garment-assay/ballast", "x").expect("memory");
        shelf.memory.set("another-app", "stays").expect("memory");
        let (notebook, _) = Notebook::open(HarmfulShelf::default());
        let mut desk = Desk {
            shelf,
            notebook,
            garments: BTreeMap::new(),
            people: BTreeMap::new(),
            mirror: BTreeMap::new(),
            mirroring: true,
            told: BTreeMap::new(),
            unseen: BTreeMap::new(),
            dropped: false,
            said: 0,
        };
        desk.reopen();
        desk
    }

    /// What the shelf was asked so far.
    pub fn operations(&self) -> Vec<Operation> {
        self.shelf.operations()
    }

    /// Loads the app again: opens, then compares with the mirror.
    pub fn reopen(&mut self) {
        let struck = self.shelf.struck().len();
        let (notebook, opened) = Notebook::open(self.shelf.clone());
        self.notebook = notebook;
        self.unseen.clear();
        let refused = self.shelf.struck()[struck..].iter().any(|one| matches!(one.harm, Harm::Refused(_)) && !of_reserve(one));
        assert_eq!(opened.fault.is_some(), refused, "a shelf that cannot be read is said to be so");
        self.said += usize::from(opened.fault.is_some());
        self.garments = opened.garments.into_iter().map(|garment| (garment.id().clone(), garment)).collect();
        self.people = opened.people.into_iter().map(|person| (key(&person), person)).collect();
        self.mirroring = true;
        let pages: Vec<(String, String)> = self.mirror.clone().into_iter().collect();
        let healed = match self.notebook.heal(&pages) {
            Ok(healed) => healed,
            Err(_) => {
                self.said += 1;
                self.mirroring = false;
                // Of a page that was to be taken over a part may lie there: it is as if that had been asked for and refused.
                for (key, text) in pages {
                    self.asked_for_page(&key, &text);
                }
                return;
            }
        };
        if healed.fault.is_some() {
            self.said += 1;
            self.mirroring = false;
            for (key, text) in pages {
                self.asked_for_page(&key, &text);
            }
        } else {
            self.mirror.extend(healed.to_mirror);
        }
        for garment in healed.garments {
            self.acknowledge(&key(&garment), state(&garment));
            self.garments.insert(garment.id().clone(), garment);
        }
        for name in healed.gone {
            self.acknowledge(&name.key(), None);
            self.garments.remove(&name);
        }
        for person in healed.people {
            self.acknowledge(&key(&person), state(&person));
            self.people.insert(key(&person), person);
        }
        for name in healed.people_gone {
            self.acknowledge(&name.key(), None);
            self.people.remove(&name.key());
        }
    }

    fn asked_for_page(&mut self, key: &str, text: &str) {
        if let Some(state) = state_of(text) {
            self.ask(key, state);
        }
    }

    fn acknowledge(&mut self, key: &str, state: State) {
        let told = self.told.entry(key.to_owned()).or_default();
        told.ever.push(state.clone());
        (told.last, told.asked) = (state, Vec::new());
    }

    fn ask(&mut self, key: &str, state: State) {
        let told = self.told.entry(key.to_owned()).or_default();
        told.ever.push(state.clone());
        told.asked.push(state);
    }

    /// Keeps a garment as the screen has it now.
    pub fn keep(&mut self, garment: Garment) {
        let kept = self.doing(&[key(&garment)], |notebook| notebook.keep(&garment));
        self.took(&garment, kept.as_ref().ok());
        self.garments.insert(garment.id().clone(), garment);
        if let Some(renamed) = kept.ok().and_then(|kept| kept.renamed) {
            if let Some(theirs) = renamed.theirs {
                self.garments.insert(theirs.id().clone(), theirs);
            }
            self.garments.insert(renamed.ours.id().clone(), renamed.ours);
        }
    }

    /// Keeps a person.
    pub fn keep_person(&mut self, person: Person) {
        let kept = self.doing(&[key(&person)], |notebook| notebook.keep(&person));
        self.took(&person, kept.as_ref().ok());
        self.people.insert(key(&person), person);
    }

    fn took<R: Record>(&mut self, record: &R, kept: Option<&Kept<R>>) {
        match kept {
            Some(kept) => {
                let kept_as = kept.renamed.as_ref().map_or(record, |renamed| &renamed.ours);
                assert_eq!(kept.page.0, key(kept_as));
                let unseen = self.unseen.remove(&key(record)).filter(|theirs| *theirs != state(record));
                let lost = unseen.is_some() && kept.renamed.is_none() && !self.is_harmed(&key(record));
                assert!(!lost, "what another window wrote of {} was written over", key(record));
                self.acknowledge(&kept.page.0, state(kept_as));
                self.sent(kept.page.clone());
            }
            None => self.ask(&key(record), state(record)),
        }
    }

    fn sent(&mut self, page: (String, String)) {
        if self.mirroring {
            self.mirror.insert(page.0, page.1);
        }
    }

    /// Deletes a garment.
    pub fn discard(&mut self, name: &Id) {
        self.discard_any(name);
        self.garments.remove(name);
    }

    /// Deletes a person.
    pub fn discard_person(&mut self, person: &Person) {
        self.discard_any(person.id());
        self.people.remove(&key(person));
    }

    fn discard_any<N: PageName>(&mut self, name: &N) {
        match self.doing(&[name.key()], |notebook| notebook.discard(name)) {
            Ok(kept) if kept.stays.is_some() => {
                self.unseen.remove(&name.key());
                self.sent(kept.page);
            }
            Ok(kept) => {
                let lost = self.unseen.remove(&name.key()).is_some() && !self.is_harmed(&name.key());
                assert!(!lost, "what another window wrote of {} was deleted unseen", name.key());
                self.acknowledge(&name.key(), None);
                self.sent(kept.page);
            }
            Err(_) => self.ask(&name.key(), None),
        }
    }

    /// Keeps something that has no page and no mirror; `text` is what it is written as.
    pub fn small(&mut self, key: &str, text: &str, act: impl FnOnce(&mut Notebook<HarmfulShelf>) -> Result<(), KeepFault>) {
        let key = format!("garment-assay/{key}");
        match self.doing(std::slice::from_ref(&key), act) {
            Ok(()) => self.acknowledge(&key, Some(text.to_owned())),
            Err(_) => self.ask(&key, Some(text.to_owned())),
        }
    }

    /// Takes over what a file brings, one change after the other, as the app does.
    pub fn bring(&mut self, changes: Vec<Change>) {
        for change in changes {
            match change {
                Change::Add(garment) | Change::AddBeside(garment) | Change::Overwrite(garment) | Change::Join(garment) => {
                    self.keep(garment)
                }
                Change::Delete(name) => self.discard(&name),
                Change::Same(_) => {}
            }
        }
    }

    /// A second window writes a garment.
    pub fn elsewhere(&mut self, garment: &Garment) {
        let (mut other, opened) = Notebook::open(self.shelf.memory.clone());
        if opened.garments.iter().any(|known| known.id() == garment.id()) {
            let kept = other.keep(garment).expect("the other window's shelf works");
            self.acknowledge(&kept.page.0, state(garment));
            self.unseen.insert(kept.page.0.clone(), state(garment));
            self.sent(kept.page);
        }
    }

    /// Whether harm was done to what lies under that key, which a refusal does not do.
    fn is_harmed(&self, key: &str) -> bool {
        self.shelf.struck().iter().any(|one| one.key == key && !matches!(one.harm, Harm::Refused(_)))
    }

    /// Drops what was set aside under that key; what can be read stays.
    pub fn drop_set_aside(&mut self, key: &str) {
        self.dropped = true;
        let _ = self.doing(&[key.to_owned()], |notebook| notebook.drop_set_aside(key));
    }

    /// Erases everything, trying again while the shelf refuses.
    pub fn erase(&mut self) {
        for _ in 0..20 {
            if self.notebook.erase().is_ok() {
                (self.dropped, self.unseen) = (true, BTreeMap::new());
                self.told.clear();
                self.mirror.clear();
                self.garments.clear();
                self.people.clear();
                return;
            }
            self.said += 1;
            for told in self.told.values_mut() {
                told.ever.push(None);
                told.asked.push(None);
            }
        }
        panic!("the shelf never let itself be erased");
    }

    /// Does one thing; nothing else on the shelf may change by it, what is acknowledged lies there, and what is refused is as it was.
    fn doing<T>(
        &mut self,
        keys: &[String],
        act: impl FnOnce(&mut Notebook<HarmfulShelf>) -> Result<T, KeepFault>,
    ) -> Result<T, KeepFault> {
        let (before, struck) = (texts(&self.shelf.memory), self.shelf.struck().len());
        let done = act(&mut self.notebook);
        let after = texts(&self.shelf.memory);
        let struck = &self.shelf.struck()[struck..];
        self.said += usize::from(done.is_err());
        let all: BTreeSet<&String> = before.keys().chain(after.keys()).collect();
        for key in all.into_iter().filter(|key| before.get(*key) != after.get(*key)) {
            let ours =
                keys.iter().any(|ours| key == ours || key.starts_with(&format!("{}~", ours.split('~').next().unwrap_or(ours))));
            let known = ours || key.starts_with("garment-assay/damaged/") || key == "garment-assay/ballast";
            assert!(known || struck.iter().any(|one| one.key == **key), "{key} was touched while {keys:?} was written");
            let lied = struck.iter().any(|one| one.key == **key && !matches!(one.harm, Harm::Refused(_)));
            assert!(done.is_ok() || !ours || lied, "{key} was changed, and that was denied");
        }
        done
    }

    /// Loads the app once more on a shelf that works, and holds what is there against what was said.
    pub fn assert_holds(mut self) {
        self.shelf.mend();
        let struck = self.shelf.struck();
        let memory = self.shelf.memory.clone();
        let (mut notebook, opened) = Notebook::open(memory.clone());
        assert_eq!(opened.fault, None);
        self.assert_told(&struck, &opened.set_aside);
        let pages: Vec<(String, String)> = std::mem::take(&mut self.mirror).into_iter().collect();
        let healed = notebook.heal(&pages).expect("a shelf that works");
        assert_eq!(healed.fault, None);
        // Twice is once.
        let both: BTreeMap<String, String> = pages.iter().cloned().chain(healed.to_mirror).collect();
        let both: Vec<(String, String)> = both.into_iter().collect();
        assert_eq!(notebook.heal(&both), Ok(garment_assay::notebook::Healed::default()));
        let found = texts(&memory);
        let (_, opened) = Notebook::open(memory);
        let mirrored: BTreeMap<String, String> = pages.into_iter().collect();
        for (key, told) in &self.told {
            let is_page = is_page(key);
            let there = if is_page { found.get(key).and_then(|text| state_of(text)).flatten() } else { found.get(key).cloned() };
            if there == told.last || told.asked.contains(&there) {
                continue;
            }
            let of_it: Vec<&Struck> =
                struck.iter().filter(|one| one.key == *key && !matches!(one.harm, Harm::Refused(_))).collect();
            assert!(!of_it.is_empty(), "{key} is {there:?}, acknowledged was {:?}, and no harm was done to it", told.last);
            let in_mirror = mirrored.get(key).and_then(|text| state_of(text));
            assert_ne!(in_mirror.as_ref(), Some(&told.last), "{key} was not healed: {of_it:?}");
            let is_said = opened.set_aside.iter().any(|aside| of_it.iter().any(|one| one.piece.as_ref() == Some(&aside.text)));
            let is_older = there.is_none() || told.ever.contains(&there) || !is_page;
            assert!(is_said || is_older, "{key} is {there:?}, which nobody asked for: {of_it:?}");
        }
        // Nothing is claimed of which nobody spoke.
        let claimed = opened.garments.iter().map(|garment| (key(garment), state(garment)));
        for (key, state) in claimed.chain(opened.people.iter().map(|person| (key(person), state(person)))) {
            let spoken = self.told.get(&key).is_some_and(|told| told.ever.contains(&state));
            assert!(spoken || struck.iter().any(|one| one.key == key) || key.contains('~'), "{key} is claimed");
        }
        self.assert_pieces_stay(&struck, &found);
        let other = struck.iter().any(|one| one.key == "another-app");
        assert!(other || found.get("another-app").is_some_and(|text| text == "stays"), "what is not ours was touched");
    }

    /// A piece of a torn page is never thrown away by the app itself, also where the page is whole again.
    fn assert_pieces_stay(&self, struck: &[Struck], found: &BTreeMap<String, String>) {
        let copy_harmed = struck.iter().any(|one| one.key.starts_with("garment-assay/damaged/"));
        for (place, one) in struck.iter().enumerate().filter(|(_, one)| is_page(&one.key)) {
            let again = struck[place + 1..].iter().any(|other| other.key == one.key);
            let Some(piece) = one.piece.as_ref().filter(|_| !again && !copy_harmed && !self.dropped) else { continue };
            assert!(found.values().any(|text| text == piece), "{one:?}: the piece is gone");
        }
    }

    /// Every piece of a torn page that still lies there is set aside and said, with its text.
    fn assert_told(&self, struck: &[Struck], set_aside: &[SetAside]) {
        for one in struck {
            let Some(piece) = &one.piece else { continue };
            let lies_there = self.shelf.memory.get(&one.key).expect("memory").as_ref() == Some(piece);
            if lies_there && is_page(&one.key) {
                let said = set_aside
                    .iter()
                    .any(|aside| aside.key == one.key && aside.text == *piece && aside.why == Unreadable::Damaged);
                assert!(said, "{one:?} is not said");
            }
        }
    }
}

fn is_page(key: &str) -> bool {
    key.starts_with("garment-assay/page/") || key.starts_with("garment-assay/person/")
}

fn of_reserve(struck: &Struck) -> bool {
    struck.key == "garment-assay/ballast"
}

fn texts(memory: &MemoryShelf) -> BTreeMap<String, String> {
    let keys = memory.keys().expect("memory").into_iter();
    keys.filter_map(|key| memory.get(&key).expect("memory").map(|text| (key, text))).collect()
}

/// What a page says; none when it cannot be read.
fn state_of(text: &str) -> Option<State> {
    let (head, body) = text.split_once('\n').unwrap_or((text, ""));
    let head: Value = serde_json::from_str(head).ok()?;
    if head.get("sum")?.as_str()? != crc(&format!("{}\n{body}", head.get("rev")?)) {
        return None;
    }
    if head.get("gone").is_some() { Some(None) } else { Some(Some(body.to_owned())) }
}
