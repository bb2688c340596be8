//! `without_names IN OUT`: a WebAssembly module without the names of its functions and of the tools that made it, which weigh a third of it
//! and say nothing to a browser. One file without dependencies, compiled by scripts/wings.sh.

use std::{env, fs, process::ExitCode};

/// Magic number and version.
const HEAD: usize = 8;
/// The id of a section that the standard leaves to tools.
const CUSTOM: u8 = 0;
const DROPPED: [&[u8]; 2] = [b"name", b"producers"];

/// A number in LEB128, and where the next byte is.
fn number(bytes: &[u8], at: usize) -> Option<(usize, usize)> {
    let (mut value, mut at, mut shift) = (0_usize, at, 0);
    loop {
        let byte = *bytes.get(at)?;
        value |= usize::from(byte & 0x7f).checked_shl(shift)?;
        at += 1;
        shift += 7;
        if byte & 0x80 == 0 {
            return Some((value, at));
        }
    }
}

fn without(bytes: &[u8]) -> Option<Vec<u8>> {
    let mut kept = bytes.get(..HEAD)?.to_vec();
    let mut at = HEAD;
    while at < bytes.len() {
        let (length, inside) = number(bytes, at + 1)?;
        let end = inside.checked_add(length).filter(|end| *end <= bytes.len())?;
        let dropped = bytes[at] == CUSTOM && {
            let (length, name) = number(bytes, inside)?;
            DROPPED.contains(&bytes.get(name..name.checked_add(length)?)?)
        };
        if !dropped {
            kept.extend_from_slice(&bytes[at..end]);
        }
        at = end;
    }
    Some(kept)
}

fn main() -> ExitCode {
    let words: Vec<String> = env::args().skip(1).collect();
    let [from, to] = words.as_slice() else {
        eprintln!("without_names: say which file, and where to");
        return ExitCode::FAILURE;
    };
    match fs::read(from).map(|bytes| without(&bytes)) {
        Ok(Some(kept)) => match fs::write(to, kept) {
            Ok(()) => return ExitCode::SUCCESS,
            Err(why) => eprintln!("without_names: {to}: {why}"),
        },
        Ok(None) => eprintln!("without_names: {from} is no WebAssembly module"),
        Err(why) => eprintln!("without_names: {from}: {why}"),
    }
    ExitCode::FAILURE
}
