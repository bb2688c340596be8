//! The fuzzing that needs no fuzzer: every committed input goes through its door again, and so does a fixed number of changed ones.
//! The long runs, with libFuzzer, are `make fuzz`; what they found and how long they ran stands in `docs/fuzzing.md`.

#[path = "../fuzz/doors.rs"]
mod doors;

use std::fs;
use std::panic::catch_unwind;
use std::path::Path;

use doors::DOORS;

/// Changed inputs at each door. `FUZZ_MUTATIONS` sets another number.
const MUTATIONS: usize = 500;

/// The committed inputs of a door, by name, in the order of their names.
fn corpus(door: &str) -> Vec<(String, Vec<u8>)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("fuzz/corpus").join(door);
    let files = fs::read_dir(&folder).unwrap_or_else(|fault| panic!("{}: {fault}", folder.display()));
    let mut inputs: Vec<(String, Vec<u8>)> = files
        .map(|file| {
            let path = file.expect("a file").path();
            (path.file_name().expect("a name").to_string_lossy().into_owned(), fs::read(&path).expect("a file that can be read"))
        })
        .collect();
    inputs.sort();
    inputs
}

/// The words of the dictionary, with `\x22` and the like undone.
fn dictionary() -> Vec<Vec<u8>> {
    let word = |line: &str| {
        let mut rest = line.strip_prefix('"')?.strip_suffix('"')?.as_bytes();
        let mut word = Vec::new();
        while let Some((byte, more)) = rest.split_first() {
            let sign = (*byte == b'\\').then(|| rest.get(2..4)).flatten();
            let sign = sign.and_then(|hex| u8::from_str_radix(std::str::from_utf8(hex).ok()?, 16).ok());
            word.push(sign.unwrap_or(*byte));
            rest = if sign.is_some() { &rest[4..] } else { more };
        }
        Some(word)
    };
    include_str!("../fuzz/words.dict").lines().filter_map(word).collect()
}

/// Chance from a seed (SplitMix64), so that a failure can be met again.
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mixed = (self.0 ^ self.0 >> 30).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        let mixed = (mixed ^ mixed >> 27).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ mixed >> 31
    }

    /// One of the places below `count`; 0 where there is none.
    fn below(&mut self, count: usize) -> usize {
        (self.next() % count.max(1) as u64) as usize
    }

    fn one<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        &of[self.below(of.len())]
    }

    fn changed(&mut self, input: &[u8], inputs: &[(String, Vec<u8>)], words: &[Vec<u8>]) -> Vec<u8> {
        let mut changed = input.to_vec();
        for _ in 0..1 + self.below(4) {
            let (from, length) = (self.below(changed.len()), self.below(12));
            let to = (from + length).min(changed.len());
            match self.below(8) {
                0 if !changed.is_empty() => changed[from] ^= 1 << self.below(8),
                1 => drop(changed.splice(from..to, [])),
                2 => drop(changed.splice(from..from, changed[from..to].to_vec())),
                3 => drop(changed.splice(from..to, self.one(words).clone())),
                4 => drop(changed.splice(from..from, self.one(words).clone())),
                5 => {
                    let numbers = ["-1", "0", "1e999", "-0.0", "4294967296", "18446744073709551616", "0.1e-400", "null"];
                    drop(changed.splice(from..to, self.one(&numbers).bytes()));
                }
                6 => {
                    let other = &self.one(inputs).1;
                    let (begin, cut) = (self.below(other.len()), self.below(80));
                    let piece = other[begin..(begin + cut).min(other.len())].to_vec();
                    drop(changed.splice(from..to, piece));
                }
                _ if self.below(4) == 0 => changed.truncate(from),
                _ => {
                    let digit = changed.iter().skip(from).position(u8::is_ascii_digit);
                    if let Some(place) = digit {
                        changed[from + place] = b'0' + self.below(10) as u8;
                    }
                }
            }
        }
        changed
    }
}

fn knock(door: &str, open: fn(&[u8]), input: &[u8], said: &str) {
    let met = catch_unwind(|| open(input));
    assert!(met.is_ok(), "the door {door} gave way to {said}: {:?}", String::from_utf8_lossy(input));
}

#[test]
fn every_committed_input_and_its_likes_hold_every_law_of_their_door() {
    let mutations = std::env::var("FUZZ_MUTATIONS").ok().and_then(|number| number.parse().ok()).unwrap_or(MUTATIONS);
    let words = dictionary();
    assert!(words.len() > 100 && words.contains(&b"\"rev\":".to_vec()));
    for (door, open) in DOORS {
        let inputs = corpus(door);
        assert!(inputs.len() >= 9, "{door}: the corpus is thin");
        for (name, input) in &inputs {
            knock(door, open, input, name);
        }
        let mut chance = Chance(0x00C1_07E5);
        for number in 0..mutations {
            let (name, input) = &inputs[number % inputs.len()];
            let changed = chance.changed(input, &inputs, &words);
            knock(door, open, &changed, &format!("change {number} of {name}"));
        }
    }
}

#[test]
fn the_doors_are_open_and_not_walls() {
    // An input that every parser refuses would hold every law; these must be let through.
    let whole = |door: &str, name: &str| {
        let (_, input) = corpus(door).into_iter().find(|(file, _)| file == name).unwrap_or_else(|| panic!("{door}/{name}"));
        String::from_utf8(input).expect("text")
    };
    for name in ["bare", "offer", "lot", "fit", "worn", "dress", "unknown", "huge"] {
        let text = whole("page", name);
        let body = text.split_once('\n').expect("two lines").1;
        let read = garment_assay::notebook::read(&doors::sealed(body, 1));
        assert!(matches!(read, Ok(garment_assay::notebook::Page::Here { .. })), "{name}: {read:?}");
        let file = doors::resealed(&whole("import", name)).expect("a file");
        let read = garment_assay::notebook::import(&file, &[], garment_assay::notebook::Mode::Merge);
        assert_eq!(read.map(|read| read.changes.len()), Ok(1), "{name}");
    }
}
