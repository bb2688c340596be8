//! Photographs of evidence: in the record, on the page, and in a zip with the export; checked against Python's zipfile and hashlib.

mod drawing;

use std::process::Command;

use drawing::{bare, check, day};
use garment_assay::archive::{Archive, FileFault, Pack};
use garment_assay::garment::{
    Act, Garment, Id, JoinFault, Part, Photograph, PhotographAct, PhotographId, Photographs, differences, joined,
};
use garment_assay::notebook::{
    Brought, Bundle, BundleFault, Change, ImportFault, Mode, Page, export, import, photographs_of, photographs_perhaps_named,
    read, unbundle, write,
};
use proptest::prelude::*;

/// Bytes that look like nothing in particular, another row for each seed.
fn noise(seed: u64, length: usize) -> Vec<u8> {
    let mut state = seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1;
    let next = move || {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        state as u8
    };
    std::iter::repeat_with(next).take(length).collect()
}

fn of(bytes: &[u8]) -> Photograph {
    Photograph::new(PhotographId::of(bytes), day(), 1600, 1200).expect("pixels")
}

fn add(one: Photograph) -> Act {
    Act::Photograph(PhotographAct::Add(one))
}

fn page_read(text: &str) -> Garment {
    match read(text) {
        Ok(Page::Here { record, .. }) => *record,
        other => panic!("{other:?}"),
    }
}

/// A garment read from facts written by hand.
fn of_body(photographs: &str) -> Garment {
    let body = format!(r#"{{"id":"g","family":"jeans","noted":"2026-11-25","answers":[],"photographs":{photographs}}}"#);
    let crc = garment_assay::archive::crc32(format!("1\n{body}").bytes());
    page_read(&format!("{{\"form\":1,\"rev\":1,\"sum\":\"{crc:08x}\"}}\n{body}"))
}

fn body_of(garment: &Garment) -> String {
    write(garment, 1).split_once('\n').expect("two lines").1.to_owned()
}

#[test]
fn what_is_noted_of_a_photograph_is_read_as_it_was_written() {
    let one = of(b"a").captioned("Loose thread at the hem").for_check(Some(check("hang")));
    let garment = bare("g").after(add(one.clone())).after(add(of(b"b")));
    let page = write(&garment, 1);
    assert!(page.contains(r#""size":[1600,1200]"#) && page.contains(&PhotographId::of(b"a").to_string()));
    assert_eq!(page_read(&page), garment);
    assert_eq!(garment.photographs().get(one.id()), Some(&one));
    assert_eq!(garment.photographs().of_check(check("hang")), 1);
    // A page from before there were any holds no such field, and says the same.
    assert!(!write(&bare("g"), 1).contains("photographs"));
    assert_eq!(of_body("[]"), bare("g"));
}

#[test]
fn every_act_is_undone_and_one_too_many_changes_nothing() {
    let mut full = bare("g");
    for place in 0..Photographs::MOST {
        full = full.after(add(of(&[place as u8])));
    }
    assert_eq!(full.photographs().count(), Photographs::MOST);
    assert_eq!(full.after(add(of(b"one more"))), full);
    let middle = PhotographId::of(&[7]);
    let other = of(&[7]).captioned("again");
    for act in [
        PhotographAct::Add(other.clone()),
        PhotographAct::Add(of(b"one more")),
        PhotographAct::Caption(middle, "hem".to_owned()),
        PhotographAct::Caption(PhotographId::of(b"none"), "hem".to_owned()),
        PhotographAct::Remove(middle),
        PhotographAct::Remove(PhotographId::of(b"none")),
        PhotographAct::PutBack(2, other),
    ] {
        let act = Act::Photograph(act);
        assert_eq!(full.after(act.clone()).after(full.undoing(&act)), full, "{act:?}");
    }
    // Another family's check is none that it could be evidence for.
    let foreign = garment_assay::catalog::FAMILIES.iter().flat_map(|family| family.checks.iter().copied());
    let foreign = foreign.into_iter().find(|one| garment_assay::garment::check_of(bare("g").family(), one.key).is_none());
    assert_eq!(bare("g").after(add(of(b"a").for_check(foreign))), bare("g"));
}

#[test]
fn photographs_this_version_does_not_know_are_set_aside_and_written_back_unchanged() {
    let known = format!(r#"{{"added":"2026-11-25","id":"{}","size":[4,3]}}"#, PhotographId::of(b"a"));
    for unknown in [
        r#"{"id":"film"}"#.to_owned(),
        known.replace("[4,3]", "[0,3]"),
        known.replace("\"size\"", "\"turned\":1,\"size\""),
        known.replace("\"id\"", "\"check\":\"of-another-version\",\"id\""),
        known.replace("\"id\"", "\"caption\":\" not trimmed\",\"id\""),
        // The same once more.
        known.clone(),
        "7".to_owned(),
    ] {
        let garment = of_body(&format!("[{known},{unknown}]"));
        assert_eq!(garment.photographs().count(), 1, "{unknown}");
        let body = body_of(&garment);
        let (first, second): (serde_json::Value, serde_json::Value) =
            (serde_json::from_str(&unknown).expect("JSON"), serde_json::from_str(&body).expect("JSON"));
        assert!(second["photographs"].as_array().expect("a list").contains(&first), "{body}");
        assert_eq!(page_read(&write(&garment, 2)), garment);
        // Nothing of it is lost to what the person adds.
        let more = garment.after(add(of(b"b")));
        assert_eq!(page_read(&write(&more, 2)), more);
    }
    for other in ["{\"all\":1}", "\"none\"", "null", "3"] {
        let garment = of_body(other);
        assert!(body_of(&garment).contains(&format!("\"photographs\":{other}")), "{other}");
        assert_eq!(page_read(&write(&garment, 2)), garment);
    }
}

#[test]
fn joining_keeps_the_photographs_of_both_and_says_when_they_are_too_many() {
    let mine = bare("g").after(add(of(b"a").captioned("hem"))).after(add(of(b"b")));
    let theirs = bare("g").after(add(of(b"c"))).after(add(of(b"a").captioned("left side").for_check(Some(check("hang")))));
    assert_eq!(differences(&mine, &theirs), [Part::Photographs]);
    let both = joined(&mine, &theirs).expect("they fit");
    let ids: Vec<PhotographId> = both.photographs().all().iter().map(Photograph::id).collect();
    assert_eq!(ids, [b"a", b"b", b"c"].map(|bytes| PhotographId::of(bytes)));
    let first = &both.photographs().all()[0];
    assert_eq!((first.caption(), first.check()), ("hem; left side", Some(check("hang"))));
    let many = |from: usize| (from..from + 13).fold(bare("g"), |garment, place| garment.after(add(of(&[place as u8]))));
    assert_eq!(joined(&many(0), &many(20)), Err(JoinFault::TooManyPhotographs));
    let long = |letter: &str| bare("g").after(add(of(b"a").captioned(&letter.repeat(150))));
    assert_eq!(joined(&long("a"), &long("b")), Err(JoinFault::TooLong));
}

/// A whole zip in memory.
fn bundled(garments: &[&Garment], pictures: &[&[u8]]) -> Vec<u8> {
    let (mut bundle, mut zip) = Bundle::begin(&export(garments, day()), day()).expect("small");
    for picture in pictures {
        zip.extend(bundle.add(PhotographId::of(picture), picture).expect("small").expect("its own name"));
        zip.extend(*picture);
    }
    zip.extend(bundle.end());
    zip
}

#[test]
fn a_thousand_garments_with_two_hundred_photographs_come_back_whole() {
    let pictures: Vec<Vec<u8>> = (0..200).map(|seed| noise(seed, 2_000 + 37 * seed as usize)).collect();
    let mut garments: Vec<Garment> = (0..1_000)
        .map(|place| {
            let id = Id::new(&format!("g{place}")).expect("a name");
            Garment::new(id, bare("x").family(), day()).after(Act::Note(format!("note {place}")))
        })
        .collect();
    for (place, picture) in pictures.iter().enumerate() {
        // Some garments have several, and two share one.
        let at = place * 3 % 500;
        garments[at] = garments[at].after(add(of(picture).captioned(&format!("picture {place}"))));
    }
    garments[999] = garments[999].after(add(of(&pictures[0])));
    let all: Vec<&Garment> = garments.iter().collect();
    let zip = bundled(&all, &pictures.iter().map(Vec::as_slice).collect::<Vec<_>>());
    let brought = unbundle(&zip).expect("our own");
    assert_eq!((brought.missing, brought.refused.len()), (0, 0));
    let back = import(&brought.notes, &[], Mode::Replace).expect("our own");
    assert_eq!(back.changes, garments.iter().cloned().map(Change::Add).collect::<Vec<_>>());
    assert_eq!(brought.photographs.len(), 200);
    for (id, bytes) in &brought.photographs {
        assert!(pictures.iter().any(|picture| picture[..] == bytes[..] && PhotographId::of(picture) == *id));
    }
    // Each once, in the order of the garments.
    assert_eq!(photographs_of(all.iter().copied()).len(), 200);
}

#[test]
fn a_missing_or_exchanged_photograph_costs_nothing_but_itself() {
    let (a, b, c) = (noise(1, 500), noise(2, 600), noise(3, 700));
    let garment = [&a, &b, &c].into_iter().fold(bare("g"), |garment, bytes| garment.after(add(of(bytes))));
    let text = export(&[&garment], day());
    let name = |bytes: &[u8]| format!("photos/{}.jpg", PhotographId::of(bytes));
    let packed = |files: &[(String, &[u8])]| {
        let mut pack = Pack::new(day());
        let mut zip = Vec::new();
        for (name, bytes) in files {
            zip.extend(pack.add(name, bytes).expect("small"));
            zip.extend(*bytes);
        }
        zip.extend(pack.end());
        zip
    };
    // The second stands under the name of the third, the third nowhere, and one that no garment names beside them.
    let zip = packed(&[
        ("garments.json".to_owned(), text.as_bytes()),
        (name(&a), &a),
        (name(&c), &b),
        (name(b"nobody's"), b"nobody's"),
    ]);
    let brought = unbundle(&zip).expect("the notes are whole");
    assert_eq!(brought.notes, text);
    assert_eq!(brought.photographs.iter().map(|(id, _)| *id).collect::<Vec<_>>(), [PhotographId::of(&a)]);
    assert_eq!((brought.missing, brought.refused), (1, vec![(PhotographId::of(&c), FileFault::Damaged)]));
    // What was damaged on this device is not handed on as whole.
    let (mut bundle, _) = Bundle::begin(&text, day()).expect("small");
    assert_eq!(bundle.add(PhotographId::of(&a), &b), Ok(None));
    // Without notes there is nothing to take.
    assert_eq!(unbundle(&packed(&[(name(&a), &a)])), Err(BundleFault::Notes(FileFault::Missing)));
    let twice = packed(&[("garments.json".to_owned(), text.as_bytes()), ("garments.json".to_owned(), b"{}")]);
    assert_eq!(unbundle(&twice), Err(BundleFault::Notes(FileFault::Twice)));
    let other = packed(&[("garments.json".to_owned(), b"{}")]);
    assert_eq!(unbundle(&other), Err(BundleFault::Import(ImportFault::NotOurs)));
    assert!(matches!(unbundle(text.as_bytes()), Err(BundleFault::Archive(_))));
}

#[test]
fn a_small_zip_that_would_swell_is_refused_before_it_does() {
    // Ten million zeros, deflated: Python's zlib makes some ten thousand bytes of them.
    let packed = miniz_oxide::deflate::compress_to_vec(&vec![0; 10_000_000], 9);
    assert!(packed.len() < 20_000);
    let name = "photos/a.jpg";
    let zip = |says: u32| {
        let mut zip = Vec::new();
        let common = |method: u16| {
            let mut common = Vec::new();
            [20, 0, method, 0, 0].iter().for_each(|word: &u16| common.extend(word.to_le_bytes()));
            [0, packed.len() as u32, says].iter().for_each(|long: &u32| common.extend(long.to_le_bytes()));
            [name.len() as u16, 0].iter().for_each(|word: &u16| common.extend(word.to_le_bytes()));
            common
        };
        zip.extend(b"PK\x03\x04");
        zip.extend(common(8));
        zip.extend(name.as_bytes());
        zip.extend(&packed);
        let at = zip.len() as u32;
        zip.extend(b"PK\x01\x02\x14\0");
        zip.extend(common(8));
        zip.extend([0; 14]);
        zip.extend(name.as_bytes());
        let size = zip.len() as u32 - at;
        zip.extend(b"PK\x05\x06\0\0\0\0\x01\0\x01\0");
        zip.extend(size.to_le_bytes());
        zip.extend(at.to_le_bytes());
        zip.extend([0; 2]);
        zip
    };
    let file =
        |says: u32, most: usize| Archive::open(&zip(says)).map(|archive| archive.file(name, most).map(|bytes| bytes.len()));
    // It says that it is small and is not; it says what it is and is more than was asked for; its checksum does not fit.
    assert_eq!(file(1_000, 20_000_000), Ok(Err(FileFault::Damaged)));
    assert_eq!(file(10_000_000, 1_000_000), Ok(Err(FileFault::TooLarge)));
    assert_eq!(file(10_000_000, 20_000_000), Ok(Err(FileFault::Damaged)));
}

#[test]
fn the_same_bytes_read_over_and_over_come_to_an_end() {
    let bytes = noise(4, 1_000);
    let mut pack = Pack::new(day());
    let mut zip = pack.add("a", &bytes).expect("small");
    zip.extend(&bytes);
    zip.extend(pack.end());
    let archive = Archive::open(&zip).expect("whole").within(4_500);
    let read = [(); 6].map(|()| archive.file("a", 2_000).map(|bytes| bytes.len()));
    assert_eq!(read, [Ok(1_000), Ok(1_000), Ok(1_000), Ok(1_000), Err(FileFault::TooLarge), Err(FileFault::TooLarge)]);
}

#[test]
fn every_cut_and_every_flipped_bit_is_noticed_or_means_the_same() {
    let pictures = [noise(5, 90), noise(6, 80)];
    let garment = pictures.iter().fold(bare("g"), |garment, bytes| garment.after(add(of(bytes))));
    let zip = bundled(&[&garment], &[&pictures[0], &pictures[1]]);
    let whole = unbundle(&zip).expect("our own");
    for length in 0..zip.len() {
        assert!(unbundle(&zip[..length]).is_err(), "cut at {length}");
    }
    for bit in 0..zip.len() * 8 {
        let mut other = zip.clone();
        other[bit / 8] ^= 1 << (bit % 8);
        let Ok(Brought { notes, photographs, missing, refused }) = unbundle(&other) else { continue };
        assert_eq!(notes, whole.notes, "bit {bit}");
        // Each picture is there as it was, or said not to be.
        assert!(photographs.iter().all(|one| whole.photographs.contains(one)), "bit {bit}");
        assert_eq!(photographs.len() + missing + refused.len(), 2, "bit {bit}");
    }
}

#[test]
fn names_in_text_that_cannot_be_read_are_found() {
    let id = PhotographId::of(b"a");
    assert_eq!(photographs_perhaps_named(&format!("{{\"id\":\"{id}\",\"x\":[\"{id}0\"]")), [id]);
    assert_eq!(photographs_perhaps_named(&write(&bare("g").after(add(of(b"a"))), 3)), [id]);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    #[test]
    fn bytes_from_anywhere_are_no_fall(bytes in prop::collection::vec(any::<u8>(), 0..300), spoiled in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 0..6)) {
        let _ = unbundle(&bytes);
        let mut zip = bundled(&[&bare("g").after(add(of(b"picture")))], &[b"picture"]);
        for (place, byte) in spoiled {
            let place = place.index(zip.len());
            zip[place] = byte;
        }
        if let Ok(archive) = Archive::open(&zip) {
            let names: Vec<String> = archive.names().map(str::to_owned).collect();
            for name in names {
                let _ = archive.file(&name, 1_000_000);
            }
        }
        let _ = unbundle(&zip);
        // The end as it should be, and anything before.
        let end = zip.len() - 22;
        let _ = unbundle(&[&bytes[..], &zip[end..]].concat());
    }
}

// --- against Python's zipfile ------------------------------------------------------------------------------------------------------

/// What `tests/zips_elsewhere.py` says; none on a machine without a python3.
fn elsewhere(arguments: &[&str]) -> Option<String> {
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/zips_elsewhere.py");
    match Command::new("python3").arg(script).args(arguments).output() {
        Ok(output) => {
            assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
            Some(String::from_utf8(output.stdout).expect("text"))
        }
        Err(_) => {
            eprintln!("no python3 here: nothing is checked against its zipfile");
            None
        }
    }
}

#[test]
fn pythons_zipfile_reads_what_is_written_here_and_the_other_way() {
    let pictures = [noise(8, 40_000), noise(9, 1), Vec::new()];
    let garment = pictures.iter().fold(bare("g"), |garment, bytes| garment.after(add(of(bytes).captioned("Größe · 牛仔裤"))));
    let zip = bundled(&[&garment], &[&pictures[0], &pictures[1], &pictures[2]]);
    let folder = std::env::temp_dir().join(format!("garment-assay-zips-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("a folder");
    let path = |name: &str| folder.join(name).to_string_lossy().into_owned();
    std::fs::write(path("ours.zip"), &zip).expect("written");
    let Some(told) = elsewhere(&["read", &path("ours.zip")]) else { return };
    let told: serde_json::Value = serde_json::from_str(&told).expect("JSON");
    let files = told.as_array().expect("a list");
    assert_eq!(files.len(), 4);
    assert_eq!(files[0]["name"], "garments.json");
    for (file, picture) in files[1..].iter().zip(&pictures) {
        // hashlib's SHA-256 begins with the name that was given here.
        let id = PhotographId::of(picture).to_string();
        assert_eq!(file["name"], format!("photos/{id}.jpg"));
        assert!(file["sha256"].as_str().expect("text").starts_with(&id));
        assert_eq!((&file["size"], &file["day"]), (&serde_json::json!(picture.len()), &serde_json::json!([2026, 11, 25])));
    }
    let front: serde_json::Value =
        serde_json::from_str(&elsewhere(&["front", &path("ours.zip")]).expect("python3")).expect("JSON");
    assert_eq!(front.as_array().map(Vec::len), Some(4));
    let whole = unbundle(&zip).expect("our own");
    for how in ["stored", "deflated", "with-others"] {
        elsewhere(&["again", &path("ours.zip"), &path("theirs.zip"), how]);
        let theirs = std::fs::read(path("theirs.zip")).expect("written by Python");
        assert_eq!(unbundle(&theirs), Ok(whole.clone()), "{how}");
        let names: Vec<String> = Archive::open(&theirs).expect("whole").names().map(str::to_owned).collect();
        assert!(!names.iter().any(|name| name.contains("climbed") || name.contains("rooted")), "{names:?}");
    }
    for how in ["bzip2", "lzma"] {
        elsewhere(&["again", &path("ours.zip"), &path("theirs.zip"), how]);
        let theirs = std::fs::read(path("theirs.zip")).expect("written by Python");
        assert_eq!(unbundle(&theirs), Err(BundleFault::Notes(FileFault::OtherPacking)), "{how}");
    }
    std::fs::remove_dir_all(folder).expect("removed");
}
